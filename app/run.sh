#!/usr/bin/env bash
# Builds Headcap and opens it on the demo workshop; further words go to the program.
#   app/run.sh                 the window, on the demo workshop
#   app/run.sh report 2026-005 -o report.pdf   any command of `headcap --help`
# Without a display it writes the finished demo job's treatment report and says where it lies.
set -euo pipefail
root=$(cd "$(dirname "$0")/.." && pwd)
# shellcheck source=app/build.sh
. "$root/app/build.sh"

install_packages "$root/app/packages.txt"
configure_and_build "$root" "$root/build" -DCMAKE_BUILD_TYPE=Release -- headcap

headcap=$root/build/headcap
if [ $# -gt 0 ]; then
    [ -n "${DISPLAY:-}${WAYLAND_DISPLAY:-}" ] || export QT_QPA_PLATFORM="${QT_QPA_PLATFORM:-offscreen}"
    exec "$headcap" "$@"
fi

demo=${HEADCAP_DEMO:-$root/build/demo-workshop}
if [ ! -e "$demo/workshop.sqlite" ]; then
    # Built beside and moved, so that one that was stopped half way is not taken for a workshop.
    rm -rf "$demo.part"
    QT_QPA_PLATFORM=offscreen "$headcap" demo --json "$demo.part" >"$demo.json"
    mv "$demo.part" "$demo"
fi
if [ -n "${DISPLAY:-}${WAYLAND_DISPLAY:-}" ]; then
    exec "$headcap" --workshop "$demo"
fi
export QT_QPA_PLATFORM=offscreen
if [ ! -e "$demo.json" ]; then
    echo "The demo workshop lies at $demo; which of its jobs is finished was not noted." >&2
    echo "Remove that folder to have it built afresh, or name a job: app/run.sh report JOB -o FILE.pdf" >&2
    exit 1
fi
job=$(sed -n 's/.*"finished_job":"\([^"]*\)".*/\1/p' "$demo.json")
report=$root/build/treatment-report-$job.pdf
"$headcap" --workshop "$demo" report "$job" -o "$report" >/dev/null
echo "There is no display here. The treatment report of the demo's finished job $job lies at"
echo "  $report"
