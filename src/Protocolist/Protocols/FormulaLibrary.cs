using System.Collections.Frozen;
using System.Collections.Immutable;
using Protocolist.Fluids.Infiltration;
using Protocolist.Formulas;
using Protocolist.Specimens;

namespace Protocolist.Protocols;

/// <summary>All functions that a protocol's formulas may use, from every room that registers some.</summary>
internal static class FormulaLibrary
{
    public static ImmutableArray<FormulaFunction> All { get; } = [.. CommonFunctions.All, .. FluidFunctions.All, .. SpecimenFunctions.All];

    public static FrozenDictionary<string, FormulaFunction> ByName { get; } = All.ToFrozenDictionary(f => f.Name, StringComparer.Ordinal);
}
