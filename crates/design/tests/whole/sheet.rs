//! The hand-worked sheet of the launch example.

use toml_edit::{Document, Item};

const TEXT: &str = include_str!("../../../../examples/launch/sheet.toml");

/// The sheet, read.
pub(crate) struct Sheet(Document<&'static str>);

impl Sheet {
    /// The sheet that lies beside the plan.
    pub(crate) fn of_the_launch() -> Self {
        Self(Document::parse(TEXT).expect("the sheet is TOML"))
    }

    fn number(item: Option<&Item>) -> Option<f64> {
        let item = item?;
        item.as_float()
            .or_else(|| item.as_integer().map(|whole| whole as f64))
    }

    fn part(&self, section: &str) -> &dyn toml_edit::TableLike {
        let item = self.0.get(section).and_then(Item::as_table_like);
        item.unwrap_or_else(|| panic!("the sheet has no section `{section}`"))
    }

    /// Names of the values of a section.
    pub(crate) fn names(&self, section: &str) -> Vec<String> {
        let values = self.part(section).get("values");
        let table = values.and_then(Item::as_table_like).expect("values");
        table.iter().map(|(name, _)| name.to_owned()).collect()
    }

    /// A value of the sheet.
    pub(crate) fn value(&self, section: &str, name: &str) -> f64 {
        let values = self.part(section).get("values");
        let table = values.and_then(Item::as_table_like).expect("values");
        Self::number(table.get(name)).unwrap_or_else(|| panic!("{section}: no `{name}`"))
    }

    /// Holds a number of the program against the sheet, to the tolerance of its section.
    pub(crate) fn holds(&self, section: &str, name: &str, found: f64) {
        let wanted = self.value(section, name);
        let tolerance = Self::number(self.part(section).get("tolerance")).expect("a tolerance");
        let off = (found / wanted - 1.0).abs();
        assert!(
            off <= tolerance,
            "{name}: {found} against {wanted} of the sheet, off by {off:.2e} of {tolerance:e}"
        );
    }
}
