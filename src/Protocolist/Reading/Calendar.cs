using FluentValidation;
using NodaTime;
using Protocolist.Findings;

namespace Protocolist.Reading;

/// <summary>Dates that a museum can mean. Beyond them lies a slip of the keyboard, and sums with dates at the ends of the calendar fail.</summary>
internal static class Calendar
{
    private const int FirstYear = 1600;
    private const int LastYear = 2500;

    private static readonly Phrase Absurd = new("absurd-date", "the year {year} lies outside {first} to {last}");
    private static readonly Phrase AbsurdRemedy = new("absurd-date.remedy", "check the year");

    public static bool Has(LocalDate date) => date.Year is >= FirstYear and <= LastYear;

    public static bool Has(Instant moment) => Has(moment.InUtc().Date);

    /// <summary>Says of a date in a file that nobody can mean it.</summary>
    public static Finding Fault(int year, SourceSpan where = default) => Finding.Error("absurd-date", Message(year), AbsurdRemedy, where);

    /// <summary>Of an object: a date between those years.</summary>
    public static void IsSane<T>(this IRuleBuilder<T, LocalDate?> rule) =>
        rule.Must(d => d is not { } date || Has(date)).Says("absurd-date", (_, d) => Message(d!.Value.Year), AbsurdRemedy);

    /// <summary>The same for a moment.</summary>
    public static void IsSane<T>(this IRuleBuilder<T, Instant?> rule) =>
        rule.Must(m => m is not { } moment || Has(moment)).Says("absurd-date", (_, m) => Message(m!.Value.InUtc().Year), AbsurdRemedy);

    private static Message Message(int year) => Absurd.With(
        ("year", year.ToString(System.Globalization.CultureInfo.InvariantCulture)), ("first", FirstYear), ("last", LastYear));
}
