namespace Protocolist.Cli.Commands;

/// <summary>How fluids are named; each of these is read.</summary>
internal static class FluidExamples
{
    public static readonly string[] All =
    [
        "borax-buffered formalin 10 %",
        "distilled water",
        "ethanol 62.4 %mass",
        "ethanol 70 %vol",
        "formaldehyde 4 % w/v",
        "formaldehyde stock 37 %mass",
        "formalin 10 %",
        "isopropanol 50 %vol",
        "neutral buffered formalin 10 %",
        "sea water",
        "sea-water formalin 10 %",
        "tap water",
        "water",
    ];
}
