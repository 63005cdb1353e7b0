using FluentValidation;
using Protocolist.Benches.Stock;
using Protocolist.Protocols;
using Protocolist.Quantities;
using Protocolist.Reading;

namespace Protocolist.Logs;

/// <summary>What is wrong with a log entry by entry, whether it was read from a file or made by a program; whether entries agree, <see cref="LogOrder"/> says.</summary>
internal sealed class WorkLogValidator : AbstractValidator<WorkLog>
{
    /// <summary>A thousand cubic metres: what a bench can hold at most.</summary>
    private const double MostUsedLitres = 1_000_000;

    public WorkLogValidator()
    {
        RuleFor(l => l.Specimen).Must(id => !string.IsNullOrWhiteSpace(id)).As("missing-id", _ => "the log does not say of which specimen it is", "give the specimen's number");
        RuleFor(l => l.Specimen).IsLine();
        RuleFor(l => l.Written).IsSane();
        RuleForEach(l => l.Entries).ChildRules(entry =>
        {
            entry.RuleFor(e => e.Step).Must(s => !string.IsNullOrWhiteSpace(s)).As("missing-key", _ => "an entry does not say of which step it is", "give the id of a step of the plan");
            entry.RuleFor(e => e.Step).IsLine();
            entry.RuleFor(e => e.Place).IsLine();
            entry.RuleFor(e => e.Skipped).IsProse();
            entry.RuleFor(e => e.Note).IsProse();
            entry.RuleFor(e => e.Begun).IsSane();
            entry.RuleFor(e => e.At).IsSane();
            entry.RuleFor(e => e.Done).IsSane();
            entry.RuleFor(e => e.Used).Must(v => v is not { Liters: var litres } || litres is >= 0 and <= MostUsedLitres)
                .As("impossible-amount", e => $"'{e.Step}' cannot have used {Measurable.Text(e.Used!.Value.CubicMeters, Dimension.OfVolume)}", "write how much fluid was used, or leave it out");
            entry.RuleForEach(e => e.Signs).Must(s => Array.Exists(WatchWords.Signs, w => w.Word == s))
                .As("unknown-word", (_, sign) => $"'{Findings.Excerpt.Of(sign)}' is not one of the signs", "give the word of a sign of a protocol's 'watch'");
            entry.RuleForEach(e => e.Readings).Must(r => r is not null && LogReadings.CanBe(r.What, r.Value))
                .As("reading-impossible", (_, r) => r is null ? "a reading is missing" : $"a {EnumWords<ReadingKind>.Of(r.What)} of '{Measurable.Text(r.Value)}' cannot be", "read the instrument again, and check the unit");
        });
    }
}
