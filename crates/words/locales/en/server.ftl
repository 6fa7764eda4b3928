### The server: what can be wrong with a request, what plain HTTP cannot do, and starting it.

## What is wrong with a request

title-server_no_route = Nothing at this address
server_no_route = there is nothing at this address
title-server_no_file = No such file
server_no_file = there is no such file here
title-server_method = Wrong method
server_method = this address does not take { $method }
title-server_host = Wrong name
server_host = this server does not go by the name it was asked under
    .do = use the address that the server showed, or give the name when it is started
title-server_origin = Another site
server_origin = this was asked by a page of another site
title-server_proxy = Unknown proxy
server_proxy = this came through a proxy that this server was not told of
    .do = start the server with the name that the proxy goes by and a pairing secret
title-server_secret_missing = Not paired
server_secret_missing = this needs the pairing secret
    .do = pair again with the secret that the server showed
title-server_secret_wrong = Wrong pairing secret
server_secret_wrong = this is not the pairing secret
    .do = pair again with the secret that the server showed
title-server_too_many = Too many requests
server_too_many = too many requests came from there; wait { $seconds } s
title-server_busy = Busy
server_busy = the server is busy with others; wait { $seconds } s
title-server_too_large = Too much at once
server_too_large = this is more than { $most } bytes
    .do = send it in smaller parts
title-server_too_many_lines = Too many lines at once
server_too_many_lines = these are more than { $most } lines
    .do = send them in smaller parts
title-server_too_many_ranges = Too many ranges at once
server_too_many_ranges = these are more than { $most } ranges
title-server_too_slow = Too slow
server_too_slow = this took longer than { $seconds } s to come
    .do = send it again; what came already is known
title-server_broken_off = Broken off
server_broken_off = the request broke off
    .do = send it again; what came already is known
title-server_content_type = Wrong type of content
server_content_type = this address takes { $wanted }
title-server_unreadable = Unreadable
server_unreadable = this cannot be read as what the address takes, from line { $line }, column { $column } on
title-server_field = Wrong field
server_field = the field "{ $field }" is not what it should be
title-server_other_notebook = Another notebook
server_other_notebook = these lines belong to notebook { $theirs }; here is notebook { $ours }
    .do = sync with the server of the same notebook
title-server_no_copy = No second copy
server_no_copy = this notebook is kept without a second copy
title-server_only_here = On the machine itself only
server_only_here = this may be asked on the machine itself only
title-server_store_full = No room left
server_store_full = there is no room left there to keep this; nothing of it was kept
    .do = make room there; what was kept before is safe
title-server_store_read_only = Not to be written to
server_store_read_only = the notebook may be read there but not written to
title-server_store_locked = In use
server_store_locked = another program is writing to the notebook; wait a little
title-server_fault = A fault of ours
server_fault = something went wrong here; nothing of it was kept by halves

## What plain HTTP cannot do, and how to get HTTPS

plain_http_read_along = Over plain HTTP anybody in the same network can read along, the pairing secret too.
    .do = Use it only in a network of your own, as a phone's hotspot.
plain_http_no_offline = Over plain HTTP a phone does not keep the app: without this server in reach it does not open.
plain_http_no_install = Over plain HTTP the app cannot be put on a phone's home screen as an app of its own.
plain_http_no_position = Over plain HTTP a phone does not tell its position; fields must be measured another way.
plain_http_screen_sleeps = Over plain HTTP the screen may go dark in the middle of a catch.
    .do = Set the phone's screen to stay on for the day.
https_by_certificate = HTTPS needs a certificate that the phones trust.
    .do = Start with --certificate and --key and its two files in PEM form.
https_by_proxy = HTTPS can also come from a proxy on this machine that has one.
    .do = Let it pass on to this server, and start with --name and the name that it goes by.

## Starting it

serve-open_here = On this machine: { $address }
serve-open_network = On a phone in the same network: { $address }
serve-open_name = By name: { $address }
serve-secret = Pairing secret, shown only now: { $secret }
serve-secret_from_file = The pairing secret is the one in the file.
serve-stop = Stop it with Ctrl-C; open requests are finished first.
serve-without_app = There is no app to show here; the page says so. Give its folder with --app.
serve_port = port { $port } cannot be opened: { $why }
    .do = another program may have it; choose one with --port
serve_start = the server cannot be started: { $why }
serve_secret_short = this pairing secret is too short
    .do = a pairing secret has 16 letters and digits or more; leave the option out and one is made
serve_no_chance = the system gives no random numbers to make a pairing secret of
    .do = write one of 16 letters and digits or more into a file and give it with --pairing-secret-file
serve_certificate = certificate and key cannot be used: { $why }
    .do = both files must be in PEM form and belong together
serve_app-read = the app's files cannot be read: { $why }
    .do = give the folder that holds the app's index.html
serve_app-no_index = there is no index.html in this folder, so it is not the app's
    .do = give the folder that holds the app's index.html
serve_app-too_much = there is more in this folder than an app has, so it is not the app's
    .do = give the folder that holds the app's index.html
serve_name = "{ $name }" is no name of a server
    .do = give the name alone, without https:// and without a port

## The app as files

app-exported = { $files ->
        [one] The app was written to { $folder }: one file
       *[other] The app was written to { $folder }: { $files } files
    }
app-export_removed = { $files ->
        [one] One file of the export before is gone; it is no part of the app any more.
       *[other] { $files } files of the export before are gone; they are no part of the app any more.
    }
app-export_next = Put the whole folder on any host that serves HTTPS, under any path. It needs nothing else there, and opens with no signal once it was visited.
app_not_built_in = this program was built without the app
    .do = use one that `cargo xtask dist` built, or give the folder of the app's files with --app
app_export_not_empty = there is something in this folder that no export wrote
    .do = name a new folder or an empty one

## Help

help-app = The app as files for any host
help-app-after =
    Example:
      evenswath app export my-site
help-app_export = Write the app as a folder of files for any host that serves HTTPS
help-app_export-after =
    Example:
      evenswath app export my-site
help-app_export-folder = The folder to write: a new one, an empty one, or one that was written so before
help-app_export-app = The folder of the app's files, where they are not in this program

help-serve = The notebook and the app, for this machine or for phones in the same network
help-serve-after =
    Examples:
      evenswath serve --folder my-notebook
      evenswath serve --folder my-notebook --on-network
      evenswath serve --folder my-notebook --on-network --certificate barn.pem --key barn-key.pem
help-serve-folder = The folder that the notebook is kept in
help-serve-port = The port to listen on; 0 for any that is free
help-serve-on_network = Listen to the network and not to this machine alone; phones pair with a secret
help-serve-name = A name that the server goes by, for the network or a proxy; may be given again
help-serve-pairing_secret_file = A file with the pairing secret in its first line, 16 letters and digits or more; without it one is made and shown
help-serve-certificate = The certificate for HTTPS in PEM form, with those it rests on
help-serve-key = The private key of the certificate in PEM form
help-serve-app = The folder of the app's files, instead of those in this program
help-serve-log = Write a line for each request to standard error; nothing about a person is in it
value-FOLDER = FOLDER
value-PORT = PORT
value-NAME = NAME
