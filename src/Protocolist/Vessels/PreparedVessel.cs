using System.Collections.Immutable;
using Protocolist.Fluids;
using Protocolist.Fluids.Contact;

namespace Protocolist.Vessels;

/// <summary>A vessel with all that follows from it alone, whatever is put into it: made once, kept with a bench.</summary>
/// <remarks>Immutable; safe to share between threads.</remarks>
internal sealed class PreparedVessel
{
    /// <summary>What each bundled substance has against its materials and its closure; for one bath, then for keeping.</summary>
    private readonly ImmutableArray<(Substance Substance, FitRemark Treating, FitRemark Keeping)> _remarks;

    public PreparedVessel(Vessel vessel, long price = 0)
    {
        (Vessel, Price) = (vessel, price);
        Room = Room.Of(vessel.Shape);
        EmptyMass = vessel.EmptyMass?.Kilograms;
        _remarks = [.. SubstanceCatalogue.Bundled.All.Select(substance => Of(vessel, substance))];
    }

    public Vessel Vessel { get; }

    /// <summary>What has to be paid to have it, in smallest coins; nothing for one that is there.</summary>
    public long Price { get; }

    public Room Room { get; }

    /// <summary>With its lid (kg); null where it is not known.</summary>
    public double? EmptyMass { get; }

    public static PreparedVessel[] Of(IEnumerable<Vessel> vessels) => [.. vessels.Select(v => new PreparedVessel(v))];

    public FitRemark Remarks(Substance substance, VesselUse use)
    {
        foreach (var known in _remarks)
        {
            if (ReferenceEquals(known.Substance, substance)) return For(use, known);
        }

        return For(use, Of(Vessel, substance));
    }

    private static FitRemark For(VesselUse use, (Substance, FitRemark Treating, FitRemark Keeping) remarks) =>
        use == VesselUse.Keeping ? remarks.Keeping : remarks.Treating;

    private static (Substance Substance, FitRemark Treating, FitRemark Keeping) Of(Vessel vessel, Substance substance)
    {
        var remarks = vessel.Count <= 0 ? FitRemark.NotAtHand : FitRemark.None;
        if (vessel.EmptyMass is null) remarks |= FitRemark.MassUnknown;
        var keeping = Closing(vessel.Closure, substance);
        Touch(vessel.Wall, VesselPart.Wall, FitRemark.WallUnfit, FitRemark.WallNotForKeeping);
        if (vessel.Closure != Closure.Open) Touch(vessel.Lid, VesselPart.Lid, FitRemark.LidUnfit, FitRemark.LidNotForKeeping);
        Touch(vessel.Seal, VesselPart.Seal, FitRemark.SealUnfit, FitRemark.SealNotForKeeping);
        return (substance, remarks, remarks | keeping);

        void Touch(VesselMaterial material, VesselPart part, FitRemark unfit, FitRemark notForKeeping)
        {
            var grade = MaterialFitness.Judge(material, part, substance)?.Grade;
            if (grade == MaterialGrade.Unfit) remarks |= unfit;
            if (grade == MaterialGrade.ForAWhile) keeping |= notForKeeping;
        }
    }

    private static FitRemark Closing(Closure closure, Substance substance) => closure switch
    {
        Closure.Open or Closure.LooseLid => FitRemark.NoSealingLid,
        Closure.WireBail when substance.IsVolatile => FitRemark.WireBail,
        _ => FitRemark.None,
    };
}
