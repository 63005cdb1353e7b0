namespace Protocolist.Reading;

/// <summary>What a document may cost, so that a file from anywhere is safe to load. No honest file comes near.</summary>
internal sealed record ReadingLimits
{
    public static ReadingLimits Standard { get; } = new();

    public int Characters { get; init; } = 4_000_000;

    public int Depth { get; init; } = 64;

    public int Nodes { get; init; } = 200_000;
}
