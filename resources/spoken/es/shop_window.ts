<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es">
<context>
    <name></name>
    <message>
        <source>Columns</source>
        <translation>Columnas</translation>
    </message>
    <message>
        <source>{column} (no room here)</source>
        <translation>{column} (aquí no cabe)</translation>
    </message>
    <message>
        <source>As it was</source>
        <translation>Como estaba</translation>
    </message>
    <message>
        <source>Backing the shop up</source>
        <translation>Haciendo la copia de seguridad del taller</translation>
    </message>
    <message>
        <source>Looking how old the backups are</source>
        <translation>Mirando cuánto tiempo tienen las copias de seguridad</translation>
    </message>
    <message>
        <source>The house rules were changed at another desk</source>
        <translation>Las normas de la casa se cambiaron en otro puesto</translation>
    </message>
    <message>
        <source>“{words}” is under way.</source>
        <translation>“{words}” está en curso.</translation>
    </message>
    <message>
        <source>Wait for it.</source>
        <translation>Espere a que termine.</translation>
    </message>
    <message>
        <source>Undone: {words}.</source>
        <translation>Deshecho: {words}.</translation>
    </message>
    <message>
        <source>Done again: {words}.</source>
        <translation>Hecho de nuevo: {words}.</translation>
    </message>
    <message>
        <source>Stopped. Nothing was changed.</source>
        <translation>Detenido. No se cambió nada.</translation>
    </message>
    <message>
        <source>Redo: {words}</source>
        <translation>Rehacer: {words}</translation>
    </message>
    <message>
        <source>Undo: {words}</source>
        <translation>Deshacer: {words}</translation>
    </message>
    <message>
        <source>“{words}” did not work; that is a mistake of the program.</source>
        <translation>“{words}” no funcionó; es un error del programa.</translation>
    </message>
    <message>
        <source>Nothing was changed.</source>
        <translation>No se cambió nada.</translation>
    </message>
    <message>
        <source>The log file in the shop&apos;s folder has the details.</source>
        <translation>El diario del programa, en la carpeta del taller, tiene los detalles.</translation>
    </message>
    <message>
        <source>not asked</source>
        <translation>no preguntado</translation>
    </message>
    <message>
        <source>happens</source>
        <translation>ocurre</translation>
    </message>
    <message>
        <source>never</source>
        <translation>nunca</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>sí</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>no dicho</translation>
    </message>
    <message>
        <source>Right as typed</source>
        <translation>Está bien así</translation>
    </message>
    <message>
        <source>Right as typed: {question}</source>
        <translation>Está bien así: {question}</translation>
    </message>
    <message>
        <source>Looking whether the shop is whole</source>
        <translation>Mirando si el taller está íntegro</translation>
    </message>
    <message>
        <source>Ask the Old Jobs</source>
        <translation>Consultar trabajos</translation>
    </message>
    <message>
        <source>Heard</source>
        <translation>Lo contado</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Trabajo</translation>
    </message>
    <message>
        <source>Under Watch</source>
        <translation>En observación</translation>
    </message>
    <message>
        <source>It&apos;s Back</source>
        <translation>Ha vuelto</translation>
    </message>
    <message>
        <source>Monday Book</source>
        <translation>Libro del lunes</translation>
    </message>
    <message>
        <source>Part Kinds</source>
        <translation>Clases de pieza</translation>
    </message>
    <message>
        <source>Tool Drawer</source>
        <translation>Cajón de útiles</translation>
    </message>
    <message>
        <source>Bench Card</source>
        <translation>Tarjeta de medida</translation>
    </message>
    <message>
        <source>Photo Bench</source>
        <translation>Mesa de fotos</translation>
    </message>
    <message>
        <source>Records In and Out</source>
        <translation>Entrada y salida</translation>
    </message>
    <message>
        <source>Set This Shop Up</source>
        <translation>Poner en marcha</translation>
    </message>
    <message>
        <source>All of it can stay as it is and be changed at any time under House Rules, where every other rule stands too.</source>
        <translation>Todo puede quedar como está y cambiarse en cualquier momento en Normas de la casa, donde están también todas las demás normas.</translation>
    </message>
    <message>
        <source>Begin: a car is here</source>
        <translation>Empezar: hay un vehículo</translation>
    </message>
    <message>
        <source>House Rules</source>
        <translation>Normas de la casa</translation>
    </message>
    <message>
        <source>“{typed}” is not accepted.</source>
        <translation>“{typed}” no se acepta.</translation>
    </message>
    <message>
        <source>{sign}{amount} is kept, not {sign}{cents}. Is that meant?</source>
        <translation>Se guarda {sign}{amount}, no {sign}{cents}. ¿Es lo que quiere decir?</translation>
    </message>
    <message>
        <source>In {currency}.</source>
        <translation>En {currency}.</translation>
    </message>
    <message>
        <source>Without a change: {value}.</source>
        <translation>Si no se cambia: {value}.</translation>
    </message>
    <message>
        <source>Accepted: {low} to {high}.</source>
        <translation>Se acepta: de {low} a {high}.</translation>
    </message>
    <message>
        <source>This was not saved, and is put back. The line at the foot of the window says why.</source>
        <translation>Esto no se guardó y vuelve a estar como antes. La línea al pie de la ventana dice por qué.</translation>
    </message>
    <message>
        <source>{name}: “{mine}” was chosen and is not kept.</source>
        <translation>{name}: se eligió “{mine}” y no se guarda.</translation>
    </message>
    <message>
        <source>{name}: something else was chosen at another desk while the server was away.</source>
        <translation>{name}: en otro puesto se eligió otra cosa mientras el servidor no estaba.</translation>
    </message>
    <message>
        <source>That stays; “{mine}”, chosen here, is not kept.</source>
        <translation>Eso queda; “{mine}”, lo elegido aquí, no se guarda.</translation>
    </message>
    <message>
        <source>Look at it, and choose again if yours holds.</source>
        <translation>Mírelo y elija de nuevo si vale lo suyo.</translation>
    </message>
    <message>
        <source>no</source>
        <translation>no</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>Teclas</translation>
    </message>
    <message>
        <source>All keys, and what this program is</source>
        <translation>Todas las teclas, y qué es este programa</translation>
    </message>
    <message>
        <source>All keys, and what this program is ({pressed})</source>
        <translation>Todas las teclas, y qué es este programa ({pressed})</translation>
    </message>
    <message>
        <source>this list, and back</source>
        <translation>esta lista, y de vuelta</translation>
    </message>
    <message>
        <source>back to where this list was opened</source>
        <translation>vuelve a donde se abrió esta lista</translation>
    </message>
    <message>
        <source>to the next field or button, and back</source>
        <translation>al campo o botón siguiente, y de vuelta</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Intro</translation>
    </message>
    <message>
        <source>goes on; in a list it opens the row</source>
        <translation>sigue adelante; en una lista abre la fila</translation>
    </message>
    <message>
        <source>Space</source>
        <translation>Espacio</translation>
    </message>
    <message>
        <source>presses the button, sets or takes out the tick</source>
        <translation>pulsa el botón, pone o quita la marca</translation>
    </message>
    <message>
        <source>opens a choice</source>
        <translation>abre un selector</translation>
    </message>
    <message>
        <source>Arrows</source>
        <translation>Flechas</translation>
    </message>
    <message>
        <source>walk in a list and in a choice</source>
        <translation>recorren una lista o un selector</translation>
    </message>
    <message>
        <source>closes what lies over the page; puts the notice away</source>
        <translation>cierra lo que está encima de la página; retira el aviso</translation>
    </message>
    <message>
        <source>On “{place}”</source>
        <translation>En “{place}”</translation>
    </message>
    <message>
        <source>Everywhere</source>
        <translation>En todas partes</translation>
    </message>
    <message>
        <source>In fields, lists and choices</source>
        <translation>En campos, listas y selectores</translation>
    </message>
    <message>
        <source>What the words mean</source>
        <translation>Lo que significan las palabras</translation>
    </message>
    <message>
        <source>For the windows of this computer; other computers of the shop choose for themselves. What was typed stays as it was typed.</source>
        <translation>Para las ventanas de este equipo; los otros equipos del taller eligen por sí mismos. Lo que se escribió queda como se escribió.</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Idioma</translation>
    </message>
    <message>
        <source>Language of the windows</source>
        <translation>Idioma de las ventanas</translation>
    </message>
    <message>
        <source>as the system is set</source>
        <translation>según el sistema</translation>
    </message>
    <message>
        <source>Start anew now</source>
        <translation>Reiniciar ahora</translation>
    </message>
    <message>
        <source>Kept. It is spoken when the program is started the next time.</source>
        <translation>Guardado. Se hablará así cuando el programa arranque la próxima vez.</translation>
    </message>
    <message>
        <source>Something went wrong that the program did not foresee.</source>
        <translation>Pasó algo que el programa no había previsto.</translation>
    </message>
    <message>
        <source>What is saved is safe.</source>
        <translation>Lo guardado está a salvo.</translation>
    </message>
    <message>
        <source>The details are in the shop&apos;s log; “Show the report” under Records In and Out has what can be sent of it.</source>
        <translation>Los detalles están en el diario del programa; “Mostrar el informe”, en Entrada y salida, tiene lo que se puede enviar de ello.</translation>
    </message>
    <message>
        <source>{words}: {done:,} of {of:,} rows</source>
        <translation>{words}: {done:,} de {of:,} filas</translation>
    </message>
    <message>
        <source>{words}: finishing</source>
        <translation>{words}: terminando</translation>
    </message>
    <message>
        <source>{} was left before all of it was sent.</source>
        <translation>Se salió de {} antes de que se enviara todo.</translation>
    </message>
    <message>
        <source>{} is no longer there: it was taken out, here or at another desk, or undone.</source>
        <translation>{} ya no está: se quitó, aquí o en otro puesto, o se deshizo.</translation>
    </message>
    <message>
        <source>Put these words away</source>
        <translation>Retirar estas palabras</translation>
    </message>
    <message>
        <source>Entered there and not kept: {named}.</source>
        <translation>Escrito allí y no guardado: {named}.</translation>
    </message>
    <message>
        <source>It stays on the page until it is put away.</source>
        <translation>Queda en la página hasta que se retire.</translation>
    </message>
    <message>
        <source>↶ Undo</source>
        <translation>↶ Deshacer</translation>
    </message>
    <message>
        <source>↷ Redo</source>
        <translation>↷ Rehacer</translation>
    </message>
    <message>
        <source>closes the window</source>
        <translation>cierra la ventana</translation>
    </message>
    <message>
        <source>Nothing to undo</source>
        <translation>Nada que deshacer</translation>
    </message>
    <message>
        <source>Nothing to redo</source>
        <translation>Nada que rehacer</translation>
    </message>
    <message>
        <source>No undo: {what}</source>
        <translation>Sin deshacer: {what}</translation>
    </message>
    <message>
        <source>No redo: {what}</source>
        <translation>Sin rehacer: {what}</translation>
    </message>
    <message>
        <source> is not accepted.</source>
        <translation> no se acepta.</translation>
    </message>
    <message>
        <source> of {job} is not accepted.</source>
        <translation> de {job} no se acepta.</translation>
    </message>
    <message>
        <source>What is typed can&apos;t be kept: no folder for it takes a file.</source>
        <translation>Lo escrito no se puede guardar: ninguna carpeta para ello admite un archivo.</translation>
    </message>
    <message>
        <source>Make room on the disk, copy it out, or close the window once more.</source>
        <translation>Haga sitio en el disco, cópielo en otro lugar o cierre la ventana una vez más.</translation>
    </message>
    <message>
        <source>Copy it out, or close the window once more.</source>
        <translation>Cópielo fuera, o cierre la ventana otra vez.</translation>
    </message>
    <message>
        <source>What is typed under “{name}” can&apos;t be kept: {what}</source>
        <translation>Lo escrito en “{name}” no se puede guardar: {what}</translation>
    </message>
    <message>
        <source>What is typed is kept on this computer, and comes back with the shop.</source>
        <translation>Lo escrito queda guardado en este ordenador y vuelve con el taller.</translation>
    </message>
    <message>
        <source>Or close the window once more.</source>
        <translation>O cierre la ventana una vez más.</translation>
    </message>
    <message>
        <source>Mend or empty it, or close the window once more.</source>
        <translation>Corríjalo o vacíelo, o cierre la ventana otra vez.</translation>
    </message>
    <message>
        <source> under “{section}”</source>
        <translation> en “{section}”</translation>
    </message>
    <message>
        <source>Wait until it is sent, or choose again what stood there before.</source>
        <translation>Espere a que se envíe, o elija de nuevo lo que había antes.</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Detener</translation>
    </message>
    <message>
        <source>Put away</source>
        <translation>Retirar</translation>
    </message>
    <message>
        <source>Progress</source>
        <translation>Progreso</translation>
    </message>
    <message>
        <source>Put the notice away</source>
        <translation>Retirar el aviso</translation>
    </message>
    <message>
        <source>Bring a backup back…</source>
        <translation>Recuperar una copia…</translation>
    </message>
    <message>
        <source>Written at another desk</source>
        <translation>Escrito en otro puesto</translation>
    </message>
    <message>
        <source>The server is back.</source>
        <translation>El servidor ha vuelto.</translation>
    </message>
    <message>
        <source>Reading what was written at other desks</source>
        <translation>Leyendo lo que se escribió en otros puestos</translation>
    </message>
    <message>
        <source>The shop&apos;s server can&apos;t be reached since {now:%H:%M}.</source>
        <translation>No se puede llegar al servidor del taller desde las {now:%H:%M}.</translation>
    </message>
    <message>
        <source>What you type stays in its field, and on this computer.</source>
        <translation>Lo que escribe queda en su campo, y en este equipo.</translation>
    </message>
    <message>
        <source>So is what you choose; what springs back has to wait until then.</source>
        <translation>Lo que elige, también; lo que salta atrás tiene que esperar hasta entonces.</translation>
    </message>
    <message>
        <source>The server is back. Something typed is not accepted; it stays in its field.</source>
        <translation>El servidor ha vuelto. Algo de lo escrito no se acepta; queda en su campo.</translation>
    </message>
    <message>
        <source>Look it over.</source>
        <translation>Revíselo.</translation>
    </message>
    <message>
        <source>The server is back; what was typed meanwhile is saved.</source>
        <translation>El servidor ha vuelto; lo que se escribió entretanto está guardado.</translation>
    </message>
    <message>
        <source>What was chosen meanwhile is sent with its page.</source>
        <translation>Lo que se eligió entretanto se envía con su página.</translation>
    </message>
    <message>
        <source>On a Server</source>
        <translation>En un servidor</translation>
    </message>
    <message>
        <source>Connecting to the shop&apos;s server</source>
        <translation>Conectando con el servidor del taller</translation>
    </message>
    <message>
        <source>Stopped. No shop was opened.</source>
        <translation>Detenido. No se abrió ningún taller.</translation>
    </message>
    <message>
        <source>The password is kept in this system&apos;s keyring.</source>
        <translation>La contraseña está guardada en el llavero de este sistema.</translation>
    </message>
    <message>
        <source>This system has no keyring that can be used: the password is known till the program ends, and is asked for again then.</source>
        <translation>Este sistema no tiene un llavero que se pueda usar: la contraseña se conoce hasta que el programa termine, y entonces se pide de nuevo.</translation>
    </message>
    <message>
        <source>Open it</source>
        <translation>Abrirlo</translation>
    </message>
    <message>
        <source>Try again</source>
        <translation>Intentar de nuevo</translation>
    </message>
    <message>
        <source>Make a new shop there</source>
        <translation>Hacer allí un taller nuevo</translation>
    </message>
    <message>
        <source>Where several computers share one shop, its record is in a database of a PostgreSQL server. Whoever looks after that server gives you the address and a password.</source>
        <translation>Cuando varios equipos comparten un taller, su registro está en una base de datos de un servidor PostgreSQL. Quien cuida ese servidor le da la dirección y una contraseña.</translation>
    </message>
    <message>
        <source>Who you are there, the server, and the name of the database, as in tuuli@counter-server/benchwitness.</source>
        <translation>Quién es usted allí, el servidor y el nombre de la base de datos, como en tuuli@counter-server/benchwitness.</translation>
    </message>
    <message>
        <source>Kept in this system&apos;s keyring once the server has taken it, and in no file.</source>
        <translation>Se guarda en el llavero de este sistema en cuanto el servidor la acepta, y en ningún archivo.</translation>
    </message>
    <message>
        <source>Chosen when a shop is made. A shared folder must be reached by all its computers; for a shop that is there already it is asked for only where this computer does not know it yet.</source>
        <translation>Se elige cuando se hace un taller. A una carpeta compartida deben llegar todos sus equipos; para un taller que ya existe solo se pide si este equipo aún no la conoce.</translation>
    </message>
    <message>
        <source>Address</source>
        <translation>Dirección</translation>
    </message>
    <message>
        <source>Password</source>
        <translation>Contraseña</translation>
    </message>
    <message>
        <source>In the database</source>
        <translation>En la base de datos</translation>
    </message>
    <message>
        <source>In a shared folder</source>
        <translation>En una carpeta compartida</translation>
    </message>
    <message>
        <source>Where the photos lie</source>
        <translation>Dónde están las fotos</translation>
    </message>
    <message>
        <source>The shared folder of the photos</source>
        <translation>La carpeta compartida de las fotos</translation>
    </message>
    <message>
        <source>Choose the folder…</source>
        <translation>Elegir la carpeta…</translation>
    </message>
    <message>
        <source>The server is being asked: wait for what it says.</source>
        <translation>Se está preguntando al servidor: espere su respuesta.</translation>
    </message>
    <message>
        <source>A Shop on a Server</source>
        <translation>Un taller en un servidor</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>No address is said.</source>
        <translation>No se dice ninguna dirección.</translation>
    </message>
    <message>
        <source>No shared folder is named for the photos.</source>
        <translation>No se nombra ninguna carpeta compartida para las fotos.</translation>
    </message>
    <message>
        <source>Choose one.</source>
        <translation>Elija una.</translation>
    </message>
    <message>
        <source>copies the chosen rows of a table, with its headers</source>
        <translation>copia las filas elegidas de una tabla, con sus encabezados</translation>
    </message>
    <message>
        <source>Show only rows with …</source>
        <translation>Mostrar solo filas con …</translation>
    </message>
    <message>
        <source>Show only rows with these words: {table}</source>
        <translation>Mostrar solo filas con estas palabras: {table}</translation>
    </message>
    <message>
        <source>Show all rows</source>
        <translation>Mostrar todas</translation>
    </message>
    <message>
        <source>Show all rows: {table}</source>
        <translation>Mostrar todas las filas: {table}</translation>
    </message>
    <message>
        <source>▽  Rows shown: {shown:,} of {rows:,}, those with “{words}”.</source>
        <translation>▽  Filas que se muestran: {shown:,} de {rows:,}, las que llevan “{words}”.</translation>
    </message>
    <message>
        <source>The vehicle maker&apos;s procedure, local rules and licensed people come first.</source>
        <translation>El procedimiento del fabricante del vehículo, las normas locales y los profesionales autorizados van primero.</translation>
    </message>
    <message>
        <source>maker&apos;s procedure</source>
        <translation>procedimiento del fabricante</translation>
    </message>
    <message>
        <source>This program</source>
        <translation>Este programa</translation>
    </message>
    <message>
        <source>This shop lies in {folder}; its log is the file {log} there.</source>
        <translation>Este taller está en {folder}; el diario del programa es allí el archivo {log}.</translation>
    </message>
    <message>
        <source>Show the folder</source>
        <translation>Mostrar la carpeta</translation>
    </message>
    <message>
        <source>Libraries and their licences</source>
        <translation>Bibliotecas y sus licencias</translation>
    </message>
    <message>
        <source>Not Sent</source>
        <translation>Sin enviar</translation>
    </message>
    <message>
        <source>This was typed while the shop&apos;s server was away, and was not sent before the program ended. Nobody else has seen it. Copy each where it belongs.</source>
        <translation>Esto se escribió mientras el servidor del taller no estaba, y no se envió antes de que el programa terminara. Nadie más lo ha visto. Copie cada cosa a su sitio.</translation>
    </message>
    <message>
        <source>All of it is where it belongs</source>
        <translation>Todo está en su sitio</translation>
    </message>
    <message>
        <source>All of it is put away.</source>
        <translation>Todo está retirado.</translation>
    </message>
    <message>
        <source>Which shop?</source>
        <translation>¿Qué taller?</translation>
    </message>
    <message>
        <source>Open a shop…</source>
        <translation>Abrir un taller…</translation>
    </message>
    <message>
        <source>The folder with its record.</source>
        <translation>La carpeta con su registro.</translation>
    </message>
    <message>
        <source>Open a shop on a server…</source>
        <translation>Abrir un taller en un servidor…</translation>
    </message>
    <message>
        <source>Several computers share it; it can be made new there too.</source>
        <translation>Lo comparten varios equipos; también se puede hacer nuevo allí.</translation>
    </message>
    <message>
        <source>A shop that is damaged or gone comes back into a new folder.</source>
        <translation>Un taller dañado o perdido vuelve en una carpeta nueva.</translation>
    </message>
    <message>
        <source>Look at the demo shop</source>
        <translation>Ver el taller de muestra</translation>
    </message>
    <message>
        <source>An invented shop with two years of jobs; it is made in a minute or two and nothing of your own is touched.</source>
        <translation>Un taller inventado con dos años de trabajos; se hace en uno o dos minutos y no toca nada suyo.</translation>
    </message>
    <message>
        <source>Opened before</source>
        <translation>Abiertos antes</translation>
    </message>
    <message>
        <source>Open {folder}</source>
        <translation>Abrir {folder}</translation>
    </message>
    <message>
        <source>Take the demo shop away</source>
        <translation>Quitar el taller de muestra</translation>
    </message>
    <message>
        <source>Delete it: press once more</source>
        <translation>Borrarlo: pulse una vez más</translation>
    </message>
    <message>
        <source>Folder of a new shop</source>
        <translation>Carpeta de un taller nuevo</translation>
    </message>
    <message>
        <source>A new or an empty folder of this computer.</source>
        <translation>Una carpeta nueva o vacía de este equipo.</translation>
    </message>
    <message>
        <source>Make a new shop</source>
        <translation>Hacer un taller nuevo</translation>
    </message>
    <message>
        <source>Another folder…</source>
        <translation>Otra carpeta…</translation>
    </message>
    <message>
        <source>An empty folder for the new shop</source>
        <translation>Una carpeta vacía para el taller nuevo</translation>
    </message>
    <message>
        <source>Type the whole path of the folder.</source>
        <translation>Escriba la ruta completa de la carpeta.</translation>
    </message>
    <message>
        <source>The folder of the shop</source>
        <translation>La carpeta del taller</translation>
    </message>
    <message>
        <source>Where this shop is</source>
        <translation>Dónde está este taller</translation>
    </message>
    <message>
        <source>Try it</source>
        <translation>Probarla</translation>
    </message>
    <message>
        <source>Try the password</source>
        <translation>Probar la contraseña</translation>
    </message>
    <message>
        <source>The password that holds now</source>
        <translation>La contraseña que vale ahora</translation>
    </message>
    <message>
        <source>Another shop…</source>
        <translation>Otro taller…</translation>
    </message>
    <message>
        <source>Closes this one, and asks which; it can be made new there</source>
        <translation>Cierra este y pregunta cuál; allí también se puede crear uno nuevo</translation>
    </message>
    <message>
        <source>Looking where this shop is</source>
        <translation>Mirando dónde está este taller</translation>
    </message>
    <message>
        <source>Keeping the password</source>
        <translation>Guardando la contraseña</translation>
    </message>
    <message>
        <source>English</source>
        <extracomment>In another language its own name stands in the place of this one.</extracomment>
        <translation>Español</translation>
    </message>
    <message>
        <source>Keep what I typed</source>
        <translation>Dejar lo que tecleé</translation>
    </message>
    <message>
        <source>Keep what was written</source>
        <translation>Dejar lo escrito</translation>
    </message>
    <message>
        <source>Written at another desk meanwhile: {stands}. Typed here, not kept: “{typed}”.</source>
        <translation>Escrito entretanto en otro puesto: {stands}. Tecleado aquí, sin guardar: “{typed}”.</translation>
    </message>
    <message>
        <source>what the customer says, in the customer&apos;s own words: here a job begins</source>
        <translation>lo que cuenta el cliente, con sus propias palabras: aquí empieza un trabajo</translation>
    </message>
    <message>
        <source>the search: a few words of a symptom find the jobs that had it, and what helped</source>
        <translation>la búsqueda: unas palabras de un síntoma encuentran los trabajos que lo tuvieron y lo que sirvió</translation>
    </message>
    <message>
        <source>every job that left and whose promise has not ended</source>
        <translation>cada trabajo que salió y cuya promesa no ha terminado</translation>
    </message>
    <message>
        <source>the figures of a week, written to a spreadsheet</source>
        <translation>las cifras de una semana, escritas en una hoja de cálculo</translation>
    </message>
    <message>
        <source>what the shop measures with, and how finely each can see</source>
        <translation>con qué mide el taller, y con cuánta finura ve cada instrumento</translation>
    </message>
    <message>
        <source>Promise, or window</source>
        <translation>Promesa o plazo</translation>
    </message>
    <message>
        <source>how long a repair is watched after the hand-over: days, months, a distance, or both</source>
        <translation>cuánto tiempo se sigue una reparación tras la entrega: días, meses, una distancia o ambas cosas</translation>
    </message>
    <message>
        <source>Return</source>
        <translation>Vuelta</translation>
    </message>
    <message>
        <source>cars that came again, or of which that was told, for a person to judge</source>
        <translation>coches que volvieron, o de los que se contó que volvieron, para que alguien los juzgue</translation>
    </message>
    <message>
        <source>a later visit of the same car that may be for the same fault</source>
        <translation>una visita posterior del mismo coche que puede ser por la misma avería</translation>
    </message>
    <message>
        <source>Comeback</source>
        <translation>Retorno</translation>
    </message>
    <message>
        <source>a return that a person judged to be about the same fault or our work</source>
        <translation>una vuelta que una persona juzgó debida a la misma avería o a nuestro trabajo</translation>
    </message>
    <message>
        <source>Pair</source>
        <translation>Par</translation>
    </message>
    <message>
        <source>one part as it came off, beside the one that goes on</source>
        <translation>una pieza tal como se desmontó, junto a la que se monta</translation>
    </message>
    <message>
        <source>same, restored</source>
        <translation>igual, restablecido</translation>
    </message>
    <message>
        <source>no different by more than is allowed; different the way that wear is made good</source>
        <translation>sin más diferencia que la permitida; diferente en el sentido que corrige el desgaste</translation>
    </message>
    <message>
        <source>how far the reading can be off, 19 times of 20, by the tool and by the hand</source>
        <translation>cuánto puede desviarse la lectura, 19 veces de 20, por el instrumento y por la mano</translation>
    </message>
    <message>
        <source>too close for this tool</source>
        <translation>demasiado justo para este instrumento</translation>
    </message>
    <message>
        <source>the difference and its doubt lie on both sides of the limit</source>
        <translation>la diferencia y su duda quedan a ambos lados del límite</translation>
    </message>
    <message>
        <source>Unproven</source>
        <translation>Sin probar</translation>
    </message>
    <message>
        <source>the repair left without a test that would have shown the fault</source>
        <translation>la reparación salió sin una prueba que hubiera mostrado la avería</translation>
    </message>
    <message>
        <source>Too few to tell</source>
        <translation>Demasiado pocos para decirlo</translation>
    </message>
    <message>
        <source>so few jobs that luck alone could make the number</source>
        <translation>tan pocos trabajos que el azar solo podría dar la cifra</translation>
    </message>
    <message>
        <source>Open {file}</source>
        <translation>Abrir {file}</translation>
    </message>
    <message>
        <source>It was moved or taken away; write it again.</source>
        <translation>Se movió o se quitó; escríbalo de nuevo.</translation>
    </message>
    <message>
        <source>{file} is not there.</source>
        <translation>{file} no está ahí.</translation>
    </message>
    <message>
        <source>Open it with a program that you choose.</source>
        <translation>Ábralo con un programa que usted elija.</translation>
    </message>
    <message>
        <source>This computer names no program for {file}.</source>
        <translation>Este equipo no tiene ningún programa asignado para {file}.</translation>
    </message>
    <message>
        <source>Go to {name}</source>
        <translation>Ir a {name}</translation>
    </message>
    <message>
        <source>Go to {name} (Ctrl+{number})</source>
        <translation>Ir a {name} (Ctrl+{number})</translation>
    </message>
    <message>
        <source>Looking over what was half typed</source>
        <translation>Repasando lo que quedó a medio escribir</translation>
    </message>
    <message>
        <source>to the top</source>
        <translation>al principio</translation>
    </message>
    <message>
        <source>to the end</source>
        <translation>al final</translation>
    </message>
</context>
</TS>
