### Who may do what, and PINs.

## Words to say.
say-witness = the second person is here

## The PIN screens.
pin-ask = { $who }, enter your PIN.
pin-invented = (invented shop: PIN { $pin })
pin-new = { $who }, enter a new PIN: 4 to 12 digits.
pin-again = Enter the same digits again.
pin-is-set = { $who } has a new PIN.
pin-for-begin = to begin
pin-for-take-over = to take over
pin-for-witness = as the second person
pin-for-stand-by = to stand by a trainee
pin-for-sign = to sign
pin-for-review = to look at the records
pin-for-set-pin = to set a PIN
which-supervisor = Which supervisor?
no-supervisor = No supervisor is on the list of this site who could do it.
who-witnesses = Who is the second person?
whose-pin = Whose PIN?
who-vouches = Who vouches for it?
pin-by-old-one = with the old PIN
pin-by-supervisor = a supervisor vouches

## The board.
to-practise = practise
to-set-pin = set a PIN
practise-or-pin = What do you want to do?
practice-is = marked as practice, kept apart from real work
practice-board = Practice: work that is really done is not written down here.
back-to-work = back to work
with-a-supervisor = with a supervisor beside them

## Why something was not done.
refused-pin-first = Your PIN is needed first.
refused-supervisor-first = A supervisor must stand by, and give their PIN first.
refused-not-on-list = Not on the list of this site.
refused-not-your-walk = Not one of the procedures that this person walks.
refused-trainee-no-witness = A trainee cannot be the second person.
refused-own-work = Nobody signs their own work. Another supervisor must look at it.
refused-supervisors-only = Only a supervisor may do that.
refused-pin-wrong = That is not the right PIN. Try again.
refused-pin-wait = Too many wrong tries. { $time } left until the next one.
refused-pin-closed = This PIN is closed after too many wrong tries. A supervisor must set a new one.
refused-no-pin-set = { $person } has no PIN yet. A supervisor can set one on the board, or 'kiosk people pin { $person }' does it.
refused-pins-unreadable = PINs cannot be checked now. { $reason }
refused-pin-not-written = It could not be written down, so nothing was done. { $reason }
refused-pin-length = A PIN has { $least } to { $most } digits.
refused-pin-easy = That PIN is too easy to guess. Take other digits.
refused-pin-differs = The two entries differ. Enter a new PIN once more.

## kiosk people
people-nobody = { $person } is not on the list of this site. There are: { $known }.
people-ask-pin = New PIN for { $who } ({ $person }), not shown:
people-ask-again = Again:
people-pin-set = { $who } ({ $person }) has a new PIN.
people-pin-yes = has a PIN
people-pin-no = has no PIN
people-role-worker = worker
people-role-trainee = trainee
people-role-supervisor = supervisor
people-walks-all = walks everything
people-walks = walks { $procedures }
people-erased = Erased of { $person }: name, PIN, own words, and the text of { $n ->
    [one] one remark
   *[other] { $n } remarks
}. The journal keeps the id, and says so.
people-kept-over = Erased, being kept long enough: { $names ->
    [one] one name
   *[other] { $names } names
}, { $remarks ->
    [one] one remark
   *[other] { $remarks } remarks
}.
people-nothing-over = Nothing has been kept longer than the site says.
