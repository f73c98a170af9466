//! A posture: how far each joint is turned on each of its axes.

use std::collections::BTreeMap;

use crate::body::{Axis, Finger, Joint, JointName, Knuckle, Position, norms};
use crate::units::Degrees;

use super::Skeleton;

/// Angles of the joints; a joint that is not named rests.
#[derive(Clone, PartialEq, Eq, Debug, Default, Hash, PartialOrd, Ord)]
pub struct Posture {
    angles: BTreeMap<(Joint, Axis), Degrees>,
}

impl Posture {
    /// A hand that hangs loosely.
    pub fn rest() -> Self {
        let mut posture = Self::default();
        for (finger, mcp, pip, dip) in [
            (Finger::Index, 12, 20, 10),
            (Finger::Middle, 14, 24, 12),
            (Finger::Ring, 18, 26, 12),
            (Finger::Little, 20, 28, 14),
        ] {
            posture = posture.finger(finger, mcp, pip, dip);
        }
        posture
    }

    /// A hand laid flat, fingers a little bent as they are.
    pub fn flat() -> Self {
        let mut posture = Self::default();
        for (finger, mcp, pip, dip) in
            [(Finger::Index, 3, 6, 3), (Finger::Middle, 3, 7, 3), (Finger::Ring, 4, 8, 3), (Finger::Little, 5, 8, 4)]
        {
            posture = posture.finger(finger, mcp, pip, dip);
        }
        posture
    }

    /// The three joints of a finger bent by so many degrees.
    #[must_use]
    pub fn finger(mut self, finger: Finger, mcp: i16, pip: i16, dip: i16) -> Self {
        for (knuckle, angle) in Knuckle::ALL.into_iter().zip([mcp, pip, dip]) {
            self.turn(knuckle.of(finger), Axis::Flexion, Degrees::whole(angle));
        }
        self
    }

    /// Turns one joint on one axis.
    pub fn turn(&mut self, joint: Joint, axis: Axis, angle: Degrees) {
        self.angles.insert((joint, axis), angle);
    }

    /// Turns every joint of a name.
    pub fn set(&mut self, name: JointName, position: Position) {
        for joint in name.joints() {
            self.turn(joint, position.axis(), position.angle());
        }
    }

    /// The same posture with what another one names laid over it.
    #[must_use]
    pub fn with(&self, other: &Self) -> Self {
        let mut angles = self.angles.clone();
        angles.extend(other.angles.iter().map(|(key, angle)| (*key, *angle)));
        Self { angles }
    }

    /// The angle of a joint, if it is named.
    pub fn angle(&self, joint: Joint, axis: Axis) -> Option<Degrees> {
        self.angles.get(&(joint, axis)).copied()
    }

    /// The angle in degrees; 0 when it is not named.
    pub fn degrees(&self, joint: Joint, axis: Axis) -> f64 {
        self.angle(joint, axis).map_or(0.0, Degrees::degrees)
    }

    /// The angle in degrees at which a joint is drawn: where it rests when it is not named.
    pub fn stands(&self, joint: Joint, axis: Axis) -> f64 {
        self.angle(joint, axis).map_or_else(|| Skeleton::rest_angle(joint, axis), Degrees::degrees)
    }

    /// Everything that is named.
    pub fn angles(&self) -> impl Iterator<Item = (Joint, Axis, Degrees)> {
        self.angles.iter().map(|((joint, axis), angle)| (*joint, *axis, *angle))
    }

    /// The first joint that stands where no joint does, with its position.
    pub fn beyond(&self) -> Option<(Joint, Position)> {
        let all = self.angles().map(|(joint, axis, angle)| (joint, Position::signed(axis, angle)));
        all.into_iter().find(|(joint, position)| norms::is_beyond(*joint, *position))
    }
}
