using System.Globalization;
using System.Text.Json;

namespace Protocolist.Mutation;

/// <summary>One change that Stryker made to the library.</summary>
/// <param name="Id">Its number, by which the mutated library switches it on.</param>
/// <param name="File">The file below the library's folder, such as <c>Fluids/Water.cs</c>.</param>
/// <param name="Line">The line.</param>
/// <param name="Kind">What sort of change it is.</param>
/// <param name="Was">The text before.</param>
/// <param name="Is">The text after.</param>
internal sealed record Mutant(int Id, string File, int Line, string Kind, string Was, string Is)
{
    /// <summary>The folder of the library it lies in.</summary>
    public string Room => File.Split('/')[0];

    /// <summary>The name of its file without path and ending, which its tests mostly bear too.</summary>
    public string Subject => Path.GetFileNameWithoutExtension(File);

    /// <summary>Reads Stryker's report: every mutant that compiled and that its filters left in.</summary>
    public static IReadOnlyList<Mutant> Read(string report)
    {
        using var document = JsonDocument.Parse(System.IO.File.ReadAllText(report));
        var mutants = new List<Mutant>();
        foreach (var file in document.RootElement.GetProperty("files").EnumerateObject())
        {
            var name = file.Name.Replace('\\', '/').Split("src/Protocolist/")[^1];
            var lines = file.Value.GetProperty("source").GetString()!.Split('\n');
            foreach (var mutant in file.Value.GetProperty("mutants").EnumerateArray())
            {
                if (mutant.GetProperty("status").GetString() is "CompileError" or "Ignored") continue;
                var (start, end) = (mutant.GetProperty("location").GetProperty("start"), mutant.GetProperty("location").GetProperty("end"));
                var (line, from) = (start.GetProperty("line").GetInt32(), start.GetProperty("column").GetInt32() - 1);
                var was = end.GetProperty("line").GetInt32() == line ? lines[line - 1][from..(end.GetProperty("column").GetInt32() - 1)] : lines[line - 1][from..].TrimEnd() + " …";
                mutants.Add(new(int.Parse(mutant.GetProperty("id").GetString()!, CultureInfo.InvariantCulture), name, line, mutant.GetProperty("mutatorName").GetString()!, was, mutant.GetProperty("replacement").GetString()!));
            }
        }

        return [.. mutants.OrderBy(m => m.File, StringComparer.Ordinal).ThenBy(m => m.Id)];
    }
}
