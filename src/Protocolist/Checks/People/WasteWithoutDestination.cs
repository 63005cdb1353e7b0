using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Plans;

namespace Protocolist.Checks.People;

/// <summary>Everything poured off has somewhere to go.</summary>
internal static class WasteWithoutDestination
{
    private const string Id = "waste-without-destination";
    private static readonly Phrase Nowhere = new(Id, "{volume} of {what} from '{step}' ({class}) has nowhere to go");
    private static readonly Phrase Forgotten = new("waste-without-destination.forgotten", "{volume} of {fluid} from '{step}' goes nowhere");
    private static readonly Phrase Container = new("waste-without-destination.remedy", "name a labelled, closed container and who takes it");

    public static PlanCheck Check { get; } = new(
        Id,
        "people and water: formalin and alcohol are not for the drain",
        "Meador, Cuffney and Gurtz 1993, USGS 93-104; local rules come first",
        Find)
    {
        Severities = [new(Severity.Error, "spent fixative or alcohol has no container and nobody who takes it")],
        ProtectsPeople = true,
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        ImmutableArray<Finding> found = [];
        foreach (var waste in plan.Plan.Waste)
        {
            if (!waste.Destination.IsEmpty) continue;
            var message = Nowhere.With(("volume", waste.HowMuch), ("what", waste.What), Argument.Id("step", waste.Step), ("class", waste.ClassWords));
            found = found.Add(Finding.Error(Id, message, Container).By($"{waste.Step}.volume") with { Subject = waste.Step });
        }

        foreach (var step in plan.FluidSteps)
        {
            if (step.Fluid!.IsWater || step.Kind is not (StageKind.Immerse or StageKind.Bath) || step.Volume is not { } volume) continue;
            if (Goes(plan.Plan, step.Id)) continue;
            var message = Forgotten.With(("volume", volume), ("fluid", step.Fluid.Name), Argument.Id("step", step.Id));
            found = found.Add(Finding.Error(Id, message, Container).At(step, "fluid", "volume"));
        }

        return found;
    }

    /// <summary>Whether the fluid of a step is thrown away somewhere, or used again.</summary>
    private static bool Goes(Plan plan, string step)
    {
        foreach (var waste in plan.Waste)
        {
            if (waste.Step == step) return true;
        }

        foreach (var move in plan.Fluids)
        {
            if (move.From.Step == step) return true;
        }

        return false;
    }
}
