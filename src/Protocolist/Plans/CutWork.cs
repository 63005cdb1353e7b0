using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Specimens;
using Protocolist.Specimens.Fixation;

namespace Protocolist.Plans;

/// <summary>Cutting so that fluid gets in.</summary>
/// <param name="Cuts">Where and how.</param>
/// <param name="Opens">What the cuts open, for working out how far fixative has to go.</param>
internal sealed record CutWork(ImmutableArray<PlannedCut> Cuts, CutPlan Opens) : StepWork
{
    private static readonly Phrase Cut = new("slit.cut", "{region}: {cuts}{size}{side}.");
    private static readonly Phrase Counted = new("slit.counted", "{count} {count|cut|cuts}");
    private static readonly Phrase Size = new("slit.size", " {parts}");
    private static readonly Phrase Long = new("slit.long", "{length} long");
    private static readonly Phrase Third = new("slit.third", "{length} long (a third of the part; more would gape)");
    private static readonly Phrase Through = new("slit.through", "through the wall alone, about {depth} thick here");
    private static readonly Phrase Lift = new(
        "slit.lift", "Lift the wall with forceps and cut it with blunt scissors held flat, so that the organs behind it stay whole.");
    private static readonly Phrase Deep = new("slit.deep", "{depth} deep");
    private static readonly Phrase Every = new("slit.every", "every {spacing}");
    private static readonly Phrase OnSide = new("slit.on-side", ", on the {side} side");
    private static readonly Phrase OnThe = new("slit.on-the", ", on the {side}");

    public override IEnumerable<Message> Instructions(StepFacts step)
    {
        var isSoft = step.Body != BodyKind.Shelled && step.Body != BodyKind.Armoured;
        return isSoft && Cuts.Any(c => c is { IsThroughWall: true, Depth: not null }) ? [.. Cuts.Select(Told), Lift] : Cuts.Select(Told);
    }

    private static Message Told(PlannedCut cut)
    {
        var parts = new List<Message>(3);
        if (cut.Length is { } length) parts.Add((cut.IsShortened ? Third : Long).With(("length", length)));
        if (cut.Depth is { } depth) parts.Add((cut.IsThroughWall ? Through : Deep).With(("depth", depth)));
        if (cut.Spacing is { } spacing) parts.Add(Every.With(("spacing", spacing)));
        return Cut.With(
            ("region", cut.Region),
            ("cuts", Counted.With(("count", cut.Count))),
            ("size", parts.Count > 0 ? Size.With(Argument.Messages("parts", parts)) : default),
            ("side", cut.Side switch { "any" => default, "left" or "right" => OnSide.With(("side", cut.Side)), _ => OnThe.With(("side", cut.Side)) }));
    }
}
