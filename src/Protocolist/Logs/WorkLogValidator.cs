using FluentValidation;
using Protocolist.Findings;
using Protocolist.Protocols;
using Protocolist.Reading;

namespace Protocolist.Logs;

/// <summary>
/// What is wrong with a log entry by entry, whether it was read from a file or made by a program; whether entries agree, <see cref="LogOrder"/> says.
/// </summary>
internal sealed class WorkLogValidator : AbstractValidator<WorkLog>
{
    /// <summary>A thousand cubic metres: what a bench can hold at most.</summary>
    private const double MostUsedLitres = 1_000_000;

    private static readonly Phrase NoSpecimen = new("missing-id.log", "the log does not say of which specimen it is");
    private static readonly Phrase NoSpecimenRemedy = new("missing-id.log.remedy", "give the specimen's number");
    private static readonly Phrase NoStep = new("missing-key.log-step", "an entry does not say of which step it is");
    private static readonly Phrase NoStepRemedy = new("missing-key.log-step.remedy", "give the id of a step of the plan");
    private static readonly Phrase ImpossibleUse = new("impossible-amount.used", "'{step}' cannot have used {used}");
    private static readonly Phrase ImpossibleUseRemedy = new("impossible-amount.used.remedy", "write how much fluid was used, or leave it out");
    private static readonly Phrase UnknownSign = new("unknown-word.sign", "'{sign}' is not one of the signs");
    private static readonly Phrase ImpossibleReading = new("reading-impossible.value", "a {what} of '{value}' cannot be");
    private static readonly Phrase ImpossibleReadingRemedy = new("reading-impossible.value.remedy", "read the instrument again, and check the unit");

    public WorkLogValidator()
    {
        RuleFor(l => l.Specimen).Must(id => !string.IsNullOrWhiteSpace(id)).Says("missing-id", _ => NoSpecimen, _ => NoSpecimenRemedy);
        RuleFor(l => l.Specimen).IsLine();
        RuleFor(l => l.Written).IsSane();
        RuleForEach(l => l.Entries).ChildRules(entry =>
        {
            entry.RuleFor(e => e.Step).Must(s => !string.IsNullOrWhiteSpace(s)).Says("missing-key", _ => NoStep, _ => NoStepRemedy);
            entry.RuleFor(e => e.Step).IsLine();
            entry.RuleFor(e => e.Place).IsLine();
            entry.RuleFor(e => e.Skipped).IsProse();
            entry.RuleFor(e => e.Note).IsProse();
            entry.RuleFor(e => e.Begun).IsSane();
            entry.RuleFor(e => e.At).IsSane();
            entry.RuleFor(e => e.Done).IsSane();
            entry.RuleFor(e => e.Used).Must(v => v is not { Liters: var litres } || litres is >= 0 and <= MostUsedLitres)
                .Says("impossible-amount", (e, used) => ImpossibleUse.With(("step", Excerpt.Of(e.Step)), ("used", used!.Value)), ImpossibleUseRemedy);
            entry.RuleForEach(e => e.Signs).Custom((sign, context) =>
            {
                if (FaultOf(sign) is { } fault) context.AddFailure(ValidatorFindings.Failure(fault, context.PropertyPath));
            });
            entry.RuleForEach(e => e.Readings).Must(r => LogReadings.CanBe(r.What, r.Value))
                .Says(
                    "reading-impossible",
                    (_, r) => ImpossibleReading.With(("what", EnumWords<ReadingKind>.Of(r.What)), ("value", r.Value)),
                    ImpossibleReadingRemedy);
        });
    }

    /// <summary>Why a word is not that of a sign; null where it is.</summary>
    public static Finding? FaultOf(string? sign) => sign is not null && Sign.Find(sign) is not null ? null
        : Finding.Error("unknown-word", UnknownSign.With(("sign", Excerpt.Of(sign))), Suggestion.For(sign ?? "", [.. Sign.All.Select(s => s.Word)]));
}
