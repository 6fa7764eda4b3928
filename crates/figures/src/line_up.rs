//! Keeping things on a line from standing on each other.

/// Moves things of the given extents as little as can be, so that they keep their order, do not overlap and stay
/// between `low` and `high` where there is room for all; each `(centre, extent)` is given in order of centres.
///
/// The least squares of the movements are found by pooling neighbours that press on each other.
pub(crate) fn apart(wanted: &[(f64, f64)], gap: f64, low: f64, high: f64) -> Vec<f64> {
    // With what must stand between the first centre and this one taken off, order is all that is left to keep.
    let mut offsets = Vec::with_capacity(wanted.len());
    let mut offset = 0.0;
    let mut before: Option<f64> = None;
    for (_, extent) in wanted {
        if let Some(before) = before {
            offset += (before + extent) / 2.0 + gap;
        }
        before = Some(*extent);
        offsets.push(offset);
    }
    // Pools of (sum, count).
    let mut pools: Vec<(f64, f64)> = Vec::new();
    for ((centre, _), offset) in wanted.iter().zip(&offsets) {
        let mut pool = (centre - offset, 1.0);
        while let Some(last) = pools.last().copied() {
            if last.0 / last.1 <= pool.0 / pool.1 {
                break;
            }
            pools.pop();
            pool = (pool.0 + last.0, pool.1 + last.1);
        }
        pools.push(pool);
    }
    let first = wanted.first().map_or(0.0, |(_, extent)| extent / 2.0);
    let last = wanted.last().map_or(0.0, |(_, extent)| extent / 2.0) + offset;
    let (least, most) = (low + first, (high - last).max(low + first));
    let mut centres = Vec::with_capacity(wanted.len());
    for (sum, count) in pools {
        let mut left = count;
        while left > 0.5 {
            let offset = offsets.get(centres.len()).copied().unwrap_or(offset);
            centres.push((sum / count).max(least).min(most) + offset);
            left -= 1.0;
        }
    }
    centres
}

/// A label that would like a place on one of a few lines.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Wish {
    pub(crate) centre: f64,
    pub(crate) width: f64,
    pub(crate) rank: Rank,
}

/// Who goes first when there is no room for all.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) enum Rank {
    /// Takes any line.
    First,
    /// Takes the first line or none, when not all have a place.
    Second,
}

/// Where a label stands: its centre, and its line from 0.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Stand {
    pub(crate) centre: f64,
    pub(crate) line: usize,
}

/// Gives labels their places: all on one line if that can be, else all by turns on two, else those that matter first.
/// A label without a place is left out; none overlap, and all are between `low` and `high`.
pub(crate) fn by_turns(wishes: &[Wish], gap: f64, low: f64, high: f64) -> Vec<Option<Stand>> {
    for lines in 1..=2 {
        let stands: Vec<Option<Stand>> = wishes
            .iter()
            .enumerate()
            .map(|(index, wish)| inside(wish, low, high).map(|centre| Stand { centre, line: index % lines }))
            .collect();
        if stands.iter().all(Option::is_some) && free_of_overlap(wishes, &stands, gap) {
            return stands;
        }
    }
    by_rank(wishes, gap, 2, low, high)
}

/// Gives labels their places by rank: a line further off is taken only by what has no place on a nearer one.
pub(crate) fn by_rank(wishes: &[Wish], gap: f64, lines: usize, low: f64, high: f64) -> Vec<Option<Stand>> {
    let mut taken: Vec<Vec<(f64, f64)>> = vec![Vec::new(); lines.max(1)];
    let mut placed = vec![None; wishes.len()];
    for rank in [Rank::First, Rank::Second] {
        for (index, wish) in wishes.iter().enumerate() {
            let Some(centre) = inside(wish, low, high) else { continue };
            if wish.rank != rank {
                continue;
            }
            let (left, right) = (centre - wish.width / 2.0, centre + wish.width / 2.0);
            let may = if rank == Rank::First { lines } else { 1 };
            let free = taken.iter_mut().take(may.max(1)).enumerate().find(|(_, spans)| {
                spans.iter().all(|(start, end)| right + gap <= *start || left >= end + gap)
            });
            if let Some((line, spans)) = free {
                spans.push((left, right));
                if let Some(place) = placed.get_mut(index) {
                    *place = Some(Stand { centre, line });
                }
            }
        }
    }
    placed
}

/// Gives all labels a place on one line, moved apart where they press; none when one would have to go further than
/// `furthest` from what it names.
pub(crate) fn beside(
    wishes: &[Wish],
    gap: f64,
    furthest: f64,
    low: f64,
    high: f64,
) -> Option<Vec<Option<Stand>>> {
    let mut order: Vec<usize> = (0..wishes.len()).collect();
    let centre = |index: &usize| wishes.get(*index).map_or(0.0, |wish| wish.centre);
    order.sort_by(|one, other| centre(one).total_cmp(&centre(other)));
    let wanted: Vec<(f64, f64)> =
        order.iter().filter_map(|index| wishes.get(*index)).map(|wish| (wish.centre, wish.width)).collect();
    let mut stands = vec![None; wishes.len()];
    for (index, (centre, (wish, width))) in
        order.iter().zip(apart(&wanted, gap, low, high).iter().zip(&wanted))
    {
        if (centre - wish).abs() > furthest || centre + width / 2.0 > high + 1e-6 {
            return None;
        }
        if let Some(stand) = stands.get_mut(*index) {
            *stand = Some(Stand { centre: *centre, line: 0 });
        }
    }
    Some(stands)
}

/// The nearest centre at which the label is between the bounds; none when it is wider than they are apart.
fn inside(wish: &Wish, low: f64, high: f64) -> Option<f64> {
    let (least, most) = (low + wish.width / 2.0, high - wish.width / 2.0);
    (least <= most).then(|| wish.centre.max(least).min(most))
}

fn free_of_overlap(wishes: &[Wish], stands: &[Option<Stand>], gap: f64) -> bool {
    let mut ends: [f64; 2] = [f64::NEG_INFINITY; 2];
    let mut order: Vec<(f64, f64, usize)> = wishes
        .iter()
        .zip(stands)
        .filter_map(|(wish, stand)| stand.map(|stand| (stand.centre, wish.width, stand.line)))
        .collect();
    order.sort_by(|one, other| one.0.total_cmp(&other.0));
    for (centre, width, line) in order {
        let Some(end) = ends.get_mut(line) else { return false };
        if centre - width / 2.0 < *end + gap {
            return false;
        }
        *end = centre + width / 2.0;
    }
    true
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn what_has_room_stays() {
        assert_eq!(apart(&[(10.0, 4.0), (20.0, 4.0)], 1.0, 0.0, 100.0), [10.0, 20.0]);
    }

    #[test]
    fn two_on_one_place_part_evenly() {
        assert_eq!(apart(&[(10.0, 4.0), (10.0, 4.0)], 0.0, 0.0, 100.0), [8.0, 12.0]);
        assert_eq!(apart(&[(1.0, 4.0), (1.0, 4.0)], 0.0, 0.0, 100.0), [2.0, 6.0]);
    }

    fn wish(centre: f64, width: f64, rank: Rank) -> Wish {
        Wish { centre, width, rank }
    }

    #[test]
    fn one_line_then_turns_then_rank() {
        let lines = |wishes: &[Wish]| -> Vec<Option<usize>> {
            by_turns(wishes, 1.0, 0.0, 100.0).iter().map(|stand| stand.map(|stand| stand.line)).collect()
        };
        let first = Rank::First;
        assert_eq!(lines(&[wish(20.0, 8.0, first), wish(30.0, 8.0, first)]), [Some(0), Some(0)]);
        assert_eq!(lines(&[wish(20.0, 12.0, first), wish(30.0, 12.0, first)]), [Some(0), Some(1)]);
        let crowd = [wish(20.0, 12.0, Rank::Second), wish(25.0, 12.0, first), wish(28.0, 12.0, first)];
        assert_eq!(lines(&crowd), [None, Some(0), Some(1)]);
    }

    proptest! {
        #[test]
        fn nothing_overlaps_and_all_is_inside(
            mut wanted in proptest::collection::vec((0.0..1000.0f64, 1.0..15.0f64), 0..50),
        ) {
            wanted.sort_by(|one, other| one.0.total_cmp(&other.0));
            let centres = apart(&wanted, 2.0, 0.0, 1000.0);
            prop_assert_eq!(centres.len(), wanted.len());
            for index in 1..centres.len() {
                let room = centres[index] - centres[index - 1];
                prop_assert!(room >= (wanted[index].1 + wanted[index - 1].1) / 2.0 + 2.0 - 1e-9);
            }
            for (centre, (_, extent)) in centres.iter().zip(&wanted) {
                prop_assert!(centre - extent / 2.0 > -1e-9 && centre + extent / 2.0 < 1000.0 + 1e-9);
            }
        }

        #[test]
        fn settled_labels_do_not_overlap(
            mut wanted in proptest::collection::vec((0.0..300.0f64, 1.0..90.0f64, any::<bool>()), 0..30),
        ) {
            wanted.sort_by(|one, other| one.0.total_cmp(&other.0));
            let wishes: Vec<Wish> = wanted
                .iter()
                .map(|(centre, width, first)| wish(*centre, *width, if *first { Rank::First } else { Rank::Second }))
                .collect();
            for stands in [by_turns(&wishes, 3.0, 0.0, 300.0), by_rank(&wishes, 3.0, 3, 0.0, 300.0)] {
            for (one, stand) in wishes.iter().zip(&stands) {
                for (other, next) in wishes.iter().zip(&stands) {
                    if let (Some(stand), Some(next)) = (stand, next)
                        && !std::ptr::eq(one, other)
                        && stand.line == next.line
                    {
                        let room = (stand.centre - next.centre).abs() - (one.width + other.width) / 2.0;
                        prop_assert!(room >= 3.0 - 1e-9);
                    }
                }
            }
            }
        }
    }
}
