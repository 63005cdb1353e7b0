using NodaTime;

namespace Protocolist.Rules;

/// <summary>No body lies in one filling of fixative for more than a month.</summary>
internal static class FixativeMonth
{
    public const string Id = "fixative-over-its-month";
    public const string Source = "Bishop Museum, Hawaii Biological Survey, Invertebrate Specimen Handling (one month)";

    public static readonly Duration Most = Duration.FromDays(31);

    /// <summary>How long one filling stays.</summary>
    public static Duration Filling(Duration lasts, int changes) => Duration.FromSeconds(lasts.TotalSeconds / (1 + changes));

    public static bool IsOver(Duration filling) => filling > Most;
}
