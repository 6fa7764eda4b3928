//! Courses, drives, spacing, the catch test and the rate, over made-up readings.

mod catching;
mod ground;
mod rate;

use crate::List;

pub(crate) fn put(list: &mut List) {
    list.attempt("ground", ground::put);
    list.attempt("catching", catching::put);
    list.attempt("rate", rate::put);
    catching::probabilities(list);
}
