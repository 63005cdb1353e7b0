using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Planning.Making;
using Protocolist.Plans;
using Protocolist.Specimens;

namespace Protocolist.Planning.Comparing;

/// <summary>A plan as one way among others: what it is, and its numbers.</summary>
internal static class WayWriting
{
    public static ComparedWay Of(MadePlan made, PlanRequest request, string name, Kinds kinds)
    {
        var plan = made.Plan.Value!;
        return new()
        {
            Name = name,
            Choices = plan.Choices,
            Vessels = (made.Draft?.Steps ?? [])
                .Where(s => Variation.IsWeighed(s) && s.Vessel is not null)
                .ToImmutableSortedDictionary(s => s.Id, s => s.Vessel!.Vessel.Id, StringComparer.Ordinal),
            Supplies = (made.Provisioned?.Choice.Recipes ?? []).Where(r => !r.Need.Fluid.IsWater)
                .ToImmutableSortedDictionary(r => r.Need.Key, r => r.Way.Supply.Id, StringComparer.Ordinal),
            Wishes = request.Wishes,
            Startable = plan.Startable,
            Days = plan.Start is { } start && plan.End is { } end ? (end.ToInstant() - start.ToInstant()).TotalDays : null,
            HandsOnHours = plan.Steps.Sum(s => s.HandsOn.TotalHours),
            CostNow = plan.Costs.Cash,
            OverTenYears = plan.Costs.OverTenYears,
            FormaldehydeStockLitres = plan.Recipes.SelectMany(r => r.Parts).Sum(StockEquivalent),
            FlammableAlcoholLitres = plan.Recipes
                .SelectMany(r => r.Parts)
                .Where(p => p.Fluid is { AlcoholVolumePercent: >= 24 })
                .Sum(p => p.Volume?.Liters ?? 0),
            Findings = [.. plan.Findings.Where(f => f.Severity != Severity.Note)],
            Remarks = KeepingRemarks.Of(plan, kinds),
        };
    }

    /// <summary>Litres of the reference stock that hold as much formaldehyde as this part.</summary>
    private static double StockEquivalent(PlannedPart part) =>
        part.Fluid is { HasFormaldehyde: true, FormaldehydeGramsPerLitre: { } grams }
            ? (part.Volume?.Liters ?? 0) * grams / (Fluid.ReferenceStock.FormaldehydeGramsPerLitre ?? grams)
            : 0;
}
