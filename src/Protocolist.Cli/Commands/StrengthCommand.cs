using System.CommandLine;
using System.Globalization;
using Protocolist.Findings;
using Protocolist.Fluids;

namespace Protocolist.Cli.Commands;

/// <summary><c>protocolist strength ethanol|isopropanol|glycerol --density Q [--at T] [--hydrometer] [--json]</c>: strength from a reading.</summary>
internal static class StrengthCommand
{
    private static readonly Phrase UnknownAlcohol = new("unknown-alcohol", "'{text}' is nothing whose strength is known by density");
    private static readonly Phrase UnknownAlcoholRemedy = new("unknown-alcohol.remedy", "write {all:'or}");

    internal static Command Build()
    {
        var alcohol = new Argument<string>("ALCOHOL") { Description = "ethanol, isopropanol or glycerol" };
        var density = new Option<string>("--density") { Description = "the reading, such as '885.56 kg/m3' or '0.8856 g/mL'", Required = true, HelpName = "Q" };
        var at = FluidInput.At();
        var hydrometer = new Option<bool>("--hydrometer") { Description = "the reading is of a glass hydrometer made for 20 degC, not of a density meter" };
        var json = FluidInput.Json();
        var command = new Command("strength", "Strength from a density meter's or hydrometer's reading.") { alcohol, density, at, hydrometer, json };
        command.SetAction(parsed =>
        {
            var input = new FluidInput(parsed.InvocationConfiguration.Error);
            var kind = Kind(parsed.GetValue(alcohol)!, input);
            var reading = input.Density(parsed.GetValue(density)!, "--density");
            var temperature = input.Temperature(parsed.GetValue(at), "--at");
            if (kind is null || input.HasFailed) return Exits.Unusable;
            var trueDensity = parsed.GetValue(hydrometer) ? AlcoholStrength.HydrometerDensity(reading, temperature) : reading;
            var result = AlcoholStrength.FromDensity(kind, trueDensity, temperature);
            if (result.Value is not { } strength)
            {
                foreach (var finding in result.Findings) input.Fail(finding);
                return Exits.Unusable;
            }

            var decimals = strength.VolumePercentDoubt <= 0.1 ? 2 : 1;
            parsed.InvocationConfiguration.Output.Write((parsed.GetValue(json)
                ? FluidJson.Object(writer =>
                {
                    writer.Number("temperatureC", temperature.DegreesCelsius, 2);
                    writer.Number("densityKgPerM3", trueDensity.KilogramsPerCubicMeter, 2);
                    writer.Number("volumePercent", strength.VolumePercent, decimals);
                    writer.Number("massPercent", strength.MassPercent, decimals);
                })
                : string.Create(
                    CultureInfo.InvariantCulture,
                    $"{parsed.GetValue(alcohol)!.ToLowerInvariant()} {strength.VolumePercent:0.0} %vol (20 degC), {strength.MassPercent:0.0} %mass, "
                    + $"{strength.GramsPer100Millilitres:0.0} g/100 mL; within {strength.VolumePercentDoubt:0.0} %vol and the reading's own error")) + "\n");
            return Exits.Done;
        });
        return command;
    }

    private static Substance? Kind(string text, FluidInput input)
    {
        if (SubstanceCatalogue.Bundled.Find(text.Trim()) is { HasStrengthByDensity: true } known) return known;
        var all = SubstanceCatalogue.Bundled.All.Where(s => s.HasStrengthByDensity).Select(s => s.Id);
        input.Fail(Finding.Error(UnknownAlcohol.Id, UnknownAlcohol.With(("text", text)), UnknownAlcoholRemedy.With(Findings.Argument.Ids("all", all))));
        return null;
    }
}
