using System.Collections.Immutable;

namespace Protocolist.Vessels;

/// <summary>A vessel with all that follows from it alone, whatever is put into it: made once, kept with a bench.</summary>
/// <remarks>Immutable; safe to share between threads.</remarks>
internal sealed class PreparedVessel
{
    /// <summary>What each fluid has against its materials and its closure; for one bath, then for keeping.</summary>
    private readonly ImmutableArray<(FitRemark Treating, FitRemark Keeping)> _remarks;

    public PreparedVessel(Vessel vessel)
    {
        Vessel = vessel;
        Room = Room.Of(vessel.Shape);
        EmptyMass = vessel.EmptyMass?.Kilograms;
        _remarks = [.. Enum.GetValues<ContactFluid>().Select(fluid => (Of(vessel, fluid, VesselUse.Treating), Of(vessel, fluid, VesselUse.Keeping)))];
    }

    public Vessel Vessel { get; }

    public Room Room { get; }

    /// <summary>With its lid (kg); null where it is not known.</summary>
    public double? EmptyMass { get; }

    public static PreparedVessel[] Of(IEnumerable<Vessel> vessels) => [.. vessels.Select(v => new PreparedVessel(v))];

    public FitRemark Remarks(ContactFluid fluid, VesselUse use) => use == VesselUse.Keeping ? _remarks[(int)fluid].Keeping : _remarks[(int)fluid].Treating;

    private static FitRemark Of(Vessel vessel, ContactFluid fluid, VesselUse use)
    {
        var isKept = use == VesselUse.Keeping;
        var remarks = vessel.Count <= 0 ? FitRemark.NotAtHand : FitRemark.None;
        if (vessel.EmptyMass is null) remarks |= FitRemark.MassUnknown;
        remarks |= Touching(vessel.Wall, VesselPart.Wall, FitRemark.WallUnfit, FitRemark.WallNotForKeeping);
        if (vessel.Closure != Closure.Open) remarks |= Touching(vessel.Lid, VesselPart.Lid, FitRemark.LidUnfit, FitRemark.LidNotForKeeping);
        remarks |= Touching(vessel.Seal, VesselPart.Seal, FitRemark.SealUnfit, FitRemark.SealNotForKeeping);
        return isKept ? remarks | Closing(vessel.Closure, fluid) : remarks;

        FitRemark Touching(VesselMaterial material, VesselPart part, FitRemark unfit, FitRemark notForKeeping) =>
            MaterialFitness.Judge(material, part, fluid)?.Grade switch
            {
                MaterialGrade.Unfit => unfit,
                MaterialGrade.ForAWhile when isKept => notForKeeping,
                _ => FitRemark.None,
            };
    }

    private static FitRemark Closing(Closure closure, ContactFluid fluid) => closure switch
    {
        Closure.Open or Closure.LooseLid => FitRemark.NoSealingLid,
        Closure.WireBail when fluid is ContactFluid.StrongAlcohol or ContactFluid.WeakAlcohol => FitRemark.WireBail,
        _ => FitRemark.None,
    };
}
