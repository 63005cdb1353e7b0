using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Planning.Drafting;
using Protocolist.Plans;
using Protocolist.Specimens;
using Protocolist.Specimens.Groups;
using static System.FormattableString;

namespace Protocolist.Planning.Provisioning;

/// <summary>In which of its group's postures a body is laid, by the vessels that there are: one for the whole plan, for hard it is not bent again.</summary>
internal static class PostureChoice
{
    /// <summary>Another posture is taken before the customary one where it saves so much of the fluid. The project's choice.</summary>
    private const double SavedShare = 0.5;

    private static readonly Phrase NoVessel = new("posture.no-vessel", "By custom one would {usual}; no vessel at hand holds it so.");
    private static readonly Phrase Saves = new(
        "posture.saves",
        "By custom one would {usual}; so it takes {more} of fluid in all, and this {less}. Whoever wants it so notes 'posture: {word}' with the specimen.");

    private static readonly Phrase LessHarm = new("posture.less-harm", "By custom one would {usual}; so the vessels at hand do it less harm.");

    /// <summary>How else the body may be laid than as it is, which the planner tries where that does harm.</summary>
    public static ImmutableArray<SetPosture> Others(BodyMeasure body, PosedBody taken)
    {
        var ways = PostureRows.Ways(body);
        return [.. ways.Where(w => w != taken).Select(w => Set(w, ways[0]))];
    }

    private static SetPosture Set(PosedBody way, PosedBody usual) =>
        new(way, way.Posture == usual.Posture ? default : LessHarm.With(("usual", usual.Posture.Told))) { Kept = Word(way) };

    private static string Word(PosedBody posed) => posed.Layers == 0 ? posed.Posture.Id : Invariant($"{posed.Posture.Id}/{posed.Layers}");

    /// <summary>The posture, and why it is not the customary one; null where it is, or was wished for.</summary>
    public static SetPosture For(Draft draft, StockDay day, PlanWishes wishes)
    {
        var taken = Preferred(draft, day, wishes);
        if (wishes.Posture is not { } word || taken.Kept is null || word == taken.Kept) return taken;
        var ways = PostureRows.Ways(draft.Body);
        return ways.FirstOrDefault(w => Word(w) == word) is { } kept ? Set(kept, ways[0]) : taken;
    }

    /// <summary>By custom, or otherwise where that saves much.</summary>
    private static SetPosture Preferred(Draft draft, StockDay day, PlanWishes wishes)
    {
        var ways = PostureRows.Ways(draft.Body);
        if (ways.Length == 1) return new(ways[0], default);
        var (taken, least) = (ways[0], Of(ways[0], draft, day, wishes));
        var usual = least;
        foreach (var way in ways.AsSpan()[1..])
        {
            var fluid = Of(way, draft, day, wishes);
            if (IsBetter(fluid, least)) (taken, least) = (way, fluid);
        }

        if (taken.Posture == ways[0].Posture) return new(taken, default) { Kept = Word(taken) };
        var custom = (Argument)("usual", ways[0].Posture.Told);
        Message why = least.Steps > usual.Steps ? NoVessel.With(custom)
            : Saves.With(custom, ("more", UnitsNet.Volume.FromCubicMeters(usual.Volume)), ("less", UnitsNet.Volume.FromCubicMeters(least.Volume)),
                ("word", ways[0].Posture.Id));
        return new(taken, why) { Kept = Word(taken) };
    }

    /// <summary>More steps have a vessel; else vessels with less to be said against them for less fluid, or as good ones for much less.</summary>
    private static bool IsBetter(in (int Steps, int Warnings, double Volume) way, in (int Steps, int Warnings, double Volume) than) =>
        way.Steps != than.Steps ? way.Steps > than.Steps
        : way.Warnings != than.Warnings ? way.Warnings < than.Warnings && way.Volume < than.Volume
        : way.Volume < SavedShare * than.Volume;

    /// <summary>The steps that have a vessel for it, what is to be said against those vessels, and their fluid in all.</summary>
    private static (int Steps, int Warnings, double Volume) Of(PosedBody way, Draft draft, StockDay day, PlanWishes wishes)
    {
        var (steps, warnings, volume) = (0, 0, 0.0);
        foreach (var step in draft.Steps)
        {
            if (!ProvisionPass.NeedsVessel(step)) continue;
            var wished = wishes.Vessels.TryGetValue(step.Id, out var id) ? day.Find(id) : null;
            if (VesselChoice.FluidFor(step, draft.Body, way, day, wished) is not var (fluid, against)) continue;
            steps++;
            warnings += against;
            volume += fluid;
        }

        return (steps, warnings, volume);
    }
}
