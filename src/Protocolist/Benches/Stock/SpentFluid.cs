using System.Collections.Immutable;
using Protocolist.Findings;

namespace Protocolist.Benches;

/// <summary>What was seen of a fixative that has been used and kept for another specimen.</summary>
/// <param name="Ph">The last reading of pH, null where none was taken.</param>
/// <param name="IsClear">Neither cloudy nor bloody.</param>
public sealed record SpentFluid(double? Ph, bool IsClear)
{
    /// <summary>Below this a used formalin is thrown away. Common practice; storage formalin is wanted at 6.5 to 7.5.</summary>
    public const double LeastPh = 6.5;

    private static readonly Phrase NotClear = new("spent-fluid-not-clear", "'{stock}' is cloudy or bloody after {uses} {uses|use|uses}");
    private static readonly Phrase TooAcid = new("spent-fluid-too-acid", "'{stock}' reads pH {ph:0.0}, below {least:0.0}");
    private static readonly Phrase PhUnknown = new("spent-fluid-ph-unknown", "no pH is noted for '{stock}', used {uses} {uses|time|times}");
    private static readonly Phrase PhUnknownRemedy = new("spent-fluid-ph-unknown.remedy", "measure it before it is used again");
    private static readonly Phrase UsedUp = new("spent-fluid-used-up", "'{stock}' has been used {uses} {uses|time|times} of the {most} that this bench allows");
    private static readonly Phrase MakeFresh = new("spent-fluid-unfit.remedy", "collect it as formaldehyde waste and make fresh fixative");

    /// <summary>Whether it may serve again: clear, not too acid, not used as often as is allowed.</summary>
    internal bool IsFit(StockItem item) => IsClear && Ph is not < LeastPh && !IsUsedUp(item);

    /// <summary>Why it should not serve again.</summary>
    /// <param name="item">The stock that it describes.</param>
    /// <returns>Errors <c>spent-fluid-not-clear</c>, <c>spent-fluid-too-acid</c>, <c>spent-fluid-used-up</c>; a warning
    /// <c>spent-fluid-ph-unknown</c>.</returns>
    internal ImmutableArray<Finding> Doubts(StockItem item)
    {
        var (found, stock, uses) = (ImmutableArray.CreateBuilder<Finding>(), Argument.Id("stock", item.Id), (Argument)("uses", item.Uses));
        if (!IsClear) found.Add(Finding.Error(NotClear.Id, NotClear.With(stock, uses), MakeFresh, item.Where));
        if (Ph is { } ph and < LeastPh) found.Add(Finding.Error(TooAcid.Id, TooAcid.With(stock, ("ph", ph), ("least", LeastPh)), MakeFresh, item.Where));
        if (Ph is null) found.Add(Finding.Warning(PhUnknown.Id, PhUnknown.With(stock, uses), PhUnknownRemedy, item.Where));
        if (IsUsedUp(item)) found.Add(Finding.Error(UsedUp.Id, UsedUp.With(stock, uses, ("most", item.UsesAllowed ?? 0)), MakeFresh, item.Where));
        return found.ToImmutable();
    }

    private static bool IsUsedUp(StockItem item) => item.UsesAllowed is { } most && item.Uses >= most;
}
