using Protocolist.Findings;
using Protocolist.Specimens;

namespace Protocolist.Checks;

/// <summary>What was noted of where an animal comes from, as facts of a sentence.</summary>
internal static class Provenance
{
    private static readonly Phrase At = new("provenance.at", " at '{place}'");

    /// <summary>How it was obtained and what else was noted, in the person's own words.</summary>
    public static Argument History(this Specimen specimen) =>
        Argument.Texts("history", new[] { specimen.HowObtained, specimen.Notes }.OfType<string>().Where(t => !string.IsNullOrWhiteSpace(t)));

    /// <summary>Where it was found, with a space before it; nothing where nobody noted it.</summary>
    public static Message Place(this Specimen specimen) => string.IsNullOrWhiteSpace(specimen.Where) ? default : At.With(("place", specimen.Where));
}
