using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Fluids.Buffers;
using UnitsNet;

namespace Protocolist.Fluids.Mixing;

/// <summary>Makes a recipe: any set of stocks to one fluid of a wanted volume, at a temperature, by volume and by mass.</summary>
/// <remarks>The fewest liquids are handled, then the least is paid. Mass, alcohol, formaldehyde and salts are conserved; volumes follow from densities, so contraction is in them.</remarks>
public static class RecipeSolver
{
    private const int MostRounds = 40;

    /// <summary>Solves a request.</summary>
    /// <param name="request">What is wanted from what.</param>
    /// <returns>
    /// The recipe, and findings. Without a recipe there is an error that says what is lacking: <c>target-too-strong</c>, <c>stock-short</c>,
    /// <c>stock-missing</c>, <c>water-short</c>; or <c>volume-out-of-range</c>, <c>temperature-out-of-range</c>, <c>salt-not-on-shelf</c>. Stocks that must not go in are named, where a person named them, by
    /// <c>mixed-alcohols</c>, <c>water-unfit-for-alcohol</c>, <c>mixed-buffering</c>, <c>stock-cloudy</c>; <c>stock-expired</c> warns of one that is used.
    /// </returns>
    public static Checked<Recipe> Solve(MixRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        var (target, celsius) = (request.Target, request.At.DegreesCelsius);
        if (!(request.Volume.CubicMeters is > 0 and < 1e6))
            return Fault("volume-out-of-range", $"{MixText.Volume(request.Volume)} cannot be mixed", "give how much is wanted, such as '1 L'");
        if (!(target.Covers(celsius) && celsius is >= 0 and <= 40))
            return Fault("temperature-out-of-range", $"{MixText.Number(celsius, 1)} degC is outside the 0 to 40 degC of the density formulas", "mix at room temperature and give that");
        if (target.IsWater) return OfWater(request);

        var shelf = Shelf.For(request);
        var blend = Blend(request, shelf, out var salts);
        var unfit = request.StocksAreNamed ? shelf.Unfit : [.. shelf.Unfit.Where(f => f.Id is Shelf.CloudyId)];
        if (blend is null) return new(null, [.. unfit.Where(f => f.Severity is Severity.Warning).Select(f => f with { Severity = Severity.Error }), Shortage.Of(request, shelf)]);
        var recipe = Written(request, shelf, blend, salts);
        var saltFinding = salts > 0 ? MissingSalt(request) : null;
        ImmutableArray<Finding> findings = [.. unfit, .. Used(shelf, blend), .. saltFinding is null ? [] : (Finding[])[saltFinding]];
        return new(saltFinding is null ? recipe : null, findings);
    }

    /// <summary>Mass of the whole and share of fresh salts hang on what is taken, and that on them: a few rounds settle it to the last digits.</summary>
    private static double[]? Blend(MixRequest request, Shelf shelf, out double freshSalts)
    {
        var (target, celsius, litres) = (request.Target, request.At.DegreesCelsius, request.Volume.Liters);
        var composition = target.Composition;
        freshSalts = 0;
        if (shelf.Ready(request) is { } ready) return ready;

        var kilogramsPerLitre = target.DensityAt(celsius) / 1000;
        var activePerLitre = Shelf.Active(target, composition) * kilogramsPerLitre;
        var saltsPerLitre = composition.BufferSalts * kilogramsPerLitre;
        var mass = litres * kilogramsPerLitre;
        freshSalts = BufferRecipe.PerLitre(target.Buffering, 1).IsEmpty ? 0 : 1;
        double[]? blend = null;
        for (var round = 0; round < MostRounds; round++)
        {
            var weighed = SaltParts.KilogramsDissolved(request, freshSalts);
            blend = Filled(shelf, mass - weighed, litres * activePerLitre);
            if (blend is null) return null;
            var liquids = Composition.Mix(shelf.Compositions, blend);
            if (saltsPerLitre > 0) freshSalts = Math.Max(0, 1 - liquids.BufferSalts * (mass - weighed) / (saltsPerLitre * litres));
            var anhydrous = SaltParts.KilogramsAnhydrous(request, freshSalts);
            var whole = liquids.WithSalts(mass - weighed, anhydrous, weighed - anhydrous);
            var next = litres * whole.Density(celsius) / 1000;
            var change = Math.Abs(next - mass);
            mass = next;
            if (change < 1e-13 * mass && round > 0) break;
        }

        return blend;
    }

    /// <summary>What must be used up, and the solver's choice for the rest.</summary>
    private static double[]? Filled(Shelf shelf, double mass, double active)
    {
        double leftMass = mass, leftActive = active;
        for (var i = 0; i < shelf.UsedUp.Length; i++)
        {
            leftMass -= shelf.UsedUp[i];
            leftActive -= shelf.UsedUp[i] * shelf.Blendables[i].Share;
        }

        if (leftMass <= 0 || BlendSolver.Solve(shelf.Free, leftMass, leftActive) is not { } blend) return null;
        for (var i = 0; i < blend.Length; i++) blend[i] += shelf.UsedUp[i];
        return blend;
    }

    private static Recipe Written(MixRequest request, Shelf shelf, double[] blend, double freshSalts)
    {
        var celsius = request.At.DegreesCelsius;
        var parts = ImmutableArray.CreateBuilder<RecipePart>();
        foreach (var diluent in (bool[])[false, true])
        {
            for (var i = 0; i < blend.Length; i++)
            {
                var stock = shelf.Stocks[i];
                if (blend[i] <= 0 || stock.Fluid.IsWater != diluent) continue;
                var volume = Volume.FromCubicMeters(blend[i] / stock.Fluid.DensityAt(celsius));
                parts.Add(new(stock.Name, volume, Mass.FromKilograms(blend[i])) { Fluid = stock.Fluid, Stock = stock });
            }
        }

        var contraction = parts.Sum(p => p.Volume!.Value.CubicMeters) - request.Volume.CubicMeters;
        parts.AddRange(SaltParts.Of(request, freshSalts));
        return new(request.Target, request.Volume, request.At, parts.ToImmutable(), Volume.FromCubicMeters(contraction));
    }

    private static Checked<Recipe> OfWater(MixRequest request)
    {
        var target = request.Target;
        var mass = Mass.FromKilograms(request.Volume.CubicMeters * target.DensityAt(request.At.DegreesCelsius));
        return new(new(target, request.Volume, request.At, [new(target.Name, request.Volume, mass) { Fluid = target }], Volume.Zero), []);
    }

    private static IEnumerable<Finding> Used(Shelf shelf, double[] blend)
    {
        for (var i = 0; i < blend.Length; i++)
        {
            if (blend[i] <= 0 || shelf.Stocks[i].Condition is not StockCondition.Expired) continue;
            yield return Finding.Warning("stock-expired", $"{shelf.Stocks[i].Name} is past its date", shelf.Stocks[i].Fluid.IsAlcohol ? "measure its density and enter the strength it has" : "check that it is clear and its pH, or take a fresh bottle");
        }
    }

    private static Finding? MissingSalt(MixRequest request)
    {
        foreach (var (salt, _) in BufferRecipe.PerLitre(request.Target.Buffering, request.Target.FormaldehydeGramsPerLitre ?? 0))
        {
            if (SaltParts.OnShelf(salt, request.Salts) is null)
                return Finding.Error("salt-not-on-shelf", $"{request.Target.Name} needs {salt}, and no form of it is among the salts given", Salts.All.Any(s => s.Anhydrous == salt.Anhydrous && s != salt) ? $"get {salt.Name} or another hydrate of {salt.Anhydrous}" : $"get {salt.Name}");
        }

        return null;
    }

    private static Checked<Recipe> Fault(string id, string message, string remedy) => new(null, [Finding.Error(id, message, remedy)]);
}
