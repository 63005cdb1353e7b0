using System.Globalization;
using FsCheck;
using FsCheck.Fluent;
using Microsoft.FSharp.Core;

namespace Protocolist.Properties;

/// <summary>
/// How the cases of all properties are drawn. PROTOCOLIST_SEED names the draw: a number, or <c>anew</c> for one that nobody has seen, or
/// what a failure shows in brackets; without it the draw is the same everywhere. PROTOCOLIST_CASES is how many cases each property is
/// tried on, in place of its own count.
/// </summary>
internal static class Draws
{
    /// <summary>
    /// Any odd number does; this one is 2^64 divided by the golden ratio, as in Steele, Lea and Flood, "Fast splittable pseudorandom number
    /// generators", 2014.
    /// </summary>
    private const ulong Step = 0x9E37_79B9_7F4A_7C15;

    private const string Usual = "20270301";

    /// <summary>The draw of this run, as FsCheck writes it.</summary>
    public static string Replay { get; } = Read(Environment.GetEnvironmentVariable("PROTOCOLIST_SEED"));

    /// <summary>How many cases each property is tried on, if all are to have the same.</summary>
    public static int? Cases { get; } =
        Environment.GetEnvironmentVariable("PROTOCOLIST_CASES") is { Length: > 0 } text ? int.Parse(text, CultureInfo.InvariantCulture) : null;

    private static Replay Start { get; } = StartOf(Replay.Trim('(', ')').Split(','));

    /// <summary>So many cases of the draw of this run, unless the run says how many.</summary>
    public static Config Of(int cases) => Config.QuickThrowOnFailure.WithMaxTest(Cases ?? cases).WithReplay(FSharpOption<Replay>.Some(Start));

    /// <summary>Tries a property on so many cases of the draw of this run.</summary>
    public static void Try(this Property property, int cases) => property.Check(Of(cases));

    /// <summary>So many values of the draw of this run.</summary>
    public static T[] Some<T>(this Gen<T> values, int count, int size = 50) => values.Sample(count, Start.Rnd, size);

    private static Replay StartOf(string[] parts)
    {
        ulong Part(int i) => ulong.Parse(parts[i], CultureInfo.InvariantCulture);
        return new(new(Part(0), Part(1)), parts.Length > 2 ? FSharpOption<int>.Some((int)Part(2)) : null);
    }

    private static string Read(string? text) => text switch
    {
        null or "" => $"({Usual},{Step})",
        "anew" => $"({Random.Shared.NextInt64()},{Step})",
        _ when text.Contains(',', StringComparison.Ordinal) => text,
        _ => $"({text},{Step})",
    };
}
