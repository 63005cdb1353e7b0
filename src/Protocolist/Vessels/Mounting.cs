using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Fluids.Contact;
using Protocolist.Specimens;
using UnitsNet;

namespace Protocolist.Vessels;

/// <summary>What a body does when it is let go in its final fluid.</summary>
internal enum Bearing
{
    /// <summary>It sinks and keeps its pose.</summary>
    Sinks,

    /// <summary>It floats, though pressed and punctured so that no air is left in it.</summary>
    Floats,

    /// <summary>It sinks but slumps, bends or falls over.</summary>
    Sags,
}

/// <summary>How a body is held in its final vessel.</summary>
internal enum MountMethod
{
    /// <summary>It lies free.</summary>
    None,

    /// <summary>Tied to a glass plate that stands in the vessel.</summary>
    TiedToPlate,

    /// <summary>Held down by glass.</summary>
    Weighted,

    /// <summary>Hung by threads from a glass rod.</summary>
    Hung,
}

/// <summary>A mount: what it is, why, of what and how. All of it is common practice.</summary>
/// <param name="Method">How the body is held.</param>
/// <param name="Reason">Why so.</param>
/// <param name="Materials">What is needed.</param>
/// <param name="Steps">What to do, in order.</param>
internal sealed record Mount(MountMethod Method, Message Reason, ImmutableArray<Message> Materials, ImmutableArray<Message> Steps);

/// <summary>Brings a body into its final vessel: filling without air, and the mount. Common practice throughout; there is no published source.</summary>
internal static class Mounting
{
    private static readonly Phrase Half = new("fill.half", "Fill in about half of the fluid, {fluid} ({deep:0 mm} deep).");
    private static readonly Phrase Top = new("fill.top", "Top up to {level:0 mm}, with {fluid} of fluid in all; {headspace} stay empty.");

    private static readonly Phrase Millilitres = new("fill.amount-ml", "{volume:0 mL}");
    private static readonly Phrase FewLitres = new("fill.amount-few-litres", "{volume:0.0# L}");
    private static readonly Phrase Litres = new("fill.amount-litres", "{volume:0.# L}");

    private static readonly Phrase GlassPlate = new("mount.glass-plate", "a glass plate with ground edges");
    private static readonly Phrase GlassOrAcrylicPlate = new("mount.glass-or-acrylic-plate", "a glass (or acrylic) plate with ground edges");
    private static readonly Phrase Thread = new("mount.thread", "undyed polyester thread or polyamide monofilament");
    private static readonly Phrase Needle = new("mount.needle", "needle");

    private static readonly Mount Free = new(MountMethod.None, new Phrase("mount.free", "it sinks and fits, so it needs no mount"), [], []);

    private static readonly Phrase WeightedReason = new(
        "mount.weighted", "it floats; first make sure that no air is left in it, for a body that floats is not fixed where it stands out");

    private static readonly Phrase WeightedStep = new("mount.weighted.hold", "{how:sentence}");
    private static readonly Phrase LookAgain = new("mount.weighted.look", "Look again after a day: many sink once the fluid has gone in.");
    private static readonly ImmutableArray<Message> Weights = [new Phrase("mount.weight", "glass rod or a glass plate as weight"), Thread];
    private static readonly ImmutableArray<Message> Gauze = [new Phrase("mount.gauze", "gauze or net of polyester")];

    private static readonly Mount Unheld = new(
        MountMethod.None, new Phrase("mount.unheld", "such a body lies or hangs in the fluid as it will; nothing holds it"), [], []);

    private static readonly Mount Hung = new(
        MountMethod.Hung,
        new Phrase("mount.hung", "it slumps when it stands free, and is slender enough to hang"),
        [new Phrase("mount.rod", "glass rod cut to lie across the vessel"), Thread],
        [
            new Phrase("mount.hung.loops", "Pass a loop under the fore limbs or behind the head, a second one at the hips."),
            new Phrase("mount.hung.hang", "Hang it from the rod so that it touches neither bottom nor wall."),
            new Phrase("mount.hung.pad", "See that no thread cuts in; pad it with a strip of polyester gauze."),
        ]);

    private static readonly Mount Tied = new(
        MountMethod.TiedToPlate,
        new Phrase("mount.tied", "one side has to be seen"),
        [GlassPlate, Thread, Needle],
        [
            new Phrase("mount.tied.cut", "Cut the plate to stand in the vessel with 2 to 3 mm to spare at each side."),
            new Phrase("mount.tied.lay", "Lay the body on it as it is to be seen, and mark where ties will not show."),
            new Phrase("mount.tied.tie", "Tie at two to four places, around the plate or through drilled holes, firm but not cutting in."),
            new Phrase("mount.tied.lower", "Lower plate and body together."),
        ]);

    private static readonly Phrase TiedFloating = new("mount.tied-floating", "one side has to be seen, and it does not keep that pose by itself");
    private static readonly Phrase TiedSlumping = new("mount.tied-slumping", "it slumps when it stands free");

    /// <summary>How to fill the final vessel around the body so that no air stays in or on it.</summary>
    /// <param name="fitted">The vessel and its levels.</param>
    /// <param name="kind">How the body is handled.</param>
    /// <param name="animals">How many there are of it.</param>
    /// <returns>Steps in order, with this vessel's numbers.</returns>
    /// <exception cref="ArgumentNullException">The vessel is null.</exception>
    public static ImmutableArray<Message> FillingSteps(FittedVessel fitted, BodyKind kind, int animals = 1)
    {
        ArgumentNullException.ThrowIfNull(fitted);
        return
        [
            Half.With(("fluid", Amount(fitted.FluidVolume / 2)), ("deep", fitted.LevelBefore / 2)),
            .. LettingIn(kind, animals),
            Top.With(("level", fitted.LevelAfter), ("fluid", Amount(fitted.FluidVolume)), ("headspace", Amount(fitted.HeadspaceVolume))),
        ];
    }

    /// <summary>How such a body goes in, and how the air comes out of it and off it.</summary>
    /// <param name="kind">How it is handled.</param>
    /// <param name="animals">How many there are of it.</param>
    /// <returns>Steps in order.</returns>
    public static ImmutableArray<Message> LettingIn(BodyKind kind, int animals) =>
        [animals > 1 && kind != BodyKind.Eggs ? BodyKind.LowerLot : kind.Lower, kind.FreeAir, kind.FreeBubbles];

    /// <summary>Chooses the mount.</summary>
    /// <param name="kind">How the body is handled.</param>
    /// <param name="bearing">What the body does in the fluid.</param>
    /// <param name="showsOneSide">Whether one side or a pose has to be seen.</param>
    /// <param name="use">The fluid it stands in.</param>
    /// <param name="length">The body's length.</param>
    /// <param name="insideHeight">The vessel's inside height.</param>
    /// <returns>The mount, with materials that the fluid does not attack.</returns>
    public static Mount Choose(BodyKind kind, Bearing bearing, bool showsOneSide, Fluid use, Length length, Length insideHeight) =>
        (bearing, showsOneSide) switch
        {
            (Bearing.Sinks, false) => Free,
            (Bearing.Floats, _) when !showsOneSide || !kind.Allows(Gestures.Tie) => Weighted(kind),
            _ when !kind.Allows(Gestures.Tie) => Unheld,
            (Bearing.Sags, false) when length < insideHeight => Hung,
            (Bearing.Floats, true) => TiedIn(use) with { Reason = TiedFloating },
            (Bearing.Sags, _) => TiedIn(use) with { Reason = TiedSlumping },
            _ => TiedIn(use),
        };

    // Acrylic plates craze in alcohol (Simmons 2014, from memory); glass does for every fluid. Polyester and polyamide hold in formalin and alcohol;
    // cotton weakens over decades (common practice).
    private static Mount TiedIn(Fluid fluid) =>
        MaterialFitness.Judge(VesselMaterial.Acrylic, VesselPart.Mount, fluid) is { Grade: MaterialGrade.Lasting }
            ? Tied with { Materials = [GlassOrAcrylicPlate, Thread, Needle] }
            : Tied;

    private static Mount Weighted(BodyKind kind) => new(
        MountMethod.Weighted,
        WeightedReason,
        kind.Allows(Gestures.Tie) ? Weights : Gauze,
        [WeightedStep.With(("how", kind.KeepUnder)), LookAgain]);

    private static Message Amount(Volume volume) => (volume.Liters switch { < 1 => Millilitres, < 10 => FewLitres, _ => Litres }).With(("volume", volume));
}
