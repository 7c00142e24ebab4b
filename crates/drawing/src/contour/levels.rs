//! Round values for the lines of equal stress.

/// About so many lines.
const LINES: f64 = 9.0;
/// Share of the values that the lines run up to: a sharp corner would else take all of them.
const MOST: f64 = 0.99;

/// Levels for these values: multiples of one, two or five of a power of ten, growing.
pub(super) fn levels(mut values: Vec<f64>) -> Vec<f64> {
    values.sort_by(f64::total_cmp);
    let last = (MOST * values.len() as f64) as usize;
    let (Some(&low), Some(&high)) = (values.first(), values.get(last)) else {
        return Vec::new();
    };
    if high <= low {
        return Vec::new();
    }
    let step = step((high - low) / LINES);
    let first = (low / step).floor() as i64 + 1;
    (first..)
        .map(|i| i as f64 * step)
        .take_while(|level| *level <= high)
        .collect()
}

/// The least of 1, 2, 5, 10 … times a power of ten that is not below this.
fn step(least: f64) -> f64 {
    let power = 10.0_f64.powf(least.log10().floor());
    let step = [1.0, 2.0, 5.0].map(|m| m * power);
    step.into_iter()
        .find(|s| *s >= least)
        .unwrap_or(10.0 * power)
}

/// A level as it is lettered.
pub(super) fn shown(level: f64) -> String {
    crate::lettering::short(level)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn levels_are_round_and_lie_between_the_values() {
        let values = (0..100).map(|i| 0.37 + f64::from(i)).collect();
        let found = levels(values);
        assert_eq!(found[..2], [20.0, 40.0]);
        assert!(levels(vec![3.0; 50]).is_empty() && levels(Vec::new()).is_empty());
    }
}
