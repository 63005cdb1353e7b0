using NodaTime;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Plans;
using Protocolist.Specimens;
using UnitsNet;

namespace Protocolist.Tests.Planning;

/// <summary>A house adds a group and a fixative of its own: every door takes them, and no door of the bundled kinds does.</summary>
public sealed class OwnKindsTests
{
    private const string Protocol = """
        format: 1
        protocol: house-blenny
        revision: 1
        title: Blenny in the house's own fixative
        for:
          group: house-blenny
          mass: 1 to 200 g
        stages:
          - stage: immerse
            id: fix
            fluid: Skerry fixative
            ratio: 20
            last: 24 to 48 h
            source: common practice
          - stage: house
            id: house
            fluid: Skerry fixative
            ratio: 5
            source: common practice
        examples:
          - specimen: {mass: 20 g}
            expect: {fix.fluid: Skerry fixative, fix.ratio: 20}
            source: common practice
        """;

    private const string Bench = """
        format: 1
        bench: skerry
        zone: UTC
        hours: {mon-fri: 08:00 to 18:00}
        stock:
          - {fluid: Skerry fixative, strength: undiluted, id: fixative, on-hand: 5 L}
        vessels:
          - {id: jar-2, name: 2 L jar, inside: {diameter: 120 mm, height: 200 mm}, count: 3, wall: glass, lid: polypropylene, seal: polyethylene, closure: screw-lid}
        """;

    private static readonly TaxonGroup Blenny = new(
        "house-blenny",
        "blenny",
        Kinds.Bundled.Find("bony-fish")!,
        new GroupCaution("spines", false, new("caution.house-blenny.spines", "its cheek spines prick through thin gloves"), "common practice"))
    {
        Taxa = ["Skerryblenniidae"],
    };

    private static readonly Substance Fixative = Substance.ReadyMade(
        "skerry-fixative", "Skerry fixative", [(Solute.Formaldehyde, 4), (Solute.Ethanol, 20), (Solute.Methanol, 1)], 975, 10, flashPointCelsius: 36);

    private static readonly Kinds Own = Kinds.Bundled.With(Blenny).With(SubstanceCatalogue.Bundled.With(Fixative));

    private static readonly Specimen Specimen = new() { Id = "B1", HigherTaxon = "Skerryblenniidae", Mass = Mass.FromGrams(20) };

    [Fact]
    public void Of_the_own_kinds_a_plan_is_made_written_and_read()
    {
        var planner = new Planner(Shelf.BundledWith(Own, [new SourceText("house/blenny.yaml", Protocol)]));
        Assert.Empty(planner.Shelf.Findings);
        var bench = BenchReader.Read(new("bench.yaml", Bench), DateTimeZoneProviders.Tzdb, Own.Substances);
        Assert.DoesNotContain(bench.Findings, f => f.Severity > Severity.Note);

        var planned = planner.Plan(new(Specimen, planner.Prepare(bench.Value!), new(2027, 3, 2, 9, 0)));

        var plan = planned.Value!;
        Assert.Equal("house-blenny", plan.Protocol.Id);
        var fix = plan.Steps[0];
        Assert.Equal("Skerry fixative", fix.Fluid);
        Assert.Contains(fix.Cautions, c => c.ToString().Contains("cheek spines", StringComparison.Ordinal));
        Assert.Equal("Skerry fixative undiluted", Assert.Single(plan.Recipes[0].Parts).Name.ToString());
        Assert.Equal(plan.Recipes[0].Volume.Milliliters, plan.Recipes[0].Parts[0].Volume!.Value.Milliliters, 3);
        Assert.Equal(["fixative"], plan.Recipes[0].Parts.Select(p => p.Stock));
        Assert.Equal(plan, PlanJson.Read(new("plan.json", PlanJson.Write(plan)), null, Own.Substances).Value);
        Assert.Equal(plan, planner.Plan(new(Specimen, bench.Value!, new(2027, 3, 2, 9, 0))).Value);
        var unread = Assert.Single(PlanJson.Read(new("plan.json", PlanJson.Write(plan))).Findings);
        Assert.Matches(@"'Skerry fixative' at [a-z]+\[\d+\][a-z.0-9\[\]]* is of no substance", unread.ToString());
        var unrevised = new Planner(Shelf.Bundled()).Revise(plan, new("B1", []), new PreparedBench(bench.Value!, null, Own.Substances));
        Assert.Contains(unrevised.Findings, f => f.Id == "unknown-fluid");
        var compared = planner.Compare(new(Specimen, planner.Prepare(bench.Value!), new(2027, 3, 2, 9, 0)));
        Assert.NotEmpty(compared.Value!.Ways);
        Assert.Empty(FileCheck.Run([new("house/blenny.yaml", Protocol), new("bench.yaml", Bench)], DateTimeZoneProviders.Tzdb, kinds: Own)
            .Where(f => f.Severity == Severity.Error));
    }

    [Fact]
    public void The_bundled_kinds_know_nothing_of_them()
    {
        Assert.Contains(Specimen.Validate(), f => f.Id == "unknown-higher-taxon");
        Assert.Empty(Specimen.Validate(Own));
        Assert.Contains(Shelf.BundledWith([new SourceText("house/blenny.yaml", Protocol)]).Findings, f => f.Id == "unknown-group");
        Assert.Contains(BenchReader.Read(new("bench.yaml", Bench), DateTimeZoneProviders.Tzdb).Findings, f => f.Id == "unknown-fluid");
        Assert.Null(new Planner(Shelf.Bundled()).Plan(new(Specimen, Protocolist.Benches.Bench.Empty(DateTimeZone.Utc), new(2027, 3, 2, 9, 0))).Value);
    }

    [Fact]
    public void A_group_below_takes_a_taxon_over_from_that_above_it()
    {
        var bat = Kinds.Bundled.Find("bat")!;
        var own = Kinds.Bundled.With(new TaxonGroup("house-bat", "house bat", bat) { Taxa = ["Chiroptera"] });
        Assert.Equal("house-bat", own.FindByTaxon("chiroptera")!.Id);
        var fault = Assert.Throws<ArgumentException>(() => own.With(new TaxonGroup("other-bat", "other bat", bat) { Taxa = ["Chiroptera"] }));
        Assert.Contains("'house-bat'", fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_there_already_is_not_added_twice()
    {
        Assert.Throws<ArgumentException>(() => Own.With(Blenny));
        Assert.Throws<ArgumentException>(() => Kinds.Bundled.With(new TaxonGroup("x", "x", Blenny)));
        Assert.Throws<ArgumentException>(() => Kinds.Bundled.With(new TaxonGroup("x", "x", Kinds.Bundled.Groups[0]) { Taxa = ["Chiroptera"] }));
        var density = Blenny.DensityKgPerM3;
        Assert.Throws<ArgumentException>(() => Kinds.Bundled.With(new TaxonGroup("x", "x", Blenny.Parent!) { DensityKgPerM3 = density with { Low = 1, High = 1.1 } }));
        Assert.Throws<ArgumentException>(() => Kinds.Bundled.With(new TaxonGroup("x", "x", Blenny.Parent!) { Regions = default }));
        Assert.Throws<ArgumentException>(() => Kinds.Bundled.With(new TaxonGroup("x", "x", Blenny.Parent!) { Shape = Blenny.Shape with { Spread = double.NaN } }));
        Assert.Throws<ArgumentException>(() => Kinds.Bundled.With(new TaxonGroup("x", "x", Blenny.Parent!) { WaterFraction = Blenny.WaterFraction with { High = 1.2 } }));
        Assert.Throws<ArgumentException>(() => new TaxonGroup("Bird of ours", "x", Blenny.Parent!));
        Assert.Throws<ArgumentException>(() => new TaxonGroup("x", "\u202ex", Blenny.Parent!));
        Assert.Throws<ArgumentNullException>(() => new TaxonGroup("x", "x", Blenny.Parent!, null!));
        Assert.Throws<ArgumentException>(() => Substance.ReadyMade("X", "x", [(Solute.Ethanol, 5)], 990, 1));
        Assert.Throws<ArgumentException>(() => Substance.ReadyMade("x", "x\ny", [(Solute.Ethanol, 5)], 990, 1));
        Assert.Throws<ArgumentException>(() => Substance.ReadyMade("x", "x", [(Solute.Ethanol, 5), (Solute.Ethanol, 2)], 990, 1));
        Assert.Throws<ArgumentException>(() => Own.Substances.With(Fixative));
        Assert.Throws<ArgumentException>(() => Substance.ReadyMade("x", "x", [(Solute.Ethanol, 101)], 900, 1));
        Assert.Throws<ArgumentException>(() => Substance.ReadyMade("x", "x", [(Solute.Ethanol, 10)], 90, 1));
        Assert.Throws<ArgumentException>(() => Substance.ReadyMade("x", "x", [(Solute.Ethanol, 40)], 930, 5));
        Assert.Throws<ArgumentException>(() => Substance.ReadyMade("x", "x", [(Solute.Ethanol, 5)], 990, double.NaN));
        Assert.Throws<ArgumentNullException>(() => new TaxonGroup("x", "x", null!));
        Assert.Throws<ArgumentNullException>(() => new GroupCaution("x", false, new Phrase("x", "x"), null!));
        Assert.Throws<ArgumentException>(() => new GroupCaution(" ", false, new Phrase("x", "x"), "common practice"));
    }

    [Theory]
    [InlineData("ethanol 70 %vol")]
    [InlineData("Formalin 10 %")]
    [InlineData("tap water")]
    public void A_ready_made_fluid_has_no_name_that_is_another_fluid(string name)
    {
        var fluid = Substance.ReadyMade("station-mix", name, [(Solute.Ethanol, 70), (Solute.Methanol, 1)], 880, 10, flashPointCelsius: 18);
        Assert.Throws<ArgumentException>(() => SubstanceCatalogue.Bundled.With(fluid));
    }

    [Fact]
    public void What_is_looked_up_by_no_id_is_a_callers_bug()
    {
        Assert.Throws<ArgumentNullException>(() => Kinds.Bundled.Find(null!));
        Assert.Throws<ArgumentNullException>(() => SubstanceCatalogue.Bundled.Find(null!));
        Assert.Throws<ArgumentNullException>(() => Shelf.Bundled().Find(null!));
        Assert.Null(Kinds.Bundled.Find(""));
        Assert.Null(SubstanceCatalogue.Bundled.Find(""));
    }

    [Fact]
    public void Schemas_know_the_groups_that_there_are()
    {
        Assert.Contains($"\"{Blenny.Id}\"", FileSchemas.Protocol(Own), StringComparison.Ordinal);
        Assert.Contains($"\"{Blenny.Id}\"", FileSchemas.Specimen(Own), StringComparison.Ordinal);
        Assert.DoesNotContain($"\"{Blenny.Id}\"", FileSchemas.Specimen(), StringComparison.Ordinal);
    }
}
