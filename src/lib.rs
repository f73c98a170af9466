//! Palmleaf compiles a short case description into the wear guide a hand-therapy patient takes home.

pub mod units;
pub mod ids;
pub mod source;
pub mod diag;
pub mod assets;
pub mod body;
pub mod content;
pub mod language;
pub mod markdown;
pub mod case;
pub mod checks;
pub mod plan;
pub mod document;
pub mod words;
pub mod typeset;
pub mod output;
pub mod pipeline;
pub mod lint;
pub mod cli;
