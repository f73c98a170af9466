//! One declaration gives a record its Rust type, its reader and its JSON Schema, so the three cannot drift apart.

/// Declares a struct read from a mapping. Field kinds follow from types: `Option`, `Vec`, `BTreeMap` and `bool` may be
/// absent, everything else is required. Names are the same in the file.
macro_rules! record {
    (
        $(#[$meta:meta])*
        pub struct $name:ident ($what:literal) {
            $( $(#[$field_meta:meta])* pub $field:ident : $type:ty, )*
        }
    ) => {
        $(#[$meta])*
        #[derive(Clone, Debug, PartialEq, Eq, schemars::JsonSchema)]
        #[serde(deny_unknown_fields)]
        pub struct $name {
            $( $(#[$field_meta])* pub $field : $type, )*
        }

        impl crate::source::FromNode for $name {
            fn from_node(node: &crate::source::Node, reader: &mut crate::source::Reader<'_>) -> Option<Self> {
                #[allow(unused_mut, reason = "a record may have a single field")]
                let names: Vec<String> = vec![$( stringify!($field).trim_start_matches("r#").to_owned() ),*];
                let shown: Vec<&str> = names.iter().map(String::as_str).collect();
                let entries = reader.entries(node, $what, &shown)?;
                let mut order = names.iter();
                $(
                    let name = order.next()?;
                    let $field: Option<$type> = match entries.iter().find(|entry| &entry.key == name) {
                        Some(entry) => <$type as crate::source::FromNode>::from_node(&entry.value, reader),
                        None => {
                            let absent = <$type as crate::source::FromNode>::absent();
                            if absent.is_none() {
                                reader.missing(node, $what, name);
                            }
                            absent
                        }
                    };
                )*
                Some(Self { $( $field: $field?, )* })
            }
        }
    };
}

/// Lets a type stand in a file as the scalar that its `FromStr` reads.
macro_rules! read_by_grammar {
    ($type:ty, $what:literal) => {
        impl crate::source::FromNode for $type {
            fn from_node(node: &crate::source::Node, reader: &mut crate::source::Reader<'_>) -> Option<Self> {
                reader.parsed(node, $what)
            }
        }
    };
}

/// Declares an enum of words. `FromStr` and `Display` are its grammar.
macro_rules! choice {
    (
        $(#[$meta:meta])*
        pub enum $name:ident ($what:literal) {
            $( $(#[$variant_meta:meta])* $variant:ident = $text:literal, )*
        }
    ) => {
        $(#[$meta])*
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, schemars::JsonSchema)]
        pub enum $name {
            $( $(#[$variant_meta])* #[serde(rename = $text)] $variant, )*
        }

        impl $name {
            /// All of them, in order.
            pub const ALL: &'static [Self] = &[$(Self::$variant),*];

            /// The word in files.
            pub const fn word(self) -> &'static str {
                match self { $(Self::$variant => $text),* }
            }
        }

        impl std::fmt::Display for $name {
            fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
                f.write_str(self.word())
            }
        }

        impl std::str::FromStr for $name {
            type Err = crate::units::Misread;

            fn from_str(text: &str) -> Result<Self, crate::units::Misread> {
                let words = Self::ALL.iter().map(|choice| choice.word());
                if let Some(found) = Self::ALL.iter().find(|choice| choice.word() == text) {
                    return Ok(*found);
                }
                let write = match crate::ids::nearest(text, words.clone()) {
                    Some(near) => format!("`{near}`"),
                    None => format!("one of: {}", words.collect::<Vec<_>>().join(", ")),
                };
                Err(crate::units::Misread::new(format!("`{text}` is no {}", $what), write))
            }
        }

        crate::source::read_by_grammar!($name, $what);
    };
}

/// Lets a type with a text grammar stand in a file: `FromStr` reads it, the schema shows its pattern.
macro_rules! text_value {
    ($type:ty, $what:literal, $describe:literal, $pattern:literal $(, $example:literal)*) => {
        crate::source::read_by_grammar!($type, $what);

        impl schemars::JsonSchema for $type {
            fn inline_schema() -> bool {
                true
            }
            fn schema_name() -> std::borrow::Cow<'static, str> {
                stringify!($type).into()
            }
            fn json_schema(_: &mut schemars::SchemaGenerator) -> schemars::Schema {
                schemars::json_schema!({
                    "type": "string",
                    "pattern": $pattern,
                    "description": $describe,
                    "examples": [$($example),*],
                })
            }
        }
    };
}

pub(crate) use {choice, read_by_grammar, record, text_value};
