using System.Text.RegularExpressions;

namespace Protocolist.Tests.Conventions;

/// <summary>The house rules that the compiler does not hold, held over the sources of the library.</summary>
public partial class RoomTests
{
    /// <summary>A room uses only rooms before it. The order is that of DEVELOPERS.md.</summary>
    private static readonly string[] Rooms =
    [
        "Quantities", "Findings", "Notation", "Formulas", "Reading", "Fluids", "Specimens", "Vessels", "Protocols", "Benches", "Plans", "Wording", "Logs", "Rules",
        "Checks", "Planning", "Proving",
    ];

    private static readonly string Library = Repository.File("src", "Protocolist");

    private static readonly (string Path, string Text)[] Sources =
    [
        .. Directory.EnumerateFiles(Library, "*.cs", SearchOption.AllDirectories)
            .Select(f => (Path: Path.GetRelativePath(Library, f).Replace('\\', '/'), Text: File.ReadAllText(f)))
            .Where(f => !f.Path.StartsWith("bin/", StringComparison.Ordinal) && !f.Path.StartsWith("obj/", StringComparison.Ordinal)),
    ];

    public static TheoryData<string> RoomNames => [.. Rooms];

    [GeneratedRegex(@"^\s*(?:///|//).*$", RegexOptions.Multiline)]
    private static partial Regex Comments { get; }

    [GeneratedRegex(@"\bProtocolist\.([A-Z]\w+)")]
    private static partial Regex RoomName { get; }

    [GeneratedRegex(@"^\| `(\w+)` \|", RegexOptions.Multiline)]
    private static partial Regex TableRow { get; }

    private static string Room(string path) => path.Split('/')[0];

    private static string Code(string text) => Comments.Replace(text, "");

    [Theory]
    [MemberData(nameof(RoomNames))]
    public void Room_uses_only_rooms_before_it(string room)
    {
        var allowed = Rooms.TakeWhile(r => r != room).Append(room).ToHashSet(StringComparer.Ordinal);
        var wrong =
            from source in Sources
            where Room(source.Path) == room
            from Match use in RoomName.Matches(Code(source.Text))
            where Rooms.Contains(use.Groups[1].Value) && !allowed.Contains(use.Groups[1].Value)
            select $"{source.Path} uses {use.Groups[1].Value}";

        Assert.Empty(wrong.Distinct());
    }

    /// <summary>Each folder is a room that the list has, so that a new room finds its place in the order.</summary>
    [Fact]
    public void Every_folder_is_a_room_of_the_list()
    {
        Assert.True(Sources.Length > 200);
        Assert.Empty(Sources.Select(s => Room(s.Path)).Distinct().Except(Rooms));
        Assert.Equal(Rooms, TableRow.Matches(File.ReadAllText(Repository.File("DEVELOPERS.md"))).Select(m => m.Groups[1].Value));
    }

    [Fact]
    public void Namespace_follows_the_folder()
    {
        var wrong =
            from source in Sources
            let wanted = string.Join('.', source.Path.Split('/').SkipLast(1).Prepend("Protocolist"))
            where !source.Text.Contains($"namespace {wanted};", StringComparison.Ordinal)
            select $"{source.Path} is not in {wanted}";

        Assert.Empty(wrong);
    }

    [Theory]
    [InlineData("DateTime.Now")]
    [InlineData("DateTime.UtcNow")]
    [InlineData("DateTimeOffset.Now")]
    [InlineData("DateTimeOffset.UtcNow")]
    [InlineData("SystemClock")]
    [InlineData("GetSystemDefault")]
    [InlineData("TimeZoneInfo")]
    [InlineData("DateTimeZoneProviders")]
    [InlineData("CurrentCulture")]
    [InlineData("CurrentUICulture")]
    [InlineData("Environment.")]
    [InlineData("new Random")]
    [InlineData("Random.Shared")]
    [InlineData("Guid.NewGuid")]
    [InlineData("Stopwatch")]
    [InlineData("File.Read")]
    [InlineData("File.Write")]
    [InlineData("File.Open")]
    [InlineData("Directory.")]
    [InlineData("Console.")]
    [InlineData("HttpClient")]
    [InlineData("Process.Start")]
    public void Library_reads_nothing_from_the_machine(string word) =>
        Assert.Empty(Sources.Where(s => Code(s.Text).Contains(word, StringComparison.Ordinal)).Select(s => s.Path));

    [Fact]
    public void File_has_at_most_300_lines() =>
        Assert.Empty(Sources.Where(s => s.Text.Count(c => c == '\n') > 300).Select(s => s.Path));

    [Theory]
    [InlineData("Manager")]
    [InlineData("Helper")]
    [InlineData("Util")]
    [InlineData("Misc")]
    public void No_file_is_named_after_nothing(string word) =>
        Assert.Empty(Sources.Where(s => Path.GetFileNameWithoutExtension(s.Path).Contains(word, StringComparison.Ordinal)).Select(s => s.Path));
}
