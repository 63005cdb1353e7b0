using Protocolist.Findings;

namespace Protocolist.Reading;

/// <summary>What findings about a file call its parts.</summary>
internal static class Named
{
    public static readonly Phrase Protocol = new("named.protocol", "a protocol");
    public static readonly Phrase Stage = new("named.stage", "a stage");
    public static readonly Phrase StageId = new("named.stage-id", "a stage's id");
    public static readonly Phrase ProtocolId = new("named.protocol-id", "a protocol's id");
    public static readonly Phrase CheckId = new("named.check-id", "the id of a check");
    public static readonly Phrase ChoiceName = new("named.choice-name", "the name of a choice");
    public static readonly Phrase ValueName = new("named.value-name", "the name of a value");
    public static readonly Phrase Example = new("named.example", "an example");
    public static readonly Phrase ExamplesSpecimen = new("named.example-specimen", "an example's specimen");
    public static readonly Phrase Specimen = new("named.specimen", "a specimen");
    public static readonly Phrase Bench = new("named.bench", "a bench");
    public static readonly Phrase StockItem = new("named.stock-item", "a stock item");
    public static readonly Phrase Pack = new("named.pack", "a pack");
    public static readonly Phrase Vessel = new("named.vessel", "a vessel");
    public static readonly Phrase Container = new("named.container", "a container");
    public static readonly Phrase Log = new("named.log", "a log");
    public static readonly Phrase Entry = new("named.entry", "an entry");
    public static readonly Phrase Readings = new("named.readings", "the readings");
    public static readonly Phrase Sign = new("named.sign", "a sign");
    public static readonly Phrase Remedy = new("named.remedy", "a remedy");

    private static readonly Phrase OfKey = new("named.key", "'{key}'");
    private static readonly Phrase OfThing = new("named.key-of", "'{key}' of {thing}");
    private static readonly Phrase OfStage = new("named.the-stage", "the stage '{id}'");
    private static readonly Phrase OfCheck = new("named.the-check", "the check '{id}'");
    private static readonly Phrase OfSeverity = new("named.the-severity", "the severity of '{id}'");
    private static readonly Phrase OfValue = new("named.the-value", "the value '{id}'");
    private static readonly Phrase OfSite = new("named.site", "a site in '{region}'");
    private static readonly Phrase OfBands = new("named.bands", "the bands of {thing}");
    private static readonly Phrase OfSigns = new("named.signs", "the signs of {thing}");
    private static readonly Phrase OfWord = new("named.word-for", "a word for '{key}'");

    public static Message Key(string key) => OfKey.With(("key", key));

    /// <summary>A key of a thing that has a name already, or of a stage by its id.</summary>
    public static Message KeyOf(string key, Message thing) => OfThing.With(("key", key), ("thing", thing));

    public static Message TheStage(string id) => OfStage.With(Argument.Id("id", id));

    public static Message TheCheck(string id) => OfCheck.With(Argument.Id("id", id));

    public static Message TheSeverity(string id) => OfSeverity.With(Argument.Id("id", id));

    public static Message TheValue(string name) => OfValue.With(Argument.Id("id", name));

    public static Message Site(string region) => OfSite.With(("region", region));

    public static Message Bands(Message thing) => OfBands.With(("thing", thing));

    public static Message Signs(Message thing) => OfSigns.With(("thing", thing));

    public static Message WordFor(string key) => OfWord.With(("key", key));
}
