using NodaTime;
using Protocolist.Findings;

namespace Protocolist.Tests.Protocols;

public sealed class HouseSampleTests
{
    private static readonly SourceText[] House =
        [.. Directory.EnumerateFiles(Path.Combine(AppContext.BaseDirectory, "samples", "house"), "*.yaml").Order(StringComparer.Ordinal).Select(f => new SourceText("house/" + Path.GetFileName(f), File.ReadAllText(f)))];

    [Fact]
    public void The_house_folder_overrides_three_bundled_protocols_and_adds_one()
    {
        var bundled = Shelf.Bundled();
        var shelf = Shelf.BundledWith(House);

        Assert.Equal(4, House.Length);
        Assert.DoesNotContain(shelf.Findings, f => f.Severity == Severity.Error);
        Assert.Equal(bundled.Protocols.Length + 1, shelf.Protocols.Length);
        Assert.Equal(["fish-medium", "gastropod-marine", "mammal-large"], shelf.Protocols.Where(p => p.File.StartsWith("house/", StringComparison.Ordinal) && bundled.Find(p.Id) is not null).Select(p => p.Id));
        Assert.NotNull(shelf.Find("teaching-squid"));
    }

    [Fact]
    public void Checking_it_finds_only_that_it_takes_the_place_of_three()
    {
        var findings = FileCheck.Run(House, DateTimeZoneProviders.Tzdb);

        Assert.Equal(3, findings.Length);
        Assert.All(findings, f => Assert.Equal(("overridden-protocol", Severity.Note), (f.Id, f.Severity)));
    }

    [Fact]
    public void What_it_changes_is_changed_and_the_rest_is_as_bundled()
    {
        var (bundled, house) = (Shelf.Bundled().Find("mammal-large")!, Shelf.BundledWith(House).Find("mammal-large")!);

        Assert.Equal("80 mm", house.Stages.Single(s => s.Id == "house").Expression("below-brim")!.Text);
        Assert.Equal(bundled.Stages.Select(s => s.Id), house.Stages.Select(s => s.Id));
        Assert.Equal(bundled.ClassText, house.ClassText);
    }
}
