namespace Protocolist.Fluids.Densities;

/// <summary>Formaldehyde in water, with or without the methanol that keeps it clear: density and content on every basis.</summary>
/// <remarks>Formaldehyde counts as CH2O, whatever its hydrates and chains. The functions take mass fractions and °C and do not check them.</remarks>
internal static class FormaldehydeWater
{
    /// <summary>CH2O, g/mol (IUPAC abridged atomic weights).</summary>
    public const double MolarMass = 30.026;

    /// <summary>CH3OH, g/mol (IUPAC abridged atomic weights).</summary>
    public const double MethanolMolarMass = 32.042;

    /// <summary>The stock that "parts of stock" refer to: 37 % by mass (USP 29: not less than 37.0 % w/w).</summary>
    public const double ReferenceStock = 0.37;

    /// <summary>Methanol of that stock: the middle of 9.0 to 15.0 % (USP 35).</summary>
    public const double ReferenceMethanol = 0.12;

    /// <summary>Strongest stock of the density table, as a mass fraction.</summary>
    public const double Strongest = 0.50;

    /// <summary>Half the width of the band around any density, kg/m³: the methanol columns are for 37 % only, the expansion is an estimate.</summary>
    public const double DensityError = 4;

    // Methanol-free at 18 °C: Walker, Formaldehyde (ACS Monograph 1944), table 8, after Natta and Baccaredda. In kg/m³.
    private static readonly MonotoneCurve MethanolFree = new(
        [0, 0.05, 0.10, 0.15, 0.20, 0.25, 0.30, 0.35, 0.40, 0.45, 0.50],
        [998.6, 1014.1, 1029.9, 1044.9, 1060.0, 1075.7, 1091.0, 1106.6, 1122.0, 1138.2, 1157.0]);

    // What methanol takes off a 37 % solution at 18 °C, kg/m³: Walker 1944, table 4 (1.1128, 1.1009, 1.0890, 1.0764, 1.0639).
    private static readonly MonotoneCurve MethanolEffect = new([0, 0.05, 0.10, 0.15, 0.20], [0, -11.9, -23.8, -36.4, -48.9]);

    // Methanol lowers plain water by 1.7 kg/m³ a percent (CRC Handbook, from memory) but a 37 % solution by 2.4: a straight line between.
    private const double MethanolEffectInWater = 0.71;

    // Extra cubic expansion per unit mass of formaldehyde and methanol, per K: an estimate from memory that gives the stock 5e-4 and a 10 %
    // formalin water's own and a seventh.
    private const double ExtraExpansion = 6e-4;

    /// <summary>Density, kg/m³; see <see cref="DensityError"/>.</summary>
    /// <param name="formaldehyde">CH2O by mass, 0 to 0.50.</param>
    /// <param name="methanol">Methanol by mass, 0 to 0.20.</param>
    /// <param name="celsius">Temperature, 0 to 40 °C.</param>
    public static double Density(double formaldehyde, double methanol, double celsius)
    {
        var strengthOfEffect = MethanolEffectInWater + (1 - MethanolEffectInWater) * Math.Min(formaldehyde / ReferenceStock, 1);
        var at18 = MethanolFree.At(formaldehyde) + strengthOfEffect * MethanolEffect.At(methanol);
        // The table's own water is 998.6: dividing by it lets the dilute end meet the water formula.
        return at18 / 998.6 * WaterDensity.Of(celsius) * (1 - ExtraExpansion * (formaldehyde + methanol) * (celsius - 18));
    }

    /// <summary>CH2O in g per litre of solution (ten times the % w/v).</summary>
    public static double GramsPerLitre(double formaldehyde, double methanol, double celsius) =>
        formaldehyde * Density(formaldehyde, methanol, celsius);

    /// <summary>CH2O in mol per litre of a solution with so many g/L.</summary>
    public static double MolPerLitre(double gramsPerLitre) => gramsPerLitre / MolarMass;

    /// <summary>Mass fraction of a stock of known density (kg/m³) and methanol; NaN outside the table.</summary>
    public static double MassFractionOfDensity(double density, double methanol, double celsius) =>
        Rising(f => Density(f, methanol, celsius), density);

    /// <summary>Mass fraction of a stock of known g/L and methanol; NaN outside the table.</summary>
    public static double MassFractionOfGramsPerLitre(double gramsPerLitre, double methanol, double celsius) =>
        Rising(f => GramsPerLitre(f, methanol, celsius), gramsPerLitre);

    /// <summary>Walker's rule of thumb, 1 + 3W/1000, in kg/m³ for a mass fraction: within 2 up to 40 %, low by 7 at 50 %.</summary>
    public static double WalkersRule(double formaldehyde) => 1000 + 300 * formaldehyde;

    private static double Rising(Func<double, double> of, double wanted)
    {
        double low = 0, high = Strongest;
        if (!(wanted >= of(low) && wanted <= of(high))) return double.NaN;
        for (var step = 0; step < 50; step++)
        {
            var middle = (low + high) / 2;
            if (of(middle) < wanted) low = middle;
            else high = middle;
        }

        return (low + high) / 2;
    }
}
