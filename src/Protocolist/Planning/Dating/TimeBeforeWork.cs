using NodaTime;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Planning.Drafting;
using Protocolist.Specimens;
using UnitsNet;

namespace Protocolist.Planning.Dating;

/// <summary>The time from death to the first work on the body, weighed by how warm it was.</summary>
internal static class TimeBeforeWork
{
    private static readonly Temperature Freezer = Temperature.FromDegreesCelsius(-18); // the usual household and laboratory freezer; common practice

    private static readonly Phrase BeforeDeath = new("work-before-death", "the animal died {died}, and the first step begins {first}");
    private static readonly Phrase CorrectEither =
        new("work-before-death.remedy", "correct 'died-at' or the start; plans are for animals that are already dead");
    private static readonly Phrase Between =
        new("warm-hours-before-work", "{time:clock} lie between death and the first step, taken at {kept:0.# °C} throughout: {meaning}");

    /// <summary>What the time since death means for the work; null where death or condition is not known.</summary>
    public static Finding? Weigh(Draft draft, Bench bench)
    {
        if (draft.Body.Specimen.DiedAt is not { } died || Begins(draft) is not { } first) return null;
        if (first < died)
        {
            var zone = bench.Opening.Zone;
            return Finding.Error(BeforeDeath.Id, BeforeDeath.With(Argument.At("died", died, zone), Argument.At("first", first, zone)), CorrectEither);
        }

        Temperature? at = draft.Body.Specimen.Condition switch
        {
            Condition.Fresh => bench.Temperatures.Room,
            Condition.Chilled => bench.Temperatures.Cold,
            Condition.Frozen => Freezer,
            _ => null,
        };
        if (at is not { } kept) return null;
        var meaning = TimeSinceDeath.Weigh([new(first - died, kept.DegreesCelsius)]).Meaning;
        return meaning with { Message = Between.With(("time", first - died), ("kept", kept), ("meaning", meaning.Message)) };
    }

    private static Instant? Begins(Draft draft)
    {
        Instant? first = null;
        foreach (var step in draft.Steps)
        {
            if (step.When is { } when && !(first <= when.Start)) first = when.Start;
        }

        return first;
    }
}
