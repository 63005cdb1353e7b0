namespace Protocolist.Hardness.Fuzzing;

/// <summary>Something that reads what people write.</summary>
/// <param name="Name">What it reads.</param>
/// <param name="Seeds">Sound texts to begin with.</param>
/// <param name="Read">Reads a text and does all with it that the program would; says in short what came of it, by which new ways are told from known.</param>
internal sealed record Target(string Name, IReadOnlyList<string> Seeds, Func<string, string> Read);
