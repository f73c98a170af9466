//! The bones that a picture of the limb's inside shows.

use crate::source::choice;

choice! {
    /// A bone; of a finger's bones those of the affected one.
    pub enum BoneName ("bone") {
        Humerus = "humerus",
        Radius = "radius",
        Ulna = "ulna",
        Scaphoid = "scaphoid",
        Lunate = "lunate",
        Triquetrum = "triquetrum",
        Pisiform = "pisiform",
        Trapezium = "trapezium",
        Trapezoid = "trapezoid",
        Capitate = "capitate",
        Hamate = "hamate",
        ThumbMetacarpal = "thumb-metacarpal",
        ThumbProximal = "thumb-proximal",
        ThumbDistal = "thumb-distal",
        FingerMetacarpal = "finger-metacarpal",
        FingerProximal = "finger-proximal",
        FingerMiddle = "finger-middle",
        FingerDistal = "finger-distal",
    }
}
