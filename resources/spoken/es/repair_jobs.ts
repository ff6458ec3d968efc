<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es">
<context>
    <name></name>
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
        <source>found</source>
        <translation>lo hallado</translation>
    </message>
    <message>
        <source>after repair</source>
        <translation>tras la reparación</translation>
    </message>
    <message>
        <source>when it happens</source>
        <translation>cuándo ocurre</translation>
    </message>
    <message>
        <source>Take a car in</source>
        <translation>Recibir un vehículo</translation>
    </message>
    <message>
        <source>Add a concern</source>
        <translation>Añadir una queja</translation>
    </message>
    <message>
        <source>Write down the concern</source>
        <translation>Anotar la queja</translation>
    </message>
    <message>
        <source>Choose the symptom</source>
        <translation>Elegir el síntoma</translation>
    </message>
    <message>
        <source>Note “the same trouble again”</source>
        <translation>Anotar “otra vez el mismo problema”</translation>
    </message>
    <message>
        <source>Answer when it happens</source>
        <translation>Responder cuándo ocurre</translation>
    </message>
    <message>
        <source>the kind of a code</source>
        <translation>la clase de un código</translation>
    </message>
    <message>
        <source>when a code was read</source>
        <translation>cuándo se leyó un código</translation>
    </message>
    <message>
        <source>Write down {code}</source>
        <translation>Anotar {code}</translation>
    </message>
    <message>
        <source>Take a code out</source>
        <translation>Quitar un código</translation>
    </message>
    <message>
        <source>There is nothing to write down yet.</source>
        <translation>Todavía no hay nada que anotar.</translation>
    </message>
    <message>
        <source>Type what was seen.</source>
        <translation>Escriba lo que se vio.</translation>
    </message>
    <message>
        <source>Write down a finding</source>
        <translation>Anotar un hallazgo</translation>
    </message>
    <message>
        <source>Take a finding out</source>
        <translation>Quitar un hallazgo</translation>
    </message>
    <message>
        <source>a list of checks</source>
        <translation>una lista de comprobaciones</translation>
    </message>
    <message>
        <source>Tick a check</source>
        <translation>Marcar una comprobación</translation>
    </message>
    <message>
        <source>Name the cause</source>
        <translation>Nombrar la causa</translation>
    </message>
    <message>
        <source>Take “not caught” back</source>
        <translation>Retirar “no reproducida”</translation>
    </message>
    <message>
        <source>Say “not caught”</source>
        <translation>Decir “no reproducida”</translation>
    </message>
    <message>
        <source>Write down the correction</source>
        <translation>Anotar la corrección</translation>
    </message>
    <message>
        <source>Choose the system</source>
        <translation>Elegir el sistema</translation>
    </message>
    <message>
        <source>Say who did it</source>
        <translation>Decir quién lo hizo</translation>
    </message>
    <message>
        <source>That number of hours</source>
        <translation>Ese número de horas</translation>
    </message>
    <message>
        <source>Write down the hours</source>
        <translation>Anotar las horas</translation>
    </message>
    <message>
        <source>That price in cents</source>
        <translation>Ese precio en centavos</translation>
    </message>
    <message>
        <source>Write down the price</source>
        <translation>Anotar el precio</translation>
    </message>
    <message>
        <source>That level of proof</source>
        <translation>Ese nivel de prueba</translation>
    </message>
    <message>
        <source>How far it was proved is as it was.</source>
        <translation>Hasta dónde se probó queda como estaba.</translation>
    </message>
    <message>
        <source>Say how far it was proved</source>
        <translation>Decir hasta dónde se probó</translation>
    </message>
    <message>
        <source>Write down what was declined</source>
        <translation>Anotar lo que se rechazó</translation>
    </message>
    <message>
        <source>Before the car leaves, say {listed}.</source>
        <translation>Antes de que el vehículo salga, diga {listed}.</translation>
    </message>
    <message>
        <source>Everything so far is kept.</source>
        <translation>Todo lo anotado hasta ahora se conserva.</translation>
    </message>
    <message>
        <source>The car was handed over already.</source>
        <translation>El vehículo ya se había entregado.</translation>
    </message>
    <message>
        <source>Its window stays as it was given.</source>
        <translation>Su plazo queda como se dio.</translation>
    </message>
    <message>
        <source>The car came on {came_at}; it cannot leave on {moment}.</source>
        <translation>El vehículo llegó el {came_at}; no puede salir el {moment}.</translation>
    </message>
    <message>
        <source>Look at this computer&apos;s clock.</source>
        <translation>Mire el reloj de este equipo.</translation>
    </message>
    <message>
        <source>Hand the car over</source>
        <translation>Entregar el vehículo</translation>
    </message>
    <message>
        <source>Keep it as typed</source>
        <translation>Dejarlo como se escribió</translation>
    </message>
    <message>
        <source>Who is it?</source>
        <translation>¿Quién es?</translation>
    </message>
    <message>
        <source>Type a name.</source>
        <translation>Escriba un nombre.</translation>
    </message>
    <message>
        <source>Add {name}</source>
        <translation>Añadir {name}</translation>
    </message>
    <message>
        <source>Take a person off</source>
        <translation>Quitar a una persona</translation>
    </message>
    <message>
        <source>fewer than 1 of {many:,} cases</source>
        <extracomment>A smaller share is not told apart from others.</extracomment>
        <translation>menos de 1 de cada {many:,} casos</translation>
    </message>
    <message>
        <source>{percent} of cases</source>
        <translation>{percent} de los casos</translation>
    </message>
    <message>
        <source>below {percent:g} %</source>
        <translation>menos de {percent:g} %</translation>
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
        <source>not asked</source>
        <translation>no preguntado</translation>
    </message>
    <message>
        <source>Engine</source>
        <translation>Motor</translation>
    </message>
    <message>
        <source>cold</source>
        <translation>en frío</translation>
    </message>
    <message>
        <source>in the first minute</source>
        <translation>en el primer minuto</translation>
    </message>
    <message>
        <source>warming up</source>
        <translation>al calentarse</translation>
    </message>
    <message>
        <source>hot</source>
        <translation>en caliente</translation>
    </message>
    <message>
        <source>started again hot</source>
        <translation>al volver a arrancar en caliente</translation>
    </message>
    <message>
        <source>Pedal and load</source>
        <translation>Pedal y carga</translation>
    </message>
    <message>
        <source>at idle</source>
        <translation>al ralentí</translation>
    </message>
    <message>
        <source>a light press on the pedal</source>
        <translation>al pisar poco el pedal</translation>
    </message>
    <message>
        <source>steady speed</source>
        <translation>a velocidad constante</translation>
    </message>
    <message>
        <source>pulling hard or uphill</source>
        <translation>al acelerar fuerte o cuesta arriba</translation>
    </message>
    <message>
        <source>lifting off</source>
        <translation>al soltar el acelerador</translation>
    </message>
    <message>
        <source>moving off or changing direction</source>
        <translation>al arrancar o cambiar de sentido</translation>
    </message>
    <message>
        <source>Speed and gear</source>
        <translation>Velocidad y marcha</translation>
    </message>
    <message>
        <source>slow</source>
        <translation>lento</translation>
    </message>
    <message>
        <source>fast</source>
        <translation>rápido</translation>
    </message>
    <message>
        <source>in one gear only</source>
        <translation>solo en una marcha</translation>
    </message>
    <message>
        <source>standing in gear</source>
        <translation>parado con marcha puesta</translation>
    </message>
    <message>
        <source>changing gear</source>
        <translation>al cambiar de marcha</translation>
    </message>
    <message>
        <source>Road and steering</source>
        <translation>Carretera y dirección</translation>
    </message>
    <message>
        <source>smooth road</source>
        <translation>carretera lisa</translation>
    </message>
    <message>
        <source>rough road</source>
        <translation>carretera irregular</translation>
    </message>
    <message>
        <source>over a bump</source>
        <translation>al pasar un bache</translation>
    </message>
    <message>
        <source>in a turn</source>
        <translation>en una curva</translation>
    </message>
    <message>
        <source>on full lock</source>
        <translation>con la dirección a tope</translation>
    </message>
    <message>
        <source>parking</source>
        <translation>al aparcar</translation>
    </message>
    <message>
        <source>Brakes</source>
        <translation>Frenos</translation>
    </message>
    <message>
        <source>braking</source>
        <translation>al frenar</translation>
    </message>
    <message>
        <source>braking hard</source>
        <translation>al frenar fuerte</translation>
    </message>
    <message>
        <source>just after a drive</source>
        <translation>justo después de un recorrido</translation>
    </message>
    <message>
        <source>Weather</source>
        <translation>Clima</translation>
    </message>
    <message>
        <source>dry</source>
        <translation>tiempo seco</translation>
    </message>
    <message>
        <source>damp</source>
        <translation>humedad</translation>
    </message>
    <message>
        <source>rain</source>
        <translation>lluvia</translation>
    </message>
    <message>
        <source>after a wash</source>
        <translation>después de un lavado</translation>
    </message>
    <message>
        <source>frost</source>
        <translation>helada</translation>
    </message>
    <message>
        <source>a hot day</source>
        <translation>un día de calor</translation>
    </message>
    <message>
        <source>Fuel</source>
        <translation>Combustible</translation>
    </message>
    <message>
        <source>tank full</source>
        <translation>depósito lleno</translation>
    </message>
    <message>
        <source>tank low</source>
        <translation>depósito bajo</translation>
    </message>
    <message>
        <source>just filled up</source>
        <translation>recién repostado</translation>
    </message>
    <message>
        <source>fuel from elsewhere</source>
        <translation>combustible de otro sitio</translation>
    </message>
    <message>
        <source>Electrics</source>
        <translation>Electricidad</translation>
    </message>
    <message>
        <source>air conditioning on</source>
        <translation>aire acondicionado puesto</translation>
    </message>
    <message>
        <source>lamps on</source>
        <translation>luces encendidas</translation>
    </message>
    <message>
        <source>demister on</source>
        <translation>desempañador puesto</translation>
    </message>
    <message>
        <source>blower on</source>
        <translation>ventilador puesto</translation>
    </message>
    <message>
        <source>when one thing is switched on</source>
        <translation>al encender una cosa concreta</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Momento</translation>
    </message>
    <message>
        <source>the first start of the day</source>
        <translation>el primer arranque del día</translation>
    </message>
    <message>
        <source>after standing</source>
        <translation>después de estar parado</translation>
    </message>
    <message>
        <source>after some minutes</source>
        <translation>después de unos minutos</translation>
    </message>
    <message>
        <source>on short trips</source>
        <translation>en trayectos cortos</translation>
    </message>
    <message>
        <source>at random</source>
        <translation>al azar</translation>
    </message>
    <message>
        <source>always</source>
        <translation>siempre</translation>
    </message>
    <message>
        <source>since the last visit</source>
        <translation>desde la última visita</translation>
    </message>
    <message>
        <source>Carrying</source>
        <translation>Lo que lleva</translation>
    </message>
    <message>
        <source>with passengers</source>
        <translation>con pasajeros</translation>
    </message>
    <message>
        <source>loaded</source>
        <translation>cargado</translation>
    </message>
    <message>
        <source>with a trailer</source>
        <translation>con remolque</translation>
    </message>
    <message>
        <source>with a roof box</source>
        <translation>con cofre de techo</translation>
    </message>
    <message>
        <source>km</source>
        <translation>km</translation>
    </message>
    <message>
        <source>miles</source>
        <translation>millas</translation>
    </message>
    <message>
        <source>{what} is not accepted.</source>
        <translation>{what} no se acepta.</translation>
    </message>
    <message>
        <source>Accepted: 0 to {most:,}.</source>
        <translation>Se acepta: de 0 a {most:,}.</translation>
    </message>
    <message>
        <source>That odometer reading</source>
        <translation>Esa lectura del cuentakilómetros</translation>
    </message>
    <message>
        <source>“{word}” is not accepted for {what}.</source>
        <translation>“{word}” no se acepta para {what}.</translation>
    </message>
    <message>
        <source>Accepted: {accepted}.</source>
        <translation>Se acepta: {accepted}.</translation>
    </message>
    <message>
        <source>“{text}” is not a moment.</source>
        <translation>“{text}” no es un momento.</translation>
    </message>
    <message>
        <source>Accepted: a day like 2026-11-16, or one with its time, like 2026-11-16T17:05:00.</source>
        <translation>Se acepta: un día como 2026-11-16, o con su hora, como 2026-11-16T17:05:00.</translation>
    </message>
    <message>
        <source>“{text}” is not a day.</source>
        <translation>“{text}” no es un día.</translation>
    </message>
    <message>
        <source>Type it like 2026-11-16.</source>
        <translation>Escríbalo como 2026-11-16.</translation>
    </message>
    <message>
        <source>{text} is still to come.</source>
        <translation>{text} está todavía por llegar.</translation>
    </message>
    <message>
        <source>Type the day on which it happened.</source>
        <translation>Escriba el día en que ocurrió.</translation>
    </message>
    <message>
        <source>{text} is too long ago.</source>
        <translation>{text} queda demasiado atrás.</translation>
    </message>
    <message>
        <source>Type the day like 2026-11-16.</source>
        <translation>Escriba el día como 2026-11-16.</translation>
    </message>
    <message>
        <source>The car has left: what was proved at the hand-over stays as it was.</source>
        <translation>El vehículo ha salido: lo que se probó en la entrega queda como estaba.</translation>
    </message>
    <message>
        <source>Figures by person lack this job then.</source>
        <translation>Entonces este trabajo falta en las cifras por persona.</translation>
    </message>
    <message>
        <source>Figures by system lack this job then.</source>
        <translation>Entonces este trabajo falta en las cifras por sistema.</translation>
    </message>
    <message>
        <source>Figures by person and by system lack this job then.</source>
        <translation>Entonces este trabajo falta en las cifras por persona y por sistema.</translation>
    </message>
    <message>
        <source>what the customer says</source>
        <translation>lo que dice el cliente</translation>
    </message>
    <message>
        <source>the cause, or “not caught”</source>
        <translation>la causa, o “no reproducida”</translation>
    </message>
    <message>
        <source>The cause</source>
        <translation>La causa</translation>
    </message>
    <message>
        <source>what was done about it</source>
        <translation>qué se hizo al respecto</translation>
    </message>
    <message>
        <source>the origin of the new {kind}</source>
        <translation>la procedencia de la pieza nueva: {kind}</translation>
    </message>
    <message>
        <source>Origin of the new {kind}</source>
        <translation>Procedencia de la pieza nueva: {kind}</translation>
    </message>
    <message>
        <source>how far it was proved (“unproven” is an answer)</source>
        <translation>hasta dónde se probó (“sin probar” es una respuesta)</translation>
    </message>
    <message>
        <source>How far it was proved</source>
        <translation>Hasta dónde se probó</translation>
    </message>
    <message>
        <source>what was declined or left undone (“nothing” is an answer)</source>
        <translation>qué se rechazó o se dejó sin hacer (“nada” es una respuesta)</translation>
    </message>
    <message>
        <source>who the technician is</source>
        <translation>quién es el mecánico</translation>
    </message>
    <message>
        <source>which system it is</source>
        <translation>de qué sistema se trata</translation>
    </message>
    <message>
        <source>“{field}” under “{section}” is not accepted</source>
        <translation>“{field}” en “{section}” no se acepta</translation>
    </message>
    <message>
        <source>To mend or empty: {fields}.</source>
        <translation>Por corregir o vaciar: {fields}.</translation>
    </message>
    <message>
        <source>All that must be said is said.</source>
        <translation>Está dicho todo lo que hay que decir.</translation>
    </message>
    <message>
        <source>{all_but_last} and {last}</source>
        <translation>{all_but_last} y {last}</translation>
    </message>
    <message>
        <source>the points under “Before it is closed up”</source>
        <translation>los puntos de «Antes de cerrar»</translation>
    </message>
    <message>
        <source>⚠ 1 point has no answer under “Before it is closed up”, 1 of them where someone can get hurt.</source>
        <translation>⚠ 1 punto no tiene respuesta en “Antes de cerrar”, y es uno donde alguien puede hacerse daño.</translation>
    </message>
    <message>
        <source>⚠ 1 point has no answer under “Before it is closed up”.</source>
        <translation>⚠ 1 punto no tiene respuesta en “Antes de cerrar”.</translation>
    </message>
    <message>
        <source>⚠ {left} points have no answer under “Before it is closed up”.</source>
        <translation>⚠ {left} puntos no tienen respuesta en “Antes de cerrar”.</translation>
    </message>
    <message>
        <source>⚠ {left} points have no answer under “Before it is closed up”, {hurts} of them where someone can get hurt.</source>
        <translation>⚠ {left} puntos no tienen respuesta en “Antes de cerrar”, {hurts} de ellos donde alguien puede hacerse daño.</translation>
    </message>
    <message>
        <source>Someone can get hurt where these are left out, and nobody has answered them: {listed}. Hand the car over all the same? The sheet will say that they are not ticked.</source>
        <translation>Alguien puede hacerse daño donde se omiten estos puntos, y nadie los ha respondido: {listed}. ¿Entregar el vehículo de todos modos? La hoja dirá que no están marcados.</translation>
    </message>
    <message>
        <source>no plate</source>
        <translation>sin matrícula</translation>
    </message>
    <message>
        <source>a window of 0 to {most_window_days:,} days</source>
        <translation>un plazo de 0 a {most_window_days:,} días</translation>
    </message>
    <message>
        <source>a window of 0 to {most_window_miles:,} miles</source>
        <translation>un plazo de 0 a {most_window_miles:,} millas</translation>
    </message>
    <message>
        <source>0 days, 0 miles</source>
        <translation>0 días, 0 millas</translation>
    </message>
    <message>
        <source>a window with a limit</source>
        <translation>un plazo con un límite</translation>
    </message>
    <message>
        <source>“first” or “both”</source>
        <translation>“first” (lo primero) o “both” (ambos)</translation>
    </message>
    <message>
        <source>a number of calendar months</source>
        <translation>un número de meses de calendario</translation>
    </message>
    <message>
        <source>“job”, “shop” or a part kind</source>
        <translation>“job” (trabajo), “shop” (taller) o una clase de pieza</translation>
    </message>
    <message>
        <source>hours from 0 to {most_hours:,}</source>
        <translation>horas de 0 a {most_hours:,}</translation>
    </message>
    <message>
        <source>a price from 0 to 1,000,000.00</source>
        <translation>un precio de 0 a 1,000,000.00</translation>
    </message>
    <message>
        <source>“inspection” or “maintenance”</source>
        <translation>“inspection” (inspección) o “maintenance” (mantenimiento)</translation>
    </message>
    <message>
        <source>a drive of 0 to {most_distance:,}</source>
        <translation>un recorrido de 0 a {most_distance:,}</translation>
    </message>
    <message>
        <source>a hand-over on {came}, when the car came, or later</source>
        <translation>una entrega el {came}, cuando llegó el vehículo, o después</translation>
    </message>
    <message>
        <source>a level of proof</source>
        <translation>un nivel de prueba</translation>
    </message>
    <message>
        <source>a unit of how often a fault came</source>
        <translation>una unidad de cada cuánto venía una avería</translation>
    </message>
    <message>
        <source>a number above 0</source>
        <translation>un número mayor que 0</translation>
    </message>
    <message>
        <source>This car is in the shop since {day}: {number} was not handed over. Is this another concern of that visit?</source>
        <translation>Este vehículo está en el taller desde el {day}: {number} no se ha entregado. ¿Es otra queja de esa visita?</translation>
    </message>
    <message>
        <source>This car is in the shop since {day}: {numbers} were not handed over. Is this another concern of that visit?</source>
        <translation>Este vehículo está en el taller desde el {day}: {numbers} no se han entregado. ¿Es otra queja de esa visita?</translation>
    </message>
    <message>
        <source>VIN ends {end}</source>
        <translation>el VIN termina en {end}</translation>
    </message>
    <message>
        <source>no VIN known</source>
        <translation>VIN desconocido</translation>
    </message>
    <message>
        <source>last here on {day_and_age}</source>
        <translation>aquí por última vez el {day_and_age}</translation>
    </message>
    <message>
        <source>sold on {day}</source>
        <translation>vendido el {day}</translation>
    </message>
    <message>
        <source>The car with this plate was sold on {day}.</source>
        <translation>El vehículo con esta matrícula se vendió el {day}.</translation>
    </message>
    <message>
        <source>It is written down as “{description}”; that stays if it is the same car.</source>
        <translation>Está anotado como “{description}”; eso se queda si es el mismo vehículo.</translation>
    </message>
    <message>
        <source>It had no whole VIN until now.</source>
        <translation>No tenía un VIN completo hasta ahora.</translation>
    </message>
    <message>
        <source>Its odometer counted in {unit}.</source>
        <translation>Su cuentakilómetros contaba en {unit}.</translation>
    </message>
    <message>
        <source>The odometer does not go on from what it said.</source>
        <translation>El cuentakilómetros no sigue desde lo que marcaba.</translation>
    </message>
    <message>
        <source>{day}, today</source>
        <translation>{day}, hoy</translation>
    </message>
    <message>
        <source>{day}, yesterday</source>
        <translation>{day}, ayer</translation>
    </message>
    <message>
        <source>{day}, {days:,} days ago</source>
        <translation>{day}, hace {days:,} días</translation>
    </message>
    <message>
        <source>“read”, “told” or “estimated”</source>
        <translation>“read” (leído), “told” (contado) o “estimated” (estimado)</translation>
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
        <source>What does the odometer say?</source>
        <translation>¿Qué marca el cuentakilómetros?</translation>
    </message>
    <message>
        <source>Type it, or why it cannot be read.</source>
        <translation>Escríbalo, o por qué no se puede leer.</translation>
    </message>
    <message>
        <source>Change the odometer</source>
        <translation>Cambiar lo que marca el cuentakilómetros</translation>
    </message>
    <message>
        <source>The car is still here.</source>
        <translation>El vehículo sigue aquí.</translation>
    </message>
    <message>
        <source>Type the reading when it leaves.</source>
        <translation>Escriba la lectura cuando salga.</translation>
    </message>
    <message>
        <source>Change the odometer out</source>
        <translation>Cambiar lo que marca al salir el cuentakilómetros</translation>
    </message>
    <message>
        <source>A reading is not “{source}”.</source>
        <translation>Una lectura no es “{source}”.</translation>
    </message>
    <message>
        <source>Say that the odometer was read</source>
        <translation>Decir que el cuentakilómetros se leyó</translation>
    </message>
    <message>
        <source>Say that the odometer was told</source>
        <translation>Decir que el cuentakilómetros lo contó el cliente</translation>
    </message>
    <message>
        <source>Say that the odometer was estimated</source>
        <translation>Decir que el cuentakilómetros se estimó</translation>
    </message>
    <message>
        <source>what happened to a car</source>
        <translation>lo que le pasó a un vehículo</translation>
    </message>
    <message>
        <source>Note: {kind}</source>
        <translation>Anotar: {kind}</translation>
    </message>
    <message>
        <source>Take a note of the car out</source>
        <translation>Quitar una nota del vehículo</translation>
    </message>
    <message>
        <source>{driven} were driven, but the odometer out, {out}, is the same as when it came in. Is that the reading after the drive?</source>
        <translation>Se recorrieron {driven}, pero el cuentakilómetros de salida, {out}, es igual que cuando entró. ¿Es esa la lectura después del recorrido?</translation>
    </message>
    <message>
        <source>{driven} were driven, but the odometer out, {out}, is only {more} more than when it came in. Is that the reading after the drive?</source>
        <translation>Se recorrieron {driven}, pero el cuentakilómetros de salida, {out}, es solo {more} más que cuando entró. ¿Es esa la lectura después del recorrido?</translation>
    </message>
    <message>
        <source>one digit is another</source>
        <translation>una cifra es otra</translation>
    </message>
    <message>
        <source>two digits swapped</source>
        <translation>dos cifras cambiadas de orden</translation>
    </message>
    <message>
        <source>{day} is still to come. Is the date right?</source>
        <translation>El {day} está todavía por llegar. ¿Es correcta la fecha?</translation>
    </message>
    <message>
        <source>{reading} is more than six digits can show. One too many?</source>
        <translation>{reading} es más de lo que muestran seis cifras. ¿Sobra una?</translation>
    </message>
    <message>
        <source>{reading} would fit ({why}).</source>
        <translation>{reading} encajaría ({why}).</translation>
    </message>
    <message>
        <source>It has a digit less than before: is one missing?</source>
        <translation>Tiene una cifra menos que antes: ¿falta una?</translation>
    </message>
    <message>
        <source>It fits if {before} was to be {meant}.</source>
        <translation>Encaja si {before} debía ser {meant}.</translation>
    </message>
    <message>
        <source>No reading is kept, because “{unread}”. Does the odometer say {reading}?</source>
        <translation>No se guarda ninguna lectura, porque “{unread}”. ¿Marca el cuentakilómetros {reading}?</translation>
    </message>
    <message>
        <source>{day} {month} {year}</source>
        <translation>{day} de {month} de {year}</translation>
    </message>
    <message>
        <source>told in {unit}</source>
        <translation>contado en {unit}</translation>
    </message>
    <message>
        <source>estimated in {unit}</source>
        <translation>estimado en {unit}</translation>
    </message>
    <message>
        <source>read in {unit}</source>
        <translation>leído en {unit}</translation>
    </message>
    <message>
        <source>January</source>
        <translation>enero</translation>
    </message>
    <message>
        <source>February</source>
        <translation>febrero</translation>
    </message>
    <message>
        <source>March</source>
        <translation>marzo</translation>
    </message>
    <message>
        <source>April</source>
        <translation>abril</translation>
    </message>
    <message>
        <source>May</source>
        <translation>mayo</translation>
    </message>
    <message>
        <source>June</source>
        <translation>junio</translation>
    </message>
    <message>
        <source>July</source>
        <translation>julio</translation>
    </message>
    <message>
        <source>August</source>
        <translation>agosto</translation>
    </message>
    <message>
        <source>September</source>
        <translation>septiembre</translation>
    </message>
    <message>
        <source>October</source>
        <translation>octubre</translation>
    </message>
    <message>
        <source>November</source>
        <translation>noviembre</translation>
    </message>
    <message>
        <source>December</source>
        <translation>diciembre</translation>
    </message>
    <message>
        <source>That is {driven} in one day, more than {limit} a day: on {day} it said {before}. Is a digit wrong?</source>
        <translation>Son {driven} en un día, más de {limit} al día: el {day} marcaba {before}. ¿Hay una cifra mal?</translation>
    </message>
    <message>
        <source>That is {driven} in {days} days, more than {limit} a day: on {day} it said {before}. Is a digit wrong?</source>
        <translation>Son {driven} en {days} días, más de {limit} al día: el {day} marcaba {before}. ¿Hay una cifra mal?</translation>
    </message>
    <message>
        <source>The odometer says {reading}, but on {day} it said {before}. Was it replaced, or is a digit wrong?</source>
        <translation>El cuentakilómetros marca {reading}, pero el {day} marcaba {before}. ¿Se cambió, o hay una cifra mal?</translation>
    </message>
    <message>
        <source>{reading} was told, but on {day} it said {before}. Was it replaced, or is a digit wrong?</source>
        <translation>Se contó {reading}, pero el {day} marcaba {before}. ¿Se cambió, o hay una cifra mal?</translation>
    </message>
    <message>
        <source>{reading} was estimated, but on {day} it said {before}. Was it replaced, or is a digit wrong?</source>
        <translation>Se estimó {reading}, pero el {day} marcaba {before}. ¿Se cambió, o hay una cifra mal?</translation>
    </message>
    <message>
        <source>a digit doubled</source>
        <translation>una cifra doblada</translation>
    </message>
    <message>
        <source>a digit too many</source>
        <translation>una cifra de más</translation>
    </message>
    <message>
        <source>one digit misread</source>
        <translation>una cifra mal leída</translation>
    </message>
    <message>
        <source>display dead</source>
        <extracomment>Why an odometer cannot be read; a person may say it in other words.</extracomment>
        <translation>pantalla apagada</translation>
    </message>
    <message>
        <source>battery flat</source>
        <translation>batería descargada</translation>
    </message>
    <message>
        <source>key not here</source>
        <translation>la llave no está aquí</translation>
    </message>
    <message>
        <source>dirty or broken glass</source>
        <translation>cristal sucio o roto</translation>
    </message>
    <message>
        <source>other</source>
        <translation>otro</translation>
    </message>
    <message>
        <source>not in the imported file</source>
        <extracomment>Why the odometer of a visit that came with a table of old jobs was not read.</extracomment>
        <translation>no está en el archivo importado</translation>
    </message>
    <message>
        <source>nothing</source>
        <extracomment>All of these. That nothing was declined or left undone.</extracomment>
        <translation>nada</translation>
    </message>
    <message>
        <source>unproven</source>
        <translation>sin probar</translation>
    </message>
    <message>
        <source>bay</source>
        <translation>en el taller</translation>
    </message>
    <message>
        <source>It works in the bay: no leak, no code, measured again and good.</source>
        <translation>Funciona en el taller: sin fugas, sin códigos, medido otra vez y bien.</translation>
    </message>
    <message>
        <source>road</source>
        <translation>carretera</translation>
    </message>
    <message>
        <source>It was driven on the road.</source>
        <translation>Se condujo por carretera.</translation>
    </message>
    <message>
        <source>full trip</source>
        <translation>recorrido completo</translation>
    </message>
    <message>
        <source>The car&apos;s own test for this system ran and passed, with no pending code.</source>
        <translation>La prueba propia del vehículo para este sistema se ejecutó y se superó, sin ningún código pendiente.</translation>
    </message>
    <message>
        <source>same conditions</source>
        <translation>mismas condiciones</translation>
    </message>
    <message>
        <source>It was driven under the conditions the customer told us of.</source>
        <translation>Se condujo en las condiciones que contó el cliente.</translation>
    </message>
    <message>
        <source>time</source>
        <translation>tiempo</translation>
    </message>
    <message>
        <source>The car was seen fine after its window had ended.</source>
        <translation>El vehículo se vio bien después de terminar su plazo.</translation>
    </message>
    <message>
        <source>“Same conditions” is not offered: nobody has told us of a condition.</source>
        <translation>“Mismas condiciones” no se ofrece: nadie nos ha contado una condición.</translation>
    </message>
    <message>
        <source>Under Heard, tick when it happens.</source>
        <translation>En Lo contado, marque cuándo ocurre.</translation>
    </message>
    <message>
        <source>“Same conditions” is not offered: {condition} was not met.</source>
        <translation>“Mismas condiciones” no se ofrece: no se cumplió “{condition}”.</translation>
    </message>
    <message>
        <source>“Same conditions” is not offered: {conditions} were not met.</source>
        <translation>“Mismas condiciones” no se ofrece: no se cumplieron {conditions}.</translation>
    </message>
    <message>
        <source>Drive it there and turn the button to met, or choose another level.</source>
        <translation>Condúzcalo así y ponga el botón en cumplida, o elija otro nivel.</translation>
    </message>
    <message>
        <source>the codes read again afterwards, the pending ones too: none is left</source>
        <translation>los códigos leídos otra vez después, también los pendientes: no queda ninguno</translation>
    </message>
    <message>
        <source>{level_name} ({level} of 4) was chosen. What is written down does not bear all of it out.</source>
        <translation>Se eligió {level_name} ({level} de 4). Lo que está escrito no lo respalda todo.</translation>
    </message>
    <message>
        <source>{level_name} ({level} of 4).</source>
        <translation>{level_name} ({level} de 4).</translation>
    </message>
    <message>
        <source>That no code was pending afterwards is not written down.</source>
        <translation>No está anotado que después no hubiera códigos pendientes.</translation>
    </message>
    <message>
        <source>Tried: {conditions}.</source>
        <translation>Se probó: {conditions}.</translation>
    </message>
    <message>
        <source>Not tried: {conditions}.</source>
        <translation>No se probó: {conditions}.</translation>
    </message>
    <message>
        <source>Not said whether tried: {conditions}.</source>
        <translation>No se dijo si se probó: {conditions}.</translation>
    </message>
    <message>
        <source>Never left out, and not ticked: {checks}.</source>
        <translation>Nunca se omite, y sin marcar: {checks}.</translation>
    </message>
    <message>
        <source>This repair was not proved before the car left.</source>
        <translation>Esta reparación no se probó antes de salir el vehículo.</translation>
    </message>
    <message>
        <source>Proved in the bay only; what was driven is written down as no proof.</source>
        <translation>Probado solo en el taller; lo que se condujo está anotado sin valer como prueba.</translation>
    </message>
    <message>
        <source>Proved in the bay only; it was not driven.</source>
        <translation>Probado solo en el taller; no se condujo.</translation>
    </message>
    <message>
        <source>Ticked as done: {checks}.</source>
        <translation>Marcado como hecho: {checks}.</translation>
    </message>
    <message>
        <source>Which checks were made is not written down.</source>
        <translation>No está anotado qué comprobaciones se hicieron.</translation>
    </message>
    <message>
        <source>Driven, but the car&apos;s own test for this system was not seen to pass.</source>
        <translation>Se condujo, pero no se vio que se superara la prueba propia del vehículo para este sistema.</translation>
    </message>
    <message>
        <source>Driven; that no code was pending afterwards is not written down.</source>
        <translation>Se condujo; no está anotado que después no hubiera códigos pendientes.</translation>
    </message>
    <message>
        <source>The car&apos;s own test passed; the conditions you told us of were not all tried.</source>
        <translation>La prueba propia del vehículo se superó; no se probaron todas las condiciones que nos contó.</translation>
    </message>
    <message>
        <source>The car&apos;s own test passed.</source>
        <translation>La prueba propia del vehículo se superó.</translation>
    </message>
    <message>
        <source>Not every condition you told us of is written down as met.</source>
        <translation>No todas las condiciones que nos contó están anotadas como cumplidas.</translation>
    </message>
    <message>
        <source>No condition was told of, so there was none to meet.</source>
        <translation>No se contó ninguna condición, así que no había ninguna que cumplir.</translation>
    </message>
    <message>
        <source>what was met</source>
        <translation>lo que se cumplió</translation>
    </message>
    <message>
        <source>Say which conditions were met</source>
        <translation>Decir qué condiciones se cumplieron</translation>
    </message>
    <message>
        <source>Write down the car&apos;s own tests, found</source>
        <translation>Anotar las pruebas propias del vehículo, lo hallado</translation>
    </message>
    <message>
        <source>Write down the car&apos;s own tests, after repair</source>
        <translation>Anotar las pruebas propias del vehículo, tras la reparación</translation>
    </message>
    <message>
        <source>Enter one of the car&apos;s own tests</source>
        <translation>Anotar una de las pruebas propias del vehículo</translation>
    </message>
    <message>
        <source>“{step}” is no step of the proof.</source>
        <translation>“{step}” no es un paso de la prueba.</translation>
    </message>
    <message>
        <source>Tick a step of the proof</source>
        <translation>Marcar un paso de la prueba</translation>
    </message>
    <message>
        <source>That step is not ticked.</source>
        <translation>Ese paso no está marcado.</translation>
    </message>
    <message>
        <source>Tick it first; then say when.</source>
        <translation>Márquelo primero; después diga cuándo.</translation>
    </message>
    <message>
        <source>The car came on {came}.</source>
        <translation>El vehículo llegó el {came}.</translation>
    </message>
    <message>
        <source>Say a moment from that day on.</source>
        <translation>Diga un momento a partir de ese día.</translation>
    </message>
    <message>
        <source>{typed} is still to come.</source>
        <translation>{typed} está todavía por llegar.</translation>
    </message>
    <message>
        <source>Say when it was done.</source>
        <translation>Diga cuándo se hizo.</translation>
    </message>
    <message>
        <source>Say when a step of the proof was done</source>
        <translation>Decir cuándo se hizo un paso de la prueba</translation>
    </message>
    <message>
        <source>Write down what was tried</source>
        <translation>Anotar lo que se probó</translation>
    </message>
    <message>
        <source>That distance</source>
        <translation>Esa distancia</translation>
    </message>
    <message>
        <source>Write down how far it was driven</source>
        <translation>Anotar cuánto se condujo</translation>
    </message>
    <message>
        <source>How often it came is a number above 0, up to {most_distance:,}.</source>
        <translation>Cada cuánto venía es un número mayor que 0, hasta {most_distance:,}.</translation>
    </message>
    <message>
        <source>Type it like 40.</source>
        <translation>Escríbalo como 40.</translation>
    </message>
    <message>
        <source>how often a fault came</source>
        <translation>cada cuánto venía una avería</translation>
    </message>
    <message>
        <source>Say how often it came</source>
        <translation>Decir cada cuánto venía</translation>
    </message>
    <message>
        <source>emptied</source>
        <translation>vaciado</translation>
    </message>
    <message>
        <source>once in {number:g} {unit}</source>
        <translation>una vez cada {number:g} {unit}</translation>
    </message>
    <message>
        <source>Write down what was provoked</source>
        <translation>Anotar lo que se provocó</translation>
    </message>
    <message>
        <source>What did the proof show?</source>
        <translation>¿Qué mostró la prueba?</translation>
    </message>
    <message>
        <source>Write it in a few words.</source>
        <translation>Escríbalo en pocas palabras.</translation>
    </message>
    <message>
        <source>The car has left: what shows now is no longer caught here.</source>
        <translation>El vehículo ha salido: lo que aparece ahora ya no se reproduce aquí.</translation>
    </message>
    <message>
        <source>What was proved at the hand-over stays as it is.</source>
        <translation>Lo que se probó en la entrega queda como está.</translation>
    </message>
    <message>
        <source>When the car is back, write it up as a new visit.</source>
        <translation>Cuando el vehículo vuelva, anótelo como visita nueva.</translation>
    </message>
    <message>
        <source>Caught here: the proof failed</source>
        <translation>Reproducida aquí: la prueba falló</translation>
    </message>
    <message>
        <source>Take out “caught here”</source>
        <translation>Quitar “reproducida aquí”</translation>
    </message>
    <message>
        <source>The vehicle maker&apos;s procedure and limits come first.</source>
        <translation>El procedimiento y los límites del fabricante del vehículo van primero.</translation>
    </message>
    <message>
        <source>misfire counters at zero for 15 min from cold</source>
        <translation>contadores de fallos de encendido a cero durante 15 min desde frío</translation>
    </message>
    <message>
        <source>same test, same load, before and after</source>
        <translation>misma prueba, misma carga, antes y después</translation>
    </message>
    <message>
        <source>warm-up, 5 min steady, 3 pulls in a high gear, overrun, hot idle</source>
        <translation>calentamiento, 5 min a velocidad constante, 3 aceleraciones fuertes en marcha larga, retención, ralentí en caliente</translation>
    </message>
    <message>
        <source>wet road if told wet</source>
        <translation>carretera mojada, si se contó mojada</translation>
    </message>
    <message>
        <source>The misfire test ran, no code is pending, and the weather was met or said not met.</source>
        <translation>La prueba de fallos de encendido se ejecutó, no hay códigos pendientes, y el clima se cumplió o se dijo que no.</translation>
    </message>
    <message>
        <source>pressure and leak-down</source>
        <translation>presión y caída de presión</translation>
    </message>
    <message>
        <source>trims at idle and at 2,500 rpm</source>
        <translation>correcciones de mezcla al ralentí y a 2,500 rpm</translation>
    </message>
    <message>
        <source>15 to 20 miles, then trims under load</source>
        <translation>15 a 20 millas, después correcciones de mezcla con carga</translation>
    </message>
    <message>
        <source>The whole trim stays within 10 % at three loads and no lean or rich code is pending.</source>
        <translation>La corrección total se mantiene dentro del 10 % con tres cargas y no hay pendiente ningún código de mezcla pobre o rica.</translation>
    </message>
    <message>
        <source>starter draw and voltage drops</source>
        <translation>consumo del motor de arranque y caídas de tensión</translation>
    </message>
    <message>
        <source>cranking speed</source>
        <translation>velocidad de giro en el arranque</translation>
    </message>
    <message>
        <source>10 hot restarts after 5 to 30 min each</source>
        <translation>10 arranques en caliente, cada uno tras 5 a 30 min</translation>
    </message>
    <message>
        <source>one cold start the next morning</source>
        <translation>un arranque en frío a la mañana siguiente</translation>
    </message>
    <message>
        <source>Every start came within the time that the customer calls normal.</source>
        <translation>Cada arranque se logró dentro del tiempo que el cliente llama normal.</translation>
    </message>
    <message>
        <source>volts without and with load, ripple, drops</source>
        <translation>voltios sin carga y con carga, rizado, caídas</translation>
    </message>
    <message>
        <source>key-off draw once the modules sleep</source>
        <translation>consumo con el contacto quitado, una vez dormidos los módulos</translation>
    </message>
    <message>
        <source>a drive with the night load on</source>
        <translation>un recorrido con los consumos de noche conectados</translation>
    </message>
    <message>
        <source>The draw is within the maker&apos;s figure or below 50 mA, and it started the next day.</source>
        <translation>El consumo está dentro de la cifra del fabricante o por debajo de 50 mA, y arrancó al día siguiente.</translation>
    </message>
    <message>
        <source>pressure test cold</source>
        <translation>prueba de presión en frío</translation>
    </message>
    <message>
        <source>bled, and two cycles of the fan</source>
        <translation>purgado, y dos ciclos del ventilador</translation>
    </message>
    <message>
        <source>a hill or a loaded run with the heater on and the temperature noted</source>
        <translation>una cuesta o un recorrido con carga, con la calefacción puesta y la temperatura anotada</translation>
    </message>
    <message>
        <source>The level holds after cooling down; it settles at what the thermostat is stamped with.</source>
        <translation>El nivel se mantiene después de enfriarse; la temperatura se estabiliza en la que lleva grabada el termostato.</translation>
    </message>
    <message>
        <source>smoke or pressure as far as allowed</source>
        <translation>humo o presión hasta donde se permita</translation>
    </message>
    <message>
        <source>the seals looked at</source>
        <translation>juntas revisadas a la vista</translation>
    </message>
    <message>
        <source>a cold soak and a part-full tank, as most cars ask for</source>
        <translation>reposo en frío y depósito a medio llenar, como piden casi todos los vehículos</translation>
    </message>
    <message>
        <source>The car&apos;s leak test ran; otherwise it is handed over as not run.</source>
        <translation>La prueba de fugas del vehículo se ejecutó; si no, se entrega como no ejecutada.</translation>
    </message>
    <message>
        <source>heater currents and switching of the sensors</source>
        <translation>corrientes de calefacción y conmutación de los sensores</translation>
    </message>
    <message>
        <source>a trip with steady cruising and overrun</source>
        <translation>un recorrido con marcha constante y retención</translation>
    </message>
    <message>
        <source>The tests of catalyst and sensors ran and no code is pending.</source>
        <translation>Las pruebas del catalizador y de los sensores se ejecutaron y no hay códigos pendientes.</translation>
    </message>
    <message>
        <source>pedal held for a minute, no leak</source>
        <translation>pedal pisado durante un minuto, sin fugas</translation>
    </message>
    <message>
        <source>parking brake, run-out, fluid level</source>
        <translation>freno de estacionamiento, alabeo, nivel del líquido</translation>
    </message>
    <message>
        <source>empty road, gentle first stops, bedding in as the lining&apos;s maker says, straight stop</source>
        <translation>carretera vacía, primeras frenadas suaves, asentamiento como dice el fabricante del forro, frenada recta</translation>
    </message>
    <message>
        <source>Firm pedal, no pull, no pulsing, no drag. Never left out, not even at closing time.</source>
        <translation>Pedal firme, sin desviarse, sin pulsar, sin roce. Nunca se omite, ni siquiera a la hora de cerrar.</translation>
    </message>
    <message>
        <source>no play, joints tightened at ride height</source>
        <translation>sin holgura, articulaciones apretadas a la altura de marcha</translation>
    </message>
    <message>
        <source>the road where the noise was told of</source>
        <translation>la carretera donde se contó el ruido</translation>
    </message>
    <message>
        <source>Quiet on that road, and the wheels&apos; torque checked again.</source>
        <translation>Silencioso en esa carretera, y el par de las ruedas comprobado otra vez.</translation>
    </message>
    <message>
        <source>no play, alignment sheet</source>
        <translation>sin holgura, hoja de alineación</translation>
    </message>
    <message>
        <source>bumps, lock to lock, a crowned highway</source>
        <translation>baches, de tope a tope, una carretera con bombeo</translation>
    </message>
    <message>
        <source>The wheel stands straight and the road told of is quiet.</source>
        <translation>El volante queda recto y la carretera contada está en silencio.</translation>
    </message>
    <message>
        <source>no play, four wheel speeds alike</source>
        <translation>sin holgura, las cuatro velocidades de rueda iguales</translation>
    </message>
    <message>
        <source>the speed told of, bends to both sides</source>
        <translation>la velocidad contada, curvas a ambos lados</translation>
    </message>
    <message>
        <source>Quiet at that speed, and the wheels&apos; torque checked again.</source>
        <translation>Silencioso a esa velocidad, y el par de las ruedas comprobado otra vez.</translation>
    </message>
    <message>
        <source>no leak, fluid level</source>
        <translation>sin fugas, nivel de aceite</translation>
    </message>
    <message>
        <source>take-up, tight circles both ways</source>
        <translation>arranques desde parado, círculos cerrados a ambos lados</translation>
    </message>
    <message>
        <source>The load told of was met.</source>
        <translation>Se cumplió la carga contada.</translation>
    </message>
    <message>
        <source>no leak, fluid level, learning done where the maker asks for it</source>
        <translation>sin fugas, nivel de aceite, aprendizaje hecho donde el fabricante lo pide</translation>
    </message>
    <message>
        <source>all gears hot</source>
        <translation>todas las marchas en caliente</translation>
    </message>
    <message>
        <source>four wheel speeds alike</source>
        <translation>las cuatro velocidades de rueda iguales</translation>
    </message>
    <message>
        <source>the self-test on driving off</source>
        <translation>la prueba propia al empezar a rodar</translation>
    </message>
    <message>
        <source>The lamp is out and no code is stored.</source>
        <translation>El testigo está apagado y no hay códigos almacenados.</translation>
    </message>
    <message>
        <source>voltage drop under load</source>
        <translation>caída de tensión bajo carga</translation>
    </message>
    <message>
        <source>wiggled with minimum and maximum kept</source>
        <translation>moviendo el cableado con mínimo y máximo registrados</translation>
    </message>
    <message>
        <source>water, if told wet</source>
        <translation>agua, si se contó mojado</translation>
    </message>
    <message>
        <source>rough road with every load on</source>
        <translation>carretera irregular con todos los consumos conectados</translation>
    </message>
    <message>
        <source>No dropped message for as long as the customer&apos;s own frequency asks for.</source>
        <translation>Ningún mensaje perdido durante tanto tiempo como pida la frecuencia que dijo el cliente.</translation>
    </message>
    <message>
        <source>by licensed people: leak test, pressures against the outside temperature</source>
        <translation>por personas autorizadas: prueba de fugas, presiones frente a la temperatura exterior</translation>
    </message>
    <message>
        <source>20 min at idle and a drive</source>
        <translation>20 min al ralentí y un recorrido</translation>
    </message>
    <message>
        <source>The vents stay at one temperature and the fan cycles.</source>
        <translation>Las salidas de aire se mantienen a una temperatura y el ventilador hace sus ciclos.</translation>
    </message>
    <message>
        <source>the maker&apos;s procedure, by a qualified person only</source>
        <translation>el procedimiento del fabricante, solo por una persona cualificada</translation>
    </message>
    <message>
        <source>the lamp&apos;s own test</source>
        <translation>la prueba propia del testigo</translation>
    </message>
    <message>
        <source>The lamp is out. Nothing is ever improvised here.</source>
        <translation>El testigo está apagado. Aquí nunca se improvisa nada.</translation>
    </message>
    <message>
        <source>works, no leak, no code, measured again</source>
        <translation>funciona, sin fugas, sin códigos, medido otra vez</translation>
    </message>
    <message>
        <source>driven under the conditions told of</source>
        <translation>conducido en las condiciones contadas</translation>
    </message>
    <message>
        <source>The concern did not happen where it had to.</source>
        <translation>La queja no ocurrió donde tenía que ocurrir.</translation>
    </message>
    <message>
        <source>{codes} stays as a permanent code: it leaves only by the car&apos;s own passed self-test; no clearing takes it away.</source>
        <translation>{codes} queda como código permanente: solo se va cuando se supera la prueba propia del vehículo; ningún borrado lo quita.</translation>
    </message>
    <message>
        <source>{codes} was a permanent code before: it leaves only by the car&apos;s own passed self-test; no clearing takes it away.</source>
        <translation>{codes} era antes un código permanente: solo se va cuando se supera la prueba propia del vehículo; ningún borrado lo quita.</translation>
    </message>
    <message>
        <source>Before: {codes}.</source>
        <translation>Antes: {codes}.</translation>
    </message>
    <message>
        <source>After: {codes}.</source>
        <translation>Después: {codes}.</translation>
    </message>
    <message>
        <source>After: read again, none is left.</source>
        <translation>Después: leídos otra vez, no queda ninguno.</translation>
    </message>
    <message>
        <source>After: not written down.</source>
        <translation>Después: no está anotado.</translation>
    </message>
    <message>
        <source>There before and there again: {codes}.</source>
        <translation>Estaban antes y están otra vez: {codes}.</translation>
    </message>
    <message>
        <source>Not there before: {codes}.</source>
        <translation>No estaban antes: {codes}.</translation>
    </message>
    <message>
        <source>An emission test may refuse the car until its own tests have run.</source>
        <translation>Una inspección de emisiones puede rechazar el vehículo hasta que se hayan ejecutado sus pruebas propias.</translation>
    </message>
    <message>
        <source>Clearing set the car&apos;s own tests back: until they ran, an emission test may refuse.</source>
        <translation>El borrado puso a cero las pruebas propias del vehículo: hasta que se ejecuten, una inspección de emisiones puede rechazarlo.</translation>
    </message>
    <message>
        <source>on {day}, {at:%H:%M}:</source>
        <translation>el {day}, {at:%H:%M}:</translation>
    </message>
    <message>
        <source>tried: {conditions}</source>
        <translation>probado: {conditions}</translation>
    </message>
    <message>
        <source>not tried: {conditions}</source>
        <translation>no probado: {conditions}</translation>
    </message>
    <message>
        <source>not said whether tried: {conditions}</source>
        <translation>no se dijo si se probó: {conditions}</translation>
    </message>
    <message>
        <source>{code} is written down as read after the repair.</source>
        <translation>{code} está anotado como leído después de la reparación.</translation>
    </message>
    <message>
        <source>{codes} are written down as read after the repair.</source>
        <translation>{codes} están anotados como leídos después de la reparación.</translation>
    </message>
    <message>
        <source>The bytes read after the repair count 1 stored code.</source>
        <translation>Los bytes leídos después de la reparación cuentan 1 código almacenado.</translation>
    </message>
    <message>
        <source>The bytes read after the repair count {n} stored codes.</source>
        <translation>Los bytes leídos después de la reparación cuentan {n} códigos almacenados.</translation>
    </message>
    <message>
        <source>By the bytes read after the repair the engine&apos;s warning lamp is on.</source>
        <translation>Según los bytes leídos después de la reparación, el testigo de avería del motor está encendido.</translation>
    </message>
    <message>
        <source>Made to happen on purpose, it still came after the repair.</source>
        <translation>Provocada a propósito, siguió apareciendo después de la reparación.</translation>
    </message>
    <message>
        <source>Some of the car&apos;s own tests have not run yet. A warning lamp that comes on is news to us too.</source>
        <translation>Algunas pruebas propias del vehículo no se han ejecutado todavía. Si se enciende un testigo, también nos interesa saberlo.</translation>
    </message>
    <message>
        <source>A flashing engine lamp, or brakes or steering that feel different: stop as soon as you can do it without danger, and call.</source>
        <translation>Si el testigo del motor parpadea, o los frenos o la dirección se sienten distintos: pare en cuanto pueda hacerlo sin peligro, y llame.</translation>
    </message>
    <message>
        <source>Tell us when you notice the same trouble again.</source>
        <translation>Avísenos cuando note otra vez el mismo problema.</translation>
    </message>
    <message>
        <source>Tell us when you notice the trouble again.</source>
        <translation>Avísenos cuando note otra vez el problema.</translation>
    </message>
    <message>
        <source>Tell us when you notice the same trouble again, above all: {conditions}.</source>
        <translation>Avísenos cuando note otra vez el mismo problema, sobre todo: {conditions}.</translation>
    </message>
    <message>
        <source>Tell us when you notice the trouble again, above all: {conditions}.</source>
        <translation>Avísenos cuando note otra vez el problema, sobre todo: {conditions}.</translation>
    </message>
    <message>
        <source>{level} ({met} of {told} met)</source>
        <translation>{level} ({met} de {told} cumplidas)</translation>
    </message>
    <message>
        <source>Codes saved</source>
        <translation>Códigos guardados</translation>
    </message>
    <message>
        <source>Codes, freeze frame, the car&apos;s own tests, misfire counters and trims are saved.</source>
        <translation>Están guardados los códigos, el cuadro congelado, las pruebas propias del vehículo, los contadores de fallos de encendido y las correcciones de mezcla.</translation>
    </message>
    <message>
        <source>Photographed</source>
        <translation>Fotografiado</translation>
    </message>
    <message>
        <source>The parts are photographed as they were found.</source>
        <translation>Las piezas están fotografiadas como se hallaron.</translation>
    </message>
    <message>
        <source>Repaired</source>
        <translation>Reparado</translation>
    </message>
    <message>
        <source>The repair is done and closed up.</source>
        <translation>La reparación está hecha y cerrada.</translation>
    </message>
    <message>
        <source>Cleared once</source>
        <translation>Borrado una vez</translation>
    </message>
    <message>
        <source>The codes are cleared, once and not again.</source>
        <translation>Los códigos están borrados, una vez y no más.</translation>
    </message>
    <message>
        <source>Clearing noted</source>
        <translation>Borrado anotado</translation>
    </message>
    <message>
        <source>It is noted that they were cleared: that wipes the car&apos;s own tests, often learned trims.</source>
        <translation>Está anotado que se borraron: eso borra las pruebas propias del vehículo y a menudo las correcciones aprendidas.</translation>
    </message>
    <message>
        <source>Driven</source>
        <translation>Recorrido hecho</translation>
    </message>
    <message>
        <source>The drive is done, under the conditions told of.</source>
        <translation>El recorrido está hecho, en las condiciones contadas.</translation>
    </message>
    <message>
        <source>Pending read</source>
        <translation>Pendientes leídos</translation>
    </message>
    <message>
        <source>Pending codes are read before the engine stands long.</source>
        <translation>Los códigos pendientes se leen antes de que el motor esté mucho tiempo parado.</translation>
    </message>
    <message>
        <source>Read again cold</source>
        <translation>Leído otra vez en frío</translation>
    </message>
    <message>
        <source>Everything is read again after a cold start.</source>
        <translation>Todo se lee otra vez después de un arranque en frío.</translation>
    </message>
    <message>
        <source>Nothing is ticked as saved yet. Clearing wipes codes, freeze frame and the car&apos;s own tests, and nothing brings them back. Was it cleared all the same?</source>
        <translation>Todavía no hay nada marcado como guardado. El borrado elimina los códigos, el cuadro congelado y las pruebas propias del vehículo, y nada los recupera. ¿Se borró de todos modos?</translation>
    </message>
    <message>
        <source>No drive is ticked yet. Codes read before a drive say little. Were they read all the same?</source>
        <translation>Todavía no hay ningún recorrido marcado. Los códigos leídos antes de un recorrido dicen poco. ¿Se leyeron de todos modos?</translation>
    </message>
    <message>
        <source>Cleared, and not ticked as saved before.</source>
        <translation>Borrado, y sin marcar antes como guardado.</translation>
    </message>
    <message>
        <source>By their times “{first}” was done before “{then}”.</source>
        <translation>Según sus horas, “{first}” se hizo antes que “{then}”.</translation>
    </message>
    <message>
        <source>No limit in time or distance was given.</source>
        <translation>No se dio ningún límite de tiempo ni de distancia.</translation>
    </message>
    <message>
        <source>{window} So far: it is given at the hand-over.</source>
        <translation>{window} Por ahora: se da en la entrega.</translation>
    </message>
    <message>
        <source>Until {last_day} ({time}).</source>
        <translation>Hasta el {last_day} ({time}).</translation>
    </message>
    <message>
        <source>1 calendar month</source>
        <translation>1 mes de calendario</translation>
    </message>
    <message>
        <source>{months} calendar months</source>
        <translation>{months} meses de calendario</translation>
    </message>
    <message>
        <source>1 day</source>
        <translation>1 día</translation>
    </message>
    <message>
        <source>{days:,} days</source>
        <translation>{days:,} días</translation>
    </message>
    <message>
        <source>{limit} after the hand-over.</source>
        <translation>{limit} después de la entrega.</translation>
    </message>
    <message>
        <source>{time} or {distance} after the hand-over, whichever comes first.</source>
        <translation>{time} o {distance} después de la entrega, lo que llegue primero.</translation>
    </message>
    <message>
        <source>{time} and {distance} after the hand-over, until both have ended.</source>
        <translation>{time} y {distance} después de la entrega, hasta que hayan terminado los dos.</translation>
    </message>
    <message>
        <source>Until {end} (left at {left_at}).</source>
        <translation>Hasta {end} (salió con {left_at}).</translation>
    </message>
    <message>
        <source>Until {end} (left at {left_at}) or {last_day} ({time}), whichever comes first.</source>
        <translation>Hasta {end} (salió con {left_at}) o el {last_day} ({time}), lo que llegue primero.</translation>
    </message>
    <message>
        <source>Until {end} (left at {left_at}) and {last_day} ({time}) are both past.</source>
        <translation>Hasta que hayan pasado tanto {end} (salió con {left_at}) como el {last_day} ({time}).</translation>
    </message>
    <message>
        <source>{distance} after the hand-over; odometer not read then.</source>
        <translation>{distance} después de la entrega; el cuentakilómetros no se leyó entonces.</translation>
    </message>
    <message>
        <source>{time} (until {last_day}) or {distance}, whichever comes first; odometer not read.</source>
        <translation>{time} (hasta el {last_day}) o {distance}, lo que llegue primero; el cuentakilómetros no se leyó.</translation>
    </message>
    <message>
        <source>{time} (until {last_day}) and {distance}, until both have ended; odometer not read.</source>
        <translation>{time} (hasta el {last_day}) y {distance}, hasta que hayan terminado los dos; el cuentakilómetros no se leyó.</translation>
    </message>
    <message>
        <source>made to happen on purpose</source>
        <extracomment>Below this a count is decisive, below `FAIR` it is fair; common practice, no source. Under these words the count is kept among a job&apos;s proof checks; shown by tr().</extracomment>
        <translation>provocada a propósito</translation>
    </message>
    <message>
        <source>“{text}” is no count before and after.</source>
        <translation>“{text}” no es una cuenta de antes y después.</translation>
    </message>
    <message>
        <source>Type it like 37 in 10 min, then 0 in 10 min.</source>
        <translation>Escríbala así: 37 in 10 min, then 0 in 10 min.</translation>
    </message>
    <message>
        <source>In 0 minutes nothing can be counted.</source>
        <translation>En 0 minutos no se puede contar nada.</translation>
    </message>
    <message>
        <source>Type for how many minutes it was tried.</source>
        <translation>Escriba durante cuántos minutos se intentó.</translation>
    </message>
    <message>
        <source>Made to happen on purpose, it came {times_before} in {before_min:g} min before and {times_after} in {after_min:g} min after.</source>
        <translation>Provocada a propósito, apareció {times_before} en {before_min:g} min antes y {times_after} en {after_min:g} min después.</translation>
    </message>
    <message>
        <source>What did not come before proves nothing by staying away.</source>
        <translation>Lo que no aparecía antes no prueba nada por no aparecer ahora.</translation>
    </message>
    <message>
        <source>It still comes, less often: it is not cured.</source>
        <translation>Sigue apareciendo, con menos frecuencia: no está curado.</translation>
    </message>
    <message>
        <source>It still comes, no less often than luck allows: it is not cured.</source>
        <translation>Sigue apareciendo, con no menos frecuencia de lo que permite el azar: no está curado.</translation>
    </message>
    <message>
        <source>By luck alone that happens in {of_cases}; this is decisive.</source>
        <translation>Solo por azar, eso ocurre en {of_cases}; es decisivo.</translation>
    </message>
    <message>
        <source>By luck alone that happens in {of_cases}; this is fair.</source>
        <translation>Solo por azar, eso ocurre en {of_cases}; es aceptable.</translation>
    </message>
    <message>
        <source>By luck alone that happens in {of_cases}; this is weak: count for longer.</source>
        <translation>Solo por azar, eso ocurre en {of_cases}; es débil: cuente durante más tiempo.</translation>
    </message>
    <message>
        <source>not once</source>
        <translation>0 veces</translation>
    </message>
    <message>
        <source>once</source>
        <translation>una vez</translation>
    </message>
    <message>
        <source>{count} times</source>
        <translation>{count} veces</translation>
    </message>
    <message>
        <source>How far it goes is not known; about {amount} {unit} a day is taken.</source>
        <translation>No se sabe cuánto recorre; se toma alrededor de {amount} {unit} al día.</translation>
    </message>
    <message>
        <source>Driven about {amount} {unit} a day ({low} to {high}), mostly judged by other cars.</source>
        <translation>Recorre al día alrededor de {amount} {unit} (de {low} a {high}), juzgado sobre todo por otros vehículos.</translation>
    </message>
    <message>
        <source>Driven about {amount} {unit} a day ({low} to {high}), mostly the program&apos;s usual figure: its own odometer says little yet, and too few other cars were read here.</source>
        <translation>Recorre al día alrededor de {amount} {unit} (de {low} a {high}), sobre todo según la cifra usual del programa: su propio odómetro dice poco aún, y aquí se leyeron muy pocos otros vehículos.</translation>
    </message>
    <message>
        <source>Driven about {amount} {unit} a day ({low} to {high}), as its odometer showed over {days:,} days.</source>
        <translation>Recorre al día alrededor de {amount} {unit} (de {low} a {high}), según mostró su cuentakilómetros en {days:,} días.</translation>
    </message>
    <message>
        <source>kilometres</source>
        <translation>kilómetros</translation>
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
        <source>1 mile</source>
        <translation>1 milla</translation>
    </message>
    <message>
        <source>1 kilometre</source>
        <translation>1 kilómetro</translation>
    </message>
    <message>
        <source>1 drive</source>
        <translation>1 recorrido</translation>
    </message>
    <message>
        <source>Holds if the fault comes at random and the drive had the conditions under which it comes. How often it comes is the customer&apos;s word. A quiet drive never proves that nothing is wrong.</source>
        <translation>Vale si la avería viene al azar y el recorrido tuvo las condiciones en las que aparece. Cada cuánto viene es palabra del cliente. Un recorrido sin avería nunca prueba que no haya nada mal.</translation>
    </message>
    <message>
        <source>“{text}” does not say how often it came.</source>
        <translation>“{text}” no dice cada cuánto venía.</translation>
    </message>
    <message>
        <source>Type a number above 0 such as 40, or 0.5 for twice; up to {most_distance:,}.</source>
        <translation>Escriba un número mayor que 0 como 40, o 0.5 si son dos veces; hasta {most_distance:,}.</translation>
    </message>
    <message>
        <source>It came once in {amount}, but how far this car goes in a day is not known: nobody can say what the drive is worth.</source>
        <translation>Venía una vez cada {amount}, pero no se sabe cuánto recorre este vehículo en un día: nadie puede decir qué vale el recorrido.</translation>
    </message>
    <message>
        <source>Not met on the drive: {conditions}. So the quiet drive says nothing of the fault. </source>
        <translation>No se cumplió en el recorrido: {conditions}. Por eso el recorrido sin avería no dice nada de ella. </translation>
    </message>
    <message>
        <source>Nobody said whether the drive had {conditions}; only if it had, this holds. </source>
        <translation>Nadie dijo si en el recorrido se dio esto: {conditions}. Solo si se dio vale lo que sigue. </translation>
    </message>
    <message>
        <source>If it came once in {amount}, one quiet drive happens by luck in {of_cases} with nothing repaired ({low} to {high} if the customer is out by a factor of {factor:g}). </source>
        <translation>Si venía una vez cada {amount}, un recorrido sin avería ocurre por azar en {of_cases} sin haber reparado nada (de {low} a {high} si el cliente se equivoca por un factor de {factor:g}). </translation>
    </message>
    <message>
        <source>If it came once in {amount}, {driven} without it happens by luck in {of_cases} with nothing repaired ({low} to {high} if the customer is out by a factor of {factor:g}). </source>
        <translation>Si venía una vez cada {amount}, {driven} sin ella ocurre por azar en {of_cases} sin haber reparado nada (de {low} a {high} si el cliente se equivoca por un factor de {factor:g}). </translation>
    </message>
    <message>
        <source>If it came once in {amount}, {driven} without it happen by luck in {of_cases} with nothing repaired ({low} to {high} if the customer is out by a factor of {factor:g}). </source>
        <translation>Si venía una vez cada {amount}, {driven} sin ella ocurren por azar en {of_cases} sin haber reparado nada (de {low} a {high} si el cliente se equivoca por un factor de {factor:g}). </translation>
    </message>
    <message>
        <source>That leaves little to luck.</source>
        <translation>Eso deja poco al azar.</translation>
    </message>
    <message>
        <source>About {needed} without it would leave {percent}.</source>
        <translation>Alrededor de {needed} sin ella dejarían al azar un {percent}.</translation>
    </message>
    <message>
        <source>If it came once in {amount}, about {needed} without it would leave {percent}.</source>
        <translation>Si venía una vez cada {amount}, alrededor de {needed} sin ella dejarían al azar un {percent}.</translation>
    </message>
    <message>
        <source> That is not provable on a road test: agree on a day to ask, or make it happen on purpose.</source>
        <translation> Eso no se puede probar en una prueba en carretera: acuerde un día para preguntar, o provóquela a propósito.</translation>
    </message>
    <message>
        <source> That is not provable on a road test: agree on a day to ask, in about {days:,} days of this car&apos;s use, or make it happen on purpose.</source>
        <translation> Eso no se puede probar en una prueba en carretera: acuerde un día para preguntar, dentro de unos {days:,} días de uso de este vehículo, o provóquela a propósito.</translation>
    </message>
    <message>
        <source>Back On</source>
        <translation>Montado de nuevo</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Qué se hizo</translation>
    </message>
    <message>
        <source>The list of a part kind stands here once a pair is laid out above.</source>
        <translation>La lista de una clase de pieza aparece aquí cuando arriba se ha puesto un par.</translation>
    </message>
    <message>
        <source>Hours</source>
        <translation>Horas</translation>
    </message>
    <message>
        <source>Hours nobody pays</source>
        <translation>Horas que nadie paga</translation>
    </message>
    <message>
        <source>Price</source>
        <translation>Precio</translation>
    </message>
    <message>
        <source>Before it is closed up</source>
        <translation>Antes de cerrar</translation>
    </message>
    <message>
        <source>Write as what was done: {words}</source>
        <translation>Escribir como lo que se hizo: {words}</translation>
    </message>
    <message>
        <source>in {currency}</source>
        <translation>en {currency}</translation>
    </message>
    <message>
        <source>This was another car</source>
        <translation>Era otro vehículo</translation>
    </message>
    <message>
        <source>This visit gets a car of its own with the same plate; Undo takes it back</source>
        <translation>Esta visita recibe un vehículo propio con la misma matrícula; Deshacer lo revierte</translation>
    </message>
    <message>
        <source>What is written of the car stands on {jobs} too.</source>
        <translation>Lo escrito del vehículo aparece también en {jobs}.</translation>
    </message>
    <message>
        <source>{number} stands on a car of its own now, with the same plate. Its VIN and what kind of car it is are still to be written.</source>
        <translation>{number} tiene ahora un vehículo propio, con la misma matrícula. Falta escribir su VIN y qué vehículo es.</translation>
    </message>
    <message>
        <source>{count} earlier jobs</source>
        <translation>{count} trabajos anteriores</translation>
    </message>
    <message>
        <source>Note it</source>
        <translation>Anotarlo</translation>
    </message>
    <message>
        <source>Note what happened to the car</source>
        <translation>Anotar lo que le pasó al vehículo</translation>
    </message>
    <message>
        <source>The old odometer&apos;s last reading</source>
        <translation>Última lectura del viejo</translation>
    </message>
    <message>
        <source>empty: nobody knows</source>
        <translation>vacío: nadie lo sabe</translation>
    </message>
    <message>
        <source>The new one&apos;s first reading</source>
        <translation>Primera lectura del nuevo</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>Qué pasó</translation>
    </message>
    <message>
        <source>On which day</source>
        <translation>Qué día</translation>
    </message>
    <message>
        <source>like 2026-11-16</source>
        <translation>como 2026-11-16</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Odometer replaced, or car sold</source>
        <translation>Cuentakilómetros cambiado o vehículo vendido</translation>
    </message>
    <message>
        <source>Take it out</source>
        <translation>Quitarlo</translation>
    </message>
    <message>
        <source>Take it out: {words}</source>
        <translation>Quitarlo: {words}</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>{what}, the old one at {before}, the new one at {after}</source>
        <translation>{what}, el viejo con {before}, el nuevo con {after}</translation>
    </message>
    <message>
        <source>The proof failed: what did it show?</source>
        <translation>La prueba falló: ¿qué mostró?</translation>
    </message>
    <message>
        <source>The proof failed here: what did it show?</source>
        <translation>La prueba falló aquí: ¿qué mostró?</translation>
    </message>
    <message>
        <source>Caught here</source>
        <translation>Reproducida aquí</translation>
    </message>
    <message>
        <source>Caught here: write it down</source>
        <translation>Reproducida aquí: anotarlo</translation>
    </message>
    <message>
        <source>⊙  Caught here {on_day} {words}</source>
        <translation>⊙  Reproducida aquí {on_day} {words}</translation>
    </message>
    <message>
        <source>Take out: caught here, {words}</source>
        <translation>Quitar: reproducida aquí, {words}</translation>
    </message>
    <message>
        <source>Caught here, and written down. How far it is proved is open again: say it after the next try.</source>
        <translation>Reproducida aquí, y anotado. Hasta dónde se probó queda otra vez abierto: dígalo después del próximo intento.</translation>
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
        <source>–  Codes read: {codes}</source>
        <translation>–  Códigos leídos: {codes}</translation>
    </message>
    <message>
        <source>Checked then, on {number}:</source>
        <translation>Comprobado entonces, en {number}:</translation>
    </message>
    <message>
        <source>Trouble codes, {stage}</source>
        <translation>Códigos de avería, {stage}</translation>
    </message>
    <message>
        <source>P0300, P0301 … or: none</source>
        <translation>P0300, P0301 … o: ninguno</translation>
    </message>
    <message>
        <source>What kind of code, {stage}</source>
        <translation>Qué clase de código, {stage}</translation>
    </message>
    <message>
        <source>Write down</source>
        <translation>Anotar</translation>
    </message>
    <message>
        <source>Write down the codes, {stage}</source>
        <translation>Anotar los códigos, {stage}</translation>
    </message>
    <message>
        <source>Take out {code}, {kind}</source>
        <translation>Quitar {code}, {kind}</translation>
    </message>
    <message>
        <source>Press to take it out</source>
        <translation>Pulse para quitarlo</translation>
    </message>
    <message>
        <source>“{text}” is not a trouble code.</source>
        <translation>“{text}” no es un código de avería.</translation>
    </message>
    <message>
        <source>That no code was stored is a finding: write it down as one, below.</source>
        <translation>Que no había ningún código memorizado es un hallazgo: anótelo como tal, más abajo.</translation>
    </message>
    <message>
        <source>Ticked as done above: {check}</source>
        <translation>Marcado arriba como hecho: {check}</translation>
    </message>
    <message>
        <source>With its letter: type {code} if that is meant.</source>
        <translation>Con su letra: escriba {code} si es ese.</translation>
    </message>
    <message>
        <source>A code is a letter P, C, B or U and four digits, such as P0300.</source>
        <translation>Un código es una letra P, C, B o U y cuatro cifras, como P0300.</translation>
    </message>
    <message>
        <source>“{text}” is not a trouble code; the others are.</source>
        <translation>“{text}” no es un código de avería; los demás sí.</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>no dicho</translation>
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
        <source>Was it driven where it happens?  ○ not said  ● met  ⊘ not met</source>
        <translation>¿Se condujo donde ocurre?  ○ no dicho  ● cumplida  ⊘ no cumplida</translation>
    </message>
    <message>
        <source>Where does it happen? Under Heard no condition is ticked as “happens” yet.</source>
        <translation>¿Dónde ocurre? En Lo contado ninguna condición está marcada todavía como “ocurre”.</translation>
    </message>
    <message>
        <source>Written up by</source>
        <translation>Anotado por</translation>
    </message>
    <message>
        <source>Searched by</source>
        <translation>Buscado por</translation>
    </message>
    <message>
        <source>Refitted by</source>
        <translation>Montado por</translation>
    </message>
    <message>
        <source>Proved by</source>
        <translation>Probado por</translation>
    </message>
    <message>
        <source>only if it was not the technician</source>
        <translation>solo si no fue el mecánico</translation>
    </message>
    <message>
        <source>the technician</source>
        <translation>el mecánico</translation>
    </message>
    <message>
        <source>Ignition voltage can injure and can stop a heart, above all with a pacemaker: ignition off and key out before leads, cap or coils are touched.</source>
        <translation>La tensión de encendido puede herir y parar un corazón, sobre todo con marcapasos: contacto quitado y llave fuera antes de tocar cables, tapa o bobinas.</translation>
    </message>
    <message>
        <source>Fuel and its vapour burn and explode: no sparks or flames, pressure let off first.</source>
        <translation>El combustible y su vapor arden y explotan: sin chispas ni llamas, descargue primero la presión.</translation>
    </message>
    <message>
        <source>Brakes can fail: only people who may work on them, by the maker&apos;s procedure.</source>
        <translation>Los frenos pueden fallar: solo personas autorizadas a trabajar en ellos, con el procedimiento del fabricante.</translation>
    </message>
    <message>
        <source>Hot coolant scalds: engine cold and without pressure before the system is opened.</source>
        <translation>El refrigerante caliente quema: motor frío y sin presión antes de abrir el circuito.</translation>
    </message>
    <message>
        <source>Belts and fans take fingers: engine off and key out.</source>
        <translation>Las correas y los ventiladores se llevan dedos: motor parado y llave fuera.</translation>
    </message>
    <message>
        <source>Battery ground off first, on last: a shorted cable welds and burns.</source>
        <translation>La masa de la batería, primera en desconectar y última en conectar: un cable en cortocircuito se suelda y quema.</translation>
    </message>
    <message>
        <source>A lifted car must stand on stands, wheels chocked; a wheel can come off.</source>
        <translation>Un vehículo elevado debe estar sobre caballetes, con las ruedas calzadas; una rueda puede salirse.</translation>
    </message>
    <message>
        <source>Springs under load can kill; a lifted car must stand on stands.</source>
        <translation>Los muelles cargados pueden matar; un vehículo elevado debe estar sobre caballetes.</translation>
    </message>
    <message>
        <source>Steering that fails kills: only people who may work on it.</source>
        <translation>Una dirección que falla mata: solo personas autorizadas a trabajar en ella.</translation>
    </message>
    <message>
        <source>Airbag circuits: qualified people and the maker&apos;s procedure only.</source>
        <translation>Circuitos de airbag: solo personas cualificadas y el procedimiento del fabricante.</translation>
    </message>
    <message>
        <source>Hot exhaust burns; its gas kills in a closed room.</source>
        <translation>El escape caliente quema; su gas mata en un local cerrado.</translation>
    </message>
    <message>
        <source>Found</source>
        <translation>Lo hallado</translation>
    </message>
    <message>
        <source>System</source>
        <translation>Sistema</translation>
    </message>
    <message>
        <source>Technician</source>
        <translation>Mecánico</translation>
    </message>
    <message>
        <source>What was seen or tried</source>
        <translation>Lo que se vio o se probó</translation>
    </message>
    <message>
        <source>What was seen or tried: one finding, then Enter</source>
        <translation>Lo que se vio o se probó: un hallazgo, después Intro</translation>
    </message>
    <message>
        <source>Cause: X because Y, shown by Z</source>
        <translation>Causa: X porque Y, mostrado por Z</translation>
    </message>
    <message>
        <source>⊘  Not caught</source>
        <translation>⊘  No reproducida</translation>
    </message>
    <message>
        <source>Codes, saved before anything is cleared</source>
        <translation>Códigos, guardados antes de borrar nada</translation>
    </message>
    <message>
        <source>Findings: look before you measure</source>
        <translation>Hallazgos: mire antes de medir</translation>
    </message>
    <message>
        <source>is an answer too: say above what was tried.</source>
        <translation>también es una respuesta: diga arriba lo que se probó.</translation>
    </message>
    <message>
        <source>Take out the finding {words}</source>
        <translation>Quitar el hallazgo {words}</translation>
    </message>
    <message>
        <source>Gone</source>
        <translation>Salida</translation>
    </message>
    <message>
        <source>Declined or left undone</source>
        <translation>Rechazado o dejado sin hacer</translation>
    </message>
    <message>
        <source>Nothing</source>
        <translation>Nada</translation>
    </message>
    <message>
        <source>Nothing was declined or left undone</source>
        <translation>No se rechazó nada ni se dejó nada sin hacer</translation>
    </message>
    <message>
        <source>Declined or left undone, and what may follow</source>
        <translation>Rechazado o dejado sin hacer, y qué puede seguir</translation>
    </message>
    <message>
        <source>The sheet for the customer…</source>
        <translation>La hoja para el cliente…</translation>
    </message>
    <message>
        <source>To say at hand-over: {said}</source>
        <translation>Para decir en la entrega: {said}</translation>
    </message>
    <message>
        <source>Left on {day}. Under watch from then on.</source>
        <translation>Salió el {day}. En observación desde entonces.</translation>
    </message>
    <message>
        <source>Left on {day} at {reading}. Under watch from then on.</source>
        <translation>Salió el {day} con {reading}. En observación desde entonces.</translation>
    </message>
    <message>
        <source>Before the car leaves, mend or empty: {listed}.</source>
        <translation>Antes de que salga el vehículo, corrija o vacíe: {listed}.</translation>
    </message>
    <message>
        <source>Still to say: {missing}.</source>
        <translation>Falta decir: {missing}.</translation>
    </message>
    <message>
        <source>Still to say, or to leave out: {left}.</source>
        <translation>Falta decir, o se deja: {left}.</translation>
    </message>
    <message>
        <source>Everything is said.</source>
        <translation>Todo está dicho.</translation>
    </message>
    <message>
        <source>The buttons above “Hand the car over” lead there.</source>
        <translation>Los botones encima de “Entregar el vehículo” llevan allí.</translation>
    </message>
    <message>
        <source>{number} is handed over. It is under watch from now on.</source>
        <translation>{number} está entregado. Desde ahora está en observación.</translation>
    </message>
    <message>
        <source>The customer says it is the same trouble as before</source>
        <translation>El cliente dice que es el mismo problema de antes</translation>
    </message>
    <message>
        <source>Heard</source>
        <translation>Lo contado</translation>
    </message>
    <message>
        <source>Concern, in the customer&apos;s own words</source>
        <translation>La queja, en palabras del cliente</translation>
    </message>
    <message>
        <source>Said here, judged later (Ctrl+T)</source>
        <translation>Dicho aquí, juzgado después (Ctrl+T)</translation>
    </message>
    <message>
        <source>it is the same trouble, says the customer</source>
        <translation>es el mismo problema, dice el cliente</translation>
    </message>
    <message>
        <source>Plate</source>
        <translation>Matrícula</translation>
    </message>
    <message>
        <source>What kind of car</source>
        <translation>Qué vehículo es</translation>
    </message>
    <message>
        <source>When does it happen?  ○ not asked  ● happens  ⊘ never</source>
        <translation>¿Cuándo ocurre?  ○ no preguntado  ● ocurre  ⊘ nunca</translation>
    </message>
    <message>
        <source>brought by {name}</source>
        <translation>traído por {name}</translation>
    </message>
    <message>
        <source>The customer&apos;s words say it themselves: {conditions}.</source>
        <translation>Lo dicen las propias palabras del cliente: {conditions}.</translation>
    </message>
    <message>
        <source>Read from the words; press to take it out</source>
        <translation>Leído de las palabras; pulse para quitarlo</translation>
    </message>
    <message>
        <source>Take out the symptom {symptom}</source>
        <translation>Quitar el síntoma {symptom}</translation>
    </message>
    <message>
        <source>More conditions</source>
        <translation>Más condiciones</translation>
    </message>
    <message>
        <source>This could be shown only in part, and so nothing in it can be changed.</source>
        <translation>Esto solo se pudo mostrar en parte, y por eso no se puede cambiar nada en ello.</translation>
    </message>
    <message>
        <source>This job can&apos;t be shown.</source>
        <translation>Este trabajo no se puede mostrar.</translation>
    </message>
    <message>
        <source>This job can&apos;t be shown: the record is damaged there</source>
        <translation>Este trabajo no se puede mostrar: el registro está dañado ahí</translation>
    </message>
    <message>
        <source>This job can&apos;t be read while the server is away</source>
        <translation>Este trabajo no se puede leer mientras el servidor no responde</translation>
    </message>
    <message>
        <source>{number}   was undone or taken out</source>
        <translation>{number}   se deshizo o se quitó</translation>
    </message>
    <message>
        <source>Another concern of the same visit: {concern}</source>
        <translation>Otra queja de la misma visita: {concern}</translation>
    </message>
    <message>
        <source>↩  Is it {number} again?</source>
        <translation>↩  ¿Es {number} otra vez?</translation>
    </message>
    <message>
        <source>This may be a return: then and now side by side</source>
        <translation>Puede ser una vuelta: entonces y ahora, lado a lado</translation>
    </message>
    <message>
        <source>Comparison sheet…</source>
        <translation>Hoja de comparación…</translation>
    </message>
    <message>
        <source>The sheet for the counter: look, print, save (Ctrl+P)</source>
        <translation>La hoja para el mostrador: ver, imprimir, guardar (Ctrl+P)</translation>
    </message>
    <message>
        <source>History…</source>
        <translation>Historial…</translation>
    </message>
    <message>
        <source>What was done to this job, by whom and when (Ctrl+H)</source>
        <translation>Qué se hizo en este trabajo, quién y cuándo (Ctrl+H)</translation>
    </message>
    <message>
        <source>Another concern…</source>
        <translation>Otra queja…</translation>
    </message>
    <message>
        <source>Kind of work</source>
        <translation>Tipo de trabajo</translation>
    </message>
    <message>
        <source>Inspections and maintenance are in no comeback rate; their car is watched too</source>
        <translation>Las inspecciones y el mantenimiento no están en ninguna tasa de retornos; su vehículo también se observa</translation>
    </message>
    <message>
        <source>This car was here before</source>
        <translation>Este vehículo ya estuvo aquí</translation>
    </message>
    <message>
        <source>The same car</source>
        <translation>El mismo vehículo</translation>
    </message>
    <message>
        <source>Another car</source>
        <translation>Otro vehículo</translation>
    </message>
    <message>
        <source>It is another car</source>
        <translation>Es otro vehículo</translation>
    </message>
    <message>
        <source>It is the same trouble as before, says the customer</source>
        <translation>Es el mismo problema de antes, dice el cliente</translation>
    </message>
    <message>
        <source>Taken for another car with this plate; what is written of this one stays.</source>
        <translation>Tomado por otro vehículo con esta matrícula; lo escrito de este se queda.</translation>
    </message>
    <message>
        <source>Is it the same car?</source>
        <translation>¿Es el mismo vehículo?</translation>
    </message>
    <message>
        <source>The car is still in the shop by the record.</source>
        <translation>Según el registro, el vehículo sigue en el taller.</translation>
    </message>
    <message>
        <source>Open the earlier job {number}</source>
        <translation>Abrir el trabajo anterior {number}</translation>
    </message>
    <message>
        <source>today</source>
        <translation>hoy</translation>
    </message>
    <message>
        <source>yesterday</source>
        <translation>ayer</translation>
    </message>
    <message>
        <source>{days} days ago</source>
        <translation>hace {days} días</translation>
    </message>
    <message>
        <source>read in the car</source>
        <translation>leído en el vehículo</translation>
    </message>
    <message>
        <source>told by the customer</source>
        <translation>contado por el cliente</translation>
    </message>
    <message>
        <source>estimated</source>
        <translation>estimado</translation>
    </message>
    <message>
        <source>Odometer in</source>
        <translation>Cuentakilómetros al entrar</translation>
    </message>
    <message>
        <source>How the odometer is known</source>
        <translation>Cómo se conoce el cuentakilómetros</translation>
    </message>
    <message>
        <source>The odometer counts in</source>
        <translation>El cuentakilómetros cuenta en</translation>
    </message>
    <message>
        <source>Readings keep their numbers; what they count in changes.</source>
        <translation>Las lecturas conservan sus números; cambia en qué cuentan.</translation>
    </message>
    <message>
        <source>counts in</source>
        <translation>cuenta en</translation>
    </message>
    <message>
        <source>in {unit}; or in words why it cannot be read</source>
        <translation>en {unit}; o en palabras por qué no se puede leer</translation>
    </message>
    <message>
        <source>All readings of this car count in {unit} from now on; their numbers are as they were. Proof drives stay as long as they were. Undo takes it back.</source>
        <translation>Todas las lecturas de este vehículo cuentan desde ahora en {unit}; sus números quedan como estaban. Los recorridos de prueba siguen siendo igual de largos. Deshacer lo revierte.</translation>
    </message>
    <message>
        <source>Odometer out</source>
        <translation>Cuentakilómetros al salir</translation>
    </message>
    <message>
        <source>in {unit}; empty: as it came in</source>
        <translation>en {unit}; vacío: como entró</translation>
    </message>
    <message>
        <source>in {unit}; mends what it left with</source>
        <translation>en {unit}; corrige con lo que salió</translation>
    </message>
    <message>
        <source>{number} was handed over at another desk. Odometer out typed here, not kept: “{typed}”.</source>
        <translation>{number} se entregó en otro puesto. Cuentakilómetros al salir escrito aquí, sin guardar: “{typed}”.</translation>
    </message>
    <message>
        <source>People of the shop</source>
        <translation>Personas del taller</translation>
    </message>
    <message>
        <source>Name of a new person</source>
        <translation>Nombre de una persona nueva</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Añadir</translation>
    </message>
    <message>
        <source>Add this person</source>
        <translation>Añadir a esta persona</translation>
    </message>
    <message>
        <source>Take {name} off the list</source>
        <translation>Quitar a {name} de la lista</translation>
    </message>
    <message>
        <source>Press to take off the list; their jobs keep the name</source>
        <translation>Pulse para quitar de la lista; sus trabajos conservan el nombre</translation>
    </message>
    <message>
        <source>Nobody yet: type a name and press Add.</source>
        <translation>Nadie todavía: escriba un nombre y pulse Añadir.</translation>
    </message>
    <message>
        <source>Add names…</source>
        <translation>Añadir nombres…</translation>
    </message>
    <message>
        <source>Not yet</source>
        <translation>Todavía no</translation>
    </message>
    <message>
        <source>Not yet: keep the car here</source>
        <translation>Todavía no: dejar aquí el vehículo</translation>
    </message>
    <message>
        <source>Hand over all the same</source>
        <translation>Entregar de todos modos</translation>
    </message>
    <message>
        <source>One that was handed over by mistake: undo that entry in the job&apos;s History.</source>
        <translation>Si se entregó por error: deshaga ese asiento en el Historial del trabajo.</translation>
    </message>
    <message>
        <source>“Same conditions” is chosen, and not every condition is written down as met.</source>
        <translation>Se eligió “Mismas condiciones”, y no todas las condiciones están anotadas como cumplidas.</translation>
    </message>
    <message>
        <source>Proof</source>
        <translation>Prueba</translation>
    </message>
    <message>
        <source>The order in which nothing is lost</source>
        <translation>El orden en el que no se pierde nada</translation>
    </message>
    <message>
        <source>Codes read after the repair</source>
        <translation>Códigos leídos después de la reparación</translation>
    </message>
    <message>
        <source>How far was it proved?</source>
        <translation>¿Hasta dónde se probó?</translation>
    </message>
    <message>
        <source>Before the drive and after it</source>
        <translation>Antes y después del recorrido</translation>
    </message>
    <message>
        <source>The drive</source>
        <translation>El recorrido</translation>
    </message>
    <message>
        <source>Answered besides these</source>
        <translation>Respondido además de estos</translation>
    </message>
    <message>
        <source>Enough when: {enough}</source>
        <translation>Basta cuando: {enough}</translation>
    </message>
    <message>
        <source>Proved: {word}</source>
        <translation>Probado: {word}</translation>
    </message>
    <message>
        <source>No step is ticked yet.</source>
        <translation>Todavía no hay ningún paso marcado.</translation>
    </message>
    <message>
        <source>like 2026-11-16 14:05, or 14:05</source>
        <translation>como 2026-11-16 14:05, o 14:05</translation>
    </message>
    <message>
        <source>Step to put right</source>
        <translation>Paso que corregir</translation>
    </message>
    <message>
        <source>When it was done</source>
        <translation>Cuándo se hizo</translation>
    </message>
    <message>
        <source>Ticked too late? The step</source>
        <translation>¿Marcado tarde? El paso</translation>
    </message>
    <message>
        <source>A press notes the time of its step.</source>
        <translation>Cada pulsación anota la hora de su paso.</translation>
    </message>
    <message>
        <source>Step: {words}</source>
        <translation>Paso: {words}</translation>
    </message>
    <message>
        <source>Yes, all the same</source>
        <translation>Sí, de todos modos</translation>
    </message>
    <message>
        <source>As scan tools show them in words: complete (ready), not run (not ready) or not fitted (not supported).</source>
        <translation>Como las muestra el escáner en palabras: completa (lista), sin ejecutar (no lista) o no montada (no compatible).</translation>
    </message>
    <message>
        <source>Or, where a tool shows the car&apos;s raw answer: its four bytes. They fill the list by themselves.</source>
        <translation>O, donde el escáner muestra la respuesta del vehículo tal cual: sus cuatro bytes. Rellenan la lista por sí solos.</translation>
    </message>
    <message>
        <source>One by one</source>
        <translation>Uno por uno</translation>
    </message>
    <message>
        <source>The car&apos;s own tests. One that has not run has not passed.</source>
        <translation>Las pruebas propias del vehículo. La que no se ha ejecutado no se ha superado.</translation>
    </message>
    <message>
        <source>{stage}: bytes of mode 01 PID 01</source>
        <translation>{stage}: bytes del modo 01 PID 01</translation>
    </message>
    <message>
        <source>lamp on</source>
        <translation>testigo encendido</translation>
    </message>
    <message>
        <source>lamp off</source>
        <translation>testigo apagado</translation>
    </message>
    <message>
        <source>1 code</source>
        <translation>1 código</translation>
    </message>
    <message>
        <source>{count} codes</source>
        <translation>{count} códigos</translation>
    </message>
    <message>
        <source>no codes</source>
        <translation>ningún código</translation>
    </message>
    <message>
        <source>compression ignition</source>
        <translation>encendido por compresión</translation>
    </message>
    <message>
        <source>spark ignition</source>
        <translation>encendido por chispa</translation>
    </message>
    <message>
        <source>○  not said</source>
        <translation>○  no dicho</translation>
    </message>
    <message>
        <source>✓  complete</source>
        <translation>✓  completa</translation>
    </message>
    <message>
        <source>◌  not run</source>
        <translation>◌  no ejecutada</translation>
    </message>
    <message>
        <source>–  not fitted</source>
        <translation>–  no instalada</translation>
    </message>
    <message>
        <source>Kind of engine</source>
        <translation>Clase de motor</translation>
    </message>
    <message>
        <source>compression ignition (diesel)</source>
        <translation>encendido por compresión (diésel)</translation>
    </message>
    <message>
        <source>Press for the next: complete, not run, not fitted, not said</source>
        <translation>Pulse para la siguiente: completa, no ejecutada, no instalada, no dicho</translation>
    </message>
    <message>
        <source>complete since</source>
        <translation>completa desde entonces</translation>
    </message>
    <message>
        <source>was set back</source>
        <translation>se puso a cero</translation>
    </message>
    <message>
        <source>Take {reading}</source>
        <translation>Tomar {reading}</translation>
    </message>
    <message>
        <source>like 37 in 10 min, then 0 in 10 min; provoked the same way both times</source>
        <translation>así: 37 in 10 min, then 0 in 10 min; provocada igual las dos veces</translation>
    </message>
    <message>
        <source>Driven without it</source>
        <translation>Recorrido sin la avería</translation>
    </message>
    <message>
        <source>What was tried, and what was not</source>
        <translation>Qué se probó y qué no</translation>
    </message>
    <message>
        <source>It came about once in</source>
        <translation>Venía una vez cada</translation>
    </message>
    <message>
        <source>It came about once in: unit</source>
        <translation>Venía una vez cada: unidad</translation>
    </message>
    <message>
        <source>Made to happen on purpose</source>
        <translation>Provocada a propósito</translation>
    </message>
    <message>
        <source>of what</source>
        <translation>de qué</translation>
    </message>
    <message>
        <source>as the customer tells it</source>
        <translation>como lo cuenta el cliente</translation>
    </message>
    <message>
        <source>Another car is written down with this plate: {known}. Is it the same car? Its visits count as this car&apos;s until somebody says that it is another.</source>
        <translation>Otro vehículo está anotado con esta matrícula: {known}. ¿Es el mismo vehículo? Sus visitas cuentan como de este hasta que alguien diga que es otro.</translation>
    </message>
    <message>
        <source>Search hours</source>
        <translation>Horas de búsqueda</translation>
    </message>
    <message>
        <source>spent on finding the cause, of all Hours under Back On; may stay empty</source>
        <translation>las dedicadas a buscar la causa, de todas las Horas de “Montado de nuevo”; puede quedar vacío</translation>
    </message>
    <message>
        <source>Add this concern to that visit</source>
        <translation>Añadir esta queja a esa visita</translation>
    </message>
    <message>
        <source>Take it in again all the same</source>
        <translation>Recibirlo otra vez de todos modos</translation>
    </message>
    <message>
        <source>Which car</source>
        <translation>Qué vehículo</translation>
    </message>
    <message>
        <source>Plate, or the shop&apos;s own tag</source>
        <translation>Matrícula o etiqueta del taller</translation>
    </message>
    <message>
        <source>VIN, if it is at hand</source>
        <translation>VIN, si está a mano</translation>
    </message>
    <message>
        <source>1.8-litre compact hatchback, 1990s</source>
        <translation>compacto de 5 puertas, 1.8 litros, años 90</translation>
    </message>
    <message>
        <source>Odometer</source>
        <translation>Cuentakilómetros</translation>
    </message>
    <message>
        <source>Unit of the odometer</source>
        <translation>Unidad del cuentakilómetros</translation>
    </message>
    <message>
        <source>cannot be read: {reason}</source>
        <translation>no se puede leer: {reason}</translation>
    </message>
    <message>
        <source>How is the odometer known?</source>
        <translation>¿Cómo se conoce el cuentakilómetros?</translation>
    </message>
    <message>
        <source>in</source>
        <translation>en</translation>
    </message>
    <message>
        <source>How is it known?</source>
        <translation>¿Cómo se conoce?</translation>
    </message>
    <message>
        <source>The odometer of this car counted in this unit before.</source>
        <translation>El cuentakilómetros de este vehículo ya contaba antes en esta unidad.</translation>
    </message>
    <message>
        <source>a VIN has 17 letters and digits</source>
        <translation>un VIN tiene 17 letras y cifras</translation>
    </message>
    <message>
        <source>{name}: “{typed}” was typed and is not kept.</source>
        <translation>{name}: se escribió “{typed}” y no se ha guardado.</translation>
    </message>
    <message>
        <source>Who is at the desk</source>
        <translation>Quién está en el puesto</translation>
    </message>
    <message>
        <source>Who is here?</source>
        <translation>¿Quién está aquí?</translation>
    </message>
    <message>
        <source>Customer</source>
        <translation>Cliente</translation>
    </message>
    <message>
        <source>Phone</source>
        <translation>Teléfono</translation>
    </message>
    <message>
        <source>Brought by, if someone else</source>
        <translation>Traído por, si es otra persona</translation>
    </message>
    <message>
        <source>What the customer says</source>
        <translation>Lo que dice el cliente</translation>
    </message>
    <message>
        <source>Take the car in</source>
        <translation>Recibir el vehículo</translation>
    </message>
    <message>
        <source>The visit and its job are written down (Ctrl+Enter)</source>
        <translation>Se anotan la visita y su trabajo (Ctrl+Intro)</translation>
    </message>
    <message>
        <source>Empty the form</source>
        <translation>Vaciar el formulario</translation>
    </message>
    <message>
        <source>These are the words of {number}: make them this customer&apos;s own.</source>
        <translation>Estas son las palabras de {number}: hágalas propias de este cliente.</translation>
    </message>
    <message>
        <source>Answer that above first.</source>
        <translation>Responda primero lo de arriba.</translation>
    </message>
    <message>
        <source>What does the customer say? Write it down below first.</source>
        <translation>¿Qué dice el cliente? Escríbalo primero abajo.</translation>
    </message>
    <message>
        <source>The concern is added to that visit. Typed here, not kept, for the visit has its own: {unused}.</source>
        <translation>La queja se ha añadido a esa visita. Escrito aquí, sin guardar, porque la visita tiene lo suyo: {unused}.</translation>
    </message>
    <message>
        <source>Heard: a car is here</source>
        <translation>Lo contado: llegó un vehículo</translation>
    </message>
    <message>
        <source>This was typed before the program was closed.</source>
        <translation>Esto se escribió antes de cerrar el programa.</translation>
    </message>
    <message>
        <source>In their own words</source>
        <translation>En sus propias palabras</translation>
    </message>
    <message>
        <source>Type four bytes in hex, such as 41 01 00 07 E5 00 or 0007E500.</source>
        <translation>Escriba cuatro bytes en hexadecimal, como 41 01 00 07 E5 00 o 0007E500.</translation>
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
        <source>misfire</source>
        <translation>fallo de encendido</translation>
    </message>
    <message>
        <source>fuel system</source>
        <translation>sistema de combustible</translation>
    </message>
    <message>
        <source>sensors and outputs</source>
        <translation>sensores y salidas</translation>
    </message>
    <message>
        <source>catalyst</source>
        <translation>catalizador</translation>
    </message>
    <message>
        <source>heated catalyst</source>
        <translation>catalizador calefactado</translation>
    </message>
    <message>
        <source>evaporative system</source>
        <translation>sistema evaporativo</translation>
    </message>
    <message>
        <source>secondary air</source>
        <translation>aire secundario</translation>
    </message>
    <message>
        <source>particulate filter (older cars: A/C refrigerant)</source>
        <translation>filtro de partículas (vehículos antiguos: refrigerante del aire acondicionado)</translation>
    </message>
    <message>
        <source>oxygen sensor</source>
        <translation>sensor de oxígeno</translation>
    </message>
    <message>
        <source>oxygen sensor heater</source>
        <translation>calefactor del sensor de oxígeno</translation>
    </message>
    <message>
        <source>exhaust gas recirculation or valve timing</source>
        <translation>recirculación de gases de escape o distribución variable</translation>
    </message>
    <message>
        <source>hydrocarbon catalyst</source>
        <translation>catalizador de hidrocarburos</translation>
    </message>
    <message>
        <source>nitrogen oxide treatment</source>
        <translation>tratamiento de óxidos de nitrógeno</translation>
    </message>
    <message>
        <source>boost pressure</source>
        <translation>presión de sobrealimentación</translation>
    </message>
    <message>
        <source>exhaust gas sensor</source>
        <translation>sensor de gases de escape</translation>
    </message>
    <message>
        <source>particulate filter</source>
        <translation>filtro de partículas</translation>
    </message>
    <message>
        <source>“{text}” holds signs that are no hex digits.</source>
        <translation>“{text}” contiene signos que no son cifras hexadecimales.</translation>
    </message>
    <message>
        <source>“{text}” holds {what}, not four bytes.</source>
        <translation>“{text}” contiene {what}, no cuatro bytes.</translation>
    </message>
    <message>
        <source>“{text}” begins with the reply&apos;s head 41 01, and two bytes are missing.</source>
        <translation>“{text}” empieza con la cabecera de la respuesta, 41 01, y faltan dos bytes.</translation>
    </message>
    <message>
        <source>“{text}” looks like a day.</source>
        <translation>“{text}” parece un día.</translation>
    </message>
    <message>
        <source>{count} hex digits</source>
        <translation>{count} cifras hexadecimales</translation>
    </message>
    <message>
        <source>{count} bytes</source>
        <translation>{count} bytes</translation>
    </message>
    <message>
        <source>As found</source>
        <translation>Como se halló</translation>
    </message>
    <message>
        <source>After the repair</source>
        <translation>Después de la reparación</translation>
    </message>
    <message>
        <source>Complete</source>
        <translation>Completas</translation>
    </message>
    <message>
        <source>Not run</source>
        <translation>No ejecutadas</translation>
    </message>
    <message>
        <source>Not run when it came and complete since: {tests}.</source>
        <translation>No ejecutadas al llegar y completas desde entonces: {tests}.</translation>
    </message>
    <message>
        <source>{stage}: bits are set that the standard keeps free. Look at the typing again.</source>
        <translation>{stage}: hay bits puestos que la norma deja libres. Revise lo escrito.</translation>
    </message>
    <message>
        <source>{stage}: not one test is fitted by these bytes. Look at the typing again.</source>
        <translation>{stage}: según estos bytes no hay instalada ni una prueba. Revise lo escrito.</translation>
    </message>
    <message>
        <source>{stage}: the bytes count {codes}, and {number_or_none} is written down as stored.</source>
        <translation>{stage}: los bytes cuentan {codes}, y como almacenados hay anotados: {number_or_none}.</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguno</translation>
    </message>
    <message>
        <source>{stage}: {test} was entered as {entered}, and the bytes say {told}. The bytes count.</source>
        <translation>{stage}: {test} se anotó como {entered}, y los bytes dicen {told}. Cuentan los bytes.</translation>
    </message>
    <message>
        <source>The two readings are of different kinds of engine: one is mistyped.</source>
        <translation>Las dos lecturas son de clases de motor distintas: una está mal escrita.</translation>
    </message>
    <message>
        <source>Fitted in one reading and not in the other: {tests}. One is mistyped.</source>
        <translation>Instaladas en una lectura y no en la otra: {tests}. Una está mal escrita.</translation>
    </message>
    <message>
        <source>The car is not known to have a test of its own for this system: what it tested says nothing of this repair.</source>
        <translation>No se sabe que el vehículo tenga una prueba propia para este sistema: lo que probó no dice nada de esta reparación.</translation>
    </message>
    <message>
        <source>Which system it was is not written down: nobody can tell which of its tests counts.</source>
        <translation>No está anotado qué sistema era: nadie puede decir cuál de sus pruebas propias cuenta.</translation>
    </message>
    <message>
        <source>The car&apos;s own test has not run: {test}. Not run is not passed.</source>
        <translation>La prueba propia del vehículo no se ha ejecutado: {test}. No ejecutada no es superada.</translation>
    </message>
    <message>
        <source>The car&apos;s own tests have not run: {tests}. Not run is not passed.</source>
        <translation>Las pruebas propias del vehículo no se han ejecutado: {tests}. No ejecutada no es superada.</translation>
    </message>
    <message>
        <source>How the car&apos;s own tests stand after the repair is not written down.</source>
        <translation>No está anotado cómo están las pruebas propias del vehículo después de la reparación.</translation>
    </message>
    <message>
        <source>Of the car&apos;s own tests for this repair nobody read: {tests}.</source>
        <translation>De las pruebas propias del vehículo para esta reparación nadie leyó: {tests}.</translation>
    </message>
    <message>
        <source>No test of the car&apos;s own that was read speaks of this repair: {tests}.</source>
        <translation>Ninguna prueba propia del vehículo que se leyera dice algo de esta reparación: {tests}.</translation>
    </message>
    <message>
        <source>Nothing was changed.</source>
        <translation>No se cambió nada.</translation>
    </message>
    <message>
        <source>It was taken out or undone; look at the page again.</source>
        <translation>Se quitó o se deshizo; mire la página de nuevo.</translation>
    </message>
    <message>
        <source>Nothing of it was changed.</source>
        <translation>No se cambió nada de ello.</translation>
    </message>
    <message>
        <source>That job is no longer there.</source>
        <translation>Ese trabajo ya no está.</translation>
    </message>
    <message>
        <source>That visit is no longer there.</source>
        <translation>Esa visita ya no está.</translation>
    </message>
    <message>
        <source>0 or 1</source>
        <translation>0 o 1</translation>
    </message>
    <message>
        <source>a step of the proof</source>
        <translation>un paso de la prueba</translation>
    </message>
    <message>
        <source>“found” or “after repair”</source>
        <translation>“found” (hallado) o “after repair” (después de la reparación)</translation>
    </message>
    <message>
        <source>one of the car&apos;s own tests</source>
        <translation>una de las pruebas propias del vehículo</translation>
    </message>
    <message>
        <source>“complete”, “not run” or “not fitted”</source>
        <translation>“complete” (completo), “not run” (sin ejecutar) o “not fitted” (no montado)</translation>
    </message>
    <message>
        <source>the car&apos;s four bytes</source>
        <translation>los cuatro bytes del vehículo</translation>
    </message>
    <message>
        <source>a count before and after</source>
        <translation>una cuenta de antes y después</translation>
    </message>
    <message>
        <source>the figures in these words</source>
        <translation>las cifras de estas palabras</translation>
    </message>
    <message>
        <source>That job is not in the record any more.</source>
        <translation>Ese trabajo ya no está en el registro.</translation>
    </message>
    <message>
        <source>It may have been undone.</source>
        <translation>Puede que se haya deshecho.</translation>
    </message>
    <message>
        <source>an odometer reading</source>
        <translation>una lectura del cuentakilómetros</translation>
    </message>
    <message>
        <source>There is no job {number!r} in this shop.</source>
        <translation>No hay ningún trabajo {number!r} en este taller.</translation>
    </message>
    <message>
        <source>Numbers look like J-104.</source>
        <translation>Los números son como J-104.</translation>
    </message>
    <message>
        <source>one of the four things of a job</source>
        <translation>una de las cuatro cosas de un trabajo</translation>
    </message>
    <message>
        <source>Follow the vehicle maker&apos;s procedure and local rules; leave it to licensed people where the law asks.</source>
        <translation>Siga el procedimiento del fabricante del vehículo y las normas locales; déjelo a personas autorizadas donde la ley lo pida.</translation>
    </message>
    <message>
        <source>Brakes that fail can kill.</source>
        <translation>Unos frenos que fallan pueden matar.</translation>
    </message>
    <message>
        <source>Steering or suspension that lets go can kill.</source>
        <translation>Una dirección o una suspensión que se suelta puede matar.</translation>
    </message>
    <message>
        <source>A wheel can come off: axle nut and wheel nuts to the maker&apos;s torque.</source>
        <translation>Una rueda puede salirse: tuerca del eje y tuercas de rueda al par del fabricante.</translation>
    </message>
    <message>
        <source>Fuel and its vapour burn, and fuel under pressure cuts skin: no sparks, release the pressure first.</source>
        <translation>El combustible y su vapor arden, y el combustible a presión corta la piel: sin chispas, descargue primero la presión.</translation>
    </message>
    <message>
        <source>Fuel vapour burns: no sparks, no flame.</source>
        <translation>El vapor de combustible arde: sin chispas, sin llamas.</translation>
    </message>
    <message>
        <source>Ignition voltage can injure or kill, above all people with a pacemaker: ignition off and key out before touching.</source>
        <translation>La tensión de encendido puede herir o matar, sobre todo a personas con marcapasos: contacto quitado y llave fuera antes de tocar.</translation>
    </message>
    <message>
        <source>Hot coolant under pressure scalds: open it only when cold.</source>
        <translation>El refrigerante caliente a presión quema: ábralo solo en frío.</translation>
    </message>
    <message>
        <source>An airbag or belt tensioner that fires can kill: battery off, the maker&apos;s waiting time, qualified people only.</source>
        <translation>Un airbag o un pretensor que se dispara puede matar: batería desconectada, el tiempo de espera del fabricante, solo personas cualificadas.</translation>
    </message>
    <message>
        <source>Refrigerant under pressure freezes skin and eyes: licensed people only, and never let out.</source>
        <translation>El gas refrigerante a presión congela la piel y los ojos: solo personas autorizadas, y nunca se suelta al aire.</translation>
    </message>
    <message>
        <source>Ignition</source>
        <translation>Encendido</translation>
    </message>
    <message>
        <source>Intake and boost</source>
        <translation>Admisión y sobrealimentación</translation>
    </message>
    <message>
        <source>Engine, mechanical</source>
        <translation>Motor, parte mecánica</translation>
    </message>
    <message>
        <source>Engine control and sensors</source>
        <translation>Control del motor y sensores</translation>
    </message>
    <message>
        <source>Engine oil</source>
        <translation>Aceite del motor</translation>
    </message>
    <message>
        <source>Exhaust and emissions</source>
        <translation>Escape y emisiones</translation>
    </message>
    <message>
        <source>Fuel vapour (evaporative)</source>
        <translation>Sistema evaporativo</translation>
    </message>
    <message>
        <source>Cooling and heating</source>
        <translation>Refrigeración y calefacción</translation>
    </message>
    <message>
        <source>Starting</source>
        <translation>Arranque</translation>
    </message>
    <message>
        <source>Charging and battery</source>
        <translation>Carga y batería</translation>
    </message>
    <message>
        <source>Wiring and electrics</source>
        <translation>Cableado y electricidad</translation>
    </message>
    <message>
        <source>Immobilizer and keys</source>
        <translation>Inmovilizador y llaves</translation>
    </message>
    <message>
        <source>Wheel speed and ABS</source>
        <translation>Velocidad de rueda y ABS</translation>
    </message>
    <message>
        <source>Steering</source>
        <translation>Dirección</translation>
    </message>
    <message>
        <source>Suspension</source>
        <translation>Suspensión</translation>
    </message>
    <message>
        <source>Wheels and tyres</source>
        <translation>Ruedas y neumáticos</translation>
    </message>
    <message>
        <source>Gearbox</source>
        <translation>Caja de cambios</translation>
    </message>
    <message>
        <source>Clutch</source>
        <translation>Embrague</translation>
    </message>
    <message>
        <source>Driveline</source>
        <translation>Transmisión</translation>
    </message>
    <message>
        <source>Engine and gearbox mounts</source>
        <translation>Soportes de motor y caja de cambios</translation>
    </message>
    <message>
        <source>Accessory belt drive</source>
        <translation>Correa de accesorios</translation>
    </message>
    <message>
        <source>Air conditioning</source>
        <translation>Aire acondicionado</translation>
    </message>
    <message>
        <source>Airbags and belts</source>
        <translation>Airbags y cinturones</translation>
    </message>
    <message>
        <source>Seals and drains</source>
        <translation>Juntas y desagües</translation>
    </message>
    <message>
        <source>One is P, C, B or U, then 0 to 3, then three of 0 to 9 and A to F, such as P0300.</source>
        <translation>Es P, C, B o U, después de 0 a 3, después tres de 0 a 9 y de A a F, como P0300.</translation>
    </message>
    <message>
        <source>none, no code, no codes, no fault codes, no trouble codes, nothing</source>
        <translation>ninguno, ningún código, sin códigos, no hay códigos, sin averías, nada</translation>
    </message>
    <message>
        <source>“{short}” is not an odometer reading.</source>
        <translation>“{short}” no es una lectura de cuentakilómetros.</translation>
    </message>
    <message>
        <source>Type a whole number such as 118,420, or say why it cannot be read.</source>
        <translation>Escriba un número entero como 118,420, o diga por qué no se puede leer.</translation>
    </message>
    <message>
        <source>“{short}” has too many digits for an odometer.</source>
        <translation>“{short}” tiene demasiadas cifras para un cuentakilómetros.</translation>
    </message>
    <message>
        <source>an amount of money</source>
        <translation>una cantidad de dinero</translation>
    </message>
    <message>
        <source>120.50 or 1,200</source>
        <translation>120.50 o 1,200</translation>
    </message>
    <message>
        <source>a number of hours</source>
        <translation>un número de horas</translation>
    </message>
    <message>
        <source>a distance</source>
        <translation>una distancia</translation>
    </message>
    <message>
        <source>31 or 31.5</source>
        <translation>31 o 31.5</translation>
    </message>
    <message>
        <source>“{text}” can be read in two ways.</source>
        <translation>“{text}” se puede leer de dos maneras.</translation>
    </message>
    <message>
        <source>Type {whole}{part}, or {fine}.</source>
        <translation>Escriba {whole}{part}, o {fine}.</translation>
    </message>
    <message>
        <source>“{said}” is not a moment.</source>
        <translation>“{said}” no es un momento.</translation>
    </message>
    <message>
        <source>Type it like 2026-11-16 14:05, or 14:05.</source>
        <translation>Escríbalo como 2026-11-16 14:05, o 14:05.</translation>
    </message>
    <message>
        <source>“{short}” is not {what}.</source>
        <translation>“{short}” no es {what}.</translation>
    </message>
    <message>
        <source>Type a number such as {such_as}.</source>
        <translation>Escriba un número como {such_as}.</translation>
    </message>
    <message>
        <source>“{short}” is too much.</source>
        <translation>“{short}” es demasiado.</translation>
    </message>
    <message>
        <source>Accepted: up to {most:,}.</source>
        <translation>Se acepta: hasta {most:,}.</translation>
    </message>
    <message>
        <source>Change the vehicle</source>
        <translation>Cambiar el vehículo</translation>
    </message>
    <message>
        <source>the unit of an odometer</source>
        <translation>la unidad de un cuentakilómetros</translation>
    </message>
    <message>
        <source>A drive of {distance:,g} {unit}</source>
        <translation>Un recorrido de {distance:,g} {unit}</translation>
    </message>
    <message>
        <source>Say that the odometer counts in {unit}</source>
        <translation>Decir que el cuentakilómetros cuenta en {unit}</translation>
    </message>
    <message>
        <source>This car has no other visit.</source>
        <translation>Este vehículo no tiene otra visita.</translation>
    </message>
    <message>
        <source>Change its plate, its VIN or its description.</source>
        <translation>Cambie su matrícula, su VIN o su descripción.</translation>
    </message>
    <message>
        <source>Say that this was another car</source>
        <translation>Decir que era otro vehículo</translation>
    </message>
    <message>
        <source>Say that it is the same car</source>
        <translation>Decir que es el mismo vehículo</translation>
    </message>
    <message>
        <source>Say that it is another car</source>
        <translation>Decir que es otro vehículo</translation>
    </message>
    <message>
        <source>That car is no longer there.</source>
        <translation>Ese vehículo ya no está.</translation>
    </message>
    <message>
        <source>That VIN is another car&apos;s: this one&apos;s ends {kept}.</source>
        <translation>Ese VIN es de otro vehículo: el de este termina en {kept}.</translation>
    </message>
    <message>
        <source>Look at both; with two VINs they are two cars.</source>
        <translation>Mire los dos; con dos VIN son dos vehículos.</translation>
    </message>
    <message>
        <source>“{vin}” has 1 character.</source>
        <translation>“{vin}” tiene 1 carácter.</translation>
    </message>
    <message>
        <source>“{vin}” has {count} characters.</source>
        <translation>“{vin}” tiene {count} caracteres.</translation>
    </message>
    <message>
        <source>A VIN has 17: letters and digits.</source>
        <translation>Un VIN tiene 17: letras y cifras.</translation>
    </message>
    <message>
        <source>“{vin}” has the letter {character} in place {place}.</source>
        <translation>“{vin}” tiene la letra {character} en el lugar {place}.</translation>
    </message>
    <message>
        <source>A VIN never has I, O or Q; look again whether it is 1 or 0.</source>
        <translation>Un VIN nunca tiene I, O ni Q; mire otra vez si es 1 o 0.</translation>
    </message>
    <message>
        <source>“{vin}” has {character!r} in place {place}.</source>
        <translation>“{vin}” tiene {character!r} en el lugar {place}.</translation>
    </message>
    <message>
        <source>A VIN has only the letters A to Z without I, O, Q, and the digits.</source>
        <translation>Un VIN solo tiene las letras de la A a la Z sin I, O, Q, y las cifras.</translation>
    </message>
    <message>
        <source>A VIN has 17 letters and digits; this one has {count}. Is it complete?</source>
        <translation>Un VIN tiene 17 letras y cifras; este tiene {count}. ¿Está completo?</translation>
    </message>
    <message>
        <source>The ninth character is {ninth}; the others ask for {expected}. Read it again; on cars of many markets it is right all the same.</source>
        <translation>El noveno carácter es {ninth}; los demás piden {expected}. Léalo otra vez; en vehículos de muchos mercados es correcto de todos modos.</translation>
    </message>
    <message>
        <source>The ninth character is {ninth}; the others ask for {expected}. One character may be misread, or the car is of a market that does not use the check digit.</source>
        <translation>El noveno carácter es {ninth}; los demás piden {expected}. Puede que un carácter esté mal leído, o que el vehículo sea de un mercado que no usa el dígito de control.</translation>
    </message>
    <message>
        <source>The tenth character, {tenth}, stands for no model year.</source>
        <translation>El décimo carácter, {tenth}, no corresponde a ningún año de modelo.</translation>
    </message>
    <message>
        <source>On a passenger car or a light truck, place 7 points to {year}.</source>
        <translation>En un turismo o un camión ligero, el lugar 7 apunta a {year}.</translation>
    </message>
    <message>
        <source>The third character, 9, means a maker of few vehicles a year.</source>
        <translation>El tercer carácter, 9, significa un fabricante de pocos vehículos al año.</translation>
    </message>
    <message>
        <source>The region is where the maker&apos;s code was given out; editions differ.</source>
        <translation>La región es donde se asignó el código del fabricante; las ediciones difieren.</translation>
    </message>
    <message>
        <source>what was done</source>
        <translation>lo que se hizo</translation>
    </message>
    <message>
        <source>Write down the search hours</source>
        <translation>Anotar las horas de búsqueda</translation>
    </message>
    <message>
        <source>the kind of work</source>
        <translation>el tipo de trabajo</translation>
    </message>
    <message>
        <source>This job came back, as was judged: as {kind_of_work} no rate would hold it.</source>
        <translation>Este trabajo volvió, según se juzgó: como {kind_of_work} no lo contaría ninguna tasa.</translation>
    </message>
    <message>
        <source>If it was no repair, take the judgement back first, under It&apos;s Back.</source>
        <translation>Si no era una reparación, retire primero el juicio, en Ha vuelto.</translation>
    </message>
    <message>
        <source>Say what kind of work it is</source>
        <translation>Decir qué tipo de trabajo es</translation>
    </message>
    <message>
        <source>nobody is named</source>
        <translation>no se nombra a nadie</translation>
    </message>
    <message>
        <source>Say who wrote it up</source>
        <extracomment>The four things of a job in the order of work, as they are kept. Those that are the technician&apos;s where nobody is named; the counter may have written the job up. How the history says that somebody was named.</extracomment>
        <translation>Decir quién lo anotó</translation>
    </message>
    <message>
        <source>Say who searched</source>
        <translation>Decir quién buscó</translation>
    </message>
    <message>
        <source>Say who refitted</source>
        <translation>Decir quién montó</translation>
    </message>
    <message>
        <source>Say who proved it</source>
        <translation>Decir quién lo probó</translation>
    </message>
    <message>
        <source>repair</source>
        <extracomment>What a job is, as it is kept (None: a repair), and its words.</extracomment>
        <translation>reparación</translation>
    </message>
    <message>
        <source>inspection only</source>
        <translation>solo inspección</translation>
    </message>
    <message>
        <source>maintenance</source>
        <translation>mantenimiento</translation>
    </message>
    <message>
        <source>{search:g} hours of searching are more than the {hours:g} hours of the whole job.</source>
        <translation>{search:g} horas de búsqueda son más que las {hours:g} horas de todo el trabajo.</translation>
    </message>
    <message>
        <source>Searching is a part of Hours: raise Hours on Back On, or lower the search hours.</source>
        <translation>La búsqueda es parte de Horas: suba Horas en Montado de nuevo, o baje las horas de búsqueda.</translation>
    </message>
    <message>
        <source>Which car is it?</source>
        <translation>¿Qué vehículo es?</translation>
    </message>
    <message>
        <source>Type its plate, its VIN or a tag of your own.</source>
        <translation>Escriba su matrícula, su VIN o una etiqueta propia.</translation>
    </message>
    <message>
        <source>Type the reading, or choose why it cannot be read.</source>
        <translation>Escriba la lectura, o elija por qué no se puede leer.</translation>
    </message>
    <message>
        <source>how the odometer is known</source>
        <translation>cómo se conoce el cuentakilómetros</translation>
    </message>
    <message>
        <source>What does the customer say?</source>
        <translation>¿Qué dice el cliente?</translation>
    </message>
    <message>
        <source>Write it down in their own words.</source>
        <translation>Escríbalo en sus propias palabras.</translation>
    </message>
    <message>
        <source>More…</source>
        <translation>Más…</translation>
    </message>
    <message>
        <source>⚠ It went on, or is to go on: {listed}.</source>
        <translation>⚠ Se montó, o se va a montar: {listed}.</translation>
    </message>
    <message>
        <source>Something speaks against a part that goes with the car: {against}. Hand the car over all the same? The sheet will say so.</source>
        <translation>Algo habla en contra de una pieza que se va con el coche: {against}. ¿Entregar el coche de todos modos? La hoja lo dirá.</translation>
    </message>
</context>
</TS>
