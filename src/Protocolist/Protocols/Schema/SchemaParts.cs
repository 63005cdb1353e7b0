using System.Text.Json.Nodes;

namespace Protocolist.Protocols.Schema;

/// <summary>The pieces that the schemas are put together from.</summary>
internal static class SchemaParts
{
    public const string Kebab = "^[a-z][a-z0-9]*(-[a-z0-9]+)*$";

    /// <summary>YAML gives an editor numbers and booleans where it can; here every value is text that is read by its own rules.</summary>
    public static JsonObject Text(string description = "") => Described(new() { ["type"] = Array(["string", "number", "boolean"]) }, description);

    public static JsonObject Texts(string description = "") =>
        Described(new() { ["anyOf"] = new JsonArray(Text(), new JsonObject { ["type"] = "array", ["items"] = Text() }) }, description);

    public static JsonObject Words(IEnumerable<string> words, string description = "") => Described(new() { ["enum"] = Array(words) }, description);

    /// <summary>One of the words, or a list of some of them.</summary>
    public static JsonObject SomeOf(IEnumerable<string> words, string description) =>
        Described(new() { ["anyOf"] = new JsonArray(Words(words), new JsonObject { ["type"] = "array", ["items"] = Words(words) }) }, description);

    public static JsonObject Pattern(string pattern, string description = "") => Described(new() { ["type"] = "string", ["pattern"] = pattern }, description);

    public static JsonObject Whole(int least, string description) => Described(
        new() { ["anyOf"] = new JsonArray(new JsonObject { ["type"] = "integer", ["minimum"] = least }, Pattern("^[0-9]+$")) },
        description);

    public static JsonObject Quantity(string description) => Described(
        new()
        {
            ["anyOf"] = new JsonArray(
                new JsonObject { ["type"] = "number" },
                Pattern("^\\s*(at least |at most |up to |over )?[-−]?[.0-9]")),
        },
        description + " A number with its unit, a range 'a to b', 'at least' or 'at most'.");

    public static JsonObject YesNo(string description) => Described(new() { ["enum"] = new JsonArray("yes", "no", "true", "false", true, false) }, description);

    public static JsonObject Format() => Described(new() { ["enum"] = new JsonArray(1, "1") }, "The version of the file format.");

    public static JsonObject Ref(string name) => new() { ["$ref"] = "#/$defs/" + name };

    public static JsonObject Ref(string name, string description) => Described(Ref(name), description);

    public static JsonObject List(JsonObject items, string description) => Described(new() { ["type"] = "array", ["items"] = items }, description);

    /// <summary>A plain text, or a mapping that says more.</summary>
    public static JsonObject TextOr(JsonObject more) => new() { ["anyOf"] = new JsonArray(Text(), more) };

    /// <summary>A mapping whose keys the author names.</summary>
    public static JsonObject Named(JsonObject value, string description, string? names = null)
    {
        var node = new JsonObject { ["type"] = "object", ["additionalProperties"] = value };
        if (names is not null) node["propertyNames"] = new JsonObject { ["pattern"] = names };
        return Described(node, description);
    }

    /// <summary>A mapping of known keys; those that begin with 'x-' are an author's own.</summary>
    public static JsonObject Closed(string description, IEnumerable<(string Key, JsonObject Value)> keys, params string[] required)
    {
        var properties = new JsonObject();
        foreach (var (key, value) in keys) properties[key] = value;
        var node = new JsonObject
        {
            ["type"] = "object",
            ["properties"] = properties,
            ["patternProperties"] = new JsonObject { ["^x-"] = new JsonObject() },
            ["additionalProperties"] = false,
        };
        if (required.Length > 0) node["required"] = Array(required);
        return Described(node, description);
    }

    public static JsonObject Document(string title, JsonObject root, JsonObject? definitions = null)
    {
        var document = new JsonObject { ["$schema"] = "https://json-schema.org/draft/2020-12/schema", ["title"] = title };
        foreach (var (key, value) in root.ToList())
        {
            root.Remove(key);
            document[key] = value;
        }

        if (definitions is not null) document["$defs"] = definitions;
        return document;
    }

    public static JsonArray Array(IEnumerable<string> words) => new([.. words.Select(w => (JsonNode)JsonValue.Create(w)!)]);

    private static JsonObject Described(JsonObject node, string description)
    {
        if (description.Length > 0) node["description"] = description;
        return node;
    }
}
