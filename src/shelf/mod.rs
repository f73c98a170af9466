//! A clinic's shelf of handouts: which there are, what was made of them, what changed, what is due, and where to find it.

pub mod catalogue;
pub mod changes;
mod due;
pub mod facts;
mod file;
mod load;
mod page;
pub mod state;

pub use due::{Due, due, overdue};
pub use file::{
    CaseItem, ConditionItem, ConditionShown, ItemKind, ItemName, ListFile, OrthosisItem, OrthosisShown, Review,
    ShelfFile, Which,
};
pub use load::{FILE, Item, Loaded, What};
pub use page::{Clerk, page};
