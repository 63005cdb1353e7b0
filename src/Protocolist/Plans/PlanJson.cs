using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using NodaTime;
using Protocolist.Findings;
using Protocolist.Reading;

namespace Protocolist.Plans;

/// <summary>Plans as JSON: the form in which they are kept, explained and revised.</summary>
public static class PlanJson
{
    private static readonly Phrase LaterFormat = new("later-format", "the plan is of format {format}, and this program reads format {current-format}");
    private static readonly Phrase LaterFormatRemedy = new("later-format.remedy", "make the plan again, or use the version of the program that made it");
    private static readonly Phrase PlanIncompleteRemedy = new("plan-incomplete.remedy", "make the plan again; a plan file is not edited by hand");
    private static readonly Phrase PlanUnreadable = new("plan-unreadable", "this plan cannot be read: {why}");

    private static readonly PlanJsonContext Context = new(new JsonSerializerOptions
    {
        WriteIndented = true,
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,

        // People read these files, and they go into no web page; µ and ° stay what they are.
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        NewLine = "\n",
        RespectNullableAnnotations = true,
        RespectRequiredConstructorParameters = true,
        Converters = { new SpanJson(), new MessageJson(), new FigureJson(), new JsonStringEnumConverter<StepState>(JsonNamingPolicy.KebabCaseLower), new JsonStringEnumConverter<Severity>(JsonNamingPolicy.KebabCaseLower) },
    });

    /// <summary>Writes a plan. The same plan gives the same text on any machine.</summary>
    /// <param name="plan">The plan.</param>
    /// <returns>Indented JSON that ends with a line feed.</returns>
    public static string Write(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return ShownText.Lines(JsonSerializer.Serialize(plan, Context.Plan)) + "\n";
    }

    /// <summary>Reads a plan that <see cref="Write"/> wrote.</summary>
    /// <param name="source">The text and its name.</param>
    /// <param name="zones">The time zones by id; null where the plan's is not asked for.</param>
    /// <returns>The plan, or findings: <c>plan-unreadable</c> with line and column, <c>later-format</c>, <c>plan-incomplete</c>, <c>plan-impossible</c>, <c>unknown-zone</c>.</returns>
    public static Checked<Plan> Read(SourceText source, IDateTimeZoneProvider? zones = null)
    {
        ArgumentNullException.ThrowIfNull(source);
        try
        {
            // A later format may lack what this one needs, so its number is looked at first.
            if (FormatOf(source.Text) is { } format && format != Plan.CurrentFormat)
            {
                return new(null, [Finding.Error("later-format", LaterFormat.With(("format", format), ("current-format", Plan.CurrentFormat)), LaterFormatRemedy, SourceSpan.At(source.Name, 1, 1))]);
            }

            var plan = JsonSerializer.Deserialize(source.Text, Context.Plan);
            if (plan is null) return Unreadable("it is empty", SourceSpan.At(source.Name, 1, 1));
            var faults = PlanFaults.Of(plan, zones);
            return faults.IsEmpty ? new(Filled(plan), []) : new(null, [.. faults.Select(f => f with { Where = SourceSpan.At(source.Name, 1, 1) })]);
        }
        catch (JsonException fault)
        {
            return Unreadable(fault.Path is { Length: > 1 } path ? $"the trouble is at {path}" : "it is not JSON that a plan is written in", SourceSpan.At(source.Name, (int)(fault.LineNumber ?? 0) + 1, (int)(fault.BytePositionInLine ?? 0) + 1));
        }
        catch (Exception fault) when (fault is InvalidOperationException or FormatException or ArgumentException or KeyNotFoundException or OverflowException)
        {
            return Unreadable("a value in it is of the wrong kind", SourceSpan.At(source.Name, 1, 1));
        }
    }

    private static int? FormatOf(string text)
    {
        using var document = JsonDocument.Parse(text);
        return document.RootElement.ValueKind == JsonValueKind.Object && document.RootElement.TryGetProperty("formatVersion", out var version) && version.TryGetInt32(out var number) ? number : null;
    }

    private static Checked<Plan> Unreadable(string why, SourceSpan where) =>
        new(null, [Finding.Error("plan-unreadable", PlanUnreadable.With(("why", why)), PlanIncompleteRemedy, where)]);

    /// <summary>What plans written before the first revision of this form do not have.</summary>
    private static Plan Filled(Plan plan) => plan with
    {
        Bench = plan.Bench ?? "",
        Changes = plan.Changes.IsDefault ? [] : plan.Changes,
        Withdrawn = plan.Withdrawn.IsDefault ? [] : plan.Withdrawn,
        Care = [.. plan.Care.Select(c => c with { Id = c.Id ?? "", Dates = c.Dates.IsDefault ? [] : c.Dates, Amount = c.Amount ?? "" })],
        Steps = [.. plan.Steps.Select(s => s.Because.IsDefault ? s with { Because = [] } : s)],
    };
}

[JsonSerializable(typeof(Plan))]
internal sealed partial class PlanJsonContext : JsonSerializerContext;
