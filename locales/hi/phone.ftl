### The guide as a page for a telephone: what only this page says.

phone-contents = इस पन्ने पर
