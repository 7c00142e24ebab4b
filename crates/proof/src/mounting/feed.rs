//! The means of feeding under pressure.

use crate::input::{FeedMeans, Mountings};
use crate::rules::{FEED_CHECK, FEED_MEANS};
use crate::set::OURS;
use crate::sum::{Answer, Outcome, check};
use crate::taken::{file_size, need};
use reckoning::Finding;
use reckoning::size::Bad;

/// Every check of the feed.
pub(super) fn checks(mounted: &Mountings) -> Vec<Finding> {
    let mut found = vec![means(&mounted.feeds)];
    found.extend(mounted.feeds.iter().map(check_valve));
    found
}

fn means(feeds: &[FeedMeans]) -> Finding {
    check(OURS.head(&FEED_MEANS, "feed"), |_| {
        let remedy = "a hand pump, and a second means that does not share its parts".to_owned();
        let says = match feeds.len() {
            0 => "no means of feeding under pressure".to_owned(),
            1 => "one means of feeding under pressure".to_owned(),
            n => format!("{n} means of feeding under pressure"),
        };
        let answer = if feeds.is_empty() {
            Answer::Fails
        } else {
            Answer::Holds
        };
        let alone = (feeds.len() == 1)
            .then(|| "should it fail, drop the fire at once: clubs ask for two".to_owned());
        Ok(Outcome::plain(answer, says, remedy).strained_if(alone))
    })
}

fn check_valve(feed: &FeedMeans) -> Finding {
    check(OURS.head(&FEED_CHECK, &feed.id), |sum| {
        let bore = need("the check valve", &feed.id, feed.check_valve.as_ref())?;
        let bore = file_size(sum, ("d", "bore of the check valve"), bore, Bad::Small)?;
        let says = format!("a check valve of {:.2} mm bore", sum.value(bore));
        Ok(Outcome::plain(
            Answer::Holds,
            says,
            FEED_CHECK.remedy.to_owned(),
        ))
    })
}
