namespace Protocolist.Specimens;

/// <summary>What there is to take of a body for DNA: a piece of each animal, some whole animals of a lot, or nothing.</summary>
/// <param name="Animals">Of or as how many animals; 0 where nothing is taken.</param>
/// <param name="IsWhole">Whether whole animals are taken.</param>
/// <param name="Tubes">Into how many tubes.</param>
internal readonly record struct TissueSample(int Animals, bool IsWhole, int Tubes)
{
    // A tube wants 25 to 100 mg (common practice), and no more than a tenth of an animal or of a lot is spent on it: judgement.
    private const double WantedG = 0.025;
    private const int Tenth = 10;

    // A leg of an insect of 20 mg is spared: common practice.
    private const double LeastWithALegG = 0.02;

    // Beyond so many whole animals in a tube the ethanol is watered down: common practice.
    private const int MostInATube = 50;

    /// <summary>What is taken of a lot of such animals.</summary>
    public static TissueSample Of(BodyMeasure body)
    {
        var each = body.Mass.Nominal.Grams;
        var least = BodyKind.Of(body) == BodyKind.Airy ? LeastWithALegG : WantedG * Tenth;
        if (each >= least) return new(Lot.Handled(body.Count), IsWhole: false, Lot.Handled(body.Count));
        var spared = Math.Min(body.Count / Tenth, MostInATube);
        return spared == 0 ? default : new((int)Math.Clamp(Math.Ceiling(WantedG / each), 1, spared), IsWhole: true, 1);
    }
}
