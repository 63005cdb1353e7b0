#!/usr/bin/env bash
# The command line as machine code that needs no runtime, into artifacts/native/RID. Needs the SDK and a linker (clang or gcc).
#   tools/publish-native.sh [RID]
# Tested on linux-x64. The others (linux-arm64, osx-arm64, win-x64 from bash) are the same command on their own systems, and untested.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."
rid=${1:-linux-x64}
dotnet publish src/Protocolist.Cli -c Release -r "$rid" -p:Native=true -o "artifacts/native/$rid" -v q
echo "artifacts/native/$rid/protocolist"
