using System.Text;
using static Protocolist.Tests.Checks.Cases;

namespace Protocolist.Tests.Checks;

public class AllChecksTests
{
    [Fact]
    public void List_of_checks_is_in_alphabetical_order_with_what_each_protects_and_its_source()
    {
        var text = new StringBuilder();
        foreach (var check in AllChecks.Descriptions)
            text.Append(System.Globalization.CultureInfo.InvariantCulture, $"{check.Id}{(check.ProtectsPeople ? " (never lowered)" : "")}\n  {check.Protects}\n  {check.Source}\n");
        KeptText.Holds("Checks/kept/all-checks.txt", text.ToString());
        Assert.Equal(AllChecks.Descriptions.Select(c => c.Id).Order(StringComparer.Ordinal), AllChecks.Descriptions.Select(c => c.Id));
    }

    /// <summary>What can hurt a person or break the law: no protocol may make light of it.</summary>
    [Theory]
    [InlineData("anthrax-signs")]
    [InlineData("avian-influenza")]
    [InlineData("rabies-prone")]
    [InlineData("parasites-on-body")]
    [InlineData("unknown-cause-of-death")]
    [InlineData("protected-group")]
    [InlineData("formaldehyde-in-the-air")]
    [InlineData("formalin-without-hood")]
    [InlineData("formalin-flag-missing")]
    [InlineData("formalin-to-the-drain")]
    [InlineData("waste-without-destination")]
    [InlineData("bleach-or-acid-near-formalin")]
    [InlineData("ventilation-unknown")]
    [InlineData("flammable-quantity")]
    [InlineData("stored-flammables")]
    [InlineData("stored-formaldehyde")]
    [InlineData("above-flash-point")]
    [InlineData("lone-work")]
    [InlineData("safety-equipment-not-on-shelf")]
    [InlineData("glass-too-thin")]
    [InlineData("joint-load")]
    [InlineData("tank-glass-to-measure")]
    [InlineData("vessel-too-heavy-to-lift")]
    [InlineData("vessel-too-heavy-for-shelf")]
    [InlineData("sealed-vessel-builds-pressure")]
    public void Check_that_keeps_people_from_harm_cannot_be_lowered(string id) => Assert.True(AllChecks.Descriptions.Single(c => c.Id == id).ProtectsPeople);

    [Fact]
    public void Check_that_names_people_first_cannot_be_lowered() =>
        Assert.All(AllChecks.Descriptions.Where(c => c.Protects.StartsWith("people", StringComparison.Ordinal)), c => Assert.True(c.ProtectsPeople, c.Id));

    /// <summary>What an earlier pass found and a check says in its own words comes once, under the check's id.</summary>
    [Theory]
    [InlineData("core-will-rot", "core-out-of-reach")]
    [InlineData("core-may-rot", "core-out-of-reach")]
    [InlineData("mass-against-length", "measurements-contradict")]
    [InlineData("mass-against-displacement", "measurements-contradict")]
    [InlineData("girth-against-mass", "measurements-contradict")]
    [InlineData("thickness-against-mass", "measurements-contradict")]
    [InlineData("lot-heavier-than-its-animals", "measurements-contradict")]
    [InlineData("two-lengths", "measurements-contradict")]
    [InlineData("delivery-comes-too-late", "supplies-late")]
    [InlineData("stock-missing", "stock-missing")]
    [InlineData("inspection-gap", "inspection-gap")]
    [InlineData("vessel-too-heavy-to-lift", "vessel-too-heavy-to-lift")]
    public void What_a_pass_found_and_a_check_says_comes_once(string found, string said)
    {
        var told = AllChecks.Review(Good.Told(found)).Where(f => f.Message.ToString() == "told").ToList();
        Assert.Equal(said, Assert.Single(told).Id);
        Assert.Equal(AllChecks.All.Single(c => c.Id == said).Source, told[0].Source);
    }

    [Theory]
    [InlineData("mixed-alcohols")]
    [InlineData("spent-fluid-not-clear")]
    [InlineData("spent-fluid-too-acid")]
    [InlineData("spent-fluid-used-up")]
    [InlineData("spent-fluid-ph-unknown")]
    [InlineData("rule-over-promises")]
    [InlineData("stock-expired")]
    public void What_a_check_looks_at_again_is_not_told_by_the_pass_too(string found) => Assert.DoesNotContain(AllChecks.Review(Good.Told(found)), f => f.Message.ToString() == "told");

    [Fact]
    public void What_no_check_says_stays_as_the_pass_found_it() =>
        Assert.Equal("", Assert.Single(AllChecks.Review(Good.Told("size-reckoned")), f => f.Id == "size-reckoned").Source);

    [Fact]
    public void Finding_keeps_a_source_of_its_own_and_takes_its_check_s_where_it_has_none()
    {
        var bird = AllChecks.Review(Good.Group("bird").Specimen(s => s with { Permits = [] }));
        Assert.Equal("CITES and national law, from memory", Assert.Single(bird, f => f.Id == "protected-group").Source);

        var washed = AllChecks.Review(Good.Lasts("wash", NodaTime.Duration.FromHours(2)));
        Assert.StartsWith("at least 24 h: Meador", Assert.Single(washed, f => f.Id == "wash-too-short").Source, StringComparison.Ordinal);
    }
}
