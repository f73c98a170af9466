//! Reminders as a file that calendars read: iCalendar, RFC 5545.
//!
//! - Times have neither zone nor `Z` (RFC 5545 3.3.5, form 1): nine in the morning is nine on the person's own clock,
//!   before and after a change of the clock and wherever they travel.
//! - `UID` is a hash of what an event is, not of its date or words, so that the file of a changed plan moves the events
//!   of the old one instead of doubling them.
//! - `DTSTAMP` is the day of the fitting and `SEQUENCE` the revision that the case gives. The file depends on the case
//!   and on nothing else: made twice, on whatever day, it is the same bytes, and no clock is read.
//! - There is no `METHOD`: with one, RFC 5546 would ask for an organizer, and nobody is invited.
//! - Every event is private and takes up no time of the person's.

mod text;

use std::fmt::Write;

use crate::document::{Alarm, When};
use crate::units::{Date, TimeOfDay};
use crate::words::{SaidEvent, SaidReminders};
use text::{Lines, escaped};

/// What this file is called among the sheets of a case.
pub const REMINDERS: &str = "reminders";

/// The text of the file.
pub fn file(reminders: &SaidReminders) -> String {
    let mut lines = Lines::default();
    lines.push("BEGIN:VCALENDAR");
    lines.push("VERSION:2.0");
    lines.push("PRODID:-//Palmleaf//Palmleaf//EN");
    lines.push("CALSCALE:GREGORIAN");
    for event in &reminders.events {
        write_event(&mut lines, reminders, event);
    }
    lines.push("END:VCALENDAR");
    lines.finish()
}

fn write_event(lines: &mut Lines, reminders: &SaidReminders, event: &SaidEvent) {
    let language = &reminders.language;
    lines.push("BEGIN:VEVENT");
    lines.push(&format!("UID:{}", identifier(&event.identity)));
    lines.push(&format!("DTSTAMP:{}T000000Z", day(reminders.date)));
    lines.push(&format!("SEQUENCE:{}", reminders.revision));
    match event.when {
        When::Day(date) => lines.push(&format!("DTSTART;VALUE=DATE:{}", day(date))),
        When::Time { first, at, length, days } => {
            let end = at.minutes() + length;
            let last = first.offset(i32::from(end / TimeOfDay::DAY));
            lines.push(&format!("DTSTART:{}", local(first, at)));
            lines.push(&format!("DTEND:{}", local(last, TimeOfDay::from_minutes(end % TimeOfDay::DAY))));
            if days > 1 {
                lines.push(&format!("RRULE:FREQ=DAILY;COUNT={days}"));
            }
        }
    }
    lines.push(&format!("SUMMARY;LANGUAGE={language}:{}", escaped(&event.title)));
    lines.push(&format!("DESCRIPTION;LANGUAGE={language}:{}", escaped(&event.note)));
    lines.push("CLASS:PRIVATE");
    lines.push("TRANSP:TRANSPARENT");
    lines.push("BEGIN:VALARM");
    lines.push("ACTION:DISPLAY");
    lines.push(&format!("TRIGGER:{}", duration(event.alarm)));
    lines.push(&format!("DESCRIPTION;LANGUAGE={language}:{}", escaped(&event.alarm_says)));
    lines.push("END:VALARM");
    lines.push("END:VEVENT");
}

/// A UUID of version 8 (RFC 9562 5.8), as RFC 7986 5.3 asks for.
fn identifier(identity: &str) -> String {
    let hash = blake3::hash(identity.as_bytes());
    let mut bytes = [0u8; 16];
    bytes.copy_from_slice(&hash.as_bytes()[..16]);
    bytes[6] = 0x80 | (bytes[6] & 0x0F);
    bytes[8] = 0x80 | (bytes[8] & 0x3F);
    let mut out = String::new();
    for (at, byte) in bytes.iter().enumerate() {
        if matches!(at, 4 | 6 | 8 | 10) {
            out.push('-');
        }
        let _written_to_memory = write!(out, "{byte:02x}");
    }
    out
}

fn day(date: Date) -> String {
    format!("{:04}{:02}{:02}", date.year(), date.month(), date.day())
}

fn local(date: Date, at: TimeOfDay) -> String {
    format!("{}T{:02}{:02}00", day(date), at.hour(), at.minute())
}

/// Days are days of the calendar, also over a change of the clock; hours and minutes are exact (RFC 5545 3.3.6).
fn duration(alarm: Alarm) -> String {
    let sign = if alarm.days_before > 0 || alarm.minutes < 0 { "-" } else { "" };
    let minutes = alarm.minutes.unsigned_abs();
    match (alarm.days_before, minutes) {
        (0, minutes) => format!("{sign}PT{minutes}M"),
        (days, 0) => format!("{sign}P{days}D"),
        (days, minutes) => format!("{sign}P{days}DT{minutes}M"),
    }
}
