
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
            [CompletionResult]::new('explain', 'explain', [CompletionResultType]::ParameterValue, 'Show the whole reasoning of a case: verdict table, plan rules with sources, overrides')
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
            [CompletionResult]::new('--threads', '--threads', [CompletionResultType]::ParameterName, 'How many cases are made at the same time; all processors when not said')
            [CompletionResult]::new('--content', '--content', [CompletionResultType]::ParameterName, 'A folder laid over the embedded content: its files replace and add')
            [CompletionResult]::new('--format', '--format', [CompletionResultType]::ParameterName, 'How findings and lists are printed')
            [CompletionResult]::new('--pictures', '--pictures', [CompletionResultType]::ParameterName, 'Also write each page as a picture')
            [CompletionResult]::new('--name-by-case', '--name-by-case', [CompletionResultType]::ParameterName, 'Name files after the case file, which may hold a person''s name')
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
        'palmleaf;explain' {
            [CompletionResult]::new('--content', '--content', [CompletionResultType]::ParameterName, 'A folder laid over the embedded content: its files replace and add')
            [CompletionResult]::new('--format', '--format', [CompletionResultType]::ParameterName, 'How findings and lists are printed')
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
        'palmleaf;content;help' {
            [CompletionResult]::new('check', 'check', [CompletionResultType]::ParameterValue, 'Prove that the content is whole: ids, sources, contradictions, words of every language')
            [CompletionResult]::new('help', 'help', [CompletionResultType]::ParameterValue, 'Print this message or the help of the given subcommand(s)')
            break
        }
        'palmleaf;content;help;check' {
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
            [CompletionResult]::new('explain', 'explain', [CompletionResultType]::ParameterValue, 'Show the whole reasoning of a case: verdict table, plan rules with sources, overrides')
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
        'palmleaf;help;explain' {
            break
        }
        'palmleaf;help;content' {
            [CompletionResult]::new('check', 'check', [CompletionResultType]::ParameterValue, 'Prove that the content is whole: ids, sources, contradictions, words of every language')
            break
        }
        'palmleaf;help;content;check' {
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
