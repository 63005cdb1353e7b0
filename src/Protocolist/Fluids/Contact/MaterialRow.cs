using System.Collections.Immutable;
using Protocolist.Findings;

namespace Protocolist.Fluids.Contact;

/// <summary>What one material is good for in a fluid.</summary>
/// <param name="Material">The material.</param>
/// <param name="Parts">As what it serves.</param>
/// <param name="Grade">How it bears the fluid.</param>
/// <param name="Reason">Why.</param>
/// <param name="Source">Who says so.</param>
internal sealed record MaterialRow(VesselMaterial Material, ImmutableArray<VesselPart> Parts, MaterialGrade Grade, Phrase Reason, string Source)
{
    /// <summary>Fluid Preservation: A Comprehensive Reference.</summary>
    public const string Simmons = "Simmons 2014 (from memory)";

    /// <summary>Walls, lid, seal and mount.</summary>
    public static ImmutableArray<VesselPart> AllParts { get; } = [VesselPart.Wall, VesselPart.Lid, VesselPart.Seal, VesselPart.Mount];

    /// <summary>Walls, lid and mount.</summary>
    public static ImmutableArray<VesselPart> AllButSeal { get; } = [VesselPart.Wall, VesselPart.Lid, VesselPart.Mount];
}
