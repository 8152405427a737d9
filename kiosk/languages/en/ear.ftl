### What the screens say of the ear, in English.

ear-no-sound = No sound comes from the microphone. Is it plugged in and switched on?
