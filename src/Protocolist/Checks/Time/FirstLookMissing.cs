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
            yield return Finding.Note("first-look-missing", $"{house.Step.Volume?.Text() ?? "the fluid"} of {house.Fluid.Name} takes up {plan.Water.Text()} of water from the body, and nobody measures it before {(first is { } on ? LocalDatePattern.Iso.Format(on) : "any date")}", "measure its strength 1 to 4 weeks after sealing").At(house);
    }
}
