using NodaTime;
using Protocolist.Benches.Stock;
using Protocolist.Checks;
using Protocolist.Findings;
using Protocolist.Protocols;
using Protocolist.Specimens;
using static Protocolist.Tests.Checks.Cases;

namespace Protocolist.Tests.Checks;

/// <summary>The limits of the checks about fluids.</summary>
internal static class FluidEdges
{
    private const string Neutral = "neutral buffered formalin 10 %";
    private const string Borax = "borax buffered formalin 10 %";

    public static Edge[] All =>
    [
        Warns("wash-too-short", ["'wash' washes for 23 h", "24 h is the least"], () => Washed(Duration.FromHours(23)), () => Washed(Duration.FromHours(24))),
        Warns("wash-too-short", ["after 24 h of 'wash' at most", "% of the free formaldehyde has left a body"], () => Thick(Washed(Duration.FromHours(24))), () => Thick(Washed(Duration.FromDays(5)))),
        Warns("fixative-over-its-month", ["a filling of 'fix' stays 32 d", "31 d is the most"], () => Fixed(Duration.FromDays(32)), () => Fixed(Duration.FromDays(31))),
        Warns("fixative-over-its-month", ["a filling of 'fix' stays 32 d"], () => Changed(Fixed(Duration.FromDays(64)), 1), () => Changed(Fixed(Duration.FromDays(62)), 1)),
        Warns("acid-on-bone", ["the bones of a bony fish", "formalin 10 %", "7 d is the most"], () => Fixed(Past(7)).Fluid("fix", "formalin 10 %"), () => Fixed(Duration.FromDays(7)).Fluid("fix", "formalin 10 %")),
        Warns("acid-on-bone", ["which is acid"], () => Fixed(Past(7)).Fluid("fix", "formalin 10 %"), () => Fixed(Past(7)).Fluid("fix", "formalin 10 %").Group("gastropod")),
        Warns("lime-long-in-formalin", ["with its lime in", "7 d is the most"], () => Fixed(Past(7)).Group("gastropod"), () => Fixed(Duration.FromDays(7)).Group("gastropod")),
        Warns("lime-long-in-formalin", ["'house'", "for good"], () => Good.Group("gastropod").Fluid("house", Neutral), () => Good.Group("gastropod")),
        Notes("lime-long-in-formalin", ["statoliths"], () => Fixed(Past(7)).Group("cephalopod"), () => Fixed(Duration.FromDays(7)).Group("cephalopod")),
        Fails("acid-on-calcareous", ["'fix' puts formalin 10 %", "shell or skeleton of lime"], () => Good.Group("gastropod").Fluid("fix", "formalin 10 %"), () => Good.Group("gastropod")),
        Fails("acid-on-calcareous", ["spicules or ossicles"], () => Good.Group("sponge").Fluid("fix", "formalin 10 %"), () => Good.Group("gastropod").Fluid("fix", "formalin 10 %")),
        Fails("formalin-on-spicules", ["for good"], () => Good.Group("sponge").Fluid("house", Neutral), () => Good.Group("sponge")),
        Warns("formalin-on-spicules", ["for 20 d"], () => Good.Group("sponge"), () => Good.Group("bony-fish")),
        Warns("formalin-on-spicules", ["sea squirt", "for 8 d"], () => Fixed(Duration.FromDays(8)).Group("ascidian"), () => Fixed(Duration.FromDays(7)).Group("ascidian")),
        Warns("formalin-on-spicules", ["sea squirt", "for good"], () => Fixed(Duration.FromDays(7)).Group("ascidian").Fluid("house", Neutral), () => Fixed(Duration.FromDays(7)).Group("ascidian")),
        Warns("keeping-strength-out-of-band", ["ethanol 64.9 %vol", "65 to 80 %vol is kept"], () => Kept("ethanol 64.9 %vol"), () => Kept("ethanol 65 %vol")),
        Warns("keeping-strength-out-of-band", ["ethanol 80.1 %vol"], () => Kept("ethanol 80.1 %vol"), () => Kept("ethanol 80 %vol")),
        Fails("keeping-strength-out-of-band", ["below 50 %vol it does not preserve"], () => Kept("ethanol 49.9 %vol"), () => Kept("ethanol 50 %vol")),
        Warns("keeping-strength-out-of-band", ["40 to 55 %vol is kept"], () => Kept("isopropanol 39.9 %vol"), () => Kept("isopropanol 40 %vol")),
        Warns("keeping-strength-out-of-band", ["isopropanol 55.1 %vol"], () => Kept("isopropanol 55.1 %vol"), () => Kept("isopropanol 55 %vol")),
        Fails("keeping-strength-out-of-band", ["below 30 %vol"], () => Kept("isopropanol 29.9 %vol"), () => Kept("isopropanol 30 %vol")),
        Warns("keeping-strength-out-of-band", ["12 g/L of formaldehyde", "lets mould grow"], () => Kept("formaldehyde 1.2 % w/v"), () => Kept("formaldehyde 1.3 % w/v")),
        Warns("keeping-strength-out-of-band", ["46 g/L", "45 g/L only hardens"], () => Kept("formaldehyde 4.6 % w/v"), () => Kept("formaldehyde 4.5 % w/v")),
        Fails("keeping-strength-out-of-band", ["preserves nothing"], () => Kept("tap water"), () => Kept("ethanol 70 %vol")),
        Warns("keeping-strength-out-of-band", ["ethanol 95 %vol"], () => Kept("ethanol 95 %vol"), () => Kept("ethanol 95 %vol").Specimen(s => s with { IntendedUse = IntendedUse.TissueForDnaFirst })),
        Warns("fixative-too-weak", ["13 g/L of formaldehyde", "14 g/L is the least"], () => Good.Fluid("fix", "formaldehyde 1.3 % w/v"), () => Good.Fluid("fix", "formaldehyde 1.4 % w/v")),
        Warns("fixative-too-weak", ["ethanol 69 %vol", "below 70 %vol"], () => Good.Fluid("fix", "ethanol 69 %vol"), () => Good.Fluid("fix", "ethanol 70 %vol")),
        Warns("fixative-too-weak", ["ethanol 59 %vol"], () => Fixed(Duration.FromHours(24)).Fluid("fix", "ethanol 59 %vol"), () => Fixed(Duration.FromHours(24)).Fluid("fix", "ethanol 60 %vol")),
        Warns("fixative-too-weak", ["ethanol 60 %vol"], () => Fixed(Duration.FromHours(31)).Fluid("fix", "ethanol 60 %vol"), () => Fixed(Duration.FromHours(30)).Fluid("fix", "ethanol 60 %vol")),
        Warns("injection-too-strong", ["81 g/L", "80 g/L is the most"], () => Injected("formaldehyde 8.1 % w/v"), () => Injected("formaldehyde 8 % w/v")),
        Warns("too-big-a-step", ["'half' goes from 0 to 51 %vol", "51 points; up to 50"], () => Good.Fluid("half", "ethanol 51 %vol"), () => Good),
        Warns("too-big-a-step", ["'strong' goes from 50 to 81 %vol", "31 points; up to 30"], () => Good.Fluid("strong", "ethanol 81 %vol"), () => Good.Fluid("strong", "ethanol 80 %vol")),
        Fails("alcohol-on-gelatinous", ["'house' raises it by 10.6 points", "10 is the most"], () => Jelly("ethanol 10.6 %vol"), () => Jelly("ethanol 10.5 %vol")),
        Warns("alcohol-on-gelatinous", ["by 10 points"], () => Jelly("ethanol 10 %vol"), () => Jelly(Neutral)),
        Warns("isopropanol-on-lime", ["isopropanol 49.9 %vol", "below 50 %vol"], () => Good.Group("gastropod").Fluid("house", "isopropanol 49.9 %vol"), () => Good.Group("gastropod").Fluid("house", "isopropanol 50 %vol")),
        Warns("fixative-too-cold", ["at 9.9 degC", "below 10 degC"], () => At(9.9), () => At(10)),
        Warns("buffer-does-not-last", ["pH of 8.0 to 9.0", "30 days"], () => Good.Fluid("house", Borax), () => Good.Fluid("house", Neutral)),
        Warns("buffer-does-not-last", ["30 days"], () => Good.Fluid("house", "sea-water formalin 5 %"), () => Good.Group("jellyfish").Fluid("house", "sea-water formalin 5 %")),
        Notes("buffer-does-not-last", ["the usual fluid for jelly", "30 days"], () => Good.Group("jellyfish").Fluid("house", "sea-water formalin 5 %"), () => Good.Fluid("house", "sea-water formalin 5 %")),
        Fails("mixed-buffering", ["2 bufferings", "phosphate buffered in 'fix'", "borax buffered in 'house'"], () => Good.Fluid("house", Borax), () => Good.Fluid("house", Neutral)),
        Fails("mixed-alcohols", ["'half' uses ethanol 50 %vol and 'house' isopropanol 50 %vol"], () => Good.Fluid("house", "isopropanol 50 %vol"), () => Good),
        Fails("unwashed-into-alcohol", ["'half' puts the body into ethanol 50 %vol straight from the formalin of 'fix'"], () => Good.Without("wash"), () => Good),
        Fails("unwashed-into-alcohol", ["straight from the formalin of 'fix'"], () => Good.Fluid("wash", "ethanol 20 %vol"), () => Good.Fluid("wash", "distilled water")),
        Warns("wash-not-changed", ["standing water, never changed", "% of the free formaldehyde stays"], () => Standing(0, ""), () => Standing(0, "yes")),
        Warns("ph-drift", ["reads pH 7.6", "6.9 to 7.2"], () => Read(7.6), () => Read(7.5)),
        Warns("ph-drift", ["stands open since 31 days", "30 days is as long"], () => Opened(31), () => Opened(30)),
        Warns("reused-fixative-doubtful", ["below 6.5"], () => Read(6.4), () => Read(6.5)),
        Warns("spent-fluid-of-another-buffering", ["used 2 times, is buffered with borax", "formalin with phosphate"], () => Good.Shelf_holds(Bottle(Borax) with { Uses = 2, Buffering = "borax" }), () => Good.Shelf_holds(Bottle(Borax) with { Uses = 0, Buffering = "borax" })),
        Fails("tissue-for-dna-after-formalin", ["no step takes any before the formalin of 'fix'"], () => ForDna(Good.Without("record")), () => ForDna(Good)),
        Fails("tissue-for-dna-after-formalin", ["'record' comes after the formalin of 'fix'"], () => ForDna(Good.Last("record")), () => Good.Last("record")),
        Warns("unknown-denaturant", ["'bottle' is industrial ethanol 95 %vol"], () => Good.Shelf_holds(Bottle("industrial ethanol 95 %vol")), () => Good.Shelf_holds(Bottle("industrial ethanol 95 %vol", StockKind.Tool))),
    ];

    private static Edge Warns(string id, string[] says, Func<ReviewCase> past, Func<ReviewCase> before) => new(id, Severity.Warning, says, past, before);

    private static Edge Fails(string id, string[] says, Func<ReviewCase> past, Func<ReviewCase> before) => new(id, Severity.Error, says, past, before);

    private static Edge Notes(string id, string[] says, Func<ReviewCase> past, Func<ReviewCase> before) => new(id, Severity.Note, says, past, before);

    private static Duration Past(int days) => Duration.FromDays(days) + Duration.FromHours(1);

    private static ReviewCase Washed(Duration time) => Good.Lasts("wash", time);

    /// <summary>40 mm to the middle, which half of the formaldehyde leaves in more than a day and less than five.</summary>
    private static ReviewCase Thick(ReviewCase plan) =>
        plan with { Fixation = null, Body = plan.Body with { HalfThickness = plan.Body.HalfThickness with { Nominal = UnitsNet.Length.FromMillimeters(40) } } };

    private static ReviewCase Fixed(Duration time) => Good.Lasts("fix", time);

    private static ReviewCase Changed(ReviewCase plan, int times) => plan.Step("fix", s => s with { Step = s.Step with { Changes = times } });

    private static ReviewCase Kept(string fluid) => Good.Fluid("house", fluid);

    private static ReviewCase Injected(string fluid) => Good.Fluid("fix", fluid).Step("fix", s => s with { Kind = StageKind.Inject });

    private static ReviewCase Jelly(string fluid) => Good.Group("jellyfish").Without("half").Without("strong").Fluid("house", fluid);

    private static ReviewCase At(double celsius) => Good.On(b => b with { Temperatures = b.Temperatures with { Room = UnitsNet.Temperature.FromDegreesCelsius(celsius) } });

    private static ReviewCase Standing(int changes, string running) =>
        Good.Step("wash", s => s with { Details = s.Details.SetItem("running", running), Step = s.Step with { Changes = changes, Volume = UnitsNet.Volume.FromMilliliters(50) } });

    private static ReviewCase Read(double ph) => Good.Shelf_holds(Bottle(Neutral) with { Uses = 1, Buffering = "phosphate", Spent = new SpentFluid(ph, true) });

    /// <summary>Borax-buffered formalin made up so many days before the plan begins, on 1 March 2027.</summary>
    private static ReviewCase Opened(int days) => Good.Shelf_holds(Bottle(Borax) with { Buffering = "borax", OpenedOn = new LocalDate(2027, 3, 1).PlusDays(-days) });

    private static ReviewCase ForDna(ReviewCase plan) => plan.Specimen(s => s with { IntendedUse = IntendedUse.TissueForDnaFirst });
}
