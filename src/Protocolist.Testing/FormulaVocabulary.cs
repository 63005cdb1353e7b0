using System.Collections.Immutable;
using Protocolist.Quantities;

namespace Protocolist.Testing;

/// <summary>The names that generated formulas may use.</summary>
/// <param name="Quantities">Names of quantities with what each measures.</param>
/// <param name="Words">Names of words with all the words each can be; at least one each.</param>
public sealed record FormulaVocabulary(
    ImmutableDictionary<string, Dimension> Quantities,
    ImmutableDictionary<string, ImmutableArray<string>> Words)
{
    /// <summary>A few names like those of a protocol.</summary>
    public static FormulaVocabulary Sample { get; } = new(
        ImmutableDictionary.CreateRange(StringComparer.Ordinal, new KeyValuePair<string, Dimension>[]
        {
            new("specimen.mass", Dimension.OfMass),
            new("specimen.length", Dimension.OfLength),
            new("specimen.volume", Dimension.OfVolume),
            new("slit-spacing", Dimension.OfLength),
            new("soak", Dimension.OfTime),
            new("ratio", Dimension.None),
            new("room", Dimension.OfTemperature),
            new("strength", Dimension.OfShareByVolume),
        }),
        ImmutableDictionary.CreateRange(StringComparer.Ordinal, new KeyValuePair<string, ImmutableArray<string>>[]
        {
            new("choice.keeping", ["formalin", "ethanol", "isopropanol"]),
            new("choice.display", ["yes", "no"]),
        }));
}
