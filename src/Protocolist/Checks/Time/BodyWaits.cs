using System.Collections.Immutable;
using NodaTime;
using Protocolist.Findings;
using Protocolist.Plans;
using Protocolist.Rules;
using Protocolist.Specimens;

namespace Protocolist.Checks.Time;

/// <summary>A body that is in hand does not lie unseen until the bench opens.</summary>
internal static class BodyWaits
{
    private static readonly Phrase Waits = new(
        "body-waits",
        "the body ({lies}) waits {wait:vs most} from {asked}, when work was to start, until fluid first meets it in '{fixing}', {at}; "
        + "nobody can begin before {begins}, and {most} is the most for it");

    private static readonly Phrase InTheCold = new("body-waits.in-the-cold", "chilled, {at:0.# °C} in the cold of this bench");
    private static readonly Phrase InTheRoom = new("body-waits.in-the-room", "{state}, {at:0.# °C} in the room of this bench");
    private static readonly Phrase Unnoted = new("body-waits.unnoted", "in a state that nobody noted");
    private static readonly Phrase Fresh = new("body-waits.fresh", "fresh");
    private static readonly Phrase IsThawed = new("body-waits.thawed", "thawed");
    private static readonly Phrase Bloated = new("body-waits.bloated", "bloated");
    private static readonly Phrase Decomposed = new("body-waits.decomposed", "decomposed");

    private static readonly Phrase Remedy = new("body-waits.remedy", "{all:; }");
    private static readonly Phrase OnIce = new(
        "body-waits.on-ice", "lay it on ice or in the fridge at 0 to 4 °C at once, wrapped against drying: that keeps it until then");

    private static readonly Phrase OnIceTooLong = new(
        "body-waits.on-ice-too-long",
        "lay it on ice or in the fridge at 0 to 4 °C at once, wrapped against drying: that keeps it {most} at most, which is not enough here");

    private static readonly Phrase ComeIn = new("body-waits.come-in", "or have somebody come in out of hours, {on} ('also-open' in the bench file)");
    private static readonly Phrase Open = new("body-waits.open", "or open the bench {on}, though it is closed ('also-open' in the bench file)");

    public static PlanCheck Check { get; } = new(
        "body-waits",
        "the specimen: it rots while the bench is closed",
        "common practice: 12 h uncooled, 24 h thawed and 3 d chilled as the most; "
        + "freezing is not for bristle worms: Australian Museum, Methods of polychaete fixation; nor twice: Bishop Museum, Invertebrate Specimen Handling; "
        + "the rest of what freezing costs is common practice",
        Find)
    {
        Severities = [new(Severity.Warning, "the bench is closed for longer than the body keeps: 12 h uncooled, 24 h thawed, 3 d chilled")],
    };

    /// <summary>
    /// With the hour of death known, the time since then is weighed instead, so that nothing is said twice; but for a thawed body, whose hours in the
    /// freezer do not count.
    /// </summary>
    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        var condition = plan.Specimen.Condition;
        if (plan.Specimen.DiedAt is not null && condition != Condition.Thawed) return [];
        if (Wait.Of(plan) is not { } wait || wait.InAll <= HoursBorne.Unfixed(condition)) return [];
        var message = Waits.With(
            ("lies", Lies(plan)),
            ("wait", wait.InAll),
            ("asked", wait.Asked),
            Argument.Id("fixing", wait.Fixing.Id),
            ("at", wait.FixedAt),
            ("begins", wait.Begins),
            ("most", HoursBorne.Unfixed(condition)));
        var remedy = Remedy.With(Argument.Messages("all", Remedies(plan, wait)));
        var where = condition == Condition.Chilled ? "bench.cold" : "bench.temperature";
        return [Finding.Warning("body-waits", message, remedy).At(wait.Fixing).By("specimen.condition", where)];
    }

    /// <summary>
    /// What can be done for a body that waits for the bench to open: the cold, the freezer and its price, somebody who comes in. Nothing for one that
    /// does not wait.
    /// </summary>
    public static IEnumerable<Message> Remedies(ReviewCase plan) => Wait.Of(plan) is { } wait ? Remedies(plan, wait) : [];

    private static IEnumerable<Message> Remedies(ReviewCase plan, Wait wait)
    {
        if (plan.Specimen.Condition != Condition.Thawed)
            yield return wait.InAll <= HoursBorne.Chilled ? OnIce : OnIceTooLong.With(("most", HoursBorne.Chilled));
        yield return Freezing.Advice(plan);
        yield return (plan.Bench.Opening.OpensOn(wait.Asked.Date) ? ComeIn : Open).With(("on", wait.Asked));
    }

    private static Message Lies(ReviewCase plan)
    {
        var (condition, temperatures) = (plan.Specimen.Condition, plan.Bench.Temperatures);
        if (condition == Condition.Chilled) return InTheCold.With(("at", temperatures.Cold));
        return InTheRoom.With(("state", State(condition)), ("at", temperatures.Room));
    }

    private static Phrase State(Condition? condition) => condition switch
    {
        Condition.Fresh => Fresh,
        Condition.Thawed => IsThawed,
        Condition.Bloated => Bloated,
        Condition.Decomposed => Decomposed,
        _ => Unnoted,
    };

    /// <summary>A body that is there, and the first step that begins later than was asked.</summary>
    private readonly record struct Wait(OffsetDateTime Asked, OffsetDateTime Begins, ReviewStep Fixing, OffsetDateTime FixedAt)
    {
        public Duration InAll => FixedAt.ToInstant() - Asked.ToInstant();

        public static Wait? Of(ReviewCase plan)
        {
            if (plan.Specimen.Condition == Condition.Frozen || plan.Plan.EarliestStart is not { } asked) return null;
            if (plan.FirstFixing is not { Step: { Start: { } fixedAt, State: StepState.Planned } } fixing) return null;
            Step? first = null;
            foreach (var step in plan.Steps)
            {
                if (step.Step.Start is { } start && (first is null || start.ToInstant() < first.Start!.Value.ToInstant())) first = step.Step;
            }

            if (first is not { State: StepState.Planned, Start: { } begins } || begins.ToInstant() <= asked.ToInstant()) return null;
            return new(asked, begins, fixing, fixedAt);
        }
    }
}
