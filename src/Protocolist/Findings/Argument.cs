using System.Collections.Immutable;
using NodaTime;
using Protocolist.Quantities;
using UnitsNet;
using Duration = NodaTime.Duration;

namespace Protocolist.Findings;

/// <summary>What an <see cref="Argument"/> is.</summary>
public enum ArgumentKind
{
    /// <summary>A bare number, or a count of things.</summary>
    Number,

    /// <summary>A quantity or a range of one, in SI units.</summary>
    Quantity,

    /// <summary>A moment on somebody's clocks.</summary>
    Moment,

    /// <summary>A day.</summary>
    Date,

    /// <summary>An amount of money.</summary>
    Money,

    /// <summary>The id of a step, a figure, a stock, a vessel.</summary>
    Id,

    /// <summary>Somebody's own text, said as it stands.</summary>
    Text,

    /// <summary>A part of the sentence that is a message of its own, such as a word of a catalogue.</summary>
    Message,

    /// <summary>Several facts.</summary>
    List,
}

/// <summary>One named fact of a <see cref="Message"/>: a closed union of what can be told. Immutable.</summary>
public readonly struct Argument : IEquatable<Argument>
{
    private readonly object? _value;
    private readonly byte _kind; // fills the word that the seven bytes of a dimension leave open

    private Argument(string name, ArgumentKind kind, object? value, double low = 0, double high = 0, Dimension dimension = default) =>
        (Name, _kind, _value, Low, High, Dimension) = (name, (byte)kind, value, low, high, dimension);

    /// <summary>The name of the place that it fills.</summary>
    public string Name { get; }

    /// <summary>What it is.</summary>
    public ArgumentKind Kind => (ArgumentKind)_kind;

    /// <summary>What a quantity measures.</summary>
    public Dimension Dimension { get; }

    private double Low { get; }

    private double High { get; }

    /// <summary>The number; of a quantity its middle in SI units; 1 for a single thing of any other kind.</summary>
    public double Number => Kind switch
    {
        ArgumentKind.Number => Low,
        ArgumentKind.Quantity => Quantity.Middle,
        ArgumentKind.List => List.Length,
        _ => 1,
    };

    /// <summary>The quantity; a bare number where it is none.</summary>
    public QuantityRange Quantity => new(Low, High, Dimension);

    /// <summary>The moment, where it is one.</summary>
    public OffsetDateTime Moment => _value is OffsetDateTime at ? at : default;

    /// <summary>The day, where it is one.</summary>
    public LocalDate Date => _value is LocalDate date ? date : default;

    /// <summary>The money, where it is some.</summary>
    public Money? Money => _value as Money;

    /// <summary>The id or the text, where it is one; else empty.</summary>
    public string Text => _value as string ?? "";

    /// <summary>The message, where it is one.</summary>
    public Message Message => _value is Message message ? message : default;

    /// <summary>The facts of a list, where it is one.</summary>
    public ImmutableArray<Argument> List => _value is Argument[] list ? System.Runtime.InteropServices.ImmutableCollectionsMarshal.AsImmutableArray(list) : [];

    /// <summary>The id of something in the plan or on the bench.</summary>
    /// <param name="name">The place.</param>
    /// <param name="id">The id.</param>
    /// <returns>The fact.</returns>
    public static Argument Id(string name, string id) => new(name, ArgumentKind.Id, id);

    /// <summary>A moment on the clocks of a zone.</summary>
    /// <param name="name">The place.</param>
    /// <param name="at">The moment.</param>
    /// <param name="zone">The zone.</param>
    /// <returns>The fact.</returns>
    public static Argument At(string name, Instant at, DateTimeZone zone) => new(name, ArgumentKind.Moment, at.InZone(zone).ToOffsetDateTime());

    /// <summary>A quantity of any dimension.</summary>
    /// <param name="name">The place.</param>
    /// <param name="si">The value in SI units.</param>
    /// <param name="dimension">What it measures.</param>
    /// <returns>The fact.</returns>
    public static Argument Of(string name, double si, Dimension dimension) => new(name, ArgumentKind.Quantity, null, si, si, dimension);

    /// <summary>Several ids.</summary>
    /// <param name="name">The place.</param>
    /// <param name="ids">The ids, in order.</param>
    /// <returns>The fact.</returns>
    public static Argument Ids(string name, IEnumerable<string> ids) => new(name, ArgumentKind.List, ids.Select(i => Id("", i)).ToArray());

    /// <summary>Several texts.</summary>
    /// <param name="name">The place.</param>
    /// <param name="texts">The texts, in order.</param>
    /// <returns>The fact.</returns>
    public static Argument Texts(string name, IEnumerable<string> texts) => new(name, ArgumentKind.List, texts.Select(t => (Argument)("", t)).ToArray());

    /// <summary>Several parts of the sentence.</summary>
    /// <param name="name">The place.</param>
    /// <param name="messages">The parts, in order.</param>
    /// <returns>The fact.</returns>
    public static Argument Messages(string name, IEnumerable<Message> messages) =>
        new(name, ArgumentKind.List, messages.Select(m => (Argument)("", m)).ToArray());

    /// <summary>Several facts of any kind.</summary>
    /// <param name="name">The place.</param>
    /// <param name="facts">The facts, in order; their names do not count.</param>
    /// <returns>The fact.</returns>
    public static Argument ListOf(string name, IEnumerable<Argument> facts) => new(name, ArgumentKind.List, facts.Select(f => f.Named("")).ToArray());

    /// <summary>The same fact for another place.</summary>
    /// <param name="name">The place.</param>
    /// <returns>The fact.</returns>
    public Argument Named(string name) => new(name, Kind, _value, Low, High, Dimension);

    /// <summary>A number.</summary><param name="fact">Place and number.</param>
    public static implicit operator Argument((string Name, double Value) fact) => new(fact.Name, ArgumentKind.Number, null, fact.Value, fact.Value);

    /// <summary>A number of things.</summary><param name="fact">Place and number.</param>
    public static implicit operator Argument((string Name, int Value) fact) => new(fact.Name, ArgumentKind.Number, null, fact.Value, fact.Value);

    /// <summary>A number of things.</summary><param name="fact">Place and number.</param>
    public static implicit operator Argument((string Name, long Value) fact) => new(fact.Name, ArgumentKind.Number, null, fact.Value, fact.Value);

    /// <summary>A quantity or a range.</summary><param name="fact">Place and quantity.</param>
    public static implicit operator Argument((string Name, QuantityRange Value) fact) =>
        new(fact.Name, ArgumentKind.Quantity, null, fact.Value.Low, fact.Value.High, fact.Value.Dimension);

    /// <summary>A time.</summary><param name="fact">Place and time.</param>
    public static implicit operator Argument((string Name, Duration Value) fact) => Of(fact.Name, fact.Value.TotalSeconds, Dimension.OfTime);

    /// <summary>A length.</summary><param name="fact">Place and length.</param>
    public static implicit operator Argument((string Name, Length Value) fact) => Of(fact.Name, fact.Value.Meters, Dimension.OfLength);

    /// <summary>A volume.</summary><param name="fact">Place and volume.</param>
    public static implicit operator Argument((string Name, Volume Value) fact) => Of(fact.Name, fact.Value.CubicMeters, Dimension.OfVolume);

    /// <summary>A mass.</summary><param name="fact">Place and mass.</param>
    public static implicit operator Argument((string Name, Mass Value) fact) => Of(fact.Name, fact.Value.Kilograms, Dimension.OfMass);

    /// <summary>A temperature.</summary><param name="fact">Place and temperature.</param>
    public static implicit operator Argument((string Name, Temperature Value) fact) => Of(fact.Name, fact.Value.Kelvins, Dimension.OfTemperature);

    /// <summary>A pressure.</summary><param name="fact">Place and pressure.</param>
    public static implicit operator Argument((string Name, Pressure Value) fact) =>
        Of(fact.Name, fact.Value.Pascals, new Dimension(Mass: 1, Length: -1, Time: -2));

    /// <summary>A moment.</summary><param name="fact">Place and moment.</param>
    public static implicit operator Argument((string Name, OffsetDateTime Value) fact) => new(fact.Name, ArgumentKind.Moment, fact.Value);

    /// <summary>A day.</summary><param name="fact">Place and day.</param>
    public static implicit operator Argument((string Name, LocalDate Value) fact) => new(fact.Name, ArgumentKind.Date, fact.Value);

    /// <summary>Money.</summary><param name="fact">Place and money.</param>
    public static implicit operator Argument((string Name, Money Value) fact) => new(fact.Name, ArgumentKind.Money, fact.Value);

    /// <summary>Somebody's own text.</summary><param name="fact">Place and text.</param>
    public static implicit operator Argument((string Name, string Value) fact) => new(fact.Name, ArgumentKind.Text, fact.Value);

    /// <summary>A part of the sentence.</summary><param name="fact">Place and part.</param>
    public static implicit operator Argument((string Name, Message Value) fact) => new(fact.Name, ArgumentKind.Message, fact.Value);

    /// <summary>A word of a catalogue.</summary><param name="fact">Place and word.</param>
    public static implicit operator Argument((string Name, Phrase Value) fact) => new(fact.Name, ArgumentKind.Message, (Message)fact.Value);

    /// <inheritdoc/>
    public bool Equals(Argument other) =>
        string.Equals(
            Name,
            other.Name,
            StringComparison.Ordinal) && Kind == other.Kind && Low.Equals(other.Low) && High.Equals(other.High) && Dimension == other.Dimension
        && (_value is Argument[] list ? other._value is Argument[] others && list.AsSpan().SequenceEqual(others) : Equals(_value, other._value));

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is Argument other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Name, Kind, Low, High, _value is Argument[] list ? list.Length : _value?.GetHashCode() ?? 0);

    /// <summary>Same name, same fact.</summary><param name="a">One.</param><param name="b">Other.</param><returns>Whether they are equal.</returns>
    public static bool operator ==(Argument a, Argument b) => a.Equals(b);

    /// <summary>Other name or other fact.</summary><param name="a">One.</param><param name="b">Other.</param><returns>Whether they differ.</returns>
    public static bool operator !=(Argument a, Argument b) => !a.Equals(b);

    /// <summary>The fact alone, in English.</summary>
    /// <returns>Text such as <c>24 h</c>.</returns>
    public override string ToString() => Template.Show(this, "", default, Language.English);
}
