namespace Protocolist.Testing;

internal static class Placeholder;
