### The guide as a page for a telephone: what only this page says.

phone-contents = На этой странице
