using System.Collections.Immutable;
using System.Globalization;
using NodaTime;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Quantities;
using UnitsNet;
using Calendar = Protocolist.Reading.Calendar;
using Duration = NodaTime.Duration;

namespace Protocolist.Plans;

/// <summary>What was found so far.</summary>
internal sealed class FaultyParts
{
    /// <summary>A thousand cubic metres, in millilitres: beyond it lies a mistake.</summary>
    private const double MostMillilitres = 1e9;

    /// <summary>A thousand tonnes, likewise.</summary>
    private const double MostGrams = 1e9;

    /// <summary>Longer than any fixation, and far shorter than what sums of times can hold.</summary>
    private static readonly Duration LongestStep = Duration.FromDays(36_500);

    private const int MostCounted = 1_000_000;

    private static readonly Phrase Lacking = new("plan-incomplete.part", "'{path}' is missing");
    public static readonly Phrase Impossible = new("plan-impossible", "'{path}' cannot be {value}");
    private static readonly Phrase Twice = new("plan-impossible.twice", "'{path}' is '{id}', as another one is");
    private static readonly Phrase Unknown = new("plan-impossible.unknown-id", "'{path}' names '{id}', which the plan does not have");
    private static readonly Phrase TwoCurrencies = new("plan-impossible.currencies", "'{path}' is in {currency}, and other sums are in {other}");
    private static readonly Phrase Absurd = new("plan-impossible.date", "'{path}' lies in the year {year}");
    public static readonly Phrase MakeAgain = new("plan-impossible.remedy", "make the plan again; a plan file is not edited by hand");

    private readonly List<Message> _found = [];
    private string? _currency;

    public bool IsEmpty => _found.Count == 0;

    public ImmutableArray<Finding> All() => Findings(_found);

    public void Add(Message message) => _found.Add(message);

    public void Needs(string path, object? part)
    {
        if (part is null) Add(MissingAt(path));
    }

    /// <summary>Parts that are not there.</summary>
    public static ImmutableArray<Finding> Missing(IEnumerable<string> paths) => Findings(paths.Select(MissingAt));

    public static Message MissingAt(string path) => Lacking.With(("path", path));

    public void Names(string path, string? text)
    {
        if (string.IsNullOrWhiteSpace(text)) Add(MissingAt(path));
    }

    /// <summary>The items of a list with their paths; of one that is not there, or an item that is not, a fault.</summary>
    public IEnumerable<(string Path, T Item)> Each<T>(string path, ImmutableArray<T> items)
        where T : class
    {
        if (items.IsDefault)
        {
            Add(MissingAt(path));
            yield break;
        }

        for (var i = 0; i < items.Length; i++)
        {
            var at = string.Create(CultureInfo.InvariantCulture, $"{path}[{i}]");
            if (items[i] is { } item) yield return (at, item);
            else Add(MissingAt(at));
        }
    }

    public void There<T>(string path, ImmutableArray<T> items)
    {
        if (items.IsDefault) Needs(path, null);
    }

    /// <summary>A list of which only its being there is looked at.</summary>
    public void Whole<T>(string path, ImmutableArray<T> items)
        where T : class => _ = Each(path, items).Count();

    /// <summary>Ids of what the plan has.</summary>
    public void Knows(string path, ImmutableArray<string> ids, HashSet<string> known)
    {
        foreach (var (at, id) in Each(path, ids)) Knows(at, id, known);
    }

    /// <summary>The id of something that the plan has.</summary>
    public void Knows(string path, string id, HashSet<string> known)
    {
        if (!known.Contains(id)) Add(Unknown.With(("path", path), ("id", Excerpt.Of(id))));
    }

    public void Unique<T>(string path, ImmutableArray<T> items, Func<T, string?> idOf)
    {
        if (items.IsDefault) return;
        var seen = new HashSet<string>(StringComparer.Ordinal);
        for (var i = 0; i < items.Length; i++)
        {
            if (idOf(items[i]) is not { } id || seen.Add(id)) continue;
            Add(Twice.With(("path", string.Create(CultureInfo.InvariantCulture, $"{path}[{i}].id")), ("id", Excerpt.Of(id))));
        }
    }

    public void Day(string path, OffsetDateTime? at) => Day(path, at?.Date);

    public void Day(string path, LocalDate? day)
    {
        if (day is { } date && !Calendar.Has(date)) Add(Absurd.With(("path", path), ("year", date.Year.ToString(CultureInfo.InvariantCulture))));
    }

    public void Time(string path, Duration? time)
    {
        if (time is { } length && (length < Duration.Zero || length > LongestStep)) Add(Impossible.With(("path", path), ("value", length)));
    }

    public void Said(string path, Message message)
    {
        if (message.IsEmpty) Needs(path, null);
    }

    public void Counted(string path, long count)
    {
        if (count is < 0 or > MostCounted) Add(Impossible.With(("path", path), ("value", count)));
    }

    public void Amount(string path, Amount amount)
    {
        if (amount.Units < 0) Add(Impossible.With(("path", path), amount.Fact("value")));
    }

    public void Volume(string path, Volume? volume)
    {
        if (volume is { Milliliters: var millilitres } && !(millilitres is >= 0 and <= MostMillilitres))
            Add(Impossible.With(("path", path), ("value", volume.Value)));
    }

    public void Mass(string path, Mass mass)
    {
        if (!(mass.Grams is >= 0 and <= MostGrams)) Add(Impossible.With(("path", path), ("value", mass)));
    }

    public void Length(string path, Length? length)
    {
        if (length is { Meters: var metres } && !(metres is >= 0 and <= 100)) Add(Impossible.With(("path", path), ("value", length.Value)));
    }

    public void Sum(string path, Money? sum)
    {
        if (sum is null) return;
        if (sum.Minor < 0) Add(Impossible.With(("path", path), ("value", sum)));
        _currency ??= sum.Currency;
        if (sum.Currency != _currency) Add(TwoCurrencies.With(("path", path), ("currency", sum.Currency), ("other", _currency)));
    }

    /// <summary>Messages of what a plan cannot say, as errors.</summary>
    public static ImmutableArray<Finding> Findings(IEnumerable<Message> faults) =>
        [.. faults.Select(f => Finding.Error(f.Phrase == Lacking ? "plan-incomplete" : "plan-impossible", f, MakeAgain))];
}
