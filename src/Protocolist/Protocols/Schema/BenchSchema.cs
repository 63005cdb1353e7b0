using System.Text.Json.Nodes;
using Protocolist.Fluids;
using Protocolist.Reading;
using Protocolist.Vessels;
using static Protocolist.Protocols.Schema.SchemaParts;

namespace Protocolist.Protocols.Schema;

/// <summary>The schema of bench files. A test holds its keys against those that the reader asks for.</summary>
internal static class BenchSchema
{
    public static JsonObject Build() => Document("Protocolist: bench", Closed("A workplace with what stands on its shelves.",
    [
        ("format", Format()),
        ("bench", Text("Its id.")),
        ("name", Text("What a person calls it.")),
        ("zone", Text("The id of an IANA time zone, such as Atlantic/Azores.")),
        ("hours", Named(Texts(), "Days such as 'mon-fri' → spans such as '08:30 to 18:00'.")),
        ("closed", Texts("Days, or runs of days: 2027-03-29 to 2027-04-02.")),
        ("holidays", Texts("Days of every year: 12-25.")),
        ("also-open", Named(Texts(), "Date → spans of hours.")),
        ("temperatures", Closed(
            "What the rooms have.",
            [
                ("room", Quantity("Where bodies are fixed.")),
                ("cold", Quantity("The cold store.")),
                ("coldest", Quantity("The coldest day of the store.")),
                ("hottest", Quantity("The hottest day of the store.")),
            ])),
        ("people", Whole(1, "How many can work at once.")),
        ("shelf-bears", Quantity("What one place on the store's shelf bears: 60 kg.")),
        ("currency", Text("ISO 4217 code.")),
        ("exchange-rates", Named(Text(), "ISO 4217 code → what one of it is worth in 'currency'.")),
        ("labour", Text("Price of work: 18 EUR/h.")),
        ("disposal", Closed("Price of disposal, by class of waste.",
        [
            ("formaldehyde", Text("Such as 3.20 EUR/L; with alcohol in it too.")),
            ("alcohol", Text("Such as 1.10 EUR/L, flammable or dilute.")),
            ("formaldehyde-and-alcohol", Text("By volume, where it differs.")),
            ("flammable-alcohol", Text("By volume, where it differs.")),
            ("dilute-alcohol", Text("By volume, where it differs.")),
            ("rinse-water", Text("By volume.")),
            ("organic-in-water", Text("By volume.")),
            ("contaminated-solids", Text("By the piece: 0.05 EUR/piece.")),
            ("sharps", Text("By the piece: 0.20 EUR/piece.")),
            ("tissue", Text("By the piece.")),
        ])),
        ("waste", Closed("Where spent things go.",
        [
            ("containers", Named(
                TextOr(Closed(
                    "A container with its price.",
                    [
                        ("name", Text("The drum or bin.")),
                        ("holds", Quantity("What is in it when full: a volume, or a number of pieces.")),
                        ("price", Text("What it costs to have it taken away full: 60.00 EUR.")),
                    ],
                    "name")),
                "Class of waste → the drum or bin.")),
            ("drains", Named(Text(), "Class of waste → the local permission by which it may go to the drain.")),
            ("keep-fixative", Closed(
                "Spent fixative kept for another specimen.",
                [("in", Text("The vessel it is kept in.")), ("uses", Whole(1, "How often it may serve."))])),
        ])),
        ("air", Closed(
            "The work room's air.",
            [("room", Quantity("Its volume.")), ("changes-per-hour", Quantity("Air changes.")), ("hood", YesNo("Whether there is a fume hood."))])),
        ("stock", List(Stock(), "What is on the shelf or can be bought.")),
        ("vessels", List(Vessel(), "Jars, tubs and tanks.")),
    ], "format", "bench", "zone"));

    private static JsonObject Stock() => Closed("One item: a fluid, a salt, a consumable or a tool.",
    [
        ("fluid", Text("A fluid's name, such as 'ethanol 96 %vol'.")),
        ("salt", Text("A salt's name, such as 'borax'.")),
        ("consumable", Text("Something that is used up.")),
        ("tool", Text("Something that is used again.")),
        ("id", Text("Its name on this bench.")),
        ("strength", Text("Its strength, where the name does not say.")),
        ("hydrate", Text("Of a salt: which hydrate.")),
        ("buffering", Text("What buffers it.")),
        ("on-hand", Quantity("How much there is.")),
        ("by-the-pair", YesNo("Of a thing: whether one of it is a pair.")),
        ("opened", Text("Date: 2027-01-12.")),
        ("expires", Text("Date.")),
        ("uses", Whole(0, "How often it was used.")),
        ("uses-allowed", Whole(0, "How often it may be.")),
        ("ph", Quantity("Its pH, where measured.")),
        ("clear", YesNo("Whether it is clear.")),
        ("packs", List(
            Closed(
                "A pack that can be bought.",
                [("size", Quantity("What it holds.")), ("price", Text("Such as 31.00 EUR.")), ("lead", Quantity("From order to delivery."))],
                "size"),
            "Packs that can be bought.")),
        ("worth", Text("Price by amount, of what is on hand.")),
        ("lasts-uses", Whole(1, "Of a tool: how many uses it lasts.")),
        ("used-so-far", Whole(0, "Of a tool: how many uses it has seen.")),
    ]);

    private static JsonObject Vessel() => Closed("A vessel.",
    [
        ("id", Text("Its name on this bench.")),
        ("name", Text("What a person calls it.")),
        ("inside", Closed(
            "Inside measures: diameter and height, or length, width and height.",
            [("diameter", Quantity("")), ("length", Quantity("")), ("width", Quantity("")), ("height", Quantity(""))],
            "height")),
        ("wall", Words(EnumWords<VesselMaterial>.All, "What its wall is made of.")),
        ("count", Whole(0, "How many there are.")),
        ("capacity", Quantity("What it holds, where that is less than its inside.")),
        ("closure", Words(EnumWords<Closure>.All, "How it closes.")),
        ("lid", Words(EnumWords<VesselMaterial>.All, "What its lid is made of.")),
        ("seal", Words(EnumWords<VesselMaterial>.All, "What its seal is made of.")),
        ("empty-mass", Quantity("What it weighs empty.")),
        ("pane", Quantity("Of a glass tank: how thick its walls are.")),
        ("price", Text("What one more of it costs, such as 6.50 EUR; with 'count: 0' it is of the catalogue.")),
        ("lead", Quantity("From order to delivery.")),
        ("loses-a-year", Quantity("What one of it, filled and closed, loses in a year, as measured here.")),
        ("in-use", List(
            Closed("Some of them that hold something.", [("count", Whole(1, "How many.")), ("until", Text("Date."))]),
            "How many are not free, and until when.")),
    ], "id", "inside");
}
