using Protocolist.Findings;
using Protocolist.Plans;
using Protocolist.Specimens;

namespace Protocolist.Planning.Measuring;

/// <summary>First pass: what is known of the body, what follows from it, and what contradicts itself.</summary>
internal static class MeasurePass
{
    /// <summary>Measures a specimen as a plan keeps it.</summary>
    /// <remarks>
    /// A plan that is revised comes from its file. Were it first made from other last bits than those of the file, the revision would
    /// find steps changed, and tell calendars so, where nothing that anybody reads has changed.
    /// </remarks>
    public static Checked<BodyMeasure> Run(Specimen specimen) => BodyMeasure.Of(SpecimenJson.AsKept(specimen));
}
