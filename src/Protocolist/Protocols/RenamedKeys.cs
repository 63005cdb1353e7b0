using System.Collections.Frozen;

namespace Protocolist.Protocols;

/// <summary>Keys by names that they had in drafts of the format, or that other people's files have, each with the name it has now.</summary>
internal static class RenamedKeys
{
    public static readonly FrozenDictionary<string, string> OfProtocols = new Dictionary<string, string>
    {
        ["steps"] = "stages",
        ["class"] = "for",
        ["variables"] = "values",
        ["options"] = "choices",
        ["references"] = "sources",
        ["warnings"] = "cautions",
        ["version"] = "revision",
        ["name"] = "title",
        ["id"] = "protocol",
        ["tests"] = "examples",
        ["base"] = "extends",
        ["inherits"] = "extends",
        ["description"] = "summary",
    }.ToFrozenDictionary(StringComparer.Ordinal);

    public static readonly FrozenDictionary<string, string> OfStages = new Dictionary<string, string>
    {
        ["duration"] = "last",
        ["time"] = "last",
        ["volume-ratio"] = "ratio",
        ["if"] = "when",
        ["name"] = "title",
        ["warnings"] = "cautions",
        ["instructions"] = "how",
        ["regions"] = "places",
        ["reference"] = "source",
        ["solution"] = "fluid",
        ["volume"] = "dose",
    }.ToFrozenDictionary(StringComparer.Ordinal);
}
