using System.Collections.Immutable;
using System.Runtime.InteropServices;
using Protocolist.Findings;
using Protocolist.Planning.Drafting;
using Protocolist.Plans;

namespace Protocolist.Planning.Provisioning;

/// <summary>What one step needs on the table, each with its id and where it comes from.</summary>
internal static class StepMaterials
{
    /// <summary>The steps that need something, in their order.</summary>
    public static ImmutableArray<(string Step, ImmutableArray<StepMaterial> Materials)> Of(
        ImmutableArray<DraftStep> steps, RecipeChoice choice, List<SundryUse> sundries, StockDay day)
    {
        var tables = ImmutableArray.CreateBuilder<(string, ImmutableArray<StepMaterial>)>(steps.Length);
        for (var at = 0; at < steps.Length; at++)
        {
            if (Of(steps, at, choice, sundries, day) is { IsEmpty: false } materials) tables.Add((steps[at].Id, materials));
        }

        return tables.DrainToImmutable();
    }

    private static ImmutableArray<StepMaterial> Of(ImmutableArray<DraftStep> steps, int at, RecipeChoice choice, List<SundryUse> sundries, StockDay day)
    {
        var (step, count) = (steps[at], 0);
        var fresh = step is { Fluid: not null, Volume.CubicMeters: > 0 } ? FluidNeed.FreshFor(step) : default;
        var hasFluid = fresh.CubicMeters > 0;
        if (hasFluid) count++;
        if (step.Vessel is not null) count++;
        foreach (var use in sundries)
        {
            if (use.UsesOf(at) > 0) count++;
        }

        if (count == 0) return [];
        var (materials, next) = (new StepMaterial[count], 0);
        if (hasFluid)
        {
            var from = IsMade(at, choice) ? MaterialOrigin.Recipe : MaterialOrigin.Tap;
            materials[next++] = new(from) { Fluid = step.Fluid, Volume = fresh };
        }

        if (step.Vessel is { Vessel: var vessel })
            materials[next++] = new(MaterialOrigin.Vessel) { Name = Message.Text(vessel.Name), Id = vessel.Id, Pieces = 1 };
        foreach (var use in sundries)
        {
            if (use.UsesOf(at) is > 0 and var times)
                materials[next++] = new(FromWhere(use, day)) { Name = use.Name, Id = use.Stock?.Id ?? use.Sundry.Id, Pieces = OneLasts(use) ? 1 : times };
        }

        return ImmutableCollectionsMarshal.AsImmutableArray(materials);
    }

    private static bool IsMade(int step, RecipeChoice choice)
    {
        foreach (var recipe in choice.Recipes)
        {
            foreach (var use in recipe.Need.Uses)
            {
                if (use.Step == step) return true;
            }
        }

        return false;
    }

    /// <summary>Pieces of what is used once, one of what lasts.</summary>
    private static bool OneLasts(SundryUse use) => use.Stock is null
        ? use.Waste is null && use.Sundry.Kind != SundryKind.Label
        : use.Wear is null or { LastsUses: > 1 };

    private static MaterialOrigin FromWhere(SundryUse use, StockDay day) =>
        use.Stock is not { } stock ? MaterialOrigin.NotListed
        : day.Materials[stock.Index].Usable.Units >= use.Needed ? MaterialOrigin.Shelf
        : MaterialOrigin.ShelfAndPurchase;
}
