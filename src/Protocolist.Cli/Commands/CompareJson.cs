using System.Text.Encodings.Web;
using System.Text.Json;
using Protocolist.Findings;
using Protocolist.Quantities;

namespace Protocolist.Cli.Commands;

/// <summary>A comparison as JSON.</summary>
internal static class CompareJson
{
    private static readonly JsonWriterOptions Indented = new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    public static string Of(Comparison comparison, IEnumerable<Finding> findings)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, Indented))
        {
            json.WriteStartObject();
            json.WriteString("specimen", comparison.SpecimenId);
            json.WriteString("protocol", comparison.Protocol.Id);
            json.WriteNumber("revision", comparison.Protocol.Revision);
            json.WriteNumber("weighed", comparison.Weighed);
            json.WriteStartArray("ways");
            foreach (var way in comparison.Ways) Way(json, way);
            json.WriteEndArray();
            json.WriteStartArray("findings");
            foreach (var finding in findings) Finding(json, finding);
            json.WriteEndArray();
            json.WriteEndObject();
        }

        return System.Text.Encoding.UTF8.GetString(stream.ToArray());
    }

    public static void Finding(Utf8JsonWriter json, Finding finding)
    {
        json.WriteStartObject();
        json.WriteString("id", finding.Id);
        json.WriteString("severity", finding.Severity.ToString().ToLowerInvariant());
        json.WriteString("message", finding.Message.ToString());
        json.WriteString("remedy", finding.Remedy.ToString());
        json.WriteString("where", finding.Where.ToString());
        if (finding.Subject.Length > 0) json.WriteString("subject", finding.Subject);
        json.WriteEndObject();
    }

    public static void Money(Utf8JsonWriter json, string name, Money? money)
    {
        if (money is null) return;
        json.WriteNumber(name + "Minor", money.Minor);
    }

    private static void Way(Utf8JsonWriter json, ComparedWay way)
    {
        json.WriteStartObject();
        json.WriteString("name", way.Name);
        Pairs(json, "choices", way.Choices);
        Pairs(json, "vessels", way.Vessels);
        Pairs(json, "supplies", way.Supplies);
        json.WriteStartObject("wishes");
        Pairs(json, "vessels", way.Wishes.Vessels);
        Pairs(json, "supplies", way.Wishes.Supplies);
        json.WriteEndObject();
        if (!way.GoodFor.IsEmpty) json.WriteString("goodFor", way.GoodFor.ToString());
        json.WriteBoolean("startable", way.Startable);
        if (way.Days is { } days) json.WriteNumber("days", Math.Round(days, 3));
        json.WriteNumber("handsOnHours", Math.Round(way.HandsOnHours, 3));
        Money(json, "costNow", way.CostNow);
        Money(json, "costOverTenYears", way.OverTenYears);
        if ((way.CostNow ?? way.OverTenYears) is { } money) json.WriteString("currency", money.Currency);
        json.WriteNumber("formaldehydeStockL", Math.Round(way.FormaldehydeStockLitres, 3));
        json.WriteNumber("flammableAlcoholL", Math.Round(way.FlammableAlcoholLitres, 3));
        json.WriteNumber("errors", way.Errors);
        json.WriteNumber("warnings", way.Warnings);
        json.WriteStartArray("findings");
        foreach (var finding in way.Findings) Finding(json, finding);
        json.WriteEndArray();
        json.WriteStartArray("remarks");
        foreach (var remark in way.Remarks) json.WriteStringValue(remark.ToString());
        json.WriteEndArray();
        json.WriteBoolean("dominated", way.DominatedBy is not null);
        if (way.DominatedBy is { } better) json.WriteString("dominatedBy", better);
        json.WriteEndObject();
    }

    private static void Pairs(Utf8JsonWriter json, string name, IEnumerable<KeyValuePair<string, string>> pairs)
    {
        json.WriteStartObject(name);
        foreach (var (key, value) in pairs) json.WriteString(key, value);
        json.WriteEndObject();
    }
}
