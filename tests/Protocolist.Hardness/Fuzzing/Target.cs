namespace Protocolist.Hardness.Fuzzing;

/// <summary>Something that reads what people write.</summary>
/// <param name="Name">What it reads.</param>
/// <param name="Seeds">Sound texts to begin with.</param>
/// <param name="Read">Reads a text and does all with it that the program would; gives a short word of what came of it, by which new ways are told from known ones.</param>
internal sealed record Target(string Name, IReadOnlyList<string> Seeds, Func<string, string> Read);
