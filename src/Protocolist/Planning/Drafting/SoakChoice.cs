using System.Collections.Immutable;
using NodaTime;
using Protocolist.Findings;
using Protocolist.Plans;
using Protocolist.Quantities;
using Protocolist.Specimens.Fixation;

namespace Protocolist.Planning.Drafting;

/// <summary>
/// How long a body soaks where the protocol leaves a range: no longer than it must, but as long as its middle needs. Longer costs days, shorter the
/// specimen.
/// </summary>
internal static class SoakChoice
{
    private static readonly Phrase Longer = new(
        "decided.soak", "as long as the middle of the {region} needs at the least; {least} is the shortest that the protocol has, {most} the longest");

    public static ImmutableArray<DraftStep> Of(ImmutableArray<DraftStep> steps, BodyFixation model, PlanWishes wishes, List<Figure> figures)
    {
        var (lies, longest) = (Duration.Zero, -1);
        for (var i = 0; i < steps.Length; i++)
        {
            if (steps[i].Kind != StageKind.Immerse) continue;
            lies += steps[i].Least;
            if (!wishes.Soaks.ContainsKey(steps[i].Id) && (longest < 0 || Room(steps[i]) > Room(steps[longest]))) longest = i;
        }

        if (longest < 0 || GoesOn(steps, steps[longest])) return steps;
        var missing = Duration.FromHours(Math.Ceiling(Rules.FixationTime.LeastHours(model))) - lies;
        var more = Duration.Min(missing, Room(steps[longest]));
        var isTooShort = Rules.FixationTime.IsTooShort(QuantityRange.Point(lies.TotalSeconds, Dimension.OfTime), model);
        if (more <= Duration.Zero || !isTooShort) return steps;
        var soak = steps[longest];
        var figure = new Longest(soak, model).Of((soak.Least + more).TotalSeconds, Dimension.OfTime);
        figures.Add(figure);
        var terms = soak.Terms with { Least = soak.Least + more, Shortest = soak.Least };
        return steps.SetItem(longest, soak with { Terms = terms, Figures = soak.Figures.Add(figure.Id) });
    }

    /// <summary>The draft with the shortest soaks that its protocol has, for dates that leave no more; null where it has them already.</summary>
    public static Draft? Undone(Draft draft)
    {
        var steps = draft.Steps;
        for (var i = 0; i < steps.Length; i++)
        {
            if (steps[i].Terms.Shortest is not { } least) continue;
            var id = IdOf(steps[i]);
            var terms = steps[i].Terms with { Least = least, Shortest = null };
            steps = steps.SetItem(i, steps[i] with { Terms = terms, Figures = steps[i].Figures.Remove(id) });
            draft = draft with { Figures = draft.Figures.RemoveAll(f => f.Id == id) };
        }

        return steps == draft.Steps ? null : draft with { Steps = steps };
    }

    private static string IdOf(DraftStep soak) => $"decided.{soak.Id}.last";

    private static Duration Room(DraftStep step) => step.Most is { } most && most > step.Least ? most - step.Least : Duration.Zero;

    /// <summary>Whether fixation goes on after it: nothing follows that would end it, or it is kept in the substance that fixes it.</summary>
    private static bool GoesOn(ImmutableArray<DraftStep> steps, DraftStep soak)
    {
        DraftStep? last = null;
        foreach (var step in steps)
        {
            if (step.Kind is StageKind.Immerse or StageKind.Wash or StageKind.Bath or StageKind.House) last = step;
        }

        return last is null || last.Fluid?.Substance == soak.Fluid?.Substance;
    }

    /// <summary>Why a soak is longer than the shortest, to be put into words when somebody asks.</summary>
    private sealed record Longest(DraftStep Soak, BodyFixation Model)
        : FigureOrigin(IdOf(Soak), [$"{Soak.Id}.last", FixationTime.FigureId], Rules.FixationTime.Source)
    {
        public override Message Rule => Longer.With(("region", Model.Slowest.Region.Name), ("least", Soak.Least), ("most", Soak.Most!.Value));
    }
}
