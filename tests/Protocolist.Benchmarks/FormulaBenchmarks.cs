using BenchmarkDotNet.Attributes;
using Protocolist.Formulas;
using Protocolist.Notation;
using Protocolist.Quantities;

namespace Protocolist.Benchmarks;

/// <summary>One formula of the usual size: loading, evaluating, bounding over a class, explaining.</summary>
[MemoryDiagnoser]
public class FormulaBenchmarks
{
    private const string Text = "specimen.mass * 10 mL/kg + 3 * 0.5 mL";

    private static readonly FormulaScope Scope = new(
        new Dictionary<string, FormulaType>(StringComparer.Ordinal) { ["specimen.mass"] = FormulaType.Of(Dimension.OfMass) },
        FormulaScope.Empty.Functions);

    private static readonly FormulaInputs One = new(_ => FormulaValue.Of(QuantityRange.Point(7, Dimension.OfMass)));
    private static readonly FormulaInputs All = new(_ => FormulaValue.Of(new QuantityRange(2, 60, Dimension.OfMass)), OverAll: true);
    private static readonly Formula Loaded = Formula.Parse(Text, Scope, out _)!;
    private static readonly Formula WithCall = Formula.Parse("least(specimen.mass / 10, 200 g)", Scope, out _)!;

    [Benchmark]
    public object? Parse() => Formula.Parse(Text, Scope, out _);

    [Benchmark(Baseline = true)]
    public double Evaluate() => Loaded.Evaluate(One).Quantity.Low;

    [Benchmark]
    public double EvaluateCall() => WithCall.Evaluate(One).Quantity.Low;

    [Benchmark]
    public double Bound() => Loaded.Evaluate(All).Quantity.Low;

    [Benchmark]
    public object Explain() => Loaded.Explain(One);

    [Benchmark]
    public object? ReadQuantity() => QuantityText.Read("12.5 mL/kg", out _);
}
