<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es">
<context>
    <name></name>
    <message>
        <source>engine air filter</source>
        <translation>filtro de aire del motor</translation>
    </message>
    <message>
        <source>intake</source>
        <translation>admisión</translation>
    </message>
    <message>
        <source>air cleaner; air cleaner element; air filter element</source>
        <translation>filtro de aire; elemento del filtro de aire; depurador de aire</translation>
    </message>
    <message>
        <source>face, dirty side up</source>
        <translation>cara, lado sucio arriba</translation>
    </message>
    <message>
        <source>edge seal, close</source>
        <translation>junta del borde, de cerca</translation>
    </message>
    <message>
        <source>against the light</source>
        <translation>a contraluz</translation>
    </message>
    <message>
        <source>Hot parts and turning parts: engine off, key out, let it cool. Follow the vehicle maker&apos;s procedure and local rules; leave it to licensed people where the law asks.</source>
        <translation>Piezas calientes y piezas que giran: motor parado, llave fuera, deje enfriar. Siga el procedimiento del fabricante del vehículo y las normas locales; déjelo a personas autorizadas donde la ley lo pida.</translation>
    </message>
    <message>
        <source>shape</source>
        <translation>forma</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>práctica común, sin fuente</translation>
    </message>
    <message>
        <source>Seen from above.</source>
        <translation>Visto desde arriba.</translation>
    </message>
    <message>
        <source>panel</source>
        <translation>panel</translation>
    </message>
    <message>
        <source>round</source>
        <translation>redondo</translation>
    </message>
    <message>
        <source>conical</source>
        <translation>cónico</translation>
    </message>
    <message>
        <source>other</source>
        <translation>otro</translation>
    </message>
    <message>
        <source>height, seal to seal</source>
        <translation>altura, de junta a junta</translation>
    </message>
    <message>
        <source>Over the seal, not pressed, at both ends; the height that the box clamps.</source>
        <translation>Sobre la junta, sin apretar, en ambos extremos; la altura que la caja sujeta.</translation>
    </message>
    <message>
        <source>profile of the edge seal</source>
        <translation>perfil de la junta del borde</translation>
    </message>
    <message>
        <source>Cut edge against cut edge: flat lip, bead, groove or foam strip.</source>
        <translation>Borde cortado contra borde cortado: labio plano, cordón, ranura o tira de espuma.</translation>
    </message>
    <message>
        <source>flat lip</source>
        <translation>labio plano</translation>
    </message>
    <message>
        <source>bead</source>
        <translation>cordón</translation>
    </message>
    <message>
        <source>groove</source>
        <translation>ranura</translation>
    </message>
    <message>
        <source>foam strip</source>
        <translation>tira de espuma</translation>
    </message>
    <message>
        <source>length (panel)</source>
        <translation>longitud (panel)</translation>
    </message>
    <message>
        <source>Over the seal, along the longer side; left open on a round one.</source>
        <translation>Sobre la junta, por el lado más largo; se deja vacío en uno redondo.</translation>
    </message>
    <message>
        <source>width (panel)</source>
        <translation>anchura (panel)</translation>
    </message>
    <message>
        <source>Over the seal, along the shorter side; left open on a round one.</source>
        <translation>Sobre la junta, por el lado más corto; se deja vacío en uno redondo.</translation>
    </message>
    <message>
        <source>outer diameter (round)</source>
        <translation>diámetro exterior (redondo)</translation>
    </message>
    <message>
        <source>Over the end cap, in two directions; left open on a panel.</source>
        <translation>Sobre la tapa del extremo, en dos direcciones; se deja vacío en un panel.</translation>
    </message>
    <message>
        <source>inner diameter (round)</source>
        <translation>diámetro interior (redondo)</translation>
    </message>
    <message>
        <source>Inside the sealing lip, in two directions; left open on a panel.</source>
        <translation>Dentro del labio de la junta, en dos direcciones; se deja vacío en un panel.</translation>
    </message>
    <message>
        <source>pleats</source>
        <translation>pliegues</translation>
    </message>
    <message>
        <source>noted only; common practice, no source</source>
        <translation>solo anotado; práctica común, sin fuente</translation>
    </message>
    <message>
        <source>Along one side, noted; another count alone is no fault.</source>
        <translation>A lo largo de un lado, anotados; otro número por sí solo no es un defecto.</translation>
    </message>
    <message>
        <source>the engine is short of air; heavier, and less light comes through</source>
        <translation>al motor le falta aire; pesa más y deja pasar menos luz</translation>
    </message>
    <message>
        <source>clogged</source>
        <translation>obstruido</translation>
    </message>
    <message>
        <source>look at the breather</source>
        <translation>mire el respiradero</translation>
    </message>
    <message>
        <source>oil-wetted</source>
        <translation>mojado de aceite</translation>
    </message>
    <message>
        <source>look further along the intake and at the wiring</source>
        <translation>mire más allá en la admisión y el cableado</translation>
    </message>
    <message>
        <source>mouse nest</source>
        <translation>nido de ratones</translation>
    </message>
    <message>
        <source>the intake took in water: look at the duct and the drain</source>
        <translation>la admisión tomó agua: mire el conducto y el desagüe</translation>
    </message>
    <message>
        <source>water-warped</source>
        <translation>deformado por agua</translation>
    </message>
    <message>
        <source>dust goes past it</source>
        <translation>el polvo pasa de largo</translation>
    </message>
    <message>
        <source>torn seal</source>
        <translation>junta rota</translation>
    </message>
    <message>
        <source>the engine has breathed dust: look at the air meter too</source>
        <translation>el motor ha respirado polvo: mire también el medidor de aire</translation>
    </message>
    <message>
        <source>dust past the seal</source>
        <translation>polvo tras la junta</translation>
    </message>
    <message>
        <source>it starved, or was wet</source>
        <translation>le faltó aire, o estuvo mojado</translation>
    </message>
    <message>
        <source>collapsed pleats</source>
        <translation>pliegues hundidos</translation>
    </message>
    <message>
        <source>Two to four millimetres short or narrow: it lies in the box and lets dust by.</source>
        <translation>De dos a cuatro milímetros corto o estrecho: queda en la caja y deja pasar polvo.</translation>
    </message>
    <message>
        <source>A foam strip where the box wants a moulded edge.</source>
        <translation>Una tira de espuma donde la caja pide un borde moldeado.</translation>
    </message>
    <message>
        <source>Lower: the lid doesn&apos;t clamp it.</source>
        <translation>Más bajo: la tapa no lo sujeta.</translation>
    </message>
    <message>
        <source>A round one of another bore.</source>
        <translation>Uno redondo de otro agujero.</translation>
    </message>
    <message>
        <source>Engine off before the box is opened.</source>
        <translation>Motor parado antes de abrir la caja.</translation>
    </message>
    <message>
        <source>Box wiped clean, nothing left in the duct.</source>
        <translation>Caja limpia, nada olvidado en el conducto.</translation>
    </message>
    <message>
        <source>Seal seated all the way round, every clip shut.</source>
        <translation>Junta asentada en toda la vuelta, todas las grapas cerradas.</translation>
    </message>
    <message>
        <source>Hose clamps tight, sensor plug back on.</source>
        <translation>Abrazaderas apretadas, enchufe del sensor de vuelta.</translation>
    </message>
    <message>
        <source>Trims and air flow at idle and at a raised speed, before and after.</source>
        <translation>Correcciones y caudal de aire a ralentí y a régimen elevado, antes y después.</translation>
    </message>
    <message>
        <source>No whistle, no pending code after a drive.</source>
        <translation>Sin silbido, sin código pendiente tras un recorrido.</translation>
    </message>
    <message>
        <source>air filter</source>
        <translation>filtro de aire</translation>
    </message>
    <message>
        <source>alternator</source>
        <translation>alternador</translation>
    </message>
    <message>
        <source>charging</source>
        <translation>carga</translation>
    </message>
    <message>
        <source>generator</source>
        <translation>generador; dinamo</translation>
    </message>
    <message>
        <source>pulley face, top ear at twelve o&apos;clock</source>
        <translation>cara de la polea, oreja superior a las doce</translation>
    </message>
    <message>
        <source>rear, plug visible</source>
        <translation>por detrás, enchufe visible</translation>
    </message>
    <message>
        <source>The battery&apos;s ground comes off first: the cable can weld and burn. Follow the vehicle maker&apos;s procedure and local rules; leave it to licensed people where the law asks.</source>
        <translation>Primero se desconecta la masa de la batería: el cable puede soldarse y quemar. Siga el procedimiento del fabricante del vehículo y las normas locales; déjelo a personas autorizadas donde la ley lo pida.</translation>
    </message>
    <message>
        <source>spacing of the ears</source>
        <translation>distancia entre orejas</translation>
    </message>
    <message>
        <source>Hole centre to hole centre.</source>
        <translation>De centro de agujero a centro de agujero.</translation>
    </message>
    <message>
        <source>ear thickness</source>
        <translation>espesor de la oreja</translation>
    </message>
    <message>
        <source>At the bolt.</source>
        <translation>Junto al perno.</translation>
    </message>
    <message>
        <source>grooves of the pulley</source>
        <translation>ranuras de la polea</translation>
    </message>
    <message>
        <source>Count them on both parts.</source>
        <translation>Cuente en ambas piezas.</translation>
    </message>
    <message>
        <source>pulley diameter</source>
        <translation>diámetro de la polea</translation>
    </message>
    <message>
        <source>Over the ribs.</source>
        <translation>Sobre los nervios.</translation>
    </message>
    <message>
        <source>first groove to ear face</source>
        <translation>de la primera ranura a la cara de la oreja</translation>
    </message>
    <message>
        <source>Along the shaft.</source>
        <translation>A lo largo del árbol.</translation>
    </message>
    <message>
        <source>pulley type</source>
        <translation>tipo de polea</translation>
    </message>
    <message>
        <source>Turned by hand against the rotor.</source>
        <translation>Girada a mano contra el rotor.</translation>
    </message>
    <message>
        <source>solid</source>
        <translation>macizo</translation>
    </message>
    <message>
        <source>one-way</source>
        <translation>de rueda libre</translation>
    </message>
    <message>
        <source>sprung</source>
        <translation>con muelle</translation>
    </message>
    <message>
        <source>pins of the plug</source>
        <translation>clavijas del enchufe</translation>
    </message>
    <message>
        <source>plug angle from the top ear</source>
        <translation>ángulo del enchufe desde la oreja superior</translation>
    </message>
    <message>
        <source>Seen from the pulley, clockwise.</source>
        <translation>Visto desde la polea, en sentido horario.</translation>
    </message>
    <message>
        <source>rated current</source>
        <translation>corriente nominal</translation>
    </message>
    <message>
        <source>label</source>
        <translation>etiqueta</translation>
    </message>
    <message>
        <source>Read from the plate.</source>
        <translation>Leída de la placa.</translation>
    </message>
    <message>
        <source>ripple at load</source>
        <translation>rizado bajo carga</translation>
    </message>
    <message>
        <source>maker&apos;s figure, entered by the shop</source>
        <translation>cifra del fabricante, escrita por el taller</translation>
    </message>
    <message>
        <source>At the battery posts with lamps and blower on.</source>
        <translation>En los bornes de la batería con luces y ventilador encendidos.</translation>
    </message>
    <message>
        <source>A diode lost raises it.</source>
        <translation>Un diodo perdido lo sube.</translation>
    </message>
    <message>
        <source>thread of the cable stud</source>
        <translation>rosca del espárrago del cable</translation>
    </message>
    <message>
        <source>By thread gauge, like M8x1.25.</source>
        <translation>Con peine de roscas, como M8x1.25.</translation>
    </message>
    <message>
        <source>current delivered at load</source>
        <translation>corriente entregada bajo carga</translation>
    </message>
    <message>
        <source>Clamp around the charging cable at fast idle, lamps and blower on.</source>
        <translation>Pinza alrededor del cable de carga a ralentí alto, luces y ventilador encendidos.</translation>
    </message>
    <message>
        <source>Falls when brushes, diodes or the regulator fail.</source>
        <translation>Baja cuando fallan escobillas, diodos o regulador.</translation>
    </message>
    <message>
        <source>it charges now and then, worse on bumps</source>
        <translation>carga a ratos, peor con baches</translation>
    </message>
    <message>
        <source>worn brushes</source>
        <translation>escobillas gastadas</translation>
    </message>
    <message>
        <source>the brushes no longer seat</source>
        <translation>las escobillas ya no asientan</translation>
    </message>
    <message>
        <source>grooved slip rings</source>
        <translation>anillos rozantes con surcos</translation>
    </message>
    <message>
        <source>heard with the belt on, gone with it off</source>
        <translation>se oye con la correa puesta, desaparece sin ella</translation>
    </message>
    <message>
        <source>bearing noise</source>
        <translation>ruido de rodamiento</translation>
    </message>
    <message>
        <source>cure the leak or the new one dies</source>
        <translation>arregle la fuga o el nuevo muere</translation>
    </message>
    <message>
        <source>oil-soaked</source>
        <translation>empapado de aceite</translation>
    </message>
    <message>
        <source>whine, flicker, drain at rest</source>
        <translation>zumbido, parpadeo, consumo en reposo</translation>
    </message>
    <message>
        <source>open diode</source>
        <translation>diodo abierto</translation>
    </message>
    <message>
        <source>a loose cable nut</source>
        <translation>una tuerca de cable floja</translation>
    </message>
    <message>
        <source>burned stud</source>
        <translation>espárrago quemado</translation>
    </message>
    <message>
        <source>it charges too much or too little</source>
        <translation>carga demasiado o demasiado poco</translation>
    </message>
    <message>
        <source>regulator fault</source>
        <translation>avería del regulador</translation>
    </message>
    <message>
        <source>the belt slaps and the tensioner shakes</source>
        <translation>la correa golpea y el tensor tiembla</translation>
    </message>
    <message>
        <source>seized one-way pulley</source>
        <translation>polea de rueda libre agarrotada</translation>
    </message>
    <message>
        <source>The rear housing stands turned: the plug looks another way.</source>
        <translation>El cuerpo trasero está girado: el enchufe mira a otro lado.</translation>
    </message>
    <message>
        <source>A solid pulley for a one-way pulley.</source>
        <translation>Una polea maciza por una de rueda libre.</translation>
    </message>
    <message>
        <source>A smaller current.</source>
        <translation>Una corriente menor.</translation>
    </message>
    <message>
        <source>The regulator speaks another signal.</source>
        <translation>El regulador usa otra señal.</translation>
    </message>
    <message>
        <source>It turns the other way, or its fan does.</source>
        <translation>Gira al revés, o lo hace su ventilador.</translation>
    </message>
    <message>
        <source>Battery ground off first, on last.</source>
        <translation>Masa de la batería: la primera en desconectar, la última en conectar.</translation>
    </message>
    <message>
        <source>Cable nut tight, boot on.</source>
        <translation>Tuerca del cable apretada, capuchón puesto.</translation>
    </message>
    <message>
        <source>The belt runs its path.</source>
        <translation>La correa sigue su recorrido.</translation>
    </message>
    <message>
        <source>The battery is never taken off while the engine runs.</source>
        <translation>La batería nunca se desconecta con el motor en marcha.</translation>
    </message>
    <message>
        <source>Made known to the car where the maker asks.</source>
        <translation>Dado a conocer al vehículo donde el fabricante lo pide.</translation>
    </message>
    <message>
        <source>Voltage with and without load, drop over both cables, draw at rest.</source>
        <translation>Tensión con y sin carga, caída en ambos cables, consumo en reposo.</translation>
    </message>
    <message>
        <source>Lamp off after a drive with night loads.</source>
        <translation>Testigo apagado tras un recorrido con cargas nocturnas.</translation>
    </message>
    <message>
        <source>Belt quiet with everything switched on.</source>
        <translation>Correa sin ruido con todo encendido.</translation>
    </message>
    <message>
        <source>battery</source>
        <translation>batería</translation>
    </message>
    <message>
        <source>car battery; starter battery; accumulator</source>
        <translation>batería de arranque; acumulador; batería del coche</translation>
    </message>
    <message>
        <source>top, terminals away from you</source>
        <translation>arriba, bornes lejos de usted</translation>
    </message>
    <message>
        <source>long side with its ledge</source>
        <translation>lado largo con su reborde</translation>
    </message>
    <message>
        <source>Acid burns eyes and skin, and the gas over a battery explodes: goggles on, no flame, no spark. Follow the vehicle maker&apos;s procedure and local rules; leave it to licensed people where the law asks.</source>
        <translation>El ácido quema ojos y piel, y el gas que hay sobre una batería explota: gafas puestas, sin llamas, sin chispas. Siga el procedimiento del fabricante del vehículo y las normas locales; déjelo a personas autorizadas donde la ley lo pida.</translation>
    </message>
    <message>
        <source>A tool across the posts or from plus to ground welds and burns: ground off first, on last. Follow the vehicle maker&apos;s procedure and local rules; leave it to licensed people where the law asks.</source>
        <translation>Una herramienta entre los bornes o de positivo a masa se suelda y quema: la masa, primera en desconectar y última en conectar. Siga el procedimiento del fabricante del vehículo y las normas locales; déjelo a personas autorizadas donde la ley lo pida.</translation>
    </message>
    <message>
        <source>A battery is heavy: lift it with the back straight, or with two. Follow the vehicle maker&apos;s procedure and local rules; leave it to licensed people where the law asks.</source>
        <translation>Una batería pesa: levántela con la espalda recta, o entre dos. Siga el procedimiento del fabricante del vehículo y las normas locales; déjelo a personas autorizadas donde la ley lo pida.</translation>
    </message>
    <message>
        <source>length</source>
        <translation>longitud</translation>
    </message>
    <message>
        <source>Over the box, without the ledge.</source>
        <translation>Sobre la caja, sin el reborde.</translation>
    </message>
    <message>
        <source>width</source>
        <translation>anchura</translation>
    </message>
    <message>
        <source>height</source>
        <translation>altura</translation>
    </message>
    <message>
        <source>To the top of the posts; posts must clear the bonnet.</source>
        <translation>Hasta lo alto de los bornes; los bornes deben quedar lejos del capó.</translation>
    </message>
    <message>
        <source>side of the positive post</source>
        <translation>lado del borne positivo</translation>
    </message>
    <message>
        <source>Seen from the side nearest to the posts.</source>
        <translation>Visto desde el lado más cercano a los bornes.</translation>
    </message>
    <message>
        <source>left</source>
        <translation>izquierda</translation>
    </message>
    <message>
        <source>right</source>
        <translation>derecha</translation>
    </message>
    <message>
        <source>ends</source>
        <translation>extremos</translation>
    </message>
    <message>
        <source>side terminals</source>
        <translation>bornes laterales</translation>
    </message>
    <message>
        <source>hold-down ledge</source>
        <translation>reborde de sujeción</translation>
    </message>
    <message>
        <source>Which sides have one at the foot.</source>
        <translation>En qué lados hay uno al pie.</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguno</translation>
    </message>
    <message>
        <source>long sides</source>
        <translation>lados largos</translation>
    </message>
    <message>
        <source>short sides</source>
        <translation>lados cortos</translation>
    </message>
    <message>
        <source>all round</source>
        <translation>todo alrededor</translation>
    </message>
    <message>
        <source>type</source>
        <translation>tipo</translation>
    </message>
    <message>
        <source>From the label.</source>
        <translation>De la etiqueta.</translation>
    </message>
    <message>
        <source>flooded</source>
        <translation>líquida</translation>
    </message>
    <message>
        <source>EFB</source>
        <translation>EFB</translation>
    </message>
    <message>
        <source>AGM</source>
        <translation>AGM</translation>
    </message>
    <message>
        <source>gel</source>
        <translation>gel</translation>
    </message>
    <message>
        <source>lithium</source>
        <translation>litio</translation>
    </message>
    <message>
        <source>side of the vent elbow</source>
        <translation>lado del codo de ventilación</translation>
    </message>
    <message>
        <source>Where the vent tube plugs in; none where there is none.</source>
        <translation>Dónde se enchufa el tubo de ventilación; ninguno donde no lo hay.</translation>
    </message>
    <message>
        <source>positive side</source>
        <translation>lado positivo</translation>
    </message>
    <message>
        <source>negative side</source>
        <translation>lado negativo</translation>
    </message>
    <message>
        <source>capacity</source>
        <translation>capacidad</translation>
    </message>
    <message>
        <source>From the label of the new one; the least that the car asks for goes in as its limit.</source>
        <translation>De la etiqueta de la nueva; lo mínimo que pide el vehículo se escribe como su límite.</translation>
    </message>
    <message>
        <source>cold cranking current</source>
        <translation>corriente de arranque en frío</translation>
    </message>
    <message>
        <source>SAE J537 or EN 50342 as printed; maker&apos;s figure, entered by the shop</source>
        <translation>SAE J537 o EN 50342 según está impreso; cifra del fabricante, escrita por el taller</translation>
    </message>
    <message>
        <source>From the label, with its standard: the figures of two standards can&apos;t be set side by side.</source>
        <translation>De la etiqueta, con su norma: las cifras de dos normas no se pueden poner lado a lado.</translation>
    </message>
    <message>
        <source>voltage at rest</source>
        <translation>tensión en reposo</translation>
    </message>
    <message>
        <source>At the posts, hours after the last charge or drive.</source>
        <translation>En los bornes, horas después de la última carga o recorrido.</translation>
    </message>
    <message>
        <source>Sinks with charge, and for good with a shorted cell.</source>
        <translation>Baja con la carga, y para siempre con una celda en cortocircuito.</translation>
    </message>
    <message>
        <source>current by the battery tester</source>
        <translation>corriente según el probador de baterías</translation>
    </message>
    <message>
        <source>Off the tester&apos;s display, same settings on both; enter the tester in the drawer with its own permitted error.</source>
        <translation>De la pantalla del probador, mismos ajustes en ambas; ponga el probador en el cajón con su propio error permitido.</translation>
    </message>
    <message>
        <source>Sinks as the plates age.</source>
        <translation>Baja a medida que envejecen las placas.</translation>
    </message>
    <message>
        <source>stood empty; takes no charge and gives no current</source>
        <translation>estuvo vacía; no toma carga ni da corriente</translation>
    </message>
    <message>
        <source>sulphated</source>
        <translation>sulfatada</translation>
    </message>
    <message>
        <source>two volts are missing</source>
        <translation>faltan dos voltios</translation>
    </message>
    <message>
        <source>shorted cell</source>
        <translation>celda en cortocircuito</translation>
    </message>
    <message>
        <source>overcharged, frozen or cooked: look at the charging voltage</source>
        <translation>sobrecargada, helada o cocida: mire la tensión de carga</translation>
    </message>
    <message>
        <source>swollen case</source>
        <translation>caja hinchada</translation>
    </message>
    <message>
        <source>look at tray, cables and what is below</source>
        <translation>mire bandeja, cables y lo que hay debajo</translation>
    </message>
    <message>
        <source>leaking</source>
        <translation>con fuga</translation>
    </message>
    <message>
        <source>it fails hot and cold by turns</source>
        <translation>falla a ratos en frío y en caliente</translation>
    </message>
    <message>
        <source>loose post</source>
        <translation>borne flojo</translation>
    </message>
    <message>
        <source>overcharged, or old</source>
        <translation>sobrecargada, o vieja</translation>
    </message>
    <message>
        <source>low water</source>
        <translation>nivel de agua bajo</translation>
    </message>
    <message>
        <source>charge and test it before it is condemned: find what emptied it</source>
        <translation>cárguela y pruébela antes de darla por mala: busque lo que la vació</translation>
    </message>
    <message>
        <source>discharged only</source>
        <translation>solo descargada</translation>
    </message>
    <message>
        <source>voltage is lost between post and clamp</source>
        <translation>se pierde tensión entre borne y abrazadera</translation>
    </message>
    <message>
        <source>corroded terminals</source>
        <translation>bornes corroídos</translation>
    </message>
    <message>
        <source>Posts the other way round: the cables don&apos;t reach, or reach wrongly.</source>
        <translation>Bornes al revés: los cables no llegan, o llegan mal.</translation>
    </message>
    <message>
        <source>Taller: the posts come near the bonnet.</source>
        <translation>Más alta: los bornes se acercan al capó.</translation>
    </message>
    <message>
        <source>A flooded one where a stop-start car or a closed place needs AGM.</source>
        <translation>Una de electrolito líquido donde un vehículo con parada y arranque o un lugar cerrado pide AGM.</translation>
    </message>
    <message>
        <source>The vent elbow sits on the other side, or is missing.</source>
        <translation>El codo de ventilación está en el otro lado, o falta.</translation>
    </message>
    <message>
        <source>A foot that the clamp doesn&apos;t hold.</source>
        <translation>Un pie que la brida no sujeta.</translation>
    </message>
    <message>
        <source>Goggles and gloves on; no flame, no sparks.</source>
        <translation>Gafas y guantes puestos; sin llama, sin chispas.</translation>
    </message>
    <message>
        <source>Ground off first and on last.</source>
        <translation>La masa, primera en desconectar y última en conectar.</translation>
    </message>
    <message>
        <source>Vent tube connected where there was one.</source>
        <translation>Tubo de ventilación conectado donde lo había.</translation>
    </message>
    <message>
        <source>Clamped so that it can&apos;t move, cover on the positive post.</source>
        <translation>Sujeta de modo que no se mueva, con la tapa del borne positivo puesta.</translation>
    </message>
    <message>
        <source>Memory kept and the new battery registered, where the maker asks.</source>
        <translation>Memoria conservada y batería nueva registrada, donde el fabricante lo pide.</translation>
    </message>
    <message>
        <source>Charging voltage, key-off draw once all has gone to sleep, voltage while cranking.</source>
        <translation>Tensión de carga, consumo con el contacto quitado una vez que todo duerme, tensión al arrancar.</translation>
    </message>
    <message>
        <source>Windows, steering angle and clock learned again; no lamp.</source>
        <translation>Ventanillas, ángulo de dirección y reloj aprendidos de nuevo; ningún testigo.</translation>
    </message>
    <message>
        <source>Starts on a cold morning after a night standing.</source>
        <translation>Arranca en una mañana fría tras una noche parado.</translation>
    </message>
    <message>
        <source>brake calliper</source>
        <translation>pinza de freno</translation>
    </message>
    <message>
        <source>brakes</source>
        <translation>frenos</translation>
    </message>
    <message>
        <source>brake caliper; caliper</source>
        <translation>pinza; caliper; mordaza de freno</translation>
    </message>
    <message>
        <source>piston face, hose port up</source>
        <translation>cara del pistón, entrada de manguera arriba</translation>
    </message>
    <message>
        <source>back, bleeder visible</source>
        <translation>por detrás, purgador visible</translation>
    </message>
    <message>
        <source>bracket holes</source>
        <translation>agujeros del soporte</translation>
    </message>
    <message>
        <source>Brakes that fail can kill. Follow the vehicle maker&apos;s procedure and local rules; leave it to licensed people where the law asks.</source>
        <translation>Unos frenos que fallan pueden matar. Siga el procedimiento del fabricante del vehículo y las normas locales; déjelo a personas autorizadas donde la ley lo pida.</translation>
    </message>
    <message>
        <source>A lifted car falls: stands and chocks, never the jack alone. Follow the vehicle maker&apos;s procedure and local rules; leave it to licensed people where the law asks.</source>
        <translation>Un vehículo elevado se cae: caballetes y calzos, nunca solo el gato. Siga el procedimiento del fabricante del vehículo y las normas locales; déjelo a personas autorizadas donde la ley lo pida.</translation>
    </message>
    <message>
        <source>Brake fluid harms eyes, skin and paint, and a piston blown out by air crushes fingers. Follow the vehicle maker&apos;s procedure and local rules; leave it to licensed people where the law asks.</source>
        <translation>El líquido de frenos daña ojos, piel y pintura, y un pistón expulsado con aire aplasta dedos. Siga el procedimiento del fabricante del vehículo y las normas locales; déjelo a personas autorizadas donde la ley lo pida.</translation>
    </message>
    <message>
        <source>piston diameter</source>
        <translation>diámetro del pistón</translation>
    </message>
    <message>
        <source>At the open end of the piston, in two directions.</source>
        <translation>En el extremo abierto del pistón, en dos direcciones.</translation>
    </message>
    <message>
        <source>pistons</source>
        <translation>pistones</translation>
    </message>
    <message>
        <source>centres of the bracket holes</source>
        <translation>distancia entre centros de los agujeros del soporte</translation>
    </message>
    <message>
        <source>thread of the hose port</source>
        <translation>rosca de la entrada de manguera</translation>
    </message>
    <message>
        <source>ISO metric thread designation</source>
        <translation>designación métrica ISO de rosca</translation>
    </message>
    <message>
        <source>Diameter and pitch by thread gauge, like M10x1; the seat looked at too.</source>
        <translation>Diámetro y paso con peine de roscas, como M10x1; mire también el asiento.</translation>
    </message>
    <message>
        <source>where the bleeder sits</source>
        <translation>dónde está el purgador</translation>
    </message>
    <message>
        <source>As fitted on this side of the car: it must be the highest point, or air stays in.</source>
        <translation>Montada en este lado del vehículo: debe ser el punto más alto, o queda aire dentro.</translation>
    </message>
    <message>
        <source>top</source>
        <translation>arriba</translation>
    </message>
    <message>
        <source>bottom</source>
        <translation>abajo</translation>
    </message>
    <message>
        <source>middle</source>
        <translation>medio</translation>
    </message>
    <message>
        <source>side of the parking-brake lever</source>
        <translation>lado de la palanca del freno de estacionamiento</translation>
    </message>
    <message>
        <source>As fitted; none where there is none.</source>
        <translation>Montada; ninguno donde no la hay.</translation>
    </message>
    <message>
        <source>electric</source>
        <translation>eléctrico</translation>
    </message>
    <message>
        <source>slide pin diameter</source>
        <translation>diámetro del pasador guía</translation>
    </message>
    <message>
        <source>On the clean part of the pin.</source>
        <translation>En la parte limpia del pasador.</translation>
    </message>
    <message>
        <source>Rust and dry grease eat pin and bore.</source>
        <translation>El óxido y la grasa seca comen pasador y agujero.</translation>
    </message>
    <message>
        <source>seat of the hose</source>
        <translation>asiento de la manguera</translation>
    </message>
    <message>
        <source>What the port seals on.</source>
        <translation>Sobre qué sella la entrada.</translation>
    </message>
    <message>
        <source>banjo with washers</source>
        <translation>racor de ojo con arandelas</translation>
    </message>
    <message>
        <source>flare</source>
        <translation>abocardado</translation>
    </message>
    <message>
        <source>the brake drags, or doesn&apos;t bite on that side</source>
        <translation>el freno roza, o no muerde en ese lado</translation>
    </message>
    <message>
        <source>seized piston</source>
        <translation>pistón agarrotado</translation>
    </message>
    <message>
        <source>one pad wears down alone</source>
        <translation>una pastilla se gasta sola</translation>
    </message>
    <message>
        <source>stuck slides</source>
        <translation>guías agarrotadas</translation>
    </message>
    <message>
        <source>water has reached the piston</source>
        <translation>ha llegado agua al pistón</translation>
    </message>
    <message>
        <source>torn boot</source>
        <translation>guardapolvo o capuchón roto</translation>
    </message>
    <message>
        <source>it cuts its seal</source>
        <translation>corta su retén</translation>
    </message>
    <message>
        <source>pitted piston</source>
        <translation>pistón picado</translation>
    </message>
    <message>
        <source>look at lining and disc: soaked ones go as well</source>
        <translation>mire forro y disco: los empapados también se cambian</translation>
    </message>
    <message>
        <source>leaks</source>
        <translation>fuga</translation>
    </message>
    <message>
        <source>it can&apos;t be bled</source>
        <translation>no se puede purgar</translation>
    </message>
    <message>
        <source>snapped bleeder</source>
        <translation>purgador partido</translation>
    </message>
    <message>
        <source>the rear brake stays on after the lever is let go</source>
        <translation>el freno trasero sigue puesto al soltar la palanca</translation>
    </message>
    <message>
        <source>parking-brake lever seized</source>
        <translation>palanca del freno de estacionamiento agarrotada</translation>
    </message>
    <message>
        <source>Left for right: the bleeder comes to sit at the bottom and the brake can&apos;t be bled.</source>
        <translation>Izquierda por derecha: el purgador queda abajo y el freno no se puede purgar.</translation>
    </message>
    <message>
        <source>Another piston size: the balance between the axles is gone.</source>
        <translation>Otro tamaño de pistón: el equilibrio entre los ejes se pierde.</translation>
    </message>
    <message>
        <source>Another seat for the hose.</source>
        <translation>Otro asiento para la manguera.</translation>
    </message>
    <message>
        <source>Another bracket.</source>
        <translation>Otro soporte.</translation>
    </message>
    <message>
        <source>The calliper is never left hanging by its hose.</source>
        <translation>La pinza nunca se deja colgada de su manguera.</translation>
    </message>
    <message>
        <source>New washers on both sides of the banjo, hose not twisted.</source>
        <translation>Arandelas nuevas a ambos lados del racor de ojo, manguera sin torcer.</translation>
    </message>
    <message>
        <source>Fluid of the class printed on the cap (FMVSS 116, ISO 4925), from a closed can.</source>
        <translation>Líquido de la clase impresa en el tapón (FMVSS 116, ISO 4925), de un envase cerrado.</translation>
    </message>
    <message>
        <source>Bled in the maker&apos;s order; electric parking brake in its service position first.</source>
        <translation>Purgado en el orden del fabricante; el freno de estacionamiento eléctrico primero en su posición de servicio.</translation>
    </message>
    <message>
        <source>Pedal pumped firm before the car moves.</source>
        <translation>Pedal bombeado hasta que esté firme antes de mover el vehículo.</translation>
    </message>
    <message>
        <source>The old one goes back complete where it is exchanged.</source>
        <translation>La vieja se devuelve completa donde se intercambia.</translation>
    </message>
    <message>
        <source>Pedal hard and not sinking for a minute, no leak, wheel free when let go.</source>
        <translation>Pedal duro que no baja en un minuto, sin fugas, rueda libre al soltar.</translation>
    </message>
    <message>
        <source>Straight stop from a gentle speed; both sides of the axle equally warm.</source>
        <translation>Frenada recta a velocidad suave; ambos lados del eje igual de calientes.</translation>
    </message>
    <message>
        <source>brake disc</source>
        <translation>disco de freno</translation>
    </message>
    <message>
        <source>brake rotor</source>
        <translation>disco; rotor de freno</translation>
    </message>
    <message>
        <source>outer face, one bolt hole at twelve o&apos;clock</source>
        <translation>cara exterior, un agujero de perno a las doce</translation>
    </message>
    <message>
        <source>edge on</source>
        <translation>de canto</translation>
    </message>
    <message>
        <source>thickness, lowest of eight points</source>
        <translation>espesor, el menor de ocho puntos</translation>
    </message>
    <message>
        <source>Ten millimetres in from the edge, every 45 degrees, burr avoided. The discard figure is cast on the part.</source>
        <translation>A diez milímetros del borde, cada 45 grados, evitando la rebaba. La cifra de desecho está fundida en la pieza.</translation>
    </message>
    <message>
        <source>Pads and rust take it.</source>
        <translation>Las pastillas y el óxido se lo llevan.</translation>
    </message>
    <message>
        <source>thickness spread over eight points</source>
        <translation>diferencia de espesor en ocho puntos</translation>
    </message>
    <message>
        <source>Highest less lowest of the same eight.</source>
        <translation>El mayor menos el menor de los mismos ocho.</translation>
    </message>
    <message>
        <source>Grows where the disc runs out of true.</source>
        <translation>Crece donde el disco gira alabeado.</translation>
    </message>
    <message>
        <source>outer diameter</source>
        <translation>diámetro exterior</translation>
    </message>
    <message>
        <source>Across the centre.</source>
        <translation>Pasando por el centro.</translation>
    </message>
    <message>
        <source>hat height</source>
        <translation>altura de la campana</translation>
    </message>
    <message>
        <source>Mounting face to outer friction face.</source>
        <translation>De la cara de montaje a la cara de fricción exterior.</translation>
    </message>
    <message>
        <source>centre bore</source>
        <translation>agujero central</translation>
    </message>
    <message>
        <source>In two directions.</source>
        <translation>En dos direcciones.</translation>
    </message>
    <message>
        <source>bolt holes</source>
        <translation>agujeros de pernos</translation>
    </message>
    <message>
        <source>bolt circle</source>
        <translation>círculo de pernos</translation>
    </message>
    <message>
        <source>geometry; allowance common practice, no source</source>
        <translation>geometría; tolerancia de práctica común, sin fuente</translation>
    </message>
    <message>
        <source>Opposite pair with four; neighbouring pair times 1.7013 with five.</source>
        <translation>Par opuesto con cuatro; par vecino por 1.7013 con cinco.</translation>
    </message>
    <message>
        <source>vanes</source>
        <translation>aletas</translation>
    </message>
    <message>
        <source>Seen from outside; solid where there are none.</source>
        <translation>Visto desde fuera; macizo donde no las hay.</translation>
    </message>
    <message>
        <source>straight</source>
        <translation>recto</translation>
    </message>
    <message>
        <source>leading</source>
        <translation>hacia delante</translation>
    </message>
    <message>
        <source>trailing</source>
        <translation>hacia atrás</translation>
    </message>
    <message>
        <source>run-out as fitted</source>
        <translation>alabeo montado</translation>
    </message>
    <message>
        <source>All nuts on with flat washers, ten millimetres in.</source>
        <translation>Todas las tuercas puestas con arandelas planas, a diez milímetros del borde.</translation>
    </message>
    <message>
        <source>Rust under the hat tilts it.</source>
        <translation>El óxido bajo la campana lo inclina.</translation>
    </message>
    <message>
        <source>teeth of the tone ring</source>
        <translation>dientes del anillo de impulsos</translation>
    </message>
    <message>
        <source>Count twice; 0 where there is no ring.</source>
        <translation>Cuente dos veces; 0 donde no hay anillo.</translation>
    </message>
    <message>
        <source>it must not go back on</source>
        <translation>no debe volver a montarse</translation>
    </message>
    <message>
        <source>under discard thickness</source>
        <translation>por debajo del espesor de desecho</translation>
    </message>
    <message>
        <source>it has been very hot: look for a brake that drags</source>
        <translation>ha estado muy caliente: busque un freno que roza</translation>
    </message>
    <message>
        <source>heat-checked</source>
        <translation>grietas térmicas</translation>
    </message>
    <message>
        <source>the pedal pulses in time with the wheel</source>
        <translation>el pedal pulsa al ritmo de la rueda</translation>
    </message>
    <message>
        <source>thickness variation</source>
        <translation>variación de espesor</translation>
    </message>
    <message>
        <source>ordinary wear, or a pad worn to its plate</source>
        <translation>desgaste ordinario, o una pastilla gastada hasta la placa</translation>
    </message>
    <message>
        <source>lipped</source>
        <translation>reborde</translation>
    </message>
    <message>
        <source>cracked</source>
        <translation>grietas</translation>
    </message>
    <message>
        <source>a film from storage that the pads wipe off</source>
        <translation>una película del almacenaje que las pastillas limpian</translation>
    </message>
    <message>
        <source>surface rust</source>
        <translation>óxido superficial</translation>
    </message>
    <message>
        <source>hot spots: the brake dragged or the lining was too hard</source>
        <translation>puntos calientes: el freno rozaba o el forro era demasiado duro</translation>
    </message>
    <message>
        <source>blue-spotted</source>
        <translation>manchas azules</translation>
    </message>
    <message>
        <source>rust between hat and hub tilts the disc</source>
        <translation>el óxido entre campana y cubo inclina el disco</translation>
    </message>
    <message>
        <source>rust-jacked</source>
        <translation>levantado por el óxido</translation>
    </message>
    <message>
        <source>One size up or down.</source>
        <translation>Una medida mayor o menor.</translation>
    </message>
    <message>
        <source>Solid for vented.</source>
        <translation>Macizo por ventilado.</translation>
    </message>
    <message>
        <source>The hat is deeper and the pads stand off centre.</source>
        <translation>La campana es más profunda y las pastillas quedan descentradas.</translation>
    </message>
    <message>
        <source>It carries a bearing or a tone ring, or lacks it.</source>
        <translation>Lleva un rodamiento o un anillo de impulsos, o le falta.</translation>
    </message>
    <message>
        <source>Hub face clean to the metal, its run-out read first.</source>
        <translation>Cara del cubo limpia hasta el metal, leído primero su alabeo.</translation>
    </message>
    <message>
        <source>Oil film off both faces.</source>
        <translation>Ambas caras limpias de la película de aceite.</translation>
    </message>
    <message>
        <source>Wheel nuts in a star, to the maker&apos;s torque.</source>
        <translation>Tuercas de rueda en estrella, al par de apriete del fabricante.</translation>
    </message>
    <message>
        <source>Run-out with the wheel nuts at torque.</source>
        <translation>Alabeo con las tuercas de rueda a su par de apriete.</translation>
    </message>
    <message>
        <source>No pulsation on three slow-downs; both sides equally warm.</source>
        <translation>Sin pulsación en tres frenadas; ambos lados igual de calientes.</translation>
    </message>
    <message>
        <source>Bedded in as the lining&apos;s maker says.</source>
        <translation>Asentados como dice el fabricante del forro.</translation>
    </message>
    <message>
        <source>brake hose</source>
        <translation>manguera de freno</translation>
    </message>
    <message>
        <source>flexible brake line; flex hose; brake flex line</source>
        <translation>latiguillo de freno; flexible de freno; tubo flexible de freno</translation>
    </message>
    <message>
        <source>whole hose, laid free</source>
        <translation>manguera entera, extendida libre</translation>
    </message>
    <message>
        <source>both ends, square on</source>
        <translation>ambos extremos, de frente</translation>
    </message>
    <message>
        <source>print on the hose</source>
        <translation>impresión en la manguera</translation>
    </message>
    <message>
        <source>free length</source>
        <translation>longitud libre</translation>
    </message>
    <message>
        <source>Fitting to fitting, hose laid straight without pull.</source>
        <translation>De racor a racor, manguera tendida recta sin tirar.</translation>
    </message>
    <message>
        <source>thread of the first end</source>
        <translation>rosca del primer extremo</translation>
    </message>
    <message>
        <source>The end at the body, by thread gauge, like M10x1; banjo where there is no thread.</source>
        <translation>El extremo de la carrocería, con peine de roscas, como M10x1; racor de ojo donde no hay rosca.</translation>
    </message>
    <message>
        <source>thread of the second end</source>
        <translation>rosca del segundo extremo</translation>
    </message>
    <message>
        <source>The end at the wheel, by thread gauge, like M10x1; banjo where there is no thread.</source>
        <translation>El extremo de la rueda, con peine de roscas, como M10x1; racor de ojo donde no hay rosca.</translation>
    </message>
    <message>
        <source>angle between the ends</source>
        <translation>ángulo entre los extremos</translation>
    </message>
    <message>
        <source>Hose hanging free and untwisted, seen along it from the body end, clockwise.</source>
        <translation>Manguera colgada libre y sin torcer, vista a lo largo desde el extremo de la carrocería, en sentido horario.</translation>
    </message>
    <message>
        <source>bracket along the hose</source>
        <translation>soporte a lo largo de la manguera</translation>
    </message>
    <message>
        <source>From the end at the body to the middle of the bracket.</source>
        <translation>Del extremo de la carrocería al medio del soporte.</translation>
    </message>
    <message>
        <source>banjo hole</source>
        <translation>agujero del racor de ojo</translation>
    </message>
    <message>
        <source>approval prints on the hose</source>
        <translation>homologaciones impresas en la manguera</translation>
    </message>
    <message>
        <source>FMVSS 106 or local rule</source>
        <translation>FMVSS 106 o norma local</translation>
    </message>
    <message>
        <source>Count the approvals that can be read along the hose, such as FMVSS 106 or the local mark.</source>
        <translation>Cuente las homologaciones que se leen a lo largo de la manguera, como FMVSS 106 o la marca local.</translation>
    </message>
    <message>
        <source>the cover opens when it is bent</source>
        <translation>la cubierta se abre al doblarla</translation>
    </message>
    <message>
        <source>the wall has parted: it swells under the pedal and must not go back on</source>
        <translation>la pared se ha separado: se hincha con el pedal y no debe volver a montarse</translation>
    </message>
    <message>
        <source>bulges</source>
        <translation>abultamientos</translation>
    </message>
    <message>
        <source>it rubbed on tyre or body: find where</source>
        <translation>rozó con neumático o carrocería: busque dónde</translation>
    </message>
    <message>
        <source>chafed</source>
        <translation>rozaduras</translation>
    </message>
    <message>
        <source>it works as a one-way valve and the brake stays on</source>
        <translation>funciona como válvula de un solo sentido y el freno queda puesto</translation>
    </message>
    <message>
        <source>swollen inside</source>
        <translation>hinchada por dentro</translation>
    </message>
    <message>
        <source>it was fitted with a twist: look at the stripe</source>
        <translation>se montó torcida: mire la raya</translation>
    </message>
    <message>
        <source>twisted</source>
        <translation>torcida</translation>
    </message>
    <message>
        <source>it leaks where the metal holds it</source>
        <translation>pierde donde la sujeta el metal</translation>
    </message>
    <message>
        <source>wet at the crimp</source>
        <translation>mojada en el prensado</translation>
    </message>
    <message>
        <source>The banjo stands at another angle.</source>
        <translation>El racor de ojo está en otro ángulo.</translation>
    </message>
    <message>
        <source>The bracket sits elsewhere or is missing.</source>
        <translation>El soporte está en otro lugar o falta.</translation>
    </message>
    <message>
        <source>Too short for a raised car, or long enough to rub.</source>
        <translation>Demasiado corta para un vehículo elevado, o tan larga que roza.</translation>
    </message>
    <message>
        <source>A fitting with another thread or another seat.</source>
        <translation>Un racor con otra rosca u otro asiento.</translation>
    </message>
    <message>
        <source>Brake work by licensed people where the law asks; the pedal is pumped firm before the car moves.</source>
        <translation>Trabajo de frenos por personas autorizadas donde la ley lo pide; el pedal se bombea hasta que esté firme antes de mover el vehículo.</translation>
    </message>
    <message>
        <source>The stripe runs straight; clear of tyre and body at full lock and at full droop.</source>
        <translation>La raya queda recta; apartada del neumático y la carrocería con la dirección a tope y la suspensión colgando.</translation>
    </message>
    <message>
        <source>New sealing washers on both sides of a banjo.</source>
        <translation>Arandelas de sellado nuevas a ambos lados de un racor de ojo.</translation>
    </message>
    <message>
        <source>Fluid of the class on the cap, never from an open can; bled as the maker says.</source>
        <translation>Líquido de la clase del tapón, nunca de un envase abierto; purgado como dice el fabricante.</translation>
    </message>
    <message>
        <source>A hard pedal for one minute, nothing wet.</source>
        <translation>Un pedal duro durante un minuto, nada mojado.</translation>
    </message>
    <message>
        <source>Lock to lock without touching anything.</source>
        <translation>De tope a tope sin tocar nada.</translation>
    </message>
    <message>
        <source>It stops straight and both wheels let go again.</source>
        <translation>Frena recto y ambas ruedas se vuelven a soltar.</translation>
    </message>
    <message>
        <source>disc brake pads</source>
        <translation>pastillas de freno de disco</translation>
    </message>
    <message>
        <source>pads; brake pad set</source>
        <translation>pastillas; juego de pastillas; balatas de disco</translation>
    </message>
    <message>
        <source>inner</source>
        <translation>interior</translation>
    </message>
    <message>
        <source>outer</source>
        <translation>exterior</translation>
    </message>
    <message>
        <source>lining face</source>
        <translation>cara del forro</translation>
    </message>
    <message>
        <source>backing plate</source>
        <translation>placa de respaldo</translation>
    </message>
    <message>
        <source>edge on, old and new together</source>
        <translation>de canto, vieja y nueva juntas</translation>
    </message>
    <message>
        <source>lining thickness</source>
        <translation>espesor del forro</translation>
    </message>
    <message>
        <source>Thinnest place of the lining, backing plate not counted.</source>
        <translation>Punto más delgado del forro, sin contar la placa.</translation>
    </message>
    <message>
        <source>The disc takes it away; a taper tells of stuck slides.</source>
        <translation>El disco se lo lleva; una cuña habla de guías agarrotadas.</translation>
    </message>
    <message>
        <source>length of the backing plate</source>
        <translation>longitud de la placa de respaldo</translation>
    </message>
    <message>
        <source>Over everything, ears included.</source>
        <translation>Medida total, orejas incluidas.</translation>
    </message>
    <message>
        <source>height of the backing plate</source>
        <translation>altura de la placa de respaldo</translation>
    </message>
    <message>
        <source>At the middle.</source>
        <translation>En el medio.</translation>
    </message>
    <message>
        <source>thickness of the backing plate</source>
        <translation>espesor de la placa de respaldo</translation>
    </message>
    <message>
        <source>Beside the lining, shim off.</source>
        <translation>Junto al forro, sin laminilla.</translation>
    </message>
    <message>
        <source>width of the ear in the bracket</source>
        <translation>anchura de la oreja en el soporte</translation>
    </message>
    <message>
        <source>Where the ear slides in the bracket.</source>
        <translation>Donde la oreja desliza en el soporte.</translation>
    </message>
    <message>
        <source>pads in the set</source>
        <translation>pastillas del juego</translation>
    </message>
    <message>
        <source>place of wear sensor or squealer</source>
        <translation>lugar del sensor de desgaste o del avisador</translation>
    </message>
    <message>
        <source>On which pad and at which end; none where there is none.</source>
        <translation>En qué pastilla y en qué extremo; ninguno donde no lo hay.</translation>
    </message>
    <message>
        <source>inner leading</source>
        <translation>interior delantero</translation>
    </message>
    <message>
        <source>inner trailing</source>
        <translation>interior trasero</translation>
    </message>
    <message>
        <source>outer leading</source>
        <translation>exterior delantero</translation>
    </message>
    <message>
        <source>outer trailing</source>
        <translation>exterior trasero</translation>
    </message>
    <message>
        <source>direction arrow</source>
        <translation>flecha de dirección</translation>
    </message>
    <message>
        <source>Which way the arrow points, or none.</source>
        <translation>Hacia dónde apunta la flecha, o ninguno.</translation>
    </message>
    <message>
        <source>pin or spring towards the piston</source>
        <translation>pasador o muelle hacia el pistón</translation>
    </message>
    <message>
        <source>What holds the pad to the piston.</source>
        <translation>Lo que sujeta la pastilla al pistón.</translation>
    </message>
    <message>
        <source>pin</source>
        <translation>pasador</translation>
    </message>
    <message>
        <source>spring</source>
        <translation>muelle</translation>
    </message>
    <message>
        <source>metal runs on metal; look at the disc</source>
        <translation>metal contra metal; mire el disco</translation>
    </message>
    <message>
        <source>worn to the plate</source>
        <translation>gastada hasta la placa</translation>
    </message>
    <message>
        <source>a slide or a piston sticks; free it or the new ones go the same way</source>
        <translation>una guía o un pistón se agarrota; libérelo o las nuevas acaban igual</translation>
    </message>
    <message>
        <source>tapered</source>
        <translation>desgaste en cuña</translation>
    </message>
    <message>
        <source>it has been hot and grips less</source>
        <translation>ha estado caliente y agarra menos</translation>
    </message>
    <message>
        <source>glazed</source>
        <translation>cristalizado</translation>
    </message>
    <message>
        <source>heat or age has broken the lining up</source>
        <translation>el calor o la edad han deshecho el forro</translation>
    </message>
    <message>
        <source>rust between plate and lining</source>
        <translation>óxido entre placa y forro</translation>
    </message>
    <message>
        <source>lining lifting</source>
        <translation>forro despegado</translation>
    </message>
    <message>
        <source>something leaks onto the brake; that comes first</source>
        <translation>algo gotea en el freno; eso va primero</translation>
    </message>
    <message>
        <source>the warning was right</source>
        <translation>el aviso era correcto</translation>
    </message>
    <message>
        <source>wear sensor cut</source>
        <translation>sensor de desgaste cortado</translation>
    </message>
    <message>
        <source>A twin shape for another calliper.</source>
        <translation>Una forma gemela para otra pinza.</translation>
    </message>
    <message>
        <source>Ears of another width.</source>
        <translation>Orejas de otra anchura.</translation>
    </message>
    <message>
        <source>The sensor on the other side.</source>
        <translation>El sensor en el otro lado.</translation>
    </message>
    <message>
        <source>Shims or springs are missing from the set.</source>
        <translation>Faltan laminillas o muelles en el juego.</translation>
    </message>
    <message>
        <source>Both wheels of the axle, wheels to the maker&apos;s torque.</source>
        <translation>Ambas ruedas del eje, ruedas al par de apriete del fabricante.</translation>
    </message>
    <message>
        <source>Slides free, with the grease that belongs there.</source>
        <translation>Guías libres, con la grasa que les corresponde.</translation>
    </message>
    <message>
        <source>The calliper never hangs on its hose.</source>
        <translation>La pinza nunca cuelga de su manguera.</translation>
    </message>
    <message>
        <source>The electric park brake is in its service mode, fingers out.</source>
        <translation>El freno de estacionamiento eléctrico está en su modo de servicio, dedos fuera.</translation>
    </message>
    <message>
        <source>Brake dust is not blown about with air.</source>
        <translation>El polvo de freno no se sopla con aire a presión.</translation>
    </message>
    <message>
        <source>The pedal is pumped firm BEFORE the car moves.</source>
        <translation>El pedal se bombea hasta que esté firme ANTES de mover el vehículo.</translation>
    </message>
    <message>
        <source>Firm pedal, fluid at its level, no leak.</source>
        <translation>Pedal firme, líquido en su nivel, sin fugas.</translation>
    </message>
    <message>
        <source>Bedded in as the maker says.</source>
        <translation>Asentadas como dice el fabricante.</translation>
    </message>
    <message>
        <source>Straight stop, wheels of one axle equally warm.</source>
        <translation>Frenada recta, ruedas de un mismo eje igual de calientes.</translation>
    </message>
    <message>
        <source>brake pads</source>
        <translation>pastillas de freno</translation>
    </message>
    <message>
        <source>brake shoes and drum</source>
        <translation>zapatas y tambor de freno</translation>
    </message>
    <message>
        <source>brake shoes; brake drum; drum brake; brake linings</source>
        <translation>zapatas; zapatas de freno; tambor de freno; freno de tambor; balatas de tambor</translation>
    </message>
    <message>
        <source>both shoes laid out as fitted, front of the car to the left</source>
        <translation>ambas zapatas extendidas como van montadas, frente del vehículo a la izquierda</translation>
    </message>
    <message>
        <source>lining edge on</source>
        <translation>forro de canto</translation>
    </message>
    <message>
        <source>drum inside</source>
        <translation>interior del tambor</translation>
    </message>
    <message>
        <source>springs in place, before anything comes off</source>
        <translation>muelles en su lugar, antes de quitar nada</translation>
    </message>
    <message>
        <source>Brake dust harms the lungs: no air hose, no dry brush. Follow the vehicle maker&apos;s procedure and local rules; leave it to licensed people where the law asks.</source>
        <translation>El polvo de freno daña los pulmones: sin manguera de aire, sin cepillo seco. Siga el procedimiento del fabricante del vehículo y las normas locales; déjelo a personas autorizadas donde la ley lo pida.</translation>
    </message>
    <message>
        <source>Thinnest place of the lining, shoe not counted; over the rivet heads where it is riveted.</source>
        <translation>Punto más delgado del forro, sin contar la zapata; sobre las cabezas de los remaches donde va remachado.</translation>
    </message>
    <message>
        <source>Every stop takes a little.</source>
        <translation>Cada frenada se lleva un poco.</translation>
    </message>
    <message>
        <source>shoe width</source>
        <translation>anchura de la zapata</translation>
    </message>
    <message>
        <source>Across the lining.</source>
        <translation>A lo ancho del forro.</translation>
    </message>
    <message>
        <source>lining arc, leading shoe</source>
        <translation>arco del forro, zapata primaria</translation>
    </message>
    <message>
        <source>Along the outside of the lining.</source>
        <translation>Por la cara exterior del forro.</translation>
    </message>
    <message>
        <source>lining arc, trailing shoe</source>
        <translation>arco del forro, zapata secundaria</translation>
    </message>
    <message>
        <source>drum inner diameter</source>
        <translation>diámetro interior del tambor</translation>
    </message>
    <message>
        <source>In three directions, past the lip; the largest figure allowed is cast on the drum.</source>
        <translation>En tres direcciones, más allá del reborde; la cifra máxima permitida está fundida en el tambor.</translation>
    </message>
    <message>
        <source>The linings wear it wider.</source>
        <translation>Los forros lo desgastan y lo agrandan.</translation>
    </message>
    <message>
        <source>shoes</source>
        <translation>zapatas</translation>
    </message>
    <message>
        <source>Count them on both sets.</source>
        <translation>Cuéntelas en ambos juegos.</translation>
    </message>
    <message>
        <source>side of the hand brake lever</source>
        <translation>lado de la palanca del freno de mano</translation>
    </message>
    <message>
        <source>On which shoe and side of the car the lever is riveted.</source>
        <translation>En qué zapata y lado del vehículo está remachada la palanca.</translation>
    </message>
    <message>
        <source>springs by colour and place</source>
        <translation>muelles por color y lugar</translation>
    </message>
    <message>
        <source>From the photo taken before: alike, or which one is not.</source>
        <translation>Según la foto tomada antes: iguales, o cuál no lo es.</translation>
    </message>
    <message>
        <source>as drawn</source>
        <translation>como en el dibujo</translation>
    </message>
    <message>
        <source>mirrored</source>
        <translation>en espejo</translation>
    </message>
    <message>
        <source>one missing</source>
        <translation>falta uno</translation>
    </message>
    <message>
        <source>another spring</source>
        <translation>otro muelle</translation>
    </message>
    <message>
        <source>it must not go back on, and the drum will be scored</source>
        <translation>no debe volver a montarse, y el tambor estará rayado</translation>
    </message>
    <message>
        <source>worn to the rivets</source>
        <translation>gastada hasta los remaches</translation>
    </message>
    <message>
        <source>a cylinder or an axle seal leaks: cure it first</source>
        <translation>pierde un cilindro o un retén de palier: arréglelo primero</translation>
    </message>
    <message>
        <source>they ran hot, or were never adjusted</source>
        <translation>se calentaron demasiado, o nunca se ajustaron</translation>
    </message>
    <message>
        <source>the lining comes off its shoe: it must not go back on</source>
        <translation>el forro se despega de la zapata: no debe volver a montarse</translation>
    </message>
    <message>
        <source>loose lining</source>
        <translation>forro suelto</translation>
    </message>
    <message>
        <source>grit or rivets cut tracks</source>
        <translation>arenilla o remaches abren surcos</translation>
    </message>
    <message>
        <source>scored drum</source>
        <translation>tambor rayado</translation>
    </message>
    <message>
        <source>the drum is wider at its open end</source>
        <translation>el tambor es más ancho en su extremo abierto</translation>
    </message>
    <message>
        <source>bell-mouthed drum</source>
        <translation>tambor acampanado</translation>
    </message>
    <message>
        <source>brake fluid behind the boots</source>
        <translation>líquido de frenos tras los guardapolvos</translation>
    </message>
    <message>
        <source>leaking cylinder</source>
        <translation>cilindro con fuga</translation>
    </message>
    <message>
        <source>one side no longer follows its wear</source>
        <translation>un lado ya no sigue su desgaste</translation>
    </message>
    <message>
        <source>seized adjuster</source>
        <translation>ajustador agarrotado</translation>
    </message>
    <message>
        <source>Self-adjusters of left and right exchanged.</source>
        <translation>Ajustadores automáticos de izquierda y derecha intercambiados.</translation>
    </message>
    <message>
        <source>Shoes of another width.</source>
        <translation>Zapatas de otra anchura.</translation>
    </message>
    <message>
        <source>Leading and trailing shoe exchanged.</source>
        <translation>Zapata primaria y secundaria intercambiadas.</translation>
    </message>
    <message>
        <source>Both wheels of the axle; one side at a time, so that the other shows how it goes.</source>
        <translation>Ambas ruedas del eje; un lado cada vez, para que el otro muestre cómo va.</translation>
    </message>
    <message>
        <source>No air hose on the dust.</source>
        <translation>Sin manguera de aire sobre el polvo.</translation>
    </message>
    <message>
        <source>Adjusted, and the pedal pumped firm, before the car moves.</source>
        <translation>Ajustado, y el pedal bombeado hasta que esté firme, antes de mover el vehículo.</translation>
    </message>
    <message>
        <source>Linings free of grease and finger marks.</source>
        <translation>Forros sin grasa ni huellas de dedos.</translation>
    </message>
    <message>
        <source>Pedal high and firm; the wheels turn without dragging.</source>
        <translation>Pedal alto y firme; las ruedas giran sin rozar.</translation>
    </message>
    <message>
        <source>The park brake takes within the maker&apos;s clicks.</source>
        <translation>El freno de estacionamiento agarra dentro de los clics del fabricante.</translation>
    </message>
    <message>
        <source>It stops straight, and the park brake holds on a slope.</source>
        <translation>Frena recto, y el freno de estacionamiento sujeta en pendiente.</translation>
    </message>
    <message>
        <source>brake shoes drum</source>
        <translation>zapatas y tambor de freno</translation>
    </message>
    <message>
        <source>lamp bulb</source>
        <translation>lámpara</translation>
    </message>
    <message>
        <source>electrical</source>
        <translation>sistema eléctrico</translation>
    </message>
    <message>
        <source>light bulb; headlamp bulb; globe; filament lamp</source>
        <translation>bombilla; foco; bombilla de faro; lámpara de filamento</translation>
    </message>
    <message>
        <source>centre</source>
        <translation>centro</translation>
    </message>
    <message>
        <source>side, base down</source>
        <translation>de lado, casquillo abajo</translation>
    </message>
    <message>
        <source>base, contacts towards you</source>
        <translation>casquillo, contactos hacia usted</translation>
    </message>
    <message>
        <source>printing on the base</source>
        <translation>impresión en el casquillo</translation>
    </message>
    <message>
        <source>A lamp just switched off burns, and a halogen one holds pressure: cool, goggles, no fingers on the glass. Follow the vehicle maker&apos;s procedure and local rules; leave it to licensed people where the law asks.</source>
        <translation>Una lámpara recién apagada quema, y una halógena tiene presión dentro: deje que se enfríe, póngase gafas y no toque el vidrio con los dedos. Siga el procedimiento del fabricante del vehículo y las normas locales; déjelo a personas autorizadas donde la ley lo pida.</translation>
    </message>
    <message>
        <source>A gas-discharge lamp works at a voltage that can kill: leave it to people trained for it. Follow the vehicle maker&apos;s procedure and local rules; leave it to licensed people where the law asks.</source>
        <translation>Una lámpara de descarga de gas trabaja con una tensión que puede matar: déjela a personas formadas para ello. Siga el procedimiento del fabricante del vehículo y las normas locales; déjelo a personas autorizadas donde la ley lo pida.</translation>
    </message>
    <message>
        <source>A short circuit burns: work with the circuit off. Follow the vehicle maker&apos;s procedure and local rules; leave it to licensed people where the law asks.</source>
        <translation>Un cortocircuito quema: trabaje con el circuito sin corriente. Siga el procedimiento del fabricante del vehículo y las normas locales; déjelo a personas autorizadas donde la ley lo pida.</translation>
    </message>
    <message>
        <source>category</source>
        <translation>categoría</translation>
    </message>
    <message>
        <source>UN ECE R37 or FMVSS 108 names the category</source>
        <translation>UN ECE R37 o FMVSS 108 nombra la categoría</translation>
    </message>
    <message>
        <source>As printed on the base, like H7; the letters must be the very same.</source>
        <translation>Como está impresa en el casquillo, como H7; las letras deben ser exactamente las mismas.</translation>
    </message>
    <message>
        <source>rated voltage</source>
        <translation>tensión nominal</translation>
    </message>
    <message>
        <source>From the base.</source>
        <translation>Del casquillo.</translation>
    </message>
    <message>
        <source>rated power</source>
        <translation>potencia nominal</translation>
    </message>
    <message>
        <source>From the base; of two filaments the stronger.</source>
        <translation>Del casquillo; de dos filamentos, el más fuerte.</translation>
    </message>
    <message>
        <source>base and tabs</source>
        <translation>casquillo y lengüetas</translation>
    </message>
    <message>
        <source>Form of the base and where tabs or pins sit.</source>
        <translation>Forma del casquillo y dónde están lengüetas o pitones.</translation>
    </message>
    <message>
        <source>bayonet, level pins</source>
        <translation>bayoneta, pitones a nivel</translation>
    </message>
    <message>
        <source>bayonet, offset pins</source>
        <translation>bayoneta, pitones desplazados</translation>
    </message>
    <message>
        <source>wedge</source>
        <translation>cuña</translation>
    </message>
    <message>
        <source>festoon</source>
        <translation>festón</translation>
    </message>
    <message>
        <source>three tabs</source>
        <translation>tres lengüetas</translation>
    </message>
    <message>
        <source>plastic collar</source>
        <translation>collar de plástico</translation>
    </message>
    <message>
        <source>contacts</source>
        <translation>contactos</translation>
    </message>
    <message>
        <source>colour of the light</source>
        <translation>color de la luz</translation>
    </message>
    <message>
        <source>Of the glass, or of the light where the glass is clear.</source>
        <translation>Del vidrio, o de la luz donde el vidrio es claro.</translation>
    </message>
    <message>
        <source>clear</source>
        <translation>claro</translation>
    </message>
    <message>
        <source>amber</source>
        <translation>ámbar</translation>
    </message>
    <message>
        <source>red</source>
        <translation>rojo</translation>
    </message>
    <message>
        <source>blue-tinted</source>
        <translation>azulado</translation>
    </message>
    <message>
        <source>filament or LED</source>
        <translation>filamento o LED</translation>
    </message>
    <message>
        <source>What gives the light. An LED in a lamp approved for a filament needs its own approval.</source>
        <translation>Lo que da la luz. Un LED en una lámpara homologada para filamento necesita su propia homologación.</translation>
    </message>
    <message>
        <source>filament</source>
        <translation>filamento</translation>
    </message>
    <message>
        <source>LED</source>
        <translation>LED</translation>
    </message>
    <message>
        <source>gas discharge</source>
        <translation>descarga de gas</translation>
    </message>
    <message>
        <source>voltage at the socket</source>
        <translation>tensión en el portalámparas</translation>
    </message>
    <message>
        <source>With the lamp lit, at its own contacts.</source>
        <translation>Con la lámpara encendida, en sus propios contactos.</translation>
    </message>
    <message>
        <source>A burned socket or a poor ground takes volts.</source>
        <translation>Un portalámparas quemado o una masa mala se llevan voltios.</translation>
    </message>
    <message>
        <source>ordinary end of life; soon again means vibration or too many volts</source>
        <translation>fin de vida normal; si se repite pronto, hay vibración o demasiados voltios</translation>
    </message>
    <message>
        <source>broken filament</source>
        <translation>filamento roto</translation>
    </message>
    <message>
        <source>near its end</source>
        <translation>cerca de su fin</translation>
    </message>
    <message>
        <source>blackened glass</source>
        <translation>vidrio ennegrecido</translation>
    </message>
    <message>
        <source>air got in: a crack or a touched glass</source>
        <translation>entró aire: una grieta o un vidrio tocado</translation>
    </message>
    <message>
        <source>milky glass</source>
        <translation>vidrio lechoso</translation>
    </message>
    <message>
        <source>replace the socket too</source>
        <translation>sustituya también el portalámparas</translation>
    </message>
    <message>
        <source>burned base</source>
        <translation>casquillo quemado</translation>
    </message>
    <message>
        <source>flickers, and arcs its socket</source>
        <translation>parpadea, y hace arco en su portalámparas</translation>
    </message>
    <message>
        <source>loose in the holder</source>
        <translation>flojo en el soporte</translation>
    </message>
    <message>
        <source>the wrong lamp glows along with it</source>
        <translation>la lámpara equivocada se enciende con ella</translation>
    </message>
    <message>
        <source>filament bridged</source>
        <translation>filamento puenteado</translation>
    </message>
    <message>
        <source>Level pins for offset ones.</source>
        <translation>Pitones a nivel por desplazados.</translation>
    </message>
    <message>
        <source>One filament where two belong.</source>
        <translation>Un filamento donde van dos.</translation>
    </message>
    <message>
        <source>An LED without approval for this lamp.</source>
        <translation>Un LED sin homologación para esta lámpara.</translation>
    </message>
    <message>
        <source>More watts: socket, wire and lens get hot.</source>
        <translation>Más vatios: portalámparas, cable y lente se calientan.</translation>
    </message>
    <message>
        <source>Clear for amber.</source>
        <translation>Claro por ámbar.</translation>
    </message>
    <message>
        <source>Lamp off and cool before it is touched; no fingers on the glass.</source>
        <translation>Lámpara apagada y fría antes de tocarla; sin tocar el vidrio con los dedos.</translation>
    </message>
    <message>
        <source>A burned socket is replaced, not bent.</source>
        <translation>Un portalámparas quemado se sustituye, no se dobla.</translation>
    </message>
    <message>
        <source>Tabs home in their seat, cap and seal back.</source>
        <translation>Lengüetas encajadas en su asiento, tapa y junta de vuelta.</translation>
    </message>
    <message>
        <source>Beam aimed afterwards: a dazzled driver can&apos;t see the road.</source>
        <translation>Altura del haz regulada después: un conductor deslumbrado no ve la carretera.</translation>
    </message>
    <message>
        <source>Every function of that lamp seen working, no message.</source>
        <translation>Todas las funciones de esa lámpara vistas en marcha, sin aviso.</translation>
    </message>
    <message>
        <source>Voltage at the socket with the lamp lit; beam aim on the board.</source>
        <translation>Tensión en el portalámparas con la lámpara encendida; regulación del haz en el tablero.</translation>
    </message>
    <message>
        <source>Still lit after a drive on a rough road.</source>
        <translation>Sigue encendida tras un recorrido por mal camino.</translation>
    </message>
    <message>
        <source>bulb</source>
        <translation>lámpara</translation>
    </message>
    <message>
        <source>connector, terminal or pigtail</source>
        <translation>conector, terminal o cola de cable</translation>
    </message>
    <message>
        <source>pigtail; terminal; electrical connector; harness repair lead</source>
        <translation>conector; terminal; conector eléctrico; cola de cable; cable de reparación de mazo</translation>
    </message>
    <message>
        <source>mating face, lock at twelve o&apos;clock</source>
        <translation>cara de acople, traba a las doce</translation>
    </message>
    <message>
        <source>wire side, colours visible</source>
        <translation>lado de los cables, colores visibles</translation>
    </message>
    <message>
        <source>lock and seals</source>
        <translation>traba y sellos</translation>
    </message>
    <message>
        <source>Airbag circuits are not probed, cut or spliced: they go off and injure. Follow the vehicle maker&apos;s procedure and local rules; leave it to licensed people where the law asks.</source>
        <translation>Los circuitos de airbag no se sondean, cortan ni empalman: se disparan y hieren. Siga el procedimiento del fabricante del vehículo y las normas locales; déjelo a personas autorizadas donde la ley lo pida.</translation>
    </message>
    <message>
        <source>cavities</source>
        <translation>cavidades</translation>
    </message>
    <message>
        <source>Count them on both parts, empty ones too.</source>
        <translation>Cuente en ambas piezas, también las vacías.</translation>
    </message>
    <message>
        <source>wire section</source>
        <translation>sección del cable</translation>
    </message>
    <message>
        <source>From the print or the loom&apos;s plan; the copper counts, not the jacket.</source>
        <translation>De la impresión o del plano del mazo; cuenta el cobre, no la cubierta.</translation>
    </message>
    <message>
        <source>key and lock</source>
        <translation>guía y traba</translation>
    </message>
    <message>
        <source>Where the lock sits with cavity one at the upper left.</source>
        <translation>Dónde está la traba con la cavidad uno arriba a la izquierda.</translation>
    </message>
    <message>
        <source>cavity order by colour</source>
        <translation>orden de cavidades por color</translation>
    </message>
    <message>
        <source>Photo of the old one beside it, both from the same side: alike, mirrored, or otherwise.</source>
        <translation>Foto del viejo al lado, ambos desde el mismo lado: igual, en espejo o de otro modo.</translation>
    </message>
    <message>
        <source>otherwise</source>
        <translation>de otro modo</translation>
    </message>
    <message>
        <source>drag on a test pin</source>
        <translation>retención de una clavija de prueba</translation>
    </message>
    <message>
        <source>Pull a test pin of the mating size out of the terminal with the balance; the highest reading, in newton.</source>
        <translation>Saque del terminal con la balanza una clavija de prueba del tamaño de acople; la lectura más alta, en newton.</translation>
    </message>
    <message>
        <source>Terminals open when the wrong probe was pushed in.</source>
        <translation>Los terminales se abren cuando se metió la sonda equivocada.</translation>
    </message>
    <message>
        <source>voltage drop under load</source>
        <translation>caída de tensión bajo carga</translation>
    </message>
    <message>
        <source>Across the closed connection, wire side to wire side, with its real load on.</source>
        <translation>A través de la conexión cerrada, de cable a cable, con su carga real.</translation>
    </message>
    <message>
        <source>Corrosion and loose grip raise it.</source>
        <translation>La corrosión y el agarre flojo la suben.</translation>
    </message>
    <message>
        <source>wire seals</source>
        <translation>sellos de cable</translation>
    </message>
    <message>
        <source>Count seals and plugs of empty cavities; 0 where it is not sealed.</source>
        <translation>Cuente sellos y tapones de cavidades vacías; 0 donde no es estanco.</translation>
    </message>
    <message>
        <source>water got in: find the way it came</source>
        <translation>entró agua: busque por dónde</translation>
    </message>
    <message>
        <source>green corrosion</source>
        <translation>corrosión verde</translation>
    </message>
    <message>
        <source>it grips no more and opens on bumps</source>
        <translation>ya no agarra y se abre con los baches</translation>
    </message>
    <message>
        <source>spread terminal</source>
        <translation>terminal abierto</translation>
    </message>
    <message>
        <source>it was never locked, or the second lock is open</source>
        <translation>nunca se trabó, o la segunda traba está abierta</translation>
    </message>
    <message>
        <source>pushed-out pin</source>
        <translation>clavija salida</translation>
    </message>
    <message>
        <source>a seal is missing, or water runs along the wire</source>
        <translation>falta un sello, o corre agua por el cable</translation>
    </message>
    <message>
        <source>water inside</source>
        <translation>agua dentro</translation>
    </message>
    <message>
        <source>a poor contact heated until the plastic went</source>
        <translation>un mal contacto calentó hasta que cedió el plástico</translation>
    </message>
    <message>
        <source>burned</source>
        <translation>quemado</translation>
    </message>
    <message>
        <source>dark spots where the contact rubbed from vibration</source>
        <translation>manchas oscuras donde el contacto rozó por vibración</translation>
    </message>
    <message>
        <source>fretted</source>
        <translation>rozado por vibración</translation>
    </message>
    <message>
        <source>rubbed to the copper: find the edge</source>
        <translation>rozado hasta el cobre: busque el canto</translation>
    </message>
    <message>
        <source>chafed wire</source>
        <translation>cable rozado</translation>
    </message>
    <message>
        <source>it works loose by itself</source>
        <translation>se suelta solo</translation>
    </message>
    <message>
        <source>broken lock</source>
        <translation>traba rota</translation>
    </message>
    <message>
        <source>The face was read mirrored, so that the wires sit in exchanged cavities.</source>
        <translation>La cara se leyó en espejo, así que los cables están en cavidades intercambiadas.</translation>
    </message>
    <message>
        <source>A thinner wire.</source>
        <translation>Un cable más delgado.</translation>
    </message>
    <message>
        <source>Unsealed for sealed.</source>
        <translation>No estanco por estanco.</translation>
    </message>
    <message>
        <source>Gold and tin plating mixed.</source>
        <translation>Dorado y estañado mezclados.</translation>
    </message>
    <message>
        <source>Battery as the maker asks; airbag circuits only by qualified people and only as the maker describes.</source>
        <translation>Batería como pide el fabricante; circuitos de airbag solo por personas cualificadas y solo como describe el fabricante.</translation>
    </message>
    <message>
        <source>The right crimp tool; every crimp tugged.</source>
        <translation>La herramienta de engaste correcta; tirón a cada engaste.</translation>
    </message>
    <message>
        <source>Splices staggered, sealed and out of the bend.</source>
        <translation>Empalmes escalonados, sellados y fuera de la curva.</translation>
    </message>
    <message>
        <source>Loom back in its clips, clear of edges, heat and belts.</source>
        <translation>Mazo de vuelta en sus grapas, lejos de cantos, calor y correas.</translation>
    </message>
    <message>
        <source>Lock and second lock heard and seen.</source>
        <translation>Traba y segunda traba oídas y vistas.</translation>
    </message>
    <message>
        <source>Drop small with the load on.</source>
        <translation>Caída pequeña con la carga puesta.</translation>
    </message>
    <message>
        <source>Wiggled with the meter&apos;s lowest and highest kept: no jump.</source>
        <translation>Movido a mano con el mínimo y el máximo del medidor retenidos: sin salto.</translation>
    </message>
    <message>
        <source>The rough road or the wet of the concern, where that is allowed, without the fault.</source>
        <translation>El mal camino o la lluvia de la queja, donde se permita, sin la avería.</translation>
    </message>
    <message>
        <source>control arm or ball joint</source>
        <translation>brazo de suspensión o rótula</translation>
    </message>
    <message>
        <source>suspension</source>
        <translation>suspensión</translation>
    </message>
    <message>
        <source>control arm; ball joint; wishbone</source>
        <translation>brazo de suspensión; rótula; bandeja; trapecio</translation>
    </message>
    <message>
        <source>upper</source>
        <translation>superior</translation>
    </message>
    <message>
        <source>lower</source>
        <translation>inferior</translation>
    </message>
    <message>
        <source>top, as it sits in the car</source>
        <translation>desde arriba, como va en el vehículo</translation>
    </message>
    <message>
        <source>side</source>
        <translation>de lado</translation>
    </message>
    <message>
        <source>A loaded spring can kill. Follow the vehicle maker&apos;s procedure and local rules; leave it to licensed people where the law asks.</source>
        <translation>Un muelle cargado puede matar. Siga el procedimiento del fabricante del vehículo y las normas locales; déjelo a personas autorizadas donde la ley lo pida.</translation>
    </message>
    <message>
        <source>Steering or suspension that lets go can kill. Follow the vehicle maker&apos;s procedure and local rules; leave it to licensed people where the law asks.</source>
        <translation>Una dirección o suspensión que se suelta puede matar. Siga el procedimiento del fabricante del vehículo y las normas locales; déjelo a personas autorizadas donde la ley lo pida.</translation>
    </message>
    <message>
        <source>large end of the taper</source>
        <translation>extremo grande del cono</translation>
    </message>
    <message>
        <source>At the boot side.</source>
        <translation>En el lado del guardapolvo.</translation>
    </message>
    <message>
        <source>thread of the stud</source>
        <translation>rosca del perno</translation>
    </message>
    <message>
        <source>By thread gauge.</source>
        <translation>Con peine de roscas.</translation>
    </message>
    <message>
        <source>hole of the bush</source>
        <translation>agujero del casquillo</translation>
    </message>
    <message>
        <source>In the inner sleeve.</source>
        <translation>En el tubo interior.</translation>
    </message>
    <message>
        <source>bush to joint</source>
        <translation>del casquillo a la rótula</translation>
    </message>
    <message>
        <source>Centre to centre, straight.</source>
        <translation>De centro a centro, en línea recta.</translation>
    </message>
    <message>
        <source>bush width</source>
        <translation>anchura del casquillo</translation>
    </message>
    <message>
        <source>Over the sleeve.</source>
        <translation>Sobre el tubo.</translation>
    </message>
    <message>
        <source>play of the joint</source>
        <translation>juego de la rótula</translation>
    </message>
    <message>
        <source>Loaded, at the same point before and after.</source>
        <translation>Cargada, en el mismo punto antes y después.</translation>
    </message>
    <message>
        <source>Grows as the socket wears.</source>
        <translation>Crece a medida que se gasta el alojamiento.</translation>
    </message>
    <message>
        <source>shape seen from above</source>
        <translation>forma vista desde arriba</translation>
    </message>
    <message>
        <source>Laid on the old one: which way it bends.</source>
        <translation>Puesto sobre el viejo: hacia dónde se curva.</translation>
    </message>
    <message>
        <source>bends left</source>
        <translation>curva a la izquierda</translation>
    </message>
    <message>
        <source>bends right</source>
        <translation>curva a la derecha</translation>
    </message>
    <message>
        <source>clunks, and the wheel wanders</source>
        <translation>golpea, y la rueda se desvía</translation>
    </message>
    <message>
        <source>loose joint</source>
        <translation>rótula floja</translation>
    </message>
    <message>
        <source>dirt in, grease out</source>
        <translation>entra suciedad, sale grasa</translation>
    </message>
    <message>
        <source>the arm moves when braking</source>
        <translation>el brazo se mueve al frenar</translation>
    </message>
    <message>
        <source>torn bush</source>
        <translation>casquillo roto</translation>
    </message>
    <message>
        <source>it has hit something: look further</source>
        <translation>ha chocado con algo: mire más allá</translation>
    </message>
    <message>
        <source>bent</source>
        <translation>doblado</translation>
    </message>
    <message>
        <source>strength is gone</source>
        <translation>ha perdido resistencia</translation>
    </message>
    <message>
        <source>rust-thinned</source>
        <translation>adelgazado por el óxido</translation>
    </message>
    <message>
        <source>it creaks and wears fast</source>
        <translation>cruje y se gasta rápido</translation>
    </message>
    <message>
        <source>dry joint</source>
        <translation>rótula seca</translation>
    </message>
    <message>
        <source>a bush with pockets has torn at one of them</source>
        <translation>un casquillo con huecos se ha rasgado en uno de ellos</translation>
    </message>
    <message>
        <source>cracked void</source>
        <translation>hueco agrietado</translation>
    </message>
    <message>
        <source>The arm of the other side.</source>
        <translation>El brazo del otro lado.</translation>
    </message>
    <message>
        <source>Another taper.</source>
        <translation>Otro cono.</translation>
    </message>
    <message>
        <source>Another bush.</source>
        <translation>Otro casquillo.</translation>
    </message>
    <message>
        <source>A filled bush for a plain one, or the reverse.</source>
        <translation>Un casquillo relleno por uno simple, o al revés.</translation>
    </message>
    <message>
        <source>Aluminium for steel, with another taper.</source>
        <translation>Aluminio por acero, con otro cono.</translation>
    </message>
    <message>
        <source>Spring load held as the maker says.</source>
        <translation>Carga del muelle retenida como dice el fabricante.</translation>
    </message>
    <message>
        <source>Bush bolts tightened at ride height, new nuts.</source>
        <translation>Pernos de los casquillos apretados a la altura de marcha, tuercas nuevas.</translation>
    </message>
    <message>
        <source>Wheels aligned afterwards.</source>
        <translation>Ruedas alineadas después.</translation>
    </message>
    <message>
        <source>Play gone, alignment on the sheet.</source>
        <translation>Juego desaparecido, alineación en la hoja.</translation>
    </message>
    <message>
        <source>No clunk over a bump.</source>
        <translation>Sin golpe al pasar un resalto.</translation>
    </message>
    <message>
        <source>It runs straight.</source>
        <translation>Marcha recto.</translation>
    </message>
    <message>
        <source>control arm ball joint</source>
        <translation>brazo de suspensión o rótula</translation>
    </message>
    <message>
        <source>coolant hose</source>
        <translation>manguera de refrigerante</translation>
    </message>
    <message>
        <source>cooling</source>
        <translation>refrigeración</translation>
    </message>
    <message>
        <source>radiator hose; heater hose</source>
        <translation>manguera de radiador; manguera de calefacción; manguito</translation>
    </message>
    <message>
        <source>whole hose, flat on the bench</source>
        <translation>manguera entera, plana sobre el banco</translation>
    </message>
    <message>
        <source>both ends</source>
        <translation>ambos extremos</translation>
    </message>
    <message>
        <source>Hot coolant under pressure scalds: open it only when cold. Follow the vehicle maker&apos;s procedure and local rules; leave it to licensed people where the law asks.</source>
        <translation>El refrigerante caliente a presión escalda: abra el circuito solo en frío. Siga el procedimiento del fabricante del vehículo y las normas locales; déjelo a personas autorizadas donde la ley lo pida.</translation>
    </message>
    <message>
        <source>inner diameter, first end</source>
        <translation>diámetro interior, primer extremo</translation>
    </message>
    <message>
        <source>The end nearer the engine.</source>
        <translation>El extremo más cercano al motor.</translation>
    </message>
    <message>
        <source>inner diameter, second end</source>
        <translation>diámetro interior, segundo extremo</translation>
    </message>
    <message>
        <source>The other end.</source>
        <translation>El otro extremo.</translation>
    </message>
    <message>
        <source>length along the curve</source>
        <translation>longitud por la curva</translation>
    </message>
    <message>
        <source>Along the outside of the bends.</source>
        <translation>Por el exterior de las curvas.</translation>
    </message>
    <message>
        <source>wall</source>
        <translation>pared</translation>
    </message>
    <message>
        <source>At the cleaner end.</source>
        <translation>En el extremo más limpio.</translation>
    </message>
    <message>
        <source>shape of the bends</source>
        <translation>forma de las curvas</translation>
    </message>
    <message>
        <source>Laid on the old one: alike, or mirrored.</source>
        <translation>Puesta sobre la vieja: igual, o en espejo.</translation>
    </message>
    <message>
        <source>branches and sensor ports</source>
        <translation>ramales y tomas de sensor</translation>
    </message>
    <message>
        <source>key of the quick connector</source>
        <translation>guía del conector rápido</translation>
    </message>
    <message>
        <source>Where the clip sits, seen into the end; none with a hose clamp.</source>
        <translation>Dónde está la grapa, mirando dentro del extremo; ninguno con abrazadera.</translation>
    </message>
    <message>
        <source>oil or age has weakened it</source>
        <translation>el aceite o la edad la han debilitado</translation>
    </message>
    <message>
        <source>soft</source>
        <translation>blanda</translation>
    </message>
    <message>
        <source>oil gets at it</source>
        <translation>le llega aceite</translation>
    </message>
    <message>
        <source>swollen</source>
        <translation>hinchado</translation>
    </message>
    <message>
        <source>age and heat</source>
        <translation>edad y calor</translation>
    </message>
    <message>
        <source>leaks only under pressure</source>
        <translation>pierde solo a presión</translation>
    </message>
    <message>
        <source>pinhole</source>
        <translation>poro</translation>
    </message>
    <message>
        <source>something moves against it</source>
        <translation>algo se mueve contra ella</translation>
    </message>
    <message>
        <source>rubbed through</source>
        <translation>perforada por roce</translation>
    </message>
    <message>
        <source>the clip no longer holds the bead</source>
        <translation>la grapa ya no sujeta el reborde</translation>
    </message>
    <message>
        <source>broken quick connector</source>
        <translation>conector rápido roto</translation>
    </message>
    <message>
        <source>Bent the other way.</source>
        <translation>Curvada al revés.</translation>
    </message>
    <message>
        <source>A branch is missing.</source>
        <translation>Falta un ramal.</translation>
    </message>
    <message>
        <source>A quick connector with another clip.</source>
        <translation>Un conector rápido con otra grapa.</translation>
    </message>
    <message>
        <source>Cold and without pressure.</source>
        <translation>En frío y sin presión.</translation>
    </message>
    <message>
        <source>Clamp on its old track, behind the bead.</source>
        <translation>Abrazadera en su huella vieja, detrás del reborde.</translation>
    </message>
    <message>
        <source>Clear of belt and exhaust.</source>
        <translation>Lejos de correa y escape.</translation>
    </message>
    <message>
        <source>Pressure test cold, look again hot.</source>
        <translation>Prueba de presión en frío, mire de nuevo en caliente.</translation>
    </message>
    <message>
        <source>Level next morning.</source>
        <translation>Nivel a la mañana siguiente.</translation>
    </message>
    <message>
        <source>crankshaft or camshaft position sensor</source>
        <translation>sensor de posición de cigüeñal o árbol de levas</translation>
    </message>
    <message>
        <source>engine control</source>
        <translation>control del motor</translation>
    </message>
    <message>
        <source>crank sensor; cam sensor; position sensor</source>
        <translation>sensor de cigüeñal; sensor de árbol de levas; sensor de posición</translation>
    </message>
    <message>
        <source>side, flange to tip</source>
        <translation>de lado, de brida a punta</translation>
    </message>
    <message>
        <source>connector face</source>
        <translation>cara del conector</translation>
    </message>
    <message>
        <source>body length from flange to tip</source>
        <translation>longitud del cuerpo de brida a punta</translation>
    </message>
    <message>
        <source>From the sealing face of the flange to the tip.</source>
        <translation>De la cara de sellado de la brida a la punta.</translation>
    </message>
    <message>
        <source>body diameter</source>
        <translation>diámetro del cuerpo</translation>
    </message>
    <message>
        <source>Beside the ring.</source>
        <translation>Junto al anillo.</translation>
    </message>
    <message>
        <source>fixing hole to body axis</source>
        <translation>del agujero de fijación al eje del cuerpo</translation>
    </message>
    <message>
        <source>Nearest edges plus half of both.</source>
        <translation>Bordes más cercanos más la mitad de ambos.</translation>
    </message>
    <message>
        <source>pins of the connector</source>
        <translation>clavijas del conector</translation>
    </message>
    <message>
        <source>key of the connector</source>
        <translation>guía del conector</translation>
    </message>
    <message>
        <source>Where the key sits, seen into the connector.</source>
        <translation>Dónde está la guía, mirando dentro del conector.</translation>
    </message>
    <message>
        <source>lead length</source>
        <translation>longitud del cable</translation>
    </message>
    <message>
        <source>Body to connector.</source>
        <translation>Del cuerpo al conector.</translation>
    </message>
    <message>
        <source>coil resistance</source>
        <translation>resistencia de la bobina</translation>
    </message>
    <message>
        <source>Two-wire type only.</source>
        <translation>Solo el tipo de dos cables.</translation>
    </message>
    <message>
        <source>air gap to the wheel</source>
        <translation>entrehierro hasta la rueda</translation>
    </message>
    <message>
        <source>Fitted, at the tooth that stands nearest.</source>
        <translation>Montado, en el diente más cercano.</translation>
    </message>
    <message>
        <source>the wheel touched it; look at its run-out</source>
        <translation>la rueda lo tocó; mire su alabeo</translation>
    </message>
    <message>
        <source>rubbed tip</source>
        <translation>punta rozada</translation>
    </message>
    <message>
        <source>swarf bends the signal; ask where it comes from</source>
        <translation>las virutas deforman la señal; pregunte de dónde vienen</translation>
    </message>
    <message>
        <source>metal on the tip</source>
        <translation>metal en la punta</translation>
    </message>
    <message>
        <source>oil climbs along the wires</source>
        <translation>el aceite sube por los cables</translation>
    </message>
    <message>
        <source>oil in the connector</source>
        <translation>aceite en el conector</translation>
    </message>
    <message>
        <source>heat or a hammer</source>
        <translation>calor o un martillo</translation>
    </message>
    <message>
        <source>contact comes and goes</source>
        <translation>el contacto va y viene</translation>
    </message>
    <message>
        <source>chafed lead</source>
        <translation>cable pelado</translation>
    </message>
    <message>
        <source>the signal sinks as it warms and returns when it cools</source>
        <translation>la señal baja al calentarse y vuelve al enfriarse</translation>
    </message>
    <message>
        <source>weak when hot</source>
        <translation>débil en caliente</translation>
    </message>
    <message>
        <source>oil comes past and softens the lead</source>
        <translation>pasa aceite y ablanda el cable</translation>
    </message>
    <message>
        <source>flat ring</source>
        <translation>anillo aplastado</translation>
    </message>
    <message>
        <source>the jacket breaks when it is bent</source>
        <translation>la cubierta se rompe al doblarla</translation>
    </message>
    <message>
        <source>heat-hardened</source>
        <translation>endurecido por el calor</translation>
    </message>
    <message>
        <source>A tip some millimetres longer or shorter, in the right box.</source>
        <translation>Una punta unos milímetros más larga o más corta, en la caja correcta.</translation>
    </message>
    <message>
        <source>Three wires for two.</source>
        <translation>Tres cables por dos.</translation>
    </message>
    <message>
        <source>A spacer is missing.</source>
        <translation>Falta un separador.</translation>
    </message>
    <message>
        <source>The two signal wires are exchanged: the signal stands upside down.</source>
        <translation>Los dos cables de señal están intercambiados: la señal queda invertida.</translation>
    </message>
    <message>
        <source>Hole clean, new ring oiled, no hammer.</source>
        <translation>Agujero limpio, anillo nuevo aceitado, sin martillo.</translation>
    </message>
    <message>
        <source>Lead clear of exhaust, belt and starter cable.</source>
        <translation>Cable lejos de escape, correa y cable de arranque.</translation>
    </message>
    <message>
        <source>Learned in again where the maker asks.</source>
        <translation>Aprendido de nuevo donde el fabricante lo pide.</translation>
    </message>
    <message>
        <source>Ten hot restarts.</source>
        <translation>Diez arranques en caliente.</translation>
    </message>
    <message>
        <source>Signal even, cold and hot.</source>
        <translation>Señal pareja, en frío y en caliente.</translation>
    </message>
    <message>
        <source>No code that comes and goes; the relation of crank and camshaft is unchanged.</source>
        <translation>Ningún código que va y viene; la relación de cigüeñal y árbol de levas no ha cambiado.</translation>
    </message>
    <message>
        <source>crank cam sensor</source>
        <translation>sensor de cigüeñal o árbol de levas</translation>
    </message>
    <message>
        <source>drive shaft with CV joints</source>
        <translation>semieje con juntas homocinéticas</translation>
    </message>
    <message>
        <source>driveline</source>
        <translation>transmisión</translation>
    </message>
    <message>
        <source>CV axle; drive shaft; driveshaft; half shaft; CV joint; axle shaft</source>
        <translation>semieje; palier; flecha homocinética; junta homocinética; árbol de transmisión</translation>
    </message>
    <message>
        <source>whole shaft, wheel end to the left</source>
        <translation>semieje entero, extremo de rueda a la izquierda</translation>
    </message>
    <message>
        <source>wheel end, splines and thread</source>
        <translation>extremo de rueda, estrías y rosca</translation>
    </message>
    <message>
        <source>inner end, splines and clip groove</source>
        <translation>extremo interior, estrías y ranura del anillo</translation>
    </message>
    <message>
        <source>A wheel can come off: axle nut and wheel nuts to the maker&apos;s torque. Follow the vehicle maker&apos;s procedure and local rules; leave it to licensed people where the law asks.</source>
        <translation>Una rueda puede soltarse: tuerca de eje y tuercas de rueda al par de apriete del fabricante. Siga el procedimiento del fabricante del vehículo y las normas locales; déjelo a personas autorizadas donde la ley lo pida.</translation>
    </message>
    <message>
        <source>length pushed together</source>
        <translation>longitud comprimido</translation>
    </message>
    <message>
        <source>Both joints straight and pushed in, end to end.</source>
        <translation>Ambas juntas rectas y metidas, de extremo a extremo.</translation>
    </message>
    <message>
        <source>splines at the wheel</source>
        <translation>estrías en la rueda</translation>
    </message>
    <message>
        <source>Count twice, beginning at a paint mark.</source>
        <translation>Cuente dos veces, empezando en una marca de pintura.</translation>
    </message>
    <message>
        <source>splines or bolt holes at the gearbox</source>
        <translation>estrías o agujeros de perno en la caja</translation>
    </message>
    <message>
        <source>seal journal diameter</source>
        <translation>diámetro de la pista del retén</translation>
    </message>
    <message>
        <source>Where the lip of the gearbox seal runs, in two directions.</source>
        <translation>Donde corre el labio del retén de la caja, en dos direcciones.</translation>
    </message>
    <message>
        <source>thread of the stub</source>
        <translation>rosca del extremo</translation>
    </message>
    <message>
        <source>By thread gauge, like M24x1.5.</source>
        <translation>Con peine de roscas, como M24x1.5.</translation>
    </message>
    <message>
        <source>damper weight on the shaft</source>
        <translation>contrapeso amortiguador en el semieje</translation>
    </message>
    <message>
        <source>A ring of iron and rubber clamped on the bar.</source>
        <translation>Un anillo de hierro y goma sujeto a la barra.</translation>
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
        <source>groove for the clip</source>
        <translation>ranura del anillo</translation>
    </message>
    <message>
        <source>At the inner end.</source>
        <translation>En el extremo interior.</translation>
    </message>
    <message>
        <source>grease goes out and grit comes in</source>
        <translation>sale grasa y entra arenilla</translation>
    </message>
    <message>
        <source>split boot</source>
        <translation>fuelle partido</translation>
    </message>
    <message>
        <source>a ring of grease inside the wheel shows where the boot opened</source>
        <translation>un anillo de grasa dentro de la rueda muestra dónde se abrió el fuelle</translation>
    </message>
    <message>
        <source>slung grease</source>
        <translation>grasa esparcida</translation>
    </message>
    <message>
        <source>the outer joint is pitted</source>
        <translation>la junta exterior está picada</translation>
    </message>
    <message>
        <source>clicks on lock</source>
        <translation>chasquidos al girar</translation>
    </message>
    <message>
        <source>the inner joint or the splines have play</source>
        <translation>la junta interior o las estrías tienen juego</translation>
    </message>
    <message>
        <source>clunks on take-up</source>
        <translation>golpe al arrancar la marcha</translation>
    </message>
    <message>
        <source>the balls drop into their own marks and the car shudders on a pull</source>
        <translation>las bolas caen en sus propias marcas y el vehículo tiembla al tirar</translation>
    </message>
    <message>
        <source>pitted races</source>
        <translation>pistas picadas</translation>
    </message>
    <message>
        <source>they rock in the hub</source>
        <translation>se balancean en el cubo</translation>
    </message>
    <message>
        <source>worn splines</source>
        <translation>estrías gastadas</translation>
    </message>
    <message>
        <source>the seal leaks again however new it is</source>
        <translation>el retén vuelve a perder por nuevo que sea</translation>
    </message>
    <message>
        <source>worn seal track</source>
        <translation>pista del retén gastada</translation>
    </message>
    <message>
        <source>The shaft of the other side.</source>
        <translation>El semieje del otro lado.</translation>
    </message>
    <message>
        <source>A tone ring where there was none, or none where there was one.</source>
        <translation>Un anillo de impulsos donde no lo había, o ninguno donde lo había.</translation>
    </message>
    <message>
        <source>One spline more or less.</source>
        <translation>Una estría más o menos.</translation>
    </message>
    <message>
        <source>The clip groove is missing or sits elsewhere.</source>
        <translation>La ranura del anillo falta o está en otro lugar.</translation>
    </message>
    <message>
        <source>Never pulled out by the shaft: the inner joint comes apart.</source>
        <translation>Nunca se saca tirando del semieje: la junta interior se desarma.</translation>
    </message>
    <message>
        <source>The clip is new and clicks home; a tug proves it.</source>
        <translation>El anillo es nuevo y encaja con un clic; un tirón lo demuestra.</translation>
    </message>
    <message>
        <source>Lip of the gearbox seal greased and not cut by the splines.</source>
        <translation>Labio del retén de la caja engrasado y sin cortes de las estrías.</translation>
    </message>
    <message>
        <source>New axle nut, tightened on the ground as the maker says.</source>
        <translation>Tuerca de eje nueva, apretada con el vehículo en el suelo como dice el fabricante.</translation>
    </message>
    <message>
        <source>Gearbox oil topped up to its level.</source>
        <translation>Aceite de la caja completado hasta su nivel.</translation>
    </message>
    <message>
        <source>No leak at the seal, boots clear of everything, wheel speeds alike.</source>
        <translation>Sin fuga en el retén, fuelles lejos de todo, velocidades de rueda iguales.</translation>
    </message>
    <message>
        <source>Figures of eight quiet on both locks, gearbox seal dry after twenty miles.</source>
        <translation>Ochos sin ruido a ambos lados, retén de la caja seco tras veinte millas.</translation>
    </message>
    <message>
        <source>No shudder or click under the pull of the concern; warning lamps stay off.</source>
        <translation>Sin temblor ni chasquido con el tirón de la queja; los testigos siguen apagados.</translation>
    </message>
    <message>
        <source>cv axle</source>
        <translation>semieje homocinético</translation>
    </message>
    <message>
        <source>distributor cap</source>
        <translation>tapa del distribuidor</translation>
    </message>
    <message>
        <source>ignition</source>
        <translation>encendido</translation>
    </message>
    <message>
        <source>cap; dizzy cap</source>
        <translation>tapa; tapa de distribuidor; tapa de delco</translation>
    </message>
    <message>
        <source>inside, locating key at twelve o&apos;clock</source>
        <translation>interior, lengüeta de posición a las doce</translation>
    </message>
    <message>
        <source>outside, tower one at the top</source>
        <translation>exterior, torre uno arriba</translation>
    </message>
    <message>
        <source>Ignition voltage can injure or kill, above all people with a pacemaker: ignition off and key out before touching. Follow the vehicle maker&apos;s procedure and local rules; leave it to licensed people where the law asks.</source>
        <translation>La tensión de encendido puede herir o matar, sobre todo a personas con marcapasos: contacto quitado y llave fuera antes de tocar. Siga el procedimiento del fabricante del vehículo y las normas locales; déjelo a personas autorizadas donde la ley lo pida.</translation>
    </message>
    <message>
        <source>towers</source>
        <translation>torres</translation>
    </message>
    <message>
        <source>inner radius of the terminals</source>
        <translation>radio interior de los terminales</translation>
    </message>
    <message>
        <source>From the centre to a terminal face; half the distance across two opposite faces.</source>
        <translation>Del centro a la cara de un terminal; la mitad de la distancia entre dos caras opuestas.</translation>
    </message>
    <message>
        <source>terminal face height from the rim</source>
        <translation>altura de la cara del terminal desde el borde</translation>
    </message>
    <message>
        <source>From the rim down to the middle of a terminal face.</source>
        <translation>Del borde hacia abajo hasta el medio de la cara de un terminal.</translation>
    </message>
    <message>
        <source>centre button length</source>
        <translation>longitud del carbón central</translation>
    </message>
    <message>
        <source>Button free, from the inside of the cap to its end.</source>
        <translation>Carbón libre, del interior de la tapa a su extremo.</translation>
    </message>
    <message>
        <source>The rotor spring grinds it away.</source>
        <translation>El muelle del rotor lo desgasta.</translation>
    </message>
    <message>
        <source>rim diameter</source>
        <translation>diámetro del borde</translation>
    </message>
    <message>
        <source>Over the spigot that centres the cap, in two directions.</source>
        <translation>Sobre el resalte que centra la tapa, en dos direcciones.</translation>
    </message>
    <message>
        <source>tower height</source>
        <translation>altura de las torres</translation>
    </message>
    <message>
        <source>From the top face of the cap to the top of a tower.</source>
        <translation>De la cara superior de la tapa al extremo de una torre.</translation>
    </message>
    <message>
        <source>angle of tower one from the locating key</source>
        <translation>ángulo de la torre uno desde la lengüeta de posición</translation>
    </message>
    <message>
        <source>Seen from outside, clockwise from the key.</source>
        <translation>Visto desde fuera, en sentido horario desde la lengüeta.</translation>
    </message>
    <message>
        <source>spacing of the clips or screws</source>
        <translation>distancia entre grapas o tornillos</translation>
    </message>
    <message>
        <source>Centre to centre.</source>
        <translation>De centro a centro.</translation>
    </message>
    <message>
        <source>vents</source>
        <translation>respiraderos</translation>
    </message>
    <message>
        <source>form of the towers</source>
        <translation>forma de las torres</translation>
    </message>
    <message>
        <source>A lead that plugs over the tower, or one that goes into it.</source>
        <translation>Un cable que se pone sobre la torre, o uno que entra en ella.</translation>
    </message>
    <message>
        <source>male</source>
        <translation>macho</translation>
    </message>
    <message>
        <source>female</source>
        <translation>hembra</translation>
    </message>
    <message>
        <source>the crust widens the gap and holds moisture</source>
        <translation>la costra agranda la separación y retiene humedad</translation>
    </message>
    <message>
        <source>corroded terminal</source>
        <translation>terminal corroído</translation>
    </message>
    <message>
        <source>the face has been set back by the sparks</source>
        <translation>las chispas han hecho retroceder la cara</translation>
    </message>
    <message>
        <source>burned terminal</source>
        <translation>terminal quemado</translation>
    </message>
    <message>
        <source>two towers share a spark, or one finds its way to ground</source>
        <translation>dos torres comparten una chispa, o una llega a masa</translation>
    </message>
    <message>
        <source>carbon tracking</source>
        <translation>camino de carbón</translation>
    </message>
    <message>
        <source>moisture in the crack leads the spark away, mostly in the wet</source>
        <translation>la humedad en la grieta desvía la chispa, sobre todo con lluvia</translation>
    </message>
    <message>
        <source>the spark has to jump to the rotor before it starts</source>
        <translation>la chispa tiene que saltar al rotor antes de empezar</translation>
    </message>
    <message>
        <source>worn button</source>
        <translation>carbón gastado</translation>
    </message>
    <message>
        <source>the vent or the seal no longer does its work</source>
        <translation>el respiradero o la junta ya no hacen su trabajo</translation>
    </message>
    <message>
        <source>moisture inside</source>
        <translation>humedad dentro</translation>
    </message>
    <message>
        <source>oil passes the shaft seal; cure that first</source>
        <translation>el aceite pasa el retén del árbol; arregle eso primero</translation>
    </message>
    <message>
        <source>oil film</source>
        <translation>película de aceite</translation>
    </message>
    <message>
        <source>acid vapour from the sparks stays inside and eats the terminals</source>
        <translation>el vapor ácido de las chispas queda dentro y corroe los terminales</translation>
    </message>
    <message>
        <source>blocked vent</source>
        <translation>respiradero obstruido</translation>
    </message>
    <message>
        <source>Tower one, or all towers, sit elsewhere.</source>
        <translation>La torre uno, o todas las torres, están en otro lugar.</translation>
    </message>
    <message>
        <source>Towers for leads of the other form.</source>
        <translation>Torres para cables de la otra forma.</translation>
    </message>
    <message>
        <source>Screws where there were clips.</source>
        <translation>Tornillos donde había grapas.</translation>
    </message>
    <message>
        <source>Another height, so that the tip passes beside the terminals.</source>
        <translation>Otra altura, de modo que la punta pasa junto a los terminales sin quedar enfrente.</translation>
    </message>
    <message>
        <source>A plain carbon button for one on a spring, or the reverse.</source>
        <translation>Un carbón simple por uno con muelle, o al revés.</translation>
    </message>
    <message>
        <source>Ignition off, key out before a lead is touched.</source>
        <translation>Contacto quitado, llave fuera antes de tocar un cable.</translation>
    </message>
    <message>
        <source>Leads moved over one at a time, or from a photo.</source>
        <translation>Cables pasados de uno en uno, o según una foto.</translation>
    </message>
    <message>
        <source>Seal and vent are in place.</source>
        <translation>Junta y respiradero están en su lugar.</translation>
    </message>
    <message>
        <source>Both clips snapped; screws started by fingers.</source>
        <translation>Ambas grapas cerradas; tornillos empezados con los dedos.</translation>
    </message>
    <message>
        <source>Leads clear of the hot manifold and of the belt.</source>
        <translation>Cables lejos del colector caliente y de la correa.</translation>
    </message>
    <message>
        <source>Cold start and idle, misfire counters at zero.</source>
        <translation>Arranque en frío y ralentí, contadores de fallos de encendido en cero.</translation>
    </message>
    <message>
        <source>Listen and look for stray sparks in the dark, in damp air as the maker allows.</source>
        <translation>Escuche y busque chispas perdidas a oscuras, con aire húmedo según lo permita el fabricante.</translation>
    </message>
    <message>
        <source>A drive under the conditions of the concern, without a pending code.</source>
        <translation>Un recorrido en las condiciones de la queja, sin código pendiente.</translation>
    </message>
    <message>
        <source>Two neighbouring towers that misfire together: look for tracking, or for two leads exchanged.</source>
        <translation>Dos torres vecinas que fallan juntas: busque un camino de carbón, o dos cables intercambiados.</translation>
    </message>
    <message>
        <source>distributor rotor</source>
        <translation>rotor del distribuidor</translation>
    </message>
    <message>
        <source>rotor arm; rotor button</source>
        <translation>pipa del distribuidor; dedo del distribuidor</translation>
    </message>
    <message>
        <source>top, key at twelve o&apos;clock</source>
        <translation>arriba, lengüeta a las doce</translation>
    </message>
    <message>
        <source>side, tip to the right</source>
        <translation>de lado, punta a la derecha</translation>
    </message>
    <message>
        <source>underside</source>
        <translation>por debajo</translation>
    </message>
    <message>
        <source>tip radius from the shaft axis</source>
        <translation>radio de la punta desde el eje del árbol</translation>
    </message>
    <message>
        <source>From the far wall of the bore to the tip face, less half the bore. Three readings.</source>
        <translation>De la pared lejana del agujero a la cara de la punta, menos medio agujero. Tres lecturas.</translation>
    </message>
    <message>
        <source>Each spark burns a little off the tip, so the old one is shorter.</source>
        <translation>Cada chispa quema un poco la punta, así que la vieja es más corta.</translation>
    </message>
    <message>
        <source>tip protrusion past the body</source>
        <translation>saliente de la punta sobre el cuerpo</translation>
    </message>
    <message>
        <source>From the edge of the plastic to the tip face.</source>
        <translation>Del borde del plástico a la cara de la punta.</translation>
    </message>
    <message>
        <source>Burns back together with the tip radius.</source>
        <translation>Se quema junto con el radio de la punta.</translation>
    </message>
    <message>
        <source>bore diameter</source>
        <translation>diámetro del agujero</translation>
    </message>
    <message>
        <source>The thickest pin that enters by hand without force.</source>
        <translation>El pasador más grueso que entra a mano sin fuerza.</translation>
    </message>
    <message>
        <source>seat depth in the bore</source>
        <translation>profundidad del asiento en el agujero</translation>
    </message>
    <message>
        <source>From the underside down to the shoulder that rests on the shaft.</source>
        <translation>De la cara inferior hasta el hombro que apoya en el árbol.</translation>
    </message>
    <message>
        <source>tip height above the seat</source>
        <translation>altura de la punta sobre el asiento</translation>
    </message>
    <message>
        <source>On a flat plate, at the middle of the tip.</source>
        <translation>Sobre una placa plana, en el medio de la punta.</translation>
    </message>
    <message>
        <source>tip width</source>
        <translation>anchura de la punta</translation>
    </message>
    <message>
        <source>Across the face of the tip that passes the terminals.</source>
        <translation>A lo ancho de la cara de la punta que pasa por los terminales.</translation>
    </message>
    <message>
        <source>contact spring height</source>
        <translation>altura del muelle de contacto</translation>
    </message>
    <message>
        <source>Spring free, nothing pressing on it.</source>
        <translation>Muelle libre, sin nada que lo apriete.</translation>
    </message>
    <message>
        <source>Heat and pressure flatten it.</source>
        <translation>El calor y la presión lo aplanan.</translation>
    </message>
    <message>
        <source>tip angle from the key</source>
        <translation>ángulo de la punta desde la lengüeta</translation>
    </message>
    <message>
        <source>Seen from above, clockwise from the key to the middle of the tip.</source>
        <translation>Visto desde arriba, en sentido horario de la lengüeta al medio de la punta.</translation>
    </message>
    <message>
        <source>fixing holes</source>
        <translation>agujeros de fijación</translation>
    </message>
    <message>
        <source>resistance from centre to tip</source>
        <translation>resistencia del centro a la punta</translation>
    </message>
    <message>
        <source>Probes on the spring and on the tip.</source>
        <translation>Puntas de prueba en el muelle y en la punta.</translation>
    </message>
    <message>
        <source>Climbs when the resistor inside burns out.</source>
        <translation>Sube cuando se quema la resistencia interior.</translation>
    </message>
    <message>
        <source>the spark has to cross a wider gap and asks for more voltage</source>
        <translation>la chispa tiene que cruzar una separación mayor y pide más tensión</translation>
    </message>
    <message>
        <source>burned tip</source>
        <translation>punta quemada</translation>
    </message>
    <message>
        <source>the spark meets resistance before it starts across</source>
        <translation>la chispa encuentra resistencia antes de saltar</translation>
    </message>
    <message>
        <source>the spark runs over the surface instead of to its terminal</source>
        <translation>la chispa corre por la superficie en lugar de ir a su terminal</translation>
    </message>
    <message>
        <source>the spark ends in the shaft, most of all under load</source>
        <translation>la chispa termina en el árbol, sobre todo bajo carga</translation>
    </message>
    <message>
        <source>burned through</source>
        <translation>perforación por quemadura</translation>
    </message>
    <message>
        <source>moisture creeps in and leads the spark away</source>
        <translation>la humedad entra y desvía la chispa</translation>
    </message>
    <message>
        <source>a second gap opens at the centre button</source>
        <translation>se abre una segunda separación en el carbón central</translation>
    </message>
    <message>
        <source>flattened spring</source>
        <translation>muelle aplanado</translation>
    </message>
    <message>
        <source>it ran hot, or a spark went where it should not</source>
        <translation>se calentó demasiado, o una chispa fue donde no debía</translation>
    </message>
    <message>
        <source>heat-browned</source>
        <translation>pardo por el calor</translation>
    </message>
    <message>
        <source>oil from the shaft seal carries dirt that leads the spark astray</source>
        <translation>el aceite del retén del árbol trae suciedad que desvía la chispa</translation>
    </message>
    <message>
        <source>the tip wanders and the gap changes with it</source>
        <translation>la punta se desplaza y la separación cambia con ella</translation>
    </message>
    <message>
        <source>loose on the shaft</source>
        <translation>flojo en el árbol</translation>
    </message>
    <message>
        <source>The tip stands some degrees off, as on a sister engine.</source>
        <translation>La punta está unos grados desviada, como en un motor hermano.</translation>
    </message>
    <message>
        <source>The body is taller or lower.</source>
        <translation>El cuerpo es más alto o más bajo.</translation>
    </message>
    <message>
        <source>The shaft shape is another one.</source>
        <translation>La forma del árbol es otra.</translation>
    </message>
    <message>
        <source>A resistor where there was none, or none where there was one.</source>
        <translation>Una resistencia donde no la había, o ninguna donde la había.</translation>
    </message>
    <message>
        <source>It is for an engine that turns the other way.</source>
        <translation>Es para un motor que gira al revés.</translation>
    </message>
    <message>
        <source>Ignition off, key out, nobody with a pacemaker near the open engine.</source>
        <translation>Contacto quitado, llave fuera, nadie con marcapasos cerca del motor abierto.</translation>
    </message>
    <message>
        <source>Key fully home, no rocking on the shaft.</source>
        <translation>Lengüeta bien encajada, sin balanceo en el árbol.</translation>
    </message>
    <message>
        <source>Screws of the right thread and length, where it is screwed.</source>
        <translation>Tornillos de la rosca y longitud correctas, donde va atornillado.</translation>
    </message>
    <message>
        <source>The tip is never filed to make it fit.</source>
        <translation>La punta nunca se lima para que entre.</translation>
    </message>
    <message>
        <source>Turn the engine over by hand once: nothing touches inside the cap.</source>
        <translation>Gire el motor a mano una vuelta: nada roza dentro de la tapa.</translation>
    </message>
    <message>
        <source>Cold start and fifteen minutes at idle with the misfire counters at zero.</source>
        <translation>Arranque en frío y quince minutos de ralentí con los contadores de fallos de encendido en cero.</translation>
    </message>
    <message>
        <source>Firing lines on the oscilloscope even across the cylinders.</source>
        <translation>Líneas de encendido parejas en el osciloscopio en todos los cilindros.</translation>
    </message>
    <message>
        <source>A drive under the conditions of the concern, without a pending code after it.</source>
        <translation>Un recorrido en las condiciones de la queja, sin código pendiente después.</translation>
    </message>
    <message>
        <source>EGR valve or PCV valve</source>
        <translation>válvula EGR o válvula PCV</translation>
    </message>
    <message>
        <source>exhaust</source>
        <translation>escape</translation>
    </message>
    <message>
        <source>EGR valve; PCV valve; exhaust gas recirculation valve; crankcase ventilation valve</source>
        <translation>válvula EGR; válvula PCV; válvula de recirculación de gases; válvula de ventilación del cárter</translation>
    </message>
    <message>
        <source>mounting face, square on</source>
        <translation>cara de montaje, de frente</translation>
    </message>
    <message>
        <source>side, connector or hose end</source>
        <translation>de lado, extremo de conector o manguera</translation>
    </message>
    <message>
        <source>stem and seat</source>
        <translation>vástago y asiento</translation>
    </message>
    <message>
        <source>ports</source>
        <translation>tomas</translation>
    </message>
    <message>
        <source>Count every opening, coolant and vacuum too.</source>
        <translation>Cuente todas las aberturas, también refrigerante y vacío.</translation>
    </message>
    <message>
        <source>shape of the gasket</source>
        <translation>forma de la junta</translation>
    </message>
    <message>
        <source>New gasket laid on the old face: alike, mirrored, or another.</source>
        <translation>Junta nueva puesta sobre la cara vieja: igual, en espejo u otra.</translation>
    </message>
    <message>
        <source>another</source>
        <translation>otra</translation>
    </message>
    <message>
        <source>0 where it has no plug.</source>
        <translation>0 donde no tiene enchufe.</translation>
    </message>
    <message>
        <source>stroke of the stem</source>
        <translation>carrera del vástago</translation>
    </message>
    <message>
        <source>From shut to fully open, moved as the maker allows.</source>
        <translation>De cerrada a totalmente abierta, movida como lo permite el fabricante.</translation>
    </message>
    <message>
        <source>Coke and gum stop it short.</source>
        <translation>La carbonilla y la goma la acortan.</translation>
    </message>
    <message>
        <source>vacuum lost at the seat in one minute</source>
        <translation>vacío perdido en el asiento en un minuto</translation>
    </message>
    <message>
        <source>Vacuum put on the shut valve, held for one minute.</source>
        <translation>Vacío puesto en la válvula cerrada, mantenido un minuto.</translation>
    </message>
    <message>
        <source>A coked seat no longer shuts.</source>
        <translation>Un asiento con carbonilla ya no cierra.</translation>
    </message>
    <message>
        <source>arrow for the flow</source>
        <translation>flecha del flujo</translation>
    </message>
    <message>
        <source>Which way it points with the print upright; none where there is none.</source>
        <translation>Hacia dónde apunta con la impresión derecha; ninguno donde no la hay.</translation>
    </message>
    <message>
        <source>hard soot on stem and seat: clean the passage too</source>
        <translation>hollín duro en vástago y asiento: limpie también el conducto</translation>
    </message>
    <message>
        <source>coked</source>
        <translation>con carbonilla</translation>
    </message>
    <message>
        <source>rough idle and stalls, or oil drawn in</source>
        <translation>ralentí irregular y se cala, o aspira aceite</translation>
    </message>
    <message>
        <source>stuck open</source>
        <translation>atascada abierta</translation>
    </message>
    <message>
        <source>no flow: knock under load, or the crankcase builds pressure</source>
        <translation>sin flujo: detonación bajo carga, o el cárter acumula presión</translation>
    </message>
    <message>
        <source>stuck shut</source>
        <translation>atascada cerrada</translation>
    </message>
    <message>
        <source>it hisses and no longer follows</source>
        <translation>silba y ya no obedece</translation>
    </message>
    <message>
        <source>split diaphragm</source>
        <translation>membrana rajada</translation>
    </message>
    <message>
        <source>a PCV valve that does not rattle when shaken is gummed up</source>
        <translation>una válvula PCV que no suena al agitarla está engomada</translation>
    </message>
    <message>
        <source>no rattle</source>
        <translation>no suena al agitar</translation>
    </message>
    <message>
        <source>sludge fills hose and valve</source>
        <translation>el lodo llena manguera y válvula</translation>
    </message>
    <message>
        <source>oil-choked</source>
        <translation>atascada de aceite</translation>
    </message>
    <message>
        <source>The calibrated hole inside has another size.</source>
        <translation>El orificio calibrado interior tiene otro tamaño.</translation>
    </message>
    <message>
        <source>The position sensor has another curve though the plug fits.</source>
        <translation>El sensor de posición tiene otra curva aunque el enchufe entra.</translation>
    </message>
    <message>
        <source>A gasket face of another engine.</source>
        <translation>Una cara de junta de otro motor.</translation>
    </message>
    <message>
        <source>Exhaust parts burn: let it cool.</source>
        <translation>Las piezas de escape queman: deje enfriar.</translation>
    </message>
    <message>
        <source>The passage is cleaned as well, crumbs kept out of the engine.</source>
        <translation>El conducto también se limpia, sin que caigan restos en el motor.</translation>
    </message>
    <message>
        <source>Hoses sound and on their stubs; new gasket.</source>
        <translation>Mangueras sanas y en sus tomas; junta nueva.</translation>
    </message>
    <message>
        <source>Learned positions reset where the maker asks.</source>
        <translation>Posiciones aprendidas restablecidas donde el fabricante lo pide.</translation>
    </message>
    <message>
        <source>Idle even; position commanded and position reported agree.</source>
        <translation>Ralentí parejo; posición ordenada y posición informada coinciden.</translation>
    </message>
    <message>
        <source>The self-test of that system has run, no pending code.</source>
        <translation>La autoprueba de ese sistema se ha ejecutado, sin código pendiente.</translation>
    </message>
    <message>
        <source>Oil use watched until the next service.</source>
        <translation>Consumo de aceite vigilado hasta el próximo servicio.</translation>
    </message>
    <message>
        <source>egr pcv valve</source>
        <translation>válvula EGR o PCV</translation>
    </message>
    <message>
        <source>engine or gearbox mount</source>
        <translation>soporte de motor o de caja de cambios</translation>
    </message>
    <message>
        <source>engine</source>
        <translation>motor</translation>
    </message>
    <message>
        <source>engine mount; motor mount; gearbox mount; transmission mount; torque mount</source>
        <translation>soporte de motor; taco de motor; soporte de caja; soporte de transmisión; tirante de par</translation>
    </message>
    <message>
        <source>front</source>
        <translation>delantero</translation>
    </message>
    <message>
        <source>rear</source>
        <translation>trasero</translation>
    </message>
    <message>
        <source>gearbox</source>
        <translation>caja de cambios</translation>
    </message>
    <message>
        <source>torque stay</source>
        <translation>tirante de par</translation>
    </message>
    <message>
        <source>side, as fitted</source>
        <translation>de lado, como va montado</translation>
    </message>
    <message>
        <source>top, dowel at twelve o&apos;clock</source>
        <translation>desde arriba, pitón a las doce</translation>
    </message>
    <message>
        <source>An engine that drops crushes: hold it from above or below before a bolt is loosened. Follow the vehicle maker&apos;s procedure and local rules; leave it to licensed people where the law asks.</source>
        <translation>Un motor que cae aplasta: sujételo desde arriba o desde abajo antes de aflojar un perno. Siga el procedimiento del fabricante del vehículo y las normas locales; déjelo a personas autorizadas donde la ley lo pida.</translation>
    </message>
    <message>
        <source>centres of the bolt holes</source>
        <translation>distancia entre centros de los agujeros de perno</translation>
    </message>
    <message>
        <source>Hole centre to hole centre; note which pair.</source>
        <translation>De centro de agujero a centro de agujero; anote qué par.</translation>
    </message>
    <message>
        <source>height without load</source>
        <translation>altura sin carga</translation>
    </message>
    <message>
        <source>Foot to bearing face, off the car.</source>
        <translation>Del pie a la cara de apoyo, fuera del vehículo.</translation>
    </message>
    <message>
        <source>Rubber sets and fluid leaks out, so the old one is lower.</source>
        <translation>La goma cede y el fluido se pierde, así que el viejo es más bajo.</translation>
    </message>
    <message>
        <source>Diameter and pitch by thread gauge, like M12x1.25; none where it is only bored.</source>
        <translation>Diámetro y paso con peine de roscas, como M12x1.25; ninguno donde solo hay agujero.</translation>
    </message>
    <message>
        <source>rubber, fluid or switched</source>
        <translation>goma, fluido o conmutado</translation>
    </message>
    <message>
        <source>Seen and felt: a fluid one gurgles or weeps, a switched one has a plug or a vacuum port.</source>
        <translation>Visto y palpado: uno de fluido gorgotea o rezuma, uno conmutado tiene enchufe o toma de vacío.</translation>
    </message>
    <message>
        <source>rubber</source>
        <translation>goma</translation>
    </message>
    <message>
        <source>fluid</source>
        <translation>fluido</translation>
    </message>
    <message>
        <source>vacuum</source>
        <translation>vacío</translation>
    </message>
    <message>
        <source>ports and plugs</source>
        <translation>tomas y enchufes</translation>
    </message>
    <message>
        <source>place of the locating pin</source>
        <translation>lugar del pasador de posición</translation>
    </message>
    <message>
        <source>As on a clock face seen from above; none where there is none.</source>
        <translation>Como en la esfera de un reloj vista desde arriba; ninguno donde no lo hay.</translation>
    </message>
    <message>
        <source>12</source>
        <translation>12</translation>
    </message>
    <message>
        <source>3</source>
        <translation>3</translation>
    </message>
    <message>
        <source>6</source>
        <translation>6</translation>
    </message>
    <message>
        <source>9</source>
        <translation>9</translation>
    </message>
    <message>
        <source>bracket</source>
        <translation>soporte</translation>
    </message>
    <message>
        <source>Whether it comes with its bracket.</source>
        <translation>Si viene con su soporte.</translation>
    </message>
    <message>
        <source>with bracket</source>
        <translation>con soporte</translation>
    </message>
    <message>
        <source>without bracket</source>
        <translation>sin soporte</translation>
    </message>
    <message>
        <source>the engine sits low and something touches</source>
        <translation>el motor queda bajo y algo toca</translation>
    </message>
    <message>
        <source>collapsed</source>
        <translation>hundido</translation>
    </message>
    <message>
        <source>thumps when the drive is taken up</source>
        <translation>golpea al tomar la marcha</translation>
    </message>
    <message>
        <source>torn</source>
        <translation>desgarrado</translation>
    </message>
    <message>
        <source>it shakes at idle</source>
        <translation>tiembla a ralentí</translation>
    </message>
    <message>
        <source>leaks fluid</source>
        <translation>pierde fluido</translation>
    </message>
    <message>
        <source>find the leak first, or the new one swells as well</source>
        <translation>busque primero la fuga, o el nuevo se hincha también</translation>
    </message>
    <message>
        <source>the engine is held by its stop alone</source>
        <translation>al motor solo lo sujeta su tope</translation>
    </message>
    <message>
        <source>separated</source>
        <translation>despegado</translation>
    </message>
    <message>
        <source>no knock, but every vibration comes through</source>
        <translation>sin golpe, pero pasa toda vibración</translation>
    </message>
    <message>
        <source>hardened</source>
        <translation>endurecido</translation>
    </message>
    <message>
        <source>For the other gearbox.</source>
        <translation>Para la otra caja de cambios.</translation>
    </message>
    <message>
        <source>Solid rubber for a fluid one: shakes at idle.</source>
        <translation>Goma maciza por uno de fluido: tiembla a ralentí.</translation>
    </message>
    <message>
        <source>With or without its bracket.</source>
        <translation>Con o sin su soporte.</translation>
    </message>
    <message>
        <source>Taller or lower than age explains: exhaust and shafts come to stand askew.</source>
        <translation>Más alto o más bajo de lo que explica la edad: escape y semiejes quedan torcidos.</translation>
    </message>
    <message>
        <source>Engine supported over a wide pad before the bolts come out; no hand under it.</source>
        <translation>Motor apoyado sobre un taco ancho antes de sacar los pernos; ninguna mano debajo.</translation>
    </message>
    <message>
        <source>Bolts left loose until the engine has settled, then to the maker&apos;s torque.</source>
        <translation>Pernos flojos hasta que el motor se asiente, después al par de apriete del fabricante.</translation>
    </message>
    <message>
        <source>Clearance of exhaust, hoses and fan looked at all round.</source>
        <translation>Holgura de escape, mangueras y ventilador comprobada por todos lados.</translation>
    </message>
    <message>
        <source>New bolts where the maker says.</source>
        <translation>Pernos nuevos donde lo dice el fabricante.</translation>
    </message>
    <message>
        <source>Idle in gear with everything switched on: no shake, no buzz, exhaust touches nothing.</source>
        <translation>Ralentí con marcha puesta y todo encendido: sin temblor, sin zumbido, el escape no toca nada.</translation>
    </message>
    <message>
        <source>Drive taken up forward and back without a thump.</source>
        <translation>Marcha tomada hacia delante y hacia atrás sin golpe.</translation>
    </message>
    <message>
        <source>engine mount</source>
        <translation>soporte de motor</translation>
    </message>
    <message>
        <source>fuel filter</source>
        <translation>filtro de combustible</translation>
    </message>
    <message>
        <source>fuel</source>
        <translation>combustible</translation>
    </message>
    <message>
        <source>inline filter; fuel strainer; diesel filter</source>
        <translation>filtro en línea; filtro de gasolina; filtro de diésel</translation>
    </message>
    <message>
        <source>side, arrow visible</source>
        <translation>de lado, flecha visible</translation>
    </message>
    <message>
        <source>cut open or emptied, where it tells something</source>
        <translation>cortado o vaciado, donde diga algo</translation>
    </message>
    <message>
        <source>Fuel and its vapour burn, and fuel under pressure cuts skin: no sparks, release the pressure first. Follow the vehicle maker&apos;s procedure and local rules; leave it to licensed people where the law asks.</source>
        <translation>El combustible y su vapor arden, y el combustible a presión corta la piel: sin chispas, descargue primero la presión. Siga el procedimiento del fabricante del vehículo y las normas locales; déjelo a personas autorizadas donde la ley lo pida.</translation>
    </message>
    <message>
        <source>inlet diameter</source>
        <translation>diámetro de entrada</translation>
    </message>
    <message>
        <source>Over the pipe or the bead where the line locks, in two directions.</source>
        <translation>Sobre el tubo o el reborde donde traba la línea, en dos direcciones.</translation>
    </message>
    <message>
        <source>outlet diameter</source>
        <translation>diámetro de salida</translation>
    </message>
    <message>
        <source>Where the bracket holds it.</source>
        <translation>Donde lo sujeta el soporte.</translation>
    </message>
    <message>
        <source>length over the pipes</source>
        <translation>longitud sobre los tubos</translation>
    </message>
    <message>
        <source>End of pipe to end of pipe.</source>
        <translation>De extremo de tubo a extremo de tubo.</translation>
    </message>
    <message>
        <source>Count every opening, drain and heater too.</source>
        <translation>Cuente todas las aberturas, también desagüe y calentador.</translation>
    </message>
    <message>
        <source>flow arrow</source>
        <translation>flecha de flujo</translation>
    </message>
    <message>
        <source>pressure regulator inside</source>
        <translation>regulador de presión dentro</translation>
    </message>
    <message>
        <source>A third line, or the print, tells of one.</source>
        <translation>Lo delata una tercera línea, o la impresión.</translation>
    </message>
    <message>
        <source>pressure falls away on a long pull</source>
        <translation>la presión cae en un tramo largo de carga</translation>
    </message>
    <message>
        <source>blocked</source>
        <translation>obstruida</translation>
    </message>
    <message>
        <source>dirt from a tired pump or from the tank passes through</source>
        <translation>pasa suciedad de una bomba cansada o del depósito</translation>
    </message>
    <message>
        <source>black outflow</source>
        <translation>salida negra</translation>
    </message>
    <message>
        <source>the tank or a line rusts: the next filter fills as fast</source>
        <translation>el depósito o una línea se oxida: el próximo filtro se llena igual de rápido</translation>
    </message>
    <message>
        <source>rust inside</source>
        <translation>óxido dentro</translation>
    </message>
    <message>
        <source>the fuel carried water; on a diesel it eats the pump</source>
        <translation>el combustible traía agua; en un diésel se come la bomba</translation>
    </message>
    <message>
        <source>the paper gave way and lets dirt past</source>
        <translation>el papel cedió y deja pasar suciedad</translation>
    </message>
    <message>
        <source>blown pleats</source>
        <translation>pliegues reventados</translation>
    </message>
    <message>
        <source>it may leak under pressure</source>
        <translation>puede perder a presión</translation>
    </message>
    <message>
        <source>rusted shell</source>
        <translation>carcasa oxidada</translation>
    </message>
    <message>
        <source>the line may slip off under pressure</source>
        <translation>la línea puede salirse a presión</translation>
    </message>
    <message>
        <source>broken quick lock</source>
        <translation>traba rápida rota</translation>
    </message>
    <message>
        <source>The quick lock is one size up or down.</source>
        <translation>La traba rápida es una medida mayor o menor.</translation>
    </message>
    <message>
        <source>A regulator inside where there was none, or none where there was one.</source>
        <translation>Un regulador dentro donde no lo había, o ninguno donde lo había.</translation>
    </message>
    <message>
        <source>A diesel filter without its drain or heater port.</source>
        <translation>Un filtro de diésel sin su toma de desagüe o de calentador.</translation>
    </message>
    <message>
        <source>Pressure released, no flame or spark, rags at hand.</source>
        <translation>Presión descargada, sin llama ni chispa, trapos a mano.</translation>
    </message>
    <message>
        <source>Every line clicks home and holds when it is tugged.</source>
        <translation>Cada línea de combustible encaja con un clic y aguanta un tirón.</translation>
    </message>
    <message>
        <source>The arrow points towards the engine.</source>
        <translation>La flecha apunta hacia el motor.</translation>
    </message>
    <message>
        <source>The ground strap is back, where there is one.</source>
        <translation>La trenza de masa vuelve a estar puesta, donde la hay.</translation>
    </message>
    <message>
        <source>A diesel is bled as its maker says.</source>
        <translation>Un diésel se purga como dice su fabricante.</translation>
    </message>
    <message>
        <source>No leak with the engine running, and none after it was switched off.</source>
        <translation>Sin fuga con el motor en marcha, ni después de pararlo.</translation>
    </message>
    <message>
        <source>Fuel pressure holds under load.</source>
        <translation>La presión de combustible se mantiene bajo carga.</translation>
    </message>
    <message>
        <source>A long pull without loss of power.</source>
        <translation>Un tramo largo de carga sin pérdida de potencia.</translation>
    </message>
    <message>
        <source>fuel pump or module</source>
        <translation>bomba o módulo de combustible</translation>
    </message>
    <message>
        <source>fuel pump module; in-tank pump</source>
        <translation>módulo de bomba de combustible; bomba de gasolina; bomba en el depósito</translation>
    </message>
    <message>
        <source>whole module</source>
        <translation>módulo entero</translation>
    </message>
    <message>
        <source>ports and plug</source>
        <translation>tomas y enchufe</translation>
    </message>
    <message>
        <source>strainer</source>
        <translation>colador</translation>
    </message>
    <message>
        <source>height of the module</source>
        <translation>altura del módulo</translation>
    </message>
    <message>
        <source>Seat to bottom, spring free.</source>
        <translation>Del asiento al fondo, muelle libre.</translation>
    </message>
    <message>
        <source>hoses and ports</source>
        <translation>mangueras y tomas</translation>
    </message>
    <message>
        <source>side of the float arm</source>
        <translation>lado del brazo del flotador</translation>
    </message>
    <message>
        <source>Seen from the plug.</source>
        <translation>Visto desde el enchufe.</translation>
    </message>
    <message>
        <source>pressure at the rail</source>
        <translation>presión en la rampa</translation>
    </message>
    <message>
        <source>At idle and under load.</source>
        <translation>A ralentí y bajo carga.</translation>
    </message>
    <message>
        <source>Sinks as the brushes wear.</source>
        <translation>Baja a medida que se gastan las escobillas.</translation>
    </message>
    <message>
        <source>delivery in fifteen seconds</source>
        <translation>caudal en quince segundos</translation>
    </message>
    <message>
        <source>As the maker describes it.</source>
        <translation>Como lo describe el fabricante.</translation>
    </message>
    <message>
        <source>Sinks with a blocked strainer.</source>
        <translation>Baja con un colador obstruido.</translation>
    </message>
    <message>
        <source>current</source>
        <translation>corriente</translation>
    </message>
    <message>
        <source>Running at pressure.</source>
        <translation>En marcha a presión.</translation>
    </message>
    <message>
        <source>Climbs or jags as it wears.</source>
        <translation>Sube o da saltos a medida que se gasta.</translation>
    </message>
    <message>
        <source>worn, or starved by its strainer</source>
        <translation>gastada, o sin suministro por su colador</translation>
    </message>
    <message>
        <source>noisy</source>
        <translation>ruidosa</translation>
    </message>
    <message>
        <source>starts after a knock on the tank</source>
        <translation>arranca tras un golpe en el depósito</translation>
    </message>
    <message>
        <source>dirt in the tank: clean it</source>
        <translation>suciedad en el depósito: límpielo</translation>
    </message>
    <message>
        <source>blocked strainer</source>
        <translation>colador obstruido</translation>
    </message>
    <message>
        <source>repair the plug as well</source>
        <translation>repare también el enchufe</translation>
    </message>
    <message>
        <source>burned connector</source>
        <translation>conector quemado</translation>
    </message>
    <message>
        <source>long cranking after standing</source>
        <translation>arranque largo tras estar parado</translation>
    </message>
    <message>
        <source>check valve leaks</source>
        <translation>válvula antirretorno con fuga</translation>
    </message>
    <message>
        <source>gone when cool</source>
        <translation>desaparece al enfriarse</translation>
    </message>
    <message>
        <source>the new pump would choke on it: clean the tank first</source>
        <translation>la bomba nueva se ahogaría con él: limpie antes el depósito</translation>
    </message>
    <message>
        <source>rust in the tank</source>
        <translation>óxido en el depósito</translation>
    </message>
    <message>
        <source>Another pressure class.</source>
        <translation>Otra clase de presión.</translation>
    </message>
    <message>
        <source>A sender with another range: the gauge reads wrong.</source>
        <translation>Un aforador con otro margen: el indicador marca mal.</translation>
    </message>
    <message>
        <source>Without a return where there was one.</source>
        <translation>Sin retorno donde lo había.</translation>
    </message>
    <message>
        <source>The seal of the lock ring has another section.</source>
        <translation>La junta del anillo de cierre tiene otra sección.</translation>
    </message>
    <message>
        <source>Ventilated, no sparks, tank low.</source>
        <translation>Ventilado, sin chispas, depósito bajo.</translation>
    </message>
    <message>
        <source>New seal, ring home, no smell afterwards.</source>
        <translation>Junta nueva, anillo encajado, sin olor después.</translation>
    </message>
    <message>
        <source>Dirt brushed and wiped away before the tank is opened.</source>
        <translation>Suciedad cepillada y limpiada antes de abrir el depósito.</translation>
    </message>
    <message>
        <source>A burned plug is renewed with its terminals, not reused.</source>
        <translation>Un conector quemado se cambia con sus terminales, no se reutiliza.</translation>
    </message>
    <message>
        <source>Pressure under load and ten minutes after switching off.</source>
        <translation>Presión bajo carga y diez minutos después de apagar.</translation>
    </message>
    <message>
        <source>Hot restart under the conditions of the concern.</source>
        <translation>Arranque en caliente en las condiciones de la queja.</translation>
    </message>
    <message>
        <source>Voltage drop on feed and ground small, the gauge reads right, no smell.</source>
        <translation>Caída de tensión en alimentación y masa pequeña, el indicador marca bien, sin olor.</translation>
    </message>
    <message>
        <source>fuel pump</source>
        <translation>bomba de combustible</translation>
    </message>
    <message>
        <source>fuse</source>
        <translation>fusible</translation>
    </message>
    <message>
        <source>blade fuse; fusible link</source>
        <translation>fusible de cuchilla; cable fusible</translation>
    </message>
    <message>
        <source>print and rating</source>
        <translation>impresión y valor</translation>
    </message>
    <message>
        <source>both blades</source>
        <translation>ambas cuchillas</translation>
    </message>
    <message>
        <source>the wire inside, against the light</source>
        <translation>el hilo interior, a contraluz</translation>
    </message>
    <message>
        <source>A fuse larger than named, or a wire in its place, sets the loom on fire. Follow the vehicle maker&apos;s procedure and local rules; leave it to licensed people where the law asks.</source>
        <translation>Un fusible mayor que el indicado, o un alambre en su lugar, incendia el mazo de cables. Siga el procedimiento del fabricante del vehículo y las normas locales; déjelo a personas autorizadas donde la ley lo pida.</translation>
    </message>
    <message>
        <source>Read from the fuse and from the plan of the box, not from what was in the socket.</source>
        <translation>Leída del fusible y del plano de la caja, no de lo que había en el portafusible.</translation>
    </message>
    <message>
        <source>form</source>
        <translation>forma</translation>
    </message>
    <message>
        <source>ISO 8820 names the forms</source>
        <translation>ISO 8820 nombra las formas</translation>
    </message>
    <message>
        <source>Size and height of the body; blades laid side by side.</source>
        <translation>Tamaño y altura del cuerpo; cuchillas puestas lado a lado.</translation>
    </message>
    <message>
        <source>micro</source>
        <translation>micro</translation>
    </message>
    <message>
        <source>mini</source>
        <translation>mini</translation>
    </message>
    <message>
        <source>low-profile mini</source>
        <translation>mini de perfil bajo</translation>
    </message>
    <message>
        <source>regular</source>
        <translation>normal</translation>
    </message>
    <message>
        <source>maxi</source>
        <translation>maxi</translation>
    </message>
    <message>
        <source>bolted</source>
        <translation>atornillado</translation>
    </message>
    <message>
        <source>cartridge</source>
        <translation>cartucho</translation>
    </message>
    <message>
        <source>time class</source>
        <translation>clase de tiempo</translation>
    </message>
    <message>
        <source>From the print or the plan: quick, or made to bear a starting current.</source>
        <translation>De la impresión o el plano: rápido, o hecho para soportar una corriente de arranque.</translation>
    </message>
    <message>
        <source>quick</source>
        <translation>rápido</translation>
    </message>
    <message>
        <source>delayed</source>
        <translation>lento</translation>
    </message>
    <message>
        <source>current of the circuit</source>
        <translation>corriente del circuito</translation>
    </message>
    <message>
        <source>Clamp around the wire, or in place of the fuse as the meter allows, all loads on.</source>
        <translation>Pinza alrededor del cable, o en lugar del fusible según lo permita el medidor, todas las cargas puestas.</translation>
    </message>
    <message>
        <source>A tired motor or a rubbed wire raises it.</source>
        <translation>Un motor cansado o un cable rozado la sube.</translation>
    </message>
    <message>
        <source>a small gap in the wire: some overload over some time</source>
        <translation>un hueco pequeño en el hilo: algo de sobrecarga durante algún tiempo</translation>
    </message>
    <message>
        <source>blown clean</source>
        <translation>fundido limpio</translation>
    </message>
    <message>
        <source>a dark, splashed inside: a dead short</source>
        <translation>un interior oscuro y salpicado: un cortocircuito franco</translation>
    </message>
    <message>
        <source>blown black</source>
        <translation>fundido negro</translation>
    </message>
    <message>
        <source>the wire broke from many warm and cold turns, and there may be no fault</source>
        <translation>el hilo se rompió tras muchas vueltas de calor y frío, y puede no haber avería</translation>
    </message>
    <message>
        <source>cracked by heat</source>
        <translation>agrietado por calor</translation>
    </message>
    <message>
        <source>the grip of the socket is poor and heats</source>
        <translation>el agarre del portafusible es malo y calienta</translation>
    </message>
    <message>
        <source>melted plastic</source>
        <translation>plástico fundido</translation>
    </message>
    <message>
        <source>the socket&apos;s springs have opened</source>
        <translation>los muelles del portafusible se han abierto</translation>
    </message>
    <message>
        <source>loose grip</source>
        <translation>agarre flojo</translation>
    </message>
    <message>
        <source>One rating larger so that it holds.</source>
        <translation>Un valor mayor para que aguante.</translation>
    </message>
    <message>
        <source>Low-profile for the taller one: it seems home and is not.</source>
        <translation>Perfil bajo por el más alto: parece encajado y no lo está.</translation>
    </message>
    <message>
        <source>Quick for delayed.</source>
        <translation>Rápido por lento.</translation>
    </message>
    <message>
        <source>Never a larger one, never a wire: find what made it blow first.</source>
        <translation>Nunca uno mayor, nunca un alambre: busque primero qué lo fundió.</translation>
    </message>
    <message>
        <source>Circuit off before it is pushed in.</source>
        <translation>Circuito sin corriente antes de meterlo.</translation>
    </message>
    <message>
        <source>Grip of the socket felt on both blades.</source>
        <translation>Agarre del portafusible palpado en ambas cuchillas.</translation>
    </message>
    <message>
        <source>Current below the rating with every load on.</source>
        <translation>Corriente por debajo del valor con todas las cargas puestas.</translation>
    </message>
    <message>
        <source>Wiggled along the loom without a jump; drop over the fuse small and alike to its neighbours.</source>
        <translation>Movido a mano a lo largo del mazo sin salto; caída en el fusible pequeña y como la de sus vecinos.</translation>
    </message>
    <message>
        <source>It holds under the conditions of the concern.</source>
        <translation>Aguanta en las condiciones de la queja.</translation>
    </message>
    <message>
        <source>gasket, oil seal or O-ring</source>
        <translation>junta, retén u O-ring</translation>
    </message>
    <message>
        <source>sealing</source>
        <translation>sellado</translation>
    </message>
    <message>
        <source>gasket; oil seal; O-ring; seal</source>
        <translation>junta; retén de aceite; O-ring; sello; empaque</translation>
    </message>
    <message>
        <source>lip inward</source>
        <translation>labio hacia dentro</translation>
    </message>
    <message>
        <source>lip outward</source>
        <translation>labio hacia fuera</translation>
    </message>
    <message>
        <source>both faces</source>
        <translation>ambas caras</translation>
    </message>
    <message>
        <source>cross-section</source>
        <translation>sección</translation>
    </message>
    <message>
        <source>inner diameter</source>
        <translation>diámetro interior</translation>
    </message>
    <message>
        <source>Lying free, in two directions.</source>
        <translation>Tendido libre, en dos direcciones.</translation>
    </message>
    <message>
        <source>thickness or width</source>
        <translation>espesor o anchura</translation>
    </message>
    <message>
        <source>At three places.</source>
        <translation>En tres lugares.</translation>
    </message>
    <message>
        <source>Pressed flat in service.</source>
        <translation>Aplastada por el uso.</translation>
    </message>
    <message>
        <source>cord of the ring</source>
        <translation>cordón del anillo</translation>
    </message>
    <message>
        <source>ISO 3601-1 names the sizes; span common practice, no source</source>
        <translation>ISO 3601-1 nombra los tamaños; margen de práctica común, sin fuente</translation>
    </message>
    <message>
        <source>Across the section, not pressed.</source>
        <translation>A través de la sección, sin apretar.</translation>
    </message>
    <message>
        <source>Takes a set and stays flat.</source>
        <translation>Toma forma y queda aplastado.</translation>
    </message>
    <message>
        <source>ports and holes</source>
        <translation>pasos y agujeros</translation>
    </message>
    <message>
        <source>lip direction</source>
        <translation>dirección del labio</translation>
    </message>
    <message>
        <source>Which way the lip looks when fitted.</source>
        <translation>Hacia dónde mira el labio una vez montado.</translation>
    </message>
    <message>
        <source>inward</source>
        <translation>hacia dentro</translation>
    </message>
    <message>
        <source>outward</source>
        <translation>hacia fuera</translation>
    </message>
    <message>
        <source>material and colour</source>
        <translation>material y color</translation>
    </message>
    <message>
        <source>From the bag, where it says so.</source>
        <translation>De la bolsa, donde lo diga.</translation>
    </message>
    <message>
        <source>depth of the groove in the shaft</source>
        <translation>profundidad del surco en el árbol</translation>
    </message>
    <message>
        <source>Across the track of the old lip, in three places.</source>
        <translation>A través de la huella del labio viejo, en tres lugares.</translation>
    </message>
    <message>
        <source>The lip and grit cut it.</source>
        <translation>El labio y la arenilla lo cortan.</translation>
    </message>
    <message>
        <source>it no longer springs back</source>
        <translation>ya no recupera</translation>
    </message>
    <message>
        <source>flattened</source>
        <translation>aplastado</translation>
    </message>
    <message>
        <source>heat and age</source>
        <translation>calor y edad</translation>
    </message>
    <message>
        <source>hard</source>
        <translation>duro</translation>
    </message>
    <message>
        <source>it was caught at fitting</source>
        <translation>se pellizcó al montar</translation>
    </message>
    <message>
        <source>cut</source>
        <translation>cortado</translation>
    </message>
    <message>
        <source>the wrong rubber for what it meets</source>
        <translation>la goma equivocada para lo que toca</translation>
    </message>
    <message>
        <source>dried out, or the wrong rubber</source>
        <translation>resecado, o la goma equivocada</translation>
    </message>
    <message>
        <source>shrunk</source>
        <translation>encogido</translation>
    </message>
    <message>
        <source>look at the shaft for a groove</source>
        <translation>mire si el árbol tiene un surco</translation>
    </message>
    <message>
        <source>worn lip</source>
        <translation>labio gastado</translation>
    </message>
    <message>
        <source>it ran hot, or gas passed it</source>
        <translation>se calentó demasiado, o pasó gas</translation>
    </message>
    <message>
        <source>pressure pushed it into the gap</source>
        <translation>la presión lo empujó a la holgura</translation>
    </message>
    <message>
        <source>extruded</source>
        <translation>extruido</translation>
    </message>
    <message>
        <source>the old one stayed on the face</source>
        <translation>el viejo quedó en la cara</translation>
    </message>
    <message>
        <source>fitted double</source>
        <translation>montado doble</translation>
    </message>
    <message>
        <source>A cord two tenths thinner.</source>
        <translation>Un cordón dos décimas más delgado.</translation>
    </message>
    <message>
        <source>A port is closed.</source>
        <translation>Un paso está cerrado.</translation>
    </message>
    <message>
        <source>Rubber for another liquid.</source>
        <translation>Goma para otro líquido.</translation>
    </message>
    <message>
        <source>A lip made for the other direction of rotation.</source>
        <translation>Un labio hecho para el otro sentido de giro.</translation>
    </message>
    <message>
        <source>Faces clean and whole.</source>
        <translation>Caras limpias y enteras.</translation>
    </message>
    <message>
        <source>Dry or oiled as the maker says; sealant only where it is named.</source>
        <translation>En seco o aceitado como dice el fabricante; sellador solo donde se indica.</translation>
    </message>
    <message>
        <source>Fuel and coolant off and without pressure first.</source>
        <translation>Combustible y refrigerante primero cerrados y sin presión.</translation>
    </message>
    <message>
        <source>Driven in square, never with a hammer on the lip; bolts in the maker&apos;s order and torque.</source>
        <translation>Metido a escuadra, nunca con un martillo en el labio; pernos en el orden y par de apriete del fabricante.</translation>
    </message>
    <message>
        <source>Tested with pressure, smoke or dye.</source>
        <translation>Probado con presión, humo o tinte.</translation>
    </message>
    <message>
        <source>A look under the car next morning.</source>
        <translation>Una mirada bajo el vehículo a la mañana siguiente.</translation>
    </message>
    <message>
        <source>Looked at again hot.</source>
        <translation>Mirado otra vez en caliente.</translation>
    </message>
    <message>
        <source>gasket seal oring</source>
        <translation>junta, retén u O-ring</translation>
    </message>
    <message>
        <source>ignition coil</source>
        <translation>bobina de encendido</translation>
    </message>
    <message>
        <source>coil; coil pack; coil on plug; pencil coil</source>
        <translation>bobina; bloque de bobinas; bobina sobre bujía; bobina de lápiz</translation>
    </message>
    <message>
        <source>side, whole coil</source>
        <translation>de lado, bobina entera</translation>
    </message>
    <message>
        <source>stem or towers</source>
        <translation>vástago o torres</translation>
    </message>
    <message>
        <source>key and latch of the connector</source>
        <translation>guía y traba del conector</translation>
    </message>
    <message>
        <source>Where key and latch sit, seen into the connector.</source>
        <translation>Dónde están guía y traba, mirando dentro del conector.</translation>
    </message>
    <message>
        <source>length of boot or stem</source>
        <translation>longitud del capuchón o vástago</translation>
    </message>
    <message>
        <source>From the mounting face to the end.</source>
        <translation>De la cara de montaje al extremo.</translation>
    </message>
    <message>
        <source>centres of the fixing holes</source>
        <translation>distancia entre centros de los agujeros de fijación</translation>
    </message>
    <message>
        <source>Inner edge to inner edge plus one hole.</source>
        <translation>De borde interior a borde interior más un agujero.</translation>
    </message>
    <message>
        <source>primary resistance</source>
        <translation>resistencia del primario</translation>
    </message>
    <message>
        <source>Across the primary pins; of no use on coils with a built-in driver.</source>
        <translation>Entre las clavijas del primario; no sirve en bobinas con etapa de mando incorporada.</translation>
    </message>
    <message>
        <source>secondary resistance</source>
        <translation>resistencia del secundario</translation>
    </message>
    <message>
        <source>As the maker describes it; a good figure when cold proves little.</source>
        <translation>Como lo describe el fabricante; una buena cifra en frío prueba poco.</translation>
    </message>
    <message>
        <source>the spark reaches ground through the crack</source>
        <translation>la chispa llega a masa por la grieta</translation>
    </message>
    <message>
        <source>cracked case</source>
        <translation>cuerpo agrietado</translation>
    </message>
    <message>
        <source>the spark ran down the stem, often after a worn plug</source>
        <translation>la chispa bajó por el vástago, a menudo tras una bujía gastada</translation>
    </message>
    <message>
        <source>it ran too hot inside</source>
        <translation>se calentó demasiado por dentro</translation>
    </message>
    <message>
        <source>bulged</source>
        <translation>abombado</translation>
    </message>
    <message>
        <source>the seal above leaks; cure it or the new boot dies too</source>
        <translation>la junta de encima pierde; arréglela o el capuchón nuevo muere también</translation>
    </message>
    <message>
        <source>oil in the well</source>
        <translation>aceite en el pozo</translation>
    </message>
    <message>
        <source>water in the plug</source>
        <translation>agua en el enchufe</translation>
    </message>
    <message>
        <source>green pins</source>
        <translation>clavijas verdes</translation>
    </message>
    <message>
        <source>the spark left the boot; look at the plug too</source>
        <translation>la chispa salió del capuchón; mire también la bujía</translation>
    </message>
    <message>
        <source>burned boot</source>
        <translation>capuchón quemado</translation>
    </message>
    <message>
        <source>its resistance may look right when cold; heat and load tell</source>
        <translation>su resistencia puede parecer correcta en frío; el calor y la carga lo dicen</translation>
    </message>
    <message>
        <source>breaks down hot</source>
        <translation>falla en caliente</translation>
    </message>
    <message>
        <source>A built-in driver where there was none, or none where there was one.</source>
        <translation>Una etapa de mando incorporada donde no la había, o ninguna donde la había.</translation>
    </message>
    <message>
        <source>A later version with another connector.</source>
        <translation>Una versión posterior con otro conector.</translation>
    </message>
    <message>
        <source>Another firing pair on a pack.</source>
        <translation>Otro par de cilindros en un bloque.</translation>
    </message>
    <message>
        <source>A resistor in the boot where there was none, or the reverse.</source>
        <translation>Una resistencia en el capuchón donde no la había, o al revés.</translation>
    </message>
    <message>
        <source>Ignition off, key out, battery as the maker asks.</source>
        <translation>Contacto quitado, llave fuera, batería como pide el fabricante.</translation>
    </message>
    <message>
        <source>Well dry and free of oil.</source>
        <translation>Pozo seco y sin aceite.</translation>
    </message>
    <message>
        <source>Boot grease only where it is named.</source>
        <translation>Grasa de capuchón solo donde se indica.</translation>
    </message>
    <message>
        <source>Bolts to the maker&apos;s torque, ground eyelet clean.</source>
        <translation>Tornillos al par de apriete del fabricante, ojal de masa limpio.</translation>
    </message>
    <message>
        <source>Swapped there and back again before renewing: the misfire moved with the coil.</source>
        <translation>Cambiada de cilindro y devuelta antes de renovar: el fallo de encendido se fue con la bobina.</translation>
    </message>
    <message>
        <source>Misfire counters at zero after a hot restart.</source>
        <translation>Contadores de fallos de encendido en cero tras un arranque en caliente.</translation>
    </message>
    <message>
        <source>A drive under load.</source>
        <translation>Un recorrido bajo carga.</translation>
    </message>
    <message>
        <source>fuel injector</source>
        <translation>inyector de combustible</translation>
    </message>
    <message>
        <source>injection nozzle; injection valve</source>
        <translation>inyector; tobera de inyección; válvula de inyección</translation>
    </message>
    <message>
        <source>tip</source>
        <translation>punta</translation>
    </message>
    <message>
        <source>length between the rings</source>
        <translation>longitud entre los anillos</translation>
    </message>
    <message>
        <source>Ring groove to ring groove.</source>
        <translation>De ranura de anillo a ranura de anillo.</translation>
    </message>
    <message>
        <source>diameter of the upper ring</source>
        <translation>diámetro del anillo superior</translation>
    </message>
    <message>
        <source>Ring lying free.</source>
        <translation>Anillo tendido libre.</translation>
    </message>
    <message>
        <source>diameter of the lower ring</source>
        <translation>diámetro del anillo inferior</translation>
    </message>
    <message>
        <source>Across both pins, both at room temperature.</source>
        <translation>Entre ambas clavijas, ambos a temperatura ambiente.</translation>
    </message>
    <message>
        <source>connector</source>
        <translation>conector</translation>
    </message>
    <message>
        <source>Form and key.</source>
        <translation>Forma y guía.</translation>
    </message>
    <message>
        <source>spray</source>
        <translation>chorro</translation>
    </message>
    <message>
        <source>Holes and angle.</source>
        <translation>Orificios y ángulo.</translation>
    </message>
    <message>
        <source>single cone</source>
        <translation>cono único</translation>
    </message>
    <message>
        <source>split</source>
        <translation>dividido</translation>
    </message>
    <message>
        <source>multi-hole</source>
        <translation>varios orificios</translation>
    </message>
    <message>
        <source>flow in the timed test</source>
        <translation>caudal en la prueba cronometrada</translation>
    </message>
    <message>
        <source>As the maker describes it, by qualified people.</source>
        <translation>Como lo describe el fabricante, por personas cualificadas.</translation>
    </message>
    <message>
        <source>A clogged one gives less.</source>
        <translation>Uno obstruido da menos.</translation>
    </message>
    <message>
        <source>calibration code entered</source>
        <translation>código de calibración escrito</translation>
    </message>
    <message>
        <source>The same word on both where the code was entered as the maker asks.</source>
        <translation>La misma palabra en ambos donde el código se escribió como pide el fabricante.</translation>
    </message>
    <message>
        <source>not needed</source>
        <translation>no hace falta</translation>
    </message>
    <message>
        <source>entered</source>
        <translation>escrito</translation>
    </message>
    <message>
        <source>that cylinder runs lean</source>
        <translation>ese cilindro va pobre</translation>
    </message>
    <message>
        <source>hard start when hot, smell of fuel</source>
        <translation>arranque difícil en caliente, olor a combustible</translation>
    </message>
    <message>
        <source>dribbles</source>
        <translation>gotea</translation>
    </message>
    <message>
        <source>a misfire that comes and goes</source>
        <translation>un fallo de encendido que va y viene</translation>
    </message>
    <message>
        <source>sticking</source>
        <translation>se agarrota</translation>
    </message>
    <message>
        <source>it doesn&apos;t open at all</source>
        <translation>no abre en absoluto</translation>
    </message>
    <message>
        <source>open coil</source>
        <translation>bobina abierta</translation>
    </message>
    <message>
        <source>the spray is bent</source>
        <translation>el chorro sale torcido</translation>
    </message>
    <message>
        <source>coked tip</source>
        <translation>punta con carbonilla</translation>
    </message>
    <message>
        <source>it leaks when cold</source>
        <translation>pierde en frío</translation>
    </message>
    <message>
        <source>hard ring</source>
        <translation>anillo duro</translation>
    </message>
    <message>
        <source>the small screen at the inlet has caught dirt: look upstream</source>
        <translation>el tamiz pequeño de la entrada ha retenido suciedad: mire aguas arriba</translation>
    </message>
    <message>
        <source>full screen</source>
        <translation>tamiz lleno</translation>
    </message>
    <message>
        <source>on a diesel it leaks back more than its neighbours do</source>
        <translation>en un diésel devuelve más que sus vecinos</translation>
    </message>
    <message>
        <source>high return flow</source>
        <translation>retorno alto</translation>
    </message>
    <message>
        <source>Another flow class that looks alike.</source>
        <translation>Otra clase de caudal que parece igual.</translation>
    </message>
    <message>
        <source>Rings of another size.</source>
        <translation>Anillos de otro tamaño.</translation>
    </message>
    <message>
        <source>The code was not entered.</source>
        <translation>El código no se introdujo.</translation>
    </message>
    <message>
        <source>Pressure released, no flames.</source>
        <translation>Presión descargada, sin llamas.</translation>
    </message>
    <message>
        <source>New rings, oiled, not nicked.</source>
        <translation>Anillos nuevos, aceitados, sin cortes.</translation>
    </message>
    <message>
        <source>Tightened in order.</source>
        <translation>Apretados en orden.</translation>
    </message>
    <message>
        <source>Calibration code entered where the maker asks for it.</source>
        <translation>Código de calibración introducido donde el fabricante lo pide.</translation>
    </message>
    <message>
        <source>No leak under pressure.</source>
        <translation>Sin fuga a presión.</translation>
    </message>
    <message>
        <source>Cylinders contribute alike; cold start.</source>
        <translation>Los cilindros aportan por igual; arranque en frío.</translation>
    </message>
    <message>
        <source>A drive under load with even trims, no pending code.</source>
        <translation>Un recorrido bajo carga con correcciones parejas, sin código pendiente.</translation>
    </message>
    <message>
        <source>injector</source>
        <translation>inyector</translation>
    </message>
    <message>
        <source>mass air flow sensor</source>
        <translation>sensor de masa de aire</translation>
    </message>
    <message>
        <source>air flow meter; MAF</source>
        <translation>medidor de masa de aire; caudalímetro; MAF</translation>
    </message>
    <message>
        <source>element, arrow visible</source>
        <translation>elemento, flecha visible</translation>
    </message>
    <message>
        <source>inner diameter of the tube</source>
        <translation>diámetro interior del tubo</translation>
    </message>
    <message>
        <source>depth of the element in the stream</source>
        <translation>profundidad del elemento en la corriente</translation>
    </message>
    <message>
        <source>From the flange.</source>
        <translation>Desde la brida.</translation>
    </message>
    <message>
        <source>Which way it points with the connector up.</source>
        <translation>Hacia dónde apunta con el conector arriba.</translation>
    </message>
    <message>
        <source>centres of the screws</source>
        <translation>distancia entre centros de los tornillos</translation>
    </message>
    <message>
        <source>signal, key on and engine off</source>
        <translation>señal, contacto puesto y motor parado</translation>
    </message>
    <message>
        <source>At the connector.</source>
        <translation>En el conector.</translation>
    </message>
    <message>
        <source>flow at hot idle</source>
        <translation>caudal a ralentí en caliente</translation>
    </message>
    <message>
        <source>Everything switched off.</source>
        <translation>Todo apagado.</translation>
    </message>
    <message>
        <source>A dirty element reads low.</source>
        <translation>Un elemento sucio lee de menos.</translation>
    </message>
    <message>
        <source>it reads too little air</source>
        <translation>lee demasiado poco aire</translation>
    </message>
    <message>
        <source>dirty element</source>
        <translation>elemento sucio</translation>
    </message>
    <message>
        <source>an oiled filter or a breather</source>
        <translation>un filtro aceitado o un respiradero</translation>
    </message>
    <message>
        <source>oil-fouled</source>
        <translation>engrasada de aceite</translation>
    </message>
    <message>
        <source>the stream is disturbed</source>
        <translation>la corriente está perturbada</translation>
    </message>
    <message>
        <source>cracked grid</source>
        <translation>rejilla agrietada</translation>
    </message>
    <message>
        <source>ask where it came from</source>
        <translation>pregunte de dónde vino</translation>
    </message>
    <message>
        <source>water-stained</source>
        <translation>manchas de agua</translation>
    </message>
    <message>
        <source>fuel trims climb with load</source>
        <translation>las correcciones de combustible suben con la carga</translation>
    </message>
    <message>
        <source>reads low under load</source>
        <translation>lee de menos bajo carga</translation>
    </message>
    <message>
        <source>An element for another tube.</source>
        <translation>Un elemento para otro tubo.</translation>
    </message>
    <message>
        <source>The plug fits and the scale differs.</source>
        <translation>El enchufe entra y la escala difiere.</translation>
    </message>
    <message>
        <source>One type gives a frequency, the other a voltage.</source>
        <translation>Un tipo da una frecuencia, el otro una tensión.</translation>
    </message>
    <message>
        <source>Arrow with the stream, seal whole.</source>
        <translation>Flecha con la corriente, junta entera.</translation>
    </message>
    <message>
        <source>No leak behind the sensor.</source>
        <translation>Sin fuga detrás del sensor.</translation>
    </message>
    <message>
        <source>The element is not touched.</source>
        <translation>El elemento no se toca.</translation>
    </message>
    <message>
        <source>Trims at idle and under load, before and after.</source>
        <translation>Correcciones a ralentí y bajo carga, antes y después.</translation>
    </message>
    <message>
        <source>A pull on the road, no pending code.</source>
        <translation>Un tramo de carga en la carretera, sin código pendiente.</translation>
    </message>
    <message>
        <source>maf sensor</source>
        <translation>sensor de masa de aire</translation>
    </message>
    <message>
        <source>oil filter</source>
        <translation>filtro de aceite</translation>
    </message>
    <message>
        <source>filter cartridge; spin-on filter</source>
        <translation>cartucho de filtro; filtro roscado</translation>
    </message>
    <message>
        <source>gasket face</source>
        <translation>cara de la junta</translation>
    </message>
    <message>
        <source>inside or cut open</source>
        <translation>interior o cortado</translation>
    </message>
    <message>
        <source>thread</source>
        <translation>rosca</translation>
    </message>
    <message>
        <source>ISO metric or unified thread designation</source>
        <translation>designación de rosca métrica ISO o unificada</translation>
    </message>
    <message>
        <source>By thread gauge, like M20x1.5 or 3/4-16; none on a cartridge.</source>
        <translation>Con peine de roscas, como M20x1.5 o 3/4-16; ninguno en un cartucho.</translation>
    </message>
    <message>
        <source>M18x1.5</source>
        <translation>M18x1.5</translation>
    </message>
    <message>
        <source>M20x1.5</source>
        <translation>M20x1.5</translation>
    </message>
    <message>
        <source>M22x1.5</source>
        <translation>M22x1.5</translation>
    </message>
    <message>
        <source>3/4-16</source>
        <translation>3/4-16</translation>
    </message>
    <message>
        <source>13/16-16</source>
        <translation>13/16-16</translation>
    </message>
    <message>
        <source>outer diameter of the gasket</source>
        <translation>diámetro exterior de la junta</translation>
    </message>
    <message>
        <source>Gasket lying free, or the end cap of a cartridge.</source>
        <translation>Junta tendida libre, o la tapa del extremo de un cartucho.</translation>
    </message>
    <message>
        <source>inner diameter of the gasket</source>
        <translation>diámetro interior de la junta</translation>
    </message>
    <message>
        <source>Gasket lying free, or the bore of a cartridge.</source>
        <translation>Junta tendida libre, o el agujero de un cartucho.</translation>
    </message>
    <message>
        <source>height of the can</source>
        <translation>altura del bote</translation>
    </message>
    <message>
        <source>Spin-on type, end to end.</source>
        <translation>Tipo roscado, de extremo a extremo.</translation>
    </message>
    <message>
        <source>height of the cartridge</source>
        <translation>altura del cartucho</translation>
    </message>
    <message>
        <source>Cartridge type, over the end caps.</source>
        <translation>Tipo cartucho, sobre las tapas de los extremos.</translation>
    </message>
    <message>
        <source>bore of the cartridge</source>
        <translation>agujero del cartucho</translation>
    </message>
    <message>
        <source>Cartridge type, in two directions.</source>
        <translation>Tipo cartucho, en dos direcciones.</translation>
    </message>
    <message>
        <source>anti-drain-back valve</source>
        <translation>válvula antirretorno</translation>
    </message>
    <message>
        <source>Look through the outer holes for the rubber flap.</source>
        <translation>Mire por los agujeros exteriores si está la lengüeta de goma.</translation>
    </message>
    <message>
        <source>bypass valve</source>
        <translation>válvula de derivación</translation>
    </message>
    <message>
        <source>Seen through the middle, or named on the box.</source>
        <translation>Vista por el centro, o nombrada en la caja.</translation>
    </message>
    <message>
        <source>the oil had to go round it; thick oil or long use</source>
        <translation>el aceite tuvo que rodearlo; aceite espeso o uso largo</translation>
    </message>
    <message>
        <source>two gaskets empty the engine in minutes</source>
        <translation>dos juntas vacían el motor en minutos</translation>
    </message>
    <message>
        <source>gasket stuck</source>
        <translation>junta pegada</translation>
    </message>
    <message>
        <source>the engine is losing metal: tell it before anything else</source>
        <translation>el motor pierde metal: dígalo antes que nada</translation>
    </message>
    <message>
        <source>metal in the pleats</source>
        <translation>metal en los pliegues</translation>
    </message>
    <message>
        <source>long intervals or coolant in the oil</source>
        <translation>intervalos largos o refrigerante en el aceite</translation>
    </message>
    <message>
        <source>sludge</source>
        <translation>lodo</translation>
    </message>
    <message>
        <source>the pressure was too high</source>
        <translation>la presión fue demasiado alta</translation>
    </message>
    <message>
        <source>the stud may be hurt as well</source>
        <translation>el espárrago puede estar dañado también</translation>
    </message>
    <message>
        <source>cross-threaded</source>
        <translation>rosca cruzada</translation>
    </message>
    <message>
        <source>A thread in inches for one in millimetres, or the reverse.</source>
        <translation>Una rosca en pulgadas por una en milímetros, o al revés.</translation>
    </message>
    <message>
        <source>A gasket of another size.</source>
        <translation>Una junta de otro tamaño.</translation>
    </message>
    <message>
        <source>No anti-drain-back valve.</source>
        <translation>Sin válvula antirretorno.</translation>
    </message>
    <message>
        <source>The ring for the cap is missing.</source>
        <translation>Falta el anillo de la tapa.</translation>
    </message>
    <message>
        <source>The old gasket came off with the old filter.</source>
        <translation>La junta vieja salió con el filtro viejo.</translation>
    </message>
    <message>
        <source>New gasket oiled, turned on by hand as the can says, caps to their torque.</source>
        <translation>Junta nueva aceitada, enroscado a mano como dice el bote, tapas a su par de apriete.</translation>
    </message>
    <message>
        <source>Hot oil burns: let it cool.</source>
        <translation>El aceite caliente quema: deje enfriar.</translation>
    </message>
    <message>
        <source>The oil lamp goes out within seconds.</source>
        <translation>El testigo de aceite se apaga en segundos.</translation>
    </message>
    <message>
        <source>No leak after two minutes, level right after five.</source>
        <translation>Sin fuga tras dos minutos, nivel correcto tras cinco.</translation>
    </message>
    <message>
        <source>oxygen or air-fuel-ratio sensor</source>
        <translation>sensor de oxígeno o de relación aire-combustible</translation>
    </message>
    <message>
        <source>oxygen sensor; O2 sensor; lambda sensor; lambda probe; air-fuel-ratio sensor; A/F sensor</source>
        <translation>sensor de oxígeno; sensor O2; sonda lambda; sensor de relación aire-combustible; sensor A/F</translation>
    </message>
    <message>
        <source>bank 1</source>
        <translation>bancada 1</translation>
    </message>
    <message>
        <source>bank 2</source>
        <translation>bancada 2</translation>
    </message>
    <message>
        <source>before the catalyst</source>
        <translation>antes del catalizador</translation>
    </message>
    <message>
        <source>after the catalyst</source>
        <translation>después del catalizador</translation>
    </message>
    <message>
        <source>side, tip to the left</source>
        <translation>de lado, punta a la izquierda</translation>
    </message>
    <message>
        <source>tip and shield</source>
        <translation>punta y protector</translation>
    </message>
    <message>
        <source>plug, seen into the connector</source>
        <translation>enchufe, mirando dentro del conector</translation>
    </message>
    <message>
        <source>Exhaust and sensor are hot enough to burn long after the engine stops: let them cool. Follow the vehicle maker&apos;s procedure and local rules; leave it to licensed people where the law asks.</source>
        <translation>Escape y sensor siguen tan calientes que queman mucho después de parar el motor: deje enfriar. Siga el procedimiento del fabricante del vehículo y las normas locales; déjelo a personas autorizadas donde la ley lo pida.</translation>
    </message>
    <message>
        <source>Diameter and pitch by thread gauge, like M18x1.5.</source>
        <translation>Diámetro y paso con peine de roscas, como M18x1.5.</translation>
    </message>
    <message>
        <source>From the sensor&apos;s body to the face of the plug, lead straight.</source>
        <translation>Del cuerpo del sensor a la cara del enchufe, cable recto.</translation>
    </message>
    <message>
        <source>wires</source>
        <translation>cables</translation>
    </message>
    <message>
        <source>Count them on both parts, the ground wire too.</source>
        <translation>Cuente en ambas piezas, también el cable de masa.</translation>
    </message>
    <message>
        <source>Where the key sits, seen into the connector with the latch up.</source>
        <translation>Dónde está la guía, mirando dentro del conector con la traba arriba.</translation>
    </message>
    <message>
        <source>narrow or wide band</source>
        <translation>banda estrecha o ancha</translation>
    </message>
    <message>
        <source>From the maker&apos;s data for the number; the count of wires alone doesn&apos;t settle it.</source>
        <translation>De los datos del fabricante para el número; el número de cables por sí solo no lo decide.</translation>
    </message>
    <message>
        <source>narrow</source>
        <translation>estrecha</translation>
    </message>
    <message>
        <source>wide</source>
        <translation>ancha</translation>
    </message>
    <message>
        <source>length of the tip shield</source>
        <translation>longitud del protector de la punta</translation>
    </message>
    <message>
        <source>From the seat to the end of the shield.</source>
        <translation>Del asiento al extremo del protector.</translation>
    </message>
    <message>
        <source>resistance of the heater</source>
        <translation>resistencia del calentador</translation>
    </message>
    <message>
        <source>Between the two heater pins, sensor cold; the meter&apos;s leads taken off.</source>
        <translation>Entre las dos clavijas del calentador, sensor frío; descontados los cables del medidor.</translation>
    </message>
    <message>
        <source>A heater that has burned out reads open.</source>
        <translation>Un calentador quemado marca abierto.</translation>
    </message>
    <message>
        <source>it ran rich: find out why before the next one soots up</source>
        <translation>la mezcla iba rica: averigüe por qué antes de que el próximo se llene de hollín</translation>
    </message>
    <message>
        <source>sooted</source>
        <translation>lleno de hollín</translation>
    </message>
    <message>
        <source>fumes of a sealant or a coolant leak have closed its pores</source>
        <translation>vapores de un sellador o una fuga de refrigerante han cerrado sus poros</translation>
    </message>
    <message>
        <source>white silica</source>
        <translation>sílice blanca</translation>
    </message>
    <message>
        <source>coolant is getting into a cylinder</source>
        <translation>entra refrigerante en un cilindro</translation>
    </message>
    <message>
        <source>coolant glaze</source>
        <translation>capa de refrigerante</translation>
    </message>
    <message>
        <source>the engine burns oil</source>
        <translation>el motor quema aceite</translation>
    </message>
    <message>
        <source>oil ash</source>
        <translation>ceniza de aceite</translation>
    </message>
    <message>
        <source>it was hit, or the tip is too long for this pipe</source>
        <translation>recibió un golpe, o la punta es demasiado larga para este tubo</translation>
    </message>
    <message>
        <source>crushed shield</source>
        <translation>protector aplastado</translation>
    </message>
    <message>
        <source>it wakes late, and the mixture is steered blind until then</source>
        <translation>despierta tarde, y hasta entonces la mezcla se gobierna a ciegas</translation>
    </message>
    <message>
        <source>open heater</source>
        <translation>calentador abierto</translation>
    </message>
    <message>
        <source>the lead lay on the exhaust</source>
        <translation>el cable estuvo sobre el escape</translation>
    </message>
    <message>
        <source>melted wires</source>
        <translation>cables fundidos</translation>
    </message>
    <message>
        <source>it answers late or leans to one side; only its signal shows it</source>
        <translation>responde tarde o se inclina a un lado; solo su señal lo muestra</translation>
    </message>
    <message>
        <source>slow</source>
        <translation>lento</translation>
    </message>
    <message>
        <source>the boss in the pipe needs looking at</source>
        <translation>hay que mirar la rosca del tubo</translation>
    </message>
    <message>
        <source>thread pulled</source>
        <translation>rosca arrancada</translation>
    </message>
    <message>
        <source>A narrow-band sensor for a wide-band one, or the other way about.</source>
        <translation>Un sensor de banda estrecha por uno de banda ancha, o al revés.</translation>
    </message>
    <message>
        <source>The one from after the catalyst in the place before it.</source>
        <translation>El de después del catalizador en el lugar del de antes.</translation>
    </message>
    <message>
        <source>The lead is too short or lies loose.</source>
        <translation>El cable es demasiado corto o queda suelto.</translation>
    </message>
    <message>
        <source>A universal one to be spliced: its wires don&apos;t follow the same colours.</source>
        <translation>Uno universal para empalmar: sus cables no siguen los mismos colores.</translation>
    </message>
    <message>
        <source>Exhaust cold before a hand goes near it.</source>
        <translation>Escape frío antes de acercar una mano.</translation>
    </message>
    <message>
        <source>Grease for the thread only if it wasn&apos;t put on at the factory, and none on the tip.</source>
        <translation>Grasa en la rosca solo si no vino puesta de fábrica, y ninguna en la punta.</translation>
    </message>
    <message>
        <source>No sealant with fumes anywhere upstream.</source>
        <translation>Ningún sellador con vapores aguas arriba.</translation>
    </message>
    <message>
        <source>Lead back in its clips, away from pipe and shafts.</source>
        <translation>Cable de vuelta en sus grapas, lejos de tubo y ejes.</translation>
    </message>
    <message>
        <source>The heater draws its current within the time that the maker gives.</source>
        <translation>El calentador toma su corriente en el tiempo que da el fabricante.</translation>
    </message>
    <message>
        <source>Signal followed through a snap of the throttle and through overrun.</source>
        <translation>Señal seguida en un golpe de acelerador y en retención.</translation>
    </message>
    <message>
        <source>The car&apos;s own tests of sensor and catalyst ran, trims settled, no pending code.</source>
        <translation>Se ejecutaron las pruebas propias del vehículo para sensor y catalizador, correcciones estables, sin código pendiente.</translation>
    </message>
    <message>
        <source>oxygen sensor</source>
        <translation>sensor de oxígeno</translation>
    </message>
    <message>
        <source>ignition lead</source>
        <translation>cable de encendido</translation>
    </message>
    <message>
        <source>plug wire; HT lead; plug lead; spark plug wire</source>
        <translation>cable de bujía; cable de alta tensión; cable de bujías</translation>
    </message>
    <message>
        <source>whole set, laid out by length</source>
        <translation>juego entero, extendido por longitudes</translation>
    </message>
    <message>
        <source>plug end</source>
        <translation>extremo de la bujía</translation>
    </message>
    <message>
        <source>cap end</source>
        <translation>extremo de la tapa</translation>
    </message>
    <message>
        <source>leads in the set</source>
        <translation>cables del juego</translation>
    </message>
    <message>
        <source>length of this lead</source>
        <translation>longitud de este cable</translation>
    </message>
    <message>
        <source>Boot end to boot end, lead laid straight.</source>
        <translation>De extremo a extremo de los capuchones, cable tendido recto.</translation>
    </message>
    <message>
        <source>boot at the plug</source>
        <translation>capuchón en la bujía</translation>
    </message>
    <message>
        <source>How it leaves the plug.</source>
        <translation>Cómo sale de la bujía.</translation>
    </message>
    <message>
        <source>elbow</source>
        <translation>acodado</translation>
    </message>
    <message>
        <source>boot at the cap or coil</source>
        <translation>capuchón en la tapa o la bobina</translation>
    </message>
    <message>
        <source>How it leaves the tower.</source>
        <translation>Cómo sale de la torre.</translation>
    </message>
    <message>
        <source>terminal at the cap or coil</source>
        <translation>terminal en la tapa o la bobina</translation>
    </message>
    <message>
        <source>Goes into the tower, or over it.</source>
        <translation>Entra en la torre, o va sobre ella.</translation>
    </message>
    <message>
        <source>resistance of this lead</source>
        <translation>resistencia de este cable</translation>
    </message>
    <message>
        <source>End to end, while the lead is bent gently.</source>
        <translation>De extremo a extremo, mientras se dobla suavemente el cable.</translation>
    </message>
    <message>
        <source>Climbs as the core burns away.</source>
        <translation>Sube a medida que se quema el alma.</translation>
    </message>
    <message>
        <source>depth of the plug boot</source>
        <translation>profundidad del capuchón de bujía</translation>
    </message>
    <message>
        <source>From the rim to the terminal.</source>
        <translation>Del borde al terminal.</translation>
    </message>
    <message>
        <source>outside diameter</source>
        <translation>diámetro exterior</translation>
    </message>
    <message>
        <source>On a straight stretch.</source>
        <translation>En un tramo recto.</translation>
    </message>
    <message>
        <source>the jacket is open and the spark leaves there</source>
        <translation>la cubierta está abierta y la chispa sale por ahí</translation>
    </message>
    <message>
        <source>burned on the manifold</source>
        <translation>quemado en el colector</translation>
    </message>
    <message>
        <source>the spark reaches ground where it rubbed</source>
        <translation>la chispa llega a masa donde rozó</translation>
    </message>
    <message>
        <source>damp creeps in and the spark runs out</source>
        <translation>la humedad entra y la chispa sale</translation>
    </message>
    <message>
        <source>contact lost by corrosion, often after water</source>
        <translation>contacto perdido por corrosión, a menudo tras agua</translation>
    </message>
    <message>
        <source>green terminal</source>
        <translation>terminal verde</translation>
    </message>
    <message>
        <source>the spark ran down inside the boot</source>
        <translation>la chispa bajó por dentro del capuchón</translation>
    </message>
    <message>
        <source>it misfires in the wet first</source>
        <translation>falla primero con lluvia</translation>
    </message>
    <message>
        <source>cracked jacket</source>
        <translation>cubierta agrietada</translation>
    </message>
    <message>
        <source>oil softens the jacket; find the leak</source>
        <translation>el aceite ablanda la cubierta; busque la fuga</translation>
    </message>
    <message>
        <source>the core is broken or burned away</source>
        <translation>el alma está rota o quemada</translation>
    </message>
    <message>
        <source>open circuit</source>
        <translation>circuito abierto</translation>
    </message>
    <message>
        <source>One lead of the set is too short.</source>
        <translation>Un cable del juego es demasiado corto.</translation>
    </message>
    <message>
        <source>The other terminal at the cap.</source>
        <translation>El otro terminal en la tapa.</translation>
    </message>
    <message>
        <source>The coil lead is missing.</source>
        <translation>Falta el cable de la bobina.</translation>
    </message>
    <message>
        <source>The lengths of the set come in another order.</source>
        <translation>Las longitudes del juego vienen en otro orden.</translation>
    </message>
    <message>
        <source>Ignition off, key out; pull the boot, not the lead.</source>
        <translation>Contacto quitado, llave fuera; tire del capuchón, no del cable.</translation>
    </message>
    <message>
        <source>One lead at a time, or from a photo.</source>
        <translation>Un cable cada vez, o según una foto.</translation>
    </message>
    <message>
        <source>A snap felt at both ends.</source>
        <translation>Un clic sentido en ambos extremos.</translation>
    </message>
    <message>
        <source>Looms and separators back, clear of exhaust and belt.</source>
        <translation>Mazos y separadores de vuelta, lejos del escape y la correa.</translation>
    </message>
    <message>
        <source>No long parallel run of two leads that fire one after the other.</source>
        <translation>Sin tramo largo en paralelo de dos cables que encienden uno tras otro.</translation>
    </message>
    <message>
        <source>The resistance for each length of lead alike over the set.</source>
        <translation>La resistencia por longitud de cable es igual en todo el juego.</translation>
    </message>
    <message>
        <source>Firing order read back from the cap.</source>
        <translation>Orden de encendido releído desde la tapa.</translation>
    </message>
    <message>
        <source>A drive under load, in the wet if that was the concern.</source>
        <translation>Un recorrido bajo carga, con lluvia si esa era la queja.</translation>
    </message>
    <message>
        <source>plug wire</source>
        <translation>cable de encendido</translation>
    </message>
    <message>
        <source>relay</source>
        <translation>relé</translation>
    </message>
    <message>
        <source>switching relay; control relay</source>
        <translation>relevador; relé de mando; relé de conmutación</translation>
    </message>
    <message>
        <source>pins</source>
        <translation>clavijas</translation>
    </message>
    <message>
        <source>side with print</source>
        <translation>lado con impresión</translation>
    </message>
    <message>
        <source>pin layout</source>
        <translation>disposición de clavijas</translation>
    </message>
    <message>
        <source>ISO 7588 names the forms</source>
        <translation>ISO 7588 nombra las formas</translation>
    </message>
    <message>
        <source>The print on the side against the old one.</source>
        <translation>La impresión del lado comparada con el viejo.</translation>
    </message>
    <message>
        <source>Across the coil pins.</source>
        <translation>Entre las clavijas de la bobina.</translation>
    </message>
    <message>
        <source>contact rating</source>
        <translation>capacidad del contacto</translation>
    </message>
    <message>
        <source>Read from the case.</source>
        <translation>Leída de la caja.</translation>
    </message>
    <message>
        <source>contact</source>
        <translation>contacto</translation>
    </message>
    <message>
        <source>Closes when fed, opens when fed, or changes over.</source>
        <translation>Cierra al alimentarlo, abre al alimentarlo, o conmuta.</translation>
    </message>
    <message>
        <source>normally open</source>
        <translation>normalmente abierto</translation>
    </message>
    <message>
        <source>normally closed</source>
        <translation>normalmente cerrado</translation>
    </message>
    <message>
        <source>change-over</source>
        <translation>conmutado</translation>
    </message>
    <message>
        <source>part across the coil</source>
        <translation>componente sobre la bobina</translation>
    </message>
    <message>
        <source>From the print: none, a diode or a resistor.</source>
        <translation>De la impresión: ninguno, un diodo o una resistencia.</translation>
    </message>
    <message>
        <source>diode</source>
        <translation>diodo</translation>
    </message>
    <message>
        <source>resistor</source>
        <translation>resistencia</translation>
    </message>
    <message>
        <source>voltage drop over the contacts</source>
        <translation>caída de tensión en los contactos</translation>
    </message>
    <message>
        <source>Under the real load.</source>
        <translation>Con la carga real.</translation>
    </message>
    <message>
        <source>Burned contacts drop more.</source>
        <translation>Los contactos quemados caen más.</translation>
    </message>
    <message>
        <source>the load sees less voltage than it should</source>
        <translation>la carga recibe menos tensión de la debida</translation>
    </message>
    <message>
        <source>burned contacts</source>
        <translation>contactos quemados</translation>
    </message>
    <message>
        <source>it never lets go</source>
        <translation>nunca suelta</translation>
    </message>
    <message>
        <source>welded</source>
        <translation>contactos pegados</translation>
    </message>
    <message>
        <source>it has been hot</source>
        <translation>ha estado caliente</translation>
    </message>
    <message>
        <source>brown case</source>
        <translation>caja parda</translation>
    </message>
    <message>
        <source>look at the socket as well</source>
        <translation>mire también el portarrelé</translation>
    </message>
    <message>
        <source>loose pin</source>
        <translation>clavija floja</translation>
    </message>
    <message>
        <source>ask how it got there</source>
        <translation>pregunte cómo llegó ahí</translation>
    </message>
    <message>
        <source>works when tapped</source>
        <translation>funciona al golpearlo</translation>
    </message>
    <message>
        <source>It looks the same and its pins mean something else.</source>
        <translation>Parece igual y sus clavijas significan otra cosa.</translation>
    </message>
    <message>
        <source>A diode with the other polarity.</source>
        <translation>Un diodo con la otra polaridad.</translation>
    </message>
    <message>
        <source>Grip of the socket felt on every pin.</source>
        <translation>Agarre del portarrelé palpado en cada clavija.</translation>
    </message>
    <message>
        <source>The load current measured: why did it burn?</source>
        <translation>Corriente de la carga medida: ¿por qué se quemó?</translation>
    </message>
    <message>
        <source>Drop at full load.</source>
        <translation>Caída a plena carga.</translation>
    </message>
    <message>
        <source>Ten cycles hot, wiggled.</source>
        <translation>Diez ciclos en caliente, movido a mano.</translation>
    </message>
    <message>
        <source>serpentine belt</source>
        <translation>correa de accesorios</translation>
    </message>
    <message>
        <source>drive</source>
        <translation>accionamiento</translation>
    </message>
    <message>
        <source>V-ribbed belt; ribbed belt; drive belt; accessory belt</source>
        <translation>correa poli-V; correa nervada; correa de servicio; correa serpentina</translation>
    </message>
    <message>
        <source>rib face</source>
        <translation>cara de nervios</translation>
    </message>
    <message>
        <source>back</source>
        <translation>dorso</translation>
    </message>
    <message>
        <source>edge and marking</source>
        <translation>canto y marca</translation>
    </message>
    <message>
        <source>ribs</source>
        <translation>nervios</translation>
    </message>
    <message>
        <source>effective length</source>
        <translation>longitud efectiva</translation>
    </message>
    <message>
        <source>ISO 9981 names the length; allowance common practice, no source</source>
        <translation>ISO 9981 nombra la longitud; tolerancia de práctica común, sin fuente</translation>
    </message>
    <message>
        <source>Around the back, less what the marking&apos;s convention takes off; the same way on both.</source>
        <translation>Por el dorso, menos lo que descuenta la convención de la marca; del mismo modo en ambas.</translation>
    </message>
    <message>
        <source>Across the ribs, not pressed.</source>
        <translation>A lo ancho de los nervios, sin apretar.</translation>
    </message>
    <message>
        <source>rib pitch</source>
        <translation>paso de los nervios</translation>
    </message>
    <message>
        <source>Width over the outer ribs divided by the ribs between them.</source>
        <translation>Anchura sobre los nervios exteriores dividida entre los nervios que hay entre ellos.</translation>
    </message>
    <message>
        <source>rib depth</source>
        <translation>profundidad de los nervios</translation>
    </message>
    <message>
        <source>With a profile gauge in several places; the shallowest counts.</source>
        <translation>Con galga de perfil en varios lugares; cuenta el menos profundo.</translation>
    </message>
    <message>
        <source>Ribs wear, the belt sits deeper and runs longer.</source>
        <translation>Los nervios se gastan, la correa se hunde más y queda más larga.</translation>
    </message>
    <message>
        <source>stretch-fit belt</source>
        <translation>correa elástica</translation>
    </message>
    <message>
        <source>Stretched over the pulleys, or held by a tensioner.</source>
        <translation>Estirada sobre las poleas, o sujeta por un tensor.</translation>
    </message>
    <message>
        <source>stretch-fit</source>
        <translation>elástica</translation>
    </message>
    <message>
        <source>with tensioner</source>
        <translation>con tensor</translation>
    </message>
    <message>
        <source>marking on the back</source>
        <translation>marca en el dorso</translation>
    </message>
    <message>
        <source>ISO 9981</source>
        <translation>ISO 9981</translation>
    </message>
    <message>
        <source>As printed, like 6PK1230; another way of marking may mean the same belt.</source>
        <translation>Como está impresa, como 6PK1230; otra forma de marcar puede significar la misma correa.</translation>
    </message>
    <message>
        <source>age and heat; several cracks in a short stretch mean it is done</source>
        <translation>edad y calor; varias grietas en un tramo corto significan que está acabada</translation>
    </message>
    <message>
        <source>cracked ribs</source>
        <translation>nervios agrietados</translation>
    </message>
    <message>
        <source>it may be thrown at any moment</source>
        <translation>puede salirse en cualquier momento</translation>
    </message>
    <message>
        <source>chunks lost</source>
        <translation>trozos perdidos</translation>
    </message>
    <message>
        <source>it has slipped; look at tensioner and pulleys</source>
        <translation>ha patinado; mire tensor y poleas</translation>
    </message>
    <message>
        <source>it sits deeper and slips although it looks whole</source>
        <translation>se hunde más y patina aunque parece entera</translation>
    </message>
    <message>
        <source>worn ribs</source>
        <translation>nervios gastados</translation>
    </message>
    <message>
        <source>find the leak, or the next one goes the same way</source>
        <translation>busque la fuga, o la próxima acaba igual</translation>
    </message>
    <message>
        <source>a pulley stands out of line</source>
        <translation>una polea está fuera de línea</translation>
    </message>
    <message>
        <source>frayed edge</source>
        <translation>canto deshilachado</translation>
    </message>
    <message>
        <source>ribs and pulleys rub without gripping</source>
        <translation>nervios y poleas frotan sin agarrar</translation>
    </message>
    <message>
        <source>pilled</source>
        <translation>bolitas de goma</translation>
    </message>
    <message>
        <source>One rib more or less.</source>
        <translation>Un nervio más o menos.</translation>
    </message>
    <message>
        <source>Ten to thirty millimetres longer or shorter, as with other equipment.</source>
        <translation>De diez a treinta milímetros más larga o más corta, como con otro equipamiento.</translation>
    </message>
    <message>
        <source>A stretch-fit belt where a tensioner works.</source>
        <translation>Una correa elástica donde trabaja un tensor.</translation>
    </message>
    <message>
        <source>Engine off and key out, fingers out of the tensioner.</source>
        <translation>Motor parado y llave fuera, dedos fuera del tensor.</translation>
    </message>
    <message>
        <source>Routed by the diagram, ribs in every groove.</source>
        <translation>Pasada según el esquema, nervios en cada ranura.</translation>
    </message>
    <message>
        <source>The tensioner is let back slowly with its proper tool.</source>
        <translation>El tensor se suelta despacio con su herramienta adecuada.</translation>
    </message>
    <message>
        <source>The tensioner stands inside its marks, the belt runs true.</source>
        <translation>El tensor está dentro de sus marcas, la correa corre centrada.</translation>
    </message>
    <message>
        <source>Quiet with everything switched on.</source>
        <translation>Sin ruido con todo encendido.</translation>
    </message>
    <message>
        <source>Quiet after a drive, in the wet if that was the concern.</source>
        <translation>Sin ruido tras un recorrido, con lluvia si esa era la queja.</translation>
    </message>
    <message>
        <source>shock absorber or strut</source>
        <translation>amortiguador o columna de suspensión</translation>
    </message>
    <message>
        <source>shock absorber; shock; strut; telescopic strut</source>
        <translation>amortiguador; columna de suspensión; puntal; amortiguador telescópico</translation>
    </message>
    <message>
        <source>whole part, upper mount at the top</source>
        <translation>pieza entera, soporte superior arriba</translation>
    </message>
    <message>
        <source>bracket and tabs, square on</source>
        <translation>soporte y lengüetas, de frente</translation>
    </message>
    <message>
        <source>rod and seal</source>
        <translation>vástago y retén</translation>
    </message>
    <message>
        <source>length pulled out</source>
        <translation>longitud extendido</translation>
    </message>
    <message>
        <source>Rod fully out, mounting point to mounting point.</source>
        <translation>Vástago fuera del todo, de punto de montaje a punto de montaje.</translation>
    </message>
    <message>
        <source>length pushed in</source>
        <translation>longitud comprimido</translation>
    </message>
    <message>
        <source>Rod fully in, same two points; a gas strut is pushed slowly and held.</source>
        <translation>Vástago dentro del todo, los mismos dos puntos; uno de gas se empuja despacio y se sujeta.</translation>
    </message>
    <message>
        <source>rod diameter</source>
        <translation>diámetro del vástago</translation>
    </message>
    <message>
        <source>On a bright place, in two directions; soft jaws or paper between.</source>
        <translation>En un lugar brillante, en dos direcciones; mordazas blandas o papel entre medio.</translation>
    </message>
    <message>
        <source>Where the knuckle or the bracket clamps it.</source>
        <translation>Donde lo abraza la mangueta o el soporte.</translation>
    </message>
    <message>
        <source>height of the spring seat</source>
        <translation>altura del asiento del muelle</translation>
    </message>
    <message>
        <source>From the lowest mounting hole to the rim of the seat.</source>
        <translation>Del agujero de montaje más bajo al borde del asiento.</translation>
    </message>
    <message>
        <source>spacing of the knuckle holes</source>
        <translation>distancia entre agujeros de la mangueta</translation>
    </message>
    <message>
        <source>place of brackets and tabs</source>
        <translation>lugar de soportes y lengüetas</translation>
    </message>
    <message>
        <source>Seen from the wheel; where the link tab and the hose bracket stand.</source>
        <translation>Visto desde la rueda; dónde están la lengüeta de la bieleta y el soporte de la manguera.</translation>
    </message>
    <message>
        <source>both sides</source>
        <translation>ambos lados</translation>
    </message>
    <message>
        <source>0 where it has no electric valve.</source>
        <translation>0 donde no tiene válvula eléctrica.</translation>
    </message>
    <message>
        <source>the seal has gone: more than the thin mist of a good one</source>
        <translation>el retén ha cedido: más que la fina neblina de uno bueno</translation>
    </message>
    <message>
        <source>oil-wet</source>
        <translation>mojado de aceite exterior</translation>
    </message>
    <message>
        <source>it moves by hand without holding back</source>
        <translation>se mueve a mano sin frenar</translation>
    </message>
    <message>
        <source>no resistance</source>
        <translation>sin resistencia</translation>
    </message>
    <message>
        <source>free travel inside, or a loose mount</source>
        <translation>recorrido libre dentro, o un soporte flojo</translation>
    </message>
    <message>
        <source>knocks</source>
        <translation>golpes</translation>
    </message>
    <message>
        <source>the rod cuts the new seal</source>
        <translation>el vástago corta el retén nuevo</translation>
    </message>
    <message>
        <source>pitted rod</source>
        <translation>vástago picado</translation>
    </message>
    <message>
        <source>the upper rubber has let go</source>
        <translation>la goma superior se ha soltado</translation>
    </message>
    <message>
        <source>torn mount</source>
        <translation>soporte desgarrado</translation>
    </message>
    <message>
        <source>the steering jerks back and the spring twangs</source>
        <translation>la dirección vuelve a tirones y el muelle resuena</translation>
    </message>
    <message>
        <source>binding bearing</source>
        <translation>rodamiento que se agarra</translation>
    </message>
    <message>
        <source>it hit something: look at knuckle and arm too</source>
        <translation>chocó con algo: mire también mangueta y brazo</translation>
    </message>
    <message>
        <source>bent rod</source>
        <translation>vástago doblado</translation>
    </message>
    <message>
        <source>Tabs mirrored: it is for the other side.</source>
        <translation>Lengüetas en espejo: es para el otro lado.</translation>
    </message>
    <message>
        <source>Electric for plain, or plain for electric.</source>
        <translation>Eléctrico por simple, o simple por eléctrico.</translation>
    </message>
    <message>
        <source>For another ride height.</source>
        <translation>Para otra altura de marcha.</translation>
    </message>
    <message>
        <source>Another clamp diameter.</source>
        <translation>Otro diámetro de abrazadera.</translation>
    </message>
    <message>
        <source>A compressed spring can kill: the right compressor, used by licensed people where the law asks.</source>
        <translation>Un muelle comprimido puede matar: el compresor correcto, usado por personas autorizadas donde la ley lo pide.</translation>
    </message>
    <message>
        <source>Both sides of the axle.</source>
        <translation>Ambos lados del eje.</translation>
    </message>
    <message>
        <source>The rod is never gripped on its running face.</source>
        <translation>El vástago nunca se agarra por su cara de trabajo.</translation>
    </message>
    <message>
        <source>New nuts; bushes tightened at ride height.</source>
        <translation>Tuercas nuevas; casquillos apretados a la altura de marcha.</translation>
    </message>
    <message>
        <source>Wheels aligned afterwards, hoses and leads back in their clips.</source>
        <translation>Ruedas alineadas después, mangueras y cables de vuelta en sus grapas.</translation>
    </message>
    <message>
        <source>Ride height alike left and right, tyre clear of the spring, alignment on the sheet.</source>
        <translation>Altura de marcha igual a izquierda y derecha, neumático lejos del muelle, alineación en la hoja.</translation>
    </message>
    <message>
        <source>Pushed down once at each corner it settles.</source>
        <translation>Empujado una vez en cada esquina, se asienta.</translation>
    </message>
    <message>
        <source>Quiet over the bumps of the concern.</source>
        <translation>Sin ruido en los resaltos de la queja.</translation>
    </message>
    <message>
        <source>shock strut</source>
        <translation>amortiguador o columna de suspensión</translation>
    </message>
    <message>
        <source>spark plug</source>
        <translation>bujía</translation>
    </message>
    <message>
        <source>plug</source>
        <translation>candela; bujía de encendido</translation>
    </message>
    <message>
        <source>electrodes</source>
        <translation>electrodos</translation>
    </message>
    <message>
        <source>side, whole plug</source>
        <translation>de lado, bujía entera</translation>
    </message>
    <message>
        <source>terminal end</source>
        <translation>extremo del terminal</translation>
    </message>
    <message>
        <source>Diameter and pitch by thread gauge, like M14x1.25.</source>
        <translation>Diámetro y paso con peine de roscas, como M14x1.25.</translation>
    </message>
    <message>
        <source>M10x1</source>
        <translation>M10x1</translation>
    </message>
    <message>
        <source>M12x1.25</source>
        <translation>M12x1.25</translation>
    </message>
    <message>
        <source>M14x1.25</source>
        <translation>M14x1.25</translation>
    </message>
    <message>
        <source>reach of the thread</source>
        <translation>alcance de la rosca</translation>
    </message>
    <message>
        <source>From the seat to the end of the thread.</source>
        <translation>Del asiento al final de la rosca.</translation>
    </message>
    <message>
        <source>seat</source>
        <translation>asiento</translation>
    </message>
    <message>
        <source>A taper that seals by itself, or a flat seat with a washer.</source>
        <translation>Un cono que sella por sí mismo, o un asiento plano con arandela.</translation>
    </message>
    <message>
        <source>taper</source>
        <translation>cónico</translation>
    </message>
    <message>
        <source>washer</source>
        <translation>arandela</translation>
    </message>
    <message>
        <source>size across the hexagon</source>
        <translation>medida entre caras del hexágono</translation>
    </message>
    <message>
        <source>Across two opposite flats.</source>
        <translation>Entre dos caras opuestas.</translation>
    </message>
    <message>
        <source>electrode gap</source>
        <translation>separación de electrodos</translation>
    </message>
    <message>
        <source>A wire or blade that passes with a light drag; never lever on fine-wire tips.</source>
        <translation>Un alambre o una lámina que pasa con un leve roce; nunca haga palanca en puntas de hilo fino.</translation>
    </message>
    <message>
        <source>Sparks carry metal away and the gap grows.</source>
        <translation>Las chispas se llevan metal y la separación crece.</translation>
    </message>
    <message>
        <source>length of the centre electrode</source>
        <translation>longitud del electrodo central</translation>
    </message>
    <message>
        <source>From the insulator to the tip.</source>
        <translation>Del aislador a la punta.</translation>
    </message>
    <message>
        <source>Rounded and shortened by the sparks.</source>
        <translation>Redondeado y acortado por las chispas.</translation>
    </message>
    <message>
        <source>terminal</source>
        <translation>terminal</translation>
    </message>
    <message>
        <source>A nut that stays on, or the bare stud.</source>
        <translation>Una tuerca que se queda puesta, o el espárrago desnudo.</translation>
    </message>
    <message>
        <source>nut</source>
        <translation>tuerca</translation>
    </message>
    <message>
        <source>stud</source>
        <translation>espárrago</translation>
    </message>
    <message>
        <source>resistance through the plug</source>
        <translation>resistencia a través de la bujía</translation>
    </message>
    <message>
        <source>Terminal to centre electrode.</source>
        <translation>Del terminal al electrodo central.</translation>
    </message>
    <message>
        <source>plugs in the set</source>
        <translation>bujías del juego</translation>
    </message>
    <message>
        <source>the wider gap asks for more voltage than it did</source>
        <translation>la separación mayor pide más tensión que antes</translation>
    </message>
    <message>
        <source>worn electrode</source>
        <translation>electrodo gastado</translation>
    </message>
    <message>
        <source>oil reaches the chamber; the plug shows it and is not its cause</source>
        <translation>llega aceite a la cámara; la bujía lo muestra y no es su causa</translation>
    </message>
    <message>
        <source>rich running or too cold a plug; soot leads the spark to ground</source>
        <translation>mezcla rica o bujía demasiado fría; el hollín lleva la chispa a masa</translation>
    </message>
    <message>
        <source>carbon-fouled</source>
        <translation>ensuciada de hollín</translation>
    </message>
    <message>
        <source>it did not fire, or there was far too much fuel</source>
        <translation>no encendió, o hubo demasiado combustible</translation>
    </message>
    <message>
        <source>fuel-fouled</source>
        <translation>mojada de combustible</translation>
    </message>
    <message>
        <source>the spark takes the crack instead of the gap</source>
        <translation>la chispa toma la grieta en lugar de la separación</translation>
    </message>
    <message>
        <source>cracked insulator</source>
        <translation>aislador agrietado</translation>
    </message>
    <message>
        <source>the spark ran down outside the insulator; renew the boot too</source>
        <translation>la chispa bajó por fuera del aislador; renueve también el capuchón</translation>
    </message>
    <message>
        <source>flash-over</source>
        <translation>salto exterior</translation>
    </message>
    <message>
        <source>it ran too hot; find out why before renewing it</source>
        <translation>se calentó demasiado; averigüe por qué antes de renovarla</translation>
    </message>
    <message>
        <source>blistered</source>
        <translation>ampollas</translation>
    </message>
    <message>
        <source>pre-ignition or knock; the plug is the messenger</source>
        <translation>autoencendido o detonación; la bujía es el mensajero</translation>
    </message>
    <message>
        <source>melted</source>
        <translation>fundido</translation>
    </message>
    <message>
        <source>it was not tight, so it could not shed its heat</source>
        <translation>no estaba apretada, así que no pudo ceder su calor</translation>
    </message>
    <message>
        <source>washer not crushed</source>
        <translation>arandela sin aplastar</translation>
    </message>
    <message>
        <source>the head may be hurt as well</source>
        <translation>la culata puede estar dañada también</translation>
    </message>
    <message>
        <source>Longer or shorter reach.</source>
        <translation>Alcance mayor o menor.</translation>
    </message>
    <message>
        <source>Taper for washer, or the other way round.</source>
        <translation>Cono por arandela, o al revés.</translation>
    </message>
    <message>
        <source>Another heat range, which only the number tells.</source>
        <translation>Otro grado térmico, que solo dice el número.</translation>
    </message>
    <message>
        <source>The gap is not set for this engine.</source>
        <translation>La separación no está ajustada para este motor.</translation>
    </message>
    <message>
        <source>The tip stands further out, or further in.</source>
        <translation>La punta sobresale más, o menos.</translation>
    </message>
    <message>
        <source>Head cool before the plugs come out.</source>
        <translation>Culata fría antes de sacar las bujías.</translation>
    </message>
    <message>
        <source>Thread clean and dry, started by hand.</source>
        <translation>Rosca limpia y seca, empezada a mano.</translation>
    </message>
    <message>
        <source>The maker&apos;s torque, which differs between seats.</source>
        <translation>El par de apriete del fabricante, que difiere según el asiento.</translation>
    </message>
    <message>
        <source>No anti-seize unless the maker asks for it.</source>
        <translation>Sin antiagarrotante salvo que el fabricante lo pida.</translation>
    </message>
    <message>
        <source>A plug that was dropped is not fitted.</source>
        <translation>Una bujía que se cayó no se monta.</translation>
    </message>
    <message>
        <source>Ignition off, key out.</source>
        <translation>Contacto quitado, llave fuera.</translation>
    </message>
    <message>
        <source>Misfire counters even and at zero.</source>
        <translation>Contadores de fallos de encendido parejos y en cero.</translation>
    </message>
    <message>
        <source>Cold start on the next morning.</source>
        <translation>Arranque en frío a la mañana siguiente.</translation>
    </message>
    <message>
        <source>A drive with a long pull under load.</source>
        <translation>Un recorrido con un tramo largo bajo carga.</translation>
    </message>
    <message>
        <source>anti-roll bar link</source>
        <translation>bieleta de barra estabilizadora</translation>
    </message>
    <message>
        <source>drop link; stabilizer link; stabiliser link; sway bar link; end link</source>
        <translation>bieleta; bieleta estabilizadora; tirante estabilizador; cacahuate</translation>
    </message>
    <message>
        <source>side, longer stud to the right</source>
        <translation>de lado, perno más largo a la derecha</translation>
    </message>
    <message>
        <source>both studs, end on</source>
        <translation>ambos pernos, de frente</translation>
    </message>
    <message>
        <source>length, centre to centre</source>
        <translation>longitud, de centro a centro</translation>
    </message>
    <message>
        <source>Joint centre to joint centre, link straight.</source>
        <translation>De centro de rótula a centro de rótula, bieleta recta.</translation>
    </message>
    <message>
        <source>thread of the studs</source>
        <translation>rosca de los pernos</translation>
    </message>
    <message>
        <source>Diameter and pitch by thread gauge, both ends, like M12x1.5.</source>
        <translation>Diámetro y paso con peine de roscas, ambos extremos, como M12x1.5.</translation>
    </message>
    <message>
        <source>angle between the studs</source>
        <translation>ángulo entre los pernos</translation>
    </message>
    <message>
        <source>Seen along the link, clockwise from the near stud: 0 where both point the same way, 180 where they point apart.</source>
        <translation>Visto a lo largo de la bieleta, en sentido horario desde el perno cercano: 0 donde ambos miran al mismo lado, 180 donde miran a lados opuestos.</translation>
    </message>
    <message>
        <source>play of the joints</source>
        <translation>juego de las rótulas</translation>
    </message>
    <message>
        <source>Pulled and pushed by hand at each joint, the worse one counts.</source>
        <translation>Tirando y empujando a mano en cada rótula, cuenta la peor.</translation>
    </message>
    <message>
        <source>A joint in its socket, or a bush.</source>
        <translation>Una rótula en su alojamiento, o un casquillo.</translation>
    </message>
    <message>
        <source>two joints</source>
        <translation>dos rótulas</translation>
    </message>
    <message>
        <source>joint and bush</source>
        <translation>rótula y casquillo</translation>
    </message>
    <message>
        <source>two bushes</source>
        <translation>dos casquillos</translation>
    </message>
    <message>
        <source>heard over small sharp bumps, gone with the link off</source>
        <translation>se oye en resaltos pequeños y bruscos, desaparece sin la bieleta</translation>
    </message>
    <message>
        <source>rattles</source>
        <translation>traqueteo</translation>
    </message>
    <message>
        <source>water in, grease out</source>
        <translation>entra agua, sale grasa</translation>
    </message>
    <message>
        <source>it has to be cut off; look at the bracket&apos;s hole</source>
        <translation>hay que cortarla; mire el agujero del soporte</translation>
    </message>
    <message>
        <source>seized stud</source>
        <translation>perno agarrotado</translation>
    </message>
    <message>
        <source>knocks, and the bar wanders</source>
        <translation>golpea, y la barra se desplaza</translation>
    </message>
    <message>
        <source>worn bush</source>
        <translation>casquillo gastado</translation>
    </message>
    <message>
        <source>it has hit something, or the two sides differ in height</source>
        <translation>ha chocado con algo, o los dos lados difieren en altura</translation>
    </message>
    <message>
        <source>Longer or shorter, as with another ride height.</source>
        <translation>Más larga o más corta, como con otra altura de marcha.</translation>
    </message>
    <message>
        <source>Studs to the same side where they must point apart.</source>
        <translation>Pernos al mismo lado donde deben mirar a lados opuestos.</translation>
    </message>
    <message>
        <source>Another thread.</source>
        <translation>Otra rosca.</translation>
    </message>
    <message>
        <source>Both wheels hang or both stand, so that the bar isn&apos;t loaded when the nut comes off.</source>
        <translation>Ambas ruedas colgadas o ambas apoyadas, para que la barra no esté cargada al quitar la tuerca.</translation>
    </message>
    <message>
        <source>Bushed ends tightened at ride height.</source>
        <translation>Extremos con casquillo apretados a la altura de marcha.</translation>
    </message>
    <message>
        <source>Nut held by the stud&apos;s flats, new nut where the maker says, to the maker&apos;s torque.</source>
        <translation>Tuerca sujeta por las caras del perno, tuerca nueva donde lo dice el fabricante, al par de apriete del fabricante.</translation>
    </message>
    <message>
        <source>No play by hand with the wheels at ride height, nothing touches at full lock.</source>
        <translation>Sin juego a mano con las ruedas a la altura de marcha, nada toca con la dirección al tope.</translation>
    </message>
    <message>
        <source>Quiet over small sharp bumps, one wheel at a time and both together.</source>
        <translation>Sin ruido en resaltos pequeños y bruscos, una rueda cada vez y ambas juntas.</translation>
    </message>
    <message>
        <source>stabilizer link</source>
        <translation>bieleta de barra estabilizadora</translation>
    </message>
    <message>
        <source>starter motor</source>
        <translation>motor de arranque</translation>
    </message>
    <message>
        <source>starting</source>
        <translation>arranque</translation>
    </message>
    <message>
        <source>starter; cranking motor</source>
        <translation>arrancador; burro de arranque; motor de marcha</translation>
    </message>
    <message>
        <source>drive end, solenoid at twelve o&apos;clock</source>
        <translation>extremo del piñón, solenoide a las doce</translation>
    </message>
    <message>
        <source>side, flange and drive</source>
        <translation>de lado, brida y piñón</translation>
    </message>
    <message>
        <source>terminals</source>
        <translation>terminales</translation>
    </message>
    <message>
        <source>teeth of the drive</source>
        <translation>dientes del piñón</translation>
    </message>
    <message>
        <source>drive gear diameter</source>
        <translation>diámetro del piñón</translation>
    </message>
    <message>
        <source>Over the tips of two opposite teeth; with an odd count turn it and take the largest.</source>
        <translation>Sobre las puntas de dos dientes opuestos; con número impar gírelo y tome el mayor.</translation>
    </message>
    <message>
        <source>snout diameter</source>
        <translation>diámetro de la nariz</translation>
    </message>
    <message>
        <source>Over the centring ring of the flange, in two directions.</source>
        <translation>Sobre el anillo de centrado de la brida, en dos direcciones.</translation>
    </message>
    <message>
        <source>flange face to drive at rest</source>
        <translation>de la cara de la brida al piñón en reposo</translation>
    </message>
    <message>
        <source>From the mounting face to the front of the gear, drive not thrown out.</source>
        <translation>De la cara de montaje al frente del piñón, piñón sin lanzar.</translation>
    </message>
    <message>
        <source>Whether the bolt screws into the starter or passes through.</source>
        <translation>Si el perno enrosca en el motor de arranque o pasa a través.</translation>
    </message>
    <message>
        <source>threaded</source>
        <translation>roscado</translation>
    </message>
    <message>
        <source>plain</source>
        <translation>liso</translation>
    </message>
    <message>
        <source>terminal thread</source>
        <translation>rosca del terminal</translation>
    </message>
    <message>
        <source>solenoid angle from the top bolt hole</source>
        <translation>ángulo del solenoide desde el agujero de perno superior</translation>
    </message>
    <message>
        <source>Seen from the drive, clockwise.</source>
        <translation>Visto desde el piñón, en sentido horario.</translation>
    </message>
    <message>
        <source>current while cranking</source>
        <translation>corriente al arrancar</translation>
    </message>
    <message>
        <source>Clamp around the battery cable, engine kept from starting as the maker describes.</source>
        <translation>Pinza alrededor del cable de batería, motor impedido de arrancar como describe el fabricante.</translation>
    </message>
    <message>
        <source>A dragging motor asks for more.</source>
        <translation>Un motor que roza pide más.</translation>
    </message>
    <message>
        <source>voltage while cranking</source>
        <translation>tensión al arrancar</translation>
    </message>
    <message>
        <source>At the starter&apos;s own terminal and case.</source>
        <translation>En el terminal y el cuerpo del propio motor de arranque.</translation>
    </message>
    <message>
        <source>Falls with a dragging motor or a poor cable.</source>
        <translation>Baja con un motor que roza o un cable malo.</translation>
    </message>
    <message>
        <source>it clicks now and then and turns after a knock</source>
        <translation>hace clic a ratos y gira tras un golpe</translation>
    </message>
    <message>
        <source>it clicks and does not turn</source>
        <translation>hace clic y no gira</translation>
    </message>
    <message>
        <source>the motor whirrs and the engine stands still</source>
        <translation>el motor zumba y el motor del vehículo no gira</translation>
    </message>
    <message>
        <source>slipping drive</source>
        <translation>piñón que patina</translation>
    </message>
    <message>
        <source>look at the ring gear all the way round</source>
        <translation>mire la corona en toda la vuelta</translation>
    </message>
    <message>
        <source>chewed teeth</source>
        <translation>dientes comidos</translation>
    </message>
    <message>
        <source>worn bushes let the armature rub</source>
        <translation>los casquillos gastados dejan rozar el inducido</translation>
    </message>
    <message>
        <source>drags</source>
        <translation>roza</translation>
    </message>
    <message>
        <source>it cranks cold and refuses hot: look for the missing heat shield</source>
        <translation>gira en frío y se niega en caliente: busque la pantalla térmica que falta</translation>
    </message>
    <message>
        <source>heat-soaked</source>
        <translation>afectado por el calor</translation>
    </message>
    <message>
        <source>the cable nut was loose and burned the stud</source>
        <translation>la tuerca del cable estaba floja y quemó el espárrago</translation>
    </message>
    <message>
        <source>loose stud</source>
        <translation>espárrago flojo</translation>
    </message>
    <message>
        <source>A drive with another number of teeth.</source>
        <translation>Un piñón con otro número de dientes.</translation>
    </message>
    <message>
        <source>The one for the other gearbox, manual or automatic.</source>
        <translation>El de la otra caja de cambios, manual o automática.</translation>
    </message>
    <message>
        <source>The nose reaches further or less far.</source>
        <translation>La nariz llega más lejos o menos lejos.</translation>
    </message>
    <message>
        <source>The solenoid stands turned and meets the engine or the exhaust.</source>
        <translation>El solenoide está girado y topa con el motor o el escape.</translation>
    </message>
    <message>
        <source>It turns the other way round.</source>
        <translation>Gira al revés.</translation>
    </message>
    <message>
        <source>Shims of the old one are missing.</source>
        <translation>Faltan las laminillas del viejo.</translation>
    </message>
    <message>
        <source>Its weight is carried before the last bolt comes out.</source>
        <translation>Su peso se sostiene antes de sacar el último perno.</translation>
    </message>
    <message>
        <source>The ring gear is looked at all the way round.</source>
        <translation>La corona se mira en toda la vuelta.</translation>
    </message>
    <message>
        <source>Cable nuts tight, caps on, nothing touching the case.</source>
        <translation>Tuercas de cables apretadas, tapas puestas, nada toca el cuerpo.</translation>
    </message>
    <message>
        <source>The heat shield is back.</source>
        <translation>La pantalla térmica está de vuelta.</translation>
    </message>
    <message>
        <source>Ten starts, cold and hot, without a grind.</source>
        <translation>Diez arranques, en frío y en caliente, sin rechinar.</translation>
    </message>
    <message>
        <source>Voltage drop over the positive and the ground side while cranking.</source>
        <translation>Caída de tensión en el lado positivo y en el de masa al arrancar.</translation>
    </message>
    <message>
        <source>Current inside the maker&apos;s range.</source>
        <translation>Corriente dentro del margen del fabricante.</translation>
    </message>
    <message>
        <source>A start under the conditions of the concern, such as a hot restart or a cold morning.</source>
        <translation>Un arranque en las condiciones de la queja, como un arranque en caliente o una mañana fría.</translation>
    </message>
    <message>
        <source>starter</source>
        <translation>motor de arranque</translation>
    </message>
    <message>
        <source>coolant or air temperature sensor</source>
        <translation>sensor de temperatura de refrigerante o de aire</translation>
    </message>
    <message>
        <source>temperature sensor; coolant temperature sensor; ECT sensor; intake air temperature sensor; IAT sensor; temperature sender</source>
        <translation>sensor de temperatura; sensor de temperatura de refrigerante; sensor ECT; sensor de temperatura de admisión; sensor IAT; bulbo de temperatura</translation>
    </message>
    <message>
        <source>thread or clip</source>
        <translation>rosca o grapa</translation>
    </message>
    <message>
        <source>By thread gauge, like M12x1.5; or the word clip.</source>
        <translation>Con peine de roscas, como M12x1.5; o la palabra grapa.</translation>
    </message>
    <message>
        <source>length of the probe</source>
        <translation>longitud de la sonda</translation>
    </message>
    <message>
        <source>From the seat to the tip.</source>
        <translation>Del asiento a la punta.</translation>
    </message>
    <message>
        <source>resistance at 20 °C</source>
        <translation>resistencia a 20 °C</translation>
    </message>
    <message>
        <source>fifteen per cent of 2,500 ohms, a usual element (from memory); common practice, no source. For another element enter fifteen per cent of its figure.</source>
        <translation>quince por ciento de 2,500 ohmios, un elemento habitual (de memoria); práctica común, sin fuente. Para otro elemento escriba el quince por ciento de su cifra.</translation>
    </message>
    <message>
        <source>In the same stirred water or air as the other part, after ten minutes.</source>
        <translation>En la misma agua agitada o el mismo aire que la otra pieza, tras diez minutos.</translation>
    </message>
    <message>
        <source>Drifts with age; the curve shifts as a whole.</source>
        <translation>Deriva con la edad; la curva entera se desplaza.</translation>
    </message>
    <message>
        <source>resistance at 80 °C</source>
        <translation>resistencia a 80 °C</translation>
    </message>
    <message>
        <source>fifteen per cent of 330 ohms, a usual element (from memory); common practice, no source. For another element enter fifteen per cent of its figure.</source>
        <translation>quince por ciento de 330 ohmios, un elemento habitual (de memoria); práctica común, sin fuente. Para otro elemento escriba el quince por ciento de su cifra.</translation>
    </message>
    <message>
        <source>In the same stirred water as the other part, after ten minutes. Hot water scalds.</source>
        <translation>En la misma agua agitada que la otra pieza, tras diez minutos. El agua caliente escalda.</translation>
    </message>
    <message>
        <source>what it feeds</source>
        <translation>a qué alimenta</translation>
    </message>
    <message>
        <source>From the maker&apos;s data: the engine&apos;s control, the gauge, or both.</source>
        <translation>De los datos del fabricante: el control del motor, el indicador, o ambos.</translation>
    </message>
    <message>
        <source>control</source>
        <translation>control</translation>
    </message>
    <message>
        <source>gauge</source>
        <translation>indicador</translation>
    </message>
    <message>
        <source>both</source>
        <translation>ambos</translation>
    </message>
    <message>
        <source>reads colder than it is</source>
        <translation>lee más frío de lo que está</translation>
    </message>
    <message>
        <source>answers late; old or mixed coolant</source>
        <translation>responde tarde; refrigerante viejo o mezclado</translation>
    </message>
    <message>
        <source>scaled tip</source>
        <translation>punta con sarro</translation>
    </message>
    <message>
        <source>coolant creeps into the plug</source>
        <translation>el refrigerante entra en el enchufe</translation>
    </message>
    <message>
        <source>the mixture follows a wrong temperature</source>
        <translation>la mezcla sigue una temperatura equivocada</translation>
    </message>
    <message>
        <source>drifts</source>
        <translation>deriva</translation>
    </message>
    <message>
        <source>drops out when warm, well when cold</source>
        <translation>se corta en caliente, bien en frío</translation>
    </message>
    <message>
        <source>open when hot</source>
        <translation>abierto en caliente</translation>
    </message>
    <message>
        <source>A sender for the gauge where the control&apos;s sensor belongs.</source>
        <translation>Un sensor del indicador donde va el sensor del control.</translation>
    </message>
    <message>
        <source>The same body with another curve.</source>
        <translation>El mismo cuerpo con otra curva.</translation>
    </message>
    <message>
        <source>A longer probe.</source>
        <translation>Una sonda más larga.</translation>
    </message>
    <message>
        <source>Engine cold and pressure off before it is unscrewed.</source>
        <translation>Motor frío y sin presión antes de desenroscarlo.</translation>
    </message>
    <message>
        <source>New washer or ring; to the maker&apos;s torque, the housing may be plastic.</source>
        <translation>Arandela o anillo nuevo; al par de apriete del fabricante, el cuerpo puede ser de plástico.</translation>
    </message>
    <message>
        <source>Coolant topped up and bled as the maker says.</source>
        <translation>Refrigerante completado y purgado como dice el fabricante.</translation>
    </message>
    <message>
        <source>After a night standing it shows what the air shows.</source>
        <translation>Tras una noche parado muestra lo que muestra el aire.</translation>
    </message>
    <message>
        <source>Warm-up drawn as one smooth curve; fan on and off where the maker says.</source>
        <translation>Calentamiento dibujado como una curva suave; ventilador encendido y apagado donde lo dice el fabricante.</translation>
    </message>
    <message>
        <source>temp sensor</source>
        <translation>sensor de temperatura</translation>
    </message>
    <message>
        <source>belt tensioner or idler pulley</source>
        <translation>tensor de correa o polea guía</translation>
    </message>
    <message>
        <source>belt tensioner; idler pulley; tensioner; idler; jockey pulley; deflection pulley</source>
        <translation>tensor de correa; polea guía; tensor; polea loca; rodillo tensor; polea de desvío</translation>
    </message>
    <message>
        <source>pulley face, dowel at twelve o&apos;clock</source>
        <translation>cara de la polea, pitón a las doce</translation>
    </message>
    <message>
        <source>edge on, mount to the left</source>
        <translation>de canto, montaje a la izquierda</translation>
    </message>
    <message>
        <source>back with dowel and bolt hole</source>
        <translation>dorso con pitón y agujero de perno</translation>
    </message>
    <message>
        <source>Over the running face, or over the ribs.</source>
        <translation>Sobre la cara de rodadura, o sobre los nervios.</translation>
    </message>
    <message>
        <source>pulley width</source>
        <translation>anchura de la polea</translation>
    </message>
    <message>
        <source>Rim to rim.</source>
        <translation>De borde a borde.</translation>
    </message>
    <message>
        <source>offset from pulley face to mount</source>
        <translation>distancia de la cara de la polea al montaje</translation>
    </message>
    <message>
        <source>On a flat plate, mount down; the belt runs in the plane this gives.</source>
        <translation>Sobre una placa plana, montaje abajo; la correa corre en el plano que esto da.</translation>
    </message>
    <message>
        <source>running surface</source>
        <translation>superficie de rodadura</translation>
    </message>
    <message>
        <source>Ribbed for the rib side of the belt, smooth for its back.</source>
        <translation>Con nervios para el lado de nervios de la correa, lisa para su dorso.</translation>
    </message>
    <message>
        <source>grooved</source>
        <translation>ranurada</translation>
    </message>
    <message>
        <source>smooth</source>
        <translation>lisa</translation>
    </message>
    <message>
        <source>bolt hole</source>
        <translation>agujero de perno</translation>
    </message>
    <message>
        <source>Inner jaws, in two directions.</source>
        <translation>Puntas interiores, en dos direcciones.</translation>
    </message>
    <message>
        <source>free play of the arm</source>
        <translation>juego libre del brazo</translation>
    </message>
    <message>
        <source>At the pulley rim, arm rocked by hand, same point and same push on both.</source>
        <translation>En el borde de la polea, brazo movido a mano, mismo punto y mismo empuje en ambos.</translation>
    </message>
    <message>
        <source>The bush of the arm wears, and the pulley tilts.</source>
        <translation>El casquillo del brazo se gasta, y la polea se inclina.</translation>
    </message>
    <message>
        <source>rest angle of the arm from the dowel</source>
        <translation>ángulo de reposo del brazo desde el pitón</translation>
    </message>
    <message>
        <source>Seen from the pulley, clockwise from the dowel to the arm, nothing pressing on it.</source>
        <translation>Visto desde la polea, en sentido horario del pitón al brazo, sin nada que lo apriete.</translation>
    </message>
    <message>
        <source>it growls, and it will seize and throw the belt</source>
        <translation>gruñe, y se agarrotará y tirará la correa</translation>
    </message>
    <message>
        <source>rough bearing</source>
        <translation>rodamiento áspero</translation>
    </message>
    <message>
        <source>it chirps when cold and spins on for long by hand</source>
        <translation>chirría en frío y a mano sigue girando mucho tiempo</translation>
    </message>
    <message>
        <source>dry bearing</source>
        <translation>rodamiento seco</translation>
    </message>
    <message>
        <source>the belt walks to the edge</source>
        <translation>la correa se va hacia el canto</translation>
    </message>
    <message>
        <source>wobbles</source>
        <translation>bamboleo</translation>
    </message>
    <message>
        <source>the damper no longer calms the belt</source>
        <translation>el amortiguador ya no calma la correa</translation>
    </message>
    <message>
        <source>shaking arm</source>
        <translation>brazo que tiembla</translation>
    </message>
    <message>
        <source>the belt slips under load</source>
        <translation>la correa patina bajo carga</translation>
    </message>
    <message>
        <source>weak spring</source>
        <translation>muelle débil</translation>
    </message>
    <message>
        <source>the belt or grit has eaten a track</source>
        <translation>la correa o la arenilla han comido un surco</translation>
    </message>
    <message>
        <source>grooved pulley</source>
        <translation>polea con surco</translation>
    </message>
    <message>
        <source>the belt squeals and frays at one edge</source>
        <translation>la correa chilla y se deshilacha en un canto</translation>
    </message>
    <message>
        <source>misaligned</source>
        <translation>desalineado</translation>
    </message>
    <message>
        <source>Another offset: the belt runs beside its groove.</source>
        <translation>Otra distancia: la correa corre junto a su ranura.</translation>
    </message>
    <message>
        <source>It swings or presses the other way round.</source>
        <translation>Oscila o aprieta al revés.</translation>
    </message>
    <message>
        <source>The dowel sits elsewhere or is missing.</source>
        <translation>El pitón está en otro lugar o falta.</translation>
    </message>
    <message>
        <source>Plastic for steel with another diameter.</source>
        <translation>Plástico por acero con otro diámetro.</translation>
    </message>
    <message>
        <source>Smooth for grooved.</source>
        <translation>Lisa por ranurada.</translation>
    </message>
    <message>
        <source>Engine off, key out; the spring under load bites: proper tool, fingers out.</source>
        <translation>Motor parado, llave fuera; el muelle cargado atrapa los dedos: herramienta adecuada, dedos fuera.</translation>
    </message>
    <message>
        <source>The dowel sits in its hole before the bolt is tightened.</source>
        <translation>El pitón está en su agujero antes de apretar el perno.</translation>
    </message>
    <message>
        <source>Bolt to the maker&apos;s torque.</source>
        <translation>Perno al par de apriete del fabricante.</translation>
    </message>
    <message>
        <source>The belt lies in every groove before the engine starts, sleeves and hair away.</source>
        <translation>La correa está en cada ranura antes de arrancar el motor, mangas y pelo lejos.</translation>
    </message>
    <message>
        <source>A straight edge lies true over the pulleys.</source>
        <translation>Una regla asienta recta sobre las poleas.</translation>
    </message>
    <message>
        <source>The arm stands calm at idle and inside its marks.</source>
        <translation>El brazo está quieto a ralentí y dentro de sus marcas.</translation>
    </message>
    <message>
        <source>Quiet with lamps, blower and air conditioning on, as in the concern.</source>
        <translation>Sin ruido con luces, ventilador y aire acondicionado encendidos, como en la queja.</translation>
    </message>
    <message>
        <source>tensioner idler</source>
        <translation>tensor o polea guía</translation>
    </message>
    <message>
        <source>thermostat</source>
        <translation>termostato</translation>
    </message>
    <message>
        <source>coolant thermostat</source>
        <translation>termostato de refrigerante</translation>
    </message>
    <message>
        <source>flange face</source>
        <translation>cara de la brida</translation>
    </message>
    <message>
        <source>flange diameter</source>
        <translation>diámetro de la brida</translation>
    </message>
    <message>
        <source>flange thickness</source>
        <translation>espesor de la brida</translation>
    </message>
    <message>
        <source>Seal off.</source>
        <translation>Sin la junta.</translation>
    </message>
    <message>
        <source>stamped opening temperature</source>
        <translation>temperatura de apertura grabada</translation>
    </message>
    <message>
        <source>Read from the part, not from the box.</source>
        <translation>Leída de la pieza, no de la caja.</translation>
    </message>
    <message>
        <source>opening temperature in the bath</source>
        <translation>temperatura de apertura en el baño</translation>
    </message>
    <message>
        <source>When it begins to open, stirred water, warmed slowly.</source>
        <translation>Cuando empieza a abrir, agua agitada, calentada despacio.</translation>
    </message>
    <message>
        <source>lift fifteen degrees above opening</source>
        <translation>carrera quince grados por encima de la apertura</translation>
    </message>
    <message>
        <source>From shut to open in the bath.</source>
        <translation>De cerrado a abierto en el baño.</translation>
    </message>
    <message>
        <source>A tired wax element opens less.</source>
        <translation>Un elemento de cera cansado abre menos.</translation>
    </message>
    <message>
        <source>length of the bypass foot</source>
        <translation>longitud del pie de derivación</translation>
    </message>
    <message>
        <source>place of the jiggle pin</source>
        <translation>lugar del pasador de purga</translation>
    </message>
    <message>
        <source>As on a clock face, fitted; none where there is none.</source>
        <translation>Como en la esfera de un reloj, montado; ninguno donde no lo hay.</translation>
    </message>
    <message>
        <source>the engine stays cold and the heater weak</source>
        <translation>el motor sigue frío y la calefacción floja</translation>
    </message>
    <message>
        <source>the engine overheats</source>
        <translation>el motor se sobrecalienta</translation>
    </message>
    <message>
        <source>opens late</source>
        <translation>abre tarde</translation>
    </message>
    <message>
        <source>leaks past</source>
        <translation>deja pasar</translation>
    </message>
    <message>
        <source>cut seal</source>
        <translation>junta cortada</translation>
    </message>
    <message>
        <source>wrong or old coolant</source>
        <translation>refrigerante equivocado o viejo</translation>
    </message>
    <message>
        <source>scaled</source>
        <translation>con sarro</translation>
    </message>
    <message>
        <source>it stays as cold leaves it</source>
        <translation>se queda como lo deja el frío</translation>
    </message>
    <message>
        <source>wax leaked</source>
        <translation>cera perdida</translation>
    </message>
    <message>
        <source>nothing closes it again</source>
        <translation>nada lo vuelve a cerrar</translation>
    </message>
    <message>
        <source>broken spring</source>
        <translation>muelle roto</translation>
    </message>
    <message>
        <source>the engine computer can no longer open it early</source>
        <translation>la unidad de control ya no puede abrirlo antes</translation>
    </message>
    <message>
        <source>Another opening temperature.</source>
        <translation>Otra temperatura de apertura.</translation>
    </message>
    <message>
        <source>No bypass foot.</source>
        <translation>Sin pie de derivación.</translation>
    </message>
    <message>
        <source>With its housing for one without, or a seal of another section.</source>
        <translation>Con su carcasa por uno sin ella, o una junta de otra sección.</translation>
    </message>
    <message>
        <source>Engine cold, pressure off.</source>
        <translation>Motor frío, sin presión.</translation>
    </message>
    <message>
        <source>Spring to the engine, pin up, new seal.</source>
        <translation>Muelle hacia el motor, pasador arriba, junta nueva.</translation>
    </message>
    <message>
        <source>Bled as the maker says.</source>
        <translation>Purgado como dice el fabricante.</translation>
    </message>
    <message>
        <source>The warm-up curve reaches the stamped figure and stays there.</source>
        <translation>La curva de calentamiento llega a la cifra grabada y se queda ahí.</translation>
    </message>
    <message>
        <source>Heater hot, no leak after cooling down.</source>
        <translation>Calefacción caliente, sin fuga tras enfriarse.</translation>
    </message>
    <message>
        <source>The next trip ends without a pending code for the warm-up.</source>
        <translation>El siguiente viaje termina sin código pendiente del calentamiento.</translation>
    </message>
    <message>
        <source>tie-rod end</source>
        <translation>terminal de dirección</translation>
    </message>
    <message>
        <source>steering</source>
        <translation>dirección</translation>
    </message>
    <message>
        <source>track-rod end</source>
        <translation>rótula de dirección; terminal de barra de acoplamiento</translation>
    </message>
    <message>
        <source>thread and stud</source>
        <translation>rosca y perno</translation>
    </message>
    <message>
        <source>thread and its hand</source>
        <translation>rosca y su sentido</translation>
    </message>
    <message>
        <source>By gauge; add LH for a left-hand thread, like M14x1.5 LH.</source>
        <translation>Con galga; añada LH para una rosca a izquierdas, como M14x1.5 LH.</translation>
    </message>
    <message>
        <source>Stud centre to thread end.</source>
        <translation>Del centro del perno al extremo de la rosca.</translation>
    </message>
    <message>
        <source>Loaded by hand, along and across.</source>
        <translation>Cargada a mano, a lo largo y de través.</translation>
    </message>
    <message>
        <source>hole for a split pin</source>
        <translation>agujero para pasador de aletas</translation>
    </message>
    <message>
        <source>In the stud.</source>
        <translation>En el perno.</translation>
    </message>
    <message>
        <source>threads in view before removal</source>
        <translation>hilos a la vista antes de desmontar</translation>
    </message>
    <message>
        <source>Counted before the lock nut is loosened; the new one begins at the same count.</source>
        <translation>Contados antes de aflojar la contratuerca; la nueva empieza con la misma cuenta.</translation>
    </message>
    <message>
        <source>the wheel steers itself a little</source>
        <translation>la rueda se dirige un poco sola</translation>
    </message>
    <message>
        <source>loose</source>
        <translation>flojo</translation>
    </message>
    <message>
        <source>water got past the boot</source>
        <translation>pasó agua por el guardapolvo</translation>
    </message>
    <message>
        <source>rust</source>
        <translation>óxido</translation>
    </message>
    <message>
        <source>the stud moved in its seat: look at the steering arm too</source>
        <translation>el perno se movió en su asiento: mire también el brazo de dirección</translation>
    </message>
    <message>
        <source>knocked-out taper</source>
        <translation>cono golpeado</translation>
    </message>
    <message>
        <source>A left-hand thread.</source>
        <translation>Una rosca a izquierdas.</translation>
    </message>
    <message>
        <source>Inner for outer.</source>
        <translation>Interior por exterior.</translation>
    </message>
    <message>
        <source>Turns counted when it came off.</source>
        <translation>Vueltas contadas al desmontarlo.</translation>
    </message>
    <message>
        <source>Lock nut and pin in place.</source>
        <translation>Contratuerca y pasador en su lugar.</translation>
    </message>
    <message>
        <source>Toe on the sheet, steering wheel straight.</source>
        <translation>Convergencia en la hoja, volante recto.</translation>
    </message>
    <message>
        <source>Straight and quiet on the road.</source>
        <translation>Recto y sin ruido en la carretera.</translation>
    </message>
    <message>
        <source>Quiet while the wheels are turned standing; angle sensor set again where the maker asks.</source>
        <translation>Sin ruido al girar las ruedas parado; sensor de ángulo ajustado de nuevo donde el fabricante lo pide.</translation>
    </message>
    <message>
        <source>tie rod end</source>
        <translation>terminal de dirección</translation>
    </message>
    <message>
        <source>timing belt and rollers</source>
        <translation>correa de distribución y rodillos</translation>
    </message>
    <message>
        <source>timing belt; cam belt; cambelt; timing belt kit; toothed belt</source>
        <translation>correa de distribución; banda de tiempo; kit de distribución; correa dentada</translation>
    </message>
    <message>
        <source>belt, teeth up, printing readable</source>
        <translation>correa, dientes arriba, impresión legible</translation>
    </message>
    <message>
        <source>rollers, faces up</source>
        <translation>rodillos, caras arriba</translation>
    </message>
    <message>
        <source>everything of the kit laid out</source>
        <translation>todo el kit extendido</translation>
    </message>
    <message>
        <source>A belt one tooth out can wreck the engine, and a loaded tensioner bites: battery off, nobody at the key. Follow the vehicle maker&apos;s procedure and local rules; leave it to licensed people where the law asks.</source>
        <translation>Una correa desfasada un diente puede destrozar el motor, y un tensor cargado atrapa los dedos: batería desconectada, nadie en la llave de contacto. Siga el procedimiento del fabricante del vehículo y las normas locales; déjelo a personas autorizadas donde la ley lo pida.</translation>
    </message>
    <message>
        <source>teeth of the belt</source>
        <translation>dientes de la correa</translation>
    </message>
    <message>
        <source>From a paint mark all the way round, twice; or from the printing.</source>
        <translation>Desde una marca de pintura toda la vuelta, dos veces; o de la impresión.</translation>
    </message>
    <message>
        <source>width of the belt</source>
        <translation>anchura de la correa</translation>
    </message>
    <message>
        <source>Across the back, not pressed.</source>
        <translation>A lo ancho del dorso, sin apretar.</translation>
    </message>
    <message>
        <source>form of the teeth</source>
        <translation>forma de los dientes</translation>
    </message>
    <message>
        <source>Old tooth laid in new tooth, or seen over a picture at the same scale.</source>
        <translation>Diente viejo puesto en diente nuevo, o visto sobre una imagen a la misma escala.</translation>
    </message>
    <message>
        <source>trapezoid</source>
        <translation>trapecio</translation>
    </message>
    <message>
        <source>round, higher</source>
        <translation>redondo, más alto</translation>
    </message>
    <message>
        <source>diameter of the roller</source>
        <translation>diámetro del rodillo</translation>
    </message>
    <message>
        <source>Over the running face, in two directions; one roller after the other.</source>
        <translation>Sobre la cara de rodadura, en dos direcciones; un rodillo tras otro.</translation>
    </message>
    <message>
        <source>roller face to its seat</source>
        <translation>de la cara del rodillo a su asiento</translation>
    </message>
    <message>
        <source>From the mounting face to the near edge of the running face.</source>
        <translation>De la cara de montaje al borde cercano de la cara de rodadura.</translation>
    </message>
    <message>
        <source>pieces of the kit</source>
        <translation>piezas del kit</translation>
    </message>
    <message>
        <source>Belt, rollers, tensioner, bolts and springs, each counted.</source>
        <translation>Correa, rodillos, tensor, pernos y muelles, cada uno contado.</translation>
    </message>
    <message>
        <source>On the back of the belt, seen from the pulleys; none where there is none.</source>
        <translation>En el dorso de la correa, visto desde las poleas; ninguno donde no la hay.</translation>
    </message>
    <message>
        <source>clockwise</source>
        <translation>sentido horario</translation>
    </message>
    <message>
        <source>anticlockwise</source>
        <translation>sentido antihorario</translation>
    </message>
    <message>
        <source>age; the belt is done whatever the distance says</source>
        <translation>edad; la correa está acabada diga lo que diga la distancia</translation>
    </message>
    <message>
        <source>it has jumped or something seized: look for the cause</source>
        <translation>ha saltado o algo se agarrotó: busque la causa</translation>
    </message>
    <message>
        <source>sheared teeth</source>
        <translation>dientes arrancados</translation>
    </message>
    <message>
        <source>find the leak first, or the new one goes the same way</source>
        <translation>busque primero la fuga, o la nueva acaba igual</translation>
    </message>
    <message>
        <source>a roller or pulley stands out of line</source>
        <translation>un rodillo o polea está fuera de línea</translation>
    </message>
    <message>
        <source>its bearing is dry</source>
        <translation>su rodamiento está seco</translation>
    </message>
    <message>
        <source>rough roller</source>
        <translation>rodillo áspero</translation>
    </message>
    <message>
        <source>tension is lost and the belt may jump</source>
        <translation>se pierde tensión y la correa puede saltar</translation>
    </message>
    <message>
        <source>leaking tensioner</source>
        <translation>tensor con fuga</translation>
    </message>
    <message>
        <source>valve timing wanders</source>
        <translation>el calado de las válvulas se desplaza</translation>
    </message>
    <message>
        <source>slack</source>
        <translation>destensada</translation>
    </message>
    <message>
        <source>One tooth more or less.</source>
        <translation>Un diente más o menos.</translation>
    </message>
    <message>
        <source>The kit is for another pump or another run.</source>
        <translation>El kit es para otra bomba u otro recorrido.</translation>
    </message>
    <message>
        <source>Another form of tooth: it rides up.</source>
        <translation>Otra forma de diente: se sube.</translation>
    </message>
    <message>
        <source>Battery off and nobody at the key while hands are in the drive.</source>
        <translation>Batería desconectada y nadie en la llave de contacto mientras haya manos en la distribución.</translation>
    </message>
    <message>
        <source>Marks in line before, and again after two turns by hand, never backwards.</source>
        <translation>Marcas en línea antes, y otra vez tras dos vueltas a mano, nunca hacia atrás.</translation>
    </message>
    <message>
        <source>The maker&apos;s locking tools, tension and new bolts.</source>
        <translation>Las herramientas de bloqueo, la tensión y los pernos nuevos del fabricante.</translation>
    </message>
    <message>
        <source>If it stops hard when turned by hand, it is not forced.</source>
        <translation>Si al girar a mano se detiene en seco, no se fuerza.</translation>
    </message>
    <message>
        <source>The belt is neither kinked nor turned inside out.</source>
        <translation>La correa no se dobla en ángulo ni se vuelve del revés.</translation>
    </message>
    <message>
        <source>Two turns by hand free; relation of cam and crank read before and after.</source>
        <translation>Dos vueltas a mano libres; relación de levas y cigüeñal leída antes y después.</translation>
    </message>
    <message>
        <source>Quiet, no code for cam and crank after a drive.</source>
        <translation>Sin ruido, sin código de levas y cigüeñal tras un recorrido.</translation>
    </message>
    <message>
        <source>timing belt kit</source>
        <translation>correa de distribución y rodillos</translation>
    </message>
    <message>
        <source>water pump</source>
        <translation>bomba de agua</translation>
    </message>
    <message>
        <source>coolant pump</source>
        <translation>bomba de refrigerante</translation>
    </message>
    <message>
        <source>flange face, top bolt at twelve o&apos;clock</source>
        <translation>cara de la brida, perno superior a las doce</translation>
    </message>
    <message>
        <source>impeller face</source>
        <translation>cara del rodete</translation>
    </message>
    <message>
        <source>side, against a straight edge</source>
        <translation>de lado, contra una regla</translation>
    </message>
    <message>
        <source>pulley flange to mounting face</source>
        <translation>de la brida de polea a la cara de montaje</translation>
    </message>
    <message>
        <source>Along the shaft, from the face that the pulley bolts to.</source>
        <translation>A lo largo del árbol, desde la cara donde se atornilla la polea.</translation>
    </message>
    <message>
        <source>impeller depth from the mounting face</source>
        <translation>profundidad del rodete desde la cara de montaje</translation>
    </message>
    <message>
        <source>From the mounting face to the far end of the vanes.</source>
        <translation>De la cara de montaje al extremo lejano de los álabes.</translation>
    </message>
    <message>
        <source>Cavitation and sand take from the vanes of the old one.</source>
        <translation>La cavitación y la arena se llevan material de los álabes de la vieja.</translation>
    </message>
    <message>
        <source>impeller diameter</source>
        <translation>diámetro del rodete</translation>
    </message>
    <message>
        <source>Over the vanes, in two directions.</source>
        <translation>Sobre los álabes, en dos direcciones.</translation>
    </message>
    <message>
        <source>vanes of the impeller</source>
        <translation>álabes del rodete</translation>
    </message>
    <message>
        <source>which way the vanes curve</source>
        <translation>hacia dónde curvan los álabes</translation>
    </message>
    <message>
        <source>Seen on the impeller: outward ends left or right turning, or straight.</source>
        <translation>Visto sobre el rodete: los extremos exteriores giran a izquierda o a derecha, o son rectos.</translation>
    </message>
    <message>
        <source>bolt holes of the body</source>
        <translation>agujeros de perno del cuerpo</translation>
    </message>
    <message>
        <source>holes of the pulley flange</source>
        <translation>agujeros de la brida de polea</translation>
    </message>
    <message>
        <source>gasket or O-ring</source>
        <translation>junta u O-ring</translation>
    </message>
    <message>
        <source>What seals the body to the engine.</source>
        <translation>Lo que sella el cuerpo con el motor.</translation>
    </message>
    <message>
        <source>gasket</source>
        <translation>junta</translation>
    </message>
    <message>
        <source>O-ring</source>
        <translation>O-ring</translation>
    </message>
    <message>
        <source>sealant</source>
        <translation>sellador</translation>
    </message>
    <message>
        <source>play of the shaft at the flange</source>
        <translation>juego del árbol en la brida</translation>
    </message>
    <message>
        <source>Rocked by hand, needle at the rim of the flange.</source>
        <translation>Movido a mano, aguja en el borde de la brida.</translation>
    </message>
    <message>
        <source>Grows as the bearing wears.</source>
        <translation>Crece a medida que se gasta el rodamiento.</translation>
    </message>
    <message>
        <source>the shaft seal lets go; the bearing is next</source>
        <translation>el retén del árbol cede; el rodamiento es el siguiente</translation>
    </message>
    <message>
        <source>weep-hole streak</source>
        <translation>rastro en el orificio testigo</translation>
    </message>
    <message>
        <source>it throws the belt and wears the seal</source>
        <translation>tira la correa y gasta el retén</translation>
    </message>
    <message>
        <source>loose bearing</source>
        <translation>rodamiento flojo</translation>
    </message>
    <message>
        <source>little flow at low speed</source>
        <translation>poco caudal a baja velocidad</translation>
    </message>
    <message>
        <source>eroded impeller</source>
        <translation>rodete erosionado</translation>
    </message>
    <message>
        <source>turns outside, pumps nothing inside</source>
        <translation>gira por fuera, no bombea nada por dentro</translation>
    </message>
    <message>
        <source>slips on the shaft</source>
        <translation>patina en el árbol</translation>
    </message>
    <message>
        <source>the pieces are in the cooling system: flush it</source>
        <translation>los trozos están en el sistema de refrigeración: enjuáguelo</translation>
    </message>
    <message>
        <source>broken vanes</source>
        <translation>álabes rotos</translation>
    </message>
    <message>
        <source>grit, or a seal that ran dry</source>
        <translation>arenilla, o un retén que trabajó en seco</translation>
    </message>
    <message>
        <source>low pressure or the wrong coolant: look at cap and mixture</source>
        <translation>presión baja o refrigerante equivocado: mire tapón y mezcla</translation>
    </message>
    <message>
        <source>cavitation pitted</source>
        <translation>picado por cavitación</translation>
    </message>
    <message>
        <source>Made for the other turning direction, as with another belt run.</source>
        <translation>Hecha para el otro sentido de giro, como con otro recorrido de correa.</translation>
    </message>
    <message>
        <source>The flange stands higher or lower: the belt runs out of line.</source>
        <translation>La brida está más alta o más baja: la correa corre fuera de línea.</translation>
    </message>
    <message>
        <source>A gasket type where an O-ring belongs.</source>
        <translation>Un tipo con junta donde va un O-ring.</translation>
    </message>
    <message>
        <source>Another shape or number of vanes.</source>
        <translation>Otra forma o número de álabes.</translation>
    </message>
    <message>
        <source>Engine cold and pressure off before the first hose.</source>
        <translation>Motor frío y sin presión antes de la primera manguera.</translation>
    </message>
    <message>
        <source>Faces clean to the metal, sealant only where named and sparingly.</source>
        <translation>Caras limpias hasta el metal, sellador solo donde se indica y con moderación.</translation>
    </message>
    <message>
        <source>Bolts of different lengths each back in its own hole.</source>
        <translation>Pernos de distinta longitud cada uno de vuelta en su agujero.</translation>
    </message>
    <message>
        <source>The coolant that the maker names, bled as the maker says.</source>
        <translation>El refrigerante que nombra el fabricante, purgado como dice el fabricante.</translation>
    </message>
    <message>
        <source>Belt guard and fan cover back before the engine runs.</source>
        <translation>Protector de correa y tapa del ventilador de vuelta antes de poner en marcha el motor.</translation>
    </message>
    <message>
        <source>Pressure held cold, weep hole dry.</source>
        <translation>Presión mantenida en frío, orificio testigo seco.</translation>
    </message>
    <message>
        <source>Two cycles of the fan, heater hot, level after cooling down.</source>
        <translation>Dos ciclos del ventilador, calefacción caliente, nivel tras enfriarse.</translation>
    </message>
    <message>
        <source>Looked at again after about fifty miles.</source>
        <translation>Mirada otra vez tras unas cincuenta millas.</translation>
    </message>
    <message>
        <source>wheel bearing or hub unit</source>
        <translation>rodamiento de rueda o unidad de cubo</translation>
    </message>
    <message>
        <source>running gear</source>
        <translation>tren de rodaje</translation>
    </message>
    <message>
        <source>hub assembly; wheel bearing</source>
        <translation>unidad de cubo; maza; balero de rueda; rodamiento de rueda</translation>
    </message>
    <message>
        <source>flange face, one stud at twelve o&apos;clock</source>
        <translation>cara de la brida, un espárrago a las doce</translation>
    </message>
    <message>
        <source>encoder face</source>
        <translation>cara del codificador</translation>
    </message>
    <message>
        <source>In three directions; it proves the size, not the fit.</source>
        <translation>En tres direcciones; demuestra el tamaño, no el ajuste.</translation>
    </message>
    <message>
        <source>In three directions.</source>
        <translation>En tres direcciones.</translation>
    </message>
    <message>
        <source>Ring to ring.</source>
        <translation>De anillo a anillo.</translation>
    </message>
    <message>
        <source>studs or bolt holes</source>
        <translation>espárragos o agujeros de perno</translation>
    </message>
    <message>
        <source>splines</source>
        <translation>estrías</translation>
    </message>
    <message>
        <source>encoder side</source>
        <translation>lado del codificador</translation>
    </message>
    <message>
        <source>Where the magnet card shows its pattern, or a toothed ring.</source>
        <translation>Donde la tarjeta magnética muestra su dibujo, o un anillo dentado.</translation>
    </message>
    <message>
        <source>inboard</source>
        <translation>lado interior</translation>
    </message>
    <message>
        <source>outboard</source>
        <translation>lado exterior</translation>
    </message>
    <message>
        <source>toothed ring</source>
        <translation>anillo dentado</translation>
    </message>
    <message>
        <source>play at the rim</source>
        <translation>juego en el borde</translation>
    </message>
    <message>
        <source>Pushed by hand at the same point, before and after.</source>
        <translation>Empujado a mano en el mismo punto, antes y después.</translation>
    </message>
    <message>
        <source>Grows as the track wears.</source>
        <translation>Crece a medida que se gasta la pista.</translation>
    </message>
    <message>
        <source>pilot diameter</source>
        <translation>diámetro de centrado</translation>
    </message>
    <message>
        <source>Over the ring that centres disc and wheel, in two directions.</source>
        <translation>Sobre el anillo que centra disco y rueda, en dos direcciones.</translation>
    </message>
    <message>
        <source>run-out of the flange</source>
        <translation>alabeo de la brida</translation>
    </message>
    <message>
        <source>Near the edge of the flange, bearing turned by hand.</source>
        <translation>Cerca del borde de la brida, rodamiento girado a mano.</translation>
    </message>
    <message>
        <source>A worn track lets it tilt.</source>
        <translation>Una pista gastada deja que se incline.</translation>
    </message>
    <message>
        <source>the track is pitted</source>
        <translation>la pista está picada</translation>
    </message>
    <message>
        <source>growls</source>
        <translation>gruñidos</translation>
    </message>
    <message>
        <source>heard before it is felt</source>
        <translation>se oye antes de sentirse</translation>
    </message>
    <message>
        <source>pitted race</source>
        <translation>pista picada</translation>
    </message>
    <message>
        <source>braking and wheel-speed signal suffer</source>
        <translation>el frenado y la señal de velocidad de rueda sufren</translation>
    </message>
    <message>
        <source>water washed the grease out</source>
        <translation>el agua se llevó la grasa</translation>
    </message>
    <message>
        <source>seal gone</source>
        <translation>retén perdido</translation>
    </message>
    <message>
        <source>the wheel-speed signal drops out</source>
        <translation>la señal de velocidad de rueda se corta</translation>
    </message>
    <message>
        <source>cracked encoder</source>
        <translation>codificador agrietado</translation>
    </message>
    <message>
        <source>marks at ball spacing from a blow: it drones from the first mile</source>
        <translation>marcas a distancia de bola por un golpe: zumba desde la primera milla</translation>
    </message>
    <message>
        <source>dented race</source>
        <translation>pista marcada</translation>
    </message>
    <message>
        <source>it ran dry or too tight</source>
        <translation>trabajó en seco o demasiado apretado</translation>
    </message>
    <message>
        <source>blued</source>
        <translation>azulado por el calor</translation>
    </message>
    <message>
        <source>The encoder faces the other way: the warning lamp comes on after refit.</source>
        <translation>El codificador mira al otro lado: el testigo se enciende tras montarlo.</translation>
    </message>
    <message>
        <source>Another offset or stud.</source>
        <translation>Otra distancia u otro espárrago.</translation>
    </message>
    <message>
        <source>Pressed only on the ring that fits tight.</source>
        <translation>Se prensa solo por el anillo que entra a presión.</translation>
    </message>
    <message>
        <source>No magnet near the encoder.</source>
        <translation>Ningún imán cerca del codificador.</translation>
    </message>
    <message>
        <source>Never spun dry with an air hose.</source>
        <translation>Nunca se hace girar en seco con aire a presión.</translation>
    </message>
    <message>
        <source>No play, wheel speeds alike.</source>
        <translation>Sin juego, velocidades de rueda iguales.</translation>
    </message>
    <message>
        <source>Quiet at the speed of the concern, bending left and right.</source>
        <translation>Sin ruido a la velocidad de la queja, en curvas a izquierda y derecha.</translation>
    </message>
    <message>
        <source>Wheel torque checked again after fifty miles.</source>
        <translation>Par de apriete de rueda comprobado de nuevo tras cincuenta millas.</translation>
    </message>
    <message>
        <source>wheel bearing hub</source>
        <translation>rodamiento o cubo de rueda</translation>
    </message>
    <message>
        <source>wheel-speed sensor</source>
        <translation>sensor de velocidad de rueda</translation>
    </message>
    <message>
        <source>wheel-speed</source>
        <translation>velocidad de rueda</translation>
    </message>
    <message>
        <source>ABS sensor; wheel speed sensor; speed sensor of the wheel</source>
        <translation>sensor ABS; sensor de rueda; sensor de velocidad de la rueda</translation>
    </message>
    <message>
        <source>front left</source>
        <translation>delantero izquierdo</translation>
    </message>
    <message>
        <source>front right</source>
        <translation>delantero derecho</translation>
    </message>
    <message>
        <source>rear left</source>
        <translation>trasero izquierdo</translation>
    </message>
    <message>
        <source>rear right</source>
        <translation>trasero derecho</translation>
    </message>
    <message>
        <source>whole lead laid straight</source>
        <translation>cable entero tendido recto</translation>
    </message>
    <message>
        <source>From the face that rests on the knuckle.</source>
        <translation>Desde la cara que apoya en la mangueta.</translation>
    </message>
    <message>
        <source>tip diameter</source>
        <translation>diámetro de la punta</translation>
    </message>
    <message>
        <source>In two directions, rust off.</source>
        <translation>En dos direcciones, sin óxido.</translation>
    </message>
    <message>
        <source>From the body to the face of the plug, lead straight.</source>
        <translation>Del cuerpo a la cara del enchufe, cable recto.</translation>
    </message>
    <message>
        <source>clips and grommets along the lead</source>
        <translation>grapas y pasamuros a lo largo del cable</translation>
    </message>
    <message>
        <source>coil or electronic</source>
        <translation>bobina o electrónico</translation>
    </message>
    <message>
        <source>From the maker&apos;s data: two types may share one shell. Never put an ohmmeter on an electronic one.</source>
        <translation>De los datos del fabricante: dos tipos pueden compartir una carcasa. Nunca ponga un óhmetro en uno electrónico.</translation>
    </message>
    <message>
        <source>coil</source>
        <translation>bobina</translation>
    </message>
    <message>
        <source>electronic</source>
        <translation>electrónico</translation>
    </message>
    <message>
        <source>resistance of the coil</source>
        <translation>resistencia de la bobina</translation>
    </message>
    <message>
        <source>Coil type only, at the plug, cold and then warmed.</source>
        <translation>Solo tipo bobina, en el enchufe, en frío y después calentado.</translation>
    </message>
    <message>
        <source>A broken turn reads open, at first only warm.</source>
        <translation>Una espira rota marca abierto, al principio solo en caliente.</translation>
    </message>
    <message>
        <source>gap to the wheel</source>
        <translation>separación hasta la rueda</translation>
    </message>
    <message>
        <source>Brass or plastic blade, at four places of the turn.</source>
        <translation>Lámina de latón o plástico, en cuatro lugares de la vuelta.</translation>
    </message>
    <message>
        <source>Rust below the sensor lifts it and opens the gap.</source>
        <translation>El óxido bajo el sensor lo levanta y abre la separación.</translation>
    </message>
    <message>
        <source>rust has raised it: the signal dies at walking pace first</source>
        <translation>el óxido lo ha levantado: la señal muere primero a paso de persona</translation>
    </message>
    <message>
        <source>the gap is too small or a bearing is loose</source>
        <translation>la separación es demasiado pequeña o un rodamiento está flojo</translation>
    </message>
    <message>
        <source>drops out on lock or over bumps</source>
        <translation>se corta al girar o en los resaltos</translation>
    </message>
    <message>
        <source>broken lead</source>
        <translation>cable roto</translation>
    </message>
    <message>
        <source>cure both halves of the connector</source>
        <translation>arregle ambas mitades del conector</translation>
    </message>
    <message>
        <source>brake dust or a worn bearing: clean it off before judging</source>
        <translation>polvo de freno o un rodamiento gastado: límpielo antes de juzgar</translation>
    </message>
    <message>
        <source>metal dust</source>
        <translation>polvo de metal</translation>
    </message>
    <message>
        <source>it was driven out with a hammer, or water froze in it</source>
        <translation>se sacó con un martillo, o se heló agua en él</translation>
    </message>
    <message>
        <source>Of two types with the same shell, the other one.</source>
        <translation>De dos tipos con la misma carcasa, el otro.</translation>
    </message>
    <message>
        <source>Lead too short for full lock.</source>
        <translation>Cable demasiado corto para la dirección al tope.</translation>
    </message>
    <message>
        <source>Left for right: clips and bends sit the other way.</source>
        <translation>Izquierdo por derecho: grapas y curvas van al revés.</translation>
    </message>
    <message>
        <source>Bore cleaned to the metal, nothing driven in with a hammer.</source>
        <translation>Agujero limpio hasta el metal, nada metido con martillo.</translation>
    </message>
    <message>
        <source>Lead back in every clip, free at full lock and full droop.</source>
        <translation>Cable de vuelta en cada grapa, libre con la dirección a tope y la suspensión colgando.</translation>
    </message>
    <message>
        <source>The warning lamp taken seriously: without the system the wheels can lock.</source>
        <translation>El testigo se toma en serio: sin el sistema las ruedas pueden bloquearse.</translation>
    </message>
    <message>
        <source>Four wheel speeds alike from walking pace up, wheels turned by hand or on a roller.</source>
        <translation>Cuatro velocidades de rueda iguales desde el paso de persona, ruedas giradas a mano o en rodillos.</translation>
    </message>
    <message>
        <source>Lamp out after the car&apos;s own drive-off test, no code, four speeds alike to forty miles an hour.</source>
        <translation>Testigo apagado tras la prueba propia del vehículo al arrancar la marcha, sin código, cuatro velocidades iguales hasta cuarenta millas por hora.</translation>
    </message>
    <message>
        <source>wheel speed sensor</source>
        <translation>sensor de velocidad de rueda</translation>
    </message>
    <message>
        <source>wheel stud, bolt or nut</source>
        <translation>espárrago, perno o tuerca de rueda</translation>
    </message>
    <message>
        <source>wheels</source>
        <translation>ruedas</translation>
    </message>
    <message>
        <source>wheel nut; lug nut; wheel bolt; lug bolt; wheel stud</source>
        <translation>tuerca de rueda; birlo; perno de rueda; tornillo de rueda; espárrago de rueda</translation>
    </message>
    <message>
        <source>right-hand thread</source>
        <translation>rosca a derechas</translation>
    </message>
    <message>
        <source>left-hand thread</source>
        <translation>rosca a izquierdas</translation>
    </message>
    <message>
        <source>side, seat visible</source>
        <translation>de lado, asiento visible</translation>
    </message>
    <message>
        <source>seat, square on</source>
        <translation>asiento, de frente</translation>
    </message>
    <message>
        <source>A wheel can come off: the right thread, the right seat and the maker&apos;s torque. Follow the vehicle maker&apos;s procedure and local rules; leave it to licensed people where the law asks.</source>
        <translation>Una rueda puede soltarse: la rosca correcta, el asiento correcto y el par de apriete del fabricante. Siga el procedimiento del fabricante del vehículo y las normas locales; déjelo a personas autorizadas donde la ley lo pida.</translation>
    </message>
    <message>
        <source>By thread gauge, like M12x1.5; add LH for a left-hand thread.</source>
        <translation>Con peine de roscas, como M12x1.5; añada LH para una rosca a izquierdas.</translation>
    </message>
    <message>
        <source>form of the seat</source>
        <translation>forma del asiento</translation>
    </message>
    <message>
        <source>Cone, ball or flat with a washer; the seat in the wheel must be the same.</source>
        <translation>Cono, bola o plano con arandela; el asiento de la rueda debe ser el mismo.</translation>
    </message>
    <message>
        <source>cone</source>
        <translation>cono</translation>
    </message>
    <message>
        <source>ball</source>
        <translation>bola</translation>
    </message>
    <message>
        <source>flat</source>
        <translation>plano</translation>
    </message>
    <message>
        <source>length under the seat</source>
        <translation>longitud bajo el asiento</translation>
    </message>
    <message>
        <source>From the seat to the end of the thread; inside a nut, from the seat to its end.</source>
        <translation>Del asiento al final de la rosca; en una tuerca, del asiento a su final.</translation>
    </message>
    <message>
        <source>knurl diameter</source>
        <translation>diámetro del moleteado</translation>
    </message>
    <message>
        <source>Over the knurl of a pressed-in stud, in three directions.</source>
        <translation>Sobre el moleteado de un espárrago prensado, en tres direcciones.</translation>
    </message>
    <message>
        <source>hex size</source>
        <translation>medida del hexágono</translation>
    </message>
    <message>
        <source>Across two opposite flats, on a side that is not swollen.</source>
        <translation>Entre dos caras opuestas, en un lado que no esté hinchado.</translation>
    </message>
    <message>
        <source>pieces</source>
        <translation>piezas</translation>
    </message>
    <message>
        <source>Count the holes of the wheel and the pieces.</source>
        <translation>Cuente los agujeros de la rueda y las piezas.</translation>
    </message>
    <message>
        <source>turns by hand to the seat</source>
        <translation>vueltas a mano hasta el asiento</translation>
    </message>
    <message>
        <source>Wheel in place, counted from the first thread that takes.</source>
        <translation>Rueda en su lugar, contadas desde el primer hilo que agarra.</translation>
    </message>
    <message>
        <source>A damaged thread binds early.</source>
        <translation>Una rosca dañada se agarra antes.</translation>
    </message>
    <message>
        <source>the thread gauge no longer lies flat: it was over-tightened</source>
        <translation>el peine de roscas ya no asienta plano: se apretó de más</translation>
    </message>
    <message>
        <source>stretched</source>
        <translation>estirado</translation>
    </message>
    <message>
        <source>stripped</source>
        <translation>barrido</translation>
    </message>
    <message>
        <source>it must not go back on, and neither must its partner</source>
        <translation>no debe volver a montarse, ni tampoco su compañero</translation>
    </message>
    <message>
        <source>the torque goes into rust instead of clamping</source>
        <translation>el par se va en óxido en lugar de apretar</translation>
    </message>
    <message>
        <source>rusted</source>
        <translation>oxidado</translation>
    </message>
    <message>
        <source>it was hit or ran loose</source>
        <translation>recibió un golpe o anduvo flojo</translation>
    </message>
    <message>
        <source>it ran loose or was driven on dry with an impact tool</source>
        <translation>anduvo flojo o se metió en seco con llave de impacto</translation>
    </message>
    <message>
        <source>smeared seat</source>
        <translation>asiento con metal arrastrado</translation>
    </message>
    <message>
        <source>the thin cap over the nut has lifted and no socket fits</source>
        <translation>la tapa fina sobre la tuerca se ha levantado y ninguna llave entra</translation>
    </message>
    <message>
        <source>swollen cap</source>
        <translation>tapa hinchada</translation>
    </message>
    <message>
        <source>A pitch of 1.25 for 1.5, or the reverse.</source>
        <translation>Un paso de 1.25 por 1.5, o al revés.</translation>
    </message>
    <message>
        <source>A ball seat for a cone, or the reverse.</source>
        <translation>Un asiento de bola por un cono, o al revés.</translation>
    </message>
    <message>
        <source>Too short after a spacer or another wheel.</source>
        <translation>Demasiado corto tras un separador u otra rueda.</translation>
    </message>
    <message>
        <source>A stud whose knurl turns in the hub.</source>
        <translation>Un espárrago cuyo moleteado gira en el cubo.</translation>
    </message>
    <message>
        <source>Seat and thread clean and dry; started by hand for the first turns.</source>
        <translation>Asiento y rosca limpios y secos; primeras vueltas a mano.</translation>
    </message>
    <message>
        <source>In a star, with a torque wrench, to the maker&apos;s figure; no impact tool for the last turns.</source>
        <translation>En estrella, con llave dinamométrica, al par que da el fabricante; sin llave de impacto en las últimas vueltas.</translation>
    </message>
    <message>
        <source>Enough turns taken: the maker says how many.</source>
        <translation>Suficientes vueltas de rosca: el fabricante dice cuántas.</translation>
    </message>
    <message>
        <source>The owner knows when to come back for the second tightening.</source>
        <translation>El dueño sabe cuándo volver para el reapriete.</translation>
    </message>
    <message>
        <source>Torque clicks on every one with the wheel&apos;s weight on the ground; the wrench is in date (ISO 6789).</source>
        <translation>La llave salta a su par en cada una con el peso de la rueda en el suelo; la llave está al día (ISO 6789).</translation>
    </message>
    <message>
        <source>No vibration.</source>
        <translation>Sin vibración.</translation>
    </message>
    <message>
        <source>Torque checked again after fifty to a hundred miles.</source>
        <translation>Par de apriete comprobado de nuevo tras cincuenta a cien millas.</translation>
    </message>
    <message>
        <source>wheel stud nut</source>
        <translation>espárrago, perno o tuerca de rueda</translation>
    </message>
    <message>
        <source>wiper blade</source>
        <translation>escobilla limpiaparabrisas</translation>
    </message>
    <message>
        <source>wiper; windscreen wiper; windshield wiper; wiper rubber</source>
        <translation>limpiaparabrisas; escobilla; pluma limpiaparabrisas; goma limpiaparabrisas</translation>
    </message>
    <message>
        <source>whole blade beside a rule</source>
        <translation>escobilla entera junto a una regla</translation>
    </message>
    <message>
        <source>fitting of the arm</source>
        <translation>enganche del brazo</translation>
    </message>
    <message>
        <source>cut end of the rubber</source>
        <translation>extremo cortado de la goma</translation>
    </message>
    <message>
        <source>A wiper arm snaps back and breaks glass and fingers: lay a cloth on the screen, wipers switched off. Follow the vehicle maker&apos;s procedure and local rules; leave it to licensed people where the law asks.</source>
        <translation>El brazo del limpiaparabrisas salta y rompe vidrio y dedos: ponga un paño sobre el parabrisas, limpiaparabrisas apagado. Siga el procedimiento del fabricante del vehículo y las normas locales; déjelo a personas autorizadas donde la ley lo pida.</translation>
    </message>
    <message>
        <source>Of the rubber, tip to tip, blade straight.</source>
        <translation>De la goma, de punta a punta, escobilla recta.</translation>
    </message>
    <message>
        <source>How it is held by the arm.</source>
        <translation>Cómo la sujeta el brazo.</translation>
    </message>
    <message>
        <source>hook</source>
        <translation>gancho</translation>
    </message>
    <message>
        <source>side pin</source>
        <translation>pasador lateral</translation>
    </message>
    <message>
        <source>bayonet</source>
        <translation>bayoneta</translation>
    </message>
    <message>
        <source>pinch tab</source>
        <translation>pestaña de pinza</translation>
    </message>
    <message>
        <source>push button</source>
        <translation>botón</translation>
    </message>
    <message>
        <source>side of the spoiler</source>
        <translation>lado del alerón</translation>
    </message>
    <message>
        <source>Seen from the driver&apos;s seat as fitted; none where there is none.</source>
        <translation>Visto desde el asiento del conductor, montada; ninguno donde no lo hay.</translation>
    </message>
    <message>
        <source>width of the rubber&apos;s profile</source>
        <translation>anchura del perfil de la goma</translation>
    </message>
    <message>
        <source>At the cut end, across the back that sits in the rail.</source>
        <translation>En el extremo cortado, a través del dorso que va en el riel.</translation>
    </message>
    <message>
        <source>framed or flat</source>
        <translation>con armazón o plana</translation>
    </message>
    <message>
        <source>What presses the rubber to the glass.</source>
        <translation>Lo que aprieta la goma contra el vidrio.</translation>
    </message>
    <message>
        <source>framed</source>
        <translation>con armazón</translation>
    </message>
    <message>
        <source>hybrid</source>
        <translation>híbrida</translation>
    </message>
    <message>
        <source>width of the worn lip</source>
        <translation>anchura del labio gastado</translation>
    </message>
    <message>
        <source>Picture of the cut end beside a scale: how broad the lip has become.</source>
        <translation>Foto del extremo cortado junto a una escala: cuánto se ha ensanchado el labio.</translation>
    </message>
    <message>
        <source>The sharp edge rounds off.</source>
        <translation>El canto vivo se redondea.</translation>
    </message>
    <message>
        <source>leaves a stripe</source>
        <translation>deja una raya</translation>
    </message>
    <message>
        <source>split rubber</source>
        <translation>goma rajada</translation>
    </message>
    <message>
        <source>chatters in one direction</source>
        <translation>salta en un sentido</translation>
    </message>
    <message>
        <source>leaves haze</source>
        <translation>deja un velo</translation>
    </message>
    <message>
        <source>feathered edge</source>
        <translation>canto deshilado</translation>
    </message>
    <message>
        <source>misses the middle or the end</source>
        <translation>no barre el medio o el extremo</translation>
    </message>
    <message>
        <source>bent frame</source>
        <translation>armazón doblado</translation>
    </message>
    <message>
        <source>clean the glass before blaming the blade</source>
        <translation>limpie el vidrio antes de culpar a la escobilla</translation>
    </message>
    <message>
        <source>silicone smear</source>
        <translation>película de silicona</translation>
    </message>
    <message>
        <source>it flutters at speed</source>
        <translation>aletea a velocidad</translation>
    </message>
    <message>
        <source>worn joint</source>
        <translation>articulación gastada</translation>
    </message>
    <message>
        <source>Twenty millimetres longer: the two blades meet.</source>
        <translation>Veinte milímetros más larga: las dos escobillas se tocan.</translation>
    </message>
    <message>
        <source>The adapter for this arm is missing.</source>
        <translation>Falta el adaptador para este brazo.</translation>
    </message>
    <message>
        <source>The spoiler on the wrong side.</source>
        <translation>El alerón en el lado equivocado.</translation>
    </message>
    <message>
        <source>Cloth on the glass before the arm stands up without its blade.</source>
        <translation>Paño sobre el vidrio antes de dejar el brazo levantado sin su escobilla.</translation>
    </message>
    <message>
        <source>Pressed home until it clicks, then tugged.</source>
        <translation>Apretada hasta el clic, después un tirón.</translation>
    </message>
    <message>
        <source>Washer jets still meet the swept field.</source>
        <translation>Los chorros del lavaparabrisas siguen dando en el campo barrido.</translation>
    </message>
    <message>
        <source>Wet glass wiped in every speed, parks where it parked, blades don&apos;t meet.</source>
        <translation>Vidrio mojado barrido a todas las velocidades, para donde paraba, las escobillas no se tocan.</translation>
    </message>
    <message>
        <source>Clear in rain at the speed of the concern.</source>
        <translation>Claro con lluvia a la velocidad de la queja.</translation>
    </message>
    <message>
        <source>belt and tensioner together</source>
        <translation>correa y tensor juntos</translation>
    </message>
    <message>
        <source>travel left to the tensioner&apos;s slack end</source>
        <translation>recorrido que queda hasta el extremo flojo del tensor</translation>
    </message>
    <message>
        <source>The tensioner keeps inside its travel.</source>
        <translation>El tensor se mantiene dentro de su recorrido.</translation>
    </message>
    <message>
        <source>The tensioner may reach its slack end: this belt is too long for it.</source>
        <translation>El tensor puede llegar a su extremo flojo: esta correa es demasiado larga para él.</translation>
    </message>
    <message>
        <source>The tensioner may be drawn to its tight end: this belt is too short for it.</source>
        <translation>El tensor puede ser llevado a su extremo tenso: esta correa es demasiado corta para él.</translation>
    </message>
    <message>
        <source>Half the difference in length is right for one pulley that the belt goes half around; otherwise the marks on the tensioner decide once the belt is on.</source>
        <translation>La mitad de la diferencia de longitud es correcta para una polea que la correa rodea a medias; en otro caso deciden las marcas del tensor con la correa puesta.</translation>
    </message>
    <message>
        <source>Engine off and key out, fingers out of the tensioner: its spring can crush a finger.</source>
        <translation>Motor parado y llave fuera, dedos fuera del tensor: su muelle puede aplastar un dedo.</translation>
    </message>
    <message>
        <source>travel left to the slack end, old belt on</source>
        <translation>recorrido que queda hasta el extremo flojo, correa vieja puesta</translation>
    </message>
    <message>
        <source>Along the way of the pulley&apos;s centre, from where it stands to the end mark on the slack side, engine still.</source>
        <translation>Por el camino del centro de la polea, desde donde está hasta la marca final del lado flojo, motor parado.</translation>
    </message>
    <message>
        <source>whole travel of the tensioner between its marks</source>
        <translation>recorrido total del tensor entre sus marcas</translation>
    </message>
    <message>
        <source>Along the way of the pulley&apos;s centre, from mark to mark.</source>
        <translation>Por el camino del centro de la polea, de marca a marca.</translation>
    </message>
    <message>
        <source>pads and disc in the calliper</source>
        <translation>pastillas y disco en la pinza</translation>
    </message>
    <message>
        <source>room left beside pads and disc</source>
        <translation>espacio que queda junto a pastillas y disco</translation>
    </message>
    <message>
        <source>Two pads and the disc go in.</source>
        <translation>Dos pastillas y el disco entran.</translation>
    </message>
    <message>
        <source>Two pads and the disc may not go in: one of the parts is the wrong one.</source>
        <translation>Dos pastillas y el disco pueden no entrar: una de las piezas es la equivocada.</translation>
    </message>
    <message>
        <source>The piston may come out further than it can: pads or disc are too thin for this calliper.</source>
        <translation>El pistón puede salir más de lo que puede: pastillas o disco son demasiado delgados para esta pinza.</translation>
    </message>
    <message>
        <source>Both pads are taken to be alike, and the thinnest place stands for the whole pad; the thickest place decides whether they go in.</source>
        <translation>Se toma que ambas pastillas son iguales, y el punto más delgado vale por toda la pastilla; el punto más grueso decide si entran.</translation>
    </message>
    <message>
        <source>opening of the calliper with the piston pushed home</source>
        <translation>abertura de la pinza con el pistón metido del todo</translation>
    </message>
    <message>
        <source>From the piston, pushed fully home, straight across to the fingers of the calliper, shims in.</source>
        <translation>Del pistón, metido del todo, en línea recta hasta los dedos de la pinza, laminillas puestas.</translation>
    </message>
    <message>
        <source>travel of the piston</source>
        <translation>recorrido del pistón</translation>
    </message>
    <message>
        <source>From the vehicle maker&apos;s figures; a piston is never pressed out to try.</source>
        <translation>De las cifras del fabricante del vehículo; un pistón nunca se saca para probar.</translation>
    </message>
    <message>
        <source>difference between the two pads of a side</source>
        <translation>diferencia entre las dos pastillas de un lado</translation>
    </message>
    <message>
        <source>Measure both pads at their thickest place.</source>
        <translation>Mida ambas pastillas en su punto más grueso.</translation>
    </message>
    <message>
        <source>rotor and cap together</source>
        <translation>rotor y tapa juntos</translation>
    </message>
    <message>
        <source>air gap between tip and terminal</source>
        <translation>separación de aire entre punta y terminal</translation>
    </message>
    <message>
        <source>The tip clears the terminals.</source>
        <translation>La punta pasa libre de los terminales.</translation>
    </message>
    <message>
        <source>The tip may touch a terminal: one of the two parts is the wrong one, or the play is too large.</source>
        <translation>La punta puede tocar un terminal: una de las dos piezas es la equivocada, o el juego es demasiado grande.</translation>
    </message>
    <message>
        <source>The gap itself is known loosely, its change well. No one gap is right for every distributor: the maker&apos;s figure decides.</source>
        <translation>La separación misma se conoce de forma imprecisa, su cambio bien. Ninguna separación es correcta para todos los distribuidores: decide la cifra del fabricante.</translation>
    </message>
    <message>
        <source>Ignition voltage can injure or kill, above all people with a pacemaker: ignition off and key out before touching. Never file or bend a part to open a gap.</source>
        <translation>La tensión de encendido puede herir o matar, sobre todo a personas con marcapasos: contacto quitado y llave fuera antes de tocar. Nunca lime ni doble una pieza para abrir una separación.</translation>
    </message>
    <message>
        <source>wobble of the tip from play in the shaft bushing</source>
        <translation>bamboleo de la punta por juego en el casquillo del árbol</translation>
    </message>
    <message>
        <source>Dial indicator against the tip, pushed to and fro by hand, engine still and key out; half of what it shows.</source>
        <translation>Reloj comparador contra la punta, empujada de un lado a otro a mano, motor parado y llave fuera; la mitad de lo que marca.</translation>
    </message>
    <message>
        <source>bend of the shaft at the tip</source>
        <translation>curvatura del árbol en la punta</translation>
    </message>
    <message>
        <source>Dial indicator against the shaft, turned by hand, key out; half of what it shows.</source>
        <translation>Reloj comparador contra el árbol, girado a mano, llave fuera; la mitad de lo que marca.</translation>
    </message>
    <message>
        <source>play of the cap on its seat</source>
        <translation>juego de la tapa en su asiento</translation>
    </message>
    <message>
        <source>Cap on its rim with the clips open, pushed sideways; half of what it moves.</source>
        <translation>Tapa en su borde con las grapas abiertas, empujada de lado; la mitad de lo que se mueve.</translation>
    </message>
</context>
</TS>
