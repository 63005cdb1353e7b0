using System.Collections.Immutable;

namespace Protocolist.Specimens.Fixation;

/// <summary>What a rule that people go by says of a depth.</summary>
/// <param name="Id">A kebab-case id.</param>
/// <param name="Says">The rule, in words.</param>
/// <param name="Hours">The time it gives, h.</param>
/// <param name="OverPromises">Whether the depth is past what the rule is good for, so that it promises too much.</param>
/// <param name="Source">Who goes by it.</param>
public sealed record RuleOfThumb(string Id, string Says, double Hours, bool OverPromises, string Source);

/// <summary>Rules of thumb for the time of fixation, to set beside the reckoning.</summary>
public static class RulesOfThumb
{
    /// <summary>What each rule says.</summary>
    /// <param name="depthMm">Depth to cross, mm, 0 or more.</param>
    /// <returns>The rules, the soundest first.</returns>
    public static ImmutableArray<RuleOfThumb> For(double depthMm) =>
    [
        new("half-thickness-over-five", "half of (half-thickness in mm over 5) squared, in days; at least 2 days, at most 60",
            24 * Math.Clamp(0.5 * depthMm / 5 * (depthMm / 5), 2, 60), depthMm > 54.8, "common practice: a fit to the times kept for fish and reptiles, unsure"), // 60 d at 54.8 mm

        // Crosses K = 2 at 31 h, then over-promises; good to about 24 h, which is 8.7 mm.
        new("one-then-a-third", "1 mm in the first hour, then 1 mm in 3 hours",
            depthMm <= 1 ? depthMm : 1 + (3 * (depthMm - 1)), depthMm > 8.7, "formalin fixation protocols; good to about 24 h"),

        // Equals K = 2 at 4 h only.
        new("millimetre-an-hour", "1 mm an hour", depthMm, depthMm > 4, "from memory; good to about 4 h"),
    ];
}
