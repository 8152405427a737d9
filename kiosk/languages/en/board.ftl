### The board: who stands there, and what is due by when.

board-greeting = { $part ->
    [morning] Good morning, { $who }
    [day] Good afternoon, { $who }
   *[evening] Good evening, { $who }
}
sign-in = sign in
sign-in-who = Who stands here?
sign-out = sign out
sign-out-or-other = sign out or change
board-due-from = { $what }: from { $at }
board-due-by = { $what }: by { $at }
board-in = in { $time }
board-left = { $time } left
board-overdue = ! Overdue since { $at }: { $what }
board-never = { $what }: none known in half a year
help-board-more = Sign in, and what you press begins with you, in your language; a PIN is still asked where this place asks for one. After ten minutes without a touch nobody is signed in any more. On each machine stands from when, or by when, something is due.
