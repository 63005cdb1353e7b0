using System.Diagnostics;
using System.Text;

namespace Protocolist.Tests.EndToEnd;

/// <summary>What a run of the built program gave.</summary>
public sealed record Run(int Exit, string Out, string Error)
{
    /// <summary>All of it, for a failed assertion.</summary>
    public override string ToString() => $"exit {Exit}\n--- out\n{Out}\n--- error\n{Error}";
}

/// <summary>The program as it is built beside these tests, and a folder of one's own to run it in.</summary>
public sealed class BuiltProgram : IDisposable
{
    private static readonly string Root = FindRoot();

    public BuiltProgram() => Directory.CreateDirectory(Folder);

    /// <summary>A new empty folder.</summary>
    public string Folder { get; } = Path.Combine(Path.GetTempPath(), "protocolist-tests", Guid.NewGuid().ToString("N"));

    /// <summary>A file of the samples or protocols of the repository.</summary>
    public static string Repository(params string[] path) => Path.Combine([Root, .. path]);

    public static string Otter => Repository("samples", "specimens", "harbour-otter.yaml");

    public static string SkerryPoint => Repository("samples", "benches", "skerry-point.yaml");

    /// <summary>Writes a file into the folder and gives its path.</summary>
    public string File(string name, string text)
    {
        var path = Path.Combine(Folder, name);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        System.IO.File.WriteAllText(path, text);
        return path;
    }

    /// <summary>Runs the program.</summary>
    public Run Run(params string[] arguments) => Run([], arguments);

    /// <summary>Runs the program with a text on its standard input.</summary>
    public Run RunWith(string input, params string[] arguments) => Run(Start(arguments), input);

    /// <summary>Runs the program with variables of the environment set.</summary>
    public Run Run((string Name, string Value)[] variables, params string[] arguments)
    {
        var start = Start(arguments);
        foreach (var (name, value) in variables) start.Environment[name] = value;
        return Run(start, "");
    }

    /// <summary>Starts the program, for a test that does something to it while it runs.</summary>
    public Process Started(params string[] arguments) => Process.Start(Start(arguments))!;

    private ProcessStartInfo Start(string[] arguments) =>
        new ProcessStartInfo(PathOf(), arguments) { WorkingDirectory = Folder, RedirectStandardInput = true, RedirectStandardOutput = true, RedirectStandardError = true, StandardOutputEncoding = Encoding.UTF8, StandardErrorEncoding = Encoding.UTF8 };

    private static Run Run(ProcessStartInfo start, string input)
    {
        using var process = Process.Start(start)!;
        var error = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEndAsync();
        try
        {
            using (process.StandardInput) process.StandardInput.Write(input);
        }
        catch (IOException)
        {
            // It ended without reading what it was given.
        }

        if (!process.WaitForExit(60_000))
        {
            process.Kill();
            Assert.Fail("the program does not end");
        }

        var run = new Run(process.ExitCode, output.GetAwaiter().GetResult(), error.GetAwaiter().GetResult());
        Assert.DoesNotContain("   at ", run.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("Exception", run.Error, StringComparison.Ordinal);
        return run;
    }

    public void Dispose() => Directory.Delete(Folder, recursive: true);

    /// <summary>The assembly of a sample program.</summary>
    public static string Sample(string name) => Built("samples", name, $"{name}.dll");

    /// <summary>Where the program is.</summary>
    public static string PathOf() => Built("src", "Protocolist.Cli", OperatingSystem.IsWindows() ? "protocolist.exe" : "protocolist");

    /// <summary>bin/CONFIGURATION/net10.0 is the same below the tests and below what they test.</summary>
    private static string Built(string folder, string project, string file)
    {
        var built = new DirectoryInfo(AppContext.BaseDirectory.TrimEnd(Path.DirectorySeparatorChar));
        return Repository(folder, project, "bin", built.Parent!.Name, built.Name, file);
    }

    private static string FindRoot()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (System.IO.File.Exists(Path.Combine(folder.FullName, "Protocolist.sln"))) return folder.FullName;
        }

        throw new InvalidOperationException("The tests run outside the repository.");
    }
}
