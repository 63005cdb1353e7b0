using System.Globalization;

namespace Protocolist.Properties;

/// <summary>Cultures in which careless code breaks: the Turkish i, the decimal comma, another minus sign and calendar.</summary>
internal static class Cultures
{
    public static IEnumerable<CultureInfo> Awkward { get; } = [new("tr-TR"), new("de-DE"), new("ar-SA")];

    public static T Under<T>(CultureInfo culture, Func<T> work)
    {
        var before = (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture);
        try
        {
            (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture) = (culture, culture);
            return work();
        }
        finally
        {
            (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture) = before;
        }
    }
}
