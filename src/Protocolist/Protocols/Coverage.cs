namespace Protocolist.Protocols;

/// <summary>What a stage sees to besides its own work, for the checks that ask whether any stage does. It is declared, because no check reads prose.</summary>
[Flags]
internal enum Coverage
{
    None = 0,
    Colours = 1,
    Parasites = 2,
    Tissue = 4,
    Curing = 8,
}

/// <summary>The words of <c>covers:</c>.</summary>
internal static class CoverageWords
{
    /// <summary>Each word with what it declares.</summary>
    public static readonly (string Word, Coverage Value, string Meaning)[] All =
    [
        ("colours", Coverage.Colours, "colours are photographed or noted"),
        ("parasites", Coverage.Parasites, "what lives on or in the animal is looked for and picked off"),
        ("tissue", Coverage.Tissue, "tissue is taken for DNA"),
        ("curing", Coverage.Curing, "sealant cures in the open for a day or more before the vessel is closed for good"),
    ];

    public static Coverage Of(IEnumerable<string> words) => All.Where(w => words.Contains(w.Word)).Aggregate(Coverage.None, (all, w) => all | w.Value);
}
