//! The clinic's colour, and whether it can be read.
//!
//! Contrast is that of WCAG 2.2 ("contrast ratio" and "relative luminance" in its glossary): (L1 + 0.05) / (L2 + 0.05),
//! from 1 for no contrast to 21 for black on white. Words need 4.5 (success criterion 1.4.3, level AA).

use std::fmt;
use std::str::FromStr;

use crate::source::text_value;
use crate::units::Misread;

/// The least contrast of words against their ground.
pub const LEAST: f64 = 4.5;

/// A colour of a screen (sRGB), a byte for each of red, green and blue.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub struct Colour([u8; 3]);

/// A colour that can be read on white, and on the same paper copied in black and white.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub struct Accent(Colour);

impl Colour {
    pub const WHITE: Self = Self([255; 3]);
    pub const BLACK: Self = Self([0; 3]);
    /// The ground of the page for a telephone at night: `--paper` in `src/webpage/look.css`.
    pub const NIGHT: Self = Self([0x12; 3]);

    pub const fn new(red: u8, green: u8, blue: u8) -> Self {
        Self([red, green, blue])
    }

    /// Relative luminance: 0 for black, 1 for white.
    pub fn luminance(self) -> f64 {
        let linear = |byte: u8| {
            let share = f64::from(byte) / 255.0;
            if share <= 0.04045 { share / 12.92 } else { libm::pow((share + 0.055) / 1.055, 2.4) }
        };
        let [red, green, blue] = self.0.map(linear);
        0.2126 * red + 0.7152 * green + 0.0722 * blue
    }

    /// Contrast with another colour, from 1 to 21.
    pub fn contrast(self, other: Self) -> f64 {
        let (one, two) = (self.luminance(), other.luminance());
        (one.max(two) + 0.05) / (one.min(two) + 0.05)
    }

    /// The colour of this hue nearest to it, on the way to `end`, that can be read on `ground`.
    fn readable(self, ground: Self, end: Self) -> Self {
        const STEPS: u32 = 1000;
        let mixed = |step: u32| {
            let mut bytes = self.0;
            for (byte, end) in bytes.iter_mut().zip(end.0) {
                let sum = u32::from(*byte) * (STEPS - step) + u32::from(end) * step;
                *byte = u8::try_from((sum + STEPS / 2) / STEPS).unwrap_or(end);
            }
            Self(bytes)
        };
        (0..=STEPS).map(mixed).find(|colour| colour.contrast(ground) >= LEAST).unwrap_or(end)
    }
}

impl fmt::Display for Colour {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let [red, green, blue] = self.0;
        write!(f, "#{red:02x}{green:02x}{blue:02x}")
    }
}

impl Accent {
    /// On white: on paper, and on the page for a telephone by day.
    pub fn by_day(self) -> Colour {
        self.0
    }

    /// On the dark page for a telephone: the nearest lighter colour that can be read there.
    pub fn by_night(self) -> Colour {
        self.0.readable(Colour::NIGHT, Colour::WHITE)
    }
}

impl FromStr for Accent {
    type Err = Misread;

    fn from_str(text: &str) -> Result<Self, Misread> {
        let digits = text.strip_prefix('#').filter(|digits| digits.len() == 6);
        let byte = |at: usize| digits.and_then(|digits| u8::from_str_radix(digits.get(at..at + 2)?, 16).ok());
        let plain = text.bytes().skip(1).all(|b| b.is_ascii_hexdigit());
        let (Some(red), Some(green), Some(blue), true) = (byte(0), byte(2), byte(4), plain) else {
            return Err(Misread::new(
                format!("`{text}` is no colour"),
                "`#` and six of 0-9 and a-f, such as `\"#1f5f7a\"`",
            ));
        };
        let colour = Colour::new(red, green, blue);
        let contrast = colour.contrast(Colour::WHITE);
        if contrast < LEAST {
            // Cut off, not rounded: 4.499 is not 4.50.
            let shown = libm::floor(contrast * 100.0) / 100.0;
            let wrong = format!("`{colour}` on white has a contrast of {shown:.2} to 1; words need {LEAST} to 1");
            let darker = colour.readable(Colour::WHITE, Colour::BLACK);
            return Err(Misread::new(wrong, format!("`\"{darker}\"`, the nearest darker colour that has it")));
        }
        Ok(Self(colour))
    }
}

text_value!(
    Accent,
    "a colour",
    "A colour, as `#` and two hexadecimal digits each for red, green and blue. Its contrast with white is at least 4.5 to 1.",
    "^#[0-9A-Fa-f]{6}$",
    "#1f5f7a"
);

#[cfg(test)]
mod tests {
    use super::{Accent, Colour, LEAST};

    #[test]
    fn the_colour_offered_passes_and_its_neighbour_does_not() {
        for (red, green, blue) in [(255, 204, 0), (119, 119, 119), (0, 200, 120), (255, 255, 255), (240, 90, 90)] {
            let colour = Colour::new(red, green, blue);
            let offered = colour.readable(Colour::WHITE, Colour::BLACK);
            assert!(offered.contrast(Colour::WHITE) >= LEAST, "{offered}");
            assert!(offered.contrast(Colour::WHITE) < LEAST + 0.1, "{offered} is darker than it has to be");
            let wrong = colour.to_string().parse::<Accent>().map(Accent::by_day);
            assert!(wrong.is_err_and(|misread| misread.to_string().contains(&offered.to_string())));
        }
    }
}
