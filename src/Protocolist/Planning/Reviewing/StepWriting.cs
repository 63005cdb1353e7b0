using System.Collections.Immutable;
using NodaTime;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Planning.Drafting;
using Protocolist.Planning.Provisioning;
using Protocolist.Plans;
using Protocolist.Specimens;

namespace Protocolist.Planning.Reviewing;

/// <summary>A drafted step as it stands on the plan.</summary>
internal static class StepWriting
{
    public static Step Write(DraftStep step, Accounted accounted, Bench bench, ImmutableArray<Message> cautions) => new()
    {
        Id = step.Id,
        Kind = step.Kind,
        Title = step.Title,
        Start = step.When is { } s ? s.Start.InZone(bench.Opening.Zone).ToOffsetDateTime() : null,
        End = step.When is { } e ? e.End.InZone(bench.Opening.Zone).ToOffsetDateTime() : null,
        Least = Grid.ToMinute(step.Least),
        Most = step.Most is { } most ? Grid.ToMinute(most) : null,
        HandsOn = Grid.OnMinutes(step.HandsOn),
        Fluid = step.Fluid?.Name,
        Volume = step.Volume is { } volume ? Grid.On(volume) : null,
        Changes = step.Changes,
        ChangesAt = step.ChangesAt.IsEmpty ? [] : Moments(step.ChangesAt, bench.Opening.Zone),
        Change = step.Changes == 0 ? Duration.Zero : WorkMinutes.Change(step, accounted.Draft.Body.Count),
        Look = step.Looks == 0 ? Duration.Zero : WorkMinutes.Look(accounted.Draft.Body.Count),
        Vessel = step.Vessel?.Vessel.Name,
        Sites = step.Sites.IsEmpty ? [] : ImmutableArray.CreateRange(step.Sites, OnGrid),
        Cuts = step.Cuts.IsEmpty ? [] : ImmutableArray.CreateRange(step.Cuts, OnGrid),
        Telling = new WorkTelling(step, accounted.Draft.Body),
        LookFor = step.Kind == StageKind.Immerse ? step.Stage.LookFor.Add(BodyKind.Of(accounted.Draft.Body).Look) : step.Stage.LookFor,
        Inspections = step.Inspections.IsEmpty ? [] : Moments(step.Inspections, bench.Opening.Zone),
        Materials = accounted.MaterialsOf(step.Id),
        Cautions = cautions,
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
        MostChanges = step.ChangesAt.Length,
    };

    private static ImmutableArray<OffsetDateTime> Moments(ImmutableArray<Instant> instants, DateTimeZone zone)
    {
        var moments = ImmutableArray.CreateBuilder<OffsetDateTime>(instants.Length);
        foreach (var instant in instants) moments.Add(instant.InZone(zone).ToOffsetDateTime());
        return moments.MoveToImmutable();
    }

    private static InjectionSite OnGrid(InjectionSite site) => site with
    {
        PerSiteLow = Grid.On(site.PerSiteLow),
        PerSite = Grid.On(site.PerSite),
        PerSiteHigh = Grid.On(site.PerSiteHigh),
        Total = Grid.On(site.Total),
    };

    private static PlannedCut OnGrid(PlannedCut cut) => cut with { Length = Grid.On(cut.Length), Depth = Grid.On(cut.Depth), Spacing = Grid.On(cut.Spacing) };

    /// <summary>The work of a step between the protocol's own words on how it is done and its remark.</summary>
    private sealed class WorkTelling(DraftStep step, BodyMeasure body) : Telling
    {
        public override ImmutableArray<Message> Sentences =>
            [.. Said(step.How), .. step.Work.Instructions(Facts), .. Said(step.Stage.Note)];

        private StepFacts Facts => new(step.Kind, step.Fluid, step.Volume, step.Changes, step.Vessel, BodyKind.Of(body), body.Count);

        private static ReadOnlySpan<Message> Said(Message words) => words.IsEmpty ? [] : new Message[] { words };
    }
}
