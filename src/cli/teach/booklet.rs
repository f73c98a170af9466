//! `palmleaf teach booklet`.

use std::path::{Path, PathBuf};

use clap::Args;
use serde_json::json;

use super::pictured::{Pictured, Shown, pictured};
use crate::body::{Finger, Side};
use crate::booklet::{self, BookletFile, CaseItem, FactsItem, Item, OrthosisItem};
use crate::case::Paper;
use crate::cli::Ended;
use crate::cli::args::{Cache, Overlay, OwnClinic};
use crate::cli::check::{keeping, refused, workshop_of};
use crate::cli::terminal::Terminal;
use crate::content::PrintSize;
use crate::diag::{Code, Diagnostic, Findings};
use crate::document::{FactsAsk, FactsFor, SheetKind};
use crate::language::Language;
use crate::output::store;
use crate::pipeline::Workshop;
use crate::source::{At, Place, SourceText, Span};
use crate::typeset::{Leaf, Look};
use crate::units::Date;
use crate::words::{self, About};

#[derive(Args, Debug)]
pub struct BookletArgs {
    /// The list of sheets: a YAML file.
    #[arg(value_name = "FILE")]
    pub file: PathBuf,
    /// The file to write; when not said, the name of the list with the ending `.pdf`, in `dist`.
    #[arg(long, short, value_name = "FILE")]
    pub out: Option<PathBuf>,
    #[command(flatten)]
    pub cache: Cache,
    #[command(flatten)]
    pub clinic: OwnClinic,
    #[command(flatten)]
    pub overlay: Overlay,
}

pub fn run(args: &BookletArgs, terminal: &Terminal) -> Ended {
    let workshop = match workshop_of(&args.overlay, &args.clinic, terminal) {
        Ok(workshop) => keeping(workshop, args.cache),
        Err(ended) => return ended,
    };
    match bind(&workshop, args) {
        Ok(file) if terminal.is_json() => {
            terminal.say_json(&json!({"files": [file], "findings": []}));
            Ended::Well
        }
        Ok(file) => {
            terminal.say(&file);
            Ended::Well
        }
        Err(findings) => refused(&findings, terminal),
    }
}

fn bind(workshop: &Workshop, args: &BookletArgs) -> Result<String, Findings> {
    let (file, source) = booklet::read(&args.file)?;
    let folder = args.file.parent().unwrap_or_else(|| Path::new(""));
    let pdf = Binder::new(workshop, &file, &source, folder)?.pdf()?;
    let out = args
        .out
        .clone()
        .unwrap_or_else(|| Path::new("dist").join(args.file.file_name().unwrap_or_default()).with_extension("pdf"));
    Ok(store::write_one(&out, pdf)?.display().to_string())
}

/// Everything that the items of a booklet have in common.
struct Binder<'a> {
    workshop: &'a Workshop,
    file: &'a BookletFile,
    source: &'a SourceText,
    folder: &'a Path,
    language: Language,
    print: PrintSize,
    paper: Paper,
}

impl<'a> Binder<'a> {
    fn new(
        workshop: &'a Workshop,
        file: &'a BookletFile,
        source: &'a SourceText,
        folder: &'a Path,
    ) -> Result<Self, Findings> {
        let tag = &file.language;
        let Some(language) = workshop.languages.find(&tag.value) else {
            let place = Place { source: source.clone(), span: tag.span.clone() };
            let message = format!("there are no words in the language `{}`", tag.value);
            return Err(Diagnostic::error(Code::ID_UNKNOWN, place, message)
                .help(format!("use one of: {}", workshop.languages.tags().join(", ")))
                .into());
        };
        let (print, paper) = (file.print.unwrap_or(PrintSize::Standard), file.paper.unwrap_or(Paper::A4));
        Ok(Self { workshop, file, source, folder, language, print, paper })
    }

    /// The whole booklet.
    ///
    /// # Errors
    /// The faults of all items at once, or what keeps the pages from being set.
    fn pdf(&self) -> Result<Vec<u8>, Findings> {
        let mut findings = Findings::default();
        let mut leaves = Vec::new();
        let mut date = self.file.date;
        for item in &self.file.items.value {
            let made = match item {
                Item::Case(item) => self.case(item).map(|(made, fitted)| {
                    date = self.file.date.or(date.max(Some(fitted)));
                    made
                }),
                Item::Orthosis(item) => self.orthosis(item, date).map(|leaf| vec![leaf]),
                Item::Facts(item) => self.facts(item).map(|leaf| vec![leaf]),
            };
            match made {
                Ok(made) => leaves.extend(made),
                Err(faults) => findings.extend(faults),
            }
        }
        if findings.has_errors() {
            return Err(findings);
        }
        let title = self.file.title.as_str();
        let mut cover = words::bare(&self.workshop.words, &self.language, &self.about(title, date), "booklet-caution")?;
        cover["contents"] = self.plain("booklet-contents")?.into();
        let pages = self.workshop.typesetter.bind(cover, leaves)?;
        Ok(if date.is_some() { pages.pdf()? } else { pages.undated_pdf()? })
    }

    /// Who gives the booklet out: whoever its list names, else the clinic.
    fn by(&self) -> Option<&str> {
        let clinic = self.workshop.clinic().and_then(|clinic| clinic.name());
        self.file.by.as_ref().map(|by| by.as_str()).or(clinic)
    }

    fn about<'t>(&'t self, title: &'t str, date: Option<Date>) -> About<'t> {
        About {
            sheet: "booklet",
            half: false,
            title,
            author: self.by(),
            description: title,
            paper: self.paper,
            print: self.print,
            date,
        }
    }

    fn plain(&self, key: &str) -> Result<String, Diagnostic> {
        self.workshop.words.speaker(&self.language)?.plain(key, &[])
    }

    fn fault(&self, span: &Span, message: String, help: &str) -> Findings {
        let place = Place { source: self.source.clone(), span: span.clone() };
        Diagnostic::error(Code::BOOKLET_ITEM, place, message).help(help).into()
    }

    /// Sheets of a case in the booklet's language, print and paper, and the day of its fitting.
    fn case(&self, item: &CaseItem) -> Result<(Vec<Leaf>, Date), Findings> {
        let mut findings = Findings::default();
        for sheet in item.sheets.iter().filter(|sheet| sheet.value == SheetKind::Phone) {
            let message = "the page for a telephone has no pages to bind".to_owned();
            findings.extend(self.fault(&sheet.span, message, "write `guide`: it says the same on paper"));
        }
        let path = self.folder.join(&item.case.value);
        let own = Path::new(self.source.name()).canonicalize();
        if own.is_ok_and(|own| path.canonicalize().is_ok_and(|path| path == own)) {
            let message = format!("`{}` is this booklet itself, and no case", item.case.value);
            return Err(self.fault(&item.case.span, message, "give a case file"));
        }
        let made = self.workshop.read(&path).and_then(|(mut file, source)| {
            file.language.value = self.language.tag.clone();
            file.print = self.file.print.or(file.print);
            file.paper = Some(self.paper);
            let fitted = file.fitted.value;
            let hands = self.workshop.judge(file, source)?.plans()?;
            let guide = At { value: SheetKind::Guide, span: item.case.span.clone() };
            let wanted = if item.sheets.is_empty() { std::slice::from_ref(&guide) } else { &item.sheets };
            let mut leaves = Vec::new();
            for sheet in wanted.iter().filter(|sheet| sheet.value != SheetKind::Phone) {
                let nothing = || {
                    let message = format!("this case has nothing for the sheet `{}`", sheet.value);
                    self.fault(&sheet.span, message, "leave this sheet out")
                };
                leaves.push(self.workshop.leaf(sheet.value, &hands)?.ok_or_else(nothing)?);
            }
            Ok((leaves, fitted))
        });
        match made {
            Ok(made) if !findings.has_errors() => Ok(made),
            Ok(_) => Err(findings),
            Err(faults) => {
                findings.extend(faults);
                Err(findings)
            }
        }
    }

    /// The fact sheet of a condition.
    fn facts(&self, item: &FactsItem) -> Result<Leaf, Findings> {
        let library = &self.workshop.library;
        let Some(condition) = library.conditions.get(&item.facts.value) else {
            let ids = library.conditions.keys().map(|id| id.as_str());
            let (message, help) = crate::content::unknown("condition", item.facts.value.as_str(), ids);
            return Err(self.fault(&item.facts.span, message, &help));
        };
        let reader = item.r#for.as_ref().map_or(FactsFor::Patients, |reader| reader.value);
        if let Some(students) = item.r#for.as_ref().filter(|reader| reader.value == FactsFor::Students)
            && self.language.entry.tag.as_str() != words::lint::FIRST
        {
            let message = format!("there are no words for students in `{}`", self.language.tag);
            return Err(self.fault(&students.span, message, "write `for: patients`, or make this booklet in English"));
        }
        self.workshop.facts_leaf(FactsAsk {
            library,
            id: &item.facts.value,
            condition,
            reader,
            language: self.language.clone(),
            side: item.side.unwrap_or(Side::Right),
            finger: item.finger.unwrap_or(Finger::Index),
            paper: self.paper,
            print: self.print,
        })
    }

    /// Pictures of an orthosis.
    fn orthosis(&self, item: &OrthosisItem, date: Option<Date>) -> Result<Leaf, Findings> {
        let id = &item.orthosis;
        if !self.workshop.library.orthoses.contains_key(&id.value) {
            let ids = self.workshop.library.orthoses.keys().map(|id| id.as_str());
            let (message, help) = crate::content::unknown("orthosis", id.value.as_str(), ids);
            return Err(self.fault(&id.span, message, &help));
        }
        let shown = Shown {
            id: &id.value,
            side: item.side.unwrap_or(Side::Right),
            finger: item.finger.unwrap_or(Finger::Index),
            paper: self.paper,
            print: self.print,
            date,
            author: self.by(),
            drawn: true,
        };
        let Pictured { data, .. } = pictured(self.workshop, &self.language, &shown)?;
        Ok(Leaf { look: Look::Gallery, data, logo: None })
    }
}
