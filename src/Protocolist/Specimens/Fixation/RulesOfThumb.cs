using System.Collections.Immutable;
using Protocolist.Findings;

namespace Protocolist.Specimens.Fixation;

/// <summary>What a rule that people go by says of a depth.</summary>
/// <param name="Id">A kebab-case id.</param>
/// <param name="Says">The rule, in words.</param>
/// <param name="Hours">The time it gives, h.</param>
/// <param name="OverPromises">Whether the depth is past what the rule is good for, so that it promises too much.</param>
/// <param name="Source">Who goes by it.</param>
internal sealed record RuleOfThumb(string Id, Phrase Says, double Hours, bool OverPromises, string Source);

/// <summary>Rules of thumb for the time of fixation, to set beside the model's.</summary>
internal static class RulesOfThumb
{
    private static readonly ImmutableArray<Rule> All =
    [
        new(
            "half-thickness-over-five",
            new("thumb.half-thickness-over-five", "half of (half-thickness in mm over 5) squared, in days; at least 2 days, at most 60"),
            mm => 24 * Math.Clamp(0.5 * mm / 5 * (mm / 5), 2, 60),
            54.8, // comes to 60 d
            "common practice: a fit to the times kept for fish and reptiles, unsure"),

        // Crosses K = 2 at 31 h, then over-promises; good to about 24 h, which is 8.7 mm.
        new(
            "one-then-a-third", new("thumb.one-then-a-third", "1 mm in the first hour, then 1 mm in 3 hours"), mm => mm <= 1 ? mm : 1 + (3 * (mm - 1)), 8.7,
            "formalin fixation protocols; good to about 24 h"),

        // Equals K = 2 at 4 h only.
        new("millimetre-an-hour", new("thumb.millimetre-an-hour", "1 mm an hour"), mm => mm, 4, "from memory; good to about 4 h"),
    ];

    /// <summary>What each rule says.</summary>
    /// <param name="depthMm">Depth to cross, mm, 0 or more.</param>
    /// <returns>The rules, the soundest first.</returns>
    public static ImmutableArray<RuleOfThumb> For(double depthMm) => [.. All.Select(r => r.For(depthMm))];

    /// <summary>The longest time, h, of the rules that are good for a depth; 0 where none is.</summary>
    internal static double SoundHours(double depthMm)
    {
        var most = 0.0;
        foreach (var rule in All)
        {
            if (depthMm <= rule.GoodToMm) most = Math.Max(most, rule.Hours(depthMm));
        }

        return most;
    }

    /// <summary>The rule that gives the longest time for a depth past what it is good for, still shorter than a limit; null where none does.</summary>
    internal static RuleOfThumb? OverPromising(double depthMm, double belowHours)
    {
        Rule? longest = null;
        foreach (var rule in All)
        {
            if (depthMm <= rule.GoodToMm || !(rule.Hours(depthMm) < belowHours)) continue;
            if (longest is null || rule.Hours(depthMm) > longest.Hours(depthMm)) longest = rule;
        }

        return longest?.For(depthMm);
    }

    private sealed record Rule(string Id, Phrase Says, Func<double, double> Hours, double GoodToMm, string Source)
    {
        public RuleOfThumb For(double depthMm) => new(Id, Says, Hours(depthMm), depthMm > GoodToMm, Source);
    }
}
