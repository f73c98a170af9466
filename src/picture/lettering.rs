//! The name of a structure as a label: its lines, and how much room they take.

use super::plate::Drawing;
use super::standalone::{LEADING, Line};

/// How names are lettered, mm.
#[derive(Clone, Copy, Debug)]
pub struct Letters {
    /// Height of the letters of the plain name, and of the learned name below it.
    pub plain: f64,
    pub term: f64,
    /// The widest that a label grows before it takes another line.
    pub widest: f64,
    /// What is left free above and below a name, so that two of them do not read as one.
    pub clear: f64,
}

impl Letters {
    /// For a picture by itself or on a sheet of pictures.
    pub const PICTURE: Self = Self { plain: 3.1, term: 2.8, widest: 30.0, clear: 0.0 };
    /// For a page that is read at arm's length: no letter is smaller than ten points.
    pub const PAGE: Self = Self { plain: 3.6, term: 3.55, widest: 34.0, clear: 0.8 };
}

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
    /// Sets a name. `measure` says how wide a line is, bold or not, of the size of its letters.
    pub fn set(letters: Letters, measure: &dyn Fn(&str, bool) -> f64, plain: &str, term: &str) -> Self {
        let line = |bold: bool| {
            let size = if bold { letters.plain } else { letters.term };
            let width = move |text: &str| measure(text, bold) * size * SLACK;
            (width, move |text| Line { text, size, bold })
        };
        let ((plain_wide, bold), (term_wide, thin)) = (line(true), line(false));
        let (plain, term) = (broken(plain, letters.widest, &plain_wide), broken(term, letters.widest, &term_wide));
        let widths = plain.iter().map(|line| plain_wide(line)).chain(term.iter().map(|line| term_wide(line)));
        let wide = widths.fold(4.0, f64::max);
        let lines: Vec<Line> = plain.into_iter().map(bold).chain(term.into_iter().map(thin)).collect();
        let high = lines.iter().map(|line| line.size * LEADING).sum::<f64>() + letters.clear * 2.0;
        Self { lines, wide, high }
    }

    /// Its size in units of a picture.
    pub fn size(&self) -> (u16, u16) {
        let units = |mm: f64| (mm * Drawing::UNIT).ceil().clamp(1.0, 4000.0) as u16;
        (units(self.wide), units(self.high))
    }
}

/// A text in as few lines as hold it, all of them about equally long.
fn broken(text: &str, widest: f64, width: &dyn Fn(&str) -> f64) -> Vec<String> {
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
    let fewest = fill(widest).len();
    let narrowest = (4..=60).map(|step| f64::from(step) * 0.5).find(|limit| {
        let lines = fill(*limit);
        lines.len() <= fewest && lines.iter().all(|line| width(line) <= *limit)
    });
    fill(narrowest.unwrap_or(widest))
}
