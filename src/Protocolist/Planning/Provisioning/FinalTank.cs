using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Vessels;
using Protocolist.Vessels.Glass;
using UnitsNet;

namespace Protocolist.Planning.Provisioning;

/// <summary>The glass of a final vessel, designed once for the checks to read.</summary>
internal static class FinalTank
{
    /// <summary>Below this depth common jars and tanks of thin glass hold: the project's choice.</summary>
    private static readonly Length Shallow = Length.FromMillimeters(300);

    /// <summary>The tank filled as planned, its top edge free, which is the harder case; framed where a free edge is refused.</summary>
    public static Checked<TankDesign>? Of(FittedVessel? fitted, Fluid? fluid)
    {
        if (fitted is not { Vessel: { Wall: VesselMaterial.Glass, Shape: VesselShape.Box box } } || fluid is null || fitted.LevelAfter < Shallow) return null;
        var rimless = Design(TankTop.Free);
        return rimless.Value?.LongPane is null ? Design(TankTop.Framed) : rimless;

        Checked<TankDesign> Design(TankTop top) => TankDesigner.Panes(TankSpec.For(box.Length, box.Width, fitted.LevelAfter, fluid, top));
    }
}
