using System.Collections.Immutable;
using System.Globalization;
using NodaTime;
using Protocolist.Plans;
using Protocolist.Quantities;

namespace Protocolist.Planning.Revising;

/// <summary>What a revision changed and why, line by line.</summary>
internal static class PlanDifference
{
    public static ImmutableArray<PlanChange> Between(Plan before, Plan after)
    {
        var changes = new List<PlanChange>();
        var causes = new DateCauses(after);
        foreach (var step in after.Steps)
        {
            var old = before.Step(step.Id);
            changes.AddRange(OfStep(old, step, causes.Of(old, step)));
        }

        changes.AddRange(before.Steps.Where(s => after.Step(s.Id) is null).Select(s => new PlanChange(s.Id, "is no longer part of the plan", "the log does not call for it")));
        changes.AddRange(Bought(before, after));
        changes.AddRange(Sums(before, after));
        if (before.Protocol.Revision != after.Protocol.Revision)
            changes.Add(new("", string.Create(CultureInfo.InvariantCulture, $"the plan follows revision {after.Protocol.Revision} of '{after.Protocol.Id}' instead of {before.Protocol.Revision}"), "the shelf has that one"));
        return [.. changes];
    }

    private static IEnumerable<PlanChange> OfStep(Step? old, Step step, (string Start, string End) why)
    {
        if (old is null)
        {
            yield return new(step.Id, $"new: {step.Title}{(step.Start is { } at ? $", {Text(at)}" : "")}{(step.Volume is { } v ? $", {Text(v)} of {step.Fluid}" : "")}", step.Because);
            yield break;
        }

        if (old.State != step.State)
        {
            yield return step.State switch
            {
                "skipped" => new(step.Id, "is left out", step.Because),
                "done" => new(step.Id, $"is done, {Text(step.Start)} to {Text(step.End)}", why.End.Length > 0 ? why.End : DateCauses.Log),
                "begun" => new(step.Id, $"has begun, {Text(step.Start)}", "the log says so"),
                _ => new(step.Id, $"is {step.State}", "the log no longer says otherwise"),
            };
            if (step.State is "skipped") yield break;
        }
        else if (step.State is "done" or "begun" && (old.Start != step.Start || (step.State is "done" && old.End != step.End)))
        {
            yield return new(step.Id, $"was {Text(step.Start)} to {Text(step.End)}, not {Text(old.Start)} to {Text(old.End)}", why.End);
        }

        var reason = DateCauses.NewCause(old, step) is { Length: > 0 } own ? own : step.Because.Length > 0 ? step.Because : "the fluids were shared out anew";
        if (step.State is "planned" && old.Start != step.Start) yield return new(step.Id, $"begins {Apart(step.Start, old.Start)}", why.Start);
        if (step.State is not "done" && old.End != step.End) yield return new(step.Id, $"ends {Apart(step.End, old.End)}", why.End);
        if (old.Changes != step.Changes) yield return new(step.Id, string.Create(CultureInfo.InvariantCulture, $"its fluid is changed {Times(step.Changes)} instead of {Times(old.Changes)}"), reason);
        if (old.Fluid != step.Fluid) yield return new(step.Id, $"takes {step.Fluid ?? "no fluid"} instead of {old.Fluid ?? "none"}", reason);
        if (Text(old.Volume) != Text(step.Volume)) yield return new(step.Id, $"takes {Text(step.Volume)} instead of {Text(old.Volume)}", step.State == "done" ? "that much was used" : reason);
        if (old.Vessel != step.Vessel) yield return new(step.Id, $"is in {step.Vessel ?? "no vessel"} instead of {old.Vessel ?? "none"}", reason);
    }

    private static IEnumerable<PlanChange> Bought(Plan before, Plan after)
    {
        string[] keys = [.. before.Purchases.Concat(after.Purchases).Select(p => $"{p.Pack} of {p.Item}").Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];
        foreach (var key in keys)
        {
            var (old, now) = (Count(before, key), Count(after, key));
            if (old != now) yield return new("", string.Create(CultureInfo.InvariantCulture, $"buy {now} x {key} instead of {old}"), "the fluids needed have changed");
        }

        static int Count(Plan plan, string key) => plan.Purchases.Where(p => $"{p.Pack} of {p.Item}" == key).Sum(p => p.Count);
    }

    private static IEnumerable<PlanChange> Sums(Plan before, Plan after)
    {
        (string What, Money? Old, Money? Now)[] sums =
        [
            ("to spend", before.Costs.Cash, after.Costs.Cash),
            ("worth of what is used", before.Costs.Used, after.Costs.Used),
            ("work", before.Costs.Labour, after.Costs.Labour),
            ("disposal", before.Costs.Disposal, after.Costs.Disposal),
        ];
        return sums.Where(s => s.Old?.Minor != s.Now?.Minor).Select(s => new PlanChange("", $"{s.What}: {s.Now?.ToString() ?? "not known"} instead of {s.Old?.ToString() ?? "not known"}", "the steps have changed"));
    }

    private static string Times(int changes) => changes == 0 ? "never" : changes == 1 ? "once" : string.Create(CultureInfo.InvariantCulture, $"{changes} times");

    /// <summary>Two moments that the clocks of two zones show alike are told apart by their offsets.</summary>
    private static string Apart(OffsetDateTime? now, OffsetDateTime? old) =>
        Text(now) != Text(old) ? $"{Text(now)} instead of {Text(old)}"
        : string.Create(CultureInfo.InvariantCulture, $"{now:uuuu-MM-dd HH:mm o<m>} instead of {old:uuuu-MM-dd HH:mm o<m>}");

    private static string Text(OffsetDateTime? at) => at is { } moment ? moment.ToString("uuuu-MM-dd HH:mm", CultureInfo.InvariantCulture) : "at no date";

    private static string Text(UnitsNet.Volume? volume) => volume is { } v ? Measurable.Text(v.CubicMeters, Dimension.OfVolume) : "nothing";
}
