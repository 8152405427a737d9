# What the line under the screens tells while an invented evening plays by itself.
crew-evening = An invented evening, played by itself: { $who } closes a machine that does not exist. Ctrl+Q ends it.
crew-says = { $who } says: “{ $phrase }”
crew-presses = { $who } presses: “{ $phrase }”
crew-next-passes-no-hold = This is a safety hold. A tired { $who } just says the usual word: it does not count here.
crew-short-press-passes-no-hold = A short press does not pass a safety hold either.
crew-read-back = The kiosk says what it understood, and wants a yes.
crew-power-cut = The power of the kiosk fails, in the middle of a step.
crew-cut-is-over = The kiosk is on again. The board shows what was not finished; the journal has lost nothing.
crew-problem = Something looks wrong: { $who } calls a problem, and everything stops.
crew-holds-again = Before the work goes on, the kiosk asks again what may have changed meanwhile.
crew-one-is-missing = { $who } counts one O-ring too few. Without the count it would be in the machine, or in a cone.
crew-other-language = Somebody else finishes, in another language. What is safe is asked again, of the one who is there now.
crew-time-passes = Time passes, faster than it does.
crew-written = Each answer is in the journal, with its time and how it was given.
crew-evening-over = That was the evening. In the morning the supervisor reviews it.
