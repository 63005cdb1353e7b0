using System.Globalization;
using Protocolist.Findings;
using Protocolist.Plans;
using Protocolist.Reading.Csv;

namespace Protocolist.Sheets;

/// <summary>What to buy, as comma-separated values that a spreadsheet opens without running anything.</summary>
public static class ShoppingList
{
    private static readonly string[] Heading = ["item", "pack", "count", "price", "currency", "lead days", "for"];

    /// <summary>Writes the list of one plan.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="language">The language of what cells say, English where none is given; headings stay words for programs.</param>
    /// <returns>A heading and one row a pack size.</returns>
    public static string Write(Plan plan, Language? language = null)
    {
        WholePlan.ThrowIfIncomplete(plan);
        return Write(plan.Purchases, language);
    }

    /// <summary>Writes a list of purchases.</summary>
    /// <param name="purchases">The purchases.</param>
    /// <param name="language">The language of what cells say, English where none is given.</param>
    /// <returns>A heading and one row a pack size.</returns>
    public static string Write(IEnumerable<PlannedPurchase> purchases, Language? language = null)
    {
        ArgumentNullException.ThrowIfNull(purchases);
        using var text = new StringWriter(CultureInfo.InvariantCulture);
        CsvWriter.WriteRow(text, Heading);
        foreach (var purchase in purchases)
        {
            if (purchase is null or { For.IsDefault: true }) throw new ArgumentException("A purchase, or what it is for, is missing.", nameof(purchases));
            CsvWriter.WriteRow(text,
            [
                purchase.Item.ToString(language ?? Language.English),
                purchase.Pack.ToString(),
                purchase.Count.ToString(CultureInfo.InvariantCulture),
                purchase.Price?.Amount.ToString(CultureInfo.InvariantCulture) ?? "",
                purchase.Price?.Currency ?? "",
                purchase.LeadDays.ToString(CultureInfo.InvariantCulture),
                string.Join(' ', purchase.For),
            ]);
        }

        return text.ToString();
    }
}
