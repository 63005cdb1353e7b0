using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Planning.Making;
using Protocolist.Plans;

namespace Protocolist.Planning.Deciding;

/// <summary>What it costs that a person insists: the plan stays as it is wished, and says what the planner by itself would do and why.</summary>
internal static class PriceOfWishes
{
    private static readonly Phrase Costs = new("wishes-cost", "it is planned as you wish, and {why}; by itself the planner would take {instead:; }");
    private static readonly Phrase Remedy = new("wishes-cost.remedy", "keep to it if you have a reason, else leave it to the planner");
    private static readonly Phrase ForStep = new("wishes-cost.for-step", "{what} for '{step}'");
    private static readonly Phrase ForFluid = new("wishes-cost.for-fluid", "{what} for {fluid}");
    private static readonly Phrase Chosen = new("wishes-cost.chosen", "{what} ({choice})");

    /// <summary>The price in a note; null where nothing is wished, or the planner by itself would do no less harm.</summary>
    public static Finding? Of(Way taken, Question question)
    {
        var request = question.Request;
        if (request.Choices.IsEmpty && request.Wishes.IsEmpty()) return null;
        var asked = request with { Choices = Settled.Nothing.Choices, Wishes = PlanWishes.None };
        var free = new Search(question with { Request = asked }).Least();
        if (free is null || Worse(taken.Harm, free.Harm) is not { } harm) return null;
        ImmutableArray<Message> instead = [.. Instead(taken, free, request)];
        if (instead.IsEmpty) return null;
        return Finding.Note(Costs.Id, Costs.With(("why", HarmWords.More(harm)), Argument.Messages("instead", instead)), Remedy);
    }

    /// <summary>The first harm of which the wished way does more; null where it does less of an earlier one. An option's place is no harm.</summary>
    private static Harm? Worse(HarmDone wished, HarmDone free)
    {
        for (var harm = Harm.Start; harm <= Harm.Shelf; harm++)
        {
            if (harm is Harm.Option || wished[harm] == free[harm]) continue;
            return wished[harm] > free[harm] ? harm : null;
        }

        return null;
    }

    private static IEnumerable<Message> Instead(Way taken, Way free, PlanRequest request)
    {
        var (plan, other) = (taken.Made.Plan.Value!, free.Made.Plan.Value!);
        foreach (var (choice, option) in request.Choices)
        {
            if (other.Choices.GetValueOrDefault(choice) is { } better && better != option)
                yield return Chosen.With(("what", better), Argument.Id("choice", choice));
        }

        foreach (var (step, vessel) in request.Wishes.Vessels)
        {
            var own = free.Made.Draft!.Steps.FirstOrDefault(s => s.Id == step)?.Vessel?.Vessel;
            if (own is not null && own.Id != vessel) yield return ForStep.With(("what", own.Name), Argument.Id("step", step));
        }

        foreach (var (fluid, supply) in request.Wishes.Supplies)
        {
            var own = free.Made.Provisioned!.Choice.Recipes.FirstOrDefault(r => r.Need.Key == fluid)?.Way.Supply.Id;
            if (own is not null && own != supply) yield return ForFluid.With(("what", own), ("fluid", fluid));
        }

        foreach (var step in request.Wishes.Soaks.Keys)
        {
            if (plan.Step(step) is { } wished && other.Step(step) is { } own && own.Least != wished.Least)
                yield return ForStep.With(("what", own.Least), Argument.Id("step", step));
        }

        foreach (var step in request.Wishes.Dates.Keys)
        {
            if (other.Step(step)?.Start is { } start && plan.Step(step)?.Start != start)
                yield return ForStep.With(("what", start), Argument.Id("step", step));
        }
    }
}
