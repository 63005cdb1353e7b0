using NodaTime;
using Protocolist.Findings;
using Protocolist.Plans;

namespace Protocolist.Logs;

/// <summary>Whether a log fits a plan.</summary>
internal static class LogCheck
{
    private static readonly Phrase LogOfAnotherSpecimen = new("log-of-another-specimen", "the log is of '{specimen}', and the plan is for '{plan}'");
    private static readonly Phrase LogOfAnotherSpecimenRemedy = new("log-of-another-specimen.remedy", "take the log that belongs to the plan");
    private static readonly Phrase UnknownStep = new("unknown-step", "the plan has no step '{step}'");
    private static readonly Phrase TimeOutsidePlan = new("time-outside-plan", "'{step}' lies at {first:minute}, before the animal died at {died:minute} (UTC)");
    private static readonly Phrase TimeOutsidePlanRemedy = new("time-outside-plan.remedy", "correct the time, or 'died-at' of the specimen");
    private static readonly Phrase YearsFromPlan = new(
        "time-outside-plan.years", "'{step}' lies at {last:minute} (UTC), years from the plan, which begins {start:minute}");
    private static readonly Phrase YearsFromPlanRemedy = new("time-outside-plan.years.remedy", "check the year");

    /// <summary>A log that runs on for longer than any plan is a year mistyped. The project's choice.</summary>
    private static readonly Duration Longest = Duration.FromDays(5 * 366);

    /// <summary>Compares a log with a plan.</summary>
    /// <param name="log">The log.</param>
    /// <param name="plan">The plan it is kept for.</param>
    /// <param name="steps">The ids of all steps that an entry may name: the plan's own, and those that earlier entries called for.</param>
    /// <returns>Errors <c>log-of-another-specimen</c>, <c>unknown-step</c>, <c>time-outside-plan</c>; none where it fits.</returns>
    public static IEnumerable<Finding> Against(WorkLog log, Plan plan, IReadOnlyCollection<string> steps)
    {
        ArgumentNullException.ThrowIfNull(log);
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(steps);
        if (!string.Equals(log.Specimen, plan.Specimen.Id, StringComparison.Ordinal))
            yield return Finding.Error(
                "log-of-another-specimen",
                LogOfAnotherSpecimen.With(("specimen", log.Specimen), ("plan", plan.Specimen.Id)),
                LogOfAnotherSpecimenRemedy,
                log.Entries.IsEmpty ? default : log.Entries[0].Where);
        foreach (var entry in log.Entries)
        {
            if (!steps.Contains(entry.Step))
                yield return Finding.Error("unknown-step", UnknownStep.With(("step", entry.Step)), Suggestion.For(entry.Step, steps), entry.Where);
            if (Outside(entry, plan) is { } finding) yield return finding;
        }
    }

    private static Finding? Outside(LogEntry entry, Plan plan)
    {
        if ((entry.Begun ?? entry.Moment) is not { } first || entry.Moment is not { } last) return null;
        if (plan.Specimen.DiedAt is { } died && first < died)
            return Finding.Error(
                "time-outside-plan",
                TimeOutsidePlan.With(("step", entry.Step), Argument.At("first", first, DateTimeZone.Utc), Argument.At("died", died, DateTimeZone.Utc)),
                TimeOutsidePlanRemedy,
                entry.Where);
        return plan.Start?.ToInstant() is { } start && (last > start + Longest || first < start - Longest)
            ? Finding.Error(
                "time-outside-plan",
                YearsFromPlan.With(("step", entry.Step), Argument.At("last", last, DateTimeZone.Utc), Argument.At("start", start, DateTimeZone.Utc)),
                YearsFromPlanRemedy,
                entry.Where)
            : null;
    }
}
