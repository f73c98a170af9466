//! Courses of structures and faults of fit name what exists.

use super::super::library::unknown;
use super::super::{Course, CourseKind, Library};
use crate::diag::{Code, Diagnostic, Findings};
use crate::ids::StructureId;

const COURSES: &str = "content/courses.yaml";

/// Reports courses that belong to nothing or lead nowhere, and faults that change nothing.
pub fn check(library: &Library, findings: &mut Findings) {
    for course in &library.courses {
        one(library, course, findings);
    }
    for (id, shape) in &library.shapes {
        let path = format!("content/shapes/{id}.yaml");
        let mut rule = |word: &str, message: &str| {
            findings.push(Diagnostic::error(Code::CONTENT_RULE, library.place(&path, word), message));
        };
        for fault in &shape.faults {
            if fault.straps.keys().any(|strap| !shape.straps.contains_key(strap)) {
                rule(fault.id.as_str(), "the fault moves a strap that the shape does not have");
            }
            if fault.sheets.is_empty() && fault.straps.is_empty() && fault.joints.is_empty() {
                rule(fault.id.as_str(), "a fault says where `sheets` or `straps` lie, or how `joints` stand in it");
            }
        }
    }
}

/// A course belongs to a structure that exists, and is a line or a bone.
fn one(library: &Library, course: &Course, findings: &mut Findings) {
    let id = course.id.as_str();
    if !library.structures.contains_key(&course.id) {
        let known = library.structures.keys().map(StructureId::as_str);
        let (message, help) = unknown("structure", id, known);
        findings.push(Diagnostic::error(Code::ID_UNKNOWN, library.place(COURSES, id), message).help(help));
    }
    let mut rule = |message: &str| {
        findings.push(Diagnostic::error(Code::CONTENT_RULE, library.place(COURSES, id), message));
    };
    let bone = course.kind == CourseKind::Bone;
    if bone != course.bone.is_some() || bone && !course.through.is_empty() {
        rule("`kind: bone` names a `bone` and nothing else does");
    }
    if !bone && course.through.len() < 2 {
        rule("a course runs through at least two places");
    }
    if course.span.is_some() && !bone {
        rule("only a bone has a `span`");
    }
}
