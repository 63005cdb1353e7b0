using NodaTime;
using Protocolist.Findings;
using Protocolist.Quantities;
using UnitsNet;
using Duration = NodaTime.Duration;

namespace Protocolist.Tests.Findings;

/// <summary>What a place of a phrase makes of each kind of fact.</summary>
public class MessageTests
{
    private static readonly DateTimeZone Azores = DateTimeZoneProviders.Tzdb["Atlantic/Azores"];

    private static readonly Instant Morning = Instant.FromUtc(2027, 3, 1, 10, 0);

    public static TheoryData<string, Argument, string> Places => new()
    {
        { "{n}", ("n", 3), "3" },
        { "{n:0.#}", ("n", 2.26), "2.3" },
        { "{n:times}", ("n", 1), "once" },
        { "{n:times}", ("n", 2), "twice" },
        { "{n:times}", ("n", 7), "7 times" },
        { "{n} {n|site|sites}", ("n", 1), "1 site" },
        { "{n} {n|site|sites}", ("n", 0), "0 sites" },
        { "{v}", ("v", Volume.FromMilliliters(953.2)), "955 mL" },
        { "{v:mix}", ("v", Volume.FromMilliliters(953.2)), "953 mL" },
        { "{m:mix}", ("m", Mass.FromGrams(32.5)), "32.5 g" },
        { "{l:0 mm}", ("l", Length.FromMeters(0.1394)), "139 mm" },
        { "{t:0.# °C}", ("t", Temperature.FromDegreesCelsius(17.2)), "17.2 °C" },
        { "{c:0.# g/L}", Argument.Of("c", 14.26, Dimension.OfDensity), "14.3 g/L" },
        { "{s:0 %vol}", ("s", new QuantityRange(0.65, 0.8, Dimension.OfShareByVolume)), "65 to 80 %vol" },
        { "{t}", ("t", Duration.FromHours(36)), "36 h" },
        { "{t:clock}", ("t", Duration.FromMinutes(1505)), "1 d 1 h 5 min" },
        { "{t:clock}", ("t", Duration.Zero), "no time" },
        { "{t:0 h}", ("t", new QuantityRange(3600, 7200, Dimension.OfTime)), "1 to 2 h" },
        { "{at}", Argument.At("at", Morning, Azores), "Mon 2027-03-01 09:00" },
        { "{t:time}", ("t", Duration.FromMinutes(545)), "09:05" },
        { "{t:time}", ("t", Duration.FromDays(1)), "24:00" },
        { "{at:offset}", Argument.At("at", Morning, Azores), "2027-03-01 09:00 -01:00" },
        { "{t:clock}", ("t", Duration.FromSeconds(1)), "1 min" },
        { "{t:clock}", ("t", Duration.FromMinutes(59)), "59 min" },
        { "{t:clock}", ("t", Duration.FromMinutes(60)), "1 h" },
        { "{t:clock}", ("t", Duration.FromMinutes(1439)), "23 h 59 min" },
        { "{t:clock}", ("t", Duration.FromMinutes(2881)), "2 d 1 min" },
        { "{at:minute}", Argument.At("at", Morning, Azores), "2027-03-01 09:00" },
        { "{on}", ("on", new LocalDate(2027, 3, 1)), "Mon 2027-03-01" },
        { "{on:day}", ("on", new LocalDate(2027, 3, 1)), "2027-03-01" },
        { "{m}", ("m", Money.Of(12.5m, "EUR")), "12.50 EUR" },
        { "'{id}'", Argument.Id("id", "fix"), "'fix'" },
        { "{ids:'and}", Argument.Ids("ids", ["a", "b", "c"]), "'a', 'b' and 'c'" },
        { "{ids:and}", Argument.Ids("ids", ["a"]), "a" },
        { "{ids:; }", Argument.Ids("ids", ["a", "b"]), "a; b" },
        { "{ids}", Argument.Ids("ids", []), "" },
        { "{t:0 days}", ("t", new QuantityRange(2 * 86400, 9.2 * 86400, Dimension.OfTime)), "2 to 9 days" },
        { "{d:0 mL/kg}", Argument.Of("d", 80e-6, Dimension.OfSpecificVolume), "80 mL/kg" },
        { "{d:0}", ("d", new QuantityRange(1020, 1040, Dimension.OfDensity)), "1020 to 1040" },
        { "{m:two g}", ("m", Mass.FromGrams(76.4)), "76 g" },
        { "{m:two g}", ("m", new QuantityRange(0.00085, 12.345, Dimension.OfMass)), "0.85 to 12000 g" },
        { "{m:two}", ("m", 0.0123), "0.012" },
        { "{who:a}", ("who", "eel"), "an eel" },
        { "{who:a}", ("who", new Phrase("a-test.who", "bony fish")), "a bony fish" },
        { "{who:a}", ("who", ""), "" },
        { "{why:sentence}", ("why", "it floats"), "It floats." },
        { "{group:a}", ("group", "earthworm"), "an earthworm" },
        { "{group:a}", ("group", new Phrase("a-test.bat", "bat")), "a bat" },
        { "{absent}x", ("n", 1), "x" },
        { "{own}", ("own", "as {it} stands"), "as {it} stands" },
    };

    [Theory]
    [MemberData(nameof(Places))]
    public void A_place_shows_its_fact(string english, Argument fact, string expected) =>
        Assert.Equal(expected, new Phrase("a-test", english).With(fact).ToString());

    [Theory]
    [InlineData(4.99, 5, "4.99")]
    [InlineData(4.2, 5, "4")]
    [InlineData(5, 5, "5")]
    [InlineData(80.4, 80, "80.4")]
    [InlineData(1.364, 1.359, "1.364")]
    [InlineData(5.00000001, 5, "5")]
    public void A_number_is_told_apart_from_its_limit(double said, double limit, string expected) =>
        Assert.Equal(expected, new Phrase("a-test", "{said:0 vs limit}").With(("said", said), ("limit", limit)).ToString());

    [Theory]
    [InlineData(8, 7, "8 d")]
    [InlineData(7.25, 7, "7 d 6 h")]
    [InlineData(7, 7, "7 d")]
    [InlineData(1.0001, 1, "24 h 8 s")]
    [InlineData(0.99, 1, "23 h 45 min 36 s")]
    [InlineData(31.0007, 31, "31 d 1 min")]
    public void A_time_is_told_apart_from_its_limit(double days, double most, string expected) =>
        Told(("said", Duration.FromSeconds(Math.Floor(days * 86400))), ("limit", Duration.FromDays(most)), expected);

    [Fact]
    public void A_volume_a_length_and_a_mass_are_told_apart_from_their_limit()
    {
        Told(("said", Volume.FromLiters(38)), ("limit", Volume.FromUsGallons(10)), "38 L");
        Told(("said", Volume.FromLiters(37.86)), ("limit", Volume.FromUsGallons(10)), "37.86 L");
        Told(("said", Volume.FromUsGallons(10)), ("limit", Volume.FromLiters(37.86)), "37.85 L");
        Told(("said", Length.FromMillimeters(11.01)), ("limit", Length.FromMillimeters(11)), "11.01 mm");
        Told(("said", Mass.FromKilograms(23.01)), ("limit", Mass.FromKilograms(23)), "23.01 kg");
        Told(("said", Volume.FromLiters(20)), ("limit", Volume.FromLiters(20)), "20 L");
    }

    private static void Told(Argument said, Argument limit, string expected) =>
        Assert.Equal(expected, new Phrase("a-test", "{said:vs limit}").With(said, limit).ToString());

    [Theory]
    [InlineData(9.96, "9.96 °C")]
    [InlineData(8.44, "8.4 °C")]
    public void A_quantity_in_a_unit_is_told_apart_from_its_limit(double celsius, string expected) =>
        Assert.Equal(
            expected,
            new Phrase("a-test", "{room:0.# °C vs least}").With(("room", Temperature.FromDegreesCelsius(celsius)), ("least", Temperature.FromDegreesCelsius(10))).ToString());

    [Fact]
    public void A_message_within_a_message_is_said_in_the_same_language()
    {
        var vessel = new Phrase("a-test.in", " in {vessel}");
        var message = new Phrase("a-test", "{volume} of water{where}").With(("volume", Volume.FromLiters(2)), ("where", vessel.With(("vessel", "a tub"))));
        var other = new Language("xx", [new("a-test", "wasser {volume}{where}"), new("a-test.in", " drin: {vessel}")]);
        Assert.Equal("2 L of water in a tub", message.ToString());
        Assert.Equal("wasser 2 L drin: a tub", message.ToString(other));
    }

    [Fact]
    public void Messages_are_equal_by_phrase_and_facts()
    {
        var phrase = new Phrase("a-test", "{n}");
        Assert.Equal(phrase.With(("n", 1)), new Phrase("a-test", "other words {n}").With(("n", 1)));
        Assert.NotEqual(phrase.With(("n", 1)), phrase.With(("n", 2)));
        Assert.NotEqual(phrase.With(("n", 1)), phrase.With(("m", 1)));
        Assert.Equal(default, Message.Text(""));
        Assert.NotEqual(Message.Text("a"), Message.Text("b"));
        Assert.Equal(phrase.With(Argument.Ids("n", ["a"])).GetHashCode(), phrase.With(Argument.Ids("n", ["a"])).GetHashCode());
    }

    [Fact]
    public void Own_text_is_nobodys_to_fill() => Assert.Equal("{n}", Message.Text("{n}").ToString());

    [Fact]
    public void Places_are_named_once_in_their_order() =>
        Assert.Equal(["n", "each"], new Phrase("a-test", "{n} {n|site|sites} of {each:0 mm}").Places());
}
