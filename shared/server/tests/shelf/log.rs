//! The log.

use witnessmark_server::shelf::Shelf;

use crate::common::{Place, digests, records, refs, school};

crate::on_both!(
    places_run_on,
    pages_end_where_asked,
    schools_know_nothing_of_each_other,
    nothing_of_a_failed_batch_remains,
    ten_thousand_there_and_back,
    reading_while_writing,
);

fn places_run_on(place: &Place) {
    let (shelf, school) = (place.open(), school("school"));
    assert_eq!(shelf.size(school).unwrap(), 0);
    assert_eq!(shelf.append(school, &[]).unwrap(), Vec::<u64>::new());
    let all = records(1, 6);
    let [a, b, c, d, e, f] = all.as_slice() else { panic!() };
    assert_eq!(shelf.append(school, &[a, b, c]).unwrap(), [0, 1, 2]);
    // Again, and twice in one batch.
    assert_eq!(shelf.append(school, &[b, d, d, a, e]).unwrap(), [1, 3, 3, 0, 4]);
    assert_eq!(shelf.append(school, &[a, e]).unwrap(), [0, 4]);
    assert_eq!(shelf.size(school).unwrap(), 5);
    assert_eq!(shelf.index_of(school, d.digest).unwrap(), Some(3));
    assert_eq!(shelf.index_of(school, f.digest).unwrap(), None);
    assert_eq!(shelf.line(school, f.digest).unwrap(), None);
    let line = shelf.line(school, d.digest).unwrap().unwrap();
    assert_eq!((line.index, &line.device, line.digest), (3, &d.payload.device, d.digest));
    // Byte for byte as signed.
    assert_eq!(line.envelope, d.envelope);
    assert_eq!(&line.record().unwrap(), d);
    assert_eq!(shelf.schools().unwrap(), [school]);
    drop(shelf);
    // It is still so for who opens it next.
    let shelf = place.open();
    assert_eq!(shelf.append(school, &[f, a]).unwrap(), [5, 0]);
    assert_eq!(shelf.digests(school, 0, 99).unwrap(), digests(&all));
}

fn pages_end_where_asked(place: &Place) {
    let (shelf, school) = (place.open(), school("school"));
    let all = records(1, 600);
    shelf.append(school, &refs(&all)).unwrap();
    let indices = |from, most, bytes| -> Vec<u64> {
        shelf.log(school, from, most, bytes).unwrap().iter().map(|line| line.index).collect()
    };
    let whole = usize::MAX;
    assert_eq!(indices(0, 3, whole), [0, 1, 2]);
    assert_eq!(indices(598, 10, whole), [598, 599]);
    assert_eq!(indices(600, 10, whole), [0_u64; 0]);
    assert_eq!(indices(u64::MAX, 10, whole), [0_u64; 0]);
    assert_eq!(indices(0, 0, whole), [0_u64; 0]);
    // More than is fetched at a time.
    assert_eq!(indices(10, 580, whole), (10..590).collect::<Vec<_>>());
    // One comes however long it is, else nobody would get past it.
    assert_eq!(indices(7, 10, 1), [7]);
    let bytes = |n: usize| -> usize {
        all[..n]
            .iter()
            .map(|r| r.envelope.payload.len() + r.envelope.protected.len() + r.envelope.signature.len())
            .sum()
    };
    assert_eq!(indices(0, 100, bytes(4)), [0, 1, 2, 3]);
    assert_eq!(indices(0, 100, bytes(4) - 1), [0, 1, 2]);
    assert_eq!(shelf.digests(school, 2, 3).unwrap(), digests(&all[2..5]));
    assert_eq!(shelf.digests(school, 600, 3).unwrap(), []);
}

fn schools_know_nothing_of_each_other(place: &Place) {
    let shelf = place.open();
    let (one, two) = (school("one"), school("two"));
    let all = records(1, 3);
    assert_eq!(shelf.append(one, &refs(&all)).unwrap(), [0, 1, 2]);
    assert_eq!(shelf.append(two, &[&all[2]]).unwrap(), [0]);
    assert_eq!((shelf.size(one).unwrap(), shelf.size(two).unwrap()), (3, 1));
    assert_eq!(shelf.index_of(two, all[0].digest).unwrap(), None);
    assert_eq!(shelf.log(two, 0, 9, 1 << 20).unwrap().len(), 1);
    assert_eq!(shelf.line(two, all[2].digest).unwrap().unwrap().index, 0);
    let mut both = [one, two];
    both.sort();
    assert_eq!(shelf.schools().unwrap(), both);
}

fn nothing_of_a_failed_batch_remains(place: &Place) {
    let (shelf, school) = (place.open(), school("school"));
    let all = records(1, 9);
    shelf.append(school, &refs(&all[..3])).unwrap();
    place.beside(
        "CREATE TRIGGER fails BEFORE INSERT ON record WHEN NEW.n = 5
         BEGIN SELECT RAISE(ABORT, 'invented'); END",
        "CREATE FUNCTION fails() RETURNS trigger LANGUAGE plpgsql AS
         $$ BEGIN IF NEW.n = 5 THEN RAISE 'invented'; END IF; RETURN NEW; END $$;
         CREATE TRIGGER fails BEFORE INSERT ON record FOR EACH ROW EXECUTE FUNCTION fails()",
    );
    let fault = shelf.append(school, &refs(&all)).unwrap_err();
    assert!(fault.to_string().contains("invented"), "{fault}");
    assert_eq!(shelf.size(school).unwrap(), 3);
    assert_eq!(shelf.digests(school, 0, 99).unwrap(), digests(&all[..3]));
    assert_eq!(shelf.index_of(school, all[4].digest).unwrap(), None);
    // What fits before it is taken, with no gap.
    assert_eq!(shelf.append(school, &[&all[8], &all[7]]).unwrap(), [3, 4]);
    place.beside("DROP TRIGGER fails", "DROP TRIGGER fails ON record");
    assert_eq!(shelf.append(school, &refs(&all)).unwrap(), [0, 1, 2, 5, 6, 7, 8, 4, 3]);
}

fn ten_thousand_there_and_back(place: &Place) {
    let (shelf, school) = (place.open(), school("school"));
    let all = records(1, 10_000);
    for (batch, first) in all.chunks(1000).zip((0..).step_by(1000)) {
        assert_eq!(shelf.append(school, &refs(batch)).unwrap(), (first..first + 1000).collect::<Vec<u64>>());
    }
    assert_eq!(shelf.digests(school, 0, usize::MAX).unwrap(), digests(&all));
    assert_eq!(read_all(&shelf), all);
}

/// Reads the log page by page, as a device does.
fn read_all(shelf: &Shelf) -> Vec<witnessmark_core::record::Record> {
    let mut read = Vec::new();
    loop {
        let page = shelf.log(school("school"), read.len() as u64, 5000, 1 << 20).unwrap();
        if page.is_empty() {
            return read;
        }
        read.extend(page.into_iter().map(|line| line.record().unwrap()));
    }
}

fn reading_while_writing(place: &Place) {
    let (shelf, school) = (place.open(), school("school"));
    let all = records(1, 700);
    std::thread::scope(|scope| {
        let writer = scope.spawn(|| {
            for batch in all.chunks(7) {
                shelf.append(school, &refs(batch)).unwrap();
            }
        });
        let other = place.open();
        let mut known = 0;
        loop {
            let over = writer.is_finished();
            let size = other.size(school).unwrap();
            assert!(size >= known && size.is_multiple_of(7), "{size} after {known}");
            // All that the size promises is there to be read.
            let digests = other.digests(school, known, usize::MAX).unwrap();
            assert!(digests.len() as u64 >= size - known);
            assert!(
                digests.iter().zip(&all[known as usize..]).all(|(digest, record)| *digest == record.digest)
            );
            known = size;
            if over {
                break;
            }
        }
        assert_eq!(known, 700);
        writer.join().unwrap();
    });
}
