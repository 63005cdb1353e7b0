using Protocolist.Findings;

namespace Protocolist.Fluids.Mixing;

/// <summary>Why one fluid must not be mixed into another.</summary>
/// <param name="Id">The finding's id.</param>
/// <param name="Message">What is the case.</param>
/// <param name="Remedy">What to do.</param>
internal sealed record Refusal(string Id, Message Message, Message Remedy)
{
    private static readonly Phrase Foreign = new("stock-foreign", "{stock} is not mixed into {target}: {substance} does not belong in it");
    private static readonly Phrase TakeItsOwn = new("stock-foreign.remedy", "take {substance} and water only");

    /// <summary>Whether it is of another kind altogether, so that its state does not matter any more.</summary>
    public bool IsForeign { get; init; } = true;

    /// <summary>A fluid that is strong in something else.</summary>
    public static Refusal? OfForeign(Fluid target, Fluid stock, string name) =>
        stock.Substance.Active is { } active && active != target.Substance.Active ? Stranger(target, name, active) : null;

    /// <summary>A stock of another thing than the target.</summary>
    public static Refusal Stranger(Fluid target, string name, Solute active) => new(
        "stock-foreign",
        Foreign.With(("stock", name), ("target", target.Name), ("substance", active.Name)),
        TakeItsOwn.With(("substance", target.Substance.Noun)));
}
