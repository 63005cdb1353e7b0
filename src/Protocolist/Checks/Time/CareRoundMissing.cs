using System.Collections.Immutable;
using Protocolist.Findings;

namespace Protocolist.Checks.Time;

/// <summary>Somebody looks at the jar for as long as it is kept.</summary>
internal static class CareRoundMissing
{
    private const int MostMonths = 12;

    private static readonly Phrase NoRound = new(
        "care-round-missing", "nothing comes again after '{step}': no round looks at level, lid and strength");

    private static readonly Phrase LookHalfYearly = new("care-round-missing.remedy", "look every 6 months for as long as it is kept");
    private static readonly Phrase TooSeldom = new("care-round-missing.too-seldom", "the shortest round comes every {months} months; {most} is the most");
    private static readonly Phrase LookMoreOften = new("care-round-missing.remedy-too-seldom", "look every 6 months");

    public static PlanCheck Check { get; } = new(
        "care-round-missing",
        "the specimen: every jar leaks in the end, and alcohol goes first",
        "SPNHC best-practices wiki, Fluid Collection Monitoring, 2019 (every 6 months); first look after weeks: Simmons 2009",
        Find)
    {
        Severities = [new(Severity.Warning, "nothing comes again after the final vessel is closed, or less often than every 12 months")],
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        if (plan.House is not { } house) return [];
        int? rhythm = null;
        foreach (var look in plan.Plan.Care)
        {
            if (look.EveryMonths is { } months && !(rhythm <= months)) rhythm = months;
        }

        if (rhythm is null) return [Finding.Warning("care-round-missing", NoRound.With(Argument.Id("step", house.Id)), LookHalfYearly).At(house)];
        if (rhythm <= MostMonths) return [];
        return [Finding.Warning("care-round-missing", TooSeldom.With(("months", rhythm.Value), ("most", MostMonths)), LookMoreOften).At(house)];
    }
}
