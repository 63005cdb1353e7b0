using System.Collections.Immutable;
using System.Runtime.InteropServices;
using Protocolist.Checks;
using Protocolist.Findings;
using Protocolist.Planning.Drafting;
using Protocolist.Plans;

namespace Protocolist.Planning.Provisioning;

/// <summary>What the sixth pass adds to a dated draft.</summary>
internal sealed record Accounted(
    Draft Draft,
    ImmutableArray<PlannedRecipe> Recipes,
    ImmutableArray<PlannedPurchase> Purchases,
    ImmutableArray<PlannedMaterial> Materials,
    PlanCosts Costs,
    ImmutableArray<PlannedWaste> Waste,
    ImmutableArray<FluidMove> Moves,
    ImmutableArray<Finding> Findings)
{
    /// <summary>What each step needs on the table, by its id; a step that is not there needs nothing.</summary>
    public required ImmutableArray<(string Step, ImmutableArray<StepMaterial> Materials)> Tables { get; init; }

    /// <summary>What a step needs on the table.</summary>
    public ImmutableArray<StepMaterial> MaterialsOf(string step)
    {
        foreach (var (id, materials) in Tables)
        {
            if (id == step) return materials;
        }

        return [];
    }

    /// <summary>The bench on the day of use.</summary>
    public required StockDay Day { get; init; }

    /// <summary>The ways to make each fluid that were chosen.</summary>
    public required RecipeChoice Choice { get; init; }

    /// <summary>What hazardous fluid stands about once all is bought.</summary>
    public required StoredTotals Stored { get; init; }
}

/// <summary>
/// Sixth pass: what the dates make of it. Every change of fluid and every look has its moment now, so that hands, gloves, waste and costs are reckoned
/// from the very work that stands in the calendar.
/// </summary>
internal static class AccountPass
{
    private static readonly Phrase Unlisted = new("not-on-the-bench-list", "the bench lists none of: {things:; }");

    private static readonly Phrase UnlistedRemedy = new(
        "not-on-the-bench-list.remedy", "see that they are at hand, or list them with 'consumable:' and 'tool:' so that they are counted");

    /// <summary>Closes the books of a plan.</summary>
    /// <param name="provisioned">The draft with all that it needs before work begins.</param>
    /// <param name="dated">The same draft with its dates.</param>
    public static Accounted Run(Provisioned provisioned, Draft dated)
    {
        var (findings, day, choice) = (new List<Finding>(), provisioned.Day, provisioned.Choice);
        var closed = Closed(dated);
        var steps = ImmutableCollectionsMarshal.AsImmutableArray(closed);
        var sundries = SundryUse.Of(steps, dated.Body.Count, day.Stock.Sundries);
        var books = provisioned.Books.With(sundries, at => closed[at].Id, findings);
        var waste = WasteBook.Of(provisioned, sundries, steps, findings);
        Route(closed, waste);
        var draft = dated with { Steps = steps };
        var careFluid = CareFluid.Of(draft, choice, books, day.Stock);
        var costs = CostBook.Of(CostParts.Of(draft, books, sundries, waste, careFluid), day.Stock, findings);
        NotListed(sundries, day, findings);
        return new(
            draft,
            Written(choice, day, books),
            books.Purchases,
            books.Materials,
            costs,
            waste.Lots,
            waste.Moves,
            findings.Count == 0 ? provisioned.Findings : [.. provisioned.Findings, .. findings])
        {
            Tables = StepMaterials.Of(steps, choice, sundries, day),
            Day = day,
            Choice = choice,
            Stored = books.Stored,
        };
    }

    /// <summary>How the body is held in the vessel that was chosen, and how that is closed.</summary>
    private static DraftStep[] Closed(Draft dated)
    {
        DraftStep[] steps = [.. dated.Steps];
        var isPosed = Array.Exists(steps, s => s.Work is PoseWork);
        foreach (ref var step in steps.AsSpan())
        {
            // Where no step sets the posture, the first soak does.
            var soaks = !isPosed && step.Kind == StageKind.Immerse && step.Work is SoakWork;
            isPosed |= soaks;
            step = step.Work switch
            {
                MountWork mount => step with { Work = mount with { Chosen = FinalVessel.MountFor(dated.Body, dated.Posture!.Body, dated.Steps) } },
                PoseWork pose => step with { Work = pose with { Posture = dated.Posture } },
                SealWork seal => step with { Work = seal with { Chosen = FinalVessel.ClosingFor(dated.Steps, seal) } },
                SoakWork soak when soaks => step with { Work = soak with { Posture = dated.Posture } },
                _ => step,
            };
        }

        return steps;
    }

    /// <summary>Where this bench puts a spent fluid.</summary>
    private static void Route(DraftStep[] steps, WasteBook waste)
    {
        foreach (ref var step in steps.AsSpan())
        {
            if (step.Work is DiscardWork discard && waste.PouredOff(discard.Of) is { } routed) step = step with { Work = discard with { Routed = routed } };
        }
    }

    private static ImmutableArray<PlannedRecipe> Written(RecipeChoice choice, StockDay day, MaterialBooks books)
    {
        var recipes = ImmutableArray.CreateBuilder<PlannedRecipe>(choice.Recipes.Length);
        foreach (var recipe in choice.Recipes)
        {
            if (!recipe.Need.Fluid.IsWater) recipes.Add(recipe.Written(day.Stock.At, books.BottleOf));
        }

        return recipes.DrainToImmutable();
    }

    /// <summary>What the bench's list lacks, in one note, so that somebody sees that it is at hand.</summary>
    private static void NotListed(List<SundryUse> sundries, StockDay day, List<Finding> findings)
    {
        if (day.Stock.Bench.Stock.IsEmpty) return;
        var names = new List<Message>();
        foreach (var use in sundries)
        {
            if (use.Stock is null && !names.Contains(use.Name)) names.Add(use.Name);
        }

        if (names.Count > 0) findings.Add(Finding.Note(Unlisted.Id, Unlisted.With(Argument.Messages("things", names)), UnlistedRemedy));
    }
}
