//! A picture for the head of a sheet: the sign of an office or a farm. Looked at before it is put on a page, so that what
//! is no picture is told at once and not found as an empty frame at the printer.

use units::{Arg, Args, Coded};

/// The most bytes a picture may have. Our own choice: a sign in a head needs far less, and a page must stay small enough
/// to be sent over a phone.
pub const MOST_BYTES: usize = 2_000_000;

/// The most dots either way. Our own choice: 170 mm at 600 dots an inch.
const MOST_DOTS: u32 = 4_016;

/// How a picture is written down.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Format {
    /// PNG, ISO/IEC 15948.
    Png,
    /// JPEG, ITU-T T.81.
    Jpeg,
}

impl Format {
    /// The media type, as IANA registers it.
    #[must_use]
    pub const fn media_type(self) -> &'static str {
        match self {
            Self::Png => "image/png",
            Self::Jpeg => "image/jpeg",
        }
    }

    /// The usual ending of a file's name.
    #[must_use]
    pub const fn ending(self) -> &'static str {
        match self {
            Self::Png => "png",
            Self::Jpeg => "jpg",
        }
    }
}

/// A picture that was looked at.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Picture {
    bytes: Vec<u8>,
    format: Format,
    dots: (u32, u32),
}

/// Why something is no picture for a sheet.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum PictureError {
    /// Neither PNG nor JPEG, whatever its name says.
    #[error("this is no picture that can be printed: it is neither PNG nor JPEG")]
    NotAPicture,
    /// It begins as a picture and does not end as one: it was cut short on the way.
    #[error("this picture is not whole: it begins as {} and breaks off", .format.ending().to_uppercase())]
    NotWhole {
        /// As what it begins.
        format: Format,
    },
    /// Too many bytes.
    #[error("this picture has {bytes} bytes, more than the {MOST_BYTES} a sheet takes")]
    TooLarge {
        /// How many it has.
        bytes: usize,
    },
    /// Nothing wide or high, or more dots than paper can show.
    #[error("this picture is {wide} by {high} dots; a sheet takes 1 to {MOST_DOTS} either way")]
    Size {
        /// How wide.
        wide: u32,
        /// How high.
        high: u32,
    },
}

impl Coded for PictureError {
    fn code(&self) -> &'static str {
        match self {
            Self::NotAPicture => "picture_not_a_picture",
            Self::NotWhole { .. } => "picture_not_whole",
            Self::TooLarge { .. } => "picture_too_large",
            Self::Size { .. } => "picture_size",
        }
    }

    fn args(&self) -> Args {
        let count = |number: usize| Arg::Count(u32::try_from(number).unwrap_or(u32::MAX));
        match self {
            Self::NotAPicture => Args::new(),
            Self::NotWhole { format } => {
                Args::new().with("format", Arg::Text(format.ending().to_uppercase()))
            }
            Self::TooLarge { bytes } => {
                Args::new().with("bytes", count(*bytes)).with("most", count(MOST_BYTES))
            }
            Self::Size { wide, high } => Args::new()
                .with("wide", Arg::Count(*wide))
                .with("high", Arg::Count(*high))
                .with("most", Arg::Count(MOST_DOTS)),
        }
    }

    fn hint(&self) -> Option<String> {
        let hint = match self {
            Self::NotAPicture => "save the sign as PNG or JPEG and give that file",
            Self::NotWhole { .. } => "copy or save the picture again",
            Self::TooLarge { .. } | Self::Size { .. } => {
                "save it smaller: 600 by 200 dots are enough for a head"
            }
        };
        Some(hint.to_string())
    }
}

impl Picture {
    /// Looks at the bytes of a picture.
    ///
    /// *Errors*: no PNG or JPEG, one that breaks off, too many bytes or dots.
    ///
    /// *Source*: PNG: ISO/IEC 15948 (signature, IHDR first, IEND last); JPEG: ITU-T T.81, annex B (SOI, SOFn, EOI).
    pub fn new(bytes: Vec<u8>) -> Result<Self, PictureError> {
        if bytes.len() > MOST_BYTES {
            return Err(PictureError::TooLarge { bytes: bytes.len() });
        }
        let (format, dots) = if bytes.starts_with(PNG) {
            (Format::Png, png(&bytes))
        } else if bytes.starts_with(JPEG) {
            (Format::Jpeg, jpeg(&bytes))
        } else {
            return Err(PictureError::NotAPicture);
        };
        let (wide, high) = dots.ok_or(PictureError::NotWhole { format })?;
        if !(1..=MOST_DOTS).contains(&wide) || !(1..=MOST_DOTS).contains(&high) {
            return Err(PictureError::Size { wide, high });
        }
        Ok(Self { bytes, format, dots: (wide, high) })
    }

    /// Its bytes.
    #[must_use]
    pub fn bytes(&self) -> &[u8] {
        &self.bytes
    }

    /// How it is written down.
    #[must_use]
    pub const fn format(&self) -> Format {
        self.format
    }

    /// How much wider it is than high.
    #[must_use]
    pub fn shape(&self) -> f64 {
        f64::from(self.dots.0) / f64::from(self.dots.1)
    }
}

/// A PNG's signature. Source: ISO/IEC 15948, 5.2.
const PNG: &[u8] = &[0x89, b'P', b'N', b'G', 0x0d, 0x0a, 0x1a, 0x0a];
/// A JPEG's start of image and the marker behind it. Source: ITU-T T.81, table B.1.
const JPEG: &[u8] = &[0xff, 0xd8, 0xff];

fn number(bytes: &[u8], at: usize, size: usize) -> Option<u32> {
    bytes
        .get(at..at + size)?
        .iter()
        .try_fold(0_u32, |number, byte| number.checked_mul(256).map(|number| number | u32::from(*byte)))
}

/// The check sum of a PNG's chunk.
///
/// *Source*: ISO/IEC 15948, annex D: CRC-32 with the polynomial 0xEDB88320 (bits reversed), begun and ended with ones.
fn check_sum(bytes: &[u8]) -> u32 {
    // Source: ISO/IEC 15948, annex D.
    const POLYNOMIAL: u32 = 0xEDB8_8320;
    let sum = bytes.iter().fold(u32::MAX, |sum, byte| {
        (0..8).fold(
            sum ^ u32::from(*byte),
            |sum, _| if sum & 1 == 1 { (sum >> 1) ^ POLYNOMIAL } else { sum >> 1 },
        )
    });
    !sum
}

/// Width and height out of the header, where every chunk up to the last is there.
fn png(bytes: &[u8]) -> Option<(u32, u32)> {
    let mut at = PNG.len();
    let mut dots = None;
    loop {
        let length = usize::try_from(number(bytes, at, 4)?).ok()?;
        let kind = bytes.get(at + 4..at + 8)?;
        // Behind the data come four bytes of check sum, over kind and data.
        let whole = bytes.get(at + 4..at.checked_add(length)?.checked_add(12)?)?;
        let (summed, sum) = whole.split_at(length + 4);
        if check_sum(summed).to_be_bytes() != sum {
            return None;
        }
        match (kind, dots) {
            (b"IHDR", None) if length == 13 => dots = number(bytes, at + 8, 4).zip(number(bytes, at + 12, 4)),
            (_, None) => return None,
            (b"IEND", Some(_)) => return dots,
            (_, Some(_)) => {}
        }
        at += length + 12;
    }
}

/// Width and height out of the frame header, where the picture has its end.
fn jpeg(bytes: &[u8]) -> Option<(u32, u32)> {
    let mut at = 2;
    let dots = loop {
        let [0xff, marker] = *bytes.get(at..at + 2)? else { return None };
        match marker {
            // Fill bytes before a marker.
            0xff => at += 1,
            0x01 | 0xd0..=0xd7 => at += 2,
            // Start of frame, but for the tables that share the row: DHT, JPG, DAC.
            0xc0..=0xcf if !matches!(marker, 0xc4 | 0xc8 | 0xcc) => {
                break number(bytes, at + 7, 2).zip(number(bytes, at + 5, 2))?;
            }
            _ => at += 2 + usize::try_from(number(bytes, at + 2, 2)?).ok()?,
        }
    };
    // Some cameras leave noughts behind the end of the image.
    let end = bytes.iter().rposition(|byte| *byte != 0)?;
    (bytes.get(end.checked_sub(1)?..=end)? == [0xff, 0xd9]).then_some(dots)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A PNG of one dot; its check sums are those of zlib's crc32, its data that of zlib's compress.
    const DOT: &[u8] = &[
        0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0x00, 0x00, 0x00, 0x0d, 0x49, 0x48, 0x44, 0x52, 0x00,
        0x00, 0x00, 0x01, 0x00, 0x00, 0x00, 0x01, 0x08, 0x02, 0x00, 0x00, 0x00, 0x90, 0x77, 0x53, 0xde, 0x00,
        0x00, 0x00, 0x0c, 0x49, 0x44, 0x41, 0x54, 0x78, 0x9c, 0x63, 0x98, 0xa5, 0xcf, 0x0d, 0x00, 0x02, 0x3b,
        0x00, 0xd5, 0xe0, 0x82, 0xdc, 0x36, 0x00, 0x00, 0x00, 0x00, 0x49, 0x45, 0x4e, 0x44, 0xae, 0x42, 0x60,
        0x82,
    ];

    #[test]
    fn a_picture_is_known_by_what_it_holds() {
        let picture = Picture::new(DOT.to_vec()).expect("a PNG");
        assert_eq!((picture.format(), picture.dots), (Format::Png, (1, 1)));
    }

    #[test]
    fn what_is_no_picture_is_told_so() {
        for bytes in [&b""[..], b"this is a letter", b"<svg xmlns='http://www.w3.org/2000/svg'/>", b"GIF89a"]
        {
            assert_eq!(Picture::new(bytes.to_vec()), Err(PictureError::NotAPicture));
        }
    }

    #[test]
    fn a_picture_that_breaks_off_is_told_so_wherever_it_does() {
        for length in PNG.len()..DOT.len() {
            let cut = Picture::new(DOT[..length].to_vec());
            assert_eq!(cut, Err(PictureError::NotWhole { format: Format::Png }), "{length}");
        }
        let cut = Picture::new(vec![0xff, 0xd8, 0xff, 0xe0, 0, 16, b'J']);
        assert_eq!(cut, Err(PictureError::NotWhole { format: Format::Jpeg }));
    }

    #[test]
    fn a_picture_changed_on_its_way_is_told_so() {
        // ISO/IEC 15948, 11.2.5: the check sum of an IEND chunk is always this.
        assert_eq!(check_sum(b"IEND"), 0xAE42_6082);
        for place in PNG.len()..DOT.len() {
            let mut changed = DOT.to_vec();
            changed[place] ^= 0x10;
            assert!(Picture::new(changed).is_err(), "{place}");
        }
    }

    #[test]
    fn too_large_is_too_large() {
        let mut wide = DOT.to_vec();
        wide[16] = 1;
        let sum = check_sum(&wide[12..29]).to_be_bytes();
        wide[29..33].copy_from_slice(&sum);
        assert!(matches!(Picture::new(wide), Err(PictureError::Size { .. })));
        assert!(matches!(Picture::new(vec![0; MOST_BYTES + 1]), Err(PictureError::TooLarge { .. })));
    }
}
