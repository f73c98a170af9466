//! Whose hand a picture shows.

use crate::source::choice;

choice! {
    /// The build of a hand. Bones keep their proportions; girth and joints differ.
    pub enum Build ("build of a hand") {
        Adult = "adult",
        Slim = "slim",
        Broad = "broad",
        /// A child of about six.
        Young = "young",
        /// Wider joints at the fingers' ends, leaner in between.
        Older = "older",
    }
}
