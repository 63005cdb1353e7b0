using System.Collections.Immutable;

namespace Protocolist.Findings;

/// <summary>A sentence, or a part of one, that can be said with this case's own facts: an id, and the English with named places for them. Immutable.</summary>
/// <remarks>
/// A place is written <c>{name}</c>. After a colon stands how its fact is shown, after bars stand words to choose from by its number:
/// <list type="bullet">
/// <item><c>{lies:0.#}</c> a number with so many decimals; <c>{level:0 mm}</c>, <c>{dose:0 mL/kg}</c>, <c>{time:0 days}</c> a quantity in that unit, a range as
/// <c>2 to 9 days</c>; <c>{share:0.#}</c> a quantity in its SI unit, which is not said.</item>
/// <item>Without more, a quantity is rounded to what a person can measure out.</item>
/// <item><c>{about:two g}</c> with two figures: all that an estimate is worth.</item>
/// <item><c>{lies:0 vs least}</c> with as many decimals more as it takes to tell it apart from the other fact;
/// <c>{time:vs limit}</c> the same for a quantity; <c>{room:0.# °C vs least}</c> for one in that unit.</item>
/// <item><c>{left:amount}</c> a volume or a mass as a stock book has it, to four figures.</item>
/// <item><c>{time:clock}</c> a time in days, hours and minutes; <c>{count:times}</c> once, twice, 3 times.</item>
/// <item><c>{water:mix}</c> a volume or a mass as a cylinder and a balance read it when a fluid is mixed.</item>
/// <item><c>{from:time}</c> a time since midnight as a clock shows it: 08:30, and 24:00 for the end of the day.</item>
/// <item><c>{at:minute}</c> and <c>{at:day}</c> a moment without its weekday, to the minute or the day; <c>{at:offset}</c> with its offset
/// from UTC, <c>{at:zoned}</c> with the shortest form of it.</item>
/// <item><c>{steps:and}</c> several joined by commas and a last "and"; <c>{steps:; }</c> joined by those characters;
/// a quotation mark first, <c>{steps:'and}</c>, puts each in quotes.</item>
/// <item><c>{reason:sentence}</c> with a capital and a full stop; <c>{group:a}</c> with the article: <c>an eel</c>.</item>
/// <item><c>{sites|site|sites}</c> the first word for one, the second for any other number.</item>
/// </list>
/// Another language lays its own text over the English by the id (<see cref="Language"/>).
/// </remarks>
public sealed class Phrase
{
    /// <summary>Makes a phrase.</summary>
    /// <param name="id">Its id, kebab-case with dots; the id of the finding where it is a finding's message.</param>
    /// <param name="english">The English, with named places.</param>
    public Phrase(string id, string english)
    {
        ArgumentNullException.ThrowIfNull(id);
        ArgumentNullException.ThrowIfNull(english);
        (Id, English) = (id, english);
    }

    /// <summary>A phrase of which only the words that it came to are at hand, as in a plan that was read.</summary>
    internal static Phrase OfWords(string id, string words) => new(id, words) { IsWords = true };

    /// <summary>Whether the English is words that were filled in already.</summary>
    internal bool IsWords { get; private init; }

    /// <summary>Its id; empty for text that is nobody's to translate.</summary>
    public string Id { get; }

    /// <summary>The English, with named places.</summary>
    public string English { get; }

    /// <summary>Its text taken apart, when it is first said.</summary>
    internal ImmutableArray<Template.Part> Parts => field.IsDefault ? field = Template.PartsOf(English) : field;

    /// <summary>The phrase with this case's facts.</summary>
    /// <param name="arguments">The facts by the names of their places.</param>
    /// <returns>What is to be said; its words are made when somebody reads.</returns>
    public Message With(params ReadOnlySpan<Argument> arguments) => new(this, arguments.ToArray());

    /// <summary>The names of its places, in the order of their first use.</summary>
    /// <returns>Names such as <c>time</c> and <c>least</c>.</returns>
    public IReadOnlyList<string> Places() => Template.PlacesOf(English);

    /// <summary>A phrase without places is said as it is.</summary>
    /// <param name="phrase">The phrase.</param>
    public static implicit operator Message(Phrase phrase) => phrase is null ? default : new(phrase, []);

    /// <summary>The English.</summary>
    /// <returns>The template.</returns>
    public override string ToString() => English;
}
