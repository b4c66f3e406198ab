# A shell that leads the program in a terminal: notes the terminal's state, runs it, notes how it ended and the state
# again, and ends as it did. $1: the folder for the notes; the rest: what is run. STDOUT: another terminal to write to.
notes=$1
shift
# It outlives its window, and keys that reach it while the program is put aside: it has to tell how that ended.
trap : HUP INT QUIT TSTP
# Terminals of other tests that are open in the test's process: who inherits one keeps it alive.
for fd in /proc/$$/fd/*; do
  fd=${fd##*/}
  [ "$fd" -lt 3 ] || [ "$fd" -eq 255 ] || eval "exec $fd>&-"
done
stty -a > "$notes/before"
# What the shell itself says of a killed program would stand on its last picture.
exec 3>&2 2> /dev/null
# The inner one becomes the program: its number is the program's.
bash -c 'echo $$ > "$0/pid"; [ -z "$STDOUT" ] || exec > "$STDOUT"; exec "$@"' "$notes" "$@" 2>&3 3>&-
code=$?
echo $code > "$notes/code"
stty -a > "$notes/after"
exit $code
