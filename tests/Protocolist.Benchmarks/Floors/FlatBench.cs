namespace Protocolist.Benchmarks.Floors;

/// <summary>The opening times of the frozen bench as flat arrays of minutes since 1970 on its own clocks, made once.</summary>
internal sealed class FlatBench
{
    public static readonly int Epoch = new DateOnly(1970, 1, 1).DayNumber;

    private readonly long[] opens;
    private readonly long[] closes;
    private readonly bool[] isOpen;
    private readonly int firstDay;

    public FlatBench(DateOnly from, int years)
    {
        var (opening, closing) = (new List<long>(), new List<long>());
        firstDay = from.DayNumber;
        isOpen = new bool[from.AddYears(years).DayNumber - firstDay];
        for (var i = 0; i < isOpen.Length; i++)
        {
            var day = from.AddDays(i);
            var closed = (day >= new DateOnly(2027, 3, 29) && day <= new DateOnly(2027, 4, 2)) || day is { Month: 12, Day: 25 } or { Month: 1, Day: 1 };
            if (closed || day.DayOfWeek == DayOfWeek.Sunday) continue;
            var midnight = (day.DayNumber - Epoch) * 1440L;
            var (early, late) = day.DayOfWeek == DayOfWeek.Saturday ? (9 * 60, 13 * 60) : ((8 * 60) + 30, 18 * 60);
            opening.Add(midnight + early);
            closing.Add(midnight + late);
            isOpen[i] = true;
        }

        (opens, closes) = ([.. opening], [.. closing]);
    }

    /// <summary>The first open minute from a moment on.</summary>
    public long Open(long from) => RoomFor(from, 0);

    /// <summary>The first minute from which the bench stays open for so long.</summary>
    public long RoomFor(long from, int minutes)
    {
        var i = Array.BinarySearch(closes, from);
        for (i = i < 0 ? ~i : i; ; i++)
        {
            var at = Math.Max(from, opens[i]);
            if (at + minutes <= closes[i]) return at;
        }
    }

    /// <summary>The first open day from a day on.</summary>
    public DateOnly OpenDay(DateOnly day)
    {
        var i = day.DayNumber - firstDay;
        while (!isOpen[i]) i++;
        return DateOnly.FromDayNumber(firstDay + i);
    }
}
