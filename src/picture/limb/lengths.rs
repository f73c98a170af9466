//! Lengths of the bones.
//!
//! Source of the metacarpals and phalanges with the soft tissue of the tips: A. Buryanov, V. Kotiuk, *Proportions of
//! Hand Segments*, International Journal of Morphology 28(3), 2010, table of radiographs of 66 adults; the figures were
//! taken from a summary of that table, not from the paper itself. Forearm, upper arm and the places of the metacarpals
//! in the palm: common practice, no source.

use crate::body::Finger;

/// Lengths in millimetres of an adult hand of middle size.
#[derive(Clone, Copy, Debug)]
pub struct Lengths {
    /// Proximal, middle and distal phalanx, index to little.
    pub phalanges: [[f64; 3]; 4],
    /// Soft tissue past the distal phalanx, index to little.
    pub pulp: [f64; 4],
    /// Metacarpal, proximal and distal phalanx of the thumb.
    pub thumb: [f64; 3],
    /// Soft tissue past the tip of the thumb's bone.
    pub thumb_pulp: f64,
    /// From the wrist to the elbow.
    pub forearm: f64,
    /// As much of the upper arm as is ever drawn.
    pub upper_arm: f64,
}

/// The published means.
pub const ADULT: Lengths = Lengths {
    phalanges: [[39.8, 22.4, 15.8], [44.6, 26.3, 17.4], [41.4, 25.7, 17.3], [32.7, 18.1, 16.0]],
    pulp: [3.8, 4.0, 4.0, 3.7],
    thumb: [46.2, 31.6, 21.7],
    thumb_pulp: 5.7,
    forearm: 245.0,
    upper_arm: 150.0,
};

impl Lengths {
    /// The three bones of a finger.
    pub const fn finger(&self, finger: Finger) -> [f64; 3] {
        self.phalanges[finger as usize]
    }

    /// From the last joint of a finger to the end of its pulp.
    pub const fn tip(&self, finger: Finger) -> f64 {
        self.phalanges[finger as usize][2] + self.pulp[finger as usize]
    }

    /// From the last joint of the thumb to the end of its pulp.
    pub const fn thumb_tip(&self) -> f64 {
        self.thumb[2] + self.thumb_pulp
    }
}
