using NodaTime;
using Protocolist.Planning.Drafting;
using Protocolist.Rules;
using Protocolist.Specimens;

namespace Protocolist.Planning.Dating;

/// <summary>How long a body waits until fixative meets it, against what it bears.</summary>
/// <param name="Minutes">From when work was to begin until then; 0 where nothing fixes it or there are no dates.</param>
/// <param name="TenthsBeyond">Of what it bears from death, or from when it came, the tenths by which it waits longer.</param>
internal readonly record struct WaitUnfixed(long Minutes, long TenthsBeyond)
{
    /// <summary>The wait of a dated draft.</summary>
    /// <param name="draft">The draft.</param>
    /// <param name="asked">When work was to begin.</param>
    /// <param name="zone">On whose clocks the day of finding is meant.</param>
    public static WaitUnfixed Of(Draft draft, Instant asked, DateTimeZone zone)
    {
        foreach (var step in draft.Steps)
        {
            if (!Fixes(step) || step.When is not { } when) continue;
            var wait = when.Start - asked;
            var minutes = Math.Max(0, (long)wait.TotalMinutes);
            if (draft.Body.Specimen.Condition == Condition.Frozen) return new(minutes, 0);
            var beyond = wait - Borne(draft.Body.Specimen, asked, zone);
            return new(minutes, beyond <= Duration.Zero ? 0 : (long)Math.Ceiling(beyond / Tenth(draft.Body.Specimen)));
        }

        return default;
    }

    /// <summary>Whether fixative meets the body in a step.</summary>
    public static bool Fixes(DraftStep step) => step.Fluid is not null && step.Kind is StageKind.Inject or StageKind.Immerse;

    /// <summary>A tenth of what a body bears: less than that is no reason to change anything.</summary>
    public static Duration Tenth(Specimen specimen) => HoursBorne.Unfixed(specimen.Condition) / 10;

    /// <summary>How long it may yet wait: what it bears without the time that has gone by since death, and at the least a tenth.</summary>
    public static Duration Borne(Specimen specimen, Instant asked, DateTimeZone zone)
    {
        var died = specimen.DiedAt ?? LatestFound(specimen, zone);
        var gone = died < asked ? asked - died.Value : Duration.Zero;
        return Duration.Max(HoursBorne.Unfixed(specimen.Condition) - gone, Tenth(specimen));
    }

    /// <summary>Of the finding only the day is known; its end is the latest that it can have been, so that nothing is called late that may not be.</summary>
    public static Instant? LatestFound(Specimen specimen, DateTimeZone zone) =>
        specimen.FoundOn is { } day ? zone.AtStartOfDay(day.PlusDays(1)).ToInstant() : null;
}
