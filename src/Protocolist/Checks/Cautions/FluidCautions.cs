using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Fluids.Safety;

namespace Protocolist.Checks.Cautions;

/// <summary>What can hurt a person in a fluid, in sentences.</summary>
internal static class FluidCautions
{
    /// <summary>Said once a plan, after the first of all.</summary>
    public static readonly Phrase Deference = new(
        "caution.deference",
        "The safety data sheet of your own bottle, local codes, and a licensed or competent person where they ask for one come before this sheet.");

    private static readonly Phrase Hazard = new("caution.hazard", "{signal}: {fluid}: {hazards:; }.");
    private static readonly Phrase WhenMixing = new(
        "caution.when-mixing",
        "{signal}, when mixing: {fluid}: {hazards:; }. Face shield, gloves over the wrist, in a hood or outdoors.");

    private static readonly Phrase Danger = new("caution.danger", "DANGER");
    private static readonly Phrase Warning = new("caution.warning", "WARNING");
    private static readonly Phrase Stock = new("caution.formaldehyde-stock", "formaldehyde stock");
    private static readonly Phrase Formalin = new("caution.formalin", "formalin");

    // Common practice; gloves: Simmons, AIC/FAIC storage book (neoprene); eye wash: 29 CFR 1910.1048.
    private static readonly Phrase FormalinGear = new(
        "caution.formalin-gear",
        "Wear nitrile gloves against splashes, neoprene where hands go in; goggles, apron; work in a hood or outdoors, an eye wash within reach. "
        + "Never near bleach or hydrochloric acid.");

    private static readonly Phrase AlcoholGear = new(
        "caution.alcohol-gear",
        "Wear goggles and gloves; no flame, spark or hot plate near; ventilate; keep it covered.");

    // First aid in the words of safety data sheets, shortened: common practice.
    private static readonly Phrase FormalinAid = new(
        "caution.formalin-aid",
        "First aid: eyes 15 minutes under running water; skin with plenty of water, wet clothes off; breathed in, fresh air; swallowed, no vomiting; "
        + "a doctor each time.");

    private static readonly Phrase AlcoholAid = new(
        "caution.alcohol-aid",
        "First aid: eyes some minutes under running water; clothes on fire, water or a blanket; swallowed or dizzy, fresh air and a doctor.");

    private static readonly Phrase Limits = new("caution.limits", "Limits for {substance} in air, ppm: {limits:; }.");
    private static readonly Phrase Authority = new("caution.limits.authority", "{authority}, {year}: {limits}");
    private static readonly Phrase ADay = new("caution.limits.day", "{ppm:0.###} a day");
    private static readonly Phrase Never = new("caution.limits.ceiling", "never above {ppm:0.###}");
    private static readonly Phrase Briefly = new("caution.limits.briefly", "{ppm:0.###} for 15 minutes");

    // The limits of every authority, dated: facts for information.
    private static readonly Message FormaldehydeLimits = LimitsOf("formaldehyde");
    private static readonly Message EthanolLimits = LimitsOf("ethanol");
    private static readonly Message IsopropanolLimits = LimitsOf("isopropanol");

    /// <summary>The sentences for one fluid, the hazards first; none for water.</summary>
    public static ImmutableArray<Message> Of(Fluid fluid)
    {
        if (fluid.IsWater) return [];
        var hazards = Hazards.Of(fluid);
        Argument name = fluid.Kind == FluidKind.FormaldehydeStock ? ("fluid", Stock) : fluid.HasFormaldehyde ? ("fluid", Formalin) : ("fluid", fluid.Name);
        return
        [
            .. hazards.SignalWord.Length > 0 ? [Hazard.With(Signal(hazards), name, Statements(hazards))] : ReadOnlySpan<Message>.Empty,
            fluid.HasFormaldehyde ? FormalinGear : AlcoholGear,
            fluid.HasFormaldehyde ? FormaldehydeLimits : fluid.Kind == FluidKind.Ethanol ? EthanolLimits : IsopropanolLimits,
            fluid.HasFormaldehyde ? FormalinAid : AlcoholAid,
        ];
    }

    /// <summary>One sentence for mixing from formaldehyde stock, whose hazards go beyond those of the formalin made of it.</summary>
    public static Message OfStock(Fluid stock)
    {
        var hazards = Hazards.Of(stock);
        return WhenMixing.With(Signal(hazards), ("fluid", stock.Name), Statements(hazards));
    }

    private static Argument Signal(HazardData hazards) => ("signal", hazards.SignalWord == "Danger" ? Danger : Warning);

    private static Argument Statements(HazardData hazards) => Argument.Messages("hazards", hazards.Statements.Select(HazardWords.Of));

    private static Message LimitsOf(string substance)
    {
        var authorities = ExposureLimits.All
            .Where(l => l.Substance == substance && l.Kind is ExposureKind.WorkingDay or ExposureKind.FifteenMinutes or ExposureKind.Ceiling)
            .GroupBy(l => (l.Authority, l.Year))
            .Select(g => Authority.With(("authority", g.Key.Authority), ("year", g.Key.Year), Argument.Messages("limits", g.Select(Limit))));
        return Limits.With(("substance", substance), Argument.Messages("limits", authorities));
    }

    private static Message Limit(ExposureLimit limit) => (limit.Kind switch
    {
        ExposureKind.WorkingDay => ADay,
        ExposureKind.Ceiling => Never,
        _ => Briefly,
    }).With(("ppm", limit.Ppm));
}
