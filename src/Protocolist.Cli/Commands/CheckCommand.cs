using System.Buffers;
using System.CommandLine;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using NodaTime;
using Protocolist.Findings;

namespace Protocolist.Cli.Commands;

/// <summary><c>check PATH…</c>: what is wrong with protocols, specimens and benches, before any animal is at stake.</summary>
internal static class CheckCommand
{
    private static readonly Argument<string[]> Paths = new("PATH")
    {
        Description = "Files and folders; each folder is laid over the bundled protocols.",
        Arity = ArgumentArity.OneOrMore,
    };
    private static readonly Option<bool> Strict = new("--strict") { Description = "Warnings count as errors, and numbers without a source are listed." };
    private static readonly Option<bool> ProveAll = new("--prove-all")
    {
        Description = "Prove those protocols too that came with the program and are unchanged.",
    };
    private static readonly Option<bool> Json = new("--json") { Description = "Findings as JSON." };

    public static Command Build()
    {
        var command = new Command("check", "Checks protocols, specimens and benches.") { Paths, Strict, ProveAll, Json };
        command.SetAction(Run);
        return command;
    }

    private static int Run(ParseResult options)
    {
        var around = options.Around;
        var findings = new List<Finding>();
        var sources = new List<SourceText>();
        foreach (var path in options.GetRequiredValue(Paths))
        {
            if (around.Files.IsFolder(path)) sources.AddRange(around.Files.ReadFolder(path, findings));
            else if (around.Files.Read(path, read => new Checked<SourceText>(read, []), findings) is { } read) sources.Add(read);
        }

        if (sources.Count == 0) return around.Unread(findings);
        var unread = findings.Exists(f => f.Severity == Severity.Error);
        var strict = options.GetValue(Strict);
        findings.AddRange(FileCheck.Run(sources, DateTimeZoneProviders.Tzdb, strict, options.GetValue(ProveAll)));
        if (options.GetValue(Json)) WriteJson(sources, findings, around.Output);
        else WriteText(sources, findings, around.Output);
        var fails = findings.Any(f => f.Severity == Severity.Error || (strict && f.Severity == Severity.Warning));
        return unread ? Exits.Unusable : fails ? Exits.WithErrors : Exits.Done;
    }

    private static void WriteText(List<SourceText> sources, List<Finding> findings, TextWriter output)
    {
        Told.Of(findings).Write(output);
        output.WriteLine(
            $"{Counts.Of(sources.Count, "file")} checked: {Of(Severity.Error, "error")}, {Of(Severity.Warning, "warning")}, {Of(Severity.Note, "note")}");

        string Of(Severity severity, string thing) => Counts.Of(findings.Count(f => f.Severity == severity), thing);
    }

    private static void WriteJson(List<SourceText> sources, List<Finding> findings, TextWriter output)
    {
        var bytes = new ArrayBufferWriter<byte>();
        using var json = new Utf8JsonWriter(bytes, new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping });
        json.WriteStartObject();
        json.WriteStartArray("files");
        foreach (var source in sources) json.WriteStringValue(source.Name);
        json.WriteEndArray();
        json.WriteStartArray("findings");
        var told = Told.Of(findings);
        foreach (var finding in told.Listed)
        {
            json.WriteStartObject();
            json.WriteString("file", finding.Where.File ?? "");
            json.WriteNumber("line", finding.Where.Line);
            json.WriteNumber("column", finding.Where.Column);
            json.WriteString("severity", finding.Severity.ToString().ToLowerInvariant());
            json.WriteString("id", finding.Id);
            json.WriteString("message", finding.Message.ToString());
            json.WriteString("remedy", finding.Remedy.ToString());
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteNumber("more", told.More);
        json.WriteEndObject();
        json.Flush();
        output.Write(Encoding.UTF8.GetString(bytes.WrittenSpan));
    }
}
