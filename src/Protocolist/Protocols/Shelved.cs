namespace Protocolist.Protocols;

/// <summary>A protocol on a shelf: the class by which it is chosen, and the whole of it, read when somebody first needs it.</summary>
internal sealed class Shelved
{
    private readonly Lazy<Protocol> _protocol;

    public Shelved(Protocol protocol)
        : this(protocol.Id, protocol.File, protocol.Class, new Lazy<Protocol>(protocol))
    {
    }

    public Shelved(string id, string file, SpecimenClass @class, Lazy<Protocol> protocol) => (Id, File, Class, _protocol) = (id, file, @class, protocol);

    public string Id { get; }

    public string File { get; }

    public SpecimenClass Class { get; }

    public Protocol Protocol => _protocol.Value;
}
