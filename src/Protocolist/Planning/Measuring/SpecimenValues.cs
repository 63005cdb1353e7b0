using Protocolist.Benches;
using Protocolist.Formulas;
using Protocolist.Protocols;
using Protocolist.Quantities;
using Protocolist.Reading;
using Protocolist.Specimens;

namespace Protocolist.Planning.Measuring;

/// <summary>
/// What the names of <see cref="SpecimenScope"/> stand for, for one specimen on one bench. Amounts are planned with nominal measures; their ranges are
/// shown beside.
/// </summary>
internal static class SpecimenValues
{
    /// <summary>
    /// The table of values with those filled in that every protocol has, in the order of <see cref="SpecimenScope.Names"/>; the rest is for choices and
    /// values.
    /// </summary>
    public static FormulaValue[] Table(int size, BodyMeasure body, BenchTemperatures temperatures)
    {
        var table = new FormulaValue[size];
        for (var i = 0; i < SpecimenScope.Names.Length; i++) table[i] = Of(SpecimenScope.Names[i].Name, body, temperatures);
        return table;
    }

    /// <summary>The value of a name.</summary>
    public static FormulaValue Of(string name, BodyMeasure body, BenchTemperatures temperatures) => name switch
    {
        "bench.temperature" => FormulaValue.Of(QuantityRange.Point(temperatures.Room.Kelvins, Dimension.OfTemperature)),
        "bench.cold" => FormulaValue.Of(QuantityRange.Point(temperatures.Cold.Kelvins, Dimension.OfTemperature)),
        "specimen.condition" => FormulaValue.Of(Trait(body.Specimen, "condition")),
        "specimen.life-stage" => FormulaValue.Of(Trait(body.Specimen, "life-stage")),
        "specimen.intended-use" => FormulaValue.Of(Trait(body.Specimen, "intended-use")),
        _ => FormulaValue.Of(Measure(body, name)),
    };

    /// <summary>A measure of the body.</summary>
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

    private static QuantityRange Point(double si, Dimension dimension) => QuantityRange.Point(si, dimension);
}
