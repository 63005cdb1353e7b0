using System.Text.Encodings.Web;
using System.Text.Json;
using Protocolist.Findings;
using Protocolist.Planning.Batching;

namespace Protocolist.Cli.Commands;

/// <summary>A joint shopping list as JSON.</summary>
internal static class ShoppingJson
{
    private static readonly JsonWriterOptions Indented = new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    public static string Of(JointList list)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, Indented))
        {
            json.WriteStartObject();
            json.WriteStartArray("purchases");
            foreach (var purchase in list.Purchases)
            {
                json.WriteStartObject();
                json.WriteString("item", purchase.Item.ToString());
                json.WriteString("pack", purchase.Pack.ToString());
                json.WriteNumber("count", purchase.Count);
                CompareJson.Money(json, "price", purchase.Price);
                if (purchase.Price is { } price) json.WriteString("currency", price.Currency);
                json.WriteNumber("leadDays", purchase.LeadDays);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            CompareJson.Money(json, "cost", list.Cost);
            CompareJson.Money(json, "apartAtLeast", list.ApartAtLeast);
            if (list.Cost is { } cost) json.WriteString("currency", cost.Currency);
            json.WriteStartArray("findings");
            foreach (var finding in list.Findings) CompareJson.Finding(json, finding);
            json.WriteEndArray();
            json.WriteEndObject();
        }

        return ShownText.Lines(System.Text.Encoding.UTF8.GetString(stream.ToArray())) + "\n";
    }
}
