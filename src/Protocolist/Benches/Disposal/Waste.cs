using System.Globalization;
using Protocolist.Benches.Stock;
using Protocolist.Fluids.Safety;

namespace Protocolist.Benches.Disposal;

/// <summary>What becomes of waste.</summary>
public enum WasteWay
{
    /// <summary>Kept, labelled, for another specimen.</summary>
    KeptForReuse,

    /// <summary>Collected as hazardous waste by those licensed for it.</summary>
    CollectedAsHazardous,

    /// <summary>Collected as sharps or biological waste by those licensed for it.</summary>
    CollectedAsClinical,

    /// <summary>To the drain under a named local permission, never otherwise.</summary>
    DrainedWhereAllowed,
}

/// <summary>One lot of waste. Its destination is never unnamed.</summary>
public sealed record Waste
{
    /// <summary>Makes a lot of waste.</summary>
    /// <param name="what">What it is, for people.</param>
    /// <param name="class">Its class.</param>
    /// <param name="amount">How much.</param>
    /// <param name="way">What becomes of it.</param>
    /// <param name="destination">The vessel, drum or permission, by name.</param>
    /// <exception cref="ArgumentException">The destination is blank.</exception>
    public Waste(string what, WasteClass @class, Amount amount, WasteWay way, string destination)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(destination);
        (What, Class, Amount, Way, Destination) = (what, @class, amount, way, destination);
    }

    /// <summary>What it is, for people.</summary>
    public string What { get; }

    /// <summary>Its class.</summary>
    public WasteClass Class { get; }

    /// <summary>How much.</summary>
    public Amount Amount { get; }

    /// <summary>What becomes of it.</summary>
    public WasteWay Way { get; }

    /// <summary>The vessel, drum or permission, by name.</summary>
    public string Destination { get; }

    /// <summary><c>2 L fixative (formaldehyde): collected as hazardous, drum F1</c>.</summary>
    /// <returns>The line.</returns>
    public override string ToString() => $"{Amount} {What} ({Words(Class.ToString())}): {Words(Way.ToString())}, {Destination}";

    internal static string Words(string name) => string.Concat(name.Select((c, i) => i > 0 && char.IsUpper(c) ? " " + char.ToLower(c, CultureInfo.InvariantCulture) : char.ToLower(c, CultureInfo.InvariantCulture).ToString()));
}
