### The kiosk's own words in English.

language-name = English

## Units, written out so that they are read and spoken alike.
unit-litres = { $n ->
    [one] { $n } litre
   *[other] { $n } litres
}
unit-millilitres = { $n ->
    [one] { $n } millilitre
   *[other] { $n } millilitres
}
unit-gallons = { $n ->
    [one] { $n } gallon
   *[other] { $n } gallons
}
unit-quarts = { $n ->
    [one] { $n } quart
   *[other] { $n } quarts
}
unit-fluid-ounces = { $n ->
    [one] { $n } fluid ounce
   *[other] { $n } fluid ounces
}
unit-grams = { $n ->
    [one] { $n } gram
   *[other] { $n } grams
}
unit-seconds = { $n ->
    [one] { $n } second
   *[other] { $n } seconds
}
unit-minutes = { $n ->
    [one] { $n } minute
   *[other] { $n } minutes
}
unit-hours = { $n ->
    [one] { $n } hour
   *[other] { $n } hours
}
unit-celsius = { $n } degrees Celsius
unit-fahrenheit = { $n } degrees Fahrenheit
unit-milligrams-per-litre = { $n } parts per million
unit-ph = pH { $n }
unit-none = { $n }

## Words to say. Ways of saying the same are parted by a slash; the first one is shown.
say-next = next / step complete / done
say-yes = yes / yes it is
say-no = no
say-repeat = repeat please / repeat
say-back = step back / go back
say-problem = something is wrong / problem
say-pause = take a break / pause
say-continue = continue / carry on
say-hand-over = someone else takes over / change worker
say-out-of-service = close the machine
say-end = stop here / finish session
say-good = the part is good / good condition
say-replaced = i replaced it / the part is replaced
say-none-left = no spare part / not in stock
say-language = other language
say-never-mind = never mind
say-number = number { $number }

## Signal words, as ANSI Z535 uses them.
signal-danger = Danger
signal-warning = Warning
signal-caution = Caution
signal-notice = Notice

## Prompts.
first-again = First, confirm this again.
say-phrase = When it is so, say: { $phrase }.
heard-phrase = I heard: { $phrase }. Yes or no?
heard-number = I heard { $number }. Yes or no?
is-that-so = Is that so? Yes or no?
good-or-replaced = Is it good, or have you replaced it?
try-again = Put it right, then say next to try again.
time-up = The time is up. Say next to go on.
witness-needed = A second person must confirm this with their PIN.
count-off = You counted { $number }. The parts list says { $expected }. Look for the missing part.
reading-off-least = { $number } is too low. It must be { $least } or more.
reading-off-most = { $number } is too high. It must be { $most } or less.
reading-off-least-most = { $number } is out of its limit. It must lie between { $least } and { $most }.
passes-ran-out = That was pass number { $number }, and it is still not right.
what-is-wrong = What is wrong?
then-continue = When that is done, say continue.
stop-here = The machine cannot go on. Take it out of service, or hand over.
held-pause = The session is paused. Say continue to go on. What may have changed will be asked again.
held-restart = The kiosk has restarted. Say continue. What may have changed will be asked again.
held-no-way-in = This procedure cannot go on safely from here. End the session and tell your supervisor.
end-asked = End this session now? It is not finished. Yes or no?
complete = The procedure is complete. Thank you.
aborted = The session is ended before its end. Tell the next person:
out-of-service = The machine is out of service. Tell the next person:

who-takes-over = Who takes over?
which-language = Which language?
not-written = The journal could not be written, so nothing was recorded and nothing has moved. Free the disk or call your supervisor, then try again.

## Why something was not done.
refused-not-now = That cannot be done now.
refused-hold-first = This is a safety hold. Say the whole phrase, or press its button and keep it pressed.
refused-time-left = Not yet. { $time } left.
refused-number-first = Give the number first.
refused-absurd = That number cannot be right. It must lie between { $least } and { $most }.
refused-whole-number = Give a whole number.
refused-look-first = Look at the part first. Say: the part is good, i replaced it, or no spare part.
refused-reason-first = Say first what is wrong.
refused-no-such-reason = That reason is not known here.
refused-must-stop = The machine cannot go on. Take it out of service.
refused-no-way-in = There is no safe way to go on from here. End the session.
refused-confirm-this-first = Confirm this first.
refused-first-step = This is the first step.
refused-same-person = That must be another person.

## Screens
standing-in-service = in service
standing-being-taken-apart = being taken apart
standing-apart-and-drying = apart and drying
standing-being-put-together = being put together
standing-held = held, something is wrong
standing-left-unfinished = left unfinished
standing-out-of-service = out of service

which-machine = Which machine?
which-procedure = What do you want to do?
who-walks = Who does it?
due = Due: { $procedure }
nothing-due = Nothing is due.
not-due = not the usual next
unfinished = Unfinished, press to go on: { $procedure }, { $worker }
no-procedure = No procedure can be walked on it.
day-or-night = light or dark
what-is-faulty = what is faulty
faults-found = { $n ->
    [one] One thing keeps a procedure from being walked.
   *[other] { $n } things keep procedures from being walked.
}
all-machines = all machines
more = more
practice = practice
place = step { $place } of { $last }
held = Held
drafted = text drafted by machine, not yet checked by a speaker

keep-pressed = keep it pressed
kept-too-short = too short: keep it pressed, or press it once more
kept-enough = now let go
type-number = type the number
enter-number = enter
rub-out = rub out
number-missing = Type the number first, then enter.
try-to-begin = try again

ear-hears = I am listening
ear-deaf = I am speaking, so I do not listen
ear-off = I cannot hear: { $why }
ear-opening = the ear is being opened
ear-none = this kiosk has no ear
voice-on = voice on
voice-off = I cannot speak: { $why }
voice-opening = the voice is being opened
voice-none = this kiosk has no voice
heard = heard “{ $text }”
heard-nothing = that was no word I know
heard-not-allowed = “{ $text }” is not one of the words for now
heard-too-short = that was too short
heard-doubtful = “{ $text }”? I am not sure, say it again

text-changed = The text of this procedure has changed since the session was begun. It cannot be walked on. End the session, then begin again.
cannot-take-up = This session cannot be gone on with. { $why }

recorded = What was recorded
took = It took { $time }.
confirmed-by-voice = { $n ->
    [one] { $n } confirmation by voice
   *[other] { $n } confirmations by voice
}
confirmed-by-touch = { $n ->
    [one] { $n } confirmation by touch
   *[other] { $n } confirmations by touch
}
confirmed-by-key = { $n ->
    [one] { $n } confirmation by key
   *[other] { $n } confirmations by key
}
readings = Readings
reading-taken = { $what }: { $number }
limit-least = limit: { $least } or more
limit-most = limit: { $most } or less
limit-least-most = limit: { $least } to { $most }
limit-none = no limit
deviations = Deviations
no-deviations = No deviations.
deviation-reading = { $what }: { $number } was out of its limit.
deviation-count = { $what }: { $number } counted, { $expected } on the parts list.
deviation-passes = Not right after { $number } passes: { $what }
deviation-verify = The try-out failed: { $what }
deviation-none-left = None left in stock: { $what }
deviation-problem = Problem: { $what }
left-unsafe = Tell the next person
journal-head = Journal { $hash }

## Wall sheet
sheet-kind = Wall sheet, for when the kiosk cannot be used
sheet-text = version { $version }, text { $digest }
sheet-practice = Practice: an invented shop. Do not work from this sheet.
sheet-drafted = This text was drafted by machine. A fluent speaker has not checked it yet.
sheet-no-lockout = This sheet is no substitute for lockout. It cannot stop the machine, and it cannot stop you.
sheet-in-order = Do every step in this order. Tick it when it is done.
sheet-stop-at-holds = At a safety hold, stop. Go on only when it is confirmed and tried out.
sheet-after-break = After a break or a hand-over, confirm again every safety hold that must still be true. Wash your hands again.
sheet-machine = Machine
sheet-name = Name
sheet-date = Date
sheet-begun = Begun
sheet-ended = Ended
sheet-signature = Signature
sheet-supervisor = Supervisor
sheet-second-person = Second person
sheet-done = Done
sheet-step = Step
sheet-write-down = Write down
safety-hold = SAFETY HOLD
sheet-say-aloud = When it is so, say aloud: { $phrase }.
sheet-try-out = Try it out
sheet-it-is-so = It is so
sheet-least = Must be { $least } or more.
sheet-most = Must be { $most } or less.
sheet-least-most = Must be { $least } to { $most }.
sheet-no-limit = No limit; write it down.
sheet-limit-source = Limit: { $source }
sheet-if-off = If it is not right
sheet-wait = Time: { $time } or more.
sheet-passes = Passes: at least { $least }, at most { $most }.
sheet-pass = Pass
sheet-parts-list = Parts list: { $part }, { $expected }.
sheet-counted = Counted
sheet-look-at = Look at: { $part }
sheet-good = good
sheet-replaced = replaced
sheet-none-left = none left in stock
sheet-problems = When something is wrong
sheet-stops-service = Take the machine out of service.
sheet-end-of-work = End of the work
sheet-left-at = Not finished? Left at step
sheet-told-to = Next person told

picture-established = comes into force
picture-relied-on = is relied on
picture-ended = ends
picture-by-hold = confirmed at a safety hold
picture-danger = danger while it lasts
picture-other = other condition
picture-not-in-force = relied on, but not in force
picture-page = page { $page } of { $pages }
