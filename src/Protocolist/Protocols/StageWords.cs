using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Vessels;

namespace Protocolist.Protocols;

/// <summary>What closes the final vessel.</summary>
/// <param name="Name">Its word in protocols.</param>
/// <param name="Said">The same within a sentence.</param>
/// <param name="Fits">The vessels that are made to be closed so.</param>
internal sealed record Sealing(Phrase Name, Phrase Said, ImmutableArray<Closure> Fits)
{
    public static readonly Sealing ScrewLid = new("screw-lid", "screw lid", "a screw lid", Closure.ScrewLid);
    public static readonly Sealing SnapLid = new("snap-lid", "snap lid", "a snap lid", Closure.SnapLid);
    public static readonly Sealing Tape = new("tape", "tape", "tape", Closure.SealedPlate, Closure.Open, Closure.LooseLid);
    public static readonly Sealing Silicone = new(
        "silicone", "neutral-cure silicone", "neutral-cure silicone", Closure.SealedPlate, Closure.Open, Closure.LooseLid);
    public static readonly Sealing GroundStopper = new("ground-stopper", "ground stopper", "a ground stopper", Closure.GroundStopper);

    private Sealing(string id, string name, string said, params ImmutableArray<Closure> fits)
        : this(new($"sealing.{id}", name), new($"seal-with.{id}", said), fits)
    {
    }

    public static ImmutableArray<Sealing> All { get; } = [ScrewLid, SnapLid, Tape, Silicone, GroundStopper];

    public static string[] Words => [.. All.Select(s => s.Name.English)];

    public static Sealing? Find(string word) => All.FirstOrDefault(s => s.Name.English == word);
}

/// <summary>What holds the body in its final vessel.</summary>
/// <param name="Name">Its word in protocols.</param>
internal sealed record Support(Phrase Name)
{
    public static readonly Support Nothing = new(new Phrase("support.nothing", "nothing"));

    public static ImmutableArray<Support> All { get; } =
    [
        Nothing,
        new(new Phrase("support.glass-plate", "glass plate")),
        new(new Phrase("support.weight", "weight")),
        new(new Phrase("support.thread", "thread")),
    ];

    public static string[] Words => [.. All.Select(s => s.Name.English)];

    public static Support? Find(string word) => All.FirstOrDefault(s => s.Name.English == word);
}

/// <summary>What a label is written with.</summary>
/// <param name="Name">Its word in protocols.</param>
/// <param name="Lasts">Whether it stays legible in alcohol and formalin.</param>
internal sealed record LabelMedium(Phrase Name, bool Lasts)
{
    private LabelMedium(string id, string name, bool lasts = false)
        : this(new Phrase($"label-medium.{id}", name), lasts)
    {
    }

    public static ImmutableArray<LabelMedium> All { get; } =
    [
        new("soft-pencil", "soft pencil", lasts: true),
        new("carbon-ink", "carbon ink", lasts: true),
        new("ball-point-pen", "ball-point pen"),
        new("felt-pen", "felt pen"),
        new("thermal-print", "thermal print"),
        new("inkjet-print", "inkjet print"),
    ];

    public static string[] Words => [.. All.Select(m => m.Name.English)];

    public static LabelMedium? Find(string word) => All.FirstOrDefault(m => m.Name.English == word);
}

/// <summary>Where a protocol sends spent fluid.</summary>
/// <param name="Name">Its word in protocols.</param>
/// <param name="Way">What becomes of it.</param>
internal sealed record SpentTo(Phrase Name, WasteWay Way)
{
    public static ImmutableArray<SpentTo> All { get; } =
    [
        new(new Phrase("spent-to.reuse", "kept for reuse"), WasteWay.KeptForReuse),
        new(new Phrase("spent-to.collected", "collected as hazardous waste"), WasteWay.CollectedAsHazardous),
        new(new Phrase("spent-to.drained", "drained where local rules allow"), WasteWay.DrainedWhereAllowed),
    ];

    public static string[] Words => [.. All.Select(s => s.Name.English)];

    public static SpentTo? Find(string word) => All.FirstOrDefault(s => s.Name.English == word);
}
