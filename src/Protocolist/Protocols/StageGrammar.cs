using Protocolist.Quantities;

namespace Protocolist.Protocols;

/// <summary>The one table of stage kinds and their keys. Reading, the JSON Schema and the guide all follow it.</summary>
internal static class StageGrammar
{
    private static readonly Dimension Time = Dimension.OfTime;
    private static readonly Dimension Length = Dimension.OfLength;
    private static readonly Dimension Bare = Dimension.None;

    private static readonly SettingShape Fluid = new("fluid", SettingForm.Fluid, "The fluid, or a choice of fluids.");
    private static readonly SettingShape Last = new("last", SettingForm.Quantity, "How long it lasts: a time, a range, 'at least' or 'at most'.", Time);
    private static readonly SettingShape Ratio = new("ratio", SettingForm.Quantity, "Volume of fluid for each volume of specimen.", Bare);
    private static readonly SettingShape Changes = new("changes", SettingForm.Quantity, "How many times the fluid is replaced while it lasts.", Bare);
    private static readonly SettingShape Watch = new("watch", SettingForm.Watch, "How often to look ('every'), and what each sign calls for ('signs').");
    private static readonly SettingShape How = new("how", SettingForm.Text, "How it is done, in a sentence.");

    /// <summary>Keys that every stage may have.</summary>
    public static readonly SettingShape[] Common =
    [
        new("title", SettingForm.Text, "What the step is called on the plan."),
        new("when", SettingForm.Condition, "Only then is the stage part of the plan."),
        new("hands-on", SettingForm.Quantity, "How long somebody is busy with it.", Time),
        new("within", SettingForm.Quantity, "The longest wait allowed between the end of the step before and this one.", Time),
        new("wait", SettingForm.Quantity, "The shortest wait wanted between the end of the step before and this one.", Time),
        new("since-death", SettingForm.Quantity, "How long after death it begins at the latest; used where the time of death is known.", Time),
        new("since-collection", SettingForm.Quantity, "How long after it was found or taken it begins at the latest; counted from the end of that day.", Time),
        new("source", SettingForm.Source, "Where the stage and its numbers come from: a key under 'sources', 'common practice' or 'from memory'."),
        new("note", SettingForm.Text, "A remark that goes on the plan."),
        new("cautions", SettingForm.Texts, "What can hurt a person or the specimen here."),
        new("look-for", SettingForm.Texts, "What to look at and how it should be."),
        new(
            "covers",
            SettingForm.Words,
            "What it sees to besides, for the checks that ask whether any stage does.",
            default,
            [.. CoverageWords.All.Select(w => w.Word)]),
    ];

    /// <summary>Every kind of stage, in the order in which they usually come.</summary>
    public static readonly StageShape[] Kinds =
    [
        new(StageKind.Sample, "sample", "Tissue, measurements, photographs, before anything is changed.", How, Fluid, Last),
        new(
            StageKind.Hold,
            "hold",
            "Cold storage until work can begin.",
            Last,
            new("temperature", SettingForm.Quantity, "At what temperature.", Dimension.OfTemperature),
            How),
        new(StageKind.Thaw, "thaw", "Softening of a frozen body.", Fluid, Last, How),
        new(StageKind.Rinse, "rinse", "A brief wash.", Fluid, Last, Changes, How),
        new(
            StageKind.Slit,
            "slit",
            "Cuts that let fluid in.",
            new("places", SettingForm.Regions, "The body regions that are cut."),
            new("length", SettingForm.Quantity, "Length of one cut.", Length),
            new("depth", SettingForm.Quantity, "How deep it goes.", Length),
            new("spacing", SettingForm.Quantity, "Distance between cuts.", Length),
            new("count", SettingForm.Quantity, "How many in all.", Bare),
            new(
                "side",
                SettingForm.Word,
                "On which side, so that the other stays whole for display.",
                default,
                "left", "right", "belly", "back", "underside", "any"),
            How),
        new(
            StageKind.Inject,
            "inject",
            "Injection of fluid.",
            Fluid with { Required = true },
            new("dose", SettingForm.Quantity, "Volume in all.", Dimension.OfVolume),
            new("sites", SettingForm.Sites, "For each body region the volume at one site; 'other' is every region not named."),
            new("spacing", SettingForm.Quantity, "Distance between sites, along a long body.", Length),
            How),
        new(StageKind.Pose, "pose", "Setting the posture.", How, Last),
        new(
            StageKind.Immerse,
            "immerse",
            "Lying in fixative.",
            Fluid with { Required = true },
            Ratio with { Required = true },
            Last with { Required = true },
            Changes,
            Watch,
            How),
        new(
            StageKind.Wash,
            "wash",
            "Washing fixative out.",
            Fluid,
            Last with { Required = true },
            Changes,
            Ratio,
            How,
            new("running", SettingForm.Word, "Whether the water runs.", default, "yes", "no")),
        new(
            StageKind.Bath,
            "bath",
            "One strength of alcohol.",
            Fluid with { Required = true },
            Ratio with { Required = true },
            Last with { Required = true },
            Changes,
            Watch,
            How),
        new(
            StageKind.Mount,
            "mount",
            "Tying, weighting or hanging for the final vessel.",
            How,
            new("on", SettingForm.Word, "What holds it.", default, Support.Words)),
        new(
            StageKind.House,
            "house",
            "Into the final vessel.",
            Fluid with { Required = true },
            Ratio,
            new("below-brim", SettingForm.Quantity, "How far below the brim the fluid stands.", Length),
            new("over-specimen", SettingForm.Quantity, "How much fluid stands over the specimen.", Length),
            How),
        new(
            StageKind.Seal,
            "seal",
            "Closing the final vessel.",
            new("closure", SettingForm.Word, "What closes it.", default, Sealing.Words),
            new("renew", SettingForm.Quantity, "When the closure is renewed.", Time),
            How),
        new(
            StageKind.Label,
            "label",
            "Labels inside and outside.",
            new("fields", SettingForm.Texts, "What the label says."),
            new(
                "written-with",
                SettingForm.Word,
                "What it is written with.",
                default,
                LabelMedium.Words),
            How),
        new(
            StageKind.Inspect,
            "inspect",
            "Looking whether all is well.",
            new("after", SettingForm.Quantity, "How long after sealing.", Time),
            new("every", SettingForm.Quantity, "Again and again at this rhythm.", Time),
            How),
        new(
            StageKind.TopUp,
            "top-up",
            "Bringing a fluid back to its level or strength.",
            Fluid,
            new("every", SettingForm.Quantity, "At this rhythm.", Time),
            How),
        new(
            StageKind.Discard,
            "discard",
            "Seeing to spent fluid.",
            new("of", SettingForm.Text, "The id of the stage whose fluid it is."),
            new("to", SettingForm.Word, "Where it goes.", default, SpentTo.Words),
            How),
        new(StageKind.Task, "task", "Anything else.", How, Last),
    ];

    public static StageShape? Find(string word) => Array.Find(Kinds, k => k.Word == word);

    public static StageShape Of(StageKind kind) => Array.Find(Kinds, k => k.Kind == kind)!;
}
