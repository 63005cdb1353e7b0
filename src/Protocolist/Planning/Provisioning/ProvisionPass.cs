using System.Collections.Immutable;
using NodaTime;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Planning.Purchasing;
using Protocolist.Plans;
using Protocolist.Protocols;
using Protocolist.Vessels;
using UnitsNet;
using PlanRecipe = Protocolist.Plans.Recipe;
using PlanRecipePart = Protocolist.Plans.RecipePart;

namespace Protocolist.Planning.Provisioning;

/// <summary>What the fourth pass adds to a draft.</summary>
internal sealed record Provisioned(
    Draft Draft,
    ImmutableArray<PlanRecipe> Recipes,
    ImmutableArray<PlannedPurchase> Purchases,
    ImmutableArray<PlannedMaterial> Materials,
    PlanCosts Costs,
    ImmutableArray<PlannedWaste> Waste,
    ImmutableArray<FluidMove> Moves,
    ImmutableArray<Finding> Findings)
{
    /// <summary>Every way to make each fluid; of the chosen recipes too.</summary>
    public required RecipeBook Book { get; init; }
}

/// <summary>Fourth pass: vessels, volumes, recipes from stock, purchases, costs, and where the spent fluid goes.</summary>
internal static class ProvisionPass
{
    /// <summary>Twenty times the heaviest body that anybody plans for, changed twice; beyond it lies a slip in a size. The project's choice.</summary>
    private static readonly Volume MostForAStep = Volume.FromCubicMeters(30);

    public static Provisioned Run(Draft draft, Bench bench, LocalDate on, PlanWishes wishes)
    {
        List<Vessel> free = [.. bench.FreeVessels(on)];
        List<Vessel> forSale = [.. bench.VesselsForSale(on)];
        List<Vessel> toBeHad = [.. free, .. forSale];
        var (freeToFill, forSaleToFill) = (PreparedVessel.Of(free), PreparedVessel.Of(forSale));
        ImmutableArray<DraftStep> housed = [.. draft.Steps.Select(s => Housed(s, WishedVessel.For(s, wishes, draft, bench, toBeHad)))];
        ImmutableArray<DraftStep> steps = [.. housed.Select(s => IsAbsurd(s) ? s with { Volume = null } : s)];
        var stock = StockBook.Of(bench.Stock);
        var things = ThingBook.Of(steps, draft.Body.Count, bench.Stock);
        var uses = FluidUse.Of(steps, fluid => stock.FluidsAtHand(on).Any(m => m.IsSpent && m.Fluid!.Buffering == fluid.Buffering && !m.Fluid.Substance.IsConcentrate));
        var rates = new ExchangeRates(bench.Currency ?? AnyCurrency(bench), bench.ExchangeRates);
        var listed = things.Where(t => t.IsListed && t.AllUses > 0).ToList();
        var recipes = RecipeBook.Choose(uses, [.. listed.Select(t => t.AsNeed())], stock, [.. listed.Select(t => t.AsProduct(on))], bench, rates, on, wishes.Supplies);
        var materials = VesselPurchases.With(MaterialBook.Of(recipes, things, stock, rates, on), steps, bench, on, rates);
        var waste = WasteBook.Of(uses, recipes, things, steps, bench, stock);
        steps = [.. steps.Select(s => Finishing(Discarding(s, waste), draft.Body, steps) with { Materials = StepMaterials.Of(s, recipes, things, on) })];
        var (costs, costFindings) = CostBook.Of(draft with { Steps = steps }, bench, rates, recipes, materials, things, waste);
        return new(
            draft with { Steps = steps },
            [.. recipes.Recipes.Where(r => !r.Use.Fluid.IsWater).Select(r => Written(r, stock))],
            materials.Purchases,
            materials.Materials,
            costs,
            waste.Planned,
            FluidFlow.Moves(uses, recipes, steps, waste.Planned),
            [
                .. housed.Where(IsAbsurd).Select(Absurd), .. InUse(bench, toBeHad), .. WishedVessel.Unmet(wishes, steps, draft, bench, toBeHad), .. recipes.Findings, .. materials.Findings, .. waste.Findings, .. costFindings,
                .. ThingBook.Unlisted(things, bench.Stock),
            ])
        { Book = recipes };

        DraftStep Housed(DraftStep step, FittedVessel? wished)
        {
            if (!NeedsVessel(step)) return step;
            step = step with { Fluid = step.Fluid ?? Fluid.TapWater };
            var outcome = wished is null ? VesselChoice.For(step, draft.Body, bench, freeToFill, forSaleToFill) : new(wished, null, wished.Findings);
            if (outcome.Fitted is { } fitted) return step with { Vessel = fitted, Volume = step.Used ?? fitted.FluidVolume };

            // By the ratio alone where no vessel is listed or none fits.
            return step with { NoVessel = outcome, Volume = step.Used ?? draft.Body.LotVolume.Nominal * Math.Clamp(step.Ratio?.Low ?? 1, 0, 1000) };
        }
    }

    private static bool IsAbsurd(DraftStep step) => step.Volume is { } volume && volume * (1 + step.Changes) > MostForAStep;

    private static Finding Absurd(DraftStep step) => Finding.Error(
        "absurd-amount",
        $"'{step.Id}' would take {Quantities.Measurable.Text((step.Volume!.Value * (1 + step.Changes)).CubicMeters, Quantities.Dimension.OfVolume)} of fluid, more than any bench can fill",
        "check the size and the count of the specimen, and their units",
        step.Span) with
    { Subject = step.Id };

    internal static bool NeedsVessel(DraftStep step) => step.Kind switch
    {
        StageKind.Immerse or StageKind.Bath or StageKind.Wash or StageKind.House => true,
        StageKind.Rinse or StageKind.Thaw => step.Fluid is not null && step.Ratio is not null,
        _ => false,
    };

    /// <summary>The step that does away with a spent fluid says where this bench puts it.</summary>
    private static DraftStep Discarding(DraftStep step, WasteBook waste) =>
        step.Work is DiscardWork discard && waste.RouteOf(discard.Of) is { } routed ? step with { Work = discard with { Routed = routed } } : step;

    /// <summary>How the body is held in the vessel that was chosen, and how that is closed.</summary>
    private static DraftStep Finishing(DraftStep step, Specimens.BodyMeasure body, IReadOnlyList<DraftStep> steps) => step.Work switch
    {
        MountWork mount => step with { Work = mount with { Chosen = FinalVessel.MountFor(body, steps) } },
        SealWork seal => step with { Work = seal with { Chosen = FinalVessel.ClosingFor(steps, seal) } },
        _ => step,
    };

    private static PlanRecipe Written(SolvedRecipe solved, StockBook stock) => new(
        solved.Use.Id,
        solved.Recipe.Volume,
        [solved.Recipe.MakeUp.ToString(), .. solved.Recipe.AddWater is { IsEmpty: false } add ? [$"or: {add}"] : (string[])[]],
        [.. solved.Recipe.Parts.Select(p => new PlanRecipePart(p.Name, p.Volume, p.Mass, stock.Find(p)?.Items[0].Id ?? ""))],
        [.. solved.Use.Steps.Select(s => s.Step)]);

    internal static string AnyCurrency(Bench bench) =>
        bench.Stock.SelectMany(i => i.Packs).FirstOrDefault(p => p.Price is not null)?.Price!.Currency ?? "EUR";

    private static IEnumerable<Finding> InUse(Bench bench, List<Vessel> toBeHad) =>
        bench.Vessels.Where(v => v.Count > 0 && toBeHad.TrueForAll(f => f.Id != v.Id)).Select(v =>
        {
            var until = bench.VesselsInUse.Where(u => u.VesselId == v.Id).Max(u => u.Until);
            return Finding.Note("vessel-in-use", $"every {v.Name} is in use{(until is { } day ? $" until {NodaTime.Text.LocalDatePattern.Iso.Format(day)}" : "")}; it is left out", "start later, or free one");
        });
}
