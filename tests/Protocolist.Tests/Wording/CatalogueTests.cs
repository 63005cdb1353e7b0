using System.Text;
using System.Text.RegularExpressions;
using Protocolist.Findings;
using Protocolist.Tests.Planning.Revising;

namespace Protocolist.Tests.Wording;

/// <summary>What another language needs: phrases that are told apart by their ids, places that can be filled, a catalogue that can be read.</summary>
public sealed partial class CatalogueTests
{
    [Fact]
    public void Phrases_of_one_id_say_the_same() =>
        Assert.Empty(AllPhrases.Found.GroupBy(p => p.Phrase.Id).Where(g => g.DistinctBy(p => p.Phrase.English).Count() > 1).Select(g => $"{g.Key}: {string.Join(", ", g.Select(p => p.Where))}"));

    [Fact]
    public void There_are_many_and_their_ids_are_words() =>
        Assert.All(AllPhrases.Found, p => Assert.Matches("^[a-z0-9]+([.-][a-z0-9]+)*$", p.Phrase.Id));

    [Fact]
    public void The_names_of_places_are_words() =>
        Assert.All(AllPhrases.Found, p => Assert.All(p.Phrase.Places(), name => Assert.Matches("^[a-z]+(-[a-z0-9]+)*$", name)));

    [Fact]
    public void A_catalogue_is_laid_over_the_English_by_id()
    {
        var read = Catalogue.Read(new("pseudo.yaml", Pseudo()));
        Assert.Empty(read.Findings);
        foreach (var (phrase, _) in AllPhrases.Found)
            Assert.Equal(phrase.Places().Order(), new Phrase("x", read.Value!.Of(phrase)).Places().Order());

        var plan = SkerryPoint.Plan(SkerryPoint.Otter);
        Assert.All(plan.Findings.Where(f => f.Message.Phrase!.Id.Length > 0), f => Assert.StartsWith("⟦", f.Message.ToString(read.Value!), StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("", "empty-file")]
    [InlineData("format: 2\nlanguage: de\n", "later-format")]
    [InlineData("format: 1\n", "missing-key")]
    [InlineData("format: 1\nlanguage: de\nwords: 1\n", "unknown-key")]
    [InlineData("format: 1\nlanguage: de\nphrases: [a]\n", "not-a-mapping")]
    public void A_catalogue_that_cannot_be_read_says_why(string yaml, string id)
    {
        var read = Catalogue.Read(new("de.yaml", yaml));
        Assert.Null(read.Value);
        Assert.Contains(read.Findings, f => f.Id == id);
    }

    /// <summary>Every phrase in a language that nobody speaks: its words between brackets, its places as they are.</summary>
    private static string Pseudo()
    {
        var yaml = new StringBuilder("format: 1\nlanguage: qps\nphrases:\n");
        foreach (var phrase in AllPhrases.Found.Select(p => p.Phrase).DistinctBy(p => p.Id))
            yaml.Append("  ").Append(phrase.Id).Append(": \"⟦").Append(Quoted().Replace(phrase.English, @"\$0").Replace("\n", "\\n", StringComparison.Ordinal)).Append("⟧\"\n");
        return yaml.ToString();
    }

    [GeneratedRegex(@"[\\""]")]
    private static partial Regex Quoted();
}
