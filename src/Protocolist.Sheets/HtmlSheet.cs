using System.Globalization;
using NodaTime;
using Protocolist.Findings;
using Protocolist.Plans;
using Protocolist.Quantities;

namespace Protocolist.Sheets;

/// <summary>A plan as one page to print and tick off: no script, nothing fetched from anywhere, every text of the plan escaped.</summary>
public static class HtmlSheet
{
    /// <summary>Writes the page.</summary>
    /// <param name="plan">The plan.</param>
    /// <returns>A whole HTML document, the same on any machine.</returns>
    public static string Write(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var page = new HtmlText();
        var title = $"{plan.Specimen.Id}: {plan.Protocol.Title}";
        page.Raw("<!DOCTYPE html>").Raw("<html lang=\"en\">").Raw("<head>").Raw("<meta charset=\"utf-8\">")
            .Raw("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">")
            .Raw("<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src 'unsafe-inline'\">")
            .Element("title", title).Raw($"<style>\n{HtmlLook.Css}\n</style>").Raw("</head>").Raw("<body>");
        Head(plan, page);
        page.Raw("<main>");
        FindingLists(plan, page);
        Prepare(plan, page);
        page.Element("h2", "Steps");
        for (var i = 0; i < plan.Steps.Length; i++) StepOf(plan.Steps[i], i + 1, page);
        Labels(plan, page);
        HtmlClosing.Write(plan, page);
        page.Raw("</main>");
        page
            .Raw("<footer>")
            .Element(
                "p",
                "A plan by common practice and published sources, not permission and not a safety assessment. Local law, the safety data "
                    + "sheet of your own bottle, and licensed or competent people come first.")
            .Raw("</footer>");
        return page.Raw("</body>").Raw("</html>").ToString();
    }

    private static void Head(Plan plan, HtmlText page)
    {
        var specimen = plan.Specimen;
        page.Raw("<header>").Element("h1", $"{specimen.Id}{(specimen.ScientificName is { } name ? $", {name}" : "")}")
            .Element(
                "p",
                $"{plan.Protocol.Title} (protocol {plan.Protocol.Id}, revision {plan.Protocol.Revision})"
                + $"{(specimen.Count > 1 ? $", {specimen.Count} animals" : "")}",
                "class=\"under\"");
        if (!plan.Choices.IsEmpty) page.Element("p", string.Join("; ", plan.Choices.Select(c => $"{c.Key}: {c.Value}")));
        string[] body = [.. ((string[])["specimen.mass", "specimen.volume", "specimen.length", "specimen.half-thickness"]).Select(plan.Figure).OfType<Figure>()
            .Select(f => $"{f.Id["specimen.".Length..].Replace('-', ' ')} {f.Value}{(!f.Note.IsEmpty ? $" ({f.Note})" : "")}")];
        if (body.Length > 0) page.Element("p", string.Join("; ", body));
        page.Element(
            "p",
            plan.Start is { } start && plan.End is { } end
                ? $"{Moment(start)} to {Moment(end)}, clocks of {plan.Zone}"
                : $"No dates could be found, clocks of {plan.Zone}",
            "class=\"when\"");
        if (!plan.Startable) page.Element("p", "DO NOT START: see the errors below.", "class=\"stop\" role=\"alert\"");
        page.Raw("</header>");
    }

    private static void FindingLists(Plan plan, HtmlText page)
    {
        if (plan.Findings.IsEmpty) return;
        page.Element("h2", "What the checks say");
        foreach (var group in plan.Findings.GroupBy(f => f.Severity).OrderByDescending(g => g.Key))
        {
            page.Element("h3", group.Key switch { Severity.Error => "Errors: do not start", Severity.Warning => "Warnings", _ => "Notes" });
            page.List(
                group.Select(f => $"{f.Id}{(f.Subject.Length > 0 ? $" ({f.Subject})" : "")}: {f.Message}{(!f.Remedy.IsEmpty ? $"; {f.Remedy}" : "")}"),
                $"class=\"findings {group.Key.ToString().ToLowerInvariant()}\"");
        }
    }

    private static void Prepare(Plan plan, HtmlText page)
    {
        if (plan.Recipes.IsEmpty && plan.Purchases.IsEmpty) return;
        page.Element("h2", "Before you start");
        page.Table(
            "To buy",
            ["What", "Packs", "Price", "Days ahead", "For"],
            plan.Purchases.Select(p => (IReadOnlyList<string>)[
                $"{p.Item}",
                p.Price is null ? $"{p.Pack}" : $"{p.Count} x {p.Pack}",
                p.Price?.ToString() ?? "not known",
                p.LeadDays.ToString(CultureInfo.InvariantCulture),
                string.Join(", ", p.For),
            ]));
        foreach (var recipe in plan.Recipes)
        {
            page
                .Element("h3", $"{Text(recipe.Volume)} of {recipe.Name}")
                .Element("p", $"for {string.Join(", ", recipe.For)}", "class=\"under\"")
                .List(recipe.Method.Select(m => m.ToString()));
            // The amounts stand in the method, rounded once; which bottle they come from stands nowhere else.
            string[] bottles = [.. recipe.Parts.Where(p => p.Stock.Length > 0).Select(p => $"{p.Name} from {p.Stock}").Distinct(StringComparer.Ordinal)];
            if (bottles.Length > 0) page.Element("p", string.Join("; ", bottles), "class=\"under\"");
        }
    }

    private static void StepOf(Step step, int number, HtmlText page)
    {
        page.Raw("<section class=\"step\">");
        page
            .Raw($"<h3><label><input type=\"checkbox\"{(step.State == StepState.Done ? " checked" : "")}>")
            .Element("span", string.Create(CultureInfo.InvariantCulture, $"{number}. {step.Title}"))
            .Raw("</label></h3>");
        if (step.State != StepState.Planned)
            page.Element(
                "p",
                step.Because.IsEmpty ? StateWords.Of(step.State) : $"{StateWords.Of(step.State)}: {string.Join("; ", step.Because)}",
                "class=\"done\"");
        if (step.Start is { } start && step.End is { } end)
            page.Element(
                "p",
                start == end ? Moment(start) : $"{Moment(start)} to {Moment(end)} ({Span(end.ToInstant() - start.ToInstant())}; {Window(step)})",
                "class=\"when\"");
        page.List(step.Cautions.Select(c => c.ToString()), "class=\"cautions\" aria-label=\"Cautions\"");
        page.List(step.Instructions.Select(i => i.ToString()));
        page.Table(
            "On the table",
            ["What", "How much", "From"],
            step.Materials.Select(m => (IReadOnlyList<string>)[$"{m.Name}", $"{m.HowMuch}", $"{m.FromWords}"]));
        if (!step.LookFor.IsEmpty) page.Element("p", "Look for:").List(step.LookFor.Select(l => l.ToString()));
        if (!step.Inspections.IsEmpty)
        {
            page.Element("p", "Look on:").Raw("<ul class=\"looks\">");
            foreach (var at in step.Inspections) page.Raw("<li><label><input type=\"checkbox\">").Element("span", Moment(at)).Raw("</label></li>");
            page.Raw("</ul>");
        }

        if (step.Source.Length > 0) page.Element("p", step.Source, "class=\"source\"");
        page.Raw("</section>");
    }

    private static void Labels(Plan plan, HtmlText page)
    {
        if (plan.Label.IsEmpty) return;
        page.Element("h2", "Labels: one inside, one outside").Raw("<div class=\"labels\">");
        foreach (var where in (string[])["Label for the inside", "Label for the outside"])
        {
            page.Raw($"<div class=\"label\" role=\"group\" aria-label=\"{where}\">");
            foreach (var line in plan.Label) page.Element("p", line.ToString());
            page.Raw("</div>");
        }

        page.Raw("</div>");
    }

    private static string Window(Step step) => step.Most is { } most
        ? step.Least == most ? $"exactly {Span(most)}" : $"{Span(step.Least)} to {Span(most)} allowed"
        : $"at least {Span(step.Least)}";

    private static string Moment(OffsetDateTime at) => at.ToString("ddd uuuu-MM-dd HH:mm", CultureInfo.InvariantCulture);

    private static string Span(Duration time) => Measurable.Text(time.TotalSeconds, Dimension.OfTime);

    private static string Text(UnitsNet.Volume volume) => Measurable.Text(volume.CubicMeters, Dimension.OfVolume);
}
