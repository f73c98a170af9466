//! What changed, in words: lines for a terminal, and a page that a clinical lead signs.

use serde_json::{Value, json};

use super::changes::{Changes, FactChange, Moved};
use super::facts::FactKind;
use crate::case::Paper;
use crate::diag::Diagnostic;
use crate::document::{Arg, Message};
use crate::language::LanguageEntry;
use crate::words::{Speaker, page_pieces};

/// Items that a line names; more are counted.
const NAMED: usize = 3;
/// Messages of a group that the page names; the JSON file has them all.
const MESSAGES: usize = 60;

/// Says what clinicians read about a shelf.
pub struct Clerk<'w> {
    pub speaker: Speaker<'w>,
    /// Of the clinicians' language.
    pub entry: &'w LanguageEntry,
}

type Text = Result<String, Diagnostic>;

impl Clerk<'_> {
    pub fn plain(&self, key: &str) -> Text {
        self.speaker.plain(key, &[])
    }

    pub fn with(&self, key: &str, texts: &[(&'static str, &str)]) -> Text {
        let message = texts.iter().fold(Message::new(key.to_owned()), |message, (name, text)| {
            message.with(name, Arg::Literal((*text).to_owned()))
        });
        self.speaker.say(&message, &[])
    }

    /// A message that goes by a word.
    pub fn chosen(&self, key: &str, name: &'static str, word: &'static str) -> Text {
        self.speaker.say(&Message::new(key.to_owned()).with(name, Arg::Keyword(word)), &[])
    }

    fn counted(&self, key: &str, count: usize) -> Text {
        let count = i64::try_from(count).unwrap_or(i64::MAX);
        self.speaker.say(&Message::new(key.to_owned()).with("count", count), &[])
    }

    /// What a fact is called: "Wear hours (night-wear)".
    fn fact(&self, change: &FactChange) -> Text {
        let kind = change.kind().map_or("skin-checks", FactKind::word);
        let fact = self.chosen("shelf-fact", "kind", kind)?;
        if change.of.is_empty() {
            return Ok(fact);
        }
        self.with("shelf-fact-of", &[("fact", &fact), ("of", &change.of.join(", "))])
    }

    fn line(&self, change: &FactChange) -> Text {
        let item = if change.titles.len() <= NAMED {
            change.titles.join(", ")
        } else {
            self.counted("shelf-many", change.titles.len())?
        };
        let (fact, languages) = (self.fact(change)?, self.counted("shelf-languages", change.languages.len())?);
        let (old, new) = (change.old.as_deref().unwrap_or_default(), change.new.as_deref().unwrap_or_default());
        let key = match (&change.old, &change.new) {
            (None, _) => "shelf-change-new",
            (_, None) => "shelf-change-gone",
            _ => "shelf-change",
        };
        let texts = [("fact", fact.as_str()), ("item", &item), ("old", old), ("new", new), ("languages", &languages)];
        self.with(key, &texts)
    }

    /// Everything that changed, a line each.
    ///
    /// # Errors
    /// When a word is missing.
    pub fn lines(&self, changes: &Changes) -> Result<Vec<String>, Diagnostic> {
        let mut lines = Vec::new();
        if changes.first {
            return Ok(vec![self.plain("shelf-changes-first")?]);
        }
        for change in &changes.facts {
            lines.push(self.line(change)?);
        }
        for moved in &changes.added {
            let languages = self.counted("shelf-languages", moved.languages.len())?;
            lines.push(self.with("shelf-change-added", &[("item", &moved.title), ("languages", &languages)])?);
        }
        for moved in &changes.removed {
            lines.push(self.with("shelf-change-removed", &[("item", &moved.title)])?);
        }
        for change in &changes.words {
            let languages = change.languages.join(", ");
            let count = i64::try_from(change.messages.len()).unwrap_or(i64::MAX);
            let message = Message::new("shelf-change-words").with("count", count);
            lines.push(self.speaker.say(&message.with("languages", Arg::Literal(languages)), &[])?);
        }
        if changes.clinic {
            lines.push(self.plain("shelf-change-clinic")?);
        }
        if let Some((old, new)) = &changes.program {
            lines.push(self.with("shelf-change-program", &[("old", old), ("new", new)])?);
        }
        Ok(lines)
    }

    fn heading(&self, key: &str) -> Result<Value, Diagnostic> {
        Ok(json!({"t": "h", "level": 2, "say": self.plain(key)?}))
    }

    fn paragraph(&self, key: &str) -> Result<Value, Diagnostic> {
        Ok(json!({"t": "p", "say": self.plain(key)?}))
    }

    fn table(&self, head: &[&str], widths: &[u8], rows: Vec<Value>) -> Result<Value, Diagnostic> {
        let head = head.iter().map(|key| self.plain(key)).collect::<Result<Vec<_>, _>>()?;
        Ok(json!({"t": "table", "head": head, "widths": widths, "rows": rows}))
    }

    fn moved(&self, key: &str, moved: &[Moved]) -> Result<Vec<Value>, Diagnostic> {
        if moved.is_empty() {
            return Ok(Vec::new());
        }
        let rows = moved.iter().map(|one| json!([one.title, one.item, one.languages.join(", ")])).collect();
        let head = ["shelf-changes-item", "shelf-changes-what", "shelf-changes-languages"];
        Ok(vec![self.heading(key)?, self.table(&head, &[3, 3, 2], rows)?])
    }

    fn facts(&self, changes: &Changes) -> Result<Value, Diagnostic> {
        if changes.first {
            return self.paragraph("shelf-changes-first");
        }
        if changes.facts.is_empty() {
            return self.paragraph("shelf-changes-none");
        }
        let (new, gone) = (self.plain("shelf-changes-new")?, self.plain("shelf-changes-no-more")?);
        let mut rows = Vec::new();
        for change in &changes.facts {
            let (old, now) = (change.old.as_ref().unwrap_or(&new), change.new.as_ref().unwrap_or(&gone));
            let languages = change.languages.join(", ");
            rows.push(json!([self.fact(change)?, change.titles.join(", "), old, now, languages]));
        }
        let head = [
            "shelf-changes-what",
            "shelf-changes-for",
            "shelf-changes-before",
            "shelf-changes-now",
            "shelf-changes-languages",
        ];
        self.table(&head, &[3, 3, 3, 3, 2], rows)
    }

    fn words(&self, changes: &Changes) -> Result<Value, Diagnostic> {
        if changes.words.is_empty() {
            return self.paragraph("shelf-changes-no-words");
        }
        let mut rows = Vec::new();
        for change in &changes.words {
            let mut messages = change.messages.iter().take(MESSAGES).cloned().collect::<Vec<_>>().join(", ");
            if change.messages.len() > MESSAGES {
                messages.push_str(", …");
            }
            rows.push(json!([change.languages.join(", "), change.messages.len().to_string(), messages]));
        }
        let head = ["shelf-changes-languages", "shelf-changes-count", "shelf-changes-messages"];
        self.table(&head, &[2, 1, 6], rows)
    }
}

/// The page of changes as the tree that the look of records sets.
///
/// # Errors
/// When a word is missing.
pub fn page(
    clerk: &Clerk<'_>,
    changes: &Changes,
    (title, clinic): (&str, Option<&str>),
    items: usize,
    paper: Paper,
) -> Result<Value, Diagnostic> {
    let entry = clerk.entry;
    let mut numbers = vec![
        json!([clerk.plain("shelf-changes-made")?, changes.made.to_string()]),
        json!([clerk.plain("shelf-changes-gone")?, changes.gone.to_string()]),
        json!([clerk.plain("shelf-changes-items")?, items.to_string()]),
    ];
    if let Some((old, new)) = &changes.program {
        let line = clerk.with("shelf-change-program", &[("old", old), ("new", new)])?;
        numbers.push(json!([clerk.plain("shelf-changes-program")?, line]));
    }
    if changes.clinic {
        numbers.push(json!([clerk.plain("shelf-changes-clinic")?, clerk.plain("shelf-changes-clinic-new")?]));
    }
    let mut blocks = vec![clerk.heading("shelf-changes-facts")?, clerk.facts(changes)?];
    blocks.extend(clerk.moved("shelf-changes-added", &changes.added)?);
    blocks.extend(clerk.moved("shelf-changes-removed", &changes.removed)?);
    if !changes.first {
        blocks.push(clerk.heading("shelf-changes-words")?);
        blocks.push(clerk.words(changes)?);
    }
    blocks.push(clerk.heading("shelf-changes-numbers")?);
    blocks.push(json!({"t": "facts", "rows": numbers}));
    blocks.push(clerk.heading("shelf-changes-sign")?);
    blocks.push(clerk.paragraph("shelf-changes-approve")?);
    let lines = [["shelf-changes-name", "shelf-changes-role"], ["shelf-changes-signature", "shelf-changes-date"]];
    for labels in lines {
        let labels = labels.iter().map(|key| clerk.plain(key)).collect::<Result<Vec<_>, _>>()?;
        blocks.push(json!({"t": "sign", "labels": labels}));
    }
    Ok(json!({
        "meta": {
            "sheet": "record",
            "half": false,
            "title": clerk.plain("shelf-changes-title")?,
            "author": clinic.unwrap_or("Palmleaf"),
            "description": title,
            "language": entry.tag.primary(),
            "region": entry.tag.region(),
            "dir": "ltr",
            "font": entry.fonts,
            "paper": paper.word(),
            "size": "standard",
            "date": null,
            "digits": clerk.speaker.formats.digits().map(String::from),
            "other": {"language": entry.tag.primary(), "dir": "ltr", "font": entry.fonts},
        },
        "furniture": {
            "clinic": clinic,
            "person": null,
            "caution": clerk.plain("shelf-changes-caution")?,
            "page": page_pieces(&clerk.speaker, "guide-page")?,
        },
        "line": clerk.with("shelf-changes-line", &[("shelf", title)])?,
        "blocks": blocks,
    }))
}
