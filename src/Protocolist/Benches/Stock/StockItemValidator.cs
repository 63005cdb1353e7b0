using FluentValidation;
using NodaTime;
using Protocolist.Findings;
using Protocolist.Reading;
using Severity = FluentValidation.Severity;

namespace Protocolist.Benches.Stock;

/// <summary>Checks one <see cref="StockItem"/>: error codes are finding ids, the state of a failure is its remedy.</summary>
/// <remarks>What makes a bottle unusable (expired, strength unknown) is a warning here, because a plan that does not need it may start; drawing from the
/// shelf leaves it out.</remarks>
internal sealed class StockItemValidator : AbstractValidator<StockItem>
{
    private static readonly Phrase NoId = new("stock-without-id", "a stock item has no id");
    private static readonly Phrase NoIdRemedy = new("stock-without-id.remedy", "give it a short name in kebab-case");
    private static readonly Phrase NoSubstance = new("stock-without-substance", "'{stock}' does not say what it is");
    private static readonly Phrase NoSubstanceRemedy = new("stock-without-substance.remedy", "name the fluid, salt or thing, for example 'ethanol 96 %vol'");
    private static readonly Phrase Negative = new("negative-stock", "'{stock}' has {amount:amount} on hand");
    private static readonly Phrase NegativeRemedy = new("negative-stock.remedy", "count what is there; write 0 when it is used up");
    private static readonly Phrase OtherKind = new("amount-of-another-kind", "'{stock}' is a {kind}, but its amount is {amount:amount}");
    private static readonly Phrase OtherKindRemedy = new("amount-of-another-kind.remedy", "give fluids by volume or mass, salts by mass, things by number");
    private static readonly Phrase NoStrength = new("unknown-strength", "nobody can tell how strong '{stock}' ({substance}) is; it is left out");

    private static readonly Phrase NoStrengthRemedy =
        new("unknown-strength.remedy", "read its label or measure its density, and write the strength, for example '37 %mass'");

    private static readonly Phrase Expired = new("expired-stock", "'{stock}' expired on {last:day}, before {on:day}; it is left out");
    private static readonly Phrase ExpiredRemedy = new("expired-stock.remedy", "discard it as waste of its class, or write the new date if it was tested");
    private static readonly Phrase OpenedLater = new("opened-in-the-future", "'{stock}' is said to be opened on {opened:day}, after {on:day}");
    private static readonly Phrase OpenedLaterRemedy = new("opened-in-the-future.remedy", "correct the date");
    private static readonly Phrase NegativeUses = new("negative-uses", "'{stock}' has been used {uses} times");
    private static readonly Phrase NegativeUsesRemedy = new("negative-uses.remedy", "write 0 for fresh stock");

    private static readonly Phrase Unseen =
        new("spent-fluid-unseen", "'{stock}' has been used {uses} times, but nothing says whether it is clear and what its pH is");

    private static readonly Phrase UnseenRemedy = new("spent-fluid-unseen.remedy", "look at it, measure its pH, and note both");
    private static readonly Phrase BadWear = new("impossible-wear", "'{stock}' lasts {lasts} uses and has seen {seen}");
    private static readonly Phrase BadWearRemedy = new("impossible-wear.remedy", "a piece lasts one use or more, and a worn-out one is taken off the stock");
    private static readonly Phrase TwoCurrencies = new("two-currencies.packs", "the packs of '{stock}' are priced in {currencies: and }");
    private static readonly Phrase TwoCurrenciesRemedy = new("two-currencies.packs.remedy", "price them all in one currency");
    private static readonly Phrase NoPrice = new("pack-without-price", "the pack of {size:amount} has no price; it is never bought");
    private static readonly Phrase NoPriceRemedy = new("pack-without-price.remedy", "write what one pack costs, for example '12.50 EUR'");
    private static readonly Phrase NegativePrice = new("negative-price.pack", "the pack of {size:amount} costs {price}");
    private static readonly Phrase NegativePriceRemedy = new("negative-price.pack.remedy", "write 0 or more");
    private static readonly Phrase EmptyPack = new("empty-pack", "a pack holds {size:amount}");
    private static readonly Phrase EmptyPackRemedy = new("empty-pack.remedy", "write what one pack holds");
    private static readonly Phrase NegativeLead = new("negative-lead-time", "the pack of {size:amount} arrives {days} days after the order");
    private static readonly Phrase NegativeLeadRemedy = new("negative-lead-time.remedy", "write 0 or more days");
    private static readonly Phrase OtherPack = new("pack-of-another-kind", "a pack of '{stock}' is not measured as its stock of {amount:amount} is");
    private static readonly Phrase OtherPackRemedy = new(
        "pack-of-another-kind.remedy", "give the stock and its packs all by volume, all by mass or all by number");

    /// <summary>Makes the validator.</summary>
    /// <param name="day">The day on which the stock would be used; null where that is not known, and only its own dates can be held against each other.</param>
    public StockItemValidator(LocalDate? day)
    {
        LocalDate On(StockItem item) => day ?? item.Expires ?? item.OpenedOn ?? LocalDate.MinIsoValue;
        Include(new StockLimits());
        RuleFor(i => i.Id).Must(id => !string.IsNullOrWhiteSpace(id)).Says(NoId.Id, _ => NoId, _ => NoIdRemedy);
        RuleFor(i => i.Substance).Must(s => !string.IsNullOrWhiteSpace(s)).Says(NoSubstance.Id, i => NoSubstance.With(Id(i)), _ => NoSubstanceRemedy);
        RuleFor(i => i.OnHand).Must(a => a.Units >= 0).Says(Negative.Id, i => Negative.With(Id(i), i.OnHand.Fact("amount")), _ => NegativeRemedy);
        RuleFor(i => i.OnHand).Must((i, a) => a.Kind == AmountKind.Count == (i.Kind is StockKind.Consumable or StockKind.Tool))
            .Says(OtherKind.Id, i => OtherKind.With(Id(i), ("kind", Word(i.Kind)), i.OnHand.Fact("amount")), _ => OtherKindRemedy);
        RuleFor(i => i.Strength).Must((i, _) => i.IsStrengthKnown)
            .Says(NoStrength.Id, i => NoStrength.With(Id(i), ("substance", i.Substance)), _ => NoStrengthRemedy).WithSeverity(Severity.Warning);
        RuleFor(i => i.Expires).Must((i, _) => !i.IsExpired(On(i)))
            .Says(Expired.Id, i => Expired.With(Id(i), ("last", i.Expires ?? On(i)), ("on", On(i))), _ => ExpiredRemedy).WithSeverity(Severity.Warning);
        RuleFor(i => i.OpenedOn).Must((i, d) => d is null || d <= On(i))
            .Says(OpenedLater.Id, i => OpenedLater.With(Id(i), ("opened", i.OpenedOn ?? On(i)), ("on", On(i))), _ => OpenedLaterRemedy);
        RuleFor(i => i.Uses).Must(n => n >= 0).Says(NegativeUses.Id, i => NegativeUses.With(Id(i), ("uses", i.Uses)), _ => NegativeUsesRemedy);
        RuleFor(i => i.Uses).Must((i, n) => n == 0 || i.Spent is not null || i.Kind != StockKind.Fluid)
            .Says(Unseen.Id, i => Unseen.With(Id(i), ("uses", i.Uses)), _ => UnseenRemedy).WithSeverity(Severity.Warning);
        RuleFor(i => i.Wear).Must(w => w is null or { LastsUses: >= 1, UsedSoFar: >= 0 } && (w is null || w.UsedSoFar < w.LastsUses))
            .Says(BadWear.Id, i => BadWear.With(Id(i), ("lasts", i.Wear?.LastsUses ?? 0), ("seen", i.Wear?.UsedSoFar ?? 0)), _ => BadWearRemedy);
        RuleFor(i => i.Packs).Must((i, packs) => Currencies(i).Count() <= 1)
            .Says("two-currencies", i => TwoCurrencies.With(Id(i), Argument.Texts("currencies", Currencies(i))), _ => TwoCurrenciesRemedy);
        RuleForEach(i => i.Packs).ChildRules(pack =>
        {
            pack.RuleFor(p => p.Price).Must(p => p is not null)
                .Says(NoPrice.Id, p => NoPrice.With(p.Size.Fact("size")), _ => NoPriceRemedy).WithSeverity(Severity.Warning);
            pack.RuleFor(p => p.Price).Must(p => p is null or { Minor: >= 0 })
                .Says("negative-price", p => NegativePrice.With(p.Size.Fact("size"), ("price", p.Price!)), _ => NegativePriceRemedy);
            pack.RuleFor(p => p.Size).Must(s => s.Units > 0).Says(EmptyPack.Id, p => EmptyPack.With(p.Size.Fact("size")), _ => EmptyPackRemedy);
            pack.RuleFor(p => p.LeadDays).Must(d => d >= 0)
                .Says(NegativeLead.Id, p => NegativeLead.With(p.Size.Fact("size"), ("days", p.LeadDays)), _ => NegativeLeadRemedy);
        });
        RuleForEach(i => i.Packs).Must((i, p) => p.Size.Kind == i.OnHand.Kind)
            .Says(OtherPack.Id, i => OtherPack.With(Id(i), i.OnHand.Fact("amount")), _ => OtherPackRemedy);
    }

    private static Argument Id(StockItem item) => Argument.Id("stock", item.Id);

    private static IEnumerable<string> Currencies(StockItem item) => item.Packs.Where(p => p.Price is not null).Select(p => p.Price!.Currency).Distinct();

    private static Phrase Word(StockKind kind) => Words.At((int)kind);

    private static readonly Phrase[] Words =
        [new("stock-kind.fluid", "fluid"), new("stock-kind.salt", "salt"), new("stock-kind.consumable", "consumable"), new("stock-kind.tool", "tool")];
}
