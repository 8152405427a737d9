### The setup: what a site is asked once.

setup = Setup
setup-place = { $n } of { $all }
setup-back = go back
setup-stop = stop, go on later
setup-done = done
setup-take = take it
setup-take-off = take off
setup-go-on = go on
setup-resumed = You go on where it was left. Nothing was lost.
setup-left-aside = The site file was changed since. Answers that were not written yet are left aside.
setup-not-kept = The answer could not be written down ({ $why }). It is kept while this screen stays on.
setup-not-answered = not answered yet
setup-left = { $n ->
    [one] One question is left.
   *[other] { $n } questions are left.
}
setup-ask-overview = These are the answers. Press one to change it.
setup-write = it is right, write it
setup-written = The site is written.
setup-leave = to the board
setup-wrong = { $n ->
    [one] One thing must be mended first. Nothing was written.
   *[other] { $n } things must be mended first. Nothing was written.
}
setup-changed-meanwhile = Somebody else has changed site.toml meanwhile. Nothing was written over it. Stop here, and begin again from that file.
setup-checking = This shop's own kinds of machine are checked. It takes a moment.

## What each question is about.
setup-about-language = Language of the setup
setup-about-practice = Real or practice
setup-about-name = Name of the shop
setup-about-time-zone = Time zone
setup-about-opens = Opens
setup-about-closes = Closes
setup-about-closed-days = Closed days
setup-about-limits = Limits
setup-about-machines = Machines
setup-about-thermometer = Thermometer
setup-about-sink = Sink
setup-about-product = Sanitizer
setup-about-chlorine = Available chlorine
setup-about-packet = Packet
setup-about-strength = Strength
setup-about-rinse = Rinse
setup-about-languages = Languages of the crew
setup-about-people = People
setup-about-pin = PIN
setup-about-sound = Sound
setup-about-isolation = Isolation of power
setup-about-label-rinse = Rinse

## The questions, and what there is to know about them.
setup-ask-language = Which language do you want to answer in?
setup-note-language = The board begins in this language, too. Each worker has their own later.
setup-ask-practice = Is this a real shop, or is it for practice?
setup-real = a real shop
setup-real-is = What is confirmed is the record of real work.
setup-practice-is = Every session is marked as practice. It is no record of real work.
setup-ask-name = What is the shop called?
setup-ask-time-zone = In which time zone does the shop lie?
setup-note-time-zone = The right one shows the time that it is now.
setup-ask-city = Which city has the same time?
setup-note-city = Take the nearest one that shows the time that it is now.
setup-ask-city-letter = With which letter does the city begin?
setup-zone-now = { $time } now
setup-zone-america = America
setup-zone-europe = Europe
setup-zone-asia = Asia
setup-zone-africa = Africa
setup-zone-australia = Australia
setup-zone-pacific = Pacific
setup-zone-atlantic = Atlantic
setup-zone-indian = Indian Ocean
setup-ask-opens = When does the shop open?
setup-note-opens = Four digits, as 0930 for 9:30 in the morning.
setup-ask-closes = When does the shop close?
setup-note-closes = Four digits, as 2130 for 9:30 in the evening.
setup-no-time = { $text } is no time of day. Write four digits, as 0930 or 2130.
setup-ask-closed-days = On which days does the shop not open?
setup-note-closed-days = Press a day to change it. On a closed day nothing is due.
setup-is-closed = closed
setup-is-open = open
setup-add-day = a date in every year
setup-no-day-closed = open every day
setup-never-open = On one day of the week at least the shop must open.
setup-ask-month = In which month is the closed day?
setup-ask-day = Which day of { $month }?
setup-no-day = { $month } has no day { $text }.
setup-date = { $day } { $month }
setup-weekday = { $day ->
    [monday] Monday
    [tuesday] Tuesday
    [wednesday] Wednesday
    [thursday] Thursday
    [friday] Friday
    [saturday] Saturday
   *[sunday] Sunday
}
setup-month = { $month ->
    [m1] January
    [m2] February
    [m3] March
    [m4] April
    [m5] May
    [m6] June
    [m7] July
    [m8] August
    [m9] September
    [m10] October
    [m11] November
   *[m12] December
}

## Limits.
setup-ask-limits = By which limits are readings judged?
setup-note-limits = Ask the authority that inspects this shop. Local code comes first.
setup-limit-mix-temperature = mix temperature
setup-limit-sanitizer-strength = sanitizer strength
setup-limit-sanitizer-temperature = sanitizer temperature
setup-limit-contact-time = contact time
setup-limit-wash-temperature = wash water
setup-limit-hand-wash-time = hand wash
setup-limit-line = { $what }: { $bounds }
setup-limit-silent = says nothing of: { $names }
setup-limit-unwalkable = { $n } of { $all } procedures cannot be walked with it
setup-least = at least { $least }
setup-most = at most { $most }
setup-bounds = { $least } to { $most }

## Machines.
setup-ask-machines = Which machines are there?
setup-note-machines = Press one to change it, or add another one.
setup-add-machine = add a machine
setup-ask-kind = Which kind of machine is it?
setup-note-kind = Look how the mix comes down from the hopper. The kinds are invented; the machine's own manual comes first.
setup-kind-is = { $hoppers ->
    [one] one hopper
   *[other] { $hoppers } hoppers
}, { $parts } parts
setup-kind-own = this shop's own: { $kind }
setup-kind-spoilt = It cannot be used before it is mended; kiosk check tells all. { $why }
setup-kind-gone = { $who }: its kind of machine, { $kind }, is not here. Change its kind, or take it off.
setup-ask-machine-name = What is the machine called in the shop?
setup-note-machine-name = So that nobody takes it for another one, as by where it stands.
setup-ask-option = { $who }: { $option }
setup-ask-machine = { $who }: what is to be changed?
setup-change-name = name
setup-change-kind = kind of machine
setup-change-language = language
setup-change-role = role
setup-take-off-machine = Its sessions stay in the record.
setup-amounts = amounts and times
setup-ask-amounts = { $who }: are these amounts and times right?
setup-note-amounts = They are those of an invented kind. Compare each with the machine's manual and the labels, and press one to change it.
setup-amounts-right = they are right
setup-ask-amount = { $what }: how much?
setup-option-isolation-plug = plug
setup-option-isolation-plug-is = It has a plug. The worker pulls it, and keeps it in sight.
setup-option-isolation-lock = lock
setup-option-isolation-lock-is = It is wired in. The worker opens the disconnect, and locks it with their own lock.
setup-setting-hand-wash-time = washing hands
setup-setting-flush-volume = flushing water
setup-setting-cleaner-volume = cleaning solution
setup-setting-circulate-time = cleaner works
setup-setting-soak-volume = soaking water
setup-setting-soak-time = soaking parts
setup-setting-sanitizer-volume = sanitizing solution
setup-setting-contact-time = sanitizer works
setup-setting-prime-volume = mix for rinsing through
setup-setting-freeze-down-time = freezing down

## What is used in this place.
setup-ask-thermometer = What does the thermometer read in?
setup-option-thermometer-celsius = Celsius
setup-option-thermometer-celsius-is = Cold mix is about 4.
setup-option-thermometer-fahrenheit = Fahrenheit
setup-option-thermometer-fahrenheit-is = Cold mix is about 40.
setup-ask-sink = How many compartments has the sink?
setup-option-sink-three = three
setup-option-sink-three-is = Wash, rinse and sanitize each have their own.
setup-option-sink-two = two
setup-option-sink-two-is = Parts are rinsed under running water in the emptied wash sink.

## The sanitizer.
setup-ask-product = What is the sanitizer called on its label?
setup-note-product = The kiosk works out the dose of a chlorine powder or tablet in packets of one size. Take the product in your hand now: the next answers are read from its label.
setup-ask-chlorine = How much available chlorine, in percent?
setup-note-chlorine = Read it from the label. It may say: available chlorine. Do not guess, and do not take another product's figure.
setup-no-percent = { $text } is no percent. Write what the label says, above 0 and up to 100.
setup-ask-packet = How many grams does one packet weigh?
setup-note-packet = Read it from the label. For tablets it is the weight of one tablet.
setup-no-grams = { $text } grams cannot be right. Write above 0 and up to 1000.
setup-ask-strength = How strong must the solution be?
setup-note-strength = In parts per million. Read it from the label: the strength for food-contact surfaces without a rinse.
setup-strength-off = The chosen limits want { $bounds } ({ $clause }). Look at the label again.
setup-ask-dose = The worker will hear this. Does it agree with the label's directions?
setup-ask-no-dose = With these figures no dose can be worked out. Look at the label again.
setup-dose-right = it agrees with the label
setup-figures-again = enter the figures again
setup-ask-rinse = Does the label ask for a rinse after sanitizing?
setup-note-rinse = Read it from the label.
setup-option-label-rinse-no = no rinse
setup-option-label-rinse-no-is = Parts drip dry from the sanitizer.
setup-option-label-rinse-yes = rinse
setup-option-label-rinse-yes-is = Parts are rinsed with clean drinking water.

## The crew.
setup-ask-languages = Which languages does the crew speak?
setup-note-languages = Press a language to add it or to take it off.
setup-texts-checked = checked by a fluent speaker
setup-texts-drafted = drafted by machine, not yet checked by a fluent speaker
setup-by-voice = by voice and by touch
setup-by-touch = by touch: no speech model is here
setup-no-language = Choose one language at least.
setup-language-spoken = Somebody on the list speaks it. Change that person first.
setup-ask-people = Who works at the machines?
setup-note-people = Press a name to change it, or add somebody. A supervisor looks at the records, and stands by trainees.
setup-add-person = add somebody
setup-ask-person-name = What is the name of this person?
setup-note-person-name = It stands on the screen and on reports. The record itself holds no names.
setup-ask-person-language = Which language does { $who } speak?
setup-ask-person-role = What may { $who } do?
setup-ask-person = { $who }: what is to be changed?
setup-role-worker = Walks every procedure alone.
setup-role-trainee = Walks the first times with a supervisor beside them.
setup-role-supervisor = Walks, looks at records, signs them, stands by trainees.
setup-take-off-person = Their sessions stay. What is kept beside the record is erased with: kiosk people erase { $person }
setup-no-supervisor = Nobody is a supervisor: nobody can look at the records or sign them. Add one, or press done again.
setup-trainee-alone = There is a trainee, and no supervisor to stand by. Add one, or give somebody that role.

## Keys.
setup-note-keyboard = Type it on a keyboard, or press a group of letters, then the letter. Other scripts need a keyboard.
setup-key-space = space
setup-key-capital = capital
setup-key-small = small
setup-key-others = other letters
setup-to-the-keys = to the keys
setup-nothing-typed = Nothing was typed yet.

## PIN and sound.
setup-ask-pin = { $who } needs a PIN to look at the records and to stand by others. Is { $who } here now?
setup-pin-now = yes, set it now
setup-pin-later = later
setup-pin-later-is = with: kiosk setup
setup-pin-is = set somebody's PIN
setup-sound-is = try loudspeaker and microphone
setup-sound-begin = The kiosk says a sentence. Then it listens to you. Stand where you work, and let the machines run.
setup-sound-start = try it
setup-sound-skip = leave it out
setup-sound-on = go on
setup-sound-again = try again
setup-sound-speaking = Listen.
setup-sound-sentence = This is the kiosk. I say each step, and I wait for you.
setup-sound-spoken = Did you hear the sentence well?
setup-sound-yes = yes
setup-sound-no = no
setup-sound-voice-good = The loudspeaker is loud enough.
setup-sound-voice-bad = Turn the loudspeaker up, or plug in another one. All that is said stands on the screen, too.
setup-sound-no-voice = Nothing can be said here ({ $why }). All that would be said stands on the screen.
setup-sound-listening = The microphone is tried.
setup-sound-heard = This is what came of it.
setup-sound-silent = Be silent for a moment.
setup-sound-say-yes = Now say: { $phrase }
setup-sound-understood = That was understood.
setup-sound-not-heard = That was not understood. What came in: “{ $text }”.
setup-sound-nothing = Nothing was heard.
setup-sound-ended = The microphone gave no more sound. Is it still plugged in?
setup-sound-no-ear = The kiosk has no ear for this language ({ $text }).
setup-sound-no-microphone = Nothing can be heard here ({ $why }). The walks go on by touch and by keys.
