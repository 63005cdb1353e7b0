using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Serialization;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Quantities;
using Protocolist.Reading;

namespace Protocolist.Plans;

/// <summary>An object of a plan as JSON with words beside its facts, for whoever reads the file; where there are facts, the words are not read back.</summary>
internal abstract class ObjectJson<T> : PartJson<T>
    where T : class
{
    private static readonly string[] Suffixes = ["Ml", "G", "Pieces"];

    /// <summary>Beyond a thousand cubic metres or a million million pieces no plan goes; a thousand times as much still fits a whole number of units.</summary>
    private const decimal Most = 1e15m;

    protected sealed override T Of(JsonElement json, JsonSerializerOptions options) => Of(json, FluidJson.KnownTo(options));

    public override void Write(Utf8JsonWriter writer, T value, JsonSerializerOptions options)
    {
        writer.WriteStartObject();
        Members(writer, value, MessageJson.LanguageOf(options));
        writer.WriteEndObject();
    }

    protected abstract void Members(Utf8JsonWriter json, T value, Language language);

    protected abstract T Of(JsonElement json, SubstanceCatalogue known);

    /// <summary>Millilitres, grams or pieces; exact, because a decimal holds thousandths without rounding.</summary>
    protected static decimal InUnit(Amount amount) => amount.Kind == AmountKind.Count ? amount.Units : amount.Units / 1000m;

    protected static Amount FromUnit(AmountKind kind, decimal value) =>
        Math.Abs(value) <= Most
            ? new(kind, (long)(kind == AmountKind.Count ? value : value * 1000))
            : throw new JsonException($"{value} is more than there can be.");

    /// <summary>An amount under a name that ends with its unit: <c>packMl</c>.</summary>
    protected static void Write(Utf8JsonWriter json, string name, Amount amount) => json.WriteNumber(name + Suffixes[(int)amount.Kind], InUnit(amount));

    protected static Amount AmountOf(JsonElement json, string name)
    {
        for (var kind = 0; kind < Suffixes.Length; kind++)
        {
            if (json.TryGetProperty(name + Suffixes[kind], out var value)) return FromUnit((AmountKind)kind, value.GetDecimal());
        }

        throw new JsonException($"'{name}' has no amount.");
    }

    protected static void Write(Utf8JsonWriter json, string name, Fluid? fluid) => json.WriteString(name, fluid?.Name);

    protected static Fluid? FluidOf(JsonElement json, string name, SubstanceCatalogue known) =>
        Part(json, name).GetString() is { } text ? FluidJson.Of(text, known) : null;

    protected static void Write<TWord>(Utf8JsonWriter json, string name, TWord word)
        where TWord : struct, Enum => json.WriteString(name, EnumWords<TWord>.Of(word));

    protected static TWord Word<TWord>(JsonElement json, string name)
        where TWord : struct, Enum => WordJson<TWord>.Of(Text(json, name));

    protected static void Write(Utf8JsonWriter json, string name, Money? money)
    {
        json.WritePropertyName(name);
        if (money is null) json.WriteNullValue();
        else MoneyJson.Write(json, money);
    }

    protected static Money? MoneyOf(JsonElement json, string name)
    {
        var money = Part(json, name);
        return money.ValueKind == JsonValueKind.Null ? null : MoneyJson.Read(money);
    }

    protected static void Write(Utf8JsonWriter json, string name, Message message, Language language)
    {
        json.WritePropertyName(name);
        MessageJson.Write(json, message, language);
    }

    protected static void Write(Utf8JsonWriter json, string name, ImmutableArray<string> texts)
    {
        json.WriteStartArray(name);
        foreach (var text in texts) json.WriteStringValue(text);
        json.WriteEndArray();
    }

    protected static ImmutableArray<string> Texts(JsonElement json, string name) =>
        [.. Part(json, name).EnumerateArray().Select(e => e.GetString() ?? throw new JsonException($"'{name}' lists texts."))];

    protected static string Text(JsonElement json, string name) => Part(json, name).GetString() ?? throw new JsonException($"'{name}' is a text.");

    protected static Message Said(JsonElement json, string name) => MessageJson.Read(Part(json, name));

    protected static int Whole(JsonElement json, string name) => Part(json, name).GetInt32();

    protected static long Count(JsonElement json, string name) => Part(json, name).GetInt64();

    protected static decimal Decimal(JsonElement json, string name) => Part(json, name).GetDecimal();

    protected static double Number(JsonElement json, string name) => FiniteNumber.Of(Part(json, name).GetDouble());

    protected static bool YesNo(JsonElement json, string name) => Part(json, name).GetBoolean();

    protected static JsonElement Part(JsonElement json, string name) =>
        json.TryGetProperty(name, out var value) ? value : throw new JsonException($"'{name}' is missing.");
}

/// <summary>A file names a fluid that none of the substances given makes.</summary>
internal sealed class UnknownFluidException(string name) : JsonException
{
    public string Name => name;
}

/// <summary>A fluid by its name, which reads back as the same fluid.</summary>
internal sealed class FluidJson(SubstanceCatalogue known) : JsonConverter<Fluid>
{
    /// <summary>The substances whose fluids these options read.</summary>
    public static SubstanceCatalogue KnownTo(JsonSerializerOptions options) => Own<FluidJson>.Of(options).Known;

    private SubstanceCatalogue Known => known;

    public static Fluid Of(string name, SubstanceCatalogue known) =>
        Fluid.Read(name, known: known).Value ?? throw new UnknownFluidException(name);

    public override Fluid Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) => Of(reader.GetString() ?? "", known);

    public override void Write(Utf8JsonWriter writer, Fluid value, JsonSerializerOptions options) => writer.WriteStringValue(value.Name);
}

/// <summary>A salt by its name, which says its hydrate.</summary>
internal sealed class SaltJson : JsonConverter<Fluids.Buffers.Salt>
{
    public override Fluids.Buffers.Salt Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        Fluids.Buffers.Salts.Read(reader.GetString() ?? "").Value ?? throw new JsonException("A salt is wanted.");

    public override void Write(Utf8JsonWriter writer, Fluids.Buffers.Salt value, JsonSerializerOptions options) => writer.WriteStringValue(value.Name);
}

/// <summary>A value of a closed list as its kebab-case word.</summary>
internal sealed class WordJson<T> : JsonConverter<T>
    where T : struct, Enum
{
    public static T Of(string word) => EnumWords<T>.All.Contains(word)
        ? EnumWords<T>.Parse(word)
        : throw new JsonException($"'{word}' is not one of {string.Join(", ", EnumWords<T>.All)}.");

    public override T Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) => Of(reader.GetString() ?? "");

    public override void Write(Utf8JsonWriter writer, T value, JsonSerializerOptions options) => writer.WriteStringValue(EnumWords<T>.Of(value));
}
