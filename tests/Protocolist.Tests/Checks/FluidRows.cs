using Protocolist.Benches;
using Protocolist.Plans;
using Protocolist.Protocols;
using Protocolist.Specimens;
using UnitsNet;
using static Protocolist.Tests.Checks.Cases;
using Duration = NodaTime.Duration;

namespace Protocolist.Tests.Checks;

internal static class FluidRows
{
    private const string Formalin = "neutral buffered formalin 10 %";

    public static Row[] All =>
    [
        new("mixed-buffering", () => Good.Fluid("house", "borax buffered formalin 10 %"), () => Good.Fluid("house", Formalin)),
        new("acid-on-calcareous", () => Good.Fluid("fix", "formalin 10 %").Group("gastropod"), () => Good.Fluid("fix", "formalin 10 %")),
        new("formalin-on-spicules", () => Good.Group("sponge"), () => Good.Fluid("fix", "ethanol 80 %vol").Group("sponge")),
        new("lime-long-in-formalin", () => Good.Group("gastropod").Lasts("fix", Duration.FromDays(8)), () => Good.Group("gastropod").Lasts("fix", Duration.FromDays(7))),
        new("alcohol-on-gelatinous", () => Good.Group("jellyfish"), () => Good.Group("jellyfish").Without("half").Without("strong").Fluid("house", Formalin)),
        new("unwashed-into-alcohol", () => Good.Without("wash"), () => Good),
        new("wash-too-short", () => Good.Lasts("wash", Duration.FromHours(23)), () => Good.Lasts("wash", Duration.FromDays(30))),
        new("wash-not-changed", () => Good.Step("wash", s => s with { Volume = s.Volume / 100, Step = s.Step with { Changes = 0 } }), () => Good.Step("wash", s => s with { Step = s.Step with { Changes = 1 } })),
        new("too-big-a-step", () => Good.Without("half"), () => Good),
        new("mixed-alcohols", () => Good.Fluid("house", "isopropanol 50 %vol"), () => Good),
        new("unknown-denaturant", () => Good.Shelf_holds(Bottle("denatured ethanol 95 %vol")), () => Good.Shelf_holds(Bottle("ethanol 95 %vol"))),
        new("water-unfit-for-alcohol", () => Good.Written(p => p with { Recipes = [Mixed("tap water")] }), () => Good.Written(p => p with { Recipes = [Mixed("distilled water")] })),
        new("keeping-strength-out-of-band", () => Good.Fluid("house", "ethanol 64 %vol"), () => Good.Fluid("house", "ethanol 65 %vol")),
        new("alcohol-weakened-by-body", () => Good.Without("half").Without("strong").Step("house", s => s with { Volume = Volume.FromMilliliters(60) }), () => Good.Step("house", s => s with { Volume = Volume.FromLiters(2) })),
        new("injection-too-strong", () => Injected("formaldehyde 8.1 % w/v"), () => Injected("formaldehyde 8 % w/v")),
        new("fixative-over-its-month", () => Good.Lasts("fix", Duration.FromDays(32)), () => Good.Lasts("fix", Duration.FromDays(31))),
        new("buffer-does-not-last", () => Good.Fluid("house", "borax buffered formalin 10 %"), () => Good.Fluid("house", Formalin)),
        new("acid-on-bone", () => Good.Fluid("fix", "formalin 10 %").Lasts("fix", Duration.FromDays(8)), () => Good.Fluid("fix", "formalin 10 %").Lasts("fix", Duration.FromDays(7))),
        new("fixative-too-weak", () => Good.Fluid("fix", "neutral buffered formalin 3 %"), () => Good.Fluid("fix", "neutral buffered formalin 5 %")),
        new("isopropanol-on-lime", () => Good.Group("gastropod").Fluid("house", "isopropanol 45 %vol"), () => Good.Group("gastropod").Fluid("house", "isopropanol 50 %vol")),
        new("reused-fixative-doubtful", () => Good.Shelf_holds(Bottle(Formalin) with { Uses = 1, Spent = new SpentFluid(6.4, true) }), () => Good.Shelf_holds(Bottle(Formalin) with { Uses = 1, Spent = new SpentFluid(6.5, true) })),
        new("spent-fluid-of-another-buffering", () => Good.Shelf_holds(Bottle("formalin 10 %") with { Uses = 1, Buffering = "borax" }), () => Good.Shelf_holds(Bottle("formalin 10 %") with { Uses = 1, Buffering = "phosphate" })),
        new("fixative-too-cold", () => Good.On(b => b with { Temperatures = b.Temperatures with { Room = Temperature.FromDegreesCelsius(9) } }), () => Good.On(b => b with { Temperatures = b.Temperatures with { Room = Temperature.FromDegreesCelsius(10) } })),
        new("tissue-for-dna-after-formalin", () => ForDna().Last("record"), () => ForDna()),
        new("ph-drift", () => Read(6.5), () => Read(6.6)),
    ];

    /// <summary>Phosphate-buffered formalin has pH 6.9 to 7.2, read to 0.3.</summary>
    private static Protocolist.Checks.ReviewCase Read(double ph) => Good.Shelf_holds(Bottle(Formalin) with { Buffering = "phosphate", Spent = new SpentFluid(ph, true) });

    private static Protocolist.Checks.ReviewCase Injected(string fluid) => Good.Fluid("fix", fluid).Step("fix", s => s with { Kind = StageKind.Inject });

    private static Protocolist.Checks.ReviewCase ForDna() => Good.Specimen(s => s with { IntendedUse = IntendedUse.TissueForDnaFirst })
        .Step("record", s => s with { Covers = Coverage.Colours | Coverage.Tissue });

    private static PlannedRecipe Mixed(string water) =>
        Booked.Recipe("ethanol 70 %vol", 1, Booked.Part(water, 300));
}
