namespace Protocolist.Fluids.Buffers;

/// <summary>pH of a sodium or potassium phosphate buffer, with its second dissociation's temperature and an ionic-strength term.</summary>
/// <remarks>
/// pK2: Bates and Acree 1943 and 1945, J. Res. NBS 30, 129 and 34, 373. Activity: Davies 1938, with A of Manov et al. as in Robinson and Stokes
/// (both from memory). With b = 0.2 the two primary phosphate standards come out within 0.01 from 0 to 40 °C and the Gomori table within 0.03;
/// b = 0.3 (Davies 1962) reads 0.01 to 0.02 higher. Without the term, Lillie's buffer would read 7.40 instead of 7.0.
/// </remarks>
internal static class PhosphateBuffer
{
    /// <summary>Davies' linear coefficient that fits the primary standards.</summary>
    public const double DefaultB = 0.2;

    // Debye-Hückel A, kg^0.5 mol^-0.5, at 0, 5 ... 40 °C (Manov et al., in Robinson and Stokes; from memory).
    private static ReadOnlySpan<double> DebyeHueckel => [0.4913, 0.4943, 0.4976, 0.5012, 0.5050, 0.5092, 0.5134, 0.5180, 0.5227];

    /// <summary>Thermodynamic pK2 of phosphoric acid, 0 to 50 °C.</summary>
    public static double Pk2(double celsius)
    {
        var kelvin = celsius + 273.15;
        return 2073.0 / kelvin - 5.9884 + 0.020912 * kelvin;
    }

    /// <summary>Debye-Hückel A between its tabulated temperatures; beyond 0 to 40 °C, the end value.</summary>
    public static double A(double celsius)
    {
        var at = Math.Clamp(celsius, 0, 40) / 5;
        var i = Math.Min((int)at, DebyeHueckel.Length - 2);
        return DebyeHueckel[i] + (at - i) * (DebyeHueckel[i + 1] - DebyeHueckel[i]);
    }

    /// <summary>Predicted pH.</summary>
    /// <param name="acid">H2PO4-, mol/L.</param>
    /// <param name="basic">HPO4 2-, mol/L.</param>
    /// <param name="celsius">Temperature, 0 to 40 °C.</param>
    /// <param name="otherSalt">Other 1:1 salt, mol/L.</param>
    /// <param name="b">Davies' linear coefficient, 0.2 to 0.3.</param>
    public static double Ph(double acid, double basic, double celsius, double otherSalt = 0, double b = DefaultB)
    {
        var ionic = acid + 3 * basic + otherSalt;
        var root = Math.Sqrt(ionic);
        return Pk2(celsius) - 3 * A(celsius) * (root / (1 + root) - b * ionic) + Math.Log10(basic / acid);
    }

    /// <summary>Acid and basic phosphate, mol/L, of weighed grams per litre; sodium hydroxide turns the one into the other.</summary>
    /// <returns>The two concentrations; acid is 0 or less where hydroxide exceeds it and no buffer is left.</returns>
    public static (double Acid, double Basic) Weighed(double acidGrams, Salt acidSalt, double basicGrams, Salt basicSalt, double hydroxideGrams = 0)
    {
        var hydroxide = hydroxideGrams / Salts.SodiumHydroxide.MolarMass;
        return (acidGrams / acidSalt.MolarMass - hydroxide, basicGrams / basicSalt.MolarMass + hydroxide);
    }

    /// <summary>pH of a buffering's recipe as written, or null where it is no phosphate buffer.</summary>
    public static double? OfRecipe(Buffering buffering, double celsius)
    {
        var salts = BufferRecipe.PerLitre(buffering, 0);
        switch (buffering)
        {
            case Buffering.Phosphate:
                var lillie = Weighed(salts[0].GramsPerLitre, salts[0].Salt, salts[1].GramsPerLitre, salts[1].Salt);
                return Ph(lillie.Acid, lillie.Basic, celsius);
            case Buffering.PhosphateSodiumHydroxide:
                var carson = Weighed(salts[0].GramsPerLitre, salts[0].Salt, 0, Salts.DisodiumPhosphateAnhydrous, salts[1].GramsPerLitre);
                return Ph(carson.Acid, carson.Basic, celsius);
            default:
                return null;
        }
    }
}
