//! The book's page of fields is the one that the register gives.

const PAGE: &str = concat!(
    env!("CARGO_MANIFEST_DIR"),
    "/../../docs/generated/plan-fields.md"
);

#[test]
fn the_page_of_fields_is_current() {
    let kept = std::fs::read_to_string(PAGE).expect("docs/generated/plan-fields.md");
    let page = plan::fields_page();
    let stale = kept
        .lines()
        .zip(page.lines())
        .enumerate()
        .find(|(_, (kept, page))| kept != page)
        .map(|(index, (kept, page))| {
            let line = index + 1;
            format!("line {line} is\n  {kept}\nand should be\n  {page}")
        });
    assert!(
        kept == page,
        "docs/generated/plan-fields.md is stale; run `cargo run -p plan --example fields_page`.\n{}",
        stale.unwrap_or_else(|| "one page is longer than the other".to_owned())
    );
}
