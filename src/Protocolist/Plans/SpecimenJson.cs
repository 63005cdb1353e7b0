using System.Text.Json;
using NodaTime.Text;
using Protocolist.Specimens;
using UnitsNet;

namespace Protocolist.Plans;

/// <summary>A specimen with everything that was given of it, so that a plan can be made again from the plan alone.</summary>
internal sealed class SpecimenJson : PartJson<Specimen>
{
    private static readonly (string Name, Func<Specimen, double?> Get, Func<Specimen, double, Specimen> With)[] Numbers =
    [
        ("massG", s => s.Mass?.Grams, (s, v) => s with { Mass = Mass.FromGrams(v) }),
        ("massMarginG", s => s.MassMargin?.Grams, (s, v) => s with { MassMargin = Mass.FromGrams(v) }),
        ("lotMassG", s => s.LotMass?.Grams, (s, v) => s with { LotMass = Mass.FromGrams(v) }),
        ("displacementVolumeMl", s => s.DisplacementVolume?.Milliliters, (s, v) => s with { DisplacementVolume = Volume.FromMilliliters(v) }),
        ("lengthMm", s => s.Length?.Millimeters, (s, v) => s with { Length = Millimetres(v) }),
        ("totalLengthMm", s => s.TotalLength?.Millimeters, (s, v) => s with { TotalLength = Millimetres(v) }),
        ("standardLengthMm", s => s.StandardLength?.Millimeters, (s, v) => s with { StandardLength = Millimetres(v) }),
        ("snoutVentLengthMm", s => s.SnoutVentLength?.Millimeters, (s, v) => s with { SnoutVentLength = Millimetres(v) }),
        ("headBodyLengthMm", s => s.HeadBodyLength?.Millimeters, (s, v) => s with { HeadBodyLength = Millimetres(v) }),
        ("carapaceLengthMm", s => s.CarapaceLength?.Millimeters, (s, v) => s with { CarapaceLength = Millimetres(v) }),
        ("mantleLengthMm", s => s.MantleLength?.Millimeters, (s, v) => s with { MantleLength = Millimetres(v) }),
        ("discWidthMm", s => s.DiscWidth?.Millimeters, (s, v) => s with { DiscWidth = Millimetres(v) }),
        ("forearmLengthMm", s => s.ForearmLength?.Millimeters, (s, v) => s with { ForearmLength = Millimetres(v) }),
        ("carapaceWidthMm", s => s.CarapaceWidth?.Millimeters, (s, v) => s with { CarapaceWidth = Millimetres(v) }),
        ("eggDiameterMm", s => s.EggDiameter?.Millimeters, (s, v) => s with { EggDiameter = Millimetres(v) }),
        ("ventralMantleLengthMm", s => s.VentralMantleLength?.Millimeters, (s, v) => s with { VentralMantleLength = Millimetres(v) }),
        ("bodyLengthMm", s => s.BodyLength?.Millimeters, (s, v) => s with { BodyLength = Millimetres(v) }),
        ("girthMm", s => s.Girth?.Millimeters, (s, v) => s with { Girth = Millimetres(v) }),
        ("widthMm", s => s.Width?.Millimeters, (s, v) => s with { Width = Millimetres(v) }),
        ("heightMm", s => s.Height?.Millimeters, (s, v) => s with { Height = Millimetres(v) }),
        ("thicknessMm", s => s.Thickness?.Millimeters, (s, v) => s with { Thickness = Millimetres(v) }),
    ];

    private static readonly (string Name, Func<Specimen, string?> Get, Func<Specimen, string, Specimen> With)[] Texts =
    [
        ("group", s => s.Group, (s, v) => s with { Group = v }),
        ("scientificName", s => s.ScientificName, (s, v) => s with { ScientificName = v }),
        ("higherTaxon", s => s.HigherTaxon, (s, v) => s with { HigherTaxon = v }),
        ("sex", s => Word(s.Sex), (s, v) => s with { Sex = Parse<Sex>(v) }),
        ("lifeStage", s => Word(s.LifeStage), (s, v) => s with { LifeStage = Parse<LifeStage>(v) }),
        ("condition", s => Word(s.Condition), (s, v) => s with { Condition = Parse<Condition>(v) }),
        ("use", s => Word(s.IntendedUse), (s, v) => s with { IntendedUse = Parse<IntendedUse>(v) }),
        ("diedAt", s => s.DiedAt is { } at ? InstantPattern.ExtendedIso.Format(at) : null, (s, v) => s with { DiedAt = Parsed(InstantPattern.ExtendedIso, v) }),
        ("foundOn", s => s.FoundOn is { } on ? LocalDatePattern.Iso.Format(on) : null, (s, v) => s with { FoundOn = Parsed(LocalDatePattern.Iso, v) }),
        ("where", s => s.Where, (s, v) => s with { Where = v }),
        ("howObtained", s => s.HowObtained, (s, v) => s with { HowObtained = v }),
        ("collectedBy", s => s.CollectedBy, (s, v) => s with { CollectedBy = v }),
        ("posture", s => s.Posture, (s, v) => s with { Posture = v }),
        ("notes", s => s.Notes, (s, v) => s with { Notes = v }),
    ];

    protected override Specimen Of(JsonElement root, JsonSerializerOptions options)
    {
        var specimen = new Specimen { Id = root.GetProperty("id").GetString() ?? "", Count = root.GetProperty("count").GetInt32() };
        foreach (var (name, _, with) in Numbers)
        {
            if (root.TryGetProperty(name, out var number)) specimen = with(specimen, FiniteNumber.Of(number.GetDouble()));
        }

        foreach (var (name, _, with) in Texts)
        {
            if (root.TryGetProperty(name, out var text)) specimen = with(specimen, text.GetString() ?? "");
        }

        return root.TryGetProperty("permits", out var permits)
            ? specimen with { Permits = [.. permits.EnumerateArray().Select(p => p.GetString() ?? "")] }
            : specimen;
    }

    public override void Write(Utf8JsonWriter writer, Specimen value, JsonSerializerOptions options)
    {
        writer.WriteStartObject();
        writer.WriteString("id", value.Id);
        writer.WriteNumber("count", value.Count);
        foreach (var (name, get, _) in Texts)
        {
            if (get(value) is { } text) writer.WriteString(name, text);
        }

        foreach (var (name, get, _) in Numbers)
        {
            if (get(value) is { } number) writer.WriteNumber(name, number);
        }

        if (!value.Permits.IsEmpty)
        {
            writer.WriteStartArray("permits");
            foreach (var permit in value.Permits) writer.WriteStringValue(permit);
            writer.WriteEndArray();
        }

        writer.WriteEndObject();
    }

    private static Length Millimetres(double value) => Length.FromMillimeters(value);

    private static string? Word<T>(T? value)
        where T : struct, Enum => value is { } word ? JsonNamingPolicy.KebabCaseLower.ConvertName(word.ToString()) : null;

    private static T Parse<T>(string word)
        where T : struct, Enum =>
        Array.Find(Enum.GetValues<T>(), v => Word<T>(v) == word) is var found && Word<T>(found) == word
            ? found
            : throw new JsonException($"'{word}' is not known here.");

    private static T Parsed<T>(IPattern<T> pattern, string text)
    {
        var parsed = pattern.Parse(text);
        return parsed.Success ? parsed.Value : throw new JsonException(parsed.Exception.Message);
    }
}
