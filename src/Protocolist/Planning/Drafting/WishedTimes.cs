using System.Collections.Immutable;
using NodaTime;
using Protocolist.Findings;
using Protocolist.Plans;

namespace Protocolist.Planning.Drafting;

/// <summary>Soaks and days that a person insists on.</summary>
internal static class WishedTimes
{
    private static readonly Phrase NoSoak = new("no-soak-wanted", "'{step}' is no step of this plan in which the body lies in fluid");
    private static readonly Phrase NoStep = new("no-date-wanted", "'{step}' is no step of this plan that has a date");
    private static readonly Phrase Outside = new("soak-outside-protocol", "'{step}' lasts {soak}, as you wish; the protocol has {least}{most}");
    private static readonly Phrase Most = new("soak-outside-protocol.most", " to {most}");
    private static readonly Phrase OutsideRemedy = new("soak-outside-protocol.remedy", "leave it to the planner, unless you know this body better");

    /// <summary>The steps with what is wished of them; a wish that comes to nothing is an error.</summary>
    public static ImmutableArray<DraftStep> In(ImmutableArray<DraftStep> steps, PlanWishes wishes, List<Finding> findings)
    {
        foreach (var (id, soak) in wishes.Soaks)
        {
            if (IndexOf(steps, id, s => s.IsSoak) is not (>= 0 and var at))
            {
                findings.Add(Unmet(NoSoak, id, steps.Where(s => s.IsSoak)));
                continue;
            }

            var step = steps[at];
            if (soak < step.Least || soak > step.Most) findings.Add(IsOutside(step, soak));
            steps = steps.SetItem(at, step with { Least = soak, Most = step.Most is { } most ? Duration.Max(most, soak) : null });
        }

        foreach (var (id, day) in wishes.Dates)
        {
            if (IndexOf(steps, id, IsDated) is >= 0 and var at)
                steps = steps.SetItem(at, steps[at] with { Terms = steps[at].Terms with { Limits = steps[at].Limits with { On = day } } });
            else
                findings.Add(Unmet(NoStep, id, steps.Where(IsDated)));
        }

        return steps;
    }

    private static bool IsDated(DraftStep step) => !step.IsCare && step.Kind != StageKind.Discard;

    private static int IndexOf(ImmutableArray<DraftStep> steps, string id, Func<DraftStep, bool> which)
    {
        for (var i = 0; i < steps.Length; i++)
        {
            if (steps[i].Id == id && which(steps[i])) return i;
        }

        return -1;
    }

    private static Finding Unmet(Phrase phrase, string id, IEnumerable<DraftStep> others) =>
        Finding.Error(phrase.Id, phrase.With(Argument.Id("step", id)), Suggestion.For(id, [.. others.Select(s => s.Id)]));

    private static Finding IsOutside(DraftStep step, Duration soak) => Finding.Warning(
        Outside.Id,
        Outside.With(
            Argument.Id("step", step.Id),
            ("soak", soak),
            ("least", step.Least),
            ("most", step.Most is { } most ? Most.With(("most", most)) : default(Message))),
        OutsideRemedy) with
    { Subject = step.Id };
}
