using System.Collections.Immutable;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Plans;

namespace Protocolist.Testing.Invariants;

/// <summary>What holds between a plan and one for something that differs in one thing.</summary>
internal static class PairInvariants
{
    public static ImmutableArray<PlanInvariant> All { get; } =
    [
        PlanInvariant.OfPlan(
            "more-mass-no-less-fluid",
            "by the same protocol, a heavier animal gets no less of any fluid, as long as no vessel has to be filled",
            MoreMass),
        PlanInvariant.OfPlan("later-start-no-earlier-end", "who starts later does not finish earlier, as long as both wait for their deliveries", LaterStart),
        PlanInvariant.OfPlan(
            "closing-no-earlier-end",
            "a bench that is closed for more days does not finish earlier, as long as both wait for their deliveries",
            MoreClosed),
        PlanInvariant.OfPlan(
            "order-of-lists-is-nothing",
            "the order in which a bench lists its stock and vessels changes nothing but which bottle is named",
            Reordered),
    ];

    /// <summary>A larger body in the same vessel leaves less room for fluid, and a bath is as deep as its vessel; so vessels are left out here.</summary>
    private static IEnumerable<string> MoreMass(Plan plan, PlanCase planCase)
    {
        var request = planCase.Request with { Bench = new PreparedBench(planCase.Request.Bench.Bench with { Vessels = [] }) };
        if (request.Specimen.Mass is not { } mass) yield break;
        var heavier = request with { Specimen = request.Specimen with { Mass = mass * (1 + (planCase.Turn / 100.0)) } };
        if (planCase.Planner.Plan(request).Value is not { } light
            || planCase.Planner.Plan(heavier).Value is not { } heavy
            || heavy.Protocol.Id != plan.Protocol.Id)
            yield break;
        foreach (var step in light.Steps.Where(s => s.Volume is not null))
        {
            // Injection is rounded site by site to what a syringe shows.
            if (heavy.Step(step.Id)?.Volume is { } more && more.Milliliters < step.Volume!.Value.Milliliters * (1 - 1e-9) - 1e-6)
                yield return $"'{step.Id}' takes {step.Volume.Value.Milliliters} mL for {mass.Grams} g, "
                    + $"and {more.Milliliters} mL for {heavier.Specimen.Mass!.Value.Grams} g";
        }
    }

    private static IEnumerable<string> LaterStart(Plan plan, PlanCase planCase)
    {
        var later = planCase.Planner.Plan(planCase.Request with { Start = planCase.Request.Start.PlusHours(planCase.Turn) }).Value!;
        if (WaitAlike(plan, later) && plan.End is { } end && later.End is { } laterEnd && laterEnd.ToInstant() < end.ToInstant())
            yield return $"{planCase.Turn} h later it ends {laterEnd} and not {end}";
    }

    private static IEnumerable<string> MoreClosed(Plan plan, PlanCase planCase)
    {
        var bench = planCase.Request.Bench.Bench;
        if (bench.Opening.Weekly.IsEmpty) yield break;
        var first = planCase.Request.Start.Date.PlusDays(planCase.Turn % 20);
        var closed = OpeningHours.Create(
            bench.Opening.Zone,
            bench.Opening.Weekly,
            bench.Opening.Closed.Add(new ClosedDays(first, first.PlusDays(planCase.Turn % 7), "closed")),
            bench.Opening.Holidays,
            bench.Opening.Extra).Value!;
        var other = planCase.Planner.Plan(planCase.Request with { Bench = new PreparedBench(bench with { Opening = closed }) }).Value!;
        if (WaitAlike(plan, other) && plan.End is { } end && other.End is { } otherEnd && otherEnd.ToInstant() < end.ToInstant())
            yield return $"closed from {first} for {planCase.Turn % 7} more days it ends {otherEnd} and not {end}";
    }

    /// <summary>
    /// A delivery that the body cannot wait for is taken as there in time, a step runs over where the body could not wait for a bench that is closed, and
    /// the plan warns of it: its dates answer another question.
    /// </summary>
    private static bool WaitAlike(Plan plan, Plan other) => !Gives(plan) && !Gives(other);

    private static bool Gives(Plan plan) => plan.Findings.Any(f => f.Id is "supplies-late" or "step-runs-over");

    private static IEnumerable<string> Reordered(Plan plan, PlanCase planCase)
    {
        var request = planCase.Request with { Bench = new PreparedBench(PlanCase.BenchOf(planCase.BenchFile.Reversed())) };
        return WritingInvariants.Differ(
            PlanJson.Write(WithoutPlaces(plan)),
            PlanJson.Write(WithoutPlaces(planCase.Planner.Plan(request).Value!)),
            "with the lists the other way round");
    }

    /// <summary>Without the names of bottles, the lines of the bench file that findings point to, and the order in which a message lists bottles.</summary>
    private static Plan WithoutPlaces(Plan plan) => plan with
    {
        Recipes = [.. plan.Recipes.Select(r => r with { Parts = [.. r.Parts.Select(p => p with { Stock = "" })] })],
        Findings =
        [
            .. plan.Findings.Select(f => f with { Where = default, Message = Message.Text("told"), Remedy = default })
                .OrderByDescending(f => f.Severity).ThenBy(f => f.Id, StringComparer.Ordinal).ThenBy(f => f.Subject, StringComparer.Ordinal),
        ],
    };
}
