using System.Text.Json;

namespace Protocolist.Tests.EndToEnd;

/// <summary>Commands <c>check</c>, <c>list</c> and <c>show</c>.</summary>
public sealed class ShelfCommandTests : IDisposable
{
    private readonly Tool _tool = new();

    public void Dispose() => _tool.Dispose();

    [Fact]
    public void Check_finds_nothing_wrong_with_what_comes_with_it()
    {
        var run = _tool.Run("check", Repository.File("protocols"), Repository.SkerryPoint, Repository.Otter);

        Assert.True(run.Exit == 0, run.ToString());
        Assert.Empty(run.Error);
        Assert.Contains(" 0 errors", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_lists_errors_of_all_files_with_places_and_ends_with_1()
    {
        _tool.File("a.yaml", "format: 1\nspecimen: A\ngroup: mammal\nmas: 7 kg\n");
        _tool.File("b.yaml", "format: 1\nbench: b\nzone: Nowhere/Land\n");

        var run = _tool.Run("check", "a.yaml", "b.yaml");

        Assert.True(run.Exit == 1, run.ToString());
        Assert.Contains("a.yaml:4:1: error unknown-key", run.Out, StringComparison.Ordinal);
        Assert.Contains("b.yaml:3:7: error unknown-zone", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_as_json_is_json_with_places()
    {
        _tool.File("a.yaml", "format: 1\nspecimen: A\ngroup: mammal\nmas: 7 kg\n");

        var run = _tool.Run("check", "a.yaml", "--json");

        Assert.Equal(1, run.Exit);
        using var json = JsonDocument.Parse(run.Out);
        Assert.Equal("a.yaml", json.RootElement.GetProperty("files")[0].GetString());
        var finding = json.RootElement.GetProperty("findings")[0];
        Assert.Equal(("a.yaml", 4, 1, "error"), (finding.GetProperty("file").GetString(), finding.GetProperty("line").GetInt32(), finding.GetProperty("column").GetInt32(), finding.GetProperty("severity").GetString()));
    }

    [Fact]
    public void Check_of_a_missing_file_ends_with_2()
    {
        var run = _tool.Run("check", "nowhere.yaml");

        Assert.True(run.Exit == 2, run.ToString());
        Assert.Empty(run.Out);
        Assert.Contains("nowhere.yaml: error unreadable-file", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Strict_check_counts_warnings_as_errors()
    {
        _tool.File("p.yaml", """
            format: 1
            protocol: unsourced
            revision: 1
            title: Nobody says where from
            for: {group: mammal, mass: 1 g to 2 g}
            values: {soak: 24 h}
            stages:
              - {stage: immerse, id: fix, fluid: formalin 10 %, ratio: 10, last: soak}
              - {stage: house, id: house, fluid: ethanol 70 %vol, ratio: 3}
            """);

        Assert.Equal(0, _tool.Run("check", "p.yaml").Exit);
        var strict = _tool.Run("check", "p.yaml", "--strict");
        Assert.True(strict.Exit == 1, strict.ToString());
        Assert.Contains("p.yaml:6:", strict.Out, StringComparison.Ordinal);
        Assert.Contains("unsourced", strict.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("protocols", "mammal-large")]
    [InlineData("checks", "mixed-buffering")]
    [InlineData("fluids", "ethanol 70 %vol")]
    [InlineData("groups", "bony-fish")]
    public void List_gives_one_id_a_line(string what, string id)
    {
        var run = _tool.Run("list", what);

        Assert.True(run.Exit == 0, run.ToString());
        Assert.Empty(run.Error);
        Assert.Contains(run.Out.Split('\n'), line => line.StartsWith(id, StringComparison.Ordinal));
    }

    [Fact]
    public void List_is_of_protocols_unless_told_otherwise() => Assert.Equal(_tool.Run("list", "protocols").Out, _tool.Run("list").Out);

    [Fact]
    public void Show_says_where_each_line_of_an_inherited_protocol_comes_from()
    {
        var run = _tool.Run("show", "fish-medium");

        Assert.True(run.Exit == 0, run.ToString());
        Assert.Contains("[protocols/fishes/fish-medium.yaml:", run.Out, StringComparison.Ordinal);
        Assert.Contains("[protocols/bases/vertebrate.yaml:", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Show_gives_the_page_of_a_check()
    {
        var run = _tool.Run("show", "formalin-without-hood");

        Assert.True(run.Exit == 0, run.ToString());
        Assert.Contains("warning: formalin is injected in a room without a hood", run.Out, StringComparison.Ordinal);
        Assert.Contains("source: 29 CFR 1910.1048", run.Out, StringComparison.Ordinal);
        Assert.Contains("never lower it", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Show_of_an_unknown_protocol_names_the_nearest()
    {
        var run = _tool.Run("show", "fish-medum");

        Assert.True(run.Exit == 2, run.ToString());
        Assert.Contains("did you mean 'fish-medium'?", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void House_protocol_takes_the_place_of_the_bundled_one_of_its_id()
    {
        _tool.File(Path.Combine("house", "f.yaml"), "format: 1\nprotocol: fish-medium\nrevision: 9\ntitle: House fish\nextends: fish-medium\n");

        var run = _tool.Run("show", "fish-medium", "--protocols", "house");

        Assert.True(run.Exit == 0, run.ToString());
        Assert.Contains("fish-medium, revision 9", run.Out, StringComparison.Ordinal);
        Assert.Contains("title: House fish", run.Out, StringComparison.Ordinal);
    }
}
