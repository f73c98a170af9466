//! The mapping: which column of a table feeds which field of the case.

use std::collections::BTreeMap;
use std::str::FromStr;

use super::shape::FieldPath;
use crate::source::{At, FromNode, Node, NodeKind, Reader, choice, record, text_value};
use crate::units::{Date, Misread};

choice! {
    /// In which order a date of the list is written. One that cannot be mistaken, `2027-03-12`, is read in any case.
    pub enum DateForm ("order of day, month and year") {
        DayFirst = "d/m/y",
        MonthFirst = "m/d/y",
        YearFirst = "y-m-d",
    }
}

choice! {
    /// What stands between the cells of a CSV.
    pub enum Delimiter ("delimiter") {
        Comma = "comma",
        Semicolon = "semicolon",
        Tab = "tab",
        Bar = "bar",
    }
}

impl Delimiter {
    pub const fn byte(self) -> u8 {
        match self {
            Self::Comma => b',',
            Self::Semicolon => b';',
            Self::Tab => b'\t',
            Self::Bar => b'|',
        }
    }
}

/// Words of a table as they stand there: the head of a column, a value, the name of a sheet.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Words(String);

impl Words {
    pub fn as_str(&self) -> &str {
        &self.0
    }
}

impl FromStr for Words {
    type Err = Misread;

    fn from_str(text: &str) -> Result<Self, Misread> {
        let text = text.trim();
        if text.is_empty() {
            Err(Misread::new("nothing stands here", "what stands in the table"))
        } else {
            Ok(Self(text.to_owned()))
        }
    }
}

text_value!(Words, "words of the table", "Words as they stand in the table.", r"\S", "Fitted on");

/// The row of the heads, counted from 1 as spreadsheets do.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct RowNumber(usize);

impl RowNumber {
    pub const fn get(self) -> usize {
        self.0
    }
}

impl FromStr for RowNumber {
    type Err = Misread;

    fn from_str(text: &str) -> Result<Self, Misread> {
        let number = text.parse::<usize>().ok().filter(|number| (1..=1000).contains(number));
        number.map(Self).ok_or_else(|| Misread::new(format!("`{text}` is no row of heads"), "a row from `1` to `1000`"))
    }
}

text_value!(RowNumber, "a row", "A row, counted from 1.", r"^[1-9]\d{0,3}$", "1");

record! {
    /// What a column feeds, with other words for its values.
    pub struct Feed ("what a column feeds") {
        /// The field of the case, with dots: `clinic.telephone`, `findings.1.angle`.
        pub field: At<FieldPath>,
        /// What stands in the table, and what the case says for it. A value that is not listed is taken as it stands.
        pub values: BTreeMap<Words, String>,
    }
}

/// The same as a scalar: the field alone.
#[derive(Clone, Debug, PartialEq, Eq, schemars::JsonSchema)]
#[schemars(untagged)]
pub enum Column {
    Field(FieldPath),
    Feed(Feed),
}

impl FromNode for Column {
    fn from_node(node: &Node, reader: &mut Reader<'_>) -> Option<Self> {
        match node.kind {
            NodeKind::Mapping(_) => Feed::from_node(node, reader).map(Self::Feed),
            _ => FieldPath::from_node(node, reader).map(Self::Field),
        }
    }
}

impl Column {
    pub fn field(&self) -> &FieldPath {
        match self {
            Self::Field(field) => field,
            Self::Feed(feed) => &feed.field.value,
        }
    }

    /// What the case says for a value of the table.
    pub fn value<'v>(&'v self, text: &'v str) -> &'v str {
        match self {
            Self::Feed(feed) => {
                feed.values.iter().find(|(words, _)| words.as_str() == text).map_or(text, |(_, value)| value)
            }
            Self::Field(_) => text,
        }
    }
}

/// A part of a case, as it is written.
#[derive(Clone, Debug)]
pub struct Defaults(pub Node);

impl PartialEq for Defaults {
    fn eq(&self, other: &Self) -> bool {
        self.0.span == other.0.span
    }
}

impl Eq for Defaults {}

impl FromNode for Defaults {
    fn from_node(node: &Node, reader: &mut Reader<'_>) -> Option<Self> {
        if !matches!(node.kind, NodeKind::Mapping(_)) {
            reader.shape(node, "a part of a case (a mapping of `key: value` lines)");
            return None;
        }
        Some(Self(node.clone()))
    }
}

impl schemars::JsonSchema for Defaults {
    fn schema_name() -> std::borrow::Cow<'static, str> {
        "Defaults".into()
    }
    fn json_schema(_: &mut schemars::SchemaGenerator) -> schemars::Schema {
        schemars::json_schema!({ "type": "object", "description": "Any fields of a case." })
    }
}

record! {
    /// Which column of a table feeds which field of the case.
    pub struct MappingFile ("a mapping") {
        /// By the head of each column. Columns that are not named are not read.
        pub columns: At<BTreeMap<Words, At<Column>>>,
        /// The head of the column that names the row in reports and file names. Without it `person.reference` does.
        pub id: Option<At<Words>>,
        /// What every row has that no cell says otherwise.
        pub defaults: Option<Defaults>,
        /// How dates are written. Without it only `2027-03-12`, and real dates of a workbook, are read.
        pub dates: Option<DateForm>,
        /// The sheet of a workbook; not needed when only one can be seen.
        pub sheet: Option<At<Words>>,
        /// The row that the heads stand in; the first when not said.
        pub header_row: Option<At<RowNumber>>,
        /// What stands between cells. Not needed where the heads show it.
        pub delimiter: Option<Delimiter>,
        /// How the letters of a CSV are stored when it is not UTF-8, such as `windows-1252`.
        pub encoding: Option<At<Words>>,
    }
}

/// A date of the list as a case writes it.
///
/// # Errors
/// One that can be read in more than one way, or that does not exist.
pub fn date(text: &str, form: Option<DateForm>) -> Result<String, Misread> {
    let parts: Vec<&str> = text.split(['/', '.', '-']).map(str::trim).collect();
    let marks: Vec<char> = text.chars().filter(|c| matches!(c, '/' | '.' | '-')).collect();
    let figures = |part: &&str| !part.is_empty() && part.len() <= 4 && part.bytes().all(|byte| byte.is_ascii_digit());
    let shaped = parts.len() == 3 && parts.iter().all(figures) && marks[0] == marks[1];
    if !shaped || text.parse::<Date>().is_ok() {
        // The case's own reader says what is wrong with it.
        return Ok(text.to_owned());
    }
    let Some(form) = form else {
        let wrong = format!("`{text}` can be read as more than one day");
        return Err(Misread::new(
            wrong,
            "`2027-03-12`, or say in the mapping how dates are written: `dates: d/m/y` or `dates: m/d/y`",
        ));
    };
    let (year, month, day) = match form {
        DateForm::DayFirst => (parts[2], parts[1], parts[0]),
        DateForm::MonthFirst => (parts[2], parts[0], parts[1]),
        DateForm::YearFirst => (parts[0], parts[1], parts[2]),
    };
    let fault = |what: &str| {
        Misread::new(
            format!("`{text}` is no date written {form}: {what}"),
            "`2027-03-12`, or mend `dates:` of the mapping",
        )
    };
    if year.len() != 4 {
        return Err(fault("the year needs four figures"));
    }
    let number = |part: &str| part.parse::<i16>().ok();
    let found = number(year)
        .zip(number(month))
        .zip(number(day))
        .and_then(|((year, month), day)| Date::new(year, i8::try_from(month).ok()?, i8::try_from(day).ok()?));
    found.map(|date| date.to_string()).ok_or_else(|| fault("there is no such day from 2000 to 2199"))
}
