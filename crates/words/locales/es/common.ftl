### Words used everywhere: ranges, lists, verdicts, dates.

range = { $low } a { $high }
tips_run = { $first } a { $last }
list_and = { $before } y { $last }

verdict-within = dentro
verdict-outside = fuera
verdict-cannot_tell = no se sabe todavía

date = { $day } de { $month } de { $year }
month-1 = enero
month-2 = febrero
month-3 = marzo
month-4 = abril
month-5 = mayo
month-6 = junio
month-7 = julio
month-8 = agosto
month-9 = septiembre
month-10 = octubre
month-11 = noviembre
month-12 = diciembre

working_gives = da { $result }
working_source = fuente: { $source }
