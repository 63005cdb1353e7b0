using Protocolist.Findings;

namespace Protocolist.Notation;

/// <summary>What is wrong with a piece of text, and where in it.</summary>
/// <param name="Id">The finding's id.</param>
/// <param name="Message">What is wrong.</param>
/// <param name="Remedy">What to write instead.</param>
/// <param name="Offset">Characters before the fault.</param>
/// <param name="Length">Width of the fault, at least 1.</param>
internal sealed record TextFault(string Id, Message Message, Message Remedy, int Offset, int Length);
