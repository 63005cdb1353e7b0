using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Globalization;
using static Protocolist.Specimens.Groups.Source;

namespace Protocolist.Specimens.Groups;

/// <summary>Which postures a museum gives the bodies of a group, the customary one first; a group without a row has those of its parent.</summary>
internal static class PostureRows
{
    private static readonly Posture AsItLies = Of("as-it-lies", "lay it as it lies by itself", Practice) with { IsLeft = true };
    private static readonly Posture Straight = Of("straight", "lay it straight", Practice);

    private static readonly Posture Coiled = Of("coiled", "coil it flat, turn within turn, without a twist", Practice) with { Coils = true };

    /// <summary>Longer than so many thicknesses, a worm or an eel may be coiled: no number is known, this is the project's choice.</summary>
    private static readonly Posture LongCoiled = Coiled with { FromSlenderness = 14 };

    private static readonly Posture TailStraight = Of("tail-straight", "lay the tail straight behind the body", Practice);

    private static readonly Posture LegsSpread = Of("legs-spread", "spread the legs to all sides", Unsure) with { ByWish = true };

    /// <summary>Group → its postures.</summary>
    private static readonly FrozenDictionary<string, ImmutableArray<Posture>> Rows = new Dictionary<string, ImmutableArray<Posture>>
    {
        ["animal"] = [AsItLies],
        ["vertebrate"] = [Straight],
        ["mammal"] =
        [
            TailStraight,
            Of("mammal.tail-along", "curve the tail up along the back or the side", Practice) with { LengthPer = 1.05, TailRoots = 1 },
        ],
        ["bat"] =
        [
            // The span of small bats and fruit bats: Norberg & Rayner 1987, from memory.
            Of("bat.wings-half-open", "set the wings half open, forearms and fingers free to be measured", Practice)
                with { LengthPer = 1.2, Span = (0.6, 0.32) },
            Of("bat.wings-folded", "fold the wings flat along the body, thumbs free", Practice) with { LengthPer = 1.2, WidthPer = 1.1 * 0.69 },
            Of("bat.wings-spread", "spread the wings, tail membrane flat", "Norberg & Rayner 1987, from memory")
                with { LengthPer = 1.2, Span = (1.2, 0.32), ByWish = true },
        ],
        ["marine-mammal"] = [Straight],
        ["bird"] =
        [
            Of("bird.wings-folded", "fold the wings against the body, feet together", Practice),
            Of("bird.one-wing-half-spread", "set one wing half spread, the other folded", "Rayner 1988, from memory")
                with { Span = (0.4, 0.39), ByWish = true },
        ],
        ["reptile"] = [TailStraight],
        ["lizard"] =
        [
            TailStraight,
            Of("lizard.tail-along", "double the tail back along the body in a wide curve, never at a fracture plane", Practice)
                with { LengthPer = 1.1, TailRoots = 2 },
        ],
        ["crocodilian"] =
        [
            TailStraight,
            Of("crocodilian.tail-along", "bend the tail forward along the side in a wide curve", Unsure) with { OfTotal = 0.6, TailRoots = 1 },
        ],
        ["snake"] =
        [
            Of("snake.coiled", "coil it flat, turn within turn, belly scales to be counted, without a twist", Simmons)
                with { Coils = true, FromSlenderness = 9 },
            Straight with { FromSlenderness = -1, ByWish = true },
        ],
        ["turtle"] =
        [
            Of("turtle.drawn-out", "draw out head and limbs", Simmons),
            Of("turtle.drawn-in", "leave head and limbs drawn in", Practice) with { LengthPer = 1.05 },
        ],
        ["amphibian"] = [Straight],
        ["frog"] =
        [
            Of("frog.crouched", "set the limbs bent as at rest, fingers and toes spread", Practice) with { LengthPer = 1.1, WidthPer = 0.75, HeightPer = 0.4 },
            Of("frog.stretched", "stretch the hind limbs straight back", "anuran hind limbs, 4574 animals") with { LengthPer = 2.4, ByWish = true },
        ],
        ["salamander"] =
        [
            TailStraight,
            Of("salamander.tail-along", "double the tail back along the body in a wide curve", Practice) with { LengthPer = 1.15, TailRoots = 2 },
        ],
        ["caecilian"] = [Straight, LongCoiled],
        ["amphibian-larva"] = [AsItLies],
        ["amphibian-egg"] = [AsItLies],
        ["fish"] =
        [
            Of("fish.on-its-side", "lay it straight on its right side", Practice) with { OnSide = true },
            Of("fish.as-it-swims", "set it straight and upright, held between strips of glass or cotton", Practice) with { ByWish = true },
        ],
        ["fish-larva"] = [AsItLies],
        ["flatfish"] = [Of("flatfish.flat", "lay it flat, blind side down, fins spread", Practice) with { OnSide = true }],
        ["eel"] = [Straight, LongCoiled],
        ["lamprey"] = [Straight, LongCoiled],
        ["shark"] = [Of("shark.fins-out", "lay it straight on its belly, fins out to the sides", SharkThread)],
        ["ray"] =
        [
            Of("ray.flat", "lay it flat, wings spread, tail straight", Practice),
            Of("ray.tail-under", "lay it flat, wings spread, tail coiled under", Practice) with { LengthPer = 1.1, HeightPer = 0.2 },
        ],
        ["embryo"] = [AsItLies],
        ["amniote-embryo"] = [AsItLies],
        ["decapod"] = [Of("decapod.legs-folded", "fold legs and claws forward, feelers coiled", Unsure) with { OfTotal = 1.05 }],
        ["crab"] =
        [
            Of("crab.legs-folded", "fold legs and claws against the body", Unsure) with { LengthPer = 1.2, WidthPer = 0.9 },
            LegsSpread with { LengthPer = 2.3, WidthPer = 2 },
        ],
        ["arachnid"] =
        [
            Of("arachnid.legs-drawn-in", "draw the legs in beside the body", Unsure) with { LengthPer = 1.3, WidthPer = 1.1 },
            LegsSpread with { LengthPer = 3, WidthPer = 3 },
        ],
        ["mite"] = [AsItLies],
        ["scorpion"] =
        [
            Of("scorpion.tail-straight", "lay the tail straight behind the body, claws forward", Unsure) with { WidthPer = 0.35 },
            Of("scorpion.tail-over", "curve the tail over the back, claws forward", Unsure) with
            {
                OfTotal = 0.6, WidthPer = 0.35, HeightPer = 0.28,
            },
        ],
        ["myriapod"] = [Straight, LongCoiled],
        ["cephalopod"] =
        [
            Of("cephalopod.arms-straight", "lay the arms straight and side by side, in front of the head", Practice),
            Of("cephalopod.arms-back", "lay the arms back along the body, side by side", Unsure) with { LengthPer = 1.3, WidthPer = 0.7 },
        ],
        ["octopus"] =
        [
            Of("octopus.arms-straight", "lay the arms straight and side by side, in front of the head", Practice),
            Of("octopus.arms-curled", "curl the arms under the body, suckers in", Unsure) with { LengthPer = 1.6, WidthPer = 1 },
        ],
        ["sea-star"] = [Of("sea-star.flat", "lay it flat, arms straight", Practice)],
        ["brittle-star"] =
        [
            // Arms of five to ten discs' width: common practice, unsure.
            Of("brittle-star.arms-to-one-side", "lay it flat, all arms drawn to one side like the tail of a comet", Michonneau)
                with { LengthPer = 8, WidthPer = 1.5 },
            Of("brittle-star.arms-curled", "lay it flat, the arms curled round the disc", Unsure) with { LengthPer = 3, WidthPer = 3 },
        ],
        ["jellyfish"] =
        [
            // Bell 0.3 to 0.5 of its width high, arms 0.5 to 2 below it: common practice, unsure.
            Of("jellyfish.hanging", "let it hang free, bell up, arms down", Unsure) with { LengthPer = 1.1, WidthPer = 1.1, HeightPer = 1 },
            Of("jellyfish.resting", "let it rest bell up on its arms", Unsure) with { LengthPer = 1.1, WidthPer = 1.1, HeightPer = 0.5 },
        ],
        ["hydromedusa"] = [AsItLies],
        ["worm"] = [Straight, LongCoiled],
        ["flatworm"] = [Of("flatworm.flat", "lay it flat", Practice), LongCoiled],
        ["nematode"] = [Straight, LongCoiled],
        ["slug"] = [Straight],
        ["sea-slug"] = [AsItLies],
        ["sea-cucumber"] = [Straight],
        ["insect-larva"] = [Straight],
    }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>The postures of a group, its own or its nearest ancestor's; never empty.</summary>
    public static ImmutableArray<Posture> Of(TaxonGroup group)
    {
        for (var at = group; at is not null; at = at.Parent)
        {
            if (Rows.TryGetValue(at.Id, out var own)) return own;
        }

        return [AsItLies];
    }

    /// <summary>
    /// How this body may be laid, the customary way first: what its person wishes for, else what its group has. Eggs, larvae and embryos lie as they lie.
    /// </summary>
    public static ImmutableArray<PosedBody> Ways(BodyMeasure body)
    {
        var kind = BodyKind.Of(body);
        var own = kind == body.Group.Kind ? Of(body.Group) : [AsItLies];
        var wished = body.Specimen.Posture is { } word ? own.Where(p => p.Id == word).SelectMany(p => p.Of(body)).ToImmutableArray() : [];
        if (wished.Length > 0) return wished;
        var usual = own.Where(p => !p.ByWish).SelectMany(p => p.Of(body)).ToImmutableArray();
        if (usual.IsEmpty) return [.. Straight.Of(body)];
        return [usual[0], .. usual.Skip(1).Where(other => other.IsSmallerThan(usual[0]))];
    }

    /// <summary>Whether a text is one by which a plan keeps how the body is laid: a posture's word, and after a stroke the layers of a coil.</summary>
    public static bool IsKept(string text) => text.Split('/') is [var word, .. { Length: <= 1 } layers]
        && Rows.Values.Any(rows => rows.Any(p => p.Id == word && p.Coils == (layers.Length == 1)))
        && layers.All(n => int.TryParse(n, NumberStyles.None, CultureInfo.InvariantCulture, out var count) && count is >= 1 and <= Posture.MostLayers);

    /// <summary>Every posture with its group's id.</summary>
    public static IEnumerable<(string Group, Posture Posture)> All =>
        Rows.OrderBy(r => r.Key, StringComparer.Ordinal).SelectMany(r => r.Value.Select(p => (r.Key, p)));

    /// <summary>A posture by its word, after its group's where others call another one so.</summary>
    private static Posture Of(string id, string told, string source) =>
        new(id[(id.IndexOf('.', StringComparison.Ordinal) + 1)..], new($"posture.{id}", told), source);
}
