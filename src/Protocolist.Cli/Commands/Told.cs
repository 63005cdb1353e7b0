using Protocolist.Findings;

namespace Protocolist.Cli.Commands;

/// <summary>Findings as a person can read them: the gravest, in their order, and how many more there are.</summary>
internal sealed record Told(IReadOnlyList<Finding> Listed, int More)
{
    /// <summary>Nobody reads further, and a terminal forgets what came before.</summary>
    public const int Most = 1000;

    public static Told Of(IReadOnlyList<Finding> findings)
    {
        if (findings.Count <= Most) return new(findings, 0);
        var gravest = findings.Index().OrderByDescending(f => f.Item.Severity).Take(Most).OrderBy(f => f.Index).Select(f => f.Item);
        return new([.. gravest], findings.Count - Most);
    }

    public void Write(TextWriter writer)
    {
        foreach (var finding in Listed) writer.WriteLine(finding);
        if (More > 0) writer.WriteLine($"and {Counts.Of(More, "finding")} more, none graver than these: mend these first");
    }
}
