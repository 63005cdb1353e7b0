using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Notation;
using Protocolist.Quantities;
using Protocolist.Reading;

namespace Protocolist.Logs;

/// <summary>The readings of one entry.</summary>
internal static class LogReadings
{
    private static readonly Phrase ReadingWithoutUnit = new("reading-without-unit", "the reading of {key}, '{scalar}', has no unit");
    private static readonly Phrase ReadingWithoutUnitRemedy = new("reading-without-unit.remedy", "write it with its unit, as '{example}'");
    private static readonly Phrase WrongDimension = new("wrong-dimension.reading", "'{key}' must be {dimensions: or }, and '{scalar}' is {dimension}");
    private static readonly Phrase WrongDimensionRemedy = new("wrong-dimension.reading.remedy", "write it as '{example}'");
    private static readonly Phrase ReadingImpossible = new("reading-impossible", "a {key} of '{scalar}' cannot be");
    private static readonly Phrase ReadingImpossibleRemedy = new("reading-impossible.remedy", "read the instrument again, and check the unit");

    /// <summary>Each reading with what it may be measured in and an example; bounds are those beyond which it cannot be true.</summary>
    private static readonly (string Key, ReadingKind What, Dimension[] In, double Least, double Most, string Example)[] Known =
    [
        ("strength", ReadingKind.Strength, [Dimension.OfShareByVolume, Dimension.OfShareByMass], 0, 1, "58 %vol"),
        ("density", ReadingKind.Density, [Dimension.OfDensity], 700, 1200, "907 kg/m3"), // alcohols to salt water, OIML R 22 and usual tables
        ("ph", ReadingKind.Ph, [Dimension.None], 0, 14, "6.8"),
        ("temperature", ReadingKind.Temperature, [Dimension.OfTemperature], 233.15, 333.15, "19 degC"), // -40 to 60 °C
        ("level", ReadingKind.Level, [Dimension.OfLength], 0, 10, "21 cm"),
        ("mass", ReadingKind.Mass, [Dimension.OfMass], 0, 1e5, "7.4 kg"),
    ];

    /// <summary>Whether an instrument can have shown this.</summary>
    public static bool CanBe(ReadingKind what, QuantityRange value) =>
        Array.Exists(Known, k => k.What == what && k.In.Contains(value.Dimension) && value.Low >= k.Least && value.High <= k.Most);

    public static ImmutableArray<LogReading> Of(Fields? fields)
    {
        if (fields is null) return [];
        var readings = ImmutableArray.CreateBuilder<LogReading>();
        foreach (var (key, what, dimensions, _, _, example) in Known)
        {
            if (fields.Scalar(key) is not { } scalar) continue;
            if (QuantityText.Read(scalar.Value, out var value) is { } fault)
            {
                fields.Findings.Add(ScalarReading.Found(scalar, fault));
            }
            else if (!dimensions.Contains(value.Dimension))
            {
                fields.Findings.Add(value.Dimension == Dimension.None
                    ? Finding.Error(
                        "reading-without-unit",
                        ReadingWithoutUnit.With(("key", key), ("scalar", Excerpt.Of(scalar.Value))),
                        ReadingWithoutUnitRemedy.With(("example", example)),
                        scalar.Span)
                    : Finding.Error(
                        "wrong-dimension",
                        WrongDimension.With(
                            ("key", key),
                            Argument.Texts("dimensions", dimensions.Select(d => d.ToString())),
                            ("scalar", Excerpt.Of(scalar.Value)),
                            ("dimension", value.Dimension.ToString())),
                        WrongDimensionRemedy.With(("example", example)),
                        scalar.Span));
            }
            else if (!CanBe(what, value))
            {
                fields.Findings.Add(Finding.Error(
                    "reading-impossible",
                    ReadingImpossible.With(("key", key), ("scalar", Excerpt.Of(scalar.Value))),
                    ReadingImpossibleRemedy,
                    scalar.Span));
            }
            else
            {
                readings.Add(new(what, value, scalar.Span));
            }
        }

        fields.Finish();
        return readings.DrainToImmutable();
    }
}
