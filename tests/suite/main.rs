//! The one test binary: another would link the typesetter again.

#![allow(clippy::disallowed_methods, reason = "tests lay out files and take times")]

mod album;
mod anatomy;
mod beside;
mod booklet;
mod cases;
mod choosing;
mod clinic;
mod clinic_logo;
mod content;
mod determinism;
mod drawing;
mod edges;
mod exchange;
mod facts;
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
mod readability;
mod record;
mod reminders;
mod sheets;
mod signoff;
mod smoke;
mod specimen;
mod standing;
mod straps;
mod study;
mod support;
mod tables;
mod units;
mod verdicts;
mod webpage;
