using Protocolist.Checks;
using Protocolist.Findings;
using static Protocolist.Tests.Checks.Cases;

namespace Protocolist.Tests.Checks;

public class SeverityChangesTests
{
    [Fact]
    public void Each_finding_takes_the_severity_of_its_own_check_and_of_no_other()
    {
        var plan = More("severities:\n  permit-not-noted: {as: error, because: a}\n  colour-not-recorded: {as: note, because: b}").Specimen(s => s with { Permits = [] }).Without("record");
        var found = AllChecks.Review(plan);
        Assert.Equal(Severity.Error, Assert.Single(found, f => f.Id == "permit-not-noted").Severity);
        Assert.Equal(Severity.Note, Assert.Single(found, f => f.Id == "colour-not-recorded").Severity);
        var told = found.Where(f => f.Id == "severity-changed").ToList();
        Assert.Equal(["'trial' weighs 'colour-not-recorded' as note, because b", "'trial' weighs 'permit-not-noted' as error, because a"], told.Select(f => f.Message.ToString()).Order(StringComparer.Ordinal));
        Assert.All(told, f => Assert.Equal("", f.Remedy.ToString()));
        Assert.All(told, f => Assert.True(f.Where.Line > 7));
    }

    [Fact]
    public void What_protects_people_is_raised_and_stays_as_it_was_where_the_wish_is_the_same()
    {
        Assert.Equal(Severity.Error, Bat("error").Single(f => f.Id == "rabies-prone").Severity);
        Assert.Contains(Bat("error"), f => f.Id == "severity-changed");
        Assert.DoesNotContain(Bat("error"), f => f.Id == "check-cannot-be-lowered");
        Assert.Equal(Severity.Warning, Bat("warning").Single(f => f.Id == "rabies-prone").Severity);
        Assert.DoesNotContain(Bat("warning"), f => f.Id == "check-cannot-be-lowered");
    }

    [Fact]
    public void Error_of_another_check_does_not_stand_in_the_way_of_a_warning()
    {
        var plan = More("severities:\n  rabies-prone: {as: warning, because: so}").Group("bat").Specimen(s => s with { CollectedBy = null });
        Assert.Contains(AllChecks.Review(plan), f => f.Severity == Severity.Error);
        Assert.DoesNotContain(AllChecks.Review(plan), f => f.Id == "check-cannot-be-lowered");
    }

    [Fact]
    public void Refusal_names_whom_the_check_protects_and_what_to_do()
    {
        var refusal = Assert.Single(Bat("note"), f => f.Id == "check-cannot-be-lowered");
        Assert.Equal("'rabies-prone' protects people: rabies is deadly once it shows, and is not lowered to a note", refusal.Message.ToString());
        Assert.Equal("leave it, or raise it", refusal.Remedy.ToString());
        Assert.Equal("rabies-prone", refusal.Subject);
    }

    [Fact]
    public void Faults_of_a_file_are_told_in_words_at_their_line()
    {
        var unknown = Assert.Single(SeverityChanges.Faults(More("severities:\n  rabbits-prone: {as: error, because: so}").Protocol));
        Assert.Equal("there is no check 'rabbits-prone'", unknown.Message.ToString());
        Assert.Contains("rabies-prone", unknown.Remedy.ToString(), StringComparison.Ordinal);

        var taken = Assert.Single(SeverityChanges.Faults(More("checks:\n  cramped: {when: fix.last < 1 d, message: m, remedy: r}").Protocol));
        Assert.Equal("'cramped' is the id of a bundled check", taken.Message.ToString());
        Assert.Equal("give the check of the house another id", taken.Remedy.ToString());
        Assert.True(taken.Where.Line > 7);
    }

    [Fact]
    public void Check_of_the_house_can_be_weighed_like_a_bundled_one()
    {
        const string own = "checks:\n  long-enough: {when: fix.last < 21 d, severity: warning, message: m, remedy: r}\nseverities:\n  long-enough: {as: error, because: so}";
        Assert.Empty(SeverityChanges.Faults(More(own).Protocol));
        Assert.Equal(Severity.Error, AllChecks.Review(More(own)).Single(f => f.Id == "long-enough").Severity);
    }

    [Theory]
    [InlineData("fixation-shorter-than-penetration", "fixation-too-short")]
    [InlineData("formalin-on-spiculate", "formalin-on-spicules")]
    [InlineData("ratio-floor", "ratio-too-low")]
    public void Old_name_of_a_check_still_works_and_the_new_one_is_named(string old, string now)
    {
        var plan = More($"severities:\n  {old}: {{as: note, because: so}}");
        var told = Assert.Single(SeverityChanges.Faults(plan.Protocol));
        Assert.Equal((Severity.Warning, "renamed-check", now), (told.Severity, told.Id, told.Subject));
        Assert.Equal($"the check '{old}' is called '{now}'", told.Message.ToString());
        Assert.Equal($"write '{now}'", told.Remedy.ToString());
        Assert.True(told.Where.Line > 7);

        var weighed = SeverityChanges.Of([Finding.Error(now, Said.Of("told"), Said.Of("do"))], plan.Protocol).ToList();
        Assert.Equal(Severity.Note, Assert.Single(weighed, f => f.Id == now).Severity);
        Assert.Single(weighed, f => f.Id == "renamed-check");
        Assert.Equal(now, Assert.Single(weighed, f => f.Id == "severity-changed").Subject);
    }

    [Fact]
    public void What_is_said_of_the_new_name_counts_before_what_is_said_of_the_old()
    {
        var protocol = More("severities:\n  ratio-floor: {as: note, because: so}\n  ratio-too-low: {as: error, because: so}").Protocol;
        var weighed = SeverityChanges.Of([Finding.Warning("ratio-too-low", Said.Of("told"), Said.Of("do"))], protocol).ToList();
        Assert.Equal(Severity.Error, Assert.Single(weighed, f => f.Id == "ratio-too-low").Severity);
        Assert.Single(weighed, f => f.Id == "severity-changed");
    }

    [Fact]
    public void Check_of_the_house_keeps_a_name_that_a_bundled_one_had_once()
    {
        const string own = "checks:\n  ratio-floor: {when: fix.last < 21 d, severity: warning, message: m, remedy: r}\nseverities:\n  ratio-floor: {as: error, because: so}";
        Assert.Empty(SeverityChanges.Faults(More(own).Protocol));
        Assert.Equal(Severity.Error, AllChecks.Review(More(own)).Single(f => f.Id == "ratio-floor").Severity);
    }

    [Fact]
    public void New_names_are_those_of_checks_and_old_ones_are_not()
    {
        var ids = AllChecks.All.Select(c => c.Id).ToList();
        Assert.All(RenamedChecks.All, r => Assert.Contains(r.Now, ids));
        Assert.All(RenamedChecks.All, r => Assert.DoesNotContain(r.Old, ids));
    }

    private static List<Finding> Bat(string severity) =>
        [.. AllChecks.Review(More($"severities:\n  rabies-prone: {{as: {severity}, because: so}}").Group("bat"))];
}
