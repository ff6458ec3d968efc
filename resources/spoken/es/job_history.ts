<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es">
<context>
    <name></name>
    <message>
        <source>Added</source>
        <translation>Añadido</translation>
    </message>
    <message>
        <source>Taken out</source>
        <translation>Quitado</translation>
    </message>
    <message>
        <source>No.</source>
        <translation>N.º</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Cuándo</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Quién</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Qué se hizo</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Ahora</translation>
    </message>
    <message>
        <source>What was done to this job, newest first</source>
        <translation>Qué se hizo con este trabajo, lo más nuevo primero</translation>
    </message>
    <message>
        <source>What the marked entry changed</source>
        <translation>Qué cambió el asiento marcado</translation>
    </message>
    <message>
        <source>{who}, at {place}</source>
        <translation>{who}, en {place}</translation>
    </message>
    <message>
        <source>The history is being read …</source>
        <translation>Se está leyendo el historial …</translation>
    </message>
    <message>
        <source>The sealed copy is being made …</source>
        <translation>Se está haciendo la copia sellada …</translation>
    </message>
    <message>
        <source>No entry of the history speaks of this job.</source>
        <translation>Ningún asiento del historial habla de este trabajo.</translation>
    </message>
    <message>
        <source>Mark an entry in the list first.</source>
        <translation>Marque primero un asiento de la lista.</translation>
    </message>
    <message>
        <source>History</source>
        <translation>Historial</translation>
    </message>
    <message>
        <source>Undo this entry</source>
        <translation>Deshacer este asiento</translation>
    </message>
    <message>
        <source>Sealed copy…</source>
        <translation>Copia sellada…</translation>
    </message>
    <message>
        <source>closes the history</source>
        <translation>cierra el historial</translation>
    </message>
    <message>
        <source>Reading the history</source>
        <translation>Leyendo el historial</translation>
    </message>
    <message>
        <source>Undo this entry: take back the marked entry alone</source>
        <translation>Deshacer este asiento: anular solo el asiento marcado</translation>
    </message>
    <message>
        <source>Sealed copy of this job</source>
        <translation>Copia sellada de este trabajo</translation>
    </message>
    <message>
        <source>All evidence of this job in one file, so that any change to it shows</source>
        <translation>Todas las pruebas de este trabajo en un archivo, de modo que se note cualquier cambio en él</translation>
    </message>
    <message>
        <source>History of job {number}</source>
        <translation>Historial del trabajo {number}</translation>
    </message>
    <message>
        <source>What was done to job {number}</source>
        <translation>Qué se hizo con el trabajo {number}</translation>
    </message>
    <message>
        <source>Takes back this entry alone; what came later stays.</source>
        <translation>Anula solo este asiento; lo que vino después queda.</translation>
    </message>
    <message>
        <source>The history of this job is not read yet.</source>
        <translation>El historial de este trabajo aún no se ha leído.</translation>
    </message>
    <message>
        <source>That did not work; it is a mistake of the program.</source>
        <translation>Eso no funcionó; es un error del programa.</translation>
    </message>
    <message>
        <source>Where the sealed copy goes</source>
        <translation>Adónde va la copia sellada</translation>
    </message>
    <message>
        <source>Making the sealed copy</source>
        <translation>Haciendo la copia sellada</translation>
    </message>
    <message>
        <source>Written to {place}.</source>
        <translation>Escrita en {place}.</translation>
    </message>
    <message>
        <source>{photos} of its photos are gone or damaged and not in it.</source>
        <translation>{photos} de sus fotos faltan o están dañadas y no están en ella.</translation>
    </message>
    <message>
        <source>Its seal is {seal}: note it where nobody can change it. READ ME.txt in it says what it proves.</source>
        <translation>Su sello es {seal}: anótelo donde nadie pueda cambiarlo. READ ME.txt, dentro de ella, dice qué demuestra.</translation>
    </message>
    <message>
        <source>The history of job {number}</source>
        <translation>El historial del trabajo {number}</translation>
    </message>
    <message>
        <source>{who} at {place}</source>
        <translation>{who} en {place}</translation>
    </message>
    <message>
        <source>There is no folder {folder}.</source>
        <translation>No existe la carpeta {folder}.</translation>
    </message>
    <message>
        <source>Make it, or choose another one.</source>
        <translation>Créela, o elija otra.</translation>
    </message>
    <message>
        <source>{place} is there already.</source>
        <translation>{place} ya existe.</translation>
    </message>
    <message>
        <source>It was left as it is.</source>
        <translation>Se dejó como está.</translation>
    </message>
    <message>
        <source>Name a new one.</source>
        <translation>Nombre otro nuevo.</translation>
    </message>
    <message>
        <source>The sealed copy {place} was not made: {reason}.</source>
        <translation>No se hizo la copia sellada {place}: {reason}.</translation>
    </message>
    <message>
        <source>Nothing of it was left there.</source>
        <translation>Allí no quedó nada de ella.</translation>
    </message>
    <message>
        <source>Make room or ask for the right to write, or choose another place.</source>
        <translation>Haga sitio, pida permiso de escritura o elija otro lugar.</translation>
    </message>
    <message>
        <source>This job is not in the record any more.</source>
        <translation>Este trabajo ya no está en el registro.</translation>
    </message>
    <message>
        <source>It was undone.</source>
        <translation>Se deshizo.</translation>
    </message>
    <message>
        <source>as found</source>
        <translation>como se halló</translation>
    </message>
    <message>
        <source>after the repair</source>
        <translation>después de la reparación</translation>
    </message>
    <message>
        <source>●  holds</source>
        <translation>●  vale</translation>
    </message>
    <message>
        <source>○  undone</source>
        <translation>○  deshecho</translation>
    </message>
    <message>
        <source>↶  undoes</source>
        <translation>↶  deshace</translation>
    </message>
    <message>
        <source>↷  does again</source>
        <translation>↷  rehace</translation>
    </message>
    <message>
        <source>It came with a whole table of jobs: undo that one from the undo menu.</source>
        <translation>Llegó con una tabla entera de trabajos: deshágala desde el menú de deshacer.</translation>
    </message>
    <message>
        <source>It is undone already.</source>
        <translation>Ya está deshecho.</translation>
    </message>
    <message>
        <source>nobody named</source>
        <translation>nadie nombrado</translation>
    </message>
    <message>
        <source>This undoes entry {number:,}.</source>
        <translation>Esto deshace el asiento {number:,}.</translation>
    </message>
    <message>
        <source>The job came or went with {rows:,} rows at once.</source>
        <translation>El trabajo llegó o se fue junto con {rows:,} filas a la vez.</translation>
    </message>
    <message>
        <source>It also changed 1 row outside this job.</source>
        <translation>También cambió 1 fila fuera de este trabajo.</translation>
    </message>
    <message>
        <source>It also changed {rows:,} rows outside this job.</source>
        <translation>También cambió {rows:,} filas fuera de este trabajo.</translation>
    </message>
    <message>
        <source>A clock went back here: entry {earlier:,} says {earlier_moment}, entry {later:,} after it says {later_moment}.</source>
        <translation>Aquí un reloj retrocedió: el asiento {earlier:,} dice {earlier_moment}; el asiento {later:,}, posterior, dice {later_moment}.</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>one that is gone (its number was {number})</source>
        <translation>uno que ya no está (su número era {number})</translation>
    </message>
    <message>
        <source>{letters:,} letters of figures, whole in the sealed copy</source>
        <translation>{letters:,} caracteres de cifras, enteros en la copia sellada</translation>
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
        <source>odometer replaced</source>
        <translation>cuentakilómetros cambiado</translation>
    </message>
    <message>
        <source>sold</source>
        <translation>vendido</translation>
    </message>
    <message>
        <source>estimated</source>
        <translation>estimado</translation>
    </message>
    <message>
        <source>job</source>
        <translation>trabajo</translation>
    </message>
    <message>
        <source>shop</source>
        <translation>taller</translation>
    </message>
    <message>
        <source>mi</source>
        <translation>mi</translation>
    </message>
    <message>
        <source>km</source>
        <translation>km</translation>
    </message>
    <message>
        <source>days</source>
        <translation>días</translation>
    </message>
    <message>
        <source>drives</source>
        <translation>recorridos</translation>
    </message>
    <message>
        <source>wrote up</source>
        <translation>tomó nota</translation>
    </message>
    <message>
        <source>searched</source>
        <translation>buscó</translation>
    </message>
    <message>
        <source>refitted</source>
        <translation>volvió a montar</translation>
    </message>
    <message>
        <source>proved</source>
        <translation>probó</translation>
    </message>
    <message>
        <source>stored</source>
        <translation>almacenado</translation>
    </message>
    <message>
        <source>pending</source>
        <translation>pendiente</translation>
    </message>
    <message>
        <source>permanent</source>
        <translation>permanente</translation>
    </message>
    <message>
        <source>done</source>
        <translation>hecho</translation>
    </message>
    <message>
        <source>not needed</source>
        <translation>no hace falta</translation>
    </message>
    <message>
        <source>complete</source>
        <translation>completa</translation>
    </message>
    <message>
        <source>not run</source>
        <translation>no ejecutada</translation>
    </message>
    <message>
        <source>not fitted</source>
        <translation>no instalada</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Trabajo</translation>
    </message>
    <message>
        <source>Car</source>
        <translation>Vehículo</translation>
    </message>
    <message>
        <source>Plate</source>
        <translation>Matrícula</translation>
    </message>
    <message>
        <source>Plate as it is compared</source>
        <translation>Matrícula tal como se compara</translation>
    </message>
    <message>
        <source>Tag</source>
        <translation>Etiqueta</translation>
    </message>
    <message>
        <source>Described as</source>
        <translation>Descrito como</translation>
    </message>
    <message>
        <source>Odometer counts</source>
        <translation>El cuentakilómetros cuenta</translation>
    </message>
    <message>
        <source>miles</source>
        <translation>millas</translation>
    </message>
    <message>
        <source>kilometres</source>
        <translation>kilómetros</translation>
    </message>
    <message>
        <source>What happened to the car</source>
        <translation>Qué pasó con el vehículo</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Qué</translation>
    </message>
    <message>
        <source>On</source>
        <translation>Fecha</translation>
    </message>
    <message>
        <source>Odometer before</source>
        <translation>Cuentakilómetros antes</translation>
    </message>
    <message>
        <source>Odometer after</source>
        <translation>Cuentakilómetros después</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Customer</source>
        <translation>Cliente</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Phone</source>
        <translation>Teléfono</translation>
    </message>
    <message>
        <source>Visit</source>
        <translation>Visita</translation>
    </message>
    <message>
        <source>Came at</source>
        <translation>Llegó</translation>
    </message>
    <message>
        <source>Left at</source>
        <translation>Salió</translation>
    </message>
    <message>
        <source>Odometer when it came</source>
        <translation>Cuentakilómetros al llegar</translation>
    </message>
    <message>
        <source>Odometer when it left</source>
        <translation>Cuentakilómetros al salir</translation>
    </message>
    <message>
        <source>Odometer can&apos;t be read</source>
        <translation>El cuentakilómetros no se puede leer</translation>
    </message>
    <message>
        <source>Odometer is</source>
        <translation>El cuentakilómetros es</translation>
    </message>
    <message>
        <source>read</source>
        <translation>leído</translation>
    </message>
    <message>
        <source>told by the customer</source>
        <translation>contado por el cliente</translation>
    </message>
    <message>
        <source>Brought by</source>
        <translation>Traído por</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Número</translation>
    </message>
    <message>
        <source>Concern</source>
        <translation>Queja</translation>
    </message>
    <message>
        <source>Customer says it is the same trouble</source>
        <translation>El cliente dice que es el mismo problema</translation>
    </message>
    <message>
        <source>System</source>
        <translation>Sistema</translation>
    </message>
    <message>
        <source>Cause found</source>
        <translation>Causa hallada</translation>
    </message>
    <message>
        <source>yes, named</source>
        <translation>sí, nombrada</translation>
    </message>
    <message>
        <source>not caught</source>
        <translation>no reproducida</translation>
    </message>
    <message>
        <source>Cause</source>
        <translation>Causa</translation>
    </message>
    <message>
        <source>Correction</source>
        <translation>Corrección</translation>
    </message>
    <message>
        <source>Technician</source>
        <translation>Mecánico</translation>
    </message>
    <message>
        <source>Hours</source>
        <translation>Horas</translation>
    </message>
    <message>
        <source>Hours not billed</source>
        <translation>Horas sin facturar</translation>
    </message>
    <message>
        <source>Price</source>
        <translation>Precio</translation>
    </message>
    <message>
        <source>Proof</source>
        <translation>Prueba</translation>
    </message>
    <message>
        <source>Proof in words</source>
        <translation>Prueba en palabras</translation>
    </message>
    <message>
        <source>Proof drive</source>
        <translation>Recorrido de prueba</translation>
    </message>
    <message>
        <source>Declined or left undone</source>
        <translation>Rechazado o dejado sin hacer</translation>
    </message>
    <message>
        <source>Handed over</source>
        <translation>Entregado</translation>
    </message>
    <message>
        <source>Odometer at hand-over</source>
        <translation>Cuentakilómetros en la entrega</translation>
    </message>
    <message>
        <source>Window in days</source>
        <translation>Plazo en días</translation>
    </message>
    <message>
        <source>Window in distance</source>
        <translation>Plazo en distancia</translation>
    </message>
    <message>
        <source>Window ends</source>
        <translation>Fin del plazo</translation>
    </message>
    <message>
        <source>whichever ends first</source>
        <translation>lo que termine antes</translation>
    </message>
    <message>
        <source>when both have ended</source>
        <translation>cuando ambos han terminado</translation>
    </message>
    <message>
        <source>Window in months</source>
        <translation>Plazo en meses</translation>
    </message>
    <message>
        <source>Window promised by</source>
        <translation>Plazo prometido por</translation>
    </message>
    <message>
        <source>The fault comes once in</source>
        <translation>La avería se da una vez cada</translation>
    </message>
    <message>
        <source>The fault is counted in</source>
        <translation>La avería se cuenta en</translation>
    </message>
    <message>
        <source>Kind of work</source>
        <translation>Tipo de trabajo</translation>
    </message>
    <message>
        <source>Hours of searching</source>
        <translation>Horas de búsqueda</translation>
    </message>
    <message>
        <source>Who did it</source>
        <translation>Quién lo hizo</translation>
    </message>
    <message>
        <source>Did</source>
        <translation>Hizo</translation>
    </message>
    <message>
        <source>Symptom</source>
        <translation>Síntoma</translation>
    </message>
    <message>
        <source>By</source>
        <translation>De dónde sale</translation>
    </message>
    <message>
        <source>chosen by a person</source>
        <translation>elegido por una persona</translation>
    </message>
    <message>
        <source>read from the words</source>
        <translation>leído en las palabras</translation>
    </message>
    <message>
        <source>When it happens</source>
        <translation>Cuándo ocurre</translation>
    </message>
    <message>
        <source>Condition</source>
        <translation>Condición</translation>
    </message>
    <message>
        <source>Then it</source>
        <translation>Entonces</translation>
    </message>
    <message>
        <source>happens</source>
        <translation>ocurre</translation>
    </message>
    <message>
        <source>never happens</source>
        <translation>no ocurre nunca</translation>
    </message>
    <message>
        <source>Trouble code</source>
        <translation>Código de avería</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>Código</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Clase</translation>
    </message>
    <message>
        <source>Read</source>
        <translation>Leído</translation>
    </message>
    <message>
        <source>Looked at</source>
        <translation>Revisado</translation>
    </message>
    <message>
        <source>On the list</source>
        <translation>En la lista</translation>
    </message>
    <message>
        <source>findings</source>
        <translation>hallazgos</translation>
    </message>
    <message>
        <source>back on</source>
        <translation>montado de nuevo</translation>
    </message>
    <message>
        <source>proof</source>
        <translation>prueba</translation>
    </message>
    <message>
        <source>Outcome</source>
        <translation>Resultado</translation>
    </message>
    <message>
        <source>Met on the proof drive</source>
        <translation>Cumplido en el recorrido de prueba</translation>
    </message>
    <message>
        <source>It was</source>
        <translation>Fue</translation>
    </message>
    <message>
        <source>met</source>
        <translation>cumplida</translation>
    </message>
    <message>
        <source>not met</source>
        <translation>no cumplida</translation>
    </message>
    <message>
        <source>The car&apos;s own tests</source>
        <translation>Las pruebas propias del vehículo</translation>
    </message>
    <message>
        <source>As typed</source>
        <translation>Tal como se escribió</translation>
    </message>
    <message>
        <source>Read at</source>
        <translation>Leído el</translation>
    </message>
    <message>
        <source>The car&apos;s own test</source>
        <translation>Prueba propia del vehículo</translation>
    </message>
    <message>
        <source>Test</source>
        <translation>Prueba</translation>
    </message>
    <message>
        <source>It is</source>
        <translation>Está</translation>
    </message>
    <message>
        <source>Step of the proof</source>
        <translation>Paso de la prueba</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Paso</translation>
    </message>
    <message>
        <source>Done at</source>
        <translation>Hecho el</translation>
    </message>
    <message>
        <source>Caught before it left</source>
        <translation>Reproducida antes de salir</translation>
    </message>
    <message>
        <source>At</source>
        <translation>Momento</translation>
    </message>
    <message>
        <source>Right as typed</source>
        <translation>Está bien así</translation>
    </message>
    <message>
        <source>About</source>
        <translation>Sobre</translation>
    </message>
    <message>
        <source>Asked was</source>
        <translation>Se preguntó</translation>
    </message>
    <message>
        <source>kept on the bench</source>
        <translation>guardada en el banco de trabajo</translation>
    </message>
    <message>
        <source>kept for the customer</source>
        <translation>guardada para el cliente</translation>
    </message>
    <message>
        <source>given to the customer</source>
        <translation>entregada al cliente</translation>
    </message>
    <message>
        <source>sent back as core</source>
        <translation>devuelta como casco</translation>
    </message>
    <message>
        <source>sent to the supplier</source>
        <translation>enviada al proveedor</translation>
    </message>
    <message>
        <source>thrown away</source>
        <translation>desechada</translation>
    </message>
    <message>
        <source>length</source>
        <translation>longitud</translation>
    </message>
    <message>
        <source>point-to-line</source>
        <translation>punto a línea</translation>
    </message>
    <message>
        <source>circle</source>
        <translation>círculo</translation>
    </message>
    <message>
        <source>angle</source>
        <translation>ángulo</translation>
    </message>
    <message>
        <source>parallel-distance</source>
        <translation>paralelas</translation>
    </message>
    <message>
        <source>round-bar</source>
        <translation>barra redonda</translation>
    </message>
    <message>
        <source>count</source>
        <translation>recuento</translation>
    </message>
    <message>
        <source>note</source>
        <translation>nota</translation>
    </message>
    <message>
        <source>surface</source>
        <translation>superficie</translation>
    </message>
    <message>
        <source>bare-metal</source>
        <translation>metal desnudo</translation>
    </message>
    <message>
        <source>same picture</source>
        <translation>la misma imagen</translation>
    </message>
    <message>
        <source>card and outline</source>
        <translation>tarjeta y contorno</translation>
    </message>
    <message>
        <source>card and two clicks</source>
        <translation>tarjeta y dos clics</translation>
    </message>
    <message>
        <source>card, two clicks and outline</source>
        <translation>tarjeta, dos clics y contorno</translation>
    </message>
    <message>
        <source>outline</source>
        <translation>contorno</translation>
    </message>
    <message>
        <source>features</source>
        <translation>rasgos</translation>
    </message>
    <message>
        <source>clicks</source>
        <translation>clics</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguno</translation>
    </message>
    <message>
        <source>Pair</source>
        <translation>Par</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>Side</source>
        <translation>Lado</translation>
    </message>
    <message>
        <source>Dimension</source>
        <translation>Dimensión</translation>
    </message>
    <message>
        <source>Part kind</source>
        <translation>Clase de pieza</translation>
    </message>
    <message>
        <source>Position</source>
        <translation>Posición</translation>
    </message>
    <message>
        <source>Where the replacement is from</source>
        <translation>De dónde es el repuesto</translation>
    </message>
    <message>
        <source>Supplier</source>
        <translation>Proveedor</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>Lote</translation>
    </message>
    <message>
        <source>Number on the removed part</source>
        <translation>Número de la pieza desmontada</translation>
    </message>
    <message>
        <source>Number on the box</source>
        <translation>Número de la caja</translation>
    </message>
    <message>
        <source>Number on the replacement</source>
        <translation>Número del repuesto</translation>
    </message>
    <message>
        <source>What became of the removed part</source>
        <translation>Qué fue de la pieza desmontada</translation>
    </message>
    <message>
        <source>Note on the removed part</source>
        <translation>Nota sobre la pieza desmontada</translation>
    </message>
    <message>
        <source>Note on the replacement</source>
        <translation>Nota sobre el repuesto</translation>
    </message>
    <message>
        <source>Fitted</source>
        <translation>Montado</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Lectura</translation>
    </message>
    <message>
        <source>Taken with</source>
        <translation>Tomada con</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Valor</translation>
    </message>
    <message>
        <source>Seen</source>
        <translation>Visto</translation>
    </message>
    <message>
        <source>Taken at</source>
        <translation>Tomada el</translation>
    </message>
    <message>
        <source>Reading from a mark</source>
        <translation>Lectura de una marca</translation>
    </message>
    <message>
        <source>Mark</source>
        <translation>Marca</translation>
    </message>
    <message>
        <source>Its doubt</source>
        <translation>Su duda</translation>
    </message>
    <message>
        <source>State of a part</source>
        <translation>Estado de una pieza</translation>
    </message>
    <message>
        <source>Why a difference is right</source>
        <translation>Por qué una diferencia es correcta</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Por qué</translation>
    </message>
    <message>
        <source>By whose word</source>
        <translation>Quién lo dice</translation>
    </message>
    <message>
        <source>Maker&apos;s limits</source>
        <translation>Límites del fabricante</translation>
    </message>
    <message>
        <source>At least</source>
        <translation>Al menos</translation>
    </message>
    <message>
        <source>At most</source>
        <translation>Como mucho</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Origen</translation>
    </message>
    <message>
        <source>Photo of a part</source>
        <translation>Foto de una pieza</translation>
    </message>
    <message>
        <source>View</source>
        <translation>Vista</translation>
    </message>
    <message>
        <source>Bench sum</source>
        <translation>Cálculo de taller</translation>
    </message>
    <message>
        <source>Sum</source>
        <translation>Cálculo</translation>
    </message>
    <message>
        <source>Put in</source>
        <translation>Datos puestos</translation>
    </message>
    <message>
        <source>It says</source>
        <translation>Dice</translation>
    </message>
    <message>
        <source>On the sheet</source>
        <translation>En la hoja</translation>
    </message>
    <message>
        <source>Sort of file</source>
        <translation>Tipo de archivo</translation>
    </message>
    <message>
        <source>Bytes</source>
        <translation>Bytes</translation>
    </message>
    <message>
        <source>Pixels across</source>
        <translation>Píxeles de ancho</translation>
    </message>
    <message>
        <source>Pixels down</source>
        <translation>Píxeles de alto</translation>
    </message>
    <message>
        <source>Taken at, by the camera</source>
        <translation>Tomada el, según la cámara</translation>
    </message>
    <message>
        <source>Points</source>
        <translation>Puntos</translation>
    </message>
    <message>
        <source>Words</source>
        <translation>Palabras</translation>
    </message>
    <message>
        <source>Height above the card</source>
        <translation>Altura sobre la tarjeta</translation>
    </message>
    <message>
        <source>Doubt of that height</source>
        <translation>Duda de esa altura</translation>
    </message>
    <message>
        <source>Points on edges</source>
        <translation>Puntos en bordes</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Unidad</translation>
    </message>
    <message>
        <source>Doubt</source>
        <translation>Duda</translation>
    </message>
    <message>
        <source>Its budget</source>
        <translation>Su balance</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Ajustes</translation>
    </message>
    <message>
        <source>Scale</source>
        <translation>Escala</translation>
    </message>
    <message>
        <source>a bench card</source>
        <translation>una tarjeta de medida</translation>
    </message>
    <message>
        <source>taken out</source>
        <translation>quitada</translation>
    </message>
    <message>
        <source>Card</source>
        <translation>Tarjeta</translation>
    </message>
    <message>
        <source>Print of the card, times its size</source>
        <translation>Impresión de la tarjeta, veces su tamaño</translation>
    </message>
    <message>
        <source>Two points</source>
        <translation>Dos puntos</translation>
    </message>
    <message>
        <source>Length between them</source>
        <translation>Longitud entre ellos</translation>
    </message>
    <message>
        <source>Doubt of that length</source>
        <translation>Duda de esa longitud</translation>
    </message>
    <message>
        <source>What was fitted</source>
        <translation>Qué se ajustó</translation>
    </message>
    <message>
        <source>Made by version</source>
        <translation>Hecho por la versión</translation>
    </message>
    <message>
        <source>Overlay</source>
        <translation>Superposición</translation>
    </message>
    <message>
        <source>Old</source>
        <translation>Vieja</translation>
    </message>
    <message>
        <source>New</source>
        <translation>Nueva</translation>
    </message>
    <message>
        <source>How the new photo lies on the old one</source>
        <translation>Cómo cae la foto nueva sobre la vieja</translation>
    </message>
    <message>
        <source>Method</source>
        <translation>Método</translation>
    </message>
    <message>
        <source>Why so</source>
        <translation>Por qué así</translation>
    </message>
    <message>
        <source>Left over, pixels</source>
        <translation>Resto, píxeles</translation>
    </message>
    <message>
        <source>Left over</source>
        <translation>Resto</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Altura</translation>
    </message>
    <message>
        <source>Common points</source>
        <translation>Puntos comunes</translation>
    </message>
    <message>
        <source>fine</source>
        <translation>va bien</translation>
    </message>
    <message>
        <source>same trouble</source>
        <translation>el mismo problema</translation>
    </message>
    <message>
        <source>other trouble</source>
        <translation>otro problema</translation>
    </message>
    <message>
        <source>not reached</source>
        <translation>no localizado</translation>
    </message>
    <message>
        <source>car is gone</source>
        <translation>ya no tiene el vehículo</translation>
    </message>
    <message>
        <source>open</source>
        <translation>abierto</translation>
    </message>
    <message>
        <source>asked</source>
        <translation>pedido</translation>
    </message>
    <message>
        <source>paid</source>
        <translation>pagado</translation>
    </message>
    <message>
        <source>refused</source>
        <translation>rechazado</translation>
    </message>
    <message>
        <source>Return</source>
        <translation>Vuelta</translation>
    </message>
    <message>
        <source>Earlier job</source>
        <translation>Trabajo anterior</translation>
    </message>
    <message>
        <source>Later job</source>
        <translation>Trabajo posterior</translation>
    </message>
    <message>
        <source>Judged</source>
        <translation>Juzgado</translation>
    </message>
    <message>
        <source>Judged by</source>
        <translation>Juzgado por</translation>
    </message>
    <message>
        <source>Judged at</source>
        <translation>Juzgado el</translation>
    </message>
    <message>
        <source>It came back because</source>
        <translation>Volvió porque</translation>
    </message>
    <message>
        <source>Cost</source>
        <translation>Coste</translation>
    </message>
    <message>
        <source>What will change</source>
        <translation>Qué va a cambiar</translation>
    </message>
    <message>
        <source>The same car</source>
        <translation>El mismo vehículo</translation>
    </message>
    <message>
        <source>Also</source>
        <translation>También</translation>
    </message>
    <message>
        <source>What helped</source>
        <translation>Qué ayudó</translation>
    </message>
    <message>
        <source>Evidence</source>
        <translation>En qué se apoya</translation>
    </message>
    <message>
        <source>The first technician says</source>
        <translation>El primer mecánico dice</translation>
    </message>
    <message>
        <source>Second look</source>
        <translation>Segunda mirada</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation>Piezas</translation>
    </message>
    <message>
        <source>Sublet work</source>
        <translation>Trabajo subcontratado</translation>
    </message>
    <message>
        <source>Tow</source>
        <translation>Grúa</translation>
    </message>
    <message>
        <source>Loan car</source>
        <translation>Vehículo de cortesía</translation>
    </message>
    <message>
        <source>Goodwill</source>
        <translation>Atención comercial</translation>
    </message>
    <message>
        <source>Got back</source>
        <translation>Recuperado</translation>
    </message>
    <message>
        <source>Who changes it</source>
        <translation>Quién lo cambia</translation>
    </message>
    <message>
        <source>To be changed by</source>
        <translation>Por cambiar hasta el</translation>
    </message>
    <message>
        <source>Changed on</source>
        <translation>Cambiado el</translation>
    </message>
    <message>
        <source>To be looked at again on</source>
        <translation>Por revisar de nuevo el</translation>
    </message>
    <message>
        <source>Could somebody have been hurt</source>
        <translation>Alguien pudo haberse lastimado</translation>
    </message>
    <message>
        <source>Customer asked</source>
        <translation>Cliente preguntado</translation>
    </message>
    <message>
        <source>Answer</source>
        <translation>Respuesta</translation>
    </message>
    <message>
        <source>Odometer told</source>
        <translation>Cuentakilómetros dicho</translation>
    </message>
    <message>
        <source>Asked by</source>
        <translation>Preguntó</translation>
    </message>
    <message>
        <source>Known from</source>
        <translation>Se sabe por</translation>
    </message>
    <message>
        <source>what was told</source>
        <translation>lo que se contó</translation>
    </message>
    <message>
        <source>another shop&apos;s bill</source>
        <translation>una factura de otro taller</translation>
    </message>
    <message>
        <source>Money owed</source>
        <translation>Dinero debido</translation>
    </message>
    <message>
        <source>For</source>
        <translation>Por</translation>
    </message>
    <message>
        <source>the old part</source>
        <translation>la pieza vieja</translation>
    </message>
    <message>
        <source>a claim</source>
        <translation>una reclamación</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Importe</translation>
    </message>
    <message>
        <source>Since</source>
        <translation>Desde</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Siguiente paso</translation>
    </message>
    <message>
        <source>Ended on</source>
        <translation>Acabado el</translation>
    </message>
</context>
</TS>
