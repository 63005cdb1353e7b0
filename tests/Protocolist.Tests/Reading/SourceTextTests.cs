using System.Text;

namespace Protocolist.Tests.Reading;

public class SourceTextTests
{
    [Fact]
    public void Good_bytes_are_decoded_as_they_stand() =>
        Assert.Equal("\uFEFFµL é 𝄞\r\n", SourceText.Decode("a.yaml", Encoding.UTF8.GetBytes("\uFEFFµL é 𝄞\r\n")).Value!.Text);

    [Theory]
    [InlineData(0xC0, 0x80)] // an overlong NUL
    [InlineData(0xED, 0xA0)] // half a surrogate pair
    [InlineData(0xF8, 0x88)] // a form of five bytes
    public void Bytes_that_UTF_8_forbids_are_placed(int first, int second)
    {
        byte[] bytes = [.. "a\n𝄞é"u8, (byte)first, (byte)second];
        var finding = Assert.Single(SourceText.Decode("a.yaml", bytes).Findings);
        Assert.Equal("a.yaml:2:4: error not-utf8: the file is not UTF-8 text; save it as UTF-8", finding.ToString());
    }
}
