using System.Collections.Immutable;
using NodaTime;
using Protocolist.Checks.Labels;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Planning.Drafting;
using Protocolist.Plans;

namespace Protocolist.Planning.Reviewing;

/// <summary>What stands on the labels, inside and outside: at least name, date, place and collector. Dates in ISO form.</summary>
internal static class LabelWriting
{
    private static readonly Phrase Number = new("label-line.number", "No. {number}");
    private static readonly Phrase NumberOfLot = new("label-line.number-of-lot", "No. {number} ({count} animals)");
    private static readonly Phrase NumberLess = new(
        "label-line.number-less", "No. {number} ({left} {left|animal|animals}, {taken} more in a tube for DNA)");
    private static readonly Phrase NotIdentified = new("label-line.not-identified", "{group}, not identified");
    private static readonly Phrase Found = new("label-line.found", "found {date:day}");
    private static readonly Phrase Collected = new("label-line.collected", "collected by {collector}");
    private static readonly Phrase FixedIn = new("label-line.fixed-in", "fixed in {fluid}{on}");
    private static readonly Phrase KeptIn = new("label-line.kept-in", "kept in {fluid}{on}");
    private static readonly Phrase On = new("label-line.on", ", {date:day}");
    private static readonly Phrase NotKnown = new("label-line.not-known", "(not known)");

    public static ImmutableArray<Message> Lines(Draft draft, DateTimeZone zone)
    {
        var specimen = draft.Body.Specimen;
        var lines = new List<Message>
        {
            TakenWhole(draft) is > 0 and var taken
                ? NumberLess.With(("number", specimen.Id), ("left", specimen.Count - taken), ("taken", taken))
                : specimen.Count > 1 ? NumberOfLot.With(("number", specimen.Id), ("count", specimen.Count)) : Number.With(("number", specimen.Id)),
            specimen.ScientificName is { } name ? Message.Text(name) : NotIdentified.With(("group", draft.Body.Group.Name)),
            Found.With((specimen.FoundOn ?? specimen.DiedAt?.InZone(zone).Date) is { } date ? ("date", date) : ("date", NotKnown)),
            specimen.Where is { } where ? Message.Text(where) : NotKnown,
            Collected.With(specimen.CollectedBy is { } collector ? ("collector", collector) : ("collector", NotKnown)),
        };
        var fixatives = new List<Fluid>();
        foreach (var step in draft.Steps)
        {
            if (step is not { Fluid: { HasFormaldehyde: true } fixative, Kind: StageKind.Immerse } || fixatives.Contains(fixative)) continue;
            fixatives.Add(fixative);
            lines.Add(In(FixedIn, step));
        }

        if (draft.Steps.LastOrDefault(s => s.Kind == StageKind.House && s.Fluid is not null) is { } house)
        {
            lines.Add(In(KeptIn, house));
            if (house.Fluid!.HasFormaldehyde) lines.Add(FormalinFlag.Line);
        }

        return [.. lines];

        // What went into a tube whole is not in the jar.
        static int TakenWhole(Draft draft) =>
            draft.Steps.Sum(s => s.Work is SampleWork { Tissue: { IsWhole: true, Animals: var animals } } ? animals : 0);

        Message In(Phrase line, DraftStep step) =>
            line.With(("fluid", step.Fluid!.Name), ("on", step.When is { } when ? On.With(("date", when.Start.InZone(zone).Date)) : default));
    }
}
