using Protocolist.Findings;
using Protocolist.Planning.Drafting;
using Protocolist.Plans;
using Protocolist.Protocols;
using UnitsNet;

namespace Protocolist.Planning.Revising;

/// <summary>A remedy in the form of a step.</summary>
internal static class RemedyStep
{
    private static readonly Phrase How = new("remedy.how", "{meaning:sentence}");

    public static DraftStep Of(string id, Remedy remedy, DraftStep host, Volume? volume)
    {
        var injects = remedy.Effect == RemedyEffect.Injection;
        return new(Stage(id, injects ? StageKind.Inject : StageKind.Task, host))
        {
            Title = remedy.Title,
            How = How.With(("meaning", remedy.Meaning)),
            Work = injects ? new InjectWork([], null) : PlainWork.Instance,
            Fluid = volume is null ? null : host.Fluid,
            Volume = volume,
            Least = remedy.HandsOn,
            Most = remedy.HandsOn,
            HandsOn = remedy.HandsOn,
        };
    }

    /// <summary>A stage that no protocol has: its title and words are those of the remedy, its source is its host's.</summary>
    public static PreparedStage Stage(string id, StageKind kind, DraftStep host) =>
        PreparedStage.From(new(kind, id, host.Stage.Source.Length > 0 ? [new TextSetting("source", [host.Stage.Source], host.Span)] : [], host.Span));
}
