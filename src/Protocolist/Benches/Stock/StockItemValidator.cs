using System.Collections.Immutable;
using System.Globalization;
using FluentValidation;
using NodaTime;
using Protocolist.Findings;
using Protocolist.Reading;
using Severity = FluentValidation.Severity;

namespace Protocolist.Benches.Stock;

/// <summary>Checks one <see cref="StockItem"/>: error codes are finding ids, the state of a failure is its remedy.</summary>
/// <remarks>What makes a bottle unusable (expired, strength unknown) is a warning here, because a plan that does not need it may start; drawing from the shelf leaves it out.</remarks>
public sealed class StockItemValidator : AbstractValidator<StockItem>
{
    private static readonly Phrase StockIdTwice = new("stock-id-twice", "two stock items are called '{item}'");
    private static readonly Phrase StockIdTwiceRemedy = new("stock-id-twice.remedy", "give each bottle a name of its own");

    /// <summary>Makes the validator.</summary>
    /// <param name="on">The day on which the stock would be used.</param>
    public StockItemValidator(LocalDate on)
    {
        RuleFor(i => i.Id).Must(id => !string.IsNullOrWhiteSpace(id)).As("stock-without-id", _ => "a stock item has no id", "give it a short name in kebab-case");
        RuleFor(i => i.Substance).Must(s => !string.IsNullOrWhiteSpace(s)).As("stock-without-substance", i => $"'{i.Id}' does not say what it is", "name the fluid, salt or thing, for example 'ethanol 96 %vol'");
        RuleFor(i => i.OnHand).Must(a => a.Units >= 0).As("negative-stock", i => $"'{i.Id}' has {i.OnHand} on hand", "count what is there; write 0 when it is used up");
        RuleFor(i => i.OnHand).Must((i, a) => a.Kind == AmountKind.Count == (i.Kind is StockKind.Consumable or StockKind.Tool))
            .As("amount-of-another-kind", i => $"'{i.Id}' is a {Word(i.Kind)}, but its amount is {i.OnHand}", "give fluids by volume or mass, salts by mass, things by number");
        RuleFor(i => i.Strength).Must((i, _) => i.IsStrengthKnown)
            .As("unknown-strength", i => $"nobody can tell how strong '{i.Id}' ({i.Substance}) is; it is left out", "read its label or measure its density, and write the strength, for example '37 %mass'", Severity.Warning);
        RuleFor(i => i.Expires).Must((i, _) => !i.IsExpired(on))
            .As("expired-stock", i => $"'{i.Id}' expired on {Day(i.Expires)}, before {Day(on)}; it is left out", "discard it as waste of its class, or write the new date if it was tested", Severity.Warning);
        RuleFor(i => i.OpenedOn).Must(d => d is null || d <= on).As("opened-in-the-future", i => $"'{i.Id}' is said to be opened on {Day(i.OpenedOn)}, after {Day(on)}", "correct the date");
        RuleFor(i => i.Uses).Must(n => n >= 0).As("negative-uses", i => $"'{i.Id}' has been used {i.Uses.ToString(CultureInfo.InvariantCulture)} times", "write 0 for fresh stock");
        RuleFor(i => i.Uses).Must((i, n) => n == 0 || i.Spent is not null || i.Kind != StockKind.Fluid)
            .As("spent-fluid-unseen", i => $"'{i.Id}' has been used {i.Uses} times, but nothing says whether it is clear and what its pH is", "look at it, measure its pH, and note both", Severity.Warning);
        RuleFor(i => i.Wear).Must(w => w is null or { LastsUses: >= 1, UsedSoFar: >= 0 } && (w is null || w.UsedSoFar < w.LastsUses))
            .As("impossible-wear", i => string.Create(CultureInfo.InvariantCulture, $"'{i.Id}' lasts {i.Wear?.LastsUses} uses and has seen {i.Wear?.UsedSoFar}"), "a piece lasts one use or more, and a worn-out one is taken off the stock");
        RuleFor(i => i.Packs).Must((i, packs) => packs.Where(p => p.Price is not null).Select(p => p.Price!.Currency).Distinct().Count() <= 1)
            .As("two-currencies", i => $"the packs of '{i.Id}' are priced in {string.Join(" and ", i.Packs.Where(p => p.Price is not null).Select(p => p.Price!.Currency).Distinct())}", "price them all in one currency");
        RuleForEach(i => i.Packs).ChildRules(pack =>
        {
            pack.RuleFor(p => p.Price).Must(p => p is not null).As("pack-without-price", p => $"the pack of {p.Size} has no price; it is never bought", "write what one pack costs, for example '12.50 EUR'", Severity.Warning);
            pack.RuleFor(p => p.Price).Must(p => p is null or { Minor: >= 0 }).As("negative-price", p => $"the pack of {p.Size} costs {p.Price}", "write 0 or more");
            pack.RuleFor(p => p.Size).Must(s => s.Units > 0).As("empty-pack", p => $"a pack holds {p.Size}", "write what one pack holds");
            pack.RuleFor(p => p.LeadDays).Must(d => d >= 0).As("negative-lead-time", p => $"the pack of {p.Size} arrives {p.LeadDays.ToString(CultureInfo.InvariantCulture)} days after the order", "write 0 or more days");
        });
        RuleForEach(i => i.Packs).Must((i, p) => p.Size.Kind == i.OnHand.Kind)
            .As("pack-of-another-kind", i => $"a pack of '{i.Id}' is not measured as its stock of {i.OnHand} is", "give the stock and its packs all by volume, all by mass or all by number");
    }

    /// <summary>Checks an item and says what was found in the house's own terms.</summary>
    /// <param name="item">The item.</param>
    /// <param name="on">The day on which the stock would be used.</param>
    /// <returns>Findings, each at the item's place; the path of the property, such as <c>Packs[1].Price</c>, is their subject.</returns>
    public static ImmutableArray<Finding> Check(StockItem item, LocalDate on) =>
    [
        .. new StockItemValidator(on).Validate(item).Errors.Select(failure => ValidatorFindings.Of(failure) with { Where = item.Where, Subject = failure.PropertyName }),
        .. item.Spent?.Doubts(item) ?? [],
    ];

    /// <summary>Checks a whole bench's stock: each item, and that no two share an id.</summary>
    /// <param name="items">The items.</param>
    /// <param name="on">The day on which the stock would be used.</param>
    /// <returns>Findings in the order of the items; <c>stock-id-twice</c> stands at the second one.</returns>
    public static ImmutableArray<Finding> Check(IEnumerable<StockItem> items, LocalDate on)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        return [.. items.SelectMany(i => seen.Add(i.Id) ? Check(i, on)
            : Check(i, on).Add(Finding.Error("stock-id-twice", StockIdTwice.With(("item", i.Id)), StockIdTwiceRemedy, i.Where)))];
    }

    private static string Day(LocalDate? day) => day?.ToString("uuuu'-'MM'-'dd", CultureInfo.InvariantCulture) ?? "";

    private static string Word(StockKind kind) => kind.ToString().ToLowerInvariant();
}

/// <summary>A rule's id, message and remedy in one call.</summary>
internal static class StockRules
{
    public static IRuleBuilderOptions<T, TProperty> As<T, TProperty>(this IRuleBuilderOptions<T, TProperty> rule, string id, Func<T, string> message, string remedy, Severity severity = Severity.Error) =>
        rule.WithErrorCode(id).WithMessage(message).WithState(_ => remedy).WithSeverity(severity);
}
