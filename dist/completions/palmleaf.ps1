
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
            [CompletionResult]::new('list', 'list', [CompletionResultType]::ParameterValue, 'List what the content holds')
            [CompletionResult]::new('choose', 'choose', [CompletionResultType]::ParameterValue, 'Rank the orthoses for a condition, or the conditions for an orthosis, and say why')
            [CompletionResult]::new('explain', 'explain', [CompletionResultType]::ParameterValue, 'Show the whole reasoning of a case: verdict table, plan rules with sources, overrides')
            [CompletionResult]::new('draw', 'draw', [CompletionResultType]::ParameterValue, 'Draw an orthosis, an exercise, a posture, the steps of putting a splint on, its faults of fit or what a condition concerns, without a case')
            [CompletionResult]::new('content', 'content', [CompletionResultType]::ParameterValue, 'Look after the content itself')
            [CompletionResult]::new('schema', 'schema', [CompletionResultType]::ParameterValue, 'Print the JSON Schema of case files, for an editor to complete and check')
            [CompletionResult]::new('completions', 'completions', [CompletionResultType]::ParameterValue, 'Print a completion script for a shell')
            [CompletionResult]::new('man', 'man', [CompletionResultType]::ParameterValue, 'Print the manual page')
            [CompletionResult]::new('help', 'help', [CompletionResultType]::ParameterValue, 'Print this message or the help of the given subcommand(s)')
            break
        }
        'palmleaf;check' {
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
            [CompletionResult]::new('--print', '--print', [CompletionResultType]::ParameterName, 'The print size, instead of the case''s own')
            [CompletionResult]::new('--paper', '--paper', [CompletionResultType]::ParameterName, 'The paper, instead of the case''s own')
            [CompletionResult]::new('--sheets', '--sheets', [CompletionResultType]::ParameterName, 'What to make, divided by commas, or `all`. `reminders` is a file for the calendar of a telephone')
            [CompletionResult]::new('--require', '--require', [CompletionResultType]::ParameterName, 'Refuse to build on content that is less than this')
            [CompletionResult]::new('--threads', '--threads', [CompletionResultType]::ParameterName, 'How many cases are made at the same time; all processors when not said')
            [CompletionResult]::new('--content', '--content', [CompletionResultType]::ParameterName, 'A folder laid over the embedded content: its files replace and add')
            [CompletionResult]::new('--format', '--format', [CompletionResultType]::ParameterName, 'How findings and lists are printed')
            [CompletionResult]::new('--pictures', '--pictures', [CompletionResultType]::ParameterName, 'Also write each page as a picture')
            [CompletionResult]::new('--name-by-case', '--name-by-case', [CompletionResultType]::ParameterName, 'Name files after the case file, which may hold a person''s name')
            [CompletionResult]::new('--no-cache', '--no-cache', [CompletionResultType]::ParameterName, 'Draw every picture anew, and keep none for the next run')
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
            [CompletionResult]::new('--content', '--content', [CompletionResultType]::ParameterName, 'A folder laid over the embedded content: its files replace and add')
            [CompletionResult]::new('--format', '--format', [CompletionResultType]::ParameterName, 'How findings and lists are printed')
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
        'palmleaf;schema' {
            [CompletionResult]::new('--format', '--format', [CompletionResultType]::ParameterName, 'How findings and lists are printed')
            [CompletionResult]::new('--example', '--example', [CompletionResultType]::ParameterName, 'Print an example case instead of the schema')
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
        'palmleaf;help' {
            [CompletionResult]::new('check', 'check', [CompletionResultType]::ParameterValue, 'Check cases without writing anything')
            [CompletionResult]::new('build', 'build', [CompletionResultType]::ParameterValue, 'Make the guide of each case, with its record beside it')
            [CompletionResult]::new('list', 'list', [CompletionResultType]::ParameterValue, 'List what the content holds')
            [CompletionResult]::new('choose', 'choose', [CompletionResultType]::ParameterValue, 'Rank the orthoses for a condition, or the conditions for an orthosis, and say why')
            [CompletionResult]::new('explain', 'explain', [CompletionResultType]::ParameterValue, 'Show the whole reasoning of a case: verdict table, plan rules with sources, overrides')
            [CompletionResult]::new('draw', 'draw', [CompletionResultType]::ParameterValue, 'Draw an orthosis, an exercise, a posture, the steps of putting a splint on, its faults of fit or what a condition concerns, without a case')
            [CompletionResult]::new('content', 'content', [CompletionResultType]::ParameterValue, 'Look after the content itself')
            [CompletionResult]::new('schema', 'schema', [CompletionResultType]::ParameterValue, 'Print the JSON Schema of case files, for an editor to complete and check')
            [CompletionResult]::new('completions', 'completions', [CompletionResultType]::ParameterValue, 'Print a completion script for a shell')
            [CompletionResult]::new('man', 'man', [CompletionResultType]::ParameterValue, 'Print the manual page')
            [CompletionResult]::new('help', 'help', [CompletionResultType]::ParameterValue, 'Print this message or the help of the given subcommand(s)')
            break
        }
        'palmleaf;help;check' {
            break
        }
        'palmleaf;help;build' {
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
        'palmleaf;help;schema' {
            break
        }
        'palmleaf;help;completions' {
            break
        }
        'palmleaf;help;man' {
            break
        }
        'palmleaf;help;help' {
            break
        }
    })

    $completions.Where{ $_.CompletionText -like "$wordToComplete*" } |
        Sort-Object -Property ListItemText
}
