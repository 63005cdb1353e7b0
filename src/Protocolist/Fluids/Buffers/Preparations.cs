using System.Collections.Immutable;
using Protocolist.Findings;
using UnitsNet;

namespace Protocolist.Fluids.Buffers;

/// <summary>One thing weighed or measured for a preparation.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Mass">How much, where it is weighed.</param>
/// <param name="Volume">How much, where it is measured.</param>
internal sealed record Ingredient(Message Name, Mass? Mass, Volume? Volume);

/// <summary>A preparation made from solids: what to take and how.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Ingredients">What to take.</param>
/// <param name="Method">What to do, step by step.</param>
/// <param name="Caution">What to beware of; empty where nothing special.</param>
/// <param name="Source">Where the recipe is from.</param>
internal sealed record Preparation(Phrase Name, ImmutableArray<Ingredient> Ingredients, ImmutableArray<Phrase> Method, Phrase Caution, string Source);

/// <summary>Preparations from solids: formaldehyde from paraformaldehyde, and relaxants for invertebrates.</summary>
internal static class Preparations
{
    private static readonly Phrase FromPowder = new("preparation.formaldehyde", "formaldehyde 4 % w/v from paraformaldehyde");
    private static readonly Phrase DistilledWater = new("preparation.formaldehyde.water", "distilled water");
    private static readonly Phrase Buffer = new("preparation.formaldehyde.buffer", "phosphate buffer 0.2 mol/L, pH 7.4");
    private static readonly Phrase Hydroxide = new("preparation.formaldehyde.hydroxide", "sodium hydroxide solution 1 mol/L");
    private static readonly Phrase WarmWater = new("preparation.formaldehyde.warm", "warm the water to 60 degC in a fume cupboard, never above 65 degC");
    private static readonly Phrase StirIn = new(
        "preparation.formaldehyde.stir", "stir the powder in; add sodium hydroxide solution drop by drop until it is clear");

    private static readonly Phrase CoolAndFilter = new(
        "preparation.formaldehyde.cool", "let it cool, filter, add the buffer, make up to volume with water; check that the pH is 7.2 to 7.4");

    private static readonly Phrase UseSoon = new("preparation.formaldehyde.use", "use within a few days: without methanol it does not keep");
    private static readonly Phrase GivesOff = new(
        "preparation.formaldehyde.caution",
        "the powder and the warm solution give off formaldehyde: fume cupboard, gloves, goggles; follow your local rules");

    private static readonly Phrase Magnesium = new("preparation.magnesium-chloride", "magnesium chloride relaxant, isotonic with sea water");
    private static readonly Phrase MadeUpTo = new("preparation.magnesium-chloride.fresh-water", "fresh water, made up to");
    private static readonly Phrase ToMixIn = new("preparation.magnesium-chloride.sea-water", "sea water, to mix in");
    private static readonly Phrase Dissolve = new("preparation.magnesium-chloride.dissolve", "dissolve the salt in fresh water and make up to volume");
    private static readonly Phrase MixWithSeaWater = new(
        "preparation.magnesium-chloride.mix",
        "mix with as much sea water of the animal's own temperature; let the animal lie in it until it no longer reacts to touch");

    private static readonly Phrase ThenFix = new("preparation.magnesium-chloride.fix", "then fix at once");
    private static readonly Phrase ForRelaxing = new(
        "preparation.magnesium-chloride.caution", "for relaxing before fixation only; follow the rules for animals in your country");

    private static readonly Phrase MentholRelaxant = new("preparation.menthol", "menthol relaxant");
    private static readonly Phrase OwnWater = new("preparation.menthol.water", "the animal's own water");
    private static readonly Phrase Sprinkle = new("preparation.menthol.sprinkle", "sprinkle enough crystals to cover the surface loosely; cover the dish");
    private static readonly Phrase Wait = new(
        "preparation.menthol.wait", "wait until tentacles or siphons no longer react, up to half an hour for hydroids, hours for larger animals");

    private static readonly Phrase Skim = new("preparation.menthol.fix", "skim the crystals off and fix at once");
    private static readonly Phrase Stings = new("preparation.menthol.caution", "menthol vapour stings the eyes; it is judged poor for some corals");

    /// <summary>4 % w/v formaldehyde, free of methanol, in 0.1 mol/L phosphate buffer of pH 7.4, from paraformaldehyde.</summary>
    /// <param name="volume">How much to make.</param>
    /// <param name="assay">CH2O in the powder by mass, 0.91 to 0.99; suppliers' value is usually 0.95.</param>
    /// <returns>The preparation.</returns>
    public static Preparation FromParaformaldehyde(Volume volume, double assay = 1)
    {
        if (!(assay is >= 0.5 and <= 1)) throw new ArgumentOutOfRangeException(nameof(assay), assay, "An assay is a share of the mass, 0.5 to 1.");
        return new(
            FromPowder,
            [
                new(Message.Text(Salts.Paraformaldehyde.Name), Mass.FromGrams(40 * volume.Liters / assay), null),
                new(DistilledWater, null, volume * 0.5),
                new(Buffer, null, volume * 0.5),
                new(Hydroxide, null, null),
            ],
            [
                WarmWater,
                StirIn,
                CoolAndFilter,
                UseSoon,
            ],
            GivesOff,
            "laboratory protocols (40 g in 500 mL water at 60 degC, made to 1 L in 0.1 mol/L phosphate)");
    }

    /// <summary>Isotonic magnesium chloride: 75 g of the hexahydrate to a litre of fresh water, mixed 1 + 1 with sea water.</summary>
    /// <param name="volume">How much of the magnesium chloride solution to make, before sea water.</param>
    /// <param name="salt">The salt on the shelf; a hydrate of MgCl2.</param>
    /// <returns>The preparation.</returns>
    public static Preparation MagnesiumChloride(Volume volume, Salt? salt = null)
    {
        salt ??= Salts.MagnesiumChlorideHexahydrate;
        var grams = salt.InPlaceOf(75 * volume.Liters, Salts.MagnesiumChlorideHexahydrate);
        return new(
            Magnesium,
            [new(Message.Text(salt.Name), Mass.FromGrams(grams), null), new(MadeUpTo, null, volume), new(ToMixIn, null, volume)],
            [
                Dissolve,
                MixWithSeaWater,
                ThenFix,
            ],
            ForRelaxing,
            "Smaldon and Lee 1979 (from memory); the hexahydrate is meant: 0.369 mol/L freezes at -1.93 degC as sea water does (CRC Handbook)");
    }

    /// <summary>Menthol as crystals on the water.</summary>
    /// <param name="water">Sea or fresh water over the animals.</param>
    /// <returns>The preparation.</returns>
    public static Preparation Menthol(Volume water) => new(
        MentholRelaxant,
        [new(Message.Text(Salts.Menthol.Name), null, null), new(OwnWater, null, water)],
        [
            Sprinkle,
            Wait,
            Skim,
        ],
        Stings,
        "Russell 1963 (Marine Biological Laboratory methods)");
}
