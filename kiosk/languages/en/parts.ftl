### Wearing parts and spare parts.

parts-worn = Worn since { $day }, none was in stock.
parts-due = Due by { $day }.
parts-overdue = Overdue: it was due by { $day }.
parts-replaced = { $days ->
    [0] Replaced today, { $day }, by { $by }.
    [one] Replaced { $day } by { $by }, { $days } day ago.
   *[other] Replaced { $day } by { $by }, { $days } days ago.
}
parts-replacements = { $n ->
    [one] One replacement on record.
   *[other] { $n } replacements on record.
}
parts-never-replaced = No replacement on record; first looked at { $day }.
parts-likely = To be replaced next from { $low } to { $high } (8 of 10); the middle is { $middle }.
parts-likely-open = To be replaced next from { $low } on (9 of 10); the middle is { $middle }.
parts-likely-hardly = To be replaced next from { $low } on (9 of 10); hardly within ten years.
parts-likely-later = No replacement is to be expected within ten years.
parts-too-little = Too few replacements on record to tell what is to be expected.
parts-none-found = On { $day } a worker found none there.
parts-short = { $n ->
    [one] One piece more was used than lay there. Count again.
   *[other] { $n } pieces more were used than lay there. Count again.
}
parts-shelf-unknown = The shelf was never counted.
parts-shelf = { $pieces ->
    [one] On the shelf: { $pieces } piece
   *[other] On the shelf: { $pieces } pieces
}; one replacement takes { $takes }. Enough for { $n ->
    [0] none
    [one] { $n } replacement
   *[other] { $n } replacements
}.
parts-counted-on = Last counted { $day }; since then as entered.
parts-never-counted = Never counted: only what was received.
parts-runs-out = A replacement will not find its pieces from { $low } to { $high } (8 of 10); the middle is { $middle }.
parts-runs-out-open = A replacement will not find its pieces from { $low } on (9 of 10); the middle is { $middle }.
parts-runs-out-hardly = A replacement will not find its pieces from { $low } on (9 of 10); hardly within ten years.
parts-runs-out-later = Enough for ten years.
parts-how-foretold = What is to be expected goes by what workers replaced so far, on all machines of a kind together. It is no limit: the schedule and the machine's manual come first.
parts-on-machines = In the machines
parts-on-shelf = On the shelf
parts-none-seen = No wearing part was looked at yet.
parts-received = { $count ->
    [one] Received: { $count } piece, { $part }.
   *[other] Received: { $count } pieces, { $part }.
}
parts-counted = { $count ->
    [one] Counted: { $count } piece, { $part }.
   *[other] Counted: { $count } pieces, { $part }.
}
