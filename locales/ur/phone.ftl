### The guide as a page for a telephone: what only this page says.

# Stands over the list of sections.
phone-contents = اس صفحے پر
