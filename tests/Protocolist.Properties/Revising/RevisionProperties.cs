using System.Collections.Immutable;
using FsCheck;
using FsCheck.Fluent;
using NodaTime;
using Protocolist.Benches;
using Protocolist.Findings;
using Protocolist.Plans;
using Protocolist.Specimens;
using Protocolist.Testing;

namespace Protocolist.Properties.Revising;

/// <summary>What holds of every revision of some sample plans, whatever the log says.</summary>
public class RevisionProperties
{
    private static readonly Shelf Bundled = Shelf.Bundled();

    private static readonly Bench Bench = Read(BenchReader.Read(new("bench.yaml", """
        format: 1
        bench: trial
        zone: Atlantic/Azores
        hours: {mon-fri: "08:30 to 18:00", sat: "09:00 to 13:00"}
        closed: [2027-03-22 to 2027-03-26]
        currency: EUR
        labour: 18 EUR/h
        disposal: {formaldehyde: 3.20 EUR/L, alcohol: 1.10 EUR/L}
        stock:
          - {fluid: formaldehyde stock 37 %mass, id: formalin, on-hand: 6 L, packs: [{size: 5 L, price: 31.00 EUR}]}
          - {fluid: ethanol 96 %vol, id: ethanol, on-hand: 3 L, packs: [{size: 5 L, price: 42.00 EUR}]}
          - {fluid: distilled water, id: still, on-hand: 900 L}
          - {salt: sodium dihydrogen phosphate, hydrate: monohydrate, id: acid, on-hand: 9 kg}
          - {salt: disodium phosphate, hydrate: anhydrous, id: basic, on-hand: 9 kg}
        vessels:
          - {id: tub, name: 120 L tub, inside: {length: 130 cm, width: 40 cm, height: 30 cm}, wall: polypropylene, lid: polypropylene, closure: loose-lid, count: 1}
          - {id: tank, name: display tank, inside: {length: 135 cm, width: 40 cm, height: 45 cm}, wall: glass, lid: glass, seal: neutral-silicone, closure: sealed-plate, count: 1}
          - {id: jar-4, name: 4 L jar, inside: {diameter: 14 cm, height: 26 cm}, wall: glass, lid: polypropylene, seal: polyethylene, closure: screw-lid, count: 6}
        """), DateTimeZoneProviders.Tzdb));

    private static readonly (string Group, string Measures, string Keeping)[] Animals =
    [
        ("mammal", "mass: 7.2 kg\nhead-body-length: 75 cm\ncondition: chilled", "formalin"),
        ("mammal", "mass: 7.2 kg\nhead-body-length: 75 cm\ncondition: frozen", "ethanol"),
        ("bony-fish", "mass: 82 g\nstandard-length: 15.5 cm\ntotal-length: 18.4 cm\ncondition: fresh", "ethanol"),
        ("bony-fish", "mass: 82 g\nstandard-length: 15.5 cm\ntotal-length: 18.4 cm\ncondition: fresh", "isopropanol"),
        ("gastropod", "mass: 12 g\nlength: 32 mm\ncondition: fresh", ""),
        ("lizard", "mass: 24 g\nsnout-vent-length: 8 cm\ncondition: fresh", "ethanol"),
    ];

    private static readonly ImmutableArray<Plan> Plans = [.. Animals.Select(a => PlanOf(a.Group, a.Measures, a.Keeping))];

    private static readonly string[] FluidBooks = ["fluids-balance", "steps-get-their-fluid", "recipes-are-used-up", "moves-have-two-ends", "waste-is-what-is-poured-off", "costs-are-not-negative"];

    /// <summary>A plan, a log of its first days, and a longer one that begins with it.</summary>
    public sealed record Case(Plan Plan, FileSketch First, FileSketch Whole)
    {
        public override string ToString() => $"--- {Plan.Protocol.Id}, {string.Join(", ", Plan.Choices)}\n{First.Text}--- later\n{Whole.Text}";
    }

    private static readonly Arbitrary<Case> Cases = Arb.From(
        from plan in Gen.Elements([.. Plans])
        from first in LogGenerator.Of(plan)
        from whole in LogGenerator.After(Revise(plan, first).Plan, first)
        select new Case(plan, first, whole),
        c => c.Whole.Entries.Length > c.First.Entries.Length
            ? c.Whole.Shrink().Where(w => w.Entries.Take(c.First.Entries.Length).SequenceEqual(c.First.Entries)).Select(w => c with { Whole = w }).Append(c with { Whole = c.First })
            : c.First.Shrink().Select(f => c with { First = f, Whole = f }));

    [Fact]
    public void A_log_in_a_possible_order_is_taken_and_leads_to_a_plan_with_dates() => Holds(300, c =>
        from plan in Both(c)
        from step in plan.Steps
        where step.State != StepState.Skipped && step.Kind != StageKind.Discard && (step.Start is null || step.End is null)
        select $"'{step.Id}' has no dates: {string.Join("; ", plan.Findings.Where(f => f.Severity == Severity.Error))}");

    [Fact]
    public void Revising_twice_with_the_same_log_changes_nothing() => Holds(200, c =>
        from log in (FileSketch[])[c.First, c.Whole]
        let once = Revise(c.Plan, log).Plan
        let twice = Revise(Read(PlanJson.Read(new("plan.json", PlanJson.Write(once)))), log)
        where !twice.Changes.IsEmpty || PlanJson.Write(once) != PlanJson.Write(twice.Plan)
        select $"changed again: {string.Join("; ", twice.Changes)}");

    [Fact]
    public void A_log_in_two_parts_leads_to_the_same_steps_as_the_whole_at_once() => Holds(200, c =>
    {
        // How many inspections there once were is history, and not a part of the plan.
        var parts = Revise(Revise(c.Plan, c.First).Plan, c.Whole).Plan.Steps.Select(s => Shown(s with { MostInspections = 0 })).ToList();
        var once = Revise(c.Plan, c.Whole).Plan.Steps.Select(s => Shown(s with { MostInspections = 0 })).ToList();
        return parts.Except(once).Select(s => $"only in two parts: {s}").Concat(once.Except(parts).Select(s => $"only at once: {s}"));
    });

    [Fact]
    public void What_is_logged_keeps_its_dates_and_amounts() => Holds(300, c =>
        from log in (FileSketch[])[c.First, c.Whole]
        let plan = Revise(c.Plan, log).Plan
        from entry in Log(log).Entries
        let step = plan.Step(entry.Step)
        from fault in (string[])
        [
            step is null ? "is gone" : "",
            entry.Skipped is not null && step?.State != StepState.Skipped ? $"is {step?.State}, and was left out" : "",
            entry.Begun is { } begun && step?.Start?.ToInstant() != begun ? $"began {begun} and not {step?.Start}" : "",
            entry.Done is { } done && (step?.End?.ToInstant() != done || step?.State != StepState.Done) ? $"was done {done} and not {step?.End}, {step?.State}" : "",
            entry.Used is { } used && Math.Abs((step?.Volume?.Milliliters ?? 0) - used.Milliliters) > 1e-3 ? $"took {used} and not {step?.Volume}" : "",
        ]
        where fault.Length > 0
        select $"'{entry.Step}' {fault}");

    [Fact]
    public void What_is_still_to_be_done_lies_after_the_log_and_in_order() => Holds(300, c =>
        from log in (FileSketch[])[c.First, c.Whole]
        let until = Log(log).Until
        let plan = Revise(c.Plan, log).Plan
        from step in plan.Steps
        where step.State == StepState.Planned && step.Start?.ToInstant() < until && step.Kind != StageKind.Discard
        select $"'{step.Id}' begins {step.Start}, and the log goes on to {until}");

    [Fact]
    public void Sequence_numbers_rise_where_something_changed_and_nowhere_else() => Holds(300, c =>
    {
        var before = Revise(c.Plan, c.First).Plan;
        var after = Revise(before, c.Whole).Plan;
        return
        [
            .. from step in after.Steps
               let old = before.Step(step.Id)
               let gone = before.Withdrawn.FirstOrDefault(w => w.Id == step.Id)
               let due = old is not null ? old.Sequence + (Shown(old) == Shown(step) ? 0 : 1) : gone is not null ? gone.Sequence + 1 : 0
               where step.Sequence != due
               select $"'{step.Id}' has sequence {step.Sequence}, and {due} is due: {(old is null ? "new" : Shown(old))} -> {Shown(step)}",
            .. from step in before.Steps
               where after.Step(step.Id) is null && after.Withdrawn.SingleOrDefault(w => w.Id == step.Id)?.Sequence != step.Sequence + 1
               select $"'{step.Id}' is gone, and not taken back with the next sequence",
        ];
    });

    [Fact]
    public void Fluids_purchases_and_costs_balance_after_every_log() => Holds(200, c =>
        from plan in Both(c)
        from fault in FluidBooks.SelectMany(id => PlanInvariants.Find(id).Faults(plan).Select(f => $"{id}: {f}")).Concat(
        [
            .. plan.Costs.Cash is { } cash && plan.Purchases.All(p => p.Price is not null) && cash.Minor != plan.Purchases.Sum(p => p.Price!.Minor) ? [$"{cash} are spent, and the purchases cost {plan.Purchases.Sum(p => p.Price!.Minor)}"] : (string[])[],
            .. plan.Steps.Where(s => s.State == StepState.Skipped && plan.Recipes.Any(r => r.For.Contains(s.Id))).Select(s => $"fluid is mixed for '{s.Id}', which is left out"),
        ])
        select fault);

    [Fact]
    public void Every_change_says_why() => Holds(200, c =>
        from change in Revise(c.Plan, c.First).Changes
        where change.Why.IsEmpty
        select change.ToString());

    private static void Holds(int cases, Func<Case, IEnumerable<string>> faults) => Prop.ForAll(Cases, c =>
    {
        var found = faults(c).ToList();
        return (found.Count == 0).Label(string.Join("\n", found));
    }).Try(cases);

    /// <summary>All of a step that a calendar shows.</summary>
    private static string Shown(Step s) => FormattableString.Invariant(
        $"{s.Id} {s.Title} {s.State} {s.Start} {s.End} {string.Join(";", s.Because)} {s.Changes} {s.MostInspections} {s.Fluid} {s.Volume?.Milliliters:0.###} {s.Vessel} {string.Join(' ', s.Inspections)} {string.Join(' ', s.Instructions)}");

    private static Plan[] Both(Case c) => [Revise(c.Plan, c.First).Plan, Revise(c.Plan, c.Whole).Plan];

    private static WorkLog Log(FileSketch log) => Read(LogReader.Read(log.Source, Bench.Opening.Zone));

    private static Revision Revise(Plan plan, FileSketch log) => Read(new Planner(Bundled).Revise(plan, Log(log), new PreparedBench(Bench)));

    private static Plan PlanOf(string group, string measures, string keeping)
    {
        var specimen = Read(SpecimenReader.Read(new("s.yaml", $"format: 1\nspecimen: T-1\ngroup: {group}\n{measures}\nfound-on: 2027-02-28\nwhere: an invented shore\nhow-obtained: found dead\ncollected-by: I. Varga\n")));
        var choices = keeping.Length == 0 ? ImmutableSortedDictionary<string, string>.Empty : ImmutableSortedDictionary<string, string>.Empty.Add("keeping", keeping);
        return Read(new Planner(Bundled).Plan(new(specimen, Bench, new LocalDateTime(2027, 3, 1, 9, 0)) { Choices = choices }));
    }

    private static T Read<T>(Checked<T> read)
        where T : class => read.Value is { } value && read.Findings.All(f => f.Severity != Severity.Error || value is Plan or Revision) ? value : throw new InvalidOperationException(string.Join("; ", read.Findings));
}
