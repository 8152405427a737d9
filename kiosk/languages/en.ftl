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
say-yes = yes
say-no = no
say-repeat = repeat / say again
say-back = go back
say-problem = problem
say-pause = pause
say-continue = continue
say-hand-over = hand over
say-out-of-service = out of service
say-end = end the session
say-good = good
say-replaced = replaced
say-none-left = none left
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
refused-look-first = Look at the part first. Say good, replaced, or none left.
refused-reason-first = Say first what is wrong.
refused-no-such-reason = That reason is not known here.
refused-must-stop = The machine cannot go on. Take it out of service.
refused-no-way-in = There is no safe way to go on from here. End the session.
refused-confirm-this-first = Confirm this first.
refused-first-step = This is the first step.
refused-same-person = That must be another person.
