using Protocolist.Checks;
using Protocolist.Specimens;
using UnitsNet;
using Duration = NodaTime.Duration;

namespace Protocolist.Tests.Checks;

public class TellingTests
{
    [Theory]
    [InlineData(6, 5, 0, "6", "5")]
    [InlineData(4.99, 5, 1, "4.99", "5")]
    [InlineData(2.9, 3, 1, "2.9", "3")]
    [InlineData(80.4, 80, 0, "80.4", "80")]
    [InlineData(50.04, 50, 1, "50.04", "50")]
    [InlineData(1.364, 1.359, 1, "1.364", "1.359")]
    [InlineData(5, 5, 1, "5", "5")]
    [InlineData(5.00000001, 5, 1, "5", "5")]
    public void Number_past_its_limit_never_reads_as_the_limit(double value, double limit, int decimals, string said, string most) =>
        Assert.Equal((said, most), Telling.Apart(value, limit, decimals));

    [Theory]
    [InlineData(8, 7, "8 d")]
    [InlineData(7.25, 7, "7 d 6 h")]
    [InlineData(7, 7, "7 d")]
    [InlineData(1.0001, 1, "24 h 8 s")]
    [InlineData(0.99, 1, "23 h 45 min 36 s")]
    [InlineData(31.0007, 31, "31 d 1 min")]
    public void Time_past_its_limit_never_reads_as_the_limit(double days, double most, string said) =>
        Assert.Equal(said, Duration.FromSeconds(Math.Floor(days * 86400)).Past(Duration.FromDays(most)));

    [Fact]
    public void Volume_length_and_mass_past_their_limit_never_read_as_the_limit()
    {
        Assert.Equal(("38 L", "37.9 L"), Telling.Apart(Volume.FromLiters(38), Volume.FromUsGallons(10)));
        Assert.Equal(("37.86 L", "37.85 L"), Telling.Apart(Volume.FromLiters(37.86), Volume.FromUsGallons(10)));
        Assert.Equal(("11.01 mm", "11 mm"), Telling.Apart(Length.FromMillimeters(11.01), Length.FromMillimeters(11)));
        Assert.Equal(("23.01 kg", "23 kg"), Telling.Apart(Mass.FromKilograms(23.01), Mass.FromKilograms(23)));
        Assert.Equal(("20 L", "20 L"), Telling.Apart(Volume.FromLiters(20), Volume.FromLiters(20)));
    }

    [Fact]
    public void Counts_and_lists_are_told_in_words()
    {
        Assert.Equal(["once", "twice", "3 times", "0 times"], new[] { 1, 2, 3, 0 }.Select(Telling.Times));
        Assert.Equal(["1 day", "2 days"], new[] { 1, 2 }.Select(d => Telling.Count(d, "day", "days")));
        Assert.Equal("", Telling.And([]));
        Assert.Equal("a", Telling.And(["a"]));
        Assert.Equal("a and b", Telling.And(["a", "b"]));
        Assert.Equal("a, b and c", Telling.And(["a", "b", "c"]));
    }

    [Fact]
    public void Group_has_its_article()
    {
        Assert.Equal("an earthworm", TaxonGroups.Find("earthworm")!.One());
        Assert.Equal("a bat", TaxonGroups.Find("bat")!.One());
    }
}
