//! `palmleaf teach chart`.

use clap::Args;
use clap::builder::TypedValueParser as _;
use serde_json::{Value, json};

use super::teacher::{Teacher, Where, known, teach};
use crate::body::Finger;
use crate::case::Paper;
use crate::checks::{Fit, Grade};
use crate::choose::{Ask, rank};
use crate::cli::Ended;
use crate::cli::args::{Cache, words};
use crate::cli::terminal::Terminal;
use crate::content::{Condition, Need, Phase, Regime, unknown};
use crate::diag::{Code, Diagnostic, Findings};
use crate::document::{Arg, Message};
use crate::ids::ConditionId;
use crate::study::{Cell, Chart, Group, Head, Place, groups, of_group, of_ranking, readable};

#[derive(Args, Debug)]
#[group(id = "what", required = true, multiple = false, args = ["group", "condition"])]
pub struct ChartArgs {
    /// All conditions of a part of the limb, by the orthoses that fit at least one of them as it begins.
    #[arg(long, value_parser = words!(Group))]
    pub group: Option<Group>,
    /// One condition: every orthosis, joint by joint.
    #[arg(long, value_name = "ID")]
    pub condition: Option<String>,
    /// The phase of the condition; the first one in which an orthosis is worn when not said.
    #[arg(long, value_name = "ID", requires = "condition")]
    pub phase: Option<String>,
    /// The finger, for what concerns one finger.
    #[arg(long, value_parser = words!(Finger), default_value = "index")]
    pub finger: Finger,
    #[arg(long, value_parser = words!(Paper), default_value = "a4")]
    pub paper: Paper,
    #[command(flatten)]
    pub at: Where,
}

pub fn run(args: &ChartArgs, terminal: &Terminal) -> Ended {
    teach(&args.at, Cache { no_cache: true }, terminal, |teacher| {
        let (name, page) = match (&args.group, &args.condition) {
            (Some(group), _) => (format!("chart-{group}.pdf"), of(teacher, *group, args)?),
            (None, Some(text)) => {
                let library = &teacher.workshop.library;
                let id: ConditionId = known("condition", text, &library.conditions)?;
                let phase = args.phase.as_ref().map(|phase| format!("-{phase}")).unwrap_or_default();
                (format!("chart-{id}{phase}.pdf"), of_condition(teacher, &id, args)?)
            }
            (None, None) => return Err(Findings::default()),
        };
        Ok(vec![(name, teacher.workshop.chart(page)?.undated_pdf()?)])
    })
}

fn of(teacher: &Teacher<'_>, group: Group, args: &ChartArgs) -> Result<Value, Findings> {
    let library = &teacher.workshop.library;
    let conditions: Vec<(&ConditionId, &Condition)> =
        library.conditions.iter().filter(|(_, condition)| groups(library, condition).contains(&group)).collect();
    let (chart, none) = of_group(library, &conditions, args.finger);
    let title = teacher.word(format!("study-chart-title-{group}"))?;
    let mut about = vec![teacher.word("study-chart-about-group")?];
    if none > 0 {
        about.push(teacher.say(&Message::new("study-chart-none").with("count", none as i64))?);
    }
    page(teacher, &chart, &title, &about, args.paper)
}

fn of_condition(teacher: &Teacher<'_>, id: &ConditionId, args: &ChartArgs) -> Result<Value, Findings> {
    let library = &teacher.workshop.library;
    let Some(condition) = library.conditions.get(id) else { return Err(Findings::default()) };
    let finger = condition.needs_finger().then_some(condition.finger.unwrap_or(args.finger));
    let own = finger.map_or_else(|| condition.clone(), |finger| condition.for_finger(finger));
    let phase = worn(&own, args.phase.as_deref())?;
    let ranked = rank(library, Ask { phase, finger, findings: &[], factors: &[], needs: &[] });
    let name = teacher.condition(id)?;
    let phase_name = Teacher::phase(&phase.id);
    let title = Message::new("study-chart-title-condition").with("condition", Arg::Literal(name));
    let mut about = vec![
        teacher.say(&Message::new("study-chart-phase").with("phase", Arg::Literal(phase_name)))?,
        teacher.word("study-chart-about-condition")?,
    ];
    if let Some(protocol) = &condition.protocol {
        let because = Arg::Literal(protocol.because.clone());
        about.push(teacher.say(&Message::new("study-chart-protocol").with("because", because))?);
    }
    page(teacher, &of_ranking(phase, &ranked), &teacher.say(&title)?, &about, args.paper)
}

/// The phase asked for, or the first one in which an orthosis is worn.
fn worn<'c>(condition: &'c Condition, wanted: Option<&str>) -> Result<&'c Phase, Diagnostic> {
    let worn = || condition.phases.iter().filter(|phase| phase.wear != Regime::Off);
    let found = worn().find(|phase| wanted.is_none_or(|wanted| phase.id.as_str() == wanted));
    found.ok_or_else(|| {
        let (message, help) =
            unknown("phase with an orthosis", wanted.unwrap_or_default(), worn().map(|phase| phase.id.as_str()));
        Diagnostic::outside(Code::ID_UNKNOWN, message).help(help)
    })
}

/// Room on the page, mm: between the edges and the table, for the heads of rows, and at least for each column.
const MARGIN: f64 = 12.0;
const HEADS: f64 = 56.0;
const NARROWEST: f64 = 27.0;

/// A chart in words, in parts that are as wide as the paper.
///
/// # Errors
/// When a message is missing.
pub fn page(
    teacher: &Teacher<'_>,
    chart: &Chart,
    title: &str,
    about: &[String],
    paper: Paper,
) -> Result<Value, Findings> {
    let across = match paper {
        Paper::A4 => 297.0,
        Paper::Letter => 279.4,
    };
    let count = chart.columns.len().max(1);
    let fit = (((across - 2.0 * MARGIN - HEADS) / NARROWEST) as usize).max(1);
    let parts = count.div_ceil(fit);
    let each = count.div_ceil(parts);
    let mut sets = Vec::new();
    for (number, heads) in chart.columns.chunks(each).enumerate() {
        let from = number * each;
        let named = (parts > 1).then(|| {
            teacher.say(
                &Message::new("study-chart-part")
                    .with("from", from as i64 + 1)
                    .with("to", (from + heads.len()) as i64)
                    .with("all", count as i64),
            )
        });
        let columns = heads.iter().map(|one| head(teacher, one)).collect::<Result<Vec<Value>, _>>()?;
        let mut rows = Vec::new();
        for row in &chart.rows {
            let cells = row.cells.iter().skip(from).take(heads.len());
            let cells = cells.map(|one| cell(teacher, one)).collect::<Result<Vec<Value>, _>>()?;
            rows.push(json!({"head": head(teacher, &row.head)?, "cells": cells}));
        }
        sets.push(json!({"part": named.transpose()?, "columns": columns, "rows": rows}));
    }
    let marks = Grade::ALL
        .iter()
        .map(|grade| Ok(json!({"result": grade.word(), "word": grade_word(teacher, *grade)?})))
        .collect::<Result<Vec<Value>, Diagnostic>>()?;
    let lettered = chart.rows.iter().flat_map(|row| &row.cells).flat_map(|cell| &cell.marks);
    let places: std::collections::BTreeSet<Place> = lettered.filter_map(|(place, _)| *place).collect();
    let letters = places
        .iter()
        .map(|place| Ok(json!({"letter": place.letter(), "word": place_word(teacher, *place)?})))
        .collect::<Result<Vec<Value>, Diagnostic>>()?;
    Ok(json!({
        "title": title,
        "about": about,
        "paper": paper_word(paper),
        "margin": MARGIN,
        "heads": HEADS,
        "corner": teacher.word(if letters.is_empty() { "study-chart-orthosis" } else { "study-chart-condition" })?,
        "parts": sets,
        "marks": marks,
        "letters": letters,
        "key": teacher.word("study-chart-key")?,
        "caution": teacher.word("study-caution")?,
    }))
}

/// What the typesetter calls a paper.
pub fn paper_word(paper: Paper) -> &'static str {
    match paper {
        Paper::A4 => "a4",
        Paper::Letter => "us-letter",
    }
}

fn grade_word(teacher: &Teacher<'_>, grade: Grade) -> Result<String, Diagnostic> {
    teacher.word(format!("study-grade-{grade}"))
}

fn place_word(teacher: &Teacher<'_>, place: Place) -> Result<String, Diagnostic> {
    teacher.word(format!("study-place-{place}"))
}

fn fit_word(teacher: &Teacher<'_>, fit: Fit) -> Result<String, Diagnostic> {
    teacher.word(format!("study-fit-{fit}"))
}

/// A head of a row or a column: its name, its verdict, and lines below.
fn head(teacher: &Teacher<'_>, head: &Head) -> Result<Value, Diagnostic> {
    let (name, fit, notes) = match head {
        Head::Orthosis { id, place, fit, notes } => {
            let name = teacher.orthosis(id)?;
            let name = place.map_or_else(|| name.clone(), |place| format!("{place}. {name}"));
            (name, *fit, notes.iter().map(|note| readable(note)).collect())
        }
        Head::Phase { condition, phase, needs, ways, never } => {
            let mut notes = vec![
                teacher.say(&Message::new("study-chart-phase").with("phase", Arg::Literal(Teacher::phase(phase))))?,
            ];
            for need in Need::ALL {
                notes.extend(needs.get(need).map(|places| letters(teacher, need.word(), places)).transpose()?);
            }
            for (word, places) in [("ways", ways), ("never", never)] {
                if !places.is_empty() {
                    notes.push(letters(teacher, word, places)?);
                }
            }
            (teacher.condition(condition)?, None, notes)
        }
        Head::Joint { name, wanted } => {
            let name = teacher.word(format!("study-joint-{name}"))?;
            (name, None, wanted.iter().map(|text| readable(text)).collect::<Vec<String>>())
        }
        Head::Rest => (teacher.word("study-chart-rest")?, None, vec![teacher.word("study-chart-rest-what")?]),
    };
    let fit_said = fit.map(|fit| fit_word(teacher, fit)).transpose()?;
    Ok(json!({"name": name, "fit": fit_said, "grade": fit.map(of_fit), "notes": notes}))
}

/// Places by their letters, after what is asked of them.
fn letters<'p>(
    teacher: &Teacher<'_>,
    word: &str,
    places: impl IntoIterator<Item = &'p Place>,
) -> Result<String, Diagnostic> {
    let letters: Vec<String> = places.into_iter().map(|place| place.letter().to_string()).collect();
    teacher.say(&Message::new(format!("study-chart-need-{word}")).with("letters", Arg::Literal(letters.join(" "))))
}

/// The mark of a verdict is that of its worst line.
const fn of_fit(fit: Fit) -> &'static str {
    match fit {
        Fit::Fits => Grade::Met.word(),
        Fit::FitsWithRemarks => Grade::Remark.word(),
        Fit::DoesNotFit => Grade::Misfit.word(),
        Fit::Unsafe => Grade::Unsafe.word(),
    }
}

fn cell(teacher: &Teacher<'_>, cell: &Cell) -> Result<Value, Diagnostic> {
    let mark = |(place, grade): &(Option<Place>, Grade)| {
        let word = grade_word(teacher, *grade)?;
        let alt = match place {
            Some(place) => format!("{}: {word}", place_word(teacher, *place)?),
            None => word,
        };
        Ok(json!({"letter": place.map(|place| place.letter()), "result": grade.word(), "alt": alt}))
    };
    let marks = cell.marks.iter().map(mark).collect::<Result<Vec<Value>, Diagnostic>>()?;
    let fit = cell.fit.map(|fit| fit_word(teacher, fit)).transpose()?;
    Ok(json!({"fit": fit, "grade": cell.fit.map(of_fit), "marks": marks, "text": readable(&cell.text)}))
}
