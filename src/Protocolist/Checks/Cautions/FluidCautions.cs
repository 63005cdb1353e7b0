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

    private static readonly Phrase Limits = new("caution.limits", "Limits for {substance} in air, ppm: {limits:; }.");
    private static readonly Phrase Authority = new("caution.limits.authority", "{authority}, {year}: {limits}");
    private static readonly Phrase ADay = new("caution.limits.day", "{ppm:0.###} a day");
    private static readonly Phrase Never = new("caution.limits.ceiling", "never above {ppm:0.###}");
    private static readonly Phrase Briefly = new("caution.limits.briefly", "{ppm:0.###} for 15 minutes");

    /// <summary>The sentences for one fluid, the hazards first; none for water.</summary>
    public static ImmutableArray<Message> Of(Fluid fluid)
    {
        if (fluid.IsWater) return [];
        var hazards = Hazards.Of(fluid);
        var all = ImmutableArray.CreateBuilder<Message>(4);
        Argument name = fluid.HasFormaldehyde ? ("fluid", fluid.Substance.Noun) : ("fluid", fluid.Name);
        if (hazards.SignalWord.Length > 0) all.Add(Hazard.With(Signal(hazards), name, Statements(hazards)));
        if (!fluid.Substance.Gear.IsEmpty) all.Add(fluid.Substance.Gear);
        if (fluid.Substance.Active is { Limits.IsEmpty: false } active) all.Add(LimitsOf(active));
        if (!fluid.Substance.FirstAid.IsEmpty) all.Add(fluid.Substance.FirstAid);
        return all.DrainToImmutable();
    }

    /// <summary>One sentence for mixing from formaldehyde stock, whose hazards go beyond those of the formalin made of it.</summary>
    public static Message OfStock(Fluid stock)
    {
        var hazards = Hazards.Of(stock);
        return WhenMixing.With(Signal(hazards), ("fluid", stock.Name), Statements(hazards));
    }

    private static Argument Signal(HazardData hazards) => ("signal", hazards.SignalWord == "Danger" ? Danger : Warning);

    private static Argument Statements(HazardData hazards) => Argument.Messages("hazards", hazards.Statements.Select(HazardWords.Of));

    /// <summary>The limits of every authority, dated: facts for information.</summary>
    private static Message LimitsOf(Solute substance)
    {
        var authorities = substance.Limits
            .Where(l => l.Kind is ExposureKind.WorkingDay or ExposureKind.FifteenMinutes or ExposureKind.Ceiling)
            .GroupBy(l => (l.Authority, l.Year))
            .Select(g => Authority.With(("authority", g.Key.Authority), ("year", g.Key.Year), Argument.Messages("limits", g.Select(Limit))));
        return Limits.With(("substance", substance.Name), Argument.Messages("limits", authorities));
    }

    private static Message Limit(ExposureLimit limit) => (limit.Kind switch
    {
        ExposureKind.WorkingDay => ADay,
        ExposureKind.Ceiling => Never,
        _ => Briefly,
    }).With(("ppm", limit.Ppm));
}
