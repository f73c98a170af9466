//! From a section's list of blocks to HTML. A block that has no form here fails the page; nothing is dropped.

use std::fmt::Write as _;

use serde_json::Value;

use super::html::{heading, inline, list, say, word};
use super::plates::Plates;
use super::{boxes, hand, hours, month, moves, signs};
use crate::diag::{Code, Diagnostic};

/// What the blocks of a section share.
pub struct Around<'a> {
    pub plates: &'a Plates,
    /// The ten digits of the language.
    pub digits: &'a [Value],
    pub direction: &'a str,
    /// Of the headings inside the section.
    pub level: u8,
}

impl Around<'_> {
    /// A number in the digits of the language.
    pub fn number(&self, number: usize) -> String {
        number
            .to_string()
            .chars()
            .map(|c| {
                let digit = c.to_digit(10).and_then(|digit| self.digits.get(digit as usize));
                digit.map_or_else(|| c.to_string(), say)
            })
            .collect()
    }

    /// The blocks of a section. Ids in them begin with `id`.
    ///
    /// # Errors
    /// A block of a kind that has no form here.
    pub fn blocks(&self, section: &Value, id: &str) -> Result<String, Diagnostic> {
        let blocks = list(&section["blocks"]);
        let mut out = String::new();
        let mut skip = false;
        for (at, block) in blocks.iter().enumerate() {
            if std::mem::take(&mut skip) {
                continue;
            }
            let id = format!("{id}-{}", at + 1);
            let next = blocks.get(at + 1).filter(|next| word(&next["t"]) == "ul");
            match word(&block["t"]) {
                "exercises" => {
                    // What is still to come stands before the limits, so that the limits end the section.
                    let after = next.map(|advice| self.advice(advice)).transpose()?.unwrap_or_default();
                    skip = next.is_some();
                    let number = |number| self.number(number);
                    out.push_str(&moves::exercises(block, &after, self.plates, &id, self.level, &number));
                }
                "ul" if at > 0 => out.push_str(&self.advice(block)?),
                _ => out.push_str(&self.block(block, &id)?),
            }
        }
        Ok(out)
    }

    fn block(&self, block: &Value, id: &str) -> Result<String, Diagnostic> {
        let level = self.level;
        let number = |number| self.number(number);
        Ok(match word(&block["t"]) {
            "hand" => hand::hand(block, self.plates, id, self.direction),
            "facts" => hand::facts(block),
            "later" => hand::later(block),
            "strips" => hours::strips(block, level),
            "schedule" => hours::schedule(block),
            "calendar" => month::calendar(block),
            "steps" => moves::steps(block, self.plates, id, level, &number),
            "spots" => moves::spots(block, self.plates, id),
            "activities" => moves::activities(block, level),
            "checks" => boxes::checks(block, level),
            "care" => boxes::care(block),
            "warning" => boxes::warning(block, level),
            "ladder" => boxes::ladder(block, level),
            "initial" => boxes::initial(block),
            "own" => self.prose(&block["blocks"])?,
            "note" => {
                let title =
                    block["title"].as_str().map(|_| heading(level, "", &say(&block["title"]))).unwrap_or_default();
                format!("<div class=\"note\">{title}<div dir=\"auto\">{}</div></div>", self.prose(&block["blocks"])?)
            }
            _ => self.prose(&Value::Array(vec![block.clone()]))?,
        })
    }

    /// Advice belongs to what stands above it. Sentences have a mark of their own; anything longer is a list.
    fn advice(&self, block: &Value) -> Result<String, Diagnostic> {
        let mut items = String::new();
        for item in list(&block["items"]) {
            let _ = write!(items, "<li>{}<div>{}</div></li>", signs::sign("notice"), self.prose(item)?);
        }
        Ok(format!("<ul class=\"advice\">{items}</ul>"))
    }

    /// Running text.
    fn prose(&self, blocks: &Value) -> Result<String, Diagnostic> {
        let mut out = String::new();
        for block in list(blocks) {
            match word(&block["t"]) {
                "p" => {
                    let _ = write!(out, "<p>{}</p>", inline(&block["inl"]));
                }
                "h" => out.push_str(&heading(self.level, "", &inline(&block["inl"]))),
                kind @ ("ul" | "ol") => {
                    let mut items = String::new();
                    for item in list(&block["items"]) {
                        let _ = write!(items, "<li>{}</li>", self.prose(item)?);
                    }
                    let _ = write!(out, "<{kind}>{items}</{kind}>");
                }
                kind => {
                    let message = format!("the page for a telephone has no form for the block `{kind}`");
                    return Err(Diagnostic::outside(Code::TYPESET_FAILED, message));
                }
            }
        }
        Ok(out)
    }
}
