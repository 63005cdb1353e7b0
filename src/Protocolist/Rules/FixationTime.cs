using Protocolist.Quantities;
using Protocolist.Specimens.Fixation;

namespace Protocolist.Rules;

/// <summary>The body lies in fixative until its middle is fixed.</summary>
internal static class FixationTime
{
    public const string Id = "fixation-too-short";
    public const string Source =
        "Fick's law with the fastest rates measured in tissue (Steicke and others 2018); "
        + "handbooks give less for whole small fishes (USGS 93-104: 2 d to a week)";

    private const double Hour = 3600;

    /// <summary>
    /// A film of tissue is crossed in minutes; what the model waits for is binding, and handbooks fix flatworms, larvae and embryos of this thickness
    /// for 12 to 24 h (common practice).
    /// </summary>
    private const double FilmMm = 1;
    private const double OvernightHours = 12;

    /// <summary>The least hours in its fixatives after which the slowest part is reached and bound.</summary>
    public static double LeastHours(BodyFixation model) =>
        model.Slowest.DepthMm < FilmMm ? Math.Min(model.Time.LowHours, OvernightHours) : model.Time.LowHours;

    /// <summary>Whether a body that lies in its fixatives for these times may be taken out before the slowest part is reached and bound.</summary>
    public static bool IsTooShort(QuantityRange lies, BodyFixation model) => lies.Low / Hour < LeastHours(model);
}
