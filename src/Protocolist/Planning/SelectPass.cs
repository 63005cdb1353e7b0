using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Protocols;
using Protocolist.Quantities;
using Protocolist.Specimens;

namespace Protocolist.Planning;

/// <summary>Second pass: the one protocol that serves this specimen. The nearest group wins, then the most limits; a tie or nothing is a finding.</summary>
internal static class SelectPass
{
    private const int MostNamed = 3;

    public static Checked<Protocol> Run(BodyMeasure body, Shelf shelf)
    {
        var ofGroup = shelf.Protocols.Where(p => p.Class.IsForSpecimens && body.Group.IsA(p.Class.Group)).ToList();
        var serving = ofGroup.Where(p => Fits(p.Class, body)).GroupBy(p => Rank(p.Class)).MaxBy(g => g.Key)?.ToList() ?? [];
        if (serving.Count == 1)
        {
            var chosen = serving[0];
            return new(chosen, [Finding.Note("protocol-selected", $"{chosen.Title} ({chosen}) serves {chosen.Class}; this one is {Describe(body)}")]);
        }

        return serving.Count > 1 ? Tie(serving, body) : Nothing(ofGroup, shelf, body);
    }

    /// <summary>The protocol of a specimen, where one serves it.</summary>
    public static Protocol? For(Specimen specimen, Shelf shelf) => MeasurePass.Run(specimen).Value is { } body ? Run(body, shelf).Value : null;

    /// <summary>How near a class is: depth of its group in the tree first, then how many things it limits.</summary>
    internal static (int Depth, int Limits) Rank(SpecimenClass c) => (TaxonGroups.Find(c.Group)?.Depth ?? -1, c.Limits.Count + c.Words.Count);

    /// <summary>Whether a body is of a class, the group aside.</summary>
    internal static bool Fits(SpecimenClass c, BodyMeasure body)
    {
        foreach (var limit in c.Limits)
            if (!SpecimenClass.Within(limit.Value, MeasureOf(body, limit.Key))) return false;
        foreach (var word in c.Words)
            if (!word.Value.Contains(Drafting.SpecimenValues.Trait(body.Specimen, word.Key))) return false;
        return true;
    }

    /// <summary>What keeps a body out of a class.</summary>
    private static ImmutableArray<string> Misfits(SpecimenClass c, BodyMeasure body) =>
    [
        .. c.Limits.Where(l => !SpecimenClass.Within(l.Value, MeasureOf(body, l.Key)))
            .Select(l => $"{l.Key} {Measurable.Text(MeasureOf(body, l.Key), l.Value.Dimension)} is outside {Measurable.Text(l.Value)}"),
        .. c.Words.Where(w => !w.Value.Contains(Drafting.SpecimenValues.Trait(body.Specimen, w.Key)))
            .Select(w => $"{w.Key} is {Drafting.SpecimenValues.Trait(body.Specimen, w.Key)}, not {string.Join(" or ", w.Value)}"),
    ];

    private static double MeasureOf(BodyMeasure body, string key) => Drafting.SpecimenValues.Measure(body, "specimen." + key).Middle;

    private static string Describe(BodyMeasure body) =>
        $"{body.Group.Name}, {Measurable.Text(body.Mass.Nominal.Kilograms, Dimension.OfMass)}, {Measurable.Text(body.Length.Nominal.Meters, Dimension.OfLength)}";

    private static Checked<Protocol> Tie(List<Protocol> serving, BodyMeasure body)
    {
        var more = serving.Count > MostNamed ? $" and {serving.Count - MostNamed} more" : "";
        var names = string.Join(" and ", serving.Take(MostNamed).Select(p => $"'{p.Id}' ({p.Class})")) + more;
        return new(null, [Finding.Error("several-protocols", $"{names} serve {Describe(body)} equally well", "narrow the class of one of them", serving[0].Span)]);
    }

    private static Checked<Protocol> Nothing(List<Protocol> ofGroup, Shelf shelf, BodyMeasure body)
    {
        if (ofGroup.Count > 0)
        {
            var near = string.Join("; ", ofGroup.OrderBy(p => Misfits(p.Class, body).Length).ThenByDescending(p => Rank(p.Class)).Take(MostNamed).Select(p => $"'{p.Id}': {string.Join(", ", Misfits(p.Class, body))}"));
            return new(null, [Finding.Error("no-protocol", $"no protocol serves {Describe(body)}; the nearest: {near}", "check the measurements, or write a protocol for this class")]);
        }

        var groups = shelf.Protocols.Where(p => p.Class.IsForSpecimens).Select(p => p.Class.Group).Distinct(StringComparer.Ordinal);
        var related = groups.Select(TaxonGroups.Find).OfType<TaxonGroup>().OrderByDescending(g => Shared(g, body.Group)).ThenBy(g => g.Id, StringComparer.Ordinal).Take(MostNamed).Select(g => g.Id);
        return new(null, [Finding.Error("no-protocol", $"no protocol serves the group '{body.Group.Id}'; the nearest are for {string.Join(", ", related)}", "write a protocol for this group")]);
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
