using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Quantities;
using UnitsNet;

namespace Protocolist.Vessels;

/// <summary>How a room is filled around a body, in numbers: metres, cubic metres, at the filling temperature.</summary>
/// <param name="Lies">How the body lies in it; nothing where it does not go in.</param>
/// <param name="Fluid">Fluid to pour in.</param>
/// <param name="CoveredTo">The least level that covers the body with the margin wanted.</param>
/// <param name="Most">The most fluid that the room takes beside the body.</param>
/// <param name="HeadspaceShare">Share of the inside that stays empty.</param>
/// <param name="Against">What keeps it from being filled as asked.</param>
internal readonly record struct Filling(Arrangement Lies, double Fluid, double CoveredTo, double Most, double HeadspaceShare, FitRemark Against)
{
    private static readonly Phrase Narrow = new(
        "vessel-too-narrow", "{specimen} ({size}) does not lie free in {room} with {side:0.# mm} to the walls; nothing is forced into a vessel");
    private static readonly Phrase NarrowRemedy = new("vessel-too-narrow.remedy", "take a wider vessel, or pose the body otherwise while it is soft");
    private static readonly Phrase Shallow = new(
        "vessel-too-shallow",
        "{lies}, the specimen needs fluid to {covered:0 mm} on the coldest day; with {headspace:0.# %} of headspace the vessel can be filled to {level:0 mm}");
    private static readonly Phrase ShallowRemedy = new("vessel-too-shallow.remedy", "take a deeper vessel");
    private static readonly Phrase Small = new(
        "vessel-too-small-for-ratio", "it takes {most} of fluid beside the specimen's {body}, {ratio} : 1; {least:0.#} : 1 is wanted");
    private static readonly Phrase SmallRemedy = new(
        "vessel-too-small-for-ratio.remedy", "take a larger vessel, or change the fluid more often where the protocol allows it");

    private static readonly Phrase BoxSize = new("size.boxed", "{length:0} x {width:0} x {height:0} mm as posed, {ways: or }");
    private static readonly Phrase CoilSize = new(
        "size.coiled", "coiled in {layers} {layers|layer|layers}, {across:0 mm} across and {height:0 mm} high");
    private static readonly Phrase LotSize = new("size.lot", "the largest {length:0} x {width:0} x {height:0} mm");
    private static readonly Phrase RoundRoom = new("size.round", "{diameter:0 mm} across");
    private static readonly Phrase SquareRoom = new("size.square", "{length:0} x {width:0} mm");

    /// <summary>Fills a room.</summary>
    public static Filling Of(in Room room, FitDemand demand)
    {
        if (Arrangement.Lowest(demand.Body, room, demand.Side) is not { } lies) return new(default, 0, 0, 0, 0, FitRemark.TooNarrow);
        var body = demand.Body.Volume;
        var headspace = demand.HeadspaceShare(room);
        var covered = demand.Below + lies.Height + demand.Above;
        var most = ((1 - headspace) * room.Volume) - body;

        // The level falls on the coldest day; the body must still be covered then.
        var toCover = Math.Max(0, (covered * room.Area) - body) * demand.Shrinking;
        var forRatio = demand.Request.LeastRatio * body;
        var against = FitRemark.None;
        if (toCover > most * (1 + 1e-9)) against |= FitRemark.TooShallow;
        if (forRatio > most * (1 + 1e-9)) against |= FitRemark.TooSmallForRatio;
        var fluid = demand.Request.Use == VesselUse.Keeping ? most : Math.Max(toCover, forRatio);
        return new(lies, fluid, covered, most, headspace, against);
    }

    public static Finding TooNarrow(Vessel vessel, FitDemand demand)
    {
        var facts = Narrow.With(
            ("specimen", demand.Request.Specimen.Name), ("size", SizeOf(demand.Request.Specimen)), ("room", RoomOf(vessel.Shape)),
            ("side", Length.FromMeters(demand.Side)));
        return Finding.Error("vessel-too-narrow", facts, NarrowRemedy);
    }

    public Finding TooShallow(in Room room, FitDemand demand)
    {
        var facts = Shallow.With(
            ("lies", Lies.Words), ("covered", Length.FromMeters(CoveredTo)), Argument.Of("headspace", HeadspaceShare, Dimension.None),
            ("level", Length.FromMeters((Most + demand.Body.Volume) / room.Area)));
        return Finding.Error("vessel-too-shallow", facts, ShallowRemedy);
    }

    public Finding TooSmallForRatio(FitDemand demand)
    {
        var (most, body) = (Math.Max(0, Most), demand.Body.Volume);
        var facts = Small.With(
            ("most", Volume.FromCubicMeters(most)), ("body", Volume.FromCubicMeters(body)), Argument.Of("ratio", most / body, Dimension.None),
            ("least", demand.Request.LeastRatio));
        return Finding.Error("vessel-too-small-for-ratio", facts, SmallRemedy);
    }

    private static Message SizeOf(PosedSpecimen specimen) => specimen switch
    {
        PosedSpecimen.Boxed b => BoxSize.With([.. Sides(b.Length, b.Width, b.Height), Argument.Messages("ways", Ways(b.Allowed))]),
        PosedSpecimen.Coiled c => CoilSize.With(("layers", c.Layers), ("across", c.Across), ("height", c.Height)),
        PosedSpecimen.Lot l => LotSize.With(Sides(l.Length, l.Width, l.Height)),
        _ => default,
    };

    private static Message RoomOf(VesselShape shape) => shape switch
    {
        VesselShape.Cylinder jar => RoundRoom.With(("diameter", jar.Diameter)),
        VesselShape.Box box => SquareRoom.With(("length", box.Length.Millimeters), ("width", box.Width.Millimeters)),
        _ => default,
    };

    private static Argument[] Sides(Length length, Length width, Length height) =>
        [("length", length.Millimeters), ("width", width.Millimeters), ("height", height.Millimeters)];

    private static ImmutableArray<Message> Ways(Orientations allowed)
    {
        (Orientations Way, Phrase Words)[] all =
            [(Orientations.Lying, Arrangement.Lying), (Orientations.Upright, Arrangement.Upright), (Orientations.OnEdge, Arrangement.OnEdge)];
        return [.. all.Where(a => allowed.HasFlag(a.Way)).Select(a => (Message)a.Words)];
    }
}
