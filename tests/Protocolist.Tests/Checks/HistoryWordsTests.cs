using Protocolist.Checks;

namespace Protocolist.Tests.Checks;

public class HistoryWordsTests
{
    [Theory]
    [InlineData("bycatch of a gill net", true)]
    [InlineData("Net, off the pier", true)]
    [InlineData("found in a cabinet", false)]
    [InlineData("magnetic survey", false)]
    [InlineData("drowned in a creel", true)]
    [InlineData("drowning, it seems", true)]
    [InlineData("hit by a car", true)]
    [InlineData("a carcass on the beach", false)]
    [InlineData("caught by a cat", true)]
    [InlineData("caught on a catamaran", false)]
    [InlineData("spotted on the strand", false)]
    [InlineData("cause unknown", false)]
    [InlineData("not drowned", false)]
    [InlineData("not drowned, shot", true)]
    [InlineData("", false)]
    [InlineData(null, false)]
    public void Known_death_is_read_from_whole_words_that_nobody_denies(string? told, bool isKnown) =>
        Assert.Equal(isKnown, HistoryWords.KnownDeath.AreIn(told));

    [Theory]
    [InlineData("unclotted blood at the nose", true)]
    [InlineData("no sign of anthrax", false)]
    [InlineData("no signs of anthrax", false)]
    [InlineData("without anthrax", false)]
    [InlineData("no wound, blood from the nose", true)]
    [InlineData("no blood from the nose", false)]
    [InlineData("Died Suddenly", true)]
    public void Sign_of_anthrax_is_read_unless_it_is_denied(string told, bool isSign) =>
        Assert.Equal(isSign, HistoryWords.Anthrax.AreIn(told));

    [Theory]
    [InlineData("stranded at low water", true)]
    [InlineData("Strandings list, found dead", true)]
    [InlineData("never found dead", false)]
    public void Unknown_death_is_read_the_same_way(string told, bool isUnknown) =>
        Assert.Equal(isUnknown, HistoryWords.UnknownDeath.AreIn(told));
}
