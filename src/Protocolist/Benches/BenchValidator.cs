using FluentValidation;
using NodaTime;
using Protocolist.Benches.Disposal;
using Protocolist.Benches.Stock;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Quantities;
using Protocolist.Reading;
using Protocolist.Vessels;
using UnitsNet;
using static System.FormattableString;

namespace Protocolist.Benches;

/// <summary>What is wrong with a bench, whether it was read from a file or made by a program.</summary>
internal sealed class BenchValidator : AbstractValidator<Bench>
{
    private const int MostPeople = 100;
    private const int MostInUse = 100_000;
    private const int MostFixativeUses = 100;

    /// <summary>Sums of money with a rate of it stay whole coins.</summary>
    private const decimal HighestRate = 1_000_000;

    private static readonly Phrase NotWhole = new("bad-number.bench", "'{key}' must be a whole number from {least} to {most}, not '{number}'");
    private static readonly Phrase NotWholeRemedy = new(
        "bad-number.bench.remedy", "write digits only, within those bounds; where it is not known, leave it out");
    private static readonly Phrase BearsNothing = new("impossible-amount.shelf", "a shelf that bears nothing is no shelf");
    private static readonly Phrase BearsNothingRemedy = new(
        "impossible-amount.shelf.remedy", "give what one place of it bears, such as 60 kg, or leave it out");
    private static readonly Phrase ColdestIsHotter = new("reversed-range.temperatures", "the coldest day is hotter than the hottest");
    private static readonly Phrase ColdestIsHotterRemedy = new("reversed-range.temperatures.remedy", "swap 'coldest' and 'hottest'");
    private static readonly Phrase AbsurdTemperature = new("absurd-temperature", "'{key}' is {temperature}");
    private static readonly Phrase AbsurdTemperatureRemedy = new("absurd-temperature.remedy", "check the unit and the sign");
    private static readonly Phrase NoRoom = new("impossible-amount.room", "a room of {space} is no room");
    private static readonly Phrase NoRoomRemedy = new("impossible-amount.room.remedy", "give its volume, such as 60 m3");
    private static readonly Phrase NegativeChanges = new("impossible-amount.air", "air cannot be changed {times} times an hour");
    private static readonly Phrase NegativeChangesRemedy = new("impossible-amount.air.remedy", "give 0 or more");
    private static readonly Phrase UnknownCurrency = new("unknown-currency.bench", "'{currency}' is not the code of a currency");
    private static readonly Phrase UnknownCurrencyRemedy = new("unknown-currency.bench.remedy", "give its ISO 4217 code, such as EUR");
    private static readonly Phrase UnpaidByTime = new("priced-by-another-measure.labour", "work is paid by time, and {price} is no price for that");
    private static readonly Phrase UnpaidByTimeRemedy = new("priced-by-another-measure.labour.remedy", "give a price by the hour, as 18 EUR/h");
    private static readonly Phrase AbsurdLabour = new("absurd-price.labour", "work cannot cost {price}");
    private static readonly Phrase AbsurdLabourRemedy = new("absurd-price.labour.remedy", "check the figure and the currency");
    private static readonly Phrase UnknownRateCurrency = new("unknown-currency.rate", "'{code}' is not the code of a currency");
    private static readonly Phrase UnknownRateCurrencyRemedy = new("unknown-currency.rate.remedy", "give its ISO 4217 code, such as USD");
    private static readonly Phrase BadRate = new("bad-rate", "'{rate}' is not a rate of exchange");
    private static readonly Phrase BadRateRemedy = new("bad-rate.remedy", "write how much of the bench's currency one of it buys, as 0.92");
    private static readonly Phrase ContainerByHalves = new(
        "container-without-price.bench", "the container for {class} waste needs both what it holds and what it costs full");
    private static readonly Phrase ContainerByHalvesRemedy = new("container-without-price.bench.remedy", "give both, 0 or more");
    private static readonly Phrase TwoItems = new("duplicate-stock", "two stock items are called '{item}'");
    private static readonly Phrase OneNameForTwo = new("duplicate-stock.alike", "'{first}' and '{second}' are the same name in a plan");
    private static readonly Phrase TwoItemsRemedy = new("duplicate-stock.remedy", "give one of them another id");
    private static readonly Phrase TwoVessels = new("duplicate-vessel", "two vessels are called '{vessel}'");
    private static readonly Phrase TwoVesselsRemedy = new("duplicate-vessel.remedy", "give one of them another id, or a 'count'");
    private static readonly Phrase UnknownInUse = new("unknown-vessel.in-use", "the bench has no vessel '{vessel}' that could be in use");
    private static readonly Phrase UnknownInUseRemedy = new("unknown-vessel.in-use.remedy", "give the id of one of its vessels");
    private static readonly Phrase TooManyInUse = new("more-in-use-than-there-are", "{count} of '{id}' are said to be in use, and there are {there}");
    private static readonly Phrase TooManyInUseRemedy = new("more-in-use-than-there-are.remedy", "count them");

    public BenchValidator(SubstanceCatalogue substances)
    {
        RuleFor(b => b.Name).IsLine();
        RuleFor(b => b.People).InclusiveBetween(1, MostPeople).Says("bad-number", (_, n) => Whole("people", n, MostPeople), NotWholeRemedy);
        RuleFor(b => b.ShelfBears).Must(m => m is not { } mass || (mass.Kilograms > 0 && double.IsFinite(mass.Kilograms)))
            .Says("impossible-amount", _ => BearsNothing, _ => BearsNothingRemedy);
        Temperatures();
        Air();
        Prices();
        Waste();
        Stock(substances);
        Vessels();
        RuleForEach(b => b.Opening.Closed).ChildRules(days =>
        {
            days.RuleFor(d => (LocalDate?)d.First).IsSane();
            days.RuleFor(d => (LocalDate?)d.Last).IsSane();
        });
        RuleForEach(b => b.Opening.Extra).ChildRules(extra => extra.RuleFor(e => (LocalDate?)e.Date).IsSane());
    }

    private void Temperatures()
    {
        RuleFor(b => b.Temperatures).Must(t => !(t.Coldest > t.Hottest)).Says("reversed-range", _ => ColdestIsHotter, _ => ColdestIsHotterRemedy);
        RuleFor(b => b.Temperatures.Room).Must(IsEarthly).Says("absurd-temperature", (_, t) => Said("room", t), AbsurdTemperatureRemedy);
        RuleFor(b => b.Temperatures.Cold).Must(IsEarthly).Says("absurd-temperature", (_, t) => Said("cold", t), AbsurdTemperatureRemedy);
        RuleFor(b => b.Temperatures.Coldest).Must(IsEarthly).Says("absurd-temperature", (_, t) => Said("coldest", t), AbsurdTemperatureRemedy);
        RuleFor(b => b.Temperatures.Hottest).Must(IsEarthly).Says("absurd-temperature", (_, t) => Said("hottest", t), AbsurdTemperatureRemedy);

        // People work and jars stand between these; outside them the fluids' tables end too.
        static bool IsEarthly(Temperature t) => t.DegreesCelsius is >= -30 and <= 60;
        static Message Said(string key, Temperature t) => AbsurdTemperature.With(("key", key), ("temperature", t));
    }

    private void Air() => When(b => b.Air is not null, () =>
    {
        RuleFor(b => b.Air!.Room).Must(v => v.CubicMeters > 0 && double.IsFinite(v.CubicMeters))
            .Says("impossible-amount", (_, v) => NoRoom.With(("space", v)), NoRoomRemedy);
        RuleFor(b => b.Air!.ChangesPerHour).Must(n => n >= 0 && double.IsFinite(n))
            .Says("impossible-amount", (_, n) => NegativeChanges.With(("times", n)), NegativeChangesRemedy);
    });

    private void Prices()
    {
        RuleFor(b => b.Currency).Must(c => c is null || Money.MinorUnits(c) is not null)
            .Says("unknown-currency", (_, c) => UnknownCurrency.With(("currency", Excerpt.Of(c))), UnknownCurrencyRemedy);
        RuleFor(b => b.Labour).Must(p => p is null or { Per: PriceUnit.Hour or PriceUnit.Minute })
            .Says("priced-by-another-measure", (_, p) => UnpaidByTime.With(("price", p!.ToString())), UnpaidByTimeRemedy);
        RuleFor(b => b.Labour).Must(p => p is null or { Rate: <= StockLimits.MostPrice })
            .Says("absurd-price", (_, p) => AbsurdLabour.With(("price", p!.ToString())), AbsurdLabourRemedy);
        RuleForEach(b => b.ExchangeRates).Must(r => Money.MinorUnits(r.Key) is not null)
            .Says("unknown-currency", (_, r) => UnknownRateCurrency.With(("code", Excerpt.Of(r.Key))), UnknownRateCurrencyRemedy);
        RuleForEach(b => b.ExchangeRates).Must(r => r.Value is > 0 and < HighestRate)
            .Says("bad-rate", (_, r) => BadRate.With(("rate", Invariant($"{r.Value}"))), BadRateRemedy);
        RuleForEach(b => b.DisposalPrices).Custom((price, context) =>
        {
            if (DisposalReader.Misfit(EnumWords<WasteClass>.Of(price.Key), Disposal.Waste.IsSolid(price.Key), price.Value) is { } fault)
                context.AddFailure(ValidatorFindings.Failure(fault, context.PropertyPath));
        });
    }

    private void Waste()
    {
        RuleForEach(b => b.WasteRules.Containers.Values).IsLine();
        RuleForEach(b => b.WasteRules.DrainPermits.Values).IsLine();
        RuleFor(b => b.WasteRules.FixativeKeptIn).IsLine();
        RuleFor(b => b.WasteRules.FixativeUses).InclusiveBetween(1, MostFixativeUses)
            .Says("bad-number", (_, n) => Whole("uses", n, MostFixativeUses), NotWholeRemedy);
        RuleForEach(b => b.WasteRules.ContainerPrices).Must(c => c.Value is { Holds.Units: > 0, Price: { Minor: >= 0, Amount: <= StockLimits.MostPrice } })
            .Says("container-without-price", (_, c) => ContainerByHalves.With(("class", EnumWords<WasteClass>.Of(c.Key))), ContainerByHalvesRemedy);
    }

    private void Stock(SubstanceCatalogue substances)
    {
        RuleForEach(b => b.Stock).SetValidator(new StockItemValidator(null));
        RuleFor(b => b.Stock).Custom((stock, context) =>
        {
            var seen = new Dictionary<string, string>(StringComparer.Ordinal);
            foreach (var (i, item) in stock.Index().Where(s => s.Item is { Id.Length: > 0, Substance: not null }))
            {
                // Salts, fluids and things stand in one list of a plan, under ids without capitals and signs.
                if (!seen.TryAdd(item.PlanId, item.Id))
                {
                    var fault = Finding.Error("duplicate-stock", Twice(seen[item.PlanId], item.Id), TwoItemsRemedy);
                    context.AddFailure(ValidatorFindings.Failure(fault, Invariant($"Stock[{i}].Id")));
                }

                // A fluid of unknown strength is left out with a warning; the rest of the bench serves.
                if (item.Kind != StockKind.Fluid || !item.IsStrengthKnown) continue;
                foreach (var finding in Fluid.Read($"{item.Substance} {item.Strength}".TrimEnd(), known: substances).Findings)
                    context.AddFailure(ValidatorFindings.Failure(finding, Invariant($"Stock[{i}].Substance")));
            }
        });

        static Message Twice(string first, string second) => first == second
            ? TwoItems.With(("item", Excerpt.Of(first)))
            : OneNameForTwo.With(("first", Excerpt.Of(first)), ("second", Excerpt.Of(second)));
    }

    private void Vessels()
    {
        RuleForEach(b => b.Vessels).SetValidator(new VesselValidator());
        RuleFor(b => b.Vessels).Custom((vessels, context) =>
        {
            var seen = new HashSet<string>(StringComparer.Ordinal);
            foreach (var (i, vessel) in vessels.Index().Where(v => v.Item.Id is { Length: > 0 }))
            {
                if (seen.Add(vessel.Id)) continue;
                var fault = Finding.Error("duplicate-vessel", TwoVessels.With(("vessel", Excerpt.Of(vessel.Id))), TwoVesselsRemedy);
                context.AddFailure(ValidatorFindings.Failure(fault, Invariant($"Vessels[{i}].Id")));
            }
        });
        RuleForEach(b => b.VesselsInUse).ChildRules(use =>
        {
            use.RuleFor(u => u.Until).IsSane();
            use.RuleFor(u => u.Count).InclusiveBetween(1, MostInUse).Says("bad-number", (_, n) => Whole("count", n, MostInUse), NotWholeRemedy);
        });
        RuleForEach(b => b.VesselsInUse).Must((bench, use) => Find(bench, use) is not null)
            .Says("unknown-vessel", (_, use) => UnknownInUse.With(("vessel", Excerpt.Of(use.VesselId))), UnknownInUseRemedy);
        RuleForEach(b => b.VesselsInUse).Must((bench, use) => !(Find(bench, use)?.Count < use.Count)).Says(
            "more-in-use-than-there-are",
            (bench, use) => TooManyInUse.With(("count", use.Count), ("id", use.VesselId), ("there", Find(bench, use)!.Count)),
            TooManyInUseRemedy).WithSeverity(FluentValidation.Severity.Warning);

        static Vessel? Find(Bench bench, VesselInUse use) => bench.Vessels.FirstOrDefault(v => v.Id == use.VesselId);
    }

    private static Message Whole(string key, int number, int most) => NotWhole.With(("key", key), ("least", 1), ("most", most), ("number", number));
}
