using System.Globalization;
using Protocolist.Specimens;
using UnitsNet;

namespace Protocolist.Tests.Reference;

/// <summary>The tables of measured bodies in <c>Reference/data</c>; their origin stands in its README.</summary>
internal static class MeasuredBodies
{
    /// <summary>A species by its means, or one animal.</summary>
    public sealed record Row(string Order, string Family, string Species, double MassG, double LengthMm);

    /// <summary>Values that are plainly no length or mass of that species, over 3.4 times off its family's curve. They are left out, and nothing is tuned to them.</summary>
    private static readonly string[] MammalErrors =
    [
        "Elephas maximus", "Chaetodipus formosus", "Monodelphis scalops", "Monodelphis theresa", "Monodelphis iheringi", "Monodelphis osgoodi",
        "Monodelphis sorex", "Neoromicia somalicus", "Myotis goudoti", "Eptesicus matroka", "Elephantulus rufescens", "Thylamys velutinus",
        "Hippotragus equinus", "Megaloglossus woermanni", "Petrogale persephone", "Chaetomys subspinosus", "Petinomys vordermanni", "Triaenops rufus",
        "Nycteris madagascariensis",
    ];

    /// <summary>A length written as the mass, or the mass of a young animal.</summary>
    private static readonly string[] AmphibianErrors =
    [
        "Allophryne ruthveni", "Brachycephalus didactylus", "Brachycephalus ephippium", "Brachycephalus hermogenesi", "Brachycephalus nodoterga",
        "Brachycephalus pernix", "Brachycephalus vertebralis", "Mannophryne olmonae", "Mannophryne trinitatis", "Dendropsophus microcephalus",
        "Dendropsophus phlebodes", "Dendropsophus robertmertensi", "Dendropsophus sartori", "Leptodactylus andreae", "Leptodactylus bolivianus",
        "Leptodactylus fuscus", "Leptodactylus hylaedactylus", "Leptodactylus macrosternum", "Leptodactylus marmoratus", "Eleutherodactylus johnstonei",
        "Eleutherodactylus leprus", "Flectonotus fitzgeraldi", "Hypsiboas rufitelus", "Isthmohyla pseudopuma", "Scinax staufferi", "Rhinella achalensis",
        "Rhinella hoogmoedi", "Andinophryne colomai", "Andinophryne olallai", "Anaxyrus kelloggi", "Elachistocleis ovalis", "Ischnocnema parva",
        "Rhinoderma darwinii", "Ensatina eschscholtzii", "Plethodon hoffmani", "Plethodon vehiculum", "Anaxyrus woodhousii", "Rhinella marina",
        "Lithobates pipiens",
    ];

    public static Row[] Mammals() => [.. Of("mammals-pantheria-2009.csv").Select(Species).Where(r => !MammalErrors.Contains(r.Species))];

    public static Row[] Amphibians() => [.. Of("amphibians-amphibio-2017.csv").Select(Species).Where(r => !AmphibianErrors.Contains(r.Species))];

    public static Row[] InchLake() => [.. Of("fish-inch-lake-2008.csv").Select(c => new Row("", "Teleostei", c[0], Number(c[2]), Number(c[1])))];

    public static Row[] Sparrows() => [.. Of("sparrows-bumpus-1898.csv").Select(c => new Row("", "Passeriformes", "Passer domesticus", Number(c[1]), Number(c[0])))];

    /// <summary>The cells of a file without its heading; no cell holds a comma.</summary>
    public static string[][] Of(string file) =>
        [.. File.ReadLines(Repository.File("tests", "Protocolist.Tests", "Reference", "data", file)).Skip(1).Select(line => line.Split(','))];

    public static double Number(string cell) => double.Parse(cell, CultureInfo.InvariantCulture);

    /// <summary>The group that family or order mean, whichever is known.</summary>
    public static TaxonGroup GroupOf(Row row, string root) =>
        Kinds.Bundled.FindByTaxon(row.Family) ?? Kinds.Bundled.FindByTaxon(row.Order) ?? Kinds.Bundled.Find(root)!;

    /// <summary>The row as a specimen of that group, measured by the length that the group is measured by.</summary>
    public static Specimen Specimen(Row row, TaxonGroup group) => new()
    {
        Id = "r",
        Group = group.Id,
        ScientificName = row.Species,
        Mass = Mass.FromGrams(row.MassG),
        Length = Length.FromMillimeters(row.LengthMm),
    };

    private static Row Species(string[] cells) => new(cells[0], cells[1], cells[2], Number(cells[3]), Number(cells[4]));
}
