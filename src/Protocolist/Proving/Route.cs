using System.Collections.Immutable;
using Protocolist.Protocols;

namespace Protocolist.Proving;

/// <summary>The stages that a protocol runs for a stretch of its class under one combination of choices and traits.</summary>
/// <param name="Words">The combination.</param>
/// <param name="Part">The stretch.</param>
/// <param name="Stages">The stages, in order; the same array for all routes of the same stages.</param>
internal sealed record Route(WordCase Words, ClassPart Part, ImmutableArray<StageDefinition> Stages);
