using Protocolist.Findings;

namespace Protocolist.Reading;

/// <summary>A file's name and its tree, read once for all who look at it.</summary>
internal readonly record struct ReadText(string Name, Checked<DocumentNode> Document)
{
    public static ReadText Of(SourceText source) => new(source.Name, DocumentReader.Read(source));
}
