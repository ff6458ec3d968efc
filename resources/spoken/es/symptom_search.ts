<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es">
<context>
    <name></name>
    <message>
        <source>once</source>
        <translation>una vez</translation>
    </message>
    <message>
        <source>{number} times</source>
        <translation>{number} veces</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguno</translation>
    </message>
    <message>
        <source>{times}; of {settled} settled {back} came back</source>
        <translation>{times}; cerrados: {settled}; de ellos volvieron: {back}</translation>
    </message>
    <message>
        <source>{counted}{more}. Few: the true share may be {low:.0%} to {high:.0%}.</source>
        <translation>{counted}{more}. Pocos: la proporción verdadera puede ser de {low:.0%} a {high:.0%}.</translation>
    </message>
    <message>
        <source>{counted}: {rate:.0%} ({low:.0%} to {high:.0%}){more}</source>
        <translation>{counted}; proporción: {rate:.0%} (de {low:.0%} a {high:.0%}){more}</translation>
    </message>
    <message>
        <source>once, and it came back</source>
        <translation>una vez, y volvió</translation>
    </message>
    <message>
        <source>{number} times, and all came back</source>
        <translation>{number} veces, y todas volvieron</translation>
    </message>
    <message>
        <source>{times}; none is settled yet, {early} came back already</source>
        <translation>{times}; ninguno cerrado aún; ya volvieron: {early}</translation>
    </message>
    <message>
        <source>{times}; none is settled yet</source>
        <translation>{times}; ninguno cerrado aún</translation>
    </message>
    <message>
        <source>; of {rest} not settled {early} came back already</source>
        <translation>; sin cerrar: {rest}; de ellos ya volvieron: {early}</translation>
    </message>
    <message>
        <source>Counted over one repair handed over.</source>
        <translation>Contado sobre una reparación entregada.</translation>
    </message>
    <message>
        <source>Counted over the newest {counted:,} repairs handed over, not yet over all.</source>
        <translation>Contado sobre las {counted:,} reparaciones entregadas más recientes, aún no sobre todas.</translation>
    </message>
    <message>
        <source>Counted over all {counted:,} repairs handed over that match.</source>
        <translation>Contado sobre todas las {counted:,} reparaciones entregadas que coinciden.</translation>
    </message>
    <message>
        <source>Reading the old jobs for the search</source>
        <translation>Leyendo los trabajos antiguos para la búsqueda</translation>
    </message>
    <message>
        <source>Nothing was changed.</source>
        <translation>No se cambió nada.</translation>
    </message>
    <message>
        <source>There is no symptom “{symptom}”.</source>
        <translation>No hay ningún síntoma “{symptom}”.</translation>
    </message>
    <message>
        <source>Choose one from the list; a part of its name is enough.</source>
        <translation>Elija uno de la lista; basta una parte de su nombre.</translation>
    </message>
    <message>
        <source>No words were told.</source>
        <translation>No se dijo ninguna palabra.</translation>
    </message>
    <message>
        <source>Type what customers say, such as “it bucks”.</source>
        <translation>Escriba lo que dicen los clientes, como “it bucks”.</translation>
    </message>
    <message>
        <source>“{phrase}…” is too long: it has {letters} letters.</source>
        <translation>“{phrase}…” es demasiado larga: tiene {letters} letras.</translation>
    </message>
    <message>
        <source>A phrase has {letters} letters at most; the words that tell most are enough.</source>
        <translation>Una frase tiene {letters} letras como máximo; bastan las palabras que más dicen.</translation>
    </message>
    <message>
        <source>“{phrase}” is a number, a code or a plate: those are found as they are.</source>
        <translation>“{phrase}” es un número, un código o una matrícula: esos se encuentran tal como son.</translation>
    </message>
    <message>
        <source>Type words that customers say.</source>
        <translation>Escriba palabras que dicen los clientes.</translation>
    </message>
    <message>
        <source>“{phrase}” says when it happens, not what.</source>
        <translation>“{phrase}” dice cuándo ocurre, no qué.</translation>
    </message>
    <message>
        <source>Add the word that tells the fault.</source>
        <translation>Añada la palabra que dice la avería.</translation>
    </message>
    <message>
        <source>“{phrase}” has only little words, which are in every concern.</source>
        <translation>“{phrase}” solo tiene palabras menores, que están en toda queja.</translation>
    </message>
    <message>
        <source>“{phrase}” has too many words.</source>
        <translation>“{phrase}” tiene demasiadas palabras.</translation>
    </message>
    <message>
        <source>{number} are the most, little words not counted; take those that tell most.</source>
        <translation>{number} son el máximo, sin contar las palabras menores; tome las que más dicen.</translation>
    </message>
    <message>
        <source>“{phrase}” is read as {symptom} already.</source>
        <translation>“{phrase}” ya se lee como {symptom}.</translation>
    </message>
    <message>
        <source>There is nothing to do.</source>
        <translation>No hay nada que hacer.</translation>
    </message>
    <message>
        <source>“{phrase}” would never be found in a concern: it says that something is over or is not so, or it is more than one piece of a sentence.</source>
        <translation>“{phrase}” no se encontraría nunca en una queja: dice que algo ya pasó o que no es así, o es más de un trozo de una frase.</translation>
    </message>
    <message>
        <source>Take the words that tell the fault itself, without a comma or full stop in between.</source>
        <translation>Tome las palabras que dicen la avería misma, sin coma ni punto en medio.</translation>
    </message>
    <message>
        <source>“{typed}” means {symptom} here already, as “{phrase}”.</source>
        <translation>“{typed}” ya significa aquí {symptom}, como “{phrase}”.</translation>
    </message>
    <message>
        <source>Choose it in the list of the shop&apos;s own phrases to change what it means.</source>
        <translation>Elíjala en la lista de frases propias del taller para cambiar lo que significa.</translation>
    </message>
    <message>
        <source>Let “{phrase}” mean {symptom} here</source>
        <translation>Hacer que “{phrase}” signifique aquí {symptom}</translation>
    </message>
    <message>
        <source>Let a phrase mean {symptom} here</source>
        <translation>Hacer que una frase signifique aquí {symptom}</translation>
    </message>
    <message>
        <source>Take a phrase of the shop away</source>
        <translation>Quitar una frase del taller</translation>
    </message>
    <message>
        <source>Take “{phrase}” away</source>
        <translation>Quitar “{phrase}”</translation>
    </message>
    <message>
        <source>perhaps</source>
        <translation>quizá</translation>
    </message>
    <message>
        <source>symptom</source>
        <translation>síntoma</translation>
    </message>
    <message>
        <source>code</source>
        <translation>código</translation>
    </message>
    <message>
        <source>condition</source>
        <translation>condición</translation>
    </message>
    <message>
        <source>part</source>
        <translation>pieza</translation>
    </message>
    <message>
        <source>job</source>
        <translation>trabajo</translation>
    </message>
    <message>
        <source>plate</source>
        <translation>matrícula</translation>
    </message>
    <message>
        <source>tag</source>
        <translation>etiqueta</translation>
    </message>
    <message>
        <source>VIN ends in</source>
        <translation>VIN termina en</translation>
    </message>
    <message>
        <source>only</source>
        <translation>solo</translation>
    </message>
    <message>
        <source>same symptom: {symptom}</source>
        <translation>mismo síntoma: {symptom}</translation>
    </message>
    <message>
        <source>near symptom: {symptom}</source>
        <translation>síntoma cercano: {symptom}</translation>
    </message>
    <message>
        <source>same code: {code}</source>
        <translation>mismo código: {code}</translation>
    </message>
    <message>
        <source>related code: {codes}</source>
        <translation>código emparentado: {codes}</translation>
    </message>
    <message>
        <source>same part kind: {part_kind}</source>
        <translation>misma clase de pieza: {part_kind}</translation>
    </message>
    <message>
        <source>happens: {condition}</source>
        <translation>ocurre: {condition}</translation>
    </message>
    <message>
        <source>but never: {condition}</source>
        <translation>pero nunca: {condition}</translation>
    </message>
    <message>
        <source>near word: {found} for {asked}</source>
        <translation>palabra parecida: {found} por {asked}</translation>
    </message>
    <message>
        <source>words: {words}</source>
        <translation>palabras: {words}</translation>
    </message>
    <message>
        <source>condition or finding: {words}</source>
        <translation>condición o hallazgo: {words}</translation>
    </message>
    <message>
        <source>What does the car do? Or a plate, a VIN or its end, a job&apos;s number, a code</source>
        <translation>¿Qué hace el vehículo? O una matrícula, un VIN o su final, un número de trabajo, un código</translation>
    </message>
    <message>
        <source>No job is written yet. “A car is here”, above, takes the first car in (Ctrl+N); jobs from before come in under “{records}”.</source>
        <translation>Todavía no hay ningún trabajo escrito. «Llegó un vehículo», arriba, recibe el primero (Ctrl+N); los trabajos de antes entran en «{records}».</translation>
    </message>
    <message>
        <source>Ask the old jobs</source>
        <translation>Consultar trabajos antiguos</translation>
    </message>
    <message>
        <source>Reading the kinds of vehicles</source>
        <translation>Leyendo las clases de vehículos</translation>
    </message>
    <message>
        <source>The index was made</source>
        <translation>Se hizo el índice</translation>
    </message>
    <message>
        <source>Looking through the old jobs</source>
        <translation>Buscando en los trabajos antiguos</translation>
    </message>
    <message>
        <source>In the shop now</source>
        <translation>Ahora en el taller</translation>
    </message>
    <message>
        <source>Latest jobs</source>
        <translation>Últimos trabajos</translation>
    </message>
    <message>
        <source>All jobs, whatever is chosen above: it counts as soon as something is asked.</source>
        <translation>Todos los trabajos, sea lo que sea lo elegido arriba: eso cuenta en cuanto se pregunta algo.</translation>
    </message>
    <message>
        <source>Opening the jobs behind a number</source>
        <translation>Abriendo los trabajos de un número</translation>
    </message>
    <message>
        <source>Only a word or two in common</source>
        <translation>Solo una o dos palabras en común</translation>
    </message>
    <message>
        <source>No old job is about that. Those below have a word or two in common with it.</source>
        <translation>Ningún trabajo antiguo trata de eso. Los de abajo tienen una o dos palabras en común.</translation>
    </message>
    <message>
        <source>No old job that is chosen above says this. More kinds or times may have it.</source>
        <translation>Ningún trabajo antiguo de los elegidos arriba dice esto. Con más clases o más tiempo quizá lo haya.</translation>
    </message>
    <message>
        <source>No old job says this. Fewer or other words may find it.</source>
        <translation>Ningún trabajo antiguo dice esto. Con menos palabras, o con otras, quizá se encuentre.</translation>
    </message>
    <message>
        <source>One job found.</source>
        <translation>Se encontró un trabajo.</translation>
    </message>
    <message>
        <source>The {jobs} jobs that fit best, the best first.</source>
        <translation>Los {jobs} trabajos que mejor coinciden, el mejor primero.</translation>
    </message>
    <message>
        <source>{told} None of them that was handed over has the same symptom, code or all the words: no fix is counted.</source>
        <translation>{told} Ninguno de los entregados tiene el mismo síntoma, el mismo código o todas las palabras: no se cuenta ningún arreglo.</translation>
    </message>
    <message>
        <source>nothing written</source>
        <translation>nada escrito</translation>
    </message>
    <message>
        <source>not handed over yet</source>
        <translation>aún sin entregar</translation>
    </message>
    <message>
        <source>Any time</source>
        <translation>Cualquier fecha</translation>
    </message>
    <message>
        <source>Last 12 months</source>
        <translation>Últimos 12 meses</translation>
    </message>
    <message>
        <source>Last 3 years</source>
        <translation>Últimos 3 años</translation>
    </message>
    <message>
        <source>From … to …</source>
        <translation>De … a …</translation>
    </message>
    <message>
        <source>Only this kind of vehicle</source>
        <translation>Solo esta clase de vehículo</translation>
    </message>
    <message>
        <source>Any vehicle</source>
        <translation>Cualquier vehículo</translation>
    </message>
    <message>
        <source>Any system</source>
        <translation>Cualquier sistema</translation>
    </message>
    <message>
        <source>Only this system</source>
        <translation>Solo este sistema</translation>
    </message>
    <message>
        <source>Only this time</source>
        <translation>Solo estas fechas</translation>
    </message>
    <message>
        <source>from: 2024-05</source>
        <translation>desde: 2024-05</translation>
    </message>
    <message>
        <source>From this day, month or year</source>
        <translation>Desde este día, mes o año</translation>
    </message>
    <message>
        <source>to: 2024-05</source>
        <translation>hasta: 2024-05</translation>
    </message>
    <message>
        <source>To this day, month or year</source>
        <translation>Hasta este día, mes o año</translation>
    </message>
    <message>
        <source>Only</source>
        <translation>Solo</translation>
    </message>
    <message>
        <source>{sentence} Until then all times count.</source>
        <translation>{sentence} Hasta entonces cuentan todas las fechas.</translation>
    </message>
    <message>
        <source>That ends before it begins: no job can fit.</source>
        <translation>Termina antes de empezar: ningún trabajo puede coincidir.</translation>
    </message>
    <message>
        <source>from {day}</source>
        <translation>desde {day}</translation>
    </message>
    <message>
        <source>to {day}</source>
        <translation>hasta {day}</translation>
    </message>
    <message>
        <source>{number:,} settled</source>
        <translation>cerrados: {number:,}</translation>
    </message>
    <message>
        <source>{number:,} came back</source>
        <translation>volvieron: {number:,}</translation>
    </message>
    <message>
        <source>What led there</source>
        <translation>Qué llevó a ello</translation>
    </message>
    <message>
        <source>{fix}: what led there</source>
        <translation>{fix}: qué llevó a ello</translation>
    </message>
    <message>
        <source>What led there stands below.</source>
        <translation>Lo que llevó a ello está debajo.</translation>
    </message>
    <message>
        <source>What was done here before</source>
        <translation>Qué se hizo aquí antes</translation>
    </message>
    <message>
        <source>Shares are of jobs whose window is over; the range holds the true share 95 times in 100. A job with two kinds of part counts under both.</source>
        <translation>Las proporciones son de trabajos cuyo plazo ha terminado; el intervalo contiene la verdadera 95 veces de 100. Un trabajo con dos clases de pieza cuenta en ambas.</translation>
    </message>
    <message>
        <source>Reading what led there</source>
        <translation>Leyendo qué llevó a ello</translation>
    </message>
    <message>
        <source>← Back to the jobs found</source>
        <translation>← Volver a los trabajos encontrados</translation>
    </message>
    <message>
        <source>Back to the jobs found</source>
        <translation>Volver a los trabajos encontrados</translation>
    </message>
    <message>
        <source>Back to the jobs found (Esc)</source>
        <translation>Volver a los trabajos encontrados (Esc)</translation>
    </message>
    <message>
        <source>Jobs found</source>
        <translation>Trabajos encontrados</translation>
    </message>
    <message>
        <source>Start a job like this one</source>
        <translation>Empezar un trabajo como este</translation>
    </message>
    <message>
        <source>A car is here with the same trouble as the chosen job</source>
        <translation>Hay aquí un vehículo con el mismo problema que el trabajo elegido</translation>
    </message>
    <message>
        <source>Open the job</source>
        <translation>Abrir el trabajo</translation>
    </message>
    <message>
        <source>Not handed over yet.</source>
        <translation>Aún sin entregar.</translation>
    </message>
    <message>
        <source>No cause and no correction written.</source>
        <translation>No hay causa ni corrección escritas.</translation>
    </message>
    <message>
        <source>{said} These are the newest {shown} of {jobs:,}.</source>
        <translation>{said} Estos son los {shown} más recientes de {jobs:,}.</translation>
    </message>
    <message>
        <source>No finding and no code is written in these jobs.</source>
        <translation>En estos trabajos no hay escrito ningún hallazgo ni ningún código.</translation>
    </message>
    <message>
        <source>Looked at first</source>
        <translation>Lo que se miró primero</translation>
    </message>
    <message>
        <source>with a finding</source>
        <translation>con un hallazgo</translation>
    </message>
    <message>
        <source>Codes found</source>
        <translation>Códigos hallados</translation>
    </message>
    <message>
        <source>with a code</source>
        <translation>con un código</translation>
    </message>
    <message>
        <source>Few jobs: a hint, no more.</source>
        <translation>Pocos trabajos: un indicio, nada más.</translation>
    </message>
    <message>
        <source>Read from the newest {read:,} of {of:,} jobs.</source>
        <translation>Leído de los {read:,} más recientes de {of:,} trabajos.</translation>
    </message>
    <message>
        <source>{heading}, of {jobs} {which}:</source>
        <translation>{heading}, de {jobs} {which}:</translation>
    </message>
    <message>
        <source>Our own phrases</source>
        <translation>Frases propias</translation>
    </message>
    <message>
        <source>The shop&apos;s own phrases</source>
        <translation>Frases propias del taller</translation>
    </message>
    <message>
        <source>What your customers say, and what it means here ({keys})</source>
        <translation>Lo que dicen sus clientes, y lo que significa aquí ({keys})</translation>
    </message>
    <message>
        <source>This shop&apos;s own phrases. Press one to change it or to take it away.</source>
        <translation>Frases propias de este taller. Pulse una para cambiarla o quitarla.</translation>
    </message>
    <message>
        <source>No phrase is the shop&apos;s own yet. What is kept here counts with the next letter typed.</source>
        <translation>Aún no hay ninguna frase propia del taller. Lo que se guarda aquí cuenta con la próxima letra escrita.</translation>
    </message>
    <message>
        <source>No phrase of the shop&apos;s own is written above. Press one in the list first.</source>
        <translation>Arriba no hay ninguna frase propia del taller. Pulse primero una de la lista.</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Take away</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>What customers say</source>
        <translation>Lo que dicen los clientes</translation>
    </message>
    <message>
        <source>it bucks</source>
        <translation>it bucks</translation>
    </message>
    <message>
        <source>Keep what it means here</source>
        <translation>Guardar lo que significa aquí</translation>
    </message>
    <message>
        <source>Take this phrase away</source>
        <translation>Quitar esta frase</translation>
    </message>
    <message>
        <source>Close the shop&apos;s own phrases</source>
        <translation>Cerrar las frases propias del taller</translation>
    </message>
    <message>
        <source>leaves the shop&apos;s own phrases</source>
        <translation>sale de las frases propias del taller</translation>
    </message>
    <message>
        <source>When a customer says</source>
        <translation>Cuando un cliente dice</translation>
    </message>
    <message>
        <source>it means here</source>
        <translation>aquí significa</translation>
    </message>
    <message>
        <source>“{phrase}” means {symptom}</source>
        <translation>“{phrase}” significa {symptom}</translation>
    </message>
    <message>
        <source>Here it means {symptom}, kept as “{phrase}”.</source>
        <translation>Aquí significa {symptom}, guardado como “{phrase}”.</translation>
    </message>
    <message>
        <source> and </source>
        <translation> y </translation>
    </message>
    <message>
        <source>So far it is read as {names}; kept here, the shop&apos;s meaning holds.</source>
        <translation>Hasta ahora se lee como {names}; si se guarda aquí, vale el significado del taller.</translation>
    </message>
    <message>
        <source>Which symptom? Choose one in its list, or type more of its name.</source>
        <translation>¿Qué síntoma? Elija uno en su lista, o escriba más de su nombre.</translation>
    </message>
    <message>
        <source>Read as</source>
        <translation>Se lee como</translation>
    </message>
    <message>
        <source>Say what it means here</source>
        <translation>Decir qué significa aquí</translation>
    </message>
    <message>
        <source>Say what these words mean here</source>
        <translation>Decir qué significan aquí estas palabras</translation>
    </message>
    <message>
        <source>What customers say, and what it means in this shop</source>
        <translation>Lo que dicen los clientes, y lo que significa en este taller</translation>
    </message>
    <message>
        <source>Take out {what}</source>
        <translation>Quitar {what}</translation>
    </message>
    <message>
        <source>Take “{what}” out of the question</source>
        <translation>Quitar “{what}” de la pregunta</translation>
    </message>
    <message>
        <source>Similar jobs</source>
        <translation>Trabajos parecidos</translation>
    </message>
    <message>
        <source>Similar jobs here</source>
        <translation>Trabajos parecidos aquí</translation>
    </message>
    <message>
        <source>Looking for similar jobs</source>
        <translation>Buscando trabajos parecidos</translation>
    </message>
    <message>
        <source>The symptom that it means here</source>
        <translation>El síntoma que significa aquí</translation>
    </message>
    <message>
        <source>Type a part of its name</source>
        <translation>Escriba una parte de su nombre</translation>
    </message>
    <message>
        <source>Symptoms to choose from</source>
        <translation>Síntomas para elegir</translation>
    </message>
    <message>
        <source>jobs read for the search</source>
        <translation>trabajos leídos para la búsqueda</translation>
    </message>
    <message>
        <source>no car with the VIN {vin} here</source>
        <translation>ningún vehículo con el VIN {vin} aquí</translation>
    </message>
    <message>
        <source>the search index</source>
        <translation>el índice de búsqueda</translation>
    </message>
    <message>
        <source>It has not the words of {number:,} jobs as they are now (job row {rows}).</source>
        <translation>No tiene las palabras de {number:,} trabajos tal como son ahora (fila de trabajo {rows}).</translation>
    </message>
    <message>
        <source>Its words are damaged.</source>
        <translation>Sus palabras están dañadas.</translation>
    </message>
    <message>
        <source>It can&apos;t be read to the end ({said}).</source>
        <translation>No se puede leer hasta el final ({said}).</translation>
    </message>
    <message>
        <source>{name} is damaged.</source>
        <translation>{name} está dañado.</translation>
    </message>
    <message>
        <source>Make the search index anew</source>
        <translation>Hacer de nuevo el índice de búsqueda</translation>
    </message>
    <message>
        <source>“{typed}” is no day.</source>
        <translation>“{typed}” no es un día.</translation>
    </message>
    <message>
        <source>Type a year, 2024-05 or 2024-05-31.</source>
        <translation>Escriba un año, 2024-05 o 2024-05-31.</translation>
    </message>
    <message>
        <source>there is no condition “{identity}”</source>
        <translation>no hay ninguna condición “{identity}”</translation>
    </message>
    <message>
        <source>No symptom groups were found in {name}.</source>
        <translation>En {name} no se encontró ningún grupo de síntomas.</translation>
    </message>
    <message>
        <source>{name} cannot be read: {error}.</source>
        <translation>{name} no se puede leer: {error}.</translation>
    </message>
    <message>
        <source>Mend that line, or take the file away.</source>
        <translation>Corrija esa línea, o quite el archivo.</translation>
    </message>
    <message>
        <source>“{key}” is not a part of a vocabulary</source>
        <translation>“{key}” no es una parte de un vocabulario</translation>
    </message>
    <message>
        <source>a group is not a table</source>
        <translation>un grupo no es una tabla</translation>
    </message>
    <message>
        <source>[[groups]] with id, plain, means, heard</source>
        <translation>[[groups]] con id, plain, means, heard</translation>
    </message>
    <message>
        <source>without an id</source>
        <translation>sin id</translation>
    </message>
    <message>
        <source>group {name} has a key “{key}”</source>
        <translation>el grupo {name} tiene una clave “{key}”</translation>
    </message>
    <message>
        <source>group {name} has no “{key}”</source>
        <translation>el grupo {name} no tiene “{key}”</translation>
    </message>
    <message>
        <source>a word or two in quotes</source>
        <translation>una o dos palabras entre comillas</translation>
    </message>
    <message>
        <source>group {name} has nothing in “heard”</source>
        <translation>el grupo {name} no tiene nada en “heard”</translation>
    </message>
    <message>
        <source>what a customer would say</source>
        <translation>lo que diría un cliente</translation>
    </message>
    <message>
        <source>group {name}: “{value}” in “{key}” is not known</source>
        <translation>grupo {name}: “{value}” en “{key}” no se conoce</translation>
    </message>
    <message>
        <source>group {name}: “{code}” is not a trouble code</source>
        <translation>grupo {name}: “{code}” no es un código de avería</translation>
    </message>
    <message>
        <source>codes such as P0300</source>
        <translation>códigos como P0300</translation>
    </message>
    <message>
        <source>Two symptom groups are called “{name}”.</source>
        <translation>Dos grupos de síntomas se llaman “{name}”.</translation>
    </message>
    <message>
        <source>Group {name} names “{other}” as near, and there is no such group.</source>
        <translation>El grupo {name} nombra “{other}” como cercano, y no existe ese grupo.</translation>
    </message>
    <message>
        <source>an entry of two_meanings has no “word”</source>
        <translation>una entrada de two_meanings no tiene “word”</translation>
    </message>
    <message>
        <source>a word in quotes</source>
        <translation>una palabra entre comillas</translation>
    </message>
    <message>
        <source>“{word}” has no “ask”</source>
        <translation>“{word}” no tiene “ask”</translation>
    </message>
    <message>
        <source>the question to ask, in quotes</source>
        <translation>la pregunta que hay que hacer, entre comillas</translation>
    </message>
    <message>
        <source>“{name}” is not a list of tables</source>
        <translation>“{name}” no es una lista de tablas</translation>
    </message>
    <message>
        <source>“{name}” is not a table</source>
        <translation>“{name}” no es una tabla</translation>
    </message>
    <message>
        <source>“{word}” in “{name}” has no meaning</source>
        <translation>“{word}” en “{name}” no tiene significado</translation>
    </message>
    <message>
        <source>{where} is not a list of phrases</source>
        <translation>{where} no es una lista de frases</translation>
    </message>
    <message>
        <source>Accepted: {accepted}.</source>
        <translation>Se acepta: {accepted}.</translation>
    </message>
    <message>
        <source>came back</source>
        <translation>volvió</translation>
    </message>
    <message>
        <source>a return waits to be judged</source>
        <translation>una vuelta espera un juicio</translation>
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
        <source>not caught</source>
        <translation>no reproducida</translation>
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
        <source>under watch</source>
        <translation>en observación</translation>
    </message>
    <message>
        <source>why:</source>
        <translation>por qué:</translation>
    </message>
    <message>
        <source>Opened last</source>
        <translation>Últimos abiertos</translation>
    </message>
</context>
</TS>
