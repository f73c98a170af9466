//! The `palmleaf` command.

#![forbid(unsafe_code)]

/// Setting a sheet is a great many small pieces of memory, on every thread at once.
#[global_allocator]
static ALLOCATOR: mimalloc::MiMalloc = mimalloc::MiMalloc;

fn main() -> std::process::ExitCode {
    palmleaf::cli::run()
}
