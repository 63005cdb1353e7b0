using System.Collections.Immutable;
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
        return new(Stage(id, kind, Title(remedy), Sentence(meaning), host)) { Fluid = fluid, Volume = volume, Least = HandsOn(remedy), Most = HandsOn(remedy), HandsOn = HandsOn(remedy) };
    }

    public static StageDefinition Stage(string id, StageKind kind, string title, string how, DraftStep host)
    {
        var settings = ImmutableArray.Create<Setting>(new TextSetting("title", [title], host.Span), new TextSetting("how", [how], host.Span));
        if (host.Stage.Source.Length > 0) settings = settings.Add(new TextSetting("source", [host.Stage.Source], host.Span));
        return new(kind, id, settings, host.Span);
    }

    /// <summary>How long somebody is busy; common practice.</summary>
    private static Duration HandsOn(string remedy) => Duration.FromMinutes(remedy switch
    {
        "re-inject" or "slit-and-inject" or "ask" => 30,
        "press-out-air" or "weigh-down" => 20,
        _ => 15,
    });

    private static string Title(string remedy) => remedy switch
    {
        "re-inject" => "Inject the soft part again",
        "slit-and-inject" => "Slit the swollen part and inject it again",
        "press-out-air" => "Press the air out",
        "weigh-down" => "Weigh it down",
        "change-fluid" => "Change the fluid",
        "skim-and-change" => "Skim the oil off and change the fluid",
        "restore-strength" => "Restore the strength",
        "weaker-step" => "Go back to a weaker strength",
        _ => "Stop and ask",
    };

    private static string Sentence(string text) => $"{char.ToUpperInvariant(text[0])}{text[1..]}.";
}
