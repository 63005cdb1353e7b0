using UnitsNet;

namespace Protocolist.Specimens;

/// <summary>One region of one animal's body.</summary>
/// <param name="Region">Which region.</param>
/// <param name="Mass">Its mass; of a pair, both together.</param>
/// <param name="Volume">Its volume; of a pair, both together.</param>
/// <param name="HalfThickness">Half of its thickness, the shorter way.</param>
internal readonly record struct RegionMeasure(BodyRegion Region, Estimate<Mass> Mass, Estimate<Volume> Volume, Estimate<Length> HalfThickness);
