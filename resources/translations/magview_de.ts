<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
    <context>
        <name>magview</name>
        <message>
            <source>Plate and screw both move the opening, only the screw moves the gap: check both again after tightening.</source>
            <extracomment>bench/advised.py</extracomment>
            <translation>Platte und Schraube verstellen die Öffnung, nur die Schraube den Abstand: beides nach dem Festziehen erneut prüfen.</translation>
        </message>
        <message>
            <source>tightening the lock screw carries it on by {creep}° (closer), to {angle}°</source>
            <extracomment>bench/advised.py</extracomment>
            <translation>das Anziehen der Sicherungsschraube nimmt sie {creep}° mit (enger), auf {angle}°</translation>
        </message>
        <message>
            <source>tightening the lock screw carries the contact screw along, which would first have to stand at {value}°, {beyond}° beyond the end of its travel ({low}° to {high}°)</source>
            <extracomment>bench/advised.py</extracomment>
            <translation>das Anziehen der Sicherungsschraube nimmt die Kontaktschraube mit, die vorher bei {value}° stehen müsste, {beyond}° jenseits ihres Wegs ({low}° bis {high}°)</translation>
        </message>
        <message>
            <source>A largest gap of {gap} with opening at the E-gap cannot be had: {reason}.</source>
            <extracomment>bench/advised.py</extracomment>
            <translation>Ein größter Abstand von {gap} mit Öffnung im E-Gap ist nicht zu erreichen: {reason}.</translation>
        </message>
        <message>
            <source>Nothing to turn: {creep}; then the contacts open at the E-gap and the largest gap is {gap}.</source>
            <extracomment>bench/advised.py</extracomment>
            <translation>Nichts zu drehen: {creep}; dann öffnen die Kontakte im E-Gap und der größte Abstand ist {gap}.</translation>
        </message>
        <message>
            <source>tightening the lock screw carries it back by {creep}° (wider), to {angle}°</source>
            <extracomment>bench/advised.py</extracomment>
            <translation>das Anziehen der Sicherungsschraube nimmt sie {creep}° zurück (weiter), auf {angle}°</translation>
        </message>
        <message>
            <source>Nothing: the contacts open at the E-gap and the largest gap is {gap}.</source>
            <extracomment>bench/advised.py</extracomment>
            <translation>Nichts: Die Kontakte öffnen im E-Gap und der größte Abstand ist {gap}.</translation>
        </message>
        <message>
            <source>slacken the clamp screws and the lock screw</source>
            <extracomment>bench/advised.py</extracomment>
            <translation>Klemmschrauben und Sicherungsschraube lösen</translation>
        </message>
        <message>
            <source>{first}, then {then}</source>
            <extracomment>bench/advised.py</extracomment>
            <translation>{first}, dann {then}</translation>
        </message>
        <message>
            <source>{moves}, to {angle}°; {creep}</source>
            <extracomment>bench/advised.py</extracomment>
            <translation>{moves}, auf {angle}°; {creep}</translation>
        </message>
        <message>
            <source>{moves}; {creep}</source>
            <extracomment>bench/advised.py</extracomment>
            <translation>{moves}; {creep}</translation>
        </message>
        <message>
            <source>slacken the clamp screws</source>
            <extracomment>bench/advised.py, bench/describe.py</extracomment>
            <translation>die Klemmschrauben lösen</translation>
        </message>
        <message>
            <source>slacken the lock screw</source>
            <extracomment>bench/advised.py, bench/describe.py</extracomment>
            <translation>die Sicherungsschraube lösen</translation>
        </message>
        <message>
            <source>the backplate's angle is {value}; it must be a finite number of degrees</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>der Winkel der Grundplatte ist {value}; er muss eine endliche Gradzahl sein</translation>
        </message>
        <message>
            <source>the contact screw's angle is {value}; it must be a finite number of degrees</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>der Winkel der Kontaktschraube ist {value}; er muss eine endliche Gradzahl sein</translation>
        </message>
        <message>
            <source>the lamp's reading is {value}; it must be a finite number of degrees</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>die Ablesung der Prüflampe ist {value}; sie muss eine endliche Gradzahl sein</translation>
        </message>
        <message>
            <source>{to} is not a length; wear must be a finite number of millimetres</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>{to} ist keine Länge; Verschleiß muss eine endliche Zahl von Millimetern sein</translation>
        </message>
        <message>
            <source>this magneto's file gives no heel arm, so it cannot be said what a worn heel does</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>die Datei dieses Magnetzünders nennt keinen Hebelarm des Gleitstücks; was ein verschlissenes Gleitstück bewirkt, lässt sich daher nicht sagen</translation>
        </message>
        <message>
            <source>the clamp screws are tight: slacken them before turning the backplate</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>die Klemmschrauben sind fest: vor dem Drehen der Grundplatte lösen</translation>
        </message>
        <message>
            <source>the lock screw is tight: slacken it before turning the contact screw</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>die Sicherungsschraube ist fest: vor dem Drehen der Kontaktschraube lösen</translation>
        </message>
        <message>
            <source>this magneto is not on an engine: open an installation first</source>
            <extracomment>bench/apply.py, bench/sureness.py, ui/uncertainty_panel.py</extracomment>
            <translation>dieser Magnetzünder sitzt an keinem Motor: zuerst einen Einbau öffnen</translation>
        </message>
        <message>
            <source>with this setting the contacts never open and close, so the lamp tells no timing</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>bei dieser Einstellung öffnen und schließen die Kontakte nie; die Prüflampe zeigt also keinen Zündzeitpunkt</translation>
        </message>
        <message>
            <source>“{fault}” is not a fault of the switch lead; it is shorted, broken or tab</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>„{fault}“ ist kein Fehler der Kurzschlussleitung; möglich sind shorted, broken oder tab</translation>
        </message>
        <message>
            <source>the wanted timing is {value}; it must be a finite number of degrees</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>der gewünschte Zündzeitpunkt ist {value}; er muss eine endliche Gradzahl sein</translation>
        </message>
        <message>
            <source>the rotor's angle is {value}; it must be a finite number of degrees</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>der Winkel des Rotors ist {value}; er muss eine endliche Gradzahl sein</translation>
        </message>
        <message>
            <source>the clock cannot run {steps} steps; it takes 0 to {most} at a time</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>die Uhr kann nicht {steps} Schritte laufen; möglich sind 0 bis {most} auf einmal</translation>
        </message>
        <message>
            <source>the crank's angle is {value}; it must be a finite number of degrees</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>der Winkel der Kurbelwelle ist {value}; er muss eine endliche Gradzahl sein</translation>
        </message>
        <message>
            <source>a whole turn of teeth brings the coupling back to where it was, with the finger off</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>eine ganze Umdrehung an Zähnen bringt die Kupplung dorthin zurück, wo sie war, mit dem Finger daneben</translation>
        </message>
        <message>
            <source>there are {most} trials already; strike one out first</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>es sind schon {most} Proben da; zuerst eine streichen</translation>
        </message>
        <message>
            <source>there is no trial {place}; there are {count}</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>es gibt keine Probe {place}; es gibt {count}</translation>
        </message>
        <message>
            <source>there are {most} inspections already; strike one out first</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>es sind schon {most} Prüfungen da; zuerst eine streichen</translation>
        </message>
        <message>
            <source>there is no inspection {place}; there are {count}</source>
            <extracomment>bench/apply.py</extracomment>
            <translation>es gibt keine Prüfung {place}; es gibt {count}</translation>
        </message>
        <message>
            <source>{name}: is not a kept bench; its format must be "{wanted}"</source>
            <extracomment>bench/autosave.py</extracomment>
            <translation>{name}: ist kein gesicherter Prüftisch; das Format muss „{wanted}“ sein</translation>
        </message>
        <message>
            <source>{name}: is damaged: an inspection lacks the setting it was noted at</source>
            <extracomment>bench/autosave.py</extracomment>
            <translation>{name}: ist beschädigt: einer Prüfung fehlt die Einstellung, bei der sie notiert wurde</translation>
        </message>
        <message>
            <source>{name}: is damaged: an angle is not a finite number</source>
            <extracomment>bench/autosave.py</extracomment>
            <translation>{name}: ist beschädigt: ein Winkel ist keine endliche Zahl</translation>
        </message>
        <message>
            <source>{name}: is damaged: {reason}</source>
            <extracomment>bench/autosave.py</extracomment>
            <translation>{name}: ist beschädigt: {reason}</translation>
        </message>
        <message>
            <source>{name}: cannot be used: {reason}</source>
            <extracomment>bench/autosave.py</extracomment>
            <translation>{name}: ist nicht verwendbar: {reason}</translation>
        </message>
        <message>
            <source>Another magneto is on the bench: {magneto}.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Ein anderer Magnetzünder liegt auf dem Prüftisch: {magneto}.</translation>
        </message>
        <message>
            <source>Wear or pips of the magneto are others.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Verschleiß oder Höcker des Magnetzünders sind anders.</translation>
        </message>
        <message>
            <source>The rotor is held.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Der Rotor wird gehalten.</translation>
        </message>
        <message>
            <source>The rotor was let go.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Der Rotor wurde losgelassen.</translation>
        </message>
        <message>
            <source>The lock screw is tight.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Die Sicherungsschraube ist fest.</translation>
        </message>
        <message>
            <source>The lock screw is slack.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Die Sicherungsschraube ist gelöst.</translation>
        </message>
        <message>
            <source>The clamp screws are tight.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Die Klemmschrauben sind fest.</translation>
        </message>
        <message>
            <source>The clamp screws are slack.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Die Klemmschrauben sind gelöst.</translation>
        </message>
        <message>
            <source>The switch is on.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Der Schalter ist ein.</translation>
        </message>
        <message>
            <source>The switch is off.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Der Schalter ist aus.</translation>
        </message>
        <message>
            <source>The lead's plug is in.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Der Stecker der Leitung steckt.</translation>
        </message>
        <message>
            <source>The lead's plug is out.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Der Stecker der Leitung ist gezogen.</translation>
        </message>
        <message>
            <source>The switch lead is in another condition.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Die Kurzschlussleitung ist in anderem Zustand.</translation>
        </message>
        <message>
            <source>The magneto flange stands in other teeth of the disc.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Der Magnetzünderflansch steht in anderen Zähnen der Scheibe.</translation>
        </message>
        <message>
            <source>The disc stands in other teeth of the drive flange.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Die Scheibe steht in anderen Zähnen des Antriebsflansches.</translation>
        </message>
        <message>
            <source>The magneto stands for itself now.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Der Magnetzünder steht jetzt für sich.</translation>
        </message>
        <message>
            <source>The magneto is on an engine now.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Der Magnetzünder sitzt jetzt an einem Motor.</translation>
        </message>
        <message>
            <source>The magneto is on the engine.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Der Magnetzünder ist am Motor.</translation>
        </message>
        <message>
            <source>The magneto is off the engine.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Der Magnetzünder ist vom Motor ab.</translation>
        </message>
        <message>
            <source>The left magneto is in view.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Der linke Magnetzünder ist im Bild.</translation>
        </message>
        <message>
            <source>The right magneto is in view.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Der rechte Magnetzünder ist im Bild.</translation>
        </message>
        <message>
            <source>The contacts open now.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Die Kontakte öffnen jetzt.</translation>
        </message>
        <message>
            <source>The contacts never open now.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Die Kontakte öffnen jetzt nie.</translation>
        </message>
        <message>
            <source>It is within its limits now.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Er ist jetzt innerhalb seiner Grenzen.</translation>
        </message>
        <message>
            <source>It is out of its limits now.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Er ist jetzt außerhalb seiner Grenzen.</translation>
        </message>
        <message>
            <source>The rotor was turned {angle} with rotation.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Der Rotor wurde um {angle} in Drehrichtung gedreht.</translation>
        </message>
        <message>
            <source>The rotor was turned {angle} against rotation.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Der Rotor wurde um {angle} gegen die Drehrichtung gedreht.</translation>
        </message>
        <message>
            <source>The rotor was turned with rotation.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Der Rotor wurde in Drehrichtung gedreht.</translation>
        </message>
        <message>
            <source>The rotor was turned against rotation.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Der Rotor wurde gegen die Drehrichtung gedreht.</translation>
        </message>
        <message>
            <source>The backplate was turned {angle} with rotation.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Die Grundplatte wurde um {angle} in Drehrichtung gedreht.</translation>
        </message>
        <message>
            <source>The backplate was turned {angle} against rotation.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Die Grundplatte wurde um {angle} gegen die Drehrichtung gedreht.</translation>
        </message>
        <message>
            <source>The backplate was turned with rotation.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Die Grundplatte wurde in Drehrichtung gedreht.</translation>
        </message>
        <message>
            <source>The backplate was turned against rotation.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Die Grundplatte wurde gegen die Drehrichtung gedreht.</translation>
        </message>
        <message>
            <source>The contact screw was turned {angle}, contacts closer.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Die Kontaktschraube wurde um {angle} gedreht, Kontakte enger.</translation>
        </message>
        <message>
            <source>The contact screw was turned {angle}, contacts wider.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Die Kontaktschraube wurde um {angle} gedreht, Kontakte weiter.</translation>
        </message>
        <message>
            <source>The contact screw was turned, contacts closer.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Die Kontaktschraube wurde gedreht, Kontakte enger.</translation>
        </message>
        <message>
            <source>The contact screw was turned, contacts wider.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Die Kontaktschraube wurde gedreht, Kontakte weiter.</translation>
        </message>
        <message>
            <source>The largest gap is {length} wider: {gap}.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Der größte Kontaktabstand ist um {length} weiter: {gap}.</translation>
        </message>
        <message>
            <source>The largest gap is {length} narrower: {gap}.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Der größte Kontaktabstand ist um {length} enger: {gap}.</translation>
        </message>
        <message>
            <source>The largest gap is wider.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Der größte Kontaktabstand ist weiter.</translation>
        </message>
        <message>
            <source>The largest gap is narrower.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Der größte Kontaktabstand ist enger.</translation>
        </message>
        <message>
            <source>The contacts open {angle} of rotor later.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Die Kontakte öffnen {angle} Rotor später.</translation>
        </message>
        <message>
            <source>The contacts open {angle} of rotor earlier.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Die Kontakte öffnen {angle} Rotor früher.</translation>
        </message>
        <message>
            <source>The contacts open later.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Die Kontakte öffnen später.</translation>
        </message>
        <message>
            <source>The contacts open earlier.</source>
            <extracomment>bench/changes.py</extracomment>
            <translation>Die Kontakte öffnen früher.</translation>
        </message>
        <message>
            <source>Assumed: constant speed, linear core without losses, contacts that make and break at once, no load on the secondary while they are closed; illustrative unless the file's values are measured. At running speed this model's best opening lies past the E-gap: the maker's E-gap governs.</source>
            <extracomment>bench/curves_coil.py</extracomment>
            <translation>Angenommen: konstante Drehzahl, linearer Kern ohne Verluste, Kontakte, die sofort schließen und trennen, keine Last an der Sekundärwicklung, solange sie geschlossen sind; nur zur Anschauung, sofern die Werte der Datei nicht gemessen sind. Bei Betriebsdrehzahl liegt die beste Öffnung dieses Modells hinter dem E-Gap: maßgebend ist das E-Gap des Herstellers.</translation>
        </message>
        <message>
            <source>put in a short inside the magneto</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>einen Kurzschluss im Magnetzünder einbauen</translation>
        </message>
        <message>
            <source>take away a short inside the magneto</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>einen Kurzschluss im Magnetzünder entfernen</translation>
        </message>
        <message>
            <source>put in a break in the switch lead</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>einen Bruch in der Kurzschlussleitung einbauen</translation>
        </message>
        <message>
            <source>take away a break in the switch lead</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>einen Bruch in der Kurzschlussleitung entfernen</translation>
        </message>
        <message>
            <source>put in a bent spring tab</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>eine verbogene Federzunge einbauen</translation>
        </message>
        <message>
            <source>take away a bent spring tab</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>eine verbogene Federzunge entfernen</translation>
        </message>
        <message>
            <source>let go of the rotor</source>
            <extracomment>bench/describe.py, practice/words.py</extracomment>
            <translation>den Rotor loslassen</translation>
        </message>
        <message>
            <source>grow a pip of {pip_height} mm</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>einen Höcker von {pip_height} mm wachsen lassen</translation>
        </message>
        <message>
            <source>wear the heel to {heel_wear} mm</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>das Gleitstück auf {heel_wear} mm verschleißen</translation>
        </message>
        <message>
            <source>move teeth</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>Zähne versetzen</translation>
        </message>
        <message>
            <source>move the magneto flange {flange} and the disc {disc}</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>den Magnetzünderflansch {flange} und die Scheibe {disc} versetzen</translation>
        </message>
        <message>
            <source>move the magneto flange {teeth}</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>den Magnetzünderflansch {teeth} versetzen</translation>
        </message>
        <message>
            <source>move the disc {teeth}</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>die Scheibe {teeth} versetzen</translation>
        </message>
        <message>
            <source>move the coupling</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>die Kupplung versetzen</translation>
        </message>
        <message>
            <source>place the {magneto}</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>den {magneto} auflegen</translation>
        </message>
        <message>
            <source>set backplate and contact screw</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>Grundplatte und Kontaktschraube einstellen</translation>
        </message>
        <message>
            <source>turn the rotor {angle}° against rotation</source>
            <extracomment>bench/describe.py, practice/words.py</extracomment>
            <translation>den Rotor {angle}° gegen die Drehrichtung drehen</translation>
        </message>
        <message>
            <source>hold the rotor</source>
            <extracomment>bench/describe.py, practice/words.py</extracomment>
            <translation>den Rotor halten</translation>
        </message>
        <message>
            <source>wait</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>warten</translation>
        </message>
        <message>
            <source>note the trial at plate {backplate}°</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>die Probe bei Platte {backplate}° notieren</translation>
        </message>
        <message>
            <source>note the inspection at {hours} h</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>die Prüfung bei {hours} h notieren</translation>
        </message>
        <message>
            <source>strike out trial {place}</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>die Probe {place} streichen</translation>
        </message>
        <message>
            <source>strike out inspection {place}</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>die Prüfung {place} streichen</translation>
        </message>
        <message>
            <source>turn the crank {angle}° against rotation</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>die Kurbelwelle {angle}° gegen die Drehrichtung drehen</translation>
        </message>
        <message>
            <source>read the lamp: right fires {btdc}° before top dead centre</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>die Prüflampe ablesen: rechts zündet {btdc}° vor dem oberen Totpunkt</translation>
        </message>
        <message>
            <source>want right at {btdc}° before top dead centre</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>rechts auf {btdc}° vor dem oberen Totpunkt wünschen</translation>
        </message>
        <message>
            <source>paint new marks on the coupling</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>neue Marken auf die Kupplung malen</translation>
        </message>
        <message>
            <source>tighten the lock screw</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>die Sicherungsschraube anziehen</translation>
        </message>
        <message>
            <source>tighten the clamp screws</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>die Klemmschrauben anziehen</translation>
        </message>
        <message>
            <source>turn the rotor {angle}° with rotation</source>
            <extracomment>bench/describe.py, practice/words.py</extracomment>
            <translation>den Rotor {angle}° in Drehrichtung drehen</translation>
        </message>
        <message>
            <source>pull the switch lead's plug</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>den Stecker der Kurzschlussleitung ziehen</translation>
        </message>
        <message>
            <source>push in the switch lead's plug</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>den Stecker der Kurzschlussleitung einstecken</translation>
        </message>
        <message>
            <source>switch on</source>
            <extracomment>bench/describe.py, bench/lead_picture.py, ui/class_editor_fields.py</extracomment>
            <translation>einschalten</translation>
        </message>
        <message>
            <source>switch off</source>
            <extracomment>bench/describe.py, bench/lead_picture.py, practice/advice.py, practice/goals.py</extracomment>
            <translation>ausschalten</translation>
        </message>
        <message>
            <source>turn the crank</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>die Kurbelwelle drehen</translation>
        </message>
        <message>
            <source>turn the crank {angle}° with rotation</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>die Kurbelwelle {angle}° in Drehrichtung drehen</translation>
        </message>
        <message>
            <source>refit the magneto by its marks</source>
            <extracomment>bench/describe.py, practice/words.py</extracomment>
            <translation>den Magnetzünder nach seinen Marken wieder anbauen</translation>
        </message>
        <message>
            <source>take the magneto off the engine</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>den Magnetzünder vom Motor abbauen</translation>
        </message>
        <message>
            <source>read the lamp: left fires {btdc}° before top dead centre</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>die Prüflampe ablesen: links zündet {btdc}° vor dem oberen Totpunkt</translation>
        </message>
        <message>
            <source>want left at {btdc}° before top dead centre</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>links auf {btdc}° vor dem oberen Totpunkt wünschen</translation>
        </message>
        <message>
            <source>look at the left magneto</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>den linken Magnetzünder ansehen</translation>
        </message>
        <message>
            <source>look at the right magneto</source>
            <extracomment>bench/describe.py</extracomment>
            <translation>den rechten Magnetzünder ansehen</translation>
        </message>
        <message>
            <source>contacts just open</source>
            <extracomment>bench/events.py</extracomment>
            <translation>Kontakte öffnen gerade</translation>
        </message>
        <message>
            <source>contacts just close</source>
            <extracomment>bench/events.py</extracomment>
            <translation>Kontakte schließen gerade</translation>
        </message>
        <message>
            <source>top of lobe</source>
            <extracomment>bench/events.py</extracomment>
            <translation>Nockenspitze</translation>
        </message>
        <message>
            <source>E-gap</source>
            <extracomment>bench/events.py, bench/own_magneto_fields.py, job/svg.py, practice/paper.py, ui/breaker_view.py, ui/plot_lift.py</extracomment>
            <translation>E-Gap</translation>
        </message>
        <message>
            <source>neutral</source>
            <extracomment>bench/events.py, job/svg.py, ui/breaker_view.py</extracomment>
            <translation>Neutralstellung</translation>
        </message>
        <message>
            <source>“{kind}” is not something to stop at; there are {known}</source>
            <extracomment>bench/events.py</extracomment>
            <translation>„{kind}“ ist nichts, wobei man anhalten kann; es gibt {known}</translation>
        </message>
        <message>
            <source>Grounded by the switch, through its lead. No spark; the lamp sees “closed” whatever the contacts do.</source>
            <extracomment>bench/lead_picture.py</extracomment>
            <translation>Vom Schalter über die Leitung an Masse gelegt. Kein Funke; die Prüflampe sieht „geschlossen“, was immer die Kontakte tun.</translation>
        </message>
        <message>
            <source>Grounded by the switch, through its lead. A short inside the magneto grounds it too. No spark; the lamp sees “closed” whatever the contacts do.</source>
            <extracomment>bench/lead_picture.py</extracomment>
            <translation>Vom Schalter über die Leitung an Masse gelegt. Auch ein Kurzschluss im Magnetzünder legt ihn an Masse. Kein Funke; die Prüflampe sieht „geschlossen“, was immer die Kontakte tun.</translation>
        </message>
        <message>
            <source>Grounded by the spring tab: the plug is out. No spark; the lamp sees “closed” whatever the contacts do.</source>
            <extracomment>bench/lead_picture.py</extracomment>
            <translation>Von der Federzunge an Masse gelegt: der Stecker ist gezogen. Kein Funke; die Prüflampe sieht „geschlossen“, was immer die Kontakte tun.</translation>
        </message>
        <message>
            <source>Grounded by the spring tab: the plug is out. A short inside the magneto grounds it too. No spark; the lamp sees “closed” whatever the contacts do.</source>
            <extracomment>bench/lead_picture.py</extracomment>
            <translation>Von der Federzunge an Masse gelegt: der Stecker ist gezogen. Auch ein Kurzschluss im Magnetzünder legt ihn an Masse. Kein Funke; die Prüflampe sieht „geschlossen“, was immer die Kontakte tun.</translation>
        </message>
        <message>
            <source>Meter on the lead: no ground</source>
            <extracomment>bench/lead_picture.py</extracomment>
            <translation>Messgerät an der Leitung: keine Masse</translation>
        </message>
        <message>
            <source>Meter: pull the plug to read the lead</source>
            <extracomment>bench/lead_picture.py</extracomment>
            <translation>Messgerät: zum Messen der Leitung Stecker ziehen</translation>
        </message>
        <message>
            <source>Meter on the lead: ground</source>
            <extracomment>bench/lead_picture.py</extracomment>
            <translation>Messgerät an der Leitung: Masse</translation>
        </message>
        <message>
            <source>coil</source>
            <extracomment>bench/lead_picture.py, bench/told.py</extracomment>
            <translation>Spule</translation>
        </message>
        <message>
            <source>contacts</source>
            <extracomment>bench/lead_picture.py, bench/told.py, bench/words.py, practice/state.py</extracomment>
            <translation>Kontakte</translation>
        </message>
        <message>
            <source>plug</source>
            <extracomment>bench/lead_picture.py, bench/told.py</extracomment>
            <translation>Stecker</translation>
        </message>
        <message>
            <source>lead</source>
            <extracomment>bench/lead_picture.py, bench/told.py</extracomment>
            <translation>Leitung</translation>
        </message>
        <message>
            <source>spring tab</source>
            <extracomment>bench/lead_picture.py, bench/told.py</extracomment>
            <translation>Federzunge</translation>
        </message>
        <message>
            <source>Grounded only by a short inside the magneto, not by the switch: no spark now, but DANGER: without the short it would be live.</source>
            <extracomment>bench/lead_picture.py</extracomment>
            <translation>Nur durch einen Kurzschluss im Magnetzünder an Masse, nicht durch den Schalter: jetzt kein Funke, aber GEFAHR: ohne den Kurzschluss wäre er scharf.</translation>
        </message>
        <message>
            <source>DANGER: live with the plug out: its tab does not touch the case. Any turn can fire a plug.</source>
            <extracomment>bench/lead_picture.py</extracomment>
            <translation>GEFAHR: scharf bei gezogenem Stecker: die Federzunge berührt das Gehäuse nicht. Jede Drehung kann eine Kerze zünden.</translation>
        </message>
        <message>
            <source>Live: the switch is on. A turn of the propeller can fire a plug.</source>
            <extracomment>bench/lead_picture.py</extracomment>
            <translation>Scharf: der Schalter ist ein. Eine Drehung des Propellers kann eine Kerze zünden.</translation>
        </message>
        <message>
            <source>broken inside</source>
            <extracomment>bench/lead_picture.py, ui/practice_notebook.py</extracomment>
            <translation>innen gebrochen</translation>
        </message>
        <message>
            <source>short</source>
            <extracomment>bench/lead_picture.py</extracomment>
            <translation>Kurzschluss</translation>
        </message>
        <message>
            <source>DANGER: live with the switch off: the lead is broken inside. Any turn can fire a plug.</source>
            <extracomment>bench/lead_picture.py</extracomment>
            <translation>GEFAHR: scharf bei ausgeschaltetem Schalter: die Leitung ist innen gebrochen. Jede Drehung kann eine Kerze zünden.</translation>
        </message>
        <message>
            <source>{first} and {second}</source>
            <extracomment>bench/own.py</extracomment>
            <translation>{first} und {second}</translation>
        </message>
        <message>
            <source>“{text}” could not be taken: type it again</source>
            <extracomment>bench/own.py</extracomment>
            <translation>„{text}“ konnte nicht übernommen werden: bitte neu eingeben</translation>
        </message>
        <message>
            <source>the magneto in this window is not complete yet: its own pages say what is missing</source>
            <extracomment>bench/own.py</extracomment>
            <translation>der Magnetzünder in diesem Fenster ist noch nicht vollständig: seine eigenen Seiten sagen, was fehlt</translation>
        </message>
        <message>
            <source>the engine in this window is not complete yet: its own pages say what is missing</source>
            <extracomment>bench/own.py</extracomment>
            <translation>der Motor in diesem Fenster ist noch nicht vollständig: seine eigenen Seiten sagen, was fehlt</translation>
        </message>
        <message>
            <source>cannot be had</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>nicht zu haben</translation>
        </message>
        <message>
            <source>Lobe 1 opens, past neutral</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>Nocken 1 öffnet, nach Neutral</translation>
        </message>
        <message>
            <source>Off the E-gap</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>Abweichung vom E-Gap</translation>
        </message>
        <message>
            <source>Largest gap on lobe 1</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>Größter Abstand an Nocken 1</translation>
        </message>
        <message>
            <source>Gap of all lobes, least</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>Abstand aller Nocken, kleinster</translation>
        </message>
        <message>
            <source>Gap of all lobes, most</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>Abstand aller Nocken, größter</translation>
        </message>
        <message>
            <source>Contacts closed before lobe 1</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>Kontakte zu vor Nocken 1</translation>
        </message>
        <message>
            <source>Contact lift at the top</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>Kontakthub an der Spitze</translation>
        </message>
        <message>
            <source>At the rim for 1° late</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>Am Rand für 1° später</translation>
        </message>
        <message>
            <source>Plate for the least gap allowed</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>Platte für kleinsten zulässigen Abstand</translation>
        </message>
        <message>
            <source>Plate for the most gap allowed</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>Platte für größten zulässigen Abstand</translation>
        </message>
        <message>
            <source>Between two sparks</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>Zwischen zwei Funken</translation>
        </message>
        <message>
            <source>Dead centres uneven by up to</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>Totpunkte ungleich um bis zu</translation>
        </message>
        <message>
            <source>Left before right</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>Links vor rechts</translation>
        </message>
        <message>
            <source>One tooth, at the crank</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>Ein Zahn, an der Kurbelwelle</translation>
        </message>
        <message>
            <source>One vernier step, at the crank</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>Ein Noniusschritt, an der Kurbelwelle</translation>
        </message>
        <message>
            <source>Finest step, at the crank</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>Feinster Schritt, an der Kurbelwelle</translation>
        </message>
        <message>
            <source>Wanted, before top dead centre</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>Gewünscht, vor OT</translation>
        </message>
        <message>
            <source>E-gap, at the crank</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>E-Gap, an der Kurbelwelle</translation>
        </message>
        <message>
            <source>No. 1 down at the left spark</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>Nr. 1 unter OT beim linken Funken</translation>
        </message>
        <message>
            <source>No. 1 down at the right spark</source>
            <extracomment>bench/own_compare.py</extracomment>
            <translation>Nr. 1 unter OT beim rechten Funken</translation>
        </message>
        <message>
            <source>Cylinders and firing order</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Zylinder und Zündfolge</translation>
        </message>
        <message>
            <source>From the engine's data plate and the maker's manual.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Vom Typenschild des Motors und aus dem Herstellerhandbuch.</translation>
        </message>
        <message>
            <source>Timing wanted</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Gewünschter Zündzeitpunkt</translation>
        </message>
        <message>
            <source>From the maker's current manual, which governs.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Aus dem gültigen Herstellerhandbuch; dieses ist maßgebend.</translation>
        </message>
        <message>
            <source>Stroke and rod</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Hub und Pleuel</translation>
        </message>
        <message>
            <source>From the manual; they tell how far the piston stands down at the timing.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Aus dem Handbuch; sie sagen, wie weit der Kolben beim Zündzeitpunkt unter OT steht.</translation>
        </message>
        <message>
            <source>Link rods</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Nebenpleuel</translation>
        </message>
        <message>
            <source>For a radial engine with a master rod. None, or not known? Leave all empty.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Für einen Sternmotor mit Hauptpleuel. Keine oder unbekannt? Alles leer lassen.</translation>
        </message>
        <message>
            <source>Magneto and engine</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Magnetzünder und Motor</translation>
        </message>
        <message>
            <source>The two that belong together: those in this window, shipped ones, or files of yours.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Die beiden, die zusammengehören: aus diesem Fenster, mitgelieferte oder eigene Dateien.</translation>
        </message>
        <message>
            <source>Coupling and drive</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Kupplung und Antrieb</translation>
        </message>
        <message>
            <source>Count the teeth on both faces of the coupling's disc; paint a mark before you begin.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Zähne beider Seiten der Kupplungsscheibe zählen; vor Beginn eine Marke malen.</translation>
        </message>
        <message>
            <source>Name</source>
            <extracomment>bench/own_engine_fields.py, bench/own_magneto_fields.py, classroom/worksheet.py, job/parts.py, job/shift_plan.py</extracomment>
            <translation>Name</translation>
        </message>
        <message>
            <source>What you call this engine: type, number, aircraft.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Wie Sie diesen Motor nennen: Typ, Nummer, Flugzeug.</translation>
        </message>
        <message>
            <source>One line of up to 120 characters.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Eine Zeile mit bis zu 120 Zeichen.</translation>
        </message>
        <message>
            <source>Cylinders</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Zylinder</translation>
        </message>
        <message>
            <source>How many cylinders the two magnetos fire.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Wie viele Zylinder die beiden Magnetzünder zünden.</translation>
        </message>
        <message>
            <source>A whole number.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Eine ganze Zahl.</translation>
        </message>
        <message>
            <source>Arrangement</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Anordnung</translation>
        </message>
        <message>
            <source>How the cylinders stand round the crank.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Wie die Zylinder um die Kurbelwelle stehen.</translation>
        </message>
        <message>
            <source>Only a radial engine can have link rods on a master rod.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Nur ein Sternmotor kann Nebenpleuel an einem Hauptpleuel haben.</translation>
        </message>
        <message>
            <source>Rotation of the crank</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Drehrichtung der Kurbelwelle</translation>
        </message>
        <message>
            <source>Which way the crank turns, seen from the propeller end.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Wie herum die Kurbelwelle dreht, von der Propellerseite gesehen.</translation>
        </message>
        <message>
            <source>Clockwise or anticlockwise.</source>
            <extracomment>bench/own_engine_fields.py, bench/own_magneto_fields.py</extracomment>
            <translation>Im oder gegen den Uhrzeigersinn.</translation>
        </message>
        <message>
            <source>Firing order</source>
            <extracomment>bench/own_engine_fields.py, practice/paper.py</extracomment>
            <translation>Zündfolge</translation>
        </message>
        <message>
            <source>The cylinders in the order they fire, such as 1-3-5-2-4.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Die Zylinder in der Reihenfolge, in der sie zünden, z. B. 1-3-5-2-4.</translation>
        </message>
        <message>
            <source>Begins with 1 and names each cylinder once.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Beginnt mit 1 und nennt jeden Zylinder einmal.</translation>
        </message>
        <message>
            <source>Left magneto fires before top dead centre</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Linker Magnetzünder zündet vor dem oberen Totpunkt</translation>
        </message>
        <message>
            <source>Crank degrees before top dead centre at which the left magneto should fire No. 1.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Kurbelgrade vor OT, bei denen der linke Magnetzünder Nr. 1 zünden soll.</translation>
        </message>
        <message>
            <source>Larger is earlier; staggered settings, left unlike right, are allowed.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Größer ist früher; versetzte Einstellungen, links anders als rechts, sind erlaubt.</translation>
        </message>
        <message>
            <source>Right magneto fires before top dead centre</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Rechter Magnetzünder zündet vor dem oberen Totpunkt</translation>
        </message>
        <message>
            <source>Crank degrees before top dead centre at which the right magneto should fire No. 1.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Kurbelgrade vor OT, bei denen der rechte Magnetzünder Nr. 1 zünden soll.</translation>
        </message>
        <message>
            <source>An engine with a single magneto has the same figure twice.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Ein Motor mit nur einem Magnetzünder hat zweimal denselben Wert.</translation>
        </message>
        <message>
            <source>Timing tolerance</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Toleranz Zündzeitpunkt</translation>
        </message>
        <message>
            <source>How far off the wanted timing either magneto may fire, either way.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Wie weit jeder Magnetzünder vom gewünschten Zündzeitpunkt abweichen darf, nach beiden Seiten.</translation>
        </message>
        <message>
            <source>Above 0: no reading is ever exact.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Über 0: keine Ablesung ist je genau.</translation>
        </message>
        <message>
            <source>Synchronising tolerance</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Toleranz Gleichlauf</translation>
        </message>
        <message>
            <source>How far apart the two magnetos may fire, beyond a wanted stagger.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Wie weit die beiden Magnetzünder auseinander zünden dürfen, über einen gewünschten Versatz hinaus.</translation>
        </message>
        <message>
            <source>Stroke</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Hub</translation>
        </message>
        <message>
            <source>How far the piston travels from one dead centre to the other.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Wie weit der Kolben von einem Totpunkt zum anderen läuft.</translation>
        </message>
        <message>
            <source>Above 0, and below twice the rod's length.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Über 0 und unter der doppelten Pleuellänge.</translation>
        </message>
        <message>
            <source>Connecting rod</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Pleuel</translation>
        </message>
        <message>
            <source>From the centre of its big end to that of its piston pin; the master rod's in a radial.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Von der Mitte des Pleuelfußes bis zur Mitte des Kolbenbolzens; beim Sternmotor das Hauptpleuel.</translation>
        </message>
        <message>
            <source>Longer than half the stroke, or the crank could not turn.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Länger als der halbe Hub, sonst könnte die Kurbelwelle nicht drehen.</translation>
        </message>
        <message>
            <source>Cylinder of the master rod</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Zylinder des Hauptpleuels</translation>
        </message>
        <message>
            <source>The cylinder whose rod carries all others.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Der Zylinder, dessen Pleuel alle anderen trägt.</translation>
        </message>
        <message>
            <source>One of the engine's cylinders.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Einer der Zylinder des Motors.</translation>
        </message>
        <message>
            <source>Radius of the knuckle pins</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Radius der Anlenkbolzen</translation>
        </message>
        <message>
            <source>From the crank pin's centre to the pins of the link rods.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Von der Mitte des Kurbelzapfens bis zu den Bolzen der Nebenpleuel.</translation>
        </message>
        <message>
            <source>0 or more; 0 gives evenly spaced dead centres.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>0 oder mehr; 0 ergibt gleichmäßig verteilte Totpunkte.</translation>
        </message>
        <message>
            <source>From the knuckle pin's centre to the piston pin's.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Von der Mitte des Anlenkbolzens bis zu der des Kolbenbolzens.</translation>
        </message>
        <message>
            <source>Longer than half the stroke and the knuckle radius together.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Länger als halber Hub und Anlenkradius zusammen.</translation>
        </message>
        <message>
            <source>Angles of the knuckle pins</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Winkel der Anlenkbolzen</translation>
        </message>
        <message>
            <source>By cylinder number, from the master rod's axis in the direction of rotation.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Nach Zylindernummer, von der Achse des Hauptpleuels in Drehrichtung.</translation>
        </message>
        <message>
            <source>One for each cylinder, or none: then they stand as the cylinders do.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Einer je Zylinder oder keiner: dann stehen sie wie die Zylinder.</translation>
        </message>
        <message>
            <source>Magneto</source>
            <extracomment>bench/own_engine_fields.py, classroom/key.py, job/document.py, job/parts.py, job/sheet.py, job/shift_plan.py, practice/paper.py, spec/formats.py, ui/lamp_box.py, ui/menus.py</extracomment>
            <translation>Magnetzünder</translation>
        </message>
        <message>
            <source>The magneto that is mounted.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Der angebaute Magnetzünder.</translation>
        </message>
        <message>
            <source>A complete magneto: of this window, shipped, or a file.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Ein vollständiger Magnetzünder: aus diesem Fenster, mitgeliefert oder als Datei.</translation>
        </message>
        <message>
            <source>Engine</source>
            <extracomment>bench/own_engine_fields.py, job/document.py, job/sheet.py, job/shift_plan.py, practice/paper.py, spec/formats.py</extracomment>
            <translation>Motor</translation>
        </message>
        <message>
            <source>The engine that it is mounted on.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Der Motor, an den er angebaut ist.</translation>
        </message>
        <message>
            <source>A complete engine: of this window, shipped, or a file.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Ein vollständiger Motor: aus diesem Fenster, mitgeliefert oder als Datei.</translation>
        </message>
        <message>
            <source>Mounted</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Angebaut</translation>
        </message>
        <message>
            <source>Which of the engine's magnetos it is, seen from the pilot's seat.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Welcher der Magnetzünder des Motors er ist, vom Pilotensitz gesehen.</translation>
        </message>
        <message>
            <source>Left or right of two, or the single one.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Linker oder rechter von zweien oder der einzige.</translation>
        </message>
        <message>
            <source>Teeth on the magneto's side</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Zähne der Magnetzünderseite</translation>
        </message>
        <message>
            <source>Teeth of the disc's face that the magneto's flange sits in.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Zähne der Scheibenseite, in der der Magnetzünderflansch sitzt.</translation>
        </message>
        <message>
            <source>A whole number; one more or fewer than the other side makes the finest steps.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Eine ganze Zahl; eins mehr oder weniger als die andere Seite ergibt die feinsten Schritte.</translation>
        </message>
        <message>
            <source>Teeth on the drive's side</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Zähne der Antriebsseite</translation>
        </message>
        <message>
            <source>Teeth of the disc's face that the drive's flange sits in.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Zähne der Scheibenseite, in der der Antriebsflansch sitzt.</translation>
        </message>
        <message>
            <source>Rotor turns per crank turn</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Rotordrehungen je Kurbeldrehung</translation>
        </message>
        <message>
            <source>How fast the drive turns the rotor; cylinders over twice the poles, for a spark a pole.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Wie schnell der Antrieb den Rotor dreht; Zylinder geteilt durch doppelte Polzahl, für einen Funken je Pol.</translation>
        </message>
        <message>
            <source>Above 0: count ten turns of the propeller, plugs out, to be sure.</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Über 0: zur Sicherheit zehn Propellerumdrehungen zählen, Kerzen ausgebaut.</translation>
        </message>
        <message>
            <source>radial</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Stern</translation>
        </message>
        <message>
            <source>in line</source>
            <extracomment>bench/own_engine_fields.py, job/words.py</extracomment>
            <translation>in Linie</translation>
        </message>
        <message>
            <source>opposed</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>Boxer</translation>
        </message>
        <message>
            <source>vee</source>
            <extracomment>bench/own_engine_fields.py</extracomment>
            <translation>V-Form</translation>
        </message>
        <message>
            <source>clockwise</source>
            <extracomment>bench/own_engine_fields.py, bench/own_magneto_fields.py, bench/words.py, classroom/drawings.py, ui/crank_view.py</extracomment>
            <translation>im Uhrzeigersinn</translation>
        </message>
        <message>
            <source>anticlockwise</source>
            <extracomment>bench/own_engine_fields.py, bench/own_magneto_fields.py, bench/words.py, classroom/drawings.py, ui/crank_view.py</extracomment>
            <translation>gegen den Uhrzeigersinn</translation>
        </message>
        <message>
            <source>left</source>
            <extracomment>bench/own_engine_fields.py, classroom/key.py, job/document.py, job/words.py, ui/class_editor_fields.py, ui/class_editor_rows.py, ui/job_drift_sheet.py, ui/job_kinds.py</extracomment>
            <translation>links</translation>
        </message>
        <message>
            <source>right</source>
            <extracomment>bench/own_engine_fields.py, classroom/key.py, job/document.py, job/words.py, ui/class_editor_fields.py, ui/class_editor_rows.py, ui/job_kinds.py</extracomment>
            <translation>rechts</translation>
        </message>
        <message>
            <source>single</source>
            <extracomment>bench/own_engine_fields.py, job/document.py, ui/class_editor_fields.py, ui/job_kinds.py</extracomment>
            <translation>einzeln</translation>
        </message>
        <message>
            <source>“{piece}” is not one number: separate the values by semicolons, such as 0; 90.5; 180</source>
            <extracomment>bench/own_entry.py</extracomment>
            <translation>„{piece}“ ist nicht eine Zahl: Werte durch Strichpunkte trennen, z. B. 0; 90.5; 180</translation>
        </message>
        <message>
            <source>maker's manual</source>
            <extracomment>bench/own_fields.py</extracomment>
            <translation>Herstellerhandbuch</translation>
        </message>
        <message>
            <source>measured</source>
            <extracomment>bench/own_fields.py</extracomment>
            <translation>gemessen</translation>
        </message>
        <message>
            <source>worked out</source>
            <extracomment>bench/own_fields.py</extracomment>
            <translation>berechnet</translation>
        </message>
        <message>
            <source>assumed</source>
            <extracomment>bench/own_fields.py</extracomment>
            <translation>angenommen</translation>
        </message>
        <message>
            <source>from a shipped file</source>
            <extracomment>bench/own_fields.py</extracomment>
            <translation>aus mitgelieferter Datei</translation>
        </message>
        <message>
            <source>{file}: is neither a magneto's nor an engine's nor an installation's file</source>
            <extracomment>bench/own_files.py</extracomment>
            <translation>{file}: ist weder eine Magnetzünder- noch eine Motor- noch eine Einbaudatei</translation>
        </message>
        <message>
            <source>this is not complete yet: what is missing or refused is marked at its field</source>
            <extracomment>bench/own_files.py</extracomment>
            <translation>dies ist noch nicht vollständig: was fehlt oder abgelehnt wird, ist am Feld markiert</translation>
        </message>
        <message>
            <source>{file}: holds no drafts; its format must be "{format}"</source>
            <extracomment>bench/own_files.py</extracomment>
            <translation>{file}: enthält keine Entwürfe; das Format muss „{format}“ sein</translation>
        </message>
        <message>
            <source>Allowed: {low} to {high}.</source>
            <extracomment>bench/own_limits.py</extracomment>
            <translation>Zulässig: {low} bis {high}.</translation>
        </message>
        <message>
            <source>Allowed: between {low} and {high}, neither included.</source>
            <extracomment>bench/own_limits.py</extracomment>
            <translation>Zulässig: zwischen {low} und {high}, beide ausgeschlossen.</translation>
        </message>
        <message>
            <source>Allowed: above {low}, up to {high}.</source>
            <extracomment>bench/own_limits.py</extracomment>
            <translation>Zulässig: über {low}, bis {high}.</translation>
        </message>
        <message>
            <source>Allowed: {low} and more, below {high}.</source>
            <extracomment>bench/own_limits.py</extracomment>
            <translation>Zulässig: ab {low}, unter {high}.</translation>
        </message>
        <message>
            <source>What it is</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Was es ist</translation>
        </message>
        <message>
            <source>From the data plate and the maker's manual; no tools yet.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Vom Typenschild und aus dem Herstellerhandbuch; noch kein Werkzeug.</translation>
        </message>
        <message>
            <source>Cam and lobes</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Nockenscheibe und Nocken</translation>
        </message>
        <message>
            <source>Degree disc on the cam, dial gauge at the heel or at the contacts.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Gradscheibe an der Nockenscheibe, Messuhr am Gleitstück oder an den Kontakten.</translation>
        </message>
        <message>
            <source>Breaker arm</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Unterbrecherhebel</translation>
        </message>
        <message>
            <source>Calliper or rule on the arm, taken out. With a traced lift only the contact arm is needed.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Messschieber oder Maßstab am ausgebauten Hebel. Bei abgetastetem Hub genügt der Kontaktarm.</translation>
        </message>
        <message>
            <source>Contacts and screw</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Kontakte und Schraube</translation>
        </message>
        <message>
            <source>Dial gauge on the fixed contact while the screw is turned, lock screw slack.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Messuhr am festen Kontakt, während die Schraube gedreht wird, Sicherungsschraube gelöst.</translation>
        </message>
        <message>
            <source>Plate and setting</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Platte und Einstellung</translation>
        </message>
        <message>
            <source>The scale on the plate, and the gap by blades when the contacts open exactly at the E-gap.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Die Skala auf der Platte und der Kontaktabstand mit Fühlerlehre, wenn die Kontakte genau am E-Gap öffnen.</translation>
        </message>
        <message>
            <source>E-gap and limits</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>E-Gap und Grenzwerte</translation>
        </message>
        <message>
            <source>From the maker's current manual, which governs; radius of the rim marks by calliper.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Aus dem gültigen Herstellerhandbuch; dieses ist maßgebend; Radius der Randmarken mit Messschieber.</translation>
        </message>
        <message>
            <source>Pull of the magnet</source>
            <extracomment>bench/own_magneto_fields.py, ui/plot_coil.py</extracomment>
            <translation>Zug des Magneten</translation>
        </message>
        <message>
            <source>Spring balance on an arm at the drive shaft. Not known? Leave all three empty.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Federwaage an einem Arm auf der Antriebswelle. Unbekannt? Alle drei leer lassen.</translation>
        </message>
        <message>
            <source>Coil</source>
            <extracomment>bench/own_magneto_fields.py, ui/plot_coil.py, ui/plot_pane.py</extracomment>
            <translation>Spule</translation>
        </message>
        <message>
            <source>Bridge and ohmmeter at the primary, if you have them. Not known? Leave all five empty.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Messbrücke und Ohmmeter an der Primärwicklung, falls vorhanden. Unbekannt? Alle fünf leer lassen.</translation>
        </message>
        <message>
            <source>Condition</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Zustand</translation>
        </message>
        <message>
            <source>What wear and handling have done. New or not known? Leave it empty.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Was Verschleiß und Gebrauch bewirkt haben. Neu oder unbekannt? Leer lassen.</translation>
        </message>
        <message>
            <source>What you call this magneto: type, number, aircraft.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Wie Sie diesen Magnetzünder nennen: Typ, Nummer, Flugzeug.</translation>
        </message>
        <message>
            <source>One line of up to 120 characters, so that it fits on sheets and titles.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Eine Zeile mit bis zu 120 Zeichen, damit sie auf Blätter und in Titel passt.</translation>
        </message>
        <message>
            <source>Notes</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Notizen</translation>
        </message>
        <message>
            <source>Anything that the next person should know.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Alles, was der Nächste wissen sollte.</translation>
        </message>
        <message>
            <source>Up to 4000 characters.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Bis zu 4000 Zeichen.</translation>
        </message>
        <message>
            <source>Rotation</source>
            <extracomment>bench/own_magneto_fields.py, job/shift_plan.py, practice/paper.py</extracomment>
            <translation>Drehrichtung</translation>
        </message>
        <message>
            <source>Which way the rotor turns in service, seen from the drive end.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Wie herum der Rotor im Betrieb dreht, von der Antriebsseite gesehen.</translation>
        </message>
        <message>
            <source>Clockwise or anticlockwise; the breaker end sees the mirror image.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Im oder gegen den Uhrzeigersinn; die Unterbrecherseite sieht es spiegelbildlich.</translation>
        </message>
        <message>
            <source>Poles of the rotor</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Pole des Rotors</translation>
        </message>
        <message>
            <source>How many magnet poles the rotor has: the magnet's pull holds it at as many places a turn.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Wie viele Magnetpole der Rotor hat: an ebenso vielen Stellen je Umdrehung hält ihn der Magnetzug.</translation>
        </message>
        <message>
            <source>An even number, as north and south poles take turns.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Eine gerade Zahl, da Nord- und Südpole abwechseln.</translation>
        </message>
        <message>
            <source>Tops of the lobes</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Nockenspitzen</translation>
        </message>
        <message>
            <source>How far the cam turns from the top of lobe 1 to each top after it, in firing order.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Wie weit sich die Nockenscheibe von der Spitze von Nocken 1 bis zu jeder folgenden dreht, in Zündfolge.</translation>
        </message>
        <message>
            <source>Begins with 0 and increases below 360°; neighbouring lobes must not overlap.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Beginnt mit 0 und steigt unter 360°; benachbarte Nocken dürfen sich nicht überlappen.</translation>
        </message>
        <message>
            <source>Cam turns per rotor turn</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Nockendrehungen je Rotordrehung</translation>
        </message>
        <message>
            <source>1 for a cam on the rotor's shaft, less for one on the distributor's shaft.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>1 für eine Nockenscheibe auf der Rotorwelle, weniger für eine auf der Verteilerwelle.</translation>
        </message>
        <message>
            <source>Counted by turning the rotor ten times by hand.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Gezählt, indem der Rotor zehnmal von Hand gedreht wird.</translation>
        </message>
        <message>
            <source>The lift is known as</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Der Hub ist bekannt als</translation>
        </message>
        <message>
            <source>Either a lobe drawn by a law of motion, or a table of lift traced with a gauge.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Entweder ein nach Bewegungsgesetz gezeichneter Nocken oder eine abgetastete Hubtabelle.</translation>
        </message>
        <message>
            <source>A traced lift needs fewer sizes of the arm; a drawn one needs fewer readings.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Abgetasteter Hub braucht weniger Hebelmaße; gezeichneter Nocken weniger Ablesungen.</translation>
        </message>
        <message>
            <source>Base circle's radius</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Radius des Grundkreises</translation>
        </message>
        <message>
            <source>From the cam's centre to its low part: half of what a calliper reads across it.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Von der Nockenmitte bis zum niedrigen Teil: die Hälfte dessen, was ein Messschieber darüber misst.</translation>
        </message>
        <message>
            <source>Above 0; with the heel's radius it must be within the arm's reach.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Über 0; mit dem Radius des Gleitstücks muss er in Reichweite des Hebels liegen.</translation>
        </message>
        <message>
            <source>Height of the lobe</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Höhe des Nockens</translation>
        </message>
        <message>
            <source>How much further from the centre the top stands than the low part.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Wie viel weiter von der Mitte die Spitze steht als der niedrige Teil.</translation>
        </message>
        <message>
            <source>Its lift at the contacts must exceed the gap, or they would never close.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Der Hub an den Kontakten muss größer als der Kontaktabstand sein, sonst würden sie nie schließen.</translation>
        </message>
        <message>
            <source>Rise</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Anstieg</translation>
        </message>
        <message>
            <source>Cam degrees from the low part to the top, on the side that meets the heel first.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Nockengrade vom niedrigen Teil zur Spitze, auf der Seite, die das Gleitstück zuerst trifft.</translation>
        </message>
        <message>
            <source>Rise, dwell and fall together must fit between two tops.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Anstieg, Rast und Abfall zusammen müssen zwischen zwei Spitzen passen.</translation>
        </message>
        <message>
            <source>Flat at the top</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Rast an der Spitze</translation>
        </message>
        <message>
            <source>Cam degrees over which the lobe stays at its full height.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Nockengrade, über die der Nocken auf voller Höhe bleibt.</translation>
        </message>
        <message>
            <source>May be 0; rise, dwell and fall together must fit between two tops.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Darf 0 sein; Anstieg, Rast und Abfall zusammen müssen zwischen zwei Spitzen passen.</translation>
        </message>
        <message>
            <source>Fall</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Abfall</translation>
        </message>
        <message>
            <source>Cam degrees from the top down to the low part again.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Nockengrade von der Spitze zurück zum niedrigen Teil.</translation>
        </message>
        <message>
            <source>Law of motion</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Bewegungsgesetz</translation>
        </message>
        <message>
            <source>How the lobe's height grows along the rise; take modified sine if nobody knows.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Wie die Nockenhöhe im Anstieg wächst; wenn niemand es weiß: modifizierter Sinus.</translation>
        </message>
        <message>
            <source>One of the standard laws: they differ little near the middle of the flank.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Eines der üblichen Gesetze: nahe der Flankenmitte unterscheiden sie sich wenig.</translation>
        </message>
        <message>
            <source>Angles of the traced lift</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Winkel des abgetasteten Hubs</translation>
        </message>
        <message>
            <source>Cam degrees from the lobe's top, before it below 0, as many as there are lifts.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Nockengrade ab der Nockenspitze, davor unter 0, so viele wie Hübe.</translation>
        </message>
        <message>
            <source>Five values or more that increase; 0 lies on the top.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Fünf oder mehr ansteigende Werte; 0 liegt auf der Spitze.</translation>
        </message>
        <message>
            <source>Lifts at the contacts</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Hübe an den Kontakten</translation>
        </message>
        <message>
            <source>How far the moving contact is lifted at each of those angles.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Wie weit der bewegliche Kontakt bei jedem dieser Winkel abgehoben ist.</translation>
        </message>
        <message>
            <source>Begins and ends with 0, rises to one top and falls again without dips.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Beginnt und endet mit 0, steigt zu einer Spitze und fällt wieder, ohne Senken.</translation>
        </message>
        <message>
            <source>Pivot to contact</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Drehpunkt bis Kontakt</translation>
        </message>
        <message>
            <source>From the pivot's centre to the middle of the moving contact.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Von der Mitte des Drehpunkts bis zur Mitte des beweglichen Kontakts.</translation>
        </message>
        <message>
            <source>Above 0: it tells how much the contacts lift when the heel does.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Über 0: sagt, wie viel die Kontakte abheben, wenn das Gleitstück es tut.</translation>
        </message>
        <message>
            <source>Pivot to heel</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Drehpunkt bis Gleitstück</translation>
        </message>
        <message>
            <source>From the pivot's centre to the centre of the heel's rounding.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Von der Mitte des Drehpunkts bis zur Mitte der Rundung des Gleitstücks.</translation>
        </message>
        <message>
            <source>Such that the heel reaches the cam, from its low part to the lobe's top.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>So, dass das Gleitstück die Nockenscheibe vom niedrigen Teil bis zur Nockenspitze erreicht.</translation>
        </message>
        <message>
            <source>Pivot to cam</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Drehpunkt bis Nockenmitte</translation>
        </message>
        <message>
            <source>From the pivot's centre to the cam's centre.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Von der Mitte des Drehpunkts bis zur Mitte der Nockenscheibe.</translation>
        </message>
        <message>
            <source>The pivot must stand outside the lobe's top.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Der Drehpunkt muss außerhalb der Nockenspitze stehen.</translation>
        </message>
        <message>
            <source>Rounding of the heel</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Rundung des Gleitstücks</translation>
        </message>
        <message>
            <source>Radius of the rubbing face that rides on the cam.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Radius der Gleitfläche, die auf dem Nocken läuft.</translation>
        </message>
        <message>
            <source>Not so large that it would ride over a hollow of the cam.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Nicht so groß, dass sie eine Mulde der Nockenscheibe überbrückt.</translation>
        </message>
        <message>
            <source>Pivot stands</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Drehpunkt steht</translation>
        </message>
        <message>
            <source>Behind: the turning cam passes the pivot first and then the heel, which trails.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Dahinter: die drehende Nockenscheibe läuft zuerst am Drehpunkt vorbei, dann am nachlaufenden Gleitstück.</translation>
        </message>
        <message>
            <source>Behind or ahead: it decides which way the heel wanders along the cam.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Dahinter oder davor: bestimmt, wohin das Gleitstück auf der Nockenscheibe wandert.</translation>
        </message>
        <message>
            <source>Pivot's place in the drawing</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Lage des Drehpunkts im Bild</translation>
        </message>
        <message>
            <source>Clockwise from the top, seen from the breaker end with the plate at 0.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Im Uhrzeigersinn von oben, von der Unterbrecherseite gesehen, Platte auf 0.</translation>
        </message>
        <message>
            <source>Any angle: only the drawing needs it, no reading does.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Beliebiger Winkel: nur die Zeichnung braucht ihn, keine Ablesung.</translation>
        </message>
        <message>
            <source>Contact screw</source>
            <extracomment>bench/own_magneto_fields.py, job/parts.py, practice/paper.py</extracomment>
            <translation>Kontaktschraube</translation>
        </message>
        <message>
            <source>What the screw does: turn an eccentric, or drive the contact by its thread.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Was die Schraube tut: einen Exzenter drehen oder den Kontakt über ihr Gewinde bewegen.</translation>
        </message>
        <message>
            <source>Eccentric or threaded.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Exzenter oder Gewinde.</translation>
        </message>
        <message>
            <source>Throw of the eccentric</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Exzentrizität</translation>
        </message>
        <message>
            <source>How far the fixed contact moves from the middle when the screw turns a quarter.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Wie weit der feste Kontakt bei einer Viertelumdrehung der Schraube aus der Mitte wandert.</translation>
        </message>
        <message>
            <source>Above 0: half of the whole to and fro.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Über 0: die Hälfte des ganzen Hin und Her.</translation>
        </message>
        <message>
            <source>Lead of the thread</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Gewindesteigung</translation>
        </message>
        <message>
            <source>How far the fixed contact moves in one whole turn of the screw.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Wie weit der feste Kontakt bei einer ganzen Umdrehung der Schraube wandert.</translation>
        </message>
        <message>
            <source>Above 0.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Über 0.</translation>
        </message>
        <message>
            <source>Screw's travel, towards wider</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Schraubenweg, Richtung weiter</translation>
        </message>
        <message>
            <source>How far the screw can be turned from its middle so that the contacts open.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Wie weit sich die Schraube aus der Mitte drehen lässt, sodass die Kontakte öffnen.</translation>
        </message>
        <message>
            <source>0 or below: the middle, 0, must lie within the travel.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>0 oder darunter: die Mitte, 0, muss im Weg liegen.</translation>
        </message>
        <message>
            <source>Screw's travel, towards closer</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Schraubenweg, Richtung enger</translation>
        </message>
        <message>
            <source>How far the screw can be turned from its middle so that the contacts close.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Wie weit sich die Schraube aus der Mitte drehen lässt, sodass die Kontakte schließen.</translation>
        </message>
        <message>
            <source>0 or above: the middle, 0, must lie within the travel.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>0 oder darüber: die Mitte, 0, muss im Weg liegen.</translation>
        </message>
        <message>
            <source>Contacts come closer</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Kontakte werden enger</translation>
        </message>
        <message>
            <source>Which way the screw is turned to bring them closer, looking at its head.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Wie herum die Schraube zum Engerstellen gedreht wird, auf ihren Kopf gesehen.</translation>
        </message>
        <message>
            <source>Plate against rotation, to</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Platte gegen Drehrichtung, bis</translation>
        </message>
        <message>
            <source>How far the slots let the plate turn against the cam's rotation, below 0.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Wie weit die Langlöcher die Platte gegen die Nockendrehung drehen lassen, unter 0.</translation>
        </message>
        <message>
            <source>Below the other end.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Unter dem anderen Ende.</translation>
        </message>
        <message>
            <source>Plate with rotation, to</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Platte in Drehrichtung, bis</translation>
        </message>
        <message>
            <source>How far the slots let the plate turn with the cam's rotation, above 0.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Wie weit die Langlöcher die Platte mit der Nockendrehung drehen lassen, über 0.</translation>
        </message>
        <message>
            <source>Above the other end.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Über dem anderen Ende.</translation>
        </message>
        <message>
            <source>Plate as set</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Platte wie eingestellt</translation>
        </message>
        <message>
            <source>Where the plate stood in a setting that opened exactly at the E-gap, screw at 0.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Wo die Platte bei einer Einstellung stand, die genau am E-Gap öffnete, Schraube auf 0.</translation>
        </message>
        <message>
            <source>Within the plate's slots.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Innerhalb der Langlöcher der Platte.</translation>
        </message>
        <message>
            <source>Gap as set</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Kontaktabstand wie eingestellt</translation>
        </message>
        <message>
            <source>The largest gap that this setting had, by blades on lobe 1.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Der größte Kontaktabstand dieser Einstellung, mit Fühlerlehre an Nocken 1.</translation>
        </message>
        <message>
            <source>Below the contact lift at the lobe's top, or the contacts would never close.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Unter dem Kontakthub an der Nockenspitze, sonst würden die Kontakte nie schließen.</translation>
        </message>
        <message>
            <source>Rotor degrees past neutral at which the contacts should open.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Rotorgrade nach der Neutralstellung, bei denen die Kontakte öffnen sollen.</translation>
        </message>
        <message>
            <source>Above 0 and short of full register, half of the way to the next neutral.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Über 0 und vor der vollen Überdeckung, dem halben Weg zur nächsten Neutralstellung.</translation>
        </message>
        <message>
            <source>Smallest gap allowed</source>
            <extracomment>bench/own_magneto_fields.py, job/parts.py</extracomment>
            <translation>Kleinster zulässiger Abstand</translation>
        </message>
        <message>
            <source>The maker's lower limit of the largest gap.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Untere Grenze des Herstellers für den größten Kontaktabstand.</translation>
        </message>
        <message>
            <source>Below the upper limit.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Unter der oberen Grenze.</translation>
        </message>
        <message>
            <source>Largest gap allowed</source>
            <extracomment>bench/own_magneto_fields.py, job/parts.py</extracomment>
            <translation>Größter zulässiger Abstand</translation>
        </message>
        <message>
            <source>The maker's upper limit of the largest gap.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Obere Grenze des Herstellers für den größten Kontaktabstand.</translation>
        </message>
        <message>
            <source>Above the lower limit.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Über der unteren Grenze.</translation>
        </message>
        <message>
            <source>Radius of the rim marks</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Radius der Randmarken</translation>
        </message>
        <message>
            <source>From the cam's centre to the marks that the straightedge is laid against.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Von der Nockenmitte bis zu den Marken, an die das Lineal gelegt wird.</translation>
        </message>
        <message>
            <source>Above 0: it turns degrees into what is seen at the rim.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Über 0: rechnet Grade in das um, was am Rand zu sehen ist.</translation>
        </message>
        <message>
            <source>Tolerance at the marks</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Toleranz an den Marken</translation>
        </message>
        <message>
            <source>How far beside the mark the straightedge may point when the contacts open.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Wie weit das Lineal neben die Marke zeigen darf, wenn die Kontakte öffnen.</translation>
        </message>
        <message>
            <source>Above 0: the maker's figure, or the width of the mark.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Über 0: der Wert des Herstellers oder die Breite der Marke.</translation>
        </message>
        <message>
            <source>Greatest pull</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Größter Zug</translation>
        </message>
        <message>
            <source>Torque needed to turn the rotor out of neutral at its worst place.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Drehmoment, um den Rotor an der schwersten Stelle aus der Neutralstellung zu drehen.</translation>
        </message>
        <message>
            <source>0 or more: force times arm.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>0 oder mehr: Kraft mal Hebelarm.</translation>
        </message>
        <message>
            <source>Inertia of the rotor</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Trägheit des Rotors</translation>
        </message>
        <message>
            <source>How sluggish the rotor is, with what hangs on its shaft.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Wie träge der Rotor ist, mit allem, was an seiner Welle hängt.</translation>
        </message>
        <message>
            <source>Above 0, or it would swing without end of speed.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Über 0, sonst würde er unbegrenzt schnell schwingen.</translation>
        </message>
        <message>
            <source>Damping</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Dämpfung</translation>
        </message>
        <message>
            <source>Friction that grows with speed: what brings the swing to rest.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Mit der Drehzahl wachsende Reibung: was das Schwingen zur Ruhe bringt.</translation>
        </message>
        <message>
            <source>0 or more; only the swing on the screen needs it.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>0 oder mehr; nur das Schwingen am Bildschirm braucht sie.</translation>
        </message>
        <message>
            <source>Turns of the primary</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Windungen der Primärwicklung</translation>
        </message>
        <message>
            <source>How many turns of thick wire the primary winding has.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Wie viele Windungen dicken Drahts die Primärwicklung hat.</translation>
        </message>
        <message>
            <source>1 or more.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>1 oder mehr.</translation>
        </message>
        <message>
            <source>Inductance of the primary</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Induktivität der Primärwicklung</translation>
        </message>
        <message>
            <source>Read with a bridge, the rotor at neutral and the contacts held open.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Mit der Messbrücke gemessen, Rotor in Neutralstellung, Kontakte offen gehalten.</translation>
        </message>
        <message>
            <source>Resistance of the primary</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Widerstand der Primärwicklung</translation>
        </message>
        <message>
            <source>Read with an ohmmeter that resolves hundredths, leads taken off the reading.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Mit einem Ohmmeter gemessen, das Hundertstel auflöst, Messleitungen abgezogen.</translation>
        </message>
        <message>
            <source>0 or more.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>0 oder mehr.</translation>
        </message>
        <message>
            <source>Greatest flux</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Größter Fluss</translation>
        </message>
        <message>
            <source>Flux through the core at full register.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Fluss durch den Kern bei voller Überdeckung.</translation>
        </message>
        <message>
            <source>0 or more; illustrative unless it was measured.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>0 oder mehr; nur zur Anschauung, sofern nicht gemessen.</translation>
        </message>
        <message>
            <source>Third harmonic of the flux</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Dritte Oberwelle des Flusses</translation>
        </message>
        <message>
            <source>How far the flux departs from a plain sine: 0 is a plain one.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Wie weit der Fluss vom reinen Sinus abweicht: 0 ist ein reiner.</translation>
        </message>
        <message>
            <source>Between −1 and 1; illustrative unless it was measured.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Zwischen −1 und 1; nur zur Anschauung, sofern nicht gemessen.</translation>
        </message>
        <message>
            <source>Heel worn by</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Gleitstück verschlissen um</translation>
        </message>
        <message>
            <source>How much of the rubbing face has gone since new.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Wie viel der Gleitfläche seit dem Neuzustand fehlt.</translation>
        </message>
        <message>
            <source>0 or more; needs the length from pivot to heel, to know what wear does.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>0 oder mehr; braucht das Maß Drehpunkt bis Gleitstück, um die Wirkung zu kennen.</translation>
        </message>
        <message>
            <source>Pip on the contacts</source>
            <extracomment>bench/own_magneto_fields.py, job/parts.py, practice/debrief.py</extracomment>
            <translation>Höcker auf den Kontakten</translation>
        </message>
        <message>
            <source>How high metal has built up on one contact: a blade feels so much less gap.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Wie hoch sich Metall auf einem Kontakt aufgebaut hat: um so viel weniger Abstand fühlt die Lehre.</translation>
        </message>
        <message>
            <source>Lobes late by</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Nocken später um</translation>
        </message>
        <message>
            <source>How far each lobe stands from its place, in cam degrees, late above 0.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Wie weit jeder Nocken von seinem Platz steht, in Nockengraden, später über 0.</translation>
        </message>
        <message>
            <source>As many values as there are lobes, or none; lobes must not overlap.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>So viele Werte wie Nocken oder keiner; Nocken dürfen sich nicht überlappen.</translation>
        </message>
        <message>
            <source>Lobes high by</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Nocken höher um</translation>
        </message>
        <message>
            <source>How much more than lobe 1 as new each lobe lifts the contacts.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Wie viel mehr als Nocken 1 im Neuzustand jeder Nocken die Kontakte abhebt.</translation>
        </message>
        <message>
            <source>As many values as there are lobes, or none; some lift must be left.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>So viele Werte wie Nocken oder keiner; etwas Hub muss bleiben.</translation>
        </message>
        <message>
            <source>Screw creeps by</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Schraube wandert um</translation>
        </message>
        <message>
            <source>How far tightening the lock screw carries the contact screw along, closer above 0.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Wie weit das Anziehen der Sicherungsschraube die Kontaktschraube mitnimmt, enger über 0.</translation>
        </message>
        <message>
            <source>Small: a quarter turn would be a broken screw.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Klein: eine Viertelumdrehung wäre eine defekte Schraube.</translation>
        </message>
        <message>
            <source>Play of the coupling</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Spiel der Kupplung</translation>
        </message>
        <message>
            <source>How far the rotor can be rocked with the drive held still.</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Wie weit sich der Rotor bei festgehaltenem Antrieb hin- und herbewegen lässt.</translation>
        </message>
        <message>
            <source>a law of motion</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>ein Bewegungsgesetz</translation>
        </message>
        <message>
            <source>a traced table</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>eine abgetastete Tabelle</translation>
        </message>
        <message>
            <source>harmonic</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>harmonisch</translation>
        </message>
        <message>
            <source>cycloidal</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>zykloidisch</translation>
        </message>
        <message>
            <source>polynomial 3-4-5</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Polynom 3-4-5</translation>
        </message>
        <message>
            <source>polynomial 4-5-6-7</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>Polynom 4-5-6-7</translation>
        </message>
        <message>
            <source>modified sine</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>modifizierter Sinus</translation>
        </message>
        <message>
            <source>modified trapezoid</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>modifiziertes Trapez</translation>
        </message>
        <message>
            <source>behind the heel</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>hinter dem Gleitstück</translation>
        </message>
        <message>
            <source>ahead of the heel</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>vor dem Gleitstück</translation>
        </message>
        <message>
            <source>turns an eccentric</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>dreht einen Exzenter</translation>
        </message>
        <message>
            <source>is threaded</source>
            <extracomment>bench/own_magneto_fields.py</extracomment>
            <translation>hat ein Gewinde</translation>
        </message>
        <message>
            <source>evenly spaced, one a spark of the rotor's turns</source>
            <extracomment>bench/own_measured.py</extracomment>
            <translation>gleichmäßig verteilt, eine je Funken der Rotordrehungen</translation>
        </message>
        <message>
            <source>poles over lobes, for a spark at every pole</source>
            <extracomment>bench/own_measured.py</extracomment>
            <translation>Pole geteilt durch Nocken, für einen Funken an jedem Pol</translation>
        </message>
        <message>
            <source>cylinders over twice the poles</source>
            <extracomment>bench/own_measured.py</extracomment>
            <translation>Zylinder geteilt durch doppelte Polzahl</translation>
        </message>
        <message>
            <source>connecting rod less the knuckle pins' radius</source>
            <extracomment>bench/own_measured.py</extracomment>
            <translation>Pleuel minus Radius der Anlenkbolzen</translation>
        </message>
        <message>
            <source>one trial on the bench</source>
            <extracomment>bench/own_measured.py</extracomment>
            <translation>eine Probe auf dem Prüftisch</translation>
        </message>
        <message>
            <source>{count} trials on the bench</source>
            <extracomment>bench/own_measured.py</extracomment>
            <translation>{count} Proben auf dem Prüftisch</translation>
        </message>
        <message>
            <source>there are no trials on the bench: note some on its page Trials first</source>
            <extracomment>bench/own_measured.py</extracomment>
            <translation>es sind keine Proben auf dem Prüftisch: zuerst einige auf seiner Seite Proben notieren</translation>
        </message>
        <message>
            <source>trials correct a complete magneto: begin from a shipped one and fill in what is known</source>
            <extracomment>bench/own_measured.py</extracomment>
            <translation>Proben berichtigen einen vollständigen Magnetzünder: von einem mitgelieferten ausgehen und eintragen, was bekannt ist</translation>
        </message>
        <message>
            <source>give the poles of the rotor and the cam's turns per rotor turn first</source>
            <extracomment>bench/own_measured.py</extracomment>
            <translation>zuerst die Pole des Rotors und die Nockendrehungen je Rotordrehung angeben</translation>
        </message>
        <message>
            <source>poles over the cam's turns per rotor turn is {lobes}; it must be a whole number from 1 to 36</source>
            <extracomment>bench/own_measured.py</extracomment>
            <translation>Pole geteilt durch Nockendrehungen je Rotordrehung ist {lobes}; es muss eine ganze Zahl von 1 bis 36 sein</translation>
        </message>
        <message>
            <source>give the poles of the rotor and the tops of the lobes first</source>
            <extracomment>bench/own_measured.py</extracomment>
            <translation>zuerst die Pole des Rotors und die Nockenspitzen angeben</translation>
        </message>
        <message>
            <source>give the connecting rod and the knuckle pins' radius first</source>
            <extracomment>bench/own_measured.py</extracomment>
            <translation>zuerst Pleuel und Radius der Anlenkbolzen angeben</translation>
        </message>
        <message>
            <source>this magneto is not on an engine</source>
            <extracomment>bench/state.py, job/feeds.py, practice/actions.py</extracomment>
            <translation>dieser Magnetzünder sitzt an keinem Motor</translation>
        </message>
        <message>
            <source>with this setting the contacts never open and close, so there is nothing to read</source>
            <extracomment>bench/sureness.py</extracomment>
            <translation>bei dieser Einstellung öffnen und schließen die Kontakte nie; es gibt also nichts abzulesen</translation>
        </message>
        <message>
            <source>Reading the offset</source>
            <extracomment>bench/sureness.py</extracomment>
            <translation>Ablesen der Abweichung</translation>
        </message>
        <message>
            <source>Straightedge</source>
            <extracomment>bench/sureness.py, ui/class_editor_fields.py, ui/practice_sight.py</extracomment>
            <translation>Lineal</translation>
        </message>
        <message>
            <source>Feeler blades</source>
            <extracomment>bench/sureness.py, ui/practice_tray.py</extracomment>
            <translation>Fühlerlehren</translation>
        </message>
        <message>
            <source>Drag of the blade</source>
            <extracomment>bench/sureness.py</extracomment>
            <translation>Schleifen der Lehre</translation>
        </message>
        <message>
            <source>Opening shown by</source>
            <extracomment>bench/sureness.py</extracomment>
            <translation>Öffnung angezeigt durch</translation>
        </message>
        <message>
            <source>Turning the rotor</source>
            <extracomment>bench/sureness.py, ui/practice_sight.py</extracomment>
            <translation>Drehen des Rotors</translation>
        </message>
        <message>
            <source>Turning the crank</source>
            <extracomment>bench/sureness.py</extracomment>
            <translation>Drehen der Kurbelwelle</translation>
        </message>
        <message>
            <source>Crank disc</source>
            <extracomment>bench/sureness.py</extracomment>
            <translation>Gradscheibe</translation>
        </message>
        <message>
            <source>Play</source>
            <extracomment>bench/sureness.py</extracomment>
            <translation>Spiel</translation>
        </message>
        <message>
            <source>Tightening</source>
            <extracomment>bench/sureness.py</extracomment>
            <translation>Anziehen</translation>
        </message>
        <message>
            <source>{name}: {value} ± {spread} (k = {k}); limits {low} to {high}: {percent} likely within them.</source>
            <extracomment>bench/sureness.py</extracomment>
            <translation>{name}: {value} ± {spread} (k = {k}); Grenzen {low} bis {high}: {percent} Wahrscheinlichkeit innerhalb.</translation>
        </message>
        <message>
            <source>What matters most: {name}, {share} of the variance ({source}).</source>
            <extracomment>bench/sureness.py</extracomment>
            <translation>Am wichtigsten: {name}, {share} der Varianz ({source}).</translation>
        </message>
        <message>
            <source>With {instead} instead of {was}: {after} likely all in limits, now {before}.</source>
            <extracomment>bench/sureness.py</extracomment>
            <translation>Mit {instead} statt {was}: {after} Wahrscheinlichkeit, alles in den Grenzen, jetzt {before}.</translation>
        </message>
        <message>
            <source>under 1 %</source>
            <extracomment>bench/sureness.py</extracomment>
            <translation>unter 1 %</translation>
        </message>
        <message>
            <source>over 99 %</source>
            <extracomment>bench/sureness.py</extracomment>
            <translation>über 99 %</translation>
        </message>
        <message>
            <source>Breaker end</source>
            <extracomment>bench/told.py, ui/breaker_view.py</extracomment>
            <translation>Unterbrecherseite</translation>
        </message>
        <message>
            <source>Drive end: the coupling</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Antriebsseite: die Kupplung</translation>
        </message>
        <message>
            <source>Crank, timing disc and piston of No. 1</source>
            <extracomment>bench/told.py, ui/crank_view.py</extracomment>
            <translation>Kurbelwelle, Gradscheibe und Kolben von Nr. 1</translation>
        </message>
        <message>
            <source>Switch lead</source>
            <extracomment>bench/told.py, classroom/blanks.py, practice/debrief.py, ui/panes.py, ui/practice_notebook.py, ui/practice_work.py</extracomment>
            <translation>Kurzschlussleitung</translation>
        </message>
        <message>
            <source>rotor</source>
            <extracomment>bench/told.py, bench/words.py, ui/breaker_hands.py</extracomment>
            <translation>Rotor</translation>
        </message>
        <message>
            <source>pole shoe</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation>Polschuh</translation>
        </message>
        <message>
            <source>cam</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation>Nockenscheibe</translation>
        </message>
        <message>
            <source>heel</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation>Gleitstück</translation>
        </message>
        <message>
            <source>breaker arm</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation>Unterbrecherhebel</translation>
        </message>
        <message>
            <source>pivot</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation>Drehpunkt</translation>
        </message>
        <message>
            <source>spring</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation>Feder</translation>
        </message>
        <message>
            <source>contact screw</source>
            <extracomment>bench/told.py, bench/words.py, ui/breaker_hands.py</extracomment>
            <translation>Kontaktschraube</translation>
        </message>
        <message>
            <source>lock screw</source>
            <extracomment>bench/told.py, bench/words.py, ui/setting_panel.py</extracomment>
            <translation>Sicherungsschraube</translation>
        </message>
        <message>
            <source>backplate</source>
            <extracomment>bench/told.py, bench/words.py, ui/breaker_hands.py</extracomment>
            <translation>Grundplatte</translation>
        </message>
        <message>
            <source>clamp screw</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation>Klemmschraube</translation>
        </message>
        <message>
            <source>step</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation>Stufe</translation>
        </message>
        <message>
            <source>rim mark</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation>Randmarke</translation>
        </message>
        <message>
            <source>A magnet whose poles alternate round it; the engine turns it.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Ein Magnet, dessen Pole rundum abwechseln; der Motor dreht ihn.</translation>
        </message>
        <message>
            <source>Iron that leads the magnet's field through the coil's core and back.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Eisen, das das Feld des Magneten durch den Spulenkern und zurück leitet.</translation>
        </message>
        <message>
            <source>It turns with the rotor, or in a fixed ratio to it, and has a lobe for each spark.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Sie dreht mit dem Rotor oder in festem Verhältnis zu ihm und hat für jeden Funken einen Nocken.</translation>
        </message>
        <message>
            <source>The block on the breaker arm that rides on the cam; it wears.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Der Block am Unterbrecherhebel, der auf dem Nocken läuft; er verschleißt.</translation>
        </message>
        <message>
            <source>It swings about its pivot and carries the moving contact.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Er schwingt um seinen Drehpunkt und trägt den beweglichen Kontakt.</translation>
        </message>
        <message>
            <source>The pin the breaker arm swings about.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Der Stift, um den der Unterbrecherhebel schwingt.</translation>
        </message>
        <message>
            <source>It presses the arm towards the cam and closes the contacts.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Sie drückt den Hebel zur Nockenscheibe und schließt die Kontakte.</translation>
        </message>
        <message>
            <source>As they part, the primary current breaks and the spark jumps.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Wenn sie sich trennen, reißt der Primärstrom ab und der Funke springt über.</translation>
        </message>
        <message>
            <source>It moves the fixed contact: nearer or further off, later or earlier.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Sie bewegt den festen Kontakt: näher oder weiter weg, später oder früher.</translation>
        </message>
        <message>
            <source>It holds the contact screw, and may carry it along as it is tightened.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Sie hält die Kontaktschraube und kann sie beim Anziehen mitnehmen.</translation>
        </message>
        <message>
            <source>It carries contacts and arm; turned about the cam it shifts the opening alone.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Sie trägt Kontakte und Hebel; um die Nockenscheibe gedreht, verstellt sie nur die Öffnung.</translation>
        </message>
        <message>
            <source>The clamp screws hold the backplate in its slots.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Die Klemmschrauben halten die Grundplatte in ihren Langlöchern.</translation>
        </message>
        <message>
            <source>An edge on the cam along which a straightedge is laid.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Eine Kante an der Nockenscheibe, an die ein Lineal gelegt wird.</translation>
        </message>
        <message>
            <source>With the straightedge in line with it, the rotor stands at the E-gap.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Fluchtet das Lineal mit ihr, steht der Rotor am E-Gap.</translation>
        </message>
        <message>
            <source>drive flange</source>
            <extracomment>bench/told.py, bench/words.py, job/coupling_picture.py, ui/drive_view.py</extracomment>
            <translation>Antriebsflansch</translation>
        </message>
        <message>
            <source>disc</source>
            <extracomment>bench/told.py, bench/words.py, job/coupling_picture.py, practice/state.py, ui/drive_view.py</extracomment>
            <translation>Scheibe</translation>
        </message>
        <message>
            <source>magneto flange</source>
            <extracomment>bench/told.py, bench/words.py, job/coupling_picture.py, ui/drive_view.py</extracomment>
            <translation>Magnetzünderflansch</translation>
        </message>
        <message>
            <source>painted mark</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation>Farbmarke</translation>
        </message>
        <message>
            <source>The engine turns it; its slots take the disc's outer teeth.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Der Motor dreht ihn; seine Nuten nehmen die äußeren Zähne der Scheibe auf.</translation>
        </message>
        <message>
            <source>It joins both flanges, with one more tooth or fewer on one face than on the other.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Sie verbindet beide Flansche und hat auf einer Seite einen Zahn mehr oder weniger als auf der anderen.</translation>
        </message>
        <message>
            <source>It sits on the rotor's shaft, in the disc's inner teeth.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Er sitzt auf der Rotorwelle, in den inneren Zähnen der Scheibe.</translation>
        </message>
        <message>
            <source>Paint across all three before anything is taken apart.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Vor jedem Zerlegen quer über alle drei malen.</translation>
        </message>
        <message>
            <source>crank</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation>Kurbelwelle</translation>
        </message>
        <message>
            <source>connecting rod</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation>Pleuel</translation>
        </message>
        <message>
            <source>piston pin</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation>Kolbenbolzen</translation>
        </message>
        <message>
            <source>piston</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation>Kolben</translation>
        </message>
        <message>
            <source>cylinder</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation>Zylinder</translation>
        </message>
        <message>
            <source>timing disc</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation>Gradscheibe</translation>
        </message>
        <message>
            <source>pointer</source>
            <extracomment>bench/told.py, bench/words.py</extracomment>
            <translation>Zeiger</translation>
        </message>
        <message>
            <source>It turns once for each up and down of the piston.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Sie dreht einmal für jedes Auf und Ab des Kolbens.</translation>
        </message>
        <message>
            <source>It joins crank and piston.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Es verbindet Kurbelwelle und Kolben.</translation>
        </message>
        <message>
            <source>The rod swings about it in the piston.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Das Pleuel schwingt um ihn im Kolben.</translation>
        </message>
        <message>
            <source>About top dead centre it hardly moves while the crank does.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Um den oberen Totpunkt bewegt er sich kaum, während die Kurbelwelle dreht.</translation>
        </message>
        <message>
            <source>No. 1 is the one that the timing is read on.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>An Nr. 1 wird der Zündzeitpunkt abgelesen.</translation>
        </message>
        <message>
            <source>Degrees before and after top dead centre, set to zero by the piston stop.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Grade vor und nach dem oberen Totpunkt, mit dem Kolbenanschlag auf null gestellt.</translation>
        </message>
        <message>
            <source>Fixed to the engine: it reads the disc.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Fest am Motor: er zeigt auf die Gradscheibe.</translation>
        </message>
        <message>
            <source>switch</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Schalter</translation>
        </message>
        <message>
            <source>The primary winding, grounded at one end.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Die Primärwicklung, an einem Ende an Masse.</translation>
        </message>
        <message>
            <source>Closed, they carry the primary current; open, they break it.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Geschlossen führen sie den Primärstrom; offen unterbrechen sie ihn.</translation>
        </message>
        <message>
            <source>It joins the lead to the magneto, and pulled, lets the spring tab touch the case.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Er verbindet die Leitung mit dem Magnetzünder; gezogen lässt er die Federzunge das Gehäuse berühren.</translation>
        </message>
        <message>
            <source>With the plug out it grounds the coil on the case – if it touches.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Bei gezogenem Stecker legt sie die Spule am Gehäuse an Masse – wenn sie berührt.</translation>
        </message>
        <message>
            <source>The wire to the switch; broken inside, it leaves the magneto live.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Der Draht zum Schalter; innen gebrochen lässt er den Magnetzünder scharf.</translation>
        </message>
        <message>
            <source>Off, it is closed and grounds the primary: no spark.</source>
            <extracomment>bench/told.py</extracomment>
            <translation>Auf Aus ist er geschlossen und legt die Primärwicklung an Masse: kein Funke.</translation>
        </message>
        <message>
            <source>Check the marks: disc in line with the drive flange's mark, magneto flange in line with the disc's mark.</source>
            <extracomment>bench/tooth_steps.py</extracomment>
            <translation>Marken prüfen: Scheibe fluchtet mit der Marke des Antriebsflansches, Magnetzünderflansch fluchtet mit der Marke der Scheibe.</translation>
        </message>
        <message>
            <source>Check the marks: disc in line with the drive flange's mark, magneto flange {flange} from the disc's mark.</source>
            <extracomment>bench/tooth_steps.py</extracomment>
            <translation>Marken prüfen: Scheibe fluchtet mit der Marke des Antriebsflansches, Magnetzünderflansch {flange} von der Marke der Scheibe.</translation>
        </message>
        <message>
            <source>Check the marks: disc {disc} from the drive flange's mark, magneto flange in line with the disc's mark.</source>
            <extracomment>bench/tooth_steps.py</extracomment>
            <translation>Marken prüfen: Scheibe {disc} von der Marke des Antriebsflansches, Magnetzünderflansch fluchtet mit der Marke der Scheibe.</translation>
        </message>
        <message>
            <source>Check the marks: disc {disc} from the drive flange's mark, magneto flange {flange} from the disc's mark.</source>
            <extracomment>bench/tooth_steps.py</extracomment>
            <translation>Marken prüfen: Scheibe {disc} von der Marke des Antriebsflansches, Magnetzünderflansch {flange} von der Marke der Scheibe.</translation>
        </message>
        <message>
            <source>One tooth of the magneto flange on the disc is {magneto}; of the disc on the drive flange {disc}; one with rotation at the flange and one against at the disc {both}.</source>
            <extracomment>bench/tooth_steps.py</extracomment>
            <translation>Ein Zahn des Magnetzünderflanschs auf der Scheibe sind {magneto}; der Scheibe auf dem Antriebsflansch {disc}; einer in Drehrichtung am Flansch und einer dagegen an der Scheibe {both}.</translation>
        </message>
        <message>
            <source>{magneto_teeth} teeth at the magneto, {drive_teeth} at the drive. The disc's marked tooth sits in magneto slot {magneto_slots} and in drive slot {drive_slots}.</source>
            <extracomment>bench/tooth_steps.py</extracomment>
            <translation>{magneto_teeth} Zähne am Magnetzünder, {drive_teeth} am Antrieb. Der markierte Zahn der Scheibe sitzt in Magnetzündernut {magneto_slots} und in Antriebsnut {drive_slots}.</translation>
        </message>
        <message>
            <source>Move the magneto flange {teeth} on the disc.</source>
            <extracomment>bench/tooth_steps.py</extracomment>
            <translation>Den Magnetzünderflansch auf der Scheibe {teeth} versetzen.</translation>
        </message>
        <message>
            <source>Move the disc {teeth} on the drive flange, the magneto flange with it.</source>
            <extracomment>bench/tooth_steps.py</extracomment>
            <translation>Die Scheibe auf dem Antriebsflansch {teeth} versetzen, den Magnetzünderflansch mit ihr.</translation>
        </message>
        <message>
            <source>{rotor}° of rotor = {crank}° of crank</source>
            <extracomment>bench/tooth_steps.py</extracomment>
            <translation>{rotor}° Rotor = {crank}° Kurbel</translation>
        </message>
        <message>
            <source>compensated cam: the opening is judged on lobe 1</source>
            <extracomment>bench/verdict.py</extracomment>
            <translation>kompensierte Nockenscheibe: die Öffnung wird an Nocken 1 beurteilt</translation>
        </message>
        <message>
            <source>never: they stay open</source>
            <extracomment>bench/verdict.py</extracomment>
            <translation>nie: sie bleiben offen</translation>
        </message>
        <message>
            <source>never: they stay closed</source>
            <extracomment>bench/verdict.py</extracomment>
            <translation>nie: sie bleiben geschlossen</translation>
        </message>
        <message>
            <source>{offset} past</source>
            <extracomment>bench/verdict.py</extracomment>
            <translation>{offset} dahinter</translation>
        </message>
        <message>
            <source>{offset} short</source>
            <extracomment>bench/verdict.py</extracomment>
            <translation>{offset} davor</translation>
        </message>
        <message>
            <source>opening of every lobe</source>
            <extracomment>bench/verdict.py</extracomment>
            <translation>Öffnung jedes Nockens</translation>
        </message>
        <message>
            <source>opening of lobe {lobes}</source>
            <extracomment>bench/verdict.py</extracomment>
            <translation>Öffnung von Nocken {lobes}</translation>
        </message>
        <message>
            <source>gap of every lobe</source>
            <extracomment>bench/verdict.py</extracomment>
            <translation>Abstand jedes Nockens</translation>
        </message>
        <message>
            <source>gap of lobe {lobes}</source>
            <extracomment>bench/verdict.py</extracomment>
            <translation>Abstand von Nocken {lobes}</translation>
        </message>
        <message>
            <source>After {hours} h: opens at the E-gap, largest gap {gap}; within limits.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>Nach {hours} h: öffnet am E-Gap, größter Kontaktabstand {gap}; in den Grenzen.</translation>
        </message>
        <message>
            <source>After {hours} h: opens at the E-gap, largest gap {gap}; out of limits.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>Nach {hours} h: öffnet am E-Gap, größter Kontaktabstand {gap}; außer den Grenzen.</translation>
        </message>
        <message>
            <source>After {hours} h: opens {angle} late, largest gap {gap}; within limits.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>Nach {hours} h: öffnet {angle} zu spät, größter Kontaktabstand {gap}; in den Grenzen.</translation>
        </message>
        <message>
            <source>After {hours} h: opens {angle} late, largest gap {gap}; out of limits.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>Nach {hours} h: öffnet {angle} zu spät, größter Kontaktabstand {gap}; außer den Grenzen.</translation>
        </message>
        <message>
            <source>After {hours} h: opens {angle} early, largest gap {gap}; within limits.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>Nach {hours} h: öffnet {angle} zu früh, größter Kontaktabstand {gap}; in den Grenzen.</translation>
        </message>
        <message>
            <source>After {hours} h: opens {angle} early, largest gap {gap}; out of limits.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>Nach {hours} h: öffnet {angle} zu früh, größter Kontaktabstand {gap}; außer den Grenzen.</translation>
        </message>
        <message>
            <source>Leaves its limits: {limits}.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>Verlässt seine Grenzen: {limits}.</translation>
        </message>
        <message>
            <source>The blade gap closes by {rate}.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>Der Lehrenabstand schließt sich um {rate}.</translation>
        </message>
        <message>
            <source>opens late</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>öffnet zu spät</translation>
        </message>
        <message>
            <source>opens late after {hours} h</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>öffnet zu spät nach {hours} h</translation>
        </message>
        <message>
            <source>opens early</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>öffnet zu früh</translation>
        </message>
        <message>
            <source>opens early after {hours} h</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>öffnet zu früh nach {hours} h</translation>
        </message>
        <message>
            <source>gap too small</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>Abstand zu klein</translation>
        </message>
        <message>
            <source>gap too small after {hours} h</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>Abstand zu klein nach {hours} h</translation>
        </message>
        <message>
            <source>gap too wide</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>Abstand zu groß</translation>
        </message>
        <message>
            <source>gap too wide after {hours} h</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>Abstand zu groß nach {hours} h</translation>
        </message>
        <message>
            <source>blade gap too small</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>Lehrenabstand zu klein</translation>
        </message>
        <message>
            <source>blade gap too small after {hours} h</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>Lehrenabstand zu klein nach {hours} h</translation>
        </message>
        <message>
            <source>never opens</source>
            <extracomment>bench/wear_words.py, classroom/blanks.py, practice/debrief.py, practice/goals.py, practice/readings.py</extracomment>
            <translation>öffnet nie</translation>
        </message>
        <message>
            <source>never opens after {hours} h</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>öffnet nie nach {hours} h</translation>
        </message>
        <message>
            <source>After {hours} h the contacts would not open and close any more.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>Nach {hours} h würden die Kontakte nicht mehr öffnen und schließen.</translation>
        </message>
        <message>
            <source>A blade would find {gap}: it rides on the pip, {pip} high, and the true gap is wider.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>Eine Fühlerlehre fände {gap}: sie liegt auf dem {pip} hohen Höcker auf, der wahre Abstand ist größer.</translation>
        </message>
        <message>
            <source>Out of limits already: {limits}. Set it first.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>Schon außer den Grenzen: {limits}. Zuerst einstellen.</translation>
        </message>
        <message>
            <source>At these rates nothing leaves its limits within {hours} h.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>Bei diesen Raten verlässt innerhalb von {hours} h nichts seine Grenzen.</translation>
        </message>
        <message>
            <source>{value} per 100 h ({low} to {high}, {probability} times in 100)</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>{value} je 100 h ({low} bis {high}, in {probability} von 100 Fällen)</translation>
        </message>
        <message>
            <source>Of that the heel wears {heel}, and the pip grows {pip}.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>Davon verschleißt das Gleitstück {heel}, und der Höcker wächst {pip}.</translation>
        </message>
        <message>
            <source>Note where it opened, too, to tell the heel's part from the pip's.</source>
            <extracomment>bench/wear_words.py</extracomment>
            <translation>Auch notieren, wo er öffnete, um den Anteil des Gleitstücks von dem des Höckers zu trennen.</translation>
        </message>
        <message>
            <source>turn the backplate {angle}° with rotation (clockwise seen from the breaker end)</source>
            <extracomment>bench/words.py</extracomment>
            <translation>die Grundplatte {angle}° in Drehrichtung drehen (im Uhrzeigersinn, von der Unterbrecherseite gesehen)</translation>
        </message>
        <message>
            <source>turn the backplate {angle}° with rotation (anticlockwise seen from the breaker end)</source>
            <extracomment>bench/words.py</extracomment>
            <translation>die Grundplatte {angle}° in Drehrichtung drehen (gegen den Uhrzeigersinn, von der Unterbrecherseite gesehen)</translation>
        </message>
        <message>
            <source>turn the backplate {angle}° against rotation (clockwise seen from the breaker end)</source>
            <extracomment>bench/words.py</extracomment>
            <translation>die Grundplatte {angle}° gegen die Drehrichtung drehen (im Uhrzeigersinn, von der Unterbrecherseite gesehen)</translation>
        </message>
        <message>
            <source>turn the backplate {angle}° against rotation (anticlockwise seen from the breaker end)</source>
            <extracomment>bench/words.py</extracomment>
            <translation>die Grundplatte {angle}° gegen die Drehrichtung drehen (gegen den Uhrzeigersinn, von der Unterbrecherseite gesehen)</translation>
        </message>
        <message>
            <source>turn the backplate {angle}° against rotation</source>
            <extracomment>bench/words.py</extracomment>
            <translation>die Grundplatte {angle}° gegen die Drehrichtung drehen</translation>
        </message>
        <message>
            <source>turn the contact screw {angle}° clockwise (contacts closer)</source>
            <extracomment>bench/words.py</extracomment>
            <translation>die Kontaktschraube {angle}° im Uhrzeigersinn drehen (Kontakte enger)</translation>
        </message>
        <message>
            <source>turn the contact screw {angle}° clockwise (contacts wider)</source>
            <extracomment>bench/words.py</extracomment>
            <translation>die Kontaktschraube {angle}° im Uhrzeigersinn drehen (Kontakte weiter)</translation>
        </message>
        <message>
            <source>turn the contact screw {angle}° anticlockwise (contacts closer)</source>
            <extracomment>bench/words.py</extracomment>
            <translation>die Kontaktschraube {angle}° gegen den Uhrzeigersinn drehen (Kontakte enger)</translation>
        </message>
        <message>
            <source>turn the contact screw {angle}° anticlockwise (contacts wider)</source>
            <extracomment>bench/words.py</extracomment>
            <translation>die Kontaktschraube {angle}° gegen den Uhrzeigersinn drehen (Kontakte weiter)</translation>
        </message>
        <message>
            <source>{count} teeth against rotation</source>
            <extracomment>bench/words.py</extracomment>
            <translation>{count} Zähne gegen die Drehrichtung</translation>
        </message>
        <message>
            <source>{move} (clockwise seen from the drive end)</source>
            <extracomment>bench/words.py</extracomment>
            <translation>{move} (im Uhrzeigersinn, von der Antriebsseite gesehen)</translation>
        </message>
        <message>
            <source>{move} (anticlockwise seen from the drive end)</source>
            <extracomment>bench/words.py</extracomment>
            <translation>{move} (gegen den Uhrzeigersinn, von der Antriebsseite gesehen)</translation>
        </message>
        <message>
            <source>{move} (clockwise seen from the breaker end)</source>
            <extracomment>bench/words.py</extracomment>
            <translation>{move} (im Uhrzeigersinn, von der Unterbrecherseite gesehen)</translation>
        </message>
        <message>
            <source>{move} (anticlockwise seen from the breaker end)</source>
            <extracomment>bench/words.py</extracomment>
            <translation>{move} (gegen den Uhrzeigersinn, von der Unterbrecherseite gesehen)</translation>
        </message>
        <message>
            <source>{move} (clockwise)</source>
            <extracomment>bench/words.py</extracomment>
            <translation>{move} (im Uhrzeigersinn)</translation>
        </message>
        <message>
            <source>{move} (anticlockwise)</source>
            <extracomment>bench/words.py</extracomment>
            <translation>{move} (gegen den Uhrzeigersinn)</translation>
        </message>
        <message>
            <source>direction of rotation</source>
            <extracomment>bench/words.py, job/coupling_picture.py</extracomment>
            <translation>Drehrichtung</translation>
        </message>
        <message>
            <source>plate scale</source>
            <extracomment>bench/words.py</extracomment>
            <translation>Plattenskala</translation>
        </message>
        <message>
            <source>rim</source>
            <extracomment>bench/words.py</extracomment>
            <translation>Rand</translation>
        </message>
        <message>
            <source>rotor scale</source>
            <extracomment>bench/words.py</extracomment>
            <translation>Rotorskala</translation>
        </message>
        <message>
            <source>straightedge</source>
            <extracomment>bench/words.py, practice/state.py</extracomment>
            <translation>Lineal</translation>
        </message>
        <message>
            <source>turn the backplate {angle}° with rotation</source>
            <extracomment>bench/words.py</extracomment>
            <translation>die Grundplatte {angle}° in Drehrichtung drehen</translation>
        </message>
        <message>
            <source>not moved</source>
            <extracomment>bench/words.py</extracomment>
            <translation>nicht versetzt</translation>
        </message>
        <message>
            <source>{count} teeth with rotation</source>
            <extracomment>bench/words.py</extracomment>
            <translation>{count} Zähne in Drehrichtung</translation>
        </message>
        <message>
            <source>{count} with</source>
            <extracomment>bench/words.py</extracomment>
            <translation>{count} mit</translation>
        </message>
        <message>
            <source>{count} against</source>
            <extracomment>bench/words.py</extracomment>
            <translation>{count} gegen</translation>
        </message>
        <message>
            <source>“{text}” is not a whole number of teeth: write one such as 3, -3, {ahead} or {back} (rotation)</source>
            <extracomment>bench/words.py</extracomment>
            <translation>„{text}“ ist keine ganze Zahl von Zähnen: eine schreiben wie 3, -3, {ahead} oder {back} (Drehrichtung)</translation>
        </message>
        <message>
            <source>1 tooth with rotation</source>
            <extracomment>bench/words.py</extracomment>
            <translation>1 Zahn in Drehrichtung</translation>
        </message>
        <message>
            <source>1 tooth against rotation</source>
            <extracomment>bench/words.py</extracomment>
            <translation>1 Zahn gegen die Drehrichtung</translation>
        </message>
        <message>
            <source>{table}: left magneto</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>{table}: linker Magnetzünder</translation>
        </message>
        <message>
            <source>{mm} mm = {inch} in</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>{mm} mm = {inch} in</translation>
        </message>
        <message>
            <source>within {length}</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>innerhalb {length}</translation>
        </message>
        <message>
            <source>{low} to {high}</source>
            <extracomment>classroom/blanks.py, job/document.py, job/words.py, practice/debrief.py, ui/trials_panel.py</extracomment>
            <translation>{low} bis {high}</translation>
        </message>
        <message>
            <source>off, and meshed anew</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>ab und neu eingesetzt</translation>
        </message>
        <message>
            <source>{table}: right magneto</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>{table}: rechter Magnetzünder</translation>
        </message>
        <message>
            <source>sound, and proved</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>in Ordnung und nachgewiesen</translation>
        </message>
        <message>
            <source>Plug out. A lead without ground while the switch is off leaves the magneto live.</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Stecker ziehen. Eine Leitung ohne Masse bei ausgeschaltetem Schalter lässt den Magnetzünder scharf.</translation>
        </message>
        <message>
            <source>in line, within {length}</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>fluchtend, innerhalb {length}</translation>
        </message>
        <message>
            <source>The rotor at the E-gap</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Der Rotor am E-Gap</translation>
        </message>
        <message>
            <source>Held by hand, looked at square over the straightedge, reached with rotation.</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Von Hand gehalten, gerade über das Lineal gesehen, in Drehrichtung angefahren.</translation>
        </message>
        <message>
            <source>a pip of {length}</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>ein Höcker von {length}</translation>
        </message>
        <message>
            <source>clean and flat</source>
            <extracomment>classroom/blanks.py, practice/instruments.py</extracomment>
            <translation>sauber und eben</translation>
        </message>
        <message>
            <source>Look before measuring: a blade on a pip reads too small a gap.</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Vor dem Messen hinsehen: eine Fühlerlehre auf einem Höcker misst einen zu kleinen Abstand.</translation>
        </message>
        <message>
            <source>{amount} mm past</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>{amount} mm dahinter</translation>
        </message>
        <message>
            <source>{amount} mm short</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>{amount} mm davor</translation>
        </message>
        <message>
            <source>Turn with rotation. Lobe 1 opens for No. 1; the gap is measured with the heel on top of the lobe.</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>In Drehrichtung drehen. Nocken 1 öffnet für Nr. 1; der Kontaktabstand wird mit dem Gleitstück auf der Nockenspitze gemessen.</translation>
        </message>
        <message>
            <source>Top dead centre of No. 1</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Oberer Totpunkt von Nr. 1</translation>
        </message>
        <message>
            <source>Bring the piston to the stop gently, by hand, from both sides; readings after zero count as negative.</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Den Kolben sanft, von Hand, von beiden Seiten an den Anschlag bringen; Ablesungen nach null zählen negativ.</translation>
        </message>
        <message>
            <source>Fires before top dead centre</source>
            <extracomment>classroom/blanks.py, practice/debrief.py, ui/practice_notebook.py</extracomment>
            <translation>Zündet vor dem oberen Totpunkt</translation>
        </message>
        <message>
            <source>{angle}° within {allowed}°</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>{angle}° innerhalb {allowed}°</translation>
        </message>
        <message>
            <source>within {allowed}°</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>innerhalb {allowed}°</translation>
        </message>
        <message>
            <source>Timing to the engine</source>
            <extracomment>classroom/blanks.py, ui/panes.py, ui/uncertainty_panel.py</extracomment>
            <translation>Einstellung zum Motor</translation>
        </message>
        <message>
            <source>Lamp and disc, approached with rotation; teeth as seen from the drive end.</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Prüflampe und Gradscheibe, in Drehrichtung angefahren; Zähne von der Antriebsseite gesehen.</translation>
        </message>
        <message>
            <source>Magneto flange moved on the disc</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Magnetzünderflansch auf der Scheibe versetzt</translation>
        </message>
        <message>
            <source>Disc moved on the drive flange</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Scheibe auf dem Antriebsflansch versetzt</translation>
        </message>
        <message>
            <source>never</source>
            <extracomment>classroom/blanks.py, practice/debrief.py</extracomment>
            <translation>nie</translation>
        </message>
        <message>
            <source>{angle}°, on the wrong stroke</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>{angle}°, im falschen Takt</translation>
        </message>
        <message>
            <source>one never fires</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>einer zündet nie</translation>
        </message>
        <message>
            <source>{angle}° and a turn of the crank</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>{angle}° und eine Kurbelumdrehung</translation>
        </message>
        <message>
            <source>ground</source>
            <extracomment>classroom/blanks.py, practice/instruments.py</extracomment>
            <translation>Masse</translation>
        </message>
        <message>
            <source>no ground</source>
            <extracomment>classroom/blanks.py, practice/instruments.py</extracomment>
            <translation>keine Masse</translation>
        </message>
        <message>
            <source>the lead is broken inside</source>
            <extracomment>classroom/blanks.py, practice/goals.py</extracomment>
            <translation>die Leitung ist innen gebrochen</translation>
        </message>
        <message>
            <source>a short inside the magneto grounds it</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>ein Kurzschluss im Magnetzünder legt ihn an Masse</translation>
        </message>
        <message>
            <source>the spring tab does not touch the case</source>
            <extracomment>classroom/blanks.py, practice/goals.py</extracomment>
            <translation>die Federzunge berührt das Gehäuse nicht</translation>
        </message>
        <message>
            <source>nothing: it is sound</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>nichts: sie ist in Ordnung</translation>
        </message>
        <message>
            <source>Reading</source>
            <extracomment>classroom/blanks.py, job/document.py, ui/uncertainty_panel.py</extracomment>
            <translation>Ablesung</translation>
        </message>
        <message>
            <source>As found</source>
            <extracomment>classroom/blanks.py, classroom/preview.py, job/document.py, job/sheet.py, practice/report.py, ui/debrief_view.py, ui/job_sources.py</extracomment>
            <translation>Vorgefunden</translation>
        </message>
        <message>
            <source>As left</source>
            <extracomment>classroom/blanks.py, job/document.py, practice/report.py, ui/job_sources.py</extracomment>
            <translation>Hinterlassen</translation>
        </message>
        <message>
            <source>Try</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Versuch</translation>
        </message>
        <message>
            <source>Straightedge from the rim mark</source>
            <extracomment>classroom/blanks.py, job/parts.py</extracomment>
            <translation>Lineal von der Randmarke</translation>
        </message>
        <message>
            <source>Short of it or past it</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Davor oder dahinter</translation>
        </message>
        <message>
            <source>The contacts</source>
            <extracomment>classroom/blanks.py, lessons/what-the-parts-are.json</extracomment>
            <translation>Die Kontakte</translation>
        </message>
        <message>
            <source>Looked at</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Angesehen</translation>
        </message>
        <message>
            <source>Opening and gap, lobe by lobe</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Öffnung und Abstand, Nocken für Nocken</translation>
        </message>
        <message>
            <source>Lobe</source>
            <extracomment>classroom/blanks.py, job/document.py, ui/job_table.py</extracomment>
            <translation>Nocken</translation>
        </message>
        <message>
            <source>Disc reads</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Scheibe zeigt</translation>
        </message>
        <message>
            <source>Disc set anew</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Scheibe neu gesetzt</translation>
        </message>
        <message>
            <source>Left magneto flange moved on the disc</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Linker Magnetzünderflansch auf der Scheibe versetzt</translation>
        </message>
        <message>
            <source>Left disc moved on the drive flange</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Linke Scheibe auf dem Antriebsflansch versetzt</translation>
        </message>
        <message>
            <source>Meter from plug to case, switch off</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Messgerät vom Stecker zum Gehäuse, Schalter aus</translation>
        </message>
        <message>
            <source>Meter from plug to case, switch on</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Messgerät vom Stecker zum Gehäuse, Schalter ein</translation>
        </message>
        <message>
            <source>What it suffers from</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Woran sie krankt</translation>
        </message>
        <message>
            <source>Faces of the contacts</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Kontaktflächen</translation>
        </message>
        <message>
            <source>Opens from the mark, as found</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Öffnet neben der Marke, vorgefunden</translation>
        </message>
        <message>
            <source>Largest gap, as found</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Größter Abstand, vorgefunden</translation>
        </message>
        <message>
            <source>At the stop, turned with rotation</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Am Anschlag, in Drehrichtung gedreht</translation>
        </message>
        <message>
            <source>At the stop, turned against rotation</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Am Anschlag, gegen die Drehrichtung gedreht</translation>
        </message>
        <message>
            <source>Half-way between: true top dead centre</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Halb dazwischen: wahrer oberer Totpunkt</translation>
        </message>
        <message>
            <source>Left fires before top dead centre</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Links zündet vor dem oberen Totpunkt</translation>
        </message>
        <message>
            <source>Right fires before top dead centre</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Rechts zündet vor dem oberen Totpunkt</translation>
        </message>
        <message>
            <source>Apart from one another</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Zueinander versetzt</translation>
        </message>
        <message>
            <source>Right magneto flange moved on the disc</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Rechter Magnetzünderflansch auf der Scheibe versetzt</translation>
        </message>
        <message>
            <source>Right disc moved on the drive flange</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Rechte Scheibe auf dem Antriebsflansch versetzt</translation>
        </message>
        <message>
            <source>Opens from the mark, as left</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Öffnet neben der Marke, hinterlassen</translation>
        </message>
        <message>
            <source>Largest gap, as left</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>Größter Abstand, hinterlassen</translation>
        </message>
        <message>
            <source>0°</source>
            <extracomment>classroom/blanks.py</extracomment>
            <translation>0°</translation>
        </message>
        <message>
            <source>{count} symbols; at most {most} can be checked</source>
            <extracomment>classroom/code.py</extracomment>
            <translation>{count} Zeichen; höchstens {most} lassen sich prüfen</translation>
        </message>
        <message>
            <source>No code was given; it looks like 8K2M-4TXN-0QZ7-5C</source>
            <extracomment>classroom/code.py</extracomment>
            <translation>Kein Code angegeben; er sieht aus wie 8K2M-4TXN-0QZ7-5C</translation>
        </message>
        <message>
            <source>The code “{code}” was mistyped: its check characters do not fit</source>
            <extracomment>classroom/code.py</extracomment>
            <translation>Der Code „{code}“ ist vertippt: die Prüfzeichen passen nicht</translation>
        </message>
        <message>
            <source>Character {place} of the code is “{letter}”; codes have digits and letters without U</source>
            <extracomment>classroom/code.py</extracomment>
            <translation>Zeichen {place} des Codes ist „{letter}“; Codes haben Ziffern und Buchstaben ohne U</translation>
        </message>
        <message>
            <source>The code has {count} characters; codes have at most {most}</source>
            <extracomment>classroom/code.py</extracomment>
            <translation>Der Code hat {count} Zeichen; Codes haben höchstens {most}</translation>
        </message>
        <message>
            <source>The code is cut short: it has {count} characters</source>
            <extracomment>classroom/code.py</extracomment>
            <translation>Der Code ist abgeschnitten: er hat {count} Zeichen</translation>
        </message>
        <message>
            <source>{value} does not fit {bits} bits</source>
            <extracomment>classroom/code.py</extracomment>
            <translation>{value} passt nicht in {bits} Bits</translation>
        </message>
        <message>
            <source>{left} bits are left, {wanted} are wanted</source>
            <extracomment>classroom/code.py</extracomment>
            <translation>{left} Bits sind übrig, {wanted} werden gebraucht</translation>
        </message>
        <message>
            <source>“{exercise}” is not in this set, or was done with other settings</source>
            <extracomment>classroom/desk.py</extracomment>
            <translation>„{exercise}“ ist nicht in diesem Satz oder wurde mit anderen Einstellungen gemacht</translation>
        </message>
        <message>
            <source>turns {way}</source>
            <extracomment>classroom/drawings.py, ui/breaker_view.py, ui/drive_view.py</extracomment>
            <translation>dreht {way}</translation>
        </message>
        <message>
            <source>Largest gap</source>
            <extracomment>classroom/drawings.py, job/document.py, job/parts.py, practice/debrief.py, practice/paper.py, ui/practice_notebook.py, ui/setting_panel.py</extracomment>
            <translation>Größter Kontaktabstand</translation>
        </message>
        <message>
            <source>Straightedge and rim mark</source>
            <extracomment>classroom/drawings.py</extracomment>
            <translation>Lineal und Randmarke</translation>
        </message>
        <message>
            <source>This magneto is not on an engine: there is no such picture of it</source>
            <extracomment>classroom/drawings.py</extracomment>
            <translation>Dieser Magnetzünder sitzt an keinem Motor: es gibt kein solches Bild von ihm</translation>
        </message>
        <message>
            <source>{magneto}, seen from the breaker end; the rotor turns {way}. Rotor and pole shoes are diagrammatic; cam, arm, contacts and marks are to scale.</source>
            <extracomment>classroom/drawings.py</extracomment>
            <translation>{magneto}, von der Unterbrecherseite gesehen; der Rotor dreht {way}. Rotor und Polschuhe sind schematisch; Nockenscheibe, Hebel, Kontakte und Marken sind maßstäblich.</translation>
        </message>
        <message>
            <source>{magneto}, seen from the drive end; the rotor turns {way}. Both faces of the disc are drawn, the drive face outside, the magneto face inside.</source>
            <extracomment>classroom/drawings.py</extracomment>
            <translation>{magneto}, von der Antriebsseite gesehen; der Rotor dreht {way}. Beide Seiten der Scheibe sind gezeichnet, die Antriebsseite außen, die Magnetzünderseite innen.</translation>
        </message>
        <message>
            <source>{engine}, seen from the propeller end; it turns {way}.</source>
            <extracomment>classroom/drawings.py</extracomment>
            <translation>{engine}, von der Propellerseite gesehen; dreht {way}.</translation>
        </message>
        <message>
            <source>The primary circuit with its switch lead; the switch is off.</source>
            <extracomment>classroom/drawings.py</extracomment>
            <translation>Der Primärkreis mit seiner Kurzschlussleitung; der Schalter ist aus.</translation>
        </message>
        <message>
            <source>mm</source>
            <extracomment>classroom/drawings.py, ui/class_editor_rows.py, ui/job_kinds.py</extracomment>
            <translation>mm</translation>
        </message>
        <message>
            <source>{folder}: the folder cannot be read: {reason}</source>
            <extracomment>classroom/gather.py</extracomment>
            <translation>{folder}: der Ordner ist nicht lesbar: {reason}</translation>
        </message>
        <message>
            <source>The digest finds damage in copying. It is no protection against a determined cheat: the acts are marked again, but who did them, and when, is believed as written.</source>
            <extracomment>classroom/handed.py</extracomment>
            <translation>Die Prüfsumme findet Kopierschäden. Sie schützt nicht vor einem entschlossenen Betrüger: die Handgriffe werden neu bewertet, aber wer sie wann tat, wird geglaubt, wie es geschrieben steht.</translation>
        </message>
        <message>
            <source>{file}: was changed or damaged after it was handed in: its digest does not fit</source>
            <extracomment>classroom/handed.py</extracomment>
            <translation>{file}: wurde nach der Abgabe geändert oder beschädigt: die Prüfsumme passt nicht</translation>
        </message>
        <message>
            <source>the attempt has not been handed in</source>
            <extracomment>classroom/handed.py</extracomment>
            <translation>der Versuch wurde noch nicht abgegeben</translation>
        </message>
        <message>
            <source>another file has its name</source>
            <extracomment>classroom/handed.py</extracomment>
            <translation>eine andere Datei hat seinen Namen</translation>
        </message>
        <message>
            <source>{folder}: the attempt cannot be written there: {reason}</source>
            <extracomment>classroom/handed.py</extracomment>
            <translation>{folder}: der Versuch kann dort nicht gespeichert werden: {reason}</translation>
        </message>
        <message>
            <source>Exercise</source>
            <extracomment>classroom/key.py, classroom/summary.py, spec/formats.py, ui/class_desk.py, ui/class_paper_dialog.py</extracomment>
            <translation>Übung</translation>
        </message>
        <message>
            <source>Pupil</source>
            <extracomment>classroom/key.py, classroom/summary.py</extracomment>
            <translation>Schüler</translation>
        </message>
        <message>
            <source>What</source>
            <extracomment>classroom/key.py, practice/report.py</extracomment>
            <translation>Was</translation>
        </message>
        <message>
            <source>Answer</source>
            <extracomment>classroom/key.py, ui/job_bars.py, ui/practice_sight.py</extracomment>
            <translation>Antwort</translation>
        </message>
        <message>
            <source>{number}. {name}</source>
            <extracomment>classroom/key.py, classroom/summary.py</extracomment>
            <translation>{number}. {name}</translation>
        </message>
        <message>
            <source>Each pupil of this set has a fault of their own: name the pupils the key is for</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>Jeder Schüler dieses Satzes hat einen eigenen Fehler: die Schüler nennen, für die der Schlüssel ist</translation>
        </message>
        <message>
            <source>contacts open {amount}° of rotor late</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>Kontakte öffnen {amount}° Rotor zu spät</translation>
        </message>
        <message>
            <source>largest gap {length} too wide</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>größter Kontaktabstand {length} zu groß</translation>
        </message>
        <message>
            <source>backplate {amount}° off, with cam rotation</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>Grundplatte {amount}° verstellt, mit der Nockendrehung</translation>
        </message>
        <message>
            <source>lock screw carries the contact screw {amount}° along, contacts closer</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>Sicherungsschraube nimmt die Kontaktschraube {amount}° mit, Kontakte enger</translation>
        </message>
        <message>
            <source>crank disc reads {reading}° at top dead centre</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>Gradscheibe zeigt {reading}° am oberen Totpunkt</translation>
        </message>
        <message>
            <source>fitted with the rotor at neutral</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>mit Rotor in Neutralstellung angebaut</translation>
        </message>
        <message>
            <source>lobe {lobe} lifts {length} less</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>Nocken {lobe} hebt {length} weniger</translation>
        </message>
        <message>
            <source>pip of {length} on the contacts</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>Höcker von {length} auf den Kontakten</translation>
        </message>
        <message>
            <source>{amount}° of rotor play in the coupling</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>{amount}° Rotorspiel in der Kupplung</translation>
        </message>
        <message>
            <source>switch lead broken: no ground</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>Kurzschlussleitung gebrochen: keine Masse</translation>
        </message>
        <message>
            <source>switch lead shorted: always grounded</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>Kurzschlussleitung kurzgeschlossen: immer Masse</translation>
        </message>
        <message>
            <source>spring tab does not touch: the coil is not joined</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>Federzunge liegt nicht an: Spule nicht verbunden</translation>
        </message>
        <message>
            <source>switch lead sound</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>Kurzschlussleitung in Ordnung</translation>
        </message>
        <message>
            <source>everyone</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>alle</translation>
        </message>
        <message>
            <source>Answer key: {title}</source>
            <extracomment>classroom/key.py, classroom/set_papers.py</extracomment>
            <translation>Lösung: {title}</translation>
        </message>
        <message>
            <source>Answer key</source>
            <extracomment>classroom/key.py, classroom/set_papers.py, ui/class_maker.py</extracomment>
            <translation>Lösung</translation>
        </message>
        <message>
            <source>Code {code}</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>Code {code}</translation>
        </message>
        <message>
            <source>{number}. {name} – {who} (draws from {seed})</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>{number}. {name} – {who} (zieht aus {seed})</translation>
        </message>
        <message>
            <source>contacts open {amount}° of rotor early</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>Kontakte öffnen {amount}° Rotor zu früh</translation>
        </message>
        <message>
            <source>largest gap {length} too narrow</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>größter Abstand {length} zu klein</translation>
        </message>
        <message>
            <source>backplate {amount}° off, against cam rotation</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>Grundplatte {amount}° verdreht, gegen die Nockendrehung</translation>
        </message>
        <message>
            <source>lock screw carries the contact screw {amount}° along, contacts wider</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>Sicherungsschraube nimmt die Kontaktschraube {amount}° mit, Kontakte weiter</translation>
        </message>
        <message>
            <source>fires on the wrong stroke</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>zündet im falschen Takt</translation>
        </message>
        <message>
            <source>one tooth early at the magneto flange</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>ein Zahn früh am Magnetflansch</translation>
        </message>
        <message>
            <source>{count} teeth early at the magneto flange</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>{count} Zähne früh am Magnetflansch</translation>
        </message>
        <message>
            <source>one tooth late at the magneto flange</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>ein Zahn spät am Magnetflansch</translation>
        </message>
        <message>
            <source>{count} teeth late at the magneto flange</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>{count} Zähne spät am Magnetflansch</translation>
        </message>
        <message>
            <source>one tooth early at the drive flange</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>ein Zahn früh am Antriebsflansch</translation>
        </message>
        <message>
            <source>{count} teeth early at the drive flange</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>{count} Zähne früh am Antriebsflansch</translation>
        </message>
        <message>
            <source>one tooth late at the drive flange</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>ein Zahn spät am Antriebsflansch</translation>
        </message>
        <message>
            <source>{count} teeth late at the drive flange</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>{count} Zähne spät am Antriebsflansch</translation>
        </message>
        <message>
            <source>one vernier step early</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>ein Noniusschritt früh</translation>
        </message>
        <message>
            <source>{count} vernier steps early</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>{count} Noniusschritte früh</translation>
        </message>
        <message>
            <source>one vernier step late</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>ein Noniusschritt spät</translation>
        </message>
        <message>
            <source>{count} vernier steps late</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>{count} Noniusschritte spät</translation>
        </message>
        <message>
            <source>Fault</source>
            <extracomment>classroom/key.py, ui/class_editor_rows.py</extracomment>
            <translation>Fehler</translation>
        </message>
        <message>
            <source>   • no fault: it is as it should be</source>
            <extracomment>classroom/key.py</extracomment>
            <translation>   • kein Fehler: es ist, wie es sein soll</translation>
        </message>
        <message>
            <source>none</source>
            <extracomment>classroom/key.py, practice/debrief.py, practice/report.py, ui/class_editor_fields.py</extracomment>
            <translation>keine</translation>
        </message>
        <message>
            <source>A name or a number is needed: each pupil's fault is drawn from it</source>
            <extracomment>classroom/names.py</extracomment>
            <translation>Ein Name oder eine Nummer ist nötig: daraus wird der Fehler jedes Schülers gezogen</translation>
        </message>
        <message>
            <source>{why}; and it cannot be kept on this machine either ({here}): save the attempt by hand</source>
            <extracomment>classroom/outbox.py</extracomment>
            <translation>{why}; und auf diesem Rechner lässt er sich auch nicht aufheben ({here}): den Versuch von Hand sichern</translation>
        </message>
        <message>
            <source>About {minutes} minutes; {percent} % are needed.</source>
            <extracomment>classroom/preview.py</extracomment>
            <translation>Etwa {minutes} Minuten; {percent} % sind nötig.</translation>
        </message>
        <message>
            <source>Hidden, for this seed</source>
            <extracomment>classroom/preview.py</extracomment>
            <translation>Verborgen, bei dieser Zahl</translation>
        </message>
        <message>
            <source>What the pupil reads</source>
            <extracomment>classroom/preview.py</extracomment>
            <translation>Was der Schüler liest</translation>
        </message>
        <message>
            <source>Hints, one at a time</source>
            <extracomment>classroom/preview.py</extracomment>
            <translation>Hinweise, einer nach dem anderen</translation>
        </message>
        <message>
            <source>Nothing on the tray can prove “{goal}”.</source>
            <extracomment>classroom/preview.py</extracomment>
            <translation>Nichts auf dem Tablett kann „{goal}“ nachweisen.</translation>
        </message>
        <message>
            <source>No goal asks for “{fault}”.</source>
            <extracomment>classroom/preview.py</extracomment>
            <translation>Kein Ziel fragt nach „{fault}“.</translation>
        </message>
        <message>
            <source>no fault</source>
            <extracomment>classroom/preview.py</extracomment>
            <translation>kein Fehler</translation>
        </message>
        <message>
            <source>{file}: cannot be marked: {reason}</source>
            <extracomment>classroom/results.py</extracomment>
            <translation>{file}: kann nicht bewertet werden: {reason}</translation>
        </message>
        <message>
            <source>{file}: is not handed in yet</source>
            <extracomment>classroom/results.py</extracomment>
            <translation>{file}: ist noch nicht abgegeben</translation>
        </message>
        <message>
            <source>Worksheets</source>
            <extracomment>classroom/set_papers.py</extracomment>
            <translation>Arbeitsblätter</translation>
        </message>
        <message>
            <source>Each pupil of this set has a fault of their own: name the pupils the sheets are for</source>
            <extracomment>classroom/set_papers.py</extracomment>
            <translation>Jeder Schüler dieser Reihe hat seinen eigenen Fehler: die Schüler nennen, für die die Blätter sind</translation>
        </message>
        <message>
            <source>Class code {code}.</source>
            <extracomment>classroom/set_papers.py</extracomment>
            <translation>Klassencode {code}.</translation>
        </message>
        <message>
            <source>{number}. {exercise}</source>
            <extracomment>classroom/set_papers.py, classroom/worksheet.py</extracomment>
            <translation>{number}. {exercise}</translation>
        </message>
        <message>
            <source>A code holds {most} exercises at most; this set needs its file</source>
            <extracomment>classroom/sets.py</extracomment>
            <translation>Ein Code fasst höchstens {most} Übungen; diese Reihe braucht ihre Datei</translation>
        </message>
        <message>
            <source>“{exercise}” is not a shipped exercise; this set needs its file</source>
            <extracomment>classroom/sets.py</extracomment>
            <translation>„{exercise}“ ist keine mitgelieferte Übung; diese Reihe braucht ihre Datei</translation>
        </message>
        <message>
            <source>This is no class code: it looks like 8K2M-4TXN-0QZ7-5C</source>
            <extracomment>classroom/sets.py</extracomment>
            <translation>Das ist kein Klassencode: er sieht aus wie 8K2M-4TXN-0QZ7-5C</translation>
        </message>
        <message>
            <source>This code was made by a newer magview, which is needed to use it</source>
            <extracomment>classroom/sets.py</extracomment>
            <translation>Diesen Code hat ein neueres magview gemacht, das man dafür braucht</translation>
        </message>
        <message>
            <source>Exercise {number} of this code is not shipped with this magview; both sides need the same version</source>
            <extracomment>classroom/sets.py</extracomment>
            <translation>Übung {number} dieses Codes liegt diesem magview nicht bei; beide Seiten brauchen dieselbe Fassung</translation>
        </message>
        <message>
            <source>This code was made with another version of its exercises; both sides need the same magview</source>
            <extracomment>classroom/sets.py</extracomment>
            <translation>Dieser Code gehört zu einer anderen Fassung der Übungen; beide Seiten brauchen dasselbe magview</translation>
        </message>
        <message>
            <source>exercise {number} is not in this set, which has {count}</source>
            <extracomment>classroom/sets.py</extracomment>
            <translation>Übung {number} gibt es in dieser Reihe nicht; sie hat {count}</translation>
        </message>
        <message>
            <source>pupils[{i}] is “{name}”, which has neither a letter nor a digit</source>
            <extracomment>classroom/sets.py</extracomment>
            <translation>pupils[{i}] ist „{name}“, ohne Buchstaben und Ziffer</translation>
        </message>
        <message>
            <source>pupils has “{one}” and “{other}”, who cannot be told apart; capitals, accents and spaces do not count</source>
            <extracomment>classroom/sets.py</extracomment>
            <translation>pupils hat „{one}“ und „{other}“, die nicht zu unterscheiden sind; Großbuchstaben, Akzente und Leerzeichen zählen nicht</translation>
        </message>
        <message>
            <source>Marks %</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>Note %</translation>
        </message>
        <message>
            <source>Verdict</source>
            <extracomment>classroom/summary.py, job/document.py, ui/debrief_view.py, ui/job_table.py</extracomment>
            <translation>Urteil</translation>
        </message>
        <message>
            <source>Minutes</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>Minuten</translation>
        </message>
        <message>
            <source>Acts</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>Handlungen</translation>
        </message>
        <message>
            <source>Found</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>Gefunden</translation>
        </message>
        <message>
            <source>Missed</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>Übersehen</translation>
        </message>
        <message>
            <source>Dangers</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>Gefahren</translation>
        </message>
        <message>
            <source>Handed in</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>Abgegeben</translation>
        </message>
        <message>
            <source>Counts</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>Zählt</translation>
        </message>
        <message>
            <source>Remarks</source>
            <extracomment>classroom/summary.py, job/parts.py, job/sheet.py</extracomment>
            <translation>Bemerkungen</translation>
        </message>
        <message>
            <source>File</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>Datei</translation>
        </message>
        <message>
            <source>Done</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>Gemacht</translation>
        </message>
        <message>
            <source>Passed</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>Bestanden</translation>
        </message>
        <message>
            <source>Weakest step</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>Schwächster Schritt</translation>
        </message>
        <message>
            <source>Step</source>
            <extracomment>classroom/summary.py, ui/lesson_view.py</extracomment>
            <translation>Schritt</translation>
        </message>
        <message>
            <source>Attempts</source>
            <extracomment>classroom/summary.py, ui/class_gather.py</extracomment>
            <translation>Versuche</translation>
        </message>
        <message>
            <source>Wrong</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>Falsch</translation>
        </message>
        <message>
            <source>Nearly right</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>Fast richtig</translation>
        </message>
        <message>
            <source>Right, not proved</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>Richtig, nicht nachgewiesen</translation>
        </message>
        <message>
            <source>What goes wrong</source>
            <extracomment>classroom/summary.py, ui/class_gather.py</extracomment>
            <translation>Was misslingt</translation>
        </message>
        <message>
            <source>Pupils</source>
            <extracomment>classroom/summary.py, ui/class_gather.py, ui/class_maker_fields.py</extracomment>
            <translation>Schüler</translation>
        </message>
        <message>
            <source>its exercise is not the set's</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>seine Übung ist nicht die der Reihe</translation>
        </message>
        <message>
            <source>its fault was not drawn for this pupil</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>sein Fehler wurde nicht für diesen Schüler gezogen</translation>
        </message>
        <message>
            <source>not on the list of pupils</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>nicht auf der Liste der Schüler</translation>
        </message>
        <message>
            <source>DANGER: {what}</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>GEFAHR: {what}</translation>
        </message>
        <message>
            <source>missed: {fault}</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>übersehen: {fault}</translation>
        </message>
        <message>
            <source>yes</source>
            <extracomment>classroom/summary.py, job/words.py, ui/job_kinds.py</extracomment>
            <translation>ja</translation>
        </message>
        <message>
            <source>no</source>
            <extracomment>classroom/summary.py, job/words.py, ui/job_kinds.py</extracomment>
            <translation>nein</translation>
        </message>
        <message>
            <source>a copy of {file}</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>eine Kopie von {file}</translation>
        </message>
        <message>
            <source>the same acts, to the second, as {pupil} in {file}</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>dieselben Handlungen, auf die Sekunde, wie {pupil} in {file}</translation>
        </message>
        <message>
            <source>there is a later attempt</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>es gibt einen späteren Versuch</translation>
        </message>
        <message>
            <source>of another set</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>aus einer anderen Reihe</translation>
        </message>
        <message>
            <source>saved by hand, not handed in with a class</source>
            <extracomment>classroom/summary.py</extracomment>
            <translation>von Hand gesichert, nicht mit einer Klasse abgegeben</translation>
        </message>
        <message>
            <source>rotor held at the E-gap</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>Rotor am E-Gap gehalten</translation>
        </message>
        <message>
            <source>contacts open at the mark</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>Kontakte öffnen an der Marke</translation>
        </message>
        <message>
            <source>largest gap within its limits</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>größter Abstand innerhalb der Grenzen</translation>
        </message>
        <message>
            <source>contacts clean and flat</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>Kontakte sauber und eben</translation>
        </message>
        <message>
            <source>disc set to top dead centre</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>Scheibe auf den oberen Totpunkt gestellt</translation>
        </message>
        <message>
            <source>timed to the engine</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>auf den Motor eingestellt</translation>
        </message>
        <message>
            <source>both magnetos together</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>beide Magnete gleich</translation>
        </message>
        <message>
            <source>switch lead sound and proved</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>Kurzschlussleitung in Ordnung und nachgewiesen</translation>
        </message>
        <message>
            <source>coupling marked first</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>Kupplung zuerst markiert</translation>
        </message>
        <message>
            <source>everything tight and closed up</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>alles fest und geschlossen</translation>
        </message>
        <message>
            <source>opening, as written down</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>Öffnung, wie aufgeschrieben</translation>
        </message>
        <message>
            <source>largest gap, as written down</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>größter Abstand, wie aufgeschrieben</translation>
        </message>
        <message>
            <source>firing, as written down</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>Zündung, wie aufgeschrieben</translation>
        </message>
        <message>
            <source>disc's zero, as written down</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>Nullpunkt der Scheibe, wie aufgeschrieben</translation>
        </message>
        <message>
            <source>switch lead, as written down</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>Kurzschlussleitung, wie aufgeschrieben</translation>
        </message>
        <message>
            <source>opens early or late</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>öffnet früh oder spät</translation>
        </message>
        <message>
            <source>gap too wide or narrow</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>Abstand zu groß oder zu klein</translation>
        </message>
        <message>
            <source>backplate off</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>Grundplatte verdreht</translation>
        </message>
        <message>
            <source>lock screw carries the contact screw along</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>Sicherungsschraube nimmt die Kontaktschraube mit</translation>
        </message>
        <message>
            <source>a low lobe</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>ein niedriger Nocken</translation>
        </message>
        <message>
            <source>pip on the contacts</source>
            <extracomment>classroom/words.py, physics/setting_uncertainty.py</extracomment>
            <translation>Höcker auf den Kontakten</translation>
        </message>
        <message>
            <source>play in the coupling</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>Spiel in der Kupplung</translation>
        </message>
        <message>
            <source>teeth out at the magneto flange</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>Zähne falsch am Magnetflansch</translation>
        </message>
        <message>
            <source>teeth out at the drive flange</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>Zähne falsch am Antriebsflansch</translation>
        </message>
        <message>
            <source>vernier steps out</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>Noniusschritte falsch</translation>
        </message>
        <message>
            <source>disc not at zero</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>Scheibe nicht auf null</translation>
        </message>
        <message>
            <source>on the wrong stroke</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>im falschen Takt</translation>
        </message>
        <message>
            <source>fitted at neutral</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>in Neutralstellung eingebaut</translation>
        </message>
        <message>
            <source>switch lead</source>
            <extracomment>classroom/words.py, practice/words.py</extracomment>
            <translation>Kurzschlussleitung</translation>
        </message>
        <message>
            <source>took the magneto off unmarked</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>nahm den Magneten ohne Marken ab</translation>
        </message>
        <message>
            <source>turned the propeller with no chocks at the wheels</source>
            <extracomment>classroom/words.py, practice/evidence.py</extracomment>
            <translation>drehte den Propeller ohne Bremsklötze an den Rädern</translation>
        </message>
        <message>
            <source>turned the propeller with a live magneto and the plugs in</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>drehte den Propeller mit scharfem Magneten und Kerzen drin</translation>
        </message>
        <message>
            <source>turned the propeller, plugs in, without proving the switch</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>drehte den Propeller, Kerzen drin, ohne den Schalter zu prüfen</translation>
        </message>
        <message>
            <source>handed in with screws or nuts slack</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>gab mit losen Schrauben oder Muttern ab</translation>
        </message>
        <message>
            <source>handed in with the switch on</source>
            <extracomment>classroom/words.py, practice/marking.py</extracomment>
            <translation>gab mit eingeschaltetem Schalter ab</translation>
        </message>
        <message>
            <source>{step}: wrong</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>{step}: falsch</translation>
        </message>
        <message>
            <source>{step}: nearly right</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>{step}: fast richtig</translation>
        </message>
        <message>
            <source>{step}: right, not proved by instruments</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>{step}: richtig, nicht mit Messzeug nachgewiesen</translation>
        </message>
        <message>
            <source>{what} (left)</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>{what} (links)</translation>
        </message>
        <message>
            <source>{what} (right)</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>{what} (rechts)</translation>
        </message>
        <message>
            <source>newer version</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>neuere Fassung</translation>
        </message>
        <message>
            <source>not handed in</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>nicht abgegeben</translation>
        </message>
        <message>
            <source>damaged</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>beschädigt</translation>
        </message>
        <message>
            <source>passed</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>bestanden</translation>
        </message>
        <message>
            <source>not passed</source>
            <extracomment>classroom/words.py</extracomment>
            <translation>nicht bestanden</translation>
        </message>
        <message>
            <source>On a real magneto: treat the propeller as live; switch off, its lead grounded and proved; plugs out; wheels chocked. The maker's current manual and local rules govern; work on a certified aircraft is done or released by a licensed person. This sheet is for training; its magneto is invented.</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>An einem echten Magneten: den Propeller als scharf behandeln; Schalter aus, seine Leitung an Masse und geprüft; Kerzen heraus; Bremsklötze an den Rädern. Es gelten das aktuelle Handbuch des Herstellers und die örtlichen Vorschriften; Arbeiten an einem zugelassenen Flugzeug macht oder gibt frei, wer die Lizenz hat. Dieses Blatt dient der Übung; sein Magnet ist erfunden.</translation>
        </message>
        <message>
            <source>{magneto}: pictures</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>{magneto}: Bilder</translation>
        </message>
        <message>
            <source>{title} · magview {version} · treat the propeller as live</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>{title} · magview {version} · den Propeller als scharf behandeln</translation>
        </message>
        <message>
            <source>In the program: begin this exercise with the code {seed}.</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>Im Programm: diese Übung mit dem Code {seed} beginnen.</translation>
        </message>
        <message>
            <source>Name the parts: key</source>
            <extracomment>classroom/worksheet.py, ui/class_paper_dialog.py</extracomment>
            <translation>Teile benennen: Lösung</translation>
        </message>
        <message>
            <source>Name the parts</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>Teile benennen</translation>
        </message>
        <message>
            <source>Answer key: {exercise}</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>Lösung: {exercise}</translation>
        </message>
        <message>
            <source>In the program: class code {code}, under this name.</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>Im Programm: Klassencode {code}, unter diesem Namen.</translation>
        </message>
        <message>
            <source>In the program: class code {code}.</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>Im Programm: Klassencode {code}.</translation>
        </message>
        <message>
            <source>The straightedge (dashed) as the contacts open, and the rim mark: how far apart, short or past?</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>Das Lineal (gestrichelt), wenn die Kontakte öffnen, und die Randmarke: wie weit auseinander, davor oder dahinter?</translation>
        </message>
        <message>
            <source>The case</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>Der Fall</translation>
        </message>
        <message>
            <source>About {minutes} minutes. Done when:</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>Etwa {minutes} Minuten. Fertig, wenn:</translation>
        </message>
        <message>
            <source>Data sheet</source>
            <extracomment>classroom/worksheet.py, ui/practice_task.py</extracomment>
            <translation>Datenblatt</translation>
        </message>
        <message>
            <source>Readings</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>Ablesungen</translation>
        </message>
        <message>
            <source>What was wrong, and what put it right</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>Was falsch war und was es behob</translation>
        </message>
        <message>
            <source>{side} magneto: {fault}</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>Magnet {side}: {fault}</translation>
        </message>
        <message>
            <source>Class</source>
            <extracomment>classroom/worksheet.py, ui/class_desk.py</extracomment>
            <translation>Klasse</translation>
        </message>
        <message>
            <source>Date</source>
            <extracomment>classroom/worksheet.py, job/document.py, job/history.py, job/parts.py, job/sheet.py, job/shift_plan.py</extracomment>
            <translation>Datum</translation>
        </message>
        <message>
            <source>Hints</source>
            <extracomment>classroom/worksheet.py, ui/practice_task.py</extracomment>
            <translation>Hinweise</translation>
        </message>
        <message>
            <source>{number}. {table}</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>{number}. {table}</translation>
        </message>
        <message>
            <source>Into the pictures: lobe 1 as found</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>In die Bilder: Nocken 1 wie vorgefunden</translation>
        </message>
        <message>
            <source>The contacts at their widest. Not to scale.</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>Die Kontakte, am weitesten offen. Nicht maßstäblich.</translation>
        </message>
        <message>
            <source>For {pupil}.</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>Für {pupil}.</translation>
        </message>
        <message>
            <source>For everyone.</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>Für alle.</translation>
        </message>
        <message>
            <source>Nothing needs to be put right.</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>Nichts ist zu beheben.</translation>
        </message>
        <message>
            <source>Name the parts – {picture}</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>Teile benennen – {picture}</translation>
        </message>
        <message>
            <source>Part</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>Teil</translation>
        </message>
        <message>
            <source>What it does</source>
            <extracomment>classroom/worksheet.py</extracomment>
            <translation>Was es tut</translation>
        </message>
        <message>
            <source>not installed; install magview again</source>
            <extracomment>cli_check.py</extracomment>
            <translation>nicht installiert; magview neu installieren</translation>
        </message>
        <message>
            <source>{count} magnetos and {more} installations can be read</source>
            <extracomment>cli_check.py</extracomment>
            <translation>{count} Magnete und {more} Einbauten lassen sich lesen</translation>
        </message>
        <message>
            <source>opens ({platform}, screen of {width} × {height})</source>
            <extracomment>cli_check.py</extracomment>
            <translation>öffnet sich ({platform}, Bildschirm {width} × {height})</translation>
        </message>
        <message>
            <source>Qt does not start: {reason}</source>
            <extracomment>cli_check.py</extracomment>
            <translation>Qt startet nicht: {reason}</translation>
        </message>
        <message>
            <source>good</source>
            <extracomment>cli_check.py</extracomment>
            <translation>gut</translation>
        </message>
        <message>
            <source>MISSING</source>
            <extracomment>cli_check.py</extracomment>
            <translation>FEHLT</translation>
        </message>
        <message>
            <source>no magnetos in {folder}; install magview again</source>
            <extracomment>cli_check.py</extracomment>
            <translation>keine Magnete in {folder}; magview neu installieren</translation>
        </message>
        <message>
            <source>Qt needs it for a window; the package {package} of Debian and Ubuntu has it</source>
            <extracomment>cli_check.py</extracomment>
            <translation>Qt braucht es für ein Fenster; im Paket {package} von Debian und Ubuntu ist es</translation>
        </message>
        <message>
            <source>opens, but where nobody sees it: QT_QPA_PLATFORM is {platform}</source>
            <extracomment>cli_check.py</extracomment>
            <translation>öffnet sich, aber wo es niemand sieht: QT_QPA_PLATFORM ist {platform}</translation>
        </message>
        <message>
            <source>there are no fonts, so words are boxes; the package fonts-dejavu-core of Debian and Ubuntu has some</source>
            <extracomment>cli_check.py</extracomment>
            <translation>es gibt keine Schriften, Wörter sind Kästchen; das Paket fonts-dejavu-core von Debian und Ubuntu hat welche</translation>
        </message>
        <message>
            <source>Qt has no working platform plugin “{chosen}”, which QT_QPA_PLATFORM asks for; unset it, or choose one of: {known}</source>
            <extracomment>cli_check.py</extracomment>
            <translation>Qt hat keine brauchbare Plattform „{chosen}“, wie QT_QPA_PLATFORM verlangt; nicht setzen oder eine von diesen wählen: {known}</translation>
        </message>
        <message>
            <source>folder of work under way</source>
            <extracomment>cli_check.py</extracomment>
            <translation>Ordner der laufenden Arbeit</translation>
        </message>
        <message>
            <source>folder of the log</source>
            <extracomment>cli_check.py</extracomment>
            <translation>Ordner des Protokolls</translation>
        </message>
        <message>
            <source>folder of fault reports</source>
            <extracomment>cli_check.py</extracomment>
            <translation>Ordner der Fehlerberichte</translation>
        </message>
        <message>
            <source>folder for the time being</source>
            <extracomment>cli_check.py</extracomment>
            <translation>Ordner für Vorläufiges</translation>
        </message>
        <message>
            <source>{trouble}; make the folder writable, or set XDG_DATA_HOME and XDG_STATE_HOME to ones that are</source>
            <extracomment>cli_check.py</extracomment>
            <translation>{trouble}; den Ordner beschreibbar machen oder XDG_DATA_HOME und XDG_STATE_HOME auf solche setzen</translation>
        </message>
        <message>
            <source>{folder} has only {free} MB free; make room</source>
            <extracomment>cli_check.py</extracomment>
            <translation>{folder} hat nur {free} MB frei; Platz schaffen</translation>
        </message>
        <message>
            <source>{folder} can be written, {free} MB free</source>
            <extracomment>cli_check.py</extracomment>
            <translation>{folder} ist beschreibbar, {free} MB frei</translation>
        </message>
        <message>
            <source>versions</source>
            <extracomment>cli_check.py</extracomment>
            <translation>Fassungen</translation>
        </message>
        <message>
            <source>shipped files</source>
            <extracomment>cli_check.py</extracomment>
            <translation>mitgelieferte Dateien</translation>
        </message>
        <message>
            <source>window</source>
            <extracomment>cli_check.py</extracomment>
            <translation>Fenster</translation>
        </message>
        <message>
            <source>printing</source>
            <extracomment>cli_check.py</extracomment>
            <translation>Drucken</translation>
        </message>
        <message>
            <source>files</source>
            <extracomment>cli_check.py</extracomment>
            <translation>Dateien</translation>
        </message>
        <message>
            <source>desktop</source>
            <extracomment>cli_check.py</extracomment>
            <translation>Desktop</translation>
        </message>
        <message>
            <source>PDF is written, with {count} families of type</source>
            <extracomment>cli_check.py</extracomment>
            <translation>PDF wird geschrieben, mit {count} Schriftfamilien</translation>
        </message>
        <message>
            <source>it gave no reason</source>
            <extracomment>cli_check.py</extracomment>
            <translation>es gab keinen Grund an</translation>
        </message>
        <message>
            <source>not in the menu; `magview desktop` puts it there</source>
            <extracomment>cli_check.py</extracomment>
            <translation>nicht im Menü; `magview desktop` trägt es ein</translation>
        </message>
        <message>
            <source>Nothing is missing.</source>
            <extracomment>cli_check.py</extracomment>
            <translation>Nichts fehlt.</translation>
        </message>
        <message>
            <source>Something is missing.</source>
            <extracomment>cli_check.py</extracomment>
            <translation>Etwas fehlt.</translation>
        </message>
        <message>
            <source>Qt writes no PDF or reads no SVG; install magview again</source>
            <extracomment>cli_check.py</extracomment>
            <translation>Qt schreibt kein PDF oder liest kein SVG; magview neu installieren</translation>
        </message>
        <message>
            <source>Qt did not answer within {seconds} s; try again</source>
            <extracomment>cli_check.py</extracomment>
            <translation>Qt hat in {seconds} s nicht geantwortet; noch einmal versuchen</translation>
        </message>
        <message>
            <source>in the menu; `magview desktop --remove` takes it away</source>
            <extracomment>cli_check.py</extracomment>
            <translation>im Menü; `magview desktop --remove` nimmt es heraus</translation>
        </message>
        <message>
            <source>could not be looked at: {reason}</source>
            <extracomment>cli_check.py</extracomment>
            <translation>ließ sich nicht ansehen: {reason}</translation>
        </message>
        <message>
            <source>about {minutes} minutes</source>
            <extracomment>cli_class.py</extracomment>
            <translation>etwa {minutes} Minuten</translation>
        </message>
        <message>
            <source>A fault of their own for each pupil.</source>
            <extracomment>cli_class.py</extracomment>
            <translation>Für jeden Schüler ein eigener Fehler.</translation>
        </message>
        <message>
            <source>The same faults for everyone.</source>
            <extracomment>cli_class.py</extracomment>
            <translation>Dieselben Fehler für alle.</translation>
        </message>
        <message>
            <source>the set</source>
            <extracomment>cli_class.py</extracomment>
            <translation>die Reihe</translation>
        </message>
        <message>
            <source>{count} attempts count, of {files} files.</source>
            <extracomment>cli_class.py, ui/class_gather.py</extracomment>
            <translation>{count} Versuche zählen, aus {files} Dateien.</translation>
        </message>
        <message>
            <source>{name}: {percent} %, {passed} of {done} passed</source>
            <extracomment>cli_class.py</extracomment>
            <translation>{name}: {percent} %, {passed} von {done} bestanden</translation>
        </message>
        <message>
            <source>a code for a class, its answer key, and its attempts gathered</source>
            <extracomment>cli_class.py</extracomment>
            <translation>ein Code für eine Klasse, seine Lösung, und die eingesammelten Versuche</translation>
        </message>
        <message>
            <source>make a class code, or say what one stands for</source>
            <extracomment>cli_class.py</extracomment>
            <translation>einen Klassencode machen, oder sagen, wofür einer steht</translation>
        </message>
        <message>
            <source>shipped exercises or files, in order; or one code or set</source>
            <extracomment>cli_class.py</extracomment>
            <translation>mitgelieferte Übungen oder Dateien, der Reihe nach; oder ein Code oder eine Reihe</translation>
        </message>
        <message>
            <source>the same seed makes the same code; left out: drawn</source>
            <extracomment>cli_class.py</extracomment>
            <translation>dieselbe Zahl macht denselben Code; weggelassen: gezogen</translation>
        </message>
        <message>
            <source>a fault of their own for each pupil</source>
            <extracomment>cli_class.py</extracomment>
            <translation>für jeden Schüler ein eigener Fehler</translation>
        </message>
        <message>
            <source>the exercises' hints are not given</source>
            <extracomment>cli_class.py</extracomment>
            <translation>die Hinweise der Übungen werden nicht gegeben</translation>
        </message>
        <message>
            <source>straightedge, and blades beside the exercise's</source>
            <extracomment>cli_class.py</extracomment>
            <translation>Lineal, und Blätter neben denen der Übung</translation>
        </message>
        <message>
            <source>the time allowed for each exercise</source>
            <extracomment>cli_class.py</extracomment>
            <translation>die Zeit für jede Übung</translation>
        </message>
        <message>
            <source>for the file and the key</source>
            <extracomment>cli_class.py</extracomment>
            <translation>für die Datei und die Lösung</translation>
        </message>
        <message>
            <source>a pupil; again for each</source>
            <extracomment>cli_class.py</extracomment>
            <translation>ein Schüler; für jeden noch einmal</translation>
        </message>
        <message>
            <source>write the set as a file, pupils and own exercises included</source>
            <extracomment>cli_class.py</extracomment>
            <translation>die Reihe als Datei schreiben, Schüler und eigene Übungen eingeschlossen</translation>
        </message>
        <message>
            <source>the answer key of a code or a set's file</source>
            <extracomment>cli_class.py</extracomment>
            <translation>die Lösung eines Codes oder einer Reihendatei</translation>
        </message>
        <message>
            <source>a code or a file</source>
            <extracomment>cli_class.py</extracomment>
            <translation>ein Code oder eine Datei</translation>
        </message>
        <message>
            <source>write it as CSV</source>
            <extracomment>cli_class.py</extracomment>
            <translation>als CSV schreiben</translation>
        </message>
        <message>
            <source>mark every attempt in a folder</source>
            <extracomment>cli_class.py</extracomment>
            <translation>alle Versuche in einem Ordner bewerten</translation>
        </message>
        <message>
            <source>hold them against a code or a set's file</source>
            <extracomment>cli_class.py</extracomment>
            <translation>an einem Code oder einer Reihendatei messen</translation>
        </message>
        <message>
            <source>write every attempt as CSV</source>
            <extracomment>cli_class.py</extracomment>
            <translation>alle Versuche als CSV schreiben</translation>
        </message>
        <message>
            <source>keep the marks there, for the next time</source>
            <extracomment>cli_class.py</extracomment>
            <translation>die Noten dort aufheben, für das nächste Mal</translation>
        </message>
        <message>
            <source>put a finished attempt's file into the class's folder</source>
            <extracomment>cli_class.py</extracomment>
            <translation>die Datei eines fertigen Versuchs in den Ordner der Klasse legen</translation>
        </message>
        <message>
            <source>a file saved from a practice window</source>
            <extracomment>cli_class.py</extracomment>
            <translation>eine aus einem Übungsfenster gesicherte Datei</translation>
        </message>
        <message>
            <source>--seed is {seed}; it must be from 0 to {most}</source>
            <extracomment>cli_class.py</extracomment>
            <translation>--seed ist {seed}; es muss von 0 bis {most} sein</translation>
        </message>
        <message>
            <source>Most often:</source>
            <extracomment>cli_class.py</extracomment>
            <translation>Am häufigsten:</translation>
        </message>
        <message>
            <source>Nothing from: {names}</source>
            <extracomment>cli_class.py</extracomment>
            <translation>Nichts von: {names}</translation>
        </message>
        <message>
            <source>Handed in as {file}.</source>
            <extracomment>cli_class.py</extracomment>
            <translation>Abgegeben als {file}.</translation>
        </message>
        <message>
            <source>passed over: {why}</source>
            <extracomment>cli_class.py</extracomment>
            <translation>übergangen: {why}</translation>
        </message>
        <message>
            <source>weakest: {step}</source>
            <extracomment>cli_class.py</extracomment>
            <translation>am schwächsten: {step}</translation>
        </message>
        <message>
            <source>magview is in the desktop's menu, and opens files whose names end in {ending}. `magview desktop --remove` takes it away again. Put there, in {folder}:</source>
            <extracomment>cli_desktop.py</extracomment>
            <translation>magview steht im Menü des Desktops und öffnet Dateien, deren Namen auf {ending} enden. `magview desktop --remove` nimmt es wieder heraus. Eingetragen, in {folder}:</translation>
        </message>
        <message>
            <source>magview is taken off the desktop. Deleted, in {folder}:</source>
            <extracomment>cli_desktop.py</extracomment>
            <translation>magview ist vom Desktop genommen. Gelöscht, in {folder}:</translation>
        </message>
        <message>
            <source>There was nothing to take away in {folder}.</source>
            <extracomment>cli_desktop.py</extracomment>
            <translation>In {folder} gab es nichts wegzunehmen.</translation>
        </message>
        <message>
            <source>Menu entries of this kind are for Linux desktops. Here, pin {program} to the task bar or Dock, and choose it under Open with for files of the program.</source>
            <extracomment>cli_desktop.py</extracomment>
            <translation>Menüeinträge dieser Art sind für Linux-Desktops. Hier {program} an Taskleiste oder Dock heften und bei Dateien des Programms unter „Öffnen mit“ wählen.</translation>
        </message>
        <message>
            <source>the guide, as one HTML file or as PDF; or what is in it</source>
            <extracomment>cli_guide.py</extracomment>
            <translation>das Handbuch als eine HTML-Datei oder als PDF; oder was darin steht</translation>
        </message>
        <message>
            <source>write it as HTML</source>
            <extracomment>cli_guide.py</extracomment>
            <translation>als HTML schreiben</translation>
        </message>
        <message>
            <source>write it as PDF</source>
            <extracomment>cli_guide.py</extracomment>
            <translation>als PDF schreiben</translation>
        </message>
        <message>
            <source>paper size; left out: a4</source>
            <extracomment>cli_guide.py, cli_paper.py</extracomment>
            <translation>Papierformat; weggelassen: a4</translation>
        </message>
        <message>
            <source>words to search for</source>
            <extracomment>cli_guide.py</extracomment>
            <translation>Wörter, nach denen gesucht wird</translation>
        </message>
        <message>
            <source>no PDF: {reason} For HTML, which needs no Qt, use --html.</source>
            <extracomment>cli_guide.py</extracomment>
            <translation>kein PDF: {reason} Für HTML, das Qt nicht braucht, --html nehmen.</translation>
        </message>
        <message>
            <source>F1 in the window opens it; --html and --pdf write it to a file.</source>
            <extracomment>cli_guide.py</extracomment>
            <translation>F1 im Fenster öffnet es; --html und --pdf schreiben es in eine Datei.</translation>
        </message>
        <message>
            <source>with --set: for whom; may be given again; left out: those of the set's file</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>mit --set: für wen; darf wiederholt werden; weggelassen: die in der Datei der Reihe</translation>
        </message>
        <message>
            <source>Wrote {file}: 1 page.</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>{file} geschrieben: 1 Seite.</translation>
        </message>
        <message>
            <source>a worksheet of an exercise, or its answer key, as PDF</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>ein Arbeitsblatt zu einer Übung, oder seine Lösung, als PDF</translation>
        </message>
        <message>
            <source>a file or a shipped one (gap-wrong), or:</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>eine Datei oder eine mitgelieferte (gap-wrong), oder:</translation>
        </message>
        <message>
            <source>a class's set instead, by its code or its file</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>stattdessen die Reihe einer Klasse, nach Code oder Datei</translation>
        </message>
        <message>
            <source>the code that draws the faults; left out: 0</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>der Code, aus dem die Fehler gezogen werden; weggelassen: 0</translation>
        </message>
        <message>
            <source>the answer key instead of the worksheet</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>die Lösung statt des Arbeitsblatts</translation>
        </message>
        <message>
            <source>print the exercise's hints, too</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>auch die Hinweise der Übung drucken</translation>
        </message>
        <message>
            <source>leave out the pictures whose parts are named</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>die Bilder mit zu benennenden Teilen weglassen</translation>
        </message>
        <message>
            <source>whose sheet it is; left out: a line for it</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>wessen Blatt es ist; weggelassen: eine Zeile dafür</translation>
        </message>
        <message>
            <source>pictures of a magneto or installation as PDF</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>Bilder eines Magneten oder Einbaus als PDF</translation>
        </message>
        <message>
            <source>a file or a shipped magneto or installation</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>eine Datei oder ein mitgelieferter Magnet oder Einbau</translation>
        </message>
        <message>
            <source>which; may be given again; left out: all there are</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>welche; darf wiederholt werden; weggelassen: alle</translation>
        </message>
        <message>
            <source>what stands beside the parts</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>was neben den Teilen steht</translation>
        </message>
        <message>
            <source>add what there is to say of each part</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>dazuschreiben, was es zu jedem Teil zu sagen gibt</translation>
        </message>
        <message>
            <source>the file to write</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>die zu schreibende Datei</translation>
        </message>
        <message>
            <source>give either an EXERCISE or --set with a class's code or file</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>entweder ÜBUNG oder --set mit Code oder Datei einer Klasse angeben</translation>
        </message>
        <message>
            <source>--seed is “{seed}”; it must be a whole number from 0 on, of at most 16 digits</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>--seed ist „{seed}“; es muss eine ganze Zahl ab 0 mit höchstens 16 Ziffern sein</translation>
        </message>
        <message>
            <source>no PDF: {reason}</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>kein PDF: {reason}</translation>
        </message>
        <message>
            <source>Wrote {file}: {pages} pages.</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>{file} geschrieben: {pages} Seiten.</translation>
        </message>
        <message>
            <source>“{name}” is neither a file nor one of the shipped: {known}</source>
            <extracomment>cli_paper.py</extracomment>
            <translation>„{name}“ ist weder eine Datei noch etwas Mitgeliefertes: {known}</translation>
        </message>
        <message>
            <source>How sure the readings are: each may be out by the half-width of the instrument or habit it was taken with, all values within it equally likely. These were propagated linearly (JCGM 100:2008); the interval stated is the expanded uncertainty with its coverage factor k, and holds the true value 95 times in 100 unless stated otherwise. It does not allow for mistakes, nor for a magneto that differs from the file it was compared with.</source>
            <extracomment>job/document.py</extracomment>
            <translation>Wie sicher die Ablesungen sind: jede kann um die halbe Breite des Messzeugs oder der Gewohnheit falsch sein, alle Werte darin gleich wahrscheinlich. Sie wurden linear fortgepflanzt (JCGM 100:2008); genannt ist die erweiterte Messunsicherheit mit ihrem Faktor k; sie enthält den wahren Wert 95 von 100 Malen, wenn nichts anderes dasteht. Sie berücksichtigt keine Versehen und keinen Magneten, der von seiner Datei abweicht.</translation>
        </message>
        <message>
            <source>Breaker end as found</source>
            <extracomment>job/document.py</extracomment>
            <translation>Unterbrecherseite vorgefunden</translation>
        </message>
        <message>
            <source>Breaker end as left</source>
            <extracomment>job/document.py</extracomment>
            <translation>Unterbrecherseite hinterlassen</translation>
        </message>
        <message>
            <source>Coupling as found</source>
            <extracomment>job/document.py, job/shift_plan.py</extracomment>
            <translation>Kupplung vorgefunden</translation>
        </message>
        <message>
            <source>Coupling as left</source>
            <extracomment>job/document.py</extracomment>
            <translation>Kupplung hinterlassen</translation>
        </message>
        <message>
            <source>{sheet} · magview {version} · treat the propeller as live</source>
            <extracomment>job/document.py, job/shift_plan.py</extracomment>
            <translation>{sheet} · magview {version} · den Propeller als scharf behandeln</translation>
        </message>
        <message>
            <source>OUT OF LIMITS</source>
            <extracomment>job/document.py, job/readings.py</extracomment>
            <translation>AUSSERHALB DER GRENZEN</translation>
        </message>
        <message>
            <source>NOT AS IT MUST BE</source>
            <extracomment>job/document.py, job/readings.py</extracomment>
            <translation>NICHT WIE ES SEIN MUSS</translation>
        </message>
        <message>
            <source>found out of limits</source>
            <extracomment>job/document.py, job/readings.py</extracomment>
            <translation>außerhalb vorgefunden</translation>
        </message>
        <message>
            <source>As found and as left: breaker end, contacts just opening</source>
            <extracomment>job/document.py</extracomment>
            <translation>Vorgefunden und hinterlassen: Unterbrecherseite, Kontakte öffnen gerade</translation>
        </message>
        <message>
            <source>As found: breaker end, contacts just opening</source>
            <extracomment>job/document.py</extracomment>
            <translation>Vorgefunden: Unterbrecherseite, Kontakte öffnen gerade</translation>
        </message>
        <message>
            <source>As left: breaker end, contacts just opening</source>
            <extracomment>job/document.py</extracomment>
            <translation>Hinterlassen: Unterbrecherseite, Kontakte öffnen gerade</translation>
        </message>
        <message>
            <source>Seen from the drive end, rotation {way}.</source>
            <extracomment>job/document.py, ui/drive_view.py</extracomment>
            <translation>Von der Antriebsseite gesehen, Drehrichtung {way}.</translation>
        </message>
        <message>
            <source>Trial</source>
            <extracomment>job/document.py, ui/job_table.py</extracomment>
            <translation>Versuch</translation>
        </message>
        <message>
            <source>Backplate</source>
            <extracomment>job/document.py, job/parts.py</extracomment>
            <translation>Grundplatte</translation>
        </message>
        <message>
            <source>Gap at least</source>
            <extracomment>job/document.py, job/parts.py</extracomment>
            <translation>Abstand mindestens</translation>
        </message>
        <message>
            <source>Gap at most</source>
            <extracomment>job/document.py, job/parts.py</extracomment>
            <translation>Abstand höchstens</translation>
        </message>
        <message>
            <source>Opening from the E-gap</source>
            <extracomment>job/document.py, job/parts.py</extracomment>
            <translation>Öffnung vom E-Gap</translation>
        </message>
        <message>
            <source>Opening from its place</source>
            <extracomment>job/document.py</extracomment>
            <translation>Öffnung von ihrem Platz</translation>
        </message>
        <message>
            <source>Contacts closed</source>
            <extracomment>job/document.py, ui/contact_view.py</extracomment>
            <translation>Kontakte geschlossen</translation>
        </message>
        <message>
            <source>backplate {angle}</source>
            <extracomment>job/document.py</extracomment>
            <translation>Grundplatte {angle}</translation>
        </message>
        <message>
            <source>contact screw {angle}</source>
            <extracomment>job/document.py</extracomment>
            <translation>Kontaktschraube {angle}</translation>
        </message>
        <message>
            <source>Seen from the breaker end, rotation clockwise.</source>
            <extracomment>job/document.py</extracomment>
            <translation>Von der Unterbrecherseite, Drehung im Uhrzeigersinn.</translation>
        </message>
        <message>
            <source>Seen from the breaker end, rotation anticlockwise.</source>
            <extracomment>job/document.py</extracomment>
            <translation>Von der Unterbrecherseite, Drehung gegen den Uhrzeigersinn.</translation>
        </message>
        <message>
            <source>magneto flange {teeth}</source>
            <extracomment>job/document.py</extracomment>
            <translation>Magnetflansch {teeth}</translation>
        </message>
        <message>
            <source>disc {teeth}</source>
            <extracomment>job/document.py, ui/plan_box.py</extracomment>
            <translation>Scheibe {teeth}</translation>
        </message>
        <message>
            <source>Aircraft</source>
            <extracomment>job/document.py, job/sheet.py</extracomment>
            <translation>Flugzeug</translation>
        </message>
        <message>
            <source>Manual</source>
            <extracomment>job/document.py</extracomment>
            <translation>Handbuch</translation>
        </message>
        <message>
            <source>Limits</source>
            <extracomment>job/document.py, job/sheet.py</extracomment>
            <translation>Grenzen</translation>
        </message>
        <message>
            <source>Next check</source>
            <extracomment>job/document.py, job/sheet.py</extracomment>
            <translation>Nächste Prüfung</translation>
        </message>
        <message>
            <source>Program</source>
            <extracomment>job/document.py</extracomment>
            <translation>Programm</translation>
        </message>
        <message>
            <source>magview {version}</source>
            <extracomment>job/document.py</extracomment>
            <translation>magview {version}</translation>
        </message>
        <message>
            <source>missing in {stage}</source>
            <extracomment>job/document.py</extracomment>
            <translation>fehlt in {stage}</translation>
        </message>
        <message>
            <source>Value</source>
            <extracomment>job/document.py</extracomment>
            <translation>Wert</translation>
        </message>
        <message>
            <source>Verdict ({limits})</source>
            <extracomment>job/document.py</extracomment>
            <translation>Urteil ({limits})</translation>
        </message>
        <message>
            <source>How sure</source>
            <extracomment>job/document.py</extracomment>
            <translation>Wie sicher</translation>
        </message>
        <message>
            <source>Best estimate ± expanded uncertainty</source>
            <extracomment>job/document.py</extracomment>
            <translation>Bester Wert ± erweiterte Unsicherheit</translation>
        </message>
        <message>
            <source>Likely in limits</source>
            <extracomment>job/document.py</extracomment>
            <translation>Wohl in den Grenzen</translation>
        </message>
        <message>
            <source>What matters most</source>
            <extracomment>job/document.py</extracomment>
            <translation>Was am meisten zählt</translation>
        </message>
        <message>
            <source>opens {angle} against the E-gap</source>
            <extracomment>job/document.py</extracomment>
            <translation>öffnet {angle} vom E-Gap</translation>
        </message>
        <message>
            <source>largest gap {gap}</source>
            <extracomment>job/document.py</extracomment>
            <translation>größter Abstand {gap}</translation>
        </message>
        <message>
            <source>drawn is the gap that plate and screw give, {gap}</source>
            <extracomment>job/document.py</extracomment>
            <translation>gezeichnet ist der Abstand, den Platte und Schraube ergeben, {gap}</translation>
        </message>
        <message>
            <source>fires {angle}</source>
            <extracomment>job/document.py</extracomment>
            <translation>zündet {angle}</translation>
        </message>
        <message>
            <source>Thick lines: the painted marks, each of them number 1.</source>
            <extracomment>job/document.py</extracomment>
            <translation>Dicke Linien: die gemalten Marken, jede davon Nummer 1.</translation>
        </message>
        <message>
            <source>Earlier sheets of this magneto</source>
            <extracomment>job/document.py</extracomment>
            <translation>Frühere Blätter dieses Magneten</translation>
        </message>
        <message>
            <source>Signature</source>
            <extracomment>job/document.py, job/sheet.py, job/shift_plan.py</extracomment>
            <translation>Unterschrift</translation>
        </message>
        <message>
            <source>Magneto job sheet</source>
            <extracomment>job/document.py, job/report.py, ui/print_pdf.py</extracomment>
            <translation>Auftragsblatt Magnetzünder</translation>
        </message>
        <message>
            <source>INVENTED FOR DEMONSTRATION: no such aircraft, engine, magneto or person.</source>
            <extracomment>job/document.py</extracomment>
            <translation>ZUR VORFÜHRUNG ERFUNDEN: kein solches Flugzeug, kein solcher Motor, Magnet oder Mensch.</translation>
        </message>
        <message>
            <source>taken from: {source}</source>
            <extracomment>job/document.py</extracomment>
            <translation>entnommen aus: {source}</translation>
        </message>
        <message>
            <source>OUT OF LIMITS OR NOT AS IT MUST BE: {what}.</source>
            <extracomment>job/document.py</extracomment>
            <translation>AUSSERHALB DER GRENZEN ODER NICHT WIE ES SEIN MUSS: {what}.</translation>
        </message>
        <message>
            <source>TO BE CLEARED UP: see {stages}.</source>
            <extracomment>job/document.py</extracomment>
            <translation>ZU KLÄREN: siehe {stages}.</translation>
        </message>
        <message>
            <source>open: {stages}</source>
            <extracomment>job/document.py</extracomment>
            <translation>offen: {stages}</translation>
        </message>
        <message>
            <source>NOT FINISHED: {words}.</source>
            <extracomment>job/document.py</extracomment>
            <translation>NICHT FERTIG: {words}.</translation>
        </message>
        <message>
            <source>CHANGED SINCE IT WAS SIGNED: the signature does not cover this sheet.</source>
            <extracomment>job/document.py</extracomment>
            <translation>SEIT DER UNTERSCHRIFT GEÄNDERT: die Unterschrift gilt nicht für dieses Blatt.</translation>
        </message>
        <message>
            <source>Finished; as left, all readings that have limits are within them.</source>
            <extracomment>job/document.py</extracomment>
            <translation>Fertig; hinterlassen liegen alle Ablesungen mit Grenzen darin.</translation>
        </message>
        <message>
            <source>Skipped: {reason}</source>
            <extracomment>job/document.py, ui/job_bars.py</extracomment>
            <translation>Ausgelassen: {reason}</translation>
        </message>
        <message>
            <source>TO BE CLEARED UP: {what}</source>
            <extracomment>job/document.py</extracomment>
            <translation>ZU KLÄREN: {what}</translation>
        </message>
        <message>
            <source>Note: {note}</source>
            <extracomment>job/document.py</extracomment>
            <translation>Notiz: {note}</translation>
        </message>
        <message>
            <source>Done by: {by}</source>
            <extracomment>job/document.py</extracomment>
            <translation>Gemacht von: {by}</translation>
        </message>
        <message>
            <source>Nothing entered.</source>
            <extracomment>job/document.py</extracomment>
            <translation>Nichts eingetragen.</translation>
        </message>
        <message>
            <source>As found and as left: coupling, seen from the drive end</source>
            <extracomment>job/document.py</extracomment>
            <translation>Vorgefunden und hinterlassen: Kupplung, von der Antriebsseite</translation>
        </message>
        <message>
            <source>The signature covers the sheet with the digest {covers}.</source>
            <extracomment>job/document.py</extracomment>
            <translation>Die Unterschrift gilt für das Blatt mit der Prüfsumme {covers}.</translation>
        </message>
        <message>
            <source>Cautions.</source>
            <extracomment>job/document.py, job/shift_plan.py</extracomment>
            <translation>Vorsicht.</translation>
        </message>
        <message>
            <source>{hours} h total</source>
            <extracomment>job/document.py</extracomment>
            <translation>{hours} h gesamt</translation>
        </message>
        <message>
            <source>serial {serial}</source>
            <extracomment>job/document.py</extracomment>
            <translation>Nr. {serial}</translation>
        </message>
        <message>
            <source>{hours} h since overhaul</source>
            <extracomment>job/document.py</extracomment>
            <translation>{hours} h seit Überholung</translation>
        </message>
        <message>
            <source>{hours} h of the magneto</source>
            <extracomment>job/document.py</extracomment>
            <translation>{hours} h des Magneten</translation>
        </message>
        <message>
            <source>no blade refused</source>
            <extracomment>job/document.py</extracomment>
            <translation>kein Blatt ging nicht</translation>
        </message>
        <message>
            <source>No drawings: {error}</source>
            <extracomment>job/document.py</extracomment>
            <translation>Keine Zeichnungen: {error}</translation>
        </message>
        <message>
            <source>Work done and released by</source>
            <extracomment>job/document.py</extracomment>
            <translation>Arbeit ausgeführt und freigegeben von</translation>
        </message>
        <message>
            <source>Licence no.</source>
            <extracomment>job/document.py, job/parts.py</extracomment>
            <translation>Lizenz-Nr.</translation>
        </message>
        <message>
            <source>Independent check by</source>
            <extracomment>job/document.py, job/parts.py</extracomment>
            <translation>Unabhängige Kontrolle von</translation>
        </message>
        <message>
            <source>opening {limits}</source>
            <extracomment>job/document.py</extracomment>
            <translation>Öffnung {limits}</translation>
        </message>
        <message>
            <source>gap {limits}</source>
            <extracomment>job/document.py</extracomment>
            <translation>Abstand {limits}</translation>
        </message>
        <message>
            <source>Largest gap [mm]</source>
            <extracomment>job/drift_line.py</extracomment>
            <translation>Größter Abstand [mm]</translation>
        </message>
        <message>
            <source>The gap moved {change} in 100 h (± {spread}); after 100 h more, at {at} h, it should read {value}, between {low} and {high} 95 times in 100.</source>
            <extracomment>job/drift_line.py</extracomment>
            <translation>Der Abstand wanderte {change} in 100 h (± {spread}); nach weiteren 100 h, bei {at} h, sollte er {value} sein, zwischen {low} und {high} 95 von 100 Malen.</translation>
        </message>
        <message>
            <source>The gap may leave its limits from {hours} h on.</source>
            <extracomment>job/drift_line.py</extracomment>
            <translation>Der Abstand kann ab {hours} h die Grenzen verlassen.</translation>
        </message>
        <message>
            <source>Opening from the E-gap [rotor °]</source>
            <extracomment>job/drift_line.py</extracomment>
            <translation>Öffnung vom E-Gap [Rotor °]</translation>
        </message>
        <message>
            <source>The opening moved {change} in 100 h (± {spread}); after 100 h more, at {at} h, it should read {value}, between {low} and {high} 95 times in 100.</source>
            <extracomment>job/drift_line.py</extracomment>
            <translation>Die Öffnung wanderte {change} in 100 h (± {spread}); nach weiteren 100 h, bei {at} h, sollte sie {value} sein, zwischen {low} und {high} 95 von 100 Malen.</translation>
        </message>
        <message>
            <source>The opening may leave its limits from {hours} h on.</source>
            <extracomment>job/drift_line.py</extracomment>
            <translation>Die Öffnung kann ab {hours} h die Grenzen verlassen.</translation>
        </message>
        <message>
            <source>Fires before top dead centre [crank °]</source>
            <extracomment>job/drift_line.py</extracomment>
            <translation>Zündet vor dem oberen Totpunkt [Kurbel-°]</translation>
        </message>
        <message>
            <source>The firing moved {change} of crank in 100 h (± {spread}), positive earlier; after 100 h more, at {at} h, it should read {value} before top dead centre, between {low} and {high} 95 times in 100.</source>
            <extracomment>job/drift_line.py</extracomment>
            <translation>Der Zündzeitpunkt wanderte {change} Kurbel in 100 h (± {spread}), positiv früher; nach weiteren 100 h, bei {at} h, sollte er {value} vor dem oberen Totpunkt sein, zwischen {low} und {high} 95 von 100 Malen.</translation>
        </message>
        <message>
            <source>The firing may leave its limits from {hours} h on.</source>
            <extracomment>job/drift_line.py</extracomment>
            <translation>Der Zündzeitpunkt kann ab {hours} h die Grenzen verlassen.</translation>
        </message>
        <message>
            <source>no reading of the lamp stands on the bench: enter on its Engine page what the lamp says now, after contacts and teeth were last moved</source>
            <extracomment>job/feeds.py</extracomment>
            <translation>auf dem Prüftisch gilt keine Ablesung der Lampe: auf seiner Seite „Motor“ eingeben, was die Lampe jetzt zeigt, nachdem Kontakte und Zähne zuletzt verstellt wurden</translation>
        </message>
        <message>
            <source>the bench</source>
            <extracomment>job/feeds.py</extracomment>
            <translation>Prüftisch</translation>
        </message>
        <message>
            <source>file of the {name}</source>
            <extracomment>job/feeds.py</extracomment>
            <translation>Datei: {name}</translation>
        </message>
        <message>
            <source>neither wear nor a pip has been set on the bench yet</source>
            <extracomment>job/feeds.py</extracomment>
            <translation>auf dem Prüftisch ist noch weder Verschleiß noch Höcker eingestellt</translation>
        </message>
        <message>
            <source>this gap cannot be had: {reason}</source>
            <extracomment>job/feeds.py</extracomment>
            <translation>dieser Abstand ist nicht zu haben: {reason}</translation>
        </message>
        <message>
            <source>this magneto is not on an engine: there is no coupling to mark</source>
            <extracomment>job/feeds.py</extracomment>
            <translation>dieser Magnet ist an keinem Motor: es gibt keine Kupplung zu markieren</translation>
        </message>
        <message>
            <source>no marks were painted on the bench yet; that is done on its Engine page</source>
            <extracomment>job/feeds.py</extracomment>
            <translation>auf dem Prüftisch sind noch keine Marken gemalt; das geschieht auf seiner Seite „Motor“</translation>
        </message>
        <message>
            <source>with this setting the contacts never open and close, so there is nothing to plan</source>
            <extracomment>job/feeds.py, job/shift_plan.py</extracomment>
            <translation>bei dieser Einstellung gehen die Kontakte nie auf und zu, also gibt es nichts zu planen</translation>
        </message>
        <message>
            <source>no tooth has been moved on the bench since the lamp was read</source>
            <extracomment>job/feeds.py</extracomment>
            <translation>auf dem Prüftisch ist kein Zahn versetzt, seit die Lampe abgelesen wurde</translation>
        </message>
        <message>
            <source>with the plug in and the contacts closed nothing tells of the lead: open the contacts</source>
            <extracomment>job/feeds.py</extracomment>
            <translation>bei gestecktem Stecker und geschlossenen Kontakten zeigt nichts die Leitung: die Kontakte öffnen</translation>
        </message>
        <message>
            <source>Next check as entered: at {hours} h or {day}.</source>
            <extracomment>job/history.py</extracomment>
            <translation>Nächste Prüfung wie eingetragen: bei {hours} h oder {day}.</translation>
        </message>
        <message>
            <source>Next check as entered: {day}.</source>
            <extracomment>job/history.py</extracomment>
            <translation>Nächste Prüfung wie eingetragen: {day}.</translation>
        </message>
        <message>
            <source>Next check as entered: at {hours} h.</source>
            <extracomment>job/history.py</extracomment>
            <translation>Nächste Prüfung wie eingetragen: bei {hours} h.</translation>
        </message>
        <message>
            <source>this magneto</source>
            <extracomment>job/history.py</extracomment>
            <translation>dieser Magnet</translation>
        </message>
        <message>
            <source>Next check of {name}: due at {at} h of the magneto, in {hours} h.</source>
            <extracomment>job/history.py</extracomment>
            <translation>Nächste Prüfung von {name}: fällig bei {at} h des Magneten, in {hours} h.</translation>
        </message>
        <message>
            <source>magneto hours [h]</source>
            <extracomment>job/history.py, ui/job_drift_sheet.py</extracomment>
            <translation>Stunden des Magneten [h]</translation>
        </message>
        <message>
            <source>{title} over the magneto's hours. Open: as found; filled: as left; dashed: limits.</source>
            <extracomment>job/history.py</extracomment>
            <translation>{title} über den Stunden des Magneten. Offen: vorgefunden; voll: hinterlassen; gestrichelt: Grenzen.</translation>
        </message>
        <message>
            <source>{title} over the magneto's hours. Open: as found; filled: as left; dashed: limits; grey: where the next reading should lie, 95 times in 100.</source>
            <extracomment>job/history.py</extracomment>
            <translation>{title} über den Stunden des Magneten. Offen: vorgefunden; voll: hinterlassen; gestrichelt: Grenzen; grau: wo die nächste Ablesung liegen sollte, 95 von 100 Malen.</translation>
        </message>
        <message>
            <source>Hours</source>
            <extracomment>job/history.py, job/parts.py, ui/wear_panel.py</extracomment>
            <translation>Stunden</translation>
        </message>
        <message>
            <source>Gap found</source>
            <extracomment>job/history.py</extracomment>
            <translation>Abstand vorgef.</translation>
        </message>
        <message>
            <source>Gap left</source>
            <extracomment>job/history.py</extracomment>
            <translation>Abstand hinterl.</translation>
        </message>
        <message>
            <source>Opens found</source>
            <extracomment>job/history.py</extracomment>
            <translation>Öffnet vorgef.</translation>
        </message>
        <message>
            <source>Opens left</source>
            <extracomment>job/history.py</extracomment>
            <translation>Öffnet hinterl.</translation>
        </message>
        <message>
            <source>Fires found</source>
            <extracomment>job/history.py</extracomment>
            <translation>Zündet vorgef.</translation>
        </message>
        <message>
            <source>Fires left</source>
            <extracomment>job/history.py</extracomment>
            <translation>Zündet hinterl.</translation>
        </message>
        <message>
            <source>the magneto has no serial number on this sheet, so that no earlier one can be told to be its own</source>
            <extracomment>job/history.py</extracomment>
            <translation>der Magnet hat auf diesem Blatt keine Nummer, darum lässt sich kein früheres Blatt ihm zuordnen</translation>
        </message>
        <message>
            <source>{name}: holds {count} files; only the first {most} were looked at</source>
            <extracomment>job/history.py</extracomment>
            <translation>{name}: enthält {count} Dateien; nur die ersten {most} wurden angesehen</translation>
        </message>
        <message>
            <source>Look again at {when} h of the magneto, or sooner as the manual says.</source>
            <extracomment>job/history.py</extracomment>
            <translation>Wieder ansehen bei {when} h des Magneten, oder früher nach Handbuch.</translation>
        </message>
        <message>
            <source>Next check of {name}: due at {at} h of the magneto, {hours} h ago.</source>
            <extracomment>job/history.py</extracomment>
            <translation>Nächste Prüfung von {name}: fällig bei {at} h des Magneten, vor {hours} h.</translation>
        </message>
        <message>
            <source>Next check of {name}: due on {day}, in {days} days.</source>
            <extracomment>job/history.py</extracomment>
            <translation>Nächste Prüfung von {name}: fällig am {day}, in {days} Tagen.</translation>
        </message>
        <message>
            <source>{name}: cannot be read: {reason}</source>
            <extracomment>job/history.py</extracomment>
            <translation>{name}: lässt sich nicht lesen: {reason}</translation>
        </message>
        <message>
            <source>Next check of {name}: due on {day}, {days} days ago.</source>
            <extracomment>job/history.py</extracomment>
            <translation>Nächste Prüfung von {name}: fällig am {day}, vor {days} Tagen.</translation>
        </message>
        <message>
            <source>{stage} is not done yet; missing: {lacks}</source>
            <extracomment>job/judge.py</extracomment>
            <translation>{stage} ist noch nicht fertig; es fehlt: {lacks}</translation>
        </message>
        <message>
            <source>{stage} comes after {others}: do that first, or skip it with a reason</source>
            <extracomment>job/judge.py</extracomment>
            <translation>{stage} kommt nach {others}: das zuerst tun, oder mit Grund auslassen</translation>
        </message>
        <message>
            <source>the lobes</source>
            <extracomment>job/judge.py</extracomment>
            <translation>die Nocken</translation>
        </message>
        <message>
            <source>meter or lamp, switch off</source>
            <extracomment>job/judge.py</extracomment>
            <translation>Messgerät oder Lampe, Schalter aus</translation>
        </message>
        <message>
            <source>meter or lamp, switch on</source>
            <extracomment>job/judge.py</extracomment>
            <translation>Messgerät oder Lampe, Schalter ein</translation>
        </message>
        <message>
            <source>“{name}” is neither a file nor one of the shipped jobs: {known}</source>
            <extracomment>job/library.py</extracomment>
            <translation>„{name}“ ist weder eine Datei noch eines der mitgelieferten Blätter: {known}</translation>
        </message>
        <message>
            <source>Registration</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Kennzeichen</translation>
        </message>
        <message>
            <source>Type</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Typ</translation>
        </message>
        <message>
            <source>Serial no.</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Werk-Nr.</translation>
        </message>
        <message>
            <source>Hours since overhaul</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Stunden seit Überholung</translation>
        </message>
        <message>
            <source>Position</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Platz</translation>
        </message>
        <message>
            <source>Straightedge from the rim mark, either way</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Lineal von der Randmarke, nach beiden Seiten</translation>
        </message>
        <message>
            <source>Left should fire</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Links soll zünden</translation>
        </message>
        <message>
            <source>Right should fire</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Rechts soll zünden</translation>
        </message>
        <message>
            <source>Timing to the engine, either way</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Zündzeitpunkt, nach beiden Seiten</translation>
        </message>
        <message>
            <source>Left against right, either way</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Links gegen rechts, nach beiden Seiten</translation>
        </message>
        <message>
            <source>Largest drop on one magneto</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Größter Abfall mit einem Magneten</translation>
        </message>
        <message>
            <source>Largest difference of the drops</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Größter Unterschied der Abfälle</translation>
        </message>
        <message>
            <source>Taken from</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Entnommen aus</translation>
        </message>
        <message>
            <source>At magneto hours</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Bei Magnetstunden</translation>
        </message>
        <message>
            <source>Or on</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Oder am</translation>
        </message>
        <message>
            <source>Left fires</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Links zündet</translation>
        </message>
        <message>
            <source>Right fires</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Rechts zündet</translation>
        </message>
        <message>
            <source>Left error less right error</source>
            <extracomment>job/parts.py, job/readings.py</extracomment>
            <translation>Fehler links weniger rechts</translation>
        </message>
        <message>
            <source>Propeller treated as live; its arc kept clear</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Propeller gilt als scharf; sein Kreis ist frei</translation>
        </message>
        <message>
            <source>Ignition switch off, key out</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Zündschalter aus, Schlüssel abgezogen</translation>
        </message>
        <message>
            <source>Switch lead grounded, to be proved at the next stage</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Kurzschlussleitung an Masse, im nächsten Schritt nachzuweisen</translation>
        </message>
        <message>
            <source>Plugs out: at least one from every cylinder</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Kerzen heraus: mindestens eine je Zylinder</translation>
        </message>
        <message>
            <source>Wheels chocked</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Räder verkeilt</translation>
        </message>
        <message>
            <source>The maker's current manual and local rules at hand</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Aktuelles Handbuch und örtliche Vorschriften zur Hand</translation>
        </message>
        <message>
            <source>Manual and revision</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Handbuch und Ausgabe</translation>
        </message>
        <message>
            <source>Meter on the lead, switch off: grounded</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Messgerät an der Leitung, Schalter aus: Masse</translation>
        </message>
        <message>
            <source>Meter on the lead, switch on: grounded</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Messgerät an der Leitung, Schalter ein: Masse</translation>
        </message>
        <message>
            <source>Lamp, plug in, switch off: grounded</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Lampe, Stecker drin, Schalter aus: Masse</translation>
        </message>
        <message>
            <source>Lamp, plug in, switch on: grounded</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Lampe, Stecker drin, Schalter ein: Masse</translation>
        </message>
        <message>
            <source>Lamp, plug out: grounded by the tab</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Lampe, Stecker heraus: Masse durch die Zunge</translation>
        </message>
        <message>
            <source>Disc at the stop, one way</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Scheibe am Anschlag, hin</translation>
        </message>
        <message>
            <source>Disc at the stop, the other way</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Scheibe am Anschlag, her</translation>
        </message>
        <message>
            <source>Stroke of No. 1 before it fires</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Takt von Nr. 1 vor der Zündung</translation>
        </message>
        <message>
            <source>Disc</source>
            <extracomment>job/parts.py, ui/plan_box.py, ui/practice_sight.py, ui/practice_work.py</extracomment>
            <translation>Scheibe</translation>
        </message>
        <message>
            <source>Opening from the E-gap, rotor</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Öffnung vom E-Gap, Rotor</translation>
        </message>
        <message>
            <source>Wear of the heel</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Verschleiß des Gleitstücks</translation>
        </message>
        <message>
            <source>Read with</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Gelesen mit</translation>
        </message>
        <message>
            <source>Clean and dry</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Sauber und trocken</translation>
        </message>
        <message>
            <source>Faces meet squarely</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Flächen treffen gerade</translation>
        </message>
        <message>
            <source>Cam felt oiled as the manual says</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Nockenfilz nach Handbuch geölt</translation>
        </message>
        <message>
            <source>Faces dressed</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Flächen abgezogen</translation>
        </message>
        <message>
            <source>Contacts replaced</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Kontakte ersetzt</translation>
        </message>
        <message>
            <source>Spring, at the contacts</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Feder, an den Kontakten</translation>
        </message>
        <message>
            <source>Backplate planned</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Grundplatte geplant</translation>
        </message>
        <message>
            <source>Contact screw planned</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Kontaktschraube geplant</translation>
        </message>
        <message>
            <source>Gap planned</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Abstand geplant</translation>
        </message>
        <message>
            <source>Read again after tightening</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Nach dem Anziehen noch einmal gelesen</translation>
        </message>
        <message>
            <source>Opening from its place, rotor</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Öffnung von ihrem Platz, Rotor</translation>
        </message>
        <message>
            <source>Contacts closed, rotor</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Kontakte geschlossen, Rotor</translation>
        </message>
        <message>
            <source>Drive flange marked</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Antriebsflansch markiert</translation>
        </message>
        <message>
            <source>Disc marked</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Scheibe markiert</translation>
        </message>
        <message>
            <source>Magneto flange marked</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Magnetflansch markiert</translation>
        </message>
        <message>
            <source>Magneto marked on the engine's pad</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Magnet am Motorflansch markiert</translation>
        </message>
        <message>
            <source>Magneto flange's mark from the disc's, with rotation</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Marke des Magnetflanschs von der der Scheibe, mit der Drehung</translation>
        </message>
        <message>
            <source>Disc's mark from the drive flange's, with rotation</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Marke der Scheibe von der des Antriebsflanschs, mit der Drehung</translation>
        </message>
        <message>
            <source>Fires, as read</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Zündet, wie gelesen</translation>
        </message>
        <message>
            <source>Wanted</source>
            <extracomment>job/parts.py, job/shift_plan.py, practice/report.py, ui/lamp_box.py</extracomment>
            <translation>Gewünscht</translation>
        </message>
        <message>
            <source>Planned: magneto flange on the disc</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Geplant: Magnetflansch auf der Scheibe</translation>
        </message>
        <message>
            <source>Planned: disc on the drive flange</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Geplant: Scheibe auf dem Antriebsflansch</translation>
        </message>
        <message>
            <source>Planned: fires</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Geplant: zündet</translation>
        </message>
        <message>
            <source>Moved: magneto flange on the disc</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Versetzt: Magnetflansch auf der Scheibe</translation>
        </message>
        <message>
            <source>Moved: disc on the drive flange</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Versetzt: Scheibe auf dem Antriebsflansch</translation>
        </message>
        <message>
            <source>Fires, afterwards</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Zündet, danach</translation>
        </message>
        <message>
            <source>Lock screw and clamp screws tight</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Sicherungs- und Klemmschrauben fest</translation>
        </message>
        <message>
            <source>Coupling pins and split pins fitted</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Kupplungsstifte und Splinte eingesetzt</translation>
        </message>
        <message>
            <source>Nuts torqued as the manual says</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Muttern nach Handbuch angezogen</translation>
        </message>
        <message>
            <source>Safety wire fitted</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Sicherungsdraht angebracht</translation>
        </message>
        <message>
            <source>Spark plugs refitted and torqued as the manual says</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Zündkerzen wieder eingebaut und nach Handbuch angezogen</translation>
        </message>
        <message>
            <source>Plug leads connected, each to its cylinder</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Zündkabel angeschlossen, jedes an seinem Zylinder</translation>
        </message>
        <message>
            <source>Switch lead connected and proved again</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Kurzschlussleitung angeschlossen und wieder nachgewiesen</translation>
        </message>
        <message>
            <source>Tools, timing pins and stop counted back</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Werkzeug, Absteckstifte und Anschlag gezählt</translation>
        </message>
        <message>
            <source>Engine speed</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Motordrehzahl</translation>
        </message>
        <message>
            <source>Drop, running on left</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Abfall, links allein</translation>
        </message>
        <message>
            <source>Drop, running on right</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Abfall, rechts allein</translation>
        </message>
        <message>
            <source>Stops firing with the switch off, at idle</source>
            <extracomment>job/parts.py</extracomment>
            <translation>Zündet nicht mehr bei Schalter aus, im Leerlauf</translation>
        </message>
        <message>
            <source>Trials</source>
            <extracomment>job/parts.py, ui/plot_pane.py, ui/plot_trials.py</extracomment>
            <translation>Versuche</translation>
        </message>
        <message>
            <source>Uncertainty</source>
            <extracomment>job/parts.py, ui/job_form.py, ui/plot_pane.py, ui/uncertainty_panel.py</extracomment>
            <translation>Unsicherheit</translation>
        </message>
        <message>
            <source>Lobes</source>
            <extracomment>job/parts.py, practice/paper.py, ui/plot_lift.py, ui/plot_pane.py</extracomment>
            <translation>Nocken</translation>
        </message>
        <message>
            <source>gap_low_mm is {low}; it must not be above gap_high_mm, {high}</source>
            <extracomment>job/parts.py</extracomment>
            <translation>gap_low_mm ist {low}; es darf nicht über gap_high_mm, {high}, liegen</translation>
        </message>
        <message>
            <source>reason is missing; a stage can be skipped only with a reason</source>
            <extracomment>job/parts.py</extracomment>
            <translation>reason fehlt; ein Schritt darf nur mit Grund ausgelassen werden</translation>
        </message>
        <message>
            <source>reason is given, but the stage is not skipped; write it as a note</source>
            <extracomment>job/parts.py</extracomment>
            <translation>reason ist angegeben, aber der Schritt ist nicht ausgelassen; als Notiz schreiben</translation>
        </message>
        <message>
            <source>gap_low_mm is {gap_low}; it must not be above gap_high_mm</source>
            <extracomment>job/parts.py</extracomment>
            <translation>gap_low_mm ist {gap_low}; es darf nicht über gap_high_mm liegen</translation>
        </message>
        <message>
            <source>“{text}” is not a date; write it as 2026-11-25</source>
            <extracomment>job/parts.py</extracomment>
            <translation>„{text}“ ist kein Datum; als 2026-11-25 schreiben</translation>
        </message>
        <message>
            <source>{label}: expanded uncertainty</source>
            <extracomment>job/readings.py</extracomment>
            <translation>{label}: erweiterte Unsicherheit</translation>
        </message>
        <message>
            <source>{label}: probability in limits</source>
            <extracomment>job/readings.py</extracomment>
            <translation>{label}: Wahrscheinlichkeit in den Grenzen</translation>
        </message>
        <message>
            <source>Not judged, for no limit was given: {what}.</source>
            <extracomment>job/readings.py</extracomment>
            <translation>Nicht beurteilt, weil keine Grenze angegeben ist: {what}.</translation>
        </message>
        <message>
            <source>no limit given, not judged</source>
            <extracomment>job/readings.py</extracomment>
            <translation>keine Grenze angegeben, nicht beurteilt</translation>
        </message>
        <message>
            <source>in limits</source>
            <extracomment>job/readings.py, ui/plot_window.py</extracomment>
            <translation>in den Grenzen</translation>
        </message>
        <message>
            <source>{label}: best estimate</source>
            <extracomment>job/readings.py</extracomment>
            <translation>{label}: bester Wert</translation>
        </message>
        <message>
            <source>{label}: coverage factor</source>
            <extracomment>job/readings.py</extracomment>
            <translation>{label}: Erweiterungsfaktor</translation>
        </message>
        <message>
            <source>as it must be</source>
            <extracomment>job/readings.py</extracomment>
            <translation>wie es sein muss</translation>
        </message>
        <message>
            <source>Disc at true top dead centre</source>
            <extracomment>job/readings.py</extracomment>
            <translation>Scheibe am wahren oberen Totpunkt</translation>
        </message>
        <message>
            <source>Difference of the drops</source>
            <extracomment>job/readings.py</extracomment>
            <translation>Unterschied der Abfälle</translation>
        </message>
        <message>
            <source>Trial {number}: {reading}</source>
            <extracomment>job/readings.py</extracomment>
            <translation>Versuch {number}: {reading}</translation>
        </message>
        <message>
            <source>Lobe {number}: {reading}</source>
            <extracomment>job/readings.py</extracomment>
            <translation>Nocken {number}: {reading}</translation>
        </message>
        <message>
            <source>Treat the propeller as live at all times: keep out of its arc, and let nobody else near it.</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>Den Propeller jederzeit als scharf behandeln: aus seinem Kreis bleiben und niemanden in seine Nähe lassen.</translation>
        </message>
        <message>
            <source>Ignition switch off; switch lead grounded and proved with a meter or lamp, not taken for granted.</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>Zündschalter aus; Kurzschlussleitung an Masse, mit Messgerät oder Lampe nachgewiesen, nicht vorausgesetzt.</translation>
        </message>
        <message>
            <source>Plugs out: at least one from every cylinder.</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>Kerzen heraus: mindestens eine je Zylinder.</translation>
        </message>
        <message>
            <source>Wheels chocked; the aircraft cannot move.</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>Räder verkeilt; das Flugzeug kann sich nicht bewegen.</translation>
        </message>
        <message>
            <source>The manufacturer's current manual and local rules govern, not this sheet.</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>Es gelten das aktuelle Handbuch des Herstellers und die örtlichen Vorschriften, nicht dieses Blatt.</translation>
        </message>
        <message>
            <source>Work on a certified aircraft is done or released by a licensed person.</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>Arbeiten an einem zugelassenen Flugzeug macht oder gibt frei, wer die Lizenz hat.</translation>
        </message>
        <message>
            <source>magview is a training and planning aid; the magnetos it ships are invented.</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>magview ist eine Hilfe zum Üben und Planen; die mitgelieferten Magnete sind erfunden.</translation>
        </message>
        <message>
            <source>this sheet</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>dieses Blatt</translation>
        </message>
        <message>
            <source>Invented for demonstration</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>Zur Vorführung erfunden</translation>
        </message>
        <message>
            <source>Cautions and making safe</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>Vorsicht und Sichern</translation>
        </message>
        <message>
            <source>Switch-lead proof</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>Nachweis der Kurzschlussleitung</translation>
        </message>
        <message>
            <source>Top dead centre and stroke</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>Oberer Totpunkt und Takt</translation>
        </message>
        <message>
            <source>Condition of the contacts</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>Zustand der Kontakte</translation>
        </message>
        <message>
            <source>Internal timing, as left</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>Innere Einstellung, hinterlassen</translation>
        </message>
        <message>
            <source>Every lobe</source>
            <extracomment>job/sheet.py, ui/job_sources.py</extracomment>
            <translation>Jeder Nocken</translation>
        </message>
        <message>
            <source>Marks before removal</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>Marken vor dem Abnehmen</translation>
        </message>
        <message>
            <source>Tooth shift</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>Zähne versetzen</translation>
        </message>
        <message>
            <source>Synchronising</source>
            <extracomment>job/sheet.py, ui/job_sources.py, ui/timing_panel.py</extracomment>
            <translation>Gleichlauf</translation>
        </message>
        <message>
            <source>Closing checks</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>Schlusskontrolle</translation>
        </message>
        <message>
            <source>Ground run</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>Standlauf</translation>
        </message>
        <message>
            <source>“{name}” is no stage of a job; stages are {known}</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>„{name}“ ist kein Schritt eines Auftrags; Schritte sind {known}</translation>
        </message>
        <message>
            <source>“{part}” is no part of a job</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>„{part}“ ist kein Teil eines Auftrags</translation>
        </message>
        <message>
            <source>a signature takes a name and a date</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>eine Unterschrift braucht Name und Datum</translation>
        </message>
        <message>
            <source>done is {done}; it must be at most the number of steps, {count}</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>done ist {done}; es darf höchstens die Zahl der Schritte sein, {count}</translation>
        </message>
        <message>
            <source>magneto_file and installation are both given; the installation has a magneto of its own</source>
            <extracomment>job/sheet.py</extracomment>
            <translation>magneto_file und installation sind beide angegeben; der Einbau hat seinen eigenen Magneten</translation>
        </message>
        <message>
            <source>The slots are those of the disc's marked tooth.</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>Die Nuten sind die des markierten Zahns der Scheibe.</translation>
        </message>
        <message>
            <source>{face}: {each}</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>{face}: {each}</translation>
        </message>
        <message>
            <source>as found, marks painted</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>vorgefunden, Marken gemalt</translation>
        </message>
        <message>
            <source>Tooth-shift plan: {magneto}</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>Plan zum Zähneversetzen: {magneto}</translation>
        </message>
        <message>
            <source>⚠ The internal timing is out of limits: put that right first, no tooth makes up for it.</source>
            <extracomment>job/shift_plan.py, ui/lamp_box.py</extracomment>
            <translation>⚠ Die innere Einstellung ist außer Grenzen: erst diese richten, kein Zahn gleicht das aus.</translation>
        </message>
        <message>
            <source>The contacts were set anew since the lamp was read: with the teeth as found it would now read {found}.</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>Die Kontakte wurden neu eingestellt, seit die Lampe abgelesen wurde: Mit den Zähnen wie vorgefunden zeigte sie jetzt {found}.</translation>
        </message>
        <message>
            <source>magneto slot {magneto}, drive slot {drive}</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>Magnetzündernut {magneto}, Antriebsnut {drive}</translation>
        </message>
        <message>
            <source>One tooth with rotation, so much earlier</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>Ein Zahn in Drehrichtung, um so viel früher</translation>
        </message>
        <message>
            <source>at the rotor</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>am Rotor</translation>
        </message>
        <message>
            <source>at the crank</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>an der Kurbel</translation>
        </message>
        <message>
            <source>Magneto flange on the disc</source>
            <extracomment>job/shift_plan.py, ui/teeth_box.py</extracomment>
            <translation>Magnetzünderflansch auf der Scheibe</translation>
        </message>
        <message>
            <source>Disc on the drive flange</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>Scheibe auf dem Antriebsflansch</translation>
        </message>
        <message>
            <source>{slot} of {teeth}</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>{slot} von {teeth}</translation>
        </message>
        <message>
            <source>this magneto is not on an engine: there is no coupling to move</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>dieser Magnet ist an keinem Motor: es gibt keine Kupplung zu versetzen</translation>
        </message>
        <message>
            <source>Tooth-shift plan</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>Plan zum Zähneversetzen</translation>
        </message>
        <message>
            <source>{way} seen from the drive end</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>{way}, von der Antriebsseite gesehen</translation>
        </message>
        <message>
            <source>Teeth</source>
            <extracomment>job/shift_plan.py, lessons/a-full-job.json</extracomment>
            <translation>Zähne</translation>
        </message>
        <message>
            <source>{magneto} at the magneto, {drive} at the drive</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>{magneto} am Magnetzünder, {drive} am Antrieb</translation>
        </message>
        <message>
            <source>Lamp reads</source>
            <extracomment>job/shift_plan.py, ui/lamp_box.py</extracomment>
            <translation>Lampe zeigt</translation>
        </message>
        <message>
            <source>Expected</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>Erwartet</translation>
        </message>
        <message>
            <source>Off by</source>
            <extracomment>job/shift_plan.py, practice/report.py, ui/plan_box.py</extracomment>
            <translation>Daneben um</translation>
        </message>
        <message>
            <source>Coupling as wanted</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>Kupplung wie gewünscht</translation>
        </message>
        <message>
            <source>Magneto flange one with rotation, disc one against</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>Magnetzünderflansch einer in Drehrichtung, Scheibe einer dagegen</translation>
        </message>
        <message>
            <source>One tooth at a time, seen from the drive end: check the slot, then tick</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>Zahn um Zahn, von der Antriebsseite gesehen: Nut prüfen, dann abhaken</translation>
        </message>
        <message>
            <source>Magneto slot</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>Magnetz.-nut</translation>
        </message>
        <message>
            <source>Drive slot</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>Antriebs-nut</translation>
        </message>
        <message>
            <source>{box} Tightened and secured. {box} Lamp read again, the propeller turned with rotation so that the play is taken up. What it reads then counts, not what is expected here.</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>{box} Angezogen und gesichert. {box} Lampe wieder abgelesen, der Propeller in Drehrichtung gedreht, damit das Spiel heraus ist. Was sie dann zeigt, gilt, nicht was hier erwartet wird.</translation>
        </message>
        <message>
            <source>✗ This move does not reach it: {outside}.</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>✗ Dieser Schritt erreicht es nicht: {outside}.</translation>
        </message>
        <message>
            <source>⚠ The installation does not fit together: {mismatch}.</source>
            <extracomment>job/shift_plan.py, ui/lamp_box.py</extracomment>
            <translation>⚠ Der Einbau passt nicht zusammen: {mismatch}.</translation>
        </message>
        <message>
            <source>Lamp reads afterwards, ° before top dead centre</source>
            <extracomment>job/shift_plan.py</extracomment>
            <translation>Lampe zeigt danach, ° vor dem oberen Totpunkt</translation>
        </message>
        <message>
            <source>DANGER: THE MAGNETO IS LIVE WITH THE SWITCH OFF. Stop. Keep clear of the propeller. Repair the switch lead, or take the magneto out of use, and prove the lead again before anything is turned.</source>
            <extracomment>job/standing.py</extracomment>
            <translation>GEFAHR: DER MAGNET IST SCHARF BEI AUSGESCHALTETEM SCHALTER. Aufhören. Vom Propeller fernbleiben. Die Kurzschlussleitung instand setzen oder den Magneten außer Betrieb nehmen, und die Leitung erneut nachweisen, bevor irgendetwas gedreht wird.</translation>
        </message>
        <message>
            <source>DANGER: THE MAGNETO IS LIVE WITH ITS PLUG OUT: the tab does not ground it. Stop. Keep clear of the propeller; ground the magneto before anything is turned.</source>
            <extracomment>job/standing.py</extracomment>
            <translation>GEFAHR: DER MAGNET IST SCHARF BEI GEZOGENEM STECKER: Die Zunge legt ihn nicht an Masse. Aufhören. Vom Propeller fernbleiben; den Magneten an Masse legen, bevor irgendetwas gedreht wird.</translation>
        </message>
        <message>
            <source>1 reading out of limits or not as it must be</source>
            <extracomment>job/standing.py</extracomment>
            <translation>1 Wert außerhalb der Grenzen oder nicht wie er sein muss</translation>
        </message>
        <message>
            <source>{count} readings out of limits or not as they must be</source>
            <extracomment>job/standing.py</extracomment>
            <translation>{count} Werte außerhalb der Grenzen oder nicht wie sie sein müssen</translation>
        </message>
        <message>
            <source>1 reading found out of limits</source>
            <extracomment>job/standing.py</extracomment>
            <translation>1 Wert außerhalb vorgefunden</translation>
        </message>
        <message>
            <source>{count} readings found out of limits</source>
            <extracomment>job/standing.py</extracomment>
            <translation>{count} Werte außerhalb vorgefunden</translation>
        </message>
        <message>
            <source>1 point to be cleared up</source>
            <extracomment>job/standing.py</extracomment>
            <translation>1 Punkt zu klären</translation>
        </message>
        <message>
            <source>{count} points to be cleared up</source>
            <extracomment>job/standing.py</extracomment>
            <translation>{count} Punkte zu klären</translation>
        </message>
        <message>
            <source>skipped</source>
            <extracomment>job/standing.py</extracomment>
            <translation>ausgelassen</translation>
        </message>
        <message>
            <source>open</source>
            <extracomment>job/standing.py, ui/plot_lift.py</extracomment>
            <translation>offen</translation>
        </message>
        <message>
            <source>done, with {what}</source>
            <extracomment>job/standing.py</extracomment>
            <translation>erledigt, mit {what}</translation>
        </message>
        <message>
            <source>done</source>
            <extracomment>job/standing.py</extracomment>
            <translation>erledigt</translation>
        </message>
        <message>
            <source>The timing wanted, {wanted}, is outside this sheet's limits, {limits}; readings are judged by the limits.</source>
            <extracomment>job/standing.py</extracomment>
            <translation>Der gewünschte Zündzeitpunkt, {wanted}, liegt außerhalb der Grenzen dieses Blattes, {limits}; Werte werden nach den Grenzen beurteilt.</translation>
        </message>
        <message>
            <source>Teeth and readings contradict each other: magneto flange {magneto} and disc {disc} would bring it from {before} to {expected}, and it is said to fire {after}; count the teeth, and read the lamp again.</source>
            <extracomment>job/standing.py</extracomment>
            <translation>Zähne und Werte widersprechen sich: Magnetflansch {magneto} und Scheibe {disc} brächten ihn von {before} auf {expected}, und er soll bei {after} zünden; die Zähne zählen und die Lampe erneut ablesen.</translation>
        </message>
        <message>
            <source>1 missing</source>
            <extracomment>job/standing.py</extracomment>
            <translation>1 fehlt</translation>
        </message>
        <message>
            <source>{count} missing</source>
            <extracomment>job/standing.py</extracomment>
            <translation>{count} fehlen</translation>
        </message>
        <message>
            <source>{error}. What you entered is kept here and tried again with your next step; a copy is in {folder}</source>
            <extracomment>job/store.py</extracomment>
            <translation>{error}. Das Eingetragene ist hier aufgehoben und wird mit dem nächsten Schritt wieder versucht; eine Kopie liegt in {folder}</translation>
        </message>
        <message>
            <source>{error}. What you entered is kept here and tried again with your next step</source>
            <extracomment>job/store.py</extracomment>
            <translation>{error}. Das Eingetragene ist hier aufgehoben und wird mit dem nächsten Schritt wieder versucht</translation>
        </message>
        <message>
            <source>{error}. What you entered is kept here; a copy is in {folder}</source>
            <extracomment>job/store.py</extracomment>
            <translation>{error}. Das Eingetragene ist hier aufgehoben; eine Kopie liegt in {folder}</translation>
        </message>
        <message>
            <source>{error}. What you entered is kept here</source>
            <extracomment>job/store.py</extracomment>
            <translation>{error}. Das Eingetragene ist hier aufgehoben</translation>
        </message>
        <message>
            <source>{name} may only be read; save it under another name to change it</source>
            <extracomment>job/store.py</extracomment>
            <translation>{name} darf nur gelesen werden; zum Ändern unter anderem Namen sichern</translation>
        </message>
        <message>
            <source>{name}: is there already; open it, or choose another name</source>
            <extracomment>job/store.py</extracomment>
            <translation>{name}: gibt es schon; öffnen oder anderen Namen wählen</translation>
        </message>
        <message>
            <source>{name}: is there already; choose another name</source>
            <extracomment>job/store.py</extracomment>
            <translation>{name}: gibt es schon; anderen Namen wählen</translation>
        </message>
        <message>
            <source>{name} is open in another window or program: it can be read here, and changed there; save it under another name to change it here</source>
            <extracomment>job/store.py</extracomment>
            <translation>{name} ist in einem anderen Fenster oder Programm offen: hier kann gelesen, dort geändert werden; zum Ändern hier unter anderem Namen sichern</translation>
        </message>
        <message>
            <source>{name} can only be read: its folder takes no files ({reason}); save it elsewhere to change it</source>
            <extracomment>job/store.py</extracomment>
            <translation>{name} kann nur gelesen werden: der Ordner nimmt keine Dateien ({reason}); zum Ändern anderswo sichern</translation>
        </message>
        <message>
            <source>{name}: cannot be written: its folder or drive is gone; put it back, or save elsewhere</source>
            <extracomment>job/store.py</extracomment>
            <translation>{name}: lässt sich nicht schreiben: Ordner oder Laufwerk ist weg; wieder anstecken oder anderswo sichern</translation>
        </message>
        <message>
            <source>{name}: was changed by another program and is left as it is; reload it, or save under another name</source>
            <extracomment>job/store.py</extracomment>
            <translation>{name}: wurde von einem anderen Programm geändert und bleibt, wie es ist; neu laden oder unter anderem Namen sichern</translation>
        </message>
        <message>
            <source>this sheet is larger than {most} MB, the most that is read again; shorten it</source>
            <extracomment>job/store.py</extracomment>
            <translation>dieses Blatt ist größer als {most} MB, das meiste, was wieder gelesen wird; kürzen</translation>
        </message>
        <message>
            <source>{name}: is no name of a file</source>
            <extracomment>job/store.py</extracomment>
            <translation>{name}: ist kein Dateiname</translation>
        </message>
        <message>
            <source>this step of the history is damaged; it cannot be undone or done again</source>
            <extracomment>job/store.py</extracomment>
            <translation>dieser Schritt der Geschichte ist beschädigt; er lässt sich nicht zurücknehmen oder wiederholen</translation>
        </message>
        <message>
            <source>{name}: cannot be written; choose another name</source>
            <extracomment>job/store.py</extracomment>
            <translation>{name}: lässt sich nicht schreiben; anderen Namen wählen</translation>
        </message>
        <message>
            <source>intake</source>
            <extracomment>job/words.py, ui/job_kinds.py</extracomment>
            <translation>Ansaugen</translation>
        </message>
        <message>
            <source>compression</source>
            <extracomment>job/words.py, ui/job_kinds.py</extracomment>
            <translation>Verdichten</translation>
        </message>
        <message>
            <source>power</source>
            <extracomment>job/words.py, ui/job_kinds.py</extracomment>
            <translation>Arbeiten</translation>
        </message>
        <message>
            <source>exhaust</source>
            <extracomment>job/words.py, ui/job_kinds.py</extracomment>
            <translation>Ausstoßen</translation>
        </message>
        <message>
            <source>within ±{limit}</source>
            <extracomment>job/words.py</extracomment>
            <translation>innerhalb ±{limit}</translation>
        </message>
        <message>
            <source>{angle} late</source>
            <extracomment>job/words.py, ui/plot_window.py, ui/setting_panel.py</extracomment>
            <translation>{angle} zu spät</translation>
        </message>
        <message>
            <source>{angle} early</source>
            <extracomment>job/words.py, ui/plot_window.py, ui/setting_panel.py</extracomment>
            <translation>{angle} zu früh</translation>
        </message>
        <message>
            <source>at most {limit}</source>
            <extracomment>job/words.py</extracomment>
            <translation>höchstens {limit}</translation>
        </message>
        <message>
            <source>at least {limit}</source>
            <extracomment>job/words.py</extracomment>
            <translation>mindestens {limit}</translation>
        </message>
        <message>
            <source>{angle} before top dead centre</source>
            <extracomment>job/words.py</extracomment>
            <translation>{angle} vor dem oberen Totpunkt</translation>
        </message>
        <message>
            <source>{angle} after top dead centre</source>
            <extracomment>job/words.py</extracomment>
            <translation>{angle} nach dem oberen Totpunkt</translation>
        </message>
        <message>
            <source>{name} has shape {shape}; an axis of a map is one-dimensional</source>
            <extracomment>physics/adjustment_map.py</extracomment>
            <translation>{name} hat die Form {shape}; eine Achse einer Karte ist eindimensional</translation>
        </message>
        <message>
            <source>{name} holds a value that is not finite</source>
            <extracomment>physics/adjustment_map.py</extracomment>
            <translation>{name} enthält einen Wert, der nicht endlich ist</translation>
        </message>
        <message>
            <source>The trials ask for {scale} times the file's lift: check that this is the file for this cam.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>Die Versuche verlangen das {scale}-Fache des Hubs der Datei: prüfen, ob es die Datei dieses Nockens ist.</translation>
        </message>
        <message>
            <source>The trials ask for {scale} times the file's rise: check that this is the file for this cam.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>Die Versuche verlangen das {scale}-Fache des Anstiegs der Datei: prüfen, ob es die Datei dieses Nockens ist.</translation>
        </message>
        <message>
            <source>The gap of trial {behind} is smaller than that of trial {ahead}, though its plate stands further with rotation; openings off the mark but within the tolerance explain it: set them closer to the mark.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>Der Abstand von Versuch {behind} ist kleiner als der von Versuch {ahead}, obwohl seine Platte weiter mit der Drehung steht; Öffnungen neben der Marke, aber in der Toleranz, erklären es: näher an der Marke einstellen.</translation>
        </message>
        <message>
            <source>{mm} mm ({inches} in)</source>
            <extracomment>physics/advice.py, physics/setting.py, practice/words.py</extracomment>
            <translation>{mm} mm ({inches} in)</translation>
        </message>
        <message>
            <source>{low} to {high} mm ({low_in} to {high_in} in)</source>
            <extracomment>physics/advice.py, practice/paper.py</extracomment>
            <translation>{low} bis {high} mm ({low_in} bis {high_in} in)</translation>
        </message>
        <message>
            <source>Done: the gap, {span}, is in limits.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>Fertig: der Abstand, {span}, liegt in den Grenzen.</translation>
        </message>
        <message>
            <source>{gap}; {probability} times in 100 it will be {span}</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>{gap}; {probability} von 100 Malen wird er {span} sein</translation>
        </message>
        <message>
            <source>Start with the plate at {plate}° and the contacts set to open at the E-gap: by the file the gap should be {expected}.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>Mit der Platte auf {plate}° beginnen, die Kontakte auf Öffnen am E-Gap gestellt: nach der Datei sollte der Abstand {expected} sein.</translation>
        </message>
        <message>
            <source>The gap cannot be brought into limits within the slot ({low}° to {high}°): that would take about {aim}°. The nearest is the end of the slot at {plate}°, where the gap should be {expected}.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>Der Abstand lässt sich im Schlitz ({low}° bis {high}°) nicht in die Grenzen bringen: das bräuchte etwa {aim}°. Am nächsten ist das Ende des Schlitzes bei {plate}°, wo er {expected} sein sollte.</translation>
        </message>
        <message>
            <source>Leave the plate at {plate}° and set the opening again, closer to the mark: an opening off the mark but within the tolerance explains this gap, which should be {expected}.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>Die Platte auf {plate}° lassen und die Öffnung noch einmal einstellen, näher an der Marke: eine Öffnung neben der Marke, aber in der Toleranz, erklärt diesen Abstand, der {expected} sein sollte.</translation>
        </message>
        <message>
            <source>Trials {first} and {second} stood at the same plate and give different gaps; openings off the mark but within the tolerance explain it: set them closer to the mark.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>Die Versuche {first} und {second} standen auf derselben Platte und geben verschiedene Abstände; Öffnungen neben der Marke, aber in der Toleranz, erklären es: näher an der Marke einstellen.</translation>
        </message>
        <message>
            <source>The gap of trial {behind} is smaller than that of trial {ahead}, though its plate stands further with rotation, more than openings within the tolerance explain: check that the clamping screws hold, that lobe 1 was used, and which blades were, and repeat one of the two.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>Der Abstand von Versuch {behind} ist kleiner als der von Versuch {ahead}, obwohl seine Platte weiter mit der Drehung steht, mehr als Öffnungen in der Toleranz erklären: prüfen, ob die Klemmschrauben halten, ob Nocken 1 und welche Blätter benutzt wurden, und einen der beiden wiederholen.</translation>
        </message>
        <message>
            <source>above {length}</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>über {length}</translation>
        </message>
        <message>
            <source>the limits are {low} to {high} mm; they must be above 0, the low one first</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>die Grenzen sind {low} bis {high} mm; sie müssen über 0 liegen, die untere zuerst</translation>
        </message>
        <message>
            <source>the wanted gap is {wanted} mm; the limits are {low} to {high} mm</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>der gewünschte Abstand ist {wanted} mm; die Grenzen sind {low} bis {high} mm</translation>
        </message>
        <message>
            <source>Turn the plate {turn}° with cam rotation, to {plate}°: the gap should be {expected}.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>Die Platte {turn}° mit der Nockendrehung drehen, auf {plate}°: der Abstand sollte {expected} sein.</translation>
        </message>
        <message>
            <source>Turn the plate {turn}° against cam rotation, to {plate}°: the gap should be {expected}.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>Die Platte {turn}° gegen die Nockendrehung drehen, auf {plate}°: der Abstand sollte {expected} sein.</translation>
        </message>
        <message>
            <source>The aim is about {aim}°, but that is too far from what was tried to be sure of.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>Das Ziel ist etwa {aim}°, aber das ist zu weit vom Versuchten, um sicher zu sein.</translation>
        </message>
        <message>
            <source>The gap, {span}, may be in limits, but the blades cannot tell: the plate is right where it is, so try finer blades, or set the opening again, closer to the mark.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>Der Abstand, {span}, kann in den Grenzen liegen, aber die Blätter zeigen es nicht: die Platte steht richtig, also feinere Blätter probieren oder die Öffnung näher an der Marke einstellen.</translation>
        </message>
        <message>
            <source>Leave the plate at the end of the slot and set the opening again, closer to the mark: an opening off the mark but within the tolerance explains this gap, which should be {expected}.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>Die Platte am Ende des Schlitzes lassen und die Öffnung noch einmal einstellen, näher an der Marke: eine Öffnung neben der Marke, aber in der Toleranz, erklärt diesen Abstand, der {expected} sein sollte.</translation>
        </message>
        <message>
            <source>Trial {trial} does not fit the others and is left out: its gap is larger than any opening within the tolerance explains; check it.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>Versuch {trial} passt nicht zu den anderen und bleibt weg: sein Abstand ist größer, als eine Öffnung in der Toleranz erklärt; prüfen.</translation>
        </message>
        <message>
            <source>Trial {trial} does not fit the others and is left out: its gap is smaller than any opening within the tolerance explains; check it.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>Versuch {trial} passt nicht zu den anderen und bleibt weg: sein Abstand ist kleiner, als eine Öffnung in der Toleranz erklärt; prüfen.</translation>
        </message>
        <message>
            <source>Trials {first} and {second} stood at the same plate and give different gaps, more than openings within the tolerance explain: check that the clamping screws hold, that lobe 1 was used, and which blades were, and repeat one of the two.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>Die Versuche {first} und {second} standen auf derselben Platte und geben verschiedene Abstände, mehr als Öffnungen in der Toleranz erklären: prüfen, ob die Klemmschrauben halten, ob Nocken 1 und welche Blätter benutzt wurden, und einen der beiden wiederholen.</translation>
        </message>
        <message>
            <source>The trials contradict each other; clear that up before going on.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>Die Versuche widersprechen einander; das erst klären.</translation>
        </message>
        <message>
            <source>It is not what the other trials lead to expect, so try the blades once more.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>Das ist nicht, was die anderen Versuche erwarten lassen, also die Blätter noch einmal probieren.</translation>
        </message>
        <message>
            <source>That is the end of the slot; the gap may just come into limits there.</source>
            <extracomment>physics/advice.py</extracomment>
            <translation>Das ist das Ende des Schlitzes; dort kommt der Abstand vielleicht gerade in die Grenzen.</translation>
        </message>
        <message>
            <source>{hidden} mm of lift</source>
            <extracomment>physics/breaker.py</extracomment>
            <translation>{hidden} mm Hub</translation>
        </message>
        <message>
            <source>a part of it altogether</source>
            <extracomment>physics/breaker.py</extracomment>
            <translation>einen Teil davon ganz</translation>
        </message>
        <message>
            <source>breaker.heel_radius_mm: the heel cannot follow the cam's flank, which is too hollow for its radius or too steep for its arm: it misses {missed}, where at most {most} mm is allowed; a smaller heel, a longer rise_deg or fall_deg, or another law would fit</source>
            <extracomment>physics/breaker.py</extracomment>
            <translation>breaker.heel_radius_mm: das Gleitstück kann der Flanke nicht folgen, die für seinen Radius zu hohl oder für seinen Arm zu steil ist: es verfehlt {missed}, wo höchstens {most} mm erlaubt sind; ein kleineres Gleitstück, mehr rise_deg oder fall_deg oder ein anderes Gesetz passte</translation>
        </message>
        <message>
            <source>closed_deg is {closed}; it must be 0 or more</source>
            <extracomment>physics/coil.py</extracomment>
            <translation>closed_deg ist {closed}; es muss 0 oder mehr sein</translation>
        </message>
        <message>
            <source>{name} has no electrical values</source>
            <extracomment>physics/coil.py</extracomment>
            <translation>{name} hat keine elektrischen Werte</translation>
        </message>
        <message>
            <source>readings have shape {shape}; those of one setting are needed</source>
            <extracomment>physics/coil.py</extracomment>
            <translation>readings hat die Form {shape}; die einer Einstellung werden gebraucht</translation>
        </message>
        <message>
            <source>poles is {poles}; it must be an even number from 2 on</source>
            <extracomment>physics/coil.py</extracomment>
            <translation>poles ist {poles}; es muss eine gerade Zahl ab 2 sein</translation>
        </message>
        <message>
            <source>speed_rpm is {speed}; it must be above 0 and at most {most}</source>
            <extracomment>physics/coil.py</extracomment>
            <translation>speed_rpm ist {speed}; es muss über 0 und höchstens {most} sein</translation>
        </message>
        <message>
            <source>an angle is infinite</source>
            <extracomment>physics/coil.py</extracomment>
            <translation>ein Winkel ist unendlich</translation>
        </message>
        <message>
            <source>the nearest this coupling comes is {residual}° of crank late, outside the tolerance of {tolerance}°</source>
            <extracomment>physics/coupling.py</extracomment>
            <translation>am nächsten kommt diese Kupplung {residual}° Kurbel zu spät, außerhalb der Toleranz von {tolerance}°</translation>
        </message>
        <message>
            <source>rotor_turns_per_crank_turn is {given}; {cylinders} cylinders and {poles} poles need {cylinders}/{twice}, which is {needed}</source>
            <extracomment>physics/coupling.py</extracomment>
            <translation>rotor_turns_per_crank_turn ist {given}; {cylinders} Zylinder und {poles} Pole brauchen {cylinders}/{twice}, das ist {needed}</translation>
        </message>
        <message>
            <source>the nearest this coupling comes is {residual}° of crank early, outside the tolerance of {tolerance}°</source>
            <extracomment>physics/coupling.py</extracomment>
            <translation>am nächsten kommt diese Kupplung {residual}° Kurbel zu früh, außerhalb der Toleranz von {tolerance}°</translation>
        </message>
        <message>
            <source>the list of moves must be allowed at least 1 move, not {most}</source>
            <extracomment>physics/coupling.py</extracomment>
            <translation>die Liste muss mindestens 1 Schritt fassen dürfen, nicht {most}</translation>
        </message>
        <message>
            <source>the reading is {value}° before top dead centre; it must lie within ±3600°</source>
            <extracomment>physics/coupling.py</extracomment>
            <translation>die Ablesung ist {value}° vor dem oberen Totpunkt; sie muss innerhalb ±3600° liegen</translation>
        </message>
        <message>
            <source>the wanted timing is {value}° before top dead centre; it must lie within ±3600°</source>
            <extracomment>physics/coupling.py</extracomment>
            <translation>der gewünschte Zündzeitpunkt ist {value}° vor dem oberen Totpunkt; er muss innerhalb ±3600° liegen</translation>
        </message>
        <message>
            <source>the rotor turns {ratio} times per crank turn; it must be 0.05 to 20 times</source>
            <extracomment>physics/coupling.py</extracomment>
            <translation>der Rotor dreht {ratio}-mal je Kurbelumdrehung; es müssen 0,05 bis 20 sein</translation>
        </message>
        <message>
            <source>the coupling has {count} teeth at the magneto; it must have 1 to {most}</source>
            <extracomment>physics/coupling.py</extracomment>
            <translation>die Kupplung hat {count} Zähne am Magneten; es müssen 1 bis {most} sein</translation>
        </message>
        <message>
            <source>the coupling has {count} teeth at the drive; it must have 1 to {most}</source>
            <extracomment>physics/coupling.py</extracomment>
            <translation>die Kupplung hat {count} Zähne am Antrieb; es müssen 1 bis {most} sein</translation>
        </message>
        <message>
            <source>{cylinders} cylinders and {poles} poles have no speed ratio; both must be at least 1</source>
            <extracomment>physics/coupling.py</extracomment>
            <translation>{cylinders} Zylinder und {poles} Pole haben kein Drehzahlverhältnis; beide müssen mindestens 1 sein</translation>
        </message>
        <message>
            <source>the left magneto's reading is {value}; it must be a number of degrees</source>
            <extracomment>physics/coupling.py</extracomment>
            <translation>die Ablesung des linken Magneten ist {value}; sie muss eine Zahl von Graden sein</translation>
        </message>
        <message>
            <source>the right magneto's reading is {value}; it must be a number of degrees</source>
            <extracomment>physics/coupling.py</extracomment>
            <translation>die Ablesung des rechten Magneten ist {value}; sie muss eine Zahl von Graden sein</translation>
        </message>
        <message>
            <source>the knots of a rising curve must increase in x and in y</source>
            <extracomment>physics/curve.py</extracomment>
            <translation>die Stützpunkte einer steigenden Kurve müssen in x und in y wachsen</translation>
        </message>
        <message>
            <source>firing_order puts cylinder {cylinder} {away}° from where its piston is at the top; with all rods on one crank pin it cannot fire in that place</source>
            <extracomment>physics/engine.py</extracomment>
            <translation>firing_order setzt Zylinder {cylinder} {away}° neben seinen oberen Totpunkt; mit allen Pleueln auf einem Kurbelzapfen kann er dort nicht zünden</translation>
        </message>
        <message>
            <source>there is no cylinder {cylinder}; the engine has 1 to {cylinders}</source>
            <extracomment>physics/engine.py</extracomment>
            <translation>es gibt keinen Zylinder {cylinder}; der Motor hat 1 bis {cylinders}</translation>
        </message>
        <message>
            <source>both stop readings are {first}°; for the second the crank is turned to the stop the other way</source>
            <extracomment>physics/engine.py</extracomment>
            <translation>beide Anschlagablesungen sind {first}°; für die zweite wird die Kurbel andersherum an den Anschlag gedreht</translation>
        </message>
        <message>
            <source>stop readings of {first}° and {second}° have no middle that can be told from its opposite; they must be numbers, and not 180° apart</source>
            <extracomment>physics/engine.py</extracomment>
            <translation>Anschlagablesungen von {first}° und {second}° haben keine Mitte, die sich von ihrem Gegenüber unterscheiden lässt; es müssen Zahlen sein, nicht 180° auseinander</translation>
        </message>
        <message>
            <source>there are {count} openings; there must be one for each of the {lobes} lobes</source>
            <extracomment>physics/engine.py</extracomment>
            <translation>es gibt {count} Öffnungen; es muss eine für jeden der {lobes} Nocken geben</translation>
        </message>
        <message>
            <source>the cam gives {sparks} sparks in two crank turns; the engine needs {n}</source>
            <extracomment>physics/engine.py</extracomment>
            <translation>der Nocken gibt {sparks} Funken in zwei Kurbelumdrehungen; der Motor braucht {n}</translation>
        </message>
        <message>
            <source>the timing is {btdc}° before top dead centre; it must lie within ±90°</source>
            <extracomment>physics/engine.py</extracomment>
            <translation>der Zündzeitpunkt ist {btdc}° vor dem oberen Totpunkt; er muss innerhalb ±90° liegen</translation>
        </message>
        <message>
            <source>the piston of cylinder {cylinder} does not reach {wanted} mm below top dead centre</source>
            <extracomment>physics/engine.py</extracomment>
            <translation>der Kolben von Zylinder {cylinder} erreicht {wanted} mm unter dem oberen Totpunkt nicht</translation>
        </message>
        <message>
            <source>the scaled magneto</source>
            <extracomment>physics/flank.py</extracomment>
            <translation>der angepasste Magnet</translation>
        </message>
        <message>
            <source>the scaled cam cannot be: {reason}</source>
            <extracomment>physics/flank.py</extracomment>
            <translation>der angepasste Nocken kann nicht sein: {reason}</translation>
        </message>
        <message>
            <source>Fitted from {trials}: lift × {lift_scale} ± {lift_spread}, rise × {rise_scale} ± {rise_spread}, index {index}° ± {index_spread}° (95 in 100). Law of motion, dwell and fall are the first file's.</source>
            <extracomment>physics/flank_fit.py</extracomment>
            <translation>Angepasst an {trials}: Hub × {lift_scale} ± {lift_spread}, Anstieg × {rise_scale} ± {rise_spread}, Lage {index}° ± {index_spread}° (95 von 100). Bewegungsgesetz, Rast und Abfall sind die der ersten Datei.</translation>
        </message>
        <message>
            <source>1 trial</source>
            <extracomment>physics/flank_fit.py</extracomment>
            <translation>1 Versuch</translation>
        </message>
        <message>
            <source>{count} trials</source>
            <extracomment>physics/flank_fit.py</extracomment>
            <translation>{count} Versuche</translation>
        </message>
        <message>
            <source>{name}, fitted from {trials}</source>
            <extracomment>physics/flank_fit.py</extracomment>
            <translation>{name}, angepasst an {trials}</translation>
        </message>
        <message>
            <source>{count} trials are given; at most {most} are used</source>
            <extracomment>physics/flank_fit.py</extracomment>
            <translation>{count} Versuche sind angegeben; höchstens {most} werden verwendet</translation>
        </message>
        <message>
            <source>the probability is {probability}; it must lie between 0 and 1</source>
            <extracomment>physics/flank_fit.py</extracomment>
            <translation>die Wahrscheinlichkeit ist {probability}; sie muss zwischen 0 und 1 liegen</translation>
        </message>
        <message>
            <source>fitted from {trials}</source>
            <extracomment>physics/flank_fit.py</extracomment>
            <translation>angepasst an {trials}</translation>
        </message>
        <message>
            <source>an inspection at {hours} h; hours lie between 0 and {most}</source>
            <extracomment>physics/inspection.py</extracomment>
            <translation>eine Prüfung bei {hours} h; Stunden liegen zwischen 0 und {most}</translation>
        </message>
        <message>
            <source>the gap is {value} mm; it must lie between 0 and 100</source>
            <extracomment>physics/inspection.py</extracomment>
            <translation>der Abstand ist {value} mm; er muss zwischen 0 und 100 liegen</translation>
        </message>
        <message>
            <source>the gap's half-width is {value} mm; it must lie between 0 and 100</source>
            <extracomment>physics/inspection.py</extracomment>
            <translation>die halbe Breite des Abstands ist {value} mm; sie muss zwischen 0 und 100 liegen</translation>
        </message>
        <message>
            <source>the opening's error is {value}°; it must lie within 90°</source>
            <extracomment>physics/inspection.py</extracomment>
            <translation>der Fehler der Öffnung ist {value}°; er muss innerhalb 90° liegen</translation>
        </message>
        <message>
            <source>the opening's half-width is {value}°; it must lie within 90°</source>
            <extracomment>physics/inspection.py</extracomment>
            <translation>die halbe Breite der Öffnung ist {value}°; sie muss innerhalb 90° liegen</translation>
        </message>
        <message>
            <source>common practice</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>allgemeine Praxis</translation>
        </message>
        <message>
            <source>resolution: read to the nearest division, half of one to each side</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>Auflösung: auf den nächsten Teilstrich gelesen, ein halber nach jeder Seite</translation>
        </message>
        <message>
            <source>resolution: between the blade that passes and the next</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>Auflösung: zwischen dem Blatt, das geht, und dem nächsten</translation>
        </message>
        <message>
            <source>straightedge held by hand</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>Lineal von Hand gehalten</translation>
        </message>
        <message>
            <source>straightedge clamped to the cam</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>Lineal am Nocken festgeklemmt</translation>
        </message>
        <message>
            <source>rule to 1 mm</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>Maßstab auf 1 mm</translation>
        </message>
        <message>
            <source>rule to thirty-seconds of an inch</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>rule to 0.5 mm</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>Maßstab auf 0,5 mm</translation>
        </message>
        <message>
            <source>rule to 1/64 in</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>Maßstab auf 1/64 in</translation>
        </message>
        <message>
            <source>magnifier with a scale to 0.1 mm</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>Lupe mit Skala auf 0,1 mm</translation>
        </message>
        <message>
            <source>blades in steps of 0.05 mm</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>Blätter in Stufen von 0,05 mm</translation>
        </message>
        <message>
            <source>blades in steps of 0.001 in</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>Blätter in Stufen von 0,001 in</translation>
        </message>
        <message>
            <source>blades in steps of 0.0005 in</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>Blätter in Stufen von 0,0005 in</translation>
        </message>
        <message>
            <source>blades in steps of 0.01 mm</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>Blätter in Stufen von 0,01 mm</translation>
        </message>
        <message>
            <source>drag judged by one blade</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>Klemmen nach einem Blatt beurteilt</translation>
        </message>
        <message>
            <source>drag compared with the next blade's</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>Klemmen mit dem nächsten Blatt verglichen</translation>
        </message>
        <message>
            <source>strip of thin paper, just free</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>Streifen dünnes Papier, gerade frei</translation>
        </message>
        <message>
            <source>ohmmeter across the contacts</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>Ohmmeter über den Kontakten</translation>
        </message>
        <message>
            <source>timing lamp</source>
            <extracomment>physics/instruments.py, ui/class_editor_fields.py</extracomment>
            <translation>Prüflampe</translation>
        </message>
        <message>
            <source>rotor turned by hand</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>Rotor von Hand gedreht</translation>
        </message>
        <message>
            <source>rotor turned with a bar, against a stop</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>Rotor mit einer Stange gedreht, gegen Anschlag</translation>
        </message>
        <message>
            <source>propeller turned by hand</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>Propeller von Hand gedreht</translation>
        </message>
        <message>
            <source>propeller tapped round</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>Propeller herumgeklopft</translation>
        </message>
        <message>
            <source>disc to 1°</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>Scheibe auf 1°</translation>
        </message>
        <message>
            <source>disc to 0.5°</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>Scheibe auf 0,5°</translation>
        </message>
        <message>
            <source>angle indicator to 0.1°</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>Winkelanzeiger auf 0,1°</translation>
        </message>
        <message>
            <source>turned to and fro</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>hin und her gedreht</translation>
        </message>
        <message>
            <source>anywhere within the play</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>irgendwo im Spiel</translation>
        </message>
        <message>
            <source>always led in with rotation</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>immer mit der Drehung angefahren</translation>
        </message>
        <message>
            <source>the play is taken up</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>das Spiel ist herausgenommen</translation>
        </message>
        <message>
            <source>read before tightening</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>vor dem Anziehen gelesen</translation>
        </message>
        <message>
            <source>either way, as the file</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>hin wie her, wie in der Datei</translation>
        </message>
        <message>
            <source>read again after tightening</source>
            <extracomment>physics/instruments.py</extracomment>
            <translation>nach dem Anziehen noch einmal gelesen</translation>
        </message>
        <message>
            <source>as found</source>
            <extracomment>physics/instruments.py, ui/drive_view.py</extracomment>
            <translation>wie vorgefunden</translation>
        </message>
        <message>
            <source>the table's lift comes to {lift} mm at the contacts, and {least} to {most} mm is allowed: are its unit and the kind of reading right?</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation>der Hub der Tabelle ist {lift} mm an den Kontakten, erlaubt sind {least} bis {most} mm: stimmen Einheit und Art der Ablesung?</translation>
        </message>
        <message>
            <source>the readings stand high off the lobe and fall on it: say that the dial falls with lift</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation>die Ablesungen sind neben dem Nocken hoch und fallen darauf: angeben, dass die Uhr mit dem Hub fällt</translation>
        </message>
        <message>
            <source>the table shows {count} tops, near {places}; it must show one lobe, from base circle to base circle</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation>die Tabelle zeigt {count} Scheitel, bei {places}; sie muss einen Nocken zeigen, von Grundkreis zu Grundkreis</translation>
        </message>
        <message>
            <source>the readings scatter by {noise} mm about any smooth curve, {share} % of the lift; at most {most} % is taken for a lobe</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation>die Ablesungen streuen um {noise} mm um jede glatte Kurve, {share} % des Hubs; höchstens {most} % gelten als Nocken</translation>
        </message>
        <message>
            <source>the table covers one side of the lobe only; it must go over the top and down again</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation>die Tabelle deckt nur eine Seite des Nockens; sie muss über den Scheitel und wieder hinab gehen</translation>
        </message>
        <message>
            <source>neither end of the table lies on the base circle; measure from base circle to base circle</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation>kein Ende der Tabelle liegt auf dem Grundkreis; von Grundkreis zu Grundkreis messen</translation>
        </message>
        <message>
            <source>The table begins on the flank; its foot is drawn, not measured.</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation>Die Tabelle beginnt auf der Flanke; ihr Fuß ist gezeichnet, nicht gemessen.</translation>
        </message>
        <message>
            <source>The table ends on the flank; its foot is drawn, not measured.</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation>Die Tabelle endet auf der Flanke; ihr Fuß ist gezeichnet, nicht gemessen.</translation>
        </message>
        <message>
            <source>The base circle reads {difference} mm more after the lobe than before it (the dial slipped, or the cam runs out); each flank was taken from its own side.</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation>Der Grundkreis liest nach dem Nocken {difference} mm mehr als davor (die Uhr rutschte, oder der Nocken schlägt); jede Flanke wurde von ihrer Seite genommen.</translation>
        </message>
        <message>
            <source>The base circle reads {difference} mm more before the lobe than after it (the dial slipped, or the cam runs out); each flank was taken from its own side.</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation>Der Grundkreis liest vor dem Nocken {difference} mm mehr als danach (die Uhr rutschte, oder der Nocken schlägt); jede Flanke wurde von ihrer Seite genommen.</translation>
        </message>
        <message>
            <source>Only {count} rows lie on the rise; between them it is a guess.</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation>Nur {count} Zeilen liegen auf dem Anstieg; dazwischen ist es geraten.</translation>
        </message>
        <message>
            <source>Only {count} rows lie on the fall; between them it is a guess.</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation>Nur {count} Zeilen liegen auf dem Abfall; dazwischen ist es geraten.</translation>
        </message>
        <message>
            <source>The readings scatter by {noise} mm about the curve, {share} % of the lift.</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation>Die Ablesungen streuen um {noise} mm um die Kurve, {share} % des Hubs.</translation>
        </message>
        <message>
            <source>Below {lift} mm of lift the contacts were closed; the foot is drawn, not measured.</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation>Unter {lift} mm Hub waren die Kontakte zu; der Fuß ist gezeichnet, nicht gemessen.</translation>
        </message>
        <message>
            <source>The base circle before the lobe is uneven by {uneven} mm.</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation>Der Grundkreis vor dem Nocken ist um {uneven} mm uneben.</translation>
        </message>
        <message>
            <source>The base circle after the lobe is uneven by {uneven} mm.</source>
            <extracomment>physics/lobe.py</extracomment>
            <translation>Der Grundkreis nach dem Nocken ist um {uneven} mm uneben.</translation>
        </message>
        <message>
            <source>table of the lift</source>
            <extracomment>physics/measured.py</extracomment>
            <translation>Tabelle des Hubs</translation>
        </message>
        <message>
            <source>the measured lift</source>
            <extracomment>physics/measured.py</extracomment>
            <translation>der gemessene Hub</translation>
        </message>
        <message>
            <source>The table has {columns} columns; two of them were used.</source>
            <extracomment>physics/measured.py</extracomment>
            <translation>Die Tabelle hat {columns} Spalten; zwei davon wurden verwendet.</translation>
        </message>
        <message>
            <source>Turned both ways, the readings lie {backlash}° of cam apart, as backlash makes them; the middle of the two was taken.</source>
            <extracomment>physics/measured.py</extracomment>
            <translation>In beide Richtungen gedreht liegen die Ablesungen {backlash}° Nocken auseinander, wie es Spiel bewirkt; die Mitte wurde genommen.</translation>
        </message>
        <message>
            <source>{outliers} of {count} rows, far off their neighbours, were left out.</source>
            <extracomment>physics/measured.py</extracomment>
            <translation>{outliers} von {count} Zeilen, weit neben ihren Nachbarn, blieben weg.</translation>
        </message>
        <message>
            <source>the table tells the lift at {places} different angles; it must be at {least} or more, better at 20</source>
            <extracomment>physics/measured.py</extracomment>
            <translation>die Tabelle nennt den Hub bei {places} verschiedenen Winkeln; es müssen {least} oder mehr sein, besser 20</translation>
        </message>
        <message>
            <source>the cam's turns per rotor turn is {value}; it must be 0.01 to 100</source>
            <extracomment>physics/measured.py</extracomment>
            <translation>die Nockenumdrehungen je Rotorumdrehung sind {value}; es müssen 0,01 bis 100 sein</translation>
        </message>
        <message>
            <source>the contact arm over the heel arm is {value}; it must be 0.01 to 100</source>
            <extracomment>physics/measured.py</extracomment>
            <translation>Kontaktarm durch Gleitstückarm ist {value}; es müssen 0,01 bis 100 sein</translation>
        </message>
        <message>
            <source>the stop is {stop} mm; it must be 0 to {most} mm</source>
            <extracomment>physics/measured.py</extracomment>
            <translation>der Anschlag ist {stop} mm; es müssen 0 bis {most} mm sein</translation>
        </message>
        <message>
            <source>the measured lift: {reason}</source>
            <extracomment>physics/measured.py</extracomment>
            <translation>der gemessene Hub: {reason}</translation>
        </message>
        <message>
            <source>no lobe can be drawn through the table: {reason}</source>
            <extracomment>physics/measured.py</extracomment>
            <translation>durch die Tabelle lässt sich kein Nocken legen: {reason}</translation>
        </message>
        <message>
            <source>{count} instruments are given for {role}; there must be one</source>
            <extracomment>physics/measurement.py</extracomment>
            <translation>{count} Messmittel sind für {role} angegeben; es muss eines sein</translation>
        </message>
        <message>
            <source>nothing was read with an instrument for {role}</source>
            <extracomment>physics/measurement.py</extracomment>
            <translation>mit einem Messmittel für {role} wurde nichts gelesen</translation>
        </message>
        <message>
            <source>linear and Monte Carlo agree: the ends of their intervals differ by {worst} at most, where {tolerance} is allowed</source>
            <extracomment>physics/monte_carlo.py</extracomment>
            <translation>linear und Monte Carlo stimmen überein: die Enden ihrer Intervalle unterscheiden sich um höchstens {worst}, erlaubt sind {tolerance}</translation>
        </message>
        <message>
            <source>linear and Monte Carlo agree: the ends of their intervals differ by {worst} at most, where {tolerance} is allowed; more trials are needed to be sure</source>
            <extracomment>physics/monte_carlo.py</extracomment>
            <translation>linear und Monte Carlo stimmen überein: die Enden ihrer Intervalle unterscheiden sich um höchstens {worst}, erlaubt sind {tolerance}; für Sicherheit braucht es mehr Ziehungen</translation>
        </message>
        <message>
            <source>linear and Monte Carlo disagree: the ends of their intervals differ by {worst} at most, where {tolerance} is allowed</source>
            <extracomment>physics/monte_carlo.py</extracomment>
            <translation>linear und Monte Carlo widersprechen sich: die Enden ihrer Intervalle unterscheiden sich um höchstens {worst}, erlaubt sind {tolerance}</translation>
        </message>
        <message>
            <source>linear and Monte Carlo disagree: the ends of their intervals differ by {worst} at most, where {tolerance} is allowed; more trials are needed to be sure</source>
            <extracomment>physics/monte_carlo.py</extracomment>
            <translation>linear und Monte Carlo widersprechen sich: die Enden ihrer Intervalle unterscheiden sich um höchstens {worst}, erlaubt sind {tolerance}; für Sicherheit braucht es mehr Ziehungen</translation>
        </message>
        <message>
            <source>a Monte Carlo of {trials} trials tells nothing; it takes at least 1</source>
            <extracomment>physics/monte_carlo.py</extracomment>
            <translation>ein Monte Carlo mit {trials} Ziehungen sagt nichts; es braucht mindestens 1</translation>
        </message>
        <message>
            <source>{count} values are too few for an interval of probability {probability}</source>
            <extracomment>physics/monte_carlo.py</extracomment>
            <translation>{count} Werte sind zu wenig für ein Intervall der Wahrscheinlichkeit {probability}</translation>
        </message>
        <message>
            <source>a standard uncertainty of {uncertainty} has no digits</source>
            <extracomment>physics/monte_carlo.py</extracomment>
            <translation>eine Standardunsicherheit von {uncertainty} hat keine Stellen</translation>
        </message>
        <message>
            <source>intervals of {probability} and {other} cannot be compared</source>
            <extracomment>physics/monte_carlo.py</extracomment>
            <translation>Intervalle von {probability} und {other} lassen sich nicht vergleichen</translation>
        </message>
        <message>
            <source>the backplate would stand at {value}°, {beyond}° beyond the end of its slot ({low}° to {high}°)</source>
            <extracomment>physics/setting.py</extracomment>
            <translation>die Grundplatte stünde bei {value}°, {beyond}° jenseits ihres Schlitzes ({low}° bis {high}°)</translation>
        </message>
        <message>
            <source>the contact screw would stand at {value}°, {beyond}° beyond the end of its travel ({low}° to {high}°)</source>
            <extracomment>physics/setting.py</extracomment>
            <translation>die Kontaktschraube stünde bei {value}°, {beyond}° jenseits ihres Wegs ({low}° bis {high}°)</translation>
        </message>
        <message>
            <source>the nearest gap that can be had is {gap}</source>
            <extracomment>physics/setting.py</extracomment>
            <translation>der nächste mögliche Abstand ist {gap}</translation>
        </message>
        <message>
            <source>the gap is {gap} mm; it must be 0 or more</source>
            <extracomment>physics/setting.py</extracomment>
            <translation>der Abstand ist {gap} mm; er muss 0 oder mehr sein</translation>
        </message>
        <message>
            <source>lobe 1 lifts the contacts {both} in all, so they would never close</source>
            <extracomment>physics/setting.py</extracomment>
            <translation>Nocken 1 hebt die Kontakte insgesamt {both}, sie schlössen also nie</translation>
        </message>
        <message>
            <source>no gap within reach opens at the E-gap</source>
            <extracomment>physics/setting.py</extracomment>
            <translation>kein erreichbarer Abstand öffnet am E-Gap</translation>
        </message>
        <message>
            <source>the nearest gap that can be had is {gap}, with the backplate at the end of its slot</source>
            <extracomment>physics/setting.py</extracomment>
            <translation>der nächste mögliche Abstand ist {gap}, mit der Grundplatte am Ende ihres Schlitzes</translation>
        </message>
        <message>
            <source>the nearest gap that can be had is {gap}, with the contact screw at the end of its travel</source>
            <extracomment>physics/setting.py</extracomment>
            <translation>der nächste mögliche Abstand ist {gap}, mit der Kontaktschraube am Ende ihres Wegs</translation>
        </message>
        <message>
            <source>the contact screw's eccentric does not reach that far</source>
            <extracomment>physics/setting.py</extracomment>
            <translation>der Exzenter der Kontaktschraube reicht nicht so weit</translation>
        </message>
        <message>
            <source>disc, left magneto</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>Scheibe, linker Magnet</translation>
        </message>
        <message>
            <source>turning the crank, left</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>Drehen der Kurbel, links</translation>
        </message>
        <message>
            <source>gap when it shows, left</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>Abstand, wenn es sich zeigt, links</translation>
        </message>
        <message>
            <source>play not taken up, left</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>nicht herausgenommenes Spiel, links</translation>
        </message>
        <message>
            <source>left magneto fires</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>linker Magnet zündet</translation>
        </message>
        <message>
            <source>disc, right magneto</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>Scheibe, rechter Magnet</translation>
        </message>
        <message>
            <source>turning the crank, right</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>Drehen der Kurbel, rechts</translation>
        </message>
        <message>
            <source>gap when it shows, right</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>Abstand, wenn es sich zeigt, rechts</translation>
        </message>
        <message>
            <source>play not taken up, right</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>nicht herausgenommenes Spiel, rechts</translation>
        </message>
        <message>
            <source>right magneto fires</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>rechter Magnet zündet</translation>
        </message>
        <message>
            <source>straightedge from the mark</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>Lineal von der Marke</translation>
        </message>
        <message>
            <source>straightedge along the step</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>Lineal an der Stufe</translation>
        </message>
        <message>
            <source>blade</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>Blatt</translation>
        </message>
        <message>
            <source>drag of the blade</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>Klemmen des Blatts</translation>
        </message>
        <message>
            <source>gap when it shows</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>Abstand, wenn es sich zeigt</translation>
        </message>
        <message>
            <source>turning the rotor</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>Drehen des Rotors</translation>
        </message>
        <message>
            <source>play not taken up</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>nicht herausgenommenes Spiel</translation>
        </message>
        <message>
            <source>creep of the screw</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>Wandern der Schraube</translation>
        </message>
        <message>
            <source>a gap of {gap} mm cannot be: lobe 1 lifts the contacts {top} mm, and below {parting} mm nothing would show that they part</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>ein Abstand von {gap} mm kann nicht sein: Nocken 1 hebt die Kontakte {top} mm, und unter {parting} mm zeigte nichts, dass sie sich trennen</translation>
        </message>
        <message>
            <source>a gap of {gap} mm cannot be: lobe 1 lifts the contacts {top} mm</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>ein Abstand von {gap} mm kann nicht sein: Nocken 1 hebt die Kontakte {top} mm</translation>
        </message>
        <message>
            <source>neither magneto was read; at least one must be</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>kein Magnet wurde abgelesen; mindestens einer muss es sein</translation>
        </message>
        <message>
            <source>disc at the first stop</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>Scheibe am ersten Anschlag</translation>
        </message>
        <message>
            <source>disc at the second stop</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>Scheibe am zweiten Anschlag</translation>
        </message>
        <message>
            <source>left less right, beyond the {design}° wanted</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>links weniger rechts, über die gewünschten {design}° hinaus</translation>
        </message>
        <message>
            <source>left less right</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>links weniger rechts</translation>
        </message>
        <message>
            <source>as given</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>wie angegeben</translation>
        </message>
        <message>
            <source>opening from the E-gap</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>Öffnung vom E-Gap</translation>
        </message>
        <message>
            <source>widest gap</source>
            <extracomment>physics/setting_uncertainty.py</extracomment>
            <translation>größter Abstand</translation>
        </message>
        <message>
            <source>the radius of the slot is {value}; it must be above 0</source>
            <extracomment>physics/trials.py</extracomment>
            <translation>der Radius des Schlitzes ist {value}; er muss über 0 liegen</translation>
        </message>
        <message>
            <source>the angle between two marks is {value}; it must be above 0</source>
            <extracomment>physics/trials.py</extracomment>
            <translation>der Winkel zwischen zwei Marken ist {value}; er muss über 0 liegen</translation>
        </message>
        <message>
            <source>the plate stands at {backplate}°; it must lie within ±3600°</source>
            <extracomment>physics/trials.py</extracomment>
            <translation>die Platte steht auf {backplate}°; es muss innerhalb ±3600° sein</translation>
        </message>
        <message>
            <source>the opening is {opening_error}° off; it must lie within ±45°</source>
            <extracomment>physics/trials.py</extracomment>
            <translation>die Öffnung ist {opening_error}° daneben; es muss innerhalb ±45° sein</translation>
        </message>
        <message>
            <source>the gap is given as {low} to {high} mm; it must be above 0, within 1000 mm, low end first</source>
            <extracomment>physics/trials.py</extracomment>
            <translation>der Abstand ist als {low} bis {high} mm angegeben; er muss über 0 und innerhalb 1000 mm liegen, das kleinere Ende zuerst</translation>
        </message>
        <message>
            <source>a gap of 0 mm or more says nothing; give the blade that passes or the one that does not</source>
            <extracomment>physics/trials.py</extracomment>
            <translation>ein Abstand von 0 mm oder mehr sagt nichts; das Blatt angeben, das geht, oder das, das nicht geht</translation>
        </message>
        <message>
            <source>the gap is known to within {within} mm; it must be 0 or more</source>
            <extracomment>physics/trials.py</extracomment>
            <translation>der Abstand ist auf {within} mm bekannt; das muss 0 oder mehr sein</translation>
        </message>
        <message>
            <source>the errors of a trial must be numbers, 0 or more</source>
            <extracomment>physics/trials.py</extracomment>
            <translation>die Fehler eines Versuchs müssen Zahlen sein, 0 oder mehr</translation>
        </message>
        <message>
            <source>doubt in lift and rise must be above 0 and at most 1, in the index at most 90°</source>
            <extracomment>physics/trials.py</extracomment>
            <translation>Zweifel an Hub und Anstieg müssen über 0 und höchstens 1 sein, an der Lage höchstens 90°</translation>
        </message>
        <message>
            <source>no coverage factor for a probability of {probability} and {dof} degrees of freedom</source>
            <extracomment>physics/uncertainty.py</extracomment>
            <translation>kein Erweiterungsfaktor für eine Wahrscheinlichkeit von {probability} und {dof} Freiheitsgrade</translation>
        </message>
        <message>
            <source>the second-order terms leave no variance: the expansion does not hold for this model</source>
            <extracomment>physics/uncertainty.py</extracomment>
            <translation>die Glieder zweiter Ordnung lassen keine Varianz: die Entwicklung gilt für dieses Modell nicht</translation>
        </message>
        <message>
            <source>{name}: {estimate} ± {spread} is no estimate with a spread</source>
            <extracomment>physics/uncertainty.py</extracomment>
            <translation>{name}: {estimate} ± {spread} ist kein Wert mit Streuung</translation>
        </message>
        <message>
            <source>{name}: {dof} degrees of freedom; there must be at least 1</source>
            <extracomment>physics/uncertainty.py</extracomment>
            <translation>{name}: {dof} Freiheitsgrade; es muss mindestens 1 sein</translation>
        </message>
        <message>
            <source>{name}: a {distribution} distribution has no half-width</source>
            <extracomment>physics/uncertainty.py</extracomment>
            <translation>{name}: eine Verteilung {distribution} hat keine halbe Breite</translation>
        </message>
        <message>
            <source>{name}: a t distribution needs its degrees of freedom</source>
            <extracomment>physics/uncertainty.py</extracomment>
            <translation>{name}: eine t-Verteilung braucht ihre Freiheitsgrade</translation>
        </message>
        <message>
            <source>hours since the setting must be 0 or more, and finite</source>
            <extracomment>physics/wear.py</extracomment>
            <translation>Stunden seit der Einstellung müssen 0 oder mehr und endlich sein</translation>
        </message>
        <message>
            <source>after {hours} h the heel would have lost {heel} mm and the pip be {pip} mm high</source>
            <extracomment>physics/wear.py</extracomment>
            <translation>nach {hours} h hätte das Gleitstück {heel} mm verloren und der Höcker wäre {pip} mm hoch</translation>
        </message>
        <message>
            <source>a rate takes inspections at two different hours at least</source>
            <extracomment>physics/wear.py</extracomment>
            <translation>eine Rate braucht Prüfungen bei mindestens zwei verschiedenen Stunden</translation>
        </message>
        <message>
            <source>heel wear is {rate} mm per 100 h; it must be 0 or more</source>
            <extracomment>physics/wear.py</extracomment>
            <translation>Verschleiß des Gleitstücks ist {rate} mm je 100 h; er muss 0 oder mehr sein</translation>
        </message>
        <message>
            <source>the pip's growth is {rate} mm per 100 h; it must be 0 or more</source>
            <extracomment>physics/wear.py</extracomment>
            <translation>Wachsen des Höckers ist {rate} mm je 100 h; es muss 0 oder mehr sein</translation>
        </message>
        <message>
            <source>breaker.heel_arm_mm is missing in the magneto's file: it tells what heel wear does</source>
            <extracomment>physics/wear.py</extracomment>
            <translation>breaker.heel_arm_mm fehlt in der Datei des Magneten: es sagt, was Verschleiß bewirkt</translation>
        </message>
        <message>
            <source>that is not to be had in practice: here hands and instruments do the work</source>
            <extracomment>practice/actions.py</extracomment>
            <translation>das gibt es beim Üben nicht: hier arbeiten Hände und Messzeug</translation>
        </message>
        <message>
            <source>the coupling is moved one tooth at a time, at one face</source>
            <extracomment>practice/actions.py</extracomment>
            <translation>die Kupplung wird um je einen Zahn versetzt, an einer Seite</translation>
        </message>
        <message>
            <source>On {name}, renew the lead, and prove it again.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>An {name} die Leitung erneuern und wieder nachweisen.</translation>
        </message>
        <message>
            <source>On {name}, renew the insulation, and prove it again.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>An {name} die Isolierung erneuern und wieder nachweisen.</translation>
        </message>
        <message>
            <source>On {name}, renew the tab, and prove it again.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>An {name} die Zunge erneuern und wieder nachweisen.</translation>
        </message>
        <message>
            <source>Stop in No. 1, met gently from both sides; half-way between the two readings is top dead centre.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>Anschlag in Nr. 1, sanft von beiden Seiten berührt; in der Mitte der Ablesungen liegt der obere Totpunkt.</translation>
        </message>
        <message>
            <source>On {name}: paint marks, nuts off; magneto flange on the disc {flange}; disc on the drive flange {disc}; nuts on. {residual}° remain. Lamp and disc, approached with rotation.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>An {name}: Marken malen, Muttern ab; Magnetflansch auf der Scheibe {flange}; Scheibe auf dem Antriebsflansch {disc}; Muttern auf. {residual}° bleiben. Lampe und Scheibe, mit der Drehung angefahren.</translation>
        </message>
        <message>
            <source>Lay the straightedge on, look square over it, turn to the mark with rotation, and hold.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>Das Lineal anlegen, gerade darüber sehen, mit der Drehung zur Marke drehen und halten.</translation>
        </message>
        <message>
            <source>Close up: screws, nuts, plug in, switch off; and look once more at what tightening can shift.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>Schließen: Schrauben, Muttern, Stecker hinein, Schalter aus; und noch einmal ansehen, was das Anziehen verschieben kann.</translation>
        </message>
        <message>
            <source>Make it safe: {words}.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>Sichern: {words}.</translation>
        </message>
        <message>
            <source>On {name}, prove the lead: plug pulled, meter with the switch off and on, lamp for tab and coil.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>An {name} die Leitung nachweisen: Stecker gezogen, Messgerät bei Schalter aus und ein, Lampe für Zunge und Spule.</translation>
        </message>
        <message>
            <source>On {name}, dress the contacts before measuring.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>An {name} die Kontakte vor dem Messen abziehen.</translation>
        </message>
        <message>
            <source>On {name}, no setting puts gap and opening right at once.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>An {name} bringt keine Einstellung Abstand und Öffnung zugleich in Ordnung.</translation>
        </message>
        <message>
            <source>On {name}, slacken the clamp screws, {move}, tighten; lamp and straightedge.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>An {name} die Klemmschrauben lösen, {move}, anziehen; Lampe und Lineal.</translation>
        </message>
        <message>
            <source>Turn the disc {error}° later, to read zero there. Stop out.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>Die Scheibe {error}° später drehen, damit sie dort null liest. Anschlag heraus.</translation>
        </message>
        <message>
            <source>Turn the disc {error}° earlier, to read zero there. Stop out.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>Die Scheibe {error}° früher drehen, damit sie dort null liest. Anschlag heraus.</translation>
        </message>
        <message>
            <source>On {name}: paint marks, plug out, nuts off, lift it off.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>An {name}: Marken malen, Stecker heraus, Muttern ab, abheben.</translation>
        </message>
        <message>
            <source>No. 1 on compression at {wanted}° before top dead centre, the rotor where the contacts open with the finger at No. 1; mesh to the nearest tooth.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>Nr. 1 verdichtend bei {wanted}° vor dem oberen Totpunkt, der Rotor dort, wo die Kontakte mit dem Finger bei Nr. 1 öffnen; in den nächsten Zahn einsetzen.</translation>
        </message>
        <message>
            <source>On {name}, no tooth needs to move; lamp and disc with rotation say so.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>An {name} muss kein Zahn versetzt werden; Lampe und Scheibe mit der Drehung zeigen es.</translation>
        </message>
        <message>
            <source>On {name}, slacken the lock screw, {turn}, tighten (tightening carries it {creep}° on); blades on both limits.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>An {name} die Sicherungsschraube lösen, {turn}, anziehen (das Anziehen nimmt sie {creep}° mit); Blätter an beiden Grenzen.</translation>
        </message>
        <message>
            <source>On {name}, slacken the lock screw, {turn}, tighten; blades on both limits.</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>An {name} die Sicherungsschraube lösen, {turn}, anziehen; Blätter an beiden Grenzen.</translation>
        </message>
        <message>
            <source>chocks</source>
            <extracomment>practice/advice.py</extracomment>
            <translation>Klötze</translation>
        </message>
        <message>
            <source>spark plugs out</source>
            <extracomment>practice/advice.py, practice/seen.py, ui/class_editor_fields.py</extracomment>
            <translation>Zündkerzen heraus</translation>
        </message>
        <message>
            <source>there is no piston stop on the tray</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>auf dem Tablett ist kein Kolbenanschlag</translation>
        </message>
        <message>
            <source>the attempt has been handed in</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>der Versuch ist abgegeben</translation>
        </message>
        <message>
            <source>there is no meter on the tray</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>auf dem Tablett ist kein Messgerät</translation>
        </message>
        <message>
            <source>the stop goes into No. 1's plug hole: take the spark plugs out first</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>der Anschlag gehört ins Kerzenloch von Nr. 1: erst die Zündkerzen herausnehmen</translation>
        </message>
        <message>
            <source>the piston of No. 1 stands too high for the stop: turn the propeller on first</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>der Kolben von Nr. 1 steht zu hoch für den Anschlag: erst den Propeller weiterdrehen</translation>
        </message>
        <message>
            <source>there is no engine here</source>
            <extracomment>practice/apply.py, practice/instruments.py</extracomment>
            <translation>hier ist kein Motor</translation>
        </message>
        <message>
            <source>the piston stop is in No. 1's plug hole: take it out first</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>der Kolbenanschlag steckt im Kerzenloch von Nr. 1: erst herausnehmen</translation>
        </message>
        <message>
            <source>the magneto is off the engine</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>der Magnet ist vom Motor ab</translation>
        </message>
        <message>
            <source>there is no {side} magneto here</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>hier ist kein Magnet {side}</translation>
        </message>
        <message>
            <source>the magneto is off the engine already</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>der Magnet ist schon vom Motor ab</translation>
        </message>
        <message>
            <source>the nuts hold the magneto: take them off first</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>die Muttern halten den Magneten: erst abnehmen</translation>
        </message>
        <message>
            <source>the switch lead holds the magneto: pull its plug first</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>die Kurzschlussleitung hält den Magneten: erst ihren Stecker ziehen</translation>
        </message>
        <message>
            <source>the magneto is on the engine already</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>der Magnet ist schon am Motor</translation>
        </message>
        <message>
            <source>the coupling is moved one tooth at a time, at its magneto or its disc face</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>die Kupplung wird um je einen Zahn versetzt, an der Magnet- oder der Scheibenseite</translation>
        </message>
        <message>
            <source>the coupling is closed: take the nuts off and draw the magneto back first</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>die Kupplung ist geschlossen: erst die Muttern abnehmen und den Magneten zurückziehen</translation>
        </message>
        <message>
            <source>the pin holds the rotor: take it out to turn the flange</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>der Stift hält den Rotor: zum Drehen des Flanschs herausnehmen</translation>
        </message>
        <message>
            <source>“{kind}” is no kind of reading</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>„{kind}“ ist keine Art Ablesung</translation>
        </message>
        <message>
            <source>the notebook is full: it holds {most} lines</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>das Notizbuch ist voll: es fasst {most} Zeilen</translation>
        </message>
        <message>
            <source>a note is one line of at most {most} characters</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>eine Notiz ist eine Zeile von höchstens {most} Zeichen</translation>
        </message>
        <message>
            <source>a finding on the switch lead is sound, broken, shorted or tab</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>ein Befund der Kurzschlussleitung ist sound, broken, shorted oder tab</translation>
        </message>
        <message>
            <source>a finding in words takes no number</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>ein Befund in Worten hat keine Zahl</translation>
        </message>
        <message>
            <source>a reading needs its number</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>eine Ablesung braucht ihre Zahl</translation>
        </message>
        <message>
            <source>there is no lobe {lobe}; the cam has {lobes}</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>es gibt keinen Nocken {lobe}; es sind {lobes}</translation>
        </message>
        <message>
            <source>the backplate is at the end of its slot</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>die Grundplatte ist am Ende ihres Schlitzes</translation>
        </message>
        <message>
            <source>the contact screw is at the end of its travel</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>die Kontaktschraube ist am Ende ihres Wegs</translation>
        </message>
        <message>
            <source>what can be renewed is the lead, the tab or the insulation</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>zu erneuern sind Leitung, Zunge oder Isolierung</translation>
        </message>
        <message>
            <source>there is no straightedge on the tray</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>auf dem Tablett ist kein Lineal</translation>
        </message>
        <message>
            <source>there is no timing lamp on the tray</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>auf dem Tablett ist keine Prüflampe</translation>
        </message>
        <message>
            <source>there is no {kind} set of blades on the tray</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>auf dem Tablett ist kein Satz Blätter {kind}</translation>
        </message>
        <message>
            <source>there is no crank disc on the tray</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>auf dem Tablett ist keine Kurbelscheibe</translation>
        </message>
        <message>
            <source>no marks were painted to refit it by: it can only go on as its rotor stands</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>es wurden keine Marken zum Ansetzen gemalt: er geht nur an, wie sein Rotor steht</translation>
        </message>
        <message>
            <source>a part's name is one line of at most {most} characters</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>ein Teilname ist eine Zeile von höchstens {most} Zeichen</translation>
        </message>
        <message>
            <source>the pin holds the rotor</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>der Stift hält den Rotor</translation>
        </message>
        <message>
            <source>that is the {part}</source>
            <extracomment>practice/apply.py</extracomment>
            <translation>das ist: {part}</translation>
        </message>
        <message>
            <source>{where}.{field} is {found}; it must be true or false</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{where}.{field} ist {found}; es muss wahr oder falsch sein</translation>
        </message>
        <message>
            <source>{where}.{field} is {found}; it must be a whole number</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{where}.{field} ist {found}; es muss eine ganze Zahl sein</translation>
        </message>
        <message>
            <source>{where}.{field} is {found}; it must be text</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{where}.{field} ist {found}; es muss Text sein</translation>
        </message>
        <message>
            <source>{where}.{field} is {found}; it must be a list</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{where}.{field} ist {found}; es muss eine Liste sein</translation>
        </message>
        <message>
            <source>{source}: holds no attempt; it must be one JSON object in braces</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{source}: enthält keinen Versuch; es muss ein JSON-Objekt in Klammern sein</translation>
        </message>
        <message>
            <source>{source}: format is {found}; it must be "{wanted}"</source>
            <extracomment>practice/attempt.py, spec/files.py</extracomment>
            <translation>{source}: format ist {found}; es muss "{wanted}" sein</translation>
        </message>
        <message>
            <source>{source}: {name} is missing</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{source}: {name} fehlt</translation>
        </message>
        <message>
            <source>{source}: {name} is not a known name</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{source}: {name} ist kein bekannter Name</translation>
        </message>
        <message>
            <source>{source}: events must be a list of at most {most}</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{source}: events muss eine Liste von höchstens {most} sein</translation>
        </message>
        <message>
            <source>{where} must be an object in braces</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{where} muss ein Objekt in Klammern sein</translation>
        </message>
        <message>
            <source>{where}.at_s is {found}; it must be a number of seconds from 0 on</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{where}.at_s ist {found}; es muss eine Zahl von Sekunden ab 0 sein</translation>
        </message>
        <message>
            <source>{where}.do is {found}, which is no act this program knows</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{where}.do ist {found}, keine Handlung, die dieses Programm kennt</translation>
        </message>
        <message>
            <source>{where}.{field} is {found}; it must be {allowed}</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{where}.{field} ist {found}; es muss {allowed} sein</translation>
        </message>
        <message>
            <source>{where}.{field} is {found}; it must be a number</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{where}.{field} ist {found}; es muss eine Zahl sein</translation>
        </message>
        <message>
            <source>{where}.{field} is {found}; it must be what the act takes</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{where}.{field} ist {found}; es muss sein, was die Handlung nimmt</translation>
        </message>
        <message>
            <source>the time is {at_s}; it must be a number of seconds</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>die Zeit ist {at_s}; sie muss eine Zahl von Sekunden sein</translation>
        </message>
        <message>
            <source>the record is full at {most} acts: hand in</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>die Aufzeichnung ist mit {most} Handlungen voll: abgeben</translation>
        </message>
        <message>
            <source>{source}: format is {found} (a newer magview wrote it; it is left as it was); it must be "{wanted}"</source>
            <extracomment>practice/attempt.py, spec/files.py</extracomment>
            <translation>{source}: format ist {found} (ein neueres magview schrieb es; es bleibt, wie es war); es muss "{wanted}" sein</translation>
        </message>
        <message>
            <source>{source}: {name} is {found}; it must be text of at most {most} characters</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{source}: {name} ist {found}; es muss Text von höchstens {most} Zeichen sein</translation>
        </message>
        <message>
            <source>{source}: events[{i}].at_s is {at_s}; time does not run backwards</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{source}: events[{i}].at_s ist {at_s}; die Zeit läuft nicht rückwärts</translation>
        </message>
        <message>
            <source>{where}.{field} is not a known name of {name}</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{where}.{field} ist kein bekannter Name von {name}</translation>
        </message>
        <message>
            <source>{where}.{field} is missing</source>
            <extracomment>practice/attempt.py</extracomment>
            <translation>{where}.{field} fehlt</translation>
        </message>
        <message>
            <source>Done with version {version}, shown with {here}: what followed from an act may differ.</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>Mit Fassung {version} gemacht, mit {here} gezeigt: was auf eine Handlung folgte, kann abweichen.</translation>
        </message>
        <message>
            <source>Opening from the mark</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>Öffnung von der Marke</translation>
        </message>
        <message>
            <source>Opening from the mark, {name}</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>Öffnung von der Marke, {name}</translation>
        </message>
        <message>
            <source>Largest gap, {name}</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>Größter Abstand, {name}</translation>
        </message>
        <message>
            <source>Pip on the contacts, {name}</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>Höcker auf den Kontakten, {name}</translation>
        </message>
        <message>
            <source>Lock screw carries the contact screw along</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>Sicherungsschraube nimmt die Kontaktschraube mit</translation>
        </message>
        <message>
            <source>Lock screw carries the contact screw along, {name}</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>Sicherungsschraube nimmt die Kontaktschraube mit, {name}</translation>
        </message>
        <message>
            <source>Switch lead, {name}</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>Kurzschlussleitung, {name}</translation>
        </message>
        <message>
            <source>Fires before top dead centre, {name}</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>Zündet vor dem oberen Totpunkt, {name}</translation>
        </message>
        <message>
            <source>Play in the coupling</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>Spiel in der Kupplung</translation>
        </message>
        <message>
            <source>Play in the coupling, {name}</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>Spiel in der Kupplung, {name}</translation>
        </message>
        <message>
            <source>not at all</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>gar nicht</translation>
        </message>
        <message>
            <source>{angle}° closer</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>{angle}° enger</translation>
        </message>
        <message>
            <source>{angle}° wider</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>{angle}° weiter</translation>
        </message>
        <message>
            <source>{mm} mm past</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>{mm} mm dahinter</translation>
        </message>
        <message>
            <source>{mm} mm short</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>{mm} mm davor</translation>
        </message>
        <message>
            <source>off the engine</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>vom Motor ab</translation>
        </message>
        <message>
            <source>{fires}° (the wrong stroke)</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>{fires}° (falscher Takt)</translation>
        </message>
        <message>
            <source>the attempt has not been handed in: until then nothing true is shown</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>der Versuch ist nicht abgegeben: bis dahin wird nichts Wahres gezeigt</translation>
        </message>
        <message>
            <source>within {tolerance} mm</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>innerhalb {tolerance} mm</translation>
        </message>
        <message>
            <source>sound</source>
            <extracomment>practice/debrief.py, practice/words.py, ui/class_editor_rows.py, ui/practice_notebook.py</extracomment>
            <translation>in Ordnung</translation>
        </message>
        <message>
            <source>Disc at top dead centre of No. 1</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>Scheibe am oberen Totpunkt von Nr. 1</translation>
        </message>
        <message>
            <source>to be allowed for</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>zu berücksichtigen</translation>
        </message>
        <message>
            <source>{wanted}° within {allowed}°</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>{wanted}° auf {allowed}° genau</translation>
        </message>
        <message>
            <source>taken up with rotation</source>
            <extracomment>practice/debrief.py</extracomment>
            <translation>mit der Drehung herausgenommen</translation>
        </message>
        <message>
            <source>the lock screw was tightened</source>
            <extracomment>practice/evidence.py</extracomment>
            <translation>die Sicherungsschraube wurde angezogen</translation>
        </message>
        <message>
            <source>the clamp screws were tightened</source>
            <extracomment>practice/evidence.py</extracomment>
            <translation>die Klemmschrauben wurden angezogen</translation>
        </message>
        <message>
            <source>the contacts were dressed</source>
            <extracomment>practice/evidence.py</extracomment>
            <translation>die Kontakte wurden abgezogen</translation>
        </message>
        <message>
            <source>the backplate was turned</source>
            <extracomment>practice/evidence.py</extracomment>
            <translation>die Grundplatte wurde gedreht</translation>
        </message>
        <message>
            <source>the contact screw was turned</source>
            <extracomment>practice/evidence.py</extracomment>
            <translation>die Kontaktschraube wurde gedreht</translation>
        </message>
        <message>
            <source>took the magneto off with no marks across its coupling</source>
            <extracomment>practice/evidence.py</extracomment>
            <translation>nahm den Magneten ohne Marken über der Kupplung ab</translation>
        </message>
        <message>
            <source>turned the propeller with a live magneto and the spark plugs in</source>
            <extracomment>practice/evidence.py</extracomment>
            <translation>drehte den Propeller mit scharfem Magneten und den Zündkerzen drin</translation>
        </message>
        <message>
            <source>a tooth was moved</source>
            <extracomment>practice/evidence.py</extracomment>
            <translation>ein Zahn wurde versetzt</translation>
        </message>
        <message>
            <source>the magneto was refitted</source>
            <extracomment>practice/evidence.py</extracomment>
            <translation>der Magnet wurde wieder angesetzt</translation>
        </message>
        <message>
            <source>turned the propeller, plugs in, without proving that the switch grounds</source>
            <extracomment>practice/evidence.py</extracomment>
            <translation>drehte den Propeller, Kerzen drin, ohne nachzuweisen, dass der Schalter Masse gibt</translation>
        </message>
        <message>
            <source>rotor degrees, positive = opens late</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>Rotorgrade, positiv = öffnet spät</translation>
        </message>
        <message>
            <source>millimetres, positive = too wide; it opens at the E-gap all the same</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>Millimeter, positiv = zu groß; er öffnet trotzdem am E-Gap</translation>
        </message>
        <message>
            <source>degrees the plate is off, positive with cam rotation</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>Grad, die die Platte daneben ist, positiv mit der Nockendrehung</translation>
        </message>
        <message>
            <source>degrees the contact screw goes along with its lock screw, positive = contacts closer</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>Grad, die die Kontaktschraube mit ihrer Sicherungsschraube mitgeht, positiv = Kontakte näher</translation>
        </message>
        <message>
            <source>millimetres one lobe lifts less</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>Millimeter, die ein Nocken weniger hebt</translation>
        </message>
        <message>
            <source>millimetres of pip on the contacts</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>Millimeter Höcker auf den Kontakten</translation>
        </message>
        <message>
            <source>rotor degrees of play in the coupling</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>Rotorgrade Spiel in der Kupplung</translation>
        </message>
        <message>
            <source>whole teeth at the magneto flange, positive = fires early</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>ganze Zähne am Magnetflansch, positiv = zündet früh</translation>
        </message>
        <message>
            <source>whole teeth at the drive flange, positive = fires early</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>ganze Zähne am Antriebsflansch, positiv = zündet früh</translation>
        </message>
        <message>
            <source>whole vernier steps, positive = fires early</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>ganze Noniusschritte, positiv = zündet früh</translation>
        </message>
        <message>
            <source>crank degrees the disc reads at top dead centre</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>Kurbelgrade, die die Scheibe am oberen Totpunkt liest</translation>
        </message>
        <message>
            <source>size is [{low}, {high}]; it must run upwards from 0 or more (way gives the sign)</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>size ist [{low}, {high}]; es muss von 0 oder mehr aufwärts laufen (way gibt das Vorzeichen)</translation>
        </message>
        <message>
            <source>among is for kind lead, which needs it: a list of sound, broken, shorted, tab</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>among ist für kind lead, das es braucht: eine Liste aus sound, broken, shorted, tab</translation>
        </message>
        <message>
            <source>way of {kind} must be left out or "plus"</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>way von {kind} muss fehlen oder "plus" sein</translation>
        </message>
        <message>
            <source>reading is for goal "reading", which needs it</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>reading ist für goal "reading", das es braucht</translation>
        </message>
        <message>
            <source>within is for a reading in numbers, which needs it</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>within ist für eine Ablesung in Zahlen, die es braucht</translation>
        </message>
        <message>
            <source>magneto or installation: an exercise has one of the two</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>magneto oder installation: eine Übung hat eines von beiden</translation>
        </message>
        <message>
            <source>both_sides needs an installation with two magnetos</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>both_sides braucht einen Einbau mit zwei Magneten</translation>
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
            <translation>goals: synchronised braucht both_sides</translation>
        </message>
        <message>
            <source>faults has {twice} twice; give each kind once for a magneto</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>faults hat {twice} zweimal; jede Art je Magnet einmal angeben</translation>
        </message>
        <message>
            <source>size of {kind} ends at {high}; it must be above 0 and at most {most} ({unit})</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>size von {kind} endet bei {high}; es muss über 0 und höchstens {most} ({unit}) sein</translation>
        </message>
        <message>
            <source>size of {kind} is [{low}, {high}]; it must be whole numbers</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>size von {kind} ist [{low}, {high}]; es müssen ganze Zahlen sein</translation>
        </message>
        <message>
            <source>size is not for {kind}, which is there or is not</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>size gibt es nicht für {kind}, das da ist oder nicht</translation>
        </message>
        <message>
            <source>{what}.side is {side}, a magneto this exercise does not have</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>{what}.side ist {side}, ein Magnet, den diese Übung nicht hat</translation>
        </message>
        <message>
            <source>faults[{i}].lobe is {lobe}; the cam has {lobes}</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>faults[{i}].lobe ist {lobe}; es gibt {lobes} Nocken</translation>
        </message>
        <message>
            <source>faults[{i}].kind is {kind}, which needs an installation</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>faults[{i}].kind ist {kind}, das einen Einbau braucht</translation>
        </message>
        <message>
            <source>goals[{i}] is {goal} of an engine, which needs an installation</source>
            <extracomment>practice/exercise.py</extracomment>
            <translation>goals[{i}] ist {goal} eines Motors, das einen Einbau braucht</translation>
        </message>
        <message>
            <source>the seed is {seed}; it must be a whole number from 0 to {most}</source>
            <extracomment>practice/faults.py</extracomment>
            <translation>die Zahl ist {seed}; es muss eine ganze Zahl von 0 bis {most} sein</translation>
        </message>
        <message>
            <source>lobe-low takes {lobe_low} mm off a lobe that lifts {top_lift} mm</source>
            <extracomment>practice/faults.py</extracomment>
            <translation>lobe-low nimmt {lobe_low} mm von einem Nocken, der {top_lift} mm hebt</translation>
        </message>
        <message>
            <source>{name} cannot be set for a gap of {wanted} mm: {reason}</source>
            <extracomment>practice/faults.py</extracomment>
            <translation>{name} lässt sich nicht auf einen Abstand von {wanted} mm stellen: {reason}</translation>
        </message>
        <message>
            <source>blades on both sides of the limits were tried on every lobe after the last change</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>Blätter beiderseits der Grenzen wurden nach der letzten Änderung an jedem Nocken probiert</translation>
        </message>
        <message>
            <source>blades on both sides of the limits were not tried on every lobe after {why}</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>Blätter beiderseits der Grenzen wurden nicht an jedem Nocken probiert, nachdem: {why}</translation>
        </message>
        <message>
            <source>blades on both sides of the limits were not tried on every lobe</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>Blätter beiderseits der Grenzen wurden nicht an jedem Nocken probiert</translation>
        </message>
        <message>
            <source>blades on both sides of the limits were tried on a lobe after the last change</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>Blätter beiderseits der Grenzen wurden nach der letzten Änderung an einem Nocken probiert</translation>
        </message>
        <message>
            <source>blades on both sides of the limits were not tried on a lobe after {why}</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>Blätter beiderseits der Grenzen wurden nicht an einem Nocken probiert, nachdem: {why}</translation>
        </message>
        <message>
            <source>blades on both sides of the limits were not tried on a lobe</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>Blätter beiderseits der Grenzen wurden nicht an einem Nocken probiert</translation>
        </message>
        <message>
            <source>fires {error}° of crank early, {allowed}° are allowed</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>zündet {error}° Kurbel zu früh, {allowed}° sind erlaubt</translation>
        </message>
        <message>
            <source>fires {error}° of crank early, {allowed}° are allowed: on the wrong stroke</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>zündet {error}° Kurbel zu früh, {allowed}° sind erlaubt: im falschen Takt</translation>
        </message>
        <message>
            <source>fires {error}° of crank late, {allowed}° are allowed</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>zündet {error}° Kurbel zu spät, {allowed}° sind erlaubt</translation>
        </message>
        <message>
            <source>fires {error}° of crank late, {allowed}° are allowed: on the wrong stroke</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>zündet {error}° Kurbel zu spät, {allowed}° sind erlaubt: im falschen Takt</translation>
        </message>
        <message>
            <source>{magneto}: coupling marked before it was taken apart</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>{magneto}: Kupplung vor dem Zerlegen markiert</translation>
        </message>
        <message>
            <source>{magneto}: closed up</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>{magneto}: geschlossen</translation>
        </message>
        <message>
            <source>the edge stands {offset} mm from the mark, {allowed} mm are allowed</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>die Kante steht {offset} mm von der Marke, {allowed} mm sind erlaubt</translation>
        </message>
        <message>
            <source>the rotor stands near no mark</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>der Rotor steht an keiner Marke</translation>
        </message>
        <message>
            <source>the straightedge lay on it, looked at square</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>das Lineal lag an, gerade besehen</translation>
        </message>
        <message>
            <source>the straightedge was not looked at square there</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>das Lineal wurde dort nicht gerade besehen</translation>
        </message>
        <message>
            <source>Rotor at the E-gap</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>Rotor am E-Gap</translation>
        </message>
        <message>
            <source>opens {worst} mm from the mark, {allowed} mm are allowed</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>öffnet {worst} mm von der Marke, {allowed} mm sind erlaubt</translation>
        </message>
        <message>
            <source>{magneto}: contacts open at the mark</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>{magneto}: Kontakte öffnen an der Marke</translation>
        </message>
        <message>
            <source>The largest gap is {span}, limits {low} to {high}; {how}.</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>Der größte Abstand ist {span}, Grenzen {low} bis {high}; {how}.</translation>
        </message>
        <message>
            <source>{low} to {high} over the lobes</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>{low} bis {high} über die Nocken</translation>
        </message>
        <message>
            <source>The contacts are clean</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>Die Kontakte sind sauber</translation>
        </message>
        <message>
            <source>A pip of {pip} stands on the contacts</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>Ein Höcker von {pip} steht auf den Kontakten</translation>
        </message>
        <message>
            <source>they were looked at</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>sie wurden angesehen</translation>
        </message>
        <message>
            <source>they were not looked at as they are now</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>sie wurden nicht so angesehen, wie sie jetzt sind</translation>
        </message>
        <message>
            <source>Contacts clean and flat</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>Kontakte sauber und eben</translation>
        </message>
        <message>
            <source>the piston met its stop from both sides</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>der Kolben berührte den Anschlag von beiden Seiten</translation>
        </message>
        <message>
            <source>the stop was not met from both sides</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>der Anschlag wurde nicht von beiden Seiten berührt</translation>
        </message>
        <message>
            <source>Crank disc at zero</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>Kurbelscheibe auf null</translation>
        </message>
        <message>
            <source>The disc reads {error}° at top dead centre, {allowed}° are allowed; {how}.</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>Die Scheibe liest {error}° am oberen Totpunkt, {allowed}° sind erlaubt; {how}.</translation>
        </message>
        <message>
            <source>the magneto is off the engine, or never opens</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>der Magnet ist vom Motor ab oder öffnet nie</translation>
        </message>
        <message>
            <source>{magneto}: timed to the engine</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>{magneto}: auf den Motor eingestellt</translation>
        </message>
        <message>
            <source>both were read with lamp and disc after the last change</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>beide wurden nach der letzten Änderung mit Lampe und Scheibe gelesen</translation>
        </message>
        <message>
            <source>not both were read after the last change</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>nach der letzten Änderung wurden nicht beide gelesen</translation>
        </message>
        <message>
            <source>left and right are {apart}° apart, {allowed}° are allowed</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>links und rechts sind {apart}° auseinander, {allowed}° sind erlaubt</translation>
        </message>
        <message>
            <source>one does not fire</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>einer zündet nicht</translation>
        </message>
        <message>
            <source>Left and right together</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>Links und rechts gleich</translation>
        </message>
        <message>
            <source>the meter with the switch off and on</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>das Messgerät bei Schalter aus und ein</translation>
        </message>
        <message>
            <source>proved by {checks}</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>nachgewiesen durch {checks}</translation>
        </message>
        <message>
            <source>not proved by {checks}</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>nicht nachgewiesen durch {checks}</translation>
        </message>
        <message>
            <source>The switch lead is sound</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>Die Kurzschlussleitung ist in Ordnung</translation>
        </message>
        <message>
            <source>{magneto}: switch lead sound</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>{magneto}: Kurzschlussleitung in Ordnung</translation>
        </message>
        <message>
            <source>Marks were painted first.</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>Marken wurden zuerst gemalt.</translation>
        </message>
        <message>
            <source>It was taken apart with no marks painted across it.</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>Es wurde ohne Marken darüber zerlegt.</translation>
        </message>
        <message>
            <source>lock screw tight</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>Sicherungsschraube fest</translation>
        </message>
        <message>
            <source>clamp screws tight</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>Klemmschrauben fest</translation>
        </message>
        <message>
            <source>Everything is closed up.</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>Alles ist geschlossen.</translation>
        </message>
        <message>
            <source>Not so: {missing}.</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>Nicht so: {missing}.</translation>
        </message>
        <message>
            <source>checked by lamp and straightedge, looked at square, after the last change</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>nach der letzten Änderung mit Lampe und Lineal geprüft, gerade besehen</translation>
        </message>
        <message>
            <source>checked only with the eye to one side of the straightedge</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>nur mit dem Auge seitlich vom Lineal geprüft</translation>
        </message>
        <message>
            <source>never checked by lamp and straightedge, looked at square</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>nie mit Lampe und Lineal, gerade besehen, geprüft</translation>
        </message>
        <message>
            <source>{magneto}: largest gap within limits on every lobe</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>{magneto}: größter Abstand an jedem Nocken in den Grenzen</translation>
        </message>
        <message>
            <source>{magneto}: largest gap within limits</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>{magneto}: größter Abstand in den Grenzen</translation>
        </message>
        <message>
            <source>the disc's zero was never found by the stop from both sides</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>der Nullpunkt der Scheibe wurde nie mit dem Anschlag von beiden Seiten gefunden</translation>
        </message>
        <message>
            <source>checked by lamp and disc, approached with rotation, after the last change</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>nach der letzten Änderung mit Lampe und Scheibe geprüft, mit der Drehung angefahren</translation>
        </message>
        <message>
            <source>checked only approached against rotation, with the play on the wrong side</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>nur gegen die Drehung angefahren geprüft, das Spiel auf der falschen Seite</translation>
        </message>
        <message>
            <source>never checked by lamp and disc, approached with rotation</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>nie mit Lampe und Scheibe geprüft, mit der Drehung angefahren</translation>
        </message>
        <message>
            <source>the lamp lighting</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>die leuchtende Lampe</translation>
        </message>
        <message>
            <source>the lamp staying dark with the plug out</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>die dunkle Lampe bei gezogenem Stecker</translation>
        </message>
        <message>
            <source>The coupling was not taken apart and is marked.</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>Die Kupplung wurde nicht zerlegt und ist markiert.</translation>
        </message>
        <message>
            <source>The coupling was not taken apart, and not marked either.</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>Die Kupplung wurde nicht zerlegt und auch nicht markiert.</translation>
        </message>
        <message>
            <source>magneto on the engine</source>
            <extracomment>practice/goals.py, practice/seen.py, ui/class_editor_fields.py</extracomment>
            <translation>Magnet am Motor</translation>
        </message>
        <message>
            <source>nuts tight</source>
            <extracomment>practice/goals.py, practice/seen.py</extracomment>
            <translation>Muttern fest</translation>
        </message>
        <message>
            <source>pin out</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>Stift heraus</translation>
        </message>
        <message>
            <source>paper out</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>Papier heraus</translation>
        </message>
        <message>
            <source>plug in</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>Stecker drin</translation>
        </message>
        <message>
            <source>piston stop out</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>Kolbenanschlag heraus</translation>
        </message>
        <message>
            <source>not checked again after {why}</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>nicht wieder geprüft, nachdem: {why}</translation>
        </message>
        <message>
            <source>the primary is shorted inside</source>
            <extracomment>practice/goals.py</extracomment>
            <translation>die Primärwicklung ist innen kurzgeschlossen</translation>
        </message>
        <message>
            <source>{angle}° before the disc's zero</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>{angle}° vor dem Nullpunkt der Scheibe</translation>
        </message>
        <message>
            <source>{angle}° after the disc's zero</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>{angle}° nach dem Nullpunkt der Scheibe</translation>
        </message>
        <message>
            <source>nearest to No. {cylinder}</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>am nächsten zu Nr. {cylinder}</translation>
        </message>
        <message>
            <source>not connected</source>
            <extracomment>practice/instruments.py, ui/debrief_view.py, ui/practice_sight.py</extracomment>
            <translation>nicht angeschlossen</translation>
        </message>
        <message>
            <source>not laid on</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>nicht angelegt</translation>
        </message>
        <message>
            <source>no mark near the edge</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>keine Marke nahe der Kante</translation>
        </message>
        <message>
            <source>in line with the mark (mark {mark})</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>in Flucht mit der Marke (Marke {mark})</translation>
        </message>
        <message>
            <source>in line with the mark</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>in Flucht mit der Marke</translation>
        </message>
        <message>
            <source>{size} {unit} past the mark (mark {mark})</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>{size} {unit} hinter der Marke (Marke {mark})</translation>
        </message>
        <message>
            <source>{size} {unit} past the mark</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>{size} {unit} hinter der Marke</translation>
        </message>
        <message>
            <source>{size} {unit} short of the mark (mark {mark})</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>{size} {unit} vor der Marke (Marke {mark})</translation>
        </message>
        <message>
            <source>{size} {unit} short of the mark</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>{size} {unit} vor der Marke</translation>
        </message>
        <message>
            <source>“{kind}” is not a set of blades; there are {known}</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>„{kind}“ ist kein Satz Blätter; es gibt {known}</translation>
        </message>
        <message>
            <source>{blades} blades cannot be held together; take 1 to {most}</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>{blades} Blätter lassen sich nicht zusammen halten; 1 bis {most} nehmen</translation>
        </message>
        <message>
            <source>no-go</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>geht nicht</translation>
        </message>
        <message>
            <source>drag</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>klemmt</translation>
        </message>
        <message>
            <source>go</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>geht</translation>
        </message>
        <message>
            <source>a pip stands on one contact, a pit in the other</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>ein Höcker steht auf dem einen Kontakt, eine Grube im anderen</translation>
        </message>
        <message>
            <source>no disc on the crank</source>
            <extracomment>practice/instruments.py, ui/debrief_view.py</extracomment>
            <translation>keine Scheibe auf der Kurbel</translation>
        </message>
        <message>
            <source>with the plug in, the meter sees lead and coil at once: pull the plug first</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>bei gestecktem Stecker sieht das Messgerät Leitung und Spule zugleich: erst den Stecker ziehen</translation>
        </message>
        <message>
            <source>no distributor on the bench</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>kein Verteiler auf dem Prüftisch</translation>
        </message>
        <message>
            <source>the spark plug is in its hole: take the plugs out first</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>die Zündkerze steckt: erst die Kerzen herausnehmen</translation>
        </message>
        <message>
            <source>pressure: No. 1 is on compression</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>Druck: Nr. 1 verdichtet</translation>
        </message>
        <message>
            <source>no pressure</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>kein Druck</translation>
        </message>
        <message>
            <source>light</source>
            <extracomment>practice/instruments.py, ui/practice_sight.py</extracomment>
            <translation>hell</translation>
        </message>
        <message>
            <source>dark</source>
            <extracomment>practice/instruments.py, ui/practice_sight.py</extracomment>
            <translation>dunkel</translation>
        </message>
        <message>
            <source>the {kind} set has no blade {blade} left to take</source>
            <extracomment>practice/instruments.py</extracomment>
            <translation>der Satz {kind} hat kein Blatt {blade} mehr</translation>
        </message>
        <message>
            <source>a lesson is not handed in</source>
            <extracomment>practice/lesson.py</extracomment>
            <translation>eine Lektion wird nicht abgegeben</translation>
        </message>
        <message>
            <source>what is {what}; for {that} it must be {known}</source>
            <extracomment>practice/lesson.py</extracomment>
            <translation>what ist {what}; für {that} muss es {known} sein</translation>
        </message>
        <message>
            <source>{name} is missing, which {that} needs</source>
            <extracomment>practice/lesson.py</extracomment>
            <translation>{name} fehlt; {that} braucht es</translation>
        </message>
        <message>
            <source>{name} is not for {that}</source>
            <extracomment>practice/lesson.py</extracomment>
            <translation>{name} ist nicht für {that}</translation>
        </message>
        <message>
            <source>the lamp light</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>die leuchtende Lampe</translation>
        </message>
        <message>
            <source>the lamp dark</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>die dunkle Lampe</translation>
        </message>
        <message>
            <source>the lamp not connected</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>die nicht angeschlossene Lampe</translation>
        </message>
        <message>
            <source>the rotor at neutral</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>den Rotor in Neutralstellung</translation>
        </message>
        <message>
            <source>the rotor at full register</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>den Rotor in voller Deckung</translation>
        </message>
        <message>
            <source>the rotor at the E-gap</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>den Rotor am E-Gap</translation>
        </message>
        <message>
            <source>the contacts widest open</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>die am weitesten offenen Kontakte</translation>
        </message>
        <message>
            <source>the contact screw turned {angle}° closer or more</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>die Kontaktschraube {angle}° oder mehr näher gedreht</translation>
        </message>
        <message>
            <source>the contact screw turned {angle}° wider or more</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>die Kontaktschraube {angle}° oder mehr weiter gedreht</translation>
        </message>
        <message>
            <source>the backplate turned {angle}° with rotation or more</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>die Grundplatte {angle}° oder mehr mit der Drehung gedreht</translation>
        </message>
        <message>
            <source>the backplate turned {angle}° against rotation or more</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>die Grundplatte {angle}° oder mehr gegen die Drehung gedreht</translation>
        </message>
        <message>
            <source>what an instrument says</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>das, was ein Instrument sagt</translation>
        </message>
        <message>
            <source>the rotor to be let go</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>den losgelassenen Rotor</translation>
        </message>
        <message>
            <source>the lamp across the contacts</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>die Lampe an den Kontakten</translation>
        </message>
        <message>
            <source>the lamp taken off</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>die abgenommene Lampe</translation>
        </message>
        <message>
            <source>the lamp to go from dark to light while you turn with rotation</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>die Lampe, wie sie beim Drehen mit der Drehung von dunkel auf hell geht</translation>
        </message>
        <message>
            <source>the straightedge laid on and looked at square</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>das angelegte, gerade besehene Lineal</translation>
        </message>
        <message>
            <source>the eye away from square</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>das Auge seitlich davon</translation>
        </message>
        <message>
            <source>the lock screw tight</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>die feste Sicherungsschraube</translation>
        </message>
        <message>
            <source>the lock screw slack</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>die lose Sicherungsschraube</translation>
        </message>
        <message>
            <source>the clamp screws tight</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>die festen Klemmschrauben</translation>
        </message>
        <message>
            <source>the clamp screws slack</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>die losen Klemmschrauben</translation>
        </message>
        <message>
            <source>the contacts to open at the mark</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>das Öffnen der Kontakte an der Marke</translation>
        </message>
        <message>
            <source>the largest gap within its limits</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>den größten Abstand in seinen Grenzen</translation>
        </message>
        <message>
            <source>the switch on</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>den eingeschalteten Schalter</translation>
        </message>
        <message>
            <source>the switch off</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>den ausgeschalteten Schalter</translation>
        </message>
        <message>
            <source>the plug pulled out</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>den gezogenen Stecker</translation>
        </message>
        <message>
            <source>the plug in</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>den gesteckten Stecker</translation>
        </message>
        <message>
            <source>chocks at the wheels</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>Klötze an den Rädern</translation>
        </message>
        <message>
            <source>the chocks away</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>die weggenommenen Klötze</translation>
        </message>
        <message>
            <source>the spark plugs out</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>die herausgenommenen Zündkerzen</translation>
        </message>
        <message>
            <source>the spark plugs in</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>die eingesetzten Zündkerzen</translation>
        </message>
        <message>
            <source>the lead proved: meter, plug out, switch off</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>die nachgewiesene Leitung: Messgerät, Stecker heraus, Schalter aus</translation>
        </message>
        <message>
            <source>the piston stop in</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>den eingesetzten Kolbenanschlag</translation>
        </message>
        <message>
            <source>the piston stop out</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>den herausgenommenen Kolbenanschlag</translation>
        </message>
        <message>
            <source>the disc to read zero at top dead centre</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>die Null der Scheibe am oberen Totpunkt</translation>
        </message>
        <message>
            <source>marks painted across the coupling</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>über die Kupplung gemalte Marken</translation>
        </message>
        <message>
            <source>the nuts tight</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>die festen Muttern</translation>
        </message>
        <message>
            <source>the nuts off</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>die abgenommenen Muttern</translation>
        </message>
        <message>
            <source>the magneto on the engine</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>den Magneten am Motor</translation>
        </message>
        <message>
            <source>the magneto off the engine</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>den Magneten vom Motor ab</translation>
        </message>
        <message>
            <source>it to fire where it should</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>das Zünden, wo es soll</translation>
        </message>
        <message>
            <source>the answer “{answer}”</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>die Antwort „{answer}“</translation>
        </message>
        <message>
            <source>the lamp to be watched all the way round</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>den Blick auf die Lampe ganz herum</translation>
        </message>
        <message>
            <source>what the meter says</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>das, was das Messgerät sagt</translation>
        </message>
        <message>
            <source>That is the {part}; to click on it does nothing here. The step waits for {wanted}.</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>Das ist: {part}; ein Klick darauf tut hier nichts. Der Schritt wartet auf {wanted}.</translation>
        </message>
        <message>
            <source>That is the {part}. The step waits for {wanted}.</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>Das ist: {part}. Der Schritt wartet auf {wanted}.</translation>
        </message>
        <message>
            <source>That undid {undone}. The step waits for {wanted}.</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>Das machte {undone} rückgängig. Der Schritt wartet auf {wanted}.</translation>
        </message>
        <message>
            <source>Not yet. The step waits for {wanted}.</source>
            <extracomment>practice/lesson_words.py, ui/lesson_view.py</extracomment>
            <translation>Noch nicht. Der Schritt wartet auf {wanted}.</translation>
        </message>
        <message>
            <source>Step {step}: so already.</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>Schritt {step}: schon so.</translation>
        </message>
        <message>
            <source>Step {step}: done.</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>Schritt {step}: getan.</translation>
        </message>
        <message>
            <source>the {part} to be pointed at</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>das Zeigen auf: {part}</translation>
        </message>
        <message>
            <source>this to be done: {act}</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>diese Handlung: {act}</translation>
        </message>
        <message>
            <source>the crank {value}° before top dead centre</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>die Kurbel {value}° vor dem oberen Totpunkt</translation>
        </message>
        <message>
            <source>a line in the notebook: {act}</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>eine Zeile im Notizbuch: {act}</translation>
        </message>
        <message>
            <source>the piston to meet the stop with rotation</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>den Kolben am Anschlag, mit der Drehung</translation>
        </message>
        <message>
            <source>the piston to meet the stop against rotation</source>
            <extracomment>practice/lesson_words.py</extracomment>
            <translation>den Kolben am Anschlag, gegen die Drehung</translation>
        </message>
        <message>
            <source>“{name}” is neither a file nor one of the shipped exercises: {known}</source>
            <extracomment>practice/library.py</extracomment>
            <translation>„{name}“ ist weder eine Datei noch eine der mitgelieferten Übungen: {known}</translation>
        </message>
        <message>
            <source>“{name}” is neither a file nor one of the shipped lessons: {known}</source>
            <extracomment>practice/library.py</extracomment>
            <translation>„{name}“ ist weder eine Datei noch eine der mitgelieferten Lektionen: {known}</translation>
        </message>
        <message>
            <source>{file}: {field} is “{given}”; it must be a file's path or one of {known}</source>
            <extracomment>practice/library.py</extracomment>
            <translation>{file}: {field} ist „{given}“; es muss ein Dateipfad oder eines von {known} sein</translation>
        </message>
        <message>
            <source>handed in with the lock screw slack</source>
            <extracomment>practice/marking.py</extracomment>
            <translation>mit loser Sicherungsschraube abgegeben</translation>
        </message>
        <message>
            <source>handed in with the clamp screws slack</source>
            <extracomment>practice/marking.py</extracomment>
            <translation>mit losen Klemmschrauben abgegeben</translation>
        </message>
        <message>
            <source>handed in with the nuts slack</source>
            <extracomment>practice/marking.py</extracomment>
            <translation>mit losen Muttern abgegeben</translation>
        </message>
        <message>
            <source>handed in with the lock screw and the clamp screws slack</source>
            <extracomment>practice/marking.py</extracomment>
            <translation>mit loser Sicherungsschraube und losen Klemmschrauben abgegeben</translation>
        </message>
        <message>
            <source>handed in with the lock screw and the nuts slack</source>
            <extracomment>practice/marking.py</extracomment>
            <translation>mit loser Sicherungsschraube und losen Muttern abgegeben</translation>
        </message>
        <message>
            <source>handed in with the clamp screws and the nuts slack</source>
            <extracomment>practice/marking.py</extracomment>
            <translation>mit losen Klemmschrauben und losen Muttern abgegeben</translation>
        </message>
        <message>
            <source>handed in with the lock screw and the clamp screws and the nuts slack</source>
            <extracomment>practice/marking.py</extracomment>
            <translation>mit loser Sicherungsschraube, losen Klemmschrauben und losen Muttern abgegeben</translation>
        </message>
        <message>
            <source>Not passed: {danger}.</source>
            <extracomment>practice/marking.py</extracomment>
            <translation>Nicht bestanden: {danger}.</translation>
        </message>
        <message>
            <source>Not passed: {percent} % of the marks, and {pass_percent} % are needed.</source>
            <extracomment>practice/marking.py</extracomment>
            <translation>Nicht bestanden: {percent} % der Note, und {pass_percent} % sind nötig.</translation>
        </message>
        <message>
            <source>Passed with {percent} %.</source>
            <extracomment>practice/marking.py</extracomment>
            <translation>Bestanden mit {percent} %.</translation>
        </message>
        <message>
            <source>the rotor is held at the E-gap, the straightedge on it and looked at square</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>der Rotor wird am E-Gap gehalten, das Lineal daran und gerade besehen</translation>
        </message>
        <message>
            <source>the contacts open at the mark, seen by lamp and straightedge</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>die Kontakte öffnen an der Marke, mit Lampe und Lineal gesehen</translation>
        </message>
        <message>
            <source>the largest gap is within its limits, measured with blades</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>der größte Abstand liegt in seinen Grenzen, mit Blättern gemessen</translation>
        </message>
        <message>
            <source>the contacts are clean and flat, and were looked at</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>die Kontakte sind sauber und eben und wurden angesehen</translation>
        </message>
        <message>
            <source>the disc reads zero at No. 1's top dead centre, found from both sides</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>die Scheibe liest null am oberen Totpunkt von Nr. 1, von beiden Seiten gefunden</translation>
        </message>
        <message>
            <source>it fires where it should, read by lamp and disc with rotation</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>es zündet, wo es soll, mit Lampe und Scheibe in Drehrichtung gelesen</translation>
        </message>
        <message>
            <source>both magnetos fire together within what is allowed</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>beide Magnete zünden zusammen, so genau wie erlaubt</translation>
        </message>
        <message>
            <source>the switch lead is sound and proved</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>die Kurzschlussleitung ist in Ordnung und nachgewiesen</translation>
        </message>
        <message>
            <source>the coupling was marked before it was taken apart</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>die Kupplung wurde vor dem Zerlegen markiert</translation>
        </message>
        <message>
            <source>every screw and nut is tight, the plug in, the switch off</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>jede Schraube und Mutter ist fest, der Stecker drin, der Schalter aus</translation>
        </message>
        <message>
            <source>the rotor is held at the E-gap, the straightedge on it and looked at square, on every lobe</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>der Rotor wird am E-Gap gehalten, das Lineal daran und gerade besehen, an jedem Nocken</translation>
        </message>
        <message>
            <source>the contacts open at the mark, seen by lamp and straightedge, on every lobe</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>die Kontakte öffnen an der Marke, mit Lampe und Lineal gesehen, an jedem Nocken</translation>
        </message>
        <message>
            <source>the largest gap is within its limits, measured with blades, on every lobe</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>der größte Abstand liegt in seinen Grenzen, mit Blättern gemessen, an jedem Nocken</translation>
        </message>
        <message>
            <source>the contacts are clean and flat, and were looked at, on every lobe</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>die Kontakte sind sauber und eben und wurden angesehen, an jedem Nocken</translation>
        </message>
        <message>
            <source>the disc reads zero at No. 1's top dead centre, found from both sides, on every lobe</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>die Scheibe liest null am oberen Totpunkt von Nr. 1, von beiden Seiten gefunden, an jedem Nocken</translation>
        </message>
        <message>
            <source>it fires where it should, read by lamp and disc with rotation, on every lobe</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>es zündet, wo es soll, mit Lampe und Scheibe in Drehrichtung gelesen, an jedem Nocken</translation>
        </message>
        <message>
            <source>both magnetos fire together within what is allowed, on every lobe</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>beide Magnete zünden zusammen, so genau wie erlaubt, an jedem Nocken</translation>
        </message>
        <message>
            <source>the switch lead is sound and proved, on every lobe</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>die Kurzschlussleitung ist in Ordnung und nachgewiesen, an jedem Nocken</translation>
        </message>
        <message>
            <source>the coupling was marked before it was taken apart, on every lobe</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>die Kupplung wurde vor dem Zerlegen markiert, an jedem Nocken</translation>
        </message>
        <message>
            <source>every screw and nut is tight, the plug in, the switch off, on every lobe</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>jede Schraube und Mutter ist fest, der Stecker drin, der Schalter aus, an jedem Nocken</translation>
        </message>
        <message>
            <source>written down: how far past the mark the contacts open</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>aufgeschrieben: wie weit hinter der Marke die Kontakte öffnen</translation>
        </message>
        <message>
            <source>written down: the largest gap</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>aufgeschrieben: der größte Abstand</translation>
        </message>
        <message>
            <source>written down: where it fires before top dead centre</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>aufgeschrieben: wo es vor dem oberen Totpunkt zündet</translation>
        </message>
        <message>
            <source>written down: what the disc reads at top dead centre</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>aufgeschrieben: was die Scheibe am oberen Totpunkt liest</translation>
        </message>
        <message>
            <source>written down: what the switch lead suffers from</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>aufgeschrieben: woran die Kurzschlussleitung leidet</translation>
        </message>
        <message>
            <source>eccentric, {size} mm throw; clockwise brings the contacts closer</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>Exzenter, Hub {size} mm; im Uhrzeigersinn kommen die Kontakte näher</translation>
        </message>
        <message>
            <source>eccentric, {size} mm throw; anticlockwise brings the contacts closer</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>Exzenter, Hub {size} mm; gegen den Uhrzeigersinn kommen die Kontakte näher</translation>
        </message>
        <message>
            <source>threaded, {size} mm a turn; clockwise brings the contacts closer</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>Gewinde, {size} mm je Umdrehung; im Uhrzeigersinn kommen die Kontakte näher</translation>
        </message>
        <message>
            <source>threaded, {size} mm a turn; anticlockwise brings the contacts closer</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>Gewinde, {size} mm je Umdrehung; gegen den Uhrzeigersinn kommen die Kontakte näher</translation>
        </message>
        <message>
            <source>{goal}, left magneto</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>{goal}, linker Magnet</translation>
        </message>
        <message>
            <source>{goal}, right magneto</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>{goal}, rechter Magnet</translation>
        </message>
        <message>
            <source>{angle}° (left)</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>{angle}° (links)</translation>
        </message>
        <message>
            <source>{angle}° (right)</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>{angle}° (rechts)</translation>
        </message>
        <message>
            <source>{reading}, within {within}</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>{reading}, auf {within} genau</translation>
        </message>
        <message>
            <source>{e_gap}° of rotor past neutral</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>{e_gap}° Rotor hinter der Neutralstellung</translation>
        </message>
        <message>
            <source>Rim mark</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>Randmarke</translation>
        </message>
        <message>
            <source>within {tolerance} mm, at {radius} mm radius</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>innerhalb {tolerance} mm, bei {radius} mm Radius</translation>
        </message>
        <message>
            <source>{name}; No. 1 fires {fires} before top dead centre</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>{name}; Nr. 1 zündet {fires} vor dem oberen Totpunkt</translation>
        </message>
        <message>
            <source>Allowed</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>Erlaubt</translation>
        </message>
        <message>
            <source>{tolerance}° of crank</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>{tolerance}° Kurbel</translation>
        </message>
        <message>
            <source>Coupling</source>
            <extracomment>practice/paper.py, ui/plot_coupling.py, ui/plot_pane.py</extracomment>
            <translation>Kupplung</translation>
        </message>
        <message>
            <source>{magneto_teeth} teeth at the magneto, {drive_teeth} at the drive</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>{magneto_teeth} Zähne am Magneten, {drive_teeth} am Antrieb</translation>
        </message>
        <message>
            <source>Rotor</source>
            <extracomment>practice/paper.py, ui/lift_dialog.py, ui/setting_panel.py</extracomment>
            <translation>Rotor</translation>
        </message>
        <message>
            <source>{turns} turns a turn of the crank</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>{turns} Umdrehungen je Kurbelumdrehung</translation>
        </message>
        <message>
            <source>clockwise seen from the breaker end</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>im Uhrzeigersinn, von der Unterbrecherseite</translation>
        </message>
        <message>
            <source>anticlockwise seen from the breaker end</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>gegen den Uhrzeigersinn, von der Unterbrecherseite</translation>
        </message>
        <message>
            <source>{lobes}, unequally spaced</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>{lobes}, ungleich verteilt</translation>
        </message>
        <message>
            <source>Together</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>Zusammen</translation>
        </message>
        <message>
            <source>within {tolerance}° of one another</source>
            <extracomment>practice/paper.py</extracomment>
            <translation>auf {tolerance}° zueinander</translation>
        </message>
        <message>
            <source>“{name}” is no predicate</source>
            <extracomment>practice/predicates.py</extracomment>
            <translation>„{name}“ ist keine Bedingung</translation>
        </message>
        <message>
            <source>Written: {value} {unit}; true: {truth}; {within} {unit} are allowed; {how}.</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>Aufgeschrieben: {value} {unit}; wahr: {truth}; {within} {unit} sind erlaubt; {how}.</translation>
        </message>
        <message>
            <source>Where the contacts open, as read, {magneto}</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>Wo die Kontakte öffnen, wie gelesen, {magneto}</translation>
        </message>
        <message>
            <source>Largest gap, as read, {magneto}</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>Größter Abstand, wie gelesen, {magneto}</translation>
        </message>
        <message>
            <source>Firing, as read, {magneto}</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>Zündung, wie gelesen, {magneto}</translation>
        </message>
        <message>
            <source>The disc's zero, as read</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>Nullpunkt der Scheibe, wie gelesen</translation>
        </message>
        <message>
            <source>What the switch lead suffers from, {magneto}</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>Woran die Kurzschlussleitung leidet, {magneto}</translation>
        </message>
        <message>
            <source>read with lamp and straightedge, looked at square before it was written</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>vor dem Aufschreiben mit Lampe und Lineal gelesen, gerade besehen</translation>
        </message>
        <message>
            <source>not read with lamp and straightedge, looked at square before it was written</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>vor dem Aufschreiben nicht mit Lampe und Lineal gelesen, gerade besehen</translation>
        </message>
        <message>
            <source>read with blades before it was written</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>vor dem Aufschreiben mit Blättern gelesen</translation>
        </message>
        <message>
            <source>not read with blades before it was written</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>vor dem Aufschreiben nicht mit Blättern gelesen</translation>
        </message>
        <message>
            <source>read with lamp, and a disc whose zero was found before it was written</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>vor dem Aufschreiben mit der Lampe und einer Scheibe gelesen, deren Nullpunkt gefunden war</translation>
        </message>
        <message>
            <source>not read with lamp, and a disc whose zero was found before it was written</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>vor dem Aufschreiben nicht mit der Lampe und einer Scheibe gelesen, deren Nullpunkt gefunden war</translation>
        </message>
        <message>
            <source>read with the stop from both sides before it was written</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>vor dem Aufschreiben mit dem Anschlag von beiden Seiten gelesen</translation>
        </message>
        <message>
            <source>not read with the stop from both sides before it was written</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>vor dem Aufschreiben nicht mit dem Anschlag von beiden Seiten gelesen</translation>
        </message>
        <message>
            <source>read with meter and lamp before it was written</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>vor dem Aufschreiben mit Messgerät und Lampe gelesen</translation>
        </message>
        <message>
            <source>not read with meter and lamp before it was written</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>vor dem Aufschreiben nicht mit Messgerät und Lampe gelesen</translation>
        </message>
        <message>
            <source>read with nothing before it was written</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>vor dem Aufschreiben mit nichts gelesen</translation>
        </message>
        <message>
            <source>not read with nothing before it was written</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>vor dem Aufschreiben nicht mit nichts gelesen</translation>
        </message>
        <message>
            <source>It was not written down.</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>Es wurde nicht aufgeschrieben.</translation>
        </message>
        <message>
            <source>Written: {text}; true: {truth}; {how}.</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>Aufgeschrieben: {text}; wahr: {truth}; {how}.</translation>
        </message>
        <message>
            <source>There was nothing to read: the contacts never open; {how}.</source>
            <extracomment>practice/readings.py</extracomment>
            <translation>Es gab nichts zu lesen: die Kontakte öffnen nie; {how}.</translation>
        </message>
        <message>
            <source>Code {seed}, {time} minutes.</source>
            <extracomment>practice/report.py</extracomment>
            <translation>Code {seed}, {time} Minuten.</translation>
        </message>
        <message>
            <source>Dangerous acts</source>
            <extracomment>practice/report.py</extracomment>
            <translation>Gefährliche Handlungen</translation>
        </message>
        <message>
            <source>Marks</source>
            <extracomment>practice/report.py, ui/class_plots.py, ui/debrief_view.py, lessons/a-full-job.json</extracomment>
            <translation>Noten</translation>
        </message>
        <message>
            <source>True values</source>
            <extracomment>practice/report.py, ui/debrief_view.py</extracomment>
            <translation>Wahre Werte</translation>
        </message>
        <message>
            <source>Own readings</source>
            <extracomment>practice/report.py, ui/debrief_view.py</extracomment>
            <translation>Eigene Ablesungen</translation>
        </message>
        <message>
            <source>Time line</source>
            <extracomment>practice/report.py, ui/debrief_view.py</extracomment>
            <translation>Zeitlinie</translation>
        </message>
        <message>
            <source>An efficient path</source>
            <extracomment>practice/report.py, ui/debrief_view.py</extracomment>
            <translation>Ein kürzerer Weg</translation>
        </message>
        <message>
            <source>When</source>
            <extracomment>practice/report.py</extracomment>
            <translation>Wann</translation>
        </message>
        <message>
            <source>Times</source>
            <extracomment>practice/report.py</extracomment>
            <translation>Male</translation>
        </message>
        <message>
            <source>Weight</source>
            <extracomment>practice/report.py</extracomment>
            <translation>Gewicht</translation>
        </message>
        <message>
            <source>Got</source>
            <extracomment>practice/report.py</extracomment>
            <translation>Erreicht</translation>
        </message>
        <message>
            <source>Why</source>
            <extracomment>practice/report.py</extracomment>
            <translation>Warum</translation>
        </message>
        <message>
            <source>Written</source>
            <extracomment>practice/report.py</extracomment>
            <translation>Geschrieben</translation>
        </message>
        <message>
            <source>True then</source>
            <extracomment>practice/report.py</extracomment>
            <translation>Wahr damals</translation>
        </message>
        <message>
            <source>Danger</source>
            <extracomment>practice/report.py, ui/job_bars.py</extracomment>
            <translation>Gefahr</translation>
        </message>
        <message>
            <source>lock screw tight, clamp screws tight</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>Sicherungsschraube fest, Klemmschrauben fest</translation>
        </message>
        <message>
            <source>lock screw tight, clamp screws slack</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>Sicherungsschraube fest, Klemmschrauben lose</translation>
        </message>
        <message>
            <source>lock screw slack, clamp screws tight</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>Sicherungsschraube lose, Klemmschrauben fest</translation>
        </message>
        <message>
            <source>lock screw slack, clamp screws slack</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>Sicherungsschraube lose, Klemmschrauben lose</translation>
        </message>
        <message>
            <source>plug in, paper under the spring tab; switch on</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>Stecker drin, Papier unter der Federzunge; Schalter ein</translation>
        </message>
        <message>
            <source>plug in, paper under the spring tab; switch off</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>Stecker drin, Papier unter der Federzunge; Schalter aus</translation>
        </message>
        <message>
            <source>plug in; switch on</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>Stecker drin; Schalter ein</translation>
        </message>
        <message>
            <source>plug in; switch off</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>Stecker drin; Schalter aus</translation>
        </message>
        <message>
            <source>plug pulled, paper under the spring tab; switch on</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>Stecker gezogen, Papier unter der Federzunge; Schalter ein</translation>
        </message>
        <message>
            <source>plug pulled, paper under the spring tab; switch off</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>Stecker gezogen, Papier unter der Federzunge; Schalter aus</translation>
        </message>
        <message>
            <source>plug pulled; switch on</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>Stecker gezogen; Schalter ein</translation>
        </message>
        <message>
            <source>plug pulled; switch off</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>Stecker gezogen; Schalter aus</translation>
        </message>
        <message>
            <source>turned {angle}° since you came</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>{angle}° gedreht, seit Sie kamen</translation>
        </message>
        <message>
            <source>turned {angle}° since you came (with rotation)</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>{angle}° gedreht, seit Sie kamen (in Drehrichtung)</translation>
        </message>
        <message>
            <source>turned {angle}° since you came (against rotation)</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>{angle}° gedreht, seit Sie kamen (gegen die Drehrichtung)</translation>
        </message>
        <message>
            <source>turned {angle}° since you came (closer)</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>{angle}° gedreht, seit Sie kamen (enger)</translation>
        </message>
        <message>
            <source>turned {angle}° since you came (wider)</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>{angle}° gedreht, seit Sie kamen (weiter)</translation>
        </message>
        <message>
            <source>from {eye}° behind against rotation</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>von {eye}° dahinter, gegen die Drehung</translation>
        </message>
        <message>
            <source>square over the edge</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>gerade über der Kante</translation>
        </message>
        <message>
            <source>from {eye}° ahead with rotation</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>von {eye}° davor, mit der Drehung</translation>
        </message>
        <message>
            <source>no marks to count by</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>keine Marken zum Zählen</translation>
        </message>
        <message>
            <source>by the marks: magneto flange {i}, disc {j} teeth</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>nach den Marken: Magnetflansch {i}, Scheibe {j} Zähne</translation>
        </message>
        <message>
            <source>the marks stand in line</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>die Marken stehen in Flucht</translation>
        </message>
        <message>
            <source>wheels chocked</source>
            <extracomment>practice/seen.py, ui/class_editor_fields.py</extracomment>
            <translation>Räder verkeilt</translation>
        </message>
        <message>
            <source>no chocks</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>keine Klötze</translation>
        </message>
        <message>
            <source>spark plugs in</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>Zündkerzen drin</translation>
        </message>
        <message>
            <source>magneto off the engine</source>
            <extracomment>practice/seen.py, ui/drive_view.py</extracomment>
            <translation>Magnet vom Motor ab</translation>
        </message>
        <message>
            <source>nuts off</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>Muttern ab</translation>
        </message>
        <message>
            <source>coupling marked</source>
            <extracomment>practice/seen.py, ui/class_editor_fields.py</extracomment>
            <translation>Kupplung markiert</translation>
        </message>
        <message>
            <source>no marks on the coupling</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>keine Marken auf der Kupplung</translation>
        </message>
        <message>
            <source>piston stop in No. 1</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>Kolbenanschlag in Nr. 1</translation>
        </message>
        <message>
            <source>rotor pinned</source>
            <extracomment>practice/seen.py</extracomment>
            <translation>Rotor abgesteckt</translation>
        </message>
        <message>
            <source>lamp</source>
            <extracomment>practice/state.py</extracomment>
            <translation>Lampe</translation>
        </message>
        <message>
            <source>blades</source>
            <extracomment>practice/state.py</extracomment>
            <translation>Blätter</translation>
        </message>
        <message>
            <source>meter</source>
            <extracomment>practice/state.py</extracomment>
            <translation>Messgerät</translation>
        </message>
        <message>
            <source>finger</source>
            <extracomment>practice/state.py</extracomment>
            <translation>Finger</translation>
        </message>
        <message>
            <source>thumb</source>
            <extracomment>practice/state.py</extracomment>
            <translation>Daumen</translation>
        </message>
        <message>
            <source>stop</source>
            <extracomment>practice/state.py</extracomment>
            <translation>Anschlag</translation>
        </message>
        <message>
            <source>hand</source>
            <extracomment>practice/state.py</extracomment>
            <translation>Hand</translation>
        </message>
        <message>
            <source>“{what}” is nothing to turn to: lamp, mark, widest or stop</source>
            <extracomment>practice/turning.py</extracomment>
            <translation>zu „{what}“ lässt sich nicht drehen: lamp, mark, widest oder stop</translation>
        </message>
        <message>
            <source>the magneto is on the engine: turn the propeller, or lift it off</source>
            <extracomment>practice/turning.py</extracomment>
            <translation>der Magnet ist am Motor: den Propeller drehen oder den Magneten abheben</translation>
        </message>
        <message>
            <source>the rotor is pinned: take the pin out first</source>
            <extracomment>practice/turning.py</extracomment>
            <translation>der Rotor ist abgesteckt: erst den Stift herausnehmen</translation>
        </message>
        <message>
            <source>there is no engine here: turn the rotor</source>
            <extracomment>practice/turning.py</extracomment>
            <translation>hier ist kein Motor: den Rotor drehen</translation>
        </message>
        <message>
            <source>there is no disc on the crank to read</source>
            <extracomment>practice/turning.py</extracomment>
            <translation>auf der Kurbel ist keine Scheibe zum Ablesen</translation>
        </message>
        <message>
            <source>{value} is not a move a hand makes; it must lie within ±{most}</source>
            <extracomment>practice/turning.py</extracomment>
            <translation>{value} ist keine Bewegung einer Hand; sie muss innerhalb ±{most} liegen</translation>
        </message>
        <message>
            <source>no piston stop is fitted</source>
            <extracomment>practice/turning.py</extracomment>
            <translation>es ist kein Kolbenanschlag eingesetzt</translation>
        </message>
        <message>
            <source>clip the lamp across the contacts first</source>
            <extracomment>practice/turning.py</extracomment>
            <translation>erst die Lampe an die Kontakte klemmen</translation>
        </message>
        <message>
            <source>lay the straightedge along the cam's step first</source>
            <extracomment>practice/turning.py</extracomment>
            <translation>erst das Lineal an die Stufe des Nockens legen</translation>
        </message>
        <message>
            <source>a magneto is drawn back from its drive: tighten its nuts before turning the propeller</source>
            <extracomment>practice/turning.py</extracomment>
            <translation>ein Magnet ist von seinem Antrieb zurückgezogen: vor dem Drehen des Propellers seine Muttern anziehen</translation>
        </message>
        <message>
            <source>a pin holds a magneto's rotor: take it out before turning the propeller</source>
            <extracomment>practice/turning.py</extracomment>
            <translation>ein Stift hält den Rotor eines Magneten: vor dem Drehen des Propellers herausnehmen</translation>
        </message>
        <message>
            <source>light all the way round</source>
            <extracomment>practice/turning.py</extracomment>
            <translation>hell ganz herum</translation>
        </message>
        <message>
            <source>dark all the way round</source>
            <extracomment>practice/turning.py</extracomment>
            <translation>dunkel ganz herum</translation>
        </message>
        <message>
            <source>the piston meets the stop</source>
            <extracomment>practice/turning.py</extracomment>
            <translation>der Kolben berührt den Anschlag</translation>
        </message>
        <message>
            <source>turn the propeller with rotation until the lamp changes</source>
            <extracomment>practice/words.py</extracomment>
            <translation>den Propeller mit der Drehung drehen, bis die Lampe wechselt</translation>
        </message>
        <message>
            <source>turn the propeller against rotation until the lamp changes</source>
            <extracomment>practice/words.py</extracomment>
            <translation>den Propeller gegen die Drehung drehen, bis die Lampe wechselt</translation>
        </message>
        <message>
            <source>turn the rotor with rotation until the lamp changes</source>
            <extracomment>practice/words.py</extracomment>
            <translation>den Rotor in Drehrichtung drehen, bis die Lampe wechselt</translation>
        </message>
        <message>
            <source>turn the rotor against rotation until the lamp changes</source>
            <extracomment>practice/words.py</extracomment>
            <translation>den Rotor gegen die Drehrichtung drehen, bis die Lampe wechselt</translation>
        </message>
        <message>
            <source>turn the propeller with rotation until the straightedge comes in line</source>
            <extracomment>practice/words.py</extracomment>
            <translation>den Propeller in Drehrichtung drehen, bis das Lineal fluchtet</translation>
        </message>
        <message>
            <source>turn the propeller against rotation until the straightedge comes in line</source>
            <extracomment>practice/words.py</extracomment>
            <translation>den Propeller gegen die Drehrichtung drehen, bis das Lineal fluchtet</translation>
        </message>
        <message>
            <source>turn the rotor with rotation until the straightedge comes in line</source>
            <extracomment>practice/words.py</extracomment>
            <translation>den Rotor in Drehrichtung drehen, bis das Lineal fluchtet</translation>
        </message>
        <message>
            <source>turn the rotor against rotation until the straightedge comes in line</source>
            <extracomment>practice/words.py</extracomment>
            <translation>den Rotor gegen die Drehrichtung drehen, bis das Lineal fluchtet</translation>
        </message>
        <message>
            <source>turn the propeller with rotation until the contacts stand widest open</source>
            <extracomment>practice/words.py</extracomment>
            <translation>den Propeller in Drehrichtung drehen, bis die Kontakte am weitesten offen stehen</translation>
        </message>
        <message>
            <source>turn the propeller against rotation until the contacts stand widest open</source>
            <extracomment>practice/words.py</extracomment>
            <translation>den Propeller gegen die Drehrichtung drehen, bis die Kontakte am weitesten offen stehen</translation>
        </message>
        <message>
            <source>turn the rotor with rotation until the contacts stand widest open</source>
            <extracomment>practice/words.py</extracomment>
            <translation>den Rotor in Drehrichtung drehen, bis die Kontakte am weitesten offen stehen</translation>
        </message>
        <message>
            <source>turn the rotor against rotation until the contacts stand widest open</source>
            <extracomment>practice/words.py</extracomment>
            <translation>den Rotor gegen die Drehrichtung drehen, bis die Kontakte am weitesten offen stehen</translation>
        </message>
        <message>
            <source>turn the propeller with rotation until the piston meets the stop</source>
            <extracomment>practice/words.py</extracomment>
            <translation>den Propeller in Drehrichtung drehen, bis der Kolben den Anschlag berührt</translation>
        </message>
        <message>
            <source>turn the propeller against rotation until the piston meets the stop</source>
            <extracomment>practice/words.py</extracomment>
            <translation>den Propeller gegen die Drehrichtung drehen, bis der Kolben den Anschlag berührt</translation>
        </message>
        <message>
            <source>turn the rotor with rotation until the piston meets the stop</source>
            <extracomment>practice/words.py</extracomment>
            <translation>den Rotor in Drehrichtung drehen, bis der Kolben den Anschlag berührt</translation>
        </message>
        <message>
            <source>turn the rotor against rotation until the piston meets the stop</source>
            <extracomment>practice/words.py</extracomment>
            <translation>den Rotor gegen die Drehrichtung drehen, bis der Kolben den Anschlag berührt</translation>
        </message>
        <message>
            <source>the left magneto</source>
            <extracomment>practice/words.py</extracomment>
            <translation>der linke Magnetzünder</translation>
        </message>
        <message>
            <source>the right magneto</source>
            <extracomment>practice/words.py</extracomment>
            <translation>der rechte Magnetzünder</translation>
        </message>
        <message>
            <source>put in a new lead</source>
            <extracomment>practice/words.py</extracomment>
            <translation>eine neue Leitung einbauen</translation>
        </message>
        <message>
            <source>put in a new tab</source>
            <extracomment>practice/words.py</extracomment>
            <translation>eine neue Federzunge einbauen</translation>
        </message>
        <message>
            <source>renew the insulation inside</source>
            <extracomment>practice/words.py</extracomment>
            <translation>die Isolierung innen erneuern</translation>
        </message>
        <message>
            <source>move the magneto flange on the disc 1 tooth with rotation</source>
            <extracomment>practice/words.py</extracomment>
            <translation>den Magnetzünderflansch auf der Scheibe 1 Zahn in Drehrichtung versetzen</translation>
        </message>
        <message>
            <source>move the magneto flange on the disc 1 tooth against rotation</source>
            <extracomment>practice/words.py</extracomment>
            <translation>den Magnetzünderflansch auf der Scheibe 1 Zahn gegen die Drehrichtung versetzen</translation>
        </message>
        <message>
            <source>move the disc on the drive flange 1 tooth with rotation</source>
            <extracomment>practice/words.py</extracomment>
            <translation>die Scheibe auf dem Antriebsflansch 1 Zahn in Drehrichtung versetzen</translation>
        </message>
        <message>
            <source>move the disc on the drive flange 1 tooth against rotation</source>
            <extracomment>practice/words.py</extracomment>
            <translation>die Scheibe auf dem Antriebsflansch 1 Zahn gegen die Drehrichtung versetzen</translation>
        </message>
        <message>
            <source>straightedge past the mark as the contacts open</source>
            <extracomment>practice/words.py</extracomment>
            <translation>Lineal hinter der Marke, wenn die Kontakte öffnen</translation>
        </message>
        <message>
            <source>largest gap</source>
            <extracomment>practice/words.py</extracomment>
            <translation>größter Abstand</translation>
        </message>
        <message>
            <source>fires before top dead centre</source>
            <extracomment>practice/words.py</extracomment>
            <translation>zündet vor dem oberen Totpunkt</translation>
        </message>
        <message>
            <source>disc reads at top dead centre</source>
            <extracomment>practice/words.py</extracomment>
            <translation>Scheibe zeigt im oberen Totpunkt</translation>
        </message>
        <message>
            <source>note</source>
            <extracomment>practice/words.py</extracomment>
            <translation>Notiz</translation>
        </message>
        <message>
            <source>broken</source>
            <extracomment>practice/words.py, ui/class_editor_rows.py</extracomment>
            <translation>gebrochen</translation>
        </message>
        <message>
            <source>shorted</source>
            <extracomment>practice/words.py, ui/class_editor_rows.py</extracomment>
            <translation>kurzgeschlossen</translation>
        </message>
        <message>
            <source>tab</source>
            <extracomment>practice/words.py, spec/lift_table.py, ui/class_editor_rows.py</extracomment>
            <translation>Tab/Zunge</translation>
        </message>
        <message>
            <source>thumb over No. 1's plug hole</source>
            <extracomment>practice/words.py</extracomment>
            <translation>Daumen auf das Kerzenloch von Nr. 1</translation>
        </message>
        <message>
            <source>the magneto</source>
            <extracomment>practice/words.py</extracomment>
            <translation>der Magnetzünder</translation>
        </message>
        <message>
            <source>largest gap, lobe {lobe}</source>
            <extracomment>practice/words.py</extracomment>
            <translation>größter Abstand, Nocken {lobe}</translation>
        </message>
        <message>
            <source>point at {part}</source>
            <extracomment>practice/words.py</extracomment>
            <translation>auf {part} zeigen</translation>
        </message>
        <message>
            <source>write down – {note}</source>
            <extracomment>practice/words.py</extracomment>
            <translation>aufschreiben – {note}</translation>
        </message>
        <message>
            <source>hand in</source>
            <extracomment>practice/words.py</extracomment>
            <translation>abgeben</translation>
        </message>
        <message>
            <source>look at the contacts</source>
            <extracomment>practice/words.py</extracomment>
            <translation>die Kontakte ansehen</translation>
        </message>
        <message>
            <source>dress the contacts</source>
            <extracomment>practice/words.py</extracomment>
            <translation>die Kontakte abziehen</translation>
        </message>
        <message>
            <source>try {blades} {unit}</source>
            <extracomment>practice/words.py</extracomment>
            <translation>{blades} {unit} probieren</translation>
        </message>
        <message>
            <source>meter from the lead's plug to the case</source>
            <extracomment>practice/words.py</extracomment>
            <translation>vom Stecker der Leitung zum Gehäuse messen</translation>
        </message>
        <message>
            <source>lift the magneto off</source>
            <extracomment>practice/words.py</extracomment>
            <translation>den Magnetzünder abnehmen</translation>
        </message>
        <message>
            <source>paint marks across the coupling</source>
            <extracomment>practice/words.py</extracomment>
            <translation>Farbmarken über die Kupplung ziehen</translation>
        </message>
        <message>
            <source>turn the propeller {angle}° with rotation</source>
            <extracomment>practice/words.py</extracomment>
            <translation>den Propeller {angle}° in Drehrichtung drehen</translation>
        </message>
        <message>
            <source>turn the propeller {angle}° against rotation</source>
            <extracomment>practice/words.py</extracomment>
            <translation>den Propeller {angle}° gegen die Drehrichtung drehen</translation>
        </message>
        <message>
            <source>turn the propeller with rotation to {reading}° on the disc</source>
            <extracomment>practice/words.py</extracomment>
            <translation>den Propeller in Drehrichtung bis {reading}° auf der Scheibe drehen</translation>
        </message>
        <message>
            <source>turn the propeller against rotation to {reading}° on the disc</source>
            <extracomment>practice/words.py</extracomment>
            <translation>den Propeller gegen die Drehrichtung bis {reading}° auf der Scheibe drehen</translation>
        </message>
        <message>
            <source>lay the straightedge on</source>
            <extracomment>practice/words.py</extracomment>
            <translation>das Lineal auflegen</translation>
        </message>
        <message>
            <source>take the straightedge away</source>
            <extracomment>practice/words.py</extracomment>
            <translation>das Lineal wegnehmen</translation>
        </message>
        <message>
            <source>look square over the straightedge</source>
            <extracomment>practice/words.py</extracomment>
            <translation>gerade über das Lineal blicken</translation>
        </message>
        <message>
            <source>look from {eye}° to the side</source>
            <extracomment>practice/words.py</extracomment>
            <translation>von {eye}° seitlich blicken</translation>
        </message>
        <message>
            <source>clip the lamp across the contacts</source>
            <extracomment>practice/words.py</extracomment>
            <translation>die Lampe an die Kontakte klemmen</translation>
        </message>
        <message>
            <source>take the lamp off</source>
            <extracomment>practice/words.py</extracomment>
            <translation>die Lampe abnehmen</translation>
        </message>
        <message>
            <source>screw the piston stop in</source>
            <extracomment>practice/words.py</extracomment>
            <translation>den Kolbenanschlag einschrauben</translation>
        </message>
        <message>
            <source>take the piston stop out</source>
            <extracomment>practice/words.py</extracomment>
            <translation>den Kolbenanschlag ausbauen</translation>
        </message>
        <message>
            <source>turn the disc on the crank {by}° earlier</source>
            <extracomment>practice/words.py</extracomment>
            <translation>die Scheibe auf der Kurbelwelle {by}° früher drehen</translation>
        </message>
        <message>
            <source>turn the disc on the crank {by}° later</source>
            <extracomment>practice/words.py</extracomment>
            <translation>die Scheibe auf der Kurbelwelle {by}° später drehen</translation>
        </message>
        <message>
            <source>slip paper under the spring tab</source>
            <extracomment>practice/words.py</extracomment>
            <translation>Papier unter die Federzunge schieben</translation>
        </message>
        <message>
            <source>take the paper from the spring tab</source>
            <extracomment>practice/words.py</extracomment>
            <translation>das Papier von der Federzunge nehmen</translation>
        </message>
        <message>
            <source>chock the wheels</source>
            <extracomment>practice/words.py</extracomment>
            <translation>die Räder verkeilen</translation>
        </message>
        <message>
            <source>take the chocks away</source>
            <extracomment>practice/words.py</extracomment>
            <translation>die Keile wegnehmen</translation>
        </message>
        <message>
            <source>take the spark plugs out</source>
            <extracomment>practice/words.py</extracomment>
            <translation>die Zündkerzen ausbauen</translation>
        </message>
        <message>
            <source>put the spark plugs in</source>
            <extracomment>practice/words.py</extracomment>
            <translation>die Zündkerzen einbauen</translation>
        </message>
        <message>
            <source>tighten the magneto's nuts</source>
            <extracomment>practice/words.py</extracomment>
            <translation>die Muttern des Magnetzünders festziehen</translation>
        </message>
        <message>
            <source>take the nuts off and draw the magneto back</source>
            <extracomment>practice/words.py</extracomment>
            <translation>die Muttern abnehmen und den Magnetzünder zurückziehen</translation>
        </message>
        <message>
            <source>pin the rotor</source>
            <extracomment>practice/words.py</extracomment>
            <translation>den Rotor abstecken</translation>
        </message>
        <message>
            <source>take the pin out</source>
            <extracomment>practice/words.py</extracomment>
            <translation>den Absteckstift ziehen</translation>
        </message>
        <message>
            <source>refit the magneto as its rotor stands</source>
            <extracomment>practice/words.py</extracomment>
            <translation>den Magnetzünder anbauen, wie sein Rotor steht</translation>
        </message>
        <message>
            <source>go to the left magneto</source>
            <extracomment>practice/words.py</extracomment>
            <translation>zum linken Magnetzünder gehen</translation>
        </message>
        <message>
            <source>go to the right magneto</source>
            <extracomment>practice/words.py</extracomment>
            <translation>zum rechten Magnetzünder gehen</translation>
        </message>
        <message>
            <source>firing_order is {order}; it must name each cylinder from 1 to {n} once</source>
            <extracomment>spec/engine.py</extracomment>
            <translation>firing_order ist {order}; jeder Zylinder von 1 bis {n} muss einmal darin stehen</translation>
        </message>
        <message>
            <source>firing_order begins with {first}; it must begin with cylinder 1</source>
            <extracomment>spec/engine.py</extracomment>
            <translation>firing_order beginnt mit {first}; es muss mit Zylinder 1 beginnen</translation>
        </message>
        <message>
            <source>rod_mm is {rod:g}; it must be longer than half the stroke, {crank:g} mm</source>
            <extracomment>spec/engine.py</extracomment>
            <translation>rod_mm ist {rod:g}; es muss länger sein als der halbe Hub, {crank:g} mm</translation>
        </message>
        <message>
            <source>articulation is for a radial engine; this one is {arrangement}</source>
            <extracomment>spec/engine.py</extracomment>
            <translation>articulation gilt für einen Sternmotor; dieser ist {arrangement}</translation>
        </message>
        <message>
            <source>articulation.master_cylinder is {master_cylinder}; the engine has {cylinders} cylinders</source>
            <extracomment>spec/engine.py</extracomment>
            <translation>articulation.master_cylinder ist {master_cylinder}; der Motor hat {cylinders} Zylinder</translation>
        </message>
        <message>
            <source>articulation.knuckle_angles_deg has {count} values; it must have one for each of the {cylinders} cylinders</source>
            <extracomment>spec/engine.py</extracomment>
            <translation>articulation.knuckle_angles_deg hat {count} Werte; nötig ist einer für jeden der {cylinders} Zylinder</translation>
        </message>
        <message>
            <source>articulation.link_rod_mm is {rod:g}; it must be longer than half the stroke and the knuckle radius together, {reach:g} mm</source>
            <extracomment>spec/engine.py</extracomment>
            <translation>articulation.link_rod_mm ist {rod:g}; es muss länger sein als halber Hub und Anlenkradius zusammen, {reach:g} mm</translation>
        </message>
        <message>
            <source>not a number (NaN)</source>
            <extracomment>spec/files.py</extracomment>
            <translation>keine Zahl (NaN)</translation>
        </message>
        <message>
            <source>infinite</source>
            <extracomment>spec/files.py</extracomment>
            <translation>unendlich</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be at least {ge:g}</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} ist {found}; es muss mindestens {ge:g} sein</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be above {gt:g}</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} ist {found}; es muss über {gt:g} liegen</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be at most {le:g}</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} ist {found}; es darf höchstens {le:g} sein</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be below {lt:g}</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} ist {found}; es muss unter {lt:g} liegen</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be a multiple of {multiple_of:g}</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} ist {found}; es muss ein Vielfaches von {multiple_of:g} sein</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be a whole number</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} ist {found}; es muss eine ganze Zahl sein</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be text</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} ist {found}; es muss Text sein</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be text without broken characters</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} ist {found}; es muss Text ohne beschädigte Zeichen sein</translation>
        </message>
        <message>
            <source>{field} is {found}; it must have at least {min_length} characters</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} ist {found}; es muss mindestens {min_length} Zeichen haben</translation>
        </message>
        <message>
            <source>{field} is {found}; it must have at most {max_length} characters</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} ist {found}; es darf höchstens {max_length} Zeichen haben</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be one line of text</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} ist {found}; es muss eine Textzeile sein</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be true or false</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} ist {found}; es muss true oder false sein</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be {expected}</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} ist {found}; es muss {expected} sein</translation>
        </message>
        <message>
            <source>{field} is {found}; it must have at least {min_length} values</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} ist {found}; es muss mindestens {min_length} Werte haben</translation>
        </message>
        <message>
            <source>{field} is {found}; it must have at most {max_length} values</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} ist {found}; es darf höchstens {max_length} Werte haben</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be a list</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} ist {found}; es muss eine Liste sein</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be an object in braces</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} ist {found}; es muss ein Objekt in geschweiften Klammern sein</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be a finite number of millimetres</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} ist {found}; es muss eine endliche Zahl von Millimetern sein</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be a finite number of degrees</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} ist {found}; es muss eine endliche Zahl von Grad sein</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be a finite number of newton metres</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} ist {found}; es muss eine endliche Zahl von Newtonmetern sein</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be a finite number of ohms</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} ist {found}; es muss eine endliche Zahl von Ohm sein</translation>
        </message>
        <message>
            <source>{field} is {found}; it must be a finite number</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} ist {found}; es muss eine endliche Zahl sein</translation>
        </message>
        <message>
            <source>{field} is missing</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} fehlt</translation>
        </message>
        <message>
            <source>{field} is not a known name (known here: {known})</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} ist kein bekannter Name (hier bekannt: {known})</translation>
        </message>
        <message>
            <source>{field} is {found}; it must {rule}</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} ist {found}; es muss {rule}</translation>
        </message>
        <message>
            <source>{file}: is larger than {most:g} MB, the most that is read</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{file}: ist größer als {most:g} MB; mehr wird nicht gelesen</translation>
        </message>
        <message>
            <source>“{repeated}” is given twice in one place; give it once</source>
            <extracomment>spec/files.py</extracomment>
            <translation>„{repeated}“ steht zweimal an einer Stelle; nur einmal angeben</translation>
        </message>
        <message>
            <source>{source}: holds no {kind} object; it must be one JSON object in braces</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{source}: enthält kein Objekt {kind}; es muss ein JSON-Objekt in geschweiften Klammern sein</translation>
        </message>
        <message>
            <source>{source}: format is missing; it must be "{wanted}"</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{source}: format fehlt; es muss "{wanted}" sein</translation>
        </message>
        <message>
            <source>{field} is not a known name (did you mean {close}?)</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field} ist kein bekannter Name (gemeint {close}?)</translation>
        </message>
        <message>
            <source>{field}.kind is {found}; it must be {tags}</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field}.kind ist {found}; es muss {tags} sein</translation>
        </message>
        <message>
            <source>{field}.kind is missing; it must be {tags}</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{field}.kind fehlt; es muss {tags} sein</translation>
        </message>
        <message>
            <source>it is not a file</source>
            <extracomment>spec/files.py</extracomment>
            <translation>es ist keine Datei</translation>
        </message>
        <message>
            <source>{file}: cannot be read: {reason}</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{file}: nicht lesbar: {reason}</translation>
        </message>
        <message>
            <source>{file}: is not a text file (byte {byte} is not UTF-8)</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{file}: ist keine Textdatei (Byte {byte} ist kein UTF-8)</translation>
        </message>
        <message>
            <source>{file}: line {line}, column {column}: not JSON: {reason}</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{file}: Zeile {line}, Spalte {column}: kein JSON: {reason}</translation>
        </message>
        <message>
            <source>{file}: is nested too deeply</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{file}: ist zu tief verschachtelt</translation>
        </message>
        <message>
            <source>holds a list of {count} values; at most {most} are read</source>
            <extracomment>spec/files.py</extracomment>
            <translation>enthält eine Liste mit {count} Werten; höchstens {most} werden gelesen</translation>
        </message>
        <message>
            <source>{file}: cannot be written: {reason}</source>
            <extracomment>spec/files.py</extracomment>
            <translation>{file}: nicht schreibbar: {reason}</translation>
        </message>
        <message>
            <source>Magneto on its engine</source>
            <extracomment>spec/formats.py</extracomment>
            <translation>Magnetzünder an seinem Motor</translation>
        </message>
        <message>
            <source>Lesson</source>
            <extracomment>spec/formats.py</extracomment>
            <translation>Lektion</translation>
        </message>
        <message>
            <source>Attempt at an exercise</source>
            <extracomment>spec/formats.py</extracomment>
            <translation>Versuch an einer Übung</translation>
        </message>
        <message>
            <source>Set of exercises for a class</source>
            <extracomment>spec/formats.py</extracomment>
            <translation>Übungsreihe für eine Klasse</translation>
        </message>
        <message>
            <source>Job sheet of a magneto</source>
            <extracomment>spec/formats.py</extracomment>
            <translation>Auftragsblatt eines Magnetzünders</translation>
        </message>
        <message>
            <source>{file}: is not a file of this program; its format must be one of {known}</source>
            <extracomment>spec/formats.py</extracomment>
            <translation>{file}: ist keine Datei dieses Programms; format muss eines von {known} sein</translation>
        </message>
        <message>
            <source>{others} or {last}</source>
            <extracomment>spec/language.py</extracomment>
            <translation>{others} oder {last}</translation>
        </message>
        <message>
            <source>{first} or {other}</source>
            <extracomment>spec/language.py</extracomment>
            <translation>{first} oder {other}</translation>
        </message>
        <message>
            <source>{first} and {other}</source>
            <extracomment>spec/language.py</extracomment>
            <translation>{first} und {other}</translation>
        </message>
        <message>
            <source>“{name}” is neither a file nor one of the shipped magnetos: {known}</source>
            <extracomment>spec/library.py</extracomment>
            <translation>„{name}“ ist weder eine Datei noch einer der mitgelieferten Magnetzünder: {known}</translation>
        </message>
        <message>
            <source>“{name}” is neither a file nor one of the shipped engines: {known}</source>
            <extracomment>spec/library.py</extracomment>
            <translation>„{name}“ ist weder eine Datei noch einer der mitgelieferten Motoren: {known}</translation>
        </message>
        <message>
            <source>“{name}” is neither a file nor one of the shipped installations: {known}</source>
            <extracomment>spec/library.py</extracomment>
            <translation>„{name}“ ist weder eine Datei noch einer der mitgelieferten Einbauten: {known}</translation>
        </message>
        <message>
            <source>{where} has no angle in column {column} (columns separated by {separator})</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>{where} hat keinen Winkel in Spalte {column} (Spalten getrennt durch {separator})</translation>
        </message>
        <message>
            <source>{where} has no reading in column {column} (columns separated by {separator})</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>{where} hat keinen Wert in Spalte {column} (Spalten getrennt durch {separator})</translation>
        </message>
        <message>
            <source>semicolon</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>Semikolon</translation>
        </message>
        <message>
            <source>comma</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>Komma</translation>
        </message>
        <message>
            <source>space</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>Leerzeichen</translation>
        </message>
        <message>
            <source>the table</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>die Tabelle</translation>
        </message>
        <message>
            <source>{source}: its commas may be decimal signs or stand between columns: say which, or save it with semicolons between columns</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>{source}: Kommas können Dezimalzeichen sein oder Spalten trennen: angeben, welches, oder mit Semikolons zwischen den Spalten speichern</translation>
        </message>
        <message>
            <source>{source}: is longer than {most:g} million characters, the most that is read</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>{source}: ist länger als {most:g} Millionen Zeichen; mehr wird nicht gelesen</translation>
        </message>
        <message>
            <source>{source}: the decimal sign must be a point or a comma, the columns two of the first hundred</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>{source}: Das Dezimalzeichen muss Punkt oder Komma sein, die Spalten zwei der ersten hundert</translation>
        </message>
        <message>
            <source>{source}: has {count} rows of numbers; it must have at least {least} (“{numbered}” is none: write numbers alone, without their units)</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>{source}: hat {count} Zahlenzeilen; nötig sind mindestens {least} („{numbered}“ ist keine: nur Zahlen schreiben, ohne Einheiten)</translation>
        </message>
        <message>
            <source>{where}: “{field}” is not a number (columns separated by {separator}, decimal sign “{decimal}”)</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>{where}: „{field}“ ist keine Zahl (Spalten getrennt durch {separator}, Dezimalzeichen „{decimal}“)</translation>
        </message>
        <message>
            <source>{where}: {field} is too large; at most {most:g} is read</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>{where}: {field} ist zu groß; höchstens {most:g} wird gelesen</translation>
        </message>
        <message>
            <source>{source}: line {line}</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>{source}: Zeile {line}</translation>
        </message>
        <message>
            <source>{source}: has more than {most} rows, the most that are read</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>{source}: hat mehr als {most} Zeilen; mehr werden nicht gelesen</translation>
        </message>
        <message>
            <source>{source}: has no row of numbers in its first 100 lines</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>{source}: hat in den ersten 100 Zeilen keine Zahlenzeile</translation>
        </message>
        <message>
            <source>{source}: has {count} rows of numbers; it must have at least {least}</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>{source}: hat {count} Zahlenzeilen; nötig sind mindestens {least}</translation>
        </message>
        <message>
            <source>{source}: line {line}: “{row}” is not a row of numbers</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>{source}: Zeile {line}: „{row}“ ist keine Zahlenzeile</translation>
        </message>
        <message>
            <source>{source}: has both points and commas in its numbers: say which is the decimal sign</source>
            <extracomment>spec/lift_table.py</extracomment>
            <translation>{source}: hat Punkte und Kommas in den Zahlen: angeben, welches das Dezimalzeichen ist</translation>
        </message>
        <message>
            <source>{field} is [{low:g}, {high:g}]; the first must be below the second</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>{field} ist [{low:g}, {high:g}]; der erste Wert muss unter dem zweiten liegen</translation>
        </message>
        <message>
            <source>lobes {lobe} and {next} overlap: their tops are {apart:g}° apart and a lobe is {width:g}° wide</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>Nocken {lobe} und {next} überlappen: ihre höchsten Punkte liegen {apart:g}° auseinander, und ein Nocken ist {width:g}° breit</translation>
        </message>
        <message>
            <source>angle_deg has {angles} values and contact_lift_mm {lifts}; they must be as many</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>angle_deg hat {angles} Werte und contact_lift_mm {lifts}; es müssen gleich viele sein</translation>
        </message>
        <message>
            <source>contact_lift_mm must begin and end with 0 (the heel off the lobe)</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>contact_lift_mm muss mit 0 beginnen und enden (Gleitstück neben dem Nocken)</translation>
        </message>
        <message>
            <source>contact_lift_mm never rises; the top must be at least 0.001</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>contact_lift_mm steigt nie; der höchste Wert muss mindestens 0.001 sein</translation>
        </message>
        <message>
            <source>the top of contact_lift_mm is at {angle:g}°; angle_deg counts from it</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>der höchste Wert von contact_lift_mm liegt bei {angle:g}°; angle_deg zählt von dort</translation>
        </message>
        <message>
            <source>contact_lift_mm must rise to one top and fall again, without steps or dips</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>contact_lift_mm muss zu einem Höchstwert steigen und wieder fallen, ohne Stufen oder Senken</translation>
        </message>
        <message>
            <source>lobe_peaks_deg begins with {first:g}; it must begin with 0 (lobe 1)</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>lobe_peaks_deg beginnt mit {first:g}; es muss mit 0 beginnen (Nocken 1)</translation>
        </message>
        <message>
            <source>lobe_peaks_deg: {overlap}</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>lobe_peaks_deg: {overlap}</translation>
        </message>
        <message>
            <source>e_gap_deg is {e_gap:g}; with {poles} poles it must be below {most:g}, where full register lies</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>e_gap_deg ist {e_gap:g}; bei {poles} Polen muss es unter {most:g} liegen, wo die volle Deckung ist</translation>
        </message>
        <message>
            <source>contact_screw.range_deg is [{low:g}, {high:g}]; it must contain 0</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>contact_screw.range_deg ist [{low:g}, {high:g}]; es muss 0 enthalten</translation>
        </message>
        <message>
            <source>designed_setting.backplate_deg is {backplate:g}; it must lie in backplate.range_deg, [{low:g}, {high:g}]</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>designed_setting.backplate_deg ist {backplate:g}; es muss in backplate.range_deg liegen, [{low:g}, {high:g}]</translation>
        </message>
        <message>
            <source>breaker.pivot_distance_mm is {distance:g}; the pivot must stand outside the lobe's top, {top:g} mm from the cam's centre</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>breaker.pivot_distance_mm ist {distance:g}; der Drehpunkt muss außerhalb des höchsten Nockenpunkts stehen, {top:g} mm von der Nockenmitte</translation>
        </message>
        <message>
            <source>designed_setting.gap_mm is {gap:g}; it must be below the contact lift at the top of the lobe, {top_lift:.4g} mm</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>designed_setting.gap_mm ist {gap:g}; es muss unter dem Kontakthub am höchsten Nockenpunkt liegen, {top_lift:.4g} mm</translation>
        </message>
        <message>
            <source>angle_deg goes from {before:g} to {after:g}; it must increase</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>angle_deg geht von {before:g} nach {after:g}; es muss steigen</translation>
        </message>
        <message>
            <source>lobe_peaks_deg goes from {before:g} to {after:g}; it must increase</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>lobe_peaks_deg geht von {before:g} nach {after:g}; es muss steigen</translation>
        </message>
        <message>
            <source>condition.heel_wear_mm needs breaker.heel_arm_mm, to know what wear does</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>condition.heel_wear_mm braucht breaker.heel_arm_mm, um zu wissen, was Verschleiß bewirkt</translation>
        </message>
        <message>
            <source>breaker.{field} is missing; only a measured profile can do without it</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>breaker.{field} fehlt; nur ein gemessenes Profil kommt ohne aus</translation>
        </message>
        <message>
            <source>breaker.heel_arm_mm is {arm:g}; with it the heel reaches from {near:g} to {far:g} mm of the cam's centre, and must reach {radius:g} mm</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>breaker.heel_arm_mm ist {arm:g}; damit reicht das Gleitstück von {near:g} bis {far:g} mm ab Nockenmitte, es muss aber {radius:g} mm erreichen</translation>
        </message>
        <message>
            <source>condition.{field} has {count} values; it must have one for each of the {lobes} lobes</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>condition.{field} hat {count} Werte; nötig ist einer für jeden der {lobes} Nocken</translation>
        </message>
        <message>
            <source>condition.lobe_lift_error_mm takes {error:g} mm off lobe {lobe}, which has only {top_lift:.4g} mm of contact lift</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>condition.lobe_lift_error_mm nimmt Nocken {lobe} {error:g} mm weg, der nur {top_lift:.4g} mm Kontakthub hat</translation>
        </message>
        <message>
            <source>condition.lobe_angle_error_deg: {overlap}</source>
            <extracomment>spec/magneto.py</extracomment>
            <translation>condition.lobe_angle_error_deg: {overlap}</translation>
        </message>
        <message>
            <source>sources[{i}].field is “{field}”; it must be the name of a field of this file, such as “{such}”</source>
            <extracomment>spec/sources.py</extracomment>
            <translation>sources[{i}].field ist „{field}“; es muss der Name eines Feldes dieser Datei sein, etwa „{such}“</translation>
        </message>
        <message>
            <source>sources[{i}].field is “{field}”, which has a source already; give it one</source>
            <extracomment>spec/sources.py</extracomment>
            <translation>sources[{i}].field ist „{field}“, das schon eine Quelle hat; nur eine angeben</translation>
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
            <translation>„{unit}“ ist keine Längeneinheit: {known} verwenden</translation>
        </message>
        <message>
            <source>“{text}” is not an angle: write a number and a unit, such as 1.5°</source>
            <extracomment>spec/units.py</extracomment>
            <translation>„{text}“ ist kein Winkel: Zahl und Einheit schreiben, etwa 1.5°</translation>
        </message>
        <message>
            <source>“{text}” has no unit: write one, such as 1.5°</source>
            <extracomment>spec/units.py</extracomment>
            <translation>„{text}“ hat keine Einheit: eine schreiben, etwa 1.5°</translation>
        </message>
        <message>
            <source>“{unit}” is not a unit of angle: use {known}</source>
            <extracomment>spec/units.py</extracomment>
            <translation>„{unit}“ ist keine Winkeleinheit: {known} verwenden</translation>
        </message>
        <message>
            <source>“{text}” has a minus and a side of top dead centre: write one or the other</source>
            <extracomment>spec/units.py</extracomment>
            <translation>„{text}“ hat ein Minus und eine Seite des oberen Totpunkts: das eine oder das andere schreiben</translation>
        </message>
        <message>
            <source>{length} in</source>
            <extracomment>spec/units.py</extracomment>
            <translation>{length} in</translation>
        </message>
        <message>
            <source>“{text}” is too large</source>
            <extracomment>spec/units.py</extracomment>
            <translation>„{text}“ ist zu groß</translation>
        </message>
        <message>
            <source>BTDC</source>
            <extracomment>spec/units.py</extracomment>
            <translation>v. OT</translation>
        </message>
        <message>
            <source>ATDC</source>
            <extracomment>spec/units.py</extracomment>
            <translation>n. OT</translation>
        </message>
        <message>
            <source>“{text}” is not a number: write one such as {example}</source>
            <extracomment>spec/units.py</extracomment>
            <translation>„{text}“ ist keine Zahl: eine schreiben, etwa {example}</translation>
        </message>
        <message>
            <source>The program had not been closed as it should; the bench is as you left it.</source>
            <extracomment>ui/app.py</extracomment>
            <translation>Das Programm wurde nicht ordnungsgemäß geschlossen; der Prüftisch ist, wie Sie ihn verlassen haben.</translation>
        </message>
        <message>
            <source>Your work is not kept for after a crash: {reason}</source>
            <extracomment>ui/app.py</extracomment>
            <translation>Ihre Arbeit wird nicht für den Fall eines Absturzes gesichert: {reason}</translation>
        </message>
        <message>
            <source>Drafts of a magneto of your own wait for you: File, A magneto of your own…</source>
            <extracomment>ui/app.py</extracomment>
            <translation>Entwürfe eines eigenen Magnetzünders warten auf Sie: Datei, Eigener Magnetzünder…</translation>
        </message>
        <message>
            <source>SVG (*.svg);;PDF (*.pdf);;PNG (*.png)</source>
            <extracomment>ui/asking.py</extracomment>
            <translation>SVG (*.svg);;PDF (*.pdf);;PNG (*.png)</translation>
        </message>
        <message>
            <source>Save the picture</source>
            <extracomment>ui/asking.py</extracomment>
            <translation>Bild speichern</translation>
        </message>
        <message>
            <source>In hand: {part}.</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>In der Hand: {part}.</translation>
        </message>
        <message>
            <source>Rotor and pole shoes are diagrammatic; cam, arm, contacts and marks are to scale.</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>Rotor und Polschuhe sind schematisch; Nocken, Hebel, Kontakte und Marken maßstäblich.</translation>
        </message>
        <message>
            <source>Breaker end of the magneto</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>Unterbrecherseite des Magnetzünders</translation>
        </message>
        <message>
            <source>Seen from the drive end, through the magneto, rotation {way}.</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>Von der Antriebsseite durch den Magnetzünder gesehen, Drehrichtung {way}.</translation>
        </message>
        <message>
            <source>Seen from the breaker end, rotation {way}.</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>Von der Unterbrecherseite gesehen, Drehrichtung {way}.</translation>
        </message>
        <message>
            <source>Rotor {rotor} past neutral, held; backplate {backplate}, contact screw {screw}; {contacts}.</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>Rotor {rotor} nach Neutralstellung, gehalten; Grundplatte {backplate}, Kontaktschraube {screw}; {contacts}.</translation>
        </message>
        <message>
            <source>Rotor {rotor} past neutral, let go; backplate {backplate}, contact screw {screw}; {contacts}.</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>Rotor {rotor} nach Neutralstellung, losgelassen; Grundplatte {backplate}, Kontaktschraube {screw}; {contacts}.</translation>
        </message>
        <message>
            <source>The gap is drawn {factor} times its size, the arm lifted with it off the cam.</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>Der Abstand ist {factor}-fach gezeichnet, der Hebel damit vom Nocken abgehoben.</translation>
        </message>
        <message>
            <source>Arm and heel in plain proportions: this magneto's file gives only the measured lift.</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>Hebel und Gleitstück in einfachen Proportionen: Die Datei dieses Magnetzünders nennt nur den gemessenen Hub.</translation>
        </message>
        <message>
            <source>Cam on the distributor shaft, {ratio} turn a rotor turn; drawn on the rotor's axis.</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>Nocken auf der Verteilerwelle, {ratio} Umdrehung je Rotorumdrehung; auf der Rotorachse gezeichnet.</translation>
        </message>
        <message>
            <source>contacts closed</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>Kontakte geschlossen</translation>
        </message>
        <message>
            <source>contacts open {gap}</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>Kontakte offen {gap}</translation>
        </message>
        <message>
            <source>Seen through from the drive end</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>Durchsicht von der Antriebsseite</translation>
        </message>
        <message>
            <source>gap drawn {factor}×</source>
            <extracomment>ui/breaker_view.py, ui/contact_view.py</extracomment>
            <translation>Abstand {factor}× gezeichnet</translation>
        </message>
        <message>
            <source>at: {place}</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>bei: {place}</translation>
        </message>
        <message>
            <source>rotor let go, but the engine holds it</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>Rotor losgelassen, aber der Motor hält ihn</translation>
        </message>
        <message>
            <source>rotor free</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>Rotor frei</translation>
        </message>
        <message>
            <source>what is there ({part}) stays: drag the rotor, the backplate or the contact screw</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>was dort ist ({part}), bleibt: Rotor, Grundplatte oder Kontaktschraube ziehen</translation>
        </message>
        <message>
            <source>Rotor held.</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>Rotor gehalten.</translation>
        </message>
        <message>
            <source>Rotor let go.</source>
            <extracomment>ui/breaker_view.py</extracomment>
            <translation>Rotor losgelassen.</translation>
        </message>
        <message>
            <source>Kept on this machine, and tried again every {seconds} seconds: {why}</source>
            <extracomment>ui/class_delivery.py</extracomment>
            <translation>Auf diesem Rechner aufbewahrt, alle {seconds} Sekunden erneut versucht: {why}</translation>
        </message>
        <message>
            <source>Handed in: {file} stands in {folder}.</source>
            <extracomment>ui/class_delivery.py</extracomment>
            <translation>Abgegeben: {file} liegt in {folder}.</translation>
        </message>
        <message>
            <source>Exercises of the class</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>Übungen der Klasse</translation>
        </message>
        <message>
            <source>&amp;Begin</source>
            <extracomment>ui/class_desk.py, ui/practice_choice.py</extracomment>
            <translation>&amp;Beginnen</translation>
        </message>
        <message>
            <source>Hand in a &amp;saved attempt…</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>&amp;Gespeicherten Versuch abgeben…</translation>
        </message>
        <message>
            <source>&amp;Try again now</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>Jetzt erneut &amp;versuchen</translation>
        </message>
        <message>
            <source>Deliver to &amp;another folder…</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>In &amp;anderen Ordner zustellen…</translation>
        </message>
        <message>
            <source>as the instructor gives it; capitals and hyphens do not matter</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>wie von der Lehrkraft angegeben; Großschreibung und Bindestriche sind gleichgültig</translation>
        </message>
        <message>
            <source>Name or number</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>Name oder Nummer</translation>
        </message>
        <message>
            <source>the folder the whole class hands in to</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>der Ordner, in den die ganze Klasse abgibt</translation>
        </message>
        <message>
            <source>&amp;Code</source>
            <extracomment>ui/class_desk.py, ui/class_paper_dialog.py, ui/practice_choice.py</extracomment>
            <translation>&amp;Code</translation>
        </message>
        <message>
            <source>&amp;Name or number</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>&amp;Name oder Nummer</translation>
        </message>
        <message>
            <source>&amp;Hand in to</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>Ab&amp;geben in</translation>
        </message>
        <message>
            <source>Open a class's file</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>Datei einer Klasse öffnen</translation>
        </message>
        <message>
            <source>Class sets (*.json);;All files (*)</source>
            <extracomment>ui/class_desk.py, ui/class_gather.py, ui/class_maker.py</extracomment>
            <translation>Klassensätze (*.json);;Alle Dateien (*)</translation>
        </message>
        <message>
            <source>{number}. {name} (about {minutes} minutes)</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>{number}. {name} (etwa {minutes} Minuten)</translation>
        </message>
        <message>
            <source>under way</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>im Gang</translation>
        </message>
        <message>
            <source>Hand in a saved attempt</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>Gespeicherten Versuch abgeben</translation>
        </message>
        <message>
            <source>{count} delivered.</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>{count} zugestellt.</translation>
        </message>
        <message>
            <source>Hand in to</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>Abgeben in</translation>
        </message>
        <message>
            <source>Deliver to another folder</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>In anderen Ordner zustellen</translation>
        </message>
        <message>
            <source>How it stands</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>Wie es steht</translation>
        </message>
        <message>
            <source>&amp;Open file…</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>Datei ö&amp;ffnen…</translation>
        </message>
        <message>
            <source>Choose &amp;folder…</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>&amp;Ordner wählen…</translation>
        </message>
        <message>
            <source>Type the class's code, or open its file; then your name, and begin.</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>Code der Klasse eingeben oder ihre Datei öffnen; dann Ihren Namen, und beginnen.</translation>
        </message>
        <message>
            <source>Everyone has a fault of their own: it hangs on the name as you type it.</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>Alle haben einen eigenen Fehler: Er hängt am Namen, wie Sie ihn eingeben.</translation>
        </message>
        <message>
            <source>Everyone has the same fault.</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>Alle haben denselben Fehler.</translation>
        </message>
        <message>
            <source>Hints are not given.</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>Hinweise werden nicht gegeben.</translation>
        </message>
        <message>
            <source>not begun</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>nicht begonnen</translation>
        </message>
        <message>
            <source>Type your name or number first: the attempt is handed in under it</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>Erst Namen oder Nummer eingeben: Darunter wird der Versuch abgegeben</translation>
        </message>
        <message>
            <source>Choose the folder to hand in to first; your instructor knows it</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>Erst den Ordner für die Abgabe wählen; die Lehrkraft kennt ihn</translation>
        </message>
        <message>
            <source>{count} attempts wait on this machine to be delivered.</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>{count} Versuche warten auf diesem Rechner auf Zustellung.</translation>
        </message>
        <message>
            <source>Type the class's code first</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>Erst den Code der Klasse eingeben</translation>
        </message>
        <message>
            <source>{count} still wait: {why}</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>{count} warten noch: {why}</translation>
        </message>
        <message>
            <source>closed without handing in</source>
            <extracomment>ui/class_desk.py</extracomment>
            <translation>ohne Abgabe geschlossen</translation>
        </message>
        <message>
            <source>Exercises (*.json);;All files (*)</source>
            <extracomment>ui/class_editor.py, ui/class_maker.py</extracomment>
            <translation>Übungen (*.json);;Alle Dateien (*)</translation>
        </message>
        <message>
            <source>Exercise editor</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>Übungseditor</translation>
        </message>
        <message>
            <source>Whether the exercise is valid</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>Ob die Übung gültig ist</translation>
        </message>
        <message>
            <source>&amp;Preview of seed</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>&amp;Vorschau für Startzahl</translation>
        </message>
        <message>
            <source>Preview</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>Vorschau</translation>
        </message>
        <message>
            <source>Begin from a shipped exercise</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>Mit mitgelieferter Übung beginnen</translation>
        </message>
        <message>
            <source>Begin from a shipped one…</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>Mit mitgelieferter beginnen…</translation>
        </message>
        <message>
            <source>Save &amp;as…</source>
            <extracomment>ui/class_editor.py, ui/job_bars.py, ui/job_menus.py, ui/own_menus.py</extracomment>
            <translation>Speichern &amp;unter…</translation>
        </message>
        <message>
            <source>Into the class's &amp;set</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>In den &amp;Satz der Klasse</translation>
        </message>
        <message>
            <source>Tr&amp;y it</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>A&amp;usprobieren</translation>
        </message>
        <message>
            <source>Open an exercise</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>Übung öffnen</translation>
        </message>
        <message>
            <source>Magneto or installation</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>Magnetzünder oder Einbau</translation>
        </message>
        <message>
            <source>JSON (*.json);;All files (*)</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>JSON (*.json);;Alle Dateien (*)</translation>
        </message>
        <message>
            <source>Save the exercise</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>Übung speichern</translation>
        </message>
        <message>
            <source>Saved {file}.</source>
            <extracomment>ui/class_editor.py, ui/class_gather.py, ui/class_maker.py, ui/class_plots.py, ui/own_files_work.py, ui/report_dialog.py</extracomment>
            <translation>{file} gespeichert.</translation>
        </message>
        <message>
            <source>This exercise has not been saved.</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>Diese Übung ist nicht gespeichert.</translation>
        </message>
        <message>
            <source>&amp;Open…</source>
            <extracomment>ui/class_editor.py, ui/class_gather.py</extracomment>
            <translation>Ö&amp;ffnen…</translation>
        </message>
        <message>
            <source>this exercise</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>diese Übung</translation>
        </message>
        <message>
            <source>An exercise that is not valid yet is not saved</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>Eine noch nicht gültige Übung wird nicht gespeichert</translation>
        </message>
        <message>
            <source>&amp;Save…</source>
            <extracomment>ui/class_editor.py, ui/practice_window.py</extracomment>
            <translation>&amp;Speichern…</translation>
        </message>
        <message>
            <source>Go on &amp;without saving</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>&amp;Ohne Speichern fortfahren</translation>
        </message>
        <message>
            <source>&amp;Back to the editor</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>&amp;Zurück zum Editor</translation>
        </message>
        <message>
            <source>Not valid yet: {why}.</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>Noch nicht gültig: {why}.</translation>
        </message>
        <message>
            <source>Valid. {advice}</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>Gültig. {advice}</translation>
        </message>
        <message>
            <source>Valid.</source>
            <extracomment>ui/class_editor.py</extracomment>
            <translation>Gültig.</translation>
        </message>
        <message>
            <source>&amp;Add a fault</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>&amp;Fehler hinzufügen</translation>
        </message>
        <message>
            <source>A&amp;dd a goal</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>&amp;Ziel hinzufügen</translation>
        </message>
        <message>
            <source>&amp;Name</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>&amp;Name</translation>
        </message>
        <message>
            <source>&amp;Level, 1 to 5</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>&amp;Stufe, 1 bis 5</translation>
        </message>
        <message>
            <source>M&amp;inutes, a guide</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>M&amp;inuten, Richtwert</translation>
        </message>
        <message>
            <source>Marks &amp;needed</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>Nötige &amp;Punkte</translation>
        </message>
        <message>
            <source>&amp;Story: what is told of the case</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>&amp;Geschichte: was zum Fall erzählt wird</translation>
        </message>
        <message>
            <source>Tas&amp;k: what is to be done</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>&amp;Aufgabe: was zu tun ist</translation>
        </message>
        <message>
            <source>&amp;Hints, one a line</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>&amp;Hinweise, einer je Zeile</translation>
        </message>
        <message>
            <source>Magneto, alone or on its engine</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>Magnetzünder, einzeln oder am Motor</translation>
        </message>
        <message>
            <source>From a fil&amp;e…</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>Aus Dat&amp;ei…</translation>
        </message>
        <message>
            <source>Magnet&amp;o</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>Ma&amp;gnetzünder</translation>
        </message>
        <message>
            <source>&amp;Both magnetos of the engine</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>&amp;Beide Magnetzünder des Motors</translation>
        </message>
        <message>
            <source>&amp;Rotor, off the engine</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>&amp;Rotor, ohne Motor</translation>
        </message>
        <message>
            <source>As it is found</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>Wie vorgefunden</translation>
        </message>
        <message>
            <source>screws slack</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>Schrauben lose</translation>
        </message>
        <message>
            <source>switch lead proved</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>Kurzschlussleitung nachgewiesen</translation>
        </message>
        <message>
            <source>disc at zero</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>Scheibe auf null</translation>
        </message>
        <message>
            <source>On the tray</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>Auf der Ablage</translation>
        </message>
        <message>
            <source>Crank disc, read to</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>Kurbelscheibe, Ablesung auf</translation>
        </message>
        <message>
            <source>{magneto}, on {engine} ({position})</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>{magneto}, an {engine} ({position})</translation>
        </message>
        <message>
            <source>&amp;Text</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>&amp;Text</translation>
        </message>
        <message>
            <source>&amp;Magneto and tray</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>&amp;Magnetzünder und Ablage</translation>
        </message>
        <message>
            <source>&amp;Faults</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>&amp;Fehler</translation>
        </message>
        <message>
            <source>&amp;Goals</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>&amp;Ziele</translation>
        </message>
        <message>
            <source>blades in inches</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>Lehren in Zoll</translation>
        </message>
        <message>
            <source>metric blades</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>metrische Lehren</translation>
        </message>
        <message>
            <source>piston stop</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>Kolbenanschlag</translation>
        </message>
        <message>
            <source>meter for the switch lead</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>Messgerät für die Kurzschlussleitung</translation>
        </message>
        <message>
            <source>at neutral</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>in der Neutralstellung</translation>
        </message>
        <message>
            <source>anywhere</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>irgendwo</translation>
        </message>
        <message>
            <source>at the E-gap</source>
            <extracomment>ui/class_editor_fields.py</extracomment>
            <translation>im E-Gap</translation>
        </message>
        <message>
            <source>rotor °</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>Rotor-°</translation>
        </message>
        <message>
            <source>°</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>°</translation>
        </message>
        <message>
            <source>teeth</source>
            <extracomment>ui/class_editor_rows.py, ui/job_kinds.py</extracomment>
            <translation>Zähne</translation>
        </message>
        <message>
            <source>steps</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>Schritte</translation>
        </message>
        <message>
            <source>crank °</source>
            <extracomment>ui/class_editor_rows.py, ui/job_kinds.py</extracomment>
            <translation>Kurbel-°</translation>
        </message>
        <message>
            <source>late</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>spät</translation>
        </message>
        <message>
            <source>early</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>früh</translation>
        </message>
        <message>
            <source>too wide</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>zu weit</translation>
        </message>
        <message>
            <source>too narrow</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>zu eng</translation>
        </message>
        <message>
            <source>with cam rotation</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>mit der Nockendrehung</translation>
        </message>
        <message>
            <source>against cam rotation</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>gegen die Nockendrehung</translation>
        </message>
        <message>
            <source>closer</source>
            <extracomment>ui/class_editor_rows.py, ui/practice_work.py</extracomment>
            <translation>näher</translation>
        </message>
        <message>
            <source>wider</source>
            <extracomment>ui/class_editor_rows.py, ui/practice_work.py</extracomment>
            <translation>weiter</translation>
        </message>
        <message>
            <source>plus</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>plus</translation>
        </message>
        <message>
            <source>minus</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>minus</translation>
        </message>
        <message>
            <source>Remove this row</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>Diese Zeile entfernen</translation>
        </message>
        <message>
            <source>each magneto</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>jeder Magnetzünder</translation>
        </message>
        <message>
            <source>On which magneto</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>An welchem Magnetzünder</translation>
        </message>
        <message>
            <source>Size from</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>Größe von</translation>
        </message>
        <message>
            <source>Size to</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>Größe bis</translation>
        </message>
        <message>
            <source>Which way</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>In welche Richtung</translation>
        </message>
        <message>
            <source>any lobe</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>beliebiger Nocken</translation>
        </message>
        <message>
            <source>lobe </source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>Nocken </translation>
        </message>
        <message>
            <source>Which lobe</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>Welcher Nocken</translation>
        </message>
        <message>
            <source>How likely it is there [%]</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>Wie wahrscheinlich er auftritt [%]</translation>
        </message>
        <message>
            <source>What counts</source>
            <extracomment>ui/class_editor_rows.py, ui/practice_task.py</extracomment>
            <translation>Was zählt</translation>
        </message>
        <message>
            <source>Weight among the marks</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>Gewicht in der Wertung</translation>
        </message>
        <message>
            <source>on every lobe</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>an jedem Nocken</translation>
        </message>
        <message>
            <source>How near to the truth it must be</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>Wie nah am wahren Wert es sein muss</translation>
        </message>
        <message>
            <source>% likely</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>% wahrscheinlich</translation>
        </message>
        <message>
            <source>Size to, at most {most} {unit}</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>Größe bis, höchstens {most} {unit}</translation>
        </message>
        <message>
            <source>weight</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>Gewicht</translation>
        </message>
        <message>
            <source>{unit} allowed</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>{unit} erlaubt</translation>
        </message>
        <message>
            <source>either</source>
            <extracomment>ui/class_editor_rows.py</extracomment>
            <translation>beides</translation>
        </message>
        <message>
            <source>Marks, dangers, and faults found and missed are worked out here from the acts in each file. Names and times are believed as the pupils' machines wrote them.</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>Noten, Gefahren und gefundene oder übersehene Fehler werden hier aus den Handlungen jeder Datei ermittelt. Namen und Zeiten werden so geglaubt, wie die Rechner der Schüler sie schrieben.</translation>
        </message>
        <message>
            <source>Class gathered</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>Klasse eingesammelt</translation>
        </message>
        <message>
            <source>the folder the class hands in to</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>der Ordner, in den die Klasse abgibt</translation>
        </message>
        <message>
            <source>Progress</source>
            <extracomment>ui/class_gather.py, ui/job_bars.py</extracomment>
            <translation>Fortschritt</translation>
        </message>
        <message>
            <source>&amp;Folder</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>&amp;Ordner</translation>
        </message>
        <message>
            <source>Se&amp;t</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>Sa&amp;tz</translation>
        </message>
        <message>
            <source>Steps</source>
            <extracomment>ui/class_gather.py, ui/lesson_view.py</extracomment>
            <translation>Schritte</translation>
        </message>
        <message>
            <source>P&amp;lots</source>
            <extracomment>ui/class_gather.py, ui/menus.py</extracomment>
            <translation>D&amp;iagramme</translation>
        </message>
        <message>
            <source>&amp;Replay</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>&amp;Wiedergabe</translation>
        </message>
        <message>
            <source>The debrief of the attempt that is chosen, with its replay</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>Die Nachbesprechung des gewählten Versuchs, mit Wiedergabe</translation>
        </message>
        <message>
            <source>Save as CS&amp;V…</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>Als CS&amp;V speichern…</translation>
        </message>
        <message>
            <source>Cancelled. What was marked so far is kept for the next time.</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>Abgebrochen. Das bisher Bewertete bleibt für das nächste Mal.</translation>
        </message>
        <message>
            <source>{pupil}, {exercise}: {percent} % in {minutes} minutes. Replay shows how.</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>{pupil}, {exercise}: {percent} % in {minutes} Minuten. Die Wiedergabe zeigt, wie.</translation>
        </message>
        <message>
            <source>The class's folder</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>Ordner der Klasse</translation>
        </message>
        <message>
            <source>Open a set</source>
            <extracomment>ui/class_gather.py, ui/class_maker.py</extracomment>
            <translation>Satz öffnen</translation>
        </message>
        <message>
            <source>Save the attempts</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>Versuche speichern</translation>
        </message>
        <message>
            <source>Tables (*.csv)</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>Tabellen (*.csv)</translation>
        </message>
        <message>
            <source>the set made in this session</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>der in dieser Sitzung erstellte Satz</translation>
        </message>
        <message>
            <source>a code, or a set's file; may be left out</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>ein Code oder eine Satzdatei; kann entfallen</translation>
        </message>
        <message>
            <source>&amp;Gather</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>&amp;Einsammeln</translation>
        </message>
        <message>
            <source>C&amp;ancel</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>A&amp;bbrechen</translation>
        </message>
        <message>
            <source>&amp;Pupils</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>&amp;Schüler</translation>
        </message>
        <message>
            <source>Atte&amp;mpts</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>&amp;Versuche</translation>
        </message>
        <message>
            <source>&amp;Steps</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>S&amp;chritte</translation>
        </message>
        <message>
            <source>&amp;What goes wrong</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>&amp;Was schiefgeht</translation>
        </message>
        <message>
            <source>Choose the folder the class hands in to first</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>Erst den Ordner wählen, in den die Klasse abgibt</translation>
        </message>
        <message>
            <source>{count} were passed over; the table of attempts says why.</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>{count} wurden übergangen; die Tabelle der Versuche sagt, warum.</translation>
        </message>
        <message>
            <source>Nothing from: {names}.</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>Nichts von: {names}.</translation>
        </message>
        <message>
            <source>Choose an attempt first</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>Erst einen Versuch wählen</translation>
        </message>
        <message>
            <source>&amp;Choose…</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>&amp;Wählen…</translation>
        </message>
        <message>
            <source>there is nothing to replay</source>
            <extracomment>ui/class_gather.py</extracomment>
            <translation>es gibt nichts wiederzugeben</translation>
        </message>
        <message>
            <source>Text (*.txt);;Table (*.csv)</source>
            <extracomment>ui/class_maker.py, ui/practice_window.py</extracomment>
            <translation>Text (*.txt);;Tabelle (*.csv)</translation>
        </message>
        <message>
            <source>Class set</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>Klassensatz</translation>
        </message>
        <message>
            <source>&amp;Set</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>&amp;Satz</translation>
        </message>
        <message>
            <source>Answer &amp;key</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>&amp;Lösungsblatt</translation>
        </message>
        <message>
            <source>Class code</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>Klassencode</translation>
        </message>
        <message>
            <source>Co&amp;py</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>&amp;Kopieren</translation>
        </message>
        <message>
            <source>&amp;Gather…</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>&amp;Einsammeln…</translation>
        </message>
        <message>
            <source>Exercise from a file</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>Übung aus einer Datei</translation>
        </message>
        <message>
            <source>this set</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>dieser Satz</translation>
        </message>
        <message>
            <source>Title and pupils are not in the code; they travel in the set's file.</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>Titel und Schüler stehen nicht im Code; sie reisen in der Satzdatei.</translation>
        </message>
        <message>
            <source>The key is being made…</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>Das Lösungsblatt wird erstellt…</translation>
        </message>
        <message>
            <source>The code is on the clipboard.</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>Der Code ist in der Zwischenablage.</translation>
        </message>
        <message>
            <source>Save the set</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>Satz speichern</translation>
        </message>
        <message>
            <source>Class sets (*.json)</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>Klassensätze (*.json)</translation>
        </message>
        <message>
            <source>Save the answer key</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>Lösungsblatt speichern</translation>
        </message>
        <message>
            <source>Save set &amp;as…</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>Satz speichern &amp;unter…</translation>
        </message>
        <message>
            <source>&amp;Open set…</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>Satz ö&amp;ffnen…</translation>
        </message>
        <message>
            <source>For the instructor: it tells every hidden fault.</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>Für die Lehrkraft: Es nennt jeden verborgenen Fehler.</translation>
        </message>
        <message>
            <source>Save &amp;key…</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>&amp;Lösungsblatt speichern…</translation>
        </message>
        <message>
            <source>There is no set yet.</source>
            <extracomment>ui/class_maker.py</extracomment>
            <translation>Es gibt noch keinen Satz.</translation>
        </message>
        <message>
            <source>Exercises there are</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>Vorhandene Übungen</translation>
        </message>
        <message>
            <source>Exercises of the set, in order</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>Übungen des Satzes, der Reihe nach</translation>
        </message>
        <message>
            <source>A&amp;dd ▶</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>&amp;Hinzu ▶</translation>
        </message>
        <message>
            <source>From a &amp;file…</source>
            <extracomment>ui/class_maker_fields.py, ui/class_paper_dialog.py, ui/practice_choice.py</extracomment>
            <translation>Aus &amp;Datei…</translation>
        </message>
        <message>
            <source>&amp;Write one…</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>Eine &amp;schreiben…</translation>
        </message>
        <message>
            <source>&amp;Remove</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>&amp;Entfernen</translation>
        </message>
        <message>
            <source>Settings</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>Einstellungen</translation>
        </message>
        <message>
            <source>&amp;Hints may be asked for</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>&amp;Hinweise dürfen erbeten werden</translation>
        </message>
        <message>
            <source>A straightedge of this unit, and blades of it beside the exercise's own</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>Ein Lineal dieser Einheit, und Lehren darin neben den eigenen der Übung</translation>
        </message>
        <message>
            <source>as the exercise says</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>wie die Übung sagt</translation>
        </message>
        <message>
            <source>Shown to the pupils as a guide; time is not marked</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>Den Schülern als Anhalt gezeigt; die Zeit wird nicht bewertet</translation>
        </message>
        <message>
            <source>The same number draws the same faults</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>Dieselbe Zahl zieht dieselben Fehler</translation>
        </message>
        <message>
            <source>one name or number a line</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>ein Name oder eine Nummer je Zeile</translation>
        </message>
        <message>
            <source>&amp;Title</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>&amp;Titel</translation>
        </message>
        <message>
            <source>Fau&amp;lts</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>Fe&amp;hler</translation>
        </message>
        <message>
            <source>&amp;Blades, edge</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>&amp;Lehren, Lineal</translation>
        </message>
        <message>
            <source>&amp;Minutes</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>&amp;Minuten</translation>
        </message>
        <message>
            <source>&amp;Number</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>&amp;Zahl</translation>
        </message>
        <message>
            <source>Level {level} · {name}</source>
            <extracomment>ui/class_maker_fields.py, ui/class_paper_dialog.py, ui/practice_choice.py</extracomment>
            <translation>Stufe {level} · {name}</translation>
        </message>
        <message>
            <source>&amp;Up</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>A&amp;uf</translation>
        </message>
        <message>
            <source>Do&amp;wn</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>A&amp;b</translation>
        </message>
        <message>
            <source>&amp;Exercises</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>&amp;Übungen</translation>
        </message>
        <message>
            <source>&amp;In this set, in order</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>&amp;In diesem Satz, der Reihe nach</translation>
        </message>
        <message>
            <source>the same for everyone</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>für alle gleich</translation>
        </message>
        <message>
            <source>one of their own for each pupil</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>für jeden Schüler eigene</translation>
        </message>
        <message>
            <source>as the exercise has them</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>wie in der Übung</translation>
        </message>
        <message>
            <source>metric, too</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>auch metrisch</translation>
        </message>
        <message>
            <source>in inches, too</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>auch in Zoll</translation>
        </message>
        <message>
            <source>Pu&amp;pils (not in the code; for the key, and to see who is missing)</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>S&amp;chüler (nicht im Code; fürs Lösungsblatt und um Fehlende zu sehen)</translation>
        </message>
        <message>
            <source>Draw ane&amp;w</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>&amp;Neu ziehen</translation>
        </message>
        <message>
            <source>Add an exercise: a set has one at least</source>
            <extracomment>ui/class_maker_fields.py</extracomment>
            <translation>Eine Übung hinzufügen: Ein Satz hat mindestens eine</translation>
        </message>
        <message>
            <source>Worksheet of an exercise</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>Arbeitsblatt einer Übung</translation>
        </message>
        <message>
            <source>Answer key of an exercise</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>Lösungsblatt einer Übung</translation>
        </message>
        <message>
            <source>Name the parts: sheet</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>Teile benennen: Blatt</translation>
        </message>
        <message>
            <source>Pictures of the bench as it stands</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>Bilder des Prüftischs, wie er steht</translation>
        </message>
        <message>
            <source>Names</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>Namen</translation>
        </message>
        <message>
            <source>Numbers, with lines to write on</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>Nummern, mit Zeilen zum Schreiben</translation>
        </message>
        <message>
            <source>Numbers, filled in</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>Nummern, ausgefüllt</translation>
        </message>
        <message>
            <source>Nothing</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>Nichts</translation>
        </message>
        <message>
            <source>A4</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>A4</translation>
        </message>
        <message>
            <source>Letter</source>
            <extracomment>ui/class_paper_dialog.py, ui/job_preview.py</extracomment>
            <translation>Letter</translation>
        </message>
        <message>
            <source>Saved {file}: 1 page.</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>{file} gespeichert: 1 Seite.</translation>
        </message>
        <message>
            <source>JSON files (*.json);;All files (*)</source>
            <extracomment>ui/class_paper_dialog.py, ui/practice_choice.py</extracomment>
            <translation>JSON-Dateien (*.json);;Alle Dateien (*)</translation>
        </message>
        <message>
            <source>Paper for a class</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>Papier für eine Klasse</translation>
        </message>
        <message>
            <source>With the exercise's &amp;hints</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>Mit den &amp;Hinweisen der Übung</translation>
        </message>
        <message>
            <source>With pictures whose &amp;parts are to be named</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>Mit Bildern, deren &amp;Teile zu benennen sind</translation>
        </message>
        <message>
            <source>With what there is to sa&amp;y of each part</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>Mit dem, was zu &amp;jedem Teil zu sagen ist</translation>
        </message>
        <message>
            <source>&amp;What</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>&amp;Was</translation>
        </message>
        <message>
            <source>&amp;Exercise</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>&amp;Übung</translation>
        </message>
        <message>
            <source>Beside the &amp;parts</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>Neben den &amp;Teilen</translation>
        </message>
        <message>
            <source>Paper si&amp;ze</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>Papier&amp;größe</translation>
        </message>
        <message>
            <source>&amp;Save as PDF…</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>Als PDF &amp;speichern…</translation>
        </message>
        <message>
            <source>Close</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>Schließen</translation>
        </message>
        <message>
            <source>PDF (*.pdf)</source>
            <extracomment>ui/class_paper_dialog.py, ui/doors.py, ui/job_reports.py</extracomment>
            <translation>PDF (*.pdf)</translation>
        </message>
        <message>
            <source>A code is a whole number, such as 4711.</source>
            <extracomment>ui/class_paper_dialog.py, ui/practice_choice.py</extracomment>
            <translation>Ein Code ist eine ganze Zahl, etwa 4711.</translation>
        </message>
        <message>
            <source>Saved {file}: {pages} pages.</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>{file} gespeichert: {pages} Seiten.</translation>
        </message>
        <message>
            <source>Pictures</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>Bilder</translation>
        </message>
        <message>
            <source>Choose at least one picture.</source>
            <extracomment>ui/class_paper_dialog.py</extracomment>
            <translation>Mindestens ein Bild wählen.</translation>
        </message>
        <message>
            <source>Plots of the class</source>
            <extracomment>ui/class_plots.py</extracomment>
            <translation>Diagramme der Klasse</translation>
        </message>
        <message>
            <source>Save plots…</source>
            <extracomment>ui/class_plots.py</extracomment>
            <translation>Diagramme speichern…</translation>
        </message>
        <message>
            <source>{count} attempts of {pupils} pupils count; {passed} passed. ● passed, × not passed.</source>
            <extracomment>ui/class_plots.py</extracomment>
            <translation>{count} Versuche von {pupils} Schülern zählen; {passed} bestanden. ● bestanden, × nicht bestanden.</translation>
        </message>
        <message>
            <source>marks [%]</source>
            <extracomment>ui/class_plots.py</extracomment>
            <translation>Punkte [%]</translation>
        </message>
        <message>
            <source>attempts</source>
            <extracomment>ui/class_plots.py</extracomment>
            <translation>Versuche</translation>
        </message>
        <message>
            <source>minutes, by the pupils' clocks</source>
            <extracomment>ui/class_plots.py</extracomment>
            <translation>Minuten, nach den Uhren der Schüler</translation>
        </message>
        <message>
            <source>Marks against time</source>
            <extracomment>ui/class_plots.py</extracomment>
            <translation>Punkte über Zeit</translation>
        </message>
        <message>
            <source>mean marks [%]</source>
            <extracomment>ui/class_plots.py</extracomment>
            <translation>mittlere Punkte [%]</translation>
        </message>
        <message>
            <source>Steps, the weakest above</source>
            <extracomment>ui/class_plots.py</extracomment>
            <translation>Schritte, die schwächsten oben</translation>
        </message>
        <message>
            <source>missed (hatched), then found</source>
            <extracomment>ui/class_plots.py</extracomment>
            <translation>verfehlt (schraffiert), dann gefunden</translation>
        </message>
        <message>
            <source>Faults</source>
            <extracomment>ui/class_plots.py</extracomment>
            <translation>Fehler</translation>
        </message>
        <message>
            <source>Save the plots</source>
            <extracomment>ui/class_plots.py, ui/plot_sheet.py</extracomment>
            <translation>Diagramme speichern</translation>
        </message>
        <message>
            <source>Contacts, magnified</source>
            <extracomment>ui/contact_view.py</extracomment>
            <translation>Kontakte, vergrößert</translation>
        </message>
        <message>
            <source>Contacts closed.</source>
            <extracomment>ui/contact_view.py</extracomment>
            <translation>Kontakte geschlossen.</translation>
        </message>
        <message>
            <source>Contacts open {gap}.</source>
            <extracomment>ui/contact_view.py</extracomment>
            <translation>Kontakte offen {gap}.</translation>
        </message>
        <message>
            <source>Contacts open {gap}</source>
            <extracomment>ui/contact_view.py</extracomment>
            <translation>Kontakte offen {gap}</translation>
        </message>
        <message>
            <source>breaker end, magnified</source>
            <extracomment>ui/contact_view.py</extracomment>
            <translation>Unterbrecherseite, vergrößert</translation>
        </message>
        <message>
            <source>No measure in practice: try blades.</source>
            <extracomment>ui/contact_view.py</extracomment>
            <translation>Kein Maß in der Übung: Lehren probieren.</translation>
        </message>
        <message>
            <source>Contacts</source>
            <extracomment>ui/contact_view.py, ui/practice_work.py</extracomment>
            <translation>Kontakte</translation>
        </message>
        <message>
            <source>on its intake stroke</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>im Ansaugtakt</translation>
        </message>
        <message>
            <source>on its compression stroke</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>im Verdichtungstakt</translation>
        </message>
        <message>
            <source>on its power stroke</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>im Arbeitstakt</translation>
        </message>
        <message>
            <source>on its exhaust stroke</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>im Ausstoßtakt</translation>
        </message>
        <message>
            <source>intake stroke</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>Ansaugtakt</translation>
        </message>
        <message>
            <source>compression stroke</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>Verdichtungstakt</translation>
        </message>
        <message>
            <source>power stroke</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>Arbeitstakt</translation>
        </message>
        <message>
            <source>exhaust stroke</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>Ausstoßtakt</translation>
        </message>
        <message>
            <source>No. 1 {stroke}, {where}, piston {drop} down.</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>Nr. 1 {stroke}, {where}, Kolben {drop} unten.</translation>
        </message>
        <message>
            <source>No. 1: {stroke}, {where}, piston {drop} down</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>Nr. 1: {stroke}, {where}, Kolben {drop} unten</translation>
        </message>
        <message>
            <source>Seen from the propeller end. No. 1 cut open; its stroke is felt at the plug hole.</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>Von der Propellerseite gesehen. Nr. 1 aufgeschnitten; sein Takt ist am Kerzenloch zu fühlen.</translation>
        </message>
        <message>
            <source>{degrees}° before top dead centre</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>{degrees}° vor dem oberen Totpunkt</translation>
        </message>
        <message>
            <source>{degrees}° after top dead centre</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>{degrees}° nach dem oberen Totpunkt</translation>
        </message>
        <message>
            <source>{degrees}° BTDC</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>{degrees}° vor OT</translation>
        </message>
        <message>
            <source>{degrees}° ATDC</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>{degrees}° nach OT</translation>
        </message>
        <message>
            <source>No. 1: {stroke}, {where}</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>Nr. 1: {stroke}, {where}</translation>
        </message>
        <message>
            <source>No engine</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>Kein Motor</translation>
        </message>
        <message>
            <source>Approached against rotation, play of {play}° of rotor not taken up</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>Gegen die Drehrichtung angefahren, Spiel von {play}° Rotor nicht aufgenommen</translation>
        </message>
        <message>
            <source>Against rotation: play of {play}° not taken up</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>Gegen die Drehrichtung: Spiel von {play}° offen</translation>
        </message>
        <message>
            <source>No engine.</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>Kein Motor.</translation>
        </message>
        <message>
            <source>Propeller end</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>Propellerseite</translation>
        </message>
        <message>
            <source>No. 1 cut open. Its stroke is felt at the plug hole.</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>Nr. 1 aufgeschnitten. Sein Takt ist am Kerzenloch zu fühlen.</translation>
        </message>
        <message>
            <source>rod drawn on the crank pin</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>Pleuel am Kurbelzapfen gezeichnet</translation>
        </message>
        <message>
            <source>wanted</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>Soll</translation>
        </message>
        <message>
            <source>opens</source>
            <extracomment>ui/crank_view.py</extracomment>
            <translation>öffnet</translation>
        </message>
        <message>
            <source>Mar&amp;ks</source>
            <extracomment>ui/debrief_view.py</extracomment>
            <translation>&amp;Punkte</translation>
        </message>
        <message>
            <source>Tr&amp;uth</source>
            <extracomment>ui/debrief_view.py</extracomment>
            <translation>&amp;Wahre Werte</translation>
        </message>
        <message>
            <source>&amp;Readings</source>
            <extracomment>ui/debrief_view.py, ui/own_pictures.py</extracomment>
            <translation>Ab&amp;lesungen</translation>
        </message>
        <message>
            <source>&amp;Time line</source>
            <extracomment>ui/debrief_view.py</extracomment>
            <translation>&amp;Zeitleiste</translation>
        </message>
        <message>
            <source>P&amp;ath</source>
            <extracomment>ui/debrief_view.py</extracomment>
            <translation>We&amp;g</translation>
        </message>
        <message>
            <source>&amp;Play</source>
            <extracomment>ui/debrief_view.py</extracomment>
            <translation>&amp;Abspielen</translation>
        </message>
        <message>
            <source>Moment of the attempt</source>
            <extracomment>ui/debrief_view.py</extracomment>
            <translation>Moment des Versuchs</translation>
        </message>
        <message>
            <source>Choose a line to see that moment</source>
            <extracomment>ui/debrief_view.py</extracomment>
            <translation>Eine Zeile wählen, um diesen Moment zu sehen</translation>
        </message>
        <message>
            <source>&amp;Pause</source>
            <extracomment>ui/debrief_view.py</extracomment>
            <translation>&amp;Pause</translation>
        </message>
        <message>
            <source>lamp {lamp}</source>
            <extracomment>ui/debrief_view.py</extracomment>
            <translation>Lampe {lamp}</translation>
        </message>
        <message>
            <source>disc {disc}</source>
            <extracomment>ui/debrief_view.py</extracomment>
            <translation>Scheibe {disc}</translation>
        </message>
        <message>
            <source>{danger} ({times} times)</source>
            <extracomment>ui/debrief_view.py</extracomment>
            <translation>{danger} ({times}-mal)</translation>
        </message>
        <message>
            <source>Magneto and installation files (*.json);;All files (*)</source>
            <extracomment>ui/doors.py</extracomment>
            <translation>Magnet- und Einbaudateien (*.json);;Alle Dateien (*)</translation>
        </message>
        <message>
            <source>Tables (*.csv *.tsv *.txt);;All files (*)</source>
            <extracomment>ui/doors.py</extracomment>
            <translation>Tabellen (*.csv *.tsv *.txt);;Alle Dateien (*)</translation>
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
            <translation>Plan zum Zähneversetzen als PDF drucken</translation>
        </message>
        <message>
            <source>magview {version}: a training and planning aid; the maker's current manual governs.</source>
            <extracomment>ui/doors.py</extracomment>
            <translation>magview {version}: eine Hilfe zum Üben und Planen; es gilt das aktuelle Handbuch des Herstellers.</translation>
        </message>
        <message>
            <source>Keys and cautions</source>
            <extracomment>ui/doors.py, ui/job_reports.py, ui/practice_menus.py</extracomment>
            <translation>Tasten und Warnhinweise</translation>
        </message>
        <message>
            <source>Open a magneto or an installation</source>
            <extracomment>ui/doors.py</extracomment>
            <translation>Magnet oder Einbau öffnen</translation>
        </message>
        <message>
            <source>Open a table of the lift</source>
            <extracomment>ui/doors.py, ui/own_files_work.py</extracomment>
            <translation>Tabelle des Hubs öffnen</translation>
        </message>
        <message>
            <source>Save the magneto</source>
            <extracomment>ui/doors.py, ui/lift_dialog.py</extracomment>
            <translation>Magnetzünder speichern</translation>
        </message>
        <message>
            <source>Saved {name}.</source>
            <extracomment>ui/doors.py, ui/lift_dialog.py, ui/plot_sheet.py, ui/practice_window.py</extracomment>
            <translation>{name} gespeichert.</translation>
        </message>
        <message>
            <source>✓ Printed 1 page to {file}.</source>
            <extracomment>ui/doors.py, ui/job_reports.py</extracomment>
            <translation>✓ 1 Seite nach {file} gedruckt.</translation>
        </message>
        <message>
            <source>✓ Printed {count} pages to {file}.</source>
            <extracomment>ui/doors.py, ui/job_reports.py</extracomment>
            <translation>✓ {count} Seiten nach {file} gedruckt.</translation>
        </message>
        <message>
            <source>Both faces of the disc: drive flange outside, magneto flange inside.</source>
            <extracomment>ui/drive_view.py</extracomment>
            <translation>Beide Seiten der Scheibe: außen Antriebsflansch, innen Magnetzünderflansch.</translation>
        </message>
        <message>
            <source>Drive end of the magneto: the toothed coupling</source>
            <extracomment>ui/drive_view.py</extracomment>
            <translation>Antriebsseite des Magnetzünders: die Zahnkupplung</translation>
        </message>
        <message>
            <source>No marks on it.</source>
            <extracomment>ui/drive_view.py</extracomment>
            <translation>Keine Marken darauf.</translation>
        </message>
        <message>
            <source>Drive end</source>
            <extracomment>ui/drive_view.py</extracomment>
            <translation>Antriebsseite</translation>
        </message>
        <message>
            <source>This magneto is not on an engine.</source>
            <extracomment>ui/drive_view.py</extracomment>
            <translation>Dieser Magnetzünder sitzt an keinem Motor.</translation>
        </message>
        <message>
            <source>Left magneto, drive end</source>
            <extracomment>ui/drive_view.py</extracomment>
            <translation>Linker Magnetzünder, Antriebsseite</translation>
        </message>
        <message>
            <source>Right magneto, drive end</source>
            <extracomment>ui/drive_view.py</extracomment>
            <translation>Rechter Magnetzünder, Antriebsseite</translation>
        </message>
        <message>
            <source>This magneto is not on an engine. Open an installation to time it to one.</source>
            <extracomment>ui/drive_view.py, ui/timing_panel.py</extracomment>
            <translation>Dieser Magnetzünder sitzt an keinem Motor. Einen Einbau öffnen, um ihn auf einen einzustellen.</translation>
        </message>
        <message>
            <source>after</source>
            <extracomment>ui/drive_view.py</extracomment>
            <translation>nachher</translation>
        </message>
        <message>
            <source>{name}: a picture's name must end in {kinds}</source>
            <extracomment>ui/export.py</extracomment>
            <translation>{name}: Der Name eines Bildes muss auf {kinds} enden</translation>
        </message>
        <message>
            <source>there are no fonts to print with; on Debian or Ubuntu fonts-dejavu-core has some</source>
            <extracomment>ui/export.py</extracomment>
            <translation>es gibt keine Schriften zum Drucken; unter Debian oder Ubuntu enthält fonts-dejavu-core welche</translation>
        </message>
        <message>
            <source>{name}: cannot be written: {reason}</source>
            <extracomment>ui/export.py</extracomment>
            <translation>{name}: nicht schreibbar: {reason}</translation>
        </message>
        <message>
            <source>the picture could not be saved</source>
            <extracomment>ui/export.py</extracomment>
            <translation>das Bild ließ sich nicht speichern</translation>
        </message>
        <message>
            <source>Find in this page</source>
            <extracomment>ui/guide_find.py</extracomment>
            <translation>Auf dieser Seite suchen</translation>
        </message>
        <message>
            <source>Match &amp;case</source>
            <extracomment>ui/guide_find.py</extracomment>
            <translation>Groß-/&amp;Kleinschreibung</translation>
        </message>
        <message>
            <source>&amp;Previous</source>
            <extracomment>ui/guide_find.py</extracomment>
            <translation>&amp;Voriges</translation>
        </message>
        <message>
            <source>Ne&amp;xt</source>
            <extracomment>ui/guide_find.py</extracomment>
            <translation>&amp;Nächstes</translation>
        </message>
        <message>
            <source>C&amp;lose</source>
            <extracomment>ui/guide_find.py</extracomment>
            <translation>S&amp;chließen</translation>
        </message>
        <message>
            <source>From the other end</source>
            <extracomment>ui/guide_find.py</extracomment>
            <translation>Vom anderen Ende</translation>
        </message>
        <message>
            <source>Not on this page</source>
            <extracomment>ui/guide_find.py</extracomment>
            <translation>Nicht auf dieser Seite</translation>
        </message>
        <message>
            <source>Page of the guide</source>
            <extracomment>ui/guide_page.py</extracomment>
            <translation>Seite der Anleitung</translation>
        </message>
        <message>
            <source>Guide – magview</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Anleitung – magview</translation>
        </message>
        <message>
            <source>Search the guide</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Anleitung durchsuchen</translation>
        </message>
        <message>
            <source>Contents of the guide</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Inhalt der Anleitung</translation>
        </message>
        <message>
            <source>What was found</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Fundstellen</translation>
        </message>
        <message>
            <source>Guide</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Anleitung</translation>
        </message>
        <message>
            <source>◀ Back</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>◀ Zurück</translation>
        </message>
        <message>
            <source>Forward ▶</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Vor ▶</translation>
        </message>
        <message>
            <source>Contents</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Inhalt</translation>
        </message>
        <message>
            <source>Search</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Suchen</translation>
        </message>
        <message>
            <source>Find in page</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Auf Seite suchen</translation>
        </message>
        <message>
            <source>Smaller</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Kleiner</translation>
        </message>
        <message>
            <source>Larger</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Größer</translation>
        </message>
        <message>
            <source>Usual size</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Normale Größe</translation>
        </message>
        <message>
            <source>Find next</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Weitersuchen</translation>
        </message>
        <message>
            <source>Find previous</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Rückwärts suchen</translation>
        </message>
        <message>
            <source>End searching, or close</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Suche beenden oder schließen</translation>
        </message>
        <message>
            <source>Close the guide</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Anleitung schließen</translation>
        </message>
        <message>
            <source>{page} – guide – magview</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>{page} – Anleitung – magview</translation>
        </message>
        <message>
            <source>{percent} %</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>{percent} %</translation>
        </message>
        <message>
            <source>Nothing found.</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Nichts gefunden.</translation>
        </message>
        <message>
            <source>One section found.</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Ein Abschnitt gefunden.</translation>
        </message>
        <message>
            <source>{count} sections found.</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>{count} Abschnitte gefunden.</translation>
        </message>
        <message>
            <source>Nothing found. Try fewer words, or the beginning of one.</source>
            <extracomment>ui/guide_window.py</extracomment>
            <translation>Nichts gefunden. Weniger Wörter versuchen, oder den Anfang eines Wortes.</translation>
        </message>
        <message>
            <source>{text} is outside {low} to {high}: {taken} is taken</source>
            <extracomment>ui/inputs.py</extracomment>
            <translation>{text} liegt außerhalb {low} bis {high}: {taken} wird übernommen</translation>
        </message>
        <message>
            <source>{angle} before TDC</source>
            <extracomment>ui/inputs.py</extracomment>
            <translation>{angle} vor OT</translation>
        </message>
        <message>
            <source>{angle} after TDC</source>
            <extracomment>ui/inputs.py</extracomment>
            <translation>{angle} nach OT</translation>
        </message>
        <message>
            <source>{field}: {text} is refused, it must be {low} to {high}; {kept} is kept</source>
            <extracomment>ui/inputs.py</extracomment>
            <translation>{field}: {text} wird abgelehnt, es muss {low} bis {high} sein; {kept} bleibt</translation>
        </message>
        <message>
            <source>Aircraft, engine, magneto</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>Flugzeug, Motor, Magnetzünder</translation>
        </message>
        <message>
            <source>Next check, signature</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>Nächste Prüfung, Unterschrift</translation>
        </message>
        <message>
            <source>Earlier sheets</source>
            <extracomment>ui/job_bars.py, ui/job_history.py</extracomment>
            <translation>Frühere Blätter</translation>
        </message>
        <message>
            <source>As printed</source>
            <extracomment>ui/job_bars.py, ui/job_preview.py</extracomment>
            <translation>Wie gedruckt</translation>
        </message>
        <message>
            <source>→ skipped: {reason}</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>→ ausgelassen: {reason}</translation>
        </message>
        <message>
            <source>○ not begun</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>○ nicht begonnen</translation>
        </message>
        <message>
            <source>✗ begun; out of limits</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>✗ begonnen; außer Grenzen</translation>
        </message>
        <message>
            <source>◐ begun; {count} missing</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>◐ begonnen; {count} fehlen</translation>
        </message>
        <message>
            <source>◐ nothing missing; not marked done</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>◐ nichts fehlt; nicht als fertig markiert</translation>
        </message>
        <message>
            <source>✗ done, but {what}</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>✗ fertig, aber {what}</translation>
        </message>
        <message>
            <source>△ done; {what}</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>△ fertig; {what}</translation>
        </message>
        <message>
            <source>✓ done</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>✓ fertig</translation>
        </message>
        <message>
            <source>Stages done or skipped</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>Abschnitte fertig oder ausgelassen</translation>
        </message>
        <message>
            <source>Stages of the job</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>Abschnitte des Auftrags</translation>
        </message>
        <message>
            <source>○ not signed</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>○ nicht unterschrieben</translation>
        </message>
        <message>
            <source>{come} of {count} stages done or skipped</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>{come} von {count} Abschnitten fertig oder ausgelassen</translation>
        </message>
        <message>
            <source>✓ Nothing is missing.</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>✓ Nichts fehlt.</translation>
        </message>
        <message>
            <source>✓ Done.</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>✓ Fertig.</translation>
        </message>
        <message>
            <source>State of the file</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>Zustand der Datei</translation>
        </message>
        <message>
            <source>&amp;Reload</source>
            <extracomment>ui/job_bars.py, ui/job_window.py</extracomment>
            <translation>Neu &amp;laden</translation>
        </message>
        <message>
            <source>✗ Not saved: {sentence}.</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>✗ Nicht gespeichert: {sentence}.</translation>
        </message>
        <message>
            <source>✓ signed</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>✓ unterschrieben</translation>
        </message>
        <message>
            <source>✗ changed since signed</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>✗ seit Unterschrift geändert</translation>
        </message>
        <message>
            <source>missing in {count}</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>fehlt in {count}</translation>
        </message>
        <message>
            <source>Still missing</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>Fehlt noch</translation>
        </message>
        <message>
            <source>Mark as &amp;done</source>
            <extracomment>ui/job_bars.py, ui/job_menus.py</extracomment>
            <translation>Als &amp;fertig markieren</translation>
        </message>
        <message>
            <source>S&amp;kip…</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>&amp;Auslassen…</translation>
        </message>
        <message>
            <source>Open a&amp;gain</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>Wieder ö&amp;ffnen</translation>
        </message>
        <message>
            <source>Ne&amp;xt page</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>N&amp;ächste Seite</translation>
        </message>
        <message>
            <source>✗ {stage} is marked as done, with {what}.</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>✗ {stage} ist als fertig markiert, mit {what}.</translation>
        </message>
        <message>
            <source>✗ Nothing is missing, but {what}.</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>✗ Nichts fehlt, aber {what}.</translation>
        </message>
        <message>
            <source>✗ Done, but {what}.</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>✗ Fertig, aber {what}.</translation>
        </message>
        <message>
            <source>✓ Nothing is missing; {what}.</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>✓ Nichts fehlt; {what}.</translation>
        </message>
        <message>
            <source>△ Done; {what}.</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>△ Fertig; {what}.</translation>
        </message>
        <message>
            <source>&amp;Try again</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>Erneut &amp;versuchen</translation>
        </message>
        <message>
            <source>Read only: {sentence}.</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>Nur lesbar: {sentence}.</translation>
        </message>
        <message>
            <source>1 reading out</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>1 Wert außer Grenzen</translation>
        </message>
        <message>
            <source>{count} readings out</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>{count} Werte außer Grenzen</translation>
        </message>
        <message>
            <source>✓ Done: {stage}; {what}.</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>✓ Fertig: {stage}; {what}.</translation>
        </message>
        <message>
            <source>✓ Done: {stage}.</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>✓ Fertig: {stage}.</translation>
        </message>
        <message>
            <source>{file} was changed by another program while it was open here; reload it, or save elsewhere.</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>{file} wurde von einem anderen Programm geändert, während sie hier offen war; neu laden oder anderswo speichern.</translation>
        </message>
        <message>
            <source>Still missing: {what}.</source>
            <extracomment>ui/job_bars.py</extracomment>
            <translation>Fehlt noch: {what}.</translation>
        </message>
        <message>
            <source>at {hours} h: gap {value}, between {low} and {high} 95 times in 100</source>
            <extracomment>ui/job_drift_sheet.py</extracomment>
            <translation>bei {hours} h: Abstand {value}, 95-mal von 100 zwischen {low} und {high}</translation>
        </message>
        <message>
            <source>at {hours} h: opening {value}, between {low} and {high} 95 times in 100</source>
            <extracomment>ui/job_drift_sheet.py</extracomment>
            <translation>bei {hours} h: Öffnung {value}, 95-mal von 100 zwischen {low} und {high}</translation>
        </message>
        <message>
            <source>at {hours} h: fires {value} before top dead centre, between {low} and {high} 95 times in 100</source>
            <extracomment>ui/job_drift_sheet.py</extracomment>
            <translation>bei {hours} h: zündet {value} vor dem oberen Totpunkt, 95-mal von 100 zwischen {low} und {high}</translation>
        </message>
        <message>
            <source>Drift of gap and timing</source>
            <extracomment>ui/job_drift_sheet.py</extracomment>
            <translation>Drift von Abstand und Zündzeitpunkt</translation>
        </message>
        <message>
            <source>largest gap [mm]</source>
            <extracomment>ui/job_drift_sheet.py, ui/plot_lift.py, ui/plot_trials.py, ui/plot_wear.py</extracomment>
            <translation>größter Abstand [mm]</translation>
        </message>
        <message>
            <source>opens late [rotor deg]</source>
            <extracomment>ui/job_drift_sheet.py, ui/plot_coil.py, ui/plot_lift.py, ui/plot_wear.py</extracomment>
            <translation>öffnet spät [Grad Rotor]</translation>
        </message>
        <message>
            <source>fires BTDC [crank deg]</source>
            <extracomment>ui/job_drift_sheet.py</extracomment>
            <translation>zündet vor OT [Grad Kurbel]</translation>
        </message>
        <message>
            <source>largest gap [{unit}]</source>
            <extracomment>ui/job_drift_sheet.py, ui/plot_lift.py, ui/plot_trials.py, ui/plot_wear.py</extracomment>
            <translation>größter Abstand [{unit}]</translation>
        </message>
        <message>
            <source>largest gap found [mm]</source>
            <extracomment>ui/job_drift_sheet.py</extracomment>
            <translation>größter Abstand vorgefunden [mm]</translation>
        </message>
        <message>
            <source>largest gap left [mm]</source>
            <extracomment>ui/job_drift_sheet.py</extracomment>
            <translation>größter Abstand hinterlassen [mm]</translation>
        </message>
        <message>
            <source>opening found [rotor deg]</source>
            <extracomment>ui/job_drift_sheet.py</extracomment>
            <translation>Öffnung vorgefunden [Grad Rotor]</translation>
        </message>
        <message>
            <source>opening left [rotor deg]</source>
            <extracomment>ui/job_drift_sheet.py</extracomment>
            <translation>Öffnung hinterlassen [Grad Rotor]</translation>
        </message>
        <message>
            <source>fires found [crank deg BTDC]</source>
            <extracomment>ui/job_drift_sheet.py</extracomment>
            <translation>zündet, vorgefunden [Kurbelgrad vor OT]</translation>
        </message>
        <message>
            <source>fires left [crank deg BTDC]</source>
            <extracomment>ui/job_drift_sheet.py</extracomment>
            <translation>zündet, hinterlassen [Kurbelgrad vor OT]</translation>
        </message>
        <message>
            <source>found</source>
            <extracomment>ui/job_drift_sheet.py</extracomment>
            <translation>vorgefunden</translation>
        </message>
        <message>
            <source>predicted</source>
            <extracomment>ui/job_drift_sheet.py</extracomment>
            <translation>vorhergesagt</translation>
        </message>
        <message>
            <source>interval</source>
            <extracomment>ui/job_drift_sheet.py</extracomment>
            <translation>Intervall</translation>
        </message>
        <message>
            <source>year-month-day</source>
            <extracomment>ui/job_edits.py</extracomment>
            <translation>Jahr-Monat-Tag</translation>
        </message>
        <message>
            <source>Today</source>
            <extracomment>ui/job_edits.py</extracomment>
            <translation>Heute</translation>
        </message>
        <message>
            <source>Missing in {what}.</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation>Fehlt in {what}.</translation>
        </message>
        <message>
            <source>To be cleared up: see {stage}.</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation>Zu klären: siehe {stage}.</translation>
        </message>
        <message>
            <source>Not done yet: {stages}.</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation>Noch nicht fertig: {stages}.</translation>
        </message>
        <message>
            <source>Out of limits, or not as it must be: see {stage}.</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation>Außer Grenzen oder nicht wie gefordert: siehe {stage}.</translation>
        </message>
        <message>
            <source>Not signed.</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation>Nicht unterschrieben.</translation>
        </message>
        <message>
            <source>What is missing, next check, signature</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation>Was fehlt, nächste Prüfung, Unterschrift</translation>
        </message>
        <message>
            <source>What is missing</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation>Was fehlt</translation>
        </message>
        <message>
            <source>Not judged</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation>Nicht beurteilt</translation>
        </message>
        <message>
            <source>Signed by {who}</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation>Unterschrieben von {who}</translation>
        </message>
        <message>
            <source>Signature taken back</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation>Unterschrift zurückgenommen</translation>
        </message>
        <message>
            <source>Changed since it was signed: the signature does not cover this sheet; sign again.</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation>Seit der Unterschrift geändert: Die Unterschrift deckt dieses Blatt nicht; erneut unterschreiben.</translation>
        </message>
        <message>
            <source>Sign the sheet</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation>Blatt unterschreiben</translation>
        </message>
        <message>
            <source>Take the signature back</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation>Unterschrift zurücknehmen</translation>
        </message>
        <message>
            <source>✓ Finished: every stage is done or skipped, in limits as left, and signed.</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation>✓ Abgeschlossen: Jeder Abschnitt ist fertig oder ausgelassen, hinterlassen in den Grenzen und unterschrieben.</translation>
        </message>
        <message>
            <source>✓ Signed; the sheet is as it was signed.</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation>✓ Unterschrieben; das Blatt ist wie unterschrieben.</translation>
        </message>
        <message>
            <source>✗ Changed since it was signed.</source>
            <extracomment>ui/job_end.py</extracomment>
            <translation>✗ Seit der Unterschrift geändert.</translation>
        </message>
        <message>
            <source>{mark} {verdict} ({limits})</source>
            <extracomment>ui/job_form.py</extracomment>
            <translation>{mark} {verdict} ({limits})</translation>
        </message>
        <message>
            <source>{value} ± {spread} (k = {k}, {probability}); {odds} likely within {low} to {high}; what matters most: {most}</source>
            <extracomment>ui/job_form.py</extracomment>
            <translation>{value} ± {spread} (k = {k}, {probability}); {odds} wahrscheinlich zwischen {low} und {high}; am wichtigsten: {most}</translation>
        </message>
        <message>
            <source>{typed} is outside {low} to {high} and was not taken</source>
            <extracomment>ui/job_form.py</extracomment>
            <translation>{typed} liegt außerhalb {low} bis {high} und wurde nicht übernommen</translation>
        </message>
        <message>
            <source>Strike out the uncertainty</source>
            <extracomment>ui/job_form.py</extracomment>
            <translation>Unsicherheit streichen</translation>
        </message>
        <message>
            <source>Verdict: {field}</source>
            <extracomment>ui/job_form.py</extracomment>
            <translation>Urteil: {field}</translation>
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
            <translation>Zu klären</translation>
        </message>
        <message>
            <source>How sure: {quantity}</source>
            <extracomment>ui/job_form.py</extracomment>
            <translation>Wie sicher: {quantity}</translation>
        </message>
        <message>
            <source>not read</source>
            <extracomment>ui/job_form.py, ui/job_kinds.py</extracomment>
            <translation>nicht abgelesen</translation>
        </message>
        <message>
            <source>none given</source>
            <extracomment>ui/job_form.py</extracomment>
            <translation>keine angegeben</translation>
        </message>
        <message>
            <source>Earlier sheets of the same magneto</source>
            <extracomment>ui/job_history.py</extracomment>
            <translation>Frühere Blätter desselben Magnetzünders</translation>
        </message>
        <message>
            <source>Double-click, or Return, opens a sheet</source>
            <extracomment>ui/job_history.py</extracomment>
            <translation>Doppelklick oder Eingabe öffnet ein Blatt</translation>
        </message>
        <message>
            <source>Looking in {folder}…</source>
            <extracomment>ui/job_history.py</extracomment>
            <translation>Suche in {folder}…</translation>
        </message>
        <message>
            <source>{count} earlier sheets of this magneto in {folder}.</source>
            <extracomment>ui/job_history.py</extracomment>
            <translation>{count} frühere Blätter dieses Magnetzünders in {folder}.</translation>
        </message>
        <message>
            <source>Another folder…</source>
            <extracomment>ui/job_history.py</extracomment>
            <translation>Anderer Ordner…</translation>
        </message>
        <message>
            <source>Look again</source>
            <extracomment>ui/job_history.py</extracomment>
            <translation>Erneut suchen</translation>
        </message>
        <message>
            <source>Passed over: {sentence}.</source>
            <extracomment>ui/job_history.py</extracomment>
            <translation>Übergangen: {sentence}.</translation>
        </message>
        <message>
            <source>Title</source>
            <extracomment>ui/job_kinds.py</extracomment>
            <translation>Titel</translation>
        </message>
        <message>
            <source>Note</source>
            <extracomment>ui/job_kinds.py</extracomment>
            <translation>Notiz</translation>
        </message>
        <message>
            <source>Done by</source>
            <extracomment>ui/job_kinds.py</extracomment>
            <translation>Ausgeführt von</translation>
        </message>
        <message>
            <source>in</source>
            <extracomment>ui/job_kinds.py</extracomment>
            <translation>in</translation>
        </message>
        <message>
            <source>crank ° before top dead centre</source>
            <extracomment>ui/job_kinds.py</extracomment>
            <translation>Kurbel-° vor oberem Totpunkt</translation>
        </message>
        <message>
            <source>°, + late</source>
            <extracomment>ui/job_kinds.py</extracomment>
            <translation>°, + spät</translation>
        </message>
        <message>
            <source>°, + with rotation</source>
            <extracomment>ui/job_kinds.py</extracomment>
            <translation>°, + in Drehrichtung</translation>
        </message>
        <message>
            <source>°, + closer</source>
            <extracomment>ui/job_kinds.py</extracomment>
            <translation>°, + näher</translation>
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
            <translation>Zähne, + in Drehrichtung</translation>
        </message>
        <message>
            <source>in, + late</source>
            <extracomment>ui/job_kinds.py</extracomment>
            <translation>in, + spät</translation>
        </message>
        <message>
            <source>mm, + late</source>
            <extracomment>ui/job_kinds.py</extracomment>
            <translation>mm, + spät</translation>
        </message>
        <message>
            <source>&amp;New job sheet…</source>
            <extracomment>ui/job_menus.py, ui/menus.py</extracomment>
            <translation>&amp;Neues Auftragsblatt…</translation>
        </message>
        <message>
            <source>&amp;Open job sheet…</source>
            <extracomment>ui/job_menus.py, ui/menus.py</extracomment>
            <translation>Auftragsblatt ö&amp;ffnen…</translation>
        </message>
        <message>
            <source>&amp;Try again to save</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>Erneut zu speichern &amp;versuchen</translation>
        </message>
        <message>
            <source>&amp;Reload from the file</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>Aus Datei neu &amp;laden</translation>
        </message>
        <message>
            <source>&amp;Close</source>
            <extracomment>ui/job_menus.py, ui/lift_dialog.py, ui/own_menus.py, ui/practice_menus.py, ui/report_dialog.py</extracomment>
            <translation>S&amp;chließen</translation>
        </message>
        <message>
            <source>&amp;Undo</source>
            <extracomment>ui/job_menus.py, ui/menus.py, ui/own_menus.py</extracomment>
            <translation>&amp;Rückgängig</translation>
        </message>
        <message>
            <source>&amp;Redo</source>
            <extracomment>ui/job_menus.py, ui/menus.py, ui/own_menus.py</extracomment>
            <translation>&amp;Wiederholen</translation>
        </message>
        <message>
            <source>&amp;Steps taken…</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>&amp;Getane Schritte…</translation>
        </message>
        <message>
            <source>&amp;Skip for a reason…</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>Mit &amp;Grund auslassen…</translation>
        </message>
        <message>
            <source>&amp;Open again</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>Wieder ö&amp;ffnen</translation>
        </message>
        <message>
            <source>&amp;Next page</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>&amp;Nächste Seite</translation>
        </message>
        <message>
            <source>&amp;Previous page</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>&amp;Vorige Seite</translation>
        </message>
        <message>
            <source>Print to PDF, &amp;A4…</source>
            <extracomment>ui/job_menus.py, ui/menus.py, ui/plan_box.py</extracomment>
            <translation>Als PDF drucken, &amp;A4…</translation>
        </message>
        <message>
            <source>Print to PDF, &amp;Letter…</source>
            <extracomment>ui/job_menus.py, ui/menus.py, ui/plan_box.py</extracomment>
            <translation>Als PDF drucken, &amp;Letter…</translation>
        </message>
        <message>
            <source>Save as &amp;HTML…</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>Als &amp;HTML speichern…</translation>
        </message>
        <message>
            <source>Save readings as &amp;CSV…</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>Werte als &amp;CSV speichern…</translation>
        </message>
        <message>
            <source>Save readings as &amp;JSON…</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>Werte als &amp;JSON speichern…</translation>
        </message>
        <message>
            <source>With &amp;earlier sheets of this magneto</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>Mit &amp;früheren Blättern dieses Magnetzünders</translation>
        </message>
        <message>
            <source>Lengths in &amp;inches</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>Längen in &amp;Zoll</translation>
        </message>
        <message>
            <source>&amp;Keys and cautions</source>
            <extracomment>ui/job_menus.py, ui/menus.py, ui/practice_menus.py</extracomment>
            <translation>&amp;Tasten und Warnhinweise</translation>
        </message>
        <message>
            <source>Steps taken</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>Getane Schritte</translation>
        </message>
        <message>
            <source>&amp;Text size</source>
            <extracomment>ui/job_menus.py, ui/menus.py, ui/practice_menus.py</extracomment>
            <translation>&amp;Textgröße</translation>
        </message>
        <message>
            <source>&amp;Undo: {step}</source>
            <extracomment>ui/job_menus.py, ui/menus.py, ui/own_menus.py</extracomment>
            <translation>&amp;Rückgängig: {step}</translation>
        </message>
        <message>
            <source>&amp;Redo: {step}</source>
            <extracomment>ui/job_menus.py, ui/menus.py, ui/own_menus.py</extracomment>
            <translation>&amp;Wiederholen: {step}</translation>
        </message>
        <message>
            <source>No step has been taken yet.</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>Noch kein Schritt getan.</translation>
        </message>
        <message>
            <source>&amp;Job</source>
            <extracomment>ui/job_menus.py, ui/menus.py</extracomment>
            <translation>&amp;Auftrag</translation>
        </message>
        <message>
            <source>&amp;Edit</source>
            <extracomment>ui/job_menus.py, ui/menus.py, ui/own_menus.py</extracomment>
            <translation>&amp;Bearbeiten</translation>
        </message>
        <message>
            <source>&amp;Stage</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>A&amp;bschnitt</translation>
        </message>
        <message>
            <source>&amp;Note on the job sheet</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>&amp;Notiz ins Auftragsblatt</translation>
        </message>
        <message>
            <source>&amp;Report</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>&amp;Bericht</translation>
        </message>
        <message>
            <source>&amp;View</source>
            <extracomment>ui/job_menus.py, ui/menus.py, ui/practice_menus.py</extracomment>
            <translation>&amp;Ansicht</translation>
        </message>
        <message>
            <source>&amp;Help</source>
            <extracomment>ui/job_menus.py, ui/menus.py, ui/own_menus.py, ui/practice_menus.py</extracomment>
            <translation>&amp;Hilfe</translation>
        </message>
        <message>
            <source>{n} %</source>
            <extracomment>ui/job_menus.py</extracomment>
            <translation>{n} %</translation>
        </message>
        <message>
            <source>Not taken yet: {what}. Correct it, or press Escape in its field to put back what was there.</source>
            <extracomment>ui/job_model.py</extracomment>
            <translation>Noch nicht übernommen: {what}. Berichtigen, oder in seinem Feld Escape drücken, um zurückzusetzen, was dort stand.</translation>
        </message>
        <message>
            <source>Job sheet</source>
            <extracomment>ui/job_model.py</extracomment>
            <translation>Auftragsblatt</translation>
        </message>
        <message>
            <source>{part}: {field}</source>
            <extracomment>ui/job_model.py</extracomment>
            <translation>{part}: {field}</translation>
        </message>
        <message>
            <source>{stage}: skipped</source>
            <extracomment>ui/job_model.py</extracomment>
            <translation>{stage}: ausgelassen</translation>
        </message>
        <message>
            <source>{stage}: done</source>
            <extracomment>ui/job_model.py</extracomment>
            <translation>{stage}: fertig</translation>
        </message>
        <message>
            <source>{stage}: opened again</source>
            <extracomment>ui/job_model.py</extracomment>
            <translation>{stage}: wieder geöffnet</translation>
        </message>
        <message>
            <source>Cautions</source>
            <extracomment>ui/job_page.py</extracomment>
            <translation>Warnhinweise</translation>
        </message>
        <message>
            <source>Note from the bench: {what}</source>
            <extracomment>ui/job_page.py</extracomment>
            <translation>Notiz vom Prüftisch: {what}</translation>
        </message>
        <message>
            <source>Aircraft, engine, magneto and limits</source>
            <extracomment>ui/job_page.py</extracomment>
            <translation>Flugzeug, Motor, Magnetzünder und Grenzen</translation>
        </message>
        <message>
            <source>The sheet does not say yet which magneto the bench worked with; without it there are no drawings, and limits are as entered from the maker's manual.</source>
            <extracomment>ui/job_page.py</extracomment>
            <translation>Das Blatt sagt noch nicht, mit welchem Magnetzünder der Prüftisch arbeitete; ohne ihn gibt es keine Zeichnungen, und die Grenzen gelten wie aus dem Handbuch des Herstellers eingetragen.</translation>
        </message>
        <message>
            <source>Note from the bench:</source>
            <extracomment>ui/job_page.py</extracomment>
            <translation>Notiz vom Prüftisch:</translation>
        </message>
        <message>
            <source>On the bench: {magneto}, on {engine}.</source>
            <extracomment>ui/job_page.py</extracomment>
            <translation>Auf dem Prüftisch: {magneto}, an {engine}.</translation>
        </message>
        <message>
            <source>On the bench: {magneto}.</source>
            <extracomment>ui/job_page.py</extracomment>
            <translation>Auf dem Prüftisch: {magneto}.</translation>
        </message>
        <message>
            <source>Page {number} of {count}</source>
            <extracomment>ui/job_preview.py</extracomment>
            <translation>Seite {number} von {count}</translation>
        </message>
        <message>
            <source>Paper</source>
            <extracomment>ui/job_preview.py</extracomment>
            <translation>Papier</translation>
        </message>
        <message>
            <source>Print to PDF…</source>
            <extracomment>ui/job_preview.py</extracomment>
            <translation>Als PDF drucken…</translation>
        </message>
        <message>
            <source>1 page</source>
            <extracomment>ui/job_preview.py</extracomment>
            <translation>1 Seite</translation>
        </message>
        <message>
            <source>{count} pages</source>
            <extracomment>ui/job_preview.py</extracomment>
            <translation>{count} Seiten</translation>
        </message>
        <message>
            <source>Ctrl+Page Down and Ctrl+Page Up turn the pages, Ctrl+Return marks a stage as done. Every change is in the file at once; Ctrl+Z takes the last one back, also after the sheet was closed and opened again, and Ctrl+Shift+Z does it again. Numbers take a decimal point or comma and their unit: 13 thou, 0,33 mm. Escape puts back what stood in a field; an empty one was not read.</source>
            <extracomment>ui/job_reports.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Print the job sheet to PDF</source>
            <extracomment>ui/job_reports.py</extracomment>
            <translation>Auftragsblatt als PDF drucken</translation>
        </message>
        <message>
            <source>Save the job sheet as HTML</source>
            <extracomment>ui/job_reports.py</extracomment>
            <translation>Auftragsblatt als HTML speichern</translation>
        </message>
        <message>
            <source>HTML (*.html)</source>
            <extracomment>ui/job_reports.py</extracomment>
            <translation>HTML (*.html)</translation>
        </message>
        <message>
            <source>Save the readings</source>
            <extracomment>ui/job_reports.py</extracomment>
            <translation>Werte speichern</translation>
        </message>
        <message>
            <source>Table (*.csv)</source>
            <extracomment>ui/job_reports.py</extracomment>
            <translation>Tabelle (*.csv)</translation>
        </message>
        <message>
            <source>Readings (*.json)</source>
            <extracomment>ui/job_reports.py</extracomment>
            <translation>Werte (*.json)</translation>
        </message>
        <message>
            <source>✓ Saved {file}.</source>
            <extracomment>ui/job_reports.py</extracomment>
            <translation>✓ {file} gespeichert.</translation>
        </message>
        <message>
            <source>{file} is the job sheet itself; choose another name</source>
            <extracomment>ui/job_reports.py</extracomment>
            <translation>{file} ist das Auftragsblatt selbst; einen anderen Namen wählen</translation>
        </message>
        <message>
            <source>this sheet ships with the program and stays as it is; save it under a name of your own to work on it</source>
            <extracomment>ui/job_room.py</extracomment>
            <translation>dieses Blatt gehört zum Programm und bleibt, wie es ist; unter eigenem Namen speichern, um daran zu arbeiten</translation>
        </message>
        <message>
            <source>Where is the new job sheet to be kept?</source>
            <extracomment>ui/job_room.py</extracomment>
            <translation>Wo soll das neue Auftragsblatt abgelegt werden?</translation>
        </message>
        <message>
            <source>Job sheets (*.json)</source>
            <extracomment>ui/job_room.py, ui/job_window.py</extracomment>
            <translation>Auftragsblätter (*.json)</translation>
        </message>
        <message>
            <source>Open a job sheet</source>
            <extracomment>ui/job_room.py</extracomment>
            <translation>Auftragsblatt öffnen</translation>
        </message>
        <message>
            <source>Job sheets (*.json);;All files (*)</source>
            <extracomment>ui/job_room.py</extracomment>
            <translation>Auftragsblätter (*.json);;Alle Dateien (*)</translation>
        </message>
        <message>
            <source>No job sheet is open: open one, or begin a new one, from the Job menu.</source>
            <extracomment>ui/job_room.py</extracomment>
            <translation>Kein Auftragsblatt offen: über das Menü „Auftrag“ eines öffnen oder ein neues beginnen.</translation>
        </message>
        <message>
            <source>the bench still has the setting it began with, which nobody has read: set plate and screw as they are first</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>der Prüftisch hat noch die Einstellung, mit der er begann und die niemand abgelesen hat: erst Platte und Schraube einstellen, wie sie sind</translation>
        </message>
        <message>
            <source>Magneto, engine and limits</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Magnetzünder, Motor und Grenzen</translation>
        </message>
        <message>
            <source>What is on the bench, and the limits its files give</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Was auf dem Prüftisch ist, und die Grenzen aus seinen Dateien</translation>
        </message>
        <message>
            <source>Switch lead as it stands</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Kurzschlussleitung, wie sie ist</translation>
        </message>
        <message>
            <source>What meter and lamp say on the bench with plug and switch as they are now</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Was Messgerät und Lampe am Prüftisch sagen, Stecker und Schalter wie jetzt</translation>
        </message>
        <message>
            <source>Stop readings</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Anschlagwerte</translation>
        </message>
        <message>
            <source>The two stop readings of the Engine page</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Die zwei Anschlagwerte der Seite „Motor“</translation>
        </message>
        <message>
            <source>Stroke of No. 1 now</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Takt von Nr. 1 jetzt</translation>
        </message>
        <message>
            <source>Set the crank before No. 1 fires: its stroke there is noted</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Die Kurbel vor die Zündung von Nr. 1 stellen: ihr Takt dort wird notiert</translation>
        </message>
        <message>
            <source>Setting as it was put on the bench, timing as the lamp was read</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Einstellung wie auf dem Prüftisch gesetzt, Zündzeitpunkt wie an der Lampe abgelesen</translation>
        </message>
        <message>
            <source>As found, by instruments</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Vorgefunden, mit Messmitteln</translation>
        </message>
        <message>
            <source>As the instruments chosen on the Uncertainty page read it</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Wie die auf der Seite „Unsicherheit“ gewählten Messmittel es ablesen</translation>
        </message>
        <message>
            <source>Wear and pips</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Verschleiß und Höcker</translation>
        </message>
        <message>
            <source>As they were set on the bench</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Wie auf dem Prüftisch eingestellt</translation>
        </message>
        <message>
            <source>Trials made</source>
            <extracomment>ui/job_sources.py, ui/trials_panel.py</extracomment>
            <translation>Gemachte Probeläufe</translation>
        </message>
        <message>
            <source>All trials on the bench's list</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Alle Probeläufe in der Liste des Prüftischs</translation>
        </message>
        <message>
            <source>Setting planned</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Geplante Einstellung</translation>
        </message>
        <message>
            <source>Where backplate and screw belong for the gap wanted on the Internal page</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Wohin Grundplatte und Schraube für den auf der Seite „Innen“ gewünschten Abstand gehören</translation>
        </message>
        <message>
            <source>The setting as the bench has it now</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Die jetzige Einstellung am Prüftisch</translation>
        </message>
        <message>
            <source>As left, by instruments</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Hinterlassen, mit Messmitteln</translation>
        </message>
        <message>
            <source>How sure the setting is</source>
            <extracomment>ui/job_sources.py, ui/panes.py</extracomment>
            <translation>Wie sicher die Einstellung ist</translation>
        </message>
        <message>
            <source>What the Uncertainty page shows of internal timing</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Was die Seite „Unsicherheit“ zur inneren Einstellung zeigt</translation>
        </message>
        <message>
            <source>Opening, gap and dwell of each lobe</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Öffnung, Abstand und Schließwinkel jedes Nockens</translation>
        </message>
        <message>
            <source>Marks as painted</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Marken, wie gezogen</translation>
        </message>
        <message>
            <source>How the coupling's marks stand apart</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Wie die Marken der Kupplung auseinanderstehen</translation>
        </message>
        <message>
            <source>Tooth shift planned</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Geplanter Zahnversatz</translation>
        </message>
        <message>
            <source>Reading as found, timing wanted, and the move chosen in the planner, or its first</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Vorgefundene Ablesung, gewünschter Zündzeitpunkt und der im Planer gewählte Schritt, oder sein erster</translation>
        </message>
        <message>
            <source>Tooth shift made</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Gemachter Zahnversatz</translation>
        </message>
        <message>
            <source>Teeth moved; where it fires then, the lamp has to tell</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Versetzte Zähne; wo er dann zündet, muss die Lampe sagen</translation>
        </message>
        <message>
            <source>Where the lamp was read to say that the magnetos fire</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Wo die Magnete nach der abgelesenen Lampe zünden</translation>
        </message>
        <message>
            <source>How sure the timing is</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Wie sicher der Zündzeitpunkt ist</translation>
        </message>
        <message>
            <source>What the Uncertainty page shows of timing to the engine</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>Was die Seite „Unsicherheit“ zur Einstellung auf den Motor zeigt</translation>
        </message>
        <message>
            <source>the bench has “{bench}” on it and this sheet is of “{sheet}”: put that one on the bench, or take over magneto and limits anew</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>auf dem Prüftisch ist „{bench}“, dieses Blatt gilt „{sheet}“: jenen auf den Prüftisch nehmen, oder Magnetzünder und Grenzen neu übernehmen</translation>
        </message>
        <message>
            <source>this magneto is not on an engine: open an installation on the bench first</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>dieser Magnetzünder sitzt an keinem Motor: erst einen Einbau auf dem Prüftisch öffnen</translation>
        </message>
        <message>
            <source>neither plug nor switch has been moved on the bench yet: the lead has not been tried</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>auf dem Prüftisch wurde noch weder Stecker noch Schalter bewegt: die Leitung ist nicht erprobt</translation>
        </message>
        <message>
            <source>no stop readings were entered yet; they belong on the Engine page of the bench</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>noch keine Anschlagwerte eingegeben; sie gehören auf die Seite „Motor“ des Prüftischs</translation>
        </message>
        <message>
            <source>the crank has not been turned on the bench yet: set it as the engine's stands first</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>auf dem Prüftisch wurde die Kurbel noch nicht gedreht: erst so stellen, wie die des Motors steht</translation>
        </message>
        <message>
            <source>no trial has been made on the bench yet; they are noted on its Trials page</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>noch kein Probelauf auf dem Prüftisch gemacht; sie werden auf seiner Seite „Probeläufe“ notiert</translation>
        </message>
        <message>
            <source>the bench's Uncertainty page does not show internal timing; choose it there first</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>die Seite „Unsicherheit“ des Prüftischs zeigt die innere Einstellung nicht; erst dort wählen</translation>
        </message>
        <message>
            <source>the bench's Uncertainty page does not show timing to the engine; choose it there first</source>
            <extracomment>ui/job_sources.py</extracomment>
            <translation>die Seite „Unsicherheit“ des Prüftischs zeigt die Einstellung auf den Motor nicht; erst dort wählen</translation>
        </message>
        <message>
            <source>Add a trial</source>
            <extracomment>ui/job_table.py</extracomment>
            <translation>Probelauf hinzufügen</translation>
        </message>
        <message>
            <source>Add a lobe</source>
            <extracomment>ui/job_table.py</extracomment>
            <translation>Nocken hinzufügen</translation>
        </message>
        <message>
            <source>Strike out the chosen trial</source>
            <extracomment>ui/job_table.py</extracomment>
            <translation>Gewählten Probelauf streichen</translation>
        </message>
        <message>
            <source>Strike out the chosen lobe</source>
            <extracomment>ui/job_table.py</extracomment>
            <translation>Gewählten Nocken streichen</translation>
        </message>
        <message>
            <source>{row} {number} waits for: {field}</source>
            <extracomment>ui/job_table.py</extracomment>
            <translation>{row} {number} wartet auf: {field}</translation>
        </message>
        <message>
            <source>{row} {number}, {field}: outside {low} to {high}, not taken</source>
            <extracomment>ui/job_table.py</extracomment>
            <translation>{row} {number}, {field}: außerhalb {low} bis {high}, nicht übernommen</translation>
        </message>
        <message>
            <source>{what}, from the bench</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>{what}, vom Prüftisch</translation>
        </message>
        <message>
            <source>{name} – job sheet – magview</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>{name} – Auftragsblatt – magview</translation>
        </message>
        <message>
            <source>{count} found</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>{count} gefunden</translation>
        </message>
        <message>
            <source>Skip a stage</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>Abschnitt auslassen</translation>
        </message>
        <message>
            <source>Why is “{stage}” skipped?</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>Warum wird „{stage}“ ausgelassen?</translation>
        </message>
        <message>
            <source>Skip it</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>Auslassen</translation>
        </message>
        <message>
            <source>Save the job sheet as</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>Auftragsblatt speichern unter</translation>
        </message>
        <message>
            <source>Reload the sheet from its file?</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>Das Blatt aus seiner Datei neu laden?</translation>
        </message>
        <message>
            <source>Not saved: {sentence}.</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>Nicht gespeichert: {sentence}.</translation>
        </message>
        <message>
            <source>Read only: {file}</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>Nur lesbar: {file}</translation>
        </message>
        <message>
            <source>✓ Noted from the bench: {what}.</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>✓ Vom Prüftisch notiert: {what}.</translation>
        </message>
        <message>
            <source>Undone: {step}.</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>Rückgängig: {step}.</translation>
        </message>
        <message>
            <source>Done again: {step}.</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>Wiederholt: {step}.</translation>
        </message>
        <message>
            <source>Skipped: {stage}.</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>Ausgelassen: {stage}.</translation>
        </message>
        <message>
            <source>Opened again; its readings stand.</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>Wieder geöffnet; die Werte bleiben.</translation>
        </message>
        <message>
            <source>Saved; from now on in {file}.</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>Gespeichert; ab jetzt in {file}.</translation>
        </message>
        <message>
            <source>&amp;Keep what is here</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>Hiesiges &amp;behalten</translation>
        </message>
        <message>
            <source>What was entered here and is not in the file is given up; save it elsewhere first.</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>Was hier eingegeben wurde und nicht in der Datei steht, geht verloren; erst anderswo speichern.</translation>
        </message>
        <message>
            <source>&amp;Save as…</source>
            <extracomment>ui/job_window.py, ui/report_dialog.py</extracomment>
            <translation>&amp;Speichern unter…</translation>
        </message>
        <message>
            <source>Close &amp;without saving</source>
            <extracomment>ui/job_window.py, ui/practice_window.py</extracomment>
            <translation>&amp;Ohne Speichern schließen</translation>
        </message>
        <message>
            <source>&amp;Go on</source>
            <extracomment>ui/job_window.py, ui/practice_window.py</extracomment>
            <translation>&amp;Weiter</translation>
        </message>
        <message>
            <source>✗ Not saved</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>✗ Nicht gespeichert</translation>
        </message>
        <message>
            <source>✓ Saved in {file}</source>
            <extracomment>ui/job_window.py</extracomment>
            <translation>✓ In {file} gespeichert</translation>
        </message>
        <message>
            <source>{crank}° of crank early = {rotor}° of rotor = {piston} of piston travel.</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>{crank}° Kurbel früh = {rotor}° Rotor = {piston} Kolbenweg.</translation>
        </message>
        <message>
            <source>{crank}° of crank late = {rotor}° of rotor = {piston} of piston travel.</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>{crank}° Kurbel spät = {rotor}° Rotor = {piston} Kolbenweg.</translation>
        </message>
        <message>
            <source>Left</source>
            <extracomment>ui/lamp_box.py, ui/practice_sight.py</extracomment>
            <translation>Links</translation>
        </message>
        <message>
            <source>Right</source>
            <extracomment>ui/lamp_box.py, ui/practice_sight.py</extracomment>
            <translation>Rechts</translation>
        </message>
        <message>
            <source>Left: its lamp was read before the contacts were set anew. With this internal setting it would now read {found}; read it again.</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>Links: Die Lampe wurde abgelesen, bevor die Kontakte neu eingestellt wurden. Mit dieser inneren Einstellung zeigte sie jetzt {found}; neu ablesen.</translation>
        </message>
        <message>
            <source>Right: its lamp was read before the contacts were set anew. With this internal setting it would now read {found}; read it again.</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>Rechts: Die Lampe wurde abgelesen, bevor die Kontakte neu eingestellt wurden. Mit dieser inneren Einstellung zeigte sie jetzt {found}; neu ablesen.</translation>
        </message>
        <message>
            <source>Left: {line}</source>
            <extracomment>ui/lamp_box.py, ui/practice_notebook.py</extracomment>
            <translation>Links: {line}</translation>
        </message>
        <message>
            <source>Right: {line}</source>
            <extracomment>ui/lamp_box.py, ui/practice_notebook.py</extracomment>
            <translation>Rechts: {line}</translation>
        </message>
        <message>
            <source>Where it fires, crank degrees before top dead centre</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>Wo er zündet, Kurbelgrad vor dem oberen Totpunkt</translation>
        </message>
        <message>
            <source>Crank from No. 1's firing top dead centre, positive the way the engine turns</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>Kurbel ab dem Zünd-OT von Nr. 1, positiv wie der Motor dreht</translation>
        </message>
        <message>
            <source>Cran&amp;k</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>&amp;Kurbel</translation>
        </message>
        <message>
            <source>Tolerance ±{tolerance}° of crank.</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>Toleranz ±{tolerance}° Kurbel.</translation>
        </message>
        <message>
            <source>Fires now</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>Zündet jetzt</translation>
        </message>
        <message>
            <source>Show this magneto's coupling</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>Kupplung dieses Magnetzünders zeigen</translation>
        </message>
        <message>
            <source>To firing</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>Zur Zündung</translation>
        </message>
        <message>
            <source>To TDC</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>Zum OT</translation>
        </message>
        <message>
            <source>The magneto is off the engine: all this holds once it is refitted by its marks.</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>Der Magnetzünder ist abgebaut: All das gilt, sobald er nach seinen Marken angebaut ist.</translation>
        </message>
        <message>
            <source>The contacts were set anew since the lamp was read: with the teeth as found it would now read {found}. Both magnetos are shown with this one's internal setting.</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>Die Kontakte wurden neu eingestellt, seit die Lampe abgelesen wurde: Mit den Zähnen wie vorgefunden zeigte sie jetzt {found}. Beide Magnetzünder sind mit der inneren Einstellung dieses einen gezeigt.</translation>
        </message>
        <message>
            <source>With this setting the contacts never open and close: there is no timing to read.</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>Mit dieser Einstellung öffnen und schließen die Kontakte nie: Es gibt keinen Zündzeitpunkt abzulesen.</translation>
        </message>
        <message>
            <source>left magneto, lamp reads</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>linker Magnetzünder, Lampe zeigt</translation>
        </message>
        <message>
            <source>right magneto, lamp reads</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>rechter Magnetzünder, Lampe zeigt</translation>
        </message>
        <message>
            <source>left magneto, wanted</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>linker Magnetzünder, Soll</translation>
        </message>
        <message>
            <source>right magneto, wanted</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>rechter Magnetzünder, Soll</translation>
        </message>
        <message>
            <source>left magneto fires now</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>linker Magnetzünder zündet jetzt</translation>
        </message>
        <message>
            <source>right magneto fires now</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>rechter Magnetzünder zündet jetzt</translation>
        </message>
        <message>
            <source>Single</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>Einzeln</translation>
        </message>
        <message>
            <source>At the timing wanted.</source>
            <extracomment>ui/lamp_box.py</extracomment>
            <translation>Auf dem gewünschten Zündzeitpunkt.</translation>
        </message>
        <message>
            <source>Prove the lead before touching the propeller: plug out, meter from the lead's plug to the case: ground with the switch off, none with it on. A lead that shows no ground with the switch off leaves the magneto live. Treat the propeller as live all the same.</source>
            <extracomment>ui/lead_panel.py</extracomment>
            <translation>Die Leitung nachweisen, bevor der Propeller berührt wird: Stecker heraus, vom Stecker der Leitung zum Gehäuse messen: Masse mit Schalter aus, keine mit Schalter ein. Eine Leitung, die bei Schalter aus keine Masse zeigt, lässt den Magnetzünder scharf. Behandeln Sie den Propeller trotzdem als scharf.</translation>
        </message>
        <message>
            <source>Switch lead, drawn as a circuit</source>
            <extracomment>ui/lead_panel.py</extracomment>
            <translation>Kurzschlussleitung, als Schaltplan</translation>
        </message>
        <message>
            <source>Lamp: open</source>
            <extracomment>ui/lead_panel.py</extracomment>
            <translation>Lampe: offen</translation>
        </message>
        <message>
            <source>Lamp: closed</source>
            <extracomment>ui/lead_panel.py</extracomment>
            <translation>Lampe: geschlossen</translation>
        </message>
        <message>
            <source>Ignition switch &amp;on</source>
            <extracomment>ui/lead_panel.py, ui/practice_work.py</extracomment>
            <translation>Zündschalter &amp;ein</translation>
        </message>
        <message>
            <source>Plug o&amp;ut of the magneto</source>
            <extracomment>ui/lead_panel.py</extracomment>
            <translation>Stecker vom Magnetzünder &amp;ab</translation>
        </message>
        <message>
            <source>Lead &amp;broken inside</source>
            <extracomment>ui/lead_panel.py</extracomment>
            <translation>&amp;Leitung innen gebrochen</translation>
        </message>
        <message>
            <source>&amp;Short inside the magneto</source>
            <extracomment>ui/lead_panel.py</extracomment>
            <translation>&amp;Kurzschluss im Magnetzünder</translation>
        </message>
        <message>
            <source>Spring tab bent clear of the c&amp;ase</source>
            <extracomment>ui/lead_panel.py</extracomment>
            <translation>&amp;Federzunge vom Gehäuse weggebogen</translation>
        </message>
        <message>
            <source>Hands on</source>
            <extracomment>ui/lead_panel.py</extracomment>
            <translation>Hand anlegen</translation>
        </message>
        <message>
            <source>Faults to try</source>
            <extracomment>ui/lead_panel.py</extracomment>
            <translation>Fehler zum Ausprobieren</translation>
        </message>
        <message>
            <source>What it needs is on the tabs {tabs}.</source>
            <extracomment>ui/lesson_view.py</extracomment>
            <translation>Was man braucht, liegt unter den Reitern {tabs}.</translation>
        </message>
        <message>
            <source>“{tab}”</source>
            <extracomment>ui/lesson_view.py</extracomment>
            <translation>„{tab}“</translation>
        </message>
        <message>
            <source>What it needs is on the tab {tab}.</source>
            <extracomment>ui/lesson_view.py</extracomment>
            <translation>Was man braucht, liegt unter dem Reiter {tab}.</translation>
        </message>
        <message>
            <source>A hint</source>
            <extracomment>ui/lesson_view.py</extracomment>
            <translation>Ein Hinweis</translation>
        </message>
        <message>
            <source>What came of it</source>
            <extracomment>ui/lesson_view.py</extracomment>
            <translation>Was daraus wurde</translation>
        </message>
        <message>
            <source>{name}: done</source>
            <extracomment>ui/lesson_view.py</extracomment>
            <translation>{name}: fertig</translation>
        </message>
        <message>
            <source>Step {step} of {steps} – {title}</source>
            <extracomment>ui/lesson_view.py</extracomment>
            <translation>Schritt {step} von {steps} – {title}</translation>
        </message>
        <message>
            <source>What you have learnt: {told}</source>
            <extracomment>ui/lesson_view.py</extracomment>
            <translation>Was Sie gelernt haben: {told}</translation>
        </message>
        <message>
            <source>All steps are done.</source>
            <extracomment>ui/lesson_view.py</extracomment>
            <translation>Alle Schritte sind getan.</translation>
        </message>
        <message>
            <source>Hint: {hint}</source>
            <extracomment>ui/lesson_view.py</extracomment>
            <translation>Hinweis: {hint}</translation>
        </message>
        <message>
            <source>Lift of the contacts</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Hub der Kontakte</translation>
        </message>
        <message>
            <source>Gap between the contacts</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Abstand der Kontakte</translation>
        </message>
        <message>
            <source>Dial at the heel</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Messuhr am Gleitstück</translation>
        </message>
        <message>
            <source>found out</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>ermittelt</translation>
        </message>
        <message>
            <source>point: 0.25</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Punkt: 0.25</translation>
        </message>
        <message>
            <source>comma: 0,25</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Komma: 0,25</translation>
        </message>
        <message>
            <source>Lift from {name}</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Hub aus {name}</translation>
        </message>
        <message>
            <source>What comes of the table</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Was sich aus der Tabelle ergibt</translation>
        </message>
        <message>
            <source>grow with rotation</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>wachsen in Drehrichtung</translation>
        </message>
        <message>
            <source>falls as the contacts lift</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>fällt, wenn die Kontakte abheben</translation>
        </message>
        <message>
            <source>Contact lift at which the contacts just touch: needed where gaps were read</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Kontakthub, bei dem sich die Kontakte gerade berühren: nötig, wenn Abstände abgelesen wurden</translation>
        </message>
        <message>
            <source>Contact arm over heel arm: what the contacts lift for a millimetre at the heel</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Kontakthebel zu Gleitstückhebel: um wie viel die Kontakte je Millimeter am Gleitstück abheben</translation>
        </message>
        <message>
            <source>Readings and the smooth lift through them</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Ablesungen und der geglättete Hub hindurch</translation>
        </message>
        <message>
            <source>{readings} readings; the contacts lift {top} mm; scatter {noise} mm.</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>{readings} Ablesungen; die Kontakte heben {top} mm ab; Streuung {noise} mm.</translation>
        </message>
        <message>
            <source>Magneto (*.json)</source>
            <extracomment>ui/lift_dialog.py, ui/trials_panel.py</extracomment>
            <translation>Magnetzünder (*.json)</translation>
        </message>
        <message>
            <source>Put on the &amp;bench</source>
            <extracomment>ui/lift_dialog.py, ui/own_menus.py</extracomment>
            <translation>Auf den &amp;Prüftisch</translation>
        </message>
        <message>
            <source>&amp;Save as magneto…</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Als Magnetzünder &amp;speichern…</translation>
        </message>
        <message>
            <source>Cam</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Nocken</translation>
        </message>
        <message>
            <source>choose…</source>
            <extracomment>ui/lift_dialog.py, ui/own_field.py</extracomment>
            <translation>wählen…</translation>
        </message>
        <message>
            <source>Angles of the</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Winkel des</translation>
        </message>
        <message>
            <source>Readings are</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Ablesungen sind</translation>
        </message>
        <message>
            <source>Their &amp;unit</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Ihre &amp;Einheit</translation>
        </message>
        <message>
            <source>Contacts touch at</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Kontakte berühren sich bei</translation>
        </message>
        <message>
            <source>Contact arm / heel arm</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Kontakthebel / Gleitstückhebel</translation>
        </message>
        <message>
            <source>Decimal sign</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Dezimalzeichen</translation>
        </message>
        <message>
            <source>Column of angles</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Spalte der Winkel</translation>
        </message>
        <message>
            <source>Column of readings</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Spalte der Ablesungen</translation>
        </message>
        <message>
            <source>cam past the top [deg]</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Nocken nach höchstem Punkt [Grad]</translation>
        </message>
        <message>
            <source>contact lift [mm]</source>
            <extracomment>ui/lift_dialog.py, ui/plot_lift.py</extracomment>
            <translation>Kontakthub [mm]</translation>
        </message>
        <message>
            <source>The magneto with the measured lift is on the bench.</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>Der Magnetzünder mit dem gemessenen Hub ist auf dem Prüftisch.</translation>
        </message>
        <message>
            <source>say in which unit the readings are</source>
            <extracomment>ui/lift_dialog.py</extracomment>
            <translation>die Einheit der Ablesungen angeben</translation>
        </message>
        <message>
            <source>Light colours</source>
            <extracomment>ui/menu_maker.py</extracomment>
            <translation>Helle Farben</translation>
        </message>
        <message>
            <source>Dark colours</source>
            <extracomment>ui/menu_maker.py</extracomment>
            <translation>Dunkle Farben</translation>
        </message>
        <message>
            <source>High contrast colours</source>
            <extracomment>ui/menu_maker.py</extracomment>
            <translation>Farben mit hohem Kontrast</translation>
        </message>
        <message>
            <source>&amp;Guide</source>
            <extracomment>ui/menu_maker.py</extracomment>
            <translation>&amp;Anleitung</translation>
        </message>
        <message>
            <source>Zoom &amp;in</source>
            <extracomment>ui/menu_maker.py</extracomment>
            <translation>Ver&amp;größern</translation>
        </message>
        <message>
            <source>Zoom &amp;out</source>
            <extracomment>ui/menu_maker.py</extracomment>
            <translation>Ver&amp;kleinern</translation>
        </message>
        <message>
            <source>&amp;Whole picture</source>
            <extracomment>ui/menu_maker.py</extracomment>
            <translation>&amp;Ganzes Bild</translation>
        </message>
        <message>
            <source>&amp;Open magneto or installation…</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Magnetzünder oder Einbau &amp;öffnen…</translation>
        </message>
        <message>
            <source>&amp;Save magneto as…</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Magnetzünder &amp;speichern unter…</translation>
        </message>
        <message>
            <source>A magneto of &amp;your own…</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>&amp;Eigener Magnetzünder…</translation>
        </message>
        <message>
            <source>Lift from &amp;measurements…</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>&amp;Hub aus Messungen…</translation>
        </message>
        <message>
            <source>Print the &amp;tooth-shift plan</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Plan zum Zähne&amp;versetzen drucken</translation>
        </message>
        <message>
            <source>&amp;Paper for a class…</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>&amp;Papier für eine Klasse…</translation>
        </message>
        <message>
            <source>&amp;Quit</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>&amp;Beenden</translation>
        </message>
        <message>
            <source>&amp;Hold the rotor</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Rotor &amp;halten</translation>
        </message>
        <message>
            <source>Magneto on the &amp;engine</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Magnetzünder am &amp;Motor</translation>
        </message>
        <message>
            <source>&amp;Snap to openings, lobes and marks</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Einrasten an Öffnungen, &amp;Nocken und Marken</translation>
        </message>
        <message>
            <source>&amp;Reduced motion</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>&amp;Weniger Bewegung</translation>
        </message>
        <message>
            <source>New &amp;exercise…</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Neue &amp;Übung…</translation>
        </message>
        <message>
            <source>&amp;Lessons…</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>&amp;Lektionen…</translation>
        </message>
        <message>
            <source>&amp;Open attempt…</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Versuch &amp;öffnen…</translation>
        </message>
        <message>
            <source>&amp;Join a class…</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Klasse &amp;beitreten…</translation>
        </message>
        <message>
            <source>&amp;Make a class set…</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Klassensatz &amp;erstellen…</translation>
        </message>
        <message>
            <source>&amp;Gather a class…</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Klasse &amp;einsammeln…</translation>
        </message>
        <message>
            <source>Exercise e&amp;ditor…</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Übungse&amp;ditor…</translation>
        </message>
        <message>
            <source>Look at the &amp;shipped job sheet</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>&amp;Mitgeliefertes Auftragsblatt ansehen</translation>
        </message>
        <message>
            <source>&amp;Names of parts</source>
            <extracomment>ui/menus.py, ui/practice_menus.py</extracomment>
            <translation>&amp;Namen der Teile</translation>
        </message>
        <message>
            <source>See the breaker from the &amp;drive end</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Unterbrecher von der &amp;Antriebsseite sehen</translation>
        </message>
        <message>
            <source>Draw the &amp;gap 5× its size</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>&amp;Abstand 5-fach zeichnen</translation>
        </message>
        <message>
            <source>&amp;Follow the contacts when zoomed</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Beim Zoomen den &amp;Kontakten folgen</translation>
        </message>
        <message>
            <source>&amp;Projector mode</source>
            <extracomment>ui/menus.py, ui/practice_menus.py</extracomment>
            <translation>&amp;Projektormodus</translation>
        </message>
        <message>
            <source>L&amp;anguage</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>&amp;Sprache</translation>
        </message>
        <message>
            <source>P&amp;resent to a class</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Einer Klasse &amp;vorführen</translation>
        </message>
        <message>
            <source>&amp;Fault reports…</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>&amp;Fehlerberichte…</translation>
        </message>
        <message>
            <source>Bench</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Prüftisch</translation>
        </message>
        <message>
            <source>Magneto on the bench</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Magnetzünder auf dem Prüftisch</translation>
        </message>
        <message>
            <source>Unit of length</source>
            <extracomment>ui/menus.py, ui/own_window.py</extracomment>
            <translation>Längeneinheit</translation>
        </message>
        <message>
            <source>As the &amp;desktop</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Wie der &amp;Desktop</translation>
        </message>
        <message>
            <source>Save picture of the breaker end…</source>
            <extracomment>ui/menus.py, ui/practice_menus.py</extracomment>
            <translation>Bild der Unterbrecherseite speichern…</translation>
        </message>
        <message>
            <source>Save picture of the drive end…</source>
            <extracomment>ui/menus.py, ui/practice_menus.py</extracomment>
            <translation>Bild der Antriebsseite speichern…</translation>
        </message>
        <message>
            <source>Save picture of the crank…</source>
            <extracomment>ui/menus.py, ui/practice_menus.py</extracomment>
            <translation>Bild der Kurbel speichern…</translation>
        </message>
        <message>
            <source>No&amp;te on the job sheet</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>&amp;Im Auftragsblatt notieren</translation>
        </message>
        <message>
            <source>&amp;Recent job sheets</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>&amp;Letzte Auftragsblätter</translation>
        </message>
        <message>
            <source>Millimetres</source>
            <extracomment>ui/menus.py, ui/own_window.py, ui/practice_tray.py</extracomment>
            <translation>Millimeter</translation>
        </message>
        <message>
            <source>Inches</source>
            <extracomment>ui/menus.py, ui/own_window.py</extracomment>
            <translation>Zoll</translation>
        </message>
        <message>
            <source>Lengths in</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>Längen in</translation>
        </message>
        <message>
            <source>&amp;File</source>
            <extracomment>ui/menus.py, ui/own_menus.py</extracomment>
            <translation>&amp;Datei</translation>
        </message>
        <message>
            <source>Ben&amp;ch</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>&amp;Prüftisch</translation>
        </message>
        <message>
            <source>&amp;Practice</source>
            <extracomment>ui/menus.py</extracomment>
            <translation>&amp;Übung</translation>
        </message>
        <message>
            <source>something in the program went wrong; look whether what you did last is done. A report was kept: Help, Fault reports</source>
            <extracomment>ui/mishaps.py</extracomment>
            <translation>im Programm ging etwas schief; sehen Sie nach, ob das zuletzt Getane erledigt ist. Ein Bericht wurde abgelegt: Hilfe, Fehlerberichte</translation>
        </message>
        <message>
            <source>magview: a report of a fault in the program was kept: {file}</source>
            <extracomment>ui/mishaps.py</extracomment>
            <translation>magview: ein Bericht über einen Programmfehler wurde abgelegt: {file}</translation>
        </message>
        <message>
            <source>something in the program went wrong; look whether what you did last is done. No report of it could be kept: {reason}</source>
            <extracomment>ui/mishaps.py</extracomment>
            <translation>im Programm ging etwas schief; sehen Sie nach, ob das zuletzt Getane erledigt ist. Ein Bericht ließ sich nicht ablegen: {reason}</translation>
        </message>
        <message>
            <source>with this setting there is no “{place}” to run to</source>
            <extracomment>ui/model.py</extracomment>
            <translation>mit dieser Einstellung gibt es kein „{place}“, bis zu dem gelaufen werden kann</translation>
        </message>
        <message>
            <source>{file} is an engine, and the bench holds a magneto: open an installation, which has both, or see the engine with `magview engine {file}`</source>
            <extracomment>ui/opening.py</extracomment>
            <translation>{file} ist ein Motor, und der Prüftisch nimmt einen Magnetzünder auf: einen Einbau öffnen, der beides hat, oder den Motor mit `magview engine {file}` ansehen</translation>
        </message>
        <message>
            <source>{file} is a bench that the program keeps for itself and finds again after a crash; it is not to be opened</source>
            <extracomment>ui/opening.py</extracomment>
            <translation>{file} ist ein Prüftisch, den das Programm für sich ablegt und nach einem Absturz wiederfindet; er ist nicht zum Öffnen bestimmt</translation>
        </message>
        <message>
            <source>the magneto in this window</source>
            <extracomment>ui/own_field.py</extracomment>
            <translation>der Magnetzünder in diesem Fenster</translation>
        </message>
        <message>
            <source>the engine in this window</source>
            <extracomment>ui/own_field.py</extracomment>
            <translation>der Motor in diesem Fenster</translation>
        </message>
        <message>
            <source>where from?</source>
            <extracomment>ui/own_field.py</extracomment>
            <translation>woher?</translation>
        </message>
        <message>
            <source>Source of: {field}</source>
            <extracomment>ui/own_field.py</extracomment>
            <translation>Quelle von: {field}</translation>
        </message>
        <message>
            <source>page, instrument, who</source>
            <extracomment>ui/own_field.py</extracomment>
            <translation>Seite, Messmittel, Person</translation>
        </message>
        <message>
            <source>Note on the source of: {field}</source>
            <extracomment>ui/own_field.py</extracomment>
            <translation>Notiz zur Quelle von: {field}</translation>
        </message>
        <message>
            <source>Work it out</source>
            <extracomment>ui/own_field.py</extracomment>
            <translation>Ausrechnen</translation>
        </message>
        <message>
            <source>Refused: {sentence}</source>
            <extracomment>ui/own_field.py</extracomment>
            <translation>Abgelehnt: {sentence}</translation>
        </message>
        <message>
            <source>a file…</source>
            <extracomment>ui/own_field.py</extracomment>
            <translation>eine Datei…</translation>
        </message>
        <message>
            <source>May be left out.</source>
            <extracomment>ui/own_field.py</extracomment>
            <translation>Kann entfallen.</translation>
        </message>
        <message>
            <source>⚠ {sentence}.</source>
            <extracomment>ui/own_field.py, ui/own_pictures.py</extracomment>
            <translation>⚠ {sentence}.</translation>
        </message>
        <message>
            <source>{field} – still needed</source>
            <extracomment>ui/own_field.py</extracomment>
            <translation>{field} – noch nötig</translation>
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
            <translation>neu beginnen</translation>
        </message>
        <message>
            <source>Open a file of your own</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation>Eigene Datei öffnen</translation>
        </message>
        <message>
            <source>{file} is open.</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation>{file} ist offen.</translation>
        </message>
        <message>
            <source>Save</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation>Speichern</translation>
        </message>
        <message>
            <source>{file} is there already, and holds something else. Replace it?</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation>{file} gibt es schon, mit anderem Inhalt. Ersetzen?</translation>
        </message>
        <message>
            <source>&amp;Use this lift</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation>Diesen Hub &amp;verwenden</translation>
        </message>
        <message>
            <source>the bench's trials</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation>die Probeläufe des Prüftischs</translation>
        </message>
        <message>
            <source>Lift, rise and setting are filled in from the trials, marked measured.</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation>Hub, Anstieg und Einstellung sind aus den Probeläufen eingetragen, als gemessen markiert.</translation>
        </message>
        <message>
            <source>working out</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation>ausrechnen</translation>
        </message>
        <message>
            <source>opening {file}</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation>{file} öffnen</translation>
        </message>
        <message>
            <source>&amp;Replace it</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation>&amp;Ersetzen</translation>
        </message>
        <message>
            <source>&amp;Leave it</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation>&amp;Lassen</translation>
        </message>
        <message>
            <source>table {file}</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation>Tabelle {file}</translation>
        </message>
        <message>
            <source>there is no engine on the bench: open an installation there first</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation>auf dem Prüftisch ist kein Motor: erst dort einen Einbau öffnen</translation>
        </message>
        <message>
            <source>the lift from a table</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation>der Hub aus einer Tabelle</translation>
        </message>
        <message>
            <source>The lift is filled in from {file}, marked measured.</source>
            <extracomment>ui/own_files_work.py</extracomment>
            <translation>Der Hub ist aus {file} eingetragen, als gemessen markiert.</translation>
        </message>
        <message>
            <source>&amp;Open magneto, engine or installation…</source>
            <extracomment>ui/own_menus.py</extracomment>
            <translation>Magnetzünder, Motor oder Einbau &amp;öffnen…</translation>
        </message>
        <message>
            <source>&amp;Save</source>
            <extracomment>ui/own_menus.py</extracomment>
            <translation>&amp;Speichern</translation>
        </message>
        <message>
            <source>Undo</source>
            <extracomment>ui/own_menus.py</extracomment>
            <translation>Rückgängig</translation>
        </message>
        <message>
            <source>Redo</source>
            <extracomment>ui/own_menus.py</extracomment>
            <translation>Wiederholen</translation>
        </message>
        <message>
            <source>An engine comes to the bench with an installation</source>
            <extracomment>ui/own_menus.py</extracomment>
            <translation>Ein Motor kommt mit einem Einbau auf den Prüftisch</translation>
        </message>
        <message>
            <source>Put on the bench</source>
            <extracomment>ui/own_menus.py</extracomment>
            <translation>Auf den Prüftisch</translation>
        </message>
        <message>
            <source>a source</source>
            <extracomment>ui/own_model.py</extracomment>
            <translation>eine Quelle</translation>
        </message>
        <message>
            <source>Lift from a &amp;table…</source>
            <extracomment>ui/own_page.py</extracomment>
            <translation>Hub aus &amp;Tabelle…</translation>
        </message>
        <message>
            <source>Lift from the t&amp;rials</source>
            <extracomment>ui/own_page.py</extracomment>
            <translation>Hub aus P&amp;robeläufen</translation>
        </message>
        <message>
            <source>Angles and dial readings of one lobe become its lift, marked measured</source>
            <extracomment>ui/own_page.py</extracomment>
            <translation>Winkel und Messuhrwerte eines Nockens werden zu seinem Hub, als gemessen markiert</translation>
        </message>
        <message>
            <source>Lift, rise and setting as the trials noted on the bench tell them, marked measured</source>
            <extracomment>ui/own_page.py</extracomment>
            <translation>Hub, Anstieg und Einstellung laut den am Prüftisch notierten Probeläufen, als gemessen markiert</translation>
        </message>
        <message>
            <source>Dra&amp;wn</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation>Ge&amp;zeichnet</translation>
        </message>
        <message>
            <source>&amp;Compared</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation>&amp;Verglichen</translation>
        </message>
        <message>
            <source>What the draft comes to</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation>Was der Entwurf ergibt</translation>
        </message>
        <message>
            <source>Shipped file to compare with</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation>Mitgelieferte Vergleichsdatei</translation>
        </message>
        <message>
            <source>Fields that differ</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation>Abweichende Felder</translation>
        </message>
        <message>
            <source>Readings that differ</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation>Abweichende Werte</translation>
        </message>
        <message>
            <source>✓ Complete: drawn as designed to be set.</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation>✓ Vollständig: gezeichnet, wie die Einstellung gedacht ist.</translation>
        </message>
        <message>
            <source>Compared with “{name}”. Fields that differ: {differ}; given so far: {given} of {all}.</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation>Verglichen mit „{name}“. Abweichende Felder: {differ}; bisher angegeben: {given} von {all}.</translation>
        </message>
        <message>
            <source>Reading as designed</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation>Wert im Sollzustand</translation>
        </message>
        <message>
            <source>comes to</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation>ergibt</translation>
        </message>
        <message>
            <source>Field</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation>Feld</translation>
        </message>
        <message>
            <source>yours</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation>eigene</translation>
        </message>
        <message>
            <source>shipped</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation>mitgeliefert</translation>
        </message>
        <message>
            <source>The nearest shipped file</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation>Die nächstliegende mitgelieferte Datei</translation>
        </message>
        <message>
            <source>Drawn as it last was complete; what is missing or refused is marked at its field.</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation>Gezeichnet, wie zuletzt vollständig; was fehlt oder abgelehnt ist, ist am Feld markiert.</translation>
        </message>
        <message>
            <source>Nothing to draw yet: it is drawn once everything needed is there.</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation>Noch nichts zu zeichnen: gezeichnet wird, sobald alles Nötige da ist.</translation>
        </message>
        <message>
            <source>Nothing to compare yet.</source>
            <extracomment>ui/own_pictures.py</extracomment>
            <translation>Noch nichts zu vergleichen.</translation>
        </message>
        <message>
            <source>What you drafted is on the bench; Undo brings the former back.</source>
            <extracomment>ui/own_room.py</extracomment>
            <translation>Ihr Entwurf ist auf dem Prüftisch; „Rückgängig“ holt den vorigen zurück.</translation>
        </message>
        <message>
            <source>The drafts are as you left them.</source>
            <extracomment>ui/own_room.py</extracomment>
            <translation>Die Entwürfe sind, wie Sie sie verlassen haben.</translation>
        </message>
        <message>
            <source>The drafts cannot be kept for after a crash: {reason}</source>
            <extracomment>ui/own_room.py</extracomment>
            <translation>Die Entwürfe können nicht für den Fall eines Absturzes gesichert werden: {reason}</translation>
        </message>
        <message>
            <source>&amp;1 Magneto</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>&amp;1 Magnetzünder</translation>
        </message>
        <message>
            <source>&amp;2 Engine</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>&amp;2 Motor</translation>
        </message>
        <message>
            <source>&amp;3 Installation</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>&amp;3 Einbau</translation>
        </message>
        <message>
            <source>A magneto of your own – magview</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>Eigener Magnetzünder – magview</translation>
        </message>
        <message>
            <source>What is drafted</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>Was entworfen wird</translation>
        </message>
        <message>
            <source>Pages</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>Seiten</translation>
        </message>
        <message>
            <source>How far it has come</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>Wie weit es gediehen ist</translation>
        </message>
        <message>
            <source>Next o&amp;pen field</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>Nächstes &amp;offenes Feld</translation>
        </message>
        <message>
            <source>Go to the next field that is still needed, or refused</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>Zum nächsten noch nötigen oder abgelehnten Feld</translation>
        </message>
        <message>
            <source>Drafts</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>Entwürfe</translation>
        </message>
        <message>
            <source>Begin from</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>Beginnen mit</translation>
        </message>
        <message>
            <source>B&amp;egin</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>B&amp;eginnen</translation>
        </message>
        <message>
            <source>The draft becomes this one; Undo brings the former back</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>Der Entwurf wird zu diesem; „Rückgängig“ holt den vorigen zurück</translation>
        </message>
        <message>
            <source>What is on the bench</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>Was auf dem Prüftisch ist</translation>
        </message>
        <message>
            <source>Nothing: empty fields</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>Nichts: leere Felder</translation>
        </message>
        <message>
            <source>Still needed: {missing}
Refused: {refused}
Without a source: {bare}</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>Noch nötig: {missing}
Abgelehnt: {refused}
Ohne Quelle: {bare}</translation>
        </message>
        <message>
            <source>◂ &amp;Back</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>◂ &amp;Zurück</translation>
        </message>
        <message>
            <source>&amp;Next ▸</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>&amp;Weiter ▸</translation>
        </message>
        <message>
            <source>  Begin from </source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>  Beginnen mit </translation>
        </message>
        <message>
            <source>   Lengths in </source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>   Längen in </translation>
        </message>
        <message>
            <source>{magneto}, mounted {side}</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>{magneto}, angebaut {side}</translation>
        </message>
        <message>
            <source>⚠ {page}: {count} refused</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>⚠ {page}: {count} abgelehnt</translation>
        </message>
        <message>
            <source>{page}: {count} needed</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>{page}: {count} nötig</translation>
        </message>
        <message>
            <source>✓ {page}</source>
            <extracomment>ui/own_window.py</extracomment>
            <translation>✓ {page}</translation>
        </message>
        <message>
            <source>&amp;Internal</source>
            <extracomment>ui/panes.py</extracomment>
            <translation>&amp;Innen</translation>
        </message>
        <message>
            <source>Internal timing</source>
            <extracomment>ui/panes.py, ui/uncertainty_panel.py</extracomment>
            <translation>Innere Einstellung</translation>
        </message>
        <message>
            <source>En&amp;gine</source>
            <extracomment>ui/panes.py</extracomment>
            <translation>&amp;Motor</translation>
        </message>
        <message>
            <source>&amp;Lead</source>
            <extracomment>ui/panes.py</extracomment>
            <translation>&amp;Leitung</translation>
        </message>
        <message>
            <source>&amp;Trials</source>
            <extracomment>ui/panes.py</extracomment>
            <translation>Ve&amp;rsuche</translation>
        </message>
        <message>
            <source>Trials, and what to try next</source>
            <extracomment>ui/panes.py</extracomment>
            <translation>Versuche, und was als Nächstes zu probieren ist</translation>
        </message>
        <message>
            <source>Unce&amp;rtainty</source>
            <extracomment>ui/panes.py</extracomment>
            <translation>&amp;Unsicherheit</translation>
        </message>
        <message>
            <source>&amp;Wear</source>
            <extracomment>ui/panes.py</extracomment>
            <translation>&amp;Verschleiß</translation>
        </message>
        <message>
            <source>Wear and drift</source>
            <extracomment>ui/panes.py</extracomment>
            <translation>Verschleiß und Drift</translation>
        </message>
        <message>
            <source>Point at a move to see where it brings the marks; choose one to step through it.</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation>Auf einen Schritt zeigen, um zu sehen, wohin er die Marken bringt; einen wählen, um ihn durchzugehen.</translation>
        </message>
        <message>
            <source>The move is made. Check the marks, tighten, and read the lamp again, approaching with rotation; enter what it says as the new reading.</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation>Der Schritt ist getan. Marken prüfen, festziehen und die Lampe erneut ablesen, in Drehrichtung angefahren; das Ergebnis als neue Ablesung eingeben.</translation>
        </message>
        <message>
            <source>1 single step to go.</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation>Noch 1 Einzelschritt.</translation>
        </message>
        <message>
            <source>{steps} single steps to go.</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation>Noch {steps} Einzelschritte.</translation>
        </message>
        <message>
            <source>Moves that would put it right, best first</source>
            <extracomment>ui/plan_box.py, ui/timing_panel.py</extracomment>
            <translation>Schritte, die es richten würden, beste zuerst</translation>
        </message>
        <message>
            <source>Moves of the coupling, best first</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation>Schritte der Kupplung, beste zuerst</translation>
        </message>
        <message>
            <source>Move the ne&amp;xt tooth</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation>Nächsten &amp;Zahn versetzen</translation>
        </message>
        <message>
            <source>Pri&amp;nt the plan</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation>Plan &amp;drucken</translation>
        </message>
        <message>
            <source>The chosen move, or the first, on one page: drawings, single steps to be ticked</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation>Der gewählte Schritt oder der erste auf einer Seite: Zeichnungen, Einzelschritte zum Abhaken</translation>
        </message>
        <message>
            <source>Teeth of the magneto flange on the disc, and of the disc on the drive flange, from as found; with rotation is {along}, against is {against} seen from the drive end.</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation>Zähne des Magnetzünderflansches auf der Scheibe und der Scheibe auf dem Antriebsflansch, ab Vorfund; in Drehrichtung heißt {along}, dagegen {against}, von der Antriebsseite gesehen.</translation>
        </message>
        <message>
            <source>Flange</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation>Flansch</translation>
        </message>
        <message>
            <source>Fires at</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation>Zündet bei</translation>
        </message>
        <message>
            <source>There is no reading to plan from.</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation>Es gibt keine Ablesung, von der aus zu planen wäre.</translation>
        </message>
        <message>
            <source>{first} or {second}</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation>{first} oder {second}</translation>
        </message>
        <message>
            <source>✗ Nothing reaches it within tolerance: {outside}. The nearest two: {nearest}.</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation>✗ Nichts erreicht es in der Toleranz: {outside}. Die zwei nächsten: {nearest}.</translation>
        </message>
        <message>
            <source>Magneto flange {teeth}</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation>Magnetzünderflansch {teeth}</translation>
        </message>
        <message>
            <source>✓ The first is within ±{tolerance}° of crank.</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation>✓ Der erste liegt innerhalb ±{tolerance}° Kurbel.</translation>
        </message>
        <message>
            <source>By the present reading the first would come within ±{tolerance}° of crank; set the contacts first, read the lamp again, then plan.</source>
            <extracomment>ui/plan_box.py</extracomment>
            <translation>Nach der jetzigen Ablesung käme der erste innerhalb ±{tolerance}° Kurbel; erst die Kontakte einstellen, die Lampe erneut ablesen, dann planen.</translation>
        </message>
        <message>
            <source>Uncertainty budget</source>
            <extracomment>ui/plot_budget.py</extracomment>
            <translation>Unsicherheitsbudget</translation>
        </message>
        <message>
            <source>{name}: {share} of the variance; {source}</source>
            <extracomment>ui/plot_budget.py</extracomment>
            <translation>{name}: {share} der Varianz; {source}</translation>
        </message>
        <message>
            <source>share of the variance [%]</source>
            <extracomment>ui/plot_budget.py</extracomment>
            <translation>Anteil an der Varianz [%]</translation>
        </message>
        <message>
            <source>how often, per unit</source>
            <extracomment>ui/plot_budget.py</extracomment>
            <translation>Häufigkeit je Einheit</translation>
        </message>
        <message>
            <source>Quantity whose budget is shown</source>
            <extracomment>ui/plot_budget.py</extracomment>
            <translation>Größe, deren Budget gezeigt wird</translation>
        </message>
        <message>
            <source>Nothing is judged yet.</source>
            <extracomment>ui/plot_budget.py</extracomment>
            <translation>Noch nichts beurteilt.</translation>
        </message>
        <message>
            <source>Choose readings and instruments on the Uncertainty page.</source>
            <extracomment>ui/plot_budget.py</extracomment>
            <translation>Ablesungen und Messmittel auf der Seite „Unsicherheit“ wählen.</translation>
        </message>
        <message>
            <source>linear</source>
            <extracomment>ui/plot_budget.py</extracomment>
            <translation>linear</translation>
        </message>
        <message>
            <source>Monte Carlo</source>
            <extracomment>ui/plot_budget.py</extracomment>
            <translation>Monte Carlo</translation>
        </message>
        <message>
            <source>&amp;Quantity</source>
            <extracomment>ui/plot_budget.py</extracomment>
            <translation>&amp;Größe</translation>
        </message>
        <message>
            <source>rotor {rotor}: {torque} N m with rotation</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>Rotor {rotor}: {torque} N m in Drehrichtung</translation>
        </message>
        <message>
            <source>rotor {rotor}: {torque} N m against rotation</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>Rotor {rotor}: {torque} N m gegen die Drehrichtung</translation>
        </message>
        <message>
            <source>Let go, the rotor swings on, with rotation, {angle} to neutral.</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>Losgelassen schwingt der Rotor weiter, in Drehrichtung, {angle} bis zur Neutralstellung.</translation>
        </message>
        <message>
            <source>Let go, the rotor swings back, against rotation, {angle} to neutral.</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>Losgelassen schwingt der Rotor zurück, gegen die Drehrichtung, {angle} bis zur Neutralstellung.</translation>
        </message>
        <message>
            <source>Let go, off the engine, the rotor swings on, with rotation, {angle} to neutral.</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>Losgelassen und abgebaut schwingt der Rotor weiter, in Drehrichtung, {angle} bis zur Neutralstellung.</translation>
        </message>
        <message>
            <source>Let go, off the engine, the rotor swings back, against rotation, {angle} to neutral.</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>Losgelassen und abgebaut schwingt der Rotor zurück, gegen die Drehrichtung, {angle} bis zur Neutralstellung.</translation>
        </message>
        <message>
            <source>rotor past neutral [deg]</source>
            <extracomment>ui/plot_coil.py, ui/plot_lift.py</extracomment>
            <translation>Rotor nach Neutralstellung [Grad]</translation>
        </message>
        <message>
            <source>rotor {rotor}: flux {flux} mWb (static {static}), current {current} A</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>Rotor {rotor}: Fluss {flux} mWb (statisch {static}), Strom {current} A</translation>
        </message>
        <message>
            <source>At {rpm} turns a minute the present opening leaves {now} mJ, the E-gap {at} mJ.</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>Bei {rpm} Umdrehungen je Minute lässt die jetzige Öffnung {now} mJ, das E-Gap {at} mJ.</translation>
        </message>
        <message>
            <source>core flux [mWb]</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>Kernfluss [mWb]</translation>
        </message>
        <message>
            <source>primary current [A]</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>Primärstrom [A]</translation>
        </message>
        <message>
            <source>energy at opening [mJ]</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>Energie bei Öffnung [mJ]</translation>
        </message>
        <message>
            <source>best here</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>hier am besten</translation>
        </message>
        <message>
            <source>Speed of the rotor</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>Drehzahl des Rotors</translation>
        </message>
        <message>
            <source>From turning by hand to full speed</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>Vom Drehen von Hand bis zur vollen Drehzahl</translation>
        </message>
        <message>
            <source>opening {angle} from the E-gap leaves {energy} mJ</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>Öffnung {angle} vom E-Gap lässt {energy} mJ</translation>
        </message>
        <message>
            <source>There is no coil to show, or the contacts never work.</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>Es gibt keine Spule zu zeigen, oder die Kontakte arbeiten nie.</translation>
        </message>
        <message>
            <source>torque with rotation [N m]</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>Drehmoment in Drehrichtung [N m]</translation>
        </message>
        <message>
            <source>This magneto's file gives no pull.</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>Die Datei dieses Magnetzünders nennt kein Rastmoment.</translation>
        </message>
        <message>
            <source>The rotor stands at neutral: it stays there by itself.</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>Der Rotor steht in der Neutralstellung: Dort bleibt er von selbst.</translation>
        </message>
        <message>
            <source>This magneto's file gives no coil.</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>Die Datei dieses Magnetzünders nennt keine Spule.</translation>
        </message>
        <message>
            <source>resultant</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>resultierend</translation>
        </message>
        <message>
            <source>static</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>statisch</translation>
        </message>
        <message>
            <source>Rotor speed</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>Rotordrehzahl</translation>
        </message>
        <message>
            <source>now {energy} mJ</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>jetzt {energy} mJ</translation>
        </message>
        <message>
            <source>rests: neutral</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>ruht: Neutralstellung</translation>
        </message>
        <message>
            <source>balances but does not rest: full register</source>
            <extracomment>ui/plot_coil.py</extracomment>
            <translation>Gleichgewicht, aber keine Ruhe: volle Deckung</translation>
        </message>
        <message>
            <source>{fires} BTDC, {off} early: magneto flange {magneto}, disc {disc}</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation>{fires} vor OT, {off} früh: Magnetzünderflansch {magneto}, Scheibe {disc}</translation>
        </message>
        <message>
            <source>{fires} BTDC, {off} late: magneto flange {magneto}, disc {disc}</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation>{fires} vor OT, {off} spät: Magnetzünderflansch {magneto}, Scheibe {disc}</translation>
        </message>
        <message>
            <source>{moves} timings near the wanted one; the nearest: {nearest}.</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation>{moves} Zündzeitpunkte nahe dem gewünschten; der nächste: {nearest}.</translation>
        </message>
        <message>
            <source>fires [crank deg BTDC], earlier to the right</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation>zündet [Kurbelgrad vor OT], rechts früher</translation>
        </message>
        <message>
            <source>teeth moved, both faces</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation>versetzte Zähne, beide Seiten</translation>
        </message>
        <message>
            <source>now</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation>jetzt</translation>
        </message>
        <message>
            <source>wanted {wanted} ± {tolerance}°</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation>Soll {wanted} ± {tolerance}°</translation>
        </message>
        <message>
            <source>No timing can be planned.</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation>Es lässt sich kein Zündzeitpunkt planen.</translation>
        </message>
        <message>
            <source>What if the disc had other teeth: the installation stays as it is</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation>Was wäre, wenn die Scheibe andere Zähnezahlen hätte: Der Einbau bleibt, wie er ist</translation>
        </message>
        <message>
            <source>This magneto is not on an engine: open an installation.</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation>Dieser Magnetzünder sitzt an keinem Motor: einen Einbau öffnen.</translation>
        </message>
        <message>
            <source>The contacts never open and close: there is no timing to plan from.</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation>Die Kontakte öffnen und schließen nie: kein Zündzeitpunkt, von dem aus zu planen wäre.</translation>
        </message>
        <message>
            <source>nearest</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation>nächster</translation>
        </message>
        <message>
            <source>Teeth at the magneto, what if</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation>Zähne am Magnetzünder, angenommen</translation>
        </message>
        <message>
            <source>Teeth at the drive, what if</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation>Zähne am Antrieb, angenommen</translation>
        </message>
        <message>
            <source>now, nearest</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation>jetzt, nächster</translation>
        </message>
        <message>
            <source>Teeth: magneto</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation>Zähne: Magnetzünder</translation>
        </message>
        <message>
            <source>drive</source>
            <extracomment>ui/plot_coupling.py</extracomment>
            <translation>Antrieb</translation>
        </message>
        <message>
            <source>present</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>jetzt</translation>
        </message>
        <message>
            <source>designed</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>Sollzustand</translation>
        </message>
        <message>
            <source>before</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>vorher</translation>
        </message>
        <message>
            <source>Lift and gap</source>
            <extracomment>ui/plot_lift.py, ui/plot_pane.py</extracomment>
            <translation>Hub und Abstand</translation>
        </message>
        <message>
            <source>rotor {rotor}: lift {lift}, {what}</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>Rotor {rotor}: Hub {lift}, {what}</translation>
        </message>
        <message>
            <source>Contacts open at {opens} and close at {closes} of rotor; largest gap {max_gap}.</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>Kontakte öffnen bei {opens} und schließen bei {closes} am Rotor; größter Abstand {max_gap}.</translation>
        </message>
        <message>
            <source>lobe {lobe}: {opens}, largest gap {max_gap}</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>Nocken {lobe}: {opens}, größter Abstand {max_gap}</translation>
        </message>
        <message>
            <source>{good} of {lobes} lobes have their largest gap within limits.</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>{good} von {lobes} Nocken haben ihren größten Abstand in den Grenzen.</translation>
        </message>
        <message>
            <source>gap [mm]</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>Abstand [mm]</translation>
        </message>
        <message>
            <source>contact lift [{unit}]</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>Kontakthub [{unit}]</translation>
        </message>
        <message>
            <source>gap [{unit}]</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>Abstand [{unit}]</translation>
        </message>
        <message>
            <source>stop: contacts touch</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>Anschlag: Kontakte berühren sich</translation>
        </message>
        <message>
            <source>limits of the largest gap</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>Grenzen des größten Abstands</translation>
        </message>
        <message>
            <source>gap {gap}</source>
            <extracomment>ui/plot_lift.py, ui/plot_window.py</extracomment>
            <translation>Abstand {gap}</translation>
        </message>
        <message>
            <source>closed</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>geschlossen</translation>
        </message>
        <message>
            <source>at the mark: judged on lobe 1</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>an der Marke: an Nocken 1 beurteilt</translation>
        </message>
        <message>
            <source>at the mark</source>
            <extracomment>ui/plot_lift.py, ui/trials_panel.py</extracomment>
            <translation>an der Marke</translation>
        </message>
        <message>
            <source>limits</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>Grenzen</translation>
        </message>
        <message>
            <source>never works the contacts</source>
            <extracomment>ui/plot_lift.py, ui/plot_window.py</extracomment>
            <translation>betätigt die Kontakte nie</translation>
        </message>
        <message>
            <source>{error} from its place</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>{error} von seiner Stelle</translation>
        </message>
        <message>
            <source>The contacts never open on lobe 1.</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>Die Kontakte öffnen an Nocken 1 nie.</translation>
        </message>
        <message>
            <source>The contacts never close.</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>Die Kontakte schließen nie.</translation>
        </message>
        <message>
            <source>lobe, in firing order</source>
            <extracomment>ui/plot_lift.py</extracomment>
            <translation>Nocken, in Zündfolge</translation>
        </message>
        <message>
            <source>Window</source>
            <extracomment>ui/plot_pane.py</extracomment>
            <translation>Fenster</translation>
        </message>
        <message>
            <source>Magnet</source>
            <extracomment>ui/plot_pane.py</extracomment>
            <translation>Magnet</translation>
        </message>
        <message>
            <source>Wear</source>
            <extracomment>ui/plot_pane.py, ui/plot_wear.py</extracomment>
            <translation>Verschleiß</translation>
        </message>
        <message>
            <source>The plots are coming…</source>
            <extracomment>ui/plot_pane.py</extracomment>
            <translation>Die Diagramme kommen…</translation>
        </message>
        <message>
            <source>SVG (*.svg);;PNG (*.png);;Values as CSV (*.csv)</source>
            <extracomment>ui/plot_sheet.py</extracomment>
            <translation>SVG (*.svg);;PNG (*.png);;Werte als CSV (*.csv)</translation>
        </message>
        <message>
            <source>Values under the pointer</source>
            <extracomment>ui/plot_sheet.py</extracomment>
            <translation>Werte unter dem Zeiger</translation>
        </message>
        <message>
            <source>Copy the plots as a picture</source>
            <extracomment>ui/plot_sheet.py</extracomment>
            <translation>Die Diagramme als Bild kopieren</translation>
        </message>
        <message>
            <source>Save the plots as SVG or PNG, or their values as CSV</source>
            <extracomment>ui/plot_sheet.py</extracomment>
            <translation>Die Diagramme als SVG oder PNG oder ihre Werte als CSV speichern</translation>
        </message>
        <message>
            <source>The plots are copied.</source>
            <extracomment>ui/plot_sheet.py</extracomment>
            <translation>Die Diagramme sind kopiert.</translation>
        </message>
        <message>
            <source>Cop&amp;y</source>
            <extracomment>ui/plot_sheet.py</extracomment>
            <translation>&amp;Kopieren</translation>
        </message>
        <message>
            <source>Save…</source>
            <extracomment>ui/plot_sheet.py</extracomment>
            <translation>Speichern…</translation>
        </message>
        <message>
            <source>there are no values to save here</source>
            <extracomment>ui/plot_sheet.py</extracomment>
            <translation>hier gibt es keine Werte zu speichern</translation>
        </message>
        <message>
            <source>{name}: plots are saved as .svg or .png, their values as .csv</source>
            <extracomment>ui/plot_sheet.py</extracomment>
            <translation>{name}: Diagramme werden als .svg oder .png gespeichert, ihre Werte als .csv</translation>
        </message>
        <message>
            <source>{name}: the picture could not be saved</source>
            <extracomment>ui/plot_sheet.py</extracomment>
            <translation>{name}: Das Bild ließ sich nicht speichern</translation>
        </message>
        <message>
            <source>plate {plate}: expect {gap}, 19 times in 20 between {low} and {high}</source>
            <extracomment>ui/plot_trials.py</extracomment>
            <translation>Platte {plate}: erwartet {gap}, 19-mal von 20 zwischen {low} und {high}</translation>
        </message>
        <message>
            <source>backplate, positive with rotation [deg]</source>
            <extracomment>ui/plot_trials.py, ui/plot_window.py</extracomment>
            <translation>Grundplatte, positiv in Drehrichtung [Grad]</translation>
        </message>
        <message>
            <source>here: done</source>
            <extracomment>ui/plot_trials.py</extracomment>
            <translation>hier: fertig</translation>
        </message>
        <message>
            <source>next</source>
            <extracomment>ui/plot_trials.py</extracomment>
            <translation>nächster</translation>
        </message>
        <message>
            <source>through the trials</source>
            <extracomment>ui/plot_trials.py</extracomment>
            <translation>durch die Probeläufe</translation>
        </message>
        <message>
            <source>as the file has it</source>
            <extracomment>ui/plot_trials.py</extracomment>
            <translation>laut Datei</translation>
        </message>
        <message>
            <source>19 times in 20</source>
            <extracomment>ui/plot_trials.py</extracomment>
            <translation>19-mal von 20</translation>
        </message>
        <message>
            <source>running hours from now [h]</source>
            <extracomment>ui/plot_wear.py</extracomment>
            <translation>Betriebsstunden ab jetzt [h]</translation>
        </message>
        <message>
            <source>next inspection</source>
            <extracomment>ui/plot_wear.py</extracomment>
            <translation>nächste Prüfung</translation>
        </message>
        <message>
            <source>true gap</source>
            <extracomment>ui/plot_wear.py</extracomment>
            <translation>wahrer Abstand</translation>
        </message>
        <message>
            <source>what a blade finds</source>
            <extracomment>ui/plot_wear.py</extracomment>
            <translation>was eine Lehre findet</translation>
        </message>
        <message>
            <source>Adjustment window</source>
            <extracomment>ui/plot_window.py</extracomment>
            <translation>Einstellfenster</translation>
        </message>
        <message>
            <source>plate {plate}, screw {screw}: {opens}, largest gap {gap}</source>
            <extracomment>ui/plot_window.py</extracomment>
            <translation>Platte {plate}, Schraube {screw}: {opens}, größter Abstand {gap}</translation>
        </message>
        <message>
            <source>You are at {place}.</source>
            <extracomment>ui/plot_window.py</extracomment>
            <translation>Sie sind bei {place}.</translation>
        </message>
        <message>
            <source>contact screw [deg]</source>
            <extracomment>ui/plot_window.py</extracomment>
            <translation>Kontaktschraube [Grad]</translation>
        </message>
        <message>
            <source>Heel wear</source>
            <extracomment>ui/plot_window.py</extracomment>
            <translation>Gleitstückverschleiß</translation>
        </message>
        <message>
            <source>Wear the heel and see the window move: what is set now opens later, with a smaller gap</source>
            <extracomment>ui/plot_window.py</extracomment>
            <translation>Das Gleitstück verschleißen und das Fenster wandern sehen: Was jetzt eingestellt ist, öffnet später, mit kleinerem Abstand</translation>
        </message>
        <message>
            <source>(no heel arm in the file)</source>
            <extracomment>ui/plot_window.py</extracomment>
            <translation>(keine Hebellänge des Gleitstücks in der Datei)</translation>
        </message>
        <message>
            <source>opens {off} late</source>
            <extracomment>ui/plot_window.py</extracomment>
            <translation>öffnet {off} spät</translation>
        </message>
        <message>
            <source>opens {off} early</source>
            <extracomment>ui/plot_window.py</extracomment>
            <translation>öffnet {off} früh</translation>
        </message>
        <message>
            <source>Heel worn</source>
            <extracomment>ui/plot_window.py</extracomment>
            <translation>Gleitstück verschlissen</translation>
        </message>
        <message>
            <source>kept in the attempt's file</source>
            <extracomment>ui/practice_choice.py</extracomment>
            <translation>in der Versuchsdatei festgehalten</translation>
        </message>
        <message>
            <source>left empty: drawn at random; the same code gives the same faults</source>
            <extracomment>ui/practice_choice.py</extracomment>
            <translation>leer gelassen: zufällig gezogen; derselbe Code ergibt dieselben Fehler</translation>
        </message>
        <message>
            <source>Lessons</source>
            <extracomment>ui/practice_choice.py</extracomment>
            <translation>Lektionen</translation>
        </message>
        <message>
            <source>New exercise</source>
            <extracomment>ui/practice_choice.py</extracomment>
            <translation>Neue Übung</translation>
        </message>
        <message>
            <source>&amp;Trainee</source>
            <extracomment>ui/practice_choice.py</extracomment>
            <translation>&amp;Lernende(r)</translation>
        </message>
        <message>
            <source>{steps} steps.</source>
            <extracomment>ui/practice_choice.py</extracomment>
            <translation>{steps} Schritte.</translation>
        </message>
        <message>
            <source>About {minutes} minutes.</source>
            <extracomment>ui/practice_choice.py</extracomment>
            <translation>Etwa {minutes} Minuten.</translation>
        </message>
        <message>
            <source>&amp;2 Tray</source>
            <extracomment>ui/practice_controls.py</extracomment>
            <translation>&amp;2 Ablage</translation>
        </message>
        <message>
            <source>&amp;3 Work</source>
            <extracomment>ui/practice_controls.py</extracomment>
            <translation>&amp;3 Arbeit</translation>
        </message>
        <message>
            <source>&amp;4 Notebook</source>
            <extracomment>ui/practice_controls.py</extracomment>
            <translation>&amp;4 Notizbuch</translation>
        </message>
        <message>
            <source>{part}: by how much</source>
            <extracomment>ui/practice_controls.py</extracomment>
            <translation>{part}: um wie viel</translation>
        </message>
        <message>
            <source>With Shift a tenth of the amount, with Alt ten times</source>
            <extracomment>ui/practice_controls.py</extracomment>
            <translation>Mit Umschalt ein Zehntel des Betrags, mit Alt das Zehnfache</translation>
        </message>
        <message>
            <source>Drag rotor, backplate and contact screw in the picture, or take one in hand with 1, 2, 3 and turn it with the arrow keys or the wheel: finer with Shift. Everything else is a button at the right; Alt and the underlined letter reaches it, Alt with 1 to 4 the tabs. Nothing here shows a true value: read the instruments. There is no undo.</source>
            <extracomment>ui/practice_menus.py</extracomment>
            <translation>Rotor, Grundplatte und Kontaktschraube im Bild ziehen oder mit 1, 2, 3 in die Hand nehmen und mit Pfeiltasten oder Rad drehen: feiner mit Umschalt. Alles andere ist eine Schaltfläche rechts; Alt und der unterstrichene Buchstabe erreicht sie, Alt mit 1 bis 4 die Reiter. Nichts zeigt hier einen wahren Wert: Lesen Sie die Messmittel ab. Es gibt kein Rückgängig.</translation>
        </message>
        <message>
            <source>Save picture of the contacts…</source>
            <extracomment>ui/practice_menus.py</extracomment>
            <translation>Bild der Kontakte speichern…</translation>
        </message>
        <message>
            <source>&amp;Save attempt as…</source>
            <extracomment>ui/practice_menus.py</extracomment>
            <translation>Versuch &amp;speichern unter…</translation>
        </message>
        <message>
            <source>&amp;Hand in…</source>
            <extracomment>ui/practice_menus.py</extracomment>
            <translation>&amp;Abgeben…</translation>
        </message>
        <message>
            <source>Save &amp;debrief…</source>
            <extracomment>ui/practice_menus.py</extracomment>
            <translation>&amp;Nachbesprechung speichern…</translation>
        </message>
        <message>
            <source>Practice</source>
            <extracomment>ui/practice_menus.py</extracomment>
            <translation>Übung</translation>
        </message>
        <message>
            <source>Atte&amp;mpt</source>
            <extracomment>ui/practice_menus.py</extracomment>
            <translation>&amp;Versuch</translation>
        </message>
        <message>
            <source>put a hand on the propeller first, and treat it as live: nobody else in its arc</source>
            <extracomment>ui/practice_model.py</extracomment>
            <translation>zuerst eine Hand an den Propeller legen und ihn als scharf behandeln: niemand sonst in seinem Kreis</translation>
        </message>
        <message>
            <source>this is a replay: nothing in it can be changed</source>
            <extracomment>ui/practice_model.py</extracomment>
            <translation>dies ist eine Wiedergabe: Nichts daran lässt sich ändern</translation>
        </message>
        <message>
            <source>Straightedge past the mark as the contacts open</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>Lineal hinter der Marke, wenn die Kontakte öffnen</translation>
        </message>
        <message>
            <source>Disc reads at top dead centre</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>Scheibe zeigt im oberen Totpunkt</translation>
        </message>
        <message>
            <source>Remark</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>Bemerkung</translation>
        </message>
        <message>
            <source>short inside the magneto</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>Kurzschluss im Magnetzünder</translation>
        </message>
        <message>
            <source>spring tab does not touch</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>Federzunge berührt nicht</translation>
        </message>
        <message>
            <source>such as 0.8 mm or −30 thou; short of it: with a minus</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>etwa 0.8 mm oder −30 thou; davor: mit Minus</translation>
        </message>
        <message>
            <source>such as 0.33 mm or 13 thou</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>such as 25.5°</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>etwa 25.5°</translation>
        </message>
        <message>
            <source>such as −3.25°; after the zero: with a minus</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>etwa −3.25°; hinter der Null: mit Minus</translation>
        </message>
        <message>
            <source>one line</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>eine Zeile</translation>
        </message>
        <message>
            <source>Write down</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>Aufschreiben</translation>
        </message>
        <message>
            <source>What is wrong with the entry</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>Was an der Eingabe falsch ist</translation>
        </message>
        <message>
            <source>Writ&amp;e it down</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>Aufschr&amp;eiben</translation>
        </message>
        <message>
            <source>Wha&amp;t</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>&amp;Was</translation>
        </message>
        <message>
            <source>Ma&amp;gneto</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>Ma&amp;gnetzünder</translation>
        </message>
        <message>
            <source>Lo&amp;be</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>&amp;Nocken</translation>
        </message>
        <message>
            <source>&amp;Reading</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>Ab&amp;lesung</translation>
        </message>
        <message>
            <source>&amp;Finding</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>&amp;Befund</translation>
        </message>
        <message>
            <source>Notebook</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>Notizbuch</translation>
        </message>
        <message>
            <source>“{text}” is not a lobe: write a whole number from 1 to {lobes} here, and the reading below</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>„{text}“ ist kein Nocken: hier eine ganze Zahl von 1 bis {lobes} schreiben, den Messwert darunter</translation>
        </message>
        <message>
            <source>Left magneto</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>Linker Magnetzünder</translation>
        </message>
        <message>
            <source>Right magneto</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>Rechter Magnetzünder</translation>
        </message>
        <message>
            <source>there is nothing to write down yet</source>
            <extracomment>ui/practice_notebook.py</extracomment>
            <translation>es gibt noch nichts aufzuschreiben</translation>
        </message>
        <message>
            <source>Attempts (*.json);;All files (*)</source>
            <extracomment>ui/practice_room.py</extracomment>
            <translation>Versuche (*.json);;Alle Dateien (*)</translation>
        </message>
        <message>
            <source>Open an attempt</source>
            <extracomment>ui/practice_room.py</extracomment>
            <translation>Einen Versuch öffnen</translation>
        </message>
        <message>
            <source>An attempt at “{name}” was under way when the program ended.</source>
            <extracomment>ui/practice_room.py</extracomment>
            <translation>Ein Versuch an „{name}“ war im Gang, als das Programm endete.</translation>
        </message>
        <message>
            <source>&amp;Go on with it</source>
            <extracomment>ui/practice_room.py</extracomment>
            <translation>&amp;Fortsetzen</translation>
        </message>
        <message>
            <source>&amp;Discard it</source>
            <extracomment>ui/practice_room.py</extracomment>
            <translation>&amp;Verwerfen</translation>
        </message>
        <message>
            <source>Treat the propeller as live: switch off and its lead proved, plugs out, wheels chocked, nobody in its arc.</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>Behandeln Sie den Propeller als scharf: Schalter aus und seine Leitung nachgewiesen, Kerzen heraus, Räder verkeilt, niemand in seinem Kreis.</translation>
        </message>
        <message>
            <source>by so much</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>um so viel</translation>
        </message>
        <message>
            <source>until lamp changes</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>bis Lampe wechselt</translation>
        </message>
        <message>
            <source>until edge in line</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>bis Kante fluchtet</translation>
        </message>
        <message>
            <source>until widest open</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>bis weiteste Öffnung</translation>
        </message>
        <message>
            <source>until piston stops</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>bis Kolben anschlägt</translation>
        </message>
        <message>
            <source>to a disc reading</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>bis Scheibenwert</translation>
        </message>
        <message>
            <source>propeller by so much</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>Propeller um so viel</translation>
        </message>
        <message>
            <source>Timing lamp</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>Prüflampe</translation>
        </message>
        <message>
            <source>What you see</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>Was Sie sehen</translation>
        </message>
        <message>
            <source>Turning</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>Drehen</translation>
        </message>
        <message>
            <source>Hol&amp;d the rotor</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>Rotor &amp;halten</translation>
        </message>
        <message>
            <source>How far to turn</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>Wie weit drehen</translation>
        </message>
        <message>
            <source>By how many degrees, or to which reading before the disc's zero</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>Um wie viel Grad, oder bis zu welchem Wert vor der Null der Scheibe</translation>
        </message>
        <message>
            <source>Hand on the &amp;propeller</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>Hand an den &amp;Propeller</translation>
        </message>
        <message>
            <source>Lamp</source>
            <extracomment>ui/practice_sight.py, lessons/a-full-job.json</extracomment>
            <translation>Lampe</translation>
        </message>
        <message>
            <source>Finger</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>Finger</translation>
        </message>
        <message>
            <source>Magneto in view</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>Gezeigter Magnetzünder</translation>
        </message>
        <message>
            <source>◀ &amp;Against</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>◀ &amp;Gegen</translation>
        </message>
        <message>
            <source>&amp;With ▶</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>&amp;Mit ▶</translation>
        </message>
        <message>
            <source>Turn against rotation</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>Gegen die Drehrichtung drehen</translation>
        </message>
        <message>
            <source>Turn with rotation</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>In Drehrichtung drehen</translation>
        </message>
        <message>
            <source>{way}; by so much: with Shift a tenth of it, with Alt ten times</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>{way}; um so viel: mit Umschalt ein Zehntel davon, mit Alt das Zehnfache</translation>
        </message>
        <message>
            <source>Turning the propeller</source>
            <extracomment>ui/practice_sight.py</extracomment>
            <translation>Den Propeller drehen</translation>
        </message>
        <message>
            <source>About {minutes} minutes. Time is a guide and is not marked.</source>
            <extracomment>ui/practice_task.py</extracomment>
            <translation>Etwa {minutes} Minuten. Die Zeit ist ein Anhalt und wird nicht bewertet.</translation>
        </message>
        <message>
            <source>No more hints</source>
            <extracomment>ui/practice_task.py</extracomment>
            <translation>Keine Hinweise mehr</translation>
        </message>
        <message>
            <source>A hi&amp;nt ({left} left)</source>
            <extracomment>ui/practice_task.py</extracomment>
            <translation>Ein Hi&amp;nweis (noch {left})</translation>
        </message>
        <message>
            <source>Another hi&amp;nt ({left} left)</source>
            <extracomment>ui/practice_task.py</extracomment>
            <translation>Noch ein Hi&amp;nweis (noch {left})</translation>
        </message>
        <message>
            <source>{percent} % are needed, and no dangerous act. Right, and proved by instruments since the last act that could have changed it, counts whole; right but not proved, half.</source>
            <extracomment>ui/practice_task.py</extracomment>
            <translation>{percent} % sind nötig und keine gefährliche Handlung. Richtig und mit Messmitteln nachgewiesen seit der letzten Handlung, die es hätte ändern können, zählt ganz; richtig, aber nicht nachgewiesen, halb.</translation>
        </message>
        <message>
            <source>Set of blades</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>Lehrensatz</translation>
        </message>
        <message>
            <source>Straightedge, marks of {divisions}</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>Lineal, Striche von {divisions}</translation>
        </message>
        <message>
            <source>Laid along the &amp;step</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>An die &amp;Stufe gelegt</translation>
        </message>
        <message>
            <source>Look s&amp;quare over it</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>&amp;Gerade darüber blicken</translation>
        </message>
        <message>
            <source>From where the eye looks over the straightedge</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>Von wo das Auge über das Lineal blickt</translation>
        </message>
        <message>
            <source>Behind, square over the edge, ahead</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>Dahinter, gerade über der Kante, davor</translation>
        </message>
        <message>
            <source>Electrical</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>Elektrisch</translation>
        </message>
        <message>
            <source>Crank</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>Kurbel</translation>
        </message>
        <message>
            <source>Th&amp;umb over No. 1's plug hole</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>&amp;Daumen auf das Kerzenloch von Nr. 1</translation>
        </message>
        <message>
            <source>&amp;Try them</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>&amp;Probieren</translation>
        </message>
        <message>
            <source>Put &amp;back</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>&amp;Zurücklegen</translation>
        </message>
        <message>
            <source>Blade {blade}</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>Lehre {blade}</translation>
        </message>
        <message>
            <source>In hand: {blades}</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>In der Hand: {blades}</translation>
        </message>
        <message>
            <source>Pick up to three</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>Bis zu drei wählen</translation>
        </message>
        <message>
            <source>Lamp a&amp;cross the contacts</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>L&amp;ampe an die Kontakte</translation>
        </message>
        <message>
            <source>Meter the &amp;lead to the case</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>&amp;Leitung gegen Gehäuse messen</translation>
        </message>
        <message>
            <source>From the pulled plug of the switch lead to the case</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>Vom gezogenen Stecker der Kurzschlussleitung zum Gehäuse</translation>
        </message>
        <message>
            <source>Disc on the cra&amp;nk</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>Scheibe auf die &amp;Kurbel</translation>
        </message>
        <message>
            <source>Turn the disc on the crank, so that it reads earlier or later under its pointer</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>Die Scheibe auf der Kurbelwelle drehen, sodass sie unter ihrem Zeiger früher oder später zeigt</translation>
        </message>
        <message>
            <source>Piston st&amp;op in No. 1</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>K&amp;olbenanschlag in Nr. 1</translation>
        </message>
        <message>
            <source>Thousandths of an inch</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>Tausendstel Zoll</translation>
        </message>
        <message>
            <source>There is nothing on the tray: eyes and hands are enough here.</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>Auf der Ablage liegt nichts: Hier genügen Augen und Hände.</translation>
        </message>
        <message>
            <source>behind</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>dahinter</translation>
        </message>
        <message>
            <source>ahead</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>davor</translation>
        </message>
        <message>
            <source>reads later</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>zeigt später</translation>
        </message>
        <message>
            <source>reads earlier</source>
            <extracomment>ui/practice_tray.py</extracomment>
            <translation>zeigt früher</translation>
        </message>
        <message>
            <source>magview {version}: a training aid.</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation>magview {version}: eine Lernhilfe.</translation>
        </message>
        <message>
            <source>Hand &amp;in…</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation>Abge&amp;ben…</translation>
        </message>
        <message>
            <source>Hand in now?</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation>Jetzt abgeben?</translation>
        </message>
        <message>
            <source>Hand in</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation>Abgeben</translation>
        </message>
        <message>
            <source>Save the attempt</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation>Versuch speichern</translation>
        </message>
        <message>
            <source>Attempts (*.json)</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation>Versuche (*.json)</translation>
        </message>
        <message>
            <source>Save the debrief</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation>Nachbesprechung speichern</translation>
        </message>
        <message>
            <source>This attempt has not been saved.</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation>Dieser Versuch ist nicht gespeichert.</translation>
        </message>
        <message>
            <source>&amp;1 Lesson</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation>&amp;1 Lektion</translation>
        </message>
        <message>
            <source>&amp;1 Task</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation>&amp;1 Aufgabe</translation>
        </message>
        <message>
            <source>&amp;Hand in</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation>&amp;Abgeben</translation>
        </message>
        <message>
            <source>&amp;Go on working</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation>&amp;Weiterarbeiten</translation>
        </message>
        <message>
            <source>Then the true values are shown, and nothing more can be done.</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation>Dann werden die wahren Werte gezeigt, und es lässt sich nichts mehr tun.</translation>
        </message>
        <message>
            <source>practice</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation>Übung</translation>
        </message>
        <message>
            <source>The attempt cannot be kept for after a crash: {error}</source>
            <extracomment>ui/practice_window.py</extracomment>
            <translation>Der Versuch kann nicht für den Fall eines Absturzes gesichert werden: {error}</translation>
        </message>
        <message>
            <source>Loc&amp;k screw tight</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>Si&amp;cherungsschraube fest</translation>
        </message>
        <message>
            <source>C&amp;lamp screws tight</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>K&amp;lemmschrauben fest</translation>
        </message>
        <message>
            <source>Contact &amp;screw</source>
            <extracomment>ui/practice_work.py, ui/setting_panel.py</extracomment>
            <translation>Kontakt&amp;schraube</translation>
        </message>
        <message>
            <source>&amp;Backplate</source>
            <extracomment>ui/practice_work.py, ui/setting_panel.py</extracomment>
            <translation>&amp;Grundplatte</translation>
        </message>
        <message>
            <source>Look at the &amp;contacts</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>&amp;Kontakte ansehen</translation>
        </message>
        <message>
            <source>D&amp;ress them</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>Ab&amp;ziehen</translation>
        </message>
        <message>
            <source>Plu&amp;g pulled out</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>St&amp;ecker gezogen</translation>
        </message>
        <message>
            <source>Paper under the spring tab</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>Papier unter der Federzunge</translation>
        </message>
        <message>
            <source>Engine and magneto</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>Motor und Magnetzünder</translation>
        </message>
        <message>
            <source>Wh&amp;eels chocked</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>&amp;Räder verkeilt</translation>
        </message>
        <message>
            <source>Spark plugs o&amp;ut</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>Z&amp;ündkerzen heraus</translation>
        </message>
        <message>
            <source>&amp;Nuts tight</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>&amp;Muttern fest</translation>
        </message>
        <message>
            <source>Rotor pinned</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>Rotor abgesteckt</translation>
        </message>
        <message>
            <source>Lift the magneto o&amp;ff</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>Magnetzünder a&amp;bnehmen</translation>
        </message>
        <message>
            <source>Refit by its marks</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>Nach Marken anbauen</translation>
        </message>
        <message>
            <source>Refit as the rotor stands</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>Anbauen, wie der Rotor steht</translation>
        </message>
        <message>
            <source>Coupling, one tooth at a time</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>Kupplung, je einen Zahn</translation>
        </message>
        <message>
            <source>Paint marks across i&amp;t</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>&amp;Farbmarken ziehen</translation>
        </message>
        <message>
            <source>Screw {screw}; plate {plate}.</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>Schraube {screw}; Platte {plate}.</translation>
        </message>
        <message>
            <source>◀ against</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>◀ gegen</translation>
        </message>
        <message>
            <source>with ▶</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>mit ▶</translation>
        </message>
        <message>
            <source>New lead</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>Neue Leitung</translation>
        </message>
        <message>
            <source>New spring tab</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>Neue Federzunge</translation>
        </message>
        <message>
            <source>New insulation</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>Neue Isolierung</translation>
        </message>
        <message>
            <source>Magneto flange</source>
            <extracomment>ui/practice_work.py</extracomment>
            <translation>Magnetzünderflansch</translation>
        </message>
        <message>
            <source>Present</source>
            <extracomment>ui/present.py</extracomment>
            <translation>Vorführen</translation>
        </message>
        <message>
            <source>◀ Previous</source>
            <extracomment>ui/present.py</extracomment>
            <translation>◀ Zurück</translation>
        </message>
        <message>
            <source>Name the part before</source>
            <extracomment>ui/present.py</extracomment>
            <translation>Das vorige Teil nennen</translation>
        </message>
        <message>
            <source>Next ▶</source>
            <extracomment>ui/present.py</extracomment>
            <translation>Weiter ▶</translation>
        </message>
        <message>
            <source>Name the next part; or click a part</source>
            <extracomment>ui/present.py</extracomment>
            <translation>Das nächste Teil nennen; oder ein Teil anklicken</translation>
        </message>
        <message>
            <source>Spotlight</source>
            <extracomment>ui/present.py</extracomment>
            <translation>Spotlicht</translation>
        </message>
        <message>
            <source>Dim all but the part that is named</source>
            <extracomment>ui/present.py</extracomment>
            <translation>Alles außer dem genannten Teil abdunkeln</translation>
        </message>
        <message>
            <source>Freeze</source>
            <extracomment>ui/present.py</extracomment>
            <translation>Einfrieren</translation>
        </message>
        <message>
            <source>The picture stands; the bench moves on</source>
            <extracomment>ui/present.py</extracomment>
            <translation>Das Bild steht; der Prüftisch läuft weiter</translation>
        </message>
        <message>
            <source>Hide numbers</source>
            <extracomment>ui/present.py</extracomment>
            <translation>Zahlen verbergen</translation>
        </message>
        <message>
            <source>No numbers until they are asked for</source>
            <extracomment>ui/present.py</extracomment>
            <translation>Keine Zahlen, bis nach ihnen gefragt wird</translation>
        </message>
        <message>
            <source>Keep this moment</source>
            <extracomment>ui/present.py</extracomment>
            <translation>Moment merken</translation>
        </message>
        <message>
            <source>Remember the bench as it is</source>
            <extracomment>ui/present.py</extracomment>
            <translation>Den Prüftisch merken, wie er ist</translation>
        </message>
        <message>
            <source>Before and after</source>
            <extracomment>ui/present.py</extracomment>
            <translation>Vorher und jetzt</translation>
        </message>
        <message>
            <source>The kept moment beside now</source>
            <extracomment>ui/present.py</extracomment>
            <translation>Der gemerkte Moment neben dem jetzigen</translation>
        </message>
        <message>
            <source>End</source>
            <extracomment>ui/present.py</extracomment>
            <translation>Ende</translation>
        </message>
        <message>
            <source>Put away what is shown, then end</source>
            <extracomment>ui/present.py</extracomment>
            <translation>Gezeigtes wegräumen, dann beenden</translation>
        </message>
        <message>
            <source>  {number} of {count}  </source>
            <extracomment>ui/present.py</extracomment>
            <translation>  {number} von {count}  </translation>
        </message>
        <message>
            <source>{part}: {told}</source>
            <extracomment>ui/present.py</extracomment>
            <translation>{part}: {told}</translation>
        </message>
        <message>
            <source>No part is named yet</source>
            <extracomment>ui/present.py</extracomment>
            <translation>Noch kein Teil genannt</translation>
        </message>
        <message>
            <source>This moment is kept: “Before and after” shows it beside the bench.</source>
            <extracomment>ui/present.py</extracomment>
            <translation>Dieser Moment ist gemerkt: „Vorher und jetzt“ zeigt ihn neben dem Prüftisch.</translation>
        </message>
        <message>
            <source>FROZEN · the bench has moved on</source>
            <extracomment>ui/present_covers.py</extracomment>
            <translation>EINGEFROREN · der Prüftisch ist weitergelaufen</translation>
        </message>
        <message>
            <source>FROZEN · as on the bench</source>
            <extracomment>ui/present_covers.py</extracomment>
            <translation>EINGEFROREN · wie auf dem Prüftisch</translation>
        </message>
        <message>
            <source>This is the moment that was kept: it does not move.</source>
            <extracomment>ui/present_covers.py</extracomment>
            <translation>Dies ist der gemerkte Moment: Er bewegt sich nicht.</translation>
        </message>
        <message>
            <source>Before</source>
            <extracomment>ui/present_covers.py</extracomment>
            <translation>Vorher</translation>
        </message>
        <message>
            <source>Now</source>
            <extracomment>ui/present_covers.py</extracomment>
            <translation>Jetzt</translation>
        </message>
        <message>
            <source>{title}: breaker end of the magneto</source>
            <extracomment>ui/present_covers.py</extracomment>
            <translation>{title}: Unterbrecherseite des Magnetzünders</translation>
        </message>
        <message>
            <source>Nothing has changed.</source>
            <extracomment>ui/present_covers.py</extracomment>
            <translation>Nichts hat sich geändert.</translation>
        </message>
        <message>
            <source>{title} · magview {version} · page {number} of {count}</source>
            <extracomment>ui/print_guide.py</extracomment>
            <translation>{title} · magview {version} · Seite {number} von {count}</translation>
        </message>
        <message>
            <source>page {page} of {pages}</source>
            <extracomment>ui/print_pdf.py</extracomment>
            <translation>Seite {page} von {pages}</translation>
        </message>
        <message>
            <source>{language} from the next start: other windows are open now.</source>
            <extracomment>ui/renewal.py</extracomment>
            <translation>{language} ab dem nächsten Start: Derzeit sind andere Fenster offen.</translation>
        </message>
        <message>
            <source>Reports stay on this computer and are sent nowhere; they hold no names and no words you typed. Whoever looks after the program can make use of one: save it, and hand it on if you wish.</source>
            <extracomment>ui/report_dialog.py</extracomment>
            <translation>Berichte bleiben auf diesem Rechner und werden nirgendwohin gesendet; sie enthalten keine Namen und keine eingetippten Wörter. Wer das Programm betreut, kann einen gebrauchen: Speichern Sie ihn und geben Sie ihn weiter, wenn Sie möchten.</translation>
        </message>
        <message>
            <source>Fault reports</source>
            <extracomment>ui/report_dialog.py</extracomment>
            <translation>Fehlerberichte</translation>
        </message>
        <message>
            <source>When the program ran last, something in it went wrong. A report of it was kept.</source>
            <extracomment>ui/report_dialog.py</extracomment>
            <translation>Beim letzten Lauf ging im Programm etwas schief. Ein Bericht darüber wurde abgelegt.</translation>
        </message>
        <message>
            <source>What went wrong in the program itself.</source>
            <extracomment>ui/report_dialog.py</extracomment>
            <translation>Was im Programm selbst schiefging.</translation>
        </message>
        <message>
            <source>Report</source>
            <extracomment>ui/report_dialog.py</extracomment>
            <translation>Bericht</translation>
        </message>
        <message>
            <source>What the report says</source>
            <extracomment>ui/report_dialog.py</extracomment>
            <translation>Was der Bericht sagt</translation>
        </message>
        <message>
            <source>&amp;Delete</source>
            <extracomment>ui/report_dialog.py</extracomment>
            <translation>&amp;Löschen</translation>
        </message>
        <message>
            <source>Save the report</source>
            <extracomment>ui/report_dialog.py</extracomment>
            <translation>Bericht speichern</translation>
        </message>
        <message>
            <source>Deleted.</source>
            <extracomment>ui/report_dialog.py</extracomment>
            <translation>Gelöscht.</translation>
        </message>
        <message>
            <source>There is no report.</source>
            <extracomment>ui/report_dialog.py</extracomment>
            <translation>Es gibt keinen Bericht.</translation>
        </message>
        <message>
            <source>{file}: cannot be deleted: {reason}</source>
            <extracomment>ui/report_dialog.py</extracomment>
            <translation>{file}: nicht löschbar: {reason}</translation>
        </message>
        <message>
            <source>Training and planning aid with invented magnetos. Treat the propeller as live: switch off, switch lead grounded and proved, plugs out, wheels chocked. The maker's current manual and local rules govern; work on a certified aircraft is done or released by a licensed person.</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Lern- und Planungshilfe mit erfundenen Magnetzündern. Behandeln Sie den Propeller als scharf: Schalter aus, Kurzschlussleitung an Masse und nachgewiesen, Kerzen heraus, Räder verkeilt. Maßgebend sind das aktuelle Handbuch des Herstellers und die örtlichen Vorschriften; Arbeit an zugelassenen Flugzeugen führt eine lizenzierte Person aus oder gibt sie frei.</translation>
        </message>
        <message>
            <source>just open</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>öffnen</translation>
        </message>
        <message>
            <source>just close</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>schließen</translation>
        </message>
        <message>
            <source>Setting</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Einstellung</translation>
        </message>
        <message>
            <source>From the neutral before No. 1 fires, positive as it turns in service</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Ab der Neutralstellung, bevor Nr. 1 zündet; positiv wie im Betrieb gedreht</translation>
        </message>
        <message>
            <source>Positive with cam rotation; it stops at the end of its slot</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Positiv mit der Nockendrehung; Anschlag am Ende des Schlitzes</translation>
        </message>
        <message>
            <source>Positive brings the contacts closer. Dragged in the picture it follows one to one from 40 pixels out; at its head about a sixth, for fine setting</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Positiv bringt die Kontakte näher. Im Bild gezogen folgt sie ab 40 Pixeln Abstand eins zu eins, an ihrem Kopf etwa zu einem Sechstel, zum Feineinstellen</translation>
        </message>
        <message>
            <source>Hol&amp;d</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>&amp;Halten</translation>
        </message>
        <message>
            <source>Let go, and the magnet pulls the rotor to where it wants it</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Beim Loslassen zieht der Magnet den Rotor, wohin er will</translation>
        </message>
        <message>
            <source>To the E-gap</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Zum E-Gap</translation>
        </message>
        <message>
            <source>To &amp;opening</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Zur &amp;Öffnung</translation>
        </message>
        <message>
            <source>Clamp screws of the backplate tight</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Klemmschrauben der Grundplatte fest</translation>
        </message>
        <message>
            <source>Clamp screws: the plate turns only while they are slack</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Klemmschrauben: Die Platte dreht nur, wenn sie lose sind</translation>
        </message>
        <message>
            <source>Lock screw of the contact screw tight</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Sicherungsschraube der Kontaktschraube fest</translation>
        </message>
        <message>
            <source>Lock screw: the contact screw turns only while it is slack; tightening can shift it</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Sicherungsschraube: Die Kontaktschraube dreht nur, wenn sie lose ist; Festziehen kann sie verstellen</translation>
        </message>
        <message>
            <source>Tight</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Fest</translation>
        </message>
        <message>
            <source>Go</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Los</translation>
        </message>
        <message>
            <source>Turn</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Drehen</translation>
        </message>
        <message>
            <source>Run until</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Laufen bis</translation>
        </message>
        <message>
            <source>on and on</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>immer weiter</translation>
        </message>
        <message>
            <source>Speed of the run</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Laufgeschwindigkeit</translation>
        </message>
        <message>
            <source>Ru&amp;n</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>La&amp;ufen</translation>
        </message>
        <message>
            <source>Readings, lobe 1</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Werte, Nocken 1</translation>
        </message>
        <message>
            <source>What would put it right</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Was es richten würde</translation>
        </message>
        <message>
            <source>For a l&amp;argest gap of</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Für &amp;größten Abstand von</translation>
        </message>
        <message>
            <source>Set it so</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>So einstellen</translation>
        </message>
        <message>
            <source>Every lobe, in firing order</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Jeder Nocken, in Zündfolge</translation>
        </message>
        <message>
            <source>Rotor degrees; the gap is the largest, at the top of the lobe</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Grad am Rotor; der Abstand ist der größte, am höchsten Nockenpunkt</translation>
        </message>
        <message>
            <source>Readings of every lobe</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Werte aller Nocken</translation>
        </message>
        <message>
            <source>{gap} (blade {blade})</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>{gap} (Lehre {blade})</translation>
        </message>
        <message>
            <source>clamp screws</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Klemmschrauben</translation>
        </message>
        <message>
            <source>Opens</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Öffnet</translation>
        </message>
        <message>
            <source>Error</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Fehler</translation>
        </message>
        <message>
            <source>Closes</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Schließt</translation>
        </message>
        <message>
            <source>Dwell</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Schließw.</translation>
        </message>
        <message>
            <source>Gap</source>
            <extracomment>ui/setting_panel.py, ui/trials_panel.py</extracomment>
            <translation>Abstand</translation>
        </message>
        <message>
            <source>{low}° to {high}°</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>{low}° bis {high}°</translation>
        </message>
        <message>
            <source>{opens} of rotor</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>{opens} am Rotor</translation>
        </message>
        <message>
            <source>✗ Out of limits: {faults}</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>✗ Außer Grenzen: {faults}</translation>
        </message>
        <message>
            <source>✓ Within limits</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>✓ In den Grenzen</translation>
        </message>
        <message>
            <source>within limits, {limit}</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>in den Grenzen, {limit}</translation>
        </message>
        <message>
            <source>out of limits, {limit}</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>außer Grenzen, {limit}</translation>
        </message>
        <message>
            <source>Stop</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Halt</translation>
        </message>
        <message>
            <source>With this setting lobe 1 never opens or never closes the contacts.</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Mit dieser Einstellung öffnet oder schließt Nocken 1 die Kontakte nie.</translation>
        </message>
        <message>
            <source>Contacts open at</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Kontakte öffnen bei</translation>
        </message>
        <message>
            <source>From the E-gap</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Vom E-Gap</translation>
        </message>
        <message>
            <source>Straightedge off mark</source>
            <extracomment>ui/setting_panel.py, ui/uncertainty_panel.py</extracomment>
            <translation>Lineal neben Marke</translation>
        </message>
        <message>
            <source>Closed for (dwell)</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>Geschlossen für (Schließwinkel)</translation>
        </message>
        <message>
            <source>at it</source>
            <extracomment>ui/setting_panel.py</extracomment>
            <translation>genau dort</translation>
        </message>
        <message>
            <source>Top dead centre from two stop readings</source>
            <extracomment>ui/stop_box.py</extracomment>
            <translation>Oberer Totpunkt aus zwei Anschlagwerten</translation>
        </message>
        <message>
            <source>Top dead centre on the disc</source>
            <extracomment>ui/stop_box.py</extracomment>
            <translation>Oberer Totpunkt auf der Scheibe</translation>
        </message>
        <message>
            <source>True top dead centre is at {middle}° on the disc; set the pointer to zero there. (Disc numbered 0 to 360°, or to both sides with what is before zero negative. If the stop was met about bottom dead centre, the top is at {opposite}°. Exact for a rod on the crank pin: use the master rod's.)</source>
            <extracomment>ui/stop_box.py</extracomment>
            <translation>Der wahre obere Totpunkt liegt bei {middle}° auf der Scheibe; stellen Sie den Zeiger dort auf null. (Scheibe 0 bis 360° beziffert oder nach beiden Seiten, vor null negativ. Wurde der Anschlag um den unteren Totpunkt berührt, liegt der obere bei {opposite}°. Genau für ein Pleuel am Kurbelzapfen: Hauptpleuel nehmen.)</translation>
        </message>
        <message>
            <source>First</source>
            <extracomment>ui/stop_box.py</extracomment>
            <translation>Erste</translation>
        </message>
        <message>
            <source>Second</source>
            <extracomment>ui/stop_box.py</extracomment>
            <translation>Zweite</translation>
        </message>
        <message>
            <source>With rotation is {way} seen from the drive end.</source>
            <extracomment>ui/teeth_box.py</extracomment>
            <translation>In Drehrichtung heißt {way}, von der Antriebsseite gesehen.</translation>
        </message>
        <message>
            <source>Teeth moved from as found</source>
            <extracomment>ui/teeth_box.py, ui/timing_panel.py</extracomment>
            <translation>Versetzte Zähne ab Vorfund</translation>
        </message>
        <message>
            <source>&amp;As found</source>
            <extracomment>ui/teeth_box.py</extracomment>
            <translation>&amp;Wie vorgefunden</translation>
        </message>
        <message>
            <source>Paint new &amp;marks</source>
            <extracomment>ui/teeth_box.py</extracomment>
            <translation>Neue &amp;Marken ziehen</translation>
        </message>
        <message>
            <source>Marks in line across drive flange, disc and magneto flange, as they stand now</source>
            <extracomment>ui/teeth_box.py</extracomment>
            <translation>Marken in Flucht über Antriebsflansch, Scheibe und Magnetzünderflansch, wie sie jetzt stehen</translation>
        </message>
        <message>
            <source>{name}: one tooth against rotation</source>
            <extracomment>ui/teeth_box.py</extracomment>
            <translation>{name}: ein Zahn gegen die Drehrichtung</translation>
        </message>
        <message>
            <source>{name}: one tooth with rotation</source>
            <extracomment>ui/teeth_box.py</extracomment>
            <translation>{name}: ein Zahn in Drehrichtung</translation>
        </message>
        <message>
            <source>Disc on the drive</source>
            <extracomment>ui/teeth_box.py</extracomment>
            <translation>Scheibe auf dem Antrieb</translation>
        </message>
        <message>
            <source>Before turning the crank: switch off, switch lead grounded and proved, plugs out, wheels chocked, nobody in the propeller's arc. Paint marks on disc, both flanges and engine before taking anything apart; move one tooth at a time; approach every reading in the direction of rotation, so that backlash is taken up. The maker's current manual and local rules govern.</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation>Vor dem Drehen der Kurbelwelle: Schalter aus, Kurzschlussleitung an Masse und nachgewiesen, Kerzen heraus, Räder verkeilt, niemand im Propellerkreis. Vor dem Zerlegen Farbmarken auf Scheibe, beide Flansche und Motor ziehen; je einen Zahn versetzen; jede Ablesung in Drehrichtung anfahren, damit das Spiel aufgenommen ist. Maßgebend sind das aktuelle Handbuch des Herstellers und die örtlichen Vorschriften.</translation>
        </message>
        <message>
            <source>Teeth moved from as found, left magneto</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation>Versetzte Zähne ab Vorfund, linker Magnetzünder</translation>
        </message>
        <message>
            <source>Moves that would put it right, best first, left magneto</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation>Schritte, die es richten würden, beste zuerst, linker Magnetzünder</translation>
        </message>
        <message>
            <source>Teeth moved from as found, right magneto</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation>Versetzte Zähne ab Vorfund, rechter Magnetzünder</translation>
        </message>
        <message>
            <source>Moves that would put it right, best first, right magneto</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation>Schritte, die es richten würden, beste zuerst, rechter Magnetzünder</translation>
        </message>
        <message>
            <source>Left fires {left}°, right {right}° before top dead centre: {apart}. Wanted: {wanted}. That is {difference}° from it, {tolerance}° allowed.</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation>Links zündet {left}°, rechts {right}° vor dem oberen Totpunkt: {apart}. Soll: {wanted}. Das weicht {difference}° ab, {tolerance}° erlaubt.</translation>
        </message>
        <message>
            <source>both together</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation>beide gleichzeitig</translation>
        </message>
        <message>
            <source>left {angle}° earlier</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation>links {angle}° früher</translation>
        </message>
        <message>
            <source>right {angle}° earlier</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation>rechts {angle}° früher</translation>
        </message>
        <message>
            <source>⚠ Treat the propeller as live: switch off, lead proved, plugs out, wheels chocked.</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation>⚠ Den Propeller als scharf behandeln: Schalter aus, Leitung nachgewiesen, Kerzen heraus, Räder verkeilt.</translation>
        </message>
        <message>
            <source>Take care: {mismatch}.</source>
            <extracomment>ui/timing_panel.py</extracomment>
            <translation>Vorsicht: {mismatch}.</translation>
        </message>
        <message>
            <source>Plate</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Platte</translation>
        </message>
        <message>
            <source>Opened</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Öffnete</translation>
        </message>
        <message>
            <source>Degrees</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Grad</translation>
        </message>
        <message>
            <source>Millimetres along the slot</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Millimeter am Schlitz entlang</translation>
        </message>
        <message>
            <source>Scale marks</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Skalenmarken</translation>
        </message>
        <message>
            <source>A trial: set to open at the E-gap</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Ein Versuch: so eingestellt, dass er am E-Gap öffnet</translation>
        </message>
        <message>
            <source>The thickest blade that passes at the top of lobe 1; 0 if none does</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Das dickste Blatt, das oben auf Nocken 1 geht; 0, wenn keines</translation>
        </message>
        <message>
            <source>The thinnest blade that does not pass; 0 if every blade did</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Das dünnste Blatt, das nicht geht; 0, wenn jedes ging</translation>
        </message>
        <message>
            <source>How far past the E-gap the contacts opened, if the straightedge showed it</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Wie weit hinter dem E-Gap die Kontakte öffneten, wenn das Lineal es zeigte</translation>
        </message>
        <message>
            <source>Plate rea&amp;d in</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Pla&amp;tte gelesen in</translation>
        </message>
        <message>
            <source>The plate as it stands, and what blades in steps of a thousandth of an inch would find</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Die Platte, wie sie steht, und was Blätter in Stufen von einem tausendstel Zoll fänden</translation>
        </message>
        <message>
            <source>Stri&amp;ke out</source>
            <extracomment>ui/trials_panel.py, ui/wear_panel.py</extracomment>
            <translation>Str&amp;eichen</translation>
        </message>
        <message>
            <source>Strike out the trial that is chosen, or the last</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Den gewählten Versuch streichen, sonst den letzten</translation>
        </message>
        <message>
            <source>What to do next</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Was als Nächstes</translation>
        </message>
        <message>
            <source>T&amp;urn the plate there</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Platte dorthin &amp;drehen</translation>
        </message>
        <message>
            <source>&amp;Save what was found…</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Gef&amp;undenes sichern…</translation>
        </message>
        <message>
            <source>Turn the plate on the bench; then set the contacts to open at the E-gap again</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Die Platte auf dem Prüftisch drehen; dann die Kontakte wieder auf Öffnen am E-Gap stellen</translation>
        </message>
        <message>
            <source>Save a magneto file of your own, with lift, rise and index as the trials tell</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Eine eigene Magnetdatei sichern, mit Hub, Anstieg und Lage, wie die Versuche sie zeigen</translation>
        </message>
        <message>
            <source>Save what was found</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Gefundenes sichern</translation>
        </message>
        <message>
            <source>Saved {name}: open it from the File menu.</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>{name} gesichert: im Menü Datei öffnen.</translation>
        </message>
        <message>
            <source>Plate, with rotation +</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Platte, mit der Drehung +</translation>
        </message>
        <message>
            <source>Along the slot</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Entlang des Schlitzes</translation>
        </message>
        <message>
            <source>Slot's radius</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Radius des Schlitzes</translation>
        </message>
        <message>
            <source>Marks, with rotation +</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Marken, mit der Drehung +</translation>
        </message>
        <message>
            <source>Between two marks</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Zwischen zwei Marken</translation>
        </message>
        <message>
            <source>&amp;Blade that passes</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>&amp;Blatt, das geht</translation>
        </message>
        <message>
            <source>Blade that does n&amp;ot</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Blatt, das &amp;nicht geht</translation>
        </message>
        <message>
            <source>Opened late by</source>
            <extracomment>ui/trials_panel.py, ui/wear_panel.py</extracomment>
            <translation>Öffnete zu spät um</translation>
        </message>
        <message>
            <source>Fro&amp;m the bench</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>&amp;Vom Prüftisch</translation>
        </message>
        <message>
            <source>&amp;Note the trial</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Versuch &amp;aufschreiben</translation>
        </message>
        <message>
            <source>the blade that passes must be thinner than the one that does not</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>das Blatt, das geht, muss dünner sein als das, das nicht geht</translation>
        </message>
        <message>
            <source>No advice: {refusal}.</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>Kein Rat: {refusal}.</translation>
        </message>
        <message>
            <source>over {low}</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>über {low}</translation>
        </message>
        <message>
            <source>✓ Done</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>✓ Fertig</translation>
        </message>
        <message>
            <source>{chance} % likely within limits there</source>
            <extracomment>ui/trials_panel.py</extracomment>
            <translation>{chance} % wahrscheinlich dort in den Grenzen</translation>
        </message>
        <message>
            <source>Comes to</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Ergibt</translation>
        </message>
        <message>
            <source>Share</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Anteil</translation>
        </message>
        <message>
            <source>What was read</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Was gelesen wurde</translation>
        </message>
        <message>
            <source>&amp;Measurement</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>&amp;Messung</translation>
        </message>
        <message>
            <source>Straightedge from the rim mark, positive past it: the contacts open late</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Lineal von der Randmarke, positiv dahinter: die Kontakte öffnen zu spät</translation>
        </message>
        <message>
            <source>The thickest blade that passes the widest gap</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Das dickste Blatt, das durch den größten Abstand geht</translation>
        </message>
        <message>
            <source>Take from the &amp;bench</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Vom &amp;Prüftisch nehmen</translation>
        </message>
        <message>
            <source>What these instruments would read of the bench as it stands</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Was dieses Messzeug am Prüftisch läse, wie er steht</translation>
        </message>
        <message>
            <source>With what</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Womit</translation>
        </message>
        <message>
            <source>How sure it is</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Wie sicher</translation>
        </message>
        <message>
            <source>Number of Monte Carlo draws</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Zahl der Monte-Carlo-Ziehungen</translation>
        </message>
        <message>
            <source>Draw every reading at random within what its instrument allows, and count</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Jede Ablesung zufällig ziehen, so weit ihr Messzeug es zulässt, und zählen</translation>
        </message>
        <message>
            <source>Progress of the Monte Carlo</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Fortschritt des Monte Carlo</translation>
        </message>
        <message>
            <source>Uncertainty budget of the least sure quantity</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Unsicherheitsbudget der am wenigsten sicheren Größe</translation>
        </message>
        <message>
            <source>by Monte Carlo</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>nach Monte Carlo</translation>
        </message>
        <message>
            <source>{name}, the least sure of them</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>{name}, am wenigsten sicher</translation>
        </message>
        <message>
            <source>by linear propagation</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>nach linearer Fortpflanzung</translation>
        </message>
        <message>
            <source>{chance} likely within limits ({how})</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>{chance} wahrscheinlich in den Grenzen ({how})</translation>
        </message>
        <message>
            <source>Blade that passes</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Blatt, das geht</translation>
        </message>
        <message>
            <source>Disc at the first stop</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Scheibe am ersten Anschlag</translation>
        </message>
        <message>
            <source>Disc at the second stop</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Scheibe am zweiten Anschlag</translation>
        </message>
        <message>
            <source>Disc, left opens</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Scheibe, links öffnet</translation>
        </message>
        <message>
            <source>Disc, right opens</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Scheibe, rechts öffnet</translation>
        </message>
        <message>
            <source>M&amp;onte Carlo</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>M&amp;onte Carlo</translation>
        </message>
        <message>
            <source>Ca&amp;ncel</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>&amp;Abbrechen</translation>
        </message>
        <message>
            <source>where they disagree, go by the Monte Carlo</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>wo sie sich widersprechen, gilt das Monte Carlo</translation>
        </message>
        <message>
            <source>Linear propagation (JCGM 100); the Monte Carlo (JCGM 101) checks it.</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Lineare Fortpflanzung (JCGM 100); das Monte Carlo (JCGM 101) prüft sie.</translation>
        </message>
        <message>
            <source>Next to improve: {name}.</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Als Nächstes verbessern: {name}.</translation>
        </message>
        <message>
            <source>No finer instrument on the list would help.</source>
            <extracomment>ui/uncertainty_panel.py</extracomment>
            <translation>Kein feineres Messzeug der Liste hülfe.</translation>
        </message>
        <message>
            <source>Blade gap</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>Blattabstand</translation>
        </message>
        <message>
            <source>Opens late</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>Öffnet spät</translation>
        </message>
        <message>
            <source>Wear from now on</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>Verschleiß von nun an</translation>
        </message>
        <message>
            <source>Off the heel of the breaker arm in 100 running hours: it opens later, the gap closes</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>Vom Gleitstück des Unterbrecherhebels in 100 Laufstunden: er öffnet später, der Abstand schließt sich</translation>
        </message>
        <message>
            <source>A pip on one contact in 100 running hours: the blade finds less than the true gap</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>Ein Höcker auf einem Kontakt in 100 Laufstunden: das Blatt findet weniger als den wahren Abstand</translation>
        </message>
        <message>
            <source>Heel, i&amp;n 100 h</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>&amp;Gleitstück, in 100 h</translation>
        </message>
        <message>
            <source>Pip, in 100 h</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>Höcker, in 100 h</translation>
        </message>
        <message>
            <source>Next inspection &amp;after</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>Nächste &amp;Prüfung nach</translation>
        </message>
        <message>
            <source>Wear the bench by the&amp;se hours</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>Prüftisch um diese &amp;Stunden abnutzen</translation>
        </message>
        <message>
            <source>See on the bench what those hours would do to it</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>Am Prüftisch sehen, was diese Stunden täten</translation>
        </message>
        <message>
            <source>Inspections of this setting</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>Prüfungen dieser Einstellung</translation>
        </message>
        <message>
            <source>Inspections</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>Prüfungen</translation>
        </message>
        <message>
            <source>The thickest blade that passed, and half a step more</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>Das dickste Blatt, das ging, und eine halbe Stufe mehr</translation>
        </message>
        <message>
            <source>How far past the E-gap it opened, in degrees of rotor</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>Wie weit hinter dem E-Gap er öffnete, in Rotorgraden</translation>
        </message>
        <message>
            <source>At, since it was set</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>Bei, seit eingestellt</translation>
        </message>
        <message>
            <source>Gap by blades</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>Abstand nach Blättern</translation>
        </message>
        <message>
            <source>✗ Plate or screw was turned since: what was read before tells nothing of this setting; strike it out.</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>✗ Grundplatte oder Schraube wurde seither gedreht: was vorher abgelesen wurde, sagt nichts über diese Einstellung; bitte streichen.</translation>
        </message>
        <message>
            <source>&amp;Use these rates</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>Diese &amp;Raten nehmen</translation>
        </message>
        <message>
            <source>From the &amp;bench</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>&amp;Vom Prüftisch</translation>
        </message>
        <message>
            <source>N&amp;ote</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>A&amp;ufschreiben</translation>
        </message>
        <message>
            <source>Two inspections at different hours give rates.</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>Zwei Prüfungen bei verschiedenen Stunden geben Raten.</translation>
        </message>
        <message>
            <source>Read of another setting than the present one</source>
            <extracomment>ui/wear_panel.py</extracomment>
            <translation>An einer anderen Einstellung als der jetzigen abgelesen</translation>
        </message>
        <message>
            <source>The bench cannot be kept for after a crash: {error}</source>
            <extracomment>ui/window.py</extracomment>
            <translation>Der Prüftisch lässt sich nicht für nach einem Absturz aufheben: {error}</translation>
        </message>
        <message>
            <source>{file}: cannot be changed: {reason}</source>
            <extracomment>upkeep/desktop.py</extracomment>
            <translation>{file}: lässt sich nicht ändern: {reason}</translation>
        </message>
        <message>
            <source>nothing can be kept in {folder}: {reason}</source>
            <extracomment>upkeep/places.py, upkeep/reports.py</extracomment>
            <translation>in {folder} lässt sich nichts aufheben: {reason}</translation>
        </message>
        <message>
            <source>not known: the system ended the program at once</source>
            <extracomment>upkeep/reports.py</extracomment>
            <translation>nicht bekannt: das System hat das Programm sofort beendet</translation>
        </message>
        <message>
            <source>nothing</source>
            <extracomment>upkeep/reports.py</extracomment>
            <translation>nichts</translation>
        </message>
        <message>
            <source>magview: report of a fault</source>
            <extracomment>upkeep/reports.py</extracomment>
            <translation>magview: Fehlerbericht</translation>
        </message>
        <message>
            <source>Kept on this computer; nothing is sent anywhere by itself.</source>
            <extracomment>upkeep/reports.py</extracomment>
            <translation>Auf diesem Rechner aufgehoben; von selbst wird nichts verschickt.</translation>
        </message>
        <message>
            <source>When: {when}</source>
            <extracomment>upkeep/reports.py</extracomment>
            <translation>Wann: {when}</translation>
        </message>
        <message>
            <source>Versions:</source>
            <extracomment>upkeep/reports.py</extracomment>
            <translation>Fassungen:</translation>
        </message>
        <message>
            <source>What and where:</source>
            <extracomment>upkeep/reports.py</extracomment>
            <translation>Was und wo:</translation>
        </message>
        <message>
            <source>What was done last:</source>
            <extracomment>upkeep/reports.py</extracomment>
            <translation>Zuletzt getan:</translation>
        </message>
        <message>
            <source>Four-cylinder practice magneto</source>
            <extracomment>magnetos/four-opposed.json</extracomment>
            <translation>Übungsmagnet für vier Zylinder</translation>
        </message>
        <message>
            <source>Invented for practice, all of it: dimensions, limits, angles and electrical values; no real magneto has them. Two poles, two lobes, threaded contact screw.</source>
            <extracomment>magnetos/four-opposed.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Nine-cylinder practice magneto</source>
            <extracomment>magnetos/nine-radial.json</extracomment>
            <translation>Übungsmagnet für neun Zylinder</translation>
        </message>
        <message>
            <source>Invented for practice, all of it: dimensions, limits, angles and electrical values; no real magneto has them. Four poles; compensated cam, one lobe per cylinder, on the distributor shaft at half crank speed. Its lobes are spaced for the shipped nine-cylinder engine.</source>
            <extracomment>magnetos/nine-radial.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Seven-cylinder practice magneto</source>
            <extracomment>magnetos/seven-radial.json</extracomment>
            <translation>Übungsmagnet für sieben Zylinder</translation>
        </message>
        <message>
            <source>Invented for practice, all of it: dimensions, limits, angles and electrical values; no real magneto has them. Four poles, one lobe per spark of a rotor turn (uncompensated cam on the rotor shaft).</source>
            <extracomment>magnetos/seven-radial.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Six-cylinder practice magneto, traced lift</source>
            <extracomment>magnetos/traced-six.json</extracomment>
            <translation>Übungsmagnet für sechs Zylinder, gemessener Hub</translation>
        </message>
        <message>
            <source>Invented for practice, all of it: dimensions, limits, angles and electrical values; no real magneto has them. Two poles, two lobes; the lift was traced at the contacts with a dial gauge every 2°, so the arm's other dimensions are not known.</source>
            <extracomment>magnetos/traced-six.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Four-cylinder practice engine</source>
            <extracomment>engines/four-opposed.json</extracomment>
            <translation>Übungsmotor mit vier Zylindern</translation>
        </message>
        <message>
            <source>Nine-cylinder practice engine</source>
            <extracomment>engines/nine-radial.json</extracomment>
            <translation>Übungsmotor mit neun Zylindern</translation>
        </message>
        <message>
            <source>Seven-cylinder practice engine</source>
            <extracomment>engines/seven-radial.json</extracomment>
            <translation>Übungsmotor mit sieben Zylindern</translation>
        </message>
        <message>
            <source>Six-cylinder practice engine</source>
            <extracomment>engines/six-inline.json</extracomment>
            <translation>Übungsmotor mit sechs Zylindern</translation>
        </message>
        <message>
            <source>A vernier step or two out</source>
            <extracomment>exercises/a-step-or-two-out.json</extracomment>
            <translation>Ein, zwei Noniusschritte daneben</translation>
        </message>
        <message>
            <source>The magneto came back from overhaul and was refitted by eye. Inside it is right.</source>
            <extracomment>exercises/a-step-or-two-out.json</extracomment>
            <translation>Der Magnet kam von der Überholung und wurde nach Augenmaß angebaut. Innen stimmt er.</translation>
        </message>
        <message>
            <source>Time it to the engine at its toothed coupling.</source>
            <extracomment>exercises/a-step-or-two-out.json</extracomment>
            <translation>Ihn an der Zahnkupplung auf den Motor einstellen.</translation>
        </message>
        <message>
            <source>With the switch off a sound lead keeps the lamp dark whatever the contacts do: wheels chocked and spark plugs out first, then switch on.</source>
            <extracomment>exercises/a-step-or-two-out.json, exercises/both-everything-wrong.json, exercises/fitted-at-neutral.json, exercises/left-and-right-apart.json, exercises/one-magneto-all-wrong.json, exercises/several-teeth-out.json, exercises/wrong-stroke.json</extracomment>
            <translation>Bei ausgeschaltetem Schalter hält eine heile Kurzschlussleitung die Lampe dunkel, was die Kontakte auch tun: erst Räder verkeilt und Zündkerzen heraus, dann einschalten.</translation>
        </message>
        <message>
            <source>Paint marks across the coupling before you draw the magneto back.</source>
            <extracomment>exercises/a-step-or-two-out.json</extracomment>
            <translation>Marken über die Kupplung malen, bevor der Magnet zurückgezogen wird.</translation>
        </message>
        <message>
            <source>Read the timing with lamp and disc, turning with rotation only.</source>
            <extracomment>exercises/a-step-or-two-out.json</extracomment>
            <translation>Den Zündzeitpunkt mit Lampe und Scheibe lesen, nur mit der Drehung drehend.</translation>
        </message>
        <message>
            <source>One tooth with rotation at the magneto and one against it at the disc is the finest step.</source>
            <extracomment>exercises/a-step-or-two-out.json</extracomment>
            <translation>Ein Zahn mit der Drehung am Magneten und einer gegen sie an der Scheibe ist der feinste Schritt.</translation>
        </message>
        <message>
            <source>Both magnetos, everything wrong</source>
            <extracomment>exercises/both-everything-wrong.json</extracomment>
            <translation>Beide Magnete, alles falsch</translation>
        </message>
        <message>
            <source>Two magnetos, two people, two opinions, and an engine that has not run since.</source>
            <extracomment>exercises/both-everything-wrong.json</extracomment>
            <translation>Zwei Magnete, zwei Leute, zwei Meinungen, und ein Motor, der seitdem nicht lief.</translation>
        </message>
        <message>
            <source>Make both safe, set both inside, time both to the engine and to one another, and close up.</source>
            <extracomment>exercises/both-everything-wrong.json</extracomment>
            <translation>Beide sichern, beide innen einstellen, beide auf den Motor und aufeinander einstellen, und schließen.</translation>
        </message>
        <message>
            <source>Work to one order on each: safe, contacts, gap, lock screw, opening; then the engine.</source>
            <extracomment>exercises/both-everything-wrong.json</extracomment>
            <translation>An beiden in derselben Reihenfolge: sicher, Kontakte, Abstand, Sicherungsschraube, Öffnung; dann der Motor.</translation>
        </message>
        <message>
            <source>The switch of one magneto says nothing of the other.</source>
            <extracomment>exercises/both-everything-wrong.json</extracomment>
            <translation>Der Schalter des einen Magneten sagt nichts über den anderen.</translation>
        </message>
        <message>
            <source>Teeth last, for both together.</source>
            <extracomment>exercises/both-everything-wrong.json</extracomment>
            <translation>Die Zähne zuletzt, für beide zusammen.</translation>
        </message>
        <message>
            <source>A lock screw that carries along</source>
            <extracomment>exercises/creeping-screw.json</extracomment>
            <translation>Eine Sicherungsschraube, die mitnimmt</translation>
        </message>
        <message>
            <source>Whoever sets this magneto finds it out of adjustment the next day, and swears it was right.</source>
            <extracomment>exercises/creeping-screw.json</extracomment>
            <translation>Wer diesen Magneten einstellt, findet ihn am nächsten Tag verstellt und schwört, dass er stimmte.</translation>
        </message>
        <message>
            <source>Set gap and opening so that they are right with every screw tight.</source>
            <extracomment>exercises/creeping-screw.json</extracomment>
            <translation>Abstand und Öffnung so einstellen, dass sie mit allen Schrauben fest stimmen.</translation>
        </message>
        <message>
            <source>The lamp tells of the contacts only while nothing else grounds the coil: leave the plug in and the switch on. With the switch off it stays dark, and with the plug pulled too, but for paper under the spring tab.</source>
            <extracomment>exercises/creeping-screw.json, exercises/gap-wrong.json, exercises/one-lobe-low.json, exercises/opens-early-or-late.json, exercises/pips.json</extracomment>
            <translation>Die Lampe erzählt nur dann von den Kontakten, wenn sonst nichts die Spule an Masse legt: Stecker drin und Schalter ein lassen. Bei ausgeschaltetem Schalter bleibt sie dunkel, bei gezogenem Stecker auch, außer mit Papier unter der Federzunge.</translation>
        </message>
        <message>
            <source>Measure, tighten the lock screw, measure again.</source>
            <extracomment>exercises/creeping-screw.json</extracomment>
            <translation>Messen, die Sicherungsschraube anziehen, wieder messen.</translation>
        </message>
        <message>
            <source>The lock screw carries the contact screw along by the same amount each time: lead it by as much.</source>
            <extracomment>exercises/creeping-screw.json</extracomment>
            <translation>Die Sicherungsschraube nimmt die Kontaktschraube jedes Mal gleich weit mit: um so viel vorhalten.</translation>
        </message>
        <message>
            <source>Set the gap first, lock it, then bring the opening to the mark with the plate.</source>
            <extracomment>exercises/creeping-screw.json</extracomment>
            <translation>Erst den Abstand stellen, sichern, dann die Öffnung mit der Platte auf die Marke bringen.</translation>
        </message>
        <message>
            <source>Find the E-gap</source>
            <extracomment>exercises/find-the-e-gap.json</extracomment>
            <translation>Das E-Gap finden</translation>
        </message>
        <message>
            <source>A magneto stands on the bench with its breaker cover off. Left alone, the magnet keeps the rotor at neutral.</source>
            <extracomment>exercises/find-the-e-gap.json</extracomment>
            <translation>Ein Magnet steht ohne Unterbrecherdeckel auf dem Prüftisch. Sich selbst überlassen, hält der Magnet den Rotor neutral.</translation>
        </message>
        <message>
            <source>Turn the rotor to the E-gap and hold it there: the straightedge along the cam's step in line with a mark on the rim.</source>
            <extracomment>exercises/find-the-e-gap.json</extracomment>
            <translation>Den Rotor zum E-Gap drehen und dort halten: das Lineal an der Stufe des Nockens in Flucht mit einer Marke am Rand.</translation>
        </message>
        <message>
            <source>Turn the rotor with rotation; it pulls back as soon as you let go.</source>
            <extracomment>exercises/find-the-e-gap.json</extracomment>
            <translation>Den Rotor mit der Drehung drehen; er zieht zurück, sobald man loslässt.</translation>
        </message>
        <message>
            <source>Lay the straightedge on and look square over it: from the side it seems to stand elsewhere.</source>
            <extracomment>exercises/find-the-e-gap.json</extracomment>
            <translation>Das Lineal anlegen und gerade darüber sehen: von der Seite scheint es woanders zu stehen.</translation>
        </message>
        <message>
            <source>Leave the straightedge where it is when you hand in; it is your proof.</source>
            <extracomment>exercises/find-the-e-gap.json</extracomment>
            <translation>Das Lineal beim Abgeben liegen lassen; es ist der Nachweis.</translation>
        </message>
        <message>
            <source>Fitted with the rotor at neutral</source>
            <extracomment>exercises/fitted-at-neutral.json</extracomment>
            <translation>Mit dem Rotor in Neutralstellung eingebaut</translation>
        </message>
        <message>
            <source>The magneto was fitted with No. 1 at its firing point, as it should be – but with the rotor left where the magnet holds it.</source>
            <extracomment>exercises/fitted-at-neutral.json</extracomment>
            <translation>Der Magnet wurde mit Nr. 1 am Zündpunkt angebaut, wie es sein soll – aber mit dem Rotor, wo der Magnet ihn hält.</translation>
        </message>
        <message>
            <source>Find how far it is out and time it.</source>
            <extracomment>exercises/fitted-at-neutral.json</extracomment>
            <translation>Finden, wie weit er daneben ist, und ihn einstellen.</translation>
        </message>
        <message>
            <source>The rotor at neutral is short of the E-gap: what does that make the timing, early or late?</source>
            <extracomment>exercises/fitted-at-neutral.json</extracomment>
            <translation>Der Rotor steht neutral vor dem E-Gap: macht das den Zündzeitpunkt früh oder spät?</translation>
        </message>
        <message>
            <source>Paint marks first; the way back is counted in teeth.</source>
            <extracomment>exercises/fitted-at-neutral.json</extracomment>
            <translation>Erst Marken malen; der Rückweg wird in Zähnen gezählt.</translation>
        </message>
        <message>
            <source>The gap is wrong</source>
            <extracomment>exercises/gap-wrong.json</extracomment>
            <translation>Der Abstand stimmt nicht</translation>
        </message>
        <message>
            <source>After new contacts were fitted nobody set them: the gap is far out, and with it the place where they open.</source>
            <extracomment>exercises/gap-wrong.json</extracomment>
            <translation>Nach dem Einbau neuer Kontakte hat sie niemand eingestellt: der Abstand ist weit daneben, und damit die Stelle, wo sie öffnen.</translation>
        </message>
        <message>
            <source>Bring the largest gap within its limits and the opening to the mark.</source>
            <extracomment>exercises/gap-wrong.json</extracomment>
            <translation>Den größten Abstand in seine Grenzen und die Öffnung auf die Marke bringen.</translation>
        </message>
        <message>
            <source>The contact screw moves gap and opening; the backplate moves the opening alone. Begin with the screw.</source>
            <extracomment>exercises/gap-wrong.json</extracomment>
            <translation>Die Kontaktschraube bewegt Abstand und Öffnung; die Grundplatte nur die Öffnung. Mit der Schraube beginnen.</translation>
        </message>
        <message>
            <source>Wider contacts open earlier.</source>
            <extracomment>exercises/gap-wrong.json</extracomment>
            <translation>Weitere Kontakte öffnen früher.</translation>
        </message>
        <message>
            <source>Measure the gap where the contacts stand widest open.</source>
            <extracomment>exercises/gap-wrong.json</extracomment>
            <translation>Den Abstand messen, wo die Kontakte am weitesten offen sind.</translation>
        </message>
        <message>
            <source>Left and right apart</source>
            <extracomment>exercises/left-and-right-apart.json</extracomment>
            <translation>Links und rechts verschieden</translation>
        </message>
        <message>
            <source>The drop on one magneto is larger than on the other. Both are right inside.</source>
            <extracomment>exercises/left-and-right-apart.json</extracomment>
            <translation>Der Abfall ist an einem Magneten größer als am anderen. Innen stimmen beide.</translation>
        </message>
        <message>
            <source>Time both magnetos, and bring them together.</source>
            <extracomment>exercises/left-and-right-apart.json</extracomment>
            <translation>Beide Magnete einstellen und aufeinander abstimmen.</translation>
        </message>
        <message>
            <source>Find the disc's zero once and keep it: both are read by the same disc.</source>
            <extracomment>exercises/left-and-right-apart.json</extracomment>
            <translation>Den Nullpunkt der Scheibe einmal finden und behalten: beide werden an derselben Scheibe gelesen.</translation>
        </message>
        <message>
            <source>Two readings that are each within limits may still be too far apart.</source>
            <extracomment>exercises/left-and-right-apart.json</extracomment>
            <translation>Zwei Ablesungen, jede in den Grenzen, können doch zu weit auseinander sein.</translation>
        </message>
        <message>
            <source>Choose the moves of both together.</source>
            <extracomment>exercises/left-and-right-apart.json</extracomment>
            <translation>Die Schritte beider zusammen wählen.</translation>
        </message>
        <message>
            <source>Measure the gap</source>
            <extracomment>exercises/measure-the-gap.json</extracomment>
            <translation>Den Abstand messen</translation>
        </message>
        <message>
            <source>The work card asks for the largest gap between the contacts, and for nothing else.</source>
            <extracomment>exercises/measure-the-gap.json</extracomment>
            <translation>Der Auftrag verlangt den größten Abstand zwischen den Kontakten und sonst nichts.</translation>
        </message>
        <message>
            <source>Turn the rotor until lobe 1 holds the contacts widest open, measure the gap with blades, and write it down.</source>
            <extracomment>exercises/measure-the-gap.json</extracomment>
            <translation>Den Rotor drehen, bis Nocken 1 die Kontakte am weitesten offen hält, den Abstand mit Blättern messen und aufschreiben.</translation>
        </message>
        <message>
            <source>A blade that goes and the next that does not go stand on both sides of the gap.</source>
            <extracomment>exercises/measure-the-gap.json</extracomment>
            <translation>Ein Blatt, das geht, und das nächste, das nicht geht, liegen auf beiden Seiten des Abstands.</translation>
        </message>
        <message>
            <source>A blade that drags is within a hundredth of a millimetre of it.</source>
            <extracomment>exercises/measure-the-gap.json</extracomment>
            <translation>Ein Blatt, das klemmt, liegt auf einen hundertstel Millimeter daran.</translation>
        </message>
        <message>
            <source>Two blades held together fill the steps between single ones.</source>
            <extracomment>exercises/measure-the-gap.json</extracomment>
            <translation>Zwei Blätter zusammen füllen die Stufen zwischen einzelnen.</translation>
        </message>
        <message>
            <source>One lobe is low</source>
            <extracomment>exercises/one-lobe-low.json</extracomment>
            <translation>Ein Nocken ist niedrig</translation>
        </message>
        <message>
            <source>One cylinder of this engine misses now and then. The cam has worn, but not beyond use if it is set with care.</source>
            <extracomment>exercises/one-lobe-low.json</extracomment>
            <translation>Ein Zylinder dieses Motors setzt ab und zu aus. Der Nocken ist abgenutzt, taugt aber noch, wenn er sorgsam eingestellt wird.</translation>
        </message>
        <message>
            <source>Set the contacts so that the gap is within limits on every lobe, and the opening at the mark on every lobe.</source>
            <extracomment>exercises/one-lobe-low.json</extracomment>
            <translation>Die Kontakte so einstellen, dass der Abstand an jedem Nocken in den Grenzen und die Öffnung an jedem auf der Marke ist.</translation>
        </message>
        <message>
            <source>Measure every lobe before you turn anything.</source>
            <extracomment>exercises/one-lobe-low.json</extracomment>
            <translation>Jeden Nocken messen, bevor etwas gedreht wird.</translation>
        </message>
        <message>
            <source>Put the middle between the widest and the closest lobe in the middle of the limits.</source>
            <extracomment>exercises/one-lobe-low.json</extracomment>
            <translation>Die Mitte zwischen dem weitesten und dem engsten Nocken in die Mitte der Grenzen legen.</translation>
        </message>
        <message>
            <source>Check every lobe again when all is tight.</source>
            <extracomment>exercises/one-lobe-low.json</extracomment>
            <translation>Jeden Nocken noch einmal prüfen, wenn alles fest ist.</translation>
        </message>
        <message>
            <source>One magneto, everything wrong</source>
            <extracomment>exercises/one-magneto-all-wrong.json</extracomment>
            <translation>Ein Magnet, alles falsch</translation>
        </message>
        <message>
            <source>Bought as it stood. The logbook is silent on the ignition.</source>
            <extracomment>exercises/one-magneto-all-wrong.json</extracomment>
            <translation>Gekauft, wie er stand. Das Bordbuch schweigt über die Zündung.</translation>
        </message>
        <message>
            <source>Make it safe, set it inside, time it to the engine, and close it up.</source>
            <extracomment>exercises/one-magneto-all-wrong.json</extracomment>
            <translation>Ihn sichern, innen einstellen, auf den Motor einstellen und schließen.</translation>
        </message>
        <message>
            <source>Safe first, then inside, then the engine: what is set inside moves the timing.</source>
            <extracomment>exercises/one-magneto-all-wrong.json</extracomment>
            <translation>Erst sicher, dann innen, dann der Motor: was innen gestellt wird, verschiebt den Zündzeitpunkt.</translation>
        </message>
        <message>
            <source>Contacts, gap, lock screw, opening: in this order.</source>
            <extracomment>exercises/one-magneto-all-wrong.json</extracomment>
            <translation>Kontakte, Abstand, Sicherungsschraube, Öffnung: in dieser Reihenfolge.</translation>
        </message>
        <message>
            <source>Dead centre by the stop before anything is read from the disc.</source>
            <extracomment>exercises/one-magneto-all-wrong.json</extracomment>
            <translation>Totpunkt mit dem Anschlag, bevor an der Scheibe etwas abgelesen wird.</translation>
        </message>
        <message>
            <source>Opens early or late</source>
            <extracomment>exercises/opens-early-or-late.json</extracomment>
            <translation>Öffnet früh oder spät</translation>
        </message>
        <message>
            <source>The gap of this magneto is right, but its backplate has been moved.</source>
            <extracomment>exercises/opens-early-or-late.json</extracomment>
            <translation>Der Abstand dieses Magneten stimmt, aber seine Grundplatte wurde verdreht.</translation>
        </message>
        <message>
            <source>Set the backplate so that the contacts open at the mark, close everything up, and check again.</source>
            <extracomment>exercises/opens-early-or-late.json</extracomment>
            <translation>Die Grundplatte so stellen, dass die Kontakte an der Marke öffnen, alles schließen und noch einmal prüfen.</translation>
        </message>
        <message>
            <source>Slacken the clamp screws, not the lock screw: the gap is not the trouble.</source>
            <extracomment>exercises/opens-early-or-late.json</extracomment>
            <translation>Die Klemmschrauben lösen, nicht die Sicherungsschraube: am Abstand liegt es nicht.</translation>
        </message>
        <message>
            <source>Turning the plate with rotation makes the contacts open later.</source>
            <extracomment>exercises/opens-early-or-late.json</extracomment>
            <translation>Die Platte mit der Drehung zu drehen lässt die Kontakte später öffnen.</translation>
        </message>
        <message>
            <source>What was checked before a screw was tightened has to be checked again after.</source>
            <extracomment>exercises/opens-early-or-late.json</extracomment>
            <translation>Was vor dem Anziehen einer Schraube geprüft wurde, ist danach wieder zu prüfen.</translation>
        </message>
        <message>
            <source>Pips on the contacts</source>
            <extracomment>exercises/pips.json</extracomment>
            <translation>Höcker auf den Kontakten</translation>
        </message>
        <message>
            <source>This magneto has run for a long time on the same contacts. The last one to set it measured the gap and found it right.</source>
            <extracomment>exercises/pips.json</extracomment>
            <translation>Dieser Magnet lief lange mit denselben Kontakten. Wer ihn zuletzt einstellte, maß den Abstand und fand ihn richtig.</translation>
        </message>
        <message>
            <source>See to the contacts, then set gap and opening.</source>
            <extracomment>exercises/pips.json</extracomment>
            <translation>Nach den Kontakten sehen, dann Abstand und Öffnung stellen.</translation>
        </message>
        <message>
            <source>A blade lies on the pip, not on the contact: the true gap is larger than it says.</source>
            <extracomment>exercises/pips.json</extracomment>
            <translation>Ein Blatt liegt auf dem Höcker, nicht auf dem Kontakt: der wahre Abstand ist größer, als es sagt.</translation>
        </message>
        <message>
            <source>Dress the contacts before you measure anything.</source>
            <extracomment>exercises/pips.json</extracomment>
            <translation>Die Kontakte abziehen, bevor etwas gemessen wird.</translation>
        </message>
        <message>
            <source>Several teeth out, and a loose coupling</source>
            <extracomment>exercises/several-teeth-out.json</extracomment>
            <translation>Mehrere Zähne daneben, und eine lose Kupplung</translation>
        </message>
        <message>
            <source>Starts badly, kicks back. The coupling rattles, and the crank disc has been put on by eye.</source>
            <extracomment>exercises/several-teeth-out.json</extracomment>
            <translation>Springt schlecht an, schlägt zurück. Die Kupplung klappert, und die Kurbelscheibe sitzt nach Augenmaß.</translation>
        </message>
        <message>
            <source>Find the disc's zero, read the timing as found and write it down, and time the magneto.</source>
            <extracomment>exercises/several-teeth-out.json</extracomment>
            <translation>Den Nullpunkt der Scheibe finden, den Zündzeitpunkt wie vorgefunden lesen und aufschreiben, und den Magneten einstellen.</translation>
        </message>
        <message>
            <source>With play in the coupling a reading is true only when approached with rotation.</source>
            <extracomment>exercises/several-teeth-out.json</extracomment>
            <translation>Bei Spiel in der Kupplung stimmt eine Ablesung nur, wenn sie mit der Drehung erreicht wird.</translation>
        </message>
        <message>
            <source>If it fires after dead centre there is no pressure to feel: go by the finger.</source>
            <extracomment>exercises/several-teeth-out.json</extracomment>
            <translation>Zündet er nach dem Totpunkt, ist kein Druck zu fühlen: nach dem Finger gehen.</translation>
        </message>
        <message>
            <source>Plan the move with the fewest teeth that comes within limits, and move one tooth at a time.</source>
            <extracomment>exercises/several-teeth-out.json</extracomment>
            <translation>Den Weg mit den wenigsten Zähnen planen, der in die Grenzen kommt, und Zahn für Zahn versetzen.</translation>
        </message>
        <message>
            <source>Is it safe?</source>
            <extracomment>exercises/switch-lead.json</extracomment>
            <translation>Ist er sicher?</translation>
        </message>
        <message>
            <source>A note in the cockpit says: switch check doubtful. Nobody has touched the aircraft since.</source>
            <extracomment>exercises/switch-lead.json</extracomment>
            <translation>Ein Zettel im Cockpit sagt: Schalterprüfung zweifelhaft. Seitdem hat niemand das Flugzeug angerührt.</translation>
        </message>
        <message>
            <source>Find out what the switch lead of this magneto suffers from, if anything, write down your finding, put it right, and prove it.</source>
            <extracomment>exercises/switch-lead.json</extracomment>
            <translation>Herausfinden, woran die Kurzschlussleitung dieses Magneten leidet, wenn überhaupt, den Befund aufschreiben, beheben und nachweisen.</translation>
        </message>
        <message>
            <source>Until you know better the propeller is live: chocks, and spark plugs out, before it is turned.</source>
            <extracomment>exercises/switch-lead.json</extracomment>
            <translation>Bis man es besser weiß, ist der Propeller scharf: Klötze, und Kerzen heraus, bevor er gedreht wird.</translation>
        </message>
        <message>
            <source>Plug pulled, the meter must see ground with the switch off, and none with it on.</source>
            <extracomment>exercises/switch-lead.json</extracomment>
            <translation>Stecker gezogen, muss das Messgerät bei Schalter aus Masse sehen und bei Schalter ein keine.</translation>
        </message>
        <message>
            <source>With the switch on the lamp must light as the contacts open; with the plug pulled the spring tab must keep it dark.</source>
            <extracomment>exercises/switch-lead.json</extracomment>
            <translation>Bei Schalter ein muss die Lampe leuchten, wenn die Kontakte öffnen; bei gezogenem Stecker muss die Federzunge sie dunkel halten.</translation>
        </message>
        <message>
            <source>True dead centre</source>
            <extracomment>exercises/true-dead-centre.json</extracomment>
            <translation>Wahrer Totpunkt</translation>
        </message>
        <message>
            <source>The disc on the crank was put on by eye. Before anything is timed by it, its zero has to be found.</source>
            <extracomment>exercises/true-dead-centre.json</extracomment>
            <translation>Die Scheibe auf der Kurbel sitzt nach Augenmaß. Bevor etwas danach eingestellt wird, ist ihr Nullpunkt zu finden.</translation>
        </message>
        <message>
            <source>Find what the disc reads at the top dead centre of No. 1, write it down (after the zero: with a minus), and set the disc to zero.</source>
            <extracomment>exercises/true-dead-centre.json</extracomment>
            <translation>Finden, was die Scheibe am oberen Totpunkt von Nr. 1 liest, es aufschreiben (nach null: mit Minus) und die Scheibe auf null stellen.</translation>
        </message>
        <message>
            <source>Chocks first, switch off, spark plugs out; then the propeller may be turned.</source>
            <extracomment>exercises/true-dead-centre.json</extracomment>
            <translation>Erst Klötze, Schalter aus, Kerzen heraus; dann darf der Propeller gedreht werden.</translation>
        </message>
        <message>
            <source>With the stop fitted, turn gently until the piston meets it, read the disc; turn back until it meets it from the other side, read again.</source>
            <extracomment>exercises/true-dead-centre.json</extracomment>
            <translation>Mit eingesetztem Anschlag sanft drehen, bis der Kolben ihn berührt, die Scheibe ablesen; zurückdrehen, bis er ihn von der anderen Seite berührt, wieder ablesen.</translation>
        </message>
        <message>
            <source>Half-way between the two readings is top dead centre.</source>
            <extracomment>exercises/true-dead-centre.json</extracomment>
            <translation>In der Mitte der beiden Ablesungen liegt der obere Totpunkt.</translation>
        </message>
        <message>
            <source>When do the contacts open?</source>
            <extracomment>exercises/when-do-they-open.json</extracomment>
            <translation>Wann öffnen die Kontakte?</translation>
        </message>
        <message>
            <source>Somebody has set this magneto and left it closed up. Nothing is to be changed yet: first you want to know.</source>
            <extracomment>exercises/when-do-they-open.json</extracomment>
            <translation>Jemand hat diesen Magneten eingestellt und geschlossen hinterlassen. Noch ist nichts zu ändern: erst will man es wissen.</translation>
        </message>
        <message>
            <source>Find where lobe 1 opens the contacts, by lamp and straightedge, and write down how far past the mark that is (short of it: with a minus).</source>
            <extracomment>exercises/when-do-they-open.json</extracomment>
            <translation>Finden, wo Nocken 1 die Kontakte öffnet, mit Lampe und Lineal, und aufschreiben, wie weit hinter der Marke das ist (davor: mit Minus).</translation>
        </message>
        <message>
            <source>If the lamp stays dark whatever you do, something grounds the primary: look at the switch.</source>
            <extracomment>exercises/when-do-they-open.json</extracomment>
            <translation>Bleibt die Lampe dunkel, was man auch tut, liegt die Primärwicklung an Masse: nach dem Schalter sehen.</translation>
        </message>
        <message>
            <source>Turn with rotation, slowly, and stop where the lamp lights.</source>
            <extracomment>exercises/when-do-they-open.json</extracomment>
            <translation>Mit der Drehung drehen, langsam, und anhalten, wo die Lampe leuchtet.</translation>
        </message>
        <message>
            <source>The marks on the rim are half a millimetre apart; mark 1 belongs to lobe 1.</source>
            <extracomment>exercises/when-do-they-open.json</extracomment>
            <translation>Die Marken am Rand stehen einen halben Millimeter auseinander; Marke 1 gehört zu Nocken 1.</translation>
        </message>
        <message>
            <source>The wrong stroke</source>
            <extracomment>exercises/wrong-stroke.json</extracomment>
            <translation>Der falsche Takt</translation>
        </message>
        <message>
            <source>It was timed with care: the lamp lights where it should. The engine spits back through the carburettor and will not run.</source>
            <extracomment>exercises/wrong-stroke.json</extracomment>
            <translation>Es wurde sorgfältig eingestellt: die Lampe leuchtet, wo sie soll. Der Motor spuckt durch den Vergaser zurück und läuft nicht.</translation>
        </message>
        <message>
            <source>Find out why, and put it right.</source>
            <extracomment>exercises/wrong-stroke.json</extracomment>
            <translation>Herausfinden, warum, und es beheben.</translation>
        </message>
        <message>
            <source>A thumb over No. 1's plug hole tells compression from exhaust.</source>
            <extracomment>exercises/wrong-stroke.json</extracomment>
            <translation>Ein Daumen auf dem Kerzenloch von Nr. 1 unterscheidet Verdichten von Ausstoßen.</translation>
        </message>
        <message>
            <source>Where does the distributor finger point when No. 1 comes up on compression?</source>
            <extracomment>exercises/wrong-stroke.json</extracomment>
            <translation>Wohin zeigt der Verteilerfinger, wenn Nr. 1 verdichtend hochkommt?</translation>
        </message>
        <message>
            <source>Half a turn of the finger cannot be had by teeth: the magneto has to come off. Pull the plug, mark, nuts off.</source>
            <extracomment>exercises/wrong-stroke.json</extracomment>
            <translation>Eine halbe Umdrehung des Fingers ist mit Zähnen nicht zu haben: der Magnet muss ab. Stecker ziehen, markieren, Muttern ab.</translation>
        </message>
        <message>
            <source>Off the engine a slip of paper under the spring tab lets the lamp see the contacts.</source>
            <extracomment>exercises/wrong-stroke.json</extracomment>
            <translation>Vom Motor ab lässt ein Papierstreifen unter der Federzunge die Lampe die Kontakte sehen.</translation>
        </message>
        <message>
            <source>A full job</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Ein ganzer Auftrag</translation>
        </message>
        <message>
            <source>From the chocks to the last nut: safe, inside, dead centre, coupling, closed up.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Von den Klötzen bis zur letzten Mutter: sicher, innen, Totpunkt, Kupplung, geschlossen.</translation>
        </message>
        <message>
            <source>A magneto with its plate off, its coupling some fine steps out, and a lead nobody has looked at.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Ein Magnet mit verdrehter Platte, die Kupplung einige feine Schritte daneben, und eine Leitung, nach der niemand gesehen hat.</translation>
        </message>
        <message>
            <source>Follow the lesson.</source>
            <extracomment>lessons/a-full-job.json, lessons/contacts-and-lamp.json, lessons/measuring-the-gap.json, lessons/neutral-and-e-gap.json, lessons/one-vernier-step.json, lessons/plate-and-screw.json, lessons/the-switch-lead.json, lessons/top-dead-centre.json, lessons/what-the-parts-are.json</extracomment>
            <translation>Der Lektion folgen.</translation>
        </message>
        <message>
            <source>Chocks</source>
            <extracomment>lessons/a-full-job.json, lessons/top-dead-centre.json</extracomment>
            <translation>Klötze</translation>
        </message>
        <message>
            <source>Put chocks at the wheels.</source>
            <extracomment>lessons/a-full-job.json, lessons/the-switch-lead.json</extracomment>
            <translation>Klötze an die Räder legen.</translation>
        </message>
        <message>
            <source>Prove the lead</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Die Leitung nachweisen</translation>
        </message>
        <message>
            <source>Pull the plug, meter, and do what the meter tells you to, until the lead is proved.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Den Stecker ziehen, messen und tun, was das Messgerät sagt, bis die Leitung nachgewiesen ist.</translation>
        </message>
        <message>
            <source>Broken inside: it had been live.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Innen gebrochen: er war scharf gewesen.</translation>
        </message>
        <message>
            <source>No ground with the switch off: a new lead.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Keine Masse bei Schalter aus: eine neue Leitung.</translation>
        </message>
        <message>
            <source>Plug in</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Stecker hinein</translation>
        </message>
        <message>
            <source>Push the plug in again.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Den Stecker wieder einstecken.</translation>
        </message>
        <message>
            <source>Spark plugs out</source>
            <extracomment>lessons/a-full-job.json, lessons/top-dead-centre.json</extracomment>
            <translation>Zündkerzen heraus</translation>
        </message>
        <message>
            <source>Take the spark plugs out.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Die Zündkerzen ausbauen.</translation>
        </message>
        <message>
            <source>Clip the lamp on and switch on: with the plugs out nothing can fire.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Prüflampe anklemmen und einschalten: Ohne Kerzen kann nichts zünden.</translation>
        </message>
        <message>
            <source>Where do they open?</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Wo öffnen sie?</translation>
        </message>
        <message>
            <source>Straightedge on, looked at square; turn the propeller with rotation until the lamp lights.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Lineal auflegen, gerade darüber blicken; den Propeller in Drehrichtung drehen, bis die Lampe leuchtet.</translation>
        </message>
        <message>
            <source>Past the mark: the contacts open late.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Hinter der Marke: Die Kontakte öffnen spät.</translation>
        </message>
        <message>
            <source>The gap</source>
            <extracomment>lessons/a-full-job.json, lessons/measuring-the-gap.json</extracomment>
            <translation>Der Kontaktabstand</translation>
        </message>
        <message>
            <source>Turn until the contacts stand widest open and try blades: the gap may be right.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Drehen, bis die Kontakte am weitesten offen stehen, und Lehren probieren: Der Abstand kann stimmen.</translation>
        </message>
        <message>
            <source>The plate</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Die Platte</translation>
        </message>
        <message>
            <source>Slacken the clamp screws, bring the opening to the mark with the backplate, and clamp it.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Klemmschrauben lösen, mit der Grundplatte die Öffnung auf die Marke bringen und die Platte festklemmen.</translation>
        </message>
        <message>
            <source>Late, so against rotation: about 3°.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Spät, also gegen die Drehrichtung: etwa 3°.</translation>
        </message>
        <message>
            <source>Check inside</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Innen prüfen</translation>
        </message>
        <message>
            <source>Turn with rotation until the lamp lights, and look at the straightedge.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>In Drehrichtung drehen, bis die Lampe leuchtet, und auf das Lineal sehen.</translation>
        </message>
        <message>
            <source>Dead centre</source>
            <extracomment>lessons/a-full-job.json, lessons/top-dead-centre.json</extracomment>
            <translation>Totpunkt</translation>
        </message>
        <message>
            <source>Fit the stop, meet it from both sides, set the disc to zero.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Anschlag einsetzen, von beiden Seiten anfahren, Scheibe auf null stellen.</translation>
        </message>
        <message>
            <source>Half-way between the two readings, turned the other way.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Die Mitte zwischen beiden Ablesungen, andersherum gedreht.</translation>
        </message>
        <message>
            <source>Stop out</source>
            <extracomment>lessons/a-full-job.json, lessons/top-dead-centre.json</extracomment>
            <translation>Anschlag heraus</translation>
        </message>
        <message>
            <source>Take the stop out.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Den Anschlag ausbauen.</translation>
        </message>
        <message>
            <source>Read the timing</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Zündzeitpunkt ablesen</translation>
        </message>
        <message>
            <source>With rotation to the lamp, finger at No. 1; write down what the disc reads.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>In Drehrichtung bis zur Lampe, Finger auf Nr. 1; aufschreiben, was die Scheibe zeigt.</translation>
        </message>
        <message>
            <source>Paint marks across the coupling.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Farbmarken über die Kupplung ziehen.</translation>
        </message>
        <message>
            <source>Nuts off, move tooth by tooth until it fires where it should, nuts on.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Muttern ab, Zahn um Zahn versetzen, bis er zündet, wo er soll, Muttern an.</translation>
        </message>
        <message>
            <source>Each pair of teeth, magneto flange against rotation and disc with it, is about 1.1° of crank later.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Jedes Zahnpaar, Magnetzünderflansch gegen die Drehrichtung und Scheibe in Drehrichtung, ergibt etwa 1,1° Kurbelwinkel später.</translation>
        </message>
        <message>
            <source>Check the timing</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Zündzeitpunkt prüfen</translation>
        </message>
        <message>
            <source>Turn the propeller with rotation until the lamp lights.</source>
            <extracomment>lessons/a-full-job.json, lessons/one-vernier-step.json</extracomment>
            <translation>Den Propeller in Drehrichtung drehen, bis die Lampe leuchtet.</translation>
        </message>
        <message>
            <source>Close up</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Schließen</translation>
        </message>
        <message>
            <source>Switch off.</source>
            <extracomment>lessons/a-full-job.json, lessons/one-vernier-step.json</extracomment>
            <translation>Ausschalten.</translation>
        </message>
        <message>
            <source>Safe, set, timed, checked, closed. What is written in the log is what was read after the last nut.</source>
            <extracomment>lessons/a-full-job.json</extracomment>
            <translation>Sicher, eingestellt, geprüft, geschlossen. Im Bordbuch steht, was nach der letzten Mutter abgelesen wurde.</translation>
        </message>
        <message>
            <source>Contacts and timing lamp</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Kontakte und Prüflampe</translation>
        </message>
        <message>
            <source>The lamp tells when the contacts part – if nothing else grounds the coil.</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Die Lampe zeigt, wann die Kontakte trennen – wenn sonst nichts die Spule an Masse legt.</translation>
        </message>
        <message>
            <source>Contacts and lamp</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Kontakte und Lampe</translation>
        </message>
        <message>
            <source>A magneto on the bench, its lead plugged in, the switch off.</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Ein Magnetzünder auf dem Prüftisch, Leitung eingesteckt, Schalter aus.</translation>
        </message>
        <message>
            <source>The lamp</source>
            <extracomment>lessons/contacts-and-lamp.json, lessons/one-vernier-step.json</extracomment>
            <translation>Die Lampe</translation>
        </message>
        <message>
            <source>Clip the timing lamp across the contacts.</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Die Prüflampe an die Kontakte klemmen.</translation>
        </message>
        <message>
            <source>A grounded coil</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Eine Spule an Masse</translation>
        </message>
        <message>
            <source>Turn the rotor right round with the lamp watched (turn until the lamp changes).</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Den Rotor einmal ganz herumdrehen und die Lampe beobachten (drehen, bis die Lampe wechselt).</translation>
        </message>
        <message>
            <source>The contacts opened and closed, and the lamp stayed dark: the switch is off and grounds the coil. A dark lamp proves nothing.</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Die Kontakte öffneten und schlossen, die Lampe blieb dunkel: Der Schalter ist aus und legt die Spule an Masse. Eine dunkle Lampe beweist nichts.</translation>
        </message>
        <message>
            <source>Switch on</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Einschalten</translation>
        </message>
        <message>
            <source>Switch the ignition on. On the bench that harms nobody; on an aircraft the propeller would now be live.</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Die Zündung einschalten. Auf dem Prüftisch schadet das niemandem; am Flugzeug wäre der Propeller jetzt scharf.</translation>
        </message>
        <message>
            <source>They open</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Sie öffnen</translation>
        </message>
        <message>
            <source>Turn with rotation until the lamp lights.</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>In Drehrichtung drehen, bis die Lampe leuchtet.</translation>
        </message>
        <message>
            <source>Here the contacts part.</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Hier trennen die Kontakte.</translation>
        </message>
        <message>
            <source>Widest open</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Am weitesten offen</translation>
        </message>
        <message>
            <source>Turn on until the contacts stand widest open.</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Weiterdrehen, bis die Kontakte am weitesten offen stehen.</translation>
        </message>
        <message>
            <source>The top of the lobe: here the gap is measured.</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Der höchste Punkt des Nockens: Hier wird der Abstand gemessen.</translation>
        </message>
        <message>
            <source>They close</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Sie schließen</translation>
        </message>
        <message>
            <source>Turn on until the lamp goes out.</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Weiterdrehen, bis die Lampe erlischt.</translation>
        </message>
        <message>
            <source>Where exactly?</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Wo genau?</translation>
        </message>
        <message>
            <source>Lay the straightedge on, look square over it, and turn with rotation until the lamp lights.</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Lineal auflegen, gerade darüber blicken und in Drehrichtung drehen, bis die Lampe leuchtet.</translation>
        </message>
        <message>
            <source>Lamp and straightedge together say how far from the E-gap the contacts open.</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Lampe und Lineal zusammen sagen, wie weit vom E-Gap die Kontakte öffnen.</translation>
        </message>
        <message>
            <source>If the lamp is lit already, turn on until it goes out, and then until it lights.</source>
            <extracomment>lessons/contacts-and-lamp.json</extracomment>
            <translation>Leuchtet die Lampe schon, weiterdrehen, bis sie erlischt, und dann, bis sie leuchtet.</translation>
        </message>
        <message>
            <source>Measuring the gap</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Den Kontaktabstand messen</translation>
        </message>
        <message>
            <source>Blades say go, drag or no-go. Between go and no-go lies the gap.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Lehren sagen: geht, klemmt leicht, geht nicht. Zwischen „geht“ und „geht nicht“ liegt der Abstand.</translation>
        </message>
        <message>
            <source>A magneto whose gap nobody has measured.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Ein Magnetzünder, dessen Abstand niemand gemessen hat.</translation>
        </message>
        <message>
            <source>To the top</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Zum höchsten Punkt</translation>
        </message>
        <message>
            <source>Turn the rotor until the contacts stand widest open.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Den Rotor drehen, bis die Kontakte am weitesten offen stehen.</translation>
        </message>
        <message>
            <source>A thin one</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Eine dünne</translation>
        </message>
        <message>
            <source>Try a blade that surely goes, such as 0.2 mm.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>It goes: the gap is larger.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Sie geht: Der Abstand ist größer.</translation>
        </message>
        <message>
            <source>A thick one</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Eine dicke</translation>
        </message>
        <message>
            <source>Try one that does not go.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Eine probieren, die nicht geht.</translation>
        </message>
        <message>
            <source>The gap lies between the two. Halve what is left, and halve again.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Der Abstand liegt zwischen beiden. Den Rest halbieren und noch einmal halbieren.</translation>
        </message>
        <message>
            <source>Drag</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Klemmt leicht</translation>
        </message>
        <message>
            <source>Find the blade or stack that is just gripped.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Die Lehre oder den Stapel finden, der gerade gefasst wird.</translation>
        </message>
        <message>
            <source>Within a hundredth of a millimetre. But of what?</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Auf ein Hundertstel Millimeter genau. Aber wovon?</translation>
        </message>
        <message>
            <source>Try 0.32 mm. Two blades held together fill the steps between single ones.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Look</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Ansehen</translation>
        </message>
        <message>
            <source>Look at the faces of the contacts.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Die Kontaktflächen ansehen.</translation>
        </message>
        <message>
            <source>A pip on one, a pit in the other: the blade lay on the pip, and the true gap is larger.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Ein Höcker auf dem einen, ein Krater im anderen: Die Lehre lag auf dem Höcker, der wahre Abstand ist größer.</translation>
        </message>
        <message>
            <source>Clean</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Säubern</translation>
        </message>
        <message>
            <source>Dress the contacts.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Die Kontakte abziehen.</translation>
        </message>
        <message>
            <source>Once more</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Noch einmal</translation>
        </message>
        <message>
            <source>Measure again until a blade or stack drags, and write the gap down.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Erneut messen, bis eine Lehre oder ein Stapel leicht klemmt, und den Abstand aufschreiben.</translation>
        </message>
        <message>
            <source>The same contacts, another number: only the second is the gap.</source>
            <extracomment>lessons/measuring-the-gap.json</extracomment>
            <translation>Dieselben Kontakte, eine andere Zahl: Nur die zweite ist der Abstand.</translation>
        </message>
        <message>
            <source>Neutral, full register, E-gap</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>Neutralstellung, volle Deckung, E-Gap</translation>
        </message>
        <message>
            <source>The rotor by hand: where the magnet wants it, and where it gives the strongest spark.</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>Der Rotor von Hand: wohin der Magnet ihn zieht und wo er den stärksten Funken gibt.</translation>
        </message>
        <message>
            <source>The rotor by hand</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>Der Rotor von Hand</translation>
        </message>
        <message>
            <source>A magneto on the bench, its rotor free.</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>Ein Magnetzünder auf dem Prüftisch, der Rotor frei.</translation>
        </message>
        <message>
            <source>Out of neutral</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>Aus der Neutralstellung</translation>
        </message>
        <message>
            <source>The rotor rests at neutral. Turn it with rotation to full register, where a pole stands square under the pole shoe.</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>Der Rotor ruht in der Neutralstellung. In Drehrichtung bis zur vollen Deckung drehen, wo ein Pol gerade unter dem Polschuh steht.</translation>
        </message>
        <message>
            <source>You felt it pull back, and then less and less: at full register the pull is gone.</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>Sie spürten ihn zurückziehen, dann immer weniger: Bei voller Deckung ist der Zug weg.</translation>
        </message>
        <message>
            <source>With four poles, full register lies 45° past neutral.</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>Bei vier Polen liegt die volle Deckung 45° hinter der Neutralstellung.</translation>
        </message>
        <message>
            <source>Let go</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>Loslassen</translation>
        </message>
        <message>
            <source>Take your hand off.</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>Die Hand wegnehmen.</translation>
        </message>
        <message>
            <source>The magnet took the rotor to a neutral. It always does.</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>Der Magnet zog den Rotor in eine Neutralstellung. Das tut er immer.</translation>
        </message>
        <message>
            <source>The straightedge</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>Das Lineal</translation>
        </message>
        <message>
            <source>Lay the straightedge along the cam's step, and look square over it.</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>Das Lineal an die Stufe des Nockens legen und gerade darüber blicken.</translation>
        </message>
        <message>
            <source>Seen from the side, an edge above the rim seems to stand elsewhere.</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>Von der Seite gesehen scheint eine Kante über dem Rand woanders zu stehen.</translation>
        </message>
        <message>
            <source>The E-gap</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>Das E-Gap</translation>
        </message>
        <message>
            <source>Turn the rotor with rotation until the straightedge is in line with a mark.</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>Den Rotor in Drehrichtung drehen, bis das Lineal mit einer Marke fluchtet.</translation>
        </message>
        <message>
            <source>A few degrees past neutral: the current in the coil is at its strongest. Contacts that part here give the best spark.</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>Einige Grad hinter der Neutralstellung: Der Strom in der Spule ist am stärksten. Kontakte, die hier trennen, geben den besten Funken.</translation>
        </message>
        <message>
            <source>It falls back</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>Er fällt zurück</translation>
        </message>
        <message>
            <source>Let go of the rotor here.</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>Den Rotor hier loslassen.</translation>
        </message>
        <message>
            <source>Back to neutral. Whoever fits a magneto has to hold the rotor at the E-gap, or pin it.</source>
            <extracomment>lessons/neutral-and-e-gap.json</extracomment>
            <translation>Zurück in die Neutralstellung. Wer einen Magnetzünder anbaut, muss den Rotor im E-Gap halten oder abstecken.</translation>
        </message>
        <message>
            <source>One step of the vernier</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Ein Noniusschritt</translation>
        </message>
        <message>
            <source>A disc with one tooth more on one side than on the other: two large steps that make one small one.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Eine Scheibe mit einem Zahn mehr auf der einen Seite: zwei große Schritte, die einen kleinen ergeben.</translation>
        </message>
        <message>
            <source>The coupling</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Die Kupplung</translation>
        </message>
        <message>
            <source>A magneto timed some fine steps early. The disc on the crank reads true.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Ein Magnetzünder, um einige Feinschritte zu früh eingestellt. Die Scheibe an der Kurbelwelle zeigt richtig.</translation>
        </message>
        <message>
            <source>Clip the timing lamp across the contacts. The plugs are out and the wheels chocked.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Die Prüflampe an die Kontakte klemmen. Die Kerzen sind heraus, die Räder verkeilt.</translation>
        </message>
        <message>
            <source>Read it</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Ablesen</translation>
        </message>
        <message>
            <source>Turn the propeller with rotation until the lamp lights with the finger at No. 1, and write down what the disc reads.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Den Propeller in Drehrichtung drehen, bis die Lampe mit dem Finger auf Nr. 1 leuchtet, und aufschreiben, was die Scheibe zeigt.</translation>
        </message>
        <message>
            <source>Always with rotation: turned back, the play in the coupling lies on the other side.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Immer in Drehrichtung: Zurückgedreht liegt das Spiel der Kupplung auf der anderen Seite.</translation>
        </message>
        <message>
            <source>The finger comes to No. 1 once in two turns of the propeller.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Der Finger kommt einmal in zwei Propellerumdrehungen auf Nr. 1.</translation>
        </message>
        <message>
            <source>Paint marks</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Farbmarken</translation>
        </message>
        <message>
            <source>Paint marks across drive flange, disc and magneto flange.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Farbmarken über Antriebsflansch, Scheibe und Magnetzünderflansch ziehen.</translation>
        </message>
        <message>
            <source>Without marks, a disc that comes away with the magneto is a puzzle.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Ohne Marken ist eine Scheibe, die mit dem Magnetzünder abgeht, ein Rätsel.</translation>
        </message>
        <message>
            <source>Nuts off</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Muttern ab</translation>
        </message>
        <message>
            <source>Take the nuts off and draw the magneto back.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Die Muttern abnehmen und den Magnetzünder zurückziehen.</translation>
        </message>
        <message>
            <source>Two teeth</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Zwei Zähne</translation>
        </message>
        <message>
            <source>It fires early, so the rotor has to go back. Move the magneto flange against rotation and the disc with rotation, as many times as it takes, one tooth each time.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Er zündet früh, also muss der Rotor zurück. Den Magnetzünderflansch gegen die Drehrichtung und die Scheibe in Drehrichtung versetzen, so oft wie nötig, je einen Zahn.</translation>
        </message>
        <message>
            <source>One tooth is more than 18° of rotor; one each way is less than one.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Ein Zahn ist mehr als 18° am Rotor; je einer in beide Richtungen ist weniger als 1°.</translation>
        </message>
        <message>
            <source>A pair of teeth, −1 and +1, makes it about 1.1° of crank later. It is about 3° early.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Ein Zahnpaar, −1 und +1, ergibt etwa 1,1° Kurbelwinkel später. Er steht etwa 3° zu früh.</translation>
        </message>
        <message>
            <source>Nuts on</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Muttern an</translation>
        </message>
        <message>
            <source>Push the magneto home and tighten its nuts.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Den Magnetzünder anschieben und die Muttern festziehen.</translation>
        </message>
        <message>
            <source>Check</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Prüfen</translation>
        </message>
        <message>
            <source>The reading with everything tight is the one that is signed for.</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Unterschrieben wird die Ablesung, bei der alles fest ist.</translation>
        </message>
        <message>
            <source>Safe</source>
            <extracomment>lessons/one-vernier-step.json</extracomment>
            <translation>Sicher</translation>
        </message>
        <message>
            <source>Plate and screw</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Platte und Schraube</translation>
        </message>
        <message>
            <source>The contact screw moves gap and opening, the backplate the opening alone. In this order they bring both right.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Die Kontaktschraube verstellt Abstand und Öffnung, die Grundplatte nur die Öffnung. In dieser Reihenfolge stimmen beide.</translation>
        </message>
        <message>
            <source>Set by somebody in a hurry: gap too wide, opening late.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Von jemandem in Eile eingestellt: Abstand zu groß, Öffnung spät.</translation>
        </message>
        <message>
            <source>Slacken the lock screw</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Sicherungsschraube lösen</translation>
        </message>
        <message>
            <source>The gap comes first. Slacken the lock screw.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Zuerst der Abstand. Die Sicherungsschraube lösen.</translation>
        </message>
        <message>
            <source>Closer</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Näher</translation>
        </message>
        <message>
            <source>Turn the contact screw so that the contacts come closer, 3° at least.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Die Kontaktschraube so drehen, dass die Kontakte näher kommen, mindestens 3°.</translation>
        </message>
        <message>
            <source>The gap is smaller now, and the contacts open later still: the screw moves both.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Der Abstand ist jetzt kleiner, und die Kontakte öffnen noch später: Die Schraube verstellt beides.</translation>
        </message>
        <message>
            <source>Tighten and measure</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Festziehen und messen</translation>
        </message>
        <message>
            <source>Bring the gap within limits with the lock screw tight.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Den Abstand bei fester Sicherungsschraube in die Grenzen bringen.</translation>
        </message>
        <message>
            <source>Did you notice? Tightening carried the screw along. What counts is the gap with everything tight.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Bemerkt? Das Festziehen nahm die Schraube mit. Es zählt der Abstand, wenn alles fest ist.</translation>
        </message>
        <message>
            <source>Limits are 0.30 to 0.36 mm. The lock screw carries the contact screw about 2° closer each time it is tightened.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Blades say so</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Die Lehren sagen es</translation>
        </message>
        <message>
            <source>Turn until the contacts stand widest open, and try a blade.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Drehen, bis die Kontakte am weitesten offen stehen, und eine Lehre probieren.</translation>
        </message>
        <message>
            <source>Slacken the clamps</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Klemmschrauben lösen</translation>
        </message>
        <message>
            <source>The opening is late. Slacken the clamp screws.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Die Öffnung ist spät. Die Klemmschrauben lösen.</translation>
        </message>
        <message>
            <source>Against rotation</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Gegen die Drehrichtung</translation>
        </message>
        <message>
            <source>Turn the backplate against rotation, a degree at least.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Die Grundplatte gegen die Drehrichtung drehen, mindestens ein Grad.</translation>
        </message>
        <message>
            <source>The contacts now open earlier. The gap is what it was.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Die Kontakte öffnen jetzt früher. Der Abstand ist geblieben.</translation>
        </message>
        <message>
            <source>To the mark</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Auf die Marke</translation>
        </message>
        <message>
            <source>Bring the opening to the mark, and clamp the plate.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Die Öffnung auf die Marke bringen und die Platte festklemmen.</translation>
        </message>
        <message>
            <source>Lay the straightedge on, look square over it, and watch the lamp. Half a millimetre at the rim is about 0.8° here.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation type="unfinished"></translation>
        </message>
        <message>
            <source>Check again</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Erneut prüfen</translation>
        </message>
        <message>
            <source>With all tight: turn with rotation until the lamp lights, the straightedge on and looked at square.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Wenn alles fest ist: in Drehrichtung drehen, bis die Lampe leuchtet, Lineal aufgelegt und gerade darüber geblickt.</translation>
        </message>
        <message>
            <source>Only what was checked after the last screw was tightened is known.</source>
            <extracomment>lessons/plate-and-screw.json</extracomment>
            <translation>Nur was nach dem Festziehen der letzten Schraube geprüft wurde, ist bekannt.</translation>
        </message>
        <message>
            <source>Is the switch lead sound?</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Ist die Kurzschlussleitung heil?</translation>
        </message>
        <message>
            <source>A magneto is live unless it is grounded. The lead that grounds it can be broken where nobody sees it.</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Ein Magnetzünder ist scharf, solange er nicht an Masse liegt. Die Leitung dafür kann brechen, wo es niemand sieht.</translation>
        </message>
        <message>
            <source>The switch lead</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Die Kurzschlussleitung</translation>
        </message>
        <message>
            <source>An aircraft back from a long lay-up.</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Ein Flugzeug nach langer Standzeit.</translation>
        </message>
        <message>
            <source>Chocks first</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Erst die Keile</translation>
        </message>
        <message>
            <source>Pull the plug</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Stecker ziehen</translation>
        </message>
        <message>
            <source>With the switch off, pull the plug of the switch lead. A spring tab now grounds the magneto – if it touches.</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Bei Schalter aus den Stecker der Kurzschlussleitung ziehen. Eine Federzunge legt den Magnetzünder jetzt an Masse – wenn sie berührt.</translation>
        </message>
        <message>
            <source>Meter</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Messen</translation>
        </message>
        <message>
            <source>Meter from the lead's plug to the case, switch off.</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Vom Stecker der Leitung zum Gehäuse messen, Schalter aus.</translation>
        </message>
        <message>
            <source>No ground with the switch off: this magneto was live all the time it was thought safe.</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Keine Masse bei Schalter aus: Dieser Magnetzünder war die ganze Zeit scharf, als er für sicher galt.</translation>
        </message>
        <message>
            <source>A new lead</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Eine neue Leitung</translation>
        </message>
        <message>
            <source>Put in a new lead.</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Eine neue Leitung einbauen.</translation>
        </message>
        <message>
            <source>Prove it</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Nachweisen</translation>
        </message>
        <message>
            <source>Meter again, switch off.</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Erneut messen, Schalter aus.</translation>
        </message>
        <message>
            <source>Ground. That is half of the proof.</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Masse. Das ist der halbe Nachweis.</translation>
        </message>
        <message>
            <source>The other half</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Die andere Hälfte</translation>
        </message>
        <message>
            <source>Switch on, and meter again.</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Einschalten und erneut messen.</translation>
        </message>
        <message>
            <source>No ground with the switch on: the switch works both ways.</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Keine Masse bei Schalter ein: Der Schalter wirkt in beiden Stellungen.</translation>
        </message>
        <message>
            <source>Leave it safe</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Sicher verlassen</translation>
        </message>
        <message>
            <source>Switch off, and push the plug in.</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Ausschalten und den Stecker einstecken.</translation>
        </message>
        <message>
            <source>Now, and not before, the switch can be trusted – until the next time.</source>
            <extracomment>lessons/the-switch-lead.json</extracomment>
            <translation>Jetzt, und nicht vorher, ist dem Schalter zu trauen – bis zum nächsten Mal.</translation>
        </message>
        <message>
            <source>Top dead centre by the stop</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>Oberer Totpunkt mit Anschlag</translation>
        </message>
        <message>
            <source>Near the top the piston hardly moves: dead centre is found from both sides, not by looking for it.</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>Nahe am Totpunkt bewegt sich der Kolben kaum: Der Totpunkt wird von beiden Seiten gefunden, nicht durch Hinsehen.</translation>
        </message>
        <message>
            <source>An engine with a disc on its crank, put on by eye.</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>Ein Motor mit einer nach Augenmaß aufgesetzten Scheibe an der Kurbelwelle.</translation>
        </message>
        <message>
            <source>Put chocks at the wheels. The propeller is treated as live.</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>Keile an die Räder legen. Der Propeller gilt als scharf.</translation>
        </message>
        <message>
            <source>Take the spark plugs out: nothing can fire, nothing is compressed.</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>Die Zündkerzen ausbauen: Nichts kann zünden, nichts wird verdichtet.</translation>
        </message>
        <message>
            <source>The stop</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>Der Anschlag</translation>
        </message>
        <message>
            <source>Fit the piston stop in No. 1. If the piston stands too high, turn the propeller on first.</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>Den Kolbenanschlag in Nr. 1 einsetzen. Steht der Kolben zu hoch, erst den Propeller weiterdrehen.</translation>
        </message>
        <message>
            <source>From one side</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>Von der einen Seite</translation>
        </message>
        <message>
            <source>Turn the propeller gently with rotation until the piston meets the stop, and read the disc.</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>Den Propeller sachte in Drehrichtung drehen, bis der Kolben den Anschlag berührt, und die Scheibe ablesen.</translation>
        </message>
        <message>
            <source>From the other</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>Von der anderen</translation>
        </message>
        <message>
            <source>Turn back until it meets the stop from the other side, and read the disc again.</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>Zurückdrehen, bis er den Anschlag von der anderen Seite berührt, und die Scheibe erneut ablesen.</translation>
        </message>
        <message>
            <source>Dead centre lies half-way between the two readings.</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>Der Totpunkt liegt in der Mitte zwischen beiden Ablesungen.</translation>
        </message>
        <message>
            <source>Write it down</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>Aufschreiben</translation>
        </message>
        <message>
            <source>Write down what the disc reads at top dead centre.</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>Aufschreiben, was die Scheibe im oberen Totpunkt zeigt.</translation>
        </message>
        <message>
            <source>Set the disc</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>Scheibe einstellen</translation>
        </message>
        <message>
            <source>Turn the disc on the crank so that it reads zero there.</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>Die Scheibe auf der Kurbelwelle drehen, bis sie dort null zeigt.</translation>
        </message>
        <message>
            <source>The half-way reading, turned the other way.</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>Die mittlere Ablesung, andersherum gedreht.</translation>
        </message>
        <message>
            <source>Take the stop out, or the next turn of the propeller ends at it.</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>Den Anschlag ausbauen, sonst endet die nächste Propellerdrehung an ihm.</translation>
        </message>
        <message>
            <source>From here the disc tells the truth.</source>
            <extracomment>lessons/top-dead-centre.json</extracomment>
            <translation>Von hier an sagt die Scheibe die Wahrheit.</translation>
        </message>
        <message>
            <source>What the parts are</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Wie die Teile heißen</translation>
        </message>
        <message>
            <source>The breaker end of a magneto, part by part. Point at each part in the picture as it is asked for.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Die Unterbrecherseite eines Magnetzünders, Teil für Teil. Zeigen Sie im Bild auf jedes Teil, nach dem gefragt wird.</translation>
        </message>
        <message>
            <source>The parts</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Die Teile</translation>
        </message>
        <message>
            <source>A magneto with its breaker cover off, seen from the breaker end.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Ein Magnetzünder ohne Unterbrecherdeckel, von der Unterbrecherseite gesehen.</translation>
        </message>
        <message>
            <source>The rotor</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Der Rotor</translation>
        </message>
        <message>
            <source>A magnet with north and south poles that alternate round it. The engine turns it. Point at the rotor.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Ein Magnet, um den herum Nord- und Südpole wechseln. Der Motor dreht ihn. Zeigen Sie auf den Rotor.</translation>
        </message>
        <message>
            <source>Its field runs through the iron of the coil, one way and then the other.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Sein Feld läuft durch das Eisen der Spule, erst in der einen, dann in der anderen Richtung.</translation>
        </message>
        <message>
            <source>The pole shoe</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Der Polschuh</translation>
        </message>
        <message>
            <source>The iron that leads the magnet's field up to the coil and back. Point at a pole shoe.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Das Eisen, das das Feld des Magneten zur Spule und zurück führt. Zeigen Sie auf einen Polschuh.</translation>
        </message>
        <message>
            <source>Halfway between two poles the field in the iron changes its sense: that place is called neutral.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Mitten zwischen zwei Polen kehrt sich das Feld im Eisen um: Diese Stelle heißt Neutralstellung.</translation>
        </message>
        <message>
            <source>The cam</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Der Nocken</translation>
        </message>
        <message>
            <source>It turns with the rotor and has a lobe for each spark of a turn. Point at the cam.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Er dreht mit dem Rotor und hat für jeden Funken einer Umdrehung eine Erhebung. Zeigen Sie auf den Nocken.</translation>
        </message>
        <message>
            <source>Its lobes push the breaker arm outwards.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Seine Erhebungen drücken den Unterbrecherhebel nach außen.</translation>
        </message>
        <message>
            <source>The heel</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Das Gleitstück</translation>
        </message>
        <message>
            <source>The block on the breaker arm that rides on the cam. Point at the heel.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Der Klotz am Unterbrecherhebel, der auf dem Nocken läuft. Zeigen Sie auf das Gleitstück.</translation>
        </message>
        <message>
            <source>When the heel wears, the contacts open later and less wide.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Verschleißt das Gleitstück, öffnen die Kontakte später und weniger weit.</translation>
        </message>
        <message>
            <source>The breaker arm</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Der Unterbrecherhebel</translation>
        </message>
        <message>
            <source>It swings about its pivot and carries the moving contact. Point at the breaker arm.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Er schwenkt um seine Achse und trägt den beweglichen Kontakt. Zeigen Sie auf den Unterbrecherhebel.</translation>
        </message>
        <message>
            <source>A spring presses it towards the cam.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Eine Feder drückt ihn zum Nocken.</translation>
        </message>
        <message>
            <source>While they touch, the coil's primary current flows; as they part, it breaks and the spark jumps. Point at the contacts.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Solange sie sich berühren, fließt der Primärstrom der Spule; trennen sie, bricht er ab und der Funke springt. Zeigen Sie auf die Kontakte.</translation>
        </message>
        <message>
            <source>When they part, and how far, is what this program is about.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Wann sie trennen und wie weit, darum geht es in diesem Programm.</translation>
        </message>
        <message>
            <source>The contact screw</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Die Kontaktschraube</translation>
        </message>
        <message>
            <source>It moves the fixed contact nearer or further off. Point at the contact screw.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Sie rückt den festen Kontakt näher oder weiter weg. Zeigen Sie auf die Kontaktschraube.</translation>
        </message>
        <message>
            <source>Nearer: the contacts open later and less wide.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Näher: Die Kontakte öffnen später und weniger weit.</translation>
        </message>
        <message>
            <source>The lock screw</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Die Sicherungsschraube</translation>
        </message>
        <message>
            <source>It holds the contact screw. Point at the lock screw.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Sie hält die Kontaktschraube. Zeigen Sie auf die Sicherungsschraube.</translation>
        </message>
        <message>
            <source>Tightening it can carry the contact screw along: measure again afterwards.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Das Festziehen kann die Kontaktschraube mitnehmen: danach erneut messen.</translation>
        </message>
        <message>
            <source>The backplate</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Die Grundplatte</translation>
        </message>
        <message>
            <source>It carries contacts and breaker arm, and can be turned about the cam. Point at the backplate.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Sie trägt Kontakte und Unterbrecherhebel und lässt sich um den Nocken drehen. Zeigen Sie auf die Grundplatte.</translation>
        </message>
        <message>
            <source>With rotation: the contacts open later. The gap does not change.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>In Drehrichtung: Die Kontakte öffnen später. Der Abstand ändert sich nicht.</translation>
        </message>
        <message>
            <source>The clamp screw</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Die Klemmschraube</translation>
        </message>
        <message>
            <source>They hold the backplate. Point at a clamp screw.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Sie halten die Grundplatte. Zeigen Sie auf eine Klemmschraube.</translation>
        </message>
        <message>
            <source>A plate that is not clamped will not stay.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Eine Platte, die nicht festgeklemmt ist, bleibt nicht stehen.</translation>
        </message>
        <message>
            <source>The step</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Die Stufe</translation>
        </message>
        <message>
            <source>A flat edge on the cam along which a straightedge is laid. Point at the step.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Eine ebene Kante am Nocken, an die ein Lineal gelegt wird. Zeigen Sie auf die Stufe.</translation>
        </message>
        <message>
            <source>It turns with the cam and shows where the rotor stands.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Sie dreht mit dem Nocken und zeigt, wo der Rotor steht.</translation>
        </message>
        <message>
            <source>The rim mark</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Die Randmarke</translation>
        </message>
        <message>
            <source>A mark on the housing's rim: with the step in line, the rotor is at the E-gap. Point at a rim mark.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Eine Marke am Gehäuserand: Fluchtet die Stufe, steht der Rotor im E-Gap. Zeigen Sie auf eine Randmarke.</translation>
        </message>
        <message>
            <source>There the contacts should just begin to open.</source>
            <extracomment>lessons/what-the-parts-are.json</extracomment>
            <translation>Dort sollen die Kontakte gerade zu öffnen beginnen.</translation>
        </message>
    </context>
</TS>
