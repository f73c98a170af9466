//! One handout in one language and size: what it is called, what it says, and its bytes.

use std::sync::Arc;

use crate::case::Paper;
use crate::cli::teach::{Pictured, Shown, pictured};
use crate::clinic::Logo;
use crate::content::PrintSize;
use crate::diag::{Code, Diagnostic, Findings};
use crate::document::{FactsAsk, FactsFor, SheetKind};
use crate::language::Language;
use crate::pipeline::{Planned, Workshop};
use crate::shelf::{Item, What};
use crate::source::SourceText;
use crate::webpage;
use crate::words::{self, Said, Sheet};

/// Which paper of an item.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub enum SheetOf {
    Facts,
    Pictures,
    Case(SheetKind),
}

impl SheetOf {
    pub const fn word(self) -> &'static str {
        match self {
            Self::Facts => "facts",
            Self::Pictures => "pictures",
            Self::Case(kind) => kind.word(),
        }
    }
}

/// A file of the shelf that is to be there.
#[derive(Clone, Debug)]
pub struct Order<'s> {
    pub item: &'s Item,
    pub sheet: SheetOf,
    pub language: &'s Language,
    pub print: PrintSize,
    pub paper: Paper,
    /// Seen from the folder of the handouts.
    pub path: String,
}

/// What an order has to say, before it is set.
pub enum Tree {
    Sheet { sheet: Sheet, dated: bool },
    Phone(Sheet),
    Gallery { pictured: Pictured, logo: Option<Arc<Logo>> },
}

/// The plans of a case in a language and size.
pub fn hands<'w>(
    workshop: &'w Workshop,
    source: &SourceText,
    language: &Language,
    (print, paper): (PrintSize, Paper),
) -> Result<Vec<Planned<'w>>, Findings> {
    let (mut file, source) = workshop.read_source(source.clone())?;
    file.language.value = language.tag.clone();
    file.print = Some(print);
    file.paper = Some(paper);
    workshop.judge(file, source)?.plans()
}

/// Every file that the items need.
///
/// # Errors
/// All faults of all cases at once.
pub fn orders<'s>(
    workshop: &Workshop,
    items: &'s [Item],
    languages: &'s [Language],
    (sizes, papers): (&[PrintSize], &[Paper]),
) -> Result<Vec<Order<'s>>, Findings> {
    let mut findings = Findings::default();
    let mut orders: Vec<Order<'s>> = Vec::new();
    for item in items {
        let (sheets, sizes): (Vec<SheetOf>, Vec<PrintSize>) = match &item.what {
            What::Condition { .. } => (vec![SheetOf::Facts], sizes.to_vec()),
            What::Orthosis { .. } => (vec![SheetOf::Pictures], sizes.to_vec()),
            What::Case { source, sheets } => {
                let mut own = Vec::new();
                for &size in sizes {
                    let Some(language) = languages.first() else { continue };
                    match hands(workshop, source, language, (size, Paper::A4)) {
                        // A person may need larger print than was asked for.
                        Ok(hands) => own.extend(hands.first().map(|(admitted, _)| admitted.case().print())),
                        Err(faults) => findings.extend(faults),
                    }
                }
                own.sort_unstable();
                own.dedup();
                (sheets.iter().map(|&kind| SheetOf::Case(kind)).collect(), own)
            }
        };
        for &sheet in &sheets {
            for language in languages {
                for &print in &sizes {
                    for &paper in papers {
                        let order = Order { item, sheet, language, print, paper, path: String::new() };
                        let path = path(&order);
                        // A page for a telephone has neither size nor paper: one is enough.
                        if orders.last().is_none_or(|last| last.path != path) {
                            orders.push(Order { path, ..order });
                        }
                    }
                }
            }
        }
    }
    if findings.has_errors() { Err(findings) } else { Ok(orders) }
}

fn path(order: &Order<'_>) -> String {
    let Order { sheet, language, print, paper, .. } = order;
    let (tag, stem, word) = (&language.tag, &order.item.stem, sheet.word());
    if *sheet == SheetOf::Case(SheetKind::Phone) {
        return format!("{tag}/{word}-{stem}-{tag}.html");
    }
    let size = if *print == PrintSize::Standard { String::new() } else { format!("-{print}") };
    let paper = if *paper == Paper::A4 { String::new() } else { format!("-{paper}") };
    format!("{tag}/{word}-{stem}-{tag}{size}{paper}.pdf")
}

impl Order<'_> {
    /// Whether its file has pages of a size.
    pub fn has_pages(&self) -> bool {
        self.sheet != SheetOf::Case(SheetKind::Phone)
    }

    /// What it has to say. Nothing when a case has nothing for this sheet. What is not `drawn` is enough for a key, and
    /// costs little.
    ///
    /// # Errors
    /// All faults of the first step that cannot go on.
    pub fn tree(&self, workshop: &Workshop, drawn: bool) -> Result<Option<Tree>, Findings> {
        let (language, print, paper) = (self.language, self.print, self.paper);
        match (&self.item.what, self.sheet) {
            (What::Condition { id, side, finger }, _) => {
                let library = &workshop.library;
                let Some(condition) = library.conditions.get(id) else { return Ok(None) };
                let sheet = workshop.say_facts(FactsAsk {
                    library,
                    id,
                    condition,
                    reader: FactsFor::Patients,
                    language: language.clone(),
                    side: *side,
                    finger: *finger,
                    paper,
                    print,
                })?;
                Ok(Some(Tree::Sheet { sheet, dated: false }))
            }
            (What::Orthosis { id, side, finger }, _) => {
                let clinic = workshop.clinic();
                let author = clinic.and_then(|clinic| clinic.name());
                let shown = Shown { id, side: *side, finger: *finger, paper, print, date: None, author, drawn };
                let mut pictured = pictured(workshop, language, &shown)?;
                let logo = clinic.and_then(|clinic| clinic.logo.clone());
                if let Some(clinic) = clinic {
                    let (mut meta, mut furniture) = (pictured.data["meta"].take(), pictured.data["furniture"].take());
                    let shown = logo.as_deref().zip(author);
                    words::wear(&mut meta, &mut furniture, clinic.accent(), clinic.address(), shown);
                    pictured.data["meta"] = meta;
                    pictured.data["furniture"] = furniture;
                }
                Ok(Some(Tree::Gallery { pictured, logo }))
            }
            (What::Case { source, .. }, SheetOf::Case(kind)) => {
                let hands = hands(workshop, source, language, (print, paper))?;
                let sheet = workshop.say(kind, &hands)?;
                Ok(sheet.map(|sheet| match kind {
                    SheetKind::Phone => Tree::Phone(sheet),
                    _ => Tree::Sheet { sheet, dated: true },
                }))
            }
            (What::Case { .. }, _) => Ok(None),
        }
    }

    /// That a case has nothing for a sheet that the shelf asks for.
    pub fn nothing(&self) -> Diagnostic {
        let message = format!("{} has nothing for the sheet `{}`: it was not made", self.item.name, self.sheet.word());
        Diagnostic::error(Code::OUTPUT_NOTHING, self.item.place.clone(), message).as_warning()
    }
}

impl Tree {
    pub fn title(&self) -> &str {
        match self {
            Self::Sheet { sheet, .. } | Self::Phone(sheet) => &sheet.title,
            Self::Gallery { pictured, .. } => &pictured.title,
        }
    }

    /// The messages it says, and how far each has been checked.
    pub fn said(&self) -> &Said {
        match self {
            Self::Sheet { sheet, .. } | Self::Phone(sheet) => &sheet.said,
            Self::Gallery { pictured, .. } => &pictured.said,
        }
    }

    /// A hash of everything that its file is made from: two with the same key are the same file. `engine` is what makes
    /// pages. A gallery has to be one that is not drawn.
    pub fn key(&self, engine: &str) -> String {
        let mut hash = blake3::Hasher::new();
        let mut add = |part: &[u8]| {
            hash.update(&(part.len() as u64).to_le_bytes()).update(part);
        };
        add(engine.as_bytes());
        match self {
            Self::Sheet { sheet, .. } | Self::Phone(sheet) => {
                add(match self {
                    Self::Phone(_) => webpage::ENGINE.as_bytes(),
                    Self::Sheet { dated: true, .. } => b"dated",
                    _ => b"undated",
                });
                add(sheet.data.to_string().as_bytes());
                for (name, request) in &sheet.pictures {
                    add(name.as_bytes());
                    add(request.key().as_bytes());
                }
                add(sheet.logo.as_ref().map_or(&[], |logo| logo.bytes.as_slice()));
            }
            Self::Gallery { pictured, logo } => {
                add(b"gallery");
                add(pictured.data.to_string().as_bytes());
                add(logo.as_ref().map_or(&[], |logo| logo.bytes.as_slice()));
            }
        }
        hash.finalize().to_hex().to_string()
    }

    /// The file. A gallery has to be drawn.
    ///
    /// # Errors
    /// When the pages cannot be set, or break a standard that they claim.
    pub fn bytes(&self, workshop: &Workshop) -> Result<Vec<u8>, Diagnostic> {
        match self {
            Self::Sheet { sheet, dated: true } => workshop.set(sheet)?.pdf(),
            Self::Sheet { sheet, dated: false } => workshop.set(sheet)?.undated_pdf(),
            Self::Phone(sheet) => Ok(workshop.set_phone(sheet)?.into_bytes()),
            Self::Gallery { pictured, logo } => {
                let logo = logo.as_ref().map_or(&[][..], |logo| logo.bytes.as_slice());
                workshop.typesetter.set_gallery(&pictured.data, logo)?.undated_pdf()
            }
        }
    }
}
