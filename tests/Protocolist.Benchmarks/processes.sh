#!/usr/bin/env bash
# What whole processes cost, beside an empty program, with the runtime and natively: wall time and processor time, median of so many
# starts, as a table in Markdown. Needs the SDK; the native half needs a linker too (clang, or gcc as here), and is told as skipped without one.
#   processes.sh [STARTS]
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."
export DOTNET_NOLOGO=1 DOTNET_CLI_TELEMETRY_OPTOUT=1 LC_ALL=C
starts=${1:-20}
out=artifacts/processes
rid=linux-x64
mkdir -p "$out"
specimen=tests/Protocolist.Benchmarks/Fixture/large-mammal.yaml
bench=tests/Protocolist.Benchmarks/Fixture/bench.yaml

publish() { # PROJECT FOLDER PROPERTY...
  local project=$1 folder=$2
  shift 2
  rm -rf "$folder"
  dotnet publish "$project" -c Release -r "$rid" -o "$folder" "$@" -v q >"$folder.log" 2>&1 && return
  echo "cannot publish $folder: $(grep -m1 error "$folder.log" | cut -c1-200)" >&2
  return 1
}

# Median wall and processor milliseconds, peak memory of the last start, and the exit code.
times() { # COMMAND...
  local i walls=() cpus=() code=0 start end line
  "$@" >/dev/null 2>&1 || true
  for ((i = 0; i < starts; i++)); do
    start=$EPOCHREALTIME
    code=0
    /usr/bin/time -f '%U %S %M' -o "$out/time" "$@" >/dev/null 2>"$out/stderr" || code=$?
    end=$EPOCHREALTIME
    line=$(tail -n 1 "$out/time")
    walls+=("$((${end/./} - ${start/./}))")
    cpus+=("$(awk '{printf "%d", ($1 + $2) * 1000}' <<<"$line")")
  done
  local wall cpu memory
  wall=$(printf '%s\n' "${walls[@]}" | sort -n | awk '{a[NR]=$1} END {printf "%.1f", a[int((NR+1)/2)]/1000}')
  cpu=$(printf '%s\n' "${cpus[@]}" | sort -n | awk '{a[NR]=$1} END {print a[int((NR+1)/2)]}')
  memory=$(awk '{printf "%.0f", $3/1000}' <<<"$line")
  echo "$wall ms | $cpu ms | $memory MB | exit $code"
}

row() { # NAME COMMAND...
  local name=$1
  shift
  echo "| $name | $(times "$@") |"
}

program() { # FOLDER-OF-TOOL
  local name
  for name in protocolist Protocolist.Cli; do [ -x "$1/$name" ] && echo "$1/$name" && return; done
  return 1
}

# Whether the native program says what the other says, byte by byte, in every form.
same() {
  local form built native
  built=$(program src/Protocolist.Cli/bin/Release/net10.0) native=$(program "$out/native")
  for form in text json html ics csv; do
    cmp -s <("$built" plan "$specimen" --bench "$bench" --start 2027-03-01T09:00 --format "$form" 2>&1) \
      <("$native" plan "$specimen" --bench "$bench" --start 2027-03-01T09:00 --format "$form" 2>&1) || printf '%s differs; ' "$form"
  done
  echo compared
}

measure() { # KIND FOLDER-OF-TOOL FOLDER-OF-EMPTY
  local tool empty=$3/Empty
  tool=$(program "$2") || { echo "| $1 | no program in $2 | | | |"; return; }
  row "$1: empty program" "$empty"
  row "$1: --help" "$tool" --help
  row "$1: plan" "$tool" plan "$specimen" --bench "$bench" --start 2027-03-01T09:00
  row "$1: plan as JSON" "$tool" plan "$specimen" --bench "$bench" --start 2027-03-01T09:00 --json
  row "$1: check protocols" "$tool" check protocols
}

echo "| process | wall, median of $starts | processor | peak memory | exit |"
echo "|---|---|---|---|---|"
dotnet build src/Protocolist.Cli -c Release -v q >/dev/null
dotnet build tests/Protocolist.Benchmarks/Empty -c Release -v q >/dev/null
measure "as built" src/Protocolist.Cli/bin/Release/net10.0 tests/Protocolist.Benchmarks/Empty/bin/Release/net10.0
publish src/Protocolist.Cli "$out/ready" && publish tests/Protocolist.Benchmarks/Empty "$out/ready-empty" -p:PublishReadyToRun=true --self-contained false &&
  measure "published, compiled ahead" "$out/ready" "$out/ready-empty"

linker=()
if command -v clang >/dev/null; then linker=(); elif command -v gcc >/dev/null; then linker=(-p:CppCompilerAndLinker=gcc); else
  echo "| native | skipped: no linker here | | | |"
  exit 0
fi
if publish tests/Protocolist.Benchmarks/Empty "$out/native-empty" -p:PublishAot=true "${linker[@]}" &&
  publish src/Protocolist.Cli "$out/native" -p:Native=true; then
  measure "native" "$out/native" "$out/native-empty"
  echo "| native: the program | $(du -m "$(program "$out/native")" | cut -f1) MB | | | |"
  echo "| native: text, json, html, ics, csv against the program as built | $(same) | | | |"
else
  echo "| native | skipped: it cannot be published here, see above | | | |"
fi
