//! The `palmleaf` command.

fn main() -> std::process::ExitCode {
    palmleaf::cli::run()
}
