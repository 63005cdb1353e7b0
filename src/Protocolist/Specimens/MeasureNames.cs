using Protocolist.Findings;

namespace Protocolist.Specimens;

/// <summary>What the measures of a specimen are called.</summary>
internal static class MeasureNames
{
    public static readonly Phrase Mass = new("measure.mass", "mass");
    public static readonly Phrase LotMass = new("measure.lot-mass", "lot mass");
    public static readonly Phrase DisplacementVolume = new("measure.displacement-volume", "displacement volume");
    public static readonly Phrase Length = new("measure.length", "length");
    public static readonly Phrase TotalLength = new("measure.total-length", "total length");
    public static readonly Phrase StandardLength = new("measure.standard-length", "standard length");
    public static readonly Phrase SnoutVentLength = new("measure.snout-vent-length", "snout-vent length");
    public static readonly Phrase HeadBodyLength = new("measure.head-body-length", "head-body length");
    public static readonly Phrase CarapaceLength = new("measure.carapace-length", "carapace length");
    public static readonly Phrase MantleLength = new("measure.mantle-length", "mantle length");
    public static readonly Phrase DiscWidth = new("measure.disc-width", "width of the disc");
    public static readonly Phrase ShellLength = new("measure.shell-length", "shell length");
    public static readonly Phrase Girth = new("measure.girth", "girth");
    public static readonly Phrase Width = new("measure.width", "width");
    public static readonly Phrase Height = new("measure.height", "height");
    public static readonly Phrase Thickness = new("measure.thickness", "thickness");

    /// <summary>The length that a group is measured by.</summary>
    public static Phrase Of(LengthKind kind) => kind switch
    {
        LengthKind.Total => TotalLength,
        LengthKind.Standard => StandardLength,
        LengthKind.SnoutVent => SnoutVentLength,
        LengthKind.HeadBody => HeadBodyLength,
        LengthKind.Carapace => CarapaceLength,
        LengthKind.Mantle => MantleLength,
        LengthKind.Disc => DiscWidth,
        _ => ShellLength,
    };
}
