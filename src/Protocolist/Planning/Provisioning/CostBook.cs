using System.Collections.Immutable;
using NodaTime;
using Protocolist.Benches;
using Protocolist.Benches.Disposal;
using Protocolist.Findings;
using Protocolist.Planning.Purchasing;
using Protocolist.Plans;
using Protocolist.Quantities;
using Protocolist.Reading;

namespace Protocolist.Planning.Provisioning;

/// <summary>What a plan costs, in the bench's currency.</summary>
internal static class CostBook
{
    /// <summary>A year as the rhythm of care counts it, s.</summary>
    private const double YearSeconds = 365.25 * 86400;

    public static (PlanCosts Costs, ImmutableArray<Finding> Findings) Of(Draft draft, Bench bench, ExchangeRates rates, MaterialBook materials, IEnumerable<Thing> things, WasteBook waste)
    {
        if (bench.Currency is null) return (new(null, null, null, null), []);
        var disposal = Disposal(bench);
        var handsOn = draft.Steps.Where(s => !s.IsCare).Aggregate(Duration.Zero, (sum, s) => sum + s.HandsOn);
        var wear = things.Where(t => t.IsListed && t.UsesBeyond > 0).Select(t => (t.Items[0], t.UsesBeyond)).ToList();
        var lots = waste.Lots.Where(w => w.Class != WasteClass.RinseWater && w.Amount.Kind == Benches.Stock.AmountKind.Volume).ToList();
        var summed = new CostRates(bench.Labour, disposal, rates).Sum(materials.Lines, wear, handsOn, lots, bench.Labour?.For(CareByYear(draft)));
        var costs = summed.Value!;
        var labour = bench.Labour is null ? null : costs.Labour;
        return (new(costs.CashNow, costs.Materials, labour, disposal.IsEmpty ? null : costs.Disposal)
        {
            LeftOnShelf = costs.LeftOnShelf,
            Wear = costs.Wear,
            DisposalByClass = disposal.IsEmpty ? [] : [.. costs.DisposalByClass.Select(d => new DisposalCost(EnumWords<WasteClass>.Of(d.Key), d.Value))],
            Total = costs.Total,
            BySpecimen = costs.BySpecimen(Math.Max(1, draft.Body.Count))[0],
            CareByYear = bench.Labour is null ? null : costs.CareByYear,
            OverTenYears = costs.Over(10),
        }, summed.Findings);
    }

    private static ImmutableDictionary<WasteClass, Price> Disposal(Bench bench)
    {
        var prices = ImmutableDictionary.CreateBuilder<WasteClass, Price>();
        if (bench.FormaldehydeDisposal is { } formaldehyde) prices[WasteClass.Formaldehyde] = prices[WasteClass.FormaldehydeAndAlcohol] = formaldehyde;
        if (bench.AlcoholDisposal is { } alcohol) prices[WasteClass.FlammableAlcohol] = prices[WasteClass.DiluteAlcohol] = alcohol;
        return prices.ToImmutable();
    }

    /// <summary>Hands-on time of the rounds in a year: each as often as its 'every' says. What evaporates is not in it, because the vessel's loss is measured, not planned.</summary>
    private static Duration CareByYear(Draft draft)
    {
        var sum = Duration.Zero;
        foreach (var step in draft.Steps.Where(s => s.IsCare))
        {
            var every = draft.Figures.FirstOrDefault(f => f.Id == $"{step.Id}.every");
            if (every is { Exact.Length: > 0 } && QuantityText.Read(every.Exact, out var range) is null && range is { IsFinite: true, Middle: > 0 })
                sum += step.HandsOn * Math.Min(366, YearSeconds / range.Middle);
        }

        return sum;
    }
}
