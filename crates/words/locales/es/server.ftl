### El servidor: qué puede estar mal en una solicitud, qué no se puede con HTTP sin cifrar, y cómo se inicia.

## What is wrong with a request

title-server_no_route = No hay nada en esta dirección
server_no_route = no hay nada en esta dirección
title-server_no_file = No existe ese archivo
server_no_file = aquí no existe ese archivo
title-server_method = Método equivocado
server_method = esta dirección no acepta { $method }
title-server_host = Nombre equivocado
server_host = este servidor no se llama como se le preguntó
    .do = use la dirección que mostró el servidor, o dé el nombre al iniciarlo
title-server_origin = Otro sitio
server_origin = esto lo pidió una página de otro sitio
title-server_proxy = Intermediario desconocido
server_proxy = esto llegó por un intermediario (proxy) del que este servidor no sabe
    .do = inicie el servidor con el nombre del intermediario y una clave para enlazar
title-server_secret_missing = Sin enlazar
server_secret_missing = para esto hace falta la clave para enlazar
    .do = enlace otra vez con la clave que mostró el servidor
title-server_secret_wrong = Clave equivocada
server_secret_wrong = esta no es la clave para enlazar
    .do = enlace otra vez con la clave que mostró el servidor
title-server_too_many = Demasiadas solicitudes
server_too_many = de ahí llegaron demasiadas solicitudes; espere { $seconds } s
title-server_busy = Ocupado
server_busy = el servidor está ocupado con otros; espere { $seconds } s
title-server_too_large = Demasiado de una vez
server_too_large = esto es más de { $most } bytes
    .do = mándelo en partes más chicas
title-server_too_many_lines = Demasiadas líneas de una vez
server_too_many_lines = estas son más de { $most } líneas
    .do = mándelas en partes más chicas
title-server_too_many_ranges = Demasiados rangos de una vez
server_too_many_ranges = estos son más de { $most } rangos
title-server_too_slow = Demasiado lento
server_too_slow = esto tardó más de { $seconds } s en llegar
    .do = mándelo otra vez; lo que ya llegó se reconoce
title-server_broken_off = Se cortó
server_broken_off = la solicitud se cortó
    .do = mándela otra vez; lo que ya llegó se reconoce
title-server_content_type = Tipo de contenido equivocado
server_content_type = esta dirección acepta { $wanted }
title-server_unreadable = No se puede leer
server_unreadable = esto no se puede leer como lo que acepta la dirección, desde la línea { $line }, columna { $column }
title-server_field = Campo equivocado
server_field = el campo “{ $field }” no es lo que debe ser
title-server_other_notebook = Otro cuaderno
server_other_notebook = estas líneas son del cuaderno { $theirs }; aquí está el cuaderno { $ours }
    .do = sincronice con el servidor del mismo cuaderno
title-server_no_copy = Sin segunda copia
server_no_copy = este cuaderno se guarda sin segunda copia
title-server_only_here = Solo en la máquina misma
server_only_here = esto se puede pedir solo en la máquina misma
title-server_store_full = Ya no hay lugar
server_store_full = ahí ya no hay lugar para guardar esto; no se guardó nada de ello
    .do = haga lugar ahí; lo que se guardó antes está a salvo
title-server_store_read_only = No se puede escribir
server_store_read_only = ahí el cuaderno se puede leer pero no escribir
title-server_store_locked = En uso
server_store_locked = otro programa está escribiendo en el cuaderno; espere un poco
title-server_fault = Falla nuestra
server_fault = algo falló aquí; nada se guardó a medias

## What plain HTTP cannot do, and how to get HTTPS

plain_http_read_along = Con HTTP sin cifrar, cualquiera en la misma red puede leer lo que pasa, también la clave para enlazar.
    .do = Úselo solo en una red propia, como la que comparte un teléfono.
plain_http_no_offline = Con HTTP sin cifrar el teléfono no guarda la aplicación: sin este servidor al alcance no abre.
plain_http_no_install = Con HTTP sin cifrar la aplicación no se puede poner en la pantalla de inicio del teléfono como aplicación propia.
plain_http_no_position = Con HTTP sin cifrar el teléfono no dice dónde está; los campos se tienen que medir de otro modo.
plain_http_screen_sleeps = Con HTTP sin cifrar la pantalla se puede apagar a media prueba de captura.
    .do = Ajuste la pantalla del teléfono para que ese día no se apague.
https_by_certificate = HTTPS necesita un certificado en el que confíen los teléfonos.
    .do = Inicie con --certificate y --key y sus dos archivos en forma PEM.
https_by_proxy = HTTPS también puede venir de un intermediario (proxy) en esta máquina que tenga uno.
    .do = Haga que pase todo a este servidor, e inicie con --name y el nombre del intermediario.

## Starting it

serve-open_here = En esta máquina: { $address }
serve-open_network = En un teléfono de la misma red: { $address }
serve-open_name = Por nombre: { $address }
serve-secret = Clave para enlazar, se muestra solo ahora: { $secret }
serve-secret_from_file = La clave para enlazar es la del archivo.
serve-stop = Deténgalo con Ctrl-C; primero se terminan las solicitudes abiertas.
serve-without_app = Aquí no hay aplicación que mostrar; la página lo dice. Dé su carpeta con --app.
serve_port = el puerto { $port } no se puede abrir: { $why }
    .do = quizá lo tiene otro programa; escoja uno con --port
serve_start = el servidor no se puede iniciar: { $why }
serve_secret_short = esta clave para enlazar es muy corta
    .do = una clave para enlazar tiene 16 letras y cifras o más; quite la opción y se hace una
serve_no_chance = el sistema no da números al azar para hacer una clave para enlazar
    .do = escriba una de 16 letras y cifras o más en un archivo y délo con --pairing-secret-file
serve_certificate = el certificado y su llave no se pueden usar: { $why }
    .do = los dos archivos tienen que estar en forma PEM y ser pareja
serve_app-read = los archivos de la aplicación no se pueden leer: { $why }
    .do = dé la carpeta que contiene el index.html de la aplicación
serve_app-no_index = en esta carpeta no hay index.html; no es la de la aplicación
    .do = dé la carpeta que contiene el index.html de la aplicación
serve_app-too_much = en esta carpeta hay más de lo que tiene una aplicación; no es la suya
    .do = dé la carpeta que contiene el index.html de la aplicación
serve_name = “{ $name }” no es nombre de un servidor
    .do = dé solo el nombre, sin https:// y sin puerto

## The app as files

app-exported = { $files ->
        [one] La aplicación se escribió en { $folder }: un archivo
       *[other] La aplicación se escribió en { $folder }: { $files } archivos
    }
app-export_removed = { $files ->
        [one] Se quitó un archivo de la vez anterior; ya no es parte de la aplicación.
       *[other] Se quitaron { $files } archivos de la vez anterior; ya no son parte de la aplicación.
    }
app-export_next = Ponga la carpeta entera en cualquier sitio que sirva por HTTPS, en cualquier ruta. Allí no necesita nada más, y abre sin señal después de la primera visita.
app_not_built_in = este programa se compiló sin la aplicación
    .do = use uno hecho con `cargo xtask dist`, o dé la carpeta de los archivos de la aplicación con --app
app_export_not_empty = en esta carpeta hay algo que no se escribió al exportar
    .do = nombre una carpeta nueva o vacía

## Help

help-app = La aplicación como archivos para cualquier sitio
help-app-after =
    Ejemplo:
      evenswath app export mi-sitio
help-app_export = Escribir la aplicación como carpeta de archivos para cualquier sitio que sirva por HTTPS
help-app_export-after =
    Ejemplo:
      evenswath app export mi-sitio
help-app_export-folder = La carpeta que se escribe: una nueva, una vacía o una que se escribió así antes
help-app_export-app = La carpeta de los archivos de la aplicación, si no vienen en este programa

help-serve = El cuaderno y la aplicación, para esta máquina o para los teléfonos de la misma red
help-serve-after =
    Ejemplos:
      evenswath serve --folder mi-cuaderno
      evenswath serve --folder mi-cuaderno --on-network
      evenswath serve --folder mi-cuaderno --on-network --certificate granero.pem --key granero-llave.pem
help-serve-folder = La carpeta donde se guarda el cuaderno
help-serve-port = El puerto en que escucha; 0 para cualquiera que esté libre
help-serve-on_network = Escuchar a la red y no solo a esta máquina; los teléfonos se enlazan con una clave
help-serve-name = Un nombre del servidor, para la red o un intermediario (proxy); se puede dar varias veces
help-serve-pairing_secret_file = Un archivo con la clave para enlazar en su primera línea, 16 letras y cifras o más; sin él se hace una y se muestra
help-serve-certificate = El certificado para HTTPS en forma PEM, con los que lo respaldan
help-serve-key = La llave privada del certificado en forma PEM
help-serve-app = La carpeta de los archivos de la aplicación, en vez de los que trae este programa
help-serve-log = Escribir una línea por cada solicitud en la salida de errores; no dice nada de personas
value-FOLDER = CARPETA
value-PORT = PUERTO
value-NAME = NOMBRE
