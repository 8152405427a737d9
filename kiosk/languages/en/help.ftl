# What can be done here, for whoever asks.
help = help
say-help = what can I say / help me / help
help-say = You can say: { $list }.
help-number = You can also say the number, or press it.
help-hold = A safety hold wants its own words, said whole, or its button kept pressed.
help-hurt = Is somebody hurt? Leave the machine, get help, and follow the product's label for a splash.
help-board = Press a machine to walk what is due on it, or a day check. A walk that was left waits with its own mark. Then press who does it. The kiosk guides and records; it is no substitute for lockout.
help-list = Press what is meant, or its number on the keyboard. Nothing has been recorded yet.
help-summary = This is what went into the journal. Read it, then go back to the machines.
or-say = Press it, or say: { $phrase }.
