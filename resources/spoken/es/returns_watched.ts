<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es">
<context>
    <name></name>
    <message>
        <source>Nothing was judged.</source>
        <translation>No se juzgó nada.</translation>
    </message>
    <message>
        <source>Judge the return “{judgement}”</source>
        <translation>Juzgar la vuelta “{judgement}”</translation>
    </message>
    <message>
        <source>Take the judgement back</source>
        <translation>Retirar el juicio</translation>
    </message>
    <message>
        <source>Say why it came back</source>
        <translation>Decir por qué volvió</translation>
    </message>
    <message>
        <source>Name the cause of the return</source>
        <translation>Nombrar la causa de la vuelta</translation>
    </message>
    <message>
        <source>Promise a change</source>
        <translation>Prometer un cambio</translation>
    </message>
    <message>
        <source>Say these are two vehicles</source>
        <translation>Decir que son dos vehículos</translation>
    </message>
    <message>
        <source>Say it is the same vehicle</source>
        <translation>Decir que es el mismo vehículo</translation>
    </message>
    <message>
        <source>Nobody is named who judges it “{judgement}”.</source>
        <translation>No se nombra a nadie que la juzgue “{judgement}”.</translation>
    </message>
    <message>
        <source>Say who is here, then judge it.</source>
        <translation>Diga quién está aquí y luego júzguela.</translation>
    </message>
    <message>
        <source>“{typed}” is not one of the causes of a return.</source>
        <translation>“{typed}” no es una de las causas de una vuelta.</translation>
    </message>
    <message>
        <source>The cost is not accepted.</source>
        <translation>El coste no se acepta.</translation>
    </message>
    <message>
        <source>Accepted: 0 to 1,000,000.00.</source>
        <translation>Se acepta: de 0 a 1,000,000.00.</translation>
    </message>
    <message>
        <source>“{typed}” is not a judgement.</source>
        <translation>“{typed}” no es un juicio.</translation>
    </message>
    <message>
        <source>Accepted: {accepted}.</source>
        <translation>Se acepta: {accepted}.</translation>
    </message>
    <message>
        <source>Ask everyone here, in this order: whom you ask must not depend on the answer you hope for, or the shop&apos;s numbers lie. This is a list only; no message is sent.</source>
        <translation>Pregunte a todos los de aquí, en este orden: a quién se pregunta no debe depender de la respuesta que se espera, o las cifras del taller mienten. Esto es solo una lista; no se envía ningún mensaje.</translation>
    </message>
    <message>
        <source>no number written down</source>
        <translation>no hay teléfono anotado</translation>
    </message>
    <message>
        <source>Not reached on {day}.</source>
        <translation>No localizado el {day}.</translation>
    </message>
    <message>
        <source>what it was here for</source>
        <translation>aquello por lo que vino</translation>
    </message>
    <message>
        <source>Has it happened again since {day}: {about}? If so, when and how often? Is anything else the matter? What does the odometer say today?</source>
        <translation>¿Ha vuelto a pasar desde el {day}: {about}? Si es así, ¿cuándo y con qué frecuencia? ¿Hay alguna otra cosa que vaya mal? ¿Qué marca hoy el cuentakilómetros?</translation>
    </message>
    <message>
        <source>Told: the same trouble, on {day}</source>
        <translation>Contado: el mismo problema, el {day}</translation>
    </message>
    <message>
        <source>have the car in, or judge under It&apos;s Back what was told</source>
        <translation>haga venir el vehículo, o juzgue en Ha vuelto lo que se contó</translation>
    </message>
    <message>
        <source>It came now and then, was not proved under its conditions, and left {days} ago.</source>
        <translation>Aparecía de vez en cuando, no se probó en sus condiciones y salió hace {days}.</translation>
    </message>
    <message>
        <source>Its window ends: {when}. Nothing was heard since.</source>
        <translation>Su plazo termina: {when}. Sin noticias desde entonces.</translation>
    </message>
    <message>
        <source>time only: odometer told, not read</source>
        <translation>solo tiempo: cuentakilómetros contado, no leído</translation>
    </message>
    <message>
        <source>time only: odometer estimated, not read</source>
        <translation>solo tiempo: cuentakilómetros estimado, no leído</translation>
    </message>
    <message>
        <source>not decided: odometer told, not read</source>
        <translation>sin decidir: cuentakilómetros contado, no leído</translation>
    </message>
    <message>
        <source>not decided: odometer estimated, not read</source>
        <translation>sin decidir: cuentakilómetros estimado, no leído</translation>
    </message>
    <message>
        <source>Not done yet; no day was named.</source>
        <translation>Aún sin hacer; no se nombró ningún día.</translation>
    </message>
    <message>
        <source>Not done, 1 day late.</source>
        <translation>Sin hacer, con 1 día de retraso.</translation>
    </message>
    <message>
        <source>Not done, {days} days late.</source>
        <translation>Sin hacer, con {days} días de retraso.</translation>
    </message>
    <message>
        <source>Not done yet, due on {due}.</source>
        <translation>Aún sin hacer, para el {due}.</translation>
    </message>
    <message>
        <source>Done on {day}.</source>
        <translation>Hecho el {day}.</translation>
    </message>
    <message>
        <source>Done on {day}. Look now whether it helped, then empty that day.</source>
        <translation>Hecho el {day}. Mire ahora si ayudó y luego vacíe ese día.</translation>
    </message>
    <message>
        <source>Done on {day}, to be looked at on {look_on}.</source>
        <translation>Hecho el {day}; hay que mirarlo el {look_on}.</translation>
    </message>
    <message>
        <source>“{typed}” is not a day.</source>
        <translation>“{typed}” no es un día.</translation>
    </message>
    <message>
        <source>Type it like 2026-11-16.</source>
        <translation>Escríbalo como 2026-11-16.</translation>
    </message>
    <message>
        <source>{number} is still in the shop.</source>
        <translation>{number} sigue en el taller.</translation>
    </message>
    <message>
        <source>Ask once the car has left.</source>
        <translation>Pregunte cuando el vehículo haya salido.</translation>
    </message>
    <message>
        <source>{day} is not a day on which this customer can have been asked.</source>
        <translation>{day} no es un día en que se haya podido preguntar a este cliente.</translation>
    </message>
    <message>
        <source>Accepted: {left_at} to {today}.</source>
        <translation>Se acepta: de {left_at} a {today}.</translation>
    </message>
    <message>
        <source>Note that the customer says “{answer}”</source>
        <translation>Anotar que el cliente dice “{answer}”</translation>
    </message>
    <message>
        <source>Change the customer&apos;s answer</source>
        <translation>Cambiar la respuesta del cliente</translation>
    </message>
    <message>
        <source>Say how it became known</source>
        <translation>Decir cómo se supo</translation>
    </message>
    <message>
        <source>Write the odometer as told</source>
        <translation>Escribir el cuentakilómetros contado</translation>
    </message>
    <message>
        <source>Write down what the customer says</source>
        <translation>Anotar lo que dice el cliente</translation>
    </message>
    <message>
        <source>Take the answer out</source>
        <translation>Quitar la respuesta</translation>
    </message>
    <message>
        <source>What was told here is judged “{judgement}”; without it that would count anew.</source>
        <translation>Lo que se contó aquí está juzgado “{judgement}”; sin ello contaría de nuevo.</translation>
    </message>
    <message>
        <source>Nothing was changed.</source>
        <translation>No se cambió nada.</translation>
    </message>
    <message>
        <source>Take the judgement back first, under It&apos;s Back.</source>
        <translation>Retire primero el juicio, en Ha vuelto.</translation>
    </message>
    <message>
        <source>“{typed}” is no way to know of it.</source>
        <translation>“{typed}” no es una manera de saberlo.</translation>
    </message>
    <message>
        <source>“{typed}” is no answer.</source>
        <translation>“{typed}” no es una respuesta.</translation>
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
        <source>told {day}</source>
        <translation>contado {day}</translation>
    </message>
    <message>
        <source>on paper {day}</source>
        <translation>en papel {day}</translation>
    </message>
    <message>
        <source>Lower than when the car was here ({had_here:,} {unit}). Was it heard right?</source>
        <translation>Menos que cuando el vehículo estuvo aquí ({had_here:,} {unit}). ¿Se oyó bien?</translation>
    </message>
    <message>
        <source>not compared</source>
        <translation>sin comparar</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>no dicho</translation>
    </message>
    <message>
        <source>too few jobs to tell</source>
        <translation>demasiado pocos trabajos para decirlo</translation>
    </message>
    <message>
        <source>no window is over yet</source>
        <translation>ningún plazo ha terminado aún</translation>
    </message>
    <message>
        <source>too few others did the same kind of work</source>
        <translation>demasiado pocos otros hicieron la misma clase de trabajo</translation>
    </message>
    <message>
        <source>no job counted</source>
        <translation>ningún trabajo contado</translation>
    </message>
    <message>
        <source>more than luck explains</source>
        <translation>más de lo que explica el azar</translation>
    </message>
    <message>
        <source>fewer than luck explains</source>
        <translation>menos de lo que explica el azar</translation>
    </message>
    <message>
        <source>unusual, yet may be luck</source>
        <translation>inusual, pero puede ser azar</translation>
    </message>
    <message>
        <source>within what luck gives</source>
        <translation>dentro de lo que da el azar</translation>
    </message>
    <message>
        <source>the same work</source>
        <translation>el mismo trabajo</translation>
    </message>
    <message>
        <source>the same work and its system</source>
        <translation>el mismo trabajo y su sistema</translation>
    </message>
    <message>
        <source>the same work, its system and all work</source>
        <translation>el mismo trabajo, su sistema y todo el trabajo</translation>
    </message>
    <message>
        <source>anything from {low:.0%} to {high:.0%}</source>
        <translation>cualquier cosa de {low:.0%} a {high:.0%}</translation>
    </message>
    <message>
        <source>{groups} are compared at once. If all were alike, one of them would still look out of line by luck with a chance of {chance:.0%}.</source>
        <translation>Se comparan {groups} a la vez. Si todos fueran iguales, uno de ellos parecería aun así fuera de lo normal por azar con una probabilidad del {chance:.0%}.</translation>
    </message>
    <message>
        <source>No job was handed over with a cause and a correction in that time.</source>
        <translation>En ese tiempo no se entregó ningún trabajo con una causa y una corrección.</translation>
    </message>
    <message>
        <source>As of {today}. The shop&apos;s window: {promise}; a job can carry its own. A window still open is no success, and a visit that nobody has judged counts as neither.</source>
        <translation>A fecha de {today}. El plazo del taller: {promise}; un trabajo puede llevar el suyo propio. Un plazo aún abierto no es un éxito, y una visita que nadie ha juzgado no cuenta ni como una cosa ni como la otra.</translation>
    </message>
    <message>
        <source>Lost sight of: the car is gone, or was sold where a sale ends the window. It is no success, and the curve watches it until that day.</source>
        <translation>Perdido de vista: el vehículo ya no está, o se vendió donde una venta termina el plazo. No es un éxito, y la curva lo observa hasta ese día.</translation>
    </message>
    <message>
        <source>Not ours: it came back, and a person said that the reason is not ours. Such a job is in no rate, neither as a comeback nor as a success.</source>
        <translation>No es nuestro: volvió, y una persona dijo que la razón no es nuestra. Un trabajo así no está en ninguna tasa, ni como retorno ni como éxito.</translation>
    </message>
    <message>
        <source>Cannot tell: it came, and a person judged that nobody can tell what it was. That is neither a comeback nor a success.</source>
        <translation>No se sabe: vino, y una persona juzgó que nadie puede decir qué fue. Eso no es ni un retorno ni un éxito.</translation>
    </message>
    <message>
        <source>No news is not good news: a job whose window ended quietly counts as well here, though nobody may have heard of its car since. The week&apos;s book says of how many.</source>
        <translation>No tener noticias no es una buena noticia: un trabajo cuyo plazo terminó tranquilo cuenta aquí como bueno, aunque quizá nadie haya sabido de su vehículo desde entonces. El libro de la semana dice de cuántos.</translation>
    </message>
    <message>
        <source>{jobs} came back with a reason after the window had ended: no comeback here, and not the same as all well.</source>
        <translation>{jobs} con vuelta por una razón después de terminado el plazo: aquí no es retorno, y no es lo mismo que todo bien.</translation>
    </message>
    <message>
        <source>Comparing is no experiment: who compares may also work more carefully otherwise, and some work has nothing to compare.</source>
        <translation>Comparar no es un experimento: quien compara quizá también trabaje con más cuidado en lo demás, y en algunos trabajos no hay nada que comparar.</translation>
    </message>
    <message>
        <source>A job counts under each name that it has, so the groups can share jobs.</source>
        <translation>Un trabajo cuenta con cada nombre que tiene, así que los grupos pueden compartir trabajos.</translation>
    </message>
    <message>
        <source>{compared} “More” or “fewer than luck explains” allows for that.</source>
        <translation>{compared} “Más” o “menos de lo que explica el azar” lo tiene en cuenta.</translation>
    </message>
    <message>
        <source>None came back by day {day}, to which 1 was watched; so few could hide a share of up to {most:.1%}.</source>
        <translation>Ninguno volvió hasta el día {day}, hasta el que se observó 1; tan pocos podrían ocultar una proporción de hasta {most:.1%}.</translation>
    </message>
    <message>
        <source>None came back by day {day}, to which {jobs} were watched; so few could hide a share of up to {most:.1%}.</source>
        <translation>Ninguno volvió hasta el día {day}, hasta el que se observaron {jobs}; tan pocos podrían ocultar una proporción de hasta {most:.1%}.</translation>
    </message>
    <message>
        <source>by day {day}</source>
        <translation>hasta el día {day}</translation>
    </message>
    <message>
        <source>in all</source>
        <translation>en total</translation>
    </message>
    <message>
        <source>Came back {when}, open windows watched as far as they go: {share:.1%} ({low:.1%} to {high:.1%}).</source>
        <translation>Volvieron {when}, con los plazos abiertos observados hasta donde llegan: {share:.1%} (de {low:.1%} a {high:.1%}).</translation>
    </message>
    <message>
        <source>1 job</source>
        <translation>1 trabajo</translation>
    </message>
    <message>
        <source>{number} jobs</source>
        <translation>{number} trabajos</translation>
    </message>
    <message>
        <source>{name}: {jobs}, {still_open} open, {waiting} waiting</source>
        <translation>{name}: {jobs}; abiertos: {still_open}; en espera: {waiting}</translation>
    </message>
    <message>
        <source>, {lost_sight} lost sight of</source>
        <translation>; perdidos de vista: {lost_sight}</translation>
    </message>
    <message>
        <source>, {not_ours} not ours</source>
        <translation>; no nuestros: {not_ours}</translation>
    </message>
    <message>
        <source>{counts}, {cannot_tell} nobody can tell</source>
        <translation>{counts}; no se sabe: {cannot_tell}</translation>
    </message>
    <message>
        <source>{said}; no window is over yet.</source>
        <translation>{said}; ningún plazo ha terminado aún.</translation>
    </message>
    <message>
        <source>of {settled} settled {comebacks} came back</source>
        <translation>cerrados: {settled}; de ellos volvieron: {comebacks}</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguno</translation>
    </message>
    <message>
        <source>{came}: {rate:.1%} ({low:.1%} to {high:.1%})</source>
        <translation>{came}; tasa: {rate:.1%} (de {low:.1%} a {high:.1%})</translation>
    </message>
    <message>
        <source>{mean:.1%} is likely once all are weighed</source>
        <translation>{mean:.1%} es lo probable una vez ponderados todos</translation>
    </message>
    <message>
        <source>{expected:.1f} expected of such work elsewhere, where luck alone gives {fewest} to {most} (held against: {held_against})</source>
        <translation>esperados {expected:.1f} según el mismo trabajo en otras partes, donde el azar por sí solo da de {fewest} a {most} (comparado con: {held_against})</translation>
    </message>
    <message>
        <source>Nothing was heard of any of these {settled:,} since: no news is not good news.</source>
        <translation>De ninguno de estos {settled:,} hubo noticias desde entonces: no tener noticias no es una buena noticia.</translation>
    </message>
    <message>
        <source>{rate:.1%}, {low:.1%} to {high:.1%}</source>
        <translation>{rate:.1%}, de {low:.1%} a {high:.1%}</translation>
    </message>
    <message>
        <source>Of {unheard:,} of these {settled:,} nothing was heard since, and the rate takes them for well; among those heard of, {back} of {heard:,} came back ({rate}). No news is not good news: the truth probably lies between the two.</source>
        <translation>De {unheard:,} de estos {settled:,} no hubo noticias desde entonces, y la tasa los toma por buenos; de los {heard:,} de los que se supo algo volvieron: {back} ({rate}). No tener noticias no es una buena noticia: la verdad está probablemente entre las dos.</translation>
    </message>
    <message>
        <source>customer says it&apos;s the same</source>
        <translation>el cliente dice que es lo mismo</translation>
    </message>
    <message>
        <source>same symptom: {symptom}</source>
        <translation>mismo síntoma: {symptom}</translation>
    </message>
    <message>
        <source>same system: {system}</source>
        <translation>mismo sistema: {system}</translation>
    </message>
    <message>
        <source>same code: {code}</source>
        <translation>mismo código: {code}</translation>
    </message>
    <message>
        <source>related code: {then} and {now}</source>
        <translation>código emparentado: {then} y {now}</translation>
    </message>
    <message>
        <source>same part kind: {part_kind}</source>
        <translation>misma clase de pieza: {part_kind}</translation>
    </message>
    <message>
        <source>same position: {place}</source>
        <translation>misma posición: {place}</translation>
    </message>
    <message>
        <source>{came_on} to {left_on}, {odometer}</source>
        <translation>de {came_on} a {left_on}, {odometer}</translation>
    </message>
    <message>
        <source>{came_on} to now, {odometer}</source>
        <translation>de {came_on} a hoy, {odometer}</translation>
    </message>
    <message>
        <source>In the shop</source>
        <translation>En el taller</translation>
    </message>
    <message>
        <source>Concern</source>
        <translation>Queja</translation>
    </message>
    <message>
        <source>Happens</source>
        <translation>Ocurre</translation>
    </message>
    <message>
        <source>nobody asked</source>
        <translation>nadie preguntó</translation>
    </message>
    <message>
        <source>Codes</source>
        <translation>Códigos</translation>
    </message>
    <message>
        <source>Cause</source>
        <translation>Causa</translation>
    </message>
    <message>
        <source>not caught</source>
        <translation>no reproducida</translation>
    </message>
    <message>
        <source>not named</source>
        <translation>sin nombrar</translation>
    </message>
    <message>
        <source>Correction</source>
        <translation>Corrección</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation>Piezas</translation>
    </message>
    <message>
        <source>none written down</source>
        <translation>ninguna anotada</translation>
    </message>
    <message>
        <source>Proved</source>
        <translation>Probado</translation>
    </message>
    <message>
        <source>Declined</source>
        <translation>No aceptado</translation>
    </message>
    <message>
        <source>nobody said</source>
        <translation>nadie lo dijo</translation>
    </message>
    <message>
        <source>odometer not read</source>
        <translation>cuentakilómetros no leído</translation>
    </message>
    <message>
        <source> (the customer says: the same again)</source>
        <translation> (el cliente dice: lo mismo otra vez)</translation>
    </message>
    <message>
        <source>not written</source>
        <translation>sin escribir</translation>
    </message>
    <message>
        <source>never: {conditions}</source>
        <translation>nunca: {conditions}</translation>
    </message>
    <message>
        <source>read, none</source>
        <translation>leídos, ninguno</translation>
    </message>
    <message>
        <source>{found}; after the repair: {after}</source>
        <translation>{found}; después de la reparación: {after}</translation>
    </message>
    <message>
        <source>{found}; after the repair: read, none</source>
        <translation>{found}; después de la reparación: leídos, ninguno</translation>
    </message>
    <message>
        <source>{found}; after the repair: not read</source>
        <translation>{found}; después de la reparación: sin leer</translation>
    </message>
    <message>
        <source> Done by {technician}.</source>
        <translation> Hecho por {technician}.</translation>
    </message>
    <message>
        <source>off {number}</source>
        <translation>desmontada {number}</translation>
    </message>
    <message>
        <source>on {number}</source>
        <translation>montada {number}</translation>
    </message>
    <message>
        <source>origin not said</source>
        <translation>procedencia no dicha</translation>
    </message>
    <message>
        <source>from {supplier}</source>
        <translation>de {supplier}</translation>
    </message>
    <message>
        <source>lot {lot}</source>
        <translation>lote {lot}</translation>
    </message>
    <message>
        <source>not fitted</source>
        <translation>no instalada</translation>
    </message>
    <message>
        <source>taken back</source>
        <translation>retirado</translation>
    </message>
    <message>
        <source>Judged “{judgement}”</source>
        <translation>Juzgado “{judgement}”</translation>
    </message>
    <message>
        <source>judged “{judgement}”</source>
        <translation>juzgado “{judgement}”</translation>
    </message>
    <message>
        <source>judged the same</source>
        <translation>juzgado igual</translation>
    </message>
    <message>
        <source>revised to “{judgement}”</source>
        <translation>cambiado a “{judgement}”</translation>
    </message>
    <message>
        <source>cause “{cause}”</source>
        <translation>causa “{cause}”</translation>
    </message>
    <message>
        <source>cause taken out</source>
        <translation>causa quitada</translation>
    </message>
    <message>
        <source> by {by}</source>
        <translation> por {by}</translation>
    </message>
    <message>
        <source> on {on}</source>
        <translation> el {on}</translation>
    </message>
    <message>
        <source>same symptom</source>
        <translation>mismo síntoma</translation>
    </message>
    <message>
        <source>same system</source>
        <translation>mismo sistema</translation>
    </message>
    <message>
        <source>same part</source>
        <translation>misma pieza</translation>
    </message>
    <message>
        <source>from our hands</source>
        <translation>de nuestras manos</translation>
    </message>
    <message>
        <source>foretold</source>
        <translation>anunciado</translation>
    </message>
    <message>
        <source>other hands</source>
        <translation>otras manos</translation>
    </message>
    <message>
        <source>unrelated</source>
        <translation>sin relación</translation>
    </message>
    <message>
        <source>cannot tell</source>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>The car does again what it came for.</source>
        <translation>El vehículo hace otra vez aquello por lo que vino.</translation>
    </message>
    <message>
        <source>Told in other words, but it is the system we worked on.</source>
        <translation>Contado con otras palabras, pero es el sistema en el que trabajamos.</translation>
    </message>
    <message>
        <source>The part we fitted failed or did not sit right.</source>
        <translation>La pieza que montamos falló o no asentó bien.</translation>
    </message>
    <message>
        <source>New trouble in something we touched, moved or had to get past.</source>
        <translation>Problema nuevo en algo que tocamos, movimos o tuvimos que apartar.</translation>
    </message>
    <message>
        <source>The work that was declined did what we had said it would.</source>
        <translation>El trabajo que no se aceptó hizo lo que habíamos dicho que haría.</translation>
    </message>
    <message>
        <source>Someone else worked on it, or it was in an accident, since.</source>
        <translation>Otra persona trabajó en él, o tuvo un accidente, desde entonces.</translation>
    </message>
    <message>
        <source>A new concern that has nothing to do with our repair.</source>
        <translation>Una queja nueva que no tiene nada que ver con nuestra reparación.</translation>
    </message>
    <message>
        <source>Nobody can say, and it stays written down as that.</source>
        <translation>Nadie puede decirlo, y así queda escrito.</translation>
    </message>
    <message>
        <source>looked in the wrong place</source>
        <translation>se buscó en el sitio equivocado</translation>
    </message>
    <message>
        <source>The part we took off was good.</source>
        <translation>La pieza que desmontamos estaba bien.</translation>
    </message>
    <message>
        <source>right, but not the whole</source>
        <translation>acertado, pero no era todo</translation>
    </message>
    <message>
        <source>A second fault or the root stayed.</source>
        <translation>Quedó una segunda avería o la raíz.</translation>
    </message>
    <message>
        <source>wrong part fitted</source>
        <translation>pieza equivocada montada</translation>
    </message>
    <message>
        <source>The part was not the one for this car.</source>
        <translation>La pieza no era la de este vehículo.</translation>
    </message>
    <message>
        <source>part died early</source>
        <translation>la pieza falló pronto</translation>
    </message>
    <message>
        <source>The part was right and failed too soon.</source>
        <translation>La pieza era la correcta y falló demasiado pronto.</translation>
    </message>
    <message>
        <source>fitted badly</source>
        <translation>mal montado</translation>
    </message>
    <message>
        <source>Torque, clamp, seal, which way round, connector.</source>
        <translation>Par de apriete, abrazadera, junta, sentido de montaje, conector.</translation>
    </message>
    <message>
        <source>disturbed a neighbour</source>
        <translation>se alteró lo de al lado</translation>
    </message>
    <message>
        <source>Something beside the work was upset.</source>
        <translation>Se descompuso algo junto al trabajo.</translation>
    </message>
    <message>
        <source>set-up not done</source>
        <translation>puesta a punto sin hacer</translation>
    </message>
    <message>
        <source>Learning, coding, bleeding or alignment left.</source>
        <translation>Faltó aprendizaje, codificación, purga o alineación.</translation>
    </message>
    <message>
        <source>left unproven</source>
        <translation>quedó sin probar</translation>
    </message>
    <message>
        <source>A full proof would have shown it here.</source>
        <translation>Una prueba completa lo habría mostrado aquí.</translation>
    </message>
    <message>
        <source>sublet work</source>
        <translation>trabajo encargado fuera</translation>
    </message>
    <message>
        <source>It was done for us by someone else.</source>
        <translation>Nos lo hizo otro.</translation>
    </message>
    <message>
        <source>badly told</source>
        <translation>mal explicado</translation>
    </message>
    <message>
        <source>A limit or an advice was not said.</source>
        <translation>No se dijo un límite o un consejo.</translation>
    </message>
    <message>
        <source>other hands or use after</source>
        <translation>otras manos o uso posterior</translation>
    </message>
    <message>
        <source>What happened after it left us.</source>
        <translation>Lo que pasó después de salir de aquí.</translation>
    </message>
    <message>
        <source>bad information</source>
        <translation>información errónea</translation>
    </message>
    <message>
        <source>A wrong diagram, figure or part number.</source>
        <translation>Un esquema, un valor o un número de pieza equivocado.</translation>
    </message>
    <message>
        <source>new and unrelated</source>
        <translation>nuevo y sin relación</translation>
    </message>
    <message>
        <source>Not ours, and not to be known before.</source>
        <translation>No es nuestro, y antes no se podía saber.</translation>
    </message>
    <message>
        <source>Nobody can say why.</source>
        <translation>Nadie puede decir por qué.</translation>
    </message>
    <message>
        <source>{first_by} did the repair on {earlier} and judged this return. Should someone else look at it too?</source>
        <translation>{first_by} hizo la reparación de {earlier} y juzgó esta vuelta. ¿Debería mirarla también otra persona?</translation>
    </message>
    <message>
        <source>It is judged “{judgement}”. </source>
        <translation>Está juzgada “{judgement}”. </translation>
    </message>
    <message>
        <source>{judged}{cost}As two vehicles it leaves the list, the rates and the costs; what is written stays kept. Are {earlier} and {later} two vehicles?</source>
        <translation>{judged}{cost}Como dos vehículos sale de la lista, de las tasas y de los costes; lo escrito se conserva. ¿Son {earlier} y {later} dos vehículos?</translation>
    </message>
    <message>
        <source>{said} These are two vehicles: it is no return, and nothing counts.</source>
        <translation>{said} Son dos vehículos: no es una vuelta, y nada cuenta.</translation>
    </message>
    <message>
        <source>Nobody has judged it yet. What is it?</source>
        <translation>Nadie la ha juzgado aún. ¿Qué es?</translation>
    </message>
    <message>
        <source>{said} It waits for a judgement again. What is it?</source>
        <translation>{said} Espera otra vez un juicio. ¿Qué es?</translation>
    </message>
    <message>
        <source> Second look: {by_and_on}.</source>
        <translation> Segunda mirada: {by_and_on}.</translation>
    </message>
    <message>
        <source>It is not counted as a comeback.</source>
        <translation>No se cuenta como retorno.</translation>
    </message>
    <message>
        <source>It stays written down and is not counted: its cause is not ours.</source>
        <translation>Queda escrita y no se cuenta: su causa no es nuestra.</translation>
    </message>
    <message>
        <source>It is not counted: it lies beyond the window.</source>
        <translation>No se cuenta: está fuera del plazo.</translation>
    </message>
    <message>
        <source>It counts as a comeback.</source>
        <translation>Cuenta como retorno.</translation>
    </message>
    <message>
        <source>Due on</source>
        <translation>Para el</translation>
    </message>
    <message>
        <source>Done on</source>
        <translation>Hecho el</translation>
    </message>
    <message>
        <source>Look on whether it helped</source>
        <translation>Mirar si ayudó el</translation>
    </message>
    <message>
        <source>Say what it is as well</source>
        <translation>Decir qué es además</translation>
    </message>
    <message>
        <source>Name what helped</source>
        <translation>Nombrar qué contribuyó</translation>
    </message>
    <message>
        <source>Write the evidence</source>
        <translation>Escribir en qué se apoya</translation>
    </message>
    <message>
        <source>Write the first repairer&apos;s view</source>
        <translation>Escribir la opinión del primer reparador</translation>
    </message>
    <message>
        <source>Say whether it was dangerous</source>
        <translation>Decir si fue peligroso</translation>
    </message>
    <message>
        <source>There is no judgement to confirm yet.</source>
        <translation>Aún no hay ningún juicio que confirmar.</translation>
    </message>
    <message>
        <source>Judge the return first.</source>
        <translation>Juzgue primero la vuelta.</translation>
    </message>
    <message>
        <source>Nobody is named at the desk.</source>
        <translation>No hay nadie nombrado en el puesto.</translation>
    </message>
    <message>
        <source>Choose who is here, then press it again.</source>
        <translation>Elija quién está aquí y vuelva a pulsarlo.</translation>
    </message>
    <message>
        <source>{who} judged this return.</source>
        <translation>{who} juzgó esta vuelta.</translation>
    </message>
    <message>
        <source>A second look takes a second person.</source>
        <translation>Una segunda mirada requiere una segunda persona.</translation>
    </message>
    <message>
        <source>Confirm the judgement</source>
        <translation>Confirmar el juicio</translation>
    </message>
    <message>
        <source>Take the second look back</source>
        <translation>Retirar la segunda mirada</translation>
    </message>
    <message>
        <source>The hours are not accepted.</source>
        <translation>Las horas no se aceptan.</translation>
    </message>
    <message>
        <source>Accepted: 0 to {most:,}.</source>
        <translation>Se acepta: de 0 a {most:,}.</translation>
    </message>
    <message>
        <source>Write the hours of the return</source>
        <translation>Escribir las horas de la vuelta</translation>
    </message>
    <message>
        <source>“{name}” is no part of the cost of a return.</source>
        <translation>“{name}” no es una parte del coste de una vuelta.</translation>
    </message>
    <message>
        <source>The amount is not accepted.</source>
        <translation>El importe no se acepta.</translation>
    </message>
    <message>
        <source>Write the cost of the return: {amount}</source>
        <translation>Escribir el coste de la vuelta: {amount}</translation>
    </message>
    <message>
        <source>Name who changes it</source>
        <translation>Nombrar quién lo cambia</translation>
    </message>
    <message>
        <source>“{name}” is no day of a promise.</source>
        <translation>“{name}” no es un día de una promesa.</translation>
    </message>
    <message>
        <source>{day} has not come yet.</source>
        <translation>{day} aún no ha llegado.</translation>
    </message>
    <message>
        <source>Write the day on which it was done.</source>
        <translation>Escriba el día en que se hizo.</translation>
    </message>
    <message>
        <source>{day} is not accepted.</source>
        <translation>{day} no se acepta.</translation>
    </message>
    <message>
        <source>Accepted: {first} to {last}.</source>
        <translation>Se acepta: de {first} a {last}.</translation>
    </message>
    <message>
        <source>Set the day of a change: {which_day}</source>
        <translation>Fijar el día de un cambio: {which_day}</translation>
    </message>
    <message>
        <source>days</source>
        <translation>días</translation>
    </message>
    <message>
        <source>months</source>
        <translation>meses</translation>
    </message>
    <message>
        <source>miles</source>
        <translation>millas</translation>
    </message>
    <message>
        <source>A window of {number} {units} cannot be kept.</source>
        <translation>Un plazo de {number} {units} no se puede guardar.</translation>
    </message>
    <message>
        <source>Accepted: 1 to {most:,} {units}, or nothing for no such limit.</source>
        <translation>Se acepta: de 1 a {most:,} {units}, o nada si no hay ese límite.</translation>
    </message>
    <message>
        <source>Days or months?</source>
        <translation>¿Días o meses?</translation>
    </message>
    <message>
        <source>Say one of them; the other stays empty.</source>
        <translation>Diga uno de los dos; el otro queda vacío.</translation>
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
        <source>calendar month</source>
        <translation>mes de calendario</translation>
    </message>
    <message>
        <source>calendar months</source>
        <translation>meses de calendario</translation>
    </message>
    <message>
        <source>day</source>
        <translation>día</translation>
    </message>
    <message>
        <source>mile</source>
        <translation>milla</translation>
    </message>
    <message>
        <source>{time} or {far}, whichever ends first</source>
        <translation>{time} o {far}, lo que termine antes</translation>
    </message>
    <message>
        <source>{time} and {far}, until both have ended</source>
        <translation>{time} y {far}, hasta que ambos hayan terminado</translation>
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
        <source>, said as {months}</source>
        <translation>, dicha como {months}</translation>
    </message>
    <message>
        <source>It was given to this job alone{said_as}.</source>
        <translation>Se dio solo a este trabajo{said_as}.</translation>
    </message>
    <message>
        <source>It is the shop&apos;s promise{said_as}.</source>
        <translation>Es la promesa del taller{said_as}.</translation>
    </message>
    <message>
        <source>It is the promise for {part_kind}{said_as}.</source>
        <translation>Es la promesa para {part_kind}{said_as}.</translation>
    </message>
    <message>
        <source>{later} cannot be a return of {earlier}.</source>
        <translation>{later} no puede ser una vuelta de {earlier}.</translation>
    </message>
    <message>
        <source>A return is a later visit of the same vehicle, after the hand-over.</source>
        <translation>Una vuelta es una visita posterior del mismo vehículo, después de la entrega.</translation>
    </message>
    <message>
        <source>That job is no longer there: it was undone or taken out.</source>
        <translation>Ese trabajo ya no está: se deshizo o se quitó.</translation>
    </message>
    <message>
        <source>“{typed}” is no kind of money owed.</source>
        <translation>“{typed}” no es una clase de dinero debido.</translation>
    </message>
    <message>
        <source>Write down what is owed: {what}</source>
        <translation>Anotar lo que se debe: {what}</translation>
    </message>
    <message>
        <source>Write the amount that is owed</source>
        <translation>Escribir el importe que se debe</translation>
    </message>
    <message>
        <source>Write the next step</source>
        <translation>Escribir el próximo paso</translation>
    </message>
    <message>
        <source>“{typed}” is no state.</source>
        <translation>“{typed}” no es un estado.</translation>
    </message>
    <message>
        <source>Say that it is {state}</source>
        <translation>Decir que está {state}</translation>
    </message>
    <message>
        <source>Take out what is owed</source>
        <translation>Quitar lo que se debe</translation>
    </message>
    <message>
        <source>core</source>
        <translation>casco</translation>
    </message>
    <message>
        <source>claim</source>
        <translation>reclamación</translation>
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
        <source>distance</source>
        <translation>distancia</translation>
    </message>
    <message>
        <source>{miles:,} miles ({kilometres})</source>
        <translation>{miles:,} millas ({kilometres})</translation>
    </message>
    <message>
        <source>“{typed}” is not accepted for {field}.</source>
        <translation>“{typed}” no se acepta para {field}.</translation>
    </message>
    <message>
        <source>Accepted: a whole number, such as 12,000, or nothing for no such limit.</source>
        <translation>Se acepta: un número entero, como 12,000, o nada si no hay ese límite.</translation>
    </message>
    <message>
        <source>Proof {level}, {word}: {means} It does not stand in for what was proved before the car left.</source>
        <translation>Prueba {level}, {word}: {means} No sustituye a lo que se probó antes de que saliera el vehículo.</translation>
    </message>
    <message>
        <source>Work given out</source>
        <translation>Trabajo encargado fuera</translation>
    </message>
    <message>
        <source>Towing</source>
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
        <source>In one sum</source>
        <translation>En una suma</translation>
    </message>
    <message>
        <source>Got back</source>
        <translation>Recuperado</translation>
    </message>
    <message>
        <source>{an_hour} an hour is the price that the program comes with: set what an hour costs you on House Rules, “{rule}”.</source>
        <translation>{an_hour} la hora es el precio que trae el programa: fije lo que le cuesta una hora en Normas de la casa, “{rule}”.</translation>
    </message>
    <message>
        <source>Nobody has written what it cost.</source>
        <translation>Nadie ha escrito lo que costó.</translation>
    </message>
    <message>
        <source>Hours: {hours} h at {an_hour}, {money}</source>
        <translation>Horas: {hours} h a {an_hour}, {money}</translation>
    </message>
    <message>
        <source>Cash out: {money}</source>
        <translation>Desembolso: {money}</translation>
    </message>
    <message>
        <source>In one sum: {money}</source>
        <translation>En una suma: {money}</translation>
    </message>
    <message>
        <source>Got back: {money}</source>
        <translation>Recuperado: {money}</translation>
    </message>
    <message>
        <source>{said}. Total: {money}.</source>
        <translation>{said}. Total: {money}.</translation>
    </message>
    <message>
        <source>no odometer to say how far</source>
        <translation>ningún cuentakilómetros dice cuánta distancia</translation>
    </message>
    <message>
        <source>judged in its chain</source>
        <translation>juzgado en su cadena</translation>
    </message>
    <message>
        <source>not judged</source>
        <translation>sin juzgar</translation>
    </message>
    <message>
        <source>1 day</source>
        <translation>1 día</translation>
    </message>
    <message>
        <source>{days} days</source>
        <translation>{days} días</translation>
    </message>
    <message>
        <source>“{typed}” is no kind of comeback.</source>
        <translation>“{typed}” no es una clase de retorno.</translation>
    </message>
    <message>
        <source>Accepted: {kinds}.</source>
        <translation>Se acepta: {kinds}.</translation>
    </message>
    <message>
        <source>A further kind stands beside a comeback only.</source>
        <translation>Otra clase solo puede acompañar a un retorno.</translation>
    </message>
    <message>
        <source>Judge it first: {kinds}.</source>
        <translation>Júzguela primero: {kinds}.</translation>
    </message>
    <message>
        <source>{all_others} or {last}</source>
        <translation>{all_others} o {last}</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Trabajo</translation>
    </message>
    <message>
        <source>Vehicle</source>
        <translation>Vehículo</translation>
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
        <source>Why</source>
        <translation>Por qué</translation>
    </message>
    <message>
        <source>no name written down</source>
        <translation>sin nombre anotado</translation>
    </message>
    <message>
        <source>Whom to ask</source>
        <translation>A quién preguntar</translation>
    </message>
    <message>
        <source>Open the job</source>
        <translation>Abrir el trabajo</translation>
    </message>
    <message>
        <source>Nobody is to be asked today. A job comes here where its fault came now and then and was not proved under its conditions, {after_days} days after it left, and where its window ends within a week and nothing was heard.</source>
        <translation>Hoy no hay que preguntar a nadie. Un trabajo llega aquí cuando su avería aparecía de vez en cuando y no se probó en sus condiciones, {after_days} días después de salir, y cuando su plazo termina dentro de una semana y no hubo noticias.</translation>
    </message>
    <message>
        <source>Open {job}</source>
        <translation>Abrir {job}</translation>
    </message>
    <message>
        <source>The customer of {job} says: {answer}</source>
        <translation>El cliente de {job} dice: {answer}</translation>
    </message>
    <message>
        <source>{job}: “{answer}” is noted. It stands on the job&apos;s page, under Under watch.</source>
        <translation>{job}: “{answer}” queda anotado. Está en la página del trabajo, en En observación.</translation>
    </message>
    <message>
        <source>told by the customer</source>
        <translation>contado por el cliente</translation>
    </message>
    <message>
        <source>seen on another shop&apos;s bill</source>
        <translation>visto en la factura de otro taller</translation>
    </message>
    <message>
        <source>The customer was asked: {answer}</source>
        <translation>Se preguntó al cliente: {answer}</translation>
    </message>
    <message>
        <source>The car came back as {number}. How it does is asked there, once it has left.</source>
        <translation>El vehículo volvió como {number}. Cómo va se pregunta allí, una vez entregado.</translation>
    </message>
    <message>
        <source>How does the car do? Ask the customer, and press what was said.{called}</source>
        <translation>¿Cómo va el vehículo? Pregunte al cliente y pulse lo que dijo.{called}</translation>
    </message>
    <message>
        <source>The answer of {day} ({job_number})</source>
        <translation>La respuesta del {day} ({job_number})</translation>
    </message>
    <message>
        <source>Answer of {day}</source>
        <translation>Respuesta del {day}</translation>
    </message>
    <message>
        <source>Odometer as told</source>
        <translation>Cuentakilómetros contado</translation>
    </message>
    <message>
        <source>In the customer&apos;s words</source>
        <translation>Con palabras del cliente</translation>
    </message>
    <message>
        <source>How it became known on {day}</source>
        <translation>Cómo se supo el {day}</translation>
    </message>
    <message>
        <source>Known by</source>
        <translation>Se supo por</translation>
    </message>
    <message>
        <source>Take out</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>Take the answer of {day} out</source>
        <translation>Quitar la respuesta del {day}</translation>
    </message>
    <message>
        <source>{day}, asked by {by}</source>
        <translation>{day}, preguntó {by}</translation>
    </message>
    <message>
        <source>This cause is not ours: the return stays written down and leaves the count.</source>
        <translation>Esta causa no es nuestra: la vuelta queda escrita y sale de la cuenta.</translation>
    </message>
    <message>
        <source>Why did it come back?</source>
        <translation>¿Por qué volvió?</translation>
    </message>
    <message>
        <source>Main cause</source>
        <translation>Causa principal</translation>
    </message>
    <message>
        <source>What helped it along (as many as there were)</source>
        <translation>Qué contribuyó (todo lo que hubiera)</translation>
    </message>
    <message>
        <source>A chain of {chain} jobs. It counts once, against the first: {root}.</source>
        <translation>Una cadena de {chain} trabajos. Cuenta una vez, contra el primero: {root}.</translation>
    </message>
    <message>
        <source>Open {number}, {place} of {chain} in the chain</source>
        <translation>Abrir {number}, {place} de {chain} en la cadena</translation>
    </message>
    <message>
        <source>Like 2026-11-16.</source>
        <translation>Como 2026-11-16.</translation>
    </message>
    <message>
        <source>What will be done differently?</source>
        <translation>¿Qué se hará de otra manera?</translation>
    </message>
    <message>
        <source>What will be done differently</source>
        <translation>Qué se hará de otra manera</translation>
    </message>
    <message>
        <source>Who does it</source>
        <translation>Quién lo hace</translation>
    </message>
    <message>
        <source>In a sentence</source>
        <translation>En una frase</translation>
    </message>
    <message>
        <source>What nobody pays back.</source>
        <translation>Lo que nadie reembolsa.</translation>
    </message>
    <message>
        <source>Given back or let off.</source>
        <translation>Devuelto o perdonado.</translation>
    </message>
    <message>
        <source>Not in the others; added to them.</source>
        <translation>No está en los otros; se suma a ellos.</translation>
    </message>
    <message>
        <source>From a supplier or an insurer.</source>
        <translation>De un proveedor o una aseguradora.</translation>
    </message>
    <message>
        <source>What did it cost?</source>
        <translation>¿Qué costó?</translation>
    </message>
    <message>
        <source>Hours nobody pays</source>
        <translation>Horas que nadie paga</translation>
    </message>
    <message>
        <source>Amounts in {currency}. Empty where nobody knows.</source>
        <translation>Importes en {currency}. Vacío donde nadie lo sabe.</translation>
    </message>
    <message>
        <source> and </source>
        <translation> y </translation>
    </message>
    <message>
        <source>Costs of this visit are written with {elsewhere} already. Write here only what is not among them: other amounts are added up; the very same amounts count once.</source>
        <translation>Los costes de esta visita ya están escritos con {elsewhere}. Escriba aquí solo lo que no está entre ellos: los otros importes se suman; los mismos importes exactos cuentan una vez.</translation>
    </message>
    <message>
        <source>Take {hours} hours from {later}</source>
        <translation>Tomar {hours} horas de {later}</translation>
    </message>
    <message>
        <source>An hour costs {amount} (house rule).</source>
        <translation>Una hora cuesta {amount} (norma de la casa).</translation>
    </message>
    <message>
        <source>An hour cost, when this was judged, {amount} (house rule).</source>
        <translation>Una hora costaba, cuando se juzgó esto, {amount} (norma de la casa).</translation>
    </message>
    <message>
        <source>Think of brakes, steering, wheels and tyres, fuel, fire, restraints, and an engine that dies on the road: could somebody have been hurt?</source>
        <translation>Piense en frenos, dirección, ruedas y neumáticos, combustible, fuego, sistemas de retención y un motor que se para en la carretera: ¿podría alguien haber salido herido?</translation>
    </message>
    <message>
        <source>Tell the customer today not to drive it, and have it fetched and looked at. Keep the old parts.</source>
        <translation>Diga hoy al cliente que no lo conduzca, y haga que lo recojan y lo revisen. Guarde las piezas viejas.</translation>
    </message>
    <message>
        <source>This says what came back, and nothing of how the car is now.</source>
        <translation>Esto dice qué volvió, y nada de cómo está ahora el vehículo.</translation>
    </message>
    <message>
        <source>Was it dangerous?</source>
        <translation>¿Fue peligroso?</translation>
    </message>
    <message>
        <source>yes, somebody could have been hurt</source>
        <translation>sí, alguien podría haber salido herido</translation>
    </message>
    <message>
        <source>no</source>
        <translation>no</translation>
    </message>
    <message>
        <source>Dangerous</source>
        <translation>Peligroso</translation>
    </message>
    <message>
        <source>No car has come back within a year. A later visit that may be a return is put here.</source>
        <translation>Ningún vehículo ha vuelto en un año. Aquí se pone una visita posterior que puede ser una vuelta.</translation>
    </message>
    <message>
        <source>No return waits for a judgement.</source>
        <translation>Ninguna vuelta espera un juicio.</translation>
    </message>
    <message>
        <source>Next one to judge</source>
        <translation>Siguiente por juzgar</translation>
    </message>
    <message>
        <source>Returns, what waits for a judgement first</source>
        <translation>Vueltas, primero lo que espera un juicio</translation>
    </message>
    <message>
        <source>Then and now</source>
        <translation>Entonces y ahora</translation>
    </message>
    <message>
        <source>Looking for returns</source>
        <translation>Buscando vueltas</translation>
    </message>
    <message>
        <source>Choose a return on the left.</source>
        <translation>Elija una vuelta a la izquierda.</translation>
    </message>
    <message>
        <source> of {earlier} and {later} is not accepted; it would be lost with another return.</source>
        <translation> de {earlier} y {later} no se acepta; se perdería con otra vuelta.</translation>
    </message>
    <message>
        <source>Mend or empty it first.</source>
        <translation>Corríjalo o vacíelo primero.</translation>
    </message>
    <message>
        <source> of {earlier} and {later} is not sent yet; it would be lost with another return.</source>
        <translation> de {earlier} y {later} aún no se ha enviado; se perdería con otra vuelta.</translation>
    </message>
    <message>
        <source>{later} after {earlier} was not judged “{unjudged}”: nobody said who judges it.</source>
        <translation>{later} después de {earlier} no se juzgó “{unjudged}”: nadie dijo quién la juzga.</translation>
    </message>
    <message>
        <source>{later} after {earlier}</source>
        <translation>{later} después de {earlier}</translation>
    </message>
    <message>
        <source>inside the window</source>
        <translation>dentro del plazo</translation>
    </message>
    <message>
        <source>beyond the window</source>
        <translation>fuera del plazo</translation>
    </message>
    <message>
        <source>, {share} of it used</source>
        <translation>, {share} usado</translation>
    </message>
    <message>
        <source>{vehicle}: {apart} after hand-over, {where}{used}; decided by {what_decides}.</source>
        <translation>{vehicle}: {apart} después de la entrega, {where}{used}; según: {what_decides}.</translation>
    </message>
    <message>
        <source>Why it is here: {why}.</source>
        <translation>Por qué está aquí: {why}.</translation>
    </message>
    <message>
        <source>a person judged it</source>
        <translation>lo juzgó una persona</translation>
    </message>
    <message>
        <source>Heard</source>
        <translation>Lo contado</translation>
    </message>
    <message>
        <source>Found</source>
        <translation>Lo hallado</translation>
    </message>
    <message>
        <source>Old &amp; New</source>
        <translation>Vieja y nueva</translation>
    </message>
    <message>
        <source>Back On</source>
        <translation>Montado de nuevo</translation>
    </message>
    <message>
        <source>Proof</source>
        <translation>Prueba</translation>
    </message>
    <message>
        <source>Gone</source>
        <translation>Salida</translation>
    </message>
    <message>
        <source>Under watch</source>
        <translation>En observación</translation>
    </message>
    <message>
        <source>came {came_on}, left {left_on}</source>
        <translation>vino {came_on}, salió {left_on}</translation>
    </message>
    <message>
        <source>came {came_on}, in the shop</source>
        <translation>vino {came_on}, en el taller</translation>
    </message>
    <message>
        <source>These are two vehicles</source>
        <translation>Son dos vehículos</translation>
    </message>
    <message>
        <source>It is the same vehicle after all</source>
        <translation>Sí es el mismo vehículo</translation>
    </message>
    <message>
        <source>These are said to be two vehicles, and then it is no return. If they are one, press “{together}” first.</source>
        <translation>Está dicho que son dos vehículos, y entonces no es una vuelta. Si son uno solo, pulse primero “{together}”.</translation>
    </message>
    <message>
        <source>It is not judged yet. Press an answer first.</source>
        <translation>Aún no está juzgada. Pulse primero una respuesta.</translation>
    </message>
    <message>
        <source>What is it?</source>
        <translation>¿Qué es?</translation>
    </message>
    <message>
        <source>Confirm it as a second person</source>
        <translation>Confirmarlo como segunda persona</translation>
    </message>
    <message>
        <source>What it rests on</source>
        <translation>En qué se apoya</translation>
    </message>
    <message>
        <source>First repairer&apos;s own view</source>
        <translation>Opinión del primer reparador</translation>
    </message>
    <message>
        <source>{who} did the first repair.</source>
        <translation>{who} hizo la primera reparación.</translation>
    </message>
    <message>
        <source>It is as well:</source>
        <translation>Es además:</translation>
    </message>
    <message>
        <source>Why, in one sentence</source>
        <translation>Por qué, en una frase</translation>
    </message>
    <message>
        <source>The old part kept, codes, the comparison.</source>
        <translation>La pieza vieja guardada, los códigos, la comparación.</translation>
    </message>
    <message>
        <source>Who judges it “{judgement}”? Nobody is on the list of people.</source>
        <translation>¿Quién la juzga “{judgement}”? No hay nadie en la lista de personas.</translation>
    </message>
    <message>
        <source>Put the names under House Rules first. “Who is here?” leads there.</source>
        <translation>Ponga primero los nombres en Normas de la casa. “¿Quién está aquí?” lleva allí.</translation>
    </message>
    <message>
        <source>Nobody yet</source>
        <translation>Nadie aún</translation>
    </message>
    <message>
        <source>Who judges it “{judgement}”?</source>
        <translation>¿Quién la juzga “{judgement}”?</translation>
    </message>
    <message>
        <source>Yes, two vehicles</source>
        <translation>Sí, dos vehículos</translation>
    </message>
    <message>
        <source>No, the same vehicle</source>
        <translation>No, el mismo vehículo</translation>
    </message>
    <message>
        <source>{earlier} and {later} are two vehicles: the return left the list. “{together}” brings it back, and so does Undo.</source>
        <translation>{earlier} y {later} son dos vehículos: la vuelta salió de la lista. “{together}” la trae de nuevo, y Deshacer también.</translation>
    </message>
    <message>
        <source>Nobody is named at the desk. Who judges it “{judgement}”?</source>
        <translation>No hay nadie nombrado en el puesto. ¿Quién la juzga “{judgement}”?</translation>
    </message>
    <message>
        <source>A part kind may have a window of its own. Of several parts in one job the longest counts. A change holds for cars handed over from now on; jobs that have left keep the window that they were handed over with.</source>
        <translation>Una clase de pieza puede tener un plazo propio. De varias piezas en un trabajo cuenta el más largo. Un cambio vale para los vehículos entregados desde ahora; los trabajos que han salido conservan el plazo con el que se entregaron.</translation>
    </message>
    <message>
        <source>Choose a part kind first.</source>
        <translation>Elija primero una clase de pieza.</translation>
    </message>
    <message>
        <source>Windows by part kind</source>
        <translation>Plazos por clase de pieza</translation>
    </message>
    <message>
        <source>Keep this promise</source>
        <translation>Guardar esta promesa</translation>
    </message>
    <message>
        <source>Part kind</source>
        <translation>Clase de pieza</translation>
    </message>
    <message>
        <source>All other kinds have the shop&apos;s promise: {shop}.</source>
        <translation>Todas las demás clases tienen la promesa del taller: {shop}.</translation>
    </message>
    <message>
        <source>choose a part kind</source>
        <translation>elija una clase de pieza</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Cambiar</translation>
    </message>
    <message>
        <source>Give back to the shop&apos;s promise</source>
        <translation>Volver a la promesa del taller</translation>
    </message>
    <message>
        <source>{name} has the shop&apos;s promise again, from now on.</source>
        <translation>{name} tiene otra vez la promesa del taller, desde ahora.</translation>
    </message>
    <message>
        <source>Kept for {name}</source>
        <translation>Guardado para {name}</translation>
    </message>
    <message>
        <source>No job&apos;s window is open now.</source>
        <translation>Ahora ningún trabajo tiene el plazo abierto.</translation>
    </message>
    <message>
        <source>Jobs under watch, what ends first at the top</source>
        <translation>Trabajos en observación, arriba lo que termina primero</translation>
    </message>
    <message>
        <source>{signs}. The thick line is where the marked job&apos;s window ends; its way there lies between the broken ones 19 times of 20.</source>
        <translation>{signs}. La línea gruesa es donde termina el plazo del trabajo marcado; su camino hasta allí va entre las discontinuas 19 veces de 20.</translation>
    </message>
    <message>
        <source>not asked for yet</source>
        <translation>aún sin pedir</translation>
    </message>
    <message>
        <source>asked for</source>
        <translation>pedido</translation>
    </message>
    <message>
        <source>Owed by suppliers</source>
        <translation>Debido por proveedores</translation>
    </message>
    <message>
        <source>The supplier owes a core: {part}</source>
        <translation>El proveedor debe un casco: {part}</translation>
    </message>
    <message>
        <source>The supplier owes a claim: {part}</source>
        <translation>El proveedor debe una reclamación: {part}</translation>
    </message>
    <message>
        <source>What is owed on {job_number} ({name})</source>
        <translation>Lo que se debe en {job_number} ({name})</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Importe</translation>
    </message>
    <message>
        <source>Amount, {name}</source>
        <translation>Importe, {name}</translation>
    </message>
    <message>
        <source>How far it is, {name}</source>
        <translation>Cómo va, {name}</translation>
    </message>
    <message>
        <source>Next step</source>
        <translation>Próximo paso</translation>
    </message>
    <message>
        <source>Next step, {name}</source>
        <translation>Próximo paso, {name}</translation>
    </message>
    <message>
        <source>Take out: {name}</source>
        <translation>Quitar: {name}</translation>
    </message>
    <message>
        <source>How far it is</source>
        <translation>Cómo va</translation>
    </message>
    <message>
        <source>the supplier</source>
        <translation>el proveedor</translation>
    </message>
    <message>
        <source>, ended on {ended_on}</source>
        <translation>, terminado el {ended_on}</translation>
    </message>
    <message>
        <source>{what} for {part}, from {whom}: since {since}, {days}{end}.</source>
        <translation>{what} por {part}, de {whom}: desde {since}, {days}{end}.</translation>
    </message>
    <message>
        <source>in {currency}</source>
        <translation>en {currency}</translation>
    </message>
    <message>
        <source>It stands as judged</source>
        <translation>Queda como se juzgó</translation>
    </message>
    <message>
        <source>by time</source>
        <translation>tiempo</translation>
    </message>
    <message>
        <source> ({job}: {days:,} days)</source>
        <translation> ({job}: {days:,} días)</translation>
    </message>
    <message>
        <source>{units} driven</source>
        <translation>recorrido en {units}</translation>
    </message>
    <message>
        <source>days gone</source>
        <translation>días pasados</translation>
    </message>
    <message>
        <source>{scale}, of its window{limit}</source>
        <translation>{scale}, de su plazo{limit}</translation>
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
        <source>Distance</source>
        <translation>Distancia</translation>
    </message>
    <message>
        <source>Days</source>
        <translation>Días</translation>
    </message>
    <message>
        <source>or months</source>
        <translation>o meses</translation>
    </message>
    <message>
        <source>Months</source>
        <translation>Meses</translation>
    </message>
    <message>
        <source>by the calendar</source>
        <translation>de calendario</translation>
    </message>
    <message>
        <source>The window ends</source>
        <extracomment>What the shop will promise, while the car is here; where the car is handed over, it may be laid out beside the button for that.</extracomment>
        <translation>El plazo termina</translation>
    </message>
    <message>
        <source>Kept</source>
        <translation>Guardado</translation>
    </message>
    <message>
        <source>{kept}, from now on: {promise}.</source>
        <translation>{kept}, desde ahora: {promise}.</translation>
    </message>
    <message>
        <source>This reading cannot say how far it went.</source>
        <translation>Esta lectura no puede decir cuánto recorrió.</translation>
    </message>
    <message>
        <source>The promise is over by its days: {promised}, from {left} on.</source>
        <translation>La promesa ha terminado por sus días: {promised}, desde el {left}.</translation>
    </message>
    <message>
        <source>The promise is over by distance, {far} were driven: {promised}, from {left} on.</source>
        <translation>La promesa ha terminado por distancia, se recorrieron {far}: {promised}, desde el {left}.</translation>
    </message>
    <message>
        <source>{stands}. The promise still runs: {promised}, from {left} on.</source>
        <translation>{stands}. La promesa sigue en curso: {promised}, desde el {left}.</translation>
    </message>
    <message>
        <source>{stands}. By its days the promise still runs: {promised}, from {left} on.</source>
        <translation>{stands}. Por sus días la promesa sigue en curso: {promised}, desde el {left}.</translation>
    </message>
    <message>
        <source>{stands}. Nobody knows whether the promise still runs: {promised}, from {left} on.</source>
        <translation>{stands}. Nadie sabe si la promesa sigue en curso: {promised}, desde el {left}.</translation>
    </message>
    <message>
        <source>The distance is not known yet.</source>
        <translation>La distancia aún no se conoce.</translation>
    </message>
    <message>
        <source>{later} after {earlier}, {came_on}</source>
        <translation>{later} tras {earlier}, {came_on}</translation>
    </message>
    <message>
        <source>the visit waits for {others} too</source>
        <translation>la visita espera también a {others}</translation>
    </message>
    <message>
        <source>◇ beyond the window, not judged</source>
        <translation>◇ fuera del plazo, sin juzgar</translation>
    </message>
    <message>
        <source>◇ waits {days} days, more than {limit}</source>
        <translation>◇ lleva {days} días en espera, más de {limit}</translation>
    </message>
    <message>
        <source>◇ waits 1 day</source>
        <translation>◇ lleva 1 día en espera</translation>
    </message>
    <message>
        <source>◇ waits {days} days</source>
        <translation>◇ lleva {days} días en espera</translation>
    </message>
    <message>
        <source>{job}: told on {day}</source>
        <translation>{job}: contado el {day}</translation>
    </message>
    <message>
        <source>{job}: seen on another shop&apos;s bill, {day}</source>
        <translation>{job}: visto en la factura de otro taller, {day}</translation>
    </message>
    <message>
        <source>What the shop promises after a hand-over: days or calendar months, a distance, or both. An empty field is no such limit. A month ends on the same date of the next, or on its last day where it has no such date. A change holds for cars handed over from now on.</source>
        <translation>Lo que el taller promete después de una entrega: días o meses de calendario, una distancia, o ambas cosas. Un campo vacío es que no hay ese límite. Un mes termina en la misma fecha del siguiente, o en su último día si no tiene esa fecha. Un cambio vale para los vehículos entregados desde ahora.</translation>
    </message>
    <message>
        <source>The shop&apos;s window</source>
        <translation>El plazo del taller</translation>
    </message>
    <message>
        <source>Keep the shop&apos;s window</source>
        <translation>Guardar el plazo del taller</translation>
    </message>
    <message>
        <source>Now: {promise}.</source>
        <translation>Ahora: {promise}.</translation>
    </message>
    <message>
        <source>the shop</source>
        <translation>el taller</translation>
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
        <source>Now: {number}</source>
        <translation>Ahora: {number}</translation>
    </message>
    <message>
        <source>{number}: there is no later job</source>
        <translation>{number}: no hay trabajo posterior</translation>
    </message>
    <message>
        <source>It was only heard of: the car was not here, and so there is no later job.</source>
        <translation>Solo se supo de ello: el vehículo no estuvo aquí, y por eso no hay un trabajo posterior.</translation>
    </message>
    <message>
        <source>Open {number}, {then_or_now}</source>
        <translation>Abrir {number}, {then_or_now}</translation>
    </message>
    <message>
        <source>Photos of the parts, {then_or_now}</source>
        <translation>Fotos de las piezas, {then_or_now}</translation>
    </message>
    <message>
        <source>Seen on another shop&apos;s bill</source>
        <translation>Visto en la factura de otro taller</translation>
    </message>
    <message>
        <source>Goes with “same trouble”.</source>
        <translation>Va con “el mismo problema”.</translation>
    </message>
    <message>
        <source>in {unit}</source>
        <translation>en {unit}</translation>
    </message>
    <message>
        <source>What ends soonest</source>
        <translation>Lo que termina antes</translation>
    </message>
    <message>
        <source>Ask the customer</source>
        <translation>Preguntar al cliente</translation>
    </message>
    <message>
        <source>Looking at the watch …</source>
        <translation>Mirando lo que está en observación …</translation>
    </message>
    <message>
        <source>Looking at the watch</source>
        <translation>Mirando lo que está en observación</translation>
    </message>
    <message>
        <source>No window is open. A job comes here when its car is handed over.</source>
        <translation>No hay ningún plazo abierto. Un trabajo llega aquí cuando se entrega su vehículo.</translation>
    </message>
    <message>
        <source>1 window is open</source>
        <translation>Hay 1 plazo abierto</translation>
    </message>
    <message>
        <source>{jobs:,} windows are open</source>
        <translation>Hay {jobs:,} plazos abiertos</translation>
    </message>
    <message>
        <source>{number}. An open window is not a success: nobody knows yet.</source>
        <translation>{number}. Un plazo abierto no es un éxito: nadie lo sabe aún.</translation>
    </message>
    <message>
        <source>Arrows, Home, End</source>
        <translation>Flechas, Inicio, Fin</translation>
    </message>
    <message>
        <source>walk from job to job in the plane; Enter opens it</source>
        <translation>van de trabajo en trabajo por el plano; Intro lo abre</translation>
    </message>
    <message>
        <source>The watch as a plane of days and distance</source>
        <translation>La observación como plano de días y distancia</translation>
    </message>
    <message>
        <source>{job}, {vehicle}, {state}, ends {when}</source>
        <translation>{job}, {vehicle}, {state}, termina: {when}</translation>
    </message>
    <message>
        <source>Probably ends</source>
        <translation>Fin probable</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Queda</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Estado</translation>
    </message>
    <message>
        <source>Window in days</source>
        <translation>Plazo en días</translation>
    </message>
    <message>
        <source>Window by distance</source>
        <translation>Plazo por distancia</translation>
    </message>
    <message>
        <source>Window in months</source>
        <translation>Plazo en meses</translation>
    </message>
    <message>
        <source>The window starts when the car is handed over, and stays as it was given. An empty field is no such limit. Of several parts with a promise of their own the longest counts, unless it is changed here.</source>
        <translation>El plazo empieza cuando se entrega el vehículo, y queda como se dio. Un campo vacío es que no hay ese límite. De varias piezas con promesa propia cuenta la más larga, salvo que se cambie aquí.</translation>
    </message>
    <message>
        <source>What was done is written or ticked under Back On; the car has not left yet.</source>
        <translation>Lo hecho está escrito o marcado en “Montado de nuevo”; el vehículo todavía no ha salido.</translation>
    </message>
    <message>
        <source>What is promised from the hand-over on</source>
        <translation>Lo que se promete desde la entrega</translation>
    </message>
    <message>
        <source>{window}. It left {days} ago.</source>
        <translation>{window}. Salió hace {days}.</translation>
    </message>
    <message>
        <source>waiting for a judgement</source>
        <translation>espera un juicio</translation>
    </message>
    <message>
        <source>↩  {what_it_is}: {days}, {distance}{beyond}</source>
        <translation>↩  {what_it_is}: {days}, {distance}{beyond}</translation>
    </message>
    <message>
        <source>Then and now: {earlier} and what was {later}</source>
        <translation>Entonces y ahora: {earlier} y lo que fue {later}</translation>
    </message>
    <message>
        <source>Then and now: {earlier} and {later}</source>
        <translation>Entonces y ahora: {earlier} y {later}</translation>
    </message>
    <message>
        <source>, beyond the window</source>
        <translation>, fuera del plazo</translation>
    </message>
    <message>
        <source>, inside the early window</source>
        <translation>, dentro del plazo temprano</translation>
    </message>
    <message>
        <source>Accepted: a whole number, such as 3,000.</source>
        <translation>Se acepta: un número entero, como 3,000.</translation>
    </message>
    <message>
        <source>This may be {earlier} come back</source>
        <translation>Esto puede ser {earlier}, que vuelve</translation>
    </message>
    <message>
        <source>{earlier} came back</source>
        <translation>{earlier} volvió</translation>
    </message>
    <message>
        <source>{earlier} was here before</source>
        <translation>{earlier} ya estuvo aquí</translation>
    </message>
    <message>
        <source>The same trouble, {how_told}</source>
        <translation>El mismo problema, {how_told}</translation>
    </message>
    <message>
        <source>May have come back as {later}</source>
        <translation>Puede haber vuelto como {later}</translation>
    </message>
    <message>
        <source>Came back as {later}</source>
        <translation>Volvió como {later}</translation>
    </message>
    <message>
        <source>Seen again as {later}</source>
        <translation>Visto de nuevo como {later}</translation>
    </message>
    <message>
        <source>heard</source>
        <translation>contado</translation>
    </message>
    <message>
        <source>on the bench</source>
        <translation>en el banco</translation>
    </message>
    <message>
        <source>back on</source>
        <translation>montado de nuevo</translation>
    </message>
    <message>
        <source>under watch</source>
        <translation>en observación</translation>
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
        <source>came back</source>
        <translation>volvió</translation>
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
        <source>the house rules</source>
        <translation>las normas de la casa</translation>
    </message>
    <message>
        <source>It was handed over on {left_at}, before its car came on {came_at}.</source>
        <translation>Se entregó el {left_at}, antes de que viniera su vehículo el {came_at}.</translation>
    </message>
    <message>
        <source>It ended on {left_at}, before it began on {came_at}.</source>
        <translation>Terminó el {left_at}, antes de empezar el {came_at}.</translation>
    </message>
    <message>
        <source>{second} is kept as a return of itself, and is left out.</source>
        <translation>{second} figura como vuelta de sí mismo, y se deja fuera.</translation>
    </message>
    <message>
        <source>{second} came before {first} had left, and can&apos;t be its return. It is left out.</source>
        <translation>{second} vino antes de que {first} hubiera salido, y no puede ser su vuelta. Se deja fuera.</translation>
    </message>
    <message>
        <source>0 or 1</source>
        <translation>0 o 1</translation>
    </message>
    <message>
        <source>an odometer reading</source>
        <translation>una lectura del cuentakilómetros</translation>
    </message>
    <message>
        <source>It ended on {ended_on}, before it began on {since}.</source>
        <translation>Terminó el {ended_on}, antes de empezar el {since}.</translation>
    </message>
    <message>
        <source>“odometer replaced” or “sold”</source>
        <translation>“odometer replaced” (cuentakilómetros cambiado) o “sold” (vendido)</translation>
    </message>
    <message>
        <source>“read”, “told” or “estimated”</source>
        <translation>“read” (leído), “told” (contado) o “estimated” (estimado)</translation>
    </message>
    <message>
        <source>window</source>
        <translation>plazo</translation>
    </message>
    <message>
        <source>hours or price</source>
        <translation>horas o precio</translation>
    </message>
    <message>
        <source>a condition</source>
        <translation>una condición</translation>
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
        <source>a step of the proof</source>
        <translation>un paso de la prueba</translation>
    </message>
    <message>
        <source>what was judged</source>
        <translation>lo que se juzgó</translation>
    </message>
    <message>
        <source>a cause of a return</source>
        <translation>una causa de una vuelta</translation>
    </message>
    <message>
        <source>the promise</source>
        <translation>la promesa</translation>
    </message>
    <message>
        <source>a customer&apos;s answer</source>
        <translation>una respuesta de un cliente</translation>
    </message>
    <message>
        <source>“told” or “paper”</source>
        <translation>“told” (contado) o “paper” (en papel)</translation>
    </message>
    <message>
        <source>a judgement</source>
        <translation>un juicio</translation>
    </message>
    <message>
        <source>“core” or “claim”</source>
        <translation>“core” (casco) o “claim” (reclamación)</translation>
    </message>
    <message>
        <source>“open”, “asked”, “paid” or “refused”</source>
        <translation>“open” (abierto), “asked” (pedido), “paid” (pagado) o “refused” (rechazado)</translation>
    </message>
    <message>
        <source>ended_on and since</source>
        <translation>ended_on y since</translation>
    </message>
    <message>
        <source>{day} is still to come.</source>
        <translation>{day} está aún por venir.</translation>
    </message>
    <message>
        <source>Look at this computer&apos;s clock first: it may be behind.</source>
        <translation>Mire primero el reloj de este ordenador: puede ir atrasado.</translation>
    </message>
    <message>
        <source>{second} is judged as a return of {first}, but both came on {came}: it is in no list and no rate.</source>
        <translation>{second} está juzgado como vuelta de {first}, pero ambos vinieron el {came}: no está en ninguna lista ni en ninguna tasa.</translation>
    </message>
    <message>
        <source>If one of them came on another day, correct that.</source>
        <translation>Si uno de ellos vino otro día, corríjalo.</translation>
    </message>
    <message>
        <source>{second} is judged as a return of {first}, but the two stand on two vehicles: it is in no list and no rate.</source>
        <translation>{second} está juzgado como vuelta de {first}, pero los dos figuran con dos vehículos: no está en ninguna lista ni en ninguna tasa.</translation>
    </message>
    <message>
        <source>If it is one vehicle, give both the same VIN, or the same plate.</source>
        <translation>Si es un solo vehículo, ponga en ambos el mismo VIN, o la misma matrícula.</translation>
    </message>
    <message>
        <source>what an hour costs</source>
        <translation>lo que cuesta una hora</translation>
    </message>
    <message>
        <source>{says}; for another car that would no longer count.</source>
        <translation>{says}; con otro vehículo eso ya no contaría.</translation>
    </message>
    <message>
        <source>They stay one car, and what was judged holds.</source>
        <translation>Siguen siendo un solo vehículo, y lo juzgado vale.</translation>
    </message>
    <message>
        <source>Open {number} under It&apos;s Back: say there that they are two vehicles, or first {to_undo}.</source>
        <translation>Abra {number} en Ha vuelto: diga allí que son dos vehículos, o haga antes esto: {to_undo}.</translation>
    </message>
    <message>
        <source>{says}; with two vehicles here that would no longer count.</source>
        <translation>{says}; con dos vehículos aquí eso ya no contaría.</translation>
    </message>
    <message>
        <source>Open {number} under It&apos;s Back first, and {to_undo}.</source>
        <translation>Abra primero {number} en Ha vuelto y haga esto: {to_undo}.</translation>
    </message>
    <message>
        <source>{later} has a cost as a return of {earlier}</source>
        <translation>{later} tiene un coste como vuelta de {earlier}</translation>
    </message>
    <message>
        <source>{later} is judged “{judgement}” as a return of {earlier}</source>
        <translation>{later} está juzgado “{judgement}” como vuelta de {earlier}</translation>
    </message>
    <message>
        <source>empty its costs</source>
        <translation>vaciar sus costes</translation>
    </message>
    <message>
        <source>take its judgement back and empty its costs</source>
        <translation>retirar su juicio y vaciar sus costes</translation>
    </message>
    <message>
        <source>take its judgement back</source>
        <translation>retirar su juicio</translation>
    </message>
    <message>
        <source>an amount from 0 to 1,000,000.00</source>
        <translation>un importe de 0 a 1,000,000.00</translation>
    </message>
    <message>
        <source>a list</source>
        <translation>una lista</translation>
    </message>
    <message>
        <source>a number of hours</source>
        <translation>un número de horas</translation>
    </message>
    <message>
        <source>a day from {since} on</source>
        <translation>un día desde {since}</translation>
    </message>
    <message>
        <source>Got back {back} is more than the {gone} that this return cost.</source>
        <translation>Lo recuperado, {back}, es más que los {gone} que costó esta vuelta.</translation>
    </message>
    <message>
        <source>The cost is as it was.</source>
        <translation>El coste queda como estaba.</translation>
    </message>
    <message>
        <source>Write what it cost first. What was got back beyond that is no cost of a return.</source>
        <translation>Escriba primero lo que costó. Lo que se recuperó de más no es coste de una vuelta.</translation>
    </message>
    <message>
        <source>{who} did the repair on {number}.</source>
        <translation>{who} hizo la reparación de {number}.</translation>
    </message>
    <message>
        <source>The judgement stands as it was.</source>
        <translation>El juicio queda como estaba.</translation>
    </message>
    <message>
        <source>A second look takes somebody who did not do the first repair.</source>
        <translation>Una segunda mirada requiere a alguien que no hizo la primera reparación.</translation>
    </message>
    <message>
        <source>vehicle {number}</source>
        <translation>vehículo {number}</translation>
    </message>
    <message>
        <source>{place}, part kind {kind}</source>
        <translation>{place}, clase de pieza {kind}</translation>
    </message>
    <message>
        <source>“first” or “both”</source>
        <translation>“first” (lo primero) o “both” (ambos)</translation>
    </message>
    <message>
        <source>{days} days, {months} months, {miles} miles</source>
        <translation>{days} días, {months} meses, {miles} millas</translation>
    </message>
    <message>
        <source>a promise</source>
        <translation>una promesa</translation>
    </message>
    <message>
        <source>Judge the return that was told “{judgement}”</source>
        <translation>Juzgar la vuelta que se contó “{judgement}”</translation>
    </message>
    <message>
        <source>That customer tells of the same trouble no longer.</source>
        <translation>Ese cliente ya no cuenta el mismo problema.</translation>
    </message>
    <message>
        <source>Look at the answers on the job&apos;s page, under Under watch.</source>
        <translation>Mire las respuestas en la página del trabajo, en En observación.</translation>
    </message>
    <message>
        <source>told</source>
        <translation>contado</translation>
    </message>
    <message>
        <source>not here: the car was {seen}</source>
        <translation>no está aquí: vehículo {seen}</translation>
    </message>
    <message>
        <source> to {who}</source>
        <translation> a {who}</translation>
    </message>
    <message>
        <source> at {odometer:,} {unit}</source>
        <translation> con {odometer:,} {unit}</translation>
    </message>
    <message>
        <source>{heard}{by} on {day}{odometer}{words}</source>
        <translation>{heard}{by} el {day}{odometer}{words}</translation>
    </message>
    <message>
        <source>Again, {how_told}</source>
        <translation>Otra vez, {how_told}</translation>
    </message>
    <message>
        <source>Until then it is neither a comeback nor fine. The rules only propose; a person decides.</source>
        <translation>Hasta entonces no es ni un retorno ni algo que va bien. Las reglas solo proponen; decide una persona.</translation>
    </message>
    <message>
        <source>Nothing waits for a judgement.</source>
        <translation>Nada espera un juicio.</translation>
    </message>
    <message>
        <source>; {number} for more than {days} days</source>
        <translation>; más de {days} días: {number}</translation>
    </message>
    <message>
        <source>{what} waits for a judgement, since {day}{late}.</source>
        <translation>{what} espera un juicio, desde el {day}{late}.</translation>
    </message>
    <message>
        <source>{what} wait for a judgement, the oldest since {day}{late}.</source>
        <translation>{what} esperan un juicio, la más antigua desde el {day}{late}.</translation>
    </message>
    <message>
        <source>1 visit</source>
        <translation>1 visita</translation>
    </message>
    <message>
        <source>{number} visits</source>
        <translation>{number} visitas</translation>
    </message>
    <message>
        <source>1 return that was only told</source>
        <translation>1 vuelta de la que solo se supo de palabra</translation>
    </message>
    <message>
        <source>{number} returns that were only told</source>
        <translation>{number} vueltas de las que solo se supo de palabra</translation>
    </message>
    <message>
        <source>{visits} and {returns}</source>
        <translation>{visits} y {returns}</translation>
    </message>
    <message>
        <source>not seen yet</source>
        <translation>aún no visto</translation>
    </message>
    <message>
        <source>seen on {day}, not judged against this job</source>
        <translation>visto el {day}, sin juzgar respecto a este trabajo</translation>
    </message>
    <message>
        <source>quiet</source>
        <translation>tranquilo</translation>
    </message>
    <message>
        <source>to be judged</source>
        <translation>por juzgar</translation>
    </message>
    <message>
        <source>Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec</source>
        <translation>ene feb mar abr may jun jul ago sep oct nov dic</translation>
    </message>
    <message>
        <source>{days:,} days</source>
        <translation>{days:,} días</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>nobody can say</source>
        <translation>nadie puede decirlo</translation>
    </message>
    <message>
        <source>not before {day}</source>
        <translation>no antes del {day}</translation>
    </message>
    <message>
        <source>{first_day} to {last_day}</source>
        <translation>{first_day} a {last_day}</translation>
    </message>
    <message>
        <source>no time limit</source>
        <translation>sin límite de tiempo</translation>
    </message>
    <message>
        <source>{unit} not read since</source>
        <translation>{unit} sin leer desde entonces</translation>
    </message>
    <message>
        <source>{unit} not known</source>
        <translation>{unit} sin saber</translation>
    </message>
    <message>
        <source>Left {day}, {days} ago</source>
        <translation>Salió el {day}, hace {days}</translation>
    </message>
    <message>
        <source>{left}; the odometer was not read since.</source>
        <translation>{left}; el cuentakilómetros no se leyó desde entonces.</translation>
    </message>
    <message>
        <source>{left}; the odometer cannot say how far it went.</source>
        <translation>{left}; el cuentakilómetros no puede decir cuánto recorrió.</translation>
    </message>
    <message>
        <source>{left}; {far} by {day}, when it was last read.</source>
        <translation>{left}; {far} hasta el {day}, cuando se leyó por última vez.</translation>
    </message>
    <message>
        <source>{days} left</source>
        <translation>Aún {days}</translation>
    </message>
    <message>
        <source>{far} by that reading</source>
        <translation>{far} según esa lectura</translation>
    </message>
    <message>
        <source>{far} left by that reading</source>
        <translation>Aún {far} según esa lectura</translation>
    </message>
    <message>
        <source>It ends by distance alone, and the odometer cannot say how far; ask to see the car.</source>
        <translation>Termina solo por distancia, y el cuentakilómetros no puede decir cuánta; pida ver el vehículo.</translation>
    </message>
    <message>
        <source>It ends {day}, by time.</source>
        <translation>Termina el {day}, por tiempo.</translation>
    </message>
    <message>
        <source>It ends {day}, by distance.</source>
        <translation>Termina el {day}, por distancia.</translation>
    </message>
    <message>
        <source>{said} Time alone counts, for the odometer cannot say how far it went.</source>
        <translation>{said} Solo cuenta el tiempo, pues el cuentakilómetros no puede decir cuánto recorrió.</translation>
    </message>
    <message>
        <source>By its usual use it ended between {first} and {last}, but nobody has read the odometer since.</source>
        <translation>Según su uso habitual terminó entre el {first} y el {last}, pero nadie ha leído el cuentakilómetros desde entonces.</translation>
    </message>
    <message>
        <source>It may have ended since {first} already</source>
        <translation>Puede haber terminado ya desde el {first}</translation>
    </message>
    <message>
        <source>; else it ends by {last}</source>
        <translation>; si no, termina hasta el {last}</translation>
    </message>
    <message>
        <source>It probably ends between {first} and {last}</source>
        <translation>Termina probablemente entre el {first} y el {last}</translation>
    </message>
    <message>
        <source>{said}{what_is_sure}; nobody can say until when.</source>
        <translation>{said}{what_is_sure}; nadie puede decir hasta cuándo.</translation>
    </message>
    <message>
        <source>, by its time at the latest</source>
        <translation>, por su tiempo a más tardar</translation>
    </message>
    <message>
        <source>, not before its time is over</source>
        <translation>, no antes de que acabe su tiempo</translation>
    </message>
    <message>
        <source>, by distance</source>
        <translation>, por distancia</translation>
    </message>
    <message>
        <source>time</source>
        <translation>tiempo</translation>
    </message>
    <message>
        <source>time only: odometer unknown</source>
        <translation>solo tiempo: cuentakilómetros desconocido</translation>
    </message>
    <message>
        <source>not decided: odometer unknown</source>
        <translation>sin decidir: cuentakilómetros desconocido</translation>
    </message>
    <message>
        <source>sale</source>
        <translation>venta</translation>
    </message>
    <message>
        <source>A window of {days} days and {miles:g} miles cannot be kept.</source>
        <translation>Un plazo de {days} días y {miles:g} millas no se puede guardar.</translation>
    </message>
    <message>
        <source>Accepted: at least 1 day, more than 0 miles, or both. 0 is no such limit.</source>
        <translation>Se acepta: al menos 1 día, más de 0 millas, o ambas cosas. 0 es que no hay ese límite.</translation>
    </message>
    <message>
        <source>Change the shop&apos;s window</source>
        <translation>Cambiar el plazo del taller</translation>
    </message>
    <message>
        <source>Which part kind?</source>
        <translation>¿Qué clase de pieza?</translation>
    </message>
    <message>
        <source>Choose the kind that the promise is for.</source>
        <translation>Elija la clase a la que se aplica la promesa.</translation>
    </message>
    <message>
        <source>Change the window for {kind}</source>
        <translation>Cambiar el plazo para {kind}</translation>
    </message>
    <message>
        <source>Change the window of {number}</source>
        <translation>Cambiar el plazo de {number}</translation>
    </message>
    <message>
        <source>the shop&apos;s own promise</source>
        <translation>la promesa propia del taller</translation>
    </message>
    <message>
        <source>{number} was handed over on {left_at} with its window.</source>
        <translation>{number} se entregó el {left_at} con su plazo.</translation>
    </message>
    <message>
        <source>The window is as it was given.</source>
        <translation>El plazo queda como se dio.</translation>
    </message>
    <message>
        <source>A window can be changed until the car leaves.</source>
        <translation>Un plazo se puede cambiar hasta que salga el vehículo.</translation>
    </message>
    <message>
        <source>What it is</source>
        <translation>Qué es</translation>
    </message>
    <message>
        <source>Judged by</source>
        <translation>Juzgado por</translation>
    </message>
    <message>
        <source>Same vehicle</source>
        <translation>Mismo vehículo</translation>
    </message>
    <message>
        <source>As well</source>
        <translation>Además</translation>
    </message>
    <message>
        <source>Second look</source>
        <translation>Segunda mirada</translation>
    </message>
    <message>
        <source>What helped it along</source>
        <translation>Qué contribuyó</translation>
    </message>
    <message>
        <source> (judged by {who})</source>
        <translation> (juzgado por {who})</translation>
    </message>
    <message>
        <source>emptied</source>
        <translation>vaciado</translation>
    </message>
    <message>
        <source>no, two vehicles</source>
        <translation>no, dos vehículos</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>sí</translation>
    </message>
</context>
</TS>
