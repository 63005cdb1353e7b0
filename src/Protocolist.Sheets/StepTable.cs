using System.Globalization;
using NodaTime;
using NodaTime.Text;
using Protocolist.Findings;
using Protocolist.Plans;
using Protocolist.Reading.Csv;

namespace Protocolist.Sheets;

/// <summary>The steps of a plan as comma-separated values, one row a step, that a spreadsheet opens without running anything.</summary>
public static class StepTable
{
    private static readonly string[] Heading =
    [
        "specimen",
        "number",
        "step",
        "stage",
        "title",
        "state",
        "start",
        "end",
        "least hours",
        "most hours",
        "hands-on minutes",
        "fluid",
        "volume mL",
        "changes",
        "changes at",
        "change minutes",
        "vessel",
        "instructions", "look for", "inspections", "look minutes", "materials", "cautions", "source",
    ];

    /// <summary>
    /// Writes the table: dates in ISO 8601 with their offset, numbers with a decimal point, cells that look like formulas made harmless (<see
    /// cref="CsvWriter"/>).
    /// </summary>
    /// <param name="plan">The plan.</param>
    /// <param name="language">The language of what cells say, English where none is given; headings, stages and states stay words for programs.</param>
    /// <returns>A heading and one row a step; lines end as RFC 4180 has it.</returns>
    public static string Write(Plan plan, Language? language = null)
    {
        WholePlan.ThrowIfIncomplete(plan);
        using var text = new StringWriter(CultureInfo.InvariantCulture);
        CsvWriter.WriteRow(text, Heading);
        for (var i = 0; i < plan.Steps.Length; i++) CsvWriter.WriteRow(text, Cells(plan, plan.Steps[i], i + 1, language ?? Language.English));
        return text.ToString();
    }

    private static IEnumerable<string> Cells(Plan plan, Step step, int number, Language language) =>
    [
        plan.Specimen.Id,
        Number(number),
        step.Id,
        StageWords.Of(step.Kind),
        step.Title.ToString(language),
        StateWords.Of(step.State),
        Moment(step.Start),
        Moment(step.End),
        Number(step.Least.TotalHours),
        step.Most is { } most ? Number(most.TotalHours) : "",
        Number(step.HandsOn.TotalMinutes),
        step.Fluid ?? "",
        step.Volume is { } volume ? Number(volume.Milliliters) : "",
        Number(step.Changes),
        string.Join(' ', step.ChangesAt.Select(i => Moment(i))),
        Number(step.Change.TotalMinutes),
        step.Vessel ?? "",
        Lines(step.Instructions, language),
        Lines(step.LookFor, language),
        string.Join(' ', step.Inspections.Select(i => Moment(i))),
        Number(step.Look.TotalMinutes),
        string.Join('\n', step.Materials.Select(m => $"{m.HowMuch.ToString(language)} {m.Name.ToString(language)}")),
        Lines(step.Cautions, language),
        step.Source,
    ];

    /// <summary>Sentences in one cell, each on its own line.</summary>
    private static string Lines(IEnumerable<Message> sentences, Language language) => string.Join('\n', sentences.Select(s => s.ToString(language)));

    private static string Moment(OffsetDateTime? at) => at is { } moment ? OffsetDateTimePattern.Rfc3339.Format(moment) : "";

    /// <summary>To thousandths at most.</summary>
    private static string Number(double number) => number.ToString("0.###", CultureInfo.InvariantCulture);
}
