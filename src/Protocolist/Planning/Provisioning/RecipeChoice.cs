using System.Collections.Immutable;
using System.Runtime.InteropServices;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Fluids.Mixing;
using Protocolist.Planning.Provisioning.Purchasing;
using Protocolist.Plans;
using UnitsNet;

namespace Protocolist.Planning.Provisioning;

/// <summary>How one fluid of a plan is made.</summary>
/// <param name="Need">The fluid, how much of it, and for what.</param>
/// <param name="Way">The way that was taken.</param>
internal sealed record ChosenRecipe(FluidNeed Need, FluidWay Way)
{
    /// <summary>How much of one part goes in.</summary>
    public Amount AmountOf(RecipePart part) => AmountOf(part, Times(Need, Way));

    /// <summary>As the plan shows it.</summary>
    public PlannedRecipe Written(Temperature at, Func<StockMaterial, string> bottleOf)
    {
        var (times, parts) = (Times(Need, Way), ImmutableArray.CreateBuilder<PlannedPart>(Way.Parts.Length));
        foreach (var supplied in Way.Parts)
        {
            var part = supplied.Part;
            Volume? measured = part.Volume is { } once ? Grid.On(once * times) : null;
            parts.Add(new(supplied.Name, measured, Grid.On(part.Mass * times), supplied.Material is { } material ? bottleOf(material) : "")
            {
                Fluid = part.Fluid,
                Salt = part.Salt,
            });
        }

        return new(Need.Fluid, Grid.On(Need.Made), parts.MoveToImmutable(), Need.Steps)
        {
            ForImmersion = Need.ForImmersion,
            At = Grid.On(at),
            Telling = new RecipeTelling(() => Made(at, times)),
        };
    }

    private Recipe Made(Temperature at, double times) => new(
        Need.Fluid,
        Need.Made,
        at,
        [.. Way.Parts.Select(p => p.Part with { Name = p.Name.ToString(), Volume = p.Part.Volume * times, Mass = p.Part.Mass * times })],
        Volume.Zero);

    /// <summary>What each of the ways takes, to be weighed against the others.</summary>
    public static Need Asked(FluidNeed need, ImmutableArray<FluidWay> ways)
    {
        var demands = ImmutableArray.CreateBuilder<ImmutableArray<Demand>>(ways.Length);
        foreach (var way in ways) demands.Add(Demands(need, way));
        return new(demands.MoveToImmutable());
    }

    /// <summary>What a way takes of the bench's materials, for as much as is needed; each material once.</summary>
    public static ImmutableArray<Demand> Demands(FluidNeed need, FluidWay way)
    {
        var (times, demands) = (Times(need, way), ImmutableArray.CreateBuilder<Demand>(way.Parts.Length));
        foreach (var (part, material) in way.Parts)
        {
            if (material is null) continue;
            var (at, units) = (0, AmountOf(part, times).Units);
            while (at < demands.Count && demands[at].Product != material.Index) at++;
            if (at < demands.Count) demands[at] = new(material.Index, demands[at].Units + units);
            else demands.Add(new(material.Index, units));
        }

        return demands.DrainToImmutable();
    }

    private static double Times(FluidNeed need, FluidWay way) => need.Made / way.Volume;

    private static Amount AmountOf(RecipePart part, double times) => part.Volume is { } volume ? Amount.Of(volume * times) : Amount.Of(part.Mass * times);
}

/// <summary>One recipe for each fluid, and the purchases that come with them: all ways of all fluids are weighed together.</summary>
/// <param name="Recipes">The recipes, in the order of the needs; tap water has none.</param>
/// <param name="Ways">Of each need, every way to make it, whatever was wished; none where the bench has nothing for it.</param>
/// <param name="Purchases">What is bought with it.</param>
internal sealed record RecipeChoice(
    ImmutableArray<ChosenRecipe> Recipes, ImmutableArray<(FluidNeed Need, ImmutableArray<FluidWay> Ways)> Ways, PurchasePlan Purchases)
{
    private static readonly Phrase UnknownFluid = new("unknown-supply.fluid", "this plan makes no '{fluid}'");
    private static readonly Phrase UnknownWay = new("unknown-supply.way", "'{fluid}' cannot be made from '{way}' on this bench");
    private static readonly Phrase UnknownWayRemedy = new("unknown-supply.way.remedy", "take one of: {ways:; }");

    /// <summary>Chooses the cheapest combination.</summary>
    /// <param name="needs">The fluids.</param>
    /// <param name="day">The bench on the day of use.</param>
    /// <param name="wished">Fluid → the id of what it is to be made from.</param>
    /// <param name="findings">Takes what is to be said.</param>
    public static RecipeChoice Of(
        List<FluidNeed> needs, StockDay day, ImmutableSortedDictionary<string, string> wished, List<Finding> findings)
    {
        var first = findings.Count;
        var all = ImmutableArray.CreateBuilder<(FluidNeed, ImmutableArray<FluidWay>)>(needs.Count);
        var recipes = ImmutableArray.CreateBuilder<ChosenRecipe>(needs.Count);
        var (open, asked) = (new ImmutableArray<FluidWay>[needs.Count], new List<Need>(needs.Count));
        UnknownFluids(needs, wished, findings);
        for (var i = 0; i < needs.Count; i++)
        {
            var (need, known) = (needs[i], day.WaysOf(needs[i].Fluid));
            var ways = known.For(need.Made, need.ForImmersion);
            all.Add((need, ways));
            open[i] = ways.IsEmpty ? Usual(need, known, day, findings) : wished.IsEmpty ? ways : Wished(need, ways, wished, findings);
            if (open[i].Length > 0) asked.Add(ChosenRecipe.Asked(need, open[i]));
        }

        findings.AddRange(day.Stock.WithoutRate.AsSpan());
        var purchases = Purchasing.Purchases.Choose(CollectionsMarshal.AsSpan(asked), new long[day.Products.Length], day.Products, findings);
        var chosen = 0;
        for (var i = 0; i < needs.Count; i++)
        {
            if (open[i].Length > 0) recipes.Add(new(needs[i], open[i][purchases.Ways[chosen++]]));
        }

        foreach (var recipe in recipes) findings.AddRange(recipe.Way.Findings.AsSpan());
        Distinct.From(findings, first);
        return new(recipes.DrainToImmutable(), all.MoveToImmutable(), purchases);
    }

    /// <summary>The recipe of a need; null where it comes from the tap.</summary>
    public ChosenRecipe? RecipeOf(FluidNeed need)
    {
        foreach (var recipe in Recipes)
        {
            if (ReferenceEquals(recipe.Need, need)) return recipe;
        }

        return null;
    }

    private static void UnknownFluids(List<FluidNeed> needs, ImmutableSortedDictionary<string, string> wished, List<Finding> findings)
    {
        if (wished.IsEmpty) return;
        ImmutableArray<string> made = [.. needs.Select(n => n.Key)];
        foreach (var fluid in wished.Keys.Where(f => !made.Contains(f)))
            findings.Add(Finding.Error("unknown-supply", UnknownFluid.With(("fluid", fluid)), Suggestion.For(fluid, made)));
    }

    /// <summary>The one way that is insisted on; all where it is none of them, with an error.</summary>
    private static ImmutableArray<FluidWay> Wished(
        FluidNeed need, ImmutableArray<FluidWay> ways, ImmutableSortedDictionary<string, string> wished, List<Finding> findings)
    {
        if (!wished.TryGetValue(need.Key, out var supply)) return ways;
        if (ways.FirstOrDefault(w => w.Supply.Id == supply) is { } way) return [way];
        findings.Add(Finding.Error(
            "unknown-supply",
            UnknownWay.With(("fluid", need.Name), ("way", Excerpt.Of(supply))),
            UnknownWayRemedy.With(Argument.Texts("ways", ways.Select(w => w.Supply.Id)))));
        return ways;
    }

    /// <summary>The recipe from the stock that is usually at hand, with what the shelf lacks said as a warning.</summary>
    /// <remarks>What it is made from is drawn from the shelf and bought like anything else, as far as the bench lists it.</remarks>
    private static ImmutableArray<FluidWay> Usual(FluidNeed need, FluidWays ways, StockDay day, List<Finding> findings)
    {
        if (need.Fluid.IsWater) return [];
        findings.AddRange(ways.UsualFaults.AsSpan());
        if (!day.Stock.IsEmpty)
        {
            var severity = ways.Usual is null ? Severity.Error : Severity.Warning;
            findings.AddRange(ways.ShortFor(need.Made).Where(f => f.Severity == Severity.Error).Select(f => f with { Severity = severity }));
        }

        return ways.Usual is { } usual ? [usual] : [];
    }
}

/// <summary>Findings that are said once.</summary>
internal static class Distinct
{
    /// <summary>Takes out, from a place on, what says the same as one before.</summary>
    public static void From(List<Finding> findings, int first)
    {
        for (var i = first; i < findings.Count; i++)
        {
            for (var j = first; j < i; j++)
            {
                if (findings[j].Id != findings[i].Id || findings[j].Message != findings[i].Message) continue;
                findings.RemoveAt(i--);
                break;
            }
        }
    }
}
