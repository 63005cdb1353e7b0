using System.Buffers;
using System.Collections.Immutable;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using NodaTime;
using Protocolist.Findings;
using Protocolist.Fluids;

namespace Protocolist.Plans;

/// <summary>Plans as JSON: the form in which they are kept, explained and revised.</summary>
public static class PlanJson
{
    private static readonly Phrase LaterFormat = new("later-format", "the plan is of format {format}, and this program reads format {current-format}");
    private static readonly Phrase LaterFormatRemedy = new("later-format.remedy", "use the version of the program that made it, or a later one");
    private static readonly Phrase EarlierFormat = new("earlier-format", "the plan is of format {format}, and this program reads format {current-format}");
    private static readonly Phrase EarlierFormatRemedy = new(
        "earlier-format.remedy", "make the plan again from its specimen, or use the version of the program that made it");
    private static readonly Phrase PlanUnreadable = new("plan-unreadable", "this plan cannot be read: {why}");
    private static readonly Phrase PlanUnreadableRemedy = new("plan-unreadable.remedy", "make the plan again; a plan file is not edited by hand");
    private static readonly Phrase NoJson = new("plan-unreadable.no-json", "it is not JSON, or is cut off");
    private static readonly Phrase NoPlan = new("plan-unreadable.no-plan", "it has no 'formatVersion' as plans have");
    private static readonly Phrase OutOfRange = new("plan-unreadable.value", "a value in it is beyond what such a value can be");
    private static readonly Phrase UnknownFluid = new("plan-unreadable.fluid", "'{fluid}' at {path} is of no substance that is known here");
    private static readonly Phrase UnknownFluidRemedy = new("plan-unreadable.fluid.remedy", "read it with the substances that it was planned with");
    private static readonly Phrase Amiss = new("plan-unreadable.at", "something is missing, twice there, or of the wrong kind at {path}");

    // People read these files, and they go into no web page; µ and ° stay what they are.
    private static readonly JsonWriterOptions Layout = new()
    {
        Indented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        SkipValidation = true,
    };

    private static readonly JsonTypeInfo<Plan> Shape = ShapeIn(Language.English, SubstanceCatalogue.Bundled);

    private static JsonTypeInfo<Plan> ShapeIn(Language language, SubstanceCatalogue known) => (JsonTypeInfo<Plan>)new JsonSerializerOptions
    {
        TypeInfoResolver = PlanJsonContext.Default.WithAddedModifier(AllThatIsWrittenIsRead),
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
        AllowDuplicateProperties = false,
        RespectNullableAnnotations = true,
        RespectRequiredConstructorParameters = true,
        Converters =
        {
            new SpanJson(),
            new MessageJson(language),
            new FluidJson(known),
            new FigureJson(),
            new JsonStringEnumConverter<StepState>(JsonNamingPolicy.KebabCaseLower, allowIntegerValues: false),
            new JsonStringEnumConverter<Severity>(JsonNamingPolicy.KebabCaseLower, allowIntegerValues: false),
        },
    }.GetTypeInfo(typeof(Plan));

    /// <summary>Writes a plan. The same plan gives the same text on any machine.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="language">The language of the words that stand beside the facts; English where none is given.</param>
    /// <returns>Indented JSON that ends with a line feed.</returns>
    /// <remarks>
    /// A plan that is read is the same plan whatever its language: facts are compared, not words. Where no language is laid over it, it says the words of
    /// its file; so a file that is kept for good is best kept in English.
    /// </remarks>
    public static string Write(Plan plan, Language? language = null)
    {
        using var bytes = Written(plan, language);
        return Encoding.UTF8.GetString(bytes.Written);
    }

    /// <summary>Writes a plan as UTF-8, without a text in between: the same bytes as of the text.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="utf8">Where to.</param>
    /// <param name="language">The language of the words; English where none is given.</param>
    public static void Write(Plan plan, Stream utf8, Language? language = null)
    {
        ArgumentNullException.ThrowIfNull(utf8);
        using var bytes = Written(plan, language);
        utf8.Write(bytes.Written);
    }

    /// <summary>Reads a plan that <see cref="Write(Plan, Language?)"/> wrote.</summary>
    /// <param name="source">The text and its name.</param>
    /// <param name="zones">The time zones by id; null where the plan's is not asked for.</param>
    /// <param name="substances">The substances that there are; null for the bundled ones.</param>
    /// <returns>
    /// The plan, or error findings: <c>plan-unreadable</c> with line and column, <c>earlier-format</c>, <c>later-format</c>; with the path in the file
    /// <c>plan-incomplete</c>,
    /// <c>plan-impossible</c>; <c>unknown-zone</c>.
    /// </returns>
    public static Checked<Plan> Read(SourceText source, IDateTimeZoneProvider? zones = null, SubstanceCatalogue? substances = null)
    {
        ArgumentNullException.ThrowIfNull(source);
        try
        {
            var shape = substances is null || substances == SubstanceCatalogue.Bundled ? Shape : ShapeIn(Language.English, substances);

            // Another format may lack what this one needs, so its number is looked at first.
            using var file = JsonDocument.Parse(source.Text);
            if (FormatOf(file.RootElement) is not { } format) return Unreadable(NoPlan, SourceSpan.At(source.Name, 1, 1));
            if (format != Plan.CurrentFormat) return new(null, [OtherFormat(format, source.Name)]);
            var parts = shape.Properties.Select(p => p.Name).Where(name => !file.RootElement.TryGetProperty(name, out _));
            if (FaultyParts.Missing(parts) is { IsEmpty: false } missing) return Refused(missing, source);
            if (JsonSerializer.Deserialize(source.Text, shape) is not { } plan) return Unreadable(NoPlan, SourceSpan.At(source.Name, 1, 1));
            var faults = PlanFaults.Of(plan, zones);
            if (faults.IsEmpty) faults = Otherwise(file.RootElement, plan);
            return faults.IsEmpty ? new(plan, []) : Refused(faults, source);
        }
        catch (UnknownFluidException unknown)
        {
            var where = SourceSpan.At(source.Name, (int)(unknown.LineNumber ?? 0) + 1, (int)(unknown.BytePositionInLine ?? 0) + 1);
            var why = UnknownFluid.With(("fluid", Excerpt.Of(unknown.Name)), ("path", PathOf(unknown)));
            return new(null, [Finding.Error("plan-unreadable", PlanUnreadable.With(("why", why)), UnknownFluidRemedy, where)]);
        }
        catch (JsonException fault)
        {
            var why = PathOf(fault) is { Length: > 0 } path ? Amiss.With(("path", path)) : NoJson;
            return Unreadable(why, SourceSpan.At(source.Name, (int)(fault.LineNumber ?? 0) + 1, (int)(fault.BytePositionInLine ?? 0) + 1));
        }
        catch (Exception fault) when (fault is ArgumentException or OverflowException or FormatException or InvalidOperationException or KeyNotFoundException)
        {
            return Unreadable(OutOfRange, SourceSpan.At(source.Name, 1, 1));
        }
    }

    /// <summary>What the file says otherwise than the plan that was read of it: where nothing is lost in reading, there is nothing.</summary>
    private static ImmutableArray<Finding> Otherwise(JsonElement file, Plan plan)
    {
        using var bytes = Written(plan, null);
        var reader = new Utf8JsonReader(bytes.Written);
        using var written = JsonDocument.ParseValue(ref reader);
        return FaultyParts.Findings(ReadBack.Differences(file, written.RootElement));
    }

    private static PooledBytes Written(Plan plan, Language? language)
    {
        WholePlan.ThrowIfIncomplete(plan);
        var bytes = new PooledBytes();
        var shape = language is null || language == Language.English ? Shape : ShapeIn(language, SubstanceCatalogue.Bundled);
        using (var json = new Utf8JsonWriter(bytes, Layout)) JsonSerializer.Serialize(json, plan, shape);
        bytes.Write("\n"u8);
        if (ShownText.IsShown(bytes.Written)) return bytes;
        var shown = Encoding.UTF8.GetBytes(ShownText.Lines(Encoding.UTF8.GetString(bytes.Written)));
        bytes.Clear();
        bytes.Write(shown);
        return bytes;
    }

    private static Finding OtherFormat(int format, string file) =>
        format > Plan.CurrentFormat
            ? Finding.Error(
                "later-format",
                LaterFormat.With(("format", format), ("current-format", Plan.CurrentFormat)),
                LaterFormatRemedy,
                SourceSpan.At(file, 1, 1))
            : Finding.Error(
                "earlier-format",
                EarlierFormat.With(("format", format), ("current-format", Plan.CurrentFormat)),
                EarlierFormatRemedy,
                SourceSpan.At(file, 1, 1));

    private static int? FormatOf(JsonElement root) =>
        root.ValueKind == JsonValueKind.Object && root.TryGetProperty("formatVersion", out var format)
        && format.ValueKind == JsonValueKind.Number && format.TryGetInt32(out var number) ? number : null;

    /// <summary>The path without the root's sign; empty where there is none.</summary>
    private static string PathOf(JsonException fault) => fault.Path is { Length: > 1 } path ? path[2..] : "";

    private static Checked<Plan> Refused(ImmutableArray<Finding> faults, SourceText source) =>
        new(null, [.. faults.Select(f => f with { Where = SourceSpan.At(source.Name, 1, 1) })]);

    private static Checked<Plan> Unreadable(Message why, SourceSpan where) =>
        new(null, [Finding.Error("plan-unreadable", PlanUnreadable.With(("why", why)), PlanUnreadableRemedy, where)]);

    /// <summary>Whatever is written of a plan is there when it is read: a part that was cut out of the file is no empty part.</summary>
    private static void AllThatIsWrittenIsRead(JsonTypeInfo type)
    {
        if (type.Type.Assembly != typeof(Plan).Assembly) return;
        foreach (var property in type.Properties.Where(p => p.Get is not null))
        {
            property.Set ??= static (_, _) => { };
            property.IsRequired = true;
        }
    }
}

[JsonSerializable(typeof(Plan))]
internal sealed partial class PlanJsonContext : JsonSerializerContext;
