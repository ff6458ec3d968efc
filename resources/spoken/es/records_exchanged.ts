<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es">
<context>
    <name></name>
    <message>
        <source>miles</source>
        <translation>millas</translation>
    </message>
    <message>
        <source>kilometres</source>
        <translation>kilómetros</translation>
    </message>
    <message>
        <source>“{cell}” says no unit, nor does the header “{header}”.</source>
        <translation>“{cell}” no dice la unidad, ni tampoco el encabezado “{header}”.</translation>
    </message>
    <message>
        <source>The header “{header}” says no unit, and the first rows have no odometer.</source>
        <translation>El encabezado “{header}” no dice la unidad, y las primeras filas no tienen cuentakilómetros.</translation>
    </message>
    <message>
        <source>{order}: no day at all</source>
        <translation>{order}: no es ningún día</translation>
    </message>
    <message>
        <source>a decimal {sign}: no number at all</source>
        <translation>{sign} decimal: no es ningún número</translation>
    </message>
    <message>
        <source>a decimal {sign}: {number:f}</source>
        <translation>{sign} decimal: {number:f}</translation>
    </message>
    <message>
        <source>finishing</source>
        <translation>terminando</translation>
    </message>
    <message>
        <source>{read:,} of {rows:,} rows</source>
        <translation>{read:,} de {rows:,} filas</translation>
    </message>
    <message>
        <source>0 of {rows:,} rows</source>
        <translation>0 de {rows:,} filas</translation>
    </message>
    <message>
        <source>{file} is the file that the rows came from.</source>
        <translation>{file} es el archivo del que vinieron las filas.</translation>
    </message>
    <message>
        <source>It was left as it is.</source>
        <translation>Se dejó como está.</translation>
    </message>
    <message>
        <source>Name another file.</source>
        <translation>Indique otro archivo.</translation>
    </message>
    <message>
        <source>“{word}” is not a trouble code. One is P, C, B or U and four figures, such as P0300; part several by spaces, commas or semicolons.</source>
        <translation>“{word}” no es un código de avería. Uno es P, C, B o U y cuatro cifras, como P0300; separe varios con espacios, comas o puntos y comas.</translation>
    </message>
    <message>
        <source>job number</source>
        <translation>n.º de trabajo</translation>
    </message>
    <message>
        <source>opened on</source>
        <translation>abierto el</translation>
    </message>
    <message>
        <source>closed on</source>
        <translation>cerrado el</translation>
    </message>
    <message>
        <source>plate</source>
        <translation>matrícula</translation>
    </message>
    <message>
        <source>vehicle</source>
        <translation>vehículo</translation>
    </message>
    <message>
        <source>odometer</source>
        <translation>cuentakilómetros</translation>
    </message>
    <message>
        <source>odometer unit</source>
        <translation>unidad de distancia</translation>
    </message>
    <message>
        <source>technician</source>
        <translation>mecánico</translation>
    </message>
    <message>
        <source>concern</source>
        <translation>queja</translation>
    </message>
    <message>
        <source>cause</source>
        <translation>causa</translation>
    </message>
    <message>
        <source>correction</source>
        <translation>corrección</translation>
    </message>
    <message>
        <source>codes</source>
        <translation>códigos</translation>
    </message>
    <message>
        <source>system</source>
        <translation>sistema</translation>
    </message>
    <message>
        <source>part kind</source>
        <translation>clase de pieza</translation>
    </message>
    <message>
        <source>part number</source>
        <translation>n.º de pieza</translation>
    </message>
    <message>
        <source>supplier</source>
        <translation>proveedor</translation>
    </message>
    <message>
        <source>part origin</source>
        <translation>origen de la pieza</translation>
    </message>
    <message>
        <source>price</source>
        <translation>precio</translation>
    </message>
    <message>
        <source>hours</source>
        <translation>horas</translation>
    </message>
    <message>
        <source>return of</source>
        <translation>vuelta de</translation>
    </message>
    <message>
        <source>judgement</source>
        <translation>juicio</translation>
    </message>
    <message>
        <source>sure</source>
        <translation>seguro</translation>
    </message>
    <message>
        <source>a guess</source>
        <translation>una suposición</translation>
    </message>
    <message>
        <source>likely</source>
        <translation>probable</translation>
    </message>
    <message>
        <source>{file} can&apos;t be read as TOML: {reason}.</source>
        <translation>{file} no se puede leer como TOML: {reason}.</translation>
    </message>
    <message>
        <source>is not known. Known are {known}.</source>
        <translation>no se conoce. Se conocen {known}.</translation>
    </message>
    <message>
        <source>is one of {choices}.</source>
        <translation>es uno de {choices}.</translation>
    </message>
    <message>
        <source>is a text.</source>
        <translation>es un texto.</translation>
    </message>
    <message>
        <source>is a row from 1 to 1000.</source>
        <translation>es una fila de 1 a 1000.</translation>
    </message>
    <message>
        <source>is one sign, such as ; or a tab.</source>
        <translation>es un solo signo, como ; o un tabulador.</translation>
    </message>
    <message>
        <source>is the name of one, such as utf-8 or cp1252.</source>
        <translation>es el nombre de una, como utf-8 o cp1252.</translation>
    </message>
    <message>
        <source>is a table: [columns], then lines such as plate = &quot;Reg&quot;.</source>
        <translation>es una tabla: [columns], y después líneas como plate = &quot;Reg&quot;.</translation>
    </message>
    <message>
        <source>is the header of a column of your file.</source>
        <translation>es el encabezado de una columna de su archivo.</translation>
    </message>
    <message>
        <source>is read from one column only.</source>
        <translation>se lee de una sola columna.</translation>
    </message>
    <message>
        <source>is a list of headers of your file, such as [&quot;Total&quot;], or &quot;{all_others}&quot;. It stands above [columns].</source>
        <translation>es una lista de encabezados de su archivo, como [&quot;Total&quot;], o &quot;{all_others}&quot;. Va encima de [columns].</translation>
    </message>
    <message>
        <source>The line is too long to be a row.</source>
        <translation>La línea es demasiado larga para ser una fila.</translation>
    </message>
    <message>
        <source>A quotation mark is not closed, or not doubled inside a cell.</source>
        <translation>Unas comillas no están cerradas, o no están duplicadas dentro de una celda.</translation>
    </message>
    <message>
        <source>A cell has more than {most:,} letters.</source>
        <translation>Una celda tiene más de {most:,} caracteres.</translation>
    </message>
    <message>
        <source>A formula has no result stored with it; it is not worked out here.</source>
        <translation>Una fórmula no tiene guardado ningún resultado; aquí no se calcula.</translation>
    </message>
    <message>
        <source>The spreadsheet shows an error here ({error}).</source>
        <translation>La hoja de cálculo muestra aquí un error ({error}).</translation>
    </message>
    <message>
        <source>A cell holds a NUL byte.</source>
        <translation>Una celda contiene un byte NUL.</translation>
    </message>
    <message>
        <source>The calendar has no such day.</source>
        <translation>El calendario no tiene ese día.</translation>
    </message>
    <message>
        <source>The days of this file are read {order}, and so this is none.</source>
        <translation>Los días de este archivo se leen con {order}, así que este no es ninguno.</translation>
    </message>
    <message>
        <source>This day can be read in several ways.</source>
        <translation>Este día se puede leer de varias maneras.</translation>
    </message>
    <message>
        <source>This day is still to come: by the clock of this computer it is {today}.</source>
        <translation>Este día aún no ha llegado: según el reloj de este equipo hoy es {today}.</translation>
    </message>
    <message>
        <source> or </source>
        <translation> o </translation>
    </message>
    <message>
        <source>the other days of the file contradict each other</source>
        <translation>los demás días del archivo se contradicen</translation>
    </message>
    <message>
        <source>no other day of it tells</source>
        <translation>ningún otro día de él lo dice</translation>
    </message>
    <message>
        <source>“{text}” may be {readings}; {why}.</source>
        <translation>“{text}” puede ser {readings}; {why}.</translation>
    </message>
    <message>
        <source>no day at all</source>
        <translation>ningún día</translation>
    </message>
    <message>
        <source>day first</source>
        <translation>el día primero</translation>
    </message>
    <message>
        <source>month first</source>
        <translation>el mes primero</translation>
    </message>
    <message>
        <source>year first</source>
        <translation>el año primero</translation>
    </message>
    <message>
        <source>This is not a day. Write it like 2025-03-04.</source>
        <translation>Esto no es un día. Escríbalo como 2025-03-04.</translation>
    </message>
    <message>
        <source>The year {year} is not between {first} and {last}.</source>
        <translation>El año {year} no está entre {first} y {last}.</translation>
    </message>
    <message>
        <source>“{month}” is not a month&apos;s name.</source>
        <translation>“{month}” no es el nombre de un mes.</translation>
    </message>
    <message>
        <source>no other number of the file tells</source>
        <translation>ningún otro número del archivo lo dice</translation>
    </message>
    <message>
        <source>the file has both signs</source>
        <translation>el archivo tiene los dos signos</translation>
    </message>
    <message>
        <source>“{figures}” may be {ways}; {why}.</source>
        <translation>“{figures}” puede ser {ways}; {why}.</translation>
    </message>
    <message>
        <source>copied the record</source>
        <translation>registro copiado</translation>
    </message>
    <message>
        <source>writing the jobs</source>
        <translation>escribiendo los trabajos</translation>
    </message>
    <message>
        <source>writing the tables</source>
        <translation>escribiendo las tablas</translation>
    </message>
    <message>
        <source>writing {file}</source>
        <translation>escribiendo {file}</translation>
    </message>
    <message>
        <source>photo {hash} of job {job}</source>
        <translation>foto {hash} del trabajo {job}</translation>
    </message>
    <message>
        <source>copying the photos</source>
        <translation>copiando las fotos</translation>
    </message>
    <message>
        <source>Accepted: a whole number.</source>
        <translation>Se acepta: un número entero.</translation>
    </message>
    <message>
        <source>Accepted: a number such as 1.25.</source>
        <translation>Se acepta: un número como 1.25.</translation>
    </message>
    <message>
        <source>The export {folder} was not written: {reason}.</source>
        <translation>No se escribió la exportación {folder}: {reason}.</translation>
    </message>
    <message>
        <source>The shop is as it was.</source>
        <translation>El taller está como estaba.</translation>
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
        <source>Name a new or an empty folder.</source>
        <translation>Nombre una carpeta nueva o vacía.</translation>
    </message>
    <message>
        <source>chosen</source>
        <translation>elegido</translation>
    </message>
    <message>
        <source>as last time</source>
        <translation>como la última vez</translation>
    </message>
    <message>
        <source>{file} has no column “{name}” for {field}.</source>
        <translation>{file} no tiene la columna “{name}” para {field}.</translation>
    </message>
    <message>
        <source>{file} has no column “{name}” to leave out.</source>
        <translation>{file} no tiene la columna “{name}” que se había de omitir.</translation>
    </message>
    <message>
        <source>It has: {there}.</source>
        <translation>Tiene: {there}.</translation>
    </message>
    <message>
        <source>Import {file}</source>
        <translation>Importar {file}</translation>
    </message>
    <message>
        <source>an import</source>
        <translation>una importación</translation>
    </message>
    <message>
        <source>The map kept from before was not taken: {why}</source>
        <translation>No se tomó el mapa guardado de antes: {why}</translation>
    </message>
    <message>
        <source>Accepted: a map in TOML, UTF-8.</source>
        <translation>Se acepta: un mapa en TOML, UTF-8.</translation>
    </message>
    <message>
        <source>{file} is too large for a map.</source>
        <translation>{file} es demasiado grande para un mapa.</translation>
    </message>
    <message>
        <source>{file} is not a UTF-8 text file.</source>
        <translation>{file} no es un archivo de texto UTF-8.</translation>
    </message>
    <message>
        <source>{file} can&apos;t be read: {reason}.</source>
        <translation>{file} no se puede leer: {reason}.</translation>
    </message>
    <message>
        <source>{folder} can&apos;t be made: {reason}.</source>
        <translation>{folder} no se puede crear: {reason}.</translation>
    </message>
    <message>
        <source>How the file was read is not remembered.</source>
        <translation>No se recuerda cómo se leyó el archivo.</translation>
    </message>
    <message>
        <source>Ask for the right to write there.</source>
        <translation>Pida permiso para escribir allí.</translation>
    </message>
    <message>
        <source>point</source>
        <translation>punto</translation>
    </message>
    <message>
        <source>comma</source>
        <translation>coma</translation>
    </message>
    <message>
        <source>A price is not below zero.</source>
        <translation>Un precio no es menor que cero.</translation>
    </message>
    <message>
        <source>This is not an amount of money. Write it like 120.50.</source>
        <translation>Esto no es un importe de dinero. Escríbalo como 120.50.</translation>
    </message>
    <message>
        <source>an amount of money</source>
        <translation>una cantidad de dinero</translation>
    </message>
    <message>
        <source>The amount is too large.</source>
        <translation>El importe es demasiado grande.</translation>
    </message>
    <message>
        <source>a number of hours</source>
        <translation>un número de horas</translation>
    </message>
    <message>
        <source>This is not a number of hours. Write it like 1.5 or 1:30.</source>
        <translation>Esto no es un número de horas. Escríbalo como 1.5 o 1:30.</translation>
    </message>
    <message>
        <source>There are more than {most:,} hours.</source>
        <translation>Hay más de {most:,} horas.</translation>
    </message>
    <message>
        <source>Write the odometer out in full: 75,000 for 75k.</source>
        <translation>Escriba entero el cuentakilómetros: 75,000 en vez de 75k.</translation>
    </message>
    <message>
        <source>An odometer is a whole number such as 118,420.</source>
        <translation>Un cuentakilómetros es un número entero, como 118,420.</translation>
    </message>
    <message>
        <source>This may be {low:,} or {high:,}. Write {low} or {high}.</source>
        <translation>Esto puede ser {low:,} o {high:,}. Escriba {low} o {high}.</translation>
    </message>
    <message>
        <source>There are too many figures for an odometer.</source>
        <translation>Hay demasiadas cifras para un cuentakilómetros.</translation>
    </message>
    <message>
        <source>The unit of an odometer is mi or km.</source>
        <translation>La unidad de un cuentakilómetros es mi o km.</translation>
    </message>
    <message>
        <source>This is not {what}.</source>
        <translation>Esto no es {what}.</translation>
    </message>
    <message>
        <source>Numbers of this file have a decimal {sign}, and so this is not {what}.</source>
        <translation>Los números de este archivo llevan {sign} decimal, así que esto no es {what}.</translation>
    </message>
    <message>
        <source>This number can be read in two ways.</source>
        <translation>Este número se puede leer de dos maneras.</translation>
    </message>
    <message>
        <source>{file}, row {row}: {says}</source>
        <translation>{file}, fila {row}: {says}</translation>
    </message>
    <message>
        <source>Write {either} into a map (--columns).</source>
        <translation>Escriba {either} en un mapa (--columns).</translation>
    </message>
    <message>
        <source>{file} has no column of job numbers; it has: {there}.</source>
        <translation>{file} no tiene columna de números de trabajo; tiene: {there}.</translation>
    </message>
    <message>
        <source>Write job_number = &quot;its header&quot; under [columns] into a map (--columns); the others are understood as before. Or header_row = 3 where the headers stand further down.</source>
        <translation>Escriba job_number = &quot;su encabezado&quot; debajo de [columns] en un mapa (--columns); las demás se entienden como antes. O header_row = 3 si los encabezados están más abajo.</translation>
    </message>
    <message>
        <source>Accepted: a table with headers as CSV or XLSX.</source>
        <translation>Se acepta: una tabla con encabezados en CSV o XLSX.</translation>
    </message>
    <message>
        <source>{file} is an old workbook, or one that is locked by a password.</source>
        <translation>{file} es un libro antiguo, o está bloqueado con una contraseña.</translation>
    </message>
    <message>
        <source>Open it in a spreadsheet program and save it as XLSX or CSV.</source>
        <translation>Ábralo en un programa de hojas de cálculo y guárdelo como XLSX o CSV.</translation>
    </message>
    <message>
        <source>{file} is no workbook, or a damaged one.</source>
        <translation>{file} no es un libro de hojas de cálculo, o está dañado.</translation>
    </message>
    <message>
        <source>Open it in a spreadsheet program and save it as XLSX; a text is named .csv.</source>
        <translation>Ábralo en un programa de hojas de cálculo y guárdelo como XLSX; un texto lleva el nombre .csv.</translation>
    </message>
    <message>
        <source>{file} was not written: {reason}.</source>
        <translation>{file} no se escribió: {reason}.</translation>
    </message>
    <message>
        <source>Name another place.</source>
        <translation>Nombre otro lugar.</translation>
    </message>
    <message>
        <source>{file} is a folder.</source>
        <translation>{file} es una carpeta.</translation>
    </message>
    <message>
        <source>There is no file {file}.</source>
        <translation>No existe el archivo {file}.</translation>
    </message>
    <message>
        <source>{file} is a device or a pipe.</source>
        <translation>{file} es un dispositivo o una tubería.</translation>
    </message>
    <message>
        <source>{file} is empty.</source>
        <translation>{file} está vacío.</translation>
    </message>
    <message>
        <source>{file} is {another}.</source>
        <translation>{file} es {another}.</translation>
    </message>
    <message>
        <source>{file} has more than {most:,} MB.</source>
        <translation>{file} tiene más de {most:,} MB.</translation>
    </message>
    <message>
        <source>Split it in two.</source>
        <translation>Divídalo en dos.</translation>
    </message>
    <message>
        <source>Let it be read, or name another.</source>
        <translation>Permita que se lea, o nombre otro.</translation>
    </message>
    <message>
        <source>{file} was changed while it was read.</source>
        <translation>{file} cambió mientras se leía.</translation>
    </message>
    <message>
        <source>Start again.</source>
        <translation>Empiece de nuevo.</translation>
    </message>
    <message>
        <source>A job has a number of its own.</source>
        <translation>Un trabajo tiene un número propio.</translation>
    </message>
    <message>
        <source>The row has {cells} cells where the headers are {headers}.</source>
        <translation>La fila tiene {cells} celdas y los encabezados son {headers}.</translation>
    </message>
    <message>
        <source>The other prices of the file are in {currency}.</source>
        <translation>Los demás precios del archivo están en {currency}.</translation>
    </message>
    <message>
        <source>The odometer says {its_own} and its unit {unit}.</source>
        <translation>El cuentakilómetros dice {its_own} y su unidad {unit}.</translation>
    </message>
    <message>
        <source>This has more than {most} letters.</source>
        <translation>Esto tiene más de {most} caracteres.</translation>
    </message>
    <message>
        <source>It says what was decided, but return_of doesn&apos;t say about which earlier job.</source>
        <translation>Dice qué se decidió, pero return_of no dice sobre qué trabajo anterior.</translation>
    </message>
    <message>
        <source>Accepted: {accepted}.</source>
        <translation>Se acepta: {accepted}.</translation>
    </message>
    <message>
        <source>A job can&apos;t be its own return.</source>
        <translation>Un trabajo no puede ser su propia vuelta.</translation>
    </message>
    <message>
        <source>It came on {day}; that is later.</source>
        <translation>Llegó el {day}; eso es después.</translation>
    </message>
    <message>
        <source>The whole shop in one file, from which it comes back with all photos and its history. Best on another disk, such as a stick that you take home: a backup beside the shop burns with it. Each day one is made by itself too.</source>
        <translation>Todo el taller en un archivo, del que se recupera con todas las fotos y su historial. Mejor en otro disco, como una memoria USB que se lleve a casa: una copia junto al taller se quema con él. Además, cada día se hace una por sí sola.</translation>
    </message>
    <message>
        <source>Back up</source>
        <translation>Copia de seguridad</translation>
    </message>
    <message>
        <source>Back up now…</source>
        <translation>Hacer una copia ahora…</translation>
    </message>
    <message>
        <source>backing up</source>
        <translation>haciendo la copia de seguridad</translation>
    </message>
    <message>
        <source>Where is the backup to lie?</source>
        <translation>¿Dónde ha de estar la copia de seguridad?</translation>
    </message>
    <message>
        <source>Backups (*.zip)</source>
        <translation>Copias de seguridad (*.zip)</translation>
    </message>
    <message>
        <source>Writing {file}</source>
        <translation>Escribiendo {file}</translation>
    </message>
    <message>
        <source>Wrote {file}: {photos} and {entries}, {size:,.1f} MB. It was read again and is whole.</source>
        <translation>Se escribió {file}: {photos} y {entries}, {size:,.1f} MB. Se leyó de nuevo y está íntegra.</translation>
    </message>
    <message>
        <source>⚠ Gone or damaged in the shop, so not in it: {photos}; “benchwitness check” names what is missing.</source>
        <translation>⚠ Faltan o están dañadas en el taller y por eso no están en ella: {photos}; “benchwitness check” nombra lo que falta.</translation>
    </message>
    <message>
        <source>Reads everything once: the record, every row against the history, every photo, the search and the newest backup. Nothing is changed by it, and work goes on meanwhile.</source>
        <translation>Lee todo una vez: el registro, cada fila frente al historial, cada foto, la búsqueda y la copia de seguridad más nueva. No cambia nada, y mientras tanto se puede seguir trabajando.</translation>
    </message>
    <message>
        <source>Check</source>
        <translation>Comprobación</translation>
    </message>
    <message>
        <source>Check everything</source>
        <translation>Comprobar todo</translation>
    </message>
    <message>
        <source>checking</source>
        <translation>comprobando</translation>
    </message>
    <message>
        <source>What the check found</source>
        <translation>Qué halló la comprobación</translation>
    </message>
    <message>
        <source>Mend this</source>
        <translation>Arreglar esto</translation>
    </message>
    <message>
        <source>Checking everything</source>
        <translation>Comprobando todo</translation>
    </message>
    <message>
        <source>Stopped. Nothing was changed.</source>
        <translation>Detenido. No se cambió nada.</translation>
    </message>
    <message>
        <source>Stopped. What was mended by then stays; check again to see what is left.</source>
        <translation>Detenido. Lo arreglado hasta entonces queda; compruebe de nuevo para ver qué falta.</translation>
    </message>
    <message>
        <source>Mending</source>
        <translation>Arreglando</translation>
    </message>
    <message>
        <source>Mended: {what}</source>
        <translation>Arreglado: {what}</translation>
    </message>
    <message>
        <source>“Mend this” does so much:</source>
        <translation>“Arreglar esto” hace lo siguiente:</translation>
    </message>
    <message>
        <source>{photos} and {entries} were checked: all is whole.</source>
        <translation>Comprobado: {photos} y {entries}. Todo está íntegro.</translation>
    </message>
    <message>
        <source>⚠ {photos} and {entries} were checked; this was found:</source>
        <translation>⚠ Comprobado: {photos} y {entries}. Se halló esto:</translation>
    </message>
    <message>
        <source>Of {problems:,} problems the first {shown} are shown.</source>
        <translation>De {problems:,} problemas se muestran los primeros {shown}.</translation>
    </message>
    <message>
        <source>Something is lost.</source>
        <translation>Algo se ha perdido.</translation>
    </message>
    <message>
        <source>Above each column stands what it is read as, and how sure that is. Change it by the two lists, by Enter on a name at the left, or by dragging that name onto the column.</source>
        <translation>Encima de cada columna está como qué se lee y con cuánta seguridad. Cámbielo con las dos listas, con Intro sobre un nombre de la izquierda, o arrastrando ese nombre a la columna.</translation>
    </message>
    <message>
        <source>⚠ Some cells can’t be read before what is asked below is answered.</source>
        <translation>⚠ Algunas celdas no se pueden leer hasta que se responda lo que se pregunta abajo.</translation>
    </message>
    <message>
        <source>Which column is what</source>
        <translation>Qué columna es qué</translation>
    </message>
    <message>
        <source>Column of the file</source>
        <translation>Columna del archivo</translation>
    </message>
    <message>
        <source>It is read as</source>
        <translation>Se lee como</translation>
    </message>
    <message>
        <source>What a column can be read as; Enter gives it to the chosen column</source>
        <translation>Como qué se puede leer una columna; Intro se lo da a la columna elegida</translation>
    </message>
    <message>
        <source>from {header}</source>
        <translation>de {header}</translation>
    </message>
    <message>
        <source>no column yet</source>
        <translation>aún sin columna</translation>
    </message>
    <message>
        <source>The first rows as they are read</source>
        <translation>Las primeras filas, tal como se leen</translation>
    </message>
    <message>
        <source>All jobs as one table, every other table, the whole history and all photos, in a new folder. Any spreadsheet program reads it, without this program; brought into a new shop, nothing is lost.</source>
        <translation>Todos los trabajos en una tabla, todas las demás tablas, el historial entero y todas las fotos, en una carpeta nueva. Cualquier programa de hojas de cálculo la lee, sin este programa; incorporada a un taller nuevo, no se pierde nada.</translation>
    </message>
    <message>
        <source>Take everything out…</source>
        <translation>Sacar todo…</translation>
    </message>
    <message>
        <source>Take everything out</source>
        <translation>Sacar todo</translation>
    </message>
    <message>
        <source>taking everything out</source>
        <translation>sacando todo</translation>
    </message>
    <message>
        <source>A return on the day on which the earlier job came is not in {jobs}, which has no times of day; {returns} has it.</source>
        <translation>Una vuelta del mismo día en que llegó el trabajo anterior no está en {jobs}, que no tiene horas; está en {returns}.</translation>
    </message>
    <message>
        <source>Where is the new folder to lie?</source>
        <translation>¿Dónde ha de estar la carpeta nueva?</translation>
    </message>
    <message>
        <source>Wrote {jobs}, {photos} and {entries}, {size:,.1f} MB, into {folder}.</source>
        <translation>Escrito en {folder}: {jobs}, {photos} y {entries}, {size:,.1f} MB.</translation>
    </message>
    <message>
        <source>README.txt there says what is what. It can be read without this program.</source>
        <translation>README.txt, que está allí, dice qué es cada cosa. Se puede leer sin este programa.</translation>
    </message>
    <message>
        <source>⚠ Gone or damaged, so not written: {missing}.</source>
        <translation>⚠ Falta o está dañado, así que no se escribió: {missing}.</translation>
    </message>
    <message>
        <source>Choose a table of old jobs, or drop it here: CSV, text or XLSX, one row for each job, or for each part of a job. Nothing is written before you have seen what would happen.</source>
        <translation>Elija una tabla de trabajos antiguos o suéltela aquí: CSV, texto o XLSX, una fila por trabajo o por pieza de un trabajo. No se escribe nada antes de que usted haya visto qué pasaría.</translation>
    </message>
    <message>
        <source>Tables (*.csv *.tsv *.txt *.xlsx *.xlsm);;All files (*)</source>
        <translation>Tablas (*.csv *.tsv *.txt *.xlsx *.xlsm);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>Bring records in</source>
        <translation>Incorporar datos</translation>
    </message>
    <message>
        <source>The columns are taken from the last file like this one.</source>
        <translation>Las columnas se toman del último archivo parecido a este.</translation>
    </message>
    <message>
        <source>Forget this map</source>
        <translation>Olvidar este mapa</translation>
    </message>
    <message>
        <source>looking through the file</source>
        <translation>examinando el archivo</translation>
    </message>
    <message>
        <source>Letters</source>
        <translation>Letras</translation>
    </message>
    <message>
        <source>Cells parted by</source>
        <translation>Celdas separadas por</translation>
    </message>
    <message>
        <source>Sheet</source>
        <translation>Hoja</translation>
    </message>
    <message>
        <source>Headers in row</source>
        <translation>Encabezados en la fila</translation>
    </message>
    <message>
        <source>Choose a file…</source>
        <translation>Elegir un archivo…</translation>
    </message>
    <message>
        <source>Choose an export’s folder…</source>
        <translation>Elegir la carpeta de una exportación…</translation>
    </message>
    <message>
        <source>A table of jobs</source>
        <translation>Una tabla de trabajos</translation>
    </message>
    <message>
        <source>An export</source>
        <translation>Una exportación</translation>
    </message>
    <message>
        <source>Looking through {file}</source>
        <translation>Examinando {file}</translation>
    </message>
    <message>
        <source>as it looks ({found})</source>
        <translation>según parece ({found})</translation>
    </message>
    <message>
        <source>The file was not looked through to its end. Choose it once more.</source>
        <translation>El archivo no se examinó hasta el final. Elíjalo otra vez.</translation>
    </message>
    <message>
        <source>The file is being looked through.</source>
        <translation>Se está examinando el archivo.</translation>
    </message>
    <message>
        <source>Say which column holds the job number: by it a job is known again.</source>
        <translation>Diga qué columna contiene el número de trabajo: por él se reconoce un trabajo.</translation>
    </message>
    <message>
        <source>Answer first what the file leaves open.</source>
        <translation>Responda primero lo que el archivo deja abierto.</translation>
    </message>
    <message>
        <source>The file was not looked through.</source>
        <translation>El archivo no se examinó.</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>omitido</translation>
    </message>
    <message>
        <source>Row {row}, “{header}”</source>
        <translation>Fila {row}, “{header}”</translation>
    </message>
    <message>
        <source>{where}: “{written}” is left out.</source>
        <translation>{where}: “{written}” se omite.</translation>
    </message>
    <message>
        <source>The row is turned away: {why}</source>
        <translation>La fila se rechaza: {why}</translation>
    </message>
    <message>
        <source>{where}: ⚠ “{written}” can’t be read. {why}</source>
        <translation>{where}: ⚠ “{written}” no se puede leer. {why}</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>{where}: “{written}” is read as {field}: {becomes}.</source>
        <translation>{where}: “{written}” se lee como {field}: {becomes}.</translation>
    </message>
    <message>
        <source>⚠ {rows} of the first {of} rows can’t be read; row {row}: {why}</source>
        <translation>⚠ {rows} de las primeras {of} filas no se pueden leer; fila {row}: {why}</translation>
    </message>
    <message>
        <source>“{written}” as {field}. {why}</source>
        <translation>“{written}” como {field}. {why}</translation>
    </message>
    <message>
        <source>It is under way: wait until it is done, or stop it.</source>
        <translation>Está en marcha: espere a que termine o deténgalo.</translation>
    </message>
    <message>
        <source>Stopped. Nothing was written.</source>
        <translation>Detenido. No se escribió nada.</translation>
    </message>
    <message>
        <source>It was broken off.</source>
        <translation>Se interrumpió.</translation>
    </message>
    <message>
        <source>Save the rows that were turned away…</source>
        <translation>Guardar las filas rechazadas…</translation>
    </message>
    <message>
        <source>{rows} read: {counted}.</source>
        <translation>Leído: {rows}. De ellas, {counted}.</translation>
    </message>
    <message>
        <source>Undo takes all of it back: “{deed}”.</source>
        <translation>Deshacer lo anula todo: “{deed}”.</translation>
    </message>
    <message>
        <source>The shop as it was before lies in {place}.</source>
        <translation>El taller, tal como estaba antes, está en {place}.</translation>
    </message>
    <message>
        <source>Open job {number}</source>
        <translation>Abrir el trabajo {number}</translation>
    </message>
    <message>
        <source>There is no job {number} any more.</source>
        <translation>El trabajo {number} ya no existe.</translation>
    </message>
    <message>
        <source>Table (*.csv)</source>
        <translation>Tabla (*.csv)</translation>
    </message>
    <message>
        <source>Rows turned away</source>
        <translation>Filas rechazadas</translation>
    </message>
    <message>
        <source>They lie in {file}. Mend them there and choose that file: it is read like this one.</source>
        <translation>Están en {file}. Corríjalas allí y elija ese archivo: se lee como este.</translation>
    </message>
    <message>
        <source>Write {file}</source>
        <translation>Escribir {file}</translation>
    </message>
    <message>
        <source>Stopped; nothing was written.</source>
        <translation>Detenido; no se escribió nada.</translation>
    </message>
    <message>
        <source>{added:,} new, {updated:,} changed, {unchanged:,} as they were, {refused:,} turned away</source>
        <translation>{added:,} nuevas, {updated:,} cambiadas, {unchanged:,} como estaban, {refused:,} rechazadas</translation>
    </message>
    <message>
        <source>How far: {what}</source>
        <translation>Cuánto va hecho: {what}</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Detener</translation>
    </message>
    <message>
        <source>Stop: {what}</source>
        <translation>Detener: {what}</translation>
    </message>
    <message>
        <source>It stops as soon as it can.</source>
        <translation>Se detiene en cuanto puede.</translation>
    </message>
    <message>
        <source>Stopping …</source>
        <translation>Deteniendo …</translation>
    </message>
    <message>
        <source>Asked once about this file</source>
        <translation>Se pregunta una vez sobre este archivo</translation>
    </message>
    <message>
        <source>Row {row}: {says}</source>
        <translation>Fila {row}: {says}</translation>
    </message>
    <message>
        <source>Answered as for the last file like this.</source>
        <translation>Respondido como con el último archivo parecido.</translation>
    </message>
    <message>
        <source>Wait for what is under way, or stop it, before another file.</source>
        <translation>Espere a que acabe lo que está en marcha, o deténgalo, antes de tomar otro archivo.</translation>
    </message>
    <message>
        <source>{folder} is a folder, and not one that everything was taken out into.</source>
        <translation>{folder} es una carpeta, pero no una en la que se haya sacado todo.</translation>
    </message>
    <message>
        <source>Choose a table (CSV, text, XLSX), or the folder of an export.</source>
        <translation>Elija una tabla (CSV, texto, XLSX) o la carpeta de una exportación.</translation>
    </message>
    <message>
        <source>Something is written in this shop already: only {file} of it is read.</source>
        <translation>En este taller ya hay algo escrito: de ella solo se lee {file}.</translation>
    </message>
    <message>
        <source>One file at a time is read: the first of what was dropped.</source>
        <translation>Se lee un archivo cada vez: el primero de los que se soltaron.</translation>
    </message>
    <message>
        <source>A report for whoever looks after the program: its version, settings that are numbers or choices, and where in the program it went wrong. No customer, car, person or place is in it. It is shown here first, and sent by nobody but you.</source>
        <translation>Un informe para quien cuida el programa: su versión, los ajustes que son números u opciones, y en qué parte del programa falló. No contiene ningún cliente, vehículo, persona ni lugar. Primero se muestra aquí, y nadie lo envía más que usted.</translation>
    </message>
    <message>
        <source>Show the report</source>
        <translation>Mostrar el informe</translation>
    </message>
    <message>
        <source>If something went wrong</source>
        <translation>Si algo falló</translation>
    </message>
    <message>
        <source>looking through the log</source>
        <translation>examinando el diario</translation>
    </message>
    <message>
        <source>What the report says</source>
        <translation>Qué dice el informe</translation>
    </message>
    <message>
        <source>Write it into a file…</source>
        <translation>Escribirlo en un archivo…</translation>
    </message>
    <message>
        <source>Putting the report together</source>
        <translation>Reuniendo el informe</translation>
    </message>
    <message>
        <source>This is all that is in it.</source>
        <translation>Esto es todo lo que contiene.</translation>
    </message>
    <message>
        <source>Where is the report to lie?</source>
        <translation>¿Dónde ha de estar el informe?</translation>
    </message>
    <message>
        <source>Reports (*.zip)</source>
        <translation>Informes (*.zip)</translation>
    </message>
    <message>
        <source>Wrote {file}.</source>
        <translation>Se escribió {file}.</translation>
    </message>
    <message>
        <source>A backup comes back into a new folder, as a shop of its own: every byte is held against its checksum first. Nothing that is there is written over, and this shop stays as it is.</source>
        <translation>Una copia de seguridad se recupera en una carpeta nueva, como un taller aparte: antes se coteja cada byte con su suma de comprobación. No se sobrescribe nada, y este taller queda como está.</translation>
    </message>
    <message>
        <source>Backups (*.zip manifest.json);;All files (*)</source>
        <translation>Copias de seguridad (*.zip manifest.json);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>No backup was found. If you have one on another disk, press “Another backup…”.</source>
        <translation>No se halló ninguna copia de seguridad. Si tiene una en otro disco, pulse “Otra copia…”.</translation>
    </message>
    <message>
        <source>Choose a backup first: in the list, or with “Another backup…”.</source>
        <translation>Elija primero una copia: en la lista o con “Otra copia…”.</translation>
    </message>
    <message>
        <source>Bring it back into a new folder…</source>
        <translation>Recuperarla en una carpeta nueva…</translation>
    </message>
    <message>
        <source>Bring a backup back</source>
        <translation>Recuperar una copia de seguridad</translation>
    </message>
    <message>
        <source>bringing a backup back</source>
        <translation>recuperando una copia de seguridad</translation>
    </message>
    <message>
        <source>The backups of this shop</source>
        <translation>Las copias de seguridad de este taller</translation>
    </message>
    <message>
        <source>Another backup…</source>
        <translation>Otra copia…</translation>
    </message>
    <message>
        <source>Choose another backup: a file, or the manifest in a folder</source>
        <translation>Elegir otra copia de seguridad: un archivo, o el manifiesto de una carpeta</translation>
    </message>
    <message>
        <source>Open it</source>
        <translation>Abrirlo</translation>
    </message>
    <message>
        <source>Open the shop that was brought back</source>
        <translation>Abrir el taller recuperado</translation>
    </message>
    <message>
        <source>Looking for backups</source>
        <translation>Buscando copias de seguridad</translation>
    </message>
    <message>
        <source>A backup: its file, or the manifest in its folder</source>
        <translation>Una copia de seguridad: su archivo, o el manifiesto de su carpeta</translation>
    </message>
    <message>
        <source>Looking at {file}</source>
        <translation>Mirando {file}</translation>
    </message>
    <message>
        <source>Where is the new folder of the shop to lie?</source>
        <translation>¿Dónde ha de estar la carpeta nueva del taller?</translation>
    </message>
    <message>
        <source>Bringing the shop back into {folder}</source>
        <translation>Recuperando el taller en {folder}</translation>
    </message>
    <message>
        <source>The shop is back in {folder}, as it was on {made_at}: {photos} and {entries}, all whole. What was done since is not in it.</source>
        <translation>El taller está de nuevo en {folder}, tal como estaba el {made_at}: {photos} y {entries}, todo íntegro. Lo que se hizo desde entonces no está en él.</translation>
    </message>
    <message>
        <source>From a Backup</source>
        <translation>Desde una copia de seguridad</translation>
    </message>
    <message>
        <source>It did not work.</source>
        <translation>No funcionó.</translation>
    </message>
    <message>
        <source>Nothing was changed.</source>
        <translation>No se cambió nada.</translation>
    </message>
    <message>
        <source>Try it, then bring it in</source>
        <translation>Probarlo y después incorporarlo</translation>
    </message>
    <message>
        <source>See what would happen</source>
        <translation>Ver qué pasaría</translation>
    </message>
    <message>
        <source>bringing records in</source>
        <translation>incorporando datos</translation>
    </message>
    <message>
        <source>Trying {file}</source>
        <translation>Probando {file}</translation>
    </message>
    <message>
        <source>Bringing {file} in</source>
        <translation>Incorporando {file}</translation>
    </message>
    <message>
        <source>What would become of {rows}: {counted}.</source>
        <translation>Qué sería de {rows}: {counted}.</translation>
    </message>
    <message>
        <source>There is nothing to bring in.</source>
        <translation>No hay nada que incorporar.</translation>
    </message>
    <message>
        <source>Bring {rows} in</source>
        <translation>Incorporar {rows}</translation>
    </message>
    <message>
        <source>Keeping the map of the file</source>
        <translation>Guardando el mapa del archivo</translation>
    </message>
    <message>
        <source>Stopped.</source>
        <translation>Detenido.</translation>
    </message>
    <message>
        <source>Stopped. Nothing of the file was brought in.</source>
        <translation>Detenido. No se incorporó nada del archivo.</translation>
    </message>
    <message>
        <source>“{deed}” was undone or done again since.</source>
        <translation>“{deed}” se deshizo o se rehízo después.</translation>
    </message>
    <message>
        <source>Row</source>
        <translation>Fila</translation>
    </message>
    <message>
        <source>Column</source>
        <translation>Columna</translation>
    </message>
    <message>
        <source>Stands there</source>
        <translation>Ahí pone</translation>
    </message>
    <message>
        <source>Why it is turned away</source>
        <translation>Por qué se rechaza</translation>
    </message>
    <message>
        <source>The first {most} of {all:,} are listed.</source>
        <translation>Figuran las primeras {most} de {all:,}.</translation>
    </message>
    <message>
        <source>the whole row</source>
        <translation>la fila entera</translation>
    </message>
    <message>
        <source>An export of a whole shop</source>
        <translation>Una exportación de un taller entero</translation>
    </message>
    <message>
        <source>Bring everything back</source>
        <translation>Recuperar todo</translation>
    </message>
    <message>
        <source>bringing everything back</source>
        <translation>recuperando todo</translation>
    </message>
    <message>
        <source>{folder} holds a whole shop. Nothing is written in this one yet, so everything can come back: jobs, photos, rules and the history as it was. Each file is held against its checksum; all of it is brought back or nothing.</source>
        <translation>{folder} contiene un taller entero. En este aún no hay nada escrito, así que todo se puede recuperar: trabajos, fotos, normas y el historial tal como era. Cada archivo se coteja con su suma de comprobación; se recupera todo o nada.</translation>
    </message>
    <message>
        <source>Bringing {folder} back</source>
        <translation>Recuperando {folder}</translation>
    </message>
    <message>
        <source>Everything is back as it was: {jobs}, {photos}, {entries}.</source>
        <translation>Todo está de nuevo tal como estaba: {jobs}, {photos}, {entries}.</translation>
    </message>
    <message>
        <source>Brought back an export</source>
        <translation>Se recuperó una exportación</translation>
    </message>
    <message>
        <source>Stopped. Nothing was brought back.</source>
        <translation>Detenido. No se recuperó nada.</translation>
    </message>
    <message>
        <source>A job that is new here needs the day on which it came.</source>
        <translation>Un trabajo que es nuevo aquí necesita el día en que llegó.</translation>
    </message>
    <message>
        <source>The job of this number is another vehicle&apos;s: its VIN is {vin}.</source>
        <translation>El trabajo de este número es de otro vehículo: su VIN es {vin}.</translation>
    </message>
    <message>
        <source>The job of this number is another vehicle&apos;s: its plate is {plate}.</source>
        <translation>El trabajo de este número es de otro vehículo: su matrícula es {plate}.</translation>
    </message>
    <message>
        <source>It was closed on {day}; that is earlier.</source>
        <translation>Se cerró el {day}; eso es antes.</translation>
    </message>
    <message>
        <source>A return of this job came on {day}; that is earlier.</source>
        <translation>Una vuelta de este trabajo llegó el {day}; eso es antes.</translation>
    </message>
    <message>
        <source>It is a return of {number}, and would no longer be one on that day.</source>
        <translation>Es una vuelta de {number}, y con ese día dejaría de serlo.</translation>
    </message>
    <message>
        <source>An earlier row of this file says something else of the same job.</source>
        <translation>Una fila anterior de este archivo dice otra cosa del mismo trabajo.</translation>
    </message>
    <message>
        <source>Other jobs came on the same visit; change it in the program, for all of them.</source>
        <translation>Otros trabajos llegaron en la misma visita; cámbielo en el programa, para todos ellos.</translation>
    </message>
    <message>
        <source>That job must be closed before this one comes.</source>
        <translation>Ese trabajo tiene que estar cerrado antes de que llegue este.</translation>
    </message>
    <message>
        <source>Both came on one day; where no time of day tells more, that is one visit.</source>
        <translation>Los dos llegaron el mismo día; si ninguna hora dice más, eso es una sola visita.</translation>
    </message>
    <message>
        <source>Another row of this file says “{judgement}” of the same two jobs.</source>
        <translation>Otra fila de este archivo dice “{judgement}” de los mismos dos trabajos.</translation>
    </message>
    <message>
        <source>This row names no car; a return needs its plate or VIN.</source>
        <translation>Esta fila no nombra ningún vehículo; una vuelta necesita su matrícula o su VIN.</translation>
    </message>
    <message>
        <source>That job is another car&apos;s, by VIN and plate; a return is of the same car.</source>
        <translation>Ese trabajo es de otro vehículo, según VIN y matrícula; una vuelta es del mismo vehículo.</translation>
    </message>
    <message>
        <source>{job} (row {row:,}) names this job as the earlier one in its turn.</source>
        <translation>{job} (fila {row:,}) nombra a su vez este trabajo como el anterior.</translation>
    </message>
    <message>
        <source>{job} is refused too (row {row:,}).</source>
        <translation>{job} también se rechaza (fila {row:,}).</translation>
    </message>
    <message>
        <source>No job has this number, neither here nor in the file.</source>
        <translation>Ningún trabajo tiene este número, ni aquí ni en el archivo.</translation>
    </message>
    <message>
        <source>{id} is not above the id before, or too large</source>
        <translation>{id} no es mayor que el id anterior, o es demasiado grande</translation>
    </message>
    <message>
        <source>entry {number} is missing</source>
        <translation>falta el asiento {number}</translation>
    </message>
    <message>
        <source>it is no entry of a history</source>
        <translation>no es un asiento de un historial</translation>
    </message>
    <message>
        <source>the entry says one thing in its columns and another in its body</source>
        <translation>el asiento dice una cosa en sus columnas y otra en su cuerpo</translation>
    </message>
    <message>
        <source>it takes back an entry that is not before it</source>
        <translation>anula un asiento que no es anterior a él</translation>
    </message>
    <message>
        <source>the record can&apos;t hold its rows ({reason})</source>
        <translation>el registro no puede contener sus filas ({reason})</translation>
    </message>
    <message>
        <source>there is no {table} {id}</source>
        <translation>no existe {table} {id}</translation>
    </message>
    <message>
        <source>the record can&apos;t hold it ({reason})</source>
        <translation>el registro no puede contenerlo ({reason})</translation>
    </message>
    <message>
        <source>there is no table “{name}”</source>
        <translation>no existe la tabla “{name}”</translation>
    </message>
    <message>
        <source>{highest} can&apos;t be the highest id (there is {used})</source>
        <translation>{highest} no puede ser el id más alto (existe {used})</translation>
    </message>
    <message>
        <source>the table {table} is missing</source>
        <translation>falta la tabla {table}</translation>
    </message>
    <message>
        <source>{file}, id {id}</source>
        <translation>{file}, id {id}</translation>
    </message>
    <message>
        <source>{file}, row {row}, the headers: {why}</source>
        <translation>{file}, fila {row}, los encabezados: {why}</translation>
    </message>
    <message>
        <source>{file} has {columns:,} columns.</source>
        <translation>{file} tiene {columns:,} columnas.</translation>
    </message>
    <message>
        <source>At most {most} are read.</source>
        <translation>Se leen {most} como mucho.</translation>
    </message>
    <message>
        <source>{file} has {rows}; the headers can&apos;t stand in row {row}.</source>
        <translation>{file} tiene {rows}; los encabezados no pueden estar en la fila {row}.</translation>
    </message>
    <message>
        <source>Say another row for them (from the shell: header_row in the map).</source>
        <translation>Diga otra fila para ellos (desde la línea de órdenes: header_row en el mapa).</translation>
    </message>
    <message>
        <source>{file} holds no table.</source>
        <translation>{file} no contiene ninguna tabla.</translation>
    </message>
    <message>
        <source>Give a CSV or XLSX file with headers.</source>
        <translation>Dé un archivo CSV o XLSX con encabezados.</translation>
    </message>
    <message>
        <source>{file} is not written in {encoding} (after row {row}).</source>
        <translation>{file} no está escrito en {encoding} (después de la fila {row}).</translation>
    </message>
    <message>
        <source>Save it as UTF-8, or say its encoding (from the shell: in a map, --columns).</source>
        <translation>Guárdelo como UTF-8, o diga su codificación (desde la línea de órdenes: en un mapa, --columns).</translation>
    </message>
    <message>
        <source>commas</source>
        <translation>comas</translation>
    </message>
    <message>
        <source>semicolons</source>
        <translation>puntos y comas</translation>
    </message>
    <message>
        <source>tabs</source>
        <translation>tabuladores</translation>
    </message>
    <message>
        <source>bars</source>
        <translation>barras</translation>
    </message>
    <message>
        <source>Days are read {order}.</source>
        <translation>Los días se leen con {order}.</translation>
    </message>
    <message>
        <source>Years of two figures are {first} to {last}.</source>
        <translation>Los años de dos cifras van de {first} a {last}.</translation>
    </message>
    <message>
        <source>Numbers have a decimal {sign}.</source>
        <translation>Los números llevan {sign} decimal.</translation>
    </message>
    <message>
        <source>An odometer of “{written}” is read as {number}.</source>
        <translation>Un cuentakilómetros de “{written}” se lee como {number}.</translation>
    </message>
    <message>
        <source>Odometers are in {unit} where nothing else is said.</source>
        <translation>Los cuentakilómetros están en {unit} si no se dice otra cosa.</translation>
    </message>
    <message>
        <source>Left out: {headers}.</source>
        <translation>Se omite: {headers}.</translation>
    </message>
    <message>
        <source>{rows} below the headers</source>
        <translation>{rows} debajo de los encabezados</translation>
    </message>
    <message>
        <source>{rows}, parted by {parted}, read as {encoding}.</source>
        <translation>{rows}; celdas separadas por {parted}; se lee como {encoding}.</translation>
    </message>
    <message>
        <source>Its letters are partly UTF-8, partly not: each is read as what it is.</source>
        <translation>Sus letras son en parte UTF-8 y en parte no: cada una se lee como lo que es.</translation>
    </message>
    <message>
        <source>That is a guess by its letters: look whether names are right.</source>
        <translation>Eso es una suposición por sus letras: mire si los nombres están bien.</translation>
    </message>
    <message>
        <source>{headers} as {field}</source>
        <translation>{headers} como {field}</translation>
    </message>
    <message>
        <source>Read: {columns}.</source>
        <translation>Se lee: {columns}.</translation>
    </message>
    <message>
        <source>Something is written in this shop already.</source>
        <translation>En este taller ya hay algo escrito.</translation>
    </message>
    <message>
        <source>A whole export is brought back into a new shop (new-shop FOLDER).</source>
        <translation>Una exportación entera se recupera en un taller nuevo (new-shop FOLDER).</translation>
    </message>
    <message>
        <source>reading {file}</source>
        <translation>leyendo {file}</translation>
    </message>
    <message>
        <source>it doesn&apos;t say of photo {photo} what the table says</source>
        <translation>no dice de la foto {photo} lo que dice la tabla</translation>
    </message>
    <message>
        <source>{checksums} has no such photo with this hash</source>
        <translation>{checksums} no tiene ninguna foto así con este hash</translation>
    </message>
    <message>
        <source>it was changed while it was read</source>
        <translation>cambió mientras se leía</translation>
    </message>
    <message>
        <source>bringing back the photos</source>
        <translation>recuperando las fotos</translation>
    </message>
    <message>
        <source>{file} is there already.</source>
        <translation>{file} ya existe.</translation>
    </message>
    <message>
        <source>Move it away first.</source>
        <translation>Apártelo primero.</translation>
    </message>
    <message>
        <source>Make room.</source>
        <translation>Haga sitio.</translation>
    </message>
    <message>
        <source>Nothing was brought back.</source>
        <translation>No se recuperó nada.</translation>
    </message>
    <message>
        <source>this is no checksum of a file</source>
        <translation>esto no es la suma de comprobación de un archivo</translation>
    </message>
    <message>
        <source>{file} is named twice</source>
        <translation>{file} figura dos veces</translation>
    </message>
    <message>
        <source>{file} is no file of an export that is known</source>
        <translation>{file} no es un archivo de una exportación que se conozca</translation>
    </message>
    <message>
        <source>it names more than {most:,} files</source>
        <translation>nombra más de {most:,} archivos</translation>
    </message>
    <message>
        <source>{file} is missing in it</source>
        <translation>falta {file} en él</translation>
    </message>
    <message>
        <source>Export the shop again, or bring in jobs.csv alone.</source>
        <translation>Exporte el taller de nuevo, o incorpore solo jobs.csv.</translation>
    </message>
    <message>
        <source>{file}, row {row}</source>
        <translation>{file}, fila {row}</translation>
    </message>
    <message>
        <source>{file}, line {number}</source>
        <translation>{file}, línea {number}</translation>
    </message>
    <message>
        <source>it is not written in UTF-8</source>
        <translation>no está escrito en UTF-8</translation>
    </message>
    <message>
        <source>it is not as it was written (its checksum differs)</source>
        <translation>no está como se escribió (su suma de comprobación difiere)</translation>
    </message>
    <message>
        <source>holding the files against their checksums</source>
        <translation>cotejando los archivos con sus sumas de comprobación</translation>
    </message>
    <message>
        <source>it is not UTF-8</source>
        <translation>no es UTF-8</translation>
    </message>
    <message>
        <source>this is no CSV ({reason})</source>
        <translation>esto no es CSV ({reason})</translation>
    </message>
    <message>
        <source>it is larger than any photo</source>
        <translation>es más grande que cualquier foto</translation>
    </message>
    <message>
        <source>it is missing</source>
        <translation>falta</translation>
    </message>
    <message>
        <source>it is no plain file in the folder</source>
        <translation>no es un archivo normal dentro de la carpeta</translation>
    </message>
    <message>
        <source>it can&apos;t be read ({reason})</source>
        <translation>no se puede leer ({reason})</translation>
    </message>
    <message>
        <source>{file}, after row {row}</source>
        <translation>{file}, después de la fila {row}</translation>
    </message>
    <message>
        <source>the column “{column}” is not known</source>
        <translation>la columna “{column}” no se conoce</translation>
    </message>
    <message>
        <source>the column “{column}” is missing</source>
        <translation>falta la columna “{column}”</translation>
    </message>
    <message>
        <source>the columns stand in another order, or one twice</source>
        <translation>las columnas están en otro orden, o una está dos veces</translation>
    </message>
    <message>
        <source>it has {cells} cells where the headers are {headers}</source>
        <translation>tiene {cells} celdas y los encabezados son {headers}</translation>
    </message>
    <message>
        <source>“{cell}” can&apos;t stand here. {why}</source>
        <translation>“{cell}” no puede estar aquí. {why}</translation>
    </message>
    <message>
        <source>It was given up: it takes more time or memory than any sheet does, or it is damaged.</source>
        <translation>Se abandonó: toma más tiempo o memoria que cualquier hoja, o está dañado.</translation>
    </message>
    <message>
        <source>Open it in a spreadsheet program and save the sheet as CSV.</source>
        <translation>Ábralo en un programa de hojas de cálculo y guarde la hoja como CSV.</translation>
    </message>
    <message>
        <source>The workbook holds more text than is read.</source>
        <translation>El libro contiene más texto del que se lee.</translation>
    </message>
    <message>
        <source>The workbook needs more memory than it is given.</source>
        <translation>El libro necesita más memoria de la que se le da.</translation>
    </message>
    <message>
        <source>This is no XLSX workbook.</source>
        <translation>Esto no es un libro XLSX.</translation>
    </message>
    <message>
        <source>The workbook has no sheet “{sheet}”.</source>
        <translation>El libro no tiene la hoja “{sheet}”.</translation>
    </message>
    <message>
        <source>The workbook has no sheet.</source>
        <translation>El libro no tiene ninguna hoja.</translation>
    </message>
    <message>
        <source>The workbook&apos;s sheet is missing inside.</source>
        <translation>Falta la hoja dentro del libro.</translation>
    </message>
    <message>
        <source>The workbook is damaged or cut short.</source>
        <translation>El libro está dañado o cortado.</translation>
    </message>
    <message>
        <source>The workbook has more than {most:,} parts.</source>
        <translation>El libro tiene más de {most:,} partes.</translation>
    </message>
    <message>
        <source>The workbook is locked by a password.</source>
        <translation>El libro está bloqueado con una contraseña.</translation>
    </message>
    <message>
        <source>The workbook unpacks to far more than is read.</source>
        <translation>El libro se desempaqueta en mucho más de lo que se lee.</translation>
    </message>
    <message>
        <source>The workbook swells more than any sheet does when it is unpacked.</source>
        <translation>El libro se hincha al desempaquetarse más que cualquier hoja.</translation>
    </message>
    <message>
        <source>The workbook is packed in an unusual way.</source>
        <translation>El libro está empaquetado de una manera inusual.</translation>
    </message>
    <message>
        <source>A cell of row {row} has more text than a cell holds.</source>
        <translation>Una celda de la fila {row} tiene más texto del que cabe en una celda.</translation>
    </message>
    <message>
        <source>The workbook&apos;s rows are out of order.</source>
        <translation>Las filas del libro están desordenadas.</translation>
    </message>
    <message>
        <source>Row {row} has a cell in column {column}.</source>
        <translation>La fila {row} tiene una celda en la columna {column}.</translation>
    </message>
    <message>
        <source>Row {row} has a cell beyond column {column}.</source>
        <translation>La fila {row} tiene una celda más allá de la columna {column}.</translation>
    </message>
    <message>
        <source>At most {most} columns are read.</source>
        <translation>Se leen {most} columnas como mucho.</translation>
    </message>
    <message>
        <source>The workbook&apos;s cells are out of order.</source>
        <translation>Las celdas del libro están desordenadas.</translation>
    </message>
    <message>
        <source>The workbook refers to a text that it doesn&apos;t have.</source>
        <translation>El libro remite a un texto que no tiene.</translation>
    </message>
    <message>
        <source>The workbook has more text than is read.</source>
        <translation>El libro tiene más texto del que se lee.</translation>
    </message>
    <message>
        <source>The workbook is damaged inside.</source>
        <translation>El libro está dañado por dentro.</translation>
    </message>
    <message>
        <source>The workbook declares a document type; no spreadsheet does.</source>
        <translation>El libro declara un tipo de documento; ninguna hoja de cálculo lo hace.</translation>
    </message>
    <message>
        <source>It lacks kinds of work, causes of returns, promises of a job&apos;s own, sold cars and what customers said, so that comebacks are counted otherwise.</source>
        <translation>Le faltan las clases de trabajo, las causas de las vueltas, las promesas propias de un trabajo, los vehículos vendidos y lo que dijeron los clientes, de modo que los retornos se cuentan de otra manera.</translation>
    </message>
    <message>
        <source>a picture</source>
        <translation>una imagen</translation>
    </message>
    <message>
        <source>a PDF document</source>
        <translation>un documento PDF</translation>
    </message>
    <message>
        <source>a packed file</source>
        <translation>un archivo comprimido</translation>
    </message>
    <message>
        <source>JSON</source>
        <translation>JSON</translation>
    </message>
    <message>
        <source>a web page</source>
        <translation>una página web</translation>
    </message>
    <message>
        <source>XML</source>
        <translation>XML</translation>
    </message>
</context>
</TS>
