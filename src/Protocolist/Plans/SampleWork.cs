using Protocolist.Findings;
using Protocolist.Specimens;

namespace Protocolist.Plans;

/// <summary>Tissue for DNA, before any fixative.</summary>
/// <param name="Tissue">What there is to take; null where the protocol takes none.</param>
internal sealed record SampleWork(TissueSample? Tissue) : StepWork
{
    private static readonly Phrase Piece = new(
        "sample.piece",
        "Tissue for DNA before any fixative touches it: {piece}, at most a tenth of the animal and 100 mg, into four times as much ethanol of 95 %{of}.");

    private static readonly Phrase OfSome = new("sample.of-some", ", from {animals} of the animals, a tube for each");

    private static readonly Phrase Whole = new(
        "sample.whole",
        "Tissue for DNA before any fixative touches it: {animals} {animals|whole animal|whole animals} of the lot, in one tube with four times as much "
        + "ethanol of 95 %.");

    private static readonly Phrase Change = new("sample.change", "Change that ethanol after a day; keep it cold and dark.");
    private static readonly Phrase None = new(
        "sample.none", "No tissue is taken: it would cost the whole animal. Write that down, so that nobody looks for a tube.");

    public override IEnumerable<Message> Instructions(StepFacts step)
    {
        if (Tissue is not { } tissue) yield break;
        if (tissue.Animals == 0)
        {
            yield return None;
            yield break;
        }

        yield return tissue.IsWhole
            ? Whole.With(("animals", tissue.Animals))
            : Piece.With(("piece", step.Body.Piece), ("of", step.Animals > 1 ? OfSome.With(("animals", tissue.Animals)) : default));
        yield return Change;
    }
}
