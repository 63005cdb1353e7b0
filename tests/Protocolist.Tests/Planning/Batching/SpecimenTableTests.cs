using Protocolist.Findings;
using Protocolist.Planning.Batching;
using Protocolist.Specimens;

namespace Protocolist.Tests.Planning.Batching;

/// <summary>Tables of specimens as museums export them: which column gives which key, and in what unit.</summary>
public class SpecimenTableTests
{
    private static List<SpecimenRow> Rows(string csv)
    {
        var opened = SpecimenTable.Open(new StringReader(csv), "finds.csv", Kinds.Bundled);
        Assert.True(opened.Value is not null, string.Join('\n', opened.Findings));
        return [.. opened.Value!.Rows()];
    }

    private static Specimen One(string heading, string cells)
    {
        var row = Assert.Single(Rows($"{heading}\n{cells}\n"));
        Assert.True(row.Specimen is not null, string.Join('\n', row.Findings));
        return row.Specimen!;
    }

    [Theory]
    [InlineData("specimen")]
    [InlineData("catalogNumber")]
    [InlineData("recordNumber")]
    [InlineData("fieldNumber")]
    [InlineData("occurrenceID")]
    [InlineData("id")]
    public void Number_has_many_names(string column) => Assert.Equal("N-7", One($"{column},group,mass (g)", "N-7,mammal,30").Id);

    [Fact]
    public void First_named_number_wins_and_the_next_stands_in_where_it_is_blank()
    {
        Assert.Equal("A", One("recordNumber,specimen,group,mass (g)", "B,A,mammal,30").Id);
        Assert.Equal("B", One("recordNumber,specimen,group,mass (g)", "B,,mammal,30").Id);
    }

    [Theory]
    [InlineData("mass", "30 g", 30)]
    [InlineData("mass (g)", "30", 30)]
    [InlineData("mass (kg)", "0.03", 30)]
    [InlineData("mass (mg)", "30000", 30)]
    [InlineData("measuredMassInGrams", "30", 30)]
    [InlineData("weight g", "30", 30)]
    [InlineData("weightInGrams", "30", 30)]
    [InlineData("mass (kg)", "30 g", 30)]
    public void Mass_in_grams(string column, string cell, double grams) => Assert.Equal(grams, One($"id,group,{column}", $"N,mammal,{cell}").Mass!.Value.Grams, 9);

    [Theory]
    [InlineData("lot mass (g)", "90", 90)]
    [InlineData("lotMassKg", "0.09", 90)]
    public void Mass_of_a_lot_in_grams(string column, string cell, double grams) => Assert.Equal(grams, One($"id,group,count,mass (g),{column}", $"N,mammal,3,30,{cell}").LotMass!.Value.Grams, 9);

    [Theory]
    [InlineData("displacement volume", "29 mL")]
    [InlineData("displacementVolumeMl", "29")]
    [InlineData("measuredVolumeInMillilitres", "29")]
    public void Displacement_in_millilitres(string column, string cell) => Assert.Equal(29, One($"id,group,{column}", $"N,mammal,{cell}").DisplacementVolume!.Value.Milliliters, 9);

    public static TheoryData<string, string> LengthKeys => new()
    {
        { "length", "length" }, { "total-length", "total-length" }, { "standard-length", "standard-length" }, { "snout-vent-length", "snout-vent-length" }, { "svl", "snout-vent-length" },
        { "head-body-length", "head-body-length" }, { "carapace-length", "carapace-length" }, { "mantle-length", "mantle-length" }, { "disc-width", "disc-width" },
        { "girth", "girth" }, { "width", "width" }, { "height", "height" }, { "thickness", "thickness" },
    };

    [Theory]
    [MemberData(nameof(LengthKeys))]
    public void Length_in_each_unit(string column, string key)
    {
        Assert.Equal(63, Of($"{column} (mm)", "63"), 9);
        Assert.Equal(63, Of($"{column} (cm)", "6.3"), 9);
        Assert.Equal(63, Of($"{column} (m)", "0.063"), 9);
        Assert.Equal(63, Of(column, "63 mm"), 9);

        double Of(string heading, string cell) => LengthOf(One($"id,group,mass (g),{heading}", $"N,mammal,30,{cell}"), key);
    }

    private static double LengthOf(Specimen s, string key) => (key switch
    {
        "length" => s.Length,
        "total-length" => s.TotalLength,
        "standard-length" => s.StandardLength,
        "snout-vent-length" => s.SnoutVentLength,
        "head-body-length" => s.HeadBodyLength,
        "carapace-length" => s.CarapaceLength,
        "mantle-length" => s.MantleLength,
        "disc-width" => s.DiscWidth,
        "girth" => s.Girth,
        "width" => s.Width,
        "height" => s.Height,
        _ => s.Thickness,
    })!.Value.Millimeters;

    [Theory]
    [InlineData("measuredLengthInMillimeters")]
    [InlineData("measuredLengthInMillimetres")]
    public void Flat_terms_of_measurement_extensions_give_the_length(string column) => Assert.Equal(63, LengthOf(One($"id,group,mass (g),{column}", "N,mammal,30,63"), "length"), 9);

    [Fact]
    public void Total_length_in_mm_is_understood() => Assert.Equal(63, LengthOf(One("id,group,mass (g),totalLengthInMM", "N,mammal,30,63"), "total-length"), 9);

    [Fact]
    public void Words_of_each_column_reach_the_specimen()
    {
        var s = One(
            "id,individualCount,group,scientificName,sex,lifeStage,condition,diedAt,eventDate,samplingProtocol,recordedBy,permit,intendedUse,occurrenceRemarks,verbatimLocality,mass (g)",
            "N,2,Mammal,Sorex minutus,Female,Adult,Chilled,2027-02-27T10:00+00:00,2027-02-28,pitfall trap,A. Nobody,A-1; B-2,Research,wet,a mole,30");

        Assert.Equal((2, "mammal", "Sorex minutus", Sex.Female, LifeStage.Adult, Condition.Chilled), (s.Count, s.Group, s.ScientificName, s.Sex!.Value, s.LifeStage!.Value, s.Condition!.Value));
        Assert.Equal((new NodaTime.LocalDate(2027, 2, 28), "pitfall trap", "A. Nobody", IntendedUse.Research, "wet", "a mole"), (s.FoundOn!.Value, s.HowObtained, s.CollectedBy, s.IntendedUse!.Value, s.Notes, s.Where));
        Assert.Equal(NodaTime.Instant.FromUtc(2027, 2, 27, 10, 0), s.DiedAt);
        Assert.Equal(["A-1", "B-2"], s.Permits);
    }

    [Fact]
    public void House_words_name_the_same_columns()
    {
        var s = One(
            "specimen,count,group,scientific-name,life-stage,found-on,how-obtained,collected-by,permits,notes,locality,mass (g)",
            "N,2,mammal,Sorex minutus,adult,2027-02-28,pitfall trap,A. Nobody,A-1|B-2|,wet,a mole,30");

        Assert.Equal((2, "Sorex minutus", LifeStage.Adult, "pitfall trap", "A. Nobody", "wet", "a mole"), (s.Count, s.ScientificName, s.LifeStage!.Value, s.HowObtained, s.CollectedBy, s.Notes, s.Where));
        Assert.Equal(["A-1", "B-2"], s.Permits);
        Assert.Equal("a shore", One("specimen,group,where,locality,mass (g)", "N,mammal,a shore,a mole,30").Where);
        Assert.Equal(["A-1"], One("specimen,group,permits,mass (g)", "N,mammal,A-1,30").Permits);
    }

    [Theory]
    [InlineData("sex")]
    [InlineData("life-stage")]
    [InlineData("condition")]
    [InlineData("intended-use")]
    public void What_nobody_knows_is_left_out(string column)
    {
        foreach (var word in (string[])["unknown", "Undetermined", "not recorded", "Indeterminate", "N/A"])
        {
            var s = One($"id,group,{column},mass (g)", $"N,mammal,{word},30");
            Assert.True(s is { Sex: null, LifeStage: null, Condition: null, IntendedUse: null }, word);
        }
    }

    [Theory]
    [InlineData("subadult", LifeStage.Juvenile)]
    [InlineData("Immature", LifeStage.Juvenile)]
    [InlineData("young", LifeStage.Juvenile)]
    [InlineData("tadpole", LifeStage.Larva)]
    [InlineData("nymph", LifeStage.Larva)]
    [InlineData("fetus", LifeStage.Embryo)]
    [InlineData("foetus", LifeStage.Embryo)]
    [InlineData("ADULT", LifeStage.Adult)]
    public void Life_stages_go_by_other_names(string word, LifeStage stage) => Assert.Equal(stage, One("id,group,lifeStage,mass (g)", $"N,mammal,{word},30").LifeStage);

    [Theory]
    [InlineData("tissue for dna first", IntendedUse.TissueForDnaFirst)]
    [InlineData("Display", IntendedUse.Display)]
    public void Words_may_be_parted_by_spaces(string word, IntendedUse use) => Assert.Equal(use, One("id,group,intendedUse,mass (g)", $"N,mammal,{word},30").IntendedUse);

    [Theory]
    [InlineData("2027-02-28")]
    [InlineData("2027-02-28T09:30")]
    [InlineData("2027-02-28/2027-03-02")]
    [InlineData("2027-02-28 09:30")]
    public void Date_may_bring_a_time_or_a_second_date(string cell) => Assert.Equal(new NodaTime.LocalDate(2027, 2, 28), One("id,group,eventDate,mass (g)", $"N,mammal,{cell},30").FoundOn);

    [Fact]
    public void Date_with_anything_else_behind_it_is_an_error() =>
        Assert.Contains(Assert.Single(Rows("id,group,eventDate,mass (g)\nN,mammal,2027-02-28?,30\n")).Findings, f => f.Severity == Severity.Error && f.Where.Column == 10);

    [Theory]
    [InlineData("higherTaxon")]
    [InlineData("higherClassification")]
    [InlineData("phylum")]
    [InlineData("class")]
    [InlineData("order")]
    [InlineData("family")]
    public void Any_rank_names_the_sort_of_animal(string column) => Assert.Equal("Mammalia", One($"id,{column},mass (g)", "N,Mammalia,30").HigherTaxon);

    [Fact]
    public void Ranks_are_taken_together_from_high_to_low() => Assert.Equal("Mammalia; Eulipotyphla; Soricidae", One("id,family,order,class,mass (g)", "N,Soricidae,Eulipotyphla,Mammalia,30").HigherTaxon);

    [Fact]
    public void Missing_columns_are_told_all_at_once_and_each_with_what_to_add()
    {
        var opened = SpecimenTable.Open(new StringReader("colour\nred\n"), "finds.csv", Kinds.Bundled);

        Assert.Null(opened.Value);
        Assert.Equal(
            [
                "finds.csv:1:1: error missing-column: there is no column for the specimen's number; add 'specimen' or 'catalogNumber'",
                "finds.csv:1:1: error missing-column: there is no column for the sort of animal; add 'group', or one of 'higher taxon', 'class', 'order', 'family'",
                "finds.csv:1:1: error missing-column: there is no column with a measurement; add such as 'mass (g)' or 'length (mm)'",
            ],
            opened.Findings.Where(f => f.Severity == Severity.Error).Select(f => f.ToString()));
    }

    [Fact]
    public void Row_without_a_number_is_an_error_of_its_own()
    {
        var rows = Rows("id,group,mass (g)\n,mammal,30\nN,mammal,31\n");

        Assert.Null(rows[0].Specimen);
        Assert.Equal("finds.csv:2:1: error missing-id: the row has no number for its specimen; give each specimen a number of its own", Assert.Single(rows[0].Findings, f => f.Severity == Severity.Error).ToString());
        Assert.Equal((2, 1), (rows[0].IdAt.Line, rows[0].IdAt.Column));
        Assert.Equal((2, 3, "N"), (rows[1].Number, rows[1].Line, rows[1].Id));
    }

    [Fact]
    public void Row_without_any_measurement_says_so_and_one_whose_measurement_cannot_be_read_says_that_alone()
    {
        var rows = Rows("id,group,mass (g)\nA,mammal,\nB,mammal,heavy\n");

        Assert.Equal(["no-measurement"], rows[0].Findings.Where(f => f.Severity == Severity.Error).Select(f => f.Id));
        Assert.DoesNotContain(rows[1].Findings, f => f.Id == "no-measurement");
        Assert.Contains(rows[1].Findings, f => f.Severity == Severity.Error);
        Assert.All(rows, r => Assert.Null(r.Specimen));
    }

    [Fact]
    public void Row_with_too_few_cells_is_not_read_further_and_keeps_its_number()
    {
        var rows = Rows("id,group,mass (g)\nA,mammal\nB,mammal,30\n");

        Assert.Null(rows[0].Specimen);
        Assert.Equal("A", rows[0].Id);
        Assert.Equal("too-few-cells", Assert.Single(rows[0].Findings).Id);
        Assert.NotNull(rows[1].Specimen);
    }

    /// <summary>Each column is known once, in the order in which the preferred one comes first.</summary>
    [Fact]
    public void Columns_read_as_they_were_kept() => KeptText.Holds("Planning/kept/columns.txt", string.Join('\n',
        ((string[])[$"specimen <- {Names(SpecimenColumns.Id)}", $"higher-taxon <- {Names(SpecimenColumns.Ranks)}", $"where <- {Names(SpecimenColumns.Places)}"])
            .Concat(SpecimenColumns.Quantities.Concat(SpecimenColumns.Words).Select(q => $"{q.Key} <- {Names(q.Columns)}")).Append($"all: {string.Join(", ", SpecimenColumns.All)}")));

    private static string Names(IEnumerable<SpecimenColumn> columns) => string.Join(", ", columns.Select(c => c.Unit.Length == 0 ? c.Name : $"{c.Name} in {c.Unit}"));
}
