using Protocolist.Plans;
using static Protocolist.Tests.Planning.PlanFixture;

namespace Protocolist.Tests.Planning;

/// <summary>Every figure of a plan with where it comes from, as <c>explain</c> tells it.</summary>
public class FiguresTests
{
    private static string Lines(Plan plan) => string.Join('\n', plan.Figures.Select(f => $"{f.Id} = {f.Value} | exactly {f.Exact} | {f.Formula} | of {string.Join(", ", f.Inputs)} | {f.Source} | {f.Where} | {f.Note}"));

    [Fact]
    public void Figures_of_the_sample_otter_read_as_they_were_kept() => KeptText.Holds("Planning/kept/figures-otter.txt", Lines(Otter()));

    /// <summary>A lot of which only the length is known: everything else is reckoned, and says within what.</summary>
    [Fact]
    public void Figures_of_a_lot_known_by_its_length_alone_read_as_they_were_kept()
    {
        var shelf = Shelf(("given", "{group: bony-fish}", """
            choices:
              keeping: [formalin, ethanol]
            values:
              sink: {value: 10 * specimen.lot-volume, source: from memory, note: a remark}
            stages:
              - {stage: thaw, id: thaw, fluid: tap water, last: 1 h}
              - {stage: immerse, id: fix, fluid: formalin 10 %, ratio: 10, last: 24 h to 48 h, source: common practice}
            """));
        var fish = Read("format: 1\nspecimen: F-1\ngroup: bony-fish\ntotal-length: 21 cm\ncount: 4\ncondition: frozen\nlife-stage: adult\nfound-on: 2027-02-28\nwhere: a shore\nhow-obtained: found dead\ncollected-by: A. Nobody");

        KeptText.Holds("Planning/kept/figures-lot.txt", Lines(Plan(fish, shelf, choices: ("keeping", "ethanol")).Value!));
    }
}
