using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Protocols;
using static System.FormattableString;

namespace Protocolist.Checks.Fluids;

/// <summary>Weak isopropanol does not meet lime.</summary>
internal static class IsopropanolOnLime
{
    private const double Least = 50;

    public static PlanCheck Check { get; } = new(
        "isopropanol-on-lime",
        "the specimen: isopropanol below 50 % may take lime out of shell and skeleton",
        "Simmons, natural-history collections list, 27 August 2009",
        Find)
    {
        Speaks = [new(Severity.Warning, "an animal with lime, spicules or ossicles is kept in isopropanol below 50 %vol")],
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        if (!plan.Group.IsCalcareous && !plan.Group.IsSpiculate) yield break;
        foreach (var step in plan.Alcohol)
        {
            if (step.Kind == StageKind.House && step.Fluid!.Substance == Substance.Isopropanol && step.Fluid.AlcoholVolumePercent < Least)
                yield return Finding.Warning("isopropanol-on-lime", Invariant($"'{step.Id}' keeps {plan.Group.One()} in {step.Fluid.Name}; below {Least:0} %vol it may lose its lime"), "keep it in ethanol, or in isopropanol of 50 to 55 %vol").At(step, "fluid");
        }
    }
}
