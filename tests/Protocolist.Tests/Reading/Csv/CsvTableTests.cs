using Protocolist.Findings;
using Protocolist.Reading.Csv;

namespace Protocolist.Tests.Reading.Csv;

[Collection(nameof(MeasuresMemory))]
public class CsvTableTests
{
    private static readonly Dictionary<string, string> DarwinCore = new() { ["catalogNumber"] = "id", ["measuredMassInGrams"] = "mass" };

    private static Checked<CsvTable> Open(string text) =>
        CsvTable.Open(new CsvReader(new StringReader(text), "list.csv"), ["id", "mass"], ["length", "girth"], DarwinCore);

    [Fact]
    public void Columns_are_found_by_name_in_any_order_and_by_their_aliases()
    {
        var table = Open("Length,Catalog Number,mass\n80 cm,A-1,9 kg\n,A-2,7 kg\n").Value!;
        var rows = table.Rows().ToArray();
        Assert.Equal(("A-1", "9 kg", "80 cm"), (rows[0]["id"]?.Text, rows[0]["mass"]?.Text, rows[0]["length"]?.Text));
        Assert.Null(rows[1]["length"]);
        Assert.Null(rows[1]["girth"]);
        Assert.Equal([1, 2], rows.Select(r => r.Number));
    }

    [Theory]
    [InlineData("", "empty-file")]
    [InlineData("id,length\n", "missing-column")]
    [InlineData("id,mass,MASS\n", "column-twice")]
    [InlineData("id,mass,catalog_number\n", "column-twice")]
    public void A_heading_that_cannot_be_used_is_an_error(string text, string id)
    {
        var table = Open(text);
        Assert.Null(table.Value);
        Assert.Contains(table.Findings, f => f.Id == id && f.Severity == Severity.Error);
    }

    [Fact]
    public void A_column_that_is_not_known_is_a_note_with_the_name_meant()
    {
        var finding = Assert.Single(Open("id,mass,lenght\n").Findings);
        Assert.Equal(("unknown-column", "did you mean 'length'?", "list.csv:1:9"), (finding.Id, finding.Remedy.ToString(), finding.Where.ToString()));
    }

    [Fact]
    public void Rows_of_another_width_are_faults_and_the_others_stay_good()
    {
        var rows = Open("id,mass\nA-1,9 kg\nA-2\nA-3,1,2\nA-4,7 kg").Value!.Rows().ToArray();
        Assert.Equal([true, false, false, true], rows.Select(r => r.IsSound));
        Assert.Equal(("too-few-cells", "list.csv:3:1"), (rows[1].Findings[0].Id, rows[1].Findings[0].Where.ToString()));
        Assert.Equal(("too-many-cells", "list.csv:4:7"), (rows[2].Findings[0].Id, rows[2].Findings[0].Where.ToString()));
    }

    [Fact]
    public void A_hundred_thousand_rows_are_streamed_without_being_kept()
    {
        var source = new Endless(100_000);
        var table = CsvTable.Open(new CsvReader(source, "list.csv"), ["id", "mass"], [], DarwinCore).Value!;
        var most = 0L;
        var rows = 0;
        var before = GC.GetTotalMemory(forceFullCollection: true);
        foreach (var row in table.Rows())
        {
            Assert.True(row.IsSound);
            if (++rows % 25_000 == 0) most = Math.Max(most, GC.GetTotalMemory(forceFullCollection: true) - before);
        }

        Assert.Equal(100_000, rows);
        Assert.True(most < 2_000_000, $"{most} bytes were kept");
    }

    /// <summary>A text of so many rows that is never whole in memory.</summary>
    private sealed class Endless(int rows) : TextReader
    {
        private int next = -1;
        private string line = "";
        private int at;

        public override int Read(char[] buffer, int index, int count)
        {
            if (at == line.Length)
            {
                if (next >= rows) return 0;
                line = next < 0 ? "id,mass\n" : $"A-{next},\"{next % 90 + 1} kg\"\n";
                (next, at) = (next + 1, 0);
            }

            var n = Math.Min(count, line.Length - at);
            line.CopyTo(at, buffer, index, n);
            at += n;
            return n;
        }
    }
}

/// <summary>Tests that weigh the memory of the whole process run while no others do.</summary>
[CollectionDefinition(nameof(MeasuresMemory), DisableParallelization = true)]
public static class MeasuresMemory;
