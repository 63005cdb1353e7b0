using System.Collections.Immutable;
using NodaTime;
using Protocolist.Findings;
using Protocolist.Formulas;
using Protocolist.Plans;
using Protocolist.Protocols;
using Protocolist.Specimens;

namespace Protocolist.Planning.Drafting;

/// <summary>The settings of a stage that a step is made from, each in its place.</summary>
internal enum StageKey
{
    After, BelowBrim, Changes, Closure, Count, Depth, Dose, Every, Fluid, HandsOn, Last, Length, On, OverSpecimen, Ratio, Renew, Running, Side,
    SinceCollection, SinceDeath, Spacing, Temperature, To, Wait, Within, WrittenWith,
}

/// <summary>A setting of a stage, and the figure that it becomes.</summary>
internal sealed record PreparedSetting(Expression Expression, FigureOrigin Origin)
{
    /// <summary>For what looks nothing up.</summary>
    public static FormulaInputs Nothing { get; } = new FormulaInputs([]);

    /// <summary>The figure where it is the same for every specimen, whatever is chosen; else null.</summary>
    public Figure? Constant { get; } = Origin.Inputs.IsEmpty ? Origin.Of(Expression.Evaluate(Nothing)) : null;

    public Figure Figure(FormulaInputs inputs) => Constant ?? Origin.Of(Expression.Evaluate(inputs));
}

/// <summary>
/// A stage of a protocol, ready to become a step of any specimen: texts as messages, settings by their places. Made once for a protocol. Immutable.
/// </summary>
internal sealed record PreparedStage
{
    private static readonly ImmutableArray<(StageKey Key, string Word)> Words =
    [
        .. Enum.GetValues<StageKey>().Select(k => (k, Reading.EnumWords<StageKey>.Of(k))),
    ];

    /// <summary>What the terms of a step are made of.</summary>
    private static readonly ImmutableArray<StageKey> TermKeys =
    [
        StageKey.Changes, StageKey.HandsOn, StageKey.Last, StageKey.Ratio, StageKey.SinceCollection, StageKey.SinceDeath, StageKey.Wait, StageKey.Within,
    ];

    private static readonly Phrase Called = new("watch.sign", "{sign} ({meaning}): {action}");

    private static readonly Phrase Look = new("care-look", "{title}: {look:; }");

    private readonly ImmutableArray<sbyte> _at;

    /// <summary>By what a kind of body forbids; empty where no remedy does anything that a kind forbids.</summary>
    private ImmutableArray<(Gestures Forbids, PreparedStage Stage)> Gentle { get; init; }

    private PreparedStage(StageDefinition definition, ImmutableArray<PreparedSetting> settings)
    {
        (Id, Kind, Source, Span, Settings) = (definition.Id, definition.Kind, definition.Source, definition.Span, settings);
        _at = [.. Words.Select(w => (sbyte)settings.ToList().FindIndex(s => s.Origin.Id == $"{definition.Id}.{w.Word}"))];
        FigureIds = [.. settings.Select(s => s.Origin.Id)];
        if (!Has(StageKey.Wait) && !Has(StageKey.Within) && !Has(StageKey.SinceDeath) && !Has(StageKey.SinceCollection))
            UsualLimits = StageDefaults.Within(Kind) is { } within ? new(Duration.Zero, within, null, null) : StepLimits.None;
        When = definition.Expression("when");
        Title = Message.Text(definition.Title);
        How = Message.Text(definition.Text("how") ?? "");
        Note = Message.Text(definition.Text("note") ?? "");
        Cautions = [.. definition.Texts("cautions").Select(Message.Text)];
        Watch = definition.Find("watch") as WatchSetting;
        LookFor = [.. definition.Texts("look-for").Select(Message.Text), .. (Watch?.Signs ?? []).Select(s => Told(s.Sign, s.Remedy))];
        Round = RoundOf(Title);
        Sites = definition.Find("sites") as SitesSetting;
        Places = definition.Texts("places");
        PlacesSpan = definition.Find("places")?.Span ?? Span;
        Fields = definition.Texts("fields");
        Covers = CoverageWords.Of(definition.Texts("covers"));
        Of = definition.Text("of") ?? "";
        if (TermKeys.All(k => !Has(k) || settings[PlaceOf(k)].Constant is not null) && Watch?.Every.Names().Any() is not true)
            Terms = new StageValues(this, [.. settings.Select(s => s.Constant)]).Terms(PreparedSetting.Nothing);
        Gentle = Watch is not { } watch
            ? []
            :
            [
                .. BodyKind.Forbidden.Where(f => watch.Signs.Any(s => (s.Remedy.Gestures & f) != 0))
                    .Select(f => (f, Gently(watch, f, definition.Texts("look-for")))),
            ];
    }

    /// <summary>The same stage for a kind of body that forbids what some of its remedies do.</summary>
    public PreparedStage For(Gestures forbidden)
    {
        foreach (var (forbids, stage) in Gentle)
        {
            if (forbids == forbidden) return stage;
        }

        return this;
    }

    private PreparedStage Gently(WatchSetting watch, Gestures forbids, IEnumerable<string> lookFor)
    {
        var gentle = watch with { Signs = [.. watch.Signs.Select(s => s with { Remedy = s.Remedy.For(forbids) })] };
        ImmutableArray<Message> look = [.. lookFor.Select(Message.Text), .. gentle.Signs.Select(s => Told(s.Sign, s.Remedy))];
        return this with
        {
            Watch = gentle,
            LookFor = look,
            Round = Look.With(("title", Title), Argument.Messages("look", look)),
            Terms = Terms is { Watch: { } every } terms ? terms with { Watch = (every.Every, gentle.Signs) } : Terms,
            Gentle = [],
        };
    }

    public string Id
    {
        get;
        init => (field, VolumeId) = (value, $"{value}.volume");
    }

    /// <summary>The id of the figure of its volume.</summary>
    public string VolumeId { get; private init; } = "";

    public StageKind Kind { get; }

    /// <summary>Where its numbers come from; empty where nothing is said.</summary>
    public string Source { get; }

    public SourceSpan Span { get; }

    /// <summary>Only then is it part of a plan; null for always.</summary>
    public Expression? When { get; }

    /// <summary>Quantities, fluids and words, in the order of their keys.</summary>
    public ImmutableArray<PreparedSetting> Settings { get; }

    /// <summary>The ids of their figures.</summary>
    public ImmutableArray<string> FigureIds { get; }

    public Message Title { get; }

    public Message How { get; }

    public Message Note { get; }

    public ImmutableArray<Message> Cautions { get; }

    /// <summary>What to look at, and what each sign calls for.</summary>
    public ImmutableArray<Message> LookFor { get; private init; }

    /// <summary>A round of care in words: what is done, and what to look at.</summary>
    public Message Round { get; private init; }

    /// <summary>When it may begin, where the protocol says nothing of it.</summary>
    public StepLimits? UsualLimits { get; }

    /// <summary>What it asks of a step where that is the same for every specimen, whatever is chosen; else null.</summary>
    public StepTerms? Terms { get; private init; }

    public WatchSetting? Watch { get; private init; }

    public SitesSetting? Sites { get; }

    public ImmutableArray<string> Places { get; }

    public SourceSpan PlacesSpan { get; }

    public ImmutableArray<string> Fields { get; }

    /// <summary>What it declares to see to besides.</summary>
    public Coverage Covers { get; }

    public string Of { get; }

    public static PreparedStage From(StageDefinition stage) => new(
        stage,
        [
            .. stage.Settings.OfType<ExpressionSetting>().Where(s => s.Key != "when").OrderBy(s => s.Key, StringComparer.Ordinal)
                .Select(s => new PreparedSetting(s.Expression, FigureOrigin.Of($"{stage.Id}.{s.Key}", s.Expression, stage.Source, "", s.Span))),
        ]);

    /// <summary>Where a setting stands among <see cref="Settings"/>; below 0 where the stage does not have it.</summary>
    public int PlaceOf(StageKey key) => _at[(int)key];

    /// <summary>Whether the stage has a setting.</summary>
    public bool Has(StageKey key) => PlaceOf(key) >= 0;

    /// <summary>The round of a step that is called otherwise.</summary>
    public Message RoundOf(Message title) => LookFor.IsEmpty ? title : Look.With(("title", title), Argument.Messages("look", LookFor));

    private static Message Told(Sign sign, Remedy remedy) => Called.With(("sign", sign.Word), ("meaning", sign.Meaning), ("action", remedy.Meaning));
}
