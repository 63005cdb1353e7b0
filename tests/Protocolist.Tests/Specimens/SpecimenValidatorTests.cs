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
        { "absurd-count", Trout with { Count = 1_000_001, Mass = Mass.FromMilligrams(1) } },
        { "absurd-lot", Trout with { Count = 10_000, Mass = Mass.FromKilograms(90) } },
        { "absurd-lot", Trout with { Count = 10_000, LotMass = Mass.FromTonnes(501) } },
        { "absurd-date", Trout with { FoundOn = new LocalDate(9999, 12, 31) } },
        { "absurd-date", Trout with { DiedAt = Instant.MinValue } },
        { "absurd-date", Trout with { DiedAt = Instant.MaxValue } },
        { "not-one-line", Trout with { Where = "a\nb" } },
        { "not-one-line", Trout with { Id = "a\tb" } },
        { "unreadable-character", Trout with { CollectedBy = "a\u202Eb" } },
        { "unreadable-character", Trout with { Permits = ["A", "\u001B[31m"] } },
        { "text-too-long", Trout with { Notes = new string('x', 10_001) } },
        { "unknown-word", Trout with { Sex = (Sex)99 } },
        { "unknown-group", Trout with { Group = "boni-fish" } },
        { "missing-group", Trout with { Group = null } },
        { "group-against-taxon", Trout with { HigherTaxon = "Aves" } },
    };

    [Fact]
    public void Check_is_silent_about_a_sound_specimen() => Assert.Empty(Trout.Validate());

    [Theory]
    [MemberData(nameof(Faults), DisableDiscoveryEnumeration = true)]
    public void Check_finds_what_cannot_be_and_says_what_to_do(string id, Specimen specimen)
    {
        var finding = Assert.Single(specimen.Validate());
        Assert.Equal(id, finding.Id);
        Assert.Matches(@"^[a-z-]+(\[\d\])?$", finding.Subject);
        Assert.False(finding.Remedy.IsEmpty);
        Assert.DoesNotContain("{", finding.Message.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_list_that_was_never_made_is_an_empty_one()
    {
        var trout = Trout with { Permits = default };

        Assert.Empty(trout.Permits);
        Assert.Empty(trout.Validate());
    }

    [Fact]
    public void An_impossible_mass_is_shown_in_the_unit_that_one_would_write() =>
        Assert.Equal("mass is -5 g, and must be a number above 0", Assert.Single((Trout with { Mass = Mass.FromGrams(-5) }).Validate()).Message.ToString());

    [Fact]
    public void Check_finds_everything_at_once() =>
        Assert.Equal(3, (Trout with { Id = "", Count = -1, Mass = Mass.FromGrams(-1) }).Validate().Length);

    [Fact]
    public void Check_writes_the_same_in_every_culture()
    {
        var faulty = Trout with { StandardLength = Length.FromCentimeters(32.5), FoundOn = new LocalDate(2031, 5, 2), DiedAt = Instant.FromUtc(2031, 5, 9, 8, 0) };
        var here = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo("ar-SA");
            var messages = faulty.Validate().Select(f => f.Message.ToString());
            Assert.Equal(
                ["standard length 32.5 cm is more than total length 30 cm", "it died on 2031-05-09, after it was found dead on 2031-05-02"], messages);
        }
        finally
        {
            CultureInfo.CurrentCulture = here;
        }
    }
}
