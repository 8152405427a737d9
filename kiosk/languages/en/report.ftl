### Reports on paper.

report-title-day = Report of a day
report-title-month = Report of a month
report-title-folder = Inspector's folder
report-practice = Practice: an invented shop or a rehearsal. This is no record of real work.
report-drafted = This report's words were drafted by machine. A fluent speaker has not checked them yet.

## What is told of a session or of some days
report-session = Session
report-shop = Shop
report-machine = Machine
report-procedure = Procedure
report-text = Text that was walked
report-version = version { $version }, digest { $digest }
report-workers = Workers
report-begun = Begun
report-last-event = Last event
report-how-ended = How it ended
report-ended = { $how ->
    [complete] complete
    [ended-early] ended before its end
    [out-of-service] ended, machine out of service
   *[open] not ended
}
report-length = Length
report-minutes = { $minutes } min
report-usual-length = Usual length
report-usual = { $minutes } min: the middle of { $count } earlier sessions
report-usual-none = no earlier session to compare with
report-confirmed-steps = Confirmed steps
report-signed = Signed
report-signed-not = Not signed by a supervisor.
report-signed-off = Signed off by { $person }, { $at }
report-signed-back = Sent back by { $person }, { $at }
report-left-unsafe = At its end the next person had to be told: { $what }.
report-text-unknown = The procedure no longer has the text that was walked. Its sentences, kinds of steps and needed times cannot be shown.
report-days = Business days
report-days-mean = Sessions begun
report-days-begun = from { $first } until { $until }; a business day changes half-way between closing and opening
report-sessions = Sessions
report-sessions-complete = Sessions that came to their end
report-sessions-signed = Sessions signed off
report-sessions-sent-back = Sessions sent back
report-due = What was due
report-due-in-time = Done in its time
report-due-missed = Missed
report-readings = Readings
report-readings-off = Readings out of their limit
report-deviations = Deviations
report-steps = Steps
report-beside = Beside the steps
report-signing = Signing
report-laboratory = Laboratory results
report-parts = Parts
report-people = People
report-procedures = Procedures
report-figures = Figures

## Columns
report-column-rows = Rows
report-column-time = Time
report-column-day = Day
report-column-step = Step
report-column-answer = Answer and limit
report-column-how = How it was answered
report-column-who = Who
report-column-what = What
report-column-told = What was recorded
report-column-at-step = At step
report-column-weight = Weight
report-column-deviation = Deviation
report-column-why-seen = Why it should be seen
report-column-source = Source of the rule
report-column-session = Session
report-column-count = Count
report-column-machine = Machine
report-column-measured = Measured
report-column-value = Value
report-column-limit = Limit and its source
report-column-kept = Kept
report-column-least = Lowest
report-column-middle = Middle
report-column-most = Highest
report-column-off = Out of limit
report-column-remark = Remark
report-column-barrel = Machine and head
report-column-product = Product
report-column-analysis = Analysis
report-column-result = Result
report-column-laboratory = Laboratory
report-column-because = Why
report-column-standing = Standing
report-column-trend = Trend
report-column-due = Due
report-column-its-time = Its time
report-column-became = What became of it
report-column-begun = Begun
report-column-work = Machine and work
report-column-length = Minutes (usual)
report-column-ended = Ended
report-column-deviations = Deviations
report-column-signed = Signed
report-column-part = Part
report-column-found = Found
report-column-procedures = Procedures
report-column-procedure = Procedure
report-column-version = Version
report-column-known = What is known
report-column-kind = Kind of machine
report-column-signs = What speaks against it
report-column-digest = Digest of the text (SHA-256)

## Tables
report-none = none
report-steps-caption = Every stay in a step, in order
report-steps-none = no step was entered
report-beside-caption = Interruptions, problems, hand-overs, steps back, and what was worked out
report-signings-caption = What supervisors said about it
report-deviations-caption = Deviations, the heaviest first; none is left out
report-deviations-none = none was found
report-rules-caption = How often each rule found something
report-readings-caption = What was measured
report-readings-none = nothing was measured
report-spread-caption = What was measured, by machine
report-results-caption = Results of samples taken in these days
report-results-none = none was entered
report-struck-caption = Entries that were struck and count no more
report-standing-caption = Standing on { $day }
report-due-caption = Everything that was due
report-due-caption-off = What was not done in its time
report-sessions-caption = Sessions, in order of their beginning
report-sessions-none = there was no session
report-parts-caption = Parts replaced, worn, or miscounted
report-wear-caption = Wearing parts as they stand on { $day }
report-shelf-caption = Spare parts as they stand on { $day }
report-traces = What may have led to the bad results
report-traces-more = Only the last ones are traced; { $n } more are not.
report-trace-caption = { $day }, { $what }: { $amount }. Looked at: { $first } to { $last }. The most suspect first
report-people-caption = Who took part
report-procedures-caption = Texts that were walked

## Answers
report-on-list = parts list: { $expected }
report-remark-erased = the text of this remark was erased
report-hold-confirmed = confirmed
report-done = done
report-passes = { $number } passes
report-waited = { $waited } waited, { $needed } needed
report-left = { $how ->
    [went-back] not answered: went back
    [held] not answered: held
    [handed-over] not answered: handed over
    [session-ended] not answered: session ended
   *[still-there] not answered yet
}
report-finding = { $finding ->
    [good] good
    [replaced] replaced
    [none-left] worn, none left in stock
   *[other] { $other }
}
report-counted = { $counted } counted, { $expected } on the parts list
report-said = { $said ->
    [phrase] phrase
    [read-back-agreed] read-back agreed
    [read-back-refused] read-back refused
    [try-out-failed] try-out failed
    [number] number
    [out-of-limit] out of limit
    [pass] pass done
    [pass-judged] pass judged
    [passes-ran-out] passes ran out
    [tried-again] tried again
    [time-up] time up
   *[confirmed] confirmed
}
report-channel = { $channel ->
    [touch] touch
    [key] key
    [kiosk] by the kiosk
   *[voice] voice
}
report-heard = voice “{ $heard }”, ear { $ear }
report-heard-sure = voice “{ $heard }” ({ $sure }), ear { $ear }
report-asked-again = asked again: { $count }
report-witnessed = witness: { $person }
report-limit-none = no limit
report-kept-yes = kept
report-kept-no = NOT KEPT
report-kept-unknown = cannot be told
report-kept-without = not judged

## Beside the steps
report-stood-still = Stood still
report-break = { $because ->
    [pause] pause
    [problem] problem
    [restart] kiosk restarted
   *[no-way-in] no safe way on
}, until { $until }
report-problem = Problem
report-no-reason = no reason named
report-became = { $became ->
    [put-right] said to be put right
    [ended-early] session ended
    [out-of-service] machine taken out of service
   *[open] not resolved
}
report-hand-over = Hand-over
report-back = Step back
report-worked-out = Worked out
report-stand = { $stand ->
    [not-yet-due] not yet due
    [due] due now
    [done] done in time
    [done-early] done too early
    [done-late] done late
    [begun-not-finished] begun, not finished
    [out-of-service] machine out of service
    [not-opened] machine not used that day
   *[missed] MISSED
}

## Laboratory
report-head = { $head ->
    [left] left head
    [right] right head
    [twist] twist head
    [single] single head
   *[other] head { $head }
}
report-authority = Judged by { $title }, { $law }. Source: { $source } ({ $tag }).
report-authority-none = No authority was named for this report, so no limit and no standing is shown.
report-state = { $state ->
    [clear] Clear.
    [notice] NOTICE.
    [action] ACTION.
    [unknown] Unknown: a result is only a bound.
   *[no-results] No results.
}
report-over-of = Over the limit: { $four } of the last { $of_four }, { $five } of the last { $of_five }.
report-resample = Additional sample: from { $first } to { $last }.
report-owed = Sample days still owed in six months: { $days }.
report-average = Logarithmic average of the last four: { $low } or more.
report-left-out = Left out { $result }: { $why }.
report-trend-none = No trend can be told.

## Signatures, and what all this rests on
report-meaning = { $what ->
    [signed-off] looked at, and let stand
   *[sent-back] sent back, something is to be done
}
report-signature-means = What a signature means. “Signed off”: the supervisor named has looked at the record of that session, at that time, and lets it stand. “Sent back”: the supervisor wants something done about it. It does not mean that the supervisor saw the work, or that the machine is safe. The name, the time and the meaning stand beside each signature (the three parts of 21 CFR 11.50). It was given with that person's PIN where the site has PINs; it is no qualified electronic signature.
report-sign-name = Name in capital letters
report-sign-signature = Signature
report-sign-date = Date and time
report-rests-on = What this report rests on
report-limits-are = Limits stand as they were in force and journaled at the time, each with its clause and source. The machine's manual, the product label and local code come first wherever they differ.
report-deviations-are = Deviations are what written rules find in the record; each rule's source stands beside it. Where it says “common practice, no source”, no published source is known. A deviation is a reason to look, not a proof of a fault.
report-rows-are = The column “{ $column }” names rows of the kiosk's journal. Every value and every count here was made from those rows, and can be made from them again. For a whole session its first and its last row are named.
report-verify = How to check the journal
report-kiosk = Kiosk
report-head-row = Last row of the journal
report-head-hash = Hash of that row (SHA-256)
report-head-time = Time of that row (UTC)
report-made = This report was made
report-verify-how = Ask for a copy of the file journal.db. Each row's hash covers the row and the hash of the row before it. Compute the hashes from the first row up to the row named above; the last one must be the hash printed here. The page { $page } has a short program for it that needs nothing of ours; “kiosk log verify” does the same.
report-verify-not = Equal hashes show that the rows are those from which this report was made. They do not show that what a worker told the kiosk was true.
report-caution = The kiosk guides and records. It is no substitute for lockout, for the machine's manual, for the product label, for local code, or for licensed practice.
report-hashes-agree = The hashes of rows { $first } to { $last } were computed again when this report was made. They agree.
report-hashes-differ = ROW { $row } IS MISSING OR WAS ALTERED after it was written. Do not rely on this report; verify the journal.
report-unread = Sessions that this version of the kiosk cannot read, and that are missing here: { $sessions }.
