//! Text that somebody wrote, and places in it: the YAML reader with its limits, spans, and the tree that readers walk.
//!
//! A YAML file becomes a [`Node`] tree in which every key and value knows its place, so that a reader can go on after
//! a fault and report all of them at once.

mod disk;
mod field;
mod path;
mod record;
mod text;
mod yaml;

pub use disk::read_bytes;
pub use field::{At, FromNode, Reader};
pub use path::{Reached, Step};
pub use text::{Place, SourceText, Span, decode};
pub use yaml::{Entry, Limits, Node, NodeKind, parse};

pub(crate) use record::{choice, read_by_grammar, record, text_value};
