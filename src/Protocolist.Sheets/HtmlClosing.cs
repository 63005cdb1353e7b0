using Protocolist.Findings;
using Protocolist.Plans;

namespace Protocolist.Sheets;

/// <summary>The end of the printed page: what leaves, what comes after, what it costs.</summary>
internal static class HtmlClosing
{
    private static readonly Phrase Waste = new("page.waste", "Waste");
    private static readonly Phrase[] WasteHeading =
    [
        new("page.waste-what", "What"), new("page.waste-amount", "How much"), new("page.waste-from", "From"), new("page.waste-class", "Class"),
        new("page.waste-way", "Where to"),
    ];

    private static readonly Phrase WasteWay = new("page.waste-goes", "{way}: {destination}");
    private static readonly Phrase Care = new("page.care", "Care");
    private static readonly Phrase[] CareHeading =
        [new("page.care-first", "First on"), new("page.care-then", "Then"), new("page.care-what", "What"), new("page.care-amount", "Amount")];

    private static readonly Phrase Every = new("page.care-every", "every {months} {months|month|months}");
    private static readonly Phrase Once = new("page.care-once", "once");
    private static readonly Phrase[] CostHeading = [new("page.cost-what", "What"), new("page.cost-amount", "How much")];

    public static void Write(Plan plan, HtmlText page)
    {
        if (!plan.Waste.IsEmpty) page.Element("h2", SheetWords.WhatLeaves);
        page.Table(Waste, WasteHeading, plan.Waste.Select(w => (IReadOnlyList<string>)
        [
            page.Said(w.What), page.Said(w.HowMuch), page.Said(w.From), page.Said(w.ClassWords),
            page.Said(WasteWay.With(("way", w.WayWords), ("destination", w.Destination))),
        ]));
        if (!plan.Care.IsEmpty) page.Element("h2", SheetWords.Afterwards);
        page.Table(Care, CareHeading, plan.Care.Select(c => (IReadOnlyList<string>)
        [
            page.Said(SheetWords.First(c)), page.Said(c.EveryMonths is { } months ? Every.With(("months", months)) : Once), page.Said(c.What),
            page.Said(c.Amount),
        ]));
        var costs = CostLines.Of(plan.Costs).ToList();
        if (costs.Count > 0) page.Element("h2", SheetWords.Costs);
        page.Table(SheetWords.Costs, CostHeading, costs.Select(c => (IReadOnlyList<string>)[page.Said(c.What), c.Sum.ToString()]));
    }
}
