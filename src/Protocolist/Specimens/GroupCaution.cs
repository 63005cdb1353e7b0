using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using Protocolist.Findings;

namespace Protocolist.Specimens;

/// <summary>Something that whoever handles an animal of a group must know: disease, venom, law.</summary>
/// <param name="Id">A kebab-case id such as <c>rabies</c> or <c>cites</c>.</param>
/// <param name="IsLegal">True where it is about the law, false where it is about health.</param>
/// <param name="Text">What it is, and what it asks for. Local law and licensed practice come first.</param>
/// <param name="Source">Who says so.</param>
/// <exception cref="ArgumentException">Id, text or source is null, or empty.</exception>
public sealed record GroupCaution(string Id, bool IsLegal, Phrase Text, string Source)
{
    /// <summary>A kebab-case id such as <c>rabies</c> or <c>cites</c>.</summary>
    public string Id { get; init => field = Given(value); } = Given(Id);

    /// <summary>What it is, and what it asks for. Local law and licensed practice come first.</summary>
    public Phrase Text { get; init => field = value ?? throw new ArgumentNullException(nameof(value)); } =
        Text ?? throw new ArgumentNullException(nameof(Text));

    /// <summary>Who says so.</summary>
    public string Source { get; init => field = Given(value); } = Given(Source);

    private static string Given(string text, [CallerArgumentExpression(nameof(text))] string name = "")
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(text, name);
        return text;
    }

    /// <summary>The finer groups that it is of: whoever names another finer group is spared it. Empty where it is of all.</summary>
    internal ImmutableArray<string> Of { get; init; } = [];
}
