using Protocolist.Protocols;

namespace Protocolist.Tests.Protocols;

/// <summary>The index that travels with the bundled protocols is theirs. That each of them is proved is held by <see cref="BundledProtocolsTests"/>.</summary>
public sealed class BundledIndexTests
{
    private static readonly Shelf Read = Shelf.Of([BundledProtocols.Sources()]);

    /// <summary>After a change of a bundled protocol, run once with PROTOCOLIST_KEEP=1: it is then made anew.</summary>
    [Fact]
    public void The_index_is_that_of_the_files() => KeptText.Holds("../../src/Protocolist/Protocols/BundledIndex.json", BundledIndex.Write(Read.Protocols));

    [Fact]
    public void The_shelf_by_the_index_is_the_shelf_that_was_read()
    {
        var bundled = Shelf.Bundled();
        Assert.Equal(Read.Shelved.Select(s => (s.Id, s.File, s.Class.ToString())), bundled.Shelved.Select(s => (s.Id, s.File, s.Class.ToString())));
        Assert.All(Read.Shelved.Zip(bundled.Shelved), pair => Assert.Equal(pair.First.Class.Limits, pair.Second.Class.Limits));
        Assert.Equal(Read.Protocols.Select(p => p.Digest), bundled.Protocols.Select(p => p.Digest));
        Assert.Equal(Read.Digest, bundled.Digest);
    }

    [Fact]
    public void A_house_protocol_that_others_extend_changes_those_others()
    {
        var line = BundledIndex.ById.Values.First(p => !p.Line.IsEmpty);
        var text = BundledProtocols.Text(BundledIndex.ById[line.Line[^1]].File);
        var house = Shelf.BundledWith([new SourceText("house.yaml", text + "x-house: 1\n")]);
        Assert.NotEqual(line.Digest, house.Find(line.Id)!.Digest);
        Assert.NotEqual(Shelf.Bundled().Digest, house.Digest);
    }
}
