using System.Text;
using Protocolist.Findings;
using Protocolist.Plans;
using Protocolist.Sheets;

namespace Protocolist.Cli.Commands;

/// <summary>A plan in the form that was asked for, into a file or to standard output.</summary>
internal static class PlanOutput
{
    public static readonly string[] Formats = ["text", "json", "html", "ics", "csv"];

    /// <summary>Writes it; a file that cannot be written is a finding.</summary>
    public static Finding? Write(Plan plan, string? format, string? path, Surroundings around)
    {
        if (path is not null) return around.Files.Write(path, file => Write(plan, format, file.Stream));
        if (format == "json" && around.OutputBytes is { } bytes) PlanJson.Write(plan, bytes());
        else around.Output.Write(Of(plan, format));
        return null;
    }

    private static void Write(Plan plan, string? format, Stream to)
    {
        if (format == "json") PlanJson.Write(plan, to);
        else to.Write(Encoding.UTF8.GetBytes(Of(plan, format)));
    }

    private static string Of(Plan plan, string? format) => format switch
    {
        "json" => PlanJson.Write(plan),
        "html" => HtmlSheet.Write(plan),
        "ics" => CalendarSheet.Write(plan),
        "csv" => StepTable.Write(plan),
        _ => TextSheet.Write(plan),
    };
}
