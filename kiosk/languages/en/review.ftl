## The supervisor's review
review = review
review-back = back
review-other-ways = other pages
review-where-to = Where to?
review-place = { $first } to { $last }
review-nothing-here = There is nothing here.
review-reading = The journal is being read.
review-reading-place = The journal is being read: { $done } of { $of } sessions. The first time takes long; later only what is new is read.
review-cannot-read = The review cannot be opened. { $why }
review-cannot-look = This page cannot be shown. { $why }
review-only = only some sessions
review-laboratory = laboratory
review-dates = dates
review-parts = parts
review-picture = picture
review-pictures = pictures
review-people = people
review-sessions = sessions
review-unsigned = not signed
review-which-sessions = Which sessions?
review-eyes = { $n ->
    [0] Nothing needs your eyes first. Sessions, newest first:
    [one] One thing needs your eyes first.
   *[other] { $n } things need your eyes first.
}
review-newest-first = The sessions, the newest first:

# A session in a line.
review-deviations = { $n ->
    [0] no deviations
    [one] { $n } deviation
   *[other] { $n } deviations
}
review-length = { $time }
review-length-usual = { $time }, usual { $usual } (middle of { $number })
review-is-not-signed = not signed
review-is-signed-off = signed off
review-is-sent-back = sent back
review-ended-open = not ended
review-ended-complete = complete
review-ended-ended-early = ended early
review-ended-out-of-service = machine taken out of service

# A session's account and timeline.
review-from-to = From { $begun } to { $ended }
review-text-here = Procedure version { $version }, text { $digest }
review-text-gone = Procedure version { $version }, text { $digest }: this text is not here any more, so the sentences are missing.
review-was-signed-off = Signed off by { $by }, { $at }.
review-was-sent-back = Sent back by { $by }, { $at }.
review-remark-erased = (The text of this remark was erased.)
review-timeline = Timeline
review-journal-rows = Journal rows { $first } to { $last }
review-asked-in = Asked in { $language }: “{ $text }”
review-waited = Waited { $waited }, needed { $needed }
review-witness = Witness: { $who }
review-asked-again = { $n ->
    [one] The question was repeated once.
   *[other] The question was repeated { $n } times.
}
review-limit-parts = parts list: { $number }
review-passes = { $n ->
    [one] { $n } pass
   *[other] { $n } passes
}
review-sure = { $percent } percent sure
review-not-taken = after “{ $heard }” was not taken
review-ear = ear: { $ear }
review-after = after { $time }
review-by-voice = by voice
review-by-touch = by touch
review-by-key = by key
review-by-kiosk = by the kiosk
review-said-phrase = phrase given
review-said-read-back-agreed = read-back agreed
review-said-read-back-refused = read-back refused
review-said-try-out-failed = try-out failed
review-said-number = number given
review-said-out-of-limit = not right
review-said-pass = pass done
review-said-pass-judged = pass judged
review-said-passes-ran-out = passes ran out
review-said-tried-again = tried again
review-said-time-up = time is up
review-said-confirmed = confirmed
review-clear-yes = it is right
review-clear-no = not yet right
review-left-confirmed = Confirmed.
review-left-went-back = Went a step back.
review-left-held = The session was held here.
review-left-handed-over = Handed over here.
review-left-session-ended = The session was ended here.
review-left-still-there = The session still stands here.
review-break-pause = Paused.
review-break-problem = Held: a problem was called.
review-break-restart = The kiosk came up again.
review-break-no-way-in = Held: there was no safe way to go on.
review-power-cut = The computer was started anew.
review-until = Until { $at }.
review-problem = Problem: { $what } ({ $became })
review-no-reason = no reason was named
review-became-open = not resolved
review-became-put-right = put right, by the worker's word
review-became-ended-early = the session was ended
review-became-out-of-service = the machine was taken out of service
review-handed-over = Handed over from { $before } to { $after }
review-worked-out = Worked out: { $what }

# The supervisor's word.
review-sign-off = sign off
review-send-back = send back
review-what-remark = Sign off. With which remark?
review-what-to-do = Send back. What is to be done?
review-remark-right = looked at, nothing to do
review-remark-talked = talked with the worker
review-remark-machine = looked at the machine
review-back-again = clean the machine again
review-back-talk = worker, come and see me
review-back-sample = take a sample
review-back-part = replace the part
review-write = write it
review-take-it = take it
review-nothing-written = Write something first.
review-not-ended = This session has not ended. It can be sent back, but not signed off.
review-not-written = The journal could not be written, so nothing was recorded. { $why }

# Laboratory.
review-no-results = There are no laboratory results yet.
review-no-result-judged = No result could be judged.
review-results = Results, the newest first
review-left-out = Not judged, this authority has no limit for it: { $result }
review-resample = Sample again from { $first } to { $last }.
review-samples-owed = { $n ->
    [one] One sample day is still owed in six months.
   *[other] { $n } sample days are still owed in six months.
}
review-over = over the limit
review-may-be-over = may be over the limit
review-per-g = per gram
review-per-ml = per millilitre
review-head-left = left head
review-head-right = right head
review-head-twist = twist head
review-head-single = single head
review-amount-exact = { $amount }
review-amount-estimated = about { $amount }
review-amount-less-than = less than { $amount }
review-amount-more-than = more than { $amount }
review-amount-spreaders = spreading growth
review-amount-laboratory-accident = laboratory accident
review-enter-result = enter a result
review-other-authority = other authority
review-trace = what led to it
review-nothing-to-trace = No result of this barrel is over the limit.
review-trace-lead = A lead, not a proof: the order comes from weights without a published source. Look, ask, and take another sample.
review-trace-looked = Looked at: { $begun } to { $ended }.
review-no-session = no session
review-no-sign = Nothing speaks against it.
clue-short-contact = too short a contact
clue-weak-sanitizer = weak sanitizer
clue-warm-mix = warm mix
clue-worn-part = worn part
clue-missed-close = evening work missed
clue-late-close = late evening work
clue-ended-early = ended early
clue-new-worker = new worker
clue-doubtful-hold = doubtful safety hold

review-ask-machine = Which machine was sampled?
review-ask-barrel = Which head was sampled?
review-ask-day = On which day was it sampled? Write it as 2026-11-25.
review-ask-product = Of what was the sample?
review-ask-analysis = Which test?
review-ask-amount = What does the report say? Write it as 1200, < 10, > 1100, est. 900 or spreaders.
review-ask-per = Per gram, or per millilitre?
review-ask-laboratory = Which laboratory?
review-ask-sample = Which number did the laboratory give the sample?
review-no-sample-number = no number
review-wrong-day = That is no day up to today. Write it as 2026-11-25.
review-wrong-amount = That can be read in two ways, or not at all. Write it without marks for thousands, as 1200.
review-wrong-laboratory = That name is too long. Shorten it.
review-wrong-sample = That number is too long. Shorten it.
review-is-that-right = Is that right?
review-enter-it = yes, enter it
review-again = no, once more
review-this-result = this result
review-entered = The result is in the journal.
review-known-already = This result is in the journal already. Nothing was entered.
review-known-otherwise = The journal has another number for this sample. Give the laboratory's own number, or strike the wrong entry with: kiosk lab strike.

# Dates, parts and people.
review-overdue = Overdue
review-due = Due now
review-to-come = To come
review-done = Done in the last days
review-by = until { $at }
review-sampled-session = last taken { $day } in a session; its result is not entered yet
review-sampled-result = last sampled { $day }: known by the result that was entered
review-sampled-both = last taken { $day } in a session; its result is entered
review-sampled-never = never sampled yet
review-stand-not-yet-due = not yet due
review-stand-due = due
review-stand-done = done
review-stand-done-early = done very early
review-stand-done-late = done late
review-stand-begun-not-finished = begun, not finished
review-stand-missed = missed
review-stand-out-of-service = machine out of service
review-stand-not-opened = machine not used that day
review-check-rule = A day check counts as missed only on a day on which the machine was walked and was not out of service.
review-role-worker = worker
review-role-trainee = trainee
review-role-supervisor = supervisor
review-not-here-any-more = not on the list any more
review-no-walk = has walked nothing yet
review-walked = { $n ->
    [one] { $title }: once, { $last }
   *[other] { $title }: { $n } times, first { $first }, last { $last }
}
review-first-walks = first walks, with a supervisor

# Pictures.
review-days = { $n ->
   *[other] last { $n } days
}
review-other-days = other time
