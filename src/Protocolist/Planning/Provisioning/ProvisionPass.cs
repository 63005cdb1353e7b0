using System.Collections.Immutable;
using Protocolist.Checks;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Planning.Drafting;
using Protocolist.Plans;
using UnitsNet;

namespace Protocolist.Planning.Provisioning;

/// <summary>What the fourth pass adds to a draft.</summary>
internal sealed record Provisioned(
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

    /// <summary>Every way to make each fluid, and those that were chosen.</summary>
    public required RecipeChoice Choice { get; init; }

    /// <summary>What hazardous fluid stands about once all is bought.</summary>
    public required StoredTotals Stored { get; init; }
}

/// <summary>
/// Fourth pass: vessels, volumes, recipes from stock, purchases, costs, and where the spent fluid goes. A pure function of a draft, the bench on a day, and
/// what is insisted on, so that it can be run for any candidate.
/// </summary>
internal static class ProvisionPass
{
    /// <summary>Twenty times the heaviest body that anybody plans for, changed twice; beyond it lies a slip in a size. The project's choice.</summary>
    private static readonly Volume MostForAStep = Volume.FromCubicMeters(30);

    private static readonly Phrase Absurd = new("absurd-amount.fluid", "'{step}' would take {volume} of fluid, more than any bench can fill");
    private static readonly Phrase AbsurdRemedy = new("absurd-amount.fluid.remedy", "check the size and the count of the specimen, and their units");
    private static readonly Phrase Unlisted = new("not-on-the-bench-list", "the bench lists none of: {things:; }");

    private static readonly Phrase UnlistedRemedy = new(
        "not-on-the-bench-list.remedy", "see that they are at hand, or list them with 'consumable:' and 'tool:' so that they are counted");

    /// <summary>Provisions a draft.</summary>
    /// <param name="draft">The steps with their fluids, amounts and durations.</param>
    /// <param name="day">The bench on the day of use.</param>
    /// <param name="wishes">Vessels and supplies that are insisted on.</param>
    public static Provisioned Run(Draft draft, StockDay day, PlanWishes wishes)
    {
        var findings = new List<Finding>();
        draft = draft with { Posture = PostureChoice.For(draft, day, wishes) };
        var steps = Housed(draft, day, wishes, findings);
        findings.AddRange(day.TakenVessels.AsSpan());
        if (!wishes.Vessels.IsEmpty) WishedVessel.Unmet(wishes, steps, draft, day, findings);

        var sundries = SundryUse.Of(steps, draft.Body.Count, day.Stock.Sundries);
        var needs = FluidNeed.Of(steps, day);
        var choice = RecipeChoice.Of(needs, sundries, day, wishes.Supplies, findings);
        var books = MaterialBooks.Of(choice, sundries, at => steps[at].Id, day, findings);
        VesselPurchases.Book(books, steps, day, findings);
        var waste = WasteBook.Of(needs, choice, sundries, steps, day.Stock, findings);
        var provisioned = draft with { Steps = Finished(steps, draft, waste) };
        var careFluid = CareFluid.Of(provisioned, choice, books, day.Stock);
        var costs = CostBook.Of(CostParts.Of(provisioned, books, sundries, waste.Lots, careFluid), day.Stock, findings);
        NotListed(sundries, day, findings);
        return new(provisioned, Written(choice, day, books), books.Purchases, books.Materials, costs, waste.Lots, waste.Moves, [.. findings])
        {
            Tables = StepMaterials.Of(steps, choice, sundries, day),
            Choice = choice,
            Stored = books.Stored,
        };
    }

    internal static bool NeedsVessel(DraftStep step) => step.Kind switch
    {
        StageKind.Immerse or StageKind.Bath or StageKind.Wash or StageKind.House => true,
        StageKind.Rinse or StageKind.Thaw => step.Fluid is not null && step.Ratio is not null,
        _ => false,
    };

    /// <summary>Every step with its vessel and its volume; an absurd volume is told and left out.</summary>
    private static ImmutableArray<DraftStep> Housed(Draft draft, StockDay day, PlanWishes wishes, List<Finding> findings)
    {
        var steps = ImmutableArray.CreateBuilder<DraftStep>(draft.Steps.Length);
        foreach (var drafted in draft.Steps)
        {
            var step = NeedsVessel(drafted) ? Housed(drafted, draft, day, wishes) : BenchTools.Of(drafted, day.Stock.Sundries);
            if (step.Volume is { } volume && volume * (1 + step.Changes) > MostForAStep)
            {
                var said = Absurd.With(Argument.Id("step", step.Id), ("volume", volume * (1 + step.Changes)));
                findings.Add(Finding.Error("absurd-amount", said, AbsurdRemedy, step.Span) with { Subject = step.Id });
                step = step with { Volume = null };
            }

            steps.Add(step);
        }

        return steps.MoveToImmutable();
    }

    private static DraftStep Housed(DraftStep step, Draft draft, StockDay day, PlanWishes wishes)
    {
        if (step.Fluid is null) step = step with { Fluid = Fluid.TapWater };
        var wished = wishes.Vessels.IsEmpty ? null : WishedVessel.For(step, wishes, draft, day);
        var outcome = wished is null ? VesselChoice.For(step, draft.Body, draft.Posture!.Body, day) : new(wished, null, wished.Findings);
        if (outcome.Fitted is { } fitted) return step with { Vessel = fitted, Volume = step.Used ?? fitted.FluidVolume };

        // By the ratio alone where no vessel is listed or none fits.
        return step with { NoVessel = outcome, Volume = step.Used ?? draft.Body.LotVolume.Nominal * Math.Clamp(step.Ratio?.Low ?? 1, 0, 1000) };
    }

    /// <summary>Every step with what is done in it settled by vessels and stock.</summary>
    private static ImmutableArray<DraftStep> Finished(ImmutableArray<DraftStep> steps, Draft draft, WasteBook waste)
    {
        var finished = ImmutableArray.CreateBuilder<DraftStep>(steps.Length);
        var isPosed = steps.Any(s => s.Work is PoseWork);
        foreach (var step in steps)
        {
            var work = Finished(step.Work, draft, steps, waste);
            if (!isPosed && work is SoakWork soak && step.Kind == StageKind.Immerse)
                (work, isPosed) = (soak with { Posture = draft.Posture }, true);

            finished.Add(ReferenceEquals(work, step.Work) ? step : step with { Work = work });
        }

        return finished.MoveToImmutable();
    }

    /// <summary>Where this bench puts a spent fluid; how the body is held in the vessel that was chosen, and how that is closed.</summary>
    private static StepWork Finished(StepWork work, Draft draft, ImmutableArray<DraftStep> steps, WasteBook waste) => work switch
    {
        DiscardWork discard when waste.PouredOff(discard.Of) is { } routed => discard with { Routed = routed },
        MountWork mount => mount with { Chosen = FinalVessel.MountFor(draft.Body, draft.Posture!.Body, steps) },
        PoseWork pose => pose with { Posture = draft.Posture },
        SealWork seal => seal with { Chosen = FinalVessel.ClosingFor(steps, seal) },
        _ => work,
    };

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
