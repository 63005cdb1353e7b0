using FluentValidation;
using NodaTime;
using Protocolist.Findings;

namespace Protocolist.Reading;

/// <summary>Dates that a museum can mean. Beyond them lies a slip of the keyboard, and sums with dates at the ends of the calendar fail.</summary>
internal static class Calendar
{
    private const int FirstYear = 1600;
    private const int LastYear = 2500;

    public const string Id = "absurd-date";
    public const string Remedy = "check the year";

    public static bool Has(LocalDate date) => date.Year is >= FirstYear and <= LastYear;

    public static bool Has(Instant moment) => Has(moment.InUtc().Date);

    public static string Message(int year) => $"the year {year} lies outside {FirstYear} to {LastYear}";

    /// <summary>Says of a date in a file that nobody can mean it.</summary>
    public static Finding Fault(int year, SourceSpan where) => Finding.Error(Id, Message(year), Remedy, where);

    /// <summary>Of an object: a date between those years.</summary>
    public static void IsSane<T>(this IRuleBuilder<T, LocalDate?> rule) =>
        rule.Must(d => d is not { } date || Has(date)).WithErrorCode(Id).WithMessage((_, d) => Message(d!.Value.Year)).WithState(_ => Remedy);

    /// <summary>The same for a moment.</summary>
    public static void IsSane<T>(this IRuleBuilder<T, Instant?> rule) =>
        rule.Must(m => m is not { } moment || Has(moment)).WithErrorCode(Id).WithMessage((_, m) => Message(m!.Value.InUtc().Year)).WithState(_ => Remedy);
}
