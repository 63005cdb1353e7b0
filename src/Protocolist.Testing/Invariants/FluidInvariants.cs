using System.Collections.Immutable;
using Protocolist.Plans;
using Protocolist.Quantities;
using UnitsNet;

namespace Protocolist.Testing.Invariants;

/// <summary>What holds of the fluids of a plan.</summary>
internal static class FluidInvariants
{
    /// <summary>A microlitre in all: less than anybody can measure, more than sums of doubles lose.</summary>
    private const double Slack = 1e-3;

    public static ImmutableArray<PlanInvariant> All { get; } =
    [
        PlanInvariant.OfPlan("fluids-balance", "every millilitre that enters a step leaves it", Balance),
        PlanInvariant.OfPlan("steps-get-their-fluid", "what enters a step is its volume and that of its changes", Enough),
        PlanInvariant.OfPlan("fillings-are-whole", "each filling of a step is its volume, and there are as many as its changes and one", Fillings),
        PlanInvariant.OfPlan("batches-fit", "what is mixed at once goes into the vessel that is named for it", Batches),
        PlanInvariant.OfPlan("labour-is-the-work", "labour is paid for the steps, the looks, the changes and the mixing that stand on the plan", Labour),
        PlanInvariant.OfPlan("one-number-for-a-recipe", "a recipe makes up to the amount that stands over it, and sites add up to their region", OneNumber),
        PlanInvariant.OfPlan("recipes-are-used-up", "what a recipe makes goes into steps or into a named reserve, to the last microlitre", UsedUp),
        PlanInvariant.OfPlan("moves-have-two-ends", "every fluid has an origin and a destination, and no move is negative", TwoEnds),
        PlanInvariant.OfPlan("waste-is-what-is-poured-off", "waste is what steps pour off, and goes somewhere", Waste),
        PlanInvariant.OfPlan("injections-add-up", "what goes into the regions is what goes into the body", Injections),
        PlanInvariant.OfPlan("costs-are-not-negative", "no cost, purchase or part of a recipe is negative", NotNegative),
        PlanInvariant.OfPlan("hazards-carry-cautions", "a step with formaldehyde or alcohol says what can hurt", Cautions),
    ];

    private static bool IsStep(FluidPlace end) => end.Kind == FluidPlaceKind.Step;

    private static double Sum(IEnumerable<FluidMove> moves) => moves.Sum(m => m.Volume.Milliliters);

    /// <summary>Whether two sums of so many volumes are the same: each lies on the grid of the plan, half a microlitre off at the most.</summary>
    private static bool Same(double a, double b, int volumes) => Math.Abs(a - b) <= Slack / 2 * Math.Max(2, volumes) + (Math.Abs(a) * 1e-9);

    private static IEnumerable<string> Balance(Plan plan) =>
        from move in plan.Fluids
        from end in (FluidPlace[])[move.From, move.To]
        where IsStep(end)
        group move by (Step: end, move.Fluid) into at
        let enters = Sum(at.Where(m => m.To == at.Key.Step))
        let leaves = Sum(at.Where(m => m.From == at.Key.Step))
        where !Same(enters, leaves, at.Count())
        select $"{enters} mL of {at.Key.Fluid} enter '{at.Key.Step.Step}' and {leaves} mL leave it";

    private static IEnumerable<string> Enough(Plan plan)
    {
        foreach (var step in plan.Steps.Where(s => s is { Fluid: not null, Volume: not null } && s.Volume.Value > Volume.FromMicroliters(1)))
        {
            var (moves, wanted) = (plan.Fluids.Where(m => m.To.Step == step.Id).ToList(), step.Volume!.Value.Milliliters * (1 + step.Changes));
            var enters = Sum(moves);
            if (!Same(enters, wanted, moves.Count + 1 + step.Changes)) yield return $"'{step.Id}' wants {wanted} mL of {step.Fluid}, and {enters} mL enter it";
        }
    }

    private static IEnumerable<string> Fillings(Plan plan)
    {
        foreach (var step in plan.Steps.Where(s => s is { Fluid: not null, Volume: not null } && s.Volume.Value > Volume.FromMicroliters(1)))
        {
            for (var filling = 0; filling <= step.Changes; filling++)
            {
                var moves = plan.Fluids.Where(m => m.To.Step == step.Id && m.Filling == filling).ToList();
                if (!Same(Sum(moves), step.Volume!.Value.Milliliters, moves.Count + 1))
                    yield return $"filling {filling} of '{step.Id}' is {Sum(moves)} mL, and {step.Volume.Value.Milliliters} mL are wanted";
            }
        }
    }

    private static IEnumerable<string> Batches(Plan plan, PlanCase planCase)
    {
        foreach (var batch in plan.Recipes.SelectMany(r => MixedBatch.Of(r, plan)).Where(b => b.First.MixedIn.Length > 0))
        {
            var (vessel, each) = (batch.First.MixedIn, batch.Each.Milliliters);
            var room = planCase.Request.Bench.Bench.Vessels.Where(v => v.Name == vessel).Max(v => v.Shape.Inside.Milliliters);
            if (each > room) yield return $"{each} mL for '{batch.First.To.Step}' are mixed at once in {vessel} of {room} mL";
        }
    }

    private static IEnumerable<string> Labour(Plan plan, PlanCase planCase)
    {
        if (plan.Costs.Labour is not { } labour || planCase.Request.Bench.Bench.Labour is not { } rate || rate.Currency != labour.Currency) yield break;
        var work = plan.Fluids.Aggregate(NodaTime.Duration.Zero, (sum, m) => sum + m.Mixing);
        foreach (var step in plan.Steps) work += step.HandsOn + (step.Change * step.Changes) + (step.Look * step.Inspections.Length);
        if (Math.Abs(rate.For(work).Minor - labour.Minor) > 1) yield return $"{work} of work costs {rate.For(work)}, and the plan says {labour}";
    }

    private static IEnumerable<string> OneNumber(Plan plan)
    {
        foreach (var recipe in plan.Recipes)
        {
            foreach (var each in MixedBatch.Of(recipe, plan).Select(b => b.Each).Append(recipe.Volume))
            {
                var amount = MixingAmount.Text(each.CubicMeters, Dimension.OfVolume)!;
                if (!recipe.MethodFor(each)[0].ToString().Contains(amount, StringComparison.Ordinal))
                    yield return $"{amount} of {recipe.Fluid} are made by '{recipe.MethodFor(each)[0]}'";
            }
        }

        foreach (var site in plan.Steps.SelectMany(s => s.Sites))
        {
            if (!Same(site.Sites * site.PerSite.Milliliters, site.Total.Milliliters, site.Sites))
                yield return $"{site.Sites} sites of {site.PerSite.Milliliters} mL are not {site.Total.Milliliters} mL";
        }
    }

    /// <summary>Fixative that is restored from used, for lying in, and fresh, for injecting, are two recipes of one fluid.</summary>
    private static IEnumerable<string> UsedUp(Plan plan)
    {
        foreach (var recipes in plan.Recipes.GroupBy(r => r.Fluid))
        {
            var made = recipes.Sum(r => r.Volume.Milliliters);
            var moves = plan.Fluids.Where(m => !IsStep(m.From) && m.Fluid == recipes.Key).ToList();
            var taken = Sum(moves);
            if (!Same(taken, made, moves.Count + recipes.Count())) yield return $"{made} mL of {recipes.Key} are made, and {taken} mL are taken";
            foreach (var id in recipes.SelectMany(r => r.For).Where(id => !plan.Fluids.Any(m => m.To.Step == id && m.Fluid == recipes.Key)))
                yield return $"the recipe of {recipes.Key} is for '{id}', and none of it goes there";
        }
    }

    private static IEnumerable<string> TwoEnds(Plan plan) =>
        from move in plan.Fluids
        where IsNowhere(move, move.From)
            || IsNowhere(move, move.To)
            || move.From == move.To
            || move.Volume.Milliliters < 0
            || !double.IsFinite(move.Volume.Milliliters)
        select $"{move.Volume.Milliliters} mL of {move.Fluid} go from '{move.Words(move.From)}' to '{move.Words(move.To)}'";

    private static bool IsNowhere(FluidMove move, FluidPlace end) => string.IsNullOrWhiteSpace(move.Words(end).ToString());

    private static IEnumerable<string> Waste(Plan plan)
    {
        foreach (var waste in plan.Waste)
        {
            if (string.IsNullOrWhiteSpace(waste.Destination.ToString())) yield return $"{waste.What} of '{waste.Step}' goes nowhere";
        }

        // What a step pours off is of several classes where its fillings hold more and less.
        foreach (var lots in plan.Waste.Where(w => w is { Fluid: not null, Step.Length: > 0 }).GroupBy(w => (w.Step, w.Fluid)))
        {
            var poured = plan.Fluids.Where(m => m.From.Step == lots.Key.Step && m.To.Kind != FluidPlaceKind.Step && m.Fluid == lots.Key.Fluid).ToList();
            var wasted = lots.Sum(w => w.Amount.Volume.Milliliters);
            if (poured.Count > 0 && !Same(Sum(poured), wasted, poured.Count + 1))
                yield return $"'{lots.Key.Step}' pours off {Sum(poured)} mL of {lots.Key.Fluid}, and {wasted} mL are waste";
        }
    }

    private static IEnumerable<string> Injections(Plan plan)
    {
        foreach (var step in plan.Steps.Where(s => !s.Sites.IsEmpty))
        {
            var regions = step.Sites.Sum(s => s.Total.Milliliters);

            // Region by region the last site takes a rounding of a hundredth part; a syringe shows no more.
            if (Math.Abs(regions - step.Volume!.Value.Milliliters) > 0.01 * regions + Slack)
                yield return $"'{step.Id}' injects {step.Volume.Value.Milliliters} mL, and its regions take {regions} mL";
            foreach (var site in step.Sites.Where(s => s.Sites < 1 || s.PerSite.Milliliters <= 0))
                yield return $"'{step.Id}' has {site.Sites} sites of {site.PerSite.Milliliters} mL in {site.Region}";
        }
    }

    private static IEnumerable<string> NotNegative(Plan plan)
    {
        foreach (var cost in ((string Name, Quantities.Money? Sum)[])[
            ("cash", plan.Costs.Cash), ("used", plan.Costs.Used), ("labour", plan.Costs.Labour), ("disposal", plan.Costs.Disposal),
        ])
        {
            if (cost.Sum is { Minor: < 0 }) yield return $"the cost '{cost.Name}' is {cost.Sum}";
        }

        foreach (var purchase in plan.Purchases.Where(p => p.Count < 1 || p.Price is { Minor: < 0 }))
            yield return $"{purchase.Count} packs of {purchase.Item} are bought";
        foreach (var (recipe, part) in plan.Recipes.SelectMany(r => r.Parts.Select(p => (r, p))))
        {
            if (part.Volume is { Milliliters: < 0 } || part.Mass.Grams < 0) yield return $"{recipe.Fluid} takes {part.Volume} {part.Mass} of {part.Name}";
        }
    }

    private static IEnumerable<string> Cautions(Plan plan) =>
        from step in plan.Steps
        where HazardOf(step) is { } hazard && !plan.Steps.TakeWhile(s => s != step).Append(step).Any(s => HazardOf(s) == hazard && !s.Cautions.IsEmpty)
        select $"'{step.Id}' works with {step.Fluid}, and neither it nor a step before it says what that does to people";

    /// <summary>What the fluid of a step is dangerous by; a caution is given where a hazard is first met, and not again.</summary>
    private static string? HazardOf(Step step) =>
        step.Fluid is not { } fluid ? null
        : fluid.Contains("formal", StringComparison.Ordinal) ? "formaldehyde"
        : fluid.Contains("anol", StringComparison.Ordinal) ? "alcohol"
        : null;
}
