using Protocolist.Findings;
using Protocolist.Reading;

namespace Protocolist.Protocols;

/// <summary>Names that authors give.</summary>
internal static class Names
{
    private static readonly Phrase BadName = new("bad-name", "'{name}' cannot be {what}");
    private static readonly Phrase BadNameRemedy = new("bad-name.remedy", "use lower-case letters and digits, parts joined by '-'");

    public static Finding NotKebab(Message what, ScalarNode name) =>
        Finding.Error("bad-name", BadName.With(("name", name.Value), ("what", what)), BadNameRemedy, name.Span);
}
