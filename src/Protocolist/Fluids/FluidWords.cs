using System.Collections.Frozen;
using System.Collections.Immutable;

namespace Protocolist.Fluids;

/// <summary>What a name without its strength stands for.</summary>
/// <param name="Kind">The kind of fluid.</param>
/// <param name="Buffering">Its buffering.</param>
/// <param name="IsFormalin">Whether a bare percentage counts parts of stock.</param>
internal readonly record struct FluidWord(FluidKind Kind, Buffering Buffering = Buffering.None, bool IsFormalin = false);

/// <summary>The names of fluids in use, without their strengths, in lower case and with spaces for hyphens.</summary>
internal static class FluidWords
{
    /// <summary>How a buffering is written before "formalin" and "formaldehyde", the canonical spelling first.</summary>
    private static readonly (Buffering Buffering, string[] Before, string[] After)[] Bufferings =
    [
        (Buffering.Phosphate, ["neutral buffered", "phosphate-buffered", "phosphate buffered neutral", "neutral phosphate-buffered", "buffered neutral"], []),
        (Buffering.PhosphateSodiumHydroxide, ["phosphate-NaOH buffered", "modified millonig", "millonig"], []),
        (Buffering.Borax, ["borax-buffered", "borax"], ["with borax"]),
        (Buffering.SeaWater, ["sea-water", "seawater"], ["in sea water", "in seawater"]),
        (Buffering.Hexamine, ["hexamine-buffered", "hexamine", "hexamethylenetetramine-buffered"], ["with hexamine"]),
        (Buffering.MarbleChips, ["marble-chip", "marble chips", "calcium-carbonate"], ["over marble chips", "with marble chips"]),
    ];

    private static readonly FrozenDictionary<string, FluidWord> Known = All().ToFrozenDictionary(w => Plain(w.Name), w => w.Word, StringComparer.Ordinal);

    /// <summary>Names fit to be suggested: the canonical ones.</summary>
    public static IReadOnlyList<string> Canonical { get; } =
    [
        "water", "distilled water", "tap water", "sea water", "ethanol", "isopropanol", "formaldehyde stock",
        .. Bufferings.Select(b => $"{b.Before[0]} formalin"), .. Bufferings.Select(b => $"{b.Before[0]} formaldehyde"), "formalin", "formaldehyde",
    ];

    /// <summary>One name of each kind, at a usual strength.</summary>
    public static ImmutableArray<string> Examples { get; } =
    [
        "water", "distilled water", "tap water", "sea water", "ethanol 70 %vol", "ethanol 62.4 %mass", "ethanol 96 %vol", "isopropanol 50 %vol",
        "formaldehyde stock 37 %mass", "formalin 10 %", "formaldehyde 4 % w/v", .. Bufferings.Select(b => $"{b.Before[0]} formalin 10 %"),
    ];

    /// <summary>What a name stands for.</summary>
    public static bool TryGet(string name, out FluidWord word) => Known.TryGetValue(Plain(name), out word);

    /// <summary>The canonical spelling of a buffering before a noun, with its space; empty for none.</summary>
    public static string Prefix(Buffering buffering) => buffering is Buffering.None
        ? ""
        : Array.Find(Bufferings, b => b.Buffering == buffering).Before[0] + " ";

    private static IEnumerable<(string Name, FluidWord Word)> All()
    {
        (FluidKind Kind, string[] Names)[] plain =
        [
            (FluidKind.Water, ["water", "fresh water", "freshwater"]),
            (FluidKind.DistilledWater, ["distilled water", "deionised water", "deionized water", "de-ionised water", "purified water", "demineralised water", "reverse-osmosis water"]),
            (FluidKind.TapWater, ["tap water", "tapwater"]),
            (FluidKind.SeaWater, ["sea water", "seawater", "filtered sea water", "marine water"]),
            (FluidKind.Ethanol, ["ethanol", "ethyl alcohol", "etoh"]),
            (FluidKind.Isopropanol, ["isopropanol", "isopropyl alcohol", "2-propanol", "propan-2-ol", "ipa"]),
            (FluidKind.FormaldehydeStock, ["formaldehyde stock", "formalin stock", "stock formaldehyde", "stock formalin", "concentrated formaldehyde", "concentrated formalin", "formaldehyde solution"]),
        ];
        foreach (var (kind, names) in plain)
        {
            foreach (var name in names) yield return (name, new(kind));
        }

        yield return ("formalin", new(FluidKind.Formaldehyde, IsFormalin: true));
        yield return ("unbuffered formalin", new(FluidKind.Formaldehyde, IsFormalin: true));
        yield return ("formaldehyde", new(FluidKind.Formaldehyde));
        yield return ("unbuffered formaldehyde", new(FluidKind.Formaldehyde));
        yield return ("nbf", new(FluidKind.Formaldehyde, Buffering.Phosphate, true));
        foreach (var (buffering, before, after) in Bufferings)
        {
            foreach (var isFormalin in (bool[])[true, false])
            {
                var noun = isFormalin ? "formalin" : "formaldehyde";
                foreach (var words in before) yield return ($"{words} {noun}", new(FluidKind.Formaldehyde, buffering, isFormalin));
                foreach (var words in after) yield return ($"{noun} {words}", new(FluidKind.Formaldehyde, buffering, isFormalin));
            }
        }
    }

    private static string Plain(string name) =>
        string.Join(' ', name.ToLowerInvariant().Replace('-', ' ').Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
