using NodaTime;
using Protocolist.Benches;
using Protocolist.Checks;
using Protocolist.Fluids;
using Protocolist.Fluids.Infiltration;
using Protocolist.Protocols;
using Protocolist.Specimens;
using static Protocolist.Tests.Checks.Cases;
using static Protocolist.Tests.Checks.Edge;

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
        Fails("acid-on-calcareous", ["'fix' puts formalin 10 %", "a shell or skeleton of lime"], () => Good.Group("gastropod").Fluid("fix", "formalin 10 %"), () => Good.Group("gastropod")),
        Fails("acid-on-calcareous", ["spicules or ossicles"], () => Good.Group("sponge").Fluid("fix", "formalin 10 %"), () => Good.Group("gastropod").Fluid("fix", "formalin 10 %")),
        Fails("formalin-on-spicules", ["for good"], () => Good.Group("sponge").Fluid("house", Neutral), () => Good.Group("sponge")),
        Warns("formalin-on-spicules", ["for 20 d"], () => Good.Group("sponge"), () => Good.Group("bony-fish")),
        Warns("formalin-on-spicules", ["sea squirt", "for 8 d"], () => Fixed(Duration.FromDays(8)).Group("ascidian"), () => Fixed(Duration.FromDays(7)).Group("ascidian")),
        Warns("formalin-on-spicules", ["sea squirt", "for good"], () => Fixed(Duration.FromDays(7)).Group("ascidian").Fluid("house", Neutral), () => Fixed(Duration.FromDays(7)).Group("ascidian")),
        Warns("keeping-strength-out-of-band", ["ethanol 64.9 %vol", "65 to 80 %vol is right for keeping"], () => Kept("ethanol 64.9 %vol"), () => Kept("ethanol 65 %vol")),
        Warns("keeping-strength-out-of-band", ["ethanol 80.1 %vol"], () => Kept("ethanol 80.1 %vol"), () => Kept("ethanol 80 %vol")),
        Fails("keeping-strength-out-of-band", ["below 50 %vol it does not preserve"], () => Kept("ethanol 49.9 %vol"), () => Kept("ethanol 50 %vol")),
        Warns("keeping-strength-out-of-band", ["40 to 55 %vol is right for keeping"], () => Kept("isopropanol 39.9 %vol"), () => Kept("isopropanol 40 %vol")),
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
        Fails("alcohol-on-gelatinous", ["'house' raises it by 10.1 points", "10 is the most"], () => Jelly("ethanol 10.1 %vol"), () => Jelly("ethanol 10 %vol")),
        Warns("alcohol-on-gelatinous", ["by 10 points at once; no step is over 10, and it shrinks even so"], () => Jelly("ethanol 10 %vol"), () => Jelly(Neutral)),
        Warns("isopropanol-on-lime", ["isopropanol 49.9 %vol", "below 50 %vol"], () => Good.Group("gastropod").Fluid("house", "isopropanol 49.9 %vol"), () => Good.Group("gastropod").Fluid("house", "isopropanol 50 %vol")),
        Warns("fixative-too-cold", ["at 9.9 °C", "below 10 °C"], () => At(9.9), () => At(10)),
        Warns("buffer-does-not-last", ["pH of 8.0 to 9.0", "30 days"], () => Good.Fluid("house", Borax), () => Good.Fluid("house", Neutral)),
        Warns("buffer-does-not-last", ["30 days"], () => Good.Fluid("house", "sea-water formalin 5 %"), () => Good.Group("jellyfish").Fluid("house", "sea-water formalin 5 %")),
        Notes("buffer-does-not-last", ["the usual fluid for jelly", "30 days"], () => Good.Group("jellyfish").Fluid("house", "sea-water formalin 5 %"), () => Good.Fluid("house", "sea-water formalin 5 %")),
        Fails("mixed-buffering", ["buffered in 2 ways", "phosphate buffered in 'fix'", "borax buffered in 'house'"], () => Good.Fluid("house", Borax), () => Good.Fluid("house", Neutral)),
        Fails("mixed-alcohols", ["'half' uses ethanol 50 %vol and 'house' isopropanol 50 %vol"], () => Good.Fluid("house", "isopropanol 50 %vol"), () => Good),
        Fails("unwashed-into-alcohol", ["'half' puts the body into ethanol 50 %vol straight from the formalin of 'fix'"], () => Good.Without("wash"), () => Good),
        Fails("unwashed-into-alcohol", ["straight from the formalin of 'fix'"], () => Good.Fluid("wash", "ethanol 20 %vol"), () => Good.Fluid("wash", "distilled water")),
        Warns("wash-not-changed", ["standing water, never changed", "% of the free formaldehyde stays"], () => Standing(0, ""), () => Standing(0, "yes")),
        Warns("ph-drift", ["reads pH 7.6", "6.9 to 7.2"], () => Read(7.6), () => Read(7.5)),
        Warns("ph-drift", ["has stood open for 31 days", "30 days is as long"], () => Opened(31), () => Opened(30)),
        Warns("reused-fixative-doubtful", ["below 6.5"], () => Read(6.4), () => Read(6.5)),
        Warns("spent-fluid-of-another-buffering", ["used twice, is buffered with borax", "formalin is buffered with phosphate"], () => Good.Shelf_holds(Bottle(Borax) with { Uses = 2, Buffering = "borax" }), () => Good.Shelf_holds(Bottle(Borax) with { Uses = 0, Buffering = "borax" })),
        Fails("tissue-for-dna-after-formalin", ["no step takes any before the formalin of 'fix'"], () => ForDna(Good.Without("record")), () => ForDna(Tissue)),
        Fails("tissue-for-dna-after-formalin", ["no step takes any before the formalin of 'fix'"], () => ForDna(Good), () => ForDna(Tissue)),
        Fails("tissue-for-dna-after-formalin", ["no step takes any before the formalin of 'fix'"], () => ForDna(Good.Fluid("record", "tap water")), () => ForDna(Good.Fluid("record", "ethanol 95 %vol"))),
        Fails("tissue-for-dna-after-formalin", ["no step takes any before the formalin of 'fix'"], () => ForDna(Tissue.Step("record", s => s with { Kind = StageKind.Pose })), () => ForDna(Tissue)),
        Fails("tissue-for-dna-after-formalin", ["'record' comes after the formalin of 'fix'"], () => ForDna(Tissue.Last("record")), () => Tissue.Last("record")),
        Warns("unknown-denaturant", ["'bottle' is industrial ethanol 95 %vol"], () => Good.Shelf_holds(Bottle("industrial ethanol 95 %vol")), () => Good.Shelf_holds(Bottle("industrial ethanol 95 %vol", StockKind.Tool))),
        Warns("wash-too-short", ["'wash' washes for 2 h"], () => Thick(Washed(Duration.FromHours(2)), 1.01), () => Thick(Washed(Duration.FromHours(2)), 1)),
        Warns("wash-too-short", ["'wash' washes for 2 h"], () => Washed(Duration.FromHours(2)), () => Washed(Duration.FromHours(2)).Without("fix")),
        Warns("wash-too-short", ["'wash' washes for 2 h"], () => Washed(Duration.FromHours(2)), () => Washed(Duration.FromHours(2)).Without("half").Without("strong").Without("house")),
        Warns("wash-too-short", ["'wash' and 'half' wash for 23 h"], () => Washed(Duration.FromHours(11)).Lasts("half", Duration.FromHours(12)).Fluid("half", "tap water").Step("half", s => s with { Kind = StageKind.Wash }), () => Washed(Duration.FromHours(12)).Lasts("half", Duration.FromHours(12)).Fluid("half", "tap water").Step("half", s => s with { Kind = StageKind.Wash })),
        Warns("wash-too-short", ["'wash' washes for 23 h 59 min; 24 h is the least"], () => Washed(Duration.FromMinutes(24 * 60 - 1)), () => Washed(Duration.FromHours(24))),
        Warns("wash-too-short", ["% of the free formaldehyde has left"], () => HalfOut(0.99), () => HalfOut(1.01)),
        Warns("fixative-over-its-month", ["a filling of 'fix' stays 40 d"], () => Fixed(Duration.FromDays(40)), () => Fixed(Duration.FromDays(40)).Step("fix", s => s with { Kind = StageKind.Bath })),
        Warns("acid-on-bone", ["the bones of a bony fish lie 8 d"], () => Twice(4), () => Twice(3.5)),
        Warns("acid-on-bone", ["which is acid"], () => Fixed(Past(7)).Fluid("fix", "formalin 10 %"), () => Fixed(Past(7)).Fluid("fix", "formalin 10 %").Step("fix", s => s with { Kind = StageKind.Bath })),
        Warns("acid-on-bone", ["which is acid"], () => Fixed(Past(7)).Fluid("fix", "formalin 10 %"), () => Fixed(Past(7))),
        Fails("acid-on-calcareous", ["a shell or skeleton of lime"], () => Good.Group("sea-star").Fluid("fix", "formalin 10 %"), () => Good.Group("sponge").Fluid("fix", "formalin 10 %")),
        Warns("formalin-on-spicules", ["sponge"], () => Good.Group("sponge"), () => Good.Group("sponge").Fluid("fix", "formalin 10 %")),
        Warns("formalin-on-spicules", ["sea squirt", "for 7"], () => Fixed(Past(7)).Group("ascidian"), () => Fixed(Duration.FromDays(7)).Group("ascidian")),
        Warns("lime-long-in-formalin", ["with its lime"], () => Good.Group("gastropod"), () => Good.Group("sea-star")),
        Warns("lime-long-in-formalin", ["with its lime"], () => Good.Group("gastropod"), () => Good.Group("gastropod").Fluid("fix", "formalin 10 %")),
        Notes("lime-long-in-formalin", ["statoliths", "for good"], () => Fixed(Duration.FromDays(2)).Group("squid").Fluid("house", Neutral), () => Fixed(Duration.FromDays(2)).Group("squid")),
        Warns("keeping-strength-out-of-band", ["isopropanol 60 %vol"], () => Kept("isopropanol 60 %vol").Specimen(s => s with { IntendedUse = IntendedUse.TissueForDnaFirst }), () => Kept("ethanol 60 %vol")),
        Fails("keeping-strength-out-of-band", ["preserves nothing"], () => Kept("distilled water"), () => Kept(Neutral)),
        Warns("fixative-too-weak", ["ethanol 60 %vol"], () => Weak("ethanol 69 %vol"), () => Weak("ethanol 70 %vol")),
        Warns("fixative-too-weak", ["ethanol 60 %vol"], () => Good.Fluid("fix", "ethanol 60 %vol"), () => Good.Fluid("half", "ethanol 60 %vol").Step("half", s => s with { Kind = StageKind.Immerse })),
        Warns("fixative-too-weak", ["12 g/L"], () => Good.Fluid("fix", "formaldehyde 1.2 % w/v"), () => Good.Fluid("fix", "formaldehyde 1.2 % w/v").Step("fix", s => s with { Kind = StageKind.Inject })),
        Warns("injection-too-strong", ["90 g/L"], () => Injected("formaldehyde 9 % w/v"), () => Good.Fluid("fix", "formaldehyde 9 % w/v")),
        Warns("isopropanol-on-lime", ["a sponge"], () => Good.Group("sponge").Fluid("house", "isopropanol 45 %vol"), () => Good.Fluid("house", "isopropanol 45 %vol")),
        Warns("isopropanol-on-lime", ["isopropanol 45 %vol"], () => Good.Group("gastropod").Fluid("house", "isopropanol 45 %vol"), () => Good.Group("gastropod").Fluid("half", "isopropanol 45 %vol")),
        Warns("isopropanol-on-lime", ["45 %vol"], () => Good.Group("gastropod").Fluid("house", "isopropanol 45 %vol"), () => Good.Group("gastropod").Fluid("house", "ethanol 45 %vol")),
        Warns("too-big-a-step", ["'half' goes from 0 to 60 %vol"], () => Good.Fluid("half", "ethanol 60 %vol"), () => Good.Fluid("half", "ethanol 60 %vol").Group("jellyfish")),
        Warns("too-big-a-step", ["'half' goes from 0 to 80 %vol"], () => Later("half", "ethanol 80 %vol"), () => Good.Fluid("fix", "ethanol 80 %vol")),
        Warns("too-big-a-step", ["'strong' goes from 0 to 75 %vol"], () => Good.Fluid("half", "distilled water"), () => Good),
        Warns("too-big-a-step", ["'house' goes from 35 to 70 %vol"], () => Good.Fluid("strong", "ethanol 35 %vol"), () => Good.Fluid("strong", "ethanol 40 %vol")),
        Warns("too-big-a-step", ["'wash' goes from 0 to 60 %vol"], () => Good.Fluid("wash", "ethanol 60 %vol"), () => Good.Fluid("wash", "ethanol 60 %vol").Step("wash", s => s with { Kind = StageKind.Rinse })),
        Fails("alcohol-on-gelatinous", ["'strong' raises it by 40 points"], () => Good.Group("jellyfish").Fluid("half", "ethanol 35 %vol"), () => Good.Group("jellyfish").Fluid("half", "ethanol 40 %vol")),
        Fails("alcohol-on-gelatinous", ["'half' raises it by 40 points"], () => Good.Group("jellyfish").Fluid("half", "ethanol 40 %vol").Fluid("strong", "ethanol 80 %vol"), () => Good.Group("bony-fish").Fluid("half", "ethanol 40 %vol")),
        Warns("fixative-too-cold", ["'fix' stands 20 d"], () => At(4), () => At(4).Step("fix", s => s with { Kind = StageKind.Inject })),
        Warns("buffer-does-not-last", ["after 180 days"], () => Good.Fluid("house", "hexamine buffered formalin 5 %"), () => Good),
        Warns("buffer-does-not-last", ["'house' keeps it for good in formalin 5 %, which has no buffer"], () => Good.Fluid("house", "formalin 5 %"), () => Good.Fluid("house", "neutral buffered formalin 5 %")),
        Warns("buffer-does-not-last", ["after 1 day; it neutralises"], () => Good.Fluid("house", "formalin 5 % over marble chips"), () => Good.Fluid("house", "formalin 5 %")),
        Warns("buffer-does-not-last", ["borax"], () => Good.Group("jellyfish").Fluid("house", Borax), () => Good.Group("jellyfish").Fluid("house", "sea-water formalin 5 %")),
        Fails("mixed-buffering", ["unbuffered in 'half'"], () => Good.Fluid("half", "formalin 10 %"), () => Good.Fluid("half", Neutral)),
        Fails("mixed-buffering", ["phosphate buffered in 'fix', 'house'; borax buffered in 'half', 'round'"], () => Cared(Good.Fluid("half", Borax).Fluid("house", Neutral), Borax), () => Cared(Good, "ethanol 70 %vol")),
        Fails("mixed-buffering", ["borax buffered in 'round'"], () => Cared(Good, Borax), () => Cared(Good, Neutral)),
        Fails("mixed-alcohols", ["'half' uses ethanol 50 %vol and 'round' isopropanol 50 %vol"], () => Cared(Good, "isopropanol 50 %vol"), () => Cared(Good, "ethanol 60 %vol")),
        Fails("mixed-alcohols", ["and 'strong' isopropanol 50 %vol"], () => Good.Fluid("strong", "isopropanol 50 %vol").Fluid("house", "isopropanol 50 %vol"), () => Good.Fluid("half", "isopropanol 50 %vol").Fluid("strong", "isopropanol 50 %vol").Fluid("house", "isopropanol 50 %vol")),
        Warns("too-big-a-step", ["'strong' goes from 50 to 95 %vol"], () => Later("half", "ethanol 50 %vol").Fluid("strong", "ethanol 95 %vol").Step("strong", s => s with { Kind = StageKind.Immerse }), () => Later("half", "ethanol 65 %vol").Fluid("strong", "ethanol 95 %vol").Step("strong", s => s with { Kind = StageKind.Immerse })),
        Warns("too-big-a-step", ["'half' goes from 0 to 80 %vol"], () => Later("half", "ethanol 80 %vol"), () => Later("half", "ethanol 80 %vol").Fluid("fix", "tap water").Step("fix", s => s with { Kind = StageKind.Wash })),
        Fails("unwashed-into-alcohol", ["straight from the formalin of 'fix'"], () => Good.Step("wash", s => s with { Kind = StageKind.Bath }), () => Good),
        Warns("wash-not-changed", ["never changed"], () => Left(8.99), () => Left(9.01)),
        Warns("wash-not-changed", ["never changed"], () => Standing(0, ""), () => Standing(1, "")),
        Warns("wash-not-changed", ["never changed"], () => Standing(0, "no"), () => Standing(0, "no").Step("wash", s => s with { Kind = StageKind.Bath })),
        Warns("wash-not-changed", ["never changed"], () => Standing(0, "no"), () => Standing(0, "no").Step("wash", s => s with { Volume = null })),
        Warns("ph-drift", ["reads pH 6.5"], () => Kept(6.5, b => b), () => Kept(6.5, b => b with { Kind = StockKind.Tool })),
        Warns("ph-drift", ["reads pH 6.5"], () => Kept(6.5, b => b), () => Kept(6.5, b => b with { OnHand = Amount.Of(UnitsNet.Volume.Zero) })),
        Warns("ph-drift", ["reads pH 6.5"], () => Kept(6.5, b => b), () => Kept(6.5, b => b with { Buffering = "vinegar" })),
        Warns("ph-drift", ["unbuffered formalin has 2.8 to 4.5", "with a meter, or make it fresh"], () => Kept(7, b => b with { Buffering = "none" }), () => Kept(7, b => b)),
        Warns("ph-drift", ["reads pH"], () => Kept(6.5, b => b), () => Kept(6.4, b => b)),
        Warns("ph-drift", ["reads pH 6.5"], () => Kept(6.5, b => b), () => Kept(6.5, b => b).Fluid("fix", "ethanol 80 %vol")),
        Warns("ph-drift", ["reads pH 9.4"], () => Kept(9.4, b => b with { Buffering = "borax" }), () => Kept(9.3, b => b with { Buffering = "borax" })),
        Warns("ph-drift", ["has stood open for 400 days"], () => Opened(400), () => Good.Shelf_holds(Bottle(Neutral) with { Buffering = "phosphate", OpenedOn = new LocalDate(2026, 1, 25) })),
        Warns("reused-fixative-doubtful", ["is cloudy or bloody after 3 uses"], () => Spent(new(7, false), 3, 5), () => Spent(new(7, true), 3, 5)),
        Warns("reused-fixative-doubtful", ["has been used 1 time of the 1"], () => Spent(new(7, true), 1, 1), () => Spent(new(7, true), 1, 2)),
        Warns("reused-fixative-doubtful", ["no pH is noted for 'bottle', used 3 times"], () => Spent(new(null, true), 3, 5), () => Spent(new(7, true), 3, 5)),
        Warns("reused-fixative-doubtful", ["has been used 5 times of the 5"], () => Spent(new(7, true), 5, 5), () => Spent(new(7, true), 4, 5)),
        Warns("reused-fixative-doubtful", ["below 6.5"], () => Spent(new(6, true), 1, 5), () => Spent(new(6, true), 1, 5).Fluid("fix", "ethanol 80 %vol")),
        Warns("reused-fixative-doubtful", ["below 6.5"], () => Spent(new(6, true), 1, 5), () => Good.Shelf_holds(Bottle(Neutral) with { Uses = 1, Spent = new SpentFluid(6, true), OnHand = Amount.Of(UnitsNet.Volume.Zero) })),
        Warns("spent-fluid-of-another-buffering", ["used 3 times, is buffered with borax"], () => Buffered("borax", b => b), () => Buffered("phosphate", b => b)),
        Warns("spent-fluid-of-another-buffering", ["is unbuffered"], () => Buffered("none", b => b), () => Buffered("none", b => b).Fluid("fix", "formalin 10 %")),
        Warns("spent-fluid-of-another-buffering", ["formalin is unbuffered"], () => Buffered("sea-water", b => b).Fluid("fix", "formalin 10 %"), () => Buffered("sea-water", b => b)),
        Warns("spent-fluid-of-another-buffering", ["buffered with borax"], () => Buffered("borax", b => b), () => Buffered("borax", b => b with { Kind = StockKind.Salt })),
        Warns("spent-fluid-of-another-buffering", ["buffered with borax"], () => Buffered("borax", b => b), () => Buffered("borax", b => b with { OnHand = Amount.Of(UnitsNet.Volume.Zero) })),
        Warns("spent-fluid-of-another-buffering", ["buffered with borax"], () => Buffered("borax", b => b), () => Buffered("borax", b => b).Fluid("fix", "ethanol 80 %vol")),
        Fails("tissue-for-dna-after-formalin", ["no step takes any"], () => ForDna(Good.Without("record")), () => ForDna(Good.Without("record")).Fluid("fix", "ethanol 95 %vol")),
        Warns("unknown-denaturant", ["'bottle' is Methylated alcohol"], () => Good.Shelf_holds(Bottle("Methylated alcohol")), () => Good.Shelf_holds(Bottle("absolute alcohol"))),
        Warns("unknown-denaturant", ["'bottle' is surgical spirit"], () => Good.Shelf_holds(Bottle("surgical spirit")), () => Good.Shelf_holds(Bottle("surgical spirit")).Fluid("half", "tap water").Fluid("strong", "tap water").Fluid("house", Neutral)),
        Warns("water-unfit-for-alcohol", ["ethanol 70 %vol is mixed with 300 mL of sea water"], () => Watered("ethanol 70 %vol", "sea water"), () => Watered("ethanol 70 %vol", "deionised water")),
        Warns("water-unfit-for-alcohol", ["with some of tap water"], () => Watered("ethanol 70 %vol", "tap water", null), () => Watered(Neutral, "tap water", null)),
        Warns("water-unfit-for-alcohol", ["told"], () => Good.Written(p => p with { Recipes = [] }).Told("water-unfit-for-alcohol"), () => Watered("ethanol 70 %vol", "tap water").Told("water-unfit-for-alcohol")),
        Warns("water-unfit-for-alcohol", ["told"], () => Good.Written(p => p with { Recipes = [] }).Told("water-unfit-for-alcohol"), () => Good.Written(p => p with { Recipes = [] }).Told("water-unfit-for-alcohol").Fluid("half", "tap water").Fluid("strong", "tap water").Fluid("house", Neutral)),
        Warns("alcohol-weakened-by-body", ["the baths before bring it to", "fill it with"], () => Hurried("ethanol 70 %vol", 1), () => Hurried("ethanol 70 %vol", 7 * 24)),
        Warns("alcohol-weakened-by-body", ["below 40"], () => Soaked("isopropanol 50 %vol", 60), () => Soaked("isopropanol 50 %vol", 2000)),
        Warns("alcohol-weakened-by-body", ["at 47.7 %vol, below 65"], () => Soaked("ethanol 70 %vol", 60), () => Soaked("ethanol 70 %vol", 60).Step("house", s => s with { Step = s.Step with { Changes = 3 } })),
        Warns("alcohol-weakened-by-body", ["below 65"], () => Soaked("ethanol 70 %vol", 60), () => Soaked("ethanol 70 %vol", 60).Fluid("wash", "isopropanol 20 %vol")),
    ];

    private static Duration Past(int days) => Duration.FromDays(days) + Duration.FromHours(1);

    private static ReviewCase Washed(Duration time) => Good.Lasts("wash", time);

    /// <summary>40 mm to the middle, which half of the formaldehyde leaves in more than a day and less than five.</summary>
    private static ReviewCase Thick(ReviewCase plan, double millimetres = 40) =>
        plan with { Fixation = null, Body = plan.Body with { HalfThickness = plan.Body.HalfThickness with { Nominal = UnitsNet.Length.FromMillimeters(millimetres) } } };

    /// <summary>Some share of the time in which half of the formaldehyde leaves 40 mm at best.</summary>
    private static ReviewCase HalfOut(double share) =>
        Thick(Washed(Duration.FromSeconds(share * Diffusion.Time(DiffusionShape.Cylinder, UnitsNet.Length.FromMillimeters(40), 0.5, Solute.Formaldehyde).Low)));

    /// <summary>Two baths of acid formalin, each so long.</summary>
    private static ReviewCase Twice(double days) => Fixed(Duration.FromDays(days)).Fluid("fix", "formalin 10 %")
        .Lasts("half", Duration.FromDays(days)).Fluid("half", "formalin 10 %").Step("half", s => s with { Kind = StageKind.Immerse });

    /// <summary>A day in 60 % ethanol, and nothing after it stronger than this.</summary>
    private static ReviewCase Weak(string strongest) =>
        Fixed(Duration.FromHours(24)).Fluid("fix", "ethanol 60 %vol").Fluid("half", "ethanol 50 %vol").Fluid("strong", strongest).Fluid("house", "ethanol 65 %vol");

    /// <summary>Immersed in it after another fixative.</summary>
    private static ReviewCase Later(string step, string fluid) => Good.Fluid(step, fluid).Step(step, s => s with { Kind = StageKind.Immerse });

    /// <summary>A top-up after sealing.</summary>
    private static ReviewCase Cared(ReviewCase plan, string fluid) =>
        plan with { Care = [.. plan.Care.Where(c => c.Id == "round").Select(c => c with { Fluid = Protocolist.Fluids.Fluid.Read(fluid).Value! })] };

    /// <summary>Standing water of so many times the water in the body.</summary>
    private static ReviewCase Left(double times) => Good.Step("wash", s => s with { Volume = Good.Water * times, Step = s.Step with { Changes = 0 } });

    private static ReviewCase Kept(double ph, Func<StockItem, StockItem> change) =>
        Good.Shelf_holds(change(Bottle(Neutral) with { Buffering = "phosphate", Spent = new SpentFluid(ph, true) }));

    private static ReviewCase Spent(SpentFluid seen, int uses, int allowed) => Good.Shelf_holds(Bottle(Neutral) with { Uses = uses, UsesAllowed = allowed, Spent = seen });

    private static ReviewCase Buffered(string with, Func<StockItem, StockItem> change) => Good.Shelf_holds(change(Bottle("formalin 10 %") with { Uses = 3, Buffering = with }));

    private static ReviewCase Watered(string fluid, string water, double? millilitres = 300) => Good.Written(p => p with
    {
        Recipes = [Booked.Recipe(fluid, 1, Booked.Part(water, millilitres))],
    });

    /// <summary>So many hours in each bath before a small jar.</summary>
    private static ReviewCase Hurried(string fluid, double hours) => Good.Lasts("half", Duration.FromHours(hours)).Lasts("strong", Duration.FromHours(hours)).Fluid("house", fluid)
        .Step("house", s => s with { Volume = UnitsNet.Volume.FromMilliliters(100) });

    /// <summary>No baths before the jar.</summary>
    private static ReviewCase Soaked(string fluid, double millilitres) => Good.Without("half").Without("strong").Fluid("house", fluid)
        .Step("house", s => s with { Volume = UnitsNet.Volume.FromMilliliters(millilitres) });

    private static ReviewCase Fixed(Duration time) => Good.Lasts("fix", time);

    private static ReviewCase Changed(ReviewCase plan, int times) => plan.Step("fix", s => s with { Step = s.Step with { Changes = times } });

    private static ReviewCase Kept(string fluid) => Good.Fluid("house", fluid);

    private static ReviewCase Injected(string fluid) => Good.Fluid("fix", fluid).Step("fix", s => s with { Kind = StageKind.Inject });

    private static ReviewCase Jelly(string fluid) => Good.Group("jellyfish").Without("half").Without("strong").Fluid("house", fluid);

    private static ReviewCase At(double celsius) => Good.On(b => b with { Temperatures = b.Temperatures with { Room = UnitsNet.Temperature.FromDegreesCelsius(celsius) } });

    private static ReviewCase Standing(int changes, string running) =>
        Good.Step("wash", s => s with { Work = new Protocolist.Plans.SoakWork(running == "yes"), Volume = UnitsNet.Volume.FromMilliliters(50), Step = s.Step with { Changes = changes } });

    private static ReviewCase Read(double ph) => Good.Shelf_holds(Bottle(Neutral) with { Uses = 1, Buffering = "phosphate", Spent = new SpentFluid(ph, true) });

    /// <summary>Borax-buffered formalin made up so many days before the plan begins, on 1 March 2027.</summary>
    private static ReviewCase Opened(int days) => Good.Shelf_holds(Bottle(Borax) with { Buffering = "borax", OpenedOn = new LocalDate(2027, 3, 1).PlusDays(-days) });

    private static ReviewCase Tissue => Good.Step("record", s => s with { Covers = Coverage.Tissue });

    private static ReviewCase ForDna(ReviewCase plan) => plan.Specimen(s => s with { IntendedUse = IntendedUse.TissueForDnaFirst });
}
