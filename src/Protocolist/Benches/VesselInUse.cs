using NodaTime;

namespace Protocolist.Benches;

/// <summary>Vessels that another specimen stands in.</summary>
/// <param name="VesselId">The vessel's id.</param>
/// <param name="Count">How many of it; 1 or more.</param>
/// <param name="Until">The last day of it; null for good.</param>
public sealed record VesselInUse(string VesselId, int Count, LocalDate? Until);
