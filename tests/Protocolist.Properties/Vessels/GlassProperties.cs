using FsCheck;
using FsCheck.Fluent;
using Protocolist.Vessels.Glass;
using UnitsNet;

namespace Protocolist.Properties.Vessels;

/// <summary>What must hold for every tank.</summary>
public class GlassProperties
{
    /// <summary>Tanks of 100 to 2000 mm, 50 to 1000 mm deep, framed or rimless.</summary>
    public static Arbitrary<AnyTank> Tanks() => (
        from length in Gen.Choose(100, 2000)
        from width in Gen.Choose(100, 2000)
        from depth in Gen.Choose(50, 1000)
        from density in Gen.Choose(780, 1050)
        from top in Gen.Elements(TankTop.Free, TankTop.Framed)
        select new AnyTank(length, width, depth, density, top == TankTop.Free)).ToArbitrary();

    /// <summary>A tank as its numbers, which a failed case prints.</summary>
    public sealed record AnyTank(double LengthMm, double WidthMm, double DepthMm, double Density, bool IsFree)
    {
        internal TankSpec Spec => new(
            Length.FromMillimeters(LengthMm), Length.FromMillimeters(WidthMm), Length.FromMillimeters(DepthMm),
            UnitsNet.Density.FromKilogramsPerCubicMeter(Density), IsFree ? TankTop.Free : TankTop.Framed);
    }

    [Property(Arbitrary = [typeof(GlassProperties)], MaxTest = 60)]
    public bool Deeper_is_never_thinner(AnyTank any)
    {
        var tank = any.Spec;
        var deeper = tank with { Depth = tank.Depth * 1.1 };
        return Required(tank) is not { } shallow || Required(deeper) is not { } deep || deep >= shallow * (1 - 1e-6);
    }

    [Property(Arbitrary = [typeof(GlassProperties)], MaxTest = 60)]
    public bool Longer_is_never_thinner_and_never_pushes_less(AnyTank any)
    {
        var tank = any.Spec;
        var longer = tank with { Length = tank.Length * 1.1, Width = tank.Width * 1.1 };
        var (one, other) = (TankDesigner.Design(tank).Value!, TankDesigner.Design(longer).Value!);
        return other.Force >= one.Force
            && (one.LongPane is null || other.LongPane is null || other.LongPane.Required >= one.LongPane.Required * (1 - 1e-6));
    }

    [Property(Arbitrary = [typeof(GlassProperties)], MaxTest = 60)]
    public bool Thicker_glass_is_never_stressed_more(AnyTank any)
    {
        var tank = any.Spec;
        var thicker = tank with { Glass = tank.Glass with { StockThicknesses = [.. tank.Glass.StockThicknesses.Select(t => t * 1.3)] } };
        return TankDesigner.Design(tank).Value!.LongPane is not { Stock: { } thin, Stress: { } more }
            || TankDesigner.Design(thicker).Value!.LongPane is not { Stock: { } thick, Stress: { } less }
            || thick < thin || less <= more * (1 + 1e-9);
    }

    [Property(Arbitrary = [typeof(GlassProperties)], MaxTest = 60)]
    public bool A_tank_without_errors_keeps_its_safety_factor_in_every_pane(AnyTank any)
    {
        var tank = any.Spec;
        var result = TankDesigner.Design(tank);
        return !result.IsSound || new[] { result.Value.LongPane, result.Value.EndPane, result.Value.BottomPane }
            .All(pane => (pane is { SafetyFactor: >= 3.8 - 1e-9 } && pane.Stock >= pane.Required)
                || (pane is { Name.English: "bottom pane", Stock: null } && result.Findings.Any(f => f.Id == "bottom-must-be-bedded")));
    }

    [Property(Arbitrary = [typeof(GlassProperties)], MaxTest = 60)]
    public bool A_free_top_never_needs_less_glass_than_a_framed_one(AnyTank any) =>
        Required(any.Spec with { Top = TankTop.Free }) is not { } free || free >= Required(any.Spec with { Top = TankTop.Framed })!.Value * (1 - 1e-6);

    private static Length? Required(TankSpec tank) => TankDesigner.Design(tank).Value!.LongPane?.Required;
}
