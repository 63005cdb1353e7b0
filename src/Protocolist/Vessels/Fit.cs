using UnitsNet;

namespace Protocolist.Vessels;

/// <summary>One vessel held against a demand, in numbers: how it would be filled, and what is to be said of it.</summary>
/// <param name="Vessel">The vessel.</param>
/// <param name="Filling">How it would be filled.</param>
/// <param name="TotalKilograms">Vessel, fluid and specimen.</param>
/// <param name="SealedPressure">Gauge pressure (kPa) on the hottest day if it is closed tight; null where it breathes or bursts.</param>
/// <param name="Remarks">What is to be said.</param>
internal readonly record struct Fit(PreparedVessel Vessel, Filling Filling, double TotalKilograms, double? SealedPressure, FitRemark Remarks)
{
    /// <summary>Gauge pressure in kPa above which a sealed jar is warned of, just above what 10 % of headspace over alcohol gives.</summary>
    /// <remarks>The project's choice.</remarks>
    private const double WarnPressure = 50;

    /// <summary>Up to so much (m3) nobody asks how many times the body's volume it is: a glass is nobody's loss. The project's choice.</summary>
    private const double MuchFluid = 100e-6;

    public bool Holds => Remarks.Rejecting() == FitRemark.None;

    public Mass TotalMass => Mass.FromKilograms(TotalKilograms);

    /// <summary>Fills one vessel and notes all that is to be said.</summary>
    public static Fit Of(PreparedVessel vessel, FitDemand demand)
    {
        var request = demand.Request;
        var filling = Filling.Of(vessel.Room, demand);
        var remarks = vessel.Remarks(request.Fluid.Substance, request.Use) | filling.Against;
        if (filling.Against != FitRemark.None) return new(vessel, filling, 0, null, remarks);

        var total = (vessel.EmptyMass ?? 0) + (filling.Fluid * demand.Density) + demand.BodyMass;
        if (total > Lifting.LimitKilograms(request.Carriers)) remarks |= request.CarriedFull ? FitRemark.TooHeavyToCarry : FitRemark.TooHeavyToLift;
        if (request.ShelfBears is { } bears && total > bears.Kilograms) remarks |= FitRemark.TooHeavyForShelf;
        var pressure = vessel.Vessel.IsGasTight ? demand.SealedPressure(HeadspaceOf(filling, vessel.Room, demand) / vessel.Room.Volume) : null;
        if (vessel.Vessel.IsGasTight && pressure is not <= WarnPressure) remarks |= FitRemark.BuildsPressure;
        if (filling.Fluid > MuchFluid && filling.Fluid > demand.MostRatio * demand.Body.Volume) remarks |= FitRemark.MuchFluid;
        if (demand.AskedHeadspace(vessel.Room) is { } asked && filling.HeadspaceShare > asked) remarks |= FitRemark.HeadspaceRaised;
        return new(vessel, filling, total, pressure, remarks);
    }

    /// <summary>The vessel as a plan has it: its levels and all that is said of it.</summary>
    public FittedVessel Fitted(FitDemand demand)
    {
        var room = Vessel.Room;
        var (fluid, body) = (Filling.Fluid, demand.Body.Volume);
        return new(
            Vessel.Vessel,
            Filling.Lies.Words,
            Volume.FromCubicMeters(fluid),
            Length.FromMeters(fluid / room.Area),
            Level(1),
            Level(demand.Density / demand.DensityColdest),
            Level(demand.Density / demand.DensityHottest),
            Length.FromMeters(Filling.CoveredTo),
            Volume.FromCubicMeters(HeadspaceOf(Filling, room, demand)),
            fluid / body,
            TotalMass,
            SealedPressure is { } kilopascals ? Pressure.FromKilopascals(kilopascals) : null,
            VesselRemarks.Of(Remarks, this, demand));

        Length Level(double growth) => Length.FromMeters(((fluid * growth) + body) / room.Area);
    }

    private static double HeadspaceOf(in Filling filling, in Room room, FitDemand demand) => room.Volume - demand.Body.Volume - filling.Fluid;
}
