using System.Collections.Immutable;
using Protocolist.Benches.Stock;
using Protocolist.Fluids;
using Protocolist.Planning.Purchasing;
using Protocolist.Protocols;
using UnitsNet;

namespace Protocolist.Planning.Provisioning;

/// <summary>One fluid that steps use: how much of it, and where.</summary>
internal sealed record FluidUse(Fluid Fluid, ImmutableArray<(string Step, Volume Volume)> Steps)
{
    /// <summary>Below this nothing can be measured out.</summary>
    private static readonly Volume Least = Volume.FromMicroliters(1);

    /// <summary>Whether fixative that has served before may be restored for it: for lying in, never for injecting or keeping.</summary>
    public bool MayBeRestored { get; init; }

    /// <summary>The name of the need; two needs of one fluid differ by it.</summary>
    public string Id => MayBeRestored ? Fluid.Name + ForImmersion : Fluid.Name;

    /// <summary>The fluid of a need's name.</summary>
    public static string FluidOf(string id) => id.EndsWith(ForImmersion, StringComparison.Ordinal) ? id[..^ForImmersion.Length] : id;

    private const string ForImmersion = ", for immersion";

    public Volume Asked => Volume.FromCubicMeters(Steps.Sum(s => s.Volume.CubicMeters));

    /// <summary>What stays behind in jugs, hoses and syringes, once for each step.</summary>
    public Volume Dead => Asked.CubicMeters > 0 ? (Reserve.Usual.Used(Amount.Of(Asked), Steps.Length) - Amount.Of(Asked)).Volume : Volume.Zero;

    /// <summary>What is kept ready for spills.</summary>
    public Volume Spare => Reserve.Usual.ForSpills(Amount.Of(Asked)).Volume;

    /// <summary>What is made: what is asked, and a reserve for what spills and clings.</summary>
    public Volume Made => MadeTogether ?? Asked + Dead + Spare;

    /// <summary>What several plans make of it together, their reserves included; null for one plan.</summary>
    public Volume? MadeTogether { get; init; }

    /// <summary>What the steps use, by fluid.</summary>
    /// <param name="steps">The steps, with their vessels and volumes.</param>
    /// <param name="canRestore">Whether used fixative of this fluid's buffering stands on the shelf.</param>
    public static ImmutableArray<FluidUse> Of(IEnumerable<DraftStep> steps, Func<Fluid, bool> canRestore) =>
    [
        .. steps.Where(s => s.Fluid is not null && s.Volume is { } v && v >= Least)
            .GroupBy(s => (s.Fluid!.Name, Restorable: s.Kind == StageKind.Immerse && s.Fluid.HasFormaldehyde && canRestore(s.Fluid)))
            .Select(g => new FluidUse(g.First().Fluid!, [.. g.Select(s => (s.Id, s.Volume!.Value * (1 + s.Changes)))]) { MayBeRestored = g.Key.Restorable }),
    ];
}
