using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Fluids.Contact;
using Protocolist.Fluids.Densities;
using Protocolist.Fluids.Mixing;

namespace Protocolist.Fluids.Substances;

/// <summary>What ethanol and isopropanol have in common as fluids that specimens are kept in.</summary>
internal abstract class Alcohol(Solute liquid) : LiquidInWater(liquid, 70)
{
    /// <summary>% by volume from which a vessel needs the wider headspace.</summary>
    private const double WideHeadspaceFrom = 60;

    // Weaker than this, in % by volume, no flash below the boiling point is reported.
    private const double WeakestFlammable = 5;

    private static readonly Phrase AnAlcohol = new("substance.alcohol", "an alcohol");

    private static readonly Phrase WearAndKeepAway = new(
        "gear.alcohol", "Wear goggles and gloves; no flame, spark or hot plate near; ventilate; keep it covered.");

    // In the words of safety data sheets, shortened: common practice.
    private static readonly Phrase Aid = new(
        "first-aid.alcohol",
        "First aid: eyes some minutes under running water; clothes on fire, water or a blanket; swallowed or dizzy, fresh air and a doctor.");

    private static readonly Phrase TwoAlcohols = new(
        "mixed-alcohols.stock", "{stock} is not mixed into {target}: two alcohols in one jar cannot be measured or corrected");

    private static readonly Phrase OneOnly = new("mixed-alcohols.stock.remedy", "take {alcohol} only");
    private static readonly Phrase Clouds = new("water-unfit-for-alcohol.stock", "{stock} makes {target} cloudy: its salts fall out in alcohol");
    private static readonly Phrase TakeDistilled = new("water-unfit-for-alcohol.stock.remedy", "take distilled or deionised water");

    private static readonly Phrase Crazes = new("material.crazes", "alcohol crazes and cracks it");
    private static readonly Phrase Softeners = new("material.softeners", "alcohol draws out its softeners and it crumbles, as old snap lids show");
    private static readonly Phrase PassesWater = new("material.passes-water", "water passes its wall faster than alcohol and the strength wanders");
    private static readonly Phrase CuresOpen = new("material.cures-open", "let it cure open for 24 to 48 h at least; how it ages in alcohol is not known well");

    private static readonly ImmutableArray<MaterialRow> Materials =
    [
        new(VesselMaterial.Polystyrene, MaterialRow.AllButSeal, MaterialGrade.Unfit, Crazes, MaterialRow.Simmons),
        new(VesselMaterial.Acrylic, MaterialRow.AllButSeal, MaterialGrade.Unfit, Crazes, MaterialRow.Simmons),
        new(VesselMaterial.Polycarbonate, MaterialRow.AllButSeal, MaterialGrade.Unfit, Crazes, MaterialRow.Simmons),
        new(VesselMaterial.Pvc, MaterialRow.AllParts, MaterialGrade.ForAWhile, Softeners,
            "Bavarian State Collection of Zoology, collections mailing list 2011; the reason from memory"),
        new(VesselMaterial.Pet, [VesselPart.Wall], MaterialGrade.ForAWhile, PassesWater, "Canadian Museum of Nature, collections mailing list 2007"),
        new(VesselMaterial.NeutralSilicone, [VesselPart.Seal], MaterialGrade.Lasting, CuresOpen, "common practice"),
    ];

    public override bool IsAlcohol => true;

    public override bool Dehydrates => true;

    public override bool IsVolatile => true;

    public override Message Gear => WearAndKeepAway;

    public override Message FirstAid => Aid;

    protected override Phrase Sort => AnAlcohol;

    /// <summary>Flash points by % by volume.</summary>
    protected abstract MonotoneCurve FlashPoints { get; }

    internal override double? FlashPoint(Fluid fluid) => fluid.AlcoholVolumePercent >= WeakestFlammable ? FlashPoints.At(fluid.AlcoholVolumePercent) : null;

    internal override ImmutableArray<MaterialRow> Contact => Materials;

    internal override bool NeedsWideHeadspace(Fluid fluid) => fluid.AlcoholVolumePercent >= WideHeadspaceFrom;

    /// <summary>Isopropanol is taken as ethanol of the same mass fraction, which evaporates more: the safe side.</summary>
    internal override Vapours VapoursOver(Fluid fluid, double celsius)
    {
        var (alcohol, water) = Vapour.OverMixture(fluid.Composition[Active], celsius);
        return new(alcohol, water);
    }

    internal override Refusal? Refuses(Fluid target, Fluid stock, string name)
    {
        if (stock.IsAlcohol && stock.Substance != this)
            return new("mixed-alcohols", TwoAlcohols.With(("stock", name), ("target", target.Name)), OneOnly.With(("alcohol", Noun)));
        if (stock.Substance.CloudsAlcohol)
            return new("water-unfit-for-alcohol", Clouds.With(("stock", name), ("target", target.Name)), TakeDistilled);
        return stock.HasFormaldehyde ? FormaldehydeSolution.WithAlcohol(target, name) : base.Refuses(target, stock, name);
    }
}
