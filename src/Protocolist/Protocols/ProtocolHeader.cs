using Protocolist.Findings;
using Protocolist.Reading;

namespace Protocolist.Protocols;

/// <summary>A protocol file as read, before what it extends is known.</summary>
internal sealed record ProtocolHeader(SourceText Source, string Id, string? Extends, SourceSpan ExtendsSpan, MappingNode Root, SourceSpan Span)
{
    /// <summary>Whether the file could be read as a whole; one that could not is looked at, but serves nobody.</summary>
    public bool IsSound { get; private init; } = true;

    /// <summary>The version of the file format that this library reads.</summary>
    public const int Format = 1;

    /// <summary>Reads the keys that say what the file is; null where it is not a protocol that can be placed on a shelf.</summary>
    public static ProtocolHeader? Read(ReadText file, List<Finding> findings)
    {
        var document = file.Document;
        findings.AddRange(document.Findings);
        if (document.Value is null || Fields.Of(document.Value, Named.Protocol, findings) is not { } fields) return null;
        if (!FormatVersion.Check(fields, Format, findings)) return null;
        if (fields.Required("protocol") is not { } id) return null;
        if (!OwnNames.IsKebab(id.Value))
        {
            findings.Add(Names.NotKebab(Named.ProtocolId, id));
            return null;
        }

        var extends = fields.Scalar("extends");
        return new(file.Source, id.Value, extends?.Value, extends?.Span ?? default, (MappingNode)document.Value, id.Span) { IsSound = !document.HasErrors };
    }
}
