using System.Collections;
using System.Collections.Immutable;
using System.Reflection;
using System.Runtime.CompilerServices;
using NodaTime;
using Protocolist.Findings;
using Protocolist.Plans;
using Protocolist.Quantities;
using Protocolist.Sheets;
using Protocolist.Specimens;
using Protocolist.Tests.Planning.Revising;

namespace Protocolist.Tests.Conventions;

/// <summary>
/// Whatever a program gives to a public member in place of one sound argument (nothing, an empty or foreign text, a number or a day beyond all, a word of
/// no list, an array that was never made, a record with one such part), it gets a result, findings, or an <see cref="ArgumentException"/>.
/// </summary>
public sealed class CallersBugTests
{
    private const BindingFlags Public = BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;

    /// <summary>Sound values of each type, found in what a plan is made from and what it is made to.</summary>
    private static readonly Dictionary<Type, List<object>> Sound = Collected();

    public static TheoryData<string> Types => [.. PublicTypes().Select(t => t.FullName!)];

    [Theory]
    [MemberData(nameof(Types))]
    public void A_bug_of_a_caller_ends_in_a_result_or_an_argument_exception(string name)
    {
        var type = PublicTypes().Single(t => t.FullName == name);
        var crashes = Members(type).SelectMany(m => Tries(m).Select(t => Crash(m, t))).OfType<string>().Distinct().ToList();
        Assert.True(crashes.Count == 0, string.Join('\n', crashes));
    }

    [Fact]
    public void There_is_a_sound_value_of_every_type_that_has_members() =>
        Assert.Equal([], PublicTypes().Where(t => t is { IsAbstract: false } && Members(t).Any(m => m is { IsStatic: false, IsConstructor: false }) && SoundOf(t) is null).Select(t => t.Name));

    private static IEnumerable<Type> PublicTypes() =>
        new[] { typeof(Plan).Assembly, typeof(TextSheet).Assembly }
            .SelectMany(a => a.GetExportedTypes()).Where(t => !t.IsEnum && !t.IsInterface && !t.ContainsGenericParameters && !typeof(Delegate).IsAssignableFrom(t));

    private static IEnumerable<MethodBase> Members(Type type) =>
        type.GetMethods(Public).Where(m => !m.IsGenericMethod && !m.IsSpecialName && m.Name is not ("Equals" or "GetHashCode" or "PrintMembers" or "<Clone>$" or "Deconstruct"))
            .Concat<MethodBase>(type.IsAbstract ? [] : type.GetConstructors().Where(c => c.GetParameters() is not [{ ParameterType: var only }] || only != type));

    /// <summary>The owner and the arguments of each try: one of them is unsound.</summary>
    private static IEnumerable<(object? Owner, object?[] Arguments)> Tries(MethodBase member)
    {
        var parameters = member.GetParameters();
        if (parameters.Any(p => p.ParameterType.IsByRef || p.ParameterType.IsByRefLike)) yield break;
        var isStatic = member.IsStatic || member.IsConstructor;
        var sound = parameters.Select(SoundOf).ToArray();
        var owner = isStatic ? null : SoundOf(member.DeclaringType!);
        if (!isStatic && owner is null) yield break;
        for (var at = 0; at < parameters.Length; at++)
        {
            foreach (var unsound in Unsound(parameters[at].ParameterType))
                yield return (owner, [.. sound.Select((s, i) => i == at ? unsound : s)]);
        }

        // What a record says of itself by itself is for debugging.
        if (isStatic || member.IsDefined(typeof(CompilerGeneratedAttribute))) yield break;
        foreach (var unsound in Variants(owner!)) yield return (unsound, sound);
    }

    private static string? Crash(MethodBase member, (object? Owner, object?[] Arguments) attempt)
    {
        try
        {
            var result = member is ConstructorInfo make ? make.Invoke(attempt.Arguments) : member.Invoke(attempt.Owner, attempt.Arguments);
            if (result is IEnumerable many) _ = many.Cast<object?>().Take(100).Count();
            return null;
        }
        catch (TargetInvocationException fault)
        {
            return Told(fault.InnerException!);
        }
        catch (Exception fault) when (fault is not TargetInvocationException)
        {
            return Told(fault);
        }

        string? Told(Exception fault) => fault is ArgumentException
            ? null
            : $"{member.DeclaringType!.Name}.{member.Name}({string.Join(", ", attempt.Arguments.Select(Shown))}): {fault.GetType().Name} {fault.Message} "
              + fault.StackTrace?.Split('\n').FirstOrDefault(l => l.Contains("Protocolist", StringComparison.Ordinal))?.Trim();
    }

    private static string Shown(object? value) => value switch
    {
        null => "null",
        string text => $"\"{text[..Math.Min(12, text.Length)]}\"",
        IEnumerable => value.GetType().Name,
        _ when value.GetType().Assembly == typeof(Plan).Assembly => value.GetType().Name,
        _ => value.ToString() ?? "",
    };

    private static object? SoundOf(ParameterInfo parameter) =>
        parameter.Name == "currency" ? "EUR" : parameter.HasDefaultValue ? parameter.DefaultValue : SoundOf(parameter.ParameterType);

    private static object? SoundOf(Type type)
    {
        if (Sound.TryGetValue(type, out var known)) return known[0];
        if (Nullable.GetUnderlyingType(type) is { } inner) return SoundOf(inner);
        if (Item(type) is { } item && SoundOf(item) is { } one) return ListOf(type, item, one);
        if (Sound.Keys.FirstOrDefault(type.IsAssignableFrom) is { } below) return Sound[below][0];
        if (type.Assembly == typeof(Plan).Assembly && Made(type) is { } made) return made;
        return type.IsEnum ? Enum.GetValues(type).GetValue(0) : type.IsValueType ? Activator.CreateInstance(type) : null;
    }

    /// <summary>By its constructor, or by a method of its own, of sound values.</summary>
    private static object? Made(Type type)
    {
        var makers = type.GetMethods(Public).Where(m => m.IsStatic && !m.IsSpecialName && m.ReturnType == type).Concat<MethodBase>(type.IsAbstract ? [] : type.GetConstructors());
        foreach (var make in makers.Where(m => m.GetParameters().All(p => p.ParameterType != type)))
        {
            try
            {
                object?[] arguments = [.. make.GetParameters().Select(SoundOf)];
                if ((make is ConstructorInfo constructor ? constructor.Invoke(arguments) : make.Invoke(null, arguments)) is { } made) return made;
            }
            catch (TargetInvocationException fault) when (fault.InnerException is ArgumentException)
            {
                // The next one.
            }
        }

        return null;
    }

    private static IEnumerable<object?> Unsound(Type type)
    {
        if (!type.IsValueType || Nullable.GetUnderlyingType(type) is not null) yield return null;
        type = Nullable.GetUnderlyingType(type) ?? type;
        foreach (var value in Extremes(type)) yield return value;
        if (Item(type) is { } item)
        {
            if (type.IsValueType) yield return Activator.CreateInstance(type);
            foreach (var inner in Unsound(item)) yield return ListOf(type, item, inner);
        }

        if (SoundOf(type) is { } sound)
        {
            foreach (var variant in Variants(sound)) yield return variant;
        }
    }

    private static IEnumerable<object?> Extremes(Type type) =>
        type == typeof(string) ? ["", " ", "\u202e", "{", new string('x', 20_000)]
        : type == typeof(double) ? [double.NaN, double.PositiveInfinity, double.NegativeInfinity, -1.0, 0.0, double.MaxValue]
        : type == typeof(int) ? [int.MinValue, -1, 0, int.MaxValue]
        : type == typeof(long) ? [long.MinValue, -1L, 0L, long.MaxValue]
        : type == typeof(decimal) ? [decimal.MinValue, -1m, 0m, decimal.MaxValue]
        : type == typeof(LocalDate) ? [LocalDate.MinIsoValue, LocalDate.MaxIsoValue]
        : type == typeof(LocalDateTime) ? [LocalDateTime.MinIsoValue, LocalDateTime.MaxIsoValue]
        : type == typeof(Instant) ? [Instant.MinValue, Instant.MaxValue]
        : type == typeof(DateInterval) ? [new DateInterval(LocalDate.MinIsoValue, LocalDate.MaxIsoValue)]
        : type.IsEnum ? [Enum.ToObject(type, -1), Enum.ToObject(type, 99)]
        : typeof(UnitsNet.IQuantity).IsAssignableFrom(type) ? [.. new[] { -1e300, -1, 0, 1e300 }.Select(v => Quantity(type, v))]
        : [];

    /// <summary>A record with each of its parts unsound in turn.</summary>
    private static IEnumerable<object> Variants(object sound)
    {
        var type = sound.GetType();
        if (type.GetMethod("<Clone>$") is not { } clone) yield break;
        foreach (var property in type.GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(p => p.SetMethod is { IsPublic: true } && p.GetIndexParameters().Length == 0))
        {
            IEnumerable<object?> values = property.PropertyType switch
            {
                var t when Nullable.GetUnderlyingType(t) is { } inner => Extremes(inner),
                { IsValueType: true } t when Item(t) is { } item => [Activator.CreateInstance(t), .. item.IsValueType ? [] : (object?[])[ListOf(t, item, null)]],
                { IsValueType: true } t => Extremes(t),
                var t => [null, .. Extremes(t)],
            };
            foreach (var value in values)
            {
                var variant = clone.Invoke(sound, null)!;
                try
                {
                    property.SetValue(variant, value);
                }
                catch (TargetInvocationException fault) when (fault.InnerException is ArgumentException)
                {
                    continue;
                }

                yield return variant;
            }
        }
    }

    private static object? Quantity(Type type, double value)
    {
        var sound = (UnitsNet.IQuantity)Activator.CreateInstance(type)!;
        return Activator.CreateInstance(type, value, sound.Unit);
    }

    private static Type? Item(Type type) =>
        type == typeof(string) || !typeof(IEnumerable).IsAssignableFrom(type) ? null
        : type.IsArray ? type.GetElementType()
        : type is { IsGenericType: true } && type.GetGenericArguments() is [var item] ? item
        : null;

    private static object? ListOf(Type type, Type item, object? value)
    {
        var array = Array.CreateInstance(item, 1);
        array.SetValue(value, 0);
        if (type.IsInstanceOfType(array)) return array;
        return type.IsGenericType && type.GetGenericTypeDefinition() == typeof(ImmutableArray<>)
            ? typeof(ImmutableArray).GetMethods().Single(m => m.Name == "ToImmutableArray" && m.GetParameters() is [{ ParameterType: { IsGenericType: true } p }] && p.GetGenericTypeDefinition() == typeof(IEnumerable<>)).MakeGenericMethod(item).Invoke(null, [array])
            : null;
    }

    /// <summary>An amount of one kind has no volume of another: that it says so is documented.</summary>
    private static object? PartOf(object value, PropertyInfo property)
    {
        try
        {
            return property.GetValue(value);
        }
        catch (TargetInvocationException fault) when (fault.InnerException is InvalidOperationException)
        {
            return null;
        }
    }

    private static Dictionary<Type, List<object>> Collected()
    {
        var bench = SkerryPoint.Bench;
        var planner = new Planner(Shelf.Bundled());
        var plan = SkerryPoint.Plan(SkerryPoint.Otter);
        var prepared = planner.Prepare(bench);
        var request = new PlanRequest(plan.Specimen, prepared, new(2027, 3, 1, 9, 0));
        var found = new Dictionary<Type, List<object>>
        {
            [typeof(string)] = ["x"],
            [typeof(double)] = [1.0],
            [typeof(int)] = [1],
            [typeof(long)] = [1L],
            [typeof(decimal)] = [1m],
            [typeof(bool)] = [true],
            [typeof(LocalDate)] = [new LocalDate(2027, 3, 1)],
            [typeof(LocalDateTime)] = [new LocalDateTime(2027, 3, 1, 9, 0)],
            [typeof(DateInterval)] = [new DateInterval(new(2027, 3, 1), new(2027, 4, 1))],
            [typeof(DateTimeZone)] = [DateTimeZone.Utc],
            [typeof(Language)] = [Language.English],
            [typeof(Stream)] = [new MemoryStream()],
        };
        object?[] roots =
        [
            .. from type in PublicTypes()
               from property in type.GetProperties(BindingFlags.Public | BindingFlags.Static)
               select property.GetValue(null),
            planner, planner.Plan(request), planner.Compare(request), prepared, request, SkerryPoint.Revise(plan, ""), Watched.LogOf(Watched.InFix), Kinds.Bundled.Find("bat"), Price.Read("3 EUR/L").Value,
            Batch.Open(new StringReader("id,group,mass\n1,bat,9 g\n"), "table.csv", new(planner, prepared, request.Start)).Value,
        ];
        var (seen, left) = (new HashSet<object>(ReferenceEqualityComparer.Instance), new Queue<(object, int)>(roots.OfType<object>().Select(r => (r, 0))));
        while (left.TryDequeue(out var next))
        {
            var (value, depth) = next;
            var type = value.GetType();
            if (depth > 6 || (!type.IsValueType && !seen.Add(value))) continue;
            if (value is IEnumerable many and not string)
            {
                foreach (var item in many.Cast<object?>().Take(3).OfType<object>()) left.Enqueue((item, depth + 1));
                continue;
            }

            if (!found.TryAdd(type, [value])) continue;
            if (type.Namespace?.StartsWith("Protocolist", StringComparison.Ordinal) != true) continue;
            foreach (var property in type.GetProperties(BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static).Where(p => p.GetIndexParameters().Length == 0))
            {
                if (PartOf(value, property) is { } part) left.Enqueue((part, depth + 1));
            }
        }

        return found;
    }
}
