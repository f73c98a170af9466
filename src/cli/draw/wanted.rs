//! Which pictures the command line asks for, each with its words.

use std::collections::BTreeMap;
use std::fmt::Display;
use std::str::FromStr;

use crate::body::View;
use crate::cli::args::{Contact, DrawArgs};
use crate::content::{Extent, Library, unknown};
use crate::diag::{Code, Diagnostic, Findings};
use crate::document::{Arg, Message};
use crate::ids::{ConditionId, ExerciseId, OrthosisId};
use crate::language::Language;
use crate::picture::asks::{self, Sitter, Way};
use crate::picture::scene::{Request, Worn};
use crate::pipeline::Workshop;
use crate::words::Speaker;

use super::caption::{hand, say, seen, spoken};
use super::posture;
use super::postures::moves_arm;
use crate::picture::lettering::Lettering;

/// A picture that is wanted, with its words.
pub struct Wanted {
    /// What it is called in the content.
    pub id: String,
    pub title: String,
    /// What stands under it on a sheet.
    pub caption: String,
    /// What somebody is told who cannot see it.
    pub about: String,
    /// The group that it belongs to on a sheet.
    pub group: &'static str,
    /// The names of structures, by their numbers.
    pub names: Vec<Lettering>,
    pub request: Request,
}

/// On a sheet pictures are as wide and high as its columns and rows allow, mm.
const COLUMN: (u16, u16) = (56, 52);
/// How wide a picture by itself is when nothing is said, mm.
const ALONE: u16 = 80;

const STEPS: &str = "Steps";

pub struct Asker<'a> {
    pub workshop: &'a Workshop,
    pub library: &'a Library,
    pub language: &'a Language,
    pub speaker: Speaker<'a>,
    pub sitter: Sitter,
    /// Whether pictures go on a sheet, in columns that nobody has said the width of.
    pub on_columns: bool,
    pub view: Option<View>,
    found: Vec<Wanted>,
    group: &'static str,
}

/// Everything that the arguments ask for.
///
/// # Errors
/// Ids that lead nowhere, things that have no look, faults of a posture file.
pub fn wanted(workshop: &Workshop, args: &DrawArgs, language: &Language) -> Result<Vec<Wanted>, Findings> {
    let (width, height) = match (args.sheet, args.width) {
        (Some(_), None) => COLUMN,
        (Some(_), Some(width)) => (width, width.saturating_mul(5) / 4),
        // A picture by itself is as wide as it should be, however high it grows.
        (None, width) => (width.unwrap_or(ALONE), width.unwrap_or(ALONE).saturating_mul(6)),
    };
    let sitter = Sitter { side: args.side, finger: args.finger, build: args.build, width, height };
    let speaker = workshop.words.speaker(language)?;
    let library = &workshop.library;
    let mut asker = Asker {
        workshop,
        library,
        language,
        speaker,
        sitter,
        on_columns: args.sheet.is_some() && args.width.is_none(),
        view: args.view,
        found: Vec::new(),
        group: "Pictures",
    };
    if let Some(id) = &args.orthosis {
        let id: OrthosisId = known("orthosis", id, &library.orthoses)?;
        let worn = asker.worn(&id)?;
        asker.orthosis(&id, &worn);
    }
    if let Some(id) = &args.exercise {
        let id: ExerciseId = known("exercise", id, &library.exercises)?;
        let worn = match &args.wearing {
            Some(worn) => Some(asker.worn(&known("orthosis", worn, &library.orthoses)?)?),
            None => None,
        };
        asker.exercise(&id, worn.as_ref())?;
    }
    if let Some(path) = &args.posture {
        let posture = posture::read(path, args.finger)?;
        let name = path.file_stem().map(|name| name.to_string_lossy().into_owned()).unwrap_or_default();
        let title = hand(&asker.speaker, args.side);
        let extent = if moves_arm(&posture) { Extent::Elbow } else { Extent::Forearm };
        let request = asks::posture(&sitter, posture, args.view.unwrap_or(View::Dorsal), extent);
        asker.add(name.clone(), title, &name, request);
    }
    if let Some(id) = &args.steps {
        let id: OrthosisId = known("orthosis", id, &library.orthoses)?;
        let worn = asker.worn(&id)?;
        if asker.steps(&id, &worn) == 0 {
            let message = format!("no step of `{id}` has a look");
            let help = "describe its steps in content/handling.yaml";
            return Err(Diagnostic::outside(Code::DRAW_NO_LOOK, message).help(help).into());
        }
    }
    if let Some(id) = &args.spots {
        let id: OrthosisId = known("orthosis", id, &library.orthoses)?;
        let worn = asker.worn(&id)?;
        if asker.spots(&id, &worn) == 0 {
            let message = format!("no spot of the skin check of `{id}` has a place");
            let help = "say where they lie in content/spots.yaml, or under `spots` of its shape";
            return Err(Diagnostic::outside(Code::DRAW_NO_LOOK, message).help(help).into());
        }
    }
    if let Some(id) = &args.condition {
        let id: ConditionId = known("condition", id, &library.conditions)?;
        asker.condition(&id, &library.conditions[&id]);
    }
    if let Some(id) = &args.faults {
        let id: OrthosisId = known("orthosis", id, &library.orthoses)?;
        let worn = asker.worn(&id)?;
        asker.faults(&id, &worn)?;
    }
    if let Some(sheet) = args.sheet {
        asker.sheet(sheet)?;
    }
    Ok(asker.found)
}

/// Every picture of an orthosis in the order of use: in its place, step by step, and the spots of the skin check.
///
/// # Errors
/// An orthosis that is not known or has no look.
pub fn of_orthosis(
    workshop: &Workshop,
    language: &Language,
    sitter: Sitter,
    id: &OrthosisId,
) -> Result<Vec<(Group, Vec<Wanted>)>, Findings> {
    let id: OrthosisId = known("orthosis", id.as_str(), &workshop.library.orthoses)?;
    let mut asker = Asker {
        workshop,
        library: &workshop.library,
        language,
        speaker: workshop.words.speaker(language)?,
        sitter,
        on_columns: true,
        view: None,
        found: Vec::new(),
        group: STEPS,
    };
    let worn = asker.worn(&id)?;
    asker.orthosis(&id, &worn);
    let mut groups = vec![(Group::Worn, std::mem::take(&mut asker.found))];
    for way in Way::ALL {
        asker.ways(&id, &worn, way);
        groups.push((Group::Steps(way), std::mem::take(&mut asker.found)));
    }
    asker.spots(&id, &worn);
    groups.push((Group::Spots, asker.found));
    groups.retain(|(_, found)| !found.is_empty());
    Ok(groups)
}

/// Pictures of an orthosis that belong together.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Group {
    /// In its place.
    Worn,
    Steps(Way),
    /// The skin check.
    Spots,
}

fn known<I: FromStr + Ord + Display, T>(what: &str, text: &str, all: &BTreeMap<I, T>) -> Result<I, Findings> {
    if let Some(id) = text.parse().ok().filter(|id| all.contains_key(id)) {
        return Ok(id);
    }
    let names: Vec<String> = all.keys().map(ToString::to_string).collect();
    let (message, help) = unknown(what, text, names.iter().map(String::as_str));
    Err(Diagnostic::outside(Code::ID_UNKNOWN, message).help(help).into())
}

impl Asker<'_> {
    /// Gives the structures of the last picture their names.
    pub fn name_last(&mut self, names: Vec<Lettering>) {
        if let Some(last) = self.found.last_mut() {
            last.names = names;
        }
    }

    /// Lets other words stand under the last picture on a sheet.
    pub fn caption_last(&mut self, caption: String) {
        if let Some(last) = self.found.last_mut() {
            last.caption = caption;
        }
    }

    pub fn add(&mut self, id: String, title: String, what: &str, request: Request) {
        let seen = seen(&self.speaker, &request);
        let said: Vec<&str> = [title.as_str(), what].into_iter().filter(|text| !text.is_empty()).collect();
        let mut about = seen;
        for text in said {
            let text = text.trim_end_matches(['.', ' ']);
            if !about.contains(text) {
                about = format!("{about} {text}.");
            }
        }
        let caption = if self.group == STEPS { what.to_owned() } else { title.clone() };
        self.found.push(Wanted { id, title, caption, about, group: self.group, names: Vec::new(), request });
    }

    fn worn(&self, id: &OrthosisId) -> Result<Worn, Diagnostic> {
        asks::worn(self.library, id, self.sitter.finger).ok_or_else(|| {
            let message = format!("it is not said what the orthosis `{id}` looks like");
            Diagnostic::outside(Code::DRAW_NO_LOOK, message).help(format!("describe it in content/shapes/{id}.yaml"))
        })
    }

    pub fn name(&self, kind: &str, id: &dyn Display) -> String {
        say(&self.speaker, &format!("{kind}-{id}-name"), self.sitter.side, &id.to_string())
    }

    fn orthosis(&mut self, id: &OrthosisId, worn: &Worn) {
        let title = self.name("orthosis", id);
        let short = say(&self.speaker, &format!("orthosis-{id}-short"), self.sitter.side, "");
        let what = if short == title { String::new() } else { short };
        let request = asks::orthosis(&self.sitter, worn, self.view);
        self.add(id.to_string(), title, &what, request);
    }

    fn exercise(&mut self, id: &ExerciseId, worn: Option<&Worn>) -> Result<(), Diagnostic> {
        let Some(motion) = self.library.motions.get(id) else {
            let message = format!("it is not said what the exercise `{id}` looks like");
            let help = format!("describe it in content/motions/{id}.yaml");
            return Err(Diagnostic::outside(Code::DRAW_NO_LOOK, message).help(help));
        };
        let title = self.name("exercise", id);
        let message = Message::new(if motion.then.is_empty() { "picture-held" } else { "picture-moved" });
        let what = spoken(&self.speaker, message.with("exercise", Arg::Literal(title.clone())), self.sitter.side, "");
        let requests = asks::exercise(&self.sitter, motion, worn, self.view);
        let several = requests.len() > 1;
        for (i, request) in requests.into_iter().enumerate() {
            let number = if several { format!(" {}", i + 1) } else { String::new() };
            self.add(format!("{id}{number}"), title.clone(), &what, request);
        }
        Ok(())
    }

    fn steps(&mut self, id: &OrthosisId, worn: &Worn) -> usize {
        Way::ALL.into_iter().map(|way| self.ways(id, worn, way)).sum()
    }

    /// The steps of putting it on, or of taking it off.
    fn ways(&mut self, id: &OrthosisId, worn: &Worn, way: Way) -> usize {
        let title = self.name("orthosis", id);
        let steps = asks::steps(&self.sitter, self.library, worn, way, self.view);
        let count = steps.len();
        for step in steps {
            let mut message = Message::new(format!("step-{}", step.id));
            let strap = step.strap.and_then(|strap| worn.orthosis.straps.get(strap));
            if let Some(strap) = strap {
                message = message.with("strap", Message::new(format!("strap-{strap}")));
            }
            let said = spoken(&self.speaker, message, self.sitter.side, step.id.as_str());
            let name = format!("{id} {} {} {}", way.word(), step.number + 1, step.id);
            self.add(name, title.clone(), &said, step.request);
        }
        count
    }

    fn spots(&mut self, id: &OrthosisId, worn: &Worn) -> usize {
        let title = self.name("orthosis", id);
        let what = say(&self.speaker, "picture-spots", self.sitter.side, "");
        let places = asks::places(self.library, id);
        let requests = asks::spots(&self.sitter, worn, &places, self.view);
        let count = requests.len();
        for request in requests {
            let view = request.view;
            self.add(format!("{id} {view}"), title.clone(), &what, request);
        }
        count
    }

    fn sheet(&mut self, sheet: Contact) -> Result<(), Findings> {
        let all = sheet == Contact::All;
        let ids: Vec<OrthosisId> = self.library.shapes.keys().cloned().collect();
        if all || sheet == Contact::Orthoses {
            self.group = "Orthoses";
            for id in &ids {
                let worn = self.worn(id)?;
                self.orthosis(id, &worn);
            }
        }
        if all || sheet == Contact::Postures {
            self.group = "Postures";
            self.postures();
        }
        if all || sheet == Contact::Exercises {
            self.group = "Exercises";
            let ids: Vec<ExerciseId> = self.library.motions.keys().cloned().collect();
            for id in &ids {
                self.exercise(id, None)?;
            }
        }
        if all || sheet == Contact::Steps {
            self.group = STEPS;
            for id in &ids {
                let worn = self.worn(id)?;
                self.steps(id, &worn);
            }
        }
        if all || sheet == Contact::Spots {
            self.group = "Skin check";
            for id in &ids {
                let worn = self.worn(id)?;
                self.spots(id, &worn);
            }
        }
        if all || sheet == Contact::Conditions {
            self.group = "Conditions";
            for (id, condition) in &self.library.conditions {
                self.condition(id, condition);
            }
        }
        if all || sheet == Contact::Faults {
            self.group = "Faults of fit";
            let faulty: Vec<&OrthosisId> =
                ids.iter().filter(|id| !self.library.shapes[*id].faults.is_empty()).collect();
            for id in faulty {
                let worn = self.worn(id)?;
                self.faults(id, &worn)?;
            }
        }
        Ok(())
    }
}
