### A sheet in two languages beside each other. Only clinicians read this line.

beside-note = For the therapist to point at. The person keeps their own sheet.
