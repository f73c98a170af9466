//! What may be a clinic's logo, and what may not: each refusal by name, with what to do instead.

use std::time::{Duration, Instant};

use palmleaf::clinic::{Clinic, Logo, LogoKind};

use crate::clinic::{clinic, faults};
use crate::support::{path, text};

const YAML: &str = "name: North Quay\nlogo: logo.svg\n";

fn svg(inside: &str) -> String {
    format!(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" xmlns:xlink=\"http://www.w3.org/1999/xlink\" viewBox=\"0 0 100 50\"><rect width=\"80\" height=\"40\" fill=\"#123456\"/>{inside}</svg>"
    )
}

fn png(width: u32, height: u32, dress: impl FnOnce(&mut png::Encoder<'_, &mut Vec<u8>>)) -> Vec<u8> {
    let mut bytes = Vec::new();
    let mut encoder = png::Encoder::new(&mut bytes, width, height);
    encoder.set_color(png::ColorType::Rgb);
    encoder.set_depth(png::BitDepth::Eight);
    dress(&mut encoder);
    let mut writer = encoder.write_header().expect("a header");
    if u64::from(width) * u64::from(height) < 1_000_000 {
        writer.write_image_data(&vec![90; (width * height * 3) as usize]).expect("pixels");
    }
    drop(writer);
    bytes
}

#[test]
fn plain_shapes_and_plain_pixels_are_a_logo() {
    let own = "<defs><linearGradient id=\"g\"><stop stop-color=\"red\"/></linearGradient><clipPath id=\"c\"><circle r=\"9\"/></clipPath><g id=\"u\"><path d=\"M0 0h9v9z\"/></g></defs>\
        <style>.a{fill:url(#g)}</style><rect class=\"a\" width=\"9\" height=\"9\" clip-path=\"url(#c)\"/><use xlink:href=\"#u\"/><use href=\"#u\" x=\"20\"/>";
    let logo = Logo::read(svg(own).as_bytes()).expect("a logo");
    assert_eq!((logo.kind, logo.shape), (LogoKind::Svg, 2.0));
    let written = String::from_utf8(logo.bytes.clone()).expect("text");
    assert!(
        written.contains("<path") && !written.contains("class=") && !written.contains("<use"),
        "it is written anew: {written}"
    );
    assert_eq!(Logo::read(svg(own).as_bytes()).expect("a logo").bytes, logo.bytes, "the same bytes each time");
    let logo = Logo::read(&png(300, 100, |_| {})).expect("a logo");
    assert_eq!((logo.kind, logo.shape), (LogoKind::Png, 3.0));
    // What a picture says of its maker, place or printer goes no further.
    let told =
        png(300, 100, |encoder| encoder.add_text_chunk("Author".to_owned(), "Somebody".to_owned()).expect("a text"));
    assert!(told.windows(8).any(|part| part == b"Somebody"));
    assert_eq!(Logo::read(&told).expect("a logo").bytes, logo.bytes);
}

#[test]
fn what_runs_moves_or_reaches_out_is_refused_by_name() {
    for (inside, why, instead) in [
        ("<script>alert(1)</script>", "a script (`<script>`)", "without scripts"),
        ("<rect onload=\"x()\" width=\"1\" height=\"1\"/>", "a script (`onload`)", "without scripts"),
        ("<rect ONCLICK=\"x()\" width=\"1\" height=\"1\"/>", "a script (`ONCLICK`)", "without scripts"),
        ("<a href=\"#x\"><rect width=\"1\" height=\"1\"/></a>", "a link (`<a>`)", "without links"),
        (
            "<use href=\"https://example.org/a.svg#x\"/>",
            "outside it (`https://example.org/a.svg#x`)",
            "everything inside",
        ),
        ("<use xlink:href=\"file:///etc/passwd\"/>", "outside it", "everything inside"),
        ("<use href=\"data:image/svg+xml,x\"/>", "outside it", "everything inside"),
        ("<image href=\"https://example.org/a.png\"/>", "a picture inside the picture", "PNG"),
        ("<image href=\"/etc/passwd\"/>", "a picture inside the picture", "PNG"),
        (
            "<foreignObject><p xmlns=\"http://www.w3.org/1999/xhtml\">x</p></foreignObject>",
            "(`<foreignObject>`)",
            "plain shapes",
        ),
        ("<rect width=\"1\" height=\"1\" fill=\"url(https://example.org/#x)\"/>", "outside it", "everything inside"),
        ("<rect width=\"1\" height=\"1\" style=\"fill:URL( 'x.svg#a' )\"/>", "outside it", "everything inside"),
        ("<style>@import 'x.css';</style>", "a style with `@`", "presentation attributes"),
        ("<style>rect{fill:url(x.svg#a)}</style>", "outside it", "presentation attributes"),
        ("<style>rect{fill:u\\72l(x.svg#a)}</style>", "a style with `\\`", "presentation attributes"),
        ("<text x=\"1\" y=\"9\">Clinic</text>", "letters, which need a font", "outlines"),
        (
            "<rect width=\"1\" height=\"1\"><animate attributeName=\"x\"/></rect>",
            "something that moves",
            "without animation",
        ),
        ("<set attributeName=\"x\"/>", "something that moves", "without animation"),
        ("<filter id=\"f\"/>", "a filter", "without effects"),
        ("<rect width=\"1\" height=\"1\" fill=\"#fff icc-color(x, 0, 0, 0, 1)\"/>", "CMYK", "plain colours"),
        ("<rect width=\"1\" height=\"1\" fill=\"device-cmyk(0 1 0 0)\"/>", "CMYK", "plain colours"),
        ("<blink/>", "`<blink>`, which no logo needs", "plain SVG"),
        ("<?xml-stylesheet href=\"x.css\"?>", "processing instruction", "plain SVG"),
        (
            "<g id=\"a\"><use href=\"#b\"/></g><g id=\"b\"><rect width=\"1\" height=\"1\"/></g><use href=\"#a\"/>",
            "a `use` of something that holds a `use`",
            "plain shapes",
        ),
        (
            "<clipPath id=\"c\" clip-path=\"url(#c)\"><rect width=\"1\" height=\"1\"/></clipPath>",
            "a clip or mask inside another",
            "merge",
        ),
    ] {
        let told = faults(YAML, &[("logo.svg", svg(inside).as_bytes())]);
        assert!(
            told.starts_with("clinic/logo | `logo.svg` cannot be the logo: ")
                && told.contains(why)
                && told.contains(instead),
            "{inside}\n{told}"
        );
    }
}

#[test]
fn a_file_is_taken_for_what_its_bytes_are() {
    let whole = |bytes: &[u8]| faults(YAML, &[("logo.svg", bytes)]);
    // The name does not matter.
    assert_eq!(whole(&png(20, 20, |_| {})), "");
    for (bytes, what) in [
        (&b"\xFF\xD8\xFF\xE0\0\x10JFIF"[..], "it is a JPEG"),
        (b"GIF89a", "it is a GIF"),
        (b"RIFF\0\0\0\0WEBP", "it is a WebP"),
        (b"%PDF-1.7", "it is a PDF"),
        (b"\x1F\x8B\x08", "SVGZ"),
        (b"\0\x01\x02\xFF", "neither SVG nor PNG"),
        (b"hello", "neither SVG nor PNG"),
        (b"", "neither SVG nor PNG"),
        (b"<html><body/></html>", "no SVG"),
        (b"<svg/>", "no SVG"),
        (b"<svg xmlns=\"http://www.w3.org/2000/svg\"", "broken"),
        (b"\x89PNG\r\n\x1a\n", "broken PNG"),
    ] {
        let told = whole(bytes);
        assert!(told.contains(what), "{bytes:?}: {told}");
    }
    let entities =
        "<!DOCTYPE svg [<!ENTITY a \"aaaaaaaaaa\"><!ENTITY b \"&a;&a;&a;\">]>".to_owned() + &svg("<title>&b;</title>");
    assert!(whole(entities.as_bytes()).contains("a document type or entities"));
    assert!(whole(b"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 9 9\"/>").contains("draws nothing"));
    let wide =
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 900 9\"><rect width=\"900\" height=\"9\"/></svg>";
    assert!(whole(wide.as_bytes()).contains("crop it"));
    let cut = png(40, 40, |_| {});
    assert!(whole(&cut[..cut.len() / 2]).contains("broken PNG"));
}

#[test]
fn bombs_are_refused_before_they_grow() {
    let begun = Instant::now();
    assert!(
        faults(YAML, &[("logo.svg", &png(60_000, 60_000, |_| {}))])
            .contains("60000 by 60000 pixels, more than 4 million")
    );
    let moves = png(20, 20, |encoder| encoder.set_animated(1, 0).expect("an animation"));
    assert!(faults(YAML, &[("logo.svg", &moves)]).contains("it moves"));
    let deep = svg(&("<g>".repeat(90_000) + &"</g>".repeat(90_000)));
    assert!(!faults(YAML, &[("logo.svg", deep.as_bytes())]).is_empty());
    let deep = svg(&("<g>".repeat(9_000) + &"</g>".repeat(9_000)));
    assert!(faults(YAML, &[("logo.svg", deep.as_bytes())]).contains("nested too deeply"));
    let copies =
        svg(&format!("<g id=\"a\">{}</g>{}", "<path d=\"M0 0h9v9z\"/>".repeat(300), "<use href=\"#a\"/>".repeat(300)));
    assert!(faults(YAML, &[("logo.svg", copies.as_bytes())]).contains("too many copies"));
    // 80 MB, and none of it read.
    let folder = tempfile::tempdir().expect("a folder");
    std::fs::File::create(folder.path().join("logo.svg"))
        .and_then(|file| file.set_len(80 * 1024 * 1024))
        .expect("a large file");
    std::fs::write(folder.path().join("clinic.yaml"), YAML).expect("a file");
    let large = text(&Clinic::load(&folder.path().join("clinic.yaml")).expect_err("too large"));
    assert!(large.contains("`logo.svg` has 81920 KiB, more than 1024 KiB"), "{large}");
    assert!(begun.elapsed() < Duration::from_secs(20), "{:?}", begun.elapsed());
}

#[test]
fn colours_of_a_printing_press_are_refused() {
    // The header of an ICC profile (ICC.1): its size, and at byte 16 its colour space.
    let profile = |space: &[u8; 4]| {
        let mut bytes = vec![0; 128];
        bytes[16..20].copy_from_slice(space);
        bytes
    };
    let with = |space: &[u8; 4]| {
        let mut bytes = png(20, 20, |_| {});
        let mut chunk = b"iCCPx\0\0".to_vec();
        chunk.extend(stored(&profile(space)));
        let mut whole = u32::try_from(chunk.len() - 4).expect("a length").to_be_bytes().to_vec();
        whole.extend(&chunk);
        whole.extend(crc(&chunk).to_be_bytes());
        bytes.splice(33..33, whole);
        bytes
    };
    assert!(faults(YAML, &[("logo.svg", &with(b"CMYK"))]).contains("CMYK"));
    assert_eq!(faults(YAML, &[("logo.svg", &with(b"RGB "))]), "");
}

/// Bytes as a zlib stream that is not compressed (RFC 1950, RFC 1951).
fn stored(bytes: &[u8]) -> Vec<u8> {
    let length = u16::try_from(bytes.len()).expect("a short one");
    let mut out = vec![0x78, 0x01, 0x01];
    out.extend(length.to_le_bytes());
    out.extend((!length).to_le_bytes());
    out.extend(bytes);
    let (mut one, mut two) = (1u32, 0u32);
    for byte in bytes {
        one = (one + u32::from(*byte)) % 65521;
        two = (two + one) % 65521;
    }
    out.extend((two << 16 | one).to_be_bytes());
    out
}

/// The checksum of a chunk (ISO/IEC 15948, annex D).
fn crc(bytes: &[u8]) -> u32 {
    !bytes.iter().fold(u32::MAX, |crc, byte| {
        (0..8).fold(crc ^ u32::from(*byte), |crc, _| if crc & 1 == 1 { crc >> 1 ^ 0xEDB8_8320 } else { crc >> 1 })
    })
}

#[test]
fn a_path_stays_in_the_folder() {
    for name in
        ["../logo.svg", "/etc/passwd", "a/../../b.svg", "C:\\\\logo.svg", "https://example.org/logo.svg", "./logo.svg"]
    {
        let told = faults(&format!("name: x\nlogo: \"{name}\""), &[]);
        assert!(told.contains("is no file of this folder or below it") && told.contains("logo.svg"), "{name}: {told}");
    }
    assert!(faults(YAML, &[]).contains("`logo.svg` cannot be read"));
    assert!(faults("logo: logo.svg", &[("logo.svg", svg("").as_bytes())]).contains("add a line `name: …`"));
    assert!(clinic(YAML, &[("logo.svg", svg("").as_bytes())]).is_ok());
}

#[cfg(unix)]
#[test]
fn a_link_out_of_the_folder_leads_nowhere() {
    let folder = tempfile::tempdir().expect("a folder");
    std::os::unix::fs::symlink(path("examples/harbour-row/logo.svg"), folder.path().join("logo.svg")).expect("a link");
    std::fs::write(folder.path().join("clinic.yaml"), YAML).expect("a file");
    let told = text(&Clinic::load(&folder.path().join("clinic.yaml")).expect_err("outside"));
    assert!(told.contains("lies outside the folder of the file that names it"), "{told}");
}
