namespace Protocolist.Benchmarks.Floors;

/// <summary>
/// The floor under a plan: the numbers that the plan of the frozen large mammal holds, worked out in straight lines for that one case, with
/// no names to look up, no choice of protocol and no reasons. Its formulas and constants are those of the library, whose sources stand
/// there. Left out, so that the floor is low rather than high: what the checks compare, care labour, and every word.
/// </summary>
internal static class ByHand
{
    private const double MassKg = 7.2, GirthMm = 440, Celsius = 19;
    private const double StockFormaldehyde = 0.37, StockMethanol = 0.12;
    private const double TargetFormaldehyde = 0.03943783604150555, TargetMethanol = 0.012790649526974774, TargetSalts = 0.009821221288384016;

    // Share of the body, how many, thickness against the thickest place, whether a cavity; then the dose at a site, low and high, mL.
    private static readonly (double Share, int Count, double Thickness, bool Cavity, double Low, double High)[] Regions =
    [
        (0.08, 1, 0.57, false, 2, 5), (0.07, 1, 0.59, false, 2, 5), (0.24, 1, 1, true, 5, 10), (0.26, 1, 1, true, 5, 10),
        (0.12, 2, 0.36, false, 2, 5), (0.21, 2, 0.47, false, 5, 10), (0.02, 1, 0.20, false, 2, 5),
    ];

    // Walker 1944, as in the library's own table.
    private static readonly double[] WalkerShare = [0, 0.05, 0.10, 0.15, 0.20, 0.25, 0.30, 0.35, 0.40, 0.45, 0.50];
    private static readonly double[] WalkerDensity = [998.6, 1014.1, 1029.9, 1044.9, 1060.0, 1075.7, 1091.0, 1106.6, 1122.0, 1138.2, 1157.0];
    private static readonly double[] MethanolShare = [0, 0.05, 0.10, 0.15, 0.20];
    private static readonly double[] MethanolDensity = [0, -11.9, -23.8, -36.4, -48.9];
    private static readonly double[] WalkerSlopes = Slopes(WalkerShare, WalkerDensity);
    private static readonly double[] MethanolSlopes = Slopes(MethanolShare, MethanolDensity);

    /// <summary>Works the whole plan out.</summary>
    /// <param name="start">The earliest start, minutes since 1970 in UTC.</param>
    /// <param name="bench">The opening times, laid out flat beforehand.</param>
    public static PlanNumbers Plan(long start, FlatBench bench)
    {
        var plan = new PlanNumbers();
        Body(plan);
        Injections(plan);
        Cuts(plan);
        Soak(plan);
        Volumes(plan);
        Recipe(plan);
        Shopping(plan);
        Dates(plan, start, bench);
        return plan;
    }

    private static void Body(PlanNumbers plan)
    {
        plan.VolumeMl = MassKg / 1030 * 1e6;
        plan.VolumeLowMl = MassKg * 0.98 / 1060 * 1e6;
        plan.VolumeHighMl = MassKg * 1.02 / 950 * 1e6;
        plan.HalfMm = GirthMm / (2 * Math.PI);
        plan.HalfLowMm = plan.HalfMm * 0.9;
        plan.HalfHighMm = plan.HalfMm * 1.1;
    }

    private static void Injections(PlanNumbers plan)
    {
        const double dose = 100;
        for (var i = 0; i < Regions.Length; i++)
        {
            var r = Regions[i];
            var thickness = 2 * plan.HalfMm * r.Thickness;
            var usual = thickness switch { < 5 => 0.1, < 10 => 0.25, < 15 => 0.5, < 20 => 1, < 35 => 2, < 50 => 5, _ => 10 };
            var wanted = Math.Clamp(usual, r.Low, r.High);
            var kilograms = MassKg * r.Share / r.Count;
            var sites = (int)Math.Max(1, Math.Ceiling((kilograms * dose / wanted) - 1e-9));
            if (kilograms * dose / sites < r.Low) sites = Math.Max(1, (int)(kilograms * dose / r.Low));
            var site = kilograms * dose / sites;
            plan.Sites[i] = new(sites * r.Count, site, site * sites * r.Count, wanted);
            plan.DoseMl += site * sites * r.Count;
        }
    }

    private static void Cuts(PlanNumbers plan)
    {
        for (var i = 1; i < Regions.Length; i++)
        {
            var r = Regions[i];
            var half = plan.HalfMm * r.Thickness;
            var along = plan.VolumeMl * r.Share * 1000 / r.Count / (Math.PI * half * half);
            plan.Cuts[i - 1] = new((int)Math.Max(1, Math.Ceiling((along / 30) - 1e-9)) * r.Count, 12.5, (r.Cavity ? 0.2 : 0.5) * 2 * half, 30);
        }
    }

    private static void Soak(PlanNumbers plan)
    {
        // Viscosity of water at 15 and 20 degC, between them by powers.
        var viscosity = 1.138 * Math.Pow(1.002 / 1.138, (Celsius - 15) / 5);
        var warmth = Math.Sqrt((Celsius + 273.15) / 293.15 * 1.002 / viscosity);
        var grid = 0.866 * 45;
        plan.ReachLowMm = Math.Min(plan.HalfMm, grid - Depot(10));
        plan.ReachHighMm = Math.Min(plan.HalfMm, grid - Depot(5));
        plan.SoakLowH = Squared(plan.ReachLowMm / warmth) + 24;
        plan.SoakHighH = Squared(plan.ReachHighMm / warmth) + 48;

        var bindingLow = 48 + ((24 - 48) * (Celsius - 15) / 5);
        for (var i = 0; i < Regions.Length; i++)
        {
            var r = Regions[i];
            var half = plan.HalfMm * r.Thickness;
            var wanted = plan.Sites[i].WantedMl;
            var between = Math.Max(0, (Math.Sqrt(3) / 2 * 10 * Math.Cbrt(wanted / (100 * 1030 / 1e6))) - Depot(wanted));
            var depth = Math.Min(r.Cavity ? 0.35 * half : half, between);
            depth = Math.Max(depth, Math.Min(half, r.Cavity ? 6 : 11));
            plan.ModelLowH = Math.Max(plan.ModelLowH, Squared(depth / (2.0 * warmth)) + bindingLow);
            plan.ModelHighH = Math.Max(plan.ModelHighH, Squared(depth / ((r.Cavity ? 0.8 : 1.0) * warmth)) + 48);
        }
    }

    private static void Volumes(PlanNumbers plan)
    {
        // The tub of 126 x 26 cm, filled until 20 mm stand over the body; the tank of 124 x 24 x 34 cm, filled to 50 mm below the brim.
        const double tub = 1.26 * 0.26 * 1e6, tank = 1.24 * 0.24 * 1e6;
        plan.FixMl = (tub * ((2 * plan.HalfMm) + 20) / 1000) - plan.VolumeMl;
        plan.FixLevelMm = plan.FixMl / tub * 1000;
        plan.FixLevelWithBodyMm = (plan.FixMl + plan.VolumeMl) / tub * 1000;
        plan.FixRatio = plan.FixMl / plan.VolumeMl;
        plan.HouseMl = (tank * 0.290) - plan.VolumeMl;
        plan.HouseRatio = plan.HouseMl / plan.VolumeMl;
        plan.AskedMl = plan.DoseMl + (2 * plan.FixMl) + plan.HouseMl;
        plan.SpillMl = 0.05 * plan.AskedMl;
        plan.MixedMl = plan.AskedMl + plan.SpillMl + (3 * 20);
    }

    /// <summary>Stock, water and two salts to one volume: masses are kept, volumes follow from densities, a few rounds settle the whole.</summary>
    private static void Recipe(PlanNumbers plan)
    {
        var litres = plan.MixedMl / 1000;
        var target = Density(TargetFormaldehyde, TargetMethanol, TargetSalts, Celsius) / 1000;
        var litresAt20 = litres * target / (Density(TargetFormaldehyde, TargetMethanol, TargetSalts, 20) / 1000);
        plan.AcidG = 4.0 * litresAt20;
        plan.BasicG = 6.5 * litresAt20;
        var salts = (plan.AcidG + plan.BasicG) / 1000;
        var anhydrous = ((plan.AcidG * 119.976 / 137.991) + plan.BasicG) / 1000;
        var formaldehyde = litres * target * TargetFormaldehyde;
        var mass = litres * target;
        double stock = 0, water = 0;
        for (var round = 0; round < 40; round++)
        {
            stock = formaldehyde / StockFormaldehyde;
            water = mass - salts - stock;
            var next = litres * Density(formaldehyde / mass, stock * StockMethanol / mass, anhydrous / mass, Celsius) / 1000;
            var change = Math.Abs(next - mass);
            mass = next;
            if (change < 1e-13 * mass && round > 0) break;
        }

        plan.StockG = stock * 1000;
        plan.StockMl = stock * 1e6 / Density(StockFormaldehyde, StockMethanol, 0, Celsius);
        plan.WaterG = water * 1000;
        plan.WaterMl = water * 1e6 / Water(Celsius);
        plan.ContractionMl = plan.StockMl + plan.WaterMl - plan.MixedMl;
    }

    private static void Shopping(PlanNumbers plan)
    {
        plan.Formalin = Cover(plan.StockMl, 6000, 5000, 3100, 1000, 950);
        plan.Acid = Cover(plan.AcidG, 500, 500, 1400, 0, 0);
        plan.Basic = Cover(plan.BasicG, 400, 500, 1550, 0, 0);
        plan.CashMinor = plan.Formalin.Cost + plan.Acid.Cost + plan.Basic.Cost;

        // Gloves, blades, labels, needles of two gauges, tape, tubes: pieces used at what a piece costs.
        var pieces = (11 * 13) + (1 * 12) + (2 * 8) + (3 * 9) + (4 * 9) + (1 * 15) + (1 * 9);
        plan.UsedMinor = (long)Math.Round(
            Worth(plan.StockMl, 6000, 3100 / 5000.0, plan.Formalin)
            + Worth(plan.AcidG, 500, 1400 / 500.0, plan.Acid)
            + Worth(plan.BasicG, 400, 1550 / 500.0, plan.Basic)
            + pieces);

        // Goggles and aprons eight uses, forceps two, a syringe one.
        plan.WearMinor = Coins(8 * 750 / 400.0) + Coins(8 * 1800 / 300.0) + Coins(2 * 980 / 2000.0) + Coins(1 * 840 / 20 / 4.0);
        plan.HandsOnMin = 10 + 40 + 45 + 120 + 20 + 15 + 10 + 30 + 30 + 15 + 15 + 15;
        plan.LabourMinor = (long)Math.Round(plan.HandsOnMin * 1800 / 60.0);
        plan.WasteMl = (2 * plan.FixMl) + 60;
        plan.DisposalMinor = (long)Math.Round(plan.WasteMl / 1000 * 320) + (11 * 6) + (8 * 1440 / 120);
        plan.TotalMinor = plan.UsedMinor + plan.WearMinor + plan.LabourMinor + plan.DisposalMinor;
        plan.CareFluidMinor = (long)Math.Round(350 / plan.MixedMl * (plan.UsedMinor - pieces));
    }

    private static void Dates(PlanNumbers plan, long start, FlatBench bench)
    {
        ReadOnlySpan<int> before = [10, 40, 45, 120, 20], after = [10, 30, 30, 15, 15];
        var at = bench.RoomFor(start, 10 + 40 + 45 + 120 + 20 + 15);
        var step = 0;
        foreach (var minutes in before)
        {
            plan.Steps[step++] = (at, at + minutes);
            at += minutes;
        }

        var soaked = at;
        var end = bench.RoomFor(at + (long)Math.Ceiling(plan.SoakLowH * 60), 10 + 30 + 30 + 15 + 15);
        plan.IsLate = end > at + (plan.SoakHighH * 60);
        plan.Steps[step++] = (at, end);
        for (var look = bench.Open(soaked + (3 * 1440)); look < end; look = bench.Open(look + (3 * 1440))) plan.Looks.Add(look);
        at = end;
        foreach (var minutes in after)
        {
            plan.Steps[step++] = (at, at + minutes);
            at += minutes;
        }

        var day = DateOnly.FromDayNumber((int)(at / 1440) + FlatBench.Epoch);
        var last = DateOnly.FromDayNumber((int)(start / 1440) + FlatBench.Epoch).AddYears(10);
        plan.FirstCheck = bench.OpenDay(day.AddDays(28));
        for (var n = 1; day.AddMonths(6 * n) is var due && due <= last; n++) plan.Rounds.Add(bench.OpenDay(due));
        for (var n = 1; day.AddYears(n) is var due && due <= last; n++) plan.Tests.Add(bench.OpenDay(due));
        for (var n = 1; day.AddYears(2 * n) is var due && due <= last; n++) plan.Seals.Add(bench.OpenDay(due));
    }

    private static long Coins(double minor) => (long)Math.Round(minor, MidpointRounding.AwayFromZero);

    private static double Squared(double value) => value * value;

    private static double Depot(double siteMl) => 10 * Math.Cbrt(3 * siteMl / (4 * Math.PI * 0.2));

    /// <summary>The cheapest way to cover what the shelf lacks with two sizes of pack.</summary>
    private static Purchase Cover(double need, double onHand, double large, long largePrice, double small, long smallPrice)
    {
        var lack = need - onHand;
        var best = new Purchase(0, 0, 0, 0);
        if (lack <= 0) return best;
        var least = long.MaxValue;
        for (var larges = 0; larges <= (int)Math.Ceiling(lack / large); larges++)
        {
            var rest = lack - (larges * large);
            var smalls = rest <= 0 ? 0 : small > 0 ? (int)Math.Ceiling(rest / small) : -1;
            if (smalls < 0) continue;
            var price = (larges * largePrice) + (smalls * smallPrice);
            if (price >= least) continue;
            least = price;
            best = new(larges, smalls, (larges * large) + (smalls * small), price);
        }

        return best;
    }

    private static double Worth(double used, double onHand, double unit, Purchase bought) =>
        (Math.Min(used, onHand) * unit) + (used > onHand ? (used - onHand) * bought.Cost / bought.Amount : 0);

    private static double Water(double celsius)
    {
        var from = celsius - 3.983035;
        return 999.974950 * (1 - (from * from * (celsius + 301.797) / (522528.9 * (celsius + 69.34881))));
    }

    private static double Density(double formaldehyde, double methanol, double salts, double celsius)
    {
        var effect = 0.71 + ((1 - 0.71) * Math.Min(formaldehyde / StockFormaldehyde, 1));
        var at18 = At(WalkerShare, WalkerDensity, WalkerSlopes, formaldehyde) + (effect * At(MethanolShare, MethanolDensity, MethanolSlopes, methanol));
        return (at18 / 998.6 * Water(celsius) * (1 - (6e-4 * (formaldehyde + methanol) * (celsius - 18)))) + (800 * salts);
    }

    // Monotone cubic pieces between the points of a table: Fritsch and Butland 1984.
    private static double At(double[] x, double[] y, double[] slope, double at)
    {
        if (at <= x[0]) return y[0];
        var i = 0;
        while (at > x[i + 1]) i++;
        var width = x[i + 1] - x[i];
        var s = (at - x[i]) / width;
        var r = 1 - s;
        return (y[i] * (1 + (2 * s)) * r * r) + (y[i + 1] * s * s * (3 - (2 * s))) + (width * s * r * ((slope[i] * r) - (slope[i + 1] * s)));
    }

    private static double[] Slopes(double[] x, double[] y)
    {
        var (last, slopes) = (x.Length - 1, new double[x.Length]);
        double Chord(int i) => (y[i + 1] - y[i]) / (x[i + 1] - x[i]);
        for (var i = 1; i < last; i++)
        {
            double before = x[i] - x[i - 1], after = x[i + 1] - x[i], left = Chord(i - 1), right = Chord(i);
            double a = (2 * after) + before, b = after + (2 * before);
            if (left * right > 0) slopes[i] = (a + b) / ((a / left) + (b / right));
        }

        slopes[0] = End(x[1] - x[0], x[2] - x[1], Chord(0), Chord(1));
        slopes[last] = End(x[last] - x[last - 1], x[last - 1] - x[last - 2], Chord(last - 1), Chord(last - 2));
        return slopes;
    }

    private static double End(double near, double far, double nearSlope, double farSlope)
    {
        var slope = ((((2 * near) + far) * nearSlope) - (near * farSlope)) / (near + far);
        if (slope * nearSlope <= 0) return 0;
        return nearSlope * farSlope < 0 && Math.Abs(slope) > Math.Abs(3 * nearSlope) ? 3 * nearSlope : slope;
    }
}
