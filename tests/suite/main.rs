//! The one test binary: another would link the typesetter again.

#![allow(clippy::disallowed_methods, reason = "tests lay out files and take times")]

mod album;
mod anatomy;
mod cases;
mod choosing;
mod content;
mod determinism;
mod drawing;
mod figures;
mod formats;
mod generated;
mod golden;
mod hostile;
mod house;
mod inside;
mod joints;
mod mutants;
mod naming;
mod overlay;
mod pages;
mod pictures;
mod plans;
mod positions;
mod reminders;
mod sheets;
mod smoke;
mod standing;
mod straps;
mod support;
mod tables;
mod units;
mod verdicts;
mod webpage;
