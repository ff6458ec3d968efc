<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es">
<context>
    <name></name>
    <message>
        <source>the search index</source>
        <translation>el índice de búsqueda</translation>
    </message>
    <message>
        <source>the thumbnails</source>
        <translation>las miniaturas</translation>
    </message>
    <message>
        <source>the photo folder</source>
        <translation>la carpeta de fotos</translation>
    </message>
    <message>
        <source>copies beside the record</source>
        <translation>copias junto al registro</translation>
    </message>
    <message>
        <source>Photos that are gone or were changed are looked for on this computer and in the backups; those that are whole there are put back. What lay in their place is moved into “trash”.</source>
        <translation>Las fotos que faltan o cambiaron se buscan en este equipo y en las copias de seguridad; las que allí están íntegras se ponen de nuevo. Lo que había en su lugar va a “trash”.</translation>
    </message>
    <message>
        <source>The search index is made anew from the jobs.</source>
        <translation>El índice de búsqueda se hace de nuevo a partir de los trabajos.</translation>
    </message>
    <message>
        <source>Torn thumbnails go, and are made anew from their photos.</source>
        <translation>Las miniaturas rotas se quitan y se hacen de nuevo a partir de sus fotos.</translation>
    </message>
    <message>
        <source>Files among the photos that nothing names are moved into the folder “trash”; nothing is deleted.</source>
        <translation>Los archivos que están entre las fotos y que nada nombra van a la carpeta “trash”; no se borra nada.</translation>
    </message>
    <message>
        <source>Former copies of the record are moved into the folder “trash” of the shop; nothing is deleted.</source>
        <translation>Las copias anteriores del registro van a la carpeta “trash” del taller; no se borra nada.</translation>
    </message>
    <message>
        <source>Mending {where}</source>
        <translation>Reparando: {where}</translation>
    </message>
    <message>
        <source>The search index was made anew from {jobs}.</source>
        <translation>El índice de búsqueda se hizo de nuevo con {jobs}.</translation>
    </message>
    <message>
        <source>Thumbnails made anew: {made:,}; gone, because they can&apos;t be made: {gone:,}.</source>
        <translation>Miniaturas hechas de nuevo: {made:,}; quitadas, porque no se pueden hacer: {gone:,}.</translation>
    </message>
    <message>
        <source>Nothing was moved out of the photo folder: first the history must be readable.</source>
        <translation>No se movió nada de la carpeta de fotos: primero hay que poder leer el historial.</translation>
    </message>
    <message>
        <source>Moved {file} to {place}.</source>
        <translation>{file} se movió a {place}.</translation>
    </message>
    <message>
        <source>Copying the record, to look at it in peace</source>
        <translation>Copiando el registro, para mirarlo con calma</translation>
    </message>
    <message>
        <source>Looking at jobs, returns and the search</source>
        <translation>Mirando los trabajos, los retornos y la búsqueda</translation>
    </message>
    <message>
        <source>Looking at the backups</source>
        <translation>Mirando las copias de seguridad</translation>
    </message>
    <message>
        <source>the bench</source>
        <translation>el banco</translation>
    </message>
    <message>
        <source>the shop&apos;s own part kinds</source>
        <translation>las clases de pieza propias del taller</translation>
    </message>
    <message>
        <source>the database</source>
        <translation>la base de datos</translation>
    </message>
    <message>
        <source>So much is damaged that not all of it could be looked at.</source>
        <translation>Hay tanto dañado que no se pudo mirar todo.</translation>
    </message>
    <message>
        <source>Wrote {card} and {layout}.</source>
        <translation>Se escribieron {card} y {layout}.</translation>
    </message>
    <message>
        <source>Print it at 100 %, not fitted to the page, and lay it flat on a board.</source>
        <translation>Imprímala al 100 %, sin ajustar a la página, y póngala plana sobre una tabla.</translation>
    </message>
    <message>
        <source>Then measure its ruler with a calliper: it should be {length:g} mm.</source>
        <translation>Mida después su regla con un calibre: debe tener {length:g} mm.</translation>
    </message>
    <message>
        <source>Wrote {file}.</source>
        <translation>Se escribió {file}.</translation>
    </message>
    <message>
        <source>Wrote {place}: {photos}, {entries} about the job, and the chain from entry {first:,} to {last:,}.</source>
        <translation>Se escribió {place}: {photos}, {entries} sobre el trabajo y la cadena del asiento {first:,} al {last:,}.</translation>
    </message>
    <message>
        <source>Its seal is {seal}. Note it where nobody can change it.</source>
        <translation>Su sello es {seal}. Anótelo donde nadie pueda cambiarlo.</translation>
    </message>
    <message>
        <source>“python3 verify.py” in it says whether it is whole; READ ME.txt, what that proves.</source>
        <translation>“python3 verify.py” en ella dice si está íntegra; READ ME.txt, qué prueba eso.</translation>
    </message>
    <message>
        <source>Not in it, because it is gone or damaged in the shop: photo {photo}.</source>
        <translation>No está en ella, porque falta o está dañada en el taller: la foto {photo}.</translation>
    </message>
    <message>
        <source>That record was unpacked alone, without its photos, among temporary files.</source>
        <translation>Ese registro se desempaquetó solo, sin sus fotos, entre archivos temporales.</translation>
    </message>
    <message>
        <source>It was left as it is: what is written there goes with it.</source>
        <translation>Se dejó como está: lo que se escriba ahí se pierde con él.</translation>
    </message>
    <message>
        <source>Bring the backup back as a whole.</source>
        <translation>Recupere la copia de seguridad entera.</translation>
    </message>
    <message>
        <source>{folder} can&apos;t be taken away whole: {error}.</source>
        <translation>{folder} no se puede quitar entero: {error}.</translation>
    </message>
    <message>
        <source>Close what has it open, and try again.</source>
        <translation>Cierre lo que lo tenga abierto e inténtelo de nuevo.</translation>
    </message>
</context>
</TS>
