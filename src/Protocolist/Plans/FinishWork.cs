using Protocolist.Findings;
using Protocolist.Protocols;
using Protocolist.Vessels;
using Duration = NodaTime.Duration;

namespace Protocolist.Plans;

/// <summary>Holding the body in its final vessel.</summary>
/// <param name="On">What the protocol ties it to; null where it leaves that to the planner.</param>
internal sealed record MountWork(Support? On) : StepWork
{
    private static readonly Phrase HeldBy = new("mount.held-by", "It is held by: {on}.");
    private static readonly Phrase Reason = new("mount.reason", "{reason:sentence}");
    private static readonly Phrase Needed = new("mount.needed", "Needed: {things}.");

    /// <summary>Whether the protocol names what holds it.</summary>
    public bool IsGiven => On is not null && On != Support.Nothing;

    /// <summary>What suits this body in its vessel; null where neither is known.</summary>
    public Mount? Chosen { get; init; }

    public override IEnumerable<Message> Instructions(StepFacts step)
    {
        if (IsGiven)
        {
            yield return HeldBy.With(("on", On!.Name));
            yield break;
        }

        if (Chosen is not { } mount) yield break;
        yield return Reason.With(("reason", mount.Reason));
        foreach (var sentence in mount.Steps) yield return sentence;
        if (!mount.Materials.IsEmpty) yield return Needed.With(Argument.Messages("things", mount.Materials));
    }
}

/// <summary>Closing the final vessel.</summary>
/// <param name="With">What the protocol closes it with; null where it does not say.</param>
/// <param name="Renew">When the closure is renewed.</param>
internal sealed record SealWork(Sealing? With, Quantities.QuantityRange? Renew) : StepWork
{
    private static readonly Phrase CloseWith = new("seal.close-with", "Close with: {closure}.");
    private static readonly Phrase Reason = new("seal.reason", "{reason:sentence}");
    private static readonly Phrase Cure = new("seal.cure", "Leave it to cure open for {time:0 h} before the lid goes on for good.");
    private static readonly Phrase Port = new("seal.port", "{advice:sentence}");

    /// <summary>How the chosen vessel is closed; null where none is known.</summary>
    public VesselClosing? Chosen { get; init; }

    public override IEnumerable<Message> Instructions(StepFacts step)
    {
        if (Chosen is not { } closing)
        {
            if (With is { } sealing) yield return CloseWith.With(("closure", sealing.Name));
            yield break;
        }

        yield return Reason.With(("reason", closing.Way.Reason));
        foreach (var sentence in closing.Way.Steps) yield return sentence;
        if (closing.Way.CuresOpen > Duration.Zero) yield return Cure.With(("time", closing.Way.CuresOpen));
        if (closing.Port is { } port) yield return Port.With(("advice", port.Advice));
    }
}
