//! The calendar in a language: days cut into weeks that begin where the language's weeks begin.

use serde_json::{Value, json};

use super::components::{Said, Voice};
use super::prose::object;
use crate::diag::Diagnostic;
use crate::document::{CalendarDay, CalendarKey, Message};
use crate::units::Date;

impl Voice<'_> {
    pub(super) fn calendar(&self, days: &[CalendarDay], what: &[(Date, Message)], key: &[CalendarKey]) -> Said {
        let formats = &self.speaker.formats;
        let Some(first) = days.first() else { return Ok(Value::Null) };
        let back = |date: Date| {
            let ahead = 7 + date.weekday().index() - formats.first_weekday().index();
            i32::try_from(ahead % 7).unwrap_or(0)
        };
        let start = first.date.offset(-back(first.date));
        let weeks = (days.last().map_or(0, |last| last.date.days_since(start)) / 7) + 1;
        let mut rows: Vec<(Value, String)> = Vec::new();
        for week in 0..weeks {
            let monday = start.offset(week * 7);
            let sunday = monday.offset(6);
            let cells: Vec<Value> = (0..7)
                .map(|offset| {
                    let date = monday.offset(offset);
                    let day = usize::try_from(date.days_since(first.date)).ok().and_then(|at| days.get(at));
                    match day {
                        Some(day) => json!({
                            "n": formats.in_digits(&date.day().to_string()),
                            "state": day.state.word(),
                            "flag": day.flag.map(|flag| flag.word()),
                        }),
                        None => json!({"n": formats.in_digits(&date.day().to_string()), "state": "none", "flag": Value::Null}),
                    }
                })
                .collect();
            let said: Result<Vec<String>, Diagnostic> = what
                .iter()
                .filter(|(date, _)| (monday..=sunday).contains(date))
                .map(|(_, message)| self.text(message))
                .collect();
            // The month of the days that the plan shows, never of empty cells beside them; a week in two names both.
            let shown: Vec<Date> =
                days.iter().map(|day| day.date).filter(|date| (monday..=sunday).contains(date)).collect();
            let name = match (shown.first(), shown.last()) {
                (Some(one), Some(other)) if one.month() != other.month() => {
                    format!("{} / {}", formats.short_month(*one), formats.short_month(*other))
                }
                (Some(one), _) => formats.month(*one),
                _ => String::new(),
            };
            let states: String = cells.iter().map(|cell| format!("{}{}", cell["state"], cell["flag"])).collect();
            let said = said?.join(" ");
            let row = json!({
                "month": name,
                "what": said,
                "days": cells,
            });
            rows.push((row, if said.is_empty() { states } else { format!("{week}") }));
        }
        let weekdays: Vec<String> = (0..7).map(|offset| formats.weekday(start.offset(offset))).collect();
        let key: Result<Vec<Value>, Diagnostic> = key
            .iter()
            .map(|entry| match entry {
                CalendarKey::State(state, say) => Ok(json!({"state": state.word(), "say": self.say(say)?})),
                CalendarKey::Flag(flag, say) => Ok(json!({"flag": flag.word(), "say": self.say(say)?})),
            })
            .collect();
        Ok(object(
            "calendar",
            vec![
                ("head", json!({"week": self.plain("calendar-week")?, "what": self.plain("calendar-what")?})),
                ("weekdays", json!(weekdays)),
                ("rows", json!(shortened(rows, &self.plain("calendar-and-so-on")?))),
                ("key", json!(key?)),
            ],
        ))
    }
}

/// A long calendar shows every week in which something changes, and of weeks that are alike the first only, with a
/// word that they go on. A month is named where it begins among the weeks that are shown.
fn shortened(rows: Vec<(Value, String)>, and_so_on: &Value) -> Vec<Value> {
    const ALL: usize = 10;
    let long = rows.len() > ALL;
    let mut shown: Vec<Value> = Vec::new();
    let mut last = String::new();
    let mut skipped = false;
    for (row, shape) in rows {
        if long && shape == last {
            skipped = true;
            continue;
        }
        if skipped && let Some(before) = shown.last_mut() {
            before["what"] = and_so_on.clone();
        }
        skipped = false;
        last = shape;
        shown.push(row);
    }
    if skipped && let Some(before) = shown.last_mut() {
        before["what"] = and_so_on.clone();
    }
    let mut month = Value::Null;
    for row in &mut shown {
        if row["month"] == month {
            row["month"] = json!("");
        } else {
            month = row["month"].clone();
        }
    }
    shown
}
