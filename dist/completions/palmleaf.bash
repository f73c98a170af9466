_palmleaf() {
    local i cur prev opts cmd
    COMPREPLY=()
    if [[ "${BASH_VERSINFO[0]}" -ge 4 ]]; then
        cur="$2"
    else
        cur="${COMP_WORDS[COMP_CWORD]}"
    fi
    prev="$3"
    cmd=""
    opts=""

    for i in "${COMP_WORDS[@]:0:COMP_CWORD}"
    do
        case "${cmd},${i}" in
            ",$1")
                cmd="palmleaf"
                ;;
            palmleaf,batch)
                cmd="palmleaf__subcmd__batch"
                ;;
            palmleaf,build)
                cmd="palmleaf__subcmd__build"
                ;;
            palmleaf,check)
                cmd="palmleaf__subcmd__check"
                ;;
            palmleaf,choose)
                cmd="palmleaf__subcmd__choose"
                ;;
            palmleaf,completions)
                cmd="palmleaf__subcmd__completions"
                ;;
            palmleaf,content)
                cmd="palmleaf__subcmd__content"
                ;;
            palmleaf,draw)
                cmd="palmleaf__subcmd__draw"
                ;;
            palmleaf,explain)
                cmd="palmleaf__subcmd__explain"
                ;;
            palmleaf,help)
                cmd="palmleaf__subcmd__help"
                ;;
            palmleaf,licences)
                cmd="palmleaf__subcmd__licences"
                ;;
            palmleaf,list)
                cmd="palmleaf__subcmd__list"
                ;;
            palmleaf,locales)
                cmd="palmleaf__subcmd__locales"
                ;;
            palmleaf,man)
                cmd="palmleaf__subcmd__man"
                ;;
            palmleaf,new)
                cmd="palmleaf__subcmd__new"
                ;;
            palmleaf,read)
                cmd="palmleaf__subcmd__read"
                ;;
            palmleaf,schema)
                cmd="palmleaf__subcmd__schema"
                ;;
            palmleaf,shelf)
                cmd="palmleaf__subcmd__shelf"
                ;;
            palmleaf,specimen)
                cmd="palmleaf__subcmd__specimen"
                ;;
            palmleaf,teach)
                cmd="palmleaf__subcmd__teach"
                ;;
            palmleaf,watch)
                cmd="palmleaf__subcmd__watch"
                ;;
            palmleaf__subcmd__batch,help)
                cmd="palmleaf__subcmd__batch__subcmd__help"
                ;;
            palmleaf__subcmd__batch,merge)
                cmd="palmleaf__subcmd__batch__subcmd__merge"
                ;;
            palmleaf__subcmd__batch__subcmd__help,help)
                cmd="palmleaf__subcmd__batch__subcmd__help__subcmd__help"
                ;;
            palmleaf__subcmd__batch__subcmd__help,merge)
                cmd="palmleaf__subcmd__batch__subcmd__help__subcmd__merge"
                ;;
            palmleaf__subcmd__content,check)
                cmd="palmleaf__subcmd__content__subcmd__check"
                ;;
            palmleaf__subcmd__content,confirm)
                cmd="palmleaf__subcmd__content__subcmd__confirm"
                ;;
            palmleaf__subcmd__content,help)
                cmd="palmleaf__subcmd__content__subcmd__help"
                ;;
            palmleaf__subcmd__content,status)
                cmd="palmleaf__subcmd__content__subcmd__status"
                ;;
            palmleaf__subcmd__content__subcmd__help,check)
                cmd="palmleaf__subcmd__content__subcmd__help__subcmd__check"
                ;;
            palmleaf__subcmd__content__subcmd__help,confirm)
                cmd="palmleaf__subcmd__content__subcmd__help__subcmd__confirm"
                ;;
            palmleaf__subcmd__content__subcmd__help,help)
                cmd="palmleaf__subcmd__content__subcmd__help__subcmd__help"
                ;;
            palmleaf__subcmd__content__subcmd__help,status)
                cmd="palmleaf__subcmd__content__subcmd__help__subcmd__status"
                ;;
            palmleaf__subcmd__help,batch)
                cmd="palmleaf__subcmd__help__subcmd__batch"
                ;;
            palmleaf__subcmd__help,build)
                cmd="palmleaf__subcmd__help__subcmd__build"
                ;;
            palmleaf__subcmd__help,check)
                cmd="palmleaf__subcmd__help__subcmd__check"
                ;;
            palmleaf__subcmd__help,choose)
                cmd="palmleaf__subcmd__help__subcmd__choose"
                ;;
            palmleaf__subcmd__help,completions)
                cmd="palmleaf__subcmd__help__subcmd__completions"
                ;;
            palmleaf__subcmd__help,content)
                cmd="palmleaf__subcmd__help__subcmd__content"
                ;;
            palmleaf__subcmd__help,draw)
                cmd="palmleaf__subcmd__help__subcmd__draw"
                ;;
            palmleaf__subcmd__help,explain)
                cmd="palmleaf__subcmd__help__subcmd__explain"
                ;;
            palmleaf__subcmd__help,help)
                cmd="palmleaf__subcmd__help__subcmd__help"
                ;;
            palmleaf__subcmd__help,licences)
                cmd="palmleaf__subcmd__help__subcmd__licences"
                ;;
            palmleaf__subcmd__help,list)
                cmd="palmleaf__subcmd__help__subcmd__list"
                ;;
            palmleaf__subcmd__help,locales)
                cmd="palmleaf__subcmd__help__subcmd__locales"
                ;;
            palmleaf__subcmd__help,man)
                cmd="palmleaf__subcmd__help__subcmd__man"
                ;;
            palmleaf__subcmd__help,new)
                cmd="palmleaf__subcmd__help__subcmd__new"
                ;;
            palmleaf__subcmd__help,read)
                cmd="palmleaf__subcmd__help__subcmd__read"
                ;;
            palmleaf__subcmd__help,schema)
                cmd="palmleaf__subcmd__help__subcmd__schema"
                ;;
            palmleaf__subcmd__help,shelf)
                cmd="palmleaf__subcmd__help__subcmd__shelf"
                ;;
            palmleaf__subcmd__help,specimen)
                cmd="palmleaf__subcmd__help__subcmd__specimen"
                ;;
            palmleaf__subcmd__help,teach)
                cmd="palmleaf__subcmd__help__subcmd__teach"
                ;;
            palmleaf__subcmd__help,watch)
                cmd="palmleaf__subcmd__help__subcmd__watch"
                ;;
            palmleaf__subcmd__help__subcmd__batch,merge)
                cmd="palmleaf__subcmd__help__subcmd__batch__subcmd__merge"
                ;;
            palmleaf__subcmd__help__subcmd__content,check)
                cmd="palmleaf__subcmd__help__subcmd__content__subcmd__check"
                ;;
            palmleaf__subcmd__help__subcmd__content,confirm)
                cmd="palmleaf__subcmd__help__subcmd__content__subcmd__confirm"
                ;;
            palmleaf__subcmd__help__subcmd__content,status)
                cmd="palmleaf__subcmd__help__subcmd__content__subcmd__status"
                ;;
            palmleaf__subcmd__help__subcmd__locales,draft)
                cmd="palmleaf__subcmd__help__subcmd__locales__subcmd__draft"
                ;;
            palmleaf__subcmd__help__subcmd__locales,export)
                cmd="palmleaf__subcmd__help__subcmd__locales__subcmd__export"
                ;;
            palmleaf__subcmd__help__subcmd__locales,import)
                cmd="palmleaf__subcmd__help__subcmd__locales__subcmd__import"
                ;;
            palmleaf__subcmd__help__subcmd__locales,sign-off)
                cmd="palmleaf__subcmd__help__subcmd__locales__subcmd__sign__subcmd__off"
                ;;
            palmleaf__subcmd__help__subcmd__locales,status)
                cmd="palmleaf__subcmd__help__subcmd__locales__subcmd__status"
                ;;
            palmleaf__subcmd__help__subcmd__teach,booklet)
                cmd="palmleaf__subcmd__help__subcmd__teach__subcmd__booklet"
                ;;
            palmleaf__subcmd__help__subcmd__teach,cards)
                cmd="palmleaf__subcmd__help__subcmd__teach__subcmd__cards"
                ;;
            palmleaf__subcmd__help__subcmd__teach,chart)
                cmd="palmleaf__subcmd__help__subcmd__teach__subcmd__chart"
                ;;
            palmleaf__subcmd__help__subcmd__teach,facts)
                cmd="palmleaf__subcmd__help__subcmd__teach__subcmd__facts"
                ;;
            palmleaf__subcmd__help__subcmd__teach,questions)
                cmd="palmleaf__subcmd__help__subcmd__teach__subcmd__questions"
                ;;
            palmleaf__subcmd__locales,draft)
                cmd="palmleaf__subcmd__locales__subcmd__draft"
                ;;
            palmleaf__subcmd__locales,export)
                cmd="palmleaf__subcmd__locales__subcmd__export"
                ;;
            palmleaf__subcmd__locales,help)
                cmd="palmleaf__subcmd__locales__subcmd__help"
                ;;
            palmleaf__subcmd__locales,import)
                cmd="palmleaf__subcmd__locales__subcmd__import"
                ;;
            palmleaf__subcmd__locales,sign-off)
                cmd="palmleaf__subcmd__locales__subcmd__sign__subcmd__off"
                ;;
            palmleaf__subcmd__locales,status)
                cmd="palmleaf__subcmd__locales__subcmd__status"
                ;;
            palmleaf__subcmd__locales__subcmd__help,draft)
                cmd="palmleaf__subcmd__locales__subcmd__help__subcmd__draft"
                ;;
            palmleaf__subcmd__locales__subcmd__help,export)
                cmd="palmleaf__subcmd__locales__subcmd__help__subcmd__export"
                ;;
            palmleaf__subcmd__locales__subcmd__help,help)
                cmd="palmleaf__subcmd__locales__subcmd__help__subcmd__help"
                ;;
            palmleaf__subcmd__locales__subcmd__help,import)
                cmd="palmleaf__subcmd__locales__subcmd__help__subcmd__import"
                ;;
            palmleaf__subcmd__locales__subcmd__help,sign-off)
                cmd="palmleaf__subcmd__locales__subcmd__help__subcmd__sign__subcmd__off"
                ;;
            palmleaf__subcmd__locales__subcmd__help,status)
                cmd="palmleaf__subcmd__locales__subcmd__help__subcmd__status"
                ;;
            palmleaf__subcmd__teach,booklet)
                cmd="palmleaf__subcmd__teach__subcmd__booklet"
                ;;
            palmleaf__subcmd__teach,cards)
                cmd="palmleaf__subcmd__teach__subcmd__cards"
                ;;
            palmleaf__subcmd__teach,chart)
                cmd="palmleaf__subcmd__teach__subcmd__chart"
                ;;
            palmleaf__subcmd__teach,facts)
                cmd="palmleaf__subcmd__teach__subcmd__facts"
                ;;
            palmleaf__subcmd__teach,help)
                cmd="palmleaf__subcmd__teach__subcmd__help"
                ;;
            palmleaf__subcmd__teach,questions)
                cmd="palmleaf__subcmd__teach__subcmd__questions"
                ;;
            palmleaf__subcmd__teach__subcmd__help,booklet)
                cmd="palmleaf__subcmd__teach__subcmd__help__subcmd__booklet"
                ;;
            palmleaf__subcmd__teach__subcmd__help,cards)
                cmd="palmleaf__subcmd__teach__subcmd__help__subcmd__cards"
                ;;
            palmleaf__subcmd__teach__subcmd__help,chart)
                cmd="palmleaf__subcmd__teach__subcmd__help__subcmd__chart"
                ;;
            palmleaf__subcmd__teach__subcmd__help,facts)
                cmd="palmleaf__subcmd__teach__subcmd__help__subcmd__facts"
                ;;
            palmleaf__subcmd__teach__subcmd__help,help)
                cmd="palmleaf__subcmd__teach__subcmd__help__subcmd__help"
                ;;
            palmleaf__subcmd__teach__subcmd__help,questions)
                cmd="palmleaf__subcmd__teach__subcmd__help__subcmd__questions"
                ;;
            *)
                ;;
        esac
    done

    case "${cmd}" in
        palmleaf)
            opts="-h -V --format --help --version check build batch new watch read list choose explain draw teach shelf specimen content locales schema completions man licences help"
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 1 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                --format)
                    COMPREPLY=($(compgen -W "full short json" -- "${cur}"))
                    return 0
                    ;;
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__batch)
            opts="-h -V --mapping --out --language --with --print --paper --sheets --without-name --pictures --require --resume --shard --merged --threads --no-cache --clinic --content --format --help --version merge help"
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 2 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                --mapping)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --out)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --language)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --with)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --print)
                    COMPREPLY=($(compgen -W "standard large giant" -- "${cur}"))
                    return 0
                    ;;
                --paper)
                    COMPREPLY=($(compgen -W "a4 letter" -- "${cur}"))
                    return 0
                    ;;
                --sheets)
                    COMPREPLY=($(compgen -W "guide phone card diary exercises letter reminders record all" -- "${cur}"))
                    return 0
                    ;;
                --require)
                    COMPREPLY=($(compgen -W "confirmed signed-off" -- "${cur}"))
                    return 0
                    ;;
                --shard)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --merged)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --threads)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --clinic)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --content)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --format)
                    COMPREPLY=($(compgen -W "full short json" -- "${cur}"))
                    return 0
                    ;;
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__batch__subcmd__help)
            opts="merge help"
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 3 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__batch__subcmd__help__subcmd__help)
            opts=""
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 4 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__batch__subcmd__help__subcmd__merge)
            opts=""
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 4 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__batch__subcmd__merge)
            opts="-h -V --out --merged --format --help --version"
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 3 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                --out)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --merged)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --format)
                    COMPREPLY=($(compgen -W "full short json" -- "${cur}"))
                    return 0
                    ;;
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__build)
            opts="-h -V --out --language --with --print --paper --sheets --without-name --pictures --require --name-by-case --threads --no-cache --clinic --content --format --help --version"
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 2 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                --out)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --language)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --with)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --print)
                    COMPREPLY=($(compgen -W "standard large giant" -- "${cur}"))
                    return 0
                    ;;
                --paper)
                    COMPREPLY=($(compgen -W "a4 letter" -- "${cur}"))
                    return 0
                    ;;
                --sheets)
                    COMPREPLY=($(compgen -W "guide phone card diary exercises letter reminders record all" -- "${cur}"))
                    return 0
                    ;;
                --require)
                    COMPREPLY=($(compgen -W "confirmed signed-off" -- "${cur}"))
                    return 0
                    ;;
                --threads)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --clinic)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --content)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --format)
                    COMPREPLY=($(compgen -W "full short json" -- "${cur}"))
                    return 0
                    ;;
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__check)
            opts="-h -V --clinic --content --format --help --version"
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 2 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                --clinic)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --content)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --format)
                    COMPREPLY=($(compgen -W "full short json" -- "${cur}"))
                    return 0
                    ;;
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__choose)
            opts="-h -V --orthosis --phase --finger --finding --need --factor --all --chart --content --format --help --version"
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 2 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                --orthosis)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --phase)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --finger)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --finding)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --need)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --factor)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --chart)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --content)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --format)
                    COMPREPLY=($(compgen -W "full short json" -- "${cur}"))
                    return 0
                    ;;
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__completions)
            opts="-h -V --format --help --version bash elvish fish powershell zsh"
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 2 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                --format)
                    COMPREPLY=($(compgen -W "full short json" -- "${cur}"))
                    return 0
                    ;;
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__content)
            opts="-h -V --format --help --version check status confirm help"
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 2 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                --format)
                    COMPREPLY=($(compgen -W "full short json" -- "${cur}"))
                    return 0
                    ;;
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__content__subcmd__check)
            opts="-h -V --content --format --help --version"
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 3 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                --content)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --format)
                    COMPREPLY=($(compgen -W "full short json" -- "${cur}"))
                    return 0
                    ;;
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__content__subcmd__confirm)
            opts="-h -V --by --on --content --format --help --version"
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 3 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                --by)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --on)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --content)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --format)
                    COMPREPLY=($(compgen -W "full short json" -- "${cur}"))
                    return 0
                    ;;
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__content__subcmd__help)
            opts="check status confirm help"
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 3 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__content__subcmd__help__subcmd__check)
            opts=""
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 4 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__content__subcmd__help__subcmd__confirm)
            opts=""
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 4 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__content__subcmd__help__subcmd__help)
            opts=""
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 4 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__content__subcmd__help__subcmd__status)
            opts=""
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 4 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__content__subcmd__status)
            opts="-h -V --content --format --help --version"
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 3 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                --content)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --format)
                    COMPREPLY=($(compgen -W "full short json" -- "${cur}"))
                    return 0
                    ;;
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__draw)
            opts="-o -h -V --orthosis --exercise --posture --steps --spots --condition --faults --sheet --wearing --finger --side --view --build --width --language --out --no-cache --content --format --help --version"
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 2 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                --orthosis)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --exercise)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --posture)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --steps)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --spots)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --condition)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --faults)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --sheet)
                    COMPREPLY=($(compgen -W "orthoses postures exercises steps spots conditions faults all" -- "${cur}"))
                    return 0
                    ;;
                --wearing)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --finger)
                    COMPREPLY=($(compgen -W "index middle ring little" -- "${cur}"))
                    return 0
                    ;;
                --side)
                    COMPREPLY=($(compgen -W "left right" -- "${cur}"))
                    return 0
                    ;;
                --view)
                    COMPREPLY=($(compgen -W "dorsal palmar radial ulnar turned palmar-radial palmar-ulnar own" -- "${cur}"))
                    return 0
                    ;;
                --build)
                    COMPREPLY=($(compgen -W "adult slim broad young older" -- "${cur}"))
                    return 0
                    ;;
                --width)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --language)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --out)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                -o)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --content)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --format)
                    COMPREPLY=($(compgen -W "full short json" -- "${cur}"))
                    return 0
                    ;;
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__explain)
            opts="-h -V --sentences --language --clinic --content --format --help --version"
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 2 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                --language)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --clinic)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --content)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --format)
                    COMPREPLY=($(compgen -W "full short json" -- "${cur}"))
                    return 0
                    ;;
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__help)
            opts="check build batch new watch read list choose explain draw teach shelf specimen content locales schema completions man licences help"
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 2 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__help__subcmd__batch)
            opts="merge"
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 3 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__help__subcmd__batch__subcmd__merge)
            opts=""
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 4 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__help__subcmd__build)
            opts=""
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 3 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__help__subcmd__check)
            opts=""
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 3 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__help__subcmd__choose)
            opts=""
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 3 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__help__subcmd__completions)
            opts=""
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 3 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__help__subcmd__content)
            opts="check status confirm"
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 3 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__help__subcmd__content__subcmd__check)
            opts=""
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 4 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__help__subcmd__content__subcmd__confirm)
            opts=""
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 4 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__help__subcmd__content__subcmd__status)
            opts=""
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 4 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__help__subcmd__draw)
            opts=""
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 3 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__help__subcmd__explain)
            opts=""
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 3 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__help__subcmd__help)
            opts=""
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 3 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__help__subcmd__licences)
            opts=""
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 3 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__help__subcmd__list)
            opts=""
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 3 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__help__subcmd__locales)
            opts="status draft export import sign-off"
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 3 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__help__subcmd__locales__subcmd__draft)
            opts=""
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 4 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__help__subcmd__locales__subcmd__export)
            opts=""
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 4 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__help__subcmd__locales__subcmd__import)
            opts=""
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 4 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__help__subcmd__locales__subcmd__sign__subcmd__off)
            opts=""
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 4 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__help__subcmd__locales__subcmd__status)
            opts=""
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 4 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__help__subcmd__man)
            opts=""
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 3 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__help__subcmd__new)
            opts=""
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 3 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__help__subcmd__read)
            opts=""
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 3 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__help__subcmd__schema)
            opts=""
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 3 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__help__subcmd__shelf)
            opts=""
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 3 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__help__subcmd__specimen)
            opts=""
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 3 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__help__subcmd__teach)
            opts="facts booklet chart cards questions"
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 3 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__help__subcmd__teach__subcmd__booklet)
            opts=""
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 4 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__help__subcmd__teach__subcmd__cards)
            opts=""
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 4 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__help__subcmd__teach__subcmd__chart)
            opts=""
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 4 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__help__subcmd__teach__subcmd__facts)
            opts=""
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 4 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__help__subcmd__teach__subcmd__questions)
            opts=""
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 4 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__help__subcmd__watch)
            opts=""
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 3 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__licences)
            opts="-h -V --format --help --version"
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 2 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                --format)
                    COMPREPLY=($(compgen -W "full short json" -- "${cur}"))
                    return 0
                    ;;
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__list)
            opts="-h -V --content --format --help --version conditions orthoses activities exercises factors needs languages"
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 2 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                --content)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --format)
                    COMPREPLY=($(compgen -W "full short json" -- "${cur}"))
                    return 0
                    ;;
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__locales)
            opts="-h -V --format --help --version status draft export import sign-off help"
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 2 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                --format)
                    COMPREPLY=($(compgen -W "full short json" -- "${cur}"))
                    return 0
                    ;;
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__locales__subcmd__draft)
            opts="-h -V --language --locales --format --help --version"
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 3 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                --language)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --locales)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --format)
                    COMPREPLY=($(compgen -W "full short json" -- "${cur}"))
                    return 0
                    ;;
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__locales__subcmd__export)
            opts="-o -h -V --language --out --locales --format --help --version"
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 3 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                --language)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --out)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                -o)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --locales)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --format)
                    COMPREPLY=($(compgen -W "full short json" -- "${cur}"))
                    return 0
                    ;;
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__locales__subcmd__help)
            opts="status draft export import sign-off help"
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 3 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__locales__subcmd__help__subcmd__draft)
            opts=""
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 4 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__locales__subcmd__help__subcmd__export)
            opts=""
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 4 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__locales__subcmd__help__subcmd__help)
            opts=""
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 4 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__locales__subcmd__help__subcmd__import)
            opts=""
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 4 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__locales__subcmd__help__subcmd__sign__subcmd__off)
            opts=""
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 4 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__locales__subcmd__help__subcmd__status)
            opts=""
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 4 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__locales__subcmd__import)
            opts="-h -V --language --by --on --locales --format --help --version"
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 3 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                --language)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --by)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --on)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --locales)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --format)
                    COMPREPLY=($(compgen -W "full short json" -- "${cur}"))
                    return 0
                    ;;
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__locales__subcmd__sign__subcmd__off)
            opts="-h -V --area --all --language --by --on --locales --format --help --version"
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 3 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                --area)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --language)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --by)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --on)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --locales)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --format)
                    COMPREPLY=($(compgen -W "full short json" -- "${cur}"))
                    return 0
                    ;;
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__locales__subcmd__status)
            opts="-h -V --language --messages --locales --format --help --version"
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 3 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                --language)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --locales)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --format)
                    COMPREPLY=($(compgen -W "full short json" -- "${cur}"))
                    return 0
                    ;;
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__man)
            opts="-h -V --format --help --version"
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 2 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                --format)
                    COMPREPLY=($(compgen -W "full short json" -- "${cur}"))
                    return 0
                    ;;
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__new)
            opts="-h -V --plain --answers --today --clinic --content --format --help --version"
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 2 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                --answers)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --today)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --clinic)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --content)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --format)
                    COMPREPLY=($(compgen -W "full short json" -- "${cur}"))
                    return 0
                    ;;
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__read)
            opts="-h -V --all --text --language --sheets --instrument --require --content --format --help --version"
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 2 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                --text)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --language)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --sheets)
                    COMPREPLY=($(compgen -W "guide phone card diary exercises letter reminders record all" -- "${cur}"))
                    return 0
                    ;;
                --instrument)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --require)
                    COMPREPLY=($(compgen -W "grade" -- "${cur}"))
                    return 0
                    ;;
                --content)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --format)
                    COMPREPLY=($(compgen -W "full short json" -- "${cur}"))
                    return 0
                    ;;
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__schema)
            opts="-h -V --example --clinic --shelf --mapping --format --help --version"
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 2 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                --format)
                    COMPREPLY=($(compgen -W "full short json" -- "${cur}"))
                    return 0
                    ;;
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__shelf)
            opts="-h -V --check --today --wait --threads --no-cache --content --format --help --version"
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 2 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                --today)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --wait)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --threads)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --content)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --format)
                    COMPREPLY=($(compgen -W "full short json" -- "${cur}"))
                    return 0
                    ;;
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__specimen)
            opts="-o -h -V --language --out --no-cache --content --format --help --version"
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 2 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                --language)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --out)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                -o)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --content)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --format)
                    COMPREPLY=($(compgen -W "full short json" -- "${cur}"))
                    return 0
                    ;;
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__teach)
            opts="-h -V --format --help --version facts booklet chart cards questions help"
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 2 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                --format)
                    COMPREPLY=($(compgen -W "full short json" -- "${cur}"))
                    return 0
                    ;;
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__teach__subcmd__booklet)
            opts="-o -h -V --out --no-cache --clinic --content --format --help --version"
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 3 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                --out)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                -o)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --clinic)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --content)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --format)
                    COMPREPLY=($(compgen -W "full short json" -- "${cur}"))
                    return 0
                    ;;
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__teach__subcmd__cards)
            opts="-h -V --group --condition --orthosis --flip --paper --side --finger --no-cache --out --content --format --help --version"
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 3 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                --group)
                    COMPREPLY=($(compgen -W "elbow wrist thumb finger" -- "${cur}"))
                    return 0
                    ;;
                --condition)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --orthosis)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --flip)
                    COMPREPLY=($(compgen -W "long short" -- "${cur}"))
                    return 0
                    ;;
                --paper)
                    COMPREPLY=($(compgen -W "a4 letter" -- "${cur}"))
                    return 0
                    ;;
                --side)
                    COMPREPLY=($(compgen -W "left right" -- "${cur}"))
                    return 0
                    ;;
                --finger)
                    COMPREPLY=($(compgen -W "index middle ring little" -- "${cur}"))
                    return 0
                    ;;
                --out)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --content)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --format)
                    COMPREPLY=($(compgen -W "full short json" -- "${cur}"))
                    return 0
                    ;;
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__teach__subcmd__chart)
            opts="-h -V --group --condition --phase --finger --paper --out --content --format --help --version"
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 3 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                --group)
                    COMPREPLY=($(compgen -W "elbow wrist thumb finger" -- "${cur}"))
                    return 0
                    ;;
                --condition)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --phase)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --finger)
                    COMPREPLY=($(compgen -W "index middle ring little" -- "${cur}"))
                    return 0
                    ;;
                --paper)
                    COMPREPLY=($(compgen -W "a4 letter" -- "${cur}"))
                    return 0
                    ;;
                --out)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --content)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --format)
                    COMPREPLY=($(compgen -W "full short json" -- "${cur}"))
                    return 0
                    ;;
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__teach__subcmd__facts)
            opts="-h -V --all --for --out --language --print --paper --side --finger --no-cache --clinic --content --format --help --version"
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 3 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                --for)
                    COMPREPLY=($(compgen -W "patients students" -- "${cur}"))
                    return 0
                    ;;
                --out)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --language)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --print)
                    COMPREPLY=($(compgen -W "standard large giant" -- "${cur}"))
                    return 0
                    ;;
                --paper)
                    COMPREPLY=($(compgen -W "a4 letter" -- "${cur}"))
                    return 0
                    ;;
                --side)
                    COMPREPLY=($(compgen -W "left right" -- "${cur}"))
                    return 0
                    ;;
                --finger)
                    COMPREPLY=($(compgen -W "index middle ring little" -- "${cur}"))
                    return 0
                    ;;
                --clinic)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --content)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --format)
                    COMPREPLY=($(compgen -W "full short json" -- "${cur}"))
                    return 0
                    ;;
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__teach__subcmd__help)
            opts="facts booklet chart cards questions help"
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 3 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__teach__subcmd__help__subcmd__booklet)
            opts=""
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 4 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__teach__subcmd__help__subcmd__cards)
            opts=""
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 4 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__teach__subcmd__help__subcmd__chart)
            opts=""
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 4 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__teach__subcmd__help__subcmd__facts)
            opts=""
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 4 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__teach__subcmd__help__subcmd__help)
            opts=""
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 4 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__teach__subcmd__help__subcmd__questions)
            opts=""
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 4 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__teach__subcmd__questions)
            opts="-h -V --seed --count --group --paper --out --content --format --help --version"
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 3 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                --seed)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --count)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --group)
                    COMPREPLY=($(compgen -W "elbow wrist thumb finger" -- "${cur}"))
                    return 0
                    ;;
                --paper)
                    COMPREPLY=($(compgen -W "a4 letter" -- "${cur}"))
                    return 0
                    ;;
                --out)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --content)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --format)
                    COMPREPLY=($(compgen -W "full short json" -- "${cur}"))
                    return 0
                    ;;
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
        palmleaf__subcmd__watch)
            opts="-h -V --out --language --with --print --paper --sheets --without-name --pictures --require --name-by-case --threads --no-cache --clinic --content --format --help --version"
            if [[ ${cur} == -* || ${COMP_CWORD} -eq 2 ]] ; then
                COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
                return 0
            fi
            case "${prev}" in
                --out)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --language)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --with)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --print)
                    COMPREPLY=($(compgen -W "standard large giant" -- "${cur}"))
                    return 0
                    ;;
                --paper)
                    COMPREPLY=($(compgen -W "a4 letter" -- "${cur}"))
                    return 0
                    ;;
                --sheets)
                    COMPREPLY=($(compgen -W "guide phone card diary exercises letter reminders record all" -- "${cur}"))
                    return 0
                    ;;
                --require)
                    COMPREPLY=($(compgen -W "confirmed signed-off" -- "${cur}"))
                    return 0
                    ;;
                --threads)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --clinic)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --content)
                    COMPREPLY=($(compgen -f "${cur}"))
                    return 0
                    ;;
                --format)
                    COMPREPLY=($(compgen -W "full short json" -- "${cur}"))
                    return 0
                    ;;
                *)
                    COMPREPLY=()
                    ;;
            esac
            COMPREPLY=( $(compgen -W "${opts}" -- "${cur}") )
            return 0
            ;;
    esac
}

if [[ "${BASH_VERSINFO[0]}" -eq 4 && "${BASH_VERSINFO[1]}" -ge 4 || "${BASH_VERSINFO[0]}" -gt 4 ]]; then
    complete -F _palmleaf -o nosort -o bashdefault -o default palmleaf
else
    complete -F _palmleaf -o bashdefault -o default palmleaf
fi
