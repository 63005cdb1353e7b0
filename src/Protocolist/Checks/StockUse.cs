using Protocolist.Benches;

namespace Protocolist.Checks;

/// <summary>Whether a plan has any use for a bottle.</summary>
internal static class StockUse
{
    /// <summary>Whether a recipe draws on this item, or on another of the same substance.</summary>
    public static bool Uses(this ReviewCase plan, StockItem item)
    {
        foreach (var recipe in plan.Plan.Recipes)
        {
            foreach (var part in recipe.Parts)
            {
                if (part.Stock == item.Id || part.Name.ToString().StartsWith(item.Substance, StringComparison.Ordinal)) return true;
            }
        }

        return false;
    }
}
