using System.CommandLine;
using System.Globalization;
using Protocolist.Fluids;
using Protocolist.Fluids.Buffers;
using Protocolist.Fluids.Safety;
using UnitsNet;

namespace Protocolist.Cli.Commands;

/// <summary><c>protocolist fluid NAME [--at T] [--json]</c>: a fluid's properties.</summary>
internal static class FluidCommand
{
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
                input.Fail("temperature-out-of-range", Invariant($"{temperature.DegreesCelsius:0.#} degC is outside the range of the density formula"), $"give 0 to 40 degC{(fluid.Kind is FluidKind.Ethanol ? ", for ethanol -20 to 40 degC" : "")}");
            if (fluid is null || input.HasFailed) return Exits.Unusable;
            foreach (var remark in input.Remarks) parsed.InvocationConfiguration.Error.WriteLine(remark);
            parsed.InvocationConfiguration.Output.Write((parsed.GetValue(json) ? Json(fluid, temperature) : Text(fluid, temperature)) + "\n");
            return Exits.Done;
        });
        return command;
    }

    private static bool Covered(Fluid fluid, Temperature at) => at.DegreesCelsius <= 40.0000001 && at.DegreesCelsius >= (fluid.Kind is FluidKind.Ethanol ? -20.0000001 : -0.0000001);

    private static string Json(Fluid fluid, Temperature at) => FluidJson.Object(writer =>
    {
        writer.WriteString("name", fluid.Name);
        writer.Number("temperatureC", at.DegreesCelsius, 2);
        writer.Number("densityKgPerM3", fluid.DensityAt(at).KilogramsPerCubicMeter, Decimals(fluid));
        writer.NumberIfAny("ethanolVolumePercent", fluid.EthanolVolumePercent, 2);
        writer.NumberIfAny("ethanolMassPercent", fluid.EthanolMassPercent, 2);
        writer.NumberIfAny("isopropanolVolumePercent", fluid.IsopropanolVolumePercent, 1);
        writer.NumberIfAny("isopropanolMassPercent", fluid.IsopropanolMassPercent, 1);
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
            Invariant($"  density        {fluid.DensityAt(at).KilogramsPerCubicMeter.ToString($"F{Decimals(fluid)}", CultureInfo.InvariantCulture)} kg/m3 at {at.DegreesCelsius:0.##} degC, within {fluid.DensityDoubt(at).KilogramsPerCubicMeter:0.0#}"),
        };
        if (fluid.Kind is FluidKind.Ethanol) lines.Add(Invariant($"  ethanol        {fluid.EthanolVolumePercent:0.0#} %vol (20 degC), {fluid.EthanolMassPercent:0.0#} %mass"));
        if (fluid.Kind is FluidKind.Isopropanol) lines.Add(Invariant($"  isopropanol    {fluid.IsopropanolVolumePercent:0.0} %vol (20 degC), {fluid.IsopropanolMassPercent:0.0} %mass"));
        if (fluid.HasFormaldehyde)
        {
            lines.Add(Invariant($"  formaldehyde   {fluid.FormaldehydeGramsPerLitre:0.0} g/L = {fluid.FormaldehydeGramsPerLitre / 10:0.0#} % w/v = {fluid.FormaldehydeMassPercent:0.0#} %mass = {fluid.FormaldehydeMolPerLitre:0.00} mol/L"));
            lines.Add(Invariant($"  methanol       {fluid.MethanolMassPercent:0.0} %mass"));
        }

        if (fluid.HasFormaldehyde)
        {
            var profile = BufferGuide.Of(fluid.Buffering);
            var predicted = BufferDiagnosis.PredictedPh(fluid, at);
            lines.Add(predicted is { } ph ? Invariant($"  pH             {ph:0.0}, within {BufferDiagnosis.PhDoubt:0.0}") : Invariant($"  pH             usually {profile.PhLow:0.0} to {profile.PhHigh:0.0}"));
            lines.Add($"  buffering      {Word(fluid.Buffering)}: {profile.Can}");
            lines.Add($"                 but: {profile.Cannot}");
        }

        var hazards = Hazards.Of(fluid);
        if (hazards.FlashPoint is { } flash) lines.Add(Invariant($"  flash point    {flash.DegreesCelsius:0} degC, within {hazards.FlashPointDoubt:0} K"));
        if (hazards.SignalWord.Length > 0) lines.Add($"  hazards        {hazards.SignalWord}: {string.Join(" ", hazards.Statements)}");
        if (hazards.Transport.Length > 0) lines.Add($"  transport      {hazards.Transport}");
        foreach (var limit in hazards.Limits) lines.Add(Invariant($"  air            {limit.Substance} {limit.Ppm:0.###} ppm {Word(limit.Kind)} ({limit.Authority}, {limit.Year})"));
        if (hazards.SignalWord.Length > 0) lines.Add("  The product's own safety data sheet and your local rules prevail.");
        return string.Join('\n', lines);
    }

    // Isopropanol and formaldehyde are known to a kilogram or so, water and ethanol to a tenth; the formula's own digit is kept for comparison.
    private static int Decimals(Fluid fluid) => fluid.HasFormaldehyde || fluid.Kind is FluidKind.Isopropanol ? 1 : 2;

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
