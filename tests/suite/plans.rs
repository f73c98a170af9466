//! Invariants of plans over many random cases, and what overrides may and may not do.

use palmleaf::content::Regime;
use palmleaf::plan::{ActivityVerdict, DayKind, WearState};
use palmleaf::units::{Date, TimeOfDay};
use proptest::prelude::*;

use crate::support::{CASE, WORKSHOP, case_for, codes, guide, judge, planned, text};

/// A random good case: any condition with an orthosis that fits it, any dates, any day, any factors and activities.
pub fn cases() -> impl Strategy<Value = String> {
    let library = &WORKSHOP.library;
    let pairs: Vec<String> = library
        .conditions
        .keys()
        .flat_map(|condition| {
            library.orthoses.keys().map(move |orthosis| case_for(condition.as_str(), orthosis.as_str()))
        })
        .filter(|case| judge(case).is_ok_and(|judged| judged.planned.is_ok()))
        .collect();
    let conditions: std::collections::BTreeSet<&str> =
        pairs.iter().filter_map(|case| case.lines().find(|line| line.starts_with("condition: "))).collect();
    assert_eq!(conditions.len(), library.conditions.len(), "every condition has an orthosis and a plan");
    let factors: Vec<String> = library.factors.keys().map(ToString::to_string).collect();
    let activities: Vec<String> = library.activities.keys().map(ToString::to_string).collect();
    (
        prop::sample::select(pairs),
        (2024i16..2099, 1i8..=12, 1i8..=28),
        1i32..400,
        (0u16..1440, 480u16..1260),
        0u16..1440,
        prop::sample::subsequence(factors, 0..4),
        prop::sample::subsequence(activities, 0..6),
        any::<bool>(),
    )
        .prop_map(|(case, (year, month, day), review, (up, awake), at, factors, activities, left)| {
            let fitted = Date::new(year, month, day).expect("a day that every month has");
            let bed = TimeOfDay::from_minutes((up + awake) % 1440);
            let mut case = case
                .replace("fitted: 2027-03-01", &format!("fitted: {fitted}"))
                .replace("review: 2027-03-29", &format!("review: {}", fitted.offset(review)));
            if left {
                case = case.replace("hand: right", "hand: left");
            }
            format!(
                "{case}fitted_at: \"{}\"\nday: {{up: \"{}\", bed: \"{bed}\"}}\nfactors: [{}]\nactivities: [{}]\n",
                TimeOfDay::from_minutes(at),
                TimeOfDay::from_minutes(up),
                factors.join(", "),
                activities.join(", "),
            )
        })
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 400, ..ProptestConfig::default() })]

    /// `plan::make` refuses a plan that breaks an invariant; here the weightiest are also proved independently.
    #[test]
    fn every_plan_is_sound(case in cases()) {
        let judged = match judge(&case) {
            Ok(judged) => judged,
            Err(findings) => return Err(TestCaseError::fail(format!("{}\n{case}", text(&findings)))),
        };
        let planned = match judged.planned {
            Ok(planned) => planned,
            // A factor may rule a material out; that is a verdict, not a fault of the plan.
            Err(findings) if findings.codes() == ["checks/does-not-fit"] => return Ok(()),
            Err(findings) => return Err(TestCaseError::fail(format!("{}\n{case}", text(&findings)))),
        };
        let (admitted, plan) = planned;
        let fitted = admitted.case().file.fitted.value;
        // Every minute of every day is in exactly one state.
        for day in &plan.days {
            let mut minutes = [0u8; 1440];
            for segment in &day.segments {
                for minute in segment.span.from()..segment.span.to() {
                    minutes[usize::from(minute)] += 1;
                }
            }
            prop_assert!(minutes.iter().all(|&count| count == 1), "{}", day.date);
        }
        // Phases tile the dates.
        prop_assert_eq!(plan.phases[0].first, fitted);
        for pair in plan.phases.windows(2) {
            prop_assert_eq!(pair[0].last.offset(1), pair[1].first);
        }
        // A change that needs the therapist's word never comes before the review.
        if !plan.later.is_empty() {
            prop_assert!(plan.end() >= plan.review);
        }
        // Breaking in never shrinks, never runs through the night, and its first long wear is not asleep.
        let build: Vec<_> = plan.days.iter().filter(|day| day.kind == DayKind::Build).collect();
        let asleep = |minute: u16| {
            let day = admitted.case().day();
            day.bed.until(TimeOfDay::from_minutes(minute)) < day.bed.until(day.up)
        };
        for day in &build {
            for segment in day.segments.iter().filter(|segment| segment.state.is_worn()) {
                prop_assert!(!asleep(segment.span.from()), "{} wears asleep\n{}", day.date, case);
            }
        }
        // No activity is kept that is too heavy.
        for advice in &plan.activities {
            let activity = &WORKSHOP.library.activities[&advice.id];
            for (phase, given) in plan.phases.iter().zip(&advice.phases) {
                prop_assert!(given.verdict != ActivityVerdict::Keep || activity.mass <= phase.rules.activities.mass);
            }
        }
        prop_assert!(palmleaf::plan::invariants::broken(admitted.case(), &plan).is_empty());
    }

    /// A factor makes a plan stricter or leaves it as it is.
    #[test]
    fn a_factor_never_loosens_a_plan(case in cases()) {
        let bare: String = case.lines().filter(|line| !line.starts_with("factors:")).map(|line| format!("{line}\n")).collect();
        let (Ok(with), Ok(without)) = (judge(&case), judge(&bare)) else { return Ok(()) };
        let (Ok((_, with)), Ok((_, without))) = (with.planned, without.planned) else { return Ok(()) };
        prop_assert!(with.skin.mark_limit.value <= without.skin.mark_limit.value);
        prop_assert!(with.skin.checks >= without.skin.checks);
        prop_assert!(with.break_in.days() >= without.break_in.days());
        for (one, other) in with.activities.iter().zip(&without.activities) {
            for (strict, loose) in one.phases.iter().zip(&other.phases) {
                prop_assert!(strict.verdict >= loose.verdict, "{}", one.id);
            }
        }
        for (strict, loose) in with.programmes.iter().zip(&without.programmes) {
            prop_assert!(strict.exercises.len() <= loose.exercises.len());
        }
    }

    /// Once swaps every side and no figure, twice is the same case.
    #[test]
    fn the_side_changes_no_figure(case in cases()) {
        let other = if case.contains("hand: left") { case.replace("hand: left", "hand: right") } else { case.replace("hand: right", "hand: left") };
        let (Ok(one), Ok(two)) = (judge(&case), judge(&other)) else { return Ok(()) };
        let (Ok((_, one)), Ok((_, two))) = (one.planned, two.planned) else { return Ok(()) };
        prop_assert_eq!(one.days, two.days);
        prop_assert_eq!(one.programmes, two.programmes);
        prop_assert_eq!(one.activities, two.activities);
    }
}

#[test]
fn a_protective_splint_is_never_off_but_to_wash() {
    let case = CASE
        .replace("de-quervain", "thumb-ucl-acute")
        .replace("forearm-thumb-spica", "hand-thumb-spica")
        .replace("2027-03-29", "2027-04-12");
    let (_, plan) = planned(&case);
    assert_eq!(plan.phases[0].wear.value, Regime::OffToWash);
    assert!(plan.break_in.steps.is_empty(), "a fresh ligament is guarded from the first minute");
    for day in &plan.days[1..] {
        let off: u16 = day
            .segments
            .iter()
            .filter(|segment| !segment.state.is_worn())
            .map(|segment| {
                assert_eq!(segment.state, WearState::OffWash, "{}", day.date);
                segment.span.minutes()
            })
            .sum();
        assert!(off <= 15, "{} is off for {off} minutes", day.date);
    }
}

#[test]
fn the_phase_before_the_review_lasts_until_the_review() {
    let late = CASE.replace("2027-03-29", "2027-05-10");
    let (_, plan) = planned(&late);
    assert_eq!(plan.phases.len(), 1);
    assert_eq!(plan.phases[0].last.to_string(), "2027-05-10", "protection is never cut short by a late appointment");
    assert!(plan.phases[0].until_review && !plan.later.is_empty());
}

#[test]
fn a_phase_that_has_begun_has_dates() {
    let begun = format!("{CASE}begun:\n  - {{phase: settling, on: 2027-03-29}}\n")
        .replace("review: 2027-03-29", "review: 2027-04-26");
    let (_, plan) = planned(&begun);
    assert_eq!(plan.phases.len(), 2);
    assert_eq!(plan.phases[0].last.to_string(), "2027-03-28");
    assert_eq!(plan.phases[1].first.to_string(), "2027-03-29");
    let worn: Vec<u16> = plan.days.iter().filter(|day| day.weaning.is_some()).map(|day| day.worn_minutes()).collect();
    assert!(worn.windows(2).skip(1).all(|pair| pair[1] <= pair[0] + 60), "weaning does not grow: {worn:?}");
    let first = worn[1];
    let last = *worn.last().expect("weaning days");
    assert!(last < first, "weaning shrinks from {first} to {last}");
}

/// Straps beside the neighbour do not fit the first phase of this injury; fitted when the next begins, they are judged by
/// that one, and its length counts from the fitting.
#[test]
fn a_second_orthosis_begins_with_the_phase_it_is_fitted_for() {
    let first = "palmleaf: 1\nhand: left\nfinger: index\ncondition: pip-collateral-sprain\northosis: buddy-straps\n\
                 fitted: 2027-03-08\nreview: 2027-03-15\nlanguage: en\n";
    assert_eq!(codes(first), ["checks/does-not-fit"], "straps alone do not guard a fresh tear");
    let (_, plan) = planned(&format!("{first}begun:\n  - {{phase: guard, on: 2027-03-08}}\n"));
    let guard = &plan.phases[0];
    assert_eq!((guard.id.as_str(), guard.first.to_string().as_str()), ("guard", "2027-03-08"));
    let lasts = guard.rules.lasts.map_or(0, |days| i32::from(days.days()));
    assert_eq!(guard.days(), lasts, "its usual length from the fitting");
    assert!(lasts > 8, "the review is within it");
    assert_eq!(plan.days.first().map(|day| day.date), Some(guard.first));
}

#[test]
fn an_override_shows_in_the_record_and_not_on_the_page() {
    let case =
        format!("{CASE}overrides:\n  - phase: irritable\n    lasts: 5 weeks\n    because: slow to settle last year\n")
            .replace("2027-03-29", "2027-03-22");
    let (admitted, plan) = planned(&case);
    assert_eq!(plan.phases[0].days(), 35);
    let made =
        WORKSHOP.guide(&[(admitted.clone(), plan.clone())]).unwrap_or_else(|findings| panic!("{}", text(&findings)));
    let record = serde_json::to_string(&made.record).expect("JSON");
    assert!(record.contains("slow to settle last year") && record.contains("\"instead-of\":\"4 weeks\""));
    let sheet =
        palmleaf::words::localise(&WORKSHOP.words, &guide(&[(admitted.clone(), plan.clone())])).expect("a sheet");
    assert!(!sheet.data.to_string().contains("slow to settle"));
}

const LIGAMENT: &str = "palmleaf: 1\nhand: right\ncondition: thumb-ucl-acute\northosis: hand-thumb-spica\nfitted: 2027-03-01\nreview: 2027-04-12\nlanguage: en\n";

#[test]
fn a_rule_of_safety_is_broken_only_with_the_risk_accepted() {
    let daring = [
        "  - phase: heal\n    lasts: 2 weeks\n    because: trial\n",
        "  - phase: heal\n    wear: tasks\n    because: trial\n",
        "  - break_in: by-day\n    because: trial\n",
        "  - wears: [{times: 2, each: 30 min}]\n    because: trial\n",
        "  - exercise: thumb-to-fingertips\n    use: add\n    because: trial\n",
        "  - mark_limit: 2 h\n    because: trial\n",
    ];
    let first = WORKSHOP.library.conditions[&"thumb-ucl-acute".parse().expect("an id")].phases[0].id.to_string();
    for change in daring {
        let change = change.replace("phase: heal", &format!("phase: {first}"));
        let refused = format!("{LIGAMENT}overrides:\n{change}");
        assert_eq!(codes(&refused), ["plan/safety-override"], "{refused}");
        let accepted = format!("{refused}    accept_risk: true\n");
        let (_, plan) = planned(&accepted);
        let line = plan
            .rules
            .iter()
            .find(|rule| rule.risk_accepted)
            .unwrap_or_else(|| panic!("no risk in the record: {accepted}"));
        assert_eq!(line.because.as_ref().map(|reason| reason.as_str()), Some("trial"));
    }
}

#[test]
fn a_stricter_value_needs_no_risk() {
    let careful = [
        "  - mark_limit: 10 min\n    because: tender skin\n",
        "  - wears: [{times: 2, each: 15 min}, {times: 2, each: 30 min}, {times: 2, each: 60 min}, {times: 2, each: 2 h}, {times: 2, each: 3 h}]\n    because: tender skin\n",
        "  - exercise: finger-fist-open\n    use: leave-out\n    because: sore knuckles\n",
        "  - exercise: finger-fist-open\n    repetitions: 3\n    because: tires quickly\n",
    ];
    for change in careful {
        planned(&format!("{CASE}overrides:\n{change}"));
    }
}

#[test]
fn somebody_who_works_nights_has_a_day_like_any_other() {
    let case = format!("{CASE}day: {{up: \"15:00\", bed: \"07:00\"}}\nfactors: [night-work]\n");
    let (_, plan) = planned(&case);
    let full = plan
        .days
        .iter()
        .find(|day| day.kind == DayKind::On && day.date.to_string() == "2027-03-08")
        .expect("a day of full wear");
    for (at, _) in &full.sessions {
        let minute = at.minutes();
        assert!(!(7 * 60..15 * 60).contains(&minute), "a session at {at} wakes the sleeper");
    }
}

/// Of two factors each number comes from the stricter one: no pair loosens what either alone asks for.
#[test]
fn of_two_factors_the_stricter_one_gives_each_number() {
    let library = &WORKSHOP.library;
    let with = |factors: &str| planned(&format!("{CASE}factors: [{factors}]\n"));
    let names: Vec<String> =
        library.factors.iter().filter(|(_, factor)| factor.excludes.is_empty()).map(|(id, _)| id.to_string()).collect();
    assert!(names.len() >= 20, "{} factors", names.len());
    let alone: Vec<_> = names.iter().map(|name| with(name)).collect();
    for (index, one) in names.iter().enumerate() {
        for (other_index, other) in names.iter().enumerate().skip(index + 1) {
            let (case, plan) = with(&format!("{one}, {other}"));
            for (single, single_plan) in [&alone[index], &alone[other_index]] {
                let pair = format!("{one} with {other}");
                assert!(plan.skin.mark_limit.value <= single_plan.skin.mark_limit.value, "{pair}");
                assert!(plan.skin.checks >= single_plan.skin.checks, "{pair}");
                assert!(case.case().print() >= single.case().print(), "{pair}");
                assert!(plan.break_in.days() >= single_plan.break_in.days(), "{pair}");
                let count = |plan: &palmleaf::plan::Plan| plan.programmes[0].exercises.len();
                assert!(count(&plan) <= count(single_plan), "{pair}");
                assert!(plan.end() >= single_plan.end(), "{pair}");
            }
        }
    }
}

/// Two conditions in one hand: each day is worn at least as much as either alone would ask.
#[test]
fn two_conditions_are_worn_for_what_the_stricter_asks() {
    let one = CASE.to_owned();
    let other = CASE.replace("condition: de-quervain", "condition: thumb-cmc-osteoarthritis");
    let both = format!("{CASE}other_conditions:\n  - condition: thumb-cmc-osteoarthritis\n");
    let ((_, one), (_, other), (_, both)) = (planned(&one), planned(&other), planned(&both));
    let built = |plan: &palmleaf::plan::Plan| plan.break_in.days();
    let from = usize::from(built(&one).max(built(&other)).max(built(&both))) + 1;
    for offset in from..one.days.len().min(other.days.len()) {
        let worn = |plan: &palmleaf::plan::Plan| plan.days[offset].worn_minutes();
        // Each exercise and wash without the orthosis costs minutes; a tenth of the day covers them.
        assert!(worn(&both) + 144 >= worn(&one).max(worn(&other)), "{}", both.days[offset].date);
    }
    for phase in &both.phases {
        for (single, plan) in [("de-quervain", &one), ("thumb-cmc-osteoarthritis", &other)] {
            for known in plan.phases.iter().filter(|known| known.holds(phase.first)) {
                assert!(phase.rules.activities.mass <= known.rules.activities.mass, "{single}: {}", phase.id);
                assert!(phase.rules.exercises.most <= known.rules.exercises.most, "{single}: {}", phase.id);
                assert!(phase.rules.washing >= known.rules.washing, "{single}: {}", phase.id);
            }
        }
    }
}

/// A surgeon's protocol gives the numbers: the phase lasts as it says, and the piece is set as it says.
#[test]
fn a_protocol_gives_the_length_and_the_angle() {
    let case = case_for("flexor-zone-two-repair", "dorsal-block-long");
    let (admitted, plan) = planned(&case);
    let rules = &admitted.case().conditions[0];
    let (name, set) = rules.protocol.as_ref().expect("a protocol");
    assert_eq!(name, "North Quay protocol");
    assert!(!set.is_empty());
    let line = plan.rules.iter().find(|rule| rule.subject.contains("set by the protocol")).expect("a line");
    assert!(line.subject.contains("North Quay"), "{}", line.subject);
    let shorter = case.replacen("lasts: 8 weeks", "lasts: 5 weeks", 1).replacen("lasts: 56 days", "lasts: 5 weeks", 1);
    let (_, shorter) = planned(&shorter.replace("review: 2027-03-29", "review: 2027-03-02"));
    let (_, longer) = planned(&case.replace("review: 2027-03-29", "review: 2027-03-02"));
    assert!(shorter.phases[0].days() < longer.phases[0].days());
}

/// Both hands: each has its own plan, and nobody is told to use the other hand.
#[test]
fn both_hands_have_a_plan_each_and_no_other_hand() {
    let case = format!(
        "{CASE}activities: [turn-key, lift-pan, brush-teeth]\nother_hand:\n  condition: thumb-cmc-osteoarthritis\n  orthosis: short-cmc\n"
    );
    let judged = judge(&case).unwrap_or_else(|findings| panic!("{}", text(&findings)));
    assert_eq!(judged.hands().count(), 2);
    let sides: Vec<_> = judged.hands().map(|hand| hand.case.file.hand).collect();
    assert_ne!(sides[0], sides[1]);
    let hands = judged.plans().unwrap_or_else(|findings| panic!("{}", text(&findings)));
    for (admitted, plan) in &hands {
        for advice in &plan.activities {
            let activity = &WORKSHOP.library.activities[&advice.id];
            let needs_other = |way: &palmleaf::ids::MessageId| {
                activity.adaptations.iter().any(|known| known.id == *way && known.other_hand)
            };
            assert!(advice.phases.iter().flat_map(|phase| &phase.ways).all(|way| !needs_other(way)), "{}", advice.id);
        }
        assert_eq!(plan.donning.value, admitted.case().orthosis.one_handed);
    }
    let made = WORKSHOP.guide(&hands).unwrap_or_else(|findings| panic!("{}", text(&findings)));
    assert_eq!(made.record.hands.len(), 2);
}

/// A stiff joint is stretched for the dose and not longer, and breaking in never goes beyond it.
#[test]
fn a_stretch_is_worn_for_its_dose() {
    let case = case_for("pip-flexion-contracture", "spring-finger-extension");
    let (_, plan) = planned(&case);
    let dose = plan.phases[0].rules.stretch.clone().expect("a dose");
    for step in &plan.break_in.steps {
        assert!(step.minutes() <= dose.minutes() && step.each <= dose.each);
    }
    let whole: Vec<_> = plan.days.iter().filter(|day| day.kind == DayKind::Stretch).collect();
    assert!(whole.len() > 7);
    for day in &whole {
        assert_eq!(day.worn_minutes(), dose.minutes(), "{}", day.date);
    }
}
