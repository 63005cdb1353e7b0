using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using System.Text.Json.Serialization;
using Protocolist.Findings;
using Protocolist.Planning.Batching;

namespace Protocolist.Cli.Commands;

/// <summary>How far a batch has come. Written after the rows that it counts, and whole or not at all, so that no row is lost or done twice.</summary>
/// <param name="Format">The version of this form.</param>
/// <param name="Start">The start that all plans share.</param>
/// <param name="Inputs">A digest of the bench, the protocols, the choices and the heading of the table.</param>
/// <param name="Rows">Rows that are done.</param>
/// <param name="RowsWithErrors">How many of them had errors.</param>
/// <param name="RowsFileBytes">The length of the file of rows after the last of them.</param>
/// <param name="RowsFileDigest">A digest of those bytes.</param>
/// <param name="Needs">What they need together.</param>
/// <param name="Seal">A digest of all the rest, by which a record that was changed by hand is known.</param>
internal sealed record BatchProgress(
    int Format,
    string Start,
    string Inputs,
    int Rows,
    int RowsWithErrors,
    long RowsFileBytes,
    string RowsFileDigest,
    JointNeedsState Needs,
    string Seal = "")
{
    private static readonly Phrase Bad = new("bad-progress", "this record of a batch was changed, or is of another version of the program");
    private static readonly Phrase BadRemedy = new("bad-progress.remedy", "begin anew without --resume, and leave the record as it is written");

    public const int CurrentFormat = 2;

    public static string PathOf(string prefix) => prefix + ".progress.json";

    /// <summary>The record; an error where there is none, or it is not as it was written.</summary>
    public static Checked<BatchProgress> Read(SourceText source)
    {
        try
        {
            var read = JsonSerializer.Deserialize(source.Text, BatchProgressContext.Default.BatchProgress);
            if (read is { Format: CurrentFormat, Needs: not null } && read.Seal == read.SealOfRest()) return new(read, []);
        }
        catch (Exception fault) when (fault is JsonException or NotSupportedException)
        {
            // Told below, like a record that was changed.
        }

        return new(null, [Finding.Error(Bad.Id, Bad, BadRemedy, SourceSpan.At(source.Name, 1, 1))]);
    }

    public string Text() => JsonSerializer.Serialize(this with { Seal = SealOfRest() }, BatchProgressContext.Default.BatchProgress) + "\n";

    public static string Digest(IEnumerable<string> texts)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (var text in texts)
        {
            hash.AppendData(Encoding.UTF8.GetBytes(text));
            hash.AppendData([0xFF]); // no byte of UTF-8
        }

        return Convert.ToHexStringLower(hash.GetHashAndReset());
    }

    private string SealOfRest() => Digest([JsonSerializer.Serialize(this with { Seal = "" }, BatchProgressContext.Default.BatchProgress)]);
}

[JsonSourceGenerationOptions(WriteIndented = true, NewLine = "\n", PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase)]
[JsonSerializable(typeof(BatchProgress))]
internal sealed partial class BatchProgressContext : JsonSerializerContext;
