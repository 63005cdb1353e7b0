using System.Collections.Immutable;
using System.Globalization;
using Protocolist.Findings;

namespace Protocolist.Benches.Stock;

/// <summary>What was seen of a fixative that has been used and kept for another specimen.</summary>
/// <param name="Ph">The last reading of pH, null where none was taken.</param>
/// <param name="IsClear">Neither cloudy nor bloody.</param>
public sealed record SpentFluid(double? Ph, bool IsClear)
{
    /// <summary>Below this a used formalin is thrown away. Common practice; storage formalin is wanted at 6.5 to 7.5.</summary>
    public const double LeastPh = 6.5;

    /// <summary>Why it should not serve again.</summary>
    /// <param name="item">The stock that it describes.</param>
    /// <returns>Errors <c>spent-fluid-not-clear</c>, <c>spent-fluid-too-acid</c>, <c>spent-fluid-used-up</c>; a warning <c>spent-fluid-ph-unknown</c>.</returns>
    internal ImmutableArray<Finding> Doubts(StockItem item)
    {
        var found = ImmutableArray.CreateBuilder<Finding>();
        if (!IsClear)
            found.Add(Finding.Error("spent-fluid-not-clear", $"'{item.Id}' is cloudy or bloody after {Count(item.Uses, "use")}", "collect it as formaldehyde waste and make fresh fixative", item.Where));
        if (Ph is < LeastPh)
            found.Add(Finding.Error("spent-fluid-too-acid", string.Create(CultureInfo.InvariantCulture, $"'{item.Id}' reads pH {Ph:0.0}, below {LeastPh:0.0}"), "collect it as formaldehyde waste and make fresh fixative", item.Where));
        if (Ph is null)
            found.Add(Finding.Warning("spent-fluid-ph-unknown", $"no pH is noted for '{item.Id}', used {Count(item.Uses, "time")}", "measure it before it is used again", item.Where));
        if (item.UsesAllowed is { } most && item.Uses >= most)
            found.Add(Finding.Error("spent-fluid-used-up", string.Create(CultureInfo.InvariantCulture, $"'{item.Id}' has been used {Count(item.Uses, "time")} of the {most} that this bench allows"), "collect it as formaldehyde waste and make fresh fixative", item.Where));
        return found.ToImmutable();
    }

    private static string Count(int count, string noun) => string.Create(CultureInfo.InvariantCulture, $"{count} {noun}{(count == 1 ? "" : "s")}");
}
