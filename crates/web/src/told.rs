//! A part of what is known, told again only when it is another than before.
//!
//! It is a memo whose value is held behind one type: a memo of its own for each of some eighty kinds of values would make the
//! app a twentieth larger.

use std::any::Any;
use std::marker::PhantomData;
use std::sync::Arc;

use leptos::prelude::*;

/// A part of what is known. It is copied freely; all copies are of the one memo.
pub struct Told<T> {
    kept: Memo<Kept>,
    of: PhantomData<fn() -> T>,
}

impl<T> Clone for Told<T> {
    fn clone(&self) -> Self {
        *self
    }
}

impl<T> Copy for Told<T> {}

/// A value, and how to tell whether another is the same.
#[derive(Clone)]
struct Kept {
    value: Arc<dyn Any + Send + Sync>,
    same: fn(&dyn Any, &dyn Any) -> bool,
}

impl PartialEq for Kept {
    fn eq(&self, other: &Self) -> bool {
        (self.same)(&*self.value, &*other.value)
    }
}

/// What works a value out, of whatever kind.
type Work = Box<dyn Fn() -> Kept + Send + Sync>;

/// The one memo that there is.
fn memo(work: Work) -> Memo<Kept> {
    Memo::new(move |_| work())
}

impl<T: PartialEq + Send + Sync + 'static> Told<T> {
    /// What this works out, again whenever something that it reads has changed.
    pub fn of(work: impl Fn() -> T + Send + Sync + 'static) -> Self {
        let same = |one: &dyn Any, other: &dyn Any| one.downcast_ref::<T>() == other.downcast_ref::<T>();
        let kept = memo(Box::new(move || Kept { value: Arc::new(work()), same }));
        Self { kept, of: PhantomData }
    }

    /// Reads it; where that is in a view or a memo, it is read again when it changes.
    pub fn with<R>(&self, read: impl FnOnce(&T) -> R) -> R {
        read_kept(&self.kept.get(), read)
    }

    /// Reads it once.
    pub fn with_untracked<R>(&self, read: impl FnOnce(&T) -> R) -> R {
        read_kept(&self.kept.get_untracked(), read)
    }
}

impl<T: PartialEq + Clone + Send + Sync + 'static> Told<T> {
    /// What it is; where that is in a view or a memo, it is read again when it changes.
    pub fn get(&self) -> T {
        self.with(T::clone)
    }

    /// What it is now.
    pub fn get_untracked(&self) -> T {
        self.with_untracked(T::clone)
    }
}

impl Told<String> {
    /// The same as a part of a view. It is one kind of closure for all texts, where one written out in each view would have
    /// the page's library built once more for each.
    pub fn said(self) -> impl Fn() -> String + Copy + Send + Sync + 'static {
        move || self.get()
    }
}

#[allow(clippy::unreachable, reason = "a value is kept under the kind it is read as")]
fn read_kept<T: 'static, R>(kept: &Kept, read: impl FnOnce(&T) -> R) -> R {
    match kept.value.downcast_ref::<T>() {
        Some(value) => read(value),
        None => unreachable!(),
    }
}
