using System.Reflection;
using System.Reflection.Emit;
using System.Text.RegularExpressions;

namespace Protocolist.Tests.Conventions;

/// <summary>The house rules that the compiler does not hold, held over the library as it was compiled and over its sources.</summary>
public partial class RoomTests
{
    /// <summary>A room uses only rooms before it. The order is that of DEVELOPERS.md.</summary>
    private static readonly string[] Rooms =
    [
        "Quantities", "Findings", "Notation", "Formulas", "Reading", "Fluids", "Specimens", "Vessels", "Protocols", "Benches", "Plans", "Wording", "Logs", "Rules",
        "Checks", "Planning", "Proving",
    ];

    /// <summary>The rooms inside a room, in the same order; the files that stand in the room itself have no name. Those of other rooms are drawers of one subject.</summary>
    private static readonly Dictionary<string, string[]> RoomsInside = new(StringComparer.Ordinal)
    {
        ["Benches"] = ["Stock", "Opening", "Disposal", ""],
        ["Planning"] =
        [
            "Measuring", "Selecting", "Drafting", "Provisioning", "Scheduling", "Dating", "Reviewing", "Making", "Deciding", "Revising", "Comparing", "", "Batching",
        ],
    };

    /// <summary>Public types stand here, whatever the room of their file: a door of few leaves.</summary>
    private static readonly string[] Doors =
    [
        "Protocolist", "Protocolist.Benches", "Protocolist.Findings", "Protocolist.Fluids", "Protocolist.Plans", "Protocolist.Quantities", "Protocolist.Specimens",
        "Protocolist.Vessels",
    ];

    private const int MostPublicTypes = 120;

    private static readonly string Library = Repository.File("src", "Protocolist");

    private static readonly (string Path, string Text)[] Sources =
    [
        .. Directory.EnumerateFiles(Library, "*.cs", SearchOption.AllDirectories)
            .Select(f => (Path: Path.GetRelativePath(Library, f).Replace('\\', '/'), Text: File.ReadAllText(f)))
            .Where(f => !f.Path.StartsWith("bin/", StringComparison.Ordinal) && !f.Path.StartsWith("obj/", StringComparison.Ordinal)),
    ];

    private static readonly Type[] Types = typeof(Planner).Assembly.GetTypes();

    /// <summary>Where each type of the library is declared, by its full name.</summary>
    private static readonly Dictionary<string, string> Places =
        (from source in Sources
         from Match type in Declared.Matches(source.Text)
         select (Name: $"{Namespace.Match(source.Text).Groups[1].Value}.{type.Groups[1].Value}", source.Path))
        .DistinctBy(t => t.Name).ToDictionary(t => t.Name, t => t.Path, StringComparer.Ordinal);

    private static readonly Dictionary<short, OpCode> Codes =
        typeof(OpCodes).GetFields().Select(f => (OpCode)f.GetValue(null)!).ToDictionary(c => c.Value);

    private static readonly Lazy<(Type From, Type To)[]> Uses = new(() => [.. Types.SelectMany(t => UsedBy(t).Select(u => (t, u))).Distinct()]);

    [GeneratedRegex(@"^\s*(?:///|//).*$", RegexOptions.Multiline)]
    private static partial Regex Comments { get; }

    [GeneratedRegex(@"^\| `(\w+)` \|", RegexOptions.Multiline)]
    private static partial Regex TableRow { get; }

    [GeneratedRegex(@"^namespace ([\w.]+);", RegexOptions.Multiline)]
    private static partial Regex Namespace { get; }

    [GeneratedRegex(@"^(?:public |internal |sealed |static |abstract |readonly |partial |ref )*(?:record struct|record|class|struct|enum|interface|delegate [\w<>?]+) (\w+)", RegexOptions.Multiline)]
    private static partial Regex Declared { get; }

    private static string Room(string path) => path.Split('/')[0];

    /// <summary>The room inside the room; nothing for a file that stands in the room itself.</summary>
    private static string Inside(string path) => path.Split('/') is { Length: > 2 } parts ? parts[1] : "";

    private static string Code(string text) => Comments.Replace(text, "");

    /// <summary>The file of a type, nested ones by the outermost; null for what the compiler made.</summary>
    private static string? Place(Type type)
    {
        var outer = type;
        while (outer.DeclaringType is { } around) outer = around;
        return Places.GetValueOrDefault($"{outer.Namespace}.{outer.Name.Split('`')[0]}");
    }

    [Fact]
    public void Room_uses_only_rooms_before_it() =>
        Assert.Empty(from use in Uses.Value
                     let places = (From: Place(use.From), To: Place(use.To))
                     where places is { From: not null, To: not null } && Array.IndexOf(Rooms, Room(places.To)) > Array.IndexOf(Rooms, Room(places.From))
                     select $"{places.From} uses {use.To.Name} of {places.To}");

    [Fact]
    public void Room_inside_a_room_uses_only_those_before_it() =>
        Assert.Empty(from use in Uses.Value
                     let places = (From: Place(use.From), To: Place(use.To))
                     where places is { From: not null, To: not null } && Room(places.From) == Room(places.To) && RoomsInside.ContainsKey(Room(places.From))
                     let order = RoomsInside[Room(places.From)]
                     where Array.IndexOf(order, Inside(places.To)) > Array.IndexOf(order, Inside(places.From))
                     select $"{places.From} uses {use.To.Name} of {places.To}");

    /// <summary>The two tests above see what they are meant to see: a call, a field, a local value, a base, in nested code too.</summary>
    [Fact]
    public void Uses_are_seen_in_compiled_code()
    {
        Assert.All(Types.Where(t => t.DeclaringType is null && !t.Name.Contains('<', StringComparison.Ordinal) && t.Namespace?.StartsWith("Protocolist", StringComparison.Ordinal) == true), t => Assert.NotNull(Place(t)));
        Assert.True(Uses.Value.Length > 3000);
        Assert.Contains(typeof(Protocolist.Findings.Phrase), UsedBy(typeof(Protocolist.Logs.LogOrder)));
        Assert.Contains(typeof(Protocolist.Specimens.SpecimenValidator), UsedBy(typeof(Protocolist.Specimens.Kinds)));
    }

    /// <summary>Each folder is a room that the list has, so that a new room finds its place in the order.</summary>
    [Fact]
    public void Every_folder_is_a_room_of_the_list()
    {
        Assert.True(Sources.Length > 200);
        Assert.Empty(Sources.Select(s => Room(s.Path)).Distinct().Except(Rooms));
        Assert.All(RoomsInside, room => Assert.Empty(Sources.Where(s => Room(s.Path) == room.Key).Select(s => Inside(s.Path)).Distinct().Except(room.Value)));
        Assert.Equal(Rooms, TableRow.Matches(File.ReadAllText(Repository.File("DEVELOPERS.md"))).Select(m => m.Groups[1].Value));
    }

    /// <summary>Only what is public may stand elsewhere, at the door of its subject or in front of the house.</summary>
    [Fact]
    public void Namespace_follows_the_folder() =>
        Assert.Empty(from type in Types
                     where type is { IsNested: false } && Place(type) is not null
                     let path = Place(type)!
                     let room = string.Join('.', path.Split('/').SkipLast(1).Prepend("Protocolist"))
                     where type.Namespace != room && !(Doors.Contains(type.Namespace) && Sources.First(s => s.Path == path).Text.Contains("\npublic ", StringComparison.Ordinal))
                     select $"{type.Name} in {path} is not in {room}");

    [Fact]
    public void Public_types_are_few_and_stand_in_few_namespaces()
    {
        var exported = typeof(Planner).Assembly.GetExportedTypes();
        Assert.True(exported.Length <= MostPublicTypes, $"{exported.Length} public types");
        Assert.Equal(Doors, exported.Select(t => t.Namespace!).Distinct().Order(StringComparer.Ordinal));
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

    [Fact]
    public void Line_has_at_most_160_characters() =>
        Assert.Empty(from source in Sources
                     from line in source.Text.Split('\n').Select((text, at) => (Text: text, Number: at + 1))
                     where line.Text.Length > 160
                     select $"{source.Path}:{line.Number}");

    [Theory]
    [InlineData("Manager")]
    [InlineData("Helper")]
    [InlineData("Util")]
    [InlineData("Misc")]
    public void No_file_is_named_after_nothing(string word) =>
        Assert.Empty(Sources.Where(s => Path.GetFileNameWithoutExtension(s.Path).Contains(word, StringComparison.Ordinal)).Select(s => s.Path));

    /// <summary>The types of the library that a type uses: what it is, what it holds, and what its code calls.</summary>
    private static HashSet<Type> UsedBy(Type type)
    {
        const BindingFlags All = BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;
        var used = new HashSet<Type>();
        Use(type.BaseType);
        foreach (var implemented in type.GetInterfaces()) Use(implemented);
        foreach (var field in type.GetFields(All)) Use(field.FieldType);
        foreach (var property in type.GetProperties(All)) Use(property.PropertyType);
        foreach (var method in type.GetMethods(All).Cast<MethodBase>().Concat(type.GetConstructors(All)))
        {
            if (method is MethodInfo returning) Use(returning.ReturnType);
            foreach (var parameter in method.GetParameters()) Use(parameter.ParameterType);
            if (method.GetMethodBody() is not { } body) continue;
            foreach (var local in body.LocalVariables) Use(local.LocalType);
            foreach (var member in Named(method, body.GetILAsByteArray()!))
            {
                Use(member as Type ?? member.DeclaringType);
                if (member is MethodInfo { IsGenericMethod: true } generic) Array.ForEach(generic.GetGenericArguments(), Use);
            }
        }

        return used;

        void Use(Type? one)
        {
            if (one is null) return;
            if (one.HasElementType) Use(one.GetElementType());
            if (one.IsGenericType) Array.ForEach(one.GetGenericArguments(), Use);
            if (one.Assembly == typeof(Planner).Assembly && !one.IsGenericParameter) used.Add(one.IsGenericType ? one.GetGenericTypeDefinition() : one);
        }
    }

    /// <summary>What the instructions of a method name: a number after the code, told by its kind.</summary>
    private static IEnumerable<MemberInfo> Named(MethodBase method, byte[] code)
    {
        var types = method.DeclaringType is { IsGenericType: true } declaring ? declaring.GetGenericArguments() : null;
        var arguments = method.IsGenericMethod ? method.GetGenericArguments() : null;
        for (var at = 0; at < code.Length;)
        {
            var operation = Codes[code[at] == 0xFE ? (short)((0xFE << 8) | code[at + 1]) : code[at]];
            at += operation.Size;
            if (operation.OperandType is OperandType.InlineMethod or OperandType.InlineField or OperandType.InlineType or OperandType.InlineTok
                && method.Module.ResolveMember(BitConverter.ToInt32(code, at), types, arguments) is { } member)
                yield return member;
            at += operation.OperandType switch
            {
                OperandType.InlineNone => 0,
                OperandType.ShortInlineBrTarget or OperandType.ShortInlineI or OperandType.ShortInlineVar => 1,
                OperandType.InlineVar => 2,
                OperandType.InlineI8 or OperandType.InlineR => 8,
                OperandType.InlineSwitch => 4 + (4 * BitConverter.ToInt32(code, at)),
                _ => 4,
            };
        }
    }
}
