using System.Collections.Immutable;
using NodaTime;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Formulas;
using Protocolist.Planning.Drafting;
using Protocolist.Planning.Selecting;
using Protocolist.Protocols;
using Protocolist.Specimens;

namespace Protocolist.Tests.Protocols;

public class BundledProtocolsTests
{
    private static readonly Shelf Shelf = Shelf.Bundled();

    private static readonly Protocolist.Planning.Selecting.ClassIndex Index = new(Shelf);

    /// <summary>Those that serve specimens; the rest is only extended.</summary>
    private static readonly ImmutableArray<Protocol> Classes = [.. Shelf.Protocols.Where(p => p.IsForSpecimens)];

    public static TheoryData<string> Ids => [.. Classes.Select(p => p.Id)];

    [Fact]
    public void Every_bundled_protocol_passes_the_strict_check()
    {
        var findings = FileCheck.Run(BundledProtocols.Sources(), DateTimeZoneProviders.Tzdb, strict: true, proveAll: true);
        Assert.Equal([], findings.Select(f => $"{f.Where} {f.Id}: {f.Message.ToString()}"));
    }

    [Fact]
    public void The_shelf_serves_at_least_45_classes_with_at_least_150_examples()
    {
        Assert.InRange(Classes.Length, 45, int.MaxValue);
        Assert.InRange(Classes.Sum(p => p.Examples.Length), 150, int.MaxValue);
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Every_protocol_has_three_examples_that_expect_something_and_name_their_source(string id)
    {
        var examples = Shelf.Find(id)!.Examples;
        Assert.InRange(examples.Length, 3, int.MaxValue);
        Assert.All(examples, e => Assert.NotEmpty(e.Expectations));
        Assert.All(examples, e => Assert.NotEmpty(e.Source));
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void The_specimen_of_every_example_is_served_by_its_own_protocol(string id)
    {
        foreach (var example in Shelf.Find(id)!.Examples)
        {
            var selected = SelectPass.Run(Body(example, id), Index);
            Assert.Equal((example.Span, id), (example.Span, selected.Value?.Id ?? string.Join("; ", selected.Findings.Select(f => f.Message.ToString()))));
        }
    }

    // Western Australian Museum 2011, Michonneau 2017 and a benthic laboratory's taxon table agree: lime never meets formalin without a buffer.
    [Theory]
    [MemberData(nameof(Ids))]
    public void Animals_of_lime_or_spicules_never_meet_formalin_without_a_buffer_whatever_is_chosen(string id)
    {
        var protocol = Shelf.Find(id)!;
        if (Kinds.Bundled.Find(protocol.Class.Group) is not { } group || !(group.IsCalcareous || group.IsSpiculate)) return;
        foreach (var fluid in FluidsOf(protocol)) Assert.False(fluid is { HasFormaldehyde: true, Buffering: Buffering.None }, fluid.Name);
    }

    // Moore 2009: alcohol spoils the appearance of medusae; McDiarmid and Altig 1999 (from memory): so it does with spawn.
    [Theory]
    [MemberData(nameof(Ids))]
    public void Animals_of_jelly_meet_no_alcohol_unless_it_is_chosen(string id)
    {
        var protocol = Shelf.Find(id)!;
        if (Kinds.Bundled.Find(protocol.Class.Group) is not { IsGelatinous: true }) return;
        var draft = DraftPass.Run(Body(protocol.Examples[0], id), new(protocol, SubstanceCatalogue.Bundled), Bench.Empty(DateTimeZone.Utc), ImmutableSortedDictionary<string, string>.Empty).Value!;
        Assert.DoesNotContain(draft.Steps, s => s.Fluid is { IsAlcohol: true });
    }

    [Theory]
    [InlineData("mammal", "mass: 99 g", "mammal-small")]
    [InlineData("mammal", "mass: 100 g", "mammal-medium")]
    [InlineData("mammal", "mass: 2 kg", "mammal-large")]
    [InlineData("rodent", "mass: 1999 g", "mammal-medium")]
    [InlineData("bat", "mass: 100 g", "bat")]
    [InlineData("bird", "mass: 500 g", "bird-large")]
    [InlineData("bony-fish", "length: 149 mm", "fish-small")]
    [InlineData("bony-fish", "length: 150 mm", "fish-medium")]
    [InlineData("bony-fish", "length: 300 mm", "fish-large")]
    [InlineData("eel", "length: 300 mm", "eel")]
    [InlineData("shark", "length: 500 mm", "shark-large")]
    [InlineData("ray", "disc-width: 400 mm", "ray-large")]
    [InlineData("frog", "snout-vent-length: 40 mm", "amphibian-large")]
    [InlineData("snake", "snout-vent-length: 75 cm", "snake-large")]
    [InlineData("turtle", "mass: 2 kg", "turtle-large")]
    [InlineData("crab", "carapace-length: 50 mm", "decapod-large")]
    [InlineData("squid", "mantle-length: 150 mm", "cephalopod-large")]
    public void A_size_on_a_boundary_belongs_to_one_class(string group, string size, string id)
    {
        var specimen = SpecimenReader.Read(new("test", $"format: 1\nspecimen: S\ngroup: {group}\n{size}\n")).Value!;
        var selected = SelectPass.Run(BodyMeasure.Of(specimen).Value!, Index);
        Assert.Equal(id, selected.Value?.Id);
    }

    [Fact]
    public void All_111_published_values_are_held_by_an_example_or_listed_with_a_reason()
    {
        Assert.Equal(111, PublishedValues.All.Length);
        Assert.All(PublishedValues.All, v => Assert.True(v.IsHeld || v.Why.Length > 0, v.Says));
        var lost = PublishedValues.All.Where(v => v.IsHeld && !IsExpected(v)).Select(v => $"{v.Says} ({v.Source}): {v.Protocol} {v.Key} {v.Text}");
        Assert.Equal([], lost);
    }

    // Te Papa 2008 and O'Shea 2003: pH every 3 h while a giant squid is fixed.
    [Fact]
    public void A_giant_squid_is_watched_every_three_hours()
    {
        var fix = Shelf.Find("cephalopod-large")!.Stages.Single(s => s.Id == "fix");
        var watch = Assert.IsType<WatchSetting>(fix.Find("watch"));
        Assert.Equal("3 h", watch.Every.Text);
        Assert.Contains((Sign.Acid, Remedy.ChangeFluid), watch.Signs);
    }

    // Michonneau 2017: tissue into 95 % ethanol, before formalin; how much of what follows from the body.
    [Theory]
    [MemberData(nameof(Ids))]
    public void Tissue_is_taken_before_any_fluid(string id)
    {
        var stages = Shelf.Find(id)!.Stages.ToList();
        var record = stages.FindIndex(s => s.Kind == StageKind.Sample);
        Assert.InRange(record, 0, stages.FindIndex(s => s.Kind == StageKind.Immerse) - 1);
        Assert.Contains("tissue", stages[record].Texts("covers"));
    }

    private static bool IsExpected(PublishedValue value) =>
        Shelf.Find(value.Protocol) is { } protocol && protocol.Examples.SelectMany(e => e.Expectations).Any(e => e.Name == value.Key && e.Text == value.Text);

    private static BodyMeasure Body(ProtocolExample example, string id)
    {
        var findings = new List<Finding>();
        var specimen = SpecimenReader.ReadInline(example.Specimen, "example", Shelf.Find(id)!.Class.Group, findings);
        Assert.Empty(findings);
        return BodyMeasure.Of(specimen).Value!;
    }

    /// <summary>Every fluid that any choice can lead to.</summary>
    private static IEnumerable<Fluid> FluidsOf(Protocol protocol) =>
        protocol.Stages.Select(s => s.Expression("fluid")).OfType<Expression>()
            .SelectMany(e => Words(e, protocol)).Distinct(StringComparer.Ordinal)
            .Select(w => Fluid.Read(w).Value!);

    private static IEnumerable<string> Words(Expression expression, Protocol protocol) => expression switch
    {
        CaseExpression cases => cases.Cases.SelectMany(c => Words(c.Value, protocol)),
        FormulaExpression { Formula.Root: WordNode word } => [word.Word],
        FormulaExpression { Formula.Root: NameNode name } => protocol.Choices.Where(c => "choice." + c.Name == name.Name).SelectMany(c => c.Options),
        _ => throw new InvalidOperationException("a fluid of another form"),
    };
}
