using System.Text.Json;
using Protocolist.Cli;

namespace Protocolist.Tests.Fluids;

/// <summary>The commands mix, fluid and strength, run in this process.</summary>
public class FluidCommandTests
{
    [Fact]
    public void Mix_prints_the_recipe_as_json()
    {
        var (code, output, _) = Run("mix", "ethanol 70 %vol", "--volume", "1 L", "--from", "ethanol 96 %vol", "--json");
        Assert.Equal(0, code);
        var json = JsonDocument.Parse(output).RootElement;
        Assert.Equal("ethanol 70 %vol", json.GetProperty("target").GetString());
        Assert.Equal(1000, json.GetProperty("resultVolumeMl").GetDouble());
        Assert.Equal(20, json.GetProperty("temperatureC").GetDouble());
        // 96 to 70 %vol: 40.78 mL water to 100 mL (computed from OIML R 22), 137.14 mL result.
        Assert.Equal(729.17, json.GetProperty("parts")[0].GetProperty("volumeMl").GetDouble(), 0.01);
        Assert.Equal(297.35, json.GetProperty("parts")[1].GetProperty("volumeMl").GetDouble(), 0.05);
        Assert.Equal(26.52, json.GetProperty("contractionMl").GetDouble(), 0.05);
        Assert.Equal(0, json.GetProperty("findings").GetArrayLength());
    }

    [Fact]
    public void Mix_ends_with_1_and_says_why_where_the_target_is_out_of_reach()
    {
        var (code, output, _) = Run("mix", "ethanol 96 %vol", "--volume", "1 L", "--from", "ethanol 70 %vol", "--json");
        Assert.Equal(1, code);
        Assert.Equal("target-too-strong", JsonDocument.Parse(output).RootElement.GetProperty("findings")[0].GetProperty("id").GetString());
    }

    [Fact]
    public void Mix_asks_which_four_percent_is_meant()
    {
        var (code, output, _) = Run("mix", "formalin 4 %", "--volume", "1 L", "--json");
        Assert.Equal(0, code);
        Assert.Equal("ambiguous-formalin-strength", JsonDocument.Parse(output).RootElement.GetProperty("findings")[0].GetProperty("id").GetString());
    }

    [Fact]
    public void Mix_weighs_the_salts_that_are_given_and_uses_up_what_is_to_be_used_up()
    {
        var (code, output, _) = Run("mix", "neutral buffered formalin 10 %", "--volume", "2 L", "--from", "formaldehyde stock 37 %mass", "--from", "Na2HPO4.7H2O", "--from", "NaH2PO4.H2O", "--from", "neutral buffered formaldehyde 3 % w/v = all 500 mL");
        Assert.Equal(0, code);
        Assert.Contains("disodium phosphate heptahydrate", output, StringComparison.Ordinal);
        Assert.Contains("500 mL", output, StringComparison.Ordinal);
        Assert.Contains("gloves", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Fluid_prints_its_properties_as_json()
    {
        var (code, output, _) = Run("fluid", "neutral buffered formalin 10 %", "--json");
        Assert.Equal(0, code);
        var json = JsonDocument.Parse(output).RootElement;
        Assert.Equal(40.1, json.GetProperty("formaldehydeGPerL").GetDouble(), 0.11);
        Assert.Equal("phosphate", json.GetProperty("buffering").GetString());
        Assert.Equal(7.0, json.GetProperty("ph").GetDouble(), 0.1);
        Assert.False(json.TryGetProperty("flashPointC", out _));
        Assert.False(json.TryGetProperty("ethanolMassPercent", out _));
    }

    [Fact]
    public void Strength_prints_what_a_density_means()
    {
        var (code, output, _) = Run("strength", "ethanol", "--density", "885.56 kg/m3", "--json");
        Assert.Equal(0, code);
        var json = JsonDocument.Parse(output).RootElement;
        Assert.Equal(70.0, json.GetProperty("volumePercent").GetDouble(), 0.01);
        Assert.Equal(62.39, json.GetProperty("massPercent").GetDouble(), 0.01);
    }

    [Theory]
    [InlineData("unknown-fluid", "mix", "ethanl 70 %vol", "--volume", "1 L")]
    [InlineData("wrong-dimension", "mix", "ethanol 70 %vol", "--volume", "1 kg")]
    [InlineData("volume-out-of-range", "mix", "ethanol 70 %vol", "--volume", "0 L")]
    [InlineData("temperature-out-of-range", "mix", "ethanol 70 %vol", "--volume", "1 L", "--at", "90 degC")]
    [InlineData("salt-without-hydrate", "mix", "neutral buffered formalin 10 %", "--volume", "1 L", "--from", "Na2HPO4")]
    [InlineData("range-out-of-place", "mix", "ethanol 70 %vol", "--volume", "1 to 2 L")]
    [InlineData("temperature-out-of-range", "fluid", "water", "--at", "55 degC")]
    [InlineData("unknown-fluid", "fluid", "gin")]
    [InlineData("density-out-of-range", "strength", "ethanol", "--density", "1005 kg/m3")]
    [InlineData("unknown-alcohol", "strength", "rum", "--density", "885 kg/m3")]
    public void What_cannot_be_used_ends_with_2_and_a_finding_on_standard_error(string id, params string[] arguments)
    {
        var (code, output, error) = Run(arguments);
        Assert.Equal(2, code);
        Assert.Equal("", output);
        Assert.Contains($"error {id}:", error, StringComparison.Ordinal);
        Assert.DoesNotContain(" at Protocolist", error, StringComparison.Ordinal);
    }

    private static (int Code, string Output, string Error) Run(params string[] words)
    {
        using var output = new StringWriter();
        using var error = new StringWriter();
        var code = CommandLine.Run(words, new() { Output = output, Error = error });
        return (code, output.ToString(), error.ToString());
    }
}
