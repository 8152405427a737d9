### Recording prompts in a crew member's own voice.

recording-begin = { $count ->
    [one] One sentence is to be recorded.
   *[other] { $count } sentences are to be recorded.
} Read each one aloud as it is written, as you would say it to a colleague. A take ends after two seconds of silence. Everyone who works in this language will hear your voice.
recording-ready = Enter: record. s: skip. q: stop.
recording-speak = Speak now.
recording-level = { $decibels } dB below full scale, { $seconds } s
recording-flaw-silent = Nothing was heard. See that the right microphone is switched on and turned up.
recording-flaw-quiet = Too quiet. Come nearer, or turn the microphone up.
recording-flaw-clipped = Too loud: the loudest sounds are cut off. Move away, or turn the microphone down.
recording-flaw-begins-cut = The beginning is cut off. Wait for “Speak now”, then begin.
recording-flaw-ends-cut = The end is cut off. Speak without long breaks, and be silent afterwards.
recording-flaw-noisy = It is loud here. A quieter place is better.
recording-flaw-short = That is very short for this sentence. Was it the whole sentence?
recording-flaw-long = That is very long for this sentence. Was it this sentence alone?
recording-keep = Enter: keep it. a: again. s: skip. q: stop.
recording-not-kept = It cannot be kept so. Enter: again. s: skip. q: stop.
recording-not-played = It cannot be played back here. { $why }
recording-no-sound = No sound comes any more. Is the microphone still plugged in?
recording-done = Kept: { $kept }. Still to be recorded: { $left }.
recording-all-there = Every sentence is recorded. To record them anew, add --again.
recording-recorded = recorded
recording-missing = missing
recording-stale = no longer said
recording-standing = Recorded: { $recorded }. Missing: { $missing }. No longer said: { $stale }.
recording-erased = { $n ->
    [one] One recorded sentence is erased.
   *[other] { $n } recorded sentences are erased.
}
recording-folder = The recordings in { $folder } cannot be kept, read or erased ({ $reason }). Make that folder writable, and free some space.
