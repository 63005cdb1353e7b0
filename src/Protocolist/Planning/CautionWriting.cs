using System.Collections.Immutable;
using Protocolist.Checks.Cautions;
using Protocolist.Findings;
using Protocolist.Plans;
using Protocolist.Protocols;
using Protocolist.Vessels;

namespace Protocolist.Planning;

/// <summary>Cautions where they matter, once: at the first step that meets the animal, the fluid, the blade or the load.</summary>
internal static class CautionWriting
{
    private static readonly Phrase Sharps = new(
        "caution.sharps",
        "Blades and needles: cut and push away from yourself, never recap a needle, sharps into a sharps box.");

    private static readonly Phrase Heavy = new("caution.heavy-vessel", "{vessel}, full, weighs {mass}: fill it where it stands, and do not lift it alone.");

    /// <summary>The cautions of each step, in the order of the steps; no sentence comes twice.</summary>
    public static ImmutableDictionary<string, ImmutableArray<Message>> Of(Draft draft, ImmutableArray<PlannedRecipe> recipes)
    {
        var (said, fluids) = (new HashSet<Message>(), new HashSet<string>(StringComparer.Ordinal));
        var cautions = ImmutableDictionary.CreateBuilder<string, ImmutableArray<Message>>(StringComparer.Ordinal);
        var first = true;
        foreach (var step in draft.Steps)
        {
            var own = ImmutableArray.CreateBuilder<Message>();
            if (first) Say(Animal(draft));
            Say(step.Stage.Cautions);
            if (step.Fluid is { IsWater: false } fluid && fluids.Add(fluid.Name)) Say([.. FluidCautions.Of(fluid), FluidCautions.Deference]);
            Say(Mixing(step, recipes));
            Say(Work(step));
            cautions[step.Id] = own.DrainToImmutable();
            first = false;

            void Say(IEnumerable<Message> all)
            {
                foreach (var caution in all)
                {
                    if (said.Add(caution)) own.Add(caution);
                }
            }
        }

        return cautions.ToImmutable();
    }

    /// <summary>What holds for the animal throughout: the protocol's own, and its group's. What is law is for the checks.</summary>
    private static IEnumerable<Message> Animal(Draft draft) =>
        [.. draft.Prepared.Cautions, .. draft.Body.Group.Cautions.Where(c => !c.IsLegal && c.Id != "rabies").Select(c => (Message)c.Text)];

    /// <summary>The stock that a step's fluid is mixed from is worse than the fluid: said at the first step that needs it.</summary>
    private static IEnumerable<Message> Mixing(DraftStep step, ImmutableArray<PlannedRecipe> recipes)
    {
        foreach (var recipe in recipes.Where(r => r.For.Contains(step.Id)))
        {
            foreach (var part in recipe.Parts)
            {
                if (part.Fluid is { HasFormaldehyde: true, Substance.IsConcentrate: true } stock) yield return FluidCautions.OfStock(stock);
            }
        }
    }

    private static IEnumerable<Message> Work(DraftStep step)
    {
        if (step.Kind is StageKind.Slit or StageKind.Inject) yield return Sharps;
        if (step.Vessel is { } vessel && vessel.TotalMass > Lifting.OnePerson)
            yield return Heavy.With(("vessel", vessel.Vessel.Name), ("mass", vessel.TotalMass));
    }
}
