//! `palmleaf build --with`: each sheet in two languages beside each other.

use super::papers::{Papers, Sheets, wanted};
use crate::case::CaseFile;
use crate::content::PrintSize;
use crate::diag::{Code, Diagnostic, Findings};
use crate::pipeline::{Planned, Printed, Workshop};
use crate::source::{Place, SourceText};

/// The sheets of a case beside the same ones in the language of `file`, and what is to be said about them.
///
/// # Errors
/// When the print or the language leaves nothing to set beside each other, or as [`Workshop::judge`] in that language.
pub fn made(
    workshop: &Workshop,
    papers: &Papers,
    file: CaseFile,
    source: SourceText,
    hands: &[Planned<'_>],
) -> Result<(Vec<Printed>, Findings), Findings> {
    let mut findings = Findings::default();
    if let Some(case) = hands.first().map(|(admitted, _)| admitted.case()) {
        let place = Place { source: case.source.clone(), span: case.file.language.span.clone() };
        let (own, other) = (&case.language.tag, &file.language.value);
        if own.is_akin(other) && own.is_pseudo() == other.is_pseudo() {
            let message = format!("a sheet in `{own}` and `{other}` would say the same twice");
            let help = "name another language after `--with`, or leave it out";
            findings.push(Diagnostic::error(Code::OUTPUT_BESIDE, place.clone(), message).help(help));
        }
        if case.print() != PrintSize::Standard {
            let message = format!("two languages in {} print do not fit beside each other", case.print());
            let help = "give `--print standard`; the person's own sheet can be printed larger by itself";
            findings.push(Diagnostic::error(Code::OUTPUT_BESIDE, place, message).help(help));
        }
    }
    if findings.has_errors() {
        return Err(findings);
    }
    let other = workshop.judge(file, source)?.plans()?;
    let mut made = Vec::new();
    for kind in wanted(&papers.sheets) {
        if kind.goes_beside() {
            made.extend(workshop.print_beside(kind, hands, &other)?);
        } else if papers.sheets.contains(&Sheets::One(kind)) {
            let message = format!("the sheet `{kind}` is not made in two languages beside each other");
            let help = "these are: guide, card, exercises, letter";
            findings.push(Diagnostic::outside(Code::OUTPUT_BESIDE, message).help(help).as_warning());
        }
    }
    Ok((made, findings))
}
