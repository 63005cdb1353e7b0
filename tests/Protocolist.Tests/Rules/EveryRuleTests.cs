using System.Reflection;
using Protocolist.Rules;

namespace Protocolist.Tests.Rules;

public class EveryRuleTests
{
    private static readonly List<Type> Named = [.. typeof(Climb).Assembly.GetTypes().Where(t => t.Namespace == typeof(Climb).Namespace && t.GetField("Id") is not null)];

    public static TheoryData<string> Names => [.. Named.Select(t => t.Name)];

    [Fact]
    public void No_two_rules_have_one_id() => Assert.Equal(Named.Count, Named.Select(t => Text(t, "Id")).Distinct().Count());

    /// <summary>What a proof or a decision finds by a rule has the name and the source under which the finished plan is checked.</summary>
    [Theory]
    [MemberData(nameof(Names))]
    public void A_rule_has_the_id_and_the_source_of_its_check(string name)
    {
        var rule = Named.Single(t => t.Name == name);
        var check = AllChecks.Find(Text(rule, "Id"));
        Assert.NotNull(check);
        Assert.Equal(check.Source, Text(rule, "Source"));
    }

    private static string Text(Type rule, string field) => (string)rule.GetField(field, BindingFlags.Public | BindingFlags.Static)!.GetRawConstantValue()!;
}
