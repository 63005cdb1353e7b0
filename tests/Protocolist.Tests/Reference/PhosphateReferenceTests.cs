using Protocolist.Fluids;
using Protocolist.Fluids.Buffers;

namespace Protocolist.Tests.Reference;

public class PhosphateReferenceTests
{
    // Gomori / Sørensen table, 0.1 mol/L sodium phosphate, 25 °C: pH, mL 0.2 M NaH2PO4, mL 0.2 M Na2HPO4 to 200 mL. As in laboratory
    // handbooks; rows that one copy misprints (5.8, 6.1, 6.2) as in the others.
    [Theory]
    [InlineData(5.8, 92.0, 8.0)]
    [InlineData(5.9, 90.0, 10.0)]
    [InlineData(6.0, 87.7, 12.3)]
    [InlineData(6.1, 85.0, 15.0)]
    [InlineData(6.2, 81.5, 18.5)]
    [InlineData(6.3, 77.5, 22.5)]
    [InlineData(6.4, 73.5, 26.5)]
    [InlineData(6.5, 68.5, 31.5)]
    [InlineData(6.6, 62.5, 37.5)]
    [InlineData(6.7, 56.5, 43.5)]
    [InlineData(6.8, 51.0, 49.0)]
    [InlineData(6.9, 45.0, 55.0)]
    [InlineData(7.0, 39.0, 61.0)]
    [InlineData(7.1, 33.0, 67.0)]
    [InlineData(7.2, 28.0, 72.0)]
    [InlineData(7.3, 23.0, 77.0)]
    [InlineData(7.4, 19.0, 81.0)]
    [InlineData(7.5, 16.0, 84.0)]
    [InlineData(7.6, 13.0, 87.0)]
    [InlineData(7.7, 10.5, 89.5)]
    [InlineData(7.8, 8.5, 91.5)]
    [InlineData(7.9, 7.0, 93.0)]
    [InlineData(8.0, 5.3, 94.7)]
    public void Gomoris_table_comes_out(double ph, double acid, double basic) =>
        Assert.Equal(ph, PhosphateBuffer.Ph(acid / 1000, basic / 1000, 25), 0.05);

    // NIST primary standards: 0.025 m each of KH2PO4 and Na2HPO4, and 0.008695 m with 0.03043 m (25 °C values read, the others from memory).
    [Theory]
    [InlineData(5, 6.951, 7.500)]
    [InlineData(10, 6.923, 7.472)]
    [InlineData(15, 6.900, 7.448)]
    [InlineData(20, 6.881, 7.429)]
    [InlineData(25, 6.865, 7.413)]
    [InlineData(30, 6.853, 7.400)]
    [InlineData(35, 6.844, 7.389)]
    [InlineData(40, 6.838, 7.380)]
    public void Both_primary_standards_come_out(double celsius, double equimolal, double oneToThreeAndAHalf)
    {
        Assert.Equal(equimolal, PhosphateBuffer.Ph(0.025, 0.025, celsius), 0.02);
        Assert.Equal(oneToThreeAndAHalf, PhosphateBuffer.Ph(0.008695, 0.03043, celsius), 0.02);
    }

    // HJ 1147-2020, the equimolal buffer.
    [Theory]
    [InlineData(5, 6.949)]
    [InlineData(25, 6.864)]
    [InlineData(40, 6.838)]
    public void The_equimolal_buffer_is_that_of_a_second_standard(double celsius, double ph) =>
        Assert.Equal(ph, PhosphateBuffer.Ph(0.025, 0.025, celsius), 0.02);

    // Sørensen, Na2HPO4.2H2O and KH2PO4 at M/15, 20 °C: parts of the basic solution in 100. His scale reads 0.05 low.
    [Theory]
    [InlineData(10, 5.906)]
    [InlineData(30, 6.468)]
    [InlineData(50, 6.813)]
    [InlineData(70, 7.168)]
    [InlineData(90, 7.731)]
    public void Soerensens_table_comes_out_on_his_scale(double basicParts, double ph) =>
        Assert.Equal(ph, PhosphateBuffer.Ph((100 - basicParts) / 1500, basicParts / 1500, 20), 0.08);

    // pK2 at 25 °C: 7.20 (CRC), 7.198 (Goldberg et al. 2002).
    [Fact]
    public void Second_dissociation_is_the_handbooks() => Assert.Equal(7.20, PhosphateBuffer.Pk2(25), 0.003);

    // Lillie: "about 7.0"; Carson, Martin and Lynn 1973: 7.2 to 7.4. The naive pK + log ratio gives 7.40 and 7.75.
    [Fact]
    public void The_two_fixatives_have_their_stated_ph()
    {
        Assert.Equal(7.0, PhosphateBuffer.OfRecipe(Buffering.Phosphate, 25)!.Value, 0.1);
        Assert.InRange(PhosphateBuffer.OfRecipe(Buffering.PhosphateSodiumHydroxide, 25)!.Value, 7.2, 7.4);
    }

    // Computed from the molar masses apart from this code; 8.15, 12.27 and 16.40 g of the hydrates are in use for 6.5 g Na2HPO4.
    [Theory]
    [InlineData("Na2HPO4 anhydrous", 6.5, "Na2HPO4.2H2O", 8.150)]
    [InlineData("Na2HPO4 anhydrous", 6.5, "Na2HPO4.7H2O", 12.274)]
    [InlineData("Na2HPO4 anhydrous", 6.5, "Na2HPO4.12H2O", 16.399)]
    [InlineData("NaH2PO4.H2O", 4.0, "NaH2PO4 anhydrous", 3.478)]
    [InlineData("NaH2PO4.H2O", 4.0, "NaH2PO4.2H2O", 4.522)]
    [InlineData("NaH2PO4.H2O", 18.6, "NaH2PO4 anhydrous", 16.172)]
    [InlineData("NaH2PO4.H2O", 18.6, "NaH2PO4.2H2O", 21.028)]
    public void Hydrates_replace_one_another_by_molar_mass(string called, double grams, string shelf, double weighed) =>
        Assert.Equal(weighed, Salts.Read(shelf).Value!.InPlaceOf(grams, Salts.Read(called).Value!), 0.01);

    // Published molar masses of the hydrates (other atomic-weight editions: 0.01).
    [Theory]
    [InlineData("Na2HPO4.12H2O", 358.1437)]
    [InlineData("Na2HPO4.7H2O", 268.0667)]
    [InlineData("Na2HPO4.2H2O", 177.9897)]
    public void Molar_masses_are_the_published_ones(string formula, double published) =>
        Assert.Equal(published, Salts.Read(formula).Value!.MolarMass, 0.01);
}
