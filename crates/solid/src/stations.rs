//! Where the lines of a mesh stand: close where the stress changes fast, wide elsewhere.

/// How fine a mesh is: into how many parts each length of the usual mesh is cut.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Fineness(pub u32);

/// Each length is at most so many times its neighbour nearer to the edge.
const GROWTH: f64 = 1.5;

/// As many even lengths as are asked.
pub(crate) fn even(from: f64, to: f64, parts: u32) -> Vec<f64> {
    let at = |i: u32| {
        let share = f64::from(i) / f64::from(parts);
        (1.0 - share) * from + share * to
    };
    (0..=parts).map(at).collect()
}

/// Lengths that grow from the first end: the nearest is at most `first`, none is above `most`.
pub(crate) fn from_low(from: f64, to: f64, first: f64, most: f64) -> Vec<f64> {
    let whole = to - from;
    let mut steps = vec![first];
    while steps.iter().sum::<f64>() < whole {
        let last = steps[steps.len() - 1];
        steps.push((last * GROWTH).min(most));
    }
    let scale = whole / steps.iter().sum::<f64>();
    let mut at = vec![from];
    let mut sum = 0.0;
    for step in &steps {
        sum += step * scale;
        at.push(from + sum);
    }
    // The last station is the end itself, not a sum that misses it by a rounding.
    let last = at.len() - 1;
    at[last] = to;
    at
}

/// The same growing from the other end.
pub(crate) fn from_high(from: f64, to: f64, first: f64, most: f64) -> Vec<f64> {
    let mirrored = from_low(-to, -from, first, most);
    mirrored.into_iter().rev().map(|x| -x).collect()
}

/// Lengths that grow from both ends towards the middle.
pub(crate) fn from_both(from: f64, to: f64, first: f64, most: f64) -> Vec<f64> {
    let middle = 0.5 * (from + to);
    joined(
        from_low(from, middle, first, most),
        from_high(middle, to, first, most),
    )
}

/// Two rows that meet, as one.
pub(crate) fn joined(mut low: Vec<f64>, high: Vec<f64>) -> Vec<f64> {
    low.extend(high.into_iter().skip(1));
    low
}

/// Every length cut into equal parts: the finer mesh has all lines of the coarser.
pub(crate) fn finer(stations: &[f64], Fineness(parts): Fineness) -> Vec<f64> {
    stations.windows(2).fold(vec![stations[0]], |all, pair| {
        joined(all, even(pair[0], pair[1], parts))
    })
}
