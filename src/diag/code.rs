//! The stable names of faults: `stage/what-is-wrong`. Scripts may rely on them.

/// The name of a kind of fault.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub struct Code(&'static str);

impl Code {
    pub const fn name(self) -> &'static str {
        self.0
    }
}

macro_rules! codes {
    ($($name:ident = $text:literal;)*) => {
        impl Code {
            $(pub const $name: Self = Self($text);)*
            /// Every code there is.
            pub const ALL: &'static [Self] = &[$(Self::$name),*];
        }
    };
}

codes! {
    FILE_UNREADABLE = "file/unreadable";
    FILE_NOT_UTF8 = "file/not-utf-8";
    YAML_EMPTY = "yaml/empty";
    YAML_TOO_LARGE = "yaml/too-large";
    YAML_NOT_TEXT = "yaml/not-text";
    YAML_BROKEN = "yaml/broken";
    YAML_DUPLICATE_KEY = "yaml/duplicate-key";
    YAML_TWO_DOCUMENTS = "yaml/two-documents";
    FIELD_UNKNOWN = "field/unknown";
    FIELD_MISSING = "field/missing";
    FIELD_SHAPE = "field/wrong-shape";
    FIELD_VALUE = "field/wrong-value";
    ID_UNKNOWN = "id/unknown";
    CASE_ORDER = "case/dates-out-of-order";
    CASE_REPEATED = "case/said-twice";
    CASE_FINDING = "case/impossible-finding";
    CASE_ANGLE = "case/angle-not-adjustable";
    CASE_FINGER = "case/finger";
    CASE_PROTOCOL = "case/protocol";
    CASE_CONTRADICTION = "case/conditions-contradict";
    CASE_OVERRIDE = "case/override";
    CLINIC_LOGO = "clinic/logo";
    CLINIC_SECTION = "clinic/section";
    CLINIC_LANGUAGE = "clinic/language";
    SAFETY_OVERRIDE = "plan/safety-override";
    PLAN_UNREACHABLE = "plan/phase-unreachable";
    PLAN_INVARIANT = "plan/invariant";
    DOES_NOT_FIT = "checks/does-not-fit";
    UNSAFE = "checks/unsafe";
    NOT_CONFIRMED = "content/not-confirmed";
    READ_TOO_HARD = "read/too-hard";
    CHOOSE_ASK = "choose/question";
    BOOKLET_ITEM = "booklet/item";
    BATCH_LIST = "batch/list";
    BATCH_MAPPING = "batch/mapping";
    BATCH_CELL = "batch/cell";
    BATCH_ID = "batch/id";
    BATCH_BUSY = "batch/busy";
    BATCH_REPORT = "batch/report";
    SHELF_FILE = "shelf/file";
    SHELF_CYCLE = "shelf/cycle";
    SHELF_CHANGED = "shelf/changed-by-hand";
    SHELF_STATE = "shelf/state";
    SHELF_STALE = "shelf/not-current";
    SHELF_BUSY = "shelf/busy";
    DRAW_NO_LOOK = "draw/no-look";
    DRAW_IMPOSSIBLE = "draw/impossible";
    DRAW_FILE_TYPE = "draw/file-type";
    CONTENT_NO_BASIS = "content/no-basis";
    CONTENT_RULE = "content/rule";
    CONTENT_CONTRADICTION = "content/contradiction";
    CONTENT_UNUSED = "content/unused";
    WORDS_MISSING = "words/missing-message";
    WORDS_SURPLUS = "words/surplus-message";
    WORDS_BROKEN = "words/broken-message";
    WORDS_STATE = "words/state";
    WORDS_NOT_SIGNED_OFF = "words/not-signed-off";
    WORDS_FIGURE = "words/figure-in-sentence";
    WORDS_LONG = "words/too-long";
    WORDS_LETTERS = "words/letters";
    WORDS_CHOICE_LOST = "words/choice-lost";
    WORDS_NOT_LOST = "words/not-lost";
    WORDS_TERM = "words/term";
    WORDS_HARD = "words/hard-word";
    WORDS_TEMPLATE = "words/template";
    EXCHANGE_BROKEN = "exchange/broken";
    EXCHANGE_REFUSED = "exchange/refused";
    TYPESET_GLYPH = "typeset/no-glyph";
    TYPESET_FAILED = "typeset/failed";
    OUTPUT_BESIDE = "output/beside";
    NEW_STOPPED = "new/stopped";
    NEW_ANSWER = "new/answer";
    OUTPUT_SAME_NAME = "output/same-name";
    OUTPUT_NOTHING = "output/nothing-on-it";
    OUTPUT_UNWRITABLE = "output/unwritable";
}
