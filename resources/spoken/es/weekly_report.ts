<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es">
<context>
    <name></name>
    <message>
        <source>Reading the week</source>
        <translation>Leyendo la semana</translation>
    </message>
    <message>
        <source>Laying out the sheets</source>
        <translation>Disponiendo las hojas</translation>
    </message>
    <message>
        <source>Laid out “{name}”</source>
        <translation>Hoja “{name}” lista</translation>
    </message>
    <message>
        <source>Putting it in its place</source>
        <translation>Poniéndolo en su sitio</translation>
    </message>
    <message>
        <source>comeback</source>
        <extracomment>Marked for the translators.</extracomment>
        <translation>retorno</translation>
    </message>
    <message>
        <source>waiting</source>
        <translation>en espera</translation>
    </message>
    <message>
        <source>not counted</source>
        <translation>sin contar</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Trabajo</translation>
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
        <source>First job</source>
        <translation>Primer trabajo</translation>
    </message>
    <message>
        <source>Of job</source>
        <translation>Del trabajo</translation>
    </message>
    <message>
        <source>Return</source>
        <translation>Vuelta</translation>
    </message>
    <message>
        <source>Counted</source>
        <extracomment>Those that hold a job&apos;s number, in the order in which they are looked for.</extracomment>
        <translation>Contado</translation>
    </message>
    <message>
        <source>Counts</source>
        <translation>Cuenta</translation>
    </message>
    <message>
        <source>Counts as</source>
        <translation>Cuenta como</translation>
    </message>
    <message>
        <source>Settled</source>
        <translation>Cerrados</translation>
    </message>
    <message>
        <source>Not settled</source>
        <translation>Sin decidir</translation>
    </message>
    <message>
        <source>Waiting</source>
        <translation>En espera</translation>
    </message>
    <message>
        <source>Came back</source>
        <translation>Volvieron</translation>
    </message>
    <message>
        <source>Comebacks</source>
        <translation>Retornos</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Estado</translation>
    </message>
    <message>
        <source>Nothing heard</source>
        <translation>Sin noticias</translation>
    </message>
    <message>
        <source>Not caught</source>
        <translation>No reproducida</translation>
    </message>
    <message>
        <source>Kept out</source>
        <translation>Excluido por</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Por qué</translation>
    </message>
    <message>
        <source>Judgement</source>
        <translation>Juicio</translation>
    </message>
    <message>
        <source>Cause</source>
        <translation>Causa</translation>
    </message>
    <message>
        <source>Proof</source>
        <translation>Prueba</translation>
    </message>
    <message>
        <source>First tries</source>
        <translation>Primeros intentos</translation>
    </message>
    <message>
        <source>Not caught then</source>
        <translation>No reproducida entonces</translation>
    </message>
    <message>
        <source>Came back then</source>
        <translation>Volvieron entonces</translation>
    </message>
    <message>
        <source>Low</source>
        <translation>Mínimo</translation>
    </message>
    <message>
        <source>High</source>
        <translation>Máximo</translation>
    </message>
    <message>
        <source>Low limit</source>
        <translation>Límite mínimo</translation>
    </message>
    <message>
        <source>High limit</source>
        <translation>Límite máximo</translation>
    </message>
    <message>
        <source>Under watch</source>
        <translation>En observación</translation>
    </message>
    <message>
        <source>Of those under watch</source>
        <translation>De los observados</translation>
    </message>
    <message>
        <source>Returns per 100 jobs</source>
        <translation>Vueltas por 100 trabajos</translation>
    </message>
    <message>
        <source>Days</source>
        <translation>Días</translation>
    </message>
    <message>
        <source>Days left</source>
        <translation>Días restantes</translation>
    </message>
    <message>
        <source>Came on</source>
        <translation>Vino el</translation>
    </message>
    <message>
        <source>Week</source>
        <translation>Semana</translation>
    </message>
    <message>
        <source>Weeks ago</source>
        <translation>Semanas atrás</translation>
    </message>
    <message>
        <source>To</source>
        <translation>Hasta</translation>
    </message>
    <message>
        <source>Hours</source>
        <translation>Horas</translation>
    </message>
    <message>
        <source>Unbilled hours</source>
        <translation>Horas no facturadas</translation>
    </message>
    <message>
        <source>Price</source>
        <translation>Precio</translation>
    </message>
    <message>
        <source>Cost</source>
        <translation>Coste</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>Mano de obra</translation>
    </message>
    <message>
        <source>Cash out</source>
        <translation>Desembolso</translation>
    </message>
    <message>
        <source>In one sum</source>
        <translation>En una suma</translation>
    </message>
    <message>
        <source>Without a cost</source>
        <translation>Sin coste anotado</translation>
    </message>
    <message>
        <source>Got back</source>
        <translation>Recuperado</translation>
    </message>
    <message>
        <source>Total</source>
        <translation>Total</translation>
    </message>
    <message>
        <source>{later} after {earlier}, to be judged</source>
        <translation>{later} después de {earlier}, por juzgar</translation>
    </message>
    <message>
        <source>{later} after {earlier}</source>
        <translation>{later} después de {earlier}</translation>
    </message>
    <message>
        <source>1 return was dangerous: {named}.</source>
        <translation>1 vuelta fue peligrosa: {named}.</translation>
    </message>
    <message>
        <source>{returns} returns were dangerous: {named}.</source>
        <translation>{returns} vueltas fueron peligrosas: {named}.</translation>
    </message>
    <message>
        <source>Of {returns_of_the_week} nobody said whether somebody could have been hurt: read what the customer says.</source>
        <translation>De {returns_of_the_week} nadie dijo si alguien pudo haber salido herido: lea lo que dice el cliente.</translation>
    </message>
    <message>
        <source>Of {returns_of_the_week} none was dangerous, as was said of each.</source>
        <translation>De {returns_of_the_week} ninguna fue peligrosa, según se dijo de cada una.</translation>
    </message>
    <message>
        <source>the week&apos;s one return</source>
        <translation>la única vuelta de la semana</translation>
    </message>
    <message>
        <source>the week&apos;s {every} returns</source>
        <translation>las {every} vueltas de la semana</translation>
    </message>
    <message>
        <source>{some} of the week&apos;s {every} returns</source>
        <translation>{some} de las {every} vueltas de la semana</translation>
    </message>
    <message>
        <source>{shop}, week {week}: Monday {monday} to Sunday {sunday}.</source>
        <translation>{shop}, semana {week}: del lunes {monday} al domingo {sunday}.</translation>
    </message>
    <message>
        <source>Made on {day} at {made_at:%H:%M}{anchor}.</source>
        <translation>Hecho el {day} a las {made_at:%H:%M}{anchor}.</translation>
    </message>
    <message>
        <source>This week is still to come, so nothing stands in it yet.</source>
        <translation>Esta semana está aún por venir, así que todavía no hay nada en ella.</translation>
    </message>
    <message>
        <source>The week is not over; it was looked at on {day}.</source>
        <translation>La semana no ha terminado; se miró el {day}.</translation>
    </message>
    <message>
        <source>The shop&apos;s window after a hand-over: {promise}. A job can carry its own.</source>
        <translation>El plazo del taller después de una entrega: {promise}. Un trabajo puede llevar el suyo propio.</translation>
    </message>
    <message>
        <source>What the words mean stands on the last sheet: edition {edition} of the definitions.</source>
        <translation>Lo que significan las palabras está en la última hoja: edición {edition} de las definiciones.</translation>
    </message>
    <message>
        <source>1 return that was only told waits for a judgement too: neither good nor bad. Judge what was told, or have the car in.</source>
        <translation>1 vuelta de la que solo se supo de palabra espera también un juicio: ni buena ni mala. Juzgue lo que se contó, o haga venir el vehículo.</translation>
    </message>
    <message>
        <source>{returns} returns that were only told wait for a judgement too: neither good nor bad. Judge what was told, or have the car in.</source>
        <translation>{returns} vueltas de las que solo se supo de palabra esperan también un juicio: ni buenas ni malas. Juzgue lo que se contó, o haga venir el vehículo.</translation>
    </message>
    <message>
        <source>A comeback is a later visit inside the window that a person judged: same symptom, same system, same part, or from our hands, unless its main cause is not ours. Foretold, other hands, unrelated and cannot tell are listed beside them and not counted.</source>
        <translation>Un retorno es una visita posterior dentro del plazo que una persona juzgó: mismo síntoma, mismo sistema, misma pieza o de nuestras manos, salvo que su causa principal no sea nuestra. Lo anunciado, otras manos, sin relación y no se sabe figuran a su lado y no se cuentan.</translation>
    </message>
    <message>
        <source>{jobs} left in the week, {counted} counted.</source>
        <translation>Salidas de la semana: {jobs}, {counted} contados.</translation>
    </message>
    <message>
        <source>{jobs} left in the week, {counted} counted; not counted: {others}.</source>
        <translation>Salidas de la semana: {jobs}, {counted} contados; no contados: {others}.</translation>
    </message>
    <message>
        <source>1 job was under watch on {day}, counted or not. An open window never counts as a success: its time is not over.</source>
        <translation>1 trabajo estaba en observación el {day}, contado o no. Un plazo abierto nunca cuenta como éxito: su tiempo no ha terminado.</translation>
    </message>
    <message>
        <source>{jobs:,} jobs were under watch on {day}, counted or not. An open window never counts as a success: its time is not over.</source>
        <translation>{jobs:,} trabajos estaban en observación el {day}, contados o no. Un plazo abierto nunca cuenta como éxito: su tiempo no ha terminado.</translation>
    </message>
    <message>
        <source>, and 1 return that was only told</source>
        <translation>, y 1 vuelta de la que solo se supo de palabra</translation>
    </message>
    <message>
        <source>, and {returns} returns that were only told</source>
        <translation>, y {returns} vueltas de las que solo se supo de palabra</translation>
    </message>
    <message>
        <source>1 visit of the week counts as a comeback{and_told}.</source>
        <translation>1 visita de la semana cuenta como retorno{and_told}.</translation>
    </message>
    <message>
        <source>{visits} visits of the week count as comebacks{and_told}.</source>
        <translation>{visits} visitas de la semana cuentan como retorno{and_told}.</translation>
    </message>
    <message>
        <source>1 was judged a comeback after a job that is not counted, and is not among them.</source>
        <translation>1 se juzgó retorno tras un trabajo que no se cuenta, y no está entre ellas.</translation>
    </message>
    <message>
        <source>{visits} were judged comebacks after jobs that are not counted, and are not among them.</source>
        <translation>{visits} se juzgaron retorno tras trabajos que no se cuentan, y no están entre ellas.</translation>
    </message>
    <message>
        <source>1 visit waits for a person to judge, {of_the_week} of the week among them.</source>
        <translation>1 visita espera que una persona la juzgue, {of_the_week} de la semana entre ellas.</translation>
    </message>
    <message>
        <source>{visits} visits wait for a person to judge, {of_the_week} of the week among them.</source>
        <translation>{visits} visitas esperan que una persona las juzgue, {of_the_week} de la semana entre ellas.</translation>
    </message>
    <message>
        <source>1 fault was caught here in jobs of the week, before the car left: no comeback, and a good sign.</source>
        <translation>1 avería se reprodujo aquí en trabajos de la semana, antes de que saliera el vehículo: no es un retorno, y es buena señal.</translation>
    </message>
    <message>
        <source>{faults} faults were caught here in jobs of the week, before the car left: no comeback, and a good sign.</source>
        <translation>{faults} averías se reprodujeron aquí en trabajos de la semana, antes de que saliera el vehículo: no son retornos, y es buena señal.</translation>
    </message>
    <message>
        <source>1 return in this book was judged, or judged anew, after {day} and stands as judged now.</source>
        <translation>1 vuelta de este libro se juzgó, o se volvió a juzgar, después del {day} y figura como se juzga ahora.</translation>
    </message>
    <message>
        <source>{returns} returns in this book were judged, or judged anew, after {day} and stand as judged now.</source>
        <translation>{returns} vueltas de este libro se juzgaron, o se volvieron a juzgar, después del {day} y figuran como se juzgan ahora.</translation>
    </message>
    <message>
        <source>Small numbers: with {jobs} counted, one comeback more or less changes the picture. Read the counts, not a share.</source>
        <translation>Números pequeños: contando {jobs}, un retorno más o menos cambia el cuadro. Lea las cantidades, no una proporción.</translation>
    </message>
    <message>
        <source>1 return goes by days only: the odometer could not say how far.</source>
        <translation>1 vuelta va solo por días: el cuentakilómetros no pudo decir cuánta distancia.</translation>
    </message>
    <message>
        <source>{returns} returns go by days only: the odometer could not say how far.</source>
        <translation>{returns} vueltas van solo por días: el cuentakilómetros no pudo decir cuánta distancia.</translation>
    </message>
    <message>
        <source>{jobs} left unproven.</source>
        <translation>Salidas sin probar: {jobs}.</translation>
    </message>
    <message>
        <source>{jobs} of the year that were inspection or maintenance came back with new trouble from our hands: in no rate, and counted on the sheet Rate, “Kept out”.</source>
        <translation>Con una nueva avería de nuestras manos volvieron del año, siendo inspección o mantenimiento: {jobs}; no entran en ninguna tasa y se cuentan en la hoja Tasa, “Excluidos”.</translation>
    </message>
    <message>
        <source>1 return of the last {weeks} weeks has waited for a judgement for more than {days} days: neither return nor success.</source>
        <translation>1 vuelta de las últimas {weeks} semanas lleva más de {days} días esperando un juicio: ni retorno ni éxito.</translation>
    </message>
    <message>
        <source>{returns} returns of the last {weeks} weeks have waited for a judgement for more than {days} days: neither return nor success.</source>
        <translation>{returns} vueltas de las últimas {weeks} semanas llevan más de {days} días esperando un juicio: ni retorno ni éxito.</translation>
    </message>
    <message>
        <source>What the week&apos;s 1 comeback that was only told cost stands in no sum.</source>
        <translation>Lo que costó el único retorno de la semana del que solo se supo de palabra no está en ninguna suma.</translation>
    </message>
    <message>
        <source>What the week&apos;s {comebacks} comebacks that were only told cost stands in no sum.</source>
        <translation>Lo que costaron los {comebacks} retornos de la semana de los que solo se supo de palabra no está en ninguna suma.</translation>
    </message>
    <message>
        <source>1 visit of the week judged a comeback has no cost written, so the sum of the costs is too low.</source>
        <translation>1 visita de la semana juzgada retorno no tiene coste escrito, así que la suma de los costes es demasiado baja.</translation>
    </message>
    <message>
        <source>{visits} visits of the week judged a comeback have no cost written, so the sum of the costs is too low.</source>
        <translation>{visits} visitas de la semana juzgadas retorno no tienen coste escrito, así que la suma de los costes es demasiado baja.</translation>
    </message>
    <message>
        <source>Arrows</source>
        <translation>Flechas</translation>
    </message>
    <message>
        <source>walk along a chart; Enter shows the jobs there</source>
        <translation>recorren un gráfico; Intro muestra los trabajos de ese punto</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>{title}. Last: {last}</source>
        <translation>{title}. Último: {last}</translation>
    </message>
    <message>
        <source>Left and Right walk along it; Return opens the jobs behind.</source>
        <translation>Izquierda y Derecha lo recorren; Intro abre los trabajos que hay detrás.</translation>
    </message>
    <message>
        <source>nothing known</source>
        <translation>no se sabe nada</translation>
    </message>
    <message>
        <source>{lines}     across: {across}</source>
        <translation>{lines}     en horizontal: {across}</translation>
    </message>
    <message>
        <source>Sheets of the book</source>
        <translation>Hojas del libro</translation>
    </message>
    <message>
        <source>Turn to it once more.</source>
        <translation>Vuelva a abrirla.</translation>
    </message>
    <message>
        <source>The shop&apos;s server can&apos;t be reached: it is read here as soon as that is back.</source>
        <translation>No se puede llegar al servidor del taller: se leerá aquí en cuanto vuelva.</translation>
    </message>
    <message>
        <source>Stop writing</source>
        <translation>Detener la escritura</translation>
    </message>
    <message>
        <source>Write the week</source>
        <translation>Escribir la semana</translation>
    </message>
    <message>
        <source>◀  Week before</source>
        <translation>◀  Semana anterior</translation>
    </message>
    <message>
        <source>Week after  ▶</source>
        <translation>Semana siguiente  ▶</translation>
    </message>
    <message>
        <source>Week, such as 2026-W47</source>
        <translation>Semana, por ejemplo 2026-W47</translation>
    </message>
    <message>
        <source>How far the writing is</source>
        <translation>Cuánto se ha escrito</translation>
    </message>
    <message>
        <source>as a spreadsheet (XLSX)</source>
        <translation>como libro de hojas de cálculo (XLSX)</translation>
    </message>
    <message>
        <source>Reading {week} …</source>
        <translation>Leyendo {week} …</translation>
    </message>
    <message>
        <source>{monday} to {sunday}</source>
        <translation>Del {monday} al {sunday}</translation>
    </message>
    <message>
        <source>Working out “{name}” …</source>
        <translation>Calculando “{name}” …</translation>
    </message>
    <message>
        <source>Working out “{name}”</source>
        <translation>Calculando “{name}”</translation>
    </message>
    <message>
        <source>“{name}” was not worked out. Choose it once more.</source>
        <translation>“{name}” no se calculó. Elíjala otra vez.</translation>
    </message>
    <message>
        <source>{week} was not read. {when_back}</source>
        <translation>{week} no se leyó. {when_back}</translation>
    </message>
    <message>
        <source>As of {time:%H:%M}. {trouble}</source>
        <translation>Leído a las {time:%H:%M}. {trouble}</translation>
    </message>
    <message>
        <source>Workbook (*.xlsx)</source>
        <translation>Libro de cálculo (*.xlsx)</translation>
    </message>
    <message>
        <source>Writing {name} …</source>
        <translation>Escribiendo {name} …</translation>
    </message>
    <message>
        <source>Write {week}</source>
        <translation>Escribir {week}</translation>
    </message>
    <message>
        <source>Wrote {week} to {file}.</source>
        <translation>{week} se escribió en {file}.</translation>
    </message>
    <message>
        <source>Stopped; nothing was written.</source>
        <translation>Detenido; no se escribió nada.</translation>
    </message>
    <message>
        <source>It was not written.</source>
        <translation>No se escribió.</translation>
    </message>
    <message>
        <source>Copy this sheet</source>
        <translation>Copiar esta hoja</translation>
    </message>
    <message>
        <source>Figures</source>
        <translation>Cifras</translation>
    </message>
    <message>
        <source>Show the jobs behind this figure</source>
        <translation>Mostrar los trabajos que hay detrás de esta cifra</translation>
    </message>
    <message>
        <source>Copy the sheet {name}</source>
        <translation>Copiar la hoja {name}</translation>
    </message>
    <message>
        <source>As rows for a spreadsheet or a letter, and as a picture</source>
        <translation>Como filas para una hoja de cálculo o una carta, y como imagen</translation>
    </message>
    <message>
        <source>Copy the picture</source>
        <translation>Copiar la imagen</translation>
    </message>
    <message>
        <source>Copy the picture: {title}</source>
        <translation>Copiar la imagen: {title}</translation>
    </message>
    <message>
        <source>it</source>
        <translation>ello</translation>
    </message>
    <message>
        <source>Open the job {number}</source>
        <translation>Abrir el trabajo {number}</translation>
    </message>
    <message>
        <source>No job stands behind {figure}.</source>
        <translation>No hay ningún trabajo detrás de {figure}.</translation>
    </message>
    <message>
        <source>1 job stands behind {figure}.</source>
        <translation>Hay 1 trabajo detrás de {figure}.</translation>
    </message>
    <message>
        <source>{jobs:,} jobs stand behind {figure}.</source>
        <translation>Hay {jobs:,} trabajos detrás de {figure}.</translation>
    </message>
    <message>
        <source>{jobs:,} jobs stand behind {figure}; the first {shown} are here, all of them in the sheet {sheet}.</source>
        <translation>Hay {jobs:,} trabajos detrás de {figure}; aquí están los primeros {shown}, y todos en la hoja {sheet}.</translation>
    </message>
    <message>
        <source>Nothing to list.</source>
        <translation>Nada que listar.</translation>
    </message>
    <message>
        <source> … (cut here; the whole text of {text:,} characters is in the job)</source>
        <translation> … (cortado aquí; el texto entero, de {text:,} caracteres, está en el trabajo)</translation>
    </message>
    <message>
        <source>Read first</source>
        <translation>Leer primero</translation>
    </message>
    <message>
        <source>Left this week</source>
        <translation>Salidas</translation>
    </message>
    <message>
        <source>Windows</source>
        <translation>Plazos</translation>
    </message>
    <message>
        <source>Rate</source>
        <translation>Tasa</translation>
    </message>
    <message>
        <source>Kinds of part</source>
        <translation>Clases de pieza</translation>
    </message>
    <message>
        <source>Where from</source>
        <translation>Procedencia</translation>
    </message>
    <message>
        <source>Symptoms</source>
        <translation>Síntomas</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personas</translation>
    </message>
    <message>
        <source>Costs</source>
        <translation>Costes</translation>
    </message>
    <message>
        <source>Money owed</source>
        <translation>Dinero debido</translation>
    </message>
    <message>
        <source>Chains</source>
        <translation>Cadenas</translation>
    </message>
    <message>
        <source>Changes</source>
        <translation>Cambios</translation>
    </message>
    <message>
        <source>Raw</source>
        <translation>Datos</translation>
    </message>
    <message>
        <source>Definitions</source>
        <translation>Definiciones</translation>
    </message>
    <message>
        <source>Kept out, Why</source>
        <translation>Excluido por, Por qué</translation>
    </message>
    <message>
        <source>Raw, Rate</source>
        <translation>Datos, Tasa</translation>
    </message>
    <message>
        <source>Why a job is in no rate. Not caught: handed over with nothing found. Nothing put right: no correction is written. No cause written: something was done and no cause named. Inspection only, maintenance: marked so on the job. New trouble from our hands: one of those two that came back inside its window and was judged to be from our hands; it is counted in that row alone, for it is no repair.</source>
        <translation>Por qué un trabajo no está en ninguna tasa. No reproducida: se entregó sin haber hallado nada. No se arregló nada: no hay ninguna corrección escrita. Sin causa escrita: se hizo algo y no se nombró ninguna causa. Solo inspección, mantenimiento: así marcado en el trabajo. Nueva avería de nuestras manos: uno de esos dos que volvió dentro de su plazo y se juzgó de nuestras manos; se cuenta solo en esa fila, porque no es una reparación.</translation>
    </message>
    <message>
        <source>Window used up</source>
        <translation>Plazo consumido</translation>
    </message>
    <message>
        <source>The larger of the shares of days and of distance, each job by its own window; 100% is its end. Where no odometer says how far, days alone.</source>
        <translation>La mayor de las partes de días y de distancia, cada trabajo según su propio plazo; 100% es su final. Donde ningún cuentakilómetros dice cuánta distancia, solo los días.</translation>
    </message>
    <message>
        <source>Call due</source>
        <translation>Llamar desde</translation>
    </message>
    <message>
        <source>From this day on the customer is on the list of whom to ask: a week before the window probably ends, where the car was not seen since; as many days after the hand-over as the house rule has for a fault that came now and then and was not proved; or the day since which the customer tells of the same trouble. Empty where nobody needs to be asked.</source>
        <translation>Desde este día el cliente está en la lista de a quién preguntar: una semana antes de que el plazo probablemente termine, donde no se ha visto el vehículo desde entonces; tantos días después de la entrega como dice la norma de la casa, para una avería que aparecía de vez en cuando y no se probó; o el día desde el que el cliente cuenta el mismo problema. Vacío donde no hace falta preguntar a nadie.</translation>
    </message>
    <message>
        <source>Parts, Compared, Stop and look, Turned, Mirrored, Not fitted</source>
        <translation>Piezas, Comparadas, Pare y mire, Giradas, Reflejadas, Sin montar</translation>
    </message>
    <message>
        <source>Replacements of the year&apos;s jobs, counted or not; those whose readings were judged; those of which something speaks against fitting; those with an angle that is not the old part&apos;s, or that looks like its mirror image; those that did not go into the car.</source>
        <translation>Repuestos de los trabajos del año, contados o no; aquellos cuyas lecturas se juzgaron; aquellos en los que algo desaconseja montarlos; los que tienen un ángulo que no es el de la pieza vieja, o que parecen su imagen en el espejo; los que no llegaron a montarse en el vehículo.</translation>
    </message>
    <message>
        <source>Claims, Answered, Refused, Days to an answer, Paid</source>
        <translation>Reclamaciones, Respondidas, Rechazadas, Días hasta la respuesta, Pagado</translation>
    </message>
    <message>
        <source>Claims written in the year, as they stood on its last day; those paid or refused by then; the average of the days from writing one to its answer; what was paid of them. Where the day of the answer is not known, it is in no average.</source>
        <translation>Reclamaciones escritas en el año, como estaban en su último día; las pagadas o rechazadas hasta entonces; la media de los días desde que se escribe una hasta su respuesta; lo que se pagó de ellas. Donde no se sabe el día de la respuesta, no entra en ninguna media.</translation>
    </message>
    <message>
        <source>First tries, Not caught then, Came back then, First-time fixed</source>
        <translation>Primeros intentos, No reproducida entonces, Volvieron entonces, Reparado a la primera</translation>
    </message>
    <message>
        <source>First tries: jobs whose window is over, settled or not caught, that are no comeback of an earlier job. First-time fixed: the share of them that was put right and stayed away.</source>
        <translation>Primeros intentos: trabajos cuyo plazo ha terminado, cerrados o con la avería no reproducida, que no son un retorno de un trabajo anterior. Reparado a la primera: la parte de ellos que se arregló y no volvió.</translation>
    </message>
    <message>
        <source>Jobs whose car was seen, or its customer asked, after the window&apos;s end, and all was well. This proof comes by itself later and stands in for none of the levels 0 to 4.</source>
        <translation>Trabajos cuyo vehículo se vio, o a cuyo cliente se preguntó, después del final del plazo, y todo estaba bien. Esta prueba llega por sí sola más tarde y no sustituye a ninguno de los niveles 0 a 4.</translation>
    </message>
    <message>
        <source>Search hours on the average, Search hours written, Search hours</source>
        <translation>Horas de búsqueda de media, Horas de búsqueda escritas, Horas de búsqueda</translation>
    </message>
    <message>
        <source>Symptoms, Raw</source>
        <translation>Síntomas, Datos</translation>
    </message>
    <message>
        <source>Of the hours of a job, those that went into finding the cause: their average over the jobs with written search hours, and how many these are. Empty where nobody wrote them.</source>
        <translation>De las horas de un trabajo, las que se emplearon en hallar la causa: su media sobre los trabajos con horas de búsqueda escritas, y cuántos son estos. Vacío donde nadie las escribió.</translation>
    </message>
    <message>
        <source>Part played</source>
        <translation>Tarea</translation>
    </message>
    <message>
        <source>What the person did in the jobs of the row: wrote up, searched, refitted or proved, where the job names them for it. Technician: the jobs in which nobody is named for at least one of searched, refitted and proved; that is their technician&apos;s.</source>
        <translation>Lo que hizo la persona en los trabajos de la fila: tomó nota, buscó, volvió a montar o probó, donde el trabajo la nombra para ello. Mecánico: los trabajos en los que no se nombra a nadie para al menos una de buscar, volver a montar y probar; eso es de su mecánico.</translation>
    </message>
    <message>
        <source>Class</source>
        <translation>Clase</translation>
    </message>
    <message>
        <source>Left this week, Raw</source>
        <translation>Salidas, Datos</translation>
    </message>
    <message>
        <source>The kind of vehicle: the words of its description before a comma and without figures. Empty where more than four are left: they describe one car.</source>
        <translation>La clase de vehículo: las palabras de su descripción antes de una coma y sin cifras. Vacío donde quedan más de cuatro: describen un solo vehículo.</translation>
    </message>
    <message>
        <source>Kind of work</source>
        <translation>Tipo de trabajo</translation>
    </message>
    <message>
        <source>Repair, inspection only or maintenance, as marked on the job.</source>
        <translation>Reparación, solo inspección o mantenimiento, como esté marcado en el trabajo.</translation>
    </message>
    <message>
        <source>Dangerous: a person said whether somebody could have been hurt. Where nobody said, read the words of the customer. Look at the car before it leaves.</source>
        <translation>Peligroso: una persona dijo si alguien pudo haber salido herido. Donde nadie lo dijo, lea las palabras del cliente. Mire el vehículo antes de que salga.</translation>
    </message>
    <message>
        <source>“told” or “on paper” in place of the later job: this shop never saw that return. Its day is the one on which it was told.</source>
        <translation>“contado” o “en papel” en lugar del trabajo posterior: este taller nunca vio esa vuelta. Su día es aquel en que se contó.</translation>
    </message>
    <message>
        <source>Until a person has judged them they are neither comeback nor success.</source>
        <translation>Hasta que una persona las haya juzgado no son ni retorno ni éxito.</translation>
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
        <source>not said</source>
        <translation>no dicho</translation>
    </message>
    <message>
        <source>Came back in the week</source>
        <translation>Volvieron en la semana</translation>
    </message>
    <message>
        <source>No car came back in this week.</source>
        <translation>Ningún vehículo volvió en esta semana.</translation>
    </message>
    <message>
        <source>Dangerous</source>
        <translation>Peligroso</translation>
    </message>
    <message>
        <source>Vehicle</source>
        <translation>Vehículo</translation>
    </message>
    <message>
        <source>Window used</source>
        <translation>Plazo usado</translation>
    </message>
    <message>
        <source>Then</source>
        <translation>Entonces</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Ahora</translation>
    </message>
    <message>
        <source>Reasons</source>
        <translation>Razones</translation>
    </message>
    <message>
        <source>days only</source>
        <translation>solo días</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>Days waiting</source>
        <translation>Días en espera</translation>
    </message>
    <message>
        <source>Still to be judged, from earlier weeks</source>
        <translation>Aún por juzgar, de semanas anteriores</translation>
    </message>
    <message>
        <source>No return of earlier weeks waits for a judgement.</source>
        <translation>Ninguna vuelta de semanas anteriores espera un juicio.</translation>
    </message>
    <message>
        <source>Left on</source>
        <translation>Salió el</translation>
    </message>
    <message>
        <source>Decided by</source>
        <translation>Decidido por</translation>
    </message>
    <message>
        <source>Also</source>
        <translation>También</translation>
    </message>
    <message>
        <source>Who judged, and when</source>
        <translation>Quién juzgó y cuándo</translation>
    </message>
    <message>
        <source>Second look</source>
        <translation>Segunda mirada</translation>
    </message>
    <message>
        <source>Change promised</source>
        <translation>Cambio prometido</translation>
    </message>
    <message>
        <source>Helped by</source>
        <translation>Contribuyeron</translation>
    </message>
    <message>
        <source>How the same visits were judged</source>
        <translation>Cómo se juzgaron las mismas visitas</translation>
    </message>
    <message>
        <source>with its chain</source>
        <translation>con su cadena</translation>
    </message>
    <message>
        <source>nobody yet</source>
        <translation>nadie todavía</translation>
    </message>
    <message>
        <source>confirmed by a second person</source>
        <translation>confirmado por una segunda persona</translation>
    </message>
    <message>
        <source>A chain that began before the year stands here whole; return visits from before the year are in its row, and not in the sum above.</source>
        <translation>Una cadena que empezó antes del año está aquí entera; las visitas de vuelta de antes del año están en su fila, y no en la suma de arriba.</translation>
    </message>
    <message>
        <source>Return visits</source>
        <translation>Visitas de vuelta</translation>
    </message>
    <message>
        <source>Jobs in turn</source>
        <translation>Trabajos en orden</translation>
    </message>
    <message>
        <source>Days in all</source>
        <translation>Días en total</translation>
    </message>
    <message>
        <source>{unit} in all</source>
        <translation>{unit} en total</translation>
    </message>
    <message>
        <source>Causes</source>
        <translation>Causas</translation>
    </message>
    <message>
        <source>Window still open</source>
        <translation>Plazo aún abierto</translation>
    </message>
    <message>
        <source>{first_jobs} came back at least once, in {visits}{only_told}. Rates count first jobs, work counts visits.</source>
        <translation>Volvió al menos una vez: {first_jobs}, en {visits}{only_told}. Las tasas cuentan primeros trabajos, el trabajo cuenta visitas.</translation>
    </message>
    <message>
        <source>first job</source>
        <translation>primer trabajo</translation>
    </message>
    <message>
        <source>first jobs</source>
        <translation>primeros trabajos</translation>
    </message>
    <message>
        <source>return visit</source>
        <translation>visita de vuelta</translation>
    </message>
    <message>
        <source>return visits</source>
        <translation>visitas de vuelta</translation>
    </message>
    <message>
        <source>No car came back in this year.</source>
        <translation>Ningún vehículo volvió en este año.</translation>
    </message>
    <message>
        <source>, {told} of them only told</source>
        <translation>, {told} de ellas solo contadas de palabra</translation>
    </message>
    <message>
        <source>Clearly: luck alone makes such a difference less than once in a hundred times. Everything else may be luck. Two or three more or fewer never tell anything.</source>
        <translation>Claramente: el azar por sí solo produce una diferencia así menos de una vez de cada cien. Todo lo demás puede ser azar. Dos o tres más o menos nunca dicen nada.</translation>
    </message>
    <message>
        <source>After a bad month things get better by themselves, and a car that comes back now may have left before the change. Fewer comebacks since are no proof that it helped.</source>
        <translation>Después de un mes malo las cosas mejoran por sí solas, y un vehículo que vuelve ahora puede haber salido antes del cambio. Menos retornos desde entonces no prueban que haya ayudado.</translation>
    </message>
    <message>
        <source>Last {span_weeks} weeks</source>
        <translation>Últimas {span_weeks} semanas</translation>
    </message>
    <message>
        <source>The {span_weeks} before</source>
        <translation>Las {span_weeks} anteriores</translation>
    </message>
    <message>
        <source>More or fewer</source>
        <translation>Más o menos que antes</translation>
    </message>
    <message>
        <source>Why cars came back, this quarter and the one before</source>
        <translation>Por qué volvieron los vehículos, este trimestre y el anterior</translation>
    </message>
    <message>
        <source>No comeback in these {weeks} weeks.</source>
        <translation>Ningún retorno en estas {weeks} semanas.</translation>
    </message>
    <message>
        <source>{jobs} left in the last {span_weeks} weeks, {before:,} in the {span_weeks} before: with more work come more comebacks.</source>
        <translation>En las últimas {span_weeks} semanas salieron {jobs}; en las {span_weeks} anteriores, {before:,}: con más trabajo vienen más retornos.</translation>
    </message>
    <message>
        <source>counted job</source>
        <translation>trabajo contado</translation>
    </message>
    <message>
        <source>counted jobs</source>
        <translation>trabajos contados</translation>
    </message>
    <message>
        <source>too few to tell</source>
        <translation>demasiado pocos para decirlo</translation>
    </message>
    <message>
        <source>may be luck</source>
        <translation>puede ser azar</translation>
    </message>
    <message>
        <source>clearly more</source>
        <translation>claramente más</translation>
    </message>
    <message>
        <source>clearly fewer</source>
        <translation>claramente menos</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Qué</translation>
    </message>
    <message>
        <source>Comebacks since</source>
        <translation>Retornos desde entonces</translation>
    </message>
    <message>
        <source>Days since</source>
        <translation>Días desde entonces</translation>
    </message>
    <message>
        <source>Comebacks before</source>
        <translation>Retornos antes</translation>
    </message>
    <message>
        <source>Days before</source>
        <translation>Días antes</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Quién</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>Para el</translation>
    </message>
    <message>
        <source>Done on</source>
        <translation>Hecho el</translation>
    </message>
    <message>
        <source>Look again on</source>
        <translation>Volver a mirar el</translation>
    </message>
    <message>
        <source>What was promised</source>
        <translation>Lo que se prometió</translation>
    </message>
    <message>
        <source>No change was promised.</source>
        <translation>No se prometió ningún cambio.</translation>
    </message>
    <message>
        <source>Comebacks since: those of the same cause in all the days since it was done. Before: those of as many days before it, or of fewer where the year of this book does not reach back so far; more or fewer is said for each day.</source>
        <translation>Retornos desde entonces: los de la misma causa en todos los días desde que se hizo. Antes: los de otros tantos días antes, o de menos donde el año de este libro no llega tan atrás; más o menos se dice por día.</translation>
    </message>
    <message>
        <source>not done yet</source>
        <translation>sin hacer todavía</translation>
    </message>
    <message>
        <source>done before the year of this book</source>
        <translation>hecho antes del año de este libro</translation>
    </message>
    <message>
        <source>The first three added up, less what was got back; nothing is to be added to it.</source>
        <translation>Los tres primeros sumados, menos lo que se recuperó; no hay que sumarle nada.</translation>
    </message>
    <message>
        <source>Cost of the year&apos;s comebacks</source>
        <translation>Coste de los retornos del año</translation>
    </message>
    <message>
        <source>Cost of the year&apos;s comebacks by cause</source>
        <translation>Coste de los retornos del año por causa</translation>
    </message>
    <message>
        <source>Cost in {currency}</source>
        <translation>Coste en {currency}</translation>
    </message>
    <message>
        <source>Unbilled hours at what an hour costs the shop.</source>
        <translation>Horas no facturadas a lo que una hora cuesta al taller.</translation>
    </message>
    <message>
        <source>Parts, work given out, towing, loan car, goodwill.</source>
        <translation>Piezas, trabajo encargado fuera, grúa, vehículo de cortesía, atención comercial.</translation>
    </message>
    <message>
        <source>Written as one sum: nobody has split it.</source>
        <translation>Escrito como una sola suma: nadie la ha repartido.</translation>
    </message>
    <message>
        <source>What suppliers paid.</source>
        <translation>Lo que pagaron los proveedores.</translation>
    </message>
    <message>
        <source>1 comeback was only told: what that cost the shop is written nowhere here and stands in no sum.</source>
        <translation>De 1 retorno solo se supo de palabra: lo que eso costó al taller no está escrito aquí en ninguna parte y no está en ninguna suma.</translation>
    </message>
    <message>
        <source>{comebacks:,} comebacks were only told: what that cost the shop is written nowhere here and stands in no sum.</source>
        <translation>De {comebacks:,} retornos solo se supo de palabra: lo que eso costó al taller no está escrito aquí en ninguna parte y no está en ninguna suma.</translation>
    </message>
    <message>
        <source>1 comeback has no cost written, so the sums are too low.</source>
        <translation>1 retorno no tiene coste escrito, así que las sumas son demasiado bajas.</translation>
    </message>
    <message>
        <source>{comebacks:,} comebacks have no cost written, so the sums are too low.</source>
        <translation>{comebacks:,} retornos no tienen coste escrito, así que las sumas son demasiado bajas.</translation>
    </message>
    <message>
        <source>Work: the unbilled hours at what an hour costs the shop, not what it would have sold for. Cash out: parts, work given out, towing, loan car, goodwill. Total: work and cash out and what stands in one sum, less what was got back. Lost customers are not guessed at.</source>
        <translation>Mano de obra: las horas no facturadas a lo que una hora cuesta al taller, no a lo que se habrían vendido. Desembolso: piezas, trabajo encargado fuera, grúa, vehículo de cortesía, atención comercial. Total: mano de obra y desembolso y lo que está en una suma, menos lo que se recuperó. Los clientes perdidos no se estiman.</translation>
    </message>
    <message>
        <source>Each comeback</source>
        <translation>Cada retorno</translation>
    </message>
    <message>
        <source>No cost of a comeback was written.</source>
        <translation>No se escribió ningún coste de un retorno.</translation>
    </message>
    <message>
        <source>after a job in which nothing was put right</source>
        <translation>después de un trabajo en el que no se arregló nada</translation>
    </message>
    <message>
        <source>that no rate counts: not judged, judged no comeback, not ours, or after the window</source>
        <translation>que ninguna tasa cuenta: sin juzgar, juzgadas como no retorno, no nuestras, o después del plazo</translation>
    </message>
    <message>
        <source>Not among these: {visits} {which}; {currency}{cost:,.2f} were written there.</source>
        <translation>No están entre estos: {visits} {which}; allí se escribieron {currency}{cost:,.2f}.</translation>
    </message>
    <message>
        <source>By cause</source>
        <translation>Por causa</translation>
    </message>
    <message>
        <source>52 weeks to then</source>
        <translation>52 semanas hasta entonces</translation>
    </message>
    <message>
        <source>By week in which the car came back</source>
        <translation>Por semana en que volvió el vehículo</translation>
    </message>
    <message>
        <source>Weeks without a comeback are not listed, but for the last. 52 weeks to then: what the comebacks cost in the 52 weeks that end with that one.</source>
        <translation>Las semanas sin retorno no figuran, salvo la última. 52 semanas hasta entonces: lo que costaron los retornos en las 52 semanas que terminan con esa.</translation>
    </message>
    <message>
        <source>The year before, for the sums of 52 weeks alone</source>
        <translation>El año anterior, solo para las sumas de 52 semanas</translation>
    </message>
    <message>
        <source>None of these is in any other figure of this book.</source>
        <translation>Ninguno de estos está en otra cifra de este libro.</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>práctica común, sin fuente</translation>
    </message>
    <message>
        <source>Work, Cash out, In one sum, Got back, Total, Cost, Amount</source>
        <translation>Mano de obra, Desembolso, En una suma, Recuperado, Total, Coste, Importe</translation>
    </message>
    <message>
        <source>Costs, Came back, Money owed</source>
        <translation>Costes, Volvieron, Dinero debido</translation>
    </message>
    <message>
        <source>Work: unbilled hours at what an hour costs the shop. Cash out: parts, work given out, towing, loan car, goodwill. In one sum: nobody has split it. Got back: what suppliers paid. Total and Cost: the first three less what was got back. Amount: what is still owed. What was written for one visit with several earlier jobs is added up; the very same amounts written twice count once. An hour is taken at what it cost when the return was judged, as the history of the house rule has it.</source>
        <translation>Mano de obra: horas no facturadas a lo que una hora cuesta al taller. Desembolso: piezas, trabajo encargado fuera, grúa, vehículo de cortesía, atención comercial. En una suma: nadie la ha repartido. Recuperado: lo que pagaron los proveedores. Total y Coste: los tres primeros menos lo recuperado. Importe: lo que aún se debe. Lo escrito para una visita con varios trabajos anteriores se suma; los mismos importes exactos escritos dos veces cuentan una vez. Una hora se toma a lo que costaba cuando se juzgó la vuelta, según el historial de la norma de la casa.</translation>
    </message>
    <message>
        <source>What the comebacks cost in the 52 weeks that end with this one; those from before the book&apos;s own year stand in the last table of the sheet.</source>
        <translation>Lo que costaron los retornos en las 52 semanas que terminan con esta; los de antes del año propio del libro están en la última tabla de la hoja.</translation>
    </message>
    <message>
        <source>Comebacks of which no cost is written, with whichever earlier job: the sums beside them are too low by those, and a nought may mean that nobody wrote one.</source>
        <translation>Retornos de los que no hay ningún coste anotado, con ningún trabajo anterior: a las sumas de al lado les faltan esos, y un cero puede significar que nadie lo anotó.</translation>
    </message>
    <message>
        <source>Return visits, Days in all, Miles in all, Kilometres in all</source>
        <translation>Visitas de vuelta, Días en total, Millas en total, Kilómetros en total</translation>
    </message>
    <message>
        <source>How often the car came back, and how far from the first hand-over to the last return.</source>
        <translation>Cuántas veces volvió el vehículo, y cuánto hay de la primera entrega a la última vuelta.</translation>
    </message>
    <message>
        <source>Last {span_weeks} weeks, The {span_weeks} before</source>
        <translation>Últimas {span_weeks} semanas, Las {span_weeks} anteriores</translation>
    </message>
    <message>
        <source>Comebacks by main cause, in the quarter that ends with this week and in the one before.</source>
        <translation>Retornos por causa principal, en el trimestre que termina con esta semana y en el anterior.</translation>
    </message>
    <message>
        <source>Comebacks since, Days since, Comebacks before, Days before</source>
        <translation>Retornos desde entonces, Días desde entonces, Retornos antes, Días antes</translation>
    </message>
    <message>
        <source>Comebacks of the same main cause since the day on which the change was done, and before it; and how many days these are. The days before can be fewer: the book reads one year.</source>
        <translation>Retornos de la misma causa principal desde el día en que se hizo el cambio, y antes de él; y cuántos días son. Los días de antes pueden ser menos: el libro lee un año.</translation>
    </message>
    <message>
        <source>Clearly: luck alone makes such a difference less than once in a hundred times.</source>
        <translation>Claramente: el azar por sí solo produce una diferencia así menos de una vez de cada cien.</translation>
    </message>
    <message>
        <source>Days to the return, Miles to the return, Kilometres to the return, Miles known, Kilometres known, Days to the waiting visit, Days since</source>
        <translation>Días hasta la vuelta, Millas hasta la vuelta, Kilómetros hasta la vuelta, Millas según lectura, Kilómetros según lectura, Días hasta la visita en espera, Días desde entonces</translation>
    </message>
    <message>
        <source>From the hand-over to the first comeback, to the last reading that can be trusted, to the first visit that waits or the same trouble told, and to the last day that the sheet looks at.</source>
        <translation>Desde la entrega hasta el primer retorno, hasta la última lectura fiable, hasta la primera visita que espera o el mismo problema contado, y hasta el último día que mira la hoja.</translation>
    </message>
    <message>
        <source>In window, Weeks ago, Proof</source>
        <translation>En plazo, Semanas atrás, Prueba</translation>
    </message>
    <message>
        <source>In window: 1 where the visit lay in the earlier job&apos;s window. Weeks ago: 0 for this week. Proof: 0 unproven, 1 bay, 2 road, 3 full trip, 4 same conditions.</source>
        <translation>En plazo: 1 donde la visita cayó en el plazo del trabajo anterior. Semanas atrás: 0 para esta semana. Prueba: 0 sin probar, 1 en el taller, 2 carretera, 3 recorrido completo, 4 mismas condiciones.</translation>
    </message>
    <message>
        <source>everywhere</source>
        <translation>en todas</translation>
    </message>
    <message>
        <source>Monday to Sunday.</source>
        <translation>De lunes a domingo.</translation>
    </message>
    <message>
        <source>Word</source>
        <translation>Palabra</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Dónde</translation>
    </message>
    <message>
        <source>What it means</source>
        <translation>Qué significa</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Fuente</translation>
    </message>
    <message>
        <source>Words and figures</source>
        <translation>Palabras y cifras</translation>
    </message>
    <message>
        <source>What a person may decide about a return</source>
        <translation>Lo que una persona puede decidir sobre una vuelta</translation>
    </message>
    <message>
        <source>not ours: leaves the rate</source>
        <translation>no es nuestra: sale de la tasa</translation>
    </message>
    <message>
        <source>Why it came back</source>
        <translation>Por qué volvió</translation>
    </message>
    <message>
        <source>Job, Jobs</source>
        <translation>Trabajo, Trabajos</translation>
    </message>
    <message>
        <source>One concern of a visit with one cause, one correction and one hand-over.</source>
        <translation>Una queja de una visita con una causa, una corrección y una entrega.</translation>
    </message>
    <message>
        <source>A repair with a cause and a correction. “Not caught”, inspections and maintenance are not counted, and enter no rate.</source>
        <translation>Una reparación con una causa y una corrección. Las de avería “no reproducida”, las inspecciones y el mantenimiento no se cuentan, y no entran en ninguna tasa.</translation>
    </message>
    <message>
        <source>Window, Window ends, Window days, Window miles, Window kilometres</source>
        <translation>Plazo, Fin del plazo, Días de plazo, Plazo en millas, Plazo en kilómetros</translation>
    </message>
    <message>
        <source>The shop&apos;s promise after the hand-over. It starts when the car leaves and is still open on its last day and at its last mile. A job keeps the window it was handed over with. Where both limits are written, “or” says that the first of them ends it, “and” that both must; 0 is no such limit. Calendar months are counted out in days when the car leaves: they end on the same date, or on the last day of a month that has no such date.</source>
        <translation>La promesa del taller después de la entrega. Empieza cuando sale el vehículo y sigue abierta en su último día y en su última milla. Un trabajo conserva el plazo con que se entregó. Donde están escritos ambos límites, “o” dice que lo termina el primero de ellos, “y” que deben cumplirse los dos; 0 es que no hay tal límite. Los meses naturales se convierten en días cuando sale el vehículo: terminan en la misma fecha, o en el último día de un mes que no la tiene.</translation>
    </message>
    <message>
        <source>Rate, tables of rates, Raw</source>
        <translation>Tasa, tablas de tasas, Datos</translation>
    </message>
    <message>
        <source>A job whose window is over by its days, and that came back or was quiet in it: no visit that waits for a judgement or that nobody can tell, no cause that is not ours, and the car in sight. A window that distance has ended is settled when its days are over too: a quick comeback then enters together with its quiet neighbours. Where both limits must end it, or it has none in time, it is over once an odometer reading says so. Open windows are never counted as successes.</source>
        <translation>Un trabajo cuyo plazo ha terminado por sus días, y que volvió o estuvo tranquilo en él: sin visita que espere un juicio o de la que nadie sepa, sin causa que no sea nuestra, y con el vehículo a la vista. Un plazo que terminó por distancia se cierra también cuando pasan sus días: un retorno rápido entra entonces junto con sus vecinos tranquilos. Donde ambos límites deben terminarlo, o no tiene ninguno en tiempo, termina en cuanto lo dice una lectura del cuentakilómetros. Los plazos abiertos nunca se cuentan como éxitos.</translation>
    </message>
    <message>
        <source>tables of rates</source>
        <translation>tablas de tasas</translation>
    </message>
    <message>
        <source>The other jobs of the row: a window that is still open, a visit that waits, a car that is out of sight, or one that came back for a reason that is not ours or that nobody can tell. They are no successes and enter no rate.</source>
        <translation>Los demás trabajos de la fila: un plazo aún abierto, una visita que espera, un vehículo fuera de la vista, o uno que volvió por una razón que no es nuestra o de la que nadie sabe. No son éxitos y no entran en ninguna tasa.</translation>
    </message>
    <message>
        <source>Windows, Rate, Read first</source>
        <translation>Plazos, Tasa, Leer primero</translation>
    </message>
    <message>
        <source>A settled job that did not come back, and whose car nobody saw, read or asked about after its window. The rate takes it for well; Read first says beside it what those show of which something was heard.</source>
        <translation>Un trabajo cerrado que no volvió, y cuyo vehículo nadie vio, leyó ni preguntó por él después de su plazo. La tasa lo toma por bueno; Leer primero dice al lado lo que muestran aquellos de los que se supo algo.</translation>
    </message>
    <message>
        <source>Not ours, cannot tell</source>
        <translation>No es nuestro, no se sabe</translation>
    </message>
    <message>
        <source>Windows, Rate, tables of rates</source>
        <translation>Plazos, Tasa, tablas de tasas</translation>
    </message>
    <message>
        <source>A visit inside the window whose main cause is not ours, whatever it was judged, and no comeback: the job leaves the rate, above and below the line. One judged “cannot tell” leaves it too: neither return nor success. “Cannot tell” as the cause of a comeback stays in.</source>
        <translation>Una visita dentro del plazo cuya causa principal no es nuestra, como quiera que se juzgara, y ningún retorno: el trabajo sale de la tasa, por encima y por debajo de la raya. Uno juzgado “no se sabe” también sale: ni vuelta ni éxito. “No se sabe” como causa de un retorno se queda.</translation>
    </message>
    <message>
        <source>Waiting, Waits</source>
        <translation>En espera, Espera</translation>
    </message>
    <message>
        <source>A visit inside the window that nobody has judged, or a job with such a visit, or whose customer tells of the same trouble, and no comeback: neither good nor bad.</source>
        <translation>Una visita dentro del plazo que nadie ha juzgado, o un trabajo con una visita así, o cuyo cliente cuenta el mismo problema, y ningún retorno: ni bueno ni malo.</translation>
    </message>
    <message>
        <source>Lost sight</source>
        <translation>Perdido de vista</translation>
    </message>
    <message>
        <source>Windows, tables of rates</source>
        <translation>Plazos, tablas de tasas</translation>
    </message>
    <message>
        <source>The car was sold or is gone, so that nobody can say any more how it is: neither a success nor a comeback, unless it came back before that day.</source>
        <translation>El vehículo se vendió o ya no está, de modo que nadie puede decir más cómo va: ni éxito ni retorno, salvo que volviera antes de ese día.</translation>
    </message>
    <message>
        <source>Comebacks, Comeback, Came back, Counts, Counts as</source>
        <translation>Retornos, Retorno, Volvieron, Cuenta, Cuenta como</translation>
    </message>
    <message>
        <source>A later visit inside the window that a person judged the same symptom, the same system, the same part or from our hands, unless its main cause is not ours. A visit counts once, however many earlier jobs it meets; a job that came back twice counts once in a rate.</source>
        <translation>Una visita posterior dentro del plazo que una persona juzgó el mismo síntoma, el mismo sistema, la misma pieza o de nuestras manos, salvo que su causa principal no sea nuestra. Una visita cuenta una vez, por muchos trabajos anteriores que encuentre; un trabajo que volvió dos veces cuenta una vez en una tasa.</translation>
    </message>
    <message>
        <source>Days, Miles, Kilometres</source>
        <translation>Días, Millas, Kilómetros</translation>
    </message>
    <message>
        <source>Came back, Raw</source>
        <translation>Volvieron, Datos</translation>
    </message>
    <message>
        <source>From the hand-over of the earlier job to the day on which the later one was written up, or the return was told; 0 where it came back on that very day. Jobs of one car that came on one day are one visit, unless the clock knows that the car had left before it came again. “Days only”: the odometer cannot say how far.</source>
        <translation>Desde la entrega del trabajo anterior hasta el día en que se tomó nota del posterior, o se contó la vuelta; 0 si volvió ese mismo día. Los trabajos de un vehículo que llegaron el mismo día son una sola visita, salvo que el reloj sepa que el vehículo se había ido antes de volver. “Solo días”: el cuentakilómetros no puede decir cuánta distancia.</translation>
    </message>
    <message>
        <source>Days from the visit, or the telling, to the last day that the sheet looks at.</source>
        <translation>Días desde la visita, o desde que se contó, hasta el último día que mira la hoja.</translation>
    </message>
    <message>
        <source>Window used, Decided by</source>
        <translation>Plazo usado, Decidido por</translation>
    </message>
    <message>
        <source>Came back, Windows</source>
        <translation>Volvieron, Plazos</translation>
    </message>
    <message>
        <source>The larger of the shares of days and of distance that are used up (the smaller where both must end), and which of them it is; beyond 100% the window was over.</source>
        <translation>La mayor de las partes usadas de días y de distancia (la menor donde deben terminar ambas), y cuál de ellas es; más allá del 100% el plazo había terminado.</translation>
    </message>
    <message>
        <source>told, on paper</source>
        <translation>contado, en papel</translation>
    </message>
    <message>
        <source>Came back, Chains, Raw</source>
        <translation>Volvieron, Cadenas, Datos</translation>
    </message>
    <message>
        <source>In place of the later job: this shop never saw that return. Its customer told of the same trouble on that day, or another shop&apos;s bill was seen. Told again it is the same, until the car was here, the customer said something else, or it was judged no comeback. It waits until a person has judged it, and then counts like a visit; a comeback of the car itself takes its place, a visit for something else does not. No cost is written.</source>
        <translation>En lugar del trabajo posterior: este taller nunca vio esa vuelta. Su cliente contó ese día el mismo problema, o se vio la factura de otro taller. Contado otra vez es lo mismo, hasta que el vehículo estuvo aquí, el cliente dijo otra cosa, o se juzgó que no era retorno. Espera hasta que una persona lo ha juzgado, y entonces cuenta como una visita; un retorno del propio vehículo ocupa su lugar, una visita por otra cosa no. No se escribe ningún coste.</translation>
    </message>
    <message>
        <source>Whether somebody could have been hurt by what came back, as a person said: yes, no, or not said. It says nothing of how the car is now.</source>
        <translation>Si alguien pudo haber salido herido por lo que volvió, según dijo una persona: sí, no, o no dicho. No dice nada de cómo está el vehículo ahora.</translation>
    </message>
    <message>
        <source>Why the program asked whether it is a return. It never decides: a person does.</source>
        <translation>Por qué el programa preguntó si es una vuelta. Nunca decide: lo hace una persona.</translation>
    </message>
    <message>
        <source>The job on which a chain of comebacks hangs; a return of a return hangs on the same.</source>
        <translation>El trabajo del que cuelga una cadena de retornos; la vuelta de una vuelta cuelga del mismo.</translation>
    </message>
    <message>
        <source>Also, Helped by</source>
        <translation>También, Contribuyeron</translation>
    </message>
    <message>
        <source>Further kinds of return that it is as well, and causes beside the main one. They are not counted a second time.</source>
        <translation>Otras clases de vuelta que también es, y causas al lado de la principal. No se cuentan una segunda vez.</translation>
    </message>
    <message>
        <source>Days so far, Days left, Miles left (last read), Kilometres left (last read), Read on</source>
        <translation>Días hasta hoy, Días restantes, Millas restantes (última lectura), Kilómetros restantes (última lectura), Leído el</translation>
    </message>
    <message>
        <source>Days since the hand-over, and what is left of both limits: days to the last day that the sheet looks at, distance as last read: by the last reading of the odometer since the car left, which was on the day under Read on. “May have ended”: the expected end is gone by, and nobody knows.</source>
        <translation>Días desde la entrega, y lo que queda de ambos límites: los días hasta el último día que mira la hoja, la distancia según la última lectura: por la última lectura del cuentakilómetros desde que salió el vehículo, que fue el día que está bajo Leído el. “Quizá terminó”: el fin esperado ya pasó, y nadie sabe.</translation>
    </message>
    <message>
        <source>Expected end, Ends by</source>
        <translation>Fin esperado, Termina por</translation>
    </message>
    <message>
        <source>The day on which the window will probably end, and by which limit, reckoned from how much the car is driven by its own readings, drawn towards the shop&apos;s other cars.</source>
        <translation>El día en que el plazo probablemente terminará, y por cuál límite, calculado según cuánto se conduce el vehículo por sus propias lecturas, acercado a los demás vehículos del taller.</translation>
    </message>
    <message>
        <source>Last known well</source>
        <translation>Último día bien</translation>
    </message>
    <message>
        <source>The last day on which the car was here or its customer said that all is well, before any visit that is a comeback or waits.</source>
        <translation>El último día en que el vehículo estuvo aquí o su cliente dijo que todo iba bien, antes de cualquier visita que sea un retorno o espere.</translation>
    </message>
    <message>
        <source>Hours, Unbilled hours, Price</source>
        <translation>Horas, Horas no facturadas, Precio</translation>
    </message>
    <message>
        <source>As written on the jobs; an empty cell is not a nought, and is not in the sum.</source>
        <translation>Como está escrito en los trabajos; una celda vacía no es un cero, y no está en la suma.</translation>
    </message>
    <message>
        <source>Rate by month, tables of rates</source>
        <translation>Tasa por mes, tablas de tasas</translation>
    </message>
    <message>
        <source>Comebacks of settled jobs, divided by settled jobs.</source>
        <translation>Retornos de trabajos cerrados, divididos entre los trabajos cerrados.</translation>
    </message>
    <message>
        <source>Low, High</source>
        <translation>Mínimo, Máximo</translation>
    </message>
    <message>
        <source>Rate, tables of rates</source>
        <translation>Tasa, tablas de tasas</translation>
    </message>
    <message>
        <source>The bounds that hold the true figure 19 times of 20.</source>
        <translation>Los límites entre los que está la cifra verdadera 19 veces de 20.</translation>
    </message>
    <message>
        <source>E. B. Wilson, J. Am. Stat. Assoc. 22 (1927) 209-212; on Rate&apos;s curves the log-log bounds: J. D. Kalbfleisch and R. L. Prentice, The Statistical Analysis of Failure Time Data (1980) (from memory)</source>
        <translation>E. B. Wilson, J. Am. Stat. Assoc. 22 (1927) 209-212; en las curvas de Tasa los límites log-log: J. D. Kalbfleisch y R. L. Prentice, The Statistical Analysis of Failure Time Data (1980) (de memoria)</translation>
    </message>
    <message>
        <source>Too few to tell</source>
        <translation>Demasiado pocos para decirlo</translation>
    </message>
    <message>
        <source>Fewer than {few_jobs} settled jobs, or bounds more than {widest_interval:.0f} points apart: no rate, no bounds and no likely rate are printed, and nothing is ranked. “Anything from … to” is all that is known.</source>
        <translation>Menos de {few_jobs} trabajos cerrados, o límites separados por más de {widest_interval:.0f} puntos: no se imprime ni tasa, ni límites, ni tasa probable, y no se ordena nada. “Cualquier cosa de … a” es todo lo que se sabe.</translation>
    </message>
    <message>
        <source>By the curve, Still watched</source>
        <translation>Según la curva, Aún observados</translation>
    </message>
    <message>
        <source>The share that has come back by a number of days, with open windows as far as they were watched; and the jobs that were still watched just before.</source>
        <translation>La parte que ha vuelto a un número de días, con los plazos abiertos hasta donde se observaron; y los trabajos que aún se observaban justo antes.</translation>
    </message>
    <message>
        <source>Curve while known well</source>
        <translation>Curva mientras consta bien</translation>
    </message>
    <message>
        <source>By the curve, but a job of which nothing was heard counts only up to the last day on which its car was known to be well. The truth lies between the two.</source>
        <translation>Según la curva, pero un trabajo del que no hubo noticias cuenta solo hasta el último día en que constaba que su vehículo iba bien. La verdad está entre las dos.</translation>
    </message>
    <message>
        <source>How many returns 100 jobs have had by a number of days, the second and third of one job too (mean cumulative function).</source>
        <translation>Cuántas vueltas han tenido 100 trabajos a un número de días, también la segunda y la tercera de un mismo trabajo (función media acumulada).</translation>
    </message>
    <message>
        <source>Handed over, Under watch</source>
        <translation>Entregado, En observación</translation>
    </message>
    <message>
        <source>Rate, by week</source>
        <translation>Tasa, por semana</translation>
    </message>
    <message>
        <source>Jobs that left in the week; counted jobs whose window was not over by its days when the week began. </source>
        <translation>Trabajos que salieron en la semana; trabajos contados cuyo plazo no había terminado por sus días cuando empezó la semana. </translation>
    </message>
    <message>
        <source>The week&apos;s comebacks for each job under watch: small, because most cars come in no given week, and not the rate of the year.</source>
        <translation>Los retornos de la semana por cada trabajo en observación: pocos, porque la mayoría de los vehículos no viene en una semana dada, y no es la tasa del año.</translation>
    </message>
    <message>
        <source>Low limit, High limit</source>
        <translation>Límite mínimo, Límite máximo</translation>
    </message>
    <message>
        <source>What luck makes of as many jobs as were under watch: passed on either side less than once in {weeks:.0f} weeks. Exact limits of a Poisson count.</source>
        <translation>Lo que el azar produce de tantos trabajos como había en observación: se rebasa por cada lado menos de una vez cada {weeks:.0f} semanas. Límites exactos de un recuento de Poisson.</translation>
    </message>
    <message>
        <source>D. C. Montgomery, Introduction to Statistical Quality Control, ch. 7 (from memory)</source>
        <translation>D. C. Montgomery, Introduction to Statistical Quality Control, cap. 7 (de memoria)</translation>
    </message>
    <message>
        <source>Slow rise</source>
        <translation>Subida lenta</translation>
    </message>
    <message>
        <source>The evidence that comebacks have become twice as many since some earlier week: 0 is none. Where it is enough, Read first says so.</source>
        <translation>El indicio de que los retornos se han duplicado desde alguna semana anterior: 0 es ninguno. Donde basta, Leer primero lo dice.</translation>
    </message>
    <message>
        <source>Expected, Above expected</source>
        <translation>Esperados, Sobre lo esperado</translation>
    </message>
    <message>
        <source>tables of rates, People</source>
        <translation>tablas de tasas, Personas</translation>
    </message>
    <message>
        <source>Expected: the comebacks that the same work has outside the row (indirect standardisation over part kinds and systems, but for what the rows are made by). Where fewer than {few_jobs} others are alike, those few count together with the other work of the same system, which weighs as {wider_worth:.0f} jobs at most and less, the more the kinds of work differ; where the system is too little, with all other work. Beneath each table stands how many jobs are held against which; the range of luck is wider there. Empty where half of the row&apos;s jobs or more have fewer than {like_jobs} others of their kind or system: hard work is not held against easy work; or where fewer than {few_jobs} jobs are outside the row. Above expected: the row&apos;s comebacks less the expected; below 0 is fewer.</source>
        <translation>Esperados: los retornos que tiene el mismo trabajo fuera de la fila (estandarización indirecta sobre clases de pieza y sistemas, salvo aquello por lo que se forman las filas). Donde menos de {few_jobs} de los otros son iguales, esos pocos cuentan junto con el otro trabajo del mismo sistema, que pesa como {wider_worth:.0f} trabajos a lo sumo, y menos cuanto más difieren los tipos de trabajo; donde el sistema es demasiado poco, con todo el otro trabajo. Bajo cada tabla está cuántos trabajos se comparan con qué; allí el margen del azar es más ancho. Vacío donde la mitad o más de los trabajos de la fila tienen menos de {like_jobs} de los otros de su clase o sistema: el trabajo difícil no se mide con el fácil; o donde hay menos de {few_jobs} trabajos fuera de la fila. Sobre lo esperado: los retornos de la fila menos los esperados; por debajo de 0 son menos.</translation>
    </message>
    <message>
        <source>N. E. Breslow and N. E. Day, Statistical Methods in Cancer Research II (1987), ch. 2; C. N. Morris, J. Am. Stat. Assoc. 78 (1983) 47-55 (from memory)</source>
        <translation>N. E. Breslow y N. E. Day, Statistical Methods in Cancer Research II (1987), cap. 2; C. N. Morris, J. Am. Stat. Assoc. 78 (1983) 47-55 (de memoria)</translation>
    </message>
    <message>
        <source>Fewest by luck, Most by luck</source>
        <translation>Mínimo por azar, Máximo por azar</translation>
    </message>
    <message>
        <source>The fewest and most comebacks that luck alone makes of what is expected, 19 times of 20: the limits of a funnel for whole jobs, wider where few others say what to expect.</source>
        <translation>El menor y el mayor número de retornos que el azar por sí solo produce de lo que se espera, 19 veces de 20: los límites de un embudo para trabajos enteros, más anchos donde pocos otros dicen qué esperar.</translation>
    </message>
    <message>
        <source>Likely rate</source>
        <translation>Tasa probable</translation>
    </message>
    <message>
        <source>The rate as it is believed once all rows are weighed; a row of few jobs is drawn towards the others (beta-binomial).</source>
        <translation>La tasa como se cree una vez pesadas todas las filas; una fila de pocos trabajos se acerca a las demás (beta-binomial).</translation>
    </message>
    <message>
        <source>Read it as</source>
        <extracomment>The rate where it can be told, as a formula over its row; too few jobs have no bounds either. The columns that every such table has after its first ones.</extracomment>
        <translation>Cómo leerlo</translation>
    </message>
    <message>
        <source>What the figures of the row allow to be said. More or fewer than luck explains: further from the expected than luck makes, though several rows are compared.</source>
        <translation>Lo que las cifras de la fila permiten decir. Más o menos de lo que explica el azar: más lejos de lo esperado de lo que llega el azar, aunque se comparen varias filas.</translation>
    </message>
    <message>
        <source>Came back as</source>
        <translation>Volvieron como</translation>
    </message>
    <message>
        <source>As what the comebacks of the row were judged; one may be several. “Too early for a rate”: jobs that came back already, while their windows are still open.</source>
        <translation>Como qué se juzgaron los retornos de la fila; uno puede ser varias cosas. “Demasiado pronto para una tasa”: trabajos que ya volvieron, con su plazo aún abierto.</translation>
    </message>
    <message>
        <source>Died early, Wrong part</source>
        <translation>Falló pronto, Pieza equivocada</translation>
    </message>
    <message>
        <source>Comebacks whose main cause is “part died early” or “wrong part fitted”, of windows that are open too.</source>
        <translation>Retornos cuya causa principal es “la pieza falló pronto” o “pieza equivocada montada”, también de plazos abiertos.</translation>
    </message>
    <message>
        <source>Not caught, Hours on the average, What fixed it</source>
        <translation>No reproducida, Horas de media, Qué lo arregló</translation>
    </message>
    <message>
        <source>Repairs in which nothing was found; the hours of all jobs with written hours; the corrections of settled jobs that did not come back, the commonest first.</source>
        <translation>Reparaciones en las que no se halló nada; las horas de todos los trabajos con horas escritas; las correcciones de trabajos cerrados que no volvieron, las más frecuentes primero.</translation>
    </message>
    <message>
        <source>Caught here</source>
        <extracomment>The level that nobody records: &quot;5 time&quot;.</extracomment>
        <translation>Reproducida aquí</translation>
    </message>
    <message>
        <source>How often the fault showed itself again before the car left: never a return, a good sign.</source>
        <translation>Cuántas veces la avería se mostró otra vez antes de que saliera el vehículo: nunca es una vuelta, es buena señal.</translation>
    </message>
    <message>
        <source>Intermittent</source>
        <translation>Intermitente</translation>
    </message>
    <message>
        <source>People, Raw</source>
        <translation>Personas, Datos</translation>
    </message>
    <message>
        <source>Of the settled jobs, those whose fault did not come every time: the hard ones.</source>
        <translation>De los trabajos cerrados, aquellos cuya avería no aparecía todas las veces: los difíciles.</translation>
    </message>
    <message>
        <source>This is no experiment: nobody drew lots which parts to compare. Who compares may also work more carefully otherwise, hard jobs may be compared more often, and where no part was fitted nothing can be compared and little can come back. It shows what to look at, not what to do.</source>
        <translation>Esto no es un experimento: nadie echó a suertes qué piezas comparar. Quien compara quizá trabaja también con más cuidado en lo demás, quizá se comparan más los trabajos difíciles, y donde no se montó ninguna pieza no hay nada que comparar y poco puede volver. Muestra dónde mirar, no qué hacer.</translation>
    </message>
    <message>
        <source>Too few to tell: {jobs} with a comparison that fits and {settled:,} without one; {few_jobs} of each are the least.</source>
        <translation>Demasiado pocos para decirlo: {jobs} con una comparación que sirve y {settled:,} sin ninguna; {few_jobs} de cada uno son lo mínimo.</translation>
    </message>
    <message>
        <source>settled job</source>
        <translation>trabajo cerrado</translation>
    </message>
    <message>
        <source>settled jobs</source>
        <translation>trabajos cerrados</translation>
    </message>
    <message>
        <source>{no_experiment} Of the {settled:,} jobs without a comparison {with_parts:,} had a part fitted.</source>
        <translation>{no_experiment} De los {settled:,} trabajos sin comparación, {with_parts:,} llevaron una pieza montada.</translation>
    </message>
    <message>
        <source>Compared and fits: {back} of {all_fits:,} settled jobs came back{share}. Nothing compared: {back_none} of {all_none:,}{share_of_none}.</source>
        <translation>Comparada y sirve: volvieron {back} de {all_fits:,} trabajos cerrados{share}. Nada comparado: {back_none} de {all_none:,}{share_of_none}.</translation>
    </message>
    <message>
        <source>That does not show a difference: among 100 such jobs the truth may lie anywhere from {least} to {most} where they were compared.</source>
        <translation>Eso no muestra una diferencia: entre 100 trabajos así la verdad puede estar en cualquier punto de {least} a {most} donde se compararon.</translation>
    </message>
    <message>
        <source>Among 100 such jobs that is {least} to {most} where they were compared; luck alone seldom makes such a difference.</source>
        <translation>Entre 100 trabajos así son de {least} a {most} donde se compararon; el azar por sí solo rara vez produce una diferencia así.</translation>
    </message>
    <message>
        <source>{jobs:.0f} fewer</source>
        <translation>{jobs:.0f} menos</translation>
    </message>
    <message>
        <source>{jobs:.0f} more</source>
        <translation>{jobs:.0f} más</translation>
    </message>
    <message>
        <source>Day by day, with the open windows as far as they have been watched: if comparing made no difference, luck would part the two so far in {share_of_cases} (log-rank test).</source>
        <translation>Día a día, con los plazos abiertos hasta donde se han observado: si comparar no cambiara nada, el azar separaría tanto a los dos en {share_of_cases} (prueba log-rank).</translation>
    </message>
    <message>
        <source>Symptom</source>
        <translation>Síntoma</translation>
    </message>
    <message>
        <source>First-time fixed</source>
        <translation>Reparado a la primera</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Fixed the first time</source>
        <translation>Reparado a la primera</translation>
    </message>
    <message>
        <source>First tries: jobs whose window is over, put right and settled or not caught, that are no comeback of an earlier job. Fixed: put right, and not back in the window. A job counts in every row whose symptom it has. Low to High: where the true share lies 19 times of 20.</source>
        <translation>Primeros intentos: trabajos cuyo plazo ha terminado, arreglados y cerrados o con la avería no reproducida, que no son un retorno de un trabajo anterior. Reparado: arreglado, y sin volver dentro del plazo. Un trabajo cuenta en cada fila cuyo síntoma tiene. De mínimo a máximo: donde está la parte verdadera 19 veces de 20.</translation>
    </message>
    <message>
        <source>No window of this year&apos;s jobs is over yet.</source>
        <translation>Ningún plazo de los trabajos de este año ha terminado todavía.</translation>
    </message>
    <message>
        <source>Expected</source>
        <translation>Esperados</translation>
    </message>
    <message>
        <source>Fewest by luck</source>
        <translation>Mínimo por azar</translation>
    </message>
    <message>
        <source>Most by luck</source>
        <translation>Máximo por azar</translation>
    </message>
    <message>
        <source>Not settled: the window is still open, a visit waits for a judgement, the car is out of sight, or it came back for a reason that is not ours or that nobody can tell. Those jobs are no successes and not in the rate. Low to High: where the true rate lies 19 times of 20.</source>
        <translation>Sin decidir: el plazo sigue abierto, una visita espera un juicio, el vehículo está fuera de la vista, o volvió por una razón que no es nuestra o de la que nadie sabe. Esos trabajos no son éxitos y no están en la tasa. De mínimo a máximo: donde está la tasa verdadera 19 veces de 20.</translation>
    </message>
    <message>
        <source>Expected: the comebacks that the same work has outside the row. Fewest and Most by luck: how many luck alone makes of that, 19 times of 20; between the two nobody is better or worse. Likely rate: once all rows are weighed, a row of few jobs drawn towards the others.</source>
        <translation>Esperados: los retornos que tiene el mismo trabajo fuera de la fila. Mínimo y máximo por azar: cuántos produce de ello el azar por sí solo, 19 veces de 20; entre ambos nadie es mejor ni peor. Tasa probable: una vez pesadas todas las filas, una fila de pocos trabajos se acerca a las demás.</translation>
    </message>
    <message>
        <source>“{too_few}”: fewer than {few_jobs} settled jobs, or a rate that nobody can tell within {widest_interval:.0f} points. Such rows have no rate, no likely rate and no rank: “anything from … to” is all that is known.</source>
        <translation>“{too_few}”: menos de {few_jobs} trabajos cerrados, o una tasa que nadie puede decir dentro de {widest_interval:.0f} puntos. Esas filas no tienen tasa, ni tasa probable, ni puesto: “cualquier cosa de … a” es todo lo que se sabe.</translation>
    </message>
    <message>
        <source>The columns mean the same as in the table above.</source>
        <translation>Las columnas significan lo mismo que en la tabla de arriba.</translation>
    </message>
    <message>
        <source>A job counts in every row whose name it has, so the rows can share jobs.</source>
        <translation>Un trabajo cuenta en cada fila cuyo nombre tiene, así que las filas pueden compartir trabajos.</translation>
    </message>
    <message>
        <source>{warning} “More” or “fewer than luck explains” allows for that.</source>
        <translation>{warning} “Más” o “menos de lo que explica el azar” lo tiene en cuenta.</translation>
    </message>
    <message>
        <source>Held against: {alike:,} of {jobs} against the same work alone. Fewer than {few_jobs} others did the work of the rest: those few count together with the other work of its system ({by_system:,}), or with all other work too ({by_all:,}), and the range of luck is wider.</source>
        <translation>Comparación: {alike:,} de {jobs}, solo con el mismo trabajo. Menos de {few_jobs} de los otros hicieron el trabajo del resto: esos pocos cuentan junto con el otro trabajo de su sistema ({by_system:,}), o también con todo el otro trabajo ({by_all:,}), y el margen del azar es más ancho.</translation>
    </message>
    <message>
        <source>No job of this year was counted.</source>
        <translation>Ningún trabajo de este año se contó.</translation>
    </message>
    <message>
        <source>new trouble from our hands</source>
        <translation>nueva avería de nuestras manos</translation>
    </message>
    <message>
        <source>not caught</source>
        <translation>no reproducida</translation>
    </message>
    <message>
        <source>nothing put right</source>
        <translation>no se arregló nada</translation>
    </message>
    <message>
        <source>no cause written</source>
        <translation>sin causa escrita</translation>
    </message>
    <message>
        <source>Jobs</source>
        <translation>Trabajos</translation>
    </message>
    <message>
        <source>Kept out of every rate</source>
        <translation>Excluidos de toda tasa</translation>
    </message>
    <message>
        <source>These jobs of the year are in no rate, above or below the line. Not caught: handed over with nothing found. Nothing put right: no correction is written, as after a mere look or an estimate. No cause written: something was done and no cause named. Inspection only, maintenance: marked so on the job.</source>
        <translation>Estos trabajos del año no están en ninguna tasa, ni por encima ni por debajo de la raya. No reproducida: se entregó sin haber hallado nada. No se arregló nada: no hay ninguna corrección escrita, como después de solo mirar o de un presupuesto. Sin causa escrita: se hizo algo y no se nombró ninguna causa. Solo inspección, mantenimiento: así marcado en el trabajo.</translation>
    </message>
    <message>
        <source>New trouble from our hands: inspections and maintenance whose car came back inside the window with trouble that a person judged to be from our hands. They are no repairs, so no rate can hold them; they are counted here, and only here.</source>
        <translation>Nueva avería de nuestras manos: inspecciones y mantenimiento cuyo vehículo volvió dentro del plazo con un problema que una persona juzgó de nuestras manos. No son reparaciones, así que ninguna tasa puede contenerlas; se cuentan aquí, y solo aquí.</translation>
    </message>
    <message>
        <source>Kind of part</source>
        <translation>Clase de pieza</translation>
    </message>
    <message>
        <source>By kind of part</source>
        <translation>Por clase de pieza</translation>
    </message>
    <message>
        <source>Came back as: what was judged of the jobs under Comebacks; one job can be several. “Too early for a rate”: came back already, while the window is still open.</source>
        <translation>Volvieron como: lo que se juzgó de los trabajos que están bajo Retornos; un trabajo puede ser varias cosas. “Demasiado pronto para una tasa”: ya volvió, con el plazo aún abierto.</translation>
    </message>
    <message>
        <source>Origin</source>
        <translation>Origen</translation>
    </message>
    <message>
        <source>By where the part comes from</source>
        <translation>Por el origen de la pieza</translation>
    </message>
    <message>
        <source>By kind of part and where it comes from</source>
        <translation>Por clase de pieza y su origen</translation>
    </message>
    <message>
        <source>1 row with fewer than {least} settled jobs and no comeback is left out.</source>
        <translation>Se omite 1 fila con menos de {least} trabajos cerrados y sin retorno.</translation>
    </message>
    <message>
        <source>{rows:,} rows with fewer than {least} settled jobs and no comeback are left out.</source>
        <translation>Se omiten {rows:,} filas con menos de {least} trabajos cerrados y sin retorno.</translation>
    </message>
    <message>
        <source>{early} too early for a rate</source>
        <translation>{early} demasiado pronto para una tasa</translation>
    </message>
    <message>
        <source>Concern</source>
        <translation>Queja</translation>
    </message>
    <message>
        <source>Correction</source>
        <translation>Corrección</translation>
    </message>
    <message>
        <source>Part kinds</source>
        <translation>Clases de pieza</translation>
    </message>
    <message>
        <source>Window ends</source>
        <translation>Fin del plazo</translation>
    </message>
    <message>
        <source>Declined</source>
        <translation>No aceptado</translation>
    </message>
    <message>
        <source>No job was handed over in this week.</source>
        <translation>Ningún trabajo se entregó en esta semana.</translation>
    </message>
    <message>
        <source>Proof, “in doubt”: that level was chosen, and what is written down does not bear all of it out. The page of the job says what is missing or speaks against it.</source>
        <translation>Prueba, «en duda»: se eligió ese nivel, y lo que está escrito no lo respalda todo. La página del trabajo dice qué falta o qué habla en contra.</translation>
    </message>
    <message>
        <source>{level}, in doubt</source>
        <translation>{level}, en duda</translation>
    </message>
    <message>
        <source>no: {kind_of_work}</source>
        <translation>no: {kind_of_work}</translation>
    </message>
    <message>
        <source>{day} and {distance}</source>
        <translation>{day} y {distance}</translation>
    </message>
    <message>
        <source>{day} or {distance}</source>
        <translation>{day} o {distance}</translation>
    </message>
    <message>
        <source>credit for a core</source>
        <translation>abono por un casco</translation>
    </message>
    <message>
        <source>claim for a part that failed</source>
        <translation>reclamación por una pieza que falló</translation>
    </message>
    <message>
        <source>Supplier</source>
        <translation>Proveedor</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Pieza</translation>
    </message>
    <message>
        <source>Since</source>
        <translation>Desde</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Importe</translation>
    </message>
    <message>
        <source>Next step</source>
        <translation>Próximo paso</translation>
    </message>
    <message>
        <source>No supplier owes anything that was written down.</source>
        <translation>Ningún proveedor debe nada de lo que se haya anotado.</translation>
    </message>
    <message>
        <source>Who gets the hardest cars has the most comebacks: read Comebacks beside what such work lets expect, not beside the neighbour. Fewest and Most by luck: how many luck alone makes of that, 19 times of 20; between the two nobody is better or worse. Above expected: below 0 is fewer. Likely rate: once all are weighed.</source>
        <translation>Quien recibe los vehículos más difíciles tiene más retornos: lea Retornos al lado de lo que ese trabajo hace esperar, no al lado del compañero. Mínimo y máximo por azar: cuántos produce de ello el azar por sí solo, 19 veces de 20; entre ambos nadie es mejor ni peor. Sobre lo esperado: por debajo de 0 son menos. Tasa probable: una vez pesados todos.</translation>
    </message>
    <message>
        <source>Intermittent: the share of settled jobs whose fault did not come every time.</source>
        <translation>Intermitente: la parte de trabajos cerrados cuya avería no aparecía todas las veces.</translation>
    </message>
    <message>
        <source>A row is a person and a part that they played. Wrote up, searched, refitted and proved: the jobs of another technician that name them for it. Technician: their jobs in which nobody else is named for at least one of searched, refitted and proved. A job counts in every row that it names, so the rows share jobs: they don&apos;t add up.</source>
        <translation>Una fila es una persona y una tarea que hizo. Tomó nota, buscó, volvió a montar y probó: los trabajos de otro mecánico que la nombran para ello. Mecánico: sus trabajos en los que no se nombra a nadie más para al menos una de buscar, volver a montar y probar. Un trabajo cuenta en cada fila que nombra, así que las filas comparten trabajos: no suman.</translation>
    </message>
    <message>
        <source>technician</source>
        <translation>mecánico</translation>
    </message>
    <message>
        <source>For the owner alone: names do not belong on a wall.</source>
        <translation>Solo para el dueño: los nombres no van en una pared.</translation>
    </message>
    <message>
        <source>{warning} “Read it as” allows for that.</source>
        <translation>{warning} “Cómo leerlo” lo tiene en cuenta.</translation>
    </message>
    <message>
        <source>1 row with fewer than {few_jobs} settled jobs is not listed: nothing can be said of so few.</source>
        <translation>1 fila con menos de {few_jobs} trabajos cerrados no figura: de tan pocos no se puede decir nada.</translation>
    </message>
    <message>
        <source>{rows:,} rows with fewer than {few_jobs} settled jobs are not listed: nothing can be said of so few.</source>
        <translation>{rows:,} filas con menos de {few_jobs} trabajos cerrados no figuran: de tan pocos no se puede decir nada.</translation>
    </message>
    <message>
        <source>Above expected</source>
        <translation>Sobre lo esperado</translation>
    </message>
    <message>
        <source>Nobody has {few_jobs} settled jobs in one part played in this year yet.</source>
        <translation>Nadie tiene todavía {few_jobs} trabajos cerrados en una misma tarea en este año.</translation>
    </message>
    <message>
        <source>old and new compared: fits</source>
        <translation>vieja y nueva comparadas: sirve</translation>
    </message>
    <message>
        <source>compared: stop and look</source>
        <translation>comparadas: pare y mire</translation>
    </message>
    <message>
        <source>compared: not enough measured</source>
        <translation>comparadas: faltan mediciones</translation>
    </message>
    <message>
        <source>no parts compared</source>
        <translation>sin piezas comparadas</translation>
    </message>
    <message>
        <source>By how far it was proved</source>
        <translation>Por hasta dónde se probó</translation>
    </message>
    <message>
        <source>By the level that was chosen at the hand-over. Where what is written down does not bear all of it out, Left this week says “in doubt”.</source>
        <translation>Por el nivel que se eligió en la entrega. Donde lo que está escrito no lo respalda todo, Salidas dice «en duda».</translation>
    </message>
    <message>
        <source>Caught here: proofs that failed before the car left. That is a good sign, never a comeback. {by_time}: seen fine after the window. It comes by itself and stands in for none of the levels of the hand-over.</source>
        <translation>Reproducida aquí: pruebas que fallaron antes de que saliera el vehículo. Es buena señal, nunca un retorno. {by_time}: visto bien después del plazo. Llega por sí solo y no sustituye a ninguno de los niveles de la entrega.</translation>
    </message>
    <message>
        <source>What was written</source>
        <translation>Lo que se escribió</translation>
    </message>
    <message>
        <source>no reason is written</source>
        <translation>no hay razón escrita</translation>
    </message>
    <message>
        <source>Left unproven in the week</source>
        <translation>Salidas sin probar en la semana</translation>
    </message>
    <message>
        <source>No job left unproven in this week.</source>
        <translation>Ningún trabajo salió sin probar en esta semana.</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation>Piezas</translation>
    </message>
    <message>
        <source>Does comparing the parts pay?</source>
        <translation>¿Compensa comparar las piezas?</translation>
    </message>
    <message>
        <source>The weeks are not drawn yet: in none of them a counted job was under watch. They are, once the week is over in which the first such job is handed over.</source>
        <translation>Las semanas todavía no se dibujan: en ninguna hubo en observación un trabajo contado. Se dibujarán cuando termine la semana en que se entregue el primero.</translation>
    </message>
    <message>
        <source>The line of the weeks lies on nought: no visit that came in them is judged a comeback of a counted job. It rises with the first week in which one came that is.</source>
        <translation>La línea de las semanas está en cero: ninguna visita que llegó en ellas se juzgó como retorno de un trabajo contado. Sube con la primera semana en que llegó una que lo sea.</translation>
    </message>
    <message>
        <source>A curve of returns that has one point alone is not drawn yet; beneath its table stands from when it is.</source>
        <translation>Una curva de vueltas con un solo punto todavía no se dibuja; debajo de su tabla está desde cuándo se dibuja.</translation>
    </message>
    <message>
        <source>Comebacks per job under watch, week by week</source>
        <translation>Retornos por trabajo en observación, semana a semana</translation>
    </message>
    <message>
        <source>Week in which the car came</source>
        <translation>Semana en que vino el vehículo</translation>
    </message>
    <message>
        <source>Comebacks per job under watch</source>
        <translation>Retornos por trabajo en observación</translation>
    </message>
    <message>
        <source>Share of jobs that came back, by days since they left</source>
        <translation>Parte de los trabajos que volvieron, por días desde la salida</translation>
    </message>
    <message>
        <source>Days since the hand-over</source>
        <translation>Días desde la entrega</translation>
    </message>
    <message>
        <source>Share that came back</source>
        <translation>Parte que volvió</translation>
    </message>
    <message>
        <source>Share of jobs that came back, by {unit} since they left</source>
        <translation>Parte de los trabajos que volvieron, por {unit} desde la salida</translation>
    </message>
    <message>
        <source>{unit} since the hand-over</source>
        <translation>{unit} desde la entrega</translation>
    </message>
    <message>
        <source>Returns per 100 jobs, by days since they left</source>
        <translation>Vueltas por 100 trabajos, por días desde la salida</translation>
    </message>
    <message>
        <source>Still watched</source>
        <translation>Aún observados</translation>
    </message>
    <message>
        <source>How many have come back by a share of their window</source>
        <translation>Cuántos han vuelto según la parte de su plazo</translation>
    </message>
    <message>
        <source>Window used up: the larger of the shares of days and of distance, each job by its own window; 100% is its end. Open windows count as far as they are used (Kaplan-Meier). Curve while known well: a job of which nothing was heard counts only up to the last day on which its car was known to be well. The truth lies between the two.</source>
        <translation>Plazo consumido: la mayor de las partes de días y de distancia, cada trabajo según su propio plazo; 100% es su final. Los plazos abiertos cuentan hasta donde se han consumido (Kaplan-Meier). Curva mientras consta bien: un trabajo del que no hubo noticias cuenta solo hasta el último día en que constaba que su vehículo iba bien. La verdad está entre las dos.</translation>
    </message>
    <message>
        <source>{jobs} by days alone: the odometer was not read since, or cannot say how far the car has gone.</source>
        <translation>Solo por días: {jobs}; el cuentakilómetros no se leyó desde entonces, o no puede decir cuánto ha andado el vehículo.</translation>
    </message>
    <message>
        <source>Left out: {jobs} whose window time cannot end and is still open.</source>
        <translation>Aparte: {jobs} con un plazo que el tiempo no puede terminar y que sigue abierto.</translation>
    </message>
    <message>
        <source>How many have come back after so many days</source>
        <translation>Cuántos han vuelto al cabo de tantos días</translation>
    </message>
    <message>
        <source>Every counted job of the year stands in it, those with an open window as far as they have been watched (Kaplan-Meier). The share adds up: 10% at day 60 means that 10 of 100 have come back by then. Low to High: where it lies 19 times of 20.</source>
        <translation>Cada trabajo contado del año está en ella, los de plazo abierto hasta donde se han observado (Kaplan-Meier). La parte se acumula: 10% en el día 60 significa que 10 de 100 han vuelto hasta entonces. De mínimo a máximo: donde está 19 veces de 20.</translation>
    </message>
    <message>
        <source>How many have come back after so many {unit}</source>
        <translation>Cuántos han vuelto según la distancia, en {unit}</translation>
    </message>
    <message>
        <source>Too few cars were read again to say how many {unit} they drive.</source>
        <translation>Se han vuelto a leer demasiado pocos vehículos para decir cuánto se conducen, en {unit}.</translation>
    </message>
    <message>
        <source>A job counts as far as its car has gone: to the {unit} of its return, or to its last odometer reading that can be trusted, at most to its window&apos;s end. The curve ends where fewer than {fewest_read} jobs were watched.</source>
        <translation>Un trabajo cuenta hasta donde ha andado su vehículo, en {unit}: hasta su vuelta, o hasta su última lectura fiable del cuentakilómetros, a lo sumo hasta el final de su plazo. La curva termina donde se observaron menos de {fewest_read} trabajos.</translation>
    </message>
    <message>
        <source>1 job of {jobs:,} was never read again and was taken to be driven as the others are, {a_month:,.0f} {unit} a month in the middle. Where that is many, trust the curve by days first.</source>
        <translation>1 trabajo de {jobs:,} no se volvió a leer nunca y se tomó como conducido igual que los demás, {a_month:,.0f} {unit} al mes en el centro. Donde son muchos, fíese primero de la curva por días.</translation>
    </message>
    <message>
        <source>{estimated:,} jobs of {jobs:,} were never read again and were taken to be driven as the others are, {a_month:,.0f} {unit} a month in the middle. Where that is many, trust the curve by days first.</source>
        <translation>{estimated:,} trabajos de {jobs:,} no se volvieron a leer nunca y se tomaron como conducidos igual que los demás, {a_month:,.0f} {unit} al mes en el centro. Donde son muchos, fíese primero de la curva por días.</translation>
    </message>
    <message>
        <source>Left out: {jobs}, {comebacks} among them; the odometer cannot say how far the car had gone.</source>
        <translation>Aparte: {jobs}, con {comebacks} entre ellos; el cuentakilómetros no puede decir cuánto había andado el vehículo.</translation>
    </message>
    <message>
        <source>comebacks</source>
        <translation>retornos</translation>
    </message>
    <message>
        <source>Not drawn yet: fewer than {fewest_read} jobs were watched over {distance:,.0f} {unit}. It is, once so many are.</source>
        <translation>Todavía no se dibuja: menos de {fewest_read} trabajos se observaron a lo largo de {distance:,.0f} {unit}. Se dibujará cuando sean tantos.</translation>
    </message>
    <message>
        <source>How many returns 100 jobs have had after so many days</source>
        <translation>Cuántas vueltas han tenido 100 trabajos al cabo de tantos días</translation>
    </message>
    <message>
        <source>Every return counts here, the second and third of one job too (mean cumulative function), so it can lie above the share that came back. A return of a return counts for the job before it, and for the first of its chain from the day on which that left. Low to High: where it lies 19 times of 20.</source>
        <translation>Aquí cuenta cada vuelta, también la segunda y la tercera de un mismo trabajo (función media acumulada), así que puede estar por encima de la parte que volvió. La vuelta de una vuelta cuenta para el trabajo anterior a ella, y para el primero de su cadena desde el día en que aquel salió. De mínimo a máximo: donde está 19 veces de 20.</translation>
    </message>
    <message>
        <source>Not drawn yet: no counted job was still watched {days:.0f} days after it left. It is, once one is.</source>
        <translation>Todavía no se dibuja: ningún trabajo contado seguía en observación {days:.0f} días después de su salida. Se dibujará cuando haya uno.</translation>
    </message>
    <message>
        <source>early</source>
        <translation>temprano</translation>
    </message>
    <message>
        <source>the job&apos;s own</source>
        <translation>el propio del trabajo</translation>
    </message>
    <message>
        <source>long</source>
        <translation>largo</translation>
    </message>
    <message>
        <source>the whole year</source>
        <translation>todo el año</translation>
    </message>
    <message>
        <source>Left in</source>
        <translation>Salió en</translation>
    </message>
    <message>
        <source>Window</source>
        <translation>Plazo</translation>
    </message>
    <message>
        <source>By the curve</source>
        <translation>Según la curva</translation>
    </message>
    <message>
        <source>By month in which the job left</source>
        <translation>Por mes en que salió el trabajo</translation>
    </message>
    <message>
        <source>{first} to {last}</source>
        <translation>{first} a {last}</translation>
    </message>
    <message>
        <source>A job is settled when its window is over and its visits are judged; a quick comeback enters only then, together with its quiet neighbours. Low to High: where the true rate lies 19 times of 20. Months differ by luck too.</source>
        <translation>Un trabajo está cerrado cuando su plazo ha terminado y sus visitas están juzgadas; un retorno rápido entra solo entonces, junto con sus vecinos tranquilos. De mínimo a máximo: donde está la tasa verdadera 19 veces de 20. Los meses difieren también por azar.</translation>
    </message>
    <message>
        <source>By the curve: the share that came back by the window&apos;s end, with the open windows as far as they are watched (Kaplan-Meier). Curve while known well: the same, but a job of which nothing was heard counts only up to the last day on which its car was known to be well. The truth probably lies between the two. Nothing heard: settled jobs that did not come back, and whose car nobody saw or asked about after its window.</source>
        <translation>Según la curva: la parte que volvió hasta el final del plazo, con los plazos abiertos hasta donde se han observado (Kaplan-Meier). Curva mientras consta bien: lo mismo, pero un trabajo del que no hubo noticias cuenta solo hasta el último día en que constaba que su vehículo iba bien. La verdad está probablemente entre las dos. Sin noticias: trabajos cerrados que no volvieron, y cuyo vehículo nadie vio ni preguntó por él después de su plazo.</translation>
    </message>
    <message>
        <source>early {promise}</source>
        <translation>temprano, {promise}</translation>
    </message>
    <message>
        <source>{own} is the one that it was handed over with, now {promise}</source>
        <translation>{own} es aquel con que se entregó, ahora {promise}</translation>
    </message>
    <message>
        <source>long {promise}</source>
        <translation>largo, {promise}</translation>
    </message>
    <message>
        <source>Windows: {windows}.</source>
        <translation>Plazos: {windows}.</translation>
    </message>
    <message>
        <source>The early window ({promise}) has no row: no job that this book reads is settled in it.</source>
        <translation>El plazo temprano ({promise}) no tiene fila: ningún trabajo que lee este libro está cerrado en él.</translation>
    </message>
    <message>
        <source>The long window ({promise}) has no row: no job that this book reads is settled in it.</source>
        <translation>El plazo largo ({promise}) no tiene fila: ningún trabajo que lee este libro está cerrado en él.</translation>
    </message>
    <message>
        <source>In the first row of long stand the jobs that left {days}: the window is over for all of them.</source>
        <translation>En la primera fila de largo están los trabajos que salieron de {days}: para todos ellos el plazo ha terminado.</translation>
    </message>
    <message>
        <source>From week</source>
        <translation>Desde la semana</translation>
    </message>
    <message>
        <source>To week</source>
        <translation>Hasta la semana</translation>
    </message>
    <message>
        <source>What it shows</source>
        <translation>Lo que muestra</translation>
    </message>
    <message>
        <source>What the weeks show</source>
        <translation>Lo que muestran las semanas</translation>
    </message>
    <message>
        <source>No week stands out, and no slow rise is seen.</source>
        <translation>Ninguna semana destaca, y no se ve ninguna subida lenta.</translation>
    </message>
    <message>
        <source>Handed over</source>
        <translation>Entregado</translation>
    </message>
    <message>
        <source>The week that is not over, so far</source>
        <translation>La semana que no ha terminado, hasta ahora</translation>
    </message>
    <message>
        <source>It is not in the chart: a part of a week cannot be held against whole ones.</source>
        <translation>No está en el gráfico: una parte de semana no se puede comparar con semanas enteras.</translation>
    </message>
    <message>
        <source>Of those under watch: the week&apos;s comebacks per job under watch; it is small because most cars come in no given week, and it is not the rate of the year. Within the limits a week is like the others, however high or low it looks; luck alone passes either of them at most once in {weeks:.0f} weeks.</source>
        <translation>De los observados: los retornos de la semana por trabajo en observación; es poco porque la mayoría de los vehículos no viene en una semana dada, y no es la tasa del año. Dentro de los límites una semana es como las demás, por alta o baja que parezca; el azar por sí solo rebasa cualquiera de ellos a lo sumo una vez cada {weeks:.0f} semanas.</translation>
    </message>
    <message>
        <source>Counted jobs alone: under watch are here repairs with a cause and a correction; on Windows stands every job.</source>
        <translation>Solo trabajos contados: en observación están aquí las reparaciones con una causa y una corrección; en Plazos están todos los trabajos.</translation>
    </message>
    <message>
        <source>Slow rise: the evidence that comebacks have doubled since some week before. Above {decision:.0f} it counts, and luck alone gets there about once in five years.</source>
        <translation>Subida lenta: el indicio de que los retornos se han duplicado desde alguna semana anterior. Por encima de {decision:.0f} cuenta, y el azar por sí solo llega ahí más o menos una vez cada cinco años.</translation>
    </message>
    <message>
        <source>{period}, prints {pages_across} pages wide</source>
        <translation>{period}, se imprime a {pages_across} páginas de ancho</translation>
    </message>
    <message>
        <source>In window</source>
        <translation>En plazo</translation>
    </message>
    <message>
        <source>Waits</source>
        <translation>Espera</translation>
    </message>
    <message>
        <source>Returns of the year</source>
        <translation>Vueltas del año</translation>
    </message>
    <message>
        <source>1 is yes, 0 is no. One visit counts once, however many earlier jobs it meets. Cost stands with the pair that it was written for.</source>
        <translation>1 es sí, 0 es no. Una visita cuenta una vez, por muchos trabajos anteriores que encuentre. El coste está junto al par para el que se escribió.</translation>
    </message>
    <message>
        <source>Jobs handed over in the year</source>
        <translation>Trabajos entregados en el año</translation>
    </message>
    <message>
        <source>No job was handed over in this year.</source>
        <translation>Ningún trabajo se entregó en este año.</translation>
    </message>
    <message>
        <source>Month</source>
        <translation>Mes</translation>
    </message>
    <message>
        <source>Days to the return</source>
        <translation>Días hasta la vuelta</translation>
    </message>
    <message>
        <source>Days to the waiting visit</source>
        <translation>Días hasta la visita en espera</translation>
    </message>
    <message>
        <source>Window days</source>
        <translation>Días de plazo</translation>
    </message>
    <message>
        <source>Window {unit}</source>
        <translation>Plazo en {unit}</translation>
    </message>
    <message>
        <source>System</source>
        <translation>Sistema</translation>
    </message>
    <message>
        <source>Search hours</source>
        <translation>Horas de búsqueda</translation>
    </message>
    <message>
        <source>{unit} known</source>
        <translation>{unit} según lectura</translation>
    </message>
    <message>
        <source>{unit} to the return</source>
        <translation>{unit} hasta la vuelta</translation>
    </message>
    <message>
        <source>Search hours written</source>
        <translation>Horas de búsqueda escritas</translation>
    </message>
    <message>
        <source>Search hours on the average</source>
        <translation>Horas de búsqueda de media</translation>
    </message>
    <message>
        <source>Hours of searching, by symptom</source>
        <translation>Horas de búsqueda, por síntoma</translation>
    </message>
    <message>
        <source>Of a job&apos;s hours, those that went into finding the cause, in the jobs in which somebody wrote them; Search hours written says how many these are. No average: nobody wrote them. The other jobs may have been quicker or slower.</source>
        <translation>De las horas de un trabajo, las que se emplearon en hallar la causa, en los trabajos en que alguien las escribió; Horas de búsqueda escritas dice cuántos son. Sin media: nadie las escribió. Los demás trabajos pueden haber sido más rápidos o más lentos.</translation>
    </message>
    <message>
        <source>Nobody has written search hours on a job of this year.</source>
        <translation>Nadie ha escrito horas de búsqueda en un trabajo de este año.</translation>
    </message>
    <message>
        <source>Names are left out. The house rule “names in book” puts them in, for the owner alone.</source>
        <translation>Los nombres se omiten. La norma de la casa “nombres en el libro” los pone, solo para el dueño.</translation>
    </message>
    <message>
        <source>new, vehicle maker&apos;s</source>
        <translation>nueva, del fabricante del vehículo</translation>
    </message>
    <message>
        <source>new, other maker&apos;s</source>
        <translation>nueva, de otro fabricante</translation>
    </message>
    <message>
        <source>reman</source>
        <translation>reacondicionada</translation>
    </message>
    <message>
        <source>rebuilt here</source>
        <translation>reconstruida aquí</translation>
    </message>
    <message>
        <source>used</source>
        <translation>usado</translation>
    </message>
    <message>
        <source>customer&apos;s own</source>
        <translation>del propio cliente</translation>
    </message>
    <message>
        <source>{week}, {monday} to {sunday}</source>
        <translation>{week}, de {monday} a {sunday}</translation>
    </message>
    <message>
        <source>made {made_at:%Y-%m-%d %H:%M}</source>
        <translation>hecho {made_at:%Y-%m-%d %H:%M}</translation>
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
        <source>{week}, jobs handed over {first} to {last}</source>
        <translation>{week}, trabajos entregados de {first} a {last}</translation>
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
        <source>Compared</source>
        <translation>Comparadas</translation>
    </message>
    <message>
        <source>Stop and look</source>
        <translation>Pare y mire</translation>
    </message>
    <message>
        <source>Turned</source>
        <translation>Giradas</translation>
    </message>
    <message>
        <source>Mirrored</source>
        <translation>Reflejadas</translation>
    </message>
    <message>
        <source>Not fitted</source>
        <translation>Sin montar</translation>
    </message>
    <message>
        <source>Claims</source>
        <translation>Reclamaciones</translation>
    </message>
    <message>
        <source>Answered</source>
        <translation>Respondidas</translation>
    </message>
    <message>
        <source>Refused</source>
        <translation>Rechazadas</translation>
    </message>
    <message>
        <source>Days to an answer</source>
        <translation>Días hasta la respuesta</translation>
    </message>
    <message>
        <source>Paid</source>
        <translation>Pagado</translation>
    </message>
    <message>
        <source>What comparing showed, and what became of claims</source>
        <translation>Lo que mostró comparar, y qué fue de las reclamaciones</translation>
    </message>
    <message>
        <source>Turned: an angle of the new part is not the old one&apos;s, and nobody has explained it. Mirrored: it looks like the old one&apos;s mirror image. Not fitted: it did not go into the car. Claims: those written in the year; days and money are of those with an answer. Credits for cores are not among them.</source>
        <translation>Giradas: un ángulo de la pieza nueva no es el de la vieja, y nadie lo ha explicado. Reflejadas: parece la imagen de la vieja en el espejo. Sin montar: no llegó a montarse en el vehículo. Reclamaciones: las escritas en el año; los días y el dinero son de las que tienen respuesta. Los abonos por cascos no están entre ellas.</translation>
    </message>
    <message>
        <source>No supplier was written down.</source>
        <translation>No se anotó ningún proveedor.</translation>
    </message>
    <message>
        <source>By system that was worked on</source>
        <translation>Por sistema en el que se trabajó</translation>
    </message>
    <message>
        <source>Hours on the average</source>
        <translation>Horas de media</translation>
    </message>
    <message>
        <source>What fixed it</source>
        <translation>Qué lo arregló</translation>
    </message>
    <message>
        <source>By symptom</source>
        <translation>Por síntoma</translation>
    </message>
    <message>
        <source>What fixed it: the corrections of settled jobs that did not come back. Not caught and the hours are of all jobs with the symptom.</source>
        <translation>Qué lo arregló: las correcciones de trabajos cerrados que no volvieron. No reproducida y las horas son de todos los trabajos con el síntoma.</translation>
    </message>
    <message>
        <source>Died early</source>
        <translation>Falló pronto</translation>
    </message>
    <message>
        <source>Wrong part</source>
        <translation>Pieza equivocada</translation>
    </message>
    <message>
        <source>By supplier</source>
        <translation>Por proveedor</translation>
    </message>
    <message>
        <source>Who delivers the parts that fail most everywhere has the most comebacks: read them beside what is expected. Died early and Wrong part: the causes that were written, of jobs that are not settled too.</source>
        <translation>Quien entrega las piezas que más fallan en todas partes tiene más retornos: léalos al lado de lo que se espera. Falló pronto y Pieza equivocada: las causas que se escribieron, también de trabajos sin decidir.</translation>
    </message>
    <message>
        <source>Lot or date code</source>
        <translation>Lote o código de fecha</translation>
    </message>
    <message>
        <source>By lot or date code</source>
        <translation>Por lote o código de fecha</translation>
    </message>
    <message>
        <source>Jobs and comebacks of windows that are still open stand here too: this is a list to look through, no rate. The same lot twice is worth a look; one or two parts prove nothing.</source>
        <translation>Aquí están también los trabajos y retornos de plazos aún abiertos: es una lista para repasar, no una tasa. El mismo lote dos veces merece una mirada; una o dos piezas no prueban nada.</translation>
    </message>
    <message>
        <source>No lot or date code was written down.</source>
        <translation>No se anotó ningún lote ni código de fecha.</translation>
    </message>
    <message>
        <source>Its window is not over. Never counted as a success.</source>
        <translation>Su plazo no ha terminado. Nunca se cuenta como éxito.</translation>
    </message>
    <message>
        <source>A visit of its car, or the same trouble told, waits for a judgement: neither good nor bad.</source>
        <translation>Una visita de su vehículo, o el mismo problema contado, espera un juicio: ni bueno ni malo.</translation>
    </message>
    <message>
        <source>A person judged a visit of its car, or what was told, a comeback.</source>
        <translation>Una persona juzgó retorno una visita de su vehículo, o lo que se contó.</translation>
    </message>
    <message>
        <source>It came back for a reason that is not ours; it is in no rate.</source>
        <translation>Volvió por una razón que no es nuestra; no está en ninguna tasa.</translation>
    </message>
    <message>
        <source>A person judged a visit of its car, or what was told, and nobody can tell what it was: neither good nor bad, and in no rate.</source>
        <translation>Una persona juzgó una visita de su vehículo, o lo que se contó, y nadie sabe qué fue: ni bueno ni malo, y en ninguna tasa.</translation>
    </message>
    <message>
        <source>The car came with a reason, or its customer told of the same trouble, after the window&apos;s end: no comeback in the rate, and not the same as all well.</source>
        <translation>El vehículo vino con una razón, o su cliente contó el mismo problema, después del final del plazo: no es retorno en la tasa, y no es lo mismo que todo bien.</translation>
    </message>
    <message>
        <source>The car was seen, or its customer asked, after the window&apos;s end.</source>
        <translation>El vehículo se vio, o se preguntó a su cliente, después del final del plazo.</translation>
    </message>
    <message>
        <source>The window ended and nobody knows how the car is.</source>
        <translation>El plazo terminó y nadie sabe cómo está el vehículo.</translation>
    </message>
    <message>
        <source>The car was sold or is gone; nobody can say any more.</source>
        <translation>El vehículo se vendió o ya no está; nadie puede decir más.</translation>
    </message>
    <message>
        <source>What probably ends first stands on top. “ask”: the call is due; the numbers of telephones are in the window, on Under Watch. Whom you ask must not depend on the answer you hope for.</source>
        <translation>Arriba está lo que probablemente termina primero. “preguntar”: toca llamar; los números de teléfono están en la ventana, en En observación. A quién pregunta no debe depender de la respuesta que espera.</translation>
    </message>
    <message>
        <source>Of {jobs} whose window ended quietly, nothing was heard of {unheard:,}: no news is not the same as good news.</source>
        <translation>De {jobs} con un plazo que terminó tranquilo, no hubo noticias de {unheard:,}: sin noticias no es lo mismo que buenas noticias.</translation>
    </message>
    <message>
        <source>What became of the year&apos;s jobs</source>
        <translation>Qué fue de los trabajos del año</translation>
    </message>
    <message>
        <source>no limit in time</source>
        <translation>sin límite de tiempo</translation>
    </message>
    <message>
        <source>Days so far</source>
        <translation>Días hasta hoy</translation>
    </message>
    <message>
        <source>{unit} left (last read)</source>
        <translation>{unit} restantes (última lectura)</translation>
    </message>
    <message>
        <source>Read on</source>
        <translation>Leído el</translation>
    </message>
    <message>
        <source>Expected end</source>
        <translation>Fin esperado</translation>
    </message>
    <message>
        <source>Ends by</source>
        <translation>Termina por</translation>
    </message>
    <message>
        <source>This week</source>
        <translation>Esta semana</translation>
    </message>
    <message>
        <source>No window was open.</source>
        <translation>No había ningún plazo abierto.</translation>
    </message>
    <message>
        <source>came back</source>
        <translation>volvió</translation>
    </message>
    <message>
        <source>to be judged</source>
        <translation>por juzgar</translation>
    </message>
    <message>
        <source>open</source>
        <translation>abierto</translation>
    </message>
    <message>
        <source>may have ended by time</source>
        <translation>quizá terminó por tiempo</translation>
    </message>
    <message>
        <source>may have ended by distance</source>
        <translation>quizá terminó por distancia</translation>
    </message>
    <message>
        <source>no such limit</source>
        <translation>sin tal límite</translation>
    </message>
    <message>
        <source>not read</source>
        <translation>sin leer</translation>
    </message>
    <message>
        <source>: ask</source>
        <translation>: preguntar</translation>
    </message>
    <message>
        <source>may have ended{and_ask}</source>
        <translation>quizá terminó{and_ask}</translation>
    </message>
    <message>
        <source>ends{and_ask}</source>
        <translation>termina{and_ask}</translation>
    </message>
    <message>
        <source>ask</source>
        <translation>preguntar</translation>
    </message>
    <message>
        <source>the promise for {kind}</source>
        <translation>la promesa para {kind}</translation>
    </message>
    <message>
        <source>Changed in the house rules in this week: {changes}.</source>
        <translation>Cambiado en las normas de la casa en esta semana: {changes}.</translation>
    </message>
    <message>
        <source>{rule} from {was} to {now}</source>
        <translation>{rule} de {was} a {now}</translation>
    </message>
    <message>
        <source>the shop&apos;s promise from “{was}” to “{now}”</source>
        <translation>la promesa del taller de “{was}” a “{now}”</translation>
    </message>
    <message>
        <source>a thing of a job</source>
        <translation>una tarea de un trabajo</translation>
    </message>
    <message>
        <source>Of the week. Until a person has judged them they are neither comeback nor success.</source>
        <translation>De la semana. Hasta que una persona las haya juzgado no son ni retorno ni éxito.</translation>
    </message>
    <message>
        <source>A visit to be judged, or the same trouble told: neither good nor bad.</source>
        <translation>Una visita por juzgar, o el mismo problema contado: ni bueno ni malo.</translation>
    </message>
    <message>
        <source>Where somebody wrote it, of those that are no comebacks too.</source>
        <translation>Donde alguien lo escribió, también de las que no son retornos.</translation>
    </message>
    <message>
        <source>Of each earlier job with the visit: one visit can meet several, and counts once above.</source>
        <translation>De cada trabajo anterior con la visita: una visita puede encontrar varios, y arriba cuenta una vez.</translation>
    </message>
    <message>
        <source>Jobs handed over</source>
        <translation>Trabajos entregados</translation>
    </message>
    <message>
        <source>Every job that left in the week.</source>
        <translation>Todos los trabajos que salieron en la semana.</translation>
    </message>
    <message>
        <source>of these left unproven</source>
        <translation>de ellos salidos sin probar</translation>
    </message>
    <message>
        <source>Hours worked</source>
        <translation>Horas trabajadas</translation>
    </message>
    <message>
        <source>Not written on any job.</source>
        <translation>No está escrito en ningún trabajo.</translation>
    </message>
    <message>
        <source>As written on the jobs.</source>
        <translation>Como está escrito en los trabajos.</translation>
    </message>
    <message>
        <source>Hours not billed</source>
        <translation>Horas sin facturar</translation>
    </message>
    <message>
        <source>Repairs with a cause and a correction; “not caught”, inspections and maintenance enter no rate.</source>
        <translation>Reparaciones con una causa y una corrección; las de avería «no reproducida», las inspecciones y el mantenimiento no entran en ninguna tasa.</translation>
    </message>
    <message>
        <source>Visits, and returns only told, judged a comeback inside the window of a counted job; each counts once.</source>
        <translation>Visitas, y vueltas solo contadas de palabra, juzgadas retorno dentro del plazo de un trabajo contado; cada una cuenta una vez.</translation>
    </message>
    <message>
        <source>of these counted</source>
        <translation>de ellos contados</translation>
    </message>
    <message>
        <source>Price of the jobs</source>
        <translation>Precio de los trabajos</translation>
    </message>
    <message>
        <source>Left unproven</source>
        <translation>Salieron sin probar</translation>
    </message>
    <message>
        <source>Wait for judgement</source>
        <translation>Esperan juicio</translation>
    </message>
    <message>
        <source>Returns that wait for judgement</source>
        <translation>Vueltas que esperan un juicio</translation>
    </message>
    <message>
        <source>pairs judged {judgement}</source>
        <translation>pares juzgados: {judgement}</translation>
    </message>
    <message>
        <source>Cost of the week&apos;s returns</source>
        <translation>Coste de las vueltas de la semana</translation>
    </message>
    <message>
        <source>Jobs under watch</source>
        <translation>Trabajos en observación</translation>
    </message>
    <message>
        <source>An open window is not a success.</source>
        <translation>Un plazo abierto no es un éxito.</translation>
    </message>
    <message>
        <source>of these ending by time within {ends_soon} days</source>
        <translation>de ellos terminan por tiempo en {ends_soon} días</translation>
    </message>
    <message>
        <source>Jobs of the year that are counted</source>
        <translation>Trabajos del año que se cuentan</translation>
    </message>
    <message>
        <source>52 weeks.</source>
        <translation>52 semanas.</translation>
    </message>
    <message>
        <source>of these settled</source>
        <translation>de ellos cerrados</translation>
    </message>
    <message>
        <source>Window over, visits judged.</source>
        <translation>Plazo terminado, visitas juzgadas.</translation>
    </message>
    <message>
        <source>of the settled that came back</source>
        <translation>de los cerrados, los que volvieron</translation>
    </message>
    <message>
        <source>Rate of the year</source>
        <translation>Tasa del año</translation>
    </message>
    <message>
        <source>Of settled jobs; empty where fewer than {few_jobs} are, or where it may lie anywhere within more than {widest_interval:.0f} points: too few to tell.</source>
        <translation>De trabajos cerrados; vacío donde son menos de {few_jobs}, o donde puede estar en cualquier lugar de un margen de más de {widest_interval:.0f} puntos: demasiado pocos para decirlo.</translation>
    </message>
    <message>
        <source>lies between</source>
        <translation>está entre</translation>
    </message>
    <message>
        <source>The true rate lies between the two 19 times of 20.</source>
        <translation>La tasa verdadera está entre las dos 19 veces de 20.</translation>
    </message>
    <message>
        <source>and</source>
        <translation>y</translation>
    </message>
    <message>
        <source>Jobs that wait</source>
        <translation>Trabajos en espera</translation>
    </message>
    <message>
        <source>Where it was written.</source>
        <translation>Donde se escribió.</translation>
    </message>
    <message>
        <source>As written on {some} of {every} jobs.</source>
        <translation>Como está escrito en {some} de {every} trabajos.</translation>
    </message>
    <message>
        <source>Not written with any return.</source>
        <translation>No está escrito en ninguna vuelta.</translation>
    </message>
    <message>
        <source>As written with {some} of {every} pairs, those that are no comebacks included.</source>
        <translation>Como está escrito en {some} de {every} pares, incluidos los que no son retornos.</translation>
    </message>
    <message>
        <source>“{text}” is not a week.</source>
        <translation>“{text}” no es una semana.</translation>
    </message>
    <message>
        <source>Write year and week, like 2026-W47.</source>
        <translation>Escriba el año y la semana, como 2026-W47.</translation>
    </message>
    <message>
        <source>There are no weeks of {year:04d} here.</source>
        <translation>Aquí no hay semanas de {year:04d}.</translation>
    </message>
    <message>
        <source>Accepted: 1000 to 9000.</source>
        <translation>Se acepta: de 1000 a 9000.</translation>
    </message>
    <message>
        <source>There is no week {year:04d}-W{number:02d}.</source>
        <translation>No existe la semana {year:04d}-W{number:02d}.</translation>
    </message>
    <message>
        <source>The weeks of {year:04d} run from W01 to W{last}.</source>
        <translation>Las semanas de {year:04d} van de W01 a W{last}.</translation>
    </message>
    <message>
        <source>Week {week}: {comebacks} of {watched} jobs under watch is more than luck makes of these weeks&apos; average ({low} to {high}). Ask what was different.</source>
        <translation>Semana {week}: {comebacks} de {watched} trabajos en observación es más de lo que el azar produce de la media de estas semanas (de {low} a {high}). Pregunte qué fue distinto.</translation>
    </message>
    <message>
        <source>Week {week}: {comebacks} of {watched} jobs under watch is fewer than luck makes of these weeks&apos; average ({low} to {high}). Ask what was different.</source>
        <translation>Semana {week}: {comebacks} de {watched} trabajos en observación es menos de lo que el azar produce de la media de estas semanas (de {low} a {high}). Pregunte qué fue distinto.</translation>
    </message>
    <message>
        <source>A slow rise since about week {first}: no week need stand out, but together they look like twice as many comebacks as before. Ask what has changed since then.</source>
        <translation>Una subida lenta desde la semana {first}, más o menos: ninguna semana tiene por qué destacar, pero juntas parecen el doble de retornos que antes. Pregunte qué ha cambiado desde entonces.</translation>
    </message>
    <message>
        <source>In weeks {first} to {last} comebacks looked twice as many as before; the weeks since then do not carry it on.</source>
        <translation>En las semanas de {first} a {last} los retornos parecieron el doble que antes; las semanas desde entonces no lo continúan.</translation>
    </message>
    <message>
        <source>Figure</source>
        <translation>Cifra</translation>
    </message>
    <message>
        <source>How</source>
        <translation>Cómo</translation>
    </message>
    <message>
        <source>maybe</source>
        <translation>quizá</translation>
    </message>
    <message>
        <source>came back, not ours</source>
        <translation>volvió, no es nuestro</translation>
    </message>
    <message>
        <source>came back, cannot tell</source>
        <translation>volvió, no se sabe</translation>
    </message>
    <message>
        <source>came back after the window</source>
        <translation>volvió después del plazo</translation>
    </message>
    <message>
        <source>seen fine</source>
        <translation>visto bien</translation>
    </message>
    <message>
        <source>nothing heard</source>
        <translation>sin noticias</translation>
    </message>
    <message>
        <source>lost sight</source>
        <translation>perdido de vista</translation>
    </message>
    <message>
        <source>The year: no job is settled yet: {others}.</source>
        <translation>El año: todavía no hay ningún trabajo cerrado: {others}.</translation>
    </message>
    <message>
        <source>The year: no job is settled yet.</source>
        <translation>El año: todavía no hay ningún trabajo cerrado.</translation>
    </message>
    <message>
        <source>{back:.1%}, {low:.1%} to {high:.1%}</source>
        <translation>{back:.1%}, de {low:.1%} a {high:.1%}</translation>
    </message>
    <message>
        <source>too few to tell; {known}</source>
        <translation>demasiado pocos para decirlo; {known}</translation>
    </message>
    <message>
        <source>The year: {back:,} of {jobs} came back. Rate {rate}.</source>
        <translation>El año: volvieron {back:,} de {jobs}. Tasa: {rate}.</translation>
    </message>
    <message>
        <source>Not in it: {others}.</source>
        <translation>No están en ella: {others}.</translation>
    </message>
    <message>
        <source>1 job of the year came back already though its window is still open: the comeback counts in the week in which it came, and enters the rate when the window is over, with its quiet neighbours.</source>
        <translation>1 trabajo del año ya volvió, con su plazo aún abierto: el retorno cuenta en la semana en que llegó, y entra en la tasa cuando termine el plazo, con sus vecinos tranquilos.</translation>
    </message>
    <message>
        <source>{jobs} of the year came back already though their windows are still open: the comebacks count in the weeks in which they came, and enter the rate when these windows are over, with their quiet neighbours.</source>
        <translation>Volvieron ya, con su plazo aún abierto, del año: {jobs}; los retornos cuentan en las semanas en que llegaron, y entran en la tasa cuando terminen esos plazos, con sus vecinos tranquilos.</translation>
    </message>
    <message>
        <source>{jobs:,} open</source>
        <translation>{jobs:,} con el plazo abierto</translation>
    </message>
    <message>
        <source>{jobs:,} open and came back already</source>
        <translation>{jobs:,} con el plazo abierto y ya de vuelta</translation>
    </message>
    <message>
        <source>{jobs:,} waiting</source>
        <translation>{jobs:,} en espera</translation>
    </message>
    <message>
        <source>{jobs:,} lost sight of</source>
        <translation>{jobs:,} con el vehículo perdido de vista</translation>
    </message>
    <message>
        <source>{jobs:,} not ours</source>
        <translation>{jobs:,} por causa no nuestra</translation>
    </message>
    <message>
        <source>{jobs:,} of which nobody can tell</source>
        <translation>{jobs:,} de los que nadie sabe</translation>
    </message>
    <message>
        <source>Of {jobs} of the year left unproven, {came} came back{how_sure}.</source>
        <translation>De {jobs} del año que salieron sin probar, volvieron {came}{how_sure}.</translation>
    </message>
    <message>
        <source>Of {jobs} of the year left unproven, none came back{how_sure}.</source>
        <translation>De {jobs} del año que salieron sin probar, no volvió ninguno{how_sure}.</translation>
    </message>
    <message>
        <source>1 more is not settled.</source>
        <translation>1 más está sin decidir.</translation>
    </message>
    <message>
        <source>{more:,} more are not settled.</source>
        <translation>{more:,} más están sin decidir.</translation>
    </message>
    <message>
        <source>1 job of the year left unproven and came back already; it is not settled yet, and in no rate.</source>
        <translation>1 trabajo del año salió sin probar y ya volvió; aún no está cerrado, y no está en ninguna tasa.</translation>
    </message>
    <message>
        <source>{jobs} of the year left unproven, and {back} of them came back already; none of them is settled yet or in a rate.</source>
        <translation>Salieron sin probar, del año: {jobs}, y de ellos ya volvieron {back}; ninguno está cerrado aún ni en una tasa.</translation>
    </message>
    <message>
        <source>{jobs} of the year left unproven; none of them is settled yet.</source>
        <translation>Salidas del año sin probar: {jobs}; ninguna está cerrada todavía.</translation>
    </message>
    <message>
        <source> ({came:.1%}, {low:.1%} to {high:.1%})</source>
        <translation> ({came:.1%}, de {low:.1%} a {high:.1%})</translation>
    </message>
    <message>
        <source>, too few to tell: {known}</source>
        <translation>, demasiado pocos para decirlo: {known}</translation>
    </message>
    <message>
        <source>1 promised change is open, {late} of them late.</source>
        <translation>1 cambio prometido está abierto, {late} de ellos con retraso.</translation>
    </message>
    <message>
        <source>{changes} promised changes are open, {late} of them late.</source>
        <translation>{changes} cambios prometidos están abiertos, {late} de ellos con retraso.</translation>
    </message>
    <message>
        <source>Suppliers owe {currency}{amount:,.2f}, and {unknown} without an amount.</source>
        <translation>Los proveedores deben {currency}{amount:,.2f}, y {unknown} sin importe.</translation>
    </message>
    <message>
        <source>Suppliers owe {currency}{amount:,.2f}.</source>
        <translation>Los proveedores deben {currency}{amount:,.2f}.</translation>
    </message>
    <message>
        <source>{jobs}: the window probably ends within {days} days.</source>
        <translation>{jobs}: el plazo probablemente termina en {days} días.</translation>
    </message>
    <message>
        <source>{jobs}: ask the customer now how the car is (Windows, “Call due”); whom you ask must not depend on the answer you hope for.</source>
        <translation>{jobs}: pregunte ahora al cliente cómo va el vehículo (Plazos, “Llamar desde”); a quién pregunta no debe depender de la respuesta que espera.</translation>
    </message>
    <message>
        <source>The week</source>
        <translation>La semana</translation>
    </message>
    <message>
        <source>To act on</source>
        <translation>Por hacer</translation>
    </message>
    <message>
        <source>Nothing waits for anybody.</source>
        <translation>Nada espera a nadie.</translation>
    </message>
    <message>
        <source>Which</source>
        <translation>Cuáles</translation>
    </message>
    <message>
        <source>{jobs} and more: the sheet {sheet}</source>
        <translation>{jobs} y más: la hoja {sheet}</translation>
    </message>
    <message>
        <source>All: {sheet}</source>
        <translation>Todos: {sheet}</translation>
    </message>
    <message>
        <source>All of them, on the sheet {sheet}</source>
        <translation>Todos ellos, en la hoja {sheet}</translation>
    </message>
    <message>
        <source>Somebody could have been hurt</source>
        <translation>Alguien pudo resultar herido</translation>
    </message>
    <message>
        <source>Nobody said whether somebody could have been hurt</source>
        <translation>Nadie ha dicho si alguien pudo resultar herido</translation>
    </message>
    <message>
        <source>To be judged, of any week</source>
        <translation>Por juzgar, de cualquier semana</translation>
    </message>
    <message>
        <source>To be asked by {day}</source>
        <translation>Por preguntar hasta {day}</translation>
    </message>
    <message>
        <source>The window probably ends within {days} days of {day}</source>
        <translation>El plazo acaba probablemente en {days} días desde el {day}</translation>
    </message>
    <message>
        <source>A promised change is late</source>
        <translation>Un cambio prometido va con retraso</translation>
    </message>
    <message>
        <source>A supplier owes for it</source>
        <translation>Un proveedor debe algo por él</translation>
    </message>
</context>
</TS>
