using Protocolist.Findings;
using Protocolist.Quantities;
using Protocolist.Reading;

namespace Protocolist.Tests.Reading;

public class FieldsTests
{
    private readonly List<Finding> _findings = [];

    [Fact]
    public void Unknown_keys_are_all_reported_with_the_word_meant_and_own_keys_pass()
    {
        var fields = Of("maas: 2 kg\nlength: 75 cm\nx-note: mine\ncolour: red\n");
        fields.Quantity("mass", Dimension.OfMass);
        fields.Quantity("length", Dimension.OfLength);
        fields.Finish();
        Assert.Equal(
            [
                "t.yaml:1:1: error unknown-key: unknown key 'maas' in a specimen; did you mean 'mass'?",
                "t.yaml:4:1: error unknown-key: unknown key 'colour' in a specimen; known here: length, mass",
            ],
            Lines());
    }

    [Theory]
    [InlineData("mass: 2,5 kg", "t.yaml:1:8: error decimal-comma: a comma stands in a number; write the decimal sign as a point and leave thousands unseparated; a comma between arguments has a space behind it")]
    [InlineData("mass: '2 kgg'", "t.yaml:1:10: error unknown-unit: 'kgg' is not a unit; did you mean 'kg'?")]
    [InlineData("mass: \"2\\u0020kgg\"", "t.yaml:1:7: error unknown-unit: 'kgg' is not a unit; did you mean 'kg'?")]
    [InlineData("mass: 5 L", "t.yaml:1:7: error wrong-dimension: 'mass' must be a mass, and '5 L' is a volume; give it in a fitting unit")]
    [InlineData("mass: [2 kg]", "t.yaml:1:1: error not-a-text: 'mass' must be one value; write it on the same line as its key")]
    [InlineData("mass: {a: b}", "t.yaml:1:1: error not-a-text: 'mass' must be one value; write it on the same line as its key")]
    public void A_quantity_that_cannot_be_read_is_placed_inside_its_text(string yaml, string finding)
    {
        Assert.Null(Of(yaml).Quantity("mass", Dimension.OfMass));
        Assert.Equal([finding], Lines());
    }

    [Theory]
    [InlineData("count: 3", 3)]
    [InlineData("count: 0", null)]
    [InlineData("count: -3", null)]
    [InlineData("count: 3.5", null)]
    [InlineData("count: '+3'", null)]
    [InlineData("count: 99999999999", null)]
    [InlineData("count: ٣", null)]
    public void A_whole_number_has_plain_digits_and_keeps_its_bounds(string yaml, int? value)
    {
        Assert.Equal(value, Of(yaml).Whole("count", 1, 100));
        Assert.Equal(value is null ? 1 : 0, _findings.Count(f => f.Id == "bad-number" && f.Where.Column == 8));
    }

    [Fact]
    public void Words_yes_or_no_lists_and_required_keys_say_what_is_wrong_with_them()
    {
        var fields = Of("sex: femal\nfrozen: maybe\nlist: [a, [b]]\nempty:\nsingle: one\nnested: text\n");
        Assert.Null(fields.Word("sex", ["female", "male"]));
        Assert.Null(fields.YesNo("frozen"));
        Assert.Equal(["a"], fields.Texts("list").Select(t => t.Value));
        Assert.Equal(["one"], fields.Texts("single").Select(t => t.Value));
        Assert.Null(fields.Required("empty"));
        Assert.Null(fields.Required("absent"));
        Assert.Null(fields.Nested("nested", Said.Of("the nested part")));
        Assert.Null(fields.Nested("empty", Said.Of("the empty part")));
        fields.Finish();
        Assert.Equal(
            [
                "t.yaml:1:6: error unknown-word: 'femal' is not one of the words for 'sex'; did you mean 'female'?",
                "t.yaml:2:9: error unknown-word: 'maybe' is not one of the words for 'frozen'; known here: false, no, true, yes",
                "t.yaml:3:11: error not-a-text: each item of 'list' must be one value; write one value an item",
                "t.yaml:4:1: error missing-key: a specimen needs 'empty'; add 'empty:'",
                "t.yaml:1:1: error missing-key: a specimen needs 'absent'; add 'absent:'",
                "t.yaml:6:9: error not-a-mapping: the nested part must be a set of 'key: value' lines; put each key on a line of its own",
            ],
            Lines());
    }

    [Fact]
    public void A_message_never_carries_a_whole_long_text()
    {
        Of($"sex: {new string('x', 100_000)}").Word("sex", ["female", "male"]);
        Assert.True(_findings[0].ToString().Length < 300);
    }

    private Fields Of(string yaml) => Fields.Of(DocumentReader.Read(new("t.yaml", yaml)).Value!, Named.Specimen, _findings)!;

    private IEnumerable<string> Lines() => _findings.Select(f => f.ToString());
}
