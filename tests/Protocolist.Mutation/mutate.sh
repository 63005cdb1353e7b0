#!/usr/bin/env bash
# A mutation run over the rooms named in Probe/stryker-config.json: Stryker makes and compiles the mutants, the programs here try them.
# Stryker's own runner starts the tests anew for each mutant, about 12 s each; this one keeps them warm and asks only the tests that pass
# the mutant. Needs the tool dotnet-stryker (dotnet tool install --global dotnet-stryker). Takes two to three hours on two cores.
# Usage: mutate.sh [seconds of tests for each mutant, 2 where not given]; results below artifacts/mutation.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."
seconds=${1:-2}
work=$PWD/artifacts/mutation
run=$work/run
rm -rf "$work" && mkdir -p "$run"
export DOTNET_NOLOGO=1 DOTNET_GCHeapHardLimit=0x100000000

echo "== the tests"
dotnet build tests/Protocolist.Tests -c Release -v q
dotnet build tests/Protocolist.Mutation/Protocolist.Mutation.csproj -c Release -v q
cp -r tests/Protocolist.Tests/bin/Release/net10.0/. "$run"
cp tests/Protocolist.Mutation/bin/Release/net10.0/Protocolist.Mutation.dll "$run"

echo "== the mutants"
(cd tests/Protocolist.Mutation/Probe && MUTATED_LIBRARY=$work/Protocolist.dll dotnet stryker --output "$work/stryker" > "$work/stryker.log") &
stryker=$!
until grep -q "mutants will be tested" "$work/stryker.log" 2>/dev/null; do
  kill -0 $stryker || { cat "$work/stryker.log"; exit 1; }
  sleep 5
done
until [ -f "$work/Protocolist.dll" ]; do sleep 1; done # the first of Stryker's test runs keeps the mutated library
sleep 5
mv "$work/Protocolist.dll" "$run" # out of the way of the test runs that follow: they keep it again

here() { (cd "$run" && exec dotnet exec --depsfile Protocolist.Tests.deps.json --runtimeconfig Protocolist.Tests.runtimeconfig.json Protocolist.Mutation.dll "$@"); }

echo "== which test passes which mutants"
here cover "$work/cover-0.json" 0 2 & first=$!
here cover "$work/cover-1.json" 1 2
wait $first
wait $stryker
report=$(find "$work/stryker" -name mutation-report.json)

echo "== the hunt"
hunt() { while true; do rc=0; here hunt "$report" "$work/cover-0.json,$work/cover-1.json" "$work/results-$1" "$1" 2 "$seconds" || rc=$?; [ "$rc" = 3 ] || [ "$rc" -gt 100 ] || return "$rc"; done; }
hunt 0 & hunt 1 & wait

echo "== what is made once"
alone() { grep -h -P "\tMadeOnce\t" "$work"/results-[01] | cut -f1 | awk -v p="$1" 'NR % 2 == p' | while read -r id; do here alone "$report" "$work/alone-$1" "$id" || true; done; }
alone 0 & alone 1 & wait

here score "$report" "$work"/results-0 "$work"/results-1 "$work"/alone-0 "$work"/alone-1 | tee "$work/score.txt" | head -n 6
