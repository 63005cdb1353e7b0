using NodaTime;
using Protocolist.Checks;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Protocols;
using Protocolist.Specimens;
using UnitsNet;
using Duration = NodaTime.Duration;

namespace Protocolist.Properties.Checks;

/// <summary>Something that can be wrong with a plan, and how it is put right.</summary>
/// <param name="Remedy">How it is put right, in words.</param>
/// <param name="Findings">The ids of its findings.</param>
/// <param name="Remove">The plan with it put right.</param>
/// <param name="Gone">Whether nothing of it is left then.</param>
internal sealed record Hazard(string Remedy, string[] Findings, Func<ReviewCase, ReviewCase> Remove, bool Gone = true)
{
    public static Hazard[] All { get; } = [.. Fluids, .. Body, .. Vessels, .. Bench, .. Papers];

    private static IEnumerable<Hazard> Fluids =>
    [
        new("one buffering throughout", ["mixed-buffering", "acid-on-bone", "acid-on-calcareous"], plan => Buffered(plan)),
        new("phosphate in the final formalin", ["buffer-does-not-last"], plan => Buffered(plan)),
        new("alcohol of 80 % in place of formalin", ["mixed-buffering", "acid-on-bone", "acid-on-calcareous", "formalin-on-spicules", "lime-long-in-formalin", "fixative-over-its-month", "fixative-too-cold", "injection-too-strong", "buffer-does-not-last", "unwashed-into-alcohol", "wash-too-short", "tissue-for-dna-after-formalin", "formaldehyde-in-the-air", "ventilation-unknown", "formalin-without-hood", "formalin-to-the-drain", "formalin-flag-missing", "bleach-or-acid-near-formalin"], plan => plan.Each(s => s.Fluid is { HasFormaldehyde: true }, s => s.In("ethanol 80 %vol"))),
        new("formalin in place of alcohol", ["alcohol-on-gelatinous", "alcohol-weakened-by-body", "unwashed-into-alcohol", "wash-too-short", "too-big-a-step", "mixed-alcohols", "isopropanol-on-lime", "above-flash-point", "flammable-quantity", "water-unfit-for-alcohol", "unknown-denaturant"], plan => plan.Each(s => s.Fluid is { IsAlcohol: true }, s => s.In("neutral buffered formalin 10 %"))),
        new("one alcohol throughout", ["mixed-alcohols", "isopropanol-on-lime"], plan => (plan with { Care = [.. plan.Care.Select(Ethanol)] }).Each(_ => true, Ethanol)),
        new("a longer wash", ["wash-too-short"], plan => plan.Each(s => s.Kind == StageKind.Wash, s => s.Lasting((s.Lasts * 2) + Duration.FromHours(24))), Gone: false),
        new("a wash that is changed", ["wash-not-changed"], plan => plan.Each(s => s.Kind == StageKind.Wash, s => s with { Step = s.Step with { Changes = s.Step.Changes + 3 } })),
        new("a keeping strength inside the band", ["keeping-strength-out-of-band"], plan => plan.Each(s => s == plan.House, s => s.In(UsualKeeping(s.Fluid!)))),
        new("ten times the final alcohol", ["alcohol-weakened-by-body"], plan => plan.Each(s => s == plan.House, s => s with { Volume = s.Volume * 10 }), Gone: false),
        new("10 % formalin for injection", ["injection-too-strong"], plan => plan.Each(s => s is { Kind: StageKind.Inject, Fluid.HasFormaldehyde: true }, s => s.In("neutral buffered formalin 10 %"))),
        new("a fixative of full strength", ["fixative-too-weak"], plan => plan.Each(s => s.Kind == StageKind.Immerse, s => s.In(s.Fluid is { IsAlcohol: true } ? "ethanol 80 %vol" : "neutral buffered formalin 10 %"))),
        new("a change of fixative every week", ["fixative-over-its-month"], plan => plan.Each(s => s.Kind == StageKind.Immerse, s => s with { Step = s.Step with { Changes = (int)(s.Lasts.TotalDays / 7) + 1 } })),
        new("days in formalin, not weeks", ["lime-long-in-formalin", "acid-on-bone", "fixative-over-its-month"], plan => plan.Each(s => s.Kind == StageKind.Immerse, s => s.Lasting(Duration.Min(s.Lasts, Duration.FromDays(1)))), Gone: false),
    ];

    private static IEnumerable<Hazard> Body =>
    [
        new("a fresh body", ["bloated-not-vented", "decomposed", "frozen-without-thaw", "thawed-is-held"], plan => plan.Told(s => s with { Condition = Condition.Fresh })),
        new("the missing cut", ["bloated-not-vented", "thick-and-uncut"], plan => Before(plan, StageKind.Slit)),
        new("the missing thaw", ["frozen-without-thaw"], plan => Before(plan, StageKind.Thaw)),
        new("a sample before all else", ["tissue-for-dna-after-formalin"], plan => Before(plan, StageKind.Sample)),
        new("a photograph before all else", ["colour-not-recorded"], plan => Before(plan, StageKind.Sample)),
        new("no hurry about its posture", ["posture-not-set"], plan => plan.Without(s => s.Kind == StageKind.Pose).Told(s => s with { IntendedUse = IntendedUse.Research })),
        new("no tissue for DNA wanted", ["tissue-for-dna-after-formalin"], plan => plan.Told(s => s with { IntendedUse = IntendedUse.Research })),
        new("work an hour after death", ["too-late-after-death"], plan => plan.Told(s => s with { DiedAt = plan.FirstFixing?.Step.Start?.ToInstant() - Duration.FromHours(1) })),
        new("a shorter hold", ["hold-too-long", "thawed-is-held"], plan => plan.Each(s => s.Kind == StageKind.Hold, s => s.Lasting(Duration.FromHours(12)))),
        new("a hundred days of fixation", ["fixation-too-short"], plan => plan.Each(s => s.Kind == StageKind.Immerse, s => s.Lasting(s.Lasts + Duration.FromDays(100))), Gone: false),
        new("one animal", ["many-in-one-vessel"], plan => plan.Told(s => s with { Count = 1 })),
        new("somebody who looks daily", ["nobody-watches"], plan => plan.Each(s => s.Kind == StageKind.Immerse, s => s with { WatchEvery = Duration.FromDays(1) })),
    ];

    private static IEnumerable<Hazard> Vessels =>
    [
        new("more fluid in a larger vessel", ["cramped", "ratio-too-low", "not-submerged", "headspace-too-small", "many-in-one-vessel"], plan => plan.Each(_ => true, s => Roomy(s, plan.Body.LotVolume.Nominal * 20))),
        new("lid and wall of known kind", ["vessel-material-unknown"], plan => plan.Each(s => s.Vessel is not null, s => s with { Vessel = s.Vessel! with { Vessel = s.Vessel.Vessel with { Wall = VesselMaterial.Glass, Lid = VesselMaterial.Polypropylene } } })),
        new("no pane of glass", ["tank-glass-to-measure", "glass-too-thin", "joint-load"], plan => plan with { Tank = null }),
        new("a pane of 60 mm", ["glass-too-thin", "tank-glass-to-measure"], plan => plan.Each(s => s.Vessel is not null, s => s with { Vessel = s.Vessel! with { Vessel = s.Vessel.Vessel with { Pane = UnitsNet.Length.FromMillimeters(60) } } })),
        new("silicone left to cure for two days", ["no-time-to-cure"], plan => plan.Each(s => s.Kind == StageKind.Seal, s => s.Lasting(Duration.FromDays(2)))),
    ];

    private static IEnumerable<Hazard> Bench =>
    [
        new("a hood", ["formalin-without-hood", "ventilation-unknown"], plan => plan with { Bench = plan.Bench with { Air = (plan.Bench.Air ?? new(Volume.FromCubicMeters(100), 10, true)) with { HasHood = true } } }),
        new("ten times the fresh air", ["formaldehyde-in-the-air"], plan => plan.Bench.Air is { } air ? plan with { Bench = plan.Bench with { Air = air with { Room = air.Room * 2, ChangesPerHour = air.ChangesPerHour * 5, HasHood = true } } } : plan, Gone: false),
        new("a second pair of hands", ["lone-work", "long-day"], plan => plan with { Bench = plan.Bench with { People = plan.Bench.People + 1 } }, Gone: false),
        new("an empty shelf", ["bleach-or-acid-near-formalin", "stock-expired", "stock-strength-unknown", "unknown-denaturant", "spent-fluid-of-another-buffering", "reused-fixative-doubtful", "ph-drift", "currency-missing", "safety-equipment-not-on-shelf"], plan => plan with { Bench = plan.Bench with { Stock = [] } }),
        new("a room of 20 degrees", ["fixative-too-cold"], plan => At(plan, 20)),
        new("a cold store", ["above-flash-point"], plan => At(plan, Math.Min(2, plan.Bench.Temperatures.Room.DegreesCelsius))),
        new("a currency", ["currency-missing"], plan => plan with { Bench = plan.Bench with { Currency = "EUR" } }),
        new("nothing to buy", ["price-missing"], plan => plan with { Plan = plan.Plan with { Purchases = [] } }),
        new("a drum for the spent fluid", ["formalin-to-the-drain"], plan => plan.Each(s => s.Kind == StageKind.Discard, s => s with { Work = new Protocolist.Plans.DiscardWork("fix", SpentTo.Find("collected as hazardous waste")) })),
    ];

    private static IEnumerable<Hazard> Papers =>
    [
        new("a history", ["missing-provenance"], plan => plan.Told(s => s with { FoundOn = new LocalDate(2027, 1, 1), Where = "an invented shore", CollectedBy = "A. Nobody", HowObtained = string.IsNullOrWhiteSpace(s.HowObtained) ? "drowned in a creel" : s.HowObtained })),
        new("a known death", ["anthrax-signs", "unknown-cause-of-death", "avian-influenza", "frozen-twice"], plan => plan.Told(s => s with { HowObtained = "killed by a car", Notes = null })),
        new("papers", ["permit-not-noted", "protected-group"], plan => plan.Told(s => s with { Permits = ["asked, none needed"] })),
        new("a rodent in place of a bat", ["rabies-prone"], plan => plan with { Body = plan.Body with { Group = Kinds.Bundled.Find("rodent")! } }),
        new("a label that says FORMALIN", ["formalin-flag-missing"], plan => plan with { Plan = plan.Plan with { Label = [Protocolist.Checks.Labels.FormalinFlag.Line, Message.Text("found 2027-04-03")] } }),
        new("a place without a date", ["label-date-not-iso"], plan => plan.Told(s => s with { Where = "an invented shore" })),
        new("pencil, inside and outside", ["label-media", "label-inside-and-outside"], plan => Labelled(plan)),
        new("rounds and a first look", ["care-round-missing", "first-look-missing"], plan => plan with { Plan = plan.Plan with { Care = [new(Message.Text("look"), plan.Plan.End?.Date.PlusDays(28), 6, "")] } }),
    ];

    private static ReviewCase Buffered(ReviewCase plan) =>
        (plan with { Care = [.. plan.Care.Select(Buffered)] }).Each(_ => true, Buffered);

    private static ReviewStep Buffered(ReviewStep step) => step.Fluid is { HasFormaldehyde: true } ? step.In("neutral buffered formalin 10 %") : step;

    private static string UsualKeeping(Fluid fluid) =>
        fluid.Substance == Substance.Ethanol ? "ethanol 75 %vol" : fluid.Substance == Substance.Isopropanol ? "isopropanol 55 %vol" : "neutral buffered formalin 10 %";

    private static ReviewStep Ethanol(ReviewStep step) => step.Fluid?.Substance == Substance.Isopropanol ? step.In("ethanol 70 %vol") : step;

    private static ReviewCase Before(ReviewCase plan, StageKind kind) => plan with
    {
        Steps =
        [
            new(new() { Id = "first-of-all", Kind = kind, Title = Message.Text("First of all"), Instructions = [Message.Text("Take tissue into 95 % ethanol.")] }, kind, null)
            {
                Covers = Coverage.Colours | Coverage.Tissue,
            },
            .. plan.Steps,
        ],
    };

    private static ReviewCase At(ReviewCase plan, double celsius) =>
        plan with { Bench = plan.Bench with { Temperatures = plan.Bench.Temperatures with { Room = Temperature.FromDegreesCelsius(celsius) } } };

    private static ReviewStep Roomy(ReviewStep step, Volume fluid) => step with
    {
        Volume = step.Volume is null ? null : fluid,
        VesselReasons = [],
        Vessel = step.Vessel is not { } vessel ? null : vessel with
        {
            Ratio = Math.Max(10, vessel.Ratio * 4),
            LevelColdest = UnitsNet.Length.FromMeters(Math.Max(vessel.LevelColdest.Meters, vessel.CoveredTo.Meters * 2)),
            HeadspaceVolume = vessel.Vessel.Shape.Inside / 4,
        },
    };

    private static ReviewCase Labelled(ReviewCase plan) => plan.Without(s => s.Kind == StageKind.Label) is var rest
        ? rest with { Steps = [.. rest.Steps, new(new() { Id = "label-it", Kind = StageKind.Label, Title = Message.Text("Label it") }, StageKind.Label, null)] }
        : plan;
}
