using Protocolist.Reading.Csv;

namespace Protocolist.Tests.Reading.Csv;

public class DecimalSignsTests
{
    private static string Shown(params string[] cells)
    {
        var signs = new DecimalSigns("list.csv");
        return string.Join(" / ", cells.Select((c, i) => signs.Read(new CsvField(c, i + 2, 5))).Select(r => r.Value ?? r.Findings[0].Id));
    }

    [Theory]
    [InlineData("7.2 kg|80 cm|0.5", "7.2 kg / 80 cm / 0.5")]
    [InlineData("7,2 kg|0,250 kg|12,5", "7.2 kg / 0.250 kg / 12.5")]
    [InlineData("7,2|1,234", "7.2 / 1.234")]
    [InlineData("7.2 kg|7,2 kg|8.1 kg", "7.2 kg / mixed-decimal-signs / 8.1 kg")]
    [InlineData("7,2|7.2", "7.2 / mixed-decimal-signs")]
    [InlineData("1,234|1.234,5|1,234.5|1.234.567", "ambiguous-number / ambiguous-number / ambiguous-number / ambiguous-number")]
    [InlineData("2,5 to 7,5 kg|2,5 to 7.5", "2.5 to 7.5 kg / ambiguous-number")]
    [InlineData("no. 5, left|5, 6", "no. 5, left / 5, 6")]
    public void One_sign_for_a_file(string cells, string shown) => Assert.Equal(shown, Shown(cells.Split('|')));

    [Fact]
    public void The_finding_names_both_places()
    {
        var signs = new DecimalSigns("list.csv");
        signs.Read(new CsvField("7.2 kg", 2, 5));
        var finding = signs.Read(new CsvField("7,3 kg", 9, 4)).Findings[0];
        Assert.Equal("list.csv:9:4", finding.Where.ToString());
        Assert.Contains("'7.2 kg' in line 2", finding.Message.ToString(), StringComparison.Ordinal);
    }
}
