using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Planning.Drafting;
using Protocolist.Plans;
using Protocolist.Protocols;
using UnitsNet;
using Duration = NodaTime.Duration;

namespace Protocolist.Planning.Revising;

/// <summary>A remedy in the form of a step.</summary>
internal static class RemedyStep
{
    public static DraftStep Of(string id, string remedy, DraftStep host, Volume? volume)
    {
        var kind = remedy is "re-inject" or "slit-and-inject" ? StageKind.Inject : StageKind.Task;
        var fluid = volume is null ? null : host.Fluid;
        var meaning = Array.Find(WatchWords.Remedies, r => r.Word == remedy).Meaning;
        return new(Stage(id, kind, host)) { Title = Title(remedy), How = How.With(("meaning", meaning)), Work = kind == StageKind.Inject ? new InjectWork([], null) : PlainWork.Instance, Fluid = fluid, Volume = volume, Least = HandsOn(remedy), Most = HandsOn(remedy), HandsOn = HandsOn(remedy) };
    }

    private static readonly Phrase How = new("remedy.how", "{meaning:sentence}");

    /// <summary>A stage that no protocol has: its title and words are those of the remedy, its source is its host's.</summary>
    public static PreparedStage Stage(string id, StageKind kind, DraftStep host) =>
        PreparedStage.From(new(kind, id, host.Stage.Source.Length > 0 ? [new TextSetting("source", [host.Stage.Source], host.Span)] : [], host.Span));

    /// <summary>How long somebody is busy; common practice.</summary>
    private static Duration HandsOn(string remedy) => Duration.FromMinutes(remedy switch
    {
        "re-inject" or "slit-and-inject" or "ask" => 30,
        "press-out-air" or "weigh-down" => 20,
        _ => 15,
    });

    private static readonly ImmutableDictionary<string, Phrase> Titles = new (string Word, string English)[]
    {
        ("re-inject", "Inject the soft part again"),
        ("slit-and-inject", "Slit the swollen part and inject it again"),
        ("press-out-air", "Press the air out"),
        ("weigh-down", "Weigh it down"),
        ("change-fluid", "Change the fluid"),
        ("skim-and-change", "Skim the oil off and change the fluid"),
        ("restore-strength", "Restore the strength"),
        ("weaker-step", "Go back to a weaker strength"),
    }.ToImmutableDictionary(t => t.Word, t => new Phrase($"remedy.{t.Word}", t.English), StringComparer.Ordinal);

    private static readonly Phrase Ask = new("remedy.ask", "Stop and ask");

    private static Phrase Title(string remedy) => Titles.GetValueOrDefault(remedy, Ask);
}
