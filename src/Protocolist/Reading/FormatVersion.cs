using System.Globalization;
using Protocolist.Findings;

namespace Protocolist.Reading;

/// <summary>The <c>format</c> key with which every file of ours begins.</summary>
internal static class FormatVersion
{
    private static readonly Phrase BadFormat = new("bad-format", "'{format}' is not a format version");
    private static readonly Phrase BadFormatRemedy = new("bad-format.remedy", "write 'format: {known}'");
    private static readonly Phrase LaterFormat = new("later-format.file", "the file is of format {version}, and this program reads format {known}");
    private static readonly Phrase LaterFormatRemedy = new("later-format.file.remedy", "use a later version of the program");
    private static readonly Phrase NoSuchFormat = new("bad-format.unknown", "there is no format {version}");

    /// <summary>Whether the file is of the format that this library reads; with a finding where it is not.</summary>
    public static bool Check(Fields fields, int known, List<Finding> findings)
    {
        if (fields.Required("format") is not { } format) return false;
        if (!int.TryParse(format.Value, NumberStyles.None, CultureInfo.InvariantCulture, out var version))
        {
            findings.Add(Finding.Error("bad-format", BadFormat.With(("format", format.Value)), BadFormatRemedy.With(("known", known)), format.Span));
            return false;
        }

        if (version == known) return true;
        findings.Add(version > known
            ? Finding.Error("later-format", LaterFormat.With(("version", version), ("known", known)), LaterFormatRemedy, format.Span)
            : Finding.Error("bad-format", NoSuchFormat.With(("version", version)), BadFormatRemedy.With(("known", known)), format.Span));
        return false;
    }
}
