using System.Collections;
using System.Collections.Immutable;
using System.Reflection;
using System.Runtime.CompilerServices;
using Protocolist.Findings;
using Protocolist.Sheets;

namespace Protocolist.Tests.Wording;

/// <summary>Every phrase that stands in a static field or property of the library and the sheets, alone or in a table.</summary>
internal static class AllPhrases
{
    public static readonly ImmutableArray<(Phrase Phrase, string Where)> Found =
    [
        .. from assembly in new[] { typeof(Phrase).Assembly, typeof(TextSheet).Assembly }
           from type in assembly.GetTypes()
           where !type.ContainsGenericParameters
           from field in type.GetFields(BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly)
           where !field.IsLiteral
           from phrase in In(field.GetValue(null), 0)
           select (phrase, $"{type.Name}.{field.Name}"),
    ];

    private static IEnumerable<Phrase> In(object? value, int depth) => value switch
    {
        _ when depth > 4 => [],
        null or string => [],
        Phrase phrase => phrase.Id.Length > 0 ? [phrase] : [],
        Message message => message.Phrase is { Id.Length: > 0 } phrase ? [phrase] : [],
        ITuple tuple => Enumerable.Range(0, tuple.Length).SelectMany(i => In(tuple[i], depth + 1)),
        _ when value.GetType().GetProperty("IsDefault") is { } isDefault && isDefault.GetValue(value) is true => [],
        IEnumerable many => many.Cast<object?>().SelectMany(item => In(item, depth + 1)),
        _ when IsOurs(value.GetType()) => Parts(value).SelectMany(part => In(part, depth + 1)),
        _ => [],
    };

    private static bool IsOurs(Type type) =>
        (type.Namespace?.StartsWith("Protocolist", StringComparison.Ordinal) ?? false) || (type.IsGenericType && type.Name.StartsWith("KeyValuePair", StringComparison.Ordinal));

    private static IEnumerable<object?> Parts(object value) =>
        value.GetType().GetFields(BindingFlags.Instance | BindingFlags.Public | BindingFlags.NonPublic).Select(f => f.GetValue(value));
}
