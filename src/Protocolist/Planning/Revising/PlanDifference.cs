using System.Collections.Immutable;
using NodaTime;
using Protocolist.Findings;
using Protocolist.Plans;
using Protocolist.Quantities;
using UnitsNet;

namespace Protocolist.Planning.Revising;

/// <summary>What a revision changed and why, line by line.</summary>
internal static class PlanDifference
{
    private static readonly Phrase Gone = new("change.gone", "is no longer part of the plan");
    private static readonly Phrase NotCalledFor = new("change.gone.because", "the log does not call for it");
    private static readonly Phrase New = new("change.new", "new: {title}{when}{fluid}");
    private static readonly Phrase NewAt = new("change.new.at", ", {at:minute}");
    private static readonly Phrase NewFluid = new("change.new.fluid", ", {volume} of {fluid}");
    private static readonly Phrase LeftOut = new("change.left-out", "is left out");
    private static readonly Phrase IsDone = new("change.done", "is done, {start} to {end}");
    private static readonly Phrase HasBegun = new("change.begun", "has begun, {start}");
    private static readonly Phrase IsPlanned = new("change.planned", "is planned");
    private static readonly Phrase LogSilent = new("change.planned.because", "the log no longer says otherwise");
    private static readonly Phrase Was = new("change.was", "was {start} to {end}, not {old-start} to {old-end}");
    private static readonly Phrase SharedOut = new("change.because.shared-out", "the fluids were shared out anew");
    private static readonly Phrase Begins = new("change.begins", "begins {now} instead of {old}");
    private static readonly Phrase Ends = new("change.ends", "ends {now} instead of {old}");
    private static readonly Phrase ChangedTimes = new("change.changes", "its fluid is changed {now} instead of {old}");
    private static readonly Phrase Never = new("change.never", "never");
    private static readonly Phrase Times = new("change.times", "{count} times");
    private static readonly Phrase Once = new("change.once", "once");
    private static readonly Phrase Takes = new("change.takes", "takes {now} instead of {old}");
    private static readonly Phrase NoFluid = new("change.no-fluid", "no fluid");
    private static readonly Phrase None = new("change.none", "none");
    private static readonly Phrase Nothing = new("change.nothing", "nothing");
    private static readonly Phrase UsedSoMuch = new("change.takes.because", "that much was used");
    private static readonly Phrase IsIn = new("change.vessel", "is in {now} instead of {old}");
    private static readonly Phrase NoVessel = new("change.no-vessel", "no vessel");
    private static readonly Phrase Buy = new("change.buy", "buy {now} x {pack:amount} of {item} instead of {old}");
    private static readonly Phrase NeedsChanged = new("change.buy.because", "the fluids needed have changed");
    private static readonly Phrase SumChanged = new("change.sum", "{what}: {now} instead of {old}");
    private static readonly Phrase StepsChanged = new("change.sum.because", "the steps have changed");
    private static readonly Phrase CareDone = new("change.care-done", "is done, and does not come again");
    private static readonly Phrase CareNext = new("change.care-next", "comes next on {on:day}");
    private static readonly Phrase NotKnown = new("change.not-known", "not known");
    private static readonly Phrase NoDate = new("change.no-date", "at no date");
    private static readonly Phrase AMoment = new("change.moment", "{at:minute}");
    private static readonly Phrase WithOffset = new("change.moment.offset", "{at:offset}");

    private static readonly (Phrase What, Func<PlanCosts, Money?> Of)[] Sums =
    [
        (new("change.to-spend", "to spend"), c => c.Cash),
        (new("change.used", "worth of what is used"), c => c.Used),
        (new("change.work", "work"), c => c.Labour),
        (new("change.disposal", "disposal"), c => c.Disposal),
    ];

    public static ImmutableArray<PlanChange> Between(Plan before, Plan after)
    {
        var changes = new List<PlanChange>();
        var causes = new DateCauses(after);
        foreach (var step in after.Steps)
        {
            var old = before.Step(step.Id);
            changes.AddRange(OfStep(old, step, causes.Of(old, step)));
        }

        changes.AddRange(before.Steps.Where(s => after.Step(s.Id) is null).Select(s => new PlanChange(s.Id, Gone, NotCalledFor)));
        if (after.End == before.End) changes.AddRange(CaredFor(before, after));
        changes.AddRange(Bought(before, after));
        changes.AddRange(Sums.Select(s => (s.What, Old: s.Of(before.Costs), Now: s.Of(after.Costs))).Where(s => s.Old?.Minor != s.Now?.Minor)
            .Select(s => new PlanChange("", SumChanged.With(("what", s.What), Known("now", s.Now), Known("old", s.Old)), StepsChanged)));
        return [.. changes];
    }

    /// <summary>Rounds that were ticked off. Where the work itself ends on another day all of them move with it, and nothing is said of each.</summary>
    private static IEnumerable<PlanChange> CaredFor(Plan before, Plan after)
    {
        foreach (var care in before.Care)
        {
            var now = after.Care.FirstOrDefault(c => c.Id == care.Id);
            if (now is null) yield return new(care.Id, CareDone, DateCauses.Log);
            else if (now.On is { } on && on > care.On) yield return new(care.Id, CareNext.With(("on", on)), DateCauses.Log);
        }
    }

    private static IEnumerable<PlanChange> OfStep(Step? old, Step step, (Message Start, Message End) why)
    {
        if (old is null)
        {
            yield return new(
                step.Id,
                New.With(
                    ("title", step.Title),
                    ("when", step.Start is { } at ? NewAt.With(("at", at)) : default),
                    ("fluid", step is { Volume: { } v, Fluid: { } fluid } ? NewFluid.With(("volume", v), ("fluid", fluid)) : default)),
                DateCauses.AsOne(step.Because));
            yield break;
        }

        if (old.State != step.State)
        {
            yield return step.State switch
            {
                StepState.Skipped => new(step.Id, LeftOut, DateCauses.AsOne(step.Because)),
                StepState.Done => new(step.Id, IsDone.With(At("start", step.Start), At("end", step.End)), why.End.IsEmpty ? DateCauses.Log : why.End),
                StepState.Begun => new(step.Id, HasBegun.With(At("start", step.Start)), DateCauses.Log),
                _ => new(step.Id, IsPlanned, LogSilent),
            };
            if (step.State is StepState.Skipped) yield break;
        }
        else if (step.State is StepState.Done or StepState.Begun && (old.Start != step.Start || (step.State is StepState.Done && old.End != step.End)))
        {
            yield return new(step.Id, Was.With(At("start", step.Start), At("end", step.End), At("old-start", old.Start), At("old-end", old.End)), why.End);
        }

        var own = DateCauses.AsOne(DateCauses.NewCauses(old, step));
        var reason = !own.IsEmpty ? own : !step.Because.IsEmpty ? DateCauses.AsOne(step.Because) : SharedOut;
        if (step.State is StepState.Planned && old.Start != step.Start) yield return new(step.Id, Apart(Begins, step.Start, old.Start), why.Start);
        if (step.State is not StepState.Done && old.End != step.End) yield return new(step.Id, Apart(Ends, step.End, old.End), why.End);
        if (old.Changes != step.Changes) yield return new(step.Id, ChangedTimes.With(("now", Often(step.Changes)), ("old", Often(old.Changes))), reason);
        if (old.Fluid != step.Fluid) yield return new(step.Id, Takes.With(Named("now", step.Fluid, NoFluid), Named("old", old.Fluid, None)), reason);
        if (Rounded(old.Volume) != Rounded(step.Volume))
            yield return new(step.Id, Takes.With(Amount("now", step.Volume), Amount("old", old.Volume)), step.State == StepState.Done ? UsedSoMuch : reason);
        if (old.Vessel != step.Vessel) yield return new(step.Id, IsIn.With(Named("now", step.Vessel, NoVessel), Named("old", old.Vessel, None)), reason);
    }

    private static IEnumerable<PlanChange> Bought(Plan before, Plan after)
    {
        // As it reads: two packs that a person weighs out alike are the same.
        var packs = before.Purchases.Concat(after.Purchases).GroupBy(Alike).OrderBy(g => g.Key.Id, StringComparer.Ordinal).ThenBy(g => g.First().Pack.Units);
        foreach (var alike in packs)
        {
            var (one, old, now) = (alike.First(), Count(before, alike.Key), Count(after, alike.Key));
            if (old != now) yield return new("", Buy.With(("now", now), one.Pack.Fact("pack"), ("item", one.Item), ("old", old)), NeedsChanged);
        }

        static (string Id, Message Item, string Pack) Alike(PlannedPurchase purchase) => (purchase.Id, purchase.Item, purchase.Pack.ToString());
        static int Count(Plan plan, (string Id, Message Item, string Pack) key) => plan.Purchases.Where(p => Alike(p) == key).Sum(p => p.Count);
    }

    private static Message Often(int changes) => changes switch { 0 => Never, 1 => Once, _ => Times.With(("count", changes)) };

    /// <summary>Two moments that the clocks of two zones show alike are told apart by their offsets.</summary>
    private static Message Apart(Phrase phrase, OffsetDateTime? now, OffsetDateTime? old)
    {
        var isAlike = now is { } a && old is { } b && a.LocalDateTime.Date == b.LocalDateTime.Date && a.Hour == b.Hour && a.Minute == b.Minute;
        return phrase.With(At("now", now, isAlike), At("old", old, isAlike));
    }

    private static Argument At(string name, OffsetDateTime? at, bool withOffset = false) =>
        (name, at is { } moment ? (withOffset ? WithOffset : AMoment).With(("at", moment)) : NoDate);

    private static Argument Named(string name, string? text, Phrase none) => text is null ? (name, none) : (name, text);

    private static Argument Known(string name, Money? money) => money is null ? (name, NotKnown) : (name, money);

    private static Argument Amount(string name, Volume? volume) => volume is { } v ? (name, v) : (name, Nothing);

    /// <summary>Amounts that a person measures out alike are the same amount.</summary>
    private static string Rounded(Volume? volume) => volume is { } v ? Measurable.Text(v.CubicMeters, Dimension.OfVolume) : "";
}
