using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using System.Text.Json.Serialization;
using Protocolist.Planning.Batching;

namespace Protocolist.Cli.Commands;

/// <summary>How far a batch has come. Written after the rows that it counts, and whole or not at all, so that no row is lost or done twice.</summary>
/// <param name="Format">The version of this form.</param>
/// <param name="Start">The start that all plans share.</param>
/// <param name="Inputs">A digest of the bench, the protocols and the heading of the table.</param>
/// <param name="Rows">Rows that are done.</param>
/// <param name="RowsWithErrors">How many of them had errors.</param>
/// <param name="RowsFileBytes">The length of the file of rows after the last of them.</param>
/// <param name="Needs">What they need together.</param>
internal sealed record BatchProgress(int Format, string Start, string Inputs, int Rows, int RowsWithErrors, long RowsFileBytes, JointNeedsState Needs)
{
    public const int CurrentFormat = 1;

    public static string PathOf(string prefix) => prefix + ".progress.json";

    public static BatchProgress? Read(InputFiles files, string prefix)
    {
        var path = files.At(PathOf(prefix));
        if (!File.Exists(path)) return null;
        try
        {
            var progress = JsonSerializer.Deserialize(File.ReadAllText(path), BatchProgressContext.Default.BatchProgress);
            return progress is { Format: CurrentFormat, Needs: { Litres: not null, Uses: not null, Vessels: not null }, Rows: >= 0 } ? progress : null;
        }
        catch (JsonException)
        {
            return null;
        }
    }

    public void Write(InputFiles files, string prefix) => files.Write(PathOf(prefix), JsonSerializer.Serialize(this, BatchProgressContext.Default.BatchProgress) + "\n");

    public static string Digest(IEnumerable<string> texts) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(string.Join('\0', texts))));
}

[JsonSourceGenerationOptions(WriteIndented = true, PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase)]
[JsonSerializable(typeof(BatchProgress))]
internal sealed partial class BatchProgressContext : JsonSerializerContext;
