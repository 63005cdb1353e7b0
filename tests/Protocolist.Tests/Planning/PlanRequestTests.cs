using NodaTime;
using Protocolist.Benches;

namespace Protocolist.Tests.Planning;

public class PlanRequestTests
{
    private static readonly PlanRequest Sound = new(PlanFixture.Mammal("7 kg"), Bench.Empty(DateTimeZone.Utc), PlanFixture.Monday);

    [Fact]
    public void A_request_is_asked_for_its_dates_its_words_its_specimen_and_its_bench()
    {
        Assert.Empty(Sound.Validate());
        Assert.Equal(["absurd-date"], (Sound with { Start = LocalDateTime.MaxIsoValue }).Validate().Select(f => f.Id));
        Assert.Equal(["absurd-date"], (Sound with { By = LocalDate.MinIsoValue }).Validate().Select(f => f.Id));
        Assert.Equal(["not-one-line"], (Sound with { Choices = Sound.Choices.Add("keeping", "a\nb") }).Validate().Select(f => f.Id));
        Assert.Equal(["missing-id"], (Sound with { Specimen = Sound.Specimen with { Id = "" } }).Validate().Select(f => f.Id));
        Assert.Equal(["bad-number"], (Sound with { Bench = new(Sound.Bench.Bench with { People = 0 }) }).Validate().Select(f => f.Id));
        Assert.Throws<ArgumentNullException>(() => Sound with { Specimen = null! });
        Assert.Throws<ArgumentNullException>(() => Sound with { Bench = null! });
        Assert.Throws<ArgumentNullException>(() => new PlanRequest(null!, Sound.Bench, Sound.Start));
        Assert.Throws<ArgumentNullException>(() => new PlanRequest(Sound.Specimen, (Bench)null!, Sound.Start));
        Assert.Throws<ArgumentNullException>(() => Sound with { Wishes = null! });
        Assert.Throws<ArgumentNullException>(() => Sound with { Choices = null! });
    }
}
