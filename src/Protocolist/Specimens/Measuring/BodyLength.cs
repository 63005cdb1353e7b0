using Protocolist.Findings;

namespace Protocolist.Specimens.Measuring;

/// <summary>The length that a group is measured by, from whichever length was taken.</summary>
internal static class BodyLength
{
    // A steel rule on a limp animal: common practice.
    private const double ReadingError = 0.02;

    private static readonly LengthKind[] Kinds = Enum.GetValues<LengthKind>();

    private static readonly Phrase TwoLengths = new(
        "two-lengths", "length {length:0.## cm} and {kind} {other:0.## cm} mean the same in {group:a} but differ; the latter is used");
    private static readonly Phrase TwoLengthsRemedy = new("two-lengths.remedy", "leave one out, or measure again");
    private static readonly Phrase OtherKind = new("length-of-another-kind", "{group:a} is measured by its {kind}, and no such length is given");
    private static readonly Phrase OtherKindRemedy = new("length-of-another-kind.remedy", "give length: as the {kind}");

    private static readonly Phrase FromKind = new("how.from-length", "from {kind}");

    /// <summary>The customary length in mm; null where no length that leads to it was taken.</summary>
    public static Spread? Of(Specimen specimen, TaxonGroup group, List<Finding> findings)
    {
        var named = specimen.LengthOf(group.Length);
        if (specimen.Length is { } plain)
        {
            if (named is not { } other || Math.Abs((plain.Meters / other.Meters) - 1) <= 0.02) return Spread.Measured(plain.Millimeters, ReadingError);
            var differ = TwoLengths.With(("length", plain), ("kind", MeasureNames.Of(group.Length)), ("other", other), ("group", group.Name));
            findings.Add(Finding.Warning("two-lengths", differ, TwoLengthsRemedy) with { Subject = "length" });
            return Spread.Measured(other.Millimeters, ReadingError);
        }

        if (named is { } direct) return Spread.Measured(direct.Millimeters, ReadingError);
        foreach (var (kind, ratio) in group.OtherLengths)
        {
            if (specimen.LengthOf(kind) is { } other) return From(other.Millimeters, kind, ratio);
        }

        if (specimen.TotalLength is { } total && group.TotalPerLength is { } tail) return From(total.Millimeters, LengthKind.Total, tail);
        if (HasAnyLength(specimen) && !group.LengthMass.Any(r => specimen.LengthOf(r.Length) is not null))
        {
            var kind = MeasureNames.Of(group.Length);
            findings.Add(Finding.Note(
                "length-of-another-kind", OtherKind.With(("group", group.Name), ("kind", kind)), OtherKindRemedy.With(("kind", kind))) with
            { Subject = "length" });
        }

        return null;
    }

    /// <summary>
    /// The relation to judge and to reckon the mass by, with the length it takes: the species' own before the group's, a length that was taken before one
    /// that follows from it. Null where no relation is known for any of them.
    /// </summary>
    public static (LengthMassRelation Relation, Spread Mm)? Relation(Specimen specimen, TaxonGroup group, Spread? customary)
    {
        var own = RelationsByName.Find(specimen.ScientificName);
        if (own is not null && Taken(specimen, group, own.Length) is { } ownMm) return (own, Spread.Measured(ownMm, ReadingError));
        foreach (var relation in group.LengthMass)
        {
            if (Taken(specimen, group, relation.Length) is { } mm) return (relation, Spread.Measured(mm, ReadingError));
        }

        return customary is { } length && Customary(specimen, group) is { } usual ? (usual, length) : null;
    }

    /// <summary>The relation of the customary length.</summary>
    public static LengthMassRelation? Customary(Specimen specimen, TaxonGroup group) =>
        RelationsByName.Find(specimen.ScientificName) is { } own && own.Length == group.Length ? own : group.RelationOf(group.Length);

    private static double? Taken(Specimen specimen, TaxonGroup group, LengthKind kind) =>
        (specimen.LengthOf(kind) ?? (kind == group.Length ? specimen.Length : null))?.Millimeters;

    /// <summary>Tip to tip in mm, for the vessel.</summary>
    public static Spread Total(Specimen specimen, TaxonGroup group, Spread customary)
    {
        if (specimen.TotalLength is { } total) return Spread.Measured(total.Millimeters, ReadingError);
        if (group.TotalPerLength is not { } ratio) return customary;
        var isSure = ratio.Low == ratio.High;
        return new(
            customary.Low * ratio.Low, customary.Nominal * ratio.Nominal, customary.High * ratio.High, customary.IsMeasured && isSure,
            isSure ? customary.How : FromKind.With(("kind", MeasureNames.Of(group.Length))), ratio.Source);
    }

    /// <summary>From another length, and what that is of the customary one.</summary>
    private static Spread From(double mm, LengthKind kind, SourcedBand ratio) => new(
        mm / ratio.High, mm / ratio.Nominal, mm / ratio.Low, false, FromKind.With(("kind", MeasureNames.Of(kind))), ratio.Source);

    /// <summary>Whether any length was taken.</summary>
    public static bool HasAnyLength(Specimen s)
    {
        foreach (var kind in Kinds)
        {
            if (s.LengthOf(kind) is not null) return true;
        }

        return s.Length is not null;
    }
}
