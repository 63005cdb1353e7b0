using System.Text.RegularExpressions;
using Protocolist.Findings;

namespace Protocolist.Checks.Labels;

/// <summary>Dates on labels are year, month, day.</summary>
internal static partial class DatesInIsoForm
{
    [GeneratedRegex(@"\b\d{1,2}[./]\d{1,2}[./]\d{2,4}\b")]
    private static partial Regex Ambiguous();

    public static PlanCheck Check { get; } = new(
        "label-date-not-iso",
        "the specimen's worth: nobody knows which of 3/4/27 is the month",
        "ISO 8601",
        Find)
    {
        Speaks = [new(Severity.Warning, "a line of the label has a date by numbers whose month cannot be told")],
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        foreach (var line in plan.Plan.Label)
        {
            if (Ambiguous().Match(line) is { Success: true } match)
                yield return Finding.Warning("label-date-not-iso", $"the label's '{line}' holds the date {match.Value}, whose month nobody can tell", "write year, month and day: 2027-04-03 is the third of April");
        }
    }
}
