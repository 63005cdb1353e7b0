using FsCheck;
using FsCheck.Fluent;
using NodaTime;
using Protocolist.Benches;
using Protocolist.Checks;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Planning.Deciding;
using Protocolist.Plans;
using Protocolist.Protocols;
using Protocolist.Specimens;
using Protocolist.Testing;
using UnitsNet;
using Duration = NodaTime.Duration;

namespace Protocolist.Properties.Checks;

/// <summary>Finished plans as the checks see them, most of them spoilt in some way that no planner would.</summary>
internal static class ReviewCases
{
    private static readonly Shelf Bundled = Shelf.Bundled();

    private static readonly string[] Fluids =
    [
        "formalin 10 %", "neutral buffered formalin 10 %", "borax buffered formalin 10 %", "sea water buffered formalin 10 %", "neutral buffered formalin 2 %",
        "formaldehyde 10 % w/v", "ethanol 40 %vol", "ethanol 70 %vol", "ethanol 95 %vol", "isopropanol 45 %vol", "isopropanol 70 %vol", "tap water",
    ];

    private static readonly string[] Histories = ["found dead", "washed up with unclotted blood at the nose", "bycatch of a gill net", "frozen again at sea", ""];

    private static readonly Condition[] Conditions = [Condition.Fresh, Condition.Chilled, Condition.Frozen, Condition.Thawed, Condition.Bloated, Condition.Decomposed];

    private static readonly string[] Bottles = ["household bleach 5 %", "denatured ethanol 95 %vol", "ethanol", "ethanol 96 %vol"];

    /// <summary>Plans over the bundled protocols with up to eight things wrong with them.</summary>
    public static Arbitrary<ReviewCase> Spoilt { get; } = Arb.From(
        from made in PlanCases.Over(Bundled).Generator
        let review = made.Planner.Pipeline.Make(made.Request).Review
        where review is not null
        from spoilers in Gen.Elements(Spoilers.ToArray()).SelectMany(one => one).ListOf()
        select spoilers.Take(8).Aggregate(review, (plan, spoil) => spoil(plan)));

    /// <summary>The plan with its steps changed.</summary>
    public static ReviewCase Each(this ReviewCase plan, Func<ReviewStep, bool> which, Func<ReviewStep, ReviewStep> change) =>
        plan with { Steps = [.. plan.Steps.Select(s => which(s) ? change(s) : s)] };

    public static ReviewCase Without(this ReviewCase plan, Func<ReviewStep, bool> which) => plan with { Steps = [.. plan.Steps.Where(s => !which(s))] };

    public static ReviewCase Told(this ReviewCase plan, Func<Specimen, Specimen> change) => plan with { Body = plan.Body with { Specimen = change(plan.Specimen) } };

    public static ReviewStep Lasting(this ReviewStep step, Duration time) => step with { Step = step.Step with { Start = null, End = null, Least = time } };

    public static ReviewStep In(this ReviewStep step, string fluid) => step with { Fluid = Fluid.Read(fluid).Value!, Step = step.Step with { Fluid = fluid } };

    private static IEnumerable<Gen<Func<ReviewCase, ReviewCase>>> Spoilers =>
    [
        from pick in Gen.Choose(0, 99) from fluid in Gen.Elements(Fluids) select Change(plan => OfFluids(plan, pick, s => s.In(fluid))),
        from pick in Gen.Choose(0, 99) from hours in Gen.Elements(1, 23, 100, 2000) select Change(plan => OfFluids(plan, pick, s => s.Lasting(Duration.FromHours(hours)))),
        from pick in Gen.Choose(0, 99) from factor in Gen.Elements(0.02, 0.3, 40) select Change(plan => OfFluids(plan, pick, s => s with { Volume = s.Volume * factor, Vessel = s.Vessel is { } v ? v with { Ratio = v.Ratio * factor, LevelColdest = v.LevelColdest * Math.Min(1, factor) } : null })),
        from pick in Gen.Choose(0, 99) select Change(plan => OfFluids(plan, pick, s => s with { WatchEvery = null, Step = s.Step with { Changes = 0 } })),
        from kind in Gen.Elements(StageKind.Wash, StageKind.Slit, StageKind.Sample, StageKind.Pose, StageKind.Label, StageKind.Bath, StageKind.Thaw) select Change(plan => plan.Without(s => s.Kind == kind)),
        from words in Gen.Elements(Histories) select Change(plan => plan.Told(s => s with { HowObtained = words, Permits = [] })),
        from condition in Gen.Elements(Conditions) from use in Gen.Elements(IntendedUse.Display, IntendedUse.TissueForDnaFirst) select Change(plan => plan.Told(s => s with { Condition = condition, IntendedUse = use, Count = s.Count * 60 })),
        from late in Gen.Elements(20, 400) select Change(plan => plan.Told(s => s with { DiedAt = plan.Plan.Start?.ToInstant() - Duration.FromHours(late) })),
        from hood in Gen.Elements(true, false) from rooms in Gen.Elements(20, 400) select Change(plan => plan with { Bench = plan.Bench with { Air = new(Volume.FromCubicMeters(rooms), 0.5, hood), People = 1, Currency = null } }),
        from bottle in Gen.Elements(Bottles) select Change(plan => plan with { Bench = plan.Bench with { Stock = [.. plan.Bench.Stock, Bottle(bottle)], Currency = "EUR" } }),
        from celsius in Gen.Elements(4, 34) select Change(plan => plan with { Bench = plan.Bench with { Temperatures = plan.Bench.Temperatures with { Room = Temperature.FromDegreesCelsius(celsius), Cold = Temperature.FromDegreesCelsius(celsius / 2.0) } } }),
        Gen.Constant(Change(plan => plan with { Plan = plan.Plan with { Label = [.. plan.Plan.Label.Where(l => l != Protocolist.Checks.Labels.FormalinFlag.Line), Message.Text("found 2027-04-03")], Care = [], Waste = [.. plan.Plan.Waste.Select(w => w with { Destination = default })] } })),
        Gen.Constant(Change(plan => plan.Told(s => s with { Where = "Skerry Point, 3/4/27", ScientificName = null }))),
        Gen.Constant(Change(plan => plan.Each(s => s.Kind == StageKind.Label, s => s with { Work = new LabelWork([], LabelMedium.Find("felt pen")) }))),
        from covers in Gen.Elements(Coverage.None, Coverage.Colours, Coverage.Parasites) select Change(plan => plan.Each(s => s.Kind == StageKind.Sample, s => s with { Covers = covers })),
        Gen.Constant(Change(plan => plan.Each(s => s.Kind == StageKind.Inject, s => s.In("formaldehyde 10 % w/v")).Told(s => s with { Condition = Condition.Bloated }))),
        Gen.Constant(Change(plan => plan.Each(s => s.Kind == StageKind.Hold, s => s.Lasting(Duration.FromHours(100))).Told(s => s with { Condition = Condition.Thawed }))),
        Gen.Constant(Change(plan => plan.Each(s => s.Kind == StageKind.House, s => s with { Vessel = s.Vessel is { } v ? v with { HeadspaceVolume = v.Vessel.Shape.Inside * 0.001 } : null, Step = s.Step with { HandsOn = Duration.FromHours(30) } }))),
        Gen.Constant(Change(plan => plan.Each(s => s.Kind == StageKind.Seal, s => s.Lasting(Duration.FromHours(1)) with { Work = new Protocolist.Plans.SealWork(Sealing.Silicone, null), Step = s.Step with { Start = null, End = null, Least = Duration.FromHours(1), Instructions = [] } }))),
        Gen.Constant(Change(plan => plan with { Plan = plan.Plan with { Recipes = [.. plan.Plan.Recipes, .. plan.Alcohol.Take(1).Select(Watered)] } })),
        Gen.Constant(Change(plan => plan with { Bench = plan.Bench with { Stock = [.. plan.Bench.Stock, Bottle("forceps") with { Id = "forceps", Kind = StockKind.Tool }] } })),
        Gen.Constant(Change(plan => plan.Each(s => s.Kind == StageKind.Discard, s => s with { Work = new Protocolist.Plans.DiscardWork("fix", SpentTo.Find("drained where local rules allow")) }))),
    ];

    /// <summary>A great deal of alcohol that is made with tap water.</summary>
    private static PlannedRecipe Watered(ReviewStep step)
    {
        var water = new PlannedPart(Message.Text("tap water"), Volume.FromLiters(100), Mass.FromKilograms(100), "") { Fluid = Fluid.TapWater };
        return new(step.Fluid!, Volume.FromLiters(500), [water], [step.Id]);
    }

    /// <summary>One of the steps with fluid, by a number that wraps round.</summary>
    private static ReviewCase OfFluids(ReviewCase plan, int pick, Func<ReviewStep, ReviewStep> change)
    {
        if (plan.FluidSteps.IsEmpty) return plan;
        var chosen = plan.FluidSteps[pick % plan.FluidSteps.Length];
        return plan.Each(s => ReferenceEquals(s, chosen), change);
    }

    private static StockItem Bottle(string substance) => new()
    {
        Id = "bottle-9",
        Kind = StockKind.Fluid,
        Substance = substance,
        OnHand = Amount.Of(Volume.FromLiters(1)),
        Uses = 1,
        Buffering = "borax",
        Spent = new SpentFluid(6, false),
        Expires = new LocalDate(2026, 1, 1),
    };

    private static Func<ReviewCase, ReviewCase> Change(Func<ReviewCase, ReviewCase> change) => change;
}
