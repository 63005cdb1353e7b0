using System.Collections.Immutable;
using Protocolist.Fluids.Buffers;
using Protocolist.Quantities;
using UnitsNet;

namespace Protocolist.Fluids.Mixing;

/// <summary>One thing to measure out: a liquid by volume or mass, a salt by mass.</summary>
/// <param name="Name">What stands on the bottle.</param>
/// <param name="Volume">How much, measured at the recipe's temperature; null for a salt.</param>
/// <param name="Mass">How much, weighed.</param>
public sealed record RecipePart(string Name, Volume? Volume, Mass Mass)
{
    /// <summary>The liquid; null for a salt.</summary>
    public Fluid? Fluid { get; init; }

    /// <summary>The salt; null for a liquid.</summary>
    public Salt? Salt { get; init; }

    /// <summary>The stock that it is taken from, as it was given; null for a salt and for water that nobody listed.</summary>
    internal StockFluid? Stock { get; init; }

    /// <summary>Whether this is the water that a mixture is made up with.</summary>
    public bool IsDiluent => Fluid is { IsWater: true };

    /// <summary>The amount as a person measures it, such as <c>729 mL (589 g)</c>.</summary>
    public string AmountText => Volume is { } volume ? $"{MixText.Volume(volume)} ({MixText.Mass(Mass)})" : MixText.Mass(Mass);
}

/// <summary>What to measure out to make one fluid from stock; by volume and by mass, contraction included.</summary>
/// <param name="Target">The fluid that results.</param>
/// <param name="Volume">How much of it results, at <paramref name="At"/>.</param>
/// <param name="At">The temperature at which the volumes are meant.</param>
/// <param name="Parts">What to measure: stocks, then water, then salts.</param>
/// <param name="Contraction">By how much the volume falls short of the sum of the volumes; below 0 where it exceeds it.</param>
public sealed record Recipe(Fluid Target, Volume Volume, Temperature At, ImmutableArray<RecipePart> Parts, Volume Contraction)
{
    /// <summary>The mass of the whole.</summary>
    public Mass Mass => Mass.FromKilograms(Parts.Where(p => p.Salt != Salts.MarbleChips).Sum(p => p.Mass.Kilograms));

    /// <summary>The volume and temperature as a person reads them, such as <c>1 L at 20 degC</c>.</summary>
    public string VolumeText => $"{Text(Volume)} at {Degrees}";

    /// <summary>First way: measure the stocks and make up to the volume.</summary>
    public string MakeUp
    {
        get
        {
            var water = Parts.FirstOrDefault(p => p.IsDiluent);
            var stocks = string.Join(" and ", Parts.Where(p => p != water && p.Volume is not null).Select(p => $"{Text(p.Volume!.Value)} of {p.Name}"));
            if (water is null) return $"measure {stocks}{(Parts.Count(p => p.Volume is not null) > 1 ? " and mix" : "")} at {Degrees}{AfterMixing}";
            if (stocks.Length == 0) return $"take {Text(Volume)} of {water.Name} at {Degrees}";
            return Solubles is { Length: > 0 } salts
                ? $"dissolve {salts} in most of the {water.Name}, add {stocks}, make up to {Text(Volume)} with {water.Name} at {Degrees}{AfterMixing}"
                : $"measure {stocks} and make up to {Text(Volume)} with {water.Name} at {Degrees}{AfterMixing}";
        }
    }

    /// <summary>Second way: add this much water, not filling up to a mark. The amount is larger than the difference of the volumes where the mixture contracts.</summary>
    public string AddWater
    {
        get
        {
            if (Parts.FirstOrDefault(p => p.IsDiluent) is not { Volume: { } volume } water) return "no water is added";
            var others = string.Join(" and ", Parts.Where(p => p != water && p.Volume is not null).Select(p => $"{Text(p.Volume!.Value)} ({Text(p.Mass)}) of {p.Name}"));
            if (others.Length == 0) return MakeUp;
            return Solubles is { Length: > 0 } salts
                ? $"dissolve {salts} in {Text(volume)} ({Text(water.Mass)}) of {water.Name} and add {others}{AfterMixing}"
                : $"to {others} add {Text(volume)} ({Text(water.Mass)}) of {water.Name}{AfterMixing}";
        }
    }

    /// <summary>Splits a large mixture into equal batches that a vessel holds.</summary>
    /// <param name="vessel">What the vessel holds.</param>
    /// <returns>How many batches, and the recipe of each.</returns>
    public (int Count, Recipe Each) InBatches(Volume vessel)
    {
        if (!(vessel.CubicMeters > 0)) throw new ArgumentOutOfRangeException(nameof(vessel), vessel, "A vessel holds more than nothing.");
        var count = (int)Math.Max(1, Math.Ceiling(Volume.CubicMeters / vessel.CubicMeters - 1e-9));
        return (count, this with
        {
            Volume = Volume / count,
            Contraction = Contraction / count,
            Parts = [.. Parts.Select(p => p with { Volume = p.Volume / count, Mass = p.Mass / count })],
        });
    }

    private string Degrees => Measurable.Text(At.Kelvins, Dimension.OfTemperature);

    /// <summary>What dissolves: in water before the stock, where there is water.</summary>
    private string Solubles => string.Join(" and ", Parts.Where(p => p.Salt is not null && p.Salt != Salts.MarbleChips).Select(p => $"{Text(p.Mass)} of {p.Name}"));

    /// <summary>What is put in at last: chips that lie on the bottom, and salts where there is no water to dissolve them in first.</summary>
    private string AfterMixing
    {
        get
        {
            var salts = Parts.Any(p => p.IsDiluent) ? "" : Solubles;
            var chips = Parts.FirstOrDefault(p => p.Salt == Salts.MarbleChips);
            return (salts.Length > 0 ? $", then dissolve {salts} in it" : "") + (chips is null ? "" : $", then lay {Text(chips.Mass)} of {chips.Name} into it");
        }
    }

    private static string Text(Volume volume) => MixText.Volume(volume);

    private static string Text(Mass mass) => MixText.Mass(mass);
}
