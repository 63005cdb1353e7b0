using NodaTime;
using Protocolist.Benches;
using Protocolist.Plans;
using Protocolist.Specimens;

namespace Protocolist.Tests.Wording;

/// <summary>What a plan lists, it lists in the order of days, ids and the bench file: of no words, which are others in another language.</summary>
public class OrderTests
{
    private static readonly Plan Plan = new Planner(Shelf.Bundled()).Plan(new(
        SpecimenReader.Read(new("s.yaml", File.ReadAllText(Repository.Otter))).Value!,
        BenchReader.Read(new("b.yaml", File.ReadAllText(Repository.SkerryPoint)), DateTimeZoneProviders.Tzdb).Value!,
        new LocalDateTime(2027, 3, 1, 9, 0))).Value!;

    [Fact]
    public void Care_of_a_day_stands_by_its_ids() =>
        Assert.Equal(Plan.Care.OrderBy(c => c.On).ThenBy(c => c.Id, StringComparer.Ordinal), Plan.Care);

    [Fact]
    public void Fluids_and_salts_stand_by_their_ids()
    {
        var books = Plan.Materials.Where(m => m.Kind is MaterialKind.Fluid or MaterialKind.Salt or MaterialKind.Water).Select(m => m.Id).ToList();
        Assert.Equal(books.Order(StringComparer.Ordinal), books);
    }
}
