//! Pictures that were drawn before: each is drawn once a run, and kept on disk for the next one.
//!
//! A kept picture is the drawn one byte for byte, or it is not used: an entry that is cut short, altered, named wrongly
//! or left by another engine is drawn again. The folder may be missing, full or read-only; nothing fails for it.

pub mod shelf;
pub mod text;

use std::collections::{BTreeMap, HashMap};
use std::path::PathBuf;
use std::sync::{Arc, Mutex, OnceLock, PoisonError};

use rayon::prelude::*;

use crate::body::Side;

use super::scene::{Picture, Request, Studio, Undrawable};
use shelf::Shelf;

/// After so many drawings limbs and sheets worked out for them are forgotten, so that a long run does not fill memory.
const SHARED: usize = 64;
/// So many pictures are remembered at most.
const REMEMBERED: usize = 1500;

type Answer = Result<Arc<Picture>, Undrawable>;

/// Answers requests, from memory, from disk, or by drawing.
#[derive(Default)]
pub struct Album {
    answers: Mutex<HashMap<String, Arc<OnceLock<Answer>>>>,
    shelf: Option<Shelf>,
    /// What the next drawings share, and how many have.
    studio: Mutex<(Arc<Studio>, usize)>,
}

impl Album {
    /// An album that keeps its pictures in a folder, or only in memory when there is none.
    pub fn new(folder: Option<PathBuf>) -> Self {
        Self { shelf: folder.map(Shelf::new), ..Self::default() }
    }

    /// The folder where this platform keeps what can be made again, for pictures of this program.
    pub fn usual_folder() -> Option<PathBuf> {
        use etcetera::BaseStrategy as _;
        let strategy = etcetera::base_strategy::choose_native_strategy().ok()?;
        Some(strategy.cache_dir().join("palmleaf").join("pictures"))
    }

    /// The picture that answers a request. Who asks for one that is being drawn waits for it.
    ///
    /// # Errors
    /// As [`Studio::draw`].
    pub fn get(&self, request: &Request) -> Answer {
        self.answer(&request.key(), request)
    }

    /// The picture that answers a request whose key is known already.
    ///
    /// # Errors
    /// As [`Studio::draw`].
    pub fn answer(&self, key: &str, request: &Request) -> Answer {
        let cell = {
            let mut answers = self.answers.lock().unwrap_or_else(PoisonError::into_inner);
            if answers.len() >= REMEMBERED {
                answers.clear();
            }
            Arc::clone(answers.entry(key.to_owned()).or_default())
        };
        cell.get_or_init(|| self.find(key, request)).clone()
    }

    /// The pictures that answer requests by their keys, drawn side by side.
    ///
    /// # Errors
    /// As [`Studio::draw`], for one of them.
    pub fn all(&self, requests: &BTreeMap<String, Request>) -> Result<BTreeMap<String, Arc<Picture>>, Undrawable> {
        // Pictures of one kind share a limb, and who needs it first works it out while others wait: threads begin at
        // different kinds.
        let mut ordered: Vec<(&String, &Request)> = requests.iter().collect();
        ordered.sort_by_key(|(_, request)| request.subject.kind());
        ordered.into_par_iter().map(|(key, request)| Ok((key.clone(), self.answer(key, request)?))).collect()
    }

    /// How many different pictures are remembered.
    pub fn count(&self) -> usize {
        self.answers.lock().unwrap_or_else(PoisonError::into_inner).len()
    }

    /// What the next drawings share.
    pub fn studio(&self) -> Arc<Studio> {
        let mut studio = self.studio.lock().unwrap_or_else(PoisonError::into_inner);
        if studio.1 >= SHARED {
            *studio = Default::default();
        }
        studio.1 += 1;
        Arc::clone(&studio.0)
    }

    fn find(&self, key: &str, request: &Request) -> Answer {
        if request.side == Side::Left {
            // Both hands share one entry.
            let right = request.right();
            return Ok(Arc::new(self.find(&right.key(), &right)?.mirrored()));
        }
        let name = shelf::name(key);
        if let Some(kept) = self.shelf.as_ref().and_then(|shelf| shelf.get(&name))
            && let Some(picture) = text::read(&name, &kept)
        {
            return Ok(Arc::new(picture));
        }
        let picture = self.studio().draw(request)?;
        if let Some(shelf) = &self.shelf {
            shelf.put(&name, text::write(&name, &picture).as_bytes());
        }
        Ok(Arc::new(picture))
    }
}
