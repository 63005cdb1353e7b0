using Protocolist.Findings;

namespace Protocolist.Specimens.Measuring;

/// <summary>The length that a group is measured by, from whichever length was taken.</summary>
internal static class BodyLength
{
    // A steel rule on a limp animal: common practice.
    private const double ReadingError = 0.02;

    // Total over standard length of a fish with an ordinary tail fin: from memory, unsure.
    private static readonly SourcedBand TotalPerStandard = new(1.10, 1.18, 1.28, "from memory, unsure");

    private static readonly Phrase TwoLengths = new(
        "two-lengths", "length {length:0.## cm} and {kind} {other:0.## cm} mean the same in {group:a} but differ; the latter is used");
    private static readonly Phrase TwoLengthsRemedy = new("two-lengths.remedy", "leave one out, or measure again");
    private static readonly Phrase OtherKind = new("length-of-another-kind", "{group:a} is measured by its {kind}, and no such length is given");
    private static readonly Phrase OtherKindRemedy = new("length-of-another-kind.remedy", "give length: as the {kind}");

    private static readonly Phrase FromStandard = new("how.from-standard-length", "from standard length");
    private static readonly Phrase FromTotal = new("how.from-total-length", "from total length");
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
        if (group.Length is LengthKind.Total && specimen.StandardLength is { } standard) return Times(standard.Millimeters, TotalPerStandard, FromStandard);
        if (specimen.TotalLength is { } total && group.TotalPerLength is { } ratio)
        {
            return new(total.Millimeters / ratio.High, total.Millimeters / ratio.Nominal, total.Millimeters / ratio.Low, false, FromTotal, ratio.Source);
        }

        if (HasAnyLength(specimen))
        {
            var kind = MeasureNames.Of(group.Length);
            findings.Add(Finding.Note(
                "length-of-another-kind", OtherKind.With(("group", group.Name), ("kind", kind)), OtherKindRemedy.With(("kind", kind))) with
            { Subject = "length" });
        }

        return null;
    }

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

    private static Spread Times(double mm, SourcedBand ratio, Phrase how) => new(mm * ratio.Low, mm * ratio.Nominal, mm * ratio.High, false, how, ratio.Source);

    private static bool HasAnyLength(Specimen s) =>
        s.TotalLength is not null || s.StandardLength is not null || s.SnoutVentLength is not null || s.HeadBodyLength is not null
        || s.CarapaceLength is not null || s.MantleLength is not null || s.DiscWidth is not null;
}
