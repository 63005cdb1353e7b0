using NodaTime;
using Protocolist.Benches;
using Protocolist.Planning.Making;
using Protocolist.Proving;
using Protocolist.Reading;
using Protocolist.Specimens;
using Asked = Protocolist.Planning.Making.Question;

namespace Protocolist.Tests.Planning.Deciding;

/// <summary>A fresh body of every bundled class in five sizes, on three benches: the sample one, a rich one that has everything, a poor one that has next to nothing.</summary>
internal static class EveryClass
{
    public static readonly LocalDateTime Start = new(2027, 3, 1, 9, 0);

    private static readonly Shelf Bundled = Shelf.Bundled();
    private static readonly Pipeline Passes = new(Bundled);

    public static readonly IReadOnlyDictionary<string, PreparedBench> Benches = new Dictionary<string, PreparedBench>(StringComparer.Ordinal)
    {
        ["sample"] = Read(File.ReadAllText(Repository.SkerryPoint)),
        ["rich"] = Read("""
            format: 1
            bench: rich
            zone: UTC
            currency: EUR
            people: 2
            stock:
              - {fluid: formaldehyde stock 37 %mass, id: f37, on-hand: 90 L}
              - {fluid: ethanol 96 %vol, id: e96, on-hand: 300 L}
              - {fluid: isopropanol 99.8 %vol, id: iso, on-hand: 200 L}
              - {fluid: distilled water, id: still, on-hand: 900 L}
              - {fluid: sea water, id: sea, on-hand: 900 L}
              - {salt: sodium dihydrogen phosphate, hydrate: monohydrate, id: acid, on-hand: 9 kg}
              - {salt: disodium phosphate, hydrate: anhydrous, id: base, on-hand: 9 kg}
              - {salt: borax, id: borax, on-hand: 9 kg}
            vessels:
              - {id: vial, name: vial, inside: {diameter: 25 mm, height: 70 mm}, wall: glass, lid: polypropylene, seal: polyethylene, closure: screw-lid, count: 90}
              - {id: jar-250, name: 250 mL jar, inside: {diameter: 6 cm, height: 9 cm}, wall: glass, lid: polypropylene, seal: polyethylene, closure: screw-lid, count: 40}
              - {id: jar-2, name: 2 L jar, inside: {diameter: 11 cm, height: 22 cm}, wall: glass, lid: polypropylene, seal: polyethylene, closure: screw-lid, count: 40}
              - {id: jar-10, name: 10 L jar, inside: {diameter: 20 cm, height: 34 cm}, wall: glass, lid: polypropylene, seal: polyethylene, closure: screw-lid, count: 40}
              - {id: drum, name: drum, inside: {diameter: 60 cm, height: 100 cm}, wall: polyethylene, lid: polyethylene, seal: polyethylene, closure: screw-lid, count: 9}
              - {id: tub, name: tub, inside: {length: 250 cm, width: 100 cm, height: 100 cm}, wall: polypropylene, lid: polypropylene, closure: loose-lid, count: 9}
            """),
        ["poor"] = Read("""
            format: 1
            bench: poor
            zone: UTC
            currency: EUR
            stock:
              - {fluid: formaldehyde stock 37 %mass, id: f37, on-hand: 1 L, packs: [{size: 1 L, price: 9 EUR, lead: 3 d}]}
              - {fluid: ethanol 96 %vol, id: e96, on-hand: 2 L, packs: [{size: 1 L, price: 12 EUR, lead: 3 d}]}
            vessels:
              - {id: tub, name: tub, inside: {length: 60 cm, width: 40 cm, height: 30 cm}, wall: polypropylene, lid: polypropylene, closure: loose-lid, count: 1}
              - {id: jar, name: jar, inside: {diameter: 9 cm, height: 16 cm}, wall: glass, lid: polypropylene, seal: polyethylene, closure: screw-lid, count: 2}
              - {id: jar-5, name: 5 L jar, inside: {diameter: 16 cm, height: 27 cm}, wall: glass, lid: polypropylene, seal: polyethylene, closure: screw-lid, count: 0, price: 21 EUR, lead: 2 d}
            """),
    };

    /// <summary>What is asked, with a name to tell it by.</summary>
    public static IEnumerable<(string Name, Asked Asked)> On(string bench)
    {
        foreach (var protocol in Bundled.Protocols.Where(p => p.Class.IsForSpecimens).OrderBy(p => p.Id, StringComparer.Ordinal))
        {
            foreach (var share in (double[])[0.1, 0.3, 0.5, 0.7, 0.9])
            {
                var (measure, stretch) = ClassBounds.MainMeasure(protocol.Class);
                var size = Math.Clamp(stretch.Low * Math.Pow(stretch.High / stretch.Low, share), stretch.Low, stretch.High);
                var body = ClassBounds.Measure(measure, size, Kinds.Bundled.Find(protocol.Class.Group)!)!;
                var specimen = body.Specimen with { LifeStage = Stage(protocol), Condition = Condition.Fresh };
                if (Passes.Ask(new(specimen, Benches[bench], Start), protocol).Value is { } asked) yield return ($"{bench} {protocol.Id} {share:0.0}", asked);
            }
        }
    }

    private static LifeStage? Stage(Protocol protocol) =>
        protocol.Class.Words.TryGetValue("life-stage", out var words) && !words.Contains("unknown") ? EnumWords<LifeStage>.Parse(words[0]) : null;

    private static PreparedBench Read(string yaml) => new(BenchReader.Read(new("bench.yaml", yaml), DateTimeZoneProviders.Tzdb).Value!);
}
