//! What a program can see of the items of an instrument.

use serde_json::Value;

use super::{Cutter, Readability, Sentence, Yardstick, passage};
use crate::source::choice;
use crate::words::Sheet;

choice! {
    /// What is looked at.
    pub enum Check ("check of an instrument") {
        MainMessage = "main-message",
        MessageOnTop = "message-on-top",
        EverydayWords = "everyday-words",
        TermsExplained = "terms-explained",
        ActiveVoice = "active-voice",
        NumbersClear = "numbers-clear",
        NoSums = "no-sums",
        Chunks = "chunks",
        Headings = "headings",
        Summary = "summary",
        Cues = "cues",
        Pictures = "pictures",
        PicturesNamed = "pictures-named",
        Tables = "tables",
        Action = "action",
        Address = "address",
        Steps = "steps",
        Tool = "tool",
        Call = "call",
        Lists = "lists",
        Reasons = "reasons",
        Doses = "doses",
        Risk = "risk",
        RiskAndBenefit = "risk-and-benefit",
    }
}

choice! {
    /// The answer to an item.
    pub enum Answer ("answer to an item") {
        Yes = "yes",
        No = "no",
        /// The sheet has nothing that the item is about.
        DoesNotApply = "does not apply",
        /// For a person to answer.
        Open = "open",
    }
}

/// The voice is active as a whole when at most one sentence of so many is passive (rule of thumb, from memory).
const MOST_PASSIVE: usize = 20;
/// A paragraph of more sentences is no chunk (rule of thumb, from memory).
const MOST_SENTENCES: usize = 4;
/// A step of more sentences has more than one idea (rule of thumb, from memory).
const MOST_IN_A_STEP: usize = 2;
/// A table with more columns is not simple (rule of thumb, from memory).
const MOST_COLUMNS: usize = 4;
/// A sheet of fewer sections needs neither headings nor a summary.
const SHORT: usize = 3;

type Seen = (Answer, String);

/// Looks at one sheet.
pub struct Looker<'a> {
    reading: &'a Readability,
    yardstick: &'a Yardstick,
    cutter: Cutter,
    /// The sections of the first part: the other hand has the same.
    sections: Vec<&'a Value>,
}

impl<'a> Looker<'a> {
    pub fn new(sheet: &'a Sheet, reading: &'a Readability, yardstick: &'a Yardstick) -> Self {
        let sections = sheet.data["parts"][0]["sections"].as_array().into_iter().flatten().collect();
        Self { reading, yardstick, cutter: Cutter::default(), sections }
    }

    /// The answer, with what it rests on.
    pub fn answer(&self, check: Check) -> Seen {
        match check {
            Check::MainMessage => self.some(&["facts"], "the first box names the splint and what it is for"),
            Check::MessageOnTop => {
                let first = self.sections.first().is_some_and(|section| kinds(section).any(|kind| kind == "facts"));
                yes_if(first, "the main facts stand in the first section", "the main facts do not come first")
            }
            Check::EverydayWords => self.everyday_words(),
            Check::TermsExplained => self.terms_explained(),
            Check::ActiveVoice => self.active_voice(),
            Check::NumbersClear => self.numbers_clear(),
            Check::NoSums => self.some(&["schedule", "strips"], "hours, dates and times a day are worked out"),
            Check::Chunks => self.chunks(),
            Check::Headings => self.headings(),
            Check::Summary => self.summary(),
            Check::Cues => self.some(&["warning", "strips", "hand"], "boxes, strips and marks"),
            Check::Pictures => self.pictures(),
            Check::PicturesNamed => self.pictures_named(),
            Check::Tables => self.tables(),
            Check::Action => self.some(&["steps", "exercises", "care", "warning"], "things to do"),
            Check::Address => self.address(),
            Check::Steps => self.steps(),
            Check::Tool => self.some(&["schedule", "calendar", "diary", "checks"], "something to use day by day"),
            Check::Call => self.some(&["warning", "ladder"], "whom to call, and when"),
            Check::Lists => self.some(&["steps", "care", "ladder", "checks", "ul", "ol"], "lists"),
            Check::Reasons => self.reasons(),
            Check::Doses => self.doses(),
            Check::Risk => self.some(&["warning", "ladder"], "signs of harm are named"),
            Check::RiskAndBenefit => {
                let benefit = self.rows("facts", "rows").any(|row| row["more"].is_string());
                let harm = self.blocks(&["warning", "ladder"]).next().is_some();
                yes_if(
                    benefit && harm,
                    "what it is for, and signs of harm",
                    "what it is for, or what can harm, is missing",
                )
            }
        }
    }

    fn blocks<'s>(&'s self, wanted: &'s [&'s str]) -> impl Iterator<Item = &'a Value> + 's {
        let all = self.sections.iter().flat_map(|section| section["blocks"].as_array().into_iter().flatten());
        all.filter(move |block| block["t"].as_str().is_some_and(|kind| wanted.contains(&kind)))
    }

    /// The rows of every block of a kind.
    fn rows<'s>(&'s self, kind: &'s str, field: &'s str) -> impl Iterator<Item = &'a Value> + 's {
        let all = self.sections.iter().flat_map(|section| section["blocks"].as_array().into_iter().flatten());
        all.filter(move |block| block["t"] == kind).flat_map(move |block| block[field].as_array().into_iter().flatten())
    }

    fn some(&self, wanted: &[&str], what: &str) -> Seen {
        let mut found: Vec<&str> = self.blocks(wanted).filter_map(|block| block["t"].as_str()).collect();
        found.sort_unstable();
        found.dedup();
        yes_if(!found.is_empty(), &format!("{what}: {}", found.join(", ")), &format!("none of: {}", wanted.join(", ")))
    }

    fn sentences(&self) -> impl Iterator<Item = &Sentence> {
        self.reading.sections.iter().flat_map(|section| &section.sentences)
    }

    fn everyday_words(&self) -> Seen {
        if self.yardstick.plain.instead.is_empty() {
            return (Answer::Open, "no plain words are listed for this language".to_owned());
        }
        let hard = self.reading.sections.iter().flat_map(|section| &section.hardest);
        let mut hard: Vec<&str> = hard.filter(|word| !word.instead.is_empty()).map(|word| word.word.as_str()).collect();
        hard.sort_unstable();
        hard.dedup();
        yes_if(
            hard.is_empty(),
            "no word that has a plainer one",
            &format!("plainer words exist for: {}", hard.join(", ")),
        )
    }

    fn terms_explained(&self) -> Seen {
        let terms: Vec<&Value> = self
            .rows("facts", "rows")
            .filter(|row| row["value"].as_str().is_some_and(|text| text.contains('(')))
            .collect();
        let bare: Vec<&str> =
            terms.iter().filter(|row| !row["more"].is_string()).filter_map(|row| row["value"].as_str()).collect();
        match terms.len() {
            0 => (Answer::DoesNotApply, "no term of the trade in brackets".to_owned()),
            _ => yes_if(bare.is_empty(), "each has a plain sentence below it", &bare.join("; ")),
        }
    }

    fn active_voice(&self) -> Seen {
        let Some(passive) = &self.yardstick.row.passive else {
            return (Answer::Open, "this language is not looked at for it".to_owned());
        };
        let is_participle = |word: &str| {
            let ends = passive.endings.iter().any(|ending| word.ends_with(ending.as_str()));
            (ends || passive.participles.iter().any(|known| known == word))
                && !passive.not.iter().any(|not| not == word)
        };
        let is_passive = |sentence: &&Sentence| {
            let pairs = sentence.words.windows(2);
            let mut next = pairs.filter(|pair| passive.before.contains(&pair[0]) && is_participle(&pair[1]));
            let apart = sentence
                .words
                .windows(3)
                .any(|three| passive.before.contains(&three[0]) && three[1] == "not" && is_participle(&three[2]));
            next.next().is_some() || apart
        };
        let scored = || self.sentences().filter(|sentence| !sentence.label);
        let found: Vec<&str> = scored().filter(is_passive).map(|sentence| sentence.text.as_str()).collect();
        let all = scored().count();
        let few = found.len() * MOST_PASSIVE <= all;
        let seen = match found.as_slice() {
            [] => "no sentence has the form of a passive".to_owned(),
            found => format!("form of a passive in {} of {all}: {}", found.len(), found.join(" | ")),
        };
        yes_if(few, &seen, &seen)
    }

    fn numbers_clear(&self) -> Seen {
        let figures = self.sentences().flat_map(|sentence| &sentence.words).filter(|word| passage::is_figure(word));
        let count = figures.count();
        let is_odd = |word: &&String| {
            let inside = word.contains(['/', '%', '½', '¼', '¾']);
            let decimal = word.split_once(['.', ',', '٫']).is_some_and(|(_, rest)| rest.starts_with(char::is_numeric));
            passage::is_figure(word) && (inside || decimal)
        };
        let odd: Vec<&str> = self
            .sentences()
            .flat_map(|sentence| &sentence.words)
            .filter(is_odd)
            .map(String::as_str)
            .chain(
                self.sentences().filter(|sentence| sentence.text.contains('%')).map(|sentence| sentence.text.as_str()),
            )
            .collect();
        match count {
            0 => (Answer::DoesNotApply, "no figures".to_owned()),
            _ => yes_if(
                odd.is_empty(),
                &format!("{count} figures, none a fraction, a decimal or a share of a hundred"),
                &odd.join("; "),
            ),
        }
    }

    fn chunks(&self) -> Seen {
        let mut texts = Vec::new();
        for section in &self.sections {
            passage::texts(&section["intro"], &mut texts);
            passage::texts(&section["blocks"], &mut texts);
        }
        let longest = texts.iter().map(|text| self.cutter.sentences(text).len()).max().unwrap_or(0);
        let seen = format!("the longest paragraph has {longest} sentences");
        yes_if(longest <= MOST_SENTENCES, &seen, &seen)
    }

    fn headings(&self) -> Seen {
        if self.sections.len() < SHORT {
            return (Answer::DoesNotApply, "too short to need them".to_owned());
        }
        let bare = self.sections.iter().filter(|section| !section["title"].is_string()).count();
        yes_if(bare == 0, &format!("{} sections, each with a heading", self.sections.len()), &format!("{bare} without"))
    }

    fn summary(&self) -> Seen {
        if self.sections.len() < SHORT {
            return (Answer::DoesNotApply, "too short to need one".to_owned());
        }
        let first =
            |wanted: &str| self.sections.first().is_some_and(|section| kinds(section).any(|kind| kind == wanted));
        let whole = first("facts") && first("strips") && first("warning");
        yes_if(
            whole,
            "the first section has the facts, the hours and the signs to stop",
            "the first section sums up nothing",
        )
    }

    fn pictures(&self) -> Seen {
        let exercises: Vec<&Value> = self.rows("exercises", "rows").collect();
        let drawn = exercises.iter().filter(|row| !is_empty(&row["pictures"])).count();
        let steps: Vec<&Value> = self.rows("steps", "items").collect();
        let shown = steps.iter().filter(|step| step["picture"].is_object()).count();
        let seen =
            format!("{drawn} of {} exercises and {shown} of {} steps have a picture", exercises.len(), steps.len());
        yes_if(drawn == exercises.len(), &seen, &seen)
    }

    fn pictures_named(&self) -> Seen {
        let mut names = Vec::new();
        self.sections.iter().for_each(|section| pictures(section, &mut names));
        let bare = names.iter().filter(|name| name.is_empty()).count();
        match names.len() {
            0 => (Answer::DoesNotApply, "no pictures".to_owned()),
            count => yes_if(bare == 0, &format!("{count} pictures, each named"), &format!("{bare} without a name")),
        }
    }

    fn tables(&self) -> Seen {
        let tables: Vec<&Value> = self.blocks(&["schedule", "calendar", "activities"]).collect();
        let heads = |table: &&&Value| {
            let heads = table["head"].as_object();
            heads.is_some_and(|heads| {
                heads.len() <= MOST_COLUMNS
                    && heads.values().all(|head| head.as_str().is_some_and(|head| !head.is_empty()))
            })
        };
        let good = tables.iter().filter(heads).count();
        match tables.len() {
            0 => (Answer::DoesNotApply, "no tables".to_owned()),
            count => {
                let seen = format!("{good} of {count} tables have {MOST_COLUMNS} heads or fewer");
                yes_if(good == count, &seen, &seen)
            }
        }
    }

    fn address(&self) -> Seen {
        let words = &self.yardstick.row.address;
        if words.is_empty() {
            return (Answer::Open, "this language is not looked at for it".to_owned());
        }
        let deaf: Vec<&str> = self
            .sections
            .iter()
            .zip(&self.reading.sections)
            .filter(|(section, read)| {
                let told = kinds(section).any(|kind| ["steps", "exercises", "care", "warning"].contains(&kind));
                let said = read.sentences.iter().flat_map(|sentence| &sentence.words).any(|word| words.contains(word));
                read.counts.sentences > 0 && !told && !said
            })
            .map(|(_, read)| read.title.as_str())
            .collect();
        yes_if(deaf.is_empty(), "every section speaks to the reader", &format!("not in: {}", deaf.join(", ")))
    }

    fn steps(&self) -> Seen {
        let mut texts = Vec::new();
        self.rows("steps", "items").for_each(|item| passage::texts(&item["say"], &mut texts));
        self.rows("exercises", "rows").for_each(|row| passage::texts(&row["steps"], &mut texts));
        let most = usize::from(self.yardstick.row.sentences.longest.get());
        let heavy: Vec<&String> = texts
            .iter()
            .filter(|text| {
                let sentences = self.cutter.sentences(text);
                sentences.len() > MOST_IN_A_STEP || sentences.iter().any(|one| self.yardstick.length(one) > most)
            })
            .collect();
        let list: Vec<&str> = heavy.iter().map(|text| text.as_str()).collect();
        match texts.len() {
            0 => (Answer::DoesNotApply, "no steps".to_owned()),
            count => yes_if(list.is_empty(), &format!("{count} steps, one idea each"), &list.join(" | ")),
        }
    }

    fn reasons(&self) -> Seen {
        let rows: Vec<&Value> = self.rows("activities", "rows").collect();
        let told = rows.iter().filter(|row| row["why"].is_string()).count();
        let seen = format!("{told} of {} jobs say why", rows.len());
        yes_if(told == rows.len(), &seen, &seen)
    }

    fn doses(&self) -> Seen {
        let rows: Vec<&Value> = self.rows("exercises", "rows").collect();
        let dosed = rows.iter().filter(|row| !is_empty(&row["dose"]) && !is_empty(&row["steps"])).count();
        match rows.len() {
            0 => self.some(&["steps", "schedule"], "steps and hours"),
            count => {
                let seen = format!("{dosed} of {count} exercises have steps and a number of times");
                yes_if(dosed == count, &seen, &seen)
            }
        }
    }
}

fn yes_if(good: bool, yes: &str, no: &str) -> Seen {
    if good { (Answer::Yes, yes.to_owned()) } else { (Answer::No, no.to_owned()) }
}

fn kinds(section: &Value) -> impl Iterator<Item = &str> {
    section["blocks"].as_array().into_iter().flatten().filter_map(|block| block["t"].as_str())
}

fn is_empty(value: &Value) -> bool {
    value.as_array().is_none_or(Vec::is_empty)
}

/// The names of all pictures below a value.
fn pictures(value: &Value, names: &mut Vec<String>) {
    match value {
        Value::Object(fields) if fields.get("picture").is_some_and(Value::is_string) => {
            names.push(fields.get("alt").and_then(Value::as_str).unwrap_or_default().trim().to_owned());
        }
        Value::Object(fields) => fields.values().for_each(|field| pictures(field, names)),
        Value::Array(items) => items.iter().for_each(|item| pictures(item, names)),
        _ => {}
    }
}
