using System.Collections.Immutable;
using Protocolist.Findings;

namespace Protocolist.Protocols;

/// <summary>One stage of a protocol with its settings, in the order of the grammar.</summary>
internal sealed record StageDefinition(StageKind Kind, string Id, ImmutableArray<Setting> Settings, SourceSpan Span)
{
    public string Title => Text("title") ?? Id;

    /// <summary>Where its numbers come from; empty where nothing is said.</summary>
    public string Source => Text("source") ?? "";

    public Setting? Find(string key)
    {
        // A dozen at most: looking through them is quicker than any table.
        foreach (var setting in Settings)
        {
            if (string.Equals(setting.Key, key, StringComparison.Ordinal)) return setting;
        }

        return null;
    }

    public Expression? Expression(string key) => (Find(key) as ExpressionSetting)?.Expression;

    public string? Text(string key) => (Find(key) as TextSetting)?.Texts[0];

    /// <summary>The same stage under another id and title.</summary>
    public StageDefinition Named(string id, string title) =>
        this with { Id = id, Settings = [.. Settings.Where(s => s.Key != "title"), new TextSetting("title", [title], Span)] };

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
internal sealed record WatchSetting(string Key, Expression Every, ImmutableArray<(Sign Sign, Remedy Remedy)> Signs, SourceSpan Span) : Setting(Key, Span)
{
    public override IEnumerable<Expression> Expressions() => [Every];
}
