//! Languages a sheet can be printed in: a closed list, made from `content/languages.yaml`.

use std::fmt;
use std::str::FromStr;

use icu::locale::{Locale, LocaleExpander};

use crate::assets::Assets;
use crate::diag::Findings;
use crate::source::{FromNode, Limits, Reader, choice, parse, record, text_value};
use crate::units::{Hundredths, Misread};

/// The language that is made of the first one on the fly, longer and with strange letters, to try a sheet with (CLDR,
/// pseudo-locales). It is in no list.
pub const PSEUDO: &str = "en-XA";

/// A BCP 47 tag as a case writes it: `en`, `en-US`, `ar-EG`. Whether there are words for it is the library's to say.
#[derive(Clone, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub struct LanguageTag(String);

impl LanguageTag {
    pub fn as_str(&self) -> &str {
        &self.0
    }

    /// The language without region: `en` of `en-US`.
    pub fn primary(&self) -> &str {
        self.0.split('-').next().unwrap_or(&self.0)
    }

    /// The script that most write it in (CLDR, likely subtags), such as `Latn`; none where the tag is no locale.
    pub fn script(&self) -> Option<String> {
        let mut locale: Locale = self.0.parse().ok()?;
        LocaleExpander::new_extended().maximize(&mut locale.id);
        locale.id.script.map(|script| script.to_string())
    }

    /// Whether a reader of one can read the other: the same language in the same script, whatever the region.
    pub fn is_akin(&self, other: &Self) -> bool {
        self.primary() == other.primary() && self.script() == other.script()
    }

    /// Whether it is the pseudo language.
    pub fn is_pseudo(&self) -> bool {
        self.0 == PSEUDO
    }

    /// The two-letter region, when the tag has one.
    pub fn region(&self) -> Option<&str> {
        self.0.split('-').skip(1).find(|part| part.len() == 2)
    }
}

impl fmt::Display for LanguageTag {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.0)
    }
}

impl FromStr for LanguageTag {
    type Err = Misread;

    fn from_str(text: &str) -> Result<Self, Misread> {
        let mut parts = text.split('-');
        let language = parts.next().unwrap_or_default();
        let good = (2..=3).contains(&language.len())
            && language.bytes().all(|b| b.is_ascii_lowercase())
            && parts.clone().count() <= 2
            && parts.all(|part| matches!(part.len(), 2 | 4) && part.bytes().all(|b| b.is_ascii_alphabetic()));
        if good {
            Ok(Self(text.to_owned()))
        } else {
            Err(Misread::new(format!("`{text}` is no language tag"), "such as `en`, `es` or `ar`"))
        }
    }
}

text_value!(
    LanguageTag,
    "a language tag",
    "A language tag, such as `en`, `en-US`, `es`, `ar`.",
    r"^[a-z]{2,3}(-[A-Za-z]{2,4}){0,2}$",
    "ar"
);

choice! {
    /// The direction of reading.
    pub enum ReadingDirection ("direction of reading") {
        LeftToRight = "ltr",
        RightToLeft = "rtl",
    }
}

choice! {
    /// How far words of a language have been checked, the best first.
    pub enum WordState ("state of a translation") {
        /// The language the words are written in first.
        Original = "original",
        /// A qualified translator has signed it off as it stands.
        SignedOff = "signed-off",
        /// Nobody qualified has signed it off.
        Drafted = "drafted",
        /// The original was changed since: it may say something else now.
        Outdated = "outdated",
    }
}

impl WordState {
    /// Whether a sheet may be given without a word about it.
    pub const fn is_signed(self) -> bool {
        matches!(self, Self::Original | Self::SignedOff)
    }
}

record! {
    /// How the letters of a language stand on a line, in hundredths of the type size. Latin letters need none of this.
    pub struct LineShape ("the shape of a line") {
        /// From the line that letters stand on to the top of the highest.
        pub over: Hundredths,
        /// From there down to the foot of the lowest that the next line has to clear.
        pub under: Hundredths,
        /// Between the lines of running words.
        pub between: Hundredths,
        /// Between lines in tables and labels.
        pub tight: Hundredths,
    }
}

record! {
    /// A language with words, fonts and formats.
    pub struct LanguageEntry ("a language") {
        /// The folder of its words: `en`.
        pub tag: LanguageTag,
        /// Its own name.
        pub name: String,
        /// Its name in English.
        pub english: String,
        /// The locale that dates, times and numbers follow when the case names no region.
        pub locale: String,
        pub direction: ReadingDirection,
        /// Font families in order.
        pub fonts: Vec<String>,
        pub line: Option<LineShape>,
        /// Whether long words are divided at the end of a line.
        pub hyphenate: bool,
    }
}

/// A language of the list, together with the tag the case asked for.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Language {
    pub tag: LanguageTag,
    pub entry: LanguageEntry,
}

impl Language {
    /// The region that a reader of the text is told besides the language; of a language that is listed by itself, none.
    pub fn region(&self) -> Option<String> {
        let listed = || self.entry.locale.parse().ok().filter(|_| self.entry.tag.as_str().contains('-'));
        let region = self.tag.region().map(str::to_owned);
        region.or_else(|| listed().and_then(|locale: LanguageTag| locale.region().map(str::to_owned)))
    }

    /// The locale for dates, times and numbers: the case's own region, or the list's default.
    pub fn locale(&self) -> String {
        if self.tag == self.entry.tag { self.entry.locale.clone() } else { self.tag.to_string() }
    }
}

/// All languages there are words for, in the order of the list.
#[derive(Clone, Debug, Default)]
pub struct Languages {
    list: Vec<LanguageEntry>,
}

impl Languages {
    /// Loads the list.
    ///
    /// # Errors
    /// All faults of the list.
    pub fn load(assets: &Assets) -> Result<Self, Findings> {
        let source = assets.text("content/languages.yaml")?;
        let node = parse(&source, Limits::CONTENT)?;
        let mut reader = Reader::new(&source);
        let list = Vec::<LanguageEntry>::from_node(&node, &mut reader);
        let findings = reader.finish();
        match list {
            Some(list) if !findings.has_errors() => Ok(Self { list }),
            _ => Err(findings),
        }
    }

    pub fn iter(&self) -> impl Iterator<Item = &LanguageEntry> {
        self.list.iter()
    }

    /// The language for a tag: the same tag, or one of the same primary language in the same script.
    pub fn find(&self, tag: &LanguageTag) -> Option<Language> {
        if tag.is_pseudo() {
            return self.pseudo(tag);
        }
        let same = self.list.iter().find(|entry| entry.tag == *tag);
        let entry = same.or_else(|| self.list.iter().find(|entry| entry.tag.is_akin(tag)))?;
        Some(Language { tag: tag.clone(), entry: entry.clone() })
    }

    /// The pseudo language: in everything but its words the one it is made of.
    fn pseudo(&self, tag: &LanguageTag) -> Option<Language> {
        let first = self.list.iter().find(|entry| entry.tag.as_str() == tag.primary())?;
        let name = "pseudo".to_owned();
        let entry = LanguageEntry { tag: tag.clone(), name: name.clone(), english: name, ..first.clone() };
        Some(Language { tag: tag.clone(), entry })
    }

    pub fn tags(&self) -> Vec<&str> {
        self.list.iter().map(|entry| entry.tag.as_str()).collect()
    }
}
