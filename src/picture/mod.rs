//! Pictures of hands, orthoses and movements, drawn from the joint table that was checked.
//!
//! One limb in space serves every view: bones by their joints (`limb`), flesh as a solid round them (`solid`), an
//! orthosis as sheets and bands on that solid (`wear`), schematic bones (`bone`), a camera and what it sees (`view`), and a drawing hand (`ink`,
//! `plate`); `scene` puts together what is asked for. No line lives in the plane of a picture.

pub mod album;
pub mod asks;
pub mod bone;
pub mod detail;
pub mod ink;
pub mod inside;
pub mod lettering;
pub mod limb;
pub mod plate;
pub mod scene;
pub mod solid;
pub mod space;
pub mod standalone;
pub mod view;
pub mod wear;
