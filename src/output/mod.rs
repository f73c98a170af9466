//! Files: what they are called, what they hold, and how they are written.

pub mod confirmed;
pub mod growing;
pub mod kept;
pub mod naming;
pub mod reasoning;
pub mod record;
pub mod room;
pub mod store;
