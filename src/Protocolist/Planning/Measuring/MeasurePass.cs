using Protocolist.Findings;
using Protocolist.Specimens;

namespace Protocolist.Planning.Measuring;

/// <summary>First pass: what is known of the body, what follows from it, and what contradicts itself.</summary>
internal static class MeasurePass
{
    public static Checked<BodyMeasure> Run(Specimen specimen, Kinds kinds) => BodyMeasure.Of(specimen, kinds);
}
