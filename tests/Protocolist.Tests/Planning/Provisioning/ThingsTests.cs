using System.Collections.Immutable;
using Protocolist.Benches.Stock;
using Protocolist.Fluids;
using Protocolist.Planning;
using Protocolist.Planning.Provisioning;
using Protocolist.Protocols;
using UnitsNet;
using Duration = NodaTime.Duration;

namespace Protocolist.Tests.Planning.Provisioning;

/// <summary>Gloves, needles and blades: how many a step takes, and what of them wears out.</summary>
public class ThingsTests
{
    private static DraftStep Step(StageKind kind, string? fluid = null, string id = "x") =>
        new(new StageDefinition(kind, id, [], default)) { Fluid = fluid is null ? null : Fluid.Read(fluid).Value };

    private static string[] Needs(DraftStep step, int animals = 1) => [.. ThingNeeds.Of(step, animals).Select(n => $"{n.Uses} {n.Id}{(n.Waste is { } w ? $" ({w})" : "")}")];

    private static DraftStep With(params string[] tools) => Step(StageKind.Inject) with
    {
        Work = new Protocolist.Plans.InjectWork([.. tools.Select(t => new Protocolist.Plans.InjectionSite("trunk", 1, Volume.FromMilliliters(1), Volume.FromMilliliters(1), Volume.FromMilliliters(1), Volume.FromMilliliters(1), t))], null),
    };

    [Fact]
    public void What_touches_fixative_needs_gloves_goggles_and_an_apron_at_each_handling()
    {
        var fix = Step(StageKind.Immerse, "neutral buffered formalin 10 %");
        Assert.Equal(["2 gloves (ContaminatedSolids)", "1 goggles", "1 apron"], Needs(fix));
        Assert.Equal(["8 gloves (ContaminatedSolids)", "4 goggles", "4 apron"], Needs(fix with { Changes = 3 }));

        // Ten days and a look each three days are three looks.
        Assert.Equal(["8 gloves (ContaminatedSolids)", "4 goggles", "4 apron"], Needs(fix with { Least = Duration.FromDays(10), Watch = (Duration.FromDays(3), []) }));
        Assert.Equal(["2002 gloves (ContaminatedSolids)", "1001 goggles", "1001 apron"], Needs(fix with { Least = Duration.FromDays(3000), Watch = (Duration.FromDays(1), []) }));
        Assert.Equal(["2 gloves (ContaminatedSolids)", "1 goggles", "1 apron"], Needs(fix with { Least = Duration.FromDays(10), Watch = (Duration.Zero, []) }));
        Assert.Equal(["2 gloves (ContaminatedSolids)", "1 goggles", "1 apron"], Needs(Step(StageKind.Bath, "ethanol 50 %vol")));
        Assert.Empty(Needs(Step(StageKind.Wash, "tap water")));
        Assert.Equal(["2 gloves (ContaminatedSolids)"], Needs(Step(StageKind.Pose)));
        Assert.Empty(Needs(Step(StageKind.Hold)));
    }

    [Fact]
    public void Knife_work_and_samples_take_their_own_for_each_animal()
    {
        Assert.Equal(["2 gloves (ContaminatedSolids)", "3 scalpel-blade (Sharps)", "1 forceps"], Needs(Step(StageKind.Slit), 3));
        Assert.Equal(["2 gloves (ContaminatedSolids)", "1 forceps", "3 sample-tube"], Needs(Step(StageKind.Sample), 3));
        Assert.Equal(["2 label"], Needs(Step(StageKind.Label), 3));
    }

    [Fact]
    public void Syringes_and_needles_are_counted_by_their_sizes()
    {
        Assert.Equal(["2 gloves (ContaminatedSolids)", "3 syringe-10-ml (Sharps)", "6 needle-18-g (Sharps)"], Needs(With("10 mL syringe, 18 G needle of 50 mm", "10 mL syringe, 18 G needle of 25 mm"), 3));
        Assert.Equal(["2 gloves (ContaminatedSolids)", "1 syringe-10-ml (Sharps)", "1 syringe-2-ml (Sharps)", "1 needle-18-g (Sharps)", "1 needle-20-g (Sharps)"], Needs(With("10 mL syringe, 18 G needle", "2 mL syringe, 20 G needle")));
        Assert.Equal(["2 gloves (ContaminatedSolids)", "4 syringe (Sharps)", "4 needle (Sharps)"], Needs(With(), 4));
        Assert.Equal(["2 gloves (ContaminatedSolids)", "1 syringe (Sharps)", "1 needle-18-g (Sharps)"], Needs(With("mL syringe, 18 G needle")));
        Assert.Equal(["10 mL", "18 G"], ThingNeeds.Of(With("10 mL syringe, 18 G needle"), 1).Skip(1).SelectMany(n => n.Sizes));
        Assert.Equal(["syringe 10 mL", "needle 18 G"], ThingNeeds.Of(With("10 mL syringe, 18 G needle"), 1).Skip(1).Select(n => n.Name));
        Assert.Equal(["syringe", "needle"], ThingNeeds.Of(With(), 1).Skip(1).Select(n => n.Name));
    }

    [Fact]
    public void Mounting_and_sealing_take_what_they_name()
    {
        static DraftStep Named(StageKind kind, string key, string word) => Step(kind) with { Work = key == "on" ? new Protocolist.Plans.MountWork(word) : new Protocolist.Plans.SealWork(word, null) };
        Assert.Equal(["1 glass-plate"], Needs(Named(StageKind.Mount, "on", "glass plate")));
        Assert.Empty(Needs(Named(StageKind.Mount, "on", "nothing")));
        Assert.Empty(Needs(Step(StageKind.Mount)));
        Assert.Empty(Needs(Step(StageKind.Seal)));
        Assert.Equal(["1 neutral-cure-silicone"], Needs(Named(StageKind.Seal, "closure", "neutral-cure silicone")));
        Assert.Equal(["neutral-cure silicone", "silicone"], Assert.Single(ThingNeeds.Of(Named(StageKind.Seal, "closure", "neutral-cure silicone"), 1)).Words);
        Assert.Equal(["screw lid", "lid"], Assert.Single(ThingNeeds.Of(Named(StageKind.Seal, "closure", "screw lid"), 1)).Words);
    }

    [Fact]
    public void The_words_by_which_a_bench_lists_them()
    {
        string Words(DraftStep step) => string.Join("; ", ThingNeeds.Of(step, 1).Select(n => $"{n.Name}: {string.Join(", ", n.Words)}"));
        Assert.Equal("gloves: glove; goggles: goggle, face shield; apron: apron, coat", Words(Step(StageKind.Bath, "ethanol 50 %vol")));
        Assert.Equal("gloves: glove; scalpel blade: blade, scalpel; forceps: forceps, tweezers", Words(Step(StageKind.Slit)));
        Assert.Equal("gloves: glove; forceps: forceps, tweezers; sample tube: sample tube, cryo, vial", Words(Step(StageKind.Sample)));
        Assert.Equal("gloves: glove; syringe: syringe; needle: needle", Words(Step(StageKind.Inject)));
        Assert.Equal("label, inside and outside: label", Words(Step(StageKind.Label)));
    }

    [Theory]
    [InlineData("Syringe 2.5 mL", "syringe-2.5-ml")]
    [InlineData("  a -- b  ", "a-b")]
    [InlineData("nitrile gloves, pair", "nitrile-gloves-pair")]
    public void A_name_as_an_id(string name, string id) => Assert.Equal(id, Slug.Of(name));

    private static StockItem Item(StockKind kind, string substance, long there, Wear? wear = null, string id = "it") =>
        new() { Id = id, Kind = kind, Substance = substance, OnHand = Amount.Of(there), Wear = wear };

    private static Thing Uses(long uses, params StockItem[] items) => new("it", "it", [.. items], [("x", uses)]);

    /// <summary>Pieces that last ten uses, of which the one in hand has seen four: six are left in it.</summary>
    [Theory]
    [InlineData(6, 1, 1, 0)]
    [InlineData(5, 1, 0, 5)]
    [InlineData(7, 2, 1, 1)]
    [InlineData(16, 2, 2, 0)]
    [InlineData(17, 3, 2, 1)]
    [InlineData(0, 0, 0, 0)]
    public void A_thing_that_lasts_is_used_up_when_its_uses_are(long uses, long needed, long usedUp, long beyond)
    {
        var thing = Uses(uses, Item(StockKind.Tool, "goggles", 1, new(10, 4)));
        Assert.Equal((needed, usedUp, beyond), (thing.Needed, thing.UsedUp, thing.UsesBeyond));
    }

    [Fact]
    public void A_consumable_is_used_once_and_a_tool_of_which_nothing_is_said_for_ever()
    {
        var (consumable, tool, none) = (Uses(5, Item(StockKind.Consumable, "blade", 9)), Uses(5, Item(StockKind.Tool, "forceps", 1)), Uses(5));
        Assert.Equal((5, 5, 0, true), (consumable.Needed, consumable.UsedUp, consumable.UsesBeyond, consumable.IsListed));
        Assert.Equal((1, 0, 0, true), (tool.Needed, tool.UsedUp, tool.UsesBeyond, tool.IsListed));
        Assert.Equal((5, 5, 0, false), (none.Needed, none.UsedUp, none.UsesBeyond, none.IsListed));

        // Nothing in hand has seen no uses, whatever the bench says of the last one.
        Assert.Equal(1, Uses(6, Item(StockKind.Tool, "goggles", 0, new(10, 9))).Needed);
    }

    [Fact]
    public void What_serves_is_of_the_wanted_size_or_else_alike_and_pairs_are_counted_as_pairs()
    {
        ImmutableArray<Thing> Of(DraftStep step, params StockItem[] stock) => ThingBook.Of([step], 1, [.. stock]);
        var sized = Of(With("10 mL syringe, 18 G needle", "10 mL syringe, 18 G needle"), Item(StockKind.Consumable, "needle 20 G", 9, id: "n20"), Item(StockKind.Consumable, "needle 18 G", 9, id: "n18"), Item(StockKind.Consumable, "Needle 18 G", 9, id: "other"), Item(StockKind.Fluid, "syringe 10 mL", 9, id: "no"));
        Assert.Equal(["gloves", "syringe-10-ml", "n18"], sized.Select(t => t.Id));
        Assert.Equal([2, 1, 2], sized.Select(t => t.AllUses));
        Assert.Equal(["n18"], sized[2].Items.Select(i => i.Id));
        Assert.Equal(["n20"], Of(With("10 mL syringe, 18 G needle"), Item(StockKind.Consumable, "needle 20 G", 9, id: "n20"))[2].Items.Select(i => i.Id));

        var fix = Step(StageKind.Immerse, "neutral buffered formalin 10 %") with { Changes = 2 };
        Assert.Equal(3, Of(fix, Item(StockKind.Consumable, "gloves, Pair", 9))[0].AllUses);
        Assert.Equal(6, Of(fix, Item(StockKind.Consumable, "gloves", 9))[0].AllUses);
        Assert.Empty(ThingBook.Of([Step(StageKind.Inspect, "ethanol 50 %vol")], 1, []));
        var note = Assert.Single(ThingBook.Unlisted(Of(fix, Item(StockKind.Tool, "coat", 1)), [Item(StockKind.Tool, "coat", 1)]));
        Assert.Equal(("the bench lists none of: gloves; goggles", "see that they are at hand, or list them with 'consumable:' and 'tool:' so that they are counted"), (note.Message.ToString(), note.Remedy.ToString()));
        Assert.Empty(ThingBook.Unlisted(Of(fix), []));
    }

    /// <summary>Two fillings of 1 L and one of 0.5 L: 2.5 L asked, 20 mL behind for each step, a twentieth to spare.</summary>
    [Fact]
    public void What_is_made_of_a_fluid_is_what_is_asked_what_clings_and_what_is_spare()
    {
        var (one, two) = (Step(StageKind.Bath, "ethanol 50 %vol", "a") with { Volume = Volume.FromLiters(1), Changes = 1 }, Step(StageKind.House, "ethanol 50 %vol", "b") with { Volume = Volume.FromLiters(0.5) });
        var use = Assert.Single(FluidUse.Of([one, two, Step(StageKind.Bath, "ethanol 70 %vol", "c") with { Volume = Volume.FromMicroliters(0.9) }], _ => true));
        Assert.Equal((2.5, 0.04, 0.125, 2.665), (Math.Round(use.Asked.Liters, 9), Math.Round(use.Dead.Liters, 9), Math.Round(use.Spare.Liters, 9), Math.Round(use.Made.Liters, 9)));
        Assert.Equal(3, (use with { MadeTogether = Volume.FromLiters(3) }).Made.Liters, 9);
        Assert.Single(FluidUse.Of([Step(StageKind.Bath, "ethanol 70 %vol", "c") with { Volume = Volume.FromMicroliters(1) }], _ => true));
        Assert.Equal("ethanol 50 %vol", use.Id);

        const string Nbf = "neutral buffered formalin 10 %";
        var fixing = FluidUse.Of([Step(StageKind.Immerse, Nbf, "a") with { Volume = Volume.FromLiters(1) }, Step(StageKind.Inject, Nbf, "b") with { Volume = Volume.FromLiters(1) }], _ => true);
        Assert.Equal([Nbf + ", for immersion", Nbf], fixing.Select(u => u.Id));
        Assert.Equal([Nbf, Nbf], fixing.Select(u => FluidUse.FluidOf(u.Id)));
        Assert.Equal([true, false], fixing.Select(u => u.MayBeRestored));
        Assert.False(Assert.Single(FluidUse.Of([Step(StageKind.Immerse, Nbf, "a") with { Volume = Volume.FromLiters(1) }], _ => false)).MayBeRestored);
    }
}
