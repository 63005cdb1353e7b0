using System.Collections.Immutable;
using UnitsNet;

namespace Protocolist.Fluids.Safety;

/// <summary>What is dangerous about a fluid: flash point, classification, transport, exposure limits.</summary>
/// <remarks>Facts for planning, with their sources; the safety data sheet of the product at hand and local codes prevail.</remarks>
/// <param name="FlashPoint">Closed-cup flash point; null where it does not flash in practice.</param>
/// <param name="FlashPointDoubt">Half the width of the band around it, K.</param>
/// <param name="SignalWord">GHS signal word: Danger, Warning or empty.</param>
/// <param name="Statements">GHS hazard statements (H codes).</param>
/// <param name="FlammableCategory">GHS category of flammable liquids, 2 or 3; null where it is none.</param>
/// <param name="Transport">UN number and name, where it falls under one; else empty.</param>
/// <param name="Source">Where the classification is from, and where sources differ.</param>
/// <param name="Limits">Exposure limits.</param>
internal sealed record HazardData(
    Temperature? FlashPoint,
    double FlashPointDoubt,
    string SignalWord,
    ImmutableArray<string> Statements,
    int? FlammableCategory,
    string Transport,
    string Source,
    ImmutableArray<ExposureLimit> Limits);
