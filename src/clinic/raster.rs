//! A logo of pixels: a PNG (ISO/IEC 15948), decoded and written anew with nothing but its pixels.

use std::io::Cursor;

use png::{BitDepth, ColorType, Decoder, Encoder, Limits, Transformations};

use super::logo::Unfit;

/// Pixels of a logo. A file of a few kilobytes can say that it has billions.
const MOST_PIXELS: u64 = 4_000_000;
/// Bytes that decoding may take.
const MOST_MEMORY: usize = 64 * 1024 * 1024;
/// Where an ICC profile says which colours it is about (ICC.1, header, "data colour space").
const COLOUR_SPACE: std::ops::Range<usize> = 16..20;

/// Reads a PNG and writes it anew: its bytes, and how wide and high it is in pixels.
///
/// # Errors
/// What is wrong with it, and what to do instead.
pub fn read(bytes: &[u8]) -> Result<(Vec<u8>, u32, u32), Unfit> {
    let broken = |why: &dyn std::fmt::Display| Unfit::new(format!("it is a broken PNG: {why}"), "save it again as PNG");
    let mut decoder = Decoder::new_with_limits(Cursor::new(bytes), Limits { bytes: MOST_MEMORY });
    let info = decoder.read_header_info().map_err(|why| broken(&why))?;
    let (width, height) = (info.width, info.height);
    if u64::from(width) * u64::from(height) > MOST_PIXELS {
        let what = format!("it has {width} by {height} pixels, more than {} million", MOST_PIXELS / 1_000_000);
        return Err(Unfit::new(what, "save it smaller: a thousand pixels across are plenty"));
    }
    decoder.set_transformations(Transformations::normalize_to_color8() | Transformations::ALPHA);
    let mut reader = decoder.read_info().map_err(|why| broken(&why))?;
    let info = reader.info();
    if info.animation_control.is_some() {
        return Err(Unfit::new("it moves (an animated PNG)", "save a single picture"));
    }
    if let Some(profile) = &info.icc_profile {
        let space = profile.get(COLOUR_SPACE).unwrap_or_default();
        if space != b"RGB " && space != b"GRAY" {
            return Err(Unfit::new(
                "its colours are for a printing press (a CMYK profile)",
                "save it in screen colours (sRGB)",
            ));
        }
    }
    let size = reader.output_buffer_size().ok_or_else(|| broken(&"its size is impossible"))?;
    let mut pixels = vec![0; size];
    let frame = reader.next_frame(&mut pixels).map_err(|why| broken(&why))?;
    pixels.truncate(frame.buffer_size());
    let seen = match frame.color_type {
        ColorType::Rgba => pixels.chunks(4).any(|pixel| pixel.last().is_some_and(|alpha| *alpha > 0)),
        ColorType::GrayscaleAlpha => pixels.chunks(2).any(|pixel| pixel.last().is_some_and(|alpha| *alpha > 0)),
        _ => true,
    };
    if !seen {
        return Err(Unfit::new("nothing in it can be seen", "save it with its colours"));
    }
    let mut written = Vec::new();
    let mut encoder = Encoder::new(&mut written, width, height);
    encoder.set_color(frame.color_type);
    encoder.set_depth(BitDepth::Eight);
    let done = encoder.write_header().and_then(|mut writer| writer.write_image_data(&pixels));
    done.map_err(|why| broken(&why))?;
    Ok((written, width, height))
}
