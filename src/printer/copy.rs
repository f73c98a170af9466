//! Objects of one file copied into another under new numbers.

use std::collections::{HashMap, VecDeque};
use std::io::{Error, Result, Write};

use hayro_syntax::object::{Dict, MaybeRef, Name, ObjRef, Object, Stream};
use hayro_syntax::xref::XRef;

use super::write::{Sink, name, string};

/// Streams shorter than this are not worth remembering.
const WORTH: usize = 512;
/// Deeper than any object of this program.
const DEPTH: usize = 32;

/// What a value stands for, where it has to change.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Role {
    Plain,
    /// A key of the tree of tags by page: numbers go on from file to file.
    ParentKey,
    /// The name of a tag or of a place: names of one file are those of one file.
    Named,
}

/// Copies what it is asked for, and everything that leads on from there.
pub struct Copier<'s, 'a, W: Write> {
    sink: &'s mut Sink<W>,
    streams: &'s mut HashMap<[u8; 16], u32>,
    xref: &'a XRef,
    numbers: HashMap<i32, u32>,
    waiting: VecDeque<(i32, u32)>,
    prefix: Vec<u8>,
    /// The first key of the tree of tags by page.
    pub base: i64,
}

impl<'s, 'a, W: Write> Copier<'s, 'a, W> {
    pub fn new(
        sink: &'s mut Sink<W>,
        streams: &'s mut HashMap<[u8; 16], u32>,
        xref: &'a XRef,
        prefix: Vec<u8>,
        base: i64,
    ) -> Self {
        Self { sink, streams, xref, numbers: HashMap::new(), waiting: VecDeque::new(), prefix, base }
    }

    /// An object that another one of the joined file stands for.
    pub fn stands_for(&mut self, old: ObjRef, id: u32) {
        self.numbers.insert(old.obj_number, id);
    }

    /// The new number of an object, which is copied when this file is finished.
    pub fn id(&mut self, old: ObjRef) -> Result<u32> {
        if let Some(id) = self.numbers.get(&old.obj_number) {
            return Ok(*id);
        }
        let id = match self.xref.get::<Object<'a>>(old.into()) {
            Some(Object::Stream(stream)) => self.shared(old, &stream)?,
            _ => {
                let id = self.sink.reserve();
                self.waiting.push_back((old.obj_number, id));
                id
            }
        };
        self.numbers.insert(old.obj_number, id);
        Ok(id)
    }

    /// A stream is written once, however many files hold it: what its dictionary leads to is the same then too, because
    /// it is compared as it will be written.
    fn shared(&mut self, old: ObjRef, stream: &Stream<'a>) -> Result<u32> {
        let data = stream.raw_data();
        let id = self.sink.reserve();
        // Its own number first: a dictionary may lead back to its stream.
        self.numbers.insert(old.obj_number, id);
        let leads_on = stream.dict().entries().any(|(_, value)| leads_on(&value, DEPTH));
        let mut dict = Vec::new();
        self.dictionary(stream.dict(), Role::Plain, Some(data.len()), &mut dict, DEPTH)?;
        if leads_on || data.len() < WORTH {
            self.sink.stream_of(id, &dict, &data)?;
            return Ok(id);
        }
        let mut hash = blake3::Hasher::new();
        hash.update(&dict).update(b"\n").update(&data);
        let mut key = [0; 16];
        key.copy_from_slice(&hash.finalize().as_bytes()[..16]);
        if let Some(known) = self.streams.get(&key) {
            self.sink.release(id);
            return Ok(*known);
        }
        self.sink.stream_of(id, &dict, &data)?;
        self.streams.insert(key, id);
        Ok(id)
    }

    /// A name of this file, told apart from those of others. The order of names stays.
    pub fn own(&self, name: &[u8]) -> Vec<u8> {
        [&self.prefix, name].concat()
    }

    pub fn value(&mut self, value: &MaybeRef<Object<'a>>, out: &mut Vec<u8>) -> Result<()> {
        self.any(value, Role::Plain, out, DEPTH)
    }

    pub fn written(&mut self, value: &MaybeRef<Object<'a>>) -> Result<Vec<u8>> {
        let mut out = Vec::new();
        self.value(value, &mut out)?;
        Ok(out)
    }

    /// The root of this file's tags, as a part of the joined file in its own language.
    pub fn part(&mut self, root: ObjRef, language: &str) -> Result<u32> {
        let id = self.sink.reserve();
        self.numbers.insert(root.obj_number, id);
        let dict =
            self.xref.get::<Dict<'a>>(root.into()).ok_or_else(|| Error::other("it lacks the root of its tags"))?;
        let mut body = b"<<".to_vec();
        for (key, value) in dict.entries() {
            match &*key {
                b"S" | b"Lang" => {}
                _ => self.entry(&key, &value, &dict, &mut body, DEPTH)?,
            }
        }
        body.extend(b"/S/Part");
        if !language.is_empty() {
            body.extend(b"/Lang");
            string(language.as_bytes(), &mut body);
        }
        body.extend(b">>");
        self.sink.object(id, &body)?;
        Ok(id)
    }

    /// The bookmarks of this file, as what stands below its own bookmark; closed.
    pub fn outline(&mut self, root: &Dict<'a>, out: &mut Vec<u8>) -> Result<()> {
        for key in ["First", "Last"] {
            if let Some(item) = root.get_ref(key) {
                out.extend(format!("/{key} {} 0 R", self.id(item)?).bytes());
            }
        }
        if let Some(count) = root.get::<i32>("Count") {
            out.extend(format!("/Count -{}", count.abs()).bytes());
        }
        Ok(())
    }

    /// Copies everything that is still to be copied.
    pub fn finish(mut self) -> Result<()> {
        while let Some((old, id)) = self.waiting.pop_front() {
            let object = self.xref.get::<Object<'a>>(ObjRef::new(old, 0).into());
            let mut body = Vec::new();
            match object {
                Some(object) => self.any(&MaybeRef::NotRef(object), Role::Plain, &mut body, DEPTH)?,
                None => body.extend(b"null"),
            }
            self.sink.object(id, &body)?;
        }
        Ok(())
    }

    fn any(&mut self, value: &MaybeRef<Object<'a>>, role: Role, out: &mut Vec<u8>, depth: usize) -> Result<()> {
        let Some(deeper) = depth.checked_sub(1) else { return Err(Error::other("it is nested beyond reason")) };
        match value {
            MaybeRef::Ref(old) => out.extend(format!("{} 0 R", self.id(*old)?).bytes()),
            MaybeRef::NotRef(Object::Null(_)) => out.extend(b"null"),
            MaybeRef::NotRef(Object::Boolean(value)) => out.extend(value.to_string().bytes()),
            MaybeRef::NotRef(Object::Number(number)) => match role {
                Role::ParentKey => out.extend((number.as_i64() + self.base).to_string().bytes()),
                _ => out.extend(number.as_f64().to_string().bytes()),
            },
            MaybeRef::NotRef(Object::String(text)) => match role {
                Role::Named => string(&self.own(text.as_bytes()), out),
                _ => string(text.as_bytes(), out),
            },
            MaybeRef::NotRef(Object::Name(text)) => name(text, out),
            MaybeRef::NotRef(Object::Array(list)) => {
                out.push(b'[');
                for (number, item) in list.raw_iter().enumerate() {
                    out.extend(if number > 0 { &b" "[..] } else { b"" });
                    self.any(&item, role, out, deeper)?;
                }
                out.push(b']');
            }
            MaybeRef::NotRef(Object::Dict(dict)) => self.dictionary(dict, Role::Plain, None, out, deeper)?,
            MaybeRef::NotRef(Object::Stream(_)) => return Err(Error::other("a stream stands inside of an object")),
        }
        Ok(())
    }

    fn dictionary(
        &mut self,
        dict: &Dict<'a>,
        _: Role,
        length: Option<usize>,
        out: &mut Vec<u8>,
        depth: usize,
    ) -> Result<()> {
        out.extend(b"<<");
        for (key, value) in dict.entries() {
            // A length may be an object by itself; here it is known.
            if length.is_some() && &*key == b"Length" {
                continue;
            }
            self.entry(&key, &value, dict, out, depth)?;
        }
        if let Some(length) = length {
            out.extend(format!("/Length {length}").bytes());
        }
        out.extend(b">>");
        Ok(())
    }

    fn entry(
        &mut self,
        key: &Name<'a>,
        value: &MaybeRef<Object<'a>>,
        of: &Dict<'a>,
        out: &mut Vec<u8>,
        depth: usize,
    ) -> Result<()> {
        name(key, out);
        let is_tag = of.contains_key("S") && of.contains_key("P");
        let role = match &**key {
            b"StructParent" | b"StructParents" => Role::ParentKey,
            b"ID" if is_tag => Role::Named,
            b"Headers" | b"Dest" => Role::Named,
            b"D" if of.contains_key("S") => Role::Named,
            _ => Role::Plain,
        };
        out.push(b' ');
        self.any(value, role, out, depth)
    }
}

/// Whether a value leads to another object.
fn leads_on(value: &MaybeRef<Object<'_>>, depth: usize) -> bool {
    let Some(deeper) = depth.checked_sub(1) else { return true };
    match value {
        MaybeRef::Ref(_) => true,
        MaybeRef::NotRef(Object::Array(list)) => list.raw_iter().any(|item| leads_on(&item, deeper)),
        MaybeRef::NotRef(Object::Dict(dict)) => dict.entries().any(|(_, value)| leads_on(&value, deeper)),
        MaybeRef::NotRef(_) => false,
    }
}
