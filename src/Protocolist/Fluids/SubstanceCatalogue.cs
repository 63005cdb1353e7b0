using System.Collections.Frozen;
using System.Collections.Immutable;
using Protocolist.Fluids.Names;

namespace Protocolist.Fluids;

/// <summary>The substances that are known, and the names by which people call fluids of them. Immutable, safe to share between threads.</summary>
public sealed class SubstanceCatalogue
{
    private readonly FrozenDictionary<string, FluidWord> _words;
    private readonly FrozenDictionary<string, FluidWord>.AlternateLookup<ReadOnlySpan<char>> _bySpan;

    private SubstanceCatalogue(ImmutableArray<Substance> all)
    {
        All = all;
        var words = new Dictionary<string, FluidWord>(StringComparer.Ordinal);
        foreach (var word in all.SelectMany(s => s.Words))
        {
            if (!words.TryAdd(WrittenFluid.Plain(word.Name), word) && words[WrittenFluid.Plain(word.Name)].Substance != word.Substance)
                throw new ArgumentException($"Two substances are called '{word.Name}'.", nameof(all));
        }

        _words = words.ToFrozenDictionary(StringComparer.Ordinal);
        _bySpan = _words.GetAlternateLookup<ReadOnlySpan<char>>();
        Canonical = [.. all.SelectMany(s => s.Canonical)];
    }

    /// <summary>What the library brings.</summary>
    public static SubstanceCatalogue Bundled { get; } = new(
    [
        Substance.Water,
        Substance.DistilledWater,
        Substance.TapWater,
        Substance.SeaWater,
        Substance.Ethanol,
        Substance.Isopropanol,
        Substance.FormaldehydeStock,
        Substance.Formaldehyde,
        Substance.Glycerol,
    ]);

    /// <summary>All of them.</summary>
    public ImmutableArray<Substance> All { get; }

    /// <summary>Names of fluids in use, as examples of how they are written; each is read without a finding.</summary>
    public ImmutableArray<string> Examples => [.. All.SelectMany(s => s.Examples)];

    /// <summary>Names without a strength that are fit to be suggested.</summary>
    internal ImmutableArray<string> Canonical { get; }

    /// <summary>The same with one substance more.</summary>
    /// <param name="substance">The substance.</param>
    /// <returns>Another catalogue.</returns>
    /// <exception cref="ArgumentException">Its id, or a name of it, is another one's already, or is read as a fluid of another.</exception>
    public SubstanceCatalogue With(Substance substance)
    {
        ArgumentNullException.ThrowIfNull(substance);
        if (Find(substance.Id) is not null) throw new ArgumentException($"There is a substance '{substance.Id}'.", nameof(substance));
        foreach (var word in substance.Words)
        {
            if (Fluid.Read(word.Name, known: this).Value is { } other)
                throw new ArgumentException($"'{word.Name}' is {other.Name} already.", nameof(substance));
        }

        return new(All.Add(substance));
    }

    /// <summary>The substance of an id; null where there is none.</summary>
    /// <param name="id">A kebab-case name, such as <c>ethanol</c>.</param>
    /// <returns>The substance.</returns>
    /// <exception cref="ArgumentNullException">There is no id.</exception>
    public Substance? Find(string id)
    {
        ArgumentNullException.ThrowIfNull(id);
        foreach (var substance in All)
        {
            if (string.Equals(substance.Id, id, StringComparison.OrdinalIgnoreCase)) return substance;
        }

        return null;
    }

    /// <summary>What a name without its strength stands for; in lower case, one space for spaces and hyphens.</summary>
    internal bool TryGet(ReadOnlySpan<char> plain, out FluidWord word) => _bySpan.TryGetValue(plain, out word);
}
