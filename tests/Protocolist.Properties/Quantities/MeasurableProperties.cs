using System.Globalization;
using System.Text.RegularExpressions;
using FsCheck;
using Protocolist.Notation;
using Protocolist.Quantities;

namespace Protocolist.Properties.Quantities;

public partial class MeasurableProperties
{
    [Property(MaxTest = 3000, Arbitrary = [typeof(QuantityTextProperties)])]
    public void No_text_for_people_has_more_than_six_significant_figures(Sizes sizes)
    {
        var range = sizes.Range;
        foreach (Match number in Numbers().Matches(Measurable.Text(range)))
        {
            var figures = number.Value.Replace(".", "", StringComparison.Ordinal).Trim('0').Length;
            Assert.True(figures <= 6, $"{range} is shown as {Measurable.Text(range)}");
        }
    }

    /// <summary>Half a step of the finest tool of each kind, SI; above that every tool reads to an eighth or better.</summary>
    private static readonly Dictionary<Dimension, double> HalfSteps = new()
    {
        [Dimension.OfTemperature] = 0.25,
        [Dimension.OfTime] = 0.5,
        [Dimension.OfLength] = 0.05e-3,
        [Dimension.OfVolume] = 0.5e-9,
        [Dimension.OfMass] = 0.5e-6,
        [Dimension.OfShareByVolume] = 0.5e-3,
        [Dimension.OfShareByMass] = 0.5e-3,
        [Dimension.OfDensity] = 0.05,
        [Dimension.OfSpecificVolume] = 0.5e-6,
    };

    [Property(MaxTest = 2000, Arbitrary = [typeof(QuantityTextProperties)])]
    public void What_is_shown_is_near_what_is_meant(Sizes sizes)
    {
        var si = Math.Abs(sizes.A);
        if (sizes.Dimension == Dimension.OfTemperature) si %= 1000;
        if (si is 0 or < 1e-100 or > 1e100) return;
        var text = Measurable.Text(si, sizes.Dimension);
        if (QuantityText.Read(text, out var shown) is not null) return;
        var tolerance = Math.Max(sizes.Dimension == Dimension.OfTemperature ? 0 : si * 0.126, 1.001 * HalfSteps.GetValueOrDefault(sizes.Dimension));
        Assert.True(Math.Abs(shown.Low - si) <= tolerance, $"{si.ToString("R", CultureInfo.InvariantCulture)} is shown as {text}");
        Assert.True(shown.Low > 0 || sizes.Dimension == Dimension.OfTemperature, $"{si.ToString("R", CultureInfo.InvariantCulture)} is shown as nothing");
    }

    [GeneratedRegex(@"\d+(\.\d+)?(?=E|\D|$)")]
    private static partial Regex Numbers();
}
