//! The small language in which cards print their laws.
//!
//! `+ - * / ^`, brackets, `sqrt ln log10 exp sin cos tan asin acos atan abs min max`, `pi`, `g_n`
//! (standard gravity), and `cases(condition, value, condition, value, otherwise)` with `<`, `<=`,
//! `>`, `>=`. Steps are separated by `;`; each is `name = expression`, and the last gives the
//! result. It is printed, typeset and tested against the kernel; users never write it.

use std::collections::HashMap;

/// Why a law does not read or cannot be evaluated.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum LawError {
    /// Something else stands where an operand or operator should.
    #[error("at character {at}: expected {wanted}")]
    Expected {
        /// Position in the text.
        at: usize,
        /// What should be there.
        wanted: &'static str,
    },
    /// A symbol that neither the card nor an earlier step defines.
    #[error("`{0}` is not a symbol of this card")]
    UnknownSymbol(String),
    /// A function that the language does not have.
    #[error("`{0}` is not a function, or takes another number of arguments")]
    UnknownFunction(String),
}

/// An expression of the language, for typesetting.
#[derive(Clone, Debug, PartialEq)]
pub enum Expr {
    /// A number.
    Number(f64),
    /// A symbol.
    Name(String),
    /// A negated expression.
    Negative(Box<Expr>),
    /// Two expressions with an operator (`+ - * / ^ < <= > >=`).
    Binary(Operator, Box<Expr>, Box<Expr>),
    /// A function of arguments.
    Call(String, Vec<Expr>),
}

/// The operators.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[allow(missing_docs, reason = "the names say what they are")]
pub enum Operator {
    Add,
    Subtract,
    Multiply,
    Divide,
    Power,
    Less,
    AtMost,
    More,
    AtLeast,
}

/// One step of a law: `name = expression`; `name` is empty for a bare expression.
#[derive(Clone, Debug, PartialEq)]
pub struct Step {
    /// Left side.
    pub name: String,
    /// Right side.
    pub expr: Expr,
}

/// Longest law that is read, in bytes: what is printed fits a page, and reading by recursion
/// stays shallow.
const LONGEST: usize = 2000;

/// Reads a law into its steps.
///
/// # Errors
/// [`LawError::Expected`] where the text does not read, or is longer than 2000 bytes.
pub fn read(text: &str) -> Result<Vec<Step>, LawError> {
    if text.len() > LONGEST {
        return Err(LawError::Expected {
            at: LONGEST,
            wanted: "the end of the law",
        });
    }
    let mut offset = 0;
    let mut steps = Vec::new();
    for piece in text.split(';') {
        let mut reader = Reader {
            text: piece,
            at: 0,
            offset,
        };
        let name = reader.left_side();
        let expr = reader.expression(0)?;
        reader.skip_space();
        if reader.at < piece.len() {
            return Err(reader.expected("an operator"));
        }
        steps.push(Step { name, expr });
        offset += piece.len() + 1;
    }
    Ok(steps)
}

/// Runs a law of one or more steps and gives the value of the last.
///
/// # Errors
/// [`LawError`] when it does not read or names an unknown symbol or function.
pub fn run(text: &str, look_up: &dyn Fn(&str) -> Option<f64>) -> Result<f64, LawError> {
    let mut known: HashMap<String, f64> = HashMap::new();
    let mut last = f64::NAN;
    for step in read(text)? {
        last = value(&step.expr, &|name| {
            known.get(name).copied().or_else(|| look_up(name))
        })?;
        known.insert(step.name, last);
    }
    Ok(last)
}

/// Evaluates one expression.
///
/// # Errors
/// As [`run`].
pub fn evaluate(text: &str, look_up: &dyn Fn(&str) -> Option<f64>) -> Result<f64, LawError> {
    run(text, look_up)
}

fn value(expr: &Expr, look_up: &dyn Fn(&str) -> Option<f64>) -> Result<f64, LawError> {
    Ok(match expr {
        Expr::Number(x) => *x,
        Expr::Name(name) => match name.as_str() {
            "pi" => std::f64::consts::PI,
            "g_n" => crate::quantity::STANDARD_GRAVITY,
            _ => look_up(name).ok_or_else(|| LawError::UnknownSymbol(name.clone()))?,
        },
        Expr::Negative(inner) => -value(inner, look_up)?,
        Expr::Binary(op, a, b) => operate(*op, value(a, look_up)?, value(b, look_up)?),
        Expr::Call(name, args) if name == "cases" => cases(args, look_up)?,
        Expr::Call(name, args) => {
            let args: Vec<f64> = args
                .iter()
                .map(|a| value(a, look_up))
                .collect::<Result<_, _>>()?;
            call(name, &args).ok_or_else(|| LawError::UnknownFunction(name.clone()))?
        }
    })
}

fn operate(op: Operator, a: f64, b: f64) -> f64 {
    let truth = |holds: bool| f64::from(u8::from(holds));
    match op {
        Operator::Add => a + b,
        Operator::Subtract => a - b,
        Operator::Multiply => a * b,
        Operator::Divide => a / b,
        Operator::Power => a.powf(b),
        Operator::Less => truth(a < b),
        Operator::AtMost => truth(a <= b),
        Operator::More => truth(a > b),
        Operator::AtLeast => truth(a >= b),
    }
}

fn cases(args: &[Expr], look_up: &dyn Fn(&str) -> Option<f64>) -> Result<f64, LawError> {
    let (otherwise, pairs) = args
        .split_last()
        .ok_or_else(|| LawError::UnknownFunction("cases".into()))?;
    for pair in pairs.chunks(2) {
        let [condition, then] = pair else {
            return Err(LawError::UnknownFunction("cases".into()));
        };
        if value(condition, look_up)? > 0.5 {
            return value(then, look_up);
        }
    }
    value(otherwise, look_up)
}

fn call(name: &str, args: &[f64]) -> Option<f64> {
    Some(match (name, args) {
        ("sqrt", [x]) => x.sqrt(),
        ("ln", [x]) => x.ln(),
        ("log10", [x]) => x.log10(),
        ("exp", [x]) => x.exp(),
        ("sin", [x]) => x.sin(),
        ("cos", [x]) => x.cos(),
        ("tan", [x]) => x.tan(),
        ("asin", [x]) => x.asin(),
        ("acos", [x]) => x.acos(),
        ("atan", [x]) => x.atan(),
        ("abs", [x]) => x.abs(),
        ("min", [first, rest @ ..]) => rest.iter().fold(*first, |m, x| m.min(*x)),
        ("max", [first, rest @ ..]) => rest.iter().fold(*first, |m, x| m.max(*x)),
        _ => return None,
    })
}

/// A reader of one step by operator precedence.
struct Reader<'a> {
    text: &'a str,
    at: usize,
    offset: usize,
}

impl Reader<'_> {
    fn rest(&self) -> &str {
        &self.text[self.at..]
    }

    fn skip_space(&mut self) {
        let rest = self.rest();
        self.at += rest.len() - rest.trim_start().len();
    }

    fn expected(&self, wanted: &'static str) -> LawError {
        LawError::Expected {
            at: self.offset + self.at,
            wanted,
        }
    }

    fn take(&mut self, token: &str) -> bool {
        self.skip_space();
        let found = self.rest().starts_with(token);
        if found {
            self.at += token.len();
        }
        found
    }

    fn word(&mut self) -> Option<String> {
        self.skip_space();
        let rest = self.rest();
        if !rest.starts_with(|c: char| c.is_ascii_alphabetic()) {
            return None;
        }
        let end = rest
            .find(|c: char| !(c.is_ascii_alphanumeric() || c == '_'))
            .unwrap_or(rest.len());
        let word = rest[..end].to_owned();
        self.at += end;
        Some(word)
    }

    /// `name =`, if the step begins so; otherwise nothing is consumed.
    fn left_side(&mut self) -> String {
        let start = self.at;
        if let Some(name) = self.word() {
            self.skip_space();
            if self.rest().starts_with('=') && !self.rest().starts_with("==") {
                self.at += 1;
                return name;
            }
        }
        self.at = start;
        String::new()
    }

    fn operator(&mut self, least: u8) -> Option<(Operator, u8)> {
        self.skip_space();
        let rest = self.rest();
        let (op, length, binds) = match rest.as_bytes() {
            [b'<', b'=', ..] => (Operator::AtMost, 2, 1),
            [b'>', b'=', ..] => (Operator::AtLeast, 2, 1),
            [b'<', ..] => (Operator::Less, 1, 1),
            [b'>', ..] => (Operator::More, 1, 1),
            [b'+', ..] => (Operator::Add, 1, 2),
            [b'-', ..] => (Operator::Subtract, 1, 2),
            [b'*', ..] => (Operator::Multiply, 1, 3),
            [b'/', ..] => (Operator::Divide, 1, 3),
            [b'^', ..] => (Operator::Power, 1, 5),
            _ => return None,
        };
        if binds < least {
            return None;
        }
        self.at += length;
        Some((op, binds))
    }

    fn expression(&mut self, least: u8) -> Result<Expr, LawError> {
        let mut left = self.operand()?;
        while let Some((op, binds)) = self.operator(least) {
            let right_least = if op == Operator::Power {
                binds
            } else {
                binds + 1
            };
            let right = self.expression(right_least)?;
            left = Expr::Binary(op, Box::new(left), Box::new(right));
        }
        Ok(left)
    }

    fn operand(&mut self) -> Result<Expr, LawError> {
        if self.take("-") {
            return Ok(Expr::Negative(Box::new(self.expression(4)?)));
        }
        if self.take("(") {
            let inner = self.expression(0)?;
            return if self.take(")") {
                Ok(inner)
            } else {
                Err(self.expected("`)`"))
            };
        }
        if let Some(name) = self.word() {
            if !self.take("(") {
                return Ok(Expr::Name(name));
            }
            let mut args = vec![self.expression(0)?];
            while self.take(",") {
                args.push(self.expression(0)?);
            }
            return if self.take(")") {
                Ok(Expr::Call(name, args))
            } else {
                Err(self.expected("`,` or `)`"))
            };
        }
        self.number()
    }

    fn number(&mut self) -> Result<Expr, LawError> {
        self.skip_space();
        let rest = self.rest().as_bytes();
        let mut end = 0;
        while end < rest.len() {
            let c = rest[end];
            let exponent_sign =
                (c == b'-' || c == b'+') && end > 0 && matches!(rest[end - 1], b'e' | b'E');
            let exponent = matches!(c, b'e' | b'E') && end > 0 && rest[end - 1].is_ascii_digit();
            if !(c.is_ascii_digit() || c == b'.' || exponent || exponent_sign) {
                break;
            }
            end += 1;
        }
        match self.rest()[..end].parse() {
            Ok(x) => {
                self.at += end;
                Ok(Expr::Number(x))
            }
            Err(_) => Err(self.expected("a number, a symbol or `(`")),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn at(text: &str) -> Result<f64, LawError> {
        run(text, &|name| match name {
            "x" => Some(3.0),
            "D_i" => Some(100.0),
            _ => None,
        })
    }

    #[test]
    fn precedence_is_that_of_print() {
        for (text, wanted) in [
            ("1 + 2 * x", 7.0),
            ("-x^2", -9.0),
            ("2^-x", 0.125),
            ("2^3^2", 512.0),
            ("8 / 2 / 2", 2.0),
            ("m = D_i / 2; m - x", 47.0),
            ("cases(x < 1, 10, x <= 3, 20, 30)", 20.0),
            ("max(1, x, 2) + sqrt(4) + 1.5e-3 * 0", 5.0),
            ("(1 - x) * -2", 4.0),
            ("g_n * x - g_n * 2", crate::quantity::STANDARD_GRAVITY),
        ] {
            let found = at(text).expect(text);
            assert!((found - wanted).abs() < 1e-12, "{text} gives {found}");
        }
    }

    #[test]
    fn faults_are_placed() {
        assert_eq!(
            at("1 +"),
            Err(LawError::Expected {
                at: 3,
                wanted: "a number, a symbol or `(`"
            })
        );
        assert_eq!(
            at("(1"),
            Err(LawError::Expected {
                at: 2,
                wanted: "`)`"
            })
        );
        assert_eq!(at("y"), Err(LawError::UnknownSymbol("y".into())));
        assert_eq!(at("foo(1)"), Err(LawError::UnknownFunction("foo".into())));
        assert_eq!(
            at("1 2"),
            Err(LawError::Expected {
                at: 2,
                wanted: "an operator"
            })
        );
    }
}
