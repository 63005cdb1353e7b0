using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Protocols;
using Protocolist.Quantities;
using Protocolist.Specimens;
using Protocolist.Vessels;
using UnitsNet;

namespace Protocolist.Plans;

/// <summary>What is done in a step, by its kind: a closed union. Its facts are the planner's; its sentences are made when somebody reads.</summary>
internal abstract record StepWork
{
    private protected StepWork()
    {
    }

    /// <summary>What to do, sentence by sentence, with this specimen's numbers.</summary>
    /// <param name="step">What the work shares with every step.</param>
    public abstract IEnumerable<Message> Instructions(StepFacts step);
}

/// <summary>What the sentences of any kind of work may need of their step.</summary>
/// <param name="Kind">The kind of stage.</param>
/// <param name="Fluid">The fluid, where there is one.</param>
/// <param name="Volume">One filling of it.</param>
/// <param name="Changes">How often it is replaced.</param>
/// <param name="Vessel">The vessel and how it is filled.</param>
/// <param name="Body">How the body is handled.</param>
/// <param name="Animals">How many there are of it.</param>
internal readonly record struct StepFacts(StageKind Kind, Fluid? Fluid, Volume? Volume, int Changes, FittedVessel? Vessel, BodyKind Body, int Animals);

/// <summary>Work of which the protocol says all there is to say.</summary>
internal sealed record PlainWork : StepWork
{
    public static PlainWork Instance { get; } = new();

    public override IEnumerable<Message> Instructions(StepFacts step) => [];
}

/// <summary>Keeping cold.</summary>
/// <param name="Temperature">At what temperature; null where the protocol says only cold.</param>
internal sealed record HoldWork(QuantityRange? Temperature) : StepWork
{
    private static readonly Phrase KeepAt = new("hold.at", "Keep it at {temperature}.");
    private static readonly Phrase KeepCold = new("hold.cold", "Keep it cold.");

    public override IEnumerable<Message> Instructions(StepFacts step) => [Temperature is { } at ? KeepAt.With(("temperature", at)) : KeepCold];
}

/// <summary>Setting the posture.</summary>
/// <param name="IsTold">Whether the protocol says how.</param>
internal sealed record PoseWork(bool IsTold) : StepWork
{
    private static readonly Phrase ByKind = new("pose.by-kind", "{how:sentence}");

    /// <summary>The posture that the vessels were chosen for.</summary>
    public SetPosture? Posture { get; init; }

    public static PoseWork Told { get; } = new(IsTold: true);

    public static PoseWork Untold { get; } = new(IsTold: false);

    public override IEnumerable<Message> Instructions(StepFacts step) =>
        [.. Posture?.Told ?? [], .. IsTold ? [] : (Message[])[ByKind.With(("how", step.Body.Pose))]];
}

/// <summary>The posture that was decided on: what the step that sets it tells, and what every vessel from there on was chosen for.</summary>
/// <param name="Body">The body in it.</param>
/// <param name="Why">Why it is not the customary one; nothing where it is.</param>
internal sealed record SetPosture(PosedBody Body, Message Why)
{
    /// <summary>The word and the layers by which a plan keeps it; null where it could not be otherwise.</summary>
    public string? Kept { get; init; }

    private static readonly Phrase How = new("pose.posture", "{how:sentence}");
    private static readonly Phrase Layered = new("pose.coil", "{how}; {layers} {layers|layer|layers}, {across:0 mm} across");

    /// <summary>What is done, and why; nothing where nothing is done.</summary>
    public ImmutableArray<Message> Told => Body.Posture.IsLeft ? [] : Why.IsEmpty ? [How.With(("how", Done))] : [How.With(("how", Done)), Why];

    private Message Done => Body.Layers == 0
        ? Body.Posture.Told
        : Layered.With(("how", Body.Posture.Told), ("layers", Body.Layers), ("across", Body.Length));
}

/// <summary>Labels.</summary>
/// <param name="Fields">What they say, in the protocol's words.</param>
/// <param name="WrittenWith">What the protocol writes them with; null where it leaves that to custom.</param>
internal sealed record LabelWork(ImmutableArray<string> Fields, LabelMedium? WrittenWith) : StepWork
{
    private static readonly Phrase Field = new("label.field", "Label: {field}.");
    private static readonly Phrase Media = new("label.media", "One label inside in the fluid, one outside; {medium} on cotton-rag paper.");
    private static readonly Phrase ByCustom = new("label.media.by-custom", "soft pencil or carbon ink");

    public override IEnumerable<Message> Instructions(StepFacts step) =>
        [.. Fields.Select(f => Field.With(("field", f))), Media.With(("medium", WrittenWith?.Name ?? ByCustom))];
}

/// <summary>Seeing to spent fluid.</summary>
/// <param name="Of">The stage whose fluid it is; empty where the protocol does not say.</param>
/// <param name="To">Where the protocol sends it; null where it does not say.</param>
internal sealed record DiscardWork(string Of, SpentTo? To) : StepWork
{
    private static readonly Phrase Spent = new("discard", "{of}: {to}.");
    private static readonly Phrase SpentFluid = new("discard.spent-fluid", "The spent fluid");
    private static readonly Phrase ByBench = new("discard.by-bench", "{way}, {destination}");

    /// <summary>What this bench does with it; null where it does not say.</summary>
    public PlannedWaste? Routed { get; init; }

    /// <summary>Whether it goes down the drain.</summary>
    public bool IsDrained => (Routed?.Way ?? To?.Way) == WasteWay.DrainedWhereAllowed;

    public override IEnumerable<Message> Instructions(StepFacts step)
    {
        var to = Routed is { } routed ? ByBench.With(("way", routed.WayWords), ("destination", routed.Destination)) : To?.Name ?? default(Message);
        return to.IsEmpty ? [] : [Spent.With(Of.Length > 0 ? ("of", Of) : ("of", SpentFluid), ("to", to))];
    }
}

/// <summary>Rounds after sealing: looking, testing, topping up.</summary>
/// <param name="After">How long after sealing it comes first.</param>
/// <param name="Every">The rhythm.</param>
internal sealed record CareWork(QuantityRange? After, QuantityRange? Every) : StepWork
{
    public override IEnumerable<Message> Instructions(StepFacts step) => [];
}
