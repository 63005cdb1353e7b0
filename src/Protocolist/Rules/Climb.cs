
namespace Protocolist.Rules;

/// <summary>Alcohol rises in steps.</summary>
internal static class Climb
{
    public const string Id = "too-big-a-step";
    public const string Source = "Simmons, Storage in Fluid Preservatives (AIC/FAIC); Ahlander 2021; Grant and Archdeacon 2021; USGS Open-File Report 93-104";

    /// <summary>
    /// Published series climb by at most 50 points at once at the lower end (20, 50, 80: Ahlander 2021; 35, 50, 70: Grant and Archdeacon 2021);
    /// in the trade's first step from water 50 is usual, later ones are 20 to 30. Small fishes go straight from water to 70
    /// (USGS 93-104), so beyond 50 from water is a warning and not an error.
    /// </summary>
    public const double FirstStep = 50;
    public const double LaterStep = 30;

    /// <summary>Whether the body lies in the fluid of such a stage until it has taken its strength; what is injected only lends it some.</summary>
    public static bool Counts(StageKind kind) => kind is StageKind.Immerse or StageKind.Wash or StageKind.Bath or StageKind.House;
}

/// <summary>From one strength of alcohol to the next, in %vol; 0 is water.</summary>
internal readonly record struct Rise(double From, double To)
{
    public double Points => To - From;

    /// <summary>How many points at once are usual from there.</summary>
    public double Usual => From == 0 ? Climb.FirstStep : Climb.LaterStep;

    public bool IsTooBig => IsOver(Usual);

    public bool IsOver(double points) => Points > points + 1e-9;
}

/// <summary>Where a body stands on its way through the fluids that it lies in. <c>default</c> is a body that no fluid has met.</summary>
/// <param name="Percent">The alcohol of its last fluid, %vol.</param>
/// <param name="WasFixed">Whether it has lain in a fixative.</param>
internal readonly record struct Ascent(double Percent, bool WasFixed)
{
    /// <summary>The rise to its next fluid. A body that alcohol itself fixes starts in it: there is nothing to climb from.</summary>
    public Rise To(StageKind kind, double percent) => new(!WasFixed && kind == StageKind.Immerse ? percent : Percent, percent);

    /// <summary>The body once it lies there.</summary>
    public Ascent In(StageKind kind, double percent) => new(percent, WasFixed || kind == StageKind.Immerse);
}
