using Protocolist.Benches;
using Protocolist.Findings;

namespace Protocolist.Checks.Stock;

/// <summary>How much of a bottle or a box stands on the shelf.</summary>
internal static class OnShelf
{
    private static readonly Phrase Pieces = new("pieces", "{n} {n|piece|pieces}");

    public static Argument Of(StockItem item) => item.OnHand.Kind switch
    {
        AmountKind.Volume => ("amount", item.OnHand.Volume),
        AmountKind.Mass => ("amount", item.OnHand.Mass),
        _ => ("amount", Pieces.With(("n", item.OnHand.Units))),
    };
}
