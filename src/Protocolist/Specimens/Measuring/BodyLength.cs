using System.Collections.Immutable;
using Protocolist.Findings;
using UnitsNet;
using static System.FormattableString;

namespace Protocolist.Specimens.Measuring;

/// <summary>The length that a group is measured by, from whichever length was taken.</summary>
internal static class BodyLength
{
    // A steel rule on a limp animal: common practice.
    private const double ReadingError = 0.02;

    // Total over standard length of a fish with an ordinary tail fin: from memory, unsure.
    private static readonly SourcedBand TotalPerStandard = new(1.10, 1.18, 1.28, "from memory, unsure");

    /// <summary>The customary length in mm; null where no length that leads to it was taken.</summary>
    public static Spread? Of(Specimen specimen, TaxonGroup group, ImmutableArray<Finding>.Builder findings)
    {
        var named = specimen.LengthOf(group.Length);
        if (specimen.Length is { } plain)
        {
            if (named is { } other && Math.Abs((plain.Meters / other.Meters) - 1) > 0.02)
            {
                findings.Add(Finding.Warning(
                    "two-lengths",
                    Invariant($"length {plain.Centimeters:0.##} cm and {Words(group.Length)} {other.Centimeters:0.##} cm mean the same in a {group.Name} but differ; the latter is used"),
                    "leave one out, or measure again") with
                { Subject = "length" });
                return Spread.Measured(other.Millimeters, ReadingError);
            }

            return Spread.Measured(plain.Millimeters, ReadingError);
        }

        if (named is { } direct) return Spread.Measured(direct.Millimeters, ReadingError);
        if (group.Length is LengthKind.Total && specimen.StandardLength is { } standard) return Scaled(standard, TotalPerStandard, "from standard length");
        if (specimen.TotalLength is { } total && group.TotalPerLength is { } ratio)
        {
            return new(total.Millimeters / ratio.High, total.Millimeters / ratio.Nominal, total.Millimeters / ratio.Low, false, "from total length", ratio.Source);
        }

        if (AnyLength(specimen))
        {
            findings.Add(Finding.Note(
                "length-of-another-kind",
                $"a {group.Name} is measured by its {Words(group.Length)}, and no such length is given",
                $"give length: as the {Words(group.Length)}") with
            { Subject = "length" });
        }

        return null;
    }

    /// <summary>Tip to tip in mm, for the vessel.</summary>
    public static Spread Total(Specimen specimen, TaxonGroup group, Spread customary)
    {
        if (specimen.TotalLength is { } total) return Spread.Measured(total.Millimeters, ReadingError);
        if (group.TotalPerLength is not { } ratio) return customary;
        return new(customary.Low * ratio.Low, customary.Nominal * ratio.Nominal, customary.High * ratio.High, customary.IsMeasured && ratio.Low == ratio.High,
            ratio.Low == ratio.High ? customary.How : $"from {Words(group.Length)}", ratio.Source);
    }

    public static string Words(LengthKind kind) => kind switch
    {
        LengthKind.Total => "total length",
        LengthKind.Standard => "standard length",
        LengthKind.SnoutVent => "snout-vent length",
        LengthKind.HeadBody => "head-body length",
        LengthKind.Carapace => "carapace length",
        LengthKind.Mantle => "mantle length",
        LengthKind.Disc => "width of the disc",
        _ => "shell length",
    };

    private static Spread Scaled(Length length, SourcedBand ratio, string how) =>
        new(length.Millimeters * ratio.Low, length.Millimeters * ratio.Nominal, length.Millimeters * ratio.High, false, how, ratio.Source);

    private static bool AnyLength(Specimen s) => Enum.GetValues<LengthKind>().Any(k => s.LengthOf(k) is not null);
}
