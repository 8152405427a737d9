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
say-next = next / next step
say-yes = yes / yeah / yes it is
say-no = no / nope
say-repeat = repeat please / repeat
say-back = step back / go back
say-problem = something is wrong / i have a problem / problem
say-pause = take a break / wait a moment
say-continue = keep going / continue
say-hand-over = someone else takes over / change person
say-out-of-service = close the machine
say-end = stop here / we are finished
say-good = the part is good / good condition
say-replaced = i replaced it / the part is replaced
say-none-left = no spare part / we have no more
say-language = change language
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
press-instead = I am not sure what you said. Press it on the screen instead.

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
some-faulty = Not everything can be walked on it.
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
time-left = about { $n } min left
time-left-spread = about { $n } min left ({ $least } to { $most })
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

## Working something out beside the step.
say-reckon = work it out
say-ask-again = last answer again
say-back-to-the-step = back to the step
which-reckoning = What do you want to work out?
reckoned = Everything is worked out.
not-one-of = { $given } is not one of the answers.
not-a-number = { $given } is not a number. Write digits, as 12.5.
not-believable = That cannot be: it must lie between { $least } and { $most }.
not-whole = { $given } must be a whole number.
cannot-work-out = This cannot be worked out.
say-other-reckonings = something else
say-hours = { $n ->
    [one] { $number } hour
   *[other] { $number } hours
}
say-minutes = { $n ->
    [one] { $number } minute
   *[other] { $number } minutes
}
say-days = { $n ->
    [one] { $number } day
   *[other] { $number } days
}
say-gallons = { $n ->
    [one] { $number } gallon
   *[other] { $number } gallons
}
say-quarts = { $n ->
    [one] { $number } quart
   *[other] { $number } quarts
}
say-tubes = { $n ->
    [one] { $number } tube
   *[other] { $number } tubes
}
say-colonies = { $n ->
    [one] { $number } colony
   *[other] { $number } colonies
}
say-results = { $n ->
    [one] { $number } result
   *[other] { $number } results
}
say-ph = { $n ->
   *[other] ph { $number }
}
# A day as it is said: weekday, day, month, year.
day-said = { $weekday ->
    [mon] Monday
    [tue] Tuesday
    [wed] Wednesday
    [thu] Thursday
    [fri] Friday
    [sat] Saturday
   *[sun] Sunday
} { $day } { $month ->
    [jan] January
    [feb] February
    [mar] March
    [apr] April
    [may] May
    [jun] June
    [jul] July
    [aug] August
    [sep] September
    [oct] October
    [nov] November
   *[dec] December
} { $year }

# Why it cannot be worked out.
cannot-label-bad-percent = { $percent } percent cannot be; write the label's percent, above 0 and up to 100.
cannot-label-share-not-percent = { $percent } percent is too little for a solid product; if the label's share is { $percent }, write { $mend } percent.
cannot-label-bad-gravity = A specific gravity of { $gravity } cannot be; write the label's, as 1.08.
cannot-label-too-strong = No chlorine solution has { $percent } trade percent; write grams of available chlorine per litre, divided by 10.
cannot-label-bad-dilution = A label's dilution needs more than nothing of product and of strength.
cannot-label-bad-packet = The grams in a packet must be more than nothing.
cannot-dose-bad-strength = A strength of { $wanted } cannot be made; ask for more than nothing.
cannot-dose-bad-water = { $water } of water cannot be filled in; write more than nothing.
cannot-dose-bad-count = { $count } measures of it cannot be measured out; write more than nothing.
cannot-dose-wanted-over-cap = { $wanted } is above the cap of { $cap }; ask for { $cap } or less.
cannot-dose-over-cap = { $count } measures of it in { $water } give { $strength }, above the cap of { $cap }; use at least { $least_water } of water, a smaller measure or smaller packets.
cannot-dose-too-weak = The product has { $strongest } itself and cannot make { $wanted }; use a stronger product.
cannot-dose-wrong-measure = This product cannot be measured in that; use another measure.
cannot-dose-over-full = { $count } measures of it are more than { $water }; use a smaller measure.
cannot-solution-bad-strength = A strength of { $strength } cannot be; read the strip again.
cannot-solution-bad-ph = A pH of { $ph } cannot be; it lies between 0 and 14, read the strip again.
cannot-solution-bad-hardness = A hardness of { $hardness } cannot be; test the water again.
cannot-solution-bad-temperature = { $temperature } cannot be the temperature of a solution; give it in Celsius or Fahrenheit and read again.
cannot-solution-other-label = The label is for another sanitizer than the solution; use the right label.
cannot-share-bad-ph = A pH of { $ph } cannot be; it lies between 0 and 14, read the strip again.
cannot-share-no-number = { $temperature } cannot be a temperature; read it again.
cannot-share-too-cold = { $temperature } is below { $least } degrees Celsius, where nothing is known of the balance.
cannot-share-too-warm = { $temperature } is above { $most } degrees Celsius, where nothing is known of the balance; let it cool.
cannot-growth-outside-range = The model holds from { $least } to { $most } degrees Celsius, not at { $celsius }; use no model.
cannot-growth-not-finite = A value of { $value } is no number; give a measured one.
cannot-growth-negative = A value of { $value } is less than nothing; give it as zero or more.
cannot-growth-not-positive = A value of { $value } must be more than nothing.
cannot-growth-no-room = The most germs, 10^{ $most }, must be more than at the start, 10^{ $start }.
cannot-growth-absurd-count = 10^{ $value } germs cannot be counted; the exponent lies between -3 and 12.
cannot-growth-no-growth-there = The model has no growth at { $celsius }; convert only from a warmer test.
cannot-growth-gap = Nothing was read for { $hours }; a sum across it says nothing, so leave it out.
cannot-growth-too-few = A rate needs counts at two times or more; count again later.
cannot-log-no-readings = The log has no reading; take one and write it down.
cannot-log-bad-instant = The time { $at } is no number of seconds; write down when it was read.
cannot-log-bad-unit = “{ $unit }” is no unit of temperature; use °C or °F.
cannot-log-absurd = { $temperature } cannot be the temperature of mix; check the probe and read again.
cannot-log-bad-gap = The longest gap between readings, { $gap }, must be more than nothing.
cannot-log-ends-first = The time looked at ends ({ $until }) before it begins ({ $since }); swap the two.
cannot-log-before-start = The time looked at ({ $now }) lies before { $start }; check the clock.
cannot-log-no-points = No measuring point is named; name every one that must be hot.
cannot-log-empty-point = A measuring point has no reading; read it or mend its probe.
cannot-log-bad-time = A time of { $seconds } cannot be held; give it as zero or more.
cannot-log-bad-fat = { $percent } percent of fat cannot be; give a number from 0 to 100.
cannot-log-bad-z = A z of { $z } from { $reference } makes no sense; z lies between 1 and 50, the reference between -50 and 150.
cannot-log-bad-pairs = Two pairs with different times of more than nothing are needed.
cannot-log-gap = Nothing was read for { $seconds }, and no more than { $gap } may pass unread; give a part of the log without that gap.
cannot-date-unknown-zone = “{ $zone }” is no time zone known here; use a name such as Europe/Berlin, and see that the time zone data (tzdata) is installed.
cannot-date-has-zone = { $local } already bears a time zone; give the time as the wall clock showed it.
cannot-date-twice = { $local } came twice that night in { $zone }: { $first } and { $second }; say which.
cannot-date-skipped = { $local } never came in { $zone }: the clocks went forward; { $first } or { $second } is meant by it, so say which.
cannot-date-ends-first = { $end } lies before { $begin }; swap the two, or mend the wrong one.
cannot-date-bad-freeze = Frozen { $frozen } does not follow { $before }; mend the dates.
cannot-date-still-frozen = It was frozen again { $frozen } without being thawed; write down when.
cannot-date-frozen-unopened = It has times in the freezer but no day of opening; write it down.
cannot-date-absurd-year = { $day } cannot be a day on which mix is used; mend the year.
cannot-date-no-packages = No mix is on record; write down what is in the cooler.
cannot-date-bad-instant = { $at } is no time; give seconds since 1970.
cannot-plate-bad-dilution = Dilution { $dilution }: write 1:100 as 0.01, undiluted as 1.
cannot-plate-bad-volume = Volume { $volume }: write the millilitres put on the plate, above 0.
cannot-plate-bad-spread = Spread { $spread }: write the share of the plate, as 0.25.
cannot-plate-bad-colonies = { $colonies } colonies: write 0 or more.
cannot-plate-no-area = A plate with more than 100 colonies per square centimetre needs its area in square centimetres.
cannot-plate-no-plate = No plate: give at least one.
cannot-plate-no-count = A plate that was marked has no count.
cannot-tubes-bad-amount = { $amount } in a tube: write the grams of sample, above 0.
cannot-tubes-bad-tubes = { $tubes } tubes: write how many tubes got this amount, 1 or more.
cannot-tubes-bad-positive = { $positive } of { $tubes } tubes positive: write 0 to { $tubes }.
cannot-tubes-no-tubes = No tubes: give at least one dilution.
cannot-tubes-one-tube = One tube alone gives no number: give at least two tubes.
cannot-plan-no-sample = n = { $n }: a plan needs at least one sample.
cannot-plan-bad-c = c = { $c }: write 0 to n, here { $n }.
cannot-plan-bad-m = m = { $m }: write 0 or more.
cannot-plan-bad-top = M = { $top }: M must lie above m = { $m }; two classes have no M.
cannot-plan-other-number = { $given } samples for a plan of { $n }: give { $n } results of one lot.
cannot-result-number-missing = A result of this sort must have a number.
cannot-result-number-too-many = A result of this sort must have no number.
cannot-result-bad-number = { $value } is no count; write 0 or more.
cannot-result-no-result = “{ $text }” is no result; write it as 1200, < 10, > 1100 or spreaders.
cannot-limit-several-limits = { $title } has { $count } limits for { $test } in { $product }: keep one.
cannot-limit-no-limit = { $title } has no limit for { $test } in { $product }.
cannot-limit-other-unit = { $title } sets its limit per { $limit_per }, and this result is per { $per }.
cannot-limit-no-authority = No authority is called “{ $called }”; known are { $known }.
cannot-limit-no-plan = No sampling plan is called “{ $called }”; known are { $known }.

reckon-dose = Sanitizer: how much to put in
call-dose = how much to mix
ask-dose-unit = Will you give the water in litres, gallons or quarts?
ask-dose-water = How much water is it?
ask-dose-wanted = How strong shall it be, in parts per million?
pick-in-litres = in liters
pick-in-gallons = in gallons
pick-in-quarts = count in quarts
dose-put = Put { $count } packets into { $water } of water. That gives { $strength }.
dose-put-one = Put one packet into { $water } of water. That gives { $strength }.
dose-rounded = { $exact } packets would be exact. Whole packets make it { $gained } stronger.
dose-exact = That is exact, nothing was rounded.
dose-grams = By weight the exact dose is { $grams }.
dose-in-range = It is within { $least } to { $most }. Test it with a strip.
dose-below-range = That is too weak: it must lie between { $least } and { $most }.
dose-above-range = That is too strong: it must lie between { $least } and { $most }.
dose-no-range = This site's limits have no range for it. Follow the label.
dose-wanted-over-cap = { $wanted } is above the most allowed without a rinse, { $cap }. Ask for that or less.
dose-over-cap = Whole packets needed: { $count }. In { $water } they give { $strength }, above the most allowed, { $cap }. Use { $needed } of water or more.

reckon-strength = Sanitizer: is it strong enough
call-strength = strong enough
ask-strength-strip = What does the test strip read, in parts per million?
ask-strength-acidity = What is the pH of the solution?
ask-strength-temperature = How warm is the solution?
strength-passes = It is strong enough. Leave it on for { $time } or longer.
strength-passes-at-once = It is strong enough. No time is set for it.
strength-label-first = Where the product's label asks for more, do as the label says.
strength-any-ph = The pH was not measured: only what the code lists for every pH up to { $most } counted.
pick-not-measured = nobody measured it
strength-no-row = It does not pass: the code lists no such solution.
strength-over-cap = It is too strong to be used without a rinse.
strength-off-label = It does not pass: the product's label does not allow it.
strength-no-contact-time = It does not pass: nothing says how long it must stay on.
strength-no-table = The limits of this site, { $profile }, list no sanitizing solutions, so nothing can pass. Ask your supervisor.
strength-to-mend = To mend it:
strength-or = Or:
strength-test-again = Then test it again.
strength-ask = Ask your supervisor.
need-stronger = Make it { $value } or stronger.
need-weaker = Add water until it is { $value } or less.
need-warmer = Warm it to { $value } or more.
need-lower-ph = Bring its pH to { $value } or less.
need-softer-water = Use water with { $value } of hardness or less.
need-measure-strength = Measure the strength.
need-measure-ph = Measure the pH.
need-measure-ph-up-to = Measure the pH. It must be { $value } or less.
need-measure-temperature = Measure the temperature.
need-measure-hardness = Measure the hardness of the water.
need-read-label = Enter what the product's label says.

reckon-free-chlorine = Sanitizer: why the pH matters
call-free-chlorine = acid and chlorine
ask-free-chlorine-kind = Is it liquid bleach, or powder or tablets?
ask-free-chlorine-strip = What does the test strip read, in parts per million?
ask-free-chlorine-acidity = What is the pH of the solution?
ask-free-chlorine-temperature = How warm is the solution?
pick-bleach = liquid bleach
pick-powder = powder or tablets
free-chlorine-share = At pH { $ph }, { $percent } percent of the free chlorine is in the form that kills fast: { $acid } of { $free }.
free-chlorine-at-most = Powders bind part of their chlorine, so it is less than that.
free-chlorine-extrapolated = The water is warmer than the formula was made for.
free-chlorine-explains = This only explains why the pH is measured. Nothing passes or fails by it.

reckon-cold = Mix: was it cold all the time
call-cold = was it cold
ask-cold-hours = How many hours ago was the mix last measured and found cold? If nobody knows, answer 72 hours.
ask-cold-now = How warm is the mix now?
ask-cold-power = Was the power out since then?
ask-cold-plan = Is there a written procedure for keeping mix without cooling, and does the container bear its discard time?
ask-cold-watched = Was it measured every hour since then, and never warmer than 70 degrees Fahrenheit, 21 Celsius?
pick-stayed-on = power stayed on
pick-was-out = it was out
pick-not-known = nobody can tell
pick-plan-there = we have both
pick-plan-missing = something is missing
pick-watched = every single hour
pick-not-watched = not so often
cold-kept = The mix was cold at both readings, now { $now }, and the power stayed on. It may be served.
cold-unwatched = The mix is cold now, { $now }. But nobody measured it for { $time }: that time is unknown, not cold.
cold-watch-it = Do not serve it before the supervisor has decided. Measure every four hours from now on.
cold-left = It may still be served for { $left }. Then throw it away.
cold-clock-runs = The time runs on, even when the mix is cold again.
cold-throw-away = Do not serve this mix. Throw it away.
cold-unknown-is-warm = Time that nobody watched counts as warm.
cold-ground-no-procedure = There is no written procedure at hand.
cold-ground-start-not-cold = Nothing shows that it was cold at the start.
cold-ground-unmarked = Its container bears no discard time.
cold-ground-marked-too-late = Its discard time is later than the rule allows.
cold-ground-time-is-up = Its time without cooling is up.
cold-ground-too-warm = It was warmer than the rule allows at any time.
cold-ground-not-watched = Readings are missing, so nobody knows how warm it became.

reckon-growth = Mix: how fast germs grow
call-growth = growing germs
ask-growth-temperature = How warm is the mix?
ask-growth-hours = For how many hours?
growth-listeria = At { $temperature } for { $time }, listeria may become { $times } times as many. On the log scale that is { $log }.
growth-spoilers = Germs that spoil milk may become { $times } times as many. On the log scale that is { $log }.
growth-explains = This only explains why the rules are strict. Mix passes or fails by the rules, never by this.

reckon-use-by = Mix: its last day
call-use-by = the last day
ask-use-by-state = Is the bag open, or still sealed?
ask-use-by-opened = How many days ago was it opened? Today is zero.
ask-use-by-frozen = How many whole days was it in the freezer since then? The days it went in and came out do not count.
ask-use-by-printed = Is a use-by date of the maker printed on it?
ask-use-by-when = Is that date still to come, or already over? Today is still to come.
ask-use-by-date = How many days is that date away? Today is zero.
pick-opened = it is open
pick-sealed = still sealed
pick-nobody-wrote = open, but no date
pick-date-printed = there is a date
pick-no-date = nothing printed
pick-still-to-come = still to come
pick-already-over = already over
use-by-last-day = The last day is { $day }. Days left, with today: { $left }.
use-by-then-away = Throw it away when that day is over.
use-by-kept-cold = This holds only for mix kept at { $most } or colder.
use-by-throw-away = Do not use this bag. Throw it away.
use-by-frozen-too-long = It cannot have been frozen for { $frozen } whole days when it was opened { $opened } days ago. Give the days again.
bar-too-warm = It was kept too warm, or nobody knows how warm.
bar-undated = Nobody wrote down when it was opened, or until when it keeps.
bar-wrongly-dated = Its dates cannot be right.
bar-frozen = It is frozen. Thaw it first.
bar-days-are-up = It has been open for all its days.
bar-makers-date-passed = The maker's use-by date has passed.
bar-mark-passed = The last day on its label has passed.

reckon-pour-next = Mix: which bag to pour next
call-pour-next = which bag
ask-pour-next-state = Bag { $place }: is it open, or still sealed?
ask-pour-next-opened = Bag { $place }: how many days ago was it opened? Today is zero.
ask-pour-next-printed = Bag { $place }: is a use-by date of the maker printed on it?
ask-pour-next-when = Bag { $place }: is that date still to come, or already over? Today is still to come.
ask-pour-next-date = Bag { $place }: how many days is that date away? Today is zero.
ask-pour-next-another = Bag { $place } is noted. Is there another bag?
pick-another = one more
pick-no-more = that was all
pour-first = Pour bag { $bag } next. Its last day is { $day }.
pour-then = Then bag { $bag }. Its last day is { $day }.
pour-not = Do not use bag { $bag }.
pour-none = None of these bags may be poured.

reckon-heat-treatment = Heat treatment: may it dispense
call-heat-treatment = heat treatment
ask-heat-treatment-coldest = What was the coldest point of the mix while it was held hot?
ask-heat-treatment-minutes = How many minutes was it held there?
ask-heat-treatment-ended = How many hours ago did that end?
ask-heat-treatment-strip = How many days ago was the machine last taken apart, cleaned and sanitized?
heat-allowed = The machine may dispense. It locks in { $left } if nothing more is done.
heat-locked = Dispensing is locked out.
heat-only-this-pair = Only the listed pair counts: { $hot } at every point for { $time } without a break.
heat-lapse-no-heat = No heat cycle is on record.
heat-lapse-heat-failed = The heat cycle failed: { $coldest } for { $minutes } at the coldest point.
heat-lapse-heat-overdue = The last heat cycle ended more than a day ago. Run one now.
heat-lapse-no-strip = No full strip is on record.
heat-lapse-strip-overdue = The machine was not taken apart for more than { $days } days. Take it apart, clean and sanitize it.

reckon-plate-count = Laboratory: plate count
call-plate-count = count plates
ask-plate-count-rule = By which rule: FDA or ISO?
ask-plate-count-exponent = Plate { $place }: which tenfold dilution is on it? One in a hundred is number two, undiluted is number zero.
ask-plate-count-kind = Plate { $place }: could it be counted?
ask-plate-count-colonies = Plate { $place }: how many colonies are on it?
ask-plate-count-more = Plate { $place } is noted. Is there another plate?
pick-fda-rule = american rule
pick-iso-rule = the iso standard
pick-counted = i counted it
pick-too-full = too full to count
pick-overgrown = spreading growth
pick-spoiled-plate = a laboratory accident
pick-another-plate = one more plate
plate-exact = { $amount } colony-forming units per gram.
plate-estimated = { $amount } colony-forming units per gram, estimated.
plate-less-than = Less than { $amount } colony-forming units per gram.
plate-more-than = More than { $amount } colony-forming units per gram.
plate-spreaders = There is no count, for spreading growth covers too much of every plate. Plate the sample again.
plate-laboratory-accident = There is no count, for no plate could be used. Plate the sample again.
plate-why-out-of-range = Plates outside { $least } to { $most } colonies were left out.
plate-why-other-dilution = Plates beyond the first two dilutions in a row were left out.
plate-why-spreader = Plates with spreading growth over more than a quarter were left out.
plate-why-accident = Plates lost to an accident were left out.
plate-why-all-low = Every plate has fewer than { $least } colonies.
plate-why-no-colonies = No plate has a colony.
plate-why-all-high = Every plate has more than { $most } colonies.
plate-why-none-in-range = No plate has { $least } to { $most } colonies.
plate-why-no-number = The fullest plate could not be counted.
plate-why-present = There are colonies, but too few to estimate from.

reckon-mpn = Laboratory: most probable number
call-mpn = three tubes
ask-mpn-tenth = Of three tubes with a tenth of a gram, how many are positive?
ask-mpn-hundredth = Of three tubes with a hundredth of a gram, how many are positive?
ask-mpn-thousandth = Of three tubes with a thousandth of a gram, how many are positive?
mpn-exact = The most probable number is { $amount } per gram.
mpn-less-than = The most probable number is less than { $amount } per gram.
mpn-more-than = The most probable number is more than { $amount } per gram.
mpn-limits = With 95 percent confidence it lies between { $low } and { $high }.
mpn-limit-below = With 95 percent confidence it is { $low } or more.
mpn-improbable = These tubes are highly improbable. Suspect an error, and test again.

reckon-lot = Laboratory: samples of one lot
call-lot = samples of a lot
ask-lot-plan = Which sampling plan?
ask-lot-count = Sample { $place }: how many colony-forming units per gram?
ask-lot-found = Sample { $place }: was it found?
pick-eu-ice-cream-enterobacteriaceae = intestinal germs
pick-eu-listeria-shelf-life = listeria in the shop
pick-eu-listeria-at-producer = listeria before sale
pick-eu-ice-cream-salmonella = salmonella in ice cream
pick-found = it was found
pick-not-found = none in there
lot-satisfactory = The lot is satisfactory.
lot-acceptable = The lot is acceptable. Look at the hygiene.
lot-unsatisfactory = The lot is unsatisfactory. Call your supervisor.
lot-unknown = The samples leave it open. Test them again.
lot-above = Samples above { $limit }: { $above } of { $of }. At most { $may } may be.
lot-above-top = Samples above { $limit }: { $above }. None may be.
lot-presence = Found in { $found } of { $of } samples. None may be.
ask-lot-bound = Sample { $place }: the report says less than how many?

reckon-authority = Laboratory: what the authority does
call-authority = the authority
ask-authority-who = Whose limits?
ask-authority-test = Which test?
ask-authority-product = Of what was the sample?
ask-authority-results = How many last results are there, on separate days? Five at most.
ask-authority-result = Result { $place }, the oldest first: how many colony-forming units?
pick-usda = department of agriculture
pick-iowa = iowa
pick-maryland = maryland
pick-north-carolina = north carolina
pick-kansas = kansas
pick-connecticut = connecticut
pick-houston = houston
pick-california-frozen-yogurt = california
pick-grade-a-milk = the milk ordinance
pick-total-count = total count
pick-coliform = coliform germs
pick-enterobacteriaceae = intestinal germs
pick-listeria-monocytogenes = listeria
pick-salmonella = salmonella
pick-yeast = yeast
pick-mold = mold
pick-plain = plain ice cream
pick-bulky = fruit, nuts or chocolate
pick-sherbet = sherbet
pick-frozen-yogurt = frozen yogurt
pick-mix = mix before freezing
pick-milk = milk
authority-clear = Clear: { $over } of the last { $of } results are over the limit.
authority-notice = Notice: { $over } of the last { $of } results are over the limit. Sample again between 3 and 21 days after the notice.
authority-action = Action: { $over } of the last { $of } results are over the limit. The authority may stop the sale.
authority-each-clear = The last result is within the limit.
authority-each-action = Action: the last result is over the limit, and none may be.
authority-average-kept = The logarithmic average of the last four results is within the limit.
authority-average-over = Action: the logarithmic average of the last four results is over the limit.
authority-limit-g = The limit is { $limit } per gram.
authority-limit-ml = The limit is { $limit } per millilitre.
authority-cleared-by = Sample days in a row within the limit that clear it: { $days }.
authority-rule-not-stated = This authority states no rule for results in a row. It was judged by two of the last four and three of the last five.
ask-authority-bound = Result { $place }: the report says less than how many?
authority-unknown = Unknown: { $over } of the last { $of } results are surely over the limit, and others may be.
authority-each-unknown = Unknown: the last result may be over the limit.
authority-average-unknown = Unknown: the logarithmic average of the last four results may be over the limit.
authority-may-be-action = It may already be action.

reckon-trend = Laboratory: early warning
call-trend = early warning
ask-trend-test = Which test?
ask-trend-limit = What is the limit, in colony-forming units per gram?
ask-trend-results = How many results are there? Eight at least.
ask-trend-result = Result { $place }, the oldest first: how many colony-forming units?
trend-too-few-results = There are too few results for a trend.
trend-steady = The results are steady.
trend-shift = The moving average has passed its control limit.
trend-rise = The results rise with time.
trend-early = No result is over { $limit } yet: look at the cleaning of this barrel now.
trend-over = A result is over { $limit } already.
trend-no-chart = Too few different counts for a control chart.
trend-even-days = The results were taken as evenly spaced in time.
trend-needs-scipy = A trend needs the library scipy, which is not installed here. Install it with: pip install "brushdown[laboratory]".
ask-trend-bound = Result { $place }: the report says less than how many?
pick-below-detection = below detection
results-left-open = Results that may be over { $limit }, for the report only says less than a higher number: { $count }. Have them tested at a lower dilution.

## Numbers of the job
typed-nothing = Nothing was typed. Type a number.
typed-no-number = “{ $text }” is not a number. Type it in digits, as 38.5.
typed-fraction = “{ $text }” has a fraction or a raised digit in it. Type a decimal number, as 0.5.
typed-two-readings = “{ $text }” can be read as { $first } or as { $second }. Type { $first } or { $second }.
typed-mixed = “{ $text }” has more than one number in it. Work it out to one number with one unit.
typed-no-unit = “{ $text }” has no unit. Add one of: { $units }.
typed-unknown-unit = “{ $unit }” is no unit that is known here. Use one of: { $units }.
typed-ounce = “{ $unit }” is a weight, and a volume is wanted. Type fl oz for fluid ounces.
typed-negative = { $number } is below zero. Type a number from { $least } to { $most }.
typed-out-of-range = { $number } cannot be right. It must lie between { $least } and { $most }.
typed-no-time = “{ $text }” is no time of day. Type it as 21:30.
typed-no-such-time = There is no time of day “{ $text }”. The last one is 23:59, with am or pm 12:59.
typed-twelve = “{ $text }” can be midnight or noon. Type { $first } or { $second }.
typed-half-of-day = “{ $text }” can be in the morning or in the evening. Type { $first } or { $second }.

## Push-to-talk
ear-press-to-talk = I do not listen: press { $key }, then speak
ear-pressed = I am listening; press { $key } to stop

refused-press-for-hold = Your own words do not answer a safety hold. Press it on the screen.

## Voice test
voice-test-begin = This takes about two minutes. Wear what you wear at work, stand where you work, and let the machines run.
voice-test-speak = 1. Speak for { $seconds } seconds as you would speak to the kiosk. Begin now.
voice-test-level = Your voice: { $rms } dB, peak { $peak } dB below full scale.
voice-test-silent = 2. Be silent for { $seconds } seconds. Begin now.
voice-test-noise = { $n ->
    [0] The room: { $rms } dB. The noise was not taken for speech.
    [one] The room: { $rms } dB. The noise was taken for speech once.
   *[other] The room: { $rms } dB. The noise was taken for speech { $n } times.
}
voice-test-say = 3. Say each of these when it is shown.
voice-test-right = understood
voice-test-wrong = taken for “{ $text }”
voice-test-rejected = not understood
voice-test-nothing = nothing was heard
voice-test-count = Of { $said }, { $right } were understood, { $rejected } were not, and { $wrong } were taken for something else.
voice-test-above = Your voice was { $decibels } dB louder than the room.
voice-test-no-ear = { $why }
voice-test-good = This place is good enough to walk by voice.
voice-test-bad = This place is not good enough to walk by voice.

spot-nothing-heard = No speech was heard. See that the microphone is the right one, that it is switched on, and that it is turned up.
spot-no-ear = The kiosk has no ear for this language. Work by touch, add a speech model, or teach it your own words: kiosk voice teach.
spot-too-loud = The microphone is turned up too far: the loudest sounds are cut off. Turn it down.
spot-too-faint = Your voice comes in too faint. Bring the headset nearer to your mouth, or turn the microphone up.
spot-nearer = Bring the headset nearer to your mouth: two fingers beside it is best.
spot-other-place = It is loud here. Try another place, or turn machines and music off while you walk.
spot-push-to-talk = If it stays so loud, use push-to-talk: in site.toml, under [hearing], push_to_talk = true.
spot-wrong-heard = A word was taken for another one. Read on the screen what was heard before you say yes.
spot-own-words = It is not the noise. Speak in your normal voice, not slower; or teach the kiosk your own words: kiosk voice teach.
spot-touch = Until then, work by touch: every step can be done on the screen.

## Own words
teach-begin = Teach the kiosk your own words, in a quiet place. Each word is said three times. What is kept is how it sounds, as numbers, and no recording.
teach-word = Your word for “{ $word }”:
teach-too-short = That was too short. Say it once more.
teach-too-long = That was too long. Say a short word.
teach-too-loud = That was too loud and was cut off. Hold the microphone farther away.
teach-too-faint = That was too faint. Hold the microphone nearer.
teach-too-noisy = It is too loud here. Teach in a quiet place.
teach-unlike = That sounded different from before. Say it the same way each time.
teach-like-another = That sounds like another one of your words. Take another word.
teach-nothing-heard = Nothing was heard.
teach-given-up = “{ $word }” could not be taught, so nothing was kept. Take a longer word, or a quieter place, and begin again.
teach-tried = Of your { $said } samples, { $right } would have been understood by the others.
teach-kept = Your words are kept in { $file }. They are about a person: remove them with --forget when they are not needed any more.
teach-holds = A safety hold cannot be answered with them: there you say the whole phrase, or press.
teach-forgotten = The own words of { $worker } are removed.
teach-nothing-kept = No own words of { $worker } were kept.

## Deviations
found-problem-open = { $named ->
    [yes] Problem, not resolved for { $time }: { $reason }. At: { $what }
   *[other] Problem without a reason given, not resolved for { $time }. At: { $what }
}
found-problem = { $became ->
    [put-right] { $named ->
        [yes] Problem: { $reason }. The worker said it was put right and went on. At: { $what }
       *[other] Problem without a reason given. The worker went on. At: { $what }
    }
    [out-of-service] { $named ->
        [yes] Problem: { $reason }. The machine was taken out of service. At: { $what }
       *[other] Problem without a reason given. The machine was taken out of service. At: { $what }
    }
   *[other] { $named ->
        [yes] Problem: { $reason }. The session was ended. At: { $what }
       *[other] Problem without a reason given. The session was ended. At: { $what }
    }
}
found-out-of-service = The machine was taken out of service. At: { $what }
found-ended-early = The session was ended before its end. At: { $what }
found-unfinished = Nothing has happened for { $time }, and the session has not ended. At: { $what }
found-no-way-in = There was no safe way to go on. At: { $what }
found-hold-touched-after-doubt = The safety hold was pressed after doubtful words (“{ $heard }”): { $what }
found-hold-read-back-refused = “{ $heard }” was taken for the phrase, and the worker said no: { $what }
found-try-out-failed = The try-out showed that it was not so: { $what }
found-wait-short = { $clock ->
    [wall] By the wall clock only { $waited } of { $needed } passed. Was the clock set? { $what }
   *[other] Only { $waited } of { $needed } passed: { $what }
}
found-wait-cut = Broken off after { $waited } of { $needed }: { $what }
found-reading-off = { $told ->
    [yes] { $what }: { $number } was out of its limit ({ $limit }). To be done: { $corrective } Then it read { $then }.
   *[other] { $what }: { $number } was out of its limit ({ $limit }). No corrective action is given. Then it read { $then }.
}
found-reading-left-off = { $told ->
    [yes] { $what }: { $number } was out of its limit ({ $limit }), and no later reading kept it. To be done: { $corrective }
   *[other] { $what }: { $number } was out of its limit ({ $limit }), and no later reading kept it. No corrective action is given.
}
found-count-off = { $told ->
    [yes] { $what }: { $number } counted ({ $limit }). To be done: { $corrective } Then { $then } were counted.
   *[other] { $what }: { $number } counted ({ $limit }). Then { $then } were counted.
}
found-count-left-off = { $told ->
    [yes] { $what }: { $number } counted ({ $limit }), and it was not put right. To be done: { $corrective }
   *[other] { $what }: { $number } counted ({ $limit }), and it was not put right.
}
found-passes-ran-out = Still not right after pass { $number }: { $what }
found-too-fast = Confirmed after { $time }, and it takes { $least } or more: { $what }
found-none-in-stock = No spare part: { $what }
found-shorter-than-usual = The session took { $time }. The middle of { $number } earlier ones is { $usual }.
found-longer-than-usual = The session took { $time }. The middle of { $number } earlier ones is { $usual }.
found-restarted = { $power ->
    [cut] The computer was started anew; the session stood still for { $time }. At: { $what }
   *[other] The kiosk was started anew; the session stood still for { $time }. At: { $what }
}
found-back-step = Went back from “{ $what }” to “{ $to }”.
found-touch-only = All { $number } steps were confirmed by touch, though the ear works at this machine.
found-text-unknown = The text of { $procedure }, version { $version } ({ $digest }), is not here any more. Speed, times and parts could not all be judged.
found-session-early = { $machine }, { $day }: { $duty ->
    [close] the evening work
    [open] the morning work
   *[other] { $title }
} was finished at { $at }, long before its time ({ $begins } to { $until }).
found-session-late = { $machine }, { $day }: { $duty ->
    [close] the evening work
    [open] the morning work
    [check] the day check
   *[other] { $title }
} was finished at { $at }. Its time was { $begins } to { $until }.
found-session-not-finished = { $machine }, { $day }: { $duty ->
    [close] the evening work
    [open] the morning work
    [check] the day check
   *[other] { $title }
} was begun and not finished; last at work { $at }. Its time was { $begins } to { $until }.
found-session-never-started = { $machine }, { $day }: { $duty ->
    [close] the evening work
    [open] the morning work
    [check] the day check
   *[other] { $title }
} was never started. Its time was { $begins } to { $until }.
found-overdue = { $machine }: { $duty ->
    [sample] a laboratory sample
   *[other] { $title }
} was due by { $day } and is not recorded.
due-close = Evening work: { $machine }
due-open = Morning work: { $machine }
due-check = Day check: { $machine }
due-sample = Laboratory sample: { $machine }
due-other = { $title }: { $machine }
