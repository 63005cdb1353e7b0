using System.Collections.Immutable;

namespace Protocolist.Findings;

/// <summary>What is to be said: a phrase and this case's facts. Its words are made when somebody reads. <c>default</c> says nothing.</summary>
/// <remarks>Two messages are equal when they say the same phrase of the same facts, whatever the language.</remarks>
public readonly struct Message : IEquatable<Message>
{
    private readonly Argument[]? _arguments;

    internal Message(Phrase phrase, Argument[] arguments) => (Phrase, _arguments) = (phrase, arguments);

    /// <summary>The phrase; null where nothing is said.</summary>
    public Phrase? Phrase { get; }

    /// <summary>The facts.</summary>
    public ImmutableArray<Argument> Arguments => System.Runtime.InteropServices.ImmutableCollectionsMarshal.AsImmutableArray(_arguments ?? []);

    /// <summary>Whether nothing is said.</summary>
    public bool IsEmpty => Phrase is null || (Phrase.Id.Length == 0 && Phrase.English.Length == 0);

    /// <summary>Text that is somebody's own, to be said as it stands in any language.</summary>
    /// <param name="own">The text; blank says nothing.</param>
    /// <returns>The message.</returns>
    public static Message Text(string own)
    {
        ArgumentNullException.ThrowIfNull(own);
        return string.IsNullOrWhiteSpace(own) ? default : new(OwnText, [("text", own)]);
    }

    /// <summary>The fact of that name; null where there is none.</summary>
    /// <param name="name">A place of the phrase.</param>
    /// <returns>The fact.</returns>
    public Argument? Find(string name)
    {
        foreach (var argument in _arguments ?? [])
        {
            if (string.Equals(argument.Name, name, StringComparison.Ordinal)) return argument;
        }

        return null;
    }

    /// <summary>The words in English.</summary>
    /// <returns>Text; empty where nothing is said.</returns>
    public override string ToString() => ToString(Language.English);

    /// <summary>The words in a language; in English where it has none for the phrase.</summary>
    /// <param name="language">The language.</param>
    /// <returns>Text; empty where nothing is said.</returns>
    public string ToString(Language language)
    {
        ArgumentNullException.ThrowIfNull(language);
        if (Phrase is null) return "";
        return ReferenceEquals(Phrase, OwnText) ? Find("text")?.Text ?? "" : Template.Fill(language.Of(Phrase), this, language);
    }

    /// <inheritdoc/>
    public bool Equals(Message other) =>
        string.Equals(Phrase?.Id, other.Phrase?.Id, StringComparison.Ordinal)
        && (ReferenceEquals(Phrase, other.Phrase)
            || Phrase is not { Id.Length: 0 }
            || string.Equals(Phrase.English, other.Phrase!.English, StringComparison.Ordinal))
        && (_arguments ?? []).AsSpan().SequenceEqual(other._arguments ?? []);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is Message other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        var hash = new HashCode();
        hash.Add(Phrase?.Id, StringComparer.Ordinal);
        foreach (var argument in _arguments ?? []) hash.Add(argument);
        return hash.ToHashCode();
    }

    /// <summary>Same phrase, same facts.</summary><param name="a">One.</param><param name="b">Other.</param><returns>Whether they are equal.</returns>
    public static bool operator ==(Message a, Message b) => a.Equals(b);

    /// <summary>Other phrase or other facts.</summary><param name="a">One.</param><param name="b">Other.</param><returns>Whether they differ.</returns>
    public static bool operator !=(Message a, Message b) => !a.Equals(b);

    internal static readonly Phrase OwnText = new("own-text", "{text}");
}
