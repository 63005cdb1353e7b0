namespace Protocolist.Rules;

/// <summary>Formalin does not stand in the cold for days.</summary>
internal static class ColdFixative
{
    public const string Id = "fixative-too-cold";
    public const string Source = "SPNHC best-practices wiki, Fluid Collections (cooler temperatures promote it); the 10 degrees are common practice";

    public const double LeastCelsius = 10;

    public static bool FallsOut(double celsius) => celsius < LeastCelsius;
}
