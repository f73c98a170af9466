//! From where a hand is looked at.

use crate::source::choice;

choice! {
    /// From where a hand is seen.
    pub enum View ("view of the hand") {
        /// On to its back.
        Dorsal = "dorsal",
        /// Into its palm.
        Palmar = "palmar",
        /// From the thumb side.
        Radial = "radial",
        /// From the little-finger side.
        Ulnar = "ulnar",
        /// Half way between its back and the thumb side: an orthosis is best recognised from there.
        Turned = "turned",
        /// Half way between its palm and the thumb side.
        PalmarRadial = "palmar-radial",
        /// Half way between its palm and the little finger: a thumb that meets a fingertip shows best from there.
        PalmarUlnar = "palmar-ulnar",
        /// As the wearer sees it, with the hand held up in front.
        Own = "own",
    }
}
