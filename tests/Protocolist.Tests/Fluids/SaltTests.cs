using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using Protocolist.Findings;
using Protocolist.Fluids.Buffers;

namespace Protocolist.Tests.Fluids;

/// <summary>Salts by name and formula: a hydrate taken for another is a fixative of another pH.</summary>
public partial class SaltTests
{
    // IUPAC abridged atomic weights.
    private static readonly Dictionary<string, double> s_atoms = new()
    {
        ["H"] = 1.008,
        ["C"] = 12.011,
        ["N"] = 14.007,
        ["O"] = 15.999,
        ["Na"] = 22.990,
        ["Mg"] = 24.305,
        ["P"] = 30.974,
        ["S"] = 32.06,
        ["Cl"] = 35.45,
        ["Ca"] = 40.078,
        ["B"] = 10.81,
    };

    public static TheoryData<string> Formulas => [.. Salts.All.Select(s => s.Formula)];

    [Theory]
    [MemberData(nameof(Formulas))]
    public void Molar_mass_is_the_sum_of_the_atoms(string formula)
    {
        var salt = Salts.All.Single(s => s.Formula == formula);
        var parts = formula.Replace("(CH2O)n", "CH2O", StringComparison.Ordinal).Split('.');
        var water = parts.Length > 1 ? int.Parse(parts[1].Replace("H2O", "", StringComparison.Ordinal) is { Length: > 0 } n ? n : "1", CultureInfo.InvariantCulture) : 0;
        Assert.Equal(water, salt.Waters);
        Assert.Equal(Mass(parts[0]), salt.AnhydrousMolarMass, 0.0005);
        Assert.Equal(Mass(parts[0]) + water * 18.015, salt.MolarMass, 0.0005);
        Assert.Equal(formula.Split('.')[0], salt.Anhydrous);
    }

    [Fact]
    public void Each_salt_is_listed_once_under_its_own_name()
    {
        string[] expected =
        [
            "sodium dihydrogen phosphate monohydrate (NaH2PO4.H2O)", "sodium dihydrogen phosphate anhydrous (NaH2PO4)", "sodium dihydrogen phosphate dihydrate (NaH2PO4.2H2O)",
            "disodium phosphate anhydrous (Na2HPO4)", "disodium phosphate dihydrate (Na2HPO4.2H2O)", "disodium phosphate heptahydrate (Na2HPO4.7H2O)",
            "disodium phosphate dodecahydrate (Na2HPO4.12H2O)", "sodium hydroxide (NaOH)", "borax (Na2B4O7.10H2O)", "sodium tetraborate anhydrous (Na2B4O7)", "hexamine (C6H12N4)",
            "marble chips (CaCO3)", "sodium chloride (NaCl)", "magnesium chloride hexahydrate (MgCl2.6H2O)", "magnesium chloride anhydrous (MgCl2)",
            "magnesium sulfate heptahydrate (MgSO4.7H2O)", "menthol (C10H20O)", "paraformaldehyde ((CH2O)n)",
        ];
        Assert.Equal(expected, Salts.All.Select(s => s.ToString()));
    }

    // Every word in use for a salt, with every hydrate that is sold of it.
    [Theory]
    [InlineData("sodium dihydrogen phosphate", "NaH2PO4", "anhydrous 0, monohydrate 1, dihydrate 2")]
    [InlineData("monosodium phosphate", "NaH2PO4", "anhydrous 0, monohydrate 1, dihydrate 2")]
    [InlineData("sodium phosphate monobasic", "NaH2PO4", "anhydrous 0, monohydrate 1, dihydrate 2")]
    [InlineData("monobasic sodium phosphate", "NaH2PO4", "anhydrous 0, monohydrate 1, dihydrate 2")]
    [InlineData("NaH2PO4", "NaH2PO4", "anhydrous 0, monohydrate 1, dihydrate 2")]
    [InlineData("disodium phosphate", "Na2HPO4", "anhydrous 0, dihydrate 2, heptahydrate 7, dodecahydrate 12")]
    [InlineData("disodium hydrogen phosphate", "Na2HPO4", "anhydrous 0, dihydrate 2, heptahydrate 7, dodecahydrate 12")]
    [InlineData("sodium phosphate dibasic", "Na2HPO4", "anhydrous 0, dihydrate 2, heptahydrate 7, dodecahydrate 12")]
    [InlineData("dibasic sodium phosphate", "Na2HPO4", "anhydrous 0, dihydrate 2, heptahydrate 7, dodecahydrate 12")]
    [InlineData("Na2HPO4", "Na2HPO4", "anhydrous 0, dihydrate 2, heptahydrate 7, dodecahydrate 12")]
    [InlineData("magnesium chloride", "MgCl2", "anhydrous 0, hexahydrate 6")]
    [InlineData("MgCl2", "MgCl2", "anhydrous 0, hexahydrate 6")]
    [InlineData("magnesium sulfate", "MgSO4", "heptahydrate 7")]
    [InlineData("magnesium sulphate", "MgSO4", "heptahydrate 7")]
    [InlineData("MgSO4", "MgSO4", "heptahydrate 7")]
    [InlineData("sodium tetraborate", "Na2B4O7", "anhydrous 0, decahydrate 10")]
    [InlineData("Na2B4O7", "Na2B4O7", "anhydrous 0, decahydrate 10")]
    public void A_word_with_its_hydrate_is_one_salt(string words, string anhydrous, string hydrates)
    {
        foreach (var hydrate in hydrates.Split(", ").Select(h => h.Split(' ')))
        {
            var salt = Salts.All.Single(s => s.Anhydrous == anhydrous && s.Waters == int.Parse(hydrate[1], CultureInfo.InvariantCulture));
            foreach (var text in (string[])[$"{words} {hydrate[0]}", $"{words}, {hydrate[0]}", $"{words}-{hydrate[0]}", $"  {words.ToUpperInvariant()}   {hydrate[0].ToUpperInvariant()} "])
            {
                var read = Salts.Read(text);
                Assert.Empty(read.Findings);
                Assert.Equal(salt, read.Value);
            }
        }

        // The word alone leaves open what is in the bottle.
        Assert.Equal("salt-without-hydrate", Assert.Single(Salts.Read(words).Findings).Id);
    }

    [Theory]
    [MemberData(nameof(Formulas))]
    public void A_formula_that_says_its_water_is_read_with_any_kind_of_point(string formula)
    {
        var salt = Salts.All.Single(s => s.Formula == formula);
        if (Salts.All.Any(s => s.Anhydrous == salt.Anhydrous && s.Waters > 0) && salt.Waters == 0)
        {
            Assert.Equal("salt-without-hydrate", Assert.Single(Salts.Read(formula).Findings).Id);
            Assert.Equal(salt, Salts.Read($"{formula} anhydrous").Value);
            return;
        }

        foreach (var text in (string[])[formula, formula.Replace('.', '·'), formula.Replace('.', '*'), formula.ToLowerInvariant()]) Assert.Equal(salt, Salts.Read(text).Value);
    }

    [Theory]
    [InlineData("Na2HPO4.7H2O anhydrous")]
    [InlineData("borax anhydrous")]
    [InlineData("disodium phosphate monohydrate")]
    [InlineData("disodium phosphate of the shop")]
    [InlineData("magnesium")]
    [InlineData("")]
    public void What_contradicts_itself_or_is_not_sold_is_no_salt(string text) => Assert.Equal("unknown-salt", Assert.Single(Salts.Read(text).Findings).Id);

    [Fact]
    public void Faults_of_a_salt_are_told_as_read_and_kept()
    {
        var text = new StringBuilder();
        foreach (var written in (string[])["NaH2PO4", "disodium phosphate", "magnesium sulphate", "Na2B4O7", "MgCl2", "boraks", "disodium phosphate heptahydrat", "common salt"])
        {
            var f = Assert.Single(Salts.Read(written, SourceSpan.At("bench.yaml", 4, 7)).Findings);
            Assert.Null(Salts.Read(written).Value);
            text.Append(CultureInfo.InvariantCulture, $"{f.Where} {f.Severity.ToString().ToLowerInvariant()} {f.Id}\n  {f.Message.ToString()}\n  remedy: {f.Remedy.ToString()}\n");
        }

        KeptText.Holds("Fluids/kept/salt-faults.txt", text.ToString());
    }

    [Fact]
    public void Salts_of_two_kinds_do_not_stand_for_one_another()
    {
        var thrown = Assert.Throws<ArgumentException>(() => Salts.Borax.InPlaceOf(1, Salts.SodiumChloride));
        Assert.Equal("calledFor", thrown.ParamName);
        Assert.StartsWith("Na2B4O7.10H2O is no hydrate of NaCl.", thrown.Message.ToString(), StringComparison.Ordinal);
    }

    private static double Mass(string formula) =>
        Atom().Matches(formula).Sum(m => s_atoms[m.Groups[1].Value] * (m.Groups[2].Length > 0 ? int.Parse(m.Groups[2].ValueSpan, CultureInfo.InvariantCulture) : 1));

    [GeneratedRegex("([A-Z][a-z]?)([0-9]*)")]
    private static partial Regex Atom();

    [Fact]
    public void What_is_found_is_what_is_read_of_a_salt()
    {
        foreach (var salt in Salts.All)
        {
            Assert.Equal(salt, Salts.Find(salt.Name));
            Assert.Equal(salt, Salts.Find($"  {salt.Name.ToUpperInvariant().Replace(" ", "   ", StringComparison.Ordinal)} "));
        }

        foreach (var text in (string[])["Na2HPO4 anhydrous", "Na2HPO4·7H2O", "MgCl2*6H2O", "sodium phosphate dibasic, dihydrate", "NaOH"])
            Assert.Equal(Salts.Read(text).Value!, Salts.Find(text));
        foreach (var none in (string[])["", "Na2HPO4", "sodium tetraborate", "ethanol 96 %vol", "disodium phosphate hexahydrate"]) Assert.Null(Salts.Find(none));
    }
}
