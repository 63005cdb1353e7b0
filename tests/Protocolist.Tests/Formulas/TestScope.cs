using Protocolist.Formulas;
using Protocolist.Notation;
using Protocolist.Quantities;

namespace Protocolist.Tests.Formulas;

/// <summary>A small scope like that of a protocol, with values of one invented specimen of 7 kg and 75 cm.</summary>
internal static class TestScope
{
    private static readonly Dictionary<string, FormulaValue> Values = new(StringComparer.Ordinal)
    {
        ["specimen.mass"] = Si(7, Dimension.OfMass),
        ["specimen.length"] = Si(0.75, Dimension.OfLength),
        ["specimen.volume"] = FormulaValue.Of(new QuantityRange(6.5e-3, 7.1e-3, Dimension.OfVolume)),
        ["slit-spacing"] = Si(0.03, Dimension.OfLength),
        ["reach"] = Si(0.015, Dimension.OfLength),
        ["ratio"] = Si(12, Dimension.None),
        ["soak"] = FormulaValue.Of(new QuantityRange(10 * 86400, 21 * 86400, Dimension.OfTime)),
        ["room"] = Si(293.15, Dimension.OfTemperature),
        ["choice.keeping"] = FormulaValue.Of("ethanol"),
        ["specimen.taxon"] = FormulaValue.Of("Vulpes vulpes"),
        ["specimen.bloated"] = FormulaValue.Of(Truth.No),
    };

    private static readonly FormulaFunction PenetrationTime = new(
        "penetration-time",
        "An invented stand-in: the square of a depth over a pace.",
        [new("depth", FormulaType.Of(Dimension.OfLength)), new("pace", FormulaType.OneOf("fast", "slow"), Optional: true)],
        types => (FormulaType.Of(Dimension.OfTime), null),
        values => FormulaValue.Of(RangeArithmetic.Multiply(
            RangeArithmetic.Multiply(values[0].Quantity, values[0].Quantity),
            QuantityRange.Point(values.Length > 1 && values[1].Word == "slow" ? 2e9 : 1e9, new Dimension(Length: -2, Time: 1)))));

    public static FormulaScope Scope { get; } = new(
        Values.ToDictionary(v => v.Key, v => TypeOf(v.Key, v.Value), StringComparer.Ordinal),
        CommonFunctions.All.Append(PenetrationTime).ToDictionary(f => f.Name, StringComparer.Ordinal));

    public static FormulaInputs Inputs { get; } = new(name => Values[name]);

    public static Formula Parse(string text)
    {
        var formula = Formula.Parse(text, Scope, out var fault);
        Assert.True(formula is not null, $"{text}: {fault}");
        return formula;
    }

    public static FormulaValue Evaluate(string text) => Parse(text).Evaluate(Inputs);

    public static TextFault Fault(string text)
    {
        Assert.Null(Formula.Parse(text, Scope, out var fault));
        return fault!;
    }

    private static FormulaValue Si(double si, Dimension dimension) => FormulaValue.Of(QuantityRange.Point(si, dimension));

    private static FormulaType TypeOf(string name, FormulaValue value) => value.Kind switch
    {
        FormulaKind.Quantity => FormulaType.Of(value.Quantity.Dimension),
        FormulaKind.Truth => FormulaType.Truth,
        _ => name == "choice.keeping" ? FormulaType.OneOf("formalin", "ethanol", "isopropanol") : FormulaType.OneOf(),
    };
}
