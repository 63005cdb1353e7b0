namespace Protocolist.Fluids;

/// <summary>What a fluid is made of, as mass fractions of what is dissolved in it; the rest is water. <c>default</c> is pure water.</summary>
internal readonly struct Composition
{
    private readonly (Solute What, double Share)[]? _shares;

    /// <summary>Makes a composition; what is not there need not be left out.</summary>
    public Composition(params ReadOnlySpan<(Solute What, double Share)> shares)
    {
        var present = 0;
        foreach (var (_, share) in shares) present += share > 0 ? 1 : 0;
        if (present == 0) return;
        _shares = new (Solute, double)[present];
        foreach (var (what, share) in shares)
        {
            if (share > 0) _shares[^(present--)] = (what, share);
        }
    }

    /// <summary>What it holds beside water, as mass fractions above zero.</summary>
    public ReadOnlySpan<(Solute What, double Share)> Shares => _shares;

    /// <summary>Water, as a mass fraction.</summary>
    public double Water
    {
        get
        {
            var water = 1.0;
            foreach (var (_, share) in Shares) water -= share;
            return water;
        }
    }

    /// <summary>The mass fraction of one of them; 0 where it is not there.</summary>
    public double this[Solute what]
    {
        get
        {
            foreach (var (it, share) in Shares)
            {
                if (it == what) return share;
            }

            return 0;
        }
    }

    /// <summary>The mixture of masses of several fluids.</summary>
    public static Composition Mix(ReadOnlySpan<Composition> fluids, ReadOnlySpan<double> kilograms)
    {
        var all = 0.0;
        var known = 0;
        Span<(Solute What, double Share)> sums = new (Solute, double)[Most(fluids)];
        for (var i = 0; i < fluids.Length; i++)
        {
            all += kilograms[i];
            foreach (var (what, share) in fluids[i].Shares)
            {
                var at = 0;
                while (at < known && sums[at].What != what) at++;
                if (at == known) sums[known++] = (what, 0);
                sums[at].Share += kilograms[i] * share;
            }
        }

        if (!(all > 0)) return default;
        for (var at = 0; at < known; at++) sums[at].Share /= all;
        return new(sums[..known]);
    }

    /// <summary>This much of it (kg) with dissolved buffer salts and their water of crystallisation (kg).</summary>
    public Composition WithSalts(double kilograms, double anhydrousSalts, double crystalWater)
    {
        if (anhydrousSalts + crystalWater == 0) return this;
        var share = kilograms / (kilograms + anhydrousSalts + crystalWater);
        var with = new List<(Solute, double)>(Shares.Length + 1);
        foreach (var (what, was) in Shares)
        {
            if (what != Solute.BufferSalts) with.Add((what, was * share));
        }

        with.Add((Solute.BufferSalts, (this[Solute.BufferSalts] * kilograms + anhydrousSalts) / (kilograms + anhydrousSalts + crystalWater)));
        return new(System.Runtime.InteropServices.CollectionsMarshal.AsSpan(with));
    }

    private static int Most(ReadOnlySpan<Composition> fluids)
    {
        var most = 0;
        foreach (var fluid in fluids) most += fluid.Shares.Length;
        return most;
    }
}
