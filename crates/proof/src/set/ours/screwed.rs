//! Threads under pressure: how many engage, and what they bear at the water test.

use super::shell::file_test_factor;
use super::{OURS, TEST_FACTOR};
use crate::input::{Metal, Screwed};
use crate::metal::chosen;
use crate::rules::{THREAD_SHEAR, THREAD_TURNS};
use crate::set::Asked;
use crate::stress;
use crate::sum::{Answer, Outcome, Stop, Sum, check};
use crate::taken::{need, up};
use formulas::thread::{Thread, shear as law};
use formulas::vessel::allow;
use reckoning::quantity::{Length, MM, MPA_GAUGE, ONE, Ratio};
use reckoning::{Finding, Origin, Ref};

/// Full threads that engage at least.
const TURNS: f64 = 4.0;
/// How far threads that were cut by hand may lie off their basic sizes, in parts of the pitch.
const OFF: f64 = 0.1;

/// Both checks of a thread.
pub(super) fn checks(it: &Screwed, asked: &Asked<'_>) -> Vec<Finding> {
    vec![turns(it), shear(it, asked)]
}

/// Files the length engaged and the pitch.
fn file_length(sum: &mut Sum, it: &Screwed, thread: &Thread) -> Result<(Ref, Ref), Stop> {
    let engaged = need("the length engaged", &it.id, it.engaged.as_ref())?;
    let l = sum.know("L", "length of bush that can engage", &MM, engaged);
    let p = chosen(
        thread.pitch,
        "the pitches of the thread's standard",
        "as the plan names it",
        Origin::Read,
    );
    Ok((l, sum.know("P", "pitch", &MM, &p)))
}

fn turns(it: &Screwed) -> Finding {
    check(OURS.head(&THREAD_TURNS, &it.id), |sum| {
        let thread = need("a thread that is known", &it.id, it.thread.as_ref())?;
        let (l, p) = file_length(sum, it, thread)?;
        let z = sum.card(&law::TURNS, &[l, p])?;
        let least = Length::from_mm(TURNS * thread.pitch.mm());
        let says = format!(
            "thread of what is screwed into {}, at least {} mm engaged",
            it.id,
            up(least.mm())
        );
        sum.hold(says, None);
        let z = sum.value(z);
        let says = format!("the bush has room for {z:.1} threads, {TURNS:.0} asked");
        let remedy = format!("a bush with {} mm of full thread", up(least.mm()));
        Ok(Outcome::compared(z, TURNS, says, remedy))
    })
}

/// Files a diameter of the thread, off its basic size by so many pitches.
fn file_diameter(sum: &mut Sum, (symbol, meaning): (&str, &str), mm: f64, off: f64) -> Ref {
    let known = chosen(
        Length::from_mm(mm + off),
        "the basic size and what a hand tap and die leave",
        "off by a tenth of the pitch, to the worse side",
        Origin::CommonPractice,
    );
    sum.know(symbol, meaning, &MM, &known)
}

/// Files the lesser shear area of screw and bush, with four threads engaged.
fn file_areas(sum: &mut Sum, thread: &Thread) -> Result<(Ref, Ref), Stop> {
    let (d, p) = (thread.major.mm(), thread.pitch.mm());
    let form = thread.series.form();
    let four = chosen(
        Length::from_mm(TURNS * p),
        "what may engage",
        "the four threads that are asked",
        Origin::CommonPractice,
    );
    let l = sum.know("L", "four threads", &MM, &four);
    let pitch = chosen(thread.pitch, "the standard", "as named", Origin::Read);
    let pitch = sum.know("P", "pitch", &MM, &pitch);
    let tangent = chosen(
        Ratio::from_number(form.half_angle_tangent()),
        "60, 55 and 47.5 degrees",
        "the form of the series",
        Origin::Read,
    );
    let tangent = sum.know("t", "tangent of half the thread angle", &ONE, &tangent);
    let off = OFF * p;
    let k = ("K", "minor diameter of the bush");
    let k = file_diameter(sum, k, form.internal_minor(d, p), off);
    let e = file_diameter(
        sum,
        ("E", "effective diameter of the screw"),
        form.effective(d, p),
        -off,
    );
    let of_screw = sum.card(&law::SCREW_SHEAR, &[l, pitch, k, e, tangent])?;
    let d_s = file_diameter(sum, ("D", "major diameter of the screw"), d, -off);
    let e = file_diameter(
        sum,
        ("E", "effective diameter of the bush"),
        form.effective(d, p),
        off,
    );
    let of_bush = sum.card(&law::BUSH_SHEAR, &[l, pitch, d_s, e, tangent])?;
    Ok((of_screw, of_bush))
}

fn shear(it: &Screwed, asked: &Asked<'_>) -> Finding {
    check(OURS.head(&THREAD_SHEAR, &it.id), |sum| {
        if it.bush == Metal::Copper {
            let says = "the thread is cut in soft copper, which strips".to_owned();
            let remedy = THREAD_SHEAR.remedy.to_owned();
            return Ok(Outcome::plain(Answer::Fails, says, remedy));
        }
        let thread = need("a thread that is known", &it.id, it.thread.as_ref())?;
        let at = need(
            "the metal temperature",
            &it.id,
            it.metal_temperature.as_ref(),
        )?;
        let pressure = asked.service.pressure.as_ref();
        let pressure = need("the working pressure", "the boiler", pressure)?;
        let p = sum.know("P", "working pressure, gauge", &MPA_GAUGE, pressure);
        let k = file_test_factor(sum);
        let p_t = allow::test_pressure(TEST_FACTOR, pressure.value.mpa());
        let p_t = sum.settled(&allow::TEST_PRESSURE, &[k, p], p_t)?;
        let d = file_diameter(sum, ("D", "major diameter"), thread.major.mm(), 0.0);
        let push = sum.card(&law::BLOW_OUT, &[p_t, d])?;
        let f = stress::ours(sum, it.bush, at.value, "f_b")?;
        let allowed = sum.card(&law::ALLOWED, &[f])?;
        let (of_screw, of_bush) = file_areas(sum, thread)?;
        let of_screw = sum.card(&law::STRESS, &[push, of_screw])?;
        let of_bush = sum.card(&law::STRESS, &[push, of_bush])?;
        let tau = sum.value(of_screw).max(sum.value(of_bush));
        let allowed = sum.value(allowed);
        let says = format!(
            "{:.0} N at the water test, {tau:.2} MPa in four threads of {}, {allowed:.1} MPa allowed",
            sum.value(push),
            thread.name
        );
        let remedy = format!(
            "{} mm of thread engaged",
            up(TURNS * thread.pitch.mm() * tau / allowed)
        );
        Ok(Outcome::compared(allowed, tau, says, remedy))
    })
}
