//! Which items somebody has to look at again, and since when.

use super::file::{ItemName, Review};
use crate::units::{Date, Interval};

/// When an item is to be looked at again.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Due {
    /// Nobody has said yet that they looked at it.
    Never,
    /// On this day, which is past or today.
    Since(Date),
    /// On this day.
    On(Date),
}

/// When an item is due. Nothing where the shelf asks for no reviews.
pub fn due(review: Option<&Review>, every: Option<Interval>, today: Date) -> Option<Due> {
    let every = every?;
    let Some(review) = review else { return Some(Due::Never) };
    let next = review.date.later(every);
    Some(if next <= today { Due::Since(next) } else { Due::On(next) })
}

/// Those of some items that are due today, the longest overdue first.
pub fn overdue<'i>(
    items: impl Iterator<Item = (&'i ItemName, Option<&'i Review>)>,
    every: Option<Interval>,
    today: Date,
) -> Vec<(Due, &'i ItemName)> {
    let late = |due: &Due| matches!(due, Due::Never | Due::Since(_));
    let mut all: Vec<(Due, &ItemName)> =
        items.filter_map(|(name, review)| Some((due(review, every, today).filter(late)?, name))).collect();
    all.sort();
    all
}
