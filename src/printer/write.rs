//! Objects as bytes, their places, and the metadata (ISO 32000-1).

use std::io::{Error, Result, Write};

/// Where objects are written, and where each stands.
pub struct Sink<W: Write> {
    out: W,
    bytes: u64,
    /// By number; 0 for one that was never written.
    places: Vec<u64>,
}

impl<W: Write> Sink<W> {
    /// Begins a file whose objects below `first` have fixed numbers.
    pub fn new(out: W, first: u32) -> Result<Self> {
        let mut sink = Self { out, bytes: 0, places: vec![0; first as usize] };
        // Four bytes beyond ASCII tell programs that this is no text (ISO 19005-2, 6.1.2).
        sink.put(b"%PDF-1.7\n%\xE2\xE3\xCF\xD3\n")?;
        Ok(sink)
    }

    pub fn bytes(&self) -> u64 {
        self.bytes
    }

    /// The number that the next object gets.
    pub fn next(&self) -> u32 {
        u32::try_from(self.places.len()).unwrap_or(u32::MAX)
    }

    pub fn reserve(&mut self) -> u32 {
        let id = self.next();
        self.places.push(0);
        id
    }

    /// Gives back the number that was reserved last.
    pub fn release(&mut self, id: u32) {
        if id + 1 == self.next() {
            self.places.pop();
        }
    }

    fn put(&mut self, bytes: &[u8]) -> Result<()> {
        self.out.write_all(bytes)?;
        self.bytes += bytes.len() as u64;
        Ok(())
    }

    pub fn object(&mut self, id: u32, body: &[u8]) -> Result<()> {
        self.begin(id)?;
        self.put(body)?;
        self.put(b"\nendobj\n")
    }

    /// `dict` is the entries of the dictionary besides the length.
    pub fn stream(&mut self, id: u32, dict: &str, data: &[u8]) -> Result<()> {
        self.begin(id)?;
        self.put(format!("<<{dict}/Length {}>>\nstream\n", data.len()).as_bytes())?;
        self.put(data)?;
        self.put(b"\nendstream\nendobj\n")
    }

    pub fn stream_of(&mut self, id: u32, dict: &[u8], data: &[u8]) -> Result<()> {
        self.begin(id)?;
        self.put(dict)?;
        self.put(b"\nstream\n")?;
        self.put(data)?;
        self.put(b"\nendstream\nendobj\n")
    }

    fn begin(&mut self, id: u32) -> Result<()> {
        let at = self.bytes;
        match self.places.get_mut(id as usize) {
            Some(place) => *place = at,
            None => return Err(Error::other("an object without a number")),
        }
        self.put(format!("{id} 0 obj\n").as_bytes())
    }

    /// A leaf of a number tree.
    pub fn number_leaf(&mut self, entries: &[(i64, Vec<u8>)]) -> Result<u32> {
        let id = self.reserve();
        let limits = entries.first().zip(entries.last());
        let mut body = b"<<".to_vec();
        if let Some(((first, _), (last, _))) = limits {
            body.extend(format!("/Limits[{first} {last}]").bytes());
        }
        body.extend(b"/Nums[");
        for (key, value) in entries {
            body.extend(format!("{key} ").bytes());
            body.extend(value);
            body.push(b' ');
        }
        body.extend(b"]>>");
        self.object(id, &body)?;
        Ok(id)
    }

    /// A leaf of a name tree; none where there is no name.
    pub fn name_leaf(&mut self, entries: &[(Vec<u8>, Vec<u8>)]) -> Result<Option<u32>> {
        let Some(((first, _), (last, _))) = entries.first().zip(entries.last()) else { return Ok(None) };
        let id = self.reserve();
        let mut body = b"<</Limits[".to_vec();
        string(first, &mut body);
        string(last, &mut body);
        body.extend(b"]/Names[");
        for (key, value) in entries {
            string(key, &mut body);
            body.extend(value);
            body.push(b' ');
        }
        body.extend(b"]>>");
        self.object(id, &body)?;
        Ok(Some(id))
    }

    /// The places of all objects, and the end.
    pub fn finish(mut self, hash: &str, info: u32) -> Result<W> {
        let at = self.bytes;
        let places = std::mem::take(&mut self.places);
        self.put(format!("xref\n0 {}\n0000000000 65535 f\r\n", places.len()).as_bytes())?;
        for place in &places[1..] {
            if *place == 0 {
                return Err(Error::other("an object that others lead to is missing"));
            }
            self.put(format!("{place:010} 00000 n\r\n").as_bytes())?;
        }
        let end = format!(
            "trailer\n<</Size {}/Root 1 0 R/Info {info} 0 R/ID[<{hash}><{hash}>]>>\nstartxref\n{at}\n%%EOF\n",
            places.len()
        );
        self.put(end.as_bytes())?;
        self.out.flush()?;
        Ok(self.out)
    }
}

/// A name (7.3.5).
pub fn name(bytes: &[u8], out: &mut Vec<u8>) {
    out.push(b'/');
    for &byte in bytes {
        if byte.is_ascii_alphanumeric() || matches!(byte, b'-' | b'_' | b'.' | b'+' | b'*' | b':') {
            out.push(byte);
        } else {
            out.extend(format!("#{byte:02X}").bytes());
        }
    }
}

/// A string of bytes (7.3.4).
pub fn string(bytes: &[u8], out: &mut Vec<u8>) {
    if bytes.iter().all(|byte| (b' '..=b'~').contains(byte)) {
        out.push(b'(');
        for &byte in bytes {
            if matches!(byte, b'(' | b')' | b'\\') {
                out.push(b'\\');
            }
            out.push(byte);
        }
        out.push(b')');
    } else {
        out.push(b'<');
        out.extend(bytes.iter().flat_map(|byte| format!("{byte:02X}").into_bytes()));
        out.push(b'>');
    }
}

/// A text string (7.9.2.2).
pub fn text_string(text: &str, out: &mut Vec<u8>) {
    if text.is_ascii() {
        string(text.as_bytes(), out);
    } else {
        let bytes: Vec<u8> = [0xFEFF].into_iter().chain(text.encode_utf16()).flat_map(u16::to_be_bytes).collect();
        string(&bytes, out);
    }
}

/// What the metadata says.
pub struct Facts<'f> {
    pub title: &'f str,
    /// Year, month and day.
    pub day: Option<&'f str>,
    pub languages: &'f [&'f str],
    pub pages: usize,
    pub archived: bool,
    pub accessible: bool,
}

/// XMP (ISO 16684-1). PDF/A wants the extension described that PDF/UA brings (ISO 19005-2, 6.6.2.3).
pub fn metadata(facts: &Facts<'_>) -> String {
    let mut inside = format!(
        "<dc:title><rdf:Alt><rdf:li xml:lang=\"x-default\">{}</rdf:li></rdf:Alt></dc:title>",
        escaped(facts.title)
    );
    inside.push_str("<dc:format>application/pdf</dc:format><xmp:CreatorTool>Palmleaf</xmp:CreatorTool>");
    if !facts.languages.is_empty() {
        let list: String = facts.languages.iter().map(|tag| format!("<rdf:li>{}</rdf:li>", escaped(tag))).collect();
        inside.push_str(&format!("<dc:language><rdf:Bag>{list}</rdf:Bag></dc:language>"));
    }
    if let Some(day) = facts.day.filter(|day| day.len() == 8) {
        let day = format!("{}-{}-{}T00:00:00Z", &day[..4], &day[4..6], &day[6..]);
        inside.push_str(&format!("<xmp:CreateDate>{day}</xmp:CreateDate><xmp:ModifyDate>{day}</xmp:ModifyDate>"));
    }
    if facts.accessible {
        inside.push_str("<pdfuaid:part>1</pdfuaid:part>");
    }
    if facts.archived {
        inside.push_str("<pdfaid:part>2</pdfaid:part><pdfaid:conformance>A</pdfaid:conformance>");
        if facts.accessible {
            inside.push_str("<pdfaExtension:schemas><rdf:Bag><rdf:li rdf:parseType=\"Resource\"><pdfaSchema:schema>PDF/UA Identification schema</pdfaSchema:schema><pdfaSchema:namespaceURI>http://www.aiim.org/pdfua/ns/id/</pdfaSchema:namespaceURI><pdfaSchema:prefix>pdfuaid</pdfaSchema:prefix><pdfaSchema:property><rdf:Seq><rdf:li rdf:parseType=\"Resource\"><pdfaProperty:category>internal</pdfaProperty:category><pdfaProperty:description>Part Number of ISO 14289 (PDF/UA)</pdfaProperty:description><pdfaProperty:name>part</pdfaProperty:name><pdfaProperty:valueType>Integer</pdfaProperty:valueType></rdf:li></rdf:Seq></pdfaSchema:property></rdf:li></rdf:Bag></pdfaExtension:schemas>");
        }
    }
    format!(
        "<?xpacket begin=\"\u{FEFF}\" id=\"W5M0MpCehiHzreSzNTczkc9d\"?><x:xmpmeta xmlns:x=\"adobe:ns:meta/\"><rdf:RDF xmlns:rdf=\"http://www.w3.org/1999/02/22-rdf-syntax-ns#\"><rdf:Description rdf:about=\"\" xmlns:dc=\"http://purl.org/dc/elements/1.1/\" xmlns:xmp=\"http://ns.adobe.com/xap/1.0/\" xmlns:pdfaid=\"http://www.aiim.org/pdfa/ns/id/\" xmlns:pdfuaid=\"http://www.aiim.org/pdfua/ns/id/\" xmlns:pdfaExtension=\"http://www.aiim.org/pdfa/ns/extension/\" xmlns:pdfaSchema=\"http://www.aiim.org/pdfa/ns/schema#\" xmlns:pdfaProperty=\"http://www.aiim.org/pdfa/ns/property#\" xmlns:xmpTPg=\"http://ns.adobe.com/xap/1.0/t/pg/\">{inside}<xmpTPg:NPages>{}</xmpTPg:NPages></rdf:Description></rdf:RDF></x:xmpmeta><?xpacket end=\"r\"?>",
        facts.pages
    )
}

fn escaped(text: &str) -> String {
    text.replace('&', "&amp;").replace('<', "&lt;").replace('>', "&gt;")
}
