//! An opening in a shell: the metal it takes away against the metal beside it, by UG-37. Every
//! set that cites UG-37 calls this with its own stresses.

use crate::input::{Bush, Metal, Opening};
use crate::remedy;
use crate::sum::{Answer, Outcome, Stop, Sum};
use crate::taken::{file_size, need};
use formulas::vessel::{flat_end, opening as law};
use reckoning::quantity::{MM, ONE, Ratio};
use reckoning::size::Bad;
use reckoning::{Known, Origin, Ref};

/// Greatest opening in parts of the shell's diameter for which the areas were published.
const MOST_OF_DIAMETER: f64 = 0.5;

/// Which side the pressure is on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Side {
    /// Inside the shell.
    Inside,
    /// Outside: half the area is asked.
    Outside,
    /// On a flat end: half the area is asked.
    Flat,
}

/// The shell round an opening, filed.
pub(crate) struct Round<'a> {
    /// Side of the pressure.
    pub(crate) side: Side,
    /// Diameter of the shell, mm, against which the opening is judged.
    pub(crate) diameter_mm: f64,
    /// Line of the pressure.
    pub(crate) p: Ref,
    /// Line of the wall.
    pub(crate) t: Ref,
    /// Line of the wall that pressure asks.
    pub(crate) t_r: Ref,
    /// Line of the design stress of the shell.
    pub(crate) s: Ref,
    /// Files the design stress of a bush.
    pub(crate) bush_stress: &'a dyn Fn(&mut Sum, Metal) -> Result<Ref, Stop>,
}

/// The hole of an opening at its bad end, and the bore that pressure sees.
pub(crate) struct Hole {
    /// Line of the finished bore.
    pub(crate) d: Ref,
    /// Line of the hole cut in the shell.
    pub(crate) cut: Ref,
}

/// Files the hole, and the bore where there is a bush.
pub(crate) fn file_hole(sum: &mut Sum, opening: &Opening) -> Result<Hole, Stop> {
    let hole = need("the hole", &opening.id, opening.hole.as_ref())?;
    let Some(bush) = &opening.bush else {
        let d = file_size(sum, ("d", "hole, without a bush"), hole, Bad::Large)?;
        return Ok(Hole { d, cut: d });
    };
    let cut = file_size(sum, ("d_b", "hole, filled by the bush"), hole, Bad::Small)?;
    let bore = need("the bore", &opening.id, bush.bore.as_ref())?;
    let d = file_size(sum, ("d", "bore over the threads"), bore, Bad::Large)?;
    Ok(Hole { d, cut })
}

/// The lines of a bush.
pub(crate) struct BushLines {
    pub(crate) wall: Ref,
    pub(crate) out: Ref,
    pub(crate) inwards: Ref,
}

/// Files the wall of a bush and how far it stands.
pub(crate) fn file_bush(
    sum: &mut Sum,
    opening: &Opening,
    bush: &Bush,
    hole: &Hole,
) -> Result<BushLines, Stop> {
    let wall = sum.card(&law::BUSH_WALL, &[hole.cut, hole.d])?;
    let out = need(
        "how far the bush stands out",
        &opening.id,
        bush.stands_out.as_ref(),
    )?;
    let out = file_size(sum, ("h_o", "reach of the bush outwards"), out, Bad::Small)?;
    let inwards = need(
        "how far the bush stands in",
        &opening.id,
        bush.stands_in.as_ref(),
    )?;
    let inwards = file_size(
        sum,
        ("h_i", "reach of the bush inwards"),
        inwards,
        Bad::Small,
    )?;
    Ok(BushLines { wall, out, inwards })
}

/// The area asked and the area to spare at an opening.
pub(crate) fn replace(
    sum: &mut Sum,
    opening: &Opening,
    round: &Round<'_>,
) -> Result<Outcome, Stop> {
    let hole = file_hole(sum, opening)?;
    let d = sum.value(hole.d);
    if d > MOST_OF_DIAMETER * round.diameter_mm {
        sum.outside(format!(
            "UG-36(b) ends at half the diameter of the shell, {:.1} mm, and the opening has {d:.1} mm",
            MOST_OF_DIAMETER * round.diameter_mm
        ));
    }
    let (t, t_r) = (sum.value(round.t), sum.value(round.t_r));
    if t <= t_r {
        let says = format!("the shell has {t:.2} mm and needs {t_r:.2} mm: nothing to spare");
        let remedy = format!("a wall of more than {t_r:.2} mm");
        return Ok(Outcome::plain(Answer::Fails, says, remedy));
    }
    let (asked, has) = match &opening.bush {
        None => bare(sum, round, &hole)?,
        Some(bush) => with_bush(sum, opening, bush, round, &hole)?,
    };
    let (asked, has) = (sum.value(asked), sum.value(has));
    let says = format!("{has:.1} mm² to spare at the opening, {asked:.1} mm² asked");
    // Width of plate that the areas reach, for a cure by thickness alone.
    let more = t + (asked - has) / d;
    let remedy = format!(
        "a bush with {:.1} mm² more metal, or a shell of {} mm",
        asked - has,
        remedy::at_least(more)
    );
    Ok(Outcome::compared(has, asked, says, remedy))
}

fn constant(sum: &mut Sum, symbol: &str, meaning: &str, value: f64) -> Ref {
    let known: Known<Ratio> = crate::metal::chosen(
        Ratio::from_number(value),
        "with or without a bush",
        "there is no bush",
        Origin::Read,
    );
    sum.know(symbol, meaning, &ONE, &known)
}

fn asked(sum: &mut Sum, round: &Round<'_>, hole: &Hole, t_n: Ref, f_r: Ref) -> Result<Ref, Stop> {
    match round.side {
        Side::Inside => sum.card(&law::AREA_REQUIRED, &[hole.d, round.t_r, t_n, f_r]),
        Side::Outside => sum.card(&law::AREA_REQUIRED_EXTERNAL, &[hole.d, round.t_r]),
        Side::Flat => sum.card(&flat_end::AREA, &[hole.d, round.t_r, t_n, f_r]),
    }
}

fn bare(sum: &mut Sum, round: &Round<'_>, hole: &Hole) -> Result<(Ref, Ref), Stop> {
    let none = crate::metal::chosen(
        reckoning::quantity::Length::from_mm(0.0),
        "with or without a bush",
        "there is no bush",
        Origin::Read,
    );
    let t_n = sum.know("t_n", "wall of the bush", &MM, &none);
    let f_r = constant(sum, "f_r", "strength of bush over shell", 1.0);
    let asked = asked(sum, round, hole, t_n, f_r)?;
    let has = sum.card(&law::AREA_IN_SHELL, &[hole.d, round.t, round.t_r, t_n, f_r])?;
    Ok((asked, has))
}

fn with_bush(
    sum: &mut Sum,
    opening: &Opening,
    bush: &Bush,
    round: &Round<'_>,
    hole: &Hole,
) -> Result<(Ref, Ref), Stop> {
    let lines = file_bush(sum, opening, bush, hole)?;
    let s_b = (round.bush_stress)(sum, bush.metal)?;
    let f_r = sum.card(&law::STRENGTH, &[s_b, round.s])?;
    let t_rn = sum.card(&law::BUSH_NEED, &[round.p, hole.d, s_b])?;
    let asked = asked(sum, round, hole, lines.wall, f_r)?;
    let in_shell = sum.card(
        &law::AREA_IN_SHELL,
        &[hole.d, round.t, round.t_r, lines.wall, f_r],
    )?;
    let outward = sum.card(
        &law::AREA_OUTWARD,
        &[lines.wall, t_rn, f_r, round.t, lines.out],
    )?;
    let inward = sum.card(
        &law::AREA_INWARD,
        &[lines.wall, f_r, round.t, lines.inwards],
    )?;
    let has = sum.card(&law::PROVIDED, &[in_shell, outward, inward])?;
    Ok((asked, has))
}
