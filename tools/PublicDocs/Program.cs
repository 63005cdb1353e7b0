// Leaves in a documentation file only what a user of the assembly can see: PublicDocs ASSEMBLY DOCUMENTATION
using System.Reflection;
using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;
using System.Xml.Linq;

using var assembly = new PEReader(File.OpenRead(args[0]));
var metadata = assembly.GetMetadataReader();
var seen = metadata.TypeDefinitions.Select(metadata.GetTypeDefinition).Where(IsSeen).SelectMany(Names).ToHashSet(StringComparer.Ordinal);
var document = XDocument.Load(args[1], LoadOptions.PreserveWhitespace);
var members = document.Descendants("member").ToList();
foreach (var member in members.Where(m => !seen.Contains(m.Attribute("name")!.Value.Split('(')[0].Split('~')[0])))
{
    if (member.NextNode is XText blank) blank.Remove();
    member.Remove();
}

document.Save(args[1], SaveOptions.DisableFormatting);
Console.WriteLine($"{document.Descendants("member").Count()} of {members.Count} documented members are public");

bool IsSeen(TypeDefinition type) =>
    (type.Attributes & TypeAttributes.VisibilityMask) switch
    {
        TypeAttributes.Public => true,
        TypeAttributes.NestedPublic or TypeAttributes.NestedFamily => IsSeen(metadata.GetTypeDefinition(type.GetDeclaringType())),
        _ => false,
    };

string NameOf(TypeDefinition type) => type.GetDeclaringType() is { IsNil: false } outer
    ? $"{NameOf(metadata.GetTypeDefinition(outer))}.{metadata.GetString(type.Name)}"
    : $"{metadata.GetString(type.Namespace)}.{metadata.GetString(type.Name)}";

// Overloads share a name here: one that is seen keeps the documentation of all.
IEnumerable<string> Names(TypeDefinition type)
{
    var name = NameOf(type);
    yield return $"T:{name}";
    foreach (var field in type.GetFields().Select(metadata.GetFieldDefinition))
        if ((field.Attributes & FieldAttributes.FieldAccessMask) is FieldAttributes.Public or FieldAttributes.Family)
            yield return $"F:{name}.{metadata.GetString(field.Name)}";
    foreach (var method in type.GetMethods().Select(metadata.GetMethodDefinition).Where(IsMethodSeen))
        yield return $"M:{name}.{metadata.GetString(method.Name).Replace('.', '#')}{(method.GetGenericParameters().Count is > 0 and var count ? $"``{count}" : "")}";
    foreach (var property in type.GetProperties().Select(metadata.GetPropertyDefinition))
        if (property.GetAccessors() is var accessors && (IsAccessorSeen(accessors.Getter) || IsAccessorSeen(accessors.Setter)))
            yield return $"P:{name}.{metadata.GetString(property.Name)}";
}

bool IsAccessorSeen(MethodDefinitionHandle accessor) => !accessor.IsNil && IsMethodSeen(metadata.GetMethodDefinition(accessor));

bool IsMethodSeen(MethodDefinition method) =>
    (method.Attributes & MethodAttributes.MemberAccessMask) is MethodAttributes.Public or MethodAttributes.Family;
