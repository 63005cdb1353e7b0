using static Protocolist.Tests.Planning.PlanFixture;

namespace Protocolist.Tests.Planning;

public class LabelWritingTests
{
    [Fact]
    public void Label_has_number_name_date_place_collector_and_fluids()
    {
        var label = Otter().Label;

        Assert.Equal("No. SKP-2027-014", label[0]);
        Assert.Equal("Lutra lutra", label[1]);
        Assert.Equal("found 2027-02-28", label[2]);
        Assert.Equal("Skerry Point, north slip, low-water line", label[3]);
        Assert.Equal("collected by I. Varga", label[4]);
        Assert.Contains("fixed in neutral buffered formalin 10 %, 2027-03-01", label);
        Assert.Contains("FORMALIN", label);
    }

    [Fact]
    public void Body_kept_in_alcohol_says_what_fixed_it_and_not_formalin_in_capitals()
    {
        var label = Otter(("keeping", "ethanol")).Label;

        Assert.Contains(label, l => l.StartsWith("fixed in neutral buffered formalin 10 %", StringComparison.Ordinal));
        Assert.Contains(label, l => l.StartsWith("kept in ethanol 75 %vol", StringComparison.Ordinal));
        Assert.DoesNotContain("FORMALIN", label);
    }

    [Fact]
    public void Lot_without_a_name_says_how_many_of_what()
    {
        var label = Plan(Mammal("1 kg") with { Count = 3, FoundOn = null, Where = null }, Shelf(("any", "{group: mammal}", Fix))).Value!.Label;

        Assert.Equal("No. X-1 (3 animals)", label[0]);
        Assert.Equal("mammal, not identified", label[1]);
        Assert.Equal("found (not known)", label[2]);
    }
}
