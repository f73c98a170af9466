//! Plural choices by CLDR.
//!
//! Fluent chooses plural branches through tables that leave out the modulus of many rules (Arabic 103, Russian 22). So a
//! choice between plural categories is rewritten, when messages are loaded, to be made by a second variable that holds
//! the category as ICU4X gives it: `$count` keeps its name in the files and in translators' tools.

use fluent_syntax::ast::{Entry, Expression, InlineExpression, Pattern, PatternElement, Resource, VariantKey};

/// The name of the variable that holds the plural category of another.
pub fn category_of(name: &str) -> String {
    format!("{name}-plural")
}

/// Rewrites every choice between plural categories.
pub fn by_category(mut resource: Resource<String>) -> Resource<String> {
    for entry in &mut resource.body {
        if let Entry::Message(message) = entry
            && let Some(value) = &mut message.value
        {
            rewrite(value);
        }
    }
    resource
}

fn rewrite(pattern: &mut Pattern<String>) {
    for element in &mut pattern.elements {
        let PatternElement::Placeable { expression: Expression::Select { selector, variants } } = element else {
            continue;
        };
        let plural = variants.iter().any(|variant| match &variant.key {
            VariantKey::Identifier { name } => matches!(name.as_str(), "zero" | "one" | "two" | "few" | "many"),
            VariantKey::NumberLiteral { .. } => false,
        });
        // A choice with a single branch for all numbers names only `other`; it needs no category.
        if plural && let InlineExpression::VariableReference { id } = selector {
            id.name = category_of(&id.name);
        }
        variants.iter_mut().for_each(|variant| rewrite(&mut variant.value));
    }
}
