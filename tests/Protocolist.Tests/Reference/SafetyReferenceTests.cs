using Protocolist.Fluids;
using Protocolist.Fluids.Safety;

namespace Protocolist.Tests.Reference;

/// <summary>Hazard statements and exposure limits against what the authorities print.</summary>
public class SafetyReferenceTests
{
    /// <summary>
    /// Regulation (EC) 1272/2008 (CLP), Annex VI, entry 605-001-00-5, formaldehyde ...%: specific limits Skin Corr. 1B H314 from 25 %, Skin Irrit. 2
    /// H315 and Eye Irrit. 2 H319 from 5 to 25 %, STOT SE 3 H335 from 5 %, Skin Sens. 1 H317 from 0.2 %; Carc. 1B H350 and Muta. 2 H341 by the
    /// general limits of 0.1 and 1 %.
    /// </summary>
    [Theory]
    [InlineData("formaldehyde stock 37 %mass", "H301 H311 H331 H314 H317 H335 H341 H350", "H315 H319 H302")]
    [InlineData("formaldehyde 10 % w/v", "H302 H315 H319 H317 H335 H341 H350", "H314 H301")]
    [InlineData("neutral buffered formalin 10 %", "H317 H341 H350", "H314 H315 H319 H335 H301 H302")]
    [InlineData("formaldehyde 0.5 % w/v", "H317 H350", "H341 H332")]
    public void Formaldehyde_has_the_statements_of_clp_annex_vi(string name, string has, string lacks)
    {
        var statements = Hazards.Of(Fluid.Read(name).Value!).Statements;
        Assert.Empty(has.Split(' ').Except(statements));
        Assert.Empty(lacks.Split(' ').Intersect(statements));
        Assert.Equal("Danger", Hazards.Of(Fluid.Read(name).Value!).SignalWord);
    }

    /// <summary>CLP Annex VI, entries 603-002-00-5 (ethanol: Flam. Liq. 2 H225) and 603-117-00-0 (propan-2-ol: H225, H319, H336).</summary>
    [Theory]
    [InlineData("ethanol 96 %vol", "H225")]
    [InlineData("isopropanol 99.8 %vol", "H225 H319 H336")]
    public void Alcohols_have_the_statements_of_clp_annex_vi(string name, string has) =>
        Assert.Empty(has.Split(' ').Except(Hazards.Of(Fluid.Read(name).Value!).Statements));

    /// <summary>29 CFR 1910.1048(b) and (c); NIOSH Pocket Guide, formaldehyde; ACGIH notice of 2016; Directive (EU) 2019/983, annex.</summary>
    [Theory]
    [InlineData("OSHA 29 CFR 1910.1048", ExposureKind.WorkingDay, 0.75)]
    [InlineData("OSHA 29 CFR 1910.1048", ExposureKind.FifteenMinutes, 2)]
    [InlineData("OSHA 29 CFR 1910.1048", ExposureKind.ActionLevel, 0.5)]
    [InlineData("NIOSH", ExposureKind.WorkingDay, 0.016)]
    [InlineData("NIOSH", ExposureKind.Ceiling, 0.1)]
    [InlineData("NIOSH", ExposureKind.ImmediateDanger, 20)]
    [InlineData("ACGIH", ExposureKind.WorkingDay, 0.1)]
    [InlineData("ACGIH", ExposureKind.FifteenMinutes, 0.3)]
    [InlineData("Directive (EU) 2019/983", ExposureKind.WorkingDay, 0.3)]
    [InlineData("Directive (EU) 2019/983", ExposureKind.FifteenMinutes, 0.6)]
    public void Limit_for_formaldehyde_is_the_authority_s(string authority, ExposureKind kind, double ppm) =>
        Assert.Equal(ppm, Limit("formaldehyde", authority, kind).Ppm, 9);

    /// <summary>mg/m³ as printed beside the ppm: NIOSH Pocket Guide for the alcohols, 29 CFR 1910 table Z-1 for methanol, the directive's annex; rounded there.</summary>
    [Theory]
    [InlineData("formaldehyde", "Directive (EU) 2019/983", ExposureKind.WorkingDay, 0.37)]
    [InlineData("formaldehyde", "Directive (EU) 2019/983", ExposureKind.FifteenMinutes, 0.74)]
    [InlineData("ethanol", "OSHA and NIOSH", ExposureKind.WorkingDay, 1900)]
    [InlineData("isopropanol", "OSHA and NIOSH", ExposureKind.WorkingDay, 980)]
    [InlineData("isopropanol", "NIOSH", ExposureKind.FifteenMinutes, 1225)]
    [InlineData("methanol", "OSHA", ExposureKind.WorkingDay, 260)]
    public void Limit_in_milligrams_is_within_a_hundredth_of_what_is_printed(string substance, string authority, ExposureKind kind, double printed) =>
        Assert.InRange(Limit(substance, authority, kind).MilligramsPerCubicMetre / printed, 0.99, 1.01);

    private static ExposureLimit Limit(string substance, string authority, ExposureKind kind) =>
        ((Solute[])[Solute.Formaldehyde, Solute.Ethanol, Solute.Isopropanol, Solute.Methanol]).SelectMany(s => s.Limits).Single(l => l.Substance == substance && l.Kind == kind && l.Authority.StartsWith(authority, StringComparison.Ordinal));
}
