using NodaTime;
using Protocolist.Plans;
using static Protocolist.Tests.Planning.PlanFixture;

namespace Protocolist.Tests.Planning;

/// <summary>What comes after sealing. The body is housed at noon of Monday the first of March 2027, sealed the same day.</summary>
public class CareWritingTests
{
    private const string Alcohol = "  - {stage: house, id: house, fluid: ethanol 70 %vol, ratio: 3}\n";

    private static List<CareEvent> Care(string rest, string house = Alcohol, string bench = "zone: UTC\n") =>
        [.. Plan(Mammal("1 kg"), Shelf(("kept", "{group: mammal}", $"stages:\n{house}{rest}")), bench).Value!.Care];

    private static CareEvent One(IEnumerable<CareEvent> care, string id) => Assert.Single(care, c => c.Id == id);

    [Fact]
    public void Usual_rounds_are_dated_from_the_day_of_closing()
    {
        var care = Care("  - {stage: seal, id: seal, closure: screw lid}\n");

        Assert.Equal(["first-check", "half-yearly-check", "yearly-test", "gasket"], care.Select(c => c.Id));
        Assert.Equal([new LocalDate(2027, 3, 15), new(2027, 9, 1), new(2028, 3, 1), new(2037, 3, 1)], care.Select(c => c.On!.Value));
        Assert.Equal([null, 6, 12, 120], care.Select(c => c.EveryMonths));
        Assert.Equal([1, 20, 10, 1], care.Select(c => c.Dates.Length)); // ten years ahead
        Assert.Equal(new LocalDate(2037, 3, 1), One(care, "half-yearly-check").Dates[^1]);
        Assert.All(care, c => Assert.NotEmpty(c.Source));
        Assert.Equal(["check strength, colour and leaks; change the fluid if it is diluted", "check level, lid, seal and colour"], care.Take(2).Select(c => c.What.ToString()));
    }

    private const string Jar = "zone: UTC\nvessels:\n  - {id: jar, name: jar, inside: {diameter: 30 cm, height: 60 cm}, wall: glass, lid: polypropylene, seal: polyethylene, closure: screw-lid, count: 1}\n";

    /// <summary>How much to top up is said where fluid is looked at, and not where a lid is renewed.</summary>
    [Fact]
    public void Amounts_stand_at_the_rounds_and_not_at_renewals()
    {
        var care = Care("  - {stage: seal, id: seal, closure: screw lid}\n", bench: Jar);
        Assert.All(care, c => Assert.Equal(c.Id != "gasket", !c.Amount.IsEmpty));
        var renewed = Care("  - {stage: seal, id: seal, closure: screw lid, renew: 360 d}\n", bench: Jar);
        Assert.All(renewed, c => Assert.Equal(c.Id != "seal-renew", !c.Amount.IsEmpty));
    }

    /// <summary>Dates are listed for ten years; what comes first after that has its date all the same, and no list.</summary>
    [Fact]
    public void What_comes_beyond_the_horizon_has_its_first_date()
    {
        var far = One(Care("  - {stage: seal, id: seal, closure: tape, renew: 4500 d}\n"), "seal-renew");

        Assert.Equal((150, 0), (far.EveryMonths, far.Dates.Length)); // 4500 / 30
        Assert.Equal(new LocalDate(2027, 3, 1).PlusMonths(150), far.On);
    }

    [Fact]
    public void Rounds_of_one_day_are_in_the_order_of_their_ids()
    {
        var care = Care("  - {stage: seal, id: seal, closure: tape}\n  - {stage: inspect, id: b, title: Beta, after: 9 d}\n  - {stage: inspect, id: a, title: Alpha, after: 9 d}\n  - {stage: inspect, id: z, title: Alpha, after: 9 d}\n");

        Assert.Equal(["a", "b", "z"], care.Take(3).Select(c => c.Id));
    }

    [Fact]
    public void Closure_without_a_name_is_renewed_as_such() => Assert.Equal("renew the closure", One(Care("  - {stage: seal, id: seal, renew: 360 d}\n"), "seal-renew").What.ToString());

    [Theory]
    [InlineData("screw lid", "gasket")]
    [InlineData("snap lid", "gasket")]
    [InlineData("tape", "tape-seal")]
    [InlineData("ground stopper", null)]
    [InlineData("neutral-cure silicone", null)]
    public void Closure_decides_what_is_renewed(string closure, string? id)
    {
        var renewals = Care($"  - {{stage: seal, id: seal, closure: {closure}}}\n").Where(c => c.Id is "gasket" or "tape-seal").Select(c => c.Id);

        Assert.Equal(id is null ? [] : [id], renewals);
    }

    [Theory]
    [InlineData("tape", "360 d", 12)]
    [InlineData("screw lid", "60 d", 2)]
    [InlineData("snap lid", "74 d", 2)]
    [InlineData("snap lid", "76 d", 3)]
    [InlineData("screw lid", "1 d", 1)]
    public void Protocols_own_renewal_stands_in_place_of_the_usual_one(string closure, string renew, int months)
    {
        var care = Care($"  - {{stage: seal, id: seal, closure: {closure}, renew: {renew}}}\n");

        var own = One(care, "seal-renew");
        Assert.Equal(($"renew the {closure}", months, ""), (own.What.ToString(), own.EveryMonths, own.Amount.ToString()));
        Assert.Equal(new LocalDate(2027, 3, 1).PlusMonths(months), own.On);
        Assert.DoesNotContain(care, c => c.Id is "gasket" or "tape-seal");
    }

    [Theory]
    [InlineData("1 y", 12)]
    [InlineData("5 y", 60)]
    [InlineData("10 y", 120)]
    [InlineData("180 d", 6)]
    public void Years_are_years(string renew, int months) => Assert.Equal(months, One(Care($"  - {{stage: seal, id: seal, closure: tape, renew: {renew}}}\n"), "seal-renew").EveryMonths);

    /// <summary>A plate of glass is taped whatever lid the protocol had in mind, and a screw lid is not: what is renewed is what is there.</summary>
    [Theory]
    [InlineData("glass, seal: neutral-silicone, closure: sealed-plate", "tape-seal")]
    [InlineData("polypropylene, seal: polyethylene, closure: screw-lid", "gasket")]
    public void Vessel_that_was_chosen_decides_what_is_renewed(string lid, string id)
    {
        var bench = $"zone: UTC\nvessels:\n  - {{id: tank, name: tank, inside: {{length: 80 cm, width: 30 cm, height: 40 cm}}, wall: glass, lid: {lid}, count: 1}}\n";

        foreach (var closure in (string[])["screw lid", "tape"])
            Assert.Equal([id], Care($"  - {{stage: seal, id: seal, closure: {closure}}}\n", bench: bench).Where(c => c.Id is "gasket" or "tape-seal").Select(c => c.Id));
    }

    [Fact]
    public void First_look_of_the_protocols_own_stands_in_place_of_the_usual_one()
    {
        var care = Care("  - {stage: seal, id: seal, closure: tape}\n  - {stage: inspect, id: look, title: Look, after: 10 d, look-for: [leaks, label], source: common practice}\n");

        Assert.DoesNotContain(care, c => c.Id == "first-check");
        var look = One(care, "look");
        Assert.Equal(("Look: leaks; label", new LocalDate(2027, 3, 11), null, "common practice"), (look.What.ToString(), look.On!.Value, look.EveryMonths, look.Source));
        Assert.Single(look.Dates);
    }

    [Theory]
    [InlineData("180 d", 6, false)]
    [InlineData("90 d", 3, false)]
    [InlineData("210 d", 7, true)]
    [InlineData("360 d", 12, true)]
    public void Round_of_half_a_year_or_less_stands_in_place_of_the_usual_one(string every, int months, bool usual)
    {
        var care = Care($"  - {{stage: seal, id: seal, closure: tape}}\n  - {{stage: inspect, id: round, title: Round, every: {every}}}\n");

        Assert.Equal(usual, care.Exists(c => c.Id == "half-yearly-check"));
        Assert.Equal(("Round", months), (One(care, "round").What.ToString(), One(care, "round").EveryMonths));
        Assert.Contains(care, c => c.Id == "first-check");
    }

    [Fact]
    public void Round_with_a_first_date_and_a_rhythm_gives_both()
    {
        var care = Care("  - {stage: seal, id: seal, closure: tape}\n  - {stage: top-up, id: top, title: Fill up, fluid: ethanol 70 %vol, every: 120 d}\n  - {stage: inspect, id: round, title: Round, after: 20 d, every: 60 d}\n");

        Assert.Equal((new LocalDate(2027, 3, 21), null), (One(care, "round-first").On!.Value, One(care, "round-first").EveryMonths));
        Assert.Equal((new LocalDate(2027, 5, 1), 2), (One(care, "round").On!.Value, One(care, "round").EveryMonths));
        Assert.Equal(4, One(care, "top").EveryMonths);
    }

    [Theory]
    [InlineData("ethanol 70 %vol", "test the strength, all jars or a sample: 70 %vol is wanted")]
    [InlineData("isopropanol 50 %vol", "test the strength, all jars or a sample: 50 %vol is wanted")]
    [InlineData("formalin 10 %", "test the pH, all jars or a sample: 6.5 to 7.5 is wanted; change the fluid when it turns acid")]
    [InlineData("distilled water", "test strength (alcohol) or pH (formalin), all jars or a sample")]
    public void Yearly_test_is_of_what_is_kept(string fluid, string says) =>
        Assert.Equal(says, One(Care("  - {stage: seal, id: seal, closure: tape}\n", $"  - {{stage: house, id: house, fluid: {fluid}, ratio: 3}}\n"), "yearly-test").What.ToString());

    [Fact]
    public void Nothing_kept_in_fluid_has_no_yearly_test() =>
        Assert.DoesNotContain(Care("  - {stage: seal, id: seal, closure: tape}\n", "  - {stage: immerse, id: fix, fluid: formalin 10 %, ratio: 10, last: 24 h}\n"), c => c.Id == "yearly-test");

    /// <summary>Open on Fridays alone: a Monday's turn comes on the Friday after, and no later one shifts with it.</summary>
    [Fact]
    public void Turns_come_on_open_days()
    {
        var care = Care("  - {stage: seal, id: seal, closure: tape}\n", bench: "zone: UTC\nhours: {fri: 08:00 to 18:00}\n");

        // Closed on Friday 5 March; the 19th, the first of September and so on are counted from there.
        Assert.Equal(new LocalDate(2027, 3, 19), One(care, "first-check").On);
        Assert.All(care.SelectMany(c => c.Dates), d => Assert.Equal(IsoDayOfWeek.Friday, d.DayOfWeek));
        Assert.Equal([new LocalDate(2027, 9, 10), new(2028, 3, 10), new(2028, 9, 8)], One(care, "half-yearly-check").Dates.Take(3));
    }

    [Fact]
    public void Where_no_dates_are_found_care_has_its_rhythm_and_no_date()
    {
        var care = Care("  - {stage: seal, id: seal, closure: tape}\n", "  - {stage: immerse, id: fix, fluid: formalin 10 %, ratio: 10, last: 24 h}\n" + Alcohol, "zone: UTC\nhours: {mon: 08:00 to 10:00}\n");

        Assert.All(care, c => Assert.True(c.On is null && c.Dates.IsEmpty, c.Id));
        Assert.Equal(6, One(care, "half-yearly-check").EveryMonths);
        Assert.Equal(24, One(care, "tape-seal").EveryMonths);
        Assert.Equal(care.OrderBy(c => c.Id, StringComparer.Ordinal).Select(c => c.Id), care.Select(c => c.Id));
    }

    [Fact]
    public void Without_a_seal_the_housing_closes_the_vessel()
    {
        var care = Care("");

        Assert.Equal(new LocalDate(2027, 9, 1), One(care, "half-yearly-check").On);
        Assert.DoesNotContain(care, c => c.Id is "gasket" or "tape-seal");
    }
}
