//! Where a long boom is broken into rows.

use crate::pen::count;

/// What it costs to break a row inside a section, in rows. Our own choice: a whole section is worth one more row, but not two.
const INSIDE_A_SECTION: f64 = 1.5;
/// What it costs that a row has twice the tips of an even share, in rows. Our own choice: evenness settles ties.
const UNEVEN: f64 = 0.5;

/// How many tips stand in each row: as few rows as can be, broken at section borders, of even lengths.
pub(crate) fn rows(tips: usize, sections: &[u32], most: usize) -> Vec<usize> {
    let most = most.max(1);
    if tips <= most {
        return if tips == 0 { Vec::new() } else { vec![tips] };
    }
    let borders = borders(sections);
    let share = count(tips) / count(tips.div_ceil(most));
    // For each number of tips: the least cost of putting so many in rows, and how many are in the last row.
    let mut best: Vec<(f64, usize)> = vec![(0.0, 0)];
    for end in 1..=tips {
        let mut found = (f64::INFINITY, 1);
        for length in 1..=most.min(end) {
            let Some((before, _)) = best.get(end - length) else { continue };
            let inside = end != tips && borders.binary_search(&end).is_err();
            let off = (count(length) - share) / share;
            let cost = before + 1.0 + if inside { INSIDE_A_SECTION } else { 0.0 } + UNEVEN * off * off;
            if cost < found.0 {
                found = (cost, length);
            }
        }
        best.push(found);
    }
    let mut lengths = Vec::new();
    let mut end = tips;
    while end > 0 {
        let length = best.get(end).map_or(end, |(_, length)| *length).max(1);
        lengths.push(length);
        end -= length.min(end);
    }
    lengths.reverse();
    lengths
}

/// How many tips stand before each end of a section.
pub(crate) fn borders(sections: &[u32]) -> Vec<usize> {
    let mut borders = Vec::new();
    let mut total = 0_usize;
    for tips in sections {
        total = total.saturating_add(usize::try_from(*tips).unwrap_or(usize::MAX));
        borders.push(total);
    }
    borders
}

#[cfg(test)]
mod tests {
    use super::*;

    fn check(tips: usize, sections: &[u32], most: usize, expected: &[usize]) {
        assert_eq!(rows(tips, sections, most), expected, "{tips} tips in {sections:?}, {most} a row");
    }

    #[test]
    fn what_fits_is_one_row() {
        check(0, &[], 14, &[]);
        check(12, &[4, 4, 4], 14, &[12]);
        check(14, &[], 14, &[14]);
    }

    #[test]
    fn rows_are_even_and_whole_sections() {
        check(20, &[], 14, &[10, 10]);
        check(36, &[9, 9, 9, 9], 24, &[18, 18]);
        check(36, &[12, 12, 12], 24, &[24, 12]);
        check(39, &[13, 13, 13], 24, &[13, 13, 13]);
        check(216, &[24; 9], 72, &[72, 72, 72]);
    }

    #[test]
    fn a_section_longer_than_a_row_is_broken() {
        check(40, &[40], 24, &[20, 20]);
        check(30, &[30, 2], 24, &[15, 15]);
    }
}
