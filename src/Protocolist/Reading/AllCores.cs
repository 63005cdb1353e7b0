namespace Protocolist.Reading;

/// <summary>Work on many files of which each is looked at by itself, on as many cores as there are.</summary>
internal static class AllCores
{
    /// <summary>The result for each, in their order: nobody can tell from it how many cores there were.</summary>
    public static TResult[] Each<T, TResult>(IReadOnlyList<T> items, Func<T, TResult> work)
    {
        var results = new TResult[items.Count];
        Parallel.For(0, items.Count, i => results[i] = work(items[i]));
        return results;
    }
}
