//! One answer from one plan: runs the analyses, hands the service from the one to the other, and
//! says one sentence a question. The only place where areas meet; it opens no file.

mod account;
mod answer;
pub mod bench;
mod beside;
mod check;
mod duty_answer;
pub mod fire;
mod flame_answer;
mod geometry;
mod hold_points;
mod making_answer;
mod parts_answer;
pub mod proof_door;
pub mod propose;
mod question;
mod rules;
pub mod second_opinion;
mod sentence;
mod steam_answer;
mod uncovered;

pub use account::{Account, FlameAccount, NoAccount, Told, account};
pub use answer::{Judged, Standing, lies_in, worst_first};
pub use bench::{Bench, bench};
pub use beside::{Beside, beside};
pub use check::{Checked, PartTold, check, check_by};
pub use flame_answer::FlameAnswer;
pub use hold_points::{HoldPoint, hold_points};
pub use question::{Answer, Question};
pub use rules::RULES;
pub use steam_answer::{Asked, Run, Steaming, steaming};
