using System.Collections.Immutable;
using NodaTime;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Planning.Drafting;
using Protocolist.Planning.Provisioning;
using Protocolist.Planning.Scheduling;
using Protocolist.Plans;
using Protocolist.Protocols;
using Protocolist.Quantities;
using Protocolist.Vessels;

namespace Protocolist.Planning.Reviewing;

/// <summary>What comes after sealing: the protocol's own rounds, and the usual ones where it has none, dated from the day the vessel is closed.</summary>
internal static class CareWriting
{
    /// <summary>A month and a year of a rhythm, as the unit table counts them.</summary>
    private const double MonthSeconds = 30 * 86400, YearSeconds = 365 * 86400;

    /// <summary>How far ahead dates are listed; after that the rhythm alone goes on. The project's choice.</summary>
    private const int HorizonYears = 10;

    private static readonly Phrase Renew = new("care-renew", "renew the {closure}");
    private static readonly Phrase AnyClosure = new("sealing.any", "closure");
    private static readonly Phrase TestStrength = new("care-test-strength", "test the strength, all jars or a sample: {strength:0} %vol is wanted");

    // 6.5 to 7.5: common practice.
    private static readonly Phrase TestPh = new("care-test-ph", "test the pH, all jars or a sample: 6.5 to 7.5 is wanted; change the fluid when it turns acid");

    public static ImmutableArray<CareEvent> Events(Draft draft, StockDay day)
    {
        var bench = day.Stock.Bench;
        var closed = draft.Steps.LastOrDefault(s => s.Kind is StageKind.Seal or StageKind.House
            && s.When is not null)?.When?.End.InZone(bench.Opening.Zone).Date;
        List<CareRule> own = [];
        foreach (var step in draft.Steps)
        {
            if (step.Work is SealWork or CareWork) own.AddRange(Own(step));
        }

        var amount = TopUpAmount.Of(draft, day);
        var events = new List<CareEvent>();
        foreach (var rule in own)
        {
            if (Dated(rule, closed, bench, amount, DoneOf(rule, draft, bench)) is { } still) events.Add(still);
        }

        foreach (var usual in CareRound.Usual)
        {
            if (Wanted(usual, own, draft)) events.Add(Dated(Worded(usual, draft), closed, bench, amount, null)!);
        }

        events.Sort(InOrder);
        return [.. events];
    }

    /// <summary>By the day; on one day, and without days, by their ids, whatever they are called in a language.</summary>
    private static int InOrder(CareEvent a, CareEvent b)
    {
        var day = (a.On ?? LocalDate.MaxIsoValue).CompareTo(b.On ?? LocalDate.MaxIsoValue);
        if (day != 0) return day;
        return string.CompareOrdinal(a.Id, b.Id);
    }

    /// <summary>When a round of the protocol was done last, by the log; null where nobody logged it.</summary>
    private static LocalDate? DoneOf(CareRule rule, Draft draft, Bench bench)
    {
        foreach (var step in draft.Steps)
        {
            if (step.IsCare && (rule.Id == step.Id || rule.Id == $"{step.Id}-first") && step.Progress?.Ended is { } done)
                return done.InZone(bench.Opening.Zone).Date;
        }

        return null;
    }

    /// <summary>The dates of a rule that are still to come; null where it comes once and is done.</summary>
    private static CareEvent? Dated(CareRule rule, LocalDate? closed, Bench bench, Message amount, LocalDate? done)
    {
        if (done is not null && rule.Every is null) return null;
        int? months = rule.Every is { } every ? (12 * every.Years) + every.Months : null;
        var dates = closed is { } on ? CareRound.Dates(rule, on, on.PlusYears(HorizonYears), bench.Opening) : new(rule, [], null);
        if (done is { } last) dates = dates with { Dates = [.. dates.Dates.Where(d => d > last)] };
        return new(rule.Title, dates.Dates.IsEmpty ? dates.ThenFrom : dates.Dates[0], months, rule.Source)
        {
            Id = rule.Id,
            Dates = dates.Dates,
            Amount = rule.IsForLid ? default : amount,
        };
    }

    /// <summary>The rounds that the protocol itself asks for.</summary>
    private static IEnumerable<CareRule> Own(DraftStep step)
    {
        if (step.Work is SealWork { Renew: { } renewed } seal && Months(renewed) is { } renew)
        {
            var what = Renew.With(("closure", seal.With?.Name ?? AnyClosure));
            yield return new($"{step.Id}-renew", what, Period.FromMonths(renew), Period.FromMonths(renew), step.Stage.Source) { IsForLid = true };
        }

        if (step.Work is not CareWork care) yield break;
        var round = step.Title == step.Stage.Title ? step.Stage.Round : step.Stage.RoundOf(step.Title);
        var every = Months(care.Every);
        if (Days(care.After) is { } after)
            yield return new(every is null ? step.Id : $"{step.Id}-first", round, Period.FromDays(after), null, step.Stage.Source);
        if (every is { } months) yield return new(step.Id, round, Period.FromMonths(months), Period.FromMonths(months), step.Stage.Source);
    }

    /// <summary>Whether a usual round is missing from the protocol's own.</summary>
    private static bool Wanted(CareRule usual, List<CareRule> own, Draft draft)
    {
        var closing = ClosingOf(draft);
        var renews = own.Exists(o => o.IsForLid);
        return usual.Id switch
        {
            "first-check" => !own.Exists(o => o.Every is null),
            "half-yearly-check" => !own.Exists(o => o.Every is { Years: 0, Months: <= 6 }),
            "tape-seal" => closing == ClosingMethod.Tape && !renews,
            "gasket" => closing == ClosingMethod.OwnLid && !renews,
            _ => draft.Steps.Any(s => s.Kind == StageKind.House && s.Fluid is not null),
        };
    }

    /// <summary>How the vessel that was chosen is closed; where none was, what the protocol had in mind.</summary>
    private static ClosingMethod? ClosingOf(Draft draft)
    {
        if (draft.Steps.LastOrDefault(s => s.Kind == StageKind.Seal) is not { } seal) return null;
        var work = seal.Work as SealWork;
        return work?.Chosen?.Way.Method
            ?? (work?.With == Sealing.Tape
                ? ClosingMethod.Tape
                : work?.With == Sealing.ScrewLid || work?.With == Sealing.SnapLid ? ClosingMethod.OwnLid : null);
    }

    /// <summary>The yearly test in the words of what is kept: strength of alcohol, pH of formalin.</summary>
    private static CareRule Worded(CareRule usual, Draft draft) => usual.Id != "yearly-test"
        ? usual
        : draft.Steps.LastOrDefault(s => s.Kind == StageKind.House)?.Fluid switch
        {
            { IsAlcohol: true } fluid => usual with { Title = TestStrength.With(("strength", fluid.AlcoholVolumePercent)) },
            { HasFormaldehyde: true } => usual with { Title = TestPh },
            _ => usual,
        };

    private static int? Months(QuantityRange? time) => time is { IsFinite: true, Middle: var seconds }
        ? (int)Math.Clamp(Math.Round(Rest(seconds / YearSeconds) < 1e-6 ? 12 * seconds / YearSeconds : seconds / MonthSeconds), 1, 1200)
        : null;

    /// <summary>What is over whole years: five of them are sixty months, though 61 months of thirty days fit in.</summary>
    private static double Rest(double years) => years < 0.5 ? 1 : Math.Abs(years - Math.Round(years));

    private static int? Days(QuantityRange? time) =>
        time is { IsFinite: true, Middle: var seconds } ? (int)Math.Clamp(Math.Round(seconds / 86400), 0, 36500) : null;
}
