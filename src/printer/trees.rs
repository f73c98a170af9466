//! Name trees and number trees, flat (ISO 32000-1, 7.9.6 and 7.9.7).

use hayro_syntax::object::{Array, Dict, MaybeRef, Object};

/// Deeper than any tree of this program.
const DEPTH: usize = 8;

/// The entries of a name tree below a key, in their order.
pub fn names<'a>(dict: &Dict<'a>, key: &str) -> Vec<(Vec<u8>, MaybeRef<Object<'a>>)> {
    let mut found = Vec::new();
    if let Some(tree) = dict.get::<Dict<'a>>(key) {
        walk(&tree, "Names", DEPTH, &mut |key, value| {
            if let MaybeRef::NotRef(Object::String(key)) = key {
                found.push((key.as_bytes().to_vec(), value));
            }
        });
    }
    found
}

/// The entries of a number tree below a key, in their order.
pub fn numbers<'a>(dict: &Dict<'a>, key: &str) -> Vec<(i64, MaybeRef<Object<'a>>)> {
    let mut found = Vec::new();
    if let Some(tree) = dict.get::<Dict<'a>>(key) {
        walk(&tree, "Nums", DEPTH, &mut |key, value| {
            if let MaybeRef::NotRef(Object::Number(key)) = key {
                found.push((key.as_i64(), value));
            }
        });
    }
    found
}

fn walk<'a>(
    tree: &Dict<'a>,
    entries: &str,
    depth: usize,
    each: &mut impl FnMut(MaybeRef<Object<'a>>, MaybeRef<Object<'a>>),
) {
    if let Some(list) = tree.get::<Array<'a>>(entries) {
        let mut items = list.raw_iter();
        while let Some((key, value)) = items.next().zip(items.next()) {
            each(key, value);
        }
    }
    for kid in tree.get::<Array<'a>>("Kids").iter().flat_map(|kids| kids.iter::<Dict<'a>>()) {
        if depth > 0 {
            walk(&kid, entries, depth - 1, each);
        }
    }
}
