using Protocolist.Reading.Csv;

namespace Protocolist.Tests.Reading.Csv;

public class CsvReaderTests
{
    private static List<CsvRecord> Read(string text)
    {
        var reader = new CsvReader(new StringReader(text), "list.csv");
        var records = new List<CsvRecord>();
        while (reader.Read() is { } record) records.Add(record);
        return records;
    }

    private static string Shown(IEnumerable<CsvRecord> records) =>
        string.Join(" / ", records.Select(r => r.IsSound ? string.Join("|", r.Fields.Select(f => f.Text)) : r.Findings.First(f => f.Severity == Protocolist.Findings.Severity.Error).Id));

    /// <summary>The rules of RFC 4180, section 2, one by one, and line ends as they come.</summary>
    [Theory]
    [InlineData("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n", "aaa|bbb|ccc / zzz|yyy|xxx")]
    [InlineData("aaa,bbb,ccc\r\nzzz,yyy,xxx", "aaa|bbb|ccc / zzz|yyy|xxx")]
    [InlineData("\"aaa\",\"bbb\",\"ccc\"\r\nzzz,yyy,xxx", "aaa|bbb|ccc / zzz|yyy|xxx")]
    [InlineData("\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,yyy,xxx", "aaa|b\nbb|ccc / zzz|yyy|xxx")]
    [InlineData("\"aaa\",\"b\"\"bb\",\"ccc\"", "aaa|b\"bb|ccc")]
    [InlineData("a,b\nc,d\re,f", "a|b / c|d / e|f")]
    [InlineData("a,,\n\n\n,b,\n", "a|| / |b|")]
    [InlineData("\uFEFFa,b", "a|b")]
    [InlineData("a;b\n1,5;2", "a|b / 1,5|2")]
    [InlineData("\"a, and more\";b\n1;2", "a, and more|b / 1|2")]
    [InlineData("a\tb\n1,5\t2;3", "a|b / 1,5|2;3")]
    [InlineData("", "")]
    [InlineData("\n\r\n", "")]
    public void Records_are_read_as_the_standard_has_them(string text, string shown) => Assert.Equal(shown, Shown(Read(text)));

    [Theory]
    [InlineData("a,b\n1,\"two\n3,4\n5,6\n", "a|b / unclosed-quote / 3|4 / 5|6")]
    [InlineData("a,b\n1,\"two\n3,\"four\"\n5,6\n", "a|b / text-after-quote / 3|four / 5|6")]
    [InlineData("a,b\n\"x\"y,2\n3,4", "a|b / text-after-quote / 3|4")]
    [InlineData("a,b\n1,\"\n2,\"\n3,\"\n4,5", "a|b / 1|\n2, / unclosed-quote / 4|5")]
    [InlineData("a,\"", "unclosed-quote")]
    public void A_slip_with_quotes_costs_its_own_row_only(string text, string shown) => Assert.Equal(shown, Shown(Read(text)));

    [Fact]
    public void Places_are_line_and_column_of_the_cell()
    {
        var records = Read("id,note\n1,\"two\nlines\",x\n22,y\n");
        Assert.Equal([(2, 1), (2, 3), (3, 8)], records[1].Fields.Select(f => (f.Line, f.Column)));
        Assert.Equal([(4, 1), (4, 4)], records[2].Fields.Select(f => (f.Line, f.Column)));
    }

    [Fact]
    public void A_fault_is_at_its_cell_and_reading_goes_on_with_the_right_line()
    {
        var records = Read("a,b\n1,\"two\n3,4\n5,6");
        Assert.Equal("list.csv:2:3", records[1].Findings[0].Where.ToString());
        Assert.Equal([3, 4], records.Skip(2).Select(r => r.Line));
    }

    [Fact]
    public void A_quote_inside_a_plain_cell_is_text_with_a_warning()
    {
        var record = Read("a,jar 5\" wide,c")[0];
        Assert.Equal("jar 5\" wide", record.Fields[1].Text);
        Assert.Equal(("quote-inside-cell", "list.csv:1:8"), (record.Findings[0].Id, record.Findings[0].Where.ToString()));
    }

    [Fact]
    public void Cells_and_rows_without_end_are_faults_of_their_row()
    {
        var endless = new string('x', 100_000);
        Assert.Equal("a|b / cell-too-long / 3|4", Shown(Read($"a,b\n1,{endless}\n3,4")));
        Assert.Equal("a|b / cell-too-long / 3|4", Shown(Read($"a,b\n1,\"{endless}\"\n3,4")));
        Assert.Equal("a|b / unclosed-quote / 3|4", Shown(Read($"a,b\n1,\"x\n3,4\n{string.Concat(Enumerable.Repeat("5,6\n", 20_000))}")).Split(" / 5")[0]);
        Assert.Equal("a|b / too-many-fields / 3|4", Shown(Read($"a,b\n{new string(',', 5_000)}\n3,4")));
    }

    [Fact]
    public void Random_text_never_throws_and_always_ends()
    {
        var random = new Random(7);
        for (var round = 0; round < 3_000; round++)
        {
            var text = new string([.. Enumerable.Range(0, random.Next(60)).Select(_ => "ab,;\t\"\"\n\r 1"[random.Next(11)])]);
            Assert.InRange(Read(text).Count, 0, text.Length);
        }
    }

    [Fact]
    public void What_the_writer_writes_the_reader_reads()
    {
        string[] cells = ["plain", "with, comma", "with \"quotes\"", "two\nlines", " spaced ", "", "5;6", "-5"];
        var text = new StringWriter();
        CsvWriter.WriteRow(text, ["a", "b", "c", "d", "e", "f", "g", "h"]);
        CsvWriter.WriteRow(text, cells);
        Assert.Equal(cells, Read(text.ToString())[1].Fields.Select(f => f.Text));
    }
}
