using NodaTime;
using Protocolist.Benches;
using Protocolist.Specimens;
using UnitsNet;

namespace Protocolist.Tests.Conventions;

/// <summary>What the README shows of the library is compiled here, and stands there word for word.</summary>
public class ReadmeTests
{
    [Fact]
    public void The_library_is_used_as_the_readme_says()
    {
        var specimen = new Specimen { Id = "SKP-1", Group = "bony-fish", Mass = Mass.FromGrams(82), StandardLength = Length.FromCentimeters(15.5) };
        var bench = Bench.Empty(DateTimeZoneProviders.Tzdb["Atlantic/Azores"]);
        var planner = new Planner(Shelf.Bundled());
        var planned = planner.Plan(new(specimen, bench, new LocalDateTime(2027, 3, 2, 9, 0)));

        Assert.NotEmpty(planned.Value!.Steps);
        var readme = File.ReadAllText(Repository.File("README.md"));
        var source = File.ReadAllText(Repository.File("tests", "Protocolist.Tests", "Conventions", "ReadmeTests.cs"));
        Assert.Equal(
            new[] { typeof(LocalDateTime), typeof(Planner), typeof(Shelf), typeof(Bench), typeof(Specimen), typeof(Mass) }.Select(t => $"using {t.Namespace};").Distinct().Order(StringComparer.Ordinal),
            readme.Split('\n').Where(l => l.StartsWith("using ", StringComparison.Ordinal)).Order(StringComparer.Ordinal));
        Assert.All(source.Split('\n').Select(l => l.Trim()).Where(l => l.StartsWith("var ", StringComparison.Ordinal)).Take(4), line => Assert.Contains($"\n{line}\n", readme, StringComparison.Ordinal));
    }
}
