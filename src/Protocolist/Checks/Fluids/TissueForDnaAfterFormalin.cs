using Protocolist.Findings;
using Protocolist.Protocols;
using Protocolist.Specimens;

namespace Protocolist.Checks.Fluids;

/// <summary>Tissue for DNA is taken before formalin touches the body.</summary>
internal static class TissueForDnaAfterFormalin
{
    public static PlanCheck Check { get; } = new(
        "tissue-for-dna-after-formalin",
        "the specimen's worth: formalin makes DNA all but unusable",
        "Bishop Museum, Invertebrate Specimen Handling; Michonneau 2017 (1 to 3 mm pieces in 95 to 100 % ethanol)",
        Find)
    {
        Speaks = [new(Severity.Error, "tissue for DNA is wanted first, and no step takes any before the first formalin")],
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        if (plan.Specimen.IntendedUse != IntendedUse.TissueForDnaFirst || plan.Formalin.IsEmpty) yield break;
        var sample = plan.Steps.FirstOrDefault(TakesTissue);
        if (sample is null || plan.IndexOf(sample) > plan.IndexOf(plan.Formalin[0]))
            yield return Finding.Error("tissue-for-dna-after-formalin", sample is null ? $"tissue for DNA is wanted, and no step takes any before the formalin of '{plan.Formalin[0].Id}'" : $"tissue for DNA is wanted, and '{sample.Id}' comes after the formalin of '{plan.Formalin[0].Id}'", "take pieces of 1 to 3 mm into 95 % ethanol first").At(plan.Formalin[0], "fluid").By("specimen.intended-use");
    }

    /// <summary>A photograph is a sample too, and keeps no DNA.</summary>
    private static bool TakesTissue(ReviewStep step) => step.Kind == StageKind.Sample
        && (step.Fluid is { IsAlcohol: true } || step.Step.Instructions.Select(m => m.ToString()).Any(i => i.Contains("tissue", StringComparison.OrdinalIgnoreCase) || i.Contains("DNA", StringComparison.Ordinal)));
}
