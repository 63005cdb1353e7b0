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
            Assert.All(step.Instructions.Concat(step.Cautions).Texts(), text => Assert.Contains(Joined(text), OneLine, StringComparison.Ordinal));
        }
    }

    [Fact]
    public void Plan_with_an_error_says_do_not_start_before_anything_else_to_do()
    {
        var plan = Plan(Mammal("7 kg") with { Where = null }, Shelf.Bundled()).Value!;

        var sheet = TextSheet.Write(plan);

        Assert.InRange(sheet.IndexOf("DO NOT START", StringComparison.Ordinal), 1, sheet.IndexOf("What the checks say", StringComparison.Ordinal));
        Assert.DoesNotContain("DO NOT START", Sheet, StringComparison.Ordinal);
    }

    [Fact]
    public void Word_longer_than_a_line_does_not_hang_or_vanish()
    {
        var word = new string('x', 300);

        Assert.Contains(word, TextSheet.Write(Ethanol with { Label = [Said.Of(word)] }), StringComparison.Ordinal);
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

    [Fact]
    public void Revised_plan_says_what_changed_and_why_before_the_findings()
    {
        Assert.Contains("Revision 1, by the log up to Mon 2027-03-15 09:00: ", RevisedLine, StringComparison.Ordinal);
        Assert.All(Revised.Changes, c => Assert.Contains(Joined(c.ToString()), RevisedLine, StringComparison.Ordinal));
        Assert.InRange(RevisedSheet.IndexOf("What changed with revision 1\n", StringComparison.Ordinal), 1, RevisedSheet.IndexOf("What the checks say", StringComparison.Ordinal));
        Assert.All(RevisedSheet.Split('\n'), l => Assert.True(l.Length <= 100, l));
        Assert.DoesNotContain("What changed", Sheet, StringComparison.Ordinal);
    }

    [Fact]
    public void Steps_of_a_revised_plan_say_how_far_they_are_and_why_they_are_there()
    {
        Assert.Contains("\n4. Inject fixative (done)\n", RevisedSheet, StringComparison.Ordinal);
        Assert.Contains("800 mL of neutral buffered formalin 10 %.", RevisedLine, StringComparison.Ordinal);
        Assert.Contains("\n5. Pose it (left out)\n", RevisedSheet.Replace(Revised.Step("pose")!.Title.ToString(), "Pose it", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.Contains("Because it lay straight.", RevisedLine, StringComparison.Ordinal);
        Assert.Contains("\n6. Fix in formalin (under way)\n", RevisedSheet, StringComparison.Ordinal);
        Assert.Contains("7. Inject the soft part", RevisedLine, StringComparison.Ordinal);
        Assert.Contains("Because soft (head) was seen 2027-03-13 16:00.", RevisedLine, StringComparison.Ordinal);
    }

    [Fact]
    public void Instructions_of_what_is_done_are_left_off()
    {
        Assert.DoesNotContain(Joined(Revised.Step("inject-fixative")!.Instructions[0].ToString()), RevisedLine, StringComparison.Ordinal);
        Assert.Contains(Joined(Revised.Step("fix")!.Instructions[0].ToString()), RevisedLine, StringComparison.Ordinal);
    }

    [Fact]
    public void Care_stands_there_with_its_amounts()
    {
        Assert.Contains(Ethanol.Care, c => !c.Amount.IsEmpty);
        Assert.All(Ethanol.Care.Where(c => !c.Amount.IsEmpty), c => Assert.Contains(Joined(c.Amount.ToString()), OneLine, StringComparison.Ordinal));
    }

    private static readonly Plan Revised = Planning.Revising.SkerryPoint.Revise(Planning.Revising.SkerryPoint.Plan(Planning.Revising.SkerryPoint.Otter), """
          - {step: keep-cold, begun: 2027-03-01T09:00, done: 2027-03-01T09:20}
          - {step: record, done: 2027-03-01T10:05}
          - {step: slits, done: 2027-03-01T11:00}
          - {step: inject-fixative, begun: 2027-03-01T11:00, done: 2027-03-01T13:10, used: 800 mL}
          - {step: pose, skipped: it lay straight}
          - {step: fix, begun: 2027-03-01T13:45}
          - {step: fix, at: 2027-03-13T16:00, signs: [soft], place: head}
          - {step: fix, at: 2027-03-15T09:00}
        """).Plan;

    private static readonly string RevisedSheet = TextSheet.Write(Revised);
    private static readonly string RevisedLine = Joined(RevisedSheet);
}
