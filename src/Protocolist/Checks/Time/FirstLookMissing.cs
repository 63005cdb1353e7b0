using NodaTime;
using NodaTime.Text;
using Protocolist.Findings;

namespace Protocolist.Checks.Time;

/// <summary>Alcohol is measured some weeks after sealing.</summary>
internal static class FirstLookMissing
{
    private const int MostDays = 62;

    public static PlanCheck Check { get; } = new(
        "first-look-missing",
        "the specimen: water from the body has weakened the fluid by then, and it can still be put right",
        "Simmons 2009, natural-history collections list (change once, then test); the two months are common practice",
        Find)
    {
        Speaks = [new(Severity.Note, "nobody looks at a jar of alcohol within 62 d of its closing")],
    };

    private static IEnumerable<Finding> Find(ReviewCase plan)
    {
        if (plan.House is not { Fluid.IsAlcohol: true } house || plan.Plan.End is not { } end) yield break;
        var first = plan.Plan.Care.Where(c => c.On is not null).Min(c => c.On);
        if (first is null || Period.DaysBetween(end.Date, first.Value) > MostDays)
            yield return Finding.Note("first-look-missing", $"{(house.Step.Volume is { } volume ? $"{volume.Text()} of {house.Fluid.Name}" : house.Fluid.Name)} takes up {plan.Water.Text()} of water from the body, and {(first is { } on ? $"nobody measures it before {LocalDatePattern.Iso.Format(on)}, {Telling.Count(Period.DaysBetween(end.Date, on), "day", "days")} after the last step; {MostDays} is the most" : "no date is set to measure it")}", "measure its strength 1 to 4 weeks after sealing").At(house, "fluid", "volume").By("specimen.lot-volume", "specimen.water-share");
    }
}
