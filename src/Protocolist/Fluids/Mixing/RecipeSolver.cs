using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Fluids.Buffers;
using UnitsNet;

namespace Protocolist.Fluids.Mixing;

/// <summary>Makes a recipe: any set of stocks to one fluid of a wanted volume, at a temperature, by volume and by mass.</summary>
/// <remarks>
/// The fewest liquids are handled, then the least is paid. Mass, alcohol, formaldehyde and salts are conserved; volumes follow from densities,
/// so contraction is in them.
/// </remarks>
internal static class RecipeSolver
{
    private const int MostRounds = 39;

    private static readonly Phrase CannotBeMixed = new("volume-out-of-range", "{volume:mix} cannot be mixed");
    private static readonly Phrase GiveVolume = new("volume-out-of-range.remedy", "give how much is wanted, such as '1 L'");
    private static readonly Phrase OutsideFormulas = new(
        "temperature-out-of-range", "{at:0.#} degC is outside the {lowest:0} to {highest:0} degC of the density formulas");

    private static readonly Phrase MixAtRoom = new("temperature-out-of-range.remedy", "mix at room temperature and give that");
    private static readonly Phrase PastItsDate = new("stock-expired.recipe", "{stock} is past its date");
    private static readonly Phrase MeasureIt = new("stock-expired.recipe.remedy", "measure its density and enter the strength it has");
    private static readonly Phrase CheckIt = new("stock-expired.recipe.remedy-formaldehyde", "check that it is clear and its pH, or take a fresh bottle");
    private static readonly Phrase NoSalt = new("salt-not-on-shelf", "{fluid} needs {salt}, and no form of it is among the salts given");
    private static readonly Phrase GetIt = new("salt-not-on-shelf.remedy", "get {salt}");
    private static readonly Phrase GetItOrAnother = new("salt-not-on-shelf.remedy-hydrate", "get {salt} or another hydrate of {anhydrous}");

    /// <summary>Solves a request.</summary>
    /// <param name="request">What is wanted from what.</param>
    /// <returns>
    /// The recipe, and findings. Without a recipe there is an error that says what is missing: <c>target-too-strong</c>, <c>stock-short</c>,
    /// <c>stock-missing</c>, <c>water-short</c>; or <c>volume-out-of-range</c>, <c>temperature-out-of-range</c>, <c>salt-not-on-shelf</c>. Stocks that
    /// must not go in are named, where a person named them, by <c>mixed-alcohols</c>, <c>water-unfit-for-alcohol</c>, <c>mixed-fixative-and-alcohol</c>,
    /// <c>stock-foreign</c>, <c>mixed-buffering</c>, <c>stock-cloudy</c>; <c>stock-expired</c> warns of one that is used.
    /// </returns>
    public static Checked<Recipe> Solve(MixRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        var (target, celsius) = (request.Target, request.At.DegreesCelsius);
        if (!(request.Volume.CubicMeters is > 0 and < 1e6))
            return Fault("volume-out-of-range", CannotBeMixed.With(("volume", request.Volume)), GiveVolume);
        double lowest = Math.Max(0, target.Substance.LowestCelsius), highest = target.Substance.HighestCelsius;
        if (!(celsius >= lowest && celsius <= highest))
            return Fault("temperature-out-of-range", OutsideFormulas.With(("at", celsius), ("lowest", lowest), ("highest", highest)), MixAtRoom);
        if (target.IsWater) return OfWater(request);

        var stocks = FitStocks.For(request);
        var salts = new SaltParts(request);
        var blend = Blend(request, stocks, salts);
        ImmutableArray<Finding> unfit = request.StocksAreNamed || stocks.Unfit.IsEmpty ? stocks.Unfit : [.. stocks.Unfit.Where(FitStocks.IsAboutCloudy)];
        if (blend is not { } blended || Shortage.OfAdded(request, stocks, blended.AddedLitres) is not null)
        {
            var errors = unfit.Where(f => f.Severity is Severity.Warning).Select(f => f with { Severity = Severity.Error });
            return new(null, [.. errors, Shortage.Of(request, stocks, blend?.AddedLitres ?? 0)]);
        }

        var findings = ImmutableArray.CreateBuilder<Finding>();
        findings.AddRange(unfit);
        Expired(stocks, blended.Masses, findings);
        var missing = blended.FreshLitres > 0 ? salts.Missing : null;
        if (missing is not null) findings.Add(NotOnShelf(target, missing));
        return new(missing is null ? Written(request, stocks, blended, salts) : null, findings.DrainToImmutable());
    }

    /// <summary>
    /// The recipe for a litre, as if there were as much of every stock as is wanted: <see cref="Recipe.InVolume"/> makes any other volume of it, to the
    /// last digits as <see cref="Solve"/> would. Where stocks are limited see whether what it takes is there; only if not, solve for the volume.
    /// </summary>
    /// <param name="request">What is wanted from what; its volume and the amounts on hand do not count.</param>
    /// <returns>The recipe for 1 L, and findings as of <see cref="Solve"/>.</returns>
    public static Checked<Recipe> PerLitre(MixRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        var stocks = request.Stocks.IsDefault ? [] : request.Stocks;
        foreach (var stock in stocks)
        {
            if (stock.OnHand is null) continue;
            stocks = [.. stocks.Select(s => s with { OnHand = null, UseUp = false })];
            break;
        }

        return Solve(request with { Volume = Volume.FromLiters(1), Stocks = stocks });
    }

    /// <summary>Mass of the whole and share of fresh salts hang on what is taken, and that on them: a few rounds settle it to the last digits.</summary>
    private static Blended? Blend(MixRequest request, FitStocks stocks, SaltParts salts)
    {
        var (target, celsius, litres) = (request.Target, request.At.DegreesCelsius, request.Volume.Liters);
        var kilogramsPerLitre = target.DensityAt(celsius) / 1000;
        var mass = litres * kilogramsPerLitre;
        if (stocks.Ready(target, mass) is { } ready) return new(ready, 0, 0);
        if (stocks.Missing is not null) return null;

        // Grams per litre are at 20 °C: the volume that it would have there.
        var litresAt20 = salts.AreCalledFor || !stocks.Added.IsEmpty ? litres * kilogramsPerLitre * 1000 / target.DensityAt(20.0) : 0;
        var activeMass = litres * (target.Composition[target.Substance.Active!] * kilogramsPerLitre);
        var saltsPerLitre = target.Composition[Solute.BufferSalts] * kilogramsPerLitre;
        var freshLitres = salts.AreCalledFor ? litresAt20 : 0;
        var (compositions, masses, added) = WithAdded(stocks, litresAt20);
        for (var i = stocks.Stocks.Length; i < masses.Length; i++) activeMass -= masses[i] * compositions[i][target.Substance.Active!];
        for (var round = 0; ; round++)
        {
            var weighed = salts.Dissolved * freshLitres;
            var blend = Filled(stocks, mass - weighed - added, activeMass);
            if (blend is null) return null;
            blend.CopyTo(masses.AsSpan());
            var liquids = Composition.Mix(compositions, masses);
            if (saltsPerLitre > 0) freshLitres = litresAt20 * Math.Max(0, 1 - liquids[Solute.BufferSalts] * (mass - weighed) / (saltsPerLitre * litres));
            var anhydrous = salts.Anhydrous * freshLitres;
            var whole = liquids.WithSalts(mass - weighed, anhydrous, weighed - anhydrous);
            var next = litres * target.Substance.Density(whole, celsius) / 1000;
            var change = Math.Abs(next - mass);
            mass = next;
            if ((change < 1e-13 * mass && round > 0) || round == MostRounds) return new(blend, freshLitres, stocks.Added.IsEmpty ? 0 : litresAt20);
        }
    }

    /// <summary>All that is poured together: room for what is taken of the stocks, and what is added to it in fixed amounts.</summary>
    private static (Composition[] Compositions, double[] Masses, double Added) WithAdded(FitStocks stocks, double litresAt20)
    {
        var masses = new double[stocks.Stocks.Length + stocks.Added.Length];
        if (stocks.Added.IsEmpty) return (stocks.Compositions, masses, 0);
        var (compositions, added, at) = (new Composition[masses.Length], 0.0, stocks.Stocks.Length);
        stocks.Compositions.CopyTo(compositions.AsSpan());
        foreach (var (stock, perLitre) in stocks.Added)
        {
            (compositions[at], masses[at]) = (stock.Fluid.Composition, perLitre * litresAt20);
            added += masses[at++];
        }

        return (compositions, masses, added);
    }

    /// <summary>What must be used up, and the solver's choice for the rest.</summary>
    private static double[]? Filled(FitStocks stocks, double mass, double active)
    {
        double leftMass = mass, leftActive = active;
        for (var i = 0; i < stocks.UsedUp.Length; i++)
        {
            leftMass -= stocks.UsedUp[i];
            leftActive -= stocks.UsedUp[i] * stocks.Blendables[i].Share;
        }

        if (leftMass <= 0 || BlendSolver.Solve(stocks.Free, leftMass, leftActive) is not { } blend) return null;
        for (var i = 0; i < blend.Length; i++) blend[i] += stocks.UsedUp[i];
        return blend;
    }

    private static Recipe Written(MixRequest request, FitStocks stocks, Blended blended, SaltParts salts)
    {
        var parts = ImmutableArray.CreateBuilder<RecipePart>();
        var (celsius, poured) = (request.At.DegreesCelsius, 0.0);
        var masses = blended.Masses;
        for (var i = 0; i < masses.Length; i++) Pour(stocks.Stocks[i], masses[i], stocks.DensityOf(i), isWater: false);
        foreach (var (stock, perLitre) in stocks.Added) Pour(stock, perLitre * blended.AddedLitres, stock.Fluid.DensityAt(celsius), isWater: false);
        for (var i = 0; i < masses.Length; i++) Pour(stocks.Stocks[i], masses[i], stocks.DensityOf(i), isWater: true);
        if (blended.FreshLitres > 0) parts.AddRange(salts.For(blended.FreshLitres, request.Volume.Liters));
        return new(request.Target, request.Volume, request.At, parts.DrainToImmutable(), Volume.FromCubicMeters(poured - request.Volume.CubicMeters));

        void Pour(StockFluid stock, double kilograms, double density, bool isWater)
        {
            if (kilograms <= 0 || stock.Fluid.IsWater != isWater) return;
            poured += kilograms / density;
            parts.Add(new(stock.Name, Volume.FromCubicMeters(kilograms / density), Mass.FromKilograms(kilograms)) { Fluid = stock.Fluid, Stock = stock });
        }
    }

    private static Checked<Recipe> OfWater(MixRequest request)
    {
        var target = request.Target;
        var mass = Mass.FromKilograms(request.Volume.CubicMeters * target.DensityAt(request.At.DegreesCelsius));
        return new(new(target, request.Volume, request.At, [new(target.Name, request.Volume, mass) { Fluid = target }], Volume.Zero), []);
    }

    private static void Expired(FitStocks stocks, double[] blend, ImmutableArray<Finding>.Builder findings)
    {
        for (var i = 0; i < blend.Length; i++)
        {
            var stock = stocks.Stocks[i];
            if (blend[i] > 0 && stock.Condition is StockCondition.Expired)
                findings.Add(Finding.Warning("stock-expired", PastItsDate.With(("stock", stock.Name)), stock.Fluid.IsAlcohol ? MeasureIt : CheckIt));
        }
    }

    private static Finding NotOnShelf(Fluid target, Salt salt) => Finding.Error(
        "salt-not-on-shelf",
        NoSalt.With(("fluid", target.Name), ("salt", salt.ToString())),
        Salts.All.Any(s => s.Anhydrous == salt.Anhydrous && s != salt)
            ? GetItOrAnother.With(("salt", salt.Name), ("anhydrous", salt.Anhydrous))
            : GetIt.With(("salt", salt.Name)));

    /// <summary>What is taken.</summary>
    /// <param name="Masses">Of each stock, kg.</param>
    /// <param name="FreshLitres">Litres at 20 °C that get salts of their own.</param>
    /// <param name="AddedLitres">Litres at 20 °C that get what goes in in fixed amounts.</param>
    private readonly record struct Blended(double[] Masses, double FreshLitres, double AddedLitres);

    private static Checked<Recipe> Fault(string id, Message message, Message remedy) => new(null, [Finding.Error(id, message, remedy)]);
}
