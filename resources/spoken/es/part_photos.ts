<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es">
<context>
    <name></name>
    <message>
        <source>no such file</source>
        <translation>no existe ese archivo</translation>
    </message>
    <message>
        <source>it can&apos;t be opened ({reason}).</source>
        <translation>no se puede abrir ({reason}).</translation>
    </message>
    <message>
        <source>it is no file but a folder, a device or a pipe.</source>
        <translation>no es un archivo, sino una carpeta, un dispositivo o una tubería.</translation>
    </message>
    <message>
        <source>it can&apos;t be read ({reason}).</source>
        <translation>no se puede leer ({reason}).</translation>
    </message>
    <message>
        <source>That job is no longer there.</source>
        <translation>Ese trabajo ya no está.</translation>
    </message>
    <message>
        <source>The photos are in the shop&apos;s folder.</source>
        <translation>Las fotos están en la carpeta del taller.</translation>
    </message>
    <message>
        <source>Undo until the job is back, then add them again.</source>
        <translation>Deshaga hasta que el trabajo vuelva a estar y añádalas otra vez.</translation>
    </message>
    <message>
        <source>Add a photo</source>
        <translation>Añadir una foto</translation>
    </message>
    <message>
        <source>Add {photos} photos</source>
        <translation>Añadir {photos} fotos</translation>
    </message>
    <message>
        <source>Write a photo&apos;s note</source>
        <translation>Escribir la nota de una foto</translation>
    </message>
    <message>
        <source>Take a photo off the job</source>
        <translation>Quitar una foto del trabajo</translation>
    </message>
    <message>
        <source>the folder can&apos;t be read: {reason}.</source>
        <translation>la carpeta no se puede leer: {reason}.</translation>
    </message>
    <message>
        <source>a folder inside a folder is not searched.</source>
        <translation>no se busca en una carpeta dentro de otra.</translation>
    </message>
    <message>
        <source>Drop it itself.</source>
        <translation>Suelte esa carpeta directamente.</translation>
    </message>
    <message>
        <source>the folder is empty.</source>
        <translation>la carpeta está vacía.</translation>
    </message>
    <message>
        <source>a predefined ArUco dictionary, such as DICT_5X5_100</source>
        <translation>un diccionario ArUco predefinido, como DICT_5X5_100</translation>
    </message>
    <message>
        <source>is no predefined ArUco dictionary</source>
        <translation>no es un diccionario ArUco predefinido</translation>
    </message>
    <message>
        <source>DICT_5X5_100, for example</source>
        <translation>DICT_5X5_100, por ejemplo</translation>
    </message>
    <message>
        <source>is not above 0</source>
        <translation>no es mayor que 0</translation>
    </message>
    <message>
        <source>the ruler&apos;s length in mm, such as 150.0</source>
        <translation>la longitud de la regla en mm, como 150.0</translation>
    </message>
    <message>
        <source>a name in one line</source>
        <translation>un nombre en una sola línea</translation>
    </message>
    <message>
        <source>a4, letter, or another word</source>
        <translation>a4, letter u otra palabra</translation>
    </message>
    <message>
        <source>Accepted: {accepted}.</source>
        <translation>Se acepta: {accepted}.</translation>
    </message>
    <message>
        <source>is missing or no text</source>
        <translation>falta o no es texto</translation>
    </message>
    <message>
        <source>is too long or not in one line of text</source>
        <translation>es demasiado largo o no es una sola línea de texto</translation>
    </message>
    <message>
        <source>{accepted}, 100 letters</source>
        <translation>{accepted}, 100 letras</translation>
    </message>
    <message>
        <source>is missing or no number</source>
        <translation>falta o no es un número</translation>
    </message>
    <message>
        <source>a number of millimetres</source>
        <translation>un número de milímetros</translation>
    </message>
    <message>
        <source>is no number</source>
        <translation>no es un número</translation>
    </message>
    <message>
        <source>is too large</source>
        <translation>es demasiado grande</translation>
    </message>
    <message>
        <source>millimetres, {most_mm:.0f} at most</source>
        <translation>milímetros, {most_mm:.0f} como máximo</translation>
    </message>
    <message>
        <source>is no list of markers</source>
        <translation>no es una lista de marcadores</translation>
    </message>
    <message>
        <source>1 to {most} of them</source>
        <translation>de 1 a {most}</translation>
    </message>
    <message>
        <source>{id} is there twice</source>
        <translation>{id} está dos veces</translation>
    </message>
    <message>
        <source>each id once</source>
        <translation>cada id una sola vez</translation>
    </message>
    <message>
        <source>is not four numbers</source>
        <translation>no son cuatro números</translation>
    </message>
    <message>
        <source>[left, top, right, bottom] in mm</source>
        <translation>[izquierda, arriba, derecha, abajo] en mm</translation>
    </message>
    <message>
        <source>has no room in it</source>
        <translation>no deja sitio dentro</translation>
    </message>
    <message>
        <source>left below right, top below bottom</source>
        <translation>izquierda menor que derecha, arriba menor que abajo</translation>
    </message>
    <message>
        <source>is no marker</source>
        <translation>no es un marcador</translation>
    </message>
    <message>
        <source>four corners</source>
        <translation>cuatro esquinas</translation>
    </message>
    <message>
        <source>is not in the dictionary</source>
        <translation>no está en el diccionario</translation>
    </message>
    <message>
        <source>0 to {count}</source>
        <translation>de 0 a {count}</translation>
    </message>
    <message>
        <source>is not four corners</source>
        <translation>no son cuatro esquinas</translation>
    </message>
    <message>
        <source>[[x, y], [x, y], [x, y], [x, y]] in mm</source>
        <translation>[[x, y], [x, y], [x, y], [x, y]] en mm</translation>
    </message>
    <message>
        <source>is no marker&apos;s outline</source>
        <translation>no es el contorno de un marcador</translation>
    </message>
    <message>
        <source>corners clockwise (x right, y down), convex, {least_mm2:g} mm² at least</source>
        <translation>esquinas en el sentido de las agujas del reloj (x hacia la derecha, y hacia abajo), convexo, {least_mm2:g} mm² como mínimo</translation>
    </message>
    <message>
        <source>Accepted: a layout as the card command writes it.</source>
        <translation>Se acepta: un diseño como lo escribe la orden card.</translation>
    </message>
    <message>
        <source>a card&apos;s layout</source>
        <translation>el diseño de una tarjeta</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Carta</translation>
    </message>
    <message>
        <source>There is no bench card for “{paper}” paper.</source>
        <translation>No hay tarjeta de medida para papel “{paper}”.</translation>
    </message>
    <message>
        <source>Accepted: a4, letter.</source>
        <translation>Se acepta: a4, letter.</translation>
    </message>
    <message>
        <source>Benchwitness bench card, {paper}</source>
        <translation>Tarjeta de medida de Benchwitness, {paper}</translation>
    </message>
    <message>
        <source>Print at 100 %, not fitted to the page. Lay it flat on a board. Lay the part in the tinted field. Hold the camera roughly above, all of it sharp.</source>
        <translation>Imprima al 100 %, sin ajustar a la página. Póngala plana sobre un tablero y la pieza en el campo tintado. Cámara más o menos desde arriba, todo nítido.</translation>
    </message>
    <message>
        <source>The ruler tells how true the print is: measure it once with a calliper, from the middle of one end line to the middle of the other, and enter that length.</source>
        <translation>La regla dice lo fiel que es la impresión: mídala una vez con un calibre, del centro de una línea final al centro de la otra, y anote esa longitud.</translation>
    </message>
    <message>
        <source>“{name}” is not a card of this program.</source>
        <translation>“{name}” no es una tarjeta de este programa.</translation>
    </message>
    <message>
        <source>Print it from where it came from.</source>
        <translation>Imprímala desde donde vino.</translation>
    </message>
    <message>
        <source>bench card</source>
        <translation>tarjeta de medida</translation>
    </message>
    <message>
        <source>markers {first} to {last}</source>
        <translation>marcadores {first} a {last}</translation>
    </message>
    <message>
        <source>Card flat on a board</source>
        <translation>Tarjeta plana sobre un tablero</translation>
    </message>
    <message>
        <source>Part in the tinted field</source>
        <translation>Pieza en el campo tintado</translation>
    </message>
    <message>
        <source>Camera roughly above, all of it sharp</source>
        <translation>Cámara más o menos desde arriba, todo nítido</translation>
    </message>
    <message>
        <source>card {card_id}, print not measured</source>
        <translation>tarjeta {card_id}, impresión sin medir</translation>
    </message>
    <message>
        <source>card {card_id}, ruler {length} measured{when}</source>
        <translation>tarjeta {card_id}, regla {length}, medida{when}</translation>
    </message>
    <message>
        <source>The printed card is not noted, so its print counts as not measured.</source>
        <translation>La tarjeta impresa no está anotada, así que su impresión cuenta como no medida.</translation>
    </message>
    <message>
        <source>Which printed card it was is not said: ± covers all {number} of them.</source>
        <translation>No se ha dicho qué tarjeta impresa era: ± abarca las {number}.</translation>
    </message>
    <message>
        <source>Accepted: millimetres like 150.2 or 150,2, inches like 5.913 in.</source>
        <translation>Se acepta: milímetros como 150.2 o 150,2, pulgadas como 5.913 in.</translation>
    </message>
    <message>
        <source>Is that in inches? Then write {measured_mm:.6g} in.</source>
        <translation>¿Está en pulgadas? Entonces escriba {measured_mm:.6g} in.</translation>
    </message>
    <message>
        <source>Is that in millimetres? Then write {measured_mm:.6g} mm.</source>
        <translation>¿Está en milímetros? Entonces escriba {measured_mm:.6g} mm.</translation>
    </message>
    <message>
        <source>Accepted: {low:g} to {high:g} mm. Measure again, or print the card anew at 100 %, not fitted to the page.</source>
        <translation>Se acepta: de {low:g} a {high:g} mm. Mida otra vez, o imprima la tarjeta de nuevo al 100 %, sin ajustar a la página.</translation>
    </message>
    <message>
        <source>The ruler should be {nominal_mm:g} mm; {measured_mm:.6g} mm is too far off.</source>
        <translation>La regla debería medir {nominal_mm:g} mm; {measured_mm:.6g} mm se aparta demasiado.</translation>
    </message>
    <message>
        <source>✎ Never measured. Lengths from photos on this card may be off by about half a percent, and their uncertainty says so (common practice, no source).</source>
        <translation>✎ Nunca medida. Las longitudes de fotos sobre esta tarjeta pueden desviarse cerca de medio por ciento, y su incertidumbre lo dice (práctica común, sin fuente).</translation>
    </message>
    <message>
        <source>Measured on {day}</source>
        <translation>Medido el {day}</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation>Medido</translation>
    </message>
    <message>
        <source>{done}: the print is true.</source>
        <translation>{done}: la impresión es fiel.</translation>
    </message>
    <message>
        <source>printed {percent:.2f} % larger than drawn</source>
        <translation>impresa un {percent:.2f} % más grande que el dibujo</translation>
    </message>
    <message>
        <source>printed {percent:.2f} % smaller than drawn</source>
        <translation>impresa un {percent:.2f} % más pequeña que el dibujo</translation>
    </message>
    <message>
        <source>{done}: {printed}; every length is corrected.</source>
        <translation>{done}: {printed}; se corrige cada longitud.</translation>
    </message>
    <message>
        <source>The photo stays as it is.</source>
        <translation>La foto queda como está.</translation>
    </message>
    <message>
        <source>Take the photo again</source>
        <translation>Tome la foto otra vez</translation>
    </message>
    <message>
        <source>The photo is mirrored: the bench card&apos;s markers are the wrong way round in it.</source>
        <translation>La foto está reflejada: en ella los marcadores de la tarjeta de medida están al revés.</translation>
    </message>
    <message>
        <source>{again} with the main camera, or switch mirroring off in the camera&apos;s settings.</source>
        <translation>{again} con la cámara principal, o desactive el reflejo en los ajustes de la cámara.</translation>
    </message>
    <message>
        <source>No marker of {cards} was found in the photo.</source>
        <translation>En la foto no se halló ningún marcador de {cards}.</translation>
    </message>
    <message>
        <source>{again} with the printed card flat under the part, whole in the picture, in even light.</source>
        <translation>{again} con la tarjeta impresa plana bajo la pieza, entera en la imagen y con luz uniforme.</translation>
    </message>
    <message>
        <source>{again} with more of the card in the picture and nothing lying on its markers.</source>
        <translation>{again} con más parte de la tarjeta en la imagen y nada encima de sus marcadores.</translation>
    </message>
    <message>
        <source>Too few markers: 1 of the card&apos;s {carried} is clearly seen, {needed} are needed.</source>
        <translation>Muy pocos marcadores: de los {carried} de la tarjeta se ve claramente 1; hacen falta {needed}.</translation>
    </message>
    <message>
        <source>Too few markers: {seen} of the card&apos;s {carried} are clearly seen, {needed} are needed.</source>
        <translation>Muy pocos marcadores: de los {carried} de la tarjeta se ven claramente {seen}; hacen falta {needed}.</translation>
    </message>
    <message>
        <source>The same bench card is in the photo twice ({count} markers are there two times).</source>
        <translation>La misma tarjeta de medida está dos veces en la foto ({count} marcadores aparecen dos veces).</translation>
    </message>
    <message>
        <source>{again} with one card only.</source>
        <translation>{again} con una sola tarjeta.</translation>
    </message>
    <message>
        <source>The card is too small in the photo: the squares of its markers are {module_px:.1f} pixels wide, {least_module_px:.0f} are needed.</source>
        <translation>La tarjeta es demasiado pequeña en la foto: los cuadrados de sus marcadores tienen {module_px:.1f} píxeles de ancho y hacen falta {least_module_px:.0f}.</translation>
    </message>
    <message>
        <source>{again} from nearer, and don&apos;t send it through a messenger that shrinks it.</source>
        <translation>{again} desde más cerca, y no la envíe por una mensajería que la reduzca.</translation>
    </message>
    <message>
        <source>The card is too small in the photo: one pixel is {mm_per_px:.2f} mm there, {most_mm_per_px:.2f} mm at most can be measured in.</source>
        <translation>La tarjeta es demasiado pequeña en la foto: allí un píxel son {mm_per_px:.2f} mm; se puede medir con {most_mm_per_px:.2f} mm como máximo.</translation>
    </message>
    <message>
        <source>The photo is blurred: the card&apos;s edges are spread over {pixels:.0f} pixels.</source>
        <translation>La foto está borrosa: los bordes de la tarjeta se extienden sobre {pixels:.0f} píxeles.</translation>
    </message>
    <message>
        <source>{again} with the camera held still, focused on the part, in more light.</source>
        <translation>{again} con la cámara quieta, enfocada en la pieza y con más luz.</translation>
    </message>
    <message>
        <source>The camera was tilted {tilt_deg:.0f}° against the card, {most_tilt_deg:.0f}° at most can be measured in.</source>
        <translation>La cámara estaba inclinada {tilt_deg:.0f}° respecto a la tarjeta; se puede medir con {most_tilt_deg:.0f}° como máximo.</translation>
    </message>
    <message>
        <source>{again} from more nearly straight above.</source>
        <translation>{again} más derecho desde arriba.</translation>
    </message>
    <message>
        <source>The markers in the photo don&apos;t lie as on the card that is named.</source>
        <translation>Los marcadores de la foto no están como en la tarjeta que se indica.</translation>
    </message>
    <message>
        <source>Name the card that was photographed, or print a new one.</source>
        <translation>Indique la tarjeta que se fotografió, o imprima una nueva.</translation>
    </message>
    <message>
        <source>it arches by {arch_mm:.1f} mm</source>
        <translation>se arquea {arch_mm:.1f} mm</translation>
    </message>
    <message>
        <source>its markers are {off_mm:.2f} mm off</source>
        <translation>sus marcadores se apartan {off_mm:.2f} mm</translation>
    </message>
    <message>
        <source>The card doesn&apos;t lie flat, or the photo was cropped or stretched: {seen}.</source>
        <translation>La tarjeta no está plana, o la foto se recortó o se estiró: {seen}.</translation>
    </message>
    <message>
        <source>Bring the photo as the camera made it. If that is it, take the photo again with the card flat.</source>
        <translation>Traiga la foto tal como la hizo la cámara. Si ya es esa, tome la foto otra vez con la tarjeta plana.</translation>
    </message>
    <message>
        <source>The card doesn&apos;t lie flat, or isn&apos;t the one that is named: {seen}.</source>
        <translation>La tarjeta no está plana, o no es la que se indica: {seen}.</translation>
    </message>
    <message>
        <source>{again} with the card flat; glue it to a board if it curls.</source>
        <translation>{again} con la tarjeta plana; si se enrolla, péguela sobre un tablero.</translation>
    </message>
    <message>
        <source>The card looks as through another lens than the photo names, as if the photo was cropped, stretched or zoomed: sizes above the card are less certain the higher they lie. Bring the photo as the camera made it.</source>
        <translation>La tarjeta se ve como a través de un objetivo distinto del que indica la foto, como si la foto se hubiera recortado, estirado o ampliado: los tamaños por encima de la tarjeta son menos seguros cuanto más altos están. Traiga la foto tal como la hizo la cámara.</translation>
    </message>
    <message>
        <source>The photo doesn&apos;t name its lens, or isn&apos;t as the camera made it but cropped, shrunk or stored anew: sizes above the card are less certain the higher they lie. Bring the photo as the camera made it.</source>
        <translation>La foto no indica su objetivo, o no está como la hizo la cámara, sino recortada, reducida o guardada de nuevo: los tamaños por encima de la tarjeta son menos seguros cuanto más altos están. Traiga la foto tal como la hizo la cámara.</translation>
    </message>
    <message>
        <source>The photo is not quite sharp: mark edges with care.</source>
        <translation>La foto no es del todo nítida: marque los bordes con cuidado.</translation>
    </message>
    <message>
        <source>The card doesn&apos;t lie quite flat: its markers are {spread_px:.2f} pixels off, {left_out:.0%} of their corners further. The scale&apos;s uncertainty counts double.</source>
        <translation>La tarjeta no está del todo plana: sus marcadores se apartan {spread_px:.2f} píxeles, y el {left_out:.0%} de sus esquinas más aún. La incertidumbre de la escala cuenta el doble.</translation>
    </message>
    <message>
        <source>The card looks as if the photo was cut out far from the middle of what the camera saw, or taken through a very long lens. The scale&apos;s uncertainty counts double.</source>
        <translation>La tarjeta se ve como si la foto se hubiera recortado lejos del centro de lo que vio la cámara, o se hubiera tomado con un teleobjetivo muy largo. La incertidumbre de la escala cuenta el doble.</translation>
    </message>
    <message>
        <source>From so few markers the card&apos;s tilt could be read two ways. The scale&apos;s uncertainty counts double.</source>
        <translation>Con tan pocos marcadores, la inclinación de la tarjeta se podría leer de dos maneras. La incertidumbre de la escala cuenta el doble.</translation>
    </message>
    <message>
        <source>a bench card</source>
        <translation>una tarjeta de medida</translation>
    </message>
    <message>
        <source>Another card lies in the photo too ({name}); “{used}” counts, with more markers.</source>
        <translation>En la foto hay también otra tarjeta ({name}); cuenta “{used}”, con más marcadores.</translation>
    </message>
    <message>
        <source>The scale&apos;s points are no pixels.</source>
        <translation>Los puntos de la escala no son píxeles.</translation>
    </message>
    <message>
        <source>two points of the photo</source>
        <translation>dos puntos de la foto</translation>
    </message>
    <message>
        <source>A scale of {length_mm:g} mm can&apos;t be.</source>
        <translation>No puede haber una escala de {length_mm:g} mm.</translation>
    </message>
    <message>
        <source>a distance of {least_mm:g} to {most_mm:g} mm</source>
        <translation>una distancia de {least_mm:g} a {most_mm:g} mm</translation>
    </message>
    <message>
        <source>The scale&apos;s length can&apos;t be off by {length_u_mm:g} mm.</source>
        <translation>La longitud de la escala no puede desviarse {length_u_mm:g} mm.</translation>
    </message>
    <message>
        <source>0 or more, and less than its {length_mm:g} mm</source>
        <translation>0 o más, y menos que sus {length_mm:g} mm</translation>
    </message>
    <message>
        <source>The scale&apos;s two points lie too close together.</source>
        <translation>Los dos puntos de la escala están demasiado juntos.</translation>
    </message>
    <message>
        <source>two points {least_px:g} pixels apart or more, better far apart</source>
        <translation>dos puntos a {least_px:g} píxeles o más, mejor muy separados</translation>
    </message>
    <message>
        <source>The scale comes from two points: it holds only in the plane they lie in, seen straight from above. What lies nearer to the camera measures too large, what lies askew too small, and ± doesn&apos;t know of it. Use the bench card where it counts.</source>
        <translation>La escala sale de dos puntos: vale solo en el plano en que están, visto derecho desde arriba. Lo que está más cerca de la cámara mide de más, lo que está inclinado mide de menos, y ± no lo sabe. Use la tarjeta de medida cuando importe.</translation>
    </message>
    <message>
        <source>Note a printed card</source>
        <translation>Anotar una tarjeta impresa</translation>
    </message>
    <message>
        <source>Measure a card&apos;s ruler</source>
        <translation>Medir la regla de una tarjeta</translation>
    </message>
    <message>
        <source>Put a card away</source>
        <translation>Retirar una tarjeta</translation>
    </message>
    <message>
        <source>The photo “{photo}” shows the VIN {vin}.</source>
        <translation>La foto “{photo}” muestra el VIN {vin}.</translation>
    </message>
    <message>
        <source>The field has {kept} now.</source>
        <translation>El campo tiene ahora {kept}.</translation>
    </message>
    <message>
        <source>Choose a tool, then click on a photo; or click on a mark, or into a surface, to choose it. Esc gives up, Delete takes a chosen mark out.</source>
        <translation>Elija una herramienta y haga clic en una foto; o haga clic en una marca, o dentro de una superficie, para elegirla. Esc lo abandona, Supr quita una marca elegida.</translation>
    </message>
    <message>
        <source>By keys: arrows move a cross, Space places a point.</source>
        <translation>Con teclas: las flechas mueven una cruz, Espacio coloca un punto.</translation>
    </message>
    <message>
        <source>It tells how much of what you draw round has another colour than bare metal.</source>
        <translation>Dice cuánto de lo que usted rodea tiene otro color que el metal desnudo.</translation>
    </message>
    <message>
        <source>Draw round a place of this photo that is bare: its surfaces are counted by it.</source>
        <translation>Rodee un lugar de esta foto que esté desnudo: con él se cuentan sus superficies.</translation>
    </message>
    <message>
        <source>{point}, in either photo</source>
        <translation>{point}, en cualquiera de las fotos</translation>
    </message>
    <message>
        <source>{point} from it, in the same photo</source>
        <translation>{point} de ese, en la misma foto</translation>
    </message>
    <message>
        <source>{point} from the first, in either photo</source>
        <translation>{point} del primero, en cualquiera de las fotos</translation>
    </message>
    <message>
        <source>the first point again, in the other photo</source>
        <translation>otra vez el primer punto, en la otra foto</translation>
    </message>
    <message>
        <source>the second point again, in the other photo</source>
        <translation>otra vez el segundo punto, en la otra foto</translation>
    </message>
    <message>
        <source>{label}, {placed} points: {more}.</source>
        <translation>{label}, {placed} puntos: {more}.</translation>
    </message>
    <message>
        <source>{label}, {number} of at least {wanted}: {click}.</source>
        <translation>{label}, {number} de al menos {wanted}: {click}.</translation>
    </message>
    <message>
        <source>{label}, {number} of {wanted}: {click}.</source>
        <translation>{label}, {number} de {wanted}: {click}.</translation>
    </message>
    <message>
        <source>{to} is a folder.</source>
        <translation>{to} es una carpeta.</translation>
    </message>
    <message>
        <source>Name a file, such as {example}.</source>
        <translation>Indique un archivo, como {example}.</translation>
    </message>
    <message>
        <source>“{name}” does not end in {ending}.</source>
        <translation>“{name}” no termina en {ending}.</translation>
    </message>
    <message>
        <source>Let the name end in {ending}.</source>
        <translation>Haga que el nombre termine en {ending}.</translation>
    </message>
    <message>
        <source>There is no folder {parent}.</source>
        <translation>No existe la carpeta {parent}.</translation>
    </message>
    <message>
        <source>Make it, or choose another one.</source>
        <translation>Créela, o elija otra.</translation>
    </message>
    <message>
        <source>{to} is a device or a pipe.</source>
        <translation>{to} es un dispositivo o una tubería.</translation>
    </message>
    <message>
        <source>Name a file.</source>
        <translation>Indique un archivo.</translation>
    </message>
    <message>
        <source>{to} is one of the files that are read, and those are never changed.</source>
        <translation>{to} es uno de los archivos que se leen, y esos nunca se cambian.</translation>
    </message>
    <message>
        <source>Name another file.</source>
        <translation>Indique otro archivo.</translation>
    </message>
    <message>
        <source>{to} was not written: {reason}.</source>
        <translation>{to} no se escribió: {reason}.</translation>
    </message>
    <message>
        <source>A file that was there is as it was.</source>
        <translation>Un archivo que ya estaba queda como estaba.</translation>
    </message>
    <message>
        <source>Close it where it is open, or choose another place.</source>
        <translation>Ciérrelo donde esté abierto, o elija otro lugar.</translation>
    </message>
    <message>
        <source>the file is empty.</source>
        <translation>el archivo está vacío.</translation>
    </message>
    <message>
        <source>this is {kind}; photos are {accepted}.</source>
        <translation>esto es {kind}; las fotos son {accepted}.</translation>
    </message>
    <message>
        <source>the file is cut into far more pieces than a camera writes.</source>
        <translation>el archivo está cortado en muchos más trozos de los que escribe una cámara.</translation>
    </message>
    <message>
        <source>the file has more than {number} MB.</source>
        <translation>el archivo tiene más de {number} MB.</translation>
    </message>
    <message>
        <source>This job had it already; now it stands for this part too:</source>
        <translation>Este trabajo ya la tenía; ahora vale también para esta pieza:</translation>
    </message>
    <message>
        <source>This job had them already; now they stand for this part too:</source>
        <translation>Este trabajo ya las tenía; ahora valen también para esta pieza:</translation>
    </message>
    <message>
        <source>Not taken:</source>
        <translation>No se incorporó:</translation>
    </message>
    <message>
        <source>It is on this job already:</source>
        <translation>Ya está en este trabajo:</translation>
    </message>
    <message>
        <source>On this job already:</source>
        <translation>Ya están en este trabajo:</translation>
    </message>
    <message>
        <source>No photo was added.</source>
        <translation>No se añadió ninguna foto.</translation>
    </message>
    <message>
        <source>One photo was added.</source>
        <translation>Se añadió una foto.</translation>
    </message>
    <message>
        <source>{photos} photos were added.</source>
        <translation>Se añadieron {photos} fotos.</translation>
    </message>
    <message>
        <source>and {more} more</source>
        <translation>y {more} más</translation>
    </message>
    <message>
        <source>{file}: too long for {what}.</source>
        <translation>{file}: demasiado largo para {what}.</translation>
    </message>
    <message>
        <source>{file}: {name} is there twice in one object.</source>
        <translation>{file}: {name} está dos veces en un objeto.</translation>
    </message>
    <message>
        <source>{file}: too deeply nested for {what}.</source>
        <translation>{file}: demasiado anidado para {what}.</translation>
    </message>
    <message>
        <source>{file}: line {line}: not JSON ({reason}).</source>
        <translation>{file}: línea {line}: no es JSON ({reason}).</translation>
    </message>
    <message>
        <source>{file}: a number in it is too long.</source>
        <translation>{file}: contiene un número demasiado largo.</translation>
    </message>
    <message>
        <source>{file}: not {what}.</source>
        <translation>{file}: no es {what}.</translation>
    </message>
    <message>
        <source>These are the same picture: the file on both sides is one and the same, so it shows one part, not two.</source>
        <translation>Es la misma imagen: el archivo de los dos lados es uno y el mismo, así que muestra una pieza, no dos.</translation>
    </message>
    <message>
        <source>Draw a mark: {label}</source>
        <translation>Dibujar una marca: {label}</translation>
    </message>
    <message>
        <source>Move a mark</source>
        <translation>Mover una marca</translation>
    </message>
    <message>
        <source>Snap a mark to the edge</source>
        <translation>Ajustar una marca al borde</translation>
    </message>
    <message>
        <source>Count along a mark</source>
        <translation>Contar a lo largo de una marca</translation>
    </message>
    <message>
        <source>Count the colours of a surface</source>
        <translation>Contar los colores de una superficie</translation>
    </message>
    <message>
        <source>Name a mark</source>
        <translation>Nombrar una marca</translation>
    </message>
    <message>
        <source>A height of {value:g} mm can&apos;t be.</source>
        <translation>No puede haber una altura de {value:g} mm.</translation>
    </message>
    <message>
        <source>The mark stays as it is.</source>
        <translation>La marca queda como está.</translation>
    </message>
    <message>
        <source>Accepted: 0 to {highest_mm:g} mm.</source>
        <translation>Se acepta: de 0 a {highest_mm:g} mm.</translation>
    </message>
    <message>
        <source>Set a mark&apos;s height</source>
        <translation>Poner la altura de una marca</translation>
    </message>
    <message>
        <source>Take a mark out</source>
        <translation>Quitar una marca</translation>
    </message>
    <message>
        <source>Keep a photo&apos;s scale from its card</source>
        <translation>Guardar la escala de una foto por su tarjeta</translation>
    </message>
    <message>
        <source>Give a photo its scale by two points</source>
        <translation>Dar escala a una foto con dos puntos</translation>
    </message>
    <message>
        <source>Take a photo&apos;s scale out</source>
        <translation>Quitar la escala de una foto</translation>
    </message>
    <message>
        <source>Accepted: millimetres like 12.5 or 12,5, or inches like 0.5 in, from 0 to {highest_mm:g} mm.</source>
        <translation>Se acepta: milímetros como 12.5 o 12,5, o pulgadas como 0.5 in, de 0 a {highest_mm:g} mm.</translation>
    </message>
    <message>
        <source>more points of it, then Enter</source>
        <translation>más puntos suyos, y luego Intro</translation>
    </message>
    <message>
        <source>one corner</source>
        <translation>una esquina</translation>
    </message>
    <message>
        <source>the next corner</source>
        <translation>la esquina siguiente</translation>
    </message>
    <message>
        <source>a third corner</source>
        <translation>una tercera esquina</translation>
    </message>
    <message>
        <source>more corners, then Enter closes it</source>
        <translation>más esquinas, y luego Intro lo cierra</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Longitud</translation>
    </message>
    <message>
        <source>one end</source>
        <translation>un extremo</translation>
    </message>
    <message>
        <source>the other end</source>
        <translation>el otro extremo</translation>
    </message>
    <message>
        <source>Point to line</source>
        <translation>Punto a línea</translation>
    </message>
    <message>
        <source>the point</source>
        <translation>el punto</translation>
    </message>
    <message>
        <source>a point of the line</source>
        <translation>un punto de la línea</translation>
    </message>
    <message>
        <source>another point of the line, far away</source>
        <translation>otro punto de la línea, lejos</translation>
    </message>
    <message>
        <source>Circle</source>
        <translation>Círculo</translation>
    </message>
    <message>
        <source>a point of the rim</source>
        <translation>un punto del canto</translation>
    </message>
    <message>
        <source>another point of the rim</source>
        <translation>otro punto del canto</translation>
    </message>
    <message>
        <source>a third point of the rim</source>
        <translation>un tercer punto del canto</translation>
    </message>
    <message>
        <source>Angle</source>
        <translation>Ángulo</translation>
    </message>
    <message>
        <source>a point of one leg</source>
        <translation>un punto de un lado</translation>
    </message>
    <message>
        <source>the corner</source>
        <translation>el vértice</translation>
    </message>
    <message>
        <source>a point of the other leg</source>
        <translation>un punto del otro lado</translation>
    </message>
    <message>
        <source>Parallel</source>
        <translation>Paralelas</translation>
    </message>
    <message>
        <source>one line</source>
        <translation>una línea</translation>
    </message>
    <message>
        <source>the same line, far away</source>
        <translation>la misma línea, lejos</translation>
    </message>
    <message>
        <source>the other line</source>
        <translation>la otra línea</translation>
    </message>
    <message>
        <source>the other line, far away</source>
        <translation>la otra línea, lejos</translation>
    </message>
    <message>
        <source>Round bar</source>
        <translation>Barra redonda</translation>
    </message>
    <message>
        <source>one side of it</source>
        <translation>un lado de ella</translation>
    </message>
    <message>
        <source>the same side, far away</source>
        <translation>el mismo lado, lejos</translation>
    </message>
    <message>
        <source>the other side</source>
        <translation>el otro lado</translation>
    </message>
    <message>
        <source>the other side, far away</source>
        <translation>el otro lado, lejos</translation>
    </message>
    <message>
        <source>Count</source>
        <translation>Recuento</translation>
    </message>
    <message>
        <source>click the gap before the first</source>
        <translation>haga clic en el hueco antes del primero</translation>
    </message>
    <message>
        <source>then the gap after the last</source>
        <translation>luego en el hueco después del último</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>what it points at</source>
        <translation>lo que señala</translation>
    </message>
    <message>
        <source>where the words stand</source>
        <translation>dónde van las palabras</translation>
    </message>
    <message>
        <source>Surface</source>
        <translation>Superficie</translation>
    </message>
    <message>
        <source>Bare metal</source>
        <translation>Metal desnudo</translation>
    </message>
    <message>
        <source>Known length</source>
        <translation>Longitud conocida</translation>
    </message>
    <message>
        <source>one end of it</source>
        <translation>un extremo suyo</translation>
    </message>
    <message>
        <source>its other end</source>
        <translation>su otro extremo</translation>
    </message>
    <message>
        <source>Common points</source>
        <translation>Puntos comunes</translation>
    </message>
    <message>
        <source>a point that both photos show</source>
        <translation>un punto que muestran las dos fotos</translation>
    </message>
    <message>
        <source>a second one, far away</source>
        <translation>un segundo, lejos</translation>
    </message>
    <message>
        <source>height not said: holds only on the card</source>
        <translation>altura no dicha: vale solo sobre la tarjeta</translation>
    </message>
    <message>
        <source>neutral grey</source>
        <translation>gris neutro</translation>
    </message>
    <message>
        <source>How: {method}</source>
        <translation>Cómo: {method}</translation>
    </message>
    <message>
        <source>{share} of this surface has another colour than grey (no bare metal was drawn).</source>
        <translation>{share} de esta superficie tiene otro color que el gris (no se dibujó metal desnudo).</translation>
    </message>
    <message>
        <source>{share} of this surface has another colour than bare metal.</source>
        <translation>{share} de esta superficie tiene otro color que el metal desnudo.</translation>
    </message>
    <message>
        <source>Nearly all of the ± comes from {source}.</source>
        <translation>Casi todo el ± viene de {source}.</translation>
    </message>
    <message>
        <source>Most of the ± comes from {source}.</source>
        <translation>La mayor parte del ± viene de {source}.</translation>
    </message>
    <message>
        <source>The largest part of the ± comes from {source}.</source>
        <translation>La parte más grande del ± viene de {source}.</translation>
    </message>
    <message>
        <source>the pointing</source>
        <translation>la colocación de los puntos</translation>
    </message>
    <message>
        <source>enlarge the photo and place the points anew, or go nearer</source>
        <translation>amplíe la foto y coloque los puntos de nuevo, o acérquese</translation>
    </message>
    <message>
        <source>the scale</source>
        <translation>la escala</translation>
    </message>
    <message>
        <source>show more of the card, or take the two points farther apart</source>
        <translation>muestre más de la tarjeta, o tome los dos puntos más separados</translation>
    </message>
    <message>
        <source>the height</source>
        <translation>la altura</translation>
    </message>
    <message>
        <source>measure it with a calliper</source>
        <translation>mídala con un calibre</translation>
    </message>
    <message>
        <source>how flat the card lies</source>
        <translation>lo plana que está la tarjeta</translation>
    </message>
    <message>
        <source>glue the card to a board</source>
        <translation>pegue la tarjeta sobre un tablero</translation>
    </message>
    <message>
        <source>the lens</source>
        <translation>la óptica</translation>
    </message>
    <message>
        <source>show the whole card, with the part in the middle of the photo</source>
        <translation>muestre la tarjeta entera, con la pieza en el centro de la foto</translation>
    </message>
    <message>
        <source>the print</source>
        <translation>la impresión</translation>
    </message>
    <message>
        <source>measure the card&apos;s ruler with a calliper and enter it once</source>
        <translation>mida la regla de la tarjeta con un calibre y anótela una vez</translation>
    </message>
    <message>
        <source>the bands are not clear enough to count them twice alike</source>
        <translation>las bandas no son lo bastante claras para contarlas dos veces igual</translation>
    </message>
    <message>
        <source>there are fewer than {fewest} bands with a rhythm; count them by eye</source>
        <translation>hay menos de {fewest} bandas con ritmo; cuéntelas a ojo</translation>
    </message>
    <message>
        <source>the line must begin and end in the gaps right beside the bands</source>
        <translation>la línea debe empezar y terminar en los huecos justo al lado de las bandas</translation>
    </message>
    <message>
        <source>the bands have no even rhythm</source>
        <translation>las bandas no tienen un ritmo uniforme</translation>
    </message>
    <message>
        <source>the line is too short</source>
        <translation>la línea es demasiado corta</translation>
    </message>
    <message>
        <source>there is nothing to see along the line</source>
        <translation>no se ve nada a lo largo de la línea</translation>
    </message>
    <message>
        <source>nothing repeats along the line</source>
        <translation>nada se repite a lo largo de la línea</translation>
    </message>
    <message>
        <source>the bands are too fine for this photo; go nearer</source>
        <translation>las bandas son demasiado finas para esta foto; acérquese</translation>
    </message>
    <message>
        <source>fewer than two edges are seen along the line</source>
        <translation>se ven menos de dos bordes a lo largo de la línea</translation>
    </message>
    <message>
        <source>one end of the line lies in a gap and the other doesn&apos;t</source>
        <translation>un extremo de la línea está en un hueco y el otro no</translation>
    </message>
    <message>
        <source>the bands hardly differ in brightness</source>
        <translation>las bandas apenas difieren en claridad</translation>
    </message>
    <message>
        <source>band {number} hardly shows</source>
        <translation>la banda {number} apenas se ve</translation>
    </message>
    <message>
        <source>band {number} is out of the rhythm of the others</source>
        <translation>la banda {number} se sale del ritmo de las demás</translation>
    </message>
    <message>
        <source>the step after band {number} is unlike those beside it</source>
        <translation>el paso después de la banda {number} no es como los de al lado</translation>
    </message>
    <message>
        <source>Its height above the card is not said: the size and its ± hold only for what lies on the card itself. Each millimetre higher makes it about {percent:.2f} % too large.</source>
        <translation>No se ha dicho su altura sobre la tarjeta: el tamaño y su ± valen solo para lo que está sobre la tarjeta misma. Cada milímetro más arriba lo hace cerca de un {percent:.2f} % demasiado grande.</translation>
    </message>
    <message>
        <source>Too small for this photo: use a feeler gauge or a calliper, or take a close-up.</source>
        <translation>Demasiado pequeño para esta foto: use una galga de espesores o un calibre, o tome un primer plano.</translation>
    </message>
    <message>
        <source>A leg is only {length:.0f} mm long, so pointing tells much: mark points {least_leg_mm:g} mm from the corner or more.</source>
        <translation>Un lado tiene solo {length:.0f} mm de largo, así que la colocación de los puntos pesa mucho: marque puntos a {least_leg_mm:g} mm del vértice o más.</translation>
    </message>
    <message>
        <source>The two lines are not parallel ({askew:.1f}° askew): the size holds in their middle.</source>
        <translation>Las dos líneas no son paralelas ({askew:.1f}° de desvío): el tamaño vale en su mitad.</translation>
    </message>
    <message>
        <source>The points lie up to some {off:.1f} mm off a circle: see that all are on one rim and at the entered height.</source>
        <translation>Los puntos se apartan hasta unos {off:.1f} mm de un círculo: compruebe que todos estén en un mismo canto y a la altura indicada.</translation>
    </message>
    <message>
        <source>The height of {height_mm:g} mm can&apos;t be allowed for: two points as a scale hold only in the plane they lie in.</source>
        <translation>La altura de {height_mm:g} mm no se puede tener en cuenta: dos puntos como escala valen solo en el plano en que están.</translation>
    </message>
    <message>
        <source>its points are no pairs of numbers</source>
        <translation>sus puntos no son pares de números</translation>
    </message>
    <message>
        <source>it has fewer than three different points</source>
        <translation>tiene menos de tres puntos distintos</translation>
    </message>
    <message>
        <source>its points lie on a straight line</source>
        <translation>sus puntos están en una línea recta</translation>
    </message>
    <message>
        <source>No circle can be drawn: {why}.</source>
        <translation>No se puede trazar un círculo: {why}.</translation>
    </message>
    <message>
        <source>Accepted: three points or more, round its rim.</source>
        <translation>Se acepta: tres puntos o más, alrededor de su canto.</translation>
    </message>
    <message>
        <source>This can&apos;t be counted: {why}.</source>
        <translation>Esto no se puede contar: {why}.</translation>
    </message>
    <message>
        <source>Counted are the bright bands; the line begins and ends beside them.</source>
        <translation>Se cuentan las bandas claras; la línea empieza y termina al lado de ellas.</translation>
    </message>
    <message>
        <source>Counted are the dark bands; the line begins and ends beside them.</source>
        <translation>Se cuentan las bandas oscuras; la línea empieza y termina al lado de ellas.</translation>
    </message>
    <message>
        <source>the line has no two ends</source>
        <translation>la línea no tiene dos extremos</translation>
    </message>
    <message>
        <source>the line is within {width} pixels of the picture&apos;s edge</source>
        <translation>la línea está a menos de {width} píxeles del borde de la imagen</translation>
    </message>
    <message>
        <source>the line leaves the picture</source>
        <translation>la línea se sale de la imagen</translation>
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
        <source>A mark of type {type} has {needed} points, not {given}.</source>
        <translation>Una marca de tipo {type} tiene {needed} puntos, no {given}.</translation>
    </message>
    <message>
        <source>Draw it anew.</source>
        <translation>Dibújela de nuevo.</translation>
    </message>
    <message>
        <source>Points {one} and {other} lie on each other.</source>
        <translation>Los puntos {one} y {other} están uno sobre otro.</translation>
    </message>
    <message>
        <source>Move them apart.</source>
        <translation>Sepárelos.</translation>
    </message>
    <message>
        <source>{card} or {two_points}</source>
        <translation>{card} o {two_points}</translation>
    </message>
    <message>
        <source>mark {number} “{name}”</source>
        <translation>marca {number} “{name}”</translation>
    </message>
    <message>
        <source>mark {number}</source>
        <translation>marca {number}</translation>
    </message>
    <message>
        <source>is missing or no list</source>
        <translation>falta o no es una lista</translation>
    </message>
    <message>
        <source>has {marks} marks</source>
        <translation>tiene {marks} marcas</translation>
    </message>
    <message>
        <source>{number} at most</source>
        <translation>{number} como máximo</translation>
    </message>
    <message>
        <source>is neither true nor false</source>
        <translation>no es ni true ni false</translation>
    </message>
    <message>
        <source>true or false</source>
        <translation>true o false</translation>
    </message>
    <message>
        <source>is not known</source>
        <translation>no se conoce</translation>
    </message>
    <message>
        <source>says neither a card nor two points, or both</source>
        <translation>no dice ni una tarjeta ni dos puntos, o dice las dos cosas</translation>
    </message>
    <message>
        <source>millimetres above 0</source>
        <translation>milímetros mayores que 0</translation>
    </message>
    <message>
        <source>millimetres</source>
        <translation>milímetros</translation>
    </message>
    <message>
        <source>is no file&apos;s name</source>
        <translation>no es el nombre de un archivo</translation>
    </message>
    <message>
        <source>the path of a CARD.json</source>
        <translation>la ruta de un CARD.json</translation>
    </message>
    <message>
        <source>the ruler&apos;s measured length over its nominal one, {low:g} to {high:g}</source>
        <translation>la longitud medida de la regla entre la nominal, de {low:g} a {high:g}</translation>
    </message>
    <message>
        <source>is {value:g}</source>
        <translation>es {value:g}</translation>
    </message>
    <message>
        <source>is no mark</source>
        <translation>no es una marca</translation>
    </message>
    <message>
        <source>is no text in one line</source>
        <translation>no es texto en una sola línea</translation>
    </message>
    <message>
        <source>200 letters at most</source>
        <translation>200 letras como máximo</translation>
    </message>
    <message>
        <source>is missing</source>
        <translation>falta</translation>
    </message>
    <message>
        <source>{word} is not known</source>
        <translation>{word} no se conoce</translation>
    </message>
    <message>
        <source>{low:g} to {high:g} mm</source>
        <translation>de {low:g} a {high:g} mm</translation>
    </message>
    <message>
        <source>{least} points</source>
        <translation>{least} puntos</translation>
    </message>
    <message>
        <source>{least} to {most} points</source>
        <translation>de {least} a {most} puntos</translation>
    </message>
    <message>
        <source>{many} [[x, y], ...] in pixels</source>
        <translation>{many} [[x, y], ...] en píxeles</translation>
    </message>
    <message>
        <source>is missing or no list of points</source>
        <translation>falta o no es una lista de puntos</translation>
    </message>
    <message>
        <source>has 1 point</source>
        <translation>tiene 1 punto</translation>
    </message>
    <message>
        <source>has {points} points</source>
        <translation>tiene {points} puntos</translation>
    </message>
    <message>
        <source>has a point that is no pair</source>
        <translation>tiene un punto que no es un par</translation>
    </message>
    <message>
        <source>has a point with something else than numbers</source>
        <translation>tiene un punto con algo que no son números</translation>
    </message>
    <message>
        <source>is too large or no number</source>
        <translation>es demasiado grande o no es un número</translation>
    </message>
    <message>
        <source>a file of marks</source>
        <translation>un archivo de marcas</translation>
    </message>
    <message>
        <source>A count is taken from the picture, not from its scale.</source>
        <translation>Un recuento se toma de la imagen, no de su escala.</translation>
    </message>
    <message>
        <source>An outline round a surface has no size; its share is counted.</source>
        <translation>Un contorno alrededor de una superficie no tiene tamaño; se cuenta su parte.</translation>
    </message>
    <message>
        <source>A round bar can&apos;t be measured by two points: where the camera stood must be known.</source>
        <translation>Una barra redonda no se puede medir con dos puntos: hay que saber dónde estaba la cámara.</translation>
    </message>
    <message>
        <source>Take the photo with the bench card, or measure it with a calliper.</source>
        <translation>Tome la foto con la tarjeta de medida, o mídala con un calibre.</translation>
    </message>
    <message>
        <source>“{name}” can&apos;t lie {height_mm:g} mm above the card where it is marked: the camera would have to look from below.</source>
        <translation>“{name}” no puede estar {height_mm:g} mm por encima de la tarjeta donde se marcó: la cámara tendría que mirar desde abajo.</translation>
    </message>
    <message>
        <source>Check its height and its points.</source>
        <translation>Compruebe su altura y sus puntos.</translation>
    </message>
    <message>
        <source>The card&apos;s print is {off:.1%} larger than drawn:</source>
        <translation>La impresión de la tarjeta es un {off:.1%} más grande que el dibujo:</translation>
    </message>
    <message>
        <source>The card&apos;s print is {off:.1%} smaller than drawn:</source>
        <translation>La impresión de la tarjeta es un {off:.1%} más pequeña que el dibujo:</translation>
    </message>
    <message>
        <source>was it fitted to the page? Measure its ruler again, or print it at 100 %.</source>
        <translation>¿se ajustó a la página? Mida su regla otra vez, o imprímala al 100 %.</translation>
    </message>
    <message>
        <source>{where}: the point ({x:g}, {y:g}) lies outside the picture.</source>
        <translation>{where}: el punto ({x:g}, {y:g}) queda fuera de la imagen.</translation>
    </message>
    <message>
        <source>Accepted: x up to {width}, y up to {height} pixels, as the photo is seen upright.</source>
        <translation>Se acepta: x hasta {width}, y hasta {height} píxeles, con la foto vista al derecho.</translation>
    </message>
    <message>
        <source>No height is given for {some}: the size and its ± hold only for what lies on the card itself. Each millimetre higher makes it about {percent:.2f} % too large.</source>
        <translation>No se da altura para {some}: el tamaño y su ± valen solo para lo que está sobre la tarjeta misma. Cada milímetro más arriba lo hace cerca de un {percent:.2f} % demasiado grande.</translation>
    </message>
    <message>
        <source>Two photos need two common points.</source>
        <translation>Dos fotos necesitan dos puntos comunes.</translation>
    </message>
    <message>
        <source>Click two in each photo.</source>
        <translation>Haga clic en dos en cada foto.</translation>
    </message>
    <message>
        <source>A clicked point is no point.</source>
        <translation>Un punto en el que se hizo clic no es un punto.</translation>
    </message>
    <message>
        <source>Click it again.</source>
        <translation>Haga clic otra vez.</translation>
    </message>
    <message>
        <source>At {height_mm:g} mm above the card nothing can lie before the camera of the {which} photo.</source>
        <translation>A {height_mm:g} mm por encima de la tarjeta nada puede estar delante de la cámara en la foto de la pieza {which}.</translation>
    </message>
    <message>
        <source>Say how high the part&apos;s outline lies above the card, in mm.</source>
        <translation>Diga a qué altura sobre la tarjeta está el contorno de la pieza, en mm.</translation>
    </message>
    <message>
        <source>either photo</source>
        <translation>ninguna de las fotos</translation>
    </message>
    <message>
        <source>the {which} photo</source>
        <translation>la foto de la pieza {which}</translation>
    </message>
    <message>
        <source>No card could be used in {where}, and neither the outline nor features show how they lie on each other. Take both on a bench card, or {click_two}</source>
        <translation>No se pudo usar ninguna tarjeta en {where}, y ni el contorno ni los rasgos muestran cómo se superponen. Tome las dos sobre una tarjeta de medida, o {click_two}</translation>
    </message>
    <message>
        <source>These are the same picture.</source>
        <translation>Es la misma imagen.</translation>
    </message>
    <message>
        <source>old</source>
        <translation>vieja</translation>
    </message>
    <message>
        <source>new</source>
        <translation>nueva</translation>
    </message>
    <message>
        <source>How high the outline lies above the card is not known: anything up to {highest_mm:.0f} mm was reckoned with, so only coarse differences show. Say the height, in mm, for finer ones.</source>
        <translation>No se sabe a qué altura sobre la tarjeta está el contorno: se contó con cualquiera hasta {highest_mm:.0f} mm, así que solo se ven diferencias grandes. Diga la altura, en mm, para ver otras más finas.</translation>
    </message>
    <message>
        <source>One of the clicked points lies too far from the card: nobody knows how the camera sees there. Click points of the part, nearer to the card.</source>
        <translation>Uno de los puntos en que se hizo clic está demasiado lejos de la tarjeta: nadie sabe cómo ve la cámara allí. Haga clic en puntos de la pieza, más cerca de la tarjeta.</translation>
    </message>
    <message>
        <source>The part stands high and was taken from two sides, so the photos show other walls of it. Take both from the same side, or {click_two}</source>
        <translation>La pieza es alta y se tomó desde dos lados, así que las fotos muestran paredes distintas de ella. Tome las dos desde el mismo lado, o {click_two}</translation>
    </message>
    <message>
        <source>Too little of the outline shows in both photos. To align them, {click_two}</source>
        <translation>Se ve muy poco del contorno en las dos fotos. Para alinearlas, {click_two}</translation>
    </message>
    <message>
        <source>Laid on each other by the card, two clicks and the part&apos;s outline.</source>
        <translation>Superpuestas por la tarjeta, dos clics y el contorno de la pieza.</translation>
    </message>
    <message>
        <source>Laid on each other by the card and the part&apos;s outline.</source>
        <translation>Superpuestas por la tarjeta y el contorno de la pieza.</translation>
    </message>
    <message>
        <source>Along {inliers:.0%} of what can be compared the two outlines run together, there {residual_mm:.2f} mm apart on the average.</source>
        <translation>En el {inliers:.0%} de lo que se puede comparar los dos contornos van juntos, allí separados {residual_mm:.2f} mm de media.</translation>
    </message>
    <message>
        <source>Laid on each other by the card and the clicked points, which lie {residual_mm:.2f} mm apart on the average; the outline did not help.</source>
        <translation>Superpuestas por la tarjeta y los puntos en que se hizo clic, que quedan separados {residual_mm:.2f} mm de media; el contorno no ayudó.</translation>
    </message>
    <message>
        <source>How high the points lie is not known: they were taken to lie on the card.</source>
        <translation>No se sabe a qué altura están los puntos: se tomó que están sobre la tarjeta.</translation>
    </message>
    <message>
        <source>The part lies where the cameras are not known.</source>
        <translation>La pieza está donde no se conocen las cámaras.</translation>
    </message>
    <message>
        <source>Take both photos with the part in the card&apos;s free field.</source>
        <translation>Tome las dos fotos con la pieza en el campo libre de la tarjeta.</translation>
    </message>
    <message>
        <source>right</source>
        <translation>derecha</translation>
    </message>
    <message>
        <source>lower right</source>
        <translation>abajo a la derecha</translation>
    </message>
    <message>
        <source>bottom</source>
        <translation>abajo</translation>
    </message>
    <message>
        <source>lower left</source>
        <translation>abajo a la izquierda</translation>
    </message>
    <message>
        <source>left</source>
        <translation>izquierda</translation>
    </message>
    <message>
        <source>upper left</source>
        <translation>arriba a la izquierda</translation>
    </message>
    <message>
        <source>top</source>
        <translation>arriba</translation>
    </message>
    <message>
        <source>upper right</source>
        <translation>arriba a la derecha</translation>
    </message>
    <message>
        <source>{where}: the new part reaches further; no card says how much.</source>
        <translation>{where}: la pieza nueva llega más lejos; ninguna tarjeta dice cuánto.</translation>
    </message>
    <message>
        <source>{where}: the new part reaches less far; no card says how much.</source>
        <translation>{where}: la pieza nueva llega menos lejos; ninguna tarjeta dice cuánto.</translation>
    </message>
    <message>
        <source>{where}: the new part reaches {size} further.</source>
        <translation>{where}: la pieza nueva llega {size} más lejos.</translation>
    </message>
    <message>
        <source>{where}: the new part reaches {size} less far.</source>
        <translation>{where}: la pieza nueva llega {size} menos lejos.</translation>
    </message>
    <message>
        <source>(no card, no size)</source>
        <translation>(sin tarjeta, sin tamaño)</translation>
    </message>
    <message>
        <source>Laid on each other by {number} features that both photos show. There is no card on both, so nothing in it has a size.</source>
        <translation>Superpuestas por {number} rasgos que muestran las dos fotos. No hay tarjeta en las dos, así que nada en ello tiene tamaño.</translation>
    </message>
    <message>
        <source>Take it again with the main camera, or switch mirroring off in the camera&apos;s settings.</source>
        <translation>Tómela otra vez con la cámara principal, o desactive el reflejo en los ajustes de la cámara.</translation>
    </message>
    <message>
        <source>The {which} photo is mirrored: its card&apos;s markers are the wrong way round.</source>
        <translation>La foto de la pieza {which} está reflejada: los marcadores de su tarjeta están al revés.</translation>
    </message>
    <message>
        <source>One of the photos is mirrored, or the parts lie on different sides: the outlines fit only turned over.</source>
        <translation>Una de las fotos está reflejada, o las piezas están sobre lados distintos: los contornos solo coinciden dados la vuelta.</translation>
    </message>
    <message>
        <source>Lay both parts the same side up, and take both with the main camera.</source>
        <translation>Ponga las dos piezas con el mismo lado hacia arriba, y tome las dos con la cámara principal.</translation>
    </message>
    <message>
        <source>One of the photos is mirrored: what they show fits only turned over.</source>
        <translation>Una de las fotos está reflejada: lo que muestran solo coincide dado la vuelta.</translation>
    </message>
    <message>
        <source>all sides</source>
        <translation>todos los lados</translation>
    </message>
    <message>
        <source>{share} of the outline was not compared (dotted, {sides}): there is shade on the paper beside it, and the part&apos;s end can&apos;t be told from that.</source>
        <translation>El {share} del contorno no se comparó (punteado, {sides}): hay sombra en el papel al lado, y no se distingue de ella dónde acaba la pieza.</translation>
    </message>
    <message>
        <source>{share} of the outline was compared only coarsely (dotted, {sides}): walls of the part show there. What is dotted is framed only where it differs by more than {least}.</source>
        <translation>El {share} del contorno se comparó solo a grandes rasgos (punteado, {sides}): allí se ven paredes de la pieza. Lo punteado se enmarca solo donde difiere en más de {least}.</translation>
    </message>
    <message>
        <source>{share} of the outline was compared only coarsely (dotted, {sides}), for want of a height. What is dotted is framed only where it differs by more than {least}.</source>
        <translation>El {share} del contorno se comparó solo a grandes rasgos (punteado, {sides}), por falta de una altura. Lo punteado se enmarca solo donde difiere en más de {least}.</translation>
    </message>
    <message>
        <source>{some} and {last}</source>
        <translation>{some} y {last}</translation>
    </message>
    <message>
        <source>{low} to {high} {unit}</source>
        <translation>de {low} a {high} {unit}</translation>
    </message>
    <message>
        <source>on {sides}</source>
        <translation>en {sides}</translation>
    </message>
    <message>
        <source>at the {sides}</source>
        <translation>lado: {sides}</translation>
    </message>
    <message>
        <source>No single part stands out in the free field of the {which} photo.</source>
        <translation>En el campo libre de la foto de la pieza {which} no destaca ninguna pieza sola.</translation>
    </message>
    <message>
        <source>Lay the part alone in the field, in even light, or click two common points.</source>
        <translation>Ponga la pieza sola en el campo, con luz uniforme, o haga clic en dos puntos comunes.</translation>
    </message>
    <message>
        <source>In the {which} photo the part reaches out of the card&apos;s free field.</source>
        <translation>En la foto de la pieza {which} la pieza se sale del campo libre de la tarjeta.</translation>
    </message>
    <message>
        <source>Lay all of it in the field, or click two common points.</source>
        <translation>Póngala entera en el campo, o haga clic en dos puntos comunes.</translation>
    </message>
    <message>
        <source>The card&apos;s free field reaches further than the camera can see.</source>
        <translation>El campo libre de la tarjeta llega más lejos de lo que ve la cámara.</translation>
    </message>
    <message>
        <source>Check free_field_mm in the card&apos;s layout.</source>
        <translation>Compruebe free_field_mm en el diseño de la tarjeta.</translation>
    </message>
    <message>
        <source>not compared, or only coarsely</source>
        <translation>no comparado, o solo a grandes rasgos</translation>
    </message>
    <message>
        <source>removed part</source>
        <translation>pieza desmontada</translation>
    </message>
    <message>
        <source>replacement</source>
        <translation>repuesto</translation>
    </message>
    <message>
        <source>Laid on each other by the part&apos;s outline. There is no card, so turn and size were fitted, the view was not corrected, and nothing in it has a size.</source>
        <translation>Superpuestas por el contorno de la pieza. No hay tarjeta, así que se ajustaron giro y tamaño, la vista no se corrigió, y nada en ello tiene tamaño.</translation>
    </message>
    <message>
        <source>It looks the same turned over: check that neither photo is mirrored.</source>
        <translation>Se ve igual dada la vuelta: compruebe que ninguna foto esté reflejada.</translation>
    </message>
    <message>
        <source>Laid on each other by {count} clicked points. There is no card on both, so nothing in it has a size.</source>
        <translation>Superpuestas por {count} puntos en que se hizo clic. No hay tarjeta en las dos, así que nada en ello tiene tamaño.</translation>
    </message>
    <message>
        <source>, in mm,</source>
        <translation>, en mm,</translation>
    </message>
    <message>
        <source>, in inches,</source>
        <translation>, en pulgadas,</translation>
    </message>
    <message>
        <source>click two points that are the same on both parts, on the photo bench.</source>
        <translation>haga clic en dos puntos que sean los mismos en las dos piezas, en la mesa de fotos.</translation>
    </message>
    <message>
        <source>First say how high the part&apos;s outline lies above the card, in mm, and try again.</source>
        <translation>Diga primero a qué altura sobre la tarjeta está el contorno de la pieza, en mm, y pruebe otra vez.</translation>
    </message>
    <message>
        <source>The two outlines don&apos;t fit each other: these may be two different parts, or one is not cut out well. If they are the same kind of part, {click_two}</source>
        <translation>Los dos contornos no coinciden: pueden ser dos piezas distintas, o una no está bien recortada. Si son la misma clase de pieza, {click_two}</translation>
    </message>
    <message>
        <source>The outline is round or looks the same in several turns, so nothing tells how the part is turned. To align them, {click_two}</source>
        <translation>El contorno es redondo o se ve igual en varios giros, así que nada dice cómo está girada la pieza. Para alinearlas, {click_two}</translation>
    </message>
    <message>
        <source>Too little of the outline can be compared: walls or shadows hide the rest. Take both photos from above, or {click_two}</source>
        <translation>Se puede comparar muy poco del contorno: paredes o sombras tapan el resto. Tome las dos fotos desde arriba, o {click_two}</translation>
    </message>
    <message>
        <source>The outlines fit only roughly and no edge confirms them. To align, {click_two}</source>
        <translation>Los contornos coinciden solo más o menos y ningún borde los confirma. Para alinear, {click_two}</translation>
    </message>
    <message>
        <source>Outline and edges disagree by {edges_off_mm:.1f} mm about where the new part lies. To align them, {click_two}</source>
        <translation>El contorno y los bordes discrepan en {edges_off_mm:.1f} mm sobre dónde está la pieza nueva. Para alinearlas, {click_two}</translation>
    </message>
    <message>
        <source>The clicked points lie too close together. Click points far apart on the part.</source>
        <translation>Los puntos en que se hizo clic están demasiado juntos. Haga clic en puntos muy separados de la pieza.</translation>
    </message>
    <message>
        <source>The clicked points lie {old:.1f} mm apart on the old part and {new:.1f} mm on the new one. Click the same points on both.</source>
        <translation>Los puntos en que se hizo clic están separados {old:.1f} mm en la pieza vieja y {new:.1f} mm en la nueva. Haga clic en los mismos puntos en las dos.</translation>
    </message>
    <message>
        <source>One of the clicked points fits the others badly. Click the same points on both.</source>
        <translation>Uno de los puntos en que se hizo clic encaja mal con los demás. Haga clic en los mismos puntos en las dos.</translation>
    </message>
    <message>
        <source>Nothing tells where the one lies on the other.</source>
        <translation>Nada dice dónde queda la una sobre la otra.</translation>
    </message>
    <message>
        <source>Lay one photo on the other</source>
        <translation>Superponer una foto a la otra</translation>
    </message>
    <message>
        <source>Show the overlay on the sheet</source>
        <translation>Mostrar la superposición en la hoja</translation>
    </message>
    <message>
        <source>Overlay off the sheet</source>
        <translation>Quitar la superposición de la hoja</translation>
    </message>
    <message>
        <source>Take two photos apart</source>
        <translation>Separar dos fotos</translation>
    </message>
    <message>
        <source>These photos are not laid on each other.</source>
        <translation>Estas fotos no están superpuestas.</translation>
    </message>
    <message>
        <source>Nothing was changed.</source>
        <translation>No se cambió nada.</translation>
    </message>
    <message>
        <source>These two photos can&apos;t be laid on each other: {why}</source>
        <translation>Estas dos fotos no se pueden superponer: {why}</translation>
    </message>
    <message>
        <source>Click two common points in both.</source>
        <translation>Haga clic en dos puntos comunes en las dos.</translation>
    </message>
    <message>
        <source>this computer alone, to try it</source>
        <translation>solo este equipo, para probarlo</translation>
    </message>
    <message>
        <source>This code is no longer good. Scan the one that the window shows now.</source>
        <translation>Este código ya no vale. Lea el que muestra ahora la ventana.</translation>
    </message>
    <message>
        <source>Open the address that the window shows.</source>
        <translation>Abra la dirección que muestra la ventana.</translation>
    </message>
    <message>
        <source>Only the page of this program may send photos.</source>
        <translation>Solo la página de este programa puede enviar fotos.</translation>
    </message>
    <message>
        <source>The length was not said. Use another browser.</source>
        <translation>No se dijo la longitud del envío. Use otro navegador.</translation>
    </message>
    <message>
        <source>A photo may have at most {most_bytes} MB.</source>
        <translation>Una foto puede tener {most_bytes} MB como máximo.</translation>
    </message>
    <message>
        <source>A photo from the phone can&apos;t be read: {reason}.</source>
        <translation>No se puede leer una foto del teléfono: {reason}.</translation>
    </message>
    <message>
        <source>Look into the folder {folder}, or send it again.</source>
        <translation>Mire en la carpeta {folder}, o envíela otra vez.</translation>
    </message>
    <message>
        <source>A photo from the phone was damaged on this computer&apos;s disk.</source>
        <translation>Una foto del teléfono se dañó en el disco de este equipo.</translation>
    </message>
    <message>
        <source>What is left of it lies in {folder}.</source>
        <translation>Lo que queda de ella está en {folder}.</translation>
    </message>
    <message>
        <source>Send it from the phone again.</source>
        <translation>Envíela otra vez desde el teléfono.</translation>
    </message>
    <message>
        <source>The photo was not thrown away: {reason}.</source>
        <translation>La foto no se tiró: {reason}.</translation>
    </message>
    <message>
        <source>It is there.</source>
        <translation>Sigue ahí.</translation>
    </message>
    <message>
        <source>{which} · {view} · {part} · job {job}</source>
        <translation>{which} · {view} · {part} · trabajo {job}</translation>
    </message>
    <message>
        <source>Install it once, in the program&apos;s folder: .venv/bin/pip install &quot;.[phone-lock]&quot;</source>
        <translation>Instálelo una vez, en la carpeta del programa: .venv/bin/pip install &quot;.[phone-lock]&quot;</translation>
    </message>
    <message>
        <source>The certificate for phones, {file}, can&apos;t be used: {error}.</source>
        <translation>El certificado para teléfonos, {file}, no se puede usar: {error}.</translation>
    </message>
    <message>
        <source>Take the file away and try again, or open the page without the lock.</source>
        <translation>Quite el archivo y pruebe otra vez, o abra la página sin cifrado.</translation>
    </message>
    <message>
        <source>there is none in it</source>
        <translation>no contiene ninguno</translation>
    </message>
    <message>
        <source>Photos for the bench</source>
        <translation>Fotos para la mesa</translation>
    </message>
    <message>
        <source>Asking the shop’s computer …</source>
        <translation>Preguntando al equipo del taller …</translation>
    </message>
    <message>
        <source>Which part is it?</source>
        <translation>¿Qué pieza es?</translation>
    </message>
    <message>
        <source>What the photo shows</source>
        <translation>Qué muestra la foto</translation>
    </message>
    <message>
        <source>of the removed part, {view}</source>
        <translation>de la pieza desmontada, {view}</translation>
    </message>
    <message>
        <source>of the replacement, {view}</source>
        <translation>del repuesto, {view}</translation>
    </message>
    <message>
        <source>Job {number}</source>
        <translation>Trabajo {number}</translation>
    </message>
    <message>
        <source>No part is chosen</source>
        <translation>No hay ninguna pieza elegida</translation>
    </message>
    <message>
        <source>Choose one in the window. Photos that are taken now wait there for a place.</source>
        <translation>Elija una en la ventana. Las fotos que se tomen ahora esperan allí un lugar.</translation>
    </message>
    <message>
        <source>Take a photo</source>
        <translation>Tomar una foto</translation>
    </message>
    <message>
        <source>Choose photos</source>
        <translation>Elegir fotos</translation>
    </message>
    <message>
        <source>Photos go to the shop’s computer over this Wi-Fi, not locked: others on it could watch.</source>
        <translation>Las fotos van al equipo del taller por esta Wi-Fi, sin cifrar: otros que estén en ella podrían verlas.</translation>
    </message>
    <message>
        <source>Photos travel locked. Go on only if the certificate&apos;s SHA-256 in this browser is the one in the window.</source>
        <translation>Las fotos viajan cifradas. Siga solo si el SHA-256 del certificado en este navegador es el de la ventana.</translation>
    </message>
    <message>
        <source>Photo {number}</source>
        <translation>Foto {number}</translation>
    </message>
    <message>
        <source>{photo}, {size} MB: {words}</source>
        <translation>{photo}, {size} MB: {words}</translation>
    </message>
    <message>
        <source>waits for its turn</source>
        <translation>espera su turno</translation>
    </message>
    <message>
        <source>is read</source>
        <translation>se está leyendo</translation>
    </message>
    <message>
        <source>on its way</source>
        <translation>en camino</translation>
    </message>
    <message>
        <source>{percent} % sent</source>
        <translation>{percent} % enviado</translation>
    </message>
    <message>
        <source>is being saved</source>
        <translation>se está guardando</translation>
    </message>
    <message>
        <source>not sent</source>
        <translation>sin enviar</translation>
    </message>
    <message>
        <source>not sent yet. {why} It is tried again by itself.</source>
        <translation>aún sin enviar. {why} Se intenta otra vez por sí solo.</translation>
    </message>
    <message>
        <source>✕ not taken. {why}</source>
        <translation>✕ no se aceptó. {why}</translation>
    </message>
    <message>
        <source>✓ One photo is with the shop.</source>
        <translation>✓ Una foto está en el taller.</translation>
    </message>
    <message>
        <source>✓ {photos} photos are with the shop.</source>
        <translation>✓ {photos} fotos están en el taller.</translation>
    </message>
    <message>
        <source>This page needs JavaScript. Switch it on in the browser.</source>
        <translation>Esta página necesita JavaScript. Actívelo en el navegador.</translation>
    </message>
    <message>
        <source>it has more than 40 MB.</source>
        <translation>tiene más de 40 MB.</translation>
    </message>
    <message>
        <source>The photo is empty. Take it again.</source>
        <translation>La foto está vacía. Tómela otra vez.</translation>
    </message>
    <message>
        <source>The phone does not give it. Choose it again.</source>
        <translation>El teléfono no la da. Elíjala otra vez.</translation>
    </message>
    <message>
        <source>Closes in {minutes} min unless a photo is sent.</source>
        <translation>Se cierra en {minutes} min si no se envía ninguna foto.</translation>
    </message>
    <message>
        <source>The shop’s computer does not answer. Is this phone on the shop’s Wi-Fi? What was taken waits here and is sent as soon as it answers; leave this page open.</source>
        <translation>El equipo del taller no responde. ¿Está este teléfono en la Wi-Fi del taller? Lo que se tomó espera aquí y se envía en cuanto responda; deje abierta esta página.</translation>
    </message>
    <message>
        <source>This code is no longer good</source>
        <translation>Este código ya no vale</translation>
    </message>
    <message>
        <source>Scan the code that the window shows now.</source>
        <translation>Lea el código que muestra ahora la ventana.</translation>
    </message>
    <message>
        <source>Not sent: one photo. Keep them on this phone, then scan the new code and choose them there.</source>
        <translation>Sin enviar: una foto. Guárdela en este teléfono, lea luego el código nuevo y elíjala allí.</translation>
    </message>
    <message>
        <source>Not sent: {photos} photos. Keep them on this phone, then scan the new code and choose them there.</source>
        <translation>Sin enviar: {photos} fotos. Guárdelas en este teléfono, lea luego el código nuevo y elíjalas allí.</translation>
    </message>
    <message>
        <source>Keep photo {number} on this phone</source>
        <translation>Guardar la foto {number} en este teléfono</translation>
    </message>
    <message>
        <source>The page for phones can&apos;t be opened at {address}: {reason}.</source>
        <translation>La página para teléfonos no se puede abrir en {address}: {reason}.</translation>
    </message>
    <message>
        <source>Choose another address of this computer.</source>
        <translation>Elija otra dirección de este equipo.</translation>
    </message>
    <message>
        <source>This is no request of the page.</source>
        <translation>Esto no es una petición de la página.</translation>
    </message>
    <message>
        <source>There is nothing here.</source>
        <translation>Aquí no hay nada.</translation>
    </message>
    <message>
        <source>{most} photos came within an hour. Wait a while.</source>
        <translation>Llegaron {most} fotos en una hora. Espere un rato.</translation>
    </message>
    <message>
        <source>It was garbled on its way.</source>
        <translation>Se estropeó por el camino.</translation>
    </message>
    <message>
        <source>The shop&apos;s computer could not save it: look at its disk.</source>
        <translation>El equipo del taller no pudo guardarla: mire su disco.</translation>
    </message>
    <message>
        <source>it is {width:,} × {height:,} pixels; a photo may have at most {longest:,} a side and {millions} million in all.</source>
        <translation>tiene {width:,} × {height:,} píxeles; una foto puede tener como máximo {longest:,} por lado y {millions} millones en total.</translation>
    </message>
    <message>
        <source>Send a smaller one.</source>
        <translation>Envíe una más pequeña.</translation>
    </message>
    <message>
        <source>the picture is damaged or incomplete.</source>
        <translation>la imagen está dañada o incompleta.</translation>
    </message>
    <message>
        <source>Send it again, or take it from the camera once more.</source>
        <translation>Envíela otra vez, o tómela de nuevo de la cámara.</translation>
    </message>
    <message>
        <source>reading it takes more memory than any photo does.</source>
        <translation>leerla ocupa más memoria que cualquier foto.</translation>
    </message>
    <message>
        <source>the camera&apos;s notes in it take {megabytes} MB, more than any camera writes.</source>
        <translation>las notas de la cámara que lleva ocupan {megabytes} MB, más de lo que escribe ninguna cámara.</translation>
    </message>
    <message>
        <source>Open it in a picture program and save it as JPEG.</source>
        <translation>Ábrala en un programa de imágenes y guárdela como JPEG.</translation>
    </message>
    <message>
        <source>A photo in the shop&apos;s folder can&apos;t be read any more.</source>
        <translation>Una foto de la carpeta del taller ya no se puede leer.</translation>
    </message>
    <message>
        <source>Bring the file back from your last copy of the folder.</source>
        <translation>Recupere el archivo de su última copia de la carpeta.</translation>
    </message>
    <message>
        <source>JPEG, PNG, HEIC and WebP</source>
        <translation>JPEG, PNG, HEIC y WebP</translation>
    </message>
    <message>
        <source>a PDF document</source>
        <translation>un documento PDF</translation>
    </message>
    <message>
        <source>a PostScript drawing</source>
        <translation>un dibujo PostScript</translation>
    </message>
    <message>
        <source>a GIF</source>
        <translation>un GIF</translation>
    </message>
    <message>
        <source>a TIFF or a camera&apos;s raw file</source>
        <translation>un TIFF o el archivo en bruto de una cámara</translation>
    </message>
    <message>
        <source>a BMP picture</source>
        <translation>una imagen BMP</translation>
    </message>
    <message>
        <source>a ZIP archive or an office document</source>
        <translation>un archivo ZIP o un documento de oficina</translation>
    </message>
    <message>
        <source>a film or a picture of another kind</source>
        <translation>una película o una imagen de otra clase</translation>
    </message>
    <message>
        <source>an SVG drawing</source>
        <translation>un dibujo SVG</translation>
    </message>
    <message>
        <source>a web page</source>
        <translation>una página web</translation>
    </message>
    <message>
        <source>not a photo</source>
        <translation>algo que no es una foto</translation>
    </message>
    <message>
        <source>That printed card can&apos;t be the one in this photo.</source>
        <translation>Esa tarjeta impresa no puede ser la de esta foto.</translation>
    </message>
    <message>
        <source>The photo keeps the scale that it has.</source>
        <translation>La foto conserva la escala que tiene.</translation>
    </message>
    <message>
        <source>Look for the card in the photo again.</source>
        <translation>Busque otra vez la tarjeta en la foto.</translation>
    </message>
    <message>
        <source>Say which printed card is in a photo</source>
        <translation>Decir qué tarjeta impresa está en una foto</translation>
    </message>
    <message>
        <source>working out photos on this card anew</source>
        <translation>calculando de nuevo las fotos sobre esta tarjeta</translation>
    </message>
    <message>
        <source>Open it in a picture program and save it as JPEG, then send that.</source>
        <translation>Ábrala en un programa de imágenes, guárdela como JPEG y envíe esa.</translation>
    </message>
    <message>
        <source>it could not be read: the computer starts no reader ({reason}).</source>
        <translation>no se pudo leer: el equipo no inicia ningún lector ({reason}).</translation>
    </message>
    <message>
        <source>Close other programs, then add it again.</source>
        <translation>Cierre otros programas y añádala otra vez.</translation>
    </message>
    <message>
        <source>this picture could not be read: the reader broke over it.</source>
        <translation>esta imagen no se pudo leer: el lector se rompió con ella.</translation>
    </message>
    <message>
        <source>this picture could not be read: it takes longer than {seconds:g} seconds.</source>
        <translation>esta imagen no se pudo leer: tarda más de {seconds:g} segundos.</translation>
    </message>
    <message>
        <source>Two points of known length: it holds only in their plane, seen from above.</source>
        <translation>Dos puntos de longitud conocida: vale solo en su plano, visto desde arriba.</translation>
    </message>
    <message>
        <source>Card seen: {seen} markers</source>
        <translation>Se ve la tarjeta: {seen} marcadores</translation>
    </message>
    <message>
        <source>Card seen</source>
        <translation>Se ve la tarjeta</translation>
    </message>
    <message>
        <source>tilt {tilt_deg:.0f}°</source>
        <translation>inclinación {tilt_deg:.0f}°</translation>
    </message>
    <message>
        <source>{away} away</source>
        <translation>a {away}</translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>Imprimir…</translation>
    </message>
    <message>
        <source>Print the card</source>
        <translation>Imprimir la tarjeta</translation>
    </message>
    <message>
        <source>Save as PDF…</source>
        <translation>Guardar como PDF…</translation>
    </message>
    <message>
        <source>Save the card as PDF</source>
        <translation>Guardar la tarjeta como PDF</translation>
    </message>
    <message>
        <source>Note that a card of this paper is printed</source>
        <translation>Anotar que se imprimió una tarjeta de este papel</translation>
    </message>
    <message>
        <source>No card is noted yet. Print one, or note one that you printed from the PDF.</source>
        <translation>Aún no hay ninguna tarjeta anotada. Imprima una, o anote una que haya impreso desde el PDF.</translation>
    </message>
    <message>
        <source>How it is used</source>
        <translation>Cómo se usa</translation>
    </message>
    <message>
        <source>The markers tell the scale, and where the camera was. Use stiff card, or glue the page to a board: paper that arches spoils lengths (common practice, no source).</source>
        <translation>Los marcadores dicen la escala y dónde estaba la cámara. Use cartulina rígida, o pegue la página sobre un tablero: el papel que se arquea estropea las longitudes (práctica común, sin fuente).</translation>
    </message>
    <message>
        <source>Print a card</source>
        <translation>Imprimir una tarjeta</translation>
    </message>
    <message>
        <source>Paper of the card</source>
        <translation>Papel de la tarjeta</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papel</translation>
    </message>
    <message>
        <source>Print it at 100 %, not fitted to the page. Then measure its ruler with a calliper and enter the length below, once for each printed card. Photos taken on it before follow, and so do the readings that were taken from them.</source>
        <translation>Imprímala al 100 %, sin ajustar a la página. Mida luego su regla con un calibre y anote la longitud abajo, una vez por cada tarjeta impresa. Las fotos tomadas antes sobre ella la siguen, y también las lecturas que se tomaron de ellas.</translation>
    </message>
    <message>
        <source>Printed cards</source>
        <translation>Tarjetas impresas</translation>
    </message>
    <message>
        <source>Save the card</source>
        <translation>Guardar la tarjeta</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Saved as {to}. When it is printed, press “Note a printed card”.</source>
        <translation>Guardada como {to}. Cuando esté impresa, pulse “Anotar una tarjeta impresa”.</translation>
    </message>
    <message>
        <source>Saving the card</source>
        <translation>Guardando la tarjeta</translation>
    </message>
    <message>
        <source>Printing the card</source>
        <translation>Imprimiendo la tarjeta</translation>
    </message>
    <message>
        <source>Sent to the printer.</source>
        <translation>Enviada a la impresora.</translation>
    </message>
    <message>
        <source>Noted below as card {made}: write that number on it, and measure its ruler.</source>
        <translation>Anotada abajo como tarjeta {made}: escriba ese número en ella y mida su regla.</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>No photo chosen</source>
        <translation>Ninguna foto elegida</translation>
    </message>
    <message>
        <source>{} more in the list</source>
        <translation>{} más en la lista</translation>
    </message>
    <message>
        <source>One moment: the photos are being opened.</source>
        <translation>Un momento: se están abriendo las fotos.</translation>
    </message>
    <message>
        <source>Laying the new photo on the old one …</source>
        <translation>Superponiendo la foto nueva a la vieja …</translation>
    </message>
    <message>
        <source>The photos don&apos;t lie on each other any more. Lay them on each other again, or click points.</source>
        <translation>Las fotos ya no están superpuestas. Superpóngalas otra vez, o haga clic en puntos.</translation>
    </message>
    <message>
        <source>How the photos lie on each other is damaged in the record. Lay them on each other again, or take them apart.</source>
        <translation>Cómo se superponen las fotos está dañado en el registro. Superpóngalas otra vez, o sepárelas.</translation>
    </message>
    <message>
        <source>Laying the photos on each other did not work. Nothing was changed.</source>
        <translation>No se logró superponer las fotos. No se cambió nada.</translation>
    </message>
    <message>
        <source>Where the parts differ is not shown: the scale of a photo, or the program, has changed since they were laid on each other. Lay them on each other again.</source>
        <translation>No se muestra dónde difieren las piezas: la escala de una foto, o el programa, cambió desde que se superpusieron. Superpóngalas otra vez.</translation>
    </message>
    <message>
        <source>Laying one photo on the other</source>
        <translation>Superponiendo una foto a la otra</translation>
    </message>
    <message>
        <source>These can&apos;t be aligned. {why}</source>
        <translation>No se pueden alinear. {why}</translation>
    </message>
    <message>
        <source>It was not kept.</source>
        <translation>No se guardó.</translation>
    </message>
    <message>
        <source>The photo of the {part} can&apos;t be opened. {why}</source>
        <translation>No se puede abrir la foto ({part}). {why}</translation>
    </message>
    <message>
        <source>Shown is how they lay on each other before.</source>
        <translation>Se muestra cómo se superponían antes.</translation>
    </message>
    <message>
        <source>Take out</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>Take the damaged mark out</source>
        <translation>Quitar la marca dañada</translation>
    </message>
    <message>
        <source>⚠  What the record holds of {words} was changed from outside and can&apos;t be read. It is not drawn and says nothing. Take it out, or put your last good copy of shop.sqlite in its place.</source>
        <translation>⚠  Lo que el registro guarda de {words} se cambió desde fuera y no se puede leer. No se dibuja y no dice nada. Quítela, o ponga en su lugar su última copia buena de shop.sqlite.</translation>
    </message>
    <message>
        <source>Name it alike on both photos, and the list shows old and new side by side.</source>
        <translation>Póngale el mismo nombre en las dos fotos, y la lista muestra lado a lado la vieja y la nueva.</translation>
    </message>
    <message>
        <source>The surfaces of this photo are counted against the colour in here. Without it they are counted against a neutral grey.</source>
        <translation>Las superficies de esta foto se cuentan frente al color de aquí dentro. Sin él se cuentan frente a un gris neutro.</translation>
    </message>
    <message>
        <source>What the note says</source>
        <translation>Lo que dice la nota</translation>
    </message>
    <message>
        <source>Name of the mark</source>
        <translation>Nombre de la marca</translation>
    </message>
    <message>
        <source>Count again</source>
        <translation>Contar otra vez</translation>
    </message>
    <message>
        <source>Snap to the edge</source>
        <translation>Ajustar al borde</translation>
    </message>
    <message>
        <source>Snap this mark to the edge</source>
        <translation>Ajustar esta marca al borde</translation>
    </message>
    <message>
        <source>Take this mark out</source>
        <translation>Quitar esta marca</translation>
    </message>
    <message>
        <source>What it says</source>
        <translation>Lo que dice</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>No height is said. Type 0 for what lies on the card itself; what stands higher looks larger.</source>
        <translation>No se ha dicho la altura. Escriba 0 para lo que está sobre la tarjeta misma; lo que está más alto se ve más grande.</translation>
    </message>
    <message>
        <source>✎ Say the height too: its ± is kept with it.</source>
        <translation>✎ Diga también la altura: su ± se guarda con ella.</translation>
    </message>
    <message>
        <source>Height above the card</source>
        <translation>Altura sobre la tarjeta</translation>
    </message>
    <message>
        <source>Height plus or minus</source>
        <translation>Altura, más o menos</translation>
    </message>
    <message>
        <source>Half the range that the height certainly lies in.</source>
        <translation>La mitad del intervalo en que la altura está con seguridad.</translation>
    </message>
    <message>
        <source>From a reading …</source>
        <translation>De una lectura …</translation>
    </message>
    <message>
        <source>Take the height from a reading</source>
        <translation>Tomar la altura de una lectura</translation>
    </message>
    <message>
        <source>Take what was read of this part as the mark&apos;s height.</source>
        <translation>Tomar lo que se leyó de esta pieza como altura de la marca.</translation>
    </message>
    <message>
        <source>Clear</source>
        <translation>Borrar</translation>
    </message>
    <message>
        <source>Clear the height: it is not known</source>
        <translation>Borrar la altura: no se conoce</translation>
    </message>
    <message>
        <source>in inches</source>
        <translation>en pulgadas</translation>
    </message>
    <message>
        <source>in millimetres</source>
        <translation>en milímetros</translation>
    </message>
    <message>
        <source>The size then holds for what lies on the card.</source>
        <translation>El tamaño vale entonces para lo que está sobre la tarjeta.</translation>
    </message>
    <message>
        <source>⚠  Height {height}, as the last mark. Clear it if this one lies elsewhere.</source>
        <translation>⚠  Altura {height}, como la última marca. Bórrela si esta está en otra parte.</translation>
    </message>
    <message>
        <source>No height, thickness or length of this part is read yet</source>
        <translation>Aún no se ha leído ninguna altura, grosor o longitud de esta pieza</translation>
    </message>
    <message>
        <source>No height is said.</source>
        <translation>No se ha dicho la altura.</translation>
    </message>
    <message>
        <source>Use as the reading of …</source>
        <translation>Usar como lectura de …</translation>
    </message>
    <message>
        <source>Not a reading any more</source>
        <translation>Ya no es una lectura</translation>
    </message>
    <message>
        <source>The reading goes out of the comparison; the mark stays.</source>
        <translation>La lectura sale de la comparación; la marca se queda.</translation>
    </message>
    <message>
        <source>◎  Reading of {taken}</source>
        <translation>◎  Lectura de {taken}</translation>
    </message>
    <message>
        <source>The mark says no size yet.</source>
        <translation>La marca aún no dice ningún tamaño.</translation>
    </message>
    <message>
        <source>Its value and its doubt go into the comparison.</source>
        <translation>Su valor y su duda entran en la comparación.</translation>
    </message>
    <message>
        <source>; the pair has {there}</source>
        <translation>; el par tiene {there}</translation>
    </message>
    <message>
        <source>No dimension of this part is measured so</source>
        <translation>Ninguna dimensión de esta pieza se mide así</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Supr</translation>
    </message>
    <message>
        <source>takes the chosen mark off</source>
        <translation>quita la marca elegida</translation>
    </message>
    <message>
        <source>Marks on both photos</source>
        <translation>Marcas en las dos fotos</translation>
    </message>
    <message>
        <source>Side by side</source>
        <translation>Lado a lado</translation>
    </message>
    <message>
        <source>Wipe</source>
        <translation>Cortina</translation>
    </message>
    <message>
        <source>Blend</source>
        <translation>Mezcla</translation>
    </message>
    <message>
        <source>Alternate</source>
        <translation>Alternar</translation>
    </message>
    <message>
        <source>Differences</source>
        <translation>Diferencias</translation>
    </message>
    <message>
        <source>Where the line of the wipe lies</source>
        <translation>Dónde está la línea de la cortina</translation>
    </message>
    <message>
        <source>How much of the new photo is seen</source>
        <translation>Cuánto se ve de la foto nueva</translation>
    </message>
    <message>
        <source>This needs a photo of both parts.</source>
        <translation>Esto necesita una foto de las dos piezas.</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Detener</translation>
    </message>
    <message>
        <source>The other photo</source>
        <translation>La otra foto</translation>
    </message>
    <message>
        <source>Space does the same.</source>
        <translation>Espacio hace lo mismo.</translation>
    </message>
    <message>
        <source>Click two common points</source>
        <translation>Hacer clic en dos puntos comunes</translation>
    </message>
    <message>
        <source>Two points that both photos show, far from each other.</source>
        <translation>Dos puntos que muestran las dos fotos, lejos uno del otro.</translation>
    </message>
    <message>
        <source>Lay them on each other again</source>
        <translation>Superponerlas otra vez</translation>
    </message>
    <message>
        <source>By card and outline, without points that were clicked.</source>
        <translation>Por tarjeta y contorno, sin los puntos en que se hizo clic.</translation>
    </message>
    <message>
        <source>Take them apart</source>
        <translation>Separarlas</translation>
    </message>
    <message>
        <source>Show on the sheet</source>
        <translation>Mostrar en la hoja</translation>
    </message>
    <message>
        <source>Height of the outline above the card</source>
        <translation>Altura del contorno sobre la tarjeta</translation>
    </message>
    <message>
        <source>Outline above the card</source>
        <translation>Contorno sobre la tarjeta</translation>
    </message>
    <message>
        <source>And {more} smaller ones.</source>
        <translation>Y {more} más pequeñas.</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Seguir</translation>
    </message>
    <message>
        <source>The photos don&apos;t lie on each other yet.</source>
        <translation>Las fotos aún no están superpuestas.</translation>
    </message>
    <message>
        <source>The comparison sheet then shows what differs.</source>
        <translation>La hoja de comparación muestra entonces lo que difiere.</translation>
    </message>
    <message>
        <source>inches</source>
        <translation>pulgadas</translation>
    </message>
    <message>
        <source>How high the part&apos;s outline lies over the card, {name}.</source>
        <translation>A qué altura sobre la tarjeta está el contorno de la pieza, {name}.</translation>
    </message>
    <message>
        <source>The outline that both photos show is the part&apos;s upper edge, and no part is 0 high.</source>
        <translation>El contorno que muestran las dos fotos es el borde superior de la pieza, y ninguna pieza tiene altura 0.</translation>
    </message>
    <message>
        <source>Type its height above the card, 0.1 mm for a thin sheet, or leave it empty.</source>
        <translation>Escriba su altura sobre la tarjeta, 0.1 mm para una chapa fina, o déjela vacía.</translation>
    </message>
    <message>
        <source>The photos lie on each other no more, nor on the sheet. Undo brings it back.</source>
        <translation>Las fotos ya no están superpuestas, tampoco en la hoja. Deshacer lo recupera.</translation>
    </message>
    <message>
        <source>No difference that was compared is larger than its uncertainty.</source>
        <translation>Ninguna diferencia comparada es mayor que su incertidumbre.</translation>
    </message>
    <message>
        <source>No outlines were found to compare: look at the wipe or the blend.</source>
        <translation>No se hallaron contornos que comparar: mire la cortina o la mezcla.</translation>
    </message>
    <message>
        <source>hatched: they differ by more than the uncertainty</source>
        <translation>rayado: difieren más que la incertidumbre</translation>
    </message>
    <message>
        <source>dotted: not compared, or only coarsely</source>
        <translation>punteado: no comparado, o solo a grandes rasgos</translation>
    </message>
    <message>
        <source>left of the line</source>
        <translation>a la izquierda de la línea</translation>
    </message>
    <message>
        <source>right of the line</source>
        <translation>a la derecha de la línea</translation>
    </message>
    <message>
        <source>solid line</source>
        <translation>línea continua</translation>
    </message>
    <message>
        <source>dashed line</source>
        <translation>línea discontinua</translation>
    </message>
    <message>
        <source>seen alone</source>
        <translation>se ve sola</translation>
    </message>
    <message>
        <source>not drawn</source>
        <translation>sin dibujar</translation>
    </message>
    <message>
        <source>seen now</source>
        <translation>se ve ahora</translation>
    </message>
    <message>
        <source>hidden now</source>
        <translation>oculta ahora</translation>
    </message>
    <message>
        <source>Space</source>
        <translation>Espacio</translation>
    </message>
    <message>
        <source>turns from the old part to the new one</source>
        <translation>pasa de la pieza vieja a la nueva</translation>
    </message>
    <message>
        <source>Left, Right</source>
        <translation>Izquierda, Derecha</translation>
    </message>
    <message>
        <source>move the wipe; with Shift by little</source>
        <translation>mueven la cortina; con Mayús, poco</translation>
    </message>
    <message>
        <source>Both photos</source>
        <translation>Las dos fotos</translation>
    </message>
    <message>
        <source>No photo of the removed part here yet</source>
        <translation>Aún no hay aquí ninguna foto de la pieza desmontada</translation>
    </message>
    <message>
        <source>1 to 9</source>
        <translation>1 a 9</translation>
    </message>
    <message>
        <source>takes a tool of the photo bench</source>
        <translation>toma una herramienta de la mesa de fotos</translation>
    </message>
    <message>
        <source>Esc</source>
        <translation>Esc</translation>
    </message>
    <message>
        <source>lets go of the tool, or of the mark</source>
        <translation>suelta la herramienta, o la marca</translation>
    </message>
    <message>
        <source>← Back to the pair</source>
        <translation>← Volver al par</translation>
    </message>
    <message>
        <source>common points</source>
        <translation>puntos comunes</translation>
    </message>
    <message>
        <source>{moves} Tab goes to the next point.</source>
        <translation>{moves} Tab va al punto siguiente.</translation>
    </message>
    <message>
        <source>Go back to the pair and open the bench once more.</source>
        <translation>Vuelva al par y abra la mesa de fotos otra vez.</translation>
    </message>
    <message>
        <source>Looking for the bench card …</source>
        <translation>Buscando la tarjeta de medida …</translation>
    </message>
    <message>
        <source>No scale: {what} Find the card, or give two points.</source>
        <translation>Sin escala: {what} Busque la tarjeta, o dé dos puntos.</translation>
    </message>
    <message>
        <source>No scale yet. A card is seen: press “Find the card” to use it. It was not used by itself, so that what was undone can still come back.</source>
        <translation>Aún sin escala. Se ve una tarjeta: pulse “Buscar la tarjeta” para usarla. No se usó por sí sola, para que lo deshecho aún pueda volver.</translation>
    </message>
    <message>
        <source>No scale: it was taken out. Find the card, or give two points.</source>
        <translation>Sin escala: se quitó. Busque la tarjeta, o dé dos puntos.</translation>
    </message>
    <message>
        <source>No scale yet.</source>
        <translation>Aún sin escala.</translation>
    </message>
    <message>
        <source>No scale yet. {what} {do}</source>
        <translation>Aún sin escala. {what} {do}</translation>
    </message>
    <message>
        <source>⚠ Damaged in the record, and so not shown: {named}.</source>
        <translation>⚠ Dañado en el registro, y por eso no se muestra: {named}.</translation>
    </message>
    <message>
        <source>{length} (scale)</source>
        <translation>{length} (escala)</translation>
    </message>
    <message>
        <source>Looking for the card in {name}</source>
        <translation>Buscando la tarjeta en {name}</translation>
    </message>
    <message>
        <source>Opening {name}</source>
        <translation>Abriendo {name}</translation>
    </message>
    <message>
        <source>Press “Find the card” to look again.</source>
        <translation>Pulse “Buscar la tarjeta” para buscar otra vez.</translation>
    </message>
    <message>
        <source>The card was not looked for to the end.</source>
        <translation>La tarjeta no se buscó hasta el final.</translation>
    </message>
    <message>
        <source>The photo was not opened to the end.</source>
        <translation>La foto no se abrió hasta el final.</translation>
    </message>
    <message>
        <source>Two points hold only in their own plane, and only with the camera straight above: a card is better. Take a length that was measured, as long as the part.</source>
        <translation>Dos puntos valen solo en su propio plano, y solo con la cámara derecha desde arriba: es mejor una tarjeta. Tome una longitud que se haya medido, tan larga como la pieza.</translation>
    </message>
    <message>
        <source>The marks say no size then. Readings that were taken from them stay as they were read.</source>
        <translation>Las marcas no dicen entonces ningún tamaño. Las lecturas que se tomaron de ellas quedan como se leyeron.</translation>
    </message>
    <message>
        <source>Two points</source>
        <translation>Dos puntos</translation>
    </message>
    <message>
        <source>Two points of known length, {said}</source>
        <translation>Dos puntos de longitud conocida, {said}</translation>
    </message>
    <message>
        <source>Find the card</source>
        <translation>Buscar la tarjeta</translation>
    </message>
    <message>
        <source>Look for the card, {said}</source>
        <translation>Buscar la tarjeta, {said}</translation>
    </message>
    <message>
        <source>Take the scale out</source>
        <translation>Quitar la escala</translation>
    </message>
    <message>
        <source>Take the scale out, {said}</source>
        <translation>Quitar la escala, {said}</translation>
    </message>
    <message>
        <source>Printed card, {said}</source>
        <translation>Tarjeta impresa, {said}</translation>
    </message>
    <message>
        <source>Which printed card is it?</source>
        <translation>¿Qué tarjeta impresa es?</translation>
    </message>
    <message>
        <source>Known length, {said}</source>
        <translation>Longitud conocida, {said}</translation>
    </message>
    <message>
        <source>Known length plus or minus, {said}</source>
        <translation>Longitud conocida, más o menos, {said}</translation>
    </message>
    <message>
        <source>The length between them</source>
        <translation>La longitud entre ellos</translation>
    </message>
    <message>
        <source>It is being looked for.</source>
        <translation>Se está buscando.</translation>
    </message>
    <message>
        <source>Look again for a bench card.</source>
        <translation>Buscar otra vez una tarjeta de medida.</translation>
    </message>
    <message>
        <source>The photo has no scale.</source>
        <translation>La foto no tiene escala.</translation>
    </message>
    <message>
        <source>Not known</source>
        <translation>No se sabe</translation>
    </message>
    <message>
        <source>, put away</source>
        <translation>, retirada</translation>
    </message>
    <message>
        <source>No mark yet.</source>
        <translation>Aún no hay marcas.</translation>
    </message>
    <message>
        <source>Marks</source>
        <translation>Marcas</translation>
    </message>
    <message>
        <source>Scale</source>
        <translation>Escala</translation>
    </message>
    <message>
        <source>A mark is gone. Typed for it and not kept: {typed}.</source>
        <translation>Una marca ya no está. Se escribió para ella y no se guardó: {typed}.</translation>
    </message>
    <message>
        <source>Type it again where it belongs.</source>
        <translation>Escríbalo otra vez donde corresponda.</translation>
    </message>
    <message>
        <source>Arrow keys move the chosen point by 0.1 pixel, with Shift by 1, with Ctrl by 10.</source>
        <translation>Las flechas mueven el punto elegido 0.1 píxeles; con Mayús, 1; con Ctrl, 10.</translation>
    </message>
    <message>
        <source>Counting the colours of a surface</source>
        <translation>Contando los colores de una superficie</translation>
    </message>
    <message>
        <source>Draw: {label}</source>
        <translation>Dibujar: {label}</translation>
    </message>
    <message>
        <source>Key {number}.</source>
        <translation>Tecla {number}.</translation>
    </message>
    <message>
        <source>Clicks: {clicks}.</source>
        <translation>Clics: {clicks}.</translation>
    </message>
    <message>
        <source>Points move onto the nearest edge that is clear enough. The click stays seen.</source>
        <translation>Los puntos van al borde más cercano que sea lo bastante claro. El clic se sigue viendo.</translation>
    </message>
    <message>
        <source>No scale yet, so no size.</source>
        <translation>Aún sin escala, así que sin tamaño.</translation>
    </message>
    <message>
        <source>not counted</source>
        <translation>sin contar</translation>
    </message>
    <message>
        <source>{value:g} counted</source>
        <translation>{value:g} contados</translation>
    </message>
    <message>
        <source>bare metal</source>
        <translation>metal desnudo</translation>
    </message>
    <message>
        <source>Damaged in the record: {words}</source>
        <translation>Dañado en el registro: {words}</translation>
    </message>
    <message>
        <source>no size</source>
        <translation>sin tamaño</translation>
    </message>
    <message>
        <source>no scale</source>
        <translation>sin escala</translation>
    </message>
    <message>
        <source>Counting along a mark</source>
        <translation>Contando a lo largo de una marca</translation>
    </message>
    <message>
        <source>Looking for edges</source>
        <translation>Buscando bordes</translation>
    </message>
    <message>
        <source>No edge was clear enough there; the points stay as you clicked them.</source>
        <translation>Ningún borde era allí lo bastante claro; los puntos quedan donde hizo clic.</translation>
    </message>
    <message>
        <source>Looking at what came</source>
        <translation>Mirando lo que llegó</translation>
    </message>
    <message>
        <source>Taking in {name}</source>
        <translation>Incorporando {name}</translation>
    </message>
    <message>
        <source>Picture: {words}</source>
        <translation>Imagen: {words}</translation>
    </message>
    <message>
        <source>Preview: {card}</source>
        <translation>Vista previa: {card}</translation>
    </message>
    <message>
        <source>No printer is set up on this computer. Save the card as PDF instead.</source>
        <translation>En este equipo no hay ninguna impresora instalada. Guarde la tarjeta como PDF.</translation>
    </message>
    <message>
        <source>The chosen paper is {width:.0f} × {height:.0f} mm; the card needs {wide:g} × {high:g} mm.</source>
        <translation>El papel elegido es de {width:.0f} × {height:.0f} mm; la tarjeta necesita {wide:g} × {high:g} mm.</translation>
    </message>
    <message>
        <source>Nothing was printed: a card made smaller would measure wrongly.</source>
        <translation>No se imprimió nada: una tarjeta reducida mediría mal.</translation>
    </message>
    <message>
        <source>Choose {paper} paper, upright, or a card for the other paper.</source>
        <translation>Elija papel {paper}, vertical, o una tarjeta para el otro papel.</translation>
    </message>
    <message>
        <source>The printer did not take the card.</source>
        <translation>La impresora no aceptó la tarjeta.</translation>
    </message>
    <message>
        <source>Look whether it is on, or save it as PDF.</source>
        <translation>Mire si está encendida, o guárdela como PDF.</translation>
    </message>
    <message>
        <source>Card {id}, {paper}, printed {day}</source>
        <translation>Tarjeta {id}, {paper}, impresa el {day}</translation>
    </message>
    <message>
        <source>Ruler of card {id} as measured</source>
        <translation>Regla de la tarjeta {id} según se midió</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>sin medir</translation>
    </message>
    <message>
        <source>Ruler as measured</source>
        <translation>Regla según se midió</translation>
    </message>
    <message>
        <source>drawn: {length}</source>
        <translation>dibujada: {length}</translation>
    </message>
    <message>
        <source>Kept till now: {said}</source>
        <translation>Guardado hasta ahora: {said}</translation>
    </message>
    <message>
        <source>Working out the photos on card {id} anew</source>
        <translation>Calculando de nuevo las fotos sobre la tarjeta {id}</translation>
    </message>
    <message>
        <source>Working out the photos on this card anew …</source>
        <translation>Calculando de nuevo las fotos sobre esta tarjeta …</translation>
    </message>
    <message>
        <source>✎ This length is not kept yet. Press Enter in its field to keep it.</source>
        <translation>✎ Esta longitud aún no está guardada. Pulse Intro en su campo para guardarla.</translation>
    </message>
    <message>
        <source>⚠  Card {id} is damaged in the record: something else changed it. A photo on it counts as one on a card that nobody measured.</source>
        <translation>⚠  La tarjeta {id} está dañada en el registro: la cambió otra cosa. Una foto sobre ella cuenta como sobre una tarjeta que nadie midió.</translation>
    </message>
    <message>
        <source>Card {id}, damaged in the record</source>
        <translation>Tarjeta {id}, dañada en el registro</translation>
    </message>
    <message>
        <source>Put away</source>
        <translation>Retirar</translation>
    </message>
    <message>
        <source>Put card {card_id} away</source>
        <translation>Retirar la tarjeta {card_id}</translation>
    </message>
    <message>
        <source>It leaves this list. Photos can still be said to show it.</source>
        <translation>Sale de esta lista. Aún se puede decir de las fotos que la muestran.</translation>
    </message>
    <message>
        <source>Looking for barcodes</source>
        <translation>Buscando códigos de barras</translation>
    </message>
    <message>
        <source>Not this</source>
        <translation>Esto no</translation>
    </message>
    <message>
        <source>pasted {now:%Y-%m-%d %H.%M.%S}</source>
        <translation>pegada {now:%Y-%m-%d %H.%M.%S}</translation>
    </message>
    <message>
        <source>it is a drawing; photos are {accepted}.</source>
        <translation>es un dibujo; las fotos son {accepted}.</translation>
    </message>
    <message>
        <source>Save it as one of these first.</source>
        <translation>Guárdelo antes como uno de estos.</translation>
    </message>
    <message>
        <source>it lies on the web, not on this computer.</source>
        <translation>está en la web, no en este equipo.</translation>
    </message>
    <message>
        <source>Save it as a file first.</source>
        <translation>Guárdelo antes como archivo.</translation>
    </message>
    <message>
        <source>So does a double click. Drag the photo, or press the arrow keys, to move it.</source>
        <translation>También lo hace un doble clic. Arrastre la foto, o pulse las flechas, para moverla.</translation>
    </message>
    <message>
        <source>Plus and minus enlarge and make smaller, arrow keys move, 0 shows the whole photo.</source>
        <translation>Más y menos amplían y reducen, las flechas mueven, 0 muestra la foto entera.</translation>
    </message>
    <message>
        <source>No photo of the {} here yet</source>
        <translation>Aún no hay foto de {} aquí</translation>
    </message>
    <message>
        <source>Removed part</source>
        <translation>Pieza desmontada</translation>
    </message>
    <message>
        <source>Replacement</source>
        <translation>Repuesto</translation>
    </message>
    <message>
        <source>Locked together</source>
        <translation>Unidas</translation>
    </message>
    <message>
        <source>Enlarge (+)</source>
        <translation>Ampliar (+)</translation>
    </message>
    <message>
        <source>The wheel does it too.</source>
        <translation>La rueda también lo hace.</translation>
    </message>
    <message>
        <source>Make smaller (−)</source>
        <translation>Reducir (−)</translation>
    </message>
    <message>
        <source>Whole photo</source>
        <translation>Foto entera</translation>
    </message>
    <message>
        <source>Show the whole photo (0)</source>
        <translation>Mostrar la foto entera (0)</translation>
    </message>
    <message>
        <source>Each moves on its own</source>
        <translation>Cada una se mueve sola</translation>
    </message>
    <message>
        <source>Both photos zoom and move together. Unlock to line up a detail, then lock again.</source>
        <translation>Las dos fotos se amplían y se mueven juntas. Sepárelas para alinear un detalle y únalas otra vez.</translation>
    </message>
    <message>
        <source>The page for phones was closed: no photo came for half an hour.</source>
        <translation>La página para teléfonos se cerró: en media hora no llegó ninguna foto.</translation>
    </message>
    <message>
        <source>Looking for the certificate</source>
        <translation>Buscando el certificado</translation>
    </message>
    <message>
        <source>Looking for photos from phones</source>
        <translation>Buscando fotos de teléfonos</translation>
    </message>
    <message>
        <source>Taking photos in from the phone</source>
        <translation>Incorporando fotos del teléfono</translation>
    </message>
    <message>
        <source>The address as a code for the phone&apos;s camera</source>
        <translation>La dirección como código para la cámara del teléfono</translation>
    </message>
    <message>
        <source>Taking in {called} from the phone</source>
        <translation>Incorporando {called} del teléfono</translation>
    </message>
    <message>
        <source>No part is chosen: press “From a phone…” at one. Photos wait here until then.</source>
        <translation>No hay ninguna pieza elegida: pulse “Desde un teléfono…” en una. Hasta entonces las fotos esperan aquí.</translation>
    </message>
    <message>
        <source>The page for phones is closed. Choose this computer&apos;s address on the shop&apos;s own Wi-Fi, then open the page; it closes when this program does, or after half an hour without a photo.</source>
        <translation>La página para teléfonos está cerrada. Elija la dirección de este equipo en la Wi-Fi propia del taller y abra la página; se cierra cuando lo hace este programa, o tras media hora sin fotos.</translation>
    </message>
    <message>
        <source>This computer has no address that a phone could reach. Join the shop&apos;s Wi-Fi, then press “From a phone…” again.</source>
        <translation>Este equipo no tiene ninguna dirección a la que llegue un teléfono. Conéctese a la Wi-Fi del taller y vuelva a pulsar “Desde un teléfono…”.</translation>
    </message>
    <message>
        <source>The phone&apos;s browser warns, once, of a certificate that nobody vouches for.</source>
        <translation>El navegador del teléfono avisa, una vez, de un certificado del que nadie responde.</translation>
    </message>
    <message>
        <source>Photos travel locked. The phone&apos;s browser warns, for nobody vouches for this certificate: look at its details there, and go on only if its SHA-256 is this one: {certificate}</source>
        <translation>Las fotos viajan cifradas. El navegador del teléfono avisa, porque nadie responde de este certificado: mire allí sus detalles, y siga solo si su SHA-256 es este: {certificate}</translation>
    </message>
    <message>
        <source>Photos travel unlocked: others on this Wi-Fi can watch. Use the shop&apos;s own, not the guests&apos;.</source>
        <translation>Las fotos viajan sin cifrar: otros en esta Wi-Fi pueden verlas. Use la propia del taller, no la de los invitados.</translation>
    </message>
    <message>
        <source>Point the phone&apos;s camera at the code, on the same Wi-Fi, and open what it finds. Side and view can be changed on the phone. If the page does not come, this computer&apos;s firewall keeps it out: let this program through, or port {port}.</source>
        <translation>Apunte la cámara del teléfono al código, en la misma Wi-Fi, y abra lo que encuentre. El lado y la vista se pueden cambiar en el teléfono. Si la página no aparece, el cortafuegos de este equipo la retiene: deje pasar este programa, o el puerto {port}.</translation>
    </message>
    <message>
        <source>Photos from a phone</source>
        <translation>Fotos desde un teléfono</translation>
    </message>
    <message>
        <source>Address for the phone</source>
        <translation>Dirección para el teléfono</translation>
    </message>
    <message>
        <source>Address of this computer</source>
        <translation>Dirección de este equipo</translation>
    </message>
    <message>
        <source>Lock what travels (TLS, a certificate of this computer&apos;s own)</source>
        <translation>Cifrar lo que viaja (TLS, un certificado propio de este equipo)</translation>
    </message>
    <message>
        <source>Open the page for phones</source>
        <translation>Abrir la página para teléfonos</translation>
    </message>
    <message>
        <source>Close the page</source>
        <translation>Cerrar la página</translation>
    </message>
    <message>
        <source>closes the photos from a phone</source>
        <translation>cierra las fotos desde un teléfono</translation>
    </message>
    <message>
        <source>No photo came.</source>
        <translation>No llegó ninguna foto.</translation>
    </message>
    <message>
        <source>One photo came.</source>
        <translation>Llegó una foto.</translation>
    </message>
    <message>
        <source>{photos} different photos came.</source>
        <translation>Llegaron {photos} fotos distintas.</translation>
    </message>
    <message>
        <source>The page closes in {minutes} min without another one.</source>
        <translation>La página se cierra en {minutes} min si no llega otra.</translation>
    </message>
    <message>
        <source>Once somebody without the code was turned away.</source>
        <translation>Una vez se rechazó a alguien sin el código.</translation>
    </message>
    <message>
        <source>{times} times somebody without the code was turned away.</source>
        <translation>{times} veces se rechazó a alguien sin el código.</translation>
    </message>
    <message>
        <source>open</source>
        <translation>abierto</translation>
    </message>
    <message>
        <source>one photo waits</source>
        <translation>una foto espera</translation>
    </message>
    <message>
        <source>{photos} photos wait</source>
        <translation>{photos} fotos esperan</translation>
    </message>
    <message>
        <source>Phone: {words}</source>
        <translation>Teléfono: {words}</translation>
    </message>
    <message>
        <source>open, one photo</source>
        <translation>abierto, una foto</translation>
    </message>
    <message>
        <source>open, {photos} different photos</source>
        <translation>abierto, {photos} fotos distintas</translation>
    </message>
    <message>
        <source>Photos that wait for a place</source>
        <translation>Fotos que esperan un lugar</translation>
    </message>
    <message>
        <source>Put here</source>
        <translation>Poner aquí</translation>
    </message>
    <message>
        <source>Throw away</source>
        <translation>Tirar</translation>
    </message>
    <message>
        <source>They go into the folder “trash” of the shop.</source>
        <translation>Van a la carpeta “trash” del taller.</translation>
    </message>
    <message>
        <source>One photo waits for a place</source>
        <translation>Una foto espera un lugar</translation>
    </message>
    <message>
        <source>{photos} photos wait for a place</source>
        <translation>{photos} fotos esperan un lugar</translation>
    </message>
    <message>
        <source>Choose a part first: press “From a phone…” there.</source>
        <translation>Elija antes una pieza: pulse allí “Desde un teléfono…”.</translation>
    </message>
    <message>
        <source>Put it to the part above</source>
        <translation>Ponerla en la pieza de arriba</translation>
    </message>
    <message>
        <source>Throw it away</source>
        <translation>Tirarla</translation>
    </message>
    <message>
        <source>Put the {marked} marked to the part above</source>
        <translation>Poner las {marked} marcadas en la pieza de arriba</translation>
    </message>
    <message>
        <source>Throw the {marked} marked away</source>
        <translation>Tirar las {marked} marcadas</translation>
    </message>
    <message>
        <source>Put all {photos} to the part above</source>
        <translation>Poner las {photos} en la pieza de arriba</translation>
    </message>
    <message>
        <source>Throw all {photos} away</source>
        <translation>Tirar las {photos}</translation>
    </message>
    <message>
        <source>Taken for: {meant}</source>
        <translation>Tomadas para: {meant}</translation>
    </message>
    <message>
        <source>No part was chosen when they were taken.</source>
        <translation>No había ninguna pieza elegida cuando se tomaron.</translation>
    </message>
    <message>
        <source>larger, smaller, the whole photo</source>
        <translation>más grande, más pequeña, la foto entera</translation>
    </message>
    <message>
        <source>Arrows</source>
        <translation>Flechas</translation>
    </message>
    <message>
        <source>push an enlarged photo, or move the chosen point of a mark</source>
        <translation>desplazan una foto ampliada, o mueven el punto elegido de una marca</translation>
    </message>
    <message>
        <source>One moment …</source>
        <translation>Un momento …</translation>
    </message>
    <message>
        <source>takes the chosen photo off the job</source>
        <translation>quita del trabajo la foto elegida</translation>
    </message>
    <message>
        <source>◌ original missing or damaged</source>
        <translation>◌ falta el original o está dañado</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>Drop photos here, paste them (Ctrl+V), or choose files.</source>
        <translation>Suelte fotos aquí, péguelas (Ctrl+V), o elija archivos.</translation>
    </message>
    <message>
        <source>No photo is chosen. Press one first.</source>
        <translation>No hay ninguna foto elegida. Pulse una primero.</translation>
    </message>
    <message>
        <source>Photos (*.jpg *.jpeg *.png *.heic *.heif *.webp);;All files (*)</source>
        <translation>Fotos (*.jpg *.jpeg *.png *.heic *.heif *.webp);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>Note on the chosen photo</source>
        <translation>Nota sobre la foto elegida</translation>
    </message>
    <message>
        <source>What does the chosen photo show?</source>
        <translation>¿Qué muestra la foto elegida?</translation>
    </message>
    <message>
        <source>Add photos…</source>
        <translation>Añadir fotos…</translation>
    </message>
    <message>
        <source>Choose photo files</source>
        <translation>Elegir archivos de fotos</translation>
    </message>
    <message>
        <source>Paste</source>
        <translation>Pegar</translation>
    </message>
    <message>
        <source>Paste photos from the clipboard (Ctrl+V)</source>
        <translation>Pegar fotos del portapapeles (Ctrl+V)</translation>
    </message>
    <message>
        <source>Take off this job</source>
        <translation>Quitar de este trabajo</translation>
    </message>
    <message>
        <source>Take the chosen photo off (Delete)</source>
        <translation>Quitar la foto elegida (Supr)</translation>
    </message>
    <message>
        <source>puts in a copied picture, among the photos</source>
        <translation>añade a las fotos una imagen copiada</translation>
    </message>
    <message>
        <source>copies the chosen photo</source>
        <translation>copia la foto elegida</translation>
    </message>
    <message>
        <source>Add photos</source>
        <translation>Añadir fotos</translation>
    </message>
    <message>
        <source>The clipboard holds no picture and no files.</source>
        <translation>En el portapapeles no hay ninguna imagen ni archivos.</translation>
    </message>
    <message>
        <source>Copying the photo</source>
        <translation>Copiando la foto</translation>
    </message>
    <message>
        <source>The photo is copied; paste it where a picture is wanted.</source>
        <translation>La foto está copiada; péguela donde haga falta una imagen.</translation>
    </message>
    <message>
        <source>Taking photos in</source>
        <translation>Incorporando fotos</translation>
    </message>
    <message>
        <source>Fetching small pictures</source>
        <translation>Trayendo miniaturas</translation>
    </message>
    <message>
        <source>Fetching small pictures: {name}</source>
        <translation>Trayendo miniaturas: {name}</translation>
    </message>
    <message>
        <source>Put in as the VIN</source>
        <translation>Poner como VIN</translation>
    </message>
    <message>
        <source>card {id}, damaged in the record</source>
        <translation>tarjeta {id}, dañada en el registro</translation>
    </message>
    <message>
        <source>That printed card is not in the record any more.</source>
        <translation>Esa tarjeta impresa ya no está en el registro.</translation>
    </message>
    <message>
        <source>It was taken back at another desk or undone; look at the page again.</source>
        <translation>Se retiró en otro puesto o se deshizo; mire la página otra vez.</translation>
    </message>
    <message>
        <source>the layout of bench card {id}</source>
        <translation>el diseño de la tarjeta de medida {id}</translation>
    </message>
    <message>
        <source>the ruler of bench card {id}</source>
        <translation>la regla de la tarjeta de medida {id}</translation>
    </message>
    <message>
        <source>mark {id}</source>
        <translation>marca {id}</translation>
    </message>
    <message>
        <source>That mark is not on the photo any more.</source>
        <translation>Esa marca ya no está en la foto.</translation>
    </message>
    <message>
        <source>It may be undone.</source>
        <translation>Puede que se haya deshecho.</translation>
    </message>
    <message>
        <source>how photo {new_id} lies on photo {old_id}</source>
        <translation>cómo se superpone la foto {new_id} a la foto {old_id}</translation>
    </message>
    <message>
        <source>This mark is a reading of the pair.</source>
        <translation>Esta marca es una lectura del par.</translation>
    </message>
    <message>
        <source>The mark stays.</source>
        <translation>La marca se queda.</translation>
    </message>
    <message>
        <source>Take the reading out first.</source>
        <translation>Quite antes la lectura.</translation>
    </message>
    <message>
        <source>mark {id} of photo {photo_id}</source>
        <translation>marca {id} de la foto {photo_id}</translation>
    </message>
    <message>
        <source>photo “{name}” of job {number}</source>
        <translation>foto “{name}” del trabajo {number}</translation>
    </message>
    <message>
        <source>A pair of parts shows this photo.</source>
        <translation>Un par de piezas muestra esta foto.</translation>
    </message>
    <message>
        <source>The photo stays.</source>
        <translation>La foto se queda.</translation>
    </message>
    <message>
        <source>Take it out of the pair first, then off the job.</source>
        <translation>Quítela antes del par y luego del trabajo.</translation>
    </message>
    <message>
        <source>the scale of photo {photo_id}</source>
        <translation>la escala de la foto {photo_id}</translation>
    </message>
    <message>
        <source>the thumbnails</source>
        <translation>las miniaturas</translation>
    </message>
    <message>
        <source>{name} is damaged.</source>
        <translation>{name} está dañado.</translation>
    </message>
    <message>
        <source>The white</source>
        <translation>El blanco</translation>
    </message>
    <message>
        <source>{name} has no outline yet.</source>
        <translation>{name}: aún sin contorno.</translation>
    </message>
    <message>
        <source>Draw at least three points round it.</source>
        <translation>Dibuje al menos tres puntos alrededor.</translation>
    </message>
    <message>
        <source>{name} is too small to count: fewer than {least_pixels} pixels.</source>
        <translation>{name}: demasiado poco para contar, menos de {least_pixels} píxeles.</translation>
    </message>
    <message>
        <source>Draw a larger outline, or take the photo from nearer.</source>
        <translation>Dibuje un contorno más grande, o tome la foto desde más cerca.</translation>
    </message>
    <message>
        <source>No white of the card is seen that can be relied upon: its bare paper is covered, out of the picture, or differs from place to place. Lay the part into the field, in even light.</source>
        <translation>No se ve ningún blanco de la tarjeta en que se pueda confiar: su papel desnudo está tapado, fuera de la imagen, o difiere de un lugar a otro. Ponga la pieza en el campo, con luz uniforme.</translation>
    </message>
    <message>
        <source>No bare metal was drawn, so grey counts as bare: brass, copper, paint and plastic differ from that when they are new. Draw a bare place of this part.</source>
        <translation>No se dibujó metal desnudo, así que el gris cuenta como desnudo: latón, cobre, pintura y plástico difieren de eso cuando son nuevos. Dibuje un lugar desnudo de esta pieza.</translation>
    </message>
    <message>
        <source>The surface</source>
        <translation>La superficie</translation>
    </message>
    <message>
        <source>The surface is all glare or deep shadow: it has no colour to count.</source>
        <translation>La superficie es toda brillo o sombra profunda: no tiene color que contar.</translation>
    </message>
    <message>
        <source>Light it from the side, through a sheet of white paper, and take it again.</source>
        <translation>Ilumínela de lado, a través de una hoja de papel blanco, y tómela otra vez.</translation>
    </message>
    <message>
        <source>No white was given: a colour cast of the light counts as colour of the part.</source>
        <translation>No se dio ningún blanco: un tinte de color de la luz cuenta como color de la pieza.</translation>
    </message>
    <message>
        <source>The white is overexposed: what colour the light has can&apos;t be told from it.</source>
        <translation>El blanco está sobreexpuesto: no se distingue en él qué color tiene la luz.</translation>
    </message>
    <message>
        <source>Take the photo a little darker, or draw another white.</source>
        <translation>Tome la foto un poco más oscura, o dibuje otro blanco.</translation>
    </message>
    <message>
        <source>The bare metal</source>
        <translation>El metal desnudo</translation>
    </message>
    <message>
        <source>The bare metal that was drawn is glare or deep shadow.</source>
        <translation>El metal desnudo que se dibujó es brillo o sombra profunda.</translation>
    </message>
    <message>
        <source>Draw another place.</source>
        <translation>Dibuje otro lugar.</translation>
    </message>
    <message>
        <source>The bare metal that was drawn has more than one colour: draw a place that is all bare.</source>
        <translation>El metal desnudo que se dibujó tiene más de un color: dibuje un lugar que esté todo desnudo.</translation>
    </message>
    <message>
        <source>the bare metal drawn</source>
        <translation>el metal desnudo dibujado</translation>
    </message>
    <message>
        <source>a white in the photo</source>
        <translation>un blanco de la foto</translation>
    </message>
    <message>
        <source>the photo&apos;s own white</source>
        <translation>el blanco propio de la foto</translation>
    </message>
    <message>
        <source>counted are pixels more than {chroma_apart:g} units of CIE a*, b* from {metal} or more than {lightness_below:g} units of L* darker, balanced to {white}; {tells:,} pixels. {left_out:.0%} of them are glare or deep shadow, of which anything from none to all may differ.</source>
        <translation>se cuentan los píxeles que se apartan más de {chroma_apart:g} unidades de CIE a*, b* de {metal}, o son más de {lightness_below:g} unidades de L* más oscuros, equilibrado con {white}; {tells:,} píxeles. El {left_out:.0%} de ellos es brillo o sombra profunda, de lo que puede diferir desde nada hasta todo.</translation>
    </message>
    <message>
        <source>{left_out:.0%} of the surface is glare or deep shadow, which says nothing of its colour: light it from the side, through a sheet of white paper.</source>
        <translation>El {left_out:.0%} de la superficie es brillo o sombra profunda, que no dice nada de su color: ilumínela de lado, a través de una hoja de papel blanco.</translation>
    </message>
    <message>
        <source>The job and its other photos are as they were.</source>
        <translation>El trabajo y sus otras fotos están como estaban.</translation>
    </message>
    <message>
        <source>“{text}” can&apos;t be understood as a length.</source>
        <translation>“{text}” no se entiende como longitud.</translation>
    </message>
    <message>
        <source>What was there stays.</source>
        <translation>Lo que había se queda.</translation>
    </message>
    <message>
        <source>Accepted: millimetres like 12.5 or 12,5, or inches like 0.5 in.</source>
        <translation>Se acepta: milímetros como 12.5 o 12,5, o pulgadas como 0.5 in.</translation>
    </message>
</context>
</TS>
