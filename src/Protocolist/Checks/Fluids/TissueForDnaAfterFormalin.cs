using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Protocols;
using Protocolist.Specimens;

namespace Protocolist.Checks.Fluids;

/// <summary>Tissue for DNA is taken before formalin touches the body.</summary>
internal static class TissueForDnaAfterFormalin
{
    private const string Id = "tissue-for-dna-after-formalin";
    private static readonly Phrase Never = new(Id, "tissue for DNA is wanted, and no step takes any before the formalin of '{formalin}'");
    private static readonly Phrase After = new(
        "tissue-for-dna-after-formalin.after",
        "tissue for DNA is wanted, and '{sample}' comes after the formalin of '{formalin}'");

    private static readonly Phrase TakePieces = new("tissue-for-dna-after-formalin.remedy", "take pieces of 1 to 3 mm into 95 % ethanol first");

    public static PlanCheck Check { get; } = new(
        Id,
        "the specimen's worth: formalin makes DNA all but unusable",
        "Bishop Museum, Invertebrate Specimen Handling; Michonneau 2017 (1 to 3 mm pieces in 95 to 100 % ethanol)",
        Find)
    {
        Severities = [new(Severity.Error, "tissue for DNA is wanted first, and no step takes any before the first formalin")],
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        if (plan.Specimen.IntendedUse != IntendedUse.TissueForDnaFirst || plan.Formalin.IsEmpty) return [];
        var formalin = plan.Formalin[0];
        var wasFormalin = false;
        ReviewStep? late = null;
        foreach (var step in plan.Steps)
        {
            wasFormalin |= ReferenceEquals(step, formalin);
            if (!TakesTissue(step)) continue;
            if (!wasFormalin) return [];
            late = step;
            break;
        }

        var fixing = Argument.Id("formalin", formalin.Id);
        var message = late is null ? Never.With(fixing) : After.With(Argument.Id("sample", late.Id), fixing);
        return [Finding.Error(Id, message, TakePieces).At(formalin, "fluid").By("specimen.intended-use")];
    }

    /// <summary>A photograph is a sample too, and keeps no DNA.</summary>
    private static bool TakesTissue(ReviewStep step) =>
        step.Kind == StageKind.Sample && (step.Fluid is { IsAlcohol: true } || (step.Covers & Coverage.Tissue) != 0);
}
