using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Fluids.Contact;
using Protocolist.Fluids.Densities;
using Protocolist.Fluids.Mixing;

namespace Protocolist.Fluids.Substances;

/// <summary>What stock and working solutions of formaldehyde have in common. Density: Walker 1944, see <see cref="FormaldehydeWater"/>.</summary>
internal abstract class FormaldehydeSolution(string id) : Substance(id)
{
    // 1 % NaCl adds 7.1 kg/m³ (CRC Handbook); phosphates and borax add about 8 (from memory).
    private const double BufferSaltEffect = 800;

    // Common practice; gloves: Simmons, AIC/FAIC storage book (neoprene); eye wash: 29 CFR 1910.1048.
    private static readonly Phrase WearAndKeepAway = new(
        "gear.formaldehyde",
        "Wear nitrile gloves against splashes, neoprene where hands go in; goggles, apron; work in a hood or outdoors, "
        + "an eye wash within reach. Never near bleach or hydrochloric acid.");

    // In the words of safety data sheets, shortened: common practice.
    private static readonly Phrase Aid = new(
        "first-aid.formaldehyde",
        "First aid: eyes 15 minutes under running water; skin with plenty of water, wet clothes off; "
        + "breathed in, fresh air; swallowed, no vomiting; a doctor each time.");

    private static readonly Phrase NotWithAlcohol = new("mixed-fixative-and-alcohol", "{stock} is not mixed into {target}");
    private static readonly Phrase KeepApart = new("mixed-fixative-and-alcohol.remedy", "keep formaldehyde and alcohol apart; wash between them");
    private static readonly Phrase OtherBuffering = new(
        "mixed-buffering.stock", "{stock} is not mixed into {target}: the buffering differs, and the pH of the mixture would be unknown");

    private static readonly Phrase SameBuffering = new("mixed-buffering.stock.remedy", "mix from the stock, or from a fluid of the same buffering");

    private static readonly Phrase Pits = new("material.pits", "formalin that has turned acid pits it in the long run");
    private static readonly Phrase ForFixing = new("material.for-fixing", "for fixing only");

    private static readonly ImmutableArray<MaterialRow> Materials =
    [
        new(VesselMaterial.StainlessSteel, MaterialRow.AllParts, MaterialGrade.ForAWhile, Pits, "from memory"),
        new(VesselMaterial.Polystyrene, [VesselPart.Wall, VesselPart.Lid], MaterialGrade.ForAWhile, ForFixing, "common practice"),
        new(VesselMaterial.Polycarbonate, [VesselPart.Wall, VesselPart.Lid], MaterialGrade.ForAWhile, ForFixing, "common practice"),
    ];

    /// <summary>CH2O (IUPAC abridged atomic weights).</summary>
    public static Solute Gas { get; } = new(
        "formaldehyde",
        30.026,
        // 29 CFR 1910.1048.
        ("OSHA 29 CFR 1910.1048 (USA)", true, ExposureKind.WorkingDay, 0.75, null, 1992),
        ("OSHA 29 CFR 1910.1048 (USA)", true, ExposureKind.FifteenMinutes, 2, null, 1992),
        ("OSHA 29 CFR 1910.1048 (USA)", true, ExposureKind.ActionLevel, 0.5, null, 1992),
        // NIOSH Pocket Guide 0293.
        ("NIOSH Pocket Guide (USA, recommended)", false, ExposureKind.WorkingDay, 0.016, null, 2019),
        ("NIOSH Pocket Guide (USA, recommended)", false, ExposureKind.Ceiling, 0.1, null, 2019),
        ("NIOSH Pocket Guide (USA, recommended)", false, ExposureKind.ImmediateDanger, 20, null, 2019),
        // Read as the notice of intended changes of 2016; that it was adopted in 2017 is from memory.
        ("ACGIH (recommended; read as the 2016 notice)", false, ExposureKind.WorkingDay, 0.1, null, 2017),
        ("ACGIH (recommended; read as the 2016 notice)", false, ExposureKind.FifteenMinutes, 0.3, null, 2017),
        ("Directive (EU) 2019/983", true, ExposureKind.WorkingDay, 0.3, 0.37, 2019),
        ("Directive (EU) 2019/983", true, ExposureKind.FifteenMinutes, 0.6, 0.74, 2019))
    {
        InTissue = (0.5e-9, 0.8e-9),
        Hazards =
        [
            new("H301", 25), new("H302", 5, 25), new("H311", 25), new("H312", 5, 25), new("H331", 25), new("H332", 1, 25),
            new("H314", 25), new("H315", 5, 25), new("H319", 5, 25), new("H317", 0.2), new("H335", 5), new("H341", 1), new("H350", 0.1),
        ],
    };

    /// <summary>CH3OH (IUPAC abridged atomic weights), which keeps the stock clear and rides along into what is made of it.</summary>
    public static Solute Methanol { get; } = new(
        "methanol",
        32.042,
        // From memory: OSHA table Z-1.
        ("OSHA table Z-1 (USA)", true, ExposureKind.WorkingDay, 200, null, 1993))
    {
        InTissue = (0.5e-9, 0.9e-9),
        ToldFromMassPercent = 3,
        Hazards = [new("H370", 10), new("H371", 3, 10)],
    };

    public override bool Fixes => true;

    public override Message Gear => WearAndKeepAway;

    public override Message FirstAid => Aid;

    public override Solute Active => Gas;

    public override Fluid UsualStock => Fluid.ReferenceStock;

    internal override string HazardSource => "CLP entry 605-001-00-5 and its limits; some suppliers give H330 for stock, and some drop H341 below 3 %";

    internal override ImmutableArray<MaterialRow> Contact => Materials;

    internal override double Density(in Composition composition, double celsius)
    {
        double formaldehyde = composition[Gas], methanol = composition[Methanol];
        var water = formaldehyde > 0 || methanol > 0 ? FormaldehydeWater.Density(formaldehyde, methanol, celsius) : WaterDensity.Of(celsius);
        return water + Substances.SeaWater.Added(composition, celsius) + BufferSaltEffect * composition[Solute.BufferSalts];
    }

    internal override double DensityDoubt(in Composition composition, double celsius) => FormaldehydeWater.DensityError;

    internal override Fluid DiluentOf(Fluid target) => target.Salinity > 0 ? Fluid.SeaWater(target.Salinity) : Fluid.Water;

    internal override Refusal? Refuses(Fluid target, Fluid stock, string name)
    {
        if (stock.IsAlcohol) return WithAlcohol(target, name);
        return stock.HasFormaldehyde && !stock.Substance.IsConcentrate && stock.Buffering != target.Buffering
            ? new("mixed-buffering", OtherBuffering.With(("stock", name), ("target", target.Name)), SameBuffering) { IsForeign = false }
            : base.Refuses(target, stock, name);
    }

    /// <summary>Formaldehyde and alcohol in one fluid, whichever goes into the other.</summary>
    internal static Refusal WithAlcohol(Fluid target, string name) =>
        new("mixed-fixative-and-alcohol", NotWithAlcohol.With(("stock", name), ("target", target.Name)), KeepApart);
}
