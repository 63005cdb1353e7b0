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
    private static readonly Phrase TooThin = new("too-thin-to-cut", "{parts} {n|is|are} thin enough for fluid to cross from outside: not cut");
    private static readonly Phrase TooThinRemedy = new("too-thin-to-cut.remedy", "nothing: a cut would only spoil it");

    /// <summary>The cuts; null where none is made.</summary>
    public static CutWork? Plan(StepDrafting step)
    {
        var (stage, body) = (step.Stage, step.Body);
        var wish = new CutWish(
            step.Length(StageKey.Length) is { } length ? (length.Low * 1e3, length.High * 1e3) : null,
            step.Length(StageKey.Depth)?.Middle * 1e3,
            step.Length(StageKey.Spacing)?.Middle * 1e3 is > 0 and var apart ? apart : null,
            step.Quantity(StageKey.Count) is { } number ? StageValues.Whole(number) : 0);
        var side = stage.Has(StageKey.Side) ? step.Word(StageKey.Side) : "any";
        var planned = ImmutableArray.CreateBuilder<PlannedCut>(Math.Max(stage.Places.Length, body.Regions.Length));
        var regions = ImmutableArray.CreateBuilder<RegionCuts>(planned.Capacity);
        List<Message>? thin = null;
        foreach (var place in stage.Places)
        {
            if (PartOf(place, body) is not { } part) planned.Add(Elsewhere(step, place, wish, side));
            else Add(part);
        }

        if (stage.Places.IsEmpty)
        {
            // Where the protocol names no place: the cavities that custom opens.
            foreach (var part in body.Regions)
            {
                if (part.Region.Cut is { OpensCavity: true }) Add(part);
            }

            if (planned.Count == 0) Add(Largest(body));
        }

        if (thin is not null && planned.Count == 0)
        {
            var message = TooThin.With(Argument.Messages("parts", thin), ("n", thin.Count));
            step.Findings.Add(Finding.Note("too-thin-to-cut", message, TooThinRemedy) with { Subject = stage.Id, Where = stage.Span });
        }

        return planned.Count == 0 ? null : new(planned.DrainToImmutable(), new() { Regions = regions.DrainToImmutable(), SpareSide = body.Group.SpareSide });

        void Add(in RegionMeasure part)
        {
            if (InjectionPlan.IsThin(part, body.Group))
            {
                (thin ??= []).Add(part.Region.Name);
                return;
            }

            var cut = CutPlan.Cut(part, body, wish);
            regions.Add(cut);
            planned.Add(new(
                part.Region.Name, cut.Count, Millimetres(cut.LengthMm), Millimetres(cut.DepthMm), cut.Count > 1 ? Spacing(cut, wish) : null, side)
            {
                IsThroughWall = cut.OpensCavity,
                IsShortened = cut.IsShortened,
            });
        }
    }

    /// <summary>A part that the group does not have: as the protocol says, and warned of.</summary>
    private static PlannedCut Elsewhere(StepDrafting step, string place, CutWish wish, string side)
    {
        var group = step.Body.Group;
        step.Findings.Add(Finding.Warning(
            "unknown-region",
            UnknownRegion.With(("group", group.Name), ("place", place)),
            Known.With(Argument.Ids("regions", group.Regions.Select(r => r.Id))),
            step.Stage.PlacesSpan) with
        { Subject = step.Stage.Id });
        return new(Message.Text(place), Math.Max(1, wish.Count), Millimetres(wish.LengthMm?.Low), Millimetres(wish.DepthMm), Millimetres(wish.SpacingMm), side);
    }

    /// <summary>So many cuts as the protocol says may lie apart as it says, or not at all in a row.</summary>
    private static Length? Spacing(RegionCuts cut, CutWish wish) => wish is { Count: > 0, SpacingMm: null } ? null : Millimetres(cut.SpacingMm);

    private static RegionMeasure? PartOf(string place, BodyMeasure body)
    {
        foreach (var part in body.Regions)
        {
            if (part.Region.IsNamed(place)) return part;
        }

        return null;
    }

    private static RegionMeasure Largest(BodyMeasure body)
    {
        var largest = body.Regions[0];
        foreach (var part in body.Regions)
        {
            if (part.Region.Share > largest.Region.Share) largest = part;
        }

        return largest;
    }

    private static Length? Millimetres(double? value) => value is > 0 ? Length.FromMillimeters(value.Value) : null;
}
