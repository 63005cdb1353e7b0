using FluentValidation;
using NodaTime;
using Protocolist.Reading;

namespace Protocolist.Planning.Making;

/// <summary>What is wrong with a request beside its specimen and its bench, which are asked for themselves.</summary>
internal sealed class PlanRequestValidator : AbstractValidator<PlanRequest>
{
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
    }
}
