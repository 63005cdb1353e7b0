using static System.FormattableString;

namespace Protocolist.Cli.Commands;

/// <summary>So many of a thing, in words.</summary>
internal static class Counts
{
    public static string Of(int count, string thing) => Invariant($"{count} {thing}{(count == 1 ? "" : "s")}");
}
