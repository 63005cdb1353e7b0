using System.Collections.Immutable;
using NodaTime;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Fluids.Mixing;
using UnitsNet;
using FluidRecipe = Protocolist.Fluids.Mixing.Recipe;

namespace Protocolist.Planning;

/// <summary>One fluid that steps use: how much of it, and where.</summary>
internal sealed record FluidUse(Fluid Fluid, ImmutableArray<(string Step, Volume Volume)> Steps)
{
    public Volume Asked => Volume.FromCubicMeters(Steps.Sum(s => s.Volume.CubicMeters));

    /// <summary>What is made: what is asked, and a reserve for what spills and clings.</summary>
    public Volume Made => Purchasing.Reserve.Usual.ToProvide(Benches.Stock.Amount.Of(Asked), Steps.Length).Volume;
}

/// <summary>A recipe solved from the bench's stock.</summary>
internal sealed record SolvedRecipe(FluidUse Use, FluidRecipe Recipe);

/// <summary>One recipe for each fluid of a plan.</summary>
internal static class RecipeBook
{
    /// <summary>Below this nothing can be measured out.</summary>
    private static readonly Volume Least = Volume.FromMicroliters(1);

    public static ImmutableArray<FluidUse> Uses(IEnumerable<DraftStep> steps) =>
    [
        .. steps.Where(s => s.Fluid is not null && s.Volume is { } v && v >= Least)
            .GroupBy(s => s.Fluid!.Name, StringComparer.Ordinal)
            .Select(g => new FluidUse(g.First().Fluid!, [.. g.Select(s => (s.Id, s.Volume!.Value * (1 + s.Changes)))])),
    ];

    public static (ImmutableArray<SolvedRecipe> Recipes, ImmutableArray<Finding> Findings) Solve(IEnumerable<FluidUse> uses, StockBook stock, Bench bench, LocalDate on)
    {
        var recipes = ImmutableArray.CreateBuilder<SolvedRecipe>();
        var findings = ImmutableArray.CreateBuilder<Finding>();
        var at = Temperature.FromDegreesCelsius(Math.Clamp(bench.Temperatures.Room.DegreesCelsius, 0, 40));
        foreach (var use in uses.Where(u => !u.Fluid.IsWater))
        {
            var request = new MixRequest(use.Fluid, use.Made, stock.Stocks(on)) { At = at, Salts = stock.SaltsAtHand(on) };
            var solved = stock.IsEmpty ? new Checked<FluidRecipe>(null, []) : RecipeSolver.Solve(request);
            if (solved.Value is { } recipe)
            {
                recipes.Add(new(use, recipe));
                findings.AddRange(solved.Findings.Where(f => f.Severity != Severity.Error));
                continue;
            }

            var usual = RecipeSolver.Solve(request with { Stocks = [new StockFluid(Shortage.Usual(use.Fluid))], Salts = [] });
            if (usual.Value is { } fromUsual) recipes.Add(new(use, fromUsual));
            if (!stock.IsEmpty) findings.AddRange(solved.Findings.Where(f => f.Severity == Severity.Error).Select(f => f with { Severity = usual.Value is null ? Severity.Error : Severity.Warning }));
            if (usual.Value is null) findings.AddRange(usual.Findings.Where(f => f.Severity == Severity.Error));
        }

        return (recipes.DrainToImmutable(), [.. findings.DistinctBy(f => (f.Id, f.Message))]);
    }
}
