using System.Collections.Immutable;
using System.Text.RegularExpressions;
using FsCheck;
using FsCheck.Fluent;
using NodaTime;
using Protocolist.Benches;
using Protocolist.Planning.Making;
using Protocolist.Proving;
using Protocolist.Reading;
using Protocolist.Specimens;
using Protocolist.Specimens.Fixation;

namespace Protocolist.Properties.Planning;

/// <summary>
/// What hands do to a body, over every bundled class from its smallest to its largest: nothing is injected in no amount, no cut is deeper than its wall or
/// longer than a third of its part, and neither step nor finding tells a gesture that the kind of body forbids.
/// </summary>
public sealed partial class HandworkProperties
{
    private static readonly Shelf Bundled = Shelf.Bundled();
    private static readonly Pipeline Passes = new(Bundled);

    private static readonly ImmutableArray<Protocol> Classes = [.. Bundled.Protocols.Where(p => p.Class.IsForSpecimens).OrderBy(p => p.Id, StringComparer.Ordinal)];

    private static readonly PreparedBench Bench = new(BenchReader.Read(
        new(
            "bench.yaml",
            """
            format: 1
            bench: b
            zone: UTC
            vessels:
              - {id: vial, name: vial, inside: {diameter: 25 mm, height: 70 mm}, wall: glass, lid: polypropylene, seal: polyethylene, closure: screw-lid, count: 20}
              - {id: jar, name: jar, inside: {diameter: 20 cm, height: 40 cm}, wall: glass, lid: polypropylene, seal: polyethylene, closure: screw-lid, count: 20}
            """),
        DateTimeZoneProviders.Tzdb).Value!);

    /// <summary>Two hundred sizes, each of every class; every option of every choice that says how a body is opened.</summary>
    [Property(MaxTest = 200)]
    public Property What_hands_do_suits_every_body_of_every_class() => Prop.ForAll(Gen.Choose(0, 9999).ToArbitrary(), share =>
    {
        var found = new List<string>();
        foreach (var protocol in Classes)
        {
            var body = Sized(protocol, share / 9999.0);
            foreach (var opening in protocol.Choices.FirstOrDefault(c => c.Name == "opening")?.Options ?? [""])
            {
                found.AddRange(Faults(protocol, body, opening, share % 2 == 0).Select(f => $"{protocol.Id} of {body.Mass.Nominal.Grams:g4} g {opening}: {f}"));
            }
        }

        Assert.True(found.Count == 0, string.Join('\n', found));
    });

    private static BodyMeasure Sized(Protocol protocol, double share)
    {
        var (measure, stretch) = ClassBounds.MainMeasure(protocol.Class);
        var size = stretch.Low * Math.Pow(stretch.High / stretch.Low, share);
        return ClassBounds.Measure(measure, Math.Clamp(size, stretch.Low, stretch.High), Kinds.Bundled.Find(protocol.Class.Group)!)!;
    }

    private static IEnumerable<string> Faults(Protocol protocol, BodyMeasure body, string opening, bool isLate)
    {
        // Every other size came bloated, days after it died, so that what is said of that is read too.
        var specimen = body.Specimen with { LifeStage = Stage(protocol) };
        if (isLate) specimen = specimen with { Condition = Condition.Bloated, DiedAt = Instant.FromUtc(2027, 2, 24, 6, 0) };
        var choices = opening.Length == 0
            ? ImmutableSortedDictionary<string, string>.Empty
            : ImmutableSortedDictionary<string, string>.Empty.Add("opening", opening);
        if (Passes.Ask(new(specimen, Bench, new(2027, 3, 1, 9, 0)), protocol).Value is not { } asked) yield break;
        if (Pipeline.Draft(asked, choices) is not { Value: { } draft } drafted) yield break;
        var provisioned = Pipeline.Provision(asked, draft, new());
        if (Pipeline.Finish(asked, provisioned, Pipeline.Date(asked, provisioned), drafted.Findings).Plan.Value is not { } plan) yield break;
        var kind = BodyKind.Of(body with { Specimen = specimen });
        foreach (var step in plan.Steps)
        {
            foreach (var site in step.Sites)
            {
                if (!(site.Sites > 0 && site.PerSite.Milliliters >= Syringe.LeastMl * 0.999 && site.Total.Milliliters > 0)) yield return $"{step.Id}: {site}";
            }

            if (step.Kind == StageKind.Inject && step.Sites.IsEmpty) yield return $"{step.Id} injects nothing";
            if (step.Kind == StageKind.Slit && step.Cuts.IsEmpty) yield return $"{step.Id} cuts nothing";
            foreach (var cut in step.Cuts)
            {
                var part = body.Regions.Single(r => r.Region.IsNamed(cut.Region.ToString()) || r.Region.Name.ToString() == cut.Region.ToString());
                var (length, depth) = (cut.Length?.Millimeters ?? 0, cut.Depth?.Millimeters ?? 0);
                var thickness = 2 * part.HalfThickness.Nominal.Millimeters;
                if (cut.Count < 1) yield return $"{step.Id}: no cut in {cut.Region}";
                if (length > (PartSize.AlongMm(part, body) / 3) + Grain) yield return $"{step.Id}: {length:0.##} mm in {cut.Region} of {PartSize.AlongMm(part, body):0.##} mm";
                if (cut.IsThroughWall && depth > PartSize.WallMm(part, body) + Grain) yield return $"{step.Id}: {depth:0.##} mm through a wall of {PartSize.WallMm(part, body):0.##} mm";
                if (!cut.IsThroughWall && (depth > length + Grain || depth > thickness)) yield return $"{step.Id}: {depth:0.##} mm deep, {length:0.##} mm long in {thickness:0.##} mm";
            }

            foreach (var fault in Told(kind, step.Instructions.Concat(step.LookFor).Append(step.Title))) yield return $"{step.Id} {fault}";
        }

        foreach (var finding in plan.Findings)
        {
            foreach (var fault in Told(kind, [finding.Message, finding.Remedy])) yield return $"{finding.Id} {fault}";
        }
    }

    private static IEnumerable<string> Told(BodyKind kind, IEnumerable<Findings.Message> texts) =>
        from said in texts
        from words in Words
        where !kind.Allows(words.Gesture)
        let told = words.Words.Match(said.ToString())
        where told.Success
        select $"of a {kind} body tells '{told.Value}': {said}";

    /// <summary>A plan's lengths stand on the grid of its JSON.</summary>
    private const double Grain = 1e-3;

    private static LifeStage? Stage(Protocol protocol) =>
        protocol.Class.Words.TryGetValue("life-stage", out var words) && !words.Contains("unknown") ? EnumWords<LifeStage>.Parse(words[0]) : null;

    private static readonly (Gestures Gesture, Regex Words)[] Words =
    [
        (Gestures.Press, Press()), (Gestures.Pin, Pin()), (Gestures.Tie, Tie()), (Gestures.Cut, Cut()), (Gestures.Inject, Inject()), (Gestures.LiftOut, LiftOut()),
    ];

    [GeneratedRegex(@"\bpress(es|ed|ing)?\b", RegexOptions.IgnoreCase)]
    private static partial Regex Press();

    [GeneratedRegex(@"\bpin(s|ned|ning)?\b", RegexOptions.IgnoreCase)]
    private static partial Regex Pin();

    [GeneratedRegex(@"\b(tie|ties|tied|tying)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Tie();

    [GeneratedRegex(@"\b(cut|cuts|cutting|slit|slits)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Cut();

    [GeneratedRegex(@"\binject(s|ed|ing|ion|ions)?\b", RegexOptions.IgnoreCase)]
    private static partial Regex Inject();

    [GeneratedRegex(@"\blift(s|ed|ing)? (it|them|the body) out\b", RegexOptions.IgnoreCase)]
    private static partial Regex LiftOut();
}
