//! The one test binary: another would link the typesetter again.

#![allow(clippy::disallowed_methods, reason = "tests lay out files and take times")]

mod cases;
mod content;
mod determinism;
mod formats;
mod generated;
mod golden;
mod hostile;
mod house;
mod overlay;
mod pages;
mod plans;
mod smoke;
mod support;
mod units;
mod verdicts;
