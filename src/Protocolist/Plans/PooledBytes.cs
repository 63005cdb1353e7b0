using System.Buffers;

namespace Protocolist.Plans;

/// <summary>Bytes written one after another into a rented array: a plan's text is too large to be made twice for each plan.</summary>
internal sealed class PooledBytes : IBufferWriter<byte>, IDisposable
{
    private byte[] _bytes = ArrayPool<byte>.Shared.Rent(1 << 18);
    private int _count;

    public ReadOnlySpan<byte> Written => _bytes.AsSpan(0, _count);

    public void Advance(int count) => _count += count;

    public Memory<byte> GetMemory(int sizeHint = 0)
    {
        Grow(sizeHint);
        return _bytes.AsMemory(_count);
    }

    public Span<byte> GetSpan(int sizeHint = 0)
    {
        Grow(sizeHint);
        return _bytes.AsSpan(_count);
    }

    public void Clear() => _count = 0;

    public void Dispose()
    {
        ArrayPool<byte>.Shared.Return(_bytes);
        _bytes = [];
    }

    private void Grow(int sizeHint)
    {
        if (_bytes.Length - _count >= Math.Max(sizeHint, 1)) return;
        var larger = ArrayPool<byte>.Shared.Rent(Math.Max(2 * _bytes.Length, _count + sizeHint));
        Written.CopyTo(larger);
        ArrayPool<byte>.Shared.Return(_bytes);
        _bytes = larger;
    }
}
