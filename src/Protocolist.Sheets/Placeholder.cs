namespace Protocolist.Sheets;

internal static class Placeholder;
