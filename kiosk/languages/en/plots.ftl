### Figures: their titles, axes and keys.

plot-number = { $n }
plot-month = { $month ->
    [1] Jan
    [2] Feb
    [3] Mar
    [4] Apr
    [5] May
    [6] Jun
    [7] Jul
    [8] Aug
    [9] Sep
    [10] Oct
    [11] Nov
   *[12] Dec
}
plot-month-day = { $month ->
    [1] Jan
    [2] Feb
    [3] Mar
    [4] Apr
    [5] May
    [6] Jun
    [7] Jul
    [8] Aug
    [9] Sep
    [10] Oct
    [11] Nov
   *[12] Dec
} { $day }
plot-today = today
plot-reach = { $days ->
    [one] lowest to highest of each day
   *[other] lowest to highest of { $days } days
}
plot-middle = the middle one of them

## Sessions
plot-length = How long the work took: { $what }
plot-length-told = { $n ->
    [one] { $n } session
   *[other] { $n } sessions
} from { $first } to { $last }. The middle length is { $middle }, the shortest { $least }, the longest { $most }.
plot-axis-minutes = minutes
plot-session-complete = complete
plot-session-open = not ended yet
plot-session-ended = ended before its end
plot-session-told = { $moment }: { $time }, { $worker }
plot-usual = usual: the middle of the earlier ones
plot-deviations = Deviations: { $what }
plot-deviations-told = { $found } deviations in { $n ->
    [one] { $n } session
   *[other] { $n } sessions
} from { $first } to { $last }.
plot-found-in = { $found } in { $sessions ->
    [one] { $sessions } session
   *[other] { $sessions } sessions
}
plot-axis-per-session = deviations per session
plot-deviations-bar = { $days ->
    [one] mean of each day
   *[other] mean of { $days } days
}

## Readings
plot-readings = { $quantity }: { $what }
plot-quantity = { $quantity ->
    [mix-temperature] mix temperature
    [sanitizer-strength] sanitizer strength
    [sanitizer-temperature] sanitizer temperature
    [wash-temperature] wash temperature
    [discarded-product] discarded product
   *[other] { $other }
}
plot-readings-told = { $n ->
    [one] { $n } reading
   *[other] { $n } readings
} from { $first } to { $last }, from { $least } to { $most }. Out of its limit: { $off }.
plot-other-unit = Readings in another unit that are not drawn: { $n }.
plot-kept = within its limit
plot-without-limit = reading
plot-off = out of its limit
plot-should-lie = where it must lie

## Laboratory results
plot-results = Laboratory, { $analysis }: { $what }
plot-head = { $head ->
    [left] left head
    [right] right head
    [twist] twist head
    [single] single head
   *[other] head { $head }
}
plot-axis-count = { $per ->
    [mL] colony-forming units per millilitre; each line is ten times the one below
   *[g] colony-forming units per gram; each line is ten times the one below
}
plot-result-counted = counted
plot-result-estimated = estimated
plot-result-less = less than
plot-result-more = more than
plot-result-over = over its limit
plot-result-limit = limit: { $n } per { $per } ({ $products })
plot-average = moving average
plot-control = its control limit
plot-results-told = { $n ->
    [one] { $n } result
   *[other] { $n } results
} from { $first } to { $last }. Over the limit: { $over }.
plot-results-without = Results without a number that are not drawn: { $n }.

## Who closed when
plot-closings = Who closed when
plot-closings-told = { $n ->
    [one] { $n } evening of a machine
   *[other] { $n } evenings of machines
} from { $first } to { $last }. Finished late: { $late }. Never finished: { $missed }.
plot-late = late
plot-nobody = nobody
plot-closed = closed: how many, the darker the more
plot-closed-late = one or more late, or not done

## Parts
plot-parts = Wearing parts
plot-parts-told = { $n ->
    [one] { $n } part
   *[other] { $n } parts
} since { $first }. Replacements: { $replaced }. Overdue: { $overdue }. Worn with none in stock: { $worn }.
plot-part-in-use = in use, one after the other
plot-part-likely = next replacement to be expected (8 of 10)
plot-part-replaced = replaced
plot-part-worn = worn, none in stock
plot-part-due = due by the schedule
