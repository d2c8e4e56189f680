<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en">
    <context>
        <name>magview</name>
        <message>
            <source>Plate and screw both move the opening, only the screw moves the gap: check both again after tightening.</source>
            <extracomment>bench/advised.py</extracomment>
            <translation>Placa y tornillo mueven ambos el punto de apertura; solo el tornillo mueve la separación: compruebe ambas cosas otra vez después de apretar.</translation>
        </message>
        <message>
            <source>tightening the lock screw carries it on by {creep}° (closer), to {angle}°</source>
            <extracomment>bench/advised.py</extracomment>
            <translation>al apretar el tornillo de bloqueo avanza {creep}° (más juntos), hasta {angle}°</translation>
        </message>
        <message>
            <source>tightening the lock screw carries the contact screw along, which would first have to stand at {value}°, {beyond}° beyond the end of its travel ({low}° to {high}°)</source>
            <extracomment>bench/advised.py</extracomment>
            <translation>al apretar el tornillo de bloqueo se arrastra el de contacto, que antes tendría que estar a {value}°, {beyond}° más allá del extremo de su recorrido (de {low}° a {high}°)</translation>
        </message>
        <message>
            <source>A largest gap of {gap} with opening at the E-gap cannot be had: {reason}.</source>
            <extracomment>bench/advised.py</extracomment>
            <translation>No se puede lograr una apertura máxima de {gap} abriendo en el E-gap: {reason}.</translation>
        </message>
        <message>
            <source>Nothing to turn: {creep}; then the contacts open at the E-gap and the largest gap is {gap}.</source>
            <extracomment>bench/advised.py</extracomment>
            <translation>Nada que girar: {creep}; entonces los contactos abren en el E-gap y la apertura máxima es {gap}.</translation>
        </message>
        <message>
            <source>tightening the lock screw carries it back by {creep}° (wider), to {angle}°</source>
            <extracomment>bench/advised.py</extracomment>
            <translation>al apretar el tornillo de bloqueo retrocede {creep}° (más separados), hasta {angle}°</translation>
        </message>
        <message>
            <source>Nothing: the contacts open at the E-gap and the largest gap is {gap}.</source>
            <extracomment>bench/advised.py</extracomment>
            <translation>Nada: los contactos abren en el E-gap y la apertura máxima es {gap}.</translation>
        </message>
        <message>
            <source>slacken the clamp screws and the lock screw</source>
            <extracomment>bench/advised.py</extracomment>
            <translation>afloje los tornillos de sujeción y el tornillo de bloqueo</translation>
        </message>
        <message>
            <source>{first}, then {then}</source>
            <extracomment>bench/advised.py</extracomment>
            <translation>{first}, luego {then}</translation>
        </message>
        <message>
            <source>{moves}, to {angle}°; {creep}</source>
            <extracomment>bench/advised.py</extracomment>
            <translation>{moves}, hasta {angle}°; {creep}</translation>
        </message>
        <message>
            <source>{moves}; {creep}</source>
            <extracomment>bench/advised.py</extracomment>
            <translation>{moves}; {creep}</translation>
        </message>
        <message>
            <source>slacken the clamp screws</source>
            <extracomment>bench/advised.py, bench/describe.py</extracomment>
            <translation>aflojar los tornillos de sujeción</translation>
        </message>
        <message>
            <source>slacken the lock screw</source>
            <extracomment>bench/advised.py, bench/describe.py</extracomment>
            <translation>aflojar el tornillo de bloqueo</translation>
        </message>
        <message>
            <source>the backplate's angle is {value}; it must be a finite number of degrees</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>el ángulo de la placa base es {value}; debe ser un número finito de grados</translation>
        </message>
        <message>
            <source>the contact screw's angle is {value}; it must be a finite number of degrees</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>el ángulo del tornillo de contacto es {value}; debe ser un número finito de grados</translation>
        </message>
        <message>
            <source>the lamp's reading is {value}; it must be a finite number of degrees</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>la lectura de la lámpara es {value}; debe ser un número finito de grados</translation>
        </message>
        <message>
            <source>{to} is not a length; wear must be a finite number of millimetres</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>{to} no es una longitud; el desgaste debe ser un número finito de milímetros</translation>
        </message>
        <message>
            <source>this magneto's file gives no heel arm, so it cannot be said what a worn heel does</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>el archivo de esta magneto no da el brazo del talón; no se puede decir qué hace un talón gastado</translation>
        </message>
        <message>
            <source>the clamp screws are tight: slacken them before turning the backplate</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>los tornillos de sujeción están apretados: aflójelos antes de girar la placa base</translation>
        </message>
        <message>
            <source>the lock screw is tight: slacken it before turning the contact screw</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>el tornillo de bloqueo está apretado: aflójelo antes de girar el tornillo de contacto</translation>
        </message>
        <message>
            <source>this magneto is not on an engine: open an installation first</source>
            <extracomment>bench/apply.py, bench/sureness.py, ui/uncertainty_panel.py</extracomment>
            <translation>esta magneto no está en un motor: abra antes una instalación</translation>
        </message>
        <message>
            <source>with this setting the contacts never open and close, so the lamp tells no timing</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>con este ajuste los contactos nunca abren y cierran; la lámpara no indica ningún calado</translation>
        </message>
        <message>
            <source>“{fault}” is not a fault of the switch lead; it is shorted, broken or tab</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>«{fault}» no es un fallo del cable de masa; son shorted, broken o tab</translation>
        </message>
        <message>
            <source>the wanted timing is {value}; it must be a finite number of degrees</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>el calado deseado es {value}; debe ser un número finito de grados</translation>
        </message>
        <message>
            <source>the rotor's angle is {value}; it must be a finite number of degrees</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>el ángulo del rotor es {value}; debe ser un número finito de grados</translation>
        </message>
        <message>
            <source>the clock cannot run {steps} steps; it takes 0 to {most} at a time</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>el reloj no puede dar {steps} pasos; admite de 0 a {most} cada vez</translation>
        </message>
        <message>
            <source>the crank's angle is {value}; it must be a finite number of degrees</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>el ángulo del cigüeñal es {value}; debe ser un número finito de grados</translation>
        </message>
        <message>
            <source>a whole turn of teeth brings the coupling back to where it was, with the finger off</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>una vuelta entera de dientes devuelve el acoplamiento a donde estaba, sin el dedo</translation>
        </message>
        <message>
            <source>there are {most} trials already; strike one out first</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>ya hay {most} ensayos; tache antes uno</translation>
        </message>
        <message>
            <source>there is no trial {place}; there are {count}</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>no hay ensayo {place}; hay {count}</translation>
        </message>
        <message>
            <source>there are {most} inspections already; strike one out first</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>ya hay {most} inspecciones; tache antes una</translation>
        </message>
        <message>
            <source>there is no inspection {place}; there are {count}</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>no hay inspección {place}; hay {count}</translation>
        </message>
        <message>
            <source>{name}: is not a kept bench; its format must be "{wanted}"</source>
            <extracomment>bench/autosave.py</extracomment>
            <translation>{name}: no es un banco guardado; su formato debe ser "{wanted}"</translation>
        </message>
        <message>
            <source>{name}: is damaged: an inspection lacks the setting it was noted at</source>
            <extracomment>bench/autosave.py</extracomment>
            <translation>{name}: está dañado: a una inspección le falta el ajuste con el que se anotó</translation>
        </message>
        <message>
            <source>{name}: is damaged: an angle is not a finite number</source>
            <extracomment>bench/autosave.py</extracomment>
            <translation>{name}: está dañado: un ángulo no es un número finito</translation>
        </message>
        <message>
            <source>{name}: is damaged: {reason}</source>
            <extracomment>bench/autosave.py</extracomment>
            <translation>{name}: está dañado: {reason}</translation>
        </message>
        <message>
            <source>{name}: cannot be used: {reason}</source>
            <extracomment>bench/autosave.py</extracomment>
            <translation>{name}: no se puede usar: {reason}</translation>
        </message>
        <message>
            <source>Another magneto is on the bench: {magneto}.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Hay otra magneto en el banco: {magneto}.</translation>
        </message>
        <message>
            <source>Wear or pips of the magneto are others.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>El desgaste o las puntas de la magneto son otros.</translation>
        </message>
        <message>
            <source>The rotor is held.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>El rotor está sujeto.</translation>
        </message>
        <message>
            <source>The rotor was let go.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Se soltó el rotor.</translation>
        </message>
        <message>
            <source>The lock screw is tight.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>El tornillo de bloqueo está apretado.</translation>
        </message>
        <message>
            <source>The lock screw is slack.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>El tornillo de bloqueo está flojo.</translation>
        </message>
        <message>
            <source>The clamp screws are tight.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Los tornillos de sujeción están apretados.</translation>
        </message>
        <message>
            <source>The clamp screws are slack.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Los tornillos de sujeción están flojos.</translation>
        </message>
        <message>
            <source>The switch is on.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>El interruptor está en ON.</translation>
        </message>
        <message>
            <source>The switch is off.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>El interruptor está en OFF.</translation>
        </message>
        <message>
            <source>The lead's plug is in.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>La clavija del cable está puesta.</translation>
        </message>
        <message>
            <source>The lead's plug is out.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>La clavija del cable está fuera.</translation>
        </message>
        <message>
            <source>The switch lead is in another condition.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>El cable de masa está en otro estado.</translation>
        </message>
        <message>
            <source>The magneto flange stands in other teeth of the disc.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>La brida de la magneto está en otros dientes del disco.</translation>
        </message>
        <message>
            <source>The disc stands in other teeth of the drive flange.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>El disco está en otros dientes de la brida motriz.</translation>
        </message>
        <message>
            <source>The magneto stands for itself now.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>La magneto está ahora suelta, sin motor.</translation>
        </message>
        <message>
            <source>The magneto is on an engine now.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>La magneto está ahora en un motor.</translation>
        </message>
        <message>
            <source>The magneto is on the engine.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>La magneto está montada en el motor.</translation>
        </message>
        <message>
            <source>The magneto is off the engine.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>La magneto está desmontada del motor.</translation>
        </message>
        <message>
            <source>The left magneto is in view.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Se ve la magneto izquierda.</translation>
        </message>
        <message>
            <source>The right magneto is in view.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Se ve la magneto derecha.</translation>
        </message>
        <message>
            <source>The contacts open now.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Los contactos ahora abren.</translation>
        </message>
        <message>
            <source>The contacts never open now.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Los contactos ahora no abren nunca.</translation>
        </message>
        <message>
            <source>It is within its limits now.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Ahora está dentro de sus límites.</translation>
        </message>
        <message>
            <source>It is out of its limits now.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Ahora está fuera de sus límites.</translation>
        </message>
        <message>
            <source>The rotor was turned {angle} with rotation.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Se giró el rotor {angle} en sentido de giro.</translation>
        </message>
        <message>
            <source>The rotor was turned {angle} against rotation.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Se giró el rotor {angle} contra el giro.</translation>
        </message>
        <message>
            <source>The rotor was turned with rotation.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Se giró el rotor en sentido de giro.</translation>
        </message>
        <message>
            <source>The rotor was turned against rotation.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Se giró el rotor contra el giro.</translation>
        </message>
        <message>
            <source>The backplate was turned {angle} with rotation.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Se giró la placa base {angle} en sentido de giro.</translation>
        </message>
        <message>
            <source>The backplate was turned {angle} against rotation.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Se giró la placa base {angle} contra el giro.</translation>
        </message>
        <message>
            <source>The backplate was turned with rotation.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Se giró la placa base en sentido de giro.</translation>
        </message>
        <message>
            <source>The backplate was turned against rotation.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Se giró la placa base contra el giro.</translation>
        </message>
        <message>
            <source>The contact screw was turned {angle}, contacts closer.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Se giró el tornillo de contacto {angle}, contactos más juntos.</translation>
        </message>
        <message>
            <source>The contact screw was turned {angle}, contacts wider.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Se giró el tornillo de contacto {angle}, contactos más separados.</translation>
        </message>
        <message>
            <source>The contact screw was turned, contacts closer.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Se giró el tornillo de contacto, contactos más juntos.</translation>
        </message>
        <message>
            <source>The contact screw was turned, contacts wider.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Se giró el tornillo de contacto, contactos más separados.</translation>
        </message>
        <message>
            <source>The largest gap is {length} wider: {gap}.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>La apertura máxima es {length} mayor: {gap}.</translation>
        </message>
        <message>
            <source>The largest gap is {length} narrower: {gap}.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>La apertura máxima es {length} menor: {gap}.</translation>
        </message>
        <message>
            <source>The largest gap is wider.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>La apertura máxima es mayor.</translation>
        </message>
        <message>
            <source>The largest gap is narrower.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>La apertura máxima es menor.</translation>
        </message>
        <message>
            <source>The contacts open {angle} of rotor later.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Los contactos abren {angle} de rotor más tarde.</translation>
        </message>
        <message>
            <source>The contacts open {angle} of rotor earlier.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Los contactos abren {angle} de rotor más pronto.</translation>
        </message>
        <message>
            <source>The contacts open later.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Los contactos abren más tarde.</translation>
        </message>
        <message>
            <source>The contacts open earlier.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Los contactos abren más pronto.</translation>
        </message>
        <message>
            <source>Assumed: constant speed, linear core without losses, contacts that make and break at once, no load on the secondary while they are closed; illustrative unless the file's values are measured. At running speed this model's best opening lies past the E-gap: the maker's E-gap governs.</source>
            <extracomment>bench/curves_coil.py</extracomment>
            <translation>Supuesto: velocidad constante, núcleo lineal sin pérdidas, contactos que cierran y abren al instante, secundario sin carga mientras están cerrados; ilustrativo salvo que los valores del archivo sean medidos. A velocidad de marcha, la mejor apertura de este modelo queda más allá del E-gap: rige el E-gap del fabricante.</translation>
        </message>
        <message>
            <source>put in a short inside the magneto</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>poner un corto dentro de la magneto</translation>
        </message>
        <message>
            <source>take away a short inside the magneto</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>quitar un corto dentro de la magneto</translation>
        </message>
        <message>
            <source>put in a break in the switch lead</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>poner un corte en el cable de masa</translation>
        </message>
        <message>
            <source>take away a break in the switch lead</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>quitar un corte en el cable de masa</translation>
        </message>
        <message>
            <source>put in a bent spring tab</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>poner una lengüeta doblada</translation>
        </message>
        <message>
            <source>take away a bent spring tab</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>quitar una lengüeta doblada</translation>
        </message>
        <message>
            <source>let go of the rotor</source>
            <extracomment>bench/describe.py, practice/words.py</extracomment>
            <translation>soltar el rotor</translation>
        </message>
        <message>
            <source>grow a pip of {pip_height} mm</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>formar una punta de {pip_height} mm</translation>
        </message>
        <message>
            <source>wear the heel to {heel_wear} mm</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>gastar el talón a {heel_wear} mm</translation>
        </message>
        <message>
            <source>move teeth</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>mover dientes</translation>
        </message>
        <message>
            <source>move the magneto flange {flange} and the disc {disc}</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>mover la brida de la magneto {flange} y el disco {disc}</translation>
        </message>
        <message>
            <source>move the magneto flange {teeth}</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>mover la brida de la magneto {teeth}</translation>
        </message>
        <message>
            <source>move the disc {teeth}</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>mover el disco {teeth}</translation>
        </message>
        <message>
            <source>move the coupling</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>mover el acoplamiento</translation>
        </message>
        <message>
            <source>place the {magneto}</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>colocar la {magneto}</translation>
        </message>
        <message>
            <source>set backplate and contact screw</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>ajustar placa base y tornillo de contacto</translation>
        </message>
        <message>
            <source>turn the rotor {angle}° against rotation</source>
            <extracomment>bench/describe.py, practice/words.py</extracomment>
            <translation>girar el rotor {angle}° contra el giro</translation>
        </message>
        <message>
            <source>hold the rotor</source>
            <extracomment>bench/describe.py, practice/words.py</extracomment>
            <translation>sujetar el rotor</translation>
        </message>
        <message>
            <source>wait</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>esperar</translation>
        </message>
        <message>
            <source>note the trial at plate {backplate}°</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>anotar el ensayo con la placa a {backplate}°</translation>
        </message>
        <message>
            <source>note the inspection at {hours} h</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>anotar la inspección a {hours} h</translation>
        </message>
        <message>
            <source>strike out trial {place}</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>tachar el ensayo {place}</translation>
        </message>
        <message>
            <source>strike out inspection {place}</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>tachar la inspección {place}</translation>
        </message>
        <message>
            <source>turn the crank {angle}° against rotation</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>girar el cigüeñal {angle}° contra el giro</translation>
        </message>
        <message>
            <source>read the lamp: right fires {btdc}° before top dead centre</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>leer la lámpara: la derecha enciende {btdc}° antes del punto muerto superior</translation>
        </message>
        <message>
            <source>want right at {btdc}° before top dead centre</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>pedir la derecha a {btdc}° antes del punto muerto superior</translation>
        </message>
        <message>
            <source>paint new marks on the coupling</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>pintar marcas nuevas en el acoplamiento</translation>
        </message>
        <message>
            <source>tighten the lock screw</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>apretar el tornillo de bloqueo</translation>
        </message>
        <message>
            <source>tighten the clamp screws</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>apretar los tornillos de sujeción</translation>
        </message>
        <message>
            <source>turn the rotor {angle}° with rotation</source>
            <extracomment>bench/describe.py, practice/words.py</extracomment>
            <translation>girar el rotor {angle}° en sentido de giro</translation>
        </message>
        <message>
            <source>pull the switch lead's plug</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>sacar la clavija del cable de masa</translation>
        </message>
        <message>
            <source>push in the switch lead's plug</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>meter la clavija del cable de masa</translation>
        </message>
        <message>
            <source>switch on</source>
            <extracomment>bench/describe.py, bench/lead_picture.py, ui/class_editor_fields.py</extracomment>
            <translation>interruptor en ON</translation>
        </message>
        <message>
            <source>switch off</source>
            <extracomment>bench/describe.py, bench/lead_picture.py, practice/advice.py, practice/goals.py</extracomment>
            <translation>interruptor en OFF</translation>
        </message>
        <message>
            <source>turn the crank</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>girar el cigüeñal</translation>
        </message>
        <message>
            <source>turn the crank {angle}° with rotation</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>girar el cigüeñal {angle}° en sentido de giro</translation>
        </message>
        <message>
            <source>refit the magneto by its marks</source>
            <extracomment>bench/describe.py, practice/words.py</extracomment>
            <translation>remontar la magneto por sus marcas</translation>
        </message>
        <message>
            <source>take the magneto off the engine</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>desmontar la magneto del motor</translation>
        </message>
        <message>
            <source>read the lamp: left fires {btdc}° before top dead centre</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>leer la lámpara: la izquierda enciende {btdc}° antes del punto muerto superior</translation>
        </message>
        <message>
            <source>want left at {btdc}° before top dead centre</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>pedir la izquierda a {btdc}° antes del punto muerto superior</translation>
        </message>
        <message>
            <source>look at the left magneto</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>ver la magneto izquierda</translation>
        </message>
        <message>
            <source>look at the right magneto</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>ver la magneto derecha</translation>
        </message>
        <message>
            <source>contacts just open</source>
            <extracomment>bench/events.py</extracomment>
            <translation>los contactos abren justo</translation>
        </message>
        <message>
            <source>contacts just close</source>
            <extracomment>bench/events.py</extracomment>
            <translation>los contactos cierran justo</translation>
        </message>
        <message>
            <source>top of lobe</source>
            <extracomment>bench/events.py</extracomment>
            <translation>cima</translation>
        </message>
        <message>
            <source>E-gap</source>
            <extracomment>bench/events.py, bench/own_magneto_fields.py, job/svg.py, practice/paper.py, ui/breaker_view.py, ui/plot_lift.py</extracomment>
            <translation>E-gap</translation>
        </message>
        <message>
            <source>neutral</source>
            <extracomment>bench/events.py, job/svg.py, ui/breaker_view.py</extracomment>
            <translation>neutro</translation>
        </message>
        <message>
            <source>“{kind}” is not something to stop at; there are {known}</source>
            <extracomment>bench/events.py</extracomment>
            <translation>«{kind}» no es algo en lo que parar; hay {known}</translation>
        </message>
        <message>
            <source>Grounded by the switch, through its lead. No spark; the lamp sees “closed” whatever the contacts do.</source>
            <extracomment>bench/lead_picture.py</extracomment>
            <translation>A masa por el interruptor, a través de su cable. Sin chispa; la lámpara ve «cerrado» hagan lo que hagan los contactos.</translation>
        </message>
        <message>
            <source>Grounded by the switch, through its lead. A short inside the magneto grounds it too. No spark; the lamp sees “closed” whatever the contacts do.</source>
            <extracomment>bench/lead_picture.py</extracomment>
            <translation>A masa por el interruptor, a través de su cable. Un corto dentro de la magneto también la pone a masa. Sin chispa; la lámpara ve «cerrado» hagan lo que hagan los contactos.</translation>
        </message>
        <message>
            <source>Grounded by the spring tab: the plug is out. No spark; the lamp sees “closed” whatever the contacts do.</source>
            <extracomment>bench/lead_picture.py</extracomment>
            <translation>A masa por la lengüeta: la clavija está fuera. Sin chispa; la lámpara ve «cerrado» hagan lo que hagan los contactos.</translation>
        </message>
        <message>
            <source>Grounded by the spring tab: the plug is out. A short inside the magneto grounds it too. No spark; the lamp sees “closed” whatever the contacts do.</source>
            <extracomment>bench/lead_picture.py</extracomment>
            <translation>A masa por la lengüeta: la clavija está fuera. Un corto dentro de la magneto también la pone a masa. Sin chispa; la lámpara ve «cerrado» hagan lo que hagan los contactos.</translation>
        </message>
        <message>
            <source>Meter on the lead: no ground</source>
            <extracomment>bench/lead_picture.py</extracomment>
            <translation>Medidor en el cable: sin masa</translation>
        </message>
        <message>
            <source>Meter: pull the plug to read the lead</source>
            <extracomment>bench/lead_picture.py</extracomment>
            <translation>Medidor: saque la clavija para medir el cable</translation>
        </message>
        <message>
            <source>Meter on the lead: ground</source>
            <extracomment>bench/lead_picture.py</extracomment>
            <translation>Medidor en el cable: masa</translation>
        </message>
        <message>
            <source>coil</source>
            <extracomment>bench/lead_picture.py, bench/told.py</extracomment>
            <translation>bobina</translation>
        </message>
        <message>
            <source>contacts</source>
            <extracomment>bench/lead_picture.py, bench/told.py, bench/words.py, practice/state.py</extracomment>
            <translation>contactos</translation>
        </message>
        <message>
            <source>plug</source>
            <extracomment>bench/lead_picture.py, bench/told.py</extracomment>
            <translation>clavija</translation>
        </message>
        <message>
            <source>lead</source>
            <extracomment>bench/lead_picture.py, bench/told.py</extracomment>
            <translation>cable</translation>
        </message>
        <message>
            <source>spring tab</source>
            <extracomment>bench/lead_picture.py, bench/told.py</extracomment>
            <translation>lengüeta</translation>
        </message>
        <message>
            <source>Grounded only by a short inside the magneto, not by the switch: no spark now, but DANGER: without the short it would be live.</source>
            <extracomment>bench/lead_picture.py</extracomment>
            <translation>A masa solo por un corto dentro de la magneto, no por el interruptor: ahora sin chispa, pero PELIGRO: sin el corto estaría viva.</translation>
        </message>
        <message>
            <source>DANGER: live with the plug out: its tab does not touch the case. Any turn can fire a plug.</source>
            <extracomment>bench/lead_picture.py</extracomment>
            <translation>PELIGRO: viva con la clavija fuera: su lengüeta no toca la carcasa. Cualquier giro puede hacer saltar una bujía.</translation>
        </message>
        <message>
            <source>Live: the switch is on. A turn of the propeller can fire a plug.</source>
            <extracomment>bench/lead_picture.py</extracomment>
            <translation>Viva: el interruptor está en ON. Un giro de la hélice puede hacer saltar una bujía.</translation>
        </message>
        <message>
            <source>broken inside</source>
            <extracomment>bench/lead_picture.py, ui/practice_notebook.py</extracomment>
            <translation>roto por dentro</translation>
        </message>
        <message>
            <source>short</source>
            <extracomment>bench/lead_picture.py</extracomment>
            <translation>corto</translation>
        </message>
        <message>
            <source>DANGER: live with the switch off: the lead is broken inside. Any turn can fire a plug.</source>
            <extracomment>bench/lead_picture.py</extracomment>
            <translation>PELIGRO: viva con el interruptor en OFF: el cable está roto por dentro. Cualquier giro puede hacer saltar una bujía.</translation>
        </message>
        <message>
            <source>{first} and {second}</source>
            <extracomment>bench/own.py</extracomment>
            <translation>{first} y {second}</translation>
        </message>
        <message>
            <source>“{text}” could not be taken: type it again</source>
            <extracomment>bench/own.py</extracomment>
            <translation>«{text}» no se pudo aceptar: escríbalo de nuevo</translation>
        </message>
        <message>
            <source>the magneto in this window is not complete yet: its own pages say what is missing</source>
            <extracomment>bench/own.py</extracomment>
            <translation>la magneto de esta ventana aún no está completa: sus propias páginas dicen qué falta</translation>
        </message>
        <message>
            <source>the engine in this window is not complete yet: its own pages say what is missing</source>
            <extracomment>bench/own.py</extracomment>
            <translation>el motor de esta ventana aún no está completo: sus propias páginas dicen qué falta</translation>
        </message>
        <message>
            <source>cannot be had</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>no se puede obtener</translation>
        </message>
        <message>
            <source>Lobe 1 opens, past neutral</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>El lóbulo 1 abre, tras el neutro</translation>
        </message>
        <message>
            <source>Off the E-gap</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>Fuera del E-gap</translation>
        </message>
        <message>
            <source>Largest gap on lobe 1</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>Apertura máxima en el lóbulo 1</translation>
        </message>
        <message>
            <source>Gap of all lobes, least</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>Apertura de todos los lóbulos, mín.</translation>
        </message>
        <message>
            <source>Gap of all lobes, most</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>Apertura de todos los lóbulos, máx.</translation>
        </message>
        <message>
            <source>Contacts closed before lobe 1</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>Contactos cerrados antes del lóbulo 1</translation>
        </message>
        <message>
            <source>Contact lift at the top</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>Alzada del contacto en la cima</translation>
        </message>
        <message>
            <source>At the rim for 1° late</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>En el borde por 1° de retraso</translation>
        </message>
        <message>
            <source>Plate for the least gap allowed</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>Placa para la apertura mínima admitida</translation>
        </message>
        <message>
            <source>Plate for the most gap allowed</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>Placa para la apertura máxima admitida</translation>
        </message>
        <message>
            <source>Between two sparks</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>Entre dos chispas</translation>
        </message>
        <message>
            <source>Dead centres uneven by up to</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>Puntos muertos desiguales hasta</translation>
        </message>
        <message>
            <source>Left before right</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>Izquierda antes que derecha</translation>
        </message>
        <message>
            <source>One tooth, at the crank</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>Un diente, en el cigüeñal</translation>
        </message>
        <message>
            <source>One vernier step, at the crank</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>Un paso del nonio, en el cigüeñal</translation>
        </message>
        <message>
            <source>Finest step, at the crank</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>Paso más fino, en el cigüeñal</translation>
        </message>
        <message>
            <source>Wanted, before top dead centre</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>Deseado, antes del punto muerto superior</translation>
        </message>
        <message>
            <source>E-gap, at the crank</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>E-gap, en el cigüeñal</translation>
        </message>
        <message>
            <source>No. 1 down at the left spark</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>N.º 1 bajado en la chispa izquierda</translation>
        </message>
        <message>
            <source>No. 1 down at the right spark</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>N.º 1 bajado en la chispa derecha</translation>
        </message>
        <message>
            <source>Cylinders and firing order</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Cilindros y orden de encendido</translation>
        </message>
        <message>
            <source>From the engine's data plate and the maker's manual.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>De la placa de datos del motor y el manual del fabricante.</translation>
        </message>
        <message>
            <source>Timing wanted</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Calado deseado</translation>
        </message>
        <message>
            <source>From the maker's current manual, which governs.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Del manual vigente del fabricante, que es el que rige.</translation>
        </message>
        <message>
            <source>Stroke and rod</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Carrera y biela</translation>
        </message>
        <message>
            <source>From the manual; they tell how far the piston stands down at the timing.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Del manual; dicen cuánto ha bajado el pistón en el calado.</translation>
        </message>
        <message>
            <source>Link rods</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Bielas articuladas</translation>
        </message>
        <message>
            <source>For a radial engine with a master rod. None, or not known? Leave all empty.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Para un motor en estrella con biela maestra. ¿No hay o no se conocen? Deje todo vacío.</translation>
        </message>
        <message>
            <source>Magneto and engine</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Magneto y motor</translation>
        </message>
        <message>
            <source>The two that belong together: those in this window, shipped ones, or files of yours.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Los dos que van juntos: los de esta ventana, los incluidos o archivos suyos.</translation>
        </message>
        <message>
            <source>Coupling and drive</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Acoplamiento y accionamiento</translation>
        </message>
        <message>
            <source>Count the teeth on both faces of the coupling's disc; paint a mark before you begin.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Cuente los dientes de ambas caras del disco del acoplamiento; pinte una marca antes de empezar.</translation>
        </message>
        <message>
            <source>Name</source>
            <extracomment>bench/own_engine_fields.py, bench/own_magneto_fields.py, classroom/worksheet.py, job/parts.py, job/shift_plan.py</extracomment>
            <translation>Nombre</translation>
        </message>
        <message>
            <source>What you call this engine: type, number, aircraft.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Cómo llama a este motor: tipo, número, aeronave.</translation>
        </message>
        <message>
            <source>One line of up to 120 characters.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Una línea de hasta 120 caracteres.</translation>
        </message>
        <message>
            <source>Cylinders</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Cilindros</translation>
        </message>
        <message>
            <source>How many cylinders the two magnetos fire.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Cuántos cilindros encienden las dos magnetos.</translation>
        </message>
        <message>
            <source>A whole number.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Un número entero.</translation>
        </message>
        <message>
            <source>Arrangement</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Disposición</translation>
        </message>
        <message>
            <source>How the cylinders stand round the crank.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Cómo están los cilindros en torno al cigüeñal.</translation>
        </message>
        <message>
            <source>Only a radial engine can have link rods on a master rod.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Solo un motor en estrella puede tener bielas articuladas en una biela maestra.</translation>
        </message>
        <message>
            <source>Rotation of the crank</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Giro del cigüeñal</translation>
        </message>
        <message>
            <source>Which way the crank turns, seen from the propeller end.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Hacia dónde gira el cigüeñal, visto desde el lado de la hélice.</translation>
        </message>
        <message>
            <source>Clockwise or anticlockwise.</source>
            <extracomment>bench/own_engine_fields.py, bench/own_magneto_fields.py</extracomment>
            <translation>Horario o antihorario.</translation>
        </message>
        <message>
            <source>Firing order</source>
            <extracomment>bench/own_engine_fields.py, practice/paper.py</extracomment>
            <translation>Orden de encendido</translation>
        </message>
        <message>
            <source>The cylinders in the order they fire, such as 1-3-5-2-4.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Los cilindros en el orden en que encienden, p. ej. 1-3-5-2-4.</translation>
        </message>
        <message>
            <source>Begins with 1 and names each cylinder once.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Empieza por 1 y nombra cada cilindro una vez.</translation>
        </message>
        <message>
            <source>Left magneto fires before top dead centre</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>La magneto izquierda enciende antes del punto muerto superior</translation>
        </message>
        <message>
            <source>Crank degrees before top dead centre at which the left magneto should fire No. 1.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Grados de cigüeñal antes del punto muerto superior a los que la magneto izquierda debe encender el n.º 1.</translation>
        </message>
        <message>
            <source>Larger is earlier; staggered settings, left unlike right, are allowed.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Mayor es más avance; se admiten calados escalonados, izquierda distinta de derecha.</translation>
        </message>
        <message>
            <source>Right magneto fires before top dead centre</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>La magneto derecha enciende antes del punto muerto superior</translation>
        </message>
        <message>
            <source>Crank degrees before top dead centre at which the right magneto should fire No. 1.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Grados de cigüeñal antes del punto muerto superior a los que la magneto derecha debe encender el n.º 1.</translation>
        </message>
        <message>
            <source>An engine with a single magneto has the same figure twice.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Un motor con una sola magneto lleva dos veces la misma cifra.</translation>
        </message>
        <message>
            <source>Timing tolerance</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Tolerancia de calado</translation>
        </message>
        <message>
            <source>How far off the wanted timing either magneto may fire, either way.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Cuánto puede apartarse cada magneto del calado deseado, en ambos sentidos.</translation>
        </message>
        <message>
            <source>Above 0: no reading is ever exact.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Mayor que 0: ninguna lectura es exacta.</translation>
        </message>
        <message>
            <source>Synchronising tolerance</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Tolerancia de sincronización</translation>
        </message>
        <message>
            <source>How far apart the two magnetos may fire, beyond a wanted stagger.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Cuánto pueden diferir las dos magnetos, aparte de un escalonado deseado.</translation>
        </message>
        <message>
            <source>Stroke</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Carrera</translation>
        </message>
        <message>
            <source>How far the piston travels from one dead centre to the other.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Cuánto recorre el pistón de un punto muerto al otro.</translation>
        </message>
        <message>
            <source>Above 0, and below twice the rod's length.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Mayor que 0 y menor que el doble de la biela.</translation>
        </message>
        <message>
            <source>Connecting rod</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Biela</translation>
        </message>
        <message>
            <source>From the centre of its big end to that of its piston pin; the master rod's in a radial.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Del centro de la cabeza al del bulón; la de la biela maestra en un motor en estrella.</translation>
        </message>
        <message>
            <source>Longer than half the stroke, or the crank could not turn.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Más larga que media carrera, o el cigüeñal no podría girar.</translation>
        </message>
        <message>
            <source>Cylinder of the master rod</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Cilindro de la biela maestra</translation>
        </message>
        <message>
            <source>The cylinder whose rod carries all others.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>El cilindro cuya biela lleva todas las demás.</translation>
        </message>
        <message>
            <source>One of the engine's cylinders.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Uno de los cilindros del motor.</translation>
        </message>
        <message>
            <source>Radius of the knuckle pins</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Radio de los ejes de articulación</translation>
        </message>
        <message>
            <source>From the crank pin's centre to the pins of the link rods.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Del centro de la muñequilla a los ejes de las bielas articuladas.</translation>
        </message>
        <message>
            <source>0 or more; 0 gives evenly spaced dead centres.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>0 o más; 0 da puntos muertos igualmente espaciados.</translation>
        </message>
        <message>
            <source>From the knuckle pin's centre to the piston pin's.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Del centro del eje de articulación al del bulón.</translation>
        </message>
        <message>
            <source>Longer than half the stroke and the knuckle radius together.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Más larga que media carrera y el radio de articulación juntos.</translation>
        </message>
        <message>
            <source>Angles of the knuckle pins</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Ángulos de los ejes de articulación</translation>
        </message>
        <message>
            <source>By cylinder number, from the master rod's axis in the direction of rotation.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Por número de cilindro, desde el eje de la biela maestra en sentido de giro.</translation>
        </message>
        <message>
            <source>One for each cylinder, or none: then they stand as the cylinders do.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Uno por cilindro, o ninguno: entonces están como los cilindros.</translation>
        </message>
        <message>
            <source>Magneto</source>
            <extracomment>bench/own_engine_fields.py, classroom/key.py, job/document.py, job/parts.py, job/sheet.py, job/shift_plan.py, practice/paper.py, spec/formats.py, ui/lamp_box.py, ui/menus.py</extracomment>
            <translation>Magneto</translation>
        </message>
        <message>
            <source>The magneto that is mounted.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>La magneto que va montada.</translation>
        </message>
        <message>
            <source>A complete magneto: of this window, shipped, or a file.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Una magneto completa: de esta ventana, incluida o un archivo.</translation>
        </message>
        <message>
            <source>Engine</source>
            <extracomment>bench/own_engine_fields.py, job/document.py, job/sheet.py, job/shift_plan.py, practice/paper.py, spec/formats.py</extracomment>
            <translation>Motor</translation>
        </message>
        <message>
            <source>The engine that it is mounted on.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>El motor en que va montada.</translation>
        </message>
        <message>
            <source>A complete engine: of this window, shipped, or a file.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Un motor completo: de esta ventana, incluido o un archivo.</translation>
        </message>
        <message>
            <source>Mounted</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Montada</translation>
        </message>
        <message>
            <source>Which of the engine's magnetos it is, seen from the pilot's seat.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Cuál de las magnetos del motor es, vista desde el asiento del piloto.</translation>
        </message>
        <message>
            <source>Left or right of two, or the single one.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Izquierda o derecha de dos, o la única.</translation>
        </message>
        <message>
            <source>Teeth on the magneto's side</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Dientes del lado de la magneto</translation>
        </message>
        <message>
            <source>Teeth of the disc's face that the magneto's flange sits in.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Dientes de la cara del disco en que encaja la brida de la magneto.</translation>
        </message>
        <message>
            <source>A whole number; one more or fewer than the other side makes the finest steps.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Un número entero; uno más o menos que el otro lado da los pasos más finos.</translation>
        </message>
        <message>
            <source>Teeth on the drive's side</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Dientes del lado del accionamiento</translation>
        </message>
        <message>
            <source>Teeth of the disc's face that the drive's flange sits in.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Dientes de la cara del disco en que encaja la brida motriz.</translation>
        </message>
        <message>
            <source>Rotor turns per crank turn</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Vueltas de rotor por vuelta de cigüeñal</translation>
        </message>
        <message>
            <source>How fast the drive turns the rotor; cylinders over twice the poles, for a spark a pole.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>A qué velocidad gira el rotor; cilindros entre el doble de polos, para una chispa por polo.</translation>
        </message>
        <message>
            <source>Above 0: count ten turns of the propeller, plugs out, to be sure.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Mayor que 0: para estar seguro, cuente diez vueltas de hélice, sin bujías.</translation>
        </message>
        <message>
            <source>radial</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>en estrella</translation>
        </message>
        <message>
            <source>in line</source>
            <extracomment>bench/own_engine_fields.py, job/words.py</extracomment>
            <translation>en línea</translation>
        </message>
        <message>
            <source>opposed</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>opuestos</translation>
        </message>
        <message>
            <source>vee</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>en V</translation>
        </message>
        <message>
            <source>clockwise</source>
            <extracomment>bench/own_engine_fields.py, bench/own_magneto_fields.py, bench/words.py, classroom/drawings.py, ui/crank_view.py</extracomment>
            <translation>horario</translation>
        </message>
        <message>
            <source>anticlockwise</source>
            <extracomment>bench/own_engine_fields.py, bench/own_magneto_fields.py, bench/words.py, classroom/drawings.py, ui/crank_view.py</extracomment>
            <translation>antihorario</translation>
        </message>
        <message>
            <source>left</source>
            <extracomment>bench/own_engine_fields.py, classroom/key.py, job/document.py, job/words.py, ui/class_editor_fields.py, ui/class_editor_rows.py, ui/job_drift_sheet.py, ui/job_kinds.py</extracomment>
            <translation>izquierda</translation>
        </message>
        <message>
            <source>right</source>
            <extracomment>bench/own_engine_fields.py, classroom/key.py, job/document.py, job/words.py, ui/class_editor_fields.py, ui/class_editor_rows.py, ui/job_kinds.py</extracomment>
            <translation>derecha</translation>
        </message>
        <message>
            <source>single</source>
            <extracomment>bench/own_engine_fields.py, job/document.py, ui/class_editor_fields.py, ui/job_kinds.py</extracomment>
            <translation>única</translation>
        </message>
        <message>
            <source>“{piece}” is not one number: separate the values by semicolons, such as 0; 90.5; 180</source>
            <extracomment>bench/own_entry.py</extracomment>
            <translation>«{piece}» no es un solo número: separe los valores con punto y coma, p. ej. 0; 90.5; 180</translation>
        </message>
        <message>
            <source>maker's manual</source>
            <extracomment>bench/own_fields.py</extracomment>
            <translation>manual del fabricante</translation>
        </message>
        <message>
            <source>measured</source>
            <extracomment>bench/own_fields.py</extracomment>
            <translation>medido</translation>
        </message>
        <message>
            <source>worked out</source>
            <extracomment>bench/own_fields.py</extracomment>
            <translation>calculado</translation>
        </message>
        <message>
            <source>assumed</source>
            <extracomment>bench/own_fields.py</extracomment>
            <translation>supuesto</translation>
        </message>
        <message>
            <source>from a shipped file</source>
            <extracomment>bench/own_fields.py</extracomment>
            <translation>de un archivo incluido</translation>
        </message>
        <message>
            <source>{file}: is neither a magneto's nor an engine's nor an installation's file</source>
            <extracomment>bench/own_files.py</extracomment>
            <translation>{file}: no es un archivo de magneto, ni de motor, ni de instalación</translation>
        </message>
        <message>
            <source>this is not complete yet: what is missing or refused is marked at its field</source>
            <extracomment>bench/own_files.py</extracomment>
            <translation>aún no está completo: lo que falta o se rechaza está marcado en su campo</translation>
        </message>
        <message>
            <source>{file}: holds no drafts; its format must be "{format}"</source>
            <extracomment>bench/own_files.py</extracomment>
            <translation>{file}: no contiene borradores; su formato debe ser "{format}"</translation>
        </message>
        <message>
            <source>Allowed: {low} to {high}.</source>
            <extracomment>bench/own_limits.py</extracomment>
            <translation>Admitido: de {low} a {high}.</translation>
        </message>
        <message>
            <source>Allowed: between {low} and {high}, neither included.</source>
            <extracomment>bench/own_limits.py</extracomment>
            <translation>Admitido: entre {low} y {high}, ambos excluidos.</translation>
        </message>
        <message>
            <source>Allowed: above {low}, up to {high}.</source>
            <extracomment>bench/own_limits.py</extracomment>
            <translation>Admitido: más de {low}, hasta {high}.</translation>
        </message>
        <message>
            <source>Allowed: {low} and more, below {high}.</source>
            <extracomment>bench/own_limits.py</extracomment>
            <translation>Admitido: {low} o más, menos de {high}.</translation>
        </message>
        <message>
            <source>What it is</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Qué es</translation>
        </message>
        <message>
            <source>From the data plate and the maker's manual; no tools yet.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>De la placa de datos y el manual del fabricante; aún sin herramientas.</translation>
        </message>
        <message>
            <source>Cam and lobes</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Leva y lóbulos</translation>
        </message>
        <message>
            <source>Degree disc on the cam, dial gauge at the heel or at the contacts.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Disco graduado en la leva, reloj comparador en el talón o en los contactos.</translation>
        </message>
        <message>
            <source>Breaker arm</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Brazo del ruptor</translation>
        </message>
        <message>
            <source>Calliper or rule on the arm, taken out. With a traced lift only the contact arm is needed.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Calibre o regla sobre el brazo desmontado. Con alzada medida solo hace falta el brazo de contacto.</translation>
        </message>
        <message>
            <source>Contacts and screw</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Contactos y tornillo</translation>
        </message>
        <message>
            <source>Dial gauge on the fixed contact while the screw is turned, lock screw slack.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Comparador sobre el contacto fijo al girar el tornillo, con el de bloqueo flojo.</translation>
        </message>
        <message>
            <source>Plate and setting</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Placa y ajuste</translation>
        </message>
        <message>
            <source>The scale on the plate, and the gap by blades when the contacts open exactly at the E-gap.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>La escala de la placa, y la apertura con galgas cuando los contactos abren justo en el E-gap.</translation>
        </message>
        <message>
            <source>E-gap and limits</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>E-gap y límites</translation>
        </message>
        <message>
            <source>From the maker's current manual, which governs; radius of the rim marks by calliper.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Del manual vigente del fabricante, que es el que rige; radio de las marcas del borde con calibre.</translation>
        </message>
        <message>
            <source>Pull of the magnet</source>
            <extracomment>bench/own_magneto_fields.py, ui/plot_coil.py</extracomment>
            <translation>Tirón del imán</translation>
        </message>
        <message>
            <source>Spring balance on an arm at the drive shaft. Not known? Leave all three empty.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Dinamómetro en un brazo en el eje de accionamiento. ¿No se conoce? Deje los tres vacíos.</translation>
        </message>
        <message>
            <source>Coil</source>
            <extracomment>bench/own_magneto_fields.py, ui/plot_coil.py, ui/plot_pane.py</extracomment>
            <translation>Bobina</translation>
        </message>
        <message>
            <source>Bridge and ohmmeter at the primary, if you have them. Not known? Leave all five empty.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Puente y óhmetro en el primario, si los tiene. ¿No se conoce? Deje los cinco vacíos.</translation>
        </message>
        <message>
            <source>Condition</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Estado</translation>
        </message>
        <message>
            <source>What wear and handling have done. New or not known? Leave it empty.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Lo que han hecho el desgaste y el uso. ¿Nueva o no se conoce? Déjelo vacío.</translation>
        </message>
        <message>
            <source>What you call this magneto: type, number, aircraft.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Cómo llama a esta magneto: tipo, número, aeronave.</translation>
        </message>
        <message>
            <source>One line of up to 120 characters, so that it fits on sheets and titles.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Una línea de hasta 120 caracteres, para que quepa en hojas y títulos.</translation>
        </message>
        <message>
            <source>Notes</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Notas</translation>
        </message>
        <message>
            <source>Anything that the next person should know.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Lo que deba saber la persona siguiente.</translation>
        </message>
        <message>
            <source>Up to 4000 characters.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Hasta 4000 caracteres.</translation>
        </message>
        <message>
            <source>Rotation</source>
            <extracomment>bench/own_magneto_fields.py, job/shift_plan.py, practice/paper.py</extracomment>
            <translation>Giro</translation>
        </message>
        <message>
            <source>Which way the rotor turns in service, seen from the drive end.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Hacia dónde gira el rotor en servicio, visto desde el lado de accionamiento.</translation>
        </message>
        <message>
            <source>Clockwise or anticlockwise; the breaker end sees the mirror image.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Horario o antihorario; desde el lado del ruptor se ve la imagen especular.</translation>
        </message>
        <message>
            <source>Poles of the rotor</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Polos del rotor</translation>
        </message>
        <message>
            <source>How many magnet poles the rotor has: the magnet's pull holds it at as many places a turn.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Cuántos polos magnéticos tiene el rotor: el imán lo retiene en otros tantos puntos por vuelta.</translation>
        </message>
        <message>
            <source>An even number, as north and south poles take turns.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Un número par, pues los polos norte y sur se alternan.</translation>
        </message>
        <message>
            <source>Tops of the lobes</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Cimas de los lóbulos</translation>
        </message>
        <message>
            <source>How far the cam turns from the top of lobe 1 to each top after it, in firing order.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Cuánto gira la leva de la cima del lóbulo 1 a cada cima siguiente, en orden de encendido.</translation>
        </message>
        <message>
            <source>Begins with 0 and increases below 360°; neighbouring lobes must not overlap.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Empieza por 0 y crece hasta menos de 360°; los lóbulos vecinos no deben solaparse.</translation>
        </message>
        <message>
            <source>Cam turns per rotor turn</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Vueltas de leva por vuelta de rotor</translation>
        </message>
        <message>
            <source>1 for a cam on the rotor's shaft, less for one on the distributor's shaft.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>1 si la leva está en el eje del rotor, menos si está en el eje del distribuidor.</translation>
        </message>
        <message>
            <source>Counted by turning the rotor ten times by hand.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Se cuenta girando el rotor diez vueltas a mano.</translation>
        </message>
        <message>
            <source>The lift is known as</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>La alzada se conoce como</translation>
        </message>
        <message>
            <source>Either a lobe drawn by a law of motion, or a table of lift traced with a gauge.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Un lóbulo trazado por una ley de movimiento o una tabla de alzada medida con comparador.</translation>
        </message>
        <message>
            <source>A traced lift needs fewer sizes of the arm; a drawn one needs fewer readings.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Una alzada medida pide menos cotas del brazo; una trazada, menos lecturas.</translation>
        </message>
        <message>
            <source>Base circle's radius</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Radio del círculo base</translation>
        </message>
        <message>
            <source>From the cam's centre to its low part: half of what a calliper reads across it.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Del centro de la leva a su parte baja: la mitad de lo que mide un calibre a través.</translation>
        </message>
        <message>
            <source>Above 0; with the heel's radius it must be within the arm's reach.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Mayor que 0; con el radio del talón debe estar al alcance del brazo.</translation>
        </message>
        <message>
            <source>Height of the lobe</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Altura del lóbulo</translation>
        </message>
        <message>
            <source>How much further from the centre the top stands than the low part.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Cuánto más lejos del centro está la cima que la parte baja.</translation>
        </message>
        <message>
            <source>Its lift at the contacts must exceed the gap, or they would never close.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Su alzada en los contactos debe superar la apertura, o nunca cerrarían.</translation>
        </message>
        <message>
            <source>Rise</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Subida</translation>
        </message>
        <message>
            <source>Cam degrees from the low part to the top, on the side that meets the heel first.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Grados de leva de la parte baja a la cima, por el lado que llega primero al talón.</translation>
        </message>
        <message>
            <source>Rise, dwell and fall together must fit between two tops.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Subida, meseta y bajada juntas deben caber entre dos cimas.</translation>
        </message>
        <message>
            <source>Flat at the top</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Meseta en la cima</translation>
        </message>
        <message>
            <source>Cam degrees over which the lobe stays at its full height.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Grados de leva en que el lóbulo mantiene toda su altura.</translation>
        </message>
        <message>
            <source>May be 0; rise, dwell and fall together must fit between two tops.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Puede ser 0; subida, meseta y bajada juntas deben caber entre dos cimas.</translation>
        </message>
        <message>
            <source>Fall</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Bajada</translation>
        </message>
        <message>
            <source>Cam degrees from the top down to the low part again.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Grados de leva de la cima de nuevo a la parte baja.</translation>
        </message>
        <message>
            <source>Law of motion</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Ley de movimiento</translation>
        </message>
        <message>
            <source>How the lobe's height grows along the rise; take modified sine if nobody knows.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Cómo crece la altura del lóbulo en la subida; tome seno modificado si nadie lo sabe.</translation>
        </message>
        <message>
            <source>One of the standard laws: they differ little near the middle of the flank.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Una de las leyes usuales: difieren poco cerca del medio del flanco.</translation>
        </message>
        <message>
            <source>Angles of the traced lift</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Ángulos de la alzada medida</translation>
        </message>
        <message>
            <source>Cam degrees from the lobe's top, before it below 0, as many as there are lifts.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Grados de leva desde la cima, antes de ella bajo 0, tantos como alzadas haya.</translation>
        </message>
        <message>
            <source>Five values or more that increase; 0 lies on the top.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Cinco valores o más, crecientes; 0 está en la cima.</translation>
        </message>
        <message>
            <source>Lifts at the contacts</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Alzadas en los contactos</translation>
        </message>
        <message>
            <source>How far the moving contact is lifted at each of those angles.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Cuánto se alza el contacto móvil en cada uno de esos ángulos.</translation>
        </message>
        <message>
            <source>Begins and ends with 0, rises to one top and falls again without dips.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Empieza y acaba en 0, sube a una cima y baja sin hundirse.</translation>
        </message>
        <message>
            <source>Pivot to contact</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Del eje al contacto</translation>
        </message>
        <message>
            <source>From the pivot's centre to the middle of the moving contact.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Del centro del eje del brazo al medio del contacto móvil.</translation>
        </message>
        <message>
            <source>Above 0: it tells how much the contacts lift when the heel does.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Mayor que 0: dice cuánto se alzan los contactos cuando se alza el talón.</translation>
        </message>
        <message>
            <source>Pivot to heel</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Del eje al talón</translation>
        </message>
        <message>
            <source>From the pivot's centre to the centre of the heel's rounding.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Del centro del eje del brazo al centro de la curva del talón.</translation>
        </message>
        <message>
            <source>Such that the heel reaches the cam, from its low part to the lobe's top.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Tal que el talón alcance la leva, de su parte baja a la cima.</translation>
        </message>
        <message>
            <source>Pivot to cam</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Del eje a la leva</translation>
        </message>
        <message>
            <source>From the pivot's centre to the cam's centre.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Del centro del eje del brazo al centro de la leva.</translation>
        </message>
        <message>
            <source>The pivot must stand outside the lobe's top.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>El eje debe quedar fuera de la cima del lóbulo.</translation>
        </message>
        <message>
            <source>Rounding of the heel</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Curva del talón</translation>
        </message>
        <message>
            <source>Radius of the rubbing face that rides on the cam.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Radio de la cara de roce que apoya en la leva.</translation>
        </message>
        <message>
            <source>Not so large that it would ride over a hollow of the cam.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>No tan grande que pase por encima de un hueco de la leva.</translation>
        </message>
        <message>
            <source>Pivot stands</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>El eje está</translation>
        </message>
        <message>
            <source>Behind: the turning cam passes the pivot first and then the heel, which trails.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Detrás: la leva al girar pasa primero el eje y luego el talón, que va a la zaga.</translation>
        </message>
        <message>
            <source>Behind or ahead: it decides which way the heel wanders along the cam.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Detrás o delante: decide hacia dónde se desplaza el talón por la leva.</translation>
        </message>
        <message>
            <source>Pivot's place in the drawing</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Lugar del eje en el dibujo</translation>
        </message>
        <message>
            <source>Clockwise from the top, seen from the breaker end with the plate at 0.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>En sentido horario desde arriba, visto desde el lado del ruptor con la placa a 0.</translation>
        </message>
        <message>
            <source>Any angle: only the drawing needs it, no reading does.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Cualquier ángulo: solo lo usa el dibujo, ninguna lectura.</translation>
        </message>
        <message>
            <source>Contact screw</source>
            <extracomment>bench/own_magneto_fields.py, job/parts.py, practice/paper.py</extracomment>
            <translation>Tornillo de contacto</translation>
        </message>
        <message>
            <source>What the screw does: turn an eccentric, or drive the contact by its thread.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Qué hace el tornillo: girar una excéntrica o mover el contacto con su rosca.</translation>
        </message>
        <message>
            <source>Eccentric or threaded.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>De excéntrica o roscado.</translation>
        </message>
        <message>
            <source>Throw of the eccentric</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Excentricidad</translation>
        </message>
        <message>
            <source>How far the fixed contact moves from the middle when the screw turns a quarter.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Cuánto se mueve el contacto fijo desde el medio con un cuarto de vuelta del tornillo.</translation>
        </message>
        <message>
            <source>Above 0: half of the whole to and fro.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Mayor que 0: la mitad de todo el vaivén.</translation>
        </message>
        <message>
            <source>Lead of the thread</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Paso de la rosca</translation>
        </message>
        <message>
            <source>How far the fixed contact moves in one whole turn of the screw.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Cuánto se mueve el contacto fijo en una vuelta entera del tornillo.</translation>
        </message>
        <message>
            <source>Above 0.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Mayor que 0.</translation>
        </message>
        <message>
            <source>Screw's travel, towards wider</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Recorrido del tornillo, abriendo</translation>
        </message>
        <message>
            <source>How far the screw can be turned from its middle so that the contacts open.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Cuánto puede girarse el tornillo desde el medio para separar los contactos.</translation>
        </message>
        <message>
            <source>0 or below: the middle, 0, must lie within the travel.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>0 o menos: el medio, 0, debe estar dentro del recorrido.</translation>
        </message>
        <message>
            <source>Screw's travel, towards closer</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Recorrido del tornillo, cerrando</translation>
        </message>
        <message>
            <source>How far the screw can be turned from its middle so that the contacts close.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Cuánto puede girarse el tornillo desde el medio para juntar los contactos.</translation>
        </message>
        <message>
            <source>0 or above: the middle, 0, must lie within the travel.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>0 o más: el medio, 0, debe estar dentro del recorrido.</translation>
        </message>
        <message>
            <source>Contacts come closer</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Los contactos se juntan</translation>
        </message>
        <message>
            <source>Which way the screw is turned to bring them closer, looking at its head.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Hacia dónde se gira el tornillo para juntarlos, mirando su cabeza.</translation>
        </message>
        <message>
            <source>Plate against rotation, to</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Placa contra el giro, hasta</translation>
        </message>
        <message>
            <source>How far the slots let the plate turn against the cam's rotation, below 0.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Cuánto dejan las ranuras girar la placa contra el giro de la leva, bajo 0.</translation>
        </message>
        <message>
            <source>Below the other end.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Menor que el otro extremo.</translation>
        </message>
        <message>
            <source>Plate with rotation, to</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Placa en sentido de giro, hasta</translation>
        </message>
        <message>
            <source>How far the slots let the plate turn with the cam's rotation, above 0.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Cuánto dejan las ranuras girar la placa en el sentido de la leva, sobre 0.</translation>
        </message>
        <message>
            <source>Above the other end.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Mayor que el otro extremo.</translation>
        </message>
        <message>
            <source>Plate as set</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Placa ajustada</translation>
        </message>
        <message>
            <source>Where the plate stood in a setting that opened exactly at the E-gap, screw at 0.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Dónde estaba la placa en un ajuste que abría justo en el E-gap, tornillo a 0.</translation>
        </message>
        <message>
            <source>Within the plate's slots.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Dentro de las ranuras de la placa.</translation>
        </message>
        <message>
            <source>Gap as set</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Apertura ajustada</translation>
        </message>
        <message>
            <source>The largest gap that this setting had, by blades on lobe 1.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>La apertura máxima de ese ajuste, con galgas en el lóbulo 1.</translation>
        </message>
        <message>
            <source>Below the contact lift at the lobe's top, or the contacts would never close.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Menor que la alzada del contacto en la cima, o los contactos nunca cerrarían.</translation>
        </message>
        <message>
            <source>Rotor degrees past neutral at which the contacts should open.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Grados de rotor tras el neutro en que deben abrir los contactos.</translation>
        </message>
        <message>
            <source>Above 0 and short of full register, half of the way to the next neutral.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Mayor que 0 y antes del registro pleno, a medio camino del neutro siguiente.</translation>
        </message>
        <message>
            <source>Smallest gap allowed</source>
            <extracomment>bench/own_magneto_fields.py, job/parts.py</extracomment>
            <translation>Apertura mínima admitida</translation>
        </message>
        <message>
            <source>The maker's lower limit of the largest gap.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>El límite inferior del fabricante para la apertura máxima.</translation>
        </message>
        <message>
            <source>Below the upper limit.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Menor que el límite superior.</translation>
        </message>
        <message>
            <source>Largest gap allowed</source>
            <extracomment>bench/own_magneto_fields.py, job/parts.py</extracomment>
            <translation>Apertura máxima admitida</translation>
        </message>
        <message>
            <source>The maker's upper limit of the largest gap.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>El límite superior del fabricante para la apertura máxima.</translation>
        </message>
        <message>
            <source>Above the lower limit.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Mayor que el límite inferior.</translation>
        </message>
        <message>
            <source>Radius of the rim marks</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Radio de las marcas del borde</translation>
        </message>
        <message>
            <source>From the cam's centre to the marks that the straightedge is laid against.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Del centro de la leva a las marcas contra las que se apoya la regla.</translation>
        </message>
        <message>
            <source>Above 0: it turns degrees into what is seen at the rim.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Mayor que 0: convierte los grados en lo que se ve en el borde.</translation>
        </message>
        <message>
            <source>Tolerance at the marks</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Tolerancia en las marcas</translation>
        </message>
        <message>
            <source>How far beside the mark the straightedge may point when the contacts open.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Cuánto puede apuntar la regla al lado de la marca cuando abren los contactos.</translation>
        </message>
        <message>
            <source>Above 0: the maker's figure, or the width of the mark.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Mayor que 0: la cifra del fabricante o el ancho de la marca.</translation>
        </message>
        <message>
            <source>Greatest pull</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Tirón máximo</translation>
        </message>
        <message>
            <source>Torque needed to turn the rotor out of neutral at its worst place.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Par necesario para sacar el rotor del neutro en su peor punto.</translation>
        </message>
        <message>
            <source>0 or more: force times arm.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>0 o más: fuerza por brazo.</translation>
        </message>
        <message>
            <source>Inertia of the rotor</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Inercia del rotor</translation>
        </message>
        <message>
            <source>How sluggish the rotor is, with what hangs on its shaft.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Lo perezoso que es el rotor, con lo que lleva en su eje.</translation>
        </message>
        <message>
            <source>Above 0, or it would swing without end of speed.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Mayor que 0, u oscilaría con velocidad sin fin.</translation>
        </message>
        <message>
            <source>Damping</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Amortiguación</translation>
        </message>
        <message>
            <source>Friction that grows with speed: what brings the swing to rest.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Rozamiento que crece con la velocidad: lo que detiene la oscilación.</translation>
        </message>
        <message>
            <source>0 or more; only the swing on the screen needs it.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>0 o más; solo lo usa la oscilación en pantalla.</translation>
        </message>
        <message>
            <source>Turns of the primary</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Espiras del primario</translation>
        </message>
        <message>
            <source>How many turns of thick wire the primary winding has.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Cuántas espiras de hilo grueso tiene el primario.</translation>
        </message>
        <message>
            <source>1 or more.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>1 o más.</translation>
        </message>
        <message>
            <source>Inductance of the primary</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Inductancia del primario</translation>
        </message>
        <message>
            <source>Read with a bridge, the rotor at neutral and the contacts held open.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Leída con un puente, rotor en neutro y contactos mantenidos abiertos.</translation>
        </message>
        <message>
            <source>Resistance of the primary</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Resistencia del primario</translation>
        </message>
        <message>
            <source>Read with an ohmmeter that resolves hundredths, leads taken off the reading.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Leída con un óhmetro que resuelva centésimas, restando la de los cables.</translation>
        </message>
        <message>
            <source>0 or more.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>0 o más.</translation>
        </message>
        <message>
            <source>Greatest flux</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Flujo máximo</translation>
        </message>
        <message>
            <source>Flux through the core at full register.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Flujo en el núcleo con los polos enfrentados.</translation>
        </message>
        <message>
            <source>0 or more; illustrative unless it was measured.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>0 o más; ilustrativo si no se ha medido.</translation>
        </message>
        <message>
            <source>Third harmonic of the flux</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Tercer armónico del flujo</translation>
        </message>
        <message>
            <source>How far the flux departs from a plain sine: 0 is a plain one.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Cuánto se aparta el flujo de un seno puro: 0 es puro.</translation>
        </message>
        <message>
            <source>Between −1 and 1; illustrative unless it was measured.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Entre −1 y 1; ilustrativo si no se ha medido.</translation>
        </message>
        <message>
            <source>Heel worn by</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Talón gastado en</translation>
        </message>
        <message>
            <source>How much of the rubbing face has gone since new.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Cuánto de la cara de roce se ha perdido desde nueva.</translation>
        </message>
        <message>
            <source>0 or more; needs the length from pivot to heel, to know what wear does.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>0 o más; pide la longitud del eje al talón, para saber qué hace el desgaste.</translation>
        </message>
        <message>
            <source>Pip on the contacts</source>
            <extracomment>bench/own_magneto_fields.py, job/parts.py, practice/debrief.py</extracomment>
            <translation>Punta en los contactos</translation>
        </message>
        <message>
            <source>How high metal has built up on one contact: a blade feels so much less gap.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Cuánto metal se ha acumulado en un contacto: una galga nota otro tanto menos de apertura.</translation>
        </message>
        <message>
            <source>Lobes late by</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Lóbulos retrasados en</translation>
        </message>
        <message>
            <source>How far each lobe stands from its place, in cam degrees, late above 0.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Cuánto se aparta cada lóbulo de su lugar, en grados de leva, retraso sobre 0.</translation>
        </message>
        <message>
            <source>As many values as there are lobes, or none; lobes must not overlap.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Tantos valores como lóbulos, o ninguno; los lóbulos no deben solaparse.</translation>
        </message>
        <message>
            <source>Lobes high by</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Lóbulos altos en</translation>
        </message>
        <message>
            <source>How much more than lobe 1 as new each lobe lifts the contacts.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Cuánto más que el lóbulo 1 de nuevo alza cada lóbulo los contactos.</translation>
        </message>
        <message>
            <source>As many values as there are lobes, or none; some lift must be left.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Tantos valores como lóbulos, o ninguno; debe quedar algo de alzada.</translation>
        </message>
        <message>
            <source>Screw creeps by</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>El tornillo se corre</translation>
        </message>
        <message>
            <source>How far tightening the lock screw carries the contact screw along, closer above 0.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Cuánto arrastra el apriete del tornillo de bloqueo al de contacto, juntando sobre 0.</translation>
        </message>
        <message>
            <source>Small: a quarter turn would be a broken screw.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Pequeño: un cuarto de vuelta sería un tornillo roto.</translation>
        </message>
        <message>
            <source>Play of the coupling</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Juego del acoplamiento</translation>
        </message>
        <message>
            <source>How far the rotor can be rocked with the drive held still.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Cuánto se puede mover el rotor a uno y otro lado con el accionamiento quieto.</translation>
        </message>
        <message>
            <source>a law of motion</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>una ley de movimiento</translation>
        </message>
        <message>
            <source>a traced table</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>una tabla medida</translation>
        </message>
        <message>
            <source>harmonic</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>armónica</translation>
        </message>
        <message>
            <source>cycloidal</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>cicloidal</translation>
        </message>
        <message>
            <source>polynomial 3-4-5</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>polinomio 3-4-5</translation>
        </message>
        <message>
            <source>polynomial 4-5-6-7</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>polinomio 4-5-6-7</translation>
        </message>
        <message>
            <source>modified sine</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>seno modificado</translation>
        </message>
        <message>
            <source>modified trapezoid</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>trapecio modificado</translation>
        </message>
        <message>
            <source>behind the heel</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>detrás del talón</translation>
        </message>
        <message>
            <source>ahead of the heel</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>delante del talón</translation>
        </message>
        <message>
            <source>turns an eccentric</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>gira una excéntrica</translation>
        </message>
        <message>
            <source>is threaded</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>es roscado</translation>
        </message>
        <message>
            <source>evenly spaced, one a spark of the rotor's turns</source>
            <extracomment>bench/own_measured.py</extracomment>
            <translation>igualmente espaciados, uno por cada chispa de las vueltas del rotor</translation>
        </message>
        <message>
            <source>poles over lobes, for a spark at every pole</source>
            <extracomment>bench/own_measured.py</extracomment>
            <translation>polos entre lóbulos, para una chispa en cada polo</translation>
        </message>
        <message>
            <source>cylinders over twice the poles</source>
            <extracomment>bench/own_measured.py</extracomment>
            <translation>cilindros entre el doble de los polos</translation>
        </message>
        <message>
            <source>connecting rod less the knuckle pins' radius</source>
            <extracomment>bench/own_measured.py</extracomment>
            <translation>biela menos el radio de los ejes de articulación</translation>
        </message>
        <message>
            <source>one trial on the bench</source>
            <extracomment>bench/own_measured.py</extracomment>
            <translation>un ensayo en el banco</translation>
        </message>
        <message>
            <source>{count} trials on the bench</source>
            <extracomment>bench/own_measured.py</extracomment>
            <translation>{count} ensayos en el banco</translation>
        </message>
        <message>
            <source>there are no trials on the bench: note some on its page Trials first</source>
            <extracomment>bench/own_measured.py</extracomment>
            <translation>no hay ensayos en el banco: anote antes algunos en su página Ensayos</translation>
        </message>
        <message>
            <source>trials correct a complete magneto: begin from a shipped one and fill in what is known</source>
            <extracomment>bench/own_measured.py</extracomment>
            <translation>los ensayos corrigen una magneto completa: parta de una incluida y rellene lo que se sabe</translation>
        </message>
        <message>
            <source>give the poles of the rotor and the cam's turns per rotor turn first</source>
            <extracomment>bench/own_measured.py</extracomment>
            <translation>dé antes los polos del rotor y las vueltas de leva por vuelta de rotor</translation>
        </message>
        <message>
            <source>poles over the cam's turns per rotor turn is {lobes}; it must be a whole number from 1 to 36</source>
            <extracomment>bench/own_measured.py</extracomment>
            <translation>polos entre las vueltas de leva por vuelta de rotor da {lobes}; debe ser un número entero de 1 a 36</translation>
        </message>
        <message>
            <source>give the poles of the rotor and the tops of the lobes first</source>
            <extracomment>bench/own_measured.py</extracomment>
            <translation>dé antes los polos del rotor y las cimas de los lóbulos</translation>
        </message>
        <message>
            <source>give the connecting rod and the knuckle pins' radius first</source>
            <extracomment>bench/own_measured.py</extracomment>
            <translation>dé antes la biela y el radio de los ejes de articulación</translation>
        </message>
        <message>
            <source>this magneto is not on an engine</source>
            <extracomment>bench/state.py, job/feeds.py, practice/actions.py</extracomment>
            <translation>esta magneto no está en un motor</translation>
        </message>
        <message>
            <source>with this setting the contacts never open and close, so there is nothing to read</source>
            <extracomment>bench/sureness.py</extracomment>
            <translation>con este ajuste los contactos nunca abren y cierran; no hay nada que leer</translation>
        </message>
        <message>
            <source>Reading the offset</source>
            <extracomment>bench/sureness.py</extracomment>
            <translation>Lectura de la desviación</translation>
        </message>
        <message>
            <source>Straightedge</source>
            <extracomment>bench/sureness.py, ui/class_editor_fields.py, ui/practice_sight.py</extracomment>
            <translation>Regla</translation>
        </message>
        <message>
            <source>Feeler blades</source>
            <extracomment>bench/sureness.py, ui/practice_tray.py</extracomment>
            <translation>Galgas</translation>
        </message>
        <message>
            <source>Drag of the blade</source>
            <extracomment>bench/sureness.py</extracomment>
            <translation>Roce de la galga</translation>
        </message>
        <message>
            <source>Opening shown by</source>
            <extracomment>bench/sureness.py</extracomment>
            <translation>Apertura indicada por</translation>
        </message>
        <message>
            <source>Turning the rotor</source>
            <extracomment>bench/sureness.py, ui/practice_sight.py</extracomment>
            <translation>Giro del rotor</translation>
        </message>
        <message>
            <source>Turning the crank</source>
            <extracomment>bench/sureness.py</extracomment>
            <translation>Giro del cigüeñal</translation>
        </message>
        <message>
            <source>Crank disc</source>
            <extracomment>bench/sureness.py</extracomment>
            <translation>Disco del cigüeñal</translation>
        </message>
        <message>
            <source>Play</source>
            <extracomment>bench/sureness.py</extracomment>
            <translation>Juego</translation>
        </message>
        <message>
            <source>Tightening</source>
            <extracomment>bench/sureness.py</extracomment>
            <translation>Apriete</translation>
        </message>
        <message>
            <source>{name}: {value} ± {spread} (k = {k}); limits {low} to {high}: {percent} likely within them.</source>
            <extracomment>bench/sureness.py</extracomment>
            <translation>{name}: {value} ± {spread} (k = {k}); límites {low} a {high}: {percent} de probabilidad de estar dentro.</translation>
        </message>
        <message>
            <source>What matters most: {name}, {share} of the variance ({source}).</source>
            <extracomment>bench/sureness.py</extracomment>
            <translation>Lo que más pesa: {name}, {share} de la varianza ({source}).</translation>
        </message>
        <message>
            <source>With {instead} instead of {was}: {after} likely all in limits, now {before}.</source>
            <extracomment>bench/sureness.py</extracomment>
            <translation>Con {instead} en vez de {was}: {after} de probabilidad de todo en límites, ahora {before}.</translation>
        </message>
        <message>
            <source>under 1 %</source>
            <extracomment>bench/sureness.py</extracomment>
            <translation>menos del 1 %</translation>
        </message>
        <message>
            <source>over 99 %</source>
            <extracomment>bench/sureness.py</extracomment>
            <translation>más del 99 %</translation>
        </message>
        <message>
            <source>Breaker end</source>
            <extracomment>bench/told.py, ui/breaker_view.py</extracomment>
            <translation>Lado del ruptor</translation>
        </message>
        <message>
            <source>Drive end: the coupling</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Lado de accionamiento: el acoplamiento</translation>
        </message>
        <message>
            <source>Crank, timing disc and piston of No. 1</source>
            <extracomment>bench/told.py, ui/crank_view.py</extracomment>
            <translation>Cigüeñal, disco de calado y pistón del n.º 1</translation>
        </message>
        <message>
            <source>Switch lead</source>
            <extracomment>bench/told.py, classroom/blanks.py, practice/debrief.py, ui/panes.py, ui/practice_notebook.py, ui/practice_work.py</extracomment>
            <translation>Cable de masa</translation>
        </message>
        <message>
            <source>rotor</source>
            <extracomment>bench/told.py, bench/words.py, ui/breaker_hands.py</extracomment>
            <translation>rotor</translation>
        </message>
        <message>
            <source>pole shoe</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation>zapata polar</translation>
        </message>
        <message>
            <source>cam</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation>leva</translation>
        </message>
        <message>
            <source>heel</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation>talón</translation>
        </message>
        <message>
            <source>breaker arm</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation>brazo del ruptor</translation>
        </message>
        <message>
            <source>pivot</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation>eje del brazo</translation>
        </message>
        <message>
            <source>spring</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation>muelle</translation>
        </message>
        <message>
            <source>contact screw</source>
            <extracomment>bench/told.py, bench/words.py, ui/breaker_hands.py</extracomment>
            <translation>tornillo de contacto</translation>
        </message>
        <message>
            <source>lock screw</source>
            <extracomment>bench/told.py, bench/words.py, ui/setting_panel.py</extracomment>
            <translation>tornillo de bloqueo</translation>
        </message>
        <message>
            <source>backplate</source>
            <extracomment>bench/told.py, bench/words.py, ui/breaker_hands.py</extracomment>
            <translation>placa base</translation>
        </message>
        <message>
            <source>clamp screw</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation>tornillo de sujeción</translation>
        </message>
        <message>
            <source>step</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation>escalón</translation>
        </message>
        <message>
            <source>rim mark</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation>marca del borde</translation>
        </message>
        <message>
            <source>A magnet whose poles alternate round it; the engine turns it.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Un imán de polos alternos en su contorno; lo gira el motor.</translation>
        </message>
        <message>
            <source>Iron that leads the magnet's field through the coil's core and back.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Hierro que lleva el campo del imán por el núcleo de la bobina y de vuelta.</translation>
        </message>
        <message>
            <source>It turns with the rotor, or in a fixed ratio to it, and has a lobe for each spark.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Gira con el rotor, o en relación fija con él, y tiene un lóbulo por chispa.</translation>
        </message>
        <message>
            <source>The block on the breaker arm that rides on the cam; it wears.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>El bloque del brazo del ruptor que apoya en la leva; se gasta.</translation>
        </message>
        <message>
            <source>It swings about its pivot and carries the moving contact.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Oscila sobre su eje y lleva el contacto móvil.</translation>
        </message>
        <message>
            <source>The pin the breaker arm swings about.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>El pasador sobre el que oscila el brazo del ruptor.</translation>
        </message>
        <message>
            <source>It presses the arm towards the cam and closes the contacts.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Empuja el brazo hacia la leva y cierra los contactos.</translation>
        </message>
        <message>
            <source>As they part, the primary current breaks and the spark jumps.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Al separarse, se corta la corriente primaria y salta la chispa.</translation>
        </message>
        <message>
            <source>It moves the fixed contact: nearer or further off, later or earlier.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Mueve el contacto fijo: más cerca o más lejos, más tarde o más pronto.</translation>
        </message>
        <message>
            <source>It holds the contact screw, and may carry it along as it is tightened.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Sujeta el tornillo de contacto y puede arrastrarlo al apretarse.</translation>
        </message>
        <message>
            <source>It carries contacts and arm; turned about the cam it shifts the opening alone.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Lleva contactos y brazo; girada en torno a la leva desplaza solo la apertura.</translation>
        </message>
        <message>
            <source>The clamp screws hold the backplate in its slots.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Los tornillos de sujeción fijan la placa base en sus ranuras.</translation>
        </message>
        <message>
            <source>An edge on the cam along which a straightedge is laid.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Un canto en la leva sobre el que se apoya la regla.</translation>
        </message>
        <message>
            <source>With the straightedge in line with it, the rotor stands at the E-gap.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Con la regla alineada con ella, el rotor está en el E-gap.</translation>
        </message>
        <message>
            <source>drive flange</source>
            <extracomment>bench/told.py, bench/words.py, job/coupling_picture.py, ui/drive_view.py</extracomment>
            <translation>brida motriz</translation>
        </message>
        <message>
            <source>disc</source>
            <extracomment>bench/told.py, bench/words.py, job/coupling_picture.py, practice/state.py, ui/drive_view.py</extracomment>
            <translation>disco</translation>
        </message>
        <message>
            <source>magneto flange</source>
            <extracomment>bench/told.py, bench/words.py, job/coupling_picture.py, ui/drive_view.py</extracomment>
            <translation>brida de la magneto</translation>
        </message>
        <message>
            <source>painted mark</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation>marca pintada</translation>
        </message>
        <message>
            <source>The engine turns it; its slots take the disc's outer teeth.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>La gira el motor; sus ranuras reciben los dientes exteriores del disco.</translation>
        </message>
        <message>
            <source>It joins both flanges, with one more tooth or fewer on one face than on the other.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Une ambas bridas, con un diente más o menos en una cara que en la otra.</translation>
        </message>
        <message>
            <source>It sits on the rotor's shaft, in the disc's inner teeth.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Va en el eje del rotor, en los dientes interiores del disco.</translation>
        </message>
        <message>
            <source>Paint across all three before anything is taken apart.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Pintura sobre los tres antes de desmontar nada.</translation>
        </message>
        <message>
            <source>crank</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation>cigüeñal</translation>
        </message>
        <message>
            <source>connecting rod</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation>biela</translation>
        </message>
        <message>
            <source>piston pin</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation>bulón</translation>
        </message>
        <message>
            <source>piston</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation>pistón</translation>
        </message>
        <message>
            <source>cylinder</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation>cilindro</translation>
        </message>
        <message>
            <source>timing disc</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation>disco de calado</translation>
        </message>
        <message>
            <source>pointer</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation>índice</translation>
        </message>
        <message>
            <source>It turns once for each up and down of the piston.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Da una vuelta por cada subida y bajada del pistón.</translation>
        </message>
        <message>
            <source>It joins crank and piston.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Une cigüeñal y pistón.</translation>
        </message>
        <message>
            <source>The rod swings about it in the piston.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>La biela oscila sobre él en el pistón.</translation>
        </message>
        <message>
            <source>About top dead centre it hardly moves while the crank does.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Cerca del punto muerto superior apenas se mueve mientras gira el cigüeñal.</translation>
        </message>
        <message>
            <source>No. 1 is the one that the timing is read on.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>En el n.º 1 se lee el calado.</translation>
        </message>
        <message>
            <source>Degrees before and after top dead centre, set to zero by the piston stop.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Grados antes y después del punto muerto superior, puesto a cero con el tope de pistón.</translation>
        </message>
        <message>
            <source>Fixed to the engine: it reads the disc.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Fijo al motor: señala en el disco.</translation>
        </message>
        <message>
            <source>switch</source>
            <extracomment>bench/told.py</extracomment>
            <translation>interruptor</translation>
        </message>
        <message>
            <source>The primary winding, grounded at one end.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>El devanado primario, con un extremo a masa.</translation>
        </message>
        <message>
            <source>Closed, they carry the primary current; open, they break it.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Cerrados, conducen la corriente primaria; abiertos, la cortan.</translation>
        </message>
        <message>
            <source>It joins the lead to the magneto, and pulled, lets the spring tab touch the case.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Une el cable a la magneto y, al sacarla, deja que la lengüeta toque la carcasa.</translation>
        </message>
        <message>
            <source>With the plug out it grounds the coil on the case – if it touches.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Con la clavija fuera pone la bobina a masa en la carcasa, si la toca.</translation>
        </message>
        <message>
            <source>The wire to the switch; broken inside, it leaves the magneto live.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>El hilo al interruptor; roto por dentro, deja la magneto viva.</translation>
        </message>
        <message>
            <source>Off, it is closed and grounds the primary: no spark.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>En OFF está cerrado y pone el primario a masa: sin chispa.</translation>
        </message>
        <message>
            <source>Check the marks: disc in line with the drive flange's mark, magneto flange in line with the disc's mark.</source>
            <extracomment>bench/tooth_steps.py</extracomment>
            <translation>Compruebe las marcas: disco alineado con la marca de la brida motriz, brida de la magneto alineada con la del disco.</translation>
        </message>
        <message>
            <source>Check the marks: disc in line with the drive flange's mark, magneto flange {flange} from the disc's mark.</source>
            <extracomment>bench/tooth_steps.py</extracomment>
            <translation>Compruebe las marcas: disco alineado con la marca de la brida motriz, brida de la magneto {flange} de la marca del disco.</translation>
        </message>
        <message>
            <source>Check the marks: disc {disc} from the drive flange's mark, magneto flange in line with the disc's mark.</source>
            <extracomment>bench/tooth_steps.py</extracomment>
            <translation>Compruebe las marcas: disco {disc} de la marca de la brida motriz, brida de la magneto alineada con la del disco.</translation>
        </message>
        <message>
            <source>Check the marks: disc {disc} from the drive flange's mark, magneto flange {flange} from the disc's mark.</source>
            <extracomment>bench/tooth_steps.py</extracomment>
            <translation>Compruebe las marcas: disco {disc} de la marca de la brida motriz, brida de la magneto {flange} de la marca del disco.</translation>
        </message>
        <message>
            <source>One tooth of the magneto flange on the disc is {magneto}; of the disc on the drive flange {disc}; one with rotation at the flange and one against at the disc {both}.</source>
            <extracomment>bench/tooth_steps.py</extracomment>
            <translation>Un diente de la brida de la magneto en el disco son {magneto}; del disco en la brida motriz, {disc}; uno en sentido de giro en la brida y uno en contra en el disco, {both}.</translation>
        </message>
        <message>
            <source>{magneto_teeth} teeth at the magneto, {drive_teeth} at the drive. The disc's marked tooth sits in magneto slot {magneto_slots} and in drive slot {drive_slots}.</source>
            <extracomment>bench/tooth_steps.py</extracomment>
            <translation>{magneto_teeth} dientes en la magneto, {drive_teeth} en el accionamiento. El diente marcado del disco está en la ranura {magneto_slots} de la magneto y en la {drive_slots} del accionamiento.</translation>
        </message>
        <message>
            <source>Move the magneto flange {teeth} on the disc.</source>
            <extracomment>bench/tooth_steps.py</extracomment>
            <translation>Mueva la brida de la magneto {teeth} sobre el disco.</translation>
        </message>
        <message>
            <source>Move the disc {teeth} on the drive flange, the magneto flange with it.</source>
            <extracomment>bench/tooth_steps.py</extracomment>
            <translation>Mueva el disco {teeth} sobre la brida motriz, junto con la brida de la magneto.</translation>
        </message>
        <message>
            <source>{rotor}° of rotor = {crank}° of crank</source>
            <extracomment>bench/tooth_steps.py</extracomment>
            <translation>{rotor}° de rotor = {crank}° de cigüeñal</translation>
        </message>
        <message>
            <source>compensated cam: the opening is judged on lobe 1</source>
            <extracomment>bench/verdict.py</extracomment>
            <translation>leva compensada: la apertura se juzga en el lóbulo 1</translation>
        </message>
        <message>
            <source>never: they stay open</source>
            <extracomment>bench/verdict.py</extracomment>
            <translation>nunca: quedan abiertos</translation>
        </message>
        <message>
            <source>never: they stay closed</source>
            <extracomment>bench/verdict.py</extracomment>
            <translation>nunca: quedan cerrados</translation>
        </message>
        <message>
            <source>{offset} past</source>
            <extracomment>bench/verdict.py</extracomment>
            <translation>{offset} después</translation>
        </message>
        <message>
            <source>{offset} short</source>
            <extracomment>bench/verdict.py</extracomment>
            <translation>{offset} antes</translation>
        </message>
        <message>
            <source>opening of every lobe</source>
            <extracomment>bench/verdict.py</extracomment>
            <translation>momento de apertura de cada lóbulo</translation>
        </message>
        <message>
            <source>opening of lobe {lobes}</source>
            <extracomment>bench/verdict.py</extracomment>
            <translation>momento de apertura del lóbulo {lobes}</translation>
        </message>
        <message>
            <source>gap of every lobe</source>
            <extracomment>bench/verdict.py</extracomment>
            <translation>apertura de cada lóbulo</translation>
        </message>
        <message>
            <source>gap of lobe {lobes}</source>
            <extracomment>bench/verdict.py</extracomment>
            <translation>apertura del lóbulo {lobes}</translation>
        </message>
        <message>
            <source>After {hours} h: opens at the E-gap, largest gap {gap}; within limits.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>Tras {hours} h: abre en el E-gap, apertura máxima {gap}; dentro de límites.</translation>
        </message>
        <message>
            <source>After {hours} h: opens at the E-gap, largest gap {gap}; out of limits.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>Tras {hours} h: abre en el E-gap, apertura máxima {gap}; fuera de límites.</translation>
        </message>
        <message>
            <source>After {hours} h: opens {angle} late, largest gap {gap}; within limits.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>Tras {hours} h: abre {angle} tarde, apertura máxima {gap}; dentro de límites.</translation>
        </message>
        <message>
            <source>After {hours} h: opens {angle} late, largest gap {gap}; out of limits.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>Tras {hours} h: abre {angle} tarde, apertura máxima {gap}; fuera de límites.</translation>
        </message>
        <message>
            <source>After {hours} h: opens {angle} early, largest gap {gap}; within limits.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>Tras {hours} h: abre {angle} pronto, apertura máxima {gap}; dentro de límites.</translation>
        </message>
        <message>
            <source>After {hours} h: opens {angle} early, largest gap {gap}; out of limits.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>Tras {hours} h: abre {angle} pronto, apertura máxima {gap}; fuera de límites.</translation>
        </message>
        <message>
            <source>Leaves its limits: {limits}.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>Sale de sus límites: {limits}.</translation>
        </message>
        <message>
            <source>The blade gap closes by {rate}.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>La apertura con galga se cierra {rate}.</translation>
        </message>
        <message>
            <source>opens late</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>abre tarde</translation>
        </message>
        <message>
            <source>opens late after {hours} h</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>abre tarde tras {hours} h</translation>
        </message>
        <message>
            <source>opens early</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>abre pronto</translation>
        </message>
        <message>
            <source>opens early after {hours} h</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>abre pronto tras {hours} h</translation>
        </message>
        <message>
            <source>gap too small</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>apertura demasiado pequeña</translation>
        </message>
        <message>
            <source>gap too small after {hours} h</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>apertura demasiado pequeña tras {hours} h</translation>
        </message>
        <message>
            <source>gap too wide</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>apertura demasiado grande</translation>
        </message>
        <message>
            <source>gap too wide after {hours} h</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>apertura demasiado grande tras {hours} h</translation>
        </message>
        <message>
            <source>blade gap too small</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>apertura con galga demasiado pequeña</translation>
        </message>
        <message>
            <source>blade gap too small after {hours} h</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>apertura con galga demasiado pequeña tras {hours} h</translation>
        </message>
        <message>
            <source>never opens</source>
            <extracomment>bench/wear_words.py, classroom/blanks.py, practice/debrief.py, practice/goals.py, practice/readings.py</extracomment>
            <translation>nunca abre</translation>
        </message>
        <message>
            <source>never opens after {hours} h</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>nunca abre tras {hours} h</translation>
        </message>
        <message>
            <source>After {hours} h the contacts would not open and close any more.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>Tras {hours} h los contactos ya no abrirían y cerrarían.</translation>
        </message>
        <message>
            <source>A blade would find {gap}: it rides on the pip, {pip} high, and the true gap is wider.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>Una galga hallaría {gap}: monta sobre la punta, de {pip} de alto, y la apertura real es mayor.</translation>
        </message>
        <message>
            <source>Out of limits already: {limits}. Set it first.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>Ya fuera de límites: {limits}. Ajústela antes.</translation>
        </message>
        <message>
            <source>At these rates nothing leaves its limits within {hours} h.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>A este ritmo nada sale de sus límites en {hours} h.</translation>
        </message>
        <message>
            <source>{value} per 100 h ({low} to {high}, {probability} times in 100)</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>{value} por 100 h (de {low} a {high}, {probability} veces de cada 100)</translation>
        </message>
        <message>
            <source>Of that the heel wears {heel}, and the pip grows {pip}.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>De ello, el talón se gasta {heel} y la punta crece {pip}.</translation>
        </message>
        <message>
            <source>Note where it opened, too, to tell the heel's part from the pip's.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>Anote también dónde abría, para distinguir la parte del talón de la de la punta.</translation>
        </message>
        <message>
            <source>turn the backplate {angle}° with rotation (clockwise seen from the breaker end)</source>
            <extracomment>bench/words.py</extracomment>
            <translation>girar la placa base {angle}° en sentido de giro (horario desde el lado del ruptor)</translation>
        </message>
        <message>
            <source>turn the backplate {angle}° with rotation (anticlockwise seen from the breaker end)</source>
            <extracomment>bench/words.py</extracomment>
            <translation>girar la placa base {angle}° en sentido de giro (antihorario desde el lado del ruptor)</translation>
        </message>
        <message>
            <source>turn the backplate {angle}° against rotation (clockwise seen from the breaker end)</source>
            <extracomment>bench/words.py</extracomment>
            <translation>girar la placa base {angle}° contra el giro (horario desde el lado del ruptor)</translation>
        </message>
        <message>
            <source>turn the backplate {angle}° against rotation (anticlockwise seen from the breaker end)</source>
            <extracomment>bench/words.py</extracomment>
            <translation>girar la placa base {angle}° contra el giro (antihorario desde el lado del ruptor)</translation>
        </message>
        <message>
            <source>turn the backplate {angle}° against rotation</source>
            <extracomment>bench/words.py</extracomment>
            <translation>girar la placa base {angle}° contra el giro</translation>
        </message>
        <message>
            <source>turn the contact screw {angle}° clockwise (contacts closer)</source>
            <extracomment>bench/words.py</extracomment>
            <translation>girar el tornillo de contacto {angle}° en sentido horario (contactos más juntos)</translation>
        </message>
        <message>
            <source>turn the contact screw {angle}° clockwise (contacts wider)</source>
            <extracomment>bench/words.py</extracomment>
            <translation>girar el tornillo de contacto {angle}° en sentido horario (contactos más separados)</translation>
        </message>
        <message>
            <source>turn the contact screw {angle}° anticlockwise (contacts closer)</source>
            <extracomment>bench/words.py</extracomment>
            <translation>girar el tornillo de contacto {angle}° en sentido antihorario (contactos más juntos)</translation>
        </message>
        <message>
            <source>turn the contact screw {angle}° anticlockwise (contacts wider)</source>
            <extracomment>bench/words.py</extracomment>
            <translation>girar el tornillo de contacto {angle}° en sentido antihorario (contactos más separados)</translation>
        </message>
        <message>
            <source>{count} teeth against rotation</source>
            <extracomment>bench/words.py</extracomment>
            <translation>{count} dientes contra el giro</translation>
        </message>
        <message>
            <source>{move} (clockwise seen from the drive end)</source>
            <extracomment>bench/words.py</extracomment>
            <translation>{move} (horario desde el lado de accionamiento)</translation>
        </message>
        <message>
            <source>{move} (anticlockwise seen from the drive end)</source>
            <extracomment>bench/words.py</extracomment>
            <translation>{move} (antihorario desde el lado de accionamiento)</translation>
        </message>
        <message>
            <source>{move} (clockwise seen from the breaker end)</source>
            <extracomment>bench/words.py</extracomment>
            <translation>{move} (horario desde el lado del ruptor)</translation>
        </message>
        <message>
            <source>{move} (anticlockwise seen from the breaker end)</source>
            <extracomment>bench/words.py</extracomment>
            <translation>{move} (antihorario desde el lado del ruptor)</translation>
        </message>
        <message>
            <source>{move} (clockwise)</source>
            <extracomment>bench/words.py</extracomment>
            <translation>{move} (horario)</translation>
        </message>
        <message>
            <source>{move} (anticlockwise)</source>
            <extracomment>bench/words.py</extracomment>
            <translation>{move} (antihorario)</translation>
        </message>
        <message>
            <source>direction of rotation</source>
            <extracomment>bench/words.py, job/coupling_picture.py</extracomment>
            <translation>sentido de giro</translation>
        </message>
        <message>
            <source>plate scale</source>
            <extracomment>bench/words.py</extracomment>
            <translation>escala de la placa</translation>
        </message>
        <message>
            <source>rim</source>
            <extracomment>bench/words.py</extracomment>
            <translation>borde</translation>
        </message>
        <message>
            <source>rotor scale</source>
            <extracomment>bench/words.py</extracomment>
            <translation>escala del rotor</translation>
        </message>
        <message>
            <source>straightedge</source>
            <extracomment>bench/words.py, practice/state.py</extracomment>
            <translation>regla</translation>
        </message>
        <message>
            <source>turn the backplate {angle}° with rotation</source>
            <extracomment>bench/words.py</extracomment>
            <translation>girar la placa base {angle}° en sentido de giro</translation>
        </message>
        <message>
            <source>not moved</source>
            <extracomment>bench/words.py</extracomment>
            <translation>sin mover</translation>
        </message>
        <message>
            <source>{count} teeth with rotation</source>
            <extracomment>bench/words.py</extracomment>
            <translation>{count} dientes en sentido de giro</translation>
        </message>
        <message>
            <source>{count} with</source>
            <extracomment>bench/words.py</extracomment>
            <translation>{count} a favor</translation>
        </message>
        <message>
            <source>{count} against</source>
            <extracomment>bench/words.py</extracomment>
            <translation>{count} en contra</translation>
        </message>
        <message>
            <source>“{text}” is not a whole number of teeth: write one such as 3, -3, {ahead} or {back} (rotation)</source>
            <extracomment>bench/words.py</extracomment>
            <translation>«{text}» no es un número entero de dientes: escriba uno como 3, -3, {ahead} o {back} (giro)</translation>
        </message>
        <message>
            <source>1 tooth with rotation</source>
            <extracomment>bench/words.py</extracomment>
            <translation>1 diente en sentido de giro</translation>
        </message>
        <message>
            <source>1 tooth against rotation</source>
            <extracomment>bench/words.py</extracomment>
            <translation>1 diente contra el giro</translation>
        </message>
        <message>
            <source>{table}: left magneto</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>{table}: magneto izquierda</translation>
        </message>
        <message>
            <source>{mm} mm = {inch} in</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>{mm} mm = {inch} in</translation>
        </message>
        <message>
            <source>within {length}</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>dentro de {length}</translation>
        </message>
        <message>
            <source>{low} to {high}</source>
            <extracomment>classroom/blanks.py, job/document.py, job/words.py, practice/debrief.py, ui/trials_panel.py</extracomment>
            <translation>{low} a {high}</translation>
        </message>
        <message>
            <source>off, and meshed anew</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>desmontada y vuelta a engranar</translation>
        </message>
        <message>
            <source>{table}: right magneto</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>{table}: magneto derecha</translation>
        </message>
        <message>
            <source>sound, and proved</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>sano y comprobado</translation>
        </message>
        <message>
            <source>Plug out. A lead without ground while the switch is off leaves the magneto live.</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Clavija fuera. Un cable sin masa con el interruptor en OFF deja la magneto viva.</translation>
        </message>
        <message>
            <source>in line, within {length}</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>alineada, dentro de {length}</translation>
        </message>
        <message>
            <source>The rotor at the E-gap</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>El rotor en el E-gap</translation>
        </message>
        <message>
            <source>Held by hand, looked at square over the straightedge, reached with rotation.</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Sujeto a mano, mirado a escuadra sobre la regla, alcanzado en sentido de giro.</translation>
        </message>
        <message>
            <source>a pip of {length}</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>una punta de {length}</translation>
        </message>
        <message>
            <source>clean and flat</source>
            <extracomment>classroom/blanks.py, practice/instruments.py</extracomment>
            <translation>limpios y planos</translation>
        </message>
        <message>
            <source>Look before measuring: a blade on a pip reads too small a gap.</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Mire antes de medir: una galga sobre una punta lee una apertura demasiado pequeña.</translation>
        </message>
        <message>
            <source>{amount} mm past</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>{amount} mm después</translation>
        </message>
        <message>
            <source>{amount} mm short</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>{amount} mm antes</translation>
        </message>
        <message>
            <source>Turn with rotation. Lobe 1 opens for No. 1; the gap is measured with the heel on top of the lobe.</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Gire en sentido de giro. El lóbulo 1 abre para el n.º 1; la apertura se mide con el talón en la cima del lóbulo.</translation>
        </message>
        <message>
            <source>Top dead centre of No. 1</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Punto muerto superior del n.º 1</translation>
        </message>
        <message>
            <source>Bring the piston to the stop gently, by hand, from both sides; readings after zero count as negative.</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Lleve el pistón al tope con suavidad, a mano, por ambos lados; las lecturas tras el cero son negativas.</translation>
        </message>
        <message>
            <source>Fires before top dead centre</source>
            <extracomment>classroom/blanks.py, practice/debrief.py, ui/practice_notebook.py</extracomment>
            <translation>Enciende antes del punto muerto superior</translation>
        </message>
        <message>
            <source>{angle}° within {allowed}°</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>{angle}° ± {allowed}°</translation>
        </message>
        <message>
            <source>within {allowed}°</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>± {allowed}°</translation>
        </message>
        <message>
            <source>Timing to the engine</source>
            <extracomment>classroom/blanks.py, ui/panes.py, ui/uncertainty_panel.py</extracomment>
            <translation>Calado al motor</translation>
        </message>
        <message>
            <source>Lamp and disc, approached with rotation; teeth as seen from the drive end.</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Lámpara y disco, llegando en sentido de giro; dientes vistos desde el lado de accionamiento.</translation>
        </message>
        <message>
            <source>Magneto flange moved on the disc</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Brida de la magneto movida sobre el disco</translation>
        </message>
        <message>
            <source>Disc moved on the drive flange</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Disco movido sobre la brida motriz</translation>
        </message>
        <message>
            <source>never</source>
            <extracomment>classroom/blanks.py, practice/debrief.py</extracomment>
            <translation>nunca</translation>
        </message>
        <message>
            <source>{angle}°, on the wrong stroke</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>{angle}°, en el tiempo equivocado</translation>
        </message>
        <message>
            <source>one never fires</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>una nunca enciende</translation>
        </message>
        <message>
            <source>{angle}° and a turn of the crank</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>{angle}° y una vuelta de cigüeñal</translation>
        </message>
        <message>
            <source>ground</source>
            <extracomment>classroom/blanks.py, practice/instruments.py</extracomment>
            <translation>masa</translation>
        </message>
        <message>
            <source>no ground</source>
            <extracomment>classroom/blanks.py, practice/instruments.py</extracomment>
            <translation>sin masa</translation>
        </message>
        <message>
            <source>the lead is broken inside</source>
            <extracomment>classroom/blanks.py, practice/goals.py</extracomment>
            <translation>el cable está roto por dentro</translation>
        </message>
        <message>
            <source>a short inside the magneto grounds it</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>un corto dentro de la magneto la pone a masa</translation>
        </message>
        <message>
            <source>the spring tab does not touch the case</source>
            <extracomment>classroom/blanks.py, practice/goals.py</extracomment>
            <translation>la lengüeta no toca la carcasa</translation>
        </message>
        <message>
            <source>nothing: it is sound</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>nada: está sano</translation>
        </message>
        <message>
            <source>Reading</source>
            <extracomment>classroom/blanks.py, job/document.py, ui/uncertainty_panel.py</extracomment>
            <translation>Lectura</translation>
        </message>
        <message>
            <source>As found</source>
            <extracomment>classroom/blanks.py, classroom/preview.py, job/document.py, job/sheet.py, practice/report.py, ui/debrief_view.py, ui/job_sources.py</extracomment>
            <translation>Hallado</translation>
        </message>
        <message>
            <source>As left</source>
            <extracomment>classroom/blanks.py, job/document.py, practice/report.py, ui/job_sources.py</extracomment>
            <translation>Dejado</translation>
        </message>
        <message>
            <source>Try</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Intento</translation>
        </message>
        <message>
            <source>Straightedge from the rim mark</source>
            <extracomment>classroom/blanks.py, job/parts.py</extracomment>
            <translation>Regla desde la marca del borde</translation>
        </message>
        <message>
            <source>Short of it or past it</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Antes o después de ella</translation>
        </message>
        <message>
            <source>The contacts</source>
            <extracomment>classroom/blanks.py, lessons/what-the-parts-are.json</extracomment>
            <translation>Los contactos</translation>
        </message>
        <message>
            <source>Looked at</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Aspecto</translation>
        </message>
        <message>
            <source>Opening and gap, lobe by lobe</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Momento y apertura, lóbulo a lóbulo</translation>
        </message>
        <message>
            <source>Lobe</source>
            <extracomment>classroom/blanks.py, job/document.py, ui/job_table.py</extracomment>
            <translation>Lóbulo</translation>
        </message>
        <message>
            <source>Disc reads</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>El disco marca</translation>
        </message>
        <message>
            <source>Disc set anew</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Disco puesto de nuevo</translation>
        </message>
        <message>
            <source>Left magneto flange moved on the disc</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Brida de la magneto izquierda movida sobre el disco</translation>
        </message>
        <message>
            <source>Left disc moved on the drive flange</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Disco izquierdo movido sobre la brida motriz</translation>
        </message>
        <message>
            <source>Meter from plug to case, switch off</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Medidor de clavija a carcasa, interruptor en OFF</translation>
        </message>
        <message>
            <source>Meter from plug to case, switch on</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Medidor de clavija a carcasa, interruptor en ON</translation>
        </message>
        <message>
            <source>What it suffers from</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Qué le pasa</translation>
        </message>
        <message>
            <source>Faces of the contacts</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Caras de los contactos</translation>
        </message>
        <message>
            <source>Opens from the mark, as found</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Abre desde la marca, hallado</translation>
        </message>
        <message>
            <source>Largest gap, as found</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Apertura máxima, hallada</translation>
        </message>
        <message>
            <source>At the stop, turned with rotation</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>En el tope, girando en sentido de giro</translation>
        </message>
        <message>
            <source>At the stop, turned against rotation</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>En el tope, girando contra el giro</translation>
        </message>
        <message>
            <source>Half-way between: true top dead centre</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Punto medio: punto muerto superior real</translation>
        </message>
        <message>
            <source>Left fires before top dead centre</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>La izquierda enciende antes del punto muerto superior</translation>
        </message>
        <message>
            <source>Right fires before top dead centre</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>La derecha enciende antes del punto muerto superior</translation>
        </message>
        <message>
            <source>Apart from one another</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Diferencia entre ambas</translation>
        </message>
        <message>
            <source>Right magneto flange moved on the disc</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Brida de la magneto derecha movida sobre el disco</translation>
        </message>
        <message>
            <source>Right disc moved on the drive flange</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Disco derecho movido sobre la brida motriz</translation>
        </message>
        <message>
            <source>Opens from the mark, as left</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Abre desde la marca, dejado</translation>
        </message>
        <message>
            <source>Largest gap, as left</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Apertura máxima, dejada</translation>
        </message>
        <message>
            <source>0°</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>0°</translation>
        </message>
        <message>
            <source>{count} symbols; at most {most} can be checked</source>
            <extracomment>classroom/code.py</extracomment>
            <translation>{count} símbolos; como mucho se pueden comprobar {most}</translation>
        </message>
        <message>
            <source>No code was given; it looks like 8K2M-4TXN-0QZ7-5C</source>
            <extracomment>classroom/code.py</extracomment>
            <translation>No se dio ningún código; es como 8K2M-4TXN-0QZ7-5C</translation>
        </message>
        <message>
            <source>The code “{code}” was mistyped: its check characters do not fit</source>
            <extracomment>classroom/code.py</extracomment>
            <translation>El código «{code}» está mal escrito: sus caracteres de control no cuadran</translation>
        </message>
        <message>
            <source>Character {place} of the code is “{letter}”; codes have digits and letters without U</source>
            <extracomment>classroom/code.py</extracomment>
            <translation>El carácter {place} del código es «{letter}»; los códigos llevan cifras y letras sin U</translation>
        </message>
        <message>
            <source>The code has {count} characters; codes have at most {most}</source>
            <extracomment>classroom/code.py</extracomment>
            <translation>El código tiene {count} caracteres; como mucho son {most}</translation>
        </message>
        <message>
            <source>The code is cut short: it has {count} characters</source>
            <extracomment>classroom/code.py</extracomment>
            <translation>El código está incompleto: tiene {count} caracteres</translation>
        </message>
        <message>
            <source>{value} does not fit {bits} bits</source>
            <extracomment>classroom/code.py</extracomment>
            <translation>{value} no cabe en {bits} bits</translation>
        </message>
        <message>
            <source>{left} bits are left, {wanted} are wanted</source>
            <extracomment>classroom/code.py</extracomment>
            <translation>quedan {left} bits, hacen falta {wanted}</translation>
        </message>
        <message>
            <source>“{exercise}” is not in this set, or was done with other settings</source>
            <extracomment>classroom/desk.py</extracomment>
            <translation>«{exercise}» no está en este conjunto o se hizo con otros ajustes</translation>
        </message>
        <message>
            <source>turns {way}</source>
            <extracomment>classroom/drawings.py, ui/breaker_view.py, ui/drive_view.py</extracomment>
            <translation>giro {way}</translation>
        </message>
        <message>
            <source>Largest gap</source>
            <extracomment>classroom/drawings.py, job/document.py, job/parts.py, practice/debrief.py, practice/paper.py, ui/practice_notebook.py, ui/setting_panel.py</extracomment>
            <translation>Apertura máxima</translation>
        </message>
        <message>
            <source>Straightedge and rim mark</source>
            <extracomment>classroom/drawings.py</extracomment>
            <translation>Regla y marca del borde</translation>
        </message>
        <message>
            <source>This magneto is not on an engine: there is no such picture of it</source>
            <extracomment>classroom/drawings.py</extracomment>
            <translation>Esta magneto no está en un motor: no hay tal dibujo de ella</translation>
        </message>
        <message>
            <source>{magneto}, seen from the breaker end; the rotor turns {way}. Rotor and pole shoes are diagrammatic; cam, arm, contacts and marks are to scale.</source>
            <extracomment>classroom/drawings.py</extracomment>
            <translation>{magneto}, vista desde el lado del ruptor; giro del rotor: {way}. Rotor y zapatas polares son esquemáticos; leva, brazo, contactos y marcas están a escala.</translation>
        </message>
        <message>
            <source>{magneto}, seen from the drive end; the rotor turns {way}. Both faces of the disc are drawn, the drive face outside, the magneto face inside.</source>
            <extracomment>classroom/drawings.py</extracomment>
            <translation>{magneto}, vista desde el lado de accionamiento; giro del rotor: {way}. Se dibujan ambas caras del disco: fuera la del accionamiento, dentro la de la magneto.</translation>
        </message>
        <message>
            <source>{engine}, seen from the propeller end; it turns {way}.</source>
            <extracomment>classroom/drawings.py</extracomment>
            <translation>{engine}, visto desde el lado de la hélice; giro: {way}.</translation>
        </message>
        <message>
            <source>The primary circuit with its switch lead; the switch is off.</source>
            <extracomment>classroom/drawings.py</extracomment>
            <translation>El circuito primario con su cable de masa; el interruptor está en OFF.</translation>
        </message>
        <message>
            <source>mm</source>
            <extracomment>classroom/drawings.py, ui/class_editor_rows.py, ui/job_kinds.py</extracomment>
            <translation>mm</translation>
        </message>
        <message>
            <source>{folder}: the folder cannot be read: {reason}</source>
            <extracomment>classroom/gather.py</extracomment>
            <translation>{folder}: no se puede leer la carpeta: {reason}</translation>
        </message>
        <message>
            <source>The digest finds damage in copying. It is no protection against a determined cheat: the acts are marked again, but who did them, and when, is believed as written.</source>
            <extracomment>classroom/handed.py</extracomment>
            <translation>La huella detecta daños de copia. No protege contra un tramposo decidido: las acciones se vuelven a calificar, pero quién las hizo y cuándo se cree tal como está escrito.</translation>
        </message>
        <message>
            <source>{file}: was changed or damaged after it was handed in: its digest does not fit</source>
            <extracomment>classroom/handed.py</extracomment>
            <translation>{file}: se cambió o dañó tras la entrega: su huella no cuadra</translation>
        </message>
        <message>
            <source>the attempt has not been handed in</source>
            <extracomment>classroom/handed.py</extracomment>
            <translation>el intento no se ha entregado</translation>
        </message>
        <message>
            <source>another file has its name</source>
            <extracomment>classroom/handed.py</extracomment>
            <translation>otro archivo tiene su nombre</translation>
        </message>
        <message>
            <source>{folder}: the attempt cannot be written there: {reason}</source>
            <extracomment>classroom/handed.py</extracomment>
            <translation>{folder}: no se puede escribir ahí el intento: {reason}</translation>
        </message>
        <message>
            <source>Exercise</source>
            <extracomment>classroom/key.py, classroom/summary.py, spec/formats.py, ui/class_desk.py, ui/class_paper_dialog.py</extracomment>
            <translation>Ejercicio</translation>
        </message>
        <message>
            <source>Pupil</source>
            <extracomment>classroom/key.py, classroom/summary.py</extracomment>
            <translation>Alumno</translation>
        </message>
        <message>
            <source>What</source>
            <extracomment>classroom/key.py, practice/report.py</extracomment>
            <translation>Qué</translation>
        </message>
        <message>
            <source>Answer</source>
            <extracomment>classroom/key.py, ui/job_bars.py, ui/practice_sight.py</extracomment>
            <translation>Respuesta</translation>
        </message>
        <message>
            <source>{number}. {name}</source>
            <extracomment>classroom/key.py, classroom/summary.py</extracomment>
            <translation>{number}. {name}</translation>
        </message>
        <message>
            <source>Each pupil of this set has a fault of their own: name the pupils the key is for</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>Cada alumno de este conjunto tiene su propio fallo: nombre los alumnos para los que es la clave</translation>
        </message>
        <message>
            <source>contacts open {amount}° of rotor late</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>los contactos abren {amount}° de rotor tarde</translation>
        </message>
        <message>
            <source>largest gap {length} too wide</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>apertura máxima {length} demasiado grande</translation>
        </message>
        <message>
            <source>backplate {amount}° off, with cam rotation</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>placa base desviada {amount}°, en el sentido de la leva</translation>
        </message>
        <message>
            <source>lock screw carries the contact screw {amount}° along, contacts closer</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>el tornillo de bloqueo arrastra el de contacto {amount}°, contactos más juntos</translation>
        </message>
        <message>
            <source>crank disc reads {reading}° at top dead centre</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>el disco del cigüeñal marca {reading}° en el punto muerto superior</translation>
        </message>
        <message>
            <source>fitted with the rotor at neutral</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>montada con el rotor en neutro</translation>
        </message>
        <message>
            <source>lobe {lobe} lifts {length} less</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>el lóbulo {lobe} alza {length} menos</translation>
        </message>
        <message>
            <source>pip of {length} on the contacts</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>punta de {length} en los contactos</translation>
        </message>
        <message>
            <source>{amount}° of rotor play in the coupling</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>{amount}° de juego del rotor en el acoplamiento</translation>
        </message>
        <message>
            <source>switch lead broken: no ground</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>cable de masa roto: sin masa</translation>
        </message>
        <message>
            <source>switch lead shorted: always grounded</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>cable de masa en corto: siempre a masa</translation>
        </message>
        <message>
            <source>spring tab does not touch: the coil is not joined</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>la lengüeta no toca: la bobina no queda unida</translation>
        </message>
        <message>
            <source>switch lead sound</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>cable de masa sano</translation>
        </message>
        <message>
            <source>everyone</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>todos</translation>
        </message>
        <message>
            <source>Answer key: {title}</source>
            <extracomment>classroom/key.py, classroom/set_papers.py</extracomment>
            <translation>Clave de respuestas: {title}</translation>
        </message>
        <message>
            <source>Answer key</source>
            <extracomment>classroom/key.py, classroom/set_papers.py, ui/class_maker.py</extracomment>
            <translation>Clave de respuestas</translation>
        </message>
        <message>
            <source>Code {code}</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>Código {code}</translation>
        </message>
        <message>
            <source>{number}. {name} – {who} (draws from {seed})</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>{number}. {name} – {who} (sale de {seed})</translation>
        </message>
        <message>
            <source>contacts open {amount}° of rotor early</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>los contactos abren {amount}° de rotor pronto</translation>
        </message>
        <message>
            <source>largest gap {length} too narrow</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>apertura máxima {length} demasiado pequeña</translation>
        </message>
        <message>
            <source>backplate {amount}° off, against cam rotation</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>placa base desviada {amount}°, contra el giro de la leva</translation>
        </message>
        <message>
            <source>lock screw carries the contact screw {amount}° along, contacts wider</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>el tornillo de bloqueo arrastra el de contacto {amount}°, contactos más separados</translation>
        </message>
        <message>
            <source>fires on the wrong stroke</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>enciende en el tiempo equivocado</translation>
        </message>
        <message>
            <source>one tooth early at the magneto flange</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>un diente de avance en la brida de la magneto</translation>
        </message>
        <message>
            <source>{count} teeth early at the magneto flange</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>{count} dientes de avance en la brida de la magneto</translation>
        </message>
        <message>
            <source>one tooth late at the magneto flange</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>un diente de retraso en la brida de la magneto</translation>
        </message>
        <message>
            <source>{count} teeth late at the magneto flange</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>{count} dientes de retraso en la brida de la magneto</translation>
        </message>
        <message>
            <source>one tooth early at the drive flange</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>un diente de avance en la brida motriz</translation>
        </message>
        <message>
            <source>{count} teeth early at the drive flange</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>{count} dientes de avance en la brida motriz</translation>
        </message>
        <message>
            <source>one tooth late at the drive flange</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>un diente de retraso en la brida motriz</translation>
        </message>
        <message>
            <source>{count} teeth late at the drive flange</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>{count} dientes de retraso en la brida motriz</translation>
        </message>
        <message>
            <source>one vernier step early</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>un paso de nonio de avance</translation>
        </message>
        <message>
            <source>{count} vernier steps early</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>{count} pasos de nonio de avance</translation>
        </message>
        <message>
            <source>one vernier step late</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>un paso de nonio de retraso</translation>
        </message>
        <message>
            <source>{count} vernier steps late</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>{count} pasos de nonio de retraso</translation>
        </message>
        <message>
            <source>Fault</source>
            <extracomment>classroom/key.py, ui/class_editor_rows.py</extracomment>
            <translation>Fallo</translation>
        </message>
        <message>
            <source>   • no fault: it is as it should be</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>   • sin fallo: está como debe</translation>
        </message>
        <message>
            <source>none</source>
            <extracomment>classroom/key.py, practice/debrief.py, practice/report.py, ui/class_editor_fields.py</extracomment>
            <translation>ninguno</translation>
        </message>
        <message>
            <source>A name or a number is needed: each pupil's fault is drawn from it</source>
            <extracomment>classroom/names.py</extracomment>
            <translation>Hace falta un nombre o un número: de él sale el fallo de cada alumno</translation>
        </message>
        <message>
            <source>{why}; and it cannot be kept on this machine either ({here}): save the attempt by hand</source>
            <extracomment>classroom/outbox.py</extracomment>
            <translation>{why}; y tampoco se puede guardar en este equipo ({here}): guarde el intento a mano</translation>
        </message>
        <message>
            <source>About {minutes} minutes; {percent} % are needed.</source>
            <extracomment>classroom/preview.py</extracomment>
            <translation>Unos {minutes} minutos; se necesita {percent} %.</translation>
        </message>
        <message>
            <source>Hidden, for this seed</source>
            <extracomment>classroom/preview.py</extracomment>
            <translation>Oculto, para esta semilla</translation>
        </message>
        <message>
            <source>What the pupil reads</source>
            <extracomment>classroom/preview.py</extracomment>
            <translation>Lo que lee el alumno</translation>
        </message>
        <message>
            <source>Hints, one at a time</source>
            <extracomment>classroom/preview.py</extracomment>
            <translation>Pistas, de una en una</translation>
        </message>
        <message>
            <source>Nothing on the tray can prove “{goal}”.</source>
            <extracomment>classroom/preview.py</extracomment>
            <translation>Nada en la bandeja puede comprobar «{goal}».</translation>
        </message>
        <message>
            <source>No goal asks for “{fault}”.</source>
            <extracomment>classroom/preview.py</extracomment>
            <translation>Ningún objetivo pide «{fault}».</translation>
        </message>
        <message>
            <source>no fault</source>
            <extracomment>classroom/preview.py</extracomment>
            <translation>sin fallo</translation>
        </message>
        <message>
            <source>{file}: cannot be marked: {reason}</source>
            <extracomment>classroom/results.py</extracomment>
            <translation>{file}: no se puede calificar: {reason}</translation>
        </message>
        <message>
            <source>{file}: is not handed in yet</source>
            <extracomment>classroom/results.py</extracomment>
            <translation>{file}: aún no está entregado</translation>
        </message>
        <message>
            <source>Worksheets</source>
            <extracomment>classroom/set_papers.py</extracomment>
            <translation>Fichas</translation>
        </message>
        <message>
            <source>Each pupil of this set has a fault of their own: name the pupils the sheets are for</source>
            <extracomment>classroom/set_papers.py</extracomment>
            <translation>Cada alumno de este conjunto tiene su propio fallo: nombre los alumnos para los que son las fichas</translation>
        </message>
        <message>
            <source>Class code {code}.</source>
            <extracomment>classroom/set_papers.py</extracomment>
            <translation>Código de clase {code}.</translation>
        </message>
        <message>
            <source>{number}. {exercise}</source>
            <extracomment>classroom/set_papers.py, classroom/worksheet.py</extracomment>
            <translation>{number}. {exercise}</translation>
        </message>
        <message>
            <source>A code holds {most} exercises at most; this set needs its file</source>
            <extracomment>classroom/sets.py</extracomment>
            <translation>Un código admite {most} ejercicios como mucho; este conjunto necesita su archivo</translation>
        </message>
        <message>
            <source>“{exercise}” is not a shipped exercise; this set needs its file</source>
            <extracomment>classroom/sets.py</extracomment>
            <translation>«{exercise}» no es un ejercicio incluido; este conjunto necesita su archivo</translation>
        </message>
        <message>
            <source>This is no class code: it looks like 8K2M-4TXN-0QZ7-5C</source>
            <extracomment>classroom/sets.py</extracomment>
            <translation>No es un código de clase: es como 8K2M-4TXN-0QZ7-5C</translation>
        </message>
        <message>
            <source>This code was made by a newer magview, which is needed to use it</source>
            <extracomment>classroom/sets.py</extracomment>
            <translation>Este código es de un magview más nuevo, necesario para usarlo</translation>
        </message>
        <message>
            <source>Exercise {number} of this code is not shipped with this magview; both sides need the same version</source>
            <extracomment>classroom/sets.py</extracomment>
            <translation>El ejercicio {number} de este código no está en este magview; ambos lados necesitan la misma versión</translation>
        </message>
        <message>
            <source>This code was made with another version of its exercises; both sides need the same magview</source>
            <extracomment>classroom/sets.py</extracomment>
            <translation>Este código se hizo con otra versión de sus ejercicios; ambos lados necesitan el mismo magview</translation>
        </message>
        <message>
            <source>exercise {number} is not in this set, which has {count}</source>
            <extracomment>classroom/sets.py</extracomment>
            <translation>el ejercicio {number} no está en este conjunto, que tiene {count}</translation>
        </message>
        <message>
            <source>pupils[{i}] is “{name}”, which has neither a letter nor a digit</source>
            <extracomment>classroom/sets.py</extracomment>
            <translation>pupils[{i}] es «{name}», sin letra ni cifra</translation>
        </message>
        <message>
            <source>pupils has “{one}” and “{other}”, who cannot be told apart; capitals, accents and spaces do not count</source>
            <extracomment>classroom/sets.py</extracomment>
            <translation>pupils tiene «{one}» y «{other}», que no se distinguen; mayúsculas, acentos y espacios no cuentan</translation>
        </message>
        <message>
            <source>Marks %</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>Nota %</translation>
        </message>
        <message>
            <source>Verdict</source>
            <extracomment>classroom/summary.py, job/document.py, ui/debrief_view.py, ui/job_table.py</extracomment>
            <translation>Veredicto</translation>
        </message>
        <message>
            <source>Minutes</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>Minutos</translation>
        </message>
        <message>
            <source>Acts</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>Acciones</translation>
        </message>
        <message>
            <source>Found</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>Hallados</translation>
        </message>
        <message>
            <source>Missed</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>No hallados</translation>
        </message>
        <message>
            <source>Dangers</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>Peligros</translation>
        </message>
        <message>
            <source>Handed in</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>Entregado</translation>
        </message>
        <message>
            <source>Counts</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>Cuenta</translation>
        </message>
        <message>
            <source>Remarks</source>
            <extracomment>classroom/summary.py, job/parts.py, job/sheet.py</extracomment>
            <translation>Observaciones</translation>
        </message>
        <message>
            <source>File</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>Archivo</translation>
        </message>
        <message>
            <source>Done</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>Hecho</translation>
        </message>
        <message>
            <source>Passed</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>Aprobado</translation>
        </message>
        <message>
            <source>Weakest step</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>Paso más flojo</translation>
        </message>
        <message>
            <source>Step</source>
            <extracomment>classroom/summary.py, ui/lesson_view.py</extracomment>
            <translation>Paso</translation>
        </message>
        <message>
            <source>Attempts</source>
            <extracomment>classroom/summary.py, ui/class_gather.py</extracomment>
            <translation>Intentos</translation>
        </message>
        <message>
            <source>Wrong</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>Mal</translation>
        </message>
        <message>
            <source>Nearly right</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>Casi bien</translation>
        </message>
        <message>
            <source>Right, not proved</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>Bien, sin comprobar</translation>
        </message>
        <message>
            <source>What goes wrong</source>
            <extracomment>classroom/summary.py, ui/class_gather.py</extracomment>
            <translation>Qué sale mal</translation>
        </message>
        <message>
            <source>Pupils</source>
            <extracomment>classroom/summary.py, ui/class_gather.py, ui/class_maker_fields.py</extracomment>
            <translation>Alumnos</translation>
        </message>
        <message>
            <source>its exercise is not the set's</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>su ejercicio no es del conjunto</translation>
        </message>
        <message>
            <source>its fault was not drawn for this pupil</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>su fallo no salió para este alumno</translation>
        </message>
        <message>
            <source>not on the list of pupils</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>no está en la lista de alumnos</translation>
        </message>
        <message>
            <source>DANGER: {what}</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>PELIGRO: {what}</translation>
        </message>
        <message>
            <source>missed: {fault}</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>no hallado: {fault}</translation>
        </message>
        <message>
            <source>yes</source>
            <extracomment>classroom/summary.py, job/words.py, ui/job_kinds.py</extracomment>
            <translation>sí</translation>
        </message>
        <message>
            <source>no</source>
            <extracomment>classroom/summary.py, job/words.py, ui/job_kinds.py</extracomment>
            <translation>no</translation>
        </message>
        <message>
            <source>a copy of {file}</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>una copia de {file}</translation>
        </message>
        <message>
            <source>the same acts, to the second, as {pupil} in {file}</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>las mismas acciones, al segundo, que {pupil} en {file}</translation>
        </message>
        <message>
            <source>there is a later attempt</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>hay un intento posterior</translation>
        </message>
        <message>
            <source>of another set</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>de otro conjunto</translation>
        </message>
        <message>
            <source>saved by hand, not handed in with a class</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>guardado a mano, no entregado con una clase</translation>
        </message>
        <message>
            <source>rotor held at the E-gap</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>rotor sujeto en el E-gap</translation>
        </message>
        <message>
            <source>contacts open at the mark</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>los contactos abren en la marca</translation>
        </message>
        <message>
            <source>largest gap within its limits</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>apertura máxima dentro de sus límites</translation>
        </message>
        <message>
            <source>contacts clean and flat</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>contactos limpios y planos</translation>
        </message>
        <message>
            <source>disc set to top dead centre</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>disco puesto en el punto muerto superior</translation>
        </message>
        <message>
            <source>timed to the engine</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>calada al motor</translation>
        </message>
        <message>
            <source>both magnetos together</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>ambas magnetos juntas</translation>
        </message>
        <message>
            <source>switch lead sound and proved</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>cable de masa sano y comprobado</translation>
        </message>
        <message>
            <source>coupling marked first</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>acoplamiento marcado antes</translation>
        </message>
        <message>
            <source>everything tight and closed up</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>todo apretado y cerrado</translation>
        </message>
        <message>
            <source>opening, as written down</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>momento de apertura, según lo escrito</translation>
        </message>
        <message>
            <source>largest gap, as written down</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>apertura máxima, según lo escrito</translation>
        </message>
        <message>
            <source>firing, as written down</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>encendido, según lo escrito</translation>
        </message>
        <message>
            <source>disc's zero, as written down</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>cero del disco, según lo escrito</translation>
        </message>
        <message>
            <source>switch lead, as written down</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>cable de masa, según lo escrito</translation>
        </message>
        <message>
            <source>opens early or late</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>abre pronto o tarde</translation>
        </message>
        <message>
            <source>gap too wide or narrow</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>apertura grande o pequeña</translation>
        </message>
        <message>
            <source>backplate off</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>placa base desviada</translation>
        </message>
        <message>
            <source>lock screw carries the contact screw along</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>el tornillo de bloqueo arrastra el de contacto</translation>
        </message>
        <message>
            <source>a low lobe</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>un lóbulo bajo</translation>
        </message>
        <message>
            <source>pip on the contacts</source>
            <extracomment>classroom/words.py, physics/setting_uncertainty.py</extracomment>
            <translation>punta en los contactos</translation>
        </message>
        <message>
            <source>play in the coupling</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>juego en el acoplamiento</translation>
        </message>
        <message>
            <source>teeth out at the magneto flange</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>dientes de error en la brida de la magneto</translation>
        </message>
        <message>
            <source>teeth out at the drive flange</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>dientes de error en la brida motriz</translation>
        </message>
        <message>
            <source>vernier steps out</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>pasos de nonio de error</translation>
        </message>
        <message>
            <source>disc not at zero</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>disco fuera de cero</translation>
        </message>
        <message>
            <source>on the wrong stroke</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>en el tiempo equivocado</translation>
        </message>
        <message>
            <source>fitted at neutral</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>montada en neutro</translation>
        </message>
        <message>
            <source>switch lead</source>
            <extracomment>classroom/words.py, practice/words.py</extracomment>
            <translation>cable de masa</translation>
        </message>
        <message>
            <source>took the magneto off unmarked</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>desmontó la magneto sin marcar</translation>
        </message>
        <message>
            <source>turned the propeller with no chocks at the wheels</source>
            <extracomment>classroom/words.py, practice/evidence.py</extracomment>
            <translation>giró la hélice sin calzos en las ruedas</translation>
        </message>
        <message>
            <source>turned the propeller with a live magneto and the plugs in</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>giró la hélice con una magneto viva y las bujías puestas</translation>
        </message>
        <message>
            <source>turned the propeller, plugs in, without proving the switch</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>giró la hélice, bujías puestas, sin comprobar el interruptor</translation>
        </message>
        <message>
            <source>handed in with screws or nuts slack</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>entregado con tornillos o tuercas flojos</translation>
        </message>
        <message>
            <source>handed in with the switch on</source>
            <extracomment>classroom/words.py, practice/marking.py</extracomment>
            <translation>entregado con el interruptor en ON</translation>
        </message>
        <message>
            <source>{step}: wrong</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>{step}: mal</translation>
        </message>
        <message>
            <source>{step}: nearly right</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>{step}: casi bien</translation>
        </message>
        <message>
            <source>{step}: right, not proved by instruments</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>{step}: bien, sin comprobar con instrumentos</translation>
        </message>
        <message>
            <source>{what} (left)</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>{what} (izquierda)</translation>
        </message>
        <message>
            <source>{what} (right)</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>{what} (derecha)</translation>
        </message>
        <message>
            <source>newer version</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>versión más nueva</translation>
        </message>
        <message>
            <source>not handed in</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>no entregado</translation>
        </message>
        <message>
            <source>damaged</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>dañado</translation>
        </message>
        <message>
            <source>passed</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>aprobado</translation>
        </message>
        <message>
            <source>not passed</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>no aprobado</translation>
        </message>
        <message>
            <source>On a real magneto: treat the propeller as live; switch off, its lead grounded and proved; plugs out; wheels chocked. The maker's current manual and local rules govern; work on a certified aircraft is done or released by a licensed person. This sheet is for training; its magneto is invented.</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>En una magneto real: trate la hélice como viva; interruptor en OFF, su cable a masa y comprobado; bujías fuera; ruedas calzadas. Rigen el manual vigente del fabricante y las normas locales; el trabajo en una aeronave certificada lo hace o lo libera una persona con licencia. Esta ficha es para formación; su magneto es inventada.</translation>
        </message>
        <message>
            <source>{magneto}: pictures</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>{magneto}: dibujos</translation>
        </message>
        <message>
            <source>{title} · magview {version} · treat the propeller as live</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>{title} · magview {version} · trate la hélice como viva</translation>
        </message>
        <message>
            <source>In the program: begin this exercise with the code {seed}.</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>En el programa: empiece este ejercicio con el código {seed}.</translation>
        </message>
        <message>
            <source>Name the parts: key</source>
            <extracomment>classroom/worksheet.py, ui/class_paper_dialog.py</extracomment>
            <translation>Nombre las piezas: clave</translation>
        </message>
        <message>
            <source>Name the parts</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>Nombre las piezas</translation>
        </message>
        <message>
            <source>Answer key: {exercise}</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>Clave de respuestas: {exercise}</translation>
        </message>
        <message>
            <source>In the program: class code {code}, under this name.</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>En el programa: código de clase {code}, con este nombre.</translation>
        </message>
        <message>
            <source>In the program: class code {code}.</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>En el programa: código de clase {code}.</translation>
        </message>
        <message>
            <source>The straightedge (dashed) as the contacts open, and the rim mark: how far apart, short or past?</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>La regla (a trazos) al abrir los contactos, y la marca del borde: ¿cuánto distan, antes o después?</translation>
        </message>
        <message>
            <source>The case</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>El caso</translation>
        </message>
        <message>
            <source>About {minutes} minutes. Done when:</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>Unos {minutes} minutos. Hecho cuando:</translation>
        </message>
        <message>
            <source>Data sheet</source>
            <extracomment>classroom/worksheet.py, ui/practice_task.py</extracomment>
            <translation>Hoja de datos</translation>
        </message>
        <message>
            <source>Readings</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>Lecturas</translation>
        </message>
        <message>
            <source>What was wrong, and what put it right</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>Qué estaba mal y qué lo corrigió</translation>
        </message>
        <message>
            <source>{side} magneto: {fault}</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>Magneto {side}: {fault}</translation>
        </message>
        <message>
            <source>Class</source>
            <extracomment>classroom/worksheet.py, ui/class_desk.py</extracomment>
            <translation>Clase</translation>
        </message>
        <message>
            <source>Date</source>
            <extracomment>classroom/worksheet.py, job/document.py, job/history.py, job/parts.py, job/sheet.py, job/shift_plan.py</extracomment>
            <translation>Fecha</translation>
        </message>
        <message>
            <source>Hints</source>
            <extracomment>classroom/worksheet.py, ui/practice_task.py</extracomment>
            <translation>Pistas</translation>
        </message>
        <message>
            <source>{number}. {table}</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>{number}. {table}</translation>
        </message>
        <message>
            <source>Into the pictures: lobe 1 as found</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>Para dibujar: lóbulo 1, hallado</translation>
        </message>
        <message>
            <source>The contacts at their widest. Not to scale.</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>Los contactos en su mayor apertura. No está a escala.</translation>
        </message>
        <message>
            <source>For {pupil}.</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>Para {pupil}.</translation>
        </message>
        <message>
            <source>For everyone.</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>Para todos.</translation>
        </message>
        <message>
            <source>Nothing needs to be put right.</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>No hay nada que corregir.</translation>
        </message>
        <message>
            <source>Name the parts – {picture}</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>Nombre las piezas – {picture}</translation>
        </message>
        <message>
            <source>Part</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>Pieza</translation>
        </message>
        <message>
            <source>What it does</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>Qué hace</translation>
        </message>
        <message>
            <source>not installed; install magview again</source>
            <extracomment>cli_check.py</extracomment>
            <translation>no instalado; instale magview de nuevo</translation>
        </message>
        <message>
            <source>{count} magnetos and {more} installations can be read</source>
            <extracomment>cli_check.py</extracomment>
            <translation>se pueden leer {count} magnetos y {more} instalaciones</translation>
        </message>
        <message>
            <source>opens ({platform}, screen of {width} × {height})</source>
            <extracomment>cli_check.py</extracomment>
            <translation>abre ({platform}, pantalla de {width} × {height})</translation>
        </message>
        <message>
            <source>Qt does not start: {reason}</source>
            <extracomment>cli_check.py</extracomment>
            <translation>Qt no arranca: {reason}</translation>
        </message>
        <message>
            <source>good</source>
            <extracomment>cli_check.py</extracomment>
            <translation>bien</translation>
        </message>
        <message>
            <source>MISSING</source>
            <extracomment>cli_check.py</extracomment>
            <translation>FALTA</translation>
        </message>
        <message>
            <source>no magnetos in {folder}; install magview again</source>
            <extracomment>cli_check.py</extracomment>
            <translation>no hay magnetos en {folder}; instale magview de nuevo</translation>
        </message>
        <message>
            <source>Qt needs it for a window; the package {package} of Debian and Ubuntu has it</source>
            <extracomment>cli_check.py</extracomment>
            <translation>Qt la necesita para una ventana; está en el paquete {package} de Debian y Ubuntu</translation>
        </message>
        <message>
            <source>opens, but where nobody sees it: QT_QPA_PLATFORM is {platform}</source>
            <extracomment>cli_check.py</extracomment>
            <translation>abre, pero donde nadie lo ve: QT_QPA_PLATFORM es {platform}</translation>
        </message>
        <message>
            <source>there are no fonts, so words are boxes; the package fonts-dejavu-core of Debian and Ubuntu has some</source>
            <extracomment>cli_check.py</extracomment>
            <translation>no hay fuentes y las palabras salen como cuadros; el paquete fonts-dejavu-core de Debian y Ubuntu trae algunas</translation>
        </message>
        <message>
            <source>Qt has no working platform plugin “{chosen}”, which QT_QPA_PLATFORM asks for; unset it, or choose one of: {known}</source>
            <extracomment>cli_check.py</extracomment>
            <translation>Qt no tiene un plugin de plataforma «{chosen}» que funcione, el que pide QT_QPA_PLATFORM; quítela o elija uno de: {known}</translation>
        </message>
        <message>
            <source>folder of work under way</source>
            <extracomment>cli_check.py</extracomment>
            <translation>carpeta del trabajo en curso</translation>
        </message>
        <message>
            <source>folder of the log</source>
            <extracomment>cli_check.py</extracomment>
            <translation>carpeta del registro</translation>
        </message>
        <message>
            <source>folder of fault reports</source>
            <extracomment>cli_check.py</extracomment>
            <translation>carpeta de informes de fallos</translation>
        </message>
        <message>
            <source>folder for the time being</source>
            <extracomment>cli_check.py</extracomment>
            <translation>carpeta temporal</translation>
        </message>
        <message>
            <source>{trouble}; make the folder writable, or set XDG_DATA_HOME and XDG_STATE_HOME to ones that are</source>
            <extracomment>cli_check.py</extracomment>
            <translation>{trouble}; haga escribible la carpeta o ponga XDG_DATA_HOME y XDG_STATE_HOME en otras que lo sean</translation>
        </message>
        <message>
            <source>{folder} has only {free} MB free; make room</source>
            <extracomment>cli_check.py</extracomment>
            <translation>{folder} solo tiene {free} MB libres; haga sitio</translation>
        </message>
        <message>
            <source>{folder} can be written, {free} MB free</source>
            <extracomment>cli_check.py</extracomment>
            <translation>se puede escribir en {folder}, {free} MB libres</translation>
        </message>
        <message>
            <source>versions</source>
            <extracomment>cli_check.py</extracomment>
            <translation>versiones</translation>
        </message>
        <message>
            <source>shipped files</source>
            <extracomment>cli_check.py</extracomment>
            <translation>archivos incluidos</translation>
        </message>
        <message>
            <source>window</source>
            <extracomment>cli_check.py</extracomment>
            <translation>ventana</translation>
        </message>
        <message>
            <source>printing</source>
            <extracomment>cli_check.py</extracomment>
            <translation>impresión</translation>
        </message>
        <message>
            <source>files</source>
            <extracomment>cli_check.py</extracomment>
            <translation>archivos</translation>
        </message>
        <message>
            <source>desktop</source>
            <extracomment>cli_check.py</extracomment>
            <translation>escritorio</translation>
        </message>
        <message>
            <source>PDF is written, with {count} families of type</source>
            <extracomment>cli_check.py</extracomment>
            <translation>se escribe PDF, con {count} familias de letra</translation>
        </message>
        <message>
            <source>it gave no reason</source>
            <extracomment>cli_check.py</extracomment>
            <translation>no dio motivo</translation>
        </message>
        <message>
            <source>not in the menu; `magview desktop` puts it there</source>
            <extracomment>cli_check.py</extracomment>
            <translation>no está en el menú; `magview desktop` lo pone ahí</translation>
        </message>
        <message>
            <source>Nothing is missing.</source>
            <extracomment>cli_check.py</extracomment>
            <translation>No falta nada.</translation>
        </message>
        <message>
            <source>Something is missing.</source>
            <extracomment>cli_check.py</extracomment>
            <translation>Falta algo.</translation>
        </message>
        <message>
            <source>Qt writes no PDF or reads no SVG; install magview again</source>
            <extracomment>cli_check.py</extracomment>
            <translation>Qt no escribe PDF o no lee SVG; instale magview de nuevo</translation>
        </message>
        <message>
            <source>Qt did not answer within {seconds} s; try again</source>
            <extracomment>cli_check.py</extracomment>
            <translation>Qt no respondió en {seconds} s; inténtelo de nuevo</translation>
        </message>
        <message>
            <source>in the menu; `magview desktop --remove` takes it away</source>
            <extracomment>cli_check.py</extracomment>
            <translation>en el menú; `magview desktop --remove` lo quita</translation>
        </message>
        <message>
            <source>could not be looked at: {reason}</source>
            <extracomment>cli_check.py</extracomment>
            <translation>no se pudo examinar: {reason}</translation>
        </message>
        <message>
            <source>about {minutes} minutes</source>
            <extracomment>cli_class.py</extracomment>
            <translation>unos {minutes} minutos</translation>
        </message>
        <message>
            <source>A fault of their own for each pupil.</source>
            <extracomment>cli_class.py</extracomment>
            <translation>Un fallo propio para cada alumno.</translation>
        </message>
        <message>
            <source>The same faults for everyone.</source>
            <extracomment>cli_class.py</extracomment>
            <translation>Los mismos fallos para todos.</translation>
        </message>
        <message>
            <source>the set</source>
            <extracomment>cli_class.py</extracomment>
            <translation>el conjunto</translation>
        </message>
        <message>
            <source>{count} attempts count, of {files} files.</source>
            <extracomment>cli_class.py, ui/class_gather.py</extracomment>
            <translation>cuentan {count} intentos, de {files} archivos.</translation>
        </message>
        <message>
            <source>{name}: {percent} %, {passed} of {done} passed</source>
            <extracomment>cli_class.py</extracomment>
            <translation>{name}: {percent} %, {passed} de {done} aprobados</translation>
        </message>
        <message>
            <source>a code for a class, its answer key, and its attempts gathered</source>
            <extracomment>cli_class.py</extracomment>
            <translation>un código de clase, su clave de respuestas y sus intentos reunidos</translation>
        </message>
        <message>
            <source>make a class code, or say what one stands for</source>
            <extracomment>cli_class.py</extracomment>
            <translation>hacer un código de clase o decir qué significa uno</translation>
        </message>
        <message>
            <source>shipped exercises or files, in order; or one code or set</source>
            <extracomment>cli_class.py</extracomment>
            <translation>ejercicios incluidos o archivos, en orden; o un código o conjunto</translation>
        </message>
        <message>
            <source>the same seed makes the same code; left out: drawn</source>
            <extracomment>cli_class.py</extracomment>
            <translation>la misma semilla da el mismo código; si falta: al azar</translation>
        </message>
        <message>
            <source>a fault of their own for each pupil</source>
            <extracomment>cli_class.py</extracomment>
            <translation>un fallo propio para cada alumno</translation>
        </message>
        <message>
            <source>the exercises' hints are not given</source>
            <extracomment>cli_class.py</extracomment>
            <translation>no se dan las pistas de los ejercicios</translation>
        </message>
        <message>
            <source>straightedge, and blades beside the exercise's</source>
            <extracomment>cli_class.py</extracomment>
            <translation>regla, y galgas además de las del ejercicio</translation>
        </message>
        <message>
            <source>the time allowed for each exercise</source>
            <extracomment>cli_class.py</extracomment>
            <translation>el tiempo admitido por ejercicio</translation>
        </message>
        <message>
            <source>for the file and the key</source>
            <extracomment>cli_class.py</extracomment>
            <translation>para el archivo y la clave</translation>
        </message>
        <message>
            <source>a pupil; again for each</source>
            <extracomment>cli_class.py</extracomment>
            <translation>un alumno; repetir para cada uno</translation>
        </message>
        <message>
            <source>write the set as a file, pupils and own exercises included</source>
            <extracomment>cli_class.py</extracomment>
            <translation>escribir el conjunto en un archivo, con alumnos y ejercicios propios</translation>
        </message>
        <message>
            <source>the answer key of a code or a set's file</source>
            <extracomment>cli_class.py</extracomment>
            <translation>la clave de respuestas de un código o del archivo de un conjunto</translation>
        </message>
        <message>
            <source>a code or a file</source>
            <extracomment>cli_class.py</extracomment>
            <translation>un código o un archivo</translation>
        </message>
        <message>
            <source>write it as CSV</source>
            <extracomment>cli_class.py</extracomment>
            <translation>escribirla como CSV</translation>
        </message>
        <message>
            <source>mark every attempt in a folder</source>
            <extracomment>cli_class.py</extracomment>
            <translation>calificar todos los intentos de una carpeta</translation>
        </message>
        <message>
            <source>hold them against a code or a set's file</source>
            <extracomment>cli_class.py</extracomment>
            <translation>cotejarlos con un código o el archivo de un conjunto</translation>
        </message>
        <message>
            <source>write every attempt as CSV</source>
            <extracomment>cli_class.py</extracomment>
            <translation>escribir todos los intentos como CSV</translation>
        </message>
        <message>
            <source>keep the marks there, for the next time</source>
            <extracomment>cli_class.py</extracomment>
            <translation>guardar ahí las notas para la próxima vez</translation>
        </message>
        <message>
            <source>put a finished attempt's file into the class's folder</source>
            <extracomment>cli_class.py</extracomment>
            <translation>poner el archivo de un intento acabado en la carpeta de la clase</translation>
        </message>
        <message>
            <source>a file saved from a practice window</source>
            <extracomment>cli_class.py</extracomment>
            <translation>un archivo guardado desde una ventana de práctica</translation>
        </message>
        <message>
            <source>--seed is {seed}; it must be from 0 to {most}</source>
            <extracomment>cli_class.py</extracomment>
            <translation>--seed es {seed}; debe ser de 0 a {most}</translation>
        </message>
        <message>
            <source>Most often:</source>
            <extracomment>cli_class.py</extracomment>
            <translation>Lo más frecuente:</translation>
        </message>
        <message>
            <source>Nothing from: {names}</source>
            <extracomment>cli_class.py</extracomment>
            <translation>Nada de: {names}</translation>
        </message>
        <message>
            <source>Handed in as {file}.</source>
            <extracomment>cli_class.py</extracomment>
            <translation>Entregado como {file}.</translation>
        </message>
        <message>
            <source>passed over: {why}</source>
            <extracomment>cli_class.py</extracomment>
            <translation>omitido: {why}</translation>
        </message>
        <message>
            <source>weakest: {step}</source>
            <extracomment>cli_class.py</extracomment>
            <translation>más flojo: {step}</translation>
        </message>
        <message>
            <source>magview is in the desktop's menu, and opens files whose names end in {ending}. `magview desktop --remove` takes it away again. Put there, in {folder}:</source>
            <extracomment>cli_desktop.py</extracomment>
            <translation>magview está en el menú del escritorio y abre archivos cuyo nombre acaba en {ending}. `magview desktop --remove` lo quita de nuevo. Puesto ahí, en {folder}:</translation>
        </message>
        <message>
            <source>magview is taken off the desktop. Deleted, in {folder}:</source>
            <extracomment>cli_desktop.py</extracomment>
            <translation>magview se ha quitado del escritorio. Borrado, en {folder}:</translation>
        </message>
        <message>
            <source>There was nothing to take away in {folder}.</source>
            <extracomment>cli_desktop.py</extracomment>
            <translation>No había nada que quitar en {folder}.</translation>
        </message>
        <message>
            <source>Menu entries of this kind are for Linux desktops. Here, pin {program} to the task bar or Dock, and choose it under Open with for files of the program.</source>
            <extracomment>cli_desktop.py</extracomment>
            <translation>Las entradas de menú de este tipo son para escritorios Linux. Aquí, ancle {program} a la barra de tareas o al Dock y elíjalo en Abrir con para los archivos del programa.</translation>
        </message>
        <message>
            <source>the guide, as one HTML file or as PDF; or what is in it</source>
            <extracomment>cli_guide.py</extracomment>
            <translation>la guía, como un archivo HTML o como PDF; o qué contiene</translation>
        </message>
        <message>
            <source>write it as HTML</source>
            <extracomment>cli_guide.py</extracomment>
            <translation>escribirla como HTML</translation>
        </message>
        <message>
            <source>write it as PDF</source>
            <extracomment>cli_guide.py</extracomment>
            <translation>escribirla como PDF</translation>
        </message>
        <message>
            <source>paper size; left out: a4</source>
            <extracomment>cli_guide.py, cli_paper.py</extracomment>
            <translation>tamaño de papel; si falta: a4</translation>
        </message>
        <message>
            <source>words to search for</source>
            <extracomment>cli_guide.py</extracomment>
            <translation>palabras que buscar</translation>
        </message>
        <message>
            <source>no PDF: {reason} For HTML, which needs no Qt, use --html.</source>
            <extracomment>cli_guide.py</extracomment>
            <translation>sin PDF: {reason} Para HTML, que no necesita Qt, use --html.</translation>
        </message>
        <message>
            <source>F1 in the window opens it; --html and --pdf write it to a file.</source>
            <extracomment>cli_guide.py</extracomment>
            <translation>F1 en la ventana la abre; --html y --pdf la escriben en un archivo.</translation>
        </message>
        <message>
            <source>with --set: for whom; may be given again; left out: those of the set's file</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>con --set: para quién; se puede repetir; si falta: los del archivo del conjunto</translation>
        </message>
        <message>
            <source>Wrote {file}: 1 page.</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>Se escribió {file}: 1 página.</translation>
        </message>
        <message>
            <source>a worksheet of an exercise, or its answer key, as PDF</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>una ficha de un ejercicio, o su clave de respuestas, como PDF</translation>
        </message>
        <message>
            <source>a file or a shipped one (gap-wrong), or:</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>un archivo o uno incluido (gap-wrong), o:</translation>
        </message>
        <message>
            <source>a class's set instead, by its code or its file</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>en su lugar el conjunto de una clase, por su código o su archivo</translation>
        </message>
        <message>
            <source>the code that draws the faults; left out: 0</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>el código que sortea los fallos; si falta: 0</translation>
        </message>
        <message>
            <source>the answer key instead of the worksheet</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>la clave de respuestas en lugar de la ficha</translation>
        </message>
        <message>
            <source>print the exercise's hints, too</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>imprimir también las pistas del ejercicio</translation>
        </message>
        <message>
            <source>leave out the pictures whose parts are named</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>omitir los dibujos con piezas por nombrar</translation>
        </message>
        <message>
            <source>whose sheet it is; left out: a line for it</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>de quién es la ficha; si falta: una línea para ello</translation>
        </message>
        <message>
            <source>pictures of a magneto or installation as PDF</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>dibujos de una magneto o instalación como PDF</translation>
        </message>
        <message>
            <source>a file or a shipped magneto or installation</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>un archivo o una magneto o instalación incluida</translation>
        </message>
        <message>
            <source>which; may be given again; left out: all there are</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>cuáles; se puede repetir; si falta: todos los que hay</translation>
        </message>
        <message>
            <source>what stands beside the parts</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>qué figura junto a las piezas</translation>
        </message>
        <message>
            <source>add what there is to say of each part</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>añadir lo que hay que decir de cada pieza</translation>
        </message>
        <message>
            <source>the file to write</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>el archivo que se escribe</translation>
        </message>
        <message>
            <source>give either an EXERCISE or --set with a class's code or file</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>dé un EXERCISE o --set con el código o archivo de una clase</translation>
        </message>
        <message>
            <source>--seed is “{seed}”; it must be a whole number from 0 on, of at most 16 digits</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>--seed es «{seed}»; debe ser un número entero desde 0, de 16 cifras como mucho</translation>
        </message>
        <message>
            <source>no PDF: {reason}</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>sin PDF: {reason}</translation>
        </message>
        <message>
            <source>Wrote {file}: {pages} pages.</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>Se escribió {file}: {pages} páginas.</translation>
        </message>
        <message>
            <source>“{name}” is neither a file nor one of the shipped: {known}</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>«{name}» no es ni un archivo ni uno de los incluidos: {known}</translation>
        </message>
        <message>
            <source>How sure the readings are: each may be out by the half-width of the instrument or habit it was taken with, all values within it equally likely. These were propagated linearly (JCGM 100:2008); the interval stated is the expanded uncertainty with its coverage factor k, and holds the true value 95 times in 100 unless stated otherwise. It does not allow for mistakes, nor for a magneto that differs from the file it was compared with.</source>
            <extracomment>job/document.py</extracomment>
            <translation>Cuán seguras son las lecturas: cada una puede errar en la semianchura del instrumento o hábito con que se tomó, todos los valores dentro de ella igual de probables. Se propagaron linealmente (JCGM 100:2008); el intervalo indicado es la incertidumbre expandida con su factor de cobertura k, y contiene el valor verdadero 95 veces de cada 100 salvo que se indique otra cosa. No tiene en cuenta errores humanos ni una magneto que difiera del archivo con que se comparó.</translation>
        </message>
        <message>
            <source>Breaker end as found</source>
            <extracomment>job/document.py</extracomment>
            <translation>Lado del ruptor, hallado</translation>
        </message>
        <message>
            <source>Breaker end as left</source>
            <extracomment>job/document.py</extracomment>
            <translation>Lado del ruptor, dejado</translation>
        </message>
        <message>
            <source>Coupling as found</source>
            <extracomment>job/document.py, job/shift_plan.py</extracomment>
            <translation>Acoplamiento, hallado</translation>
        </message>
        <message>
            <source>Coupling as left</source>
            <extracomment>job/document.py</extracomment>
            <translation>Acoplamiento, dejado</translation>
        </message>
        <message>
            <source>{sheet} · magview {version} · treat the propeller as live</source>
            <extracomment>job/document.py, job/shift_plan.py</extracomment>
            <translation>{sheet} · magview {version} · trate la hélice como viva</translation>
        </message>
        <message>
            <source>OUT OF LIMITS</source>
            <extracomment>job/document.py, job/readings.py</extracomment>
            <translation>FUERA DE LÍMITES</translation>
        </message>
        <message>
            <source>NOT AS IT MUST BE</source>
            <extracomment>job/document.py, job/readings.py</extracomment>
            <translation>NO COMO DEBE SER</translation>
        </message>
        <message>
            <source>found out of limits</source>
            <extracomment>job/document.py, job/readings.py</extracomment>
            <translation>hallado fuera de límites</translation>
        </message>
        <message>
            <source>As found and as left: breaker end, contacts just opening</source>
            <extracomment>job/document.py</extracomment>
            <translation>Hallado y dejado: lado del ruptor, contactos abriendo justo</translation>
        </message>
        <message>
            <source>As found: breaker end, contacts just opening</source>
            <extracomment>job/document.py</extracomment>
            <translation>Hallado: lado del ruptor, contactos abriendo justo</translation>
        </message>
        <message>
            <source>As left: breaker end, contacts just opening</source>
            <extracomment>job/document.py</extracomment>
            <translation>Dejado: lado del ruptor, contactos abriendo justo</translation>
        </message>
        <message>
            <source>Seen from the drive end, rotation {way}.</source>
            <extracomment>job/document.py, ui/drive_view.py</extracomment>
            <translation>Visto desde el lado de accionamiento, giro {way}.</translation>
        </message>
        <message>
            <source>Trial</source>
            <extracomment>job/document.py, ui/job_table.py</extracomment>
            <translation>Ensayo</translation>
        </message>
        <message>
            <source>Backplate</source>
            <extracomment>job/document.py, job/parts.py</extracomment>
            <translation>Placa base</translation>
        </message>
        <message>
            <source>Gap at least</source>
            <extracomment>job/document.py, job/parts.py</extracomment>
            <translation>Apertura, mín.</translation>
        </message>
        <message>
            <source>Gap at most</source>
            <extracomment>job/document.py, job/parts.py</extracomment>
            <translation>Apertura, máx.</translation>
        </message>
        <message>
            <source>Opening from the E-gap</source>
            <extracomment>job/document.py, job/parts.py</extracomment>
            <translation>Abre respecto al E-gap</translation>
        </message>
        <message>
            <source>Opening from its place</source>
            <extracomment>job/document.py</extracomment>
            <translation>Abre respecto a su lugar</translation>
        </message>
        <message>
            <source>Contacts closed</source>
            <extracomment>job/document.py, ui/contact_view.py</extracomment>
            <translation>Contactos cerrados</translation>
        </message>
        <message>
            <source>backplate {angle}</source>
            <extracomment>job/document.py</extracomment>
            <translation>placa base {angle}</translation>
        </message>
        <message>
            <source>contact screw {angle}</source>
            <extracomment>job/document.py</extracomment>
            <translation>tornillo de contacto {angle}</translation>
        </message>
        <message>
            <source>Seen from the breaker end, rotation clockwise.</source>
            <extracomment>job/document.py</extracomment>
            <translation>Vista desde el lado del ruptor, giro horario.</translation>
        </message>
        <message>
            <source>Seen from the breaker end, rotation anticlockwise.</source>
            <extracomment>job/document.py</extracomment>
            <translation>Vista desde el lado del ruptor, giro antihorario.</translation>
        </message>
        <message>
            <source>magneto flange {teeth}</source>
            <extracomment>job/document.py</extracomment>
            <translation>brida de la magneto {teeth}</translation>
        </message>
        <message>
            <source>disc {teeth}</source>
            <extracomment>job/document.py, ui/plan_box.py</extracomment>
            <translation>disco {teeth}</translation>
        </message>
        <message>
            <source>Aircraft</source>
            <extracomment>job/document.py, job/sheet.py</extracomment>
            <translation>Aeronave</translation>
        </message>
        <message>
            <source>Manual</source>
            <extracomment>job/document.py</extracomment>
            <translation>Manual</translation>
        </message>
        <message>
            <source>Limits</source>
            <extracomment>job/document.py, job/sheet.py</extracomment>
            <translation>Límites</translation>
        </message>
        <message>
            <source>Next check</source>
            <extracomment>job/document.py, job/sheet.py</extracomment>
            <translation>Próximo control</translation>
        </message>
        <message>
            <source>Program</source>
            <extracomment>job/document.py</extracomment>
            <translation>Programa</translation>
        </message>
        <message>
            <source>magview {version}</source>
            <extracomment>job/document.py</extracomment>
            <translation>magview {version}</translation>
        </message>
        <message>
            <source>missing in {stage}</source>
            <extracomment>job/document.py</extracomment>
            <translation>falta en {stage}</translation>
        </message>
        <message>
            <source>Value</source>
            <extracomment>job/document.py</extracomment>
            <translation>Valor</translation>
        </message>
        <message>
            <source>Verdict ({limits})</source>
            <extracomment>job/document.py</extracomment>
            <translation>Veredicto ({limits})</translation>
        </message>
        <message>
            <source>How sure</source>
            <extracomment>job/document.py</extracomment>
            <translation>Seguridad</translation>
        </message>
        <message>
            <source>Best estimate ± expanded uncertainty</source>
            <extracomment>job/document.py</extracomment>
            <translation>Mejor estimación ± incertidumbre expandida</translation>
        </message>
        <message>
            <source>Likely in limits</source>
            <extracomment>job/document.py</extracomment>
            <translation>Prob. en límites</translation>
        </message>
        <message>
            <source>What matters most</source>
            <extracomment>job/document.py</extracomment>
            <translation>Lo que más pesa</translation>
        </message>
        <message>
            <source>opens {angle} against the E-gap</source>
            <extracomment>job/document.py</extracomment>
            <translation>abre {angle} respecto al E-gap</translation>
        </message>
        <message>
            <source>largest gap {gap}</source>
            <extracomment>job/document.py</extracomment>
            <translation>apertura máxima {gap}</translation>
        </message>
        <message>
            <source>drawn is the gap that plate and screw give, {gap}</source>
            <extracomment>job/document.py</extracomment>
            <translation>dibujada está la abertura que dan placa y tornillo, {gap}</translation>
        </message>
        <message>
            <source>fires {angle}</source>
            <extracomment>job/document.py</extracomment>
            <translation>enciende {angle}</translation>
        </message>
        <message>
            <source>Thick lines: the painted marks, each of them number 1.</source>
            <extracomment>job/document.py</extracomment>
            <translation>Líneas gruesas: las marcas pintadas, cada una el número 1.</translation>
        </message>
        <message>
            <source>Earlier sheets of this magneto</source>
            <extracomment>job/document.py</extracomment>
            <translation>Hojas anteriores de esta magneto</translation>
        </message>
        <message>
            <source>Signature</source>
            <extracomment>job/document.py, job/sheet.py, job/shift_plan.py</extracomment>
            <translation>Firma</translation>
        </message>
        <message>
            <source>Magneto job sheet</source>
            <extracomment>job/document.py, job/report.py, ui/print_pdf.py</extracomment>
            <translation>Hoja de trabajo de la magneto</translation>
        </message>
        <message>
            <source>INVENTED FOR DEMONSTRATION: no such aircraft, engine, magneto or person.</source>
            <extracomment>job/document.py</extracomment>
            <translation>INVENTADO PARA DEMOSTRACIÓN: no existen tal aeronave, motor, magneto ni persona.</translation>
        </message>
        <message>
            <source>taken from: {source}</source>
            <extracomment>job/document.py</extracomment>
            <translation>tomado de: {source}</translation>
        </message>
        <message>
            <source>OUT OF LIMITS OR NOT AS IT MUST BE: {what}.</source>
            <extracomment>job/document.py</extracomment>
            <translation>FUERA DE LÍMITES O NO COMO DEBE SER: {what}.</translation>
        </message>
        <message>
            <source>TO BE CLEARED UP: see {stages}.</source>
            <extracomment>job/document.py</extracomment>
            <translation>POR ACLARAR: vea {stages}.</translation>
        </message>
        <message>
            <source>open: {stages}</source>
            <extracomment>job/document.py</extracomment>
            <translation>abierto: {stages}</translation>
        </message>
        <message>
            <source>NOT FINISHED: {words}.</source>
            <extracomment>job/document.py</extracomment>
            <translation>SIN TERMINAR: {words}.</translation>
        </message>
        <message>
            <source>CHANGED SINCE IT WAS SIGNED: the signature does not cover this sheet.</source>
            <extracomment>job/document.py</extracomment>
            <translation>CAMBIADA DESDE LA FIRMA: la firma no ampara esta hoja.</translation>
        </message>
        <message>
            <source>Finished; as left, all readings that have limits are within them.</source>
            <extracomment>job/document.py</extracomment>
            <translation>Terminada; tal como se dejó, todas las lecturas con límites están dentro de ellos.</translation>
        </message>
        <message>
            <source>Skipped: {reason}</source>
            <extracomment>job/document.py, ui/job_bars.py</extracomment>
            <translation>Omitido: {reason}</translation>
        </message>
        <message>
            <source>TO BE CLEARED UP: {what}</source>
            <extracomment>job/document.py</extracomment>
            <translation>POR ACLARAR: {what}</translation>
        </message>
        <message>
            <source>Note: {note}</source>
            <extracomment>job/document.py</extracomment>
            <translation>Nota: {note}</translation>
        </message>
        <message>
            <source>Done by: {by}</source>
            <extracomment>job/document.py</extracomment>
            <translation>Hecho por: {by}</translation>
        </message>
        <message>
            <source>Nothing entered.</source>
            <extracomment>job/document.py</extracomment>
            <translation>Nada anotado.</translation>
        </message>
        <message>
            <source>As found and as left: coupling, seen from the drive end</source>
            <extracomment>job/document.py</extracomment>
            <translation>Hallado y dejado: acoplamiento, visto desde el lado de accionamiento</translation>
        </message>
        <message>
            <source>The signature covers the sheet with the digest {covers}.</source>
            <extracomment>job/document.py</extracomment>
            <translation>La firma ampara la hoja con la huella {covers}.</translation>
        </message>
        <message>
            <source>Cautions.</source>
            <extracomment>job/document.py, job/shift_plan.py</extracomment>
            <translation>Precauciones.</translation>
        </message>
        <message>
            <source>{hours} h total</source>
            <extracomment>job/document.py</extracomment>
            <translation>{hours} h totales</translation>
        </message>
        <message>
            <source>serial {serial}</source>
            <extracomment>job/document.py</extracomment>
            <translation>n.º de serie {serial}</translation>
        </message>
        <message>
            <source>{hours} h since overhaul</source>
            <extracomment>job/document.py</extracomment>
            <translation>{hours} h desde revisión general</translation>
        </message>
        <message>
            <source>{hours} h of the magneto</source>
            <extracomment>job/document.py</extracomment>
            <translation>{hours} h de la magneto</translation>
        </message>
        <message>
            <source>no blade refused</source>
            <extracomment>job/document.py</extracomment>
            <translation>ninguna galga rehusó</translation>
        </message>
        <message>
            <source>No drawings: {error}</source>
            <extracomment>job/document.py</extracomment>
            <translation>Sin dibujos: {error}</translation>
        </message>
        <message>
            <source>Work done and released by</source>
            <extracomment>job/document.py</extracomment>
            <translation>Trabajo hecho y liberado por</translation>
        </message>
        <message>
            <source>Licence no.</source>
            <extracomment>job/document.py, job/parts.py</extracomment>
            <translation>Licencia n.º</translation>
        </message>
        <message>
            <source>Independent check by</source>
            <extracomment>job/document.py, job/parts.py</extracomment>
            <translation>Control independiente de</translation>
        </message>
        <message>
            <source>opening {limits}</source>
            <extracomment>job/document.py</extracomment>
            <translation>abre {limits}</translation>
        </message>
        <message>
            <source>gap {limits}</source>
            <extracomment>job/document.py</extracomment>
            <translation>apertura {limits}</translation>
        </message>
        <message>
            <source>Largest gap [mm]</source>
            <extracomment>job/drift_line.py</extracomment>
            <translation>Apertura máxima [mm]</translation>
        </message>
        <message>
            <source>The gap moved {change} in 100 h (± {spread}); after 100 h more, at {at} h, it should read {value}, between {low} and {high} 95 times in 100.</source>
            <extracomment>job/drift_line.py</extracomment>
            <translation>La apertura cambió {change} en 100 h (± {spread}); tras 100 h más, a las {at} h, debería leerse {value}, entre {low} y {high} 95 veces de cada 100.</translation>
        </message>
        <message>
            <source>The gap may leave its limits from {hours} h on.</source>
            <extracomment>job/drift_line.py</extracomment>
            <translation>La apertura puede salir de sus límites desde las {hours} h.</translation>
        </message>
        <message>
            <source>Opening from the E-gap [rotor °]</source>
            <extracomment>job/drift_line.py</extracomment>
            <translation>Abre respecto al E-gap [° rotor]</translation>
        </message>
        <message>
            <source>The opening moved {change} in 100 h (± {spread}); after 100 h more, at {at} h, it should read {value}, between {low} and {high} 95 times in 100.</source>
            <extracomment>job/drift_line.py</extracomment>
            <translation>El momento de apertura cambió {change} en 100 h (± {spread}); tras 100 h más, a las {at} h, debería leerse {value}, entre {low} y {high} 95 veces de cada 100.</translation>
        </message>
        <message>
            <source>The opening may leave its limits from {hours} h on.</source>
            <extracomment>job/drift_line.py</extracomment>
            <translation>El momento de apertura puede salir de sus límites desde las {hours} h.</translation>
        </message>
        <message>
            <source>Fires before top dead centre [crank °]</source>
            <extracomment>job/drift_line.py</extracomment>
            <translation>Enciende antes del punto muerto superior [° cigüeñal]</translation>
        </message>
        <message>
            <source>The firing moved {change} of crank in 100 h (± {spread}), positive earlier; after 100 h more, at {at} h, it should read {value} before top dead centre, between {low} and {high} 95 times in 100.</source>
            <extracomment>job/drift_line.py</extracomment>
            <translation>El encendido cambió {change} de cigüeñal en 100 h (± {spread}), positivo hacia antes; tras 100 h más, a las {at} h, debería leerse {value} antes del punto muerto superior, entre {low} y {high} 95 veces de cada 100.</translation>
        </message>
        <message>
            <source>The firing may leave its limits from {hours} h on.</source>
            <extracomment>job/drift_line.py</extracomment>
            <translation>El encendido puede salir de sus límites desde las {hours} h.</translation>
        </message>
        <message>
            <source>no reading of the lamp stands on the bench: enter on its Engine page what the lamp says now, after contacts and teeth were last moved</source>
            <extracomment>job/feeds.py</extracomment>
            <translation>en el banco no vale ninguna lectura de la lámpara: anote en su página Motor lo que la lámpara dice ahora, después de mover por última vez contactos y dientes</translation>
        </message>
        <message>
            <source>the bench</source>
            <extracomment>job/feeds.py</extracomment>
            <translation>el banco</translation>
        </message>
        <message>
            <source>file of the {name}</source>
            <extracomment>job/feeds.py</extracomment>
            <translation>archivo de {name}</translation>
        </message>
        <message>
            <source>neither wear nor a pip has been set on the bench yet</source>
            <extracomment>job/feeds.py</extracomment>
            <translation>en el banco aún no se ha puesto ni desgaste ni punta</translation>
        </message>
        <message>
            <source>this gap cannot be had: {reason}</source>
            <extracomment>job/feeds.py</extracomment>
            <translation>esta apertura no se puede obtener: {reason}</translation>
        </message>
        <message>
            <source>this magneto is not on an engine: there is no coupling to mark</source>
            <extracomment>job/feeds.py</extracomment>
            <translation>esta magneto no está en un motor: no hay acoplamiento que marcar</translation>
        </message>
        <message>
            <source>no marks were painted on the bench yet; that is done on its Engine page</source>
            <extracomment>job/feeds.py</extracomment>
            <translation>en el banco aún no se han pintado marcas; se hace en su página Motor</translation>
        </message>
        <message>
            <source>with this setting the contacts never open and close, so there is nothing to plan</source>
            <extracomment>job/feeds.py, job/shift_plan.py</extracomment>
            <translation>con este ajuste los contactos nunca abren y cierran; no hay nada que planear</translation>
        </message>
        <message>
            <source>no tooth has been moved on the bench since the lamp was read</source>
            <extracomment>job/feeds.py</extracomment>
            <translation>en el banco no se ha movido ningún diente desde que se leyó la lámpara</translation>
        </message>
        <message>
            <source>with the plug in and the contacts closed nothing tells of the lead: open the contacts</source>
            <extracomment>job/feeds.py</extracomment>
            <translation>con la clavija puesta y los contactos cerrados nada informa del cable: abra los contactos</translation>
        </message>
        <message>
            <source>Next check as entered: at {hours} h or {day}.</source>
            <extracomment>job/history.py</extracomment>
            <translation>Próximo control anotado: a las {hours} h o el {day}.</translation>
        </message>
        <message>
            <source>Next check as entered: {day}.</source>
            <extracomment>job/history.py</extracomment>
            <translation>Próximo control anotado: {day}.</translation>
        </message>
        <message>
            <source>Next check as entered: at {hours} h.</source>
            <extracomment>job/history.py</extracomment>
            <translation>Próximo control anotado: a las {hours} h.</translation>
        </message>
        <message>
            <source>this magneto</source>
            <extracomment>job/history.py</extracomment>
            <translation>esta magneto</translation>
        </message>
        <message>
            <source>Next check of {name}: due at {at} h of the magneto, in {hours} h.</source>
            <extracomment>job/history.py</extracomment>
            <translation>Próximo control de {name}: a las {at} h de la magneto, dentro de {hours} h.</translation>
        </message>
        <message>
            <source>magneto hours [h]</source>
            <extracomment>job/history.py, ui/job_drift_sheet.py</extracomment>
            <translation>horas de la magneto [h]</translation>
        </message>
        <message>
            <source>{title} over the magneto's hours. Open: as found; filled: as left; dashed: limits.</source>
            <extracomment>job/history.py</extracomment>
            <translation>{title} según las horas de la magneto. Hueco: hallado; relleno: dejado; a trazos: límites.</translation>
        </message>
        <message>
            <source>{title} over the magneto's hours. Open: as found; filled: as left; dashed: limits; grey: where the next reading should lie, 95 times in 100.</source>
            <extracomment>job/history.py</extracomment>
            <translation>{title} según las horas de la magneto. Hueco: hallado; relleno: dejado; a trazos: límites; gris: donde debería caer la próxima lectura, 95 veces de cada 100.</translation>
        </message>
        <message>
            <source>Hours</source>
            <extracomment>job/history.py, job/parts.py, ui/wear_panel.py</extracomment>
            <translation>Horas</translation>
        </message>
        <message>
            <source>Gap found</source>
            <extracomment>job/history.py</extracomment>
            <translation>Apertura hallada</translation>
        </message>
        <message>
            <source>Gap left</source>
            <extracomment>job/history.py</extracomment>
            <translation>Apertura dejada</translation>
        </message>
        <message>
            <source>Opens found</source>
            <extracomment>job/history.py</extracomment>
            <translation>Abre, hallado</translation>
        </message>
        <message>
            <source>Opens left</source>
            <extracomment>job/history.py</extracomment>
            <translation>Abre, dejado</translation>
        </message>
        <message>
            <source>Fires found</source>
            <extracomment>job/history.py</extracomment>
            <translation>Enciende, hallado</translation>
        </message>
        <message>
            <source>Fires left</source>
            <extracomment>job/history.py</extracomment>
            <translation>Enciende, dejado</translation>
        </message>
        <message>
            <source>the magneto has no serial number on this sheet, so that no earlier one can be told to be its own</source>
            <extracomment>job/history.py</extracomment>
            <translation>la magneto no lleva número de serie en esta hoja, así que no se sabe si alguna anterior es suya</translation>
        </message>
        <message>
            <source>{name}: holds {count} files; only the first {most} were looked at</source>
            <extracomment>job/history.py</extracomment>
            <translation>{name}: contiene {count} archivos; solo se miraron los primeros {most}</translation>
        </message>
        <message>
            <source>Look again at {when} h of the magneto, or sooner as the manual says.</source>
            <extracomment>job/history.py</extracomment>
            <translation>Vuelva a mirar a las {when} h de la magneto, o antes si lo dice el manual.</translation>
        </message>
        <message>
            <source>Next check of {name}: due at {at} h of the magneto, {hours} h ago.</source>
            <extracomment>job/history.py</extracomment>
            <translation>Próximo control de {name}: vencía a las {at} h de la magneto, hace {hours} h.</translation>
        </message>
        <message>
            <source>Next check of {name}: due on {day}, in {days} days.</source>
            <extracomment>job/history.py</extracomment>
            <translation>Próximo control de {name}: vence el {day}, dentro de {days} días.</translation>
        </message>
        <message>
            <source>{name}: cannot be read: {reason}</source>
            <extracomment>job/history.py</extracomment>
            <translation>{name}: no se puede leer: {reason}</translation>
        </message>
        <message>
            <source>Next check of {name}: due on {day}, {days} days ago.</source>
            <extracomment>job/history.py</extracomment>
            <translation>Próximo control de {name}: vencía el {day}, hace {days} días.</translation>
        </message>
        <message>
            <source>{stage} is not done yet; missing: {lacks}</source>
            <extracomment>job/judge.py</extracomment>
            <translation>{stage} aún no está hecha; falta: {lacks}</translation>
        </message>
        <message>
            <source>{stage} comes after {others}: do that first, or skip it with a reason</source>
            <extracomment>job/judge.py</extracomment>
            <translation>{stage} va después de {others}: haga eso antes, u omítalo con un motivo</translation>
        </message>
        <message>
            <source>the lobes</source>
            <extracomment>job/judge.py</extracomment>
            <translation>los lóbulos</translation>
        </message>
        <message>
            <source>meter or lamp, switch off</source>
            <extracomment>job/judge.py</extracomment>
            <translation>medidor o lámpara, interruptor en OFF</translation>
        </message>
        <message>
            <source>meter or lamp, switch on</source>
            <extracomment>job/judge.py</extracomment>
            <translation>medidor o lámpara, interruptor en ON</translation>
        </message>
        <message>
            <source>“{name}” is neither a file nor one of the shipped jobs: {known}</source>
            <extracomment>job/library.py</extracomment>
            <translation>«{name}» no es ni un archivo ni uno de los trabajos incluidos: {known}</translation>
        </message>
        <message>
            <source>Registration</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Matrícula</translation>
        </message>
        <message>
            <source>Type</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Tipo</translation>
        </message>
        <message>
            <source>Serial no.</source>
            <extracomment>job/parts.py</extracomment>
            <translation>N.º de serie</translation>
        </message>
        <message>
            <source>Hours since overhaul</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Horas desde revisión general</translation>
        </message>
        <message>
            <source>Position</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Posición</translation>
        </message>
        <message>
            <source>Straightedge from the rim mark, either way</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Regla desde la marca del borde, ambos sentidos</translation>
        </message>
        <message>
            <source>Left should fire</source>
            <extracomment>job/parts.py</extracomment>
            <translation>La izquierda debe encender</translation>
        </message>
        <message>
            <source>Right should fire</source>
            <extracomment>job/parts.py</extracomment>
            <translation>La derecha debe encender</translation>
        </message>
        <message>
            <source>Timing to the engine, either way</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Calado al motor, ambos sentidos</translation>
        </message>
        <message>
            <source>Left against right, either way</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Izquierda frente a derecha, ambos sentidos</translation>
        </message>
        <message>
            <source>Largest drop on one magneto</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Caída máxima con una magneto</translation>
        </message>
        <message>
            <source>Largest difference of the drops</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Diferencia máxima de las caídas</translation>
        </message>
        <message>
            <source>Taken from</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Tomado de</translation>
        </message>
        <message>
            <source>At magneto hours</source>
            <extracomment>job/parts.py</extracomment>
            <translation>A horas de la magneto</translation>
        </message>
        <message>
            <source>Or on</source>
            <extracomment>job/parts.py</extracomment>
            <translation>O el</translation>
        </message>
        <message>
            <source>Left fires</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Izquierda enciende</translation>
        </message>
        <message>
            <source>Right fires</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Derecha enciende</translation>
        </message>
        <message>
            <source>Left error less right error</source>
            <extracomment>job/parts.py, job/readings.py</extracomment>
            <translation>Error izquierdo menos error derecho</translation>
        </message>
        <message>
            <source>Propeller treated as live; its arc kept clear</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Hélice tratada como viva; su arco despejado</translation>
        </message>
        <message>
            <source>Ignition switch off, key out</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Interruptor de encendido en OFF, llave fuera</translation>
        </message>
        <message>
            <source>Switch lead grounded, to be proved at the next stage</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Cable de masa a masa, por comprobar en la etapa siguiente</translation>
        </message>
        <message>
            <source>Plugs out: at least one from every cylinder</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Bujías fuera: al menos una de cada cilindro</translation>
        </message>
        <message>
            <source>Wheels chocked</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Ruedas calzadas</translation>
        </message>
        <message>
            <source>The maker's current manual and local rules at hand</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Manual vigente del fabricante y normas locales a mano</translation>
        </message>
        <message>
            <source>Manual and revision</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Manual y revisión</translation>
        </message>
        <message>
            <source>Meter on the lead, switch off: grounded</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Medidor en el cable, interruptor en OFF: a masa</translation>
        </message>
        <message>
            <source>Meter on the lead, switch on: grounded</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Medidor en el cable, interruptor en ON: a masa</translation>
        </message>
        <message>
            <source>Lamp, plug in, switch off: grounded</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Lámpara, clavija puesta, interruptor en OFF: a masa</translation>
        </message>
        <message>
            <source>Lamp, plug in, switch on: grounded</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Lámpara, clavija puesta, interruptor en ON: a masa</translation>
        </message>
        <message>
            <source>Lamp, plug out: grounded by the tab</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Lámpara, clavija fuera: a masa por la lengüeta</translation>
        </message>
        <message>
            <source>Disc at the stop, one way</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Disco en el tope, un sentido</translation>
        </message>
        <message>
            <source>Disc at the stop, the other way</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Disco en el tope, el otro sentido</translation>
        </message>
        <message>
            <source>Stroke of No. 1 before it fires</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Tiempo del n.º 1 antes de encender</translation>
        </message>
        <message>
            <source>Disc</source>
            <extracomment>job/parts.py, ui/plan_box.py, ui/practice_sight.py, ui/practice_work.py</extracomment>
            <translation>Disco</translation>
        </message>
        <message>
            <source>Opening from the E-gap, rotor</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Abre respecto al E-gap, rotor</translation>
        </message>
        <message>
            <source>Wear of the heel</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Desgaste del talón</translation>
        </message>
        <message>
            <source>Read with</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Leído con</translation>
        </message>
        <message>
            <source>Clean and dry</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Limpios y secos</translation>
        </message>
        <message>
            <source>Faces meet squarely</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Las caras asientan a escuadra</translation>
        </message>
        <message>
            <source>Cam felt oiled as the manual says</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Fieltro de la leva aceitado según el manual</translation>
        </message>
        <message>
            <source>Faces dressed</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Caras repasadas</translation>
        </message>
        <message>
            <source>Contacts replaced</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Contactos cambiados</translation>
        </message>
        <message>
            <source>Spring, at the contacts</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Muelle, en los contactos</translation>
        </message>
        <message>
            <source>Backplate planned</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Placa base prevista</translation>
        </message>
        <message>
            <source>Contact screw planned</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Tornillo de contacto previsto</translation>
        </message>
        <message>
            <source>Gap planned</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Apertura prevista</translation>
        </message>
        <message>
            <source>Read again after tightening</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Releído tras apretar</translation>
        </message>
        <message>
            <source>Opening from its place, rotor</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Abre respecto a su lugar, rotor</translation>
        </message>
        <message>
            <source>Contacts closed, rotor</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Contactos cerrados, rotor</translation>
        </message>
        <message>
            <source>Drive flange marked</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Brida motriz marcada</translation>
        </message>
        <message>
            <source>Disc marked</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Disco marcado</translation>
        </message>
        <message>
            <source>Magneto flange marked</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Brida de la magneto marcada</translation>
        </message>
        <message>
            <source>Magneto marked on the engine's pad</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Magneto marcada en el asiento del motor</translation>
        </message>
        <message>
            <source>Magneto flange's mark from the disc's, with rotation</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Marca de la brida de la magneto desde la del disco, en sentido de giro</translation>
        </message>
        <message>
            <source>Disc's mark from the drive flange's, with rotation</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Marca del disco desde la de la brida motriz, en sentido de giro</translation>
        </message>
        <message>
            <source>Fires, as read</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Enciende, leído</translation>
        </message>
        <message>
            <source>Wanted</source>
            <extracomment>job/parts.py, job/shift_plan.py, practice/report.py, ui/lamp_box.py</extracomment>
            <translation>Deseado</translation>
        </message>
        <message>
            <source>Planned: magneto flange on the disc</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Previsto: brida de la magneto sobre el disco</translation>
        </message>
        <message>
            <source>Planned: disc on the drive flange</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Previsto: disco sobre la brida motriz</translation>
        </message>
        <message>
            <source>Planned: fires</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Previsto: enciende</translation>
        </message>
        <message>
            <source>Moved: magneto flange on the disc</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Movido: brida de la magneto sobre el disco</translation>
        </message>
        <message>
            <source>Moved: disc on the drive flange</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Movido: disco sobre la brida motriz</translation>
        </message>
        <message>
            <source>Fires, afterwards</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Enciende, después</translation>
        </message>
        <message>
            <source>Lock screw and clamp screws tight</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Tornillos de bloqueo y sujeción apretados</translation>
        </message>
        <message>
            <source>Coupling pins and split pins fitted</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Pasadores del acoplamiento y de aleta puestos</translation>
        </message>
        <message>
            <source>Nuts torqued as the manual says</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Tuercas al par del manual</translation>
        </message>
        <message>
            <source>Safety wire fitted</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Alambre de freno puesto</translation>
        </message>
        <message>
            <source>Spark plugs refitted and torqued as the manual says</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Bujías montadas de nuevo y al par del manual</translation>
        </message>
        <message>
            <source>Plug leads connected, each to its cylinder</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Cables de bujía conectados, cada uno a su cilindro</translation>
        </message>
        <message>
            <source>Switch lead connected and proved again</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Cable de masa conectado y comprobado de nuevo</translation>
        </message>
        <message>
            <source>Tools, timing pins and stop counted back</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Herramientas, pasadores de calado y tope recontados</translation>
        </message>
        <message>
            <source>Engine speed</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Régimen del motor</translation>
        </message>
        <message>
            <source>Drop, running on left</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Caída, con la izquierda</translation>
        </message>
        <message>
            <source>Drop, running on right</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Caída, con la derecha</translation>
        </message>
        <message>
            <source>Stops firing with the switch off, at idle</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Deja de encender con el interruptor en OFF, al ralentí</translation>
        </message>
        <message>
            <source>Trials</source>
            <extracomment>job/parts.py, ui/plot_pane.py, ui/plot_trials.py</extracomment>
            <translation>Ensayos</translation>
        </message>
        <message>
            <source>Uncertainty</source>
            <extracomment>job/parts.py, ui/job_form.py, ui/plot_pane.py, ui/uncertainty_panel.py</extracomment>
            <translation>Incertidumbre</translation>
        </message>
        <message>
            <source>Lobes</source>
            <extracomment>job/parts.py, practice/paper.py, ui/plot_lift.py, ui/plot_pane.py</extracomment>
            <translation>Lóbulos</translation>
        </message>
        <message>
            <source>gap_low_mm is {low}; it must not be above gap_high_mm, {high}</source>
            <extracomment>job/parts.py</extracomment>
            <translation>gap_low_mm es {low}; no debe ser mayor que gap_high_mm, {high}</translation>
        </message>
        <message>
            <source>reason is missing; a stage can be skipped only with a reason</source>
            <extracomment>job/parts.py</extracomment>
            <translation>falta reason; una etapa solo se puede omitir con un motivo</translation>
        </message>
        <message>
            <source>reason is given, but the stage is not skipped; write it as a note</source>
            <extracomment>job/parts.py</extracomment>
            <translation>se da reason, pero la etapa no se omite; escríbalo como nota</translation>
        </message>
        <message>
            <source>gap_low_mm is {gap_low}; it must not be above gap_high_mm</source>
            <extracomment>job/parts.py</extracomment>
            <translation>gap_low_mm es {gap_low}; no debe ser mayor que gap_high_mm</translation>
        </message>
        <message>
            <source>“{text}” is not a date; write it as 2026-11-25</source>
            <extracomment>job/parts.py</extracomment>
            <translation>«{text}» no es una fecha; escríbala como 2026-11-25</translation>
        </message>
        <message>
            <source>{label}: expanded uncertainty</source>
            <extracomment>job/readings.py</extracomment>
            <translation>{label}: incertidumbre expandida</translation>
        </message>
        <message>
            <source>{label}: probability in limits</source>
            <extracomment>job/readings.py</extracomment>
            <translation>{label}: probabilidad en límites</translation>
        </message>
        <message>
            <source>Not judged, for no limit was given: {what}.</source>
            <extracomment>job/readings.py</extracomment>
            <translation>Sin juzgar, porque no se dio límite: {what}.</translation>
        </message>
        <message>
            <source>no limit given, not judged</source>
            <extracomment>job/readings.py</extracomment>
            <translation>sin límite dado, sin juzgar</translation>
        </message>
        <message>
            <source>in limits</source>
            <extracomment>job/readings.py, ui/plot_window.py</extracomment>
            <translation>en límites</translation>
        </message>
        <message>
            <source>{label}: best estimate</source>
            <extracomment>job/readings.py</extracomment>
            <translation>{label}: mejor estimación</translation>
        </message>
        <message>
            <source>{label}: coverage factor</source>
            <extracomment>job/readings.py</extracomment>
            <translation>{label}: factor de cobertura</translation>
        </message>
        <message>
            <source>as it must be</source>
            <extracomment>job/readings.py</extracomment>
            <translation>como debe ser</translation>
        </message>
        <message>
            <source>Disc at true top dead centre</source>
            <extracomment>job/readings.py</extracomment>
            <translation>Disco en el punto muerto superior real</translation>
        </message>
        <message>
            <source>Difference of the drops</source>
            <extracomment>job/readings.py</extracomment>
            <translation>Diferencia de las caídas</translation>
        </message>
        <message>
            <source>Trial {number}: {reading}</source>
            <extracomment>job/readings.py</extracomment>
            <translation>Ensayo {number}: {reading}</translation>
        </message>
        <message>
            <source>Lobe {number}: {reading}</source>
            <extracomment>job/readings.py</extracomment>
            <translation>Lóbulo {number}: {reading}</translation>
        </message>
        <message>
            <source>Treat the propeller as live at all times: keep out of its arc, and let nobody else near it.</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>Trate siempre la hélice como viva: fuera de su arco, y que nadie más se acerque.</translation>
        </message>
        <message>
            <source>Ignition switch off; switch lead grounded and proved with a meter or lamp, not taken for granted.</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>Interruptor de encendido en OFF; cable de masa a masa y comprobado con medidor o lámpara, no dado por supuesto.</translation>
        </message>
        <message>
            <source>Plugs out: at least one from every cylinder.</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>Bujías fuera: al menos una de cada cilindro.</translation>
        </message>
        <message>
            <source>Wheels chocked; the aircraft cannot move.</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>Ruedas calzadas; la aeronave no puede moverse.</translation>
        </message>
        <message>
            <source>The manufacturer's current manual and local rules govern, not this sheet.</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>Rigen el manual vigente del fabricante y las normas locales, no esta hoja.</translation>
        </message>
        <message>
            <source>Work on a certified aircraft is done or released by a licensed person.</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>El trabajo en una aeronave certificada lo hace o lo libera una persona con licencia.</translation>
        </message>
        <message>
            <source>magview is a training and planning aid; the magnetos it ships are invented.</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>magview es una ayuda de formación y planificación; las magnetos que incluye son inventadas.</translation>
        </message>
        <message>
            <source>this sheet</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>esta hoja</translation>
        </message>
        <message>
            <source>Invented for demonstration</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>Inventado para demostración</translation>
        </message>
        <message>
            <source>Cautions and making safe</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>Precauciones y puesta en seguridad</translation>
        </message>
        <message>
            <source>Switch-lead proof</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>Comprobación del cable de masa</translation>
        </message>
        <message>
            <source>Top dead centre and stroke</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>Punto muerto superior y tiempo</translation>
        </message>
        <message>
            <source>Condition of the contacts</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>Estado de los contactos</translation>
        </message>
        <message>
            <source>Internal timing, as left</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>Calado interno, dejado</translation>
        </message>
        <message>
            <source>Every lobe</source>
            <extracomment>job/sheet.py, ui/job_sources.py</extracomment>
            <translation>Cada lóbulo</translation>
        </message>
        <message>
            <source>Marks before removal</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>Marcas antes de desmontar</translation>
        </message>
        <message>
            <source>Tooth shift</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>Cambio de dientes</translation>
        </message>
        <message>
            <source>Synchronising</source>
            <extracomment>job/sheet.py, ui/job_sources.py, ui/timing_panel.py</extracomment>
            <translation>Sincronización</translation>
        </message>
        <message>
            <source>Closing checks</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>Controles de cierre</translation>
        </message>
        <message>
            <source>Ground run</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>Prueba en tierra</translation>
        </message>
        <message>
            <source>“{name}” is no stage of a job; stages are {known}</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>«{name}» no es una etapa de un trabajo; las etapas son {known}</translation>
        </message>
        <message>
            <source>“{part}” is no part of a job</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>«{part}» no es una parte de un trabajo</translation>
        </message>
        <message>
            <source>a signature takes a name and a date</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>una firma lleva un nombre y una fecha</translation>
        </message>
        <message>
            <source>done is {done}; it must be at most the number of steps, {count}</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>done es {done}; debe ser como mucho el número de pasos, {count}</translation>
        </message>
        <message>
            <source>magneto_file and installation are both given; the installation has a magneto of its own</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>se dan magneto_file e installation; la instalación tiene su propia magneto</translation>
        </message>
        <message>
            <source>The slots are those of the disc's marked tooth.</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>Las ranuras son las del diente marcado del disco.</translation>
        </message>
        <message>
            <source>{face}: {each}</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>{face}: {each}</translation>
        </message>
        <message>
            <source>as found, marks painted</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>hallado, marcas pintadas</translation>
        </message>
        <message>
            <source>Tooth-shift plan: {magneto}</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>Plan del cambio de dientes: {magneto}</translation>
        </message>
        <message>
            <source>⚠ The internal timing is out of limits: put that right first, no tooth makes up for it.</source>
            <extracomment>job/shift_plan.py, ui/lamp_box.py</extracomment>
            <translation>⚠ El calado interno está fuera de límites: corríjalo primero, ningún diente lo compensa.</translation>
        </message>
        <message>
            <source>The contacts were set anew since the lamp was read: with the teeth as found it would now read {found}.</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>Los contactos se reajustaron después de leer la lámpara: con los dientes como se hallaron, ahora indicaría {found}.</translation>
        </message>
        <message>
            <source>magneto slot {magneto}, drive slot {drive}</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>ranura de la magneto {magneto}, del accionamiento {drive}</translation>
        </message>
        <message>
            <source>One tooth with rotation, so much earlier</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>Un diente en sentido de giro, tanto antes</translation>
        </message>
        <message>
            <source>at the rotor</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>en el rotor</translation>
        </message>
        <message>
            <source>at the crank</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>en el cigüeñal</translation>
        </message>
        <message>
            <source>Magneto flange on the disc</source>
            <extracomment>job/shift_plan.py, ui/teeth_box.py</extracomment>
            <translation>Brida de la magneto en el disco</translation>
        </message>
        <message>
            <source>Disc on the drive flange</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>Disco en la brida motriz</translation>
        </message>
        <message>
            <source>{slot} of {teeth}</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>{slot} de {teeth}</translation>
        </message>
        <message>
            <source>this magneto is not on an engine: there is no coupling to move</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>esta magneto no está en un motor: no hay acoplamiento que mover</translation>
        </message>
        <message>
            <source>Tooth-shift plan</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>Plan del cambio de dientes</translation>
        </message>
        <message>
            <source>{way} seen from the drive end</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>{way} desde el lado de accionamiento</translation>
        </message>
        <message>
            <source>Teeth</source>
            <extracomment>job/shift_plan.py, lessons/a-full-job.json</extracomment>
            <translation>Dientes</translation>
        </message>
        <message>
            <source>{magneto} at the magneto, {drive} at the drive</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>{magneto} en la magneto, {drive} en el accionamiento</translation>
        </message>
        <message>
            <source>Lamp reads</source>
            <extracomment>job/shift_plan.py, ui/lamp_box.py</extracomment>
            <translation>Lámpara indica</translation>
        </message>
        <message>
            <source>Expected</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>Esperado</translation>
        </message>
        <message>
            <source>Off by</source>
            <extracomment>job/shift_plan.py, practice/report.py, ui/plan_box.py</extracomment>
            <translation>Error</translation>
        </message>
        <message>
            <source>Coupling as wanted</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>Acoplamiento, deseado</translation>
        </message>
        <message>
            <source>Magneto flange one with rotation, disc one against</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>Brida de la magneto uno en sentido de giro, disco uno en contra</translation>
        </message>
        <message>
            <source>One tooth at a time, seen from the drive end: check the slot, then tick</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>Diente a diente, visto desde el lado de accionamiento: compruebe la ranura, luego marque</translation>
        </message>
        <message>
            <source>Magneto slot</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>Ranura magneto</translation>
        </message>
        <message>
            <source>Drive slot</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>Ranura motriz</translation>
        </message>
        <message>
            <source>{box} Tightened and secured. {box} Lamp read again, the propeller turned with rotation so that the play is taken up. What it reads then counts, not what is expected here.</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>{box} Apretado y asegurado. {box} Lámpara leída de nuevo, la hélice girada en su sentido para tomar el juego. Vale lo que indique entonces, no lo que aquí se espera.</translation>
        </message>
        <message>
            <source>✗ This move does not reach it: {outside}.</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>✗ Este movimiento no lo alcanza: {outside}.</translation>
        </message>
        <message>
            <source>⚠ The installation does not fit together: {mismatch}.</source>
            <extracomment>job/shift_plan.py, ui/lamp_box.py</extracomment>
            <translation>⚠ La instalación no casa: {mismatch}.</translation>
        </message>
        <message>
            <source>Lamp reads afterwards, ° before top dead centre</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>Lámpara indica después, ° antes del punto muerto superior</translation>
        </message>
        <message>
            <source>DANGER: THE MAGNETO IS LIVE WITH THE SWITCH OFF. Stop. Keep clear of the propeller. Repair the switch lead, or take the magneto out of use, and prove the lead again before anything is turned.</source>
            <extracomment>job/standing.py</extracomment>
            <translation>PELIGRO: LA MAGNETO ESTÁ VIVA CON EL INTERRUPTOR APAGADO. Pare. Manténgase lejos de la hélice. Repare el cable de masa, o ponga la magneto fuera de servicio, y compruebe el cable de nuevo antes de girar nada.</translation>
        </message>
        <message>
            <source>DANGER: THE MAGNETO IS LIVE WITH ITS PLUG OUT: the tab does not ground it. Stop. Keep clear of the propeller; ground the magneto before anything is turned.</source>
            <extracomment>job/standing.py</extracomment>
            <translation>PELIGRO: LA MAGNETO ESTÁ VIVA CON SU CLAVIJA FUERA: la lengüeta no la pone a masa. Pare. Manténgase lejos de la hélice; ponga la magneto a masa antes de girar nada.</translation>
        </message>
        <message>
            <source>1 reading out of limits or not as it must be</source>
            <extracomment>job/standing.py</extracomment>
            <translation>1 lectura fuera de límites o no como debe ser</translation>
        </message>
        <message>
            <source>{count} readings out of limits or not as they must be</source>
            <extracomment>job/standing.py</extracomment>
            <translation>{count} lecturas fuera de límites o no como deben ser</translation>
        </message>
        <message>
            <source>1 reading found out of limits</source>
            <extracomment>job/standing.py</extracomment>
            <translation>1 lectura hallada fuera de límites</translation>
        </message>
        <message>
            <source>{count} readings found out of limits</source>
            <extracomment>job/standing.py</extracomment>
            <translation>{count} lecturas halladas fuera de límites</translation>
        </message>
        <message>
            <source>1 point to be cleared up</source>
            <extracomment>job/standing.py</extracomment>
            <translation>1 punto por aclarar</translation>
        </message>
        <message>
            <source>{count} points to be cleared up</source>
            <extracomment>job/standing.py</extracomment>
            <translation>{count} puntos por aclarar</translation>
        </message>
        <message>
            <source>skipped</source>
            <extracomment>job/standing.py</extracomment>
            <translation>omitido</translation>
        </message>
        <message>
            <source>open</source>
            <extracomment>job/standing.py, ui/plot_lift.py</extracomment>
            <translation>abierto</translation>
        </message>
        <message>
            <source>done, with {what}</source>
            <extracomment>job/standing.py</extracomment>
            <translation>hecho, con {what}</translation>
        </message>
        <message>
            <source>done</source>
            <extracomment>job/standing.py</extracomment>
            <translation>hecho</translation>
        </message>
        <message>
            <source>The timing wanted, {wanted}, is outside this sheet's limits, {limits}; readings are judged by the limits.</source>
            <extracomment>job/standing.py</extracomment>
            <translation>La puesta a punto deseada, {wanted}, está fuera de los límites de esta hoja, {limits}; las lecturas se juzgan por los límites.</translation>
        </message>
        <message>
            <source>Teeth and readings contradict each other: magneto flange {magneto} and disc {disc} would bring it from {before} to {expected}, and it is said to fire {after}; count the teeth, and read the lamp again.</source>
            <extracomment>job/standing.py</extracomment>
            <translation>Dientes y lecturas se contradicen: brida de la magneto {magneto} y disco {disc} lo llevarían de {before} a {expected}, y se dice que salta a {after}; cuente los dientes y lea de nuevo la lámpara.</translation>
        </message>
        <message>
            <source>1 missing</source>
            <extracomment>job/standing.py</extracomment>
            <translation>falta 1</translation>
        </message>
        <message>
            <source>{count} missing</source>
            <extracomment>job/standing.py</extracomment>
            <translation>faltan {count}</translation>
        </message>
        <message>
            <source>{error}. What you entered is kept here and tried again with your next step; a copy is in {folder}</source>
            <extracomment>job/store.py</extracomment>
            <translation>{error}. Lo que anotó se guarda aquí y se intenta de nuevo con su próximo paso; hay una copia en {folder}</translation>
        </message>
        <message>
            <source>{error}. What you entered is kept here and tried again with your next step</source>
            <extracomment>job/store.py</extracomment>
            <translation>{error}. Lo que anotó se guarda aquí y se intenta de nuevo con su próximo paso</translation>
        </message>
        <message>
            <source>{error}. What you entered is kept here; a copy is in {folder}</source>
            <extracomment>job/store.py</extracomment>
            <translation>{error}. Lo que anotó se guarda aquí; hay una copia en {folder}</translation>
        </message>
        <message>
            <source>{error}. What you entered is kept here</source>
            <extracomment>job/store.py</extracomment>
            <translation>{error}. Lo que anotó se guarda aquí</translation>
        </message>
        <message>
            <source>{name} may only be read; save it under another name to change it</source>
            <extracomment>job/store.py</extracomment>
            <translation>{name} solo se puede leer; guárdelo con otro nombre para cambiarlo</translation>
        </message>
        <message>
            <source>{name}: is there already; open it, or choose another name</source>
            <extracomment>job/store.py</extracomment>
            <translation>{name}: ya existe; ábralo o elija otro nombre</translation>
        </message>
        <message>
            <source>{name}: is there already; choose another name</source>
            <extracomment>job/store.py</extracomment>
            <translation>{name}: ya existe; elija otro nombre</translation>
        </message>
        <message>
            <source>{name} is open in another window or program: it can be read here, and changed there; save it under another name to change it here</source>
            <extracomment>job/store.py</extracomment>
            <translation>{name} está abierto en otra ventana o programa: aquí se puede leer y allí cambiar; guárdelo con otro nombre para cambiarlo aquí</translation>
        </message>
        <message>
            <source>{name} can only be read: its folder takes no files ({reason}); save it elsewhere to change it</source>
            <extracomment>job/store.py</extracomment>
            <translation>{name} solo se puede leer: su carpeta no admite archivos ({reason}); guárdelo en otro sitio para cambiarlo</translation>
        </message>
        <message>
            <source>{name}: cannot be written: its folder or drive is gone; put it back, or save elsewhere</source>
            <extracomment>job/store.py</extracomment>
            <translation>{name}: no se puede escribir: su carpeta o unidad no está; repóngala o guarde en otro sitio</translation>
        </message>
        <message>
            <source>{name}: was changed by another program and is left as it is; reload it, or save under another name</source>
            <extracomment>job/store.py</extracomment>
            <translation>{name}: lo cambió otro programa y se deja como está; recárguelo o guarde con otro nombre</translation>
        </message>
        <message>
            <source>this sheet is larger than {most} MB, the most that is read again; shorten it</source>
            <extracomment>job/store.py</extracomment>
            <translation>esta hoja pasa de {most} MB, lo máximo que se vuelve a leer; acórtela</translation>
        </message>
        <message>
            <source>{name}: is no name of a file</source>
            <extracomment>job/store.py</extracomment>
            <translation>{name}: no es un nombre de archivo</translation>
        </message>
        <message>
            <source>this step of the history is damaged; it cannot be undone or done again</source>
            <extracomment>job/store.py</extracomment>
            <translation>este paso del historial está dañado; no se puede deshacer ni rehacer</translation>
        </message>
        <message>
            <source>{name}: cannot be written; choose another name</source>
            <extracomment>job/store.py</extracomment>
            <translation>{name}: no se puede escribir; elija otro nombre</translation>
        </message>
        <message>
            <source>intake</source>
            <extracomment>job/words.py, ui/job_kinds.py</extracomment>
            <translation>admisión</translation>
        </message>
        <message>
            <source>compression</source>
            <extracomment>job/words.py, ui/job_kinds.py</extracomment>
            <translation>compresión</translation>
        </message>
        <message>
            <source>power</source>
            <extracomment>job/words.py, ui/job_kinds.py</extracomment>
            <translation>expansión</translation>
        </message>
        <message>
            <source>exhaust</source>
            <extracomment>job/words.py, ui/job_kinds.py</extracomment>
            <translation>escape</translation>
        </message>
        <message>
            <source>within ±{limit}</source>
            <extracomment>job/words.py</extracomment>
            <translation>dentro de ±{limit}</translation>
        </message>
        <message>
            <source>{angle} late</source>
            <extracomment>job/words.py, ui/plot_window.py, ui/setting_panel.py</extracomment>
            <translation>{angle} tarde</translation>
        </message>
        <message>
            <source>{angle} early</source>
            <extracomment>job/words.py, ui/plot_window.py, ui/setting_panel.py</extracomment>
            <translation>{angle} pronto</translation>
        </message>
        <message>
            <source>at most {limit}</source>
            <extracomment>job/words.py</extracomment>
            <translation>como mucho {limit}</translation>
        </message>
        <message>
            <source>at least {limit}</source>
            <extracomment>job/words.py</extracomment>
            <translation>al menos {limit}</translation>
        </message>
        <message>
            <source>{angle} before top dead centre</source>
            <extracomment>job/words.py</extracomment>
            <translation>{angle} antes del punto muerto superior</translation>
        </message>
        <message>
            <source>{angle} after top dead centre</source>
            <extracomment>job/words.py</extracomment>
            <translation>{angle} después del punto muerto superior</translation>
        </message>
        <message>
            <source>{name} has shape {shape}; an axis of a map is one-dimensional</source>
            <extracomment>physics/adjustment_map.py</extracomment>
            <translation>{name} tiene la forma {shape}; un eje de un mapa es unidimensional</translation>
        </message>
        <message>
            <source>{name} holds a value that is not finite</source>
            <extracomment>physics/adjustment_map.py</extracomment>
            <translation>{name} contiene un valor que no es finito</translation>
        </message>
        <message>
            <source>The trials ask for {scale} times the file's lift: check that this is the file for this cam.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>Los ensayos piden {scale} veces la alzada del archivo: compruebe que es el archivo de esta leva.</translation>
        </message>
        <message>
            <source>The trials ask for {scale} times the file's rise: check that this is the file for this cam.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>Los ensayos piden {scale} veces la subida del archivo: compruebe que es el archivo de esta leva.</translation>
        </message>
        <message>
            <source>The gap of trial {behind} is smaller than that of trial {ahead}, though its plate stands further with rotation; openings off the mark but within the tolerance explain it: set them closer to the mark.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>La apertura del ensayo {behind} es menor que la del ensayo {ahead}, aunque su placa está más adelante en sentido de giro; lo explican momentos de apertura fuera de la marca pero dentro de la tolerancia: ajústelos más cerca de la marca.</translation>
        </message>
        <message>
            <source>{mm} mm ({inches} in)</source>
            <extracomment>physics/advice.py, physics/setting.py, practice/words.py</extracomment>
            <translation>{mm} mm ({inches} in)</translation>
        </message>
        <message>
            <source>{low} to {high} mm ({low_in} to {high_in} in)</source>
            <extracomment>physics/advice.py, practice/paper.py</extracomment>
            <translation>{low} a {high} mm ({low_in} a {high_in} in)</translation>
        </message>
        <message>
            <source>Done: the gap, {span}, is in limits.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>Hecho: la apertura, {span}, está en límites.</translation>
        </message>
        <message>
            <source>{gap}; {probability} times in 100 it will be {span}</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>{gap}; {probability} veces de cada 100 será {span}</translation>
        </message>
        <message>
            <source>Start with the plate at {plate}° and the contacts set to open at the E-gap: by the file the gap should be {expected}.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>Empiece con la placa a {plate}° y los contactos ajustados para abrir en el E-gap: según el archivo la apertura debería ser {expected}.</translation>
        </message>
        <message>
            <source>The gap cannot be brought into limits within the slot ({low}° to {high}°): that would take about {aim}°. The nearest is the end of the slot at {plate}°, where the gap should be {expected}.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>La apertura no se puede llevar a límites dentro de la ranura (de {low}° a {high}°): harían falta unos {aim}°. Lo más cercano es el extremo de la ranura, a {plate}°, donde la apertura debería ser {expected}.</translation>
        </message>
        <message>
            <source>Leave the plate at {plate}° and set the opening again, closer to the mark: an opening off the mark but within the tolerance explains this gap, which should be {expected}.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>Deje la placa a {plate}° y ajuste de nuevo el momento de apertura, más cerca de la marca: uno fuera de la marca pero dentro de la tolerancia explica esta apertura, que debería ser {expected}.</translation>
        </message>
        <message>
            <source>Trials {first} and {second} stood at the same plate and give different gaps; openings off the mark but within the tolerance explain it: set them closer to the mark.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>Los ensayos {first} y {second} estaban con la misma placa y dan aperturas distintas; lo explican momentos de apertura fuera de la marca pero dentro de la tolerancia: ajústelos más cerca de la marca.</translation>
        </message>
        <message>
            <source>The gap of trial {behind} is smaller than that of trial {ahead}, though its plate stands further with rotation, more than openings within the tolerance explain: check that the clamping screws hold, that lobe 1 was used, and which blades were, and repeat one of the two.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>La apertura del ensayo {behind} es menor que la del ensayo {ahead}, aunque su placa está más adelante en sentido de giro, más de lo que explica la tolerancia: compruebe que los tornillos de sujeción aprietan, que se usó el lóbulo 1 y qué galgas se usaron, y repita uno de los dos.</translation>
        </message>
        <message>
            <source>above {length}</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>más de {length}</translation>
        </message>
        <message>
            <source>the limits are {low} to {high} mm; they must be above 0, the low one first</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>los límites son {low} a {high} mm; deben ser mayores que 0, el menor primero</translation>
        </message>
        <message>
            <source>the wanted gap is {wanted} mm; the limits are {low} to {high} mm</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>la apertura deseada es {wanted} mm; los límites son {low} a {high} mm</translation>
        </message>
        <message>
            <source>Turn the plate {turn}° with cam rotation, to {plate}°: the gap should be {expected}.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>Gire la placa {turn}° en el sentido de la leva, hasta {plate}°: la apertura debería ser {expected}.</translation>
        </message>
        <message>
            <source>Turn the plate {turn}° against cam rotation, to {plate}°: the gap should be {expected}.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>Gire la placa {turn}° contra el giro de la leva, hasta {plate}°: la apertura debería ser {expected}.</translation>
        </message>
        <message>
            <source>The aim is about {aim}°, but that is too far from what was tried to be sure of.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>El objetivo es unos {aim}°, pero eso queda demasiado lejos de lo probado para estar seguro.</translation>
        </message>
        <message>
            <source>The gap, {span}, may be in limits, but the blades cannot tell: the plate is right where it is, so try finer blades, or set the opening again, closer to the mark.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>La apertura, {span}, puede estar en límites, pero las galgas no lo distinguen: la placa está bien donde está; pruebe galgas más finas o ajuste de nuevo el momento de apertura, más cerca de la marca.</translation>
        </message>
        <message>
            <source>Leave the plate at the end of the slot and set the opening again, closer to the mark: an opening off the mark but within the tolerance explains this gap, which should be {expected}.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>Deje la placa en el extremo de la ranura y ajuste de nuevo el momento de apertura, más cerca de la marca: uno fuera de la marca pero dentro de la tolerancia explica esta apertura, que debería ser {expected}.</translation>
        </message>
        <message>
            <source>Trial {trial} does not fit the others and is left out: its gap is larger than any opening within the tolerance explains; check it.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>El ensayo {trial} no concuerda con los otros y se omite: su apertura es mayor de lo que explica cualquier momento de apertura dentro de la tolerancia; compruébelo.</translation>
        </message>
        <message>
            <source>Trial {trial} does not fit the others and is left out: its gap is smaller than any opening within the tolerance explains; check it.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>El ensayo {trial} no concuerda con los otros y se omite: su apertura es menor de lo que explica cualquier momento de apertura dentro de la tolerancia; compruébelo.</translation>
        </message>
        <message>
            <source>Trials {first} and {second} stood at the same plate and give different gaps, more than openings within the tolerance explain: check that the clamping screws hold, that lobe 1 was used, and which blades were, and repeat one of the two.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>Los ensayos {first} y {second} estaban con la misma placa y dan aperturas distintas, más de lo que explica la tolerancia: compruebe que los tornillos de sujeción aprietan, que se usó el lóbulo 1 y qué galgas se usaron, y repita uno de los dos.</translation>
        </message>
        <message>
            <source>The trials contradict each other; clear that up before going on.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>Los ensayos se contradicen; aclárelo antes de seguir.</translation>
        </message>
        <message>
            <source>It is not what the other trials lead to expect, so try the blades once more.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>No es lo que hacen esperar los otros ensayos; pase las galgas otra vez.</translation>
        </message>
        <message>
            <source>That is the end of the slot; the gap may just come into limits there.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>Es el extremo de la ranura; ahí la apertura puede entrar justo en límites.</translation>
        </message>
        <message>
            <source>{hidden} mm of lift</source>
            <extracomment>physics/breaker.py</extracomment>
            <translation>{hidden} mm de alzada</translation>
        </message>
        <message>
            <source>a part of it altogether</source>
            <extracomment>physics/breaker.py</extracomment>
            <translation>una parte entera</translation>
        </message>
        <message>
            <source>breaker.heel_radius_mm: the heel cannot follow the cam's flank, which is too hollow for its radius or too steep for its arm: it misses {missed}, where at most {most} mm is allowed; a smaller heel, a longer rise_deg or fall_deg, or another law would fit</source>
            <extracomment>physics/breaker.py</extracomment>
            <translation>breaker.heel_radius_mm: el talón no puede seguir el flanco de la leva, demasiado hueco para su radio o demasiado empinado para su brazo: deja {missed}, y se admiten como mucho {most} mm; serviría un talón menor, un rise_deg o fall_deg más largo u otra ley</translation>
        </message>
        <message>
            <source>closed_deg is {closed}; it must be 0 or more</source>
            <extracomment>physics/coil.py</extracomment>
            <translation>closed_deg es {closed}; debe ser 0 o más</translation>
        </message>
        <message>
            <source>{name} has no electrical values</source>
            <extracomment>physics/coil.py</extracomment>
            <translation>{name} no tiene valores eléctricos</translation>
        </message>
        <message>
            <source>readings have shape {shape}; those of one setting are needed</source>
            <extracomment>physics/coil.py</extracomment>
            <translation>las lecturas tienen la forma {shape}; se necesitan las de un solo ajuste</translation>
        </message>
        <message>
            <source>poles is {poles}; it must be an even number from 2 on</source>
            <extracomment>physics/coil.py</extracomment>
            <translation>poles es {poles}; debe ser un número par desde 2</translation>
        </message>
        <message>
            <source>speed_rpm is {speed}; it must be above 0 and at most {most}</source>
            <extracomment>physics/coil.py</extracomment>
            <translation>speed_rpm es {speed}; debe ser mayor que 0 y como mucho {most}</translation>
        </message>
        <message>
            <source>an angle is infinite</source>
            <extracomment>physics/coil.py</extracomment>
            <translation>un ángulo es infinito</translation>
        </message>
        <message>
            <source>the nearest this coupling comes is {residual}° of crank late, outside the tolerance of {tolerance}°</source>
            <extracomment>physics/coupling.py</extracomment>
            <translation>lo más cerca que llega este acoplamiento es {residual}° de cigüeñal de retraso, fuera de la tolerancia de {tolerance}°</translation>
        </message>
        <message>
            <source>rotor_turns_per_crank_turn is {given}; {cylinders} cylinders and {poles} poles need {cylinders}/{twice}, which is {needed}</source>
            <extracomment>physics/coupling.py</extracomment>
            <translation>rotor_turns_per_crank_turn es {given}; {cylinders} cilindros y {poles} polos necesitan {cylinders}/{twice}, que es {needed}</translation>
        </message>
        <message>
            <source>the nearest this coupling comes is {residual}° of crank early, outside the tolerance of {tolerance}°</source>
            <extracomment>physics/coupling.py</extracomment>
            <translation>lo más cerca que llega este acoplamiento es {residual}° de cigüeñal de avance, fuera de la tolerancia de {tolerance}°</translation>
        </message>
        <message>
            <source>the list of moves must be allowed at least 1 move, not {most}</source>
            <extracomment>physics/coupling.py</extracomment>
            <translation>a la lista de movimientos hay que permitirle al menos 1, no {most}</translation>
        </message>
        <message>
            <source>the reading is {value}° before top dead centre; it must lie within ±3600°</source>
            <extracomment>physics/coupling.py</extracomment>
            <translation>la lectura es {value}° antes del punto muerto superior; debe estar en ±3600°</translation>
        </message>
        <message>
            <source>the wanted timing is {value}° before top dead centre; it must lie within ±3600°</source>
            <extracomment>physics/coupling.py</extracomment>
            <translation>el calado deseado es {value}° antes del punto muerto superior; debe estar en ±3600°</translation>
        </message>
        <message>
            <source>the rotor turns {ratio} times per crank turn; it must be 0.05 to 20 times</source>
            <extracomment>physics/coupling.py</extracomment>
            <translation>el rotor gira {ratio} veces por vuelta de cigüeñal; deben ser de 0.05 a 20 veces</translation>
        </message>
        <message>
            <source>the coupling has {count} teeth at the magneto; it must have 1 to {most}</source>
            <extracomment>physics/coupling.py</extracomment>
            <translation>el acoplamiento tiene {count} dientes en la magneto; debe tener de 1 a {most}</translation>
        </message>
        <message>
            <source>the coupling has {count} teeth at the drive; it must have 1 to {most}</source>
            <extracomment>physics/coupling.py</extracomment>
            <translation>el acoplamiento tiene {count} dientes en el accionamiento; debe tener de 1 a {most}</translation>
        </message>
        <message>
            <source>{cylinders} cylinders and {poles} poles have no speed ratio; both must be at least 1</source>
            <extracomment>physics/coupling.py</extracomment>
            <translation>{cylinders} cilindros y {poles} polos no dan relación de giro; ambos deben ser al menos 1</translation>
        </message>
        <message>
            <source>the left magneto's reading is {value}; it must be a number of degrees</source>
            <extracomment>physics/coupling.py</extracomment>
            <translation>la lectura de la magneto izquierda es {value}; debe ser un número de grados</translation>
        </message>
        <message>
            <source>the right magneto's reading is {value}; it must be a number of degrees</source>
            <extracomment>physics/coupling.py</extracomment>
            <translation>la lectura de la magneto derecha es {value}; debe ser un número de grados</translation>
        </message>
        <message>
            <source>the knots of a rising curve must increase in x and in y</source>
            <extracomment>physics/curve.py</extracomment>
            <translation>los nudos de una curva creciente deben crecer en x y en y</translation>
        </message>
        <message>
            <source>firing_order puts cylinder {cylinder} {away}° from where its piston is at the top; with all rods on one crank pin it cannot fire in that place</source>
            <extracomment>physics/engine.py</extracomment>
            <translation>firing_order pone el cilindro {cylinder} a {away}° de donde su pistón está arriba; con todas las bielas en una muñequilla no puede encender en ese lugar</translation>
        </message>
        <message>
            <source>there is no cylinder {cylinder}; the engine has 1 to {cylinders}</source>
            <extracomment>physics/engine.py</extracomment>
            <translation>no hay cilindro {cylinder}; el motor tiene de 1 a {cylinders}</translation>
        </message>
        <message>
            <source>both stop readings are {first}°; for the second the crank is turned to the stop the other way</source>
            <extracomment>physics/engine.py</extracomment>
            <translation>ambas lecturas del tope son {first}°; para la segunda se gira el cigüeñal hasta el tope en el otro sentido</translation>
        </message>
        <message>
            <source>stop readings of {first}° and {second}° have no middle that can be told from its opposite; they must be numbers, and not 180° apart</source>
            <extracomment>physics/engine.py</extracomment>
            <translation>las lecturas del tope de {first}° y {second}° no tienen un medio que se distinga de su opuesto; deben ser números y no distar 180°</translation>
        </message>
        <message>
            <source>there are {count} openings; there must be one for each of the {lobes} lobes</source>
            <extracomment>physics/engine.py</extracomment>
            <translation>hay {count} momentos de apertura; debe haber uno por cada uno de los {lobes} lóbulos</translation>
        </message>
        <message>
            <source>the cam gives {sparks} sparks in two crank turns; the engine needs {n}</source>
            <extracomment>physics/engine.py</extracomment>
            <translation>la leva da {sparks} chispas en dos vueltas de cigüeñal; el motor necesita {n}</translation>
        </message>
        <message>
            <source>the timing is {btdc}° before top dead centre; it must lie within ±90°</source>
            <extracomment>physics/engine.py</extracomment>
            <translation>el calado es {btdc}° antes del punto muerto superior; debe estar en ±90°</translation>
        </message>
        <message>
            <source>the piston of cylinder {cylinder} does not reach {wanted} mm below top dead centre</source>
            <extracomment>physics/engine.py</extracomment>
            <translation>el pistón del cilindro {cylinder} no llega a {wanted} mm bajo el punto muerto superior</translation>
        </message>
        <message>
            <source>the scaled magneto</source>
            <extracomment>physics/flank.py</extracomment>
            <translation>la magneto escalada</translation>
        </message>
        <message>
            <source>the scaled cam cannot be: {reason}</source>
            <extracomment>physics/flank.py</extracomment>
            <translation>la leva escalada no puede existir: {reason}</translation>
        </message>
        <message>
            <source>Fitted from {trials}: lift × {lift_scale} ± {lift_spread}, rise × {rise_scale} ± {rise_spread}, index {index}° ± {index_spread}° (95 in 100). Law of motion, dwell and fall are the first file's.</source>
            <extracomment>physics/flank_fit.py</extracomment>
            <translation>Ajustada con {trials}: alzada × {lift_scale} ± {lift_spread}, subida × {rise_scale} ± {rise_spread}, índice {index}° ± {index_spread}° (95 de cada 100). La ley de movimiento, la meseta y la bajada son del primer archivo.</translation>
        </message>
        <message>
            <source>1 trial</source>
            <extracomment>physics/flank_fit.py</extracomment>
            <translation>1 ensayo</translation>
        </message>
        <message>
            <source>{count} trials</source>
            <extracomment>physics/flank_fit.py</extracomment>
            <translation>{count} ensayos</translation>
        </message>
        <message>
            <source>{name}, fitted from {trials}</source>
            <extracomment>physics/flank_fit.py</extracomment>
            <translation>{name}, ajustada con {trials}</translation>
        </message>
        <message>
            <source>{count} trials are given; at most {most} are used</source>
            <extracomment>physics/flank_fit.py</extracomment>
            <translation>se dan {count} ensayos; se usan {most} como mucho</translation>
        </message>
        <message>
            <source>the probability is {probability}; it must lie between 0 and 1</source>
            <extracomment>physics/flank_fit.py</extracomment>
            <translation>la probabilidad es {probability}; debe estar entre 0 y 1</translation>
        </message>
        <message>
            <source>fitted from {trials}</source>
            <extracomment>physics/flank_fit.py</extracomment>
            <translation>ajustado a {trials}</translation>
        </message>
        <message>
            <source>an inspection at {hours} h; hours lie between 0 and {most}</source>
            <extracomment>physics/inspection.py</extracomment>
            <translation>una inspección a las {hours} h; las horas van de 0 a {most}</translation>
        </message>
        <message>
            <source>the gap is {value} mm; it must lie between 0 and 100</source>
            <extracomment>physics/inspection.py</extracomment>
            <translation>la apertura es {value} mm; debe estar entre 0 y 100</translation>
        </message>
        <message>
            <source>the gap's half-width is {value} mm; it must lie between 0 and 100</source>
            <extracomment>physics/inspection.py</extracomment>
            <translation>la semianchura de la apertura es {value} mm; debe estar entre 0 y 100</translation>
        </message>
        <message>
            <source>the opening's error is {value}°; it must lie within 90°</source>
            <extracomment>physics/inspection.py</extracomment>
            <translation>el error del momento de apertura es {value}°; debe estar dentro de 90°</translation>
        </message>
        <message>
            <source>the opening's half-width is {value}°; it must lie within 90°</source>
            <extracomment>physics/inspection.py</extracomment>
            <translation>la semianchura del momento de apertura es {value}°; debe estar dentro de 90°</translation>
        </message>
        <message>
            <source>common practice</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>práctica habitual</translation>
        </message>
        <message>
            <source>resolution: read to the nearest division, half of one to each side</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>resolución: leído a la división más próxima, media a cada lado</translation>
        </message>
        <message>
            <source>resolution: between the blade that passes and the next</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>resolución: entre la galga que pasa y la siguiente</translation>
        </message>
        <message>
            <source>straightedge held by hand</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>regla sujeta a mano</translation>
        </message>
        <message>
            <source>straightedge clamped to the cam</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>regla fijada a la leva</translation>
        </message>
        <message>
            <source>rule to 1 mm</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>escala de 1 mm</translation>
        </message>
        <message>
            <source>rule to thirty-seconds of an inch</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>rule to 0.5 mm</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>escala de 0.5 mm</translation>
        </message>
        <message>
            <source>rule to 1/64 in</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>escala de 1/64 in</translation>
        </message>
        <message>
            <source>magnifier with a scale to 0.1 mm</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>lupa con escala de 0.1 mm</translation>
        </message>
        <message>
            <source>blades in steps of 0.05 mm</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>galgas en pasos de 0.05 mm</translation>
        </message>
        <message>
            <source>blades in steps of 0.001 in</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>galgas en pasos de 0.001 in</translation>
        </message>
        <message>
            <source>blades in steps of 0.0005 in</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>galgas en pasos de 0.0005 in</translation>
        </message>
        <message>
            <source>blades in steps of 0.01 mm</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>galgas en pasos de 0.01 mm</translation>
        </message>
        <message>
            <source>drag judged by one blade</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>roce juzgado con una galga</translation>
        </message>
        <message>
            <source>drag compared with the next blade's</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>roce comparado con el de la galga siguiente</translation>
        </message>
        <message>
            <source>strip of thin paper, just free</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>tira de papel fino, justo libre</translation>
        </message>
        <message>
            <source>ohmmeter across the contacts</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>óhmetro entre contactos</translation>
        </message>
        <message>
            <source>timing lamp</source>
            <extracomment>physics/instruments.py, ui/class_editor_fields.py</extracomment>
            <translation>lámpara de calado</translation>
        </message>
        <message>
            <source>rotor turned by hand</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>rotor girado a mano</translation>
        </message>
        <message>
            <source>rotor turned with a bar, against a stop</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>rotor girado con palanca, contra un tope</translation>
        </message>
        <message>
            <source>propeller turned by hand</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>hélice girada a mano</translation>
        </message>
        <message>
            <source>propeller tapped round</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>hélice girada a golpecitos</translation>
        </message>
        <message>
            <source>disc to 1°</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>disco de 1°</translation>
        </message>
        <message>
            <source>disc to 0.5°</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>disco de 0.5°</translation>
        </message>
        <message>
            <source>angle indicator to 0.1°</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>indicador de ángulo de 0.1°</translation>
        </message>
        <message>
            <source>turned to and fro</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>girado a uno y otro lado</translation>
        </message>
        <message>
            <source>anywhere within the play</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>en cualquier punto del juego</translation>
        </message>
        <message>
            <source>always led in with rotation</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>siempre llevado en sentido de giro</translation>
        </message>
        <message>
            <source>the play is taken up</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>el juego está absorbido</translation>
        </message>
        <message>
            <source>read before tightening</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>leído antes de apretar</translation>
        </message>
        <message>
            <source>either way, as the file</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>ambos sentidos, según el archivo</translation>
        </message>
        <message>
            <source>read again after tightening</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>releído tras apretar</translation>
        </message>
        <message>
            <source>as found</source>
            <extracomment>physics/instruments.py, ui/drive_view.py</extracomment>
            <translation>hallado</translation>
        </message>
        <message>
            <source>the table's lift comes to {lift} mm at the contacts, and {least} to {most} mm is allowed: are its unit and the kind of reading right?</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation>la alzada de la tabla da {lift} mm en los contactos, y se admiten de {least} a {most} mm: ¿son correctos su unidad y el tipo de lectura?</translation>
        </message>
        <message>
            <source>the readings stand high off the lobe and fall on it: say that the dial falls with lift</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation>las lecturas son altas fuera del lóbulo y bajan en él: indique que el comparador baja con la alzada</translation>
        </message>
        <message>
            <source>the table shows {count} tops, near {places}; it must show one lobe, from base circle to base circle</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation>la tabla muestra {count} cimas, cerca de {places}; debe mostrar un solo lóbulo, de círculo base a círculo base</translation>
        </message>
        <message>
            <source>the readings scatter by {noise} mm about any smooth curve, {share} % of the lift; at most {most} % is taken for a lobe</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation>las lecturas se dispersan {noise} mm en torno a cualquier curva suave, {share} % de la alzada; para un lóbulo se admite {most} % como mucho</translation>
        </message>
        <message>
            <source>the table covers one side of the lobe only; it must go over the top and down again</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation>la tabla cubre solo un lado del lóbulo; debe pasar la cima y bajar de nuevo</translation>
        </message>
        <message>
            <source>neither end of the table lies on the base circle; measure from base circle to base circle</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation>ningún extremo de la tabla está en el círculo base; mida de círculo base a círculo base</translation>
        </message>
        <message>
            <source>The table begins on the flank; its foot is drawn, not measured.</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation>La tabla empieza en el flanco; su pie está trazado, no medido.</translation>
        </message>
        <message>
            <source>The table ends on the flank; its foot is drawn, not measured.</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation>La tabla acaba en el flanco; su pie está trazado, no medido.</translation>
        </message>
        <message>
            <source>The base circle reads {difference} mm more after the lobe than before it (the dial slipped, or the cam runs out); each flank was taken from its own side.</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation>El círculo base lee {difference} mm más tras el lóbulo que antes (el comparador se corrió o la leva está descentrada); cada flanco se tomó desde su propio lado.</translation>
        </message>
        <message>
            <source>The base circle reads {difference} mm more before the lobe than after it (the dial slipped, or the cam runs out); each flank was taken from its own side.</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation>El círculo base lee {difference} mm más antes del lóbulo que después (el comparador se corrió o la leva está descentrada); cada flanco se tomó desde su propio lado.</translation>
        </message>
        <message>
            <source>Only {count} rows lie on the rise; between them it is a guess.</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation>Solo hay {count} filas en la subida; entre ellas es una conjetura.</translation>
        </message>
        <message>
            <source>Only {count} rows lie on the fall; between them it is a guess.</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation>Solo hay {count} filas en la bajada; entre ellas es una conjetura.</translation>
        </message>
        <message>
            <source>The readings scatter by {noise} mm about the curve, {share} % of the lift.</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation>Las lecturas se dispersan {noise} mm en torno a la curva, {share} % de la alzada.</translation>
        </message>
        <message>
            <source>Below {lift} mm of lift the contacts were closed; the foot is drawn, not measured.</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation>Por debajo de {lift} mm de alzada los contactos estaban cerrados; el pie está trazado, no medido.</translation>
        </message>
        <message>
            <source>The base circle before the lobe is uneven by {uneven} mm.</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation>El círculo base antes del lóbulo es irregular en {uneven} mm.</translation>
        </message>
        <message>
            <source>The base circle after the lobe is uneven by {uneven} mm.</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation>El círculo base tras el lóbulo es irregular en {uneven} mm.</translation>
        </message>
        <message>
            <source>table of the lift</source>
            <extracomment>physics/measured.py</extracomment>
            <translation>tabla de la alzada</translation>
        </message>
        <message>
            <source>the measured lift</source>
            <extracomment>physics/measured.py</extracomment>
            <translation>la alzada medida</translation>
        </message>
        <message>
            <source>The table has {columns} columns; two of them were used.</source>
            <extracomment>physics/measured.py</extracomment>
            <translation>La tabla tiene {columns} columnas; se usaron dos.</translation>
        </message>
        <message>
            <source>Turned both ways, the readings lie {backlash}° of cam apart, as backlash makes them; the middle of the two was taken.</source>
            <extracomment>physics/measured.py</extracomment>
            <translation>Girando en ambos sentidos, las lecturas distan {backlash}° de leva, como por juego; se tomó el medio de ambas.</translation>
        </message>
        <message>
            <source>{outliers} of {count} rows, far off their neighbours, were left out.</source>
            <extracomment>physics/measured.py</extracomment>
            <translation>Se omitieron {outliers} de {count} filas, muy apartadas de sus vecinas.</translation>
        </message>
        <message>
            <source>the table tells the lift at {places} different angles; it must be at {least} or more, better at 20</source>
            <extracomment>physics/measured.py</extracomment>
            <translation>la tabla da la alzada en {places} ángulos distintos; deben ser {least} o más, mejor 20</translation>
        </message>
        <message>
            <source>the cam's turns per rotor turn is {value}; it must be 0.01 to 100</source>
            <extracomment>physics/measured.py</extracomment>
            <translation>las vueltas de leva por vuelta de rotor son {value}; deben ser de 0.01 a 100</translation>
        </message>
        <message>
            <source>the contact arm over the heel arm is {value}; it must be 0.01 to 100</source>
            <extracomment>physics/measured.py</extracomment>
            <translation>el brazo de contacto entre el brazo del talón es {value}; debe ser de 0.01 a 100</translation>
        </message>
        <message>
            <source>the stop is {stop} mm; it must be 0 to {most} mm</source>
            <extracomment>physics/measured.py</extracomment>
            <translation>el tope es {stop} mm; debe ser de 0 a {most} mm</translation>
        </message>
        <message>
            <source>the measured lift: {reason}</source>
            <extracomment>physics/measured.py</extracomment>
            <translation>la alzada medida: {reason}</translation>
        </message>
        <message>
            <source>no lobe can be drawn through the table: {reason}</source>
            <extracomment>physics/measured.py</extracomment>
            <translation>no se puede trazar un lóbulo por la tabla: {reason}</translation>
        </message>
        <message>
            <source>{count} instruments are given for {role}; there must be one</source>
            <extracomment>physics/measurement.py</extracomment>
            <translation>se dan {count} instrumentos para {role}; debe haber uno</translation>
        </message>
        <message>
            <source>nothing was read with an instrument for {role}</source>
            <extracomment>physics/measurement.py</extracomment>
            <translation>no se leyó nada con un instrumento para {role}</translation>
        </message>
        <message>
            <source>linear and Monte Carlo agree: the ends of their intervals differ by {worst} at most, where {tolerance} is allowed</source>
            <extracomment>physics/monte_carlo.py</extracomment>
            <translation>lineal y Monte Carlo concuerdan: los extremos de sus intervalos difieren {worst} como mucho, y se admite {tolerance}</translation>
        </message>
        <message>
            <source>linear and Monte Carlo agree: the ends of their intervals differ by {worst} at most, where {tolerance} is allowed; more trials are needed to be sure</source>
            <extracomment>physics/monte_carlo.py</extracomment>
            <translation>lineal y Monte Carlo concuerdan: los extremos de sus intervalos difieren {worst} como mucho, y se admite {tolerance}; para estar seguro hacen falta más ensayos</translation>
        </message>
        <message>
            <source>linear and Monte Carlo disagree: the ends of their intervals differ by {worst} at most, where {tolerance} is allowed</source>
            <extracomment>physics/monte_carlo.py</extracomment>
            <translation>lineal y Monte Carlo discrepan: los extremos de sus intervalos difieren {worst} como mucho, y se admite {tolerance}</translation>
        </message>
        <message>
            <source>linear and Monte Carlo disagree: the ends of their intervals differ by {worst} at most, where {tolerance} is allowed; more trials are needed to be sure</source>
            <extracomment>physics/monte_carlo.py</extracomment>
            <translation>lineal y Monte Carlo discrepan: los extremos de sus intervalos difieren {worst} como mucho, y se admite {tolerance}; para estar seguro hacen falta más ensayos</translation>
        </message>
        <message>
            <source>a Monte Carlo of {trials} trials tells nothing; it takes at least 1</source>
            <extracomment>physics/monte_carlo.py</extracomment>
            <translation>un Monte Carlo de {trials} ensayos no dice nada; hace falta al menos 1</translation>
        </message>
        <message>
            <source>{count} values are too few for an interval of probability {probability}</source>
            <extracomment>physics/monte_carlo.py</extracomment>
            <translation>{count} valores son muy pocos para un intervalo de probabilidad {probability}</translation>
        </message>
        <message>
            <source>a standard uncertainty of {uncertainty} has no digits</source>
            <extracomment>physics/monte_carlo.py</extracomment>
            <translation>una incertidumbre típica de {uncertainty} no tiene cifras</translation>
        </message>
        <message>
            <source>intervals of {probability} and {other} cannot be compared</source>
            <extracomment>physics/monte_carlo.py</extracomment>
            <translation>los intervalos de {probability} y {other} no se pueden comparar</translation>
        </message>
        <message>
            <source>the backplate would stand at {value}°, {beyond}° beyond the end of its slot ({low}° to {high}°)</source>
            <extracomment>physics/setting.py</extracomment>
            <translation>la placa base quedaría a {value}°, {beyond}° más allá del extremo de su ranura (de {low}° a {high}°)</translation>
        </message>
        <message>
            <source>the contact screw would stand at {value}°, {beyond}° beyond the end of its travel ({low}° to {high}°)</source>
            <extracomment>physics/setting.py</extracomment>
            <translation>el tornillo de contacto quedaría a {value}°, {beyond}° más allá del extremo de su recorrido (de {low}° a {high}°)</translation>
        </message>
        <message>
            <source>the nearest gap that can be had is {gap}</source>
            <extracomment>physics/setting.py</extracomment>
            <translation>la apertura más cercana que se puede obtener es {gap}</translation>
        </message>
        <message>
            <source>the gap is {gap} mm; it must be 0 or more</source>
            <extracomment>physics/setting.py</extracomment>
            <translation>la apertura es {gap} mm; debe ser 0 o más</translation>
        </message>
        <message>
            <source>lobe 1 lifts the contacts {both} in all, so they would never close</source>
            <extracomment>physics/setting.py</extracomment>
            <translation>el lóbulo 1 alza los contactos {both} en total, así que nunca cerrarían</translation>
        </message>
        <message>
            <source>no gap within reach opens at the E-gap</source>
            <extracomment>physics/setting.py</extracomment>
            <translation>ninguna apertura alcanzable abre en el E-gap</translation>
        </message>
        <message>
            <source>the nearest gap that can be had is {gap}, with the backplate at the end of its slot</source>
            <extracomment>physics/setting.py</extracomment>
            <translation>la apertura más cercana que se puede obtener es {gap}, con la placa base en el extremo de su ranura</translation>
        </message>
        <message>
            <source>the nearest gap that can be had is {gap}, with the contact screw at the end of its travel</source>
            <extracomment>physics/setting.py</extracomment>
            <translation>la apertura más cercana que se puede obtener es {gap}, con el tornillo de contacto en el extremo de su recorrido</translation>
        </message>
        <message>
            <source>the contact screw's eccentric does not reach that far</source>
            <extracomment>physics/setting.py</extracomment>
            <translation>la excéntrica del tornillo de contacto no llega tan lejos</translation>
        </message>
        <message>
            <source>disc, left magneto</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>disco, magneto izquierda</translation>
        </message>
        <message>
            <source>turning the crank, left</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>giro del cigüeñal, izquierda</translation>
        </message>
        <message>
            <source>gap when it shows, left</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>apertura al indicarse, izquierda</translation>
        </message>
        <message>
            <source>play not taken up, left</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>juego no absorbido, izquierda</translation>
        </message>
        <message>
            <source>left magneto fires</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>la magneto izquierda enciende</translation>
        </message>
        <message>
            <source>disc, right magneto</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>disco, magneto derecha</translation>
        </message>
        <message>
            <source>turning the crank, right</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>giro del cigüeñal, derecha</translation>
        </message>
        <message>
            <source>gap when it shows, right</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>apertura al indicarse, derecha</translation>
        </message>
        <message>
            <source>play not taken up, right</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>juego no absorbido, derecha</translation>
        </message>
        <message>
            <source>right magneto fires</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>la magneto derecha enciende</translation>
        </message>
        <message>
            <source>straightedge from the mark</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>regla desde la marca</translation>
        </message>
        <message>
            <source>straightedge along the step</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>regla a lo largo del escalón</translation>
        </message>
        <message>
            <source>blade</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>galga</translation>
        </message>
        <message>
            <source>drag of the blade</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>roce de la galga</translation>
        </message>
        <message>
            <source>gap when it shows</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>apertura al indicarse</translation>
        </message>
        <message>
            <source>turning the rotor</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>giro del rotor</translation>
        </message>
        <message>
            <source>play not taken up</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>juego no absorbido</translation>
        </message>
        <message>
            <source>creep of the screw</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>corrimiento del tornillo</translation>
        </message>
        <message>
            <source>a gap of {gap} mm cannot be: lobe 1 lifts the contacts {top} mm, and below {parting} mm nothing would show that they part</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>una apertura de {gap} mm no puede ser: el lóbulo 1 alza los contactos {top} mm, y por debajo de {parting} mm nada indicaría que se separan</translation>
        </message>
        <message>
            <source>a gap of {gap} mm cannot be: lobe 1 lifts the contacts {top} mm</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>una apertura de {gap} mm no puede ser: el lóbulo 1 alza los contactos {top} mm</translation>
        </message>
        <message>
            <source>neither magneto was read; at least one must be</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>no se leyó ninguna magneto; hay que leer al menos una</translation>
        </message>
        <message>
            <source>disc at the first stop</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>disco en el primer tope</translation>
        </message>
        <message>
            <source>disc at the second stop</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>disco en el segundo tope</translation>
        </message>
        <message>
            <source>left less right, beyond the {design}° wanted</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>izquierda menos derecha, aparte de los {design}° deseados</translation>
        </message>
        <message>
            <source>left less right</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>izquierda menos derecha</translation>
        </message>
        <message>
            <source>as given</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>según lo dado</translation>
        </message>
        <message>
            <source>opening from the E-gap</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>momento de apertura desde el E-gap</translation>
        </message>
        <message>
            <source>widest gap</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>apertura máxima</translation>
        </message>
        <message>
            <source>the radius of the slot is {value}; it must be above 0</source>
            <extracomment>physics/trials.py</extracomment>
            <translation>el radio de la ranura es {value}; debe ser mayor que 0</translation>
        </message>
        <message>
            <source>the angle between two marks is {value}; it must be above 0</source>
            <extracomment>physics/trials.py</extracomment>
            <translation>el ángulo entre dos marcas es {value}; debe ser mayor que 0</translation>
        </message>
        <message>
            <source>the plate stands at {backplate}°; it must lie within ±3600°</source>
            <extracomment>physics/trials.py</extracomment>
            <translation>la placa está a {backplate}°; debe estar en ±3600°</translation>
        </message>
        <message>
            <source>the opening is {opening_error}° off; it must lie within ±45°</source>
            <extracomment>physics/trials.py</extracomment>
            <translation>el momento de apertura se aparta {opening_error}°; debe estar en ±45°</translation>
        </message>
        <message>
            <source>the gap is given as {low} to {high} mm; it must be above 0, within 1000 mm, low end first</source>
            <extracomment>physics/trials.py</extracomment>
            <translation>la apertura se da como {low} a {high} mm; debe ser mayor que 0, dentro de 1000 mm, el extremo menor primero</translation>
        </message>
        <message>
            <source>a gap of 0 mm or more says nothing; give the blade that passes or the one that does not</source>
            <extracomment>physics/trials.py</extracomment>
            <translation>una apertura de 0 mm o más no dice nada; dé la galga que pasa o la que no</translation>
        </message>
        <message>
            <source>the gap is known to within {within} mm; it must be 0 or more</source>
            <extracomment>physics/trials.py</extracomment>
            <translation>la apertura se conoce a {within} mm; debe ser 0 o más</translation>
        </message>
        <message>
            <source>the errors of a trial must be numbers, 0 or more</source>
            <extracomment>physics/trials.py</extracomment>
            <translation>los errores de un ensayo deben ser números, 0 o más</translation>
        </message>
        <message>
            <source>doubt in lift and rise must be above 0 and at most 1, in the index at most 90°</source>
            <extracomment>physics/trials.py</extracomment>
            <translation>la duda en alzada y subida debe ser mayor que 0 y como mucho 1, en el índice como mucho 90°</translation>
        </message>
        <message>
            <source>no coverage factor for a probability of {probability} and {dof} degrees of freedom</source>
            <extracomment>physics/uncertainty.py</extracomment>
            <translation>no hay factor de cobertura para una probabilidad de {probability} y {dof} grados de libertad</translation>
        </message>
        <message>
            <source>the second-order terms leave no variance: the expansion does not hold for this model</source>
            <extracomment>physics/uncertainty.py</extracomment>
            <translation>los términos de segundo orden no dejan varianza: el desarrollo no vale para este modelo</translation>
        </message>
        <message>
            <source>{name}: {estimate} ± {spread} is no estimate with a spread</source>
            <extracomment>physics/uncertainty.py</extracomment>
            <translation>{name}: {estimate} ± {spread} no es una estimación con dispersión</translation>
        </message>
        <message>
            <source>{name}: {dof} degrees of freedom; there must be at least 1</source>
            <extracomment>physics/uncertainty.py</extracomment>
            <translation>{name}: {dof} grados de libertad; debe haber al menos 1</translation>
        </message>
        <message>
            <source>{name}: a {distribution} distribution has no half-width</source>
            <extracomment>physics/uncertainty.py</extracomment>
            <translation>{name}: una distribución {distribution} no tiene semianchura</translation>
        </message>
        <message>
            <source>{name}: a t distribution needs its degrees of freedom</source>
            <extracomment>physics/uncertainty.py</extracomment>
            <translation>{name}: una distribución t necesita sus grados de libertad</translation>
        </message>
        <message>
            <source>hours since the setting must be 0 or more, and finite</source>
            <extracomment>physics/wear.py</extracomment>
            <translation>las horas desde el ajuste deben ser 0 o más, y finitas</translation>
        </message>
        <message>
            <source>after {hours} h the heel would have lost {heel} mm and the pip be {pip} mm high</source>
            <extracomment>physics/wear.py</extracomment>
            <translation>tras {hours} h el talón habría perdido {heel} mm y la punta tendría {pip} mm de alto</translation>
        </message>
        <message>
            <source>a rate takes inspections at two different hours at least</source>
            <extracomment>physics/wear.py</extracomment>
            <translation>un ritmo pide inspecciones a dos horas distintas al menos</translation>
        </message>
        <message>
            <source>heel wear is {rate} mm per 100 h; it must be 0 or more</source>
            <extracomment>physics/wear.py</extracomment>
            <translation>el desgaste del talón es {rate} mm por 100 h; debe ser 0 o más</translation>
        </message>
        <message>
            <source>the pip's growth is {rate} mm per 100 h; it must be 0 or more</source>
            <extracomment>physics/wear.py</extracomment>
            <translation>el crecimiento de la punta es {rate} mm por 100 h; debe ser 0 o más</translation>
        </message>
        <message>
            <source>breaker.heel_arm_mm is missing in the magneto's file: it tells what heel wear does</source>
            <extracomment>physics/wear.py</extracomment>
            <translation>falta breaker.heel_arm_mm en el archivo de la magneto: dice qué hace el desgaste del talón</translation>
        </message>
        <message>
            <source>that is not to be had in practice: here hands and instruments do the work</source>
            <extracomment>practice/actions.py</extracomment>
            <translation>eso no se puede en la práctica: aquí trabajan las manos y los instrumentos</translation>
        </message>
        <message>
            <source>the coupling is moved one tooth at a time, at one face</source>
            <extracomment>practice/actions.py</extracomment>
            <translation>el acoplamiento se mueve un diente cada vez, por una cara</translation>
        </message>
        <message>
            <source>On {name}, renew the lead, and prove it again.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>En {name}, cambie el cable y compruébelo de nuevo.</translation>
        </message>
        <message>
            <source>On {name}, renew the insulation, and prove it again.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>En {name}, cambie el aislante y compruébelo de nuevo.</translation>
        </message>
        <message>
            <source>On {name}, renew the tab, and prove it again.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>En {name}, cambie la lengüeta y compruébela de nuevo.</translation>
        </message>
        <message>
            <source>Stop in No. 1, met gently from both sides; half-way between the two readings is top dead centre.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>Tope en el n.º 1, tocado con suavidad por ambos lados; el punto medio de las dos lecturas es el punto muerto superior.</translation>
        </message>
        <message>
            <source>On {name}: paint marks, nuts off; magneto flange on the disc {flange}; disc on the drive flange {disc}; nuts on. {residual}° remain. Lamp and disc, approached with rotation.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>En {name}: pinte marcas, tuercas fuera; brida de la magneto sobre el disco {flange}; disco sobre la brida motriz {disc}; tuercas puestas. Quedan {residual}°. Lámpara y disco, llegando en sentido de giro.</translation>
        </message>
        <message>
            <source>Lay the straightedge on, look square over it, turn to the mark with rotation, and hold.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>Ponga la regla, mire a escuadra sobre ella, gire hasta la marca en sentido de giro y sujete.</translation>
        </message>
        <message>
            <source>Close up: screws, nuts, plug in, switch off; and look once more at what tightening can shift.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>Cierre: tornillos, tuercas, clavija puesta, interruptor en OFF; y mire otra vez lo que el apriete puede mover.</translation>
        </message>
        <message>
            <source>Make it safe: {words}.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>Póngalo en seguridad: {words}.</translation>
        </message>
        <message>
            <source>On {name}, prove the lead: plug pulled, meter with the switch off and on, lamp for tab and coil.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>En {name}, compruebe el cable: clavija fuera, medidor con el interruptor en OFF y en ON, lámpara para lengüeta y bobina.</translation>
        </message>
        <message>
            <source>On {name}, dress the contacts before measuring.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>En {name}, repase los contactos antes de medir.</translation>
        </message>
        <message>
            <source>On {name}, no setting puts gap and opening right at once.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>En {name}, ningún ajuste da a la vez apertura y momento correctos.</translation>
        </message>
        <message>
            <source>On {name}, slacken the clamp screws, {move}, tighten; lamp and straightedge.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>En {name}, afloje los tornillos de sujeción, {move}, apriete; lámpara y regla.</translation>
        </message>
        <message>
            <source>Turn the disc {error}° later, to read zero there. Stop out.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>Gire el disco {error}° más tarde, para leer ahí cero. Tope fuera.</translation>
        </message>
        <message>
            <source>Turn the disc {error}° earlier, to read zero there. Stop out.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>Gire el disco {error}° más pronto, para leer ahí cero. Tope fuera.</translation>
        </message>
        <message>
            <source>On {name}: paint marks, plug out, nuts off, lift it off.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>En {name}: pinte marcas, clavija fuera, tuercas fuera, desmóntela.</translation>
        </message>
        <message>
            <source>No. 1 on compression at {wanted}° before top dead centre, the rotor where the contacts open with the finger at No. 1; mesh to the nearest tooth.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>N.º 1 en compresión a {wanted}° antes del punto muerto superior, el rotor donde abren los contactos con el dedo en el n.º 1; engrane en el diente más próximo.</translation>
        </message>
        <message>
            <source>On {name}, no tooth needs to move; lamp and disc with rotation say so.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>En {name}, no hay que mover ningún diente; lo dicen lámpara y disco en sentido de giro.</translation>
        </message>
        <message>
            <source>On {name}, slacken the lock screw, {turn}, tighten (tightening carries it {creep}° on); blades on both limits.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>En {name}, afloje el tornillo de bloqueo, {turn}, apriete (el apriete lo lleva {creep}° más); galgas en ambos límites.</translation>
        </message>
        <message>
            <source>On {name}, slacken the lock screw, {turn}, tighten; blades on both limits.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>En {name}, afloje el tornillo de bloqueo, {turn}, apriete; galgas en ambos límites.</translation>
        </message>
        <message>
            <source>chocks</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>calzos</translation>
        </message>
        <message>
            <source>spark plugs out</source>
            <extracomment>practice/advice.py, practice/seen.py, ui/class_editor_fields.py</extracomment>
            <translation>bujías fuera</translation>
        </message>
        <message>
            <source>there is no piston stop on the tray</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>no hay tope de pistón en la bandeja</translation>
        </message>
        <message>
            <source>the attempt has been handed in</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>el intento ya se ha entregado</translation>
        </message>
        <message>
            <source>there is no meter on the tray</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>no hay medidor en la bandeja</translation>
        </message>
        <message>
            <source>the stop goes into No. 1's plug hole: take the spark plugs out first</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>el tope va en el agujero de bujía del n.º 1: saque antes las bujías</translation>
        </message>
        <message>
            <source>the piston of No. 1 stands too high for the stop: turn the propeller on first</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>el pistón del n.º 1 está demasiado alto para el tope: gire antes la hélice</translation>
        </message>
        <message>
            <source>there is no engine here</source>
            <extracomment>practice/apply.py, practice/instruments.py</extracomment>
            <translation>aquí no hay motor</translation>
        </message>
        <message>
            <source>the piston stop is in No. 1's plug hole: take it out first</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>el tope de pistón está en el agujero de bujía del n.º 1: sáquelo antes</translation>
        </message>
        <message>
            <source>the magneto is off the engine</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>la magneto está desmontada del motor</translation>
        </message>
        <message>
            <source>there is no {side} magneto here</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>aquí no hay magneto {side}</translation>
        </message>
        <message>
            <source>the magneto is off the engine already</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>la magneto ya está desmontada del motor</translation>
        </message>
        <message>
            <source>the nuts hold the magneto: take them off first</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>las tuercas sujetan la magneto: quítelas antes</translation>
        </message>
        <message>
            <source>the switch lead holds the magneto: pull its plug first</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>el cable de masa retiene la magneto: saque antes su clavija</translation>
        </message>
        <message>
            <source>the magneto is on the engine already</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>la magneto ya está en el motor</translation>
        </message>
        <message>
            <source>the coupling is moved one tooth at a time, at its magneto or its disc face</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>el acoplamiento se mueve un diente cada vez, por su cara de magneto o de disco</translation>
        </message>
        <message>
            <source>the coupling is closed: take the nuts off and draw the magneto back first</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>el acoplamiento está cerrado: quite las tuercas y retire antes la magneto</translation>
        </message>
        <message>
            <source>the pin holds the rotor: take it out to turn the flange</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>el pasador sujeta el rotor: sáquelo para girar la brida</translation>
        </message>
        <message>
            <source>“{kind}” is no kind of reading</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>«{kind}» no es un tipo de lectura</translation>
        </message>
        <message>
            <source>the notebook is full: it holds {most} lines</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>el cuaderno está lleno: admite {most} líneas</translation>
        </message>
        <message>
            <source>a note is one line of at most {most} characters</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>una nota es una línea de {most} caracteres como mucho</translation>
        </message>
        <message>
            <source>a finding on the switch lead is sound, broken, shorted or tab</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>un hallazgo sobre el cable de masa es sound, broken, shorted o tab</translation>
        </message>
        <message>
            <source>a finding in words takes no number</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>un hallazgo en palabras no lleva número</translation>
        </message>
        <message>
            <source>a reading needs its number</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>una lectura necesita su número</translation>
        </message>
        <message>
            <source>there is no lobe {lobe}; the cam has {lobes}</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>no hay lóbulo {lobe}; la leva tiene {lobes}</translation>
        </message>
        <message>
            <source>the backplate is at the end of its slot</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>la placa base está en el extremo de su ranura</translation>
        </message>
        <message>
            <source>the contact screw is at the end of its travel</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>el tornillo de contacto está en el extremo de su recorrido</translation>
        </message>
        <message>
            <source>what can be renewed is the lead, the tab or the insulation</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>se puede cambiar el cable, la lengüeta o el aislante</translation>
        </message>
        <message>
            <source>there is no straightedge on the tray</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>no hay regla en la bandeja</translation>
        </message>
        <message>
            <source>there is no timing lamp on the tray</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>no hay lámpara de calado en la bandeja</translation>
        </message>
        <message>
            <source>there is no {kind} set of blades on the tray</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>no hay juego de galgas {kind} en la bandeja</translation>
        </message>
        <message>
            <source>there is no crank disc on the tray</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>no hay disco de cigüeñal en la bandeja</translation>
        </message>
        <message>
            <source>no marks were painted to refit it by: it can only go on as its rotor stands</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>no se pintaron marcas para remontarla: solo puede ir como está su rotor</translation>
        </message>
        <message>
            <source>a part's name is one line of at most {most} characters</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>el nombre de una pieza es una línea de {most} caracteres como mucho</translation>
        </message>
        <message>
            <source>the pin holds the rotor</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>el pasador sujeta el rotor</translation>
        </message>
        <message>
            <source>that is the {part}</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>eso es: {part}</translation>
        </message>
        <message>
            <source>{where}.{field} is {found}; it must be true or false</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{where}.{field} es {found}; debe ser true o false</translation>
        </message>
        <message>
            <source>{where}.{field} is {found}; it must be a whole number</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{where}.{field} es {found}; debe ser un número entero</translation>
        </message>
        <message>
            <source>{where}.{field} is {found}; it must be text</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{where}.{field} es {found}; debe ser texto</translation>
        </message>
        <message>
            <source>{where}.{field} is {found}; it must be a list</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{where}.{field} es {found}; debe ser una lista</translation>
        </message>
        <message>
            <source>{source}: holds no attempt; it must be one JSON object in braces</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{source}: no contiene un intento; debe ser un objeto JSON entre llaves</translation>
        </message>
        <message>
            <source>{source}: format is {found}; it must be "{wanted}"</source>
            <extracomment>practice/attempt.py, spec/files.py</extracomment>
            <translation>{source}: format es {found}; debe ser "{wanted}"</translation>
        </message>
        <message>
            <source>{source}: {name} is missing</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{source}: falta {name}</translation>
        </message>
        <message>
            <source>{source}: {name} is not a known name</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{source}: {name} no es un nombre conocido</translation>
        </message>
        <message>
            <source>{source}: events must be a list of at most {most}</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{source}: events debe ser una lista de {most} como mucho</translation>
        </message>
        <message>
            <source>{where} must be an object in braces</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{where} debe ser un objeto entre llaves</translation>
        </message>
        <message>
            <source>{where}.at_s is {found}; it must be a number of seconds from 0 on</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{where}.at_s es {found}; debe ser un número de segundos desde 0</translation>
        </message>
        <message>
            <source>{where}.do is {found}, which is no act this program knows</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{where}.do es {found}, que no es una acción que este programa conozca</translation>
        </message>
        <message>
            <source>{where}.{field} is {found}; it must be {allowed}</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{where}.{field} es {found}; debe ser {allowed}</translation>
        </message>
        <message>
            <source>{where}.{field} is {found}; it must be a number</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{where}.{field} es {found}; debe ser un número</translation>
        </message>
        <message>
            <source>{where}.{field} is {found}; it must be what the act takes</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{where}.{field} es {found}; debe ser lo que admite la acción</translation>
        </message>
        <message>
            <source>the time is {at_s}; it must be a number of seconds</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>el tiempo es {at_s}; debe ser un número de segundos</translation>
        </message>
        <message>
            <source>the record is full at {most} acts: hand in</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>el registro está lleno con {most} acciones: entregue</translation>
        </message>
        <message>
            <source>{source}: format is {found} (a newer magview wrote it; it is left as it was); it must be "{wanted}"</source>
            <extracomment>practice/attempt.py, spec/files.py</extracomment>
            <translation>{source}: format es {found} (lo escribió un magview más nuevo; se deja como estaba); debe ser "{wanted}"</translation>
        </message>
        <message>
            <source>{source}: {name} is {found}; it must be text of at most {most} characters</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{source}: {name} es {found}; debe ser texto de {most} caracteres como mucho</translation>
        </message>
        <message>
            <source>{source}: events[{i}].at_s is {at_s}; time does not run backwards</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{source}: events[{i}].at_s es {at_s}; el tiempo no va hacia atrás</translation>
        </message>
        <message>
            <source>{where}.{field} is not a known name of {name}</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{where}.{field} no es un nombre conocido de {name}</translation>
        </message>
        <message>
            <source>{where}.{field} is missing</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>falta {where}.{field}</translation>
        </message>
        <message>
            <source>Done with version {version}, shown with {here}: what followed from an act may differ.</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>Hecho con la versión {version}, mostrado con {here}: lo que siguió a una acción puede diferir.</translation>
        </message>
        <message>
            <source>Opening from the mark</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>Abre respecto a la marca</translation>
        </message>
        <message>
            <source>Opening from the mark, {name}</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>Abre respecto a la marca, {name}</translation>
        </message>
        <message>
            <source>Largest gap, {name}</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>Apertura máxima, {name}</translation>
        </message>
        <message>
            <source>Pip on the contacts, {name}</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>Punta en los contactos, {name}</translation>
        </message>
        <message>
            <source>Lock screw carries the contact screw along</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>El tornillo de bloqueo arrastra el de contacto</translation>
        </message>
        <message>
            <source>Lock screw carries the contact screw along, {name}</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>El tornillo de bloqueo arrastra el de contacto, {name}</translation>
        </message>
        <message>
            <source>Switch lead, {name}</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>Cable de masa, {name}</translation>
        </message>
        <message>
            <source>Fires before top dead centre, {name}</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>Enciende antes del punto muerto superior, {name}</translation>
        </message>
        <message>
            <source>Play in the coupling</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>Juego en el acoplamiento</translation>
        </message>
        <message>
            <source>Play in the coupling, {name}</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>Juego en el acoplamiento, {name}</translation>
        </message>
        <message>
            <source>not at all</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>nada</translation>
        </message>
        <message>
            <source>{angle}° closer</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>{angle}° más juntos</translation>
        </message>
        <message>
            <source>{angle}° wider</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>{angle}° más separados</translation>
        </message>
        <message>
            <source>{mm} mm past</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>{mm} mm después</translation>
        </message>
        <message>
            <source>{mm} mm short</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>{mm} mm antes</translation>
        </message>
        <message>
            <source>off the engine</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>desmontada del motor</translation>
        </message>
        <message>
            <source>{fires}° (the wrong stroke)</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>{fires}° (el tiempo equivocado)</translation>
        </message>
        <message>
            <source>the attempt has not been handed in: until then nothing true is shown</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>el intento no se ha entregado: hasta entonces no se muestra nada verdadero</translation>
        </message>
        <message>
            <source>within {tolerance} mm</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>dentro de {tolerance} mm</translation>
        </message>
        <message>
            <source>sound</source>
            <extracomment>practice/debrief.py, practice/words.py, ui/class_editor_rows.py, ui/practice_notebook.py</extracomment>
            <translation>sano</translation>
        </message>
        <message>
            <source>Disc at top dead centre of No. 1</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>Disco en el punto muerto superior del n.º 1</translation>
        </message>
        <message>
            <source>to be allowed for</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>hay que contar con ello</translation>
        </message>
        <message>
            <source>{wanted}° within {allowed}°</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>{wanted}° ± {allowed}°</translation>
        </message>
        <message>
            <source>taken up with rotation</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>absorbido en sentido de giro</translation>
        </message>
        <message>
            <source>the lock screw was tightened</source>
            <extracomment>practice/evidence.py</extracomment>
            <translation>apretarse el tornillo de bloqueo</translation>
        </message>
        <message>
            <source>the clamp screws were tightened</source>
            <extracomment>practice/evidence.py</extracomment>
            <translation>apretarse los tornillos de sujeción</translation>
        </message>
        <message>
            <source>the contacts were dressed</source>
            <extracomment>practice/evidence.py</extracomment>
            <translation>repasarse los contactos</translation>
        </message>
        <message>
            <source>the backplate was turned</source>
            <extracomment>practice/evidence.py</extracomment>
            <translation>girarse la placa base</translation>
        </message>
        <message>
            <source>the contact screw was turned</source>
            <extracomment>practice/evidence.py</extracomment>
            <translation>girarse el tornillo de contacto</translation>
        </message>
        <message>
            <source>took the magneto off with no marks across its coupling</source>
            <extracomment>practice/evidence.py</extracomment>
            <translation>desmontó la magneto sin marcas en su acoplamiento</translation>
        </message>
        <message>
            <source>turned the propeller with a live magneto and the spark plugs in</source>
            <extracomment>practice/evidence.py</extracomment>
            <translation>giró la hélice con una magneto viva y las bujías puestas</translation>
        </message>
        <message>
            <source>a tooth was moved</source>
            <extracomment>practice/evidence.py</extracomment>
            <translation>moverse un diente</translation>
        </message>
        <message>
            <source>the magneto was refitted</source>
            <extracomment>practice/evidence.py</extracomment>
            <translation>remontarse la magneto</translation>
        </message>
        <message>
            <source>turned the propeller, plugs in, without proving that the switch grounds</source>
            <extracomment>practice/evidence.py</extracomment>
            <translation>giró la hélice, bujías puestas, sin comprobar que el interruptor pone a masa</translation>
        </message>
        <message>
            <source>rotor degrees, positive = opens late</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>grados de rotor, positivo = abre tarde</translation>
        </message>
        <message>
            <source>millimetres, positive = too wide; it opens at the E-gap all the same</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>milímetros, positivo = demasiado grande; aun así abre en el E-gap</translation>
        </message>
        <message>
            <source>degrees the plate is off, positive with cam rotation</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>grados de desviación de la placa, positivo en el sentido de la leva</translation>
        </message>
        <message>
            <source>degrees the contact screw goes along with its lock screw, positive = contacts closer</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>grados que el tornillo de contacto sigue al de bloqueo, positivo = contactos más juntos</translation>
        </message>
        <message>
            <source>millimetres one lobe lifts less</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>milímetros que un lóbulo alza de menos</translation>
        </message>
        <message>
            <source>millimetres of pip on the contacts</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>milímetros de punta en los contactos</translation>
        </message>
        <message>
            <source>rotor degrees of play in the coupling</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>grados de rotor de juego en el acoplamiento</translation>
        </message>
        <message>
            <source>whole teeth at the magneto flange, positive = fires early</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>dientes enteros en la brida de la magneto, positivo = enciende pronto</translation>
        </message>
        <message>
            <source>whole teeth at the drive flange, positive = fires early</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>dientes enteros en la brida motriz, positivo = enciende pronto</translation>
        </message>
        <message>
            <source>whole vernier steps, positive = fires early</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>pasos de nonio enteros, positivo = enciende pronto</translation>
        </message>
        <message>
            <source>crank degrees the disc reads at top dead centre</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>grados de cigüeñal que marca el disco en el punto muerto superior</translation>
        </message>
        <message>
            <source>size is [{low}, {high}]; it must run upwards from 0 or more (way gives the sign)</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>size es [{low}, {high}]; debe ir en aumento desde 0 o más (way da el signo)</translation>
        </message>
        <message>
            <source>among is for kind lead, which needs it: a list of sound, broken, shorted, tab</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>among es para kind lead, que lo necesita: una lista de sound, broken, shorted, tab</translation>
        </message>
        <message>
            <source>way of {kind} must be left out or "plus"</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>way de {kind} debe omitirse o ser "plus"</translation>
        </message>
        <message>
            <source>reading is for goal "reading", which needs it</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>reading es para goal "reading", que lo necesita</translation>
        </message>
        <message>
            <source>within is for a reading in numbers, which needs it</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>within es para una lectura en números, que lo necesita</translation>
        </message>
        <message>
            <source>magneto or installation: an exercise has one of the two</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>magneto o installation: un ejercicio tiene una de las dos</translation>
        </message>
        <message>
            <source>both_sides needs an installation with two magnetos</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>both_sides necesita una instalación con dos magnetos</translation>
        </message>
        <message>
            <source>faults[{i}]</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>faults[{i}]</translation>
        </message>
        <message>
            <source>goals[{i}]</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>goals[{i}]</translation>
        </message>
        <message>
            <source>goals: synchronised needs both_sides</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>goals: synchronised necesita both_sides</translation>
        </message>
        <message>
            <source>faults has {twice} twice; give each kind once for a magneto</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>faults tiene {twice} dos veces; dé cada tipo una vez por magneto</translation>
        </message>
        <message>
            <source>size of {kind} ends at {high}; it must be above 0 and at most {most} ({unit})</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>size de {kind} acaba en {high}; debe ser mayor que 0 y como mucho {most} ({unit})</translation>
        </message>
        <message>
            <source>size of {kind} is [{low}, {high}]; it must be whole numbers</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>size de {kind} es [{low}, {high}]; deben ser números enteros</translation>
        </message>
        <message>
            <source>size is not for {kind}, which is there or is not</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>size no es para {kind}, que está o no está</translation>
        </message>
        <message>
            <source>{what}.side is {side}, a magneto this exercise does not have</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>{what}.side es {side}, una magneto que este ejercicio no tiene</translation>
        </message>
        <message>
            <source>faults[{i}].lobe is {lobe}; the cam has {lobes}</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>faults[{i}].lobe es {lobe}; la leva tiene {lobes}</translation>
        </message>
        <message>
            <source>faults[{i}].kind is {kind}, which needs an installation</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>faults[{i}].kind es {kind}, que necesita una instalación</translation>
        </message>
        <message>
            <source>goals[{i}] is {goal} of an engine, which needs an installation</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>goals[{i}] es {goal} de un motor, que necesita una instalación</translation>
        </message>
        <message>
            <source>the seed is {seed}; it must be a whole number from 0 to {most}</source>
            <extracomment>practice/faults.py</extracomment>
            <translation>la semilla es {seed}; debe ser un número entero de 0 a {most}</translation>
        </message>
        <message>
            <source>lobe-low takes {lobe_low} mm off a lobe that lifts {top_lift} mm</source>
            <extracomment>practice/faults.py</extracomment>
            <translation>lobe-low quita {lobe_low} mm a un lóbulo que alza {top_lift} mm</translation>
        </message>
        <message>
            <source>{name} cannot be set for a gap of {wanted} mm: {reason}</source>
            <extracomment>practice/faults.py</extracomment>
            <translation>{name} no se puede ajustar a una apertura de {wanted} mm: {reason}</translation>
        </message>
        <message>
            <source>blades on both sides of the limits were tried on every lobe after the last change</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>se probaron galgas a ambos lados de los límites en cada lóbulo tras el último cambio</translation>
        </message>
        <message>
            <source>blades on both sides of the limits were not tried on every lobe after {why}</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>no se probaron galgas a ambos lados de los límites en cada lóbulo tras {why}</translation>
        </message>
        <message>
            <source>blades on both sides of the limits were not tried on every lobe</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>no se probaron galgas a ambos lados de los límites en cada lóbulo</translation>
        </message>
        <message>
            <source>blades on both sides of the limits were tried on a lobe after the last change</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>se probaron galgas a ambos lados de los límites en un lóbulo tras el último cambio</translation>
        </message>
        <message>
            <source>blades on both sides of the limits were not tried on a lobe after {why}</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>no se probaron galgas a ambos lados de los límites en un lóbulo tras {why}</translation>
        </message>
        <message>
            <source>blades on both sides of the limits were not tried on a lobe</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>no se probaron galgas a ambos lados de los límites en un lóbulo</translation>
        </message>
        <message>
            <source>fires {error}° of crank early, {allowed}° are allowed</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>enciende {error}° de cigüeñal pronto, se admiten {allowed}°</translation>
        </message>
        <message>
            <source>fires {error}° of crank early, {allowed}° are allowed: on the wrong stroke</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>enciende {error}° de cigüeñal pronto, se admiten {allowed}°: en el tiempo equivocado</translation>
        </message>
        <message>
            <source>fires {error}° of crank late, {allowed}° are allowed</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>enciende {error}° de cigüeñal tarde, se admiten {allowed}°</translation>
        </message>
        <message>
            <source>fires {error}° of crank late, {allowed}° are allowed: on the wrong stroke</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>enciende {error}° de cigüeñal tarde, se admiten {allowed}°: en el tiempo equivocado</translation>
        </message>
        <message>
            <source>{magneto}: coupling marked before it was taken apart</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>{magneto}: acoplamiento marcado antes de desmontar</translation>
        </message>
        <message>
            <source>{magneto}: closed up</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>{magneto}: cerrada</translation>
        </message>
        <message>
            <source>the edge stands {offset} mm from the mark, {allowed} mm are allowed</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>el canto está a {offset} mm de la marca, se admiten {allowed} mm</translation>
        </message>
        <message>
            <source>the rotor stands near no mark</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>el rotor no está cerca de ninguna marca</translation>
        </message>
        <message>
            <source>the straightedge lay on it, looked at square</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>la regla estaba puesta, mirada a escuadra</translation>
        </message>
        <message>
            <source>the straightedge was not looked at square there</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>ahí la regla no se miró a escuadra</translation>
        </message>
        <message>
            <source>Rotor at the E-gap</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>Rotor en el E-gap</translation>
        </message>
        <message>
            <source>opens {worst} mm from the mark, {allowed} mm are allowed</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>abre a {worst} mm de la marca, se admiten {allowed} mm</translation>
        </message>
        <message>
            <source>{magneto}: contacts open at the mark</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>{magneto}: los contactos abren en la marca</translation>
        </message>
        <message>
            <source>The largest gap is {span}, limits {low} to {high}; {how}.</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>La apertura máxima es {span}, límites {low} a {high}; {how}.</translation>
        </message>
        <message>
            <source>{low} to {high} over the lobes</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>{low} a {high} en los lóbulos</translation>
        </message>
        <message>
            <source>The contacts are clean</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>Los contactos están limpios</translation>
        </message>
        <message>
            <source>A pip of {pip} stands on the contacts</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>Hay una punta de {pip} en los contactos</translation>
        </message>
        <message>
            <source>they were looked at</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>se miraron</translation>
        </message>
        <message>
            <source>they were not looked at as they are now</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>no se miraron tal como están ahora</translation>
        </message>
        <message>
            <source>Contacts clean and flat</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>Contactos limpios y planos</translation>
        </message>
        <message>
            <source>the piston met its stop from both sides</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>el pistón tocó su tope por ambos lados</translation>
        </message>
        <message>
            <source>the stop was not met from both sides</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>no se tocó el tope por ambos lados</translation>
        </message>
        <message>
            <source>Crank disc at zero</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>Disco del cigüeñal a cero</translation>
        </message>
        <message>
            <source>The disc reads {error}° at top dead centre, {allowed}° are allowed; {how}.</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>El disco marca {error}° en el punto muerto superior, se admiten {allowed}°; {how}.</translation>
        </message>
        <message>
            <source>the magneto is off the engine, or never opens</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>la magneto está desmontada del motor o nunca abre</translation>
        </message>
        <message>
            <source>{magneto}: timed to the engine</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>{magneto}: calada al motor</translation>
        </message>
        <message>
            <source>both were read with lamp and disc after the last change</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>ambas se leyeron con lámpara y disco tras el último cambio</translation>
        </message>
        <message>
            <source>not both were read after the last change</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>no se leyeron ambas tras el último cambio</translation>
        </message>
        <message>
            <source>left and right are {apart}° apart, {allowed}° are allowed</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>izquierda y derecha distan {apart}°, se admiten {allowed}°</translation>
        </message>
        <message>
            <source>one does not fire</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>una no enciende</translation>
        </message>
        <message>
            <source>Left and right together</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>Izquierda y derecha juntas</translation>
        </message>
        <message>
            <source>the meter with the switch off and on</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>el medidor con el interruptor en OFF y en ON</translation>
        </message>
        <message>
            <source>proved by {checks}</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>comprobado por {checks}</translation>
        </message>
        <message>
            <source>not proved by {checks}</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>no comprobado por {checks}</translation>
        </message>
        <message>
            <source>The switch lead is sound</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>El cable de masa está sano</translation>
        </message>
        <message>
            <source>{magneto}: switch lead sound</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>{magneto}: cable de masa sano</translation>
        </message>
        <message>
            <source>Marks were painted first.</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>Se pintaron marcas antes.</translation>
        </message>
        <message>
            <source>It was taken apart with no marks painted across it.</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>Se desmontó sin marcas pintadas de lado a lado.</translation>
        </message>
        <message>
            <source>lock screw tight</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>tornillo de bloqueo apretado</translation>
        </message>
        <message>
            <source>clamp screws tight</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>tornillos de sujeción apretados</translation>
        </message>
        <message>
            <source>Everything is closed up.</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>Todo está cerrado.</translation>
        </message>
        <message>
            <source>Not so: {missing}.</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>No está: {missing}.</translation>
        </message>
        <message>
            <source>checked by lamp and straightedge, looked at square, after the last change</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>comprobado con lámpara y regla, mirada a escuadra, tras el último cambio</translation>
        </message>
        <message>
            <source>checked only with the eye to one side of the straightedge</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>comprobado solo con el ojo a un lado de la regla</translation>
        </message>
        <message>
            <source>never checked by lamp and straightedge, looked at square</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>nunca comprobado con lámpara y regla, mirada a escuadra</translation>
        </message>
        <message>
            <source>{magneto}: largest gap within limits on every lobe</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>{magneto}: apertura máxima dentro de límites en cada lóbulo</translation>
        </message>
        <message>
            <source>{magneto}: largest gap within limits</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>{magneto}: apertura máxima dentro de límites</translation>
        </message>
        <message>
            <source>the disc's zero was never found by the stop from both sides</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>el cero del disco nunca se halló con el tope por ambos lados</translation>
        </message>
        <message>
            <source>checked by lamp and disc, approached with rotation, after the last change</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>comprobado con lámpara y disco, llegando en sentido de giro, tras el último cambio</translation>
        </message>
        <message>
            <source>checked only approached against rotation, with the play on the wrong side</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>comprobado solo llegando contra el giro, con el juego en el lado equivocado</translation>
        </message>
        <message>
            <source>never checked by lamp and disc, approached with rotation</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>nunca comprobado con lámpara y disco, llegando en sentido de giro</translation>
        </message>
        <message>
            <source>the lamp lighting</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>la lámpara al encenderse</translation>
        </message>
        <message>
            <source>the lamp staying dark with the plug out</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>la lámpara que sigue apagada con la clavija fuera</translation>
        </message>
        <message>
            <source>The coupling was not taken apart and is marked.</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>El acoplamiento no se desmontó y está marcado.</translation>
        </message>
        <message>
            <source>The coupling was not taken apart, and not marked either.</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>El acoplamiento no se desmontó, ni tampoco se marcó.</translation>
        </message>
        <message>
            <source>magneto on the engine</source>
            <extracomment>practice/goals.py, practice/seen.py, ui/class_editor_fields.py</extracomment>
            <translation>magneto en el motor</translation>
        </message>
        <message>
            <source>nuts tight</source>
            <extracomment>practice/goals.py, practice/seen.py</extracomment>
            <translation>tuercas apretadas</translation>
        </message>
        <message>
            <source>pin out</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>pasador fuera</translation>
        </message>
        <message>
            <source>paper out</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>papel fuera</translation>
        </message>
        <message>
            <source>plug in</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>clavija puesta</translation>
        </message>
        <message>
            <source>piston stop out</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>tope de pistón fuera</translation>
        </message>
        <message>
            <source>not checked again after {why}</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>no comprobado de nuevo tras {why}</translation>
        </message>
        <message>
            <source>the primary is shorted inside</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>el primario está en corto por dentro</translation>
        </message>
        <message>
            <source>{angle}° before the disc's zero</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>{angle}° antes del cero del disco</translation>
        </message>
        <message>
            <source>{angle}° after the disc's zero</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>{angle}° después del cero del disco</translation>
        </message>
        <message>
            <source>nearest to No. {cylinder}</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>más cerca del n.º {cylinder}</translation>
        </message>
        <message>
            <source>not connected</source>
            <extracomment>practice/instruments.py, ui/debrief_view.py, ui/practice_sight.py</extracomment>
            <translation>sin conectar</translation>
        </message>
        <message>
            <source>not laid on</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>no puesta</translation>
        </message>
        <message>
            <source>no mark near the edge</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>ninguna marca cerca del canto</translation>
        </message>
        <message>
            <source>in line with the mark (mark {mark})</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>alineada con la marca (marca {mark})</translation>
        </message>
        <message>
            <source>in line with the mark</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>alineada con la marca</translation>
        </message>
        <message>
            <source>{size} {unit} past the mark (mark {mark})</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>{size} {unit} después de la marca (marca {mark})</translation>
        </message>
        <message>
            <source>{size} {unit} past the mark</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>{size} {unit} después de la marca</translation>
        </message>
        <message>
            <source>{size} {unit} short of the mark (mark {mark})</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>{size} {unit} antes de la marca (marca {mark})</translation>
        </message>
        <message>
            <source>{size} {unit} short of the mark</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>{size} {unit} antes de la marca</translation>
        </message>
        <message>
            <source>“{kind}” is not a set of blades; there are {known}</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>«{kind}» no es un juego de galgas; hay {known}</translation>
        </message>
        <message>
            <source>{blades} blades cannot be held together; take 1 to {most}</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>{blades} galgas no se pueden sujetar juntas; tome de 1 a {most}</translation>
        </message>
        <message>
            <source>no-go</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>no pasa</translation>
        </message>
        <message>
            <source>drag</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>roza</translation>
        </message>
        <message>
            <source>go</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>pasa</translation>
        </message>
        <message>
            <source>a pip stands on one contact, a pit in the other</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>hay una punta en un contacto y un cráter en el otro</translation>
        </message>
        <message>
            <source>no disc on the crank</source>
            <extracomment>practice/instruments.py, ui/debrief_view.py</extracomment>
            <translation>sin disco en el cigüeñal</translation>
        </message>
        <message>
            <source>with the plug in, the meter sees lead and coil at once: pull the plug first</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>con la clavija puesta, el medidor ve cable y bobina a la vez: saque antes la clavija</translation>
        </message>
        <message>
            <source>no distributor on the bench</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>sin distribuidor en el banco</translation>
        </message>
        <message>
            <source>the spark plug is in its hole: take the plugs out first</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>la bujía está en su agujero: saque antes las bujías</translation>
        </message>
        <message>
            <source>pressure: No. 1 is on compression</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>presión: n.º 1 en compresión</translation>
        </message>
        <message>
            <source>no pressure</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>sin presión</translation>
        </message>
        <message>
            <source>light</source>
            <extracomment>practice/instruments.py, ui/practice_sight.py</extracomment>
            <translation>encendida</translation>
        </message>
        <message>
            <source>dark</source>
            <extracomment>practice/instruments.py, ui/practice_sight.py</extracomment>
            <translation>apagada</translation>
        </message>
        <message>
            <source>the {kind} set has no blade {blade} left to take</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>al juego {kind} no le queda galga {blade}</translation>
        </message>
        <message>
            <source>a lesson is not handed in</source>
            <extracomment>practice/lesson.py</extracomment>
            <translation>una lección no se entrega</translation>
        </message>
        <message>
            <source>what is {what}; for {that} it must be {known}</source>
            <extracomment>practice/lesson.py</extracomment>
            <translation>what es {what}; para {that} debe ser {known}</translation>
        </message>
        <message>
            <source>{name} is missing, which {that} needs</source>
            <extracomment>practice/lesson.py</extracomment>
            <translation>falta {name}, que {that} necesita</translation>
        </message>
        <message>
            <source>{name} is not for {that}</source>
            <extracomment>practice/lesson.py</extracomment>
            <translation>{name} no es para {that}</translation>
        </message>
        <message>
            <source>the lamp light</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>la lámpara encendida</translation>
        </message>
        <message>
            <source>the lamp dark</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>la lámpara apagada</translation>
        </message>
        <message>
            <source>the lamp not connected</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>la lámpara sin conectar</translation>
        </message>
        <message>
            <source>the rotor at neutral</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>el rotor en neutro</translation>
        </message>
        <message>
            <source>the rotor at full register</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>el rotor en registro pleno</translation>
        </message>
        <message>
            <source>the rotor at the E-gap</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>el rotor en el E-gap</translation>
        </message>
        <message>
            <source>the contacts widest open</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>los contactos en su mayor apertura</translation>
        </message>
        <message>
            <source>the contact screw turned {angle}° closer or more</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>el tornillo de contacto girado {angle}° o más, más juntos</translation>
        </message>
        <message>
            <source>the contact screw turned {angle}° wider or more</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>el tornillo de contacto girado {angle}° o más, más separados</translation>
        </message>
        <message>
            <source>the backplate turned {angle}° with rotation or more</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>la placa base girada {angle}° o más en sentido de giro</translation>
        </message>
        <message>
            <source>the backplate turned {angle}° against rotation or more</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>la placa base girada {angle}° o más contra el giro</translation>
        </message>
        <message>
            <source>what an instrument says</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>lo que dice un instrumento</translation>
        </message>
        <message>
            <source>the rotor to be let go</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>el rotor suelto</translation>
        </message>
        <message>
            <source>the lamp across the contacts</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>la lámpara entre los contactos</translation>
        </message>
        <message>
            <source>the lamp taken off</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>la lámpara retirada</translation>
        </message>
        <message>
            <source>the lamp to go from dark to light while you turn with rotation</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>que la lámpara pase de apagada a encendida al girar en sentido de giro</translation>
        </message>
        <message>
            <source>the straightedge laid on and looked at square</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>la regla puesta y mirada a escuadra</translation>
        </message>
        <message>
            <source>the eye away from square</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>el ojo fuera de escuadra</translation>
        </message>
        <message>
            <source>the lock screw tight</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>el tornillo de bloqueo apretado</translation>
        </message>
        <message>
            <source>the lock screw slack</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>el tornillo de bloqueo flojo</translation>
        </message>
        <message>
            <source>the clamp screws tight</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>los tornillos de sujeción apretados</translation>
        </message>
        <message>
            <source>the clamp screws slack</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>los tornillos de sujeción flojos</translation>
        </message>
        <message>
            <source>the contacts to open at the mark</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>que los contactos abran en la marca</translation>
        </message>
        <message>
            <source>the largest gap within its limits</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>la apertura máxima dentro de sus límites</translation>
        </message>
        <message>
            <source>the switch on</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>el interruptor en ON</translation>
        </message>
        <message>
            <source>the switch off</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>el interruptor en OFF</translation>
        </message>
        <message>
            <source>the plug pulled out</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>la clavija fuera</translation>
        </message>
        <message>
            <source>the plug in</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>la clavija puesta</translation>
        </message>
        <message>
            <source>chocks at the wheels</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>calzos en las ruedas</translation>
        </message>
        <message>
            <source>the chocks away</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>los calzos quitados</translation>
        </message>
        <message>
            <source>the spark plugs out</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>las bujías fuera</translation>
        </message>
        <message>
            <source>the spark plugs in</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>las bujías puestas</translation>
        </message>
        <message>
            <source>the lead proved: meter, plug out, switch off</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>el cable comprobado: medidor, clavija fuera, interruptor en OFF</translation>
        </message>
        <message>
            <source>the piston stop in</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>el tope de pistón puesto</translation>
        </message>
        <message>
            <source>the piston stop out</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>el tope de pistón fuera</translation>
        </message>
        <message>
            <source>the disc to read zero at top dead centre</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>que el disco marque cero en el punto muerto superior</translation>
        </message>
        <message>
            <source>marks painted across the coupling</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>marcas pintadas en el acoplamiento</translation>
        </message>
        <message>
            <source>the nuts tight</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>las tuercas apretadas</translation>
        </message>
        <message>
            <source>the nuts off</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>las tuercas fuera</translation>
        </message>
        <message>
            <source>the magneto on the engine</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>la magneto en el motor</translation>
        </message>
        <message>
            <source>the magneto off the engine</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>la magneto desmontada del motor</translation>
        </message>
        <message>
            <source>it to fire where it should</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>que encienda donde debe</translation>
        </message>
        <message>
            <source>the answer “{answer}”</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>la respuesta «{answer}»</translation>
        </message>
        <message>
            <source>the lamp to be watched all the way round</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>que se observe la lámpara en toda la vuelta</translation>
        </message>
        <message>
            <source>what the meter says</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>lo que dice el medidor</translation>
        </message>
        <message>
            <source>That is the {part}; to click on it does nothing here. The step waits for {wanted}.</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>Eso es: {part}; hacer clic ahí no hace nada aquí. El paso espera: {wanted}.</translation>
        </message>
        <message>
            <source>That is the {part}. The step waits for {wanted}.</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>Eso es: {part}. El paso espera: {wanted}.</translation>
        </message>
        <message>
            <source>That undid {undone}. The step waits for {wanted}.</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>Eso deshizo: {undone}. El paso espera: {wanted}.</translation>
        </message>
        <message>
            <source>Not yet. The step waits for {wanted}.</source>
            <extracomment>practice/lesson_words.py, ui/lesson_view.py</extracomment>
            <translation>Aún no. El paso espera: {wanted}.</translation>
        </message>
        <message>
            <source>Step {step}: so already.</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>Paso {step}: ya está así.</translation>
        </message>
        <message>
            <source>Step {step}: done.</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>Paso {step}: hecho.</translation>
        </message>
        <message>
            <source>the {part} to be pointed at</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>que se señale: {part}</translation>
        </message>
        <message>
            <source>this to be done: {act}</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>que se haga esto: {act}</translation>
        </message>
        <message>
            <source>the crank {value}° before top dead centre</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>el cigüeñal {value}° antes del punto muerto superior</translation>
        </message>
        <message>
            <source>a line in the notebook: {act}</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>una línea en el cuaderno: {act}</translation>
        </message>
        <message>
            <source>the piston to meet the stop with rotation</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>que el pistón toque el tope en sentido de giro</translation>
        </message>
        <message>
            <source>the piston to meet the stop against rotation</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>que el pistón toque el tope contra el giro</translation>
        </message>
        <message>
            <source>“{name}” is neither a file nor one of the shipped exercises: {known}</source>
            <extracomment>practice/library.py</extracomment>
            <translation>«{name}» no es ni un archivo ni uno de los ejercicios incluidos: {known}</translation>
        </message>
        <message>
            <source>“{name}” is neither a file nor one of the shipped lessons: {known}</source>
            <extracomment>practice/library.py</extracomment>
            <translation>«{name}» no es ni un archivo ni una de las lecciones incluidas: {known}</translation>
        </message>
        <message>
            <source>{file}: {field} is “{given}”; it must be a file's path or one of {known}</source>
            <extracomment>practice/library.py</extracomment>
            <translation>{file}: {field} es «{given}»; debe ser la ruta de un archivo o uno de {known}</translation>
        </message>
        <message>
            <source>handed in with the lock screw slack</source>
            <extracomment>practice/marking.py</extracomment>
            <translation>entregado con el tornillo de bloqueo flojo</translation>
        </message>
        <message>
            <source>handed in with the clamp screws slack</source>
            <extracomment>practice/marking.py</extracomment>
            <translation>entregado con los tornillos de sujeción flojos</translation>
        </message>
        <message>
            <source>handed in with the nuts slack</source>
            <extracomment>practice/marking.py</extracomment>
            <translation>entregado con las tuercas flojas</translation>
        </message>
        <message>
            <source>handed in with the lock screw and the clamp screws slack</source>
            <extracomment>practice/marking.py</extracomment>
            <translation>entregado con el tornillo de bloqueo y los de sujeción flojos</translation>
        </message>
        <message>
            <source>handed in with the lock screw and the nuts slack</source>
            <extracomment>practice/marking.py</extracomment>
            <translation>entregado con el tornillo de bloqueo y las tuercas flojos</translation>
        </message>
        <message>
            <source>handed in with the clamp screws and the nuts slack</source>
            <extracomment>practice/marking.py</extracomment>
            <translation>entregado con los tornillos de sujeción y las tuercas flojos</translation>
        </message>
        <message>
            <source>handed in with the lock screw and the clamp screws and the nuts slack</source>
            <extracomment>practice/marking.py</extracomment>
            <translation>entregado con el tornillo de bloqueo, los de sujeción y las tuercas flojos</translation>
        </message>
        <message>
            <source>Not passed: {danger}.</source>
            <extracomment>practice/marking.py</extracomment>
            <translation>No aprobado: {danger}.</translation>
        </message>
        <message>
            <source>Not passed: {percent} % of the marks, and {pass_percent} % are needed.</source>
            <extracomment>practice/marking.py</extracomment>
            <translation>No aprobado: {percent} % de los puntos, y se necesita {pass_percent} %.</translation>
        </message>
        <message>
            <source>Passed with {percent} %.</source>
            <extracomment>practice/marking.py</extracomment>
            <translation>Aprobado con {percent} %.</translation>
        </message>
        <message>
            <source>the rotor is held at the E-gap, the straightedge on it and looked at square</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>el rotor está sujeto en el E-gap, con la regla puesta y mirada a escuadra</translation>
        </message>
        <message>
            <source>the contacts open at the mark, seen by lamp and straightedge</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>los contactos abren en la marca, visto con lámpara y regla</translation>
        </message>
        <message>
            <source>the largest gap is within its limits, measured with blades</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>la apertura máxima está dentro de sus límites, medida con galgas</translation>
        </message>
        <message>
            <source>the contacts are clean and flat, and were looked at</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>los contactos están limpios y planos, y se miraron</translation>
        </message>
        <message>
            <source>the disc reads zero at No. 1's top dead centre, found from both sides</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>el disco marca cero en el punto muerto superior del n.º 1, hallado por ambos lados</translation>
        </message>
        <message>
            <source>it fires where it should, read by lamp and disc with rotation</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>enciende donde debe, leído con lámpara y disco en sentido de giro</translation>
        </message>
        <message>
            <source>both magnetos fire together within what is allowed</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>ambas magnetos encienden juntas dentro de lo admitido</translation>
        </message>
        <message>
            <source>the switch lead is sound and proved</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>el cable de masa está sano y comprobado</translation>
        </message>
        <message>
            <source>the coupling was marked before it was taken apart</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>el acoplamiento se marcó antes de desmontarlo</translation>
        </message>
        <message>
            <source>every screw and nut is tight, the plug in, the switch off</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>cada tornillo y tuerca apretados, la clavija puesta, el interruptor en OFF</translation>
        </message>
        <message>
            <source>the rotor is held at the E-gap, the straightedge on it and looked at square, on every lobe</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>el rotor está sujeto en el E-gap, con la regla puesta y mirada a escuadra, en cada lóbulo</translation>
        </message>
        <message>
            <source>the contacts open at the mark, seen by lamp and straightedge, on every lobe</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>los contactos abren en la marca, visto con lámpara y regla, en cada lóbulo</translation>
        </message>
        <message>
            <source>the largest gap is within its limits, measured with blades, on every lobe</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>la apertura máxima está dentro de sus límites, medida con galgas, en cada lóbulo</translation>
        </message>
        <message>
            <source>the contacts are clean and flat, and were looked at, on every lobe</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>los contactos están limpios y planos, y se miraron, en cada lóbulo</translation>
        </message>
        <message>
            <source>the disc reads zero at No. 1's top dead centre, found from both sides, on every lobe</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>el disco marca cero en el punto muerto superior del n.º 1, hallado por ambos lados, en cada lóbulo</translation>
        </message>
        <message>
            <source>it fires where it should, read by lamp and disc with rotation, on every lobe</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>enciende donde debe, leído con lámpara y disco en sentido de giro, en cada lóbulo</translation>
        </message>
        <message>
            <source>both magnetos fire together within what is allowed, on every lobe</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>ambas magnetos encienden juntas dentro de lo admitido, en cada lóbulo</translation>
        </message>
        <message>
            <source>the switch lead is sound and proved, on every lobe</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>el cable de masa está sano y comprobado, en cada lóbulo</translation>
        </message>
        <message>
            <source>the coupling was marked before it was taken apart, on every lobe</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>el acoplamiento se marcó antes de desmontarlo, en cada lóbulo</translation>
        </message>
        <message>
            <source>every screw and nut is tight, the plug in, the switch off, on every lobe</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>cada tornillo y tuerca apretados, la clavija puesta, el interruptor en OFF, en cada lóbulo</translation>
        </message>
        <message>
            <source>written down: how far past the mark the contacts open</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>anotado: cuánto después de la marca abren los contactos</translation>
        </message>
        <message>
            <source>written down: the largest gap</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>anotado: la apertura máxima</translation>
        </message>
        <message>
            <source>written down: where it fires before top dead centre</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>anotado: dónde enciende antes del punto muerto superior</translation>
        </message>
        <message>
            <source>written down: what the disc reads at top dead centre</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>anotado: qué marca el disco en el punto muerto superior</translation>
        </message>
        <message>
            <source>written down: what the switch lead suffers from</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>anotado: qué le pasa al cable de masa</translation>
        </message>
        <message>
            <source>eccentric, {size} mm throw; clockwise brings the contacts closer</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>excéntrica, {size} mm de excentricidad; en sentido horario junta los contactos</translation>
        </message>
        <message>
            <source>eccentric, {size} mm throw; anticlockwise brings the contacts closer</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>excéntrica, {size} mm de excentricidad; en sentido antihorario junta los contactos</translation>
        </message>
        <message>
            <source>threaded, {size} mm a turn; clockwise brings the contacts closer</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>roscado, {size} mm por vuelta; en sentido horario junta los contactos</translation>
        </message>
        <message>
            <source>threaded, {size} mm a turn; anticlockwise brings the contacts closer</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>roscado, {size} mm por vuelta; en sentido antihorario junta los contactos</translation>
        </message>
        <message>
            <source>{goal}, left magneto</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>{goal}, magneto izquierda</translation>
        </message>
        <message>
            <source>{goal}, right magneto</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>{goal}, magneto derecha</translation>
        </message>
        <message>
            <source>{angle}° (left)</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>{angle}° (izquierda)</translation>
        </message>
        <message>
            <source>{angle}° (right)</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>{angle}° (derecha)</translation>
        </message>
        <message>
            <source>{reading}, within {within}</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>{reading}, dentro de {within}</translation>
        </message>
        <message>
            <source>{e_gap}° of rotor past neutral</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>{e_gap}° de rotor tras el neutro</translation>
        </message>
        <message>
            <source>Rim mark</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>Marca del borde</translation>
        </message>
        <message>
            <source>within {tolerance} mm, at {radius} mm radius</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>dentro de {tolerance} mm, a {radius} mm de radio</translation>
        </message>
        <message>
            <source>{name}; No. 1 fires {fires} before top dead centre</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>{name}; el n.º 1 enciende {fires} antes del punto muerto superior</translation>
        </message>
        <message>
            <source>Allowed</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>Admitido</translation>
        </message>
        <message>
            <source>{tolerance}° of crank</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>{tolerance}° de cigüeñal</translation>
        </message>
        <message>
            <source>Coupling</source>
            <extracomment>practice/paper.py, ui/plot_coupling.py, ui/plot_pane.py</extracomment>
            <translation>Acoplamiento</translation>
        </message>
        <message>
            <source>{magneto_teeth} teeth at the magneto, {drive_teeth} at the drive</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>{magneto_teeth} dientes en la magneto, {drive_teeth} en el accionamiento</translation>
        </message>
        <message>
            <source>Rotor</source>
            <extracomment>practice/paper.py, ui/lift_dialog.py, ui/setting_panel.py</extracomment>
            <translation>Rotor</translation>
        </message>
        <message>
            <source>{turns} turns a turn of the crank</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>{turns} vueltas por vuelta de cigüeñal</translation>
        </message>
        <message>
            <source>clockwise seen from the breaker end</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>horario desde el lado del ruptor</translation>
        </message>
        <message>
            <source>anticlockwise seen from the breaker end</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>antihorario desde el lado del ruptor</translation>
        </message>
        <message>
            <source>{lobes}, unequally spaced</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>{lobes}, espaciado desigual</translation>
        </message>
        <message>
            <source>Together</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>Juntas</translation>
        </message>
        <message>
            <source>within {tolerance}° of one another</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>a menos de {tolerance}° una de otra</translation>
        </message>
        <message>
            <source>“{name}” is no predicate</source>
            <extracomment>practice/predicates.py</extracomment>
            <translation>«{name}» no es un predicado</translation>
        </message>
        <message>
            <source>Written: {value} {unit}; true: {truth}; {within} {unit} are allowed; {how}.</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>Escrito: {value} {unit}; real: {truth}; se admiten {within} {unit}; {how}.</translation>
        </message>
        <message>
            <source>Where the contacts open, as read, {magneto}</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>Dónde abren los contactos, leído, {magneto}</translation>
        </message>
        <message>
            <source>Largest gap, as read, {magneto}</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>Apertura máxima, leída, {magneto}</translation>
        </message>
        <message>
            <source>Firing, as read, {magneto}</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>Encendido, leído, {magneto}</translation>
        </message>
        <message>
            <source>The disc's zero, as read</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>El cero del disco, leído</translation>
        </message>
        <message>
            <source>What the switch lead suffers from, {magneto}</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>Qué le pasa al cable de masa, {magneto}</translation>
        </message>
        <message>
            <source>read with lamp and straightedge, looked at square before it was written</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>leído con lámpara y regla, mirada a escuadra, antes de escribirlo</translation>
        </message>
        <message>
            <source>not read with lamp and straightedge, looked at square before it was written</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>no leído con lámpara y regla, mirada a escuadra, antes de escribirlo</translation>
        </message>
        <message>
            <source>read with blades before it was written</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>leído con galgas antes de escribirlo</translation>
        </message>
        <message>
            <source>not read with blades before it was written</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>no leído con galgas antes de escribirlo</translation>
        </message>
        <message>
            <source>read with lamp, and a disc whose zero was found before it was written</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>leído con lámpara, y un disco de cero hallado, antes de escribirlo</translation>
        </message>
        <message>
            <source>not read with lamp, and a disc whose zero was found before it was written</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>no leído con lámpara, y un disco de cero hallado, antes de escribirlo</translation>
        </message>
        <message>
            <source>read with the stop from both sides before it was written</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>leído con el tope por ambos lados antes de escribirlo</translation>
        </message>
        <message>
            <source>not read with the stop from both sides before it was written</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>no leído con el tope por ambos lados antes de escribirlo</translation>
        </message>
        <message>
            <source>read with meter and lamp before it was written</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>leído con medidor y lámpara antes de escribirlo</translation>
        </message>
        <message>
            <source>not read with meter and lamp before it was written</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>no leído con medidor y lámpara antes de escribirlo</translation>
        </message>
        <message>
            <source>read with nothing before it was written</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>leído sin nada antes de escribirlo</translation>
        </message>
        <message>
            <source>not read with nothing before it was written</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>no leído con nada antes de escribirlo</translation>
        </message>
        <message>
            <source>It was not written down.</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>No se anotó.</translation>
        </message>
        <message>
            <source>Written: {text}; true: {truth}; {how}.</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>Escrito: {text}; real: {truth}; {how}.</translation>
        </message>
        <message>
            <source>There was nothing to read: the contacts never open; {how}.</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>No había nada que leer: los contactos nunca abren; {how}.</translation>
        </message>
        <message>
            <source>Code {seed}, {time} minutes.</source>
            <extracomment>practice/report.py</extracomment>
            <translation>Código {seed}, {time} minutos.</translation>
        </message>
        <message>
            <source>Dangerous acts</source>
            <extracomment>practice/report.py</extracomment>
            <translation>Acciones peligrosas</translation>
        </message>
        <message>
            <source>Marks</source>
            <extracomment>practice/report.py, ui/class_plots.py, ui/debrief_view.py, lessons/a-full-job.json</extracomment>
            <translation>Puntos</translation>
        </message>
        <message>
            <source>True values</source>
            <extracomment>practice/report.py, ui/debrief_view.py</extracomment>
            <translation>Valores reales</translation>
        </message>
        <message>
            <source>Own readings</source>
            <extracomment>practice/report.py, ui/debrief_view.py</extracomment>
            <translation>Lecturas propias</translation>
        </message>
        <message>
            <source>Time line</source>
            <extracomment>practice/report.py, ui/debrief_view.py</extracomment>
            <translation>Línea de tiempo</translation>
        </message>
        <message>
            <source>An efficient path</source>
            <extracomment>practice/report.py, ui/debrief_view.py</extracomment>
            <translation>Un camino eficiente</translation>
        </message>
        <message>
            <source>When</source>
            <extracomment>practice/report.py</extracomment>
            <translation>Cuándo</translation>
        </message>
        <message>
            <source>Times</source>
            <extracomment>practice/report.py</extracomment>
            <translation>Veces</translation>
        </message>
        <message>
            <source>Weight</source>
            <extracomment>practice/report.py</extracomment>
            <translation>Peso</translation>
        </message>
        <message>
            <source>Got</source>
            <extracomment>practice/report.py</extracomment>
            <translation>Logrado</translation>
        </message>
        <message>
            <source>Why</source>
            <extracomment>practice/report.py</extracomment>
            <translation>Por qué</translation>
        </message>
        <message>
            <source>Written</source>
            <extracomment>practice/report.py</extracomment>
            <translation>Escrito</translation>
        </message>
        <message>
            <source>True then</source>
            <extracomment>practice/report.py</extracomment>
            <translation>Real entonces</translation>
        </message>
        <message>
            <source>Danger</source>
            <extracomment>practice/report.py, ui/job_bars.py</extracomment>
            <translation>Peligro</translation>
        </message>
        <message>
            <source>lock screw tight, clamp screws tight</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>tornillo de bloqueo apretado, tornillos de sujeción apretados</translation>
        </message>
        <message>
            <source>lock screw tight, clamp screws slack</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>tornillo de bloqueo apretado, tornillos de sujeción flojos</translation>
        </message>
        <message>
            <source>lock screw slack, clamp screws tight</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>tornillo de bloqueo flojo, tornillos de sujeción apretados</translation>
        </message>
        <message>
            <source>lock screw slack, clamp screws slack</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>tornillo de bloqueo flojo, tornillos de sujeción flojos</translation>
        </message>
        <message>
            <source>plug in, paper under the spring tab; switch on</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>clavija puesta, papel bajo la lengüeta; interruptor en ON</translation>
        </message>
        <message>
            <source>plug in, paper under the spring tab; switch off</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>clavija puesta, papel bajo la lengüeta; interruptor en OFF</translation>
        </message>
        <message>
            <source>plug in; switch on</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>clavija puesta; interruptor en ON</translation>
        </message>
        <message>
            <source>plug in; switch off</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>clavija puesta; interruptor en OFF</translation>
        </message>
        <message>
            <source>plug pulled, paper under the spring tab; switch on</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>clavija fuera, papel bajo la lengüeta; interruptor en ON</translation>
        </message>
        <message>
            <source>plug pulled, paper under the spring tab; switch off</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>clavija fuera, papel bajo la lengüeta; interruptor en OFF</translation>
        </message>
        <message>
            <source>plug pulled; switch on</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>clavija fuera; interruptor en ON</translation>
        </message>
        <message>
            <source>plug pulled; switch off</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>clavija fuera; interruptor en OFF</translation>
        </message>
        <message>
            <source>turned {angle}° since you came</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>giro de {angle}° desde que usted llegó</translation>
        </message>
        <message>
            <source>turned {angle}° since you came (with rotation)</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>giro de {angle}° desde que usted llegó (en sentido de giro)</translation>
        </message>
        <message>
            <source>turned {angle}° since you came (against rotation)</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>giro de {angle}° desde que usted llegó (contra el giro)</translation>
        </message>
        <message>
            <source>turned {angle}° since you came (closer)</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>giro de {angle}° desde que usted llegó (más juntos)</translation>
        </message>
        <message>
            <source>turned {angle}° since you came (wider)</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>giro de {angle}° desde que usted llegó (más separados)</translation>
        </message>
        <message>
            <source>from {eye}° behind against rotation</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>desde {eye}° atrás, contra el giro</translation>
        </message>
        <message>
            <source>square over the edge</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>a escuadra sobre el canto</translation>
        </message>
        <message>
            <source>from {eye}° ahead with rotation</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>desde {eye}° delante, en sentido de giro</translation>
        </message>
        <message>
            <source>no marks to count by</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>sin marcas para contar</translation>
        </message>
        <message>
            <source>by the marks: magneto flange {i}, disc {j} teeth</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>según las marcas: brida de la magneto {i}, disco {j} dientes</translation>
        </message>
        <message>
            <source>the marks stand in line</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>las marcas están alineadas</translation>
        </message>
        <message>
            <source>wheels chocked</source>
            <extracomment>practice/seen.py, ui/class_editor_fields.py</extracomment>
            <translation>ruedas calzadas</translation>
        </message>
        <message>
            <source>no chocks</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>sin calzos</translation>
        </message>
        <message>
            <source>spark plugs in</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>bujías puestas</translation>
        </message>
        <message>
            <source>magneto off the engine</source>
            <extracomment>practice/seen.py, ui/drive_view.py</extracomment>
            <translation>magneto desmontada del motor</translation>
        </message>
        <message>
            <source>nuts off</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>tuercas fuera</translation>
        </message>
        <message>
            <source>coupling marked</source>
            <extracomment>practice/seen.py, ui/class_editor_fields.py</extracomment>
            <translation>acoplamiento marcado</translation>
        </message>
        <message>
            <source>no marks on the coupling</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>sin marcas en el acoplamiento</translation>
        </message>
        <message>
            <source>piston stop in No. 1</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>tope de pistón en el n.º 1</translation>
        </message>
        <message>
            <source>rotor pinned</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>rotor con pasador</translation>
        </message>
        <message>
            <source>lamp</source>
            <extracomment>practice/state.py</extracomment>
            <translation>lámpara</translation>
        </message>
        <message>
            <source>blades</source>
            <extracomment>practice/state.py</extracomment>
            <translation>galgas</translation>
        </message>
        <message>
            <source>meter</source>
            <extracomment>practice/state.py</extracomment>
            <translation>medidor</translation>
        </message>
        <message>
            <source>finger</source>
            <extracomment>practice/state.py</extracomment>
            <translation>dedo</translation>
        </message>
        <message>
            <source>thumb</source>
            <extracomment>practice/state.py</extracomment>
            <translation>pulgar</translation>
        </message>
        <message>
            <source>stop</source>
            <extracomment>practice/state.py</extracomment>
            <translation>tope</translation>
        </message>
        <message>
            <source>hand</source>
            <extracomment>practice/state.py</extracomment>
            <translation>mano</translation>
        </message>
        <message>
            <source>“{what}” is nothing to turn to: lamp, mark, widest or stop</source>
            <extracomment>practice/turning.py</extracomment>
            <translation>«{what}» no es algo hasta lo que girar: lamp, mark, widest o stop</translation>
        </message>
        <message>
            <source>the magneto is on the engine: turn the propeller, or lift it off</source>
            <extracomment>practice/turning.py</extracomment>
            <translation>la magneto está en el motor: gire la hélice o desmóntela</translation>
        </message>
        <message>
            <source>the rotor is pinned: take the pin out first</source>
            <extracomment>practice/turning.py</extracomment>
            <translation>el rotor tiene el pasador: sáquelo antes</translation>
        </message>
        <message>
            <source>there is no engine here: turn the rotor</source>
            <extracomment>practice/turning.py</extracomment>
            <translation>aquí no hay motor: gire el rotor</translation>
        </message>
        <message>
            <source>there is no disc on the crank to read</source>
            <extracomment>practice/turning.py</extracomment>
            <translation>no hay disco en el cigüeñal que leer</translation>
        </message>
        <message>
            <source>{value} is not a move a hand makes; it must lie within ±{most}</source>
            <extracomment>practice/turning.py</extracomment>
            <translation>{value} no es un movimiento que haga una mano; debe estar en ±{most}</translation>
        </message>
        <message>
            <source>no piston stop is fitted</source>
            <extracomment>practice/turning.py</extracomment>
            <translation>no hay tope de pistón puesto</translation>
        </message>
        <message>
            <source>clip the lamp across the contacts first</source>
            <extracomment>practice/turning.py</extracomment>
            <translation>conecte antes la lámpara entre los contactos</translation>
        </message>
        <message>
            <source>lay the straightedge along the cam's step first</source>
            <extracomment>practice/turning.py</extracomment>
            <translation>ponga antes la regla en el escalón de la leva</translation>
        </message>
        <message>
            <source>a magneto is drawn back from its drive: tighten its nuts before turning the propeller</source>
            <extracomment>practice/turning.py</extracomment>
            <translation>una magneto está retirada de su accionamiento: apriete sus tuercas antes de girar la hélice</translation>
        </message>
        <message>
            <source>a pin holds a magneto's rotor: take it out before turning the propeller</source>
            <extracomment>practice/turning.py</extracomment>
            <translation>un pasador sujeta el rotor de una magneto: sáquelo antes de girar la hélice</translation>
        </message>
        <message>
            <source>light all the way round</source>
            <extracomment>practice/turning.py</extracomment>
            <translation>encendida en toda la vuelta</translation>
        </message>
        <message>
            <source>dark all the way round</source>
            <extracomment>practice/turning.py</extracomment>
            <translation>apagada en toda la vuelta</translation>
        </message>
        <message>
            <source>the piston meets the stop</source>
            <extracomment>practice/turning.py</extracomment>
            <translation>el pistón toca el tope</translation>
        </message>
        <message>
            <source>turn the propeller with rotation until the lamp changes</source>
            <extracomment>practice/words.py</extracomment>
            <translation>girar la hélice en sentido de giro hasta que cambie la lámpara</translation>
        </message>
        <message>
            <source>turn the propeller against rotation until the lamp changes</source>
            <extracomment>practice/words.py</extracomment>
            <translation>girar la hélice contra el giro hasta que cambie la lámpara</translation>
        </message>
        <message>
            <source>turn the rotor with rotation until the lamp changes</source>
            <extracomment>practice/words.py</extracomment>
            <translation>girar el rotor en sentido de giro hasta que cambie la lámpara</translation>
        </message>
        <message>
            <source>turn the rotor against rotation until the lamp changes</source>
            <extracomment>practice/words.py</extracomment>
            <translation>girar el rotor contra el giro hasta que cambie la lámpara</translation>
        </message>
        <message>
            <source>turn the propeller with rotation until the straightedge comes in line</source>
            <extracomment>practice/words.py</extracomment>
            <translation>girar la hélice en sentido de giro hasta alinear la regla</translation>
        </message>
        <message>
            <source>turn the propeller against rotation until the straightedge comes in line</source>
            <extracomment>practice/words.py</extracomment>
            <translation>girar la hélice contra el giro hasta alinear la regla</translation>
        </message>
        <message>
            <source>turn the rotor with rotation until the straightedge comes in line</source>
            <extracomment>practice/words.py</extracomment>
            <translation>girar el rotor en sentido de giro hasta alinear la regla</translation>
        </message>
        <message>
            <source>turn the rotor against rotation until the straightedge comes in line</source>
            <extracomment>practice/words.py</extracomment>
            <translation>girar el rotor contra el giro hasta alinear la regla</translation>
        </message>
        <message>
            <source>turn the propeller with rotation until the contacts stand widest open</source>
            <extracomment>practice/words.py</extracomment>
            <translation>girar la hélice en sentido de giro hasta la mayor apertura de los contactos</translation>
        </message>
        <message>
            <source>turn the propeller against rotation until the contacts stand widest open</source>
            <extracomment>practice/words.py</extracomment>
            <translation>girar la hélice contra el giro hasta la mayor apertura de los contactos</translation>
        </message>
        <message>
            <source>turn the rotor with rotation until the contacts stand widest open</source>
            <extracomment>practice/words.py</extracomment>
            <translation>girar el rotor en sentido de giro hasta la mayor apertura de los contactos</translation>
        </message>
        <message>
            <source>turn the rotor against rotation until the contacts stand widest open</source>
            <extracomment>practice/words.py</extracomment>
            <translation>girar el rotor contra el giro hasta la mayor apertura de los contactos</translation>
        </message>
        <message>
            <source>turn the propeller with rotation until the piston meets the stop</source>
            <extracomment>practice/words.py</extracomment>
            <translation>girar la hélice en sentido de giro hasta que el pistón toque el tope</translation>
        </message>
        <message>
            <source>turn the propeller against rotation until the piston meets the stop</source>
            <extracomment>practice/words.py</extracomment>
            <translation>girar la hélice contra el giro hasta que el pistón toque el tope</translation>
        </message>
        <message>
            <source>turn the rotor with rotation until the piston meets the stop</source>
            <extracomment>practice/words.py</extracomment>
            <translation>girar el rotor en sentido de giro hasta que el pistón toque el tope</translation>
        </message>
        <message>
            <source>turn the rotor against rotation until the piston meets the stop</source>
            <extracomment>practice/words.py</extracomment>
            <translation>girar el rotor contra el giro hasta que el pistón toque el tope</translation>
        </message>
        <message>
            <source>the left magneto</source>
            <extracomment>practice/words.py</extracomment>
            <translation>la magneto izquierda</translation>
        </message>
        <message>
            <source>the right magneto</source>
            <extracomment>practice/words.py</extracomment>
            <translation>la magneto derecha</translation>
        </message>
        <message>
            <source>put in a new lead</source>
            <extracomment>practice/words.py</extracomment>
            <translation>poner un cable nuevo</translation>
        </message>
        <message>
            <source>put in a new tab</source>
            <extracomment>practice/words.py</extracomment>
            <translation>poner una lengüeta nueva</translation>
        </message>
        <message>
            <source>renew the insulation inside</source>
            <extracomment>practice/words.py</extracomment>
            <translation>cambiar el aislante interior</translation>
        </message>
        <message>
            <source>move the magneto flange on the disc 1 tooth with rotation</source>
            <extracomment>practice/words.py</extracomment>
            <translation>mover la brida de la magneto sobre el disco 1 diente en sentido de giro</translation>
        </message>
        <message>
            <source>move the magneto flange on the disc 1 tooth against rotation</source>
            <extracomment>practice/words.py</extracomment>
            <translation>mover la brida de la magneto sobre el disco 1 diente contra el giro</translation>
        </message>
        <message>
            <source>move the disc on the drive flange 1 tooth with rotation</source>
            <extracomment>practice/words.py</extracomment>
            <translation>mover el disco sobre la brida motriz 1 diente en sentido de giro</translation>
        </message>
        <message>
            <source>move the disc on the drive flange 1 tooth against rotation</source>
            <extracomment>practice/words.py</extracomment>
            <translation>mover el disco sobre la brida motriz 1 diente contra el giro</translation>
        </message>
        <message>
            <source>straightedge past the mark as the contacts open</source>
            <extracomment>practice/words.py</extracomment>
            <translation>regla después de la marca al abrir los contactos</translation>
        </message>
        <message>
            <source>largest gap</source>
            <extracomment>practice/words.py</extracomment>
            <translation>apertura máxima</translation>
        </message>
        <message>
            <source>fires before top dead centre</source>
            <extracomment>practice/words.py</extracomment>
            <translation>enciende antes del punto muerto superior</translation>
        </message>
        <message>
            <source>disc reads at top dead centre</source>
            <extracomment>practice/words.py</extracomment>
            <translation>el disco marca en el punto muerto superior</translation>
        </message>
        <message>
            <source>note</source>
            <extracomment>practice/words.py</extracomment>
            <translation>nota</translation>
        </message>
        <message>
            <source>broken</source>
            <extracomment>practice/words.py, ui/class_editor_rows.py</extracomment>
            <translation>roto</translation>
        </message>
        <message>
            <source>shorted</source>
            <extracomment>practice/words.py, ui/class_editor_rows.py</extracomment>
            <translation>en corto</translation>
        </message>
        <message>
            <source>tab</source>
            <extracomment>practice/words.py, spec/lift_table.py, ui/class_editor_rows.py</extracomment>
            <translation>lengüeta</translation>
        </message>
        <message>
            <source>thumb over No. 1's plug hole</source>
            <extracomment>practice/words.py</extracomment>
            <translation>pulgar sobre el agujero de bujía del n.º 1</translation>
        </message>
        <message>
            <source>the magneto</source>
            <extracomment>practice/words.py</extracomment>
            <translation>la magneto</translation>
        </message>
        <message>
            <source>largest gap, lobe {lobe}</source>
            <extracomment>practice/words.py</extracomment>
            <translation>apertura máxima, lóbulo {lobe}</translation>
        </message>
        <message>
            <source>point at {part}</source>
            <extracomment>practice/words.py</extracomment>
            <translation>señalar: {part}</translation>
        </message>
        <message>
            <source>write down – {note}</source>
            <extracomment>practice/words.py</extracomment>
            <translation>anotar – {note}</translation>
        </message>
        <message>
            <source>hand in</source>
            <extracomment>practice/words.py</extracomment>
            <translation>entregar</translation>
        </message>
        <message>
            <source>look at the contacts</source>
            <extracomment>practice/words.py</extracomment>
            <translation>mirar los contactos</translation>
        </message>
        <message>
            <source>dress the contacts</source>
            <extracomment>practice/words.py</extracomment>
            <translation>repasar los contactos</translation>
        </message>
        <message>
            <source>try {blades} {unit}</source>
            <extracomment>practice/words.py</extracomment>
            <translation>probar {blades} {unit}</translation>
        </message>
        <message>
            <source>meter from the lead's plug to the case</source>
            <extracomment>practice/words.py</extracomment>
            <translation>medidor de la clavija del cable a la carcasa</translation>
        </message>
        <message>
            <source>lift the magneto off</source>
            <extracomment>practice/words.py</extracomment>
            <translation>desmontar la magneto</translation>
        </message>
        <message>
            <source>paint marks across the coupling</source>
            <extracomment>practice/words.py</extracomment>
            <translation>pintar marcas en el acoplamiento</translation>
        </message>
        <message>
            <source>turn the propeller {angle}° with rotation</source>
            <extracomment>practice/words.py</extracomment>
            <translation>girar la hélice {angle}° en sentido de giro</translation>
        </message>
        <message>
            <source>turn the propeller {angle}° against rotation</source>
            <extracomment>practice/words.py</extracomment>
            <translation>girar la hélice {angle}° contra el giro</translation>
        </message>
        <message>
            <source>turn the propeller with rotation to {reading}° on the disc</source>
            <extracomment>practice/words.py</extracomment>
            <translation>girar la hélice en sentido de giro hasta {reading}° en el disco</translation>
        </message>
        <message>
            <source>turn the propeller against rotation to {reading}° on the disc</source>
            <extracomment>practice/words.py</extracomment>
            <translation>girar la hélice contra el giro hasta {reading}° en el disco</translation>
        </message>
        <message>
            <source>lay the straightedge on</source>
            <extracomment>practice/words.py</extracomment>
            <translation>poner la regla</translation>
        </message>
        <message>
            <source>take the straightedge away</source>
            <extracomment>practice/words.py</extracomment>
            <translation>quitar la regla</translation>
        </message>
        <message>
            <source>look square over the straightedge</source>
            <extracomment>practice/words.py</extracomment>
            <translation>mirar a escuadra sobre la regla</translation>
        </message>
        <message>
            <source>look from {eye}° to the side</source>
            <extracomment>practice/words.py</extracomment>
            <translation>mirar desde {eye}° al lado</translation>
        </message>
        <message>
            <source>clip the lamp across the contacts</source>
            <extracomment>practice/words.py</extracomment>
            <translation>conectar la lámpara entre los contactos</translation>
        </message>
        <message>
            <source>take the lamp off</source>
            <extracomment>practice/words.py</extracomment>
            <translation>quitar la lámpara</translation>
        </message>
        <message>
            <source>screw the piston stop in</source>
            <extracomment>practice/words.py</extracomment>
            <translation>roscar el tope de pistón</translation>
        </message>
        <message>
            <source>take the piston stop out</source>
            <extracomment>practice/words.py</extracomment>
            <translation>sacar el tope de pistón</translation>
        </message>
        <message>
            <source>turn the disc on the crank {by}° earlier</source>
            <extracomment>practice/words.py</extracomment>
            <translation>girar el disco en el cigüeñal {by}° más pronto</translation>
        </message>
        <message>
            <source>turn the disc on the crank {by}° later</source>
            <extracomment>practice/words.py</extracomment>
            <translation>girar el disco en el cigüeñal {by}° más tarde</translation>
        </message>
        <message>
            <source>slip paper under the spring tab</source>
            <extracomment>practice/words.py</extracomment>
            <translation>meter papel bajo la lengüeta</translation>
        </message>
        <message>
            <source>take the paper from the spring tab</source>
            <extracomment>practice/words.py</extracomment>
            <translation>quitar el papel de la lengüeta</translation>
        </message>
        <message>
            <source>chock the wheels</source>
            <extracomment>practice/words.py</extracomment>
            <translation>calzar las ruedas</translation>
        </message>
        <message>
            <source>take the chocks away</source>
            <extracomment>practice/words.py</extracomment>
            <translation>quitar los calzos</translation>
        </message>
        <message>
            <source>take the spark plugs out</source>
            <extracomment>practice/words.py</extracomment>
            <translation>sacar las bujías</translation>
        </message>
        <message>
            <source>put the spark plugs in</source>
            <extracomment>practice/words.py</extracomment>
            <translation>poner las bujías</translation>
        </message>
        <message>
            <source>tighten the magneto's nuts</source>
            <extracomment>practice/words.py</extracomment>
            <translation>apretar las tuercas de la magneto</translation>
        </message>
        <message>
            <source>take the nuts off and draw the magneto back</source>
            <extracomment>practice/words.py</extracomment>
            <translation>quitar las tuercas y retirar la magneto</translation>
        </message>
        <message>
            <source>pin the rotor</source>
            <extracomment>practice/words.py</extracomment>
            <translation>poner el pasador al rotor</translation>
        </message>
        <message>
            <source>take the pin out</source>
            <extracomment>practice/words.py</extracomment>
            <translation>sacar el pasador</translation>
        </message>
        <message>
            <source>refit the magneto as its rotor stands</source>
            <extracomment>practice/words.py</extracomment>
            <translation>remontar la magneto como está su rotor</translation>
        </message>
        <message>
            <source>go to the left magneto</source>
            <extracomment>practice/words.py</extracomment>
            <translation>ir a la magneto izquierda</translation>
        </message>
        <message>
            <source>go to the right magneto</source>
            <extracomment>practice/words.py</extracomment>
            <translation>ir a la magneto derecha</translation>
        </message>
        <message>
            <source>firing_order is {order}; it must name each cylinder from 1 to {n} once</source>
            <extracomment>spec/engine.py</extracomment>
            <translation>firing_order es {order}; debe nombrar cada cilindro de 1 a {n} una vez</translation>
        </message>
        <message>
            <source>firing_order begins with {first}; it must begin with cylinder 1</source>
            <extracomment>spec/engine.py</extracomment>
            <translation>firing_order empieza por {first}; debe empezar por el cilindro 1</translation>
        </message>
        <message>
            <source>rod_mm is {rod:g}; it must be longer than half the stroke, {crank:g} mm</source>
            <extracomment>spec/engine.py</extracomment>
            <translation>rod_mm es {rod:g}; debe ser más larga que media carrera, {crank:g} mm</translation>
        </message>
        <message>
            <source>articulation is for a radial engine; this one is {arrangement}</source>
            <extracomment>spec/engine.py</extracomment>
            <translation>articulation es para un motor en estrella; este es {arrangement}</translation>
        </message>
        <message>
            <source>articulation.master_cylinder is {master_cylinder}; the engine has {cylinders} cylinders</source>
            <extracomment>spec/engine.py</extracomment>
            <translation>articulation.master_cylinder es {master_cylinder}; el motor tiene {cylinders} cilindros</translation>
        </message>
        <message>
            <source>articulation.knuckle_angles_deg has {count} values; it must have one for each of the {cylinders} cylinders</source>
            <extracomment>spec/engine.py</extracomment>
            <translation>articulation.knuckle_angles_deg tiene {count} valores; debe tener uno por cada uno de los {cylinders} cilindros</translation>
        </message>
        <message>
            <source>articulation.link_rod_mm is {rod:g}; it must be longer than half the stroke and the knuckle radius together, {reach:g} mm</source>
            <extracomment>spec/engine.py</extracomment>
            <translation>articulation.link_rod_mm es {rod:g}; debe ser más larga que media carrera y el radio de articulación juntos, {reach:g} mm</translation>
        </message>
        <message>
            <source>not a number (NaN)</source>
            <extracomment>spec/files.py</extracomment>
            <translation>no es un número (NaN)</translation>
        </message>
        <message>
            <source>infinite</source>
            <extracomment>spec/files.py</extracomment>
            <translation>infinito</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be at least {ge:g}</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} es {found}; debe ser al menos {ge:g}</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be above {gt:g}</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} es {found}; debe ser mayor que {gt:g}</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be at most {le:g}</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} es {found}; debe ser como mucho {le:g}</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be below {lt:g}</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} es {found}; debe ser menor que {lt:g}</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be a multiple of {multiple_of:g}</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} es {found}; debe ser un múltiplo de {multiple_of:g}</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be a whole number</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} es {found}; debe ser un número entero</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be text</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} es {found}; debe ser texto</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be text without broken characters</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} es {found}; debe ser texto sin caracteres rotos</translation>
        </message>
        <message>
            <source>{field} is {found}; it must have at least {min_length} characters</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} es {found}; debe tener al menos {min_length} caracteres</translation>
        </message>
        <message>
            <source>{field} is {found}; it must have at most {max_length} characters</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} es {found}; debe tener como mucho {max_length} caracteres</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be one line of text</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} es {found}; debe ser una línea de texto</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be true or false</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} es {found}; debe ser true o false</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be {expected}</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} es {found}; debe ser {expected}</translation>
        </message>
        <message>
            <source>{field} is {found}; it must have at least {min_length} values</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} es {found}; debe tener al menos {min_length} valores</translation>
        </message>
        <message>
            <source>{field} is {found}; it must have at most {max_length} values</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} es {found}; debe tener como mucho {max_length} valores</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be a list</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} es {found}; debe ser una lista</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be an object in braces</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} es {found}; debe ser un objeto entre llaves</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be a finite number of millimetres</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} es {found}; debe ser un número finito de milímetros</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be a finite number of degrees</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} es {found}; debe ser un número finito de grados</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be a finite number of newton metres</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} es {found}; debe ser un número finito de newton metros</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be a finite number of ohms</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} es {found}; debe ser un número finito de ohmios</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be a finite number</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} es {found}; debe ser un número finito</translation>
        </message>
        <message>
            <source>{field} is missing</source>
            <extracomment>spec/files.py</extracomment>
            <translation>falta {field}</translation>
        </message>
        <message>
            <source>{field} is not a known name (known here: {known})</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} no es un nombre conocido (aquí se conocen: {known})</translation>
        </message>
        <message>
            <source>{field} is {found}; it must {rule}</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} es {found}; debe {rule}</translation>
        </message>
        <message>
            <source>{file}: is larger than {most:g} MB, the most that is read</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{file}: pasa de {most:g} MB, lo máximo que se lee</translation>
        </message>
        <message>
            <source>“{repeated}” is given twice in one place; give it once</source>
            <extracomment>spec/files.py</extracomment>
            <translation>«{repeated}» se da dos veces en un sitio; delo una vez</translation>
        </message>
        <message>
            <source>{source}: holds no {kind} object; it must be one JSON object in braces</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{source}: no contiene un objeto {kind}; debe ser un objeto JSON entre llaves</translation>
        </message>
        <message>
            <source>{source}: format is missing; it must be "{wanted}"</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{source}: falta format; debe ser "{wanted}"</translation>
        </message>
        <message>
            <source>{field} is not a known name (did you mean {close}?)</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} no es un nombre conocido (¿quiso decir {close}?)</translation>
        </message>
        <message>
            <source>{field}.kind is {found}; it must be {tags}</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field}.kind es {found}; debe ser {tags}</translation>
        </message>
        <message>
            <source>{field}.kind is missing; it must be {tags}</source>
            <extracomment>spec/files.py</extracomment>
            <translation>falta {field}.kind; debe ser {tags}</translation>
        </message>
        <message>
            <source>it is not a file</source>
            <extracomment>spec/files.py</extracomment>
            <translation>no es un archivo</translation>
        </message>
        <message>
            <source>{file}: cannot be read: {reason}</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{file}: no se puede leer: {reason}</translation>
        </message>
        <message>
            <source>{file}: is not a text file (byte {byte} is not UTF-8)</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{file}: no es un archivo de texto (el byte {byte} no es UTF-8)</translation>
        </message>
        <message>
            <source>{file}: line {line}, column {column}: not JSON: {reason}</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{file}: línea {line}, columna {column}: no es JSON: {reason}</translation>
        </message>
        <message>
            <source>{file}: is nested too deeply</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{file}: está anidado con demasiada profundidad</translation>
        </message>
        <message>
            <source>holds a list of {count} values; at most {most} are read</source>
            <extracomment>spec/files.py</extracomment>
            <translation>contiene una lista de {count} valores; se leen {most} como mucho</translation>
        </message>
        <message>
            <source>{file}: cannot be written: {reason}</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{file}: no se puede escribir: {reason}</translation>
        </message>
        <message>
            <source>Magneto on its engine</source>
            <extracomment>spec/formats.py</extracomment>
            <translation>Magneto en su motor</translation>
        </message>
        <message>
            <source>Lesson</source>
            <extracomment>spec/formats.py</extracomment>
            <translation>Lección</translation>
        </message>
        <message>
            <source>Attempt at an exercise</source>
            <extracomment>spec/formats.py</extracomment>
            <translation>Intento de un ejercicio</translation>
        </message>
        <message>
            <source>Set of exercises for a class</source>
            <extracomment>spec/formats.py</extracomment>
            <translation>Serie de ejercicios para una clase</translation>
        </message>
        <message>
            <source>Job sheet of a magneto</source>
            <extracomment>spec/formats.py</extracomment>
            <translation>Hoja de trabajo de una magneto</translation>
        </message>
        <message>
            <source>{file}: is not a file of this program; its format must be one of {known}</source>
            <extracomment>spec/formats.py</extracomment>
            <translation>{file}: no es un archivo de este programa; su formato debe ser uno de {known}</translation>
        </message>
        <message>
            <source>{others} or {last}</source>
            <extracomment>spec/language.py</extracomment>
            <translation>{others} o {last}</translation>
        </message>
        <message>
            <source>{first} or {other}</source>
            <extracomment>spec/language.py</extracomment>
            <translation>{first} o {other}</translation>
        </message>
        <message>
            <source>{first} and {other}</source>
            <extracomment>spec/language.py</extracomment>
            <translation>{first} y {other}</translation>
        </message>
        <message>
            <source>“{name}” is neither a file nor one of the shipped magnetos: {known}</source>
            <extracomment>spec/library.py</extracomment>
            <translation>«{name}» no es ni un archivo ni una de las magnetos incluidas: {known}</translation>
        </message>
        <message>
            <source>“{name}” is neither a file nor one of the shipped engines: {known}</source>
            <extracomment>spec/library.py</extracomment>
            <translation>«{name}» no es ni un archivo ni uno de los motores incluidos: {known}</translation>
        </message>
        <message>
            <source>“{name}” is neither a file nor one of the shipped installations: {known}</source>
            <extracomment>spec/library.py</extracomment>
            <translation>«{name}» no es ni un archivo ni una de las instalaciones incluidas: {known}</translation>
        </message>
        <message>
            <source>{where} has no angle in column {column} (columns separated by {separator})</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>{where} no tiene ángulo en la columna {column} (columnas separadas por {separator})</translation>
        </message>
        <message>
            <source>{where} has no reading in column {column} (columns separated by {separator})</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>{where} no tiene lectura en la columna {column} (columnas separadas por {separator})</translation>
        </message>
        <message>
            <source>semicolon</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>punto y coma</translation>
        </message>
        <message>
            <source>comma</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>coma</translation>
        </message>
        <message>
            <source>space</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>espacio</translation>
        </message>
        <message>
            <source>the table</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>la tabla</translation>
        </message>
        <message>
            <source>{source}: its commas may be decimal signs or stand between columns: say which, or save it with semicolons between columns</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>{source}: sus comas pueden ser decimales o separar columnas: indique cuál, o guárdela con punto y coma entre columnas</translation>
        </message>
        <message>
            <source>{source}: is longer than {most:g} million characters, the most that is read</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>{source}: pasa de {most:g} millones de caracteres, lo máximo que se lee</translation>
        </message>
        <message>
            <source>{source}: the decimal sign must be a point or a comma, the columns two of the first hundred</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>{source}: el signo decimal debe ser punto o coma, las columnas dos de las cien primeras</translation>
        </message>
        <message>
            <source>{source}: has {count} rows of numbers; it must have at least {least} (“{numbered}” is none: write numbers alone, without their units)</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>{source}: tiene {count} filas de números; debe tener al menos {least} («{numbered}» no lo es: escriba solo números, sin unidades)</translation>
        </message>
        <message>
            <source>{where}: “{field}” is not a number (columns separated by {separator}, decimal sign “{decimal}”)</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>{where}: «{field}» no es un número (columnas separadas por {separator}, signo decimal «{decimal}»)</translation>
        </message>
        <message>
            <source>{where}: {field} is too large; at most {most:g} is read</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>{where}: {field} es demasiado grande; se lee {most:g} como mucho</translation>
        </message>
        <message>
            <source>{source}: line {line}</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>{source}: línea {line}</translation>
        </message>
        <message>
            <source>{source}: has more than {most} rows, the most that are read</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>{source}: tiene más de {most} filas, lo máximo que se lee</translation>
        </message>
        <message>
            <source>{source}: has no row of numbers in its first 100 lines</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>{source}: no tiene filas de números en sus 100 primeras líneas</translation>
        </message>
        <message>
            <source>{source}: has {count} rows of numbers; it must have at least {least}</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>{source}: tiene {count} filas de números; debe tener al menos {least}</translation>
        </message>
        <message>
            <source>{source}: line {line}: “{row}” is not a row of numbers</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>{source}: línea {line}: «{row}» no es una fila de números</translation>
        </message>
        <message>
            <source>{source}: has both points and commas in its numbers: say which is the decimal sign</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>{source}: tiene puntos y comas en sus números: indique cuál es el signo decimal</translation>
        </message>
        <message>
            <source>{field} is [{low:g}, {high:g}]; the first must be below the second</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>{field} es [{low:g}, {high:g}]; el primero debe ser menor que el segundo</translation>
        </message>
        <message>
            <source>lobes {lobe} and {next} overlap: their tops are {apart:g}° apart and a lobe is {width:g}° wide</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>los lóbulos {lobe} y {next} se solapan: sus cimas distan {apart:g}° y un lóbulo tiene {width:g}° de ancho</translation>
        </message>
        <message>
            <source>angle_deg has {angles} values and contact_lift_mm {lifts}; they must be as many</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>angle_deg tiene {angles} valores y contact_lift_mm {lifts}; deben ser los mismos</translation>
        </message>
        <message>
            <source>contact_lift_mm must begin and end with 0 (the heel off the lobe)</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>contact_lift_mm debe empezar y acabar en 0 (el talón fuera del lóbulo)</translation>
        </message>
        <message>
            <source>contact_lift_mm never rises; the top must be at least 0.001</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>contact_lift_mm nunca sube; la cima debe ser al menos 0.001</translation>
        </message>
        <message>
            <source>the top of contact_lift_mm is at {angle:g}°; angle_deg counts from it</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>la cima de contact_lift_mm está a {angle:g}°; angle_deg cuenta desde ella</translation>
        </message>
        <message>
            <source>contact_lift_mm must rise to one top and fall again, without steps or dips</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>contact_lift_mm debe subir a una cima y bajar de nuevo, sin escalones ni hundimientos</translation>
        </message>
        <message>
            <source>lobe_peaks_deg begins with {first:g}; it must begin with 0 (lobe 1)</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>lobe_peaks_deg empieza por {first:g}; debe empezar por 0 (lóbulo 1)</translation>
        </message>
        <message>
            <source>lobe_peaks_deg: {overlap}</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>lobe_peaks_deg: {overlap}</translation>
        </message>
        <message>
            <source>e_gap_deg is {e_gap:g}; with {poles} poles it must be below {most:g}, where full register lies</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>e_gap_deg es {e_gap:g}; con {poles} polos debe ser menor que {most:g}, donde está el registro pleno</translation>
        </message>
        <message>
            <source>contact_screw.range_deg is [{low:g}, {high:g}]; it must contain 0</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>contact_screw.range_deg es [{low:g}, {high:g}]; debe contener 0</translation>
        </message>
        <message>
            <source>designed_setting.backplate_deg is {backplate:g}; it must lie in backplate.range_deg, [{low:g}, {high:g}]</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>designed_setting.backplate_deg es {backplate:g}; debe estar en backplate.range_deg, [{low:g}, {high:g}]</translation>
        </message>
        <message>
            <source>breaker.pivot_distance_mm is {distance:g}; the pivot must stand outside the lobe's top, {top:g} mm from the cam's centre</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>breaker.pivot_distance_mm es {distance:g}; el eje del brazo debe quedar fuera de la cima del lóbulo, a {top:g} mm del centro de la leva</translation>
        </message>
        <message>
            <source>designed_setting.gap_mm is {gap:g}; it must be below the contact lift at the top of the lobe, {top_lift:.4g} mm</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>designed_setting.gap_mm es {gap:g}; debe ser menor que la alzada del contacto en la cima del lóbulo, {top_lift:.4g} mm</translation>
        </message>
        <message>
            <source>angle_deg goes from {before:g} to {after:g}; it must increase</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>angle_deg va de {before:g} a {after:g}; debe crecer</translation>
        </message>
        <message>
            <source>lobe_peaks_deg goes from {before:g} to {after:g}; it must increase</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>lobe_peaks_deg va de {before:g} a {after:g}; debe crecer</translation>
        </message>
        <message>
            <source>condition.heel_wear_mm needs breaker.heel_arm_mm, to know what wear does</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>condition.heel_wear_mm necesita breaker.heel_arm_mm, para saber qué hace el desgaste</translation>
        </message>
        <message>
            <source>breaker.{field} is missing; only a measured profile can do without it</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>falta breaker.{field}; solo un perfil medido puede prescindir de él</translation>
        </message>
        <message>
            <source>breaker.heel_arm_mm is {arm:g}; with it the heel reaches from {near:g} to {far:g} mm of the cam's centre, and must reach {radius:g} mm</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>breaker.heel_arm_mm es {arm:g}; con él el talón alcanza de {near:g} a {far:g} mm del centro de la leva, y debe alcanzar {radius:g} mm</translation>
        </message>
        <message>
            <source>condition.{field} has {count} values; it must have one for each of the {lobes} lobes</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>condition.{field} tiene {count} valores; debe tener uno por cada uno de los {lobes} lóbulos</translation>
        </message>
        <message>
            <source>condition.lobe_lift_error_mm takes {error:g} mm off lobe {lobe}, which has only {top_lift:.4g} mm of contact lift</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>condition.lobe_lift_error_mm quita {error:g} mm al lóbulo {lobe}, que solo tiene {top_lift:.4g} mm de alzada del contacto</translation>
        </message>
        <message>
            <source>condition.lobe_angle_error_deg: {overlap}</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>condition.lobe_angle_error_deg: {overlap}</translation>
        </message>
        <message>
            <source>sources[{i}].field is “{field}”; it must be the name of a field of this file, such as “{such}”</source>
            <extracomment>spec/sources.py</extracomment>
            <translation>sources[{i}].field es «{field}»; debe ser el nombre de un campo de este archivo, como «{such}»</translation>
        </message>
        <message>
            <source>sources[{i}].field is “{field}”, which has a source already; give it one</source>
            <extracomment>spec/sources.py</extracomment>
            <translation>sources[{i}].field es «{field}», que ya tiene una fuente; dele una sola</translation>
        </message>
        <message>
            <source>“{text}” is not a length: write a number and a unit, such as 0.33mm, 0.013in or 13thou</source>
            <extracomment>spec/units.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>“{text}” has no unit: write one, such as 0.33mm, 0.013in or 13thou</source>
            <extracomment>spec/units.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>“{unit}” is not a unit of length: use {known}</source>
            <extracomment>spec/units.py</extracomment>
            <translation>«{unit}» no es una unidad de longitud: use {known}</translation>
        </message>
        <message>
            <source>“{text}” is not an angle: write a number and a unit, such as 1.5°</source>
            <extracomment>spec/units.py</extracomment>
            <translation>«{text}» no es un ángulo: escriba un número y una unidad, p. ej. 1.5°</translation>
        </message>
        <message>
            <source>“{text}” has no unit: write one, such as 1.5°</source>
            <extracomment>spec/units.py</extracomment>
            <translation>«{text}» no tiene unidad: escriba una, p. ej. 1.5°</translation>
        </message>
        <message>
            <source>“{unit}” is not a unit of angle: use {known}</source>
            <extracomment>spec/units.py</extracomment>
            <translation>«{unit}» no es una unidad de ángulo: use {known}</translation>
        </message>
        <message>
            <source>“{text}” has a minus and a side of top dead centre: write one or the other</source>
            <extracomment>spec/units.py</extracomment>
            <translation>«{text}» tiene un menos y un lado del punto muerto superior: escriba lo uno o lo otro</translation>
        </message>
        <message>
            <source>{length} in</source>
            <extracomment>spec/units.py</extracomment>
            <translation>{length} in</translation>
        </message>
        <message>
            <source>“{text}” is too large</source>
            <extracomment>spec/units.py</extracomment>
            <translation>«{text}» es demasiado grande</translation>
        </message>
        <message>
            <source>BTDC</source>
            <extracomment>spec/units.py</extracomment>
            <translation>APMS</translation>
        </message>
        <message>
            <source>ATDC</source>
            <extracomment>spec/units.py</extracomment>
            <translation>DPMS</translation>
        </message>
        <message>
            <source>“{text}” is not a number: write one such as {example}</source>
            <extracomment>spec/units.py</extracomment>
            <translation>«{text}» no es un número: escriba uno, p. ej. {example}</translation>
        </message>
        <message>
            <source>The program had not been closed as it should; the bench is as you left it.</source>
            <extracomment>ui/app.py</extracomment>
            <translation>El programa no se había cerrado como debía; el banco está como usted lo dejó.</translation>
        </message>
        <message>
            <source>Your work is not kept for after a crash: {reason}</source>
            <extracomment>ui/app.py</extracomment>
            <translation>Su trabajo no queda guardado para después de un fallo: {reason}</translation>
        </message>
        <message>
            <source>Drafts of a magneto of your own wait for you: File, A magneto of your own…</source>
            <extracomment>ui/app.py</extracomment>
            <translation>Le esperan borradores de una magneto propia: Archivo, Una magneto propia…</translation>
        </message>
        <message>
            <source>SVG (*.svg);;PDF (*.pdf);;PNG (*.png)</source>
            <extracomment>ui/asking.py</extracomment>
            <translation>SVG (*.svg);;PDF (*.pdf);;PNG (*.png)</translation>
        </message>
        <message>
            <source>Save the picture</source>
            <extracomment>ui/asking.py</extracomment>
            <translation>Guardar la imagen</translation>
        </message>
        <message>
            <source>In hand: {part}.</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>En la mano: {part}.</translation>
        </message>
        <message>
            <source>Rotor and pole shoes are diagrammatic; cam, arm, contacts and marks are to scale.</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>Rotor y zapatas polares son esquemáticos; leva, brazo, contactos y marcas están a escala.</translation>
        </message>
        <message>
            <source>Breaker end of the magneto</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>Lado del ruptor de la magneto</translation>
        </message>
        <message>
            <source>Seen from the drive end, through the magneto, rotation {way}.</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>Visto desde el lado de accionamiento, a través de la magneto, giro {way}.</translation>
        </message>
        <message>
            <source>Seen from the breaker end, rotation {way}.</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>Visto desde el lado del ruptor, giro {way}.</translation>
        </message>
        <message>
            <source>Rotor {rotor} past neutral, held; backplate {backplate}, contact screw {screw}; {contacts}.</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>Rotor {rotor} tras el neutro, sujeto; placa base {backplate}, tornillo de contacto {screw}; {contacts}.</translation>
        </message>
        <message>
            <source>Rotor {rotor} past neutral, let go; backplate {backplate}, contact screw {screw}; {contacts}.</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>Rotor {rotor} tras el neutro, suelto; placa base {backplate}, tornillo de contacto {screw}; {contacts}.</translation>
        </message>
        <message>
            <source>The gap is drawn {factor} times its size, the arm lifted with it off the cam.</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>La apertura se dibuja {factor} veces su tamaño, con el brazo alzado de la leva otro tanto.</translation>
        </message>
        <message>
            <source>Arm and heel in plain proportions: this magneto's file gives only the measured lift.</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>Brazo y talón en proporciones simples: el archivo de esta magneto solo da la alzada medida.</translation>
        </message>
        <message>
            <source>Cam on the distributor shaft, {ratio} turn a rotor turn; drawn on the rotor's axis.</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>Leva en el eje del distribuidor, {ratio} vueltas por vuelta de rotor; dibujada en el eje del rotor.</translation>
        </message>
        <message>
            <source>contacts closed</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>contactos cerrados</translation>
        </message>
        <message>
            <source>contacts open {gap}</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>contactos abiertos {gap}</translation>
        </message>
        <message>
            <source>Seen through from the drive end</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>Visto a través desde el lado de accionamiento</translation>
        </message>
        <message>
            <source>gap drawn {factor}×</source>
            <extracomment>ui/breaker_view.py, ui/contact_view.py</extracomment>
            <translation>apertura dibujada {factor}×</translation>
        </message>
        <message>
            <source>at: {place}</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>en: {place}</translation>
        </message>
        <message>
            <source>rotor let go, but the engine holds it</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>rotor suelto, pero el motor lo retiene</translation>
        </message>
        <message>
            <source>rotor free</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>rotor libre</translation>
        </message>
        <message>
            <source>what is there ({part}) stays: drag the rotor, the backplate or the contact screw</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>lo que hay ahí ({part}) no se mueve: arrastre el rotor, la placa base o el tornillo de contacto</translation>
        </message>
        <message>
            <source>Rotor held.</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>Rotor sujeto.</translation>
        </message>
        <message>
            <source>Rotor let go.</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>Rotor suelto.</translation>
        </message>
        <message>
            <source>Kept on this machine, and tried again every {seconds} seconds: {why}</source>
            <extracomment>ui/class_delivery.py</extracomment>
            <translation>Guardado en este equipo e intentado de nuevo cada {seconds} segundos: {why}</translation>
        </message>
        <message>
            <source>Handed in: {file} stands in {folder}.</source>
            <extracomment>ui/class_delivery.py</extracomment>
            <translation>Entregado: {file} está en {folder}.</translation>
        </message>
        <message>
            <source>Exercises of the class</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>Ejercicios de la clase</translation>
        </message>
        <message>
            <source>&amp;Begin</source>
            <extracomment>ui/class_desk.py, ui/practice_choice.py</extracomment>
            <translation>&amp;Empezar</translation>
        </message>
        <message>
            <source>Hand in a &amp;saved attempt…</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>Entregar un intento &amp;guardado…</translation>
        </message>
        <message>
            <source>&amp;Try again now</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>&amp;Reintentar ahora</translation>
        </message>
        <message>
            <source>Deliver to &amp;another folder…</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>Entregar en &amp;otra carpeta…</translation>
        </message>
        <message>
            <source>as the instructor gives it; capitals and hyphens do not matter</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>como lo da el instructor; mayúsculas y guiones no importan</translation>
        </message>
        <message>
            <source>Name or number</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>Nombre o número</translation>
        </message>
        <message>
            <source>the folder the whole class hands in to</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>la carpeta donde entrega toda la clase</translation>
        </message>
        <message>
            <source>&amp;Code</source>
            <extracomment>ui/class_desk.py, ui/class_paper_dialog.py, ui/practice_choice.py</extracomment>
            <translation>&amp;Código</translation>
        </message>
        <message>
            <source>&amp;Name or number</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>&amp;Nombre o número</translation>
        </message>
        <message>
            <source>&amp;Hand in to</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>En&amp;tregar en</translation>
        </message>
        <message>
            <source>Open a class's file</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>Abrir el archivo de una clase</translation>
        </message>
        <message>
            <source>Class sets (*.json);;All files (*)</source>
            <extracomment>ui/class_desk.py, ui/class_gather.py, ui/class_maker.py</extracomment>
            <translation>Conjuntos de clase (*.json);;Todos los archivos (*)</translation>
        </message>
        <message>
            <source>{number}. {name} (about {minutes} minutes)</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>{number}. {name} (unos {minutes} minutos)</translation>
        </message>
        <message>
            <source>under way</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>en curso</translation>
        </message>
        <message>
            <source>Hand in a saved attempt</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>Entregar un intento guardado</translation>
        </message>
        <message>
            <source>{count} delivered.</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>{count} entregados.</translation>
        </message>
        <message>
            <source>Hand in to</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>Entregar en</translation>
        </message>
        <message>
            <source>Deliver to another folder</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>Entregar en otra carpeta</translation>
        </message>
        <message>
            <source>How it stands</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>Situación</translation>
        </message>
        <message>
            <source>&amp;Open file…</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>A&amp;brir archivo…</translation>
        </message>
        <message>
            <source>Choose &amp;folder…</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>Elegir car&amp;peta…</translation>
        </message>
        <message>
            <source>Type the class's code, or open its file; then your name, and begin.</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>Escriba el código de la clase o abra su archivo; luego su nombre, y empiece.</translation>
        </message>
        <message>
            <source>Everyone has a fault of their own: it hangs on the name as you type it.</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>Cada uno tiene su propio fallo: depende del nombre tal como lo escribe.</translation>
        </message>
        <message>
            <source>Everyone has the same fault.</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>Todos tienen el mismo fallo.</translation>
        </message>
        <message>
            <source>Hints are not given.</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>No se dan pistas.</translation>
        </message>
        <message>
            <source>not begun</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>sin empezar</translation>
        </message>
        <message>
            <source>Type your name or number first: the attempt is handed in under it</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>Escriba antes su nombre o número: con él se entrega el intento</translation>
        </message>
        <message>
            <source>Choose the folder to hand in to first; your instructor knows it</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>Elija antes la carpeta donde entregar; su instructor la conoce</translation>
        </message>
        <message>
            <source>{count} attempts wait on this machine to be delivered.</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>{count} intentos esperan en este equipo a entregarse.</translation>
        </message>
        <message>
            <source>Type the class's code first</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>Escriba antes el código de la clase</translation>
        </message>
        <message>
            <source>{count} still wait: {why}</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>{count} aún esperan: {why}</translation>
        </message>
        <message>
            <source>closed without handing in</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>cerrado sin entregar</translation>
        </message>
        <message>
            <source>Exercises (*.json);;All files (*)</source>
            <extracomment>ui/class_editor.py, ui/class_maker.py</extracomment>
            <translation>Ejercicios (*.json);;Todos los archivos (*)</translation>
        </message>
        <message>
            <source>Exercise editor</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>Editor de ejercicios</translation>
        </message>
        <message>
            <source>Whether the exercise is valid</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>Si el ejercicio es válido</translation>
        </message>
        <message>
            <source>&amp;Preview of seed</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>Vista &amp;previa, semilla</translation>
        </message>
        <message>
            <source>Preview</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>Vista previa</translation>
        </message>
        <message>
            <source>Begin from a shipped exercise</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>Partir de un ejercicio incluido</translation>
        </message>
        <message>
            <source>Begin from a shipped one…</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>Partir de uno incluido…</translation>
        </message>
        <message>
            <source>Save &amp;as…</source>
            <extracomment>ui/class_editor.py, ui/job_bars.py, ui/job_menus.py, ui/own_menus.py</extracomment>
            <translation>Guardar &amp;como…</translation>
        </message>
        <message>
            <source>Into the class's &amp;set</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>Al con&amp;junto de la clase</translation>
        </message>
        <message>
            <source>Tr&amp;y it</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>Pro&amp;barlo</translation>
        </message>
        <message>
            <source>Open an exercise</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>Abrir un ejercicio</translation>
        </message>
        <message>
            <source>Magneto or installation</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>Magneto o instalación</translation>
        </message>
        <message>
            <source>JSON (*.json);;All files (*)</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>JSON (*.json);;Todos los archivos (*)</translation>
        </message>
        <message>
            <source>Save the exercise</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>Guardar el ejercicio</translation>
        </message>
        <message>
            <source>Saved {file}.</source>
            <extracomment>ui/class_editor.py, ui/class_gather.py, ui/class_maker.py, ui/class_plots.py, ui/own_files_work.py, ui/report_dialog.py</extracomment>
            <translation>Guardado {file}.</translation>
        </message>
        <message>
            <source>This exercise has not been saved.</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>Este ejercicio no se ha guardado.</translation>
        </message>
        <message>
            <source>&amp;Open…</source>
            <extracomment>ui/class_editor.py, ui/class_gather.py</extracomment>
            <translation>&amp;Abrir…</translation>
        </message>
        <message>
            <source>this exercise</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>este ejercicio</translation>
        </message>
        <message>
            <source>An exercise that is not valid yet is not saved</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>Un ejercicio que aún no es válido no se guarda</translation>
        </message>
        <message>
            <source>&amp;Save…</source>
            <extracomment>ui/class_editor.py, ui/practice_window.py</extracomment>
            <translation>&amp;Guardar…</translation>
        </message>
        <message>
            <source>Go on &amp;without saving</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>Seguir &amp;sin guardar</translation>
        </message>
        <message>
            <source>&amp;Back to the editor</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>&amp;Volver al editor</translation>
        </message>
        <message>
            <source>Not valid yet: {why}.</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>Aún no válido: {why}.</translation>
        </message>
        <message>
            <source>Valid. {advice}</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>Válido. {advice}</translation>
        </message>
        <message>
            <source>Valid.</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>Válido.</translation>
        </message>
        <message>
            <source>&amp;Add a fault</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>&amp;Añadir un fallo</translation>
        </message>
        <message>
            <source>A&amp;dd a goal</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>Aña&amp;dir un objetivo</translation>
        </message>
        <message>
            <source>&amp;Name</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>&amp;Nombre</translation>
        </message>
        <message>
            <source>&amp;Level, 1 to 5</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>Ni&amp;vel, 1 a 5</translation>
        </message>
        <message>
            <source>M&amp;inutes, a guide</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>M&amp;inutos, orientativo</translation>
        </message>
        <message>
            <source>Marks &amp;needed</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>Nota &amp;necesaria</translation>
        </message>
        <message>
            <source>&amp;Story: what is told of the case</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>&amp;Historia: qué se cuenta del caso</translation>
        </message>
        <message>
            <source>Tas&amp;k: what is to be done</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>&amp;Tarea: qué hay que hacer</translation>
        </message>
        <message>
            <source>&amp;Hints, one a line</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>&amp;Pistas, una por línea</translation>
        </message>
        <message>
            <source>Magneto, alone or on its engine</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>Magneto, sola o en su motor</translation>
        </message>
        <message>
            <source>From a fil&amp;e…</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>De un &amp;archivo…</translation>
        </message>
        <message>
            <source>Magnet&amp;o</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>Magnet&amp;o</translation>
        </message>
        <message>
            <source>&amp;Both magnetos of the engine</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>Am&amp;bas magnetos del motor</translation>
        </message>
        <message>
            <source>&amp;Rotor, off the engine</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>&amp;Rotor, fuera del motor</translation>
        </message>
        <message>
            <source>As it is found</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>Cómo se encuentra</translation>
        </message>
        <message>
            <source>screws slack</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>tornillos flojos</translation>
        </message>
        <message>
            <source>switch lead proved</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>cable de masa comprobado</translation>
        </message>
        <message>
            <source>disc at zero</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>disco a cero</translation>
        </message>
        <message>
            <source>On the tray</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>En la bandeja</translation>
        </message>
        <message>
            <source>Crank disc, read to</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>Disco de cigüeñal, leído a</translation>
        </message>
        <message>
            <source>{magneto}, on {engine} ({position})</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>{magneto}, en {engine} ({position})</translation>
        </message>
        <message>
            <source>&amp;Text</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>&amp;Texto</translation>
        </message>
        <message>
            <source>&amp;Magneto and tray</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>&amp;Magneto y bandeja</translation>
        </message>
        <message>
            <source>&amp;Faults</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>&amp;Fallos</translation>
        </message>
        <message>
            <source>&amp;Goals</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>&amp;Objetivos</translation>
        </message>
        <message>
            <source>blades in inches</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>galgas en pulgadas</translation>
        </message>
        <message>
            <source>metric blades</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>galgas métricas</translation>
        </message>
        <message>
            <source>piston stop</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>tope de pistón</translation>
        </message>
        <message>
            <source>meter for the switch lead</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>medidor para el cable de masa</translation>
        </message>
        <message>
            <source>at neutral</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>en neutro</translation>
        </message>
        <message>
            <source>anywhere</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>en cualquier sitio</translation>
        </message>
        <message>
            <source>at the E-gap</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>en el E-gap</translation>
        </message>
        <message>
            <source>rotor °</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>° rotor</translation>
        </message>
        <message>
            <source>°</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>°</translation>
        </message>
        <message>
            <source>teeth</source>
            <extracomment>ui/class_editor_rows.py, ui/job_kinds.py</extracomment>
            <translation>dientes</translation>
        </message>
        <message>
            <source>steps</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>pasos</translation>
        </message>
        <message>
            <source>crank °</source>
            <extracomment>ui/class_editor_rows.py, ui/job_kinds.py</extracomment>
            <translation>° cigüeñal</translation>
        </message>
        <message>
            <source>late</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>tarde</translation>
        </message>
        <message>
            <source>early</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>pronto</translation>
        </message>
        <message>
            <source>too wide</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>grande</translation>
        </message>
        <message>
            <source>too narrow</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>pequeña</translation>
        </message>
        <message>
            <source>with cam rotation</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>en el sentido de la leva</translation>
        </message>
        <message>
            <source>against cam rotation</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>contra el giro de la leva</translation>
        </message>
        <message>
            <source>closer</source>
            <extracomment>ui/class_editor_rows.py, ui/practice_work.py</extracomment>
            <translation>juntar</translation>
        </message>
        <message>
            <source>wider</source>
            <extracomment>ui/class_editor_rows.py, ui/practice_work.py</extracomment>
            <translation>separar</translation>
        </message>
        <message>
            <source>plus</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>más</translation>
        </message>
        <message>
            <source>minus</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>menos</translation>
        </message>
        <message>
            <source>Remove this row</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>Quitar esta fila</translation>
        </message>
        <message>
            <source>each magneto</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>cada magneto</translation>
        </message>
        <message>
            <source>On which magneto</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>En qué magneto</translation>
        </message>
        <message>
            <source>Size from</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>Tamaño desde</translation>
        </message>
        <message>
            <source>Size to</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>Tamaño hasta</translation>
        </message>
        <message>
            <source>Which way</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>En qué sentido</translation>
        </message>
        <message>
            <source>any lobe</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>cualquier lóbulo</translation>
        </message>
        <message>
            <source>lobe </source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>lóbulo </translation>
        </message>
        <message>
            <source>Which lobe</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>Qué lóbulo</translation>
        </message>
        <message>
            <source>How likely it is there [%]</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>Cuán probable es que esté [%]</translation>
        </message>
        <message>
            <source>What counts</source>
            <extracomment>ui/class_editor_rows.py, ui/practice_task.py</extracomment>
            <translation>Qué cuenta</translation>
        </message>
        <message>
            <source>Weight among the marks</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>Peso en la nota</translation>
        </message>
        <message>
            <source>on every lobe</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>en cada lóbulo</translation>
        </message>
        <message>
            <source>How near to the truth it must be</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>Cuán cerca del valor real debe estar</translation>
        </message>
        <message>
            <source>% likely</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>% probable</translation>
        </message>
        <message>
            <source>Size to, at most {most} {unit}</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>Tamaño hasta, como mucho {most} {unit}</translation>
        </message>
        <message>
            <source>weight</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>peso</translation>
        </message>
        <message>
            <source>{unit} allowed</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>{unit} admitidos</translation>
        </message>
        <message>
            <source>either</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>cualquiera</translation>
        </message>
        <message>
            <source>Marks, dangers, and faults found and missed are worked out here from the acts in each file. Names and times are believed as the pupils' machines wrote them.</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>Notas, peligros y fallos hallados o no hallados se obtienen aquí de los actos de cada archivo. Los nombres y las horas se creen tal como los escribieron los equipos de los alumnos.</translation>
        </message>
        <message>
            <source>Class gathered</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>Clase reunida</translation>
        </message>
        <message>
            <source>the folder the class hands in to</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>la carpeta donde entrega la clase</translation>
        </message>
        <message>
            <source>Progress</source>
            <extracomment>ui/class_gather.py, ui/job_bars.py</extracomment>
            <translation>Avance</translation>
        </message>
        <message>
            <source>&amp;Folder</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>&amp;Carpeta</translation>
        </message>
        <message>
            <source>Se&amp;t</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>Con&amp;junto</translation>
        </message>
        <message>
            <source>Steps</source>
            <extracomment>ui/class_gather.py, ui/lesson_view.py</extracomment>
            <translation>Pasos</translation>
        </message>
        <message>
            <source>P&amp;lots</source>
            <extracomment>ui/class_gather.py, ui/menus.py</extracomment>
            <translation>&amp;Gráficos</translation>
        </message>
        <message>
            <source>&amp;Replay</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>Re&amp;petición</translation>
        </message>
        <message>
            <source>The debrief of the attempt that is chosen, with its replay</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>El balance del intento elegido, con su repetición</translation>
        </message>
        <message>
            <source>Save as CS&amp;V…</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>Guardar CS&amp;V…</translation>
        </message>
        <message>
            <source>Cancelled. What was marked so far is kept for the next time.</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>Cancelado. Lo calificado hasta ahora se guarda para la próxima vez.</translation>
        </message>
        <message>
            <source>{pupil}, {exercise}: {percent} % in {minutes} minutes. Replay shows how.</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>{pupil}, {exercise}: {percent} % en {minutes} minutos. Repetición muestra cómo.</translation>
        </message>
        <message>
            <source>The class's folder</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>La carpeta de la clase</translation>
        </message>
        <message>
            <source>Open a set</source>
            <extracomment>ui/class_gather.py, ui/class_maker.py</extracomment>
            <translation>Abrir un conjunto</translation>
        </message>
        <message>
            <source>Save the attempts</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>Guardar los intentos</translation>
        </message>
        <message>
            <source>Tables (*.csv)</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>Tablas (*.csv)</translation>
        </message>
        <message>
            <source>the set made in this session</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>el conjunto hecho en esta sesión</translation>
        </message>
        <message>
            <source>a code, or a set's file; may be left out</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>un código o el archivo de un conjunto; se puede omitir</translation>
        </message>
        <message>
            <source>&amp;Gather</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>&amp;Reunir</translation>
        </message>
        <message>
            <source>C&amp;ancel</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>C&amp;ancelar</translation>
        </message>
        <message>
            <source>&amp;Pupils</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>A&amp;lumnos</translation>
        </message>
        <message>
            <source>Atte&amp;mpts</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>Inten&amp;tos</translation>
        </message>
        <message>
            <source>&amp;Steps</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>Pa&amp;sos</translation>
        </message>
        <message>
            <source>&amp;What goes wrong</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>&amp;Qué sale mal</translation>
        </message>
        <message>
            <source>Choose the folder the class hands in to first</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>Elija antes la carpeta donde entrega la clase</translation>
        </message>
        <message>
            <source>{count} were passed over; the table of attempts says why.</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>Se omitieron {count}; la tabla de intentos dice por qué.</translation>
        </message>
        <message>
            <source>Nothing from: {names}.</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>Nada de: {names}.</translation>
        </message>
        <message>
            <source>Choose an attempt first</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>Elija antes un intento</translation>
        </message>
        <message>
            <source>&amp;Choose…</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>&amp;Elegir…</translation>
        </message>
        <message>
            <source>there is nothing to replay</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>no hay nada que repetir</translation>
        </message>
        <message>
            <source>Text (*.txt);;Table (*.csv)</source>
            <extracomment>ui/class_maker.py, ui/practice_window.py</extracomment>
            <translation>Texto (*.txt);;Tabla (*.csv)</translation>
        </message>
        <message>
            <source>Class set</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>Conjunto de clase</translation>
        </message>
        <message>
            <source>&amp;Set</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>Con&amp;junto</translation>
        </message>
        <message>
            <source>Answer &amp;key</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>Clave de &amp;respuestas</translation>
        </message>
        <message>
            <source>Class code</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>Código de clase</translation>
        </message>
        <message>
            <source>Co&amp;py</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>Co&amp;piar</translation>
        </message>
        <message>
            <source>&amp;Gather…</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>Re&amp;unir…</translation>
        </message>
        <message>
            <source>Exercise from a file</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>Ejercicio de un archivo</translation>
        </message>
        <message>
            <source>this set</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>este conjunto</translation>
        </message>
        <message>
            <source>Title and pupils are not in the code; they travel in the set's file.</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>Título y alumnos no están en el código; van en el archivo del conjunto.</translation>
        </message>
        <message>
            <source>The key is being made…</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>Se está haciendo la clave…</translation>
        </message>
        <message>
            <source>The code is on the clipboard.</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>El código está en el portapapeles.</translation>
        </message>
        <message>
            <source>Save the set</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>Guardar el conjunto</translation>
        </message>
        <message>
            <source>Class sets (*.json)</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>Conjuntos de clase (*.json)</translation>
        </message>
        <message>
            <source>Save the answer key</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>Guardar la clave de respuestas</translation>
        </message>
        <message>
            <source>Save set &amp;as…</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>Guardar conjunto &amp;como…</translation>
        </message>
        <message>
            <source>&amp;Open set…</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>A&amp;brir conjunto…</translation>
        </message>
        <message>
            <source>For the instructor: it tells every hidden fault.</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>Para el instructor: revela todos los fallos ocultos.</translation>
        </message>
        <message>
            <source>Save &amp;key…</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>Guardar cla&amp;ve…</translation>
        </message>
        <message>
            <source>There is no set yet.</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>Aún no hay conjunto.</translation>
        </message>
        <message>
            <source>Exercises there are</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>Ejercicios que hay</translation>
        </message>
        <message>
            <source>Exercises of the set, in order</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>Ejercicios del conjunto, en orden</translation>
        </message>
        <message>
            <source>A&amp;dd ▶</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>Aña&amp;dir ▶</translation>
        </message>
        <message>
            <source>From a &amp;file…</source>
            <extracomment>ui/class_maker_fields.py, ui/class_paper_dialog.py, ui/practice_choice.py</extracomment>
            <translation>De un &amp;archivo…</translation>
        </message>
        <message>
            <source>&amp;Write one…</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>&amp;Escribir uno…</translation>
        </message>
        <message>
            <source>&amp;Remove</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>&amp;Quitar</translation>
        </message>
        <message>
            <source>Settings</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>Ajustes</translation>
        </message>
        <message>
            <source>&amp;Hints may be asked for</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>Se pueden pedir &amp;pistas</translation>
        </message>
        <message>
            <source>A straightedge of this unit, and blades of it beside the exercise's own</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>Una regla de esta unidad, y galgas de ella además de las del ejercicio</translation>
        </message>
        <message>
            <source>as the exercise says</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>como diga el ejercicio</translation>
        </message>
        <message>
            <source>Shown to the pupils as a guide; time is not marked</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>Se muestra a los alumnos como guía; el tiempo no se califica</translation>
        </message>
        <message>
            <source>The same number draws the same faults</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>El mismo número da los mismos fallos</translation>
        </message>
        <message>
            <source>one name or number a line</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>un nombre o número por línea</translation>
        </message>
        <message>
            <source>&amp;Title</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>&amp;Título</translation>
        </message>
        <message>
            <source>Fau&amp;lts</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>Fa&amp;llos</translation>
        </message>
        <message>
            <source>&amp;Blades, edge</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>&amp;Galgas, regla</translation>
        </message>
        <message>
            <source>&amp;Minutes</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>&amp;Minutos</translation>
        </message>
        <message>
            <source>&amp;Number</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>&amp;Número</translation>
        </message>
        <message>
            <source>Level {level} · {name}</source>
            <extracomment>ui/class_maker_fields.py, ui/class_paper_dialog.py, ui/practice_choice.py</extracomment>
            <translation>Nivel {level} · {name}</translation>
        </message>
        <message>
            <source>&amp;Up</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>&amp;Subir</translation>
        </message>
        <message>
            <source>Do&amp;wn</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>&amp;Bajar</translation>
        </message>
        <message>
            <source>&amp;Exercises</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>E&amp;jercicios</translation>
        </message>
        <message>
            <source>&amp;In this set, in order</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>En este conjunto, en &amp;orden</translation>
        </message>
        <message>
            <source>the same for everyone</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>el mismo para todos</translation>
        </message>
        <message>
            <source>one of their own for each pupil</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>uno propio para cada alumno</translation>
        </message>
        <message>
            <source>as the exercise has them</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>como los tiene el ejercicio</translation>
        </message>
        <message>
            <source>metric, too</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>métricas también</translation>
        </message>
        <message>
            <source>in inches, too</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>en pulgadas también</translation>
        </message>
        <message>
            <source>Pu&amp;pils (not in the code; for the key, and to see who is missing)</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>Al&amp;umnos (no en el código; para la clave y para ver quién falta)</translation>
        </message>
        <message>
            <source>Draw ane&amp;w</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>Nue&amp;vo sorteo</translation>
        </message>
        <message>
            <source>Add an exercise: a set has one at least</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>Añada un ejercicio: un conjunto tiene al menos uno</translation>
        </message>
        <message>
            <source>Worksheet of an exercise</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>Ficha de un ejercicio</translation>
        </message>
        <message>
            <source>Answer key of an exercise</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>Clave de respuestas de un ejercicio</translation>
        </message>
        <message>
            <source>Name the parts: sheet</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>Nombre las piezas: ficha</translation>
        </message>
        <message>
            <source>Pictures of the bench as it stands</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>Dibujos del banco como está</translation>
        </message>
        <message>
            <source>Names</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>Nombres</translation>
        </message>
        <message>
            <source>Numbers, with lines to write on</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>Números, con líneas para escribir</translation>
        </message>
        <message>
            <source>Numbers, filled in</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>Números, rellenados</translation>
        </message>
        <message>
            <source>Nothing</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>Nada</translation>
        </message>
        <message>
            <source>A4</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>A4</translation>
        </message>
        <message>
            <source>Letter</source>
            <extracomment>ui/class_paper_dialog.py, ui/job_preview.py</extracomment>
            <translation>Carta</translation>
        </message>
        <message>
            <source>Saved {file}: 1 page.</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>Guardado {file}: 1 página.</translation>
        </message>
        <message>
            <source>JSON files (*.json);;All files (*)</source>
            <extracomment>ui/class_paper_dialog.py, ui/practice_choice.py</extracomment>
            <translation>Archivos JSON (*.json);;Todos los archivos (*)</translation>
        </message>
        <message>
            <source>Paper for a class</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>Papel para una clase</translation>
        </message>
        <message>
            <source>With the exercise's &amp;hints</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>Con las &amp;pistas del ejercicio</translation>
        </message>
        <message>
            <source>With pictures whose &amp;parts are to be named</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>Con dibujos de pie&amp;zas por nombrar</translation>
        </message>
        <message>
            <source>With what there is to sa&amp;y of each part</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>Con lo que ha&amp;y que decir de cada pieza</translation>
        </message>
        <message>
            <source>&amp;What</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>&amp;Qué</translation>
        </message>
        <message>
            <source>&amp;Exercise</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>&amp;Ejercicio</translation>
        </message>
        <message>
            <source>Beside the &amp;parts</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>&amp;Junto a las piezas</translation>
        </message>
        <message>
            <source>Paper si&amp;ze</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>&amp;Tamaño de papel</translation>
        </message>
        <message>
            <source>&amp;Save as PDF…</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>&amp;Guardar como PDF…</translation>
        </message>
        <message>
            <source>Close</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>Cerrar</translation>
        </message>
        <message>
            <source>PDF (*.pdf)</source>
            <extracomment>ui/class_paper_dialog.py, ui/doors.py, ui/job_reports.py</extracomment>
            <translation>PDF (*.pdf)</translation>
        </message>
        <message>
            <source>A code is a whole number, such as 4711.</source>
            <extracomment>ui/class_paper_dialog.py, ui/practice_choice.py</extracomment>
            <translation>Un código es un número entero, p. ej. 4711.</translation>
        </message>
        <message>
            <source>Saved {file}: {pages} pages.</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>Guardado {file}: {pages} páginas.</translation>
        </message>
        <message>
            <source>Pictures</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>Dibujos</translation>
        </message>
        <message>
            <source>Choose at least one picture.</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>Elija al menos un dibujo.</translation>
        </message>
        <message>
            <source>Plots of the class</source>
            <extracomment>ui/class_plots.py</extracomment>
            <translation>Gráficos de la clase</translation>
        </message>
        <message>
            <source>Save plots…</source>
            <extracomment>ui/class_plots.py</extracomment>
            <translation>Guardar gráficos…</translation>
        </message>
        <message>
            <source>{count} attempts of {pupils} pupils count; {passed} passed. ● passed, × not passed.</source>
            <extracomment>ui/class_plots.py</extracomment>
            <translation>Cuentan {count} intentos de {pupils} alumnos; {passed} aprobados. ● aprobado, × no aprobado.</translation>
        </message>
        <message>
            <source>marks [%]</source>
            <extracomment>ui/class_plots.py</extracomment>
            <translation>nota [%]</translation>
        </message>
        <message>
            <source>attempts</source>
            <extracomment>ui/class_plots.py</extracomment>
            <translation>intentos</translation>
        </message>
        <message>
            <source>minutes, by the pupils' clocks</source>
            <extracomment>ui/class_plots.py</extracomment>
            <translation>minutos, según los relojes de los alumnos</translation>
        </message>
        <message>
            <source>Marks against time</source>
            <extracomment>ui/class_plots.py</extracomment>
            <translation>Nota según el tiempo</translation>
        </message>
        <message>
            <source>mean marks [%]</source>
            <extracomment>ui/class_plots.py</extracomment>
            <translation>nota media [%]</translation>
        </message>
        <message>
            <source>Steps, the weakest above</source>
            <extracomment>ui/class_plots.py</extracomment>
            <translation>Pasos, el más flojo arriba</translation>
        </message>
        <message>
            <source>missed (hatched), then found</source>
            <extracomment>ui/class_plots.py</extracomment>
            <translation>no hallados (rayado), luego hallados</translation>
        </message>
        <message>
            <source>Faults</source>
            <extracomment>ui/class_plots.py</extracomment>
            <translation>Fallos</translation>
        </message>
        <message>
            <source>Save the plots</source>
            <extracomment>ui/class_plots.py, ui/plot_sheet.py</extracomment>
            <translation>Guardar los gráficos</translation>
        </message>
        <message>
            <source>Contacts, magnified</source>
            <extracomment>ui/contact_view.py</extracomment>
            <translation>Contactos, ampliados</translation>
        </message>
        <message>
            <source>Contacts closed.</source>
            <extracomment>ui/contact_view.py</extracomment>
            <translation>Contactos cerrados.</translation>
        </message>
        <message>
            <source>Contacts open {gap}.</source>
            <extracomment>ui/contact_view.py</extracomment>
            <translation>Contactos abiertos {gap}.</translation>
        </message>
        <message>
            <source>Contacts open {gap}</source>
            <extracomment>ui/contact_view.py</extracomment>
            <translation>Contactos abiertos {gap}</translation>
        </message>
        <message>
            <source>breaker end, magnified</source>
            <extracomment>ui/contact_view.py</extracomment>
            <translation>lado del ruptor, ampliado</translation>
        </message>
        <message>
            <source>No measure in practice: try blades.</source>
            <extracomment>ui/contact_view.py</extracomment>
            <translation>Sin medida en la práctica: pruebe galgas.</translation>
        </message>
        <message>
            <source>Contacts</source>
            <extracomment>ui/contact_view.py, ui/practice_work.py</extracomment>
            <translation>Contactos</translation>
        </message>
        <message>
            <source>on its intake stroke</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>en admisión</translation>
        </message>
        <message>
            <source>on its compression stroke</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>en compresión</translation>
        </message>
        <message>
            <source>on its power stroke</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>en expansión</translation>
        </message>
        <message>
            <source>on its exhaust stroke</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>en escape</translation>
        </message>
        <message>
            <source>intake stroke</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>admisión</translation>
        </message>
        <message>
            <source>compression stroke</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>compresión</translation>
        </message>
        <message>
            <source>power stroke</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>expansión</translation>
        </message>
        <message>
            <source>exhaust stroke</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>escape</translation>
        </message>
        <message>
            <source>No. 1 {stroke}, {where}, piston {drop} down.</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>N.º 1 {stroke}, {where}, pistón {drop} bajado.</translation>
        </message>
        <message>
            <source>No. 1: {stroke}, {where}, piston {drop} down</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>N.º 1: {stroke}, {where}, pistón {drop} bajado</translation>
        </message>
        <message>
            <source>Seen from the propeller end. No. 1 cut open; its stroke is felt at the plug hole.</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>Visto desde el lado de la hélice. N.º 1 en corte; su tiempo se nota en el agujero de bujía.</translation>
        </message>
        <message>
            <source>{degrees}° before top dead centre</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>{degrees}° antes del punto muerto superior</translation>
        </message>
        <message>
            <source>{degrees}° after top dead centre</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>{degrees}° después del punto muerto superior</translation>
        </message>
        <message>
            <source>{degrees}° BTDC</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>{degrees}° antes PMS</translation>
        </message>
        <message>
            <source>{degrees}° ATDC</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>{degrees}° desp. PMS</translation>
        </message>
        <message>
            <source>No. 1: {stroke}, {where}</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>N.º 1: {stroke}, {where}</translation>
        </message>
        <message>
            <source>No engine</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>Sin motor</translation>
        </message>
        <message>
            <source>Approached against rotation, play of {play}° of rotor not taken up</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>Llegado contra el giro, juego de {play}° de rotor sin absorber</translation>
        </message>
        <message>
            <source>Against rotation: play of {play}° not taken up</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>Contra el giro: juego de {play}° sin absorber</translation>
        </message>
        <message>
            <source>No engine.</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>Sin motor.</translation>
        </message>
        <message>
            <source>Propeller end</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>Lado de la hélice</translation>
        </message>
        <message>
            <source>No. 1 cut open. Its stroke is felt at the plug hole.</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>N.º 1 en corte. Su tiempo se nota en el agujero de bujía.</translation>
        </message>
        <message>
            <source>rod drawn on the crank pin</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>biela dibujada en la muñequilla</translation>
        </message>
        <message>
            <source>wanted</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>deseado</translation>
        </message>
        <message>
            <source>opens</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>abre</translation>
        </message>
        <message>
            <source>Mar&amp;ks</source>
            <extracomment>ui/debrief_view.py</extracomment>
            <translation>P&amp;untos</translation>
        </message>
        <message>
            <source>Tr&amp;uth</source>
            <extracomment>ui/debrief_view.py</extracomment>
            <translation>&amp;Verdad</translation>
        </message>
        <message>
            <source>&amp;Readings</source>
            <extracomment>ui/debrief_view.py, ui/own_pictures.py</extracomment>
            <translation>&amp;Lecturas</translation>
        </message>
        <message>
            <source>&amp;Time line</source>
            <extracomment>ui/debrief_view.py</extracomment>
            <translation>Línea de &amp;tiempo</translation>
        </message>
        <message>
            <source>P&amp;ath</source>
            <extracomment>ui/debrief_view.py</extracomment>
            <translation>Ca&amp;mino</translation>
        </message>
        <message>
            <source>&amp;Play</source>
            <extracomment>ui/debrief_view.py</extracomment>
            <translation>&amp;Reproducir</translation>
        </message>
        <message>
            <source>Moment of the attempt</source>
            <extracomment>ui/debrief_view.py</extracomment>
            <translation>Momento del intento</translation>
        </message>
        <message>
            <source>Choose a line to see that moment</source>
            <extracomment>ui/debrief_view.py</extracomment>
            <translation>Elija una línea para ver ese momento</translation>
        </message>
        <message>
            <source>&amp;Pause</source>
            <extracomment>ui/debrief_view.py</extracomment>
            <translation>&amp;Pausa</translation>
        </message>
        <message>
            <source>lamp {lamp}</source>
            <extracomment>ui/debrief_view.py</extracomment>
            <translation>lámpara {lamp}</translation>
        </message>
        <message>
            <source>disc {disc}</source>
            <extracomment>ui/debrief_view.py</extracomment>
            <translation>disco {disc}</translation>
        </message>
        <message>
            <source>{danger} ({times} times)</source>
            <extracomment>ui/debrief_view.py</extracomment>
            <translation>{danger} ({times} veces)</translation>
        </message>
        <message>
            <source>Magneto and installation files (*.json);;All files (*)</source>
            <extracomment>ui/doors.py</extracomment>
            <translation>Archivos de magneto e instalación (*.json);;Todos los archivos (*)</translation>
        </message>
        <message>
            <source>Tables (*.csv *.tsv *.txt);;All files (*)</source>
            <extracomment>ui/doors.py</extracomment>
            <translation>Tablas (*.csv *.tsv *.txt);;Todos los archivos (*)</translation>
        </message>
        <message>
            <source>Drag the rotor or cam, the backplate, or the contact screw; or take one in hand with 1, 2, 3 and turn it with the arrow keys, Page Up and Page Down, or the wheel: ten times finer with Shift, coarser with Alt. A dragged rotor catches at contacts just open, top of lobe, E-gap and neutral; Alt lets it pass. Double-click puts a part back. Space holds the rotor or lets it go. In the drive end, left and right move the magneto flange, up and down the disc, one tooth at a time. Ctrl and the wheel zoom, the middle button pans. Numbers can be typed with their unit: 1.5°, 13 thou, 0.33 mm.

Positive angles go the way the rotor turns in service; a positive contact-screw angle brings the contacts closer.</source>
            <extracomment>ui/doors.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Print the tooth-shift plan to PDF</source>
            <extracomment>ui/doors.py</extracomment>
            <translation>Imprimir el plan del cambio de dientes a PDF</translation>
        </message>
        <message>
            <source>magview {version}: a training and planning aid; the maker's current manual governs.</source>
            <extracomment>ui/doors.py</extracomment>
            <translation>magview {version}: una ayuda para formación y planificación; rige el manual vigente del fabricante.</translation>
        </message>
        <message>
            <source>Keys and cautions</source>
            <extracomment>ui/doors.py, ui/job_reports.py, ui/practice_menus.py</extracomment>
            <translation>Teclas y precauciones</translation>
        </message>
        <message>
            <source>Open a magneto or an installation</source>
            <extracomment>ui/doors.py</extracomment>
            <translation>Abrir una magneto o una instalación</translation>
        </message>
        <message>
            <source>Open a table of the lift</source>
            <extracomment>ui/doors.py, ui/own_files_work.py</extracomment>
            <translation>Abrir una tabla de la alzada</translation>
        </message>
        <message>
            <source>Save the magneto</source>
            <extracomment>ui/doors.py, ui/lift_dialog.py</extracomment>
            <translation>Guardar la magneto</translation>
        </message>
        <message>
            <source>Saved {name}.</source>
            <extracomment>ui/doors.py, ui/lift_dialog.py, ui/plot_sheet.py, ui/practice_window.py</extracomment>
            <translation>Guardado {name}.</translation>
        </message>
        <message>
            <source>✓ Printed 1 page to {file}.</source>
            <extracomment>ui/doors.py, ui/job_reports.py</extracomment>
            <translation>✓ Impresa 1 página en {file}.</translation>
        </message>
        <message>
            <source>✓ Printed {count} pages to {file}.</source>
            <extracomment>ui/doors.py, ui/job_reports.py</extracomment>
            <translation>✓ Impresas {count} páginas en {file}.</translation>
        </message>
        <message>
            <source>Both faces of the disc: drive flange outside, magneto flange inside.</source>
            <extracomment>ui/drive_view.py</extracomment>
            <translation>Ambas caras del disco: brida motriz fuera, brida de la magneto dentro.</translation>
        </message>
        <message>
            <source>Drive end of the magneto: the toothed coupling</source>
            <extracomment>ui/drive_view.py</extracomment>
            <translation>Lado de accionamiento de la magneto: el acoplamiento dentado</translation>
        </message>
        <message>
            <source>No marks on it.</source>
            <extracomment>ui/drive_view.py</extracomment>
            <translation>Sin marcas.</translation>
        </message>
        <message>
            <source>Drive end</source>
            <extracomment>ui/drive_view.py</extracomment>
            <translation>Lado de accionamiento</translation>
        </message>
        <message>
            <source>This magneto is not on an engine.</source>
            <extracomment>ui/drive_view.py</extracomment>
            <translation>Esta magneto no está en un motor.</translation>
        </message>
        <message>
            <source>Left magneto, drive end</source>
            <extracomment>ui/drive_view.py</extracomment>
            <translation>Magneto izquierda, lado de accionamiento</translation>
        </message>
        <message>
            <source>Right magneto, drive end</source>
            <extracomment>ui/drive_view.py</extracomment>
            <translation>Magneto derecha, lado de accionamiento</translation>
        </message>
        <message>
            <source>This magneto is not on an engine. Open an installation to time it to one.</source>
            <extracomment>ui/drive_view.py, ui/timing_panel.py</extracomment>
            <translation>Esta magneto no está en un motor. Abra una instalación para calarla a uno.</translation>
        </message>
        <message>
            <source>after</source>
            <extracomment>ui/drive_view.py</extracomment>
            <translation>después</translation>
        </message>
        <message>
            <source>{name}: a picture's name must end in {kinds}</source>
            <extracomment>ui/export.py</extracomment>
            <translation>{name}: el nombre de una imagen debe acabar en {kinds}</translation>
        </message>
        <message>
            <source>there are no fonts to print with; on Debian or Ubuntu fonts-dejavu-core has some</source>
            <extracomment>ui/export.py</extracomment>
            <translation>no hay tipos de letra para imprimir; en Debian o Ubuntu, fonts-dejavu-core trae algunos</translation>
        </message>
        <message>
            <source>{name}: cannot be written: {reason}</source>
            <extracomment>ui/export.py</extracomment>
            <translation>{name}: no se puede escribir: {reason}</translation>
        </message>
        <message>
            <source>the picture could not be saved</source>
            <extracomment>ui/export.py</extracomment>
            <translation>no se pudo guardar la imagen</translation>
        </message>
        <message>
            <source>Find in this page</source>
            <extracomment>ui/guide_find.py</extracomment>
            <translation>Buscar en esta página</translation>
        </message>
        <message>
            <source>Match &amp;case</source>
            <extracomment>ui/guide_find.py</extracomment>
            <translation>&amp;Mayúsculas</translation>
        </message>
        <message>
            <source>&amp;Previous</source>
            <extracomment>ui/guide_find.py</extracomment>
            <translation>&amp;Anterior</translation>
        </message>
        <message>
            <source>Ne&amp;xt</source>
            <extracomment>ui/guide_find.py</extracomment>
            <translation>&amp;Siguiente</translation>
        </message>
        <message>
            <source>C&amp;lose</source>
            <extracomment>ui/guide_find.py</extracomment>
            <translation>&amp;Cerrar</translation>
        </message>
        <message>
            <source>From the other end</source>
            <extracomment>ui/guide_find.py</extracomment>
            <translation>Desde el otro extremo</translation>
        </message>
        <message>
            <source>Not on this page</source>
            <extracomment>ui/guide_find.py</extracomment>
            <translation>No está en esta página</translation>
        </message>
        <message>
            <source>Page of the guide</source>
            <extracomment>ui/guide_page.py</extracomment>
            <translation>Página de la guía</translation>
        </message>
        <message>
            <source>Guide – magview</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Guía – magview</translation>
        </message>
        <message>
            <source>Search the guide</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Buscar en la guía</translation>
        </message>
        <message>
            <source>Contents of the guide</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Índice de la guía</translation>
        </message>
        <message>
            <source>What was found</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Lo hallado</translation>
        </message>
        <message>
            <source>Guide</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Guía</translation>
        </message>
        <message>
            <source>◀ Back</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>◀ Atrás</translation>
        </message>
        <message>
            <source>Forward ▶</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Adelante ▶</translation>
        </message>
        <message>
            <source>Contents</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Índice</translation>
        </message>
        <message>
            <source>Search</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Buscar</translation>
        </message>
        <message>
            <source>Find in page</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Buscar en la página</translation>
        </message>
        <message>
            <source>Smaller</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Más pequeño</translation>
        </message>
        <message>
            <source>Larger</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Más grande</translation>
        </message>
        <message>
            <source>Usual size</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Tamaño normal</translation>
        </message>
        <message>
            <source>Find next</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Buscar siguiente</translation>
        </message>
        <message>
            <source>Find previous</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Buscar anterior</translation>
        </message>
        <message>
            <source>End searching, or close</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Acabar la búsqueda o cerrar</translation>
        </message>
        <message>
            <source>Close the guide</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Cerrar la guía</translation>
        </message>
        <message>
            <source>{page} – guide – magview</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>{page} – guía – magview</translation>
        </message>
        <message>
            <source>{percent} %</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>{percent} %</translation>
        </message>
        <message>
            <source>Nothing found.</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Nada hallado.</translation>
        </message>
        <message>
            <source>One section found.</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Una sección hallada.</translation>
        </message>
        <message>
            <source>{count} sections found.</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>{count} secciones halladas.</translation>
        </message>
        <message>
            <source>Nothing found. Try fewer words, or the beginning of one.</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Nada hallado. Pruebe menos palabras o el comienzo de una.</translation>
        </message>
        <message>
            <source>{text} is outside {low} to {high}: {taken} is taken</source>
            <extracomment>ui/inputs.py</extracomment>
            <translation>{text} está fuera de {low} a {high}: se toma {taken}</translation>
        </message>
        <message>
            <source>{angle} before TDC</source>
            <extracomment>ui/inputs.py</extracomment>
            <translation>{angle} antes del PMS</translation>
        </message>
        <message>
            <source>{angle} after TDC</source>
            <extracomment>ui/inputs.py</extracomment>
            <translation>{angle} después del PMS</translation>
        </message>
        <message>
            <source>{field}: {text} is refused, it must be {low} to {high}; {kept} is kept</source>
            <extracomment>ui/inputs.py</extracomment>
            <translation>{field}: {text} se rechaza, debe ser de {low} a {high}; se mantiene {kept}</translation>
        </message>
        <message>
            <source>Aircraft, engine, magneto</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>Aeronave, motor, magneto</translation>
        </message>
        <message>
            <source>Next check, signature</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>Próximo control, firma</translation>
        </message>
        <message>
            <source>Earlier sheets</source>
            <extracomment>ui/job_bars.py, ui/job_history.py</extracomment>
            <translation>Hojas anteriores</translation>
        </message>
        <message>
            <source>As printed</source>
            <extracomment>ui/job_bars.py, ui/job_preview.py</extracomment>
            <translation>Como se imprime</translation>
        </message>
        <message>
            <source>→ skipped: {reason}</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>→ omitida: {reason}</translation>
        </message>
        <message>
            <source>○ not begun</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>○ sin empezar</translation>
        </message>
        <message>
            <source>✗ begun; out of limits</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>✗ empezada; fuera de límites</translation>
        </message>
        <message>
            <source>◐ begun; {count} missing</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>◐ empezada; faltan {count}</translation>
        </message>
        <message>
            <source>◐ nothing missing; not marked done</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>◐ no falta nada; sin marcar como hecha</translation>
        </message>
        <message>
            <source>✗ done, but {what}</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>✗ hecho, pero {what}</translation>
        </message>
        <message>
            <source>△ done; {what}</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>△ hecho; {what}</translation>
        </message>
        <message>
            <source>✓ done</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>✓ hecha</translation>
        </message>
        <message>
            <source>Stages done or skipped</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>Etapas hechas u omitidas</translation>
        </message>
        <message>
            <source>Stages of the job</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>Etapas del trabajo</translation>
        </message>
        <message>
            <source>○ not signed</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>○ sin firmar</translation>
        </message>
        <message>
            <source>{come} of {count} stages done or skipped</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>{come} de {count} etapas hechas u omitidas</translation>
        </message>
        <message>
            <source>✓ Nothing is missing.</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>✓ No falta nada.</translation>
        </message>
        <message>
            <source>✓ Done.</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>✓ Hecho.</translation>
        </message>
        <message>
            <source>State of the file</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>Estado del archivo</translation>
        </message>
        <message>
            <source>&amp;Reload</source>
            <extracomment>ui/job_bars.py, ui/job_window.py</extracomment>
            <translation>&amp;Recargar</translation>
        </message>
        <message>
            <source>✗ Not saved: {sentence}.</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>✗ No guardado: {sentence}.</translation>
        </message>
        <message>
            <source>✓ signed</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>✓ firmada</translation>
        </message>
        <message>
            <source>✗ changed since signed</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>✗ cambiada desde la firma</translation>
        </message>
        <message>
            <source>missing in {count}</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>faltan en {count}</translation>
        </message>
        <message>
            <source>Still missing</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>Aún falta</translation>
        </message>
        <message>
            <source>Mark as &amp;done</source>
            <extracomment>ui/job_bars.py, ui/job_menus.py</extracomment>
            <translation>&amp;Marcar hecha</translation>
        </message>
        <message>
            <source>S&amp;kip…</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>&amp;Omitir…</translation>
        </message>
        <message>
            <source>Open a&amp;gain</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>&amp;Reabrir</translation>
        </message>
        <message>
            <source>Ne&amp;xt page</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>Página si&amp;guiente</translation>
        </message>
        <message>
            <source>✗ {stage} is marked as done, with {what}.</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>✗ {stage} está marcado como hecho, con {what}.</translation>
        </message>
        <message>
            <source>✗ Nothing is missing, but {what}.</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>✗ No falta nada, pero {what}.</translation>
        </message>
        <message>
            <source>✗ Done, but {what}.</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>✗ Hecho, pero {what}.</translation>
        </message>
        <message>
            <source>✓ Nothing is missing; {what}.</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>✓ No falta nada; {what}.</translation>
        </message>
        <message>
            <source>△ Done; {what}.</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>△ Hecho; {what}.</translation>
        </message>
        <message>
            <source>&amp;Try again</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>Rein&amp;tentar</translation>
        </message>
        <message>
            <source>Read only: {sentence}.</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>Solo lectura: {sentence}.</translation>
        </message>
        <message>
            <source>1 reading out</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>1 lectura fuera</translation>
        </message>
        <message>
            <source>{count} readings out</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>{count} lecturas fuera</translation>
        </message>
        <message>
            <source>✓ Done: {stage}; {what}.</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>✓ Hecho: {stage}; {what}.</translation>
        </message>
        <message>
            <source>✓ Done: {stage}.</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>✓ Hecha: {stage}.</translation>
        </message>
        <message>
            <source>{file} was changed by another program while it was open here; reload it, or save elsewhere.</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>{file} lo cambió otro programa mientras estaba abierto aquí; recárguelo o guarde en otro sitio.</translation>
        </message>
        <message>
            <source>Still missing: {what}.</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>Aún falta: {what}.</translation>
        </message>
        <message>
            <source>at {hours} h: gap {value}, between {low} and {high} 95 times in 100</source>
            <extracomment>ui/job_drift_sheet.py</extracomment>
            <translation>a las {hours} h: apertura {value}, entre {low} y {high} 95 veces de cada 100</translation>
        </message>
        <message>
            <source>at {hours} h: opening {value}, between {low} and {high} 95 times in 100</source>
            <extracomment>ui/job_drift_sheet.py</extracomment>
            <translation>a las {hours} h: abre {value}, entre {low} y {high} 95 veces de cada 100</translation>
        </message>
        <message>
            <source>at {hours} h: fires {value} before top dead centre, between {low} and {high} 95 times in 100</source>
            <extracomment>ui/job_drift_sheet.py</extracomment>
            <translation>a las {hours} h: enciende {value} antes del punto muerto superior, entre {low} y {high} 95 veces de cada 100</translation>
        </message>
        <message>
            <source>Drift of gap and timing</source>
            <extracomment>ui/job_drift_sheet.py</extracomment>
            <translation>Deriva de apertura y calado</translation>
        </message>
        <message>
            <source>largest gap [mm]</source>
            <extracomment>ui/job_drift_sheet.py, ui/plot_lift.py, ui/plot_trials.py, ui/plot_wear.py</extracomment>
            <translation>apertura máxima [mm]</translation>
        </message>
        <message>
            <source>opens late [rotor deg]</source>
            <extracomment>ui/job_drift_sheet.py, ui/plot_coil.py, ui/plot_lift.py, ui/plot_wear.py</extracomment>
            <translation>abre tarde [° rotor]</translation>
        </message>
        <message>
            <source>fires BTDC [crank deg]</source>
            <extracomment>ui/job_drift_sheet.py</extracomment>
            <translation>enciende antes del PMS [° cig.]</translation>
        </message>
        <message>
            <source>largest gap [{unit}]</source>
            <extracomment>ui/job_drift_sheet.py, ui/plot_lift.py, ui/plot_trials.py, ui/plot_wear.py</extracomment>
            <translation>apertura máxima [{unit}]</translation>
        </message>
        <message>
            <source>largest gap found [mm]</source>
            <extracomment>ui/job_drift_sheet.py</extracomment>
            <translation>apertura máxima hallada [mm]</translation>
        </message>
        <message>
            <source>largest gap left [mm]</source>
            <extracomment>ui/job_drift_sheet.py</extracomment>
            <translation>apertura máxima dejada [mm]</translation>
        </message>
        <message>
            <source>opening found [rotor deg]</source>
            <extracomment>ui/job_drift_sheet.py</extracomment>
            <translation>abre, hallado [° rotor]</translation>
        </message>
        <message>
            <source>opening left [rotor deg]</source>
            <extracomment>ui/job_drift_sheet.py</extracomment>
            <translation>abre, dejado [° rotor]</translation>
        </message>
        <message>
            <source>fires found [crank deg BTDC]</source>
            <extracomment>ui/job_drift_sheet.py</extracomment>
            <translation>enciende, hallado [° cigüeñal antes del PMS]</translation>
        </message>
        <message>
            <source>fires left [crank deg BTDC]</source>
            <extracomment>ui/job_drift_sheet.py</extracomment>
            <translation>enciende, dejado [° cigüeñal antes del PMS]</translation>
        </message>
        <message>
            <source>found</source>
            <extracomment>ui/job_drift_sheet.py</extracomment>
            <translation>hallado</translation>
        </message>
        <message>
            <source>predicted</source>
            <extracomment>ui/job_drift_sheet.py</extracomment>
            <translation>previsto</translation>
        </message>
        <message>
            <source>interval</source>
            <extracomment>ui/job_drift_sheet.py</extracomment>
            <translation>intervalo</translation>
        </message>
        <message>
            <source>year-month-day</source>
            <extracomment>ui/job_edits.py</extracomment>
            <translation>año-mes-día</translation>
        </message>
        <message>
            <source>Today</source>
            <extracomment>ui/job_edits.py</extracomment>
            <translation>Hoy</translation>
        </message>
        <message>
            <source>Missing in {what}.</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation>Falta en {what}.</translation>
        </message>
        <message>
            <source>To be cleared up: see {stage}.</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation>Por aclarar: vea {stage}.</translation>
        </message>
        <message>
            <source>Not done yet: {stages}.</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation>Aún sin hacer: {stages}.</translation>
        </message>
        <message>
            <source>Out of limits, or not as it must be: see {stage}.</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation>Fuera de límites o no como debe ser: vea {stage}.</translation>
        </message>
        <message>
            <source>Not signed.</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation>Sin firmar.</translation>
        </message>
        <message>
            <source>What is missing, next check, signature</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation>Qué falta, próximo control, firma</translation>
        </message>
        <message>
            <source>What is missing</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation>Qué falta</translation>
        </message>
        <message>
            <source>Not judged</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation>Sin juzgar</translation>
        </message>
        <message>
            <source>Signed by {who}</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation>Firmada por {who}</translation>
        </message>
        <message>
            <source>Signature taken back</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation>Firma retirada</translation>
        </message>
        <message>
            <source>Changed since it was signed: the signature does not cover this sheet; sign again.</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation>Cambiada desde la firma: la firma no ampara esta hoja; firme de nuevo.</translation>
        </message>
        <message>
            <source>Sign the sheet</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation>Firmar la hoja</translation>
        </message>
        <message>
            <source>Take the signature back</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation>Retirar la firma</translation>
        </message>
        <message>
            <source>✓ Finished: every stage is done or skipped, in limits as left, and signed.</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation>✓ Terminada: cada etapa está hecha u omitida, en límites tal como se dejó, y firmada.</translation>
        </message>
        <message>
            <source>✓ Signed; the sheet is as it was signed.</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation>✓ Firmada; la hoja está como se firmó.</translation>
        </message>
        <message>
            <source>✗ Changed since it was signed.</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation>✗ Cambiada desde la firma.</translation>
        </message>
        <message>
            <source>{mark} {verdict} ({limits})</source>
            <extracomment>ui/job_form.py</extracomment>
            <translation>{mark} {verdict} ({limits})</translation>
        </message>
        <message>
            <source>{value} ± {spread} (k = {k}, {probability}); {odds} likely within {low} to {high}; what matters most: {most}</source>
            <extracomment>ui/job_form.py</extracomment>
            <translation>{value} ± {spread} (k = {k}, {probability}); {odds} de probabilidad entre {low} y {high}; lo que más pesa: {most}</translation>
        </message>
        <message>
            <source>{typed} is outside {low} to {high} and was not taken</source>
            <extracomment>ui/job_form.py</extracomment>
            <translation>{typed} está fuera de {low} a {high} y no se aceptó</translation>
        </message>
        <message>
            <source>Strike out the uncertainty</source>
            <extracomment>ui/job_form.py</extracomment>
            <translation>Tachar la incertidumbre</translation>
        </message>
        <message>
            <source>Verdict: {field}</source>
            <extracomment>ui/job_form.py</extracomment>
            <translation>Veredicto: {field}</translation>
        </message>
        <message>
            <source>{field} [{unit}]</source>
            <extracomment>ui/job_form.py, ui/job_table.py</extracomment>
            <translation>{field} [{unit}]</translation>
        </message>
        <message>
            <source>{field}: {sentence}</source>
            <extracomment>ui/job_form.py</extracomment>
            <translation>{field}: {sentence}</translation>
        </message>
        <message>
            <source>To be cleared up</source>
            <extracomment>ui/job_form.py</extracomment>
            <translation>Por aclarar</translation>
        </message>
        <message>
            <source>How sure: {quantity}</source>
            <extracomment>ui/job_form.py</extracomment>
            <translation>Seguridad: {quantity}</translation>
        </message>
        <message>
            <source>not read</source>
            <extracomment>ui/job_form.py, ui/job_kinds.py</extracomment>
            <translation>sin leer</translation>
        </message>
        <message>
            <source>none given</source>
            <extracomment>ui/job_form.py</extracomment>
            <translation>ninguno dado</translation>
        </message>
        <message>
            <source>Earlier sheets of the same magneto</source>
            <extracomment>ui/job_history.py</extracomment>
            <translation>Hojas anteriores de la misma magneto</translation>
        </message>
        <message>
            <source>Double-click, or Return, opens a sheet</source>
            <extracomment>ui/job_history.py</extracomment>
            <translation>Doble clic o Intro abre una hoja</translation>
        </message>
        <message>
            <source>Looking in {folder}…</source>
            <extracomment>ui/job_history.py</extracomment>
            <translation>Mirando en {folder}…</translation>
        </message>
        <message>
            <source>{count} earlier sheets of this magneto in {folder}.</source>
            <extracomment>ui/job_history.py</extracomment>
            <translation>{count} hojas anteriores de esta magneto en {folder}.</translation>
        </message>
        <message>
            <source>Another folder…</source>
            <extracomment>ui/job_history.py</extracomment>
            <translation>Otra carpeta…</translation>
        </message>
        <message>
            <source>Look again</source>
            <extracomment>ui/job_history.py</extracomment>
            <translation>Mirar de nuevo</translation>
        </message>
        <message>
            <source>Passed over: {sentence}.</source>
            <extracomment>ui/job_history.py</extracomment>
            <translation>Omitido: {sentence}.</translation>
        </message>
        <message>
            <source>Title</source>
            <extracomment>ui/job_kinds.py</extracomment>
            <translation>Título</translation>
        </message>
        <message>
            <source>Note</source>
            <extracomment>ui/job_kinds.py</extracomment>
            <translation>Nota</translation>
        </message>
        <message>
            <source>Done by</source>
            <extracomment>ui/job_kinds.py</extracomment>
            <translation>Hecho por</translation>
        </message>
        <message>
            <source>in</source>
            <extracomment>ui/job_kinds.py</extracomment>
            <translation>in</translation>
        </message>
        <message>
            <source>crank ° before top dead centre</source>
            <extracomment>ui/job_kinds.py</extracomment>
            <translation>° cigüeñal antes del punto muerto superior</translation>
        </message>
        <message>
            <source>°, + late</source>
            <extracomment>ui/job_kinds.py</extracomment>
            <translation>°, + tarde</translation>
        </message>
        <message>
            <source>°, + with rotation</source>
            <extracomment>ui/job_kinds.py</extracomment>
            <translation>°, + en sentido de giro</translation>
        </message>
        <message>
            <source>°, + closer</source>
            <extracomment>ui/job_kinds.py</extracomment>
            <translation>°, + juntando</translation>
        </message>
        <message>
            <source>rpm</source>
            <extracomment>ui/job_kinds.py</extracomment>
            <translation>1/min</translation>
        </message>
        <message>
            <source>h</source>
            <extracomment>ui/job_kinds.py</extracomment>
            <translation>h</translation>
        </message>
        <message>
            <source>teeth, + with rotation</source>
            <extracomment>ui/job_kinds.py</extracomment>
            <translation>dientes, + en sentido de giro</translation>
        </message>
        <message>
            <source>in, + late</source>
            <extracomment>ui/job_kinds.py</extracomment>
            <translation>in, + tarde</translation>
        </message>
        <message>
            <source>mm, + late</source>
            <extracomment>ui/job_kinds.py</extracomment>
            <translation>mm, + tarde</translation>
        </message>
        <message>
            <source>&amp;New job sheet…</source>
            <extracomment>ui/job_menus.py, ui/menus.py</extracomment>
            <translation>&amp;Nueva hoja de trabajo…</translation>
        </message>
        <message>
            <source>&amp;Open job sheet…</source>
            <extracomment>ui/job_menus.py, ui/menus.py</extracomment>
            <translation>&amp;Abrir hoja de trabajo…</translation>
        </message>
        <message>
            <source>&amp;Try again to save</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>&amp;Reintentar guardar</translation>
        </message>
        <message>
            <source>&amp;Reload from the file</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>Re&amp;cargar del archivo</translation>
        </message>
        <message>
            <source>&amp;Close</source>
            <extracomment>ui/job_menus.py, ui/lift_dialog.py, ui/own_menus.py, ui/practice_menus.py, ui/report_dialog.py</extracomment>
            <translation>&amp;Cerrar</translation>
        </message>
        <message>
            <source>&amp;Undo</source>
            <extracomment>ui/job_menus.py, ui/menus.py, ui/own_menus.py</extracomment>
            <translation>&amp;Deshacer</translation>
        </message>
        <message>
            <source>&amp;Redo</source>
            <extracomment>ui/job_menus.py, ui/menus.py, ui/own_menus.py</extracomment>
            <translation>&amp;Rehacer</translation>
        </message>
        <message>
            <source>&amp;Steps taken…</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>&amp;Pasos dados…</translation>
        </message>
        <message>
            <source>&amp;Skip for a reason…</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>&amp;Omitir con motivo…</translation>
        </message>
        <message>
            <source>&amp;Open again</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>&amp;Reabrir</translation>
        </message>
        <message>
            <source>&amp;Next page</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>Página &amp;siguiente</translation>
        </message>
        <message>
            <source>&amp;Previous page</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>Página &amp;anterior</translation>
        </message>
        <message>
            <source>Print to PDF, &amp;A4…</source>
            <extracomment>ui/job_menus.py, ui/menus.py, ui/plan_box.py</extracomment>
            <translation>Imprimir a PDF, &amp;A4…</translation>
        </message>
        <message>
            <source>Print to PDF, &amp;Letter…</source>
            <extracomment>ui/job_menus.py, ui/menus.py, ui/plan_box.py</extracomment>
            <translation>Imprimir a PDF, ca&amp;rta…</translation>
        </message>
        <message>
            <source>Save as &amp;HTML…</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>Guardar como &amp;HTML…</translation>
        </message>
        <message>
            <source>Save readings as &amp;CSV…</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>Guardar lecturas como &amp;CSV…</translation>
        </message>
        <message>
            <source>Save readings as &amp;JSON…</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>Guardar lecturas como &amp;JSON…</translation>
        </message>
        <message>
            <source>With &amp;earlier sheets of this magneto</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>Con hojas ant&amp;eriores de esta magneto</translation>
        </message>
        <message>
            <source>Lengths in &amp;inches</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>Longitudes en &amp;pulgadas</translation>
        </message>
        <message>
            <source>&amp;Keys and cautions</source>
            <extracomment>ui/job_menus.py, ui/menus.py, ui/practice_menus.py</extracomment>
            <translation>&amp;Teclas y precauciones</translation>
        </message>
        <message>
            <source>Steps taken</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>Pasos dados</translation>
        </message>
        <message>
            <source>&amp;Text size</source>
            <extracomment>ui/job_menus.py, ui/menus.py, ui/practice_menus.py</extracomment>
            <translation>&amp;Tamaño del texto</translation>
        </message>
        <message>
            <source>&amp;Undo: {step}</source>
            <extracomment>ui/job_menus.py, ui/menus.py, ui/own_menus.py</extracomment>
            <translation>&amp;Deshacer: {step}</translation>
        </message>
        <message>
            <source>&amp;Redo: {step}</source>
            <extracomment>ui/job_menus.py, ui/menus.py, ui/own_menus.py</extracomment>
            <translation>&amp;Rehacer: {step}</translation>
        </message>
        <message>
            <source>No step has been taken yet.</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>Aún no se ha dado ningún paso.</translation>
        </message>
        <message>
            <source>&amp;Job</source>
            <extracomment>ui/job_menus.py, ui/menus.py</extracomment>
            <translation>Tra&amp;bajo</translation>
        </message>
        <message>
            <source>&amp;Edit</source>
            <extracomment>ui/job_menus.py, ui/menus.py, ui/own_menus.py</extracomment>
            <translation>&amp;Editar</translation>
        </message>
        <message>
            <source>&amp;Stage</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>E&amp;tapa</translation>
        </message>
        <message>
            <source>&amp;Note on the job sheet</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>&amp;Nota en la hoja de trabajo</translation>
        </message>
        <message>
            <source>&amp;Report</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>&amp;Informe</translation>
        </message>
        <message>
            <source>&amp;View</source>
            <extracomment>ui/job_menus.py, ui/menus.py, ui/practice_menus.py</extracomment>
            <translation>&amp;Ver</translation>
        </message>
        <message>
            <source>&amp;Help</source>
            <extracomment>ui/job_menus.py, ui/menus.py, ui/own_menus.py, ui/practice_menus.py</extracomment>
            <translation>A&amp;yuda</translation>
        </message>
        <message>
            <source>{n} %</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>{n} %</translation>
        </message>
        <message>
            <source>Not taken yet: {what}. Correct it, or press Escape in its field to put back what was there.</source>
            <extracomment>ui/job_model.py</extracomment>
            <translation>Aún sin aceptar: {what}. Corríjalo, o pulse Escape en su campo para volver a lo que había.</translation>
        </message>
        <message>
            <source>Job sheet</source>
            <extracomment>ui/job_model.py</extracomment>
            <translation>Hoja de trabajo</translation>
        </message>
        <message>
            <source>{part}: {field}</source>
            <extracomment>ui/job_model.py</extracomment>
            <translation>{part}: {field}</translation>
        </message>
        <message>
            <source>{stage}: skipped</source>
            <extracomment>ui/job_model.py</extracomment>
            <translation>{stage}: omitida</translation>
        </message>
        <message>
            <source>{stage}: done</source>
            <extracomment>ui/job_model.py</extracomment>
            <translation>{stage}: hecha</translation>
        </message>
        <message>
            <source>{stage}: opened again</source>
            <extracomment>ui/job_model.py</extracomment>
            <translation>{stage}: reabierta</translation>
        </message>
        <message>
            <source>Cautions</source>
            <extracomment>ui/job_page.py</extracomment>
            <translation>Precauciones</translation>
        </message>
        <message>
            <source>Note from the bench: {what}</source>
            <extracomment>ui/job_page.py</extracomment>
            <translation>Nota del banco: {what}</translation>
        </message>
        <message>
            <source>Aircraft, engine, magneto and limits</source>
            <extracomment>ui/job_page.py</extracomment>
            <translation>Aeronave, motor, magneto y límites</translation>
        </message>
        <message>
            <source>The sheet does not say yet which magneto the bench worked with; without it there are no drawings, and limits are as entered from the maker's manual.</source>
            <extracomment>ui/job_page.py</extracomment>
            <translation>La hoja aún no dice con qué magneto trabajó el banco; sin ella no hay dibujos, y los límites son los anotados del manual del fabricante.</translation>
        </message>
        <message>
            <source>Note from the bench:</source>
            <extracomment>ui/job_page.py</extracomment>
            <translation>Nota del banco:</translation>
        </message>
        <message>
            <source>On the bench: {magneto}, on {engine}.</source>
            <extracomment>ui/job_page.py</extracomment>
            <translation>En el banco: {magneto}, en {engine}.</translation>
        </message>
        <message>
            <source>On the bench: {magneto}.</source>
            <extracomment>ui/job_page.py</extracomment>
            <translation>En el banco: {magneto}.</translation>
        </message>
        <message>
            <source>Page {number} of {count}</source>
            <extracomment>ui/job_preview.py</extracomment>
            <translation>Página {number} de {count}</translation>
        </message>
        <message>
            <source>Paper</source>
            <extracomment>ui/job_preview.py</extracomment>
            <translation>Papel</translation>
        </message>
        <message>
            <source>Print to PDF…</source>
            <extracomment>ui/job_preview.py</extracomment>
            <translation>Imprimir a PDF…</translation>
        </message>
        <message>
            <source>1 page</source>
            <extracomment>ui/job_preview.py</extracomment>
            <translation>1 página</translation>
        </message>
        <message>
            <source>{count} pages</source>
            <extracomment>ui/job_preview.py</extracomment>
            <translation>{count} páginas</translation>
        </message>
        <message>
            <source>Ctrl+Page Down and Ctrl+Page Up turn the pages, Ctrl+Return marks a stage as done. Every change is in the file at once; Ctrl+Z takes the last one back, also after the sheet was closed and opened again, and Ctrl+Shift+Z does it again. Numbers take a decimal point or comma and their unit: 13 thou, 0,33 mm. Escape puts back what stood in a field; an empty one was not read.</source>
            <extracomment>ui/job_reports.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Print the job sheet to PDF</source>
            <extracomment>ui/job_reports.py</extracomment>
            <translation>Imprimir la hoja de trabajo a PDF</translation>
        </message>
        <message>
            <source>Save the job sheet as HTML</source>
            <extracomment>ui/job_reports.py</extracomment>
            <translation>Guardar la hoja de trabajo como HTML</translation>
        </message>
        <message>
            <source>HTML (*.html)</source>
            <extracomment>ui/job_reports.py</extracomment>
            <translation>HTML (*.html)</translation>
        </message>
        <message>
            <source>Save the readings</source>
            <extracomment>ui/job_reports.py</extracomment>
            <translation>Guardar las lecturas</translation>
        </message>
        <message>
            <source>Table (*.csv)</source>
            <extracomment>ui/job_reports.py</extracomment>
            <translation>Tabla (*.csv)</translation>
        </message>
        <message>
            <source>Readings (*.json)</source>
            <extracomment>ui/job_reports.py</extracomment>
            <translation>Lecturas (*.json)</translation>
        </message>
        <message>
            <source>✓ Saved {file}.</source>
            <extracomment>ui/job_reports.py</extracomment>
            <translation>✓ Guardado {file}.</translation>
        </message>
        <message>
            <source>{file} is the job sheet itself; choose another name</source>
            <extracomment>ui/job_reports.py</extracomment>
            <translation>{file} es la propia hoja de trabajo; elija otro nombre</translation>
        </message>
        <message>
            <source>this sheet ships with the program and stays as it is; save it under a name of your own to work on it</source>
            <extracomment>ui/job_room.py</extracomment>
            <translation>esta hoja viene con el programa y queda como está; guárdela con un nombre propio para trabajar en ella</translation>
        </message>
        <message>
            <source>Where is the new job sheet to be kept?</source>
            <extracomment>ui/job_room.py</extracomment>
            <translation>¿Dónde se guarda la nueva hoja de trabajo?</translation>
        </message>
        <message>
            <source>Job sheets (*.json)</source>
            <extracomment>ui/job_room.py, ui/job_window.py</extracomment>
            <translation>Hojas de trabajo (*.json)</translation>
        </message>
        <message>
            <source>Open a job sheet</source>
            <extracomment>ui/job_room.py</extracomment>
            <translation>Abrir una hoja de trabajo</translation>
        </message>
        <message>
            <source>Job sheets (*.json);;All files (*)</source>
            <extracomment>ui/job_room.py</extracomment>
            <translation>Hojas de trabajo (*.json);;Todos los archivos (*)</translation>
        </message>
        <message>
            <source>No job sheet is open: open one, or begin a new one, from the Job menu.</source>
            <extracomment>ui/job_room.py</extracomment>
            <translation>No hay ninguna hoja de trabajo abierta: abra una, o empiece otra, en el menú Trabajo.</translation>
        </message>
        <message>
            <source>the bench still has the setting it began with, which nobody has read: set plate and screw as they are first</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>el banco tiene aún el ajuste con que empezó, que nadie ha leído: ponga primero placa y tornillo como están</translation>
        </message>
        <message>
            <source>Magneto, engine and limits</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Magneto, motor y límites</translation>
        </message>
        <message>
            <source>What is on the bench, and the limits its files give</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Lo que hay en el banco, y los límites que dan sus archivos</translation>
        </message>
        <message>
            <source>Switch lead as it stands</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Cable de masa como está</translation>
        </message>
        <message>
            <source>What meter and lamp say on the bench with plug and switch as they are now</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Lo que dicen medidor y lámpara en el banco con clavija e interruptor como están</translation>
        </message>
        <message>
            <source>Stop readings</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Lecturas del tope</translation>
        </message>
        <message>
            <source>The two stop readings of the Engine page</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Las dos lecturas del tope de la página Motor</translation>
        </message>
        <message>
            <source>Stroke of No. 1 now</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Tiempo del n.º 1 ahora</translation>
        </message>
        <message>
            <source>Set the crank before No. 1 fires: its stroke there is noted</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Ponga el cigüeñal antes de que encienda el n.º 1: se anota su tiempo ahí</translation>
        </message>
        <message>
            <source>Setting as it was put on the bench, timing as the lamp was read</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Ajuste como se puso en el banco, puesta a punto como se leyó la lámpara</translation>
        </message>
        <message>
            <source>As found, by instruments</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Hallado, con instrumentos</translation>
        </message>
        <message>
            <source>As the instruments chosen on the Uncertainty page read it</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Como lo leen los instrumentos elegidos en la página Incertidumbre</translation>
        </message>
        <message>
            <source>Wear and pips</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Desgaste y puntas</translation>
        </message>
        <message>
            <source>As they were set on the bench</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Como se pusieron en el banco</translation>
        </message>
        <message>
            <source>Trials made</source>
            <extracomment>ui/job_sources.py, ui/trials_panel.py</extracomment>
            <translation>Ensayos hechos</translation>
        </message>
        <message>
            <source>All trials on the bench's list</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Todos los ensayos de la lista del banco</translation>
        </message>
        <message>
            <source>Setting planned</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Ajuste previsto</translation>
        </message>
        <message>
            <source>Where backplate and screw belong for the gap wanted on the Internal page</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Dónde van placa base y tornillo para la apertura deseada en la página Interno</translation>
        </message>
        <message>
            <source>The setting as the bench has it now</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>El ajuste como lo tiene ahora el banco</translation>
        </message>
        <message>
            <source>As left, by instruments</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Dejado, con instrumentos</translation>
        </message>
        <message>
            <source>How sure the setting is</source>
            <extracomment>ui/job_sources.py, ui/panes.py</extracomment>
            <translation>Seguridad del ajuste</translation>
        </message>
        <message>
            <source>What the Uncertainty page shows of internal timing</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Lo que muestra la página Incertidumbre del calado interno</translation>
        </message>
        <message>
            <source>Opening, gap and dwell of each lobe</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Momento, apertura y ángulo de cierre de cada lóbulo</translation>
        </message>
        <message>
            <source>Marks as painted</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Marcas como se pintaron</translation>
        </message>
        <message>
            <source>How the coupling's marks stand apart</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Cuánto distan las marcas del acoplamiento</translation>
        </message>
        <message>
            <source>Tooth shift planned</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Cambio de dientes previsto</translation>
        </message>
        <message>
            <source>Reading as found, timing wanted, and the move chosen in the planner, or its first</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Lectura hallada, calado deseado y el movimiento elegido en el plan, o el primero</translation>
        </message>
        <message>
            <source>Tooth shift made</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Cambio de dientes hecho</translation>
        </message>
        <message>
            <source>Teeth moved; where it fires then, the lamp has to tell</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Dientes movidos; dónde salta después lo tiene que decir la lámpara</translation>
        </message>
        <message>
            <source>Where the lamp was read to say that the magnetos fire</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Dónde se leyó en la lámpara que saltan las magnetos</translation>
        </message>
        <message>
            <source>How sure the timing is</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Seguridad del calado</translation>
        </message>
        <message>
            <source>What the Uncertainty page shows of timing to the engine</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Lo que muestra la página Incertidumbre del calado al motor</translation>
        </message>
        <message>
            <source>the bench has “{bench}” on it and this sheet is of “{sheet}”: put that one on the bench, or take over magneto and limits anew</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>el banco tiene «{bench}» y esta hoja es de «{sheet}»: ponga esa en el banco, o tome de nuevo magneto y límites</translation>
        </message>
        <message>
            <source>this magneto is not on an engine: open an installation on the bench first</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>esta magneto no está en un motor: abra antes una instalación en el banco</translation>
        </message>
        <message>
            <source>neither plug nor switch has been moved on the bench yet: the lead has not been tried</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>en el banco aún no se ha movido ni la clavija ni el interruptor: el cable no se ha probado</translation>
        </message>
        <message>
            <source>no stop readings were entered yet; they belong on the Engine page of the bench</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>aún no se anotaron lecturas del tope; van en la página Motor del banco</translation>
        </message>
        <message>
            <source>the crank has not been turned on the bench yet: set it as the engine's stands first</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>en el banco aún no se ha girado el cigüeñal: póngalo primero como está el del motor</translation>
        </message>
        <message>
            <source>no trial has been made on the bench yet; they are noted on its Trials page</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>aún no se ha hecho ningún ensayo en el banco; se anotan en su página Ensayos</translation>
        </message>
        <message>
            <source>the bench's Uncertainty page does not show internal timing; choose it there first</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>la página Incertidumbre del banco no muestra el calado interno; elíjalo antes ahí</translation>
        </message>
        <message>
            <source>the bench's Uncertainty page does not show timing to the engine; choose it there first</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>la página Incertidumbre del banco no muestra el calado al motor; elíjalo antes ahí</translation>
        </message>
        <message>
            <source>Add a trial</source>
            <extracomment>ui/job_table.py</extracomment>
            <translation>Añadir un ensayo</translation>
        </message>
        <message>
            <source>Add a lobe</source>
            <extracomment>ui/job_table.py</extracomment>
            <translation>Añadir un lóbulo</translation>
        </message>
        <message>
            <source>Strike out the chosen trial</source>
            <extracomment>ui/job_table.py</extracomment>
            <translation>Tachar el ensayo elegido</translation>
        </message>
        <message>
            <source>Strike out the chosen lobe</source>
            <extracomment>ui/job_table.py</extracomment>
            <translation>Tachar el lóbulo elegido</translation>
        </message>
        <message>
            <source>{row} {number} waits for: {field}</source>
            <extracomment>ui/job_table.py</extracomment>
            <translation>{row} {number} espera: {field}</translation>
        </message>
        <message>
            <source>{row} {number}, {field}: outside {low} to {high}, not taken</source>
            <extracomment>ui/job_table.py</extracomment>
            <translation>{row} {number}, {field}: fuera de {low} a {high}, no aceptado</translation>
        </message>
        <message>
            <source>{what}, from the bench</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>{what}, del banco</translation>
        </message>
        <message>
            <source>{name} – job sheet – magview</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>{name} – hoja de trabajo – magview</translation>
        </message>
        <message>
            <source>{count} found</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>{count} halladas</translation>
        </message>
        <message>
            <source>Skip a stage</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>Omitir una etapa</translation>
        </message>
        <message>
            <source>Why is “{stage}” skipped?</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>¿Por qué se omite «{stage}»?</translation>
        </message>
        <message>
            <source>Skip it</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>Omitirla</translation>
        </message>
        <message>
            <source>Save the job sheet as</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>Guardar la hoja de trabajo como</translation>
        </message>
        <message>
            <source>Reload the sheet from its file?</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>¿Recargar la hoja de su archivo?</translation>
        </message>
        <message>
            <source>Not saved: {sentence}.</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>No guardado: {sentence}.</translation>
        </message>
        <message>
            <source>Read only: {file}</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>Solo lectura: {file}</translation>
        </message>
        <message>
            <source>✓ Noted from the bench: {what}.</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>✓ Anotado del banco: {what}.</translation>
        </message>
        <message>
            <source>Undone: {step}.</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>Deshecho: {step}.</translation>
        </message>
        <message>
            <source>Done again: {step}.</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>Rehecho: {step}.</translation>
        </message>
        <message>
            <source>Skipped: {stage}.</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>Omitida: {stage}.</translation>
        </message>
        <message>
            <source>Opened again; its readings stand.</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>Reabierta; sus lecturas se mantienen.</translation>
        </message>
        <message>
            <source>Saved; from now on in {file}.</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>Guardado; desde ahora en {file}.</translation>
        </message>
        <message>
            <source>&amp;Keep what is here</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>&amp;Conservar lo de aquí</translation>
        </message>
        <message>
            <source>What was entered here and is not in the file is given up; save it elsewhere first.</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>Se pierde lo anotado aquí que no esté en el archivo; guárdelo antes en otro sitio.</translation>
        </message>
        <message>
            <source>&amp;Save as…</source>
            <extracomment>ui/job_window.py, ui/report_dialog.py</extracomment>
            <translation>Guardar &amp;como…</translation>
        </message>
        <message>
            <source>Close &amp;without saving</source>
            <extracomment>ui/job_window.py, ui/practice_window.py</extracomment>
            <translation>Cerrar &amp;sin guardar</translation>
        </message>
        <message>
            <source>&amp;Go on</source>
            <extracomment>ui/job_window.py, ui/practice_window.py</extracomment>
            <translation>Se&amp;guir</translation>
        </message>
        <message>
            <source>✗ Not saved</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>✗ No guardado</translation>
        </message>
        <message>
            <source>✓ Saved in {file}</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>✓ Guardado en {file}</translation>
        </message>
        <message>
            <source>{crank}° of crank early = {rotor}° of rotor = {piston} of piston travel.</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>{crank}° de avance de cigüeñal = {rotor}° de rotor = {piston} de recorrido del pistón.</translation>
        </message>
        <message>
            <source>{crank}° of crank late = {rotor}° of rotor = {piston} of piston travel.</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>{crank}° de retraso de cigüeñal = {rotor}° de rotor = {piston} de recorrido del pistón.</translation>
        </message>
        <message>
            <source>Left</source>
            <extracomment>ui/lamp_box.py, ui/practice_sight.py</extracomment>
            <translation>Izquierda</translation>
        </message>
        <message>
            <source>Right</source>
            <extracomment>ui/lamp_box.py, ui/practice_sight.py</extracomment>
            <translation>Derecha</translation>
        </message>
        <message>
            <source>Left: its lamp was read before the contacts were set anew. With this internal setting it would now read {found}; read it again.</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>Izquierda: su lámpara se leyó antes de reajustar los contactos. Con este ajuste interno ahora indicaría {found}; léala de nuevo.</translation>
        </message>
        <message>
            <source>Right: its lamp was read before the contacts were set anew. With this internal setting it would now read {found}; read it again.</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>Derecha: su lámpara se leyó antes de reajustar los contactos. Con este ajuste interno ahora indicaría {found}; léala de nuevo.</translation>
        </message>
        <message>
            <source>Left: {line}</source>
            <extracomment>ui/lamp_box.py, ui/practice_notebook.py</extracomment>
            <translation>Izquierda: {line}</translation>
        </message>
        <message>
            <source>Right: {line}</source>
            <extracomment>ui/lamp_box.py, ui/practice_notebook.py</extracomment>
            <translation>Derecha: {line}</translation>
        </message>
        <message>
            <source>Where it fires, crank degrees before top dead centre</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>Dónde enciende, grados de cigüeñal antes del punto muerto superior</translation>
        </message>
        <message>
            <source>Crank from No. 1's firing top dead centre, positive the way the engine turns</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>Cigüeñal desde el punto muerto superior de encendido del n.º 1, positivo como gira el motor</translation>
        </message>
        <message>
            <source>Cran&amp;k</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>&amp;Cigüeñal</translation>
        </message>
        <message>
            <source>Tolerance ±{tolerance}° of crank.</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>Tolerancia ±{tolerance}° de cigüeñal.</translation>
        </message>
        <message>
            <source>Fires now</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>Enciende ahora</translation>
        </message>
        <message>
            <source>Show this magneto's coupling</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>Mostrar el acoplamiento de esta magneto</translation>
        </message>
        <message>
            <source>To firing</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>Al encendido</translation>
        </message>
        <message>
            <source>To TDC</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>Al PMS</translation>
        </message>
        <message>
            <source>The magneto is off the engine: all this holds once it is refitted by its marks.</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>La magneto está fuera del motor: todo esto vale cuando se monte otra vez según sus marcas.</translation>
        </message>
        <message>
            <source>The contacts were set anew since the lamp was read: with the teeth as found it would now read {found}. Both magnetos are shown with this one's internal setting.</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>Los contactos se reajustaron después de leer la lámpara: con los dientes como se hallaron, ahora indicaría {found}. Ambas magnetos se muestran con el ajuste interno de esta.</translation>
        </message>
        <message>
            <source>With this setting the contacts never open and close: there is no timing to read.</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>Con este ajuste los contactos nunca abren y cierran: no hay calado que leer.</translation>
        </message>
        <message>
            <source>left magneto, lamp reads</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>magneto izquierda, lámpara indica</translation>
        </message>
        <message>
            <source>right magneto, lamp reads</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>magneto derecha, lámpara indica</translation>
        </message>
        <message>
            <source>left magneto, wanted</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>magneto izquierda, deseado</translation>
        </message>
        <message>
            <source>right magneto, wanted</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>magneto derecha, deseado</translation>
        </message>
        <message>
            <source>left magneto fires now</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>la magneto izquierda enciende ahora</translation>
        </message>
        <message>
            <source>right magneto fires now</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>la magneto derecha enciende ahora</translation>
        </message>
        <message>
            <source>Single</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>Única</translation>
        </message>
        <message>
            <source>At the timing wanted.</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>En el calado deseado.</translation>
        </message>
        <message>
            <source>Prove the lead before touching the propeller: plug out, meter from the lead's plug to the case: ground with the switch off, none with it on. A lead that shows no ground with the switch off leaves the magneto live. Treat the propeller as live all the same.</source>
            <extracomment>ui/lead_panel.py</extracomment>
            <translation>Compruebe el cable antes de tocar la hélice: clavija fuera, medidor de la clavija del cable a la carcasa: masa con el interruptor en OFF, ninguna con él en ON. Un cable que no da masa con el interruptor en OFF deja la magneto viva. Aun así, trate la hélice como viva.</translation>
        </message>
        <message>
            <source>Switch lead, drawn as a circuit</source>
            <extracomment>ui/lead_panel.py</extracomment>
            <translation>Cable de masa, dibujado como circuito</translation>
        </message>
        <message>
            <source>Lamp: open</source>
            <extracomment>ui/lead_panel.py</extracomment>
            <translation>Lámpara: abierto</translation>
        </message>
        <message>
            <source>Lamp: closed</source>
            <extracomment>ui/lead_panel.py</extracomment>
            <translation>Lámpara: cerrado</translation>
        </message>
        <message>
            <source>Ignition switch &amp;on</source>
            <extracomment>ui/lead_panel.py, ui/practice_work.py</extracomment>
            <translation>Interruptor de encendido en &amp;ON</translation>
        </message>
        <message>
            <source>Plug o&amp;ut of the magneto</source>
            <extracomment>ui/lead_panel.py</extracomment>
            <translation>Clavija &amp;fuera de la magneto</translation>
        </message>
        <message>
            <source>Lead &amp;broken inside</source>
            <extracomment>ui/lead_panel.py</extracomment>
            <translation>Cable &amp;roto por dentro</translation>
        </message>
        <message>
            <source>&amp;Short inside the magneto</source>
            <extracomment>ui/lead_panel.py</extracomment>
            <translation>&amp;Corto dentro de la magneto</translation>
        </message>
        <message>
            <source>Spring tab bent clear of the c&amp;ase</source>
            <extracomment>ui/lead_panel.py</extracomment>
            <translation>&amp;Lengüeta doblada, sin tocar la carcasa</translation>
        </message>
        <message>
            <source>Hands on</source>
            <extracomment>ui/lead_panel.py</extracomment>
            <translation>Manejo</translation>
        </message>
        <message>
            <source>Faults to try</source>
            <extracomment>ui/lead_panel.py</extracomment>
            <translation>Fallos para probar</translation>
        </message>
        <message>
            <source>What it needs is on the tabs {tabs}.</source>
            <extracomment>ui/lesson_view.py</extracomment>
            <translation>Lo necesario está en las pestañas {tabs}.</translation>
        </message>
        <message>
            <source>“{tab}”</source>
            <extracomment>ui/lesson_view.py</extracomment>
            <translation>«{tab}»</translation>
        </message>
        <message>
            <source>What it needs is on the tab {tab}.</source>
            <extracomment>ui/lesson_view.py</extracomment>
            <translation>Lo necesario está en la pestaña {tab}.</translation>
        </message>
        <message>
            <source>A hint</source>
            <extracomment>ui/lesson_view.py</extracomment>
            <translation>Una pista</translation>
        </message>
        <message>
            <source>What came of it</source>
            <extracomment>ui/lesson_view.py</extracomment>
            <translation>Qué resultó</translation>
        </message>
        <message>
            <source>{name}: done</source>
            <extracomment>ui/lesson_view.py</extracomment>
            <translation>{name}: hecho</translation>
        </message>
        <message>
            <source>Step {step} of {steps} – {title}</source>
            <extracomment>ui/lesson_view.py</extracomment>
            <translation>Paso {step} de {steps} – {title}</translation>
        </message>
        <message>
            <source>What you have learnt: {told}</source>
            <extracomment>ui/lesson_view.py</extracomment>
            <translation>Lo que ha aprendido: {told}</translation>
        </message>
        <message>
            <source>All steps are done.</source>
            <extracomment>ui/lesson_view.py</extracomment>
            <translation>Todos los pasos están hechos.</translation>
        </message>
        <message>
            <source>Hint: {hint}</source>
            <extracomment>ui/lesson_view.py</extracomment>
            <translation>Pista: {hint}</translation>
        </message>
        <message>
            <source>Lift of the contacts</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Alzada de los contactos</translation>
        </message>
        <message>
            <source>Gap between the contacts</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Apertura entre contactos</translation>
        </message>
        <message>
            <source>Dial at the heel</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Comparador en el talón</translation>
        </message>
        <message>
            <source>found out</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>se averigua</translation>
        </message>
        <message>
            <source>point: 0.25</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>punto: 0.25</translation>
        </message>
        <message>
            <source>comma: 0,25</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>coma: 0,25</translation>
        </message>
        <message>
            <source>Lift from {name}</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Alzada de {name}</translation>
        </message>
        <message>
            <source>What comes of the table</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Qué sale de la tabla</translation>
        </message>
        <message>
            <source>grow with rotation</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>crecen en sentido de giro</translation>
        </message>
        <message>
            <source>falls as the contacts lift</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>baja al alzarse los contactos</translation>
        </message>
        <message>
            <source>Contact lift at which the contacts just touch: needed where gaps were read</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Alzada a la que los contactos apenas se tocan: necesaria donde se leyeron aperturas</translation>
        </message>
        <message>
            <source>Contact arm over heel arm: what the contacts lift for a millimetre at the heel</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Brazo de contacto entre brazo del talón: lo que se alzan los contactos por milímetro en el talón</translation>
        </message>
        <message>
            <source>Readings and the smooth lift through them</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Lecturas y la alzada suavizada que pasa por ellas</translation>
        </message>
        <message>
            <source>{readings} readings; the contacts lift {top} mm; scatter {noise} mm.</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>{readings} lecturas; los contactos se alzan {top} mm; dispersión {noise} mm.</translation>
        </message>
        <message>
            <source>Magneto (*.json)</source>
            <extracomment>ui/lift_dialog.py, ui/trials_panel.py</extracomment>
            <translation>Magneto (*.json)</translation>
        </message>
        <message>
            <source>Put on the &amp;bench</source>
            <extracomment>ui/lift_dialog.py, ui/own_menus.py</extracomment>
            <translation>Poner en el &amp;banco</translation>
        </message>
        <message>
            <source>&amp;Save as magneto…</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>&amp;Guardar como magneto…</translation>
        </message>
        <message>
            <source>Cam</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Leva</translation>
        </message>
        <message>
            <source>choose…</source>
            <extracomment>ui/lift_dialog.py, ui/own_field.py</extracomment>
            <translation>elegir…</translation>
        </message>
        <message>
            <source>Angles of the</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Ángulos de</translation>
        </message>
        <message>
            <source>Readings are</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Las lecturas son</translation>
        </message>
        <message>
            <source>Their &amp;unit</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Su &amp;unidad</translation>
        </message>
        <message>
            <source>Contacts touch at</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Los contactos tocan a</translation>
        </message>
        <message>
            <source>Contact arm / heel arm</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Brazo contacto / brazo talón</translation>
        </message>
        <message>
            <source>Decimal sign</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Signo decimal</translation>
        </message>
        <message>
            <source>Column of angles</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Columna de ángulos</translation>
        </message>
        <message>
            <source>Column of readings</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Columna de lecturas</translation>
        </message>
        <message>
            <source>cam past the top [deg]</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>leva tras la cima [°]</translation>
        </message>
        <message>
            <source>contact lift [mm]</source>
            <extracomment>ui/lift_dialog.py, ui/plot_lift.py</extracomment>
            <translation>alzada del contacto [mm]</translation>
        </message>
        <message>
            <source>The magneto with the measured lift is on the bench.</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>La magneto con la alzada medida está en el banco.</translation>
        </message>
        <message>
            <source>say in which unit the readings are</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>indique en qué unidad están las lecturas</translation>
        </message>
        <message>
            <source>Light colours</source>
            <extracomment>ui/menu_maker.py</extracomment>
            <translation>Colores claros</translation>
        </message>
        <message>
            <source>Dark colours</source>
            <extracomment>ui/menu_maker.py</extracomment>
            <translation>Colores oscuros</translation>
        </message>
        <message>
            <source>High contrast colours</source>
            <extracomment>ui/menu_maker.py</extracomment>
            <translation>Colores de alto contraste</translation>
        </message>
        <message>
            <source>&amp;Guide</source>
            <extracomment>ui/menu_maker.py</extracomment>
            <translation>&amp;Guía</translation>
        </message>
        <message>
            <source>Zoom &amp;in</source>
            <extracomment>ui/menu_maker.py</extracomment>
            <translation>&amp;Ampliar</translation>
        </message>
        <message>
            <source>Zoom &amp;out</source>
            <extracomment>ui/menu_maker.py</extracomment>
            <translation>&amp;Reducir</translation>
        </message>
        <message>
            <source>&amp;Whole picture</source>
            <extracomment>ui/menu_maker.py</extracomment>
            <translation>Dibujo &amp;entero</translation>
        </message>
        <message>
            <source>&amp;Open magneto or installation…</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>&amp;Abrir magneto o instalación…</translation>
        </message>
        <message>
            <source>&amp;Save magneto as…</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>&amp;Guardar magneto como…</translation>
        </message>
        <message>
            <source>A magneto of &amp;your own…</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Una magneto &amp;propia…</translation>
        </message>
        <message>
            <source>Lift from &amp;measurements…</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Alzada por &amp;mediciones…</translation>
        </message>
        <message>
            <source>Print the &amp;tooth-shift plan</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Imprimir el plan del &amp;cambio de dientes</translation>
        </message>
        <message>
            <source>&amp;Paper for a class…</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Pape&amp;l para una clase…</translation>
        </message>
        <message>
            <source>&amp;Quit</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>&amp;Salir</translation>
        </message>
        <message>
            <source>&amp;Hold the rotor</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>&amp;Sujetar el rotor</translation>
        </message>
        <message>
            <source>Magneto on the &amp;engine</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Magneto en el &amp;motor</translation>
        </message>
        <message>
            <source>&amp;Snap to openings, lobes and marks</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>&amp;Encajar en aperturas, lóbulos y marcas</translation>
        </message>
        <message>
            <source>&amp;Reduced motion</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Movimiento &amp;reducido</translation>
        </message>
        <message>
            <source>New &amp;exercise…</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Nuevo &amp;ejercicio…</translation>
        </message>
        <message>
            <source>&amp;Lessons…</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>&amp;Lecciones…</translation>
        </message>
        <message>
            <source>&amp;Open attempt…</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>&amp;Abrir intento…</translation>
        </message>
        <message>
            <source>&amp;Join a class…</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Entrar en una &amp;clase…</translation>
        </message>
        <message>
            <source>&amp;Make a class set…</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>&amp;Hacer un conjunto de clase…</translation>
        </message>
        <message>
            <source>&amp;Gather a class…</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>&amp;Reunir una clase…</translation>
        </message>
        <message>
            <source>Exercise e&amp;ditor…</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>E&amp;ditor de ejercicios…</translation>
        </message>
        <message>
            <source>Look at the &amp;shipped job sheet</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Ver la hoja de trabajo &amp;incluida</translation>
        </message>
        <message>
            <source>&amp;Names of parts</source>
            <extracomment>ui/menus.py, ui/practice_menus.py</extracomment>
            <translation>&amp;Nombres de las piezas</translation>
        </message>
        <message>
            <source>See the breaker from the &amp;drive end</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Ver el ruptor desde el lado de &amp;mando</translation>
        </message>
        <message>
            <source>Draw the &amp;gap 5× its size</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Dibujar la a&amp;pertura a 5×</translation>
        </message>
        <message>
            <source>&amp;Follow the contacts when zoomed</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Se&amp;guir los contactos al ampliar</translation>
        </message>
        <message>
            <source>&amp;Projector mode</source>
            <extracomment>ui/menus.py, ui/practice_menus.py</extracomment>
            <translation>Modo pro&amp;yector</translation>
        </message>
        <message>
            <source>L&amp;anguage</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>&amp;Idioma</translation>
        </message>
        <message>
            <source>P&amp;resent to a class</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Pre&amp;sentar a una clase</translation>
        </message>
        <message>
            <source>&amp;Fault reports…</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Informes de &amp;fallos…</translation>
        </message>
        <message>
            <source>Bench</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Banco</translation>
        </message>
        <message>
            <source>Magneto on the bench</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Magneto en el banco</translation>
        </message>
        <message>
            <source>Unit of length</source>
            <extracomment>ui/menus.py, ui/own_window.py</extracomment>
            <translation>Unidad de longitud</translation>
        </message>
        <message>
            <source>As the &amp;desktop</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Como el &amp;escritorio</translation>
        </message>
        <message>
            <source>Save picture of the breaker end…</source>
            <extracomment>ui/menus.py, ui/practice_menus.py</extracomment>
            <translation>Guardar imagen del lado del ruptor…</translation>
        </message>
        <message>
            <source>Save picture of the drive end…</source>
            <extracomment>ui/menus.py, ui/practice_menus.py</extracomment>
            <translation>Guardar imagen del lado de accionamiento…</translation>
        </message>
        <message>
            <source>Save picture of the crank…</source>
            <extracomment>ui/menus.py, ui/practice_menus.py</extracomment>
            <translation>Guardar imagen del cigüeñal…</translation>
        </message>
        <message>
            <source>No&amp;te on the job sheet</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>No&amp;ta en la hoja de trabajo</translation>
        </message>
        <message>
            <source>&amp;Recent job sheets</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Hojas de trabajo &amp;recientes</translation>
        </message>
        <message>
            <source>Millimetres</source>
            <extracomment>ui/menus.py, ui/own_window.py, ui/practice_tray.py</extracomment>
            <translation>Milímetros</translation>
        </message>
        <message>
            <source>Inches</source>
            <extracomment>ui/menus.py, ui/own_window.py</extracomment>
            <translation>Pulgadas</translation>
        </message>
        <message>
            <source>Lengths in</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Longitudes en</translation>
        </message>
        <message>
            <source>&amp;File</source>
            <extracomment>ui/menus.py, ui/own_menus.py</extracomment>
            <translation>&amp;Archivo</translation>
        </message>
        <message>
            <source>Ben&amp;ch</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>&amp;Banco</translation>
        </message>
        <message>
            <source>&amp;Practice</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>&amp;Práctica</translation>
        </message>
        <message>
            <source>something in the program went wrong; look whether what you did last is done. A report was kept: Help, Fault reports</source>
            <extracomment>ui/mishaps.py</extracomment>
            <translation>algo falló en el programa; mire si lo último que hizo está hecho. Se guardó un informe: Ayuda, Informes de fallos</translation>
        </message>
        <message>
            <source>magview: a report of a fault in the program was kept: {file}</source>
            <extracomment>ui/mishaps.py</extracomment>
            <translation>magview: se guardó un informe de un fallo del programa: {file}</translation>
        </message>
        <message>
            <source>something in the program went wrong; look whether what you did last is done. No report of it could be kept: {reason}</source>
            <extracomment>ui/mishaps.py</extracomment>
            <translation>algo falló en el programa; mire si lo último que hizo está hecho. No se pudo guardar un informe: {reason}</translation>
        </message>
        <message>
            <source>with this setting there is no “{place}” to run to</source>
            <extracomment>ui/model.py</extracomment>
            <translation>con este ajuste no hay «{place}» hasta donde girar</translation>
        </message>
        <message>
            <source>{file} is an engine, and the bench holds a magneto: open an installation, which has both, or see the engine with `magview engine {file}`</source>
            <extracomment>ui/opening.py</extracomment>
            <translation>{file} es un motor, y en el banco va una magneto: abra una instalación, que tiene ambos, o vea el motor con `magview engine {file}`</translation>
        </message>
        <message>
            <source>{file} is a bench that the program keeps for itself and finds again after a crash; it is not to be opened</source>
            <extracomment>ui/opening.py</extracomment>
            <translation>{file} es un banco que el programa guarda para sí y recupera tras un fallo; no es para abrirlo</translation>
        </message>
        <message>
            <source>the magneto in this window</source>
            <extracomment>ui/own_field.py</extracomment>
            <translation>la magneto de esta ventana</translation>
        </message>
        <message>
            <source>the engine in this window</source>
            <extracomment>ui/own_field.py</extracomment>
            <translation>el motor de esta ventana</translation>
        </message>
        <message>
            <source>where from?</source>
            <extracomment>ui/own_field.py</extracomment>
            <translation>¿de dónde?</translation>
        </message>
        <message>
            <source>Source of: {field}</source>
            <extracomment>ui/own_field.py</extracomment>
            <translation>Fuente de: {field}</translation>
        </message>
        <message>
            <source>page, instrument, who</source>
            <extracomment>ui/own_field.py</extracomment>
            <translation>página, instrumento, quién</translation>
        </message>
        <message>
            <source>Note on the source of: {field}</source>
            <extracomment>ui/own_field.py</extracomment>
            <translation>Nota sobre la fuente de: {field}</translation>
        </message>
        <message>
            <source>Work it out</source>
            <extracomment>ui/own_field.py</extracomment>
            <translation>Calcularlo</translation>
        </message>
        <message>
            <source>Refused: {sentence}</source>
            <extracomment>ui/own_field.py</extracomment>
            <translation>Rechazado: {sentence}</translation>
        </message>
        <message>
            <source>a file…</source>
            <extracomment>ui/own_field.py</extracomment>
            <translation>un archivo…</translation>
        </message>
        <message>
            <source>May be left out.</source>
            <extracomment>ui/own_field.py</extracomment>
            <translation>Se puede omitir.</translation>
        </message>
        <message>
            <source>⚠ {sentence}.</source>
            <extracomment>ui/own_field.py, ui/own_pictures.py</extracomment>
            <translation>⚠ {sentence}.</translation>
        </message>
        <message>
            <source>{field} – still needed</source>
            <extracomment>ui/own_field.py</extracomment>
            <translation>{field} – aún hace falta</translation>
        </message>
        <message>
            <source>my-magneto.json</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation>my-magneto.json</translation>
        </message>
        <message>
            <source>my-engine.json</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation>my-engine.json</translation>
        </message>
        <message>
            <source>my-installation.json</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation>my-installation.json</translation>
        </message>
        <message>
            <source>beginning anew</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation>empezar de nuevo</translation>
        </message>
        <message>
            <source>Open a file of your own</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation>Abrir un archivo propio</translation>
        </message>
        <message>
            <source>{file} is open.</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation>{file} está abierto.</translation>
        </message>
        <message>
            <source>Save</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation>Guardar</translation>
        </message>
        <message>
            <source>{file} is there already, and holds something else. Replace it?</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation>{file} ya existe y contiene otra cosa. ¿Reemplazarlo?</translation>
        </message>
        <message>
            <source>&amp;Use this lift</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation>&amp;Usar esta alzada</translation>
        </message>
        <message>
            <source>the bench's trials</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation>los ensayos del banco</translation>
        </message>
        <message>
            <source>Lift, rise and setting are filled in from the trials, marked measured.</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation>Alzada, subida y ajuste se rellenan con los ensayos, marcados como medidos.</translation>
        </message>
        <message>
            <source>working out</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation>calcular</translation>
        </message>
        <message>
            <source>opening {file}</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation>abrir {file}</translation>
        </message>
        <message>
            <source>&amp;Replace it</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation>&amp;Reemplazarlo</translation>
        </message>
        <message>
            <source>&amp;Leave it</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation>&amp;Dejarlo</translation>
        </message>
        <message>
            <source>table {file}</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation>tabla {file}</translation>
        </message>
        <message>
            <source>there is no engine on the bench: open an installation there first</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation>no hay motor en el banco: abra antes ahí una instalación</translation>
        </message>
        <message>
            <source>the lift from a table</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation>la alzada de una tabla</translation>
        </message>
        <message>
            <source>The lift is filled in from {file}, marked measured.</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation>La alzada se rellena con {file}, marcada como medida.</translation>
        </message>
        <message>
            <source>&amp;Open magneto, engine or installation…</source>
            <extracomment>ui/own_menus.py</extracomment>
            <translation>&amp;Abrir magneto, motor o instalación…</translation>
        </message>
        <message>
            <source>&amp;Save</source>
            <extracomment>ui/own_menus.py</extracomment>
            <translation>&amp;Guardar</translation>
        </message>
        <message>
            <source>Undo</source>
            <extracomment>ui/own_menus.py</extracomment>
            <translation>Deshacer</translation>
        </message>
        <message>
            <source>Redo</source>
            <extracomment>ui/own_menus.py</extracomment>
            <translation>Rehacer</translation>
        </message>
        <message>
            <source>An engine comes to the bench with an installation</source>
            <extracomment>ui/own_menus.py</extracomment>
            <translation>Un motor llega al banco con una instalación</translation>
        </message>
        <message>
            <source>Put on the bench</source>
            <extracomment>ui/own_menus.py</extracomment>
            <translation>Poner en el banco</translation>
        </message>
        <message>
            <source>a source</source>
            <extracomment>ui/own_model.py</extracomment>
            <translation>una fuente</translation>
        </message>
        <message>
            <source>Lift from a &amp;table…</source>
            <extracomment>ui/own_page.py</extracomment>
            <translation>Alzada de una &amp;tabla…</translation>
        </message>
        <message>
            <source>Lift from the t&amp;rials</source>
            <extracomment>ui/own_page.py</extracomment>
            <translation>Alzada de los &amp;ensayos</translation>
        </message>
        <message>
            <source>Angles and dial readings of one lobe become its lift, marked measured</source>
            <extracomment>ui/own_page.py</extracomment>
            <translation>Ángulos y lecturas del comparador de un lóbulo se vuelven su alzada, marcada como medida</translation>
        </message>
        <message>
            <source>Lift, rise and setting as the trials noted on the bench tell them, marked measured</source>
            <extracomment>ui/own_page.py</extracomment>
            <translation>Alzada, subida y ajuste como los dan los ensayos anotados en el banco, marcados como medidos</translation>
        </message>
        <message>
            <source>Dra&amp;wn</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation>&amp;Dibujado</translation>
        </message>
        <message>
            <source>&amp;Compared</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation>&amp;Comparado</translation>
        </message>
        <message>
            <source>What the draft comes to</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation>Qué resulta del borrador</translation>
        </message>
        <message>
            <source>Shipped file to compare with</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation>Archivo incluido con que comparar</translation>
        </message>
        <message>
            <source>Fields that differ</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation>Campos que difieren</translation>
        </message>
        <message>
            <source>Readings that differ</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation>Lecturas que difieren</translation>
        </message>
        <message>
            <source>✓ Complete: drawn as designed to be set.</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation>✓ Completa: dibujada con su ajuste de diseño.</translation>
        </message>
        <message>
            <source>Compared with “{name}”. Fields that differ: {differ}; given so far: {given} of {all}.</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation>Comparado con «{name}». Campos que difieren: {differ}; dados hasta ahora: {given} de {all}.</translation>
        </message>
        <message>
            <source>Reading as designed</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation>Lectura según diseño</translation>
        </message>
        <message>
            <source>comes to</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation>resulta</translation>
        </message>
        <message>
            <source>Field</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation>Campo</translation>
        </message>
        <message>
            <source>yours</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation>la suya</translation>
        </message>
        <message>
            <source>shipped</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation>incluida</translation>
        </message>
        <message>
            <source>The nearest shipped file</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation>El archivo incluido más próximo</translation>
        </message>
        <message>
            <source>Drawn as it last was complete; what is missing or refused is marked at its field.</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation>Dibujado como estuvo completo por última vez; lo que falta o se rechaza se marca en su campo.</translation>
        </message>
        <message>
            <source>Nothing to draw yet: it is drawn once everything needed is there.</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation>Aún nada que dibujar: se dibuja cuando esté todo lo necesario.</translation>
        </message>
        <message>
            <source>Nothing to compare yet.</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation>Aún nada que comparar.</translation>
        </message>
        <message>
            <source>What you drafted is on the bench; Undo brings the former back.</source>
            <extracomment>ui/own_room.py</extracomment>
            <translation>Lo que ha bosquejado está en el banco; Deshacer devuelve lo anterior.</translation>
        </message>
        <message>
            <source>The drafts are as you left them.</source>
            <extracomment>ui/own_room.py</extracomment>
            <translation>Los borradores están como los dejó.</translation>
        </message>
        <message>
            <source>The drafts cannot be kept for after a crash: {reason}</source>
            <extracomment>ui/own_room.py</extracomment>
            <translation>Los borradores no se pueden conservar para después de un fallo: {reason}</translation>
        </message>
        <message>
            <source>&amp;1 Magneto</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>&amp;1 Magneto</translation>
        </message>
        <message>
            <source>&amp;2 Engine</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>&amp;2 Motor</translation>
        </message>
        <message>
            <source>&amp;3 Installation</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>&amp;3 Instalación</translation>
        </message>
        <message>
            <source>A magneto of your own – magview</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>Una magneto propia – magview</translation>
        </message>
        <message>
            <source>What is drafted</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>Qué se bosqueja</translation>
        </message>
        <message>
            <source>Pages</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>Páginas</translation>
        </message>
        <message>
            <source>How far it has come</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>Hasta dónde ha llegado</translation>
        </message>
        <message>
            <source>Next o&amp;pen field</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>Próximo campo a&amp;bierto</translation>
        </message>
        <message>
            <source>Go to the next field that is still needed, or refused</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>Ir al próximo campo que aún falta o se rechaza</translation>
        </message>
        <message>
            <source>Drafts</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>Borradores</translation>
        </message>
        <message>
            <source>Begin from</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>Empezar desde</translation>
        </message>
        <message>
            <source>B&amp;egin</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>&amp;Empezar</translation>
        </message>
        <message>
            <source>The draft becomes this one; Undo brings the former back</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>El borrador pasa a ser este; Deshacer devuelve el anterior</translation>
        </message>
        <message>
            <source>What is on the bench</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>Lo que está en el banco</translation>
        </message>
        <message>
            <source>Nothing: empty fields</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>Nada: campos vacíos</translation>
        </message>
        <message>
            <source>Still needed: {missing}
Refused: {refused}
Without a source: {bare}</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>Falta aún: {missing}
Rechazado: {refused}
Sin fuente: {bare}</translation>
        </message>
        <message>
            <source>◂ &amp;Back</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>◂ A&amp;trás</translation>
        </message>
        <message>
            <source>&amp;Next ▸</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>&amp;Siguiente ▸</translation>
        </message>
        <message>
            <source>  Begin from </source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>  Empezar desde </translation>
        </message>
        <message>
            <source>   Lengths in </source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>   Longitudes en </translation>
        </message>
        <message>
            <source>{magneto}, mounted {side}</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>{magneto}, montada {side}</translation>
        </message>
        <message>
            <source>⚠ {page}: {count} refused</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>⚠ {page}: {count} rechazados</translation>
        </message>
        <message>
            <source>{page}: {count} needed</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>{page}: faltan {count}</translation>
        </message>
        <message>
            <source>✓ {page}</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>✓ {page}</translation>
        </message>
        <message>
            <source>&amp;Internal</source>
            <extracomment>ui/panes.py</extracomment>
            <translation>&amp;Interno</translation>
        </message>
        <message>
            <source>Internal timing</source>
            <extracomment>ui/panes.py, ui/uncertainty_panel.py</extracomment>
            <translation>Calado interno</translation>
        </message>
        <message>
            <source>En&amp;gine</source>
            <extracomment>ui/panes.py</extracomment>
            <translation>&amp;Motor</translation>
        </message>
        <message>
            <source>&amp;Lead</source>
            <extracomment>ui/panes.py</extracomment>
            <translation>&amp;Cable</translation>
        </message>
        <message>
            <source>&amp;Trials</source>
            <extracomment>ui/panes.py</extracomment>
            <translation>&amp;Ensayos</translation>
        </message>
        <message>
            <source>Trials, and what to try next</source>
            <extracomment>ui/panes.py</extracomment>
            <translation>Ensayos, y qué probar después</translation>
        </message>
        <message>
            <source>Unce&amp;rtainty</source>
            <extracomment>ui/panes.py</extracomment>
            <translation>Ince&amp;rtidumbre</translation>
        </message>
        <message>
            <source>&amp;Wear</source>
            <extracomment>ui/panes.py</extracomment>
            <translation>&amp;Desgaste</translation>
        </message>
        <message>
            <source>Wear and drift</source>
            <extracomment>ui/panes.py</extracomment>
            <translation>Desgaste y deriva</translation>
        </message>
        <message>
            <source>Point at a move to see where it brings the marks; choose one to step through it.</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation>Señale un movimiento para ver adónde lleva las marcas; elija uno para seguirlo paso a paso.</translation>
        </message>
        <message>
            <source>The move is made. Check the marks, tighten, and read the lamp again, approaching with rotation; enter what it says as the new reading.</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation>El movimiento está hecho. Compruebe las marcas, apriete y lea otra vez la lámpara, llegando en el sentido de giro; introduzca lo que indica como nueva lectura.</translation>
        </message>
        <message>
            <source>1 single step to go.</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation>Falta 1 paso.</translation>
        </message>
        <message>
            <source>{steps} single steps to go.</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation>Faltan {steps} pasos.</translation>
        </message>
        <message>
            <source>Moves that would put it right, best first</source>
            <extracomment>ui/plan_box.py, ui/timing_panel.py</extracomment>
            <translation>Movimientos que lo corregirían, el mejor primero</translation>
        </message>
        <message>
            <source>Moves of the coupling, best first</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation>Movimientos del acoplamiento, el mejor primero</translation>
        </message>
        <message>
            <source>Move the ne&amp;xt tooth</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation>Mover el diente &amp;siguiente</translation>
        </message>
        <message>
            <source>Pri&amp;nt the plan</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation>&amp;Imprimir el plan</translation>
        </message>
        <message>
            <source>The chosen move, or the first, on one page: drawings, single steps to be ticked</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation>El movimiento elegido, o el primero, en una página: dibujos, pasos sueltos para marcar</translation>
        </message>
        <message>
            <source>Teeth of the magneto flange on the disc, and of the disc on the drive flange, from as found; with rotation is {along}, against is {against} seen from the drive end.</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation>Dientes de la brida de la magneto en el disco, y del disco en la brida motriz, desde lo hallado; a favor del giro es {along}, en contra es {against}, visto desde el lado de accionamiento.</translation>
        </message>
        <message>
            <source>Flange</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation>Brida</translation>
        </message>
        <message>
            <source>Fires at</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation>Enciende a</translation>
        </message>
        <message>
            <source>There is no reading to plan from.</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation>No hay lectura con la que planear.</translation>
        </message>
        <message>
            <source>{first} or {second}</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation>{first} o {second}</translation>
        </message>
        <message>
            <source>✗ Nothing reaches it within tolerance: {outside}. The nearest two: {nearest}.</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation>✗ Nada lo alcanza dentro de la tolerancia: {outside}. Los dos más próximos: {nearest}.</translation>
        </message>
        <message>
            <source>Magneto flange {teeth}</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation>Brida de la magneto {teeth}</translation>
        </message>
        <message>
            <source>✓ The first is within ±{tolerance}° of crank.</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation>✓ El primero está dentro de ±{tolerance}° de cigüeñal.</translation>
        </message>
        <message>
            <source>By the present reading the first would come within ±{tolerance}° of crank; set the contacts first, read the lamp again, then plan.</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation>Según la lectura actual, el primero quedaría dentro de ±{tolerance}° de cigüeñal; ajuste primero los contactos, lea otra vez la lámpara y planee después.</translation>
        </message>
        <message>
            <source>Uncertainty budget</source>
            <extracomment>ui/plot_budget.py</extracomment>
            <translation>Balance de incertidumbre</translation>
        </message>
        <message>
            <source>{name}: {share} of the variance; {source}</source>
            <extracomment>ui/plot_budget.py</extracomment>
            <translation>{name}: {share} de la varianza; {source}</translation>
        </message>
        <message>
            <source>share of the variance [%]</source>
            <extracomment>ui/plot_budget.py</extracomment>
            <translation>parte de la varianza [%]</translation>
        </message>
        <message>
            <source>how often, per unit</source>
            <extracomment>ui/plot_budget.py</extracomment>
            <translation>frecuencia, por unidad</translation>
        </message>
        <message>
            <source>Quantity whose budget is shown</source>
            <extracomment>ui/plot_budget.py</extracomment>
            <translation>Magnitud cuyo balance se muestra</translation>
        </message>
        <message>
            <source>Nothing is judged yet.</source>
            <extracomment>ui/plot_budget.py</extracomment>
            <translation>Aún no se ha evaluado nada.</translation>
        </message>
        <message>
            <source>Choose readings and instruments on the Uncertainty page.</source>
            <extracomment>ui/plot_budget.py</extracomment>
            <translation>Elija lecturas e instrumentos en la página Incertidumbre.</translation>
        </message>
        <message>
            <source>linear</source>
            <extracomment>ui/plot_budget.py</extracomment>
            <translation>lineal</translation>
        </message>
        <message>
            <source>Monte Carlo</source>
            <extracomment>ui/plot_budget.py</extracomment>
            <translation>Monte Carlo</translation>
        </message>
        <message>
            <source>&amp;Quantity</source>
            <extracomment>ui/plot_budget.py</extracomment>
            <translation>&amp;Magnitud</translation>
        </message>
        <message>
            <source>rotor {rotor}: {torque} N m with rotation</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>rotor {rotor}: {torque} N m a favor del giro</translation>
        </message>
        <message>
            <source>rotor {rotor}: {torque} N m against rotation</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>rotor {rotor}: {torque} N m en contra del giro</translation>
        </message>
        <message>
            <source>Let go, the rotor swings on, with rotation, {angle} to neutral.</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>Si se suelta, el rotor sigue, a favor del giro, {angle} hasta el neutro.</translation>
        </message>
        <message>
            <source>Let go, the rotor swings back, against rotation, {angle} to neutral.</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>Si se suelta, el rotor vuelve, en contra del giro, {angle} hasta el neutro.</translation>
        </message>
        <message>
            <source>Let go, off the engine, the rotor swings on, with rotation, {angle} to neutral.</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>Si se suelta, fuera del motor, el rotor sigue, a favor del giro, {angle} hasta el neutro.</translation>
        </message>
        <message>
            <source>Let go, off the engine, the rotor swings back, against rotation, {angle} to neutral.</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>Si se suelta, fuera del motor, el rotor vuelve, en contra del giro, {angle} hasta el neutro.</translation>
        </message>
        <message>
            <source>rotor past neutral [deg]</source>
            <extracomment>ui/plot_coil.py, ui/plot_lift.py</extracomment>
            <translation>rotor pasado el neutro [°]</translation>
        </message>
        <message>
            <source>rotor {rotor}: flux {flux} mWb (static {static}), current {current} A</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>rotor {rotor}: flujo {flux} mWb (estático {static}), corriente {current} A</translation>
        </message>
        <message>
            <source>At {rpm} turns a minute the present opening leaves {now} mJ, the E-gap {at} mJ.</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>A {rpm} vueltas por minuto la apertura actual deja {now} mJ; el E-gap, {at} mJ.</translation>
        </message>
        <message>
            <source>core flux [mWb]</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>flujo del núcleo [mWb]</translation>
        </message>
        <message>
            <source>primary current [A]</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>corriente primaria [A]</translation>
        </message>
        <message>
            <source>energy at opening [mJ]</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>energía al abrir [mJ]</translation>
        </message>
        <message>
            <source>best here</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>óptimo aquí</translation>
        </message>
        <message>
            <source>Speed of the rotor</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>Velocidad del rotor</translation>
        </message>
        <message>
            <source>From turning by hand to full speed</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>Del giro a mano a la velocidad máxima</translation>
        </message>
        <message>
            <source>opening {angle} from the E-gap leaves {energy} mJ</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>abrir a {angle} del E-gap deja {energy} mJ</translation>
        </message>
        <message>
            <source>There is no coil to show, or the contacts never work.</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>No hay bobina que mostrar, o los contactos nunca trabajan.</translation>
        </message>
        <message>
            <source>torque with rotation [N m]</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>par a favor del giro [N m]</translation>
        </message>
        <message>
            <source>This magneto's file gives no pull.</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>El archivo de esta magneto no indica el tirón.</translation>
        </message>
        <message>
            <source>The rotor stands at neutral: it stays there by itself.</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>El rotor está en neutro: se queda ahí por sí solo.</translation>
        </message>
        <message>
            <source>This magneto's file gives no coil.</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>El archivo de esta magneto no indica la bobina.</translation>
        </message>
        <message>
            <source>resultant</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>resultante</translation>
        </message>
        <message>
            <source>static</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>estático</translation>
        </message>
        <message>
            <source>Rotor speed</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>Velocidad del rotor</translation>
        </message>
        <message>
            <source>now {energy} mJ</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>ahora {energy} mJ</translation>
        </message>
        <message>
            <source>rests: neutral</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>reposa: neutro</translation>
        </message>
        <message>
            <source>balances but does not rest: full register</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>en equilibrio sin reposo: registro pleno</translation>
        </message>
        <message>
            <source>{fires} BTDC, {off} early: magneto flange {magneto}, disc {disc}</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation>{fires} antes del PMS, {off} de avance: brida de la magneto {magneto}, disco {disc}</translation>
        </message>
        <message>
            <source>{fires} BTDC, {off} late: magneto flange {magneto}, disc {disc}</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation>{fires} antes del PMS, {off} de retraso: brida de la magneto {magneto}, disco {disc}</translation>
        </message>
        <message>
            <source>{moves} timings near the wanted one; the nearest: {nearest}.</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation>{moves} calados cerca del deseado; el más próximo: {nearest}.</translation>
        </message>
        <message>
            <source>fires [crank deg BTDC], earlier to the right</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation>enciende [° cigüeñal antes del PMS], antes a la derecha</translation>
        </message>
        <message>
            <source>teeth moved, both faces</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation>dientes movidos, ambas caras</translation>
        </message>
        <message>
            <source>now</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation>ahora</translation>
        </message>
        <message>
            <source>wanted {wanted} ± {tolerance}°</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation>deseado {wanted} ± {tolerance}°</translation>
        </message>
        <message>
            <source>No timing can be planned.</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation>No se puede planear ningún calado.</translation>
        </message>
        <message>
            <source>What if the disc had other teeth: the installation stays as it is</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation>Y si el disco tuviera otros dientes: la instalación no cambia</translation>
        </message>
        <message>
            <source>This magneto is not on an engine: open an installation.</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation>Esta magneto no está en un motor: abra una instalación.</translation>
        </message>
        <message>
            <source>The contacts never open and close: there is no timing to plan from.</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation>Los contactos nunca abren y cierran: no hay calado con el que planear.</translation>
        </message>
        <message>
            <source>nearest</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation>más próximo</translation>
        </message>
        <message>
            <source>Teeth at the magneto, what if</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation>Dientes en la magneto, supuestos</translation>
        </message>
        <message>
            <source>Teeth at the drive, what if</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation>Dientes en el accionamiento, supuestos</translation>
        </message>
        <message>
            <source>now, nearest</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation>ahora, más próximo</translation>
        </message>
        <message>
            <source>Teeth: magneto</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation>Dientes: magneto</translation>
        </message>
        <message>
            <source>drive</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation>accionamiento</translation>
        </message>
        <message>
            <source>present</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>actual</translation>
        </message>
        <message>
            <source>designed</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>de diseño</translation>
        </message>
        <message>
            <source>before</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>antes</translation>
        </message>
        <message>
            <source>Lift and gap</source>
            <extracomment>ui/plot_lift.py, ui/plot_pane.py</extracomment>
            <translation>Alzada y apertura</translation>
        </message>
        <message>
            <source>rotor {rotor}: lift {lift}, {what}</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>rotor {rotor}: alzada {lift}, {what}</translation>
        </message>
        <message>
            <source>Contacts open at {opens} and close at {closes} of rotor; largest gap {max_gap}.</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>Los contactos abren a {opens} y cierran a {closes} de rotor; apertura máxima {max_gap}.</translation>
        </message>
        <message>
            <source>lobe {lobe}: {opens}, largest gap {max_gap}</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>leva {lobe}: {opens}, apertura máxima {max_gap}</translation>
        </message>
        <message>
            <source>{good} of {lobes} lobes have their largest gap within limits.</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>{good} de {lobes} levas tienen su apertura máxima dentro de límites.</translation>
        </message>
        <message>
            <source>gap [mm]</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>apertura [mm]</translation>
        </message>
        <message>
            <source>contact lift [{unit}]</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>alzada de contactos [{unit}]</translation>
        </message>
        <message>
            <source>gap [{unit}]</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>apertura [{unit}]</translation>
        </message>
        <message>
            <source>stop: contacts touch</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>tope: contactos se tocan</translation>
        </message>
        <message>
            <source>limits of the largest gap</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>límites de la apertura máxima</translation>
        </message>
        <message>
            <source>gap {gap}</source>
            <extracomment>ui/plot_lift.py, ui/plot_window.py</extracomment>
            <translation>apertura {gap}</translation>
        </message>
        <message>
            <source>closed</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>cerrados</translation>
        </message>
        <message>
            <source>at the mark: judged on lobe 1</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>en la marca: según la leva 1</translation>
        </message>
        <message>
            <source>at the mark</source>
            <extracomment>ui/plot_lift.py, ui/trials_panel.py</extracomment>
            <translation>en la marca</translation>
        </message>
        <message>
            <source>limits</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>límites</translation>
        </message>
        <message>
            <source>never works the contacts</source>
            <extracomment>ui/plot_lift.py, ui/plot_window.py</extracomment>
            <translation>nunca acciona los contactos</translation>
        </message>
        <message>
            <source>{error} from its place</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>{error} de su sitio</translation>
        </message>
        <message>
            <source>The contacts never open on lobe 1.</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>Los contactos nunca abren en la leva 1.</translation>
        </message>
        <message>
            <source>The contacts never close.</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>Los contactos nunca cierran.</translation>
        </message>
        <message>
            <source>lobe, in firing order</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>leva, en orden de encendido</translation>
        </message>
        <message>
            <source>Window</source>
            <extracomment>ui/plot_pane.py</extracomment>
            <translation>Ventana</translation>
        </message>
        <message>
            <source>Magnet</source>
            <extracomment>ui/plot_pane.py</extracomment>
            <translation>Imán</translation>
        </message>
        <message>
            <source>Wear</source>
            <extracomment>ui/plot_pane.py, ui/plot_wear.py</extracomment>
            <translation>Desgaste</translation>
        </message>
        <message>
            <source>The plots are coming…</source>
            <extracomment>ui/plot_pane.py</extracomment>
            <translation>Los gráficos están en camino…</translation>
        </message>
        <message>
            <source>SVG (*.svg);;PNG (*.png);;Values as CSV (*.csv)</source>
            <extracomment>ui/plot_sheet.py</extracomment>
            <translation>SVG (*.svg);;PNG (*.png);;Valores como CSV (*.csv)</translation>
        </message>
        <message>
            <source>Values under the pointer</source>
            <extracomment>ui/plot_sheet.py</extracomment>
            <translation>Valores bajo el puntero</translation>
        </message>
        <message>
            <source>Copy the plots as a picture</source>
            <extracomment>ui/plot_sheet.py</extracomment>
            <translation>Copiar los gráficos como imagen</translation>
        </message>
        <message>
            <source>Save the plots as SVG or PNG, or their values as CSV</source>
            <extracomment>ui/plot_sheet.py</extracomment>
            <translation>Guardar los gráficos como SVG o PNG, o sus valores como CSV</translation>
        </message>
        <message>
            <source>The plots are copied.</source>
            <extracomment>ui/plot_sheet.py</extracomment>
            <translation>Los gráficos se han copiado.</translation>
        </message>
        <message>
            <source>Cop&amp;y</source>
            <extracomment>ui/plot_sheet.py</extracomment>
            <translation>Cop&amp;iar</translation>
        </message>
        <message>
            <source>Save…</source>
            <extracomment>ui/plot_sheet.py</extracomment>
            <translation>Guardar…</translation>
        </message>
        <message>
            <source>there are no values to save here</source>
            <extracomment>ui/plot_sheet.py</extracomment>
            <translation>aquí no hay valores que guardar</translation>
        </message>
        <message>
            <source>{name}: plots are saved as .svg or .png, their values as .csv</source>
            <extracomment>ui/plot_sheet.py</extracomment>
            <translation>{name}: los gráficos se guardan como .svg o .png, sus valores como .csv</translation>
        </message>
        <message>
            <source>{name}: the picture could not be saved</source>
            <extracomment>ui/plot_sheet.py</extracomment>
            <translation>{name}: no se pudo guardar la imagen</translation>
        </message>
        <message>
            <source>plate {plate}: expect {gap}, 19 times in 20 between {low} and {high}</source>
            <extracomment>ui/plot_trials.py</extracomment>
            <translation>placa {plate}: se espera {gap}, 19 veces de 20 entre {low} y {high}</translation>
        </message>
        <message>
            <source>backplate, positive with rotation [deg]</source>
            <extracomment>ui/plot_trials.py, ui/plot_window.py</extracomment>
            <translation>placa base, positivo a favor del giro [°]</translation>
        </message>
        <message>
            <source>here: done</source>
            <extracomment>ui/plot_trials.py</extracomment>
            <translation>aquí: hecho</translation>
        </message>
        <message>
            <source>next</source>
            <extracomment>ui/plot_trials.py</extracomment>
            <translation>siguiente</translation>
        </message>
        <message>
            <source>through the trials</source>
            <extracomment>ui/plot_trials.py</extracomment>
            <translation>por los ensayos</translation>
        </message>
        <message>
            <source>as the file has it</source>
            <extracomment>ui/plot_trials.py</extracomment>
            <translation>según el archivo</translation>
        </message>
        <message>
            <source>19 times in 20</source>
            <extracomment>ui/plot_trials.py</extracomment>
            <translation>19 veces de 20</translation>
        </message>
        <message>
            <source>running hours from now [h]</source>
            <extracomment>ui/plot_wear.py</extracomment>
            <translation>horas de marcha desde ahora [h]</translation>
        </message>
        <message>
            <source>next inspection</source>
            <extracomment>ui/plot_wear.py</extracomment>
            <translation>próxima inspección</translation>
        </message>
        <message>
            <source>true gap</source>
            <extracomment>ui/plot_wear.py</extracomment>
            <translation>apertura real</translation>
        </message>
        <message>
            <source>what a blade finds</source>
            <extracomment>ui/plot_wear.py</extracomment>
            <translation>lo que halla una galga</translation>
        </message>
        <message>
            <source>Adjustment window</source>
            <extracomment>ui/plot_window.py</extracomment>
            <translation>Ventana de ajuste</translation>
        </message>
        <message>
            <source>plate {plate}, screw {screw}: {opens}, largest gap {gap}</source>
            <extracomment>ui/plot_window.py</extracomment>
            <translation>placa {plate}, tornillo {screw}: {opens}, apertura máxima {gap}</translation>
        </message>
        <message>
            <source>You are at {place}.</source>
            <extracomment>ui/plot_window.py</extracomment>
            <translation>Usted está en {place}.</translation>
        </message>
        <message>
            <source>contact screw [deg]</source>
            <extracomment>ui/plot_window.py</extracomment>
            <translation>tornillo de contacto [°]</translation>
        </message>
        <message>
            <source>Heel wear</source>
            <extracomment>ui/plot_window.py</extracomment>
            <translation>Desgaste del talón</translation>
        </message>
        <message>
            <source>Wear the heel and see the window move: what is set now opens later, with a smaller gap</source>
            <extracomment>ui/plot_window.py</extracomment>
            <translation>Desgaste el talón y vea moverse la ventana: lo ajustado ahora abre más tarde, con menor apertura</translation>
        </message>
        <message>
            <source>(no heel arm in the file)</source>
            <extracomment>ui/plot_window.py</extracomment>
            <translation>(sin brazo del talón en el archivo)</translation>
        </message>
        <message>
            <source>opens {off} late</source>
            <extracomment>ui/plot_window.py</extracomment>
            <translation>abre {off} tarde</translation>
        </message>
        <message>
            <source>opens {off} early</source>
            <extracomment>ui/plot_window.py</extracomment>
            <translation>abre {off} pronto</translation>
        </message>
        <message>
            <source>Heel worn</source>
            <extracomment>ui/plot_window.py</extracomment>
            <translation>Talón gastado</translation>
        </message>
        <message>
            <source>kept in the attempt's file</source>
            <extracomment>ui/practice_choice.py</extracomment>
            <translation>se guarda en el archivo del intento</translation>
        </message>
        <message>
            <source>left empty: drawn at random; the same code gives the same faults</source>
            <extracomment>ui/practice_choice.py</extracomment>
            <translation>si queda vacío: al azar; el mismo código da los mismos fallos</translation>
        </message>
        <message>
            <source>Lessons</source>
            <extracomment>ui/practice_choice.py</extracomment>
            <translation>Lecciones</translation>
        </message>
        <message>
            <source>New exercise</source>
            <extracomment>ui/practice_choice.py</extracomment>
            <translation>Ejercicio nuevo</translation>
        </message>
        <message>
            <source>&amp;Trainee</source>
            <extracomment>ui/practice_choice.py</extracomment>
            <translation>&amp;Alumno</translation>
        </message>
        <message>
            <source>{steps} steps.</source>
            <extracomment>ui/practice_choice.py</extracomment>
            <translation>{steps} pasos.</translation>
        </message>
        <message>
            <source>About {minutes} minutes.</source>
            <extracomment>ui/practice_choice.py</extracomment>
            <translation>Unos {minutes} minutos.</translation>
        </message>
        <message>
            <source>&amp;2 Tray</source>
            <extracomment>ui/practice_controls.py</extracomment>
            <translation>&amp;2 Bandeja</translation>
        </message>
        <message>
            <source>&amp;3 Work</source>
            <extracomment>ui/practice_controls.py</extracomment>
            <translation>&amp;3 Trabajo</translation>
        </message>
        <message>
            <source>&amp;4 Notebook</source>
            <extracomment>ui/practice_controls.py</extracomment>
            <translation>&amp;4 Cuaderno</translation>
        </message>
        <message>
            <source>{part}: by how much</source>
            <extracomment>ui/practice_controls.py</extracomment>
            <translation>{part}: cuánto</translation>
        </message>
        <message>
            <source>With Shift a tenth of the amount, with Alt ten times</source>
            <extracomment>ui/practice_controls.py</extracomment>
            <translation>Con Mayús una décima de la cantidad, con Alt diez veces</translation>
        </message>
        <message>
            <source>Drag rotor, backplate and contact screw in the picture, or take one in hand with 1, 2, 3 and turn it with the arrow keys or the wheel: finer with Shift. Everything else is a button at the right; Alt and the underlined letter reaches it, Alt with 1 to 4 the tabs. Nothing here shows a true value: read the instruments. There is no undo.</source>
            <extracomment>ui/practice_menus.py</extracomment>
            <translation>Arrastre en el dibujo el rotor, la placa base y el tornillo de contacto, o tome uno con 1, 2, 3 y gírelo con las flechas o la rueda: más fino con Mayús. Todo lo demás es un botón a la derecha; se llega con Alt y la letra subrayada, y a las pestañas con Alt y 1 a 4. Nada muestra aquí un valor real: lea los instrumentos. No se puede deshacer.</translation>
        </message>
        <message>
            <source>Save picture of the contacts…</source>
            <extracomment>ui/practice_menus.py</extracomment>
            <translation>Guardar imagen de los contactos…</translation>
        </message>
        <message>
            <source>&amp;Save attempt as…</source>
            <extracomment>ui/practice_menus.py</extracomment>
            <translation>&amp;Guardar intento como…</translation>
        </message>
        <message>
            <source>&amp;Hand in…</source>
            <extracomment>ui/practice_menus.py</extracomment>
            <translation>&amp;Entregar…</translation>
        </message>
        <message>
            <source>Save &amp;debrief…</source>
            <extracomment>ui/practice_menus.py</extracomment>
            <translation>Guardar &amp;balance…</translation>
        </message>
        <message>
            <source>Practice</source>
            <extracomment>ui/practice_menus.py</extracomment>
            <translation>Práctica</translation>
        </message>
        <message>
            <source>Atte&amp;mpt</source>
            <extracomment>ui/practice_menus.py</extracomment>
            <translation>&amp;Intento</translation>
        </message>
        <message>
            <source>put a hand on the propeller first, and treat it as live: nobody else in its arc</source>
            <extracomment>ui/practice_model.py</extracomment>
            <translation>ponga primero una mano en la hélice, y trátela como viva: nadie más en su arco</translation>
        </message>
        <message>
            <source>this is a replay: nothing in it can be changed</source>
            <extracomment>ui/practice_model.py</extracomment>
            <translation>esto es una repetición: no se puede cambiar nada en ella</translation>
        </message>
        <message>
            <source>Straightedge past the mark as the contacts open</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>Regla pasada la marca al abrir los contactos</translation>
        </message>
        <message>
            <source>Disc reads at top dead centre</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>El disco marca en el punto muerto superior</translation>
        </message>
        <message>
            <source>Remark</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>Observación</translation>
        </message>
        <message>
            <source>short inside the magneto</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>cortocircuito dentro de la magneto</translation>
        </message>
        <message>
            <source>spring tab does not touch</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>la lengüeta no toca</translation>
        </message>
        <message>
            <source>such as 0.8 mm or −30 thou; short of it: with a minus</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>p. ej. 0.8 mm o −30 thou; antes de ella: con menos</translation>
        </message>
        <message>
            <source>such as 0.33 mm or 13 thou</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>such as 25.5°</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>p. ej. 25.5°</translation>
        </message>
        <message>
            <source>such as −3.25°; after the zero: with a minus</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>p. ej. −3.25°; después del cero: con menos</translation>
        </message>
        <message>
            <source>one line</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>una línea</translation>
        </message>
        <message>
            <source>Write down</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>Anotar</translation>
        </message>
        <message>
            <source>What is wrong with the entry</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>Qué falla en la anotación</translation>
        </message>
        <message>
            <source>Writ&amp;e it down</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>An&amp;otarlo</translation>
        </message>
        <message>
            <source>Wha&amp;t</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>&amp;Qué</translation>
        </message>
        <message>
            <source>Ma&amp;gneto</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>Ma&amp;gneto</translation>
        </message>
        <message>
            <source>Lo&amp;be</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>Le&amp;va</translation>
        </message>
        <message>
            <source>&amp;Reading</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>&amp;Lectura</translation>
        </message>
        <message>
            <source>&amp;Finding</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>&amp;Hallazgo</translation>
        </message>
        <message>
            <source>Notebook</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>Cuaderno</translation>
        </message>
        <message>
            <source>“{text}” is not a lobe: write a whole number from 1 to {lobes} here, and the reading below</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>«{text}» no es un lóbulo: escriba aquí un número entero de 1 a {lobes}, y la lectura debajo</translation>
        </message>
        <message>
            <source>Left magneto</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>Magneto izquierda</translation>
        </message>
        <message>
            <source>Right magneto</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>Magneto derecha</translation>
        </message>
        <message>
            <source>there is nothing to write down yet</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>aún no hay nada que anotar</translation>
        </message>
        <message>
            <source>Attempts (*.json);;All files (*)</source>
            <extracomment>ui/practice_room.py</extracomment>
            <translation>Intentos (*.json);;Todos los archivos (*)</translation>
        </message>
        <message>
            <source>Open an attempt</source>
            <extracomment>ui/practice_room.py</extracomment>
            <translation>Abrir un intento</translation>
        </message>
        <message>
            <source>An attempt at “{name}” was under way when the program ended.</source>
            <extracomment>ui/practice_room.py</extracomment>
            <translation>Un intento de «{name}» estaba en curso cuando terminó el programa.</translation>
        </message>
        <message>
            <source>&amp;Go on with it</source>
            <extracomment>ui/practice_room.py</extracomment>
            <translation>&amp;Seguir con él</translation>
        </message>
        <message>
            <source>&amp;Discard it</source>
            <extracomment>ui/practice_room.py</extracomment>
            <translation>&amp;Descartarlo</translation>
        </message>
        <message>
            <source>Treat the propeller as live: switch off and its lead proved, plugs out, wheels chocked, nobody in its arc.</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>Trate la hélice como viva: contacto cortado y su cable probado, bujías fuera, ruedas calzadas, nadie en su arco.</translation>
        </message>
        <message>
            <source>by so much</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>tanto</translation>
        </message>
        <message>
            <source>until lamp changes</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>hasta que cambie la lámpara</translation>
        </message>
        <message>
            <source>until edge in line</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>hasta alinear el canto</translation>
        </message>
        <message>
            <source>until widest open</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>hasta apertura máxima</translation>
        </message>
        <message>
            <source>until piston stops</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>hasta que pare el pistón</translation>
        </message>
        <message>
            <source>to a disc reading</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>hasta una lectura del disco</translation>
        </message>
        <message>
            <source>propeller by so much</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>hélice, tanto</translation>
        </message>
        <message>
            <source>Timing lamp</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>Lámpara de calado</translation>
        </message>
        <message>
            <source>What you see</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>Lo que ve</translation>
        </message>
        <message>
            <source>Turning</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>Girar</translation>
        </message>
        <message>
            <source>Hol&amp;d the rotor</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>Su&amp;jetar el rotor</translation>
        </message>
        <message>
            <source>How far to turn</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>Cuánto girar</translation>
        </message>
        <message>
            <source>By how many degrees, or to which reading before the disc's zero</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>Cuántos grados, o hasta qué lectura antes del cero del disco</translation>
        </message>
        <message>
            <source>Hand on the &amp;propeller</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>Mano en la &amp;hélice</translation>
        </message>
        <message>
            <source>Lamp</source>
            <extracomment>ui/practice_sight.py, lessons/a-full-job.json</extracomment>
            <translation>Lámpara</translation>
        </message>
        <message>
            <source>Finger</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>Dedo</translation>
        </message>
        <message>
            <source>Magneto in view</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>Magneto a la vista</translation>
        </message>
        <message>
            <source>◀ &amp;Against</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>◀ En &amp;contra</translation>
        </message>
        <message>
            <source>&amp;With ▶</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>&amp;A favor ▶</translation>
        </message>
        <message>
            <source>Turn against rotation</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>Girar en contra del giro</translation>
        </message>
        <message>
            <source>Turn with rotation</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>Girar en el sentido de giro</translation>
        </message>
        <message>
            <source>{way}; by so much: with Shift a tenth of it, with Alt ten times</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>{way}; tanto: con Mayús una décima, con Alt diez veces</translation>
        </message>
        <message>
            <source>Turning the propeller</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>Girar la hélice</translation>
        </message>
        <message>
            <source>About {minutes} minutes. Time is a guide and is not marked.</source>
            <extracomment>ui/practice_task.py</extracomment>
            <translation>Unos {minutes} minutos. El tiempo es orientativo y no se califica.</translation>
        </message>
        <message>
            <source>No more hints</source>
            <extracomment>ui/practice_task.py</extracomment>
            <translation>No hay más pistas</translation>
        </message>
        <message>
            <source>A hi&amp;nt ({left} left)</source>
            <extracomment>ui/practice_task.py</extracomment>
            <translation>Una pis&amp;ta (quedan {left})</translation>
        </message>
        <message>
            <source>Another hi&amp;nt ({left} left)</source>
            <extracomment>ui/practice_task.py</extracomment>
            <translation>Otra pis&amp;ta (quedan {left})</translation>
        </message>
        <message>
            <source>{percent} % are needed, and no dangerous act. Right, and proved by instruments since the last act that could have changed it, counts whole; right but not proved, half.</source>
            <extracomment>ui/practice_task.py</extracomment>
            <translation>Se necesita el {percent} %, y ningún acto peligroso. Lo correcto y probado con instrumentos después del último acto que pudo cambiarlo cuenta entero; lo correcto sin probar, la mitad.</translation>
        </message>
        <message>
            <source>Set of blades</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>Juego de galgas</translation>
        </message>
        <message>
            <source>Straightedge, marks of {divisions}</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>Regla, marcas de {divisions}</translation>
        </message>
        <message>
            <source>Laid along the &amp;step</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>Puesta en el &amp;escalón</translation>
        </message>
        <message>
            <source>Look s&amp;quare over it</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>Mirar a es&amp;cuadra sobre ella</translation>
        </message>
        <message>
            <source>From where the eye looks over the straightedge</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>Desde dónde mira el ojo sobre la regla</translation>
        </message>
        <message>
            <source>Behind, square over the edge, ahead</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>Detrás, a escuadra sobre el canto, delante</translation>
        </message>
        <message>
            <source>Electrical</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>Eléctrico</translation>
        </message>
        <message>
            <source>Crank</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>Cigüeñal</translation>
        </message>
        <message>
            <source>Th&amp;umb over No. 1's plug hole</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>P&amp;ulgar en el agujero de bujía del n.º 1</translation>
        </message>
        <message>
            <source>&amp;Try them</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>&amp;Probarlas</translation>
        </message>
        <message>
            <source>Put &amp;back</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>&amp;Devolver</translation>
        </message>
        <message>
            <source>Blade {blade}</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>Galga {blade}</translation>
        </message>
        <message>
            <source>In hand: {blades}</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>En mano: {blades}</translation>
        </message>
        <message>
            <source>Pick up to three</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>Tome hasta tres</translation>
        </message>
        <message>
            <source>Lamp a&amp;cross the contacts</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>Lámpara en los &amp;contactos</translation>
        </message>
        <message>
            <source>Meter the &amp;lead to the case</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>Medir del cab&amp;le a la carcasa</translation>
        </message>
        <message>
            <source>From the pulled plug of the switch lead to the case</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>Del cable de masa desenchufado a la carcasa</translation>
        </message>
        <message>
            <source>Disc on the cra&amp;nk</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>Disco en el cigüe&amp;ñal</translation>
        </message>
        <message>
            <source>Turn the disc on the crank, so that it reads earlier or later under its pointer</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>Girar el disco sobre el cigüeñal, para que marque antes o después bajo su índice</translation>
        </message>
        <message>
            <source>Piston st&amp;op in No. 1</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>T&amp;ope de pistón en el n.º 1</translation>
        </message>
        <message>
            <source>Thousandths of an inch</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>Milésimas de pulgada</translation>
        </message>
        <message>
            <source>There is nothing on the tray: eyes and hands are enough here.</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>No hay nada en la bandeja: aquí bastan ojos y manos.</translation>
        </message>
        <message>
            <source>behind</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>detrás</translation>
        </message>
        <message>
            <source>ahead</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>delante</translation>
        </message>
        <message>
            <source>reads later</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>marca después</translation>
        </message>
        <message>
            <source>reads earlier</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>marca antes</translation>
        </message>
        <message>
            <source>magview {version}: a training aid.</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation>magview {version}: una ayuda para la formación.</translation>
        </message>
        <message>
            <source>Hand &amp;in…</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation>E&amp;ntregar…</translation>
        </message>
        <message>
            <source>Hand in now?</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation>¿Entregar ahora?</translation>
        </message>
        <message>
            <source>Hand in</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation>Entregar</translation>
        </message>
        <message>
            <source>Save the attempt</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation>Guardar el intento</translation>
        </message>
        <message>
            <source>Attempts (*.json)</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation>Intentos (*.json)</translation>
        </message>
        <message>
            <source>Save the debrief</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation>Guardar el balance</translation>
        </message>
        <message>
            <source>This attempt has not been saved.</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation>Este intento no se ha guardado.</translation>
        </message>
        <message>
            <source>&amp;1 Lesson</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation>&amp;1 Lección</translation>
        </message>
        <message>
            <source>&amp;1 Task</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation>&amp;1 Tarea</translation>
        </message>
        <message>
            <source>&amp;Hand in</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation>&amp;Entregar</translation>
        </message>
        <message>
            <source>&amp;Go on working</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation>&amp;Seguir trabajando</translation>
        </message>
        <message>
            <source>Then the true values are shown, and nothing more can be done.</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation>Se muestran entonces los valores reales, y ya no se puede hacer nada más.</translation>
        </message>
        <message>
            <source>practice</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation>práctica</translation>
        </message>
        <message>
            <source>The attempt cannot be kept for after a crash: {error}</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation>El intento no se puede conservar para después de un fallo: {error}</translation>
        </message>
        <message>
            <source>Loc&amp;k screw tight</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>Tornillo de blo&amp;queo apretado</translation>
        </message>
        <message>
            <source>C&amp;lamp screws tight</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>Tornillos de su&amp;jeción apretados</translation>
        </message>
        <message>
            <source>Contact &amp;screw</source>
            <extracomment>ui/practice_work.py, ui/setting_panel.py</extracomment>
            <translation>&amp;Tornillo de contacto</translation>
        </message>
        <message>
            <source>&amp;Backplate</source>
            <extracomment>ui/practice_work.py, ui/setting_panel.py</extracomment>
            <translation>Placa &amp;base</translation>
        </message>
        <message>
            <source>Look at the &amp;contacts</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>Mirar los &amp;contactos</translation>
        </message>
        <message>
            <source>D&amp;ress them</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>&amp;Repasarlos</translation>
        </message>
        <message>
            <source>Plu&amp;g pulled out</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>Cable desench&amp;ufado</translation>
        </message>
        <message>
            <source>Paper under the spring tab</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>Papel bajo la lengüeta</translation>
        </message>
        <message>
            <source>Engine and magneto</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>Motor y magneto</translation>
        </message>
        <message>
            <source>Wh&amp;eels chocked</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>Ruedas calza&amp;das</translation>
        </message>
        <message>
            <source>Spark plugs o&amp;ut</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>Bujías &amp;fuera</translation>
        </message>
        <message>
            <source>&amp;Nuts tight</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>Tuercas apre&amp;tadas</translation>
        </message>
        <message>
            <source>Rotor pinned</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>Rotor con pasador</translation>
        </message>
        <message>
            <source>Lift the magneto o&amp;ff</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>&amp;Desmontar la magneto</translation>
        </message>
        <message>
            <source>Refit by its marks</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>Montar según sus marcas</translation>
        </message>
        <message>
            <source>Refit as the rotor stands</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>Montar con el rotor como está</translation>
        </message>
        <message>
            <source>Coupling, one tooth at a time</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>Acoplamiento, diente a diente</translation>
        </message>
        <message>
            <source>Paint marks across i&amp;t</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>P&amp;intar marcas a través</translation>
        </message>
        <message>
            <source>Screw {screw}; plate {plate}.</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>Tornillo {screw}; placa {plate}.</translation>
        </message>
        <message>
            <source>◀ against</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>◀ en contra</translation>
        </message>
        <message>
            <source>with ▶</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>a favor ▶</translation>
        </message>
        <message>
            <source>New lead</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>Cable nuevo</translation>
        </message>
        <message>
            <source>New spring tab</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>Lengüeta nueva</translation>
        </message>
        <message>
            <source>New insulation</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>Aislamiento nuevo</translation>
        </message>
        <message>
            <source>Magneto flange</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>Brida de la magneto</translation>
        </message>
        <message>
            <source>Present</source>
            <extracomment>ui/present.py</extracomment>
            <translation>Presentar</translation>
        </message>
        <message>
            <source>◀ Previous</source>
            <extracomment>ui/present.py</extracomment>
            <translation>◀ Anterior</translation>
        </message>
        <message>
            <source>Name the part before</source>
            <extracomment>ui/present.py</extracomment>
            <translation>Nombrar la pieza anterior</translation>
        </message>
        <message>
            <source>Next ▶</source>
            <extracomment>ui/present.py</extracomment>
            <translation>Siguiente ▶</translation>
        </message>
        <message>
            <source>Name the next part; or click a part</source>
            <extracomment>ui/present.py</extracomment>
            <translation>Nombrar la pieza siguiente; o haga clic en una pieza</translation>
        </message>
        <message>
            <source>Spotlight</source>
            <extracomment>ui/present.py</extracomment>
            <translation>Foco</translation>
        </message>
        <message>
            <source>Dim all but the part that is named</source>
            <extracomment>ui/present.py</extracomment>
            <translation>Atenuar todo menos la pieza nombrada</translation>
        </message>
        <message>
            <source>Freeze</source>
            <extracomment>ui/present.py</extracomment>
            <translation>Congelar</translation>
        </message>
        <message>
            <source>The picture stands; the bench moves on</source>
            <extracomment>ui/present.py</extracomment>
            <translation>La imagen queda fija; el banco sigue</translation>
        </message>
        <message>
            <source>Hide numbers</source>
            <extracomment>ui/present.py</extracomment>
            <translation>Ocultar números</translation>
        </message>
        <message>
            <source>No numbers until they are asked for</source>
            <extracomment>ui/present.py</extracomment>
            <translation>Sin números hasta que se pidan</translation>
        </message>
        <message>
            <source>Keep this moment</source>
            <extracomment>ui/present.py</extracomment>
            <translation>Fijar este momento</translation>
        </message>
        <message>
            <source>Remember the bench as it is</source>
            <extracomment>ui/present.py</extracomment>
            <translation>Recordar el banco tal como está</translation>
        </message>
        <message>
            <source>Before and after</source>
            <extracomment>ui/present.py</extracomment>
            <translation>Antes y después</translation>
        </message>
        <message>
            <source>The kept moment beside now</source>
            <extracomment>ui/present.py</extracomment>
            <translation>El momento fijado junto al actual</translation>
        </message>
        <message>
            <source>End</source>
            <extracomment>ui/present.py</extracomment>
            <translation>Terminar</translation>
        </message>
        <message>
            <source>Put away what is shown, then end</source>
            <extracomment>ui/present.py</extracomment>
            <translation>Retirar lo que se muestra, luego terminar</translation>
        </message>
        <message>
            <source>  {number} of {count}  </source>
            <extracomment>ui/present.py</extracomment>
            <translation>  {number} de {count}  </translation>
        </message>
        <message>
            <source>{part}: {told}</source>
            <extracomment>ui/present.py</extracomment>
            <translation>{part}: {told}</translation>
        </message>
        <message>
            <source>No part is named yet</source>
            <extracomment>ui/present.py</extracomment>
            <translation>Aún no se ha nombrado ninguna pieza</translation>
        </message>
        <message>
            <source>This moment is kept: “Before and after” shows it beside the bench.</source>
            <extracomment>ui/present.py</extracomment>
            <translation>Este momento queda fijado: «Antes y después» lo muestra junto al banco.</translation>
        </message>
        <message>
            <source>FROZEN · the bench has moved on</source>
            <extracomment>ui/present_covers.py</extracomment>
            <translation>CONGELADO · el banco ha seguido</translation>
        </message>
        <message>
            <source>FROZEN · as on the bench</source>
            <extracomment>ui/present_covers.py</extracomment>
            <translation>CONGELADO · como en el banco</translation>
        </message>
        <message>
            <source>This is the moment that was kept: it does not move.</source>
            <extracomment>ui/present_covers.py</extracomment>
            <translation>Este es el momento fijado: no se mueve.</translation>
        </message>
        <message>
            <source>Before</source>
            <extracomment>ui/present_covers.py</extracomment>
            <translation>Antes</translation>
        </message>
        <message>
            <source>Now</source>
            <extracomment>ui/present_covers.py</extracomment>
            <translation>Ahora</translation>
        </message>
        <message>
            <source>{title}: breaker end of the magneto</source>
            <extracomment>ui/present_covers.py</extracomment>
            <translation>{title}: lado del ruptor de la magneto</translation>
        </message>
        <message>
            <source>Nothing has changed.</source>
            <extracomment>ui/present_covers.py</extracomment>
            <translation>No ha cambiado nada.</translation>
        </message>
        <message>
            <source>{title} · magview {version} · page {number} of {count}</source>
            <extracomment>ui/print_guide.py</extracomment>
            <translation>{title} · magview {version} · página {number} de {count}</translation>
        </message>
        <message>
            <source>page {page} of {pages}</source>
            <extracomment>ui/print_pdf.py</extracomment>
            <translation>página {page} de {pages}</translation>
        </message>
        <message>
            <source>{language} from the next start: other windows are open now.</source>
            <extracomment>ui/renewal.py</extracomment>
            <translation>{language} desde el próximo inicio: ahora hay otras ventanas abiertas.</translation>
        </message>
        <message>
            <source>Reports stay on this computer and are sent nowhere; they hold no names and no words you typed. Whoever looks after the program can make use of one: save it, and hand it on if you wish.</source>
            <extracomment>ui/report_dialog.py</extracomment>
            <translation>Los informes se quedan en este equipo y no se envían a ninguna parte; no contienen nombres ni palabras que usted escribiera. A quien cuida del programa le puede servir uno: guárdelo y entréguelo si quiere.</translation>
        </message>
        <message>
            <source>Fault reports</source>
            <extracomment>ui/report_dialog.py</extracomment>
            <translation>Informes de fallos</translation>
        </message>
        <message>
            <source>When the program ran last, something in it went wrong. A report of it was kept.</source>
            <extracomment>ui/report_dialog.py</extracomment>
            <translation>La última vez que se usó el programa, algo falló en él. Se guardó un informe.</translation>
        </message>
        <message>
            <source>What went wrong in the program itself.</source>
            <extracomment>ui/report_dialog.py</extracomment>
            <translation>Qué falló en el propio programa.</translation>
        </message>
        <message>
            <source>Report</source>
            <extracomment>ui/report_dialog.py</extracomment>
            <translation>Informe</translation>
        </message>
        <message>
            <source>What the report says</source>
            <extracomment>ui/report_dialog.py</extracomment>
            <translation>Lo que dice el informe</translation>
        </message>
        <message>
            <source>&amp;Delete</source>
            <extracomment>ui/report_dialog.py</extracomment>
            <translation>&amp;Borrar</translation>
        </message>
        <message>
            <source>Save the report</source>
            <extracomment>ui/report_dialog.py</extracomment>
            <translation>Guardar el informe</translation>
        </message>
        <message>
            <source>Deleted.</source>
            <extracomment>ui/report_dialog.py</extracomment>
            <translation>Borrado.</translation>
        </message>
        <message>
            <source>There is no report.</source>
            <extracomment>ui/report_dialog.py</extracomment>
            <translation>No hay ningún informe.</translation>
        </message>
        <message>
            <source>{file}: cannot be deleted: {reason}</source>
            <extracomment>ui/report_dialog.py</extracomment>
            <translation>{file}: no se puede borrar: {reason}</translation>
        </message>
        <message>
            <source>Training and planning aid with invented magnetos. Treat the propeller as live: switch off, switch lead grounded and proved, plugs out, wheels chocked. The maker's current manual and local rules govern; work on a certified aircraft is done or released by a licensed person.</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Ayuda para formación y planificación con magnetos inventadas. Trate la hélice como viva: contacto cortado, cable de masa a masa y probado, bujías fuera, ruedas calzadas. Rigen el manual vigente del fabricante y las normas locales; el trabajo en una aeronave certificada lo hace o lo aprueba una persona con licencia.</translation>
        </message>
        <message>
            <source>just open</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>se abren</translation>
        </message>
        <message>
            <source>just close</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>se cierran</translation>
        </message>
        <message>
            <source>Setting</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Ajuste</translation>
        </message>
        <message>
            <source>From the neutral before No. 1 fires, positive as it turns in service</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Desde el neutro antes de encender el n.º 1, positivo en el giro de servicio</translation>
        </message>
        <message>
            <source>Positive with cam rotation; it stops at the end of its slot</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Positivo con el giro de la leva; se detiene al final de su ranura</translation>
        </message>
        <message>
            <source>Positive brings the contacts closer. Dragged in the picture it follows one to one from 40 pixels out; at its head about a sixth, for fine setting</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Positivo acerca los contactos. Arrastrado en la imagen sigue uno a uno a partir de 40 píxeles; en su cabeza, cerca de un sexto, para el ajuste fino</translation>
        </message>
        <message>
            <source>Hol&amp;d</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Su&amp;jetar</translation>
        </message>
        <message>
            <source>Let go, and the magnet pulls the rotor to where it wants it</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Suelte, y el imán lleva el rotor adonde quiere</translation>
        </message>
        <message>
            <source>To the E-gap</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Al E-gap</translation>
        </message>
        <message>
            <source>To &amp;opening</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>A la ape&amp;rtura</translation>
        </message>
        <message>
            <source>Clamp screws of the backplate tight</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Tornillos de sujeción de la placa base apretados</translation>
        </message>
        <message>
            <source>Clamp screws: the plate turns only while they are slack</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Tornillos de sujeción: la placa solo gira mientras están flojos</translation>
        </message>
        <message>
            <source>Lock screw of the contact screw tight</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Tornillo de bloqueo del tornillo de contacto apretado</translation>
        </message>
        <message>
            <source>Lock screw: the contact screw turns only while it is slack; tightening can shift it</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Tornillo de bloqueo: el tornillo de contacto solo gira mientras está flojo; al apretarlo puede moverse</translation>
        </message>
        <message>
            <source>Tight</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Apretados</translation>
        </message>
        <message>
            <source>Go</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Ir</translation>
        </message>
        <message>
            <source>Turn</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Girar</translation>
        </message>
        <message>
            <source>Run until</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Marchar hasta</translation>
        </message>
        <message>
            <source>on and on</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>sin parar</translation>
        </message>
        <message>
            <source>Speed of the run</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Velocidad de la marcha</translation>
        </message>
        <message>
            <source>Ru&amp;n</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>&amp;Marcha</translation>
        </message>
        <message>
            <source>Readings, lobe 1</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Lecturas, leva 1</translation>
        </message>
        <message>
            <source>What would put it right</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Qué lo corregiría</translation>
        </message>
        <message>
            <source>For a l&amp;argest gap of</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Para una apertura má&amp;xima de</translation>
        </message>
        <message>
            <source>Set it so</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Ajustar así</translation>
        </message>
        <message>
            <source>Every lobe, in firing order</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Todas las levas, en orden de encendido</translation>
        </message>
        <message>
            <source>Rotor degrees; the gap is the largest, at the top of the lobe</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Grados de rotor; la apertura es la máxima, en la cima de la leva</translation>
        </message>
        <message>
            <source>Readings of every lobe</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Lecturas de todas las levas</translation>
        </message>
        <message>
            <source>{gap} (blade {blade})</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>{gap} (galga {blade})</translation>
        </message>
        <message>
            <source>clamp screws</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>tornillos de sujeción</translation>
        </message>
        <message>
            <source>Opens</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Abre</translation>
        </message>
        <message>
            <source>Error</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Error</translation>
        </message>
        <message>
            <source>Closes</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Cierra</translation>
        </message>
        <message>
            <source>Dwell</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Áng. c.</translation>
        </message>
        <message>
            <source>Gap</source>
            <extracomment>ui/setting_panel.py, ui/trials_panel.py</extracomment>
            <translation>Apertura</translation>
        </message>
        <message>
            <source>{low}° to {high}°</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>{low}° a {high}°</translation>
        </message>
        <message>
            <source>{opens} of rotor</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>{opens} de rotor</translation>
        </message>
        <message>
            <source>✗ Out of limits: {faults}</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>✗ Fuera de límites: {faults}</translation>
        </message>
        <message>
            <source>✓ Within limits</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>✓ Dentro de límites</translation>
        </message>
        <message>
            <source>within limits, {limit}</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>dentro de límites, {limit}</translation>
        </message>
        <message>
            <source>out of limits, {limit}</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>fuera de límites, {limit}</translation>
        </message>
        <message>
            <source>Stop</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Parar</translation>
        </message>
        <message>
            <source>With this setting lobe 1 never opens or never closes the contacts.</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Con este ajuste, la leva 1 nunca abre o nunca cierra los contactos.</translation>
        </message>
        <message>
            <source>Contacts open at</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Los contactos abren a</translation>
        </message>
        <message>
            <source>From the E-gap</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Desde el E-gap</translation>
        </message>
        <message>
            <source>Straightedge off mark</source>
            <extracomment>ui/setting_panel.py, ui/uncertainty_panel.py</extracomment>
            <translation>Regla a la marca</translation>
        </message>
        <message>
            <source>Closed for (dwell)</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Ángulo de cierre</translation>
        </message>
        <message>
            <source>at it</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>en él</translation>
        </message>
        <message>
            <source>Top dead centre from two stop readings</source>
            <extracomment>ui/stop_box.py</extracomment>
            <translation>Punto muerto superior con dos lecturas del tope</translation>
        </message>
        <message>
            <source>Top dead centre on the disc</source>
            <extracomment>ui/stop_box.py</extracomment>
            <translation>Punto muerto superior en el disco</translation>
        </message>
        <message>
            <source>True top dead centre is at {middle}° on the disc; set the pointer to zero there. (Disc numbered 0 to 360°, or to both sides with what is before zero negative. If the stop was met about bottom dead centre, the top is at {opposite}°. Exact for a rod on the crank pin: use the master rod's.)</source>
            <extracomment>ui/stop_box.py</extracomment>
            <translation>El punto muerto superior real está en {middle}° del disco; ponga ahí el índice a cero. (Disco numerado de 0 a 360°, o a ambos lados con lo anterior al cero en negativo. Si el tope se halló en torno al punto muerto inferior, el superior está en {opposite}°. Exacto para una biela en la muñequilla: use la de la biela maestra.)</translation>
        </message>
        <message>
            <source>First</source>
            <extracomment>ui/stop_box.py</extracomment>
            <translation>Primera</translation>
        </message>
        <message>
            <source>Second</source>
            <extracomment>ui/stop_box.py</extracomment>
            <translation>Segunda</translation>
        </message>
        <message>
            <source>With rotation is {way} seen from the drive end.</source>
            <extracomment>ui/teeth_box.py</extracomment>
            <translation>A favor del giro es {way} visto desde el lado de accionamiento.</translation>
        </message>
        <message>
            <source>Teeth moved from as found</source>
            <extracomment>ui/teeth_box.py, ui/timing_panel.py</extracomment>
            <translation>Dientes movidos desde lo hallado</translation>
        </message>
        <message>
            <source>&amp;As found</source>
            <extracomment>ui/teeth_box.py</extracomment>
            <translation>Como se &amp;halló</translation>
        </message>
        <message>
            <source>Paint new &amp;marks</source>
            <extracomment>ui/teeth_box.py</extracomment>
            <translation>Pintar &amp;marcas nuevas</translation>
        </message>
        <message>
            <source>Marks in line across drive flange, disc and magneto flange, as they stand now</source>
            <extracomment>ui/teeth_box.py</extracomment>
            <translation>Marcas alineadas a través de brida motriz, disco y brida de la magneto, tal como están ahora</translation>
        </message>
        <message>
            <source>{name}: one tooth against rotation</source>
            <extracomment>ui/teeth_box.py</extracomment>
            <translation>{name}: un diente en contra del giro</translation>
        </message>
        <message>
            <source>{name}: one tooth with rotation</source>
            <extracomment>ui/teeth_box.py</extracomment>
            <translation>{name}: un diente en el sentido de giro</translation>
        </message>
        <message>
            <source>Disc on the drive</source>
            <extracomment>ui/teeth_box.py</extracomment>
            <translation>Disco en el accionamiento</translation>
        </message>
        <message>
            <source>Before turning the crank: switch off, switch lead grounded and proved, plugs out, wheels chocked, nobody in the propeller's arc. Paint marks on disc, both flanges and engine before taking anything apart; move one tooth at a time; approach every reading in the direction of rotation, so that backlash is taken up. The maker's current manual and local rules govern.</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation>Antes de girar el cigüeñal: contacto cortado, cable de masa a masa y probado, bujías fuera, ruedas calzadas, nadie en el arco de la hélice. Pinte marcas en disco, ambas bridas y motor antes de desmontar nada; mueva un diente cada vez; llegue a cada lectura en el sentido de giro, para absorber el juego. Rigen el manual vigente del fabricante y las normas locales.</translation>
        </message>
        <message>
            <source>Teeth moved from as found, left magneto</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation>Dientes movidos desde lo hallado, magneto izquierda</translation>
        </message>
        <message>
            <source>Moves that would put it right, best first, left magneto</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation>Movimientos que lo corregirían, el mejor primero, magneto izquierda</translation>
        </message>
        <message>
            <source>Teeth moved from as found, right magneto</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation>Dientes movidos desde lo hallado, magneto derecha</translation>
        </message>
        <message>
            <source>Moves that would put it right, best first, right magneto</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation>Movimientos que lo corregirían, el mejor primero, magneto derecha</translation>
        </message>
        <message>
            <source>Left fires {left}°, right {right}° before top dead centre: {apart}. Wanted: {wanted}. That is {difference}° from it, {tolerance}° allowed.</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation>La izquierda enciende {left}°, la derecha {right}° antes del punto muerto superior: {apart}. Se quiere: {wanted}. Difiere {difference}°; se admiten {tolerance}°.</translation>
        </message>
        <message>
            <source>both together</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation>ambas a la vez</translation>
        </message>
        <message>
            <source>left {angle}° earlier</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation>la izquierda {angle}° antes</translation>
        </message>
        <message>
            <source>right {angle}° earlier</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation>la derecha {angle}° antes</translation>
        </message>
        <message>
            <source>⚠ Treat the propeller as live: switch off, lead proved, plugs out, wheels chocked.</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation>⚠ Trate la hélice como viva: contacto cortado, cable probado, bujías fuera, ruedas calzadas.</translation>
        </message>
        <message>
            <source>Take care: {mismatch}.</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation>Cuidado: {mismatch}.</translation>
        </message>
        <message>
            <source>Plate</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Placa</translation>
        </message>
        <message>
            <source>Opened</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Abrió</translation>
        </message>
        <message>
            <source>Degrees</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Grados</translation>
        </message>
        <message>
            <source>Millimetres along the slot</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Milímetros a lo largo de la ranura</translation>
        </message>
        <message>
            <source>Scale marks</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Marcas de escala</translation>
        </message>
        <message>
            <source>A trial: set to open at the E-gap</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Un ensayo: ajustado para abrir en el E-gap</translation>
        </message>
        <message>
            <source>The thickest blade that passes at the top of lobe 1; 0 if none does</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>La galga más gruesa que pasa en la cima de la leva 1; 0 si no pasa ninguna</translation>
        </message>
        <message>
            <source>The thinnest blade that does not pass; 0 if every blade did</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>La galga más fina que no pasa; 0 si pasaron todas</translation>
        </message>
        <message>
            <source>How far past the E-gap the contacts opened, if the straightedge showed it</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>A qué distancia tras el E-gap abrieron los contactos, si lo mostró la regla</translation>
        </message>
        <message>
            <source>Plate rea&amp;d in</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Placa leí&amp;da</translation>
        </message>
        <message>
            <source>The plate as it stands, and what blades in steps of a thousandth of an inch would find</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>La placa tal como está, y lo que hallarían galgas a pasos de una milésima de pulgada</translation>
        </message>
        <message>
            <source>Stri&amp;ke out</source>
            <extracomment>ui/trials_panel.py, ui/wear_panel.py</extracomment>
            <translation>&amp;Tachar</translation>
        </message>
        <message>
            <source>Strike out the trial that is chosen, or the last</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Tachar el ensayo elegido, o el último</translation>
        </message>
        <message>
            <source>What to do next</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Qué hacer ahora</translation>
        </message>
        <message>
            <source>T&amp;urn the plate there</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>&amp;Girar ahí la placa</translation>
        </message>
        <message>
            <source>&amp;Save what was found…</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Guardar lo &amp;hallado…</translation>
        </message>
        <message>
            <source>Turn the plate on the bench; then set the contacts to open at the E-gap again</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Gire la placa en el banco; luego ajuste otra vez los contactos para que abran en el E-gap</translation>
        </message>
        <message>
            <source>Save a magneto file of your own, with lift, rise and index as the trials tell</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Guardar un archivo de magneto propio, con alzada, subida e índice según los ensayos</translation>
        </message>
        <message>
            <source>Save what was found</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Guardar lo hallado</translation>
        </message>
        <message>
            <source>Saved {name}: open it from the File menu.</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>{name} guardado: ábralo desde el menú Archivo.</translation>
        </message>
        <message>
            <source>Plate, with rotation +</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Placa, en el sentido de giro +</translation>
        </message>
        <message>
            <source>Along the slot</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>A lo largo de la ranura</translation>
        </message>
        <message>
            <source>Slot's radius</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Radio de la ranura</translation>
        </message>
        <message>
            <source>Marks, with rotation +</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Marcas, en el sentido de giro +</translation>
        </message>
        <message>
            <source>Between two marks</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Entre dos marcas</translation>
        </message>
        <message>
            <source>&amp;Blade that passes</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>&amp;Galga que pasa</translation>
        </message>
        <message>
            <source>Blade that does n&amp;ot</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Galga que &amp;no pasa</translation>
        </message>
        <message>
            <source>Opened late by</source>
            <extracomment>ui/trials_panel.py, ui/wear_panel.py</extracomment>
            <translation>Abrió tarde en</translation>
        </message>
        <message>
            <source>Fro&amp;m the bench</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Del &amp;banco</translation>
        </message>
        <message>
            <source>&amp;Note the trial</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>&amp;Anotar el ensayo</translation>
        </message>
        <message>
            <source>the blade that passes must be thinner than the one that does not</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>la galga que pasa debe ser más fina que la que no pasa</translation>
        </message>
        <message>
            <source>No advice: {refusal}.</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Sin consejo: {refusal}.</translation>
        </message>
        <message>
            <source>over {low}</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>más de {low}</translation>
        </message>
        <message>
            <source>✓ Done</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>✓ Hecho</translation>
        </message>
        <message>
            <source>{chance} % likely within limits there</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>{chance} % de probabilidad de quedar ahí dentro de límites</translation>
        </message>
        <message>
            <source>Comes to</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Resulta</translation>
        </message>
        <message>
            <source>Share</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Parte</translation>
        </message>
        <message>
            <source>What was read</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Lo que se leyó</translation>
        </message>
        <message>
            <source>&amp;Measurement</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>&amp;Medición</translation>
        </message>
        <message>
            <source>Straightedge from the rim mark, positive past it: the contacts open late</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Regla desde la marca del borde, positivo pasada la marca: los contactos abren tarde</translation>
        </message>
        <message>
            <source>The thickest blade that passes the widest gap</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>La galga más gruesa que pasa por la apertura máxima</translation>
        </message>
        <message>
            <source>Take from the &amp;bench</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Tomar del &amp;banco</translation>
        </message>
        <message>
            <source>What these instruments would read of the bench as it stands</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Lo que estos instrumentos leerían del banco tal como está</translation>
        </message>
        <message>
            <source>With what</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Con qué</translation>
        </message>
        <message>
            <source>How sure it is</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Con qué certeza</translation>
        </message>
        <message>
            <source>Number of Monte Carlo draws</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Número de sorteos Monte Carlo</translation>
        </message>
        <message>
            <source>Draw every reading at random within what its instrument allows, and count</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Sortear cada lectura al azar dentro de lo que admite su instrumento, y contar</translation>
        </message>
        <message>
            <source>Progress of the Monte Carlo</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Avance del Monte Carlo</translation>
        </message>
        <message>
            <source>Uncertainty budget of the least sure quantity</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Balance de incertidumbre de la magnitud menos segura</translation>
        </message>
        <message>
            <source>by Monte Carlo</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>por Monte Carlo</translation>
        </message>
        <message>
            <source>{name}, the least sure of them</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>{name}, la menos segura</translation>
        </message>
        <message>
            <source>by linear propagation</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>por propagación lineal</translation>
        </message>
        <message>
            <source>{chance} likely within limits ({how})</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>{chance} de probabilidad de estar dentro de límites ({how})</translation>
        </message>
        <message>
            <source>Blade that passes</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Galga que pasa</translation>
        </message>
        <message>
            <source>Disc at the first stop</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Disco en el primer tope</translation>
        </message>
        <message>
            <source>Disc at the second stop</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Disco en el segundo tope</translation>
        </message>
        <message>
            <source>Disc, left opens</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Disco, abre la izquierda</translation>
        </message>
        <message>
            <source>Disc, right opens</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Disco, abre la derecha</translation>
        </message>
        <message>
            <source>M&amp;onte Carlo</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>M&amp;onte Carlo</translation>
        </message>
        <message>
            <source>Ca&amp;ncel</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Ca&amp;ncelar</translation>
        </message>
        <message>
            <source>where they disagree, go by the Monte Carlo</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>si no coinciden, vale el Monte Carlo</translation>
        </message>
        <message>
            <source>Linear propagation (JCGM 100); the Monte Carlo (JCGM 101) checks it.</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Propagación lineal (JCGM 100); el Monte Carlo (JCGM 101) la comprueba.</translation>
        </message>
        <message>
            <source>Next to improve: {name}.</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Lo siguiente por mejorar: {name}.</translation>
        </message>
        <message>
            <source>No finer instrument on the list would help.</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Ningún instrumento más fino de la lista ayudaría.</translation>
        </message>
        <message>
            <source>Blade gap</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>Apertura por galga</translation>
        </message>
        <message>
            <source>Opens late</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>Abre tarde</translation>
        </message>
        <message>
            <source>Wear from now on</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>Desgaste desde ahora</translation>
        </message>
        <message>
            <source>Off the heel of the breaker arm in 100 running hours: it opens later, the gap closes</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>Del talón del brazo del ruptor en 100 horas de marcha: abre más tarde, la apertura se cierra</translation>
        </message>
        <message>
            <source>A pip on one contact in 100 running hours: the blade finds less than the true gap</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>Una punta en un contacto en 100 horas de marcha: la galga halla menos que la apertura real</translation>
        </message>
        <message>
            <source>Heel, i&amp;n 100 h</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>Taló&amp;n, en 100 h</translation>
        </message>
        <message>
            <source>Pip, in 100 h</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>Punta, en 100 h</translation>
        </message>
        <message>
            <source>Next inspection &amp;after</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>Próxima inspección &amp;tras</translation>
        </message>
        <message>
            <source>Wear the bench by the&amp;se hours</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>De&amp;sgastar el banco estas horas</translation>
        </message>
        <message>
            <source>See on the bench what those hours would do to it</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>Ver en el banco lo que le harían esas horas</translation>
        </message>
        <message>
            <source>Inspections of this setting</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>Inspecciones de este ajuste</translation>
        </message>
        <message>
            <source>Inspections</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>Inspecciones</translation>
        </message>
        <message>
            <source>The thickest blade that passed, and half a step more</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>La galga más gruesa que pasó, y medio paso más</translation>
        </message>
        <message>
            <source>How far past the E-gap it opened, in degrees of rotor</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>A qué distancia tras el E-gap abrió, en grados de rotor</translation>
        </message>
        <message>
            <source>At, since it was set</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>A las, desde el ajuste</translation>
        </message>
        <message>
            <source>Gap by blades</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>Apertura por galgas</translation>
        </message>
        <message>
            <source>✗ Plate or screw was turned since: what was read before tells nothing of this setting; strike it out.</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>✗ La placa base o el tornillo se ha girado desde entonces: lo leído antes no dice nada de este ajuste; táchelo.</translation>
        </message>
        <message>
            <source>&amp;Use these rates</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>&amp;Usar estas tasas</translation>
        </message>
        <message>
            <source>From the &amp;bench</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>Del &amp;banco</translation>
        </message>
        <message>
            <source>N&amp;ote</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>An&amp;otar</translation>
        </message>
        <message>
            <source>Two inspections at different hours give rates.</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>Dos inspecciones a horas distintas dan las tasas.</translation>
        </message>
        <message>
            <source>Read of another setting than the present one</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>Leído con otro ajuste distinto del actual</translation>
        </message>
        <message>
            <source>The bench cannot be kept for after a crash: {error}</source>
            <extracomment>ui/window.py</extracomment>
            <translation>El banco no se puede conservar para después de un fallo: {error}</translation>
        </message>
        <message>
            <source>{file}: cannot be changed: {reason}</source>
            <extracomment>upkeep/desktop.py</extracomment>
            <translation>{file}: no se puede cambiar: {reason}</translation>
        </message>
        <message>
            <source>nothing can be kept in {folder}: {reason}</source>
            <extracomment>upkeep/places.py, upkeep/reports.py</extracomment>
            <translation>no se puede guardar nada en {folder}: {reason}</translation>
        </message>
        <message>
            <source>not known: the system ended the program at once</source>
            <extracomment>upkeep/reports.py</extracomment>
            <translation>no se sabe: el sistema terminó el programa de golpe</translation>
        </message>
        <message>
            <source>nothing</source>
            <extracomment>upkeep/reports.py</extracomment>
            <translation>nada</translation>
        </message>
        <message>
            <source>magview: report of a fault</source>
            <extracomment>upkeep/reports.py</extracomment>
            <translation>magview: informe de un fallo</translation>
        </message>
        <message>
            <source>Kept on this computer; nothing is sent anywhere by itself.</source>
            <extracomment>upkeep/reports.py</extracomment>
            <translation>Se guarda en este equipo; nada se envía por sí solo a ninguna parte.</translation>
        </message>
        <message>
            <source>When: {when}</source>
            <extracomment>upkeep/reports.py</extracomment>
            <translation>Cuándo: {when}</translation>
        </message>
        <message>
            <source>Versions:</source>
            <extracomment>upkeep/reports.py</extracomment>
            <translation>Versiones:</translation>
        </message>
        <message>
            <source>What and where:</source>
            <extracomment>upkeep/reports.py</extracomment>
            <translation>Qué y dónde:</translation>
        </message>
        <message>
            <source>What was done last:</source>
            <extracomment>upkeep/reports.py</extracomment>
            <translation>Lo último que se hizo:</translation>
        </message>
        <message>
            <source>Four-cylinder practice magneto</source>
            <extracomment>magnetos/four-opposed.json</extracomment>
            <translation>Magneto de prácticas de cuatro cilindros</translation>
        </message>
        <message>
            <source>Invented for practice, all of it: dimensions, limits, angles and electrical values; no real magneto has them. Two poles, two lobes, threaded contact screw.</source>
            <extracomment>magnetos/four-opposed.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Nine-cylinder practice magneto</source>
            <extracomment>magnetos/nine-radial.json</extracomment>
            <translation>Magneto de prácticas de nueve cilindros</translation>
        </message>
        <message>
            <source>Invented for practice, all of it: dimensions, limits, angles and electrical values; no real magneto has them. Four poles; compensated cam, one lobe per cylinder, on the distributor shaft at half crank speed. Its lobes are spaced for the shipped nine-cylinder engine.</source>
            <extracomment>magnetos/nine-radial.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Seven-cylinder practice magneto</source>
            <extracomment>magnetos/seven-radial.json</extracomment>
            <translation>Magneto de prácticas de siete cilindros</translation>
        </message>
        <message>
            <source>Invented for practice, all of it: dimensions, limits, angles and electrical values; no real magneto has them. Four poles, one lobe per spark of a rotor turn (uncompensated cam on the rotor shaft).</source>
            <extracomment>magnetos/seven-radial.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Six-cylinder practice magneto, traced lift</source>
            <extracomment>magnetos/traced-six.json</extracomment>
            <translation>Magneto de prácticas de seis cilindros, alzada trazada</translation>
        </message>
        <message>
            <source>Invented for practice, all of it: dimensions, limits, angles and electrical values; no real magneto has them. Two poles, two lobes; the lift was traced at the contacts with a dial gauge every 2°, so the arm's other dimensions are not known.</source>
            <extracomment>magnetos/traced-six.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Four-cylinder practice engine</source>
            <extracomment>engines/four-opposed.json</extracomment>
            <translation>Motor de prácticas de cuatro cilindros</translation>
        </message>
        <message>
            <source>Nine-cylinder practice engine</source>
            <extracomment>engines/nine-radial.json</extracomment>
            <translation>Motor de prácticas de nueve cilindros</translation>
        </message>
        <message>
            <source>Seven-cylinder practice engine</source>
            <extracomment>engines/seven-radial.json</extracomment>
            <translation>Motor de prácticas de siete cilindros</translation>
        </message>
        <message>
            <source>Six-cylinder practice engine</source>
            <extracomment>engines/six-inline.json</extracomment>
            <translation>Motor de prácticas de seis cilindros</translation>
        </message>
        <message>
            <source>A vernier step or two out</source>
            <extracomment>exercises/a-step-or-two-out.json</extracomment>
            <translation>Desviada un paso de nonio o dos</translation>
        </message>
        <message>
            <source>The magneto came back from overhaul and was refitted by eye. Inside it is right.</source>
            <extracomment>exercises/a-step-or-two-out.json</extracomment>
            <translation>La magneto volvió de revisión y se montó a ojo. Por dentro está bien.</translation>
        </message>
        <message>
            <source>Time it to the engine at its toothed coupling.</source>
            <extracomment>exercises/a-step-or-two-out.json</extracomment>
            <translation>Cálela al motor en su acoplamiento dentado.</translation>
        </message>
        <message>
            <source>With the switch off a sound lead keeps the lamp dark whatever the contacts do: wheels chocked and spark plugs out first, then switch on.</source>
            <extracomment>exercises/a-step-or-two-out.json, exercises/both-everything-wrong.json, exercises/fitted-at-neutral.json, exercises/left-and-right-apart.json, exercises/one-magneto-all-wrong.json, exercises/several-teeth-out.json, exercises/wrong-stroke.json</extracomment>
            <translation>Con el interruptor en OFF, un cable de masa sano deja la lámpara apagada hagan lo que hagan los contactos: primero calzos en las ruedas y bujías fuera, luego interruptor en ON.</translation>
        </message>
        <message>
            <source>Paint marks across the coupling before you draw the magneto back.</source>
            <extracomment>exercises/a-step-or-two-out.json</extracomment>
            <translation>Pinte marcas a través del acoplamiento antes de retirar la magneto.</translation>
        </message>
        <message>
            <source>Read the timing with lamp and disc, turning with rotation only.</source>
            <extracomment>exercises/a-step-or-two-out.json</extracomment>
            <translation>Lea el calado con lámpara y disco, girando solo en el sentido de giro.</translation>
        </message>
        <message>
            <source>One tooth with rotation at the magneto and one against it at the disc is the finest step.</source>
            <extracomment>exercises/a-step-or-two-out.json</extracomment>
            <translation>Un diente en el sentido de giro en la magneto y uno en contra en el disco es el paso más fino.</translation>
        </message>
        <message>
            <source>Both magnetos, everything wrong</source>
            <extracomment>exercises/both-everything-wrong.json</extracomment>
            <translation>Ambas magnetos, todo mal</translation>
        </message>
        <message>
            <source>Two magnetos, two people, two opinions, and an engine that has not run since.</source>
            <extracomment>exercises/both-everything-wrong.json</extracomment>
            <translation>Dos magnetos, dos personas, dos opiniones, y un motor que no ha funcionado desde entonces.</translation>
        </message>
        <message>
            <source>Make both safe, set both inside, time both to the engine and to one another, and close up.</source>
            <extracomment>exercises/both-everything-wrong.json</extracomment>
            <translation>Ponga ambas seguras, ajústelas por dentro, cálelas al motor y entre sí, y cierre.</translation>
        </message>
        <message>
            <source>Work to one order on each: safe, contacts, gap, lock screw, opening; then the engine.</source>
            <extracomment>exercises/both-everything-wrong.json</extracomment>
            <translation>Siga un mismo orden en cada una: segura, contactos, apertura, tornillo de bloqueo, punto de apertura; luego el motor.</translation>
        </message>
        <message>
            <source>The switch of one magneto says nothing of the other.</source>
            <extracomment>exercises/both-everything-wrong.json</extracomment>
            <translation>El interruptor de una magneto no dice nada de la otra.</translation>
        </message>
        <message>
            <source>Teeth last, for both together.</source>
            <extracomment>exercises/both-everything-wrong.json</extracomment>
            <translation>Los dientes al final, para ambas a la vez.</translation>
        </message>
        <message>
            <source>A lock screw that carries along</source>
            <extracomment>exercises/creeping-screw.json</extracomment>
            <translation>Un tornillo de bloqueo que arrastra</translation>
        </message>
        <message>
            <source>Whoever sets this magneto finds it out of adjustment the next day, and swears it was right.</source>
            <extracomment>exercises/creeping-screw.json</extracomment>
            <translation>Quien ajusta esta magneto la encuentra desajustada al día siguiente, y jura que estaba bien.</translation>
        </message>
        <message>
            <source>Set gap and opening so that they are right with every screw tight.</source>
            <extracomment>exercises/creeping-screw.json</extracomment>
            <translation>Ajuste la separación y el punto de apertura para que estén bien con todos los tornillos apretados.</translation>
        </message>
        <message>
            <source>The lamp tells of the contacts only while nothing else grounds the coil: leave the plug in and the switch on. With the switch off it stays dark, and with the plug pulled too, but for paper under the spring tab.</source>
            <extracomment>exercises/creeping-screw.json, exercises/gap-wrong.json, exercises/one-lobe-low.json, exercises/opens-early-or-late.json, exercises/pips.json</extracomment>
            <translation>La lámpara solo habla de los contactos mientras nada más ponga la bobina a masa: deje la clavija puesta y el interruptor en ON. Con el interruptor en OFF sigue apagada, y con la clavija sacada también, salvo con papel bajo la lengüeta.</translation>
        </message>
        <message>
            <source>Measure, tighten the lock screw, measure again.</source>
            <extracomment>exercises/creeping-screw.json</extracomment>
            <translation>Mida, apriete el tornillo de bloqueo, mida otra vez.</translation>
        </message>
        <message>
            <source>The lock screw carries the contact screw along by the same amount each time: lead it by as much.</source>
            <extracomment>exercises/creeping-screw.json</extracomment>
            <translation>El tornillo de bloqueo arrastra el tornillo de contacto siempre lo mismo: adelántese en esa cantidad.</translation>
        </message>
        <message>
            <source>Set the gap first, lock it, then bring the opening to the mark with the plate.</source>
            <extracomment>exercises/creeping-screw.json</extracomment>
            <translation>Ajuste primero la separación, bloquéela, y lleve luego el punto de apertura a la marca con la placa.</translation>
        </message>
        <message>
            <source>Find the E-gap</source>
            <extracomment>exercises/find-the-e-gap.json</extracomment>
            <translation>Hallar el E-gap</translation>
        </message>
        <message>
            <source>A magneto stands on the bench with its breaker cover off. Left alone, the magnet keeps the rotor at neutral.</source>
            <extracomment>exercises/find-the-e-gap.json</extracomment>
            <translation>Una magneto está en el banco sin la tapa del ruptor. Si nadie la toca, el imán mantiene el rotor en el neutro.</translation>
        </message>
        <message>
            <source>Turn the rotor to the E-gap and hold it there: the straightedge along the cam's step in line with a mark on the rim.</source>
            <extracomment>exercises/find-the-e-gap.json</extracomment>
            <translation>Gire el rotor al E-gap y sujételo ahí: la regla a lo largo del escalón de la leva, alineada con una marca del borde.</translation>
        </message>
        <message>
            <source>Turn the rotor with rotation; it pulls back as soon as you let go.</source>
            <extracomment>exercises/find-the-e-gap.json</extracomment>
            <translation>Gire el rotor en el sentido de giro; retrocede en cuanto lo suelta.</translation>
        </message>
        <message>
            <source>Lay the straightedge on and look square over it: from the side it seems to stand elsewhere.</source>
            <extracomment>exercises/find-the-e-gap.json</extracomment>
            <translation>Coloque la regla y mire a escuadra sobre ella: de lado parece estar en otro sitio.</translation>
        </message>
        <message>
            <source>Leave the straightedge where it is when you hand in; it is your proof.</source>
            <extracomment>exercises/find-the-e-gap.json</extracomment>
            <translation>Deje la regla donde está al entregar; es su prueba.</translation>
        </message>
        <message>
            <source>Fitted with the rotor at neutral</source>
            <extracomment>exercises/fitted-at-neutral.json</extracomment>
            <translation>Montada con el rotor en neutro</translation>
        </message>
        <message>
            <source>The magneto was fitted with No. 1 at its firing point, as it should be – but with the rotor left where the magnet holds it.</source>
            <extracomment>exercises/fitted-at-neutral.json</extracomment>
            <translation>La magneto se montó con el n.º 1 en su punto de encendido, como debe ser, pero con el rotor donde lo retiene el imán.</translation>
        </message>
        <message>
            <source>Find how far it is out and time it.</source>
            <extracomment>exercises/fitted-at-neutral.json</extracomment>
            <translation>Halle cuánto se desvía y cálela.</translation>
        </message>
        <message>
            <source>The rotor at neutral is short of the E-gap: what does that make the timing, early or late?</source>
            <extracomment>exercises/fitted-at-neutral.json</extracomment>
            <translation>El rotor en neutro no llega al E-gap: ¿qué calado resulta, adelantado o retrasado?</translation>
        </message>
        <message>
            <source>Paint marks first; the way back is counted in teeth.</source>
            <extracomment>exercises/fitted-at-neutral.json</extracomment>
            <translation>Primero pinte marcas; el camino de vuelta se cuenta en dientes.</translation>
        </message>
        <message>
            <source>The gap is wrong</source>
            <extracomment>exercises/gap-wrong.json</extracomment>
            <translation>La apertura está mal</translation>
        </message>
        <message>
            <source>After new contacts were fitted nobody set them: the gap is far out, and with it the place where they open.</source>
            <extracomment>exercises/gap-wrong.json</extracomment>
            <translation>Tras montar contactos nuevos nadie los ajustó: la apertura está muy desviada, y con ella el punto donde abren.</translation>
        </message>
        <message>
            <source>Bring the largest gap within its limits and the opening to the mark.</source>
            <extracomment>exercises/gap-wrong.json</extracomment>
            <translation>Lleve la apertura máxima a sus límites y el punto de apertura a la marca.</translation>
        </message>
        <message>
            <source>The contact screw moves gap and opening; the backplate moves the opening alone. Begin with the screw.</source>
            <extracomment>exercises/gap-wrong.json</extracomment>
            <translation>El tornillo de contacto mueve separación y punto de apertura; la placa base, solo el punto. Empiece por el tornillo.</translation>
        </message>
        <message>
            <source>Wider contacts open earlier.</source>
            <extracomment>exercises/gap-wrong.json</extracomment>
            <translation>Los contactos más separados abren antes.</translation>
        </message>
        <message>
            <source>Measure the gap where the contacts stand widest open.</source>
            <extracomment>exercises/gap-wrong.json</extracomment>
            <translation>Mida la apertura donde los contactos están más abiertos.</translation>
        </message>
        <message>
            <source>Left and right apart</source>
            <extracomment>exercises/left-and-right-apart.json</extracomment>
            <translation>Izquierda y derecha no coinciden</translation>
        </message>
        <message>
            <source>The drop on one magneto is larger than on the other. Both are right inside.</source>
            <extracomment>exercises/left-and-right-apart.json</extracomment>
            <translation>La caída con una magneto es mayor que con la otra. Ambas están bien por dentro.</translation>
        </message>
        <message>
            <source>Time both magnetos, and bring them together.</source>
            <extracomment>exercises/left-and-right-apart.json</extracomment>
            <translation>Cale ambas magnetos y póngalas de acuerdo.</translation>
        </message>
        <message>
            <source>Find the disc's zero once and keep it: both are read by the same disc.</source>
            <extracomment>exercises/left-and-right-apart.json</extracomment>
            <translation>Halle una vez el cero del disco y consérvelo: ambas se leen con el mismo disco.</translation>
        </message>
        <message>
            <source>Two readings that are each within limits may still be too far apart.</source>
            <extracomment>exercises/left-and-right-apart.json</extracomment>
            <translation>Dos lecturas dentro de límites pueden aún diferir demasiado entre sí.</translation>
        </message>
        <message>
            <source>Choose the moves of both together.</source>
            <extracomment>exercises/left-and-right-apart.json</extracomment>
            <translation>Elija los movimientos de ambas a la vez.</translation>
        </message>
        <message>
            <source>Measure the gap</source>
            <extracomment>exercises/measure-the-gap.json</extracomment>
            <translation>Medir la apertura</translation>
        </message>
        <message>
            <source>The work card asks for the largest gap between the contacts, and for nothing else.</source>
            <extracomment>exercises/measure-the-gap.json</extracomment>
            <translation>La tarjeta de trabajo pide la apertura máxima de los contactos, y nada más.</translation>
        </message>
        <message>
            <source>Turn the rotor until lobe 1 holds the contacts widest open, measure the gap with blades, and write it down.</source>
            <extracomment>exercises/measure-the-gap.json</extracomment>
            <translation>Gire el rotor hasta que la leva 1 mantenga los contactos en su apertura máxima, mida la apertura con galgas y anótela.</translation>
        </message>
        <message>
            <source>A blade that goes and the next that does not go stand on both sides of the gap.</source>
            <extracomment>exercises/measure-the-gap.json</extracomment>
            <translation>Una galga que pasa y la siguiente que no pasa quedan a ambos lados de la apertura.</translation>
        </message>
        <message>
            <source>A blade that drags is within a hundredth of a millimetre of it.</source>
            <extracomment>exercises/measure-the-gap.json</extracomment>
            <translation>Una galga que roza está a una centésima de milímetro de ella como mucho.</translation>
        </message>
        <message>
            <source>Two blades held together fill the steps between single ones.</source>
            <extracomment>exercises/measure-the-gap.json</extracomment>
            <translation>Dos galgas juntas cubren los pasos entre las sueltas.</translation>
        </message>
        <message>
            <source>One lobe is low</source>
            <extracomment>exercises/one-lobe-low.json</extracomment>
            <translation>Una leva baja</translation>
        </message>
        <message>
            <source>One cylinder of this engine misses now and then. The cam has worn, but not beyond use if it is set with care.</source>
            <extracomment>exercises/one-lobe-low.json</extracomment>
            <translation>Un cilindro de este motor falla de vez en cuando. La leva está gastada, pero aún sirve si se ajusta con cuidado.</translation>
        </message>
        <message>
            <source>Set the contacts so that the gap is within limits on every lobe, and the opening at the mark on every lobe.</source>
            <extracomment>exercises/one-lobe-low.json</extracomment>
            <translation>Ajuste los contactos para que la separación esté dentro de límites y el punto de apertura en la marca, en todas las levas.</translation>
        </message>
        <message>
            <source>Measure every lobe before you turn anything.</source>
            <extracomment>exercises/one-lobe-low.json</extracomment>
            <translation>Mida todas las levas antes de girar nada.</translation>
        </message>
        <message>
            <source>Put the middle between the widest and the closest lobe in the middle of the limits.</source>
            <extracomment>exercises/one-lobe-low.json</extracomment>
            <translation>Ponga el punto medio entre la leva que más abre y la que menos en el centro de los límites.</translation>
        </message>
        <message>
            <source>Check every lobe again when all is tight.</source>
            <extracomment>exercises/one-lobe-low.json</extracomment>
            <translation>Compruebe otra vez todas las levas con todo apretado.</translation>
        </message>
        <message>
            <source>One magneto, everything wrong</source>
            <extracomment>exercises/one-magneto-all-wrong.json</extracomment>
            <translation>Una magneto, todo mal</translation>
        </message>
        <message>
            <source>Bought as it stood. The logbook is silent on the ignition.</source>
            <extracomment>exercises/one-magneto-all-wrong.json</extracomment>
            <translation>Comprada tal como estaba. El libro no dice nada del encendido.</translation>
        </message>
        <message>
            <source>Make it safe, set it inside, time it to the engine, and close it up.</source>
            <extracomment>exercises/one-magneto-all-wrong.json</extracomment>
            <translation>Póngala segura, ajústela por dentro, cálela al motor y ciérrela.</translation>
        </message>
        <message>
            <source>Safe first, then inside, then the engine: what is set inside moves the timing.</source>
            <extracomment>exercises/one-magneto-all-wrong.json</extracomment>
            <translation>Primero segura, luego por dentro, luego el motor: lo que se ajusta por dentro mueve el calado.</translation>
        </message>
        <message>
            <source>Contacts, gap, lock screw, opening: in this order.</source>
            <extracomment>exercises/one-magneto-all-wrong.json</extracomment>
            <translation>Contactos, apertura, tornillo de bloqueo, punto de apertura: en este orden.</translation>
        </message>
        <message>
            <source>Dead centre by the stop before anything is read from the disc.</source>
            <extracomment>exercises/one-magneto-all-wrong.json</extracomment>
            <translation>El punto muerto con el tope, antes de leer nada en el disco.</translation>
        </message>
        <message>
            <source>Opens early or late</source>
            <extracomment>exercises/opens-early-or-late.json</extracomment>
            <translation>Abre pronto o tarde</translation>
        </message>
        <message>
            <source>The gap of this magneto is right, but its backplate has been moved.</source>
            <extracomment>exercises/opens-early-or-late.json</extracomment>
            <translation>La apertura de esta magneto está bien, pero se ha movido su placa base.</translation>
        </message>
        <message>
            <source>Set the backplate so that the contacts open at the mark, close everything up, and check again.</source>
            <extracomment>exercises/opens-early-or-late.json</extracomment>
            <translation>Ajuste la placa base para que los contactos abran en la marca, cierre todo y compruebe de nuevo.</translation>
        </message>
        <message>
            <source>Slacken the clamp screws, not the lock screw: the gap is not the trouble.</source>
            <extracomment>exercises/opens-early-or-late.json</extracomment>
            <translation>Afloje los tornillos de sujeción, no el de bloqueo: la separación no es el problema.</translation>
        </message>
        <message>
            <source>Turning the plate with rotation makes the contacts open later.</source>
            <extracomment>exercises/opens-early-or-late.json</extracomment>
            <translation>Girando la placa en el sentido de giro, los contactos abren más tarde.</translation>
        </message>
        <message>
            <source>What was checked before a screw was tightened has to be checked again after.</source>
            <extracomment>exercises/opens-early-or-late.json</extracomment>
            <translation>Lo comprobado antes de apretar un tornillo debe comprobarse otra vez después.</translation>
        </message>
        <message>
            <source>Pips on the contacts</source>
            <extracomment>exercises/pips.json</extracomment>
            <translation>Puntas en los contactos</translation>
        </message>
        <message>
            <source>This magneto has run for a long time on the same contacts. The last one to set it measured the gap and found it right.</source>
            <extracomment>exercises/pips.json</extracomment>
            <translation>Esta magneto ha funcionado mucho tiempo con los mismos contactos. El último que la ajustó midió la apertura y la halló bien.</translation>
        </message>
        <message>
            <source>See to the contacts, then set gap and opening.</source>
            <extracomment>exercises/pips.json</extracomment>
            <translation>Atienda los contactos, y ajuste luego separación y punto de apertura.</translation>
        </message>
        <message>
            <source>A blade lies on the pip, not on the contact: the true gap is larger than it says.</source>
            <extracomment>exercises/pips.json</extracomment>
            <translation>La galga apoya en la punta, no en el contacto: la apertura real es mayor de lo que indica.</translation>
        </message>
        <message>
            <source>Dress the contacts before you measure anything.</source>
            <extracomment>exercises/pips.json</extracomment>
            <translation>Repase los contactos antes de medir nada.</translation>
        </message>
        <message>
            <source>Several teeth out, and a loose coupling</source>
            <extracomment>exercises/several-teeth-out.json</extracomment>
            <translation>Varios dientes de desvío y acoplamiento flojo</translation>
        </message>
        <message>
            <source>Starts badly, kicks back. The coupling rattles, and the crank disc has been put on by eye.</source>
            <extracomment>exercises/several-teeth-out.json</extracomment>
            <translation>Arranca mal, da coces. El acoplamiento traquetea, y el disco del cigüeñal se puso a ojo.</translation>
        </message>
        <message>
            <source>Find the disc's zero, read the timing as found and write it down, and time the magneto.</source>
            <extracomment>exercises/several-teeth-out.json</extracomment>
            <translation>Halle el cero del disco, lea el calado hallado y anótelo, y cale la magneto.</translation>
        </message>
        <message>
            <source>With play in the coupling a reading is true only when approached with rotation.</source>
            <extracomment>exercises/several-teeth-out.json</extracomment>
            <translation>Con juego en el acoplamiento, una lectura solo es cierta si se llega a ella en el sentido de giro.</translation>
        </message>
        <message>
            <source>If it fires after dead centre there is no pressure to feel: go by the finger.</source>
            <extracomment>exercises/several-teeth-out.json</extracomment>
            <translation>Si enciende después del punto muerto no se nota presión: guíese por el dedo.</translation>
        </message>
        <message>
            <source>Plan the move with the fewest teeth that comes within limits, and move one tooth at a time.</source>
            <extracomment>exercises/several-teeth-out.json</extracomment>
            <translation>Planee el movimiento con menos dientes que quede dentro de límites, y mueva un diente cada vez.</translation>
        </message>
        <message>
            <source>Is it safe?</source>
            <extracomment>exercises/switch-lead.json</extracomment>
            <translation>¿Es segura?</translation>
        </message>
        <message>
            <source>A note in the cockpit says: switch check doubtful. Nobody has touched the aircraft since.</source>
            <extracomment>exercises/switch-lead.json</extracomment>
            <translation>Una nota en la cabina dice: prueba del interruptor dudosa. Desde entonces nadie ha tocado el avión.</translation>
        </message>
        <message>
            <source>Find out what the switch lead of this magneto suffers from, if anything, write down your finding, put it right, and prove it.</source>
            <extracomment>exercises/switch-lead.json</extracomment>
            <translation>Averigüe qué le pasa al cable de masa de esta magneto, si le pasa algo, anote su hallazgo, corríjalo y demuéstrelo.</translation>
        </message>
        <message>
            <source>Until you know better the propeller is live: chocks, and spark plugs out, before it is turned.</source>
            <extracomment>exercises/switch-lead.json</extracomment>
            <translation>Mientras no se sepa otra cosa, la hélice está viva: calzos puestos y bujías fuera antes de girarla.</translation>
        </message>
        <message>
            <source>Plug pulled, the meter must see ground with the switch off, and none with it on.</source>
            <extracomment>exercises/switch-lead.json</extracomment>
            <translation>Desenchufado el cable, el medidor debe ver masa con el interruptor en OFF, y ninguna en ON.</translation>
        </message>
        <message>
            <source>With the switch on the lamp must light as the contacts open; with the plug pulled the spring tab must keep it dark.</source>
            <extracomment>exercises/switch-lead.json</extracomment>
            <translation>Con el interruptor en ON, la lámpara debe encenderse al abrir los contactos; con el cable desenchufado, la lengüeta debe mantenerla apagada.</translation>
        </message>
        <message>
            <source>True dead centre</source>
            <extracomment>exercises/true-dead-centre.json</extracomment>
            <translation>El punto muerto verdadero</translation>
        </message>
        <message>
            <source>The disc on the crank was put on by eye. Before anything is timed by it, its zero has to be found.</source>
            <extracomment>exercises/true-dead-centre.json</extracomment>
            <translation>El disco del cigüeñal se puso a ojo. Antes de calar nada con él hay que hallar su cero.</translation>
        </message>
        <message>
            <source>Find what the disc reads at the top dead centre of No. 1, write it down (after the zero: with a minus), and set the disc to zero.</source>
            <extracomment>exercises/true-dead-centre.json</extracomment>
            <translation>Halle lo que marca el disco en el punto muerto superior del n.º 1, anótelo (después del cero: con menos) y ponga el disco a cero.</translation>
        </message>
        <message>
            <source>Chocks first, switch off, spark plugs out; then the propeller may be turned.</source>
            <extracomment>exercises/true-dead-centre.json</extracomment>
            <translation>Primero calzos, contacto cortado, bujías fuera; luego se puede girar la hélice.</translation>
        </message>
        <message>
            <source>With the stop fitted, turn gently until the piston meets it, read the disc; turn back until it meets it from the other side, read again.</source>
            <extracomment>exercises/true-dead-centre.json</extracomment>
            <translation>Con el tope montado, gire con suavidad hasta que el pistón llegue a él y lea el disco; gire hacia atrás hasta que llegue por el otro lado y lea otra vez.</translation>
        </message>
        <message>
            <source>Half-way between the two readings is top dead centre.</source>
            <extracomment>exercises/true-dead-centre.json</extracomment>
            <translation>A medio camino entre las dos lecturas está el punto muerto superior.</translation>
        </message>
        <message>
            <source>When do the contacts open?</source>
            <extracomment>exercises/when-do-they-open.json</extracomment>
            <translation>¿Cuándo abren los contactos?</translation>
        </message>
        <message>
            <source>Somebody has set this magneto and left it closed up. Nothing is to be changed yet: first you want to know.</source>
            <extracomment>exercises/when-do-they-open.json</extracomment>
            <translation>Alguien ajustó esta magneto y la dejó cerrada. Aún no hay que cambiar nada: primero se trata de saber.</translation>
        </message>
        <message>
            <source>Find where lobe 1 opens the contacts, by lamp and straightedge, and write down how far past the mark that is (short of it: with a minus).</source>
            <extracomment>exercises/when-do-they-open.json</extracomment>
            <translation>Halle dónde la leva 1 abre los contactos, con lámpara y regla, y anote cuánto pasada la marca es (antes de ella: con menos).</translation>
        </message>
        <message>
            <source>If the lamp stays dark whatever you do, something grounds the primary: look at the switch.</source>
            <extracomment>exercises/when-do-they-open.json</extracomment>
            <translation>Si la lámpara sigue apagada haga lo que haga, algo pone el primario a masa: mire el interruptor.</translation>
        </message>
        <message>
            <source>Turn with rotation, slowly, and stop where the lamp lights.</source>
            <extracomment>exercises/when-do-they-open.json</extracomment>
            <translation>Gire en el sentido de giro, despacio, y pare donde se encienda la lámpara.</translation>
        </message>
        <message>
            <source>The marks on the rim are half a millimetre apart; mark 1 belongs to lobe 1.</source>
            <extracomment>exercises/when-do-they-open.json</extracomment>
            <translation>Las marcas del borde están a medio milímetro una de otra; la marca 1 es de la leva 1.</translation>
        </message>
        <message>
            <source>The wrong stroke</source>
            <extracomment>exercises/wrong-stroke.json</extracomment>
            <translation>La carrera equivocada</translation>
        </message>
        <message>
            <source>It was timed with care: the lamp lights where it should. The engine spits back through the carburettor and will not run.</source>
            <extracomment>exercises/wrong-stroke.json</extracomment>
            <translation>Se caló con cuidado: la lámpara se enciende donde debe. El motor escupe por el carburador y no funciona.</translation>
        </message>
        <message>
            <source>Find out why, and put it right.</source>
            <extracomment>exercises/wrong-stroke.json</extracomment>
            <translation>Averigüe por qué y corríjalo.</translation>
        </message>
        <message>
            <source>A thumb over No. 1's plug hole tells compression from exhaust.</source>
            <extracomment>exercises/wrong-stroke.json</extracomment>
            <translation>Un pulgar en el agujero de bujía del n.º 1 distingue compresión de escape.</translation>
        </message>
        <message>
            <source>Where does the distributor finger point when No. 1 comes up on compression?</source>
            <extracomment>exercises/wrong-stroke.json</extracomment>
            <translation>¿Adónde apunta el dedo del distribuidor cuando el n.º 1 sube en compresión?</translation>
        </message>
        <message>
            <source>Half a turn of the finger cannot be had by teeth: the magneto has to come off. Pull the plug, mark, nuts off.</source>
            <extracomment>exercises/wrong-stroke.json</extracomment>
            <translation>Media vuelta del dedo no se consigue con dientes: hay que desmontar la magneto. Desenchufe, marque, tuercas fuera.</translation>
        </message>
        <message>
            <source>Off the engine a slip of paper under the spring tab lets the lamp see the contacts.</source>
            <extracomment>exercises/wrong-stroke.json</extracomment>
            <translation>Fuera del motor, una tira de papel bajo la lengüeta deja que la lámpara vea los contactos.</translation>
        </message>
        <message>
            <source>A full job</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Un trabajo completo</translation>
        </message>
        <message>
            <source>From the chocks to the last nut: safe, inside, dead centre, coupling, closed up.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>De los calzos a la última tuerca: segura, por dentro, punto muerto, acoplamiento, cerrada.</translation>
        </message>
        <message>
            <source>A magneto with its plate off, its coupling some fine steps out, and a lead nobody has looked at.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Una magneto con la placa desviada, el acoplamiento a algunos pasos finos, y un cable que nadie ha mirado.</translation>
        </message>
        <message>
            <source>Follow the lesson.</source>
            <extracomment>lessons/a-full-job.json, lessons/contacts-and-lamp.json, lessons/measuring-the-gap.json, lessons/neutral-and-e-gap.json, lessons/one-vernier-step.json, lessons/plate-and-screw.json, lessons/the-switch-lead.json, lessons/top-dead-centre.json, lessons/what-the-parts-are.json</extracomment>
            <translation>Siga la lección.</translation>
        </message>
        <message>
            <source>Chocks</source>
            <extracomment>lessons/a-full-job.json, lessons/top-dead-centre.json</extracomment>
            <translation>Calzos</translation>
        </message>
        <message>
            <source>Put chocks at the wheels.</source>
            <extracomment>lessons/a-full-job.json, lessons/the-switch-lead.json</extracomment>
            <translation>Calce las ruedas.</translation>
        </message>
        <message>
            <source>Prove the lead</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Probar el cable</translation>
        </message>
        <message>
            <source>Pull the plug, meter, and do what the meter tells you to, until the lead is proved.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Desenchufe, mida y haga lo que le diga el medidor, hasta que el cable quede probado.</translation>
        </message>
        <message>
            <source>Broken inside: it had been live.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Roto por dentro: había estado viva.</translation>
        </message>
        <message>
            <source>No ground with the switch off: a new lead.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Sin masa con el interruptor en OFF: un cable nuevo.</translation>
        </message>
        <message>
            <source>Plug in</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Enchufar</translation>
        </message>
        <message>
            <source>Push the plug in again.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Enchufe otra vez el cable.</translation>
        </message>
        <message>
            <source>Spark plugs out</source>
            <extracomment>lessons/a-full-job.json, lessons/top-dead-centre.json</extracomment>
            <translation>Bujías fuera</translation>
        </message>
        <message>
            <source>Take the spark plugs out.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Quite las bujías.</translation>
        </message>
        <message>
            <source>Clip the lamp on and switch on: with the plugs out nothing can fire.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Conecte la lámpara con las pinzas y dé el contacto: sin bujías nada puede encender.</translation>
        </message>
        <message>
            <source>Where do they open?</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>¿Dónde abren?</translation>
        </message>
        <message>
            <source>Straightedge on, looked at square; turn the propeller with rotation until the lamp lights.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Regla puesta y mirada a escuadra; gire la hélice en el sentido de giro hasta que se encienda la lámpara.</translation>
        </message>
        <message>
            <source>Past the mark: the contacts open late.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Pasada la marca: los contactos abren tarde.</translation>
        </message>
        <message>
            <source>The gap</source>
            <extracomment>lessons/a-full-job.json, lessons/measuring-the-gap.json</extracomment>
            <translation>La apertura</translation>
        </message>
        <message>
            <source>Turn until the contacts stand widest open and try blades: the gap may be right.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Gire hasta que los contactos estén en su apertura máxima y pruebe galgas: la apertura puede estar bien.</translation>
        </message>
        <message>
            <source>The plate</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>La placa</translation>
        </message>
        <message>
            <source>Slacken the clamp screws, bring the opening to the mark with the backplate, and clamp it.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Afloje los tornillos de sujeción, lleve la apertura de los contactos a la marca con la placa base y sujétela.</translation>
        </message>
        <message>
            <source>Late, so against rotation: about 3°.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Tarde, luego en contra del giro: unos 3°.</translation>
        </message>
        <message>
            <source>Check inside</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Comprobar por dentro</translation>
        </message>
        <message>
            <source>Turn with rotation until the lamp lights, and look at the straightedge.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Gire en el sentido de giro hasta que se encienda la lámpara y mire la regla.</translation>
        </message>
        <message>
            <source>Dead centre</source>
            <extracomment>lessons/a-full-job.json, lessons/top-dead-centre.json</extracomment>
            <translation>Punto muerto</translation>
        </message>
        <message>
            <source>Fit the stop, meet it from both sides, set the disc to zero.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Monte el tope, llegue a él por ambos lados y ponga el disco a cero.</translation>
        </message>
        <message>
            <source>Half-way between the two readings, turned the other way.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>El punto medio entre las dos lecturas, girado al revés.</translation>
        </message>
        <message>
            <source>Stop out</source>
            <extracomment>lessons/a-full-job.json, lessons/top-dead-centre.json</extracomment>
            <translation>Tope fuera</translation>
        </message>
        <message>
            <source>Take the stop out.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Quite el tope.</translation>
        </message>
        <message>
            <source>Read the timing</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Leer el calado</translation>
        </message>
        <message>
            <source>With rotation to the lamp, finger at No. 1; write down what the disc reads.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>En el sentido de giro hasta la lámpara, dedo en el n.º 1; anote lo que marca el disco.</translation>
        </message>
        <message>
            <source>Paint marks across the coupling.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Pinte marcas a través del acoplamiento.</translation>
        </message>
        <message>
            <source>Nuts off, move tooth by tooth until it fires where it should, nuts on.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Tuercas fuera, mueva diente a diente hasta que encienda donde debe, tuercas puestas.</translation>
        </message>
        <message>
            <source>Each pair of teeth, magneto flange against rotation and disc with it, is about 1.1° of crank later.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Cada par de dientes, brida de la magneto en contra del giro y disco a favor, retrasa aprox. 1.1° de cigüeñal.</translation>
        </message>
        <message>
            <source>Check the timing</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Comprobar el calado</translation>
        </message>
        <message>
            <source>Turn the propeller with rotation until the lamp lights.</source>
            <extracomment>lessons/a-full-job.json, lessons/one-vernier-step.json</extracomment>
            <translation>Gire la hélice en el sentido de giro hasta que se encienda la lámpara.</translation>
        </message>
        <message>
            <source>Close up</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Cerrar</translation>
        </message>
        <message>
            <source>Switch off.</source>
            <extracomment>lessons/a-full-job.json, lessons/one-vernier-step.json</extracomment>
            <translation>Corte el contacto.</translation>
        </message>
        <message>
            <source>Safe, set, timed, checked, closed. What is written in the log is what was read after the last nut.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Segura, ajustada, calada, comprobada, cerrada. En el libro se anota lo que se leyó después de la última tuerca.</translation>
        </message>
        <message>
            <source>Contacts and timing lamp</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Contactos y lámpara de calado</translation>
        </message>
        <message>
            <source>The lamp tells when the contacts part – if nothing else grounds the coil.</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>La lámpara indica cuándo se separan los contactos, si nada más pone la bobina a masa.</translation>
        </message>
        <message>
            <source>Contacts and lamp</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Contactos y lámpara</translation>
        </message>
        <message>
            <source>A magneto on the bench, its lead plugged in, the switch off.</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Una magneto en el banco, con su cable enchufado y el interruptor en OFF.</translation>
        </message>
        <message>
            <source>The lamp</source>
            <extracomment>lessons/contacts-and-lamp.json, lessons/one-vernier-step.json</extracomment>
            <translation>La lámpara</translation>
        </message>
        <message>
            <source>Clip the timing lamp across the contacts.</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Conecte la lámpara de calado a los contactos.</translation>
        </message>
        <message>
            <source>A grounded coil</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Bobina a masa</translation>
        </message>
        <message>
            <source>Turn the rotor right round with the lamp watched (turn until the lamp changes).</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Dé una vuelta entera al rotor mirando la lámpara (gire hasta que la lámpara cambie).</translation>
        </message>
        <message>
            <source>The contacts opened and closed, and the lamp stayed dark: the switch is off and grounds the coil. A dark lamp proves nothing.</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Los contactos abrieron y cerraron, y la lámpara siguió apagada: el interruptor está en OFF y pone la bobina a masa. Una lámpara apagada no prueba nada.</translation>
        </message>
        <message>
            <source>Switch on</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Dar el contacto</translation>
        </message>
        <message>
            <source>Switch the ignition on. On the bench that harms nobody; on an aircraft the propeller would now be live.</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Dé el contacto. En el banco eso no daña a nadie; en un avión, la hélice sería ahora peligrosa (magneto viva).</translation>
        </message>
        <message>
            <source>They open</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Abren</translation>
        </message>
        <message>
            <source>Turn with rotation until the lamp lights.</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Gire en el sentido de giro hasta que se encienda la lámpara.</translation>
        </message>
        <message>
            <source>Here the contacts part.</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Aquí se separan los contactos.</translation>
        </message>
        <message>
            <source>Widest open</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Apertura máxima</translation>
        </message>
        <message>
            <source>Turn on until the contacts stand widest open.</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Siga girando hasta que los contactos estén en su apertura máxima.</translation>
        </message>
        <message>
            <source>The top of the lobe: here the gap is measured.</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>La cima de la leva: aquí se mide la apertura.</translation>
        </message>
        <message>
            <source>They close</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Cierran</translation>
        </message>
        <message>
            <source>Turn on until the lamp goes out.</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Siga girando hasta que se apague la lámpara.</translation>
        </message>
        <message>
            <source>Where exactly?</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>¿Dónde exactamente?</translation>
        </message>
        <message>
            <source>Lay the straightedge on, look square over it, and turn with rotation until the lamp lights.</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Coloque la regla, mire a escuadra sobre ella y gire en el sentido de giro hasta que se encienda la lámpara.</translation>
        </message>
        <message>
            <source>Lamp and straightedge together say how far from the E-gap the contacts open.</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Lámpara y regla juntas dicen a qué distancia del E-gap abren los contactos.</translation>
        </message>
        <message>
            <source>If the lamp is lit already, turn on until it goes out, and then until it lights.</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Si la lámpara ya está encendida, siga girando hasta que se apague y luego hasta que se encienda.</translation>
        </message>
        <message>
            <source>Measuring the gap</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Medir la apertura</translation>
        </message>
        <message>
            <source>Blades say go, drag or no-go. Between go and no-go lies the gap.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Las galgas dicen pasa, roza o no pasa. Entre pasa y no pasa está la apertura.</translation>
        </message>
        <message>
            <source>A magneto whose gap nobody has measured.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Una magneto cuya apertura nadie ha medido.</translation>
        </message>
        <message>
            <source>To the top</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>A la cima</translation>
        </message>
        <message>
            <source>Turn the rotor until the contacts stand widest open.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Gire el rotor hasta que los contactos estén en su apertura máxima.</translation>
        </message>
        <message>
            <source>A thin one</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Una fina</translation>
        </message>
        <message>
            <source>Try a blade that surely goes, such as 0.2 mm.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>It goes: the gap is larger.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Pasa: la apertura es mayor.</translation>
        </message>
        <message>
            <source>A thick one</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Una gruesa</translation>
        </message>
        <message>
            <source>Try one that does not go.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Pruebe una que no pase.</translation>
        </message>
        <message>
            <source>The gap lies between the two. Halve what is left, and halve again.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>La apertura está entre las dos. Divida por la mitad lo que queda, y otra vez.</translation>
        </message>
        <message>
            <source>Drag</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Roce</translation>
        </message>
        <message>
            <source>Find the blade or stack that is just gripped.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Busque la galga o el conjunto que quede apenas sujeto.</translation>
        </message>
        <message>
            <source>Within a hundredth of a millimetre. But of what?</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Con una centésima de milímetro de margen. Pero ¿de qué?</translation>
        </message>
        <message>
            <source>Try 0.32 mm. Two blades held together fill the steps between single ones.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Look</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Mirar</translation>
        </message>
        <message>
            <source>Look at the faces of the contacts.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Mire las caras de los contactos.</translation>
        </message>
        <message>
            <source>A pip on one, a pit in the other: the blade lay on the pip, and the true gap is larger.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Una punta en uno, un hoyo en el otro: la galga apoyaba en la punta y la apertura real es mayor.</translation>
        </message>
        <message>
            <source>Clean</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Limpiar</translation>
        </message>
        <message>
            <source>Dress the contacts.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Repase los contactos.</translation>
        </message>
        <message>
            <source>Once more</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Otra vez</translation>
        </message>
        <message>
            <source>Measure again until a blade or stack drags, and write the gap down.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Mida de nuevo hasta que roce una galga o un conjunto, y anote la apertura.</translation>
        </message>
        <message>
            <source>The same contacts, another number: only the second is the gap.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Los mismos contactos, otro número: solo el segundo es la apertura.</translation>
        </message>
        <message>
            <source>Neutral, full register, E-gap</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>Neutro, registro pleno, E-gap</translation>
        </message>
        <message>
            <source>The rotor by hand: where the magnet wants it, and where it gives the strongest spark.</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>El rotor a mano: adónde lo lleva el imán y dónde da la chispa más fuerte.</translation>
        </message>
        <message>
            <source>The rotor by hand</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>El rotor a mano</translation>
        </message>
        <message>
            <source>A magneto on the bench, its rotor free.</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>Una magneto en el banco, con el rotor libre.</translation>
        </message>
        <message>
            <source>Out of neutral</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>Salir del neutro</translation>
        </message>
        <message>
            <source>The rotor rests at neutral. Turn it with rotation to full register, where a pole stands square under the pole shoe.</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>El rotor reposa en el neutro. Gírelo en el sentido de giro hasta el registro pleno, donde un polo queda justo bajo la zapata polar.</translation>
        </message>
        <message>
            <source>You felt it pull back, and then less and less: at full register the pull is gone.</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>Notó que tiraba hacia atrás, y luego cada vez menos: en el registro pleno el tirón desaparece.</translation>
        </message>
        <message>
            <source>With four poles, full register lies 45° past neutral.</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>Con cuatro polos, el registro pleno está 45° después del neutro.</translation>
        </message>
        <message>
            <source>Let go</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>Soltar</translation>
        </message>
        <message>
            <source>Take your hand off.</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>Retire la mano.</translation>
        </message>
        <message>
            <source>The magnet took the rotor to a neutral. It always does.</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>El imán llevó el rotor a un neutro. Siempre lo hace.</translation>
        </message>
        <message>
            <source>The straightedge</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>La regla</translation>
        </message>
        <message>
            <source>Lay the straightedge along the cam's step, and look square over it.</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>Apoye la regla en el escalón de la leva y mire a escuadra sobre ella.</translation>
        </message>
        <message>
            <source>Seen from the side, an edge above the rim seems to stand elsewhere.</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>Visto de lado, un canto por encima del borde parece estar en otro sitio.</translation>
        </message>
        <message>
            <source>The E-gap</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>El E-gap</translation>
        </message>
        <message>
            <source>Turn the rotor with rotation until the straightedge is in line with a mark.</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>Gire el rotor en el sentido de giro hasta alinear la regla con una marca.</translation>
        </message>
        <message>
            <source>A few degrees past neutral: the current in the coil is at its strongest. Contacts that part here give the best spark.</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>Unos grados después del neutro: la corriente de la bobina es máxima. Los contactos que se separan aquí dan la mejor chispa.</translation>
        </message>
        <message>
            <source>It falls back</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>Vuelve atrás</translation>
        </message>
        <message>
            <source>Let go of the rotor here.</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>Suelte aquí el rotor.</translation>
        </message>
        <message>
            <source>Back to neutral. Whoever fits a magneto has to hold the rotor at the E-gap, or pin it.</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>De vuelta al neutro. Quien monte una magneto debe sujetar el rotor en el E-gap o fijarlo con un pasador.</translation>
        </message>
        <message>
            <source>One step of the vernier</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Un paso del nonio</translation>
        </message>
        <message>
            <source>A disc with one tooth more on one side than on the other: two large steps that make one small one.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Un disco con un diente más en un lado que en el otro: dos pasos grandes que dan uno pequeño.</translation>
        </message>
        <message>
            <source>The coupling</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>El acoplamiento</translation>
        </message>
        <message>
            <source>A magneto timed some fine steps early. The disc on the crank reads true.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Una magneto calada algunos pasos finos antes de tiempo. El disco del cigüeñal marca bien.</translation>
        </message>
        <message>
            <source>Clip the timing lamp across the contacts. The plugs are out and the wheels chocked.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Conecte la lámpara de calado a los contactos. Las bujías están fuera y las ruedas calzadas.</translation>
        </message>
        <message>
            <source>Read it</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Leer</translation>
        </message>
        <message>
            <source>Turn the propeller with rotation until the lamp lights with the finger at No. 1, and write down what the disc reads.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Gire la hélice en el sentido de giro hasta que se encienda la lámpara con el dedo en el n.º 1, y anote lo que marca el disco.</translation>
        </message>
        <message>
            <source>Always with rotation: turned back, the play in the coupling lies on the other side.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Siempre en el sentido de giro: girando hacia atrás, el juego del acoplamiento queda al otro lado.</translation>
        </message>
        <message>
            <source>The finger comes to No. 1 once in two turns of the propeller.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>El dedo llega al n.º 1 una vez cada dos vueltas de hélice.</translation>
        </message>
        <message>
            <source>Paint marks</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Pintar marcas</translation>
        </message>
        <message>
            <source>Paint marks across drive flange, disc and magneto flange.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Pinte marcas a través de brida motriz, disco y brida de la magneto.</translation>
        </message>
        <message>
            <source>Without marks, a disc that comes away with the magneto is a puzzle.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Sin marcas, un disco que sale con la magneto es un rompecabezas.</translation>
        </message>
        <message>
            <source>Nuts off</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Tuercas fuera</translation>
        </message>
        <message>
            <source>Take the nuts off and draw the magneto back.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Quite las tuercas y retire la magneto hacia atrás.</translation>
        </message>
        <message>
            <source>Two teeth</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Dos dientes</translation>
        </message>
        <message>
            <source>It fires early, so the rotor has to go back. Move the magneto flange against rotation and the disc with rotation, as many times as it takes, one tooth each time.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Enciende pronto, así que el rotor debe retroceder. Mueva la brida de la magneto en contra del giro y el disco en el sentido de giro, cuantas veces haga falta, un diente cada vez.</translation>
        </message>
        <message>
            <source>One tooth is more than 18° of rotor; one each way is less than one.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Un diente es más de 18° de rotor; uno en cada sentido es menos de uno.</translation>
        </message>
        <message>
            <source>A pair of teeth, −1 and +1, makes it about 1.1° of crank later. It is about 3° early.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Un par de dientes, −1 y +1, la retrasa aprox. 1.1° de cigüeñal. Está adelantada unos 3°.</translation>
        </message>
        <message>
            <source>Nuts on</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Tuercas puestas</translation>
        </message>
        <message>
            <source>Push the magneto home and tighten its nuts.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Empuje la magneto hasta el fondo y apriete las tuercas.</translation>
        </message>
        <message>
            <source>Check</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Comprobar</translation>
        </message>
        <message>
            <source>The reading with everything tight is the one that is signed for.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>La lectura con todo apretado es la que se firma.</translation>
        </message>
        <message>
            <source>Safe</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Segura</translation>
        </message>
        <message>
            <source>Plate and screw</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Placa y tornillo</translation>
        </message>
        <message>
            <source>The contact screw moves gap and opening, the backplate the opening alone. In this order they bring both right.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>El tornillo de contacto mueve separación y momento de apertura; la placa base, solo el momento. En este orden, ambos quedan bien.</translation>
        </message>
        <message>
            <source>Set by somebody in a hurry: gap too wide, opening late.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Ajustada por alguien con prisa: separación excesiva, apertura tardía.</translation>
        </message>
        <message>
            <source>Slacken the lock screw</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Aflojar el tornillo de bloqueo</translation>
        </message>
        <message>
            <source>The gap comes first. Slacken the lock screw.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>La separación va primero. Afloje el tornillo de bloqueo.</translation>
        </message>
        <message>
            <source>Closer</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Más cerca</translation>
        </message>
        <message>
            <source>Turn the contact screw so that the contacts come closer, 3° at least.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Gire el tornillo de contacto para acercar los contactos, 3° como mínimo.</translation>
        </message>
        <message>
            <source>The gap is smaller now, and the contacts open later still: the screw moves both.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>La separación es menor ahora, y los contactos abren aún más tarde: el tornillo mueve ambas cosas.</translation>
        </message>
        <message>
            <source>Tighten and measure</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Apretar y medir</translation>
        </message>
        <message>
            <source>Bring the gap within limits with the lock screw tight.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Ponga la separación dentro de los límites con el tornillo de bloqueo apretado.</translation>
        </message>
        <message>
            <source>Did you notice? Tightening carried the screw along. What counts is the gap with everything tight.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>¿Lo notó? Al apretar se arrastró el tornillo. Lo que cuenta es la separación con todo apretado.</translation>
        </message>
        <message>
            <source>Limits are 0.30 to 0.36 mm. The lock screw carries the contact screw about 2° closer each time it is tightened.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Blades say so</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Lo dicen las galgas</translation>
        </message>
        <message>
            <source>Turn until the contacts stand widest open, and try a blade.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Gire hasta que los contactos estén en su apertura máxima y pruebe una galga.</translation>
        </message>
        <message>
            <source>Slacken the clamps</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Aflojar la sujeción</translation>
        </message>
        <message>
            <source>The opening is late. Slacken the clamp screws.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>La apertura es tardía. Afloje los tornillos de sujeción.</translation>
        </message>
        <message>
            <source>Against rotation</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>En contra del giro</translation>
        </message>
        <message>
            <source>Turn the backplate against rotation, a degree at least.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Gire la placa base en contra del giro, un grado como mínimo.</translation>
        </message>
        <message>
            <source>The contacts now open earlier. The gap is what it was.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Los contactos abren ahora antes. La separación es la misma.</translation>
        </message>
        <message>
            <source>To the mark</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>A la marca</translation>
        </message>
        <message>
            <source>Bring the opening to the mark, and clamp the plate.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Lleve la apertura a la marca y sujete la placa.</translation>
        </message>
        <message>
            <source>Lay the straightedge on, look square over it, and watch the lamp. Half a millimetre at the rim is about 0.8° here.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Check again</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Comprobar de nuevo</translation>
        </message>
        <message>
            <source>With all tight: turn with rotation until the lamp lights, the straightedge on and looked at square.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Con todo apretado: gire en el sentido de giro hasta que se encienda la lámpara, con la regla puesta y mirada a escuadra.</translation>
        </message>
        <message>
            <source>Only what was checked after the last screw was tightened is known.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Solo se sabe lo que se comprobó después de apretar el último tornillo.</translation>
        </message>
        <message>
            <source>Is the switch lead sound?</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>¿Está bien el cable de masa?</translation>
        </message>
        <message>
            <source>A magneto is live unless it is grounded. The lead that grounds it can be broken where nobody sees it.</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Una magneto está viva si no está a masa. El cable que la pone a masa puede estar roto donde nadie lo ve.</translation>
        </message>
        <message>
            <source>The switch lead</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>El cable de masa</translation>
        </message>
        <message>
            <source>An aircraft back from a long lay-up.</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Un avión que vuelve de una larga inmovilización.</translation>
        </message>
        <message>
            <source>Chocks first</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Primero los calzos</translation>
        </message>
        <message>
            <source>Pull the plug</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Desenchufar</translation>
        </message>
        <message>
            <source>With the switch off, pull the plug of the switch lead. A spring tab now grounds the magneto – if it touches.</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Con el interruptor en OFF, desenchufe el cable de masa. Una lengüeta elástica pone ahora la magneto a masa, si toca.</translation>
        </message>
        <message>
            <source>Meter</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Medir</translation>
        </message>
        <message>
            <source>Meter from the lead's plug to the case, switch off.</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Mida del enchufe del cable a la carcasa, interruptor en OFF.</translation>
        </message>
        <message>
            <source>No ground with the switch off: this magneto was live all the time it was thought safe.</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Sin masa con el interruptor en OFF: esta magneto estuvo viva todo el tiempo que se la creyó segura.</translation>
        </message>
        <message>
            <source>A new lead</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Cable nuevo</translation>
        </message>
        <message>
            <source>Put in a new lead.</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Ponga un cable nuevo.</translation>
        </message>
        <message>
            <source>Prove it</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Probarlo</translation>
        </message>
        <message>
            <source>Meter again, switch off.</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Mida otra vez, interruptor en OFF.</translation>
        </message>
        <message>
            <source>Ground. That is half of the proof.</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Masa. Es la mitad de la prueba.</translation>
        </message>
        <message>
            <source>The other half</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>La otra mitad</translation>
        </message>
        <message>
            <source>Switch on, and meter again.</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Dé el contacto y mida otra vez.</translation>
        </message>
        <message>
            <source>No ground with the switch on: the switch works both ways.</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Sin masa con el interruptor en ON: el interruptor funciona en ambos sentidos.</translation>
        </message>
        <message>
            <source>Leave it safe</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Dejarla segura</translation>
        </message>
        <message>
            <source>Switch off, and push the plug in.</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Corte el contacto y enchufe el cable.</translation>
        </message>
        <message>
            <source>Now, and not before, the switch can be trusted – until the next time.</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Ahora, y no antes, se puede confiar en el interruptor, hasta la próxima vez.</translation>
        </message>
        <message>
            <source>Top dead centre by the stop</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>Punto muerto superior con el tope</translation>
        </message>
        <message>
            <source>Near the top the piston hardly moves: dead centre is found from both sides, not by looking for it.</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>Cerca de arriba el pistón apenas se mueve: el punto muerto se halla desde ambos lados, no buscándolo a ojo.</translation>
        </message>
        <message>
            <source>An engine with a disc on its crank, put on by eye.</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>Un motor con un disco en el cigüeñal, puesto a ojo.</translation>
        </message>
        <message>
            <source>Put chocks at the wheels. The propeller is treated as live.</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>Calce las ruedas. La hélice se trata como viva.</translation>
        </message>
        <message>
            <source>Take the spark plugs out: nothing can fire, nothing is compressed.</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>Quite las bujías: nada puede encender, nada se comprime.</translation>
        </message>
        <message>
            <source>The stop</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>El tope</translation>
        </message>
        <message>
            <source>Fit the piston stop in No. 1. If the piston stands too high, turn the propeller on first.</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>Monte el tope de pistón en el n.º 1. Si el pistón está demasiado alto, gire antes la hélice.</translation>
        </message>
        <message>
            <source>From one side</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>Por un lado</translation>
        </message>
        <message>
            <source>Turn the propeller gently with rotation until the piston meets the stop, and read the disc.</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>Gire la hélice con suavidad en el sentido de giro hasta que el pistón llegue al tope, y lea el disco.</translation>
        </message>
        <message>
            <source>From the other</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>Por el otro</translation>
        </message>
        <message>
            <source>Turn back until it meets the stop from the other side, and read the disc again.</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>Gire hacia atrás hasta que llegue al tope por el otro lado, y lea el disco otra vez.</translation>
        </message>
        <message>
            <source>Dead centre lies half-way between the two readings.</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>El punto muerto está a medio camino entre las dos lecturas.</translation>
        </message>
        <message>
            <source>Write it down</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>Anotar</translation>
        </message>
        <message>
            <source>Write down what the disc reads at top dead centre.</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>Anote lo que marca el disco en el punto muerto superior.</translation>
        </message>
        <message>
            <source>Set the disc</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>Ajustar el disco</translation>
        </message>
        <message>
            <source>Turn the disc on the crank so that it reads zero there.</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>Gire el disco sobre el cigüeñal para que marque cero ahí.</translation>
        </message>
        <message>
            <source>The half-way reading, turned the other way.</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>La lectura media, girada al revés.</translation>
        </message>
        <message>
            <source>Take the stop out, or the next turn of the propeller ends at it.</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>Quite el tope, o la próxima vuelta de la hélice acaba en él.</translation>
        </message>
        <message>
            <source>From here the disc tells the truth.</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>Desde aquí, el disco dice la verdad.</translation>
        </message>
        <message>
            <source>What the parts are</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Qué son las piezas</translation>
        </message>
        <message>
            <source>The breaker end of a magneto, part by part. Point at each part in the picture as it is asked for.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>El lado del ruptor de una magneto, pieza a pieza. Señale en el dibujo cada pieza que se le pida.</translation>
        </message>
        <message>
            <source>The parts</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Las piezas</translation>
        </message>
        <message>
            <source>A magneto with its breaker cover off, seen from the breaker end.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Una magneto sin la tapa del ruptor, vista por el lado del ruptor.</translation>
        </message>
        <message>
            <source>The rotor</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>El rotor</translation>
        </message>
        <message>
            <source>A magnet with north and south poles that alternate round it. The engine turns it. Point at the rotor.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Un imán con polos norte y sur alternados alrededor. Lo gira el motor. Señale el rotor.</translation>
        </message>
        <message>
            <source>Its field runs through the iron of the coil, one way and then the other.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Su campo recorre el hierro de la bobina, en un sentido y luego en el otro.</translation>
        </message>
        <message>
            <source>The pole shoe</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>La zapata polar</translation>
        </message>
        <message>
            <source>The iron that leads the magnet's field up to the coil and back. Point at a pole shoe.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>El hierro que lleva el campo del imán a la bobina y de vuelta. Señale una zapata polar.</translation>
        </message>
        <message>
            <source>Halfway between two poles the field in the iron changes its sense: that place is called neutral.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>A medio camino entre dos polos, el campo del hierro cambia de sentido: ese lugar se llama neutro.</translation>
        </message>
        <message>
            <source>The cam</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>La leva</translation>
        </message>
        <message>
            <source>It turns with the rotor and has a lobe for each spark of a turn. Point at the cam.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Gira con el rotor y tiene un lóbulo por cada chispa de una vuelta. Señale la leva.</translation>
        </message>
        <message>
            <source>Its lobes push the breaker arm outwards.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Sus lóbulos empujan el brazo del ruptor hacia fuera.</translation>
        </message>
        <message>
            <source>The heel</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>El talón</translation>
        </message>
        <message>
            <source>The block on the breaker arm that rides on the cam. Point at the heel.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>El taco del brazo del ruptor que se apoya en la leva. Señale el talón.</translation>
        </message>
        <message>
            <source>When the heel wears, the contacts open later and less wide.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Cuando el talón se gasta, los contactos abren más tarde y menos.</translation>
        </message>
        <message>
            <source>The breaker arm</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>El brazo del ruptor</translation>
        </message>
        <message>
            <source>It swings about its pivot and carries the moving contact. Point at the breaker arm.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Oscila sobre su eje y lleva el contacto móvil. Señale el brazo del ruptor.</translation>
        </message>
        <message>
            <source>A spring presses it towards the cam.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Un muelle lo aprieta contra la leva.</translation>
        </message>
        <message>
            <source>While they touch, the coil's primary current flows; as they part, it breaks and the spark jumps. Point at the contacts.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Mientras se tocan, circula la corriente primaria de la bobina; al separarse, se corta y salta la chispa. Señale los contactos.</translation>
        </message>
        <message>
            <source>When they part, and how far, is what this program is about.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Cuándo se separan, y cuánto: de eso trata este programa.</translation>
        </message>
        <message>
            <source>The contact screw</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>El tornillo de contacto</translation>
        </message>
        <message>
            <source>It moves the fixed contact nearer or further off. Point at the contact screw.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Acerca o aleja el contacto fijo. Señale el tornillo de contacto.</translation>
        </message>
        <message>
            <source>Nearer: the contacts open later and less wide.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Más cerca: los contactos abren más tarde y menos.</translation>
        </message>
        <message>
            <source>The lock screw</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>El tornillo de bloqueo</translation>
        </message>
        <message>
            <source>It holds the contact screw. Point at the lock screw.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Sujeta el tornillo de contacto. Señale el tornillo de bloqueo.</translation>
        </message>
        <message>
            <source>Tightening it can carry the contact screw along: measure again afterwards.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Al apretarlo puede arrastrar el tornillo de contacto: mida de nuevo después.</translation>
        </message>
        <message>
            <source>The backplate</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>La placa base</translation>
        </message>
        <message>
            <source>It carries contacts and breaker arm, and can be turned about the cam. Point at the backplate.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Lleva los contactos y el brazo del ruptor, y puede girarse en torno a la leva. Señale la placa base.</translation>
        </message>
        <message>
            <source>With rotation: the contacts open later. The gap does not change.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>En el sentido de giro: los contactos abren más tarde. La apertura no cambia.</translation>
        </message>
        <message>
            <source>The clamp screw</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>El tornillo de sujeción</translation>
        </message>
        <message>
            <source>They hold the backplate. Point at a clamp screw.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Sujetan la placa base. Señale un tornillo de sujeción.</translation>
        </message>
        <message>
            <source>A plate that is not clamped will not stay.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Una placa sin sujetar no se queda en su sitio.</translation>
        </message>
        <message>
            <source>The step</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>El escalón</translation>
        </message>
        <message>
            <source>A flat edge on the cam along which a straightedge is laid. Point at the step.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Un canto plano de la leva en el que se apoya una regla. Señale el escalón.</translation>
        </message>
        <message>
            <source>It turns with the cam and shows where the rotor stands.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Gira con la leva y muestra dónde está el rotor.</translation>
        </message>
        <message>
            <source>The rim mark</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>La marca del borde</translation>
        </message>
        <message>
            <source>A mark on the housing's rim: with the step in line, the rotor is at the E-gap. Point at a rim mark.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Una marca en el borde de la carcasa: con el escalón alineado, el rotor está en el E-gap. Señale una marca del borde.</translation>
        </message>
        <message>
            <source>There the contacts should just begin to open.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Ahí los contactos deben empezar justo a abrir.</translation>
        </message>
    </context>
</TS>
