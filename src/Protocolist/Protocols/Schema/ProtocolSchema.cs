using System.Text.Json.Nodes;
using Protocolist.Findings;
using Protocolist.Reading;
using Protocolist.Specimens;
using static Protocolist.Protocols.Schema.SchemaParts;

namespace Protocolist.Protocols.Schema;

/// <summary>The schema of protocol files, from the tables that the reader itself follows.</summary>
internal static class ProtocolSchema
{
    /// <summary>Keys that only bind the stage into its protocol.</summary>
    private static readonly (string Key, string Summary)[] Binding =
    [
        ("id", "Its name within the protocol; the kind where it has none."),
        ("before", "In a protocol that extends another: it goes before the stage of this id."),
        ("after", "In a protocol that extends another: it goes after the stage of this id."),
    ];

    public static JsonObject Build(Kinds kinds)
    {
        var root = Closed("How one class of specimens is preserved.", Keys(kinds), "format", "protocol", "revision");

        // What a protocol inherits it need not say again.
        root["if"] = new JsonObject { ["required"] = Array(["extends"]) };
        root["else"] = new JsonObject
        {
            ["required"] = Array(["title"]),
            ["properties"] = new JsonObject
            {
                ["for"] = new JsonObject { ["required"] = Array(["group"]) },
                ["stages"] = new JsonObject
                {
                    ["items"] = new JsonObject { ["allOf"] = new JsonArray([.. StageGrammar.Kinds.Where(k => k.Settings.Any(s => s.Required)).Select(Needs)]) },
                },
            },
        };
        return Document("Protocolist: protocol", root, Definitions(kinds));
    }

    private static IEnumerable<(string Key, JsonObject Value)> Keys(Kinds kinds) =>
    [
        ("format", Format()),
        ("protocol", Pattern(Kebab, "Its id on the shelf: lower-case letters and digits, parts joined by '-'.")),
        ("revision", Whole(1, "The authors' count of its revisions, printed on every plan.")),
        ("title", Text("What a person calls it.")),
        ("summary", Text("A sentence or two on what it is for.")),
        ("notes", Texts("For authors; not printed.")),
        ("extends", Pattern(Kebab, "The id of the protocol whose values, choices and stages it takes over.")),
        ("for", Ref("class")),
        ("sources", Named(Text(), "Key → citation.")),
        ("cautions", Texts("What can hurt a person or the specimen throughout.")),
        ("choices", Named(Ref("options"), "What the person may decide; the first option is the default.", Kebab)),
        ("values", Named(Ref("value"), "Named values; formulas use them by name.", Kebab)),
        ("stages", List(Ref("stage"), "The work, in order.")),
        ("checks", Named(HouseCheck(), "Checks of the house: id → when it speaks and what it says.", Kebab)),
        ("severities", Named(SeverityChange(), "Bundled checks that weigh more or less here, each with its reason.", Kebab)),
        ("examples", List(Ref("example"), "Worked cases that the protocol must reproduce.")),
    ];

    private static JsonObject HouseCheck() => Closed("One check of the house.",
    [
        ("when", Text("A condition over the figures of a plan, such as 'fix.last < 7 d'.")),
        ("severity", Words(EnumWords<Severity>.All, "How much it weighs; 'warning' where not said.")),
        ("message", Text("What is the case.")),
        ("remedy", Text("What to do about it.")),
        ("source", Ref("source")),
    ]);

    private static JsonObject SeverityChange() => Closed("What a bundled check weighs here.",
    [
        ("as", Words(EnumWords<Severity>.All, "The new weight.")),
        ("because", Text("The written reason, which every plan shows.")),
    ]);

    private static JsonObject Definitions(Kinds kinds)
    {
        var definitions = new JsonObject
        {
            ["class"] = Closed("Which specimens it serves.",
            [
                ("group", Words(kinds.Groups.Select(g => g.Id), "The taxon group.")),
                .. ClassReader.Measures.Select(m => (m.Key, Quantity("From its low end up to, and without, its high end."))),
                .. ClassReader.Traits.Select(t => (t.Key, SomeOf(t.Words, "The words that fit."))),
            ]),
            ["options"] = new JsonObject
            {
                ["anyOf"] = new JsonArray(Text(), new JsonObject { ["type"] = "array", ["items"] = Text(), ["minItems"] = 1, ["uniqueItems"] = true }),
            },
            ["source"] = Texts($"A key under 'sources', '{SourceBook.CommonPractice}' or '{SourceBook.FromMemory}'; or several."),
            ["value"] = Value(),
            ["sites"] = Named(Ref("value"), "Body region → volume at one site; 'other' is every region not named."),
            ["watch"] = Closed("How often to look, and what each sign calls for.",
            [
                ("every", Ref("value", "How often.")),
                ("signs", Closed("Sign → remedy.", Sign.All.Select(s => (s.Word, Words(Remedy.All.Select(r => r.Word), s.Meaning.ToString()))))),
            ], "every"),
            ["example"] = Closed("A worked case.",
            [
                ("specimen", Closed("What is measured.", SpecimenSchema.Measured(kinds))),
                ("choose", Named(Text(), "Choice → option.")),
                ("expect", Named(Text(), "A value, 'stage.setting' or a stage ('present', 'absent') → what it must come to.")),
                ("source", Ref("source")),
            ], "specimen"),
            ["stage"] = new JsonObject
            {
                ["type"] = "object",
                ["required"] = Array(["stage"]),
                ["properties"] = new JsonObject { ["stage"] = Words(StageGrammar.Kinds.Select(k => k.Word), "The kind of work.") },
                ["allOf"] = new JsonArray([.. StageGrammar.Kinds.Select(k => new JsonObject { ["if"] = IsOf(k), ["then"] = Ref(k.Word) })]),
            },
        };
        foreach (var kind in StageGrammar.Kinds) definitions[kind.Word] = Stage(kind);
        return definitions;
    }

    private static JsonObject Value() => new()
    {
        ["anyOf"] = new JsonArray(
            Text("A quantity, a word or a formula."),
            Closed("A value with its source.", [("value", Ref("value")), ("source", Ref("source")), ("note", Text())], "value"),
            Closed(
                "A table of bands.",
                [
                    ("by", Text("The quantity it goes by.")),
                    ("bands", Named(Text(), "Lines such as 'up to 20 g', '20 g to 500 g', 'over 500 g'.")),
                    ("source", Ref("source")),
                    ("note", Text()),
                ],
                "by",
                "bands"),
            new JsonObject
            {
                ["type"] = "object",
                ["description"] = "One value for each word of a choice.",
                ["properties"] = new JsonObject
                {
                    ["by"] = Pattern("^(choice|specimen)\\.", "The choice it goes by."),
                    ["source"] = Ref("source"),
                    ["note"] = Text(),
                },
                ["required"] = Array(["by"]),
                ["additionalProperties"] = Ref("value"),
            }),
    };

    private static JsonObject Stage(StageShape kind) => Closed(
        kind.Summary,
        [
            ("stage", new JsonObject { ["const"] = kind.Word }),
            .. Binding.Select(b => (b.Key, Pattern(Kebab, b.Summary))),
            ("drop", YesNo("In a protocol that extends another: leave this stage out.")),
            .. kind.Settings.Concat(StageGrammar.Common).Select(s => (s.Key, Setting(s))),
        ]);

    private static JsonObject Setting(SettingShape setting) => setting.Form switch
    {
        SettingForm.Word => new()
        {
            ["description"] = setting.Summary,
            ["anyOf"] = new JsonArray(Words(setting.Words), YesNoFor(setting), Pattern("^(choice|specimen)\\."), new JsonObject
            {
                ["type"] = "object",
                ["required"] = Array(["by"]),
            }),
        },
        SettingForm.Fluid => Ref("value", setting.Summary + " Such as 'ethanol 70 %vol', 'neutral buffered formalin 10 %', 'tap water'."),
        SettingForm.Quantity => Ref("value", setting.Summary),
        SettingForm.Condition => Text(setting.Summary),
        SettingForm.Text => Text(setting.Summary),
        SettingForm.Words => SomeOf(setting.Words, setting.Summary),
        SettingForm.Sites => Ref("sites", setting.Summary),
        SettingForm.Watch => Ref("watch", setting.Summary),
        SettingForm.Source => Ref("source", setting.Summary),
        _ => Texts(setting.Summary),
    };

    /// <summary>An editor that reads YAML the old way sees a boolean in yes and no.</summary>
    private static JsonObject YesNoFor(SettingShape setting) => setting.Words.Contains("yes") ? YesNo("") : Words(setting.Words);

    private static JsonObject Needs(StageShape kind) =>
        new() { ["if"] = IsOf(kind), ["then"] = new JsonObject { ["required"] = Array(kind.Settings.Where(s => s.Required).Select(s => s.Key)) } };

    private static JsonObject IsOf(StageShape kind) =>
        new() { ["properties"] = new JsonObject { ["stage"] = new JsonObject { ["const"] = kind.Word } }, ["required"] = Array(["stage"]) };
}
