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

/// <summary>
/// What a plan cannot say, whether it was read from a file or made by a program: parts that are not there, amounts below nothing, times that
/// run backwards, days that nobody means. Each is told with its path in the plan's JSON.
/// </summary>
internal static partial class PlanFaults
{
    /// <summary>A thousand cubic metres, in millilitres: beyond it lies a mistake.</summary>
    private const double MostMillilitres = 1e9;

    /// <summary>Longer than any fixation, and far shorter than what sums of times can hold.</summary>
    private static readonly Duration LongestStep = Duration.FromDays(36_500);

    private const int MostCounted = 1_000_000;

    private static readonly Phrase Missing = new("plan-incomplete.part", "'{path}' is missing");
    private static readonly Phrase Impossible = new("plan-impossible", "'{path}' cannot be {value}");
    private static readonly Phrase Backwards = new("plan-impossible.backwards", "'{path}' ends before it begins");
    private static readonly Phrase Twice = new("plan-impossible.twice", "'{path}' is '{id}', as another one is");
    private static readonly Phrase TwoCurrencies = new("plan-impossible.currencies", "'{path}' is in {currency}, and other sums are in {other}");
    private static readonly Phrase Absurd = new("plan-impossible.date", "'{path}' lies in the year {year}");
    private static readonly Phrase UnknownZone = new("unknown-zone.plan", "there is no time zone '{zone}'");
    private static readonly Phrase OfSpecimen = new("plan-impossible.specimen", "'{path}': {why}");
    private static readonly Phrase MakeAgain = new("plan-impossible.remedy", "make the plan again; a plan file is not edited by hand");

    /// <summary>Everything that is wrong with it in itself, as errors.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="zones">The time zones by id; null where the plan's is not asked for.</param>
    public static ImmutableArray<Finding> Of(Plan plan, IDateTimeZoneProvider? zones = null)
    {
        var faults = new Faults();
        faults.Needs("protocol", plan.Protocol);
        faults.Needs("specimen", plan.Specimen);
        faults.Needs("costs", plan.Costs);
        faults.Needs("bench", plan.Bench);
        faults.Names("zone", plan.Zone);
        if (plan.Protocol is { } protocol)
        {
            faults.Names("protocol.id", protocol.Id);
            foreach (var (path, file) in faults.Each("protocol.files", protocol.Files)) faults.Needs($"{path}.text", file.Text);
        }

        if (plan.Specimen is { } specimen)
        {
            foreach (var finding in specimen.BeyondLimits()) faults.Add(OfSpecimen.With(("path", $"specimen.{finding.Subject}"), ("why", finding.Message)));
        }

        faults.Day("start", plan.Start);
        faults.Day("end", plan.End);
        faults.Day("earliestStart", plan.EarliestStart);
        faults.Day("loggedUntil", plan.LoggedUntil);
        faults.Day("by", plan.By);
        faults.Counted("revision", plan.Revision);
        foreach (var (path, step) in faults.Each("steps", plan.Steps)) Step(path, step, faults);
        faults.Unique("steps", plan.Steps, s => s?.Id);
        foreach (var (path, figure) in faults.Each("figures", plan.Figures))
        {
            faults.Names($"{path}.id", figure.Id);
            faults.Whole($"{path}.inputs", figure.Inputs);
        }

        foreach (var (path, recipe) in faults.Each("recipes", plan.Recipes))
        {
            faults.Volume($"{path}.volumeMl", recipe.Volume);
            if (recipe.At.DegreesCelsius is not (> -100 and < 200)) faults.Add(Impossible.With(("path", $"{path}.atC"), ("value", recipe.At)));
            faults.Whole($"{path}.for", recipe.For);
            foreach (var (below, part) in faults.Each($"{path}.parts", recipe.Parts))
            {
                faults.Volume($"{below}.volumeMl", part.Volume);
                if (part.Mass is { } mass && !(mass.Grams >= 0)) faults.Add(Impossible.With(("path", $"{below}.massG"), ("value", mass)));
            }
        }

        foreach (var (path, purchase) in faults.Each("purchases", plan.Purchases))
        {
            faults.Counted($"{path}.count", purchase.Count);
            faults.Counted($"{path}.leadDays", purchase.LeadDays);
            faults.Sum($"{path}.price", purchase.Price);
            faults.Whole($"{path}.for", purchase.For);
        }

        foreach (var (path, waste) in faults.Each("waste", plan.Waste)) faults.Amount($"{path}.amount", waste.Amount);

        foreach (var (path, move) in faults.Each("fluids", plan.Fluids))
        {
            faults.Volume($"{path}.volumeMl", move.Volume);
            faults.Counted($"{path}.filling", move.Filling);
            faults.Counted($"{path}.batches", move.Batches);
            faults.Needs($"{path}.mixedIn", move.MixedIn);
            faults.Time($"{path}.mixingMinutes", move.Mixing);
        }

        foreach (var (path, care) in faults.Each("care", plan.Care))
        {
            faults.Day($"{path}.on", care.On);
            if (care.EveryMonths is { } months && months is < 1 or > 1200) faults.Add(Impossible.With(("path", $"{path}.everyMonths"), ("value", months)));
            faults.There($"{path}.dates", care.Dates);
            foreach (var day in care.Dates.AsSpan()) faults.Day($"{path}.dates", day);
        }

        faults.There("label", plan.Label);
        foreach (var (path, finding) in faults.Each("findings", plan.Findings))
        {
            faults.Names($"{path}.id", finding.Id);
            faults.Needs($"{path}.source", finding.Source);
            faults.There($"{path}.figures", finding.Figures);
            if (finding.Message.IsEmpty) faults.Needs($"{path}.message", null);
        }

        foreach (var (path, material) in faults.Each("materials", plan.Materials))
        {
            faults.There($"{path}.draws", material.Draws);
            faults.Whole($"{path}.for", material.For);
            faults.Amount($"{path}.onHand", material.OnHand);
            faults.Amount($"{path}.bought", material.Bought);
            faults.Amount($"{path}.used", material.Used);
            foreach (var draw in material.Draws.AsSpan()) faults.Amount($"{path}.draws", draw.Amount);
        }

        faults.Whole("changes", plan.Changes);
        foreach (var (path, withdrawn) in faults.Each("withdrawn", plan.Withdrawn))
        {
            faults.Day($"{path}.start", withdrawn.Start);
            faults.Counted($"{path}.mostChanges", withdrawn.MostChanges);
        }

        if (plan.Costs is { } costs) Costs(costs, faults);
        return zones is null || plan.Zone is null || zones.GetZoneOrNull(plan.Zone) is not null
            ? faults.All()
            : faults.All().Add(Finding.Error("unknown-zone", UnknownZone.With(("zone", Excerpt.Of(plan.Zone))), MakeAgain));
    }

    private static void Costs(PlanCosts costs, Faults faults)
    {
        foreach (var (name, sum) in (ReadOnlySpan<(string, Money?)>)
        [
            ("cash", costs.Cash), ("used", costs.Used), ("labour", costs.Labour), ("disposal", costs.Disposal),
            ("leftOnShelf", costs.LeftOnShelf), ("wear", costs.Wear),
            ("total", costs.Total), ("bySpecimen", costs.BySpecimen), ("careLabourByYear", costs.CareLabourByYear), ("careFluidByYear", costs.CareFluidByYear),
            ("careByYear", costs.CareByYear), ("overTenYears", costs.OverTenYears),
        ])
        {
            faults.Sum($"costs.{name}", sum);
        }

        faults.Volume("costs.topUpByYearMl", costs.TopUpByYear);
        foreach (var (path, disposal) in faults.Each("costs.disposalByClass", costs.DisposalByClass)) faults.Sum($"{path}.cost", disposal.Cost);
    }

    /// <summary>What was found so far.</summary>
    private sealed class Faults
    {
        private readonly ImmutableArray<Finding>.Builder _found = ImmutableArray.CreateBuilder<Finding>();
        private string? _currency;

        public ImmutableArray<Finding> All() => _found.ToImmutable();

        public void Add(Message message) => _found.Add(Finding.Error(message.Phrase == Missing ? "plan-incomplete" : "plan-impossible", message, MakeAgain));

        public void Needs(string path, object? part)
        {
            if (part is null) Add(Missing.With(("path", path)));
        }

        public void Names(string path, string? text)
        {
            if (string.IsNullOrWhiteSpace(text)) Add(Missing.With(("path", path)));
        }

        /// <summary>The items of a list with their paths; of one that is not there, or an item that is not, a fault.</summary>
        public IEnumerable<(string Path, T Item)> Each<T>(string path, ImmutableArray<T> items)
            where T : class
        {
            if (items.IsDefault)
            {
                Add(Missing.With(("path", path)));
                yield break;
            }

            for (var i = 0; i < items.Length; i++)
            {
                var at = string.Create(CultureInfo.InvariantCulture, $"{path}[{i}]");
                if (items[i] is { } item) yield return (at, item);
                else Add(Missing.With(("path", at)));
            }
        }

        public void There<T>(string path, ImmutableArray<T> items)
        {
            if (items.IsDefault) Needs(path, null);
        }

        /// <summary>A list of which only its being there is looked at.</summary>
        public void Whole<T>(string path, ImmutableArray<T> items)
            where T : class => _ = Each(path, items).Count();

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

        public void Counted(string path, int count)
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
    }
}
