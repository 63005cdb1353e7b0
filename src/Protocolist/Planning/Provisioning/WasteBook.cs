using System.Collections.Immutable;
using Protocolist.Benches;
using Protocolist.Benches.Disposal;
using Protocolist.Benches.Stock;
using Protocolist.Findings;
using Protocolist.Fluids.Safety;
using Protocolist.Plans;
using Protocolist.Protocols;
using Protocolist.Reading;

namespace Protocolist.Planning.Provisioning;

/// <summary>All that leaves a plan, by class, each lot with its way and a named destination.</summary>
/// <param name="Planned">As the plan shows it.</param>
/// <param name="Lots">The same, as costs are reckoned from it.</param>
/// <param name="Findings">What is kept, what is drained, and for what there is no container.</param>
internal sealed record WasteBook(ImmutableArray<PlannedWaste> Planned, ImmutableArray<Waste> Lots, ImmutableArray<Finding> Findings)
{
    public static WasteBook Of(IReadOnlyList<FluidUse> uses, RecipeBook recipes, IReadOnlyList<Thing> things, IReadOnlyList<DraftStep> steps, Bench bench, StockBook stock)
    {
        var planned = ImmutableArray.CreateBuilder<PlannedWaste>();
        var lots = ImmutableArray.CreateBuilder<Waste>();
        var findings = new List<Finding>();
        var unnamed = new SortedSet<string>(StringComparer.Ordinal);
        foreach (var use in uses)
        {
            foreach (var (stepId, volume) in use.Steps)
            {
                var step = steps.First(s => s.Id == stepId);
                if (step.Kind is StageKind.Inject or StageKind.House) continue;
                var served = 1 + RestoredFrom(recipes.Recipes.FirstOrDefault(r => r.Use == use)?.Recipe, stock);
                Add(use.Fluid.Name, ClassOf(step, steps), Amount.Of(volume), stepId, Keeps(step, served, bench) ? bench.WasteRules.FixativeKeptIn : null, served);
            }
        }

        foreach (var use in uses.Where(u => !u.Fluid.IsWater))
            Add($"{use.Fluid.Name} left in jugs and syringes", use.Fluid.WasteClass, Amount.Of(use.Dead), RecipeOf(use), null, 0);
        foreach (var thing in things.Where(t => t.Waste is not null))
            foreach (var (stepId, pieces) in thing.Uses.Where(_ => thing.Wear is { LastsUses: 1 }))
                Add(thing.IsListed ? thing.Items[0].Substance : thing.Name, thing.Waste!.Value, Amount.Of(pieces), stepId, null, 0);
        if (unnamed.Count > 0 && !bench.Stock.IsEmpty)
            findings.Add(Finding.Note("waste-needs-a-container", $"the bench names no container for waste of the class {string.Join(", ", unnamed)}", "set one up for each class, closed and labelled, before the first step; name it in the bench file under 'waste: containers:'"));
        return new(planned.DrainToImmutable(), lots.DrainToImmutable(), [.. findings.DistinctBy(f => (f.Id, f.Message))]);

        void Add(string what, WasteClass @class, Amount amount, string step, string? keptIn, int served)
        {
            if (amount.Units == 0) return;
            var routed = bench.WasteRules.Route(what, @class, amount, keptIn);
            var lot = routed.Value!;
            lots.Add(lot);
            if (routed.Findings.Any(f => f.Id == "waste-needs-a-container")) unnamed.Add(Waste.Words(@class.ToString()));
            findings.AddRange(routed.Findings.Where(f => f.Id != "waste-needs-a-container"));
            if (lot.Way == WasteWay.KeptForReuse)
                findings.Add(Finding.Note("fixative-kept", $"{amount} of {what} is kept in {lot.Destination}; it will have served {served} of the {bench.WasteRules.FixativeUses} specimens that this bench allows", "before it serves again see that it is clear, measure its pH (6.5 or more) and enter it as stock with its uses; it goes only into fixative of the same buffering"));
            planned.Add(new(what, amount.Kind == AmountKind.Volume ? amount.Volume : UnitsNet.Volume.Zero, Waste.Words(@class.ToString()), lot.Destination, step)
            {
                Way = EnumWords<WasteWay>.Of(lot.Way),
                Pieces = amount.Kind == AmountKind.Count ? amount.Units : 0,
                Uses = lot.Way == WasteWay.KeptForReuse ? served : 0,
            });
        }
    }

    /// <summary>The place where a fluid is made, as moves and waste name it.</summary>
    public static string RecipeOf(FluidUse use) => $"recipe: {use.Id}";

    /// <summary>What becomes of the fluid that a step pours off; null where it pours none off.</summary>
    public (WasteWay Way, string Destination)? RouteOf(string step)
    {
        for (var i = 0; i < Planned.Length; i++)
        {
            if (Planned[i].Step == step && Planned[i].Pieces == 0) return (Lots[i].Way, Lots[i].Destination);
        }

        return null;
    }

    public static WasteClass ClassOf(DraftStep step, IReadOnlyList<DraftStep> steps) =>
        !step.Fluid!.IsWater ? step.Fluid.WasteClass : AfterFormaldehyde(step, steps) ? WasteClass.Formaldehyde : WasteClass.RinseWater;

    /// <summary>Only fixative that a whole body lay in is kept, and only while it may serve another; what ran out of a body by syringe is not.</summary>
    private static bool Keeps(DraftStep step, int served, Bench bench) =>
        bench.WasteRules.FixativeKeptIn is not null && step is { Kind: StageKind.Immerse, Fluid.HasFormaldehyde: true } && served < bench.WasteRules.FixativeUses;

    /// <summary>How often the most used part of a recipe has served.</summary>
    private static int RestoredFrom(Fluids.Mixing.Recipe? recipe, StockBook stock) =>
        recipe is null ? 0 : recipe.Parts.Select(p => p.Fluid is null ? 0 : stock.Find(p)?.Items.Max(i => i.Uses) ?? 0).DefaultIfEmpty(0).Max();

    /// <summary>The first water after formalin carries formaldehyde and is collected with it; the washes that follow go where local rules allow. Common practice.</summary>
    private static bool AfterFormaldehyde(DraftStep step, IReadOnlyList<DraftStep> steps) =>
        steps.TakeWhile(s => s.Id != step.Id).LastOrDefault(s => s.Fluid is not null && s.Volume is not null)?.Fluid is { HasFormaldehyde: true };
}
