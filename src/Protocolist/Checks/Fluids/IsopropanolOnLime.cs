using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Quantities;
using Protocolist.Rules;

namespace Protocolist.Checks.Fluids;

/// <summary>Weak isopropanol does not meet lime.</summary>
internal static class IsopropanolOnLime
{
    private static readonly Phrase TooWeak = new(LimeInIsopropanol.Id, "'{step}' keeps {group:a} in {fluid}; below {least:0 %vol} it may lose its lime");
    private static readonly Phrase Ethanol = new("isopropanol-on-lime.remedy", "keep it in ethanol, or in isopropanol of 50 to 55 %vol");

    public static PlanCheck Check { get; } = new(
        LimeInIsopropanol.Id,
        "the specimen: isopropanol below 50 % may take lime out of shell and skeleton",
        LimeInIsopropanol.Source,
        Find)
    {
        Severities = [new(Severity.Warning, "an animal with lime, spicules or ossicles is kept in isopropanol below 50 %vol")],
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        ImmutableArray<Finding> found = [];
        foreach (var step in plan.Alcohol)
        {
            if (step.Kind != StageKind.House || !LimeInIsopropanol.Suffers(plan.Group, step.Fluid!)) continue;
            var least = Argument.Of("least", LimeInIsopropanol.Least / 100, Dimension.OfShareByVolume);
            var message = TooWeak.With(Argument.Id("step", step.Id), ("group", plan.Group.Name), ("fluid", step.Fluid!.Name), least);
            found = found.Add(Finding.Warning(LimeInIsopropanol.Id, message, Ethanol).At(step, "fluid"));
        }

        return found;
    }
}
