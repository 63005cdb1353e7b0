namespace Protocolist.Formulas;

/// <summary>The answer to a condition. Over a range of specimens it may be yes for some and no for others.</summary>
internal enum Truth
{
    No,
    Yes,
    Depends,
}

internal static class TruthTable
{
    public static Truth And(Truth a, Truth b) => (a, b) switch
    {
        (Truth.No, _) or (_, Truth.No) => Truth.No,
        (Truth.Yes, Truth.Yes) => Truth.Yes,
        _ => Truth.Depends,
    };

    public static Truth Or(Truth a, Truth b) => Not(And(Not(a), Not(b)));

    public static Truth Not(Truth a) => a switch { Truth.No => Truth.Yes, Truth.Yes => Truth.No, _ => Truth.Depends };

    public static Truth Of(bool answer) => answer ? Truth.Yes : Truth.No;
}
