using System.Collections.Immutable;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Protocols;
using Protocolist.Quantities;
using Protocolist.Rules;
using Protocolist.Specimens;
using Protocolist.Specimens.Fixation;
using UnitsNet;
using Duration = NodaTime.Duration;

namespace Protocolist.Proving;

/// <summary>
/// What the order of stages could get wrong on some route: fluids unfit for the group, alcohol in too big a step, nothing to keep the specimen in, fixation
/// too short.
/// </summary>
internal sealed class RouteClaims(Subject subject, FluidWords words)
{
    private static readonly Phrase Acid = new("acid-on-calcareous.route", "'{stage}' puts {fluid}, which turns acid, on {group:a}, which has {lime} of lime");
    private static readonly Phrase Shell = new("acid-on-calcareous.route-shell", "a shell or skeleton");
    private static readonly Phrase Spicules = new("acid-on-calcareous.route-spicules", "spicules or ossicles");
    private static readonly Phrase NotAcid = new("acid-on-calcareous.route.remedy", "use alcohol, or buffered formalin and only briefly");
    private static readonly Phrase Dissolving = new(
        "formalin-on-spicules.route",
        "'{stage}' puts {fluid} on {group:a}, which is named by spicules or ossicles that dissolve as formalin ages");

    private static readonly Phrase NotFormalin = new(
        "formalin-on-spicules.route.remedy",
        "use alcohol, or say in 'note' why formalin will do here and for how long");

    private static readonly Phrase Shrinking = new(
        "alcohol-on-gelatinous.route",
        "'{stage}' puts {fluid} on {group:a}, which is mostly jelly and shrinks in alcohol");

    private static readonly Phrase NotAlcohol = new(
        "alcohol-on-gelatinous.route.remedy",
        "fix and keep it in buffered formalin, or say in 'note' why alcohol will do here");

    private static readonly Phrase TooBig = new(
        "too-big-a-step.route",
        "'{stage}' goes from {from:0.#} to {to:0.#} %vol at once for {who}; up to {usual:0} points is usual");

    private static readonly Phrase Between = new("too-big-a-step.route.remedy", "put a bath of a strength between before it, or say in 'note' why it may");
    private static readonly Phrase TwoBufferings = new("mixed-buffering.route", "'{stage}' uses {fluid} after '{first}' used {first-fluid}, for {who}");
    private static readonly Phrase OneThroughout = new("mixed-buffering.route.remedy", "use one buffering throughout, best as a choice that every stage names");
    private static readonly Phrase EndsEarly = new(
        "fixation-too-short.route",
        "{stages:'and} may end after {least} for {who}, and formalin needs {needed} at best to reach and bind its middle ({depth} in)");

    private static readonly Phrase Longer = new(
        "fixation-too-short.route.remedy",
        "let it last longer, slit or inject the body, or say in 'note' why it is enough");

    private static readonly Phrase OptionLeadsNowhere = new(
        "leads-nowhere.option",
        "with {choice} '{option}' the specimen ends in no fluid: no 'house' stage runs");

    private static readonly Phrase RunOrRemove = new("leads-nowhere.option.remedy", "let a 'house' stage run for it, or remove the option");
    private static readonly Phrase LeadsNowhere = new("leads-nowhere", "{who} ends in no fluid: no 'house' stage runs");
    private static readonly Phrase Somebody = new("leads-nowhere.somebody", "some specimen of the class");
    private static readonly Phrase AddHouse = new("leads-nowhere.remedy", "add a stage 'house' with the fluid that it is kept in");

    private readonly ImmutableHashSet<string> _choices = [.. subject.Protocol.Choices.Select(c => "choice." + c.Name)];

    public IEnumerable<Finding> Findings()
    {
        var nowhere = new List<Route>();
        var distinct = subject.Routes.GroupBy(r => (r.Words, r.Stages)).ToList();
        foreach (var route in distinct.Select(g => g.MaxBy(r => r.Part.Stretch.High)!))
        {
            if (route.Part.Witnesses.LastOrDefault() is not { } body) continue;
            var at = subject.At(route.Part, route.Part.Witnesses.Length - 1, route.Words, 0);
            var fluids = route.Stages
                .Where(s => s.Expression("fluid") is not null)
                .Select(s => (Stage: s, Fluid: words.Read(at.Evaluate(s.Expression("fluid")!).Word).Value))
                .ToList();

            // A fluid that nobody can make has its own finding; what follows from it would be guesswork.
            if (fluids.Exists(f => f.Fluid is null)) continue;
            var steps = fluids.FindAll(f => f.Stage.Kind == StageKind.Inject || Climb.Counts(f.Stage.Kind)).ConvertAll(f => (f.Stage, f.Fluid!));
            Message who() => subject.Describe(body, route.Words, _choices);
            foreach (var finding in Unfit(steps, at).Concat(Climbing(steps, who)).Concat(Mixed(steps, who))) yield return finding;
            if (!steps.Any(s => s.Stage.Kind == StageKind.House)) nowhere.Add(route);
            else if (TooShort(route, steps, body, at, who) is { } tooShort) yield return tooShort;
        }

        foreach (var finding in Nowhere(nowhere)) yield return finding;
    }

    private static SourceSpan PlaceOf(StageDefinition stage) => stage.Expression("fluid")!.Span;

    /// <summary>Of the warnings only the first stage on a route speaks, and its note answers for those that follow.</summary>
    private IEnumerable<Finding> Unfit(List<(StageDefinition Stage, Fluid Fluid)> steps, Case at)
    {
        var (group, name) = (subject.Group, (Argument)("group", subject.Group.Name));
        foreach (var (stage, fluid) in steps)
        {
            var lime = AcidOnLime.Dissolves(group, fluid);
            if (lime == Lime.None) continue;
            var message = Acid.With(Argument.Id("stage", stage.Id), ("fluid", fluid.Name), name, ("lime", lime == Lime.Shell ? Shell : Spicules));
            yield return Finding.Error(AcidOnLime.Id, message, NotAcid, PlaceOf(stage));
        }

        var dissolving = steps.Find(s => group.IsSpiculate && SpiculesInFormalin.Suffers(group, s.Fluid, s.Stage.Kind == StageKind.House, Lasts(s.Stage, at)));
        if (dissolving is { Stage: { } fixing } && fixing.Text("note") is null)
        {
            var message = Dissolving.With(Argument.Id("stage", fixing.Id), ("fluid", dissolving.Fluid.Name), name);
            yield return Finding.Warning(SpiculesInFormalin.Id, message, NotFormalin, PlaceOf(fixing));
        }

        if (steps.Find(s => JellyInAlcohol.Shrinks(group, s.Fluid)) is { Stage: { } shrinking } alcohol && shrinking.Text("note") is null)
        {
            var message = Shrinking.With(Argument.Id("stage", shrinking.Id), ("fluid", alcohol.Fluid.Name), name);
            yield return Finding.Warning(JellyInAlcohol.Id, message, NotAlcohol, PlaceOf(shrinking));
        }
    }

    private static IEnumerable<Finding> Climbing(List<(StageDefinition Stage, Fluid Fluid)> steps, Func<Message> who)
    {
        var body = default(Ascent);
        foreach (var (stage, fluid) in steps)
        {
            if (!Climb.Counts(stage.Kind)) continue;
            var rise = body.To(stage.Kind, fluid.AlcoholVolumePercent);
            body = body.In(stage.Kind, rise.To);

            // A body that goes unfixed into alcohol is told of in its plan.
            if (!rise.IsTooBig || !body.WasFixed || stage.Text("note") is not null) continue;
            var message = TooBig.With(Argument.Id("stage", stage.Id), ("from", rise.From), ("to", rise.To), ("who", who()), ("usual", rise.Usual));
            yield return Finding.Warning(Climb.Id, message, Between, PlaceOf(stage));
        }
    }

    private static IEnumerable<Finding> Mixed(List<(StageDefinition Stage, Fluid Fluid)> steps, Func<Message> who)
    {
        var first = steps.Find(s => s.Fluid.HasFormaldehyde);
        if (first.Stage is null || steps.Find(s => OneBuffering.Clash(first.Fluid, s.Fluid)) is not { Stage: { } other } odd) yield break;
        var message = TwoBufferings.With(
            Argument.Id("stage", other.Id),
            ("fluid", odd.Fluid.Name),
            Argument.Id("first", first.Stage.Id),
            ("first-fluid", first.Fluid.Name),
            ("who", who()));
        yield return Finding.Error(OneBuffering.Id, message, OneThroughout, PlaceOf(other));
    }

    /// <summary>Only bodies left whole and taken out of formalin: needle and knife shorten the way, and in formalin fixation goes on.</summary>
    private static Finding? TooShort(Route route, List<(StageDefinition Stage, Fluid Fluid)> steps, BodyMeasure body, Case at, Func<Message> who)
    {
        var soaks = steps.FindAll(s => s.Stage.Kind == StageKind.Immerse);
        if (soaks.Count == 0 || !soaks[0].Fluid.HasFormaldehyde || steps[^1].Fluid.HasFormaldehyde || soaks[0].Stage.Text("note") is not null) return null;
        if (route.Stages.Any(s => s.Kind is StageKind.Inject or StageKind.Slit)) return null;
        if (BodyFixation.Of(body, null, null, Fixative.Formaldehyde, BenchTemperatures.Usual.Room.DegreesCelsius).Value is not { } model) return null;
        var least = Math.Max(0, soaks.Sum(s => Lasts(s.Stage, at).Low));
        if (!FixationTime.IsTooShort(new(least, double.PositiveInfinity, Dimension.OfTime), model)) return null;
        var message = EndsEarly.With(
            Argument.Ids("stages", soaks.Select(s => s.Stage.Id)),
            Argument.Of("least", least, Dimension.OfTime),
            ("who", who()),
            ("needed", Duration.FromHours(model.Time.LowHours)),
            ("depth", Length.FromMillimeters(model.Slowest.DepthMm)));
        return Finding.Warning(FixationTime.Id, message, Longer, soaks[0].Stage.Expression("last")!.Span);
    }

    private static QuantityRange Lasts(StageDefinition stage, Case at) =>
        stage.Expression("last") is { } last ? at.Evaluate(last).Quantity : new(0, 0, Dimension.OfTime);

    /// <summary>Routes on which the specimen ends in nothing. Blamed on an option where that option alone leads there.</summary>
    private IEnumerable<Finding> Nowhere(List<Route> routes)
    {
        if (routes.Count == 0) yield break;
        foreach (var choice in subject.Protocol.Choices)
        {
            var name = "choice." + choice.Name;
            foreach (var option in choice.Options)
            {
                var leads = subject.Words.Where(w => w.Find(name) == option).All(w => routes.Exists(r => r.Words == w));
                if (!leads || routes.Select(r => r.Words.Find(name)).Distinct(StringComparer.Ordinal).Count() == choice.Options.Length) continue;
                var message = OptionLeadsNowhere.With(Argument.Id("choice", choice.Name), ("option", option));
                yield return Finding.Error("leads-nowhere", message, RunOrRemove, subject.PlaceOf(choice.Name, option));
                yield break;
            }
        }

        var route = routes[0];
        Argument who = route.Part.Witnesses.LastOrDefault() is { } body ? ("who", subject.Describe(body, route.Words, _choices)) : ("who", Somebody);
        yield return Finding.Error("leads-nowhere", LeadsNowhere.With(who), AddHouse, subject.Protocol.Span);
    }
}
