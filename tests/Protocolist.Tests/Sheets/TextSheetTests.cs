using System.Globalization;
using Protocolist.Plans;
using Protocolist.Sheets;
using static Protocolist.Tests.Planning.PlanFixture;

namespace Protocolist.Tests.Sheets;

public class TextSheetTests
{
    private static readonly Plan Ethanol = Otter(("keeping", "ethanol"));
    private static readonly string Sheet = TextSheet.Write(Ethanol);
    private static readonly string OneLine = Joined(Sheet);

    private static string Joined(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    [Fact]
    public void Lines_fit_a_page()
    {
        Assert.All(Sheet.Split('\n'), l => Assert.True(l.Length <= 100, l));
        Assert.DoesNotContain(Sheet.Split('\n'), l => l != l.TrimEnd());
        Assert.EndsWith("\n", Sheet, StringComparison.Ordinal);
        Assert.DoesNotContain('\r', Sheet);
    }

    [Fact]
    public void Findings_stand_before_everything_to_do()
    {
        var findings = Sheet.IndexOf("What the checks say", StringComparison.Ordinal);

        Assert.InRange(findings, 1, Sheet.IndexOf("Before you start", StringComparison.Ordinal));
        Assert.InRange(findings, 1, Sheet.IndexOf("\n1. ", StringComparison.Ordinal));
        Assert.All(Ethanol.Findings, f => Assert.Contains(f.Id, OneLine, StringComparison.Ordinal));
    }

    [Fact]
    public void Every_step_stands_there_in_order_with_all_its_instructions_and_cautions()
    {
        var at = 0;
        foreach (var (step, number) in Ethanol.Steps.Select((s, i) => (s, i + 1)))
        {
            var next = Sheet.IndexOf(string.Create(CultureInfo.InvariantCulture, $"\n{number}. {step.Title}\n"), at, StringComparison.Ordinal);
            Assert.True(next >= at, step.Id);
            at = next;
            Assert.All(step.Instructions.Concat(step.Cautions), text => Assert.Contains(Joined(text), OneLine, StringComparison.Ordinal));
        }
    }

    [Fact]
    public void Plan_with_an_error_says_do_not_start_before_anything_else_to_do()
    {
        var plan = Plan(Mammal("7 kg") with { Where = null }, Protocolist.Protocols.Shelf.Bundled()).Value!;

        var sheet = TextSheet.Write(plan);

        Assert.InRange(sheet.IndexOf("DO NOT START", StringComparison.Ordinal), 1, sheet.IndexOf("What the checks say", StringComparison.Ordinal));
        Assert.DoesNotContain("DO NOT START", Sheet, StringComparison.Ordinal);
    }

    [Fact]
    public void Word_longer_than_a_line_does_not_hang_or_vanish()
    {
        var word = new string('x', 300);

        Assert.Contains(word, TextSheet.Write(Ethanol with { Label = [word] }), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("tr-TR")]
    [InlineData("de-DE")]
    [InlineData("ar-SA")]
    [InlineData("fa-IR")]
    public void Culture_changes_no_byte(string culture)
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
            Assert.Equal(Sheet, TextSheet.Write(Otter(("keeping", "ethanol"))));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
