using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Plans;
using Protocolist.Specimens;

namespace Protocolist.Sheets;

/// <summary>What all sheets say alike.</summary>
internal static class SheetWords
{
    public static readonly Phrase DoNotStart = new("sheet.do-not-start", "DO NOT START: see the errors below.");
    public static readonly Phrase Checks = new("sheet.checks", "What the checks say");
    public static readonly Phrase BeforeYouStart = new("sheet.before-you-start", "Before you start");
    public static readonly Phrase WhatLeaves = new("sheet.what-leaves", "What leaves");
    public static readonly Phrase Afterwards = new("sheet.afterwards", "Afterwards");
    public static readonly Phrase Costs = new("sheet.costs", "Costs");
    public static readonly Phrase Body = new("sheet.body", "{measures}.");
    public static readonly Phrase Further = new("sheet.further", "; {what}");
    public static readonly Phrase At = new("sheet.at", "{at}");

    private static readonly Phrase Batch = new("sheet.batch", "for {steps}{at}: {size}{vessel}");
    private static readonly Phrase MixedAt = new("sheet.batch-at", ", {at}");
    private static readonly Phrase SoMuch = new("sheet.batch-size", "{volume:mix}");
    private static readonly Phrase Batches = new("sheet.batches", "{n} batches of {size}");
    private static readonly Phrase MixedIn = new("sheet.batch-in", " in {vessel}");
    private static readonly Phrase Name = new("sheet.name", ", {name}");
    private static readonly Phrase Several = new("sheet.animals", ", {count} animals");
    private static readonly Phrase Measure = new("sheet.measure", "{what} {value}{note}");
    private static readonly Phrase InBrackets = new("sheet.in-brackets", " ({note})");
    private static readonly Phrase Finding = new("sheet.finding", "{message}{remedy}");
    private static readonly Phrase Because = new("sheet.because", "Because {reasons:; }.");
    private static readonly Phrase Exactly = new("sheet.exactly", "exactly {time}");
    private static readonly Phrase FromTo = new("sheet.allowed", "{least} to {most} allowed");
    private static readonly Phrase AtLeast = new("sheet.at-least", "at least {least}");
    private static readonly Phrase On = new("sheet.on-day", "{day:day}");
    private static readonly Phrase Later = new("sheet.later", "later");

    private static readonly ImmutableArray<(string Figure, Phrase Words)> Measured =
    [
        ("specimen.mass", new("sheet.mass", "mass")),
        ("specimen.volume", new("sheet.volume", "volume")),
        ("specimen.length", new("sheet.length", "length")),
        ("specimen.half-thickness", new("sheet.half-thickness", "half thickness")),
    ];

    private static readonly ImmutableArray<Phrase> Severities =
        [new("sheet.severity-note", "NOTE"), new("sheet.severity-warning", "WARNING"), new("sheet.severity-error", "ERROR")];

    private static readonly ImmutableArray<Phrase> States =
    [
        new("sheet.state-planned", "planned"), new("sheet.state-begun", "begun"), new("sheet.state-done", "done"), new("sheet.state-skipped", "skipped"),
    ];

    public static Phrase Of(StepState state) => States.AsSpan().At((int)state);

    public static Phrase Loud(Severity severity) => Severities.AsSpan().At((int)severity);

    public static Message Named(Specimen specimen) => specimen.ScientificName is { } name ? Name.With(("name", name)) : default;

    public static Message Animals(Specimen specimen) => specimen.Count > 1 ? Several.With(("count", specimen.Count)) : default;

    /// <summary>The sizes of the body as far as the plan has them, each with its remark.</summary>
    public static IEnumerable<Message> Measures(Plan plan) =>
        from measured in Measured
        let figure = plan.Figure(measured.Figure)
        where figure is not null
        select Measure.With(
            ("what", measured.Words),
            ("value", figure.Value),
            ("note", figure.Note.IsEmpty ? default : InBrackets.With(("note", figure.Note))));

    /// <summary>The batches of a recipe, each with its step, its moment and its vessel; then how each size of batch is made.</summary>
    public static IEnumerable<Message> Mixing(PlannedRecipe recipe, Plan plan)
    {
        var sizes = new List<(string Said, UnitsNet.Volume Each)>();
        foreach (var batch in MixedBatch.Of(recipe, plan))
        {
            Message each = SoMuch.With(("volume", batch.Each));
            if (!sizes.Exists(s => s.Said == each.ToString())) sizes.Add((each.ToString(), batch.Each));
            yield return Batch.With(
                Argument.Ids("steps", batch.For.Select(m => m.To.Step).Distinct()),
                ("at", batch.At is { } at ? MixedAt.With(("at", at)) : default),
                ("size", batch.First.Batches == 1 ? each : Batches.With(("n", batch.First.Batches), ("size", each))),
                ("vessel", batch.First.MixedIn.Length > 0 ? MixedIn.With(("vessel", batch.First.MixedIn)) : default));
        }

        if (sizes.Count == 0 || (sizes.Count == 1 && sizes[0].Said == SoMuch.With(("volume", recipe.Volume)).ToString()))
        {
            foreach (var sentence in recipe.Method) yield return sentence;
            yield break;
        }

        foreach (var (_, each) in sizes)
        {
            foreach (var sentence in recipe.MethodFor(each)) yield return sentence;
        }
    }

    /// <summary>What a finding says, and what to do.</summary>
    public static Message Said(Finding finding) =>
        Finding.With(("message", finding.Message), ("remedy", finding.Remedy.IsEmpty ? default : Further.With(("what", finding.Remedy))));

    public static Message BecauseOf(Step step) => Because.With(Argument.Messages("reasons", step.Because));

    /// <summary>How long a step may take.</summary>
    public static Message Window(Step step) => step.Most is not { } most
        ? AtLeast.With(("least", step.Least))
        : step.Least == most ? Exactly.With(("time", most))
        : FromTo.With(("least", step.Least), ("most", most));

    /// <summary>The first day of a care round.</summary>
    public static Message First(CareEvent care) => care.On is { } on ? On.With(("day", on)) : Later;
}
