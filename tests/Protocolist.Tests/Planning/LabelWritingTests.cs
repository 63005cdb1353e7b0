using static Protocolist.Tests.Planning.PlanFixture;

namespace Protocolist.Tests.Planning;

public class LabelWritingTests
{
    [Fact]
    public void Label_has_number_name_date_place_collector_and_fluids()
    {
        var label = Otter().Label.Texts();

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
        var label = Otter(("keeping", "ethanol")).Label.Texts();

        Assert.Contains(label, l => l.StartsWith("fixed in neutral buffered formalin 10 %", StringComparison.Ordinal));
        Assert.Contains(label, l => l.StartsWith("kept in ethanol 75 %vol", StringComparison.Ordinal));
        Assert.DoesNotContain("FORMALIN", label);
    }

    /// <summary>Two hundred copepods of 1 mg: twenty of them go whole into a tube, and the jar holds the rest.</summary>
    [Fact]
    public void What_was_taken_whole_is_not_counted_into_the_jar()
    {
        var lot = Mammal("1 mg") with { Group = "small-crustacean", Count = 200 };
        var label = Plan(lot, Shelf(("any", "{group: small-crustacean}", "stages:\n  - {stage: sample, id: record, covers: [tissue]}\n" + Fix["stages:\n".Length..]))).Value!.Label.Texts();

        Assert.Equal("No. X-1 (180 animals, 20 more in a tube for DNA)", label[0]);
    }

    [Fact]
    public void Lot_without_a_name_says_how_many_of_what()
    {
        var label = Plan(Mammal("1 kg") with { Count = 3, FoundOn = null, Where = null }, Shelf(("any", "{group: mammal}", Fix))).Value!.Label.Texts();

        Assert.Equal("No. X-1 (3 animals)", label[0]);
        Assert.Equal("mammal, not identified", label[1]);
        Assert.Equal("found (not known)", label[2]);
    }

    private const string Two = "stages:\n  - {stage: immerse, id: a, fluid: formalin 10 %, ratio: 10, last: 24 h}\n  - {stage: immerse, id: b, fluid: formalin 5 %, ratio: 10, last: 24 h}\n  - {stage: bath, id: c, fluid: formalin 5 %, ratio: 10, last: 1 h}\n  - {stage: house, id: house, fluid: ethanol 70 %vol, ratio: 3}\n";

    [Fact]
    public void Every_fixing_has_its_line_with_its_day_and_a_bath_has_none()
    {
        var label = Plan(Mammal("1 kg") with { ScientificName = "Sorex minutus" }, Shelf(("two", "{group: mammal}", Two))).Value!.Label.Texts();

        Assert.Equal(
            ["No. X-1", "Sorex minutus", "found 2027-02-28", "an invented shore", "collected by A. Nobody", "fixed in formalin 10 %, 2027-03-01", "fixed in formalin 5 %, 2027-03-02", "kept in ethanol 70 %vol, 2027-03-03"],
            label);
    }

    [Fact]
    public void Plan_without_dates_has_fluids_without_days()
    {
        var label = Plan(Mammal("1 kg"), Shelf(("two", "{group: mammal}", Two)), "zone: UTC\nhours: {mon: 08:00 to 10:00}\n").Value!.Label.Texts();

        Assert.Equal(["fixed in formalin 10 %", "fixed in formalin 5 %", "kept in ethanol 70 %vol"], label.Skip(5));
    }

    /// <summary>Late on the 27th in Greenwich it is the 28th in Auckland, where it was found.</summary>
    [Fact]
    public void Day_of_death_stands_in_for_the_day_of_finding_on_the_clocks_of_the_bench()
    {
        var animal = Mammal("1 kg") with { FoundOn = null, DiedAt = NodaTime.Instant.FromUtc(2027, 2, 27, 20, 0), Where = null, CollectedBy = null };

        Assert.Equal(["found 2027-02-28", "(not known)", "collected by (not known)"], Plan(animal, Shelf(("two", "{group: mammal}", Two)), "zone: Pacific/Auckland\n").Value!.Label.Texts().Skip(2).Take(3));
    }

    [Fact]
    public void What_is_never_put_into_a_jar_has_no_line_for_it() =>
        Assert.Equal("fixed in formalin 10 %, 2027-03-01", Plan(Mammal("1 kg"), Shelf(("any", "{group: mammal}", Fix))).Value!.Label.Texts()[^1]);
}
