using Protocolist.Benches;
using Protocolist.Fluids.Safety;
using Protocolist.Planning.Provisioning;
using Protocolist.Plans;
using Protocolist.Protocols;
using Protocolist.Quantities;

namespace Protocolist.Planning;

/// <summary>A drafted step as it stands on the plan.</summary>
internal static class StepWriting
{
    public static Step Write(DraftStep step, Draft draft, Bench bench) => new()
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
        Cautions = [.. Cautions(step)],
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

    /// <summary>The protocol's own cautions, then those of the fluid, then of the work.</summary>
    private static IEnumerable<string> Cautions(DraftStep step)
    {
        foreach (var text in step.Stage.Texts("cautions")) yield return text;
        if (step.Fluid is { HasFormaldehyde: true } or { IsAlcohol: true })
        {
            var hazards = Hazards.Of(step.Fluid);
            yield return $"{hazards.SignalWord}: {string.Join("; ", hazards.Statements)}. The safety data sheet of your own bottle and local rules come first.";
        }

        if (step.Fluid is { HasFormaldehyde: true }) yield return "Work in a fume hood or outdoors, with gloves, goggles and an apron; eye wash within reach.";
        if (step.Fluid is { IsAlcohol: true }) yield return "No flame, spark or hot plate near; ventilate.";
        if (step.Kind is StageKind.Slit or StageKind.Inject) yield return "Blades and needles: cut and push away from yourself, never recap a needle, sharps into a sharps box.";
        if (step.Vessel is { } vessel && vessel.TotalMass.Kilograms > Vessels.Lifting.OnePerson.Kilograms)
            yield return $"Full it weighs {Measurable.Text(vessel.TotalMass.Kilograms, Dimension.OfMass)}: fill it where it stands, and do not lift it alone.";
    }
}
