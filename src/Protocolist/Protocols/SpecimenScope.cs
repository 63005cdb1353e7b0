using System.Collections.Immutable;
using Protocolist.Formulas;
using Protocolist.Quantities;
using Protocolist.Reading;
using Protocolist.Specimens;

namespace Protocolist.Protocols;

/// <summary>What a formula may ask of the specimen and the bench. The one list: planning fills it, the guide and the schema print it.</summary>
internal static class SpecimenScope
{
    public static readonly ImmutableArray<string> Conditions = [.. EnumWords<Condition>.All.Order(StringComparer.Ordinal), Unknown];
    public static readonly ImmutableArray<string> LifeStages = [.. EnumWords<LifeStage>.All.Order(StringComparer.Ordinal), Unknown];
    public static readonly ImmutableArray<string> Uses = [.. EnumWords<IntendedUse>.All.Order(StringComparer.Ordinal), Unknown];

    /// <summary>What a trait is when nobody noted it.</summary>
    public const string Unknown = "unknown";

    public static readonly (string Name, FormulaType Type, string Summary)[] Names =
    [
        ("specimen.mass", FormulaType.Of(Dimension.OfMass), "Mass of one animal."),
        ("specimen.volume", FormulaType.Of(Dimension.OfVolume), "Volume of one animal."),
        ("specimen.lot-volume", FormulaType.Of(Dimension.OfVolume), "Volume of all animals of the lot together."),
        ("specimen.lot-mass", FormulaType.Of(Dimension.OfMass), "Mass of all animals of the lot together."),
        ("specimen.length", FormulaType.Of(Dimension.OfLength), "The length that is usual for the group."),
        ("specimen.half-thickness", FormulaType.Of(Dimension.OfLength), "Half of the smaller of height and width at the thickest part."),
        ("specimen.count", FormulaType.Of(Dimension.None), "Animals in the lot."),
        ("specimen.water-share", FormulaType.Of(Dimension.None), "Share of water in the fresh body, by mass."),
        ("specimen.condition", FormulaType.OneOf(Conditions), "How the body arrives."),
        ("specimen.life-stage", FormulaType.OneOf(LifeStages), "Life stage."),
        ("specimen.intended-use", FormulaType.OneOf(Uses), "What it is meant for."),
        ("bench.temperature", FormulaType.Of(Dimension.OfTemperature), "Temperature of the room where it is fixed."),
        ("bench.cold", FormulaType.Of(Dimension.OfTemperature), "Temperature of the cold store."),
    ];

    public static IEnumerable<KeyValuePair<string, FormulaType>> Types => Names.Select(n => KeyValuePair.Create(n.Name, n.Type));
}
