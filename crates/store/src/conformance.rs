//! What every store must do, run on each of them by its own tests.

use notebook::{
    About, At, DeviceId, Draft, Entry, Hash, Kind, Line, LineId, Notebook, NotebookId, Ranges, Standing,
    ThingId, Told, VERSION, Value, Written, folded, verify,
};

use crate::{FARTHEST, HIGHEST, Store, StoreError};

/// The notebook of the suite.
pub const BOOK: NotebookId = NotebookId::from_bits(7);
/// The device that the store under test writes as.
pub const DEVICE: DeviceId = DeviceId::from_bits(70);

/// What the suite found, one sentence for each thing that is not as it must be.
pub type Faults = Vec<String>;

/// A draft of a fact, or of any text of any version; the number makes it another one.
#[must_use]
pub fn draft(number: u128, thing: u128, version: u32, text: &str) -> Draft {
    Draft {
        id: LineId::from_bits(1_000 + number),
        about: About { kind: Kind::Visit, id: ThingId::from_bits(thing) },
        at: At { utc_milliseconds: -1, offset_minutes: -300 },
        version,
        written: Written::new(text.to_string(), number.to_be_bytes()),
    }
}

/// A draft of a fact.
#[must_use]
pub fn fact(number: u128, thing: u128, value: &str) -> Draft {
    let entry = Entry::Fact { field: "drive.course".to_string(), value: Value::text(value) };
    draft(number, thing, VERSION, &Told::from(entry).text())
}

/// A draft of a withdrawal.
#[must_use]
pub fn withdrawal(number: u128, thing: u128) -> Draft {
    let entry = Entry::Withdraw { reason: "the owner asks".to_string() };
    draft(number, thing, VERSION, &Told::from(entry).text())
}

/// Runs the suite on an empty store of [`BOOK`] that writes as [`DEVICE`].
///
/// *Errors*: those of the store, where it has one that the suite did not ask for.
pub async fn run(store: &impl Store) -> Result<Faults, StoreError> {
    let mut faults = Faults::new();
    let mut must = |holds: bool, what: &str| {
        if !holds {
            faults.push(what.to_string());
        }
    };
    must(store.notebook() == BOOK && store.device() == DEVICE, "a new store has the names it was given");
    must(store.lines().await?.is_empty() && store.held().await?.count() == 0, "a new store is empty");
    must(store.append(Vec::new()).await?.is_empty(), "nothing written is nothing kept");

    let odd = "{\"kind\" : \"later\",  \"n\": 1.50}\u{2028} ñ \\u00e9";
    let mine = store.append(vec![fact(1, 1, "204 ft"), fact(2, 2, "208 ft"), draft(3, 1, 9, odd)]).await?;
    must(mine.iter().map(Line::number).eq(1..=3), "numbers go on without gaps");
    must(mine.windows(2).all(|pair| pair[1].previous() == pair[0].hash()), "lines are chained");
    must(mine.iter().all(Line::is_whole), "lines are whole");
    must(store.lines().await? == mine, "what was kept is read as it was kept");
    must(
        store.lines().await?[2].written().map(Written::text) == Some(odd),
        "a later version is kept byte for byte",
    );

    // Lines of another device, in disorder and twice over.
    let mut other = Notebook::new(BOOK);
    mine.iter().for_each(|line| {
        other.take(line.clone());
    });
    let theirs: Vec<Line> = (10..30)
        .map(|number| other.write(DeviceId::from_bits(71), fact(number, 1 + number % 2, "212 ft")))
        .collect();
    let mut disorder: Vec<Line> = theirs.iter().rev().cloned().collect();
    disorder.extend(theirs.iter().take(5).cloned());
    let taken = store.take(disorder).await?;
    must((taken.new, taken.known) == (20, 5), "lines are taken once");
    let again = store.take(theirs.clone()).await?;
    must((again.new, again.known) == (0, 20), "the same lines again change nothing");
    must(store.lines().await? == other.lines().cloned().collect::<Vec<_>>(), "lines stand in one order");
    must(store.held().await? == *other.held(), "what is held is told");
    let next = store.append(vec![fact(40, 1, "204 ft")]).await?;
    must(
        next[0].order() > theirs[19].order() && next[0].number() == 4,
        "the next line stands behind all that were seen",
    );
    other.take(next[0].clone());

    // What another lacks, in parts.
    let mut held = Ranges::none();
    held.add_range(DEVICE, 1, 2);
    let part = store.lines_beyond(&held, 7).await?;
    must(part.len() == 7, "no more is given than was asked for");
    let rest = store.lines_beyond(&held, usize::MAX).await?;
    must(rest.len() == 22 && rest[..7] == part[..], "what is lacking is given in order");

    // Changed and foreign lines.
    let foreign = Notebook::new(NotebookId::from_bits(8)).write(DEVICE, fact(50, 1, "1 ft"));
    let text = notebook::line_text(&theirs[3]).replace("212 ft", "999 ft");
    if let Ok(changed) = notebook::read_line(&text) {
        let taken = store.take(vec![foreign, changed]).await?;
        must(
            (taken.foreign, taken.changed, taken.new) == (1, 1, 0),
            "foreign and changed lines are not taken",
        );
    }

    // Withdrawn: what is here, and what comes later.
    let withdrawn = store.append(vec![withdrawal(60, 1)]).await?;
    other.take(withdrawn[0].clone());
    let late = other.write(DeviceId::from_bits(71), fact(61, 1, "a late secret"));
    let full = Line::seal(
        fact(61, 1, "a late secret"),
        Standing {
            notebook: BOOK,
            device: late.device(),
            number: late.number(),
            order: late.order(),
            previous: late.previous(),
        },
    );
    store.take(vec![full]).await?;
    store.take(theirs).await?;
    must(
        store.lines().await? == other.lines().cloned().collect::<Vec<_>>(),
        "withdrawn lines are bare envelopes",
    );
    let about = store.lines_about(ThingId::from_bits(1)).await?;
    must(
        about.iter().filter(|line| line.written().is_some()).count() == 1,
        "of a withdrawn thing only the withdrawal is written",
    );
    must(
        store.lines_about(ThingId::from_bits(2)).await?.iter().all(|line| line.written().is_some()),
        "other things stay as they are",
    );
    let mut book = Notebook::new(BOOK);
    for line in store.lines().await? {
        book.take(line);
    }
    must(
        verify(&book).is_empty() && folded(&book) == folded(&other),
        "the notebook is whole and folds the same",
    );
    claimed_twice(store, &mut other, &mut must).await?;
    far_ahead(store, &mut other, &mut must).await?;
    Ok(faults)
}

/// A line that claims any place.
fn claims(draft: Draft, device: DeviceId, number: u64, order: u64) -> Line {
    Line::seal(draft, Standing { notebook: BOOK, device, number, order, previous: Hash::NOTHING })
}

/// Two different lines claim one number of one device, as when a copy of a notebook was written to under the old name: both
/// are kept, on every device alike, and the chain goes on from the one that sorts last.
async fn claimed_twice(
    store: &impl Store,
    other: &mut Notebook,
    must: &mut impl FnMut(bool, &str),
) -> Result<(), StoreError> {
    let mine = store.append(vec![fact(70, 3, "204 ft")]).await?;
    let (number, order) = (mine[0].number(), mine[0].order());
    let same_place = [
        claims(fact(71, 3, "205 ft"), DEVICE, number, order),
        claims(fact(72, 3, "206 ft"), DEVICE, number, order + 1),
    ];
    mine.iter().chain(&same_place).for_each(|line| {
        other.take(line.clone());
    });
    let taken = store.take(same_place.to_vec()).await?;
    must((taken.new, taken.changed) == (2, 0), "lines that claim a number that is taken are kept beside it");
    let again = store.take(same_place.to_vec()).await?;
    must((again.new, again.known) == (0, 2), "lines that claim one number are known again");
    must(
        store.lines().await? == other.lines().cloned().collect::<Vec<_>>()
            && store.held().await? == *other.held(),
        "of lines that claim one number all are there, in one order",
    );
    let mut held = other.held().without(&{
        let mut one = Ranges::none();
        one.add(DEVICE, number);
        one
    });
    let lacking = store.lines_beyond(&held, usize::MAX).await?;
    must(lacking.len() == 3, "lines that claim one number are all given to whoever lacks it");
    held.add(DEVICE, number);
    must(store.lines_beyond(&held, usize::MAX).await?.is_empty(), "whoever holds all is given nothing");
    let last = mine.iter().chain(&same_place).map(Line::hash).max();
    let next = store.append(vec![fact(73, 3, "207 ft")]).await?;
    other.take(next[0].clone());
    must(
        next[0].number() == number + 1 && Some(next[0].previous()) == last && next[0].order() == order + 2,
        "the chain goes on from the line that sorts last",
    );
    Ok(())
}

/// Lines that claim a place where nobody can have come by writing are not taken, so that there is room for all later ones.
async fn far_ahead(
    store: &impl Store,
    other: &mut Notebook,
    must: &mut impl FnMut(bool, &str),
) -> Result<(), StoreError> {
    let there = DeviceId::from_bits(72);
    let highest = store.append(vec![fact(80, 3, "208 ft")]).await?;
    other.take(highest[0].clone());
    let highest = highest[0].order();
    let beyond = [
        claims(fact(81, 3, "1 ft"), there, 1, highest + FARTHEST + 1),
        claims(fact(82, 3, "2 ft"), there, 2, HIGHEST),
        claims(fact(83, 3, "3 ft"), there, 3, u64::MAX),
        claims(fact(84, 3, "4 ft"), DEVICE, HIGHEST, highest + 1),
        claims(fact(85, 3, "5 ft"), there, u64::MAX, highest + 1),
        claims(fact(86, 3, "6 ft"), there, 0, highest + 1),
        claims(fact(87, 3, "7 ft"), there, 4, 0),
        // A withdrawal that is not taken takes nothing out either.
        claims(withdrawal(88, 3), there, 5, HIGHEST),
    ];
    let taken = store.take(beyond.to_vec()).await?;
    must((taken.beyond, taken.new) == (8, 0), "lines that nobody can have come to are not taken");
    must(
        store.lines().await? == other.lines().cloned().collect::<Vec<_>>()
            && store.held().await? == *other.held(),
        "lines that are not taken change nothing",
    );
    // As far as a line may stand, and from there as far again; handed in the wrong way round.
    let ahead = [
        claims(fact(89, 3, "8 ft"), there, 2, highest + 2 * FARTHEST),
        claims(fact(90, 3, "9 ft"), there, 1, highest + FARTHEST),
    ];
    let taken = store.take(ahead.to_vec()).await?;
    must((taken.beyond, taken.new) == (0, 2), "lines that others may have come to are taken in their turn");
    let next = store.append(vec![fact(91, 3, "10 ft")]).await?;
    must(
        next[0].order() == highest + 2 * FARTHEST + 1,
        "the next line stands behind the farthest that was taken",
    );
    Ok(())
}
