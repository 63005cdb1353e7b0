namespace Protocolist.Specimens;

/// <summary>Of many animals together not each is handled by itself.</summary>
internal static class Lot
{
    /// <summary>So many animals of a lot are handled one by one; of more, so many stand for all. Common practice.</summary>
    public const int Sample = 10;

    /// <summary>How many of a lot are handled one by one.</summary>
    public static int Handled(int count) => Math.Min(count, Sample);
}
