using System.Globalization;
using NodaTime;
using Protocolist.Findings;
using Protocolist.Rules;
using Protocolist.Specimens;
using static System.FormattableString;

namespace Protocolist.Checks.Time;

/// <summary>A body that is in hand does not lie unseen until the bench opens.</summary>
internal static class BodyWaits
{
    public static PlanCheck Check { get; } = new(
        "body-waits",
        "the specimen: it rots while the bench is closed",
        "common practice: 12 h uncooled, 24 h thawed and 3 d chilled as the most; freezing is not for bristle worms: Australian Museum, Methods of polychaete fixation; nor twice: Bishop Museum, Invertebrate Specimen Handling; the rest of what freezing costs is common practice",
        Find)
    {
        Speaks = [new(Severity.Warning, "the bench is closed for longer than the body keeps: 12 h uncooled, 24 h thawed, 3 d chilled")],
    };

    /// <summary>With the hour of death known, the time since then is weighed instead, so that nothing is said twice; but for a thawed body, whose hours in the freezer do not count.</summary>
    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        if ((plan.Specimen.DiedAt is not null && plan.Specimen.Condition != Condition.Thawed) || Wait.Of(plan) is not { } wait || wait.InAll <= HoursBorne.Unfixed(plan.Specimen.Condition)) yield break;
        var message = Invariant($"the body ({Lies(plan)}) waits {wait.InAll.Past(HoursBorne.Unfixed(plan.Specimen.Condition))} from {Text(wait.Asked)}, when work was to start, until fluid first meets it in '{wait.Fixing.Id}', {Text(wait.Fixing.Step.Start!.Value)}; nobody can begin before {Text(wait.Begins)}, and {HoursBorne.Unfixed(plan.Specimen.Condition).Text()} is the most for it");
        yield return Finding.Warning("body-waits", message, string.Join("; ", Remedies(plan, wait))).At(wait.Fixing).By("specimen.condition", plan.Specimen.Condition == Condition.Chilled ? "bench.cold" : "bench.temperature");
    }

    /// <summary>What can be done for a body that waits for the bench to open: the cold, the freezer and its price, somebody who comes in. Nothing for one that does not wait.</summary>
    public static IEnumerable<string> Remedies(ReviewCase plan) => Wait.Of(plan) is { } wait ? Remedies(plan, wait) : [];

    private static IEnumerable<string> Remedies(ReviewCase plan, Wait wait)
    {
        if (plan.Specimen.Condition != Condition.Thawed)
        {
            yield return "lay it on ice or in the fridge at 0 to 4 °C at once, wrapped against drying: "
                + (wait.InAll <= HoursBorne.Chilled ? "that keeps it until then" : Invariant($"that keeps it {HoursBorne.Chilled.Text()} at most, which is not enough here"));
        }

        yield return Freezing.Advice(plan);
        yield return plan.Bench.Opening.OpensOn(wait.Asked.Date)
            ? Invariant($"or have somebody come in out of hours on {Text(wait.Asked.Date)} ('also-open' in the bench file)")
            : Invariant($"or open the bench on {Text(wait.Asked.Date)}, though it is closed ('also-open' in the bench file)");
    }

    private static string Lies(ReviewCase plan) => plan.Specimen.Condition switch
    {
        Condition.Chilled => Invariant($"chilled, {plan.Bench.Temperatures.Cold.DegreesCelsius:0.#} °C in the cold of this bench"),
        null => Invariant($"in a state that nobody noted, {plan.Bench.Temperatures.Room.DegreesCelsius:0.#} °C in the room of this bench"),
        { } state => Invariant($"{state.ToString().ToLowerInvariant()}, {plan.Bench.Temperatures.Room.DegreesCelsius:0.#} °C in the room of this bench"),
    };

    private static string Text(OffsetDateTime at) => at.ToString("ddd uuuu-MM-dd HH:mm", CultureInfo.InvariantCulture);

    private static string Text(LocalDate date) => date.ToString("ddd uuuu-MM-dd", CultureInfo.InvariantCulture);

    /// <summary>A body that is there, and the first step that begins later than was asked.</summary>
    private sealed record Wait(OffsetDateTime Asked, OffsetDateTime Begins, ReviewStep Fixing)
    {
        public Duration InAll => Fixing.Step.Start!.Value.ToInstant() - Asked.ToInstant();

        public static Wait? Of(ReviewCase plan)
        {
            if (plan.Specimen.Condition == Condition.Frozen || plan.Plan.EarliestStart is not { } asked) return null;
            if (plan.FirstFixing is not { Step: { Start: not null, State: "planned" } } fixing) return null;
            var first = plan.Steps.Where(s => s.Step.Start is not null).MinBy(s => s.Step.Start!.Value.ToInstant())!.Step;
            return first.State == "planned" && first.Start!.Value.ToInstant() > asked.ToInstant() ? new(asked, first.Start.Value, fixing) : null;
        }
    }
}
