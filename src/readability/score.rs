//! Readability formulas as they were published, from counts of a text.
//!
//! Where a widely used library departs from a published formula, the published one stands here, and
//! `tests/outside/test_readability.py` names the difference.

use super::counts::Counts;
use crate::source::choice;

choice! {
    /// A readability formula.
    pub enum Score ("readability formula") {
        FleschEase = "flesch-ease",
        FleschKincaid = "flesch-kincaid",
        Smog = "smog",
        Fog = "fog",
        ColemanLiau = "coleman-liau",
        Ari = "ari",
        FernandezHuerta = "fernandez-huerta",
        Szigriszt = "szigriszt-pazos",
        GutierrezDePolini = "gutierrez-de-polini",
        KandelMoles = "kandel-moles",
        Amstad = "amstad",
        WienerFirst = "wiener-1",
        WienerSecond = "wiener-2",
        WienerThird = "wiener-3",
        WienerFourth = "wiener-4",
        Lix = "lix",
        Gulpease = "gulpease",
        MartinsFlesch = "martins-flesch",
        ObornevaEase = "oborneva-ease",
        ObornevaGrade = "oborneva-grade",
        SolovyevEase = "solovyev-ease",
        SolovyevGrade = "solovyev-grade",
        FogPolish = "fog-polish",
        PisarekLinear = "pisarek-linear",
        PisarekRoot = "pisarek-root",
        NguyenHenkin = "nguyen-henkin",
    }
}

impl Score {
    /// The value for a text; nothing for a text without words.
    pub fn of(self, counts: &Counts) -> Option<f64> {
        if counts.words == 0 || counts.sentences == 0 {
            return None;
        }
        let per_word = |count: usize| number(count) / number(counts.words);
        // Words in a sentence, syllables in a word, letters in a word.
        let (asl, asw) = (number(counts.words) / number(counts.sentences), per_word(counts.syllables));
        let letters = per_word(counts.letters);
        let percent = |count: usize| 100.0 * per_word(count);
        let (three, long, one) = (percent(counts.three_syllables), percent(counts.long), percent(counts.one_syllable));
        let four = percent(counts.four_syllables);
        Some(match self {
            Self::FleschEase => 206.835 - 1.015 * asl - 84.6 * asw,
            Self::FleschKincaid => 0.39 * asl + 11.8 * asw - 15.59,
            Self::Smog => 1.043 * (number(counts.three_syllables) * 30.0 / number(counts.sentences)).sqrt() + 3.1291,
            Self::Fog => 0.4 * (asl + three),
            Self::ColemanLiau => 5.88 * letters - 29.6 * number(counts.sentences) / number(counts.words) - 15.8,
            Self::Ari => 4.71 * per_word(counts.characters) + 0.5 * asl - 21.43,
            Self::FernandezHuerta => 206.84 - 60.0 * asw - 1.02 * asl,
            Self::Szigriszt => 206.835 - 62.3 * asw - asl,
            Self::GutierrezDePolini => 95.2 - 9.7 * letters - 0.35 * asl,
            Self::KandelMoles => 207.0 - 1.015 * asl - 73.6 * asw,
            Self::Amstad => 180.0 - asl - 58.5 * asw,
            Self::WienerFirst => 0.1935 * three + 0.1672 * asl + 0.1297 * long - 0.0327 * one - 0.875,
            Self::WienerSecond => 0.2007 * three + 0.1682 * asl + 0.1373 * long - 2.779,
            Self::WienerThird => 0.2963 * three + 0.1905 * asl - 1.1144,
            Self::WienerFourth => 0.2744 * three + 0.2656 * asl - 1.693,
            Self::Lix => asl + long,
            Self::Gulpease => {
                89.0 + (300.0 * number(counts.sentences) - 10.0 * number(counts.letters)) / number(counts.words)
            }
            Self::MartinsFlesch => 248.835 - 1.015 * asl - 84.6 * asw,
            Self::ObornevaEase => 206.835 - 1.3 * asl - 60.1 * asw,
            Self::ObornevaGrade => 0.5 * asl + 8.4 * asw - 15.59,
            Self::SolovyevEase => 206.836 - 1.52 * asl - 65.14 * asw,
            Self::SolovyevGrade => 0.36 * asl + 5.76 * asw - 11.97,
            Self::FogPolish => 0.4 * (asl + four),
            Self::PisarekLinear => asl / 3.0 + four / 3.0 + 1.0,
            Self::PisarekRoot => 0.5 * asl.hypot(four),
            Self::NguyenHenkin => 2.0 * letters + 0.2 * asl - 6.0,
        })
    }

    /// Whether it is made of letters and words alone, so that a language needs no rule for syllables.
    pub const fn spares_syllables(self) -> bool {
        matches!(
            self,
            Self::ColemanLiau | Self::Ari | Self::GutierrezDePolini | Self::Lix | Self::Gulpease | Self::NguyenHenkin
        )
    }

    /// Whether a higher value is an easier text.
    pub const fn higher_is_easier(self) -> bool {
        matches!(
            self,
            Self::FleschEase
                | Self::FernandezHuerta
                | Self::Szigriszt
                | Self::GutierrezDePolini
                | Self::KandelMoles
                | Self::Amstad
                | Self::Gulpease
                | Self::MartinsFlesch
                | Self::ObornevaEase
                | Self::SolovyevEase
        )
    }

    /// Its name in sentences.
    pub const fn name(self) -> &'static str {
        match self {
            Self::FleschEase => "Flesch Reading Ease",
            Self::FleschKincaid => "Flesch-Kincaid grade",
            Self::Smog => "SMOG grade",
            Self::Fog => "Gunning Fog, every word of three syllables counted",
            Self::ColemanLiau => "Coleman-Liau",
            Self::Ari => "ARI",
            Self::FernandezHuerta => "Fernández Huerta",
            Self::Szigriszt => "Szigriszt-Pazos (INFLESZ)",
            Self::GutierrezDePolini => "Gutiérrez de Polini",
            Self::KandelMoles => "Kandel-Moles",
            Self::Amstad => "Amstad",
            Self::WienerFirst => "Wiener Sachtextformel 1",
            Self::WienerSecond => "Wiener Sachtextformel 2",
            Self::WienerThird => "Wiener Sachtextformel 3",
            Self::WienerFourth => "Wiener Sachtextformel 4",
            Self::Lix => "LIX",
            Self::Gulpease => "Gulpease",
            Self::MartinsFlesch => "Flesch for Portuguese (Martins)",
            Self::ObornevaEase => "Oborneva, ease",
            Self::ObornevaGrade => "Oborneva, grade",
            Self::SolovyevEase => "Solovyev, ease",
            Self::SolovyevGrade => "Solovyev, grade",
            Self::FogPolish => "Fog for Polish, words of four syllables",
            Self::PisarekLinear => "Pisarek, linear",
            Self::PisarekRoot => "Pisarek, not linear",
            Self::NguyenHenkin => "Nguyen-Henkin",
        }
    }

    /// Who published it. None of these works was read again for this program; the coefficients were held against
    /// other people's code where there is any, and where there is none the text says "from memory".
    pub const fn source(self) -> &'static str {
        match self {
            Self::FleschEase => "Flesch 1948, Journal of Applied Psychology 32",
            Self::FleschKincaid => "Kincaid, Fishburne, Rogers, Chissom 1975, United States Navy report",
            Self::Smog => "McLaughlin 1969, Journal of Reading 12",
            Self::Fog => "Gunning 1952",
            Self::ColemanLiau => "Coleman, Liau 1975",
            Self::Ari => "Smith, Senter 1967",
            Self::FernandezHuerta => "Fernández Huerta 1959, with F read as words in a sentence",
            Self::Szigriszt => "Szigriszt Pazos 1993",
            Self::GutierrezDePolini => "Gutiérrez de Polini 1972",
            Self::KandelMoles => "Kandel, Moles 1958",
            Self::Amstad => "Amstad 1978",
            Self::WienerFirst | Self::WienerSecond | Self::WienerThird | Self::WienerFourth => {
                "Bamberger, Vanecek 1984"
            }
            Self::Lix => "Björnsson 1968",
            Self::Gulpease => "GULP group 1988",
            Self::MartinsFlesch => "Martins, Ghiraldelo, Nunes, Oliveira 1996",
            Self::ObornevaEase | Self::ObornevaGrade => "Oborneva 2006; said to read about four classes high",
            Self::SolovyevEase | Self::SolovyevGrade => "Solovyev, Ivanov, Solnyshkina 2018",
            Self::FogPolish => "Gunning 1952, with words of four syllables for Polish",
            Self::PisarekLinear | Self::PisarekRoot => "Pisarek 1969, coefficients from memory, words as they stand",
            Self::NguyenHenkin => "Nguyen, Henkin 1982, coefficients from memory",
        }
    }
}

/// Counts of one sheet stay far below what a double holds exactly.
#[allow(clippy::cast_precision_loss, reason = "a sheet has thousands of words, not 2^53")]
pub(super) const fn number(count: usize) -> f64 {
    count as f64
}
