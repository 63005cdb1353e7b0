using Protocolist.Findings;
using Protocolist.Protocols;

namespace Protocolist.Checks.People;

/// <summary>Everything poured off has somewhere to go.</summary>
internal static class WasteWithoutDestination
{
    public static PlanCheck Check { get; } = new(
        "waste-without-destination",
        "people and water: formalin and alcohol are not for the drain",
        "Meador, Cuffney and Gurtz 1993, USGS 93-104; local rules come first",
        Find)
    {
        Speaks = [new(Severity.Error, "spent fixative or alcohol has no container and nobody who takes it")],
        ProtectsPeople = true,
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        foreach (var waste in plan.Plan.Waste)
        {
            if (waste.Destination.IsEmpty)
                yield return Finding.Error("waste-without-destination", $"{waste.HowMuch} of {waste.What} from '{waste.Step}' ({waste.ClassWords}) has nowhere to go", "name a labelled, closed container and who takes it").By($"{waste.Step}.volume") with { Subject = waste.Step };
        }

        foreach (var step in plan.FluidSteps)
        {
            if (step.Fluid!.IsWater || step.Kind is not (StageKind.Immerse or StageKind.Bath) || step.Step.Volume is not { } volume) continue;
            if (!plan.Plan.Waste.Any(w => w.Step == step.Id) && !plan.Plan.Fluids.Any(m => m.From.Step == step.Id))
                yield return Finding.Error("waste-without-destination", $"{volume.Text()} of {step.Fluid.Name} from '{step.Id}' goes nowhere", "name a labelled, closed container and who takes it").At(step, "fluid", "volume");
        }
    }
}
