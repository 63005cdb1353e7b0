using System.Globalization;
using NodaTime;
using Protocolist.Specimens;
using UnitsNet;

namespace Protocolist.Tests.Specimens;

public class SpecimenValidatorTests
{
    private static readonly Specimen Trout = new()
    {
        Id = "HB-2031-017",
        Group = "bony-fish",
        Mass = Mass.FromGrams(290),
        TotalLength = Length.FromCentimeters(30),
        Count = 1,
    };

    public static TheoryData<string, Specimen> Faults => new()
    {
        { "missing-id", Trout with { Id = " " } },
        { "count-below-one", Trout with { Count = 0 } },
        { "not-positive", Trout with { Mass = Mass.Zero } },
        { "not-positive", Trout with { TotalLength = Length.FromCentimeters(-3) } },
        { "absurd-size", Trout with { Mass = Mass.FromTonnes(290) } },
        { "absurd-size", Trout with { TotalLength = Length.FromMeters(300) } },
        { "no-measurement", new Specimen { Id = "x", Group = "bony-fish" } },
        { "part-longer-than-whole", Trout with { StandardLength = Length.FromCentimeters(32) } },
        { "thickness-over-width", Trout with { Thickness = Length.FromCentimeters(4), Width = Length.FromCentimeters(3) } },
        { "girth-against-width", Trout with { Girth = Length.FromCentimeters(5), Height = Length.FromCentimeters(6) } },
        { "lot-lighter-than-one", Trout with { Count = 3, LotMass = Mass.FromGrams(200) } },
        { "died-after-found", Trout with { FoundOn = new LocalDate(2031, 5, 2), DiedAt = Instant.FromUtc(2031, 5, 9, 8, 0) } },
        { "unknown-group", Trout with { Group = "boni-fish" } },
        { "missing-group", Trout with { Group = null } },
        { "group-against-taxon", Trout with { HigherTaxon = "Aves" } },
    };

    [Fact]
    public void Check_is_silent_about_a_sound_specimen() => Assert.Empty(SpecimenValidator.Check(Trout));

    [Theory]
    [MemberData(nameof(Faults), DisableDiscoveryEnumeration = true)]
    public void Check_finds_what_cannot_be_and_says_what_to_do(string id, Specimen specimen)
    {
        var finding = Assert.Single(SpecimenValidator.Check(specimen));
        Assert.Equal(id, finding.Id);
        Assert.Matches("^[a-z-]+$", finding.Subject);
        Assert.NotEmpty(finding.Remedy.ToString());
        Assert.DoesNotContain("{", finding.Message.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Check_finds_everything_at_once() =>
        Assert.Equal(3, SpecimenValidator.Check(Trout with { Id = "", Count = -1, Mass = Mass.FromGrams(-1) }).Length);

    [Fact]
    public void Check_writes_the_same_in_every_culture()
    {
        var faulty = Trout with { StandardLength = Length.FromCentimeters(32.5), FoundOn = new LocalDate(2031, 5, 2), DiedAt = Instant.FromUtc(2031, 5, 9, 8, 0) };
        var here = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo("ar-SA");
            var messages = SpecimenValidator.Check(faulty).Select(f => f.Message.ToString());
            Assert.Equal(
                ["standard length 32.5 cm is more than total length 30 cm", "it died on 2031-05-09, after it was found dead on 2031-05-02"], messages);
        }
        finally
        {
            CultureInfo.CurrentCulture = here;
        }
    }
}
