using FluentValidation;
using FluentValidation.Results;
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

    /// <summary>Sums of money with a rate of it stay whole coins.</summary>
    private const decimal HighestRate = 1_000_000;

    public BenchValidator()
    {
        RuleFor(b => b.Name).IsLine();
        RuleFor(b => b.People).InclusiveBetween(1, MostPeople)
            .As("bad-number", b => Invariant($"'people' must be a whole number from 1 to {MostPeople}, not '{b.People}'"), "write digits only");
        RuleFor(b => b.ShelfBears).Must(m => m is not { } mass || mass.Kilograms > 0 && double.IsFinite(mass.Kilograms))
            .As("impossible-amount", _ => "a shelf that bears nothing is no shelf", "give what one place of it bears, such as 60 kg, or leave it out");
        Temperatures();
        Air();
        Prices();
        Waste();
        Stock();
        Vessels();
        RuleForEach(b => b.Opening.Closed).ChildRules(days =>
        {
            days.RuleFor(d => (NodaTime.LocalDate?)d.First).IsSane();
            days.RuleFor(d => (NodaTime.LocalDate?)d.Last).IsSane();
        });
        RuleForEach(b => b.Opening.Extra).ChildRules(extra => extra.RuleFor(e => (NodaTime.LocalDate?)e.Date).IsSane());
    }

    private void Temperatures()
    {
        RuleFor(b => b.Temperatures).Must(t => !(t.Coldest > t.Hottest)).As("reversed-range", _ => "the coldest day is hotter than the hottest", "swap 'coldest' and 'hottest'");
        RuleFor(b => b.Temperatures.Room).Must(IsEarthly).As("absurd-temperature", b => Says("room", b.Temperatures.Room), "check the unit and the sign");
        RuleFor(b => b.Temperatures.Cold).Must(IsEarthly).As("absurd-temperature", b => Says("cold", b.Temperatures.Cold), "check the unit and the sign");
        RuleFor(b => b.Temperatures.Coldest).Must(IsEarthly).As("absurd-temperature", b => Says("coldest", b.Temperatures.Coldest), "check the unit and the sign");
        RuleFor(b => b.Temperatures.Hottest).Must(IsEarthly).As("absurd-temperature", b => Says("hottest", b.Temperatures.Hottest), "check the unit and the sign");

        // People work and jars stand between these; outside them the fluids' tables end too.
        static bool IsEarthly(Temperature t) => t.DegreesCelsius is >= -30 and <= 60;
        static string Says(string key, Temperature t) => $"'{key}' is {Measurable.Text(t.Kelvins, Dimension.OfTemperature)}";
    }

    private void Air() => When(b => b.Air is not null, () =>
    {
        RuleFor(b => b.Air!.Room).Must(v => v.CubicMeters > 0 && double.IsFinite(v.CubicMeters))
            .As("impossible-amount", b => $"a room of {Measurable.Text(b.Air!.Room.CubicMeters, Dimension.OfVolume)} is no room", "give its volume, such as 60 m3");
        RuleFor(b => b.Air!.ChangesPerHour).Must(n => n >= 0 && double.IsFinite(n))
            .As("impossible-amount", b => Invariant($"air cannot be changed {b.Air!.ChangesPerHour} times an hour"), "give 0 or more");
    });

    private void Prices()
    {
        RuleFor(b => b.Currency).Must(c => c is null || Money.MinorUnits(c) is not null)
            .As("unknown-currency", b => $"'{Excerpt.Of(b.Currency)}' is not the code of a currency", "give its ISO 4217 code, such as EUR");
        RuleFor(b => b.Labour).Must(p => p is null or { Per: PriceUnit.Hour or PriceUnit.Minute })
            .As("priced-by-another-measure", b => $"work is paid by time, and {b.Labour} is no price for that", "give a price by the hour, as 18 EUR/h");
        RuleFor(b => b.Labour).Must(p => p is null or { Rate: <= StockItemValidator.MostPrice }).As("absurd-price", b => $"work cannot cost {b.Labour}", "check the figure and the currency");
        RuleForEach(b => b.ExchangeRates).Must(r => Money.MinorUnits(r.Key) is not null)
            .As("unknown-currency", (_, r) => $"'{Excerpt.Of(r.Key)}' is not the code of a currency", "give its ISO 4217 code, such as USD");
        RuleForEach(b => b.ExchangeRates).Must(r => r.Value is > 0 and < HighestRate)
            .As("bad-rate", (_, r) => Invariant($"'{r.Value}' is not a rate of exchange"), "write how much of the bench's currency one of it buys, as 0.92");
        RuleForEach(b => b.DisposalPrices).Custom((price, context) =>
        {
            if (DisposalReader.Misfit(EnumWords<WasteClass>.Of(price.Key), DisposalReader.IsSolid(price.Key), price.Value) is { } fault) context.AddFailure(Failure(context.PropertyPath, fault));
        });
    }

    private void Waste()
    {
        RuleForEach(b => b.WasteRules.Containers.Values).IsLine();
        RuleForEach(b => b.WasteRules.DrainPermits.Values).IsLine();
        RuleFor(b => b.WasteRules.FixativeKeptIn).IsLine();
        RuleFor(b => b.WasteRules.FixativeUses).InclusiveBetween(1, 100)
            .As("bad-number", b => Invariant($"'uses' must be a whole number from 1 to 100, not '{b.WasteRules.FixativeUses}'"), "write digits only");
        RuleForEach(b => b.WasteRules.ContainerPrices).Must(c => c.Value is { Holds.Units: > 0, Price: { Minor: >= 0, Amount: <= StockItemValidator.MostPrice } })
            .As("container-without-price", (_, c) => $"the container for {EnumWords<WasteClass>.Of(c.Key)} waste needs both what it holds and what it costs full", "give both, 0 or more");
    }

    private void Stock()
    {
        RuleForEach(b => b.Stock).SetValidator(new StockItemValidator(null));
        RuleFor(b => b.Stock).Custom((stock, context) =>
        {
            var seen = new Dictionary<string, string>(StringComparer.Ordinal);
            foreach (var (i, item) in stock.Index().Where(s => s.Item is { Id.Length: > 0, Substance: not null }))
            {
                if (!seen.TryAdd(item.PlanId, item.Id)) context.AddFailure(Failure(Invariant($"Stock[{i}].Id"), ("duplicate-stock", Twice(seen[item.PlanId], item.Id), "give one of them another id")));

                // A fluid of unknown strength is left out with a warning; the rest of the bench serves.
                if (item.Kind != StockKind.Fluid || !item.IsStrengthKnown) continue;
                foreach (var finding in Fluid.Read($"{item.Substance} {item.Strength}".TrimEnd()).Findings)
                    context.AddFailure(Failure(Invariant($"Stock[{i}].Substance"), (finding.Id, finding.Message, finding.Remedy), finding.Severity));
            }
        });

        static string Twice(string first, string second) =>
            first == second ? $"two stock items are called '{Excerpt.Of(first)}'" : $"'{Excerpt.Of(first)}' and '{Excerpt.Of(second)}' are the same name in a plan";
    }

    private void Vessels()
    {
        RuleForEach(b => b.Vessels).SetValidator(new VesselValidator());
        RuleFor(b => b.Vessels).Custom((vessels, context) =>
        {
            var seen = new HashSet<string>(StringComparer.Ordinal);
            foreach (var (i, vessel) in vessels.Index().Where(v => v.Item is { Id.Length: > 0 }))
                if (!seen.Add(vessel.Id)) context.AddFailure(Failure(Invariant($"Vessels[{i}].Id"), ("duplicate-vessel", $"two vessels are called '{Excerpt.Of(vessel.Id)}'", "give one of them another id, or a 'count'")));
        });
        RuleForEach(b => b.VesselsInUse).ChildRules(use =>
        {
            use.RuleFor(u => u.Until).IsSane();
            use.RuleFor(u => u.Count).InclusiveBetween(1, MostInUse)
                .As("bad-number", u => Invariant($"'count' must be a whole number from 1 to {MostInUse}, not '{u.Count}'"), "write digits only");
        });
        RuleForEach(b => b.VesselsInUse).Must((bench, use) => bench.Vessels.Any(v => v.Id == use.VesselId))
            .As("unknown-vessel", (_, use) => $"the bench has no vessel '{Excerpt.Of(use.VesselId)}' that could be in use", "give the id of one of its vessels");
        RuleForEach(b => b.VesselsInUse).Must((bench, use) => !bench.Vessels.Any(v => v.Id == use.VesselId && use.Count > v.Count))
            .As(
                "more-in-use-than-there-are",
                (bench, use) => Invariant($"{use.Count} of '{use.VesselId}' are said to be in use, and there are {bench.Vessels.First(v => v.Id == use.VesselId).Count}"),
                "count them",
                FluentValidation.Severity.Warning);
    }

    private static ValidationFailure Failure(string path, (string Id, string Message, string Remedy) fault, Findings.Severity severity = Findings.Severity.Error) => new(path, fault.Message)
    {
        ErrorCode = fault.Id,
        CustomState = fault.Remedy,
        Severity = severity switch { Findings.Severity.Error => FluentValidation.Severity.Error, Findings.Severity.Warning => FluentValidation.Severity.Warning, _ => FluentValidation.Severity.Info },
    };
}
