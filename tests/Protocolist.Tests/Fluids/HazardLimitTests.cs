using System.Globalization;
using System.Text;
using Protocolist.Fluids;
using Protocolist.Fluids.Safety;

namespace Protocolist.Tests.Fluids;

/// <summary>Hazards of fluids at the limits of their classes, and every word of them once read.</summary>
public class HazardLimitTests
{
    [Fact]
    public void Hazards_and_limits_are_what_was_read_and_kept()
    {
        var text = new StringBuilder();
        foreach (var name in (string[])
        [
            "water", "sea water", "ethanol 4.999 %vol", "ethanol 5 %vol", "ethanol 24 %vol", "ethanol 40 %vol", "ethanol 70 %vol", "ethanol 96 %vol", "ethanol 100 %vol",
            "isopropanol 4.999 %vol", "isopropanol 10 %vol", "isopropanol 30 %vol", "isopropanol 50 %vol", "isopropanol 70 %vol", "isopropanol 100 %vol",
            "formaldehyde stock 37 %mass", "formaldehyde stock 37 %mass, methanol-free", "formaldehyde stock 37 %mass, methanol 15 %mass", "formaldehyde stock 20 %mass, methanol 5 %mass",
            "neutral buffered formalin 10 %", "formaldehyde 20 % w/v", "formaldehyde 0.15 % w/v", "formaldehyde 0.05 % w/v",
        ])
        {
            var h = Hazards.Of(Fluid.Read(name).Value!);
            text.Append(CultureInfo.InvariantCulture, $"{name}: {(h.SignalWord.Length > 0 ? h.SignalWord : "no signal word")}{(h.FlashPoint is { } f ? $", flashes at {f.DegreesCelsius:0.#} +- {h.FlashPointDoubt} degC" : "")}{(h.FlammableCategory is { } c ? $", flammable {c}" : "")}\n");
            text.Append(CultureInfo.InvariantCulture, $"  {string.Join(' ', h.Statements)}\n  transport: {h.Transport}\n  source: {h.Source}\n");
        }

        text.Append('\n');
        foreach (var l in ((Solute[])[Solute.Formaldehyde, Solute.Ethanol, Solute.Isopropanol, Solute.Methanol]).SelectMany(s => s.Limits)) text.Append(CultureInfo.InvariantCulture, $"{l.Substance}, {l.Authority}, {l.Kind}: {l.Ppm} ppm, {l.MilligramsPerCubicMetre:0.###} mg/m3 ({l.Year})\n");
        text.Append('\n');
        foreach (var s in StorageThreshold.All) text.Append(CultureInfo.InvariantCulture, $"{s.Rule}, {s.Place}: {s.Most.Liters:0.0} L of category {string.Join(", ", s.Categories)}\n");
        KeptText.Holds("Fluids/kept/hazards.txt", text.ToString());
    }

    // CLP: flammable liquids of category 2 flash below 23 °C, of category 3 from 23 to 60. The table has 24 at 50 %vol and 22 at 60; 62 at 5 and 49 at 10.
    [Fact]
    public void Categories_change_at_23_and_at_60_degrees()
    {
        for (var tenth = 50; tenth <= 1000; tenth++)
        {
            var h = Hazards.Of(Fluid.Ethanol(tenth / 10.0));
            var flash = h.FlashPoint!.Value.DegreesCelsius;
            Assert.Equal(flash > 60 ? null : flash < 23 ? 2 : 3, h.FlammableCategory);
            Assert.Equal(flash > 60 ? "" : flash < 23 ? "H225" : "H226", h.Statements.FirstOrDefault(s => s is "H225" or "H226") ?? "");
            Assert.Equal(flash < 23 ? "Danger" : h.Statements.IsEmpty ? "" : "Warning", h.SignalWord);
        }
    }

    // CLP entry 605-001-00-5 and the general limits, at each percent by mass and a thousandth below.
    [Theory]
    [InlineData(25, "H301 H311 H331 H314 H317 H335 H341 H350")]
    [InlineData(24.99, "H302 H312 H332 H315 H319 H317 H335 H341 H350")]
    [InlineData(5, "H302 H312 H332 H315 H319 H317 H335 H341 H350")]
    [InlineData(4.99, "H332 H317 H341 H350")]
    [InlineData(1, "H332 H317 H341 H350")]
    [InlineData(0.99, "H317 H350")]
    [InlineData(0.2, "H317 H350")]
    [InlineData(0.19, "H350")]
    [InlineData(0.1, "H350")]
    [InlineData(0.09, "")]
    public void Formaldehyde_is_classed_at_each_limit(double percent, string statements)
    {
        // A working solution holds 12 of methanol to 37 of formaldehyde: its own statement comes from 3 % on and is left aside here.
        var fluid = percent >= 10 ? Fluid.FormaldehydeStock(percent, methanolMassPercent: 0) : NearestAbove(percent);
        Assert.Equal(statements, string.Join(' ', Hazards.Of(fluid).Statements.Where(s => s is not ("H370" or "H371"))));
    }

    [Theory]
    [InlineData(0, "", "UN 2209 formaldehyde solution")]
    [InlineData(2.999, "", "UN 2209 formaldehyde solution")]
    [InlineData(3, "H371", "UN 2209 formaldehyde solution")]
    [InlineData(9.999, "H371", "UN 2209 formaldehyde solution")]
    [InlineData(10, "H370", "UN 2209 formaldehyde solution")]
    [InlineData(15, "H370", "UN 1198 formaldehyde solution, flammable")]
    public void Methanol_of_a_stock_has_its_own_statement(double methanol, string statement, string transport)
    {
        var h = Hazards.Of(Fluid.FormaldehydeStock(37, methanolMassPercent: methanol));
        Assert.Equal(statement, string.Join(' ', h.Statements.Where(s => s is "H370" or "H371")));
        Assert.Equal(h.FlashPoint!.Value.DegreesCelsius > 60 ? transport : "UN 1198 formaldehyde solution, flammable", h.Transport);
        Assert.Equal(methanol >= 3, h.Limits.Any(l => l.Substance == "methanol"));
    }

    // Aqueous ethanol up to 24 %vol is free in transport (special provision 144); a weak stock is no corrosive solution.
    [Theory]
    [InlineData("ethanol 24 %vol", "")]
    [InlineData("ethanol 24.001 %vol", "UN 1170 ethanol solution, class 3")]
    [InlineData("isopropanol 4.999 %vol", "")]
    [InlineData("isopropanol 10 %vol", "UN 1219 isopropanol, class 3")]
    [InlineData("formaldehyde stock 24.999 %mass, methanol-free", "")]
    [InlineData("formaldehyde stock 25 %mass, methanol-free", "UN 2209 formaldehyde solution")]
    [InlineData("formalin 10 %", "")]
    [InlineData("water", "")]
    public void Transport_begins_at_its_limit(string name, string transport) => Assert.Equal(transport, Hazards.Of(Fluid.Read(name).Value!).Transport);

    // By mass: eye irritation of ethanol from 50 %, of isopropanol from 10 %, its narcosis from 20 %.
    [Theory]
    [InlineData("ethanol 49.999 %mass", "")]
    [InlineData("ethanol 50 %mass", "H319")]
    [InlineData("isopropanol 9.999 %mass", "")]
    [InlineData("isopropanol 10 %mass", "H319")]
    [InlineData("isopropanol 19.999 %mass", "H319")]
    [InlineData("isopropanol 20 %mass", "H319 H336")]
    public void Alcohols_irritate_and_stun_from_their_limits(string name, string statements) =>
        Assert.Equal(statements, string.Join(' ', Hazards.Of(Fluid.Read(name).Value!).Statements.Where(s => s is not ("H225" or "H226"))));

    [Theory]
    [InlineData("ethanol 70 %vol", "ethanol")]
    [InlineData("isopropanol 70 %vol", "isopropanol")]
    [InlineData("formalin 10 %", "formaldehyde")]
    [InlineData("formalin 30 %", "formaldehyde methanol")]
    [InlineData("formaldehyde stock 37 %mass", "formaldehyde methanol")]
    [InlineData("sea water", "")]
    public void Limits_are_those_of_the_vapours(string name, string substances) =>
        Assert.Equal(substances, string.Join(' ', ExposureLimits.Of(Fluid.Read(name).Value!).Select(l => l.Substance).Distinct().Order(StringComparer.Ordinal)));

    // Molar mass over 24.45 L/mol at 25 °C: 46.069, 60.096, 32.042, 30.026.
    [Theory]
    [InlineData("ethanol", 1.88421)]
    [InlineData("isopropanol", 2.45791)]
    [InlineData("methanol", 1.31051)]
    [InlineData("formaldehyde", 1.22806)]
    public void A_part_per_million_is_so_many_milligrams(string substance, double perPpm) =>
        Assert.All(((Solute[])[Solute.Formaldehyde, Solute.Ethanol, Solute.Isopropanol, Solute.Methanol]).SelectMany(s => s.Limits).Where(l => l.Substance == substance && !l.Authority.StartsWith("Directive", StringComparison.Ordinal)), l => Assert.Equal(perPpm, l.MilligramsPerCubicMetre / l.Ppm, 0.00001));

    /// <summary>A working solution of just so much by mass, or the least above it.</summary>
    private static Fluid NearestAbove(double massPercent)
    {
        var perVolume = massPercent;
        for (var round = 0; round < 20; round++) perVolume = massPercent * Fluid.FormaldehydeWeightPerVolume(perVolume).DensityAt(20) / 1000;
        return Fluid.FormaldehydeWeightPerVolume(Math.Ceiling(perVolume * 1000) / 1000);
    }
}
