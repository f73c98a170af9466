### A sheet in two languages beside each other. Only clinicians read this line.

beside-note = For the therapist, to point at while talking it through. The person keeps the sheet in their own language.
