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
        <source>The search index was made anew from {jobs:,} jobs.</source>
        <translation>El índice de búsqueda se hizo de nuevo a partir de {jobs:,} trabajos.</translation>
    </message>
    <message>
        <source>{made:,} thumbnails were made anew; {gone:,} that can&apos;t be made went.</source>
        <translation>{made:,} miniaturas se hicieron de nuevo; se quitaron {gone:,} que no se pueden hacer.</translation>
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
</context>
</TS>
