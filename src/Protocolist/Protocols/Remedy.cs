using System.Collections.Immutable;
using NodaTime;
using Protocolist.Findings;
using Protocolist.Specimens;

namespace Protocolist.Protocols;

/// <summary>
/// What is done about a sign: its word in protocols, what it means, what the step is called, how long somebody is busy with it, and what it does to the
/// plan.
/// </summary>
/// <remarks>The minutes are common practice.</remarks>
internal sealed record Remedy(string Word, Phrase Meaning, Phrase Title, Duration HandsOn, RemedyEffect Effect)
{
    public static readonly Remedy ChangeFluid = Of(
        "change-fluid",
        "replace the fluid with fresh fluid of the same kind and buffering",
        "Change the fluid",
        15,
        RemedyEffect.FreshFluid);

    public static readonly Remedy RestoreStrength = Of(
        "restore-strength",
        "measure the strength and restore it",
        "Restore the strength",
        15,
        RemedyEffect.Task);

    public static readonly Remedy WeakerStep = Of(
        "weaker-step",
        "go back to a weaker strength and climb in smaller steps",
        "Go back to a weaker strength",
        15,
        RemedyEffect.WeakerBath);

    public static readonly Remedy Ask = Of("ask", "stop and ask an experienced preparator", "Stop and ask", 30, RemedyEffect.Task);

    public static ImmutableArray<Remedy> All { get; } =
    [
        Of(
            "re-inject",
            "cut the soft part open a little and inject it at once, and soak on",
            "Inject the soft part",
            30,
            RemedyEffect.Injection) with { Gestures = Gestures.Cut | Gestures.Inject, Gentler = "prolong" },
        Of(
            "slit-and-inject",
            "slit the swollen part, let the gas out, and inject it at once",
            "Slit the swollen part and inject it",
            30,
            RemedyEffect.Injection) with { Gestures = Gestures.Cut | Gestures.Inject, Gentler = "change-fluid" },
        Of(
            "press-out-air",
            "hold it under; if it floats still after a day, open a small cut and press it under the fluid until no more air comes",
            "Press the air out",
            20,
            RemedyEffect.Task) with
        {
            Gestures = Gestures.Cut | Gestures.Press, Gentler = "hold-under",
        },
        Of("weigh-down", "weigh the body down with glass or stainless steel so that all of it is under", "Weigh it down", 20, RemedyEffect.Task),
        Of(
            "hold-under",
            "bring what floats under again without force: wet it, turn it, lay gauze or a net over it",
            "Bring it under again",
            15,
            RemedyEffect.Task),
        ChangeFluid,
        Of(
            "skim-and-change",
            "skim the oil off and replace the fluid with fresh fluid of the same kind",
            "Skim the oil off and change the fluid",
            15,
            RemedyEffect.FreshFluid),
        RestoreStrength,
        Of("prolong", "leave it longer and look again", "Leave it longer", 0, RemedyEffect.LongerSoak),
        WeakerStep,
        Ask,
    ];

    /// <summary>What it does to the body.</summary>
    public Gestures Gestures { get; private init; }

    /// <summary>The word of what is done in its place where a kind of body forbids that.</summary>
    private string Gentler { get; init; } = "";

    /// <summary>The remedy, or what is done in its place to a body that forbids it.</summary>
    public Remedy For(Gestures forbidden) => (Gestures & forbidden) == 0 ? this : Find(Gentler)!;

    public static Remedy? Find(string word) => All.FirstOrDefault(r => r.Word == word);

    private static Remedy Of(string word, string meaning, string title, int minutes, RemedyEffect effect) =>
        new(word, new($"remedy.{word}.meaning", meaning), new($"remedy.{word}", title), Duration.FromMinutes(minutes), effect);
}

/// <summary>What a remedy does to the steps of a plan.</summary>
internal enum RemedyEffect
{
    /// <summary>A piece of work, no more.</summary>
    Task,

    /// <summary>An injection, with its dose.</summary>
    Injection,

    /// <summary>The fluid is replaced once more.</summary>
    FreshFluid,

    /// <summary>The soak lasts longer.</summary>
    LongerSoak,

    /// <summary>Back to a weaker alcohol and up again; where the fluid is none, a piece of work.</summary>
    WeakerBath,
}
