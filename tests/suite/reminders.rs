//! Reminders: every fact of a plan that can be called has its event, nothing else has one, and the text is iCalendar.

use std::collections::{BTreeMap, BTreeSet};

use palmleaf::document::{Alarm, Arg, Event, MomentKind, Reminders, When};
use palmleaf::plan::{DayKind, DayPlan, Plan, WearState};
use palmleaf::reminders as text_of;
use palmleaf::units::{Date, Minutes as Length, TimeOfDay};
use palmleaf::words::{Said, SaidEvent, SaidReminders, remind};
use proptest::prelude::*;

use crate::plans::cases;
use crate::support::{CASE, WORKSHOP, examples, file, hands, judge};

const DAY: u32 = 1440;

fn reminders(text: &str) -> Reminders {
    let hands = hands(text);
    palmleaf::document::reminders(&hands[0], &hands[1..])
}

fn ics(text: &str) -> String {
    WORKSHOP.reminders(&hands(text)).unwrap_or_else(|why| panic!("{}\n{text}", crate::support::text(&why))).text
}

/// The dates and minutes of an event; None for a whole day.
fn occurrences(event: &Event) -> Vec<(Date, Option<u16>)> {
    match event.when {
        When::Day(date) => vec![(date, None)],
        When::Time { first, at, days, .. } => {
            (0..i32::from(days)).map(|day| (first.offset(day), Some(at.minutes()))).collect()
        }
    }
}

/// Where a kind is due in all events.
fn due(events: &[Event], kind: MomentKind) -> BTreeSet<(Date, u16)> {
    let of_kind = events.iter().filter(|event| event.kinds.contains(&kind));
    of_kind.flat_map(occurrences).filter_map(|(date, minute)| Some((date, minute?))).collect()
}

fn lines(ics: &str) -> Vec<String> {
    ics.replace("\r\n ", "").split_terminator("\r\n").map(ToOwned::to_owned).collect()
}

fn values<'l>(lines: &'l [String], name: &str) -> Vec<&'l str> {
    lines
        .iter()
        .filter(|line| line.split([':', ';']).next() == Some(name))
        .filter_map(|line| line.split_once(':').map(|(_, value)| value))
        .collect()
}

/// A plan read minute by minute, without the code that makes the reminders.
struct Minutes<'p> {
    plan: &'p Plan,
    up: u32,
    awake: u32,
    states: Vec<WearState>,
}

impl<'p> Minutes<'p> {
    fn of(plan: &'p Plan, up: TimeOfDay, bed: TimeOfDay) -> Self {
        let mut states = Vec::new();
        for segment in plan.days.iter().flat_map(|day| &day.segments) {
            states.extend(std::iter::repeat_n(segment.state, usize::from(segment.span.minutes())));
        }
        Self { plan, up: u32::from(up.minutes()), awake: u32::from(up.until(bed)), states }
    }

    fn since_up(&self, minute: u16) -> u32 {
        (u32::from(minute) + DAY - self.up) % DAY
    }

    /// The day on which the person got up before this minute.
    fn day(&self, at: usize) -> &'p DayPlan {
        let (number, minute) = (at / DAY as usize, at % DAY as usize);
        &self.plan.days[if minute < self.up as usize { number.saturating_sub(1) } else { number }]
    }

    fn date(&self, at: usize) -> (Date, u16) {
        (self.plan.days[at / DAY as usize].date, u16::try_from(at % DAY as usize).expect("a minute"))
    }

    /// Where it goes on and where it comes off, on days of short wears.
    fn edges(&self, on: bool) -> BTreeSet<(Date, u16)> {
        (1..self.states.len())
            .filter(|&at| self.states[at].is_worn() == on && self.states[at - 1].is_worn() != on)
            .filter(|&at| self.states[at - 1] != WearState::Before)
            .filter(|&at| matches!(self.day(at).kind, DayKind::Build | DayKind::Stretch))
            .map(|at| self.date(at))
            .filter(|(_, minute)| (1..self.awake).contains(&self.since_up(*minute)))
            .collect()
    }
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 250, ..ProptestConfig::default() })]

    #[test]
    fn every_fact_has_its_event_and_every_event_its_fact(case in cases()) {
        let Ok(judged) = judge(&case) else { return Ok(()) };
        let Ok((admitted, plan)) = judged.planned else { return Ok(()) };
        let made = reminders(&case);
        let events = &made.events;
        let day = admitted.case().day();
        let minutes = Minutes::of(&plan, day.up, day.bed);
        let fitted = (admitted.case().file.fitted.value, admitted.case().fitted_at().minutes());

        // One event a moment; none asleep, none before the fitting, none after the plan.
        let mut moments = BTreeSet::new();
        for event in events.iter().filter(|event| event.kinds != [MomentKind::Visit]) {
            for (date, minute) in occurrences(event) {
                let minute = minute.expect("only the visit takes a day");
                prop_assert!(moments.insert((date, minute)), "two events on {date} at {minute}\n{case}");
                prop_assert!(minutes.since_up(minute) < minutes.awake, "{date} {minute} wakes\n{case}");
                prop_assert!((date, minute) >= fitted && date <= plan.end(), "{date} {minute}\n{case}");
            }
        }
        // Exercises.
        let sessions: BTreeMap<(Date, u16), Vec<_>> = plan
            .days
            .iter()
            .flat_map(|day| day.sessions.iter().map(move |(at, session)| ((day.date, at.minutes()), session)))
            .filter(|(_, session)| !session.exercises.is_empty())
            .map(|(at, session)| {
                let programme = &plan.programmes[session.phase].exercises;
                (at, session.exercises.iter().map(|&place| programme[place].clone()).collect())
            })
            .collect();
        prop_assert_eq!(due(events, MomentKind::Exercise), sessions.keys().copied().collect(), "\n{}", &case);
        for event in events.iter().filter(|event| event.kinds.contains(&MomentKind::Exercise)) {
            let programmes: Vec<_> =
                occurrences(event).iter().map(|(date, minute)| &sessions[&(*date, minute.expect("a time"))]).collect();
            prop_assert!(programmes.windows(2).all(|pair| pair[0] == pair[1]), "another dose in one series\n{case}");
        }
        // Changes of hours.
        let changes: BTreeSet<(Date, u16)> = plan
            .days
            .windows(2)
            .filter(|pair| {
                pair[0].phase != pair[1].phase || pair[0].kind != pair[1].kind || pair[0].weaning != pair[1].weaning
            })
            .map(|pair| (pair[1].date, day.up.minutes()))
            .collect();
        prop_assert_eq!(due(events, MomentKind::Change), changes, "\n{}", &case);
        // On and off.
        prop_assert_eq!(due(events, MomentKind::On), minutes.edges(true), "\n{}", &case);
        let off = due(events, MomentKind::Off);
        let ends = minutes.edges(false);
        prop_assert!(off.is_superset(&ends), "{:?}\n{case}", ends.difference(&off).next());
        for (date, minute) in off.difference(&ends) {
            let at = usize::try_from(date.days_since(fitted.0)).expect("in the plan") * DAY as usize + usize::from(*minute);
            prop_assert!(minutes.day(at).kind == DayKind::Wean, "{date} {minute}\n{case}");
            prop_assert!(minutes.states[at - 1].is_worn() && minutes.states[at] == WearState::Off, "{date} {minute}\n{case}");
        }
        // Each wear says how long it lasts.
        for event in events.iter().filter(|event| event.kinds.contains(&MomentKind::On)) {
            let said: Vec<&Arg> = event.note.iter().flat_map(|line| &line.args).map(|(_, arg)| arg).collect();
            for (date, minute) in occurrences(event) {
                let days = usize::try_from(date.days_since(fitted.0)).expect("in the plan");
                let at = days * DAY as usize + usize::from(minute.expect("a time"));
                let worn = minutes.states[at..].iter().take_while(|state| state.is_worn()).count();
                // Up past midnight on the last day: the plan does not say when that wear ends.
                if at + worn == minutes.states.len() {
                    continue;
                }
                let length = Length::new(u16::try_from(worn).expect("minutes"));
                prop_assert!(said.contains(&&Arg::Length(length)), "{date}: {worn} minutes\n{case}");
            }
        }
        // The skin: after each wear of breaking in, and no oftener than the plan says or than it is worn.
        let mut checks: BTreeMap<Date, (usize, usize)> = BTreeMap::new();
        for (date, minute) in due(events, MomentKind::Skin) {
            let at = usize::try_from(date.days_since(fitted.0)).expect("in the plan") * DAY as usize + usize::from(minute);
            prop_assert!(minutes.day(at).kind == DayKind::Build, "{date} {minute}\n{case}");
            checks.entry(minutes.day(at).date).or_default().0 += 1;
        }
        for (date, minute) in &ends {
            let at = usize::try_from(date.days_since(fitted.0)).expect("in the plan") * DAY as usize + usize::from(*minute);
            if minutes.day(at).kind == DayKind::Build {
                prop_assert!(due(events, MomentKind::Skin).contains(&(*date, *minute)), "{date} {minute}\n{case}");
                checks.entry(minutes.day(at).date).or_default().1 += 1;
            }
        }
        let wanted = usize::from(plan.skin.checks.get());
        for (date, (looks, wears)) in checks {
            prop_assert!(looks >= wears && looks <= wanted.max(wears), "{looks} looks on {date}\n{case}");
            prop_assert!(looks >= wanted.min(2 * wears), "{looks} looks on {date}, {wanted} wanted\n{case}");
        }
        // The visit.
        let visits: Vec<&Event> = events.iter().filter(|event| event.kinds.contains(&MomentKind::Visit)).collect();
        prop_assert!(visits.len() == 1 && visits[0].when == When::Day(plan.review), "{case}");
        // The text.
        let text = WORKSHOP.reminders(&[(admitted.clone(), plan.clone())]).map_err(|why| TestCaseError::fail(crate::support::text(&why)))?.text;
        let lines = lines(&text);
        let uids: BTreeSet<&str> = values(&lines, "UID").into_iter().collect();
        prop_assert_eq!(uids.len(), events.len());
        prop_assert_eq!(values(&lines, "BEGIN").iter().filter(|name| **name == "VEVENT").count(), events.len());
    }

    /// A review that moves keeps every event that both plans have, under the same name and of the same kind.
    #[test]
    fn names_hold_when_the_review_moves(case in cases(), days in 1i32..60) {
        let Ok(judged) = judge(&case) else { return Ok(()) };
        let Ok((admitted, plan)) = judged.planned else { return Ok(()) };
        let review = admitted.case().file.review.value;
        let later = case.replace(&format!("review: {review}"), &format!("review: {}", review.offset(days)));
        if !judge(&later).is_ok_and(|judged| judged.planned.is_ok()) { return Ok(()) }
        let named = |case: &str| -> BTreeMap<String, Vec<MomentKind>> {
            reminders(case).events.into_iter().map(|event| (event.identity, event.kinds)).collect()
        };
        let (before, after) = (named(&case), named(&later));
        for (identity, kinds) in &before {
            // Hours that end no later leave nothing out.
            prop_assert_eq!(after.get(identity), Some(kinds), "{}\n{}", identity, plan.end());
        }
    }
}

/// What a locked screen must not show is in no title and no note, in any language, unless the case asks for it.
#[test]
fn reminders_tell_nothing_that_others_should_not_read() {
    let telling = [
        "splint",
        "thumb",
        "wrist",
        "finger",
        "hand",
        "férula",
        "pulgar",
        "muñeca",
        "mano",
        "جبيرة",
        "إبهام",
        "معصم",
        "يدك",
        "Zenobia",
    ];
    for path in examples() {
        let example = std::fs::read_to_string(&path).expect("an example");
        let mut person = false;
        let kept = |line: &&str| {
            person = line.starts_with("person:") || person && line.starts_with(' ');
            !person && !line.starts_with("language:") && !line.starts_with("reminders:")
        };
        let bare: String = example.lines().filter(kept).map(|line| format!("{line}\n")).collect();
        for entry in WORKSHOP.languages.iter() {
            let tag = &entry.tag;
            let case = format!("{bare}language: {tag}\nperson: {{name: Zenobia Reed}}\n");
            let quiet = lines(&ics(&case)).join("\n").to_lowercase();
            for word in telling {
                assert!(!quiet.contains(&word.to_lowercase()), "{} in {tag} says {word}:\n{quiet}", path.display());
            }
            let full = lines(&ics(&format!("{case}reminders: {{detail: full}}\n"))).join("\n");
            assert!(full.contains("Zenobia Reed"), "{}", path.display());
            assert_eq!(
                values(&lines(&ics(&case)), "UID"),
                values(&lines(&ics(&format!("{case}reminders: {{detail: full}}\n"))), "UID")
            );
        }
    }
}

/// Whose word wins, the telephone, and that a draft is a draft stand in every note.
#[test]
fn every_note_says_whose_word_wins_and_whom_to_call() {
    for entry in WORKSHOP.languages.iter() {
        let tag = entry.tag.to_string();
        let case = CASE.replace("language: en", &format!("language: {tag}"));
        let hands = hands(&format!("{case}clinic: {{telephone: \"+44 20 7946 0000\", hours: 9 to 5}}\n"));
        let said = remind(&WORKSHOP.words, &palmleaf::document::reminders(&hands[0], &[])).expect("words");
        let speaker = WORKSHOP.words.speaker(&hands[0].0.case().language).expect("a speaker");
        let caution = speaker.plain("reminder-caution", &[]).expect("a caution");
        let drafted = speaker.plain("guide-drafted", &[]).expect("a line");
        for event in &said.events {
            assert!(event.note.contains(&caution) && event.note.contains("+44 20 7946 0000"), "{}", event.note);
            assert_eq!(event.note.contains(&drafted), tag != "en", "{}", event.note);
            assert!(!event.title.is_empty() && !event.alarm_says.is_empty());
        }
    }
}

/// One that is never taken off has no event to put it on or take it off; nor has one for the night.
#[test]
fn nobody_is_told_to_take_off_what_stays_on() {
    let cast = file("examples/flexor-tendon-repair.yaml");
    for case in
        [cast, CASE.replace("de-quervain", "thumb-ucl-acute").replace("forearm-thumb-spica", "hand-thumb-spica")]
    {
        let hands = hands(&case);
        let built = hands[0].1.break_in.days();
        let events = reminders(&case).events;
        let told = events
            .iter()
            .filter(|event| event.kinds.contains(&MomentKind::On) || event.kinds.contains(&MomentKind::Off));
        assert_eq!((built, told.count()), (0, 0));
    }
}

/// Two hands: what is due at one minute is one event that says which, and both are called both.
#[test]
fn two_hands_share_their_moments() {
    let case = file("examples/both-hands.yaml");
    let events = reminders(&case).events;
    let mut moments = BTreeSet::new();
    for event in &events {
        for moment in occurrences(event) {
            assert!(moments.insert(moment), "{moment:?}");
        }
    }
    let text = ics(&case);
    assert!(
        text.contains("SUMMARY;LANGUAGE=en:Left side:") && text.contains("SUMMARY;LANGUAGE=en:Right side:"),
        "{text}"
    );
    assert!(text.contains("SUMMARY;LANGUAGE=en:Left and right:"), "{text}");
    // In detail, what is for one hand stands below the name of that hand.
    let full = lines(&ics(&format!("{case}reminders: {{detail: full}}\n")));
    let both =
        values(&full, "DESCRIPTION").into_iter().find(|note| note.contains("Left hand") && note.contains("Right hand"));
    let both = both.expect("exercises for both hands");
    let (left, right) = both.split_once("Right hand").expect("two parts");
    let hands = hands(&case);
    for (admitted, plan) in &hands {
        let part = if admitted.case().file.hand == palmleaf::body::Side::Left { left } else { right };
        let speaker = WORKSHOP.words.speaker(&admitted.case().language).expect("a speaker");
        let last = plan.programmes.last().expect("a programme");
        let said = last.exercises.iter().filter(|planned| {
            let name = speaker.plain(&format!("exercise-{}-name", planned.id), &[]).expect("a name");
            part.contains(&text_of_value(&name))
        });
        assert!(said.count() > 0, "{part}");
    }
}

/// The alarm of the visit: when the person gets up, the day before; on the day itself where they were fitted later.
#[test]
fn the_visit_is_called_while_the_person_is_up() {
    let alarm = |more: &str, review: &str| {
        let case = CASE.replace("review: 2027-03-29", &format!("review: {review}"));
        let events = reminders(&format!("{case}{more}")).events;
        let visit = events.into_iter().find(|event| event.kinds == [MomentKind::Visit]).expect("a visit");
        (visit.when, visit.alarm)
    };
    let date = Date::new(2027, 3, 29).expect("a date");
    let (when, called) = alarm("", "2027-03-29");
    assert_eq!((when, called), (When::Day(date), Alarm { days_before: 0, minutes: -17 * 60 }));
    let (_, called) = alarm("review_at: \"10:00\"\n", "2027-03-29");
    assert_eq!(called, Alarm { days_before: 1, minutes: -180 });
    let (_, called) = alarm("review_at: \"10:00\"\nday: {up: \"15:00\", bed: \"07:00\"}\n", "2027-03-29");
    assert_eq!(called, Alarm { days_before: 0, minutes: -19 * 60 });
    let (_, called) = alarm("", "2027-03-02");
    assert_eq!(called, Alarm { days_before: 0, minutes: 7 * 60 });
}

/// RFC 5545 3.1: lines end with CR LF and have at most 75 octets before it. 3.3.11: text is escaped.
#[test]
fn whatever_is_said_comes_back_as_it_was() {
    let hostile = [
        "a,b;c\\d\\n:\"e\"",
        "\\",
        "\\\\n,;",
        "BEGIN:VEVENT",
        " led by a space",
        "line\nline\n\nline",
        "END:VCALENDAR\nBEGIN:VCALENDAR",
    ];
    let long = ["x", "é", "ش", "👩‍👩‍👧‍👦", "𝔘", ", ", "\\"].map(|unit| unit.repeat(200));
    let texts: Vec<String> = hostile.iter().map(|text| (*text).to_owned()).chain(long).collect();
    for text in texts {
        // Every phase of a line's end is met.
        for lead in 0..6 {
            let title = format!("{}{text}", "y".repeat(lead));
            let event = SaidEvent {
                identity: text.clone(),
                when: When::Day(Date::new(2027, 3, 1).expect("a date")),
                title: title.clone(),
                note: title.clone(),
                alarm: Alarm { days_before: 0, minutes: 0 },
                alarm_says: title.clone(),
            };
            let said = SaidReminders {
                language: "en".to_owned(),
                date: Date::new(2027, 3, 1).expect("a date"),
                revision: 0,
                events: vec![event],
                said: Said::default(),
            };
            let file = text_of::file(&said);
            assert!(file.ends_with("\r\n") && !file.replace("\r\n", "").contains(['\r', '\n']));
            for line in file.split_terminator("\r\n") {
                assert!(line.len() <= 75, "{} octets: {line}", line.len());
                assert!(!line.trim_start().is_empty() || line.starts_with(' '), "an empty line");
            }
            let lines = lines(&file);
            let names: Vec<&str> = values(&lines, "BEGIN");
            assert_eq!(names, ["VCALENDAR", "VEVENT", "VALARM"]);
            for name in ["SUMMARY", "DESCRIPTION"] {
                assert!(values(&lines, name).iter().all(|value| unescaped(value) == title), "{title:?}");
            }
        }
    }
    // A control that no line may hold.
    let said = SaidEvent {
        identity: String::new(),
        when: When::Day(Date::new(2027, 3, 1).expect("a date")),
        title: "a\u{7}b\rc".to_owned(),
        note: String::new(),
        alarm: Alarm { days_before: 0, minutes: 0 },
        alarm_says: String::new(),
    };
    let date = Date::new(2027, 3, 1).expect("a date");
    let file = text_of::file(&SaidReminders {
        language: "en".to_owned(),
        date,
        revision: 7,
        events: vec![said],
        said: Said::default(),
    });
    assert!(file.contains(":abc\r\n") && file.contains("SEQUENCE:7\r\n"), "{file}");
}

fn text_of_value(text: &str) -> String {
    text.replace(',', "\\,").replace(';', "\\;")
}

fn unescaped(value: &str) -> String {
    let mut out = String::new();
    let mut chars = value.chars();
    while let Some(c) = chars.next() {
        match c {
            '\\' => match chars.next() {
                Some('n') => out.push('\n'),
                Some(c @ ('\\' | ';' | ',')) => out.push(c),
                other => panic!("\\{other:?} in {value}"),
            },
            ';' | ',' => panic!("`{c}` stands bare in {value}"),
            c => out.push(c),
        }
    }
    out
}

/// What a person typed keeps its figures in order beside text from right to left.
#[test]
fn a_telephone_number_is_set_apart_from_text_from_right_to_left() {
    let arabic = CASE.replace("language: en", "language: ar");
    let text = lines(&ics(&format!("{arabic}clinic: {{telephone: \"+44 20 7946 0000\"}}\n"))).join("\n");
    assert!(text.contains("\u{2068}+44 20 7946 0000\u{2069}"), "{text}");
}

/// The name of an event is of the case and not of its dates, words or language.
#[test]
fn names_are_of_the_case() {
    let uids =
        |case: &str| -> Vec<String> { values(&lines(&ics(case)), "UID").into_iter().map(ToOwned::to_owned).collect() };
    let known = format!("{CASE}person: {{reference: HR-2041}}\n");
    assert_eq!(uids(&known), uids(&known.replace("language: en", "language: ar")));
    assert_eq!(uids(&known), uids(&known.replace("2027-03-01", "2027-03-02").replace("2027-03-29", "2027-03-30")));
    let apart = |other: &str| uids(&known).iter().all(|uid| !uids(other).contains(uid));
    assert!(
        apart(CASE)
            && apart(&known.replace("HR-2041", "HR-2042"))
            && apart(&known.replace("hand: right", "hand: left"))
    );
}
