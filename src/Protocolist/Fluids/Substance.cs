using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Fluids.Contact;
using Protocolist.Fluids.Mixing;
using Protocolist.Fluids.Names;
using Protocolist.Fluids.Substances;
using Protocolist.Reading;

namespace Protocolist.Fluids;

/// <summary>What a fluid is, whatever its strength: one value for each, which answers every question that the library asks of a kind of fluid.</summary>
/// <remarks>
/// Each stands in one file of <c>Substances</c> and in one line of <see cref="SubstanceCatalogue.Bundled"/>; nothing else knows how many there are.
/// Two are the same when they are the same object. Immutable, safe to share between threads.
/// </remarks>
public abstract class Substance
{
    private protected Substance(string id) => Id = id;

    /// <summary>Water of no stated make; distilled or deionised where alcohol is diluted with it.</summary>
    public static Substance Water { get; } = new Water("water", "water", "fresh water", "freshwater");

    /// <summary>Distilled, deionised or reverse-osmosis water.</summary>
    public static Substance DistilledWater { get; } = new Water(
        "distilled-water", "distilled water", "deionised water", "deionized water", "de-ionised water", "purified water", "demineralised water",
        "reverse-osmosis water");

    /// <summary>Water from the tap: for washing, never for diluting alcohol (it turns cloudy).</summary>
    public static Substance TapWater { get; } = new Water("tap-water", "tap water", "tapwater") { CloudsAlcohol = true };

    /// <summary>Sea water of a practical salinity.</summary>
    public static Substance SeaWater { get; } = new SeaWater();

    /// <summary>Ethanol and water.</summary>
    public static Substance Ethanol { get; } = new Ethanol();

    /// <summary>Isopropanol (2-propanol) and water.</summary>
    public static Substance Isopropanol { get; } = new Isopropanol();

    /// <summary>Formaldehyde as it is bought: 30 to 40 % by mass, with methanol.</summary>
    public static Substance FormaldehydeStock { get; } = new FormaldehydeStock();

    /// <summary>A working solution of formaldehyde ("formalin"), buffered or not.</summary>
    public static Substance Formaldehyde { get; } = new Formaldehyde();

    /// <summary>Glycerol and water.</summary>
    public static Substance Glycerol { get; } = new Glycerol();

    /// <summary>A mixture of one strength that is used as it comes, such as a compound fixative that is bought ready.</summary>
    /// <param name="id">A kebab-case name.</param>
    /// <param name="name">What people call it, without a strength.</param>
    /// <param name="massPercents">What it holds beside water, in percent by mass; their sum is below 100. What is not named counts as water.</param>
    /// <param name="densityAt20">Its density at 20 °C, kg/m³, 500 to 2000.</param>
    /// <param name="densityDoubt">Half the width of the band around it, kg/m³.</param>
    /// <param name="flashPointCelsius">Its flash point, °C, -100 to 500; null where it has none, which with a tenth of alcohol or more cannot be.</param>
    /// <returns>A substance for <see cref="SubstanceCatalogue.With"/>, on a bench of <c>strength: undiluted</c>; hazards, gear, first aid and
    /// waste follow from what it holds.</returns>
    /// <exception cref="ArgumentException">The id is not kebab-case, the name is no line of text, or the percentages or the density cannot be.</exception>
    public static Substance ReadyMade(
        string id,
        string name,
        IEnumerable<(Solute Solute, double MassPercent)> massPercents,
        double densityAt20,
        double densityDoubt,
        double? flashPointCelsius = null)
    {
        OwnNames.ThrowIfUnfit(id, name);
        ArgumentNullException.ThrowIfNull(massPercents);
        (Solute What, double Share)[] shares = [.. massPercents.Select(c => (c.Solute, c.MassPercent / 100))];
        if (shares.Any(s => s.What is null || !(s.Share > 0)) || !(shares.Sum(s => s.Share) < 1) || shares.DistinctBy(s => s.What).Count() < shares.Length)
            throw new ArgumentException("Each is named once, each percentage is above 0, their sum below 100.", nameof(massPercents));
        var alcohol = shares.Where(s => s.What == Solute.Ethanol || s.What == Solute.Isopropanol || s.What == Solute.Methanol).Sum(s => s.Share);
        if (flashPointCelsius is null && alcohol >= 0.1)
            throw new ArgumentException("What holds a tenth of alcohol or more has a flash point: give it.", nameof(flashPointCelsius));
        if (!double.IsFinite(densityDoubt) || flashPointCelsius is { } point && !(point is >= -100 and <= 500))
            throw new ArgumentException("The doubt and the flash point are numbers, the flash point -100 to 500 °C.", nameof(flashPointCelsius));
        if (densityAt20 is not (>= 500 and <= 2000)) throw new ArgumentException("A fluid weighs 500 to 2000 kg/m³.", nameof(densityAt20));
        return new ReadyMade(id, name, new(shares), densityAt20, Math.Max(0, densityDoubt)) { FlashPointCelsius = flashPointCelsius };
    }

    /// <summary>A kebab-case name, such as <c>formaldehyde-stock</c>.</summary>
    public string Id { get; }

    /// <summary>What sentences call it, such as <c>formalin</c>.</summary>
    public abstract Phrase Noun { get; }

    /// <summary>Names of fluids of it at usual strengths, canonical, each read without a finding.</summary>
    public abstract ImmutableArray<string> Examples { get; }

    /// <summary>Whether it is water of any make, sea water included.</summary>
    public virtual bool IsWater => false;

    /// <summary>Whether it is an alcohol that specimens are kept in: ethanol or isopropanol.</summary>
    public virtual bool IsAlcohol => false;

    /// <summary>Whether it is bought to be diluted, and no specimen is put into it as it is.</summary>
    public virtual bool IsConcentrate => false;

    /// <summary>Whether it fixes: binds the tissue, so that it stays as it is in other fluids. What only takes the water away does not.</summary>
    public virtual bool Fixes => false;

    /// <summary>Whether it takes water out of a specimen, which shrinks and stiffens with it.</summary>
    public virtual bool Dehydrates => false;

    /// <summary>Whether more than water leaves an open or leaking vessel, so that its strength falls.</summary>
    public virtual bool IsVolatile => false;

    /// <summary>Whether people have to be protected from it.</summary>
    public virtual bool IsHazardous => !Gear.IsEmpty;

    /// <summary>The strengths at which specimens are kept in it for years; null where its strength is not what decides.</summary>
    public virtual KeepingBand? Keeping => null;

    /// <summary>What gives it its strength; null where it has none.</summary>
    public virtual Solute? Active => null;

    /// <summary>Whether a density tells its strength: it is a liquid and water, nothing else; see <see cref="AlcoholStrength"/>.</summary>
    public virtual bool HasStrengthByDensity => false;

    /// <summary>The stock that is usually at hand to make it from; null where it is not made from stock.</summary>
    public virtual Fluid? UsualStock => null;

    /// <summary>Lowest temperature of its density, °C.</summary>
    public virtual double LowestCelsius => 0;

    /// <summary>Highest temperature of its density, °C.</summary>
    public virtual double HighestCelsius => 40;

    /// <summary>What to wear and to keep away; empty for water.</summary>
    public abstract Message Gear { get; }

    /// <summary>First aid; empty for water.</summary>
    public abstract Message FirstAid { get; }

    /// <summary>A fluid of it.</summary>
    /// <param name="percent">The strength in percent; not read where it has none.</param>
    /// <param name="basis">What it is a percentage of.</param>
    /// <returns>The fluid.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such strength or basis of it.</exception>
    public abstract Fluid Of(double percent, StrengthBasis basis);

    /// <summary>Its id.</summary>
    /// <returns><see cref="Id"/>.</returns>
    public override string ToString() => Id;

    // What it is called.

    /// <summary>Its names without a strength as people write them, the canonical ones first.</summary>
    internal abstract IEnumerable<FluidWord> Words { get; }

    /// <summary>Names without a strength that are fit to be suggested.</summary>
    internal abstract IEnumerable<string> Canonical { get; }

    /// <summary>A fluid of it whose name has been taken apart.</summary>
    internal abstract Checked<Fluid> Read(in WrittenFluid written, in FluidWord word);

    /// <summary>The canonical name of a fluid of it, which reads back to an equal one.</summary>
    internal abstract string NameOf(Fluid fluid);

    /// <summary>These names of it.</summary>
    private protected IEnumerable<FluidWord> Called(params string[] names) => names.Select(name => new FluidWord(name, this));

    // How dense it is.

    /// <summary>Density in kg/m³ of a mixture that counts as this substance, within its temperatures.</summary>
    internal abstract double Density(in Composition composition, double celsius);

    /// <summary>Half the width of the band around it, kg/m³.</summary>
    internal abstract double DensityDoubt(in Composition composition, double celsius);

    /// <summary>Percent by volume at 20 °C of one of the liquids in it; null where it is not there or not counted by volume.</summary>
    internal virtual double? VolumePercent(Fluid fluid, Solute liquid) => null;

    // How it is diluted and mixed.

    /// <summary>The water that a fluid of it is made up with where none is listed.</summary>
    internal abstract Fluid DiluentOf(Fluid target);

    /// <summary>What goes into a fluid of it in fixed amounts beside what gives it its strength, water and buffer salts; none for most.</summary>
    internal virtual ImmutableArray<Addition> AdditionsTo(Fluid target) => [];

    /// <summary>Whether its salts fall out in alcohol and cloud it.</summary>
    internal virtual bool CloudsAlcohol { get; init; }

    /// <summary>Why another fluid must not go into one of it, by its kind; null where it may.</summary>
    internal virtual Refusal? Refuses(Fluid target, Fluid stock, string name) => Refusal.OfForeign(target, stock, name);

    // What it does to people, vessels and the sewer.

    /// <summary>Closed-cup flash point in °C; null where it does not flash in practice.</summary>
    internal virtual double? FlashPoint(Fluid fluid) => null;

    /// <summary>Half the width of the band around it, K.</summary>
    internal virtual double FlashPointDoubt => 5;

    /// <summary>UN number and name where it falls under one; else empty.</summary>
    internal virtual string Transport(Fluid fluid, int? flammableCategory) => "";

    /// <summary>Where the classification is from, and where sources differ; empty where there is none.</summary>
    internal virtual string HazardSource => "";

    /// <summary>What sort of waste it becomes.</summary>
    internal virtual WasteClass WasteOf(Fluid fluid) => WasteClasses.Of(fluid.FormaldehydeMassPercent ?? 0, fluid.AlcoholVolumePercent);

    /// <summary>What walls, lids, seals and mounts do not bear in it beyond what no fluid is kept in.</summary>
    internal virtual ImmutableArray<MaterialRow> Contact => [];

    /// <summary>Whether it expands so much, or builds such a pressure, that it needs the wider headspace.</summary>
    internal virtual bool NeedsWideHeadspace(Fluid fluid) => false;

    /// <summary>The vapours over it.</summary>
    internal virtual Vapours VapoursOver(Fluid fluid, double celsius) => new(0, Vapour.Water(celsius));
}

/// <summary>The strengths of an alcohol at which specimens are kept for years, % by volume.</summary>
/// <param name="Preserves">Below this it does not preserve.</param>
/// <param name="Low">Lower end of what is right.</param>
/// <param name="High">Upper end of what is right.</param>
/// <param name="Source">Where they are from.</param>
public sealed record KeepingBand(double Preserves, double Low, double High, string Source);
