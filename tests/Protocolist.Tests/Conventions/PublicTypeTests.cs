using System.Reflection;
using System.Runtime.CompilerServices;
using System.Xml.Linq;
using Protocolist.Sheets;

namespace Protocolist.Tests.Conventions;

/// <summary>What holds of every public type of the library and the sheets.</summary>
public class PublicTypeTests
{
    private const BindingFlags All = BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;

    private static readonly Type[] Public = [.. new[] { typeof(Planner).Assembly, typeof(TextSheet).Assembly }.SelectMany(a => a.GetExportedTypes())];

    [Fact]
    public void Public_properties_are_set_at_birth_or_not_at_all()
    {
        Assert.True(Public.Length > 80);
        Assert.Empty(from type in Public
                     from property in type.GetProperties(All)
                     where property.SetMethod is { IsPublic: true } set && !set.ReturnParameter.GetRequiredCustomModifiers().Contains(typeof(IsExternalInit))
                     select $"{type.Name}.{property.Name}");
    }

    [Fact]
    public void Public_fields_are_constants() =>
        Assert.Empty(from type in Public
                     where !type.IsEnum
                     from field in type.GetFields(All)
                     where field.IsPublic && !field.IsLiteral && !field.IsInitOnly
                     select $"{type.Name}.{field.Name}");

    [Fact]
    public void Nothing_static_can_be_changed() =>
        Assert.Empty(from type in typeof(Planner).Assembly.GetTypes()
                     where !type.IsEnum && !IsMadeByTheCompiler(type)
                     from field in type.GetFields(All)
                     where field is { IsStatic: true, IsLiteral: false, IsInitOnly: false } && !IsMadeByTheCompiler(field)
                     select $"{type.FullName}.{field.Name}");

    /// <summary>A list that a caller could change would change the plan under somebody's hands.</summary>
    [Fact]
    public void Public_properties_hand_out_no_list_that_can_be_changed() =>
        Assert.Empty(from type in Public
                     from property in type.GetProperties(All)
                     where property.GetMethod is { IsPublic: true } && (property.PropertyType.IsArray || (property.PropertyType.IsGenericType && property.PropertyType.GetGenericTypeDefinition() is var open && (open == typeof(List<>) || open == typeof(Dictionary<,>) || open == typeof(HashSet<>))))
                     select $"{type.Name}.{property.Name}");

    [Fact]
    public void Public_classes_are_sealed_static_or_a_closed_union() =>
        Assert.Empty(Public.Where(t => t is { IsClass: true, IsSealed: false } && !t.GetConstructors(All).All(c => c.IsPrivate || c.IsFamilyAndAssembly || c.IsAssembly || c.IsFamily)).Select(t => t.FullName));

    /// <summary>What ships tells of what a user sees, and of all of it; the compiler holds that it is all there.</summary>
    [Fact]
    public void Documentation_tells_of_public_types_only()
    {
        var documented = XDocument.Load(Path.ChangeExtension(typeof(Planner).Assembly.Location, ".xml")).Descendants("member")
            .Select(m => m.Attribute("name")!.Value).Where(n => n.StartsWith("T:", StringComparison.Ordinal)).Select(n => n[2..]);

        Assert.Equal(
            typeof(Planner).Assembly.GetExportedTypes().Select(t => t.FullName!.Replace('+', '.')).Order(StringComparer.Ordinal), documented.Order(StringComparer.Ordinal));
    }

    private static bool IsMadeByTheCompiler(MemberInfo member) =>
        member.GetCustomAttribute<CompilerGeneratedAttribute>() is not null || member.Name.Contains('<', StringComparison.Ordinal)
        || member.GetCustomAttribute<System.CodeDom.Compiler.GeneratedCodeAttribute>() is not null
        || (member.DeclaringType is { } outer && IsMadeByTheCompiler(outer));
}
