### What is amiss with voice, ear and journal, and what speaks against a session.

## The loudspeaker and the voice.
sound-no-library = no sound library: install libasound2 or libpulse0
speaker-none = no sound device ({ $reason })
speaker-not-started = the sound device did not start ({ $reason })
speaker-takes-nothing = the sound device took no sound in { $seconds } s
speaker-no-way = no way to play sound: install alsa-utils, which brings 'aplay'
speaker-no-player = 'aplay' could not be started: { $reason }
speaker-failed = the sound device failed ({ $reason })
speaker-stopped = the loudspeaker stopped taking sound
prompt-unreadable = the prompt at { $file } cannot be read: { $reason }
prompts-not-kept = the folder for prompts { $folder } cannot be used ({ $reason }); make it writable
prompt-not-kept = the prompt cannot be kept in { $folder }: { $reason }; free some space
speech-no-voice = there is no voice for the language '{ $language }'; there are voices for { $known }
speech-no-letter = the text { $text } is empty: there is no letter and no digit to speak in it
speech-too-long = the text { $text }... has { $length } characters; split it, { $most } is the most that is spoken at once
speech-ended-twice = the speech worker ended twice at this text: { $reason }
speech-no-answer = the speech worker did not answer in { $seconds } s; it was ended
speech-not-started = the speech worker could not be started: { $reason }
speech-install-again = { $reason }; install the package again
speech-failed = the speech worker failed: { $reason }

## The microphone and the ear.
microphone-no-library = the sound library miniaudio is not installed here
microphone-none = no microphone ({ $reason })
microphone-no-answer = the sound system did not answer within { $seconds } seconds
microphone-ended = the sound has ended: is the microphone still plugged in?
ear-stopped = the ear stopped: { $reason }
ear-failed-once = the ear { $ear } failed on an utterance: { $reason }
ear-not-whole = { $more ->
    [0] { $model } in { $place } is not whole: { $missing } is missing. To mend: { $mend }
   *[other] { $model } in { $place } is not whole: { $missing } and { $more } more is missing. To mend: { $mend }
}
ear-mend-remove = remove that folder, then { $mend }
ear-needs-package = { $model } needs a package that is not there ({ $package }). To mend: { $mend }
ear-not-loaded = { $model } cannot be loaded ({ $reason }). To mend: { $mend }
ear-none-listed = no speech model is listed for '{ $language }' in models.toml
ear-none-installed = no speech model for '{ $language }' is installed. To mend: { $mend }
ear-mend-or = { $one } or { $other }
notice-and = { $one }; { $other }
own-words-unreadable = the own words in { $file } cannot be read ({ $reason }); teach them again with '{ $command }'

## The journal.
not-recorded = The journal could not be written, so nothing was recorded and nothing has moved.
see-the-screen = The screen tells what to do.
journal-full = The disk is full: { $file }. Free some of it, then try again.
journal-two-kiosks = Two kiosks work in { $folder }. Close one of them, then try again.
journal-moved = { $file } or { $log } was moved away while it was open. Put it back where it was, then try again.
journal-swallowed = { $file }: what was written is not there. Call your supervisor: go on with a backup of it.
journal-read-only = { $file } may not be written: { $reason }. Call your supervisor: it must be made writable.
journal-busy = Another program keeps { $file } busy. Close it, then try again.
journal-damaged = { $file } is damaged: { $reason }. Call your supervisor: go on with a backup of it.
journal-failed = { $file }: { $reason }. Call your supervisor, then try again.
row-unknown = a row of kind '{ $kind }' cannot be read: { $reason }
session-without-beginning = the session { $session } has no beginning in the journal
result-unreadable = the result { $result } cannot be read: { $reason }
file-failed = { $file }: { $reason }

## PINs.
pins-unusable = { $file } cannot be used: { $why }. To mend: make it readable, or move it away and set the PINs anew with 'kiosk people pin ID'.
pins-damaged = the entry of '{ $person }' is damaged
pins-no-list = it is no list of hashes
pins-not-written = { $file } cannot be written: { $reason }

## What speaks against a session.
sign-waited = waited { $waited } of { $needed }
sign-filled = the contact began { $after } after the strip was read: too soon to have filled and wetted everything ({ $least })
sign-weak = the strip read { $value }, and { $least } is the least
sign-weak-mended = the strip read { $value }, and { $least } is the least; { $after } later { $then }
sign-weak-too-soon = the strip read { $value }, and { $least } is the least; { $after } later { $then }: too soon to have mixed anew ({ $needed })
sign-warm = the mix was at { $value }
sign-warm-cooled = the mix was at { $value }, and { $after } later at { $then }
sign-warm-too-soon = the mix was at { $value }, and { $after } later at { $then }: no hopper cools so fast ({ $needed })
sign-worn = { $part }: found worn { $days ->
    [one] { $days } day
   *[other] { $days } days
} before, none in stock, not replaced since
sign-new = session { $nth } of a new worker ({ $who })
sign-late = the evening work began { $hours } after closing
sign-early = { $ended ->
    [ended-early] it was ended early
    [out-of-service] the machine was taken out of service
   *[open] it has not ended
}; last at: { $step }
sign-doubts = safety holds answered doubtfully: { $holds }
sign-missed = no evening work on this machine is recorded for this night, though it stood ready to serve (or the kiosk was not used)
