//! Writes the book's page of fields from the register.

fn main() -> std::io::Result<()> {
    let page = concat!(
        env!("CARGO_MANIFEST_DIR"),
        "/../../docs/generated/plan-fields.md"
    );
    std::fs::write(page, plan::fields_page())
}
