using System.Collections.Immutable;
using NodaTime;
using Protocolist.Benches;
using Protocolist.Benches.Stock;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Planning.Purchasing;
using Protocolist.Plans;
using Protocolist.Protocols;
using PlanRecipe = Protocolist.Plans.Recipe;
using PlanRecipePart = Protocolist.Plans.RecipePart;

namespace Protocolist.Planning;

/// <summary>What the fourth pass adds to a draft.</summary>
internal sealed record Provisioned(
    Draft Draft,
    ImmutableArray<PlanRecipe> Recipes,
    ImmutableArray<PlannedPurchase> Purchases,
    PlanCosts Costs,
    ImmutableArray<PlannedWaste> Waste,
    ImmutableArray<FluidMove> Moves,
    ImmutableArray<Finding> Findings);

/// <summary>Fourth pass: vessels, volumes, recipes from stock, purchases, costs, and where the spent fluid goes.</summary>
internal static class ProvisionPass
{
    public static Provisioned Run(Draft draft, Bench bench, LocalDate on)
    {
        ImmutableArray<DraftStep> steps = [.. draft.Steps.Select(s => Housed(s, draft, bench))];
        var stock = StockBook.Of(bench.Stock);
        var uses = RecipeBook.Uses(steps);
        var (recipes, recipeFindings) = RecipeBook.Solve(uses, stock, bench, on);
        var materials = MaterialBook.Of(recipes, stock, bench, on);
        var waste = FluidFlow.Waste(uses, steps, WasteRules.CollectAll);
        var (costs, costFindings) = Costs(bench, steps, uses, materials);
        return new(
            draft with { Steps = steps },
            [.. recipes.Select(r => Written(r, stock))],
            materials.Purchases,
            costs,
            waste,
            FluidFlow.Moves(uses, steps, waste),
            [.. recipeFindings, .. materials.Findings, .. costFindings]);
    }

    /// <summary>The step with its vessel and the fluid it takes; by the ratio alone where no vessel is listed or none fits.</summary>
    private static DraftStep Housed(DraftStep step, Draft draft, Bench bench)
    {
        if (!NeedsVessel(step)) return step;
        step = step with { Fluid = step.Fluid ?? Fluid.TapWater };
        var outcome = VesselChoice.For(step, draft.Body, bench);
        if (outcome.Fitted is { } fitted) return step with { Vessel = fitted, Volume = step.Used ?? fitted.FluidVolume };
        return step with { NoVessel = outcome, Volume = step.Used ?? draft.Body.LotVolume.Nominal * Math.Clamp(step.Ratio?.Low ?? 1, 0, 1000) };
    }

    private static bool NeedsVessel(DraftStep step) => step.Kind switch
    {
        StageKind.Immerse or StageKind.Bath or StageKind.Wash or StageKind.House => true,
        StageKind.Rinse or StageKind.Thaw => step.Fluid is not null && step.Ratio is not null,
        _ => false,
    };

    private static PlanRecipe Written(SolvedRecipe solved, StockBook stock) => new(
        solved.Use.Fluid.Name,
        solved.Recipe.Volume,
        [solved.Recipe.MakeUp, .. solved.Recipe.AddWater is var add && add != solved.Recipe.MakeUp && add != "no water is added" ? [$"or: {add}"] : (string[])[]],
        [.. solved.Recipe.Parts.Select(p => new PlanRecipePart(p.Name, p.Volume, p.Mass, stock.Find(p)?.Items[0].Id ?? ""))],
        [.. solved.Use.Steps.Select(s => s.Step)]);

    private static (PlanCosts Costs, ImmutableArray<Finding> Findings) Costs(Bench bench, ImmutableArray<DraftStep> steps, ImmutableArray<FluidUse> uses, MaterialBook materials)
    {
        if (bench.Currency is not { } currency) return (new(null, null, null, null), []);
        var disposal = ImmutableDictionary.CreateBuilder<WasteClass, Quantities.Price>();
        if (bench.FormaldehydeDisposal is { } formaldehyde)
        {
            disposal[WasteClass.Formaldehyde] = formaldehyde;
            disposal[WasteClass.FormaldehydeAndAlcohol] = formaldehyde;
        }

        if (bench.AlcoholDisposal is { } alcohol)
        {
            disposal[WasteClass.FlammableAlcohol] = alcohol;
            disposal[WasteClass.DiluteAlcohol] = alcohol;
        }

        var lots = uses.SelectMany(u => u.Steps).Where(u => steps.First(s => s.Id == u.Step).Kind is not (StageKind.Inject or StageKind.House))
            .Select(u => WasteRules.CollectAll.Route(steps.First(s => s.Id == u.Step).Fluid!.Name, FluidFlow.ClassOf(steps.First(s => s.Id == u.Step), steps), Amount.Of(u.Volume)).Value!)
            .Where(w => w.Class != WasteClass.RinseWater)
            .ToList();
        var handsOn = steps.Aggregate(NodaTime.Duration.Zero, (sum, s) => sum + s.HandsOn);
        var summed = new CostRates(bench.Labour, disposal.ToImmutable(), ExchangeRates.None(currency)).Sum(materials.Lines, [], handsOn, lots);
        var costs = summed.Value!;
        return (new(costs.CashNow, costs.Materials, bench.Labour is null ? null : costs.Labour, disposal.Count == 0 ? null : costs.Disposal), summed.Findings);
    }
}
