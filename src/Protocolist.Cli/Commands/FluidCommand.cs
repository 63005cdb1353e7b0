using System.CommandLine;
using System.Globalization;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Fluids.Buffers;
using Protocolist.Fluids.Safety;
using UnitsNet;

namespace Protocolist.Cli.Commands;

/// <summary><c>protocolist fluid NAME [--at T] [--json]</c>: a fluid's properties.</summary>
internal static class FluidCommand
{
    private static readonly Phrase OutOfRange = new("temperature-out-of-range.fluid", "{at:0.# degC} is outside the range of the density formula");
    private static readonly Phrase OutOfRangeRemedy = new("temperature-out-of-range.fluid.remedy", "give {low:0} to {high:0} degC");

    internal static Command Build()
    {
        var name = new Argument<string>("NAME") { Description = "a fluid as people write it, such as 'ethanol 70 %vol' or 'neutral buffered formalin 10 %'" };
        var at = FluidInput.At();
        var json = FluidInput.Json();
        var command = new Command("fluid", "A fluid's density, strength on every basis, pH and hazards.") { name, at, json };
        command.SetAction(parsed =>
        {
            var input = new FluidInput(parsed.InvocationConfiguration.Error);
            var fluid = input.Fluid(parsed.GetValue(name)!);
            var temperature = input.Temperature(parsed.GetValue(at), "--at");
            if (fluid is not null && !input.HasFailed && !Covered(fluid, temperature))
                input.Fail(Finding.Error(
                    "temperature-out-of-range",
                    OutOfRange.With(("at", temperature)),
                    OutOfRangeRemedy.With(("low", fluid.Substance.LowestCelsius), ("high", fluid.Substance.HighestCelsius))));
            if (fluid is null || input.HasFailed) return Exits.Unusable;
            foreach (var remark in input.Remarks) parsed.InvocationConfiguration.Error.WriteLine(remark);
            parsed.InvocationConfiguration.Output.Write((parsed.GetValue(json) ? Json(fluid, temperature) : Text(fluid, temperature)) + "\n");
            return Exits.Done;
        });
        return command;
    }

    private static bool Covered(Fluid fluid, Temperature at) =>
        at.DegreesCelsius <= fluid.Substance.HighestCelsius + 1e-7 && at.DegreesCelsius >= fluid.Substance.LowestCelsius - 1e-7;

    private static string Json(Fluid fluid, Temperature at) => FluidJson.Object(writer =>
    {
        writer.WriteString("name", fluid.Name);
        writer.Number("temperatureC", at.DegreesCelsius, 2);
        writer.Number("densityKgPerM3", fluid.DensityAt(at).KilogramsPerCubicMeter, Decimals(fluid));
        if (fluid.VolumePercent is { } volumePercent)
        {
            writer.Number($"{fluid.Substance.Id}VolumePercent", volumePercent, Decimals(fluid));
            writer.NumberIfAny($"{fluid.Substance.Id}MassPercent", fluid.MassPercent, Decimals(fluid));
        }

        writer.NumberIfAny("formaldehydeGPerL", fluid.FormaldehydeGramsPerLitre, 1);
        writer.NumberIfAny("formaldehydeMassPercent", fluid.FormaldehydeMassPercent, 2);
        writer.WriteString("buffering", Word(fluid.Buffering));
        writer.NumberIfAny("ph", BufferDiagnosis.PredictedPh(fluid, at), 1);
        writer.NumberIfAny("flashPointC", Hazards.Of(fluid).FlashPoint?.DegreesCelsius, 0);
    });

    private static string Text(Fluid fluid, Temperature at)
    {
        var lines = new List<string>
        {
            fluid.Name,
            string.Create(
                CultureInfo.InvariantCulture,
                $"  density        {fluid.DensityAt(at).KilogramsPerCubicMeter.ToString($"F{Decimals(fluid)}", CultureInfo.InvariantCulture)} kg/m3 "
                + $"at {at.DegreesCelsius:0.##} degC, within {fluid.DensityDoubt(at).KilogramsPerCubicMeter:0.0#}"),
        };
        if (fluid.VolumePercent is { } volumePercent)
        {
            var format = Decimals(fluid) == 2 ? "0.0#" : "0.0";
            lines.Add($"  {fluid.Substance.Noun,-14} {Percent(volumePercent)} %vol (20 degC), {Percent(fluid.MassPercent ?? 0)} %mass");
            string Percent(double value) => value.ToString(format, CultureInfo.InvariantCulture);
        }

        if (fluid.HasFormaldehyde)
        {
            lines.Add(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"  formaldehyde   {fluid.FormaldehydeGramsPerLitre:0.0} g/L = {fluid.FormaldehydeGramsPerLitre / 10:0.0#} % w/v = "
                    + $"{fluid.FormaldehydeMassPercent:0.0#} %mass = {fluid.FormaldehydeMolPerLitre:0.00} mol/L"));
            lines.Add(Invariant($"  methanol       {fluid.MethanolMassPercent:0.0} %mass"));
        }

        if (fluid.HasFormaldehyde)
        {
            var profile = BufferGuide.Of(fluid.Buffering);
            var predicted = BufferDiagnosis.PredictedPh(fluid, at);
            lines.Add(predicted is { } ph
                ? Invariant($"  pH             {ph:0.0}, within {BufferDiagnosis.PhDoubt:0.0}")
                : Invariant($"  pH             usually {profile.PhLow:0.0} to {profile.PhHigh:0.0}"));
            lines.Add($"  buffering      {Word(fluid.Buffering)}: {profile.Can}");
            lines.Add($"                 but: {profile.Cannot}");
        }

        var hazards = Hazards.Of(fluid);
        if (hazards.FlashPoint is { } flash) lines.Add(Invariant($"  flash point    {flash.DegreesCelsius:0} degC, within {hazards.FlashPointDoubt:0} K"));
        if (hazards.SignalWord.Length > 0) lines.Add($"  hazards        {hazards.SignalWord}: {string.Join(" ", hazards.Statements)}");
        if (hazards.Transport.Length > 0) lines.Add($"  transport      {hazards.Transport}");
        foreach (var limit in hazards.Limits)
            lines.Add(Invariant($"  air            {limit.Substance} {limit.Ppm:0.###} ppm {Word(limit.Kind)} ({limit.Authority}, {limit.Year})"));
        if (hazards.SignalWord.Length > 0) lines.Add("  The product's own safety data sheet and your local rules prevail.");
        return string.Join('\n', lines);
    }

    // What is known to a kilogram or so only is not shown to hundredths; of water and ethanol the formula's own digit is kept for comparison.
    private static int Decimals(Fluid fluid) => fluid.DensityDoubt(Temperature.FromDegreesCelsius(20)).KilogramsPerCubicMeter < 0.5 ? 2 : 1;

    private static string Word(Buffering buffering) => buffering switch
    {
        Buffering.PhosphateSodiumHydroxide => "phosphate-sodium-hydroxide",
        Buffering.SeaWater => "sea-water",
        Buffering.MarbleChips => "marble-chips",
        _ => buffering.ToString().ToLowerInvariant(),
    };

    private static string Word(ExposureKind kind) => kind switch
    {
        ExposureKind.WorkingDay => "over a working day",
        ExposureKind.FifteenMinutes => "over 15 minutes",
        ExposureKind.Ceiling => "at any time",
        ExposureKind.ActionLevel => "action level",
        _ => "immediately dangerous",
    };

    private static string Invariant(FormattableString text) => FormattableString.Invariant(text);
}
