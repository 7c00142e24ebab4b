//! The walk over the fields. Each section's `visit` is the only definition of its fields: the
//! reader, the writer, the register, the difference and the edits are visitors.

use reckoning::quantity::Quantity;
use reckoning::{Size, Typed};

use crate::entry::Entry;
use crate::field::{Choice, Field, FieldKind, Limits, Named};
use crate::size_text::size;
use crate::slot::{Held, Misfits, Slot};
use crate::value_text;
use crate::written::Written;

/// A table of a file.
pub trait Section {
    /// Shows every field, table and list of this section to the visitor, in the order in which
    /// they are written.
    fn visit(&mut self, v: &mut dyn Visitor);
}

/// One entry of a list of tables, known by its id.
pub trait Row: Section {
    /// Its id.
    fn id(&self) -> &Entry<String>;
    /// Its id, or its number in its list where it has none.
    fn called(&self) -> String {
        let id = self.id();
        id.get()
            .map_or_else(
                || id.path().rsplit('.').nth(1).unwrap_or(""),
                String::as_str,
            )
            .to_owned()
    }
}

/// A list of tables, whatever its rows are.
pub trait Rows {
    /// How many rows there are.
    fn count(&self) -> usize;
    /// Adds an empty row at the end.
    fn add(&mut self);
    /// The row at `index`, which is less than the count.
    fn row(&mut self, index: usize) -> &mut dyn Row;
}

impl<T: Row + Default> Rows for Vec<T> {
    fn count(&self) -> usize {
        self.len()
    }
    fn add(&mut self) {
        self.push(T::default());
    }
    fn row(&mut self, index: usize) -> &mut dyn Row {
        &mut self[index]
    }
}

/// Something that walks over a file's fields.
pub trait Visitor {
    /// A field of the table at hand.
    fn field(&mut self, field: Field, slot: &mut dyn Slot);
    /// A table within the table at hand.
    fn table(&mut self, key: &'static str, meaning: &'static str, section: &mut dyn Section);
    /// A list of tables within the table at hand.
    fn rows(&mut self, key: &'static str, meaning: &'static str, rows: &mut dyn Rows);
}

/// The words in which a section describes its fields.
impl dyn Visitor + '_ {
    /// A quantity.
    pub fn number<Q: Quantity>(
        &mut self,
        entry: &mut Entry<Q>,
        key: &'static str,
        meaning: &'static str,
        limits: Limits,
    ) {
        let kind = FieldKind::Number {
            kind: Q::KIND,
            limits,
        };
        self.hold(Field { key, meaning, kind }, entry, &|w, m| {
            value_text::quantity::<Q>(w, limits, m).map(|typed| typed.value)
        });
    }

    /// A list of quantities.
    pub fn numbers<Q: Quantity>(
        &mut self,
        entry: &mut Entry<Vec<Typed<Q>>>,
        key: &'static str,
        meaning: &'static str,
        limits: Limits,
    ) {
        let kind = FieldKind::Numbers {
            kind: Q::KIND,
            limits,
        };
        self.hold(Field { key, meaning, kind }, entry, &|w, m| {
            value_text::list(w, m, |w, m| value_text::quantity::<Q>(w, limits, m))
        });
    }

    /// A size as drawn and as made.
    pub fn size(
        &mut self,
        entry: &mut Entry<Size>,
        key: &'static str,
        meaning: &'static str,
        limits: Limits,
    ) {
        let kind = FieldKind::Size { limits };
        self.hold(Field { key, meaning, kind }, entry, &|w, m| {
            size(w, limits, m)
        });
    }

    /// A whole number from `range.0` to `range.1`.
    pub fn count(
        &mut self,
        entry: &mut Entry<u32>,
        key: &'static str,
        meaning: &'static str,
        range: (u32, u32),
    ) {
        let (low, high) = range;
        let kind = FieldKind::Count { low, high };
        self.hold(Field { key, meaning, kind }, entry, &|w, m| {
            value_text::count(w, range, m)
        });
    }

    /// A list of whole numbers from `range.0` to `range.1`.
    pub fn counts(
        &mut self,
        entry: &mut Entry<Vec<u32>>,
        key: &'static str,
        meaning: &'static str,
        range: (u32, u32),
    ) {
        let (low, high) = range;
        let kind = FieldKind::Counts { low, high };
        self.hold(Field { key, meaning, kind }, entry, &|w, m| {
            value_text::list(w, m, |w, m| value_text::count(w, range, m))
        });
    }

    /// One of several names.
    pub fn choice<C: Choice>(
        &mut self,
        entry: &mut Entry<C>,
        key: &'static str,
        meaning: &'static str,
    ) {
        let names = C::NAMES
            .iter()
            .map(|&(_, name, meaning)| Named { name, meaning });
        let not_yet = C::NOT_YET
            .iter()
            .map(|&(name, meaning)| Named { name, meaning });
        let kind = FieldKind::Choice {
            names: names.collect(),
            not_yet: not_yet.collect(),
        };
        self.hold(Field { key, meaning, kind }, entry, &value_text::choice);
    }

    /// Free text, a standard's designation, or the id of something else in the plan.
    pub fn text(&mut self, entry: &mut Entry<String>, key: &'static str, meaning: &'static str) {
        let kind = FieldKind::Text;
        self.hold(Field { key, meaning, kind }, entry, &value_text::text);
    }

    /// A list of texts.
    pub fn texts(
        &mut self,
        entry: &mut Entry<Vec<String>>,
        key: &'static str,
        meaning: &'static str,
    ) {
        let kind = FieldKind::Texts;
        self.hold(Field { key, meaning, kind }, entry, &|w, m| {
            value_text::list(w, m, value_text::text)
        });
    }

    /// The id of a row.
    pub fn id(&mut self, entry: &mut Entry<String>, meaning: &'static str) {
        let field = Field {
            key: "id",
            meaning,
            kind: FieldKind::Id,
        };
        self.hold(field, entry, &value_text::id);
    }

    fn hold<T>(
        &mut self,
        field: Field,
        entry: &mut Entry<T>,
        read: &dyn Fn(&Written, &mut Misfits) -> Option<T>,
    ) {
        self.field(field, &mut Held { entry, read });
    }
}
