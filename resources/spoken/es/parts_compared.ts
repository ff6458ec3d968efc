<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es">
<context>
    <name></name>
    <message>
        <source>Write down the position</source>
        <extracomment>The texts of a pair, with the name of the deed that writes one down.</extracomment>
        <translation>Anotar la posición</translation>
    </message>
    <message>
        <source>Write down the supplier</source>
        <translation>Anotar el proveedor</translation>
    </message>
    <message>
        <source>Write down the lot</source>
        <translation>Anotar el lote</translation>
    </message>
    <message>
        <source>Write down the number removed</source>
        <translation>Anotar el número de la pieza desmontada</translation>
    </message>
    <message>
        <source>Write down the number on box</source>
        <translation>Anotar el número de la caja</translation>
    </message>
    <message>
        <source>Write down the number on part</source>
        <translation>Anotar el número de la pieza</translation>
    </message>
    <message>
        <source>Write down the fate</source>
        <translation>Anotar el destino</translation>
    </message>
    <message>
        <source>Write down the note removed</source>
        <translation>Anotar la nota sobre la pieza desmontada</translation>
    </message>
    <message>
        <source>Write down the note replacement</source>
        <translation>Anotar la nota sobre el repuesto</translation>
    </message>
    <message>
        <source>Lay old and new side by side</source>
        <translation>Poner vieja y nueva lado a lado</translation>
    </message>
    <message>
        <source>Take the pair away</source>
        <translation>Quitar el par</translation>
    </message>
    <message>
        <source>Write down the {label}</source>
        <translation>Anotar: {label}</translation>
    </message>
    <message>
        <source>Note “{term}”</source>
        <translation>Anotar “{term}”</translation>
    </message>
    <message>
        <source>By whose word is that?</source>
        <translation>¿Quién lo dice?</translation>
    </message>
    <message>
        <source>Name the letter, the bulletin or the person.</source>
        <translation>Indique la carta, el boletín o la persona.</translation>
    </message>
    <message>
        <source>Explain a difference</source>
        <translation>Explicar una diferencia</translation>
    </message>
    <message>
        <source>A limit is a number.</source>
        <translation>Un límite es un número.</translation>
    </message>
    <message>
        <source>Accepted: a number, or nothing.</source>
        <translation>Se acepta: un número, o nada.</translation>
    </message>
    <message>
        <source>The lower limit {low:g} is above the upper one {high:g}.</source>
        <translation>El límite inferior {low:g} está por encima del superior {high:g}.</translation>
    </message>
    <message>
        <source>Swap them.</source>
        <translation>Intercámbielos.</translation>
    </message>
    <message>
        <source>Enter the maker&apos;s limits</source>
        <translation>Escribir los límites del fabricante</translation>
    </message>
    <message>
        <source>Say where it comes from</source>
        <translation>Decir de dónde viene</translation>
    </message>
    <message>
        <source>Fit the replacement</source>
        <translation>Montar el repuesto</translation>
    </message>
    <message>
        <source>Stop before fitting</source>
        <translation>Detener antes de montar</translation>
    </message>
    <message>
        <source>Put photos to a part</source>
        <translation>Poner fotos a una pieza</translation>
    </message>
    <message>
        <source>Take a photo from a part</source>
        <translation>Quitar una foto de una pieza</translation>
    </message>
    <message>
        <source>Which instrument is it?</source>
        <translation>¿Qué instrumento es?</translation>
    </message>
    <message>
        <source>Give it a name, such as “calliper 2”.</source>
        <translation>Dele un nombre, como “calibre 2”.</translation>
    </message>
    <message>
        <source>Resolution and permitted error are numbers, zero or more.</source>
        <translation>La resolución y el error permitido son números, cero o más.</translation>
    </message>
    <message>
        <source>The gauge studies of the {name} were read in another unit.</source>
        <translation>Los estudios del instrumento {name} se leyeron en otra unidad.</translation>
    </message>
    <message>
        <source>Nothing was changed.</source>
        <translation>No se cambió nada.</translation>
    </message>
    <message>
        <source>Give the instrument in the other unit a name of its own.</source>
        <translation>Dé un nombre propio al instrumento en la otra unidad.</translation>
    </message>
    <message>
        <source>Keep the {name}</source>
        <translation>Guardar {name}</translation>
    </message>
    <message>
        <source>Put an instrument away</source>
        <translation>Retirar un instrumento</translation>
    </message>
    <message>
        <source>Belt identity</source>
        <translation>Identidad de la correa</translation>
    </message>
    <message>
        <source>Pitch by ISO 9981. A marking is a nominal length, made with a tolerance of its own, and a worn belt has stretched. Stretch-fit belts have no tensioner: there only the same will do.</source>
        <translation>Paso según ISO 9981. Una marca es una longitud nominal, hecha con su propia tolerancia, y una correa gastada se ha estirado. Las correas elásticas no tienen tensor: en ellas solo sirve la misma.</translation>
    </message>
    <message>
        <source>{new} ribs against {old}</source>
        <extracomment>Worn flanks and the missing edge of the outer ribs, mm of pitch (common practice, no source). What has no say where the old belt&apos;s marking can be read.</extracomment>
        <translation>{new} nervios frente a {old}</translation>
    </message>
    <message>
        <source> or </source>
        <translation> o </translation>
    </message>
    <message>
        <source>none of the known ones</source>
        <translation>ninguno de los conocidos</translation>
    </message>
    <message>
        <source>profile {new} against {old}</source>
        <translation>perfil {new} frente a {old}</translation>
    </message>
    <message>
        <source>Not the same belt: {against}. {sentence}</source>
        <translation>No es la misma correa: {against}. {sentence}</translation>
    </message>
    <message>
        <source>No difference in length was found{doubt}.</source>
        <translation>No se halló diferencia de longitud{doubt}.</translation>
    </message>
    <message>
        <source>, as marked</source>
        <translation>, según la marca</translation>
    </message>
    <message>
        <source>The new one is {size} longer{doubt}{as_marked}, which moves one tensioner pulley by about {moved}.</source>
        <translation>La nueva es {size} más larga{doubt}{as_marked}, lo que mueve una polea tensora unos {moved}.</translation>
    </message>
    <message>
        <source>The new one is {size} shorter{doubt}{as_marked}, which moves one tensioner pulley by about {moved}.</source>
        <translation>La nueva es {size} más corta{doubt}{as_marked}, lo que mueve una polea tensora unos {moved}.</translation>
    </message>
    <message>
        <source>&apos;{typed}&apos; isn&apos;t a belt&apos;s marking.</source>
        <translation>&apos;{typed}&apos; no es la marca de una correa.</translation>
    </message>
    <message>
        <source>Accepted: ribs, profile ({profiles}) and length in mm, like 6PK1230.</source>
        <translation>Se acepta: nervios, perfil ({profiles}) y longitud en mm, como 6PK1230.</translation>
    </message>
    <message>
        <source>The old one is marked {ribs} ribs {profile}, {length:g} mm.</source>
        <translation>La vieja está marcada con {ribs} nervios {profile}, {length:g} mm.</translation>
    </message>
    <message>
        <source>it is empty, and so is one of ribs, width and length.</source>
        <translation>está vacío, y también lo está uno de nervios, anchura y longitud.</translation>
    </message>
    <message>
        <source>Accepted: the marking, or all of those three.</source>
        <translation>Se acepta: la marca, o los tres datos.</translation>
    </message>
    <message>
        <source>{ribs} ribs on {width}: a pitch of {pitch} mm points to {profiles}.</source>
        <translation>{ribs} nervios en {width}: un paso de {pitch} mm apunta a {profiles}.</translation>
    </message>
    <message>
        <source>{ribs} ribs on {width}: a pitch of {pitch} mm fits no known profile.</source>
        <translation>{ribs} nervios en {width}: un paso de {pitch} mm no corresponde a ningún perfil conocido.</translation>
    </message>
    <message>
        <source>Ribs, profile and length of the old belt against the new one&apos;s marking.</source>
        <translation>Nervios, perfil y longitud de la correa vieja frente a la marca de la nueva.</translation>
    </message>
    <message>
        <source>marking on the new belt</source>
        <translation>marca de la correa nueva</translation>
    </message>
    <message>
        <source>Like 6PK1230.</source>
        <translation>Como 6PK1230.</translation>
    </message>
    <message>
        <source>marking on the old belt</source>
        <translation>marca de la correa vieja</translation>
    </message>
    <message>
        <source>Where it can&apos;t be read: count and measure below.</source>
        <translation>Si no se puede leer: cuente y mida más abajo.</translation>
    </message>
    <message>
        <source>ribs on the old belt</source>
        <translation>nervios de la correa vieja</translation>
    </message>
    <message>
        <source>Counted. Only without the old marking.</source>
        <translation>Contados. Solo sin la marca vieja.</translation>
    </message>
    <message>
        <source>width of the old belt</source>
        <translation>anchura de la correa vieja</translation>
    </message>
    <message>
        <source>Over all ribs. Only without the old marking.</source>
        <translation>Sobre todos los nervios. Solo sin la marca vieja.</translation>
    </message>
    <message>
        <source>length of the old belt</source>
        <translation>longitud de la correa vieja</translation>
    </message>
    <message>
        <source>As its marking counts: a tape around the outside reads some millimetres more. Only without the old marking.</source>
        <translation>Como la cuenta su marca: una cinta métrica por fuera da algunos milímetros más. Solo sin la marca vieja.</translation>
    </message>
    <message>
        <source>the width may be off by, ±</source>
        <translation>error posible de la anchura, ±</translation>
    </message>
    <message>
        <source>the length may be off by, ±</source>
        <translation>error posible de la longitud, ±</translation>
    </message>
    <message>
        <source>Belt run around two pulleys</source>
        <translation>Recorrido de correa en dos poleas</translation>
    </message>
    <message>
        <source>Holds for two pulleys, belt not crossed, diameters where the belt runs. Runs over more pulleys need every centre: there the tensioner&apos;s own marks decide.</source>
        <translation>Vale para dos poleas, correa sin cruzar, diámetros donde corre la correa. Los recorridos con más poleas piden todos los centros: ahí deciden las marcas del propio tensor.</translation>
    </message>
    <message>
        <source>the pulleys would overlap.</source>
        <translation>las poleas se solaparían.</translation>
    </message>
    <message>
        <source>Accepted: at least {least:g} mm.</source>
        <translation>Se acepta: al menos {least:g} mm.</translation>
    </message>
    <message>
        <source>The run is {length} long{doubt}.</source>
        <translation>El recorrido mide {length}{doubt}.</translation>
    </message>
    <message>
        <source>A belt of {length} can&apos;t be told from that.</source>
        <translation>Una correa de {length} no se distingue de eso.</translation>
    </message>
    <message>
        <source>A belt of {length} doesn&apos;t go around these pulleys at all.</source>
        <translation>Una correa de {length} no llega a rodear estas poleas.</translation>
    </message>
    <message>
        <source>A belt of {length} is {more} longer: the pulleys stand {moved} farther.</source>
        <translation>Una correa de {length} es {more} más larga: las poleas quedan {moved} más lejos.</translation>
    </message>
    <message>
        <source>A belt of {length} is {more} shorter: the pulleys stand {moved} nearer.</source>
        <translation>Una correa de {length} es {more} más corta: las poleas quedan {moved} más cerca.</translation>
    </message>
    <message>
        <source>The belt length that two pulleys ask for.</source>
        <translation>La longitud de correa que piden dos poleas.</translation>
    </message>
    <message>
        <source>one pulley&apos;s diameter</source>
        <translation>diámetro de una polea</translation>
    </message>
    <message>
        <source>Where the belt runs.</source>
        <translation>Donde corre la correa.</translation>
    </message>
    <message>
        <source>the other pulley&apos;s diameter</source>
        <translation>diámetro de la otra polea</translation>
    </message>
    <message>
        <source>centres apart</source>
        <translation>distancia entre centros</translation>
    </message>
    <message>
        <source>Middle of shaft to middle.</source>
        <translation>De centro de eje a centro de eje.</translation>
    </message>
    <message>
        <source>length of the belt to hold against</source>
        <translation>longitud de la correa que se compara</translation>
    </message>
    <message>
        <source>As marked or measured; may stay empty.</source>
        <translation>Según la marca o medida; puede quedar vacío.</translation>
    </message>
    <message>
        <source>the centres may be off by, ±</source>
        <translation>error posible de los centros, ±</translation>
    </message>
    <message>
        <source>one diameter may be off by, ±</source>
        <translation>error posible de un diámetro, ±</translation>
    </message>
    <message>
        <source>p below {rare:g}</source>
        <translation>p menor que {rare:g}</translation>
    </message>
    <message>
        <source>{first} and {last}</source>
        <translation>{first} y {last}</translation>
    </message>
    <message>
        <source>Bolt circle</source>
        <translation>Círculo de pernos</translation>
    </message>
    <message>
        <source>Holds for studs that stand evenly on one circle. Middle to middle: inner edge of one to outer edge of the next. A near miss bolts up and runs off centre: count, measure, compare.</source>
        <translation>Vale para pernos repartidos por igual en un círculo. De centro a centro: del borde interior de uno al borde exterior del siguiente. Uno casi igual se deja atornillar y gira descentrado: cuente, mida, compare.</translation>
    </message>
    <message>
        <source>{studs} studs, {apart} apart, stand on a circle of {diameter}{doubt}.</source>
        <translation>{studs} pernos, a {apart} uno de otro, están en un círculo de {diameter}{doubt}.</translation>
    </message>
    <message>
        <source>The readings don&apos;t speak against {wanted}.</source>
        <translation>Las lecturas no contradicen {wanted}.</translation>
    </message>
    <message>
        <source>That is {by} larger than {wanted}: not that circle.</source>
        <translation>Es {by} mayor que {wanted}: no es ese círculo.</translation>
    </message>
    <message>
        <source>That is {by} smaller than {wanted}: not that circle.</source>
        <translation>Es {by} menor que {wanted}: no es ese círculo.</translation>
    </message>
    <message>
        <source>The circle that can&apos;t be measured straight across with an odd number of studs.</source>
        <translation>El círculo que no se puede medir de lado a lado cuando los pernos son impares.</translation>
    </message>
    <message>
        <source>studs or holes</source>
        <translation>pernos u orificios</translation>
    </message>
    <message>
        <source>Counted.</source>
        <translation>Contados.</translation>
    </message>
    <message>
        <source>neighbours apart, middle to middle</source>
        <translation>distancia entre vecinos, de centro a centro</translation>
    </message>
    <message>
        <source>One or several pairs of neighbours.</source>
        <translation>Uno o varios pares de vecinos.</translation>
    </message>
    <message>
        <source>circle to hold against</source>
        <translation>círculo que se compara</translation>
    </message>
    <message>
        <source>From the old part or the maker&apos;s data; may stay empty.</source>
        <translation>De la pieza vieja o de los datos del fabricante; puede quedar vacío.</translation>
    </message>
    <message>
        <source>studs may stand off their place by, ±</source>
        <translation>desvío posible de los pernos, ±</translation>
    </message>
    <message>
        <source>0.1 is common practice, no source.</source>
        <translation>0.1 es práctica común, sin fuente.</translation>
    </message>
    <message>
        <source>one reading may be off by, ±</source>
        <translation>error posible de una lectura, ±</translation>
    </message>
    <message>
        <source>Crossed leads</source>
        <translation>Cables cruzados</translation>
    </message>
    <message>
        <source>Looks at swaps of two leads on one distributor, timing and valves in order. Several swaps can look alike, and so can another fault: follow each lead from tower to plug.</source>
        <translation>Considera cambios de dos cables en un distribuidor, con el encendido y las válvulas en orden. Varios cambios pueden parecer iguales, y otra avería también: siga cada cable de la torre a la bujía.</translation>
    </message>
    <message>
        <source>none heard or not known</source>
        <translation>no se oyó o no se sabe</translation>
    </message>
    <message>
        <source>it doesn&apos;t name each cylinder once.</source>
        <translation>no nombra cada cilindro una vez.</translation>
    </message>
    <message>
        <source>Accepted: the numbers from 1 up, each once, like 1-3-4-2.</source>
        <translation>Se acepta: los números desde el 1, cada uno una vez, como 1-3-4-2.</translation>
    </message>
    <message>
        <source>it doesn&apos;t name each lead once.</source>
        <translation>no nombra cada cable una vez.</translation>
    </message>
    <message>
        <source>Accepted: the {count} numbers, each once.</source>
        <translation>Se acepta: los {count} números, cada uno una vez.</translation>
    </message>
    <message>
        <source>a cylinder isn&apos;t in the firing order.</source>
        <translation>un cilindro no está en el orden de encendido.</translation>
    </message>
    <message>
        <source>Accepted: numbers of the firing order.</source>
        <translation>Se acepta: números del orden de encendido.</translation>
    </message>
    <message>
        <source>neither the leads as found nor a sign is entered.</source>
        <translation>no se ha escrito ni cómo se hallaron los cables ni una señal.</translation>
    </message>
    <message>
        <source>Accepted: the leads at the towers, or the dead cylinders.</source>
        <translation>Se acepta: los cables en las torres, o los cilindros muertos.</translation>
    </message>
    <message>
        <source>Every lead stands on its tower.</source>
        <translation>Cada cable está en su torre.</translation>
    </message>
    <message>
        <source>The leads of {cylinders} are crossed.</source>
        <translation>Los cables de {cylinders} están cruzados.</translation>
    </message>
    <message>
        <source>The order is right but runs backwards: was it read against the rotor&apos;s turn?</source>
        <translation>El orden es correcto pero va al revés: ¿se leyó contra el giro del rotor?</translation>
    </message>
    <message>
        <source>All leads stand 1 tower on, in the right order.</source>
        <translation>Todos los cables están 1 torre más allá, en el orden correcto.</translation>
    </message>
    <message>
        <source>All leads stand {steps} towers on, in the right order.</source>
        <translation>Todos los cables están {steps} torres más allá, en el orden correcto.</translation>
    </message>
    <message>
        <source>The leads of {cylinders} stand on other towers: more than one swap.</source>
        <translation>Los cables de {cylinders} están en otras torres: más de un cambio.</translation>
    </message>
    <message>
        <source> Or: </source>
        <translation> O: </translation>
    </message>
    <message>
        <source>None of the {total} swaps of two leads explains {signs}: look elsewhere.</source>
        <translation>Ninguno de los {total} cambios de dos cables explica {signs}: busque en otra parte.</translation>
    </message>
    <message>
        <source>One swap of {total} explains {signs}: {swap}.</source>
        <translation>Un cambio de {total} explica {signs}: {swap}.</translation>
    </message>
    <message>
        <source>; and {more} more</source>
        <translation>; y {more} más</translation>
    </message>
    <message>
        <source>{swaps} swaps of {total} explain {signs}: {which}{more}.</source>
        <translation>{swaps} cambios de {total} explican {signs}: {which}{more}.</translation>
    </message>
    <message>
        <source>cylinder {cylinder} dead</source>
        <translation>cilindro {cylinder} muerto</translation>
    </message>
    <message>
        <source>cylinders {cylinders} dead</source>
        <translation>cilindros {cylinders} muertos</translation>
    </message>
    <message>
        <source>a bang {where}</source>
        <translation>un petardeo {where}</translation>
    </message>
    <message>
        <source> and </source>
        <extracomment>Steps of the tool. Two readings both fall on a hundredth one by chance once in 10,000 times.</extracomment>
        <translation> y </translation>
    </message>
    <message>
        <source>{first} with {second} (sparks {first_late:.0f}° and {second_late:.0f}° of crank late)</source>
        <translation>{first} con {second} (chispa {first_late:.0f}° y {second_late:.0f}° de cigüeñal más tarde)</translation>
    </message>
    <message>
        <source>Which two leads are crossed, from the cap as found or from the dead cylinders.</source>
        <translation>Qué dos cables están cruzados, según la tapa como se halló o según los cilindros muertos.</translation>
    </message>
    <message>
        <source>firing order</source>
        <translation>orden de encendido</translation>
    </message>
    <message>
        <source>From the vehicle maker, like 1-3-4-2.</source>
        <translation>Del fabricante del vehículo, como 1-3-4-2.</translation>
    </message>
    <message>
        <source>leads as found</source>
        <translation>cables como se hallaron</translation>
    </message>
    <message>
        <source>In the rotor&apos;s turning direction, beginning at the tower that should carry the first of the firing order. May stay empty.</source>
        <translation>En el sentido de giro del rotor, empezando por la torre que debería llevar el primero del orden de encendido. Puede quedar vacío.</translation>
    </message>
    <message>
        <source>dead cylinders</source>
        <translation>cilindros muertos</translation>
    </message>
    <message>
        <source>Those that don&apos;t pull. May stay empty.</source>
        <translation>Los que no tiran. Puede quedar vacío.</translation>
    </message>
    <message>
        <source>it bangs</source>
        <translation>petardea</translation>
    </message>
    <message>
        <source>Fuel-trim split</source>
        <translation>Reparto de la corrección de combustible</translation>
    </message>
    <message>
        <source>Holds warm, in closed loop, on one fuel, with a mass-flow sensor, the leak the same at each flow. It says where to look, not which part is bad.</source>
        <translation>Vale en caliente, en lazo cerrado, con un solo combustible, con medidor de masa de aire y con la misma fuga en cada caudal. Dice dónde mirar, no qué pieza está mal.</translation>
    </message>
    <message>
        <source>{trims} trims stand against {flows} flows.</source>
        <translation>{trims} correcciones frente a {flows} caudales.</translation>
    </message>
    <message>
        <source>Accepted: one for each flow, in the same order.</source>
        <translation>Se acepta: una por cada caudal, en el mismo orden.</translation>
    </message>
    <message>
        <source>one flow alone can&apos;t be split.</source>
        <translation>con un solo caudal no se puede repartir.</translation>
    </message>
    <message>
        <source>Accepted: two or better three flows, the largest half as much again as the smallest, from idle to load.</source>
        <translation>Se acepta: dos o mejor tres caudales, el mayor al menos una vez y media el menor, de ralentí a carga.</translation>
    </message>
    <message>
        <source> Two points fit any line: take a third.</source>
        <translation> Dos puntos caben en cualquier recta: tome un tercero.</translation>
    </message>
    <message>
        <source>{trim:.3g} % at {flow:g} g/s</source>
        <translation>{trim:.3g} % a {flow:g} g/s</translation>
    </message>
    <message>
        <source>Together the trims are {points}</source>
        <translation>En conjunto, las correcciones son {points}</translation>
    </message>
    <message>
        <source>they fall with the flow, like {air} of air that the sensor doesn&apos;t see. Look for a leak behind the sensor.{same_share}</source>
        <translation>bajan con el caudal, como {air} de aire que el sensor no ve. Busque una fuga detrás del sensor.{same_share}</translation>
    </message>
    <message>
        <source>they grow with the flow. Look at fuel delivery under load and at a sensor that reads too little; an air leak would do the opposite.</source>
        <translation>suben con el caudal. Mire el suministro de combustible bajo carga y un sensor que marque de menos; una fuga de aire haría lo contrario.</translation>
    </message>
    <message>
        <source>fuel is taken away most where little air flows. Look for fuel that comes in beside the injection: purge, a dripping injector, fuel in the oil.</source>
        <translation>se quita más combustible donde fluye poco aire. Busque combustible que entre al margen de la inyección: purga, un inyector que gotea, combustible en el aceite.</translation>
    </message>
    <message>
        <source>no air beside the sensor can be told from the readings{doubt}.{same_share}</source>
        <translation>de las lecturas no se distingue aire al margen del sensor{doubt}.{same_share}</translation>
    </message>
    <message>
        <source> Besides, {share} %{doubt} stay at every flow: sensor, fuel pressure or the fuel itself.</source>
        <translation> Además, {share} %{doubt} queda en todos los caudales: sensor, presión de combustible o el propio combustible.</translation>
    </message>
    <message>
        <source>From trims at idle, at a steady speed and under load to where the error enters.</source>
        <translation>De las correcciones en ralentí, a velocidad constante y bajo carga, a dónde entra el error.</translation>
    </message>
    <message>
        <source>air flow</source>
        <translation>caudal de aire</translation>
    </message>
    <message>
        <source>Idle, steady and load, parted by a semicolon: 3.5; 12; 30.</source>
        <translation>Ralentí, constante y carga, separados por punto y coma: 3.5; 12; 30.</translation>
    </message>
    <message>
        <source>short-term trim</source>
        <translation>corrección a corto plazo</translation>
    </message>
    <message>
        <source>At the same moments, in the same order.</source>
        <translation>En los mismos momentos, en el mismo orden.</translation>
    </message>
    <message>
        <source>long-term trim</source>
        <translation>corrección a largo plazo</translation>
    </message>
    <message>
        <source>one trim may be off by, ±</source>
        <translation>error posible de una corrección, ±</translation>
    </message>
    <message>
        <source>How much the reading wanders (2 is common practice, no source).</source>
        <translation>Cuánto oscila la lectura (2 es práctica común, sin fuente).</translation>
    </message>
    <message>
        <source>one flow may be off by, ±</source>
        <translation>error posible de un caudal, ±</translation>
    </message>
    <message>
        <source>through the intake</source>
        <translation>por la admisión</translation>
    </message>
    <message>
        <source>in the exhaust</source>
        <translation>en el escape</translation>
    </message>
    <message>
        <source>Who misfires with whom</source>
        <translation>Quién falla con quién</translation>
    </message>
    <message>
        <source>Holds for counters of one run under one load that count misfires one by one. It says what the cylinders share, not which part is bad: swap, and see whether the fault follows.</source>
        <translation>Vale para contadores de una misma marcha con una misma carga que cuentan los fallos de encendido uno a uno. Dice qué comparten los cilindros, no qué pieza está mal: intercambie, y vea si la avería se va con ella.</translation>
    </message>
    <message>
        <source>{count} counters.</source>
        <translation>{count} contadores.</translation>
    </message>
    <message>
        <source>Accepted: one for each of 2 to 16 cylinders.</source>
        <translation>Se acepta: uno por cada cilindro, de 2 a 16.</translation>
    </message>
    <message>
        <source>it doesn&apos;t name each counted cylinder once.</source>
        <translation>no nombra cada cilindro contado una vez.</translation>
    </message>
    <message>
        <source>Accepted: the numbers 1 to {count}, each once.</source>
        <translation>Se acepta: los números del 1 al {count}, cada uno una vez.</translation>
    </message>
    <message>
        <source>a cylinder is named twice or isn&apos;t counted.</source>
        <translation>un cilindro está nombrado dos veces o no se cuenta.</translation>
    </message>
    <message>
        <source>Accepted: groups of the numbers 1 to {count}.</source>
        <translation>Se acepta: grupos de los números del 1 al {count}.</translation>
    </message>
    <message>
        <source>Too few to say: count on until there are {fewest} or more in all.</source>
        <translation>Son pocos para decidir: siga contando hasta que haya {fewest} o más en total.</translation>
    </message>
    <message>
        <source>(chi-square {statistic:.1f}, {chance})</source>
        <translation>(ji cuadrado {statistic:.1f}, {chance})</translation>
    </message>
    <message>
        <source>No difference between the cylinders shows {said}. If it stays so on counting on, look for what all share, like rotor, coil, coil lead, supply or mixture.</source>
        <translation>No se ve diferencia entre los cilindros {said}. Si sigue así al seguir contando, busque lo que todos comparten, como rotor, bobina, cable de bobina, alimentación o mezcla.</translation>
    </message>
    <message>
        <source>Uneven {said}, but no cylinder stands out: count on.</source>
        <translation>Desigual {said}, pero ningún cilindro destaca: siga contando.</translation>
    </message>
    <message>
        <source>All but {few} misfire {said}: look for what the others share and {few} doesn&apos;t.</source>
        <translation>Fallan todos menos {few} {said}: busque lo que los demás comparten y {few} no.</translation>
    </message>
    <message>
        <source>Cylinder {one} stands out {said}: look at what it has alone, like its plug, lead or coil, injector and compression.</source>
        <translation>El cilindro {one} destaca {said}: mire lo que solo él tiene, como su bujía, cable o bobina, inyector y compresión.</translation>
    </message>
    <message>
        <source> Enter the firing order, banks or coils.</source>
        <translation> Escriba el orden de encendido, las bancadas o las bobinas.</translation>
    </message>
    <message>
        <source>Nothing that was entered is common to them.{missing}</source>
        <translation>Nada de lo escrito les es común.{missing}</translation>
    </message>
    <message>
        <source>Cylinders {cylinders} stand out {said}. {shared}</source>
        <translation>Los cilindros {cylinders} destacan {said}. {shared}</translation>
    </message>
    <message>
        <source>From the misfire counters and the firing order to what the cylinders have in common.</source>
        <translation>De los contadores de fallos y el orden de encendido a lo que los cilindros tienen en común.</translation>
    </message>
    <message>
        <source>misfires of cylinder 1, 2, 3 ...</source>
        <translation>fallos del cilindro 1, 2, 3 ...</translation>
    </message>
    <message>
        <source>From the scan tool, one run, one load: 14/11/9/16.</source>
        <translation>Del escáner, una marcha, una carga: 14/11/9/16.</translation>
    </message>
    <message>
        <source>From the vehicle maker: 1-3-4-2. May stay empty.</source>
        <translation>Del fabricante del vehículo: 1-3-4-2. Puede quedar vacío.</translation>
    </message>
    <message>
        <source>banks</source>
        <translation>bancadas</translation>
    </message>
    <message>
        <source>In the order along the block: 1 2 3 / 4 5 6. May stay empty.</source>
        <translation>En el orden a lo largo del bloque: 1 2 3 / 4 5 6. Puede quedar vacío.</translation>
    </message>
    <message>
        <source>cylinders on one coil</source>
        <translation>cilindros de una misma bobina</translation>
    </message>
    <message>
        <source>Paired coils: 1 4 / 2 3. May stay empty.</source>
        <translation>Bobinas dobles: 1 4 / 2 3. Puede quedar vacío.</translation>
    </message>
    <message>
        <source>{names} hang on one coil: look at that coil, its supply and its leads.</source>
        <extracomment>Fewer than this for each cylinder, and chi-square says nothing (usual rule for it). An uneven count comes by chance no more often than this. A cylinder stands out by this many standard deviations of an even share.</extracomment>
        <translation>{names} dependen de una bobina: mire esa bobina, su alimentación y sus cables.</translation>
    </message>
    <message>
        <source>{names} are one whole bank: look at what the bank shares, air and fuel.</source>
        <translation>{names} son una bancada entera: mire lo que la bancada comparte, aire y combustible.</translation>
    </message>
    <message>
        <source>{names} lie on one bank.</source>
        <translation>{names} están en una misma bancada.</translation>
    </message>
    <message>
        <source>{names} lie side by side in the block, as far as their numbers tell: a gasket leak between them shows in compression.</source>
        <translation>{names} están uno junto al otro en el bloque, por lo que dicen sus números: una fuga de junta entre ellos se ve en la compresión.</translation>
    </message>
    <message>
        <source>{names} are a companion pair, 360° of crank apart: that points to a paired coil where there is one.</source>
        <translation>{names} son cilindros compañeros, a 360° de cigüeñal: eso apunta a una bobina doble donde la hay.</translation>
    </message>
    <message>
        <source>{names} are a companion pair, 360° of crank apart: that points to a paired coil where there is one, not to tracking in a cap.</source>
        <translation>{names} son cilindros compañeros, a 360° de cigüeñal: eso apunta a una bobina doble donde la hay, no a caminos de carbón en una tapa.</translation>
    </message>
    <message>
        <source>{names} stand side by side on a distributor cap: tracking between the two towers, or their leads crossed.</source>
        <translation>{names} están juntos en una tapa del distribuidor: camino de carbón entre las dos torres, o sus cables cruzados.</translation>
    </message>
    <message>
        <source>{names} follow each other in the firing order: one side of a cap.</source>
        <translation>{names} se siguen en el orden de encendido: un lado de una tapa.</translation>
    </message>
    <message>
        <source>Remaining life of pads and discs</source>
        <translation>Vida restante de pastillas y discos</translation>
    </message>
    <message>
        <source>Holds while the car is driven and braked as before. The thinnest place decides; the vehicle maker&apos;s limit and the law come first, and a brake with a fault isn&apos;t judged by distance.</source>
        <translation>Vale mientras el vehículo se conduzca y se frene como antes. Decide el punto más delgado; el límite del fabricante del vehículo y la ley van primero, y un freno con avería no se juzga por la distancia.</translation>
    </message>
    <message>
        <source>it is no less than the thickness when fitted.</source>
        <extracomment>Pads of one axle this far apart are asked about, mm (common practice, no source).</extracomment>
        <translation>no es menor que el espesor al montar.</translation>
    </message>
    <message>
        <source>Accepted: the maker&apos;s least thickness.</source>
        <translation>Se acepta: el espesor mínimo del fabricante.</translation>
    </message>
    <message>
        <source>the wear so far is no more than the readings may miss.</source>
        <translation>el desgaste hasta ahora no supera lo que las lecturas pueden errar.</translation>
    </message>
    <message>
        <source>Accepted: less than when fitted. Measure again after more distance.</source>
        <translation>Se acepta: menos que al montar. Mida de nuevo tras más distancia.</translation>
    </message>
    <message>
        <source>{worn} in {distance:g} {unit} is {rate:.2g} mm in 1000 {unit}. {how_far}</source>
        <translation>{worn} en {distance:g} {unit} son {rate:.2g} mm en 1000 {unit}. {how_far}</translation>
    </message>
    <message>
        <source> The thickest is {by} above the thinnest: look at slides, pins and pistons.</source>
        <translation> La más gruesa supera en {by} a la más delgada: mire guías, pasadores y pistones.</translation>
    </message>
    <message>
        <source>The thinnest is below the limit of {limit}: it has to be replaced.</source>
        <translation>El punto más delgado está por debajo del límite de {limit}: hay que sustituirlo.</translation>
    </message>
    <message>
        <source>The thinnest may already be at the limit of {limit}: treat it as worn out.</source>
        <translation>El punto más delgado puede estar ya en el límite de {limit}: trátelo como agotado.</translation>
    </message>
    <message>
        <source>At that rate {limit} is reached after about {left} {unit} more (± {off}).</source>
        <translation>A ese ritmo se llega a {limit} tras cerca de {left} {unit} más (± {off}).</translation>
    </message>
    <message>
        <source>From the wear so far to the distance at which the maker&apos;s limit is reached.</source>
        <translation>Del desgaste hasta ahora a la distancia en que se llega al límite del fabricante.</translation>
    </message>
    <message>
        <source>thickness when fitted</source>
        <translation>espesor al montar</translation>
    </message>
    <message>
        <source>Measured then, or a new one of the same part number.</source>
        <translation>Medido entonces, o una nueva del mismo número de pieza.</translation>
    </message>
    <message>
        <source>thickness now</source>
        <translation>espesor ahora</translation>
    </message>
    <message>
        <source>All pads of the axle, inner and outer, parted by a semicolon: the thinnest decides.</source>
        <translation>Todas las pastillas del eje, interiores y exteriores, separadas por punto y coma: decide la más delgada.</translation>
    </message>
    <message>
        <source>least thickness by the maker</source>
        <translation>espesor mínimo del fabricante</translation>
    </message>
    <message>
        <source>Stamped on the disc or in the vehicle maker&apos;s data.</source>
        <translation>Grabado en el disco o en los datos del fabricante del vehículo.</translation>
    </message>
    <message>
        <source>driven in between</source>
        <translation>recorrido entre ambas</translation>
    </message>
    <message>
        <source>From the odometer.</source>
        <translation>Del cuentakilómetros.</translation>
    </message>
    <message>
        <source>Worth of a road test</source>
        <translation>Valor de una prueba en carretera</translation>
    </message>
    <message>
        <source>If it came once in {once_in:g} {unit}, {driven:g} {unit} without it happen by luck in {luck} of cases with nothing repaired</source>
        <translation>Si ocurría una vez cada {once_in:g} {unit}, {driven:g} {unit} sin que ocurra suceden por azar en {luck} de los casos sin haber reparado nada</translation>
    </message>
    <message>
        <source> (from {low} to {high} if the customer is out by {factor:g})</source>
        <translation> (de {low} a {high} si el cliente se equivoca en un factor de {factor:g})</translation>
    </message>
    <message>
        <source>. That leaves little to luck.</source>
        <translation>. Eso deja poco al azar.</translation>
    </message>
    <message>
        <source>. About {needed:.0f} {unit} would leave {luck}{what_to_do}</source>
        <translation>. Cerca de {needed:.0f} {unit} dejarían {luck}{what_to_do}</translation>
    </message>
    <message>
        <source>: not to be proven on this drive; agree on a day to ask, and provoke it instead.</source>
        <translation>: no se puede probar en este recorrido; acuerde un día para preguntar, y mejor provóquelo.</translation>
    </message>
    <message>
        <source>How much luck a quiet drive leaves, and how long it would have to be.</source>
        <translation>Cuánto azar deja un recorrido sin avería, y cuánto tendría que durar.</translation>
    </message>
    <message>
        <source>it came about once in</source>
        <translation>ocurría una vez cada</translation>
    </message>
    <message>
        <source>Miles or kilometres between two times, as the customer tells it.</source>
        <translation>Millas o kilómetros entre dos veces, como lo cuenta el cliente.</translation>
    </message>
    <message>
        <source>driven without it</source>
        <translation>recorrido sin que ocurra</translation>
    </message>
    <message>
        <source>Distance under the same conditions since the repair.</source>
        <translation>Distancia en las mismas condiciones desde la reparación.</translation>
    </message>
    <message>
        <source>the customer&apos;s word may be out by a factor of</source>
        <translation>el cliente puede equivocarse en un factor de</translation>
    </message>
    <message>
        <source>2: half as often or twice as often (common practice, no source).</source>
        <translation>2: la mitad o el doble de veces (práctica común, sin fuente).</translation>
    </message>
    <message>
        <source>Rotor gap and its change</source>
        <translation>Separación del rotor y su cambio</translation>
    </message>
    <message>
        <source>No one gap is good on every engine: the vehicle maker&apos;s figure decides. The gap itself is vague, its change is not, because terminal, play and seat are the same for both rotors.</source>
        <translation>Ninguna separación es buena para todos los motores: decide la cifra del fabricante del vehículo. La separación misma es imprecisa, su cambio no, porque terminal, juego y asiento son los mismos para ambos rotores.</translation>
    </message>
    <message>
        <source>It is {by} larger</source>
        <translation>Es {by} mayor</translation>
    </message>
    <message>
        <source>It is {by} smaller</source>
        <translation>Es {by} menor</translation>
    </message>
    <message>
        <source>No change was found</source>
        <translation>No se halló cambio</translation>
    </message>
    <message>
        <source>The gap was {before} and is {after} with the new rotor (± {usual} as a rule, ± {worst} at worst). {moved}{doubt}. {touching}</source>
        <translation>La separación era {before} y es {after} con el rotor nuevo (± {usual} por regla general, ± {worst} en el peor caso). {moved}{doubt}. {touching}</translation>
    </message>
    <message>
        <source>By these radii the old rotor had no gap, and yet it ran: check the radii.</source>
        <translation>Según estos radios el rotor viejo no tenía separación, y sin embargo giraba: compruebe los radios.</translation>
    </message>
    <message>
        <source>The new tip would touch the terminal: stop and look, this may be the wrong part.</source>
        <translation>La punta nueva tocaría el terminal: pare y mire, puede ser la pieza equivocada.</translation>
    </message>
    <message>
        <source>If everything adds up, the new tip can touch the terminal: stop and look, and measure play and seat before it is turned.</source>
        <translation>Si todo se suma, la punta nueva puede tocar el terminal: pare y mire, y mida juego y asiento antes de hacerlo girar.</translation>
    </message>
    <message>
        <source>With what was entered, the new tip doesn&apos;t reach the terminal.</source>
        <translation>Con lo escrito, la punta nueva no llega al terminal.</translation>
    </message>
    <message>
        <source>How far the spark jumps inside the cap, old rotor against new.</source>
        <translation>Cuánto salta la chispa dentro de la tapa, rotor viejo frente a nuevo.</translation>
    </message>
    <message>
        <source>terminal radius in the cap</source>
        <translation>radio de los terminales en la tapa</translation>
    </message>
    <message>
        <source>From the shaft&apos;s axis to the face of the terminal.</source>
        <translation>Del eje del árbol a la cara del terminal.</translation>
    </message>
    <message>
        <source>tip radius, old rotor</source>
        <translation>radio de la punta, rotor viejo</translation>
    </message>
    <message>
        <source>From the shaft&apos;s axis to the tip.</source>
        <translation>Del eje del árbol a la punta.</translation>
    </message>
    <message>
        <source>tip radius, new rotor</source>
        <translation>radio de la punta, rotor nuevo</translation>
    </message>
    <message>
        <source>side play of the shaft</source>
        <translation>juego lateral del árbol</translation>
    </message>
    <message>
        <source>Whole travel at the upper bushing, with a dial indicator.</source>
        <translation>Recorrido total en el casquillo superior, con reloj comparador.</translation>
    </message>
    <message>
        <source>lever of that play at the tip</source>
        <translation>palanca de ese juego en la punta</translation>
    </message>
    <message>
        <source>Height of the tip over height of the bushing, from the lower bearing.</source>
        <translation>Altura de la punta entre altura del casquillo, desde el cojinete inferior.</translation>
    </message>
    <message>
        <source>shaft run-out, ±</source>
        <translation>descentrado del árbol, ±</translation>
    </message>
    <message>
        <source>Half of what the indicator swings.</source>
        <translation>La mitad de lo que oscila el comparador.</translation>
    </message>
    <message>
        <source>how far the cap may sit off centre, ±</source>
        <translation>descentrado posible de la tapa, ±</translation>
    </message>
    <message>
        <source>Half of what the cap can be pushed on its rim.</source>
        <translation>La mitad de lo que la tapa se deja empujar en su borde.</translation>
    </message>
    <message>
        <source>one radius reading may be off by, ±</source>
        <translation>error posible de una lectura de radio, ±</translation>
    </message>
    <message>
        <source>Rotor phase</source>
        <translation>Fase del rotor</translation>
    </message>
    <message>
        <source>Straight-line distance between two edges, from the angle beyond half of both widths. Advance moves that angle with speed and load, so the worst moment may be another one.</source>
        <translation>Distancia en línea recta entre dos bordes, desde el ángulo que excede la mitad de ambas anchuras. El avance mueve ese ángulo con la velocidad y la carga, así que el peor momento puede ser otro.</translation>
    </message>
    <message>
        <source>{angle} off, {beyond} beyond the two faces,</source>
        <translation>Con {angle} de desvío, {beyond} más allá de las dos caras,</translation>
    </message>
    <message>
        <source>{angle} off, the tip still faces its terminal:</source>
        <translation>Con {angle} de desvío, la punta aún queda frente a su terminal:</translation>
    </message>
    <message>
        <source>{where} the spark jumps {gap}{doubt}; straight opposite it would be {straight}.</source>
        <translation>{where} la chispa salta {gap}{doubt}; justo enfrente serían {straight}.</translation>
    </message>
    <message>
        <source> The turn costs more gap than can be put down to the readings.</source>
        <translation> El giro cuesta más separación de la que se puede atribuir a las lecturas.</translation>
    </message>
    <message>
        <source>What a rotor or distributor turned by a few degrees does to the gap.</source>
        <translation>Lo que hace con la separación un rotor o distribuidor girado unos grados.</translation>
    </message>
    <message>
        <source>tip radius of the rotor</source>
        <translation>radio de la punta del rotor</translation>
    </message>
    <message>
        <source>tip off the terminal&apos;s middle by</source>
        <translation>desvío de la punta respecto al centro del terminal</translation>
    </message>
    <message>
        <source>At the moment of the spark, middle to middle.</source>
        <translation>En el momento de la chispa, de centro a centro.</translation>
    </message>
    <message>
        <source>width of the tip face</source>
        <translation>anchura de la cara de la punta</translation>
    </message>
    <message>
        <source>0 takes the tip as a point: the gap then comes out large.</source>
        <translation>0 toma la punta como un punto: la separación sale entonces grande.</translation>
    </message>
    <message>
        <source>width of the terminal face</source>
        <translation>anchura de la cara del terminal</translation>
    </message>
    <message>
        <source>0 takes the terminal as a point.</source>
        <translation>0 toma el terminal como un punto.</translation>
    </message>
    <message>
        <source>the angle may be off by, ±</source>
        <translation>error posible del ángulo, ±</translation>
    </message>
    <message>
        <source>Voltage of the spark</source>
        <translation>Tensión de la chispa</translation>
    </message>
    <message>
        <source>compression ratio</source>
        <translation>relación de compresión</translation>
    </message>
    <message>
        <source>Accepted: gaps of the new parts that the formula covers; measure them again.</source>
        <translation>Se acepta: separaciones de las piezas nuevas que la fórmula cubre; mídalas otra vez.</translation>
    </message>
    <message>
        <source>With the old parts: {old} With the new ones: {new}</source>
        <translation>Con las piezas viejas: {old} Con las nuevas: {new}</translation>
    </message>
    <message>
        <source>{sum}, new parts: {trouble}</source>
        <translation>{sum}, piezas nuevas: {trouble}</translation>
    </message>
    <message>
        <source>What rotor gap and plug gap together ask of the coil, old parts against new.</source>
        <translation>Lo que la separación del rotor y la de la bujía juntas piden a la bobina, piezas viejas frente a nuevas.</translation>
    </message>
    <message>
        <source>rotor gap, old parts</source>
        <translation>separación del rotor, piezas viejas</translation>
    </message>
    <message>
        <source>From the sum of the rotor gap, for example.</source>
        <translation>Del cálculo de la separación del rotor, por ejemplo.</translation>
    </message>
    <message>
        <source>rotor gap, new parts</source>
        <translation>separación del rotor, piezas nuevas</translation>
    </message>
    <message>
        <source>plug gap, old plug</source>
        <translation>separación de la bujía vieja</translation>
    </message>
    <message>
        <source>With a wire gauge.</source>
        <translation>Con galga de alambre.</translation>
    </message>
    <message>
        <source>plug gap, new plug</source>
        <translation>separación de la bujía nueva</translation>
    </message>
    <message>
        <source>With a wire gauge; the old one if it stays.</source>
        <translation>Con galga de alambre; la vieja si se queda.</translation>
    </message>
    <message>
        <source>From the vehicle maker&apos;s data; 10 is common practice, no source.</source>
        <translation>De los datos del fabricante del vehículo; 10 es práctica común, sin fuente.</translation>
    </message>
    <message>
        <source>one gap may be off by, ±</source>
        <translation>error posible de una separación, ±</translation>
    </message>
    <message>
        <source>A rotor gap is vague: shaft play and the cap&apos;s seat are in it.</source>
        <translation>La separación de un rotor es imprecisa: incluye el juego del árbol y el asiento de la tapa.</translation>
    </message>
    <message>
        <source>pressure in the intake</source>
        <translation>presión en la admisión</translation>
    </message>
    <message>
        <source>Absolute: open air is about 101, a charged engine has more.</source>
        <translation>Absoluta: el aire libre tiene unos 101, un motor sobrealimentado más.</translation>
    </message>
    <message>
        <source>temperature in the intake</source>
        <translation>temperatura en la admisión</translation>
    </message>
    <message>
        <source>Of the air that the cylinder draws.</source>
        <translation>Del aire que aspira el cilindro.</translation>
    </message>
    <message>
        <source>temperature under the cap</source>
        <translation>temperatura bajo la tapa</translation>
    </message>
    <message>
        <source>Warm when the engine is. The cap stands in open air: 101 kPa.</source>
        <translation>Caliente si el motor lo está. La tapa está al aire libre: 101 kPa.</translation>
    </message>
    <message>
        <source>more than {above:g}</source>
        <extracomment>number: one value; whole: a whole number; list, wholes: several of them; groups: several lists of whole numbers, parted by &quot;/&quot;; choice: one of `choices`, which tr() says; text: as printed on the part. Fields of these kinds are read as numbers in the field&apos;s unit.</extracomment>
        <translation>más de {above:g}</translation>
    </message>
    <message>
        <source>at least {least:g}</source>
        <translation>al menos {least:g}</translation>
    </message>
    <message>
        <source>at most {most:g}</source>
        <translation>como máximo {most:g}</translation>
    </message>
    <message>
        <source>Left empty: what a {instrument} may be off in one reading.</source>
        <translation>Si queda vacío: lo que puede errar una lectura con {instrument}.</translation>
    </message>
    <message>
        <source>distances are in</source>
        <translation>las distancias están en</translation>
    </message>
    <message>
        <source>miles</source>
        <translation>millas</translation>
    </message>
    <message>
        <source>nothing is entered.</source>
        <translation>no hay nada escrito.</translation>
    </message>
    <message>
        <source>{count} values.</source>
        <translation>{count} valores.</translation>
    </message>
    <message>
        <source>Accepted: {most} at most.</source>
        <translation>Se acepta: {most} como máximo.</translation>
    </message>
    <message>
        <source>whole numbers, like 1-3-4-2 or 14, 11, 9, 16</source>
        <translation>números enteros, como 1-3-4-2 o 14, 11, 9, 16</translation>
    </message>
    <message>
        <source>groups like 1 4 / 2 3</source>
        <translation>grupos como 1 4 / 2 3</translation>
    </message>
    <message>
        <source>; several parted by a semicolon</source>
        <translation>; varios separados por punto y coma</translation>
    </message>
    <message>
        <source>a number like 12.7 or 12,7</source>
        <translation>un número como 12.7 o 12,7</translation>
    </message>
    <message>
        <source>Accepted: {what}{bounds}{several}.</source>
        <translation>Se acepta: {what}{bounds}{several}.</translation>
    </message>
    <message>
        <source>a whole number</source>
        <translation>un número entero</translation>
    </message>
    <message>
        <source>whole numbers, like 1-3-4-2</source>
        <translation>números enteros, como 1-3-4-2</translation>
    </message>
    <message>
        <source>Accepted: {what}{bounds}.</source>
        <translation>Se acepta: {what}{bounds}.</translation>
    </message>
    <message>
        <source>the text as printed</source>
        <translation>el texto tal como está impreso</translation>
    </message>
    <message>
        <source>whole numbers, {bounds}</source>
        <translation>números enteros, {bounds}</translation>
    </message>
    <message>
        <source>{amount} (one reading, {instrument})</source>
        <translation>{amount} (una lectura, {instrument})</translation>
    </message>
    <message>
        <source>{amount} (usual)</source>
        <translation>{amount} (habitual)</translation>
    </message>
    <message>
        <source>&apos;{typed}&apos; doesn&apos;t do.</source>
        <translation>&apos;{typed}&apos; no sirve.</translation>
    </message>
    <message>
        <source>Accepted: {accepted}.</source>
        <translation>Se acepta: {accepted}.</translation>
    </message>
    <message>
        <source>Ignition voltage can injure or kill, above all people with a pacemaker: ignition off and key out before touching. Follow the vehicle maker&apos;s procedure and local rules.</source>
        <translation>La tensión de encendido puede herir o matar, sobre todo a personas con marcapasos: contacto quitado y llave fuera antes de tocar. Siga el procedimiento del fabricante del vehículo y las normas locales.</translation>
    </message>
    <message>
        <source>On the road the driver drives and someone else reads. The law and the vehicle maker&apos;s instructions come first; whether a road test may be made is a licensed person&apos;s decision.</source>
        <translation>En la carretera el conductor conduce y otra persona lee. La ley y las instrucciones del fabricante del vehículo van primero; si se puede hacer una prueba en carretera lo decide una persona autorizada.</translation>
    </message>
    <message>
        <source>Brakes and wheels: lift and support the car as its maker says. The maker&apos;s limits, local rules and licensed practice decide, not this sum.</source>
        <translation>Frenos y ruedas: eleve y apoye el vehículo como dice su fabricante. Deciden los límites del fabricante, las normas locales y la práctica autorizada, no este cálculo.</translation>
    </message>
    <message>
        <source>Engine off and key out before a hand comes near belts, pulleys or the fan.</source>
        <translation>Motor parado y llave fuera antes de acercar una mano a correas, poleas o ventilador.</translation>
    </message>
    <message>
        <source>The engine runs for these readings: keep clear of hot and moving parts and of fuel. Follow the vehicle maker&apos;s procedure.</source>
        <translation>El motor está en marcha para estas lecturas: manténgase lejos de piezas calientes y en movimiento y del combustible. Siga el procedimiento del fabricante del vehículo.</translation>
    </message>
    <message>
        <source>There is no bench sum &apos;{sum_id}&apos;.</source>
        <translation>No hay ningún cálculo de taller &apos;{sum_id}&apos;.</translation>
    </message>
    <message>
        <source>There are: {sums}.</source>
        <translation>Hay: {sums}.</translation>
    </message>
    <message>
        <source>{sum}: there is no field &apos;{field}&apos;.</source>
        <translation>{sum}: no hay ningún campo &apos;{field}&apos;.</translation>
    </message>
    <message>
        <source>Its fields are: {names}.</source>
        <translation>Sus campos son: {names}.</translation>
    </message>
    <message>
        <source>Turned or mirrored</source>
        <translation>Girada o en espejo</translation>
    </message>
    <message>
        <source>Angles count from the same key, the same way round, seen from the same side, feature by feature in one order. A single angle can&apos;t tell a turn from a mirror image for certain.</source>
        <translation>Los ángulos cuentan desde la misma guía, en el mismo sentido, vistos desde el mismo lado, rasgo por rasgo en un orden. Un solo ángulo no distingue con certeza un giro de una imagen en espejo.</translation>
    </message>
    <message>
        <source>{new} angles stand against {old} of the old part.</source>
        <translation>{new} ángulos frente a {old} de la pieza vieja.</translation>
    </message>
    <message>
        <source>Accepted: as many angles as the old part has, in the same order.</source>
        <translation>Se acepta: tantos ángulos como tiene la pieza vieja, en el mismo orden.</translation>
    </message>
    <message>
        <source> On the key&apos;s line a mirror image looks the same.</source>
        <translation> En la línea de la guía una imagen en espejo se ve igual.</translation>
    </message>
    <message>
        <source>The features sit as on the old part{doubt}.{unseen}</source>
        <translation>Los rasgos están como en la pieza vieja{doubt}.{unseen}</translation>
    </message>
    <message>
        <source>Turned by {turn}: too close to what is allowed to tell. Read finer or again.</source>
        <translation>Girada {turn}: demasiado justo respecto a lo permitido para decidir. Lea más fino u otra vez.</translation>
    </message>
    <message>
        <source> Or it is turned by {turn}: another feature tells.</source>
        <translation> O está girada {turn}: otro rasgo lo dirá.</translation>
    </message>
    <message>
        <source>Mirrored: the new part is the old one&apos;s mirror image about the key.{also}</source>
        <translation>En espejo: la pieza nueva es la imagen en espejo de la vieja respecto a la guía.{also}</translation>
    </message>
    <message>
        <source>Turned by {turn} against the old part, the features among themselves alike.</source>
        <translation>Girada {turn} respecto a la pieza vieja, los rasgos entre sí iguales.</translation>
    </message>
    <message>
        <source>Neither turned nor mirrored: the features stand differently to each other. Which part?</source>
        <translation>Ni girada ni en espejo: los rasgos están de otro modo entre sí. ¿Qué pieza es?</translation>
    </message>
    <message>
        <source>Angles from a key, old against new: left for right, or a housing clocked otherwise.</source>
        <translation>Ángulos desde una guía, vieja frente a nueva: izquierda por derecha, o un cuerpo orientado de otro modo.</translation>
    </message>
    <message>
        <source>angles on the old part</source>
        <translation>ángulos en la pieza vieja</translation>
    </message>
    <message>
        <source>From the key, clockwise counted up; several parted by a semicolon.</source>
        <translation>Desde la guía, contados en sentido horario; varios separados por punto y coma.</translation>
    </message>
    <message>
        <source>angles on the new part</source>
        <translation>ángulos en la pieza nueva</translation>
    </message>
    <message>
        <source>The same features in the same order.</source>
        <translation>Los mismos rasgos en el mismo orden.</translation>
    </message>
    <message>
        <source>may differ by, ±</source>
        <translation>pueden diferir en, ±</translation>
    </message>
    <message>
        <source>From the part kind or the maker (5 is common practice, no source).</source>
        <translation>De la clase de pieza o del fabricante (5 es práctica común, sin fuente).</translation>
    </message>
    <message>
        <source>one angle may be off by, ±</source>
        <translation>error posible de un ángulo, ±</translation>
    </message>
    <message>
        <source>The old part shows {term}{means}.{meant}</source>
        <extracomment>Words that no new part deserves, whatever its kind, and what they grow into (common practice, no source). A word that only begins alike (&quot;pitch&quot;, &quot;burnished&quot;) is none of them. Words that turn it around, or leave it to a person, wherever they stand in the term.</extracomment>
        <translation>La pieza vieja muestra {term}{means}.{meant}</translation>
    </message>
    <message>
        <source>The new part shows {term}, which a new one may.</source>
        <translation>La pieza nueva muestra {term}, que una nueva puede tener.</translation>
    </message>
    <message>
        <source>The new part shows {term}. A new part must not have that.</source>
        <translation>La pieza nueva muestra {term}. Una pieza nueva no debe tenerlo.</translation>
    </message>
    <message>
        <source>The new part is noted as &apos;{term}&apos;. Whether that matters, a person says.{meant}</source>
        <translation>De la pieza nueva se anotó &apos;{term}&apos;. Si eso importa lo dice una persona.{meant}</translation>
    </message>
    <message>
        <source> Is “{near}” meant?</source>
        <translation> ¿Se quiere decir “{near}”?</translation>
    </message>
    <message>
        <source>{label}: {count} on both.</source>
        <translation>{label}: {count} en ambas.</translation>
    </message>
    <message>
        <source>{label}: {old} on the old part, {new} on the new one.</source>
        <translation>{label}: {old} en la pieza vieja, {new} en la nueva.</translation>
    </message>
    <message>
        <source>{label}: {word} on both.</source>
        <translation>{label}: {word} en ambas.</translation>
    </message>
    <message>
        <source>{label}: not measured on the replacement.</source>
        <translation>{label}: sin medir en el repuesto.</translation>
    </message>
    <message>
        <source>{label}: not measured on the removed part.</source>
        <translation>{label}: sin medir en la pieza desmontada.</translation>
    </message>
    <message>
        <source>{label}: not measured on either part.</source>
        <translation>{label}: sin medir en ninguna de las dos piezas.</translation>
    </message>
    <message>
        <source>{label}: the new one reads {amount}{doubt}. No maker&apos;s limit is entered, so it is kept and not judged.</source>
        <translation>{label}: la nueva da {amount}{doubt}. No se escribió ningún límite del fabricante, así que se guarda y no se juzga.</translation>
    </message>
    <message>
        <source>{label}: nothing is known of &apos;{instrument}&apos; in this unit, so its readings can&apos;t be judged. Enter its resolution and permitted error.</source>
        <translation>{label}: no se sabe nada de &apos;{instrument}&apos; en esta unidad, así que sus lecturas no se pueden juzgar. Escriba su resolución y su error permitido.</translation>
    </message>
    <message>
        <source>{label}: no difference found{doubt}.</source>
        <translation>{label}: no se halló diferencia{doubt}.</translation>
    </message>
    <message>
        <source>{found}. Wear can explain that.</source>
        <translation>{found}. El desgaste puede explicarlo.</translation>
    </message>
    <message>
        <source>{label}: {moved}; {limit} is allowed.</source>
        <translation>{label}: {moved}; se permite {limit}.</translation>
    </message>
    <message>
        <source>{label}: {moved}; no more than {limit} is allowed.</source>
        <translation>{label}: {moved}; no se permite más de {limit}.</translation>
    </message>
    <message>
        <source>The readings of the removed part scatter by {spread}, more than usual ({tool}: {usual}): that makes the ± wider.</source>
        <translation>Las lecturas de la pieza desmontada se dispersan {spread}, más de lo habitual ({tool}: {usual}): eso hace el ± más ancho.</translation>
    </message>
    <message>
        <source>The readings of the replacement scatter by {spread}, more than usual ({tool}: {usual}): that makes the ± wider.</source>
        <translation>Las lecturas del repuesto se dispersan {spread}, más de lo habitual ({tool}: {usual}): eso hace el ± más ancho.</translation>
    </message>
    <message>
        <source>{found}. That is the way wear goes: the new one is worse than the old one.</source>
        <translation>{found}. En ese sentido va el desgaste: la nueva es peor que la vieja.</translation>
    </message>
    <message>
        <source>{found}, and wear explains at most {amount}. Is it the right part?</source>
        <translation>{found}, y el desgaste explica como máximo {amount}. ¿Es la pieza correcta?</translation>
    </message>
    <message>
        <source>{found}; a fresh part should bring back at least {amount}.</source>
        <translation>{found}; una pieza nueva debería devolver al menos {amount}.</translation>
    </message>
    <message>
        <source>{label}: {read}, inside the limits ({limits}).</source>
        <translation>{label}: {read}, dentro de los límites ({limits}).</translation>
    </message>
    <message>
        <source>{label}: {read}, outside the limits ({limits}).</source>
        <translation>{label}: {read}, fuera de los límites ({limits}).</translation>
    </message>
    <message>
        <source>{label}: same way round{doubt}.</source>
        <translation>{label}: en la misma orientación{doubt}.</translation>
    </message>
    <message>
        <source>{label}: no difference found{doubt}, so nothing shows that wear was made good here. Was the old one worn there at all?</source>
        <translation>{label}: no se halló diferencia{doubt}, así que nada muestra que aquí se haya compensado un desgaste. ¿Estaba la vieja gastada en ese punto?</translation>
    </message>
    <message>
        <source>{label}: {found}, too close to the limits ({limits}) to tell.</source>
        <translation>{label}: {found}, demasiado cerca de los límites ({limits}) para decidir.</translation>
    </message>
    <message>
        <source>{label}: {found}, too close to what is allowed ({allowed}) to tell.</source>
        <translation>{label}: {found}, demasiado cerca de lo permitido ({allowed}) para decidir.</translation>
    </message>
    <message>
        <source>About 1 more reading would probably settle it.</source>
        <translation>Probablemente lo decidiría 1 lectura más.</translation>
    </message>
    <message>
        <source>About {more} more readings would probably settle it.</source>
        <translation>Probablemente lo decidirían unas {more} lecturas más.</translation>
    </message>
    <message>
        <source>About 1 more reading on each side would probably settle it.</source>
        <translation>Probablemente lo decidiría 1 lectura más de cada lado.</translation>
    </message>
    <message>
        <source>About {more} more readings on each side would probably settle it.</source>
        <translation>Probablemente lo decidirían unas {more} lecturas más de cada lado.</translation>
    </message>
    <message>
        <source>Measure both parts with one instrument: what it gets wrong then cancels.</source>
        <translation>Mida ambas piezas con un mismo instrumento: así se anula lo que este mide mal.</translation>
    </message>
    <message>
        <source>More readings won&apos;t settle it; the {finer} could.</source>
        <translation>Más lecturas no lo decidirán; sí podría este instrumento: {finer}.</translation>
    </message>
    <message>
        <source>More readings won&apos;t settle it; a finer instrument may.</source>
        <translation>Más lecturas no lo decidirán; quizá un instrumento más fino.</translation>
    </message>
    <message>
        <source>the new one reads {value}</source>
        <translation>la nueva da {value}</translation>
    </message>
    <message>
        <source>{amount} still enters the new one, so it measures {value}</source>
        <translation>en la nueva aún entra {amount}, así que mide {value}</translation>
    </message>
    <message>
        <source>no difference found</source>
        <translation>no se halló diferencia</translation>
    </message>
    <message>
        <source>no difference found{doubt}</source>
        <translation>no se halló diferencia{doubt}</translation>
    </message>
    <message>
        <source>the new one is turned by {size}{doubt}</source>
        <translation>la nueva está girada {size}{doubt}</translation>
    </message>
    <message>
        <source>the new one measures {size} more{doubt}</source>
        <translation>la nueva mide {size} más{doubt}</translation>
    </message>
    <message>
        <source>the new one measures {size} less{doubt}</source>
        <translation>la nueva mide {size} menos{doubt}</translation>
    </message>
    <message>
        <source>Begin a gauge study</source>
        <translation>Empezar un estudio del instrumento</translation>
    </message>
    <message>
        <source>Reading {trial} of part {part} by {person} is there already.</source>
        <translation>La lectura {trial} de la pieza {part} por {person} ya está.</translation>
    </message>
    <message>
        <source>Look at the page again; somebody may have read at another desk.</source>
        <translation>Mire la página otra vez; puede que alguien haya leído en otro puesto.</translation>
    </message>
    <message>
        <source>Write down a gauge reading</source>
        <translation>Anotar una lectura del estudio</translation>
    </message>
    <message>
        <source>Take a gauge reading out</source>
        <translation>Quitar una lectura del estudio</translation>
    </message>
    <message>
        <source>{name} is the other one.</source>
        <translation>{name} es la otra persona.</translation>
    </message>
    <message>
        <source>Give each person another name.</source>
        <translation>Dé otro nombre a cada persona.</translation>
    </message>
    <message>
        <source>Name who reads</source>
        <translation>Indicar quién lee</translation>
    </message>
    <message>
        <source>Say what is read</source>
        <translation>Indicar qué se lee</translation>
    </message>
    <message>
        <source>The usual figure goes on counting.</source>
        <translation>Sigue contando el valor habitual.</translation>
    </message>
    <message>
        <source>Use our own repeatability</source>
        <translation>Usar nuestra propia repetibilidad</translation>
    </message>
    <message>
        <source>Go back to the usual repeatability</source>
        <translation>Volver a la repetibilidad habitual</translation>
    </message>
    <message>
        <source>Who reads?</source>
        <translation>¿Quién lee?</translation>
    </message>
    <message>
        <source>Give the person a name or initials.</source>
        <translation>Dé a la persona un nombre o iniciales.</translation>
    </message>
    <message>
        <source>The name has more than {longest} letters.</source>
        <translation>El nombre tiene más de {longest} letras.</translation>
    </message>
    <message>
        <source>This study is in use; its readings stay as they are.</source>
        <translation>Este estudio está en uso; sus lecturas quedan como están.</translation>
    </message>
    <message>
        <source>Begin another study, or go back to the usual figure first.</source>
        <translation>Empiece otro estudio, o vuelva antes al valor habitual.</translation>
    </message>
    <message>
        <source>A reading is a number.</source>
        <translation>Una lectura es un número.</translation>
    </message>
    <message>
        <source>Accepted: a number like 12.01.</source>
        <translation>Se acepta: un número como 12.01.</translation>
    </message>
    <message>
        <source>inch</source>
        <translation>pulgadas</translation>
    </message>
    <message>
        <source>what depends on person and part together</source>
        <translation>lo que depende de persona y pieza a la vez</translation>
    </message>
    <message>
        <source>what lies between the people</source>
        <translation>lo que hay entre las personas</translation>
    </message>
    <message>
        <source>what lies between the parts</source>
        <translation>lo que hay entre las piezas</translation>
    </message>
    <message>
        <source>Nothing was read twice yet: read the same part again, taken off in between.</source>
        <translation>Todavía no se leyó nada dos veces: lea la misma pieza otra vez, soltándola entre lecturas.</translation>
    </message>
    <message>
        <source>From the repeats alone, pooled: not everyone has read every part equally often.</source>
        <translation>Solo a partir de las repeticiones, reunidas: no todos leyeron cada pieza igual número de veces.</translation>
    </message>
    <message>
        <source>{component} came out below nought and counts as nought.</source>
        <translation>{component} salió por debajo de cero y cuenta como cero.</translation>
    </message>
    <message>
        <source>These readings will be too few: {enough_dof} repeats are needed, beyond the first reading of each part by each person. Plan more repeats.</source>
        <translation>Estas lecturas no bastarán: se necesitan {enough_dof} repeticiones, además de la primera lectura de cada pieza por cada persona. Planee más repeticiones.</translation>
    </message>
    <message>
        <source>Still too few to count: {readings} more at least.</source>
        <translation>Aún no bastan para contar: faltan al menos {readings}.</translation>
    </message>
    <message>
        <source>Enough to count; the plan still asks for {readings}.</source>
        <translation>Bastan para contar; el plan pide todavía {readings}.</translation>
    </message>
    <message>
        <source>Enough to count; the plan is complete.</source>
        <translation>Bastan para contar; el plan está completo.</translation>
    </message>
    <message>
        <source>The study has {repeats} repeats so far and needs {enough_dof}, beyond the first reading of each part by each person.</source>
        <translation>El estudio tiene hasta ahora {repeats} repeticiones y necesita {enough_dof}, además de la primera lectura de cada pieza por cada persona.</translation>
    </message>
    <message>
        <source>1 reading</source>
        <translation>1 lectura</translation>
    </message>
    <message>
        <source>{count} readings</source>
        <translation>{count} lecturas</translation>
    </message>
    <message>
        <source>All repeats are alike: the scatter hides within one step of {amount}, which is counted for itself ({dof} degrees of freedom).</source>
        <translation>Todas las repeticiones son iguales: la dispersión se esconde en un paso de {amount}, que se cuenta por sí mismo ({dof} grados de libertad).</translation>
    </message>
    <message>
        <source>In one hand the {name} repeats itself to {figure} (standard deviation, {dof} degrees of freedom).</source>
        <translation>En una misma mano, este instrumento ({name}) se repite con {figure} (desviación típica, {dof} grados de libertad).</translation>
    </message>
    <message>
        <source>No difference between the people shows beyond that.</source>
        <translation>Más allá de eso no se ve diferencia entre las personas.</translation>
    </message>
    <message>
        <source>Between the people it is {between}; with the repeats {with_repeats}. Let the same person read the old part and the new one.</source>
        <translation>Entre las personas es {between}; con las repeticiones, {with_repeats}. Que la misma persona lea la pieza vieja y la nueva.</translation>
    </message>
    <message>
        <source>How far the people differ depends on the part.</source>
        <translation>Cuánto difieren las personas depende de la pieza.</translation>
    </message>
    <message>
        <source>The parts differ by {spread} (standard deviation).</source>
        <translation>Las piezas difieren en {spread} (desviación típica).</translation>
    </message>
    <message>
        <source>The parts differ by {spread} (standard deviation); the measuring is {share:.1f} % of the whole study variation.</source>
        <translation>Las piezas difieren en {spread} (desviación típica); la medición es el {share:.1f} % de toda la variación del estudio.</translation>
    </message>
    <message>
        <source>The parts differ by {spread} (standard deviation); the measuring is {share:.1f} % of the whole study variation and tells no group of them apart from another.</source>
        <translation>Las piezas difieren en {spread} (desviación típica); la medición es el {share:.1f} % de toda la variación del estudio y no distingue ningún grupo de ellas de otro.</translation>
    </message>
    <message>
        <source>The parts differ by {spread} (standard deviation); the measuring is {share:.1f} % of the whole study variation and tells {groups} groups of them apart.</source>
        <translation>Las piezas difieren en {spread} (desviación típica); la medición es el {share:.1f} % de toda la variación del estudio y distingue {groups} grupos de ellas.</translation>
    </message>
    <message>
        <source>Method: {method}.</source>
        <translation>Método: {method}.</translation>
    </message>
    <message>
        <source>Method: {method}; person and part together pooled with the repeats (p = {p:.3f}, above {limit:g}).</source>
        <translation>Método: {method}; persona y pieza a la vez, reunido con las repeticiones (p = {p:.3f}, por encima de {limit:g}).</translation>
    </message>
    <message>
        <source>Method: {method}; person and part together kept apart (p = {p:.3f}, not above {limit:g}).</source>
        <translation>Método: {method}; persona y pieza a la vez, mantenido aparte (p = {p:.3f}, no por encima de {limit:g}).</translation>
    </message>
    <message>
        <source>gauge R&amp;R by analysis of variance, people crossed with parts</source>
        <translation>R&amp;R del instrumento por análisis de varianza, personas cruzadas con piezas</translation>
    </message>
    <message>
        <source>calliper</source>
        <extracomment>A usual spread is trusted to a quarter of itself: half of 0.25**-2 (JCGM 100, G.4.2, eq. G.3). name -&gt; unit -&gt; (resolution, permitted error), and where it is neither: what readings scatter. Common practice, no source; a photo&apos;s scatter is that of clicks on rendered photos.</extracomment>
        <translation>calibre</translation>
    </message>
    <message>
        <source>depth rod</source>
        <translation>varilla de profundidad</translation>
    </message>
    <message>
        <source>micrometer</source>
        <translation>micrómetro</translation>
    </message>
    <message>
        <source>feeler gauge</source>
        <translation>galga de espesores</translation>
    </message>
    <message>
        <source>pin gauge</source>
        <translation>pasador calibrado</translation>
    </message>
    <message>
        <source>bore gauge</source>
        <translation>medidor de interiores</translation>
    </message>
    <message>
        <source>dial indicator</source>
        <translation>reloj comparador</translation>
    </message>
    <message>
        <source>rib gauge</source>
        <translation>galga de nervios</translation>
    </message>
    <message>
        <source>steel rule</source>
        <translation>regla de acero</translation>
    </message>
    <message>
        <source>tape</source>
        <translation>cinta métrica</translation>
    </message>
    <message>
        <source>photo</source>
        <translation>foto</translation>
    </message>
    <message>
        <source>protractor</source>
        <translation>transportador</translation>
    </message>
    <message>
        <source>ohmmeter</source>
        <translation>óhmetro</translation>
    </message>
    <message>
        <source>voltmeter</source>
        <translation>voltímetro</translation>
    </message>
    <message>
        <source>ammeter</source>
        <translation>amperímetro</translation>
    </message>
    <message>
        <source>oscilloscope</source>
        <translation>osciloscopio</translation>
    </message>
    <message>
        <source>pressure gauge</source>
        <translation>manómetro</translation>
    </message>
    <message>
        <source>spring balance</source>
        <translation>dinamómetro de resorte</translation>
    </message>
    <message>
        <source>battery tester</source>
        <translation>probador de baterías</translation>
    </message>
    <message>
        <source>measuring cylinder</source>
        <translation>probeta graduada</translation>
    </message>
    <message>
        <source>thermometer</source>
        <translation>termómetro</translation>
    </message>
    <message>
        <source>scan reading</source>
        <translation>lectura del escáner</translation>
    </message>
    <message>
        <source>label</source>
        <extracomment>What is read off or looked at has no doubt of its own.</extracomment>
        <translation>etiqueta</translation>
    </message>
    <message>
        <source>eye</source>
        <translation>vista</translation>
    </message>
    <message>
        <source>magnet card</source>
        <translation>tarjeta magnética</translation>
    </message>
    <message>
        <source>thread gauge</source>
        <translation>galga de roscas</translation>
    </message>
    <message>
        <source>Accepted: year, month and day like {today}, or nothing.</source>
        <translation>Se acepta: año, mes y día como {today}, o nada.</translation>
    </message>
    <message>
        <source>“{bare}” is not a day.</source>
        <translation>“{bare}” no es un día.</translation>
    </message>
    <message>
        <source>{day} has not come yet.</source>
        <translation>{day} aún no ha llegado.</translation>
    </message>
    <message>
        <source>never noted</source>
        <translation>nunca anotada</translation>
    </message>
    <message>
        <source>{checked_on}: check overdue</source>
        <translation>{checked_on}: verificación vencida</translation>
    </message>
    <message>
        <source>photo, by eye</source>
        <extracomment>How that instrument is called where no mark stands behind a reading.</extracomment>
        <translation>foto, a ojo</translation>
    </message>
    <message>
        <source>from marks</source>
        <translation>de las marcas</translation>
    </message>
    <message>
        <source>That form was kept.</source>
        <translation>Esa forma se conservó.</translation>
    </message>
    <message>
        <source>Look at the kind again.</source>
        <translation>Mire la clase otra vez.</translation>
    </message>
    <message>
        <source>Make {name} our own</source>
        <translation>Hacer nuestra la clase {name}</translation>
    </message>
    <message>
        <source>Make it our own again first.</source>
        <translation>Hágala propia otra vez primero.</translation>
    </message>
    <message>
        <source>the shop&apos;s own {id}</source>
        <translation>la propia del taller {id}</translation>
    </message>
    <message>
        <source>Change the part kind {name}</source>
        <translation>Cambiar la clase de pieza {name}</translation>
    </message>
    <message>
        <source>Copy {name} as {said}</source>
        <translation>Copiar {name} como {said}</translation>
    </message>
    <message>
        <source>The part kind {name} was made the shop&apos;s own already.</source>
        <translation>La clase de pieza {name} ya se hizo propia del taller.</translation>
    </message>
    <message>
        <source>The part kind {name} is not the shop&apos;s own any more.</source>
        <translation>La clase de pieza {name} ya no es propia del taller.</translation>
    </message>
    <message>
        <source>The part kind {name} is not the shop&apos;s own.</source>
        <translation>La clase de pieza {name} no es propia del taller.</translation>
    </message>
    <message>
        <source>The kind stays on the shelf.</source>
        <translation>La clase sigue en el estante.</translation>
    </message>
    <message>
        <source>Take our own {name} off the shelf</source>
        <translation>Quitar del estante nuestra clase {name}</translation>
    </message>
    <message>
        <source>1 pair in the record is of this kind; it would not be judged any more.</source>
        <translation>1 par del registro es de esta clase; ya no se juzgaría.</translation>
    </message>
    <message>
        <source>{pairs} pairs in the record are of this kind; they would not be judged any more.</source>
        <translation>{pairs} pares del registro son de esta clase; ya no se juzgarían.</translation>
    </message>
    <message>
        <source>the shop&apos;s own kind</source>
        <translation>la clase propia del taller</translation>
    </message>
    <message>
        <source>{label}: two counts of one part disagree. Count again.</source>
        <translation>{label}: dos recuentos de una misma pieza no coinciden. Cuente otra vez.</translation>
    </message>
    <message>
        <source>{label}: two different words for one part. Look again.</source>
        <translation>{label}: dos palabras distintas para una misma pieza. Mire otra vez.</translation>
    </message>
    <message>
        <source>The share of a surface is a help to the eye, no reading of a dimension.</source>
        <translation>La proporción de una superficie es una ayuda para la vista, no la lectura de una dimensión.</translation>
    </message>
    <message>
        <source>The mark stays as it is.</source>
        <translation>La marca queda como está.</translation>
    </message>
    <message>
        <source>Note what was seen on the part under its condition.</source>
        <translation>Anote en su estado lo que se vio en la pieza.</translation>
    </message>
    <message>
        <source>This mark says no size yet, so it can&apos;t be a reading.</source>
        <translation>Esta marca no dice todavía ningún tamaño, así que no puede ser una lectura.</translation>
    </message>
    <message>
        <source>Give the photo its scale, or choose another mark.</source>
        <translation>Dé su escala a la foto, o elija otra marca.</translation>
    </message>
    <message>
        <source>The {label} is {wanted}, and this mark gives {given}.</source>
        <translation>“{label}” es {wanted}, y esta marca da {given}.</translation>
    </message>
    <message>
        <source>Choose another mark, or another dimension.</source>
        <translation>Elija otra marca, u otra dimensión.</translation>
    </message>
    <message>
        <source>Nobody said how high above the card this mark lies, so its size is not sure.</source>
        <translation>Nadie dijo a qué altura sobre la tarjeta está esta marca, así que su tamaño no es seguro.</translation>
    </message>
    <message>
        <source>Give the mark its height first. Type 0 for what lies on the card itself.</source>
        <translation>Dé primero su altura a la marca. Escriba 0 para lo que está sobre la propia tarjeta.</translation>
    </message>
    <message>
        <source>a value in {unit}</source>
        <translation>un valor en {unit}</translation>
    </message>
    <message>
        <source>a count</source>
        <translation>un recuento</translation>
    </message>
    <message>
        <source>a length</source>
        <translation>una longitud</translation>
    </message>
    <message>
        <source>an angle</source>
        <translation>un ángulo</translation>
    </message>
    <message>
        <source>a word</source>
        <translation>una palabra</translation>
    </message>
    <message>
        <source>Take a photo&apos;s reading out</source>
        <translation>Quitar una lectura de foto</translation>
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
        <source>Number on the new part</source>
        <translation>Número de la pieza nueva</translation>
    </message>
    <message>
        <source>replacement</source>
        <translation>repuesto</translation>
    </message>
    <message>
        <source>the article number (EAN or UPC)</source>
        <translation>el número de artículo (EAN o UPC)</translation>
    </message>
    <message>
        <source>the number</source>
        <translation>el número</translation>
    </message>
    <message>
        <source>The photo “{name}” ({side}, {view}) shows {sort} {value}.</source>
        <translation>La foto “{name}” ({side}, {view}) muestra {sort} {value}.</translation>
    </message>
    <message>
        <source>“{field}” has {now} now.</source>
        <translation>“{field}” tiene ahora {now}.</translation>
    </message>
    <message>
        <source>{file}: this can&apos;t be read as TOML ({error}).</source>
        <translation>{file}: esto no se puede leer como TOML ({error}).</translation>
    </message>
    <message>
        <source>Accepted: a pair in TOML.</source>
        <translation>Se acepta: un par en TOML.</translation>
    </message>
    <message>
        <source>a pair has no such part</source>
        <translation>un par no tiene esa parte</translation>
    </message>
    <message>
        <source>who explains it</source>
        <translation>quién lo explica</translation>
    </message>
    <message>
        <source>why it is in order</source>
        <translation>por qué está en orden</translation>
    </message>
    <message>
        <source>the name of an instrument</source>
        <translation>el nombre de un instrumento</translation>
    </message>
    <message>
        <source>there are none</source>
        <translation>no hay ninguno</translation>
    </message>
    <message>
        <source>a list like [{example}]</source>
        <translation>una lista como [{example}]</translation>
    </message>
    <message>
        <source>&apos;{name}&apos; is not known as one that reads {unit}</source>
        <translation>&apos;{name}&apos; no se conoce como instrumento que lea {unit}</translation>
    </message>
    <message>
        <source>{known}, or your own in a table [instruments.NAME]</source>
        <translation>{known}, o uno propio en una tabla [instruments.NAME]</translation>
    </message>
    <message>
        <source>{shown} is not a word</source>
        <translation>{shown} no es una palabra</translation>
    </message>
    <message>
        <source>{shown} is not a number</source>
        <translation>{shown} no es un número</translation>
    </message>
    <message>
        <source>{shown} is not possible for &apos;{name}&apos;</source>
        <translation>{shown} no es posible para &apos;{name}&apos;</translation>
    </message>
    <message>
        <source>a word like {choices}</source>
        <translation>una palabra como {choices}</translation>
    </message>
    <message>
        <source>this is not a list of words</source>
        <translation>esto no es una lista de palabras</translation>
    </message>
    <message>
        <source>a list like [&quot;burned tip&quot;]</source>
        <translation>una lista como [&quot;burned tip&quot;]</translation>
    </message>
    <message>
        <source>no dimension is in {unit}</source>
        <translation>ninguna dimensión está en {unit}</translation>
    </message>
    <message>
        <source>it is missing</source>
        <translation>falta</translation>
    </message>
    <message>
        <source>a number in {unit}, 0 or more</source>
        <translation>un número en {unit}, 0 o más</translation>
    </message>
    <message>
        <source>no instrument is read without end</source>
        <translation>ningún instrumento se lee sin fin</translation>
    </message>
    <message>
        <source>a number in {unit} above 0</source>
        <translation>un número en {unit} por encima de 0</translation>
    </message>
    <message>
        <source>&apos;{name}&apos; takes no limits</source>
        <translation>&apos;{name}&apos; no lleva límites</translation>
    </message>
    <message>
        <source>none of this kind</source>
        <translation>ninguna de esta clase</translation>
    </message>
    <message>
        <source>no limit is given</source>
        <translation>no se da ningún límite</translation>
    </message>
    <message>
        <source>at_least, at_most or both</source>
        <translation>at_least, at_most o ambos</translation>
    </message>
    <message>
        <source>it is above at_most</source>
        <translation>está por encima de at_most</translation>
    </message>
    <message>
        <source>the smaller number</source>
        <translation>el número menor</translation>
    </message>
    <message>
        <source>where it is from</source>
        <translation>de dónde viene</translation>
    </message>
    <message>
        <source>{label}, {part}: {question}</source>
        <extracomment>Dimensions with one equal reading each on both sides before that is odd. A reading in steps repeats itself by chance now and then (common practice, no source).</extracomment>
        <translation>{label}, {part}: {question}</translation>
    </message>
    <message>
        <source>readings of one part are about 25.4 times apart. Was one of them read in inches?</source>
        <translation>hay lecturas de una misma pieza que distan unas 25.4 veces. ¿Se leyó alguna en pulgadas?</translation>
    </message>
    <message>
        <source>By {labels} the old part is the fresh one. Were the two sides exchanged?</source>
        <translation>Según {labels}, la pieza vieja es la que está como nueva. ¿Se intercambiaron los dos lados?</translation>
    </message>
    <message>
        <source>Only the new part is noted as worn. Were the two sides exchanged?</source>
        <translation>Solo la pieza nueva está anotada como gastada. ¿Se intercambiaron los dos lados?</translation>
    </message>
    <message>
        <source>{labels}: the same readings on both parts. Was one copied?</source>
        <translation>{labels}: las mismas lecturas en ambas piezas. ¿Se copió una?</translation>
    </message>
    <message>
        <source>{dimensions} dimensions read exactly alike on both parts. Was one side copied?</source>
        <translation>{dimensions} dimensiones dan exactamente lo mismo en ambas piezas. ¿Se copió un lado?</translation>
    </message>
    <message>
        <source>field &apos;{field}&apos;</source>
        <translation>campo &apos;{field}&apos;</translation>
    </message>
    <message>
        <source> (did you mean {near}?)</source>
        <translation> (¿quería decir {near}?)</translation>
    </message>
    <message>
        <source>there is no such field{hint}</source>
        <translation>no existe tal campo{hint}</translation>
    </message>
    <message>
        <source>{shown} is not a text</source>
        <translation>{shown} no es un texto</translation>
    </message>
    <message>
        <source>&apos;{value}&apos; is not known{hint}</source>
        <translation>&apos;{value}&apos; no se conoce{hint}</translation>
    </message>
    <message>
        <source>a number</source>
        <translation>un número</translation>
    </message>
    <message>
        <source>a number, {lowest:g} or more</source>
        <translation>un número, {lowest:g} o más</translation>
    </message>
    <message>
        <source>{value:g} is not possible</source>
        <translation>{value:g} no es posible</translation>
    </message>
    <message>
        <source>these are not tables</source>
        <translation>esto no son tablas</translation>
    </message>
    <message>
        <source>tables that begin [[{field}]]</source>
        <translation>tablas que empiezan con [[{field}]]</translation>
    </message>
    <message>
        <source>tables that begin [{field}.NAME]</source>
        <translation>tablas que empiezan con [{field}.NAME]</translation>
    </message>
    <message>
        <source>{sentence} Explained by {by}{why}.</source>
        <translation>{sentence} Explicado por {by}{why}.</translation>
    </message>
    <message>
        <source>Count {label} again on both parts.</source>
        <translation>Cuente otra vez en ambas piezas: {label}.</translation>
    </message>
    <message>
        <source>Look at {label} again on both parts.</source>
        <translation>Mire otra vez en ambas piezas: {label}.</translation>
    </message>
    <message>
        <source>Look whether the old part is worn at all: {label}.</source>
        <translation>Mire si la pieza vieja está gastada en absoluto: {label}.</translation>
    </message>
    <message>
        <source>Measure {label} on both parts with one instrument.</source>
        <translation>Mida en ambas piezas con un mismo instrumento: {label}.</translation>
    </message>
    <message>
        <source>Take 1 more reading of {label} on the replacement.</source>
        <translation>Tome 1 lectura más en el repuesto: {label}.</translation>
    </message>
    <message>
        <source>Take {more} more readings of {label} on the replacement.</source>
        <translation>Tome {more} lecturas más en el repuesto: {label}.</translation>
    </message>
    <message>
        <source>Take 1 more reading of {label} on each side.</source>
        <translation>Tome 1 lectura más de cada lado: {label}.</translation>
    </message>
    <message>
        <source>Take {more} more readings of {label} on each side.</source>
        <translation>Tome {more} lecturas más de cada lado: {label}.</translation>
    </message>
    <message>
        <source>Measure {label} again with a finer instrument, on the replacement.</source>
        <translation>Mida otra vez en el repuesto, con un instrumento más fino: {label}.</translation>
    </message>
    <message>
        <source>Measure {label} again with a finer instrument, both parts alike.</source>
        <translation>Mida otra vez ambas piezas por igual, con un instrumento más fino: {label}.</translation>
    </message>
    <message>
        <source>Measure {label} again with the {finer}, on the replacement.</source>
        <translation>Mida otra vez en el repuesto, con otro instrumento ({finer}): {label}.</translation>
    </message>
    <message>
        <source>Measure {label} again with the {finer}, both parts alike.</source>
        <translation>Mida otra vez ambas piezas por igual, con otro instrumento ({finer}): {label}.</translation>
    </message>
    <message>
        <source>Enter what is still missing to judge {label}.</source>
        <translation>Escriba lo que falta todavía para juzgar: {label}.</translation>
    </message>
    <message>
        <source>both parts</source>
        <translation>ambas piezas</translation>
    </message>
    <message>
        <source>the replacement</source>
        <translation>el repuesto</translation>
    </message>
    <message>
        <source>the removed part</source>
        <translation>la pieza desmontada</translation>
    </message>
    <message>
        <source>Count {label} on {where}{tool}.</source>
        <translation>Cuente en {where}: {label}{tool}.</translation>
    </message>
    <message>
        <source>Look at {label} on {where}{tool}.</source>
        <translation>Mire en {where}: {label}{tool}.</translation>
    </message>
    <message>
        <source>Measure {label} on {where}{tool}.</source>
        <translation>Mida en {where}: {label}{tool}.</translation>
    </message>
    <message>
        <source>A reading of &apos;{name}&apos; is kept, but this part kind doesn&apos;t have that dimension.</source>
        <translation>Se guarda una lectura de &apos;{name}&apos;, pero esta clase de pieza no tiene esa dimensión.</translation>
    </message>
    <message>
        <source>new, from the vehicle&apos;s maker</source>
        <translation>nuevo, del fabricante del vehículo</translation>
    </message>
    <message>
        <source>new, from another maker</source>
        <translation>nuevo, de otro fabricante</translation>
    </message>
    <message>
        <source>remanufactured</source>
        <translation>reacondicionado</translation>
    </message>
    <message>
        <source>rebuilt in this shop</source>
        <translation>reconstruido en este taller</translation>
    </message>
    <message>
        <source>used</source>
        <translation>usado</translation>
    </message>
    <message>
        <source>brought by the customer</source>
        <translation>traído por el cliente</translation>
    </message>
    <message>
        <source>{smallest} to {largest}</source>
        <translation>{smallest} a {largest}</translation>
    </message>
    <message>
        <source>at least {figure}</source>
        <translation>al menos {figure}</translation>
    </message>
    <message>
        <source>at most {figure}</source>
        <translation>como máximo {figure}</translation>
    </message>
    <message>
        <source>not judged</source>
        <translation>sin juzgar</translation>
    </message>
    <message>
        <source>No pair of this kind is in the record yet.</source>
        <translation>Aún no hay pares de esta clase en el registro.</translation>
    </message>
    <message>
        <source>All {pairs} pairs in the record come out as with the built-in kind.</source>
        <translation>Los {pairs} pares del registro salen todos como con la clase incorporada.</translation>
    </message>
    <message>
        <source>{count} × “{old}” becomes “{new}”</source>
        <translation>{count} × “{old}” pasa a “{new}”</translation>
    </message>
    <message>
        <source>Of {pairs} pairs in the record: {said}. Jobs: {named} and {more} more.</source>
        <translation>De {pairs} pares del registro: {said}. Trabajos: {named} y {more} más.</translation>
    </message>
    <message>
        <source>Of {pairs} pairs in the record: {said}. Jobs: {named}.</source>
        <translation>De {pairs} pares del registro: {said}. Trabajos: {named}.</translation>
    </message>
    <message>
        <source> (new one may)</source>
        <translation> (la nueva puede)</translation>
    </message>
    <message>
        <source>A line is too long: {longest_line} letters at most.</source>
        <translation>Una línea es demasiado larga: {longest_line} letras como máximo.</translation>
    </message>
    <message>
        <source>the shop&apos;s own {name}</source>
        <translation>la propia del taller {name}</translation>
    </message>
    <message>
        <source>it calls itself {id}</source>
        <translation>se llama a sí misma {id}</translation>
    </message>
    <message>
        <source>Take it off.</source>
        <translation>Retírela.</translation>
    </message>
    <message>
        <source>this isn&apos;t UTF-8 text</source>
        <translation>esto no es texto UTF-8</translation>
    </message>
    <message>
        <source>Save the file again as UTF-8.</source>
        <translation>Guarde el archivo otra vez como UTF-8.</translation>
    </message>
    <message>
        <source>the file can&apos;t be read ({strerror})</source>
        <translation>el archivo no se puede leer ({strerror})</translation>
    </message>
    <message>
        <source>Check its permissions.</source>
        <translation>Compruebe sus permisos.</translation>
    </message>
    <message>
        <source>this can&apos;t be read as TOML</source>
        <translation>esto no se puede leer como TOML</translation>
    </message>
    <message>
        <source>Look for a missing quote, bracket or equals sign (a line reads: name = &quot;value&quot;).</source>
        <translation>Busque si falta una comilla, un corchete o un signo igual (una línea dice: name = &quot;value&quot;).</translation>
    </message>
    <message>
        <source>is missing</source>
        <translation>falta</translation>
    </message>
    <message>
        <source>Write {key} = &quot;...&quot; there.</source>
        <translation>Escriba allí {key} = &quot;...&quot;.</translation>
    </message>
    <message>
        <source>must be a text in quotes</source>
        <translation>debe ser un texto entre comillas</translation>
    </message>
    <message>
        <source>Use small letters, digits and hyphens, like {such_as}.</source>
        <translation>Use letras minúsculas, dígitos y guiones, como {such_as}.</translation>
    </message>
    <message>
        <source>is &apos;{value}&apos;</source>
        <translation>es &apos;{value}&apos;</translation>
    </message>
    <message>
        <source>Write one of: {allowed}.</source>
        <translation>Escriba uno de estos: {allowed}.</translation>
    </message>
    <message>
        <source>must be a list of texts</source>
        <translation>debe ser una lista de textos</translation>
    </message>
    <message>
        <source>Write {key} = [&quot;...&quot;, &quot;...&quot;].</source>
        <translation>Escriba {key} = [&quot;...&quot;, &quot;...&quot;].</translation>
    </message>
    <message>
        <source>must be true or false</source>
        <translation>debe ser true o false</translation>
    </message>
    <message>
        <source>Write {key} = true or false.</source>
        <translation>Escriba {key} = true o false.</translation>
    </message>
    <message>
        <source>must be a number</source>
        <translation>debe ser un número</translation>
    </message>
    <message>
        <source>Write {key} = 0.20, for example.</source>
        <translation>Escriba {key} = 0.20, por ejemplo.</translation>
    </message>
    <message>
        <source>must be two numbers, the smaller first</source>
        <translation>deben ser dos números, el menor primero</translation>
    </message>
    <message>
        <source>Write {key} = [0.10, 1.50], for example.</source>
        <translation>Escriba {key} = [0.10, 1.50], por ejemplo.</translation>
    </message>
    <message>
        <source>must be tables</source>
        <translation>deben ser tablas</translation>
    </message>
    <message>
        <source>Begin each one with a line [[{key}]].</source>
        <translation>Empiece cada una con una línea [[{key}]].</translation>
    </message>
    <message>
        <source>{file}, line {line}</source>
        <translation>{file}, línea {line}</translation>
    </message>
    <message>
        <source>the shop&apos;s own figure</source>
        <translation>valor propio del taller</translation>
    </message>
    <message>
        <source>It needs a name.</source>
        <translation>Necesita un nombre.</translation>
    </message>
    <message>
        <source>Accepted: a few words, such as “wiper motor”.</source>
        <translation>Se acepta: unas pocas palabras, como “motor del limpiaparabrisas”.</translation>
    </message>
    <message>
        <source>A dimension needs a name of 1 to {longest} letters.</source>
        <translation>Una dimensión necesita un nombre de 1 a {longest} letras.</translation>
    </message>
    <message>
        <source>“{label}” is not measured in this way on {name} any more.</source>
        <translation>“{label}” ya no se mide de esta forma en {name}.</translation>
    </message>
    <message>
        <source>Look at what the kind measures now.</source>
        <translation>Mire qué mide ahora la clase.</translation>
    </message>
    <message>
        <source>The part kind {name} has this dimension no more.</source>
        <translation>La clase de pieza {name} ya no tiene esta dimensión.</translation>
    </message>
    <message>
        <source>Nothing changed.</source>
        <translation>Nada cambió.</translation>
    </message>
    <message>
        <source>A part kind needs one dimension at least.</source>
        <translation>Una clase de pieza necesita al menos una dimensión.</translation>
    </message>
    <message>
        <source>It was left.</source>
        <translation>Se dejó como estaba.</translation>
    </message>
    <message>
        <source>“{label}” is there already.</source>
        <translation>“{label}” ya está.</translation>
    </message>
    <message>
        <source>Give it another name.</source>
        <translation>Dele otro nombre.</translation>
    </message>
    <message>
        <source>“{words}” is not two figures.</source>
        <translation>“{words}” no son dos cifras.</translation>
    </message>
    <message>
        <source>Accepted: the smaller and the larger: 0.1 to 1.5.</source>
        <translation>Se acepta: la menor y la mayor: 0.1 a 1.5.</translation>
    </message>
    <message>
        <source>“{words}” allows nothing.</source>
        <translation>“{words}” no permite nada.</translation>
    </message>
    <message>
        <source>Accepted: 0.1 to 1.5, for example.</source>
        <translation>Se acepta: 0.1 a 1.5, por ejemplo.</translation>
    </message>
    <message>
        <source>“{words}”: the first is above the second.</source>
        <translation>“{words}”: la primera está por encima de la segunda.</translation>
    </message>
    <message>
        <source>Exchange the two.</source>
        <translation>Intercambie las dos.</translation>
    </message>
    <message>
        <source>bigger</source>
        <extracomment>[low, high]; an end that is None is open.</extracomment>
        <translation>mayor</translation>
    </message>
    <message>
        <source>smaller</source>
        <translation>más pequeño</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>práctica común, sin fuente</translation>
    </message>
    <message>
        <source>&apos;{name}&apos; is used twice</source>
        <translation>&apos;{name}&apos; se usa dos veces</translation>
    </message>
    <message>
        <source>Give each dimension its own name.</source>
        <translation>Dé a cada dimensión su propio nombre.</translation>
    </message>
    <message>
        <source>Add at least one [[dimensions]] table.</source>
        <translation>Añada al menos una tabla [[dimensions]].</translation>
    </message>
    <message>
        <source>must say how far the new part may differ either way</source>
        <translation>debe decir cuánto puede diferir la pieza nueva en cualquier sentido</translation>
    </message>
    <message>
        <source>Write allowed = 0.20, for example.</source>
        <translation>Escriba allowed = 0.20, por ejemplo.</translation>
    </message>
    <message>
        <source>must say how much a fresh part brings back, from and to</source>
        <translation>debe decir cuánto devuelve una pieza nueva, desde y hasta</translation>
    </message>
    <message>
        <source>Write restored_by = [0.10, 1.50], for example; the direction is a key of its own.</source>
        <translation>Escriba restored_by = [0.10, 1.50], por ejemplo; el sentido es una clave aparte.</translation>
    </message>
    <message>
        <source>is above at_most</source>
        <translation>está por encima de at_most</translation>
    </message>
    <message>
        <source>must say which dimension becomes bigger or smaller</source>
        <translation>debe decir qué dimensión se hace mayor o menor</translation>
    </message>
    <message>
        <source>Write moves = { tip-radius = &quot;smaller&quot; }, for example.</source>
        <translation>Escriba moves = { tip-radius = &quot;smaller&quot; }, por ejemplo.</translation>
    </message>
    <message>
        <source>must be the same</source>
        <translation>debe ser igual</translation>
    </message>
    <message>
        <source>worn away, comes back</source>
        <translation>se gasta, se recupera</translation>
    </message>
    <message>
        <source>counted, must be equal</source>
        <translation>se cuenta, debe coincidir</translation>
    </message>
    <message>
        <source>must stand the same way round</source>
        <translation>debe quedar en la misma orientación</translation>
    </message>
    <message>
        <source>looked at, must be alike</source>
        <translation>se mira, debe ser como la vieja</translation>
    </message>
    <message>
        <source>held against the maker&apos;s limits</source>
        <translation>se compara con los límites del fabricante</translation>
    </message>
    <message>
        <source>as on the old one</source>
        <translation>como en la vieja</translation>
    </message>
    <message>
        <source>{least} to {most} bigger</source>
        <translation>{least} a {most} mayor</translation>
    </message>
    <message>
        <source>{least} to {most} smaller</source>
        <translation>{least} a {most} menor</translation>
    </message>
    <message>
        <source>the maker&apos;s figure, entered at the pair</source>
        <translation>el valor del fabricante, escrito en el par</translation>
    </message>
    <message>
        <source>The box says {on_box}, which looks like an article number (EAN or UPC), the part says {on_part}. Is the part&apos;s number on the box too?</source>
        <translation>La caja dice {on_box}, que parece un número de artículo (EAN o UPC); la pieza dice {on_part}. ¿Está también en la caja el número de la pieza?</translation>
    </message>
    <message>
        <source>The box says {on_box}, the part says {on_part}. Is the right part in the box?</source>
        <translation>La caja dice {on_box}, la pieza dice {on_part}. ¿Está en la caja la pieza correcta?</translation>
    </message>
    <message>
        <source>Write one of: {names}.</source>
        <translation>Escriba uno de estos: {names}.</translation>
    </message>
    <message>
        <source>Add a [[given]] table first.</source>
        <translation>Añada primero una tabla [[given]].</translation>
    </message>
    <message>
        <source>is &apos;{name}&apos;, which is not given here</source>
        <translation>es &apos;{name}&apos;, que aquí no se da</translation>
    </message>
    <message>
        <source>Add at least one [[parts]] table.</source>
        <translation>Añada al menos una tabla [[parts]].</translation>
    </message>
    <message>
        <source>Give each its own name.</source>
        <translation>Dé a cada uno su propio nombre.</translation>
    </message>
    <message>
        <source>Play needs a middle: write value = 0, for example.</source>
        <translation>El juego necesita un punto medio: escriba value = 0, por ejemplo.</translation>
    </message>
    <message>
        <source>must say how often it counts, with its sign</source>
        <translation>debe decir cuántas veces cuenta, con su signo</translation>
    </message>
    <message>
        <source>Write times = 1 for what gives room, times = -1 for what takes it.</source>
        <translation>Escriba times = 1 para lo que da espacio, times = -1 para lo que lo quita.</translation>
    </message>
    <message>
        <source>must say how far it may be off either way</source>
        <translation>debe decir cuánto puede desviarse en cualquier sentido</translation>
    </message>
    <message>
        <source>Write half_width = 0.10, for example.</source>
        <translation>Escriba half_width = 0.10, por ejemplo.</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>medido</translation>
    </message>
    <message>
        <source>entered</source>
        <translation>escrito</translation>
    </message>
    <message>
        <source>from the set</source>
        <translation>del conjunto</translation>
    </message>
    <message>
        <source>room enough</source>
        <translation>espacio suficiente</translation>
    </message>
    <message>
        <source>may touch</source>
        <translation>pueden tocarse</translation>
    </message>
    <message>
        <source>may run out</source>
        <translation>puede no alcanzar</translation>
    </message>
    <message>
        <source>too close to tell</source>
        <translation>demasiado justo para decidir</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>sin medir</translation>
    </message>
    <message>
        <source>The {result} is not known yet.</source>
        <translation>Todavía no se conoce: {result}.</translation>
    </message>
    <message>
        <source>At the worst {left} is left. {say_room}</source>
        <translation>En el peor caso queda {left}. {say_room}</translation>
    </message>
    <message>
        <source>At the worst {left} is left, but the other end can&apos;t be judged: the {limit_label} is not entered.</source>
        <translation>En el peor caso queda {left}, pero el otro extremo no se puede juzgar: falta escribir {limit_label}.</translation>
    </message>
    <message>
        <source>{room} Whether that is room enough, these readings can&apos;t tell.</source>
        <translation>{room} Si eso es espacio suficiente, estas lecturas no lo pueden decir.</translation>
    </message>
    <message>
        <source>{value} (usually ± {usual}; at the worst from {low} to {high})</source>
        <translation>{value} (habitualmente ± {usual}; en el peor caso de {low} a {high})</translation>
    </message>
    <message>
        <source>With the old parts it was {room_words}.</source>
        <translation>Con las piezas viejas era {room_words}.</translation>
    </message>
    <message>
        <source>Not measured, but taken as usual: {listed}.</source>
        <translation>Sin medir, tomado como habitual: {listed}.</translation>
    </message>
    <message>
        <source>The other end was not looked at: the {limit_label} is not entered.</source>
        <translation>No se miró el otro extremo: falta escribir {limit_label}.</translation>
    </message>
    <message>
        <source>It can reach nothing. {say_touch}</source>
        <translation>Puede llegar a nada. {say_touch}</translation>
    </message>
    <message>
        <source>Nothing is left even without play: check that each of these parts is right.</source>
        <translation>No queda nada ni siquiera sin juego: compruebe que cada una de estas piezas es la correcta.</translation>
    </message>
    <message>
        <source>Play may use that up. Measure the play first, and check that each of these parts is right.</source>
        <translation>El juego puede agotarlo. Mida primero el juego, y compruebe que cada una de estas piezas es la correcta.</translation>
    </message>
    <message>
        <source>Play may use that up. Measure first what was taken as usual, and check that each of these parts is right.</source>
        <translation>El juego puede agotarlo. Mida primero lo que se tomó como habitual, y compruebe que cada una de estas piezas es la correcta.</translation>
    </message>
    <message>
        <source>With the new parts the {result} is {said}.</source>
        <translation>Con las piezas nuevas, {result}: {said}.</translation>
    </message>
    <message>
        <source>With the new parts the {result} at {place}, the tightest, is {said}.</source>
        <translation>Con las piezas nuevas, {result} en {place}, el más justo: {said}.</translation>
    </message>
    <message>
        <source>From the old parts to the new ones the {result} changed by less than {most}.</source>
        <translation>De las piezas viejas a las nuevas cambió en menos de {most}: {result}.</translation>
    </message>
    <message>
        <source>From the old parts to the new ones the {result} became {amount} larger{doubt}. What is the same before and after cancels in that.</source>
        <translation>De las piezas viejas a las nuevas aumentó {amount}{doubt}: {result}. Lo que es igual antes y después se anula ahí.</translation>
    </message>
    <message>
        <source>From the old parts to the new ones the {result} became {amount} smaller{doubt}. What is the same before and after cancels in that.</source>
        <translation>De las piezas viejas a las nuevas disminuyó {amount}{doubt}: {result}. Lo que es igual antes y después se anula ahí.</translation>
    </message>
    <message>
        <source>Measure {label} on the removed {name}{tool}.</source>
        <translation>Mida en la pieza desmontada ({name}): {label}{tool}.</translation>
    </message>
    <message>
        <source>Measure {label} on the new {name}{tool}.</source>
        <translation>Mida en la pieza nueva ({name}): {label}{tool}.</translation>
    </message>
    <message>
        <source>Enter the {label}.</source>
        <translation>Escriba este dato: {label}.</translation>
    </message>
    <message>
        <source>Measure {name} of the removed part again, several times or with a finer instrument.</source>
        <translation>Mida otra vez en la pieza desmontada, varias veces o con un instrumento más fino: {name}.</translation>
    </message>
    <message>
        <source>Measure {name} of the new part again, several times or with a finer instrument.</source>
        <translation>Mida otra vez en la pieza nueva, varias veces o con un instrumento más fino: {name}.</translation>
    </message>
    <message>
        <source>The pair that the phone&apos;s photo was taken for is no longer there.</source>
        <translation>El par para el que se tomó la foto del teléfono ya no está.</translation>
    </message>
    <message>
        <source>The photo waits in the phone&apos;s tray.</source>
        <translation>La foto espera en la bandeja del teléfono.</translation>
    </message>
    <message>
        <source>Give it a place there, or bring the pair back by undo.</source>
        <translation>Dele allí un lugar, o recupere el par deshaciendo.</translation>
    </message>
    <message>
        <source>Put a photo from the phone to a part</source>
        <translation>Poner a una pieza una foto del teléfono</translation>
    </message>
    <message>
        <source>Put {photos} photos from the phone to a part</source>
        <translation>Poner a una pieza {photos} fotos del teléfono</translation>
    </message>
    <message>
        <source>That pair is no longer there.</source>
        <translation>Esa pareja ya no está.</translation>
    </message>
    <message>
        <source>Take a reading from the photo</source>
        <translation>Tomar una lectura de la foto</translation>
    </message>
    <message>
        <source>This photo doesn&apos;t stand for the removed part of the pair.</source>
        <translation>Esta foto no representa la pieza desmontada del par.</translation>
    </message>
    <message>
        <source>Put the photo to the removed part first, or take the reading for the other one.</source>
        <translation>Ponga primero la foto a la pieza desmontada, o tome la lectura para la otra.</translation>
    </message>
    <message>
        <source>This photo doesn&apos;t stand for the replacement of the pair.</source>
        <translation>Esta foto no representa el repuesto del par.</translation>
    </message>
    <message>
        <source>Put the photo to the replacement first, or take the reading for the other one.</source>
        <translation>Ponga primero la foto al repuesto, o tome la lectura para la otra pieza.</translation>
    </message>
    <message>
        <source>removed</source>
        <translation>desmontada</translation>
    </message>
    <message>
        <source>Those are {pieces} readings; {most_readings} at most are kept.</source>
        <extracomment>(value in the dimension&apos;s unit, or None; word, or None; as typed)</extracomment>
        <translation>Son {pieces} lecturas; se guardan {most_readings} como máximo.</translation>
    </message>
    <message>
        <source>{parts} replaced</source>
        <translation>{parts}: sustitución hecha</translation>
    </message>
    <message>
        <source>Is that as it should be? Why?</source>
        <translation>¿Es así como debe ser? ¿Por qué?</translation>
    </message>
    <message>
        <source>why, {label}</source>
        <translation>por qué, {label}</translation>
    </message>
    <message>
        <source>By whose word</source>
        <translation>Quién lo dice</translation>
    </message>
    <message>
        <source>by whose word, {label}</source>
        <translation>quién lo dice, {label}</translation>
    </message>
    <message>
        <source>superseded number, adapter in the box …</source>
        <translation>número sustituido, adaptador en la caja …</translation>
    </message>
    <message>
        <source>letter, bulletin or person</source>
        <translation>carta, boletín o persona</translation>
    </message>
    <message>
        <source>By whose word? It is kept once that is said.</source>
        <translation>¿Quién lo dice? Se guarda en cuanto esté dicho.</translation>
    </message>
    <message>
        <source>Maker&apos;s limit: at least</source>
        <translation>Límite del fabricante: al menos</translation>
    </message>
    <message>
        <source>at least, {label}</source>
        <translation>al menos, {label}</translation>
    </message>
    <message>
        <source>at most</source>
        <translation>como máximo</translation>
    </message>
    <message>
        <source>at most, {label}</source>
        <translation>como máximo, {label}</translation>
    </message>
    <message>
        <source>where that stands</source>
        <translation>dónde consta</translation>
    </message>
    <message>
        <source>where the limits stand, {label}</source>
        <translation>dónde constan los límites, {label}</translation>
    </message>
    <message>
        <source>The lower limit is above the upper one. Swap them.</source>
        <translation>El límite inferior está por encima del superior. Intercámbielos.</translation>
    </message>
    <message>
        <source>One of the two limits is needed; the other may stay open.</source>
        <translation>Hace falta uno de los dos límites; el otro puede quedar abierto.</translation>
    </message>
    <message>
        <source> on the bench is not accepted.</source>
        <translation> en la mesa de fotos no se acepta.</translation>
    </message>
    <message>
        <source>Mend or empty it first; it would be lost with other photos.</source>
        <translation>Corríjalo o vacíelo primero; se perdería con otras fotos.</translation>
    </message>
    <message>
        <source> on the bench is not sent yet; it would be lost with other photos.</source>
        <translation> en la mesa de fotos aún no se ha enviado; se perdería con otras fotos.</translation>
    </message>
    <message>
        <source>{reading} (as it was read before)</source>
        <translation>{reading} (como se leyó antes)</translation>
    </message>
    <message>
        <source>{value} by {instrument}</source>
        <translation>{value} con {instrument}</translation>
    </message>
    <message>
        <source>note on the removed part, {name}</source>
        <translation>nota sobre la pieza desmontada, {name}</translation>
    </message>
    <message>
        <source>note on the replacement, {name}</source>
        <translation>nota sobre el repuesto, {name}</translation>
    </message>
    <message>
        <source>Seen on the removed part</source>
        <translation>Visto en la pieza desmontada</translation>
    </message>
    <message>
        <source>Seen on the replacement</source>
        <translation>Visto en el repuesto</translation>
    </message>
    <message>
        <source>In own words</source>
        <translation>Con palabras propias</translation>
    </message>
    <message>
        <source>drawing of {label}</source>
        <translation>dibujo de {label}</translation>
    </message>
    <message>
        <source>Type several readings of it with semicolons between: first; second; third.</source>
        <translation>Escriba varias lecturas con punto y coma entre ellas: primera; segunda; tercera.</translation>
    </message>
    <message>
        <source>instrument, {label}</source>
        <translation>instrumento, {label}</translation>
    </message>
    <message>
        <source>For both parts: what one instrument gets wrong cancels.</source>
        <translation>Para ambas piezas: lo que yerra un mismo instrumento se cancela.</translation>
    </message>
    <message>
        <source>verdict on {label}: {verdict}</source>
        <translation>veredicto sobre {label}: {verdict}</translation>
    </message>
    <message>
        <source>✎ On the removed part: {trouble}</source>
        <translation>✎ En la pieza desmontada: {trouble}</translation>
    </message>
    <message>
        <source>✎ On the replacement: {trouble}</source>
        <translation>✎ En el repuesto: {trouble}</translation>
    </message>
    <message>
        <source>With what was {reading} read?</source>
        <translation>¿Con qué se leyó {reading}?</translation>
    </message>
    <message>
        <source>The readings from marks stay as they are.</source>
        <translation>Las lecturas de marcas quedan como están.</translation>
    </message>
    <message>
        <source>Choose the instrument in this row, and it is written down.</source>
        <translation>Elija el instrumento en esta fila y quedará anotado.</translation>
    </message>
    <message>
        <source>old parts</source>
        <translation>piezas viejas</translation>
    </message>
    <message>
        <source>new parts</source>
        <translation>piezas nuevas</translation>
    </message>
    <message>
        <source>old {room}</source>
        <translation>viejas {room}</translation>
    </message>
    <message>
        <source>new {room}</source>
        <translation>nuevas {room}</translation>
    </message>
    <message>
        <source>{label}: nothing measured yet.</source>
        <translation>{label}: aún no se ha medido nada.</translation>
    </message>
    <message>
        <source>◆ is the removed part, ● the replacement.</source>
        <translation>◆ es la pieza desmontada, ● el repuesto.</translation>
    </message>
    <message>
        <source>The line through a mark is its ±.</source>
        <translation>La línea que cruza una marca es su ±.</translation>
    </message>
    <message>
        <source>The thick line is how well the difference is known.</source>
        <translation>La línea gruesa es lo bien que se conoce la diferencia.</translation>
    </message>
    <message>
        <source>Hatched is where the replacement may lie.</source>
        <translation>La zona rayada es donde puede quedar el repuesto.</translation>
    </message>
    <message>
        <source>allowed from {low} to {high}</source>
        <translation>permitido de {low} a {high}</translation>
    </message>
    <message>
        <source>allowed from {low}</source>
        <translation>permitido desde {low}</translation>
    </message>
    <message>
        <source>allowed</source>
        <translation>permitido</translation>
    </message>
    <message>
        <source>allowed to {high}</source>
        <translation>permitido hasta {high}</translation>
    </message>
    <message>
        <source>▸ next</source>
        <translation>▸ siguiente</translation>
    </message>
    <message>
        <source>Readings of the gauge study</source>
        <translation>Lecturas del estudio del instrumento</translation>
    </message>
    <message>
        <source>takes the chosen readings out, in the grid</source>
        <translation>quita las lecturas elegidas, en la tabla</translation>
    </message>
    <message>
        <source>{person}, part {part}</source>
        <translation>{person}, pieza {part}</translation>
    </message>
    <message>
        <source>Read the same part again and again, taken off and set up anew each time. One person and ten readings will do; a second person shows what lies between two hands. What the readings scatter can then stand for this instrument in place of the usual figure.</source>
        <translation>Lea la misma pieza una y otra vez, quitándola y colocándola de nuevo cada vez. Bastan una persona y diez lecturas; una segunda persona muestra lo que hay entre dos manos. Lo que varían las lecturas puede valer después para este instrumento en lugar de la cifra habitual.</translation>
    </message>
    <message>
        <source>This study&apos;s own figure counts already.</source>
        <translation>La cifra propia de este estudio ya cuenta.</translation>
    </message>
    <message>
        <source>The readings are too few for a figure of this instrument&apos;s own, as said above.</source>
        <translation>Las lecturas son muy pocas para una cifra propia de este instrumento, como se dice arriba.</translation>
    </message>
    <message>
        <source>The usual figure is what counts now.</source>
        <translation>Lo que cuenta ahora es la cifra habitual.</translation>
    </message>
    <message>
        <source>first person</source>
        <translation>primera persona</translation>
    </message>
    <message>
        <source>Gauge study: {name}</source>
        <translation>Estudio del instrumento: {name}</translation>
    </message>
    <message>
        <source>What is read</source>
        <translation>Qué se lee</translation>
    </message>
    <message>
        <source>First person</source>
        <translation>Primera persona</translation>
    </message>
    <message>
        <source>Second person, if there is one</source>
        <translation>Segunda persona, si la hay</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation>Piezas</translation>
    </message>
    <message>
        <source>Readings of each</source>
        <translation>Lecturas de cada una</translation>
    </message>
    <message>
        <source>Who reads now</source>
        <translation>Quién lee ahora</translation>
    </message>
    <message>
        <source>Next reading</source>
        <translation>Siguiente lectura</translation>
    </message>
    <message>
        <source>Use from now on</source>
        <translation>Usar desde ahora</translation>
    </message>
    <message>
        <source>Go back to the usual figure</source>
        <translation>Volver a la cifra habitual</translation>
    </message>
    <message>
        <source>Take the chosen reading out</source>
        <translation>Quitar la lectura elegida</translation>
    </message>
    <message>
        <source>Begin another study</source>
        <translation>Empezar otro estudio</translation>
    </message>
    <message>
        <source>Close the study</source>
        <translation>Cerrar el estudio</translation>
    </message>
    <message>
        <source>Every place is filled. Plan more readings, or begin another study.</source>
        <translation>Todos los lugares están llenos. Prevea más lecturas o empiece otro estudio.</translation>
    </message>
    <message>
        <source>{person}, part {part}, reading {reading}, in {unit}; Enter writes it down</source>
        <translation>{person}, pieza {part}, lectura {reading}, en {unit}; Intro la anota</translation>
    </message>
    <message>
        <source>{person}, reading {reading}, in {unit}; Enter writes it down</source>
        <translation>{person}, lectura {reading}, en {unit}; Intro la anota</translation>
    </message>
    <message>
        <source> It comes from this study, whose readings stay as they are.</source>
        <translation> Viene de este estudio, cuyas lecturas quedan como están.</translation>
    </message>
    <message>
        <source>What counts now is the usual figure, {figure}.{from_here}</source>
        <translation>Lo que cuenta ahora es la cifra habitual, {figure}.{from_here}</translation>
    </message>
    <message>
        <source>What counts now is our own figure, {figure}.{from_here}</source>
        <translation>Lo que cuenta ahora es nuestra propia cifra, {figure}.{from_here}</translation>
    </message>
    <message>
        <source>Add an instrument, or change one</source>
        <translation>Añadir un instrumento o cambiar uno</translation>
    </message>
    <message>
        <source>calliper 2</source>
        <translation>calibre 2</translation>
    </message>
    <message>
        <source>Instrument</source>
        <translation>Instrumento</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Unidad</translation>
    </message>
    <message>
        <source>Reads in steps of</source>
        <translation>Lee en pasos de</translation>
    </message>
    <message>
        <source>Permitted error, plus or minus</source>
        <translation>Error permitido, más o menos</translation>
    </message>
    <message>
        <source>Last checked on</source>
        <translation>Última comprobación</translation>
    </message>
    <message>
        <source>Keep it in the drawer</source>
        <translation>Guardarlo en el cajón</translation>
    </message>
    <message>
        <source>Step and permitted error stand on the instrument or in its papers. The same name again changes what is known of it.</source>
        <translation>El paso y el error permitido constan en el instrumento o en sus papeles. El mismo nombre otra vez cambia lo que se sabe de él.</translation>
    </message>
    <message>
        <source>in {unit}</source>
        <translation>en {unit}</translation>
    </message>
    <message>
        <source>year-month-day, or nothing</source>
        <translation>año-mes-día, o nada</translation>
    </message>
    <message>
        <source>✎ Give it a name, such as “calliper 2”.</source>
        <translation>✎ Póngale un nombre, como “calibre 2”.</translation>
    </message>
    <message>
        <source>✎ Accepted: a number, zero or more.</source>
        <translation>✎ Se acepta: un número, cero o más.</translation>
    </message>
    <message>
        <source>Permitted error</source>
        <translation>Error permitido</translation>
    </message>
    <message>
        <source>Last checked</source>
        <translation>Última comprobación</translation>
    </message>
    <message>
        <source>Repeats to</source>
        <translation>Repite dentro de</translation>
    </message>
    <message>
        <source>What is known of it</source>
        <translation>Lo que se sabe de él</translation>
    </message>
    <message>
        <source>{head}: {figure}</source>
        <translation>{head}: {figure}</translation>
    </message>
    <message>
        <source>usual</source>
        <translation>habitual</translation>
    </message>
    <message>
        <source>our own</source>
        <translation>la nuestra</translation>
    </message>
    <message>
        <source>Part kind</source>
        <translation>Clase de pieza</translation>
    </message>
    <message>
        <source>distributor rotor, pads, plug …</source>
        <translation>rotor del distribuidor, pastillas, bujía …</translation>
    </message>
    <message>
        <source>Position of the part</source>
        <translation>Posición de la pieza</translation>
    </message>
    <message>
        <source>front left, cylinder 3 …</source>
        <translation>delante izquierda, cilindro 3 …</translation>
    </message>
    <message>
        <source>All kinds</source>
        <translation>Todas las clases</translation>
    </message>
    <message>
        <source>To the part kind, from anywhere on this page: {keys}</source>
        <translation>A la clase de pieza, desde cualquier lugar de esta página: {keys}</translation>
    </message>
    <message>
        <source>to the kind of a new pair of parts</source>
        <translation>a la clase de un nuevo par de piezas</translation>
    </message>
    <message>
        <source>Position</source>
        <translation>Posición</translation>
    </message>
    <message>
        <source>✎ Several kinds go by “{text}”. Press the one that is meant.</source>
        <translation>✎ “{text}” nombra varias clases. Pulse la que se quiere decir.</translation>
    </message>
    <message>
        <source>“{text}” is no one kind on the shelf. </source>
        <translation>“{text}” no es ninguna clase única del estante. </translation>
    </message>
    <message>
        <source>✎ {said}Type a piece of a name such as rotor, pads or belt, or press one.</source>
        <translation>✎ {said}Escriba un trozo de un nombre, como rotor, pastillas o correa, o pulse uno.</translation>
    </message>
    <message>
        <source>position {side}</source>
        <translation>posición {side}</translation>
    </message>
    <message>
        <source>What it asks</source>
        <translation>Qué pide</translation>
    </message>
    <message>
        <source>Allowed</source>
        <translation>Permitido</translation>
    </message>
    <message>
        <source>Must be settled</source>
        <translation>Debe decidirse</translation>
    </message>
    <message>
        <source>essential</source>
        <translation>esencial</translation>
    </message>
    <message>
        <source>Basis: {basis}.</source>
        <translation>Base: {basis}.</translation>
    </message>
    <message>
        <source>◆  yes</source>
        <translation>◆  sí</translation>
    </message>
    <message>
        <source>no</source>
        <translation>no</translation>
    </message>
    <message>
        <source>allowed, {label}</source>
        <translation>permitido, {label}</translation>
    </message>
    <message>
        <source>Must “{label}” be settled before a pair fits?</source>
        <translation>¿Debe quedar resuelto “{label}” antes de que un par sirva?</translation>
    </message>
    <message>
        <source>Take out {label}</source>
        <translation>Quitar {label}</translation>
    </message>
    <message>
        <source>Take “{label}” out; readings that are kept stay kept</source>
        <translation>Quitar “{label}”; las lecturas guardadas siguen guardadas</translation>
    </message>
    <message>
        <source>“{mark}” at the end of a line: a new part may show it as well.</source>
        <translation>“{mark}” al final de una línea: una pieza nueva también puede mostrarlo.</translation>
    </message>
    <message>
        <source>Begin a line with ⚠ or ! where getting it wrong can injure someone.</source>
        <translation>Empiece una línea con ⚠ o ! donde hacerlo mal pueda herir a alguien.</translation>
    </message>
    <message>
        <source>bay</source>
        <extracomment>Where a proof is made, as the kinds say it.</extracomment>
        <translation>en el taller</translation>
    </message>
    <message>
        <source>road</source>
        <translation>carretera</translation>
    </message>
    <message>
        <source>full trip</source>
        <translation>recorrido completo</translation>
    </message>
    <message>
        <source>same conditions</source>
        <translation>mismas condiciones</translation>
    </message>
    <message>
        <source>time</source>
        <translation>tiempo</translation>
    </message>
    <message>
        <source>One a line</source>
        <translation>Uno por línea</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Precauciones</translation>
    </message>
    <message>
        <source>Words for what is seen</source>
        <translation>Palabras para lo que se ve</translation>
    </message>
    <message>
        <source>When it goes back on</source>
        <translation>Al volver a montarla</translation>
    </message>
    <message>
        <source>What proves the repair</source>
        <translation>Qué prueba la reparación</translation>
    </message>
    <message>
        <source>How a wrong part gives itself away</source>
        <translation>Cómo se delata una pieza equivocada</translation>
    </message>
    <message>
        <source>What is measured</source>
        <translation>Qué se mide</translation>
    </message>
    <message>
        <source>Also: {also}.  </source>
        <translation>También: {also}.  </translation>
    </message>
    <message>
        <source>A copy of {copy_of}.  </source>
        <translation>Una copia de {copy_of}.  </translation>
    </message>
    <message>
        <source>1 pair in the record.</source>
        <translation>1 par en el registro.</translation>
    </message>
    <message>
        <source>{pairs} pairs in the record.</source>
        <translation>{pairs} pares en el registro.</translation>
    </message>
    <message>
        <source>{copy_of}{also}System: {system}.  {in_record}</source>
        <translation>{copy_of}{also}Sistema: {system}.  {in_record}</translation>
    </message>
    <message>
        <source>Take ours off the shelf</source>
        <translation>Quitar la nuestra del estante</translation>
    </message>
    <message>
        <source>Change it for our shop</source>
        <translation>Cambiarla para nuestro taller</translation>
    </message>
    <message>
        <source>A built-in kind of this name comes back in its place.</source>
        <translation>Una clase incorporada de este nombre vuelve a su lugar.</translation>
    </message>
    <message>
        <source>Makes a copy of ours in its place; the built-in one can be had back.</source>
        <translation>Hace una copia nuestra en su lugar; la incorporada se puede recuperar.</translation>
    </message>
    <message>
        <source>a new name</source>
        <translation>un nombre nuevo</translation>
    </message>
    <message>
        <source>Name of the new kind</source>
        <translation>Nombre de la clase nueva</translation>
    </message>
    <message>
        <source>Copy it under this name</source>
        <translation>Copiarla con este nombre</translation>
    </message>
    <message>
        <source>What does ours change?</source>
        <translation>¿Qué cambia la nuestra?</translation>
    </message>
    <message>
        <source>Judges every pair of this kind both ways</source>
        <translation>Juzga cada par de esta clase de ambas maneras</translation>
    </message>
    <message>
        <source>✎ Type a name for the new kind first.</source>
        <translation>✎ Escriba primero un nombre para la clase nueva.</translation>
    </message>
    <message>
        <source>either way, such as 0.2</source>
        <translation>a uno y otro lado, como 0.2</translation>
    </message>
    <message>
        <source>degrees either way, such as 2</source>
        <translation>grados a uno y otro lado, como 2</translation>
    </message>
    <message>
        <source>from and to, such as 0.1 to 1.5</source>
        <translation>desde y hasta, como 0.1 a 1.5</translation>
    </message>
    <message>
        <source>10 to 20, at least 10, at most 20, or nothing</source>
        <translation>10 a 20, al menos 10, como máximo 20, o nada</translation>
    </message>
    <message>
        <source>nothing to say: it must be equal</source>
        <translation>nada que decir: debe ser igual en número</translation>
    </message>
    <message>
        <source>nothing to say: it must be alike</source>
        <translation>nada que decir: debe ser igual a la vista</translation>
    </message>
    <message>
        <source>Comes back</source>
        <translation>Vuelve a ser</translation>
    </message>
    <message>
        <source>Another dimension</source>
        <translation>Otra dimensión</translation>
    </message>
    <message>
        <source>In</source>
        <translation>En</translation>
    </message>
    <message>
        <source>Read with</source>
        <translation>Se lee con</translation>
    </message>
    <message>
        <source>Add it</source>
        <translation>Añadirla</translation>
    </message>
    <message>
        <source>Add the dimension</source>
        <translation>Añadir la dimensión</translation>
    </message>
    <message>
        <source>“What it asks” settles the unit.</source>
        <translation>“Qué pide” decide la unidad.</translation>
    </message>
    <message>
        <source>Put in: {number}</source>
        <translation>Poner en: {number}</translation>
    </message>
    <message>
        <source>Old &amp; New</source>
        <translation>Vieja y nueva</translation>
    </message>
    <message>
        <source>Keep the old part on the bench. Choose what kind of part it is: then the two are laid side by side, and what to measure is said.</source>
        <translation>Guarde la pieza vieja en el banco de trabajo. Elija qué clase de pieza es: entonces las dos se ponen lado a lado y se dice qué medir.</translation>
    </message>
    <message>
        <source>“{card}” of {number}</source>
        <translation>“{card}” de {number}</translation>
    </message>
    <message>
        <source>pair: {name}</source>
        <translation>par: {name}</translation>
    </message>
    <message>
        <source>Photos, by what they show</source>
        <translation>Fotos, según lo que muestran</translation>
    </message>
    <message>
        <source>Seen</source>
        <translation>Visto</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation>Medido</translation>
    </message>
    <message>
        <source>Where it comes from</source>
        <translation>De dónde viene</translation>
    </message>
    <message>
        <source>This part kind is not on the shelf any more, so nothing is judged. What was read is kept.</source>
        <translation>Esta clase de pieza ya no está en el estante, así que no se juzga nada. Lo leído se conserva.</translation>
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
        <source>Supplier</source>
        <translation>Proveedor</translation>
    </message>
    <message>
        <source>Lot or date code</source>
        <translation>Lote o código de fecha</translation>
    </message>
    <message>
        <source>origin of the new part, {name}</source>
        <translation>origen de la pieza nueva, {name}</translation>
    </message>
    <message>
        <source>not said yet</source>
        <translation>aún no dicho</translation>
    </message>
    <message>
        <source>fate of the old part, {name}</source>
        <translation>destino de la pieza vieja, {name}</translation>
    </message>
    <message>
        <source>fitted or stopped, {name}</source>
        <translation>montada o detenida, {name}</translation>
    </message>
    <message>
        <source>fitted</source>
        <translation>montada</translation>
    </message>
    <message>
        <source>stopped before fitting</source>
        <translation>detenida antes de montar</translation>
    </message>
    <message>
        <source>Where is the new one from?</source>
        <translation>¿De dónde viene la nueva?</translation>
    </message>
    <message>
        <source>What became of the old one?</source>
        <translation>¿Qué fue de la vieja?</translation>
    </message>
    <message>
        <source>Did it go on?</source>
        <translation>¿Se montó?</translation>
    </message>
    <message>
        <source>✎ To be said before the car leaves.</source>
        <translation>✎ Hay que decirlo antes de que salga el vehículo.</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>no dicho</translation>
    </message>
    <message>
        <source>All reasons</source>
        <translation>Todas las razones</translation>
    </message>
    <message>
        <source>All reasons, {name}</source>
        <translation>Todas las razones, {name}</translation>
    </message>
    <message>
        <source>Take the pair away: {name}</source>
        <translation>Quitar el par: {name}</translation>
    </message>
    <message>
        <source>verdict on the {name}: {verdict}</source>
        <translation>veredicto sobre {name}: {verdict}</translation>
    </message>
    <message>
        <source>✎  One entry below can&apos;t be read and is not in this verdict. Mend it first.</source>
        <translation>✎  Una entrada de abajo no se puede leer y no está en este veredicto. Corríjala primero.</translation>
    </message>
    <message>
        <source>✎  {entries} entries below can&apos;t be read and are not in this verdict. Mend it first.</source>
        <translation>✎  {entries} entradas de abajo no se pueden leer y no están en este veredicto. Corríjalas primero.</translation>
    </message>
    <message>
        <source>◌  not judged</source>
        <translation>◌  sin juzgar</translation>
    </message>
    <message>
        <source>Next: {words}</source>
        <translation>Siguiente: {words}</translation>
    </message>
    <message>
        <source>Then 1 more thing is to do.</source>
        <translation>Después queda 1 cosa más por hacer.</translation>
    </message>
    <message>
        <source>Then {more} more things are to do.</source>
        <translation>Después quedan {more} cosas más por hacer.</translation>
    </message>
    <message>
        <source>whole part</source>
        <translation>pieza entera</translation>
    </message>
    <message>
        <source>Measure in these photos, and lay the new part&apos;s photo over the old one&apos;s.</source>
        <translation>Mida en estas fotos, y ponga la foto de la pieza nueva sobre la de la vieja.</translation>
    </message>
    <message>
        <source>Take photos of this part, in this view, with a phone on the shop&apos;s Wi-Fi.</source>
        <translation>Tome fotos de esta pieza, en esta vista, con un teléfono en la Wi-Fi del taller.</translation>
    </message>
    <message>
        <source>No photo of the {} here yet. Click to choose one, or drop it here.</source>
        <translation>Aún no hay foto de {} aquí. Haga clic para elegir una, o suéltela aquí.</translation>
    </message>
    <message>
        <source>Put a photo to one of the parts first.</source>
        <translation>Ponga primero una foto a una de las piezas.</translation>
    </message>
    <message>
        <source>Photo bench</source>
        <translation>Mesa de fotos</translation>
    </message>
    <message>
        <source>Photo bench: measure in these photos, {name}</source>
        <translation>Mesa de fotos: medir en estas fotos, {name}</translation>
    </message>
    <message>
        <source>Take out of this view</source>
        <translation>Quitar de esta vista</translation>
    </message>
    <message>
        <source>Take the chosen photo out of this view, {side}, {name}</source>
        <translation>Quitar la foto elegida de esta vista, {side}, {name}</translation>
    </message>
    <message>
        <source>view {view}, {name}</source>
        <translation>vista {view}, {name}</translation>
    </message>
    <message>
        <source>photos of the {said}, {name}</source>
        <translation>fotos: {said}, {name}</translation>
    </message>
    <message>
        <source>From a phone…</source>
        <translation>Desde un teléfono…</translation>
    </message>
    <message>
        <source>From a phone: photos of the {said}, {name}</source>
        <translation>Desde un teléfono: fotos, {said}, {name}</translation>
    </message>
    <message>
        <source>Find a part kind</source>
        <translation>Buscar una clase de pieza</translation>
    </message>
    <message>
        <source>rotor, pads, plug …</source>
        <translation>rotor, pastillas, bujía …</translation>
    </message>
    <message>
        <source>Part kinds</source>
        <translation>Clases de pieza</translation>
    </message>
    <message>
        <source>{name}, the shop&apos;s own</source>
        <translation>{name}, propia del taller</translation>
    </message>
    <message>
        <source>The sheet of {name}</source>
        <translation>La hoja de {name}</translation>
    </message>
    <message>
        <source>Judging the pairs both ways</source>
        <translation>Se juzgan los pares de ambas maneras</translation>
    </message>
    <message>
        <source>◎ photo</source>
        <translation>◎ foto</translation>
    </message>
    <message>
        <source>{taken} of {readings} readings taken from marks on the photo</source>
        <translation>{taken} de {readings} lecturas tomadas de marcas en la foto</translation>
    </message>
    <message>
        <source>{words}, each with the mark&apos;s own uncertainty.</source>
        <translation>{words}, cada una con la incertidumbre propia de la marca.</translation>
    </message>
    <message>
        <source>{name}, choices</source>
        <translation>{name}, opciones</translation>
    </message>
    <message>
        <source>◆ Removed</source>
        <translation>◆ Desmontada</translation>
    </message>
    <message>
        <source>● Replacement</source>
        <translation>● Repuesto</translation>
    </message>
    <message>
        <source>To scale</source>
        <translation>A escala</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Veredicto</translation>
    </message>
    <message>
        <source>{sign}  More dimensions: {others}, of which {measured} measured</source>
        <translation>{sign}  Más dimensiones: {others}, de ellas {measured} medidas</translation>
    </message>
    <message>
        <source>together: {name}{where}</source>
        <translation>juntas: {name}{where}</translation>
    </message>
    <message>
        <source>not entered</source>
        <translation>sin escribir</translation>
    </message>
    <message>
        <source>usual {amount}</source>
        <translation>habitual {amount}</translation>
    </message>
    <message>
        <source>drawing of {name}</source>
        <translation>dibujo de {name}</translation>
    </message>
    <message>
        <source>There is no sheet yet. Wait until it is made, or make it again.</source>
        <translation>Aún no hay hoja. Espere a que esté hecha o vuelva a hacerla.</translation>
    </message>
    <message>
        <source>Comparison sheet</source>
        <translation>Hoja de comparación</translation>
    </message>
    <message>
        <source>Make it again</source>
        <translation>Hacerla otra vez</translation>
    </message>
    <message>
        <source>Make the sheet again</source>
        <translation>Hacer otra vez la hoja</translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>Imprimir…</translation>
    </message>
    <message>
        <source>Print the sheet</source>
        <translation>Imprimir la hoja</translation>
    </message>
    <message>
        <source>Save as PDF…</source>
        <translation>Guardar como PDF…</translation>
    </message>
    <message>
        <source>Save the sheet as PDF</source>
        <translation>Guardar la hoja como PDF</translation>
    </message>
    <message>
        <source>Copy</source>
        <translation>Copiar</translation>
    </message>
    <message>
        <source>Copy the sheet as PDF</source>
        <translation>Copiar la hoja como PDF</translation>
    </message>
    <message>
        <source>Show the pages smaller</source>
        <translation>Mostrar las páginas más pequeñas</translation>
    </message>
    <message>
        <source>Show the pages larger</source>
        <translation>Mostrar las páginas más grandes</translation>
    </message>
    <message>
        <source>The sheet is being made …</source>
        <translation>Se está haciendo la hoja …</translation>
    </message>
    <message>
        <source>Making the sheet</source>
        <translation>Se hace la hoja</translation>
    </message>
    <message>
        <source>Pages of the sheet</source>
        <translation>Páginas de la hoja</translation>
    </message>
    <message>
        <source>larger</source>
        <translation>más grande</translation>
    </message>
    <message>
        <source>copies the sheet</source>
        <translation>copia la hoja</translation>
    </message>
    <message>
        <source>saves the sheet</source>
        <translation>guarda la hoja</translation>
    </message>
    <message>
        <source>prints the sheet</source>
        <translation>imprime la hoja</translation>
    </message>
    <message>
        <source>closes the preview</source>
        <translation>cierra la vista previa</translation>
    </message>
    <message>
        <source>That did not work; it is a mistake of the program.</source>
        <translation>Eso no funcionó; es un error del programa.</translation>
    </message>
    <message>
        <source>Sheet of job {number}</source>
        <translation>Hoja del trabajo {number}</translation>
    </message>
    <message>
        <source>Page {number} of {pictures}</source>
        <translation>Página {number} de {pictures}</translation>
    </message>
    <message>
        <source>The pages are as small as they get.</source>
        <translation>Las páginas ya no pueden ser más pequeñas.</translation>
    </message>
    <message>
        <source>The pages are as large as they get.</source>
        <translation>Las páginas ya no pueden ser más grandes.</translation>
    </message>
    <message>
        <source>Drawing the pages</source>
        <translation>Se dibujan las páginas</translation>
    </message>
    <message>
        <source>Something was written down since this sheet was made.</source>
        <translation>Algo se anotó después de hacer esta hoja.</translation>
    </message>
    <message>
        <source>Save the sheet</source>
        <translation>Guardar la hoja</translation>
    </message>
    <message>
        <source>Saving the sheet</source>
        <translation>Se guarda la hoja</translation>
    </message>
    <message>
        <source>The sheet was not copied: {why}.</source>
        <translation>La hoja no se copió: {why}.</translation>
    </message>
    <message>
        <source>Copied: paste it as a file, or its first page as a picture.</source>
        <translation>Copiada: péguela como archivo, o su primera página como imagen.</translation>
    </message>
    <message>
        <source>Saved as {to}.</source>
        <translation>Guardada como {to}.</translation>
    </message>
    <message>
        <source>Printing the sheet</source>
        <translation>Se imprime la hoja</translation>
    </message>
    <message>
        <source>Sent to the printer: 1 page.</source>
        <translation>Enviada a la impresora: 1 página.</translation>
    </message>
    <message>
        <source>Sent to the printer: {pages} pages.</source>
        <translation>Enviadas a la impresora: {pages} páginas.</translation>
    </message>
    <message>
        <source>No printer is set up on this computer. Save the sheet as PDF instead.</source>
        <translation>No hay ninguna impresora instalada en este equipo. Guarde la hoja como PDF.</translation>
    </message>
    <message>
        <source>The printer did not take the sheet.</source>
        <translation>La impresora no tomó la hoja.</translation>
    </message>
    <message>
        <source>Look whether it is on, or save it as PDF.</source>
        <translation>Mire si está encendida, o guárdela como PDF.</translation>
    </message>
    <message>
        <source>Printing page {number}</source>
        <translation>Se imprime la página {number}</translation>
    </message>
    <message>
        <source>Which sum?</source>
        <translation>¿Qué cálculo?</translation>
    </message>
    <message>
        <source>Bench sums</source>
        <translation>Cálculos de taller</translation>
    </message>
    <message>
        <source>Work one out</source>
        <translation>Hacer uno</translation>
    </message>
    <message>
        <source>on the sheet</source>
        <translation>en la hoja</translation>
    </message>
    <message>
        <source>Take the sum out: {name}</source>
        <translation>Quitar el cálculo: {name}</translation>
    </message>
    <message>
        <source>Keep it with the job</source>
        <translation>Guardarlo con el trabajo</translation>
    </message>
    <message>
        <source>Something is still missing, as said above.</source>
        <translation>Aún falta algo, como se dice arriba.</translation>
    </message>
    <message>
        <source>The drawer is empty: every instrument counts with the figures that are usual for its sort. Put your own in, and its own figures count.</source>
        <translation>El cajón está vacío: cada instrumento cuenta con las cifras habituales de su clase. Ponga los suyos, y contarán sus propias cifras.</translation>
    </message>
    <message>
        <source>Put the chosen one away</source>
        <translation>Guardar aparte el elegido</translation>
    </message>
    <message>
        <source>In the drawer</source>
        <translation>En el cajón</translation>
    </message>
    <message>
        <source>Instruments</source>
        <translation>Instrumentos</translation>
    </message>
    <message>
        <source>opens the chosen instrument, in its list</source>
        <translation>abre el instrumento elegido, en su lista</translation>
    </message>
    <message>
        <source>Change the chosen one</source>
        <translation>Cambiar el elegido</translation>
    </message>
    <message>
        <source>Try the chosen one out: gauge study</source>
        <translation>Probar el elegido: estudio del instrumento</translation>
    </message>
    <message>
        <source>{set_name} has no figure called {figure}.</source>
        <translation>{set_name} no tiene ningún dato llamado {figure}.</translation>
    </message>
    <message>
        <source>Enter the {label}</source>
        <translation>Escribir este dato: {label}</translation>
    </message>
    <message>
        <source>Entered for {name}: {listed}.</source>
        <translation>Escrito para {name}: {listed}.</translation>
    </message>
    <message>
        <source>Job {number}: old part and new part</source>
        <translation>Trabajo {number}: pieza vieja y pieza nueva</translation>
    </message>
    <message>
        <source>page {page} of {pages}</source>
        <translation>página {page} de {pages}</translation>
    </message>
    <message>
        <source>Old part and new part</source>
        <translation>Pieza vieja y pieza nueva</translation>
    </message>
    <message>
        <source>The repair and its proof</source>
        <translation>La reparación y su prueba</translation>
    </message>
    <message>
        <source>For the file</source>
        <translation>Para el archivo</translation>
    </message>
    <message>
        <source>The vehicle maker&apos;s procedures, local rules and licensed practice come before anything on this sheet.</source>
        <translation>Los procedimientos del fabricante del vehículo, las normas locales y la práctica autorizada están por encima de todo lo que dice esta hoja.</translation>
    </message>
    <message>
        <source>This sheet is no inspection of the car.</source>
        <translation>Esta hoja no es una inspección del vehículo.</translation>
    </message>
    <message>
        <source>This sheet compares parts as they were measured and seen on the bench. It is no inspection of the car.</source>
        <translation>Esta hoja compara piezas tal como se midieron y se vieron en el banco de trabajo. No es una inspección del vehículo.</translation>
    </message>
    <message>
        <source>{for_the_file} · job {number}</source>
        <translation>{for_the_file} · trabajo {number}</translation>
    </message>
    <message>
        <source>{sheet_is} · job {number}</source>
        <translation>{sheet_is} · trabajo {number}</translation>
    </message>
    <message>
        <source>Job {number} · made {made} · {anchor}</source>
        <translation>Trabajo {number} · hecha {made} · {anchor}</translation>
    </message>
    <message>
        <source>Vehicle</source>
        <translation>Vehículo</translation>
    </message>
    <message>
        <source>not described</source>
        <translation>sin describir</translation>
    </message>
    <message>
        <source>Plate</source>
        <translation>Matrícula</translation>
    </message>
    <message>
        <source>Tag</source>
        <translation>Etiqueta</translation>
    </message>
    <message>
        <source>VIN ends</source>
        <translation>Final del VIN</translation>
    </message>
    <message>
        <source>Came</source>
        <translation>Llegó</translation>
    </message>
    <message>
        <source>Handed over</source>
        <translation>Entregado</translation>
    </message>
    <message>
        <source>Not written.</source>
        <translation>Sin escribir.</translation>
    </message>
    <message>
        <source>Concern</source>
        <translation>Queja</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Cuándo</translation>
    </message>
    <message>
        <source>Found</source>
        <translation>Lo hallado</translation>
    </message>
    <message>
        <source>Not caught. {cause}</source>
        <translation>No reproducida. {cause}</translation>
    </message>
    <message>
        <source>Not named yet.</source>
        <translation>Sin nombrar todavía.</translation>
    </message>
    <message>
        <source>Cause</source>
        <translation>Causa</translation>
    </message>
    <message>
        <source>Nothing was written yet.</source>
        <translation>Todavía no se escribió nada.</translation>
    </message>
    <message>
        <source>Correction</source>
        <translation>Corrección</translation>
    </message>
    <message>
        <source>Bench sums, as they were worked out and kept</source>
        <translation>Cálculos de taller, tal como se hicieron y se guardaron</translation>
    </message>
    <message>
        <source>Both photos lie over each other, half and half.</source>
        <translation>Ambas fotos están una sobre otra, mitad y mitad.</translation>
    </message>
    <message>
        <source>No difference that was compared is larger than its uncertainty.</source>
        <translation>Ninguna diferencia comparada es mayor que su incertidumbre.</translation>
    </message>
    <message>
        <source>Framed is where the outlines differ by more than their uncertainty (95 %).</source>
        <translation>En recuadro, donde los contornos difieren en más de su incertidumbre (95 %).</translation>
    </message>
    <message>
        <source>The same where it must be the same</source>
        <translation>Igual donde debe ser igual</translation>
    </message>
    <message>
        <source>Restored where such a part wears</source>
        <translation>Restablecido donde se gasta una pieza así</translation>
    </message>
    <message>
        <source>Judged by the shop&apos;s own figures for this kind of part, as they are on this day.</source>
        <translation>Juzgado con los valores propios del taller para esta clase de pieza, tal como están hoy.</translation>
    </message>
    <message>
        <source>This part kind is not on the shelf, so these parts were not judged.</source>
        <translation>Esta clase de pieza no está en el estante, así que estas piezas no se juzgaron.</translation>
    </message>
    <message>
        <source>Everything essential on the list speaks for this replacement.</source>
        <translation>Todo lo esencial de la lista habla a favor de este repuesto.</translation>
    </message>
    <message>
        <source>Something speaks against this replacement.</source>
        <translation>Algo habla en contra de este repuesto.</translation>
    </message>
    <message>
        <source>What was measured is not enough to say that it fits.</source>
        <translation>Lo medido no basta para decir que sirve.</translation>
    </message>
    <message>
        <source>No photos were put to these parts.</source>
        <translation>No se pusieron fotos a estas piezas.</translation>
    </message>
    <message>
        <source>Replacement</source>
        <translation>Repuesto</translation>
    </message>
    <message>
        <source>{means} Next: {step}</source>
        <translation>{means} Siguiente: {step}</translation>
    </message>
    <message>
        <source>{means} Not measured: {labels}.</source>
        <translation>{means} Sin medir: {labels}.</translation>
    </message>
    <message>
        <source>Removed part</source>
        <translation>Pieza desmontada</translation>
    </message>
    <message>
        <source>No photo of this part in this view.</source>
        <translation>No hay foto de esta pieza en esta vista.</translation>
    </message>
    <message>
        <source>where it comes from was not said yet</source>
        <translation>aún no se dijo de dónde viene</translation>
    </message>
    <message>
        <source>supplied by {supplier}</source>
        <translation>suministrado por {supplier}</translation>
    </message>
    <message>
        <source>number on the removed part</source>
        <translation>número de la pieza desmontada</translation>
    </message>
    <message>
        <source>number on the box</source>
        <translation>número de la caja</translation>
    </message>
    <message>
        <source>number on the part</source>
        <translation>número de la pieza</translation>
    </message>
    <message>
        <source>{said} Stopped before fitting: it was not fitted.</source>
        <translation>{said} Se detuvo antes de montar: no se montó.</translation>
    </message>
    <message>
        <source>{said} It was fitted.</source>
        <translation>{said} Se montó.</translation>
    </message>
    <message>
        <source>Within the limits</source>
        <translation>Dentro de los límites</translation>
    </message>
    <message>
        <source>Different, and explained</source>
        <translation>Distinto, y explicado</translation>
    </message>
    <message>
        <source>Speaks against it</source>
        <translation>Habla en contra</translation>
    </message>
    <message>
        <source>Still open</source>
        <translation>Aún abierto</translation>
    </message>
    <message>
        <source>To measure next</source>
        <translation>Por medir ahora</translation>
    </message>
    <message>
        <source>Nothing is settled here.</source>
        <translation>Aquí no hay nada resuelto.</translation>
    </message>
    <message>
        <source>± is the expanded uncertainty at 95 % coverage: what instrument and scatter leave open. A difference is replacement minus removed; what an instrument gets wrong on both cancels. A verdict weighs these doubts and the limits; ± alone does not decide it.</source>
        <translation>± es la incertidumbre expandida con 95 % de cobertura: lo que dejan abierto el instrumento y la dispersión. Una diferencia es repuesto menos pieza desmontada; lo que un instrumento mide mal en ambas se anula. Un veredicto sopesa estas dudas y los límites; ± por sí sola no lo decide.</translation>
    </message>
    <message>
        <source>± is what the photo leaves open at 95 % coverage: pointing, camera, height and print.</source>
        <translation>± es lo que deja abierto la foto con 95 % de cobertura: señalado, cámara, altura e impresión.</translation>
    </message>
    <message>
        <source>Bars: at marks&apos; height.</source>
        <translation>Barras: a la altura de las marcas.</translation>
    </message>
    <message>
        <source>Where no height was said, a size holds only for what lies on the card itself.</source>
        <translation>Donde no se dijo ninguna altura, un tamaño vale solo para lo que está sobre la propia tarjeta.</translation>
    </message>
    <message>
        <source>{removed} solid line: removed part; {replacement} dashed line: replacement.</source>
        <translation>{removed} línea continua: pieza desmontada; {replacement} línea discontinua: repuesto.</translation>
    </message>
    <message>
        <source>What was read once rests on what such an instrument usually scatters.</source>
        <translation>Lo que se leyó una sola vez se apoya en la dispersión habitual de tal instrumento.</translation>
    </message>
    <message>
        <source>Marks on the photos</source>
        <translation>Marcas en las fotos</translation>
    </message>
    <message>
        <source>Surface on the photo</source>
        <translation>Superficie en la foto</translation>
    </message>
    <message>
        <source>The new part laid over the old one</source>
        <translation>La pieza nueva puesta sobre la vieja</translation>
    </message>
    <message>
        <source>What was measured</source>
        <translation>Qué se midió</translation>
    </message>
    <message>
        <source>{sign} removed</source>
        <translation>{sign} desmontada</translation>
    </message>
    <message>
        <source>{sign} replacement</source>
        <translation>{sign} repuesto</translation>
    </message>
    <message>
        <source>difference</source>
        <translation>diferencia</translation>
    </message>
    <message>
        <source>verdict</source>
        <translation>veredicto</translation>
    </message>
    <message>
        <source>Measured with</source>
        <translation>Medido con</translation>
    </message>
    <message>
        <source>Not needed and not measured</source>
        <translation>No hacía falta y no se midió</translation>
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
        <source>Where the removed part went</source>
        <translation>Adónde fue la pieza desmontada</translation>
    </message>
    <message>
        <source>What was read stands here as it was typed.</source>
        <translation>Lo leído está aquí tal como se escribió.</translation>
    </message>
    <message>
        <source>What was read</source>
        <translation>Qué se leyó</translation>
    </message>
    <message>
        <source>Proof</source>
        <translation>Prueba</translation>
    </message>
    <message>
        <source>How far this repair is proved has not been said yet.</source>
        <translation>Todavía no se dijo hasta dónde está probada esta reparación.</translation>
    </message>
    <message>
        <source>Reached</source>
        <translation>Alcanzado</translation>
    </message>
    <message>
        <source>What to watch for</source>
        <translation>A qué estar atento</translation>
    </message>
    <message>
        <source>Window</source>
        <translation>Plazo</translation>
    </message>
    <message>
        <source>What the drive is worth</source>
        <translation>Qué vale el recorrido</translation>
    </message>
    <message>
        <source>Caught here: a good sign, for the car had not left</source>
        <translation>Reproducida aquí: buena señal, pues el vehículo no había salido</translation>
    </message>
    <message>
        <source>Ticked as done</source>
        <translation>Marcado como hecho</translation>
    </message>
    <message>
        <source>Ticked as done, and yet no condition was met: {check}.</source>
        <translation>Marcado como hecho, y sin embargo no se dio ninguna condición: {check}.</translation>
    </message>
    <message>
        <source>Not ticked: {check}.</source>
        <translation>Sin marcar: {check}.</translation>
    </message>
    <message>
        <source>Not proved</source>
        <translation>No probado</translation>
    </message>
    <message>
        <source>Proof, in detail</source>
        <translation>La prueba en detalle</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Qué se hizo</translation>
    </message>
    <message>
        <source>Codes</source>
        <translation>Códigos</translation>
    </message>
    <message>
        <source>The car&apos;s own tests</source>
        <translation>Las pruebas propias del vehículo</translation>
    </message>
    <message>
        <source>Driven {distance:g} km. </source>
        <translation>Recorridos {distance:g} km. </translation>
    </message>
    <message>
        <source>Driven {distance:g} miles. </source>
        <translation>Recorridas {distance:g} millas. </translation>
    </message>
    <message>
        <source>Not said yet.</source>
        <translation>Aún no se dijo.</translation>
    </message>
    <message>
        <source>Declined or left undone</source>
        <translation>Rechazado o dejado sin hacer</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>Nothing.</source>
        <translation>Nada.</translation>
    </message>
    <message>
        <source>Before it is closed up</source>
        <translation>Antes de cerrar</translation>
    </message>
    <message>
        <source>Not needed</source>
        <translation>No hace falta</translation>
    </message>
    <message>
        <source>No answer was given to</source>
        <translation>No se respondió a</translation>
    </message>
    <message>
        <source>At the worst everything adds up; usually part of it cancels (root of the sum of squares). ± of a reading is its expanded uncertainty at 95 % coverage.</source>
        <translation>En el peor caso todo se suma; habitualmente una parte se anula (raíz de la suma de cuadrados). ± de una lectura es su incertidumbre expandida con 95 % de cobertura.</translation>
    </message>
    <message>
        <source>What that stands on</source>
        <translation>En qué se apoya</translation>
    </message>
    <message>
        <source>± {worst} worst, ± {usual} usual</source>
        <translation>± {worst} en el peor caso, ± {usual} habitual</translation>
    </message>
    <message>
        <source>With the new parts</source>
        <translation>Con las piezas nuevas</translation>
    </message>
    <message>
        <source>counts</source>
        <translation>cuenta</translation>
    </message>
    <message>
        <source>value</source>
        <translation>valor</translation>
    </message>
    <message>
        <source>known within</source>
        <translation>se conoce con</translation>
    </message>
    <message>
        <source>where from</source>
        <translation>de dónde</translation>
    </message>
    <message>
        <source>Old parts</source>
        <translation>Piezas viejas</translation>
    </message>
    <message>
        <source>New parts</source>
        <translation>Piezas nuevas</translation>
    </message>
    <message>
        <source>What the spark asks of the coil</source>
        <translation>Qué pide la chispa a la bobina</translation>
    </message>
    <message>
        <source>kilovolts (kV)</source>
        <translation>kilovoltios (kV)</translation>
    </message>
    <message>
        <source>rotor gap</source>
        <translation>separación del rotor</translation>
    </message>
    <message>
        <source>plug gap</source>
        <translation>separación de la bujía</translation>
    </message>
    <message>
        <source>{low:.1f} to {high:.1f} kV</source>
        <translation>{low:.1f} a {high:.1f} kV</translation>
    </message>
    <message>
        <source>rotor gap alone</source>
        <translation>solo el rotor</translation>
    </message>
    <message>
        <source>plug gap alone</source>
        <translation>solo la bujía</translation>
    </message>
    <message>
        <source>{kilovolts} (in all {range})</source>
        <translation>{kilovolts} (en total {range})</translation>
    </message>
    <message>
        <source>{gap} about {kilovolts}</source>
        <translation>{gap}: unos {kilovolts}</translation>
    </message>
    <message>
        <source>larger of the two {kilovolts}</source>
        <translation>la mayor de las dos, {kilovolts}</translation>
    </message>
    <message>
        <source>sum {kilovolts}</source>
        <translation>suma {kilovolts}</translation>
    </message>
    <message>
        <source>The {gap} was not measured; what it asks for is not in this picture.</source>
        <translation>La {gap} no se midió; lo que pide no está en esta figura.</translation>
    </message>
    <message>
        <source>Where a gap has no number, what it asks for is not in this picture.</source>
        <translation>Donde una separación no tiene número, lo que pide no está en esta figura.</translation>
    </message>
    <message>
        <source>Air at {pressure:g} kPa and {temperature:g} °C.</source>
        <translation>Aire a {pressure:g} kPa y {temperature:g} °C.</translation>
    </message>
    <message>
        <source>Compression {ratio:g} to 1; the squeezed air is taken as denser by that ratio alone.</source>
        <translation>Compresión {ratio:g} a 1; el aire comprimido se toma como más denso solo en esa proporción.</translation>
    </message>
    <message>
        <source>Compression {ratio:g} to 1, a usual figure, for the engine&apos;s own was not written; the squeezed air is taken as denser by that ratio alone.</source>
        <translation>Compresión {ratio:g} a 1, un valor habitual, pues no se escribió el del motor; el aire comprimido se toma como más denso solo en esa proporción.</translation>
    </message>
    <message>
        <source>reads to {step}</source>
        <translation>resolución {step}</translation>
    </message>
    <message>
        <source>permitted error ± {error}</source>
        <translation>error permitido ± {error}</translation>
    </message>
    <message>
        <source>repeats to {spread} by our own study</source>
        <translation>se repite con {spread} según nuestro propio estudio</translation>
    </message>
    <message>
        <source>repeats to {spread}</source>
        <translation>se repite con {spread}</translation>
    </message>
    <message>
        <source>usual figures</source>
        <translation>valores habituales</translation>
    </message>
    <message>
        <source>last checked {checked_on}, so its check is overdue</source>
        <translation>última verificación {checked_on}, así que está vencida</translation>
    </message>
    <message>
        <source>{text}… (cut here; the whole text is in the job)</source>
        <translation>{text}… (cortado aquí; el texto completo está en el trabajo)</translation>
    </message>
    <message>
        <source>the same</source>
        <translation>lo mismo</translation>
    </message>
    <message>
        <source>no limit entered</source>
        <translation>sin límite escrito</translation>
    </message>
    <message>
        <source>anything</source>
        <translation>cualquiera</translation>
    </message>
    <message>
        <source>{low} to {high}</source>
        <extracomment>A decimal point that was lost or moved makes ten of one; readings that differ by half of it are told by their scatter (common practice, no source). Play and run-out scatter by as much as they are: in mm less than this apart is no slip (common practice, no source).</extracomment>
        <translation>{low} a {high}</translation>
    </message>
    <message>
        <source>One reading is {off}, the others are {others}. Was it read in inches?</source>
        <translation>Una lectura es {off}; las demás, {others}. ¿Se leyó en pulgadas?</translation>
    </message>
    <message>
        <source>One reading is {off}, the others are {others}. Is it a slip?</source>
        <translation>Una lectura es {off}; las demás, {others}. ¿Es un error al escribir?</translation>
    </message>
    <message>
        <source>{low} and {high} are readings of one part. Is one of them a slip?</source>
        <translation>{low} y {high} son lecturas de una misma pieza. ¿Es una de ellas un error al escribir?</translation>
    </message>
    <message>
        <source>any value</source>
        <translation>cualquier valor</translation>
    </message>
    <message>
        <source>at most {amount}</source>
        <translation>como máximo {amount}</translation>
    </message>
    <message>
        <source>at least {amount}</source>
        <translation>al menos {amount}</translation>
    </message>
    <message>
        <source>from {low} to {high}</source>
        <translation>de {low} a {high}</translation>
    </message>
    <message>
        <source>same</source>
        <translation>igual</translation>
    </message>
    <message>
        <source>restored</source>
        <translation>restablecido</translation>
    </message>
    <message>
        <source>differs</source>
        <translation>distinto</translation>
    </message>
    <message>
        <source>not restored</source>
        <translation>no restablecido</translation>
    </message>
    <message>
        <source>worse than the old one</source>
        <translation>peor que la vieja</translation>
    </message>
    <message>
        <source>more than wear explains</source>
        <translation>más de lo que explica el desgaste</translation>
    </message>
    <message>
        <source>within limits</source>
        <translation>dentro de los límites</translation>
    </message>
    <message>
        <source>outside limits</source>
        <translation>fuera de los límites</translation>
    </message>
    <message>
        <source>count off</source>
        <translation>recuento distinto</translation>
    </message>
    <message>
        <source>turned</source>
        <translation>girado</translation>
    </message>
    <message>
        <source>explained</source>
        <translation>explicado</translation>
    </message>
    <message>
        <source>fits</source>
        <translation>sirve</translation>
    </message>
    <message>
        <source>stop and look</source>
        <translation>pare y mire</translation>
    </message>
    <message>
        <source>not enough measured</source>
        <translation>faltan mediciones</translation>
    </message>
    <message>
        <source>This is an estimate that explains, not a specification.</source>
        <translation>Esto es una estimación que explica, no una especificación.</translation>
    </message>
    <message>
        <source>Gaps in a row may break one after the other: with a full cylinder the coil must reach something from the larger of the two alone to their sum.</source>
        <translation>Las separaciones en serie pueden saltar una tras otra: con el cilindro lleno la bobina debe alcanzar algo entre la mayor de las dos sola y la suma de ambas.</translation>
    </message>
    <message>
        <source>The formula is for an even field in clean air. Sharp or crusted edges, ozone, damp and the pulse&apos;s polarity change it.</source>
        <translation>La fórmula es para un campo uniforme en aire limpio. La cambian los bordes afilados o con costra, el ozono, la humedad y la polaridad del pulso.</translation>
    </message>
    <message>
        <source>The plug&apos;s figure is an upper one: the cylinder is taken as full and the spark as coming at top dead centre. An earlier spark or less load asks for less.</source>
        <translation>El valor de la bujía es un máximo: el cilindro se toma como lleno y la chispa como si saltara en el punto muerto superior. Una chispa más temprana o menos carga piden menos.</translation>
    </message>
    <message>
        <source>Ignition voltage can injure or kill. People with a pacemaker keep away.</source>
        <translation>La tensión de encendido puede herir o matar. Las personas con marcapasos deben mantenerse alejadas.</translation>
    </message>
    <message>
        <source>Never open a spark gap by hand and never hold a live lead. The vehicle maker&apos;s procedure, local rules and licensed practice come first.</source>
        <translation>Nunca abra a mano una separación de chispa ni sujete nunca un cable con tensión. Primero van el procedimiento del fabricante del vehículo, las normas locales y la práctica autorizada.</translation>
    </message>
    <message>
        <source>{kv:.1f} kV ({low:.1f} to {high:.1f})</source>
        <translation>{kv:.1f} kV ({low:.1f} a {high:.1f})</translation>
    </message>
    <message>
        <source>The rotor gap asks for about {kilovolts}.</source>
        <translation>La separación del rotor pide unos {kilovolts}.</translation>
    </message>
    <message>
        <source>The plug gap asks for about {kilovolts}.</source>
        <translation>La separación de la bujía pide unos {kilovolts}.</translation>
    </message>
    <message>
        <source>With a full cylinder the coil must reach about {low}, the larger alone, to {high}, the sum; less load asks for less.</source>
        <translation>Con el cilindro lleno la bobina debe alcanzar de unos {low}, la mayor sola, a {high}, la suma; menos carga pide menos.</translation>
    </message>
    <message>
        <source>The {name} is known too roughly for a lower end: it may be almost closed.</source>
        <translation>La {name} se conoce con demasiada imprecisión para dar un extremo inferior: puede estar casi cerrada.</translation>
    </message>
    <message>
        <source>The old parts asked the coil for about {old}; the new ones ask for about {new}.</source>
        <translation>Las piezas viejas pedían a la bobina unos {old}; las nuevas piden unos {new}.</translation>
    </message>
    <message>
        <source>The rotor gap asked for about {old:.1f} kV with the old parts and asks for about {new:.1f} kV with the new.</source>
        <translation>La separación del rotor pedía unos {old:.1f} kV con las piezas viejas y pide unos {new:.1f} kV con las nuevas.</translation>
    </message>
    <message>
        <source>The plug gap asked for about {old:.1f} kV with the old parts and asks for about {new:.1f} kV with the new.</source>
        <translation>La separación de la bujía pedía unos {old:.1f} kV con las piezas viejas y pide unos {new:.1f} kV con las nuevas.</translation>
    </message>
    <message>
        <source>The {name} is closed: the parts touch, so there is no spark to reckon with.</source>
        <translation>La {name} está cerrada: las piezas se tocan, así que no hay chispa que calcular.</translation>
    </message>
    <message>
        <source>The {name} of {mm:.3g} mm in this air is too small for the formula, so no voltage is given.</source>
        <translation>La {name} de {mm:.3g} mm en este aire es demasiado pequeña para la fórmula, así que no se da ninguna tensión.</translation>
    </message>
    <message>
        <source>The {name} of {mm:.3g} mm in this air is too large for the formula, so no voltage is given.</source>
        <translation>La {name} de {mm:.3g} mm en este aire es demasiado grande para la fórmula, así que no se da ninguna tensión.</translation>
    </message>
    <message>
        <source>Shaft play and the cap&apos;s seat are not in its range.</source>
        <translation>El juego del eje y el asiento de la tapa no están en su intervalo.</translation>
    </message>
    <message>
        <source>Rotor gap: terminal radius of pair {cap} less tip radius of pair {rotor}; only the replacement was read and stands for both.</source>
        <translation>Separación del rotor: radio de los terminales del par {cap} menos radio de la punta del par {rotor}; solo se leyó el repuesto y vale por ambos.</translation>
    </message>
    <message>
        <source>Rotor gap: terminal radius of pair {cap} less tip radius of pair {rotor}; only the removed cap was read and stands for both.</source>
        <translation>Separación del rotor: radio de los terminales del par {cap} menos radio de la punta del par {rotor}; solo se leyó la tapa desmontada y vale por ambas.</translation>
    </message>
    <message>
        <source>Rotor gap: terminal radius of pair {cap} less tip radius of pair {rotor}.</source>
        <translation>Separación del rotor: radio de los terminales del par {cap} menos radio de la punta del par {rotor}.</translation>
    </message>
    <message>
        <source>Plug gap: the gap readings of pair {number}.</source>
        <translation>Separación de la bujía: las lecturas de separación del par {number}.</translation>
    </message>
    <message>
        <source>Rotor gap before: {before:g} mm as given</source>
        <translation>Separación del rotor antes: {before:g} mm, dada</translation>
    </message>
    <message>
        <source>tip radius</source>
        <translation>radio de la punta</translation>
    </message>
    <message>
        <source>terminal radius</source>
        <translation>radio de los terminales</translation>
    </message>
    <message>
        <source>after: changed by the {radius} of pair {number}</source>
        <translation>después: cambiada por el {radius} del par {number}</translation>
    </message>
    <message>
        <source>after: the same, for nothing that changes it was read</source>
        <translation>después: la misma, pues no se leyó nada que la cambie</translation>
    </message>
    <message>
        <source>The reading {id} is no number.</source>
        <translation>La lectura {id} no es un número.</translation>
    </message>
    <message>
        <source>The gauge reading {id} is no number.</source>
        <translation>La lectura de estudio {id} no es un número.</translation>
    </message>
    <message>
        <source>What was put into the bench sum {id} can&apos;t be read.</source>
        <translation>No se puede leer lo que se puso en el cálculo de taller {id}.</translation>
    </message>
    <message>
        <source>The uncertainty of the reading {reading_id} from a photo can&apos;t be read.</source>
        <translation>No se puede leer la incertidumbre de la lectura {reading_id} tomada de una foto.</translation>
    </message>
    <message>
        <source>That gauge study is not in the record any more.</source>
        <translation>Ese estudio del instrumento ya no está en el registro.</translation>
    </message>
    <message>
        <source>It may be undone.</source>
        <translation>Puede que se haya deshecho.</translation>
    </message>
    <message>
        <source>That pair is not in the record any more.</source>
        <translation>Ese par ya no está en el registro.</translation>
    </message>
    <message>
        <source>No job of this shop has photos of both parts yet.</source>
        <translation>Ningún trabajo de este taller tiene todavía fotos de ambas piezas.</translation>
    </message>
    <message>
        <source>That mark is not on the photo any more.</source>
        <translation>Esa marca ya no está en la foto.</translation>
    </message>
    <message>
        <source>the figures entered for parts that meet</source>
        <extracomment>How the row of a set is called among the kept sums of a job.</extracomment>
        <translation>los datos escritos para piezas que se encuentran</translation>
    </message>
    <message>
        <source>pairs {first} and {last}</source>
        <translation>pares {first} y {last}</translation>
    </message>
    <message>
        <source>pair {last}</source>
        <translation>par {last}</translation>
    </message>
    <message>
        <source>marks on the photos (each with the uncertainty of its own budget)</source>
        <translation>marcas en las fotos (cada una con la incertidumbre de su propio balance)</translation>
    </message>
    <message>
        <source>bare metal</source>
        <translation>metal desnudo</translation>
    </message>
    <message>
        <source>angle</source>
        <translation>ángulo</translation>
    </message>
    <message>
        <source>count</source>
        <translation>recuento</translation>
    </message>
    <message>
        <source>between two lines</source>
        <translation>entre dos líneas</translation>
    </message>
    <message>
        <source>point to line</source>
        <translation>de punto a línea</translation>
    </message>
    <message>
        <source>bar ⌀</source>
        <translation>barra ⌀</translation>
    </message>
    <message>
        <source>How the new photo lies on the old one is damaged in the record, and so not shown. Lay them on each other again.</source>
        <translation>Cómo está puesta la foto nueva sobre la vieja está dañado en el registro, y por eso no se muestra. Póngalas otra vez una sobre otra.</translation>
    </message>
    <message>
        <source>(height not said)</source>
        <translation>(altura no dicha)</translation>
    </message>
    <message>
        <source>bench card</source>
        <translation>tarjeta de medida</translation>
    </message>
    <message>
        <source>two points of a known length</source>
        <translation>dos puntos de longitud conocida</translation>
    </message>
    <message>
        <source>camera {tilt:.0f}° off straight down</source>
        <translation>cámara a {tilt:.0f}° de la vertical</translation>
    </message>
    <message>
        <source>{distance:.3g} {unit} away</source>
        <translation>a {distance:.3g} {unit} de distancia</translation>
    </message>
    <message>
        <source>the inputs of a bench sum</source>
        <translation>los datos de un cálculo de taller</translation>
    </message>
    <message>
        <source>Keep the sum {name}</source>
        <translation>Guardar el cálculo {name}</translation>
    </message>
    <message>
        <source>Put the sum on the sheet</source>
        <translation>Poner el cálculo en la hoja</translation>
    </message>
    <message>
        <source>Leave the sum off the sheet</source>
        <translation>Dejar el cálculo fuera de la hoja</translation>
    </message>
    <message>
        <source>Take the sum out</source>
        <translation>Quitar el cálculo</translation>
    </message>
    <message>
        <source>“{text}” is more than one limit.</source>
        <translation>“{text}” es más de un límite.</translation>
    </message>
    <message>
        <source>Type one number.</source>
        <translation>Escriba un solo número.</translation>
    </message>
    <message>
        <source>&apos;{shown}&apos; is below zero.</source>
        <extracomment>How many of the dimension&apos;s unit one of the typed unit is. The inch is 25.4 mm exactly (international yard and pound agreement, 1959). How near to 25.4 times apart counts as a mixed-up unit (about 15 %).</extracomment>
        <translation>&apos;{shown}&apos; está por debajo de cero.</translation>
    </message>
    <message>
        <source>a whole number, zero or more</source>
        <translation>un número entero, cero o más</translation>
    </message>
    <message>
        <source>millimetres like 12.7 or 12,7, inches like 0.500 in or 1/2&quot;, or a sum like 0.30+0.15</source>
        <translation>milímetros como 12.7 o 12,7, pulgadas como 0.500 in o 1/2&quot;, o una suma como 0.30+0.15</translation>
    </message>
    <message>
        <source>a number in {unit}, like 12.7</source>
        <translation>un número en {unit}, como 12.7</translation>
    </message>
    <message>
        <source>{value:g} mm here and {other:g} mm on the other part are about 25.4 times apart. Was one of them read in inches?</source>
        <translation>{value:g} mm aquí y {other:g} mm en la otra pieza distan unas 25.4 veces. ¿Se leyó una de las dos en pulgadas?</translation>
    </message>
    <message>
        <source>{value:g} mm is unusual for this part. Were those inches?</source>
        <translation>{value:g} mm es inusual para esta pieza. ¿Eran pulgadas?</translation>
    </message>
    <message>
        <source>{value:g} mm is unusual for this part. Were those already millimetres?</source>
        <translation>{value:g} mm es inusual para esta pieza. ¿Eran ya milímetros?</translation>
    </message>
    <message>
        <source>&apos;{shown}&apos; can&apos;t be understood as a value.</source>
        <translation>&apos;{shown}&apos; no se entiende como valor.</translation>
    </message>
    <message>
        <source> It looks like the mirror image of the old one.</source>
        <translation> Parece la imagen en espejo de la vieja.</translation>
    </message>
    <message>
        <source>Single readings</source>
        <translation>Lecturas sueltas</translation>
    </message>
    <message>
        <source>kind not said</source>
        <translation>clase no dicha</translation>
    </message>
    <message>
        <source>{labels}: every reading is a whole number of {step}, and the tool shows {shown}. Were they rounded?</source>
        <translation>{labels}: todas las lecturas son números enteros de {step}, y el instrumento muestra {shown}. ¿Se redondearon?</translation>
    </message>
</context>
</TS>
