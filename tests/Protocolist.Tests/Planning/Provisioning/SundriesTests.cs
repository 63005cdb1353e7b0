using Protocolist.Benches;
using Protocolist.Fluids;
using Protocolist.Notation;
using Protocolist.Planning.Drafting;
using Protocolist.Planning.Provisioning;
using Protocolist.Planning.Provisioning.Purchasing;
using Protocolist.Plans;
using Protocolist.Protocols;
using Protocolist.Specimens;
using UnitsNet;
using Duration = NodaTime.Duration;

namespace Protocolist.Tests.Planning.Provisioning;

/// <summary>Gloves, needles and blades: how many a step takes, and what of them wears out.</summary>
public class SundriesTests
{
    private static DraftStep Step(StageKind kind, string? fluid = null, string id = "x") =>
        new(new StageDefinition(kind, id, [], default)) { Fluid = fluid is null ? null : Fluid.Read(fluid).Value };

    private static List<SundryNeed> Of(DraftStep step, int animals = 1)
    {
        var needs = new List<SundryNeed>();
        SundryNeeds.Of(step, animals, needs);
        return needs;
    }

    private static string[] Needs(DraftStep step, int animals = 1) =>
        [.. Of(step, animals).Select(n => $"{n.Uses} {n.Sundry.Id}{(n.Sundry.Waste is { } w ? $" ({w})" : "")}")];

    private static DraftStep With(params (int Syringe, int Needle, int Length)[] tools) => Step(StageKind.Inject) with
    {
        Work = new InjectWork([.. tools.Select(t => new InjectionSite(Said.Of("trunk"), 1, OneMl, OneMl, OneMl, OneMl, t.Syringe, t.Needle, t.Length))], null),
    };

    private static Volume OneMl => Volume.FromMilliliters(1);

    [Fact]
    public void What_touches_fixative_needs_gloves_goggles_and_an_apron_at_each_handling()
    {
        var fix = Step(StageKind.Immerse, "neutral buffered formalin 10 %");
        Assert.Equal(["2 gloves (ContaminatedSolids)", "1 goggles", "1 apron"], Needs(fix));
        Assert.Equal(["8 gloves (ContaminatedSolids)", "4 goggles", "4 apron"], Needs(fix with { Changes = 3 }));

        // The looks that stand in the calendar, and those that are over.
        var looks = Enumerable.Range(1, 3).Select(day => NodaTime.Instant.FromUtc(2027, 3, day, 9, 0));
        Assert.Equal(["8 gloves (ContaminatedSolids)", "4 goggles", "4 apron"], Needs(fix with { Inspections = [.. looks] }));
        Assert.Equal(["10 gloves (ContaminatedSolids)", "5 goggles", "5 apron"], Needs(fix with { Inspections = [.. looks], LooksBefore = 1 }));
        Assert.Equal(["2 gloves (ContaminatedSolids)", "1 goggles", "1 apron"], Needs(fix with { Least = Duration.FromDays(10), Watch = (Duration.FromDays(3), []) }));
        Assert.Equal(["2 gloves (ContaminatedSolids)", "1 goggles", "1 apron"], Needs(Step(StageKind.Bath, "ethanol 50 %vol")));
        Assert.Equal(["2 gloves (ContaminatedSolids)"], Needs(Step(StageKind.Wash, "tap water")));
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
        Assert.Equal(["2 gloves (ContaminatedSolids)", "3 syringe-10-ml (Sharps)", "6 needle-18-g (Sharps)"], Needs(With((10, 18, 50), (10, 18, 25)), 3));
        Assert.Equal(
            ["2 gloves (ContaminatedSolids)", "1 syringe-10-ml (Sharps)", "1 syringe-2-ml (Sharps)", "1 needle-18-g (Sharps)", "1 needle-20-g (Sharps)"],
            Needs(With((10, 18, 50), (2, 20, 50))));
        Assert.Equal(["2 gloves (ContaminatedSolids)", "4 syringe (Sharps)", "4 needle (Sharps)"], Needs(With(), 4));
        Assert.Equal(["syringe 10 mL", "needle 18 G"], Of(With((10, 18, 50))).Skip(1).Select(n => n.Sundry.Name.ToString()));
        Assert.Equal(["syringe", "needle"], Of(With()).Skip(1).Select(n => n.Sundry.Name.ToString()));
    }

    [Fact]
    public void Mounting_and_sealing_take_what_they_name()
    {
        static DraftStep Named(StageKind kind, string key, string word) => Step(kind) with { Work = key == "on" ? new MountWork(Support.Find(word)) : new SealWork(Sealing.Find(word), null) };
        Assert.Equal(["2 gloves (ContaminatedSolids)", "1 glass-plate"], Needs(Named(StageKind.Mount, "on", "glass plate")));
        Assert.Equal(["2 gloves (ContaminatedSolids)"], Needs(Named(StageKind.Mount, "on", "nothing")));
        Assert.Equal(["2 gloves (ContaminatedSolids)"], Needs(Step(StageKind.Mount)));
        Assert.Empty(Needs(Step(StageKind.Seal)));
        Assert.Equal(["1 neutral-cure-silicone"], Needs(Named(StageKind.Seal, "closure", "neutral-cure silicone")));
    }

    /// <summary>The catalogue knows every word that a protocol may say there.</summary>
    [Fact]
    public void Every_word_of_the_grammar_is_in_the_catalogue()
    {
        string[] words = [.. StageGrammar.Of(StageKind.Mount).Settings.Single(s => s.Key == "on").Words, .. StageGrammar.Of(StageKind.Seal).Settings.Single(s => s.Key == "closure").Words];
        Assert.Equal(9, words.Length);
        Assert.All(words.Where(w => w != "nothing"), w => Assert.Equal(w, Sundries.Named(w)!.Value.Name.ToString()));
        Assert.Equal(Enum.GetValues<SundryKind>().Length, Sundries.Rows.Length);
    }

    [Theory]
    [InlineData(SundryKind.Gloves, 0, "nitrile gloves, pair", true)]
    [InlineData(SundryKind.Goggles, 0, "face shield", true)]
    [InlineData(SundryKind.Apron, 0, "Lab COAT", true)]
    [InlineData(SundryKind.Forceps, 0, "tweezers", true)]
    [InlineData(SundryKind.SampleTube, 0, "cryo vial", true)]
    [InlineData(SundryKind.NeutralCureSilicone, 0, "silicone sealant", true)]
    [InlineData(SundryKind.SnapLid, 0, "screw lid, lined", true)]
    [InlineData(SundryKind.Needle, 18, "needle 21 G", true)]
    [InlineData(SundryKind.Syringe, 10, "needle 18 G", false)]
    public void A_bench_lists_them_by_these_words(object kind, int size, string line, bool serves) => Assert.Equal(serves, new Sundry((SundryKind)kind, size).IsCalled(line));

    private static StockItem Item(StockKind kind, string substance, long there, Wear? wear = null, string id = "it") =>
        new() { Id = id, Kind = kind, Substance = substance, OnHand = Amount.Of(there), Wear = wear };

    private static SundryShelf Shelf(params StockItem[] items) => new(StockMaterial.Of([.. items], ExchangeRates.None("EUR"), SubstanceCatalogue.Bundled));

    [Fact]
    public void Of_a_wanted_size_that_one_is_taken_else_one_of_no_size_and_never_another()
    {
        var shelf = Shelf(Item(StockKind.Consumable, "needle 18 G", 5, id: "a"), Item(StockKind.Consumable, "needle 21 G", 5, id: "b"), Item(StockKind.Consumable, "needle 50 G", 5, id: "c"));
        Assert.Equal(["b", null, "c", "a"], ((int[])[21, 20, 50, 0]).Select(g => shelf.Find(new(SundryKind.Needle, g))?.Id));
        Assert.Equal("any", Shelf(Item(StockKind.Consumable, "needle 18 G", 5, id: "a"), Item(StockKind.Consumable, "needles, assorted", 5, id: "any")).Find(new(SundryKind.Needle, 20))!.Id);
        Assert.Null(Shelf(Item(StockKind.Consumable, "syringe 10 mL", 5, id: "ten")).Find(new(SundryKind.Syringe, 1)));
        Assert.Null(Shelf(Item(StockKind.Consumable, "syringe 2.5 mL", 5, id: "half")).Find(new(SundryKind.Syringe, 5)));
        Assert.Null(shelf.Find(new(SundryKind.Syringe, 10)));
    }

    /// <summary>A bench without 23 G and without 2 mL works with the next that it has; what nothing near is listed of stays as it is wanted.</summary>
    [Fact]
    public void Needles_and_syringes_are_those_of_the_bench_where_it_has_near_ones()
    {
        static (int Syringe, int Needle) At(int syringe, int needle, SundryShelf shelf) =>
            BenchTools.Of(With((syringe, needle, 25)), shelf).Sites.Select(s => (s.SyringeMl, s.NeedleGauge)).Single();
        var shelf = Shelf(
            Item(StockKind.Consumable, "needle 21 G", 5, id: "n21"), Item(StockKind.Consumable, "needle 18 G", 5, id: "n18"), Item(StockKind.Consumable, "syringe 5 mL", 5, id: "s5"));
        Assert.Equal((5, 21), At(2, 23, shelf));
        Assert.Equal((5, 18), At(5, 18, shelf));
        Assert.Equal((5, 18), At(5, 16, shelf));
        Assert.Equal((5, 30), At(1, 30, shelf));
        Assert.Equal((1, 30), At(1, 30, Shelf()));
        Assert.Equal((1, 30), At(1, 30, Shelf(Item(StockKind.Consumable, "syringe 20 mL", 5, id: "s20"))));
    }

    /// <summary>A syringe that holds half of it serves too, filled twice, and the person reads so.</summary>
    [Fact]
    public void A_smaller_syringe_is_filled_twice_and_told_so()
    {
        var site = new InjectionSite(Said.Of("trunk"), 1, OneMl * 10, OneMl * 16, OneMl * 20, OneMl * 16, 20, 18, 38);
        var step = BenchTools.Of(Step(StageKind.Inject) with { Work = new InjectWork([site], null) }, Shelf(Item(StockKind.Consumable, "syringe 10 mL", 5, id: "s10")));

        Assert.Equal(10, Assert.Single(step.Sites).SyringeMl);
        var told = step.Work.Instructions(new(StageKind.Inject, null, null, 0, null, BodyKind.Whole, 1));
        Assert.Contains("10 mL syringe", Assert.Single(told).ToString(), StringComparison.Ordinal);
        Assert.Contains(", filled 2 times a site", Assert.Single(told).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Lines_called_the_same_are_taken_together_and_a_pair_is_one_piece()
    {
        var shelf = Shelf(Item(StockKind.Consumable, "nitrile gloves, pair", 5, id: "a") with { IsByThePair = true }, Item(StockKind.Consumable, "nitrile gloves, pair", 7, id: "b"), Item(StockKind.Consumable, "rubber gloves", 9, id: "c"));
        var gloves = shelf.Find(new(SundryKind.Gloves))!;
        Assert.Equal((2, true), (gloves.Items.Length, gloves.IsByThePair));
        var use = Assert.Single(SundryUse.Of([Step(StageKind.Pose) with { Changes = 2 }], 1, shelf));
        Assert.Equal((3, 3), (use.AllUses, use.UsesOf(0)));
    }

    [Theory]
    [InlineData("Syringe 2.5 mL", "syringe-2.5-ml")]
    [InlineData("  a -- b  ", "a-b")]
    [InlineData("nitrile gloves, pair", "nitrile-gloves-pair")]
    public void A_name_as_an_id(string name, string id) => Assert.Equal(id, Slug.Of(name));

    private static SundryUse Uses(long uses, params StockItem[] items) => SundryUse.Together(StockMaterial.Of([.. items], ExchangeRates.None("EUR"), SubstanceCatalogue.Bundled)[0], uses);

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
        var (consumable, tool) = (Uses(5, Item(StockKind.Consumable, "blade", 9)), Uses(5, Item(StockKind.Tool, "forceps", 1)));
        Assert.Equal((5, 5, 0), (consumable.Needed, consumable.UsedUp, consumable.UsesBeyond));
        Assert.Equal((1, 0, 0), (tool.Needed, tool.UsedUp, tool.UsesBeyond));
        var none = Assert.Single(SundryUse.Of([Step(StageKind.Pose) with { Changes = 4 }], 1, Shelf()));
        Assert.Equal((10, 10, 0), (none.Needed, none.UsedUp, none.UsesBeyond));
        Assert.Null(none.Stock);
    }

    /// <summary>Nothing in hand has seen no uses, whatever the bench says of the last one.</summary>
    [Fact]
    public void What_is_not_there_has_seen_no_uses() => Assert.Equal(1, Uses(6, Item(StockKind.Tool, "goggles", 0, new(10, 9))).Needed);

    [Fact]
    public void What_serves_is_of_the_wanted_size_or_else_alike_and_pairs_are_counted_as_pairs()
    {
        static List<SundryUse> All(DraftStep step, params StockItem[] stock) => SundryUse.Of([step], 1, Shelf(stock));
        var sized = All(
            With((10, 18, 50), (10, 18, 50)),
            Item(StockKind.Consumable, "needle 20 G", 9, id: "n20"), Item(StockKind.Consumable, "needle 18 G", 9, id: "n18"),
            Item(StockKind.Consumable, "Needle 18 G", 9, id: "other"), Item(StockKind.Fluid, "syringe 10 mL", 9, id: "no"));
        Assert.Equal(["gloves", "syringe-10-ml", "n18"], sized.Select(t => t.Stock?.Id ?? t.Sundry.Id));
        Assert.Equal([2, 1, 2], sized.Select(t => t.AllUses));
        Assert.Equal(["n18"], sized[2].Stock!.Items.Select(i => i.Id));
        Assert.Null(All(With((10, 18, 50)), Item(StockKind.Consumable, "needle 20 G", 9, id: "n20"))[2].Stock);

        var fix = Step(StageKind.Immerse, "neutral buffered formalin 10 %") with { Changes = 2 };
        Assert.Equal(3, All(fix, Item(StockKind.Consumable, "gloves", 9) with { IsByThePair = true })[0].AllUses);
        Assert.Equal(6, All(fix, Item(StockKind.Consumable, "gloves for repairs", 9))[0].AllUses);
        Assert.Empty(All(Step(StageKind.Inspect, "ethanol 50 %vol")));
    }

    private static StockDay Day(string stock) => PreparedStock.Of(PlanFixture.Bench($"zone: UTC\nstock:\n{stock}")).On(new(2027, 3, 1));

    /// <summary>Two fillings of 1 L and one of 0.5 L: 2.5 L asked, 20 mL behind for each step, a twentieth to spare.</summary>
    [Fact]
    public void What_is_made_of_a_fluid_is_what_is_asked_what_clings_and_what_is_spare()
    {
        var (none, used) = (Day("  []\n"), Day("  - {fluid: neutral buffered formalin 8 %, id: kept, on-hand: 2 L, uses: 1, ph: 7.1, clear: yes}\n"));
        var one = Step(StageKind.Bath, "ethanol 50 %vol", "a") with { Volume = Volume.FromLiters(1), Changes = 1 };
        var two = Step(StageKind.House, "ethanol 50 %vol", "b") with { Volume = Volume.FromLiters(0.5) };
        var need = Assert.Single(FluidNeed.Of([one, two, Step(StageKind.Bath, "ethanol 70 %vol", "c") with { Volume = Volume.FromMicroliters(0.9) }], none));
        Assert.Equal((2.5, 0.04, 0.125, 2.665), (Math.Round(need.Asked.Liters, 9), Math.Round(need.Dead.Liters, 9), Math.Round(need.Spare.Liters, 9), Math.Round(need.Made.Liters, 9)));
        Assert.Equal(["a", "b"], need.Steps);
        Assert.Equal(3, FluidNeed.Together(need.Fluid, Volume.FromLiters(3)).Made.Liters, 9);
        Assert.Single(FluidNeed.Of([Step(StageKind.Bath, "ethanol 70 %vol", "c") with { Volume = Volume.FromMicroliters(1) }], none));
        Assert.Equal("ethanol 50 %vol", need.Name.ToString());

        const string Nbf = "neutral buffered formalin 10 %";
        var fixing = FluidNeed.Of([Step(StageKind.Immerse, Nbf, "a") with { Volume = Volume.FromLiters(1) }, Step(StageKind.Inject, Nbf, "b") with { Volume = Volume.FromLiters(1) }], used);
        Assert.Equal([Nbf + ", for immersion", Nbf], fixing.Select(u => u.Name.ToString()));
        Assert.Equal([Nbf, Nbf], fixing.Select(u => u.Fluid.Name));
        Assert.Equal([true, false], fixing.Select(u => u.ForImmersion));
        Assert.False(Assert.Single(FluidNeed.Of([Step(StageKind.Immerse, Nbf, "a") with { Volume = Volume.FromLiters(1) }], none)).ForImmersion);
    }
}
