using System.Collections.Immutable;
using NodaTime;
using Protocolist.Benches;
using Protocolist.Plans;
using Protocolist.Protocols;

namespace Protocolist.Planning;

/// <summary>What comes after sealing: the protocol's own rounds, dated from the day the vessel is closed.</summary>
internal static class CareWriting
{
    /// <summary>A month of a rhythm, as the unit table counts it.</summary>
    private const double MonthSeconds = 30 * 86400;

    public static ImmutableArray<CareEvent> Events(Draft draft, Bench bench)
    {
        var zone = bench.Opening.Zone;
        var closed = draft.Steps.LastOrDefault(s => s.Kind is StageKind.Seal or StageKind.House && s.When is not null)?.When?.End.InZone(zone).Date;
        var events = new List<CareEvent>();
        foreach (var step in draft.Steps)
        {
            if (step.IsCare) events.AddRange(Rounds(step, closed));
            if (step.Kind == StageKind.Seal && step.Details.TryGetValue("renew", out _) && Months(step, "renew", draft) is { } renew)
                events.Add(new($"renew the {step.Details.GetValueOrDefault("closure", "closure")}", closed?.PlusMonths(renew), renew, step.Stage.Source));
        }

        return [.. events.OrderBy(e => e.On ?? LocalDate.MaxIsoValue).ThenBy(e => e.What, StringComparer.Ordinal)];

        IEnumerable<CareEvent> Rounds(DraftStep step, LocalDate? from)
        {
            var what = step.Stage.Texts("look-for").Length > 0 ? $"{step.Stage.Title}: {string.Join("; ", step.Stage.Texts("look-for"))}" : step.Stage.Title;
            var every = Months(step, "every", draft);
            if (Days(step, "after", draft) is { } after) yield return new(what, from?.PlusDays(after), null, step.Stage.Source);
            if (every is { } months) yield return new(what, from?.PlusMonths(months), months, step.Stage.Source);
        }
    }

    private static int? Months(DraftStep step, string key, Draft draft) =>
        Seconds(step, key, draft) is { } seconds ? (int)Math.Clamp(Math.Round(seconds / MonthSeconds), 1, 1200) : null;

    private static int? Days(DraftStep step, string key, Draft draft) =>
        Seconds(step, key, draft) is { } seconds ? (int)Math.Clamp(Math.Round(seconds / 86400), 0, 36500) : null;

    private static double? Seconds(DraftStep step, string key, Draft draft)
    {
        var figure = draft.Figures.FirstOrDefault(f => f.Id == $"{step.Id}.{key}");
        return figure is { Exact.Length: > 0 } && Quantities.QuantityText.Read(figure.Exact, out var range) is null && range.IsFinite ? range.Middle : null;
    }
}
