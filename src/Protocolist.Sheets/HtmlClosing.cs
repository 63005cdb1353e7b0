using System.Globalization;
using NodaTime.Text;
using Protocolist.Plans;

namespace Protocolist.Sheets;

/// <summary>The end of the printed page: what leaves, what comes after, what it costs.</summary>
internal static class HtmlClosing
{
    public static void Write(Plan plan, HtmlText page)
    {
        if (!plan.Waste.IsEmpty) page.Element("h2", "What leaves");
        page.Table("Waste", ["What", "How much", "From", "Class", "Where to"], plan.Waste.Select(w => (IReadOnlyList<string>)
            [$"{w.What}", $"{w.HowMuch}", $"{w.From}", $"{w.ClassWords}", $"{w.WayWords}: {w.Destination}"]));
        if (!plan.Care.IsEmpty) page.Element("h2", "Afterwards");
        page.Table("Care", ["First on", "Then", "What", "Amount"], plan.Care.Select(c => (IReadOnlyList<string>)
            [
                c.On is { } on ? LocalDatePattern.Iso.Format(on) : "later",
                c.EveryMonths is { } months ? string.Create(CultureInfo.InvariantCulture, $"every {months} {(months == 1 ? "month" : "months")}") : "once",
                $"{c.What}",
                $"{c.Amount}",
            ]));
        var costs = CostLines.Of(plan.Costs).ToList();
        if (costs.Count > 0) page.Element("h2", "Costs");
        page.Table("Costs", ["What", "How much"], costs.Select(c => (IReadOnlyList<string>)[c.What, c.Sum.ToString()]));
    }
}
