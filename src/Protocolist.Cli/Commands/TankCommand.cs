using System.CommandLine;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Notation;
using Protocolist.Quantities;
using Protocolist.Vessels.Glass;
using UnitsNet;

namespace Protocolist.Cli.Commands;

/// <summary><c>tank</c>: the glass of a display tank.</summary>
internal static class TankCommand
{
    private static readonly Phrase GiveOne = new("range-out-of-place.length.remedy", "give one length");

    /// <summary>Builds the command.</summary>
    internal static Command Build()
    {
        var length = Side("--length", "Inside length, such as '1 m'.");
        var width = Side("--width", "Inside width.");
        var depth = Side("--depth", "Depth of the fluid.");
        var fluid = new Option<string>("--fluid") { Description = "The fluid, such as 'ethanol 70 %vol'.", DefaultValueFactory = _ => "water" };
        var top = new Option<string>("--top")
        {
            Description = "free: rimless; framed: a frame or braces hold the upper edge.",
            DefaultValueFactory = _ => "free",
        };
        top.AcceptOnlyFromAmong("free", "framed");
        var json = new Option<bool>("--json") { Description = "Write JSON." };
        var command = new Command("tank", "Pane thickness, stress, deflection and mass of a glass tank.") { length, width, depth, fluid, top, json };
        command.SetAction(parsed =>
        {
            var (output, error) = (parsed.InvocationConfiguration.Output, parsed.InvocationConfiguration.Error);
            List<Finding> faults = [];
            Length Read(Option<string> option) => ReadLength(option.Name, parsed.GetRequiredValue(option), faults);
            var (l, w, d) = (Read(length), Read(width), Read(depth));
            var named = Fluid.Read(parsed.GetRequiredValue(fluid));
            faults.AddRange(named.Findings.Where(f => f.Severity == Severity.Error));
            if (faults.Count > 0 || named.Value is null) return Refuse(faults, error);

            var form = parsed.GetRequiredValue(top) == "free" ? TankTop.Free : TankTop.Framed;
            var result = TankDesigner.Design(TankSpec.For(l, w, d, named.Value, form));
            if (result.Value is not { } tank) return Refuse(result.Findings, error);

            Finding[] findings = [.. named.Findings, .. result.Findings];
            output.Write((parsed.GetValue(json)
                ? TankReport.Of(tank, findings).ToJson()
                : TankText.Of(tank, named.Value, findings)) + "\n");
            return result.HasErrors ? 1 : 0;
        });
        return command;
    }

    private static Option<string> Side(string name, string description) => new(name) { Description = description, Required = true };

    private static Length ReadLength(string option, string text, List<Finding> faults)
    {
        if (!QuantityText.TryRead(text, Dimension.OfLength, out var range, out var fault))
        {
            faults.Add(fault! with { Message = FluidInput.OfOption.With(("option", option), ("message", fault.Message)), Where = default });
        }
        else if (!range.IsPoint)
        {
            faults.Add(Finding.Error(FluidInput.IsRange.Id, FluidInput.IsRange.With(("option", option), ("text", text)), GiveOne));
        }
        else
        {
            return Length.FromMeters(range.Low);
        }

        return Length.Zero;
    }

    private static int Refuse(IEnumerable<Finding> faults, TextWriter error)
    {
        foreach (var fault in faults) error.WriteLine(fault);
        return 2;
    }
}
