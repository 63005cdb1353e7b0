using Protocolist.Checks;
using Protocolist.Findings;

namespace Protocolist.Tests.Checks;

public class ProvenanceTests
{
    private static readonly Phrase Quoted = new("a-test", "'{history:; }'");

    [Theory]
    [InlineData("bycatch", "bled", "'bycatch; bled'")]
    [InlineData(" ", "bled", "'bled'")]
    [InlineData("bycatch", null, "'bycatch'")]
    [InlineData(null, "", "''")]
    public void History_is_how_it_was_obtained_and_what_was_noted(string? how, string? notes, string expected) =>
        Assert.Equal(expected, Quoted.With((Cases.Fish with { HowObtained = how, Notes = notes }).History()).ToString());

    [Theory]
    [InlineData("Skerry Point", " at 'Skerry Point'")]
    [InlineData(" ", "")]
    [InlineData(null, "")]
    public void Place_is_said_where_it_was_noted(string? where, string expected) =>
        Assert.Equal(expected, (Cases.Fish with { Where = where }).Place().ToString());
}
