//! Sheets as SVG 1.1: millimetres, plain attributes, text as text, ink in `currentColor` so that
//! a dark page can turn it over. The same sheet gives the same bytes.

use std::fmt::Write as _;

use crate::sheet::{Anchor, At, Extent, Item, Layer, Mark, Runs, Sheet, Text, at};

/// White border round everything, mm.
const BORDER: f64 = 5.0;

/// The sheet as the text of an SVG file.
#[must_use]
pub fn svg(sheet: &Sheet) -> String {
    let nothing = Extent {
        low: at(0.0, 0.0),
        high: at(0.0, 0.0),
    };
    let extent = sheet.extent().unwrap_or(nothing);
    let paper = Paper {
        left: extent.low.x - BORDER,
        top: extent.high.y + BORDER,
    };
    let wide = number(extent.high.x - extent.low.x + 2.0 * BORDER);
    let high = number(extent.high.y - extent.low.y + 2.0 * BORDER);
    let mut out = format!(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{wide}mm\" height=\"{high}mm\" \
         viewBox=\"0 0 {wide} {high}\" role=\"img\" fill=\"none\" stroke=\"currentColor\" \
         stroke-linejoin=\"round\" font-family=\"sans-serif\">\n"
    );
    line(
        &mut out,
        &format!("<title>{}</title>", escaped(&sheet.title)),
    );
    line(&mut out, &format!("<desc>{}</desc>", escaped(&sheet.says)));
    for layer in Layer::ALL {
        paper.layer(&mut out, layer, &sheet.items);
    }
    line(&mut out, "</svg>");
    out
}

/// Where the upper left corner of the paper lies on the sheet.
struct Paper {
    left: f64,
    top: f64,
}

impl Paper {
    fn layer(&self, out: &mut String, layer: Layer, items: &[Item]) {
        let mut body = String::new();
        for item in items {
            let simple = item.mark.simple(item.layer);
            let marks: Vec<&Mark> = simple
                .iter()
                .filter(|(of, _)| *of == layer)
                .map(|(_, mark)| mark)
                .collect();
            if marks.is_empty() {
                continue;
            }
            if let Some(part) = &item.part {
                line(&mut body, &format!("<g data-part=\"{}\">", escaped(part)));
            }
            for mark in marks {
                self.mark(&mut body, mark);
            }
            if item.part.is_some() {
                line(&mut body, "</g>");
            }
        }
        if !body.is_empty() {
            let head = layer_head(layer);
            let _ = write!(out, "{head}\n{body}</g>\n");
        }
    }

    fn mark(&self, out: &mut String, mark: &Mark) {
        match mark {
            Mark::Line(a, b) => {
                let (a, b) = (self.xy(*a), self.xy(*b));
                line(
                    out,
                    &format!(
                        "<line x1=\"{}\" y1=\"{}\" x2=\"{}\" y2=\"{}\"/>",
                        a.0, a.1, b.0, b.1
                    ),
                );
            }
            Mark::Circle { centre, radius } => {
                let (x, y) = self.xy(*centre);
                let r = number(*radius);
                line(out, &format!("<circle cx=\"{x}\" cy=\"{y}\" r=\"{r}\"/>"));
            }
            Mark::Arc {
                centre,
                radius,
                from,
                to,
            } => {
                self.arc(out, (*centre, *radius), (*from, *to));
            }
            Mark::Open(points) => self.points(out, "<polyline points=\"", points, "\"/>"),
            Mark::Closed(points) => self.points(out, "<polygon points=\"", points, "\"/>"),
            Mark::Filled(points) => {
                let tail = "\" fill=\"currentColor\" stroke=\"none\"/>";
                self.points(out, "<polygon points=\"", points, tail);
            }
            Mark::Text(text) => self.text(out, text),
            // A compound has been written out as simple marks before it comes here.
            Mark::Hatch(_) | Mark::Dimension(_) => {}
        }
    }

    fn arc(&self, out: &mut String, (centre, radius): (At, f64), (from, to): (f64, f64)) {
        let rim = |degrees: f64| {
            let (s, c) = degrees.to_radians().sin_cos();
            self.xy(centre.moved(radius * c, radius * s))
        };
        let (a, b, r) = (rim(from), rim(to), number(radius));
        let large = u8::from(to - from > 180.0);
        let path = format!("M{} {}A{r} {r} 0 {large} 0 {} {}", a.0, a.1, b.0, b.1);
        line(out, &format!("<path d=\"{path}\"/>"));
    }

    fn points(&self, out: &mut String, head: &str, points: &[At], tail: &str) {
        let pairs: Vec<String> = points
            .iter()
            .map(|p| {
                let (x, y) = self.xy(*p);
                format!("{x},{y}")
            })
            .collect();
        line(out, &format!("{head}{}{tail}", pairs.join(" ")));
    }

    fn text(&self, out: &mut String, text: &Text) {
        let (x, y) = self.xy(text.at);
        let anchor = match text.anchor {
            Anchor::Start => "start",
            Anchor::Middle => "middle",
            Anchor::End => "end",
        };
        let turn = match text.runs {
            Runs::Across => String::new(),
            Runs::Up => format!(" transform=\"rotate(-90 {x} {y})\""),
        };
        let size = number(text.size);
        let says = escaped(&text.says);
        line(
            out,
            &format!(
                "<text x=\"{x}\" y=\"{y}\" font-size=\"{size}\" text-anchor=\"{anchor}\"{turn}>{says}</text>"
            ),
        );
    }

    fn xy(&self, p: At) -> (String, String) {
        (number(p.x - self.left), number(self.top - p.y))
    }
}

fn layer_head(layer: Layer) -> String {
    let name = layer.name();
    if layer == Layer::Text {
        return format!("<g class=\"{name}\" fill=\"currentColor\" stroke=\"none\">");
    }
    let width = number(layer.width());
    let dashes: Vec<String> = layer.dashes().iter().map(|d| number(*d)).collect();
    let dashes = if dashes.is_empty() {
        String::new()
    } else {
        format!(" stroke-dasharray=\"{}\"", dashes.join(" "))
    };
    format!("<g class=\"{name}\" stroke-width=\"{width}\"{dashes}>")
}

/// To the thousandth of a millimetre, without idle noughts: finer than any printer.
fn number(value: f64) -> String {
    let text = format!("{value:.3}");
    let text = text.trim_end_matches('0').trim_end_matches('.');
    if text == "-0" { "0" } else { text }.to_owned()
}

fn line(out: &mut String, text: &str) {
    out.push_str(text);
    out.push('\n');
}

fn escaped(text: &str) -> String {
    text.replace('&', "&amp;")
        .replace('<', "&lt;")
        .replace('>', "&gt;")
        .replace('"', "&quot;")
}
