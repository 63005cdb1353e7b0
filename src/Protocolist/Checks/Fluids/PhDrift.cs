using System.Collections.Immutable;
using NodaTime;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Fluids.Buffers;
using Protocolist.Reading;
using Protocolist.Rules;

namespace Protocolist.Checks.Fluids;

/// <summary>A buffered formalin on the shelf still has the pH of its buffer.</summary>
internal static class PhDrift
{
    private static readonly Phrase Reads = new(
        BufferPh.Id,
        "'{stock}' reads pH {ph:0.0}; {buffering}-buffered formalin has {low:0.0} to {high:0.0}, and a reading may be off by {doubt}");

    private static readonly Phrase ReadsUnbuffered = new(
        "ph-drift.unbuffered",
        "'{stock}' reads pH {ph:0.0}; unbuffered formalin has {low:0.0} to {high:0.0}, and a reading may be off by {doubt}");

    private static readonly Phrase Stood = new(
        "ph-drift.unmeasured",
        "'{stock}', {buffering}-buffered, has stood open for {open} {open|day|days}, and no pH is noted; "
        + "{days} {days|day|days} is as long as that buffer is to be trusted");

    private static readonly Phrase BufferAnew = new("ph-drift.remedy", "measure again with a meter; buffer it anew with the same buffer, or make it fresh");
    private static readonly Phrase MakeFresh = new("ph-drift.remedy-unbuffered", "measure again with a meter, or make it fresh");
    private static readonly Phrase Measure = new("ph-drift.remedy-unmeasured", "measure its pH and note it under 'ph:', or make it fresh");

    public static PlanCheck Check { get; } = new(
        BufferPh.Id,
        "the specimen: a buffer that is used up turns acid, and nobody sees it",
        BufferPh.Source,
        Find)
    {
        Severities =
        [
            new(
                Severity.Warning,
                "a buffered formalin on the shelf reads more than 0.3 of pH outside its buffer's band, "
                + "or stands open, unmeasured, longer than its buffer lasts"),
        ],
    };

    private static ImmutableArray<Finding> Find(ReviewCase plan)
    {
        ImmutableArray<Finding> found = [];
        if (plan.Formalin.IsEmpty || plan.Plan.Start?.Date is not { } on) return found;
        foreach (var item in plan.Bench.Stock)
        {
            if (item is not { Kind: StockKind.Fluid, Buffering: { } word } || item.OnHand.Units == 0 || !EnumWords<Buffering>.All.Contains(word)) continue;
            var profile = BufferGuide.Of(EnumWords<Buffering>.Parse(word));
            if (item.Spent?.Ph is { } ph)
            {
                if (BufferPh.HasDrifted(profile, ph)) found = found.Add(Drifted(item, profile, ph));
            }
            else if (item.OpenedOn is { } opened && Period.DaysBetween(opened, on) is var open && BufferPh.IsPast(profile, open))
            {
                var message = Stood.With(Argument.Id("stock", item.Id), Argument.Id("buffering", word), ("open", open), ("days", profile.LastsDays!.Value));
                found = found.Add(Finding.Warning(BufferPh.Id, message, Measure, item.Where));
            }
        }

        return found;
    }

    private static Finding Drifted(StockItem item, BufferProfile profile, double ph)
    {
        var isBuffered = profile.Buffering != Buffering.None;
        var message = (isBuffered ? Reads : ReadsUnbuffered).With(
            Argument.Id("stock", item.Id),
            ("ph", ph),
            Argument.Id("buffering", item.Buffering!),
            ("low", profile.PhLow),
            ("high", profile.PhHigh),
            ("doubt", BufferPh.Doubt));
        return Finding.Warning(BufferPh.Id, message, isBuffered ? BufferAnew : MakeFresh, item.Where);
    }
}
