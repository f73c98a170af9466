//! The name of a structure as a label: its lines, and how much room they take.

use crate::document::Message;
use crate::ids::StructureId;
use crate::language::Language;
use crate::picture::plate::Drawing;
use crate::picture::standalone::{LEADING, Line};
use crate::pipeline::Workshop;
use crate::words::Speaker;

/// Heights of letters, mm: of the plain name, and of the student's name below it.
const LETTERS: (f64, f64) = (3.1, 2.8);
/// The widest that a label grows before it takes another line, mm.
const WIDEST: f64 = 30.0;
/// Where letters are set in another font they may be a little wider than they were measured.
const SLACK: f64 = 1.06;

/// A label of one or several lines.
#[derive(Clone, Debug)]
pub struct Lettering {
    /// The plain name, then what students call it when that is another one.
    pub lines: Vec<Line>,
    /// How wide and high it is, mm.
    pub wide: f64,
    pub high: f64,
}

impl Lettering {
    /// The name of a structure.
    pub fn of(workshop: &Workshop, language: &Language, speaker: &Speaker<'_>, id: &StructureId) -> Self {
        let spoken = |key: String| speaker.say(&Message::new(key), &[]).ok();
        let plain = spoken(format!("structure-{id}")).unwrap_or_else(|| id.to_string());
        let term = spoken(format!("structure-{id}-term")).filter(|term| *term != plain).unwrap_or_default();
        Self::set(workshop, language, &plain, &term)
    }

    /// Other words about a picture.
    pub fn plain(workshop: &Workshop, language: &Language, speaker: &Speaker<'_>, key: &str) -> Self {
        Self::set(workshop, language, "", &speaker.plain(key, &[]).unwrap_or_else(|_| key.to_owned()))
    }

    fn set(workshop: &Workshop, language: &Language, plain: &str, term: &str) -> Self {
        let line = |bold: bool| {
            let size = if bold { LETTERS.0 } else { LETTERS.1 };
            let width = move |text: &str| workshop.width(text, language, bold) * size * SLACK;
            (width, move |text| Line { text, size, bold })
        };
        let ((plain_wide, bold), (term_wide, thin)) = (line(true), line(false));
        let (plain, term) = (broken(plain, &plain_wide), broken(term, &term_wide));
        let widths = plain.iter().map(|line| plain_wide(line)).chain(term.iter().map(|line| term_wide(line)));
        let wide = widths.fold(4.0, f64::max);
        let lines: Vec<Line> = plain.into_iter().map(bold).chain(term.into_iter().map(thin)).collect();
        let high = lines.iter().map(|line| line.size * LEADING).sum();
        Self { lines, wide, high }
    }

    /// Its size in units of a picture.
    pub fn size(&self) -> (u16, u16) {
        let units = |mm: f64| (mm * Drawing::UNIT).ceil().clamp(1.0, 4000.0) as u16;
        (units(self.wide), units(self.high))
    }
}

/// A text in as few lines as hold it, all of them about equally long.
fn broken(text: &str, width: &dyn Fn(&str) -> f64) -> Vec<String> {
    let words: Vec<&str> = text.split_whitespace().collect();
    let fill = |limit: f64| {
        let mut lines: Vec<String> = Vec::new();
        for word in &words {
            match lines.last_mut() {
                Some(line) if width(&format!("{line} {word}")) <= limit => {
                    line.push(' ');
                    line.push_str(word);
                }
                _ => lines.push((*word).to_owned()),
            }
        }
        lines
    };
    let fewest = fill(WIDEST).len();
    let narrowest = (4..=60).map(|step| f64::from(step) * 0.5).find(|limit| {
        let lines = fill(*limit);
        lines.len() <= fewest && lines.iter().all(|line| width(line) <= *limit)
    });
    fill(narrowest.unwrap_or(WIDEST))
}
