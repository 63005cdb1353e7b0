using System.Collections.Immutable;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Formulas;
using Protocolist.Notation;
using Protocolist.Planning.Measuring;
using Protocolist.Protocols;
using Protocolist.Quantities;
using Protocolist.Specimens;

namespace Protocolist.Proving;

/// <summary>Runs a protocol's worked example: what it expects must hold what the protocol gives for that specimen.</summary>
internal static class ExampleCheck
{
    private static readonly Phrase ExampleOutsideClass = new("example-outside-class", "the example is {example:a}, and the class is of the group '{group}'");
    private static readonly Phrase ExampleOutsideClassRemedy = new("example-outside-class.remedy", "correct the example, or 'for'");
    private static readonly Phrase TooLargeOrSmall = new("example-outside-class.size", "the example's {measure}, {size}, is outside the class, {limit}");
    private static readonly Phrase TooLargeOrSmallRemedy = new("example-outside-class.size.remedy", "correct the example, or widen 'for'");
    private static readonly Phrase WrongDimension = new("wrong-dimension", "'{name}' is {dimension}, and '{expected}' is {expected-dimension}");
    private static readonly Phrase WrongDimensionRemedy = new("wrong-dimension.remedy", "give it in a fitting unit");
    private static readonly Phrase ExampleFails = new("example-fails", "'{name}' is expected to be {expected} here, and comes out as {actual}");
    private static readonly Phrase ExampleFailsRemedy = new("example-fails.remedy", "correct the protocol, or the example if its source says so");

    /// <summary>Rounding of what handbooks print: an expectation is met within a hundredth part.</summary>
    private const double Slack = 0.01;

    public static IEnumerable<Finding> Of(ProtocolExample example, Protocol protocol, Kinds kinds)
    {
        var findings = new List<Finding>();
        var specimen = SpecimenReader.ReadInline(example.Specimen, "example", protocol.Class.Group, findings);
        var body = BodyMeasure.Of(specimen, kinds);
        findings.AddRange(body.Findings.Where(f => f.Severity == Severity.Error).Select(f => f with { Where = example.Span }));
        if (body.Value is null) return findings;
        if (Outside(body.Value, protocol.Class) is { } outside) return [.. findings, outside with { Where = example.Span }];
        var slots = protocol.Scope.Slots;
        var table = SpecimenValues.Table(slots.Count, body.Value, BenchTemperatures.Usual);
        foreach (var choice in protocol.Choices)
            table[slots[$"choice.{choice.Name}"]] = FormulaValue.Of(example.Choose.GetValueOrDefault(choice.Name, choice.Options[0]));
        var inputs = new FormulaInputs(table);
        foreach (var value in protocol.Values) table[slots[value.Name]] = value.Expression.Evaluate(inputs);
        findings.AddRange(example.Expectations.Select(e => Judge(e, protocol, table)).OfType<Finding>());
        return findings;
    }

    /// <summary>An example speaks for its protocol only from within its class.</summary>
    private static Finding? Outside(BodyMeasure body, SpecimenClass taxon)
    {
        if (!taxon.IsForSpecimens) return null;
        if (!body.Group.IsA(taxon.Group))
        {
            var message = ExampleOutsideClass.With(("example", body.Group.Name), Argument.Id("group", taxon.Group));
            return Finding.Error("example-outside-class", message, ExampleOutsideClassRemedy);
        }

        foreach (var (key, limit) in taxon.Limits)
        {
            var size = SpecimenValues.Measure(body, "specimen." + key).Middle;
            if (!SpecimenClass.Within(limit, size))
                return Finding.Error(
                    "example-outside-class",
                    TooLargeOrSmall.With(("measure", key.Replace('-', ' ')), Argument.Of("size", size, limit.Dimension), ("limit", limit)),
                    TooLargeOrSmallRemedy);
        }

        return null;
    }

    private static Finding? Judge(Expectation expectation, Protocol protocol, FormulaValue[] table)
    {
        if (protocol.Stages.FirstOrDefault(s => s.Id == expectation.Name) is { } named) return Presence(expectation, named, table);
        var actual = Actual(expectation.Name, protocol, table);
        if (actual.Kind != FormulaKind.Quantity)
        {
            return string.Equals(actual.ToString(), expectation.Text, StringComparison.Ordinal) ? null : Failed(expectation, actual.ToString());
        }

        if (QuantityText.Read(expectation.Text, out var expected) is { } fault) return Finding.Error(fault.Id, fault.Message, fault.Remedy, expectation.Span);
        if (expected.Dimension != actual.Quantity.Dimension)
            return Finding.Error(
                "wrong-dimension",
                WrongDimension.With(
                    ("name", expectation.Name),
                    ("dimension", actual.Quantity.Dimension.ToString()),
                    ("expected", expectation.Text),
                    ("expected-dimension", expected.Dimension.ToString())),
                WrongDimensionRemedy,
                expectation.Span);
        return Holds(expected, actual.Quantity) ? null : Failed(expectation, Measurable.Text(actual.Quantity));
    }

    private static bool Holds(QuantityRange expected, QuantityRange actual) =>
        actual.Low >= expected.Low - (Math.Abs(expected.Low) * Slack) && (actual.High <= expected.High + (Math.Abs(expected.High) * Slack));

    private static FormulaValue Actual(string name, Protocol protocol, FormulaValue[] table)
    {
        if (protocol.Values.Any(v => v.Name == name)) return table[protocol.Scope.Slots[name]];
        var dot = name.IndexOf('.', StringComparison.Ordinal);
        var stage = protocol.Stages.First(s => s.Id == name[..dot]);
        return stage.Expression(name[(dot + 1)..])!.Evaluate(new FormulaInputs(table));
    }

    /// <summary>As the draft has it: a stage is left out only where its condition surely fails.</summary>
    private static Finding? Presence(Expectation expectation, StageDefinition stage, FormulaValue[] table)
    {
        var present = stage.Expression("when")?.Evaluate(new FormulaInputs(table)).Truth != Truth.No ? "present" : "absent";
        return present == expectation.Text ? null : Failed(expectation, present);
    }

    private static Finding Failed(Expectation expectation, string actual) =>
        Finding.Error(
            "example-fails",
            ExampleFails.With(("name", expectation.Name), ("expected", expectation.Text), ("actual", actual)),
            ExampleFailsRemedy,
            expectation.Span);
}
