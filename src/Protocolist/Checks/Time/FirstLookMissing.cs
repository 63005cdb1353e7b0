using System.Collections.Immutable;
using NodaTime;
using Protocolist.Findings;

namespace Protocolist.Checks.Time;

/// <summary>Alcohol is measured some weeks after sealing.</summary>
internal static class FirstLookMissing
{
    private const int MostDays = 62;

    private static readonly Phrase TakesUpWater = new("first-look-missing", "{fluid} takes up {water} of water from the body, and {look}");
    private static readonly Phrase SoMuch = new("first-look-missing.so-much", "{volume} of {fluid}");
    private static readonly Phrase NobodyBefore = new(
        "first-look-missing.nobody-before", "nobody measures it before {on:day}, {days} {days|day|days} after the last step; {most} is the most");

    private static readonly Phrase NoDate = new("first-look-missing.no-date", "no date is set to measure it");
    private static readonly Phrase Measure = new("first-look-missing.remedy", "measure its strength 1 to 4 weeks after sealing");

    public static PlanCheck Check { get; } = new(
        "first-look-missing",
        "the specimen: water from the body has weakened the fluid by then, and it can still be put right",
        "Simmons 2009, natural-history collections list (change once, then test); the two months are common practice",
        Find)
    {
        Severities = [new(Severity.Note, "nobody looks at a jar of alcohol within 62 d of its closing")],
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        if (plan.House is not { Fluid: { IsAlcohol: true } fluid } house || plan.Plan.End is not { } end) return [];
        LocalDate? first = null;
        foreach (var look in plan.Plan.Care)
        {
            if (look.On is { } on && !(first <= on)) first = on;
        }

        var days = first is { } date ? Period.DaysBetween(end.Date, date) : int.MaxValue;
        if (days <= MostDays) return [];
        Argument name = ("fluid", fluid.Name);
        var filling = house.Volume is { } volume ? ("fluid", SoMuch.With(("volume", volume), name)) : name;
        Message asked = first is { } late ? NobodyBefore.With(("on", late), ("days", days), ("most", MostDays)) : NoDate;
        var message = TakesUpWater.With(filling, ("water", plan.Water), ("look", asked));
        return [Finding.Note("first-look-missing", message, Measure).At(house, "fluid", "volume").By("specimen.lot-volume", "specimen.water-share")];
    }
}
