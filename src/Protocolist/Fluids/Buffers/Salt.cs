namespace Protocolist.Fluids.Buffers;

/// <summary>A solid as it stands on the shelf, with the water of crystallisation it is sold with.</summary>
/// <param name="Name">The name people write, such as <c>disodium phosphate heptahydrate</c>.</param>
/// <param name="Formula">Its formula, such as <c>Na2HPO4.7H2O</c>.</param>
/// <param name="Anhydrous">Formula without water of crystallisation: what hydrates of one salt have in common.</param>
/// <param name="MolarMass">Molar mass with its water, g/mol (IUPAC abridged atomic weights).</param>
/// <param name="Waters">Molecules of water of crystallisation.</param>
internal sealed record Salt(string Name, string Formula, string Anhydrous, double MolarMass, int Waters)
{
    // H2O, IUPAC abridged atomic weights.
    private const double WaterMolarMass = 18.015;

    /// <summary>Molar mass of the salt alone, without its water of crystallisation, g/mol.</summary>
    public double AnhydrousMolarMass => MolarMass - Waters * WaterMolarMass;

    /// <summary>Grams of this form that hold as much salt as some grams of another hydrate of it.</summary>
    /// <param name="grams">Grams called for.</param>
    /// <param name="calledFor">The hydrate the recipe calls for.</param>
    /// <returns>Grams to weigh of this one.</returns>
    /// <exception cref="ArgumentException">The two are not hydrates of one salt.</exception>
    public double InPlaceOf(double grams, Salt calledFor)
    {
        ArgumentNullException.ThrowIfNull(calledFor);
        return Anhydrous == calledFor.Anhydrous
            ? grams * MolarMass / calledFor.MolarMass
            : throw new ArgumentException($"{Formula} is no hydrate of {calledFor.Anhydrous}.", nameof(calledFor));
    }

    /// <summary>Name and formula, as a label has them.</summary>
    /// <returns>Text such as <c>disodium phosphate heptahydrate (Na2HPO4.7H2O)</c>.</returns>
    public override string ToString() => $"{Name} ({Formula})";
}
