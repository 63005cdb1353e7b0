using System.Runtime.InteropServices;
using Protocolist.Findings;

namespace Protocolist.Checks;

/// <summary>The step that a finding is about, and the figures of the plan that it rests on.</summary>
internal static class FindingFigures
{
    /// <summary>Ties a finding to a step, and to the figures of that step's settings.</summary>
    public static Finding At(this Finding finding, ReviewStep step, params ReadOnlySpan<string> settings)
    {
        var figures = new string[settings.Length];
        for (var i = 0; i < settings.Length; i++) figures[i] = $"{step.Id}.{settings[i]}";
        return finding with { Subject = step.Id, Figures = ImmutableCollectionsMarshal.AsImmutableArray(figures) };
    }

    /// <summary>Adds figures that a finding rests on.</summary>
    public static Finding By(this Finding finding, params ReadOnlySpan<string> figures) => finding with { Figures = finding.Figures.AddRange(figures) };

    /// <summary>Adds the same setting's figure of several steps.</summary>
    public static Finding ByEach(this Finding finding, IEnumerable<ReviewStep> steps, string setting) =>
        finding with { Figures = [.. finding.Figures.Union(steps.Select(s => $"{s.Id}.{setting}"))] };
}
