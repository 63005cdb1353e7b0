using Protocolist.Findings;
using Protocolist.Plans;
using Protocolist.Protocols;
using Protocolist.Specimens;
using Protocolist.Specimens.Fixation;
using UnitsNet;

namespace Protocolist.Planning;

/// <summary>The protocol's cuts, with the custom of the group where it does not say how many or how deep.</summary>
internal static class Cutting
{
    public static CutWork Plan(StageDefinition stage, BodyMeasure body, PlanInputs inputs, List<Finding> findings)
    {
        var places = stage.Texts("places");
        foreach (var place in places.Where(p => !body.Group.Regions.Any(r => r.IsNamed(p))))
            findings.Add(Finding.Warning("unknown-region", $"a {body.Group.Name} has no region '{place}' that is known", $"known here: {string.Join(", ", body.Group.Regions.Select(r => r.Id))}", stage.Find("places")!.Span) with { Subject = stage.Id });
        var spacing = LengthOf(stage, "spacing", inputs);
        var custom = CutPlan.For(body, spacing?.Millimeters).Value;
        var side = stage.Expression("side")?.Evaluate(inputs.AsFormulaInputs()).Word ?? "any";
        var count = StepDraft.Quantity(stage, "count", inputs) is { } number ? StepDraft.Whole(number) : 0;
        var cuts = places.DefaultIfEmpty("body").Select(p =>
        {
            var usual = custom?.Regions.FirstOrDefault(r => r.Region.IsNamed(p));
            return new PlannedCut(
                body.Group.Regions.FirstOrDefault(r => r.IsNamed(p))?.Name ?? p,
                count > 0 ? count : usual?.Count ?? 0,
                LengthOf(stage, "length", inputs) ?? Millimetres(usual?.LengthMm),
                LengthOf(stage, "depth", inputs) ?? Millimetres(usual?.DepthMm),
                spacing ?? (usual is { Count: > 1 } ? Millimetres(usual.SpacingMm) : null),
                side);
        });
        return new([.. cuts], custom is null ? null : custom with { Regions = [.. custom.Regions.Where(r => places.IsEmpty || places.Any(r.Region.IsNamed))] });
    }

    private static Length? LengthOf(StageDefinition stage, string key, PlanInputs inputs) =>
        StepDraft.Quantity(stage, key, inputs) is { IsFinite: true, Low: >= 0 } range ? Length.FromMeters(range.Middle) : null;

    private static Length? Millimetres(double? value) => value is > 0 ? Length.FromMillimeters(value.Value) : null;
}
