using System.Collections.Immutable;
using System.Runtime.InteropServices;
using Protocolist.Checks.Cautions;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Planning.Drafting;
using Protocolist.Planning.Provisioning;
using Protocolist.Vessels;

namespace Protocolist.Planning.Reviewing;

/// <summary>Cautions where they matter, once: at the first step that meets the animal, the fluid, the blade or the load.</summary>
internal static class CautionWriting
{
    private static readonly Phrase Sharps = new(
        "caution.sharps",
        "Blades and needles: cut and push away from yourself, never recap a needle, sharps into a sharps box.");

    private static readonly Phrase Heavy = new("caution.heavy-vessel", "{vessel}, full, weighs {mass}: fill it where it stands, and do not lift it alone.");

    /// <summary>The cautions of each step, in the order of the steps; no sentence comes twice.</summary>
    public static ImmutableArray<ImmutableArray<Message>> Of(Draft draft, RecipeChoice choice)
    {
        var said = new List<Message>(32);
        var cautions = ImmutableArray.CreateBuilder<ImmutableArray<Message>>(draft.Steps.Length);
        for (var i = 0; i < draft.Steps.Length; i++)
        {
            var (step, before) = (draft.Steps[i], said.Count);
            if (i == 0) SayAll(draft.Prepared.Cautions);
            if (i == 0) SayAll(draft.Body.Group.Handling);
            SayAll(step.Stage.Cautions);
            if (step.Fluid is { IsWater: false } fluid && !IsMet(fluid, draft.Steps.AsSpan(0, i)))
            {
                SayAll(draft.Prepared.CautionsOf(fluid));
                Say(FluidCautions.Deference);
            }

            foreach (var recipe in choice.Recipes)
            {
                if (recipe.Need.Steps.Contains(step.Id)) SayOfMixing(recipe.Way);
            }

            if (step.Kind is StageKind.Slit or StageKind.Inject) Say(Sharps);
            if (step.Vessel is { } vessel && vessel.TotalMass > Lifting.OnePerson) Say(Heavy.With(("vessel", vessel.Vessel.Name), ("mass", vessel.TotalMass)));
            cautions.Add(said.Count == before ? [] : [.. CollectionsMarshal.AsSpan(said)[before..]]);
        }

        return cautions.MoveToImmutable();

        void Say(Message caution)
        {
            if (!said.Contains(caution)) said.Add(caution);
        }

        void SayAll(ImmutableArray<Message> all)
        {
            foreach (var caution in all) Say(caution);
        }

        // The stock that a fluid is mixed from is worse than the fluid.
        void SayOfMixing(FluidWay way)
        {
            foreach (var part in way.Parts)
            {
                if (!part.WhenMixing.IsEmpty) Say(part.WhenMixing);
            }
        }
    }

    private static bool IsMet(Fluid fluid, ReadOnlySpan<DraftStep> before)
    {
        foreach (var step in before)
        {
            if (fluid.Equals(step.Fluid)) return true;
        }

        return false;
    }
}
