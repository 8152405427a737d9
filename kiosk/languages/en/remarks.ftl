### Spoken remarks on problems.

## Words to say.
say-remark = leave a message
say-remark-keep = save it
say-remark-again = do it again

## While it is recorded.
remark-speak-now = Speak now: what is wrong?
remark-ends = It ends by itself when you are silent, or after { $most }.
remark-done = done
remark-waits = about to record
remark-records = recording
remark-level = level
remark-ear-closed = I record, so nothing that you say now is a command.

## Afterwards.
remark-keep = Save this message of { $time }?
remark-full = { $most } is the most for one message, so it ended here.
remark-no-speech = I found no speech in it.
remark-empty = Nothing was recorded.
remark-microphone-gone = The microphone gives no more sound.
remark-kept = Your message of { $time } is saved.
remark-not-kept = Your message could not be saved. { $why }

## In the review.
remark-left = Spoken remark of { $who }, { $time }
remark-hash = SHA-256 of its sound: { $hash }
remark-erased-by = Its sound was erased on { $at }; { $by } asked for it.
remark-erased-by-time = Its sound was erased on { $at }, for remarks are kept here no longer.
remark-play = play a remark
remark-stop = stop playing
remark-which = Which remark?
remark-playing = Playing the remark of { $who }, { $time }.
remark-cannot-play = It cannot be played. { $why }
remark-is-missing = There is no sound with this hash in the data folder of this kiosk.
remark-is-altered = The sound in the data folder is not the one that was recorded: its hash is another one.
remark-is-unreadable = The sound in the data folder cannot be read.
remark-no-player = This kiosk has no player for it.

## kiosk people
remark-sounds-erased = The sound of { $n ->
    [one] one spoken remark
   *[other] { $n } spoken remarks
} is erased too; the journal keeps the hash.

## Reports.
report-spoken-remark = spoken remark
report-spoken-told = { $who }, { $time }; SHA-256 of its sound { $hash }
report-spoken-erased-by = sound erased { $at }, asked for by { $by }
report-spoken-erased-by-time = sound erased { $at }, remarks being kept no longer

## The sheet for the wall.
quick-remark = On a problem: tell it in your own words. A supervisor can hear it later.
