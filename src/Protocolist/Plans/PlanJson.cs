using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using Protocolist.Findings;
using Protocolist.Reading;

namespace Protocolist.Plans;

/// <summary>Plans as JSON: the form in which they are kept, explained and revised.</summary>
public static class PlanJson
{
    private static readonly Phrase LaterFormat = new("later-format", "the plan is of format {format}, and this program reads format {current-format}");
    private static readonly Phrase LaterFormatRemedy = new("later-format.remedy", "make the plan again, or use the version of the program that made it");
    private static readonly Phrase PlanIncomplete = new("plan-incomplete", "parts of the plan are missing");
    private static readonly Phrase PlanIncompleteRemedy = new("plan-incomplete.remedy", "make the plan again; a plan file is not edited by hand");
    private static readonly Phrase PlanUnreadable = new("plan-unreadable", "this plan cannot be read: {why}");

    private static readonly PlanJsonContext Context = new(new JsonSerializerOptions
    {
        WriteIndented = true,
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,

        // People read these files, and they go into no web page; µ and ° stay what they are.
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        NewLine = "\n",
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
    /// <returns>The plan, or findings: <c>plan-unreadable</c> with line and column, <c>later-format</c>, <c>plan-incomplete</c>.</returns>
    public static Checked<Plan> Read(SourceText source)
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
            return IsComplete(plan)
                ? new(Filled(plan), [])
                : new(null, [Finding.Error("plan-incomplete", PlanIncomplete, PlanIncompleteRemedy, SourceSpan.At(source.Name, 1, 1))]);
        }
        catch (JsonException fault)
        {
            return Unreadable(fault.Path is { Length: > 1 } path ? $"the trouble is at {path}" : "it is not JSON that a plan is written in", SourceSpan.At(source.Name, (int)(fault.LineNumber ?? 0) + 1, (int)(fault.BytePositionInLine ?? 0) + 1));
        }
        catch (Exception fault) when (fault is InvalidOperationException or FormatException or ArgumentException)
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
        Care = [.. plan.Care.Select(c => c with { Id = c.Id ?? "", Dates = c.Dates.IsDefault ? [] : c.Dates })],
        Steps = [.. plan.Steps.Select(s => s.Because.IsDefault ? s with { Because = [] } : s)],
    };

    /// <summary>A list that was cut out of the file comes back as no list at all.</summary>
    private static bool IsComplete(Plan plan) =>
        plan is { Protocol: not null, Specimen: not null, Costs: not null, Zone: not null, Choices: not null }
        && !plan.Steps.IsDefault && !plan.Recipes.IsDefault && !plan.Purchases.IsDefault && !plan.Findings.IsDefault && !plan.Waste.IsDefault && !plan.Materials.IsDefault && !plan.Costs.DisposalByClass.IsDefault
        && plan.Materials.All(m => !m.Draws.IsDefault && !m.For.IsDefault) && plan.Purchases.All(p => !p.For.IsDefault)
        && plan.Wishes is null or { Vessels: not null, Supplies: not null }
        && !plan.Fluids.IsDefault && !plan.Label.IsDefault && !plan.Care.IsDefault && !plan.Figures.IsDefault
        && plan.Steps.All(s => !s.Sites.IsDefault && !s.Cuts.IsDefault && !s.Instructions.IsDefault && !s.LookFor.IsDefault && !s.Inspections.IsDefault && !s.Materials.IsDefault && !s.Cautions.IsDefault && !s.Figures.IsDefault)
        && plan.Figures.All(f => !f.Inputs.IsDefault) && plan.Findings.All(f => f is { Id: not null, Message.IsEmpty: false, Source: not null, Figures.IsDefault: false })
        && plan.Recipes.All(r => r is { Fluid: not null, Parts.IsDefault: false, For.IsDefault: false });
}

[JsonSerializable(typeof(Plan))]
internal sealed partial class PlanJsonContext : JsonSerializerContext;
