using System.Collections.Immutable;
using Protocolist.Findings;

namespace Protocolist.Planning.Deciding;

/// <summary>Why one way stands before or behind another, in a few words.</summary>
internal static class HarmWords
{
    private static readonly Phrase Same = new("harm.same", "which comes to the same");

    private static readonly ImmutableArray<(Harm Harm, Phrase Less, Phrase More, Phrase Gain)> All =
    [
        (Harm.Start, new("harm.start", "with which work must not be begun"),
            new("harm.start.more", "work must not be begun with it"), new("harm.start.gain", "it may be begun")),
        (Harm.People, new("harm.people", "which endangers people more"),
            new("harm.people.more", "it endangers people more"), new("harm.people.gain", "less danger to people")),
        (Harm.Law, new("harm.law", "which the law forbids sooner"),
            new("harm.law.more", "the law forbids it sooner"), new("harm.law.gain", "within the law")),
        (Harm.Waiting, new("harm.waiting", "with which the body waits longer than it bears"),
            new("harm.waiting.more", "the body waits longer than it bears"), new("harm.waiting.gain", "sooner in fixative than the body bears")),
        (Harm.Ruin, new("harm.ruin", "which keeps the specimen less well"),
            new("harm.ruin.more", "it keeps the specimen less well"), new("harm.ruin.gain", "it keeps better")),
        (Harm.Use, new("harm.use", "which serves its use less well"),
            new("harm.use.more", "it serves its use less well"), new("harm.use.gain", "it serves its use better")),
        (Harm.Option, new("harm.option", "which the protocol lists later"),
            new("harm.option.more", "the protocol lists it later"), new("harm.option.gain", "listed earlier")),
        (Harm.Minute, new("harm.minute", "with which fixing begins later"),
            new("harm.minute.more", "fixing begins later"), new("harm.minute.gain", "fixing begins sooner")),
        (Harm.Hands, new("harm.hands", "which asks more of the people"),
            new("harm.hands.more", "it asks more of the people"), new("harm.hands.gain", "less asked of the people")),
        (Harm.Work, new("harm.work", "which is more work"),
            new("harm.work.more", "it is more work"), new("harm.work.gain", "less work")),
        (Harm.Waste, new("harm.waste", "which takes fluid for nothing"),
            new("harm.waste.more", "it takes fluid for nothing"), new("harm.waste.gain", "no fluid for nothing")),
        (Harm.Money, new("harm.money", "which costs more"),
            new("harm.money.more", "it costs more"), new("harm.money.gain", "less money")),
        (Harm.Fluid, new("harm.fluid", "which takes more fluid"),
            new("harm.fluid.more", "it takes more fluid"), new("harm.fluid.gain", "less fluid")),
        (Harm.Shelf, new("harm.shelf", "which puts more hazardous fluid on the shelf"),
            new("harm.shelf.more", "more hazardous fluid stands on the shelf"), new("harm.shelf.gain", "less hazardous fluid on the shelf")),
    ];

    /// <summary>Where a way gains nothing over another.</summary>
    public static Phrase NoGain { get; } = new("harm.no-gain", "nothing that is weighed here{but}");

    /// <summary>That a way does more harm of a kind.</summary>
    public static Message More(Harm harm) => All[(int)harm].More;

    /// <summary>What is gained by less harm of a kind.</summary>
    public static Message Gain(Harm harm) => All[(int)harm].Gain;

    /// <summary>The first harm in which two ways differ, told of the one that does more of it.</summary>
    /// <param name="one">The way that is spoken of where it does more; else the other is.</param>
    /// <param name="other">The other.</param>
    public static Message Of(HarmDone one, HarmDone other)
    {
        if (one.Differs(other) is not { } harm) return Same;
        return one[harm] > other[harm] ? All[(int)harm].More : All[(int)harm].Less;
    }
}
