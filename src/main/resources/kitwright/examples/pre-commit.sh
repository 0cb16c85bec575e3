#!/bin/sh
# Laid down by “kitwright guard”: judges what is staged before it is committed, and lets nothing in
# that must stop. “git commit --no-verify” passes it over.
if ! command -v kitwright > /dev/null; then
  echo "pre-commit: kitwright is not on the PATH, so nothing was judged and nothing committed." >&2
  exit 1
fi
exec kitwright check --staged --fail-on stop --ledger 'FOLDER'
