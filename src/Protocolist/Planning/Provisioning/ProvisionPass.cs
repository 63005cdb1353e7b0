using System.Collections.Immutable;
using System.Runtime.InteropServices;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Planning.Drafting;
using Protocolist.Plans;
using UnitsNet;

namespace Protocolist.Planning.Provisioning;

/// <summary>What the fourth pass adds to a draft: all that has to be there before work can begin.</summary>
/// <param name="Draft">The steps with their vessels and volumes.</param>
/// <param name="Day">The bench on the day of use.</param>
/// <param name="Needs">What the steps use, by fluid.</param>
/// <param name="Choice">Every way to make each fluid, and those that were chosen.</param>
/// <param name="Books">What is drawn and bought of fluids, salts and vessels.</param>
/// <param name="Findings">What was found.</param>
internal sealed record Provisioned(
    Draft Draft, StockDay Day, List<FluidNeed> Needs, RecipeChoice Choice, MaterialBooks Books, ImmutableArray<Finding> Findings);

/// <summary>
/// Fourth pass: vessels, volumes, recipes from stock, and what has to be bought for them. A pure function of a draft, the bench on a day, and
/// what is insisted on, so that it can be run for any candidate.
/// </summary>
internal static class ProvisionPass
{
    /// <summary>Twenty times the heaviest body that anybody plans for, changed twice; beyond it lies a slip in a size. The project's choice.</summary>
    private static readonly Volume MostForAStep = Volume.FromCubicMeters(30);

    private static readonly Phrase Absurd = new("absurd-amount.fluid", "'{step}' would take {volume} of fluid, more than any bench can fill");
    private static readonly Phrase AbsurdRemedy = new("absurd-amount.fluid.remedy", "check the size and the count of the specimen, and their units");

    /// <summary>Provisions a draft.</summary>
    /// <param name="draft">The steps with their fluids, amounts and durations.</param>
    /// <param name="day">The bench on the day of use.</param>
    /// <param name="wishes">Vessels and supplies that are insisted on.</param>
    public static Provisioned Run(Draft draft, StockDay day, PlanWishes wishes)
    {
        var findings = new List<Finding>();
        if (draft.Posture is null) draft = draft with { Posture = PostureChoice.For(draft, day, wishes) };
        var steps = Housed(draft, day, wishes, findings);
        findings.AddRange(day.TakenVessels.AsSpan());
        if (!wishes.Vessels.IsEmpty) WishedVessel.Unmet(wishes, steps, draft, day, findings);

        var needs = FluidNeed.Of(steps, day);
        var choice = RecipeChoice.Of(needs, day, wishes.Supplies, findings);
        var books = MaterialBooks.Of(choice, day, findings);
        VesselPurchases.Book(books, steps, day, findings);
        return new(draft with { Steps = steps }, day, needs, choice, books, [.. findings]);
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
        var (steps, next) = (new DraftStep[draft.Steps.Length], 0);
        foreach (var drafted in draft.Steps)
        {
            var step = NeedsVessel(drafted) ? Housed(drafted, draft, day, wishes) : BenchTools.Of(drafted, day.Stock.Sundries);
            if (step.Volume is { } volume && volume * (1 + step.Changes) > MostForAStep)
            {
                var said = Absurd.With(Argument.Id("step", step.Id), ("volume", volume * (1 + step.Changes)));
                findings.Add(Finding.Error("absurd-amount", said, AbsurdRemedy, step.Span) with { Subject = step.Id });
                step = step with { Volume = null };
            }

            steps[next++] = step;
        }

        SharedBaths.Share(steps, draft, day, step => !wishes.Vessels.ContainsKey(step.Id));
        return ImmutableCollectionsMarshal.AsImmutableArray(steps);
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
}
