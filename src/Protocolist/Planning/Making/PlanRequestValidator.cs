using FluentValidation;
using NodaTime;
using Protocolist.Findings;
using Protocolist.Reading;

namespace Protocolist.Planning.Making;

/// <summary>What is wrong with a request beside its specimen and its bench, which are asked for themselves.</summary>
internal sealed class PlanRequestValidator : AbstractValidator<PlanRequest>
{
    private static readonly Duration LongestSoak = Duration.FromDays(36_500);
    private static readonly Phrase SoakBeyond = new("impossible-soak", "a soak cannot last {soak}");
    private static readonly Phrase SoakBeyondRemedy = new("impossible-soak.remedy", "give a time above nothing, such as 72 h or 10 d");

    public PlanRequestValidator()
    {
        RuleFor(r => (LocalDate?)r.Start.Date).IsSane();
        RuleFor(r => r.By).IsSane();
        RuleForEach(r => r.Choices.Keys).IsLine();
        RuleForEach(r => r.Choices.Values).IsLine();
        RuleForEach(r => r.Wishes.Vessels.Keys).IsLine();
        RuleForEach(r => r.Wishes.Vessels.Values).IsLine();
        RuleForEach(r => r.Wishes.Supplies.Keys).IsLine();
        RuleForEach(r => r.Wishes.Supplies.Values).IsLine();
        RuleForEach(r => r.Wishes.Soaks.Keys).IsLine();
        RuleForEach(r => r.Wishes.Soaks.Values).Must(soak => soak > Duration.Zero && soak <= LongestSoak)
            .Says("impossible-soak", (_, soak) => SoakBeyond.With(("soak", soak)), SoakBeyondRemedy);
        RuleForEach(r => r.Wishes.Dates.Keys).IsLine();
        RuleForEach(r => r.Wishes.Days).IsSane();
    }
}
