using System.Collections.Frozen;
using System.Collections.Immutable;
using Protocolist.Findings;

namespace Protocolist.Fluids.Buffers;

/// <summary>The salts of buffers and relaxants, each with its hydrates.</summary>
/// <remarks>
/// Molar masses: IUPAC abridged atomic weights (H 1.008, C 12.011, N 14.007, O 15.999, Na 22.990, Mg 24.305,
/// P 30.974, S 32.06, Cl 35.45, Ca 40.078, B 10.81).
/// </remarks>
internal static class Salts
{
    /// <summary>NaH2PO4.H2O, the acid phosphate of Lillie's and Carson's recipes.</summary>
    public static Salt SodiumDihydrogenPhosphateMonohydrate { get; } = new("sodium dihydrogen phosphate monohydrate", "NaH2PO4.H2O", "NaH2PO4", 137.991, 1);

    /// <summary>NaH2PO4 without water.</summary>
    public static Salt SodiumDihydrogenPhosphateAnhydrous { get; } = new("sodium dihydrogen phosphate anhydrous", "NaH2PO4", "NaH2PO4", 119.976, 0);

    /// <summary>NaH2PO4.2H2O.</summary>
    public static Salt SodiumDihydrogenPhosphateDihydrate { get; } = new("sodium dihydrogen phosphate dihydrate", "NaH2PO4.2H2O", "NaH2PO4", 156.006, 2);

    /// <summary>Na2HPO4 without water, the basic phosphate of Lillie's recipe.</summary>
    public static Salt DisodiumPhosphateAnhydrous { get; } = new("disodium phosphate anhydrous", "Na2HPO4", "Na2HPO4", 141.958, 0);

    /// <summary>Na2HPO4.2H2O.</summary>
    public static Salt DisodiumPhosphateDihydrate { get; } = new("disodium phosphate dihydrate", "Na2HPO4.2H2O", "Na2HPO4", 177.988, 2);

    /// <summary>Na2HPO4.7H2O.</summary>
    public static Salt DisodiumPhosphateHeptahydrate { get; } = new("disodium phosphate heptahydrate", "Na2HPO4.7H2O", "Na2HPO4", 268.063, 7);

    /// <summary>Na2HPO4.12H2O.</summary>
    public static Salt DisodiumPhosphateDodecahydrate { get; } = new("disodium phosphate dodecahydrate", "Na2HPO4.12H2O", "Na2HPO4", 358.138, 12);

    /// <summary>NaOH.</summary>
    public static Salt SodiumHydroxide { get; } = new("sodium hydroxide", "NaOH", "NaOH", 39.997, 0);

    /// <summary>Na2B4O7.10H2O.</summary>
    public static Salt Borax { get; } = new("borax", "Na2B4O7.10H2O", "Na2B4O7", 381.363, 10);

    /// <summary>Na2B4O7 without water.</summary>
    public static Salt BoraxAnhydrous { get; } = new("sodium tetraborate anhydrous", "Na2B4O7", "Na2B4O7", 201.213, 0);

    /// <summary>C6H12N4.</summary>
    public static Salt Hexamine { get; } = new("hexamine", "C6H12N4", "C6H12N4", 140.190, 0);

    /// <summary>CaCO3 in pieces.</summary>
    public static Salt MarbleChips { get; } = new("marble chips", "CaCO3", "CaCO3", 100.086, 0);

    /// <summary>NaCl.</summary>
    public static Salt SodiumChloride { get; } = new("sodium chloride", "NaCl", "NaCl", 58.44, 0);

    /// <summary>MgCl2.6H2O.</summary>
    public static Salt MagnesiumChlorideHexahydrate { get; } = new("magnesium chloride hexahydrate", "MgCl2.6H2O", "MgCl2", 203.295, 6);

    /// <summary>MgCl2 without water.</summary>
    public static Salt MagnesiumChlorideAnhydrous { get; } = new("magnesium chloride anhydrous", "MgCl2", "MgCl2", 95.205, 0);

    /// <summary>MgSO4.7H2O.</summary>
    public static Salt MagnesiumSulfateHeptahydrate { get; } = new("magnesium sulfate heptahydrate", "MgSO4.7H2O", "MgSO4", 246.466, 7);

    /// <summary>C10H20O.</summary>
    public static Salt Menthol { get; } = new("menthol", "C10H20O", "C10H20O", 156.269, 0);

    /// <summary>(CH2O)n, counted per CH2O; products hold 91 to 99 % (supplier's assay).</summary>
    public static Salt Paraformaldehyde { get; } = new("paraformaldehyde", "(CH2O)n", "(CH2O)n", 30.026, 0);

    /// <summary>All of them.</summary>
    public static ImmutableArray<Salt> All { get; } =
    [
        SodiumDihydrogenPhosphateMonohydrate, SodiumDihydrogenPhosphateAnhydrous, SodiumDihydrogenPhosphateDihydrate,
        DisodiumPhosphateAnhydrous, DisodiumPhosphateDihydrate, DisodiumPhosphateHeptahydrate, DisodiumPhosphateDodecahydrate,
        SodiumHydroxide, Borax, BoraxAnhydrous, Hexamine, MarbleChips, SodiumChloride,
        MagnesiumChlorideHexahydrate, MagnesiumChlorideAnhydrous, MagnesiumSulfateHeptahydrate, Menthol, Paraformaldehyde,
    ];

    // Other names in use for the salt alone; the hydrate has to follow.
    private static readonly ImmutableArray<(string Name, string Anhydrous)> WithoutHydrate =
    [
        ("sodium dihydrogen phosphate", "NaH2PO4"), ("monosodium phosphate", "NaH2PO4"), ("sodium phosphate monobasic", "NaH2PO4"),
        ("monobasic sodium phosphate", "NaH2PO4"), ("disodium phosphate", "Na2HPO4"), ("disodium hydrogen phosphate", "Na2HPO4"),
        ("sodium phosphate dibasic", "Na2HPO4"), ("dibasic sodium phosphate", "Na2HPO4"), ("magnesium chloride", "MgCl2"),
        ("magnesium sulfate", "MgSO4"), ("magnesium sulphate", "MgSO4"), ("sodium tetraborate", "Na2B4O7"),
        .. All.Select(s => (s.Anhydrous, s.Anhydrous)),
    ];

    private static readonly (string Word, int Waters)[] Hydrates =
    [
        ("anhydrous", 0), ("monohydrate", 1), ("dihydrate", 2), ("hexahydrate", 6), ("heptahydrate", 7), ("decahydrate", 10), ("dodecahydrate", 12),
    ];

    // A formula as short as NaH2PO4 may be the anhydrous salt or a habit of leaving the water out: it must be said.
    private static readonly FrozenDictionary<string, Salt> Whole = All
        .SelectMany(s => (string[])
        [
            s.Name,
            .. s.Waters > 0 || All.All(other => other.Anhydrous != s.Anhydrous || other.Waters == 0) ? [s.Formula] : (string[])[],
            .. s.Waters == 0 ? [$"{s.Formula} anhydrous"] : (string[])[],
        ], (salt, name) => (name, salt))
        .DistinctBy(n => n.name, StringComparer.OrdinalIgnoreCase)
        .ToFrozenDictionary(n => n.name, n => n.salt, StringComparer.OrdinalIgnoreCase);

    private static readonly Phrase NoHydrate = new("salt-without-hydrate", "'{text}' does not say which hydrate is in the bottle{differ}");
    private static readonly Phrase Differ = new("salt-without-hydrate.differ", ", and their masses differ up to {times:0.0} times");
    private static readonly Phrase NameOne = new("salt-without-hydrate.remedy", "read the label and name one of: {hydrates}");
    private static readonly Phrase Unknown = new("unknown-salt", "no salt called '{text}' is known here");

    /// <summary>Reads a salt by name or formula.</summary>
    /// <param name="text">Such as <c>Na2HPO4.7H2O</c>, <c>disodium phosphate heptahydrate</c>, <c>borax</c>.</param>
    /// <param name="where">Where it stands, for the findings.</param>
    /// <returns>The salt; or <c>salt-without-hydrate</c> where the hydrate is not said, <c>unknown-salt</c> where there is no such salt here.</returns>
    public static Checked<Salt> Read(string text, SourceSpan where = default)
    {
        ArgumentNullException.ThrowIfNull(text);
        var name = Plain(text);
        if (Find(name, out var bare) is { } salt) return new(salt, []);
        if (bare is null)
            return new(null, [Finding.Error("unknown-salt", Unknown.With(("text", text)), Suggestion.For(name, [.. All.Select(s => s.Name)]), where)]);

        var hydrates = All.Where(s => s.Anhydrous == bare).ToArray();
        var differ = hydrates.Length > 1 ? Differ.With(("times", hydrates.Max(h => h.MolarMass) / hydrates.Min(h => h.MolarMass))) : default;
        return new(null, [Finding.Error(
            "salt-without-hydrate",
            NoHydrate.With(("text", text), ("differ", differ)),
            NameOne.With(Argument.Texts("hydrates", hydrates.Select(h => h.Formula + (h.Waters == 0 ? " anhydrous" : "")))),
            where)]);
    }

    /// <summary>The salt of a text, where nobody wants to know what is wrong with it.</summary>
    /// <param name="text">A name or a formula, as for <see cref="Read"/>.</param>
    /// <returns>The salt, or null.</returns>
    public static Salt? Find(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return Find(Plain(text), out _);
    }

    /// <summary>The salt of a name; where it names one without its hydrate, what that salt is without water.</summary>
    private static Salt? Find(string name, out string? bare)
    {
        bare = null;
        if (Whole.TryGetValue(name, out var whole)) return whole;
        foreach (var (words, anhydrous) in WithoutHydrate)
        {
            if (!name.StartsWith(words, StringComparison.OrdinalIgnoreCase)) continue;
            var rest = name.AsSpan(words.Length).Trim(" ,-");
            if (rest.IsEmpty)
            {
                bare = anhydrous;
                return null;
            }

            foreach (var (word, waters) in Hydrates)
            {
                if (!rest.Equals(word, StringComparison.OrdinalIgnoreCase)) continue;
                foreach (var salt in All)
                {
                    if (salt.Anhydrous == anhydrous && salt.Waters == waters) return salt;
                }
            }
        }

        return null;
    }

    /// <summary>With one space for each run of them, and the dots of hydrates as points.</summary>
    private static string Plain(string text)
    {
        var isPlain = !text.StartsWith(' ') && !text.EndsWith(' ') && text.AsSpan().IndexOfAny('·', '*') < 0;
        for (var i = 0; i < text.Length && isPlain; i++) isPlain = text[i] == ' ' ? text[i - 1] != ' ' : !char.IsWhiteSpace(text[i]);
        return isPlain ? text : string.Join(' ', text.Replace('·', '.').Replace('*', '.').Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
    }
}
