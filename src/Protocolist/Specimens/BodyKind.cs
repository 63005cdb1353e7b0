using System.Collections.Immutable;
using Protocolist.Findings;

namespace Protocolist.Specimens;

/// <summary>What hands and tools may do to a body.</summary>
[Flags]
internal enum Gestures
{
    None = 0,
    Press = 1,
    Pin = 2,
    Tie = 4,
    Cut = 8,
    Inject = 16,
    LiftOut = 32,
}

/// <summary>A kind of body as the hand meets it: how it goes into its vessel, how air comes out of it, how it is laid, held under and sampled.</summary>
/// <remarks>
/// A group has its kind by its row, else from its parent. All of it is common practice, in our own words; what a kind forbids, no sentence of its steps
/// names.
/// </remarks>
internal sealed class BodyKind
{
    private const Gestures Never = Gestures.Press | Gestures.Pin | Gestures.Tie | Gestures.Cut | Gestures.Inject;

    private BodyKind(string id, Gestures forbids, string lower, string air, string bubbles, string pose, string keepUnder, string look, string piece)
    {
        Phrase Of(string what, string text) => new($"body.{id}.{what}", text);
        (Id, Forbids) = (id, forbids);
        (Lower, FreeAir, FreeBubbles, Pose) = (Of("lower", lower), Of("air", air), Of("bubbles", bubbles), Of("pose", pose));
        (KeepUnder, Look, Piece) = (Of("keep-under", keepUnder), Of("look", look), Of("piece", piece));
    }

    /// <summary>A kebab-case word.</summary>
    public string Id { get; }

    /// <summary>What is never done to it.</summary>
    public Gestures Forbids { get; }

    /// <summary>How it goes into a vessel that is half full.</summary>
    public Phrase Lower { get; }

    /// <summary>How fluid takes the place of the air in it.</summary>
    public Phrase FreeAir { get; }

    /// <summary>How bubbles come off it.</summary>
    public Phrase FreeBubbles { get; }

    /// <summary>How its posture is set.</summary>
    public Phrase Pose { get; }

    /// <summary>How it is held under where it floats.</summary>
    public Phrase KeepUnder { get; }

    /// <summary>What is looked at while it soaks.</summary>
    public Phrase Look { get; }

    /// <summary>What is taken of it for DNA.</summary>
    public Phrase Piece { get; }

    /// <summary>A whole body that keeps its shape in the hand.</summary>
    public static BodyKind Whole { get; } = new(
        "whole",
        Gestures.None,
        "Lower the specimen slowly, one end first.",
        "Press it gently, so that fluid takes the place of the air in its cavities.",
        "Free the bubbles on its surface with a glass, plastic or stainless steel rod, or by tapping the vessel.",
        "pin or tie it on a tray until it is hard",
        "press out what air its openings give, then lay a glass plate over it, or tie a weight on where it does not show",
        "no part out of the fluid, belly not swollen, no smell of rot",
        "muscle or liver");

    /// <summary>Medusae, comb jellies, salps: water with a skin.</summary>
    public static BodyKind Jelly { get; } = new(
        "jelly",
        Never | Gestures.LiftOut,
        "Bring a dish or ladle under it and let it slide over, both vessels brim to brim, so that it is never out of fluid.",
        "Turn it over slowly under the fluid, so that air leaves from beneath the bell by itself.",
        "Draw bubbles off with a wide pipette; leave what does not come.",
        "let it spread by itself in a wide dish, and turn the dish rather than the animal",
        "lay a plastic net over the vessel just under the surface, not touching it",
        "bell round and clear, no slime or flakes at the bottom",
        "a snip of arm or margin");

    /// <summary>Colonies and encrusting growth: hydroids, corals, bryozoans, sponges.</summary>
    public static BodyKind Colony { get; } = new(
        "colony",
        Never,
        "Hold it by the base or by what it grows on, and let it in slowly with the branches up.",
        "Flush fluid through it with a pipette, from the base outwards, until no more air comes.",
        "Draw the bubbles off with the pipette, or rock the vessel.",
        "stand or lay it by its base so that the branches hang free and do not fold",
        "wedge its base under a glass rod, so that no branch carries the weight",
        "polyps or pores not clogged with slime, no loose pieces at the bottom",
        "the tip of one branch, or a crumb from the margin");

    /// <summary>Eggs and embryos, loose or in a clump.</summary>
    public static BodyKind Eggs { get; } = new(
        "eggs",
        Never,
        "Let them run in with a little of their own fluid, through a wide pipette or over the edge of a dish, and settle.",
        "Tilt the vessel to and fro until those that swim up have settled too.",
        "Take bubbles off the surface with a pipette; what clings sinks when it is wetted.",
        "leave them loose; nothing is laid or spread",
        "wet those that float with a drop of the fluid from a pipette; they settle within an hour",
        "all settled, none clumped or burst, no mould threads",
        "whole eggs of the lot");

    /// <summary>Larvae and fry that bend and tear.</summary>
    public static BodyKind Larvae { get; } = new(
        "larvae",
        Never,
        "Carry them over in a spoon or on a piece of gauze, a few at a time, and let them slide in.",
        "Tilt the vessel slowly; they give their air up by themselves.",
        "Draw bubbles off with a pipette.",
        "lay them straight in a flat dish with a soft brush before they harden",
        "lay a piece of gauze on the fluid, so that it draws them under",
        "straight and loose, fins or legs whole, none at the surface",
        "whole animals of the lot");

    /// <summary>Animals of some millimetres, handled with brush and pipette.</summary>
    public static BodyKind Tiny { get; } = new(
        "tiny",
        Never,
        "Wash them in with a pipette or a soft brush, from above, and let them sink.",
        "Swirl the vessel once or twice.",
        "Touch what hangs at the surface with a brush wet with the fluid.",
        "leave them loose; legs and hairs spread as they sink",
        "touch them with a brush wet with strong alcohol: what holds them up is a film of air",
        "all at the bottom, fluid clear",
        "whole animals of the lot");

    /// <summary>Insects, spiders and myriapods with air in their tubes.</summary>
    public static BodyKind Airy { get; } = new(
        "airy",
        Gestures.Press | Gestures.Tie,
        "Let it slide in on its back along the glass, legs last.",
        "Swirl it for a minute, so that the air comes out of its breathing holes; a drop of detergent or strong alcohol helps.",
        "Free the bubbles under whatever lies folded with a soft brush.",
        "set legs, and wings where it has them, with a brush on a wet pad before they stiffen",
        "hold it under with a plug of gauze until it is wetted; it sinks by itself then",
        "under the fluid with every leg, fluid not brown",
        "one leg of the left side");

    /// <summary>Snails, mussels and whoever else has a shell round it.</summary>
    public static BodyKind Shelled { get; } = new(
        "shelled",
        Gestures.Press | Gestures.Pin,
        "Let it in slowly with the opening of the shell upwards.",
        "Turn it under the fluid until no more air comes, and run fluid into the shell with a pipette.",
        "Free the bubbles in folds and on the shell with a soft brush.",
        "set it with the opening of the shell up and the soft parts free",
        "turn it until the last air is out of the shell; what still swims has air or gas behind the body, which the pipette replaces",
        "opening free, no bubble in it, fluid not milky",
        "a cube of the foot or of the closing muscle");

    /// <summary>Crabs, urchins, turtles: armour with room under it.</summary>
    public static BodyKind Armoured { get; } = new(
        "armoured",
        Gestures.Press | Gestures.Pin,
        "Let it in aslant, the highest opening last, so that fluid follows under the armour.",
        "Tip it from side to side under the fluid until no more air comes from the openings and joints.",
        "Free the bubbles between spines, legs or plates with a brush.",
        "hold its limbs with glass rods in a tray until they keep",
        "tip it once more to let the air out, then lay a glass plate over it",
        "no air at the openings, joints firm, fluid not brown or milky",
        "muscle from a limb or from the edge of an opening");

    /// <summary>Octopus and squid, sea stars, anemones: limbs that set as they fall.</summary>
    public static BodyKind SoftLimbed { get; } = new(
        "soft-limbed",
        Gestures.Press | Gestures.Pin,
        "Let the body in first and draw the limbs in after it, as they were laid.",
        "Run fluid into its openings with a wide pipette or a hose, so that it takes the place of the air.",
        "Free the bubbles between limbs and suckers with a wet brush.",
        "hold the limbs with glass rods in a tray of fluid until they keep",
        "run the air out of its openings with fluid; if it still floats, lay a piece of gauze and a glass plate over it",
        "limbs as they were laid, openings full of fluid, skin not slipping",
        "a snip from the tip of one limb");

    /// <summary>Bags with an opening: sea squirts, sea cucumbers, anemones, eggs with a window.</summary>
    public static BodyKind Sac { get; } = new(
        "sac",
        Gestures.Press | Gestures.Pin,
        "Let it in slowly with its opening upwards.",
        "Run fluid into its opening with a pipette until no more air comes.",
        "Stroke the bubbles off with a wet brush.",
        "stand or lay it by itself in a deep dish, its opening free",
        "run the air out with the pipette; if it still floats, lay a piece of gauze and a glass plate over it",
        "full and smooth, its opening free, fluid not brown or milky",
        "a snip of the wall beside an opening");

    /// <summary>Worms: soft, as long as they are let, and never opened.</summary>
    public static BodyKind Worm { get; } = Lissome("worm", Never);

    /// <summary>Slugs, grubs and the like: as soft as worms, but the large ones are opened.</summary>
    public static BodyKind Soft { get; } = Lissome("soft", Gestures.Press | Gestures.Pin | Gestures.Tie);

    /// <summary>Many together go in a few at a time.</summary>
    public static Phrase LowerLot { get; } = new(
        "body.lot.lower", "Put them in a few at a time, loosely, so that fluid stands between them; none on top of a heap.");

    /// <summary>The kind of one specimen's body: by its group, and by a life stage that is not like the grown animal.</summary>
    public static BodyKind Of(BodyMeasure body) => (body.Specimen.LifeStage, body.Group) switch
    {
        (LifeStage.Egg, { IsAmniote: true }) => Sac,
        (LifeStage.Embryo, { IsAmniote: true }) => SoftLimbed,
        (LifeStage.Egg or LifeStage.Embryo, _) => Eggs,
        (LifeStage.Larva, { Kind: var kind }) when kind == Whole => Larvae,
        var (_, group) => group.Kind,
    };

    /// <summary>Many together are held under together.</summary>
    public static Phrase KeepLotUnder { get; } = new("body.lot.keep-under", "lay gauze or a net over them all, and a glass rod across it");

    /// <summary>What kinds forbid, each once.</summary>
    public static ImmutableArray<Gestures> Forbidden { get; } =
        [.. new[] { Jelly, Colony, Airy, Shelled, Soft }.Select(k => k.Forbids).Distinct()];

    /// <summary>Whether a gesture may be told of it.</summary>
    public bool Allows(Gestures gestures) => (Forbids & gestures) == 0;

    /// <summary>The id.</summary>
    public override string ToString() => Id;

    private static BodyKind Lissome(string id, Gestures forbids) => new(
        id,
        forbids,
        "Let it slide in from a strip of glass or plastic that it lies on, without a bend that it does not have already.",
        "Roll it on the strip under the fluid; a soft body holds little air.",
        "Stroke the bubbles off with a wet brush.",
        "hold it between two glass rods in a flat dish",
        "lay a strip of gauze over it; it sinks when the slime is off",
        "straight and smooth, no slime round it, no swelling",
        "a piece of the hind end");
}
