using Protocolist.Findings;

namespace Protocolist.Reading;

/// <summary>A file and its tree, read once for all who look at it.</summary>
internal readonly record struct ReadText(SourceText Source, Checked<DocumentNode> Document)
{
    public static ReadText Of(SourceText source) => new(source, DocumentReader.Read(source));
}
