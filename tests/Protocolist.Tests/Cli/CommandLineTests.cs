using System.CommandLine;
using Protocolist.Cli;

namespace Protocolist.Tests.Cli;

/// <summary>Whatever happens inside, the program ends with one of its codes and one line.</summary>
public sealed class CommandLineTests
{
    private static RootCommand Root(Command command) => new() { command, new Option<bool>("--fault-details") { Recursive = true } };

    private static (int Exit, string Error) Run(Action fault, params string[] args)
    {
        using var error = new StringWriter { NewLine = "\n" };
        var command = new Command("plan");
        command.Arguments.Add(new Argument<string[]>("FILE"));
        command.SetAction(_ => fault());
        return (CommandLine.Run(Root(command), ["plan", .. args], new() { Error = error }), error.ToString());
    }

    [Fact]
    public void An_unforeseen_fault_is_one_line_with_what_was_done_and_how_to_report_it()
    {
        var (exit, error) = Run(() => throw new InvalidCastException("no cast"), "otter.yaml");

        Assert.Equal(3, exit);
        Assert.Equal("protocolist: an unforeseen fault of the program, not of yours, in: plan otter.yaml; please report it with the files, and with what --fault-details prints\n", error);
    }

    [Fact]
    public void Its_details_are_told_when_they_are_asked_for()
    {
        var (exit, error) = Run(() => throw new InvalidCastException("no cast"), "otter.yaml", "--fault-details");

        Assert.Equal(3, exit);
        Assert.Contains("InvalidCastException: no cast", error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_disk_that_fails_is_told_with_2()
    {
        var (exit, error) = Run(() => throw new IOException("the disk is full"), "a");

        Assert.Equal((2, "protocolist: reading standard input or writing standard output failed: the disk is full\n"), (exit, error));
    }

    [Fact]
    public void Where_standard_error_fails_too_the_code_must_do()
    {
        using var error = new Broken();
        var command = new Command("plan");
        command.SetAction(new Action<ParseResult>(_ => throw new InvalidCastException()));

        Assert.Equal(3, CommandLine.Run(Root(command), ["plan"], new() { Error = error }));
        Assert.Equal(2, CommandLine.Run(Root(command), ["plam"], new() { Error = error }));
    }

    [Fact]
    public void An_argument_that_begins_with_an_at_sign_is_a_name() => Assert.Equal(0, Run(() => { }, "@/dev/zero").Exit);

    private sealed class Broken : StringWriter
    {
        public override void WriteLine(string? value) => throw new IOException("closed");
    }
}
