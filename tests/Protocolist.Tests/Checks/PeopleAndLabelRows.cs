using Protocolist.Protocols;
using static Protocolist.Tests.Checks.Cases;
using Volume = UnitsNet.Volume;

namespace Protocolist.Tests.Checks;

internal static class PeopleAndLabelRows
{
    public static Row[] All =>
    [
        new("formaldehyde-in-the-air", () => Good.On(b => b with { Air = new(Volume.FromCubicMeters(30), 0.5, false) }), () => Good.On(b => b with { Air = new(Volume.FromCubicMeters(2000), 20, true) })),
        new("ventilation-unknown", () => Unaired(1), () => Unaired(0.9)),
        new("formalin-without-hood", () => Injected(false), () => Injected(true)),
        new("bleach-or-acid-near-formalin", () => Good.Shelf_holds(Bottle("household bleach 5 %")), () => Good.Shelf_holds(Bottle("distilled water"))),
        new("flammable-quantity", () => Made(38), () => Made(37)),
        new("stored-flammables", () => Stored(38, 0), () => Stored(37.8, 0)),
        new("stored-formaldehyde", () => Stored(0, 20.1), () => Stored(0, 20)),
        new("above-flash-point", () => Opened(5), () => Opened(4.9)),
        new("lone-work", () => Alone(5), () => Alone(4.9)),
        new("waste-without-destination", () => Thrown(""), () => Thrown("drum")),
        new("formalin-to-the-drain", () => Discarded("drained where local rules allow"), () => Good),
        new("label-incomplete", () => Good.Specimen(s => s with { CollectedBy = null }), () => Good),
        new("formalin-flag-missing", () => Good.Fluid("house", "neutral buffered formalin 10 %"), () => Good.Fluid("house", "neutral buffered formalin 10 %").Written(p => p with { Label = [.. p.Label, Protocolist.Checks.Labels.FormalinFlag.Line] })),
        new("label-date-not-iso", () => Good.Specimen(s => s with { Where = "found 3/4/27" }), () => Good.Specimen(s => s with { Where = "found 2027-04-03" })),
        new("label-inside-and-outside", () => Good.Without("label"), () => Good),
        new("label-media", () => Writes("felt pen"), () => Writes("soft pencil")),
    ];

    private static Protocolist.Checks.ReviewCase Unaired(double litres) =>
        Good.On(b => b with { Air = null }).Step("fix", s => s with { Volume = Volume.FromLiters(litres) });

    private static Protocolist.Checks.ReviewCase Injected(bool hood) =>
        Good.On(b => b with { Air = b.Air! with { HasHood = hood } }).Step("fix", s => s with { Kind = StageKind.Inject });

    private static Protocolist.Checks.ReviewCase Made(double litres) =>
        Good.Written(p => p with { Recipes = [Booked.Recipe("ethanol 70 %vol", litres)] });

    private static Protocolist.Checks.ReviewCase Stored(double flammable, double stock) =>
        Good with { Stored = new(Volume.FromLiters(flammable), Volume.FromLiters(stock), UnitsNet.Mass.Zero) };

    private static Protocolist.Checks.ReviewCase Opened(double litres) =>
        Good.Step("house", s => s with { Volume = Volume.FromLiters(litres) });

    private static Protocolist.Checks.ReviewCase Alone(double litres) =>
        Good.On(b => b with { People = 1 }).Step("fix", s => s with { Volume = Volume.FromLiters(litres) });

    private static Protocolist.Checks.ReviewCase Thrown(string destination) =>
        Good.Written(p => p with { Waste = [.. p.Waste, Booked.Ethanol("strong", destination)] });

    private static Protocolist.Checks.ReviewCase Discarded(string to) =>
        Good.Step("spent", s => s with { Work = new Protocolist.Plans.DiscardWork("fix", SpentTo.Find(to)) });

    private static Protocolist.Checks.ReviewCase Writes(string medium) => With("id: label, ", $"id: label, written-with: {medium}, ");
}
