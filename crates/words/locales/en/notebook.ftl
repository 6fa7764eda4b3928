### The notebook: what was kept, what is missing, what could not be kept.

store_full = there is no room left to keep this; nothing of it was kept
    .do = make room and write it again; what was kept before is safe
store_read_only = the notebook may be read here but not written to
    .do = copy the notebook to where you may write, or ask who may
store_locked = another program is writing to this notebook and does not let go
    .do = close the other program, or wait, and try again
store_damaged = the notebook is damaged here: { $what }
    .do = take the second copy beside it, or import the last exported file
store_newer = this notebook was opened by a newer program (store version { $version }); this one knows { $known }
    .do = update this program; the notebook was left as it is
store_other = this is not the notebook that was expected
    .do = name the folder of the right notebook
store_refused = this browser lets this page keep nothing: { $what }
    .do = leave private browsing, or allow this site to keep data, and load the page again
store_held_open = another window holds the notebook open with an older program and does not let go
    .do = close the other window and load this page again
store_closed = this window has let go of the notebook, for a newer program or because what it kept was cleared
    .do = load this page again; what was kept before is safe unless it was cleared
store_system = this could not be kept or read: { $what }
    .do = try again; what was kept before is safe

line_not_a_line = this is no line of a notebook: { $why }
line_not_a_line-in_file = line { $at } of the file is no line of a notebook: { $why }
line_newer = this line was written by a newer program (envelope { $version })
line_newer-in_file = line { $at } of the file was written by a newer program (envelope { $version })
line_field = the field `{ $field }` of this line is missing or is not what it should be
line_field-in_file = line { $at } of the file: the field `{ $field }` is missing or is not what it should be
line_too_long = this line holds { $bytes } bytes, more than a line takes
line_too_long-in_file = line { $at } of the file holds { $bytes } bytes, more than a line takes

notebook_file_not_one = this is no notebook file: its first line is not that of one
notebook_file_newer = this file was written by a newer program (version { $version })
notebook_file_changed = line { $at } of the file was changed after it was written; it is not taken
notebook_file_foreign = line { $at } of the file belongs to another notebook; it is not taken
notebook_file_cut_off = the file breaks off: its last line is missing. What stands before is whole.
notebook_file_sum = the file does not fit its check sum: something in it was changed

notebook_missing = lines { $first } to { $last } of device { $device } are not here: lost, or not come yet
notebook_two_in_one_place = two different lines claim number { $number } of device { $device }
notebook_broken_chain = line { $number } of device { $device } does not go on from the line before it
notebook_out_of_order = line { $number } of device { $device } stands before the line that was written before it
notebook_emptied = what was written in line { $number } of device { $device } is not here, and nobody withdrew it
notebook_one_name = two lines have the name { $id }

## What the command says.

notebook-imported = { $new ->
        [one] One new line
       *[other] { $new } new lines
    }, { $known } here already
notebook-visit_begun = A visit was written: { $visit }
notebook-not_taken = { $changed } changed and { $foreign } foreign lines were not taken
notebook-exported = Written: { $file }, { $lines ->
        [one] one line
       *[other] { $lines } lines
    }
notebook-whole = { $lines ->
        [one] The notebook is whole: one line
       *[other] The notebook is whole: { $lines } lines
    }, { $visits ->
        [one] one visit
       *[other] { $visits } visits
    }
notebook-not_whole = { $count ->
        [one] One thing is not as it should be
       *[other] { $count } things are not as they should be
    }; { $lines ->
        [one] one line is whole
       *[other] { $lines } lines are whole
    }
notebook-log_line = { $at }  { $device }/{ $number }  { $about }  { $text }
notebook-struck = struck: { $reason }
notebook-withdrawn = withdrawn
notebook-unknown = written by a newer program
notebook_no_visit = there is no visit { $visit } in this notebook
    .do = `evenswath notebook log` shows what is in it
notebook_several_visits = there are { $count } visits in this notebook
    .do = name the one you want: { $visits }
notebook_none = there is no notebook in { $folder }
    .do = `evenswath notebook import { $folder } FILE` begins one
notebook_other = the file is of another notebook than the one in { $folder }
    .do = import it into a folder of its own

## Help.

help-notebook = The notebook: everything written, kept for good
help-notebook-after =
    Examples:
      evenswath notebook import my-notebook my-visit.toml
      evenswath notebook verify my-notebook
      evenswath notebook export my-notebook > my-notebook.jsonl
help-notebook_import = Take visit files and notebook files in; begins the notebook where there is none
help-notebook_import-after =
    Example:
      evenswath notebook import farm-notebook my-visit.toml
help-notebook_import-folder = The folder of the notebook
help-notebook_import-files = Visit files (.toml) or exported notebooks (.jsonl)
help-notebook_export = Write the whole notebook as one plain file
help-notebook_export-after =
    Example:
      evenswath notebook export my-notebook > my-notebook.jsonl
help-notebook_export-folder = The folder of the notebook
help-notebook_export-to = The file to write; standard output where none is named
help-notebook_verify = Say whether a notebook or an exported file is whole, and what is missing or was changed
help-notebook_verify-after =
    Example:
      evenswath notebook verify my-notebook
help-notebook_verify-path = The folder of the notebook, or an exported file
help-notebook_log = Show every line, struck and withdrawn ones too
help-notebook_log-after =
    Example:
      evenswath notebook log my-notebook
help-notebook_log-folder = The folder of the notebook
help-notebook_visit = Print a visit of the notebook as a visit file
help-notebook_visit-after =
    Example:
      evenswath notebook visit my-notebook
help-notebook_visit-folder = The folder of the notebook
help-notebook_visit-visit = Which visit, by its name; not needed where there is one
value-FILES = FILES
value-PATH = PATH
value-VISIT = VISIT
notebook-no_copy = the second copy was not made: { $why }
notebook-saved = { $lines ->
        [one] One line saved
       *[other] { $lines } lines saved
    }: { $copies } from copies, { $file } more from the file itself
help-notebook_save = Save what is whole of a damaged notebook and its copies into a new one
help-notebook_save-after =
    Example:
      evenswath notebook save my-notebook --to saved-notebook
help-notebook_save-folder = The folder of the damaged notebook; nothing in it is touched
help-notebook_save-to = The folder of the new notebook
