using System.Text;
using NodaTime;
using Protocolist.Findings;

namespace Protocolist.Tests.Proving;

/// <summary>Small protocols with a slip in them, and what checking them says.</summary>
internal static class Faulty
{
    /// <summary>A fish protocol that is sound in itself, with other stages before its own.</summary>
    public static string Fish(string stages, string head = "", string @class = "mass: 20 g to 500 g", string ratio = "10", string last = "10 d", string house = "{stage: house, id: house, fluid: neutral buffered formalin 10 %, ratio: 3}", string id = "frame") => $$"""
        format: 1
        protocol: {{id}}
        revision: 1
        title: Frame
        for: {group: bony-fish, {{@class}}}
        {{head}}
        stages:
          {{stages}}
          - {stage: immerse, id: fix, fluid: neutral buffered formalin 10 %, ratio: {{ratio}}, last: {{last}}}
          - {{house}}
        """;

    /// <summary>A protocol of any group, all of its stages given.</summary>
    public static string Of(string @class, string stages, string head = "", string id = "frame") =>
        $"format: 1\nprotocol: {id}\nrevision: 1\ntitle: Frame\nfor: {{{@class}}}\n{head}\nstages:\n{stages}\n";

    public static IReadOnlyList<Finding> Check(string protocol, bool strict = false) =>
        [.. FileCheck.Over([], [new SourceText("frame.yaml", protocol)], DateTimeZoneProviders.Tzdb, strict).Where(f => f.Id != "unsourced")];

    public static IReadOnlyList<Finding> Check(params IReadOnlyList<string> protocols) =>
        FileCheck.Over([], protocols.Select((p, i) => new SourceText($"{i + 1}.yaml", p)), DateTimeZoneProviders.Tzdb, strict: false);

    public static string Ids(IEnumerable<Finding> findings) => string.Join(' ', findings.Select(f => f.Id));

    /// <summary>One finding in three lines.</summary>
    public static void Tell(StringBuilder text, string of, IReadOnlyList<Finding> findings)
    {
        text.Append(System.Globalization.CultureInfo.InvariantCulture, $"{of}\n");
        if (findings.Count == 0) text.Append("  (silent)\n");
        foreach (var f in findings)
            text.Append(System.Globalization.CultureInfo.InvariantCulture, $"  {f.Severity.ToString().ToLowerInvariant()} {f.Id} at {f.Where.File} {f.Where.Line}:{f.Where.Column}\n    {f.Message.ToString()}\n    remedy: {f.Remedy.ToString()}\n");
        text.Append('\n');
    }
}
