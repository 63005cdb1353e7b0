namespace Protocolist.Vessels;

/// <summary>What a request asks of any vessel, in SI units and degrees Celsius: worked out once, held against many vessels. Immutable.</summary>
internal sealed class FitDemand
{
    private readonly double _rule;
    private readonly double _expansion;
    private readonly double _belowBrim;

    public FitDemand(FitRequest request)
    {
        Request = request;
        Body = Outline.Of(request.Specimen);
        BodyMass = request.Specimen.MassOrEstimate.Kilograms;
        var clear = request.Clearances ?? Clearances.For(UnitsNet.Length.FromMeters(Body.LongestSide));
        (Side, Above, Below) = (clear.Side.Meters, clear.Above.Meters, clear.Below.Meters);
        (FilledAt, Coldest, Hottest) = (request.FilledAt.DegreesCelsius, request.Coldest.DegreesCelsius, request.Hottest.DegreesCelsius);
        Density = request.Density(FilledAt);
        DensityColdest = Coldest.Equals(FilledAt) ? Density : request.Density(Coldest);
        DensityHottest = Hottest.Equals(FilledAt) ? Density : request.Density(Hottest);
        Growth = (Density / DensityHottest) - 1;
        _rule = Headspace.Rule(request.Fluid);
        _expansion = 1 - Headspace.FullestFill(Growth, wall: 1);
        _belowBrim = request.BelowBrim?.Meters ?? 0;
    }

    public FitRequest Request { get; }

    public Outline Body { get; }

    /// <summary>Of all bodies (kg).</summary>
    public double BodyMass { get; }

    /// <summary>Volumes of fluid to one of body that are plenty: no fewer than are asked for.</summary>
    public double MostRatio => Math.Max(Request.MostRatio, Request.LeastRatio);

    public double Side { get; }

    public double Above { get; }

    public double Below { get; }

    public double FilledAt { get; }

    public double Coldest { get; }

    public double Hottest { get; }

    /// <summary>At filling (kg/m³).</summary>
    public double Density { get; }

    public double DensityColdest { get; }

    public double DensityHottest { get; }

    /// <summary>From filling to the hottest day, over the volume at filling.</summary>
    public double Growth { get; }

    /// <summary>How much more fluid must go in at filling than stands there on the coldest day.</summary>
    public double Shrinking => Math.Max(1, DensityColdest / Density);

    /// <summary>The share of the inside that is asked to stay empty; null where nothing is asked.</summary>
    public double? AskedHeadspace(in Room room) => _belowBrim > 0 && room.Height > 0
        ? Math.Clamp(Math.Max(_rule, _belowBrim / room.Height), 0, 0.9)
        : Request.HeadspaceShare;

    /// <summary>The share that stays empty at filling: at least what the hottest day needs, whatever was asked for.</summary>
    public double HeadspaceShare(in Room room) => Math.Max(AskedHeadspace(room) ?? _rule, _expansion);

    /// <summary>Gauge pressure in kPa on the hottest day in a vessel closed at filling; null where it bursts.</summary>
    public double? SealedPressure(double headspaceShare)
    {
        if (Hottest.Equals(FilledAt)) return headspaceShare > 0 ? 0 : null;
        var (cold, hot) = (Request.Fluid.VapourPressureAt(FilledAt), Request.Fluid.VapourPressureAt(Hottest));
        return Headspace.GaugeKilopascals(headspaceShare, Growth, cold, hot, FilledAt, Hottest);
    }
}
