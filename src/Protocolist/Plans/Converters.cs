using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Serialization;
using NodaTime;
using NodaTime.Text;
using UnitsNet;

namespace Protocolist.Plans;

/// <summary>A number that is one: JSON can write more than a number of this machine can hold, and that reads as endless.</summary>
internal static class FiniteNumber
{
    public static double Of(double read) => double.IsFinite(read) ? read : throw new JsonException("A number is more than there can be.");
}

/// <summary>One of the converters that <see cref="PlanJson"/> gives its options; asking the options for it by type would need reflection.</summary>
internal static class Own<T>
    where T : JsonConverter
{
    public static T Of(JsonSerializerOptions options)
    {
        for (var i = 0; i < options.Converters.Count; i++)
        {
            if (options.Converters[i] is T own) return own;
        }

        throw new ArgumentException($"These options have no {typeof(T).Name}.", nameof(options));
    }
}

/// <summary>A part of a plan that is read as a whole; whatever in it is of the wrong kind is a fault of the file, at the part's path.</summary>
internal abstract class PartJson<T> : JsonConverter<T>
{
    public sealed override T Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        using var document = JsonDocument.ParseValue(ref reader);
        return Sound.Of(() => Of(document.RootElement, options));
    }

    protected abstract T Of(JsonElement json, JsonSerializerOptions options);
}

/// <summary>What a value's own guards and the reader of JSON throw, as the fault of the file that it is: so it is told with its path.</summary>
internal static class Sound
{
    public static T Of<T>(Func<T> read)
    {
        try
        {
            return read();
        }
        catch (Exception fault) when (fault is ArgumentException or OverflowException or FormatException or InvalidOperationException or KeyNotFoundException)
        {
            throw new JsonException(fault.Message, fault);
        }
    }
}

/// <summary>A quantity as a number in the unit that its JSON name ends with, rounded to the <see cref="Grid"/>.</summary>
internal abstract class NumberJson<T>(Func<double, T> from, Func<T, double> to) : JsonConverter<T>
{
    public override T Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        var number = FiniteNumber.Of(reader.GetDouble());
        return Sound.Of(() => from(number));
    }

    public override void Write(Utf8JsonWriter writer, T value, JsonSerializerOptions options) => writer.WriteNumberValue(Grid.Round(to(value)));
}

internal sealed class VolumeInMillilitres() : NumberJson<Volume>(n => Volume.FromMilliliters(n), v => v.Milliliters);

internal sealed class MassInGrams() : NumberJson<Mass>(n => Mass.FromGrams(n), m => m.Grams);

internal sealed class TemperatureInCelsius() : NumberJson<Temperature>(n => Temperature.FromDegreesCelsius(n), t => t.DegreesCelsius);

internal sealed class LengthInMillimetres() : NumberJson<Length>(n => Length.FromMillimeters(n), l => l.Millimeters);

internal sealed class DurationInHours() : NumberJson<NodaTime.Duration>(h => Grid.ToMinute(NodaTime.Duration.FromHours(h)), d => Grid.ToMinute(d).TotalHours);

internal sealed class DurationInMinutes() : NumberJson<NodaTime.Duration>(NodaTime.Duration.FromMinutes, d => d.TotalMinutes);

/// <summary>A value as text by a NodaTime pattern.</summary>
internal abstract class PatternJson<T>(IPattern<T> pattern) : JsonConverter<T>
{
    public override T Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        var parsed = pattern.Parse(reader.GetString() ?? "");
        return parsed.Success ? parsed.Value : throw new JsonException(parsed.Exception.Message);
    }

    public override void Write(Utf8JsonWriter writer, T value, JsonSerializerOptions options) => writer.WriteStringValue(pattern.Format(value));
}

/// <summary>With hours and minutes of the offset, as every reader of dates takes them: RFC 3339.</summary>
internal sealed class OffsetDateTimeJson() : PatternJson<OffsetDateTime>(OffsetDateTimePattern.Rfc3339);

internal sealed class LocalDateJson() : PatternJson<LocalDate>(LocalDatePattern.Iso);

/// <summary>A list of values, each as one converter writes it.</summary>
internal abstract class ListJson<T>(JsonConverter<T> one) : JsonConverter<ImmutableArray<T>>
{
    public override ImmutableArray<T> Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        if (reader.TokenType != JsonTokenType.StartArray) throw new JsonException("A list is wanted.");
        var values = ImmutableArray.CreateBuilder<T>();
        while (reader.Read() && reader.TokenType != JsonTokenType.EndArray) values.Add(one.Read(ref reader, typeof(T), options)!);
        return values.DrainToImmutable();
    }

    public override void Write(Utf8JsonWriter writer, ImmutableArray<T> value, JsonSerializerOptions options)
    {
        writer.WriteStartArray();
        foreach (var item in value) one.Write(writer, item, options);
        writer.WriteEndArray();
    }
}

internal sealed class OffsetDateTimesJson() : ListJson<OffsetDateTime>(new OffsetDateTimeJson());

internal sealed class LocalDatesJson() : ListJson<LocalDate>(new LocalDateJson());

/// <summary>Texts by name.</summary>
internal sealed class TextsByNameJson : PartJson<ImmutableSortedDictionary<string, string>>
{
    protected override ImmutableSortedDictionary<string, string> Of(JsonElement json, JsonSerializerOptions options) =>
        json.EnumerateObject().ToImmutableSortedDictionary(
            p => p.Name, p => p.Value.GetString() ?? throw new JsonException($"'{p.Name}' is a text."), StringComparer.Ordinal);

    public override void Write(Utf8JsonWriter writer, ImmutableSortedDictionary<string, string> value, JsonSerializerOptions options)
    {
        writer.WriteStartObject();
        foreach (var (name, text) in value) writer.WriteString(name, text);
        writer.WriteEndObject();
    }
}

/// <summary>Values by name, each as one converter writes it.</summary>
internal abstract class MapJson<T>(JsonConverter<T> one) : JsonConverter<ImmutableSortedDictionary<string, T>>
{
    public override ImmutableSortedDictionary<string, T> Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        if (reader.TokenType != JsonTokenType.StartObject) throw new JsonException();
        var values = ImmutableSortedDictionary.CreateBuilder<string, T>(StringComparer.Ordinal);
        while (reader.Read() && reader.TokenType != JsonTokenType.EndObject)
        {
            var name = reader.GetString()!;
            reader.Read();
            values[name] = one.Read(ref reader, typeof(T), options)!;
        }

        return values.ToImmutable();
    }

    public override void Write(Utf8JsonWriter writer, ImmutableSortedDictionary<string, T> value, JsonSerializerOptions options)
    {
        writer.WriteStartObject();
        foreach (var (name, item) in value)
        {
            writer.WritePropertyName(name);
            one.Write(writer, item, options);
        }

        writer.WriteEndObject();
    }
}

internal sealed class DurationsInHours() : MapJson<NodaTime.Duration>(new DurationInHours());

internal sealed class LocalDateMapJson() : MapJson<LocalDate>(new LocalDateJson());
