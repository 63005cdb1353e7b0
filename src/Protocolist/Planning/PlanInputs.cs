using System.Collections.Immutable;
using Protocolist.Benches;
using Protocolist.Formulas;
using Protocolist.Protocols;
using Protocolist.Quantities;
using Protocolist.Reading;
using Protocolist.Specimens;

namespace Protocolist.Planning;

/// <summary>What the names of a formula stand for, for one specimen on one bench with its choices made.</summary>
internal sealed record PlanInputs(BodyMeasure Body, BenchTemperatures Temperatures, ImmutableSortedDictionary<string, string> Choices, ImmutableDictionary<string, FormulaValue> Values)
{
    public FormulaInputs AsFormulaInputs() => new(Find);

    public PlanInputs With(string name, FormulaValue value) => this with { Values = Values.SetItem(name, value) };

    /// <summary>A measure of the body. Amounts are planned with the nominal value; its range is shown beside it.</summary>
    public static QuantityRange Measure(BodyMeasure body, string name) => name switch
    {
        "specimen.mass" => Point(body.Mass.Nominal.Kilograms, Dimension.OfMass),
        "specimen.volume" => Point(body.Volume.Nominal.CubicMeters, Dimension.OfVolume),
        "specimen.lot-volume" => Point(body.LotVolume.Nominal.CubicMeters, Dimension.OfVolume),
        "specimen.lot-mass" => Point(body.Mass.Nominal.Kilograms * body.LotVolume.Nominal.CubicMeters / body.Volume.Nominal.CubicMeters, Dimension.OfMass),
        "specimen.length" => Point(body.Length.Nominal.Meters, Dimension.OfLength),
        "specimen.half-thickness" => Point(body.HalfThickness.Nominal.Meters, Dimension.OfLength),
        "specimen.count" => Point(body.Count, Dimension.None),
        "specimen.water-share" => Point(body.Group.WaterFraction.Nominal, Dimension.None),
        _ => throw new ArgumentException($"'{name}' is not a measure of a specimen.", nameof(name)),
    };

    /// <summary>A trait of the specimen as a word of the protocols.</summary>
    public static string Trait(Specimen specimen, string name) => name switch
    {
        "condition" => specimen.Condition is { } condition ? EnumWords<Condition>.Of(condition) : SpecimenScope.Unknown,
        "life-stage" => specimen.LifeStage is { } stage ? EnumWords<LifeStage>.Of(stage) : SpecimenScope.Unknown,
        "intended-use" => specimen.IntendedUse is { } use ? EnumWords<IntendedUse>.Of(use) : SpecimenScope.Unknown,
        _ => throw new ArgumentException($"'{name}' is not a trait of a specimen.", nameof(name)),
    };

    private FormulaValue Find(string name)
    {
        if (Values.TryGetValue(name, out var value)) return value;
        if (name.StartsWith("choice.", StringComparison.Ordinal)) return FormulaValue.Of(Choices[name["choice.".Length..]]);
        return name switch
        {
            "bench.temperature" => FormulaValue.Of(Point(Temperatures.Room.Kelvins, Dimension.OfTemperature)),
            "bench.cold" => FormulaValue.Of(Point(Temperatures.Cold.Kelvins, Dimension.OfTemperature)),
            "specimen.condition" or "specimen.life-stage" or "specimen.intended-use" => FormulaValue.Of(Trait(Body.Specimen, name["specimen.".Length..])),
            _ => FormulaValue.Of(Measure(Body, name)),
        };
    }

    private static QuantityRange Point(double si, Dimension dimension) => QuantityRange.Point(si, dimension);
}
