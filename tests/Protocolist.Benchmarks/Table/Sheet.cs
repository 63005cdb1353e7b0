using System.Globalization;
using System.Text;

namespace Protocolist.Benchmarks.Table;

/// <summary>The table as Markdown.</summary>
internal sealed class Sheet
{
    private readonly StringBuilder rows = new("| what | ours | floor | ratio | asked |\n|---|---|---|---|---|\n");

    public void Row(string what, string ours, string floor = "", string ratio = "", string asked = "")
    {
        rows.Append(CultureInfo.InvariantCulture, $"| {what} | {ours} | {floor} | {ratio} | {asked} |\n");
        Console.Error.WriteLine($"{what}: {ours}{(floor.Length > 0 ? $", floor {floor}, ratio {ratio}" : "")}");
    }

    /// <summary>Ours against a floor, by processor time.</summary>
    public void Row(string what, Cost ours, string floorName, Cost floor, string asked = "") =>
        Row(what, Text(ours), $"{floorName}: {Text(floor)}", Ratio(ours.Processor / floor.Processor), asked);

    public static string Text(Cost cost) => $"{Time(cost.Processor)} CPU, {Time(cost.Clock)} by the clock, {Size(cost.Bytes)}";

    private static string Ratio(double ratio) => string.Create(CultureInfo.InvariantCulture, $"{ratio:#,0.#} ×");

    public static string Time(double microseconds) => microseconds switch
    {
        < 10 => string.Create(CultureInfo.InvariantCulture, $"{microseconds:0.00} µs"),
        < 10_000 => string.Create(CultureInfo.InvariantCulture, $"{microseconds:0} µs"),
        < 10_000_000 => string.Create(CultureInfo.InvariantCulture, $"{microseconds / 1e3:0} ms"),
        _ => string.Create(CultureInfo.InvariantCulture, $"{microseconds / 1e6:0.0} s"),
    };

    public static string Size(double bytes) => bytes < 10e6
        ? string.Create(CultureInfo.InvariantCulture, $"{bytes / 1e3:0.0} kB")
        : string.Create(CultureInfo.InvariantCulture, $"{bytes / 1e6:0} MB");

    public override string ToString() => rows.ToString();
}
