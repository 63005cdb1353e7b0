namespace Protocolist.Findings;

/// <summary>How much a finding weighs, in one word.</summary>
internal static class SeverityWords
{
    private static readonly Phrase[] Words = [new("severity.note", "note"), new("severity.warning", "warning"), new("severity.error", "error")];

    public static Phrase Of(Severity severity) => Words.At((int)severity);
}
