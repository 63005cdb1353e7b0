using System.Collections.Immutable;
using Protocolist.Findings;

namespace Protocolist.Protocols;

/// <summary>A sign that a soaking body shows: its word in protocols and logs, and what the eye or hand finds.</summary>
internal sealed record Sign(string Word, Phrase Meaning)
{
    /// <summary>The fluid reads more acid than it should.</summary>
    public static readonly Sign Acid = new("acid", "the fluid reads more acid than it should");

    private Sign(string word, string meaning)
        : this(word, new Phrase($"sign.{word}", meaning))
    {
    }

    public static ImmutableArray<Sign> All { get; } =
    [
        new("soft", "a part still gives under the finger"),
        new("bloated", "a part is swollen with gas"),
        new("floating", "the body floats"),
        new("bloody", "the fluid is red or brown"),
        new("cloudy", "the fluid is cloudy"),
        new("oily", "oil stands on the fluid"),
        new("smelling", "it smells of rot"),
        new("dry", "a part stands out of the fluid"),
        new("shrunken", "the body is wrinkled or shrunken"),
        new("slipping", "skin, scales or hair come away"),
        new("weak", "the fluid reads weaker than it should"),
        Acid,
    ];

    public static Sign? Find(string word) => All.FirstOrDefault(s => s.Word == word);
}
