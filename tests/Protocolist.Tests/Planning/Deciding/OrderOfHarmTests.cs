using Protocolist.Planning.Deciding;

namespace Protocolist.Tests.Planning.Deciding;

public class OrderOfHarmTests
{
    [Fact]
    public void Each_check_stands_in_one_place()
    {
        var ids = OrderOfHarm.Places.SelectMany(p => p.Checks).ToList();

        Assert.Equal(ids.Distinct(StringComparer.Ordinal), ids);
        Assert.Equal(OrderOfHarm.Places.Select(p => p.Harm).Order(), OrderOfHarm.Places.Select(p => p.Harm));
        Assert.All(OrderOfHarm.OfStock, id => Assert.Contains(id, ids));
    }

    /// <summary>What is listed exists: as a check, or as a phrase of an earlier pass.</summary>
    [Fact]
    public void What_is_listed_can_be_found()
    {
        var known = AllChecks.Descriptions.Select(c => c.Id).Concat(Catalogue.English.Split('\n').Select(l => l.Split(':')[0].Trim())).ToHashSet(StringComparer.Ordinal);

        Assert.All(OrderOfHarm.Places.SelectMany(p => p.Checks), id => Assert.Contains(id, known));
    }

    /// <summary>A check that protects people weighs where people come first, or is about what no way changes.</summary>
    [Fact]
    public void The_ranks_are_those_that_are_declared() => Assert.Equal(
        [
            Harm.Start, Harm.People, Harm.Law, Harm.Waiting, Harm.Ruin, Harm.Use, Harm.Option, Harm.Minute, Harm.Hands, Harm.Work, Harm.Waste, Harm.Money,
            Harm.Fluid, Harm.Shelf,
        ],
        Enum.GetValues<Harm>());
}
