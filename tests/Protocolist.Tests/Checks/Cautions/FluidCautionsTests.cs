using System.Text;
using Protocolist.Checks.Cautions;
using Protocolist.Fluids;

namespace Protocolist.Tests.Checks.Cautions;

public class FluidCautionsTests
{
    private static readonly string[] Fluids =
    [
        "formaldehyde stock 37 %mass", "formalin 10 %", "neutral buffered formalin 10 %", "neutral buffered formalin 1 %",
        "ethanol 96 %vol", "ethanol 70 %vol", "ethanol 4 %vol", "isopropanol 99 %vol", "isopropanol 50 %vol", "tap water",
    ];

    [Fact]
    public void What_is_told_of_each_fluid_is_what_was_read_and_kept()
    {
        var text = new StringBuilder();
        foreach (var fluid in Fluids)
        {
            text.Append('\n').Append(fluid).Append(":\n");
            foreach (var sentence in FluidCautions.Of(Read(fluid))) text.Append("  ").Append(sentence).Append('\n');
        }

        text.Append("\nmixing from formaldehyde stock 37 %mass:\n  ").Append(FluidCautions.OfStock(Read("formaldehyde stock 37 %mass"))).Append('\n');
        text.Append("\nonce a plan:\n  ").Append(FluidCautions.Deference).Append('\n');
        KeptText.Holds("Checks/Cautions/kept/fluids.txt", text.ToString().TrimStart('\n'));
    }

    [Fact]
    public void Water_needs_no_caution() => Assert.Empty(FluidCautions.Of(Read("distilled water")));

    private static Fluid Read(string name) => Fluid.Read(name).Value!;
}
