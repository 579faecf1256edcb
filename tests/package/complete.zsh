# What an interactive zsh proposes for a line, one after the other with blanks between: its line editor is run in a terminal of its own.
# usage: zsh -f complete.zsh LINE        the line up to the tab
zmodload zsh/zpty
zpty it zsh -f -i
zpty -w it 'PS1=; LISTMAX=10000; stty cols 200 rows 60; autoload -Uz compinit; compinit -u -D; bindkey "^I" complete-word; zstyle ":completion:*" menu no'
# ready is the line editor, not the shell: until it has the terminal, a kill sign among the keys would take what was typed before it.
# every proposal goes through compadd: told with a word before it, then proposed
zpty -w it 'compadd() { local -a told; builtin compadd -A told "$@"; print -rl -- "PROPOSED:"$^told >/dev/stderr; builtin compadd "$@" }; zle-line-init() { print "REA""DY" >/dev/stderr }; zle -N zle-line-init'
zpty -r -m it before '*READY*'
zpty -w -n it "$1"$'\t\x15print "DO""NE"\n'
zpty -r -m it said '*DONE*'
zpty -d it
proposed=()
for line in ${(f)${said//$'\r'/}}; do [[ $line == *PROPOSED:?* ]] && proposed+=(${line#*PROPOSED:}); done
print -r -- ${(u)proposed}
