//! Lists to move in with the arrow keys and to search by typing.

use std::io::ErrorKind;

use inquire::ui::{RenderConfig, Styled};
use inquire::{InquireError, MultiSelect, Select, Text};

use super::ask::{Ask, COLUMNS, Choice, Judge, Stop, one_line, wrapped};
use crate::cli::terminal::Terminal;

/// Lines of a list that are shown at a time.
const PAGE: usize = 10;

pub struct Arrows<'a> {
    terminal: &'a Terminal,
    look: RenderConfig<'static>,
}

impl<'a> Arrows<'a> {
    pub fn new(terminal: &'a Terminal) -> Self {
        // Ctrl-C ends the question, which then ends the interview: nothing is cut off. Who cannot be told so is cut off.
        let _told = ctrlc::set_handler(|| ());
        let look = if terminal.is_coloured() { RenderConfig::default_colored() } else { RenderConfig::empty() };
        // Marks that every font has, and that do not rest on colour.
        let look = look
            .with_highlighted_option_prefix(Styled::new(">"))
            .with_selected_checkbox(Styled::new("[x]"))
            .with_unselected_checkbox(Styled::new("[ ]"))
            .with_scroll_up_prefix(Styled::new("^"))
            .with_scroll_down_prefix(Styled::new("v"));
        Self { terminal, look }
    }
}

fn stop(error: InquireError) -> Stop {
    match error {
        InquireError::OperationCanceled | InquireError::OperationInterrupted => Stop::Wish,
        InquireError::IO(why) if why.kind() == ErrorKind::Interrupted => Stop::Wish,
        other => Stop::Outside(other.to_string()),
    }
}

const SCORE: fn(&str, &Choice, &str, usize) -> Option<i64> = |typed, choice, _, _| choice.score(typed);

/// The best first, and equal ones in the order of the list: rank is kept while one types.
fn sort(found: &mut [(usize, i64)]) {
    found.sort_by_key(|(place, score)| (std::cmp::Reverse(*score), *place));
}

impl Ask for Arrows<'_> {
    fn one(&mut self, question: &str, choices: &[Choice], usual: Option<usize>) -> Result<usize, Stop> {
        let question = one_line(question, COLUMNS);
        let long = choices.len() > PAGE;
        let help = if long {
            "type to search in any language, arrows to move, Enter to take"
        } else {
            "arrows to move, Enter to take"
        };
        let select = Select::new(&question, choices.to_vec())
            .with_page_size(PAGE)
            .with_starting_cursor(usual.unwrap_or(0).min(choices.len().saturating_sub(1)))
            .with_help_message(help)
            .with_scorer(&SCORE)
            .with_sorter(&sort)
            .with_formatter(&|chosen| chosen.value.id.clone())
            .with_render_config(self.look);
        select.raw_prompt().map(|chosen| chosen.index).map_err(stop)
    }

    fn several(&mut self, question: &str, choices: &[Choice]) -> Result<Vec<usize>, Stop> {
        let question = one_line(question, COLUMNS);
        let select = MultiSelect::new(&question, choices.to_vec())
            .with_page_size(PAGE)
            .with_help_message("type to search in any language, Space to tick, Enter when done")
            .with_scorer(&SCORE)
            .with_keep_filter(false)
            .with_formatter(&|chosen| chosen.iter().map(|one| one.value.id.as_str()).collect::<Vec<_>>().join(", "))
            .with_render_config(self.look);
        select.raw_prompt().map(|chosen| chosen.iter().map(|one| one.index).collect()).map_err(stop)
    }

    fn text(&mut self, question: &str, usual: &str, judge: Judge<'_>) -> Result<String, Stop> {
        // The library keeps a judge for as long as it likes, so the question is put again instead.
        loop {
            let mut text = Text::new(question).with_render_config(self.look);
            if !usual.is_empty() {
                text = text.with_default(usual);
            }
            let typed = text.prompt().map_err(stop)?;
            match judge(typed.trim()) {
                Ok(()) => return Ok(typed.trim().to_owned()),
                Err(why) => self.tell(&format!("That cannot be: {why}.")),
            }
        }
    }

    fn tell(&mut self, text: &str) {
        self.terminal.aside(&wrapped(text));
    }
}
