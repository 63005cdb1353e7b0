using System.Collections.Immutable;
using Protocolist.Formulas;
using Protocolist.Quantities;
using UnitsNet;

namespace Protocolist.Fluids.Infiltration;

/// <summary>What this room adds to the formula language: how long alcohol needs to come in, and formaldehyde to come out.</summary>
internal static class FluidFunctions
{
    private static readonly FormulaType Time = FormulaType.Of(Dimension.OfTime);

    /// <summary>What its strength in tissue is asked of.</summary>
    private static readonly Solute[] Solutes = [Solute.Ethanol, Solute.Isopropanol, Solute.Formaldehyde];

    public static ImmutableArray<FormulaFunction> All { get; } =
    [
        new(
            "diffusion-time",
            "Time in which a body of that half-thickness is nine tenths of the way to what its bath holds, as a band "
            + "(Crank's solutions; diffusion in tissue at a third to a half of that in water).",
            [
                new("half-thickness", FormulaType.Of(Dimension.OfLength)),
                new("shape", FormulaType.OneOf("slab", "cylinder", "sphere")),
                new("of", FormulaType.OneOf([.. Solutes.Select(s => s.Id)])),
            ],
            _ => (Time, null),
            values => FormulaValue.Of(Times(values[0].Quantity, values[1].Word, values[2].Word))),
    ];

    /// <summary>Rises with the half-thickness: the ends of a range give the ends of the result.</summary>
    private static QuantityRange Times(QuantityRange half, string shapeWord, string soluteWord)
    {
        var shape = shapeWord switch { "cylinder" => DiffusionShape.Cylinder, "sphere" => DiffusionShape.Sphere, _ => DiffusionShape.Slab };
        var solute = Array.Find(Solutes, s => s.Id == soluteWord) ?? Solute.Ethanol;
        return new(At(half.Low).Low, double.IsFinite(half.High) ? At(half.High).High : double.PositiveInfinity, Dimension.OfTime);

        QuantityRange At(double metres) => metres > 0
            ? Diffusion.Time(shape, Length.FromMeters(metres), TimedBaths.Done, solute)
            : QuantityRange.Point(0, Dimension.OfTime);
    }
}
