using System.Collections.Immutable;
using Protocolist.Fluids.Buffers;
using UnitsNet;

namespace Protocolist.Fluids.Mixing;

/// <summary>The salts of a recipe, weighed in the hydrate that is on the shelf: grams for a litre at 20 °C that brings none of its own.</summary>
internal sealed class SaltParts
{
    // A share of fresh salts below this is what rounding leaves.
    private const double LeastFresh = 1e-6;

    private readonly ImmutableArray<(Salt Salt, double Grams)> _weighed;

    public SaltParts(MixRequest request)
    {
        var weighed = ImmutableArray.CreateBuilder<(Salt, double)>();
        foreach (var (called, grams) in BufferRecipe.PerLitre(request.Target.Buffering, request.Target.FormaldehydeGramsPerLitre ?? 0))
        {
            var salt = OnShelf(called, request.Salts);
            if (salt is null) Missing ??= called;
            weighed.Add((salt ?? called, (salt ?? called).InPlaceOf(grams, called)));
        }

        _weighed = weighed.DrainToImmutable();
        if (request.Target.Buffering is Buffering.MarbleChips) return;
        foreach (var (salt, grams) in _weighed)
        {
            Dissolved += grams / 1000;
            Anhydrous += grams * salt.AnhydrousMolarMass / salt.MolarMass / 1000;
        }
    }

    /// <summary>Whether any are called for.</summary>
    public bool AreCalledFor => !_weighed.IsEmpty;

    /// <summary>The first that is called for and not on a shelf that is listed, in any form.</summary>
    public Salt? Missing { get; }

    /// <summary>Mass of the salts that dissolve, as weighed, kg.</summary>
    public double Dissolved { get; }

    /// <summary>The same without water of crystallisation, kg.</summary>
    public double Anhydrous { get; }

    /// <summary>What to weigh for so many litres that bring no salts of their own, of so many in all.</summary>
    public IEnumerable<RecipePart> For(double freshLitres, double litres) => freshLitres < LeastFresh * litres
        ? []
        : _weighed.Select(w => new RecipePart(w.Salt.Name, null, Mass.FromGrams(w.Grams * freshLitres)) { Salt = w.Salt });

    /// <summary>The hydrate to weigh where <paramref name="called"/> is called for; null where none is on a shelf that is listed.</summary>
    internal static Salt? OnShelf(Salt called, ImmutableArray<Salt> shelf)
    {
        if (shelf.IsDefaultOrEmpty || shelf.Contains(called)) return called;
        return shelf.FirstOrDefault(s => s.Anhydrous == called.Anhydrous);
    }
}
