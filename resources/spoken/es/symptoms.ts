<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es">
<context>
    <name></name>
    <message>
        <source>air conditioning warm</source>
        <translation>aire acondicionado caliente</translation>
    </message>
    <message>
        <source>blower fault</source>
        <translation>avería del ventilador interior</translation>
    </message>
    <message>
        <source>smell from the vents</source>
        <translation>olor por las rejillas de aire</translation>
    </message>
    <message>
        <source>diesel cold start</source>
        <translation>arranque en frío del diésel</translation>
    </message>
    <message>
        <source>new since our work</source>
        <translation>nuevo desde nuestro trabajo</translation>
    </message>
    <message>
        <source>shudders when pulling</source>
        <translation>trepida al acelerar</translation>
    </message>
    <message>
        <source>clunk on take-up</source>
        <translation>golpe al tomar carga</translation>
    </message>
    <message>
        <source>clutch slip</source>
        <translation>patina el embrague</translation>
    </message>
    <message>
        <source>automatic shifts badly</source>
        <translation>la caja automática cambia mal</translation>
    </message>
    <message>
        <source>hard to get into gear</source>
        <translation>cuesta meter la marcha</translation>
    </message>
    <message>
        <source>gear whine</source>
        <translation>zumbido de engranajes</translation>
    </message>
    <message>
        <source>flat battery</source>
        <translation>batería descargada</translation>
    </message>
    <message>
        <source>lamps and gauges act up</source>
        <translation>testigos e indicadores se comportan raro</translation>
    </message>
    <message>
        <source>lamp does not work</source>
        <translation>una luz no funciona</translation>
    </message>
    <message>
        <source>horn does not work</source>
        <translation>la bocina no suena</translation>
    </message>
    <message>
        <source>fuse blows</source>
        <translation>se funde un fusible</translation>
    </message>
    <message>
        <source>wipers or windows or locks</source>
        <translation>limpiaparabrisas, ventanillas o cerraduras</translation>
    </message>
    <message>
        <source>gauge reads wrong</source>
        <translation>un indicador marca mal</translation>
    </message>
    <message>
        <source>key not recognised</source>
        <translation>llave no reconocida</translation>
    </message>
    <message>
        <source>cruise control drops out</source>
        <translation>se desconecta el control de crucero</translation>
    </message>
    <message>
        <source>belt squeal</source>
        <translation>chillido de correa</translation>
    </message>
    <message>
        <source>engine whine</source>
        <translation>zumbido del motor</translation>
    </message>
    <message>
        <source>engine knock</source>
        <translation>golpeteo del motor</translation>
    </message>
    <message>
        <source>loud exhaust</source>
        <translation>escape ruidoso</translation>
    </message>
    <message>
        <source>boost noise</source>
        <translation>ruido de sobrealimentación</translation>
    </message>
    <message>
        <source>vibrates standing still</source>
        <translation>vibra parado</translation>
    </message>
    <message>
        <source>overheats</source>
        <translation>se recalienta</translation>
    </message>
    <message>
        <source>poor heater</source>
        <translation>calefacción floja</translation>
    </message>
    <message>
        <source>loses coolant</source>
        <translation>pierde refrigerante</translation>
    </message>
    <message>
        <source>oil leak</source>
        <translation>fuga de aceite</translation>
    </message>
    <message>
        <source>water inside</source>
        <translation>agua dentro</translation>
    </message>
    <message>
        <source>uses more fuel</source>
        <translation>gasta más combustible</translation>
    </message>
    <message>
        <source>fuel smell outside</source>
        <translation>olor a combustible fuera</translation>
    </message>
    <message>
        <source>fuel smell inside</source>
        <translation>olor a combustible dentro</translation>
    </message>
    <message>
        <source>rotten-egg smell</source>
        <translation>olor a huevos podridos</translation>
    </message>
    <message>
        <source>blue smoke</source>
        <translation>humo azul</translation>
    </message>
    <message>
        <source>white smoke</source>
        <translation>humo blanco</translation>
    </message>
    <message>
        <source>black smoke</source>
        <translation>humo negro</translation>
    </message>
    <message>
        <source>uses oil</source>
        <translation>consume aceite</translation>
    </message>
    <message>
        <source>soot filter</source>
        <translation>filtro de partículas</translation>
    </message>
    <message>
        <source>engine lamp on</source>
        <translation>testigo del motor encendido</translation>
    </message>
    <message>
        <source>engine lamp flashing</source>
        <translation>testigo del motor parpadea</translation>
    </message>
    <message>
        <source>lamp after filling up</source>
        <translation>testigo después de repostar</translation>
    </message>
    <message>
        <source>airbag lamp</source>
        <translation>testigo del airbag</translation>
    </message>
    <message>
        <source>ABS lamp</source>
        <translation>testigo del ABS</translation>
    </message>
    <message>
        <source>charge lamp</source>
        <translation>testigo de carga</translation>
    </message>
    <message>
        <source>oil lamp</source>
        <translation>testigo de aceite</translation>
    </message>
    <message>
        <source>misfire</source>
        <translation>fallo de encendido</translation>
    </message>
    <message>
        <source>dead cylinder</source>
        <translation>cilindro muerto</translation>
    </message>
    <message>
        <source>rough idle</source>
        <translation>ralentí áspero</translation>
    </message>
    <message>
        <source>hunting idle</source>
        <translation>ralentí que sube y baja</translation>
    </message>
    <message>
        <source>hesitation</source>
        <translation>titubeo al acelerar</translation>
    </message>
    <message>
        <source>low power</source>
        <translation>poca potencia</translation>
    </message>
    <message>
        <source>jerking</source>
        <translation>tirones</translation>
    </message>
    <message>
        <source>surging</source>
        <translation>oscilación de la velocidad</translation>
    </message>
    <message>
        <source>stalls</source>
        <translation>se cala</translation>
    </message>
    <message>
        <source>stalls when stopping</source>
        <translation>se cala al detenerse</translation>
    </message>
    <message>
        <source>dies while driving</source>
        <translation>se apaga en marcha</translation>
    </message>
    <message>
        <source>runs with the ignition off</source>
        <translation>sigue en marcha sin contacto</translation>
    </message>
    <message>
        <source>intake backfire</source>
        <translation>contraexplosión en la admisión</translation>
    </message>
    <message>
        <source>exhaust backfire</source>
        <translation>explosiones en el escape</translation>
    </message>
    <message>
        <source>pinging</source>
        <translation>picado de bielas</translation>
    </message>
    <message>
        <source>limp mode</source>
        <translation>modo de emergencia</translation>
    </message>
    <message>
        <source>revs stay up</source>
        <translation>se queda acelerado</translation>
    </message>
    <message>
        <source>no restart hot</source>
        <translation>no rearranca en caliente</translation>
    </message>
    <message>
        <source>cranks, no start</source>
        <translation>gira pero no arranca</translation>
    </message>
    <message>
        <source>no crank</source>
        <translation>no gira el motor de arranque</translation>
    </message>
    <message>
        <source>slow cranking</source>
        <translation>arranque lento del motor de arranque</translation>
    </message>
    <message>
        <source>long cranking</source>
        <translation>tarda en arrancar</translation>
    </message>
    <message>
        <source>bad start after filling up</source>
        <translation>arranca mal después de repostar</translation>
    </message>
    <message>
        <source>starts then dies</source>
        <translation>arranca y se apaga</translation>
    </message>
    <message>
        <source>shakes at speed</source>
        <translation>vibra a cierta velocidad</translation>
    </message>
    <message>
        <source>shakes when braking</source>
        <translation>vibra al frenar</translation>
    </message>
    <message>
        <source>drones with speed</source>
        <translation>zumba con la velocidad</translation>
    </message>
    <message>
        <source>brake squeal</source>
        <translation>chillido de frenos</translation>
    </message>
    <message>
        <source>pulls when braking</source>
        <translation>tira hacia un lado al frenar</translation>
    </message>
    <message>
        <source>soft brake pedal</source>
        <translation>pedal de freno blando</translation>
    </message>
    <message>
        <source>brake drag</source>
        <translation>freno que arrastra</translation>
    </message>
    <message>
        <source>parking brake fault</source>
        <translation>avería del freno de estacionamiento</translation>
    </message>
    <message>
        <source>clunk over bumps</source>
        <translation>golpe en los baches</translation>
    </message>
    <message>
        <source>clicks when turning</source>
        <translation>chasquidos al girar</translation>
    </message>
    <message>
        <source>heavy steering</source>
        <translation>dirección dura</translation>
    </message>
    <message>
        <source>wanders or pulls</source>
        <translation>se desvía o tira hacia un lado</translation>
    </message>
    <message>
        <source>odd tyre wear</source>
        <translation>desgaste irregular de neumáticos</translation>
    </message>
</context>
</TS>
