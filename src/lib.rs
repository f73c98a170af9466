//! Palmleaf compiles a short case description into the wear guide a hand-therapy patient takes home.

#![forbid(unsafe_code)]

pub mod assets;
pub mod batch;
pub mod body;
pub mod booklet;
pub mod case;
pub mod checks;
pub mod choose;
pub mod classify;
pub mod cli;
pub mod clinic;
pub mod content;
pub mod diag;
pub mod document;
pub mod exchange;
pub mod ids;
pub mod language;
pub mod lint;
pub mod markdown;
pub mod output;
pub mod picture;
pub mod pipeline;
pub mod plan;
pub mod printer;
pub mod readability;
pub mod reminders;
pub mod shelf;
pub mod source;
pub mod standing;
pub mod study;
pub mod typeset;
pub mod units;
pub mod webpage;
pub mod words;
