### The notebook: what was kept, what is missing, what could not be kept.

store_full = ya no hay espacio para guardar esto; no se guardó nada de ello
    .do = haga espacio y escríbalo otra vez; lo guardado antes está a salvo
store_read_only = aquí el cuaderno se puede leer pero no escribir
    .do = copie el cuaderno a donde se pueda escribir, o pregunte quién puede
store_locked = otro programa está escribiendo en este cuaderno y no lo suelta
    .do = cierre el otro programa, o espere, e intente otra vez
store_damaged = el cuaderno está dañado aquí: { $what }
    .do = use la segunda copia que está al lado, o importe el último archivo exportado
store_newer = este cuaderno lo abrió un programa más nuevo (versión { $version }); este conoce la { $known }
    .do = actualice este programa; el cuaderno quedó como estaba
store_other = este no es el cuaderno que se esperaba
    .do = dé la carpeta del cuaderno correcto
store_refused = este navegador no deja que esta página guarde nada: { $what }
    .do = salga de la navegación privada, o permita que este sitio guarde datos, y cargue otra vez la página
store_held_open = otra ventana tiene abierto el cuaderno con un programa más viejo y no lo suelta
    .do = cierre la otra ventana y cargue otra vez esta página
store_closed = esta ventana soltó el cuaderno, por un programa más nuevo o porque se borró lo que guardaba
    .do = cargue otra vez esta página; lo guardado antes está a salvo si no se borró
store_system = esto no se pudo guardar o leer: { $what }
    .do = intente otra vez; lo guardado antes está a salvo

line_not_a_line = esto no es un renglón de un cuaderno: { $why }
line_not_a_line-in_file = el renglón { $at } del archivo no es de un cuaderno: { $why }
line_newer = este renglón lo escribió un programa más nuevo (sobre { $version })
line_newer-in_file = el renglón { $at } del archivo lo escribió un programa más nuevo (sobre { $version })
line_field = el campo `{ $field }` de este renglón falta o no es lo que debe ser
line_field-in_file = renglón { $at } del archivo: el campo `{ $field }` falta o no es lo que debe ser
line_too_long = este renglón tiene { $bytes } bytes, más de lo que cabe en uno
line_too_long-in_file = el renglón { $at } del archivo tiene { $bytes } bytes, más de lo que cabe en uno

notebook_file_not_one = esto no es un archivo de cuaderno: su primer renglón no lo es
notebook_file_newer = este archivo lo escribió un programa más nuevo (versión { $version })
notebook_file_changed = el renglón { $at } del archivo se cambió después de escrito; no se toma
notebook_file_foreign = el renglón { $at } del archivo es de otro cuaderno; no se toma
notebook_file_cut_off = el archivo se corta: falta su último renglón. Lo que está antes está completo.
notebook_file_sum = el archivo no coincide con su suma de control: algo se cambió

notebook_missing = los renglones { $first } a { $last } del aparato { $device } no están: se perdieron o no han llegado
notebook_two_in_one_place = dos renglones distintos dicen ser el número { $number } del aparato { $device }
notebook_broken_chain = el renglón { $number } del aparato { $device } no sigue al anterior
notebook_out_of_order = el renglón { $number } del aparato { $device } está antes del que se escribió primero
notebook_emptied = lo escrito en el renglón { $number } del aparato { $device } no está, y nadie lo retiró
notebook_one_name = dos renglones tienen el nombre { $id }

## What the command says.

notebook-imported = { $new ->
        [one] Un renglón nuevo
       *[other] { $new } renglones nuevos
    }, { $known } ya estaban
notebook-visit_begun = Se escribió una visita: { $visit }
notebook-not_taken = No se tomaron { $changed } renglones cambiados y { $foreign } de otro cuaderno
notebook-exported = Escrito: { $file }, { $lines ->
        [one] un renglón
       *[other] { $lines } renglones
    }
notebook-whole = { $lines ->
        [one] El cuaderno está completo: un renglón
       *[other] El cuaderno está completo: { $lines } renglones
    }, { $visits ->
        [one] una visita
       *[other] { $visits } visitas
    }
notebook-not_whole = { $count ->
        [one] Una cosa no está como debe
       *[other] { $count } cosas no están como deben
    }; { $lines ->
        [one] un renglón está completo
       *[other] { $lines } renglones están completos
    }
notebook-log_line = { $at }  { $device }/{ $number }  { $about }  { $text }
notebook-struck = tachado: { $reason }
notebook-withdrawn = retirado
notebook-unknown = lo escribió un programa más nuevo
notebook_no_visit = no hay visita { $visit } en este cuaderno
    .do = `evenswath notebook log` muestra lo que hay
notebook_several_visits = hay { $count } visitas en este cuaderno
    .do = diga cuál quiere: { $visits }
notebook_none = no hay cuaderno en { $folder }
    .do = `evenswath notebook import { $folder } ARCHIVO` empieza uno
notebook_other = el archivo es de otro cuaderno que el de { $folder }
    .do = impórtelo en una carpeta aparte

## Help.

help-notebook = El cuaderno: todo lo escrito, guardado para siempre
help-notebook-after =
    Ejemplos:
      evenswath notebook import mi-cuaderno mi-visita.toml
      evenswath notebook verify mi-cuaderno
      evenswath notebook export mi-cuaderno > mi-cuaderno.jsonl
help-notebook_import = Tomar archivos de visita y de cuaderno; empieza el cuaderno si no lo hay
help-notebook_import-after =
    Ejemplo:
      evenswath notebook import mi-cuaderno mi-visita.toml
help-notebook_import-folder = La carpeta del cuaderno
help-notebook_import-files = Archivos de visita (.toml) o cuadernos exportados (.jsonl)
help-notebook_export = Escribir todo el cuaderno en un solo archivo sencillo
help-notebook_export-after =
    Ejemplo:
      evenswath notebook export mi-cuaderno > mi-cuaderno.jsonl
help-notebook_export-folder = La carpeta del cuaderno
help-notebook_export-to = El archivo que se escribe; la salida estándar si no se da
help-notebook_verify = Decir si un cuaderno o un archivo exportado está completo, y qué falta o se cambió
help-notebook_verify-after =
    Ejemplo:
      evenswath notebook verify mi-cuaderno
help-notebook_verify-path = La carpeta del cuaderno, o un archivo exportado
help-notebook_log = Mostrar cada renglón, también los tachados y retirados
help-notebook_log-after =
    Ejemplo:
      evenswath notebook log mi-cuaderno
help-notebook_log-folder = La carpeta del cuaderno
help-notebook_visit = Escribir una visita del cuaderno como archivo de visita
help-notebook_visit-after =
    Ejemplo:
      evenswath notebook visit mi-cuaderno
help-notebook_visit-folder = La carpeta del cuaderno
help-notebook_visit-visit = Cuál visita, por su nombre; no hace falta si hay una
value-FILES = ARCHIVOS
value-PATH = RUTA
value-VISIT = VISITA
notebook-no_copy = no se hizo la segunda copia: { $why }
notebook-saved = { $lines ->
        [one] Se salvó un renglón
       *[other] Se salvaron { $lines } renglones
    }: { $copies } de las copias, { $file } más del archivo mismo
help-notebook_save = Salvar lo que está completo de un cuaderno dañado y sus copias en uno nuevo
help-notebook_save-after =
    Ejemplo:
      evenswath notebook save mi-cuaderno --to cuaderno-salvado
help-notebook_save-folder = La carpeta del cuaderno dañado; nada en ella se toca
help-notebook_save-to = La carpeta del cuaderno nuevo
