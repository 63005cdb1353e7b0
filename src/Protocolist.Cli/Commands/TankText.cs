using System.Globalization;
using System.Text;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Vessels.Glass;
using static System.FormattableString;

namespace Protocolist.Cli.Commands;

/// <summary>A tank as text.</summary>
internal static class TankText
{
    public static string Of(TankDesign tank, Fluid fluid, IEnumerable<Finding> findings)
    {
        var spec = tank.Spec;
        var text = new StringBuilder();
        Line(
            string.Create(
                CultureInfo.InvariantCulture,
                $"Tank {spec.Length.Millimeters:0} x {spec.Width.Millimeters:0} mm, {spec.Depth.Millimeters:0} mm of {fluid.Name} "
                + $"({spec.FluidDensity.KilogramsPerCubicMeter:0.0} kg/m3), top {spec.Top.ToString().ToLowerInvariant()}"));
        foreach (var pane in new[] { tank.LongPane, tank.EndPane, tank.BottomPane }.OfType<PaneDesign>()) Line(Pane(pane));
        Line(Invariant($"  push on a long pane {tank.Force.Newtons:0} N, at a third of the depth"));
        Line(tank.TotalMass is { } total
            ? Invariant($"  fluid {tank.FluidMass.Kilograms:0.0} kg, with glass {total.Kilograms:0} kg")
            : Invariant($"  fluid {tank.FluidMass.Kilograms:0.0} kg"));
        foreach (var finding in findings) Line(finding.ToString());
        return text.ToString().TrimEnd();

        void Line(string line) => text.Append(line).Append('\n');
    }

    private static string Pane(PaneDesign pane) => pane is { Stock: { } stock, Stress: { } stress, SafetyFactor: { } safety, Deflection: { } sag }
        ? string.Create(
            CultureInfo.InvariantCulture,
            $"  {pane.Name,-12} needs {pane.Required.Millimeters,5:0.00} mm, take {stock.Millimeters,2:0} mm: "
            + $"stress {stress.Megapascals:0.00} MPa, safety factor {safety:0.0}, bulges {sag.Millimeters:0.00} mm")
        : Invariant($"  {pane.Name,-12} needs {pane.Required.Millimeters,5:0.00} mm, thicker than any in stock");
}
