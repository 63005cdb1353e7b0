using Protocolist.Findings;
using Protocolist.Fluids;

namespace Protocolist.Proving;

/// <summary>Fluids by the words that protocols use for them, each read once.</summary>
internal sealed class FluidWords(SubstanceCatalogue substances)
{
    private readonly Dictionary<string, Checked<Fluid>> _read = new(StringComparer.Ordinal);

    /// <summary>The fluid of a word; its findings name no place.</summary>
    public Checked<Fluid> Read(string word) => _read.TryGetValue(word, out var known) ? known : _read[word] = Fluid.Read(word, known: substances);
}
