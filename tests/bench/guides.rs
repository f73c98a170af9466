//! What `tests/bench/run` needs from Rust: the cases, the same sheets as others are given them, a bare embed to compare
//! with, and the times of what is done in memory. `tests/bench/run` prints the table.

#![allow(clippy::disallowed_methods, reason = "a bench takes times")]

mod at_once;
mod bare;
mod pictures;
mod sheets;

use std::path::Path;

/// That of the program: what is compared is the work, not who hands out the memory.
#[global_allocator]
static ALLOCATOR: mimalloc::MiMalloc = mimalloc::MiMalloc;

fn main() {
    let args: Vec<String> = std::env::args().skip(1).filter(|arg| arg != "--bench").collect();
    let args: Vec<&str> = args.iter().map(String::as_str).collect();
    let number = |text: &str| text.parse::<usize>().expect("a number");
    match args.as_slice() {
        ["lay", what, folder, from, to] => sheets::lay(Path::new(folder), number(from)..number(to), what),
        ["guide", case, "with", out] => sheets::guide(Path::new(case), true, Path::new(out)),
        ["guide", case, "without", out] => sheets::guide(Path::new(case), false, Path::new(out)),
        ["bare", data, out] => bare::Bare::new().set(Path::new(data), Path::new(out)),
        ["bare-all", folder, out, threads] => {
            bare::Bare::new().set_all(Path::new(folder), Path::new(out), number(threads));
        }
        ["pictures", every] => println!("{}", pictures::report(number(every), None)),
        ["pictures", every, folder] => println!("{}", pictures::report(number(every), Some(Path::new(folder)))),
        ["at-once"] => println!("{}", at_once::report()),
        _ => println!("`tests/bench/run` prints the table of speed; this is a part of it"),
    }
}
