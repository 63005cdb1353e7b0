using NodaTime;
using Protocolist.Fluids;

namespace Protocolist.Rules;

/// <summary>The fixative is strong enough to fix.</summary>
internal static class FixingStrength
{
    public const string Id = "fixative-too-weak";
    public const string Source =
        "weakest formalin in use: Dawson, The Scyphozoan (4 parts of stock for jellyfish, about 15 g/L); ethanol 70 to 80 %vol: Michonneau 2017; "
        + "60 % for a day at first: Banks 1909, USNM Bulletin 67";

    /// <summary>Formaldehyde in g/L.</summary>
    public const double LeastGrams = 14;

    /// <summary>Alcohol in %vol that stops decay in a fresh body, and what may go before it for a day.</summary>
    public const double LeastAlcohol = 70;
    private const double BriefAlcohol = 60;

    /// <summary>A day, and the hours until somebody is there.</summary>
    private static readonly Duration Brief = Duration.FromHours(30);

    public static bool IsTooWeakFormalin(Fluid fluid) => fluid.FormaldehydeGramsPerLitre < LeastGrams;

    public static bool IsTooWeakAlcohol(Fluid fluid) => fluid.IsAlcohol && fluid.AlcoholVolumePercent < LeastAlcohol - 1e-9;

    /// <summary>Whether a weak first alcohol will do where a strong one follows: a day at most in 60 % is a published way for myriapods (Banks 1909).</summary>
    public static bool MayGoBefore(Fluid weak, Duration lasts) => weak.AlcoholVolumePercent >= BriefAlcohol - 1e-9 && lasts <= Brief;
}
