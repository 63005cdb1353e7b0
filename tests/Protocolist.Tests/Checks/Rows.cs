using Protocolist.Checks;

namespace Protocolist.Tests.Checks;

/// <summary>For each check one plan that trips it, and one that nearly does.</summary>
internal sealed record Row(string Id, Func<ReviewCase> Trips, Func<ReviewCase> NearMiss)
{
    public static IEnumerable<Row> All => [.. FluidRows.All, .. BodyRows.All, .. VesselAndTimeRows.All, .. StockAndLawRows.All, .. PeopleAndLabelRows.All, .. PlanningRows.All];
}
