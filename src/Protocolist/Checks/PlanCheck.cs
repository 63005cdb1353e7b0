using Protocolist.Findings;

namespace Protocolist.Checks;

/// <summary>One thing that the most careful colleague would look at in a finished plan.</summary>
/// <param name="Id">The id of its findings.</param>
/// <param name="Protects">What or whom it protects, in a few words.</param>
/// <param name="Source">Where the rule comes from.</param>
/// <param name="Find">What it finds; nothing where all is well.</param>
internal sealed record PlanCheck(string Id, string Protects, string Source, Func<ReviewCase, IEnumerable<Finding>> Find);

/// <summary>A check as the list of checks shows it.</summary>
/// <param name="Id">The id of its findings.</param>
/// <param name="Protects">What or whom it protects.</param>
/// <param name="Source">Where the rule comes from.</param>
public sealed record CheckDescription(string Id, string Protects, string Source);
