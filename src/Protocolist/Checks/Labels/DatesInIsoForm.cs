using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Protocolist.Findings;

namespace Protocolist.Checks.Labels;

/// <summary>Dates on labels are year, month, day.</summary>
internal static partial class DatesInIsoForm
{
    [GeneratedRegex(@"\b\d{1,2}[./]\d{1,2}[./]\d{2,4}\b")]
    private static partial Regex Ambiguous();

    private static readonly Phrase NotIso = new("label-date-not-iso", "the label's '{line}' holds the date {date}, whose month nobody can tell");
    private static readonly Phrase WriteIso = new("label-date-not-iso.remedy", "write year, month and day: 2027-04-03 is the third of April");

    public static PlanCheck Check { get; } = new(
        "label-date-not-iso",
        "the specimen's worth: nobody knows which of 3/4/27 is the month",
        "ISO 8601",
        Find)
    {
        Severities = [new(Severity.Warning, "a line of the label has a date by numbers whose month cannot be told")],
    };

    /// <summary>The label's own dates are in ISO form; what people wrote themselves may not be.</summary>
    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        ImmutableArray<Finding> found = [];
        foreach (var own in (ReadOnlySpan<string?>)[plan.Specimen.Id, plan.Specimen.ScientificName, plan.Specimen.Where, plan.Specimen.CollectedBy])
        {
            if (own is null || Ambiguous().Match(own) is not { Success: true } match) continue;
            found = found.Add(Finding.Warning("label-date-not-iso", NotIso.With(("line", own), ("date", match.Value)), WriteIso));
        }

        return found;
    }
}
