namespace Protocolist.Specimens;

/// <summary>A number as biology gives it: what it is usually, how far it goes either way, and who says so.</summary>
/// <remarks>The unit is in the name of the property that holds the band.</remarks>
/// <param name="Low">The lowest value to reckon with.</param>
/// <param name="Nominal">The value to plan with.</param>
/// <param name="High">The highest value to reckon with.</param>
/// <param name="Source">A published source by name, <c>common practice</c>, or <c>from memory</c>.</param>
public sealed record SourcedBand(double Low, double Nominal, double High, string Source)
{
    /// <summary>Whether its numbers are in order, and none beyond what such numbers can be.</summary>
    internal bool IsWithin(double least, double most) => Low >= least && Nominal >= Low && High >= Nominal && High <= most;

    /// <summary>Whether <paramref name="value"/> lies within the band, its ends included.</summary>
    /// <param name="value">A value in the band's own unit.</param>
    /// <returns>True from <see cref="Low"/> to <see cref="High"/>.</returns>
    public bool Contains(double value) => value >= Low && value <= High;
}
