using Protocolist.Findings;
using Protocolist.Quantities;
using UnitsNet;
using Duration = NodaTime.Duration;

namespace Protocolist.Checks;

/// <summary>How findings tell their numbers, and what they rest on.</summary>
internal static class Telling
{
    public static string Text(this Volume volume) => Measurable.Text(volume.CubicMeters, Dimension.OfVolume);

    public static string Text(this Length length) => Measurable.Text(length.Meters, Dimension.OfLength);

    public static string Text(this Mass mass) => Measurable.Text(mass.Kilograms, Dimension.OfMass);

    public static string Text(this Duration time) => Measurable.Text(time.TotalSeconds, Dimension.OfTime);

    /// <summary>Ties a finding to a step, and to the figures of that step's settings.</summary>
    public static Finding At(this Finding finding, ReviewStep step, params ReadOnlySpan<string> settings)
    {
        var figures = new string[settings.Length];
        for (var i = 0; i < settings.Length; i++) figures[i] = $"{step.Id}.{settings[i]}";
        return finding with { Subject = step.Id, Figures = [.. figures] };
    }

    /// <summary>Adds figures that a finding rests on.</summary>
    public static Finding By(this Finding finding, params ReadOnlySpan<string> figures) => finding with { Figures = [.. finding.Figures, .. figures] };
}
