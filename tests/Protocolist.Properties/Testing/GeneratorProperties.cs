using FsCheck;
using FsCheck.Fluent;
using NodaTime;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Planning.Selecting;
using Protocolist.Specimens;
using Protocolist.Testing;

namespace Protocolist.Properties.Testing;

/// <summary>What the generators promise: the valid is valid, the nearly valid never throws, and most of what is generated leads to a plan.</summary>
public class GeneratorProperties
{
    private static readonly Shelf Bundled = Shelf.Bundled();

    [Fact]
    public void Valid_specimens_read_without_an_error() =>
        Prop.ForAll(SpecimenGenerator.Valid(Bundled), f => Sound(SpecimenReader.Read(f.Source))).Try(300);

    [Fact]
    public void Valid_benches_read_without_an_error() =>
        Prop.ForAll(BenchGenerator.Valid, f => Sound(BenchReader.Read(f.Source, DateTimeZoneProviders.Tzdb))).Try(300);

    [Fact]
    public void Valid_protocols_load_without_an_error() =>
        Prop.ForAll(ProtocolGenerator.Valid, f => (Shelf.Of([[f.Source]]) is { Protocols.Length: 1 } s && !s.Findings.Any(x => x.Severity == Severity.Error)).Label(string.Join('\n', Shelf.Of([[f.Source]]).Findings))).Try(300);

    [Fact]
    public void Nearly_valid_files_give_findings_at_places_and_never_throw()
    {
        Prop.ForAll(SpecimenGenerator.NearlyValid(Bundled), t => Placed(SpecimenReader.Read(new("s.yaml", t)).Findings, t)).Try(300);
        Prop.ForAll(BenchGenerator.NearlyValid, t => Placed(BenchReader.Read(new("b.yaml", t), DateTimeZoneProviders.Tzdb).Findings, t)).Try(300);
        Prop.ForAll(ProtocolGenerator.NearlyValid, t => Placed(Shelf.Of([[new("p.yaml", t)]]).Findings, t)).Try(300);
        Prop.ForAll(ProtocolGenerator.NearlyValid, t => Placed(FileCheck.Run([new("p.yaml", t)], DateTimeZoneProviders.Tzdb, strict: true), t)).Try(300);
    }

    [Fact]
    public void Smaller_cases_are_cases_too()
    {
        var cases = PlanCases.Over(Bundled);
        Prop.ForAll(cases, c => cases.Shrinker(c).Take(5).All(s => s.Made is { Value: not null } or { HasErrors: true })).Try(50);
    }

    /// <summary>An invariant over cases without a plan says nothing, so their share is kept small.</summary>
    [Fact]
    public void Nine_cases_of_ten_give_a_plan_and_many_of_them_may_be_started()
    {
        var cases = PlanCases.Over(Bundled).Generator.Some(400, 50).ToList();

        var plans = cases.Select(c => c.Made.Value).OfType<Protocolist.Plans.Plan>().ToList();

        Assert.True(plans.Count >= 360, $"{plans.Count} of 400 cases give a plan: {string.Join('\n', cases.Where(c => c.Made.Value is null).SelectMany(c => c.Made.Findings).Where(f => f.Severity == Severity.Error).Select(f => f.ToString()).Distinct().Take(20))}");
        Assert.True(plans.Count(p => p.Startable) >= 40, $"{plans.Count(p => p.Startable)} of {plans.Count} plans may be started: {string.Join(", ", plans.SelectMany(p => p.Findings).Where(f => f.Severity == Severity.Error).CountBy(f => f.Id))}");
    }

    [Fact]
    public void Every_protocol_of_the_shelf_gets_specimens_that_it_serves()
    {
        var served = SpecimenGenerator.Valid(Bundled).Generator.Some(30 * Bundled.Protocols.Length, 50)
            .Select(f => BodyMeasure.Of(SpecimenReader.Read(f.Source).Value!).Value).OfType<BodyMeasure>()
            .Select(b => SelectPass.Run(b, new(Bundled)).Value?.Id).ToHashSet();

        Assert.All(Bundled.Protocols.Where(p => p.IsForSpecimens), p => Assert.Contains(p.Id, served));
    }

    private static Property Sound<T>(Checked<T> read)
        where T : class => read.IsSound.Label(string.Join('\n', read.Findings));

    private static bool Placed(IEnumerable<Finding> findings, string text)
    {
        var lines = text.Split('\n').Length + 1;
        return findings.All(f => f.Id.Length > 0 && f.Message.ToString().Length > 0 && (!f.Where.IsKnown || (f.Where.Line <= lines && f.Where.Column >= 1)));
    }
}
