namespace Protocolist.Tests.EndToEnd;

/// <summary>Whatever is wrong, the program ends with 2, says where and what to do on standard error, and writes nothing else.</summary>
public sealed class BadInputTests : IDisposable
{
    private const string Good = "format: 1\nspecimen: X-1\ngroup: mammal\nmass: 7 kg\n";

    private readonly Tool _tool = new();

    public void Dispose() => _tool.Dispose();

    private void Refuses(Run run, params string[] says)
    {
        Assert.True(run.Exit == 2, run.ToString());
        Assert.Empty(run.Out);
        Assert.All(says, s => Assert.Contains(s, run.Error, StringComparison.Ordinal));
        Assert.DoesNotContain(Directory.GetFiles(_tool.Folder, "*", SearchOption.AllDirectories), f => f.EndsWith(".part", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("mass: 7 kgg\n", "s.yaml:4:9: error ", "kgg")]
    [InlineData("mass: 7 L\n", "s.yaml:4:7: error wrong-dimension", "mass")]
    [InlineData("masss: 7 kg\n", "s.yaml:4:1: error unknown-key", "did you mean 'mass'?")]
    [InlineData("mass: -7 kg\n", "s.yaml:4:1: error not-positive", "mass")]
    [InlineData("mass: 7 kg\ncondition: rotten\n", "s.yaml:5:12: error unknown-word", "known here")]
    [InlineData("mass: 7 kg\nfound-on: 1 March\n", "s.yaml:5:11: error bad-date", "2027")]
    [InlineData("mass: 7 kg\n\tlength: 75 cm\n", "s.yaml:5:1: error ", "tab")]
    [InlineData("mass: [7 kg\n", "s.yaml:4:7: error ", "]")]
    public void Wrong_specimen_is_refused_at_line_and_column(string rest, params string[] says)
    {
        var path = _tool.File("s.yaml", "format: 1\nspecimen: X-1\ngroup: mammal\n" + rest);

        Refuses(_tool.Run("plan", path), says);
    }

    [Fact]
    public void Missing_file_is_refused() => Refuses(_tool.Run("plan", "nowhere.yaml"), "nowhere.yaml: error unreadable-file: there is no such file");

    [Fact]
    public void Folder_in_place_of_a_file_is_refused() => Refuses(_tool.Run("plan", "."), "error unreadable-file: this is a folder");

    [Fact]
    public void Empty_file_is_refused() => Refuses(_tool.Run("plan", _tool.File("s.yaml", "")), "s.yaml:1:1: error ", "empty");

    [Fact]
    public void File_of_bytes_is_refused()
    {
        var path = Path.Combine(_tool.Folder, "s.yaml");
        File.WriteAllBytes(path, [0x66, 0x6f, 0xff, 0xfe, 0x00]);

        Refuses(_tool.Run("plan", path), "s.yaml:1:3: error not-utf8");
    }

    [Theory]
    [InlineData("&a [*a]")]
    [InlineData("!!System.Type x")]
    [InlineData("? [complex]\n: key")]
    [InlineData("a: 1\n---\nb: 2")]
    public void Hostile_yaml_is_refused(string text) => Refuses(_tool.Run("plan", _tool.File("s.yaml", text)), "s.yaml:");

    [Fact]
    public void Hundred_thousand_brackets_are_refused() => Refuses(_tool.Run("plan", _tool.File("s.yaml", new string('[', 100_000))), "s.yaml:1:");

    [Fact]
    public void Unknown_group_names_the_nearest() =>
        Refuses(_tool.Run("plan", _tool.File("s.yaml", Good.Replace("mammal", "mamal", StringComparison.Ordinal))), "s.yaml:3:1: error unknown-group", "did you mean 'mammal'?");

    [Fact]
    public void Body_of_no_class_is_refused_with_the_nearest_classes() =>
        Refuses(_tool.Run("plan", _tool.File("s.yaml", Good.Replace("7 kg", "20000 kg", StringComparison.Ordinal))), "error no-protocol", "is outside");

    [Fact]
    public void Unknown_option_is_refused() => Refuses(_tool.Run("plan", Repository.Otter, "--benhc", "x"), "--benhc", "--help");

    [Fact]
    public void Unknown_word_is_told_with_those_that_are_known_on_one_line() =>
        Refuses(_tool.Run("list", "nothing"), "'nothing'", "Must be one of: 'protocols' 'checks' 'fluids' 'groups'");

    [Fact]
    public void Unknown_command_is_refused() => Refuses(_tool.Run("plann"), "plann");

    [Fact]
    public void Unknown_format_is_refused() => Refuses(_tool.Run("plan", Repository.Otter, "--format", "docx"), "docx");

    [Theory]
    [InlineData("keeping=vodka", "error unknown-option", "ethanol")]
    [InlineData("keping=ethanol", "error unknown-choice", "did you mean 'keeping'?")]
    [InlineData("keeping", "error bad-choice", "--choose keeping=ethanol")]
    public void Unknown_choice_is_refused(string choice, params string[] says) => Refuses(_tool.Run("plan", Repository.Otter, "--choose", choice), says);

    [Theory]
    [InlineData("tomorrow")]
    [InlineData("2027-02-30T09:00")]
    [InlineData("2027-03-01T25:00")]
    [InlineData("")]
    public void Moment_that_is_none_is_refused(string start) => Refuses(_tool.Run("plan", Repository.Otter, "--start", start), "error bad-start", "2027-03-01T09:00");

    [Fact]
    public void Bench_in_an_unknown_zone_is_refused() =>
        Refuses(_tool.Run("plan", Repository.Otter, "--bench", _tool.File("b.yaml", "format: 1\nbench: b\nzone: Atlantic/Azorres\n")), "b.yaml:3:7: error unknown-zone", "Atlantic/Azores");

    [Fact]
    public void Broken_house_protocol_is_refused_with_all_its_errors()
    {
        _tool.File(Path.Combine("house", "h.yaml"), """
            format: 1
            protocol: house
            revision: 1
            title: House
            for: {group: mammal, mass: 1 g to 2 g}
            values:
              reach: specimen.half-thickness
              soak: reech * 2
            stages:
              - {stage: immerse, id: fix, fluid: formalin 10 %, ratio: 10, last: 3 kg}
            """);

        var run = _tool.Run("plan", Repository.Otter, "--protocols", Path.Combine(_tool.Folder, "house"));

        Refuses(run, "h.yaml:8:9: error unknown-value: 'reech'", "did you mean 'reach'?", "h.yaml:10:", "last");
    }

    [Fact]
    public void House_folder_that_is_not_there_is_refused() => Refuses(_tool.Run("plan", Repository.Otter, "--protocols", "nowhere"), "nowhere: error unreadable-file");

    [Fact]
    public void Out_into_a_folder_that_is_not_there_leaves_nothing_behind()
    {
        var run = _tool.Run("plan", Repository.Otter, "--out", Path.Combine("not", "there", "plan.txt"));

        Refuses(run, "there is no folder", "make it first");
        Assert.Empty(Directory.GetFileSystemEntries(_tool.Folder));
    }

    [Fact]
    public void Out_onto_a_folder_leaves_nothing_behind()
    {
        Directory.CreateDirectory(Path.Combine(_tool.Folder, "taken"));

        Refuses(_tool.Run("plan", Repository.Otter, "--out", "taken"), "'taken' is a folder");
    }

    [Theory]
    [InlineData("")]
    [InlineData("{}")]
    [InlineData("[1, 2")]
    [InlineData("null")]
    [InlineData("format: 1\n")]
    public void Plan_that_is_none_is_not_explained(string text) => Refuses(_tool.Run("explain", _tool.File("p.json", text), "fix.last"), "p.json:1:");

    [Fact]
    public void Plan_of_a_later_format_is_not_explained() =>
        Refuses(_tool.Run("explain", _tool.File("p.json", """{"formatVersion": 99}"""), "fix.last"), "p.json:1:1: error later-format", "99");
}
