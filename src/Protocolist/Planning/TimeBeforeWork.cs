using NodaTime;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Planning.Scheduling;
using Protocolist.Specimens;

namespace Protocolist.Planning;

/// <summary>The time from death to the first work on the body, weighed by how warm it was.</summary>
internal static class TimeBeforeWork
{
    private const double FreezerC = -18; // the usual household and laboratory freezer; common practice

    /// <summary>What the time since death means for the work; null where death or condition is not known.</summary>
    public static Finding? Weigh(Draft draft, Bench bench)
    {
        var begins = draft.Steps.Where(s => s.When is not null).Select(s => (Instant?)s.When!.Value.Start).Min();
        if (draft.Body.Specimen.DiedAt is not { } died || begins is not { } first) return null;
        if (first < died)
        {
            return Finding.Error("work-before-death", $"the animal died {Wording.Of(died, bench.Opening.Zone)}, and the first step begins {Wording.Of(first, bench.Opening.Zone)}", "correct 'died-at' or the start; plans are for animals that are already dead");
        }

        double? celsius = draft.Body.Specimen.Condition switch
        {
            Condition.Fresh => bench.Temperatures.Room.DegreesCelsius,
            Condition.Chilled => bench.Temperatures.Cold.DegreesCelsius,
            Condition.Frozen => FreezerC,
            _ => null,
        };
        if (celsius is not { } kept) return null;
        var meaning = TimeSinceDeath.Weigh([new(first - died, kept)]).Meaning;
        var how = FormattableString.Invariant($"{Wording.Of(first - died)} lie between death and the first step, taken at {kept:0.#} °C throughout");
        return meaning with { Message = $"{how}: {meaning.Message}" };
    }
}
