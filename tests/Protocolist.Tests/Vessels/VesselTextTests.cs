using Protocolist.Fluids;
using Protocolist.Vessels;
using Protocolist.Vessels.Glass;
using UnitsNet;
using static System.FormattableString;

namespace Protocolist.Tests.Vessels;

/// <summary>Everything that is said of vessels, read once.</summary>
public class VesselTextTests
{
    private static readonly PosedSpecimen[] Bodies =
    [
        new PosedSpecimen.Boxed("frog", Ml(45), Mm(80), Mm(35), Mm(30)),
        new PosedSpecimen.Boxed("hare", Ml(3400), Mm(480), Mm(160), Mm(150)) { Mass = Mass.FromKilograms(3.5) },
        new PosedSpecimen.Coiled("adder", Ml(300), Mm(120), Mm(56), 2),
        PosedSpecimen.Flat("soft ray", Ml(900), Mm(380), Mm(300), Mm(40), hardened: false),
        PosedSpecimen.Flat("hard ray", Ml(900), Mm(380), Mm(300), Mm(40), hardened: true),
        new PosedSpecimen.Lot("shrimps", Ml(180), 120, Mm(45), Mm(10), Mm(9)),
        new PosedSpecimen.Boxed("tuna", Ml(24000), Mm(1100), Mm(200), Mm(240)),
        new PosedSpecimen.Boxed("nothing", Ml(0), Mm(80), Mm(35), Mm(30)),
        new PosedSpecimen.Lot("none", Ml(20), 0, Mm(80), Mm(35), Mm(30)),
        new PosedSpecimen.Coiled("more than its outline", Ml(3000), Mm(120), Mm(56), 2),
    ];

    private static readonly Vessel[] Vessels =
    [
        new("tub-90", "90 L tub", new VesselShape.Box(Mm(1260), Mm(260), Mm(280)), VesselMaterial.Polypropylene, 1)
        {
            Lid = VesselMaterial.Polypropylene, EmptyMass = Mass.FromKilograms(6),
        },
        new("tank", "display tank", new VesselShape.Box(Mm(1240), Mm(240), Mm(340)), VesselMaterial.Glass, 1)
        {
            Lid = VesselMaterial.Glass, Seal = VesselMaterial.NeutralSilicone, Closure = Closure.SealedPlate, EmptyMass = Mass.FromKilograms(41),
        },
        Jar("jar-4", 140, 260), Jar("jar-1", 90, 160), Jar("jar-250", 60, 90),
        Jar("bail", 140, 260) with { Closure = Closure.WireBail, Seal = VesselMaterial.NaturalRubber },
        Jar("bucket", 300, 320) with { Wall = VesselMaterial.Polyethylene, Lid = VesselMaterial.Polyethylene, EmptyMass = null, Closure = Closure.SnapLid },
        Jar("acrylic", 200, 320) with { Wall = VesselMaterial.Acrylic, Lid = VesselMaterial.Metal, Count = 0 },
        Jar("open", 260, 260) with { Closure = Closure.Open, Lid = VesselMaterial.Metal, Seal = VesselMaterial.Unknown },
        Jar("stopper", 90, 260) with { Closure = Closure.GroundStopper, Lid = VesselMaterial.Glass, Seal = VesselMaterial.PetroleumJelly },
    ];

    private static readonly FitRequest Tight = FitRequest.For(Bodies[0], Fluid.TapWater, VesselUse.Treating) with
    {
        HeadspaceShare = 0.001,
        Hottest = Temperature.FromDegreesCelsius(38),
        Carriers = 1,
        CarriedFull = true,
        ShelfBears = Mass.FromKilograms(12),
    };

    [Fact]
    public void Fits_read_as_they_were_kept() => KeptText.Holds("Vessels/kept/fits.txt", KeptText.EachOnce(
        from body in Bodies
        from fluid in (string[])["neutral buffered formalin 10 %", "ethanol 70 %vol", "sea water"]
        from use in (VesselUse[])[VesselUse.Treating, VesselUse.Keeping]
        let request = FitRequest.For(body, Fluid.Read(fluid).Value!, use)
        from tight in (bool[])[false, true]
        let asked = tight
            ? Tight with { Specimen = body, Fluid = request.Fluid, Density = request.Density, Use = use }
            : request
        select ($"{body.Name} in {fluid}, {use}{(tight ? ", carried, hot, to the brim" : "")}", Told(asked))));

    [Fact]
    public void Requests_that_make_no_sense_read_as_they_were_kept()
    {
        var request = FitRequest.For(Bodies[0], Fluid.TapWater, VesselUse.Treating);
        FitRequest[] all =
        [
            request with { Coldest = Temperature.FromDegreesCelsius(25) }, request with { Hottest = Temperature.FromDegreesCelsius(12.25) },
            request with { LeastRatio = -1 }, request with { LeastRatio = 2000, HeadspaceShare = 1 },
            request with { LeastRatio = 900 }, request with { Clearances = new(Mm(10), Mm(4000), Mm(5)) },
        ];
        KeptText.Holds("Vessels/kept/requests.txt", KeptText.EachOnce(all.Select((r, i) => (Invariant($"request {i + 1}"), Told(r)))));
    }

    [Fact]
    public void Tanks_read_as_they_were_kept()
    {
        (double Length, double Width, double Depth, TankTop Top, string Fluid)[] all =
        [
            (1000, 300, 350, TankTop.Free, "ethanol 70 %vol"), (1000, 300, 350, TankTop.Framed, "ethanol 70 %vol"),
            (600, 400, 600, TankTop.Free, "formalin 10 %"), (1200, 500, 900, TankTop.Framed, "formalin 10 %"),
            (2000, 1200, 1500, TankTop.Framed, "water"), (2000, 1200, 1500, TankTop.Free, "water"),
            (400, 300, 300, TankTop.Free, "water"), (5, 300, 0, TankTop.Free, "water"), (9000, 300, 3000, TankTop.Free, "water"),
            (700, 250, 340, TankTop.Free, "isopropanol 50 %vol"), (300, 300, 305, TankTop.Free, "water"), (800, 300, 400, TankTop.Free, "water"),
        ];
        KeptText.Holds("Vessels/kept/tanks.txt", string.Join("\n\n", all.Select(t =>
        {
            var tank = TankDesigner.Design(TankSpec.For(Mm(t.Length), Mm(t.Width), Mm(t.Depth), Fluid.Read(t.Fluid).Value!, t.Top));
            PaneDesign?[] panes = [tank.Value?.LongPane, tank.Value?.EndPane, tank.Value?.BottomPane];
            return string.Join('\n',
            [
                Invariant($"{t.Length:0} x {t.Width:0} x {t.Depth:0} mm of {t.Fluid}, {t.Top}"),
                .. tank.Findings.Select(f => $"  {f}"),
                .. panes.OfType<PaneDesign>().Select(Pane),
            ]);
        })));
    }

    [Fact]
    public void Evaporation_reads_as_it_was_kept() => KeptText.Holds("Vessels/kept/evaporation.txt", string.Join('\n',
        from closure in Enum.GetValues<Closure>()
        from seal in (VesselMaterial[])[VesselMaterial.Unknown, VesselMaterial.Polyethylene]
        let rate = Evaporation.Of(closure, seal)
        select Invariant($"{closure}, {seal}: {rate.PerYear?.Milliliters} {rate.Observation} ({rate.Source})")));

    private static string Pane(PaneDesign pane) =>
        Invariant($"  {pane.Name}: {pane.Required.Millimeters:0.00} mm, {pane.Stress?.Megapascals:0.000} MPa, {pane.Deflection?.Millimeters:0.000} mm");

    private static IEnumerable<string> Told(FitRequest request)
    {
        var result = VesselFit.Choose(request, Vessels);
        foreach (var finding in result.Findings) yield return $"  {finding}";
        if (result.Value is not { } fit) yield break;
        foreach (var fitted in ((FittedVessel?[])[fit.Chosen, .. fit.AlsoFit]).OfType<FittedVessel>())
        {
            yield return Invariant($"  {fitted.Vessel.Id}, {fitted.Arrangement}: {fitted.FluidVolume.Milliliters:0.###} mL");
            yield return Invariant($"    {fitted.LevelAfter.Millimeters:0.##} mm");
            yield return Invariant($"    {fitted.TotalMass.Kilograms:0.###} kg, {fitted.SealedPressure?.Kilopascals:0.###} kPa");
            foreach (var finding in fitted.Findings) yield return $"    {finding}";
        }

        foreach (var rejected in fit.Rejected)
        {
            foreach (var reason in rejected.Reasons) yield return $"  not {rejected.Vessel.Id}: {reason}";
        }

        if (fit.Chosen is null) yield return $"  {fit.Needed!.Advice}";
    }

    private static Vessel Jar(string id, double diameter, double height) =>
        new(id, id, new VesselShape.Cylinder(Mm(diameter), Mm(height)), VesselMaterial.Glass, 3)
        {
            Closure = Closure.ScrewLid,
            Lid = VesselMaterial.Polypropylene,
            Seal = VesselMaterial.Polyethylene,
            EmptyMass = Mass.FromKilograms(0.4),
        };

    private static Length Mm(double value) => Length.FromMillimeters(value);

    private static Volume Ml(double value) => Volume.FromMilliliters(value);
}
