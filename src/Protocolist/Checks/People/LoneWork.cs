using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Vessels;
using UnitsNet;

namespace Protocolist.Checks.People;

/// <summary>Nobody does the dangerous part alone.</summary>
internal static class LoneWork
{
    private const string Id = "lone-work";
    private const int MostNamed = 4;
    private static readonly Volume Much = Volume.FromLiters(5);

    private static readonly Phrase Alone = new(Id, "one person works here, and {risky:; }{more}");
    private static readonly Phrase Injects = new("lone-work.injects", "'{step}' injects formalin");
    private static readonly Phrase Lifts = new("lone-work.lifts", "'{step}' has a vessel of {mass:vs most}, where {most} is the most for one");
    private static readonly Phrase Pours = new("lone-work.pours", "'{step}' pours {volume} of formalin, where {much} is much for one");
    private static readonly Phrase More = new("lone-work.more", "; {n} {n|more step asks|more steps ask} as much");
    private static readonly Phrase WithinCall = new("lone-work.remedy", "have somebody within call, and tell them when you begin and when you end");

    public static PlanCheck Check { get; } = new(
        Id,
        "people: a splash in the eye, a faint, a load that slips",
        "common practice; two thirds of the lifting by guidance L23 (from memory)",
        Find)
    {
        Severities = [new(Severity.Warning, "one person works alone and injects formalin, pours much of it, or lifts more than 23 kg")],
        ProtectsPeople = true,
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        if (plan.Bench.People > 1) return [];
        var (risky, why) = (new List<ReviewStep>(), new List<Message>());
        foreach (var step in plan.Steps)
        {
            if (Why(step) is not { IsEmpty: false } reason) continue;
            risky.Add(step);
            if (why.Count < MostNamed) why.Add(reason);
        }

        if (risky.Count == 0) return [];
        var more = risky.Count > MostNamed ? More.With(("n", risky.Count - MostNamed)) : default;
        return [Finding.Warning(Id, Alone.With(Argument.Messages("risky", why), ("more", more)), WithinCall).ByEach(risky, "volume")];
    }

    private static Message Why(ReviewStep step) => step switch
    {
        { Kind: StageKind.Inject, Fluid.HasFormaldehyde: true } => Injects.With(Argument.Id("step", step.Id)),
        { Vessel: { } vessel } when vessel.TotalMass > Lifting.OnePerson =>
            Lifts.With(Argument.Id("step", step.Id), ("mass", vessel.TotalMass), ("most", Lifting.OnePerson)),
        { Fluid.HasFormaldehyde: true, Volume: { } volume } when volume >= Much =>
            Pours.With(Argument.Id("step", step.Id), ("volume", volume), ("much", Much)),
        _ => default,
    };
}
