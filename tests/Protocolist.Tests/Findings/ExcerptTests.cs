using Protocolist.Findings;

namespace Protocolist.Tests.Findings;

public class ExcerptTests
{
    [Fact]
    public void A_short_text_stays_as_it_is() => Assert.Equal("7.2 kg", Excerpt.Of("7.2 kg"));

    [Fact]
    public void Line_breaks_and_control_characters_are_written_out() => Assert.Equal(@"a\nb\r\nc\u001Bd", Excerpt.Of("a\nb\r\nc\u001Bd"));

    [Fact]
    public void A_long_text_is_cut_and_never_inside_a_character()
    {
        Assert.Equal(new string('x', 59) + "…", Excerpt.Of(new string('x', 61)));
        Assert.Equal(new string('x', 58) + "…", Excerpt.Of(new string('x', 58) + "𝄞𝄞𝄞"));
    }
}
