using System.Linq.Expressions;
using FluentValidation;
using Protocolist.Findings;
using Protocolist.Reading;

namespace Protocolist.Vessels;

/// <summary>What a vessel may say at all, whoever it comes from: texts that can be shown, words that there are, numbers that sums can be made of.</summary>
internal sealed class VesselLimits : AbstractValidator<Vessel>
{
    private const int MostAtHand = 100_000;
    private const int MostLeadDays = 3650;
    private const int MostLosses = 12;
    private const decimal MostPrice = 10_000_000;

    private static readonly Phrase Negative = new("negative-price.vessel", "a vessel cannot cost {price}");
    private static readonly Phrase NegativeRemedy = new("negative-price.vessel.remedy", "write what one costs");
    private static readonly Phrase Absurd = new("absurd-price.vessel", "a vessel cannot cost {price}");
    private static readonly Phrase AbsurdRemedy = new("absurd-price.vessel.remedy", "check the figure and the currency");
    private static readonly Phrase AbsurdTime = new("absurd-time.vessel", "vessel '{vessel}' does not take {days} days to arrive");
    private static readonly Phrase AbsurdTimeRemedy = new("absurd-time.vessel.remedy", "give the time from the order to the delivery, such as 5 d");
    private static readonly Phrase AbsurdCount = new("vessel-count-absurd", "vessel '{vessel}' has a count of {count}; {most} is the most");
    private static readonly Phrase AbsurdCountRemedy = new("vessel-count-absurd.remedy", "count them");
    private static readonly Phrase UnknownWord = new("unknown-word.vessel", "vessel '{vessel}' has a material or a closure that there is no word for");
    private static readonly Phrase UnknownWordRemedy = new("unknown-word.vessel.remedy", "give one of its values");
    private static readonly Phrase AbsurdLoss = new("vessel-loss-absurd", "vessel '{vessel}' of {inside} does not lose {loss} in a year");
    private static readonly Phrase AbsurdLossRemedy = new("vessel-loss-absurd.remedy", "give what one of it loses in a year, or leave it out");

    public VesselLimits()
    {
        RuleFor(v => v.Id).IsLine();
        RuleFor(v => v.Name).IsLine();
        Known(v => v.Wall);
        Known(v => v.Lid);
        Known(v => v.Seal);
        Known(v => v.Closure);
        RuleFor(v => v.Price).Must(p => p is null or { Minor: >= 0 }).Says("negative-price", v => Negative.With(("price", v.Price!)), _ => NegativeRemedy);
        RuleFor(v => v.Price).Must(p => p is null or { Amount: <= MostPrice }).Says("absurd-price", v => Absurd.With(("price", v.Price!)), _ => AbsurdRemedy);
        RuleFor(v => v.LeadDays).InclusiveBetween(0, MostLeadDays)
            .Says("absurd-time", v => AbsurdTime.With(Id(v), ("days", v.LeadDays)), _ => AbsurdTimeRemedy);
        RuleFor(v => v.Count).LessThanOrEqualTo(MostAtHand)
            .Says("vessel-count-absurd", v => AbsurdCount.With(Id(v), ("count", v.Count), ("most", MostAtHand)), _ => AbsurdCountRemedy);

        // Whoever loses more than it holds each month has no lid.
        RuleFor(v => v.LossPerYear)
            .Must((vessel, loss) => loss is not { Liters: var litres } || vessel.Shape is null
                || (litres >= 0 && litres <= MostLosses * vessel.Shape.Inside.Liters))
            .Says("vessel-loss-absurd", v => AbsurdLoss.With(Id(v), ("inside", v.Shape.Inside), ("loss", v.LossPerYear!.Value)), _ => AbsurdLossRemedy);
    }

    private void Known<T>(Expression<Func<Vessel, T>> property)
        where T : struct, Enum =>
        RuleFor(property).Must(w => Enum.IsDefined(w)).Says("unknown-word", v => UnknownWord.With(Id(v)), _ => UnknownWordRemedy);

    private static Argument Id(Vessel vessel) => Argument.Id("vessel", Excerpt.Of(vessel.Id));
}
