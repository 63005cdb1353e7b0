using System.Collections.Immutable;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Planning.Provisioning;
using Protocolist.Plans;
using Protocolist.Protocols;

namespace Protocolist.Planning;

/// <summary>A drafted step as it stands on the plan.</summary>
internal static class StepWriting
{
    public static Step Write(DraftStep step, Bench bench, ImmutableDictionary<string, ImmutableArray<Message>> cautions) => new()
    {
        Id = step.Id,
        Kind = step.Kind,
        Title = step.Title,
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
        Work = step.Work,
        How = step.How,
        Note = Message.Text(step.Stage.Text("note") ?? ""),
        Fitted = step.Vessel,
        Liquid = step.Fluid,
        LookFor = [.. LookFor(step)],
        Inspections = [.. step.Inspections.Select(i => i.InZone(bench.Opening.Zone).ToOffsetDateTime())],
        Materials = step.Materials,
        Cautions = cautions.GetValueOrDefault(step.Id, []),
        Figures = step.Volume is null ? step.Figures : step.Figures.Add(ProvisionFigures.IdOf(step)),
        Source = step.Stage.Source,
        State = step switch
        {
            { Progress.Ended: null, Progress.Begun: not null } => StepState.Begun,
            { Progress: not null } => StepState.Done,
            _ => StepState.Planned,
        },
        Because = step.Because,
        MostInspections = step.Inspections.Length,
    };

    private static readonly Phrase Sign = new("watch.sign", "{sign} ({meaning}): {action}");

    private static IEnumerable<Message> LookFor(DraftStep step)
    {
        foreach (var text in step.Stage.Texts("look-for")) yield return Message.Text(text);
        if (step.Watch is not { } watch) yield break;
        foreach (var (sign, remedy) in watch.Signs)
        {
            yield return Sign.With(
                ("sign", sign),
                ("meaning", Array.Find(WatchWords.Signs, s => s.Word == sign).Meaning),
                ("action", Array.Find(WatchWords.Remedies, r => r.Word == remedy).Meaning));
        }
    }
}
