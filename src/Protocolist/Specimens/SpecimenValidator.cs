using System.Collections.Immutable;
using FluentValidation;
using Protocolist.Findings;
using Protocolist.Reading;

namespace Protocolist.Specimens;

/// <summary>What can be said about a specimen without knowing its group: values that cannot be, and values that contradict each other.</summary>
/// <remarks>
/// Every rule carries a kebab-case error code and, as its state, the remedy. Codes: <c>missing-id</c>, <c>count-below-one</c>,
/// <c>not-positive</c>, <c>absurd-size</c>, <c>no-measurement</c>, <c>part-longer-than-whole</c>, <c>thickness-over-width</c>,
/// <c>girth-against-width</c>, <c>lot-lighter-than-one</c>, <c>died-after-found</c>, and those of <see cref="TaxonGroups.Resolve(string?, string?)"/>.
/// What contradicts itself only for a known group is found by <see cref="BodyMeasure"/>.
/// </remarks>
internal sealed class SpecimenValidator : AbstractValidator<Specimen>
{
    /// <summary>Sets the rules up.</summary>
    public SpecimenValidator()
    {
        foreach (var rule in SpecimenRules.All)
            RuleFor(s => s).Must(s => !rule.IsBroken(s)).Says(rule.Id, rule.Message, _ => rule.Remedy).OverridePropertyName(rule.Property);

        RuleFor(s => s).Custom((specimen, context) =>
        {
            foreach (var finding in TaxonGroups.Resolve(specimen.Group, specimen.HigherTaxon).Findings)
            {
                var property = SpecimenRules.SubjectOf(finding) == "group" ? nameof(Specimen.Group) : nameof(Specimen.HigherTaxon);
                context.AddFailure(ValidatorFindings.Failure(finding, property));
            }
        });
    }

    /// <summary>Validates and says the result as findings; <see cref="Finding.Subject"/> is the property in kebab-case, as in a specimen file.</summary>
    /// <param name="specimen">The specimen.</param>
    /// <returns>The findings, in the order of the rules; empty where nothing is wrong.</returns>
    public static ImmutableArray<Finding> Check(Specimen specimen)
    {
        ArgumentNullException.ThrowIfNull(specimen);
        var findings = new List<Finding>();
        SpecimenRules.Check(specimen, findings);
        return [.. findings];
    }
}
