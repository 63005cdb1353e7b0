using Protocolist.Findings;

namespace Protocolist.Tests.Findings;

public class SuggestionTests
{
    [Theory]
    [InlineData("reech", "reach")]
    [InlineData("durration", "duration")]
    [InlineData("Mass", "mass")]
    [InlineData("lenght", "length")]
    public void Nearest_finds_the_word_meant(string misspelt, string meant) =>
        Assert.Equal(meant, Suggestion.Nearest(misspelt, ["reach", "duration", "mass", "length", "girth"]));

    [Fact]
    public void Nearest_is_silent_when_nothing_is_near() => Assert.Null(Suggestion.Nearest("colour", ["mass", "length"]));

    [Fact]
    public void Nearest_is_silent_when_two_are_equally_near() => Assert.Null(Suggestion.Nearest("bat", ["cat", "rat"]));
}
