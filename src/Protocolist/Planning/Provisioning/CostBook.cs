using System.Collections.Immutable;
using NodaTime;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Fluids.Safety;
using Protocolist.Planning.Purchasing;
using Protocolist.Plans;
using Protocolist.Reading;

namespace Protocolist.Planning.Provisioning;

/// <summary>What a plan costs, in the bench's currency.</summary>
internal static class CostBook
{
    /// <summary>A year as the rhythm of care counts it, s.</summary>
    private const double YearSeconds = 365.25 * 86400;

    public static (PlanCosts Costs, ImmutableArray<Finding> Findings) Of(Draft draft, Bench bench, ExchangeRates rates, RecipeBook recipes, MaterialBook materials, IEnumerable<Thing> things, WasteBook waste)
    {
        if (bench.Currency is null) return (new(null, null, null, null), []);
        var hasDisposal = !bench.DisposalPrices.IsEmpty || !bench.WasteRules.ContainerPrices.IsEmpty;
        var handsOn = draft.Steps.Where(s => !s.IsCare).Aggregate(Duration.Zero, (sum, s) => sum + s.HandsOn);
        var wear = things.Where(t => t.IsListed && t.UsesBeyond > 0).Select(t => (t.Items[0], t.UsesBeyond)).ToList();
        var lots = waste.Lots.Where(w => w.Class != WasteClass.RinseWater || bench.DisposalPrices.ContainsKey(w.Class) || bench.WasteRules.ContainerPrices.ContainsKey(w.Class)).ToList();
        var care = CareFluid.Of(draft, recipes, materials, rates.Currency);
        var summed = new CostRates(bench.Labour, bench.DisposalPrices, rates) { ContainerPrices = bench.WasteRules.ContainerPrices }
            .Sum(materials.Lines, wear, handsOn, lots, bench.Labour?.For(CareByYear(draft)), care.Value!.Cost);
        var costs = summed.Value!;
        var labour = bench.Labour is null ? null : costs.Labour;
        return (new(costs.CashNow, costs.Materials, labour, hasDisposal ? costs.Disposal : null)
        {
            LeftOnShelf = costs.LeftOnShelf,
            Wear = costs.Wear,
            DisposalByClass = hasDisposal ? [.. costs.DisposalByClass.Select(d => new DisposalCost(EnumWords<WasteClass>.Of(d.Key), d.Value))] : [],
            Total = costs.Total,
            BySpecimen = costs.BySpecimen(Math.Max(1, draft.Body.Count))[0],
            CareLabourByYear = bench.Labour is null ? null : costs.CareLabourByYear,
            CareFluidByYear = care.Value!.Cost,
            TopUpByYear = care.Value!.PerYear,
            CareByYear = bench.Labour is null && care.Value!.Cost is null ? null : costs.CareByYear,
            OverTenYears = costs.Over(10),
        }, [.. summed.Findings, .. care.Findings]);
    }

    /// <summary>Hands-on time of the rounds in a year: each as often as its 'every' says.</summary>
    private static Duration CareByYear(Draft draft)
    {
        var sum = Duration.Zero;
        foreach (var step in draft.Steps.Where(s => s.IsCare))
        {
            if (step.Work is CareWork { Every: { IsFinite: true, Middle: > 0 } every }) sum += step.HandsOn * Math.Min(366, YearSeconds / every.Middle);
        }

        return sum;
    }
}
