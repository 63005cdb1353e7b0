using Protocolist.Plans;
using Protocolist.Sheets;

namespace Protocolist.Cli.Commands;

/// <summary>A plan in the form that was asked for.</summary>
internal static class PlanOutput
{
    public static readonly string[] Formats = ["text", "json", "html", "ics", "csv"];

    public static string Of(Plan plan, string? format) => format switch
    {
        "json" => PlanJson.Write(plan),
        "html" => HtmlSheet.Write(plan),
        "ics" => CalendarSheet.Write(plan),
        "csv" => StepTable.Write(plan),
        _ => TextSheet.Write(plan),
    };
}
