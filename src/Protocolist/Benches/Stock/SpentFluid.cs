using System.Collections.Immutable;
using Protocolist.Findings;

namespace Protocolist.Benches.Stock;

/// <summary>What was seen of a fixative that has been used and kept for another specimen.</summary>
/// <param name="Ph">The last reading of pH, null where none was taken.</param>
/// <param name="IsClear">Neither cloudy nor bloody.</param>
public sealed record SpentFluid(double? Ph, bool IsClear)
{
    private static readonly Phrase SpentFluidNotClear = new("spent-fluid-not-clear", "'{item}' is cloudy or bloody after {uses} {uses|use|uses}");
    private static readonly Phrase SpentFluidNotClearRemedy = new("spent-fluid-not-clear.remedy", "collect it as formaldehyde waste and make fresh fixative");
    private static readonly Phrase SpentFluidTooAcid = new("spent-fluid-too-acid", "'{item}' reads pH {ph:0.0}, below {least-ph:0.0}");
    private static readonly Phrase SpentFluidPhUnknown = new("spent-fluid-ph-unknown", "no pH is noted for '{item}', used {uses} {uses|time|times}");
    private static readonly Phrase SpentFluidPhUnknownRemedy = new("spent-fluid-ph-unknown.remedy", "measure it before it is used again");
    private static readonly Phrase SpentFluidUsedUp = new("spent-fluid-used-up", "'{item}' has been used {uses} {uses|time|times} of the {most} that this bench allows");

    /// <summary>Below this a used formalin is thrown away. Common practice; storage formalin is wanted at 6.5 to 7.5.</summary>
    public const double LeastPh = 6.5;

    /// <summary>Why it should not serve again.</summary>
    /// <param name="item">The stock that it describes.</param>
    /// <returns>Errors <c>spent-fluid-not-clear</c>, <c>spent-fluid-too-acid</c>, <c>spent-fluid-used-up</c>; a warning <c>spent-fluid-ph-unknown</c>.</returns>
    internal ImmutableArray<Finding> Doubts(StockItem item)
    {
        var found = ImmutableArray.CreateBuilder<Finding>();
        if (!IsClear)
            found.Add(Finding.Error("spent-fluid-not-clear", SpentFluidNotClear.With(("item", item.Id), ("uses", item.Uses)), SpentFluidNotClearRemedy, item.Where));
        if (Ph is { } ph && ph < LeastPh)
            found.Add(Finding.Error("spent-fluid-too-acid", SpentFluidTooAcid.With(("item", item.Id), ("ph", ph), ("least-ph", LeastPh)), SpentFluidNotClearRemedy, item.Where));
        if (Ph is null)
            found.Add(Finding.Warning("spent-fluid-ph-unknown", SpentFluidPhUnknown.With(("item", item.Id), ("uses", item.Uses)), SpentFluidPhUnknownRemedy, item.Where));
        if (item.UsesAllowed is { } most && item.Uses >= most)
            found.Add(Finding.Error("spent-fluid-used-up", SpentFluidUsedUp.With(("item", item.Id), ("uses", item.Uses), ("most", most)), SpentFluidNotClearRemedy, item.Where));
        return found.ToImmutable();
    }
}
