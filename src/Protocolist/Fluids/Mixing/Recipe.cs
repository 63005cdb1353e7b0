using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Fluids.Buffers;
using UnitsNet;

namespace Protocolist.Fluids.Mixing;

/// <summary>One thing to measure out: a liquid by volume or mass, a salt by mass.</summary>
/// <param name="Name">What stands on the bottle.</param>
/// <param name="Volume">How much, measured at the recipe's temperature; null for a salt.</param>
/// <param name="Mass">How much, weighed.</param>
internal sealed record RecipePart(string Name, Volume? Volume, Mass Mass)
{
    private static readonly Phrase VolumeAndMass = new("recipe.volume-and-mass", "{volume:mix} ({mass:mix})");
    private static readonly Phrase MassAlone = new("recipe.mass", "{mass:mix}");
    private static readonly Phrase OfName = new("recipe.part", "{amount} of {name}");
    private static readonly Phrase VolumeAlone = new("recipe.volume", "{volume:mix}");

    /// <summary>The liquid; null for a salt.</summary>
    public Fluid? Fluid { get; init; }

    /// <summary>The salt; null for a liquid.</summary>
    public Salt? Salt { get; init; }

    /// <summary>The stock that it is taken from, as it was given; null for a salt and for water that nobody listed.</summary>
    internal StockFluid? Stock { get; init; }

    /// <summary>Whether this is the water that a mixture is made up with.</summary>
    public bool IsDiluent => Fluid is { IsWater: true };

    /// <summary>The amount as a person measures it, such as <c>729 mL (589 g)</c>.</summary>
    public Message Amount => Volume is { } volume ? VolumeAndMass.With(("volume", volume), ("mass", Mass)) : MassAlone.With(("mass", Mass));

    /// <summary>Amount and name, such as <c>729 mL (589 g) of ethanol 96 %vol</c>.</summary>
    internal Message Whole => OfName.With(("amount", Amount), ("name", Name));

    /// <summary>The same by one measure: a liquid by volume, a salt by mass.</summary>
    internal Message Measured => Volume is { } volume ? OfName.With(("amount", VolumeAlone.With(("volume", volume))), ("name", Name)) : Whole;
}

/// <summary>What to measure out to make one fluid from stock; by volume and by mass, contraction included.</summary>
/// <param name="Target">The fluid that results.</param>
/// <param name="Volume">How much of it results, at <paramref name="At"/>.</param>
/// <param name="At">The temperature at which the volumes are meant.</param>
/// <param name="Parts">What to measure: stocks, then water, then salts.</param>
/// <param name="Contraction">By how much the volume falls short of the sum of the volumes; below 0 where it exceeds it.</param>
internal sealed record Recipe(Fluid Target, Volume Volume, Temperature At, ImmutableArray<RecipePart> Parts, Volume Contraction)
{
    private static readonly Phrase VolumeAt = new("recipe.result", "{volume:mix} at {at}");
    private static readonly Phrase Take = new("recipe.take", "take {volume:mix} of {water} at {at}");
    private static readonly Phrase Measure = new("recipe.measure", "measure {stocks: and }{mix} at {at}{dissolve}{lay}");
    private static readonly Phrase AndMix = new("recipe.and-mix", " and mix");
    private static readonly Phrase FillUp = new("recipe.fill-up", "measure {stocks: and } and make up to {volume:mix} with {water} at {at}{dissolve}{lay}");
    private static readonly Phrase DissolveAndFillUp = new(
        "recipe.dissolve-and-fill-up",
        "dissolve {salts: and } in most of the {water}, add {stocks: and }, make up to {volume:mix} with {water} at {at}{dissolve}{lay}");

    private static readonly Phrase DissolveAndAdd = new(
        "recipe.dissolve-and-add", "dissolve {salts: and } in {amount} of {water} and add {stocks: and }{dissolve}{lay}");

    private static readonly Phrase AddTo = new("recipe.add-to", "to {stocks: and } add {amount} of {water}{dissolve}{lay}");
    private static readonly Phrase ThenDissolve = new("recipe.then-dissolve", ", then dissolve {salts: and } in it");
    private static readonly Phrase ThenLay = new("recipe.then-lay", ", then lay {chips} into it");

    /// <summary>The mass of the whole.</summary>
    public Mass Mass => Mass.FromKilograms(Parts.Where(p => p.Salt != Salts.MarbleChips).Sum(p => p.Mass.Kilograms));

    /// <summary>The volume and temperature as a person reads them, such as <c>1 L at 20 degC</c>.</summary>
    public Message Result => VolumeAt.With(("volume", Volume), ("at", At));

    /// <summary>First way: measure the stocks and make up to the volume.</summary>
    public Message MakeUp
    {
        get
        {
            var water = Diluent;
            var stocks = Argument.Messages("stocks", Stocks.Select(p => p.Measured));
            if (water is null)
                return Measure.With(stocks, ("mix", stocks.List.Length > 1 ? AndMix : (Message)default), ("at", At), LastDissolved, LastLaid);
            if (stocks.List.IsEmpty) return Take.With(("volume", Volume), ("water", water.Name), ("at", At));
            var salts = Soluble("salts");
            return salts.List.IsEmpty
                ? FillUp.With(stocks, ("volume", Volume), ("water", water.Name), ("at", At), LastDissolved, LastLaid)
                : DissolveAndFillUp.With(salts, stocks, ("volume", Volume), ("water", water.Name), ("at", At), LastDissolved, LastLaid);
        }
    }

    /// <summary>
    /// Second way: add this much water, not filling up to a mark. The amount is larger than the difference of the volumes where the mixture contracts.
    /// Says nothing where there is no second way, because no water is added or nothing else.
    /// </summary>
    public Message AddWater
    {
        get
        {
            if (Diluent is not { } water || !Stocks.Any()) return default;
            var (stocks, salts) = (Argument.Messages("stocks", Stocks.Select(p => p.Whole)), Soluble("salts"));
            return salts.List.IsEmpty
                ? AddTo.With(stocks, ("amount", water.Amount), ("water", water.Name), LastDissolved, LastLaid)
                : DissolveAndAdd.With(salts, ("amount", water.Amount), ("water", water.Name), stocks, LastDissolved, LastLaid);
        }
    }

    /// <summary>The same mixture in another volume: a recipe is linear in it, so that one that is solved for a litre serves for all.</summary>
    /// <param name="volume">How much is wanted, above zero.</param>
    /// <returns>The recipe, every amount in proportion.</returns>
    public Recipe InVolume(Volume volume)
    {
        if (!(volume.CubicMeters > 0)) throw new ArgumentOutOfRangeException(nameof(volume), volume, "A mixture has a volume.");
        var factor = volume.CubicMeters / Volume.CubicMeters;
        var parts = ImmutableArray.CreateBuilder<RecipePart>(Parts.Length);
        foreach (var part in Parts)
        {
            Volume? measured = part.Volume is { } v ? Volume.FromCubicMeters(v.CubicMeters * factor) : null;
            parts.Add(part with { Volume = measured, Mass = Mass.FromKilograms(part.Mass.Kilograms * factor) });
        }

        return this with { Volume = volume, Parts = parts.MoveToImmutable(), Contraction = Volume.FromCubicMeters(Contraction.CubicMeters * factor) };
    }

    /// <summary>Whether the stocks hold what it takes; if not, only <see cref="RecipeSolver.Solve"/> tells how it is made from them all the same.</summary>
    /// <param name="stocks">What is on hand; a liquid that is not among them is had without limit.</param>
    /// <returns>Whether each of its liquids is there in one bottle.</returns>
    public bool IsCoveredBy(ImmutableArray<StockFluid> stocks)
    {
        foreach (var part in Parts)
        {
            var (isListed, isThere) = (false, false);
            foreach (var stock in stocks)
            {
                if (stock.Fluid != part.Fluid || stock.Name != part.Name) continue;
                isListed = true;
                isThere |= stock.OnHand is null || stock.OnHand.Value >= part.Volume;
            }

            if (isListed && !isThere) return false;
        }

        return true;
    }

    /// <summary>Splits a large mixture into equal batches that a vessel holds.</summary>
    /// <param name="vessel">What the vessel holds.</param>
    /// <returns>How many batches, and the recipe of each.</returns>
    public (int Count, Recipe Each) InBatches(Volume vessel)
    {
        if (!(vessel.CubicMeters > 0)) throw new ArgumentOutOfRangeException(nameof(vessel), vessel, "A vessel holds more than nothing.");
        var count = (int)Math.Max(1, Math.Ceiling(Volume.CubicMeters / vessel.CubicMeters - 1e-9));
        return (count, InVolume(Volume / count));
    }

    private RecipePart? Diluent => Parts.FirstOrDefault(p => p.IsDiluent);

    private IEnumerable<RecipePart> Stocks => Parts.Where(p => p.Volume is not null && p != Diluent);

    /// <summary>What is put in at last: salts where there is no water to dissolve them in first.</summary>
    private Argument LastDissolved => ("dissolve", Diluent is null && Soluble("salts") is { List.IsEmpty: false } salts ? ThenDissolve.With(salts) : default);

    /// <summary>And chips that lie on the bottom.</summary>
    private Argument LastLaid => ("lay", Parts.FirstOrDefault(p => p.Salt == Salts.MarbleChips) is { } chips ? ThenLay.With(("chips", chips.Whole)) : default);

    /// <summary>What dissolves: in water before the stock, where there is water.</summary>
    private Argument Soluble(string name) => Argument.Messages(name, Parts.Where(p => p.Salt is not null && p.Salt != Salts.MarbleChips).Select(p => p.Whole));
}
