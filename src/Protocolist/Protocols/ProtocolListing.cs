using System.Collections.Immutable;
using Protocolist.Findings;

namespace Protocolist.Protocols;

/// <summary>A protocol with all it inherits, line by line, each with the place it came from.</summary>
internal static class ProtocolListing
{
    /// <summary>Lists a protocol.</summary>
    /// <param name="protocol">The protocol.</param>
    /// <returns>Lines in the order of the file: class, choices, values, stages with their settings.</returns>
    public static ImmutableArray<ListedLine> Of(Protocol protocol)
    {
        ArgumentNullException.ThrowIfNull(protocol);
        var lines = ImmutableArray.CreateBuilder<ListedLine>();
        lines.Add(new(0, "protocol", protocol.ToString(), protocol.Span));
        lines.Add(new(0, "title", protocol.Title, default));
        if (protocol.IsForSpecimens) lines.Add(new(0, "for", protocol.ClassText, default));
        foreach (var caution in protocol.Cautions) lines.Add(new(0, "caution", caution, default));
        foreach (var choice in protocol.Choices) lines.Add(new(0, $"choice {choice.Name}", string.Join(", ", choice.Options), default));
        foreach (var value in protocol.Values)
            lines.Add(new(0, $"value {value.Name}", value.Expression.Text + (value.Source.Length > 0 ? $" ({value.Source})" : ""), value.Span));
        foreach (var stage in protocol.Stages)
        {
            lines.Add(new(0, StageGrammar.Of(stage.Kind).Word, $"{stage.Id}: {stage.Title}", stage.Span));
            foreach (var setting in stage.Settings.Where(s => s.Key != "title").OrderBy(s => s.Key, StringComparer.Ordinal))
                lines.Add(new(1, setting.Key, TextOf(setting), setting.Span));
        }

        return lines.DrainToImmutable();
    }

    private static string TextOf(Setting setting) => setting switch
    {
        ExpressionSetting s => s.Expression.Text,
        TextSetting s => string.Join("; ", s.Texts),
        SitesSetting s => string.Join("; ", s.Sites.Select(x => $"{x.Region}: {x.PerSite.Text}")),
        WatchSetting s => $"every {s.Every.Text}: {string.Join("; ", s.Signs.Select(x => $"{x.Sign.Word}: {x.Remedy.Word}"))}",
        _ => "",
    };
}

/// <summary>One line of a listed protocol.</summary>
/// <param name="Depth">How far it is indented.</param>
/// <param name="Key">What it is.</param>
/// <param name="Text">What it says.</param>
/// <param name="Where">The file, line and column it came from; unknown for what has several.</param>
internal sealed record ListedLine(int Depth, string Key, string Text, SourceSpan Where);
