using System.Net;
using System.Text;
using Protocolist.Findings;

namespace Protocolist.Sheets;

/// <summary>HTML in the making. Everything that is not markup of this project's own goes through <see cref="Escaped"/>.</summary>
internal sealed class HtmlText(Language language)
{
    private readonly StringBuilder text = new();

    public Language Language => language;

    public string Said(Message message) => message.ToString(language);

    /// <summary>Text as text: no mark of it is markup, and nothing of it is obeyed.</summary>
    public static string Escaped(string plain) => WebUtility.HtmlEncode(ShownText.Lines(plain.Replace("\r\n", "\n", StringComparison.Ordinal)));

    /// <summary>Markup of this project's own, with nothing of a plan in it.</summary>
    public HtmlText Raw(string markup)
    {
        text.Append(markup).Append('\n');
        return this;
    }

    public HtmlText Element(string tag, Message content, string attributes = "") => Element(tag, Said(content), attributes);

    public HtmlText Element(string tag, string content, string attributes = "")
    {
        text
            .Append('<')
            .Append(tag)
            .Append(attributes.Length > 0 ? " " : "")
            .Append(attributes)
            .Append('>')
            .Append(Escaped(content))
            .Append("</")
            .Append(tag)
            .Append(">\n");
        return this;
    }

    public HtmlText List(IEnumerable<Message> items, string attributes = "") => List(items.Select(Said), attributes);

    /// <summary>A list; nothing where it would be empty.</summary>
    public HtmlText List(IEnumerable<string> items, string attributes = "")
    {
        var all = items.ToList();
        if (all.Count == 0) return this;
        text.Append("<ul").Append(attributes.Length > 0 ? " " : "").Append(attributes).Append(">\n");
        foreach (var item in all) Element("li", item);
        return Raw("</ul>");
    }

    /// <summary>A table with a caption, headed columns and headed rows, so that a screen reader can say where it is; nothing where it would be empty.</summary>
    public HtmlText Table(Message caption, IReadOnlyList<Phrase> heading, IEnumerable<IReadOnlyList<string>> rows)
    {
        var all = rows.ToList();
        if (all.Count == 0) return this;
        Raw("<table>").Element("caption", caption).Raw("<thead><tr>");
        foreach (var cell in heading) Element("th", (Message)cell, "scope=\"col\"");
        Raw("</tr></thead>").Raw("<tbody>");
        foreach (var row in all)
        {
            Raw("<tr>").Element("th", row[0], "scope=\"row\"");
            foreach (var cell in row.Skip(1)) Element("td", cell);
            Raw("</tr>");
        }

        return Raw("</tbody>").Raw("</table>");
    }

    public override string ToString() => text.ToString();
}
