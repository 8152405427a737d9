### The journal as evidence.
record-disagrees = The record does not agree with what this kiosk had signed for. Tell the supervisor; do not delete anything.
record-unsigned = The record cannot be signed at present. Everything is written all the same. Tell the supervisor.
record-second-place = The second place for the record's checkpoints is not there. Put the stick back in. Everything is written all the same.
