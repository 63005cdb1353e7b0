using System.Collections.Immutable;
using Protocolist.Fluids.Buffers;
using UnitsNet;

namespace Protocolist.Fluids.Mixing;

/// <summary>The salts of a recipe, weighed in the hydrate that is on the shelf.</summary>
internal static class SaltParts
{
    /// <summary>The hydrate to weigh where <paramref name="called"/> is called for; null where none is on a shelf that is listed.</summary>
    public static Salt? OnShelf(Salt called, ImmutableArray<Salt> shelf)
    {
        if (shelf.IsDefaultOrEmpty || shelf.Contains(called)) return called;
        return shelf.FirstOrDefault(s => s.Anhydrous == called.Anhydrous);
    }

    /// <summary>What to weigh for the share of the volume that brings no salts of its own.</summary>
    public static IEnumerable<RecipePart> Of(MixRequest request, double freshShare)
    {
        if (freshShare < 1e-6) yield break;
        foreach (var (called, grams) in PerLitre(request))
        {
            var salt = OnShelf(called, request.Salts) ?? called;
            yield return new(salt.Name, null, Mass.FromGrams(salt.InPlaceOf(grams * request.LitresAt20 * freshShare, called))) { Salt = salt };
        }
    }

    /// <summary>Mass of the salts that dissolve, as weighed, kg.</summary>
    public static double KilogramsDissolved(MixRequest request, double freshShare) => Sum(request, freshShare, anhydrous: false);

    /// <summary>The same without water of crystallisation, kg.</summary>
    public static double KilogramsAnhydrous(MixRequest request, double freshShare) => Sum(request, freshShare, anhydrous: true);

    private static double Sum(MixRequest request, double freshShare, bool anhydrous)
    {
        if (request.Target.Buffering is Buffering.MarbleChips) return 0;
        var grams = 0.0;
        foreach (var (called, perLitre) in PerLitre(request))
        {
            var salt = OnShelf(called, request.Salts) ?? called;
            var weighed = salt.InPlaceOf(perLitre * request.LitresAt20 * freshShare, called);
            grams += anhydrous ? weighed * salt.AnhydrousMolarMass / salt.MolarMass : weighed;
        }

        return grams / 1000;
    }

    private static ImmutableArray<BufferSalt> PerLitre(MixRequest request) =>
        BufferRecipe.PerLitre(request.Target.Buffering, request.Target.FormaldehydeGramsPerLitre ?? 0);
}
