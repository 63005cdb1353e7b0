using FsCheck;
using FsCheck.Fluent;
using Protocolist.Fluids;
using Protocolist.Fluids.Mixing;
using UnitsNet;

namespace Protocolist.Properties.Fluids;

/// <summary>What goes in comes out: mass, alcohol, formaldehyde and salts, whatever the stocks.</summary>
public class MixingProperties
{
    private static readonly Gen<double?> OnHand = Gen.OneOf(Gen.Constant((double?)null), Gen.Choose(1, 4000).Select(ml => (double?)(ml / 1000.0)));

    private static readonly Gen<MixRequest> Alcohols =
        from ethanol in Gen.Elements(true, false)
        from target in Gen.Choose(100, 900)
        from litres in Gen.Choose(1, 5000)
        from celsius in Gen.Choose(0, 40)
        from strengths in Gen.Choose(50, 1000).ArrayOf()
        from amounts in OnHand.ArrayOf(strengths.Length)
        from costs in Gen.Choose(0, 40).ArrayOf(strengths.Length)
        let kind = (Func<double, Fluid>)(p => ethanol ? Fluid.Ethanol(p) : Fluid.Isopropanol(p))
        select new MixRequest(
            kind(target / 10.0),
            Volume.FromLiters(litres / 1000.0),
            [.. strengths.Take(6).Select((s, i) => new StockFluid(kind(s / 10.0)) { OnHand = amounts[i] is { } l ? Volume.FromLiters(l) : null, CostPerLitre = costs[i] })])
        {
            At = Temperature.FromDegreesCelsius(celsius),
        };

    private static readonly Gen<MixRequest> Fixatives =
        from buffering in Gen.Elements(Enum.GetValues<Buffering>())
        from target in Gen.Choose(20, 200)
        from litres in Gen.Choose(1, 50_000)
        from celsius in Gen.Choose(5, 35)
        from stock in Gen.Choose(300, 400)
        from methanol in Gen.Choose(0, 15)
        from spent in Gen.Choose(1, 60)
        from onHand in OnHand
        select new MixRequest(
            Fluid.Formalin(target / 10.0, buffering),
            Volume.FromLiters(litres / 1000.0),
            [
                new(Fluid.FormaldehydeWeightPerVolume(spent / 10.0, buffering)) { OnHand = onHand is { } l ? Volume.FromLiters(l) : Volume.Zero },
                new(Fluid.FormaldehydeStock(stock / 10.0, methanolMassPercent: methanol)),
            ])
        {
            At = Temperature.FromDegreesCelsius(celsius),
        };

    /// <summary>Guards the properties below against passing because nothing could be mixed.</summary>
    [Fact]
    public void Many_of_the_generated_requests_have_a_recipe()
    {
        Assert.InRange(Alcohols.Some(200, 30).Count(r => RecipeSolver.Solve(r).Value is not null), 50, 195);
        Assert.InRange(Fixatives.Some(200, 30).Count(r => RecipeSolver.Solve(r).Value is { Parts.Length: > 1 }), 150, 200);
    }

    [Property(MaxTest = 400)]
    public Property Alcohol_and_mass_are_conserved() => Prop.ForAll(Alcohols.ToArbitrary(), request =>
    {
        var result = RecipeSolver.Solve(request);
        if (result.Value is not { } recipe) return result.HasErrors.Label("no recipe and no error");
        var mass = request.Volume.CubicMeters * request.Target.DensityAt(request.At.DegreesCelsius);
        var wanted = mass * Share(request.Target);
        var got = recipe.Parts.Sum(p => p.Mass.Kilograms * Share(p.Fluid!));
        // A single bottle within a thousandth of a percent of the target is taken as it is.
        var near = recipe.Parts.Length == 1 ? 1e-4 : 1e-8;
        return Near(recipe.Mass.Kilograms, mass, 1e-8).Label("mass")
            .And(Near(got, wanted, near).Label("alcohol"))
            .And(Kept(request, recipe).Label("amounts on hand"))
            .And(recipe.Parts.All(p => p.Mass.Kilograms > 0).Label("positive"));
    });

    [Property(MaxTest = 400)]
    public Property Formaldehyde_salts_and_volume_are_conserved() => Prop.ForAll(Fixatives.ToArbitrary(), request =>
    {
        var result = RecipeSolver.Solve(request);
        if (result.Value is not { } recipe) return result.HasErrors.Label("no recipe and no error");
        var target = request.Target;
        var celsius = request.At.DegreesCelsius;
        var litres = request.Volume.Liters;
        var perLitre = target.DensityAt(celsius) / 1000;
        var formaldehyde = recipe.Parts.Sum(p => p.Fluid is null ? 0 : p.Mass.Kilograms * p.Fluid.Composition[Solute.Formaldehyde]);
        var salts = recipe.Parts.Sum(p => p.Fluid is not null
            ? p.Mass.Kilograms * p.Fluid.Composition[Solute.BufferSalts]
            : target.Buffering is Buffering.MarbleChips ? 0 : p.Mass.Kilograms * p.Salt!.AnhydrousMolarMass / p.Salt.MolarMass);
        var wholeSalts = target.Composition[Solute.BufferSalts] * perLitre * litres;
        return Near(formaldehyde, litres * perLitre * target.Composition[Solute.Formaldehyde], 1e-7).Label("formaldehyde")
            .And((recipe.Parts.Any(p => p.Salt is not null) ? Near(salts, wholeSalts, 1e-6) : salts >= wholeSalts * (1 - 2e-6)).Label($"salts {salts} of {wholeSalts}"))
            .And(Near(recipe.Mass.Kilograms / (litres / 1000), target.DensityAt(celsius), 0.02).Label("density near the named fluid's"))
            .And(Kept(request, recipe).Label("amounts on hand"));
    });

    [Property(MaxTest = 200)]
    public Property More_of_everything_never_makes_a_recipe_impossible() => Prop.ForAll(Alcohols.ToArbitrary(), request =>
    {
        if (RecipeSolver.Solve(request).Value is not { } recipe) return true;
        var more = request with { Stocks = [.. request.Stocks.Select(s => s with { OnHand = s.OnHand * 2 })] };
        return RecipeSolver.Solve(more).Value is { } again && again.Parts.Length <= recipe.Parts.Length;
    });

    /// <summary>A recipe is linear in the volume: what is solved for a litre is what is solved for any volume, to the last digits.</summary>
    [Property(MaxTest = 400)]
    public Property A_recipe_for_a_litre_serves_for_every_volume() => Prop.ForAll(Gen.OneOf(Alcohols, Fixatives).ToArbitrary(), request =>
    {
        var unlimited = request with { Stocks = [.. request.Stocks.Select(s => s with { OnHand = null })] };
        var (litre, whole) = (RecipeSolver.PerLitre(request), RecipeSolver.Solve(unlimited));
        if (whole.Value is not { } recipe) return (litre.Value is null && litre.HasErrors).Label("no recipe for a litre either");
        var scaled = litre.Value!.InVolume(request.Volume);
        var litres = request.Volume.Liters;
        return (scaled.Volume.CubicMeters == request.Volume.CubicMeters && scaled.Target == recipe.Target && scaled.At.Kelvins == recipe.At.Kelvins).Label("what it is")
            .And(scaled.Parts.Select(p => p.Name).SequenceEqual(recipe.Parts.Select(p => p.Name)).Label("the same parts"))
            .And(scaled.Parts.Zip(recipe.Parts).All(p => Near(p.First.Mass.Kilograms, p.Second.Mass.Kilograms, 1e-12)).Label("masses"))
            .And(scaled.Parts.Zip(recipe.Parts).All(p => Near(p.First.Volume?.Liters ?? 0, p.Second.Volume?.Liters ?? 0, 1e-12)).Label("volumes"))
            .And((Math.Abs(scaled.Contraction.Liters - recipe.Contraction.Liters) <= 1e-12 * litres).Label("contraction"))
            .And(litre.Findings.Select(f => f.Id).SequenceEqual(whole.Findings.Select(f => f.Id)).Label("findings"));
    });

    /// <summary>Where what a litre's recipe takes is on hand, a solve with the amounts on hand comes to the same: only what is short needs one.</summary>
    [Property(MaxTest = 400)]
    public Property Stock_that_suffices_changes_no_recipe() => Prop.ForAll(Gen.OneOf(Alcohols, Fixatives).ToArbitrary(), request =>
    {
        if (RecipeSolver.PerLitre(request).Value?.InVolume(request.Volume) is not { } recipe || !recipe.IsCoveredBy(request.Stocks)) return true;
        var solved = RecipeSolver.Solve(request).Value!;
        return solved.Parts.Zip(recipe.Parts).All(p => p.First.Name == p.Second.Name && Near(p.First.Mass.Kilograms, p.Second.Mass.Kilograms, 1e-9));
    });

    private static double Share(Fluid fluid) => fluid.Composition[Solute.Ethanol] + fluid.Composition[Solute.Isopropanol];

    private static bool Kept(MixRequest request, Recipe recipe) => recipe.Parts.Where(p => p.Fluid is { IsWater: false }).GroupBy(p => p.Name).All(group =>
    {
        var onHand = request.Stocks.Where(s => s.Name == group.Key).ToArray();
        return onHand.Any(s => s.OnHand is null) || group.Sum(p => p.Volume!.Value.Liters) <= onHand.Sum(s => s.OnHand!.Value.Liters) * (1 + 1e-6) + 1e-9;
    });

    private static bool Near(double a, double b, double relative) => Math.Abs(a - b) <= relative * Math.Max(Math.Abs(a), Math.Abs(b));
}
