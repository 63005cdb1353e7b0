using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Formulas;
using Protocolist.Quantities;

namespace Protocolist.Protocols;

/// <summary>What a file gives for a value: a formula, a table of bands, or one formula for each word of a choice.</summary>
internal abstract record Expression(FormulaType Type, SourceSpan Span)
{
    /// <summary>One line for a person.</summary>
    public abstract string Text { get; }

    public abstract FormulaValue Evaluate(FormulaInputs inputs);

    /// <summary>Every name that it looks up.</summary>
    public abstract IEnumerable<string> Names();
}

internal sealed record FormulaExpression(Formula Formula, SourceSpan Span) : Expression(Formula.Type, Span)
{
    public override string Text => Formula.Text;

    public override FormulaValue Evaluate(FormulaInputs inputs) => Formula.Evaluate(inputs);

    public override IEnumerable<string> Names() => Formula.Names();
}

/// <summary>One row of a table of bands: from its low end up to, and without, its high end.</summary>
internal sealed record Band(QuantityRange Range, Formula Formula, SourceSpan Span);

internal sealed record BandExpression(Formula By, ImmutableArray<Band> Bands, SourceSpan Span) : Expression(Bands[0].Formula.Type, Span)
{
    public override string Text => $"by {By.Text}: " + string.Join("; ", Bands.Select(b => $"{Measurable.Text(b.Range)}: {b.Formula.Text}"));

    public override FormulaValue Evaluate(FormulaInputs inputs)
    {
        var by = By.Evaluate(inputs).Quantity;
        QuantityRange? hull = null;
        foreach (var band in Bands)
        {
            if (!Reaches(band.Range, by)) continue;
            var value = band.Formula.Evaluate(inputs).Quantity;
            hull = hull is { } sofar ? QuantityRange.Hull(sofar, value) : value;
        }

        // Outside the table the nearest row speaks; the file's check has already said that the table is too short.
        return FormulaValue.Of(hull ?? (by.Low < Bands[0].Range.Low ? Bands[0] : Bands[^1]).Formula.Evaluate(inputs).Quantity);
    }

    public override IEnumerable<string> Names() => By.Names().Concat(Bands.SelectMany(b => b.Formula.Names()));

    private static bool Reaches(QuantityRange band, QuantityRange by) => by.High >= band.Low && by.Low < band.High;
}

internal sealed record CaseExpression(Formula By, ImmutableArray<(string Word, Expression Value)> Cases, SourceSpan Span)
    : Expression(Cases[0].Value.Type, Span)
{
    public override string Text => $"by {By.Text}: " + string.Join("; ", Cases.Select(c => $"{c.Word}: {c.Value.Text}"));

    public override FormulaValue Evaluate(FormulaInputs inputs)
    {
        var word = By.Evaluate(inputs).Word;
        foreach (var (name, value) in Cases)
        {
            if (string.Equals(name, word, StringComparison.Ordinal)) return value.Evaluate(inputs);
        }

        // Every word is covered, or the file did not load; a word that is not settled may be any of them.
        return Cases.Skip(1).Aggregate(Cases[0].Value.Evaluate(inputs), (all, next) => Either(all, next.Value.Evaluate(inputs)));
    }

    private static FormulaValue Either(FormulaValue a, FormulaValue b) => a.Kind switch
    {
        FormulaKind.Quantity => FormulaValue.Of(QuantityRange.Hull(a.Quantity, b.Quantity)),
        FormulaKind.Truth => a.Truth == b.Truth ? a : FormulaValue.Of(Truth.Depends),
        _ => a == b ? a : FormulaValue.AnyWord,
    };

    public override IEnumerable<string> Names() => By.Names().Concat(Cases.SelectMany(c => c.Value.Names()));
}
