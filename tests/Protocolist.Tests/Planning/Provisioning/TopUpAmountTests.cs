using static Protocolist.Tests.Planning.PlanFixture;

namespace Protocolist.Tests.Planning.Provisioning;

/// <summary>What is said of topping up. A mammal of 103 g has 100 mL; its jar is a cylinder of 14 by 50 cm.</summary>
public class TopUpAmountTests
{
    private static string Bench(string closure = "closure: screw-lid", string more = "", string room = "20") =>
        $"zone: UTC\ntemperatures: {{room: {room} degC, cold: 4 degC, coldest: 10 degC, hottest: 28 degC}}\nvessels:\n  - {{id: jar, name: jar, inside: {{diameter: 14 cm, height: 50 cm}}, wall: glass, lid: polypropylene, seal: polyethylene, {closure}, count: 1{more}}}\n";

    private static (string Amount, double Millilitres) Of(string fluid, string? bench = null)
    {
        var shelf = Shelf(("kept", "{group: mammal}", $"stages:\n  - {{stage: house, id: house, fluid: {fluid}, ratio: 3}}\n  - {{stage: seal, id: seal, closure: screw lid}}\n"));
        var plan = Plan(Mammal("103 g"), shelf, bench ?? Bench()).Value!;
        Assert.Equal(bench == "zone: UTC\n" ? null : "jar", plan.Step("house")!.Vessel);
        return (plan.Care.First(c => c.Id == "half-yearly-check").Amount.ToString(), plan.Step("house")!.Volume!.Value.Milliliters);
    }

    [Fact]
    public void Formalin_is_topped_up_with_itself_and_no_loss_is_named_that_is_none_of_formalins()
    {
        var (amount, full) = Of("formalin 10 %");

        Assert.Equal($"a tenth down is {Protocolist.Quantities.Measurable.Text(full / 1e7, Protocolist.Quantities.Dimension.OfVolume)}: top up with formalin 10 %, nothing of another strength or buffering", amount);
    }

    [Fact]
    public void Measured_loss_stands_before_any_reckoned_one()
    {
        Assert.EndsWith("; about 35 mL a year is lost, as measured here", Of("formalin 10 %", Bench(more: ", loses-a-year: 35 mL")).Amount, StringComparison.Ordinal);
        Assert.EndsWith("; about 35 mL a year is lost, as measured here", Of("ethanol 70 %vol", Bench(more: ", loses-a-year: 35 mL")).Amount, StringComparison.Ordinal);
    }

    [Fact]
    public void Isopropanol_is_topped_up_with_itself()
    {
        var amount = Of("isopropanol 50 %vol").Amount;

        Assert.Contains(": top up with isopropanol 50 %vol, nothing of another strength or buffering", amount, StringComparison.Ordinal);
    }

    /// <summary>
    /// What is left of 70 %vol after a tenth went is weaker, and what is added is stronger than 70 %. By hand: if what is left is at s, and a tenth of
    /// strength t is added to nine tenths, 0.9 s + 0.1 t = 70 to within the contraction of mixing, which is under 2 % here.
    /// </summary>
    [Fact]
    public void Ethanol_is_brought_back_to_its_strength()
    {
        var (amount, full) = Of("ethanol 70 %vol");
        var match = System.Text.RegularExpressions.Regex.Match(amount, @"^a tenth down is .+: what is left may have sunk to (\d+) %vol; (?:draw off (.+), then )?add (.+) of ethanol (\d+) %vol, or what the reading calls for \(Raoult's law with activity, worst case\)");

        Assert.True(match.Success, amount);
        var (left, add) = (double.Parse(match.Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture), double.Parse(match.Groups[4].Value, System.Globalization.CultureInfo.InvariantCulture));
        Assert.InRange(left, 60, 69.5);
        Assert.InRange(add, 71, 97);
        if (match.Groups[2].Value.Length == 0) Assert.InRange((0.9 * left) + (0.1 * add), 68, 72);
        Assert.InRange(full, 300, 7700); // 154 cm² by 50 cm at the most
    }

    [Theory]
    [InlineData("ethanol 95 %vol")]
    [InlineData("ethanol 90 %vol")]
    public void Strong_ethanol_is_topped_up_with_itself(string fluid) => Assert.Contains($": top up with {fluid}", Of(fluid).Amount, StringComparison.Ordinal);

    [Fact]
    public void Nothing_is_said_where_no_vessel_is_known() => Assert.Equal("", Of("formalin 10 %", "zone: UTC\n").Amount);

    /// <summary>The words of each fluid and closure, read once.</summary>
    [Fact]
    public void Amounts_read_as_they_were_kept() => KeptText.Holds("Planning/Provisioning/kept/top-up.txt", string.Join('\n',
        from fluid in (string[])["ethanol 70 %vol", "ethanol 50 %vol", "ethanol 89 %vol", "isopropanol 50 %vol", "formalin 10 %"]
        from bench in (string[])[Bench(), Bench("closure: loose-lid"), Bench("closure: snap-lid", room: "26")]
        select Of(fluid, bench).Amount));
}
