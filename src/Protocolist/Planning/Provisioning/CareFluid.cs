using Protocolist.Benches.Stock;
using Protocolist.Findings;
using Protocolist.Protocols;
using Protocolist.Quantities;
using Protocolist.Vessels;
using UnitsNet;

namespace Protocolist.Planning.Provisioning;

/// <summary>What evaporates from the final vessel in a year and is put back, and what that costs.</summary>
/// <param name="PerYear">The volume; null where nobody knows.</param>
/// <param name="Cost">What it costs, rounded to a coin once a year; null where nobody knows.</param>
internal sealed record CareFluid(Volume? PerYear, Money? Cost)
{
    /// <summary>By the house's own measurement, else by what is published of its closure; priced as the keeping fluid of this plan, by the worth of what goes into it.</summary>
    /// <remarks>
    /// Published losses are of jars of ethanol. They are taken for watery fixative too, which loses less: at 20 °C water has a vapour pressure of 2.3 kPa and
    /// ethanol of 5.8 kPa (usual tables, from memory). Topping up with stronger alcohol than the jar's costs a few hundredths more, which is not reckoned.
    /// </remarks>
    public static Checked<CareFluid> Of(Draft draft, RecipeBook recipes, MaterialBook materials, string currency)
    {
        if (draft.Steps.LastOrDefault(s => s.Kind == StageKind.House) is not { Vessel: { } fitted, Fluid: { IsWater: false } fluid } house) return new(new(null, null), []);
        if (LossOf(fitted.Vessel) is not { } loss)
        {
            return new(new(null, null),
            [
                Finding.Note("top-up-not-reckoned", $"nobody has measured what '{fitted.Vessel.Id}' loses in a year, and no figure is published for its closure: fluid for topping up is not in the cost of care", "weigh it full and a year later, and write it in the bench file as 'loses-a-year: 40 mL'") with { Subject = house.Id },
            ]);
        }

        if (recipes.Recipes.FirstOrDefault(r => r.Use.Steps.Any(s => s.Step == house.Id)) is not { Recipe: { } recipe } || recipe.Volume.CubicMeters <= 0) return new(new(loss, null), []);
        var whole = recipe.Parts.Sum(p => materials.Lines.FirstOrDefault(l => l.Id == p.Name) is { Used.Units: > 0 } line ? line.CostOfUsed.Amount * FluidWay.AmountOf(p).Units / line.Used.Units : 0);
        var made = Amount.Of(recipe.Volume).Units;
        return new(new(loss, Money.Rounded(whole * Amount.Of(loss).Units / made, currency)), []);
    }

    /// <summary>What one of a vessel loses in a year; null where it is neither measured nor published.</summary>
    public static Volume? LossOf(Vessel vessel) => vessel.LossPerYear ?? Evaporation.Of(vessel.Closure, vessel.Seal).PerYear;
}
