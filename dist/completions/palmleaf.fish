# Print an optspec for argparse to handle cmd's options that are independent of any subcommand.
function __fish_palmleaf_global_optspecs
    string join \n format= h/help V/version
end

function __fish_palmleaf_needs_command
    # Figure out if the current invocation already has a command.
    set -l cmd (commandline -opc)
    set -e cmd[1]
    argparse -s (__fish_palmleaf_global_optspecs) -- $cmd 2>/dev/null
    or return
    if set -q argv[1]
        # Also print the command, so this can be used to figure out what it is.
        echo $argv[1]
        return 1
    end
    return 0
end

function __fish_palmleaf_using_subcommand
    set -l cmd (__fish_palmleaf_needs_command)
    test -z "$cmd"
    and return 1
    contains -- $cmd[1] $argv
end

complete -c palmleaf -n "__fish_palmleaf_needs_command" -l format -d 'How findings and lists are printed' -r -f -a "full\t'For people, with the faulty line underlined'
short\t'One line each; quotes no line of a case'
json\t'For programs'"
complete -c palmleaf -n "__fish_palmleaf_needs_command" -s h -l help -d 'Print help (see more with \'--help\')'
complete -c palmleaf -n "__fish_palmleaf_needs_command" -s V -l version -d 'Print version'
complete -c palmleaf -n "__fish_palmleaf_needs_command" -f -a "check" -d 'Check cases without writing anything'
complete -c palmleaf -n "__fish_palmleaf_needs_command" -f -a "build" -d 'Make the guide of each case, with its record beside it'
complete -c palmleaf -n "__fish_palmleaf_needs_command" -f -a "batch" -d 'Make the guides of many cases from a list: YAML documents, a folder of case files, CSV or XLSX'
complete -c palmleaf -n "__fish_palmleaf_needs_command" -f -a "new" -d 'Ask for a case question by question, and write it as a commented file'
complete -c palmleaf -n "__fish_palmleaf_needs_command" -f -a "watch" -d 'Build again on every save, and show what is wrong in its place'
complete -c palmleaf -n "__fish_palmleaf_needs_command" -f -a "read" -d 'Show how plainly a sheet reads: the score of each section, its longest sentences, its hardest words'
complete -c palmleaf -n "__fish_palmleaf_needs_command" -f -a "list" -d 'List what the content holds'
complete -c palmleaf -n "__fish_palmleaf_needs_command" -f -a "choose" -d 'Rank the orthoses for a condition, or the conditions for an orthosis, and say why'
complete -c palmleaf -n "__fish_palmleaf_needs_command" -f -a "explain" -d 'Show the whole reasoning of a case: verdict table, plan rules with sources, overrides'
complete -c palmleaf -n "__fish_palmleaf_needs_command" -f -a "draw" -d 'Draw an orthosis, an exercise, a posture, the steps of putting a splint on, its faults of fit or what a condition concerns, without a case'
complete -c palmleaf -n "__fish_palmleaf_needs_command" -f -a "teach" -d 'Make papers to teach with, from the content alone: no case is needed'
complete -c palmleaf -n "__fish_palmleaf_needs_command" -f -a "shelf" -d 'Keep a folder of handouts current: only what a change touches is made anew'
complete -c palmleaf -n "__fish_palmleaf_needs_command" -f -a "specimen" -d 'Set a page of every component of the sheets, with what each is for: for contributors and translators'
complete -c palmleaf -n "__fish_palmleaf_needs_command" -f -a "content" -d 'Look after the content itself'
complete -c palmleaf -n "__fish_palmleaf_needs_command" -f -a "locales" -d 'Look after the words of each language: what has been checked by whom, and against which English'
complete -c palmleaf -n "__fish_palmleaf_needs_command" -f -a "schema" -d 'Print the JSON Schema of case files, for an editor to complete and check'
complete -c palmleaf -n "__fish_palmleaf_needs_command" -f -a "completions" -d 'Print a completion script for a shell'
complete -c palmleaf -n "__fish_palmleaf_needs_command" -f -a "man" -d 'Print the manual page'
complete -c palmleaf -n "__fish_palmleaf_needs_command" -f -a "licences" -d 'List the fonts and crates that this program carries, with their licences; `--format json` prints the bill of materials (CycloneDX)'
complete -c palmleaf -n "__fish_palmleaf_needs_command" -f -a "help" -d 'Print this message or the help of the given subcommand(s)'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand check" -l clinic -d 'The clinic\'s own file: name, address, hours, logo, colour, sections. Without it `clinic.yaml` of `--content`, if any' -r -F
complete -c palmleaf -n "__fish_palmleaf_using_subcommand check" -l content -d 'A folder laid over the embedded content: its files replace and add' -r -F
complete -c palmleaf -n "__fish_palmleaf_using_subcommand check" -l format -d 'How findings and lists are printed' -r -f -a "full\t'For people, with the faulty line underlined'
short\t'One line each; quotes no line of a case'
json\t'For programs'"
complete -c palmleaf -n "__fish_palmleaf_using_subcommand check" -s h -l help -d 'Print help (see more with \'--help\')'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand check" -s V -l version -d 'Print version'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand build" -l out -d 'The folder that guides are written to' -r -F
complete -c palmleaf -n "__fish_palmleaf_using_subcommand build" -l language -d 'The language, instead of the case\'s own; several divided by commas make a guide each' -r
complete -c palmleaf -n "__fish_palmleaf_using_subcommand build" -l with -d 'Also make each sheet in its language and this one beside each other, to point at' -r
complete -c palmleaf -n "__fish_palmleaf_using_subcommand build" -l print -d 'The print size, instead of the case\'s own: 12, 18 or 24 point' -r -f -a "standard\t''
large\t''
giant\t''"
complete -c palmleaf -n "__fish_palmleaf_using_subcommand build" -l paper -d 'The paper, instead of the case\'s own; `letter` is US Letter' -r -f -a "a4\t''
letter\t''"
complete -c palmleaf -n "__fish_palmleaf_using_subcommand build" -l sheets -d 'What to make, divided by commas, or `all`. `reminders` is a file for the calendar of a telephone, `record` a page for the chart' -r -f -a "guide\t''
phone\t''
card\t''
diary\t''
exercises\t''
letter\t''
reminders\t''
record\t''
all\t''"
complete -c palmleaf -n "__fish_palmleaf_using_subcommand build" -l require -d 'Refuse to build on content or words that are less than this' -r -f -a "confirmed\t'Every condition, orthosis, exercise and activity used is confirmed by a clinician as it stands'
signed-off\t'Every message that a sheet says is signed off by a qualified translator as it stands'"
complete -c palmleaf -n "__fish_palmleaf_using_subcommand build" -l threads -d 'How many cases are made at the same time; all processors when not said' -r
complete -c palmleaf -n "__fish_palmleaf_using_subcommand build" -l clinic -d 'The clinic\'s own file: name, address, hours, logo, colour, sections. Without it `clinic.yaml` of `--content`, if any' -r -F
complete -c palmleaf -n "__fish_palmleaf_using_subcommand build" -l content -d 'A folder laid over the embedded content: its files replace and add' -r -F
complete -c palmleaf -n "__fish_palmleaf_using_subcommand build" -l format -d 'How findings and lists are printed' -r -f -a "full\t'For people, with the faulty line underlined'
short\t'One line each; quotes no line of a case'
json\t'For programs'"
complete -c palmleaf -n "__fish_palmleaf_using_subcommand build" -l without-name -d 'Leave the person\'s name out of every file, and leave a line to write it by hand'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand build" -l pictures -d 'Also write each page as a picture'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand build" -l name-by-case -d 'Name files after the case file, which may hold a person\'s name'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand build" -l no-cache -d 'Draw every picture anew, and keep none for the next run'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand build" -s h -l help -d 'Print help (see more with \'--help\')'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand build" -s V -l version -d 'Print version'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand batch; and not __fish_seen_subcommand_from merge help" -l mapping -d 'Which column of a table feeds which field of the case: a YAML file' -r -F
complete -c palmleaf -n "__fish_palmleaf_using_subcommand batch; and not __fish_seen_subcommand_from merge help" -l out -d 'The folder that guides and the report are written to' -r -F
complete -c palmleaf -n "__fish_palmleaf_using_subcommand batch; and not __fish_seen_subcommand_from merge help" -l language -d 'The language, instead of the case\'s own; several divided by commas make a guide each' -r
complete -c palmleaf -n "__fish_palmleaf_using_subcommand batch; and not __fish_seen_subcommand_from merge help" -l with -d 'Also make each sheet in its language and this one beside each other, to point at' -r
complete -c palmleaf -n "__fish_palmleaf_using_subcommand batch; and not __fish_seen_subcommand_from merge help" -l print -d 'The print size, instead of the case\'s own: 12, 18 or 24 point' -r -f -a "standard\t''
large\t''
giant\t''"
complete -c palmleaf -n "__fish_palmleaf_using_subcommand batch; and not __fish_seen_subcommand_from merge help" -l paper -d 'The paper, instead of the case\'s own; `letter` is US Letter' -r -f -a "a4\t''
letter\t''"
complete -c palmleaf -n "__fish_palmleaf_using_subcommand batch; and not __fish_seen_subcommand_from merge help" -l sheets -d 'What to make, divided by commas, or `all`. `reminders` is a file for the calendar of a telephone, `record` a page for the chart' -r -f -a "guide\t''
phone\t''
card\t''
diary\t''
exercises\t''
letter\t''
reminders\t''
record\t''
all\t''"
complete -c palmleaf -n "__fish_palmleaf_using_subcommand batch; and not __fish_seen_subcommand_from merge help" -l require -d 'Refuse to build on content or words that are less than this' -r -f -a "confirmed\t'Every condition, orthosis, exercise and activity used is confirmed by a clinician as it stands'
signed-off\t'Every message that a sheet says is signed off by a qualified translator as it stands'"
complete -c palmleaf -n "__fish_palmleaf_using_subcommand batch; and not __fish_seen_subcommand_from merge help" -l shard -d 'Make only this part of the list, such as `3/16`. The id of a row decides in which part it is' -r
complete -c palmleaf -n "__fish_palmleaf_using_subcommand batch; and not __fish_seen_subcommand_from merge help" -l merged -d 'Also join the papers on pages into one PDF for a printer of both sides: each begins on a right-hand page' -r -F
complete -c palmleaf -n "__fish_palmleaf_using_subcommand batch; and not __fish_seen_subcommand_from merge help" -l threads -d 'How many cases are made at the same time; all processors when not said' -r
complete -c palmleaf -n "__fish_palmleaf_using_subcommand batch; and not __fish_seen_subcommand_from merge help" -l clinic -d 'The clinic\'s own file: name, address, hours, logo, colour, sections. Without it `clinic.yaml` of `--content`, if any' -r -F
complete -c palmleaf -n "__fish_palmleaf_using_subcommand batch; and not __fish_seen_subcommand_from merge help" -l content -d 'A folder laid over the embedded content: its files replace and add' -r -F
complete -c palmleaf -n "__fish_palmleaf_using_subcommand batch; and not __fish_seen_subcommand_from merge help" -l format -d 'How findings and lists are printed' -r -f -a "full\t'For people, with the faulty line underlined'
short\t'One line each; quotes no line of a case'
json\t'For programs'"
complete -c palmleaf -n "__fish_palmleaf_using_subcommand batch; and not __fish_seen_subcommand_from merge help" -l without-name -d 'Leave the person\'s name out of every file, and leave a line to write it by hand'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand batch; and not __fish_seen_subcommand_from merge help" -l pictures -d 'Also write each page as a picture'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand batch; and not __fish_seen_subcommand_from merge help" -l resume -d 'Go on after a run that was cut off: what was made from the same case, content and options, and is whole, is kept'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand batch; and not __fish_seen_subcommand_from merge help" -l no-cache -d 'Draw every picture anew, and keep none for the next run'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand batch; and not __fish_seen_subcommand_from merge help" -s h -l help -d 'Print help (see more with \'--help\')'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand batch; and not __fish_seen_subcommand_from merge help" -s V -l version -d 'Print version'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand batch; and not __fish_seen_subcommand_from merge help" -a "merge" -d 'Join the reports of shards: says what is missing and what was built twice'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand batch; and not __fish_seen_subcommand_from merge help" -a "help" -d 'Print this message or the help of the given subcommand(s)'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand batch; and __fish_seen_subcommand_from merge" -l out -d 'The folder that the report of the whole list is written to' -r -F
complete -c palmleaf -n "__fish_palmleaf_using_subcommand batch; and __fish_seen_subcommand_from merge" -l merged -d 'Also join the papers on pages into one PDF, from the folders that the reports stand in' -r -F
complete -c palmleaf -n "__fish_palmleaf_using_subcommand batch; and __fish_seen_subcommand_from merge" -l format -d 'How findings and lists are printed' -r -f -a "full\t'For people, with the faulty line underlined'
short\t'One line each; quotes no line of a case'
json\t'For programs'"
complete -c palmleaf -n "__fish_palmleaf_using_subcommand batch; and __fish_seen_subcommand_from merge" -s h -l help -d 'Print help (see more with \'--help\')'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand batch; and __fish_seen_subcommand_from merge" -s V -l version -d 'Print version'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand batch; and __fish_seen_subcommand_from help" -f -a "merge" -d 'Join the reports of shards: says what is missing and what was built twice'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand batch; and __fish_seen_subcommand_from help" -f -a "help" -d 'Print this message or the help of the given subcommand(s)'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand new" -l answers -d 'A file with an answer on each line; a line that begins with `#` is a remark, an empty one takes what is offered' -r -F
complete -c palmleaf -n "__fish_palmleaf_using_subcommand new" -l today -d 'The day that the fitting is taken to be on; today when not said' -r
complete -c palmleaf -n "__fish_palmleaf_using_subcommand new" -l clinic -d 'The clinic\'s own file: name, address, hours, logo, colour, sections. Without it `clinic.yaml` of `--content`, if any' -r -F
complete -c palmleaf -n "__fish_palmleaf_using_subcommand new" -l content -d 'A folder laid over the embedded content: its files replace and add' -r -F
complete -c palmleaf -n "__fish_palmleaf_using_subcommand new" -l format -d 'How findings and lists are printed' -r -f -a "full\t'For people, with the faulty line underlined'
short\t'One line each; quotes no line of a case'
json\t'For programs'"
complete -c palmleaf -n "__fish_palmleaf_using_subcommand new" -l plain -d 'Plain numbered questions instead of lists to move in; so it is by itself where there is no terminal'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand new" -s h -l help -d 'Print help (see more with \'--help\')'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand new" -s V -l version -d 'Print version'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand watch" -l out -d 'The folder that guides are written to' -r -F
complete -c palmleaf -n "__fish_palmleaf_using_subcommand watch" -l language -d 'The language, instead of the case\'s own; several divided by commas make a guide each' -r
complete -c palmleaf -n "__fish_palmleaf_using_subcommand watch" -l with -d 'Also make each sheet in its language and this one beside each other, to point at' -r
complete -c palmleaf -n "__fish_palmleaf_using_subcommand watch" -l print -d 'The print size, instead of the case\'s own: 12, 18 or 24 point' -r -f -a "standard\t''
large\t''
giant\t''"
complete -c palmleaf -n "__fish_palmleaf_using_subcommand watch" -l paper -d 'The paper, instead of the case\'s own; `letter` is US Letter' -r -f -a "a4\t''
letter\t''"
complete -c palmleaf -n "__fish_palmleaf_using_subcommand watch" -l sheets -d 'What to make, divided by commas, or `all`. `reminders` is a file for the calendar of a telephone, `record` a page for the chart' -r -f -a "guide\t''
phone\t''
card\t''
diary\t''
exercises\t''
letter\t''
reminders\t''
record\t''
all\t''"
complete -c palmleaf -n "__fish_palmleaf_using_subcommand watch" -l require -d 'Refuse to build on content or words that are less than this' -r -f -a "confirmed\t'Every condition, orthosis, exercise and activity used is confirmed by a clinician as it stands'
signed-off\t'Every message that a sheet says is signed off by a qualified translator as it stands'"
complete -c palmleaf -n "__fish_palmleaf_using_subcommand watch" -l threads -d 'How many cases are made at the same time; all processors when not said' -r
complete -c palmleaf -n "__fish_palmleaf_using_subcommand watch" -l clinic -d 'The clinic\'s own file: name, address, hours, logo, colour, sections. Without it `clinic.yaml` of `--content`, if any' -r -F
complete -c palmleaf -n "__fish_palmleaf_using_subcommand watch" -l content -d 'A folder laid over the embedded content: its files replace and add' -r -F
complete -c palmleaf -n "__fish_palmleaf_using_subcommand watch" -l format -d 'How findings and lists are printed' -r -f -a "full\t'For people, with the faulty line underlined'
short\t'One line each; quotes no line of a case'
json\t'For programs'"
complete -c palmleaf -n "__fish_palmleaf_using_subcommand watch" -l without-name -d 'Leave the person\'s name out of every file, and leave a line to write it by hand'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand watch" -l pictures -d 'Also write each page as a picture'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand watch" -l name-by-case -d 'Name files after the case file, which may hold a person\'s name'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand watch" -l no-cache -d 'Draw every picture anew, and keep none for the next run'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand watch" -s h -l help -d 'Print help (see more with \'--help\')'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand watch" -s V -l version -d 'Print version'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand read" -l text -d 'Read a file of plain text, each line by itself' -r -F
complete -c palmleaf -n "__fish_palmleaf_using_subcommand read" -l language -d 'The language, instead of the case\'s own; several divided by commas are read each' -r
complete -c palmleaf -n "__fish_palmleaf_using_subcommand read" -l sheets -d 'Which sheets to read, divided by commas, or `all`' -r -f -a "guide\t''
phone\t''
card\t''
diary\t''
exercises\t''
letter\t''
reminders\t''
record\t''
all\t''"
complete -c palmleaf -n "__fish_palmleaf_using_subcommand read" -l instrument -d 'Fill in this instrument for patient material instead, as far as a program can: `pemat` or `cdc`' -r
complete -c palmleaf -n "__fish_palmleaf_using_subcommand read" -l require -d 'End with status 1 when a section misses this' -r -f -a "grade\t'The limit of the language\'s score'"
complete -c palmleaf -n "__fish_palmleaf_using_subcommand read" -l content -d 'A folder laid over the embedded content: its files replace and add' -r -F
complete -c palmleaf -n "__fish_palmleaf_using_subcommand read" -l format -d 'How findings and lists are printed' -r -f -a "full\t'For people, with the faulty line underlined'
short\t'One line each; quotes no line of a case'
json\t'For programs'"
complete -c palmleaf -n "__fish_palmleaf_using_subcommand read" -l all -d 'Read every message of the languages, file by file, instead of a case. A variable counts as a figure'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand read" -s h -l help -d 'Print help (see more with \'--help\')'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand read" -s V -l version -d 'Print version'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand list" -l content -d 'A folder laid over the embedded content: its files replace and add' -r -F
complete -c palmleaf -n "__fish_palmleaf_using_subcommand list" -l format -d 'How findings and lists are printed' -r -f -a "full\t'For people, with the faulty line underlined'
short\t'One line each; quotes no line of a case'
json\t'For programs'"
complete -c palmleaf -n "__fish_palmleaf_using_subcommand list" -s h -l help -d 'Print help (see more with \'--help\')'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand list" -s V -l version -d 'Print version'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand choose" -l orthosis -d 'The other way round: the conditions that this orthosis suits, and why not the others' -r
complete -c palmleaf -n "__fish_palmleaf_using_subcommand choose" -l phase -d 'The phase of the condition; the first when not said' -r
complete -c palmleaf -n "__fish_palmleaf_using_subcommand choose" -l finger -d 'The affected finger, for what concerns one finger' -r
complete -c palmleaf -n "__fish_palmleaf_using_subcommand choose" -l finding -d 'What was measured, such as "thumb-mcp extension 25 deg"; may be given again' -r
complete -c palmleaf -n "__fish_palmleaf_using_subcommand choose" -l need -d 'What the person needs: ids that `palmleaf list needs` shows, divided by commas' -r
complete -c palmleaf -n "__fish_palmleaf_using_subcommand choose" -l factor -d 'What is particular about the person: ids that `palmleaf list factors` shows, divided by commas' -r
complete -c palmleaf -n "__fish_palmleaf_using_subcommand choose" -l chart -d 'Also draw the best side by side, joint by joint, on a page' -r -F
complete -c palmleaf -n "__fish_palmleaf_using_subcommand choose" -l content -d 'A folder laid over the embedded content: its files replace and add' -r -F
complete -c palmleaf -n "__fish_palmleaf_using_subcommand choose" -l format -d 'How findings and lists are printed' -r -f -a "full\t'For people, with the faulty line underlined'
short\t'One line each; quotes no line of a case'
json\t'For programs'"
complete -c palmleaf -n "__fish_palmleaf_using_subcommand choose" -l all -d 'Show all of them, also those that do not fit'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand choose" -s h -l help -d 'Print help (see more with \'--help\')'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand choose" -s V -l version -d 'Print version'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand explain" -l language -d 'The language of these sentences, instead of the case\'s own' -r
complete -c palmleaf -n "__fish_palmleaf_using_subcommand explain" -l clinic -d 'The clinic\'s own file: name, address, hours, logo, colour, sections. Without it `clinic.yaml` of `--content`, if any' -r -F
complete -c palmleaf -n "__fish_palmleaf_using_subcommand explain" -l content -d 'A folder laid over the embedded content: its files replace and add' -r -F
complete -c palmleaf -n "__fish_palmleaf_using_subcommand explain" -l format -d 'How findings and lists are printed' -r -f -a "full\t'For people, with the faulty line underlined'
short\t'One line each; quotes no line of a case'
json\t'For programs'"
complete -c palmleaf -n "__fish_palmleaf_using_subcommand explain" -l sentences -d 'Also go through the guide sentence by sentence: its message, the lines of the case that led to it, the rules of the content with their places and sources'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand explain" -s h -l help -d 'Print help (see more with \'--help\')'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand explain" -s V -l version -d 'Print version'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand draw" -l orthosis -d 'An orthosis in its place' -r
complete -c palmleaf -n "__fish_palmleaf_using_subcommand draw" -l exercise -d 'An exercise, a picture for each movement' -r
complete -c palmleaf -n "__fish_palmleaf_using_subcommand draw" -l posture -d 'A bare hand in a posture: a YAML file with the positions of its joints' -r -F
complete -c palmleaf -n "__fish_palmleaf_using_subcommand draw" -l steps -d 'The steps of putting an orthosis on and taking it off' -r
complete -c palmleaf -n "__fish_palmleaf_using_subcommand draw" -l spots -d 'The spots of the skin check of an orthosis' -r
complete -c palmleaf -n "__fish_palmleaf_using_subcommand draw" -l condition -d 'What a condition concerns: its structures on the bones, and the joints that it needs held' -r
complete -c palmleaf -n "__fish_palmleaf_using_subcommand draw" -l faults -d 'How an orthosis sits, beside each typical way in which it does not' -r
complete -c palmleaf -n "__fish_palmleaf_using_subcommand draw" -l sheet -d 'Everything of a kind, with captions, on pages' -r -f -a "orthoses\t'Each orthosis in its place'
postures\t'Each movement of each joint at both ends of its healthy range'
exercises\t''
steps\t'The steps of every orthosis'
spots\t'The skin check of every orthosis'
conditions\t'The structures and held joints of every condition'
faults\t'Right and wrong pairs of orthoses'
all\t''"
complete -c palmleaf -n "__fish_palmleaf_using_subcommand draw" -l wearing -d 'The orthosis that is worn during the exercise' -r
complete -c palmleaf -n "__fish_palmleaf_using_subcommand draw" -l finger -d 'The affected finger, for what concerns one finger' -r -f -a "index\t''
middle\t''
ring\t''
little\t''"
complete -c palmleaf -n "__fish_palmleaf_using_subcommand draw" -l side -r -f -a "left\t''
right\t''"
complete -c palmleaf -n "__fish_palmleaf_using_subcommand draw" -l view -d 'From where it is seen; when not said, from where it is seen best' -r -f -a "dorsal\t''
palmar\t''
radial\t''
ulnar\t''
turned\t''
palmar-radial\t''
palmar-ulnar\t''
own\t''"
complete -c palmleaf -n "__fish_palmleaf_using_subcommand draw" -l build -r -f -a "adult\t''
slim\t''
broad\t''
young\t''
older\t''"
complete -c palmleaf -n "__fish_palmleaf_using_subcommand draw" -l width -d 'How wide a picture is, millimetres; on a sheet as wide as its column when not said' -r
complete -c palmleaf -n "__fish_palmleaf_using_subcommand draw" -l language -d 'The language of the words about the pictures' -r
complete -c palmleaf -n "__fish_palmleaf_using_subcommand draw" -s o -l out -d 'The file to write; its ending says what it is: `.svg`, `.pdf` or `.png`. Several pictures get numbers, or a sheet in a PDF. With `--format json` it may be left out' -r -F
complete -c palmleaf -n "__fish_palmleaf_using_subcommand draw" -l content -d 'A folder laid over the embedded content: its files replace and add' -r -F
complete -c palmleaf -n "__fish_palmleaf_using_subcommand draw" -l format -d 'How findings and lists are printed' -r -f -a "full\t'For people, with the faulty line underlined'
short\t'One line each; quotes no line of a case'
json\t'For programs'"
complete -c palmleaf -n "__fish_palmleaf_using_subcommand draw" -l no-cache -d 'Draw every picture anew, and keep none for the next run'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand draw" -s h -l help -d 'Print help (see more with \'--help\')'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand draw" -s V -l version -d 'Print version'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand teach; and not __fish_seen_subcommand_from facts booklet chart cards questions help" -l format -d 'How findings and lists are printed' -r -f -a "full\t'For people, with the faulty line underlined'
short\t'One line each; quotes no line of a case'
json\t'For programs'"
complete -c palmleaf -n "__fish_palmleaf_using_subcommand teach; and not __fish_seen_subcommand_from facts booklet chart cards questions help" -s h -l help -d 'Print help (see more with \'--help\')'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand teach; and not __fish_seen_subcommand_from facts booklet chart cards questions help" -s V -l version -d 'Print version'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand teach; and not __fish_seen_subcommand_from facts booklet chart cards questions help" -f -a "facts" -d 'A fact sheet for each condition, for patients or for students'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand teach; and not __fish_seen_subcommand_from facts booklet chart cards questions help" -f -a "booklet" -d 'Bind sheets into one file with a page of contents'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand teach; and not __fish_seen_subcommand_from facts booklet chart cards questions help" -f -a "chart" -d 'A comparison chart: conditions by orthoses, or the orthoses of one condition joint by joint'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand teach; and not __fish_seen_subcommand_from facts booklet chart cards questions help" -f -a "cards" -d 'Study cards to print on both sides and cut, and the same for a card program'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand teach; and not __fish_seen_subcommand_from facts booklet chart cards questions help" -f -a "questions" -d 'Invented cases with four orthoses to choose from, and the key with reasons'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand teach; and not __fish_seen_subcommand_from facts booklet chart cards questions help" -f -a "help" -d 'Print this message or the help of the given subcommand(s)'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand teach; and __fish_seen_subcommand_from facts" -l for -d 'Whom it is for: patients get plain words, students the joints with reasons and sources, in English' -r -f -a "patients\t''
students\t''"
complete -c palmleaf -n "__fish_palmleaf_using_subcommand teach; and __fish_seen_subcommand_from facts" -l out -d 'The folder that sheets are written to' -r -F
complete -c palmleaf -n "__fish_palmleaf_using_subcommand teach; and __fish_seen_subcommand_from facts" -l language -d 'The language; several divided by commas make a sheet each' -r
complete -c palmleaf -n "__fish_palmleaf_using_subcommand teach; and __fish_seen_subcommand_from facts" -l print -d 'The print size: 12, 18 or 24 point' -r -f -a "standard\t''
large\t''
giant\t''"
complete -c palmleaf -n "__fish_palmleaf_using_subcommand teach; and __fish_seen_subcommand_from facts" -l paper -r -f -a "a4\t''
letter\t''"
complete -c palmleaf -n "__fish_palmleaf_using_subcommand teach; and __fish_seen_subcommand_from facts" -l side -d 'The hand that is shown' -r -f -a "left\t''
right\t''"
complete -c palmleaf -n "__fish_palmleaf_using_subcommand teach; and __fish_seen_subcommand_from facts" -l finger -d 'The finger that is shown, for what concerns one finger' -r -f -a "index\t''
middle\t''
ring\t''
little\t''"
complete -c palmleaf -n "__fish_palmleaf_using_subcommand teach; and __fish_seen_subcommand_from facts" -l clinic -d 'The clinic\'s own file: name, address, hours, logo, colour, sections. Without it `clinic.yaml` of `--content`, if any' -r -F
complete -c palmleaf -n "__fish_palmleaf_using_subcommand teach; and __fish_seen_subcommand_from facts" -l content -d 'A folder laid over the embedded content: its files replace and add' -r -F
complete -c palmleaf -n "__fish_palmleaf_using_subcommand teach; and __fish_seen_subcommand_from facts" -l format -d 'How findings and lists are printed' -r -f -a "full\t'For people, with the faulty line underlined'
short\t'One line each; quotes no line of a case'
json\t'For programs'"
complete -c palmleaf -n "__fish_palmleaf_using_subcommand teach; and __fish_seen_subcommand_from facts" -l all -d 'A sheet for every condition'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand teach; and __fish_seen_subcommand_from facts" -l no-cache -d 'Draw every picture anew, and keep none for the next run'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand teach; and __fish_seen_subcommand_from facts" -s h -l help -d 'Print help (see more with \'--help\')'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand teach; and __fish_seen_subcommand_from facts" -s V -l version -d 'Print version'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand teach; and __fish_seen_subcommand_from booklet" -s o -l out -d 'The file to write; when not said, the name of the list with the ending `.pdf`, in `dist`' -r -F
complete -c palmleaf -n "__fish_palmleaf_using_subcommand teach; and __fish_seen_subcommand_from booklet" -l clinic -d 'The clinic\'s own file: name, address, hours, logo, colour, sections. Without it `clinic.yaml` of `--content`, if any' -r -F
complete -c palmleaf -n "__fish_palmleaf_using_subcommand teach; and __fish_seen_subcommand_from booklet" -l content -d 'A folder laid over the embedded content: its files replace and add' -r -F
complete -c palmleaf -n "__fish_palmleaf_using_subcommand teach; and __fish_seen_subcommand_from booklet" -l format -d 'How findings and lists are printed' -r -f -a "full\t'For people, with the faulty line underlined'
short\t'One line each; quotes no line of a case'
json\t'For programs'"
complete -c palmleaf -n "__fish_palmleaf_using_subcommand teach; and __fish_seen_subcommand_from booklet" -l no-cache -d 'Draw every picture anew, and keep none for the next run'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand teach; and __fish_seen_subcommand_from booklet" -s h -l help -d 'Print help (see more with \'--help\')'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand teach; and __fish_seen_subcommand_from booklet" -s V -l version -d 'Print version'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand teach; and __fish_seen_subcommand_from chart" -l group -d 'All conditions of a part of the limb, by the orthoses that fit at least one of them as it begins' -r -f -a "elbow\t''
wrist\t''
thumb\t''
finger\t''"
complete -c palmleaf -n "__fish_palmleaf_using_subcommand teach; and __fish_seen_subcommand_from chart" -l condition -d 'One condition: every orthosis, joint by joint' -r
complete -c palmleaf -n "__fish_palmleaf_using_subcommand teach; and __fish_seen_subcommand_from chart" -l phase -d 'The phase of the condition; the first one in which an orthosis is worn when not said' -r
complete -c palmleaf -n "__fish_palmleaf_using_subcommand teach; and __fish_seen_subcommand_from chart" -l finger -d 'The finger, for what concerns one finger' -r -f -a "index\t''
middle\t''
ring\t''
little\t''"
complete -c palmleaf -n "__fish_palmleaf_using_subcommand teach; and __fish_seen_subcommand_from chart" -l paper -r -f -a "a4\t''
letter\t''"
complete -c palmleaf -n "__fish_palmleaf_using_subcommand teach; and __fish_seen_subcommand_from chart" -l out -d 'The folder that files are written to' -r -F
complete -c palmleaf -n "__fish_palmleaf_using_subcommand teach; and __fish_seen_subcommand_from chart" -l content -d 'A folder laid over the embedded content: its files replace and add' -r -F
complete -c palmleaf -n "__fish_palmleaf_using_subcommand teach; and __fish_seen_subcommand_from chart" -l format -d 'How findings and lists are printed' -r -f -a "full\t'For people, with the faulty line underlined'
short\t'One line each; quotes no line of a case'
json\t'For programs'"
complete -c palmleaf -n "__fish_palmleaf_using_subcommand teach; and __fish_seen_subcommand_from chart" -s h -l help -d 'Print help (see more with \'--help\')'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand teach; and __fish_seen_subcommand_from chart" -s V -l version -d 'Print version'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand teach; and __fish_seen_subcommand_from cards" -l group -d 'Cards about the conditions of a part of the limb and what is worn there' -r -f -a "elbow\t''
wrist\t''
thumb\t''
finger\t''"
complete -c palmleaf -n "__fish_palmleaf_using_subcommand teach; and __fish_seen_subcommand_from cards" -l condition -d 'Cards about these conditions and the orthoses that fit them; ids divided by commas' -r
complete -c palmleaf -n "__fish_palmleaf_using_subcommand teach; and __fish_seen_subcommand_from cards" -l orthosis -d 'Cards about these orthoses; ids divided by commas' -r
complete -c palmleaf -n "__fish_palmleaf_using_subcommand teach; and __fish_seen_subcommand_from cards" -l flip -d 'The edge that the printer turns the paper over when it prints both sides' -r -f -a "long\t''
short\t''"
complete -c palmleaf -n "__fish_palmleaf_using_subcommand teach; and __fish_seen_subcommand_from cards" -l paper -r -f -a "a4\t''
letter\t''"
complete -c palmleaf -n "__fish_palmleaf_using_subcommand teach; and __fish_seen_subcommand_from cards" -l side -d 'The hand that is drawn' -r -f -a "left\t''
right\t''"
complete -c palmleaf -n "__fish_palmleaf_using_subcommand teach; and __fish_seen_subcommand_from cards" -l finger -d 'The finger that is drawn, for what concerns one finger' -r -f -a "index\t''
middle\t''
ring\t''
little\t''"
complete -c palmleaf -n "__fish_palmleaf_using_subcommand teach; and __fish_seen_subcommand_from cards" -l out -d 'The folder that files are written to' -r -F
complete -c palmleaf -n "__fish_palmleaf_using_subcommand teach; and __fish_seen_subcommand_from cards" -l content -d 'A folder laid over the embedded content: its files replace and add' -r -F
complete -c palmleaf -n "__fish_palmleaf_using_subcommand teach; and __fish_seen_subcommand_from cards" -l format -d 'How findings and lists are printed' -r -f -a "full\t'For people, with the faulty line underlined'
short\t'One line each; quotes no line of a case'
json\t'For programs'"
complete -c palmleaf -n "__fish_palmleaf_using_subcommand teach; and __fish_seen_subcommand_from cards" -l no-cache -d 'Draw every picture anew, and keep none for the next run'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand teach; and __fish_seen_subcommand_from cards" -s h -l help -d 'Print help (see more with \'--help\')'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand teach; and __fish_seen_subcommand_from cards" -s V -l version -d 'Print version'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand teach; and __fish_seen_subcommand_from questions" -l seed -d 'The same number gives the same questions, byte for byte' -r
complete -c palmleaf -n "__fish_palmleaf_using_subcommand teach; and __fish_seen_subcommand_from questions" -l count -d 'How many questions' -r
complete -c palmleaf -n "__fish_palmleaf_using_subcommand teach; and __fish_seen_subcommand_from questions" -l group -d 'Only conditions of a part of the limb' -r -f -a "elbow\t''
wrist\t''
thumb\t''
finger\t''"
complete -c palmleaf -n "__fish_palmleaf_using_subcommand teach; and __fish_seen_subcommand_from questions" -l paper -r -f -a "a4\t''
letter\t''"
complete -c palmleaf -n "__fish_palmleaf_using_subcommand teach; and __fish_seen_subcommand_from questions" -l out -d 'The folder that files are written to' -r -F
complete -c palmleaf -n "__fish_palmleaf_using_subcommand teach; and __fish_seen_subcommand_from questions" -l content -d 'A folder laid over the embedded content: its files replace and add' -r -F
complete -c palmleaf -n "__fish_palmleaf_using_subcommand teach; and __fish_seen_subcommand_from questions" -l format -d 'How findings and lists are printed' -r -f -a "full\t'For people, with the faulty line underlined'
short\t'One line each; quotes no line of a case'
json\t'For programs'"
complete -c palmleaf -n "__fish_palmleaf_using_subcommand teach; and __fish_seen_subcommand_from questions" -s h -l help -d 'Print help (see more with \'--help\')'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand teach; and __fish_seen_subcommand_from questions" -s V -l version -d 'Print version'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand teach; and __fish_seen_subcommand_from help" -f -a "facts" -d 'A fact sheet for each condition, for patients or for students'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand teach; and __fish_seen_subcommand_from help" -f -a "booklet" -d 'Bind sheets into one file with a page of contents'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand teach; and __fish_seen_subcommand_from help" -f -a "chart" -d 'A comparison chart: conditions by orthoses, or the orthoses of one condition joint by joint'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand teach; and __fish_seen_subcommand_from help" -f -a "cards" -d 'Study cards to print on both sides and cut, and the same for a card program'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand teach; and __fish_seen_subcommand_from help" -f -a "questions" -d 'Invented cases with four orthoses to choose from, and the key with reasons'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand teach; and __fish_seen_subcommand_from help" -f -a "help" -d 'Print this message or the help of the given subcommand(s)'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand shelf" -l today -d 'The day that reviews are counted by; the day of the clock (UTC) when not said' -r
complete -c palmleaf -n "__fish_palmleaf_using_subcommand shelf" -l wait -d 'How many seconds to wait for another run on the same folder' -r
complete -c palmleaf -n "__fish_palmleaf_using_subcommand shelf" -l threads -d 'How many handouts are made at the same time; all processors when not said' -r
complete -c palmleaf -n "__fish_palmleaf_using_subcommand shelf" -l content -d 'A folder laid over the embedded content: its files replace and add' -r -F
complete -c palmleaf -n "__fish_palmleaf_using_subcommand shelf" -l format -d 'How findings and lists are printed' -r -f -a "full\t'For people, with the faulty line underlined'
short\t'One line each; quotes no line of a case'
json\t'For programs'"
complete -c palmleaf -n "__fish_palmleaf_using_subcommand shelf" -l check -d 'Say what would be made, removed or is due, and write nothing; status 1 when the shelf is not current'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand shelf" -l no-cache -d 'Draw every picture anew, and keep none for the next run'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand shelf" -s h -l help -d 'Print help (see more with \'--help\')'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand shelf" -s V -l version -d 'Print version'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand specimen" -l language -d 'The language of the components' -r
complete -c palmleaf -n "__fish_palmleaf_using_subcommand specimen" -s o -l out -d 'The file to write' -r -F
complete -c palmleaf -n "__fish_palmleaf_using_subcommand specimen" -l content -d 'A folder laid over the embedded content: its files replace and add' -r -F
complete -c palmleaf -n "__fish_palmleaf_using_subcommand specimen" -l format -d 'How findings and lists are printed' -r -f -a "full\t'For people, with the faulty line underlined'
short\t'One line each; quotes no line of a case'
json\t'For programs'"
complete -c palmleaf -n "__fish_palmleaf_using_subcommand specimen" -l no-cache -d 'Draw every picture anew, and keep none for the next run'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand specimen" -s h -l help -d 'Print help (see more with \'--help\')'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand specimen" -s V -l version -d 'Print version'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand content; and not __fish_seen_subcommand_from check status confirm help" -l format -d 'How findings and lists are printed' -r -f -a "full\t'For people, with the faulty line underlined'
short\t'One line each; quotes no line of a case'
json\t'For programs'"
complete -c palmleaf -n "__fish_palmleaf_using_subcommand content; and not __fish_seen_subcommand_from check status confirm help" -s h -l help -d 'Print help (see more with \'--help\')'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand content; and not __fish_seen_subcommand_from check status confirm help" -s V -l version -d 'Print version'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand content; and not __fish_seen_subcommand_from check status confirm help" -f -a "check" -d 'Prove that the content is whole: ids, sources, contradictions, words of every language'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand content; and not __fish_seen_subcommand_from check status confirm help" -f -a "status" -d 'Show which files a clinician has confirmed, which are drafted and which have changed since'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand content; and not __fish_seen_subcommand_from check status confirm help" -f -a "confirm" -d 'Write down that a clinician has confirmed files as they stand'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand content; and not __fish_seen_subcommand_from check status confirm help" -f -a "help" -d 'Print this message or the help of the given subcommand(s)'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand content; and __fish_seen_subcommand_from check" -l content -d 'A folder laid over the embedded content: its files replace and add' -r -F
complete -c palmleaf -n "__fish_palmleaf_using_subcommand content; and __fish_seen_subcommand_from check" -l format -d 'How findings and lists are printed' -r -f -a "full\t'For people, with the faulty line underlined'
short\t'One line each; quotes no line of a case'
json\t'For programs'"
complete -c palmleaf -n "__fish_palmleaf_using_subcommand content; and __fish_seen_subcommand_from check" -s h -l help -d 'Print help (see more with \'--help\')'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand content; and __fish_seen_subcommand_from check" -s V -l version -d 'Print version'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand content; and __fish_seen_subcommand_from status" -l content -d 'A folder laid over the embedded content: its files replace and add' -r -F
complete -c palmleaf -n "__fish_palmleaf_using_subcommand content; and __fish_seen_subcommand_from status" -l format -d 'How findings and lists are printed' -r -f -a "full\t'For people, with the faulty line underlined'
short\t'One line each; quotes no line of a case'
json\t'For programs'"
complete -c palmleaf -n "__fish_palmleaf_using_subcommand content; and __fish_seen_subcommand_from status" -s h -l help -d 'Print help (see more with \'--help\')'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand content; and __fish_seen_subcommand_from status" -s V -l version -d 'Print version'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand content; and __fish_seen_subcommand_from confirm" -l by -d 'Who confirms: role, initials or registration, as the clinic wishes' -r
complete -c palmleaf -n "__fish_palmleaf_using_subcommand content; and __fish_seen_subcommand_from confirm" -l on -d 'The day of the confirmation' -r
complete -c palmleaf -n "__fish_palmleaf_using_subcommand content; and __fish_seen_subcommand_from confirm" -l content -d 'The clinic\'s own folder: the confirmation is written there, as `confirmed.yaml`' -r -F
complete -c palmleaf -n "__fish_palmleaf_using_subcommand content; and __fish_seen_subcommand_from confirm" -l format -d 'How findings and lists are printed' -r -f -a "full\t'For people, with the faulty line underlined'
short\t'One line each; quotes no line of a case'
json\t'For programs'"
complete -c palmleaf -n "__fish_palmleaf_using_subcommand content; and __fish_seen_subcommand_from confirm" -s h -l help -d 'Print help (see more with \'--help\')'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand content; and __fish_seen_subcommand_from confirm" -s V -l version -d 'Print version'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand content; and __fish_seen_subcommand_from help" -f -a "check" -d 'Prove that the content is whole: ids, sources, contradictions, words of every language'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand content; and __fish_seen_subcommand_from help" -f -a "status" -d 'Show which files a clinician has confirmed, which are drafted and which have changed since'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand content; and __fish_seen_subcommand_from help" -f -a "confirm" -d 'Write down that a clinician has confirmed files as they stand'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand content; and __fish_seen_subcommand_from help" -f -a "help" -d 'Print this message or the help of the given subcommand(s)'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand locales; and not __fish_seen_subcommand_from status draft export import sign-off help" -l format -d 'How findings and lists are printed' -r -f -a "full\t'For people, with the faulty line underlined'
short\t'One line each; quotes no line of a case'
json\t'For programs'"
complete -c palmleaf -n "__fish_palmleaf_using_subcommand locales; and not __fish_seen_subcommand_from status draft export import sign-off help" -s h -l help -d 'Print help (see more with \'--help\')'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand locales; and not __fish_seen_subcommand_from status draft export import sign-off help" -s V -l version -d 'Print version'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand locales; and not __fish_seen_subcommand_from status draft export import sign-off help" -f -a "status" -d 'Show how many messages of each language and area are signed off, drafted or outdated'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand locales; and not __fish_seen_subcommand_from status draft export import sign-off help" -f -a "draft" -d 'Write down from which English each new or changed message was written'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand locales; and not __fish_seen_subcommand_from status draft export import sign-off help" -f -a "export" -d 'Write the words of a language for translators: XLIFF 2.1, or CSV'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand locales; and not __fish_seen_subcommand_from status draft export import sign-off help" -f -a "import" -d 'Put back what a translator returned. A message that lost something is refused by name; the rest goes in'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand locales; and not __fish_seen_subcommand_from status draft export import sign-off help" -f -a "sign-off" -d 'Write down that somebody qualified has checked messages as they stand'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand locales; and not __fish_seen_subcommand_from status draft export import sign-off help" -f -a "help" -d 'Print this message or the help of the given subcommand(s)'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand locales; and __fish_seen_subcommand_from status" -l language -d 'The languages, divided by commas; all that are translated when not said' -r
complete -c palmleaf -n "__fish_palmleaf_using_subcommand locales; and __fish_seen_subcommand_from status" -l locales -d 'A folder of words that holds a folder for each language, laid over the embedded ones; a clinic\'s is `locales` in its own content' -r -F
complete -c palmleaf -n "__fish_palmleaf_using_subcommand locales; and __fish_seen_subcommand_from status" -l format -d 'How findings and lists are printed' -r -f -a "full\t'For people, with the faulty line underlined'
short\t'One line each; quotes no line of a case'
json\t'For programs'"
complete -c palmleaf -n "__fish_palmleaf_using_subcommand locales; and __fish_seen_subcommand_from status" -l messages -d 'Also name every message that is not signed off'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand locales; and __fish_seen_subcommand_from status" -s h -l help -d 'Print help (see more with \'--help\')'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand locales; and __fish_seen_subcommand_from status" -s V -l version -d 'Print version'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand locales; and __fish_seen_subcommand_from draft" -l language -d 'The languages, divided by commas; all that are translated when not said' -r
complete -c palmleaf -n "__fish_palmleaf_using_subcommand locales; and __fish_seen_subcommand_from draft" -l locales -d 'The folder of words that holds a folder for each language; the states are written there' -r -F
complete -c palmleaf -n "__fish_palmleaf_using_subcommand locales; and __fish_seen_subcommand_from draft" -l format -d 'How findings and lists are printed' -r -f -a "full\t'For people, with the faulty line underlined'
short\t'One line each; quotes no line of a case'
json\t'For programs'"
complete -c palmleaf -n "__fish_palmleaf_using_subcommand locales; and __fish_seen_subcommand_from draft" -s h -l help -d 'Print help (see more with \'--help\')'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand locales; and __fish_seen_subcommand_from draft" -s V -l version -d 'Print version'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand locales; and __fish_seen_subcommand_from export" -l language -r
complete -c palmleaf -n "__fish_palmleaf_using_subcommand locales; and __fish_seen_subcommand_from export" -s o -l out -d 'The file to write; its ending says what it is: `.xlf` or `.csv`' -r -F
complete -c palmleaf -n "__fish_palmleaf_using_subcommand locales; and __fish_seen_subcommand_from export" -l locales -d 'A folder of words that holds a folder for each language, laid over the embedded ones; a clinic\'s is `locales` in its own content' -r -F
complete -c palmleaf -n "__fish_palmleaf_using_subcommand locales; and __fish_seen_subcommand_from export" -l format -d 'How findings and lists are printed' -r -f -a "full\t'For people, with the faulty line underlined'
short\t'One line each; quotes no line of a case'
json\t'For programs'"
complete -c palmleaf -n "__fish_palmleaf_using_subcommand locales; and __fish_seen_subcommand_from export" -s h -l help -d 'Print help (see more with \'--help\')'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand locales; and __fish_seen_subcommand_from export" -s V -l version -d 'Print version'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand locales; and __fish_seen_subcommand_from import" -l language -r
complete -c palmleaf -n "__fish_palmleaf_using_subcommand locales; and __fish_seen_subcommand_from import" -l by -d 'Sign off what the file calls final: who checked it' -r
complete -c palmleaf -n "__fish_palmleaf_using_subcommand locales; and __fish_seen_subcommand_from import" -l on -d 'The day it was checked' -r
complete -c palmleaf -n "__fish_palmleaf_using_subcommand locales; and __fish_seen_subcommand_from import" -l locales -d 'The folder of words that holds a folder for each language; the words are written there' -r -F
complete -c palmleaf -n "__fish_palmleaf_using_subcommand locales; and __fish_seen_subcommand_from import" -l format -d 'How findings and lists are printed' -r -f -a "full\t'For people, with the faulty line underlined'
short\t'One line each; quotes no line of a case'
json\t'For programs'"
complete -c palmleaf -n "__fish_palmleaf_using_subcommand locales; and __fish_seen_subcommand_from import" -s h -l help -d 'Print help (see more with \'--help\')'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand locales; and __fish_seen_subcommand_from import" -s V -l version -d 'Print version'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand locales; and __fish_seen_subcommand_from sign-off" -l area -d 'Areas that were checked as a whole, divided by commas: names of files, as `locales status` shows them' -r
complete -c palmleaf -n "__fish_palmleaf_using_subcommand locales; and __fish_seen_subcommand_from sign-off" -l language -r
complete -c palmleaf -n "__fish_palmleaf_using_subcommand locales; and __fish_seen_subcommand_from sign-off" -l by -d 'Who checked: role, initials or registration, as the clinic wishes' -r
complete -c palmleaf -n "__fish_palmleaf_using_subcommand locales; and __fish_seen_subcommand_from sign-off" -l on -d 'The day it was checked' -r
complete -c palmleaf -n "__fish_palmleaf_using_subcommand locales; and __fish_seen_subcommand_from sign-off" -l locales -d 'The clinic\'s folder of words; the sign-off is written there' -r -F
complete -c palmleaf -n "__fish_palmleaf_using_subcommand locales; and __fish_seen_subcommand_from sign-off" -l format -d 'How findings and lists are printed' -r -f -a "full\t'For people, with the faulty line underlined'
short\t'One line each; quotes no line of a case'
json\t'For programs'"
complete -c palmleaf -n "__fish_palmleaf_using_subcommand locales; and __fish_seen_subcommand_from sign-off" -l all -d 'Every message of the language was checked'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand locales; and __fish_seen_subcommand_from sign-off" -s h -l help -d 'Print help (see more with \'--help\')'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand locales; and __fish_seen_subcommand_from sign-off" -s V -l version -d 'Print version'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand locales; and __fish_seen_subcommand_from help" -f -a "status" -d 'Show how many messages of each language and area are signed off, drafted or outdated'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand locales; and __fish_seen_subcommand_from help" -f -a "draft" -d 'Write down from which English each new or changed message was written'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand locales; and __fish_seen_subcommand_from help" -f -a "export" -d 'Write the words of a language for translators: XLIFF 2.1, or CSV'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand locales; and __fish_seen_subcommand_from help" -f -a "import" -d 'Put back what a translator returned. A message that lost something is refused by name; the rest goes in'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand locales; and __fish_seen_subcommand_from help" -f -a "sign-off" -d 'Write down that somebody qualified has checked messages as they stand'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand locales; and __fish_seen_subcommand_from help" -f -a "help" -d 'Print this message or the help of the given subcommand(s)'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand schema" -l format -d 'How findings and lists are printed' -r -f -a "full\t'For people, with the faulty line underlined'
short\t'One line each; quotes no line of a case'
json\t'For programs'"
complete -c palmleaf -n "__fish_palmleaf_using_subcommand schema" -l example -d 'Print an example case instead of the schema'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand schema" -l clinic -d 'The schema of a clinic\'s own file instead'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand schema" -l shelf -d 'The schema of a shelf instead'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand schema" -l mapping -d 'The schema of the mapping of a list instead'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand schema" -s h -l help -d 'Print help (see more with \'--help\')'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand schema" -s V -l version -d 'Print version'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand completions" -l format -d 'How findings and lists are printed' -r -f -a "full\t'For people, with the faulty line underlined'
short\t'One line each; quotes no line of a case'
json\t'For programs'"
complete -c palmleaf -n "__fish_palmleaf_using_subcommand completions" -s h -l help -d 'Print help (see more with \'--help\')'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand completions" -s V -l version -d 'Print version'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand man" -l format -d 'How findings and lists are printed' -r -f -a "full\t'For people, with the faulty line underlined'
short\t'One line each; quotes no line of a case'
json\t'For programs'"
complete -c palmleaf -n "__fish_palmleaf_using_subcommand man" -s h -l help -d 'Print help (see more with \'--help\')'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand man" -s V -l version -d 'Print version'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand licences" -l format -d 'How findings and lists are printed' -r -f -a "full\t'For people, with the faulty line underlined'
short\t'One line each; quotes no line of a case'
json\t'For programs'"
complete -c palmleaf -n "__fish_palmleaf_using_subcommand licences" -s h -l help -d 'Print help (see more with \'--help\')'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand licences" -s V -l version -d 'Print version'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand help; and not __fish_seen_subcommand_from check build batch new watch read list choose explain draw teach shelf specimen content locales schema completions man licences help" -f -a "check" -d 'Check cases without writing anything'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand help; and not __fish_seen_subcommand_from check build batch new watch read list choose explain draw teach shelf specimen content locales schema completions man licences help" -f -a "build" -d 'Make the guide of each case, with its record beside it'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand help; and not __fish_seen_subcommand_from check build batch new watch read list choose explain draw teach shelf specimen content locales schema completions man licences help" -f -a "batch" -d 'Make the guides of many cases from a list: YAML documents, a folder of case files, CSV or XLSX'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand help; and not __fish_seen_subcommand_from check build batch new watch read list choose explain draw teach shelf specimen content locales schema completions man licences help" -f -a "new" -d 'Ask for a case question by question, and write it as a commented file'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand help; and not __fish_seen_subcommand_from check build batch new watch read list choose explain draw teach shelf specimen content locales schema completions man licences help" -f -a "watch" -d 'Build again on every save, and show what is wrong in its place'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand help; and not __fish_seen_subcommand_from check build batch new watch read list choose explain draw teach shelf specimen content locales schema completions man licences help" -f -a "read" -d 'Show how plainly a sheet reads: the score of each section, its longest sentences, its hardest words'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand help; and not __fish_seen_subcommand_from check build batch new watch read list choose explain draw teach shelf specimen content locales schema completions man licences help" -f -a "list" -d 'List what the content holds'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand help; and not __fish_seen_subcommand_from check build batch new watch read list choose explain draw teach shelf specimen content locales schema completions man licences help" -f -a "choose" -d 'Rank the orthoses for a condition, or the conditions for an orthosis, and say why'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand help; and not __fish_seen_subcommand_from check build batch new watch read list choose explain draw teach shelf specimen content locales schema completions man licences help" -f -a "explain" -d 'Show the whole reasoning of a case: verdict table, plan rules with sources, overrides'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand help; and not __fish_seen_subcommand_from check build batch new watch read list choose explain draw teach shelf specimen content locales schema completions man licences help" -f -a "draw" -d 'Draw an orthosis, an exercise, a posture, the steps of putting a splint on, its faults of fit or what a condition concerns, without a case'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand help; and not __fish_seen_subcommand_from check build batch new watch read list choose explain draw teach shelf specimen content locales schema completions man licences help" -f -a "teach" -d 'Make papers to teach with, from the content alone: no case is needed'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand help; and not __fish_seen_subcommand_from check build batch new watch read list choose explain draw teach shelf specimen content locales schema completions man licences help" -f -a "shelf" -d 'Keep a folder of handouts current: only what a change touches is made anew'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand help; and not __fish_seen_subcommand_from check build batch new watch read list choose explain draw teach shelf specimen content locales schema completions man licences help" -f -a "specimen" -d 'Set a page of every component of the sheets, with what each is for: for contributors and translators'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand help; and not __fish_seen_subcommand_from check build batch new watch read list choose explain draw teach shelf specimen content locales schema completions man licences help" -f -a "content" -d 'Look after the content itself'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand help; and not __fish_seen_subcommand_from check build batch new watch read list choose explain draw teach shelf specimen content locales schema completions man licences help" -f -a "locales" -d 'Look after the words of each language: what has been checked by whom, and against which English'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand help; and not __fish_seen_subcommand_from check build batch new watch read list choose explain draw teach shelf specimen content locales schema completions man licences help" -f -a "schema" -d 'Print the JSON Schema of case files, for an editor to complete and check'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand help; and not __fish_seen_subcommand_from check build batch new watch read list choose explain draw teach shelf specimen content locales schema completions man licences help" -f -a "completions" -d 'Print a completion script for a shell'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand help; and not __fish_seen_subcommand_from check build batch new watch read list choose explain draw teach shelf specimen content locales schema completions man licences help" -f -a "man" -d 'Print the manual page'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand help; and not __fish_seen_subcommand_from check build batch new watch read list choose explain draw teach shelf specimen content locales schema completions man licences help" -f -a "licences" -d 'List the fonts and crates that this program carries, with their licences; `--format json` prints the bill of materials (CycloneDX)'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand help; and not __fish_seen_subcommand_from check build batch new watch read list choose explain draw teach shelf specimen content locales schema completions man licences help" -f -a "help" -d 'Print this message or the help of the given subcommand(s)'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand help; and __fish_seen_subcommand_from batch" -f -a "merge" -d 'Join the reports of shards: says what is missing and what was built twice'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand help; and __fish_seen_subcommand_from teach" -f -a "facts" -d 'A fact sheet for each condition, for patients or for students'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand help; and __fish_seen_subcommand_from teach" -f -a "booklet" -d 'Bind sheets into one file with a page of contents'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand help; and __fish_seen_subcommand_from teach" -f -a "chart" -d 'A comparison chart: conditions by orthoses, or the orthoses of one condition joint by joint'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand help; and __fish_seen_subcommand_from teach" -f -a "cards" -d 'Study cards to print on both sides and cut, and the same for a card program'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand help; and __fish_seen_subcommand_from teach" -f -a "questions" -d 'Invented cases with four orthoses to choose from, and the key with reasons'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand help; and __fish_seen_subcommand_from content" -f -a "check" -d 'Prove that the content is whole: ids, sources, contradictions, words of every language'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand help; and __fish_seen_subcommand_from content" -f -a "status" -d 'Show which files a clinician has confirmed, which are drafted and which have changed since'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand help; and __fish_seen_subcommand_from content" -f -a "confirm" -d 'Write down that a clinician has confirmed files as they stand'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand help; and __fish_seen_subcommand_from locales" -f -a "status" -d 'Show how many messages of each language and area are signed off, drafted or outdated'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand help; and __fish_seen_subcommand_from locales" -f -a "draft" -d 'Write down from which English each new or changed message was written'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand help; and __fish_seen_subcommand_from locales" -f -a "export" -d 'Write the words of a language for translators: XLIFF 2.1, or CSV'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand help; and __fish_seen_subcommand_from locales" -f -a "import" -d 'Put back what a translator returned. A message that lost something is refused by name; the rest goes in'
complete -c palmleaf -n "__fish_palmleaf_using_subcommand help; and __fish_seen_subcommand_from locales" -f -a "sign-off" -d 'Write down that somebody qualified has checked messages as they stand'
