using System.Collections.Immutable;
using Protocolist.Findings;

namespace Protocolist.Fluids.Buffers;

/// <summary>The salts of buffers and relaxants, each with its hydrates.</summary>
/// <remarks>Molar masses: IUPAC abridged atomic weights (H 1.008, C 12.011, N 14.007, O 15.999, Na 22.990, Mg 24.305, P 30.974, S 32.06, Cl 35.45, Ca 40.078, B 10.81).</remarks>
public static class Salts
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
        ("sodium dihydrogen phosphate", "NaH2PO4"), ("monosodium phosphate", "NaH2PO4"), ("sodium phosphate monobasic", "NaH2PO4"), ("monobasic sodium phosphate", "NaH2PO4"),
        ("disodium phosphate", "Na2HPO4"), ("disodium hydrogen phosphate", "Na2HPO4"), ("sodium phosphate dibasic", "Na2HPO4"), ("dibasic sodium phosphate", "Na2HPO4"),
        ("magnesium chloride", "MgCl2"), ("magnesium sulfate", "MgSO4"), ("magnesium sulphate", "MgSO4"), ("sodium tetraborate", "Na2B4O7"),
    ];

    private static readonly string[] Hydrates = ["anhydrous", "monohydrate", "dihydrate", "hexahydrate", "heptahydrate", "decahydrate", "dodecahydrate"];
    private static readonly int[] HydrateWaters = [0, 1, 2, 6, 7, 10, 12];

    /// <summary>Reads a salt by name or formula.</summary>
    /// <param name="text">Such as <c>Na2HPO4.7H2O</c>, <c>disodium phosphate heptahydrate</c>, <c>borax</c>.</param>
    /// <param name="where">Where it stands, for the findings.</param>
    /// <returns>The salt; or <c>salt-without-hydrate</c> where the hydrate is not said, <c>unknown-salt</c> where there is no such salt here.</returns>
    public static Checked<Salt> Read(string text, SourceSpan where = default)
    {
        ArgumentNullException.ThrowIfNull(text);
        var name = string.Join(' ', text.Replace('·', '.').Replace('*', '.').Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        foreach (var salt in All)
        {
            // A formula as short as NaH2PO4 may be the anhydrous salt or a habit of leaving the water out: it must be said.
            var saysHydrate = salt.Waters > 0 || !All.Any(other => other.Anhydrous == salt.Anhydrous && other.Waters > 0);
            if (Same(salt.Name, name) || (saysHydrate && Same(salt.Formula, name)) || (salt.Waters == 0 && Same($"{salt.Formula} anhydrous", name))) return new(salt, []);
        }

        foreach (var (words, anhydrous) in WithoutHydrate.Concat(All.Select(s => (s.Anhydrous, s.Anhydrous))))
        {
            if (!name.StartsWith(words, StringComparison.OrdinalIgnoreCase)) continue;
            var rest = name[words.Length..].Trim(' ', ',', '-');
            var hydrates = All.Where(s => s.Anhydrous == anhydrous).ToArray();
            if (rest.Length == 0)
            {
                var differ = hydrates.Length > 1 ? $", and their masses differ up to {MostRatio(hydrates)} times" : "";
                return new(null, [Finding.Error("salt-without-hydrate", $"'{text}' does not say which hydrate is in the bottle{differ}", $"read the label and name one of: {string.Join(", ", hydrates.Select(h => h.Formula + (h.Waters == 0 ? " anhydrous" : "")))}", where)]);
            }

            var index = Array.FindIndex(Hydrates, h => Same(h, rest));
            if (index >= 0 && Array.Find(hydrates, h => h.Waters == HydrateWaters[index]) is { } found) return new(found, []);
        }

        return new(null, [Finding.Error("unknown-salt", $"no salt called '{text}' is known here", Suggestion.For(name, [.. All.Select(s => s.Name)]), where)]);
    }

    private static string MostRatio(Salt[] hydrates) =>
        (hydrates.Max(h => h.MolarMass) / hydrates.Min(h => h.MolarMass)).ToString("0.0", System.Globalization.CultureInfo.InvariantCulture);

    private static bool Same(string a, string b) => a.Equals(b, StringComparison.OrdinalIgnoreCase);
}
