<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es">
<context>
    <name></name>
    <message>
        <source>Intake camshaft position actuator, bank 1: circuit</source>
        <translation>Actuador de posición del árbol de levas de admisión, bancada 1: circuito</translation>
    </message>
    <message>
        <source>Intake camshaft timing, bank 1: too far advanced, or performance</source>
        <translation>Sincronización del árbol de levas de admisión, bancada 1: demasiado adelantada, o funcionamiento</translation>
    </message>
    <message>
        <source>Intake camshaft timing, bank 1: too far retarded</source>
        <translation>Sincronización del árbol de levas de admisión, bancada 1: demasiado retrasada</translation>
    </message>
    <message>
        <source>Exhaust camshaft position actuator, bank 1: circuit</source>
        <translation>Actuador de posición del árbol de levas de escape, bancada 1: circuito</translation>
    </message>
    <message>
        <source>Exhaust camshaft timing, bank 1: too far advanced, or performance</source>
        <translation>Sincronización del árbol de levas de escape, bancada 1: demasiado adelantada, o funcionamiento</translation>
    </message>
    <message>
        <source>Exhaust camshaft timing, bank 1: too far retarded</source>
        <translation>Sincronización del árbol de levas de escape, bancada 1: demasiado retrasada</translation>
    </message>
    <message>
        <source>Crankshaft and camshaft positions do not agree, bank 1 sensor A</source>
        <translation>Las posiciones de cigüeñal y árbol de levas no coinciden, bancada 1 sensor A</translation>
    </message>
    <message>
        <source>Crankshaft and camshaft positions do not agree, bank 1 sensor B</source>
        <translation>Las posiciones de cigüeñal y árbol de levas no coinciden, bancada 1 sensor B</translation>
    </message>
    <message>
        <source>Crankshaft and camshaft positions do not agree, bank 2 sensor A</source>
        <translation>Las posiciones de cigüeñal y árbol de levas no coinciden, bancada 2 sensor A</translation>
    </message>
    <message>
        <source>Crankshaft and camshaft positions do not agree, bank 2 sensor B</source>
        <translation>Las posiciones de cigüeñal y árbol de levas no coinciden, bancada 2 sensor B</translation>
    </message>
    <message>
        <source>Oxygen sensor heater, bank 1 sensor 1: control circuit</source>
        <translation>Calefactor del sensor de oxígeno, bancada 1 sensor 1: circuito de control</translation>
    </message>
    <message>
        <source>Oxygen sensor heater, bank 1 sensor 2: control circuit</source>
        <translation>Calefactor del sensor de oxígeno, bancada 1 sensor 2: circuito de control</translation>
    </message>
    <message>
        <source>Air flow or pressure does not agree with the throttle position</source>
        <translation>El caudal o la presión de aire no coincide con la posición de la mariposa</translation>
    </message>
    <message>
        <source>Fuel rail pressure: too low</source>
        <translation>Presión de la rampa de combustible: demasiado baja</translation>
    </message>
    <message>
        <source>Fuel rail pressure: too high</source>
        <translation>Presión de la rampa de combustible: demasiado alta</translation>
    </message>
    <message>
        <source>Fuel pressure regulator: performance</source>
        <translation>Regulador de presión de combustible: funcionamiento</translation>
    </message>
    <message>
        <source>Fuel system: large leak detected</source>
        <translation>Sistema de combustible: fuga grande detectada</translation>
    </message>
    <message>
        <source>Air mass or volume sensor: circuit</source>
        <translation>Sensor de masa o volumen de aire: circuito</translation>
    </message>
    <message>
        <source>Air mass or volume sensor: range or performance</source>
        <translation>Sensor de masa o volumen de aire: rango o funcionamiento</translation>
    </message>
    <message>
        <source>Air mass or volume sensor: signal low</source>
        <translation>Sensor de masa o volumen de aire: señal baja</translation>
    </message>
    <message>
        <source>Air mass or volume sensor: signal high</source>
        <translation>Sensor de masa o volumen de aire: señal alta</translation>
    </message>
    <message>
        <source>Air mass or volume sensor: intermittent</source>
        <translation>Sensor de masa o volumen de aire: intermitente</translation>
    </message>
    <message>
        <source>Intake pressure or barometric sensor: circuit</source>
        <translation>Sensor de presión de admisión o barométrica: circuito</translation>
    </message>
    <message>
        <source>Intake pressure or barometric sensor: range or performance</source>
        <translation>Sensor de presión de admisión o barométrica: rango o funcionamiento</translation>
    </message>
    <message>
        <source>Intake pressure or barometric sensor: signal low</source>
        <translation>Sensor de presión de admisión o barométrica: señal baja</translation>
    </message>
    <message>
        <source>Intake pressure or barometric sensor: signal high</source>
        <translation>Sensor de presión de admisión o barométrica: señal alta</translation>
    </message>
    <message>
        <source>Intake air temperature sensor: circuit</source>
        <translation>Sensor de temperatura del aire de admisión: circuito</translation>
    </message>
    <message>
        <source>Intake air temperature sensor: range or performance</source>
        <translation>Sensor de temperatura del aire de admisión: rango o funcionamiento</translation>
    </message>
    <message>
        <source>Intake air temperature sensor: signal low</source>
        <translation>Sensor de temperatura del aire de admisión: señal baja</translation>
    </message>
    <message>
        <source>Intake air temperature sensor: signal high</source>
        <translation>Sensor de temperatura del aire de admisión: señal alta</translation>
    </message>
    <message>
        <source>Engine coolant temperature sensor: circuit</source>
        <translation>Sensor de temperatura del refrigerante del motor: circuito</translation>
    </message>
    <message>
        <source>Engine coolant temperature sensor: range or performance</source>
        <translation>Sensor de temperatura del refrigerante del motor: rango o funcionamiento</translation>
    </message>
    <message>
        <source>Engine coolant temperature sensor: signal low</source>
        <translation>Sensor de temperatura del refrigerante del motor: señal baja</translation>
    </message>
    <message>
        <source>Engine coolant temperature sensor: signal high</source>
        <translation>Sensor de temperatura del refrigerante del motor: señal alta</translation>
    </message>
    <message>
        <source>Engine coolant temperature sensor: intermittent</source>
        <translation>Sensor de temperatura del refrigerante del motor: intermitente</translation>
    </message>
    <message>
        <source>Throttle or pedal position sensor A: circuit</source>
        <translation>Sensor A de posición de mariposa o pedal: circuito</translation>
    </message>
    <message>
        <source>Throttle or pedal position sensor A: range or performance</source>
        <translation>Sensor A de posición de mariposa o pedal: rango o funcionamiento</translation>
    </message>
    <message>
        <source>Throttle or pedal position sensor A: signal low</source>
        <translation>Sensor A de posición de mariposa o pedal: señal baja</translation>
    </message>
    <message>
        <source>Throttle or pedal position sensor A: signal high</source>
        <translation>Sensor A de posición de mariposa o pedal: señal alta</translation>
    </message>
    <message>
        <source>Coolant not warm enough for closed-loop fuel control</source>
        <translation>Refrigerante demasiado frío para el control de combustible en lazo cerrado</translation>
    </message>
    <message>
        <source>Coolant stays below the thermostat&apos;s regulating temperature</source>
        <translation>El refrigerante no alcanza la temperatura de regulación del termostato</translation>
    </message>
    <message>
        <source>Oxygen sensor, bank 1 sensor 1: circuit</source>
        <translation>Sensor de oxígeno, bancada 1 sensor 1: circuito</translation>
    </message>
    <message>
        <source>Oxygen sensor, bank 1 sensor 1: low voltage</source>
        <translation>Sensor de oxígeno, bancada 1 sensor 1: tensión baja</translation>
    </message>
    <message>
        <source>Oxygen sensor, bank 1 sensor 1: high voltage</source>
        <translation>Sensor de oxígeno, bancada 1 sensor 1: tensión alta</translation>
    </message>
    <message>
        <source>Oxygen sensor, bank 1 sensor 1: slow response</source>
        <translation>Sensor de oxígeno, bancada 1 sensor 1: respuesta lenta</translation>
    </message>
    <message>
        <source>Oxygen sensor, bank 1 sensor 1: no activity</source>
        <translation>Sensor de oxígeno, bancada 1 sensor 1: sin actividad</translation>
    </message>
    <message>
        <source>Oxygen sensor heater, bank 1 sensor 1: circuit</source>
        <translation>Calefactor del sensor de oxígeno, bancada 1 sensor 1: circuito</translation>
    </message>
    <message>
        <source>Oxygen sensor, bank 1 sensor 2: circuit</source>
        <translation>Sensor de oxígeno, bancada 1 sensor 2: circuito</translation>
    </message>
    <message>
        <source>Oxygen sensor, bank 1 sensor 2: low voltage</source>
        <translation>Sensor de oxígeno, bancada 1 sensor 2: tensión baja</translation>
    </message>
    <message>
        <source>Oxygen sensor, bank 1 sensor 2: high voltage</source>
        <translation>Sensor de oxígeno, bancada 1 sensor 2: tensión alta</translation>
    </message>
    <message>
        <source>Oxygen sensor, bank 1 sensor 2: no activity</source>
        <translation>Sensor de oxígeno, bancada 1 sensor 2: sin actividad</translation>
    </message>
    <message>
        <source>Oxygen sensor heater, bank 1 sensor 2: circuit</source>
        <translation>Calefactor del sensor de oxígeno, bancada 1 sensor 2: circuito</translation>
    </message>
    <message>
        <source>Mixture too lean, bank 1</source>
        <translation>Mezcla demasiado pobre, bancada 1</translation>
    </message>
    <message>
        <source>Mixture too rich, bank 1</source>
        <translation>Mezcla demasiado rica, bancada 1</translation>
    </message>
    <message>
        <source>Mixture too lean, bank 2</source>
        <translation>Mezcla demasiado pobre, bancada 2</translation>
    </message>
    <message>
        <source>Mixture too rich, bank 2</source>
        <translation>Mezcla demasiado rica, bancada 2</translation>
    </message>
    <message>
        <source>Fuel rail pressure sensor: circuit</source>
        <translation>Sensor de presión de la rampa de combustible: circuito</translation>
    </message>
    <message>
        <source>Fuel rail pressure sensor: range or performance</source>
        <translation>Sensor de presión de la rampa de combustible: rango o funcionamiento</translation>
    </message>
    <message>
        <source>Fuel rail pressure sensor: signal low</source>
        <translation>Sensor de presión de la rampa de combustible: señal baja</translation>
    </message>
    <message>
        <source>Fuel rail pressure sensor: signal high</source>
        <translation>Sensor de presión de la rampa de combustible: señal alta</translation>
    </message>
    <message>
        <source>Injector circuit, no cylinder named</source>
        <translation>Circuito de inyector, sin indicar cilindro</translation>
    </message>
    <message>
        <source>Injector circuit, cylinder 1</source>
        <translation>Circuito de inyector, cilindro 1</translation>
    </message>
    <message>
        <source>Injector circuit, cylinder 2</source>
        <translation>Circuito de inyector, cilindro 2</translation>
    </message>
    <message>
        <source>Injector circuit, cylinder 3</source>
        <translation>Circuito de inyector, cilindro 3</translation>
    </message>
    <message>
        <source>Injector circuit, cylinder 4</source>
        <translation>Circuito de inyector, cilindro 4</translation>
    </message>
    <message>
        <source>Injector circuit, cylinder 5</source>
        <translation>Circuito de inyector, cilindro 5</translation>
    </message>
    <message>
        <source>Injector circuit, cylinder 6</source>
        <translation>Circuito de inyector, cilindro 6</translation>
    </message>
    <message>
        <source>Injector circuit, cylinder 7</source>
        <translation>Circuito de inyector, cilindro 7</translation>
    </message>
    <message>
        <source>Injector circuit, cylinder 8</source>
        <translation>Circuito de inyector, cilindro 8</translation>
    </message>
    <message>
        <source>Injector circuit, cylinder 9</source>
        <translation>Circuito de inyector, cilindro 9</translation>
    </message>
    <message>
        <source>Injector circuit, cylinder 10</source>
        <translation>Circuito de inyector, cilindro 10</translation>
    </message>
    <message>
        <source>Injector circuit, cylinder 11</source>
        <translation>Circuito de inyector, cilindro 11</translation>
    </message>
    <message>
        <source>Injector circuit, cylinder 12</source>
        <translation>Circuito de inyector, cilindro 12</translation>
    </message>
    <message>
        <source>Engine too hot</source>
        <translation>Motor demasiado caliente</translation>
    </message>
    <message>
        <source>Gearbox fluid too hot</source>
        <translation>Aceite de la caja de cambios demasiado caliente</translation>
    </message>
    <message>
        <source>Fuel pump: primary circuit</source>
        <translation>Bomba de combustible: circuito primario</translation>
    </message>
    <message>
        <source>Fuel pump: secondary circuit low</source>
        <translation>Bomba de combustible: circuito secundario con señal baja</translation>
    </message>
    <message>
        <source>Fuel pump: secondary circuit high</source>
        <translation>Bomba de combustible: circuito secundario con señal alta</translation>
    </message>
    <message>
        <source>Boost pressure: too high</source>
        <translation>Presión de sobrealimentación: demasiado alta</translation>
    </message>
    <message>
        <source>Boost pressure: too low</source>
        <translation>Presión de sobrealimentación: demasiado baja</translation>
    </message>
    <message>
        <source>Misfire in random or several cylinders</source>
        <translation>Fallo de encendido aleatorio o en varios cilindros</translation>
    </message>
    <message>
        <source>Misfire in cylinder 1</source>
        <translation>Fallo de encendido en el cilindro 1</translation>
    </message>
    <message>
        <source>Misfire in cylinder 2</source>
        <translation>Fallo de encendido en el cilindro 2</translation>
    </message>
    <message>
        <source>Misfire in cylinder 3</source>
        <translation>Fallo de encendido en el cilindro 3</translation>
    </message>
    <message>
        <source>Misfire in cylinder 4</source>
        <translation>Fallo de encendido en el cilindro 4</translation>
    </message>
    <message>
        <source>Misfire in cylinder 5</source>
        <translation>Fallo de encendido en el cilindro 5</translation>
    </message>
    <message>
        <source>Misfire in cylinder 6</source>
        <translation>Fallo de encendido en el cilindro 6</translation>
    </message>
    <message>
        <source>Misfire in cylinder 7</source>
        <translation>Fallo de encendido en el cilindro 7</translation>
    </message>
    <message>
        <source>Misfire in cylinder 8</source>
        <translation>Fallo de encendido en el cilindro 8</translation>
    </message>
    <message>
        <source>Misfire in cylinder 9</source>
        <translation>Fallo de encendido en el cilindro 9</translation>
    </message>
    <message>
        <source>Misfire in cylinder 10</source>
        <translation>Fallo de encendido en el cilindro 10</translation>
    </message>
    <message>
        <source>Misfire in cylinder 11</source>
        <translation>Fallo de encendido en el cilindro 11</translation>
    </message>
    <message>
        <source>Misfire in cylinder 12</source>
        <translation>Fallo de encendido en el cilindro 12</translation>
    </message>
    <message>
        <source>Misfire detected with little fuel in the tank</source>
        <translation>Fallo de encendido detectado con poco combustible en el depósito</translation>
    </message>
    <message>
        <source>Misfire detected in the first 1,000 revolutions after start</source>
        <translation>Fallo de encendido detectado en las primeras 1,000 revoluciones tras el arranque</translation>
    </message>
    <message>
        <source>Knock sensor 1: circuit</source>
        <translation>Sensor de detonación 1: circuito</translation>
    </message>
    <message>
        <source>Knock sensor 1: range or performance</source>
        <translation>Sensor de detonación 1: rango o funcionamiento</translation>
    </message>
    <message>
        <source>Knock sensor 1: signal low</source>
        <translation>Sensor de detonación 1: señal baja</translation>
    </message>
    <message>
        <source>Knock sensor 1: signal high</source>
        <translation>Sensor de detonación 1: señal alta</translation>
    </message>
    <message>
        <source>Crankshaft position sensor A: circuit</source>
        <translation>Sensor A de posición del cigüeñal: circuito</translation>
    </message>
    <message>
        <source>Crankshaft position sensor A: range or performance</source>
        <translation>Sensor A de posición del cigüeñal: rango o funcionamiento</translation>
    </message>
    <message>
        <source>Crankshaft position sensor A: signal low</source>
        <translation>Sensor A de posición del cigüeñal: señal baja</translation>
    </message>
    <message>
        <source>Crankshaft position sensor A: signal high</source>
        <translation>Sensor A de posición del cigüeñal: señal alta</translation>
    </message>
    <message>
        <source>Crankshaft position sensor A: intermittent</source>
        <translation>Sensor A de posición del cigüeñal: intermitente</translation>
    </message>
    <message>
        <source>Camshaft position sensor A, bank 1: circuit</source>
        <translation>Sensor A de posición del árbol de levas, bancada 1: circuito</translation>
    </message>
    <message>
        <source>Camshaft position sensor A, bank 1: range or performance</source>
        <translation>Sensor A de posición del árbol de levas, bancada 1: rango o funcionamiento</translation>
    </message>
    <message>
        <source>Camshaft position sensor A, bank 1: signal low</source>
        <translation>Sensor A de posición del árbol de levas, bancada 1: señal baja</translation>
    </message>
    <message>
        <source>Camshaft position sensor A, bank 1: signal high</source>
        <translation>Sensor A de posición del árbol de levas, bancada 1: señal alta</translation>
    </message>
    <message>
        <source>Camshaft position sensor A, bank 1: intermittent</source>
        <translation>Sensor A de posición del árbol de levas, bancada 1: intermitente</translation>
    </message>
    <message>
        <source>Ignition coil, no cylinder named: primary or secondary circuit</source>
        <translation>Bobina de encendido, sin indicar cilindro: circuito primario o secundario</translation>
    </message>
    <message>
        <source>Ignition coil A: primary or secondary circuit</source>
        <translation>Bobina de encendido A: circuito primario o secundario</translation>
    </message>
    <message>
        <source>Ignition coil B: primary or secondary circuit</source>
        <translation>Bobina de encendido B: circuito primario o secundario</translation>
    </message>
    <message>
        <source>Ignition coil C: primary or secondary circuit</source>
        <translation>Bobina de encendido C: circuito primario o secundario</translation>
    </message>
    <message>
        <source>Ignition coil D: primary or secondary circuit</source>
        <translation>Bobina de encendido D: circuito primario o secundario</translation>
    </message>
    <message>
        <source>Ignition coil E: primary or secondary circuit</source>
        <translation>Bobina de encendido E: circuito primario o secundario</translation>
    </message>
    <message>
        <source>Ignition coil F: primary or secondary circuit</source>
        <translation>Bobina de encendido F: circuito primario o secundario</translation>
    </message>
    <message>
        <source>Ignition coil G: primary or secondary circuit</source>
        <translation>Bobina de encendido G: circuito primario o secundario</translation>
    </message>
    <message>
        <source>Ignition coil H: primary or secondary circuit</source>
        <translation>Bobina de encendido H: circuito primario o secundario</translation>
    </message>
    <message>
        <source>Ignition coil I: primary or secondary circuit</source>
        <translation>Bobina de encendido I: circuito primario o secundario</translation>
    </message>
    <message>
        <source>Ignition coil J: primary or secondary circuit</source>
        <translation>Bobina de encendido J: circuito primario o secundario</translation>
    </message>
    <message>
        <source>Ignition coil K: primary or secondary circuit</source>
        <translation>Bobina de encendido K: circuito primario o secundario</translation>
    </message>
    <message>
        <source>Ignition coil L: primary or secondary circuit</source>
        <translation>Bobina de encendido L: circuito primario o secundario</translation>
    </message>
    <message>
        <source>Glow plug or heater circuit A</source>
        <translation>Circuito A de bujías de precalentamiento o calefactor</translation>
    </message>
    <message>
        <source>Exhaust gas recirculation: flow</source>
        <translation>Recirculación de gases de escape: caudal</translation>
    </message>
    <message>
        <source>Exhaust gas recirculation: too little flow</source>
        <translation>Recirculación de gases de escape: caudal insuficiente</translation>
    </message>
    <message>
        <source>Exhaust gas recirculation: too much flow</source>
        <translation>Recirculación de gases de escape: caudal excesivo</translation>
    </message>
    <message>
        <source>Exhaust gas recirculation: control circuit</source>
        <translation>Recirculación de gases de escape: circuito de control</translation>
    </message>
    <message>
        <source>Exhaust gas recirculation: control range or performance</source>
        <translation>Recirculación de gases de escape: rango o funcionamiento del control</translation>
    </message>
    <message>
        <source>Secondary air system</source>
        <translation>Sistema de aire secundario</translation>
    </message>
    <message>
        <source>Secondary air system: wrong flow</source>
        <translation>Sistema de aire secundario: caudal incorrecto</translation>
    </message>
    <message>
        <source>Catalyst below its efficiency threshold, bank 1</source>
        <translation>Catalizador por debajo de su umbral de eficiencia, bancada 1</translation>
    </message>
    <message>
        <source>Catalyst below its efficiency threshold, bank 2</source>
        <translation>Catalizador por debajo de su umbral de eficiencia, bancada 2</translation>
    </message>
    <message>
        <source>Fuel vapour system</source>
        <translation>Sistema evaporativo</translation>
    </message>
    <message>
        <source>Fuel vapour system: wrong purge flow</source>
        <translation>Sistema evaporativo: caudal de purga incorrecto</translation>
    </message>
    <message>
        <source>Fuel vapour system: small leak</source>
        <translation>Sistema evaporativo: fuga pequeña</translation>
    </message>
    <message>
        <source>Fuel vapour purge valve: circuit</source>
        <translation>Válvula de purga del sistema evaporativo: circuito</translation>
    </message>
    <message>
        <source>Fuel vapour vent: control circuit</source>
        <translation>Ventilación del sistema evaporativo: circuito de control</translation>
    </message>
    <message>
        <source>Fuel vapour pressure sensor: range or performance</source>
        <translation>Sensor de presión del sistema evaporativo: rango o funcionamiento</translation>
    </message>
    <message>
        <source>Fuel vapour system: large leak</source>
        <translation>Sistema evaporativo: fuga grande</translation>
    </message>
    <message>
        <source>Fuel vapour system: very small leak</source>
        <translation>Sistema evaporativo: fuga muy pequeña</translation>
    </message>
    <message>
        <source>Fuel vapour leak, filler cap loose or off</source>
        <translation>Fuga en el sistema evaporativo, tapón del depósito flojo o sin poner</translation>
    </message>
    <message>
        <source>Fuel level sensor A: circuit</source>
        <translation>Sensor A de nivel de combustible: circuito</translation>
    </message>
    <message>
        <source>Fuel level sensor A: range or performance</source>
        <translation>Sensor A de nivel de combustible: rango o funcionamiento</translation>
    </message>
    <message>
        <source>Fuel level sensor A: signal low</source>
        <translation>Sensor A de nivel de combustible: señal baja</translation>
    </message>
    <message>
        <source>Fuel level sensor A: signal high</source>
        <translation>Sensor A de nivel de combustible: señal alta</translation>
    </message>
    <message>
        <source>Cooling fan 1: control circuit</source>
        <translation>Ventilador de refrigeración 1: circuito de control</translation>
    </message>
    <message>
        <source>Cooling fan 2: control circuit</source>
        <translation>Ventilador de refrigeración 2: circuito de control</translation>
    </message>
    <message>
        <source>Fuel vapour system: purge flow when there should be none</source>
        <translation>Sistema evaporativo: caudal de purga cuando no debería haberlo</translation>
    </message>
    <message>
        <source>Vehicle speed sensor A</source>
        <translation>Sensor A de velocidad del vehículo</translation>
    </message>
    <message>
        <source>Vehicle speed sensor A: range or performance</source>
        <translation>Sensor A de velocidad del vehículo: rango o funcionamiento</translation>
    </message>
    <message>
        <source>Vehicle speed sensor A: intermittent, erratic or high</source>
        <translation>Sensor A de velocidad del vehículo: señal intermitente, errática o alta</translation>
    </message>
    <message>
        <source>Brake switch A and B do not agree</source>
        <translation>Los interruptores de freno A y B no coinciden</translation>
    </message>
    <message>
        <source>Idle control</source>
        <translation>Control de ralentí</translation>
    </message>
    <message>
        <source>Idle speed lower than asked for</source>
        <translation>Régimen de ralentí más bajo que el solicitado</translation>
    </message>
    <message>
        <source>Idle speed higher than asked for</source>
        <translation>Régimen de ralentí más alto que el solicitado</translation>
    </message>
    <message>
        <source>Wrong immobilizer key</source>
        <translation>Llave del inmovilizador incorrecta</translation>
    </message>
    <message>
        <source>Engine oil pressure sensor or switch: circuit</source>
        <translation>Sensor o interruptor de presión de aceite del motor: circuito</translation>
    </message>
    <message>
        <source>Engine oil pressure sensor or switch: range or performance</source>
        <translation>Sensor o interruptor de presión de aceite del motor: rango o funcionamiento</translation>
    </message>
    <message>
        <source>Engine oil pressure sensor or switch: signal low</source>
        <translation>Sensor o interruptor de presión de aceite del motor: señal baja</translation>
    </message>
    <message>
        <source>Engine oil pressure sensor or switch: signal high</source>
        <translation>Sensor o interruptor de presión de aceite del motor: señal alta</translation>
    </message>
    <message>
        <source>Engine oil pressure too low</source>
        <translation>Presión de aceite del motor demasiado baja</translation>
    </message>
    <message>
        <source>Air conditioning pressure sensor A: signal low</source>
        <translation>Sensor A de presión del aire acondicionado: señal baja</translation>
    </message>
    <message>
        <source>Air conditioning pressure sensor A: signal high</source>
        <translation>Sensor A de presión del aire acondicionado: señal alta</translation>
    </message>
    <message>
        <source>Power steering pressure sensor: range or performance</source>
        <translation>Sensor de presión de la dirección asistida: rango o funcionamiento</translation>
    </message>
    <message>
        <source>System voltage</source>
        <translation>Tensión del sistema</translation>
    </message>
    <message>
        <source>System voltage low</source>
        <translation>Tensión del sistema baja</translation>
    </message>
    <message>
        <source>System voltage high</source>
        <translation>Tensión del sistema alta</translation>
    </message>
    <message>
        <source>Brake switch A: circuit</source>
        <translation>Interruptor de freno A: circuito</translation>
    </message>
    <message>
        <source>Engine control module: memory check</source>
        <translation>Módulo de control del motor: comprobación de memoria</translation>
    </message>
    <message>
        <source>Engine control module: read-only memory</source>
        <translation>Módulo de control del motor: memoria de solo lectura</translation>
    </message>
    <message>
        <source>Engine control module: processor</source>
        <translation>Módulo de control del motor: procesador</translation>
    </message>
    <message>
        <source>Starter relay: circuit low</source>
        <translation>Relé del motor de arranque: circuito con señal baja</translation>
    </message>
    <message>
        <source>Starter relay: circuit high</source>
        <translation>Relé del motor de arranque: circuito con señal alta</translation>
    </message>
    <message>
        <source>Generator control circuit</source>
        <translation>Circuito de control del alternador</translation>
    </message>
    <message>
        <source>Generator lamp: control circuit</source>
        <translation>Testigo de carga del alternador: circuito de control</translation>
    </message>
    <message>
        <source>Generator field: control circuit</source>
        <translation>Excitación del alternador: circuito de control</translation>
    </message>
    <message>
        <source>Immobilizer key not programmed to the module</source>
        <translation>Llave del inmovilizador no programada en el módulo</translation>
    </message>
    <message>
        <source>Air conditioning clutch relay: control circuit</source>
        <translation>Relé del embrague del compresor del aire acondicionado: circuito de control</translation>
    </message>
    <message>
        <source>Glow plug control module: circuit</source>
        <translation>Módulo de control de las bujías de precalentamiento: circuito</translation>
    </message>
    <message>
        <source>Glow plug, cylinder 1: circuit</source>
        <translation>Bujía de precalentamiento, cilindro 1: circuito</translation>
    </message>
    <message>
        <source>Glow plug, cylinder 2: circuit</source>
        <translation>Bujía de precalentamiento, cilindro 2: circuito</translation>
    </message>
    <message>
        <source>Glow plug, cylinder 3: circuit</source>
        <translation>Bujía de precalentamiento, cilindro 3: circuito</translation>
    </message>
    <message>
        <source>Glow plug, cylinder 4: circuit</source>
        <translation>Bujía de precalentamiento, cilindro 4: circuito</translation>
    </message>
    <message>
        <source>Glow plug, cylinder 5: circuit</source>
        <translation>Bujía de precalentamiento, cilindro 5: circuito</translation>
    </message>
    <message>
        <source>Glow plug, cylinder 6: circuit</source>
        <translation>Bujía de precalentamiento, cilindro 6: circuito</translation>
    </message>
    <message>
        <source>Glow plug, cylinder 7: circuit</source>
        <translation>Bujía de precalentamiento, cilindro 7: circuito</translation>
    </message>
    <message>
        <source>Glow plug, cylinder 8: circuit</source>
        <translation>Bujía de precalentamiento, cilindro 8: circuito</translation>
    </message>
    <message>
        <source>Main relay: control circuit open</source>
        <translation>Relé principal: circuito de control abierto</translation>
    </message>
    <message>
        <source>Gearbox control asks for the lamp</source>
        <translation>El control de la caja de cambios pide encender el testigo</translation>
    </message>
    <message>
        <source>Brake switch B: circuit</source>
        <translation>Interruptor de freno B: circuito</translation>
    </message>
    <message>
        <source>Gear range sensor: circuit</source>
        <translation>Sensor de posición del selector de marchas: circuito</translation>
    </message>
    <message>
        <source>Gearbox input speed sensor: circuit</source>
        <translation>Sensor de velocidad de entrada de la caja de cambios: circuito</translation>
    </message>
    <message>
        <source>Gearbox output speed sensor: circuit</source>
        <translation>Sensor de velocidad de salida de la caja de cambios: circuito</translation>
    </message>
    <message>
        <source>Wrong gear ratio</source>
        <translation>Relación de marcha incorrecta</translation>
    </message>
    <message>
        <source>Wrong ratio in gear 1</source>
        <translation>Relación incorrecta en 1.ª marcha</translation>
    </message>
    <message>
        <source>Wrong ratio in gear 2</source>
        <translation>Relación incorrecta en 2.ª marcha</translation>
    </message>
    <message>
        <source>Wrong ratio in gear 3</source>
        <translation>Relación incorrecta en 3.ª marcha</translation>
    </message>
    <message>
        <source>Wrong ratio in gear 4</source>
        <translation>Relación incorrecta en 4.ª marcha</translation>
    </message>
    <message>
        <source>Wrong ratio in gear 5</source>
        <translation>Relación incorrecta en 5.ª marcha</translation>
    </message>
    <message>
        <source>Torque converter clutch: circuit open</source>
        <translation>Embrague del convertidor de par: circuito abierto</translation>
    </message>
    <message>
        <source>Torque converter clutch: performance, or stuck off</source>
        <translation>Embrague del convertidor de par: funcionamiento, o atascado desacoplado</translation>
    </message>
    <message>
        <source>Torque converter clutch: stuck on</source>
        <translation>Embrague del convertidor de par: atascado acoplado</translation>
    </message>
    <message>
        <source>Shift solenoid A</source>
        <translation>Solenoide de cambio A</translation>
    </message>
    <message>
        <source>Shift solenoid B</source>
        <translation>Solenoide de cambio B</translation>
    </message>
    <message>
        <source>Park or neutral switch: input circuit</source>
        <translation>Interruptor de estacionamiento o punto muerto: circuito de entrada</translation>
    </message>
    <message>
        <source>Gearbox fluid pressure low</source>
        <translation>Presión del aceite de la caja de cambios baja</translation>
    </message>
    <message>
        <source>Particulate filter below its efficiency threshold, bank 1</source>
        <translation>Filtro de partículas por debajo de su umbral de eficiencia, bancada 1</translation>
    </message>
    <message>
        <source>Fuel trim after the catalyst too lean, bank 1</source>
        <translation>Corrección de mezcla después del catalizador demasiado pobre, bancada 1</translation>
    </message>
    <message>
        <source>Fuel trim after the catalyst too rich, bank 1</source>
        <translation>Corrección de mezcla después del catalizador demasiado rica, bancada 1</translation>
    </message>
    <message>
        <source>Throttle actuator motor: range or performance</source>
        <translation>Motor del actuador de mariposa: rango o funcionamiento</translation>
    </message>
    <message>
        <source>Throttle actuator stuck open</source>
        <translation>Actuador de mariposa atascado abierto</translation>
    </message>
    <message>
        <source>Throttle actuator stuck closed</source>
        <translation>Actuador de mariposa atascado cerrado</translation>
    </message>
    <message>
        <source>Throttle or pedal position sensors A and B do not agree</source>
        <translation>Los sensores de posición de mariposa o pedal A y B no coinciden</translation>
    </message>
    <message>
        <source>Throttle or pedal position sensors D and E do not agree</source>
        <translation>Los sensores de posición de mariposa o pedal D y E no coinciden</translation>
    </message>
    <message>
        <source>Mixture too lean at idle, bank 1</source>
        <translation>Mezcla demasiado pobre al ralentí, bancada 1</translation>
    </message>
    <message>
        <source>Mixture too rich at idle, bank 1</source>
        <translation>Mezcla demasiado rica al ralentí, bancada 1</translation>
    </message>
    <message>
        <source>Boost system performance</source>
        <translation>Funcionamiento del sistema de sobrealimentación</translation>
    </message>
    <message>
        <source>Particulate filter: too much soot</source>
        <translation>Filtro de partículas: demasiado hollín</translation>
    </message>
    <message>
        <source>Left front wheel speed sensor: circuit</source>
        <translation>Sensor de velocidad de rueda delantera izquierda: circuito</translation>
    </message>
    <message>
        <source>Right front wheel speed sensor: circuit</source>
        <translation>Sensor de velocidad de rueda delantera derecha: circuito</translation>
    </message>
    <message>
        <source>Left rear wheel speed sensor: circuit</source>
        <translation>Sensor de velocidad de rueda trasera izquierda: circuito</translation>
    </message>
    <message>
        <source>Right rear wheel speed sensor: circuit</source>
        <translation>Sensor de velocidad de rueda trasera derecha: circuito</translation>
    </message>
    <message>
        <source>Control network A is off</source>
        <translation>Red de control A inactiva</translation>
    </message>
    <message>
        <source>No messages from the engine control module</source>
        <translation>Sin mensajes del módulo de control del motor</translation>
    </message>
    <message>
        <source>No messages from the gearbox control module</source>
        <translation>Sin mensajes del módulo de control de la caja de cambios</translation>
    </message>
    <message>
        <source>No messages from the ABS control module</source>
        <translation>Sin mensajes del módulo de control del ABS</translation>
    </message>
    <message>
        <source>No messages from the power steering control module</source>
        <translation>Sin mensajes del módulo de control de la dirección asistida</translation>
    </message>
    <message>
        <source>No messages from the body control module</source>
        <translation>Sin mensajes del módulo de control de la carrocería</translation>
    </message>
    <message>
        <source>No messages from the restraints control module</source>
        <translation>Sin mensajes del módulo de control de los sistemas de retención</translation>
    </message>
    <message>
        <source>No messages from the instrument cluster</source>
        <translation>Sin mensajes del cuadro de instrumentos</translation>
    </message>
    <message>
        <source>No messages from the immobilizer control module</source>
        <translation>Sin mensajes del módulo de control del inmovilizador</translation>
    </message>
</context>
</TS>
