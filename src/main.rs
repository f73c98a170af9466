//! The `palmleaf` command.

#![forbid(unsafe_code)]

fn main() -> std::process::ExitCode {
    palmleaf::cli::run()
}
