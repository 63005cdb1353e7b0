using System.Text.RegularExpressions;
using System.Xml.Linq;
using Protocolist.Findings;
using Protocolist.Plans;
using Protocolist.Sheets;
using Protocolist.Tests.Planning.Provisioning;

namespace Protocolist.Tests.Sheets;

public partial class HtmlSheetTests
{
    private static readonly Protocolist.Benches.Bench Bench = Station.With("""
        stock:
          - {fluid: ethanol 96 %vol, id: e96, on-hand: 0 L, packs: [{size: 1 L, price: 12 EUR}]}
          - {consumable: nitrile gloves, id: gloves, on-hand: 0, packs: [{size: 100, price: 8 EUR}]}
        """);

    private static readonly Plan Whelk = Station.Plan(Station.Whelk, Bench);

    private static readonly string Page = HtmlSheet.Write(Whelk);

    /// <summary>The page as a tree: void elements closed, the style taken out, so that an XML reader takes it and with it says that every element is closed.</summary>
    private static XElement Tree(string page)
    {
        var body = Style().Replace(page, "");
        body = VoidElement().Replace(body, "<$1$2/>").Replace("<!DOCTYPE html>", "", StringComparison.Ordinal).Replace(" checked/>", " checked=\"checked\"/>", StringComparison.Ordinal);
        return XElement.Parse(body);
    }

    [GeneratedRegex("<style>.*?</style>", RegexOptions.Singleline)]
    private static partial Regex Style();

    [GeneratedRegex("<(meta|input)([^>]*)>")]
    private static partial Regex VoidElement();

    [Fact]
    public void Every_step_has_a_check_box_and_every_element_is_closed()
    {
        var steps = Tree(Page).Descendants("section").ToList();
        Assert.Equal(Whelk.Steps.Length, steps.Count);
        Assert.All(steps, s => Assert.Equal("checkbox", s.Element("h3")!.Element("label")!.Element("input")!.Attribute("type")!.Value));
        Assert.Equal(Whelk.Steps.Select(s => s.Title.ToString()), steps.Select(s => s.Descendants("h3").First().Value.Trim().Split(". ", 2)[1]));
    }

    [Fact]
    public void Nothing_runs_and_nothing_is_fetched()
    {
        Assert.DoesNotContain("<script", Page, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("http", Page.Replace("http-equiv", "", StringComparison.Ordinal), StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("url(", Page, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("@import", Page, StringComparison.OrdinalIgnoreCase);
        Assert.All(Tree(Page).DescendantsAndSelf().SelectMany(e => e.Attributes()), a => Assert.False(a.Name.LocalName.StartsWith("on", StringComparison.Ordinal) || a.Name.LocalName is "src" or "href" or "style", a.ToString()));
    }

    [Fact]
    public void Headings_go_down_one_level_at_a_time_and_tables_name_their_rows_and_columns()
    {
        var tree = Tree(Page);
        var levels = tree.Descendants().Where(e => e.Name.LocalName is "h1" or "h2" or "h3").Select(e => e.Name.LocalName[1] - '0').ToList();
        Assert.Equal(1, levels[0]);
        Assert.Single(levels, 1);
        Assert.All(levels.Zip(levels.Skip(1)), p => Assert.True(p.Second <= p.First + 1));
        Assert.NotEmpty(tree.Descendants("table"));
        Assert.All(tree.Descendants("table"), t => Assert.NotNull(t.Element("caption")));
        Assert.All(tree.Descendants("th"), t => Assert.Contains(t.Attribute("scope")!.Value, (string[])["row", "col"]));
        Assert.Equal("en", tree.Attribute("lang")!.Value);
    }

    [Fact]
    public void Cautions_labels_waste_care_and_costs_are_on_it()
    {
        foreach (var text in Whelk.Steps.SelectMany(s => s.Cautions.Texts()).Concat(Whelk.Label.Texts()).Concat(Whelk.Care.Select(c => c.What.ToString())).Append("To buy").Append(Whelk.Costs.OverTenYears!.ToString()).Append("@media print"))
            Assert.Contains(text == "@media print" ? text : System.Net.WebUtility.HtmlEncode(text), Page, StringComparison.Ordinal);
        Assert.Equal(2, Tree(Page).Descendants("div").Count(d => d.Attribute("class")?.Value == "label"));
    }

    [Theory]
    [InlineData("<script>alert(1)</script>")]
    [InlineData("\"><img src=x onerror=alert(1)>")]
    [InlineData("' onmouseover='x")]
    [InlineData("a\0b\u001b[31m\u202E\u2066\nc")]
    [InlineData("]]></style><b>&amp;")]
    public void A_hostile_name_is_text(string name)
    {
        var plan = Whelk with { Specimen = Whelk.Specimen with { Id = name, ScientificName = name }, Label = [Said.Of(name)], Steps = [.. Whelk.Steps.Select(s => s with { Title = Said.Of(name), Instructions = [Said.Of(name)], Cautions = [Said.Of(name)], Fluid = name, Vessel = name })] };
        var page = HtmlSheet.Write(plan);
        var tree = Tree(page);
        Assert.Equal(Tree(Page).Descendants().Select(e => e.Name.LocalName).Distinct().Order(), tree.Descendants().Select(e => e.Name.LocalName).Distinct().Order());
        Assert.DoesNotContain(page, c => char.IsControl(c) && c != '\n' || c is '\u202E' or '\u2066');
        Assert.Equal(Protocolist.Findings.ShownText.Lines(name), tree.Descendants("div").First(d => d.Attribute("class")?.Value == "label").Element("p")!.Value);
    }

    [Fact]
    public void A_plan_that_must_not_start_says_so_at_the_top()
    {
        Assert.Contains("DO NOT START", HtmlSheet.Write(Whelk with { Findings = [Finding.Error("e", Said.Of("m"), Said.Of("r"))] }), StringComparison.Ordinal);
        Assert.DoesNotContain("DO NOT START", HtmlSheet.Write(Whelk with { Findings = [] }), StringComparison.Ordinal);
    }
}
