using Protocolist.Reading.Csv;

namespace Protocolist.Tests.Reading.Csv;

public class CsvWriterTests
{
    /// <summary>The first characters that OWASP's page on CSV injection names, and what must stay as it is.</summary>
    [Theory]
    [InlineData("=1+1", "'=1+1")]
    [InlineData("=HYPERLINK(\"x\",\"y\")", "\"'=HYPERLINK(\"\"x\"\",\"\"y\"\")\"")]
    [InlineData("+cmd", "'+cmd")]
    [InlineData("-2+3", "'-2+3")]
    [InlineData("@SUM(A1)", "'@SUM(A1)")]
    [InlineData("  =1", "'  =1")]
    [InlineData("\t=1", "\"'\t=1\"")]
    [InlineData("\r=1", "\\r=1")]
    [InlineData("\r\n=1", "\"'\r\n=1\"")]
    [InlineData("a\u001B[31m\u202Eb\u0085", "a\\u001B[31m\\u202Eb\\u0085")]
    [InlineData("＝1", "'＝1")]
    [InlineData("-5", "-5")]
    [InlineData("+5.25", "+5.25")]
    [InlineData("a=b", "a=b")]
    [InlineData("A-1", "A-1")]
    [InlineData("12.50 EUR", "12.50 EUR")]
    [InlineData("", "")]
    public void Cells_come_out_harmless(string text, string cell) => Assert.Equal(cell, CsvWriter.Cell(text));

    [Fact]
    public void Rows_end_with_carriage_return_and_line_feed()
    {
        var text = new StringWriter();
        CsvWriter.WriteRow(text, ["a", "b, c", ""]);
        Assert.Equal("a,\"b, c\",\r\n", text.ToString());
    }
}
