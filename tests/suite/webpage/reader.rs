//! Reads a page as a browser does.

use html5ever::tendril::TendrilSink as _;
use markup5ever_rcdom::{Handle, NodeData, RcDom};

/// An element with its attributes.
pub struct Element {
    pub name: String,
    pub parent: String,
    pub attributes: Vec<(String, String)>,
}

impl Element {
    pub fn get(&self, name: &str) -> Option<&str> {
        self.attributes.iter().find(|(own, _)| own == name).map(|(_, value)| value.as_str())
    }

    pub fn is(&self, name: &str, value: &str) -> bool {
        self.get(name) == Some(value)
    }
}

/// A page, in the order of its source.
pub struct Page {
    pub elements: Vec<Element>,
    /// What the standard calls parse errors.
    pub errors: Vec<String>,
    text: String,
}

impl Page {
    pub fn read(html: &str) -> Self {
        let dom = html5ever::parse_document(RcDom::default(), Default::default()).one(html);
        let errors = dom.errors.borrow().iter().map(ToString::to_string).collect();
        let mut page = Self { elements: Vec::new(), errors, text: String::new() };
        page.walk(&dom.document, "");
        page
    }

    fn walk(&mut self, node: &Handle, parent: &str) {
        let mut here = parent.to_owned();
        match &node.data {
            NodeData::Element { name, attrs, .. } => {
                here = name.local.to_string();
                let attributes = attrs
                    .borrow()
                    .iter()
                    .map(|attribute| (attribute.name.local.to_string(), attribute.value.to_string()))
                    .collect();
                self.elements.push(Element { name: here.clone(), parent: parent.to_owned(), attributes });
            }
            NodeData::Text { contents } if parent != "style" => self.text.push_str(&contents.borrow()),
            _ => {}
        }
        for child in node.children.borrow().iter() {
            self.walk(child, &here);
        }
    }

    pub fn all(&self, name: &str) -> impl Iterator<Item = &Element> {
        self.elements.iter().filter(move |one| one.name == name)
    }

    /// All that the page says, seen or heard, without white space.
    pub fn said(&self) -> String {
        let heard = self.elements.iter().filter_map(|one| one.get("aria-label").or(one.get("content")));
        let all: Vec<&str> = std::iter::once(self.text.as_str()).chain(heard).collect();
        squeezed(&all.join("\u{0}"))
    }
}

/// A text without its white space.
pub fn squeezed(text: &str) -> String {
    text.split_whitespace().collect()
}
