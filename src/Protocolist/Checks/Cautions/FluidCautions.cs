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

    /// <summary>The sentences for one fluid, the hazards first; none for water.</summary>
    public static ImmutableArray<Message> Of(Fluid fluid)
    {
        if (fluid.IsWater) return [];
        var (statements, substance) = (Hazards.StatementsOf(fluid), fluid.Substance);
        var all = ImmutableArray.CreateBuilder<Message>(4);
        Argument name = fluid.HasFormaldehyde ? ("fluid", substance.Noun) : ("fluid", fluid.Name);
        if (!statements.IsEmpty) all.Add(Hazard.With(Signal(statements), name, Words(statements)));
        if (!substance.Gear.IsEmpty) all.Add(substance.Gear);
        if (substance.Active is { LimitsSaid: { IsEmpty: false } limits }) all.Add(limits);
        if (!substance.FirstAid.IsEmpty) all.Add(substance.FirstAid);
        return all.DrainToImmutable();
    }

    /// <summary>One sentence for mixing from formaldehyde stock, whose hazards go beyond those of the formalin made of it.</summary>
    public static Message OfStock(Fluid stock)
    {
        var statements = Hazards.StatementsOf(stock);
        return WhenMixing.With(Signal(statements), ("fluid", stock.Name), Words(statements));
    }

    private static Argument Signal(ImmutableArray<string> statements) => ("signal", Hazards.SignalWord(statements) == "Danger" ? Danger : Warning);

    private static Argument Words(ImmutableArray<string> statements) => Argument.Messages("hazards", statements.Select(HazardWords.Of));
}
