using System.Collections.Immutable;
using Protocolist.Findings;

namespace Protocolist.Protocols;

/// <summary>A sign that a soaking body shows: its word in protocols and logs, and what the eye or hand finds.</summary>
internal sealed record Sign(string Word, Phrase Meaning)
{
    /// <summary>The fluid reads more acid than it should.</summary>
    public static readonly Sign Acid = new("acid", "the fluid reads more acid than it should", "change-fluid");

    private Sign(string word, string meaning, string usual)
        : this(word, new Phrase($"sign.{word}", meaning)) => Usual = usual;

    /// <summary>The word of what is done about it where a protocol does not say; common practice.</summary>
    public string Usual { get; private init; } = "change-fluid";

    public static ImmutableArray<Sign> All { get; } =
    [
        new("soft", "a part still gives under the finger", "re-inject"),
        new("bloated", "a part is swollen with gas", "slit-and-inject"),
        new("floating", "the body floats", "press-out-air"),
        new("bloody", "the fluid is red or brown", "change-fluid"),
        new("cloudy", "the fluid is cloudy", "change-fluid"),
        new("oily", "oil stands on the fluid", "skim-and-change"),
        new("smelling", "it smells of rot", "change-fluid"),
        new("dry", "a part stands out of the fluid", "hold-under"),
        new("shrunken", "the body is wrinkled or shrunken", "ask"),
        new("slipping", "skin, scales or hair come away", "prolong"),
        new("weak", "the fluid reads weaker than it should", "restore-strength"),
        Acid,
    ];

    public static Sign? Find(string word) => All.FirstOrDefault(s => s.Word == word);
}
