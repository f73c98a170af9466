//! Writing a systematic name out: joints from the elbow to the tips, a finger or thumb said once.

use std::fmt;

use super::{Primary, Purpose, SystematicName, level, of_finger};
use crate::body::{Finger, Joint, Knuckle};

impl fmt::Display for SystematicName {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let (primary, kind, total, named) = match self {
            Self::Nonarticular(segment) => return write!(f, "nonarticular {}", segment.word().replace('-', " ")),
            Self::Articular { primary, kind, total, named } => (primary, kind, total, *named),
        };
        let parts: Vec<String> = purposes(primary)
            .into_iter()
            .map(|purpose| {
                let own: Vec<&Primary> = primary.iter().filter(|primary| primary.purpose == purpose).collect();
                format!("{} {purpose}", locations(&own, named).join(", "))
            })
            .collect();
        f.write_str(&parts.join(", "))?;
        write!(f, ", type {kind} ({total})")
    }
}

/// The purposes in the order of their first joints.
fn purposes(primary: &[Primary]) -> Vec<Purpose> {
    let mut all = Vec::new();
    for one in primary {
        if !all.contains(&one.purpose) {
            all.push(one.purpose);
        }
    }
    all
}

/// "wrist extension", "thumb CMC palmar abduction", "MP–IP extension", "ring–small finger MP flexion".
fn locations(primary: &[&Primary], named: bool) -> Vec<String> {
    let mut out = Vec::new();
    for one in primary.iter().filter(|one| matches!(one.joint, Joint::Elbow | Joint::Forearm | Joint::Wrist)) {
        out.push(format!("{} {}", level(one.joint), one.direction));
    }
    out.extend(fingers(primary, named));
    out.extend(thumb(primary));
    out
}

fn thumb(primary: &[&Primary]) -> Vec<String> {
    let joints = [(Joint::ThumbCmc, "CMC"), (Joint::ThumbMcp, "MP"), (Joint::ThumbIp, "IP")];
    let mut runs: Vec<(Vec<&str>, &str)> = Vec::new();
    for (joint, word) in joints {
        let Some(one) = primary.iter().find(|one| one.joint == joint) else { continue };
        match runs.last_mut() {
            Some((words, direction)) if *direction == one.direction => words.push(word),
            _ => runs.push((vec![word], &one.direction)),
        }
    }
    said_once("thumb", runs)
}

/// What is done to the joints of one finger: the joint, and the direction of movement.
type Done = Vec<(Knuckle, String)>;

fn fingers(primary: &[&Primary], named: bool) -> Vec<String> {
    // Fingers that have the same done to them are one location.
    let done = |finger: Finger| -> Done {
        primary
            .iter()
            .filter_map(|one| Some((of_finger(one.joint)?, &one.direction)))
            .filter(|((_, own), _)| *own == finger)
            .map(|((knuckle, _), direction)| (knuckle, direction.clone()))
            .collect()
    };
    let mut groups: Vec<(Vec<Finger>, Done)> = Vec::new();
    for &finger in Finger::ALL {
        let own = done(finger);
        if own.is_empty() {
            continue;
        }
        match groups.iter_mut().find(|(_, known)| *known == own) {
            Some((fingers, _)) => fingers.push(finger),
            None => groups.push((vec![finger], own)),
        }
    }
    groups.iter().flat_map(|(fingers, own)| said_once(&called(fingers, named), levels(own))).collect()
}

/// Neighbouring levels with one direction are said together; all three are the whole finger.
fn levels(own: &[(Knuckle, String)]) -> Vec<(Vec<&str>, &str)> {
    let same = own.windows(2).all(|pair| pair[0].1 == pair[1].1);
    if own.len() == Knuckle::ALL.len() && same {
        return vec![(Vec::new(), own[0].1.as_str())];
    }
    let word = |knuckle: Knuckle| match knuckle {
        Knuckle::Mcp => "MP",
        Knuckle::Pip => "PIP",
        Knuckle::Dip => "DIP",
    };
    let mut runs: Vec<(Vec<&str>, &str)> = Vec::new();
    for (knuckle, direction) in own {
        match runs.last_mut() {
            Some((words, known)) if known == direction => words.push(word(*knuckle)),
            _ => runs.push((vec![word(*knuckle)], direction)),
        }
    }
    for (words, _) in &mut runs {
        if *words == ["PIP", "DIP"] {
            *words = vec!["IP"];
        }
    }
    runs
}

/// The digit stands before the first of its joints only.
fn said_once(digit: &str, runs: Vec<(Vec<&str>, &str)>) -> Vec<String> {
    runs.iter()
        .enumerate()
        .map(|(index, (words, direction))| {
            let digit = if index == 0 { format!("{digit} ") } else { String::new() };
            let words = if words.is_empty() { String::new() } else { format!("{} ", words.join("–")) };
            format!("{digit}{words}{direction}")
        })
        .collect()
}

/// The names of the system: the middle finger is "long", the little one "small".
fn called(fingers: &[Finger], named: bool) -> String {
    let word = |finger: &Finger| match finger {
        Finger::Index => "index",
        Finger::Middle => "long",
        Finger::Ring => "ring",
        Finger::Little => "small",
    };
    let place = |finger: &Finger| Finger::ALL.iter().position(|known| known == finger).unwrap_or(0);
    match fingers {
        [_] if !named => "finger".to_owned(),
        [one] => format!("{} finger", word(one)),
        [first, .., last] if place(last) - place(first) + 1 == fingers.len() => {
            format!("{}–{} finger", word(first), word(last))
        }
        _ => format!("{} finger", fingers.iter().map(word).collect::<Vec<_>>().join(", ")),
    }
}
