#!/usr/bin/env bash
# Opens the demo in a real terminal at three sizes, types, resizes, leaves, and sees that the shell goes on undisturbed.
set -u
cd "$(dirname "$0")/../.."
program="$PWD/src/Stockroom/bin/Debug/net10.0/stockroom.dll"
[ -e "$program" ] || dotnet build src/Stockroom -v q --nologo || exit 1
command -v tmux >/dev/null || { echo "tmux is missing"; exit 1; }
work=$(mktemp -d)
socket=""
trap 'tmux -L "$socket" kill-server 2>/dev/null; rm -rf "$work"' EXIT
dotnet "$program" demo --report --book "$work/demo.stockbook" >/dev/null || { echo "the demo failed"; exit 1; }
settings() { stty -g -F "$(tmux -L "$socket" display-message -p -t check '#{pane_tty}')"; }
screen() { tmux -L "$socket" capture-pane -p -t check; }
wait_for() {
  for _ in $(seq 1 150); do
    screen | grep -q "$1" && return 0
    sleep 0.2
  done
  echo "at $size, '$1' did not appear; the screen shows:"
  screen
  exit 1
}

for size in 80x24 120x40 200x60; do
  [ -z "$socket" ] || tmux -L "$socket" kill-server 2>/dev/null
  socket="stockroom-check-$$-$size"
  tmux -L "$socket" new-session -d -s check -x "${size%x*}" -y "${size#*x}" "env PS1='ready> ' sh" || exit 1
  wait_for 'ready>'
  before=$(settings)
  tmux -L "$socket" send-keys -t check "dotnet $program open --book $work/demo.stockbook" Enter
  wait_for 'Wrong'
  tmux -L "$socket" send-keys -t check F2
  wait_for 'Find'
  tmux -L "$socket" send-keys -t check -l phosphorus
  wait_for ' 1 of 74 containers'
  screen | grep -qE 'sucrose|mercury' && { echo "at $size typing did not filter the holdings"; screen; exit 1; }
  tmux -L "$socket" resize-window -t check -x 100 -y 30
  wait_for 'phosphorus (white)'
  tmux -L "$socket" send-keys -t check F3
  wait_for 'element cabinet, display case'
  tmux -L "$socket" send-keys -t check C-q
  wait_for 'ready>'
  tmux -L "$socket" send-keys -t check "echo terminal \$((40 + 2))" Enter
  wait_for 'terminal 42'
  [ "$(tmux -L "$socket" display-message -p -t check '#{alternate_on}#{mouse_any_flag}#{cursor_flag}')" = 001 ] || { echo "at $size the terminal was not left as it was found"; exit 1; }
  [ "$(settings)" = "$before" ] || { echo "at $size the line settings were not put back"; exit 1; }
done
echo "80x24, 120x40, 200x60: opened, typed, resized, left clean"
