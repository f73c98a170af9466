
using namespace System.Management.Automation
using namespace System.Management.Automation.Language

Register-ArgumentCompleter -Native -CommandName 'palmleaf' -ScriptBlock {
    param($wordToComplete, $commandAst, $cursorPosition)

    $commandElements = $commandAst.CommandElements
    $command = @(
        'palmleaf'
        for ($i = 1; $i -lt $commandElements.Count; $i++) {
            $element = $commandElements[$i]
            if ($element -isnot [StringConstantExpressionAst] -or
                $element.StringConstantType -ne [StringConstantType]::BareWord -or
                $element.Value.StartsWith('-') -or
                $element.Value -eq $wordToComplete) {
                break
        }
        $element.Value
    }) -join ';'

    $completions = @(switch ($command) {
        'palmleaf' {
            [CompletionResult]::new('--format', '--format', [CompletionResultType]::ParameterName, 'How findings and lists are printed')
            [CompletionResult]::new('-h', '-h', [CompletionResultType]::ParameterName, 'Print help (see more with ''--help'')')
            [CompletionResult]::new('--help', '--help', [CompletionResultType]::ParameterName, 'Print help (see more with ''--help'')')
            [CompletionResult]::new('-V', '-V ', [CompletionResultType]::ParameterName, 'Print version')
            [CompletionResult]::new('--version', '--version', [CompletionResultType]::ParameterName, 'Print version')
            [CompletionResult]::new('check', 'check', [CompletionResultType]::ParameterValue, 'Check cases without writing anything')
            [CompletionResult]::new('build', 'build', [CompletionResultType]::ParameterValue, 'Make the guide of each case, with its record beside it')
            [CompletionResult]::new('batch', 'batch', [CompletionResultType]::ParameterValue, 'Make the guides of many cases from a list: YAML documents, a folder of case files, CSV or XLSX')
            [CompletionResult]::new('new', 'new', [CompletionResultType]::ParameterValue, 'Ask for a case question by question, and write it as a commented file')
            [CompletionResult]::new('watch', 'watch', [CompletionResultType]::ParameterValue, 'Build again on every save, and show what is wrong in its place')
            [CompletionResult]::new('read', 'read', [CompletionResultType]::ParameterValue, 'Show how plainly a sheet reads: the score of each section, its longest sentences, its hardest words')
            [CompletionResult]::new('list', 'list', [CompletionResultType]::ParameterValue, 'List what the content holds')
            [CompletionResult]::new('choose', 'choose', [CompletionResultType]::ParameterValue, 'Rank the orthoses for a condition, or the conditions for an orthosis, and say why')
            [CompletionResult]::new('explain', 'explain', [CompletionResultType]::ParameterValue, 'Show the whole reasoning of a case: verdict table, plan rules with sources, overrides')
            [CompletionResult]::new('draw', 'draw', [CompletionResultType]::ParameterValue, 'Draw an orthosis, an exercise, a posture, the steps of putting a splint on, its faults of fit or what a condition concerns, without a case')
            [CompletionResult]::new('teach', 'teach', [CompletionResultType]::ParameterValue, 'Make papers to teach with, from the content alone: no case is needed')
            [CompletionResult]::new('shelf', 'shelf', [CompletionResultType]::ParameterValue, 'Keep a folder of handouts current: only what a change touches is made anew')
            [CompletionResult]::new('specimen', 'specimen', [CompletionResultType]::ParameterValue, 'Set a page of every component of the sheets, with what each is for: for contributors and translators')
            [CompletionResult]::new('content', 'content', [CompletionResultType]::ParameterValue, 'Look after the content itself')
            [CompletionResult]::new('locales', 'locales', [CompletionResultType]::ParameterValue, 'Look after the words of each language: what has been checked by whom, and against which English')
            [CompletionResult]::new('schema', 'schema', [CompletionResultType]::ParameterValue, 'Print the JSON Schema of case files, for an editor to complete and check')
            [CompletionResult]::new('completions', 'completions', [CompletionResultType]::ParameterValue, 'Print a completion script for a shell')
            [CompletionResult]::new('man', 'man', [CompletionResultType]::ParameterValue, 'Print the manual page')
            [CompletionResult]::new('licences', 'licences', [CompletionResultType]::ParameterValue, 'List the fonts and crates that this program carries, with their licences; `--format json` prints the bill of materials (CycloneDX)')
            [CompletionResult]::new('help', 'help', [CompletionResultType]::ParameterValue, 'Print this message or the help of the given subcommand(s)')
            break
        }
        'palmleaf;check' {
            [CompletionResult]::new('--clinic', '--clinic', [CompletionResultType]::ParameterName, 'The clinic''s own file: name, address, hours, logo, colour, sections. Without it `clinic.yaml` of `--content`, if any')
            [CompletionResult]::new('--content', '--content', [CompletionResultType]::ParameterName, 'A folder laid over the embedded content: its files replace and add')
            [CompletionResult]::new('--format', '--format', [CompletionResultType]::ParameterName, 'How findings and lists are printed')
            [CompletionResult]::new('-h', '-h', [CompletionResultType]::ParameterName, 'Print help (see more with ''--help'')')
            [CompletionResult]::new('--help', '--help', [CompletionResultType]::ParameterName, 'Print help (see more with ''--help'')')
            [CompletionResult]::new('-V', '-V ', [CompletionResultType]::ParameterName, 'Print version')
            [CompletionResult]::new('--version', '--version', [CompletionResultType]::ParameterName, 'Print version')
            break
        }
        'palmleaf;build' {
            [CompletionResult]::new('--out', '--out', [CompletionResultType]::ParameterName, 'The folder that guides are written to')
            [CompletionResult]::new('--language', '--language', [CompletionResultType]::ParameterName, 'The language, instead of the case''s own; several divided by commas make a guide each')
            [CompletionResult]::new('--with', '--with', [CompletionResultType]::ParameterName, 'Also make each sheet in its language and this one beside each other, to point at')
            [CompletionResult]::new('--print', '--print', [CompletionResultType]::ParameterName, 'The print size, instead of the case''s own: 12, 18 or 24 point')
            [CompletionResult]::new('--paper', '--paper', [CompletionResultType]::ParameterName, 'The paper, instead of the case''s own; `letter` is US Letter')
            [CompletionResult]::new('--sheets', '--sheets', [CompletionResultType]::ParameterName, 'What to make, divided by commas, or `all`. `reminders` is a file for the calendar of a telephone, `record` a page for the chart')
            [CompletionResult]::new('--require', '--require', [CompletionResultType]::ParameterName, 'Refuse to build on content or words that are less than this')
            [CompletionResult]::new('--threads', '--threads', [CompletionResultType]::ParameterName, 'How many cases are made at the same time; all processors when not said')
            [CompletionResult]::new('--clinic', '--clinic', [CompletionResultType]::ParameterName, 'The clinic''s own file: name, address, hours, logo, colour, sections. Without it `clinic.yaml` of `--content`, if any')
            [CompletionResult]::new('--content', '--content', [CompletionResultType]::ParameterName, 'A folder laid over the embedded content: its files replace and add')
            [CompletionResult]::new('--format', '--format', [CompletionResultType]::ParameterName, 'How findings and lists are printed')
            [CompletionResult]::new('--without-name', '--without-name', [CompletionResultType]::ParameterName, 'Leave the person''s name out of every file, and leave a line to write it by hand')
            [CompletionResult]::new('--pictures', '--pictures', [CompletionResultType]::ParameterName, 'Also write each page as a picture')
            [CompletionResult]::new('--name-by-case', '--name-by-case', [CompletionResultType]::ParameterName, 'Name files after the case file, which may hold a person''s name')
            [CompletionResult]::new('--no-cache', '--no-cache', [CompletionResultType]::ParameterName, 'Draw every picture anew, and keep none for the next run')
            [CompletionResult]::new('-h', '-h', [CompletionResultType]::ParameterName, 'Print help (see more with ''--help'')')
            [CompletionResult]::new('--help', '--help', [CompletionResultType]::ParameterName, 'Print help (see more with ''--help'')')
            [CompletionResult]::new('-V', '-V ', [CompletionResultType]::ParameterName, 'Print version')
            [CompletionResult]::new('--version', '--version', [CompletionResultType]::ParameterName, 'Print version')
            break
        }
        'palmleaf;batch' {
            [CompletionResult]::new('--mapping', '--mapping', [CompletionResultType]::ParameterName, 'Which column of a table feeds which field of the case: a YAML file')
            [CompletionResult]::new('--out', '--out', [CompletionResultType]::ParameterName, 'The folder that guides and the report are written to')
            [CompletionResult]::new('--language', '--language', [CompletionResultType]::ParameterName, 'The language, instead of the case''s own; several divided by commas make a guide each')
            [CompletionResult]::new('--with', '--with', [CompletionResultType]::ParameterName, 'Also make each sheet in its language and this one beside each other, to point at')
            [CompletionResult]::new('--print', '--print', [CompletionResultType]::ParameterName, 'The print size, instead of the case''s own: 12, 18 or 24 point')
            [CompletionResult]::new('--paper', '--paper', [CompletionResultType]::ParameterName, 'The paper, instead of the case''s own; `letter` is US Letter')
            [CompletionResult]::new('--sheets', '--sheets', [CompletionResultType]::ParameterName, 'What to make, divided by commas, or `all`. `reminders` is a file for the calendar of a telephone, `record` a page for the chart')
            [CompletionResult]::new('--require', '--require', [CompletionResultType]::ParameterName, 'Refuse to build on content or words that are less than this')
            [CompletionResult]::new('--shard', '--shard', [CompletionResultType]::ParameterName, 'Make only this part of the list, such as `3/16`. The id of a row decides in which part it is')
            [CompletionResult]::new('--merged', '--merged', [CompletionResultType]::ParameterName, 'Also join the papers on pages into one PDF for a printer of both sides: each begins on a right-hand page')
            [CompletionResult]::new('--threads', '--threads', [CompletionResultType]::ParameterName, 'How many cases are made at the same time; all processors when not said')
            [CompletionResult]::new('--clinic', '--clinic', [CompletionResultType]::ParameterName, 'The clinic''s own file: name, address, hours, logo, colour, sections. Without it `clinic.yaml` of `--content`, if any')
            [CompletionResult]::new('--content', '--content', [CompletionResultType]::ParameterName, 'A folder laid over the embedded content: its files replace and add')
            [CompletionResult]::new('--format', '--format', [CompletionResultType]::ParameterName, 'How findings and lists are printed')
            [CompletionResult]::new('--without-name', '--without-name', [CompletionResultType]::ParameterName, 'Leave the person''s name out of every file, and leave a line to write it by hand')
            [CompletionResult]::new('--pictures', '--pictures', [CompletionResultType]::ParameterName, 'Also write each page as a picture')
            [CompletionResult]::new('--resume', '--resume', [CompletionResultType]::ParameterName, 'Go on after a run that was cut off: what was made from the same case, content and options, and is whole, is kept')
            [CompletionResult]::new('--no-cache', '--no-cache', [CompletionResultType]::ParameterName, 'Draw every picture anew, and keep none for the next run')
            [CompletionResult]::new('-h', '-h', [CompletionResultType]::ParameterName, 'Print help (see more with ''--help'')')
            [CompletionResult]::new('--help', '--help', [CompletionResultType]::ParameterName, 'Print help (see more with ''--help'')')
            [CompletionResult]::new('-V', '-V ', [CompletionResultType]::ParameterName, 'Print version')
            [CompletionResult]::new('--version', '--version', [CompletionResultType]::ParameterName, 'Print version')
            [CompletionResult]::new('merge', 'merge', [CompletionResultType]::ParameterValue, 'Join the reports of shards: says what is missing and what was built twice')
            [CompletionResult]::new('help', 'help', [CompletionResultType]::ParameterValue, 'Print this message or the help of the given subcommand(s)')
            break
        }
        'palmleaf;batch;merge' {
            [CompletionResult]::new('--out', '--out', [CompletionResultType]::ParameterName, 'The folder that the report of the whole list is written to')
            [CompletionResult]::new('--merged', '--merged', [CompletionResultType]::ParameterName, 'Also join the papers on pages into one PDF, from the folders that the reports stand in')
            [CompletionResult]::new('--format', '--format', [CompletionResultType]::ParameterName, 'How findings and lists are printed')
            [CompletionResult]::new('-h', '-h', [CompletionResultType]::ParameterName, 'Print help (see more with ''--help'')')
            [CompletionResult]::new('--help', '--help', [CompletionResultType]::ParameterName, 'Print help (see more with ''--help'')')
            [CompletionResult]::new('-V', '-V ', [CompletionResultType]::ParameterName, 'Print version')
            [CompletionResult]::new('--version', '--version', [CompletionResultType]::ParameterName, 'Print version')
            break
        }
        'palmleaf;batch;help' {
            [CompletionResult]::new('merge', 'merge', [CompletionResultType]::ParameterValue, 'Join the reports of shards: says what is missing and what was built twice')
            [CompletionResult]::new('help', 'help', [CompletionResultType]::ParameterValue, 'Print this message or the help of the given subcommand(s)')
            break
        }
        'palmleaf;batch;help;merge' {
            break
        }
        'palmleaf;batch;help;help' {
            break
        }
        'palmleaf;new' {
            [CompletionResult]::new('--answers', '--answers', [CompletionResultType]::ParameterName, 'A file with an answer on each line; a line that begins with `#` is a remark, an empty one takes what is offered')
            [CompletionResult]::new('--today', '--today', [CompletionResultType]::ParameterName, 'The day that the fitting is taken to be on; today when not said')
            [CompletionResult]::new('--clinic', '--clinic', [CompletionResultType]::ParameterName, 'The clinic''s own file: name, address, hours, logo, colour, sections. Without it `clinic.yaml` of `--content`, if any')
            [CompletionResult]::new('--content', '--content', [CompletionResultType]::ParameterName, 'A folder laid over the embedded content: its files replace and add')
            [CompletionResult]::new('--format', '--format', [CompletionResultType]::ParameterName, 'How findings and lists are printed')
            [CompletionResult]::new('--plain', '--plain', [CompletionResultType]::ParameterName, 'Plain numbered questions instead of lists to move in; so it is by itself where there is no terminal')
            [CompletionResult]::new('-h', '-h', [CompletionResultType]::ParameterName, 'Print help (see more with ''--help'')')
            [CompletionResult]::new('--help', '--help', [CompletionResultType]::ParameterName, 'Print help (see more with ''--help'')')
            [CompletionResult]::new('-V', '-V ', [CompletionResultType]::ParameterName, 'Print version')
            [CompletionResult]::new('--version', '--version', [CompletionResultType]::ParameterName, 'Print version')
            break
        }
        'palmleaf;watch' {
            [CompletionResult]::new('--out', '--out', [CompletionResultType]::ParameterName, 'The folder that guides are written to')
            [CompletionResult]::new('--language', '--language', [CompletionResultType]::ParameterName, 'The language, instead of the case''s own; several divided by commas make a guide each')
            [CompletionResult]::new('--with', '--with', [CompletionResultType]::ParameterName, 'Also make each sheet in its language and this one beside each other, to point at')
            [CompletionResult]::new('--print', '--print', [CompletionResultType]::ParameterName, 'The print size, instead of the case''s own: 12, 18 or 24 point')
            [CompletionResult]::new('--paper', '--paper', [CompletionResultType]::ParameterName, 'The paper, instead of the case''s own; `letter` is US Letter')
            [CompletionResult]::new('--sheets', '--sheets', [CompletionResultType]::ParameterName, 'What to make, divided by commas, or `all`. `reminders` is a file for the calendar of a telephone, `record` a page for the chart')
            [CompletionResult]::new('--require', '--require', [CompletionResultType]::ParameterName, 'Refuse to build on content or words that are less than this')
            [CompletionResult]::new('--threads', '--threads', [CompletionResultType]::ParameterName, 'How many cases are made at the same time; all processors when not said')
            [CompletionResult]::new('--clinic', '--clinic', [CompletionResultType]::ParameterName, 'The clinic''s own file: name, address, hours, logo, colour, sections. Without it `clinic.yaml` of `--content`, if any')
            [CompletionResult]::new('--content', '--content', [CompletionResultType]::ParameterName, 'A folder laid over the embedded content: its files replace and add')
            [CompletionResult]::new('--format', '--format', [CompletionResultType]::ParameterName, 'How findings and lists are printed')
            [CompletionResult]::new('--without-name', '--without-name', [CompletionResultType]::ParameterName, 'Leave the person''s name out of every file, and leave a line to write it by hand')
            [CompletionResult]::new('--pictures', '--pictures', [CompletionResultType]::ParameterName, 'Also write each page as a picture')
            [CompletionResult]::new('--name-by-case', '--name-by-case', [CompletionResultType]::ParameterName, 'Name files after the case file, which may hold a person''s name')
            [CompletionResult]::new('--no-cache', '--no-cache', [CompletionResultType]::ParameterName, 'Draw every picture anew, and keep none for the next run')
            [CompletionResult]::new('-h', '-h', [CompletionResultType]::ParameterName, 'Print help (see more with ''--help'')')
            [CompletionResult]::new('--help', '--help', [CompletionResultType]::ParameterName, 'Print help (see more with ''--help'')')
            [CompletionResult]::new('-V', '-V ', [CompletionResultType]::ParameterName, 'Print version')
            [CompletionResult]::new('--version', '--version', [CompletionResultType]::ParameterName, 'Print version')
            break
        }
        'palmleaf;read' {
            [CompletionResult]::new('--text', '--text', [CompletionResultType]::ParameterName, 'Read a file of plain text, each line by itself')
            [CompletionResult]::new('--language', '--language', [CompletionResultType]::ParameterName, 'The language, instead of the case''s own; several divided by commas are read each')
            [CompletionResult]::new('--sheets', '--sheets', [CompletionResultType]::ParameterName, 'Which sheets to read, divided by commas, or `all`')
            [CompletionResult]::new('--instrument', '--instrument', [CompletionResultType]::ParameterName, 'Fill in this instrument for patient material instead, as far as a program can: `pemat` or `cdc`')
            [CompletionResult]::new('--require', '--require', [CompletionResultType]::ParameterName, 'End with status 1 when a section misses this')
            [CompletionResult]::new('--content', '--content', [CompletionResultType]::ParameterName, 'A folder laid over the embedded content: its files replace and add')
            [CompletionResult]::new('--format', '--format', [CompletionResultType]::ParameterName, 'How findings and lists are printed')
            [CompletionResult]::new('--all', '--all', [CompletionResultType]::ParameterName, 'Read every message of the languages, file by file, instead of a case. A variable counts as a figure')
            [CompletionResult]::new('-h', '-h', [CompletionResultType]::ParameterName, 'Print help (see more with ''--help'')')
            [CompletionResult]::new('--help', '--help', [CompletionResultType]::ParameterName, 'Print help (see more with ''--help'')')
            [CompletionResult]::new('-V', '-V ', [CompletionResultType]::ParameterName, 'Print version')
            [CompletionResult]::new('--version', '--version', [CompletionResultType]::ParameterName, 'Print version')
            break
        }
        'palmleaf;list' {
            [CompletionResult]::new('--content', '--content', [CompletionResultType]::ParameterName, 'A folder laid over the embedded content: its files replace and add')
            [CompletionResult]::new('--format', '--format', [CompletionResultType]::ParameterName, 'How findings and lists are printed')
            [CompletionResult]::new('-h', '-h', [CompletionResultType]::ParameterName, 'Print help (see more with ''--help'')')
            [CompletionResult]::new('--help', '--help', [CompletionResultType]::ParameterName, 'Print help (see more with ''--help'')')
            [CompletionResult]::new('-V', '-V ', [CompletionResultType]::ParameterName, 'Print version')
            [CompletionResult]::new('--version', '--version', [CompletionResultType]::ParameterName, 'Print version')
            break
        }
        'palmleaf;choose' {
            [CompletionResult]::new('--orthosis', '--orthosis', [CompletionResultType]::ParameterName, 'The other way round: the conditions that this orthosis suits, and why not the others')
            [CompletionResult]::new('--phase', '--phase', [CompletionResultType]::ParameterName, 'The phase of the condition; the first when not said')
            [CompletionResult]::new('--finger', '--finger', [CompletionResultType]::ParameterName, 'The affected finger, for what concerns one finger')
            [CompletionResult]::new('--finding', '--finding', [CompletionResultType]::ParameterName, 'What was measured, such as "thumb-mcp extension 25 deg"; may be given again')
            [CompletionResult]::new('--need', '--need', [CompletionResultType]::ParameterName, 'What the person needs: ids that `palmleaf list needs` shows, divided by commas')
            [CompletionResult]::new('--factor', '--factor', [CompletionResultType]::ParameterName, 'What is particular about the person: ids that `palmleaf list factors` shows, divided by commas')
            [CompletionResult]::new('--chart', '--chart', [CompletionResultType]::ParameterName, 'Also draw the best side by side, joint by joint, on a page')
            [CompletionResult]::new('--content', '--content', [CompletionResultType]::ParameterName, 'A folder laid over the embedded content: its files replace and add')
            [CompletionResult]::new('--format', '--format', [CompletionResultType]::ParameterName, 'How findings and lists are printed')
            [CompletionResult]::new('--all', '--all', [CompletionResultType]::ParameterName, 'Show all of them, also those that do not fit')
            [CompletionResult]::new('-h', '-h', [CompletionResultType]::ParameterName, 'Print help (see more with ''--help'')')
            [CompletionResult]::new('--help', '--help', [CompletionResultType]::ParameterName, 'Print help (see more with ''--help'')')
            [CompletionResult]::new('-V', '-V ', [CompletionResultType]::ParameterName, 'Print version')
            [CompletionResult]::new('--version', '--version', [CompletionResultType]::ParameterName, 'Print version')
            break
        }
        'palmleaf;explain' {
            [CompletionResult]::new('--language', '--language', [CompletionResultType]::ParameterName, 'The language of these sentences, instead of the case''s own')
            [CompletionResult]::new('--clinic', '--clinic', [CompletionResultType]::ParameterName, 'The clinic''s own file: name, address, hours, logo, colour, sections. Without it `clinic.yaml` of `--content`, if any')
            [CompletionResult]::new('--content', '--content', [CompletionResultType]::ParameterName, 'A folder laid over the embedded content: its files replace and add')
            [CompletionResult]::new('--format', '--format', [CompletionResultType]::ParameterName, 'How findings and lists are printed')
            [CompletionResult]::new('--sentences', '--sentences', [CompletionResultType]::ParameterName, 'Also go through the guide sentence by sentence: its message, the lines of the case that led to it, the rules of the content with their places and sources')
            [CompletionResult]::new('-h', '-h', [CompletionResultType]::ParameterName, 'Print help (see more with ''--help'')')
            [CompletionResult]::new('--help', '--help', [CompletionResultType]::ParameterName, 'Print help (see more with ''--help'')')
            [CompletionResult]::new('-V', '-V ', [CompletionResultType]::ParameterName, 'Print version')
            [CompletionResult]::new('--version', '--version', [CompletionResultType]::ParameterName, 'Print version')
            break
        }
        'palmleaf;draw' {
            [CompletionResult]::new('--orthosis', '--orthosis', [CompletionResultType]::ParameterName, 'An orthosis in its place')
            [CompletionResult]::new('--exercise', '--exercise', [CompletionResultType]::ParameterName, 'An exercise, a picture for each movement')
            [CompletionResult]::new('--posture', '--posture', [CompletionResultType]::ParameterName, 'A bare hand in a posture: a YAML file with the positions of its joints')
            [CompletionResult]::new('--steps', '--steps', [CompletionResultType]::ParameterName, 'The steps of putting an orthosis on and taking it off')
            [CompletionResult]::new('--spots', '--spots', [CompletionResultType]::ParameterName, 'The spots of the skin check of an orthosis')
            [CompletionResult]::new('--condition', '--condition', [CompletionResultType]::ParameterName, 'What a condition concerns: its structures on the bones, and the joints that it needs held')
            [CompletionResult]::new('--faults', '--faults', [CompletionResultType]::ParameterName, 'How an orthosis sits, beside each typical way in which it does not')
            [CompletionResult]::new('--sheet', '--sheet', [CompletionResultType]::ParameterName, 'Everything of a kind, with captions, on pages')
            [CompletionResult]::new('--wearing', '--wearing', [CompletionResultType]::ParameterName, 'The orthosis that is worn during the exercise')
            [CompletionResult]::new('--finger', '--finger', [CompletionResultType]::ParameterName, 'The affected finger, for what concerns one finger')
            [CompletionResult]::new('--side', '--side', [CompletionResultType]::ParameterName, 'side')
            [CompletionResult]::new('--view', '--view', [CompletionResultType]::ParameterName, 'From where it is seen; when not said, from where it is seen best')
            [CompletionResult]::new('--build', '--build', [CompletionResultType]::ParameterName, 'build')
            [CompletionResult]::new('--width', '--width', [CompletionResultType]::ParameterName, 'How wide a picture is, millimetres; on a sheet as wide as its column when not said')
            [CompletionResult]::new('--language', '--language', [CompletionResultType]::ParameterName, 'The language of the words about the pictures')
            [CompletionResult]::new('-o', '-o', [CompletionResultType]::ParameterName, 'The file to write; its ending says what it is: `.svg`, `.pdf` or `.png`. Several pictures get numbers, or a sheet in a PDF. With `--format json` it may be left out')
            [CompletionResult]::new('--out', '--out', [CompletionResultType]::ParameterName, 'The file to write; its ending says what it is: `.svg`, `.pdf` or `.png`. Several pictures get numbers, or a sheet in a PDF. With `--format json` it may be left out')
            [CompletionResult]::new('--content', '--content', [CompletionResultType]::ParameterName, 'A folder laid over the embedded content: its files replace and add')
            [CompletionResult]::new('--format', '--format', [CompletionResultType]::ParameterName, 'How findings and lists are printed')
            [CompletionResult]::new('--no-cache', '--no-cache', [CompletionResultType]::ParameterName, 'Draw every picture anew, and keep none for the next run')
            [CompletionResult]::new('-h', '-h', [CompletionResultType]::ParameterName, 'Print help (see more with ''--help'')')
            [CompletionResult]::new('--help', '--help', [CompletionResultType]::ParameterName, 'Print help (see more with ''--help'')')
            [CompletionResult]::new('-V', '-V ', [CompletionResultType]::ParameterName, 'Print version')
            [CompletionResult]::new('--version', '--version', [CompletionResultType]::ParameterName, 'Print version')
            break
        }
        'palmleaf;teach' {
            [CompletionResult]::new('--format', '--format', [CompletionResultType]::ParameterName, 'How findings and lists are printed')
            [CompletionResult]::new('-h', '-h', [CompletionResultType]::ParameterName, 'Print help (see more with ''--help'')')
            [CompletionResult]::new('--help', '--help', [CompletionResultType]::ParameterName, 'Print help (see more with ''--help'')')
            [CompletionResult]::new('-V', '-V ', [CompletionResultType]::ParameterName, 'Print version')
            [CompletionResult]::new('--version', '--version', [CompletionResultType]::ParameterName, 'Print version')
            [CompletionResult]::new('facts', 'facts', [CompletionResultType]::ParameterValue, 'A fact sheet for each condition, for patients or for students')
            [CompletionResult]::new('booklet', 'booklet', [CompletionResultType]::ParameterValue, 'Bind sheets into one file with a page of contents')
            [CompletionResult]::new('chart', 'chart', [CompletionResultType]::ParameterValue, 'A comparison chart: conditions by orthoses, or the orthoses of one condition joint by joint')
            [CompletionResult]::new('cards', 'cards', [CompletionResultType]::ParameterValue, 'Study cards to print on both sides and cut, and the same for a card program')
            [CompletionResult]::new('questions', 'questions', [CompletionResultType]::ParameterValue, 'Invented cases with four orthoses to choose from, and the key with reasons')
            [CompletionResult]::new('help', 'help', [CompletionResultType]::ParameterValue, 'Print this message or the help of the given subcommand(s)')
            break
        }
        'palmleaf;teach;facts' {
            [CompletionResult]::new('--for', '--for', [CompletionResultType]::ParameterName, 'Whom it is for: patients get plain words, students the joints with reasons and sources, in English')
            [CompletionResult]::new('--out', '--out', [CompletionResultType]::ParameterName, 'The folder that sheets are written to')
            [CompletionResult]::new('--language', '--language', [CompletionResultType]::ParameterName, 'The language; several divided by commas make a sheet each')
            [CompletionResult]::new('--print', '--print', [CompletionResultType]::ParameterName, 'The print size: 12, 18 or 24 point')
            [CompletionResult]::new('--paper', '--paper', [CompletionResultType]::ParameterName, 'paper')
            [CompletionResult]::new('--side', '--side', [CompletionResultType]::ParameterName, 'The hand that is shown')
            [CompletionResult]::new('--finger', '--finger', [CompletionResultType]::ParameterName, 'The finger that is shown, for what concerns one finger')
            [CompletionResult]::new('--clinic', '--clinic', [CompletionResultType]::ParameterName, 'The clinic''s own file: name, address, hours, logo, colour, sections. Without it `clinic.yaml` of `--content`, if any')
            [CompletionResult]::new('--content', '--content', [CompletionResultType]::ParameterName, 'A folder laid over the embedded content: its files replace and add')
            [CompletionResult]::new('--format', '--format', [CompletionResultType]::ParameterName, 'How findings and lists are printed')
            [CompletionResult]::new('--all', '--all', [CompletionResultType]::ParameterName, 'A sheet for every condition')
            [CompletionResult]::new('--no-cache', '--no-cache', [CompletionResultType]::ParameterName, 'Draw every picture anew, and keep none for the next run')
            [CompletionResult]::new('-h', '-h', [CompletionResultType]::ParameterName, 'Print help (see more with ''--help'')')
            [CompletionResult]::new('--help', '--help', [CompletionResultType]::ParameterName, 'Print help (see more with ''--help'')')
            [CompletionResult]::new('-V', '-V ', [CompletionResultType]::ParameterName, 'Print version')
            [CompletionResult]::new('--version', '--version', [CompletionResultType]::ParameterName, 'Print version')
            break
        }
        'palmleaf;teach;booklet' {
            [CompletionResult]::new('-o', '-o', [CompletionResultType]::ParameterName, 'The file to write; when not said, the name of the list with the ending `.pdf`, in `dist`')
            [CompletionResult]::new('--out', '--out', [CompletionResultType]::ParameterName, 'The file to write; when not said, the name of the list with the ending `.pdf`, in `dist`')
            [CompletionResult]::new('--clinic', '--clinic', [CompletionResultType]::ParameterName, 'The clinic''s own file: name, address, hours, logo, colour, sections. Without it `clinic.yaml` of `--content`, if any')
            [CompletionResult]::new('--content', '--content', [CompletionResultType]::ParameterName, 'A folder laid over the embedded content: its files replace and add')
            [CompletionResult]::new('--format', '--format', [CompletionResultType]::ParameterName, 'How findings and lists are printed')
            [CompletionResult]::new('--no-cache', '--no-cache', [CompletionResultType]::ParameterName, 'Draw every picture anew, and keep none for the next run')
            [CompletionResult]::new('-h', '-h', [CompletionResultType]::ParameterName, 'Print help (see more with ''--help'')')
            [CompletionResult]::new('--help', '--help', [CompletionResultType]::ParameterName, 'Print help (see more with ''--help'')')
            [CompletionResult]::new('-V', '-V ', [CompletionResultType]::ParameterName, 'Print version')
            [CompletionResult]::new('--version', '--version', [CompletionResultType]::ParameterName, 'Print version')
            break
        }
        'palmleaf;teach;chart' {
            [CompletionResult]::new('--group', '--group', [CompletionResultType]::ParameterName, 'All conditions of a part of the limb, by the orthoses that fit at least one of them as it begins')
            [CompletionResult]::new('--condition', '--condition', [CompletionResultType]::ParameterName, 'One condition: every orthosis, joint by joint')
            [CompletionResult]::new('--phase', '--phase', [CompletionResultType]::ParameterName, 'The phase of the condition; the first one in which an orthosis is worn when not said')
            [CompletionResult]::new('--finger', '--finger', [CompletionResultType]::ParameterName, 'The finger, for what concerns one finger')
            [CompletionResult]::new('--paper', '--paper', [CompletionResultType]::ParameterName, 'paper')
            [CompletionResult]::new('--out', '--out', [CompletionResultType]::ParameterName, 'The folder that files are written to')
            [CompletionResult]::new('--content', '--content', [CompletionResultType]::ParameterName, 'A folder laid over the embedded content: its files replace and add')
            [CompletionResult]::new('--format', '--format', [CompletionResultType]::ParameterName, 'How findings and lists are printed')
            [CompletionResult]::new('-h', '-h', [CompletionResultType]::ParameterName, 'Print help (see more with ''--help'')')
            [CompletionResult]::new('--help', '--help', [CompletionResultType]::ParameterName, 'Print help (see more with ''--help'')')
            [CompletionResult]::new('-V', '-V ', [CompletionResultType]::ParameterName, 'Print version')
            [CompletionResult]::new('--version', '--version', [CompletionResultType]::ParameterName, 'Print version')
            break
        }
        'palmleaf;teach;cards' {
            [CompletionResult]::new('--group', '--group', [CompletionResultType]::ParameterName, 'Cards about the conditions of a part of the limb and what is worn there')
            [CompletionResult]::new('--condition', '--condition', [CompletionResultType]::ParameterName, 'Cards about these conditions and the orthoses that fit them; ids divided by commas')
            [CompletionResult]::new('--orthosis', '--orthosis', [CompletionResultType]::ParameterName, 'Cards about these orthoses; ids divided by commas')
            [CompletionResult]::new('--flip', '--flip', [CompletionResultType]::ParameterName, 'The edge that the printer turns the paper over when it prints both sides')
            [CompletionResult]::new('--paper', '--paper', [CompletionResultType]::ParameterName, 'paper')
            [CompletionResult]::new('--side', '--side', [CompletionResultType]::ParameterName, 'The hand that is drawn')
            [CompletionResult]::new('--finger', '--finger', [CompletionResultType]::ParameterName, 'The finger that is drawn, for what concerns one finger')
            [CompletionResult]::new('--out', '--out', [CompletionResultType]::ParameterName, 'The folder that files are written to')
            [CompletionResult]::new('--content', '--content', [CompletionResultType]::ParameterName, 'A folder laid over the embedded content: its files replace and add')
            [CompletionResult]::new('--format', '--format', [CompletionResultType]::ParameterName, 'How findings and lists are printed')
            [CompletionResult]::new('--no-cache', '--no-cache', [CompletionResultType]::ParameterName, 'Draw every picture anew, and keep none for the next run')
            [CompletionResult]::new('-h', '-h', [CompletionResultType]::ParameterName, 'Print help (see more with ''--help'')')
            [CompletionResult]::new('--help', '--help', [CompletionResultType]::ParameterName, 'Print help (see more with ''--help'')')
            [CompletionResult]::new('-V', '-V ', [CompletionResultType]::ParameterName, 'Print version')
            [CompletionResult]::new('--version', '--version', [CompletionResultType]::ParameterName, 'Print version')
            break
        }
        'palmleaf;teach;questions' {
            [CompletionResult]::new('--seed', '--seed', [CompletionResultType]::ParameterName, 'The same number gives the same questions, byte for byte')
            [CompletionResult]::new('--count', '--count', [CompletionResultType]::ParameterName, 'How many questions')
            [CompletionResult]::new('--group', '--group', [CompletionResultType]::ParameterName, 'Only conditions of a part of the limb')
            [CompletionResult]::new('--paper', '--paper', [CompletionResultType]::ParameterName, 'paper')
            [CompletionResult]::new('--out', '--out', [CompletionResultType]::ParameterName, 'The folder that files are written to')
            [CompletionResult]::new('--content', '--content', [CompletionResultType]::ParameterName, 'A folder laid over the embedded content: its files replace and add')
            [CompletionResult]::new('--format', '--format', [CompletionResultType]::ParameterName, 'How findings and lists are printed')
            [CompletionResult]::new('-h', '-h', [CompletionResultType]::ParameterName, 'Print help (see more with ''--help'')')
            [CompletionResult]::new('--help', '--help', [CompletionResultType]::ParameterName, 'Print help (see more with ''--help'')')
            [CompletionResult]::new('-V', '-V ', [CompletionResultType]::ParameterName, 'Print version')
            [CompletionResult]::new('--version', '--version', [CompletionResultType]::ParameterName, 'Print version')
            break
        }
        'palmleaf;teach;help' {
            [CompletionResult]::new('facts', 'facts', [CompletionResultType]::ParameterValue, 'A fact sheet for each condition, for patients or for students')
            [CompletionResult]::new('booklet', 'booklet', [CompletionResultType]::ParameterValue, 'Bind sheets into one file with a page of contents')
            [CompletionResult]::new('chart', 'chart', [CompletionResultType]::ParameterValue, 'A comparison chart: conditions by orthoses, or the orthoses of one condition joint by joint')
            [CompletionResult]::new('cards', 'cards', [CompletionResultType]::ParameterValue, 'Study cards to print on both sides and cut, and the same for a card program')
            [CompletionResult]::new('questions', 'questions', [CompletionResultType]::ParameterValue, 'Invented cases with four orthoses to choose from, and the key with reasons')
            [CompletionResult]::new('help', 'help', [CompletionResultType]::ParameterValue, 'Print this message or the help of the given subcommand(s)')
            break
        }
        'palmleaf;teach;help;facts' {
            break
        }
        'palmleaf;teach;help;booklet' {
            break
        }
        'palmleaf;teach;help;chart' {
            break
        }
        'palmleaf;teach;help;cards' {
            break
        }
        'palmleaf;teach;help;questions' {
            break
        }
        'palmleaf;teach;help;help' {
            break
        }
        'palmleaf;shelf' {
            [CompletionResult]::new('--today', '--today', [CompletionResultType]::ParameterName, 'The day that reviews are counted by; the day of the clock (UTC) when not said')
            [CompletionResult]::new('--wait', '--wait', [CompletionResultType]::ParameterName, 'How many seconds to wait for another run on the same folder')
            [CompletionResult]::new('--threads', '--threads', [CompletionResultType]::ParameterName, 'How many handouts are made at the same time; all processors when not said')
            [CompletionResult]::new('--content', '--content', [CompletionResultType]::ParameterName, 'A folder laid over the embedded content: its files replace and add')
            [CompletionResult]::new('--format', '--format', [CompletionResultType]::ParameterName, 'How findings and lists are printed')
            [CompletionResult]::new('--check', '--check', [CompletionResultType]::ParameterName, 'Say what would be made, removed or is due, and write nothing; status 1 when the shelf is not current')
            [CompletionResult]::new('--no-cache', '--no-cache', [CompletionResultType]::ParameterName, 'Draw every picture anew, and keep none for the next run')
            [CompletionResult]::new('-h', '-h', [CompletionResultType]::ParameterName, 'Print help (see more with ''--help'')')
            [CompletionResult]::new('--help', '--help', [CompletionResultType]::ParameterName, 'Print help (see more with ''--help'')')
            [CompletionResult]::new('-V', '-V ', [CompletionResultType]::ParameterName, 'Print version')
            [CompletionResult]::new('--version', '--version', [CompletionResultType]::ParameterName, 'Print version')
            break
        }
        'palmleaf;specimen' {
            [CompletionResult]::new('--language', '--language', [CompletionResultType]::ParameterName, 'The language of the components')
            [CompletionResult]::new('-o', '-o', [CompletionResultType]::ParameterName, 'The file to write')
            [CompletionResult]::new('--out', '--out', [CompletionResultType]::ParameterName, 'The file to write')
            [CompletionResult]::new('--content', '--content', [CompletionResultType]::ParameterName, 'A folder laid over the embedded content: its files replace and add')
            [CompletionResult]::new('--format', '--format', [CompletionResultType]::ParameterName, 'How findings and lists are printed')
            [CompletionResult]::new('--no-cache', '--no-cache', [CompletionResultType]::ParameterName, 'Draw every picture anew, and keep none for the next run')
            [CompletionResult]::new('-h', '-h', [CompletionResultType]::ParameterName, 'Print help (see more with ''--help'')')
            [CompletionResult]::new('--help', '--help', [CompletionResultType]::ParameterName, 'Print help (see more with ''--help'')')
            [CompletionResult]::new('-V', '-V ', [CompletionResultType]::ParameterName, 'Print version')
            [CompletionResult]::new('--version', '--version', [CompletionResultType]::ParameterName, 'Print version')
            break
        }
        'palmleaf;content' {
            [CompletionResult]::new('--format', '--format', [CompletionResultType]::ParameterName, 'How findings and lists are printed')
            [CompletionResult]::new('-h', '-h', [CompletionResultType]::ParameterName, 'Print help (see more with ''--help'')')
            [CompletionResult]::new('--help', '--help', [CompletionResultType]::ParameterName, 'Print help (see more with ''--help'')')
            [CompletionResult]::new('-V', '-V ', [CompletionResultType]::ParameterName, 'Print version')
            [CompletionResult]::new('--version', '--version', [CompletionResultType]::ParameterName, 'Print version')
            [CompletionResult]::new('check', 'check', [CompletionResultType]::ParameterValue, 'Prove that the content is whole: ids, sources, contradictions, words of every language')
            [CompletionResult]::new('status', 'status', [CompletionResultType]::ParameterValue, 'Show which files a clinician has confirmed, which are drafted and which have changed since')
            [CompletionResult]::new('confirm', 'confirm', [CompletionResultType]::ParameterValue, 'Write down that a clinician has confirmed files as they stand')
            [CompletionResult]::new('help', 'help', [CompletionResultType]::ParameterValue, 'Print this message or the help of the given subcommand(s)')
            break
        }
        'palmleaf;content;check' {
            [CompletionResult]::new('--content', '--content', [CompletionResultType]::ParameterName, 'A folder laid over the embedded content: its files replace and add')
            [CompletionResult]::new('--format', '--format', [CompletionResultType]::ParameterName, 'How findings and lists are printed')
            [CompletionResult]::new('-h', '-h', [CompletionResultType]::ParameterName, 'Print help (see more with ''--help'')')
            [CompletionResult]::new('--help', '--help', [CompletionResultType]::ParameterName, 'Print help (see more with ''--help'')')
            [CompletionResult]::new('-V', '-V ', [CompletionResultType]::ParameterName, 'Print version')
            [CompletionResult]::new('--version', '--version', [CompletionResultType]::ParameterName, 'Print version')
            break
        }
        'palmleaf;content;status' {
            [CompletionResult]::new('--content', '--content', [CompletionResultType]::ParameterName, 'A folder laid over the embedded content: its files replace and add')
            [CompletionResult]::new('--format', '--format', [CompletionResultType]::ParameterName, 'How findings and lists are printed')
            [CompletionResult]::new('-h', '-h', [CompletionResultType]::ParameterName, 'Print help (see more with ''--help'')')
            [CompletionResult]::new('--help', '--help', [CompletionResultType]::ParameterName, 'Print help (see more with ''--help'')')
            [CompletionResult]::new('-V', '-V ', [CompletionResultType]::ParameterName, 'Print version')
            [CompletionResult]::new('--version', '--version', [CompletionResultType]::ParameterName, 'Print version')
            break
        }
        'palmleaf;content;confirm' {
            [CompletionResult]::new('--by', '--by', [CompletionResultType]::ParameterName, 'Who confirms: role, initials or registration, as the clinic wishes')
            [CompletionResult]::new('--on', '--on', [CompletionResultType]::ParameterName, 'The day of the confirmation')
            [CompletionResult]::new('--content', '--content', [CompletionResultType]::ParameterName, 'The clinic''s own folder: the confirmation is written there, as `confirmed.yaml`')
            [CompletionResult]::new('--format', '--format', [CompletionResultType]::ParameterName, 'How findings and lists are printed')
            [CompletionResult]::new('-h', '-h', [CompletionResultType]::ParameterName, 'Print help (see more with ''--help'')')
            [CompletionResult]::new('--help', '--help', [CompletionResultType]::ParameterName, 'Print help (see more with ''--help'')')
            [CompletionResult]::new('-V', '-V ', [CompletionResultType]::ParameterName, 'Print version')
            [CompletionResult]::new('--version', '--version', [CompletionResultType]::ParameterName, 'Print version')
            break
        }
        'palmleaf;content;help' {
            [CompletionResult]::new('check', 'check', [CompletionResultType]::ParameterValue, 'Prove that the content is whole: ids, sources, contradictions, words of every language')
            [CompletionResult]::new('status', 'status', [CompletionResultType]::ParameterValue, 'Show which files a clinician has confirmed, which are drafted and which have changed since')
            [CompletionResult]::new('confirm', 'confirm', [CompletionResultType]::ParameterValue, 'Write down that a clinician has confirmed files as they stand')
            [CompletionResult]::new('help', 'help', [CompletionResultType]::ParameterValue, 'Print this message or the help of the given subcommand(s)')
            break
        }
        'palmleaf;content;help;check' {
            break
        }
        'palmleaf;content;help;status' {
            break
        }
        'palmleaf;content;help;confirm' {
            break
        }
        'palmleaf;content;help;help' {
            break
        }
        'palmleaf;locales' {
            [CompletionResult]::new('--format', '--format', [CompletionResultType]::ParameterName, 'How findings and lists are printed')
            [CompletionResult]::new('-h', '-h', [CompletionResultType]::ParameterName, 'Print help (see more with ''--help'')')
            [CompletionResult]::new('--help', '--help', [CompletionResultType]::ParameterName, 'Print help (see more with ''--help'')')
            [CompletionResult]::new('-V', '-V ', [CompletionResultType]::ParameterName, 'Print version')
            [CompletionResult]::new('--version', '--version', [CompletionResultType]::ParameterName, 'Print version')
            [CompletionResult]::new('status', 'status', [CompletionResultType]::ParameterValue, 'Show how many messages of each language and area are signed off, drafted or outdated')
            [CompletionResult]::new('draft', 'draft', [CompletionResultType]::ParameterValue, 'Write down from which English each new or changed message was written')
            [CompletionResult]::new('export', 'export', [CompletionResultType]::ParameterValue, 'Write the words of a language for translators: XLIFF 2.1, or CSV')
            [CompletionResult]::new('import', 'import', [CompletionResultType]::ParameterValue, 'Put back what a translator returned. A message that lost something is refused by name; the rest goes in')
            [CompletionResult]::new('sign-off', 'sign-off', [CompletionResultType]::ParameterValue, 'Write down that somebody qualified has checked messages as they stand')
            [CompletionResult]::new('help', 'help', [CompletionResultType]::ParameterValue, 'Print this message or the help of the given subcommand(s)')
            break
        }
        'palmleaf;locales;status' {
            [CompletionResult]::new('--language', '--language', [CompletionResultType]::ParameterName, 'The languages, divided by commas; all that are translated when not said')
            [CompletionResult]::new('--locales', '--locales', [CompletionResultType]::ParameterName, 'A folder of words that holds a folder for each language, laid over the embedded ones; a clinic''s is `locales` in its own content')
            [CompletionResult]::new('--format', '--format', [CompletionResultType]::ParameterName, 'How findings and lists are printed')
            [CompletionResult]::new('--messages', '--messages', [CompletionResultType]::ParameterName, 'Also name every message that is not signed off')
            [CompletionResult]::new('-h', '-h', [CompletionResultType]::ParameterName, 'Print help (see more with ''--help'')')
            [CompletionResult]::new('--help', '--help', [CompletionResultType]::ParameterName, 'Print help (see more with ''--help'')')
            [CompletionResult]::new('-V', '-V ', [CompletionResultType]::ParameterName, 'Print version')
            [CompletionResult]::new('--version', '--version', [CompletionResultType]::ParameterName, 'Print version')
            break
        }
        'palmleaf;locales;draft' {
            [CompletionResult]::new('--language', '--language', [CompletionResultType]::ParameterName, 'The languages, divided by commas; all that are translated when not said')
            [CompletionResult]::new('--locales', '--locales', [CompletionResultType]::ParameterName, 'The folder of words that holds a folder for each language; the states are written there')
            [CompletionResult]::new('--format', '--format', [CompletionResultType]::ParameterName, 'How findings and lists are printed')
            [CompletionResult]::new('-h', '-h', [CompletionResultType]::ParameterName, 'Print help (see more with ''--help'')')
            [CompletionResult]::new('--help', '--help', [CompletionResultType]::ParameterName, 'Print help (see more with ''--help'')')
            [CompletionResult]::new('-V', '-V ', [CompletionResultType]::ParameterName, 'Print version')
            [CompletionResult]::new('--version', '--version', [CompletionResultType]::ParameterName, 'Print version')
            break
        }
        'palmleaf;locales;export' {
            [CompletionResult]::new('--language', '--language', [CompletionResultType]::ParameterName, 'language')
            [CompletionResult]::new('-o', '-o', [CompletionResultType]::ParameterName, 'The file to write; its ending says what it is: `.xlf` or `.csv`')
            [CompletionResult]::new('--out', '--out', [CompletionResultType]::ParameterName, 'The file to write; its ending says what it is: `.xlf` or `.csv`')
            [CompletionResult]::new('--locales', '--locales', [CompletionResultType]::ParameterName, 'A folder of words that holds a folder for each language, laid over the embedded ones; a clinic''s is `locales` in its own content')
            [CompletionResult]::new('--format', '--format', [CompletionResultType]::ParameterName, 'How findings and lists are printed')
            [CompletionResult]::new('-h', '-h', [CompletionResultType]::ParameterName, 'Print help (see more with ''--help'')')
            [CompletionResult]::new('--help', '--help', [CompletionResultType]::ParameterName, 'Print help (see more with ''--help'')')
            [CompletionResult]::new('-V', '-V ', [CompletionResultType]::ParameterName, 'Print version')
            [CompletionResult]::new('--version', '--version', [CompletionResultType]::ParameterName, 'Print version')
            break
        }
        'palmleaf;locales;import' {
            [CompletionResult]::new('--language', '--language', [CompletionResultType]::ParameterName, 'language')
            [CompletionResult]::new('--by', '--by', [CompletionResultType]::ParameterName, 'Sign off what the file calls final: who checked it')
            [CompletionResult]::new('--on', '--on', [CompletionResultType]::ParameterName, 'The day it was checked')
            [CompletionResult]::new('--locales', '--locales', [CompletionResultType]::ParameterName, 'The folder of words that holds a folder for each language; the words are written there')
            [CompletionResult]::new('--format', '--format', [CompletionResultType]::ParameterName, 'How findings and lists are printed')
            [CompletionResult]::new('-h', '-h', [CompletionResultType]::ParameterName, 'Print help (see more with ''--help'')')
            [CompletionResult]::new('--help', '--help', [CompletionResultType]::ParameterName, 'Print help (see more with ''--help'')')
            [CompletionResult]::new('-V', '-V ', [CompletionResultType]::ParameterName, 'Print version')
            [CompletionResult]::new('--version', '--version', [CompletionResultType]::ParameterName, 'Print version')
            break
        }
        'palmleaf;locales;sign-off' {
            [CompletionResult]::new('--area', '--area', [CompletionResultType]::ParameterName, 'Areas that were checked as a whole, divided by commas: names of files, as `locales status` shows them')
            [CompletionResult]::new('--language', '--language', [CompletionResultType]::ParameterName, 'language')
            [CompletionResult]::new('--by', '--by', [CompletionResultType]::ParameterName, 'Who checked: role, initials or registration, as the clinic wishes')
            [CompletionResult]::new('--on', '--on', [CompletionResultType]::ParameterName, 'The day it was checked')
            [CompletionResult]::new('--locales', '--locales', [CompletionResultType]::ParameterName, 'The clinic''s folder of words; the sign-off is written there')
            [CompletionResult]::new('--format', '--format', [CompletionResultType]::ParameterName, 'How findings and lists are printed')
            [CompletionResult]::new('--all', '--all', [CompletionResultType]::ParameterName, 'Every message of the language was checked')
            [CompletionResult]::new('-h', '-h', [CompletionResultType]::ParameterName, 'Print help (see more with ''--help'')')
            [CompletionResult]::new('--help', '--help', [CompletionResultType]::ParameterName, 'Print help (see more with ''--help'')')
            [CompletionResult]::new('-V', '-V ', [CompletionResultType]::ParameterName, 'Print version')
            [CompletionResult]::new('--version', '--version', [CompletionResultType]::ParameterName, 'Print version')
            break
        }
        'palmleaf;locales;help' {
            [CompletionResult]::new('status', 'status', [CompletionResultType]::ParameterValue, 'Show how many messages of each language and area are signed off, drafted or outdated')
            [CompletionResult]::new('draft', 'draft', [CompletionResultType]::ParameterValue, 'Write down from which English each new or changed message was written')
            [CompletionResult]::new('export', 'export', [CompletionResultType]::ParameterValue, 'Write the words of a language for translators: XLIFF 2.1, or CSV')
            [CompletionResult]::new('import', 'import', [CompletionResultType]::ParameterValue, 'Put back what a translator returned. A message that lost something is refused by name; the rest goes in')
            [CompletionResult]::new('sign-off', 'sign-off', [CompletionResultType]::ParameterValue, 'Write down that somebody qualified has checked messages as they stand')
            [CompletionResult]::new('help', 'help', [CompletionResultType]::ParameterValue, 'Print this message or the help of the given subcommand(s)')
            break
        }
        'palmleaf;locales;help;status' {
            break
        }
        'palmleaf;locales;help;draft' {
            break
        }
        'palmleaf;locales;help;export' {
            break
        }
        'palmleaf;locales;help;import' {
            break
        }
        'palmleaf;locales;help;sign-off' {
            break
        }
        'palmleaf;locales;help;help' {
            break
        }
        'palmleaf;schema' {
            [CompletionResult]::new('--format', '--format', [CompletionResultType]::ParameterName, 'How findings and lists are printed')
            [CompletionResult]::new('--example', '--example', [CompletionResultType]::ParameterName, 'Print an example case instead of the schema')
            [CompletionResult]::new('--clinic', '--clinic', [CompletionResultType]::ParameterName, 'The schema of a clinic''s own file instead')
            [CompletionResult]::new('--shelf', '--shelf', [CompletionResultType]::ParameterName, 'The schema of a shelf instead')
            [CompletionResult]::new('--mapping', '--mapping', [CompletionResultType]::ParameterName, 'The schema of the mapping of a list instead')
            [CompletionResult]::new('-h', '-h', [CompletionResultType]::ParameterName, 'Print help (see more with ''--help'')')
            [CompletionResult]::new('--help', '--help', [CompletionResultType]::ParameterName, 'Print help (see more with ''--help'')')
            [CompletionResult]::new('-V', '-V ', [CompletionResultType]::ParameterName, 'Print version')
            [CompletionResult]::new('--version', '--version', [CompletionResultType]::ParameterName, 'Print version')
            break
        }
        'palmleaf;completions' {
            [CompletionResult]::new('--format', '--format', [CompletionResultType]::ParameterName, 'How findings and lists are printed')
            [CompletionResult]::new('-h', '-h', [CompletionResultType]::ParameterName, 'Print help (see more with ''--help'')')
            [CompletionResult]::new('--help', '--help', [CompletionResultType]::ParameterName, 'Print help (see more with ''--help'')')
            [CompletionResult]::new('-V', '-V ', [CompletionResultType]::ParameterName, 'Print version')
            [CompletionResult]::new('--version', '--version', [CompletionResultType]::ParameterName, 'Print version')
            break
        }
        'palmleaf;man' {
            [CompletionResult]::new('--format', '--format', [CompletionResultType]::ParameterName, 'How findings and lists are printed')
            [CompletionResult]::new('-h', '-h', [CompletionResultType]::ParameterName, 'Print help (see more with ''--help'')')
            [CompletionResult]::new('--help', '--help', [CompletionResultType]::ParameterName, 'Print help (see more with ''--help'')')
            [CompletionResult]::new('-V', '-V ', [CompletionResultType]::ParameterName, 'Print version')
            [CompletionResult]::new('--version', '--version', [CompletionResultType]::ParameterName, 'Print version')
            break
        }
        'palmleaf;licences' {
            [CompletionResult]::new('--format', '--format', [CompletionResultType]::ParameterName, 'How findings and lists are printed')
            [CompletionResult]::new('-h', '-h', [CompletionResultType]::ParameterName, 'Print help (see more with ''--help'')')
            [CompletionResult]::new('--help', '--help', [CompletionResultType]::ParameterName, 'Print help (see more with ''--help'')')
            [CompletionResult]::new('-V', '-V ', [CompletionResultType]::ParameterName, 'Print version')
            [CompletionResult]::new('--version', '--version', [CompletionResultType]::ParameterName, 'Print version')
            break
        }
        'palmleaf;help' {
            [CompletionResult]::new('check', 'check', [CompletionResultType]::ParameterValue, 'Check cases without writing anything')
            [CompletionResult]::new('build', 'build', [CompletionResultType]::ParameterValue, 'Make the guide of each case, with its record beside it')
            [CompletionResult]::new('batch', 'batch', [CompletionResultType]::ParameterValue, 'Make the guides of many cases from a list: YAML documents, a folder of case files, CSV or XLSX')
            [CompletionResult]::new('new', 'new', [CompletionResultType]::ParameterValue, 'Ask for a case question by question, and write it as a commented file')
            [CompletionResult]::new('watch', 'watch', [CompletionResultType]::ParameterValue, 'Build again on every save, and show what is wrong in its place')
            [CompletionResult]::new('read', 'read', [CompletionResultType]::ParameterValue, 'Show how plainly a sheet reads: the score of each section, its longest sentences, its hardest words')
            [CompletionResult]::new('list', 'list', [CompletionResultType]::ParameterValue, 'List what the content holds')
            [CompletionResult]::new('choose', 'choose', [CompletionResultType]::ParameterValue, 'Rank the orthoses for a condition, or the conditions for an orthosis, and say why')
            [CompletionResult]::new('explain', 'explain', [CompletionResultType]::ParameterValue, 'Show the whole reasoning of a case: verdict table, plan rules with sources, overrides')
            [CompletionResult]::new('draw', 'draw', [CompletionResultType]::ParameterValue, 'Draw an orthosis, an exercise, a posture, the steps of putting a splint on, its faults of fit or what a condition concerns, without a case')
            [CompletionResult]::new('teach', 'teach', [CompletionResultType]::ParameterValue, 'Make papers to teach with, from the content alone: no case is needed')
            [CompletionResult]::new('shelf', 'shelf', [CompletionResultType]::ParameterValue, 'Keep a folder of handouts current: only what a change touches is made anew')
            [CompletionResult]::new('specimen', 'specimen', [CompletionResultType]::ParameterValue, 'Set a page of every component of the sheets, with what each is for: for contributors and translators')
            [CompletionResult]::new('content', 'content', [CompletionResultType]::ParameterValue, 'Look after the content itself')
            [CompletionResult]::new('locales', 'locales', [CompletionResultType]::ParameterValue, 'Look after the words of each language: what has been checked by whom, and against which English')
            [CompletionResult]::new('schema', 'schema', [CompletionResultType]::ParameterValue, 'Print the JSON Schema of case files, for an editor to complete and check')
            [CompletionResult]::new('completions', 'completions', [CompletionResultType]::ParameterValue, 'Print a completion script for a shell')
            [CompletionResult]::new('man', 'man', [CompletionResultType]::ParameterValue, 'Print the manual page')
            [CompletionResult]::new('licences', 'licences', [CompletionResultType]::ParameterValue, 'List the fonts and crates that this program carries, with their licences; `--format json` prints the bill of materials (CycloneDX)')
            [CompletionResult]::new('help', 'help', [CompletionResultType]::ParameterValue, 'Print this message or the help of the given subcommand(s)')
            break
        }
        'palmleaf;help;check' {
            break
        }
        'palmleaf;help;build' {
            break
        }
        'palmleaf;help;batch' {
            [CompletionResult]::new('merge', 'merge', [CompletionResultType]::ParameterValue, 'Join the reports of shards: says what is missing and what was built twice')
            break
        }
        'palmleaf;help;batch;merge' {
            break
        }
        'palmleaf;help;new' {
            break
        }
        'palmleaf;help;watch' {
            break
        }
        'palmleaf;help;read' {
            break
        }
        'palmleaf;help;list' {
            break
        }
        'palmleaf;help;choose' {
            break
        }
        'palmleaf;help;explain' {
            break
        }
        'palmleaf;help;draw' {
            break
        }
        'palmleaf;help;teach' {
            [CompletionResult]::new('facts', 'facts', [CompletionResultType]::ParameterValue, 'A fact sheet for each condition, for patients or for students')
            [CompletionResult]::new('booklet', 'booklet', [CompletionResultType]::ParameterValue, 'Bind sheets into one file with a page of contents')
            [CompletionResult]::new('chart', 'chart', [CompletionResultType]::ParameterValue, 'A comparison chart: conditions by orthoses, or the orthoses of one condition joint by joint')
            [CompletionResult]::new('cards', 'cards', [CompletionResultType]::ParameterValue, 'Study cards to print on both sides and cut, and the same for a card program')
            [CompletionResult]::new('questions', 'questions', [CompletionResultType]::ParameterValue, 'Invented cases with four orthoses to choose from, and the key with reasons')
            break
        }
        'palmleaf;help;teach;facts' {
            break
        }
        'palmleaf;help;teach;booklet' {
            break
        }
        'palmleaf;help;teach;chart' {
            break
        }
        'palmleaf;help;teach;cards' {
            break
        }
        'palmleaf;help;teach;questions' {
            break
        }
        'palmleaf;help;shelf' {
            break
        }
        'palmleaf;help;specimen' {
            break
        }
        'palmleaf;help;content' {
            [CompletionResult]::new('check', 'check', [CompletionResultType]::ParameterValue, 'Prove that the content is whole: ids, sources, contradictions, words of every language')
            [CompletionResult]::new('status', 'status', [CompletionResultType]::ParameterValue, 'Show which files a clinician has confirmed, which are drafted and which have changed since')
            [CompletionResult]::new('confirm', 'confirm', [CompletionResultType]::ParameterValue, 'Write down that a clinician has confirmed files as they stand')
            break
        }
        'palmleaf;help;content;check' {
            break
        }
        'palmleaf;help;content;status' {
            break
        }
        'palmleaf;help;content;confirm' {
            break
        }
        'palmleaf;help;locales' {
            [CompletionResult]::new('status', 'status', [CompletionResultType]::ParameterValue, 'Show how many messages of each language and area are signed off, drafted or outdated')
            [CompletionResult]::new('draft', 'draft', [CompletionResultType]::ParameterValue, 'Write down from which English each new or changed message was written')
            [CompletionResult]::new('export', 'export', [CompletionResultType]::ParameterValue, 'Write the words of a language for translators: XLIFF 2.1, or CSV')
            [CompletionResult]::new('import', 'import', [CompletionResultType]::ParameterValue, 'Put back what a translator returned. A message that lost something is refused by name; the rest goes in')
            [CompletionResult]::new('sign-off', 'sign-off', [CompletionResultType]::ParameterValue, 'Write down that somebody qualified has checked messages as they stand')
            break
        }
        'palmleaf;help;locales;status' {
            break
        }
        'palmleaf;help;locales;draft' {
            break
        }
        'palmleaf;help;locales;export' {
            break
        }
        'palmleaf;help;locales;import' {
            break
        }
        'palmleaf;help;locales;sign-off' {
            break
        }
        'palmleaf;help;schema' {
            break
        }
        'palmleaf;help;completions' {
            break
        }
        'palmleaf;help;man' {
            break
        }
        'palmleaf;help;licences' {
            break
        }
        'palmleaf;help;help' {
            break
        }
    })

    $completions.Where{ $_.CompletionText -like "$wordToComplete*" } |
        Sort-Object -Property ListItemText
}
