//! Pictures are drawn once, kept whole, and never trusted when they are not.

use std::fs::{self, File};
use std::path::Path;
use std::sync::Arc;
use std::time::{Duration, SystemTime};

use palmleaf::body::{Finger, Side, View};
use palmleaf::content::Extent;
use palmleaf::picture::album::shelf::{Shelf, name, sweep};
use palmleaf::picture::album::{Album, text};
use palmleaf::picture::ink::PathText;
use palmleaf::picture::limb::{Build, Posture};
use palmleaf::picture::plate::{Style, Tone};
use palmleaf::picture::scene::{Even, Label, LabelText, Picture, Request, Subject};
use palmleaf::picture::view::Dot;

fn request(width: u16) -> Request {
    Request {
        subject: Subject::Bare(Posture::flat()),
        side: Side::Right,
        finger: Finger::Index,
        view: View::Radial,
        extent: Extent::Finger,
        build: Build::Adult,
        width,
        height: 40,
    }
}

fn picture() -> Picture {
    let mut path = PathText::default();
    path.polygon(&[Dot::new(0.0, 0.0), Dot::new(10.0, -3.0), Dot::new(7.0, 9.0)]);
    let mut picture = Picture::default();
    picture.drawing.width = 100.1 + 0.2;
    picture.drawing.height = 1.0 / 3.0;
    for tone in [Tone::Paper, Tone::Shell, Tone::Strap, Tone::Dark, Tone::Faint, Tone::Soft, Tone::Ink] {
        picture.drawing.add("skin", Style::Fill(tone), path.clone());
        picture.drawing.add("strap-wrist", Style::Stroke { tone, width: 0.1 + 0.2, dash: None }, path.clone());
        picture.drawing.add("sheet-1", Style::Stroke { tone, width: 7.3, dash: Some((3.1, 2.9)) }, path.clone());
    }
    picture.labels.push(Label { at: Dot::new(-0.5, 1e-3), text: LabelText::Letter(2), even: Even::Neither, wide: 0.0 });
    picture.labels.push(Label {
        at: Dot::new(3.0, 2.0 / 7.0),
        text: LabelText::Number(11),
        even: Even::Right,
        wide: 1.0 / 3.0,
    });
    picture
}

/// Everything that shows of a picture.
fn shown(picture: &Picture) -> String {
    let drawing = &picture.drawing;
    let parts: Vec<_> =
        drawing.parts.iter().map(|part| (&part.name, part.style, part.path.text(), part.path.nodes)).collect();
    format!("{} {} {parts:?} {:?}", drawing.width, drawing.height, picture.labels)
}

#[test]
fn a_picture_comes_back_as_it_was() {
    let before = picture();
    let after = text::read("a", &text::write("a", &before)).expect("a picture");
    assert_eq!(shown(&before), shown(&after));
    assert_eq!(before.drawing.svg("x"), after.drawing.svg("x"));
}

#[test]
fn a_damaged_text_is_no_picture() {
    let whole = text::write("a", &picture());
    assert!(text::read("b", &whole).is_none(), "kept by another name");
    for end in 0..whole.len() {
        assert!(text::read("a", &whole[..end]).is_none(), "cut at {end}");
    }
    for at in 0..whole.len() {
        let mut bytes = whole.clone().into_bytes();
        bytes[at] ^= 1;
        if let Ok(altered) = String::from_utf8(bytes) {
            assert!(text::read("a", &altered).is_none(), "altered at {at}");
        }
    }
}

#[test]
fn who_asks_at_the_same_time_gets_the_same_drawing() {
    let album = Album::new(None);
    let all: Vec<Arc<Picture>> = std::thread::scope(|scope| {
        let asked: Vec<_> = (0..8).map(|_| scope.spawn(|| album.get(&request(30)).expect("a picture"))).collect();
        asked.into_iter().map(|one| one.join().expect("no panic")).collect()
    });
    assert!(all.iter().all(|one| Arc::ptr_eq(one, &all[0])));
    assert_eq!(album.count(), 1);
}

#[test]
fn the_next_run_shows_the_same_from_disk() {
    let folder = tempfile::tempdir().expect("a folder");
    let inside = folder.path().join("deep").join("down");
    let drawn = Album::new(Some(inside.clone())).get(&request(30)).expect("a picture");
    let file = Shelf::new(inside.clone()).file(&name(&request(30).key()));
    let kept = fs::read_to_string(&file).expect("kept");
    let again = Album::new(Some(inside.clone())).get(&request(30)).expect("a picture");
    assert_eq!(shown(&drawn), shown(&again));
    // Cut short, altered, of another picture: drawn anew, and kept anew.
    let other = kept.replacen("size ", "size 1", 1);
    for bad in ["", &kept[..kept.len() / 2], &other, "palmleaf picture 1\n"] {
        fs::write(&file, bad).expect("written");
        let again = Album::new(Some(inside.clone())).get(&request(30)).expect("a picture");
        assert_eq!(shown(&drawn), shown(&again));
        assert_eq!(fs::read_to_string(&file).expect("kept"), kept);
    }
    fs::write(&file, [0xFF, 0xFE, 0x00]).expect("written");
    Album::new(Some(inside)).get(&request(30)).expect("a picture");
    assert_eq!(fs::read_to_string(&file).expect("kept"), kept);
}

#[test]
fn a_folder_that_cannot_be_is_no_fault() {
    let folder = tempfile::tempdir().expect("a folder");
    let taken = folder.path().join("file");
    fs::write(&taken, "not a folder").expect("written");
    for place in [taken.clone(), taken.join("below"), "/proc/nowhere".into()] {
        assert!(Album::new(Some(place)).get(&request(30)).is_ok());
    }
    // An entry that is a folder can be neither read nor replaced.
    let shelf = Shelf::new(folder.path().to_owned());
    fs::create_dir(shelf.file(&name(&request(30).key()))).expect("a folder");
    assert!(Album::new(Some(folder.path().to_owned())).get(&request(30)).is_ok());
}

#[test]
fn two_processes_keep_the_same_picture_at_the_same_time() {
    let folder = tempfile::tempdir().expect("a folder");
    std::thread::scope(|scope| {
        for _ in 0..6 {
            // An album each, as two processes have.
            scope.spawn(|| Album::new(Some(folder.path().to_owned())).get(&request(31)).expect("a picture"));
        }
    });
    let left: Vec<String> = names(folder.path()).into_iter().filter(|name| name != "swept").collect();
    assert_eq!(left.len(), 1, "{left:?}");
    assert!(Shelf::new(folder.path().to_owned()).get(&name(&request(31).key())).is_some());
}

const DAY: Duration = Duration::from_secs(24 * 60 * 60);

fn entry(folder: &Path, name: &str, days: u32, size: usize) {
    let file = Shelf::new(folder.to_owned()).file(name);
    fs::write(&file, vec![b'x'; size]).expect("written");
    aged(&file, days);
}

fn aged(file: &Path, days: u32) {
    let file = File::options().append(true).open(file).expect("there");
    file.set_modified(SystemTime::now() - DAY * days).expect("older");
}

fn names(folder: &Path) -> Vec<String> {
    let entries = fs::read_dir(folder).expect("a folder");
    let mut names: Vec<String> =
        entries.map(|entry| entry.expect("an entry").file_name().to_string_lossy().into_owned()).collect();
    names.sort();
    names
}

#[test]
fn the_oldest_make_room_and_strangers_stay() {
    let folder = tempfile::tempdir().expect("a folder");
    for (name, days) in [("a", 61), ("b", 20), ("c", 10), ("d", 0)] {
        entry(folder.path(), name, days, 10);
    }
    fs::create_dir(folder.path().join("notes")).expect("a folder");
    fs::write(folder.path().join("old.txt"), "old").expect("written");
    aged(&folder.path().join("old.txt"), 400);
    fs::write(folder.path().join(".palmleaf-x.part"), "left").expect("written");
    aged(&folder.path().join(".palmleaf-x.part"), 2);
    fs::write(folder.path().join(".palmleaf-y.part"), "at work").expect("written");
    sweep(folder.path(), 25);
    assert_eq!(names(folder.path()), [".palmleaf-y.part", "c.picture", "d.picture", "notes", "old.txt"]);
}

#[test]
fn what_is_used_grows_young() {
    let folder = tempfile::tempdir().expect("a folder");
    entry(folder.path(), "a", 59, 10);
    let shelf = Shelf::new(folder.path().to_owned());
    assert!(shelf.get("a").is_some() && shelf.get("b").is_none());
    let modified = fs::metadata(shelf.file("a")).and_then(|meta| meta.modified()).expect("a time");
    assert!(modified.elapsed().unwrap_or_default() < DAY);
}

#[test]
fn the_folder_is_swept_once_a_day() {
    let folder = tempfile::tempdir().expect("a folder");
    let shelf = Shelf::new(folder.path().to_owned());
    entry(folder.path(), "a", 61, 10);
    shelf.put("b", b"b");
    assert_eq!(names(folder.path()), ["b.picture", "swept"]);
    entry(folder.path(), "a", 61, 10);
    shelf.put("c", b"c");
    assert_eq!(names(folder.path()), ["a.picture", "b.picture", "c.picture", "swept"]);
    aged(&folder.path().join("swept"), 2);
    shelf.put("d", b"d");
    assert_eq!(names(folder.path()), ["b.picture", "c.picture", "d.picture", "swept"]);
}
