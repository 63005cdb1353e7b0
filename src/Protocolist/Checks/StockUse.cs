using Protocolist.Benches;

namespace Protocolist.Checks;

/// <summary>Whether a plan has any use for a bottle.</summary>
internal static class StockUse
{
    /// <summary>Whether a recipe draws on this item, or on another of the same substance; what is neither fluid nor salt is only what it is called.</summary>
    public static bool Uses(this ReviewCase plan, StockItem item)
    {
        var (fluid, salt) = plan.Holds(item);
        foreach (var recipe in plan.Plan.Recipes)
        {
            foreach (var part in recipe.Parts)
            {
                if (part.Stock == item.Id) return true;
                if (fluid is not null && part.Fluid?.Substance == fluid.Substance) return true;
                if (salt is not null && part.Salt == salt) return true;
            }
        }

        return false;
    }
}
