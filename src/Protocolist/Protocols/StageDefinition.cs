using System.Collections.Immutable;
using Protocolist.Findings;

namespace Protocolist.Protocols;

/// <summary>One stage of a protocol with its settings by key.</summary>
internal sealed record StageDefinition(StageKind Kind, string Id, ImmutableDictionary<string, Setting> Settings, SourceSpan Span)
{
    public string Title => Text("title") ?? Id;

    /// <summary>Where its numbers come from; empty where nothing is said.</summary>
    public string Source => Text("source") ?? "";

    public Setting? Find(string key) => Settings.GetValueOrDefault(key);

    public Expression? Expression(string key) => (Find(key) as ExpressionSetting)?.Expression;

    public string? Text(string key) => (Find(key) as TextSetting)?.Texts[0];

    public ImmutableArray<string> Texts(string key) => (Find(key) as TextSetting)?.Texts ?? [];
}

/// <summary>One setting of a stage.</summary>
internal abstract record Setting(string Key, SourceSpan Span)
{
    /// <summary>What in it depends on the specimen or the choices.</summary>
    public virtual IEnumerable<Expression> Expressions() => [];
}

/// <summary>A quantity, condition, fluid or word that depends on the specimen or the choices.</summary>
internal sealed record ExpressionSetting(string Key, Expression Expression, SourceSpan Span) : Setting(Key, Span)
{
    public override IEnumerable<Expression> Expressions() => [Expression];
}

/// <summary>Text as it stands, or several.</summary>
internal sealed record TextSetting(string Key, ImmutableArray<string> Texts, SourceSpan Span) : Setting(Key, Span);

/// <summary>For each region the volume injected at one site.</summary>
internal sealed record SitesSetting(string Key, ImmutableArray<(string Region, Expression PerSite)> Sites, SourceSpan Span) : Setting(Key, Span)
{
    public override IEnumerable<Expression> Expressions() => Sites.Select(s => s.PerSite);
}

/// <summary>How often to look, and what each sign calls for.</summary>
internal sealed record WatchSetting(string Key, Expression Every, ImmutableArray<(string Sign, string Remedy)> Signs, SourceSpan Span) : Setting(Key, Span)
{
    public override IEnumerable<Expression> Expressions() => [Every];
}
