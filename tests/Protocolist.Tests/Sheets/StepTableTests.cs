using System.Globalization;
using NodaTime.Text;
using Protocolist.Plans;
using Protocolist.Reading.Csv;
using Protocolist.Sheets;
using Protocolist.Tests.Planning.Provisioning;

namespace Protocolist.Tests.Sheets;

public class StepTableTests
{
    private static readonly Plan Whelk = Station.Plan(Station.Whelk, Station.With("stock:\n  - {fluid: ethanol 96 %vol, id: e96, on-hand: 9 L}"));

    private static List<string[]> Rows(Plan plan)
    {
        var reader = new CsvReader(new StringReader(StepTable.Write(plan)), "steps.csv");
        var rows = new List<string[]>();
        while (reader.Read() is { } record) rows.Add([.. record.Fields.Select(f => f.Text)]);
        return rows;
    }

    [Fact]
    public void There_is_one_row_a_step_under_the_heading_in_the_order_of_the_plan()
    {
        var rows = Rows(Whelk);
        Assert.All(rows, r => Assert.Equal(rows[0].Length, r.Length));
        var at = Array.IndexOf(rows[0], "step");
        Assert.Equal(Whelk.Steps.Select(s => s.Id), rows.Skip(1).Select(r => r[at]));
    }

    [Fact]
    public void Dates_are_iso_with_their_offset_and_numbers_have_a_decimal_point()
    {
        var rows = Rows(Whelk);
        var (start, hours, volume) = (Array.IndexOf(rows[0], "start"), Array.IndexOf(rows[0], "least hours"), Array.IndexOf(rows[0], "volume mL"));
        foreach (var (row, step) in rows.Skip(1).Zip(Whelk.Steps))
        {
            if (step.Start is { } at) Assert.Equal(at, OffsetDateTimePattern.Rfc3339.Parse(row[start]).Value);
            Assert.Equal(step.Least.TotalHours, double.Parse(row[hours], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture), 3);
            if (step.Volume is { } fluid) Assert.Equal(1, double.Parse(row[volume], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture) / fluid.Milliliters, 3);
        }
    }

    [Theory]
    [InlineData("=1+1")]
    [InlineData("@SUM(A1)")]
    [InlineData("+cmd|' /C calc'!A0")]
    [InlineData("-2+3")]
    [InlineData("\t=1")]
    public void A_cell_that_looks_like_a_formula_comes_out_harmless(string name)
    {
        var rows = Rows(Whelk with { Specimen = Whelk.Specimen with { Id = name }, Steps = [.. Whelk.Steps.Select(s => s with { Title = Said.Of(name), Instructions = [Said.Of(name), Said.Of(name)] })] });
        Assert.All(rows.Skip(1), r => Assert.StartsWith("'", r[0], StringComparison.Ordinal));
        Assert.All(rows.Skip(1).SelectMany(r => r), cell => Assert.False(cell.Length > 0 && "=@+\t".Contains(cell[0], StringComparison.Ordinal), cell));
    }

    [Theory]
    [InlineData("say \"ah\"")]
    [InlineData("two\nlines")]
    [InlineData("a,b;c")]
    [InlineData("<script>alert(1)</script>")]
    public void A_hostile_name_is_read_back_as_it_was(string name) =>
        Assert.All(Rows(Whelk with { Specimen = Whelk.Specimen with { Id = name } }).Skip(1), r => Assert.Equal(name, r[0]));
}
