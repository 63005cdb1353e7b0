using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Plans;
using Protocolist.Specimens;
using Protocolist.Specimens.Fixation;
using UnitsNet;

namespace Protocolist.Planning.Drafting;

/// <summary>The protocol's cuts, with the custom of the group where it does not say how many or how deep.</summary>
internal static class Cutting
{
    private static readonly Phrase UnknownRegion = new("unknown-region", "a {group} has no region '{place}' that is known");
    private static readonly Phrase Known = new("unknown-region.remedy", "known here: {regions}");

    public static CutWork Plan(StepDrafting step)
    {
        var (stage, group) = (step.Stage, step.Body.Group);
        foreach (var place in stage.Places)
        {
            if (RegionOf(place, group) is not null) continue;
            step.Findings.Add(Finding.Warning(
                "unknown-region",
                UnknownRegion.With(("group", group.Name), ("place", place)),
                Known.With(Argument.Ids("regions", group.Regions.Select(r => r.Id))),
                stage.PlacesSpan) with
            { Subject = stage.Id });
        }

        var spacing = LengthOf(step, StageKey.Spacing);
        var custom = CutPlan.For(step.Body, spacing?.Millimeters).Value;
        var side = stage.Has(StageKey.Side) ? step.Word(StageKey.Side) : "any";
        var count = step.Quantity(StageKey.Count) is { } number ? StageValues.Whole(number) : 0;
        var (length, depth) = (LengthOf(step, StageKey.Length), LengthOf(step, StageKey.Depth));
        ImmutableArray<string> places = stage.Places.IsEmpty ? ["body"] : stage.Places;
        var cuts = ImmutableArray.CreateBuilder<PlannedCut>(places.Length);
        foreach (var place in places)
        {
            var usual = custom is null ? null : CutsOf(place, custom);
            cuts.Add(new PlannedCut(
                RegionOf(place, group)?.Name ?? Message.Text(place),
                count > 0 ? count : usual?.Count ?? 0,
                length ?? Millimetres(usual?.LengthMm),
                depth ?? Millimetres(usual?.DepthMm),
                spacing ?? (usual is { Count: > 1 } ? Millimetres(usual.SpacingMm) : null),
                side));
        }

        return new(
            cuts.MoveToImmutable(),
            custom is null ? null : custom with { Regions = [.. custom.Regions.Where(r => stage.Places.IsEmpty || stage.Places.Any(r.Region.IsNamed))] });
    }

    private static RegionCuts? CutsOf(string place, CutPlan custom)
    {
        foreach (var cuts in custom.Regions)
        {
            if (cuts.Region.IsNamed(place)) return cuts;
        }

        return null;
    }

    private static BodyRegion? RegionOf(string place, TaxonGroup group)
    {
        foreach (var region in group.Regions)
        {
            if (region.IsNamed(place)) return region;
        }

        return null;
    }

    private static Length? LengthOf(StepDrafting step, StageKey key) => step.Length(key) is { } range ? Length.FromMeters(range.Middle) : null;

    private static Length? Millimetres(double? value) => value is > 0 ? Length.FromMillimeters(value.Value) : null;
}
