using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using Protocolist.Findings;
using Protocolist.Vessels.Glass;

namespace Protocolist.Cli.Commands;

/// <summary>A tank as JSON, rounded to what glass can be measured to; null where the tank is refused.</summary>
internal sealed record TankReport(
    double? PaneThicknessMm,
    double? StockThicknessMm,
    double? EndPaneThicknessMm,
    double? BottomThicknessMm,
    [property: JsonPropertyName("stressMPa")] double? StressMPa,
    double? SafetyFactor,
    double? DeflectionMm,
    double ForceN,
    double FluidMassKg,
    double? TotalMassKg,
    IReadOnlyList<TankReport.Remark> Findings)
{
    public static TankReport Of(TankDesign tank, IEnumerable<Finding> findings) => new(
        Round(tank.LongPane?.Required.Millimeters, 2),
        Round(tank.LongPane?.Stock?.Millimeters, 2),
        Round(tank.EndPane?.Required.Millimeters, 2),
        Round(tank.BottomPane?.Required.Millimeters, 2),
        Round(tank.LongPane?.Stress?.Megapascals, 2),
        Round(tank.LongPane?.SafetyFactor, 2),
        Round(tank.LongPane?.Deflection?.Millimeters, 2),
        Math.Round(tank.Force.Newtons, 1),
        Math.Round(tank.FluidMass.Kilograms, 1),
        Round(tank.TotalMass?.Kilograms, 1),
        [
            .. findings.Select(f => new Remark(
                f.Id,
                f.Severity.ToString().ToLowerInvariant(),
                f.Message.ToString(),
                f.Remedy.ToString(),
                f.Where.IsKnown ? f.Where.ToString() : null)),
        ]);

    public string ToJson() => JsonSerializer.Serialize(this, TankReportJson.Readable.TankReport);

    private static double? Round(double? value, int digits) => value is { } number ? Math.Round(number, digits) : null;

    internal sealed record Remark(string Id, string Severity, string Message, string Remedy, string? Where);
}

/// <summary>Serialization without reflection.</summary>
[JsonSerializable(typeof(TankReport))]
internal sealed partial class TankReportJson : JsonSerializerContext
{
    /// <summary>Indented, and with quotes and signs as people read them: the output is no web page.</summary>
    public static TankReportJson Readable { get; } = new(new JsonSerializerOptions
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        WriteIndented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    });
}
