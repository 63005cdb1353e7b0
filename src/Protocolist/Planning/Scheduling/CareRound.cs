using System.Collections.Immutable;
using NodaTime;
using Protocolist.Benches;
using Protocolist.Findings;

namespace Protocolist.Planning.Scheduling;

/// <summary>Something to be done again and again after sealing.</summary>
/// <param name="Id">A kebab-case name.</param>
/// <param name="Title">What is done.</param>
/// <param name="First">How long after sealing it comes first.</param>
/// <param name="Every">How often from then on; null for once only.</param>
/// <param name="Source">Where the rhythm comes from.</param>
internal sealed record CareRule(string Id, Message Title, Period First, Period? Every, string Source)
{
    /// <summary>Whether it is for the lid alone, so that nothing is topped up.</summary>
    public bool IsForLid { get; init; }
}

/// <summary>One care rule's dates up to a horizon, and the date from which the rule alone goes on; null for what comes only once.</summary>
internal sealed record CareDates(CareRule Rule, ImmutableArray<LocalDate> Dates, LocalDate? ThenFrom);

/// <summary>The round of care for decades after sealing.</summary>
internal static class CareRound
{
    private static readonly Phrase FirstCheck = new("care-first-check", "check strength, colour and leaks; change the fluid if it is diluted");
    private static readonly Phrase HalfYearlyCheck = new("care-half-yearly-check", "check level, lid, seal and colour");
    private static readonly Phrase YearlyTest = new("care-yearly-test", "test strength (alcohol) or pH (formalin), all jars or a sample");
    private static readonly Phrase TapeSeal = new("care-tape-seal", "renew tape seals");
    private static readonly Phrase Gasket = new("care-gasket", "renew gaskets and lids");

    /// <summary>The usual round, for jars without a protocol's own.</summary>
    public static ImmutableArray<CareRule> Usual { get; } =
    [
        // One to four weeks after sealing is common practice; that the first fluid is tested and changed when diluted: Simmons, NHCOLL-L 2009.
        new("first-check", FirstCheck, Period.FromWeeks(2), null, "common practice (1 to 4 weeks)"),
        new("half-yearly-check", HalfYearlyCheck, Period.FromMonths(6), Period.FromMonths(6), "SPNHC best practices, Fluid Collection Monitoring, 2019"),
        new("yearly-test", YearlyTest, Period.FromYears(1), Period.FromYears(1), "common practice"),
        new("tape-seal", TapeSeal, Period.FromYears(2), Period.FromYears(2), "common practice"),
        // Synthetic gaskets last 10 to 20 years: P. F. Clark 1992.
        new("gasket", Gasket, Period.FromYears(10), Period.FromYears(10), "Clark 1992, Ground Glass Stoppered Jars (10 to 20 years)") { IsForLid = true },
    ];

    /// <summary>Dates a rule. Each turn counts from the sealing itself, so that moving one to an open day never shifts the later ones.</summary>
    /// <param name="rule">The rule.</param>
    /// <param name="sealedOn">The date of sealing.</param>
    /// <param name="horizon">The last date that is listed.</param>
    /// <param name="hours">The bench; a turn on a closed day moves to the next open one within a month, else it stays.</param>
    /// <returns>The dates in order, none twice.</returns>
    public static CareDates Dates(CareRule rule, LocalDate sealedOn, LocalDate horizon, OpeningHours hours)
    {
        var dates = ImmutableArray.CreateBuilder<LocalDate>();
        for (var turn = 0; ; turn++)
        {
            var due = OpenFrom(Turn(rule, sealedOn, turn), hours);
            if (due > horizon) return new CareDates(rule, dates.DrainToImmutable(), turn == 0 || rule.Every is not null ? due : null);
            if (dates.Count == 0 || due > dates[^1]) dates.Add(due);
            if (rule.Every is null) return new CareDates(rule, dates.DrainToImmutable(), null);
        }
    }

    /// <summary>From the anchor each time: 31 August and half a year is 28 February, and a year is 31 August again.</summary>
    private static LocalDate Turn(CareRule rule, LocalDate sealedOn, int turns)
    {
        var (first, every) = (rule.First, rule.Every ?? Period.Zero);
        return sealedOn.PlusMonths(MonthsOf(first) + (turns * MonthsOf(every))).PlusDays(DaysOf(first) + (turns * DaysOf(every)));

        static int MonthsOf(Period period) => (12 * period.Years) + period.Months;

        static int DaysOf(Period period) => (7 * period.Weeks) + period.Days;
    }

    private static LocalDate OpenFrom(LocalDate due, OpeningHours hours)
    {
        for (var days = 0; days < 31; days++)
        {
            if (hours.OpensOn(due.PlusDays(days))) return due.PlusDays(days);
        }

        return due;
    }
}
