using System.Collections.Immutable;
using NodaTime;
using NodaTime.Text;
using Protocolist.Findings;
using Protocolist.Quantities;
using Protocolist.Reading;
using UnitsNet;

namespace Protocolist.Specimens;

/// <summary>Reads specimen files.</summary>
public static class SpecimenReader
{
    private const int Format = 1;

    private static readonly OffsetDateTimePattern ToTheMinute = OffsetDateTimePattern.CreateWithInvariantCulture("uuuu'-'MM'-'dd'T'HH':'mmo<G>");

    private static readonly Phrase NoMoment = new("bad-time.died-at", "'{text}' is not a moment");
    private static readonly Phrase NoMomentRemedy = new("bad-time.remedy-died-at", "write date, time and distance from UTC, as 2027-03-01T06:30+00:00");

    /// <summary>Reads a specimen from YAML.</summary>
    /// <param name="source">The text and its name.</param>
    /// <returns>The specimen, with a finding at line and column for everything that is wrong; null where nothing usable could be read.</returns>
    public static Checked<Specimen> Read(SourceText source) => Read(source, Kinds.Bundled);

    /// <summary>The same, of other kinds than the bundled ones.</summary>
    /// <param name="source">The text and its name.</param>
    /// <param name="kinds">The groups that there are.</param>
    /// <returns>The specimen, with a finding at line and column for everything that is wrong; null where nothing usable could be read.</returns>
    public static Checked<Specimen> Read(SourceText source, Kinds kinds)
    {
        ArgumentNullException.ThrowIfNull(source);
        ArgumentNullException.ThrowIfNull(kinds);
        return Read(DocumentReader.Read(source), kinds);
    }

    /// <summary>All that is wrong with a file, with what contradicts itself in the body; of that a plan tells by itself, and may still be made.</summary>
    internal static ImmutableArray<Finding> Check(SourceText source, Kinds kinds)
    {
        var document = DocumentReader.Read(source);
        var read = Read(document, kinds);
        if (!read.IsSound || document.Value is not MappingNode node) return read.Findings;
        var contradictions = BodyMeasure.Of(read.Value, kinds).Findings.Where(f => f.Severity != Severity.Note);
        return [.. read.Findings, .. contradictions.Select(f => f with { Where = ValidatorFindings.Place(f.Subject, node), Subject = "" })];
    }

    private static Checked<Specimen> Read(Checked<DocumentNode> document, Kinds kinds)
    {
        var findings = new List<Finding>();
        findings.AddRange(document.Findings);
        if (document.Value is null || Fields.Of(document.Value, Named.Specimen, findings) is not { } fields) return new(null, [.. findings]);
        if (!FormatVersion.Check(fields, Format, findings)) return new(null, [.. findings]);
        var id = fields.Required("specimen");
        var specimen = Measured(fields, id?.Value ?? "", findings);
        var valid = findings.Count;
        findings.AddRange(ValidatorFindings.Of(kinds.Validator, specimen, (MappingNode)document.Value));

        // A measurement that could not be read is not missing as well.
        if (valid > 0) findings.RemoveAll(f => f.Id is "no-measurement" or "missing-id");
        return new(id is null ? null : specimen, [.. findings.OrderBy(f => f.Where.Line).ThenBy(f => f.Where.Column)]);
    }

    /// <summary>The specimen of a worked example inside a protocol: only what was measured, the rest as the example's protocol has it.</summary>
    internal static Specimen ReadInline(MappingNode node, string id, string group, List<Finding> findings)
    {
        var fields = new Fields(node, Named.ExamplesSpecimen, findings);
        var specimen = Measured(fields, id, findings);
        return specimen.Group is null && specimen.HigherTaxon is null ? specimen with { Group = group } : specimen;
    }

    private static Specimen Measured(Fields fields, string id, List<Finding> findings)
    {
        Length? OfLength(string key) => fields.Quantity(key, Dimension.OfLength) is { } range ? Length.FromMeters(range.Middle) : null;
        Mass? OfMass(string key) => fields.Quantity(key, Dimension.OfMass) is { } range ? Mass.FromKilograms(range.Middle) : null;
        Volume? OfVolume(string key) => fields.Quantity(key, Dimension.OfVolume) is { } range ? Volume.FromCubicMeters(range.Middle) : null;
        var mass = fields.Quantity("mass", Dimension.OfMass);
        var specimen = new Specimen
        {
            Id = id,
            Count = fields.Whole("count", 0, 9_999_999) ?? 1,
            Group = Group(fields),
            ScientificName = fields.Scalar("scientific-name")?.Value,
            HigherTaxon = fields.Scalar("higher-taxon")?.Value,
            Mass = mass is { } m ? Mass.FromKilograms(m.Middle) : null,
            MassMargin = mass is { IsPoint: false, IsFinite: true } range ? Mass.FromKilograms((range.High - range.Low) / 2) : null,
            LotMass = OfMass("lot-mass"),
            DisplacementVolume = OfVolume("displacement-volume"),
            Length = OfLength("length"),
            TotalLength = OfLength("total-length"),
            StandardLength = OfLength("standard-length"),
            SnoutVentLength = OfLength("snout-vent-length"),
            HeadBodyLength = OfLength("head-body-length"),
            CarapaceLength = OfLength("carapace-length"),
            MantleLength = OfLength("mantle-length"),
            DiscWidth = OfLength("disc-width"),
            ForearmLength = OfLength("forearm-length"),
            CarapaceWidth = OfLength("carapace-width"),
            EggDiameter = OfLength("egg-diameter"),
            VentralMantleLength = OfLength("ventral-mantle-length"),
            BodyLength = OfLength("body-length"),
            Girth = OfLength("girth"),
            Width = OfLength("width"),
            Height = OfLength("height"),
            Thickness = OfLength("thickness"),
            Sex = fields.Choice<Sex>("sex"),
            LifeStage = fields.Choice<LifeStage>("life-stage"),
            Condition = fields.Choice<Condition>("condition"),
            DiedAt = DiedAt(fields, findings),
            FoundOn = fields.Date("found-on"),
            Where = fields.Scalar("where")?.Value,
            HowObtained = fields.Scalar("how-obtained")?.Value,
            CollectedBy = fields.Scalar("collected-by")?.Value,
            Permits = [.. fields.Texts("permits").Select(p => p.Value)],
            IntendedUse = fields.Choice<IntendedUse>("intended-use"),
            Posture = fields.Scalar("posture")?.Value,
            Notes = fields.Prose("notes")?.Value,
        };
        fields.Entry("format");
        fields.Finish();
        return specimen;
    }

    /// <summary>The group's word; whether there is such a group the validator says.</summary>
    private static string? Group(Fields fields) => fields.Scalar("group")?.Value;

    private static Instant? DiedAt(Fields fields, List<Finding> findings)
    {
        if (fields.Scalar("died-at") is not { } scalar) return null;
        var text = scalar.Value.Replace(' ', 'T');
        OffsetDateTime? at = OffsetDateTimePattern.ExtendedIso.Parse(text) is { Success: true, Value: var toTheSecond } ? toTheSecond
            : ToTheMinute.Parse(text) is { Success: true, Value: var toTheMinute } ? toTheMinute : null;
        if (at is { } moment && Calendar.Has(moment.Date)) return moment.ToInstant();
        findings.Add(at is { } far
            ? Calendar.Fault(far.Year, scalar.Span)
            : Finding.Error("bad-time", NoMoment.With(("text", Excerpt.Of(scalar.Value))), NoMomentRemedy, scalar.Span));
        return null;
    }
}
