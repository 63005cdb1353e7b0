using System.Collections.Immutable;
using Protocolist.Findings;
using Protocolist.Planning.Selecting;
using Protocolist.Protocols;
using Protocolist.Reading;
using Protocolist.Specimens;

namespace Protocolist.Proving;

/// <summary>Classes beside each other on the shelf: a specimen belongs to exactly one.</summary>
internal static class ShelfCheck
{
    private static readonly Phrase OverlappingClasses = new("overlapping-classes", "'{own}' ({class}) and '{them}' ({their-class}) both serve {body}");
    private static readonly Phrase OverlappingClassesRemedy = new(
        "overlapping-classes.remedy",
        "let one class end where the other begins, or limit one of them by life stage or use");
    private static readonly Phrase GapBetweenClasses = new(
        "gap-between-classes",
        "no protocol serves {body}: '{before}' ends at {reached} and '{protocol}' begins at {low}");
    private static readonly Phrase GapBetweenClassesRemedy = new("gap-between-classes.remedy", "let one class begin where the other ends");

    /// <summary>Overlaps that are told of one class; where there are more, they have one cause.</summary>
    private const int MostOverlaps = 3;

    /// <param name="shelf">The shelf.</param>
    /// <param name="files">The files to speak of: each finding names one of the two neighbours that is among them.</param>
    /// <summary>
    /// Overlaps and gaps among the classes of one group. Where a group's class and that of a group above it both fit, the nearer one serves, and that is
    /// no overlap.
    /// </summary>
    public static IEnumerable<Finding> Of(Shelf shelf, IReadOnlySet<string> files)
    {
        var index = new ClassIndex(shelf);
        foreach (var classes in shelf.Shelved.Where(p => p.Class.IsForSpecimens).GroupBy(p => p.Class.Group).Where(g => g.Count() > 1))
        {
            if (shelf.Kinds.Find(classes.Key) is not { } group) continue;
            var sorted = classes.OrderBy(p => ClassBounds.MainMeasure(p.Class).Stretch.Low).ThenBy(p => p.Id, StringComparer.Ordinal).ToList();
            foreach (var finding in Overlaps(sorted, group, index, files).Concat(Gaps(sorted, group, index, files))) yield return finding;
        }
    }

    private static IEnumerable<Finding> Overlaps(List<Shelved> classes, TaxonGroup group, ClassIndex index, IReadOnlySet<string> files)
    {
        var bodies = new Bodies(group, index);
        for (var i = 0; i < classes.Count; i++)
        {
            var told = 0;
            for (var j = i + 1; j < classes.Count && told < MostOverlaps; j++)
            {
                var (own, them) = (classes[i], classes[j]);
                if (!files.Contains(own.File) && !files.Contains(them.File)) continue;
                if (Shared(own, them, bodies) is not { } body) continue;
                told++;
                var measure = ClassBounds.MainMeasure(them.Class).Measure;
                var message = OverlappingClasses.With(
                    Argument.Id("own", own.Id),
                    ("class", own.Class.Said()),
                    Argument.Id("them", them.Id),
                    ("their-class", them.Class.Said()),
                    ("body", ClassBounds.Describe(body, measure, group)));
                yield return Finding.Error("overlapping-classes", message, OverlappingClassesRemedy, Place(files.Contains(them.File) ? them : own, measure));
            }
        }
    }

    /// <summary>A specimen that both classes serve equally well, as selection itself says.</summary>
    private static BodyMeasure? Shared(Shelved a, Shelved b, Bodies bodies)
    {
        // Of two classes that limit unlike many things, the one that limits more serves; like measures that only touch hold no common animal.
        if (a.Class.Limits.Count + a.Class.Words.Count != b.Class.Limits.Count + b.Class.Words.Count) return null;
        if (a.Class.Limits.Any(l => b.Class.Limits.TryGetValue(l.Key, out var limit) && (limit.Low >= l.Value.High || l.Value.Low >= limit.High))) return null;
        if (a.Class.Words.Any(w => b.Class.Words.TryGetValue(w.Key, out var words) && !words.Intersect(w.Value).Any())) return null;
        var words = a.Class.Words.Concat(b.Class.Words).GroupBy(w => w.Key).ToDictionary(g => g.Key, g => g.Select(w => w.Value.AsEnumerable()).Aggregate((
            x,
            y) => x.Intersect(y)).First(), StringComparer.Ordinal);
        var traits = words.ToImmutableSortedDictionary(StringComparer.Ordinal);
        return bodies.Of(a, traits).Concat(bodies.Of(b, traits)).FirstOrDefault(body => bodies.Index.Of(a.Id).Fits(body) && bodies.Index.Of(b.Id).Fits(body));
    }

    /// <summary>Bodies to try of each class, made once: many classes are held against each other.</summary>
    private sealed class Bodies(TaxonGroup group, ClassIndex index)
    {
        public ClassIndex Index => index;

        private readonly Dictionary<(string Id, string Traits), List<BodyMeasure>> made = [];

        /// <summary>
        /// Those that no class of a nearer group or with more limits serves: the low end, which an overlap of like measures always holds for one of the
        /// two, and some between.
        /// </summary>
        public List<BodyMeasure> Of(Shelved protocol, ImmutableSortedDictionary<string, string> traits)
        {
            var key = (protocol.Id, string.Join(' ', traits));
            if (made.TryGetValue(key, out var bodies)) return bodies;
            var rank = index.Rank(protocol.Class);
            var above = index.ForLine(group).Where(c => index.Rank(c.Class).CompareTo(rank) > 0).ToList();
            var (measure, stretch) = ClassBounds.MainMeasure(protocol.Class);
            return made[key] =
            [
                .. Enumerable.Range(0, 8).Select(i => ClassBounds.Measure(
                    measure,
                    stretch.Low * Math.Pow(stretch.High / stretch.Low, i / 8.0),
                    group)).OfType<BodyMeasure>()
                    .Select(body => With(body, traits)).Where(body => !above.Exists(c => c.Fits(body))),
            ];
        }
    }

    /// <summary>The same body with traits by their keys.</summary>
    private static BodyMeasure With(BodyMeasure body, ImmutableSortedDictionary<string, string> traits) => body with
    {
        Specimen = body.Specimen with { LifeStage = Trait<LifeStage>(traits, "life-stage"), IntendedUse = Trait<IntendedUse>(traits, "intended-use") },
    };

    private static T? Trait<T>(ImmutableSortedDictionary<string, string> traits, string name)
        where T : struct, Enum =>
        traits.TryGetValue(name, out var word) && word != SpecimenScope.Unknown ? EnumWords<T>.Parse(word) : null;

    private static IEnumerable<Finding> Gaps(List<Shelved> classes, TaxonGroup group, ClassIndex index, IReadOnlySet<string> files)
    {
        foreach (var line in classes.GroupBy(p => ClassBounds.MainMeasure(p.Class).Measure))
        {
            var reached = double.NegativeInfinity;
            Shelved? before = null;
            foreach (var protocol in line)
            {
                var stretch = ClassBounds.MainMeasure(protocol.Class).Stretch;
                if (before is not null && (files.Contains(before.File) || files.Contains(protocol.File)) && stretch.Low > reached
                    && ClassBounds.Measure(line.Key, Math.Sqrt(stretch.Low * reached), group) is { } body
                    && SelectPass.Run(body, index).Findings.Any(f => f.Id == "no-protocol"))
                {
                    var message = GapBetweenClasses.With(
                        ("body", ClassBounds.Describe(body, line.Key, group)),
                        Argument.Id("before", before.Id),
                        Argument.Of("reached", reached, stretch.Dimension),
                        Argument.Id("protocol", protocol.Id),
                        Argument.Of("low", stretch.Low, stretch.Dimension));
                    var at = Place(files.Contains(protocol.File) ? protocol : before, line.Key);
                    yield return Finding.Warning("gap-between-classes", message, GapBetweenClassesRemedy, at);
                }

                if (stretch.High <= reached) continue;
                (reached, before) = (stretch.High, protocol);
            }
        }
    }

    private static SourceSpan Place(Shelved shelved, string measure) =>
        shelved.Protocol.Places.GetValueOrDefault($"for.{measure}", shelved.Protocol.Places.GetValueOrDefault("for", shelved.Protocol.Span));
}
