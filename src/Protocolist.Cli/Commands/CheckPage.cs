
namespace Protocolist.Cli.Commands;

/// <summary>The page of a check: whom it protects, how grave its findings are and when, where its rule comes from, what a protocol may change.</summary>
internal static class CheckPage
{
    public static IEnumerable<string> Of(CheckDescription check) =>
    [
        check.Id,
        $"  protects: {check.Protects}",
        .. check.Severities.Select(s => $"  {s}"),
        $"  source: {check.Source}",
        check.ProtectsPeople
            ? "  a protocol may raise it, never lower it: it protects people"
            : "  a protocol may raise or lower it under 'severities:', with a reason that every plan then shows",
    ];
}
