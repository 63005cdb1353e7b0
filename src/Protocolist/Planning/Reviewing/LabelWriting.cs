using System.Collections.Immutable;
using NodaTime;
using NodaTime.Text;
using Protocolist.Planning.Drafting;

namespace Protocolist.Planning.Reviewing;

/// <summary>What stands on the labels, inside and outside: at least name, date, place and collector. Dates in ISO form.</summary>
internal static class LabelWriting
{
    private const string Missing = "(not known)";

    public static ImmutableArray<string> Lines(Draft draft, DateTimeZone zone)
    {
        var specimen = draft.Body.Specimen;
        var lines = new List<string>
        {
            $"No. {specimen.Id}{(specimen.Count > 1 ? $" ({specimen.Count} animals)" : "")}",
            specimen.ScientificName ?? $"{draft.Body.Group.Name}, not identified",
            $"found {Date(specimen.FoundOn) ?? Date(specimen.DiedAt?.InZone(zone).Date) ?? Missing}",
            specimen.Where ?? Missing,
            $"collected by {specimen.CollectedBy ?? Missing}",
        };
        foreach (var step in draft.Steps.Where(s => s.Fluid is { HasFormaldehyde: true } && s.Kind == StageKind.Immerse))
            lines.Add($"fixed in {step.Fluid!.Name}{(Date(step.When?.Start.InZone(zone).Date) is { } on ? $", {on}" : "")}");
        if (draft.Steps.LastOrDefault(s => s.Kind == StageKind.House && s.Fluid is not null) is { } house)
        {
            lines.Add($"kept in {house.Fluid!.Name}{(Date(house.When?.Start.InZone(zone).Date) is { } on ? $", {on}" : "")}");
            if (house.Fluid.HasFormaldehyde) lines.Add("FORMALIN");
        }

        return [.. lines];
    }

    private static string? Date(LocalDate? date) => date is { } on ? LocalDatePattern.Iso.Format(on) : null;
}
