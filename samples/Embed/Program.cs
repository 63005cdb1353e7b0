// A program that embeds the library: one specimen built in code, one plan, three questions to it.
using NodaTime;
using Protocolist;
using Protocolist.Benches;
using Protocolist.Plans;
using Protocolist.Specimens;
using UnitsNet;

var specimen = new Specimen
{
    Id = "SKP-2027-031",
    Group = "mammal",
    Mass = Mass.FromKilograms(6.4),
    HeadBodyLength = Length.FromCentimeters(70),
    FoundOn = new LocalDate(2027, 3, 2),
    Where = "Skerry Point, tide line",
    HowObtained = "found dead",
    CollectedBy = "I. Varga",
};
var bench = Bench.Empty(DateTimeZoneProviders.Tzdb["Atlantic/Azores"]);
var made = new Planner(Shelf.Bundled()).Plan(new(specimen, bench, new LocalDateTime(2027, 3, 3, 9, 0)));

foreach (var finding in made.Findings) Console.WriteLine(finding);
if (made.Value is not { } plan) return 1;

Console.WriteLine($"{plan.Protocol.Title}, to be started: {(plan.Startable ? "yes" : "no")}");
foreach (var step in plan.Steps) Console.WriteLine($"{step.Start?.LocalDateTime:uuuu-MM-dd HH:mm} {step.Title}{(step.Fluid is null ? "" : $": {step.Fluid}")}");
if (Explanation.Of(plan, "fix.last").Value is { } why)
{
    Console.WriteLine($"It soaks {why.Value}, which is {why.How}");
    foreach (var input in why.Inputs) Console.WriteLine($"  {input.Id} = {input.Value}, which is {input.How}");
}

return 0;
