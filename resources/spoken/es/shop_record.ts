<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es">
<context>
    <name></name>
    <message>
        <source>empty</source>
        <translation>vacío</translation>
    </message>
    <message>
        <source>history {number}, {begins}</source>
        <translation>historial {number}, {begins}</translation>
    </message>
    <message>
        <source>it has no entry {number} any more, which was printed as {begins}</source>
        <translation>ya no tiene el asiento {number}, que se imprimió como {begins}</translation>
    </message>
    <message>
        <source>entry {number} (“{words}”, {at}) was printed as {begins}, but its hash begins with {hash}: it was written anew since</source>
        <translation>el asiento {number} (“{words}”, {at}) se imprimió como {begins}, pero su hash empieza por {hash}: desde entonces se escribió de nuevo</translation>
    </message>
    <message>
        <source>the history</source>
        <translation>el historial</translation>
    </message>
    <message>
        <source>It does not match what was printed: {what}.</source>
        <translation>No coincide con lo que se imprimió: {what}.</translation>
    </message>
    <message>
        <source>Bring back a backup from before, into a new folder, and compare the two.</source>
        <translation>Recupere en una carpeta nueva una copia de seguridad anterior y compare las dos.</translation>
    </message>
    <message>
        <source>Writing the backup</source>
        <translation>Escribiendo la copia de seguridad</translation>
    </message>
    <message>
        <source>Holding the backup against its checksums</source>
        <translation>Cotejando la copia de seguridad con sus sumas de comprobación</translation>
    </message>
    <message>
        <source>The backup {file}</source>
        <translation>La copia de seguridad {file}</translation>
    </message>
    <message>
        <source>The backup was not made: {why}.</source>
        <translation>No se hizo la copia de seguridad: {why}.</translation>
    </message>
    <message>
        <source>Try again.</source>
        <translation>Inténtelo de nuevo.</translation>
    </message>
    <message>
        <source>The backup was not made: its disk does not give back what was written to it.</source>
        <translation>No se hizo la copia de seguridad: su disco no devuelve lo que se escribió en él.</translation>
    </message>
    <message>
        <source>Nothing half done was left; the shop is as it was.</source>
        <translation>No quedó nada a medio hacer; el taller está como estaba.</translation>
    </message>
    <message>
        <source>Use another disk, and have this one looked at.</source>
        <translation>Use otro disco y haga revisar este.</translation>
    </message>
    <message>
        <source>There is no folder {folder}.</source>
        <translation>No existe la carpeta {folder}.</translation>
    </message>
    <message>
        <source>Name a file in one that is there.</source>
        <translation>Nombre un archivo en una que exista.</translation>
    </message>
    <message>
        <source>{file} is there already.</source>
        <translation>{file} ya existe.</translation>
    </message>
    <message>
        <source>It was left as it is.</source>
        <translation>Se dejó como está.</translation>
    </message>
    <message>
        <source>Name a new file.</source>
        <translation>Nombre un archivo nuevo.</translation>
    </message>
    <message>
        <source>{name} in it is not as it was written.</source>
        <translation>{name}, que está en ella, no está como se escribió.</translation>
    </message>
    <message>
        <source>Put it aside, and make a new backup with “benchwitness backup FILE”.</source>
        <translation>Apártela y haga una copia nueva con “benchwitness backup FILE”.</translation>
    </message>
    <message>
        <source>the backup {folder}</source>
        <translation>la copia de seguridad {folder}</translation>
    </message>
    <message>
        <source>It was cut or written anew after the backup {folder}: entry {entry} is another one.</source>
        <translation>Se recortó o se escribió de nuevo después de la copia de seguridad {folder}: el asiento {entry} es otro.</translation>
    </message>
    <message>
        <source>It was cut or written anew after the backup {folder}: entry {entry} is missing.</source>
        <translation>Se recortó o se escribió de nuevo después de la copia de seguridad {folder}: falta el asiento {entry}.</translation>
    </message>
    <message>
        <source>Bring that backup back into a new folder and compare the two.</source>
        <translation>Recupere esa copia en una carpeta nueva y compare las dos.</translation>
    </message>
    <message>
        <source>Take another backup; this one was left as it is.</source>
        <translation>Tome otra copia de seguridad; esta se dejó como está.</translation>
    </message>
    <message>
        <source>The backup is not used: {what}.</source>
        <translation>La copia de seguridad no se usa: {what}.</translation>
    </message>
    <message>
        <source>Nothing was changed.</source>
        <translation>No se cambió nada.</translation>
    </message>
    <message>
        <source>its member {member} leads out of the shop&apos;s folder</source>
        <translation>su elemento {member} lleva fuera de la carpeta del taller</translation>
    </message>
    <message>
        <source>it holds {member}, which no backup has</source>
        <translation>contiene {member}, que no está en ninguna copia de seguridad</translation>
    </message>
    <message>
        <source>{manifest} can&apos;t be read</source>
        <translation>{manifest} no se puede leer</translation>
    </message>
    <message>
        <source>it was written by a newer program, or is no backup (form {form}, this one knows {known})</source>
        <translation>la escribió un programa más nuevo, o no es una copia de seguridad (forma {form}; este conoce la {known})</translation>
    </message>
    <message>
        <source>{manifest} says “{value}” for {name}</source>
        <translation>{manifest} dice “{value}” en {name}</translation>
    </message>
    <message>
        <source>{manifest} lists no members, or more than {most:,}</source>
        <translation>{manifest} no enumera elementos, o más de {most:,}</translation>
    </message>
    <message>
        <source>{manifest} lists a member twice</source>
        <translation>{manifest} enumera un elemento dos veces</translation>
    </message>
    <message>
        <source>{record} is not among its members</source>
        <translation>{record} no está entre sus elementos</translation>
    </message>
    <message>
        <source>{manifest} lists a member that it doesn&apos;t describe</source>
        <translation>{manifest} enumera un elemento que no describe</translation>
    </message>
    <message>
        <source>{manifest} lists “{name}”</source>
        <translation>{manifest} enumera “{name}”</translation>
    </message>
    <message>
        <source>{manifest} says no SHA-256 for {name}</source>
        <translation>{manifest} no dice el SHA-256 de {name}</translation>
    </message>
    <message>
        <source>{manifest} says another SHA-256 for {name} than its name</source>
        <translation>{manifest} dice de {name} otro SHA-256 que el de su nombre</translation>
    </message>
    <message>
        <source>{manifest} says “{size}” for the size of {name}</source>
        <translation>{manifest} dice “{size}” como tamaño de {name}</translation>
    </message>
    <message>
        <source>{manifest} doesn&apos;t say which photos were missing</source>
        <translation>{manifest} no dice qué fotos faltaban</translation>
    </message>
    <message>
        <source>{manifest} names a missing photo by no SHA-256</source>
        <translation>{manifest} nombra una foto que falta sin su SHA-256</translation>
    </message>
    <message>
        <source>There is no backup {place}.</source>
        <translation>No existe la copia de seguridad {place}.</translation>
    </message>
    <message>
        <source>Accepted: a file that “backup” wrote.</source>
        <translation>Se acepta: un archivo que escribió “backup”.</translation>
    </message>
    <message>
        <source>{what} cannot be read: {error}.</source>
        <translation>No se puede leer {what}: {error}.</translation>
    </message>
    <message>
        <source>Look at its disk.</source>
        <translation>Revise su disco.</translation>
    </message>
    <message>
        <source>what stands in it can&apos;t be read ({error})</source>
        <translation>no se puede leer lo que contiene ({error})</translation>
    </message>
    <message>
        <source>{manifest} is longer than that of any backup</source>
        <translation>{manifest} es más largo que el de cualquier copia de seguridad</translation>
    </message>
    <message>
        <source>{manifest} is not as it was written (its checksum differs)</source>
        <translation>{manifest} no está como se escribió (su suma de comprobación difiere)</translation>
    </message>
    <message>
        <source>{name} is missing from it</source>
        <translation>le falta {name}</translation>
    </message>
    <message>
        <source>it holds {name}, which {manifest} doesn&apos;t list</source>
        <translation>contiene {name}, que {manifest} no enumera</translation>
    </message>
    <message>
        <source>{name} has another size than {manifest} says</source>
        <translation>{name} tiene otro tamaño que el que dice {manifest}</translation>
    </message>
    <message>
        <source>{folder} has no {manifest}; it was not finished, or is no backup</source>
        <translation>{folder} no tiene {manifest}; no se terminó, o no es una copia de seguridad</translation>
    </message>
    <message>
        <source>{name} in the backup</source>
        <translation>{name} de la copia de seguridad</translation>
    </message>
    <message>
        <source>{name} is not as it was written (its checksum differs)</source>
        <translation>{name} no está como se escribió (su suma de comprobación difiere)</translation>
    </message>
    <message>
        <source>The shop&apos;s record is damaged: {what}.</source>
        <translation>El registro del taller está dañado: {what}.</translation>
    </message>
    <message>
        <source>No backup was made of it; those that were made before stay.</source>
        <translation>No se hizo copia de él; quedan las que se hicieron antes.</translation>
    </message>
    <message>
        <source>See what “benchwitness check” says, and go back to your last good backup.</source>
        <translation>Mire lo que dice “benchwitness check” y vuelva a su última copia de seguridad buena.</translation>
    </message>
    <message>
        <source>{path} can&apos;t be taken into a backup.</source>
        <translation>{path} no se puede incluir en una copia de seguridad.</translation>
    </message>
    <message>
        <source>No backup was made.</source>
        <translation>No se hizo ninguna copia de seguridad.</translation>
    </message>
    <message>
        <source>Give it a name of letters, figures, “-” and “_”, and at most 1 MB.</source>
        <translation>Dele un nombre de letras, cifras, “-” y “_”, y como mucho 1 MB.</translation>
    </message>
    <message>
        <source>its record is another one than its manifest says</source>
        <translation>su registro es otro que el que dice su manifiesto</translation>
    </message>
    <message>
        <source>a photo that the record names is not in it ({sha256})</source>
        <translation>no contiene una foto que el registro nombra ({sha256})</translation>
    </message>
    <message>
        <source>{what} was not written: {error}.</source>
        <translation>{what}: no se pudo escribir ({error}).</translation>
    </message>
    <message>
        <source>Make room, look at the disk, or name another place.</source>
        <translation>Haga sitio, revise el disco o nombre otro lugar.</translation>
    </message>
    <message>
        <source>Another window is backing the shop up.</source>
        <translation>Otra ventana está haciendo la copia de seguridad del taller.</translation>
    </message>
    <message>
        <source>Waiting for another window, which is backing the shop up</source>
        <translation>Esperando a otra ventana, que está haciendo la copia de seguridad del taller</translation>
    </message>
    <message>
        <source>its end is missing; it was cut short or is no backup of this program</source>
        <translation>le falta el final; está cortada o no es una copia de seguridad de este programa</translation>
    </message>
    <message>
        <source>its contents are longer than those of any backup</source>
        <translation>su índice es más largo que el de cualquier copia de seguridad</translation>
    </message>
    <message>
        <source>it was changed or damaged after it was written (its seal is broken)</source>
        <translation>se cambió o se dañó después de escribirse (su sello está roto)</translation>
    </message>
    <message>
        <source>its members do not lie one behind the other</source>
        <translation>sus elementos no están uno detrás de otro</translation>
    </message>
    <message>
        <source>a member of it has no beginning</source>
        <translation>uno de sus elementos no tiene comienzo</translation>
    </message>
    <message>
        <source>it holds {name} twice</source>
        <translation>contiene {name} dos veces</translation>
    </message>
    <message>
        <source>{name} is a link and no file</source>
        <translation>{name} es un enlace y no un archivo</translation>
    </message>
    <message>
        <source>{name} is locked with a password</source>
        <translation>{name} está protegido con una contraseña</translation>
    </message>
    <message>
        <source>{name} is packed, as no backup&apos;s member is</source>
        <translation>{name} está comprimido, como no lo está ningún elemento de una copia de seguridad</translation>
    </message>
    <message>
        <source>{manifest} is missing from it</source>
        <translation>le falta {manifest}</translation>
    </message>
    <message>
        <source>it holds more than {most:,} files</source>
        <translation>contiene más de {most:,} archivos</translation>
    </message>
    <message>
        <source>{minute} (still to come by this computer&apos;s clock)</source>
        <translation>{minute} (aún por venir según el reloj de este equipo)</translation>
    </message>
    <message>
        <source>Read again and found whole when it was made, {made}.</source>
        <translation>Leída de nuevo y hallada íntegra al hacerse, {made}.</translation>
    </message>
    <message>
        <source>Read again and found whole when it was made, {made}; brought back on trial and whole on {tried}.</source>
        <translation>Leída de nuevo y hallada íntegra al hacerse, {made}; recuperada como ensayo e íntegra el {tried}.</translation>
    </message>
    <message>
        <source>Holds {holds}.</source>
        <translation>Contiene {holds}.</translation>
    </message>
    <message>
        <source>It lies in {place}.</source>
        <translation>Está en {place}.</translation>
    </message>
    <message>
        <source>⚠ Gone or damaged in the shop already: {photos}.</source>
        <translation>⚠ Faltaban o estaban dañadas ya en el taller: {photos}.</translation>
    </message>
    <message>
        <source>{jobs:,} jobs</source>
        <translation>{jobs:,} trabajos</translation>
    </message>
    <message>
        <source>{photos:,} photos</source>
        <translation>{photos:,} fotos</translation>
    </message>
    <message>
        <source>1 photo</source>
        <translation>1 foto</translation>
    </message>
    <message>
        <source>1 job</source>
        <translation>1 trabajo</translation>
    </message>
    <message>
        <source>1 entry of the history</source>
        <translation>1 asiento del historial</translation>
    </message>
    <message>
        <source>{entries:,} entries of the history</source>
        <translation>{entries:,} asientos del historial</translation>
    </message>
    <message>
        <source>1 row</source>
        <translation>1 fila</translation>
    </message>
    <message>
        <source>{rows:,} rows</source>
        <translation>{rows:,} filas</translation>
    </message>
    <message>
        <source>the last of {minute}</source>
        <translation>el último de {minute}</translation>
    </message>
    <message>
        <source>Plug the second disk in, or use “Back up now” under Records In and Out.</source>
        <translation>Conecte el segundo disco, o use “Hacer una copia ahora” en Entrada y salida.</translation>
    </message>
    <message>
        <source>One is dated {ahead:%Y-%m-%d %H:%M}, which is still to come, and lacks what was done since.</source>
        <translation>Hay una con fecha {ahead:%Y-%m-%d %H:%M}, que está aún por venir, y le falta lo hecho desde entonces.</translation>
    </message>
    <message>
        <source>Is this computer&apos;s clock right?</source>
        <translation>¿Va bien el reloj de este equipo?</translation>
    </message>
    <message>
        <source>There is no backup of this shop.</source>
        <translation>No hay ninguna copia de seguridad de este taller.</translation>
    </message>
    <message>
        <source>There is no backup in {folder}.</source>
        <translation>No hay ninguna copia de seguridad en {folder}.</translation>
    </message>
    <message>
        <source>The last good backup of this shop is {days} days old.</source>
        <translation>La última copia de seguridad buena de este taller tiene {days} días.</translation>
    </message>
    <message>
        <source>The last good backup in {folder} is {days} days old.</source>
        <translation>La última copia de seguridad buena en {folder} tiene {days} días.</translation>
    </message>
    <message>
        <source>The second backup folder {second} lies on the same disk as the shop: one broken disk takes both.</source>
        <translation>La segunda carpeta de copias {second} está en el mismo disco que el taller: un solo disco roto se lleva las dos cosas.</translation>
    </message>
    <message>
        <source>Name a folder on another disk under House Rules, or plug that disk in.</source>
        <translation>Nombre una carpeta de otro disco en Normas de la casa, o conecte ese disco.</translation>
    </message>
    <message>
        <source>The backup in {base}</source>
        <translation>La copia de seguridad en {base}</translation>
    </message>
    <message>
        <source>before {what}</source>
        <translation>antes de {what}</translation>
    </message>
    <message>
        <source>This can&apos;t be undone: something of what it added was changed since ({table}).</source>
        <translation>No se puede deshacer: algo de lo que añadió se cambió después ({table}).</translation>
    </message>
    <message>
        <source>Undo the later changes first, or change by hand what is wrong.</source>
        <translation>Deshaga primero los cambios posteriores, o cambie a mano lo que esté mal.</translation>
    </message>
    <message>
        <source>This can&apos;t be brought back: something else stands there by now ({table}).</source>
        <translation>No se puede rehacer: ahora hay otra cosa en su lugar ({table}).</translation>
    </message>
    <message>
        <source>Looking at the database</source>
        <translation>Mirando la base de datos</translation>
    </message>
    <message>
        <source>The end of its file is missing.</source>
        <translation>Falta el final de su archivo.</translation>
    </message>
    <message>
        <source>This computer&apos;s clock says {day}, but the last entry of the shop&apos;s record was written on {last}.</source>
        <translation>El reloj de este equipo dice {day}, pero el último asiento del registro del taller se escribió el {last}.</translation>
    </message>
    <message>
        <source>Set the clock right: days, windows and hand-overs are counted from it.</source>
        <translation>Ponga el reloj en hora: de él se cuentan los días, los plazos y las entregas.</translation>
    </message>
    <message>
        <source>That entry ({table} {row_id}) is no longer there.</source>
        <translation>Ese dato ({table} {row_id}) ya no está.</translation>
    </message>
    <message>
        <source>It was taken out at another desk or undone; look at the page again.</source>
        <translation>Se quitó en otro puesto o se deshizo; mire la página de nuevo.</translation>
    </message>
    <message>
        <source>{path} is already there.</source>
        <translation>{path} ya existe.</translation>
    </message>
    <message>
        <source>Choose another folder or open this shop.</source>
        <translation>Elija otra carpeta o abra este taller.</translation>
    </message>
    <message>
        <source>{path} cannot be written: {error}.</source>
        <translation>No se puede escribir {path}: {error}.</translation>
    </message>
    <message>
        <source>Make room, or choose a folder where you may write.</source>
        <translation>Haga sitio o elija una carpeta donde pueda escribir.</translation>
    </message>
    <message>
        <source>The database did not accept {name} = {wanted} (it says {found}).</source>
        <translation>La base de datos no aceptó {name} = {wanted} (dice {found}).</translation>
    </message>
    <message>
        <source>Move the shop&apos;s folder to a disk of this computer and open it again.</source>
        <translation>Traslade la carpeta del taller a un disco de este equipo y ábralo de nuevo.</translation>
    </message>
    <message>
        <source>What you typed is still in its field; nothing was saved.</source>
        <translation>Lo que escribió sigue en su campo; no se guardó nada.</translation>
    </message>
    <message>
        <source>“{under_way}” is under way.</source>
        <translation>“{under_way}” está en curso.</translation>
    </message>
    <message>
        <source>Try again when it is done.</source>
        <translation>Inténtelo de nuevo cuando termine.</translation>
    </message>
    <message>
        <source>The shop&apos;s record is busy in another program.</source>
        <translation>El registro del taller está ocupado en otro programa.</translation>
    </message>
    <message>
        <source>The disk is full.</source>
        <translation>El disco está lleno.</translation>
    </message>
    <message>
        <source>Free some space and try again.</source>
        <translation>Libere espacio e inténtelo de nuevo.</translation>
    </message>
    <message>
        <source>The shop&apos;s folder can be read but not written.</source>
        <translation>La carpeta del taller se puede leer, pero no escribir.</translation>
    </message>
    <message>
        <source>Ask for the right to write.</source>
        <translation>Pida permiso de escritura.</translation>
    </message>
    <message>
        <source>What this belongs to is no longer there.</source>
        <translation>Aquello a lo que esto pertenece ya no está.</translation>
    </message>
    <message>
        <source>It was taken out or undone; look at the page again.</source>
        <translation>Se quitó o se deshizo; mire la página de nuevo.</translation>
    </message>
    <message>
        <source>The shop&apos;s record cannot be opened.</source>
        <translation>No se puede abrir el registro del taller.</translation>
    </message>
    <message>
        <source>Is its folder still there?</source>
        <translation>¿Sigue ahí su carpeta?</translation>
    </message>
    <message>
        <source>The shop&apos;s folder is not where it was when it was opened.</source>
        <translation>La carpeta del taller no está donde estaba cuando se abrió.</translation>
    </message>
    <message>
        <source>Put it back, or the disk or stick that it is on.</source>
        <translation>Vuelva a ponerla en su sitio, o el disco o la memoria donde está.</translation>
    </message>
    <message>
        <source>The shop&apos;s record is damaged or its disk fails.</source>
        <translation>El registro del taller está dañado o su disco falla.</translation>
    </message>
    <message>
        <source>The file was left as it is.</source>
        <translation>El archivo se dejó como está.</translation>
    </message>
    <message>
        <source>Put your last good copy of shop.sqlite in its place.</source>
        <translation>Ponga en su lugar su última copia buena de shop.sqlite.</translation>
    </message>
    <message>
        <source>{table} row {row} points to a row of {other} that is missing</source>
        <translation>la fila {row} de {table} remite a una fila de {other} que falta</translation>
    </message>
    <message>
        <source>A shop on a server needs the driver of its database, which is not installed here.</source>
        <translation>Un taller en un servidor necesita el controlador de su base de datos, que aquí no está instalado.</translation>
    </message>
    <message>
        <source>Install it in the folder of the program: .venv/bin/pip install &quot;.[postgres]&quot;</source>
        <translation>Instálelo en la carpeta del programa: .venv/bin/pip install &quot;.[postgres]&quot;</translation>
    </message>
    <message>
        <source>Somebody else is writing into the shop&apos;s record.</source>
        <translation>Otra persona está escribiendo en el registro del taller.</translation>
    </message>
    <message>
        <source>The server&apos;s disk is full.</source>
        <translation>El disco del servidor está lleno.</translation>
    </message>
    <message>
        <source>Make room on it and try again.</source>
        <translation>Haga sitio en él e inténtelo de nuevo.</translation>
    </message>
    <message>
        <source>You may look at this shop&apos;s record but not change it.</source>
        <translation>Puede mirar el registro de este taller, pero no cambiarlo.</translation>
    </message>
    <message>
        <source>Ask the shop&apos;s owner for the right to work in it.</source>
        <translation>Pida al dueño del taller permiso para trabajar en él.</translation>
    </message>
    <message>
        <source>The server broke this off.</source>
        <translation>El servidor interrumpió esto.</translation>
    </message>
    <message>
        <source>A number is larger than the record can hold.</source>
        <translation>Un número es mayor de lo que cabe en el registro.</translation>
    </message>
    <message>
        <source>Look it over.</source>
        <translation>Revíselo.</translation>
    </message>
    <message>
        <source>The server says that the shop&apos;s database is damaged.</source>
        <translation>El servidor dice que la base de datos del taller está dañada.</translation>
    </message>
    <message>
        <source>Whoever looks after the server should look at its disk; your backups are whole shops.</source>
        <translation>Quien cuida el servidor debería revisar su disco; sus copias de seguridad son talleres enteros.</translation>
    </message>
    <message>
        <source>the rule {name} of {table} is not held any more</source>
        <translation>la regla {name} de {table} ya no se cumple</translation>
    </message>
    <message>
        <source>{failures} pages of the server did not have their checksum</source>
        <translation>{failures} páginas del servidor no tenían su suma de comprobación</translation>
    </message>
    <message>
        <source>The shop&apos;s record is damaged.</source>
        <translation>El registro del taller está dañado.</translation>
    </message>
    <message>
        <source>No backup was made of it.</source>
        <translation>No se hizo copia de él.</translation>
    </message>
    <message>
        <source>Go back to your last good backup.</source>
        <translation>Vuelva a su última copia de seguridad buena.</translation>
    </message>
    <message>
        <source>The record could not be copied: {error}.</source>
        <translation>No se pudo copiar el registro: {error}.</translation>
    </message>
    <message>
        <source>Try again later.</source>
        <translation>Inténtelo más tarde.</translation>
    </message>
    <message>
        <source>it is not a shop&apos;s record</source>
        <translation>no es el registro de un taller</translation>
    </message>
    <message>
        <source>its pages are damaged</source>
        <translation>sus páginas están dañadas</translation>
    </message>
    <message>
        <source>it brings commands of its own along (“{name}”)</source>
        <translation>trae órdenes propias (“{name}”)</translation>
    </message>
    <message>
        <source>a row of {table} points to a row of {other} that is missing</source>
        <translation>una fila de {table} remite a una fila de {other} que falta</translation>
    </message>
    <message>
        <source>Entry {seq} of the history is missing or was changed after it was written.</source>
        <translation>El asiento {seq} del historial falta o se cambió después de escribirse.</translation>
    </message>
    <message>
        <source>No sealed copy was made.</source>
        <translation>No se hizo ninguna copia sellada.</translation>
    </message>
    <message>
        <source>its file is gone</source>
        <translation>su archivo ya no está</translation>
    </message>
    <message>
        <source>the end of its file is missing</source>
        <translation>falta el final de su archivo</translation>
    </message>
    <message>
        <source>The shop&apos;s record is damaged ({what}).</source>
        <translation>El registro del taller está dañado ({what}).</translation>
    </message>
    <message>
        <source>What can still be read is shown; nothing is written into it any more.</source>
        <translation>Se muestra lo que aún se puede leer; ya no se escribe nada en él.</translation>
    </message>
    <message>
        <source>shop.sqlite is write-protected</source>
        <translation>shop.sqlite está protegido contra escritura</translation>
    </message>
    <message>
        <source>The shop&apos;s folder {folder} can be read but not written ({why}).</source>
        <translation>La carpeta del taller {folder} se puede leer, pero no escribir ({why}).</translation>
    </message>
    <message>
        <source>Everything can be looked at; nothing can be saved.</source>
        <translation>Todo se puede mirar; no se puede guardar nada.</translation>
    </message>
    <message>
        <source>Ask for the right to write, or look at the disk, and open the shop again.</source>
        <translation>Pida permiso de escritura, o revise el disco, y abra el taller de nuevo.</translation>
    </message>
    <message>
        <source>This can&apos;t be undone: {who} has changed it since ({words}).</source>
        <translation>No se puede deshacer: {who} lo cambió después ({words}).</translation>
    </message>
    <message>
        <source>Change the value by hand if it is wrong.</source>
        <translation>Cambie el valor a mano si está mal.</translation>
    </message>
    <message>
        <source>someone</source>
        <translation>alguien</translation>
    </message>
    <message>
        <source>outside the program</source>
        <translation>fuera del programa</translation>
    </message>
    <message>
        <source>history entries {first} to {last} are missing</source>
        <translation>faltan los asientos {first} a {last} del historial</translation>
    </message>
    <message>
        <source>history entry {seq} (“{words}”) was changed after it was written</source>
        <translation>el asiento {seq} del historial (“{words}”) se cambió después de escribirse</translation>
    </message>
    <message>
        <source>Our shop</source>
        <translation>Nuestro taller</translation>
    </message>
    <message>
        <source>The name printed on sheets and reports.</source>
        <translation>El nombre impreso en hojas e informes.</translation>
    </message>
    <message>
        <source>How lengths are shown and read; what is kept is always mm.</source>
        <translation>Cómo se muestran y se leen las longitudes; lo que se guarda son siempre mm.</translation>
    </message>
    <message>
        <source>How distances are shown and read.</source>
        <translation>Cómo se muestran y se leen las distancias.</translation>
    </message>
    <message>
        <source>The shop&apos;s promise in days after hand-over; 0 is no limit in time.</source>
        <translation>La promesa del taller en días desde la entrega; 0 es sin límite de tiempo.</translation>
    </message>
    <message>
        <source>The calendar months that the promise&apos;s days come from; 0 where it is said in days.</source>
        <translation>Los meses de calendario de los que salen los días de la promesa; 0 si se dice en días.</translation>
    </message>
    <message>
        <source>The shop&apos;s promise in miles after hand-over; 0 is no limit in distance.</source>
        <translation>La promesa del taller en millas desde la entrega; 0 es sin límite de distancia.</translation>
    </message>
    <message>
        <source>“first”: the window ends with whichever ends first; “both”: when both have ended.</source>
        <translation>“lo primero” (first): el plazo termina con lo que termine antes; “ambos” (both): cuando los dos han terminado.</translation>
    </message>
    <message>
        <source>“yes”: the window of a job ends when the vehicle is sold; “no”: it goes with the vehicle.</source>
        <translation>“sí” (yes): el plazo de un trabajo termina cuando el vehículo se vende; “no”: va con el vehículo.</translation>
    </message>
    <message>
        <source>The early window in days.</source>
        <translation>El plazo temprano en días.</translation>
    </message>
    <message>
        <source>The early window in miles.</source>
        <translation>El plazo temprano en millas.</translation>
    </message>
    <message>
        <source>The long window in days.</source>
        <translation>El plazo largo en días.</translation>
    </message>
    <message>
        <source>The long window in miles.</source>
        <translation>El plazo largo en millas.</translation>
    </message>
    <message>
        <source>So many days after hand-over the customer is to be asked, where a fault came now and then and was not proved; common practice, no source.</source>
        <translation>Tantos días después de la entrega hay que preguntar al cliente, si una avería venía solo a veces y no se probó; práctica común, sin fuente.</translation>
    </message>
    <message>
        <source>How sure a verdict on a measured dimension must be, in percent; less sure is “too close to tell”.</source>
        <translation>La certeza que debe tener el veredicto sobre una dimensión medida, en tanto por ciento; con menos es “demasiado justo para decidir”.</translation>
    </message>
    <message>
        <source>What an hour of work costs the shop, for the cost of a return.</source>
        <translation>Lo que cuesta al taller una hora de trabajo, para el coste de un retorno.</translation>
    </message>
    <message>
        <source>“yes”: the weekly book&apos;s sheet People says names (the owner&apos;s copy); “no”: it says A, B.</source>
        <translation>“sí” (yes): la hoja Personas del libro semanal dice nombres (el ejemplar del dueño); “no”: dice A, B.</translation>
    </message>
    <message>
        <source>A folder on another disk, such as a stick, that gets a backup a day too, whenever it is plugged in; “none”: the shop&apos;s own folder alone has them.</source>
        <translation>Una carpeta de otro disco, como una memoria USB, que recibe también una copia al día cada vez que se conecta; “none”: solo las tiene la carpeta del propio taller.</translation>
    </message>
    <message>
        <source>After so many days without a good backup the window says so.</source>
        <translation>Tras tantos días sin una copia de seguridad buena, la ventana lo dice.</translation>
    </message>
    <message>
        <source>The sign before an amount of money.</source>
        <translation>El signo delante de una cantidad de dinero.</translation>
    </message>
    <message>
        <source>The paper of printed sheets.</source>
        <translation>El papel de las hojas impresas.</translation>
    </message>
    <message>
        <source>Light or dark window, or one of high contrast.</source>
        <translation>Ventana clara u oscura, o de alto contraste.</translation>
    </message>
    <message>
        <source>The size of the window&apos;s text in points.</source>
        <translation>El tamaño del texto de la ventana en puntos.</translation>
    </message>
    <message>
        <source>a house rule</source>
        <translation>una norma de la casa</translation>
    </message>
    <message>
        <source>Change the house rule “{words}”</source>
        <translation>Cambiar la norma de la casa “{words}”</translation>
    </message>
    <message>
        <source>A window without any limit never ends.</source>
        <translation>Un plazo sin ningún límite no termina nunca.</translation>
    </message>
    <message>
        <source>Say days, months or miles.</source>
        <translation>Diga días, meses o millas.</translation>
    </message>
    <message>
        <source>{months} months and {days} days are two promises.</source>
        <translation>{months} meses y {days} días son dos promesas.</translation>
    </message>
    <message>
        <source>Say the shop&apos;s promise as a whole.</source>
        <translation>Diga entera la promesa del taller.</translation>
    </message>
    <message>
        <source>There is no house rule “{name}”.</source>
        <translation>No hay ninguna norma de la casa “{name}”.</translation>
    </message>
    <message>
        <source> or </source>
        <translation> o </translation>
    </message>
    <message>
        <source>“{value}” is not accepted for {words}.</source>
        <translation>“{value}” no se acepta en “{words}”.</translation>
    </message>
    <message>
        <source>Accepted: {accepted}.</source>
        <translation>Se acepta: {accepted}.</translation>
    </message>
    <message>
        <source>The {words} holds a sign that no text can.</source>
        <translation>“{words}” contiene un signo que no cabe en ningún texto.</translation>
    </message>
    <message>
        <source>Type it again.</source>
        <translation>Escríbalo de nuevo.</translation>
    </message>
    <message>
        <source>The {words} needs 1 to 200 characters.</source>
        <translation>“{words}” necesita de 1 a 200 caracteres.</translation>
    </message>
    <message>
        <source>Accepted: the whole path of a folder, or “{none}”.</source>
        <translation>Se acepta: la ruta entera de una carpeta, o “{none}”.</translation>
    </message>
    <message>
        <source>Accepted: a whole number, {low} to {high}.</source>
        <translation>Se acepta: un número entero, de {low} a {high}.</translation>
    </message>
    <message>
        <source>a day</source>
        <translation>un día</translation>
    </message>
    <message>
        <source>a moment</source>
        <translation>un momento</translation>
    </message>
    <message>
        <source>{table} row {row}, job {number}</source>
        <translation>fila {row} de {table}, trabajo {number}</translation>
    </message>
    <message>
        <source>{table} row {row}</source>
        <translation>fila {row} de {table}</translation>
    </message>
    <message>
        <source>The shop&apos;s record holds “{shown}” where {wanted} should be{where}: it was changed from outside.</source>
        <translation>El registro del taller contiene “{shown}” donde debería haber {wanted}{where}: se cambió desde fuera.</translation>
    </message>
    <message>
        <source>Your last good backup is of {moment:%Y-%m-%d %H:%M}, with {entries}. “benchwitness restore {folder} NEWFOLDER” brings it back into a new folder; leave this one as it is.</source>
        <translation>Su última copia de seguridad buena es de {moment:%Y-%m-%d %H:%M}, con {entries}. “benchwitness restore {folder} NEWFOLDER” la recupera en una carpeta nueva; deje esta como está.</translation>
    </message>
    <message>
        <source>From there “benchwitness move-shop” carries it onto a server.</source>
        <translation>Desde allí, “benchwitness move-shop” la lleva a un servidor.</translation>
    </message>
    <message>
        <source>Bring a backup back with “benchwitness restore FILE NEWFOLDER”, if you have one.</source>
        <translation>Recupere una copia de seguridad con “benchwitness restore FILE NEWFOLDER”, si tiene una.</translation>
    </message>
    <message>
        <source>copies beside the record</source>
        <translation>copias junto al registro</translation>
    </message>
    <message>
        <source>was left half written when the program or the computer stopped</source>
        <translation>quedó a medio escribir cuando se detuvo el programa o el equipo</translation>
    </message>
    <message>
        <source>is no photo that this program has put there</source>
        <translation>no es ninguna foto que este programa haya puesto ahí</translation>
    </message>
    <message>
        <source>belongs to no job, and the history has never named it</source>
        <translation>no pertenece a ningún trabajo, y el historial nunca lo ha nombrado</translation>
    </message>
    <message>
        <source>“benchwitness check --mend” moves it into the folder {trash} among the photos.</source>
        <translation>“benchwitness check --mend” lo lleva a la carpeta {trash} que está entre las fotos.</translation>
    </message>
    <message>
        <source>The file {file} {what}.</source>
        <translation>El archivo {file} {what}.</translation>
    </message>
    <message>
        <source>the photo folder</source>
        <translation>la carpeta de fotos</translation>
    </message>
    <message>
        <source>“benchwitness check --mend” moves it into the folder {trash} of the shop.</source>
        <translation>“benchwitness check --mend” lo lleva a la carpeta {trash} del taller.</translation>
    </message>
    <message>
        <source>{name} was set aside before an import or an update ({size:,.1f} MB).</source>
        <translation>{name} se apartó antes de una importación o una actualización ({size:,.1f} MB).</translation>
    </message>
    <message>
        <source>If nobody needs it any more: {what_to_do}</source>
        <translation>Si ya nadie lo necesita: {what_to_do}</translation>
    </message>
    <message>
        <source>The folder {folder}</source>
        <translation>La carpeta {folder}</translation>
    </message>
    <message>
        <source>see the library</source>
        <translation>véase la biblioteca</translation>
    </message>
    <message>
        <source>{kind} (what it says is left out)</source>
        <translation>{kind} (se omite lo que dice)</translation>
    </message>
    <message>
        <source>({lines} lines are left out)</source>
        <translation>(se omiten {lines} líneas)</translation>
    </message>
    <message>
        <source>A copy of the record, to look at in peace,</source>
        <translation>Una copia del registro, para mirarla con calma</translation>
    </message>
    <message>
        <source>{folder} is not empty.</source>
        <translation>{folder} no está vacía.</translation>
    </message>
    <message>
        <source>Name a new or an empty folder.</source>
        <translation>Nombre una carpeta nueva o vacía.</translation>
    </message>
    <message>
        <source>Copying {name}</source>
        <translation>Copiando {name}</translation>
    </message>
    <message>
        <source>Copying the words of the jobs</source>
        <translation>Copiando las palabras de los trabajos</translation>
    </message>
    <message>
        <source>Comparing {name}</source>
        <translation>Comparando {name}</translation>
    </message>
    <message>
        <source>The copy is not the same as the record: the table {name} differs.</source>
        <translation>La copia no es igual que el registro: difiere la tabla {name}.</translation>
    </message>
    <message>
        <source>The shop that was to be copied is as it was.</source>
        <translation>El taller que se iba a copiar está como estaba.</translation>
    </message>
    <message>
        <source>Try again; look at the disk of the copy.</source>
        <translation>Inténtelo de nuevo; revise el disco de la copia.</translation>
    </message>
    <message>
        <source>The copy would give numbers out that the record has given out before.</source>
        <translation>La copia daría números que el registro ya ha dado antes.</translation>
    </message>
    <message>
        <source>The photo file {path}</source>
        <translation>El archivo de foto {path}</translation>
    </message>
    <message>
        <source>The photo was not saved: {error}.</source>
        <translation>La foto no se guardó: {error}.</translation>
    </message>
    <message>
        <source>The job is as it was.</source>
        <translation>El trabajo está como estaba.</translation>
    </message>
    <message>
        <source>Make room or ask for the right to write, then add the photo again.</source>
        <translation>Haga sitio o pida permiso de escritura y añada la foto de nuevo.</translation>
    </message>
    <message>
        <source>Make room or ask for the right to write, and try again.</source>
        <translation>Haga sitio o pida permiso de escritura e inténtelo de nuevo.</translation>
    </message>
    <message>
        <source>The photo {sha256} is not in the shop&apos;s folder any more.</source>
        <translation>La foto {sha256} ya no está en la carpeta del taller.</translation>
    </message>
    <message>
        <source>Bring the file back from your last copy of the folder.</source>
        <translation>Recupere el archivo de su última copia de la carpeta.</translation>
    </message>
    <message>
        <source>The folder {folder} holds the photos of another shop.</source>
        <translation>La carpeta {folder} contiene las fotos de otro taller.</translation>
    </message>
    <message>
        <source>Name the shop&apos;s own; for a new shop an empty one that all its computers reach. The file {file} there says which shop it belongs to.</source>
        <translation>Nombre la del propio taller; para un taller nuevo, una vacía a la que lleguen todos sus equipos. El archivo {file} de allí dice a qué taller pertenece.</translation>
    </message>
    <message>
        <source>There is no folder {folder} for the photos, seen from this computer.</source>
        <translation>No existe la carpeta {folder} para las fotos, vista desde este equipo.</translation>
    </message>
    <message>
        <source>Name one that all computers of the shop reach, or keep photos in the database.</source>
        <translation>Nombre una a la que lleguen todos los equipos del taller, o guarde las fotos en la base de datos.</translation>
    </message>
    <message>
        <source>The folder {folder} is not empty.</source>
        <translation>La carpeta {folder} no está vacía.</translation>
    </message>
    <message>
        <source>Nothing was written there.</source>
        <translation>No se escribió nada allí.</translation>
    </message>
    <message>
        <source>Name an empty folder that all computers of the shop reach, also where the photos that lie there are the same.</source>
        <translation>Nombre una carpeta vacía a la que lleguen todos los equipos del taller, también si las fotos que hay allí son las mismas.</translation>
    </message>
    <message>
        <source>Looking for photos in the backups</source>
        <translation>Buscando fotos en las copias de seguridad</translation>
    </message>
    <message>
        <source>1 photo was found whole nowhere.</source>
        <translation>1 foto no se halló íntegra en ningún sitio.</translation>
    </message>
    <message>
        <source>{photos:,} photos were found whole nowhere.</source>
        <translation>{photos:,} fotos no se hallaron íntegras en ningún sitio.</translation>
    </message>
    <message>
        <source>{photo} was brought back from {place}.</source>
        <translation>{photo} se recuperó de {place}.</translation>
    </message>
    <message>
        <source>{photo} is still damaged; it lies whole in {place}. First the server&apos;s owner must take its row out: DELETE FROM photo_content WHERE sha256 = &apos;{sha256}&apos;; then mend once more.</source>
        <translation>{photo} sigue con daños; hay un ejemplar íntegro en {place}. Primero el dueño del servidor debe quitar su fila: DELETE FROM photo_content WHERE sha256 = &apos;{sha256}&apos;; después, repare otra vez.</translation>
    </message>
    <message>
        <source>Fetching the photos from the server</source>
        <translation>Trayendo las fotos del servidor</translation>
    </message>
    <message>
        <source>“benchwitness check --mend” brings it back where a backup or a copy has it whole.</source>
        <translation>“benchwitness check --mend” la recupera si una copia de seguridad u otra copia la tiene íntegra.</translation>
    </message>
    <message>
        <source>Holding the photos against their hashes</source>
        <translation>Cotejando las fotos con sus hashes</translation>
    </message>
    <message>
        <source>the shared folder</source>
        <translation>la carpeta compartida</translation>
    </message>
    <message>
        <source>{photo} was changed after it was taken in.</source>
        <translation>{photo} cambió después de incorporarse.</translation>
    </message>
    <message>
        <source>{photo} is missing.</source>
        <translation>{photo} no está.</translation>
    </message>
    <message>
        <source>Is the shared folder connected? If it moved, say where it is now by opening the shop on its server once more.</source>
        <translation>¿Está conectada la carpeta compartida? Si cambió de sitio, diga dónde está ahora abriendo el taller en su servidor una vez más.</translation>
    </message>
    <message>
        <source>It is the one whose file {file} begins with {mark}.</source>
        <translation>Es aquella cuyo archivo {file} empieza por {mark}.</translation>
    </message>
    <message>
        <source>The shared folder of the photos, {folder}, can&apos;t be reached.</source>
        <translation>No se puede llegar a la carpeta compartida de las fotos, {folder}.</translation>
    </message>
    <message>
        <source>The photo was not saved; the job and what you typed are as they were.</source>
        <translation>La foto no se guardó; el trabajo y lo que escribió están como estaban.</translation>
    </message>
    <message>
        <source>The photo {sha256} in the server&apos;s database</source>
        <translation>La foto {sha256} de la base de datos del servidor</translation>
    </message>
    <message>
        <source>The photo {sha256} is not on the shop&apos;s server any more.</source>
        <translation>La foto {sha256} ya no está en el servidor del taller.</translation>
    </message>
    <message>
        <source>Bring it back from a backup.</source>
        <translation>Recupérela de una copia de seguridad.</translation>
    </message>
    <message>
        <source>The server did not take or give the photo: {error}.</source>
        <translation>El servidor no recibió o no entregó la foto: {error}.</translation>
    </message>
    <message>
        <source>Go back to your last good copy.</source>
        <translation>Vuelva a su última copia buena.</translation>
    </message>
    <message>
        <source>“benchwitness check --mend” makes it anew.</source>
        <translation>“benchwitness check --mend” lo hace de nuevo.</translation>
    </message>
    <message>
        <source>There is no log: nothing was noted yet.</source>
        <translation>No hay diario del programa: aún no se anotó nada.</translation>
    </message>
    <message>
        <source>The shop&apos;s settings could not be read.</source>
        <translation>No se pudieron leer los ajustes del taller.</translation>
    </message>
    <message>
        <source>Choose another place or name.</source>
        <translation>Elija otro lugar o nombre.</translation>
    </message>
    <message>
        <source>built to run without Python</source>
        <translation>hecho para funcionar sin Python</translation>
    </message>
    <message>
        <source>run by Python</source>
        <translation>ejecutado por Python</translation>
    </message>
    <message>
        <source>{processors} processors</source>
        <translation>{processors} procesadores</translation>
    </message>
    <message>
        <source>There is no entry {seq} in the history.</source>
        <translation>No hay ningún asiento {seq} en el historial.</translation>
    </message>
    <message>
        <source>There is nothing to undo.</source>
        <translation>No hay nada que deshacer.</translation>
    </message>
    <message>
        <source>There is nothing to redo.</source>
        <translation>No hay nada que rehacer.</translation>
    </message>
    <message>
        <source>Undo: {words}</source>
        <translation>Deshacer: {words}</translation>
    </message>
    <message>
        <source>Redo: {words}</source>
        <translation>Rehacer: {words}</translation>
    </message>
    <message>
        <source>“{words}” can&apos;t be undone: something else hangs on it by now.</source>
        <translation>No se puede deshacer “{words}”: ahora otra cosa depende de ello.</translation>
    </message>
    <message>
        <source>Undo the later changes first.</source>
        <translation>Deshaga primero los cambios posteriores.</translation>
    </message>
    <message>
        <source>Choose an empty or a new folder.</source>
        <translation>Elija una carpeta vacía o nueva.</translation>
    </message>
    <message>
        <source>The folder {folder} cannot be used: {error}.</source>
        <translation>No se puede usar la carpeta {folder}: {error}.</translation>
    </message>
    <message>
        <source>Choose another folder.</source>
        <translation>Elija otra carpeta.</translation>
    </message>
    <message>
        <source>No shop was made.</source>
        <translation>No se creó ningún taller.</translation>
    </message>
    <message>
        <source>{folder} is a file.</source>
        <translation>{folder} es un archivo.</translation>
    </message>
    <message>
        <source>Name the folder that the shop lies in.</source>
        <translation>Nombre la carpeta en la que está el taller.</translation>
    </message>
    <message>
        <source>{path} is gone.</source>
        <translation>{path} ya no está.</translation>
    </message>
    <message>
        <source>There is no shop in {folder}.</source>
        <translation>No hay ningún taller en {folder}.</translation>
    </message>
    <message>
        <source>Make one with “benchwitness new-shop {folder}”, or choose another folder.</source>
        <translation>Haga uno con “benchwitness new-shop {folder}”, o elija otra carpeta.</translation>
    </message>
    <message>
        <source>{path} is not a shop&apos;s record, or its beginning is damaged.</source>
        <translation>{path} no es el registro de un taller, o está dañado su comienzo.</translation>
    </message>
    <message>
        <source>Ask for the right to read it.</source>
        <translation>Pida permiso para leerlo.</translation>
    </message>
    <message>
        <source>the database</source>
        <translation>la base de datos</translation>
    </message>
    <message>
        <source>Compare with a copy or a printed sheet of that day.</source>
        <translation>Compare con una copia o con una hoja impresa de ese día.</translation>
    </message>
    <message>
        <source>Somebody or something wrote into the file without this program. Compare with a backup or a printed sheet, and enter what is right as a new change; the history stays as it is.</source>
        <translation>Alguien o algo escribió en el archivo sin este programa. Compare con una copia de seguridad o una hoja impresa y anote lo correcto como un cambio nuevo; el historial queda como está.</translation>
    </message>
    <message>
        <source>It can&apos;t be read to the end ({said}).</source>
        <translation>No se puede leer hasta el final ({said}).</translation>
    </message>
    <message>
        <source>{what} can&apos;t be read to the end ({said}).</source>
        <translation>{what} no se puede leer hasta el final ({said}).</translation>
    </message>
    <message>
        <source>Reading the history</source>
        <translation>Leyendo el historial</translation>
    </message>
    <message>
        <source>The history</source>
        <translation>El historial</translation>
    </message>
    <message>
        <source>Holding the rows against the history</source>
        <translation>Cotejando las filas con el historial</translation>
    </message>
    <message>
        <source>The table {name}</source>
        <translation>La tabla {name}</translation>
    </message>
    <message>
        <source>Its tables are described otherwise than this program made them.</source>
        <translation>Sus tablas no están descritas como las hizo este programa.</translation>
    </message>
    <message>
        <source>{more:,} more rows are not as the history says.</source>
        <translation>Otras {more:,} filas no están como dice el historial.</translation>
    </message>
    <message>
        <source>it ends with entry {entries}, but {given} were written</source>
        <translation>termina en el asiento {entries}, pero se escribieron {given}</translation>
    </message>
    <message>
        <source>It would give numbers of {name} out a second time.</source>
        <translation>Daría números de {name} por segunda vez.</translation>
    </message>
    <message>
        <source>Bringing the shop back</source>
        <translation>Recuperando el taller</translation>
    </message>
    <message>
        <source>its record can&apos;t be used, {what}</source>
        <translation>su registro no se puede usar: {what}</translation>
    </message>
    <message>
        <source>The backup holds a record of form {form}, this program knows {newest}: a newer program wrote it.</source>
        <translation>La copia de seguridad contiene un registro de forma {form}; este programa conoce la {newest}: la escribió un programa más nuevo.</translation>
    </message>
    <message>
        <source>Install the newer program on this computer.</source>
        <translation>Instale el programa más nuevo en este equipo.</translation>
    </message>
    <message>
        <source>The backup needs {size:,.0f} MB, and {folder} has {free:,.0f} MB left.</source>
        <translation>La copia de seguridad necesita {size:,.0f} MB, y en {folder} quedan {free:,.0f} MB.</translation>
    </message>
    <message>
        <source>Make room or name another place.</source>
        <translation>Haga sitio o nombre otro lugar.</translation>
    </message>
    <message>
        <source>{folder} is there already and not empty.</source>
        <translation>{folder} ya existe y no está vacía.</translation>
    </message>
    <message>
        <source>No backup was brought back on trial yet; that is done once a month by itself.</source>
        <translation>Aún no se recuperó ninguna copia de seguridad como ensayo; eso se hace solo una vez al mes.</translation>
    </message>
    <message>
        <source>On {day} a backup was last brought back on trial: it was whole.</source>
        <translation>El {day} se recuperó por última vez una copia de seguridad como ensayo: estaba íntegra.</translation>
    </message>
    <message>
        <source>The newest backup was brought back on trial on {day}, and that failed: {wrong}</source>
        <translation>La copia de seguridad más nueva se recuperó como ensayo el {day}, y eso falló: {wrong}</translation>
    </message>
    <message>
        <source>Use “Back up now” under Records In and Out with another disk, and “Check everything” there.</source>
        <translation>Use “Hacer una copia ahora” en Entrada y salida con otro disco, y allí también “Comprobar todo”.</translation>
    </message>
    <message>
        <source>The trial in {base}</source>
        <translation>El ensayo en {base}</translation>
    </message>
    <message>
        <source>1 problem in its record, {where}: {what}</source>
        <translation>1 problema en su registro, {where}: {what}</translation>
    </message>
    <message>
        <source>{problems:,} problems in its record, first {where}: {what}</source>
        <translation>{problems:,} problemas en su registro; el primero, {where}: {what}</translation>
    </message>
    <message>
        <source>entry {seq} can&apos;t be read: nobody knows what it did</source>
        <translation>el asiento {seq} no se puede leer: nadie sabe qué hizo</translation>
    </message>
    <message>
        <source>entry {seq} (“{words}”) is listed with another moment, name or words than it was written with</source>
        <translation>el asiento {seq} (“{words}”) figura con otro momento, nombre o palabras que aquellos con los que se escribió</translation>
    </message>
    <message>
        <source>was put in past the history: no deed has made it</source>
        <translation>se puso al margen del historial: ninguna acción la hizo</translation>
    </message>
    <message>
        <source>is there, though the history says it was removed</source>
        <translation>está ahí, aunque el historial dice que se quitó</translation>
    </message>
    <message>
        <source>{table} rows {first} to {last}</source>
        <translation>filas {first} a {last} de {table}</translation>
    </message>
    <message>
        <source>are not as they came in together ({rows:,} rows): at least one was changed, put in or taken out past the history</source>
        <translation>no están como entraron juntas ({rows:,} filas): al menos una se cambió, se puso o se quitó al margen del historial</translation>
    </message>
    <message>
        <source>{column} is “{now}”, by the history “{was}”</source>
        <translation>{column} es “{now}”, según el historial “{was}”</translation>
    </message>
    <message>
        <source>was changed past the history: {said}</source>
        <translation>se cambió al margen del historial: {said}</translation>
    </message>
    <message>
        <source>is gone past the history; it held {held}</source>
        <translation>desapareció al margen del historial; contenía {held}</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>shop name</source>
        <translation>nombre del taller</translation>
    </message>
    <message>
        <source>length unit</source>
        <translation>unidad de longitud</translation>
    </message>
    <message>
        <source>distance unit</source>
        <translation>unidad de distancia</translation>
    </message>
    <message>
        <source>window days</source>
        <translation>días del plazo</translation>
    </message>
    <message>
        <source>window months</source>
        <translation>meses del plazo</translation>
    </message>
    <message>
        <source>window miles</source>
        <translation>millas del plazo</translation>
    </message>
    <message>
        <source>window rule</source>
        <translation>regla del plazo</translation>
    </message>
    <message>
        <source>sale ends window</source>
        <translation>la venta cierra el plazo</translation>
    </message>
    <message>
        <source>early days</source>
        <translation>días del plazo temprano</translation>
    </message>
    <message>
        <source>early miles</source>
        <translation>millas del plazo temprano</translation>
    </message>
    <message>
        <source>long days</source>
        <translation>días del plazo largo</translation>
    </message>
    <message>
        <source>long miles</source>
        <translation>millas del plazo largo</translation>
    </message>
    <message>
        <source>ask after days</source>
        <translation>días hasta preguntar</translation>
    </message>
    <message>
        <source>sure percent</source>
        <translation>certeza en tanto por ciento</translation>
    </message>
    <message>
        <source>hour cost</source>
        <translation>coste de la hora</translation>
    </message>
    <message>
        <source>hour cost cents</source>
        <translation>coste de la hora en céntimos</translation>
    </message>
    <message>
        <source>names in book</source>
        <translation>nombres en el libro</translation>
    </message>
    <message>
        <source>second backup folder</source>
        <translation>segunda carpeta de copias</translation>
    </message>
    <message>
        <source>days without backup</source>
        <translation>días sin copia</translation>
    </message>
    <message>
        <source>currency</source>
        <translation>moneda</translation>
    </message>
    <message>
        <source>paper</source>
        <translation>papel</translation>
    </message>
    <message>
        <source>look</source>
        <translation>aspecto</translation>
    </message>
    <message>
        <source>text size</source>
        <translation>tamaño del texto</translation>
    </message>
    <message>
        <source>The shop</source>
        <translation>El taller</translation>
    </message>
    <message>
        <source>Early and long windows</source>
        <extracomment>The headings under which the rules stand, in their order.</extracomment>
        <translation>Plazos temprano y largo</translation>
    </message>
    <message>
        <source>Verdicts and the weekly book</source>
        <translation>Veredictos y libro semanal</translation>
    </message>
    <message>
        <source>The look</source>
        <translation>El aspecto</translation>
    </message>
    <message>
        <source>inch</source>
        <translation>pulgadas</translation>
    </message>
    <message>
        <source>miles</source>
        <translation>millas</translation>
    </message>
    <message>
        <source>first</source>
        <translation>lo primero</translation>
    </message>
    <message>
        <source>both</source>
        <translation>ambos</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>sí</translation>
    </message>
    <message>
        <source>no</source>
        <translation>no</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Carta</translation>
    </message>
    <message>
        <source>as the system</source>
        <translation>según el sistema</translation>
    </message>
    <message>
        <source>light</source>
        <translation>claro</translation>
    </message>
    <message>
        <source>dark</source>
        <translation>oscuro</translation>
    </message>
    <message>
        <source>high contrast</source>
        <translation>alto contraste</translation>
    </message>
    <message>
        <source>{scheme}:// addresses are not understood.</source>
        <translation>No se entienden las direcciones {scheme}://.</translation>
    </message>
    <message>
        <source>Accepted: the folder of a shop, or an address as {example}.</source>
        <translation>Se acepta: la carpeta de un taller, o una dirección como {example}.</translation>
    </message>
    <message>
        <source>it can&apos;t be read; in a password, %2F stands for /, %3F for ?, %23 for # and %40 for @</source>
        <translation>no se puede leer; en una contraseña, %2F vale por /, %3F por ?, %23 por # y %40 por @</translation>
    </message>
    <message>
        <source>sslmode={mode} would let others read along on the way to the server.</source>
        <translation>sslmode={mode} dejaría que otros leyeran por el camino al servidor.</translation>
    </message>
    <message>
        <source>Say one of {modes}, or leave it out.</source>
        <translation>Diga uno de {modes}, o no lo ponga.</translation>
    </message>
    <message>
        <source>the name of the database is missing, longer than 55, or not of a-z, 0-9, _, -</source>
        <translation>el nombre de la base de datos falta, pasa de 55 o no es de a-z, 0-9, _, -</translation>
    </message>
    <message>
        <source>“{name}” can&apos;t be asked for; accepted: {options}</source>
        <translation>“{name}” no se puede pedir; se acepta: {options}</translation>
    </message>
    <message>
        <source>{name} has to be said once, with a value</source>
        <translation>{name} debe decirse una vez, con un valor</translation>
    </message>
    <message>
        <source>it names more than one server</source>
        <translation>nombra más de un servidor</translation>
    </message>
    <message>
        <source>it has signs that nobody can see</source>
        <translation>tiene signos que nadie puede ver</translation>
    </message>
    <message>
        <source>The address of the server is not understood: {why}.</source>
        <translation>No se entiende la dirección del servidor: {why}.</translation>
    </message>
    <message>
        <source>As {example}.</source>
        <translation>Como {example}.</translation>
    </message>
    <message>
        <source>Whoever looks after the server should look at its disk and its log; make a backup first.</source>
        <translation>Quien cuida el servidor debería revisar su disco y su diario; haga antes una copia de seguridad.</translation>
    </message>
    <message>
        <source>the server</source>
        <translation>el servidor</translation>
    </message>
    <message>
        <source>Of its tables {words}.</source>
        <translation>De sus tablas: {words}.</translation>
    </message>
    <message>
        <source>It found that {words}.</source>
        <translation>Halló que {words}.</translation>
    </message>
    <message>
        <source>The database {database} could not be made: {error}.</source>
        <translation>No se pudo hacer la base de datos {database}: {error}.</translation>
    </message>
    <message>
        <source>Whoever looks after the server can: {make};</source>
        <translation>Quien cuida el servidor puede: {make};</translation>
    </message>
    <message>
        <source>The database {database} is not empty.</source>
        <translation>La base de datos {database} no está vacía.</translation>
    </message>
    <message>
        <source>Name another database, or open the shop that is in it with --shop.</source>
        <translation>Nombre otra base de datos, o abra con --shop el taller que hay en ella.</translation>
    </message>
    <message>
        <source>The database {database} sorts text by {collation} in {encoding}; it has to be by bytes in UTF8.</source>
        <translation>La base de datos {database} ordena el texto por {collation} en {encoding}; tiene que ser por bytes en UTF8.</translation>
    </message>
    <message>
        <source>Make it anew: {make};</source>
        <translation>Hágala de nuevo: {make};</translation>
    </message>
    <message>
        <source>{user} may look at the shop on the server, and not write.</source>
        <translation>{user} puede mirar el taller en el servidor, pero no escribir en él.</translation>
    </message>
    <message>
        <source>This login</source>
        <translation>Este usuario de la base</translation>
    </message>
    <message>
        <source>Who is to work in it is put into “{workers}” by whoever looks after the server.</source>
        <translation>A quien deba trabajar en él lo pone en “{workers}” quien cuida el servidor.</translation>
    </message>
    <message>
        <source>Everything else is there; photos are shown and taken in when it is back.</source>
        <translation>Todo lo demás está; las fotos se muestran y se incorporan cuando vuelva.</translation>
    </message>
    <message>
        <source>{folder} on this computer can&apos;t be written ({error}).</source>
        <translation>No se puede escribir en {folder} de este equipo ({error}).</translation>
    </message>
    <message>
        <source>The shop is on the server and can be worked in.</source>
        <translation>El taller está en el servidor y se puede trabajar en él.</translation>
    </message>
    <message>
        <source>Without it half-typed forms are lost with the window, and no backups are made here: ask for the right to write.</source>
        <translation>Sin ello, los formularios a medio escribir se pierden con la ventana y aquí no se hacen copias de seguridad: pida permiso de escritura.</translation>
    </message>
    <message>
        <source>{path} can&apos;t be read, or names no server.</source>
        <translation>{path} no se puede leer, o no nombra ningún servidor.</translation>
    </message>
    <message>
        <source>The shop on the server is not touched by this.</source>
        <translation>Esto no toca el taller del servidor.</translation>
    </message>
    <message>
        <source>Open the shop by its address once more.</source>
        <translation>Abra el taller por su dirección una vez más.</translation>
    </message>
    <message>
        <source>What stays on this computer can&apos;t be kept: {error}.</source>
        <translation>No se puede guardar lo que queda en este equipo: {error}.</translation>
    </message>
    <message>
        <source>Make room, or ask for the right to write.</source>
        <translation>Haga sitio, o pida permiso de escritura.</translation>
    </message>
    <message>
        <source>The server is silent.</source>
        <translation>El servidor no dice nada.</translation>
    </message>
    <message>
        <source>The server takes too long.</source>
        <translation>El servidor tarda demasiado.</translation>
    </message>
    <message>
        <source>The server does not let {user} in from this computer.</source>
        <translation>El servidor no deja entrar a {user} desde este equipo.</translation>
    </message>
    <message>
        <source>this user</source>
        <translation>este usuario</translation>
    </message>
    <message>
        <source>Whoever looks after the server must allow it (pg_hba.conf).</source>
        <translation>Quien cuida el servidor tiene que permitirlo (pg_hba.conf).</translation>
    </message>
    <message>
        <source>{database} on {host}</source>
        <translation>{database} en {host}</translation>
    </message>
    <message>
        <source>this computer</source>
        <translation>este equipo</translation>
    </message>
    <message>
        <source>The server wants the password of {user} for {where}.</source>
        <translation>El servidor pide la contraseña de {user} para {where}.</translation>
    </message>
    <message>
        <source>What was tried is not the one.</source>
        <translation>La que se probó no es.</translation>
    </message>
    <message>
        <source>Enter it; it is kept in this system&apos;s keyring, in no file.</source>
        <translation>Escríbala; se guarda en el llavero de este sistema y en ningún archivo.</translation>
    </message>
    <message>
        <source>{user} has no right to the shop in {where}.</source>
        <translation>{user} no tiene derecho al taller en {where}.</translation>
    </message>
    <message>
        <source>This user</source>
        <translation>Este usuario</translation>
    </message>
    <message>
        <source>Who made the shop can give it: IN ROLE with the name of the database and _workers, or _readers to look.</source>
        <translation>Quien hizo el taller puede darlo: IN ROLE con el nombre de la base de datos y _workers, o _readers para mirar.</translation>
    </message>
    <message>
        <source>There is no database {where}.</source>
        <translation>No existe la base de datos {where}.</translation>
    </message>
    <message>
        <source>Make a shop there with “benchwitness new-shop {address}”.</source>
        <translation>Haga allí un taller con “benchwitness new-shop {address}”.</translation>
    </message>
    <message>
        <source>The server knows no {user} who may log in.</source>
        <translation>El servidor no conoce a ningún {user} que pueda entrar.</translation>
    </message>
    <message>
        <source>Look at the name in the address.</source>
        <translation>Mire el nombre en la dirección.</translation>
    </message>
    <message>
        <source>The connection to {host} could not be protected: {said}.</source>
        <translation>No se pudo proteger la conexión con {host}: {said}.</translation>
    </message>
    <message>
        <source>Nothing was sent.</source>
        <translation>No se envió nada.</translation>
    </message>
    <message>
        <source>Name the certificate that signs the server&apos;s own (?sslrootcert=FILE in the address), or ask whoever looks after the server.</source>
        <translation>Nombre el certificado que firma el del servidor (?sslrootcert=FILE en la dirección), o pregunte a quien cuida el servidor.</translation>
    </message>
    <message>
        <source>The shop&apos;s server {host} can&apos;t be reached.</source>
        <translation>No se puede llegar al servidor del taller {host}.</translation>
    </message>
    <message>
        <source>on this computer</source>
        <translation>en este equipo</translation>
    </message>
    <message>
        <source>Is it on, and this computer in the network? ({said})</source>
        <translation>¿Está encendido, y este equipo en la red? ({said})</translation>
    </message>
    <message>
        <source>This shop&apos;s record needs an update for this program, and {user} can&apos;t make it.</source>
        <translation>El registro de este taller necesita una actualización para este programa, y {user} no puede hacerla.</translation>
    </message>
    <message>
        <source>The record was not touched.</source>
        <translation>El registro no se tocó.</translation>
    </message>
    <message>
        <source>Its owner ({owner}) makes it by opening the shop once with this program.</source>
        <translation>Su dueño ({owner}) la hace abriendo el taller una vez con este programa.</translation>
    </message>
    <message>
        <source>There is no shop in the database {database}.</source>
        <translation>No hay ningún taller en la base de datos {database}.</translation>
    </message>
    <message>
        <source>Make one with “benchwitness new-shop {address}”, or look at the address.</source>
        <translation>Haga uno con “benchwitness new-shop {address}”, o mire la dirección.</translation>
    </message>
    <message>
        <source>The photos of this shop lie in a shared folder; this computer does not know where.</source>
        <translation>Las fotos de este taller están en una carpeta compartida; este equipo no sabe dónde.</translation>
    </message>
    <message>
        <source>Open the shop in the window and name that folder there, as it is seen from here.</source>
        <translation>Abra el taller en la ventana y nombre allí esa carpeta, tal como se ve desde aquí.</translation>
    </message>
    <message>
        <source>Enter the password that holds now under House Rules, “Where this shop is”.</source>
        <translation>Escriba la contraseña que vale ahora en Normas de la casa, “Dónde está este taller”.</translation>
    </message>
    <message>
        <source>The shop&apos;s server is there, and lets nobody in from here. {what}</source>
        <translation>El servidor del taller está, y no deja entrar a nadie desde aquí. {what}</translation>
    </message>
    <message>
        <source>What you type stays in its field, and on this computer.</source>
        <translation>Lo que escribe queda en su campo, y en este equipo.</translation>
    </message>
    <message>
        <source>The shop&apos;s server can&apos;t be reached.</source>
        <translation>No se puede llegar al servidor del taller.</translation>
    </message>
    <message>
        <source>Go on typing: it is sent when the server is back.</source>
        <translation>Siga escribiendo: se envía cuando vuelva el servidor.</translation>
    </message>
    <message>
        <source>Try again when the server is back.</source>
        <translation>Inténtelo de nuevo cuando el servidor vuelva a estar disponible.</translation>
    </message>
    <message>
        <source>The shop&apos;s server went away before it answered: it is not known whether it was saved.</source>
        <translation>El servidor del taller se fue antes de responder: no se sabe si se guardó.</translation>
    </message>
    <message>
        <source>What you typed is still in its field.</source>
        <translation>Lo que escribió sigue en su campo.</translation>
    </message>
    <message>
        <source>Look at the page when the server is back; what stands there by then is what was saved.</source>
        <translation>Mire la página cuando vuelva el servidor; lo que haya entonces es lo que se guardó.</translation>
    </message>
    <message>
        <source>When the server is back, look into the shop before you try again.</source>
        <translation>Cuando el servidor vuelva a estar disponible, compruebe qué quedó guardado en el taller antes de intentarlo de nuevo.</translation>
    </message>
    <message>
        <source>The shop&apos;s folder lies on a network disk ({kind}). Two computers must not open it at once: such disks don&apos;t keep them apart, and the record would be damaged for good.</source>
        <translation>La carpeta del taller está en un disco de red ({kind}). Dos equipos no deben abrirla a la vez: esos discos no los mantienen separados, y el registro se dañaría para siempre.</translation>
    </message>
    <message>
        <source>Let one computer keep the folder on its own disk and send only backups to this one.</source>
        <translation>Deje que un equipo tenga la carpeta en su propio disco y envíe a este solo copias de seguridad.</translation>
    </message>
    <message>
        <source>Backing the shop up</source>
        <translation>Haciendo la copia de seguridad del taller</translation>
    </message>
    <message>
        <source>{file} does not hold what was written to it.</source>
        <translation>{file} no contiene lo que se escribió en él.</translation>
    </message>
    <message>
        <source>it has more than {most:,} letters</source>
        <translation>tiene más de {most:,} letras</translation>
    </message>
    <message>
        <source>This shop&apos;s record was written by a newer program (form {found}, this one knows {newest}).</source>
        <translation>El registro de este taller lo escribió un programa más nuevo (forma {found}; este conoce la {newest}).</translation>
    </message>
    <message>
        <source>Install the newer program on this computer too.</source>
        <translation>Instale también en este equipo el programa más nuevo.</translation>
    </message>
    <message>
        <source>before an update</source>
        <translation>antes de una actualización</translation>
    </message>
    <message>
        <source>The shop&apos;s record has no version in it; it is empty or cut short.</source>
        <translation>El registro del taller no lleva ninguna versión; está vacío o cortado.</translation>
    </message>
    <message>
        <source>Put your last good copy in its place, under the same name.</source>
        <translation>Ponga en su lugar su última copia buena, con el mismo nombre.</translation>
    </message>
    <message>
        <source>One a day for the whole shop, made by the computer that comes first, in the second backup folder where the house rules name one and this computer reaches it. Else each computer makes one a day of its own, in the folder of what stays on it. Before an import one is made there in any case. Each computer brings the newest back on trial once a month.</source>
        <translation>Una al día para todo el taller, hecha por el equipo que llega primero, en la segunda carpeta de copias si las normas de la casa nombran una y este equipo llega a ella. Si no, cada equipo hace una propia al día, en la carpeta de lo que queda en él. Antes de una importación se hace una allí en todo caso. Cada equipo recupera la más nueva como ensayo una vez al mes.</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>Registro</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>in {folder}</source>
        <translation>en {folder}</translation>
    </message>
    <message>
        <source>in the database</source>
        <translation>en la base de datos</translation>
    </message>
    <message>
        <source>You are</source>
        <translation>Usted es</translation>
    </message>
    <message>
        <source>Connected now</source>
        <translation>Conectados ahora</translation>
    </message>
    <message>
        <source>On this computer</source>
        <translation>En este equipo</translation>
    </message>
    <message>
        <source>{folder}: drafts, thumbnails, copies of photos, the log</source>
        <translation>{folder}: borradores, miniaturas, copias de fotos, el diario del programa</translation>
    </message>
    <message>
        <source>Backups</source>
        <translation>Copias</translation>
    </message>
    <message>
        <source>Written at another desk meanwhile: {stands}.</source>
        <translation>Escrito entretanto en otro puesto: {stands}.</translation>
    </message>
    <message>
        <source>That stays; “{wanted}” was not done.</source>
        <translation>Eso queda; “{wanted}” no se hizo.</translation>
    </message>
    <message>
        <source>Look at both, then decide which one holds.</source>
        <translation>Mire las dos cosas y decida después cuál vale.</translation>
    </message>
    <message>
        <source>emptied</source>
        <translation>vaciado</translation>
    </message>
    <message>
        <source>The program could not be started anew: {why}. Start it by hand.</source>
        <extracomment>The word before a module that runs in a process of its own; only a built program knows it.</extracomment>
        <translation>No se pudo reiniciar el programa: {why}. Inícielo a mano.</translation>
    </message>
</context>
</TS>
