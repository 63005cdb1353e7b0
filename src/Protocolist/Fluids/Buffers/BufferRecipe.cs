using System.Collections.Immutable;

namespace Protocolist.Fluids.Buffers;

/// <summary>One salt of a buffer.</summary>
/// <param name="Salt">The hydrate the recipe calls for.</param>
/// <param name="GramsPerLitre">Grams of that hydrate in a litre of working solution.</param>
internal sealed record BufferSalt(Salt Salt, double GramsPerLitre);

/// <summary>What is weighed into a litre of formaldehyde solution to buffer it.</summary>
internal static class BufferRecipe
{
    // A litre of the concentrated stock holds 400 g formaldehyde ("40 %" w/v), the basis of Steedman's amounts.
    private const double StockGramsPerLitre = 400;

    /// <summary>Salts of any buffer as they lie in solution, counted without their water of crystallisation.</summary>
    internal static Solute Dissolved { get; } = new("buffer-salts", 0);

    /// <summary>The salts for a litre of a working solution.</summary>
    /// <param name="buffering">The kind.</param>
    /// <param name="formaldehydeGramsPerLitre">Formaldehyde of the working solution; borax and hexamine go with it, phosphates do not.</param>
    /// <returns>Salts and their grams; none for no buffer and for sea water.</returns>
    public static ImmutableArray<BufferSalt> PerLitre(Buffering buffering, double formaldehydeGramsPerLitre) => buffering switch
    {
        // Lillie's neutral buffered formalin: 4.0 g NaH2PO4.H2O and 6.5 g anhydrous Na2HPO4 to the litre.
        Buffering.Phosphate => [new(Salts.SodiumDihydrogenPhosphateMonohydrate, 4.0), new(Salts.DisodiumPhosphateAnhydrous, 6.5)],
        // Carson, Martin and Lynn 1973; the amounts from memory of histology manuals.
        Buffering.PhosphateSodiumHydroxide => [new(Salts.SodiumDihydrogenPhosphateMonohydrate, 18.6), new(Salts.SodiumHydroxide, 4.2)],
        // 3 g to the litre of 10 % formalin: Meador, Cuffney and Gurtz 1993, USGS Open-File Report 93-104; equal to 30 g per litre of stock,
        // Steedman 1976 (from memory).
        Buffering.Borax => [new(Salts.Borax, 30 * formaldehydeGramsPerLitre / StockGramsPerLitre)],
        // 200 g per litre of concentrated formaldehyde: Steedman (ed.) 1976, UNESCO Monographs on Oceanographic Methodology 4 (from memory).
        Buffering.Hexamine => [new(Salts.Hexamine, 200 * formaldehydeGramsPerLitre / StockGramsPerLitre)],
        // An excess that lies on the bottom; the amount is common practice, not critical.
        Buffering.MarbleChips => [new(Salts.MarbleChips, 20)],
        _ => [],
    };

    /// <summary>Dissolved salt without water of crystallisation, g/L; marble chips lie undissolved.</summary>
    internal static double AnhydrousGramsPerLitre(Buffering buffering, double formaldehydeGramsPerLitre)
    {
        if (buffering is Buffering.MarbleChips) return 0;
        var sum = 0.0;
        foreach (var (salt, grams) in PerLitre(buffering, formaldehydeGramsPerLitre)) sum += grams * salt.AnhydrousMolarMass / salt.MolarMass;
        return sum;
    }
}
