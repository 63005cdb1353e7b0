using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Protocolist.Sameness;

/// <summary>What is asked of a case.</summary>
internal enum Ask
{
    Plan,

    /// <summary>A plan, and what each of the logs in turn makes of it.</summary>
    Revise,

    /// <summary>The lawful ways side by side.</summary>
    Compare,

    /// <summary>A table of specimens, planned row by row, and what to buy for all.</summary>
    Batch,

    /// <summary>What is wrong with the bundled protocols.</summary>
    Check,
}

/// <summary>One thing to work out, whole in itself: files stand in it as texts, so that no later version of the library has a say in what is asked.</summary>
/// <param name="Key">Its name, unique.</param>
/// <param name="Ask">What is asked.</param>
internal sealed record Case(string Key, Ask Ask)
{
    /// <summary>The specimen's file, or the table of a batch.</summary>
    public string Specimen { get; init; } = "";

    /// <summary>The name of a bench file in the folder <c>benches</c>; empty for no bench.</summary>
    public string Bench { get; init; } = "";

    /// <summary>The earliest start on the bench's clocks.</summary>
    public string Start { get; init; } = "2027-03-01T09:00";

    /// <summary>The day on whose morning all is to be over; empty where nothing presses.</summary>
    public string By { get; init; } = "";

    /// <summary>Whether the protocols of the folder <c>house</c> are laid over the bundled ones.</summary>
    public bool House { get; init; }

    public SortedDictionary<string, string> Choose { get; init; } = [];

    public SortedDictionary<string, string> Vessels { get; init; } = [];

    public SortedDictionary<string, string> Supplies { get; init; } = [];

    /// <summary>Log files, each the whole log so far.</summary>
    public ImmutableArray<string> Logs { get; init; } = [];

    public static IEnumerable<Case> ReadAll(string path) => File.ReadLines(path).Select(line => JsonSerializer.Deserialize(line, CaseJson.Default.Case)!);

    public static void WriteAll(string path, IEnumerable<Case> cases) =>
        File.WriteAllLines(path, cases.Select(c => JsonSerializer.Serialize(c, CaseJson.Default.Case)));
}

[JsonSourceGenerationOptions(DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingDefault, UseStringEnumConverter = true)]
[JsonSerializable(typeof(Case))]
internal sealed partial class CaseJson : JsonSerializerContext;
