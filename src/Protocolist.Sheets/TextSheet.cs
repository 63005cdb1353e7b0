using System.Globalization;
using System.Text;
using NodaTime;
using Protocolist.Findings;
using Protocolist.Plans;
using Protocolist.Quantities;

namespace Protocolist.Sheets;

/// <summary>A plan as plain text: the sheet a person pins up at the bench. Findings first, then what to prepare, then step by step.</summary>
public static class TextSheet
{
    private const int Width = 100;

    /// <summary>Writes the sheet.</summary>
    /// <param name="plan">The plan.</param>
    /// <returns>Lines of at most 100 characters, the same on any machine.</returns>
    public static string Write(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var sheet = new Lines();
        Head(plan, sheet);
        ChangeLines(plan, sheet);
        FindingLines(plan, sheet);
        Prepare(plan, sheet);
        foreach (var step in plan.Steps) StepLines(step, plan, sheet);
        Closing(plan, sheet);
        return sheet.ToString();
    }

    private static void Head(Plan plan, Lines sheet)
    {
        var specimen = plan.Specimen;
        sheet.Add(
            $"{plan.Protocol.Title}: {specimen.Id}{(specimen.ScientificName is { } name ? $", {name}" : "")}"
            + $"{(specimen.Count > 1 ? $", {specimen.Count} animals" : "")}");
        sheet.Add($"Protocol {plan.Protocol.Id}, revision {plan.Protocol.Revision}. {string.Join(", ", plan.Choices.Select(c => $"{c.Key}: {c.Value}"))}");
        string[] body =
        [
            .. ((string[])["specimen.mass", "specimen.volume", "specimen.length", "specimen.half-thickness"])
                .Select(plan.Figure)
                .OfType<Figure>()
                .Select(Measure),
        ];
        sheet.Add(string.Join(", ", body) + ".");
        sheet.Add(plan.Start is { } start && plan.End is { } end
            ? $"From {Moment(start)} to {Moment(end)}, clocks of {plan.Zone}."
            : $"No dates could be found, clocks of {plan.Zone}.");
        if (plan.Revision > 0)
            sheet.Add($"Revision {plan.Revision}{(plan.LoggedUntil is { } until ? $", by the log up to {Moment(until)}" : "")}: {StateCount(plan)}.");
        if (!plan.Startable) sheet.Add("DO NOT START: see the errors below.");
        sheet.Gap();
    }

    /// <summary>What the last revision changed, line by line; nothing for a plan as first made.</summary>
    private static void ChangeLines(Plan plan, Lines sheet)
    {
        if (plan.Revision == 0) return;
        sheet.Title($"What changed with revision {plan.Revision}");
        foreach (var change in plan.Changes) sheet.Add(change.ToString(), "  ");
        sheet.Gap();
    }

    private static string Measure(Figure figure) =>
        $"{figure.Id["specimen.".Length..].Replace('-', ' ')} {figure.Value}{(!figure.Note.IsEmpty ? $" ({figure.Note})" : "")}";

    private static void FindingLines(Plan plan, Lines sheet)
    {
        if (plan.Findings.IsEmpty) return;
        sheet.Title("What the checks say");
        foreach (var finding in plan.Findings)
            sheet.Add(
                $"{finding.Severity.ToString().ToUpperInvariant()} {finding.Id}{(finding.Subject.Length > 0 ? $" [{finding.Subject}]" : "")}: "
                + $"{finding.Message}{(!finding.Remedy.IsEmpty ? $"; {finding.Remedy}" : "")}",
                "  ");
        sheet.Gap();
    }

    private static void Prepare(Plan plan, Lines sheet)
    {
        if (plan.Recipes.IsEmpty && plan.Purchases.IsEmpty) return;
        sheet.Title("Before you start");
        foreach (var recipe in plan.Recipes)
        {
            sheet.Add($"{Text(recipe.Volume)} of {recipe.Name}, for {string.Join(", ", recipe.For)}:", "  ");
            foreach (var sentence in recipe.Method) sheet.Add(sentence.ToString(), "    ");
        }

        foreach (var purchase in plan.Purchases)
            sheet.Add(
                "Buy "
                + (purchase.Price is { } price ? $"{purchase.Count} x {purchase.Pack} of {purchase.Item}, {price}" : $"{purchase.Pack} of {purchase.Item}")
                + $"{(purchase.LeadDays > 0 ? $", {purchase.LeadDays} {(purchase.LeadDays == 1 ? "day" : "days")} ahead" : "")}.",
                "  ");
        sheet.Gap();
    }

    private static void StepLines(Step step, Plan plan, Lines sheet)
    {
        var number = plan.Steps.IndexOf(step) + 1;
        sheet.Title($"{number}. {step.Title}{(step.State == StepState.Planned ? "" : $" ({StateWord(step)})")}");
        if (step is { State: not StepState.Skipped, Start: { } start, End: { } end })
            sheet.Add(
                start == end
                    ? Moment(start)
                    : $"{Moment(start)} to {Moment(end)} ({Span(end.ToInstant() - start.ToInstant())}"
                        + $"{(step.State == StepState.Done ? "" : $"; {Window(step)}")})",
                "  ");
        if (!step.Because.IsEmpty) sheet.Add($"Because {string.Join("; ", step.Because)}.", "  ");
        if (step.State is StepState.Done or StepState.Skipped)
        {
            if (step is { Fluid: { } fluid, Volume: { } volume })
                sheet.Add(
                    $"{Text(volume)} of {fluid}{(step.Vessel is { } vessel ? $" in {vessel}" : "")}"
                    + $"{(step.Changes == 0 ? "" : step.Changes == 1 ? ", changed once" : $", changed {step.Changes} times")}.",
                    "  ");
            sheet.Gap();
            return;
        }

        foreach (var sentence in step.Instructions) sheet.Add(sentence.ToString(), "  ");
        foreach (var look in step.LookFor) sheet.Add($"look: {look}", "  ");
        if (!step.Inspections.IsEmpty) sheet.Add($"look on {string.Join(", ", step.Inspections.Select(Moment))}", "  ");
        foreach (var caution in step.Cautions) sheet.Add($"! {caution}", "  ");
        if (step.Source.Length > 0) sheet.Add($"({step.Source})", "  ");
        sheet.Gap();
    }

    private static string StateWord(Step step) => step.State switch
    {
        StepState.Skipped => "left out",
        StepState.Begun => "under way",
        var state => StateWords.Of(state),
    };

    private static string StateCount(Plan plan) =>
        string.Join(", ", plan.Steps.GroupBy(StateWord, StringComparer.Ordinal).Select(g => $"{g.Count().ToString(CultureInfo.InvariantCulture)} {g.Key}"));

    private static void Closing(Plan plan, Lines sheet)
    {
        sheet.Title("Label");
        foreach (var line in plan.Label) sheet.Add(line.ToString(), "  ");
        sheet.Gap();
        if (!plan.Waste.IsEmpty)
        {
            sheet.Title("What leaves");
            foreach (var waste in plan.Waste)
                sheet.Add(
                    $"{waste.HowMuch}{(waste.Fluid is null ? "" : " of")} {waste.What} from {waste.From} ({waste.ClassWords}): {waste.Destination}",
                    "  ");
            sheet.Gap();
        }

        if (!plan.Care.IsEmpty)
        {
            sheet.Title("Afterwards");
            foreach (var care in plan.Care)
                sheet.Add(
                    $"{(care.On is { } on ? on.ToString("uuuu-MM-dd", CultureInfo.InvariantCulture) : "later")}"
                    + $"{(care.EveryMonths is { } months ? $", then every {months} months" : "")}"
                    + $": {care.What}{(!care.Amount.IsEmpty ? $"; {care.Amount}" : "")}{(care.Source.Length > 0 ? $" ({care.Source})" : "")}",
                    "  ");
            sheet.Gap();
        }

        var costs = CostLines.Of(plan.Costs).ToList();
        if (costs.Count == 0) return;
        sheet.Title("Costs");
        foreach (var (what, sum) in costs) sheet.Add($"{what}: {sum}", "  ");
    }

    private static string Window(Step step) => step.Most is { } most
        ? step.Least == most ? $"exactly {Span(most)}" : $"{Span(step.Least)} to {Span(most)} allowed"
        : $"at least {Span(step.Least)}";

    private static string Moment(OffsetDateTime at) => at.ToString("ddd uuuu-MM-dd HH:mm", CultureInfo.InvariantCulture);

    private static string Span(Duration time) => Measurable.Text(time.TotalSeconds, Dimension.OfTime);

    private static string Text(UnitsNet.Volume volume) => Measurable.Text(volume.CubicMeters, Dimension.OfVolume);

    /// <summary>Text in lines that fit a page.</summary>
    private sealed class Lines
    {
        private readonly StringBuilder _text = new();

        public void Title(string text)
        {
            Add(text);
            _text.Append('-', Math.Min(text.Length, Width)).Append('\n');
        }

        public void Gap() => _text.Append('\n');

        public void Add(string text, string indent = "")
        {
            var shown = ShownText.Lines(text).AsSpan();
            var (start, hasWords) = (_text.Length, false);
            _text.Append(indent);
            foreach (var range in shown.SplitAny(" \t\r\n"))
            {
                var word = shown[range];
                if (hasWords && _text.Length - start + word.Length + 1 > Width)
                {
                    End(start);
                    (start, hasWords) = (_text.Length, false);
                    _text.Append(indent).Append("  ");
                }

                if (hasWords) _text.Append(' ');
                _text.Append(word);
                hasWords |= !word.IsWhiteSpace();
            }

            End(start);
        }

        private void End(int start)
        {
            while (_text.Length > start && char.IsWhiteSpace(_text[^1])) _text.Length--;
            _text.Append('\n');
        }

        public override string ToString() => _text.ToString();
    }
}
