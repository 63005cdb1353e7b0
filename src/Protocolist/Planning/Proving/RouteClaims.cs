using System.Collections.Immutable;
using System.Globalization;
using Protocolist.Benches;
using Protocolist.Checks.Fluids;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Protocols;
using Protocolist.Quantities;
using Protocolist.Specimens;
using Protocolist.Specimens.Fixation;

namespace Protocolist.Planning.Proving;

/// <summary>What the order of stages could get wrong on some route: fluids unfit for the group, alcohol in too big a step, nothing to keep the specimen in, fixation too short.</summary>
internal sealed class RouteClaims(Subject subject)
{
    private readonly Dictionary<string, Fluid?> _fluids = new(StringComparer.Ordinal);
    private readonly ImmutableHashSet<string> _choices = [.. subject.Protocol.Choices.Select(c => "choice." + c.Name)];

    public IEnumerable<Finding> Findings()
    {
        var nowhere = new List<Route>();
        var distinct = subject.Routes.GroupBy(r => (r.Words, string.Join('|', r.Stages.Select(s => s.Id)))).ToList();
        foreach (var route in distinct.Select(g => g.MaxBy(r => r.Part.Stretch.High)!))
        {
            if (route.Part.Witnesses.LastOrDefault() is not { } body) continue;
            var at = subject.At(route.Part, route.Part.Witnesses.Length - 1, route.Words, 0);
            var steps = route.Stages.Select(s => (Stage: s, Fluid: FluidOf(s, at))).Where(s => s.Fluid is not null && s.Stage.Kind is StageKind.Inject or StageKind.Immerse or StageKind.Wash or StageKind.Bath or StageKind.House).Select(s => (s.Stage, Fluid: s.Fluid!)).ToList();

            // A fluid that nobody can make has its own finding; what follows from it would be guesswork.
            if (route.Stages.Any(s => s.Expression("fluid") is not null && FluidOf(s, at) is null)) continue;
            var who = subject.Describe(body, route.Words, _choices);
            foreach (var finding in Unfit(steps).Concat(Climb(steps, who)).Concat(Mixed(steps, who))) yield return finding;
            if (!steps.Any(s => s.Stage.Kind == StageKind.House)) nowhere.Add(route);
            else if (TooShort(route, steps, body, at, who) is { } tooShort) yield return tooShort;
        }

        foreach (var finding in Nowhere(nowhere)) yield return finding;
    }

    private Fluid? FluidOf(StageDefinition stage, Case at)
    {
        if (stage.Expression("fluid") is not { } expression) return null;
        var name = at.Evaluate(expression).Word;
        return _fluids.TryGetValue(name, out var known) ? known : _fluids[name] = Fluid.Read(name, expression.Span).Value;
    }

    private static SourceSpan PlaceOf(StageDefinition stage) => stage.Expression("fluid")!.Span;

    /// <summary>Of the warnings only the first stage on a route speaks, and its note answers for those that follow.</summary>
    private IEnumerable<Finding> Unfit(List<(StageDefinition Stage, Fluid Fluid)> steps)
    {
        var (group, name) = (subject.Group, Phrases.One(subject.Group.Name));
        if (group.IsCalcareous || group.IsSpiculate)
        {
            foreach (var (stage, fluid) in steps.Where(s => s.Fluid is { HasFormaldehyde: true, Buffering: Buffering.None }))
                yield return Finding.Error("acid-on-calcareous", $"'{stage.Id}' puts {fluid.Name}, which turns acid, on {name}, which has {(group.IsCalcareous ? "a shell or skeleton" : "spicules or ossicles")} of lime", "use alcohol, or buffered formalin and only briefly", PlaceOf(stage));
        }

        if (group.IsSpiculate && steps.Find(s => s.Fluid.HasFormaldehyde) is { Stage: { } fixing } formalin && formalin.Fluid.Buffering != Buffering.None && fixing.Text("note") is null)
            yield return Finding.Warning("formalin-on-spiculate", $"'{fixing.Id}' puts {formalin.Fluid.Name} on {name}, which is named by spicules or ossicles that dissolve as formalin ages", "use alcohol, or say in 'note' why formalin will do here and for how long", PlaceOf(fixing));
        if (group.IsGelatinous && steps.Find(s => s.Fluid.IsAlcohol) is { Stage: { } shrinking } alcohol && shrinking.Text("note") is null)
            yield return Finding.Warning("alcohol-on-gelatinous", $"'{shrinking.Id}' puts {alcohol.Fluid.Name} on {name}, which is mostly jelly and shrinks in alcohol", "fix and keep it in buffered formalin, or say in 'note' why alcohol will do here", PlaceOf(shrinking));
    }

    private static IEnumerable<Finding> Climb(List<(StageDefinition Stage, Fluid Fluid)> steps, string who)
    {
        var (strength, wasFixed) = (0.0, false);
        foreach (var (stage, fluid) in steps.Where(s => s.Stage.Kind != StageKind.Inject))
        {
            var next = fluid.AlcoholVolumePercent;
            if (!wasFixed && stage.Kind == StageKind.Immerse) strength = next;
            wasFixed |= stage.Kind == StageKind.Immerse;
            var most = strength == 0 ? TooBigAStep.FirstStep : TooBigAStep.LaterStep;
            if (wasFixed && next - strength > most + 1e-9 && stage.Text("note") is null)
                yield return Finding.Warning("too-big-a-step", string.Create(CultureInfo.InvariantCulture, $"'{stage.Id}' goes from {strength:0.#} to {next:0.#} %vol at once for {who}; up to {most:0} points is usual"), "put a bath of a strength between before it, or say in 'note' why it may", PlaceOf(stage));
            strength = next;
        }
    }

    private static IEnumerable<Finding> Mixed(List<(StageDefinition Stage, Fluid Fluid)> steps, string who)
    {
        var formalin = steps.Where(s => s.Fluid.HasFormaldehyde).ToList();
        if (formalin.FirstOrDefault(s => s.Fluid.Buffering != formalin[0].Fluid.Buffering) is { Stage: { } other } odd)
            yield return Finding.Error("mixed-buffering", $"'{other.Id}' uses {odd.Fluid.Name} after '{formalin[0].Stage.Id}' used {formalin[0].Fluid.Name}, for {who}", "use one buffering throughout, best as a choice that every stage names", PlaceOf(other));
    }

    /// <summary>Only bodies left whole and taken out of formalin: needle and knife shorten the way, and in formalin fixation goes on.</summary>
    private static Finding? TooShort(Route route, List<(StageDefinition Stage, Fluid Fluid)> steps, BodyMeasure body, Case at, string who)
    {
        var fix = steps.FirstOrDefault(s => s.Stage.Kind == StageKind.Immerse);
        if (fix.Stage is null || !fix.Fluid.HasFormaldehyde || steps[^1].Fluid.HasFormaldehyde || fix.Stage.Text("note") is not null) return null;
        if (route.Stages.Any(s => s.Kind is StageKind.Inject or StageKind.Slit)) return null;
        if (fix.Stage.Expression("last") is not { } last || BodyFixation.Of(body, null, null, Fixative.Formaldehyde, BenchTemperatures.Usual.Room.DegreesCelsius).Value is not { } model) return null;
        var least = at.Evaluate(last).Quantity.Low;

        // A tenth is less than any of the figures is known to.
        if (least >= model.Time.LowHours * 3600 * 0.9) return null;
        return Finding.Warning(
            "fixation-too-short",
            $"'{fix.Stage.Id}' may end after {Measurable.Text(Math.Max(0, least), Dimension.OfTime)} for {who}, and formalin needs {Measurable.Text(model.Time.LowHours * 3600, Dimension.OfTime)} at best to reach and bind its middle ({Measurable.Text(model.Slowest.DepthMm / 1e3, Dimension.OfLength)} in)",
            "let it last longer, slit or inject the body, or say in 'note' why it is enough",
            last.Span);
    }

    /// <summary>Routes on which the specimen ends in nothing. Blamed on an option where that option alone leads there.</summary>
    private IEnumerable<Finding> Nowhere(List<Route> routes)
    {
        if (routes.Count == 0) yield break;
        foreach (var choice in subject.Protocol.Choices)
        {
            var name = "choice." + choice.Name;
            foreach (var option in choice.Options)
            {
                var leads = subject.Words.Where(w => w.Words[name] == option).All(w => routes.Any(r => r.Words == w));
                if (!leads || routes.Select(r => r.Words.Words[name]).Distinct(StringComparer.Ordinal).Count() == choice.Options.Length) continue;
                yield return Finding.Error("leads-nowhere", $"with {choice.Name} '{option}' the specimen ends in no fluid: no 'house' stage runs", "let a 'house' stage run for it, or remove the option", subject.PlaceOf(choice.Name, option));
                yield break;
            }
        }

        var route = routes[0];
        var who = route.Part.Witnesses.LastOrDefault() is { } body ? subject.Describe(body, route.Words, _choices) : "some specimen of the class";
        yield return Finding.Error("leads-nowhere", $"{who} ends in no fluid: no 'house' stage runs", "add a stage 'house' with the fluid that it is kept in", subject.Protocol.Span);
    }
}
