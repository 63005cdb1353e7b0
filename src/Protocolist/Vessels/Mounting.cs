using System.Collections.Immutable;
using Protocolist.Fluids;
using Protocolist.Fluids.Contact;
using UnitsNet;
using static System.FormattableString;

namespace Protocolist.Vessels;

/// <summary>What a body does when it is let go in its final fluid.</summary>
public enum Bearing
{
    /// <summary>It sinks and keeps its pose.</summary>
    Sinks,

    /// <summary>It floats, though pressed and punctured so that no air is left in it.</summary>
    Floats,

    /// <summary>It sinks but slumps, bends or falls over.</summary>
    Sags,
}

/// <summary>How a body is held in its final vessel.</summary>
public enum MountMethod
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
public sealed record Mount(MountMethod Method, string Reason, ImmutableArray<string> Materials, ImmutableArray<string> Steps);

/// <summary>Brings a body into its final vessel: filling without air, and the mount. Common practice throughout; there is no published source.</summary>
public static class Mounting
{
    /// <summary>How to fill the final vessel around the body so that no air stays in or on it.</summary>
    /// <param name="fitted">The vessel and its levels.</param>
    /// <returns>Steps in order, with this vessel's numbers.</returns>
    /// <exception cref="ArgumentNullException">The vessel is null.</exception>
    public static ImmutableArray<string> FillingSteps(FittedVessel fitted)
    {
        ArgumentNullException.ThrowIfNull(fitted);
        var half = fitted.FluidVolume / 2;
        return
        [
            Invariant($"Fill in about half of the fluid, {Amount(half)} ({Millimetres(fitted.LevelBefore / 2)} deep)."),
            "Lower the specimen slowly, one end first.",
            "Press it gently, so that fluid takes the place of the air in its cavities and cuts.",
            "Free the bubbles on its surface with a glass, plastic or stainless steel rod, or by tapping the vessel.",
            Invariant($"Top up to {Millimetres(fitted.LevelAfter)}, with {Amount(fitted.FluidVolume)} of fluid in all; {Amount(fitted.HeadspaceVolume)} stay empty."),
        ];
    }

    /// <summary>Chooses the mount.</summary>
    /// <param name="bearing">What the body does in the fluid.</param>
    /// <param name="showsOneSide">Whether one side or a pose has to be seen.</param>
    /// <param name="use">The fluid it stands in.</param>
    /// <param name="length">The body's length.</param>
    /// <param name="insideHeight">The vessel's inside height.</param>
    /// <returns>The mount, with materials that the fluid does not attack.</returns>
    public static Mount Choose(Bearing bearing, bool showsOneSide, Fluid use, Length length, Length insideHeight)
    {
        // Acrylic plates craze in alcohol (Simmons 2014, from memory); glass does for every fluid. Polyester and polyamide hold in formalin and alcohol;
        // cotton weakens over decades (common practice).
        var plate = MaterialFitness.Judge(VesselMaterial.Acrylic, VesselPart.Mount, use) is { Grade: MaterialGrade.Lasting }
            ? "a glass (or acrylic) plate with ground edges"
            : "a glass plate with ground edges";
        const string Thread = "undyed polyester thread or polyamide monofilament";
        return (bearing, showsOneSide) switch
        {
            (Bearing.Sinks, false) => new(MountMethod.None, "it sinks and fits, so it needs no mount", [], []),
            (Bearing.Floats, false) => new(
                MountMethod.Weighted,
                "it floats; first make sure that no air is left in it, for a body that floats is not fixed where it stands out",
                ["glass rod or a glass plate as weight", Thread],
                ["Puncture and press out what air is left.", "Tie the weight to it where the tie does not show, or lay a glass plate over it.", "Look again after a day: many sink once the fluid has gone in."]),
            (Bearing.Floats, true) => Tied(plate, Thread, "one side has to be seen, and it does not keep that pose by itself"),
            (Bearing.Sags, false) when length < insideHeight => new(
                MountMethod.Hung,
                "it slumps when it stands free, and is slender enough to hang",
                ["glass rod cut to lie across the vessel", Thread],
                ["Pass a loop under the fore limbs or behind the head, a second one at the hips.", "Hang it from the rod so that it touches neither bottom nor wall.", "See that no thread cuts in; pad it with a strip of polyester gauze."]),
            _ => Tied(plate, Thread, bearing == Bearing.Sags ? "it slumps when it stands free" : "one side has to be seen"),
        };
    }

    private static Mount Tied(string plate, string thread, string reason) => new(
        MountMethod.TiedToPlate,
        reason,
        [plate, thread, "needle"],
        [
            "Cut the plate to stand in the vessel with 2 to 3 mm to spare at each side.",
            "Lay the body on it as it is to be seen, and mark where ties will not show.",
            "Tie at two to four places, around the plate or through drilled holes, firm but not cutting in.",
            "Lower plate and body together.",
        ]);

    private static string Amount(Volume volume) => volume.Liters switch
    {
        < 1 => Invariant($"{volume.Milliliters:0} mL"),
        < 10 => Invariant($"{volume.Liters:0.0#} L"),
        _ => Invariant($"{volume.Liters:0.#} L"),
    };

    private static string Millimetres(Length level) => Invariant($"{level.Millimeters:0} mm");
}
