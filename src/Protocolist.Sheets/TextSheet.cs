using System.Text;
using NodaTime;
using Protocolist.Findings;
using Protocolist.Plans;

namespace Protocolist.Sheets;

/// <summary>A plan as plain text: the sheet a person pins up at the bench. Findings first, then what to prepare, then step by step.</summary>
public static class TextSheet
{
    private const int Width = 100;

    private static readonly Phrase Heading = new("sheet.heading", "{title}: {specimen}{name}{animals}");
    private static readonly Phrase Protocol = new("sheet.protocol", "Protocol {id}, revision {revision}. {choices}");
    private static readonly Phrase From = new("sheet.from-to", "From {from} to {to}, clocks of {zone}.");
    private static readonly Phrase NoDates = new("sheet.no-dates", "No dates could be found, clocks of {zone}.");
    private static readonly Phrase Revision = new("sheet.revision", "Revision {revision}{until}: {states}.");
    private static readonly Phrase ByTheLog = new("sheet.by-the-log", ", by the log up to {until}");
    private static readonly Phrase StateCount = new("sheet.state-count", "{count} {state}");
    private static readonly Phrase WhatChanged = new("sheet.what-changed", "What changed with revision {revision}");
    private static readonly Phrase RecipeOf = new("sheet.recipe", "{volume:mix} of {fluid}, for {steps}:");
    private static readonly Phrase Buy = new("sheet.buy", "Buy {what}{ahead}.");
    private static readonly Phrase Packs = new("sheet.buy-packs", "{count} x {pack} of {item}, {price}");
    private static readonly Phrase SoMuch = new("sheet.buy-so-much", "{pack} of {item}");
    private static readonly Phrase Ahead = new("sheet.buy-ahead", ", {days} {days|day|days} ahead");
    private static readonly Phrase StepTitle = new("sheet.step", "{number}. {title}{state}");
    private static readonly Phrase State = new("sheet.step-state", " ({state})");
    private static readonly Phrase Lasting = new("sheet.lasting", "{from} to {to} ({time}{window})");
    private static readonly Phrase Filled = new("sheet.filled", "{volume} of {fluid}{vessel}{changes}.");
    private static readonly Phrase In = new("sheet.filled-in", " in {vessel}");
    private static readonly Phrase Changed = new("sheet.filled-changed", ", changed {changes:times}");
    private static readonly Phrase Look = new("sheet.look", "look: {sign}");
    private static readonly Phrase LookOn = new("sheet.look-on", "look on {moments}");
    private static readonly Phrase ChangeOn = new("sheet.change-on", "change the fluid on {moments}");
    private static readonly Phrase LeftOut = new("sheet.state-left-out", "left out");
    private static readonly Phrase UnderWay = new("sheet.state-under-way", "under way");
    private static readonly Phrase Label = new("sheet.label", "Label");
    private static readonly Phrase Leaves = new("sheet.leaves", "{amount} {what} from {from} ({class}): {destination}");
    private static readonly Phrase FluidLeaves = new("sheet.fluid-leaves", "{amount} of {what} from {from} ({class}): {destination}");
    private static readonly Phrase Care = new("sheet.care", "{on}{again}: {what}{amount}{source}");
    private static readonly Phrase Again = new("sheet.care-again", ", then every {months} months");

    /// <summary>Writes the sheet.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="language">The language; English where none is given.</param>
    /// <returns>Lines of at most 100 characters, the same on any machine.</returns>
    public static string Write(Plan plan, Language? language = null)
    {
        WholePlan.ThrowIfIncomplete(plan);
        var sheet = new Lines(language ?? Language.English);
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
        sheet.Add(Heading.With(
            ("title", plan.Protocol.Title),
            ("specimen", specimen.Id),
            ("name", SheetWords.Named(specimen)),
            ("animals", SheetWords.Animals(specimen))));
        sheet.Add(Protocol.With(
            Argument.Id("id", plan.Protocol.Id),
            ("revision", plan.Protocol.Revision),
            ("choices", string.Join(", ", plan.Choices.Select(c => $"{c.Key}: {c.Value}")))));
        sheet.Add(SheetWords.Body.With(Argument.Messages("measures", SheetWords.Measures(plan))));
        sheet.Add(plan.Start is { } start && plan.End is { } end
            ? From.With(("from", start), ("to", end), ("zone", plan.Zone))
            : NoDates.With(("zone", plan.Zone)));
        if (plan.Revision > 0)
            sheet.Add(Revision.With(
                ("revision", plan.Revision),
                ("until", plan.LoggedUntil is { } until ? ByTheLog.With(("until", until)) : default),
                Argument.Messages("states", plan.Steps.GroupBy(StateWord).Select(g => StateCount.With(("count", g.Count()), ("state", g.Key))))));
        if (!plan.Startable) sheet.Add(SheetWords.DoNotStart);
        sheet.Gap();
    }

    /// <summary>What the last revision changed, line by line; nothing for a plan as first made.</summary>
    private static void ChangeLines(Plan plan, Lines sheet)
    {
        if (plan.Revision == 0) return;
        sheet.Title(WhatChanged.With(("revision", plan.Revision)));
        foreach (var change in plan.Changes) sheet.Add(change.ToString(sheet.Language), "  ");
        sheet.Gap();
    }

    private static void FindingLines(Plan plan, Lines sheet)
    {
        if (plan.Findings.IsEmpty) return;
        sheet.Title(SheetWords.Checks);
        foreach (var finding in plan.Findings)
            sheet.Add(
                $"{sheet.Language.Of(SheetWords.Loud(finding.Severity))} {finding.Id}{(finding.Subject.Length > 0 ? $" [{finding.Subject}]" : "")}: "
                + SheetWords.Said(finding).ToString(sheet.Language),
                "  ");
        sheet.Gap();
    }

    private static void Prepare(Plan plan, Lines sheet)
    {
        if (plan.Recipes.IsEmpty && plan.Purchases.IsEmpty) return;
        sheet.Title(SheetWords.BeforeYouStart);
        foreach (var recipe in plan.Recipes)
        {
            sheet.Add(RecipeOf.With(("volume", recipe.Volume), ("fluid", recipe.Name), Argument.Ids("steps", recipe.For)), "  ");
            foreach (var sentence in SheetWords.Mixing(recipe, plan)) sheet.Add(sentence, "    ");
        }

        foreach (var purchase in plan.Purchases)
        {
            Argument[] facts = [("count", purchase.Count), ("pack", purchase.Pack.ToString()), ("item", purchase.Item)];
            var what = purchase.Price is { } price ? Packs.With([.. facts, ("price", price)]) : SoMuch.With(facts);
            sheet.Add(Buy.With(("what", what), ("ahead", purchase.LeadDays > 0 ? Ahead.With(("days", purchase.LeadDays)) : default)), "  ");
        }

        sheet.Gap();
    }

    private static void StepLines(Step step, Plan plan, Lines sheet)
    {
        sheet.Title(StepTitle.With(
            ("number", plan.Steps.IndexOf(step) + 1),
            ("title", step.Title),
            ("state", step.State == StepState.Planned ? default : State.With(("state", StateWord(step))))));
        if (step is { State: not StepState.Skipped, Start: { } start, End: { } end }) sheet.Add(When(step, start, end), "  ");
        if (!step.Because.IsEmpty) sheet.Add(SheetWords.BecauseOf(step), "  ");
        if (step.State is StepState.Done or StepState.Skipped)
        {
            if (step is { Fluid: { } fluid, Volume: { } volume })
                sheet.Add(
                    Filled.With(
                        ("volume", volume),
                        ("fluid", fluid),
                        ("vessel", step.Vessel is { } vessel ? In.With(("vessel", vessel)) : default),
                        ("changes", step.Changes == 0 ? default : Changed.With(("changes", step.Changes)))),
                    "  ");
            sheet.Gap();
            return;
        }

        foreach (var sentence in step.Instructions) sheet.Add(sentence, "  ");
        foreach (var look in step.LookFor) sheet.Add(Look.With(("sign", look)), "  ");
        if (!step.Inspections.IsEmpty) sheet.Add(LookOn.With(Argument.ListOf("moments", step.Inspections.Select(i => (Argument)("", i)))), "  ");
        if (!step.ChangesAt.IsEmpty) sheet.Add(ChangeOn.With(Argument.ListOf("moments", step.ChangesAt.Select(i => (Argument)("", i)))), "  ");
        foreach (var caution in step.Cautions) sheet.Add($"! {caution.ToString(sheet.Language)}", "  ");
        if (step.Source.Length > 0) sheet.Add($"({step.Source})", "  ");
        sheet.Gap();
    }

    private static Message When(Step step, OffsetDateTime start, OffsetDateTime end) => start == end
        ? SheetWords.At.With(("at", start))
        : Lasting.With(
            ("from", start),
            ("to", end),
            ("time", end.ToInstant() - start.ToInstant()),
            ("window", step.State == StepState.Done ? default : SheetWords.Further.With(("what", SheetWords.Window(step)))));

    private static Message StateWord(Step step) => step.State switch
    {
        StepState.Skipped => LeftOut,
        StepState.Begun => UnderWay,
        var state => SheetWords.Of(state),
    };

    private static void Closing(Plan plan, Lines sheet)
    {
        sheet.Title(Label);
        foreach (var line in plan.Label) sheet.Add(line, "  ");
        sheet.Gap();
        if (!plan.Waste.IsEmpty)
        {
            sheet.Title(SheetWords.WhatLeaves);
            foreach (var waste in plan.Waste)
                sheet.Add(
                    (waste.Fluid is null ? Leaves : FluidLeaves).With(
                        ("amount", waste.HowMuch),
                        ("what", waste.What),
                        ("from", waste.From),
                        ("class", waste.ClassWords),
                        ("destination", waste.Destination)),
                    "  ");
            sheet.Gap();
        }

        if (!plan.Care.IsEmpty)
        {
            sheet.Title(SheetWords.Afterwards);
            foreach (var care in plan.Care)
                sheet.Add(
                    Care.With(
                        ("on", SheetWords.First(care)),
                        ("again", care.EveryMonths is { } months ? Again.With(("months", months)) : default),
                        ("what", care.What),
                        ("amount", care.Amount.IsEmpty ? default : SheetWords.Further.With(("what", care.Amount))),
                        ("source", care.Source.Length > 0 ? $" ({care.Source})" : "")),
                    "  ");
            sheet.Gap();
        }

        var costs = CostLines.Of(plan.Costs).ToList();
        if (costs.Count == 0) return;
        sheet.Title(SheetWords.Costs);
        foreach (var (what, sum) in costs) sheet.Add($"{what.ToString(sheet.Language)}: {sum}", "  ");
    }

    /// <summary>Text in lines that fit a page.</summary>
    private sealed class Lines(Language language)
    {
        private readonly StringBuilder _text = new();

        public Language Language => language;

        public void Title(Message title)
        {
            var text = title.ToString(language);
            Add(text);
            _text.Append('-', Math.Min(text.Length, Width)).Append('\n');
        }

        public void Gap() => _text.Append('\n');

        public void Add(Message message, string indent = "") => Add(message.ToString(language), indent);

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
