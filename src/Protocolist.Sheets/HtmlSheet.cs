using System.Collections.Immutable;
using System.Globalization;
using NodaTime;
using Protocolist.Findings;
using Protocolist.Plans;

namespace Protocolist.Sheets;

/// <summary>A plan as one page to print and tick off: no script, nothing fetched from anywhere, every text of the plan escaped.</summary>
public static class HtmlSheet
{
    private static readonly Phrase Title = new("page.title", "{specimen}: {title}");
    private static readonly Phrase Steps = new("page.steps", "Steps");
    private static readonly Phrase NotPermission = new(
        "page.not-permission",
        "A plan by common practice and published sources, not permission and not a safety assessment. Local law, the safety data "
        + "sheet of your own bottle, and licensed or competent people come first.");

    private static readonly Phrase Specimen = new("page.specimen", "{specimen}{name}");
    private static readonly Phrase Under = new("page.under", "{title} (protocol {id}, revision {revision}){animals}");
    private static readonly Phrase Joined = new("page.joined", "{parts:; }");
    private static readonly Phrase FromTo = new("page.from-to", "{from} to {to}, clocks of {zone}");
    private static readonly Phrase NoDates = new("page.no-dates", "No dates could be found, clocks of {zone}");
    private static readonly Phrase Errors = new("page.errors", "Errors: do not start");
    private static readonly Phrase Warnings = new("page.warnings", "Warnings");
    private static readonly Phrase Notes = new("page.notes", "Notes");
    private static readonly Phrase ToBuy = new("page.to-buy", "To buy");
    private static readonly Phrase[] BuyHeading =
    [
        new("page.buy-what", "What"), new("page.buy-packs", "Packs"), new("page.buy-price", "Price"), new("page.buy-days", "Days ahead"),
        new("page.buy-for", "For"),
    ];

    private static readonly Phrase PriceNotKnown = new("page.price-not-known", "not known");
    private static readonly Phrase RecipeOf = new("page.recipe", "{volume:mix} of {fluid}");
    private static readonly Phrase For = new("page.recipe-for", "for {steps}");
    private static readonly Phrase Bottle = new("page.bottle", "{what} from {stock}");
    private static readonly Phrase StepTitle = new("page.step", "{number}. {title}");
    private static readonly Phrase Done = new("page.done", "{state}: {reasons:; }");
    private static readonly Phrase Lasting = new("page.lasting", "{from} to {to} ({time}; {window})");
    private static readonly Phrase Cautions = new("page.cautions", "Cautions");
    private static readonly Phrase OnTheTable = new("page.on-the-table", "On the table");
    private static readonly Phrase[] TableHeading = [new("page.table-what", "What"), new("page.table-amount", "How much"), new("page.table-from", "From")];
    private static readonly Phrase LookFor = new("page.look-for", "Look for:");
    private static readonly Phrase LookOn = new("page.look-on", "Look on:");
    private static readonly Phrase ChangeOn = new("page.change-on", "Change the fluid on:");
    private static readonly Phrase Labels = new("page.labels", "Labels: one inside, one outside");
    private static readonly Phrase[] Sides = [new("page.label-inside", "Label for the inside"), new("page.label-outside", "Label for the outside")];

    /// <summary>Writes the page.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="language">The language; English where none is given.</param>
    /// <returns>A whole HTML document, the same on any machine.</returns>
    public static string Write(Plan plan, Language? language = null)
    {
        WholePlan.ThrowIfIncomplete(plan);
        var page = new HtmlText(language ?? Language.English);
        page.Raw("<!DOCTYPE html>").Raw($"<html lang=\"{HtmlText.Escaped(page.Language.Tag)}\">").Raw("<head>").Raw("<meta charset=\"utf-8\">")
            .Raw("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">")
            .Raw("<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src 'unsafe-inline'\">")
            .Element("title", Title.With(("specimen", plan.Specimen.Id), ("title", plan.Protocol.Title)))
            .Raw($"<style>\n{HtmlLook.Css}\n</style>").Raw("</head>").Raw("<body>");
        Head(plan, page);
        page.Raw("<main>");
        FindingLists(plan, page);
        Prepare(plan, page);
        page.Element("h2", Steps);
        for (var i = 0; i < plan.Steps.Length; i++) StepOf(plan.Steps[i], i + 1, page);
        LabelsOf(plan, page);
        HtmlClosing.Write(plan, page);
        page.Raw("</main>").Raw("<footer>").Element("p", NotPermission).Raw("</footer>");
        return page.Raw("</body>").Raw("</html>").ToString();
    }

    private static void Head(Plan plan, HtmlText page)
    {
        var specimen = plan.Specimen;
        page.Raw("<header>").Element("h1", Specimen.With(("specimen", specimen.Id), ("name", SheetWords.Named(specimen))))
            .Element(
                "p",
                Under.With(
                    ("title", plan.Protocol.Title),
                    Argument.Id("id", plan.Protocol.Id),
                    ("revision", plan.Protocol.Revision),
                    ("animals", SheetWords.Animals(specimen))),
                "class=\"under\"");
        if (!plan.Choices.IsEmpty) page.Element("p", string.Join("; ", plan.Choices.Select(c => $"{c.Key}: {c.Value}")));
        if (SheetWords.Measures(plan).ToList() is { Count: > 0 } body) page.Element("p", Joined.With(Argument.Messages("parts", body)));
        page.Element(
            "p",
            plan.Start is { } start && plan.End is { } end
                ? FromTo.With(("from", start), ("to", end), ("zone", plan.Zone))
                : NoDates.With(("zone", plan.Zone)),
            "class=\"when\"");
        if (!plan.Startable) page.Element("p", SheetWords.DoNotStart, "class=\"stop\" role=\"alert\"");
        page.Raw("</header>");
    }

    private static void FindingLists(Plan plan, HtmlText page)
    {
        if (plan.Findings.IsEmpty) return;
        page.Element("h2", SheetWords.Checks);
        foreach (var group in plan.Findings.GroupBy(f => f.Severity).OrderByDescending(g => g.Key))
        {
            page.Element("h3", group.Key switch { Severity.Error => Errors, Severity.Warning => Warnings, _ => Notes });
            page.List(
                group.Select(f => $"{f.Id}{(f.Subject.Length > 0 ? $" ({f.Subject})" : "")}: {page.Said(SheetWords.Said(f))}"),
                $"class=\"findings {group.Key.ToString().ToLowerInvariant()}\"");
        }
    }

    private static void Prepare(Plan plan, HtmlText page)
    {
        if (plan.Recipes.IsEmpty && plan.Purchases.IsEmpty) return;
        page.Element("h2", SheetWords.BeforeYouStart);
        page.Table(
            ToBuy,
            BuyHeading,
            plan.Purchases.Select(p => (IReadOnlyList<string>)[
                page.Said(p.Item),
                p.Price is null ? $"{p.Pack}" : $"{p.Count} x {p.Pack}",
                p.Price?.ToString() ?? page.Said(PriceNotKnown),
                p.LeadDays.ToString(CultureInfo.InvariantCulture),
                string.Join(", ", p.For),
            ]));
        foreach (var recipe in plan.Recipes)
        {
            page
                .Element("h3", RecipeOf.With(("volume", recipe.Volume), ("fluid", recipe.Name)))
                .Element("p", For.With(Argument.Ids("steps", recipe.For)), "class=\"under\"")
                .List(SheetWords.Mixing(recipe, plan));
            // The amounts stand in the method, rounded once; which bottle they come from stands nowhere else.
            var drawn = recipe.Parts.Where(p => p.Stock.Length > 0);
            Message[] bottles = [.. drawn.Select(p => Bottle.With(("what", p.Name), Argument.Id("stock", p.Stock))).Distinct()];
            if (bottles.Length > 0) page.Element("p", Joined.With(Argument.Messages("parts", bottles)), "class=\"under\"");
        }
    }

    private static void StepOf(Step step, int number, HtmlText page)
    {
        page.Raw("<section class=\"step\">");
        page
            .Raw($"<h3><label><input type=\"checkbox\"{(step.State == StepState.Done ? " checked" : "")}>")
            .Element("span", StepTitle.With(("number", number), ("title", step.Title)))
            .Raw("</label></h3>");
        if (step.State != StepState.Planned)
            page.Element(
                "p",
                step.Because.IsEmpty
                    ? SheetWords.Of(step.State)
                    : Done.With(("state", SheetWords.Of(step.State)), Argument.Messages("reasons", step.Because)),
                "class=\"done\"");
        if (step.Start is { } start && step.End is { } end)
            page.Element(
                "p",
                start == end
                    ? SheetWords.At.With(("at", start))
                    : Lasting.With(("from", start), ("to", end), ("time", end.ToInstant() - start.ToInstant()), ("window", SheetWords.Window(step))),
                "class=\"when\"");
        page.List(step.Cautions, $"class=\"cautions\" aria-label=\"{HtmlText.Escaped(page.Said(Cautions))}\"");
        page.List(step.Instructions);
        page.Table(
            OnTheTable,
            TableHeading,
            step.Materials.Select(m => (IReadOnlyList<string>)[page.Said(m.Name), page.Said(m.HowMuch), page.Said(m.FromWords)]));
        if (!step.LookFor.IsEmpty) page.Element("p", LookFor).List(step.LookFor);
        Moments(ChangeOn, step.ChangesAt, page);
        Moments(LookOn, step.Inspections, page);
        if (step.Source.Length > 0) page.Element("p", step.Source, "class=\"source\"");
        page.Raw("</section>");
    }

    /// <summary>Moments to tick off.</summary>
    private static void Moments(Phrase title, ImmutableArray<OffsetDateTime> moments, HtmlText page)
    {
        if (moments.IsEmpty) return;
        page.Element("p", title).Raw("<ul class=\"looks\">");
        foreach (var at in moments) page.Raw("<li><label><input type=\"checkbox\">").Element("span", SheetWords.At.With(("at", at))).Raw("</label></li>");
        page.Raw("</ul>");
    }

    private static void LabelsOf(Plan plan, HtmlText page)
    {
        if (plan.Label.IsEmpty) return;
        page.Element("h2", Labels).Raw("<div class=\"labels\">");
        foreach (var side in Sides)
        {
            page.Raw($"<div class=\"label\" role=\"group\" aria-label=\"{HtmlText.Escaped(page.Said(side))}\">");
            foreach (var line in plan.Label) page.Element("p", line);
            page.Raw("</div>");
        }

        page.Raw("</div>");
    }
}
