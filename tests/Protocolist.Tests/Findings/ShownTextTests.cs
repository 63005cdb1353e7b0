using Protocolist.Findings;

namespace Protocolist.Tests.Findings;

public class ShownTextTests
{
    [Theory]
    [InlineData("Müller's snail, ♂, 𝄞, क्‍ष, می‌روم, \u200E\u200F\u061C")]
    [InlineData("")]
    public void Text_of_any_script_stays(string text) => Assert.Same(text, ShownText.Line(text));

    [Theory]
    [InlineData("a\nb\tc", @"a\nb\tc", "a\nb\tc")]
    [InlineData("a\r\nb\rc", @"a\r\nb\rc", "a\r\nb\\rc")]
    [InlineData("\u001B]0;title\u0007", @"\u001B]0;title\u0007", @"\u001B]0;title\u0007")]
    [InlineData("\u0000\u007F\u0085\u009B", @"\u0000\u007F\u0085\u009B", @"\u0000\u007F\u0085\u009B")]
    [InlineData("\u202A\u202E\u2066\u2069\u2028\u2029", @"\u202A\u202E\u2066\u2069\u2028\u2029", @"\u202A\u202E\u2066\u2069\u2028\u2029")]
    public void What_would_be_obeyed_is_written_out(string text, string line, string lines) => Assert.Equal((line, lines), (ShownText.Line(text), ShownText.Lines(text)));

    [Fact]
    public void Halves_of_characters_are_written_out() => Assert.Equal(@"a\uD834b\uDD1Ec\uD834", ShownText.Line("a\uD834b\uDD1Ec\uD834"));
}
