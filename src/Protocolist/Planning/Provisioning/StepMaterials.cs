using System.Collections.Immutable;
using NodaTime;
using Protocolist.Benches.Stock;
using Protocolist.Plans;
using Protocolist.Quantities;
using static System.FormattableString;

namespace Protocolist.Planning.Provisioning;

/// <summary>What one step needs on the table, each with its id and where it comes from.</summary>
internal static class StepMaterials
{
    public static ImmutableArray<Material> Of(DraftStep step, RecipeBook recipes, IEnumerable<Thing> things, LocalDate on)
    {
        var materials = ImmutableArray.CreateBuilder<Material>();
        if (step.Fluid is { } fluid && step.Volume is { } volume && volume.CubicMeters > 0)
        {
            materials.Add(new(fluid.Name, Measurable.Text((volume * (1 + step.Changes)).CubicMeters, Dimension.OfVolume))
            {
                Id = Slug.Of(fluid.Name),
                From = recipes.Recipes.Any(r => r.Use.Steps.Any(s => s.Step == step.Id)) ? "recipe" : "tap",
            });
        }

        if (step.Vessel is { } vessel) materials.Add(new(vessel.Vessel.Name, "1") { Id = vessel.Vessel.Id, From = "vessel" });
        foreach (var thing in things)
        {
            var uses = thing.Uses.Where(u => u.Step == step.Id).Sum(u => u.Uses);
            if (uses > 0) materials.Add(new(thing.IsListed ? thing.Items[0].Substance : thing.Name, AmountText(thing, uses)) { Id = thing.Id, From = FromWhere(thing, on) });
        }

        return materials.DrainToImmutable();
    }

    /// <summary>Pieces of what is used once, one of what lasts.</summary>
    private static string AmountText(Thing thing, long uses) =>
        thing is { IsListed: true, Wear: null or { LastsUses: > 1 } } || (!thing.IsListed && thing.Waste is null && thing.Id != "label") ? "1" : Invariant($"{uses}");

    private static string FromWhere(Thing thing, LocalDate on) =>
        !thing.IsListed ? "not listed" : thing.OnHand(on) >= Amount.Of(thing.Needed) ? "shelf" : "shelf and purchase";
}
