<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es">
<context>
    <name></name>
    <message>
        <source>There is no screen here: the window cannot be opened.</source>
        <translation>Aquí no hay pantalla: la ventana no se puede abrir.</translation>
    </message>
    <message>
        <source> of {job} is not accepted; it would be lost with another job.</source>
        <translation> de {job} no se acepta; se perdería con otro trabajo.</translation>
    </message>
    <message>
        <source> of {job} is not sent yet; it would be lost with another job.</source>
        <translation> de {job} no se ha enviado todavía; se perdería con otro trabajo.</translation>
    </message>
    <message>
        <source>Mend or empty it first.</source>
        <translation>Corríjalo o vacíelo primero.</translation>
    </message>
    <message>
        <source>Your own shop…</source>
        <translation>Su propio taller…</translation>
    </message>
    <message>
        <source>Everything in this shop is invented: it is there to be tried</source>
        <translation>Todo en este taller es inventado: está para probarlo</translation>
    </message>
    <message>
        <source>A car is here</source>
        <translation>Llegó un vehículo</translation>
    </message>
    <message>
        <source>Find</source>
        <translation>Buscar</translation>
    </message>
    <message>
        <source>Find: to the search field</source>
        <translation>Buscar: al campo de búsqueda</translation>
    </message>
    <message>
        <source>Laying the tools out</source>
        <translation>Preparando las herramientas</translation>
    </message>
    <message>
        <source>Looking who is back</source>
        <translation>Mirando quién ha vuelto</translation>
    </message>
    <message>
        <source>Which shop?</source>
        <translation>¿Qué taller?</translation>
    </message>
    <message>
        <source>From a Backup</source>
        <translation>Desde una copia de seguridad</translation>
    </message>
    <message>
        <source>Backing the shop up and bringing its record up to date</source>
        <translation>Haciendo una copia de seguridad del taller y poniendo su registro al día</translation>
    </message>
    <message>
        <source>Something was typed while the server was away, and not sent before the program ended.</source>
        <translation>Mientras el servidor no estaba se escribió algo, y no se envió antes de que el programa terminara.</translation>
    </message>
    <message>
        <source>It is kept on this computer.</source>
        <translation>Se conserva en este equipo.</translation>
    </message>
    <message>
        <source>Look under “{place}” on the left.</source>
        <translation>Mire en “{place}”, a la izquierda.</translation>
    </message>
    <message>
        <source>Making the demo shop</source>
        <translation>Haciendo el taller de muestra</translation>
    </message>
    <message>
        <source>Taking the demo shop away</source>
        <translation>Quitando el taller de muestra</translation>
    </message>
    <message>
        <source>{file} cannot be written.</source>
        <translation>{file} no se puede escribir.</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personas</translation>
    </message>
    <message>
        <source>Windows</source>
        <translation>Plazos</translation>
    </message>
    <message>
        <source>Look and language</source>
        <translation>Aspecto e idioma</translation>
    </message>
    <message>
        <source>Where it is</source>
        <translation>Dónde está</translation>
    </message>
</context>
</TS>
