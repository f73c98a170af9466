//! `palmleaf teach cards`.

use std::collections::BTreeMap;

use clap::Args;
use clap::builder::TypedValueParser as _;
use serde_json::{Value, json};

use super::chart::paper_word;
use super::teacher::{Teacher, Where, all_known, teach};
use crate::body::{Build, Finger, Side};
use crate::case::Paper;
use crate::cli::Ended;
use crate::cli::args::{Cache, words};
use crate::cli::terminal::Terminal;
use crate::diag::{Code, Diagnostic, Findings};
use crate::document::{Arg, Message};
use crate::picture::asks::Sitter;

use crate::picture::plate::Drawing;
use crate::picture::scene::{LabelText, Picture, Request};
use crate::picture::standalone::{Line, lettered};
use crate::source::choice;
use crate::study::{Card, Group, Picked, cards};

choice! {
    /// The edge that the printer turns the paper over.
    pub enum Flip ("edge") {
        Long = "long",
        Short = "short",
    }
}

#[derive(Args, Debug)]
pub struct CardsArgs {
    /// Cards about the conditions of a part of the limb and what is worn there.
    #[arg(long, value_parser = words!(Group))]
    pub group: Option<Group>,
    /// Cards about these conditions and the orthoses that fit them; ids divided by commas.
    #[arg(long, value_name = "ID", value_delimiter = ',')]
    pub condition: Vec<String>,
    /// Cards about these orthoses; ids divided by commas.
    #[arg(long, value_name = "ID", value_delimiter = ',')]
    pub orthosis: Vec<String>,
    /// The edge that the printer turns the paper over when it prints both sides.
    #[arg(long, value_parser = words!(Flip), default_value = "long")]
    pub flip: Flip,
    #[arg(long, value_parser = words!(Paper), default_value = "a4")]
    pub paper: Paper,
    /// The hand that is drawn.
    #[arg(long, value_parser = words!(Side), default_value = "right")]
    pub side: Side,
    /// The finger that is drawn, for what concerns one finger.
    #[arg(long, value_parser = words!(Finger), default_value = "index")]
    pub finger: Finger,
    #[command(flatten)]
    pub cache: Cache,
    #[command(flatten)]
    pub at: Where,
}

/// The widest and highest that a picture may be on a card, mm.
const PICTURE: (u16, u16) = (70, 38);
/// Height of the mark beside a structure whose name is asked for, mm.
const MARK: f64 = 4.5;

pub fn run(args: &CardsArgs, terminal: &Terminal) -> Ended {
    teach(&args.at, args.cache, terminal, |teacher| {
        let library = &teacher.workshop.library;
        let conditions = all_known("condition", &args.condition, &library.conditions)?;
        let orthoses = all_known("orthosis", &args.orthosis, &library.orthoses)?;
        let (width, height) = PICTURE;
        let sitter = Sitter { side: args.side, finger: args.finger, build: Build::Adult, width, height };
        let picked = Picked::of(library, args.group, &conditions, &orthoses, args.finger);
        let cards = cards(library, &picked, &sitter);
        let said = cards.iter().map(|card| said(teacher, card)).collect::<Result<Vec<Said>, Diagnostic>>()?;
        let deck = deck(teacher, args, &cards, &said)?;
        let pdf = teacher.workshop.deck(deck)?.undated_pdf()?;
        Ok(vec![("cards.pdf".to_owned(), pdf), ("cards.csv".to_owned(), csv(&cards, &said)?)])
    })
}

/// A card in words.
struct Said {
    topic: String,
    question: String,
    answer: Vec<String>,
    source: String,
}

fn said(teacher: &Teacher<'_>, card: &Card) -> Result<Said, Diagnostic> {
    Ok(Said {
        topic: teacher.word(format!("study-topic-{}", card.topic))?,
        question: teacher.say(&card.question)?,
        answer: card.answer.iter().map(|line| teacher.say(line)).collect::<Result<_, _>>()?,
        source: teacher.cite(&card.sources),
    })
}

/// Cards as comma-separated values (RFC 4180), one a line, UTF-8. A picture is in the PDF only; the topic tells.
fn csv(cards: &[Card], said: &[Said]) -> Result<Vec<u8>, Findings> {
    let mut writer = csv::WriterBuilder::new().terminator(csv::Terminator::CRLF).from_writer(Vec::new());
    let fault = |why: String| Diagnostic::outside(Code::OUTPUT_UNWRITABLE, format!("cards.csv cannot be made: {why}"));
    writer.write_record(["question", "answer", "topic", "source", "id"]).map_err(|why| fault(why.to_string()))?;
    for (card, said) in cards.iter().zip(said) {
        let answer = said.answer.join("\n");
        let row = [&said.question, &answer, &said.topic, &said.source, &card.id];
        writer.write_record(row).map_err(|why| fault(why.to_string()))?;
    }
    Ok(writer.into_inner().map_err(|why| fault(why.to_string()))?)
}

fn deck(teacher: &Teacher<'_>, args: &CardsArgs, cards: &[Card], said: &[Said]) -> Result<Value, Findings> {
    let requests: BTreeMap<String, Request> =
        cards.iter().filter_map(|card| card.picture.as_ref()).map(|request| (request.key(), request.clone())).collect();
    let drawn = teacher.workshop.album.all(&requests).map_err(|why| Diagnostic::undrawn(&why))?;
    let rows: Vec<Value> = cards
        .iter()
        .zip(said)
        .enumerate()
        .map(|(number, (card, said))| {
            let picture = card.picture.as_ref().and_then(|request| drawn.get(&request.key()));
            json!({
                "number": (number + 1).to_string(),
                "id": card.id,
                "topic": said.topic,
                "question": said.question,
                "answer": said.answer,
                "source": said.source,
                "picture": picture.map(|picture| shown(picture)),
            })
        })
        .collect();
    let flip = Message::new(format!("study-cards-flip-{}", args.flip));
    let print = Message::new("study-cards-print").with("flip", flip).with("percent", Arg::Literal("100 %".to_owned()));
    Ok(json!({
        "title": teacher.word("study-cards-title")?,
        "paper": paper_word(args.paper),
        "flip": args.flip.word(),
        "print": teacher.say(&print)?,
        "back": teacher.word("study-cards-back")?,
        "alt": teacher.word("study-cards-alt")?,
        "source": teacher.word("study-cards-source")?,
        "caution": teacher.word("study-caution")?,
        "cards": rows,
    }))
}

/// A picture that gives no name away: a structure is marked, not named.
fn shown(picture: &Picture) -> Value {
    let svg = lettered(picture, &picture.drawing.svg(""), "Palmleaf Sans", |text| match text {
        LabelText::Structure(_) => vec![Line { text: "?".to_owned(), size: MARK, bold: true }],
        LabelText::Letter(_) | LabelText::Number(_) => Vec::new(),
    });
    json!({
        "svg": svg,
        "width": picture.drawing.width / Drawing::UNIT,
        "height": picture.drawing.height / Drawing::UNIT,
    })
}
