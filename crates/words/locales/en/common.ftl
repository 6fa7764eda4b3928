### Words used everywhere: ranges, lists, verdicts, dates.

range = { $low } to { $high }
tips_run = { $first } to { $last }
list_and = { $before } and { $last }

verdict-within = within
verdict-outside = outside
verdict-cannot_tell = cannot tell

date = { $month } { $day }, { $year }
month-1 = January
month-2 = February
month-3 = March
month-4 = April
month-5 = May
month-6 = June
month-7 = July
month-8 = August
month-9 = September
month-10 = October
month-11 = November
month-12 = December

working_gives = gives { $result }
working_source = source: { $source }
