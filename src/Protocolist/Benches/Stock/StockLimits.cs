using FluentValidation;
using Protocolist.Findings;
using Protocolist.Quantities;
using Protocolist.Reading;

namespace Protocolist.Benches.Stock;

/// <summary>
/// What stock may say at all, whoever it comes from: texts that can be shown, dates that can be meant, amounts and prices that sums can be made of.
/// </summary>
internal sealed class StockLimits : AbstractValidator<StockItem>
{
    /// <summary>Of a pack or a unit, in the currency itself: no supply of a bench costs more, and sums of such prices stay whole coins.</summary>
    public const decimal MostPrice = 10_000_000;

    /// <summary>Ten years: nobody waits so long for a bottle.</summary>
    public const int MostLeadDays = 3650;

    /// <summary>
    /// A thousand cubic metres, a thousand tonnes or a million million pieces: no bench holds more, and sums of such amounts stay whole numbers.
    /// </summary>
    private const long MostOnHand = 1_000_000_000_000;

    private static readonly Phrase AbsurdAmount = new("absurd-amount.on-hand", "'{stock}' cannot have {amount} on hand");
    private static readonly Phrase AbsurdAmountRemedy = new("absurd-amount.on-hand.remedy", "give an amount that a bench can hold");
    private static readonly Phrase OtherMeasure = new("priced-by-another-measure.worth", "'{stock}' is not measured as its worth of {worth} is");
    private static readonly Phrase OtherMeasureRemedy = new(
        "priced-by-another-measure.worth.remedy", "give the worth by volume, by mass or by the piece, as the stock is counted");
    private static readonly Phrase AbsurdWorth = new("absurd-price.worth", "'{stock}' cannot be worth {worth}");
    private static readonly Phrase CheckFigure = new("absurd-price.worth.remedy", "check the figure and the currency");
    private static readonly Phrase AbsurdPh = new("absurd-ph", "'{stock}' cannot read pH {ph:0.##}");
    private static readonly Phrase AbsurdPhRemedy = new("absurd-ph.remedy", "measure it again");
    private static readonly Phrase AbsurdPack = new("absurd-price.pack", "the pack of {size} cannot cost {price}");
    private static readonly Phrase AbsurdPackRemedy = new("absurd-price.pack.remedy", "check the figure and the currency");
    private static readonly Phrase AbsurdSize = new("absurd-amount.pack", "a pack cannot hold {size}");
    private static readonly Phrase AbsurdSizeRemedy = new("absurd-amount.pack.remedy", "write what one pack holds");
    private static readonly Phrase AbsurdTime = new("absurd-time.pack", "the pack of {size} does not take {days} days");
    private static readonly Phrase AbsurdTimeRemedy = new("absurd-time.pack.remedy", "give the time from the order to the delivery, such as 5 d");

    public StockLimits()
    {
        RuleFor(i => i.Id).IsLine();
        RuleFor(i => i.Substance).IsLine();
        RuleFor(i => i.Strength).IsLine();
        RuleFor(i => i.Hydrate).IsLine();
        RuleFor(i => i.Buffering).IsLine();
        RuleFor(i => i.OpenedOn).IsSane();
        RuleFor(i => i.Expires).IsSane();
        RuleFor(i => i.OnHand).Must(a => a.Units <= MostOnHand)
            .Says("absurd-amount", i => AbsurdAmount.With(Id(i), ("amount", i.OnHand.ToString())), _ => AbsurdAmountRemedy);
        RuleFor(i => i.Worth).Must((i, p) => p is null || Measures(p.Per) == i.OnHand.Kind)
            .Says("priced-by-another-measure", i => OtherMeasure.With(Id(i), ("worth", i.Worth!.ToString())), _ => OtherMeasureRemedy);
        RuleFor(i => i.Worth).Must(p => p is null or { Rate: <= MostPrice })
            .Says("absurd-price", i => AbsurdWorth.With(Id(i), ("worth", i.Worth!.ToString())), _ => CheckFigure);
        RuleFor(i => i.Spent).Must(s => s is not { Ph: { } ph } || ph is >= 0 and <= 14)
            .Says("absurd-ph", i => AbsurdPh.With(Id(i), ("ph", i.Spent?.Ph ?? 0)), _ => AbsurdPhRemedy);
        RuleForEach(i => i.Packs).ChildRules(pack =>
        {
            pack.RuleFor(p => p.Price).Must(p => p is null or { Amount: <= MostPrice })
                .Says("absurd-price", p => AbsurdPack.With(("size", p.Size.ToString()), ("price", p.Price!)), _ => AbsurdPackRemedy);
            pack.RuleFor(p => p.Size).Must(s => s.Units <= MostOnHand)
                .Says("absurd-amount", p => AbsurdSize.With(("size", p.Size.ToString())), _ => AbsurdSizeRemedy);
            pack.RuleFor(p => p.LeadDays).Must(d => d <= MostLeadDays)
                .Says("absurd-time", p => AbsurdTime.With(("size", p.Size.ToString()), ("days", p.LeadDays)), _ => AbsurdTimeRemedy);
        });
    }

    private static AmountKind? Measures(PriceUnit per) => per switch
    {
        PriceUnit.Litre or PriceUnit.Millilitre or PriceUnit.CubicMetre => AmountKind.Volume,
        PriceUnit.Kilogram or PriceUnit.Gram or PriceUnit.Milligram => AmountKind.Mass,
        PriceUnit.Piece => AmountKind.Count,
        _ => null,
    };

    private static Argument Id(StockItem item) => Argument.Id("stock", Excerpt.Of(item.Id));
}
