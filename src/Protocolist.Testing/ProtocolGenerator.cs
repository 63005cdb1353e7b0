using System.Globalization;
using FsCheck;
using FsCheck.Fluent;

namespace Protocolist.Testing;

/// <summary>
/// Generates protocol files: a class, a few values and choices, and stages in the order of the trade, each of which may be missing but fixing and housing.
/// </summary>
public static class ProtocolGenerator
{
    private static readonly (string Group, double LeastGrams, double MostGrams)[] Classes =

        [
            ("mammal", 10, 60_000), ("bird", 5, 5000), ("bony-fish", 1, 5000), ("reptile", 2, 8000), ("amphibian", 1, 500), ("gastropod", 0.5, 200),
            ("cephalopod", 5, 5000), ("decapod", 1, 2000),
        ];

    private static readonly string[] Fixatives =
    [
        "neutral buffered formalin 10 %", "borax-buffered formalin 10 %", "formalin 10 %", "ethanol 80 %vol", "ethanol 96 %vol",
    ];
    private static readonly string[] Keepers = ["ethanol 70 %vol", "ethanol 75 %vol", "isopropanol 50 %vol"];
    private static readonly string[] Times =
    [
        "24 h to 48 h",
        "2 d to 10 d",
        "at least 24 h",
        "soak",
        "soak + 12 h to soak + 3 d",
        "greatest(24 h, soak)",
        "30 min",
        "penetration-time(specimen.half-thickness) + 24 h to penetration-time(specimen.half-thickness, slow) + 48 h",
    ];
    /// <summary>None falls as the animal grows, or more mass would mean less fluid by the protocol's own will.</summary>
    private static readonly string[] Ratios = ["10 to 20", "at least 3", "5", "2 to 10", "choose(specimen.mass > 500 g, 10, 3)"];

    /// <summary>
    /// Protocol files that load without an error. What they say is nonsense to a preparator now and then; plans made by them must hold together all the
    /// same.
    /// </summary>
    public static Arbitrary<FileSketch> Valid { get; } = Arb.From(
        from taxon in Gen.Elements(Classes)
        from split in Gen.Choose(1, 99)
        from soak in Gen.Elements("24 h to 72 h", "2 d to 4 d", "greatest(24 h, penetration-time(specimen.half-thickness))")
        from fixative in Gen.Elements(Fixatives)
        from keeper in Gen.Elements(Keepers)
        from stages in Stages(fixative, keeper)
        let middle = taxon.LeastGrams * Math.Pow(taxon.MostGrams / taxon.LeastGrams, split / 100.0)
        select new FileSketch("house.yaml",
        [
            new("format: 1", IsNeeded: true),
            new("protocol: house-generated", IsNeeded: true),
            new("revision: 1", IsNeeded: true),
            new("title: A generated protocol", IsNeeded: true),
            new(
                string.Create(CultureInfo.InvariantCulture, $"for: {{group: {taxon.Group}, mass: {middle / 2:0.###} g to {middle * 2:0.###} g}}"),
                IsNeeded: true),
            new("choices:", IsNeeded: true) { Items = [$"  fixative: [{fixative}]", $"  keeping: [{string.Join(", ", Keepers.Prepend(keeper).Distinct())}]"] },
            new("values:", IsNeeded: true) { Items = [$"  soak: {{value: {Quoted(soak)}, source: from memory}}"] },
            new("stages:", IsNeeded: true) { Items = [.. stages] },
        ]),
        Shrink);

    /// <summary>Protocol files with a few characters wrong.</summary>
    public static Arbitrary<string> NearlyValid { get; } = Arb.From(
        from file in Valid.Generator from damaged in Damage.Of(file.Text) select damaged,
        Damage.Shrink);

    /// <summary>Only stages may go; the choices and values are what they refer to.</summary>
    private static IEnumerable<FileSketch> Shrink(FileSketch file)
    {
        var stages = file.Entries[^1];
        return stages.Shrink().Where(s => !s.Items.IsEmpty).Select(s => new FileSketch(file.Name, file.Entries.SetItem(file.Entries.Length - 1, s)));
    }

    private static Gen<string[]> Stages(string fixative, string keeper) =>
        from maybe in Gen.ArrayOf(Gen.Elements(true, false), 9)
        from last in Gen.ArrayOf(Gen.Elements(Times), 4)
        from ratio in Gen.ArrayOf(Gen.Elements(Ratios), 4)
        from changes in Gen.Choose(0, 3)
        from watch in Gen.Elements("", ", watch: {every: 2 d, signs: {soft: re-inject, floating: press-out-air}}")
        let isFormalin = fixative.Contains("formalin", StringComparison.Ordinal)
        select ((string?[])
        [
            maybe[0] ? "{stage: hold, id: cold, last: at most 24 h, temperature: bench.cold}" : null,
            maybe[1] ? "{stage: sample, id: record, how: Weigh and photograph it.}" : null,
            maybe[2] ? "{stage: slit, id: cuts, places: [abdomen], length: 12 mm}" : null,
            maybe[3] && isFormalin ? "{stage: inject, id: inject, fluid: choice.fixative, dose: 80 mL/kg * specimen.lot-mass}" : null,
            $"{{stage: immerse, id: fix, fluid: choice.fixative, ratio: {Quoted(ratio[0])}, last: {Quoted(last[0])}, "
            + $"changes: {changes.ToString(CultureInfo.InvariantCulture)}{watch}}}",
            isFormalin || maybe[4] ? $"{{stage: wash, id: wash, fluid: tap water, ratio: {Quoted(ratio[1])}, last: {Quoted(last[1])}}}" : null,
            maybe[5] ? $"{{stage: bath, id: bath-30, fluid: {keeper.Split(' ')[0]} 30 %vol, ratio: {Quoted(ratio[2])}, last: {Quoted(last[2])}}}" : null,
            maybe[6] ? $"{{stage: bath, id: bath-50, fluid: {keeper.Split(' ')[0]} 50 %vol, ratio: {Quoted(ratio[3])}, last: {Quoted(last[3])}}}" : null,
            "{stage: house, id: house, fluid: choice.keeping, ratio: at least 3, over-specimen: 15 mm}",
            maybe[7] ? "{stage: label, id: label, fields: [number, date, place, collector]}" : null,
            maybe[8] ? "{stage: seal, id: seal, closure: screw lid}" : null,
        ]).OfType<string>().Select(s => $"  - {s}").ToArray();

    private static string Quoted(string formula) => $"\"{formula}\"";
}
