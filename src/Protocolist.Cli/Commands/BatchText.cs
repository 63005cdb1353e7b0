using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using NodaTime.Text;
using Protocolist.Findings;
using static System.FormattableString;

namespace Protocolist.Cli.Commands;

/// <summary>One row of a batch as a line of text, of JSON, or of CSV.</summary>
internal static class BatchText
{
    private static readonly JsonWriterOptions OneLine = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    public static string[] Heading { get; } =
    [
        "row", "line", "specimen", "protocol", "startable", "start", "end", "hands-on minutes", "vessel", "cost", "currency", "errors", "warnings",
        "faults", "digest",
    ];

    public static string Line(BatchRow row)
    {
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"{row.Number} {(row.SpecimenId.Length > 0 ? row.SpecimenId : "(no number)")}: ");
        if (row.Plan is not { } plan) return text.Append("not planned: ").Append(string.Join("; ", Errors(row).Select(f => f.Message))).ToString();
        text.Append(
            CultureInfo.InvariantCulture,
            $"{plan.Protocol.Id}, {(row.Startable ? "may start" : "DO NOT START")}, {Day(plan.Start)} to {Day(plan.End)}, "
            + $"{row.HandsOn.TotalHours:0.0} h hands-on");
        if (row.FinalVessel is { } vessel) text.Append(", ").Append(vessel);
        if (row.Total is { } total) text.Append(", ").Append(total);
        text.Append(CultureInfo.InvariantCulture, $", {Counts.Of(row.Count(Severity.Error), "error")}, {Counts.Of(row.Count(Severity.Warning), "warning")}");
        return text.ToString();
    }

    public static IEnumerable<string> Cells(BatchRow row) =>
    [
        Invariant($"{row.Number}"),
        Invariant($"{row.Line}"),
        row.SpecimenId,
        row.Plan?.Protocol.Id ?? "",
        row.Startable ? "yes" : "no",
        Moment(row.Plan?.Start),
        Moment(row.Plan?.End),
        Invariant($"{row.HandsOn.TotalMinutes:0}"),
        row.FinalVessel ?? "",
        row.Total?.Amount.ToString(CultureInfo.InvariantCulture) ?? "",
        row.Total?.Currency ?? "",
        Invariant($"{row.Count(Severity.Error)}"),
        Invariant($"{row.Count(Severity.Warning)}"),
        string.Join("; ", Errors(row).Select(f => f.ToString())),
        row.Digest,
    ];

    public static string Json(BatchRow row)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, OneLine))
        {
            json.WriteStartObject();
            json.WriteNumber("row", row.Number);
            json.WriteNumber("line", row.Line);
            json.WriteString("specimen", row.SpecimenId);
            json.WriteBoolean("startable", row.Startable);
            if (row.Plan is { } plan)
            {
                json.WriteString("protocol", plan.Protocol.Id);
                json.WriteNumber("revision", plan.Protocol.Revision);
                if (plan.Start is not null) json.WriteString("start", Moment(plan.Start));
                if (plan.End is not null) json.WriteString("end", Moment(plan.End));
                json.WriteString("zone", plan.Zone);
                json.WriteNumber("handsOnMinutes", Math.Round(row.HandsOn.TotalMinutes));
                if (row.FinalVessel is { } vessel) json.WriteString("vessel", vessel);
                CompareJson.Money(json, "cost", row.Total);
                CompareJson.Money(json, "cash", plan.Costs.Cash);
                CompareJson.Money(json, "careByYear", plan.Costs.CareByYear);
                if ((row.Total ?? plan.Costs.Cash) is { } total) json.WriteString("currency", total.Currency);
            }

            json.WriteNumber("errors", row.Count(Severity.Error));
            json.WriteNumber("warnings", row.Count(Severity.Warning));
            json.WriteStartArray("findings");
            foreach (var finding in row.Findings.Where(f => f.Severity != Severity.Note)) CompareJson.Finding(json, finding);
            json.WriteEndArray();
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.ToArray());
    }

    public static IEnumerable<Finding> Errors(BatchRow row) => row.Findings.Where(f => f.Severity == Severity.Error);

    public static string Moment(NodaTime.OffsetDateTime? at) => at is { } moment ? OffsetDateTimePattern.Rfc3339.Format(moment) : "";

    private static string Day(NodaTime.OffsetDateTime? at) => at is { } moment ? LocalDatePattern.Iso.Format(moment.Date) : "no date";
}
