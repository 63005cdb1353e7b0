using System.Text;
using System.Text.RegularExpressions;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Plans;
using Protocolist.Sheets;
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

    /// <summary>Data for programs, and what is a person's or a protocol's own, are the same in any language; nothing else that an output says is.</summary>
    [Fact]
    public void Every_output_is_said_in_the_language_that_is_asked_for()
    {
        var pseudo = Catalogue.Read(new("pseudo.yaml", Pseudo())).Value!;
        var plan = SkerryPoint.Plan(SkerryPoint.Otter);
        plan = plan with { Purchases = [new(AllPhrases.Found.First(p => p.Phrase.Places().Count == 0).Phrase, new(AmountKind.Count, 50), 1, null, 3)] };
        string[] own =
        [
            plan.Protocol.Title,
            .. from step in plan.Steps
               from message in (Message[])[step.Title, .. step.Instructions, .. step.LookFor, .. step.Cautions]
               where message.Phrase?.Id == "own-text"
               select message.ToString(),
            .. plan.Steps.SelectMany(s => (string?[])[s.Source, s.Fluid, s.Vessel]).Concat(plan.Care.Select(c => c.Source)).OfType<string>().Where(s => s.Length > 0),
        ];
        foreach (var write in (Func<Plan, Language?, string>[])[TextSheet.Write, HtmlSheet.Write, CalendarSheet.Write, StepTable.Write, ShoppingList.Write])
        {
            var (english, other) = (write(plan, null), write(plan, pseudo));
            Assert.Equal(english, write(plan, Language.English));
            Assert.NotEqual(english, other);
            // Lines of a calendar are folded, those of the text are wrapped.
            var lines = Untold(other).Replace("\r\n ", "", StringComparison.Ordinal).Replace("\n    ", " ", StringComparison.Ordinal);
            var untold = own.Aggregate(lines.Replace("\\,", ",", StringComparison.Ordinal).Replace("\\;", ";", StringComparison.Ordinal), (text, words) => text.Replace(words, "", StringComparison.Ordinal).Replace(System.Net.WebUtility.HtmlEncode(words), "", StringComparison.Ordinal));
            Assert.Equal([], untold.Split('\n').Where(l => TwoWords().IsMatch(l) && !ForPrograms().IsMatch(l)));
        }

        var read = PlanJson.Read(new("plan.json", PlanJson.Write(plan, pseudo)));
        Assert.Empty(read.Findings);
        Assert.Equal(plan, read.Value);
        Assert.Equal(TextSheet.Write(plan, pseudo), TextSheet.Write(read.Value!, pseudo));

        // What stands outside the brackets that the language puts around each phrase.
        static string Untold(string text)
        {
            var (depth, left) = (0, new StringBuilder());
            foreach (var c in text)
            {
                depth += c == '⟦' ? 1 : c == '⟧' ? -1 : 0;
                if (depth == 0 && c != '⟧') left.Append(c);
            }

            return left.ToString();
        }
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

    [Theory]
    [InlineData("language: de_DE", "", "bad-language-tag", 2, 11)]
    [InlineData("language: de", "  ready-mad: x\n", "unknown-phrase", 4, 3)]
    [InlineData("language: de", "  nothing-fits: \"\"\n", "unknown-phrase", 4, 3)]
    [InlineData("language: de", "  missing-key: \" \"\n", "empty-phrase", 4, 16)]
    [InlineData("language: de", "  missing-key: \"{what} braucht {key\"\n", "broken-place", 4, 16)]
    [InlineData("language: de", "  missing-key: \"{what} braucht }{key}\"\n", "broken-place", 4, 16)]
    [InlineData("language: de", "  missing-key: \"{what} braucht {}{key}\"\n", "broken-place", 4, 16)]
    [InlineData("language: de", "  missing-key: \"{what} braucht {kez}\"\n", "unknown-place", 4, 16)]
    [InlineData("language: de", "  missing-key: \"{what} fehlt etwas\"\n", "lost-place", 4, 16)]
    [InlineData("language: de", "  missing-key: \"{what} fehlt {key|ein|viel}\"\n", "lost-place", 4, 16)]
    [InlineData("language: de", "  missing-key: \"{what}\\nbraucht {key}\"\n", "phrase-of-two-lines", 4, 16)]
    [InlineData("language: de", "  bad-number.whole: \"{key}: ganze Zahl {least:0 mL} bis {most}, nicht {word}\"\n", "place-shown-otherwise", 4, 21)]
    public void A_fault_of_a_catalogue_is_told_at_its_place(string language, string phrases, string id, int line, int column)
    {
        var read = Catalogue.Read(new("de.yaml", $"format: 1\n{language}\nphrases:\n{phrases}"));
        var fault = Assert.Single(read.Findings, f => f.Severity != Severity.Note);
        Assert.Equal((id, line, column), (fault.Id, fault.Where.Line, fault.Where.Column));
        Assert.NotEqual("", fault.Remedy.ToString());
        Assert.Equal(fault.Severity == Severity.Error, read.Value is null);
    }

    [Fact]
    public void All_faults_of_a_phrase_are_told_at_once()
    {
        var read = Catalogue.Read(new("de.yaml", "format: 1\nlanguage: de\nphrases:\n  bad-number.whole: \"{nonsense} ganze Zahl {least:0 mL} bis {most}\"\n"));
        Assert.Equal(
            ["unknown-place", "lost-place", "lost-place", "place-shown-otherwise"],
            read.Findings.Where(f => f.Severity == Severity.Error).Select(f => f.Id));
    }

    [Theory]
    [InlineData("  missing-key: \"'{key}' fehlt bei {what}\"\n")]
    [InlineData("  known-here: \"hier bekannt: {names:und }\"\n")]
    [InlineData("  missing-key:\n")]
    public void A_language_has_its_own_order_and_joints_and_may_leave_phrases_out(string phrases)
    {
        var read = Catalogue.Read(new("de.yaml", $"format: 1\nlanguage: de\nphrases:\n{phrases}"));
        Assert.Equal("untranslated", Assert.Single(read.Findings).Id);
        Assert.NotNull(read.Value);
    }

    /// <summary>After a phrase was changed or added, run once with PROTOCOLIST_KEEP=1: it is then made anew.</summary>
    [Fact]
    public void The_catalogue_of_the_English_is_that_of_the_phrases()
    {
        KeptText.Holds("../../src/Protocolist/Wording/English.yaml", Written("en", ""));
        Assert.Empty(Catalogue.Read(new("english.yaml", Catalogue.English)).Findings);
    }

    [Fact]
    public void A_language_has_a_tag() => Assert.Throws<ArgumentException>(() => new Language("\" onload=", []));

    /// <summary>Every phrase in a language that nobody speaks: its words between brackets, its places as they are.</summary>
    private static string Pseudo() => Written("qps", "⟦⟧");

    private static string Written(string tag, string brackets)
    {
        var yaml = new StringBuilder($"format: 1\nlanguage: {tag}\nphrases:\n");
        foreach (var phrase in AllPhrases.Found.Select(p => p.Phrase).DistinctBy(p => p.Id).OrderBy(p => p.Id, StringComparer.Ordinal))
        {
            var text = Quoted().Replace(phrase.English, @"\$0").Replace("\n", "\\n", StringComparison.Ordinal);
            yaml.Append("  ").Append(phrase.Id).Append(": \"").Append(brackets.Length > 0 ? brackets[..1] : "").Append(text).Append(brackets.Length > 0 ? brackets[1..] : "").Append("\"\n");
        }

        return yaml.ToString();
    }

    [GeneratedRegex("[a-z]{2,} [a-z]{2,}")]
    private static partial Regex TwoWords();

    /// <summary>Headings of tables, rules of style, markup.</summary>
    [GeneratedRegex("^(specimen,number,|PRODID:|item,pack,|<|[a-z0-9@.:#, -]+ [{])")]
    private static partial Regex ForPrograms();

    [GeneratedRegex(@"[\\""]")]
    private static partial Regex Quoted();
}
