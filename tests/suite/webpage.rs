//! The guide as one page for a telephone.
use crate::support::{WORKSHOP, file, sheet};
#[test]
fn dump() {
    for name in ["right-thumb", "both-hands", "flexor-tendon-repair", "left-thumb-ligament", "mallet-ring-finger", "thumb-base"] {
        for language in ["en", "es", "ar"] {
            let text = file(&format!("examples/{name}.yaml"));
            let text: String = text.lines().map(|l| if l.starts_with("language:") { format!("language: {language}\n") } else { format!("{l}\n") }).collect();
            let s = sheet(&text);
            let html = palmleaf::webpage::page(&s, &WORKSHOP.album).expect("a page");
            println!("{name} {language} {} pictures {} bytes", s.pictures.len(), html.len());
            std::fs::write(format!("target/{name}-{language}.html"), html).unwrap();
        }
    }
}
