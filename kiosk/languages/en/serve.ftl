### The kiosk on a tablet: pairing a screen, watching, taking over.

pairing-code = To pair another screen: code { $code }.
pairing-closed = Too many wrong codes: no screen can be paired until the kiosk is started anew.
pairing-ask = Enter the code that is on the kiosk's board.
pairing-wrong = That is not the code on the board. Look again: it may be another one now.
pairing-wait = Too many wrong codes. Wait { $seconds } seconds, then enter the code that is on the board.
pairing-give = Pair
pairing-rub-out = Rub out
screen-lost = No connection to the kiosk. What was confirmed is kept. Trying again.
screen-watches = You are watching. Another screen holds the kiosk.
screen-hidden = A PIN is being entered, or something is looked at that a PIN guards. It is shown on the other screen only.
screen-take-over = Take over
screen-keyboard = Keyboard
screen-not-taken = The screen could not take over: { $why }
