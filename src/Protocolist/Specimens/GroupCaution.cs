using System.Collections.Immutable;
using Protocolist.Findings;

namespace Protocolist.Specimens;

/// <summary>Something that whoever handles an animal of a group must know: disease, venom, law.</summary>
/// <param name="Id">A kebab-case id such as <c>rabies</c> or <c>cites</c>.</param>
/// <param name="IsLegal">True where it is about the law, false where it is about health.</param>
/// <param name="Text">What it is, and what it asks for. Local law and licensed practice come first.</param>
/// <param name="Source">Who says so.</param>
public sealed record GroupCaution(string Id, bool IsLegal, Phrase Text, string Source)
{
    /// <summary>The finer groups that it is of: whoever names another finer group is spared it. Empty where it is of all.</summary>
    internal ImmutableArray<string> Of { get; init; } = [];
}
