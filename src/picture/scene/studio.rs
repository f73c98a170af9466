//! What pictures of one run share: the same limb, sheet and strap are worked out once.

use std::collections::HashMap;
use std::sync::{Arc, Mutex, OnceLock, PoisonError};

use crate::body::Finger;
use crate::content::Extent;
use crate::picture::limb::{Build, Posture};
use crate::picture::plate::Surface;
use crate::picture::wear::{Moulded, StrapState, sheets, strap, trimmings};

use super::Worn;
use super::request::Request;
use super::stage::{Body, end_of};

type Shared<K, V> = Mutex<HashMap<K, Arc<OnceLock<Arc<V>>>>>;
/// With the y along the forearm at which the limb is cut off, in tenths of a millimetre.
type BodyKey = (Posture, Build, Extent, i32, Finger);

fn key(posture: &Posture, request: &Request) -> BodyKey {
    let end = libm::round(end_of(request) * 10.0) as i32;
    (posture.clone(), request.build, request.extent, end, request.finger)
}

/// The sheets of an orthosis on a limb, with their surfaces and those of what never opens.
struct Laid {
    sheets: Vec<Moulded>,
    surfaces: Vec<Arc<Surface>>,
}

/// Limbs and what they wear, kept for the next picture.
#[derive(Default)]
pub struct Studio {
    bodies: Shared<BodyKey, Body>,
    laid: Shared<(BodyKey, String), Laid>,
    straps: Shared<(BodyKey, String, usize, StrapState), Vec<Arc<Surface>>>,
}

/// Takes a value from the shelf, or makes it once while others wait for it.
fn once<K: std::hash::Hash + Eq, V>(shelf: &Shared<K, V>, key: K, make: impl FnOnce() -> V) -> Arc<V> {
    let slot = Arc::clone(shelf.lock().unwrap_or_else(PoisonError::into_inner).entry(key).or_default());
    Arc::clone(slot.get_or_init(|| Arc::new(make())))
}

impl Studio {
    /// A bare limb.
    pub(super) fn body(&self, posture: &Posture, request: &Request) -> Arc<Body> {
        let key = key(posture, request);
        let Request { build, extent, finger, .. } = *request;
        let end = f64::from(key.3) / 10.0;
        once(&self.bodies, key, || Body::new(posture, build, (extent, end), finger))
    }

    /// The surfaces of an orthosis on a limb.
    pub(super) fn dressed(
        &self,
        body: &Body,
        request: &Request,
        posture: &Posture,
        worn: &Worn,
        states: &[StrapState],
    ) -> Vec<Arc<Surface>> {
        let at = key(posture, request);
        let name = format!("{:?} {:?}", worn.orthosis.material, worn.shape);
        let limb = body.limb(request.finger);
        let laid = once(&self.laid, (at.clone(), name.clone()), || {
            let sheets = sheets(&limb, &worn.orthosis, &worn.shape);
            let mut surfaces: Vec<Surface> =
                sheets.iter().enumerate().map(|(i, sheet)| sheet.surface(&format!("sheet-{}", i + 1))).collect();
            surfaces.extend(trimmings(&limb, &worn.shape, &sheets));
            Laid { sheets, surfaces: surfaces.into_iter().map(Arc::new).collect() }
        });
        let mut found = laid.surfaces.clone();
        for (i, id) in worn.orthosis.straps.iter().enumerate() {
            let Some(band) = worn.shape.straps.get(id) else { continue };
            let state = states.get(i).copied().unwrap_or(StrapState::Closed);
            let key = (at.clone(), name.clone(), i, state);
            let surfaces = once(&self.straps, key, || {
                let name = format!("strap-{}", i + 1);
                strap(&limb, band, &laid.sheets, &name, state).into_iter().map(Arc::new).collect()
            });
            found.extend(surfaces.iter().cloned());
        }
        found
    }
}
