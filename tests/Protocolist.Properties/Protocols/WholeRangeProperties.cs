using FsCheck;
using FsCheck.Fluent;
using Protocolist.Benches;
using Protocolist.Formulas;
using Protocolist.Proving;
using Protocolist.Specimens;
using UnitsNet;

namespace Protocolist.Properties.Protocols;

/// <summary>The bounds over a class hold what every single specimen of it gives.</summary>
public sealed class WholeRangeProperties
{
    private static readonly Subject[] Subjects = [.. Shelf.Bundled().Protocols.Select(p => Subject.Of(p, Kinds.Bundled)).OfType<Subject>()];

    [Property(MaxTest = 500)]
    public Property Bounds_hold_the_values_of_every_specimen_of_the_class() => Prop.ForAll(Specimens(), drawn =>
    {
        var (subject, body, words, room) = drawn;
        var over = Case.Over(subject, subject.Whole, words);
        var at = Case.At(subject, body, words, BenchTemperatures.Usual with { Room = Temperature.FromDegreesCelsius(room) });
        var expressions = subject.Protocol.Values.Select(v => v.Expression).Concat(subject.Protocol.Stages.SelectMany(s => s.Settings).SelectMany(s => s.Expressions()));
        return expressions.All(e => Holds(over.Evaluate(e), at.Evaluate(e)));
    });

    [Property(MaxTest = 300)]
    public Property Every_specimen_takes_a_route_that_was_found() => Prop.ForAll(Specimens(), drawn =>
    {
        var (subject, body, words, _) = drawn;
        var at = Case.At(subject, body, words, BenchTemperatures.Usual);
        var runs = subject.Protocol.Stages.Where(s => s.Expression("when") is not { } when || at.Evaluate(when).Truth != Truth.No).Select(s => s.Id);
        return subject.Routes.Where(r => r.Words == words).Any(r => r.Stages.Select(s => s.Id).SequenceEqual(runs));
    });

    private static bool Holds(FormulaValue bounds, FormulaValue point) => point.Kind switch
    {
        FormulaKind.Quantity => bounds.Quantity.Low <= point.Quantity.Low && point.Quantity.High <= bounds.Quantity.High,
        FormulaKind.Truth => bounds.Truth == Truth.Depends || bounds.Truth == point.Truth,
        _ => bounds.IsAnyWord || bounds.Word == point.Word,
    };

    private static Arbitrary<(Subject Subject, BodyMeasure Body, WordCase Words, int Room)> Specimens() =>
        (from subject in Gen.Elements(Subjects)
         from words in Gen.Elements(subject.Words.ToArray())
         from share in Gen.Choose(0, 9999)
         from room in Gen.Choose(5, 35)
         let main = ClassBounds.MainMeasure(subject.Protocol.Class)
         let size = main.Stretch.Low * Math.Pow(main.Stretch.High / main.Stretch.Low, share / 10000.0)
         let body = ClassBounds.Measure(main.Measure, size, subject.Group)
         where body is not null
         select (subject, body, words, room)).ToArbitrary();
}
