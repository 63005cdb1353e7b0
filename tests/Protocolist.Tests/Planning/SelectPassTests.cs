using Protocolist.Findings;
using static Protocolist.Tests.Planning.PlanFixture;

namespace Protocolist.Tests.Planning;

public class SelectPassTests
{
    [Fact]
    public void Nearest_group_wins_over_more_limits()
    {
        var shelf = Shelf(("of-vertebrates", "{group: vertebrate, mass: 1 g to 100 kg, length: 1 mm to 5 m}", Fix), ("of-mammals", "{group: mammal}", Fix));

        Assert.Equal("of-mammals", Plan(Mammal("7 kg"), shelf).Value!.Protocol.Id);
    }

    [Fact]
    public void More_limits_win_within_a_group()
    {
        var shelf = Shelf(("any-mammal", "{group: mammal}", Fix), ("heavy-mammal", "{group: mammal, mass: 2 kg to 60 kg}", Fix));

        Assert.Equal("heavy-mammal", Plan(Mammal("7 kg"), shelf).Value!.Protocol.Id);
        Assert.Equal("any-mammal", Plan(Mammal("1 kg"), shelf).Value!.Protocol.Id);
    }

    [Fact]
    public void Neighbouring_classes_never_share_an_animal()
    {
        var shelf = Shelf(("small", "{group: mammal, mass: 20 g to 2 kg}", Fix), ("large", "{group: mammal, mass: 2 kg to 60 kg}", Fix));

        Assert.Equal("large", Plan(Mammal("2 kg"), shelf).Value!.Protocol.Id);
        Assert.Equal("small", Plan(Mammal("1999 g"), shelf).Value!.Protocol.Id);
    }

    [Fact]
    public void Tie_is_an_error_that_names_both()
    {
        var shelf = Shelf(("by-mass", "{group: mammal, mass: 2 kg to 60 kg}", Fix), ("by-volume", "{group: mammal, volume: 2 L to 60 L}", Fix));

        var made = Plan(Mammal("7 kg"), shelf);

        Assert.Null(made.Value);
        var tie = Assert.Single(made.Findings, f => f.Severity == Severity.Error);
        Assert.Equal("several-protocols", tie.Id);
        Assert.Contains("'by-mass'", tie.Message.ToString(), StringComparison.Ordinal);
        Assert.Contains("'by-volume'", tie.Message.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Near_miss_is_named_with_what_keeps_the_body_out()
    {
        var made = Plan(Mammal("90 kg"), Shelf(("large", "{group: mammal, mass: 2 kg to 60 kg}", Fix)));

        Assert.Null(made.Value);
        var none = Assert.Single(made.Findings, f => f.Severity == Severity.Error);
        Assert.Equal("no-protocol", none.Id);
        Assert.Contains("'large': mass 90 kg is outside 2 to 60 kg", none.Message.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_for_a_group_names_the_nearest_groups()
    {
        var made = Plan(Mammal("7 kg"), Shelf(("birds", "{group: bird}", Fix), ("snails", "{group: gastropod}", Fix)));

        Assert.Null(made.Value);
        Assert.Contains("the nearest are for bird, gastropod", Assert.Single(made.Findings, f => f.Severity == Severity.Error).Message.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Trait_limits_a_class_too()
    {
        var shelf = Shelf(("adults", "{group: mammal, life-stage: adult}", Fix));

        Assert.NotNull(Plan(Mammal("7 kg") with { LifeStage = Protocolist.Specimens.LifeStage.Adult }, shelf).Value);
        Assert.Contains("life-stage is unknown, not adult", Plan(Mammal("7 kg"), shelf).Findings[^1].Message.ToString(), StringComparison.Ordinal);
    }
}
