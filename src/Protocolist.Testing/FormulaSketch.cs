using System.Collections.Immutable;
using Protocolist.Quantities;

namespace Protocolist.Testing;

/// <summary>How loosely a part of a formula binds; a looser part inside a tighter one stands in brackets.</summary>
internal enum Binding
{
    Or,
    And,
    Not,
    Comparison,
    Range,
    Sum,
    Product,
    Atom,
}

/// <summary>A generated formula as a tree of parts, so that a counter-example shrinks part by part and stays well typed.</summary>
public sealed class FormulaSketch
{
    private readonly Func<ImmutableArray<FormulaSketch>, string> _write;

    internal FormulaSketch(Dimension? dimension, Binding binding, ImmutableArray<FormulaSketch> parts, Func<ImmutableArray<FormulaSketch>, string> write)
    {
        (Dimension, Binding, Parts, _write) = (dimension, binding, parts, write);
        Text = write(parts);
    }

    /// <summary>The formula as it stands in a file.</summary>
    public string Text { get; }

    /// <summary>What it measures; <c>null</c> for a condition.</summary>
    public Dimension? Dimension { get; }

    internal Binding Binding { get; }

    internal ImmutableArray<FormulaSketch> Parts { get; }

    /// <summary>Whether it is one number with its unit.</summary>
    internal bool IsLiteral => Parts.IsEmpty && char.IsAsciiDigit(Text[0]);

    /// <summary>Smaller formulas of the same type: a part in place of the whole, then the whole with one part made smaller.</summary>
    /// <returns>The candidates, the smallest first.</returns>
    public IEnumerable<FormulaSketch> Shrink()
    {
        foreach (var part in Descendants().Where(p => p.Dimension == Dimension).OrderBy(p => p.Text.Length)) yield return part;
        for (var i = 0; i < Parts.Length; i++)
        {
            foreach (var smaller in Parts[i].Shrink()) yield return new(Dimension, Binding, Parts.SetItem(i, smaller), _write);
        }
    }

    /// <summary>The formula's text.</summary>
    /// <returns><see cref="Text"/>.</returns>
    public override string ToString() => Text;

    /// <summary>Its text inside something that binds as given.</summary>
    internal string Inside(Binding outer) => Binding < outer ? $"({Text})" : Text;

    private IEnumerable<FormulaSketch> Descendants() => Parts.SelectMany(p => p.Descendants().Prepend(p));
}
