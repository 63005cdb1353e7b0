using Protocolist.Findings;
using static System.FormattableString;

namespace Protocolist.Checks.Time;

/// <summary>Somebody looks at the jar for as long as it is kept.</summary>
internal static class CareRoundMissing
{
    private const int MostMonths = 12;

    public static PlanCheck Check { get; } = new(
        "care-round-missing",
        "the specimen: every jar leaks in the end, and alcohol goes first",
        "SPNHC best-practices wiki, Fluid Collection Monitoring, 2019 (every 6 months); first look after weeks: Simmons 2009",
        Find)
    {
        Speaks = [new(Severity.Warning, "nothing comes again after the final vessel is closed, or less often than every 12 months")],
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        if (plan.House is not { } house) yield break;
        var rhythm = plan.Plan.Care.Min(c => c.EveryMonths);
        if (rhythm is null)
            yield return Finding.Warning("care-round-missing", $"nothing comes again after '{house.Id}': no round looks at level, lid and strength", "look every 6 months for as long as it is kept").At(house);
        else if (rhythm > MostMonths)
            yield return Finding.Warning("care-round-missing", Invariant($"the shortest round comes every {rhythm} months; {MostMonths} is the most"), "look every 6 months").At(house);
    }
}
