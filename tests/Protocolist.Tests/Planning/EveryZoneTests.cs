using NodaTime;
using Protocolist.Benches;
using Protocolist.Specimens;
using UnitsNet;

namespace Protocolist.Tests.Planning;

/// <summary>A year of whole plans in every zone of the time zone database: each has its dates, in order, on open days.</summary>
public class EveryZoneTests
{
    private static readonly Shelf Shelf = Shelf.Bundled();

    private static readonly Specimen Snail = new() { Id = "Z-1", Group = "gastropod", Mass = Mass.FromGrams(12), Condition = Condition.Fresh };

    [Fact]
    public void A_year_of_plans_is_dated_in_every_zone()
    {
        var number = 0;
        foreach (var id in DateTimeZoneProviders.Tzdb.Ids)
        {
            var bench = BenchReader.Read(new SourceText("bench.yaml", $"format: 1\nbench: anywhere\nname: Anywhere\nzone: {id}\nhours: {{mon-fri: 08:00 to 17:00, sat: 09:00 to 13:00}}\n"), DateTimeZoneProviders.Tzdb).Value!;
            for (var month = 0; month < 12; month++)
            {
                // Every zone begins on other days and hours, so that all days of the year come up, those of clock changes too.
                var start = new LocalDateTime(2027, 1, 1, 0, 30).PlusMonths(month).PlusDays(number % 28).PlusHours(number % 23);
                number++;
                var made = new Planner(Shelf).Plan(new(Snail, bench, start));
                var plan = made.Value!;
                Assert.DoesNotContain(plan.Findings, f => f.Id == "no-dates-fit");
                var dates = plan.Steps.Where(s => s.Start is not null).ToList();
                Assert.NotEmpty(dates);
                Assert.All(dates, s => Assert.True(s.Start!.Value.ToInstant() <= s.End!.Value.ToInstant(), $"{id} {start} {s.Id}"));
                Assert.All(dates.Zip(dates.Skip(1)), p => Assert.True(p.First.Start!.Value.ToInstant() <= p.Second.Start!.Value.ToInstant(), $"{id} {start} {p.Second.Id}"));
                Assert.All(dates, s => Assert.Equal(DateTimeZoneProviders.Tzdb[id].GetUtcOffset(s.Start!.Value.ToInstant()), s.Start!.Value.Offset));
            }
        }
    }
}
