using System.CommandLine;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Notation;
using Protocolist.Quantities;
using UnitsNet;

namespace Protocolist.Cli.Commands;

/// <summary>Reads what the commands about fluids are given; what cannot be read is told on standard error.</summary>
internal sealed class FluidInput(TextWriter errors)
{
    /// <summary>A fault of what an option was given.</summary>
    public static readonly Phrase OfOption = new("option", "{option}: {message}");

    public static readonly Phrase IsRange = new("range-out-of-place", "{option}: '{text}' is a range");
    private static readonly Phrase IsRangeRemedy = new("range-out-of-place.remedy", "give one value");

    private readonly List<Finding> remarks = [];

    /// <summary>Warnings and notes about what was read.</summary>
    public IReadOnlyList<Finding> Remarks => remarks;

    /// <summary>Whether anything could not be read.</summary>
    public bool HasFailed { get; private set; }

    /// <summary>A temperature, 20 °C where none is given.</summary>
    public Temperature Temperature(string? text, string option)
    {
        var si = text is null ? 293.15 : Number(text, Dimension.OfTemperature, option);
        return UnitsNet.Temperature.FromKelvins(si);
    }

    /// <summary>A volume.</summary>
    public Volume Volume(string text, string option) => UnitsNet.Volume.FromCubicMeters(Number(text, Dimension.OfVolume, option));

    /// <summary>A density.</summary>
    public Density Density(string text, string option) => UnitsNet.Density.FromKilogramsPerCubicMeter(Number(text, Dimension.OfDensity, option));

    /// <summary>A fluid by name; errors are told at once, what else was found is kept in <see cref="Remarks"/>.</summary>
    public Fluid? Fluid(string text)
    {
        var read = Fluids.Fluid.Read(text);
        foreach (var finding in read.Findings)
        {
            if (finding.Severity is Severity.Error) Fail(finding);
            else remarks.Add(finding);
        }

        return read.Value;
    }

    /// <summary>Says that something could not be used.</summary>
    public void Fail(Finding finding)
    {
        errors.WriteLine(finding);
        HasFailed = true;
    }

    /// <summary>The option that every command about fluids has: the temperature.</summary>
    public static Option<string?> At() => new("--at") { Description = "temperature, such as '20 degC' (the default)", HelpName = "T" };

    /// <summary>The option that asks for JSON.</summary>
    public static Option<bool> Json() => new("--json") { Description = "print JSON" };

    /// <summary>The value in SI units; 0 where it could not be read.</summary>
    private double Number(string text, Dimension dimension, string option)
    {
        if (!QuantityText.TryRead(text, dimension, out var range, out var finding))
        {
            Fail(finding! with { Where = default, Message = OfOption.With(("option", option), ("message", finding.Message)) });
            return 0;
        }

        if (range.IsPoint) return range.Low;
        Fail(Finding.Error(IsRange.Id, IsRange.With(("option", option), ("text", text)), IsRangeRemedy));
        return 0;
    }
}
