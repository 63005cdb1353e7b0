using System.Collections.Immutable;
using System.CommandLine;
using Protocolist.Findings;
using Protocolist.Fluids;
using Protocolist.Fluids.Buffers;
using Protocolist.Fluids.Mixing;
using UnitsNet;

namespace Protocolist.Cli.Commands;

/// <summary><c>protocolist mix TARGET --volume Q [--from STOCK]… [--at T] [--json]</c>: a recipe.</summary>
internal static class MixCommand
{
    private static readonly string[] RequestFaults = ["volume-out-of-range", "temperature-out-of-range"];

    internal static Command Build()
    {
        var target = new Argument<string>("TARGET") { Description = "the fluid wanted, such as 'ethanol 70 %vol'" };
        var volume = new Option<string>("--volume") { Description = "how much of it, such as '1 L'", Required = true, HelpName = "Q" };
        var from = new Option<string[]>("--from")
        {
            Description =
                "a stock, such as 'ethanol 96 %vol'; with an amount 'ethanol 62 %vol = 500 mL', all of which goes in with '= all 500 mL'; or "
                    + "a salt, such as 'Na2HPO4.7H2O'",
            HelpName = "STOCK",
        };
        var at = FluidInput.At();
        var json = FluidInput.Json();
        var command = new Command("mix", "A recipe by volume and by mass, contraction included.") { target, volume, from, at, json };
        command.SetAction(parsed =>
        {
            var input = new FluidInput(parsed.InvocationConfiguration.Error);
            var fluid = input.Fluid(parsed.GetValue(target)!);
            var wanted = input.Volume(parsed.GetValue(volume)!, "--volume");
            var temperature = input.Temperature(parsed.GetValue(at), "--at");
            var (stocks, salts) = Shelf(parsed.GetValue(from) ?? [], input);
            if (fluid is null || input.HasFailed) return Exits.Unusable;

            var named = stocks.IsEmpty ? Usual(fluid) : stocks;
            var result = RecipeSolver.Solve(new(fluid, wanted, named) { At = temperature, Salts = salts, StocksAreNamed = true });
            if (result.Findings.Any(f => RequestFaults.Contains(f.Id)))
            {
                foreach (var finding in result.Findings) input.Fail(finding);
                return Exits.Unusable;
            }

            result = result with { Findings = [.. input.Remarks, .. result.Findings] };
            parsed.InvocationConfiguration.Output.Write((parsed.GetValue(json) ? Json(fluid, temperature, result) : Text(result)) + "\n");
            return result.HasErrors ? Exits.WithErrors : Exits.Done;
        });
        return command;
    }

    /// <summary>The stock that is usually at hand, where none is given.</summary>
    private static ImmutableArray<StockFluid> Usual(Fluid target) => [.. target.UsualStocks.Select(s => new StockFluid(s))];

    private static (ImmutableArray<StockFluid> Stocks, ImmutableArray<Salt> Salts) Shelf(string[] texts, FluidInput input)
    {
        var stocks = ImmutableArray.CreateBuilder<StockFluid>();
        var salts = ImmutableArray.CreateBuilder<Salt>();
        foreach (var text in texts)
        {
            var equals = text.LastIndexOf('=');
            var name = (equals < 0 ? text : text[..equals]).Trim();
            var salt = Salts.Read(name);
            if (salt.Value is { } found)
            {
                salts.Add(found);
            }
            else if (salt.Findings.Any(f => f.Id == "salt-without-hydrate"))
            {
                input.Fail(salt.Findings[0]);
            }
            else if (input.Fluid(name) is { } fluid)
            {
                var amount = equals < 0 ? "" : text[(equals + 1)..].Trim();
                var all = amount.StartsWith("all ", StringComparison.OrdinalIgnoreCase);
                Volume? onHand = equals < 0 ? null : input.Volume(all ? amount[4..] : amount, "--from");
                stocks.Add(new(fluid) { OnHand = onHand, UseUp = all });
            }
        }

        return (stocks.ToImmutable(), salts.ToImmutable());
    }

    private static string Json(Fluid target, Temperature at, Checked<Recipe> result) => FluidJson.Object(writer =>
    {
        var recipe = result.Value;
        writer.WriteString("target", target.Name);
        writer.Number("resultVolumeMl", recipe?.Volume.Milliliters ?? 0, 2);
        writer.Number("contractionMl", recipe?.Contraction.Milliliters ?? 0, 2);
        writer.Number("temperatureC", at.DegreesCelsius, 2);
        writer.WriteString("method", recipe is null ? "" : Method(recipe));
        writer.WriteStartArray("parts");
        foreach (var part in recipe?.Parts ?? [])
        {
            writer.WriteStartObject();
            writer.WriteString("name", part.Name);
            writer.NumberIfAny("volumeMl", part.Volume?.Milliliters, 2);
            writer.Number("massG", part.Mass.Grams, 3);
            writer.WriteEndObject();
        }

        writer.WriteEndArray();
        writer.Findings(result.Findings);
    });

    private static string Method(Recipe recipe) =>
        recipe.AddWater is { IsEmpty: false } add ? $"{recipe.MakeUp}; or {add}" : recipe.MakeUp.ToString();

    private static string Text(Checked<Recipe> result)
    {
        var lines = new List<string>();
        if (result.Value is { } recipe)
        {
            lines.Add($"{recipe.Target.Name}, {recipe.Result}");
            var width = recipe.Parts.Max(p => p.Name.Length);
            foreach (var part in recipe.Parts) lines.Add($"  {part.Name.PadRight(width)}  {part.Amount}");
            lines.Add(Capital(recipe.MakeUp.ToString()) + ".");
            if (recipe.AddWater is { IsEmpty: false } add) lines.Add($"Or {add}.");
            if (recipe.Contraction.Milliliters >= 0.005 * recipe.Volume.Milliliters)
                lines.Add(
                    FormattableString.Invariant(
                        $"The mixture contracts by {recipe.Contraction / recipe.Volume * 100:0.0} %: the volumes do not add up, and that is right."));
        }

        if (result.Value is { } made) lines.AddRange(Cautions(made));
        lines.AddRange(result.Findings.Select(f => f.ToString()));
        return string.Join('\n', lines);
    }

    private static IEnumerable<string> Cautions(Recipe recipe)
    {
        if (recipe.Target.HasFormaldehyde)
            yield return "Formaldehyde is poisonous and causes cancer: fume cupboard or open air, gloves, goggles. Your local rules prevail.";
        if (recipe.Parts.Any(p => p.Salt == Salts.SodiumHydroxide))
            yield return "Sodium hydroxide burns skin and eyes: add it slowly to water, never water to it.";
        if (recipe.Target is { IsAlcohol: true, IsFlammable: true }) yield return "Flammable: no flame or spark, air the room. Your local rules prevail.";
    }

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
