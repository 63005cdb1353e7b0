using System.Runtime.InteropServices;
using Microsoft.Win32.SafeHandles;

namespace Protocolist.Cli.Files;

/// <summary>What the system knows of a file and .NET does not tell: its number on its device, and whether it is a pipe, a device or a socket.</summary>
internal static partial class NativeStat
{
    /// <summary>Of the form bits of a mode, as every Unix has them.</summary>
    private const int FormMask = 0xF000, FolderForm = 0x4000, PlainForm = 0x8000, LinkForm = 0xA000;

    // Errors of the same number on Linux and macOS: no such file, not a folder on the way.
    private const int NoEntry = 2, NotAFolder = 20;

    /// <summary>The facts; null where this system cannot be asked in this way.</summary>
    public static FileFacts? Of(string path, bool throughLinks)
    {
        try
        {
            return OperatingSystem.IsLinux() ? OnLinux(path, throughLinks)
                : OperatingSystem.IsMacOS() ? OnMac(path, throughLinks)
                : OperatingSystem.IsWindows() ? OnWindows(path)
                : null;
        }
        catch (Exception fault) when (fault is EntryPointNotFoundException or DllNotFoundException)
        {
            return null;
        }
    }

    /// <summary><c>statx(2)</c>, whose record is laid out alike on every processor.</summary>
    private static FileFacts? OnLinux(string path, bool throughLinks)
    {
        const int Here = -100, NotThroughLinks = 0x100;
        const uint FormAndNumber = 0x101;
        Span<byte> record = stackalloc byte[256];
        if (Statx(Here, path, throughLinks ? 0 : NotThroughLinks, FormAndNumber, record) != 0) return Failed();
        var device = ((ulong)Number(record[136..], 4) << 32) | Number(record[140..], 4);
        return new(Sort((int)Number(record[28..], 2)), new(device, Number(record[32..], 8)));
    }

    /// <summary><c>stat(2)</c> and <c>lstat(2)</c> with numbers of 64 bits: device, mode, links, number stand first.</summary>
    private static FileFacts? OnMac(string path, bool throughLinks)
    {
        Span<byte> record = stackalloc byte[256];
        var failed = (throughLinks, RuntimeInformation.ProcessArchitecture == Architecture.X64) switch
        {
            (true, true) => MacStat64(path, record),
            (true, false) => MacStat(path, record),
            (false, true) => MacLinkStat64(path, record),
            (false, false) => MacLinkStat(path, record),
        };
        return failed != 0 ? Failed() : new(Sort((int)Number(record[4..], 2)), new(Number(record, 4), Number(record[8..], 8)));
    }

    private static FileFacts? OnWindows(string path)
    {
        // Names of devices, such as CON, become paths of this form.
        if (Path.GetFullPath(path).StartsWith(@"\\.\", StringComparison.Ordinal)) return new(FileSort.Other, null);
        if (!File.Exists(path)) return null;
        if (File.GetAttributes(path).HasFlag(FileAttributes.ReparsePoint)) return new(FileSort.Link, null);
        try
        {
            using var handle = File.OpenHandle(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
            Span<byte> record = stackalloc byte[52];
            return WindowsFacts(handle, record)
                ? new(FileSort.Plain, new(Number(record[28..], 4), (Number(record[44..], 4) << 32) | Number(record[48..], 4)))
                : null;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    private static FileFacts? Failed() => Marshal.GetLastPInvokeError() is NoEntry or NotAFolder ? new(FileSort.Missing, null) : null;

    private static FileSort Sort(int mode) => (mode & FormMask) switch
    {
        PlainForm => FileSort.Plain,
        FolderForm => FileSort.Folder,
        LinkForm => FileSort.Link,
        _ => FileSort.Other,
    };

    private static ulong Number(ReadOnlySpan<byte> record, int bytes) => bytes switch
    {
        2 => MemoryMarshal.Read<ushort>(record),
        4 => MemoryMarshal.Read<uint>(record),
        _ => MemoryMarshal.Read<ulong>(record),
    };

    [LibraryImport("libc", EntryPoint = "statx", SetLastError = true, StringMarshalling = StringMarshalling.Utf8)]
    private static partial int Statx(int folder, string path, int flags, uint mask, Span<byte> record);

    [LibraryImport("libc", EntryPoint = "stat", SetLastError = true, StringMarshalling = StringMarshalling.Utf8)]
    private static partial int MacStat(string path, Span<byte> record);

    [LibraryImport("libc", EntryPoint = "lstat", SetLastError = true, StringMarshalling = StringMarshalling.Utf8)]
    private static partial int MacLinkStat(string path, Span<byte> record);

    [LibraryImport("libc", EntryPoint = "stat$INODE64", SetLastError = true, StringMarshalling = StringMarshalling.Utf8)]
    private static partial int MacStat64(string path, Span<byte> record);

    [LibraryImport("libc", EntryPoint = "lstat$INODE64", SetLastError = true, StringMarshalling = StringMarshalling.Utf8)]
    private static partial int MacLinkStat64(string path, Span<byte> record);

    [LibraryImport("kernel32", EntryPoint = "GetFileInformationByHandle", SetLastError = true)]
    [return: MarshalAs(UnmanagedType.Bool)]
    private static partial bool WindowsFacts(SafeFileHandle file, Span<byte> record);
}
