//! Components said in a language.

use serde_json::{Value, json};

use super::prose::{object, prose, runs};
use super::speaker::Speaker;
use crate::content::TriageLevel;
use crate::diag::Diagnostic;
use crate::document::{
    ActivityRow, Amount, Cause, Component, DiaryDay, DoseRow, ExerciseRow, FactRow, Figure, LadderLevel, Message, Part,
    ScheduleRow, Strip, StripRow, StripState,
};
use crate::markdown::Inline;
use crate::plan::ActivityVerdict;
use crate::units::{ClockSpan, TimeOfDay};

pub(super) type Said = Result<Value, Diagnostic>;

/// Speaks for one part of a document.
pub(super) struct Voice<'a> {
    pub(super) speaker: &'a Speaker<'a>,
    part: &'a Part,
}

/// Says a component.
pub fn component(speaker: &Speaker<'_>, part: &Part, component: &Component) -> Said {
    let voice = Voice { speaker, part };
    match component {
        Component::Hand { side, finger, alt, figures } => {
            let hand = speaker.say(alt, &part.args)?;
            let finger = finger.as_ref().map(|finger| speaker.say(finger, &part.args)).transpose()?;
            let alt = finger.as_ref().map_or_else(|| hand.clone(), |finger| format!("{hand} {finger}."));
            Ok(object(
                "hand",
                vec![
                    ("side", json!(side.word())),
                    ("left", voice.plain("hand-left")?),
                    ("right", voice.plain("hand-right")?),
                    ("finger", json!(finger)),
                    ("alt", json!(alt)),
                    ("pictures", voice.figures(figures)?),
                ],
            ))
        }
        Component::Facts(rows) => Ok(object("facts", vec![("rows", voice.all(rows, Voice::fact)?)])),
        Component::Strips { key, rows } => {
            let key: Result<Vec<Value>, Diagnostic> = key
                .iter()
                .map(|entry| Ok(json!({"state": entry.state.word(), "say": voice.say(&entry.say)?})))
                .collect();
            Ok(object(
                "strips",
                vec![("axis", voice.axis()?), ("key", json!(key?)), ("rows", voice.all(rows, Voice::strip_row)?)],
            ))
        }
        Component::Schedule { rows, note } => Ok(object(
            "schedule",
            vec![
                (
                    "head",
                    json!({"day": voice.plain("schedule-day")?, "clock": voice.plain("schedule-clock")?, "long": voice.plain("schedule-long")?}),
                ),
                ("axis", voice.axis()?),
                ("rows", voice.all(rows, |voice, row| voice.schedule_row(row, &note.causes))?),
                ("note", voice.line(note)?),
            ],
        )),
        Component::Calendar { days, what, key } => voice.calendar(days, what, key),
        Component::Steps { kind, title, items } => {
            let items: Result<Vec<Value>, Diagnostic> = items
                .iter()
                .map(|item| {
                    let picture = item.figure.as_ref().map(|figure| voice.figure(figure)).transpose()?;
                    Ok(json!({"say": voice.line(&item.say)?, "picture": picture}))
                })
                .collect();
            Ok(object(
                "steps",
                vec![("kind", json!(kind.word())), ("title", voice.say(title)?), ("items", json!(items?))],
            ))
        }
        Component::Spots { items, figures } => voice.spots(items, figures),
        Component::Checks { fine, not, act } => Ok(object(
            "checks",
            vec![
                ("fine", json!({"title": voice.plain("skin-fine")?, "items": voice.texts(fine)?})),
                ("not", json!({"title": voice.plain("skin-not")?, "items": voice.texts(not)?, "do": voice.say(act)?})),
            ],
        )),
        Component::Activities(rows) => Ok(object(
            "activities",
            vec![
                (
                    "head",
                    json!({"job": voice.plain("daily-job")?, "what": voice.plain("daily-what")?, "how": voice.plain("daily-how")?}),
                ),
                ("rows", voice.all(rows, Voice::activity)?),
            ],
        )),
        Component::Joints(rows) => Ok(object("joints", vec![("rows", voice.all(rows, Voice::joint)?)])),
        Component::Plates(plates) => Ok(object("plates", vec![("items", voice.all(plates, Voice::plate)?)])),
        Component::Exercises { rows, avoid, stop } => {
            let not = if avoid.is_empty() {
                Value::Null
            } else {
                json!({"title": voice.plain("move-avoid")?, "items": voice.texts(avoid)?})
            };
            Ok(object(
                "exercises",
                vec![("rows", voice.all(rows, Voice::exercise)?), ("not", not), ("stop", voice.say(stop)?)],
            ))
        }
        Component::Care(items) => {
            let items: Result<Vec<Value>, Diagnostic> = items
                .iter()
                .map(|item| Ok(json!({"mark": if item.never { "never" } else { "do" }, "say": voice.line(&item.say)?})))
                .collect();
            Ok(object("care", vec![("items", json!(items?))]))
        }
        Component::Warning { title, signs, act, telephone, hours, emergency } => Ok(object(
            "warning",
            vec![
                ("title", voice.say(title)?),
                ("signs", voice.texts(signs)?),
                ("do", voice.say(act)?),
                ("telephone", json!(telephone)),
                ("telephone-label", voice.plain("call-telephone")?),
                ("hours", json!(hours)),
                (
                    "emergency",
                    match emergency {
                        Some((title, items)) => json!({"title": voice.say(title)?, "items": voice.texts(items)?}),
                        None => Value::Null,
                    },
                ),
            ],
        )),
        Component::Ladder(levels) => Ok(object("ladder", vec![("levels", voice.all(levels, Voice::level)?)])),
        Component::Diary { days, most } => Ok(object(
            "diary",
            vec![
                ("worn", voice.plain("diary-worn")?),
                ("hours", voice.plain("diary-hours")?),
                ("skin", voice.plain("diary-skin")?),
                ("moves", voice.plain("diary-exercises")?),
                ("pain", voice.plain("diary-pain")?),
                ("note", voice.plain("diary-note")?),
                ("scale", json!((0..=*most).map(|number| speaker.formats.number(number)).collect::<Vec<_>>())),
                ("days", voice.all(days, Voice::diary_day)?),
            ],
        )),
        Component::Note(blocks) => {
            let blocks: Vec<Value> = blocks.iter().map(prose).collect();
            Ok(object("note", vec![("title", voice.plain("note-from")?), ("blocks", json!(blocks))]))
        }
        Component::Later(items) => {
            let items: Result<Vec<Value>, Diagnostic> = items
                .iter()
                .map(|item| Ok(json!({"label": voice.say(&item.label)?, "say": voice.line(&item.say)?})))
                .collect();
            Ok(object("later", vec![("items", json!(items?))]))
        }
        Component::Advice(list) => {
            let items: Result<Vec<Value>, Diagnostic> =
                list.iter().map(|message| Ok(json!([{"t": "p", "inl": voice.line(message)?}]))).collect();
            Ok(object("ul", vec![("items", json!(items?))]))
        }
        Component::Initial => {
            let labels: Result<Vec<Value>, Diagnostic> =
                ["initial-date", "initial-name"].iter().map(|key| voice.plain(key)).collect();
            Ok(object("initial", vec![("say", voice.plain("initial-say")?), ("labels", json!(labels?))]))
        }
    }
}

impl Voice<'_> {
    pub(super) fn text(&self, message: &Message) -> Result<String, Diagnostic> {
        self.speaker.say(message, &self.part.args)
    }

    pub(super) fn say(&self, message: &Message) -> Said {
        Ok(Value::String(self.text(message)?))
    }

    pub(super) fn plain(&self, key: &str) -> Said {
        Ok(Value::String(self.speaker.plain(key, &self.part.args)?))
    }

    fn line(&self, message: &Message) -> Said {
        Ok(json!(runs(&[Inline::Text(self.text(message)?)])))
    }

    pub(super) fn texts(&self, messages: &[Message]) -> Said {
        let all: Result<Vec<Value>, Diagnostic> = messages.iter().map(|message| self.say(message)).collect();
        Ok(json!(all?))
    }

    fn all<T>(&self, items: &[T], one: impl Fn(&Self, &T) -> Said) -> Said {
        let all: Result<Vec<Value>, Diagnostic> = items.iter().map(|item| one(self, item)).collect();
        Ok(json!(all?))
    }

    pub(super) fn optional(&self, message: Option<&Message>) -> Said {
        message.map_or(Ok(Value::Null), |message| self.say(message))
    }

    fn count(&self, key: &str, count: i64, causes: &[Cause]) -> Said {
        self.say(&Message::new(key.to_owned()).with("count", count).because(causes.to_vec()))
    }

    fn axis(&self) -> Said {
        let hour = |hour: u16| self.speaker.formats.hour(TimeOfDay::from_minutes(hour * 60));
        Ok(json!([
            self.plain("axis-midnight")?,
            hour(6),
            self.plain("axis-noon")?,
            hour(18),
            self.plain("axis-midnight")?
        ]))
    }

    fn fact(&self, row: &FactRow) -> Said {
        Ok(
            json!({"label": self.say(&row.label)?, "value": self.say(&row.value)?, "more": self.optional(row.more.as_ref())?}),
        )
    }

    fn strip_row(&self, row: &StripRow) -> Said {
        let days: Vec<Value> = row.days.iter().map(strip).collect();
        let worn: Vec<ClockSpan> = row.days.last().map(on).unwrap_or_default();
        Ok(json!({
            "label": self.say(&row.label)?,
            "dates": self.say(&row.dates)?,
            "say": self.line(&row.say)?,
            "alt": self.strip_alt(&self.text(&row.label)?, &worn, &row.say.causes)?,
            "days": days,
        }))
    }

    /// "Days 1 to 4: splint on from 9:00 am to 9:30 am and 3:00 pm to 3:30 pm."
    fn strip_alt(&self, label: &str, worn: &[ClockSpan], causes: &[Cause]) -> Result<String, Diagnostic> {
        let ranges: Result<Vec<String>, Diagnostic> = worn
            .iter()
            .map(|span| {
                let message = Message::new("time-range")
                    .with("from", crate::document::Arg::Time(TimeOfDay::from_minutes(span.from())))
                    .with("to", crate::document::Arg::Time(TimeOfDay::from_minutes(span.to())));
                self.text(&message)
            })
            .collect();
        let ranges = ranges?;
        let key = if ranges.is_empty() { "strip-alt-none" } else { "strip-alt" };
        let message = Message::new(key)
            .with("label", crate::document::Arg::Literal(label.to_owned()))
            .with("times", crate::document::Arg::Literal(self.speaker.formats.list(&ranges)))
            .because(causes.to_vec());
        self.text(&message)
    }

    fn schedule_row(&self, row: &ScheduleRow, causes: &[Cause]) -> Said {
        let amount = row.amount.as_ref().map(|amount| self.amount(amount, causes)).transpose()?;
        let label = self.speaker.formats.day(row.date);
        Ok(json!({
            "n": self.speaker.formats.number(row.number),
            "weekday": self.speaker.formats.weekday(row.date),
            "date": self.speaker.formats.short(row.date),
            "segments": strip(&row.strip),
            "amount": amount,
            "all": self.optional(row.all.as_ref())?,
            "alt": self.strip_alt(&label, &row.worn, causes)?,
        }))
    }

    fn diary_day(&self, day: &DiaryDay) -> Said {
        Ok(json!({
            "n": self.speaker.formats.number(day.number),
            "weekday": self.speaker.formats.weekday(day.date),
            "date": self.speaker.formats.short(day.date),
            "wear": day.wear.as_ref().map(|wear| self.line(wear)).transpose()?,
            "wears": day.wears,
            "hours": day.hours,
            "checks": day.checks,
            "sessions": day.sessions,
        }))
    }

    fn amount(&self, amount: &Amount, causes: &[Cause]) -> Said {
        let minutes = i64::from(amount.minutes.get());
        let (big, key) =
            if minutes % 60 == 0 { (minutes / 60, "schedule-hours") } else { (minutes, "schedule-minutes") };
        Ok(json!({
            "big": self.speaker.formats.number(big),
            "unit": self.count(key, big, causes)?,
            "times": self.count("schedule-times", amount.times, causes)?,
        }))
    }

    fn spots(&self, spots: &[Message], figures: &[Figure]) -> Said {
        let letters = self.letters()?;
        let items: Result<Vec<Value>, Diagnostic> = spots
            .iter()
            .enumerate()
            .map(|(index, spot)| {
                let letter = letters.get(index).map_or_else(|| (index + 1).to_string(), char::to_string);
                Ok(json!({"letter": letter, "say": self.say(spot)?}))
            })
            .collect();
        Ok(object("spots", vec![("items", json!(items?)), ("pictures", self.figures(figures)?)]))
    }

    /// The letters of lists that a picture refers to.
    fn letters(&self) -> Result<Vec<char>, Diagnostic> {
        Ok(self.text(&Message::new("spot-letters"))?.chars().filter(|c| !c.is_whitespace()).collect())
    }

    /// A picture: which one, and what it shows.
    pub(super) fn figure(&self, figure: &Figure) -> Said {
        let alt: Result<Vec<String>, Diagnostic> =
            figure.alt.iter().map(|message| self.speaker.say(message, &self.part.args)).collect();
        let letters: Vec<String> = self.letters()?.iter().map(char::to_string).collect();
        let mut said = json!({"picture": figure.key, "alt": alt?.join(" "), "letters": letters});
        if !figure.names.is_empty() {
            said["names"] = self.all(&figure.names, Self::structure)?;
        }
        Ok(said)
    }

    fn figures(&self, figures: &[Figure]) -> Said {
        self.all(figures, Self::figure)
    }

    fn activity(&self, row: &ActivityRow) -> Said {
        let word = match row.verdict {
            ActivityVerdict::Keep => "daily-word-keep",
            ActivityVerdict::Change => "daily-word-change",
            ActivityVerdict::Leave => "daily-word-leave",
        };
        Ok(json!({
            "name": self.say(&row.name)?,
            "verdict": row.verdict.word(),
            "word": self.plain(word)?,
            "how": self.all(&row.how, Self::line)?,
            "why": self.optional(row.why.as_ref())?,
        }))
    }

    fn exercise(&self, row: &ExerciseRow) -> Said {
        let dose: Result<Vec<Value>, Diagnostic> = row
            .dose
            .iter()
            .map(|DoseRow { number, say }| Ok(json!({"n": self.speaker.formats.number(*number), "w": self.say(say)?})))
            .collect();
        Ok(json!({
            "name": self.say(&row.name)?,
            "start": self.say(&row.start)?,
            "steps": self.all(&row.steps, Self::line)?,
            "where": self.say(&row.place)?,
            "dose": dose?,
            "later": match &row.later {
                Some(later) => self.say(later)?,
                None => Value::Null,
            },
            "pictures": self.figures(&row.figures)?,
        }))
    }

    fn level(&self, level: &LadderLevel) -> Said {
        let (kind, big) = match (&level.telephone, level.date, level.level) {
            (Some(telephone), ..) => ("telephone", json!(telephone)),
            (None, Some(date), _) => ("date", json!(self.speaker.formats.day(date))),
            (None, None, TriageLevel::Emergency) => ("date", self.plain("call-emergency-number")?),
            (None, None, _) => ("write", Value::Null),
        };
        let mut said = json!({
            "level": level.level.word(),
            "title": self.say(&level.title)?,
            "big": big,
            "kind": kind,
            "items": self.texts(&level.items)?,
        });
        if let Some(place) = &level.place {
            said["place"] = self.say(place)?;
        }
        Ok(said)
    }
}

fn strip(day: &Strip) -> Value {
    day.iter().map(|(span, state)| json!({"from": span.from(), "to": span.to(), "state": state.word()})).collect()
}

fn on(day: &Strip) -> Vec<ClockSpan> {
    day.iter().filter(|(_, state)| *state == StripState::On).map(|(span, _)| *span).collect()
}
