### Reminders for a calendar.

reminder-change = { $hand ->
    [left] बायाँ: आज से नए समय।
    [right] दायाँ: आज से नए समय।
    [both] बायाँ और दायाँ: आज से नए समय।
   *[only] आज से नए समय।
}
reminder-visit = आपकी मुलाक़ात।
reminder-off = { $hand ->
    [left] बायाँ: उतारने का समय।
    [right] दायाँ: उतारने का समय।
    [both] दोनों उतारने का समय।
   *[only] उतारने का समय।
}
reminder-skin = { $hand ->
    [left] बायाँ: त्वचा देखें।
    [right] दायाँ: त्वचा देखें।
    [both] बायाँ और दायाँ: त्वचा देखें।
   *[only] त्वचा देखें।
}
reminder-on = { $hand ->
    [left] बायाँ: पहनने का समय।
    [right] दायाँ: पहनने का समय।
    [both] दोनों पहनने का समय।
   *[only] पहनने का समय।
}
reminder-exercise = { $hand ->
    [left] बायाँ: कसरत का समय।
    [right] दायाँ: कसरत का समय।
    [both] बायाँ और दायाँ: कसरत का समय।
   *[only] कसरत का समय।
}

reminder-change-sheet = नए समय आपके पन्ने पर हैं।
reminder-checks = { $checks ->
    [one] दिन में एक बार त्वचा देखें।
   *[other] दिन में { $checks } बार त्वचा देखें।
} कहाँ देखना है और क्या ठीक नहीं है, यह आपके पन्ने पर है।
reminder-skin-again = कोई दाग ज़्यादा देर रहे, तो वही दिन दोहराएँ, चाहे आगे के रिमाइंडर कुछ भी कहें।
reminder-wear = { $hand ->
    [left] बायाँ: { $length } पहनें।
    [right] दायाँ: { $length } पहनें।
   *[only] { $length } पहनें।
}
reminder-exercise-sheet = कैसे करना है, यह आपके पन्ने पर है।
reminder-back-on = { $hand ->
    [left] बायाँ: पूरा होने पर फिर पहनें।
    [right] दायाँ: पूरा होने पर फिर पहनें।
    [both] पूरा होने पर दोनों फिर पहनें।
   *[only] पूरा होने पर फिर पहनें।
}
reminder-times = यह समय सिर्फ़ मिसाल है। अपनी सुविधा का समय चुनें।
reminder-caution = आपके थेरेपिस्ट या सर्जन कुछ और कहें, तो वही करें।
reminder-call = आपका क्लिनिक: { $telephone }
reminder-call-hours = आपका क्लिनिक: { $telephone } ({ $hours })

reminder-about = { $where }: { $orthosis }।
reminder-dose = { $exercise }: { $count ->
    [one] { $count } बार
   *[other] { $count } बार
}। { $place }।
reminder-person = { $name } के लिए।
