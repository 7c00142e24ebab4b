//! Pictures of the example plan.

use plant::part::Shape;

/// The folder of the pictures, in that of the pages.
pub(crate) const FOLDER: &str = "pictures";

/// Every picture by its name.
pub(crate) fn pictures() -> Result<Vec<(&'static str, String)>, String> {
    const PLAN: &str = include_str!("../../../../examples/launch/plan.toml");
    let plan = plan::read(PLAN, "plan.toml").content;
    let resolved = plant::resolve(&plan);
    let boiler = drawing::boiler::of_plant(&plan, &resolved)
        .map_err(|lacks| format!("the example lacks {}", lacks.wanted.join(", ")))?;
    let part = |id: &str| {
        let part = resolved.plant.part(id);
        part.ok_or_else(|| format!("the example has no {id}"))
    };
    let Shape::Plate(plate) = &part("tube-plate.lower")?.shape else {
        return Err("the lower tube plate is no plate".to_owned());
    };
    let plate = drawing::boiler::tube_plate("lower tube plate", plate)
        .ok_or("the lower tube plate is not round")?;
    let bush = part("fitting.dryer-bush")?;
    let Shape::Turned(turned) = &bush.shape else {
        return Err("the bush is not turned".to_owned());
    };
    let name = format!("dryer-bush: {}", bush.name);
    let bush = drawing::turned::section(&name, turned);
    let boiler = drawing::boiler::section(&boiler);
    Ok(vec![
        ("pictures/launch-boiler.svg", drawing::svg(&boiler)),
        ("pictures/launch-tube-plate.svg", drawing::svg(&plate)),
        ("pictures/dryer-bush.svg", drawing::svg(&bush)),
    ])
}
