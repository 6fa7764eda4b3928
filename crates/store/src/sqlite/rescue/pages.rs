//! The pages of a file and of the log beside it, and how what is too long for one page goes on on others.
//!
//! *Source*: SQLite, "Database File Format", sections 1.3.2 (page size), 1.6 (cell payload overflow pages) and 4.1 (the
//! write-ahead log).

use std::borrow::Cow;
use std::collections::{BTreeMap, BTreeSet};

/// The size of pages that SQLite takes where nobody asks for another.
const USUAL_SIZE: usize = 4_096;
/// The smallest and the largest pages there are (section 1.3.2).
const SMALLEST: usize = 512;
const LARGEST: usize = 65_536;
/// Where a file tells the size of its pages, and where a log does (sections 1.3 and 4.1).
const SIZE_IN_FILE: usize = 16;
const SIZE_IN_LOG: usize = 8;
/// The bytes of a log's head and of the head of each of its pages (section 4.1).
const LOG_HEAD: usize = 32;
const FRAME_HEAD: usize = 24;
/// The bytes of the number of the next page (section 1.6).
const NEXT: usize = 4;

/// The sizes that the pages may have: the usual one, and what file and log say, which may be damaged.
pub(super) fn sizes(file: &[u8], log: &[u8]) -> BTreeSet<usize> {
    let told_by_file = number(file, SIZE_IN_FILE, 2).map(|size| if size == 1 { LARGEST } else { size });
    let told_by_log = number(log, SIZE_IN_LOG, 4);
    let possible = |size: &usize| size.is_power_of_two() && (SMALLEST..=LARGEST).contains(size);
    let told = [told_by_file, told_by_log].into_iter().flatten().filter(possible);
    told.chain([USUAL_SIZE]).collect()
}

/// A number of so many bytes, the most significant first.
fn number(bytes: &[u8], at: usize, length: usize) -> Option<usize> {
    let bytes = bytes.get(at..at + length)?;
    Some(bytes.iter().fold(0, |number, byte| number << 8 | usize::from(*byte)))
}

/// Pages as they stand in a file, or one page as it stands in a log.
pub(super) struct Image<'a> {
    pub(super) bytes: &'a [u8],
}

/// Every page of a file and its log.
pub(super) struct Pages<'a> {
    size: usize,
    file: &'a [u8],
    /// Each page in the log, in the order that they were written.
    frames: Vec<&'a [u8]>,
    /// The latest of each number.
    latest: BTreeMap<usize, &'a [u8]>,
}

impl<'a> Pages<'a> {
    pub(super) fn of(file: &'a [u8], log: &'a [u8], size: usize) -> Self {
        let mut pages = Self { size, file, frames: Vec::new(), latest: BTreeMap::new() };
        let frames = log.get(LOG_HEAD..).unwrap_or_default();
        for frame in frames.chunks(FRAME_HEAD + size).filter(|frame| frame.len() > FRAME_HEAD) {
            let (head, page) = frame.split_at(FRAME_HEAD);
            pages.frames.push(page);
            pages.latest.insert(number(head, 0, NEXT).unwrap_or(0), page);
        }
        pages
    }

    /// Everything there is to look through.
    pub(super) fn images(&self) -> Vec<Image<'a>> {
        [self.file].into_iter().chain(self.frames.iter().copied()).map(|bytes| Image { bytes }).collect()
    }

    /// So many bytes that begin at a place, put together of the pages they go on on; as of the log.
    pub(super) fn payload(&self, image: &Image<'a>, at: usize, length: usize) -> Option<Cow<'a, [u8]>> {
        self.put_together(image, at, length, |page| {
            self.latest.get(&page).copied().or_else(|| self.page_of_file(page))
        })
    }

    /// The same, as if there were no log.
    pub(super) fn payload_of_file(
        &self,
        image: &Image<'a>,
        at: usize,
        length: usize,
    ) -> Option<Cow<'a, [u8]>> {
        self.put_together(image, at, length, |page| self.page_of_file(page))
    }

    fn page_of_file(&self, page: usize) -> Option<&'a [u8]> {
        let from = page.checked_sub(1)?.checked_mul(self.size)?;
        let to = from.saturating_add(self.size).min(self.file.len());
        self.file.get(from..to)
    }

    fn put_together(
        &self,
        image: &Image<'a>,
        at: usize,
        length: usize,
        page: impl Fn(usize) -> Option<&'a [u8]>,
    ) -> Option<Cow<'a, [u8]>> {
        // A record longer than all there is was never one.
        if length > self.file.len().saturating_add(self.frames.len().saturating_mul(self.size)) {
            return None;
        }
        let here = self.here(length);
        let end = at.checked_add(here)?;
        let end_of_page = (at / self.size + 1) * self.size;
        if end > end_of_page {
            return None;
        }
        let first = image.bytes.get(at..end)?;
        if here == length {
            return Some(Cow::Borrowed(first));
        }
        let mut bytes = first.to_vec();
        let mut next = number(image.bytes, end, NEXT)?;
        while bytes.len() < length {
            let page = page(next)?;
            next = number(page, 0, NEXT)?;
            let rest = page.get(NEXT..)?;
            bytes.extend_from_slice(rest.get(..rest.len().min(length - bytes.len()))?);
            // A page that was cut off gives what it has and no more.
            if rest.len() + NEXT < self.size && bytes.len() < length {
                return None;
            }
        }
        Some(Cow::Owned(bytes))
    }

    /// How many bytes of a payload stand on the page where it begins.
    ///
    /// *Source*: section 1.6, for index b-trees, as tables without row numbers are: with U bytes in a page,
    /// X = ((U-12)*64/255)-23 and M = ((U-12)*32/255)-23.
    fn here(&self, length: usize) -> usize {
        let most = ((self.size - 12) * 64 / 255).saturating_sub(23);
        let least = ((self.size - 12) * 32 / 255).saturating_sub(23);
        if length <= most {
            return length;
        }
        let with_full_pages = least + (length - least) % (self.size - NEXT);
        if with_full_pages <= most { with_full_pages } else { least }
    }
}
