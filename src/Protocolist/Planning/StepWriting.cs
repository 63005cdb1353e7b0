using System.Collections.Immutable;
using Protocolist.Benches;
using Protocolist.Planning.Provisioning;
using Protocolist.Plans;
using Protocolist.Protocols;

namespace Protocolist.Planning;

/// <summary>A drafted step as it stands on the plan.</summary>
internal static class StepWriting
{
    public static Step Write(DraftStep step, Draft draft, Bench bench, ImmutableDictionary<string, ImmutableArray<string>> cautions) => new()
    {
        Id = step.Id,
        Stage = StageGrammar.Of(step.Kind).Word,
        Title = step.Stage.Title,
        Start = step.When is { } s ? s.Start.InZone(bench.Opening.Zone).ToOffsetDateTime() : null,
        End = step.When is { } e ? e.End.InZone(bench.Opening.Zone).ToOffsetDateTime() : null,
        Least = step.Least,
        Most = step.Most,
        HandsOn = step.HandsOn,
        Fluid = step.Fluid?.Name,
        Volume = step.Volume,
        Changes = step.Changes,
        Vessel = step.Vessel?.Vessel.Name,
        Sites = step.Sites,
        Cuts = step.Cuts,
        Instructions = [.. Instructions.Of(step, draft)],
        LookFor = [.. LookFor(step)],
        Inspections = [.. step.Inspections.Select(i => i.InZone(bench.Opening.Zone).ToOffsetDateTime())],
        Materials = step.Materials,
        Cautions = cautions.GetValueOrDefault(step.Id, []),
        Figures = step.Volume is null ? step.Figures : step.Figures.Add(ProvisionFigures.IdOf(step)),
        Source = step.Stage.Source,
        State = step switch
        {
            { Progress.Ended: null, Progress.Begun: not null } => "begun",
            { Progress: not null } => "done",
            _ => "planned",
        },
        Because = step.Because,
        MostInspections = step.Inspections.Length,
    };

    private static IEnumerable<string> LookFor(DraftStep step)
    {
        foreach (var text in step.Stage.Texts("look-for")) yield return text;
        if (step.Watch is not { } watch) yield break;
        foreach (var (sign, remedy) in watch.Signs)
        {
            var meaning = Array.Find(WatchWords.Signs, s => s.Word == sign).Meaning;
            var action = Array.Find(WatchWords.Remedies, r => r.Word == remedy).Meaning;
            yield return $"{sign} ({meaning}): {action}";
        }
    }
}
