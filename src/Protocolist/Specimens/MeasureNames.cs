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
    public static readonly Phrase ForearmLength = new("measure.forearm-length", "forearm length");
    public static readonly Phrase CarapaceWidth = new("measure.carapace-width", "width of the carapace");
    public static readonly Phrase EggDiameter = new("measure.egg-diameter", "diameter of the egg");
    public static readonly Phrase VentralMantleLength = new("measure.ventral-mantle-length", "ventral mantle length");
    public static readonly Phrase BodyLength = new("measure.body-length", "body length without the tail");
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
        LengthKind.Forearm => ForearmLength,
        LengthKind.CarapaceWidth => CarapaceWidth,
        LengthKind.EggDiameter => EggDiameter,
        LengthKind.VentralMantle => VentralMantleLength,
        LengthKind.Body => BodyLength,
        _ => ShellLength,
    };
}
