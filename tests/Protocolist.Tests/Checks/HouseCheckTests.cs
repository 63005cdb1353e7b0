using Protocolist.Checks;
using Protocolist.Findings;
using Protocolist.Plans;

namespace Protocolist.Tests.Checks;

public class HouseCheckTests
{
    private static string Check(string when) => $$"""
        checks:
          fix-long-enough:
            when: {{when}}
            severity: error
            message: our large fishes lie three weeks
            remedy: leave it longer
            source: common practice
        """;

    [Fact]
    public void House_check_speaks_where_its_condition_holds_and_names_its_figures()
    {
        var found = Assert.Single(AllChecks.Review(Cases.More(Check("fix.last < 21 d and specimen.mass > 30 g"))), f => f.Id == "fix-long-enough");
        Assert.Equal(Severity.Error, found.Severity);
        Assert.Equal(["fix.last", "specimen.mass"], found.Figures.Order());
        Assert.Contains("20 d", found.Message.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void House_check_tells_its_condition_and_what_each_name_in_it_stands_for_here()
    {
        var found = Assert.Single(AllChecks.Review(Cases.More(Check("fix.last < 21 d and specimen.mass > 30 g"))), f => f.Id == "fix-long-enough");
        Assert.Equal("our large fishes lie three weeks (fix.last < 21 d and specimen.mass > 30 g; here fix.last is 20 d, specimen.mass is 40 g)", found.Message.ToString());
        Assert.Equal("leave it longer", found.Remedy.ToString());
        Assert.Equal("common practice", found.Source);
    }

    [Fact]
    public void House_check_that_holds_for_a_part_of_a_range_says_so()
    {
        var plan = Cases.More(Check("fix.last < 21 d")) with { ValueOf = _ => Protocolist.Formulas.FormulaValue.Of(new Protocolist.Quantities.QuantityRange(20 * 86400, 22 * 86400, Protocolist.Quantities.Dimension.OfTime)) };
        Assert.Equal("our large fishes lie three weeks, for a part of the range (fix.last < 21 d; here fix.last is 20 to 22 d)", Assert.Single(HouseChecks.Of(plan)).Message.ToString());
    }

    [Fact]
    public void House_check_of_a_stage_that_the_plan_leaves_out_says_nothing() =>
        Assert.Empty(HouseChecks.Of(Cases.More(Check("fix.last < 21 d")) with { ValueOf = _ => null }));

    [Fact]
    public void House_check_without_a_source_names_its_protocol()
    {
        var plan = Cases.More("checks:\n  own: {when: fix.last < 21 d, message: m, remedy: r}");
        Assert.Equal("a check of the house, in trial", Assert.Single(AllChecks.Review(plan), f => f.Id == "own").Source);
    }

    [Fact]
    public void House_check_is_silent_where_its_condition_does_not_hold() =>
        Assert.DoesNotContain(AllChecks.Review(Cases.More(Check("fix.last < 20 d"))), f => f.Id == "fix-long-enough");

    [Theory]
    [InlineData("fix.last < 21 g", "wrong-dimension", "unlike-quantities")]
    [InlineData("fix.lats < 21 d", "unknown-value", "unknown-value")]
    [InlineData("fix.last", "not-a-condition", "not-a-condition")]
    public void House_check_that_cannot_be_right_is_refused_at_its_line(string when, string id, string orId)
    {
        var shelf = Shelf.Of([new SourceText("house.yaml", "format: 1\nprotocol: trial\nrevision: 1\ntitle: T\nfor: {group: fish}\nstages:\n  - {stage: immerse, id: fix, fluid: water, ratio: 5, last: 2 d}\n" + Check(when))]);
        var fault = shelf.Findings.First(f => f.Severity == Severity.Error);
        Assert.True(fault.Id == id || fault.Id == orId, fault.ToString());
        Assert.True(fault.Where.Line > 7);
    }

    [Fact]
    public void Severity_is_changed_in_the_open_with_its_reason()
    {
        var found = AllChecks.Review(Cases.More("severities:\n  permit-not-noted: {as: error, because: the district asks for one}").Specimen(s => s with { Permits = [] }));
        Assert.Equal(Severity.Error, found.Single(f => f.Id == "permit-not-noted").Severity);
        Assert.Contains(found, f => f.Id == "severity-changed" && f.Message.ToString().Contains("the district asks for one", StringComparison.Ordinal));
    }

    [Fact]
    public void Check_that_protects_people_is_never_lowered()
    {
        var plan = Cases.More("severities:\n  rabies-prone: {as: note, because: we are used to it}").Group("bat");
        var found = AllChecks.Review(plan);
        Assert.Equal(Severity.Warning, found.Single(f => f.Id == "rabies-prone").Severity);
        Assert.Contains(found, f => f.Id == "check-cannot-be-lowered");
        Assert.Contains(SeverityChanges.Faults(plan.Protocol), f => f.Id == "check-cannot-be-lowered" && f.Severity == Severity.Error);
    }

    [Fact]
    public void Error_that_protects_people_is_not_lowered_to_a_warning_and_the_plan_says_so()
    {
        var plan = Cases.More("severities:\n  anthrax-signs: {as: warning, because: we are used to it}").Group("mammal").Specimen(s => s with { Notes = "unclotted blood" });
        var found = AllChecks.Review(plan);
        Assert.Equal(Severity.Error, found.Single(f => f.Id == "anthrax-signs").Severity);
        Assert.Contains(found, f => f.Id == "check-cannot-be-lowered" && f.Message.ToString().EndsWith("not lowered to a warning", StringComparison.Ordinal));
        Assert.DoesNotContain(found, f => f.Id == "severity-changed");
    }

    [Fact]
    public void Unknown_check_and_taken_id_are_errors_of_the_file()
    {
        Assert.Contains(SeverityChanges.Faults(Cases.More("severities:\n  rabbits-prone: {as: error, because: so}").Protocol), f => f.Id == "unknown-check");
        Assert.Contains(SeverityChanges.Faults(Cases.More("checks:\n  cramped: {when: fix.last < 1 d, message: m, remedy: r}").Protocol), f => f.Id == "check-id-taken");
    }

    [Fact]
    public void Finding_is_explained_with_its_figures_limit_and_source()
    {
        var plan = Cases.Good.Lasts("wash", NodaTime.Duration.FromHours(23));
        var explained = Explanation.Of(plan.Plan with { Findings = [.. AllChecks.Review(plan)] }, "wash-too-short").Value!;
        Assert.Equal("warning", explained.Value.ToString());
        Assert.Contains("USGS", explained.Source, StringComparison.Ordinal);
        Assert.Equal(["wash.last", "specimen.half-thickness"], explained.Inputs.Select(i => i.Id));
    }

    [Fact]
    public void Caution_is_said_once_and_in_words()
    {
        var all = Cases.Good.Steps.SelectMany(s => s.Step.Cautions).ToList();
        Assert.Equal(all.Count, all.Distinct().Count());
        Assert.Contains(all, c => c.ToString().StartsWith("DANGER: formalin", StringComparison.Ordinal) && c.ToString().Contains("may cause cancer (H350)", StringComparison.Ordinal));
        Assert.Contains(all, c => c.ToString().Contains("OSHA", StringComparison.Ordinal) && c.ToString().Contains("Directive (EU) 2019/983", StringComparison.Ordinal) && c.ToString().Contains("2019", StringComparison.Ordinal));
        Assert.Single(all, c => c.ToString().Contains("safety data sheet", StringComparison.Ordinal));
    }
}
