//! `palmleaf teach questions`.

use clap::Args;
use clap::builder::TypedValueParser as _;
use serde_json::{Value, json};

use super::chart::paper_word;
use super::teacher::{Teacher, Where, teach};
use crate::case::Paper;
use crate::checks::{Fit, Grade, VerdictLine, offered};
use crate::choose::Ranked;
use crate::cli::Ended;
use crate::cli::args::{Cache, words};
use crate::cli::terminal::Terminal;
use crate::diag::{Code, Diagnostic, Findings};
use crate::document::{Arg, Message};
use crate::study::{Group, Place, QuizQuestion, Standing, quiz, readable, standing};

#[derive(Args, Debug)]
pub struct QuestionsArgs {
    /// The same number gives the same questions, byte for byte.
    #[arg(long, value_name = "N", default_value_t = 1)]
    pub seed: u64,
    /// How many questions.
    #[arg(long, value_name = "N", default_value_t = 8, value_parser = clap::value_parser!(u16).range(1..=60))]
    pub count: u16,
    /// Only conditions of a part of the limb.
    #[arg(long, value_parser = words!(Group))]
    pub group: Option<Group>,
    #[arg(long, value_parser = words!(Paper), default_value = "a4")]
    pub paper: Paper,
    #[command(flatten)]
    pub at: Where,
}

/// Invented people: so many messages `study-person-a`, `-b` … there are.
const PEOPLE: &[char] = &['a', 'b', 'c', 'd', 'e', 'f', 'g', 'h', 'i', 'j', 'k', 'l'];

pub fn run(args: &QuestionsArgs, terminal: &Terminal) -> Ended {
    teach(&args.at, Cache { no_cache: true }, terminal, |teacher| {
        let questions = quiz(&teacher.workshop.library, args.group, args.seed, usize::from(args.count));
        if questions.is_empty() {
            let message = "no case of this group has a best orthosis and three near misses";
            return Err(Diagnostic::outside(Code::CHOOSE_ASK, message)
                .help("ask for another group, or for none")
                .into());
        }
        let group = args.group.map(|group| format!("-{group}")).unwrap_or_default();
        let name = |what: &str| format!("{what}{group}-{}.pdf", args.seed);
        let asked = page(teacher, args, &questions, false)?;
        let key = page(teacher, args, &questions, true)?;
        Ok(vec![
            (name("questions"), teacher.workshop.quiz(asked)?.undated_pdf()?),
            (name("answers"), teacher.workshop.quiz(key)?.undated_pdf()?),
        ])
    })
}

fn page(teacher: &Teacher<'_>, args: &QuestionsArgs, asked: &[QuizQuestion], key: bool) -> Result<Value, Findings> {
    let title = teacher.word(if key { "study-quiz-key-title" } else { "study-quiz-title" })?;
    let seed = Message::new("study-quiz-seed")
        .with("seed", Arg::Literal(args.seed.to_string()))
        .with("group", Arg::Keyword(args.group.map_or("all", Group::word)));
    let rows = asked.iter().map(|one| question(teacher, one, key)).collect::<Result<Vec<Value>, Diagnostic>>()?;
    Ok(json!({
        "title": title,
        "seed": teacher.say(&seed)?,
        "paper": paper_word(args.paper),
        "about": teacher.word(if key { "study-quiz-key-about" } else { "study-quiz-about" })?,
        "answer": teacher.word("study-quiz-answer")?,
        "caution": teacher.word("study-caution")?,
        "key": key,
        "questions": rows,
    }))
}

/// The letter of a choice.
fn letter(number: usize) -> String {
    u8::try_from(number).map_or_else(|_| number.to_string(), |number| char::from(b'A' + number).to_string())
}

fn question(teacher: &Teacher<'_>, asked: &QuizQuestion, key: bool) -> Result<Value, Diagnostic> {
    let best = asked.choices.get(asked.right);
    let choices = asked
        .choices
        .iter()
        .enumerate()
        .map(|(number, one)| {
            let mut row = choice(teacher, number, one)?;
            if let (true, Some(best)) = (key, best) {
                row["reasons"] = json!(reasons(teacher, best, one)?);
                row["verdict"] = json!(verdict(teacher, standing(best, one))?);
                row["best"] = json!(number == asked.right);
            }
            Ok(row)
        })
        .collect::<Result<Vec<Value>, Diagnostic>>()?;
    let phase = Teacher::phase(&asked.phase.id);
    Ok(json!({
        "scene": scene(teacher, asked)?,
        "phase": teacher.say(&Message::new("study-chart-phase").with("phase", Arg::Literal(phase)))?,
        "condition": teacher.condition(&asked.condition)?,
        "right": if key { Some(letter(asked.right)) } else { None },
        "choices": choices,
    }))
}

/// The invented person, what was found, and what matters: two lines.
fn scene(teacher: &Teacher<'_>, asked: &QuizQuestion) -> Result<Vec<String>, Diagnostic> {
    let person = PEOPLE.get(asked.person % PEOPLE.len()).copied().unwrap_or('a');
    let finger = asked.finger.map_or("none", |finger| finger.word());
    let who = Message::new("study-scene-who")
        .with("person", Message::new(format!("study-person-{person}")))
        .with("hand", Arg::Keyword(asked.side.word()))
        .with("finger", Arg::Keyword(finger))
        .with("condition", Message::new(format!("condition-{}-term", asked.condition)))
        .with("phase", Arg::Literal(Teacher::phase(&asked.phase.id)));
    let mut what: Vec<String> = Vec::new();
    for finding in &asked.findings {
        let text = format!("{} {} {}", finding.joint, finding.motion, finding.angle);
        what.push(teacher.say(&Message::new("study-scene-found").with("found", Arg::Literal(readable(&text))))?);
    }
    let needs = asked.needs.iter().filter_map(|id| teacher.workshop.library.needs.get(id));
    let needs: Vec<Message> =
        needs.map(|need| Message::new("study-scene-need").with("need", Arg::Literal(need.name.clone()))).collect();
    what.push(teacher.say(&Message::new("study-scene-needs").with("needs", Arg::List(needs)))?);
    Ok(vec![teacher.say(&who)?, what.join(" ")])
}

/// A choice: its name, its joints as it would be set, and what else can matter.
fn choice(teacher: &Teacher<'_>, number: usize, one: &Ranked) -> Result<Value, Diagnostic> {
    let orthosis = &one.orthosis;
    let mut rows: Vec<_> = orthosis.joints.iter().collect();
    rows.sort_by_key(|(name, _)| name.joints().first().copied());
    let mut joints: Vec<String> = Vec::new();
    let mut free: Vec<Message> = Vec::new();
    for (name, hold) in rows {
        let joint = Message::new(format!("study-joint-{name}"));
        if hold.acts() {
            let offered = Arg::Literal(readable(&offered(hold)));
            joints.push(teacher.say(&Message::new("study-card-holds").with("joint", joint).with("offered", offered))?);
        } else {
            free.push(joint);
        }
    }
    if let Some(segment) = orthosis.acts_on {
        let segment = Arg::Literal(segment.word().replace('-', " "));
        joints.push(teacher.say(&Message::new("study-card-presses").with("segment", segment))?);
    }
    if !free.is_empty() {
        joints.push(teacher.say(&Message::new("study-card-free").with("joints", Arg::List(free)))?);
    }
    let contains: Vec<&str> = orthosis.contains.iter().map(|one| one.word()).collect();
    let contains = if contains.is_empty() { "none listed".to_owned() } else { contains.join(", ") };
    let traits = Message::new("study-choice-traits")
        .with("material", Arg::Literal(orthosis.material.word().replace('-', " ")))
        .with("made", Arg::Literal(orthosis.made.word().replace('-', " ")))
        .with("bulk", Arg::Literal(orthosis.bulk.to_string()))
        .with("most", Arg::Literal("3".to_owned()))
        .with("straps", orthosis.straps.len() as i64)
        .with("water", Arg::Literal(orthosis.water.word().replace('-', " ")))
        .with("glove", Arg::Literal(orthosis.glove.word().replace('-', " ")))
        .with("contains", Arg::Literal(contains));
    Ok(json!({
        "letter": letter(number),
        "name": teacher.orthosis(&one.id)?,
        "joints": joints,
        "traits": teacher.say(&traits)?,
    }))
}

fn verdict(teacher: &Teacher<'_>, standing: Standing) -> Result<String, Diagnostic> {
    teacher.word(match standing {
        Standing::Best => "study-standing-best",
        Standing::MoreRemarks => "study-standing-remarks",
        Standing::AgainstNeed => "study-standing-against",
        Standing::UnmetNeed => "study-standing-unmet",
        Standing::Bulkier => "study-standing-bulkier",
        Standing::DoesNotFit => "study-fit-does-not-fit",
        Standing::Unsafe => "study-fit-unsafe",
    })
}

/// Why: joint by joint with what is wanted and what is offered, then needs. What fails comes first; of what is met only
/// the best choice shows all.
fn reasons(teacher: &Teacher<'_>, best: &Ranked, one: &Ranked) -> Result<Vec<Value>, Diagnostic> {
    let is_best = one.id == best.id;
    let wanted = |line: &&VerdictLine| match one.verdict.fit {
        Fit::DoesNotFit | Fit::Unsafe => line.result > Grade::Remark,
        Fit::Fits | Fit::FitsWithRemarks => is_best || line.result > Grade::Met,
    };
    let mut rows: Vec<Value> = Vec::new();
    let mut said: Vec<(Place, &str, &str)> = Vec::new();
    let mut lines: Vec<&VerdictLine> = one.verdict.lines.iter().filter(wanted).collect();
    lines.sort_by_key(|line| std::cmp::Reverse(line.result));
    for line in lines {
        // Four fingers that say the same say it once.
        let sentence = (Place::of(line.joint), line.wanted.as_str(), line.because.as_str());
        if said.contains(&sentence) {
            continue;
        }
        said.push(sentence);
        rows.push(json!({
            "result": line.result.word(),
            "word": teacher.word(format!("study-grade-{}", line.result))?,
            "place": teacher.word(format!("study-place-{}", Place::of(line.joint)))?,
            "wanted": readable(&line.wanted),
            "offered": readable(&line.offered),
            "because": readable(&line.because),
            "source": teacher.cite([&line.basis]),
        }));
    }
    if one.order.safety == Fit::Fits {
        for need in &one.needs {
            let rule = teacher.workshop.library.needs.get(&need.id);
            let (result, key, text) = match (&need.against, &need.met) {
                (Some(text), _) => (Grade::Remark, "study-need-against", text.clone()),
                (None, Some(text)) => (Grade::Met, "study-need-met", text.clone()),
                // A need that only rules something out is kept by whatever does not have it.
                (None, None) if rule.is_some_and(|rule| rule.prefers.is_empty()) => {
                    (Grade::Met, "study-need-kept", rule.map(|rule| rule.name.clone()).unwrap_or_default())
                }
                (None, None) => {
                    (Grade::Remark, "study-need-unmet", rule.map(|rule| rule.name.clone()).unwrap_or_default())
                }
            };
            rows.push(json!({
                "result": result.word(),
                "word": teacher.word(key)?,
                "place": teacher.word("study-place-need")?,
                "wanted": text,
                "offered": "",
                "because": rule.map(|rule| rule.because.clone()),
                "source": rule.map(|rule| teacher.cite([&rule.source])),
            }));
        }
        let bulk = Message::new("study-quiz-bulk").with("bulk", Arg::Literal(one.order.bulk.to_string()));
        rows.push(json!({
            "result": if one.order.bulk > best.order.bulk { Grade::Remark.word() } else { Grade::Met.word() },
            "word": "",
            "place": teacher.say(&bulk)?,
            "wanted": "",
            "offered": "",
            "because": "",
            "source": "",
        }));
    }
    Ok(rows)
}
