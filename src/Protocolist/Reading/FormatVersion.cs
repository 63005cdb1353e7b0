using System.Globalization;
using Protocolist.Findings;

namespace Protocolist.Reading;

/// <summary>The <c>format</c> key with which every file of ours begins.</summary>
internal static class FormatVersion
{
    /// <summary>Whether the file is of the format that this library reads; with a finding where it is not.</summary>
    public static bool Check(Fields fields, int known, List<Finding> findings)
    {
        if (fields.Required("format") is not { } format) return false;
        if (!int.TryParse(format.Value, NumberStyles.None, CultureInfo.InvariantCulture, out var version))
        {
            findings.Add(Finding.Error("bad-format", $"'{format.Value}' is not a format version", $"write 'format: {known}'", format.Span));
            return false;
        }

        if (version == known) return true;
        findings.Add(version > known
            ? Finding.Error("later-format", $"the file is of format {version}, and this program reads format {known}", "use a later version of the program", format.Span)
            : Finding.Error("bad-format", $"there is no format {version}", $"write 'format: {known}'", format.Span));
        return false;
    }
}
