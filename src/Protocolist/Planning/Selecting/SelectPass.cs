using Protocolist.Findings;
using Protocolist.Planning.Measuring;
using Protocolist.Protocols;
using Protocolist.Specimens;

namespace Protocolist.Planning.Selecting;

/// <summary>Second pass: the one protocol that serves this specimen. The nearest group wins, then the most limits; a tie or nothing is a finding.</summary>
internal static class SelectPass
{
    private const int MostNamed = 3;

    private static readonly Phrase Selected = new("protocol-selected", "{title} ({protocol}) serves {class}; this one is {this}");
    private static readonly Phrase This = new("protocol-selected.this", "{group}, {mass}, {length}");
    private static readonly Phrase Tied = new("several-protocols", "{protocols}{more} serve {this} equally well");
    private static readonly Phrase TiedRemedy = new("several-protocols.remedy", "narrow the class of one of them");
    private static readonly Phrase Named = new("several-protocols.one", "'{protocol}' ({class})");
    private static readonly Phrase NamedAll = new("several-protocols.all", "{protocols: and }");
    private static readonly Phrase More = new("several-protocols.more", " and {count} more");
    private static readonly Phrase NoneOfSize = new("no-protocol", "no protocol serves {this}; the nearest: {nearest:; }");
    private static readonly Phrase NoneOfSizeRemedy = new("no-protocol.remedy", "check the measurements, or write a protocol for this class");
    private static readonly Phrase Near = new("no-protocol.near", "'{protocol}': {reasons}");
    private static readonly Phrase OutOfLimit = new("no-protocol.limit", "{measure} {size} is outside {limit}");
    private static readonly Phrase OtherWord = new("no-protocol.word", "{trait} is {word}, not {words: or }");
    private static readonly Phrase NoneOfGroup = new("no-protocol.group", "no protocol serves the group '{group}'; {nearest}");
    private static readonly Phrase NearestGroups = new("no-protocol.group.nearest", "the nearest are for {groups}");
    private static readonly Phrase EmptyShelf = new("no-protocol.group.none", "there is none on the shelf for any specimen");
    private static readonly Phrase NoneOfGroupRemedy = new("no-protocol.group.remedy", "write a protocol for this group");

    public static Checked<Protocol> Run(BodyMeasure body, ClassIndex index)
    {
        for (var group = body.Group; group is not null; group = group.Parent)
        {
            Candidate? best = null;
            var isTied = false;
            foreach (var candidate in index.For(group))
            {
                if (best is not null && candidate.Limits < best.Limits) continue;
                if (!candidate.Fits(body)) continue;
                isTied = best is not null && candidate.Limits == best.Limits;
                best = candidate;
            }

            if (isTied) return Tie([.. index.For(group).Where(c => c.Limits == best!.Limits && c.Fits(body))], body);
            if (best is not null) return new(best.Protocol, [Finding.Note("protocol-selected", Told(best, body))]);
        }

        return Nothing(index, body);
    }

    private static Message Told(Candidate chosen, BodyMeasure body) =>
        Selected.With(("title", chosen.Protocol.Title), ("protocol", chosen.Protocol.ToString()), ("class", chosen.ClassText), ("this", Describe(body)));

    private static Message Describe(BodyMeasure body) => This.With(("group", body.Group.Name), ("mass", body.Mass.Nominal), ("length", body.Length.Nominal));

    private static Checked<Protocol> Tie(List<Candidate> serving, BodyMeasure body) => new(null,
    [
        Finding.Error(
            "several-protocols",
            Tied.With(
                ("protocols", NamedAll.With(Argument.Messages(
                    "protocols",
                    serving.Take(MostNamed).Select(c => Named.With(Argument.Id("protocol", c.Id), ("class", c.ClassText)))))),
                ("more", serving.Count > MostNamed ? More.With(("count", serving.Count - MostNamed)) : default),
                ("this", Describe(body))),
            TiedRemedy,
            serving[0].Protocol.Span),
    ]);

    private static Checked<Protocol> Nothing(ClassIndex index, BodyMeasure body)
    {
        var near = index.ForLine(body.Group).OrderBy(c => c.Id, StringComparer.Ordinal).Select(c => (Candidate: c, Misfits: Misfits(c.Class, body).ToList()))
            .OrderBy(c => c.Misfits.Count).ThenByDescending(c => index.Rank(c.Candidate.Class)).Take(MostNamed).ToList();
        if (near.Count > 0)
        {
            var nearest = near.Select(c => Near.With(Argument.Id("protocol", c.Candidate.Id), Argument.Messages("reasons", c.Misfits)));
            return new(
                null,
                [Finding.Error("no-protocol", NoneOfSize.With(("this", Describe(body)), Argument.Messages("nearest", nearest)), NoneOfSizeRemedy)]);
        }

        var related = index.Groups
            .Select(index.Kinds.Find)
            .OfType<TaxonGroup>()
            .OrderByDescending(g => Shared(g, body.Group))
            .ThenBy(g => g.Id, StringComparer.Ordinal)
            .Take(MostNamed)
            .ToList();
        return new(null,
        [
            Finding.Error(
                "no-protocol",
                NoneOfGroup.With(
                    Argument.Id("group", body.Group.Id),
                    ("nearest", related.Count == 0 ? EmptyShelf : NearestGroups.With(Argument.Ids("groups", related.Select(g => g.Id))))),
                NoneOfGroupRemedy),
        ]);
    }

    /// <summary>What keeps a body out of a class.</summary>
    private static IEnumerable<Message> Misfits(SpecimenClass c, BodyMeasure body)
    {
        foreach (var (key, limit) in c.Limits)
        {
            var size = SpecimenValues.Measure(body, "specimen." + key).Middle;
            if (!SpecimenClass.Within(limit, size))
                yield return OutOfLimit.With(("measure", key), Argument.Of("size", size, limit.Dimension), ("limit", limit));
        }

        foreach (var (key, words) in c.Words)
        {
            var word = SpecimenValues.Trait(body.Specimen, key);
            if (!words.Contains(word)) yield return OtherWord.With(("trait", key), ("word", word), Argument.Texts("words", words));
        }
    }

    private static int Shared(TaxonGroup a, TaxonGroup b)
    {
        for (var common = a; common is not null; common = common.Parent)
        {
            if (b.IsA(common.Id)) return common.Depth;
        }

        return -1;
    }
}
