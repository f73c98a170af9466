//! What a message says in each branch of its choices.

use fluent_syntax::ast::{Expression, InlineExpression, Pattern, PatternElement, Variant, VariantKey};

/// What a message can say.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Leaves {
    /// Each branch by its name (`side=left`), with what stands outside every choice added; a message without a choice
    /// has one branch without a name.
    pub branches: Vec<(String, String)>,
}

/// The branches of a pattern.
pub fn leaves(pattern: &Pattern<String>) -> Leaves {
    let mut outside = String::new();
    let mut branches = Vec::new();
    walk(pattern, "", &mut outside, &mut branches);
    if branches.is_empty() {
        branches.push((String::new(), String::new()));
    }
    Leaves { branches: branches.into_iter().map(|(name, text)| (name, format!("{outside} {text}"))).collect() }
}

fn walk(pattern: &Pattern<String>, under: &str, said: &mut String, branches: &mut Vec<(String, String)>) {
    for element in &pattern.elements {
        match element {
            PatternElement::TextElement { value } => said.push_str(value),
            PatternElement::Placeable { expression: Expression::Select { selector, variants } } => {
                for variant in variants {
                    let name = format!("{under}/{}={}", selected(selector), key(variant));
                    let mut text = String::new();
                    let mut inner = Vec::new();
                    walk(&variant.value, &name, &mut text, &mut inner);
                    if inner.is_empty() {
                        branches.push((name, text));
                    } else {
                        branches.extend(inner.into_iter().map(|(name, more)| (name, format!("{text} {more}"))));
                    }
                }
            }
            PatternElement::Placeable { expression: Expression::Inline(InlineExpression::StringLiteral { value }) } => {
                said.push_str(value);
            }
            PatternElement::Placeable { .. } => said.push('1'),
        }
    }
}

/// Visits every choice of a pattern with the names of its branches.
pub fn each_choice(pattern: &Pattern<String>, visit: &mut impl FnMut(&InlineExpression<String>, Vec<String>)) {
    for element in &pattern.elements {
        if let PatternElement::Placeable { expression: Expression::Select { selector, variants } } = element {
            visit(selector, variants.iter().map(key).collect());
            for variant in variants {
                each_choice(&variant.value, visit);
            }
        }
    }
}

fn selected(selector: &InlineExpression<String>) -> &str {
    match selector {
        InlineExpression::VariableReference { id } => &id.name,
        _ => "",
    }
}

fn key(variant: &Variant<String>) -> String {
    match &variant.key {
        VariantKey::Identifier { name } => name.clone(),
        VariantKey::NumberLiteral { value } => value.clone(),
    }
}
