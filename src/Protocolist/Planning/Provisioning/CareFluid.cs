using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Planning.Drafting;
using Protocolist.Quantities;
using Protocolist.Vessels;
using UnitsNet;

namespace Protocolist.Planning.Provisioning;

/// <summary>What evaporates from the final vessel in a year and is put back, and what that costs.</summary>
/// <param name="PerYear">The volume; null where nobody knows.</param>
/// <param name="Cost">What it costs, rounded to a coin once a year; null where nobody knows.</param>
internal readonly record struct CareFluid(Volume? PerYear, Money? Cost)
{
    /// <summary>A note where nobody has measured it; else null.</summary>
    public Finding? Doubt { get; init; }

    private static readonly Phrase Unmeasured = new(
        "top-up-not-reckoned",
        "nobody has measured what '{vessel}' loses in a year, and no figure is published for its closure: fluid for topping up is not in the cost of care");

    private static readonly Phrase UnmeasuredRemedy = new(
        "top-up-not-reckoned.remedy", "weigh it full and a year later, and write it in the bench file as 'loses-a-year: 40 mL'");

    /// <summary>
    /// By the house's own measurement, else by what is published of its closure; priced as the keeping fluid of this plan, by the worth of what goes into
    /// it.
    /// </summary>
    /// <remarks>
    /// Published losses are of jars of ethanol. They are taken for watery fixative too, which loses less: at 20 °C water has a vapour pressure of 2.3 kPa and
    /// ethanol of 5.8 kPa (usual tables, from memory). Topping up with stronger alcohol than the jar's costs a few hundredths more, which is not reckoned.
    /// </remarks>
    public static CareFluid Of(Draft draft, RecipeChoice choice, MaterialBooks books, PreparedStock stock)
    {
        if (stock.Bench.Currency is not { } currency) return default;
        if (draft.Steps.LastOrDefault(s => s.Kind == StageKind.House) is not { Vessel: { } fitted, Fluid: { IsWater: false } } house) return default;
        if (LossOf(fitted.Vessel) is not { } loss)
        {
            var said = Unmeasured.With(Argument.Id("vessel", fitted.Vessel.Id));
            return new(null, null) { Doubt = Finding.Note(Unmeasured.Id, said, UnmeasuredRemedy) with { Subject = house.Id } };
        }

        if (choice.Recipes.FirstOrDefault(r => r.Need.Steps.Contains(house.Id)) is not { Need.Made.CubicMeters: > 0 } recipe) return new(loss, null);
        var whole = 0m;
        foreach (var (part, material) in recipe.Way.Parts) whole += books.CostOf(material, recipe.AmountOf(part));
        var minor = decimal.Round(whole * Amount.Of(loss).Units / Amount.Of(recipe.Need.Made).Units, 0, MidpointRounding.AwayFromZero);
        return new(loss, Money.OfMinor((long)minor, currency));
    }

    /// <summary>What one of a vessel loses in a year; null where it is neither measured nor published.</summary>
    public static Volume? LossOf(Vessel vessel) => vessel.LossPerYear ?? Evaporation.Of(vessel.Closure, vessel.Seal).PerYear;
}
