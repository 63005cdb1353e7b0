using NodaTime;
using Protocolist.Benches;
using Protocolist.Checks;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Planning.Deciding;
using Protocolist.Plans;
using Protocolist.Specimens;
using Protocolist.Vessels;
using UnitsNet;
using Duration = NodaTime.Duration;

namespace Protocolist.Tests.Checks;

/// <summary>Plans to try the checks on: made by the real planner from a small protocol, then changed in one thing at a time.</summary>
internal static class Cases
{
    /// <summary>A voucher of a perch-like fish: slit, posed, fixed, washed, taken up to 70 % ethanol.</summary>
    public const string TrialProtocol = """
        format: 1
        protocol: trial
        revision: 1
        title: Trial
        for: {group: animal, mass: 1 mg to 100 kg}
        stages:
          - {stage: hold, id: cold, last: at most 24 h}
          - {stage: sample, id: record, how: Photograph both sides for colour., covers: colours}
          - {stage: slit, id: slit, places: [abdomen], length: 10 mm, depth: 5 mm, count: 1}
          - {stage: pose, id: pose}
          - {stage: immerse, id: fix, fluid: neutral buffered formalin 10 %, ratio: 10, last: 20 d, watch: {every: 1 d, signs: {soft: re-inject}}}
          - {stage: wash, id: wash, fluid: tap water, ratio: 5, last: 5 d, changes: 3}
          - {stage: bath, id: half, fluid: ethanol 50 %vol, ratio: 5, last: 7 d}
          - {stage: bath, id: strong, fluid: ethanol 75 %vol, ratio: 5, last: 7 d}
          - {stage: house, id: house, fluid: ethanol 70 %vol, ratio: 5}
          - {stage: label, id: label, fields: [number]}
          - {stage: seal, id: seal, closure: screw lid}
          - {stage: discard, id: spent, of: fix, to: collected as hazardous waste}
          - {stage: inspect, id: first-check, after: 28 d}
          - {stage: inspect, id: round, every: 180 d}
        """;

    public static Specimen Fish { get; } = new()
    {
        Id = "T-1",
        Group = "bony-fish",
        ScientificName = "Perca fluviatilis",
        Mass = Mass.FromGrams(40),
        TotalLength = Length.FromMillimeters(150),
        Condition = Condition.Chilled,
        DiedAt = Instant.FromUtc(2027, 3, 1, 6, 0),
        FoundOn = new LocalDate(2027, 3, 1),
        Where = "Skerry Point",
        HowObtained = "bycatch of a gill net",
        CollectedBy = "M. Okafor",
        Permits = ["asked, none needed"],
        IntendedUse = IntendedUse.Research,
    };

    public static Bench Bench { get; } = Bench.Empty(DateTimeZone.Utc) with
    {
        People = 2,
        Air = new(Volume.FromCubicMeters(120), 12, true),
        Vessels =
        [
            new Vessel("jar-2", "2 L jar", new VesselShape.Cylinder(Length.FromCentimeters(11), Length.FromCentimeters(24)), VesselMaterial.Glass, 9)
            {
                Lid = VesselMaterial.Polypropylene,
                Seal = VesselMaterial.Polyethylene,
                Closure = Closure.ScrewLid,
                EmptyMass = Mass.FromKilograms(0.9),
            },
        ],
    };

    /// <summary>The case in which all is well.</summary>
    public static ReviewCase Good { get; } = Of(TrialProtocol, Fish, Bench);

    /// <summary>A case with other words in the protocol.</summary>
    public static ReviewCase With(string old, string now) => TrialProtocol.Contains(old, StringComparison.Ordinal)
        ? Of(TrialProtocol.Replace(old, now, StringComparison.Ordinal), Fish, Bench)
        : throw new ArgumentException($"no '{old}' in the trial protocol");

    public static ReviewCase Of(Specimen specimen) => Of(TrialProtocol, specimen, Bench);

    public static ReviewCase Of(Bench bench) => Of(TrialProtocol, Fish, bench);

    public static ReviewCase More(string yaml) => Of(TrialProtocol + "\n" + yaml, Fish, Bench);

    public static ReviewCase Of(string rules, Specimen specimen, Bench bench)
    {
        var shelf = Shelf.Of([new SourceText("trial.yaml", rules)]);
        Assert.Empty(shelf.Findings.Where(f => f.Severity == Severity.Error));
        return new Planner(shelf).Pipeline.Make(new(specimen, bench, new LocalDateTime(2027, 3, 1, 9, 0)), shelf.Protocols[0]).Review!;
    }

    public static ReviewCase Step(this ReviewCase plan, string id, Func<ReviewStep, ReviewStep> change) =>
        plan with { Steps = [.. plan.Steps.Select(s => s.Id == id ? change(s) : s)] };

    public static ReviewCase Lasts(this ReviewCase plan, string id, Duration time) =>
        plan.Step(id, s => s with { Step = s.Step with { Start = null, End = null, Least = time } });

    public static ReviewCase Fluid(this ReviewCase plan, string id, string fluid) =>
        plan.Step(id, s => s with { Fluid = Protocolist.Fluids.Fluid.Read(fluid).Value!, Step = s.Step with { Fluid = fluid } });

    public static ReviewCase Without(this ReviewCase plan, string id) => plan with { Steps = [.. plan.Steps.Where(s => s.Id != id)] };

    public static ReviewCase Last(this ReviewCase plan, string id) =>
        plan with { Steps = [.. plan.Steps.Where(s => s.Id != id), plan.Steps.First(s => s.Id == id)] };

    public static ReviewCase Group(this ReviewCase plan, string group) => plan with { Body = plan.Body with { Group = Kinds.Bundled.Find(group)! } };

    public static ReviewCase Specimen(this ReviewCase plan, Func<Specimen, Specimen> change) => plan with { Body = plan.Body with { Specimen = change(plan.Specimen) } };

    public static ReviewCase On(this ReviewCase plan, Func<Bench, Bench> change) => plan with { Bench = change(plan.Bench) };

    public static ReviewCase Written(this ReviewCase plan, Func<Plan, Plan> change) => plan with { Plan = change(plan.Plan) };

    public static ReviewCase Told(this ReviewCase plan, string id, Severity severity = Severity.Warning) =>
        plan with { Earlier = [.. plan.Earlier, new Finding(id, severity, Said.Of("told"), Said.Of("do"))] };

    public static ReviewCase Shelf_holds(this ReviewCase plan, params StockItem[] items) => plan.On(b => b with { Stock = [.. b.Stock, .. items] });

    public static StockItem Bottle(string substance, StockKind kind = StockKind.Fluid) => new()
    {
        Id = "bottle",
        Kind = kind,
        Substance = substance,
        OnHand = kind is StockKind.Fluid ? Amount.Of(Volume.FromLiters(1)) : Amount.Zero(Amount.Of(Volume.FromLiters(1)).Kind),
    };
}
