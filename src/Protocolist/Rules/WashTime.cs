using Protocolist.Fluids;
using Protocolist.Fluids.Infiltration;
using UnitsNet;
using Duration = NodaTime.Duration;

namespace Protocolist.Rules;

/// <summary>What a wash falls short of.</summary>
internal enum WashFault
{
    None,

    /// <summary>The time that every body has.</summary>
    BelowLeast,

    /// <summary>Half of the free formaldehyde out.</summary>
    HalfStays,
}

/// <summary>The wash between formalin and alcohol is long enough for so thick a body.</summary>
internal static class WashTime
{
    public const string Id = "wash-too-short";
    public const string Source =
        "at least 24 h: Meador, Cuffney and Gurtz 1993, USGS Open-File Report 93-104 (48 h for fishes); "
        + "half washed out at the least: the project's choice, by diffusion (Crank 1975)";

    public static readonly Duration Least = Duration.FromHours(24);

    /// <summary>Thinner bodies are rinsed in minutes: embryos twice for 10 min (University of Washington, fixing gametes and embryos).</summary>
    private static readonly Length Tiny = Length.FromMillimeters(1);

    /// <summary>Share of the free formaldehyde that must be out at best: the project's choice, below what every handbook's time reaches.</summary>
    public const double LeastGone = 0.5;

    /// <summary>The share of the free formaldehyde that is gone after so long, by the faster of two reckonings.</summary>
    public static double Gone(Length depth, Duration washes) =>
        Diffusion.Reached(DiffusionShape.Cylinder, depth, washes.TotalSeconds, Solute.Formaldehyde).Fast;

    /// <summary>What washes that follow each other fall short of, together.</summary>
    public static WashFault Of(Length depth, Duration washes) =>
        washes < Least && depth > Tiny ? WashFault.BelowLeast : Gone(depth, washes) < LeastGone ? WashFault.HalfStays : WashFault.None;
}
