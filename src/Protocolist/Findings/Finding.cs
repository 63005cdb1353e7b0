using System.Collections.Immutable;
using System.Text;

namespace Protocolist.Findings;

/// <summary>One thing that the checks have to say about an input or a plan. Immutable; safe to share between threads.</summary>
/// <param name="Id">A kebab-case name that explains itself, such as <c>mixed-buffering</c>. It never changes its meaning.</param>
/// <param name="Severity">How much it weighs.</param>
/// <param name="Message">What is the case, with this input's own numbers.</param>
/// <param name="Remedy">What to do about it; empty only where the message says it already.</param>
public sealed record Finding(string Id, Severity Severity, Message Message, Message Remedy)
{
    private readonly ValueList<string> _figures = [];

    /// <summary>The place in the input file, where there is one.</summary>
    public SourceSpan Where { get; init; }

    /// <summary>What it is about within a plan: a step's or a figure's id; empty where it concerns the whole.</summary>
    public string Subject { get; init; } = "";

    /// <summary>The ids of the plan's figures that it rests on; empty where it rests on none.</summary>
    public ImmutableArray<string> Figures { get => _figures; init => _figures = value; }

    /// <summary>Where its rule or limit comes from; empty for a fault of a file.</summary>
    public string Source { get; init; } = "";

    /// <summary>Makes an error.</summary>
    /// <param name="id">The kebab-case id.</param>
    /// <param name="message">What is the case.</param>
    /// <param name="remedy">What to do.</param>
    /// <param name="where">The place, where known.</param>
    /// <returns>A finding of <see cref="Severity.Error"/>.</returns>
    public static Finding Error(string id, Message message, Message remedy, SourceSpan where = default) =>
        new(id, Severity.Error, message, remedy) { Where = where };

    /// <summary>Makes a warning.</summary>
    /// <param name="id">The kebab-case id.</param>
    /// <param name="message">What is the case.</param>
    /// <param name="remedy">What to do.</param>
    /// <param name="where">The place, where known.</param>
    /// <returns>A finding of <see cref="Severity.Warning"/>.</returns>
    public static Finding Warning(string id, Message message, Message remedy, SourceSpan where = default) =>
        new(id, Severity.Warning, message, remedy) { Where = where };

    /// <summary>Makes a note.</summary>
    /// <param name="id">The kebab-case id.</param>
    /// <param name="message">What is the case.</param>
    /// <param name="remedy">What to do, if anything.</param>
    /// <param name="where">The place, where known.</param>
    /// <returns>A finding of <see cref="Severity.Note"/>.</returns>
    public static Finding Note(string id, Message message, Message remedy = default, SourceSpan where = default) =>
        new(id, Severity.Note, message, remedy) { Where = where };

    /// <summary>One line: place, severity, id, message, remedy.</summary>
    /// <returns>Text such as <c>a.yaml:3:9: error unknown-value: 'reech' is not defined here; did you mean 'reach'?</c></returns>
    public override string ToString() => ToString(Language.English);

    /// <summary>The same in a language.</summary>
    /// <param name="language">The language; what it lacks is said in English.</param>
    /// <returns>One line.</returns>
    public string ToString(Language language)
    {
        ArgumentNullException.ThrowIfNull(language);
        var text = new StringBuilder();
        if (Where.IsKnown || !string.IsNullOrEmpty(Where.File)) text.Append(Where.ToString()).Append(": ");
        text.Append(language.Of(SeverityWords.Of(Severity))).Append(' ').Append(Id).Append(": ").Append(Message.ToString(language));
        if (!Remedy.IsEmpty) text.Append("; ").Append(Remedy.ToString(language));
        return ShownText.Line(text.ToString());
    }
}
